//! The sheets of activity cards: one, two, four or eight to a sheet with lines to cut along, with or
//! without backs; in large print; and as numbered sets for a class.

use super::card_fit::{Card, CardForm, CardSide, Cell};
use super::card_head::place_number;
use super::card_plan::lay_all_cards;
use super::card_type::{CardType, EIGHTH, HALF, LARGE, QUARTER, WHOLE};
use super::impose::{Flip, Grid, Spot};
use super::page::{Item, MM, Page};
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{Rights, SheetSource, fit_line, one};
use super::strip::placed;
use crate::read::print_choices::{CardCount, Sides};
use crate::words::Filling;

/// From a cut line to what stands on the card.
const INNER: f32 = 6.0 * MM;

/// The same on pocket cards, where every line counts.
const POCKET_INNER: f32 = 4.0 * MM;

/// Lays out all cards of a session.
pub fn lay_cards(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let sheet = CardSheet::of(source);
    let cards = lay_all_cards(shaper, sheet.form(), source);
    sheet.impose(shaper, source, &cards, None)
}

/// Lays out the cards in large print, one to a sheet and never with a back.
pub fn lay_large_print(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let sheet = CardSheet { grid: Grid::of(CardCount::One), types: LARGE, ..CardSheet::of(source) };
    let sheet = CardSheet { flip: None, ..sheet };
    let cards = lay_all_cards(shaper, sheet.form(), source);
    sheet.impose(shaper, source, &cards, None)
}

/// Lays out so many sets of the cards, each on sheets of its own and numbered.
pub fn lay_class_set(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, copies: u32) -> Vec<Page> {
    let sheet = CardSheet::of(source);
    let cards = lay_all_cards(shaper, sheet.form(), source);
    let sets = (1..=copies).map(|number| {
        let counts = [("number", Filling::Count(number)), ("total", Filling::Count(copies))];
        source.words.say_with("cards-set", &counts)
    });
    let pages = sets.zip(0..).map(|(set, copy)| {
        let pages = sheet.impose(shaper, source, &cards, Some(&set));
        // Each set is read out on its own.
        pages.into_iter().map(|page| page.copied(copy)).collect::<Vec<_>>()
    });
    pages.flatten().collect()
}

/// How cards lie on their sheets.
#[derive(Clone, Copy, Debug)]
struct CardSheet {
    size: (f32, f32),
    grid: Grid,
    /// From a cut line to what stands on the card.
    inner: f32,
    types: &'static [CardType],
    /// The edge that sheets are turned over on, where cards have backs.
    flip: Option<Flip>,
}

impl CardSheet {
    fn of(source: &SheetSource<'_>) -> Self {
        let printing = &source.pack.printing;
        let (types, inner) = match printing.cards {
            CardCount::One => (WHOLE, INNER),
            CardCount::Two => (HALF, INNER),
            CardCount::Four => (QUARTER, INNER),
            CardCount::Eight => (EIGHTH, POCKET_INNER),
        };
        let flip = match printing.sides {
            Sides::One => None,
            Sides::LongEdge => Some(Flip::Long),
            Sides::ShortEdge => Some(Flip::Short),
        };
        Self {
            size: paper_size(source.paper()),
            grid: Grid::of(printing.cards),
            inner,
            types,
            flip,
        }
    }

    /// What is left of the sheet for each card: all are as large as one at the edge of the paper.
    fn cell(&self) -> Cell {
        let room = |length: f32, count: usize| match count {
            1 => length - 2.0 * MARGIN,
            _ => length / as_f32(count) - MARGIN - self.inner,
        };
        let (width, height) = self.size;
        Cell { width: room(width, self.grid.across), height: room(height, self.grid.down) }
    }

    fn form(&self) -> CardForm {
        CardForm { cell: self.cell(), types: self.types, has_back: self.flip.is_some() }
    }

    /// The top left corner of a card on its page.
    fn corner(&self, spot: Spot) -> (f32, f32) {
        let (width, height) = self.size;
        let cell = self.cell();
        let start = |length: f32, room: f32, index: usize, count: usize| {
            let piece = length / as_f32(count);
            let edge = piece * as_f32(index);
            match index {
                0 => MARGIN,
                last if last + 1 == count => edge + self.inner,
                _ => edge + (piece - room) / 2.0,
            }
        };
        let x = start(width, cell.width, spot.column, self.grid.across);
        (x, start(height, cell.height, spot.row, self.grid.down))
    }

