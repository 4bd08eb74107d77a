//! The running order drawn to scale: one bar a part, as wide as it is long and taller the harder it is.

use super::marks::part_mark;
use super::page::{BLACK, Item};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::{SheetSource, one};
use super::strip::placed;
use crate::read::words::Effort;

/// The tallest bar.
const BAR: f32 = 34.0;

/// Below the bars: marks, then the minutes.
const MARK: f32 = 13.0;

/// The whole height of the drawing.
pub const HEIGHT: f32 = BAR + MARK + 6.0 + 20.0;

/// Draws the time line at a width.
pub fn draw_time_line(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, width: f32) -> Vec<Item> {
    let time = &source.plans.time;
    let whole = time.total.seconds().max(time.slot.seconds()).max(1);
    #[allow(
        clippy::cast_precision_loss,
        reason = "a day has fewer seconds than an f32 holds exactly"
    )]
    let at = |seconds: u32| width * seconds as f32 / whole as f32;
    let mut items = Vec::new();
    for (part, span) in source.session.parts.iter().zip(&time.spans) {
        let (left, right) = (at(span.start.seconds()), at(span.end().seconds()));
        let tall = match part.effort.as_ref().map(|effort| effort.value) {
            Some(Effort::Vigorous) => BAR,
            Some(Effort::Moderate) => BAR * 0.68,
            Some(Effort::Light) => BAR * 0.38,
            _ => BAR * 0.14,
        };
        let wide = (right - left - 1.5).max(0.8);
        items.push(Item::rectangle((left, BAR - tall), (wide, tall), Some(0.78), Some(0.8)));
        if right - left > MARK {
            let middle = f32::midpoint(left, right) - MARK / 2.0;
            items.extend(part_mark(part.kind, (middle, BAR + 4.0), MARK));
        }
    }
    items.push(Item::line((0.0, BAR), (width, BAR), 1.6));
    items.extend(minute_ticks(shaper, width, whole));
    items
}

/// A tick and its minute: every five, or every ten of a long slot.
fn minute_ticks(shaper: &mut Shaper<'_>, width: f32, whole: u32) -> Vec<Item> {
    let step = if whole > 45 * 60 { 600 } else { 300 };
    let top = BAR + MARK + 6.0;
    let mut items = Vec::new();
    for second in (0..=whole).step_by(step) {
        #[allow(
            clippy::cast_precision_loss,
            reason = "a day has fewer seconds than an f32 holds exactly"
        )]
        let x = width * second as f32 / whole as f32;
        items.push(Item::Line {
            from: (x.clamp(0.4, width - 0.4), top),
            to: (x.clamp(0.4, width - 0.4), top + 4.0),
            thickness: 0.8,
            dash: None,
            grey: BLACK,
        });
        let label = shaper.shape(&one((second / 60).to_string()), Type::SMALL, 60.0);
        for line in label {
            let left = (x - line.width / 2.0).clamp(0.0, width - line.width);
            items.extend(placed(line, left).map(|item| item.moved(0.0, top + 4.5)));
        }
    }
    items
}
