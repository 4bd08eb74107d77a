use crate::finding::Severity;
use crate::inspect::licence::{Term, terms_of};
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "borrowed-terms",
    severity: Severity::Advice,
    asks: "What a borrowed session’s licence asks of those who pass it on is known.",
    why: "SA stands for share alike, NC for no commercial use. Both go with the session to whoever gets it from you.",
    source: "Creative Commons legal code 4.0, sections 2 and 3",
    bad: "\
borrows: saltmarsh/games/lent-nc
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
# whole file: _neighbours/saltmarsh/games/lent-nc.yaml
title: Lent for nothing
licence: CC-BY-NC-4.0
",
    good: "\
borrows: saltmarsh/games/lent-nc
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
# whole file: _neighbours/saltmarsh/games/lent-nc.yaml
title: Lent for nothing
licence: CC-BY-4.0
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some((borrowed, licence)) = session.borrowed.as_ref().zip(session.licence.as_ref()) else {
        return;
    };
    let terms = terms_of(licence);
    if terms.contains(&Term::ShareAlike) && !borrowed.changed.is_empty() {
        notes.find(
            borrowed.place,
            format!("What you changed in “{}” is under {licence} too.", session.title),
            "Pass it on under the same licence, and say that you changed it; the pages say so already.",
        );
    }
    if terms.contains(&Term::NonCommercial) {
        notes.find(
            borrowed.place,
            format!(
                "{licence} lets “{}” be used only where nobody earns money with it.",
                session.title
            ),
            "Leave it out of anything that is sold or paid for, such as a holiday club with a fee.",
        );
    }
}