    /// Places the cards on pages, backs on the page after their fronts.
    fn impose(
        &self,
        shaper: &mut Shaper<'_>,
        source: &SheetSource<'_>,
        cards: &[Card],
        set: Option<&str>,
    ) -> Vec<Page> {
        let sides = if self.flip.is_some() { 2 } else { 1 };
        let title = source.title();
        let rights = source.rights();
        // Bare, since every line counts on a card: whole pages say “Edition” before it.
        let mark = source.mark().map(|mark| mark.to_string());
        let marks: Vec<String> = set.map(str::to_owned).into_iter().chain(mark).collect();
        let mark = marks.join(" · ");
        let sheets = cards.len().div_ceil(self.grid.cards());
        let mut pages: Vec<Page> = (0..sheets * sides).map(|_| self.blank()).collect();
        for (index, card) in cards.iter().enumerate() {
            let front = self.grid.front_spot(index);
            let number = words_of_number(source, "cards-number", index + 1, cards.len());
            let title = (!card.is_opening(&title)).then_some(title.as_str());
            let below = Foot { title, mark: &mark, rights: &rights };
            let items = self.finish(shaper, &card.front, &number, &below);
            self.put(&mut pages[front.sheet * sides], front, items);
            if let (Some(back), Some(flip)) = (&card.back, self.flip) {
                let number = words_of_number(source, "cards-back", index + 1, cards.len());
                let items = self.finish(shaper, back, &number, &below);
                let spot = self.grid.back_spot(index, flip);
                self.put(&mut pages[spot.sheet * sides + 1], spot, items);
            }
        }
        // Lines are on the fronts alone: a printer seldom meets them from behind to the millimetre.
        for page in pages.iter_mut().step_by(sides) {
            page.items.splice(0..0, self.cut_lines());
        }
        pages
    }

    const fn blank(&self) -> Page {
        let (width, height) = self.size;
        Page { width, height, items: Vec::new() }
    }

    fn put(&self, page: &mut Page, spot: Spot, items: Vec<Item>) {
        let (x, y) = self.corner(spot);
        page.items.extend(items.into_iter().map(|item| item.moved(x, y)));
    }

    /// A side of a card with its number and its foot.
    fn finish(
        &self,
        shaper: &mut Shaper<'_>,
        side: &CardSide,
        number: &str,
        foot: &Foot<'_>,
    ) -> Vec<Item> {
        let cell = self.cell();
        let mut items = side.items.clone();
        items.extend(place_number(shaper, cell.width, number, side.kind));
        let kind = side.kind.small();
        let y = cell.height - kind.leading;
        items.extend(foot.lay(shaper, cell.width, kind).map(|item| item.moved(0.0, y)));
        items
    }

    /// Dashed lines between the cards, from margin to margin.
    fn cut_lines(&self) -> Vec<Item> {
        let (width, height) = self.size;
        let dashed =
            |from, to| Item::Line { from, to, thickness: 0.6, dash: Some((3.0, 3.0)), grey: 0.35 };
        let upright = (1..self.grid.across).map(|index| {
            let x = width / as_f32(self.grid.across) * as_f32(index);
            dashed((x, MARGIN), (x, height - MARGIN))
        });
        let level = (1..self.grid.down).map(|index| {
            let y = height / as_f32(self.grid.down) * as_f32(index);
            dashed((MARGIN, y), (width - MARGIN, y))
        });
        upright.chain(level).collect()
    }
}

/// The foot of a card: the session’s title at the left; who made it, its licence, the number of the set and the
/// edition at the right.
struct Foot<'f> {
    title: Option<&'f str>,
    mark: &'f str,
    rights: &'f Rights,
}

/// The share of the foot that the maker and the licence may take where a long title stands beside them.
const RIGHTS: f32 = 0.48;

impl Foot<'_> {
    fn lay(&self, shaper: &mut Shaper<'_>, width: f32, kind: Type) -> impl Iterator<Item = Item> {
        let mut items = Vec::new();
        let mut right = width;
        let has_rights = self.rights.credit.is_some() || self.rights.licence.is_some();
        let dot = if has_rights && !self.mark.is_empty() { "· " } else { "" };
        let mark = format!("{dot}{}", self.mark);
        if let Some(line) = shaper.shape(&one(mark), kind, width).into_iter().next() {
            right = width - line.width;
            items.extend(placed(line, right));
            right -= if has_rights { kind.size * 0.28 } else { 10.0 };
        }
        let title =
            self.title.map(|title| short_title(shaper, title, kind, right * (1.0 - RIGHTS)));
        let beside = title.map(|title| right - width_of(shaper, title, kind) - 14.0);
        let room = beside.map_or(right, |beside| beside.max(right * RIGHTS));
        if let Some(line) = self.rights.fit(shaper, kind, room) {
            right -= line.width;
            items.extend(placed(line, right));
            right -= 10.0;
        }
        let title = title.and_then(|title| fit_line(shaper, title, kind, right));
        items.extend(title.into_iter().flat_map(|line| placed(line, 0.0)));
        items.into_iter()
    }
}

/// A title that is too long for its room is called by what stands before its colon.
fn short_title<'t>(shaper: &mut Shaper<'_>, title: &'t str, kind: Type, room: f32) -> &'t str {
    match title.split_once(':') {
        Some((name, _)) if width_of(shaper, title, kind) > room => name,
        _ => title,
    }
}

/// How wide a text is on one line.
fn width_of(shaper: &mut Shaper<'_>, text: &str, kind: Type) -> f32 {
    shaper.shape(&one(text), kind, f32::MAX / 4.0).first().map_or(0.0, |line| line.width)
}

fn words_of_number(source: &SheetSource<'_>, key: &str, number: usize, total: usize) -> String {
    let count = |n: usize| Filling::Count(u32::try_from(n).unwrap_or(u32::MAX));
    source.words.say_with(key, &[("number", count(number)), ("total", count(total))])
}

#[allow(clippy::cast_precision_loss, reason = "a sheet has four cards side by side at most")]
const fn as_f32(count: usize) -> f32 {
    count as f32
}
