use crate::finding::Severity;
use crate::inspect::licence::{Term, terms_of};
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "borrowed-rights",
    severity: Severity::Problem,
    asks: "A borrowed session is used as its licence allows, and keeps its licence and credit.",
    why: "A session without a licence is its maker’s alone. ND stands for no derivatives: it may be passed on only as it is.",
    source: "Creative Commons legal code 4.0, sections 2 and 3",
    bad: "\
borrows: saltmarsh/games/lent-nd
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
# whole file: _neighbours/saltmarsh/games/lent-nd.yaml
title: Lent for nothing
licence: CC-BY-ND-4.0
",
    good: "\
borrows: saltmarsh/games/lent-nd
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
# whole file: _neighbours/saltmarsh/games/lent-nd.yaml
title: Lent for nothing
licence: CC-BY-4.0
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(borrowed) = &session.borrowed else { return };
    let Some(licence) = &session.licence else {
        let says = format!(
            "Nothing says that “{}” may be borrowed from {}.",
            session.title, borrowed.pack
        );
        notes.find(
            borrowed.place,
            says,
            "Ask them to name a licence in their pack.yaml, such as CC-BY-4.0.",
        );
        return;
    };
    let has_changed = !borrowed.changed.is_empty();
    if has_changed && terms_of(licence).contains(&Term::NoDerivatives) {
        let says = format!(
            "{licence} lets “{}” be passed on only as it is, and here is changed: {}.",
            session.title,
            borrowed.changed.join(", ")
        );
        notes.find(borrowed.place, says, "Take the changes out, or ask the lender to allow them in writing and name another licence.");
    }
}
