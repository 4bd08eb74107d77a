//! Spaces at the ends of lines. Where they belong to a text (two of them break a line in CommonMark), the text would
//! change, and they stay.

use super::edit::Edit;

pub(super) fn find_edits(text: &str) -> Vec<Edit> {
    let mut edits = Vec::new();
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        let written = line.trim_end_matches(['\n', '\r']);
        let kept = written.trim_end_matches([' ', '\t']).len();
        if kept < written.len() {
            let (from, to) = (start + kept, start + written.len());
            let says = "took spaces off the end of the line".to_owned();
            edits.push(Edit { start: from, end: to, new: String::new(), says });
        }
        start += line.len();
    }
    edits
}
