//! From where a body is seen: points in the room → points of a drawing.

use crate::drawing::At;
use crate::figure::{Point, View};

/// A view without perspective, level with the body.
#[derive(Clone, Copy, Debug)]
pub(super) struct Camera {
    right: Point,
    toward: Point,
}

/// How far round a corner view stands from the side.
const CORNER: f64 = 38.0;

impl Camera {
    /// Pages that run from right to left have figures that face left: seen from their left side, not
    /// mirrored, so that left and right stay true.
    pub(super) fn of(view: View, is_rtl: bool) -> Self {
        let round: f64 = match (view, is_rtl) {
            (View::Side, false) | (View::OtherSide, true) => 0.0,
            (View::Side, true) | (View::OtherSide, false) => 180.0,
            (View::Corner, false) => CORNER,
            (View::Corner, true) => 180.0 - CORNER,
            (View::Front, _) => 90.0,
            (View::Back, _) => -90.0,
        };
        let (sin, cos) = round.to_radians().sin_cos();
        Self { right: Point::new(cos, sin, 0.0), toward: Point::new(sin, -cos, 0.0) }
    }

    /// Right, then down.
    pub(super) fn see(&self, at: Point) -> At {
        (small(at.dot(self.right)), small(-at.z))
    }

    /// How near to the eye.
    pub(super) fn depth(&self, at: Point) -> f32 {
        small(at.dot(self.toward))
    }

    /// +1 where forwards is to the right on the drawing, −1 where it is to the left, less between.
    pub(super) fn ahead(&self) -> f32 {
        small(self.right.x)
    }

    /// How wide a body looks that is so broad and so deep: with its left and forward axes.
    pub(super) fn extent(&self, left: Point, forward: Point, broad: f32, deep: f32) -> f32 {
        let seen = |axis: Point| {
            let (x, y) = self.see(axis);
            x.hypot(y)
        };
        (seen(left) * broad).hypot(seen(forward) * deep)
    }
}

#[allow(clippy::cast_possible_truncation, reason = "points of a drawing")]
pub(super) const fn small(number: f64) -> f32 {
    number as f32
}
