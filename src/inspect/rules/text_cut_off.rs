use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::{Place, Placed};

pub const RULE: Rule = Rule {
    code: "text-cut-off",
    severity: Severity::Warning,
    asks: "A text is not cut off by a # in it.",
    why: "What stands after a space and a # is a note to whoever edits the file, and no family sees it.",
    source: "YAML 1.2.2, 6.6",
    bad: "summary: Hop along a line and hold still as in move #3 of the games.\n",
    good: "summary: \"Hop along a line and hold still as in move #3 of the games.\"\n",
    check: Check::Text(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    let whole = &pack.files.get(text.place.file).text;
    let after = whole.get(text.place.end as usize..).unwrap_or_default();
    let line = after.lines().next().unwrap_or_default();
    let note = line.trim_start();
    // A note begins with “# ”; a # before a letter or figure was most likely meant to be read.
    let is_meant = line.len() > note.len()
        && note.strip_prefix('#').is_some_and(|note| note.starts_with(char::is_alphanumeric));
    if is_meant {
        let gap = u32::try_from(line.len() - note.len()).unwrap_or(0);
        let start = text.place.end + gap;
        let length = u32::try_from(note.trim_end().len()).unwrap_or(0);
        notes.find(
            Place { file: text.place.file, start, end: start + length },
            "The text ends before this #: what follows is left out as a note.",
            "Put the whole text in quotation marks, or write “number” for the #.",
        );
    }
}
