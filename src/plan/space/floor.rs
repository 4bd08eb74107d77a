//! Whether an outline fits on a floor: turned at any angle on a rectangle; on an L-shaped floor turned
//! by quarters, or at any angle in either of the two rectangles it is made of.
//!
//! On a rectangle the answer is exact. Turned by φ, the width of a convex outline is the length of one
//! of its chords times the cosine of an angle, between the critical angles at which an edge lies along
//! an axis (the rotating calipers of Shamos, 1978). On each such stretch the width and the depth are
//! concave, so they are least at its ends – but both must be small enough at once, and that can be so
//! inside the stretch. The angles at which each meets the floor’s side are found in closed form and
//! tried with the ends.

use std::f64::consts::{FRAC_PI_2, PI};

use super::footprint::{Point, bounds};
use crate::quantity::Length;

/// A floor: a rectangle, or an L where a corner is taken out of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Floor {
    pub length: Length,
    pub width: Length,
    /// Length and width of the corner that is missing, if any.
    pub notch: Option<(Length, Length)>,
}

/// How an outline lies on a floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placement {
    /// Turned against the clock, in radians, then moved.
    pub turned: f64,
    pub moved: Point,
}

impl Placement {
    /// Where a point of the outline comes to lie; the floor’s own corner is (0, 0), its length along x.
    pub fn place(&self, point: Point) -> Point {
        point.turned(self.turned).moved(self.moved)
    }

    /// Whether it is turned by other than quarters.
    pub fn is_askew(&self) -> bool {
        let quarters = self.turned / FRAC_PI_2;
        (quarters - quarters.round()).abs() > 1e-6
    }
}

/// What a reckoning may be off, in millimetres.
const DUST: f64 = 1e-6;

/// Where an outline can lie; straight is preferred to turned, quarters to anything between.
pub fn fit_on_floor(outline: &[Point], floor: &Floor) -> Option<Placement> {
    let (length, width) = (metre(floor.length), metre(floor.width));
    // Straight on, then to the right: the way a plan is read.
    let quarters = || [0.0, 3.0, 1.0, 2.0].map(|quarter| quarter * FRAC_PI_2).into_iter();
    let Some((notch_length, notch_width)) = floor.notch else {
        return quarters()
            .chain(any_angles(outline, length, width))
            .find_map(|angle| fit_turned(outline, angle, length, width));
    };
    let (short, narrow) = (length - metre(notch_length), width - metre(notch_width));
    quarters()
        .find_map(|angle| fit_in_corner(outline, angle, (length, width), (short, narrow)))
        .or_else(|| fit_askew(outline, short, width))
        .or_else(|| fit_askew(outline, length, narrow))
}

fn metre(length: Length) -> f64 {
    f64::from(length.millimetres())
}

fn fit_askew(outline: &[Point], length: f64, width: f64) -> Option<Placement> {
    any_angles(outline, length, width).find_map(|angle| fit_turned(outline, angle, length, width))
}

/// Turned so, moved into the floor’s near left corner: it fits there or nowhere.
fn fit_turned(outline: &[Point], angle: f64, length: f64, width: f64) -> Option<Placement> {
    let turned: Vec<Point> = outline.iter().map(|point| point.turned(angle)).collect();
    let (low, high) = bounds(&turned);
    let fits = high.0 - low.0 <= length + DUST && high.1 - low.1 <= width + DUST;
    fits.then(|| {
        // In the middle of what room is left.
        let spare = (length - (high.0 - low.0), width - (high.1 - low.1));
        Placement {
            turned: angle,
            moved: Point::new(spare.0.max(0.0) / 2.0 - low.0, spare.1.max(0.0) / 2.0 - low.1),
        }
    })
}

/// In an L whose far right corner is missing, the near left corner is the best place there is: any
/// way from it leads towards the missing corner.
fn fit_in_corner(
    outline: &[Point],
    angle: f64,
    (length, width): (f64, f64),
    (short, narrow): (f64, f64),
) -> Option<Placement> {
    let turned: Vec<Point> = outline.iter().map(|point| point.turned(angle)).collect();
    let (low, high) = bounds(&turned);
    if high.0 - low.0 > length + DUST || high.1 - low.1 > width + DUST {
        return None;
    }
    let moved = Point::new(-low.0, -low.1);
    let placed: Vec<Point> = turned.into_iter().map(|point| point.moved(moved)).collect();
    (!reaches_into(&placed, short, narrow)).then_some(Placement { turned: angle, moved })
}

