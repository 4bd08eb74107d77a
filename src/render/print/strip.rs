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
    /// It goes on with the paragraph of the strip before it.
    pub goes_on: bool,
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

/// Between a list’s mark and its words.
const MARKER_GAP: f32 = 4.0;

/// Texts side by side are no taller than so many lines.
const MOST_PAIRED: f32 = 9.0;

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
        let kind = self.shaper.air.let_in(kind);
        let runs = with_addresses(runs);
        let lines = self.shaper.shape(&runs, kind, (self.width - seat.indent).max(40.0));
        self.lines(lines, kind, seat, None);
    }

    /// Prose of several blocks.
    pub fn blocks(&mut self, blocks: &[Block], kind: Type, seat: Seat) {
        let kind = self.shaper.air.let_in(kind);
        // A list that counts to a hundred needs more room before its words than one to nine.
        let markers = blocks.iter().filter_map(marker_of);
        let widest = markers
            .filter_map(|marker| self.shaper.shape(&[Run::plain(marker)], kind, 200.0).pop())
            .map(|line| line.width)
            .fold(0.0, f32::max);
        let step = LIST_STEP.max(widest + MARKER_GAP);
        for (index, block) in blocks.iter().enumerate() {
            if index > 0 {
                let is_list = block.marker != Marker::None;
                self.gap(if is_list { kind.leading * 0.15 } else { kind.leading * 0.4 });
            }
            self.block(block, kind, seat, step);
        }
    }

    fn block(&mut self, block: &Block, kind: Type, seat: Seat, step: f32) {
        #[allow(clippy::cast_precision_loss, reason = "texts nest a few levels at most")]
        let depth = block.depth.min(6) as f32;
        let indent = seat.indent + depth * step;
        let seat = Seat { indent, ..seat };
        let runs = with_addresses(&block.runs);
        let lines = self.shaper.shape(&runs, kind, (self.width - indent).max(40.0));
        let marker = marker_of(block).and_then(|marker| {
            let shaped = self.shaper.shape(&[Run::plain(marker)], kind, 200.0).pop()?;
            let at = (indent - shaped.width - MARKER_GAP).max(0.0);
            Some((shaped, at))
        });
        self.lines(lines, kind, seat, marker);
        if block.is_heading {
            self.keep_with_next();
        }
    }

    /// An entry of a list with a bullet.
    pub fn entry(&mut self, runs: &[Run], kind: Type) {
        let kind = self.shaper.air.let_in(kind);
        let block =
            Block { marker: Marker::Bullet, depth: 1, is_heading: false, runs: runs.to_vec() };
        self.block(&block, kind, Seat::default(), LIST_STEP);
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
                goes_on: index > 0,
                items,
                ..Strip::default()
            });
        }
    }

    /// Two short texts side by side, each under its label, as one piece: the left is read before the
    /// right. Longer ones stand one below the other, so that they can go on elsewhere.
    pub fn pair(
        &mut self,
        left: (&str, &[Run]),
        right: (&str, &[Run]),
        (kind, label_kind): (Type, Type),
    ) {
        let kind = self.shaper.air.let_in(kind);
        let gutter = 10.0;
        let half = (self.width - gutter) / 2.0;
        let sides = [(left, 0.0), (right, half + gutter)];
        let mut items = Vec::new();
        let mut tallest = 0.0_f32;
        for ((label, runs), x) in sides {
            let mut y = 0.0;
            let head = self.shaper.shape(&[Run::bold(label)], label_kind, half);
            let lines = self.shaper.shape(runs, kind, half);
            let all = head.into_iter().map(|line| (line, label_kind.leading));
            for (line, leading) in all.chain(lines.into_iter().map(|line| (line, kind.leading))) {
                items.extend(placed(line, x).map(|item| item.moved(0.0, y)));
                y += leading;
            }
            tallest = tallest.max(y);
        }
        if tallest > kind.leading * MOST_PAIRED {
            for ((label, runs), _) in sides {
                self.label(label, label_kind);
                self.words(runs, kind, Seat::default());
                self.gap(4.0);
            }
        } else {
            self.drawing(tallest, items);
        }
    }
}

/// Paper can’t be clicked: a link to the web is followed by its address, unless that is its text.
fn with_addresses(runs: &[Run]) -> Vec<Run> {
    let mut spelled: Vec<Run> = Vec::with_capacity(runs.len());
    for (index, run) in runs.iter().enumerate() {
        spelled.push(run.clone());
        let goes_on = runs.get(index + 1).is_some_and(|next| next.link == run.link);
        let Some(link) = run.link.as_ref().filter(|link| link.contains(':') && !goes_on) else {
            continue;
        };
        let address = link.trim_start_matches("https://").trim_start_matches("mailto:");
        if !run.text.contains(address.trim_end_matches('/')) {
            spelled.push(Run::plain(format!(" ({address})")));
        }
    }
    spelled
}

/// What stands before an entry of a list.
fn marker_of(block: &Block) -> Option<String> {
    match &block.marker {
        Marker::None => None,
        Marker::Bullet => Some("•".to_owned()),
        Marker::Number(number) => Some(format!("{number}.")),
    }
}

/// A shaped line as items, moved in from the left.
pub fn placed(line: ShapedLine, right: f32) -> impl Iterator<Item = Item> {
    line.runs.into_iter().map(move |run| Item::Glyphs(run).moved(right, 0.0))
}
