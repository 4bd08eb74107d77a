//! What `inspect` tells a teacher: one finding, its place and a way out.

use crate::place::Place;

/// How much a finding matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// The pack can't go out like this.
    Problem,
    /// Families will stumble over it; the pack still goes out.
    Warning,
    /// Something to think about.
    Advice,
}

impl Severity {
    pub const fn word(self) -> &'static str {
        match self {
            Self::Problem => "problem",
            Self::Warning => "warning",
            Self::Advice => "advice",
        }
    }
}

/// One thing that was found: what it is about, where, and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// The rule's code, as in the rule reference.
    pub code: &'static str,
    pub severity: Severity,
    pub place: Place,
    /// What is wrong, as a sentence in the words of the trade.
    pub says: String,
    /// What to do about it.
    pub way_out: String,
}

impl Finding {
    pub fn problem(
        code: &'static str,
        place: Place,
        says: impl Into<String>,
        way_out: impl Into<String>,
    ) -> Self {
        let (says, way_out) = (says.into(), way_out.into());
        Self { code, severity: Severity::Problem, place, says, way_out }
    }
}

/// Sorts by file, place, then code; the same finding at the same place is said once.
pub fn sort_findings(findings: &mut Vec<Finding>) {
    findings.sort_by(|a, b| {
        (a.place.file, a.place.start, a.place.end, a.code, &a.says).cmp(&(
            b.place.file,
            b.place.start,
            b.place.end,
            b.code,
            &b.says,
        ))
    });
    findings.dedup();
}

/// How many findings of each severity there are.
pub fn count_severity(findings: &[Finding], severity: Severity) -> usize {
    findings.iter().filter(|finding| finding.severity == severity).count()
}
