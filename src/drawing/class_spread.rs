//! How the marks of a class lie: a dot a child, and below it a box from quartile to quartile with the
//! median. No dot says whose it is.

use super::pen::circle;
use super::scale_of_marks::{Scale, tick_steps};
use super::{Anchor, Drawing, Mark, Pen, Room, Tone};

/// One row: the class at one time. All figures are in steps of the rule.
#[derive(Clone, Debug)]
pub struct SpreadRow {
    pub label: String,
    pub values: Vec<f64>,
    pub least: f64,
    pub quartiles: [f64; 3],
    pub most: f64,
}

/// A dot and the box, in points.
const DOT: f32 = 2.7;
const BOX: f32 = 15.0;

/// Draws rows over one scale; `show` writes a whole number of steps as a mark.
pub fn draw_class_spread(
    rows: &[SpreadRow],
    show: &dyn Fn(i64) -> String,
    says: String,
    room: Room,
) -> Drawing {
    let ends = rows.iter().flat_map(|row| [row.least, row.most]);
    let margin = room.words * 1.8;
    let scale = Scale::over(ends, (margin, room.width - margin));
    let mut marks = Vec::new();
    let mut top = 0.0;
    for row in rows {
        marks.push(Mark::words(
            (0.0, top + room.words),
            row.label.clone(),
            room.words,
            Anchor::Start,
        ));
        top += room.words * 1.5;
        let (dots, height) = dots_of(row, &scale);
        marks.extend(dots.into_iter().map(|dot| dot.moved(0.0, top + height)));
        top += height + 5.0;
        marks.extend(box_of(row, &scale).into_iter().map(|mark| mark.moved(0.0, top)));
        top += BOX + room.words * 0.7;
    }
    marks.extend(axis(&scale, show, top, room));
    let height = top + 6.0 + room.words * 1.4;
    let drawing = Drawing { width: room.width, height, marks, says };
    if room.is_rtl { drawing.mirrored() } else { drawing }
}

/// Dots that would lie on one another are stacked upwards from 0; also their height.
fn dots_of(row: &SpreadRow, scale: &Scale) -> (Vec<Mark>, f32) {
    let mut values = row.values.clone();
    values.sort_by(f64::total_cmp);
    let wide = DOT * 2.0 + 0.6;
    let (mut marks, mut tallest) = (Vec::new(), 0.0_f32);
    let (mut pile_at, mut level) = (f32::MIN, 0.0_f32);
    for value in values {
        let x = scale.at(value);
        if x - pile_at < wide {
            level += 1.0;
        } else {
            (pile_at, level) = (x, 0.0);
        }
        marks.push(circle((pile_at, -DOT - level * wide), DOT, Some(Tone::Ink), None));
        tallest = tallest.max((level + 1.0) * wide);
    }
    (marks, tallest)
}

fn box_of(row: &SpreadRow, scale: &Scale) -> Vec<Mark> {
    let [low, middle, high] = row.quartiles.map(|value| scale.at(value));
    let (least, most) = (scale.at(row.least), scale.at(row.most));
    let half = BOX / 2.0;
    vec![
        Mark::line((least, half), (most, half), Pen::ink(1.0)),
        Mark::line((least, half - 4.0), (least, half + 4.0), Pen::ink(1.0)),
        Mark::line((most, half - 4.0), (most, half + 4.0), Pen::ink(1.0)),
        Mark::rectangle(
            (low, 0.0),
            ((high - low).max(0.5), BOX),
            Some(Tone::Measured),
            Some(Pen::ink(1.0)),
        ),
        Mark::line((middle, -2.0), (middle, BOX + 2.0), Pen::ink(2.6)),
    ]
}

fn axis(scale: &Scale, show: &dyn Fn(i64) -> String, top: f32, room: Room) -> Vec<Mark> {
    let mut marks = vec![Mark::line((0.0, top), (room.width, top), Pen::ink(1.2))];
    for step in tick_steps(scale.ends(), 5) {
        let x = scale.at_step(step);
        marks.push(Mark::line((x, top), (x, top + 4.0), Pen::ink(0.8)));
        let baseline = top + 5.0 + room.words;
        marks.push(Mark::words((x, baseline), show(step), room.words, Anchor::Middle));
    }
    marks
}
