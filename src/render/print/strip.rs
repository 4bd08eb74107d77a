//! Strips: the content of a sheet as pieces that are never cut, each with its height. Whatever is
//! longer than a strip – a paragraph, a list – is several, and can go on in the next frame.

use super::page::{Item, MM};
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use crate::prose::{Block, Marker, Run};

/// A piece that stays whole; positions count from its top left corner.
#[derive(Clone, Debug, Default)]
pub struct Strip {
    pub height: f32,
    /// Left out at the top of a frame.
    pub space_before: f32,
    /// It must not be the last in its frame.
    pub keeps_next: bool,
    pub items: Vec<Item>,
}

/// Fills a column of a given width with strips.
pub struct Column<'c, 'f> {
    pub shaper: &'c mut Shaper<'f>,
    pub width: f32,
    pub strips: Vec<Strip>,
    /// The gap that the next strip gets before it.
    gap: f32,
}

/// How a paragraph sits in its column.
#[derive(Clone, Copy, Debug, Default)]
pub struct Seat {
    /// Moved in from the left.
    pub indent: f32,
    /// A thick line at the left, beside the text.
    pub has_bar: bool,
}

/// How far a list entry is moved in, in points.
const LIST_STEP: f32 = 14.0;

impl<'c, 'f> Column<'c, 'f> {
    pub fn new(shaper: &'c mut Shaper<'f>, width: f32) -> Self {
        Self { shaper, width, strips: Vec::new(), gap: 0.0 }
    }

    /// Leaves at least so much room before what comes next.
    pub fn gap(&mut self, points: f32) {
        self.gap = self.gap.max(points);
    }

    /// Adds a strip of drawing.
    pub fn drawing(&mut self, height: f32, items: Vec<Item>) {
        self.push(Strip { height, items, ..Strip::default() });
    }

    /// The last strip must not stand alone at the end of a frame.
    pub fn keep_with_next(&mut self) {
        if let Some(last) = self.strips.last_mut() {
            last.keeps_next = true;
        }
    }

    fn push(&mut self, mut strip: Strip) {
        strip.space_before = std::mem::take(&mut self.gap);
        self.strips.push(strip);
    }

    /// A short label above what it names.
    pub fn label(&mut self, text: &str, kind: Type) {
        self.words(&[Run::plain(text)], kind, Seat::default());
        self.keep_with_next();
    }

    /// A paragraph of styled words.
    pub fn words(&mut self, runs: &[Run], kind: Type, seat: Seat) {
        let lines = self.shaper.shape(runs, kind, (self.width - seat.indent).max(40.0));
        self.lines(lines, kind, seat, None);
    }

    /// Prose of several blocks.
    pub fn blocks(&mut self, blocks: &[Block], kind: Type, seat: Seat) {
        for (index, block) in blocks.iter().enumerate() {
            if index > 0 {
                let is_list = block.marker != Marker::None;
                self.gap(if is_list { kind.leading * 0.15 } else { kind.leading * 0.4 });
            }
            self.block(block, kind, seat);
        }
    }

    fn block(&mut self, block: &Block, kind: Type, seat: Seat) {
        #[allow(clippy::cast_precision_loss, reason = "texts nest a few levels at most")]
        let depth = block.depth.min(6) as f32;
        let indent = seat.indent + depth * LIST_STEP;
        let marker = match &block.marker {
            Marker::None => None,
            Marker::Bullet => Some("•".to_owned()),
            Marker::Number(number) => Some(format!("{number}.")),
        };
        let seat = Seat { indent, ..seat };
        let lines = self.shaper.shape(&block.runs, kind, (self.width - indent).max(40.0));
        let marker = marker.and_then(|marker| {
            let shaped = self.shaper.shape(&[Run::plain(marker)], kind, 60.0).into_iter().next()?;
            let at = (indent - shaped.width - 4.0).max(0.0);
            Some((shaped, at))
        });
        self.lines(lines, kind, seat, marker);
        if block.is_heading {
            self.keep_with_next();
        }
    }

    /// An entry of a list with a bullet.
    pub fn entry(&mut self, runs: &[Run], kind: Type) {
        let block = Block { marker: Marker::Bullet, depth: 1, is_heading: false, runs: runs.to_vec() };
        self.block(&block, kind, Seat::default());
    }

    /// Lines of one paragraph: its first two and its last two stay together.
    fn lines(
        &mut self,
        lines: Vec<ShapedLine>,
        kind: Type,
        seat: Seat,
        marker: Option<(ShapedLine, f32)>,
    ) {
        let count = lines.len();
        let mut marker = marker;
        for (index, line) in lines.into_iter().enumerate() {
            let mut items = Vec::new();
            if seat.has_bar {
                items.push(Item::rectangle((0.0, 0.0), (1.2 * MM, kind.leading), Some(0.0), None));
            }
            if let Some((shaped, at)) = marker.take() {
                items.extend(placed(shaped, at));
            }
            items.extend(placed(line, seat.indent));
            let is_orphan = count > 1 && index == 0;
            let is_widow = count > 1 && index + 2 == count;
            self.push(Strip {
                height: kind.leading,
                keeps_next: is_orphan || is_widow,
                items,
                ..Strip::default()
            });
        }
    }

    /// Two texts side by side, each under its label, line by line so that they can go on elsewhere.
    pub fn pair(&mut self, left: (&str, &[Run]), right: (&str, &[Run]), kind: Type) {
        let gutter = 10.0;
        let half = (self.width - gutter) / 2.0;
        let mut sides = [left, right].map(|(label, runs)| {
            let mut lines = self.shaper.shape(&[Run::bold(label)], Type::LABEL, half);
            lines.extend(self.shaper.shape(runs, kind, half));
            lines.into_iter()
        });
        let before = self.strips.len();
        let mut is_first = true;
        loop {
            let [left, right] = &mut sides;
            let (left, right) = (left.next(), right.next());
            if left.is_none() && right.is_none() {
                break;
            }
            let mut items: Vec<Item> = left.into_iter().flat_map(|line| placed(line, 0.0)).collect();
            items.extend(right.into_iter().flat_map(|line| placed(line, half + gutter)));
            self.push(Strip {
                height: kind.leading.max(if is_first { Type::LABEL.leading } else { 0.0 }),
                keeps_next: true,
                items,
                ..Strip::default()
            });
            is_first = false;
        }
        // A short pair stays whole; a long one may go on elsewhere after its first lines.
        let pair = &mut self.strips[before..];
        let is_long = pair.len() > 8;
        for (index, strip) in pair.iter_mut().enumerate() {
            strip.keeps_next = index == 0 || !is_long;
        }
        if let Some(last) = pair.last_mut() {
            last.keeps_next = false;
        }
    }
}

/// A shaped line as items, moved in from the left.
pub fn placed(line: ShapedLine, right: f32) -> impl Iterator<Item = Item> {
    line.runs.into_iter().map(move |run| Item::Glyphs(run).moved(right, 0.0))
}
