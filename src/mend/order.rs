//! Keys in the order that the program writes them in. Whole lines are moved, each key with the comment lines right
//! above it; in braces on one line the keys change places.

use std::collections::BTreeSet;

use super::edit::{Edit, apply, line_of, line_start, value_end};
use super::meaning::means_same;
use super::{Change, Mended, tree_of};
use crate::read::node::{Field, Node, Value};
use crate::read::shape::{Group, Shape};

/// A group whose keys are out of order, and the way to it through the file.
struct Disorder {
    path: String,
    edit: Edit,
}

/// Moves the keys of every group, inner groups before those they stand in, so that the lines told of are those of the
/// file as it was.
pub(super) fn mend_order(mended: &mut Mended, shape: Option<&Shape>) {
    let mut left_alone = BTreeSet::new();
    while let Some(before) = tree_of(&mended.text) {
        let Some(found) = first_disorder(&mended.text, &before, shape, &left_alone) else { return };
        let text = apply(&mended.text, std::slice::from_ref(&found.edit));
        let is_same = tree_of(&text).is_some_and(|after| means_same(&before, &after, shape));
        if is_same && same_words(&mended.text, &text) {
            let line = line_of(&mended.text, found.edit.start);
            mended.changes.push(Change { line, says: found.edit.says });
            mended.text = text;
        }
        // Once moved, a group is in order; one that can’t be is not tried again.
        left_alone.insert(found.path);
    }
}

/// Whether nothing was lost: comments are no part of the tree.
fn same_words(before: &str, after: &str) -> bool {
    let sorted = |text: &str| {
        let mut words: Vec<String> = text
            .split(|c: char| c.is_whitespace() || c == ',')
            .map(|word| word.trim_matches(['{', '}']).to_owned())
            .filter(|word| !word.is_empty())
            .collect();
        words.sort();
        words
    };
    sorted(before) == sorted(after)
}

fn first_disorder(
    text: &str,
    tree: &Node,
    shape: Option<&Shape>,
    left_alone: &BTreeSet<String>,
) -> Option<Disorder> {
    look(text, tree, shape?, String::new(), left_alone)
}

fn look(
    text: &str,
    node: &Node,
    shape: &Shape,
    path: String,
    left_alone: &BTreeSet<String>,
) -> Option<Disorder> {
    match (&node.value, shape) {
        (Value::List(entries), Shape::List(inner)) => entries
            .iter()
            .enumerate()
            .find_map(|(at, entry)| look(text, entry, inner, format!("{path}/{at}"), left_alone)),
        (_, Shape::List(inner) | Shape::Maybe(inner)) => look(text, node, inner, path, left_alone),
        (Value::Fields(fields), Shape::Group(group) | Shape::Either(_, group)) => {
            let within = fields.iter().find_map(|field| {
                let key = group.key(&field.key)?;
                let path = format!("{path}/{}", field.key);
                look(text, &field.node, &(key.shape)(), path, left_alone)
            });
            within.or_else(|| {
                let edit =
                    sort_keys(text, fields, group).filter(|_| !left_alone.contains(&path))?;
                Some(Disorder { path, edit })
            })
        }
        _ => None,
    }
}

/// The edit that puts the keys of a group in order; `None` where they are, or where one of them is not known.
fn sort_keys(text: &str, fields: &[Field], group: &Group) -> Option<Edit> {
    let rank = |field: &Field| group.keys.iter().position(|key| key.name == field.key);
    let ranks: Vec<usize> = fields.iter().map(rank).collect::<Option<_>>()?;
    if ranks.is_sorted() {
        return None;
    }
    let mut order: Vec<usize> = (0..fields.len()).collect();
    order.sort_by_key(|at| ranks[*at]);
    let moved = order.iter().enumerate().find(|(at, from)| at != *from).map(|(_, from)| *from)?;
    let says = format!(
        "put the keys of {} in order, “{}” first of those that moved",
        group.whole, fields[moved].key
    );
    let starts: Vec<usize> = fields.iter().map(|field| field.key_place.start as usize).collect();
    let first_line = line_start(text, starts[0]);
    let before = &text[first_line..starts[0]];
    let in_lines = before.chars().all(|c| matches!(c, ' ' | '-'));
    if in_lines {
        move_lines(text, &starts, &order, says)
    } else {
        swap(text, fields, &order, says)
    }
}

/// Keys in braces: each takes another’s stretch, and what stands between stays.
fn swap(text: &str, fields: &[Field], order: &[usize], says: String) -> Option<Edit> {
    let stretch = |field: &Field| {
        let written = text.get(field.key_place.start as usize..value_end(text, &field.node))?;
        Some(written.trim_end())
    };
    let stretches: Vec<&str> = fields.iter().map(stretch).collect::<Option<_>>()?;
    let start = fields[0].key_place.start as usize;
    let (mut new, mut at) = (String::new(), start);
    for (slot, from) in order.iter().enumerate() {
        let begins = fields[slot].key_place.start as usize;
        new.push_str(text.get(at..begins)?);
        new.push_str(stretches[*from]);
        at = begins + stretches[slot].len();
    }
    Some(Edit { start, end: at, new, says })
}

/// Keys on lines of their own: each moves with its lines.
fn move_lines(text: &str, starts: &[usize], order: &[usize], says: String) -> Option<Edit> {
    let column = starts[0] - line_start(text, starts[0]);
    let mut cuts: Vec<usize> = vec![starts[0]];
    for start in &starts[1..] {
        let line = line_start(text, *start);
        if start - line != column {
            return None;
        }
        cuts.push(with_comments(text, line, column));
    }
    cuts.push(region_end(text, starts[0], column));
    let indent = " ".repeat(column);
    let mut new = String::new();
    for (slot, from) in order.iter().enumerate() {
        let lines = text.get(cuts[*from]..cuts[*from + 1])?;
        match (slot, *from) {
            // The first key may stand behind the dash of a list: what comes there has nothing above it.
            (0, _) => new.push_str(lines.strip_prefix(&indent)?),
            (_, 0) => new.push_str(&format!("{indent}{lines}")),
            _ => new.push_str(lines),
        }
        let is_last = slot + 1 == order.len();
        if !new.ends_with('\n') && !is_last {
            new.push_str(if text.contains("\r\n") { "\r\n" } else { "\n" });
        }
    }
    Some(Edit { start: starts[0], end: cuts[starts.len()], new, says })
}

/// The start of a key’s lines: with the comment lines right above it in its column, and the empty lines above those.
fn with_comments(text: &str, line: usize, column: usize) -> usize {
    let mut start = line;
    while start > 0 {
        let above = line_start(text, start - 1);
        let words = text[above..start].trim_end();
        let indent = words.len() - words.trim_start().len();
        let is_comment = indent == column && words[indent..].starts_with('#');
        if !is_comment {
            break;
        }
        start = above;
    }
    while start > 0 {
        let above = line_start(text, start - 1);
        if !text[above..start].trim().is_empty() {
            break;
        }
        start = above;
    }
    start
}

/// The end of the group’s last line: empty lines and comments after it stay where they are.
fn region_end(text: &str, first: usize, column: usize) -> usize {
    let mut end = first;
    let mut at = line_start(text, first);
    for (number, line) in text[at..].split_inclusive('\n').enumerate() {
        let words = line.trim();
        let indent = line.len() - line.trim_start_matches(' ').len();
        let is_loose = words.is_empty() || words.starts_with('#');
        if number > 0 && !is_loose && indent < column {
            break;
        }
        at += line.len();
        if !is_loose {
            end = at;
        }
    }
    end
}
