//! The figure: a body in a pose, as data. Pure computation; [`crate::drawing`] makes marks of it.
//!
//! In: joint angles in trade words ([`trade`]), or a pose of the library with changes on top. Out: the
//! points of a body ([`Body`]), its balance ([`balance`]) and what is beyond a joint’s range ([`range`]).
//! Lengths are fractions of stature. Right-handed axes: x forwards, y to the body’s left, z up.

pub mod balance;
mod body;
mod crossing;
mod joint;
pub mod library;
mod placed;
mod pose;
pub mod proportions;
pub mod range;
mod space;
mod stance;
pub mod strip;
mod support;
pub mod trade;

pub use body::{Body, Flat, Limb};
pub use joint::{Angles, Joint, Motion, Side, Turn};
pub use placed::place_body;
pub use pose::{Arrow, Holding, Part, Pose, Scene, View, Way, blend};
pub use space::{Frame, Point};
pub use strip::{Caption, Figure, Moment};
pub use support::Support;
