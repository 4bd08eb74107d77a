//! A resolved pack and its plans → outlines: what every session says, in the words of its language.
//!
//! The order is that of the sheets. Words are bare of CommonMark, by the same reading that paper uses.

use std::sync::Arc;

use rayon::prelude::*;

use super::outline_part::outline_part;
use super::{Fact, Mark, Outline, PackOutline, Sheets, kind_of};
use crate::drawing::{Mark as Drawn, Room, draw_floor_plan};
use crate::pack::plain_paragraphs;
use crate::pack::{Need, Pack, Picture, Session};
use crate::plan::{Plans, main_effort};
use crate::prose::{is_web_address, plain_line};
use crate::render::equipment_phrases::home_list;
use crate::render::page_path;
use crate::render::phrases::{
    effort_name, floor_size, limits_of, need_name, part_name, place_name, substitute_name,
    surface_names,
};
use crate::render::plan_phrases::{slot_name, slot_sentence, tape_sentence};
use crate::render::quantities::Said;
use crate::words::Words;

/// Facts in the making.
pub(super) struct Notebook<'w> {
    pub words: &'w Words,
    pub facts: Vec<Fact>,
}

impl<'w> Notebook<'w> {
    pub const fn new(words: &'w Words) -> Self {
        Self { words, facts: Vec::new() }
    }

    /// Notes a fact; one that says nothing is none.
    ///
    /// # Panics
    /// Where there is no such kind: our own slip.
    pub fn note(&mut self, key: &str, says: impl Into<String>) {
        let says = says.into();
        let kind = kind_of(key).expect("every kind that is noted is in the table");
        if !says.is_empty() {
            self.facts.push(Fact { kind, says });
        }
    }

    pub fn note_if(&mut self, key: &str, says: Option<String>) {
        if let Some(says) = says {
            self.note(key, says);
        }
    }

    pub fn note_all(&mut self, key: &str, all: impl IntoIterator<Item = String>) {
        for says in all {
            self.note(key, says);
        }
    }
}

/// Paragraphs and entries of a text, each on a line.
pub(super) fn bare(text: &str) -> String {
    plain_paragraphs(text).join("\n")
}

/// The outline of a whole pack; `plans` in the order of its sessions.
pub fn outline_pack(pack: &Pack, plans: &[Arc<Plans>], words: &Words) -> PackOutline {
    let sessions = pack.sessions.par_iter().zip(plans);
    let sessions =
        sessions.map(|(session, plans)| outline_session(session, plans, pack, words)).collect();
    PackOutline { sessions, ..outline_shared(pack, words) }
}

/// What all sessions of a pack share, and none of them.
pub fn outline_shared(pack: &Pack, words: &Words) -> PackOutline {
    let mut notebook = Notebook::new(words);
    notebook.note("school", pack.school.as_deref().map(plain_line).unwrap_or_default());
    notebook.note_all("usual-cautions", pack.cautions.iter().map(|caution| bare(caution)));
    notebook.note_if("contact", pack.contact.as_ref().map(|contact| plain_line(contact)));
    PackOutline {
        language: pack.language.to_string(),
        is_for_families: false,
        facts: notebook.facts,
        sessions: Vec::new(),
    }
}

/// The outline of one session.
pub fn outline_session(session: &Session, plans: &Plans, pack: &Pack, words: &Words) -> Outline {
    let mut notebook = Notebook::new(words);
    about(&mut notebook, session, plans);
    things(&mut notebook, session, plans);
    shared(&mut notebook, session, pack);
    extras(&mut notebook, session, pack);
    fitting(&mut notebook, session, plans);
    review(&mut notebook, session);
    standing(&mut notebook, session);
    let parts: Vec<_> = session
        .parts
        .iter()
        .enumerate()
        .map(|(at, part)| outline_part(part, at, plans, pack, words))
        .collect();
    let mark = |(sheets, _)| (sheets, Mark::of(&notebook.facts, &parts, sheets));
    Outline {
        id: session.id.to_string(),
        title: plain_line(&session.title),
        is_retired: session.is_retired(),
        marks: Sheets::EACH.into_iter().map(mark).collect(),
        facts: notebook.facts,
        parts,
    }
}

