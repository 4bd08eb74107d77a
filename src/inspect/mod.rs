//! Stage three, inspect: pack → findings. Every rule is a file of its own under [`rules`]; the rule
//! reference, the broken example pack and the tests are made from what those files say.

mod example;
mod rule;
pub mod rules;

pub use example::example_pack;
pub use rule::{Check, Notes, Rule};

use rayon::prelude::*;

use crate::finding::{Finding, sort_findings};
use crate::pack::Pack;
use crate::plan::{Plans, plan_session};

/// Every finding of a pack: those met while reading, and those of every rule; sorted by place.
pub fn inspect_pack(pack: &Pack, mut findings: Vec<Finding>) -> Vec<Finding> {
    let of_sessions: Vec<Vec<Finding>> = pack
        .sessions
        .par_iter()
        .map(|session| {
            let plans: Plans = plan_session(session);
            let mut found = Vec::new();
            for rule in rules::ALL {
                if let Check::Session(check) = rule.check {
                    check(session, &plans, pack, &mut Notes::new(rule, &mut found));
                }
            }
            found
        })
        .collect();
    findings.extend(of_sessions.into_iter().flatten());
    for rule in rules::ALL {
        if let Check::Pack(check) = rule.check {
            check(pack, &mut Notes::new(rule, &mut findings));
        }
    }
    sort_findings(&mut findings);
    findings
}
