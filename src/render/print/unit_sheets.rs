//! The sheets of a unit: the poster of the term, the questions that come back, what to gather once.

use super::gather::lay_gather;
use super::page::Page;
use super::passages::Passages;
use super::printer::Printer;
use super::remember::lay_remember;
use super::term_poster::{TermPoster, lay_term_poster};
use super::writer::About;
use super::{LaidSheet, NO_DATE, Printed, marked, turned};
use crate::prose::plain_line;
use crate::render::Publication;
use crate::render::phrases::is_right_to_left;
use crate::render::unit::{unit_gather, unit_poster, unit_remember};

/// Renders the sheets of every unit that has days.
pub fn render_unit_sheets(press: &mut Printer<'_>, publication: &Publication<'_>) -> Vec<Printed> {
    let Publication { pack, words, .. } = publication;
    let mut printed = Vec::new();
    for (unit, plan) in pack.units.iter().zip(publication.units()) {
        let is_wanted = publication.wants_below(&format!("print/units/{}/", unit.id));
        if plan.days.is_empty() || !is_wanted {
            continue;
        }
        press.shaper.begin_session();
        let sessions = plan.days.iter().filter_map(|day| pack.sessions.get(day.session));
        press.shaper.passages = Passages::of(pack, sessions.map(AsRef::as_ref), Some(unit));
        let poster = TermPoster { pack, words, unit, plan };
        let title = plain_line(&unit.title);
        let sheets: [(String, &str, Vec<Page>); 3] = [
            (unit_poster(unit), "unit-poster", lay_term_poster(&mut press.shaper, &poster)),
            (unit_remember(unit), "unit-remember-sheet", lay_remember(&mut press.shaper, &poster)),
            (
                unit_gather(unit),
                "unit-gather-sheet",
                lay_gather(&mut press.shaper, pack, &title, &plan.gather, words),
            ),
        ];
        let mut laid = Vec::new();
        for (path, key, pages) in sheets {
            let is_empty = key == "unit-gather-sheet" && plan.gather.things.is_empty();
            if pages.is_empty() || is_empty {
                continue;
            }
            let about = About {
                title: format!("{title} – {}", words.say(key)),
                author: pack.school.clone().unwrap_or_else(|| pack.title.clone()),
                language: pack.language.value.clone(),
                date: unit.changed.as_ref().map_or_else(
                    || NO_DATE.to_owned(),
                    |changed| changed.to_string().replace('-', ""),
                ),
                is_folded: false,
                is_rtl: is_right_to_left(&pack.language),
            };
            let pages = turned(pages, press.shaper.faces(), &pack.language);
            let pages = marked(&mut press.shaper, pages);
            laid.push(LaidSheet { path, pages, about });
        }
        printed.extend(press.print(laid, pack));
    }
    printed
}
