//! The question in numbers: parts with their versions, wants and a stock, without words.

use crate::plan::assign::{Suit, Want};
use crate::plan::slot_fit::PartOffer;
use crate::quantity::Duration;

/// One session in one home.
#[derive(Clone, Debug)]
pub struct Model {
    pub parts: Vec<PartModel>,
    pub wants: Vec<WantModel>,
    /// How many there are of each thing.
    pub stock: Vec<u32>,
    pub slot: Duration,
}

/// A part and the versions of it that can be done in this home; none if it can’t be done.
#[derive(Clone, Debug)]
pub struct PartModel {
    pub offer: PartOffer,
    /// Whether it is more than warm-up or cool-down.
    pub is_main: bool,
    pub versions: Vec<Version>,
}

/// A version that can be done here.
#[derive(Clone, Debug)]
pub struct Version {
    /// 0 as written, 1 in another version.
    pub change: u32,
    /// The wants it uses, by their index.
    pub uses: Vec<usize>,
}

/// A thing that is asked for, and what suits.
#[derive(Clone, Debug)]
pub struct WantModel {
    pub count: u32,
    pub optional: bool,
    pub suits: Vec<Suit>,
}

impl Model {
    /// What is asked for if some parts are kept: each want that is used, and its index. It is held from the first
    /// part that uses it to the last.
    pub(super) fn wants_of(&self, kept: &[Option<usize>]) -> (Vec<usize>, Vec<Want>) {
        let uses = |part: usize, want: usize| {
            kept[part]
                .is_some_and(|version| self.parts[part].versions[version].uses.contains(&want))
        };
        let held = |want: usize| {
            let mut parts = (0..self.parts.len()).filter(|part| uses(*part, want));
            let from = parts.next()?;
            Some((from, parts.next_back().unwrap_or(from)))
        };
        let asked = (0..self.wants.len()).filter_map(|at| Some((at, held(at)?)));
        asked
            .map(|(at, (from, to))| {
                let want = &self.wants[at];
                let (count, optional, suits) = (want.count, want.optional, want.suits.clone());
                (at, Want { count, from, to, optional, suits })
            })
            .unzip()
    }

    /// The same with other things at home.
    pub(super) fn with_stock(&self, stock: Vec<u32>) -> Self {
        Self { stock, ..self.clone() }
    }
}
