//! The home guide: one page for the adult at home, with the running order, the things to gather, the
//! space and the cautions.

use super::guide_head::lay_guide_head;
use super::guide_line::GuideLines;
use super::page::{Item, Page};
use super::scale::{SMALLEST, Type};
use super::scan::film_code;
use super::shaper::Shaper;
use super::sheet_page::{column_width, count_pages, inner_width, lay_columns};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, Strip};
use crate::pack::{Need, Substitute};
use crate::prose::{Run, plain_line, read_blocks, read_line};
use crate::render::borrowed_phrases::say_borrowed;
use crate::render::equipment_phrases::home_list;
use crate::render::phrases::{colon, comma, limits_of, need_name, substitute_name, surface_names};
use crate::render::quantities::Said;
use crate::words::Filling;

/// Sizes of the running text, largest first: the largest that fills one page is taken.
const SIZES: [Type; 6] = [
    Type { size: 12.5, leading: 16.0, is_bold: false },
    Type { size: 12.0, leading: 15.2, is_bold: false },
    Type { size: 11.5, leading: 14.4, is_bold: false },
    Type { size: SMALLEST, leading: 13.2, is_bold: false },
    Type { size: SMALLEST, leading: 12.8, is_bold: false },
    Type { size: SMALLEST, leading: 12.4, is_bold: false },
];

/// What the page is tried with.
#[derive(Clone, Copy, Debug)]
struct Look {
    body: Type,
    /// What serves all needs at once stands on the page too.
    has_together: bool,
    /// How tall figures are on the time line.
    stature: Option<f32>,
}

/// A guide is not tried on more pages.
const MOST_PAGES: usize = 2;

/// Lays out the home guide: one page, or more where it can’t be helped.
pub fn lay_home_guide(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let lines = GuideLines::of(source, inner_width(&source.letterhead()));
    let look = shaper.try_out(|shaper| choose_look(shaper, source, &lines));
    let head = lay_guide_head(shaper, source, look.body, lines.standing(look.stature));
    let strips = guide_strips(shaper, source, look.body, look.has_together);
    lay_columns(shaper, &source.letterhead(), head, strips, 2)
}

/// The first look that fits one page, else two. In this order things give way: the size of the words, down to its
/// floor; the size of the figures; what serves all needs at once; the figures.
fn choose_look(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, lines: &GuideLines<'_>) -> Look {
    let sheet = source.letterhead();
    // Tried when they are asked for.
    let mut drafts: [[Option<Draft>; 2]; SIZES.len()] = Default::default();
    let with_figures = lines.statures().map(Some).flat_map(|stature| [(true, stature)]);
    let without = [(false, lines.statures().last()), (true, None), (false, None)];
    let ways: Vec<(bool, Option<f32>)> = with_figures.chain(without).collect();
    for pages in 1..=MOST_PAGES {
        for (has_together, stature) in &ways {
            let mut fits = |at: usize| {
                let body = SIZES[at];
                let draft = drafts[at][usize::from(*has_together)]
                    .get_or_insert_with(|| Draft::of(shaper, source, (body, *has_together), lines));
                let head = draft.head + lines.standing(*stature).height;
                count_pages(&sheet, head, &draft.strips, 2) <= pages
            };
            if let Some(at) = first_that(SIZES.len(), &mut fits) {
                return Look { body: SIZES[at], has_together: *has_together, stature: *stature };
            }
        }
    }
    Look { body: SIZES[SIZES.len() - 1], has_together: false, stature: None }
}

