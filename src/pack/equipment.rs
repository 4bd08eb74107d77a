//! Things, what sessions need of them, and what a home has instead.

use std::sync::Arc;

use super::fitness::Misfit;
use crate::place::{Place, Placed};
use crate::quantity::{Length, Mass, Range, Volume};
use crate::read::Line;
use crate::read::words::Filling;

/// A thing of the shared list.
#[derive(Clone, Debug)]
pub struct Thing {
    pub name: Placed<Line>,
    pub plural: String,
    pub mass: Option<Placed<Range<Mass>>>,
    pub size: Option<Placed<Range<Length>>>,
    pub soft: Option<bool>,
    /// What else it is, in small letters.
    pub qualities: Vec<String>,
    /// How many a usual home has; enough, where it is not said.
    pub at_home: Option<u32>,
    /// Lifted as a weight.
    pub weight: bool,
    /// How a weight is held and closed securely.
    pub grip: Option<Placed<Line>>,
    /// Every home has it; nothing need stand in.
    pub household: bool,
    pub substitutes: Vec<Substitute>,
}

/// A household thing that can stand in.
#[derive(Clone, Debug)]
pub struct Substitute {
    pub thing: Placed<Line>,
    pub plural: String,
    /// Its mass when it is used: with what it is filled with.
    pub mass: Option<Placed<Range<Mass>>>,
    pub size: Option<Placed<Range<Length>>>,
    pub soft: Option<bool>,
    /// What else it is, in small letters.
    pub qualities: Vec<String>,
    /// What it is filled with, and how much of it.
    pub filling: Option<(Filling, Volume)>,
    /// A filling without a volume, or a volume without a filling.
    pub half_filled: Option<Place>,
    /// How many a usual home has; enough, where it is not said.
    pub at_home: Option<u32>,
    pub note: Option<Placed<Line>>,
}

/// What a session asks of a thing, so that it suits the children and the task.
#[derive(Clone, Debug, Default)]
pub struct Limits {
    pub mass: Option<Placed<Range<Mass>>>,
    pub size: Option<Placed<Range<Length>>>,
    pub soft: Option<bool>,
    /// What else it must be.
    pub qualities: Vec<Placed<Line>>,
}

/// A thing that a session needs.
#[derive(Clone, Debug)]
pub struct Need {
    pub name: Placed<Line>,
    pub plural: String,
    pub count: u32,
    /// The parts that use it, by their index in the session; empty where none was named.
    pub parts: Vec<usize>,
    /// Names after `for` that are no part of the session.
    pub strangers: Vec<Placed<Line>>,
    pub limits: Limits,
    pub optional: bool,
    pub note: Option<Placed<Line>>,
    /// The entry of the shared list, if it has one.
    pub thing: Option<Arc<Thing>>,
    /// The session's own substitutes, else those of the shared list that suit it.
    pub substitutes: Vec<Substitute>,
    /// Substitutes of the shared list that don't.
    pub refused: Vec<Refused>,
}

/// A thing that doesn't suit a need, and every reason.
#[derive(Clone, Debug)]
pub struct Refused {
    pub thing: Placed<Line>,
    pub reasons: Vec<Misfit>,
}

/// “marker”, “5 markers”, or “5 × cardboard box” where the plural is not known.
pub fn counted(count: u32, name: &str, plural: &str) -> String {
    match count {
        1 => name.to_owned(),
        _ if name == plural => format!("{count} × {name}"),
        _ => format!("{count} {plural}"),
    }
}

impl Need {
    pub fn place(&self) -> Place {
        self.name.place
    }

    /// "marker" or "5 markers".
    pub fn counted(&self) -> String {
        counted(self.count, &self.name, &self.plural)
    }

    /// Whether every home has it.
    pub fn is_household(&self) -> bool {
        self.thing.as_ref().is_some_and(|thing| thing.household)
    }

    /// How it is held and closed securely.
    pub fn grip(&self) -> Option<&Placed<Line>> {
        self.thing.as_ref()?.grip.as_ref()
    }

    /// Whether it is lifted as a weight.
    pub fn is_weight(&self) -> bool {
        self.thing.as_ref().is_some_and(|thing| thing.weight)
    }
}
