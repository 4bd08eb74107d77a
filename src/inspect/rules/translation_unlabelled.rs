use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Place;
use crate::render::house::House;

pub const RULE: Rule = Rule {
    code: "translation-unlabelled",
    severity: Severity::Warning,
    asks: "There are labels in every language that the pack is published in.",
    why: "Words such as “warm-up” or “easier” would stand in British English between the translated texts.",
    source: "",
    bad: "# file: pack.yaml\nlanguages: [fi]\n",
    good: "# file: pack.yaml\nlanguages: [fr]\n",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    let house = House::new(&pack.look);
    let Some(file) = pack.file else { return };
    for language in pack.languages.iter().filter(|language| !house.has_words(language)) {
        notes.find(
            Place::top_of(file),
            format!("There are no labels in “{language}”, so its pages have British English ones."),
            format!(
                "Put labels into “look/static/words/{language}.ftl”, or write one of: {}.",
                House::shipped_languages().join(", ")
            ),
        );
    }
}