fn about(notebook: &mut Notebook<'_>, session: &Session, plans: &Plans) {
    let words = notebook.words;
    notebook.note("title", plain_line(&session.title));
    notebook.note("summary", plain_line(&session.summary));
    notebook.note("ages", session.ages.to_string());
    notebook.note("minutes", plans.time.slot.say(words));
    notebook.note("activity", words.say(&format!("activity-{}", session.activity.word())));
    if let Some(space) = &session.space {
        notebook.note("space", floor_size(space, words));
        notebook.note_if("headroom", space.height.as_ref().map(|height| height.say(words)));
        notebook.note("where", place_name(&space.whereabouts, words));
    }
    notebook.note("surface", surface_names(session, words));
    let effort = main_effort(session, &plans.time).map(|effort| effort_name(effort, words));
    notebook.note_if("effort-mostly", effort);
    notebook.note_all("objectives", session.objectives.iter().map(|line| plain_line(line)));
    notebook.note_all("success", session.success.iter().map(|line| plain_line(line)));
    notebook.note_all("curriculum", session.curriculum.iter().map(ToString::to_string));
}

fn things(notebook: &mut Notebook<'_>, session: &Session, plans: &Plans) {
    let words = notebook.words;
    let named = |need: &Need, says: &str| format!("{}: {says}", plain_line(&need.name));
    for need in &session.needs {
        notebook.note("things", need_name(need, words));
        let limits = limits_of(&need.limits, words).map(|limits| named(need, &limits));
        notebook.note_if("things-limits", limits);
        let others: Vec<String> = need
            .substitutes
            .iter()
            .map(|other| match other.note.as_ref().filter(|_| need.is_weight()) {
                Some(note) => {
                    format!("{} ({})", substitute_name(other, need.count), plain_line(note))
                }
                None => substitute_name(other, need.count),
            })
            .collect();
        if !others.is_empty() {
            notebook.note("things-instead", named(need, &others.join("; ")));
        }
        notebook
            .note_if("things-note", need.note.as_ref().map(|note| named(need, &plain_line(note))));
        notebook.note_if("things-note", need.grip().map(|grip| named(need, &plain_line(grip))));
        let used = need.parts.iter().filter_map(|part| session.parts.get(*part));
        let parts: Vec<String> = used.map(|part| part_name(part, words)).collect();
        if !parts.is_empty() {
            notebook.note("things-for", named(need, &parts.join(", ")));
        }
    }
    let together = home_list(session, &plans.equipment, words);
    // One alone is not printed.
    if together.len() > 1 {
        notebook.note_all("things-together", together);
    }
}

/// What the pack says on every sheet: told once for all sessions, counted for the marks of each.
fn shared(notebook: &mut Notebook<'_>, session: &Session, pack: &Pack) {
    notebook.note_all("cautions", session.safety.iter().map(|caution| bare(caution)));
    let usual = pack.cautions.iter().map(|caution| bare(caution));
    let contact = pack.contact.iter().map(|contact| plain_line(contact));
    let all: Vec<String> = usual.chain(contact).collect();
    notebook.note("shared", Mark::of_bytes(all.join("\n").as_bytes()).to_string());
    notebook.note("letterhead", plain_line(pack.school.as_deref().unwrap_or(&pack.title)));
    if let Some(home) = pack.address.as_ref().filter(|address| is_web_address(address)) {
        let home = home.trim_end_matches('/');
        notebook.note("address", format!("{home}/{}", page_path(&session.id)));
    }
}

fn extras(notebook: &mut Notebook<'_>, session: &Session, pack: &Pack) {
    let words = notebook.words;
    if let Some(adult) = &session.adult {
        notebook.note_if("adult-nearby", adult.nearby.as_ref().map(|time| time.say(words)));
        notebook.note_if("adult-helping", adult.helping.as_ref().map(|time| time.say(words)));
        notebook.note_if("adult-why", adult.why.as_ref().map(|why| plain_line(why)));
    }
    if let Some(film) = &session.film {
        notebook.note("film", plain_line(&film.shows));
        notebook.note("film-link", film.link.to_string());
    }
    pictures(notebook, ["pictures", "picture-bytes"], &session.pictures, pack);
    notebook.note_if("licence", session.licence.as_ref().map(|line| plain_line(line)));
    notebook.note_if("credit", session.credit.as_ref().map(|line| plain_line(line)));
}

