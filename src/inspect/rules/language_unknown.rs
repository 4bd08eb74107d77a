use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::render::house::House;

pub const RULE: Rule = Rule {
    code: "language-unknown",
    severity: Severity::Advice,
    asks: "The program has labels in the pack’s language.",
    why: "Words such as “warm-up” or “easier” on pages and paper come from a list for each language. \
          Without one they are in British English.",
    source: "",
    bad: "\
# file: pack.yaml
language: fi
",
    good: "\
# file: pack.yaml
language: en-GB
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    // Without pack.yaml nobody has named a language.
    if pack.file.is_some() && !House::new(&pack.look).has_words(&pack.language) {
        notes.find(
            pack.language.place,
            format!("There are no labels in “{}”, so British English ones are used.", pack.language.value),
            format!(
                "Put labels of your own into “look/static/words/{}.ftl”, or write a language there is, such as en-GB.",
                pack.language.value
            ),
        );
    }
}
