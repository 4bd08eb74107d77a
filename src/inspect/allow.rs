//! Findings held against what the files allow: what is allowed is set aside with its reason and counts no more;
//! allowances that allow nothing are findings themselves.
//!
//! A session’s allowance is for findings in its own file, one in pack.yaml for the whole pack.

use crate::finding::Finding;
use crate::finding::Severity;
use crate::inspect::rules::find_rule;
use crate::pack::{Allowance, Pack};
use crate::place::{FileId, Place};
use crate::read::nearest;

use super::rules;

/// A finding that is allowed, and by which words.
#[derive(Clone, Debug)]
pub struct Allowed {
    pub finding: Finding,
    pub allowance: Allowance,
}

/// What was found, in two heaps.
#[derive(Clone, Debug, Default)]
pub struct Judged {
    pub findings: Vec<Finding>,
    pub allowed: Vec<Allowed>,
}

/// Problems that are about what a school asks of itself. No other problem can be allowed: it is about a file that
/// can’t be read, figures that contradict one another, a page that could not be made, or safety.
const ALLOWABLE_PROBLEMS: [&str; 4] =
    ["success-missing", "criteria-missing", "attempts-missing", "curriculum-unknown"];

/// Warnings and advice that are about safety.
const SAFETY: [&str; 15] = [
    "adult-nearby",
    "climbing-unwatched",
    "cool-down-missing",
    "flight-beyond",
    "headroom-indoors",
    "headroom-missing",
    "roll-surface",
    "safety-own-missing",
    "substitute-unmeasured",
    "surface-unsafe",
    "surroundings-unthought",
    "throw-unsaid",
    "warm-up-missing",
    "weight-grip",
    "look-again-overdue",
];

/// Whether findings of a code can be allowed at all.
pub fn can_be_allowed(code: &str) -> bool {
    let is_own = code.starts_with("allowance-");
    find_rule(code).is_some_and(|rule| match rule.severity {
        Severity::Problem => ALLOWABLE_PROBLEMS.contains(&code),
        Severity::Warning | Severity::Advice => !SAFETY.contains(&code) && !is_own,
    })
}

/// Sets aside what is allowed, and adds what is wrong with the allowances.
pub(super) fn judge(pack: &Pack, findings: Vec<Finding>) -> Judged {
    let written = written(pack);
    let mut is_used = vec![false; written.len()];
    let mut judged = Judged::default();
    for finding in findings {
        let found = written.iter().position(|(file, allowance)| {
            let is_here = file.is_none_or(|file| file == finding.place.file);
            is_here
                && allowance.code.0 == finding.code
                && can_be_allowed(finding.code)
                && !allowance.is_past(pack.today)
        });
        match found {
            Some(at) => {
                is_used[at] = true;
                let allowance = written[at].1.clone();
                judged.allowed.push(Allowed { finding, allowance });
            }
            None => judged.findings.push(finding),
        }
    }
    let is_read_whole = pack.is_whole && pack.unread_texts().next().is_none();
    for ((file, allowance), is_used) in written.iter().zip(is_used) {
        // Of a pack that is read in part, more may be found elsewhere.
        let is_seen_whole = file.is_some() || is_read_whole;
        let is_seen_whole = is_seen_whole && !pack.is_shared_unread;
        judged.findings.extend(fault_of(allowance, is_used || !is_seen_whole, pack));
    }
    judged
}

/// Every allowance, with the file it is for, or none for all.
fn written(pack: &Pack) -> Vec<(Option<FileId>, &Allowance)> {
    let of_sessions = pack.sessions.iter().flat_map(|session| {
        session.allow.iter().map(move |allowance| (Some(session.file), allowance))
    });
    of_sessions.chain(pack.allow.iter().map(|allowance| (None, allowance))).collect()
}

fn fault_of(allowance: &Allowance, is_used: bool, pack: &Pack) -> Option<Finding> {
    let code = allowance.code.0.as_str();
    let place = allowance.place();
    if !can_be_allowed(code) {
        return Some(finding("allowance-unfit", place, unfit(code)));
    }
    if let Some(until) = allowance.until.as_ref().filter(|_| allowance.is_past(pack.today)) {
        let says = format!("This was allowed until {} only.", until.value.in_words());
        let way_out =
            "Mend what it was for and take the allowance out, or look again and write a later day.";
        return Some(finding("allowance-past", until.place, (says, way_out.into())));
    }
    if is_used {
        return None;
    }
    let says = format!("“{code}” is allowed here, but nothing of the kind is found any more.");
    Some(finding("allowance-stale", place, (says, "Take the allowance out.".into())))
}

/// Why a code can’t be allowed.
fn unfit(code: &str) -> (String, String) {
    if find_rule(code).is_some() {
        return (
            format!(
                "“{code}” can’t be allowed: it is about safety, or about what can’t be published."
            ),
            "Take the allowance out and mend what is found.".into(),
        );
    }
    let codes: Vec<&str> = rules::ALL.iter().map(|rule| rule.code).collect();
    let way_out = match nearest(code, &codes) {
        Some(near) => format!("Did you mean “{near}”?"),
        None => "Write the code that inspect shows in brackets, such as slot-long.".into(),
    };
    (format!("There is no finding with the code “{code}”."), way_out)
}

fn finding(code: &'static str, place: Place, (says, way_out): (String, String)) -> Finding {
    let severity = find_rule(code).map_or(Severity::Warning, |rule| rule.severity);
    Finding { code, severity, place, says, way_out }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_lists_name_rules_that_there_are() {
        for code in ALLOWABLE_PROBLEMS {
            let severity = find_rule(code).map(|rule| rule.severity);
            assert_eq!(severity, Some(Severity::Problem), "{code}");
        }
        for code in SAFETY {
            assert!(find_rule(code).is_some_and(|r| r.severity != Severity::Problem), "{code}");
        }
        assert!(can_be_allowed("slot-long") && !can_be_allowed("yaml-broken"));
    }
}
