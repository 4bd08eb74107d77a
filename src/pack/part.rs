//! A part of a session: the warm-up, a technique step, a challenge, a stretch task or the cool-down.

use crate::figure::{Caption, Figure};
use crate::place::Placed;
use crate::quantity::{Decimal, Duration};
use crate::read::compendium::Compendium;
use crate::read::words::{AdultHelp, Better, Effort, Measured, Movement, Suited, Task};
use crate::read::{Line, PartTime, Prose};

use super::part_space::{FlightSaid, PartSpace};
use super::session::Picture;

/// Which part of a session it is, in the order they are done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PartKind {
    WarmUp,
    Technique,
    Challenge,
    Stretch,
    CoolDown,
}

impl PartKind {
    pub const ALL: [Self; 5] =
        [Self::WarmUp, Self::Technique, Self::Challenge, Self::Stretch, Self::CoolDown];

    /// The key it stands under in a session file.
    pub const fn key(self) -> &'static str {
        match self {
            Self::WarmUp => "warm_up",
            Self::Technique => "technique",
            Self::Challenge => "challenge",
            Self::Stretch => "stretch",
            Self::CoolDown => "cool_down",
        }
    }

    /// What the trade calls it, for messages to the teacher.
    pub const fn trade_name(self) -> &'static str {
        match self {
            Self::WarmUp => "warm-up",
            Self::Technique => "technique step",
            Self::Challenge => "challenge",
            Self::Stretch => "stretch task",
            Self::CoolDown => "cool-down",
        }
    }
}

/// One part, in the order it is done.
#[derive(Clone, Debug)]
pub struct Part {
    pub kind: PartKind,
    /// Which of its kind it is, from 1; `of` counts them all.
    pub number: usize,
    pub of: usize,
    pub title: Placed<Line>,
    pub time: Option<Placed<PartTime>>,
    pub effort: Option<Placed<Effort>>,
    pub movements: Vec<Placed<Movement>>,
    pub task: Option<Placed<Task>>,
    pub how: Placed<Prose>,
    pub key_points: Vec<Placed<Line>>,
    pub faults: Vec<Fault>,
    pub easier: Option<Placed<Line>>,
    pub harder: Option<Placed<Line>>,
    pub adult: Option<Placed<AdultHelp>>,
    pub throw: Option<ThrowRules>,
    pub measure: Option<Placed<Measure>>,
    pub space: Option<Placed<PartSpace>>,
    pub flight: Option<Placed<FlightSaid>>,
    pub compendium: Option<Placed<Compendium>>,
    pub lengths: PartLengths,
    pub alternatives: Vec<Alternative>,
    pub pictures: Vec<Picture>,
    /// The figure drawn from poses; without a moment where there is none.
    pub figure: Figure,
}

/// Another version of a part.
#[derive(Clone, Debug)]
pub struct Alternative {
    pub suits: Vec<Placed<Suited>>,
    pub how: Placed<Prose>,
    pub space: Option<Placed<PartSpace>>,
    /// The things it uses, of those the part does; `None` for all of them.
    pub needs: Option<Vec<Placed<Line>>>,
}

impl Alternative {
    pub fn is_for(&self, suited: Suited) -> bool {
        self.suits.iter().any(|found| found.value == suited)
    }
}

/// What may happen to a part in another slot.
#[derive(Clone, Debug)]
pub struct PartLengths {
    pub shortest: Option<Placed<Duration>>,
    pub longest: Option<Placed<Duration>>,
    /// A warm-up and a cool-down are essential unless the session says otherwise: common practice.
    pub essential: bool,
    /// From 1 to 5.
    pub worth: Placed<u32>,
}

impl Part {
    /// The first movement that sends something away from the child.
    pub fn sending(&self) -> Option<&Placed<Movement>> {
        self.movements.iter().find(|movement| movement.sends_something())
    }

    pub fn has_movement(&self, movement: Movement) -> bool {
        self.movements.iter().any(|found| found.value == movement)
    }

    /// “technique step “Push and hold””: how a message names it.
    pub fn named(&self) -> String {
        format!("{} “{}”", self.kind.trade_name(), self.title)
    }

    /// Every text of the part that a family reads, with its place.
    pub fn texts(&self) -> Vec<Placed<&str>> {
        let mut texts = vec![placed(&self.title), placed(&self.how)];
        texts.extend(self.key_points.iter().map(placed));
        for fault in &self.faults {
            texts.extend([placed(&fault.see), placed(&fault.say)]);
        }
        texts.extend(self.easier.iter().chain(&self.harder).map(placed));
        texts.extend(self.alternatives.iter().map(|other| placed(&other.how)));
        if let Some(rules) = &self.throw {
            texts.extend(rules.landing_zone.iter().chain(&rules.stop_and_collect).map(placed));
        }
        if let Some(measure) = &self.measure {
            texts.extend(measure.criteria.iter().map(placed));
        }
        texts.extend(self.figure.moments.iter().filter_map(|moment| match &moment.caption {
            Some(Caption::Words(words)) => Some(placed(words)),
            _ => None,
        }));
        texts.extend(
            self.pictures.iter().filter_map(|picture| picture.caption.as_ref()).map(placed),
        );
        texts
    }
}

/// Borrows a placed text.
pub(super) fn placed<T: std::ops::Deref<Target = str>>(text: &Placed<T>) -> Placed<&str> {
    Placed::new(&text.value, text.place)
}

/// A common fault and what to say.
#[derive(Clone, Debug)]
pub struct Fault {
    pub see: Placed<Line>,
    pub say: Placed<Line>,
}

/// Where thrown, kicked or struck things may land, and when they are fetched.
#[derive(Clone, Debug)]
pub struct ThrowRules {
    pub landing_zone: Option<Placed<Line>>,
    pub stop_and_collect: Option<Placed<Line>>,
}

/// How a try is measured.
#[derive(Clone, Debug)]
pub struct Measure {
    pub what: Placed<Measured>,
    pub unit: Option<Placed<Line>>,
    /// The smallest step of a mark, as it is written.
    pub step: Option<Placed<Line>>,
    pub attempts: Option<Placed<u32>>,
    pub better: Option<Placed<Better>>,
    pub criteria: Vec<Placed<Line>>,
    pub points: Option<Placed<Points>>,
    pub reference: Option<Reference>,
}

/// Points for a mark.
#[derive(Clone, Debug)]
pub struct Points {
    /// The mark that each step begins at, and its points.
    pub steps: Vec<(Placed<Line>, Placed<u32>)>,
    pub formula: Option<Placed<PointsFormula>>,
    pub source: Option<Placed<Line>>,
}

/// The whole part of a · |mark − b|^c.
#[derive(Clone, Copy, Debug)]
pub struct PointsFormula {
    pub a: Decimal,
    pub b: Decimal,
    pub c: Decimal,
}

/// A mark to compare with, and where it is from.
#[derive(Clone, Debug)]
pub struct Reference {
    pub mark: Placed<Line>,
    pub source: Option<Placed<Line>>,
}
