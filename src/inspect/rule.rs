//! What a rule is: a code, what it asks and why, a bad and a good example, and the check.

use crate::finding::{Finding, Severity};
use crate::pack::{Pack, Session, Unit};
use crate::place::{Place, Placed};
use crate::plan::Plans;
use crate::plan::unit::UnitPlan;

/// One rule of `inspect`.
#[derive(Debug)]
pub struct Rule {
    /// Its name in reports: small words joined by hyphens.
    pub code: &'static str,
    pub severity: Severity,
    /// What it asks for, as one short sentence.
    pub asks: &'static str,
    /// Why, in the words of the trade; CommonMark.
    pub why: &'static str,
    /// The published source of a figure in it, or “Common practice” where there is none; empty where
    /// the rule rests on no figure.
    pub source: &'static str,
    /// YAML that it finds fault with: top-level keys that replace those of a sound session. A line
    /// `# file: equipment.yaml` starts another file of the pack, `# whole file: x.yaml` one that
    /// replaces nothing; `# no file: x.yaml` leaves one out. Empty where no text can show it.
    pub bad: &'static str,
    /// YAML that it is content with, in the same form.
    pub good: &'static str,
    pub check: Check,
}

/// When and on what a rule looks.
#[derive(Clone, Copy)]
pub enum Check {
    /// It is met while a file is read.
    Reading,
    /// It is met while findings are held against what is allowed.
    Allowance,
    /// It looks at one session: at nothing of the pack but its language, its bounds and the texts of its files
    /// (`Pack::bounds_alone`), so that what it found holds while those stay.
    Session(fn(&Session, &Plans, &Pack, &mut Notes<'_>)),
    /// It looks at one session beside what is shared or lies in the pack: lists, pictures, other sessions, the day.
    SessionInPack(fn(&Session, &Plans, &Pack, &mut Notes<'_>)),
    /// It looks at every text on its own, of the sessions and of the shared files; of the pack as `Session` does.
    Text(fn(&Placed<&str>, &Pack, &mut Notes<'_>)),
    /// It looks at every text beside what lies in the pack.
    TextInPack(fn(&Placed<&str>, &Pack, &mut Notes<'_>)),
    /// It looks at one unit of work.
    Unit(fn(&Unit, &UnitPlan, &Pack, &mut Notes<'_>)),
    /// It looks at the pack as a whole.
    Pack(fn(&Pack, &mut Notes<'_>)),
}

impl std::fmt::Debug for Check {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Reading => "Reading",
            Self::Allowance => "Allowance",
            Self::Session(_) => "Session",
            Self::SessionInPack(_) => "SessionInPack",
            Self::Text(_) => "Text",
            Self::TextInPack(_) => "TextInPack",
            Self::Unit(_) => "Unit",
            Self::Pack(_) => "Pack",
        })
    }
}

/// Where a rule writes down what it finds; code and severity are the rule's.
#[derive(Debug)]
pub struct Notes<'n> {
    rule: &'static Rule,
    findings: &'n mut Vec<Finding>,
}

impl<'n> Notes<'n> {
    pub(super) fn new(rule: &'static Rule, findings: &'n mut Vec<Finding>) -> Self {
        Self { rule, findings }
    }

    /// Notes a finding: what is wrong, as a sentence, and the way out.
    pub fn find(&mut self, place: Place, says: impl Into<String>, way_out: impl Into<String>) {
        self.findings.push(Finding {
            code: self.rule.code,
            severity: self.rule.severity,
            place,
            says: says.into(),
            way_out: way_out.into(),
        });
    }
}
