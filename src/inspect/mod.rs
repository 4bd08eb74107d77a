//! Stage three, inspect: pack → findings. Every rule is a file of its own under [`rules`]; the rule
//! reference, the broken example pack and the tests are made from what those files say.

mod allow;
mod before;
mod example;
mod fit;
mod licence;
mod note;
mod pictures;
mod rule;
pub mod rules;
mod wording;

pub use allow::{Allowed, Judged, can_be_allowed};
pub use before::FoundBefore;
use before::{Found, Known, Looked};
pub use example::example_pack;
pub use rule::{Check, Notes, Rule};

use std::sync::Arc;

use rayon::prelude::*;

use crate::finding::{Finding, Severity, sort_findings};
use crate::pack::{Pack, Session, Unit};
use crate::place::Placed;
use crate::plan::unit::plan_unit;
use crate::plan::{Plans, plan_session};
use crate::read::is_shared;
use crate::render::shelf::Shelf;

/// The plans of every session, and every finding of a pack: those met while reading, and those of every
/// rule; sorted by place. What the pack allows is set aside.
pub fn inspect_pack(pack: &Pack, findings: Vec<Finding>) -> (Vec<Arc<Plans>>, Judged) {
    let bounds = bounds_of(pack);
    let look = |session: &Arc<Session>| {
        let plans = plan_session(session, &bounds);
        let found = find_in_session(session, &plans, (&bounds, pack));
        (Arc::new(plans.without_reading()), found)
    };
    let (plans, found) = pack.sessions.par_iter().map(look).unzip();
    (plans, with_rules_of_packs(pack, findings, found))
}

/// The same; what was found in a session before is kept as far as it still holds.
pub fn inspect_pack_again(
    pack: &Pack,
    findings: Vec<Finding>,
    before: &mut FoundBefore,
) -> (Vec<Arc<Plans>>, Judged) {
    if pack.is_shared_unread {
        // No rule is asked, and what was found before will hold again when the file is mended.
        let plan = |session: &Arc<Session>| Arc::new(plan_session(session, pack));
        let plans = pack.sessions.par_iter().map(plan).collect();
        return (plans, with_rules_of_packs(pack, findings, Vec::new()));
    }
    let (bounds, compared) = (bounds_of(pack), before.compare(pack));
    let look = |session: &Arc<Session>| {
        let (alone, plans) = match before.find(session, pack, &compared) {
            Known::All(looked) => return looked,
            Known::Alone(alone, plans) => (Some(alone), plans),
            Known::Nothing => (None, None),
        };
        let plans = plans.unwrap_or_else(|| Arc::new(plan_session(session, &bounds)));
        let in_pack = find_in_pack(session, &plans, pack);
        let (alone, plans) = if let Some(alone) = alone {
            (alone, plans)
        } else {
            let alone = find_alone(session, &plans, &bounds);
            (alone, Arc::new(Arc::unwrap_or_clone(plans).without_reading()))
        };
        Looked::of(session, pack, plans, Found { alone, in_pack })
    };
    let looked: Vec<Looked> = pack.sessions.par_iter().map(look).collect();
    let of = |looked: &Looked| {
        let Found { alone, in_pack } = &looked.found;
        (Arc::clone(&looked.plans), [alone.as_slice(), in_pack].concat())
    };
    let (plans, found) = looked.iter().map(of).unzip();
    before.remember(looked, compared);
    (plans, with_rules_of_packs(pack, findings, found))
}

/// The same; what was found in a session that comes from the same as before is read from a note.
pub fn inspect_pack_noting(
    pack: &Pack,
    findings: Vec<Finding>,
    shelf: &dyn Shelf,
) -> (Vec<Arc<Plans>>, Judged) {
    let (notebook, bounds) = (note::Notebook::of(pack), bounds_of(pack));
    let look = |session: &Arc<Session>| {
        let plans = plan_session(session, &bounds);
        let key = notebook.key(session);
        let known = key.and_then(|key| notebook.read(&shelf.find_note(key)?, session));
        let found = known.unwrap_or_else(|| {
            let found = find_in_session(session, &plans, (&bounds, pack));
            let note = notebook.write(&found, session);
            key.zip(note).inspect(|(key, note)| shelf.keep_note(*key, note));
            found
        });
        (Arc::new(plans.without_reading()), found)
    };
    let (plans, found) = pack.sessions.par_iter().map(look).unzip();
    (plans, with_rules_of_packs(pack, findings, found))
}

