//! The marks of the five kinds of part and the steps of effort. Each always has its word beside it.

use super::pen::{circle, half_disc};
use super::{At, Mark, Pen, Tone};
use crate::pack::PartKind;
use crate::read::words::Effort;

/// The marks are drawn on a square of 24 units.
const UNITS: f32 = 24.0;

/// A mark with its top left corner at `at`, `size` points wide.
pub fn part_mark(kind: PartKind, at: At, size: f32) -> Vec<Mark> {
    let scale = size / UNITS;
    unit_mark(kind)
        .into_iter()
        .map(|mut mark| {
            mark.change_points(|(x, y)| (at.0 + x * scale, at.1 + y * scale));
            scale_pen(&mut mark, scale);
            mark
        })
        .collect()
}

fn scale_pen(mark: &mut Mark, scale: f32) {
    if let Mark::Line { pen, .. } | Mark::Shape { pen: Some(pen), .. } = mark {
        pen.thickness *= scale;
    }
}

fn unit_mark(kind: PartKind) -> Vec<Mark> {
    let stroke = |from, to| Mark::line(from, to, Pen::ink(2.6));
    match kind {
        PartKind::WarmUp => vec![
            circle((12.0, 12.0), 9.5, None, Some(Pen::ink(2.6))),
            circle((12.0, 12.0), 3.4, Some(Tone::Ink), None),
        ],
        PartKind::Technique => {
            let mut ladder =
                vec![stroke((6.0, 2.0), (6.0, 22.0)), stroke((18.0, 2.0), (18.0, 22.0))];
            ladder.extend([7.0, 12.0, 17.0].map(|y| stroke((6.0, y), (18.0, y))));
            ladder
        }
        PartKind::Challenge => vec![
            stroke((5.0, 23.0), (5.0, 2.0)),
            Mark::polygon(&[(5.0, 2.0), (22.0, 8.0), (5.0, 14.0)], Some(Tone::Ink), None),
        ],
        PartKind::Stretch => [12.0, 21.0]
            .into_iter()
            .flat_map(|y| [stroke((4.0, y), (12.0, y - 8.0)), stroke((12.0, y - 8.0), (20.0, y))])
            .collect(),
        PartKind::CoolDown => {
            vec![half_disc((12.0, 15.0), 9.0), stroke((1.0, 20.0), (23.0, 20.0))]
        }
    }
}

/// Three steps, as many filled as the work is hard.
pub fn effort_steps(effort: Effort, at: At, height: f32) -> Vec<Mark> {
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
            let fill = (step < filled).then_some(Tone::Ink);
            Mark::rectangle((x, at.1 + height - tall), (width, tall), fill, Some(Pen::ink(0.8)))
        })
        .collect()
}

/// How wide [`effort_steps`] are.
pub fn effort_width(height: f32) -> f32 {
    height * 0.36 * 3.8
}
