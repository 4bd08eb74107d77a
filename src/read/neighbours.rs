//! Other packs that this one draws on, and the sessions borrowed from them.
//!
//! A pack names its neighbours under `draws_on`; a session file with `borrows: NAME/ID` is that neighbour’s session
//! with the keys of the file laid over it. Licence and credit are the lender’s and stay with the session. What a
//! neighbour draws on itself is not followed, so there are no circles.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::desk::{Desk, FromNode, nearest};
use super::node::{Field, Node, Value};
use super::other_files::LARGEST_PICTURE;
use super::pack_files::EquipmentDoc;
use super::paths::is_picture;
use super::shelf::{Shelf, entries_of, field, lay_over, text_at};
use super::yaml::{LARGEST_FILE, read_text, read_tree};
use crate::finding::Finding;
use crate::place::{FileId, Files, Lent, Place};
use crate::source::{Entry, EntryKind, Source};

/// More than a department draws on, and than a session shows.
const MOST: usize = 20;
const MOST_PICTURES: usize = 60;

/// Keys that each department says for itself; they are taken from no lender and change nothing in the session.
const OWN: [&str; 4] = ["borrows", "curriculum", "standing", "allow"];

/// Keys whose value is the lender’s.
const RIGHTS: [&str; 2] = ["licence", "credit"];

/// A session that came from a neighbour.
#[derive(Clone, Debug)]
pub struct BorrowedDoc {
    /// The neighbour’s name in pack.yaml.
    pub lender: String,
    /// Where it stands in the neighbour’s pack.
    pub stands: Lent,
    /// What the neighbour’s pack is called, or its school.
    pub pack: String,
    /// The keys that were changed, in the order they stand in the file.
    pub changed: Vec<String>,
    /// Where `borrows` stands.
    pub place: Place,
    /// The lender’s shared list.
    pub equipment: Option<EquipmentDoc>,
    /// The lender’s pictures that the session names, by the path they have in this pack.
    pub pictures: BTreeMap<String, Arc<[u8]>>,
}

/// A neighbour whose folder could be opened.
pub(super) struct Neighbour {
    source: Box<dyn Source>,
    /// As it is written in pack.yaml.
    folder: String,
    /// The folder that its pictures have in this pack.
    under: String,
    pack: Option<Node>,
    shelf: Shelf,
    equipment: Option<EquipmentDoc>,
}

/// By the names that pack.yaml gives them.
pub(super) type Neighbours = BTreeMap<String, Neighbour>;

/// Opens the neighbours that a pack.yaml names.
pub(super) fn open_neighbours(
    source: &dyn Source,
    pack: &Node,
    files: &mut Files,
    findings: &mut Vec<Finding>,
) -> Neighbours {
    let mut neighbours = Neighbours::new();
    for entry in entries_of(pack, "draws_on").iter().take(MOST) {
        let (Some(name), Some(folder)) = (text_at(entry, "name"), text_at(entry, "folder")) else {
            continue;
        };
        let place = field(entry, "folder").map_or(entry.place, |node| node.place);
        match source.neighbour(&folder) {
            Ok(found) => {
                let under = folder_for(&name, &neighbours);
                let neighbour = open((found, folder, under), files);
                if neighbour.pack.is_none() {
                    let says = format!("There is no pack.yaml in {}.", neighbour.folder);
                    let way_out = "Name the folder that holds the neighbour’s pack.yaml.";
                    findings.push(Finding::problem("neighbour-unfit", place, says, way_out));
                }
                neighbours.insert(name, neighbour);
            }
            Err(says) => {
                let way_out = "Put the neighbour’s pack inside this one, in a folder that begins with “_”, \
                               or right beside it, and name it as _neighbours/NAME or ../NAME.";
                findings.push(Finding::problem("neighbour-unfit", place, says, way_out));
            }
        }
    }
    neighbours
}

/// A folder for a neighbour’s pictures that no folder of this pack is likely to be called, nor another neighbour’s.
fn folder_for(name: &str, others: &Neighbours) -> String {
    let plain = |letter: char| if letter.is_alphanumeric() { letter } else { '-' };
    let mut under = format!("~{}", name.to_lowercase().chars().map(plain).collect::<String>());
    while others.values().any(|other| other.under == under) {
        under.push('-');
    }
    under
}