/// The first of so many for which something holds, where it holds for all after it; the last is asked first.
fn first_that(count: usize, holds: &mut impl FnMut(usize) -> bool) -> Option<usize> {
    let (mut low, mut high) = (0, count.checked_sub(1).filter(|last| holds(*last))?);
    while low < high {
        let middle = usize::midpoint(low, high);
        if holds(middle) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    Some(low)
}

/// The guide in one size of words.
struct Draft {
    /// How tall its head is but for the time line.
    head: f32,
    strips: Vec<Strip>,
}

impl Draft {
    fn of(
        shaper: &mut Shaper<'_>,
        source: &SheetSource<'_>,
        (body, has_together): (Type, bool),
        lines: &GuideLines<'_>,
    ) -> Self {
        let bare = lines.standing(None);
        let head = lay_guide_head(shaper, source, body, bare).height - bare.height;
        Self { head, strips: guide_strips(shaper, source, body, has_together) }
    }
}

fn guide_strips(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'_>,
    body: Type,
    has_together: bool,
) -> Vec<Strip> {
    let mut column = Column::new(shaper, column_width(&source.letterhead(), 2));
    things(&mut column, source, body);
    if has_together {
        together(&mut column, source, body);
    }
    space(&mut column, source, body);
    adult(&mut column, source, body);
    cautions(&mut column, source, body);
    film(&mut column, source, body);
    column.strips
}

/// The closer the lines, the closer the headings.
fn heading(column: &mut Column<'_, '_>, text: &str, body: Type) {
    column.gap(body.leading * 0.5);
    column.label(text, Type::HEADING);
}

fn things(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    heading(column, &source.words.say("things"), body);
    if source.session.needs.is_empty() {
        column.words(&one(source.words.say("things-nothing")), body, Seat::default());
    }
    for need in &source.session.needs {
        let mut runs = vec![Run::bold(need_name(need, source.words))];
        if let Some(limits) = limits_of(&need.limits, source.words) {
            runs.push(Run::plain(format!(" ({limits})")));
        }
        let others: Vec<String> =
            need.substitutes.iter().map(|other| stand_in(other, need)).collect();
        if !others.is_empty() {
            runs.push(Run::plain(format!(" – {} ", source.words.say("or-use"))));
            runs.push(Run::plain(others.join("; ")));
        }
        if let Some(note) = &need.note {
            runs.push(Run::plain(". "));
            runs.extend(read_line(note));
        }
        if let Some(grip) = need.grip() {
            runs.push(Run::plain(". "));
            runs.extend(read_line(grip));
        }
        tick_entry(column, &runs, body);
    }
}

/// What serves every need at once.
fn together(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    let together = home_list(source.session, &source.plans.equipment, source.words);
    if together.len() > 1 {
        column.gap(4.0);
        let label = Run::bold(format!("{} ", source.words.say("things-together")));
        let list = Run::plain(format!("{}.", together.join(comma(source.words))));
        column.words(&[label, list], body, Seat::default());
    }
}

/// A stand-in; for a weight with how to fill and close it, which is what keeps it safe.
fn stand_in(other: &Substitute, need: &Need) -> String {
    let name = substitute_name(other, need.count);
    match other.note.as_ref().filter(|_| need.is_weight()) {
        Some(note) => format!("{name} ({})", plain_line(note).trim_end_matches('.')),
        None => name,
    }
}

/// An entry with a box to tick.
fn tick_entry(column: &mut Column<'_, '_>, runs: &[Run], body: Type) {
    let before = column.strips.len();
    column.ticked(runs, body, Seat { indent: 15.0, has_bar: false });
    if let Some(first) = column.strips.get_mut(before) {
        let top = (body.leading - 9.5) / 2.0 + 0.5;
        first.items.push(Item::rectangle((0.5, top), (9.0, 9.0), None, Some(0.9)));
    }
}

fn space(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    // The floor and the headroom stand large among the facts above.
    let surfaces = surface_names(source.session, source.words);
    if surfaces.is_empty() {
        return;
    }
    heading(column, &source.words.say("space"), body);
    let sentence = source.words.say_with("space-surface", &[("list", Filling::Text(&surfaces))]);
    column.words(&one(sentence), body, Seat::default());
}

fn adult(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    let words = source.words;
    heading(column, &words.say("adult"), body);
    let Some(adult) = &source.session.adult else {
        column.words(&one(words.say("adult-none")), body, Seat::default());
        return;
    };
    let mut runs = Vec::new();
    for (key, time) in [("adult-nearby-for", &adult.nearby), ("adult-helping-for", &adult.helping)]
    {
        let Some(time) = time else { continue };
        let time = time.say(words);
        let sentence = words.say_with(key, &[("time", Filling::Text(&time))]);
        runs.push(Run::plain(format!("{sentence} ")));
    }
    let why = adult.why.as_ref().map(|why| read_line(why)).unwrap_or_default();
    // In another language than the sheet’s it runs its own way, and is a paragraph of its own.
    if source.session.language == source.pack.language.value {
        runs.extend(why);
        column.words(&runs, body, Seat::default());
    } else {
        [runs, why].iter().filter(|runs| !runs.is_empty()).for_each(|runs| {
            column.words(runs, body, Seat::default());
        });
    }
}

/// What the film shows, and a code to scan beside its address.
fn film(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    let Some(film) = &source.session.film else { return };
    heading(column, &source.words.say("film"), body);
    column.words(&read_line(&film.shows), body, Seat::default());
    column.keep_with_next();
    film_code(column, source, (Type::LABEL, Type::SMALL));
}

/// The session’s own cautions, the usual ones, and whose word comes first.
fn cautions(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    heading(column, &source.words.say("cautions"), body);
    let all = source.session.safety.iter().chain(&source.pack.cautions);
    for block in all.flat_map(|text| read_blocks(text)) {
        column.gap(1.5);
        column.entry(&block.runs, body);
    }
    column.gap(body.leading * 0.3);
    column.words(&one(source.words.say("local-rules")), body, Seat::default());
    if let Some(contact) = &source.pack.contact {
        column.gap(body.leading * 0.3);
        let mut runs =
            vec![Run::bold(format!("{}{}", source.words.say("foot-contact"), colon(source.words)))];
        runs.extend(read_line(contact));
        column.words(&runs, body, Seat::default());
    }
    if let Some(credit) = &source.session.credit {
        column.gap(body.leading * 0.3);
        let mut runs = read_line(credit);
        if let Some(borrowed) = say_borrowed(source.session, source.words) {
            runs.extend(one(format!(" · {borrowed}")));
        }
        column.words(&runs, Type::SMALL, Seat::default());
    }
}
