//! The shelf of a pack: what shared.yaml says, by name, and the sessions’ trees with it put in place of each
//! `use: NAME`. What a session says beside the name counts over what is shared.

use std::collections::BTreeMap;

use super::desk::nearest;
use super::node::{Field, Node, Value};
use super::yaml::read_tree;
use crate::finding::Finding;
use crate::place::{FileId, Place};
use crate::quantity::{Date, Quantity};

/// What shared.yaml says, by name.
#[derive(Debug, Default)]
pub(super) struct Shelf {
    /// By section and name: the value of each entry’s own key.
    entries: BTreeMap<(Section, String), (Node, usize)>,
    /// What became of names that are gone, as a sentence.
    gone: BTreeMap<String, String>,
    is_there: bool,
    /// It is there and can’t be read: what is used of it is not known.
    is_unread: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Section {
    Parts,
    Spaces,
    Cautions,
    KeyPoints,
}

impl Section {
    const ALL: [Self; 4] = [Self::Parts, Self::Spaces, Self::Cautions, Self::KeyPoints];

    /// Its key in shared.yaml, the key of each entry that holds its value, and what one is called.
    const fn keys(self) -> (&'static str, &'static str, &'static str) {
        match self {
            Self::Parts => ("parts", "part", "a part"),
            Self::Spaces => ("spaces", "space", "a space"),
            Self::Cautions => ("cautions", "says", "a caution"),
            Self::KeyPoints => ("key_points", "points", "a set of key points"),
        }
    }
}

impl Shelf {
    /// The shelf of a file that is there and can’t be read.
    pub(super) fn unread() -> Self {
        Self { is_there: true, is_unread: true, ..Self::default() }
    }

    /// Reads the shelf from the text of shared.yaml; what can’t be read of it is told of where it is read as a
    /// document.
    pub(super) fn of(text: &str, file: FileId) -> Self {
        let mut shelf = Self { is_there: true, ..Self::default() };
        let Ok(tree) = read_tree(text, file) else { return Self::unread() };
        for section in Section::ALL {
            let (key, inner, _) = section.keys();
            for entry in entries_of(&tree, key) {
                let (Some(name), Some(value)) = (text_at(entry, "name"), field(entry, inner))
                else {
                    continue;
                };
                let line = text[..entry.place.start as usize].matches('\n').count() + 1;
                // Of two that share a name the first counts; the second is told of.
                shelf.entries.entry((section, name)).or_insert((value.clone(), line));
            }
        }
        for entry in entries_of(&tree, "gone") {
            if let Some(name) = text_at(entry, "name") {
                let story = story_of(entry, &name);
                shelf.gone.insert(name, story);
            }
        }
        shelf
    }

    /// Puts everything shared in its place in a session’s tree. Gives whether the session can be read: with a part or
    /// space missing, everything else that is said of it would be noise.
    pub(super) fn fill(&self, tree: &mut Node, findings: &mut Vec<Finding>) -> bool {
        let Value::Fields(fields) = &mut tree.value else { return true };
        let mut is_whole = true;
        for field in fields {
            match field.key.as_str() {
                "warm_up" | "technique" | "challenge" | "stretch" | "cool_down" => {
                    each(&mut field.node, |part| is_whole &= self.fill_part(part, findings));
                }
                "space" => is_whole &= self.fill_group(&mut field.node, Section::Spaces, findings),
                "safety" => self.fill_texts(&mut field.node, Section::Cautions, findings),
                _ => {}
            }
        }
        is_whole
    }

    fn fill_part(&self, part: &mut Node, findings: &mut Vec<Finding>) -> bool {
        let is_whole = self.fill_group(part, Section::Parts, findings);
        let Value::Fields(fields) = &mut part.value else { return is_whole };
        for field in fields.iter_mut().filter(|field| field.key == "key_points") {
            self.fill_texts(&mut field.node, Section::KeyPoints, findings);
        }
        is_whole
    }

    /// Lays the keys of a group over those of the shared one that it uses; gives whether that is there.
    fn fill_group(&self, group: &mut Node, section: Section, findings: &mut Vec<Finding>) -> bool {
        let Some((name, place)) = used_by(group) else { return true };
        let shared = self.find(section, &name, place, findings).map(|node| node.value);
        let (Some(Value::Fields(shared)), Value::Fields(own)) = (shared, &mut group.value) else {
            return false;
        };
        *own = lay_over(shared, own);
        true
    }

    /// Puts the shared texts in place of the entries that use them.
    fn fill_texts(&self, list: &mut Node, section: Section, findings: &mut Vec<Finding>) {
        if used_by(list).is_some() {
            let entry = list.clone();
            list.value = Value::List(vec![entry]);
        }
        let Value::List(entries) = &mut list.value else { return };
        let mut filled = Vec::new();
        for entry in entries.drain(..) {
            let Some((name, place)) = used_by(&entry) else {
                filled.push(entry);
                continue;
            };
            match self.find(section, &name, place, findings) {
                Some(Node { value: Value::List(texts), .. }) => filled.extend(texts),
                Some(text) => filled.push(text),
                None => {}
            }
        }
        *entries = filled;
    }

