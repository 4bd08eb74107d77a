use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Placed;
use crate::prose::{LinkFault, judge_link, links_of};

pub const RULE: Rule = Rule {
    code: "link-unsafe",
    severity: Severity::Problem,
    asks: "Links lead to a web page, an e-mail address or a file of the pack.",
    why: "Anything else can run a program, or points at a place that only your own computer has.",
    source: "",
    bad: "summary: Hop along a line, as [in this film](file:///C:/films/hop.mp4).\n",
    good: "summary: Hop along a line, as [in this film](https://example.org/hop).\n",
    check: Check::Text(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    if !text.contains(['[', '<']) {
        return;
    }
    for link in links_of(text.value) {
        let says = match judge_link(&link) {
            Ok(()) => continue,
            Err(LinkFault::Scheme) => {
                format!("“{link}” is neither a web page nor a file of the pack.")
            }
            Err(LinkFault::Absolute) => format!("“{link}” is a place on one computer."),
        };
        notes.find(
            pack.files.place_within(text.place, &link),
            says,
            "Write the whole address with https:// at the start, or the way to a file of the pack.",
        );
    }
}
