//! The floor that a part takes, and how what is thrown in it flies, as the session says.

use crate::place::Placed;
use crate::quantity::{Angle, Length, Speed};
use crate::read::Line;
use crate::read::words::SpaceKind;

/// The floor and headroom of one part; what its kind doesn’t use stays unused.
#[derive(Clone, Debug)]
pub struct PartSpace {
    pub kind: Placed<SpaceKind>,
    pub length: Option<Placed<Length>>,
    pub width: Option<Placed<Length>>,
    pub height: Option<Placed<Length>>,
    pub people: Option<Placed<u32>>,
    pub run_up: Option<Placed<Length>>,
    pub stopping: Option<Placed<Length>>,
    pub reach: Option<Placed<Length>>,
    pub margin: Option<Placed<Length>>,
    pub sector: Option<Placed<Angle>>,
}

/// How what is thrown, tossed or kicked flies: by its speed, by how far it comes or how far it rises.
#[derive(Clone, Debug)]
pub struct FlightSaid {
    pub of: Option<Placed<Line>>,
    pub speed: Option<Placed<Speed>>,
    pub distance: Option<Placed<Length>>,
    pub rise: Option<Placed<Length>>,
    pub angle: Option<Placed<Angle>>,
    pub height: Placed<Length>,
}