    fn find(
        &self,
        section: Section,
        name: &str,
        place: Place,
        findings: &mut Vec<Finding>,
    ) -> Option<Node> {
        if let Some((node, _)) = self.entries.get(&(section, name.to_owned())) {
            return Some(node.clone());
        }
        if self.is_unread {
            return None;
        }
        let (says, way_out) = self.explain(section, name);
        findings.push(Finding::problem("shared-unknown", place, says, way_out));
        None
    }

    /// Why a name leads nowhere: it is gone, it is of another kind, it is misspelt, or there is no shared.yaml.
    fn explain(&self, section: Section, name: &str) -> (String, String) {
        let (key, _, what) = section.keys();
        let says = format!("shared.yaml has no “{name}” under “{key}”.");
        if let Some(story) = self.gone.get(name) {
            return (says, story.clone());
        }
        if !self.is_there {
            let way_out = "Write shared.yaml beside pack.yaml, or write the text out here.";
            return (
                format!("“{name}” is used here, but this pack has no shared.yaml."),
                way_out.into(),
            );
        }
        let elsewhere = Section::ALL.into_iter().find_map(|other| {
            let (_, line) = self.entries.get(&(other, name.to_owned()))?;
            Some((other.keys().2, *line))
        });
        if let Some((other, line)) = elsewhere {
            let says = format!(
                "“{name}” is {other} (shared.yaml, line {line}), and {what} is asked for here."
            );
            return (says, format!("Use the name of {what}, or write it out here."));
        }
        let of_section = self.entries.iter().filter(|((of, _), _)| *of == section);
        let known: Vec<(&str, usize)> =
            of_section.map(|((_, name), (_, line))| (name.as_str(), *line)).collect();
        let names: Vec<&str> = known.iter().map(|(name, _)| *name).collect();
        let way_out = match nearest(name, &names) {
            Some(near) => {
                let line =
                    known.iter().find(|(name, _)| *name == near).map_or(1, |(_, line)| *line);
                format!("Did you mean “{near}” (shared.yaml, line {line})?")
            }
            None if names.is_empty() => {
                format!("Add it to shared.yaml under “{key}”, or write it out here.")
            }
            None => format!("The names there are: {}.", names.join(", ")),
        };
        (says, way_out)
    }
}

/// What became of a name: “It was renamed “river crossing” on 3 May 2026: …”
fn story_of(entry: &Node, name: &str) -> String {
    let on = text_at(entry, "on").and_then(|day| Date::read_quantity(&day).ok());
    let on = on.map_or_else(String::new, |day| format!(" on {}", day.in_words()));
    let why = text_at(entry, "why").map_or_else(String::new, |why| format!(" {why}"));
    match text_at(entry, "now") {
        Some(now) => format!("“{name}” was renamed{on}: use “{now}” now.{why}"),
        None => format!("“{name}” was taken out{on}. Use another, or write it out here.{why}"),
    }
}

/// The keys of both groups; those of the second count.
pub(super) fn lay_over(under: Vec<Field>, over: &[Field]) -> Vec<Field> {
    let mut laid: Vec<Field> = under
        .into_iter()
        .map(|field| over.iter().find(|own| own.key == field.key).cloned().unwrap_or(field))
        .collect();
    let more: Vec<Field> =
        over.iter().filter(|own| laid.iter().all(|f| f.key != own.key)).cloned().collect();
    laid.extend(more);
    laid
}

fn each(node: &mut Node, mut change: impl FnMut(&mut Node)) {
    match &mut node.value {
        Value::List(entries) => entries.iter_mut().for_each(change),
        _ => change(node),
    }
}

/// Whether a tree says `use:` anywhere.
pub(super) fn is_used_in(tree: &Node) -> bool {
    match &tree.value {
        Value::Fields(fields) => {
            fields.iter().any(|field| field.key == "use" || is_used_in(&field.node))
        }
        Value::List(entries) => entries.iter().any(is_used_in),
        Value::Scalar(_) | Value::Empty => false,
    }
}

/// The name after `use:` in a group, and where it stands.
fn used_by(node: &Node) -> Option<(String, Place)> {
    let used = field(node, "use")?;
    let Value::Scalar(name) = &used.value else { return None };
    Some((name.split_whitespace().collect::<Vec<_>>().join(" "), used.place))
}

pub(super) fn field<'n>(node: &'n Node, key: &str) -> Option<&'n Node> {
    let Value::Fields(fields) = &node.value else { return None };
    fields.iter().find(|field| field.key == key).map(|field| &field.node)
}

/// The single value of a key, its spaces made plain.
pub(super) fn text_at(node: &Node, key: &str) -> Option<String> {
    let Value::Scalar(text) = &field(node, key)?.value else { return None };
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    (!text.is_empty()).then_some(text)
}

/// The entries of a list, or the one that stands alone.
pub(super) fn entries_of<'n>(tree: &'n Node, key: &str) -> &'n [Node] {
    match field(tree, key) {
        Some(Node { value: Value::List(entries), .. }) => entries,
        Some(node @ Node { value: Value::Fields(_), .. }) => std::slice::from_ref(node),
        _ => &[],
    }
}
