//! The words of a page as they are read. It has glyphs as they stand from left to right; where words run from right to
//! left, the element that they belong to says them as they are read (ISO 32000-1, 14.9.4).

use std::collections::BTreeMap;

use super::breaks::{FROM_LEFT, FROM_RIGHT, SOFT_HYPHEN};
use super::page::{GlyphRun, Item, Key, Page, Role};
use super::structure::{Kid, Structure};

/// The words of items, as they are read.
pub fn words_of(items: &[Item]) -> String {
    let mut said = Said::default();
    add_all(items, &mut said);
    in_words(&said.text)
}

fn add_all(items: &[Item], said: &mut Said) {
    for item in items {
        match item {
            Item::Glyphs(run) => said.add(run),
            Item::Group { items, .. } => add_all(items, said),
            _ => {}
        }
    }
}

/// Has each element say its words that holds any from right to left, and no elements of its own.
pub fn say_in_order(structure: &mut Structure, pages: &[Page]) {
    if !pages.iter().any(|page| runs_left(&page.items)) {
        return;
    }
    let mut items: Vec<&Item> = pages.iter().flat_map(|page| &page.items).collect();
    // The pages of a folded booklet lie otherwise on their sheets than they are read.
    items.sort_by_key(|item| match item {
        Item::Group { tag, .. } if tag.role == Role::Section => tag.key,
        _ => 0,
    });
    let mut words = BTreeMap::new();
    gather(items, None, &mut words);
    for element in &mut structure.elements {
        // A figure is told by its description.
        let is_plain = !matches!(element.role, Role::Figure(_))
            && element.kids.iter().all(|kid| matches!(kid, Kid::Piece { .. }));
        let said = words.get(&element.key).filter(|said: &&Said| said.runs_left && is_plain);
        element.says = said.map(|said| in_words(&said.text));
    }
}

/// The words of a thing, and whether any run from right to left.
#[derive(Debug, Default)]
struct Said {
    text: String,
    runs_left: bool,
}

impl Said {
    fn add(&mut self, run: &GlyphRun) {
        self.runs_left |= run.runs_left;
        run.glyphs.iter().for_each(|glyph| glyph.text.write_to(&mut self.text));
    }
}

fn runs_left(items: &[Item]) -> bool {
    items.iter().any(|item| match item {
        Item::Glyphs(run) => run.runs_left,
        Item::Group { items, .. } => runs_left(items),
        _ => false,
    })
}

fn gather<'i>(
    items: impl IntoIterator<Item = &'i Item>,
    within: Option<Key>,
    words: &mut BTreeMap<Key, Said>,
) {
    for item in items {
        match (item, within) {
            (Item::Group { tag, items }, _) => gather(items, Some(tag.key), words),
            (Item::Glyphs(run), Some(key)) => words.entry(key).or_default().add(run),
            _ => {}
        }
    }
}

/// Words with one space between them, without the hyphens of lines and the marks that steer their direction.
fn in_words(text: &str) -> String {
    let kept = text.replace([SOFT_HYPHEN, FROM_LEFT, FROM_RIGHT], "");
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}
