use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::quantity::Duration;
use crate::read::words::AdultHelp;

pub const RULE: Rule = Rule {
    code: "adult-uncounted",
    severity: Severity::Problem,
    asks: "The parts that an adult helps with are counted in the session’s adult time.",
    why: "A parent plans by the figure at the top. Help that turns up in the middle is help that nobody has \
          time for.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  adult: helping
  how: Reach up slowly while a grown-up counts.
",
    good: "\
adult: {nearby: 20 min, helping: 4 min, why: To count in the cool-down}
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  adult: helping
  how: Reach up slowly while a grown-up counts.
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let parts = session.parts.iter().zip(&plans.time.spans);
    let helped: Vec<_> = parts
        .filter(|(part, _)| {
            part.adult.as_ref().is_some_and(|help| help.value == AdultHelp::Helping)
        })
        .collect();
    let Some((first, _)) = helped.first() else { return };
    let needed: Duration = helped.iter().map(|(_, span)| span.total).sum();
    let given = session.adult.as_ref().and_then(|adult| adult.helping.as_ref());
    let counted = given.map_or(Duration::ZERO, |time| time.value);
    if needed <= counted && given.is_some() {
        return;
    }
    let titles: Vec<String> = helped.iter().map(|(part, _)| format!("“{}”", part.title)).collect();
    let says = match given {
        Some(_) => {
            format!("An adult helps for {needed} ({}), and {counted} is given.", titles.join(", "))
        }
        None => format!(
            "An adult helps for {needed} ({}), and no time is given for it.",
            titles.join(", ")
        ),
    };
    let place =
        given.map(|time| time.place).or_else(|| first.adult.as_ref().map(|help| help.place));
    notes.find(
        place.unwrap_or(first.title.place),
        says,
        format!("Write “helping: {needed}” under the session’s “adult:”, or let the child do a part alone."),
    );
}
