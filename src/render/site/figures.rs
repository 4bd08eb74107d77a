//! Figures on pages: a strip in one SVG, and the same pieces once more as a moving picture.

use std::collections::BTreeMap;

use serde::Serialize;

use super::Site;
use super::html::{Html, Scribe, figure_html};
use crate::drawing::figure::{Strip, draw_moment};
use crate::drawing::marks_to_svg;
use crate::figure::proportions::Proportions;
use crate::figure::{Caption, Moment};
use crate::pack::{Part, Session};
use crate::render::figure_phrases::figure_says;

/// A stature in units: fine enough for whole ones, short to write.
pub(super) const STATURE: f32 = 400.0;

/// Between the moments of a strip.
const GAP: f32 = 24.0;

/// Pixels to a unit, where there is room: a figure is as tall as nine lines.
const SHOWN: f32 = 0.5;

/// Under a moment, for its number.
const NUMBER: f32 = 60.0;

/// The figure of a part.
#[derive(Serialize, Clone, Debug)]
pub(super) struct FigureView {
    svg: Html,
    /// The same moments in one place, one after the other.
    moving: Option<Html>,
    /// How many moments: 2 to 5.
    count: usize,
    /// Words of their own under the moments: number and text.
    says: Vec<(usize, Html)>,
    is_handed: bool,
}

/// The proportions of the children of a session: those in the middle of its ages.
pub fn proportions_of(session: &Session) -> Proportions {
    let ages = session.ages.value;
    Proportions::of_age(f64::midpoint(f64::from(ages.youngest), f64::from(ages.oldest)))
}

pub(super) fn show_figure(
    site: &Site<'_>,
    scribe: &Scribe<'_>,
    (number, part): (usize, &Part),
    proportions: Proportions,
    drawn: &mut Drawn,
) -> Option<FigureView> {
    let moments = &part.figure.moments;
    if moments.is_empty() {
        return None;
    }
    let says = figure_says(moments, &site.words);
    let frames = draw_frames(moments, proportions, site.is_rtl());
    let own_words = |(index, moment): (usize, &Moment)| match &moment.caption {
        Some(Caption::Words(words)) => Some((index + 1, scribe.line(words))),
        _ => None,
    };
    Some(FigureView {
        moving: (frames.len() > 1).then(|| figure_html(&moving(&frames, number))),
        svg: figure_html(&strip(frames, number, &says, drawn)),
        count: moments.len(),
        says: moments.iter().enumerate().filter_map(own_words).collect(),
        is_handed: moments.iter().any(|moment| moment.pose.is_handed),
    })
}

/// A moment and where it stands in its strip.
struct Frame {
    number: usize,
    inner: String,
    size: (f32, f32),
    x: f32,
    y: f32,
}

fn draw_frames(moments: &[Moment], proportions: Proportions, is_rtl: bool) -> Vec<Frame> {
    let strip = Strip { stature: STATURE, is_rtl };
    let mut frames: Vec<Frame> = moments
        .iter()
        .enumerate()
        .map(|(index, moment)| {
            let drawing = draw_moment(moment, proportions, strip);
            let size = (drawing.width.ceil(), drawing.height.ceil());
            let inner = marks_to_svg(&drawing.marks);
            Frame { number: index + 1, inner, size, x: 0.0, y: 0.0 }
        })
        .collect();
    let tallest = frames.iter().map(|frame| frame.size.1).fold(0.0, f32::max);
    let mut x = 0.0;
    let order: Vec<usize> =
        if is_rtl { (0..frames.len()).rev().collect() } else { (0..frames.len()).collect() };
    for at in order {
        let frame = &mut frames[at];
        (frame.x, frame.y) = (x, tallest - frame.size.1);
        x += frame.size.0 + GAP;
    }
    frames
}

/// The pieces that stand on a page already, by what they draw: drawn once, used again.
#[derive(Debug, Default)]
pub(super) struct Drawn {
    by_marks: BTreeMap<String, String>,
}

impl Drawn {
    /// The marks under an id of their own, or a use of those that were drawn before.
    fn once(&mut self, marks: String, id: String) -> String {
        if let Some(before) = self.by_marks.get(&marks) {
            return format!("<use id=\"{id}\" href=\"#{before}\"/>");
        }
        let drawn = format!("<g id=\"{id}\">{marks}</g>");
        self.by_marks.insert(marks, id);
        drawn
    }
}

/// All moments side by side, with their numbers.
fn strip(frames: Vec<Frame>, number: usize, says: &str, drawn: &mut Drawn) -> String {
    let wide = frames.iter().map(|frame| frame.x + frame.size.0).fold(0.0, f32::max);
    let tall = frames.iter().map(|frame| frame.y + frame.size.1).fold(0.0, f32::max);
    let is_strip = frames.len() > 1;
    let below = if is_strip { NUMBER } else { 0.0 };
    let mut inner = String::new();
    for frame in frames {
        let Frame { number: moment, inner: marks, size, x, y } = frame;
        let piece = drawn.once(marks, format!("f{number}-{moment}"));
        if is_strip {
            let at = (x + size.0 / 2.0, tall + NUMBER - 14.0);
            inner.push_str(&format!(
                "<g transform=\"translate({x} {y})\">{piece}</g><text x=\"{:.0}\" y=\"{:.0}\">{moment}</text>",
                at.0, at.1
            ));
        } else {
            inner.push_str(&piece);
        }
    }
    let tall = tall + below;
    let (shown_wide, shown_tall) = (wide * SHOWN, tall * SHOWN);
    let label = crate::drawing::escape(says);
    format!(
        "<svg class=\"figure\" viewBox=\"0 0 {wide} {tall}\" width=\"{shown_wide:.0}\" height=\"{shown_tall:.0}\" role=\"img\" aria-label=\"{label}\">{inner}</svg>"
    )
}

/// The moments on one spot: a style shows them in turn.
fn moving(frames: &[Frame], number: usize) -> String {
    let wide = frames.iter().map(|frame| frame.size.0).fold(0.0, f32::max);
    let tall = frames.iter().map(|frame| frame.size.1).fold(0.0, f32::max);
    let uses: String = frames
        .iter()
        .map(|frame| {
            let (x, y) = ((wide - frame.size.0) / 2.0, tall - frame.size.1);
            format!("<use href=\"#f{number}-{}\" x=\"{x:.0}\" y=\"{y:.0}\"/>", frame.number)
        })
        .collect();
    format!(
        "<svg class=\"figure moves-{}\" viewBox=\"0 0 {wide} {tall}\" aria-hidden=\"true\">{uses}</svg>",
        frames.len()
    )
}
