//! The page that tells what changed since an earlier edition, for families or for whoever reviews.
//!
//! Families are told what matters to them: no curriculum, no standing, no answers, no corrected comma.

use serde::Serialize;

use super::Site;
use super::frame::{Frame, direction_of, frame_of_page};
use super::picture::encoded_path;
use crate::edition::{
    Audience, CardOf, Change, Changes, Happened, Piece, SessionChange, SessionRef, Sheets,
    StaleCard, StaleSheet, is_small_correction, mark_words, shorten,
};
use crate::render::{Publication, RenderFault};
use crate::words::Filling;

#[derive(Serialize, Clone, Debug)]
struct ChangesPage {
    frame: Frame,
    when: String,
    shared: Vec<ChangeView>,
    new: Vec<SessionLink>,
    gone: Vec<String>,
    changed: Vec<SessionView>,
    same: usize,
    is_nothing: bool,
}

/// A session and the way to its page.
#[derive(Serialize, Clone, Debug)]
struct SessionLink {
    href: String,
    title: String,
    /// Where it is not that of the page.
    language: Option<String>,
    direction: Option<&'static str>,
}

#[derive(Serialize, Clone, Debug)]
struct SessionView {
    link: SessionLink,
    groups: Vec<Group>,
    /// Nothing but points and capitals.
    is_small: bool,
    sheets: Vec<SheetView>,
}

/// The changes of the session itself, or of one part.
#[derive(Serialize, Clone, Debug)]
struct Group {
    /// `Challenge: Best of three`
    heading: Option<String>,
    changes: Vec<ChangeView>,
}

#[derive(Serialize, Clone, Debug)]
struct ChangeView {
    /// `Attempts: 3 became 5`
    says: String,
    before: Vec<PieceView>,
    now: Vec<PieceView>,
}

/// Some words, and whether they changed.
#[derive(Serialize, Clone, Debug)]
struct PieceView {
    words: String,
    is_kept: bool,
}

/// A sheet to print again.
#[derive(Serialize, Clone, Debug)]
struct SheetView {
    name: String,
    before: String,
    now: String,
    cards: Vec<String>,
}

/// Renders the page; `families` leads from the teachers' folder to the families', where it is for them.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_changes_page(
    publication: &Publication<'_>,
    when: &str,
    changes: &Changes,
    families: Option<&str>,
) -> Result<Vec<u8>, RenderFault> {
    let mut site = Site::of(publication)?;
    site.families = families.map(encoded_path);
    let page = show_changes(&site, when, changes);
    site.templates.fill("changes.html", &page)
}

fn show_changes(site: &Site<'_>, when: &str, changes: &Changes) -> ChangesPage {
    let is_told = |change: &&Change| is_told(site, change);
    let shared: Vec<&Change> = changes.shared.iter().filter(is_told).collect();
    let shown: Vec<SessionView> =
        changes.changed.iter().filter_map(|change| show_session(site, change)).collect();
    let key = if site.families.is_some() { "since-review" } else { "since" };
    let about = site.words.say_with("since-how", &[("when", Filling::Text(when))]);
    ChangesPage {
        frame: frame_of_page(site, "changes", &site.words.say(key), &about),
        when: when.to_owned(),
        same: changes.same + (changes.changed.len() - shown.len()),
        is_nothing: shown.is_empty()
            && shared.is_empty()
            && changes.new.is_empty()
            && changes.gone.is_empty(),
        shared: shared.into_iter().map(|change| show_change(site, change)).collect(),
        new: changes.new.iter().map(|session| link_of(site, session)).collect(),
        gone: changes.gone.iter().map(|session| session.title.clone()).collect(),
        changed: shown,
    }
}

/// Whether the readers of this page are told.
fn is_told(site: &Site<'_>, change: &Change) -> bool {
    let is_for_families = change.kind.is_none_or(|kind| kind.audience == Audience::Families);
    site.families.is_some() || is_for_families && !is_small(change)
}

fn is_small(change: &Change) -> bool {
    match &change.happened {
        Happened::Reworded { before, now } | Happened::Became { before, now } => {
            is_small_correction(before, now)
        }
        _ => false,
    }
}

