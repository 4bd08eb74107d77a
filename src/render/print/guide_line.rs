//! The time line of the home guide, with a figure on the bar of each part: what the child does when, at a glance.

use super::drawings::place_drawing;
use super::page::{Item, Role};
use super::plate::Impression;
use super::sheets::SheetSource;
use super::strip::Column;
use crate::drawing::figure::BELOW_FLOOR;
use crate::drawing::{Bar, Room, draw_low_time_line, draw_time_line, low_bars};
use crate::figure::Moment;
use crate::pack::Part;
use crate::prose::plain_line;
use crate::render::phrases::is_right_to_left;

/// Statures that are tried, in points: 18 to 12 mm.
const STATURES: [f32; 3] = [51.0, 43.0, 35.0];

/// A figure may reach so far over the ends of its bar.
const OVER: f32 = 1.5;

/// A moment and how large it is, in statures.
#[derive(Clone, Copy)]
struct Measured<'s> {
    moment: &'s Moment,
    width: f32,
    height: f32,
}

/// The time lines that the guide of a session can have.
pub struct GuideLines<'s> {
    with: Vec<Standing<'s>>,
    bare: Standing<'s>,
}

/// The number of a part, its bar and what stands on it.
type Figure<'s> = (usize, Bar, &'s Moment);

/// The figures on a time line, and its measures.
pub struct Standing<'s> {
    stature: Option<f32>,
    figures: Vec<Figure<'s>>,
    /// From the top to the foot of the bars.
    above: f32,
    pub height: f32,
}

impl<'s> GuideLines<'s> {
    /// Measures every moment once; sizes follow from the stature.
    pub fn of(source: &SheetSource<'s>, width: f32) -> Self {
        let bars = low_bars(source.session, &source.plans.time, width);
        let moments = source.session.parts.iter().map(|part| measure_moments(part, source));
        let moments: Vec<Vec<Measured<'s>>> = moments.collect();
        let all: Vec<Standing<'s>> =
            STATURES.into_iter().map(|stature| stand(stature, &bars, &moments, source)).collect();
        let most = all.iter().map(|standing| standing.figures.len()).max().unwrap_or(0);
        // Where bars are narrow, smaller figures are more.
        let is_full = |standing: &Standing<'_>| standing.figures.len() * 8 >= most * 7;
        let with = all.into_iter().filter(|standing| most > 0 && is_full(standing)).collect();
        let bare =
            draw_time_line(source.session, &source.plans.time, source.words, source.room(width));
        let bare = Standing { stature: None, figures: Vec::new(), above: 0.0, height: bare.height };
        Self { with, bare }
    }

    /// The statures that suit, largest first.
    pub fn statures(&self) -> impl DoubleEndedIterator<Item = f32> {
        self.with.iter().filter_map(|standing| standing.stature)
    }

    /// The line with figures of that size, or with none.
    pub fn standing(&self, stature: Option<f32>) -> &Standing<'s> {
        self.with.iter().find(|standing| standing.stature == stature).unwrap_or(&self.bare)
    }
}

fn measure_moments<'s>(part: &'s Part, source: &SheetSource<'s>) -> Vec<Measured<'s>> {
    let measure = |moment| {
        let set = source.figures.set_without_floor(moment, 1.0);
        Measured { moment, width: set.width(), height: set.height() }
    };
    part.figure.by_weight().into_iter().map(measure).collect()
}

/// Of each part the first moment that is no wider than its bar, if there is one a moment that no part before it has.
fn stand<'s>(
    stature: f32,
    bars: &[Bar],
    moments: &[Vec<Measured<'s>>],
    source: &SheetSource<'s>,
) -> Standing<'s> {
    let mut figures: Vec<Figure<'s>> = Vec::new();
    let mut above = bars.iter().map(|bar| bar.height).fold(0.0, f32::max);
    for (at, (bar, moments)) in bars.iter().zip(moments).enumerate() {
        let room = bar.width + 2.0 * OVER;
        let is_new = |one: &&Measured<'_>| {
            !figures.iter().any(|(_, _, seen): &Figure<'_>| seen.pose == one.moment.pose)
        };
        let fitting = || moments.iter().filter(|one| one.width * stature <= room);
        if let Some(one) = fitting().find(is_new).or_else(|| fitting().next()) {
            figures.push((at, *bar, one.moment));
            above = above.max(bar.height + (one.height - BELOW_FLOOR) * stature);
        }
    }
    let (time, words) = (&source.plans.time, source.words);
    let line = draw_low_time_line(source.session, time, words, (source.room(100.0), above));
    Standing { stature: Some(stature), figures, above, height: line.height }
}

impl Standing<'_> {
    /// Lays the line and, on its bars, the figures: each is told with the name of its part.
    pub fn lay(&self, column: &mut Column<'_, '_>, source: &SheetSource<'_>) {
        let room = source.room(column.width);
        let (session, time, words) = (source.session, &source.plans.time, source.words);
        let line = if self.stature.is_none() {
            draw_time_line(session, time, words, room)
        } else {
            // Without words it is moved over whole where the sheet is mirrored.
            let is_rtl = is_right_to_left(words.language());
            draw_low_time_line(session, time, words, (Room { is_rtl, ..room }, self.above))
        };
        let drawn = place_drawing(column.shaper, &line);
        let mut items = vec![Item::group(Role::Figure(line.says), column.shaper.next_key(), drawn)];
        for (at, bar, moment) in &self.figures {
            let stature = self.stature.unwrap_or_default();
            // It stands on its bar, without a floor of its own.
            let set = source.figures.set_without_floor(moment, stature);
            let x = bar.left + (bar.width - set.width()) / 2.0;
            let x = x.min(column.width - set.width()).max(0.0);
            let y = self.above - bar.height + BELOW_FLOOR * stature - set.height();
            let title = session.parts.get(*at).map(|part| plain_line(&part.title));
            let says = source.figures.says(moment);
            let says = format!("{}: {says}", title.unwrap_or_default());
            let set = vec![Item::Plate(Impression { at: (x, y), ..set })];
            items.push(Item::group(Role::Figure(says), column.shaper.next_key(), set));
        }
        column.drawing(line.height, items);
    }
}
