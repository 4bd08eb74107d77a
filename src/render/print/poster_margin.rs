//! The margin of the wall poster: a thick line that runs down past all parts as a route does, the black mark of each
//! part on it, and a stop for each key point: a ring round the number of the figure that shows it, else a short bar.

use super::drawings::{THINNEST, place_marks};
use super::page::{BLACK, Item, Stroke, WHITE};
use super::poster::SMALLEST_POINT;
use super::scale::Type;
use crate::drawing::{Corner, Mark, circle, part_mark};
use crate::pack::PartKind;

/// The middle of the line.
pub const CENTRE: f32 = 16.0;

/// How thick the line is.
const LINE: f32 = 2.8;

/// The largest mark of a part.
const MARK: f32 = 32.0;

/// The ring round a number, and how thick it is.
const RING: f32 = 14.6;
const PEN: f32 = 1.4;

/// From the middle of a ring to its outer edge.
pub const RING_ROOM: f32 = RING + PEN / 2.0;

/// The bar of a key point that no figure shows: how far it reaches from the line’s middle.
const BAR: f32 = 11.0;

/// The numbers: as the key points, to be read from across the room. Their lines have room for the ring.
pub const NUMBER: Type = Type { size: SMALLEST_POINT as f32, leading: 36.0, is_bold: true };

/// Where the line stops for a key point.
#[derive(Clone, Copy, Debug)]
pub struct Stop {
    /// Below the top of the part.
    pub y: f32,
    pub is_pictured: bool,
}

/// The margin beside one part.
#[derive(Debug)]
pub struct Margin {
    pub kind: PartKind,
    /// Where the next part begins, or where the last ends.
    pub end: f32,
    pub is_last: bool,
    pub stops: Vec<Stop>,
}

impl Margin {
    /// Draws it beside key points of a size.
    pub fn lay(&self, size: f32) -> Vec<Item> {
        let tall = mark_size(size);
        let line = |from, to| Item::line(from, to, LINE);
        let mut items = Vec::new();
        if self.is_last {
            items.push(line((CENTRE - BAR, self.end), (CENTRE + BAR, self.end)));
        }
        // The line goes from ring to ring, and under none.
        let mut top = tall;
        for stop in &self.stops {
            if stop.is_pictured {
                items.push(ring((CENTRE, stop.y)));
                items.push(line((CENTRE, top), (CENTRE, (stop.y - RING).max(top))));
                top = stop.y + RING;
            } else {
                items.push(line((CENTRE, stop.y), (CENTRE + BAR, stop.y)));
            }
        }
        items.push(line((CENTRE, top), (CENTRE, self.end)));
        let (left, inset) = (CENTRE - tall / 2.0, tall * 0.17);
        items.push(Item::rectangle((left, 0.0), (tall, tall), Some(BLACK), None));
        let mark = part_mark(self.kind, (left + inset, inset), tall - 2.0 * inset);
        items.extend(place_marks(mark, THINNEST).map(|item| item.shaded(WHITE)));
        items
    }
}

/// The mark of a part, smaller where the first key point comes close to it.
pub fn mark_size(size: f32) -> f32 {
    (size * 1.38 - 16.5).min(MARK)
}

/// A ring for a number.
pub fn ring(centre: (f32, f32)) -> Item {
    let outline: Vec<Corner> = match circle(centre, RING, None, None) {
        Mark::Shape { outline, .. } => outline,
        _ => Vec::new(),
    };
    let stroke = Stroke { thickness: PEN, grey: BLACK, dash: None, is_open: false };
    Item::Shape { outline, fill: None, stroke: Some(stroke) }
}