/// Whether a convex outline reaches into the quarter plane beyond (x, y): some point of it lies
/// beyond both. It is enough to cut the outline off at x and look how high the rest goes.
fn reaches_into(outline: &[Point], x: f64, y: f64) -> bool {
    let ends = outline.iter().zip(outline.iter().cycle().skip(1));
    let mut highest = f64::NEG_INFINITY;
    for (a, b) in ends {
        if a.x > x + DUST {
            highest = highest.max(a.y);
        }
        if (a.x - x) * (b.x - x) < 0.0 && (a.x.max(b.x) > x + DUST) {
            highest = highest.max(a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x));
        }
    }
    highest > y + DUST
}

/// Every angle of half a turn that decides whether an outline fits a rectangle.
fn any_angles(outline: &[Point], length: f64, width: f64) -> impl Iterator<Item = f64> {
    let corners = outline.len();
    let mut critical: Vec<f64> = (0..corners)
        .map(|i| {
            let (a, b) = (outline[i], outline[(i + 1) % corners]);
            // Turned so, the edge lies along the length; a quarter more, along the width.
            (-(b.y - a.y).atan2(b.x - a.x)).rem_euclid(FRAC_PI_2)
        })
        .flat_map(|angle| [angle, angle + FRAC_PI_2])
        .collect();
    critical.extend([0.0, PI]);
    critical.sort_by(f64::total_cmp);
    critical.dedup();
    let stretches: Vec<(f64, f64)> = critical.windows(2).map(|ends| (ends[0], ends[1])).collect();
    let mut tried = critical;
    for (from, to) in stretches {
        let middle = f64::midpoint(from, to);
        for (across, side) in [(0.0, length), (FRAC_PI_2, width)] {
            tried.extend(meeting_angles(outline, middle, across, side, (from, to)));
        }
    }
    tried.into_iter()
}

/// The angles between `from` and `to` at which the outline’s extent along an axis equals `side`.
fn meeting_angles(
    outline: &[Point],
    middle: f64,
    across: f64,
    side: f64,
    (from, to): (f64, f64),
) -> impl Iterator<Item = f64> {
    // Along this stretch the same two corners bound the extent.
    let along = |point: &Point| point.turned(middle - across).x;
    let ends = outline.iter().fold(None, |ends: Option<(Point, Point)>, point| {
        let (low, high) = ends.unwrap_or((*point, *point));
        Some((
            if along(point) < along(&low) { *point } else { low },
            if along(point) > along(&high) { *point } else { high },
        ))
    });
    let (low, high) = ends.unwrap_or((Point::new(0.0, 0.0), Point::new(0.0, 0.0)));
    let (dx, dy) = (high.x - low.x, high.y - low.y);
    let (reach, lean) = (dx.hypot(dy), dy.atan2(dx));
    // The extent is reach · cos(lean + angle − across).
    let opening = if reach > side { (side / reach).acos() } else { f64::NAN };
    [opening, -opening]
        .into_iter()
        .map(move |o| {
            let angle = (o - lean + across).rem_euclid(2.0 * PI);
            if angle > PI { angle - PI } else { angle }
        })
        .filter(move |angle| (from - 1e-9..=to + 1e-9).contains(angle))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::space::footprint::rectangle;

    fn floor(length: u32, width: u32) -> Floor {
        let length = Length::from_millimetres(length);
        Floor { length, width: Length::from_millimetres(width), notch: None }
    }

    #[test]
    fn a_long_strip_fits_from_corner_to_corner_only() {
        // Carver (1957): a strip of length p and width q fits a square of side a if p + q ≤ a·√2.
        let side = 4000;
        let fits = |p: f64| fit_on_floor(&rectangle(0.0, p, 0.0, 500.0), &floor(side, side));
        let most = f64::from(side) * 2.0_f64.sqrt() - 500.0;
        let lies = fits(most - 0.01).unwrap();
        assert!(lies.is_askew());
        assert!(fits(most + 0.01).is_none());
        assert!(!fits(3999.0).unwrap().is_askew());
    }

    #[test]
    fn an_l_takes_what_neither_rectangle_does() {
        // A triangle whose long side faces the missing corner.
        let p = Point::new;
        let triangle = [p(0.0, 0.0), p(3000.0, 0.0), p(0.0, 3000.0)];
        let l = Floor {
            notch: Some((Length::from_millimetres(1500), Length::from_millimetres(1500))),
            ..floor(3000, 3000)
        };
        assert!(fit_on_floor(&triangle, &l).is_some());
        let square = rectangle(0.0, 1600.0, 0.0, 1600.0);
        assert!(fit_on_floor(&square, &l).is_none());
    }
}
