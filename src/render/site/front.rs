//! The front page, and the style sheet that makes its choices work.

use std::fmt::Write as _;

use serde::Serialize;

use super::Site;
use super::choices::{Choices, Chooser};
use super::facts::{Facts, facts_of};
use super::frame::{Frame, frame_of_page};
use super::html::{Html, Scribe};
use super::search_index::{INDEX, render_index};
use super::timeline::draw_skyline;
use super::units::{UnitLink, unit_links};
use crate::pack::Session;
use crate::plan::Plans;
use crate::prose::plain_line;
use crate::read::words::State;
use crate::render::{Bundle, RenderFault, Sheet, page_path};

#[derive(Serialize, Clone, Debug)]
struct FrontPage {
    frame: Frame,
    welcome: Option<Html>,
    units: Vec<UnitLink>,
    choices: Choices,
    entries: Vec<Entry>,
}

/// One session in the list.
#[derive(Serialize, Clone, Debug)]
struct Entry {
    /// From the top folder.
    href: String,
    cards: String,
    title: String,
    summary: Html,
    facts: Facts,
    needs: Vec<String>,
    skyline: String,
    fits: String,
    /// Tokens of the things it can’t do without.
    lacking: String,
    is_draft: bool,
}

/// What `choose.css` is made from.
#[derive(Serialize, Clone, Debug)]
struct ChooseSheet<'c> {
    tokens: Vec<&'c str>,
    lacking: Vec<&'c str>,
    /// What is said where no session fits, as the inside of a CSS string.
    nothing: String,
}

/// `index.html`, `static/choose.css` and the words to search in.
pub(super) fn render_front(site: &Site<'_>) -> Result<Bundle, RenderFault> {
    let pack = site.publication.pack;
    let chooser = Chooser::of(site);
    let welcome = pack.welcome.as_ref().map(|welcome| Scribe::new(pack, "").prose(welcome));
    let title = plain_line(&pack.title);
    let page = FrontPage {
        frame: frame_of_page(site, "front", &title, &site.words.say("front-about")),
        welcome,
        units: unit_links(site),
        entries: in_order(site)
            .into_iter()
            .map(|(session, plans)| entry_of(site, &chooser, session, plans))
            .collect(),
        choices: chooser.choices.clone(),
    };
    let nothing = css_string(&site.words.say("front-none"));
    let sheet = ChooseSheet { tokens: chooser.tokens(), lacking: chooser.lacking(), nothing };
    Ok(Bundle::from([
        ("index.html".into(), site.templates.fill("front.html", &page)?),
        ("static/choose.css".into(), site.templates.fill("choose.css", &sheet)?),
        (INDEX.into(), render_index(site, in_order(site).into_iter().map(|(session, _)| session))),
    ]))
}

/// Youngest first, as a family looks for them; then by title.
fn in_order<'p>(site: &Site<'p>) -> Vec<(&'p Session, &'p Plans)> {
    let mut sessions: Vec<(&Session, &Plans)> = site.offered().collect();
    sessions.sort_by_key(|(session, _)| {
        (session.ages.youngest, session.ages.oldest, plain_line(&session.title), &session.id)
    });
    sessions
}

fn entry_of(site: &Site<'_>, chooser: &Chooser, session: &Session, plans: &Plans) -> Entry {
    let scribe = Scribe::new(site.publication.pack, "").above(&site.up());
    let needs = session.needs.iter().filter(|need| !need.optional);
    Entry {
        href: page_path(&session.id),
        cards: Sheet::Cards.path(&session.id),
        title: plain_line(&session.title),
        summary: scribe.line(&session.summary),
        facts: facts_of(session, &plans.time, &site.words),
        needs: needs.map(|need| plain_line(&need.counted())).collect(),
        skyline: draw_skyline(session, &plans.time),
        fits: chooser.fits_of(session),
        lacking: chooser.needs_of(session),
        is_draft: is_draft(session),
    }
}

pub(super) fn is_draft(session: &Session) -> bool {
    session.standing.as_ref().is_some_and(|standing| standing.state.value == State::Draft)
}

/// Text as the inside of a double-quoted CSS string (CSS Syntax 3: escapes).
fn css_string(text: &str) -> String {
    let mut inside = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '"' | '\\' | '<' | '\n' | '\r' => {
                let _ = write!(inside, "\\{:x} ", u32::from(letter));
            }
            _ => inside.push(letter),
        }
    }
    inside
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_string_can_not_break_out_of_the_style_sheet() {
        assert_eq!(css_string(r#"a" } b"#), r"a\22  } b");
        assert_eq!(css_string("a\\\n"), "a\\5c \\a ");
    }
}
