//! Strips: the content of a sheet as pieces that are never cut, each with its height. Whatever is
//! longer than a strip – a paragraph, a list – is several, and can go on in the next frame.

use super::breaks::shape_running;
use super::even_lines::even_lines;
use super::page::{Item, Key, MM, Role};
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use super::wrap::{Wrap, with_addresses};
use crate::prose::{Block, Marker, Run};

/// A piece that stays whole; positions count from its top left corner.
#[derive(Clone, Debug, Default)]
pub struct Strip {
    pub height: f32,
    /// How wide the words are, where it is a line of words.
    pub filled: f32,
    /// Left out at the top of a frame.
    pub space_before: f32,
    /// It must not be the last in its frame.
    pub keeps_next: bool,
    /// It goes on with the paragraph of the strip before it.
    pub goes_on: bool,
    /// A label: what comes after it is a section.
    pub opens: bool,
    pub items: Vec<Item>,
}

/// Fills a column of a given width with strips.
pub struct Column<'c, 'f> {
    pub shaper: &'c mut Shaper<'f>,
    pub width: f32,
    pub strips: Vec<Strip>,
    /// Texts side by side are no taller.
    pub tallest: f32,
    /// The gap that the next strip gets before it.
    gap: f32,
    /// The list that the next entry goes on with.
    open_list: Option<Key>,
}

/// How a paragraph sits in its column.
#[derive(Clone, Copy, Debug, Default)]
pub struct Seat {
    /// Moved in from the left.
    pub indent: f32,
    /// A thick line at the left, beside the text.
    pub has_bar: bool,
}

/// How far a list entry is moved in: in points, and in sizes of large type.
const LIST_STEP: (f32, f32) = (14.0, 0.95);

/// Between a list’s mark and its words, in the same.
const MARKER_GAP: (f32, f32) = (4.0, 0.3);

impl<'c, 'f> Column<'c, 'f> {
    pub fn new(shaper: &'c mut Shaper<'f>, width: f32) -> Self {
        let (strips, tallest) = (Vec::new(), f32::MAX);
        Self { shaper, width, strips, tallest, gap: 0.0, open_list: None }
    }

    /// Leaves at least so much room before what comes next.
    pub fn gap(&mut self, points: f32) {
        self.gap = self.gap.max(points);
    }

    /// Adds a strip of items; what in it is to be read stands in groups.
    pub fn drawing(&mut self, height: f32, items: Vec<Item>) {
        self.open_list = None;
        self.push(Strip { height, items, ..Strip::default() });
    }

    /// Adds a drawing or picture with its description.
    pub fn figure(&mut self, height: f32, items: Vec<Item>, says: &str) {
        let key = self.shaper.next_key();
        self.drawing(height, vec![Item::group(Role::Figure(says.to_owned()), key, items)]);
    }

    /// Adds a strip whose words are one paragraph.
    pub fn line_of_words(&mut self, height: f32, items: Vec<Item>) {
        let key = self.shaper.next_key();
        self.drawing(height, vec![Item::group(Role::Paragraph, key, items)]);
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
        let runs = [Run::plain(text)];
        self.open_list = None;
        let lines = self.shaper.shape(&runs, kind, self.width);
        let key = self.shaper.next_key();
        let first = self.strips.len();
        self.lines(lines, kind, Seat::default(), &Wrap::plain(Role::Heading(2), key, &runs), None);
        if let Some(strip) = self.strips.get_mut(first) {
            strip.opens = true;
        }
        self.keep_with_next();
    }

    /// A paragraph of styled words.
    pub fn words(&mut self, runs: &[Run], kind: Type, seat: Seat) {
        self.paragraph(runs, kind, seat, shape_running);
    }

