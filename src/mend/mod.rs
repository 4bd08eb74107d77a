//! Mending what can be mended safely: the text of a file → the same text in the house way, with every comment and
//! every line kept that need not change.
//!
//! Files are never written out anew from what was read: each mend is an edit of a stretch of the text, found
//! through the places that reading gives. An edit stays only where the text after it reads as the same values
//! ([`meaning`]); one that does not is left out. Tabs that move a line in, and misspelt keys, are not touched: what they
//! were meant to say can’t be proven.

mod edit;
mod lists;
mod meaning;
mod order;
mod pack;
mod quantities;
mod spaces;

pub use pack::{MendedFile, MendedPack, mend_pack};

use crate::place::FileId;
use crate::read::node::Node;
use crate::read::shape::{Group, Shape};
use crate::read::yaml::read_tree;
use edit::{Edit, apply, line_of};
use meaning::means_same;

/// One thing that was changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// Its line in the file as it was, from 1.
    pub line: usize,
    /// What was done, as a sentence.
    pub says: String,
}

/// A text after mending.
#[derive(Clone, Debug)]
pub struct Mended {
    pub text: String,
    /// In the order of their lines.
    pub changes: Vec<Change>,
}

/// Mends a text whose keys are those of `group`; without one only what needs no knowledge of keys. A text that can’t
/// be read is left as it is.
pub fn mend_text(text: &str, group: Option<&'static Group>) -> Mended {
    let mut mended = Mended { text: text.to_owned(), changes: Vec::new() };
    if tree_of(text).is_none() {
        return mended;
    }
    let shape = group.map(Shape::Group);
    let shape = shape.as_ref();
    mended.step(shape, |text, _| spaces::find_edits(text));
    mended.step(shape, |text, tree| quantities::find_edits(text, tree, shape));
    mended.step(shape, |text, tree| lists::find_edits(text, tree, shape));
    order::mend_order(&mut mended, shape);
    mended.changes.sort_by(|a, b| (a.line, &a.says).cmp(&(b.line, &b.says)));
    mended
}

fn tree_of(text: &str) -> Option<Node> {
    read_tree(text, FileId(0)).ok()
}

impl Mended {
    /// Makes the edits that leave the meaning as it was: all at once, or where one of them would not, each that
    /// does.
    fn step(&mut self, shape: Option<&Shape>, find: impl Fn(&str, &Node) -> Vec<Edit>) {
        let Some(before) = tree_of(&self.text) else { return };
        let edits = find(&self.text, &before);
        if edits.is_empty() || self.try_edits(&before, shape, &edits) {
            return;
        }
        // From the end, so that the places of those before stay true.
        for edit in edits.iter().rev() {
            self.try_edits(&before, shape, std::slice::from_ref(edit));
        }
    }

    /// Makes the edits if the text then reads as the same.
    fn try_edits(&mut self, before: &Node, shape: Option<&Shape>, edits: &[Edit]) -> bool {
        let text = apply(&self.text, edits);
        let is_same = tree_of(&text).is_some_and(|after| means_same(before, &after, shape));
        if is_same {
            let changes = edits.iter().map(|edit| Change {
                line: line_of(&self.text, edit.start),
                says: edit.says.clone(),
            });
            self.changes.extend(changes);
            self.text = text;
        }
        is_same
    }
}

#[cfg(test)]
mod tests;
