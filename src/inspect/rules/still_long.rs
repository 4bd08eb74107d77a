use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::quantity::Duration;

pub const RULE: Rule = Rule {
    code: "still-long",
    severity: Severity::Advice,
    asks: "Nobody stands still for more than three minutes on end.",
    why: "Children at home who sit and wait drift away. Explaining, setting up, rests and \
          getting the breath back count, from one part into the next.",
    source: "Our own choice; moving for at least half of the time: US Centers for Disease \
          Control and Prevention",
    bad: "\
minutes: 21
cool_down:
  title: Slow reach
  time: {explain: 3 min 30 s, work: 1 min 30 s}
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
",
    good: "\
minutes: 20
cool_down:
  title: Slow reach
  time: {explain: 2 min 30 s, work: 1 min 30 s}
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
",
    check: Check::Session(check),
};

/// Longer than this is too long: our own choice.
const MOST: Duration = Duration::from_minutes(3);

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let still = plans.effort.longest_still;
    let Some(part) = session.parts.get(still.part).filter(|_| still.length > MOST) else { return };
    notes.find(
        part.time.as_ref().map_or(part.title.place, |time| time.place),
        format!(
            "From {} on nobody moves for {}, beginning in the {}.",
            still.start.clock(),
            still.length,
            part.named()
        ),
        "Share the explaining out, or let something be done while listening.",
    );
}
