use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Placed;
use crate::prose::has_raw_html;

pub const RULE: Rule = Rule {
    code: "raw-html",
    severity: Severity::Advice,
    asks: "Texts hold no HTML.",
    why: "It is shown letter by letter, as “<b>like this</b>”, so that no text can change a page or carry \
          a script into it.",
    source: "",
    bad: "summary: Hop along a line and <b>hold still</b>.\n",
    good: "summary: Hop along a line and **hold still**.\n",
    check: Check::Text(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    if text.contains('<') && has_raw_html(text.value) {
        notes.find(
            pack.files.place_within(text.place, "<"),
            "There is HTML in this text; families will see it as it stands.",
            "Write **bold** or *emphasis* instead, and take the marks < and > out.",
        );
    }
}
