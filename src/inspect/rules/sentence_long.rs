use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Plans, TextReading};

pub const RULE: Rule = Rule {
    code: "sentence-long",
    severity: Severity::Advice,
    asks: "A sentence that a child reads has at most 25 words.",
    why: "Whoever has reached the end of a long one has forgotten how it began, and is standing still the while. \
          15 to 20 words are a good length. English only.",
    source: "15 to 20 words: Plain English Campaign; 25 is our own limit",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: >-
    Reach up with both your hands as high as you can, then bend down slowly until they touch your toes,
    and stay there while you breathe out three times.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: >-
    Reach up with both your hands as high as you can. Then bend down slowly until they touch your toes.
    Stay there while you breathe out three times.
",
    check: Check::Session(check),
};

/// The length that is still let pass.
const MOST: u32 = 25;
/// How many words of it are named.
const FIRST_WORDS: usize = 4;

fn check(session: &Session, plans: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let texts = plans.reading(session, pack).into_iter().flat_map(|reading| &reading.texts);
    // A title is no sentence, and has a rule of its own.
    for text in texts.filter(|text| !is_title(text, session)) {
        check_text(text, pack, notes);
    }
}

fn is_title(text: &TextReading, session: &Session) -> bool {
    let mut titles = session.parts.iter().map(|part| part.title.place);
    text.place == session.title.place || titles.any(|place| place == text.place)
}

fn check_text(text: &TextReading, pack: &Pack, notes: &mut Notes<'_>) {
    let texts = &text.paragraphs;
    for sentence in text.report().long_sentences.iter().filter(|s| s.words > MOST) {
        let opening: Vec<&str> =
            texts[sentence.text][sentence.range.clone()].split(' ').take(FIRST_WORDS).collect();
        let opening = opening.join(" ");
        notes.find(
            pack.files.place_within(text.place, &opening),
            format!("The sentence “{opening} …” has {} words.", sentence.words),
            "Make two or three of it: one thing to do in each.",
        );
    }
}
