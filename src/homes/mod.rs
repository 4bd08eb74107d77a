//! Homes: what a school knows of them to fit sessions to them, by code and never by name.
//!
//! A home is read from a file of its own (`read_yaml`) or from a row of a class list (`read_csv`); a list that
//! holds anything like a name, an e-mail address or a birth date is refused (`privacy`).

mod dialect;
mod headings;
mod privacy;
mod read_csv;
pub(crate) mod read_yaml;
mod things;

use std::collections::BTreeSet;

use crate::place::{Place, Placed};
use crate::plan::Floor;
use crate::quantity::{Duration, Length};
use crate::read::record::choice;
use crate::read::words::Surface;

pub use headings::HEADINGS;
pub use read_csv::read_class;
pub use read_yaml::read_home;
pub use things::check_things;

choice! {
    /// What a child at home needs.
    pub enum HomeNeed = "a need this program knows" {
        /// Sits on a chair or in a wheelchair.
        Seated = "seated",
        LowVision = "low vision",
        /// Feet must not come down hard indoors: somebody sleeps, or lives below.
        Quiet = "quiet",
    }
}

choice! {
    /// How a home reads its sessions.
    pub enum Reads = "how a home reads its sessions" {
        Paper = "paper",
        Phone = "phone",
    }
}

/// One home.
#[derive(Clone, Debug)]
pub struct Home {
    /// Letters, digits and hyphens, with a digit among them.
    pub code: Placed<String>,
    /// How long there is for a session in a day.
    pub minutes: Duration,
    pub floors: Vec<HomeFloor>,
    pub things: Vec<HomeThing>,
    /// How many people can join in or stay near.
    pub helpers: u32,
    pub needs: BTreeSet<HomeNeed>,
    /// BCP 47.
    pub language: Option<String>,
    pub reads: Reads,
}

/// A clear floor of a home.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HomeFloor {
    pub floor: Floor,
    /// Up to the ceiling; unknown or none outdoors.
    pub height: Option<Length>,
    pub surface: Option<Surface>,
    pub is_outdoors: bool,
}

/// A thing that a home has.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HomeThing {
    pub name: String,
    pub count: Option<u32>,
    pub place: Place,
}

impl Home {
    pub fn has_need(&self, need: HomeNeed) -> bool {
        self.needs.contains(&need)
    }
}
