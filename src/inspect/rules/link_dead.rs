use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Lead, Pack};
use crate::place::Placed;
use crate::prose::{judge_link, links_of};

pub const RULE: Rule = Rule {
    code: "link-dead",
    severity: Severity::Problem,
    asks: "A link inside the pack leads to a session or a picture.",
    why: "On paper and on a phone a link that leads nowhere only costs time, and a family has nobody to ask.",
    source: "",
    bad: "summary: Hop along a line, after [the skipping session](../fitness/skiping.yaml).\n",
    good: "summary: Hop along a line, as in [the picture](pictures/hop.png).\n",
    check: Check::TextInPack(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    if !text.contains("](") && !text.contains("]:") {
        return;
    }
    if pack.files.get(text.place.file).lent.is_some() {
        // What a neighbour wrote is the neighbour’s to mend (`link-unborrowed`).
        return;
    }
    for link in links_of(text.value).into_iter().filter(|link| leads_into_pack(link)) {
        let says = match pack.lead(text.place.file, &link) {
            Lead::Session(_) | Lead::Unread | Lead::Picture(_) => continue,
            Lead::Other => format!("“{link}” is in the pack, but only sessions and pictures go out."),
            Lead::Nowhere => format!("“{link}” leads to nothing in this pack."),
        };
        notes.find(
            pack.files.place_within(text.place, &link),
            says,
            "Write the way from this file: “pictures/hop.png”, or “../games/tag.yaml” for a session.",
        );
    }
}

/// Relative, and not just a place on the same page.
pub(super) fn leads_into_pack(link: &str) -> bool {
    judge_link(link).is_ok() && !link.contains(':') && !link.starts_with('#') && !link.is_empty()
}
