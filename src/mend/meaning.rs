//! Whether two texts say the same: keys in any order, one thing alone or as a list of one, a quantity in either
//! spelling, everything else letter for letter.

use crate::read::node::{Field, Node, Value};
use crate::read::shape::Shape;

/// Whether what was read before and after an edit has the same meaning to the readers of `shape`.
pub(super) fn means_same(before: &Node, after: &Node, shape: Option<&Shape>) -> bool {
    if let Some(Shape::Maybe(inner)) = shape {
        return means_same(before, after, Some(inner));
    }
    if let Some(Shape::List(inner)) = shape {
        let (before, after) = (entries(before), entries(after));
        return before.len() == after.len()
            && before.iter().zip(after).all(|(a, b)| means_same(a, b, Some(inner)));
    }
    match (&before.value, &after.value) {
        (Value::Fields(before), Value::Fields(after)) => same_fields(before, after, shape),
        (Value::List(before), Value::List(after)) => {
            before.len() == after.len()
                && before.iter().zip(after).all(|(a, b)| means_same(a, b, None))
        }
        (Value::Scalar(before), Value::Scalar(after)) => {
            before == after || same_quantity(before, after, shape)
        }
        (Value::Empty, Value::Empty) => true,
        _ => false,
    }
}

/// What a list holds; one thing alone is a list of one, and nothing an empty one.
fn entries(node: &Node) -> &[Node] {
    match &node.value {
        Value::List(entries) => entries,
        Value::Empty => &[],
        _ => std::slice::from_ref(node),
    }
}

fn same_fields(before: &[Field], after: &[Field], shape: Option<&Shape>) -> bool {
    let group = shape.and_then(Shape::group);
    before.len() == after.len()
        && before.iter().all(|field| {
            let shape = group.and_then(|group| group.key(&field.key)).map(|key| (key.shape)());
            let same = after.iter().find(|other| other.key == field.key);
            same.is_some_and(|other| means_same(&field.node, &other.node, shape.as_ref()))
        })
}

fn same_quantity(before: &str, after: &str, shape: Option<&Shape>) -> bool {
    match shape {
        Some(Shape::Quantity(form)) => {
            let tidied = (form.tidy)(before);
            tidied.is_some() && tidied == (form.tidy)(after)
        }
        Some(Shape::Either(single, _)) => same_quantity(before, after, Some(single)),
        _ => false,
    }
}
