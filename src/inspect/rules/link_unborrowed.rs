use super::link_dead::leads_into_pack;
use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Lead, Pack};
use crate::place::Placed;
use crate::prose::links_of;

pub const RULE: Rule = Rule {
    code: "link-unborrowed",
    severity: Severity::Advice,
    asks: "A link in a borrowed session leads to something that is borrowed too.",
    why: "Where it does not, families see plain words: nothing is broken, but a sentence such as “see the \
          landing session” may leave them looking for it.",
    source: "",
    bad: "\
borrows: saltmarsh/games/lent-way
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
# whole file: _neighbours/saltmarsh/games/lent-way.yaml
title: Lent with a way on
licence: CC-BY-4.0
adaptations: {people: \"Alone, take [the quiet one](paddle.yaml) in its place.\"}
",
    good: "\
borrows: saltmarsh/games/lent-way
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
# whole file: _neighbours/saltmarsh/games/lent-way.yaml
title: Lent with a way on
licence: CC-BY-4.0
adaptations: {people: \"Alone, take half of the steps.\"}
",
    check: Check::TextInPack(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    if pack.files.get(text.place.file).lent.is_none() {
        return;
    }
    for link in links_of(text.value).into_iter().filter(|link| leads_into_pack(link)) {
        if let Lead::Other | Lead::Nowhere = pack.lead(text.place.file, &link) {
            notes.find(
                pack.files.place_within(text.place, &link),
                format!("“{link}” leads to something that is not borrowed: families see plain words."),
                "If it is a session, borrow that one too. Or write this text anew in your own file.",
            );
        }
    }
}