fn open(
    (source, folder, under): (Box<dyn Source>, String, String),
    files: &mut Files,
) -> Neighbour {
    let mut neighbour =
        Neighbour { source, folder, under, pack: None, shelf: Shelf::default(), equipment: None };
    neighbour.pack = neighbour.tree("pack.yaml", files).map(|(tree, _)| tree);
    if let Some((_, file)) = neighbour.tree("shared.yaml", files) {
        neighbour.shelf = Shelf::of(&files.get(file).text.clone(), file);
    }
    let equipment = neighbour.tree("equipment.yaml", files);
    neighbour.equipment =
        equipment.and_then(|(tree, _)| EquipmentDoc::from_node(&tree, &mut Desk::default()));
    neighbour
}

impl Neighbour {
    /// The tree of one of its files, which is listed among the pack’s own under the neighbour’s folder.
    fn tree(&self, path: &str, files: &mut Files) -> Option<(Node, FileId)> {
        let entries = self.source.entries().ok()?;
        let entry = entries.iter().find(|entry| entry.path == path)?;
        let in_bounds = matches!(entry.kind, EntryKind::File { bytes } if bytes <= LARGEST_FILE);
        let bytes = in_bounds.then(|| self.source.bytes(path).ok())??;
        let lent = Lent { path: path.to_owned(), under: self.under.clone() };
        let file = files.add_lent(format!("{}/{path}", self.folder), lent);
        let text = read_text(bytes, file).ok()?;
        let tree = read_tree(&text, file).ok();
        files.set_text(file, text);
        Some((tree?, file))
    }

    /// Its pictures whose names occur in a text of a tree, so that pictures and links find them.
    fn pictures_named(&self, tree: &Node) -> BTreeMap<String, Arc<[u8]>> {
        let mut texts = Vec::new();
        gather_texts(tree, &mut texts);
        let is_named = |entry: &Entry| {
            let name = entry.path.rsplit('/').next().unwrap_or_default();
            let encoded = name.replace(' ', "%20");
            texts.iter().any(|text| text.contains(name) || text.contains(&encoded))
        };
        let in_bounds = |entry: &Entry| matches!(entry.kind, EntryKind::File { bytes } if bytes <= LARGEST_PICTURE);
        let entries = self.source.entries().unwrap_or_default().into_iter();
        entries
            .filter(|entry| is_picture(&entry.path) && in_bounds(entry) && is_named(entry))
            .take(MOST_PICTURES)
            .filter_map(|entry| Some((entry.path.clone(), self.source.bytes(&entry.path).ok()?)))
            .map(|(path, bytes)| (format!("{}/{path}", self.under), bytes.into()))
            .collect()
    }

    /// The ids of its sessions.
    fn ids(&self) -> Vec<String> {
        let entries = self.source.entries().unwrap_or_default();
        let ids = entries.into_iter().filter_map(|entry| {
            let id = entry.path.strip_suffix(".yaml")?.to_owned();
            id.contains('/').then_some(id)
        });
        ids.collect()
    }

    fn said(&self, key: &str) -> Option<String> {
        text_at(self.pack.as_ref()?, key)
    }
}

/// Whether a session’s file borrows.
pub(super) fn is_borrowing(tree: &Node) -> bool {
    field(tree, "borrows").is_some()
}

