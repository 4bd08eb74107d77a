//! The footprint of a part: its zones and their common outline. A run, a jump or a throw goes in the
//! direction of y; the line it begins at lies on y = 0.

use super::hull::convex_hull;
use crate::quantity::Length;

/// A point on the floor, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    pub x: f64,
    pub y: f64,
}

impl Point {
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// Turned about the origin, against the clock, by an angle in radians.
    #[must_use]
    pub fn turned(self, radians: f64) -> Self {
        let (sin, cos) = radians.sin_cos();
        Self::new(self.x * cos - self.y * sin, self.x * sin + self.y * cos)
    }

    #[must_use]
    pub fn moved(self, by: Self) -> Self {
        Self::new(self.x + by.x, self.y + by.y)
    }
}

/// What a piece of floor is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ZoneKind {
    /// Where the child moves about.
    Moving,
    /// Before the line: run-up, or the place to stand.
    RunUp,
    /// Where a jump or throw comes down.
    Landing,
    /// To come to a stop.
    Stopping,
    /// Kept clear: nobody and nothing is here.
    Clear,
}

/// A piece of floor.
#[derive(Clone, Debug, PartialEq)]
pub struct Zone {
    pub kind: ZoneKind,
    /// Convex, against the clock.
    pub outline: Vec<Point>,
}

/// The floor and headroom of one part.
#[derive(Clone, Debug, PartialEq)]
pub struct Footprint {
    /// The whole of it: convex, against the clock.
    pub outline: Vec<Point>,
    /// In the order they are drawn: what is kept clear lies below the rest.
    pub zones: Vec<Zone>,
    /// The take-off or throwing line.
    pub line: Option<(Point, Point)>,
    /// The wall it is done at.
    pub wall: Option<(Point, Point)>,
    /// Where the child stands at the start.
    pub stand: Point,
    /// Where others wait: behind the line, or outside.
    pub wait: Option<Point>,
    /// Which way it goes.
    pub goes_forward: bool,
    /// The lengths along the direction it goes, from its near end, for the chain of dimensions.
    pub chain: Vec<Length>,
    pub headroom: Option<Length>,
}

impl Footprint {
    /// Puts zones together; the outline is the smallest convex one that holds them all.
    pub(super) fn of_zones(zones: Vec<Zone>, stand: Point) -> Self {
        let points = zones.iter().flat_map(|zone| zone.outline.iter().copied()).collect();
        Self {
            outline: convex_hull(points),
            zones,
            line: None,
            wall: None,
            stand,
            wait: None,
            goes_forward: false,
            chain: Vec::new(),
            headroom: None,
        }
    }

    /// How wide and how long it is, rounded up to whole millimetres.
    pub fn size(&self) -> (Length, Length) {
        let ((left, near), (right, far)) = bounds(&self.outline);
        (whole(right - left), whole(far - near))
    }
}

/// The least and the greatest x and y.
pub fn bounds(points: &[Point]) -> ((f64, f64), (f64, f64)) {
    let start = ((f64::INFINITY, f64::INFINITY), (f64::NEG_INFINITY, f64::NEG_INFINITY));
    points.iter().fold(start, |(low, high), p| {
        ((low.0.min(p.x), low.1.min(p.y)), (high.0.max(p.x), high.1.max(p.y)))
    })
}

/// Whole millimetres, rounded up but for the dust of reckoning.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "lengths of a floor are far below the largest u32, and never below nought"
)]
pub(super) fn whole(millimetres: f64) -> Length {
    Length::from_millimetres((millimetres - 1e-6).ceil().clamp(0.0, 1e9) as u32)
}

/// A rectangle, against the clock.
pub(super) fn rectangle(left: f64, right: f64, near: f64, far: f64) -> Vec<Point> {
    vec![
        Point::new(left, near),
        Point::new(right, near),
        Point::new(right, far),
        Point::new(left, far),
    ]
}
