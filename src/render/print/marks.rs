//! The marks of the five kinds of part and the steps of effort, drawn for paper. The same shapes stand
//! on the pages; each always has its word beside it.

use super::page::{At, BLACK, Corner, Item};
use crate::pack::PartKind;
use crate::read::words::Effort;

/// The marks are drawn on a square of 24 units, as on the pages.
const UNITS: f32 = 24.0;

/// How far a curve’s control point lies for a quarter of a circle.
const QUARTER: f32 = 0.5523;

/// A mark with its top left corner at `at`, `size` points wide.
pub fn part_mark(kind: PartKind, at: At, size: f32) -> Vec<Item> {
    let pen = Pen { at, scale: size / UNITS };
    match kind {
        PartKind::WarmUp => vec![
            pen.circle((12.0, 12.0), 9.5, None, Some(2.6)),
            pen.circle((12.0, 12.0), 3.4, Some(BLACK), None),
        ],
        PartKind::Technique => {
            let mut ladder = vec![
                pen.line((6.0, 2.0), (6.0, 22.0), 2.6),
                pen.line((18.0, 2.0), (18.0, 22.0), 2.6),
            ];
            ladder.extend([7.0, 12.0, 17.0].map(|y| pen.line((6.0, y), (18.0, y), 2.6)));
            ladder
        }
        PartKind::Challenge => vec![
            pen.line((5.0, 23.0), (5.0, 2.0), 2.6),
            pen.shape(&[(5.0, 2.0), (22.0, 8.0), (5.0, 14.0)]),
        ],
        PartKind::Stretch => [12.0, 21.0]
            .into_iter()
            .flat_map(|y| {
                [
                    pen.line((4.0, y), (12.0, y - 8.0), 2.8),
                    pen.line((12.0, y - 8.0), (20.0, y), 2.8),
                ]
            })
            .collect(),
        PartKind::CoolDown => {
            vec![pen.half_disc((12.0, 15.0), 9.0), pen.line((1.0, 20.0), (23.0, 20.0), 2.6)]
        }
    }
}

/// Three steps, as many filled as the work is hard.
pub fn effort_steps(effort: Effort, at: At, height: f32) -> Vec<Item> {
    let filled = match effort {
        Effort::Rest => 0,
        Effort::Light => 1,
        Effort::Moderate => 2,
        Effort::Vigorous => 3,
    };
    let width = height * 0.36;
    (0..3_u8)
        .map(|step| {
            let tall = height * (f32::from(step) + 1.0) / 3.0;
            let x = at.0 + f32::from(step) * width * 1.4;
            let fill = (step < filled).then_some(BLACK);
            Item::rectangle((x, at.1 + height - tall), (width, tall), fill, Some(0.8))
        })
        .collect()
}

/// How wide [`effort_steps`] are.
pub fn effort_width(height: f32) -> f32 {
    height * 0.36 * 3.8
}

struct Pen {
    at: At,
    scale: f32,
}

impl Pen {
    fn to(&self, (x, y): At) -> At {
        (self.at.0 + x * self.scale, self.at.1 + y * self.scale)
    }

    fn line(&self, from: At, to: At, thickness: f32) -> Item {
        Item::line(self.to(from), self.to(to), thickness * self.scale)
    }

    fn shape(&self, points: &[At]) -> Item {
        let outline =
            points.iter().map(|point| Corner { at: self.to(*point), is_bent: false }).collect();
        Item::Shape { outline, fill: Some(BLACK), stroke: None, stroke_grey: BLACK }
    }

    fn circle(&self, (x, y): At, r: f32, fill: Option<f32>, stroke: Option<f32>) -> Item {
        let k = r * QUARTER;
        let corners = [
            (x + r, y, false),
            (x + r, y + k, true),
            (x + k, y + r, true),
            (x, y + r, false),
            (x - k, y + r, true),
            (x - r, y + k, true),
            (x - r, y, false),
            (x - r, y - k, true),
            (x - k, y - r, true),
            (x, y - r, false),
            (x + k, y - r, true),
            (x + r, y - k, true),
            (x + r, y, false),
        ];
        let stroke = stroke.map(|thickness| thickness * self.scale);
        Item::Shape { outline: self.corners(&corners), fill, stroke, stroke_grey: BLACK }
    }

    fn half_disc(&self, (x, y): At, r: f32) -> Item {
        let k = r * QUARTER;
        let corners = [
            (x - r, y, false),
            (x - r, y - k, true),
            (x - k, y - r, true),
            (x, y - r, false),
            (x + k, y - r, true),
            (x + r, y - k, true),
            (x + r, y, false),
        ];
        Item::Shape {
            outline: self.corners(&corners),
            fill: Some(BLACK),
            stroke: None,
            stroke_grey: BLACK,
        }
    }

    fn corners(&self, corners: &[(f32, f32, bool)]) -> Vec<Corner> {
        corners
            .iter()
            .map(|(x, y, is_bent)| Corner { at: self.to((*x, *y)), is_bent: *is_bent })
            .collect()
    }
}