/// The tree of a borrowed session, with the file’s own keys over it; `None` where there is no such session.
pub(super) fn borrow(
    own: &Node,
    neighbours: &Neighbours,
    files: &mut Files,
    findings: &mut Vec<Finding>,
) -> Option<(Node, BorrowedDoc)> {
    let asked = text_at(own, "borrows")?;
    let place = field(own, "borrows")?.place;
    let unknown =
        |says: String, way_out: String| Finding::problem("borrowed-unknown", place, says, way_out);
    let (lender, id) = asked.split_once('/').unwrap_or((&asked, ""));
    let Some(neighbour) = neighbours.get(lender) else {
        let names: Vec<&str> = neighbours.keys().map(String::as_str).collect();
        let says = format!("pack.yaml names no neighbour “{lender}” under draws_on.");
        findings.push(unknown(says, near_or(lender, &names, "Write NAME/ID, and add the neighbour to pack.yaml: draws_on: [{name: …, folder: …}].")));
        return None;
    };
    let Some((mut tree, _)) = neighbour.tree(&format!("{id}.yaml"), files) else {
        let ids = neighbour.ids();
        let ids: Vec<&str> = ids.iter().map(String::as_str).collect();
        let says = format!("{} has no session “{id}” that can be read.", neighbour.folder);
        findings.push(unknown(
            says,
            near_or(
                id,
                &ids,
                "Write the place of its file in the neighbour’s pack, without “.yaml”.",
            ),
        ));
        return None;
    };
    if !neighbour.shelf.fill(&mut tree, findings) {
        return None;
    }
    let pictures = neighbour.pictures_named(&tree);
    let (Value::Fields(lent), Value::Fields(over)) = (tree.value, &own.value) else { return None };
    let over: Vec<Field> =
        over.iter().filter(|field| !is_right(field, findings)).cloned().collect();
    let is_change = |key: &String| !OWN.contains(&key.as_str());
    let changed = over.iter().map(|field| field.key.clone()).filter(is_change);
    let borrowed = BorrowedDoc {
        lender: lender.to_owned(),
        stands: Lent { path: format!("{id}.yaml"), under: neighbour.under.clone() },
        pack: neighbour.said("title").unwrap_or_else(|| lender.to_owned()),
        changed: changed.collect(),
        place,
        equipment: neighbour.equipment.clone(),
        pictures,
    };
    let is_lent = |field: &Field| !OWN.contains(&field.key.as_str());
    let lent: Vec<Field> = lent.into_iter().filter(is_lent).collect();
    let whole = lay_over(with_rights(lent, neighbour, place), &over);
    Some((Node { place: own.place, value: Value::Fields(whole) }, borrowed))
}

/// Whether a key of the file would change what is the lender’s to say.
fn is_right(field: &Field, findings: &mut Vec<Finding>) -> bool {
    let is_right = RIGHTS.contains(&field.key.as_str());
    if is_right {
        let says = format!("The {} of a borrowed session is the lender’s, and stays.", field.key);
        let way_out = "Take the line out: what the lender says is shown with the session.";
        findings.push(Finding::problem("borrowed-rights", field.key_place, says, way_out));
    }
    is_right
}

/// The session with its licence and credit written out, where they stand in the lender’s pack.yaml.
fn with_rights(mut lent: Vec<Field>, neighbour: &Neighbour, place: Place) -> Vec<Field> {
    let credit = || {
        neighbour
            .said("credit")
            .or_else(|| neighbour.said("school"))
            .or_else(|| neighbour.said("title"))
    };
    for (key, said) in [("licence", neighbour.said("licence")), ("credit", credit())] {
        let is_there = lent.iter().any(|field| field.key == key);
        if let Some(text) = said.filter(|_| !is_there) {
            let node = Node { place, value: Value::Scalar(text) };
            lent.push(Field { key: key.into(), key_place: place, node });
        }
    }
    lent
}

fn gather_texts<'n>(node: &'n Node, texts: &mut Vec<&'n str>) {
    match &node.value {
        Value::Scalar(text) => texts.push(text),
        Value::List(entries) => entries.iter().for_each(|entry| gather_texts(entry, texts)),
        Value::Fields(fields) => fields.iter().for_each(|field| gather_texts(&field.node, texts)),
        Value::Empty => {}
    }
}

fn near_or(name: &str, names: &[&str], otherwise: &str) -> String {
    match nearest(name, names) {
        Some(near) => format!("Did you mean “{near}”?"),
        None if names.is_empty() => otherwise.to_owned(),
        None => {
            format!("There are: {}.", names.iter().take(12).copied().collect::<Vec<_>>().join(", "))
        }
    }
}
