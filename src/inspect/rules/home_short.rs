use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "home-short",
    severity: Severity::Warning,
    asks: "A usual home has enough things for all that is needed at once.",
    why: "One thing can’t be two things at once: four pairs of socks are four markers or \
          four balls, not both. What is at home is what equipment.yaml says with “at_home”; \
          a thing is held from the first part that uses it to the last.",
    source: "",
    bad: "\
equipment:
  - need: marker
    count: 2
    for: [warm_up, challenge]
    instead: [{thing: pair of rolled socks, plural: pairs of rolled socks, mass: 40-100 g, size: 8-14 cm, at_home: 1}]
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - need: marker
    count: 2
    for: [warm_up, challenge]
    instead: [{thing: pair of rolled socks, plural: pairs of rolled socks, mass: 40-100 g, size: 8-14 cm, at_home: 4}]
  - {need: tape measure, for: [challenge]}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (need, served) in session.needs.iter().zip(&plans.equipment.served) {
        // Where nothing suits at all, another rule says so.
        let is_short = served.missing > 0 && served.missing < need.count;
        if !is_short || need.optional {
            continue;
        }
        let given: Vec<String> = served
            .things
            .iter()
            .map(|things| crate::pack::counted(things.count, &things.name, &things.plural))
            .collect();
        notes.find(
            need.place(),
            format!(
                "A usual home has {} for “{}”, {} too few.",
                given.join(" and "),
                need.counted(),
                served.missing
            ),
            "Name another substitute, ask for fewer, or let two parts that need it not share the time between.",
        );
    }
}
