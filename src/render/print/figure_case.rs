//! The figures of a session for all its sheets: each moment is drawn and told once, whatever sizes are tried
//! and wherever it stands.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::plate::{Impression, Plate};
use crate::drawing::figure::{Strip, draw_moment};
use crate::drawing::{Drawing, Look, Mark};
use crate::figure::Moment;
use crate::pack::Session;
use crate::place::Place;
use crate::render::figure_phrases::figure_says;
use crate::render::phrases::is_right_to_left;
use crate::render::site::proportions_of;
use crate::words::Words;

/// The figures of a session.
#[derive(Debug)]
pub struct FigureCase {
    /// By where they are written: a moment that two parts share is one.
    kept: BTreeMap<Place, Kept>,
}

#[derive(Debug)]
struct Kept {
    plates: Plates,
    says: String,
}

/// A drawing over its floor, and without it.
#[derive(Clone, Debug)]
struct Plates {
    on_floor: Arc<Plate>,
    without_floor: Arc<Plate>,
}

impl FigureCase {
    /// Draws all that a session shows. Moments that look the same share their plates.
    pub fn of(session: &Session, words: &Words) -> Self {
        let strip = Strip { stature: 1.0, is_rtl: is_right_to_left(words.language()) };
        let proportions = proportions_of(session);
        let moments = session.parts.iter().flat_map(|part| &part.figure.moments);
        let mut kept = BTreeMap::new();
        let mut made: Vec<Plates> = Vec::new();
        for moment in moments {
            kept.entry(moment.place).or_insert_with(|| Kept {
                plates: plates_of(draw_moment(moment, proportions, strip), &mut made),
                says: figure_says(std::slice::from_ref(moment), words),
            });
        }
        Self { kept }
    }

    /// A moment over its floor, at its own corner.
    pub fn set(&self, moment: &Moment, stature: f32) -> Impression {
        set(&self.find(moment).plates.on_floor, stature)
    }

    /// A moment that stands on something else.
    pub fn set_without_floor(&self, moment: &Moment, stature: f32) -> Impression {
        set(&self.find(moment).plates.without_floor, stature)
    }

    /// A moment in words, for who can’t see it.
    pub fn says(&self, moment: &Moment) -> &str {
        &self.find(moment).says
    }

    fn find(&self, moment: &Moment) -> &Kept {
        self.kept.get(&moment.place).expect("the case was made from the session it is asked about")
    }
}

/// The plates of a drawing: those that were made of its like, or new ones.
fn plates_of(drawing: Drawing, made: &mut Vec<Plates>) -> Plates {
    if let Some(known) = made.iter().find(|plates| *plates.on_floor.drawing() == drawing) {
        return known.clone();
    }
    let number = u32::try_from(2 * made.len()).unwrap_or(u32::MAX - 1);
    let plates = Plates {
        without_floor: Arc::new(Plate::new(number + 1, lift(&drawing))),
        on_floor: Arc::new(Plate::new(number, drawing)),
    };
    made.push(plates.clone());
    plates
}

fn set(plate: &Arc<Plate>, stature: f32) -> Impression {
    Impression { plate: Arc::clone(plate), at: (0.0, 0.0), scale: stature }
}

fn lift(drawing: &Drawing) -> Drawing {
    let mut drawing = drawing.clone();
    drawing.marks.retain(|mark| !matches!(mark, Mark::Smooth { look: Look::Floor, .. }));
    drawing
}
