//! Things to gather: for one session, and for the whole pack.

use serde::Serialize;

use super::Site;
use super::frame::{Frame, frame_of_page};
use super::html::{Html, Scribe};
use crate::pack::{Need, Pack, Session, SessionId, Substitute, counted};
use crate::place::Placed;
use crate::plan::Gathered;
use crate::prose::plain_line;
use crate::read::Line;
use crate::render::equipment_phrases::counted_things;
use crate::render::phrases::{fitness_of, limits_of};
use crate::render::{GATHER_SHEET, RenderFault, page_path};
use crate::words::Words;

#[derive(Serialize, Clone, Debug)]
struct ThingsPage {
    frame: Frame,
    /// The fewest things that serve every session: `4 pairs of rolled socks`.
    once: Vec<String>,
    is_least: bool,
    sheet: &'static str,
    needed: Vec<Thing>,
    /// What every session that uses it can do without.
    extras: Vec<Thing>,
}

/// Something to gather.
#[derive(Serialize, Clone, Debug)]
pub(super) struct Thing {
    /// `5 markers`
    name: String,
    optional: bool,
    /// Every home has it.
    household: bool,
    /// `at most 200 g, 5–25 cm, soft`
    limits: Option<String>,
    note: Option<Html>,
    /// How a weight is held and closed.
    grip: Option<Html>,
    instead: Vec<StandIn>,
    /// On a session's page: the parts that use it.
    used_in: Vec<String>,
    /// On the page for the whole pack: the sessions that use it.
    sessions: Vec<Link>,
}

#[derive(Serialize, Clone, Debug)]
struct StandIn {
    name: String,
    measure: Option<String>,
    note: Option<Html>,
}

/// A link to another page, from the top folder.
#[derive(Serialize, Clone, Debug)]
pub(super) struct Link {
    href: String,
    text: String,
}

pub(super) fn link_to(session: &Session) -> Link {
    Link { href: page_path(&session.id), text: plain_line(&session.title) }
}

pub(super) fn render_things(site: &Site<'_>) -> Result<Vec<u8>, RenderFault> {
    let (title, about) = (site.words.say("things"), site.words.say("things-intro"));
    let things = site.publication.gathering().things.iter();
    let (extras, needed): (Vec<_>, Vec<_>) = things.partition(|thing| thing.optional);
    let show = |things: Vec<&Gathered>| {
        things.into_iter().map(|thing| show_gathered(site, thing)).collect()
    };
    let page = ThingsPage {
        frame: frame_of_page(site, "things", &title, &about),
        once: site.publication.gather_set().things.iter().map(counted_things).collect(),
        is_least: site.publication.gather_set().is_proven,
        sheet: GATHER_SHEET,
        needed: show(needed),
        extras: show(extras),
    };
    site.templates.fill("things.html", &page)
}

fn show_gathered(site: &Site<'_>, thing: &Gathered) -> Thing {
    let scribe = Scribe::new(site.publication.pack, "");
    let sessions = thing.sessions.iter().filter_map(|id: &SessionId| site.session(id));
    Thing {
        name: plain_line(&counted(thing.count, &thing.name, &thing.plural)),
        optional: thing.optional,
        household: thing.household,
        limits: None,
        note: None,
        grip: scribe.line_if_any(grip_of(site.publication.pack, &thing.name)),
        instead: show_stand_ins(&site.words, &scribe, thing.count, &thing.substitutes),
        used_in: Vec::new(),
        sessions: sessions.map(link_to).collect(),
    }
}

fn grip_of<'p>(pack: &'p Pack, name: &str) -> Option<&'p Placed<Line>> {
    pack.things.get(name)?.grip.as_ref()
}

/// What a session needs.
pub(super) fn show_need(
    words: &Words,
    scribe: &Scribe<'_>,
    session: &Session,
    need: &Need,
) -> Thing {
    let used_in = need.parts.iter().filter_map(|part| session.parts.get(*part));
    Thing {
        name: plain_line(&need.counted()),
        optional: need.optional,
        household: need.is_household(),
        limits: limits_of(&need.limits, words),
        note: scribe.line_if_any(need.note.as_ref()),
        grip: scribe.line_if_any(need.grip()),
        instead: show_stand_ins(words, scribe, need.count, &need.substitutes),
        // A thing used all the way through needs no list of parts.
        used_in: if need.parts.len() == session.parts.len() {
            Vec::new()
        } else {
            used_in.map(|part| plain_line(&part.title)).collect()
        },
        sessions: Vec::new(),
    }
}

fn show_stand_ins(
    words: &Words,
    scribe: &Scribe<'_>,
    count: u32,
    all: &[Substitute],
) -> Vec<StandIn> {
    let show = |substitute: &Substitute| StandIn {
        name: if count == 1 {
            plain_line(&substitute.thing)
        } else {
            plain_line(&substitute.plural)
        },
        measure: fitness_of(
            words,
            substitute.mass.as_ref(),
            substitute.size.as_ref(),
            substitute.soft,
        ),
        note: substitute.note.as_ref().map(|note| scribe.line(note)),
    };
    all.iter().map(show).collect()
}
