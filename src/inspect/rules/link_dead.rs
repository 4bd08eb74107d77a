use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Placed;
use crate::prose::{judge_link, links_of};
use crate::resolve::path_from;

pub const RULE: Rule = Rule {
    code: "link-dead",
    severity: Severity::Problem,
    asks: "A link to a file of the pack finds it.",
    why: "On paper and on a phone a link that leads nowhere only costs time, and a family has nobody to ask.",
    source: "",
    bad: "summary: Hop along a line, after [the skipping session](../fitness/skiping.yaml).\n",
    good: "summary: Hop along a line, as in [the picture](pictures/hop.png).\n",
    check: Check::Text(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    if !text.contains("](") && !text.contains("]:") {
        return;
    }
    let from = &pack.files.get(text.place.file).path;
    for link in links_of(text.value).into_iter().filter(|link| leads_into_pack(link)) {
        let target = path_from(from, &link.replace("%20", " "));
        let says = match &target {
            Some(path) if pack.paths.contains(path) => continue,
            Some(path) => format!("There is no file “{path}” in this pack."),
            None => format!("“{link}” leads out of the pack."),
        };
        notes.find(
            pack.files.place_within(text.place, &link),
            says,
            "Write the way from this file: “pictures/hop.png”, or “../games/tag.yaml” for a session.",
        );
    }
}

/// Relative, and not just a place on the same page.
fn leads_into_pack(link: &str) -> bool {
    judge_link(link).is_ok() && !link.contains(':') && !link.starts_with('#') && !link.is_empty()
}
