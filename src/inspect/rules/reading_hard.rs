use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::plan::reading::ReadingReport;

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
    Raise both arms above your shoulders as slowly as you can, and remember to keep breathing peacefully
    while the muscles along your body lengthen.

    After three breaths, return to the upright position and notice whether either shoulder seems
    higher, because that usually shows where your muscles are tighter.

    Whenever your balance becomes uncertain, spread your fingers against the nearest wall, because
    muscles which tremble cannot lengthen as comfortably as muscles which rest.

    Repeat the movement towards the opposite side, following the same rhythm as before, although you
    might discover that this direction requires greater patience from you.

    Finally, lower yourself to the carpet with your weight supported on both hands, and stay resting
    there until your heartbeat has become completely calm.

    Before finishing the activity, consider which exercise demanded the greatest control, and describe to
    your partner what you would practise differently during another attempt.
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

    Do you wobble? Rest your fingers on the wall, for muscles that shake do not stretch well.

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

fn check(session: &Session, plans: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(reading) = plans.reading(session, pack).filter(|reading| reading.is_enough()) else { return };
    let whole = &reading.whole;
    let youngest = session.ages.youngest;
    let limit = if youngest < READS_ALONE { READ_TO } else { youngest + AHEAD };
    let age = whole.reading_age.unwrap_or_default();
    let Some((place, hardest)) = reading.hardest.as_ref().filter(|_| age > f64::from(limit)) else {
        return;
    };
    let length = f64::from(whole.counts.words) / f64::from(whole.counts.sentences);
    notes.find(
        *place,
        format!(
            "The session reads like a text for the age of {age:.1}, and its youngest are {youngest}. Here it is hardest."
        ),
        format!(
            "Come down to {limit} or below: shorter sentences (now {length:.0} words on average), and short words \
             for long ones{}.",
            examples(hardest)
        ),
    );
}

/// “ (such as “position” or “direction”)”: the longest words of a text.
fn examples(report: &ReadingReport) -> String {
    let mut words: Vec<_> = report.long_words.iter().collect();
    words.sort_by_key(|word| std::cmp::Reverse(word.syllables));
    let words: Vec<String> = words.iter().take(2).map(|word| format!("“{}”", word.word)).collect();
    if words.is_empty() { String::new() } else { format!(" (such as {})", words.join(" or ")) }
}
