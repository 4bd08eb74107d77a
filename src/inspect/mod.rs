//! Stage three, inspect: pack → findings. Every rule is a file of its own under [`rules`]; the rule
//! reference, the broken example pack and the tests are made from what those files say.

mod allow;
mod example;
mod fit;
mod licence;
mod pictures;
mod rule;
pub mod rules;
mod wording;

pub use allow::{Allowed, Judged, can_be_allowed};
pub use example::example_pack;
pub use rule::{Check, Notes, Rule};

use std::sync::Arc;

use rayon::prelude::*;

use crate::finding::{Finding, sort_findings};
use crate::pack::{Pack, Session};
use crate::place::Placed;
use crate::plan::{Plans, plan_session};

/// The plans of every session, and every finding of a pack: those met while reading, and those of every
/// rule; sorted by place. What the pack allows is set aside.
pub fn inspect_pack(pack: &Pack, mut findings: Vec<Finding>) -> (Vec<Arc<Plans>>, Judged) {
    let of_sessions = pack.sessions.par_iter().map(|session| inspect_session(session, pack));
    let (plans, of_sessions): (Vec<_>, Vec<_>) = of_sessions.unzip();
    findings.extend(of_sessions.into_iter().flatten());
    inspect_texts(&pack.texts(), pack, &mut findings);
    for rule in rules::ALL {
        if let Check::Pack(check) = rule.check {
            check(pack, &mut Notes::new(rule, &mut findings));
        }
    }
    sort_findings(&mut findings);
    let mut judged = allow::judge(pack, findings);
    sort_findings(&mut judged.findings);
    (plans, judged)
}

fn inspect_session(session: &Session, pack: &Pack) -> (Arc<Plans>, Vec<Finding>) {
    let plans = Arc::new(plan_session(session, pack));
    let mut findings = Vec::new();
    for rule in rules::ALL {
        if let Check::Session(check) = rule.check {
            check(session, &plans, pack, &mut Notes::new(rule, &mut findings));
        }
    }
    inspect_texts(&session.texts(), pack, &mut findings);
    (plans, findings)
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
