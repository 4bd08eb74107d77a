//! The sheets of activity cards: one, two, four or eight to a sheet with lines to cut along, with or
//! without backs; in large print; and as numbered sets for a class.

use super::card_fit::{Card, CardForm, CardSide, Cell, foot_of};
use super::card_foot::Foot;
use super::card_head::place_number;
use super::card_plan::lay_all_cards;
use super::card_type::{CardType, EIGHTH, HALF, LARGE, QUARTER, WHOLE};
use super::impose::{Flip, Grid, Spot};
use super::page::{Item, MM, Page};
use super::scale::{MARGIN, paper_size};
use super::shaper::Shaper;
use super::sheets::SheetSource;
use crate::read::print_choices::{CardCount, Sides};
use crate::words::Filling;

/// From a cut line to what stands on the card.
const INNER: f32 = 6.0 * MM;

/// The same on pocket cards, where every line counts.
const POCKET_INNER: f32 = 4.0 * MM;

/// A card that lies on its long side and is so wide has two columns, each as wide as a quarter of a sheet.
const WIDE: f32 = 160.0 * MM;

/// Lays out all cards of a session.
pub fn lay_cards(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let sheet = CardSheet::of(source);
    let form = sheet.form(shaper, source);
    let cards = lay_all_cards(shaper, form, source);
    sheet.impose(shaper, source, cards, None)
}

/// Lays out the cards in large print, one to a sheet and never with a back.
pub fn lay_large_print(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let sheet = CardSheet { grid: Grid::of(CardCount::One), types: LARGE, ..CardSheet::of(source) };
    let sheet = CardSheet { flip: None, ..sheet };
    let form = sheet.form(shaper, source);
    let cards = lay_all_cards(shaper, form, source);
    sheet.impose(shaper, source, cards, None)
}

/// Lays out so many sets of the cards, each on sheets of its own and numbered.
pub fn lay_class_set(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, copies: u32) -> Vec<Page> {
    let sheet = CardSheet::of(source);
    let form = sheet.form(shaper, source);
    let cards = lay_all_cards(shaper, form, source);
    let sets = (1..=copies).map(|number| set_of(source, number, copies));
    let pages = sets.zip(0..).map(|(set, copy)| {
        let pages = sheet.impose(shaper, source, cards.clone(), Some(&set));
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

    fn form(&self, shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> CardForm {
        let (cell, largest) = (self.cell(), self.types[0].small());
        // Where sets are asked for, all cards have the room for their numbers, so that all sets are alike.
        let set = source.pack.printing.copies.map(|copies| set_of(source, copies, copies));
        let (title, mark, rights) =
            (source.title(), mark_of(source, set.as_deref()), source.rights());
        let foot = Foot { title: Some(&title), mark: &mark, rights: &rights };
        let is_pocket = self.types == EIGHTH;
        let foot_lines = if is_pocket { 1 } else { foot.count_lines(shaper, cell.width, largest) };
        let (has_back, is_wide) = (self.flip.is_some(), cell.width > WIDE.max(cell.height));
        CardForm { cell, types: self.types, has_back, foot_lines, is_wide }
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
        cards: Vec<Card>,
        set: Option<&str>,
    ) -> Vec<Page> {
        let sides = if self.flip.is_some() { 2 } else { 1 };
        let title = source.title();
        let rights = source.rights();
        let mark = mark_of(source, set);
        let foot_lines = self.form(shaper, source).foot_lines;
        let count = cards.len();
        let sheets = count.div_ceil(self.grid.cards());
        let mut pages: Vec<Page> = (0..sheets * sides).map(|_| self.blank()).collect();
        for (index, card) in cards.into_iter().enumerate() {
            let front = self.grid.front_spot(index);
            let number = words_of_number(source, "cards-number", index + 1, count);
            let title = (!card.is_opening(&title)).then_some(title.as_str());
            let below = Foot { title, mark: &mark, rights: &rights };
            let items = self.finish(shaper, card.front, &number, (&below, foot_lines));
            self.put(&mut pages[front.sheet * sides], front, items);
            if let (Some(back), Some(flip)) = (card.back, self.flip) {
                let number = words_of_number(source, "cards-back", index + 1, count);
                let items = self.finish(shaper, back, &number, (&below, foot_lines));
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
        side: CardSide,
        number: &str,
        (foot, foot_lines): (&Foot<'_>, usize),
    ) -> Vec<Item> {
        let cell = self.cell();
        let mut items = side.items;
        items.extend(place_number(shaper, cell.width, number, side.kind));
        let kind = side.kind.small();
        let y = cell.height - kind.leading;
        // Where words leave room for two lines, all of the foot is there whatever the kind of card.
        let has_room = side.used + foot_of(side.kind, 2) <= cell.height;
        let foot_lines = if has_room { 2 } else { foot_lines };
        let foot = foot.lay(shaper, (cell.width, foot_lines), kind);
        items.extend(foot.into_iter().map(|item| item.moved(0.0, y)));
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

/// “Set 3 of 12”
fn set_of(source: &SheetSource<'_>, number: u32, copies: u32) -> String {
    let counts = [("number", Filling::Count(number)), ("total", Filling::Count(copies))];
    source.words.say_with("cards-set", &counts)
}

/// The number of the set and the edition: bare, since every line counts on a card, where whole pages say “Edition”
/// before it.
fn mark_of(source: &SheetSource<'_>, set: Option<&str>) -> String {
    let mark = source.mark().map(|mark| mark.to_string());
    let marks: Vec<String> = set.map(str::to_owned).into_iter().chain(mark).collect();
    marks.join(" · ")
}

fn words_of_number(source: &SheetSource<'_>, key: &str, number: usize, total: usize) -> String {
    let count = |n: usize| Filling::Count(u32::try_from(n).unwrap_or(u32::MAX));
    source.words.say_with(key, &[("number", count(number)), ("total", count(total))])
}

#[allow(clippy::cast_precision_loss, reason = "a sheet has four cards side by side at most")]
const fn as_f32(count: usize) -> f32 {
    count as f32
}
