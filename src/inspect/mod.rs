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
use before::Looked;
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
    let (plans, found) =
        pack.sessions.par_iter().map(|session| inspect_session(session, pack)).unzip();
    (plans, with_rules_of_packs(pack, findings, found))
}

/// The same; a session that was inspected before is not inspected again.
pub fn inspect_pack_again(
    pack: &Pack,
    findings: Vec<Finding>,
    before: &mut FoundBefore,
) -> (Vec<Arc<Plans>>, Judged) {
    let look = |session: &Arc<Session>| {
        before.find(session, pack).unwrap_or_else(|| {
            let (plans, found) = inspect_session(session, pack);
            Looked::of(session, pack, plans, found)
        })
    };
    let looked: Vec<Looked> = pack.sessions.par_iter().map(look).collect();
    let (plans, found) =
        looked.iter().map(|looked| (Arc::clone(&looked.plans), looked.found.clone())).unzip();
    before.remember(looked);
    (plans, with_rules_of_packs(pack, findings, found))
}

/// The same; what was found in a session that comes from the same as before is read from a note.
pub fn inspect_pack_noting(
    pack: &Pack,
    findings: Vec<Finding>,
    shelf: &dyn Shelf,
) -> (Vec<Arc<Plans>>, Judged) {
    let notebook = note::Notebook::of(pack);
    let look = |session: &Arc<Session>| {
        let plans = plan_session(session, pack);
        let key = notebook.key(session);
        let known = key.and_then(|key| notebook.read(&shelf.find_note(key)?, session));
        let found = known.unwrap_or_else(|| {
            let found = find_in_session(session, &plans, pack);
            let note = notebook.write(&found, session);
            key.zip(note).inspect(|(key, note)| shelf.keep_note(*key, note));
            found
        });
        (Arc::new(plans.without_reading()), found)
    };
    let (plans, found) = pack.sessions.par_iter().map(look).unzip();
    (plans, with_rules_of_packs(pack, findings, found))
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

fn inspect_session(session: &Session, pack: &Pack) -> (Arc<Plans>, Vec<Finding>) {
    let plans = plan_session(session, pack);
    let findings = find_in_session(session, &plans, pack);
    (Arc::new(plans.without_reading()), findings)
}

fn find_in_session(session: &Session, plans: &Plans, pack: &Pack) -> Vec<Finding> {
    let mut findings = Vec::new();
    for rule in rules::ALL {
        if let Check::Session(check) = rule.check {
            check(session, plans, pack, &mut Notes::new(rule, &mut findings));
        }
    }
    inspect_texts(&session.texts(), pack, &mut findings);
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
    for rule in rules::ALL {
        if let Check::Text(check) = rule.check {
            let mut notes = Notes::new(rule, findings);
            for text in texts {
                check(text, pack, &mut notes);
            }
        }
    }
}
