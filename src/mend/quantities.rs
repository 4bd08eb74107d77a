//! Quantities in the house way: “4m” → “4 m”, “90 sec” → “90 s”.

use super::edit::Edit;
use crate::quantity::Form;
use crate::read::node::{Node, Value};
use crate::read::shape::Shape;

pub(super) fn find_edits(text: &str, tree: &Node, shape: Option<&Shape>) -> Vec<Edit> {
    let mut edits = Vec::new();
    if let Some(shape) = shape {
        look(text, tree, shape, &mut edits);
    }
    edits.sort_by_key(|edit| edit.start);
    edits
}

fn look(text: &str, node: &Node, shape: &Shape, edits: &mut Vec<Edit>) {
    match (&node.value, shape) {
        (Value::List(entries), Shape::List(inner)) => {
            for entry in entries {
                look(text, entry, inner, edits);
            }
        }
        (_, Shape::List(inner) | Shape::Maybe(inner)) => look(text, node, inner, edits),
        (Value::Fields(fields), Shape::Group(group) | Shape::Either(_, group)) => {
            for field in fields {
                if let Some(key) = group.key(&field.key) {
                    look(text, &field.node, &(key.shape)(), edits);
                }
            }
        }
        (Value::Scalar(_), Shape::Either(single, _)) => look(text, node, single, edits),
        (Value::Scalar(said), Shape::Quantity(form)) => edits.extend(tidy(text, node, said, form)),
        _ => {}
    }
}

/// The edit of one quantity, if its spelling stands in the file as it was read.
fn tidy(text: &str, node: &Node, said: &str, form: &Form) -> Option<Edit> {
    let new = (form.tidy)(said).filter(|new| new != said.trim())?;
    let (start, end) = (node.place.start as usize, node.place.end as usize);
    let offset = text.get(start..end)?.find(said.trim())?;
    let start = start + offset;
    let says = format!("wrote “{}” as “{new}”", said.trim());
    Some(Edit { start, end: start + said.trim().len(), new, says })
}
