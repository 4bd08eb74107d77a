//! A drawing that is made once and set down in any size, as a form that pages show (ISO 32000-1, 8.10): a
//! figure that stands on cards, guide and poster is written into each file as bytes that are ready.

use std::sync::Arc;

use super::brush::Brush;
use super::deflate::Deflater;
use super::drawings::{THINNEST, place_marks};
use super::ink::ink_of_shapes;
use super::page::{At, Item};
use crate::drawing::{Drawing, Mark};

/// Steps of a form’s own grid in a unit of its drawing: a stature of 10 cm is drawn to a twentieth of a millimetre.
const STEPS: f32 = 1_000.0;

/// How finely a form’s ink is looked at: cells in a unit. A figure that stands 96 points tall is looked at as finely as a
/// page is.
const CELLS: f32 = 48.0;

/// The step in which lines are made thicker for small sizes, in units of the drawing: figures of one small size
/// or another share a form.
const THICKER: f32 = 0.005;

/// A drawing in units of its own.
#[derive(Debug)]
pub struct Plate {
    /// Tells the plates of one document apart.
    number: u32,
    drawing: Drawing,
    /// The thinnest line, in units.
    thinnest: f32,
}

/// A plate where it is set down.
#[derive(Clone, Debug)]
pub struct Impression {
    pub plate: Arc<Plate>,
    /// The top left corner.
    pub at: At,
    /// Points in a unit.
    pub scale: f32,
}

/// Which plate, and how thick its lines are at least: a small one would lose the thin ones on a cheap
/// printer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Edge {
    number: u32,
    least: u8,
}

impl Edge {
    /// What it is called on a page.
    pub fn name(self) -> String {
        match self.least {
            0 => format!("F{}", self.number),
            least => format!("F{}T{least}", self.number),
        }
    }
}

impl Plate {
    /// A drawing whose unit is one.
    pub fn new(number: u32, drawing: Drawing) -> Self {
        let pens = drawing.marks.iter().filter_map(|mark| match mark {
            Mark::Smooth { look, scale, .. } => look.pen().map(|(thickness, _)| thickness * scale),
            _ => None,
        });
        let thinnest = pens.fold(f32::MAX, f32::min);
        Self { number, drawing, thinnest }
    }

    pub const fn drawing(&self) -> &Drawing {
        &self.drawing
    }

    pub const fn width(&self) -> f32 {
        self.drawing.width
    }

    pub const fn height(&self) -> f32 {
        self.drawing.height
    }

    /// Its shapes with so many points in a unit.
    fn items(&self, least: u8, scale: f32) -> Vec<Item> {
        let marks = self.drawing.marks.iter().map(|mark| mark.clone().scaled(scale)).collect();
        place_marks(marks, f32::from(least) * THICKER * scale).collect()
    }
}

impl Impression {
    pub fn width(&self) -> f32 {
        self.plate.width() * self.scale
    }

    pub fn height(&self) -> f32 {
        self.plate.height() * self.scale
    }

    /// The plate with lines that are thick enough at this size.
    pub fn edge(&self) -> Edge {
        let least = THINNEST / self.scale;
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "`as` stops at the ends of the type"
        )]
        let least = if least > self.plate.thinnest { (least / THICKER).ceil() as u8 } else { 0 };
        Edge { number: self.plate.number, least }
    }

    /// The form for every place it stands in at this size.
    pub fn form(&self, deflater: &mut Deflater) -> Form {
        let size = (self.plate.width() * STEPS, (self.plate.height() * STEPS).round());
        let items = self.plate.items(self.edge().least, STEPS);
        let ink = ink_of_shapes(&items, size, STEPS / CELLS) / (STEPS * STEPS);
        let mut brush = Brush::in_form(size.1);
        for item in &items {
            if let Item::Shape { outline, fill, stroke } = item {
                brush.write_shape(outline, *fill, *stroke);
            }
        }
        Form { object: form_object(&deflater.deflate(&brush.text.bytes), size), ink }
    }
}

/// A plate for a file.
pub struct Form {
    pub object: Vec<u8>,
    /// In squares of a unit, on white paper.
    pub ink: f32,
}

fn form_object(content: &[u8], (width, height): At) -> Vec<u8> {
    let mut object = format!(
        "<</Type/XObject/Subtype/Form/BBox[0 0 {width:.0} {height:.0}]/Matrix[{step} 0 0 {step} 0 0]\
         /Resources<<>>/Filter/FlateDecode/Length {}>>stream\n",
        content.len(),
        step = 1.0 / STEPS,
    )
    .into_bytes();
    object.extend_from_slice(content);
    object.extend_from_slice(b"\nendstream");
    object
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::figure::{Strip, draw_moment};
    use crate::figure::Moment;
    use crate::figure::library::Library;
    use crate::figure::proportions::Proportions;

    #[test]
    fn thin_lines_are_thicker_on_small_figures_alone() {
        let named = &Library::shipped().poses[0];
        let moment = Moment::of(&named.name, named.pose.clone());
        let strip = Strip { stature: 1.0, is_rtl: false };
        let drawing = draw_moment(&moment, Proportions::of_age(10.0), strip);
        let plate = Arc::new(Plate::new(3, drawing));
        let set = |scale| Impression { plate: Arc::clone(&plate), at: (0.0, 0.0), scale };
        assert_eq!(set(80.0).edge().name(), "F3");
        assert_eq!(set(40.0).edge().name(), "F3T3");
        for scale in [20.0, 40.0, 80.0] {
            let items = plate.items(set(scale).edge().least, scale);
            let pens = items.into_iter().filter_map(|item| match item {
                Item::Shape { stroke, .. } => stroke.map(|stroke| stroke.thickness),
                _ => None,
            });
            assert!(pens.fold(f32::MAX, f32::min) >= THINNEST - 1e-4, "{scale}");
        }
    }
}
