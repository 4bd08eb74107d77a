//! One moment of a figure as a drawing.

use super::{At, Drawing, Look, Mark, sketch_moment};
use crate::figure::{Moment, place_body, proportions::Proportions};

/// How a strip is laid out.
#[derive(Clone, Copy, Debug)]
pub struct Strip {
    /// A stature, in units of the drawing.
    pub stature: f32,
    pub is_rtl: bool,
}

/// Round a figure.
const AROUND: f32 = 0.03;

/// What a drawing has below the floor, in statures.
pub const BELOW_FLOOR: f32 = 0.045;

/// Draws one moment; the floor is drawn under it.
pub fn draw_moment(moment: &Moment, proportions: Proportions, strip: Strip) -> Drawing {
    let (body, _) = place_body(&moment.pose, proportions);
    let mut marks = sketch_moment(moment, &body, strip.is_rtl);
    let (low, high, top) = bounds(&marks);
    let floor = vec![(low - 0.02, 0.014), (high + 0.02, 0.014)];
    marks.insert(0, Mark::Smooth { around: floor, look: Look::Floor, is_open: true, scale: 1.0 });
    let by = strip.stature;
    let (left, up) = (low - AROUND, top - AROUND);
    for mark in &mut marks {
        mark.change_points(|(x, y)| ((x - left) * by, (y - up) * by));
        if let Mark::Smooth { scale, .. } = mark {
            *scale = by;
        }
    }
    let width = (high - low + 2.0 * AROUND) * by;
    Drawing { width, height: (BELOW_FLOOR - up) * by, marks, says: String::new() }
}

/// Left, right and top of what is drawn.
fn bounds(marks: &[Mark]) -> (f32, f32, f32) {
    let mut points: Vec<At> = Vec::new();
    for mark in marks {
        if let Mark::Smooth { around, .. } = mark {
            points.extend(around);
        }
    }
    points.iter().fold((f32::MAX, f32::MIN, 0.0), |(low, high, top), (x, y)| {
        (low.min(*x), high.max(*x), top.min(*y))
    })
}