fn show_session(site: &Site<'_>, change: &SessionChange) -> Option<SessionView> {
    let told: Vec<&Change> = change.changes.iter().filter(|one| is_told(site, one)).collect();
    let concerns = |one: &&Change| one.kind.is_none_or(|kind| kind.audience == Audience::Families);
    let is_small = told.is_empty()
        && change.changes.iter().any(|one| concerns(&one))
        && change.changes.iter().filter(concerns).all(is_small);
    // A corrected comma is no reason to print again.
    let stale: &[StaleSheet] = if is_small { &[] } else { &change.stale };
    if told.is_empty() && stale.is_empty() && !is_small {
        return None;
    }
    Some(SessionView {
        link: link_of(site, &change.session),
        groups: group(site, &told),
        is_small,
        sheets: stale.iter().map(|sheet| show_sheet(site, sheet)).collect(),
    })
}

/// The session's own changes first, then those of each part under its name.
fn group(site: &Site<'_>, told: &[&Change]) -> Vec<Group> {
    let mut groups: Vec<(Option<String>, Vec<ChangeView>)> = Vec::new();
    for change in told {
        let heading = change.part.as_ref().map(|part| {
            format!("{}: {}", site.words.say(&format!("part-{}", part.kind)), part.title)
        });
        let view = show_change(site, change);
        match groups.last_mut() {
            Some((last, views)) if *last == heading => views.push(view),
            _ => groups.push((heading, vec![view])),
        }
    }
    groups.into_iter().map(|(heading, changes)| Group { heading, changes }).collect()
}

fn show_change(site: &Site<'_>, change: &Change) -> ChangeView {
    let words = &site.words;
    let what = change.kind.map(|kind| words.say(kind.label)).unwrap_or_default();
    let what = what.trim_end_matches(':');
    let with = |key: &str, more: &[(&str, &str)]| {
        let more = more.iter().map(|(name, text)| (*name, Filling::Text(text)));
        let all: Vec<_> = std::iter::once(("what", Filling::Text(what))).chain(more).collect();
        words.say_with(key, &all)
    };
    let says = match &change.happened {
        Happened::Became { before, now } => {
            with("since-became", &[("before", before), ("now", now)])
        }
        Happened::Reworded { .. } => with("since-reworded", &[]),
        Happened::Added(text) => with("since-added", &[("text", text)]),
        Happened::Gone(text) => with("since-gone", &[("text", text)]),
        Happened::Reordered => with("since-reordered", &[]),
        Happened::PartAdded => words.say("since-part-added"),
        Happened::PartGone => words.say("since-part-gone"),
        Happened::PartsReordered => words.say("since-parts-reordered"),
    };
    let (before, now) = match &change.happened {
        Happened::Reworded { before, now } => mark_words(before, now),
        _ => (Vec::new(), Vec::new()),
    };
    let view = |pieces: Vec<Piece>| {
        let pieces = shorten(pieces).into_iter();
        pieces.map(|p| PieceView { words: p.words, is_kept: p.is_kept }).collect()
    };
    ChangeView { says, before: view(before), now: view(now) }
}

fn show_sheet(site: &Site<'_>, sheet: &StaleSheet) -> SheetView {
    SheetView {
        name: site.words.say(&format!("sheet-{}", sheet.sheets.name())),
        before: sheet.before.to_string(),
        now: sheet.now.to_string(),
        cards: if sheet.sheets == Sheets::CARDS {
            sheet.cards.iter().map(|card| card_name(site, card)).collect()
        } else {
            Vec::new()
        },
    }
}

fn card_name(site: &Site<'_>, card: &StaleCard) -> String {
    let words = &site.words;
    match (card.card, &card.part) {
        (_, Some(part)) => {
            format!("{}: {}", words.say(&format!("part-{}", part.kind)), part.title)
        }
        (CardOf::Floor, None) => words.say("plan"),
        (CardOf::Helper, None) => words.say("cards-look"),
        (CardOf::Adaptations, None) => words.say("cards-adapt"),
        (CardOf::Every, None) => words.say("since-all-cards"),
        (CardOf::Opening | CardOf::Part, None) => words.say("before"),
    }
}

fn link_of(site: &Site<'_>, session: &SessionRef) -> SessionLink {
    let pack = site.publication.pack;
    let found = pack.sessions.iter().find(|known| known.id.as_str() == session.id);
    let language = found.map(|known| known.language.clone()).filter(|l| *l != pack.language.value);
    SessionLink {
        href: format!("sessions/{}.html", session.id),
        title: session.title.clone(),
        direction: language.as_deref().map(direction_of),
        language,
    }
}