    /// A paragraph in lines of its own way.
    fn paragraph(
        &mut self,
        runs: &[Run],
        kind: Type,
        seat: Seat,
        shape: impl Fn(&mut Shaper<'_>, &[Run], Type, f32) -> Vec<ShapedLine>,
    ) {
        self.open_list = None;
        let kind = self.shaper.air.let_in(kind);
        let runs = with_addresses(runs);
        let width = (self.width - seat.indent).max(40.0);
        let lines = shape(self.shaper, &runs, kind, width);
        let key = self.shaper.next_key();
        self.lines(lines, kind, seat, &Wrap::plain(Role::Paragraph, key, &runs), None);
    }

    /// How wide a short text is.
    pub fn width_of(&mut self, text: &str, kind: Type) -> f32 {
        super::one_line::width_of(self.shaper, text, kind)
    }

    /// A paragraph in lines of about one length, with a number at its left, so far in, that is read before it.
    pub fn hung(
        &mut self,
        number: Option<&str>,
        at: f32,
        (runs, kind, seat): (&[Run], Type, Seat),
    ) {
        let number = number.filter(|_| !self.shaper.is_trial()).map(|number| {
            let kind = self.shaper.air.let_in(kind);
            let lines = self.shaper.shape(&[Run::plain(number)], kind, f32::MAX / 4.0);
            let words = lines.into_iter().flat_map(|line| placed(line, at)).collect();
            Item::group(Role::Paragraph, self.shaper.next_key(), words)
        });
        let first = self.strips.len();
        // How many lines there are is all that a trial asks.
        let shape = if self.shaper.is_trial() { shape_running } else { even_lines };
        self.paragraph(runs, kind, seat, shape);
        if let (Some(number), Some(strip)) = (number, self.strips.get_mut(first)) {
            strip.items.insert(0, number);
        }
    }

    /// A paragraph that is an entry of a list, with a mark of its own drawn beside it.
    pub fn ticked(&mut self, runs: &[Run], kind: Type, seat: Seat) {
        let runs = with_addresses(runs);
        let width = (self.width - seat.indent).max(40.0);
        let lines = shape_running(self.shaper, &runs, kind, width);
        let wrap = self.entry_wrap(false, &runs);
        self.lines(lines, kind, seat, &wrap, None);
    }

    /// The wrapping of an entry, in the list that is open or a new one.
    fn entry_wrap<'r>(&mut self, is_numbered: bool, runs: &'r [Run]) -> Wrap<'r> {
        let list = match self.open_list {
            Some(list) => list,
            None => self.shaper.next_key(),
        };
        self.open_list = Some(list);
        let [entry, marker, text] = [(); 3].map(|()| self.shaper.next_key());
        Wrap {
            around: vec![(Role::List { is_numbered }, list), (Role::Entry, entry)],
            marker: Some(marker),
            text: (Role::EntryText, text),
            runs,
        }
    }

    /// Prose of several blocks.
    pub fn blocks(&mut self, blocks: &[Block], kind: Type, seat: Seat) {
        let kind = self.shaper.air.let_in(kind);
        // A list that counts to a hundred needs more room before its words than one to nine.
        self.open_list = None;
        let markers = blocks.iter().filter_map(marker_of);
        let widest = markers
            .filter_map(|marker| self.shaper.shape(&[Run::plain(marker)], kind, 200.0).pop())
            .map(|line| line.width)
            .fold(0.0, f32::max);
        let step = room_at(LIST_STEP, kind).max(widest + room_at(MARKER_GAP, kind));
        for (index, block) in blocks.iter().enumerate() {
            if index > 0 {
                let is_list = block.marker != Marker::None;
                self.gap(if is_list { kind.leading * 0.15 } else { kind.leading * 0.4 });
            }
            if block.marker == Marker::None {
                self.open_list = None;
            }
            self.block(block, kind, seat, step);
            // The last entry of a list does not go on alone.
            let is_entry =
                |at: usize| blocks.get(at).is_some_and(|next| next.marker != Marker::None);
            if is_entry(index) && is_entry(index + 1) && !is_entry(index + 2) {
                self.keep_with_next();
            }
        }
        self.open_list = None;
    }

    fn block(&mut self, block: &Block, kind: Type, seat: Seat, step: f32) {
        #[allow(clippy::cast_precision_loss, reason = "texts nest a few levels at most")]
        let depth = block.depth.min(6) as f32;
        let indent = seat.indent + depth * step;
        let seat = Seat { indent, ..seat };
        let width = (self.width - indent).max(40.0);
        let kind_of_text = Type { is_bold: kind.is_bold || block.is_heading, ..kind };
        let runs = with_addresses(&block.runs);
        let lines = shape_running(self.shaper, &runs, kind_of_text, width);
        let marker = marker_of(block).and_then(|marker| {
            let shaped = self.shaper.shape(&[Run::plain(marker)], kind, 200.0).pop()?;
            let at = (indent - shaped.width - room_at(MARKER_GAP, kind)).max(0.0);
            Some((shaped, at))
        });
        let wrap = match &block.marker {
            Marker::None => {
                let role = if block.is_heading { Role::Heading(3) } else { Role::Paragraph };
                Wrap::plain(role, self.shaper.next_key(), &runs)
            }
            marker => self.entry_wrap(matches!(marker, Marker::Number(_)), &runs),
        };
        self.lines(lines, kind, seat, &wrap, marker);
        if block.is_heading {
            self.keep_with_next();
        }
    }

    /// An entry of a list with a bullet.
    pub fn entry(&mut self, runs: &[Run], kind: Type) {
        let kind = self.shaper.air.let_in(kind);
        let block =
            Block { marker: Marker::Bullet, depth: 1, is_heading: false, runs: runs.to_vec() };
        self.block(&block, kind, Seat::default(), room_at(LIST_STEP, kind));
    }

    /// Lines of one paragraph: its first two and its last two stay together.
    fn lines(
        &mut self,
        lines: Vec<ShapedLine>,
        kind: Type,
        seat: Seat,
        wrap: &Wrap<'_>,
        marker: Option<(ShapedLine, f32)>,
    ) {
        let count = lines.len();
        let leading = self.shaper.leading(kind);
        let mut marker = marker;
        for (index, line) in lines.into_iter().enumerate() {
            let mut items = Vec::new();
            if seat.has_bar {
                items.push(Item::rectangle((0.0, 0.0), (1.2 * MM, leading), Some(0.0), None));
            }
            let marker = marker.take().map(|(shaped, at)| placed(shaped, at).collect());
            // Half a word is never left for the next frame.
            let (is_hyphenated, filled) = (line.is_hyphenated, line.width);
            if !self.shaper.is_trial() {
                items.push(wrap.around(marker, placed(line, seat.indent).collect(), self.shaper));
            }
            let is_orphan = count > 1 && index == 0;
            let is_widow = count > 1 && index + 2 == count;
            self.push(Strip {
                height: leading,
                filled,
                keeps_next: is_orphan || is_widow || is_hyphenated,
                goes_on: index > 0,
                items,
                ..Strip::default()
            });
        }
    }
}

/// Room that is so many points, or as much of the size of large type.
fn room_at((points, sizes): (f32, f32), kind: Type) -> f32 {
    points.max(kind.size * sizes)
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
