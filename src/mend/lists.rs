//! Lists in the house way: one thing alone where several may stand gets its brackets, and a comma in brackets has a
//! space after it and none before.

use super::edit::{Edit, value_end};
use crate::read::node::{Node, Value};
use crate::read::shape::Shape;

pub(super) fn find_edits(text: &str, tree: &Node, shape: Option<&Shape>) -> Vec<Edit> {
    let mut edits = Vec::new();
    look(text, tree, shape, &mut edits);
    edits.sort_by_key(|edit| edit.start);
    edits
}

fn look(text: &str, node: &Node, shape: Option<&Shape>, edits: &mut Vec<Edit>) {
    if let Some(Shape::Maybe(inner)) = shape {
        return look(text, node, Some(inner), edits);
    }
    match (&node.value, shape) {
        (Value::List(entries), _) => {
            let inner = if let Some(Shape::List(inner)) = shape { Some(&**inner) } else { None };
            for entry in entries {
                look(text, entry, inner, edits);
            }
            let ends = entries
                .windows(2)
                .map(|pair| (value_end(text, &pair[0]), pair[1].place.start as usize));
            edits.extend(ends.filter_map(|(from, to)| space_comma(text, from, to)));
        }
        (Value::Scalar(_), Some(Shape::List(inner))) => {
            edits.extend(bracket(text, node, inner));
        }
        (Value::Fields(fields), _) => {
            let group = shape.and_then(Shape::group);
            for field in fields {
                let key = group.and_then(|group| group.key(&field.key));
                look(text, &field.node, key.map(|key| (key.shape)()).as_ref(), edits);
            }
            let ends = fields
                .windows(2)
                .map(|pair| (value_end(text, &pair[0].node), pair[1].key_place.start as usize));
            edits.extend(ends.filter_map(|(from, to)| space_comma(text, from, to)));
        }
        _ => {}
    }
}

/// What stands between two entries, where that is a comma and spaces on one line.
fn space_comma(text: &str, from: usize, to: usize) -> Option<Edit> {
    let between = text.get(from..to)?;
    let is_comma = between.trim_matches(' ') == "," && between != ", ";
    let says = "put a space after a comma".to_owned();
    is_comma.then(|| Edit { start: from, end: to, new: ", ".into(), says })
}

/// `for: challenge` → `for: [challenge]`, for plain words that no mark could make into something else.
fn bracket(text: &str, node: &Node, inner: &Shape) -> Option<Edit> {
    let is_single = matches!(inner, Shape::Text { .. } | Shape::Words(_));
    let (start, end) = (node.place.start as usize, node.place.end as usize);
    let written = text.get(start..end)?.trim_end();
    let is_plain = written.chars().all(|c| c.is_alphanumeric() || " -_.’!?°".contains(c))
        && written.starts_with(char::is_alphanumeric);
    let says = format!("put “{written}” in brackets, as a list of one");
    (is_single && is_plain && !written.is_empty()).then(|| Edit {
        start,
        end: start + written.len(),
        new: format!("[{written}]"),
        says,
    })
}