/// A picture by its words, and a mark of its bytes.
pub(super) fn pictures(
    notebook: &mut Notebook<'_>,
    [shown, bytes]: [&str; 2],
    pictures: &[Picture],
    pack: &Pack,
) {
    for picture in pictures {
        let texts =
            [&picture.alt, &picture.caption].map(|line| line.as_ref().map(|l| plain_line(l)));
        let texts: Vec<String> = texts.into_iter().flatten().collect();
        notebook.note(shown, texts.join(" – "));
        let file = picture.path.as_ref().and_then(|path| pack.pictures.get(path));
        notebook.note_if(bytes, file.map(|file| Mark::of_bytes(file).to_string()));
    }
}

fn fitting(notebook: &mut Notebook<'_>, session: &Session, plans: &Plans) {
    let words = notebook.words;
    for (key, text) in session.adaptations.each() {
        notebook.note(&format!("adapt-{key}"), bare(text));
    }
    let slots = plans.other_slots.iter();
    let said = slots.map(|other| {
        format!("{}: {}", slot_name(other.slot, words), slot_sentence(other, session, words))
    });
    notebook.note_all("other-slots", said);
    for shared in plans.space.shared_floors() {
        let titles = shared.parts.iter().filter_map(|part| session.parts.get(*part));
        let titles: Vec<String> = titles.map(|part| plain_line(&part.title)).collect();
        // The drawing itself is of fixed size: it is its words that count, and its outline.
        let room = Room { width: 300.0, tallest: 200.0, words: 10.0, is_rtl: false };
        let drawing = draw_floor_plan(shared.floor, plans.space.floor.as_ref(), words, room);
        let marks = drawing.marks.iter().filter_map(|mark| match mark {
            Drawn::Words { text, .. } => Some(text.clone()),
            _ => None,
        });
        let steps = shared.floor.setting_out.iter().map(|step| tape_sentence(step, words));
        let headroom = shared.floor.footprint.headroom.map(|height| height.say(words));
        let placement = match (&shared.floor.placement, &plans.space.floor) {
            (Some(placed), _) if placed.is_askew() => Some("askew".to_owned()),
            (None, Some(_)) => Some("unfit".to_owned()),
            _ => None,
        };
        let all = titles.into_iter().chain([drawing.says.clone()]).chain(marks);
        let all: Vec<String> = all.chain(steps).chain(headroom).chain(placement).collect();
        notebook.note("floor", all.join(" | "));
    }
}

fn review(notebook: &mut Notebook<'_>, session: &Session) {
    let words = notebook.words;
    for question in &session.review {
        notebook.note("questions", bare(&question.ask));
    }
    for question in &session.review {
        let kind = question.kind.as_ref().map(|kind| words.say(&format!("kind-{}", kind.word())));
        notebook.note_if("question-kinds", kind);
        notebook.note_if("answers", question.answer.as_ref().map(|answer| bare(answer)));
    }
    let has_faults = session.parts.iter().any(|part| !part.faults.is_empty());
    notebook.note_if("review-help", has_faults.then(|| "+".to_owned()));
}

fn standing(notebook: &mut Notebook<'_>, session: &Session) {
    let Some(standing) = &session.standing else { return };
    let by: Vec<String> = standing.by.iter().map(|initials| plain_line(initials)).collect();
    let state = notebook.words.say(&format!("standing-{}", standing.state.word()));
    notebook.note("standing", state);
    notebook.note("standing-by", by.join(", "));
    notebook.note_if("standing-on", standing.on.as_ref().map(ToString::to_string));
    notebook.note_if("look-again", standing.look_again.as_ref().map(ToString::to_string));
    notebook.note_all("standing-changed", standing.changed.iter().map(|line| plain_line(line)));
}
