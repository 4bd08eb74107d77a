//! Distance against angle, for the teacher’s answers: a curve with its best angle marked, and a second
//! one without drag where what flies is light.

use super::pen::circle;
use super::{Anchor, At, Drawing, Mark, Pen, Room, Tone};
use crate::render::quantities::say_amount;
use crate::words::Words;

/// Distances by angle: degrees and metres.
#[derive(Clone, Copy, Debug)]
pub struct Curves<'c> {
    pub flown: &'c [(f64, f64)],
    /// Without the drag of the air; empty where it isn’t shown.
    pub vacuum: &'c [(f64, f64)],
    /// The best angle and its distance.
    pub best: (f64, f64),
}

/// Draws the figure.
pub fn draw_angle_figure(curves: Curves<'_>, words: &Words, room: Room) -> Drawing {
    let farthest = curves.flown.iter().chain(curves.vacuum).map(|(_, d)| *d).fold(0.1, f64::max);
    let field = Field::new(room, farthest);
    let mut marks = field.axes(words);
    marks.extend(field.curve(curves.vacuum, Pen::soft(1.2)));
    marks.extend(field.curve(curves.flown, Pen::ink(2.2)));
    let top = field.at(curves.best);
    let foot = field.at((curves.best.0, 0.0));
    marks.push(Mark::line(top, foot, Pen::ink(0.9).dashed(2.0, 2.0)));
    marks.push(circle(top, 3.6, Some(Tone::Measured), Some(Pen::ink(1.4))));
    let figure = format!(
        "{:.0}° · {}",
        curves.best.0,
        say_amount(&format!("{:.1} m", curves.best.1), words)
    );
    marks.push(Mark::words((top.0, top.1 - 7.0), figure.clone(), room.words, Anchor::Middle));
    let says = format!("{} {figure}", words.say("flight-figure-says"));
    Drawing { width: room.width, height: field.height, marks, says }
}

struct Field {
    room: Room,
    left: f32,
    top: f32,
    bottom: f32,
    height: f32,
    /// Metres at the top of the scale, and from one line to the next.
    most: f64,
    step: f64,
}

impl Field {
    fn new(room: Room, farthest: f64) -> Self {
        let step = [0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0];
        let step = step.into_iter().find(|step| farthest / step <= 5.0).unwrap_or(farthest / 4.0);
        let top = room.words * 2.4;
        let bottom = top + room.tallest;
        Self {
            left: room.words * 2.8,
            top,
            bottom,
            height: bottom + room.words * 3.0,
            most: (farthest / step).ceil() * step,
            step,
            room,
        }
    }

    #[allow(clippy::cast_possible_truncation, reason = "points on a page")]
    fn at(&self, (degrees, metres): (f64, f64)) -> At {
        let wide = self.room.width - self.left - 4.0;
        let x = self.left + wide * (degrees / 90.0) as f32;
        (x, self.bottom - (self.bottom - self.top) * (metres / self.most) as f32)
    }

    /// A line for every step of distance, a stroke for every fifteen degrees, and what both are.
    fn axes(&self, words: &Words) -> Vec<Mark> {
        let size = self.room.words;
        let mut marks = Vec::new();
        let mut metres = 0.0;
        while metres <= self.most + 1e-9 {
            let (x, y) = self.at((90.0, metres));
            let pen = if metres == 0.0 { Pen::ink(1.4) } else { Pen::soft(0.5) };
            marks.push(Mark::line((self.left, y), (x, y), pen));
            let number = words.number(&crate::plan::short_number(metres));
            marks.push(Mark::words((self.left - 4.0, y + size * 0.36), number, size, Anchor::End));
            metres += self.step;
        }
        for degrees in [0, 15, 30, 45, 60, 75, 90_u8] {
            let (x, y) = self.at((f64::from(degrees), 0.0));
            marks.push(Mark::line((x, y), (x, y + 4.0), Pen::ink(0.9)));
            let anchor = if degrees == 90 { Anchor::End } else { Anchor::Middle };
            let at = (x, y + 5.0 + size);
            marks.push(Mark::words(at, format!("{degrees}°"), size, anchor));
        }
        let (end, _) = self.at((90.0, 0.0));
        let below = (end, self.bottom + size * 2.6);
        marks.push(Mark::words(below, words.say("flight-axis-angle"), size, Anchor::End));
        let above = (0.0, size);
        marks.push(Mark::words(above, words.say("flight-axis-distance"), size, Anchor::Start));
        marks
    }

    fn curve(&self, points: &[(f64, f64)], pen: Pen) -> Vec<Mark> {
        let stretches = points.iter().zip(points.iter().skip(1));
        stretches.map(|(from, to)| Mark::line(self.at(*from), self.at(*to), pen)).collect()
    }
}
