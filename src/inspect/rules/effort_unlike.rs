use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "effort-unlike",
    severity: Severity::Advice,
    asks: "The effort of a part agrees with the entry of the Compendium it is likened to.",
    why: "The bands are light from 1.5, moderate from 4 (or what pack.yaml sets with \
          “moderate_from”) and vigorous from 6 times the energy of sitting still. The \
          figures are of adults and do not carry over to children one for one: where your \
          class shows otherwise, keep your word and take the entry out.",
    source: "Ainsworth et al., 2011 Compendium of Physical Activities; WHO guidelines 2020 for \
          the bands; some sources put the beginning of moderate for young people at 3",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  compendium: rope skipping
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  compendium: mild stretching
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let (Some(like), Some(effort)) = (&part.compendium, &part.effort) else { continue };
        let band = like.band(pack.moderate_from);
        if band == effort.value {
            continue;
        }
        notes.find(
            effort.place,
            format!(
                "The {} is called {}, and “{}” has {} in the Compendium: {} (moderate from {}).",
                part.named(),
                effort.word(),
                like.word(),
                like.met(),
                band.word(),
                pack.moderate_from
            ),
            "Change the effort or the entry, or take the entry out.",
        );
    }
}
