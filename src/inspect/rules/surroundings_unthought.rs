use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::inspect::wording::{is_english, words_of};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Whereabouts;

pub const RULE: Rule = Rule {
    code: "surroundings-unthought",
    severity: Severity::Advice,
    asks: "The cautions think of walls and furniture indoors, of fences, roads and the ground outdoors, \
           and of pets and small children anywhere.",
    why: "These are what a home has and a gym has not. The cautions of the session and of pack.yaml are \
          looked through for such words. (English packs only.)",
    source: "Common practice",
    bad: "\
# file: pack.yaml
cautions: [Drink when you are thirsty.]
",
    good: "\
# file: pack.yaml
cautions:
  - Move furniture away, and keep an arm’s length from walls and fences.
  - Keep pets and small children out of the space.
",
    check: Check::SessionInPack(check),
};

const INDOORS: &[&str] = &["furniture", "wall", "walls", "table", "tables", "corner", "corners"];
const OUTDOORS: &[&str] = &[
    "fence", "fences", "wall", "walls", "road", "roads", "street", "ground", "holes", "stones",
    "hedge", "ditch", "water",
];
const OTHERS: &[&str] = &[
    "pet", "pets", "animal", "animals", "dog", "dogs", "cat", "cats", "toddler", "toddlers",
    "brother", "brothers", "sister", "sisters", "younger", "small", "little",
];

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let cautions = session.safety.iter().chain(&pack.cautions);
    let words: Vec<String> = cautions.flat_map(|caution| words_of(caution)).collect();
    if words.is_empty() || !is_english(pack) {
        return;
    }
    let is_in =
        |place| session.space.as_ref().is_none_or(|space| space.whereabouts.contains(&place));
    let speaks_of = |list: &[&str]| words.iter().any(|word| list.contains(&word.as_str()));
    let unthought: Vec<&str> = [
        (is_in(Whereabouts::Indoors) && !speaks_of(INDOORS), "walls and furniture"),
        (is_in(Whereabouts::Outdoors) && !speaks_of(OUTDOORS), "fences, roads and the ground"),
        (!speaks_of(OTHERS), "pets and small children"),
    ]
    .into_iter()
    .filter_map(|(is_missing, what)| is_missing.then_some(what))
    .collect();
    if !unthought.is_empty() {
        notes.find(
            session.safety.first().map_or(session.title.place, |caution| caution.place),
            format!("No caution speaks of {}.", unthought.join(", nor of ")),
            "Add a line to “safety:” here, or once for all sessions to “cautions:” in pack.yaml.",
        );
    }
}