/// What rules of sessions alone are shown of a pack. What they are not shown need not be held against what was
/// before (`before`).
fn bounds_of(pack: &Pack) -> Pack {
    Pack { files: pack.files.clone(), ..pack.bounds_alone() }
}

fn with_rules_of_packs(
    pack: &Pack,
    mut findings: Vec<Finding>,
    found: Vec<Vec<Finding>>,
) -> Judged {
    if pack.is_shared_unread {
        // Whatever sessions and units seem to lack may stand in the file that can’t be read.
        say_more_follows(pack, &mut findings);
    } else {
        findings.extend(found.into_iter().flatten());
        inspect_shared(pack, &mut findings);
    }
    sort_findings(&mut findings);
    let mut judged = allow::judge(pack, findings);
    sort_findings(&mut judged.findings);
    judged
}

/// What is no session: the shared texts, units, and the pack as a whole.
fn inspect_shared(pack: &Pack, findings: &mut Vec<Finding>) {
    inspect_texts(&pack.texts(), pack, findings);
    for unit in &pack.units {
        inspect_unit(unit, pack, findings);
    }
    for rule in rules::ALL {
        if let Check::Pack(check) = rule.check {
            check(pack, &mut Notes::new(rule, findings));
        }
    }
}

/// One who mends a shared file is told that the sessions are looked at after that.
fn say_more_follows(pack: &Pack, findings: &mut [Finding]) {
    let is_of_shared = |finding: &&mut Finding| {
        is_shared(&pack.files.get(finding.place.file).path) && finding.severity == Severity::Problem
    };
    if let Some(finding) = findings.iter_mut().find(is_of_shared) {
        finding.way_out.push_str(" Sessions and units are looked at after that.");
    }
}

fn find_in_session(session: &Session, plans: &Plans, packs: (&Pack, &Pack)) -> Vec<Finding> {
    let mut findings = find_alone(session, plans, packs.0);
    findings.extend(find_in_pack(session, plans, packs.1));
    findings
}

/// What is found in a session alone.
fn find_alone(session: &Session, plans: &Plans, bounds: &Pack) -> Vec<Finding> {
    let mut findings = Vec::new();
    for rule in rules::ALL {
        if let Check::Session(check) = rule.check {
            check(session, plans, bounds, &mut Notes::new(rule, &mut findings));
        }
    }
    inspect_texts_alone(&session.texts(), bounds, &mut findings);
    findings
}

/// What is found in a session beside all that the pack holds.
fn find_in_pack(session: &Session, plans: &Plans, pack: &Pack) -> Vec<Finding> {
    let mut findings = Vec::new();
    for rule in rules::ALL {
        if let Check::SessionInPack(check) = rule.check {
            check(session, plans, pack, &mut Notes::new(rule, &mut findings));
        }
    }
    inspect_texts_in_pack(&session.texts(), pack, &mut findings);
    findings
}

fn inspect_unit(unit: &Unit, pack: &Pack, findings: &mut Vec<Finding>) {
    let plan = plan_unit(unit, pack);
    for rule in rules::ALL {
        if let Check::Unit(check) = rule.check {
            check(unit, &plan, pack, &mut Notes::new(rule, findings));
        }
    }
    inspect_texts(&unit.texts(), pack, findings);
}

fn inspect_texts(texts: &[Placed<&str>], pack: &Pack, findings: &mut Vec<Finding>) {
    inspect_texts_alone(texts, pack, findings);
    inspect_texts_in_pack(texts, pack, findings);
}

fn inspect_texts_alone(texts: &[Placed<&str>], bounds: &Pack, findings: &mut Vec<Finding>) {
    for rule in rules::ALL {
        if let Check::Text(check) = rule.check {
            let mut notes = Notes::new(rule, findings);
            for text in texts {
                check(text, bounds, &mut notes);
            }
        }
    }
}

fn inspect_texts_in_pack(texts: &[Placed<&str>], pack: &Pack, findings: &mut Vec<Finding>) {
    for rule in rules::ALL {
        if let Check::TextInPack(check) = rule.check {
            let mut notes = Notes::new(rule, findings);
            for text in texts {
                check(text, pack, &mut notes);
            }
        }
    }
}
