use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::inspect::wording::is_english;
use crate::pack::{Pack, Session, children_texts, plain_paragraphs};
use crate::place::Place;
use crate::plan::Plans;
use crate::plan::reading::{ReadingReport, plan_reading};

pub const RULE: Rule = Rule {
    code: "reading-hard",
    severity: Severity::Advice,
    asks: "What a child reads is no harder than a reader two years older than the youngest reads with ease.",
    why: "At home the text is the teacher. Children below 8 are read to, so for them the reading age of 11 is \
          the limit, as for public information. The reading age is the Flesch–Kincaid grade and five: an \
          estimate from the lengths of words and sentences. Titles and key points are no sentences and are left \
          out. English only.",
    source: "Flesch–Kincaid: Kincaid et al. 1975; public information at a reading age of 9 to 11: mygov.scot; \
             grade and five: common practice; two years: our own choice",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: |
    Raise both arms above your shoulders as slowly as possible, and remember to continue breathing
    calmly while the muscles along your body lengthen.

    After several breaths, return to the upright position and notice whether either shoulder seems
    higher, because that usually shows where the muscles are tighter.

    Repeat the movement on the opposite side, following the same rhythm as before, although you
    might discover that this direction requires greater patience.

    Finally, lower yourself to the carpet with your weight supported on both hands, and remain
    there until your heartbeat becomes completely regular again.

    Before leaving, consider which exercise needed the greatest control, and describe to your partner
    what you would practise differently during another attempt.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: |
    Lift both arms slowly above your head. Keep breathing while your sides grow long.

    After a few breaths, come back up. Is one shoulder higher? That side may be tighter.

    Do the same on the other side. It may need a little longer.

    Then sit down on the carpet with your hands beside you. Stay until your heart beats calmly again.

    Which move was the hardest to control? Tell your partner what you will try next time.
",
    check: Check::Session(check),
};

/// The reading age for children who are read to: the upper end of what public information aims at.
const READ_TO: u8 = 11;
/// From this age on children read on their own: our own choice.
const READS_ALONE: u8 = 8;
/// How many years a text may be ahead of the youngest.
const AHEAD: u8 = 2;
/// With fewer words than this in running sentences a grade says nothing.
const FEWEST_WORDS: u32 = 100;
/// A text is named as the hardest where it has at least so many words.
const FEWEST_OF_TEXT: u32 = 20;

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    if !is_english(pack) {
        return;
    }
    let texts = running_texts(session);
    let report = plan_reading(&lines_of(texts.iter().flat_map(|(_, text)| text)));
    let youngest = session.ages.youngest;
    let limit = limit_for(youngest);
    let age = report.reading_age.unwrap_or_default();
    if report.counts.words < FEWEST_WORDS || age <= f64::from(limit) {
        return;
    }
    let place = hardest(&texts).unwrap_or(session.title.place);
    let length = f64::from(report.counts.words) / f64::from(report.counts.sentences);
    notes.find(
        place,
        format!(
            "The session reads like a text for the age of {age:.1}, and its youngest are {youngest}. Here it is hardest."
        ),
        format!(
            "Come down to {limit} or below: shorter sentences (now {length:.0} words on average), and short words \
             for long ones{}.",
            examples(&report)
        ),
    );
}

fn limit_for(youngest: u8) -> u8 {
    if youngest < READS_ALONE { READ_TO } else { youngest + AHEAD }
}

/// The texts with their paragraphs that are sentences: they end with a stop.
fn running_texts(session: &Session) -> Vec<(Place, Vec<String>)> {
    let is_sentence = |line: &String| line.trim_end_matches(['”', '’', '"', ')']).ends_with(['.', '!', '?', '…']);
    children_texts(session)
        .into_iter()
        .map(|text| {
            let lines = plain_paragraphs(&text).into_iter().filter(is_sentence).collect();
            (text.place, lines)
        })
        .collect()
}

fn lines_of<'t>(lines: impl IntoIterator<Item = &'t String>) -> Vec<&'t str> {
    lines.into_iter().map(String::as_str).collect()
}

/// Where the text with the highest reading age stands.
fn hardest(texts: &[(Place, Vec<String>)]) -> Option<Place> {
    let judged = texts.iter().filter_map(|(place, lines)| {
        let report = plan_reading(&lines_of(lines));
        let age = report.reading_age.filter(|_| report.counts.words >= FEWEST_OF_TEXT)?;
        Some((age, *place))
    });
    judged.max_by(|(one, _), (other, _)| one.total_cmp(other)).map(|(_, place)| place)
}

/// “ (such as “position” or “direction”)”
fn examples(report: &ReadingReport) -> String {
    let words: Vec<String> =
        report.long_words.iter().take(2).map(|word| format!("“{}”", word.word)).collect();
    if words.is_empty() { String::new() } else { format!(" (such as {})", words.join(" or ")) }
}
