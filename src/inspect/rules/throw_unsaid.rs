use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::inspect::wording::{is_english, words_of};
use crate::pack::{Pack, Part, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "throw-unsaid",
    severity: Severity::Warning,
    asks: "A part that tells a child to throw, kick or strike a thing says so in its movements.",
    why: "Only then is it asked for a landing zone and a stop-and-collect rule. “Throw”, “toss”, “kick” \
          and “hit” with a thing of the session’s list after them are looked for. (English packs only.)",
    source: "",
    bad: "\
stretch:
  - title: Hop and toss
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice, then toss the marker ahead of you.
    easier: Step.
    harder: Use your other hand.
",
    good: "\
stretch:
  - title: Hop and carry
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice, then set the marker down. Never throw the marker.
    easier: Step.
    harder: Use your other hand.
",
    check: Check::Session(check),
};

const VERBS: [&str; 12] = [
    "throw", "throws", "throwing", "toss", "tosses", "tossing", "kick", "kicks", "kicking", "hit",
    "strike", "bat",
];
const NEGATIONS: [&str; 6] = ["never", "not", "no", "don't", "don’t", "without"];

/// How many words after the verb the thing may stand: “throw it at the second marker”.
const REACH: usize = 4;

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let says_so = |part: &Part| part.movements.iter().any(|movement| movement.sends_something());
    if !is_english(pack) || session.needs.is_empty() || session.parts.iter().all(says_so) {
        return;
    }
    let things = last_words_of_things(session);
    for part in session.parts.iter().filter(|part| !says_so(part)) {
        if let Some(verb) = verb_with_thing(&words_of(&part.how), &things) {
            notes.find(
                pack.files.place_within(part.how.place, &verb),
                format!("The {} tells the child to “{verb}” something, and its movements don’t say so.", part.named()),
                "Add throwing, kicking or striking to “movements:”, then the landing zone under “throw:”.",
            );
        }
    }
}

/// “socks” of “pairs of rolled socks”: enough to know a thing by after a verb.
fn last_words_of_things(session: &Session) -> Vec<String> {
    let mut things = vec!["ball".to_owned(), "balls".to_owned()];
    for need in &session.needs {
        things.extend(words_of(&need.name).pop());
        things.extend(words_of(&need.plural).pop());
    }
    things
}

/// The first verb that is not forbidden and has one of the things soon after it.
fn verb_with_thing(words: &[String], things: &[String]) -> Option<String> {
    let is_told = |(at, word): &(usize, &String)| {
        let before = &words[at.saturating_sub(2)..*at];
        let after = &words[at + 1..words.len().min(at + 1 + REACH)];
        VERBS.contains(&word.as_str())
            && !before.iter().any(|word| NEGATIONS.contains(&word.as_str()))
            && after.iter().any(|word| things.contains(word))
    };
    words.iter().enumerate().find(is_told).map(|(_, word)| word.clone())
}
