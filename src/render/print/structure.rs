//! What a document is made of, collected while its pages are written: the elements of its structure
//! tree, the pieces of each page that belong to them, links and bookmarks.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::page::{At, Item, Key, Role, Tag};

/// The structure of one document.
#[derive(Debug, Default)]
pub struct Structure {
    pub elements: Vec<Element>,
    by_key: BTreeMap<Key, usize>,
    /// The elements that no other holds, in reading order.
    pub top: Vec<usize>,
    /// For each page, the element of each of its marked pieces.
    pub pages: Vec<Vec<usize>>,
    pub links: Vec<LinkArea>,
    pub bookmarks: Vec<Bookmark>,
}

/// One element.
#[derive(Debug)]
pub struct Element {
    pub key: Key,
    pub role: Role,
    pub language: Option<Arc<str>>,
    pub parent: Option<usize>,
    pub kids: Vec<Kid>,
    /// Its words, where they are not on the page as they are read.
    pub says: Option<String>,
    /// The page and the room of a figure: left, bottom, right, top in points.
    pub room: Option<(usize, [f32; 4])>,
}

/// What an element holds, in reading order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kid {
    Element(usize),
    /// A marked piece of a page.
    Piece {
        page: usize,
        number: usize,
    },
    /// An area that leads somewhere.
    Link(usize),
}

/// Words on a page that lead to an address.
#[derive(Debug)]
pub struct LinkArea {
    pub page: usize,
    pub element: usize,
    pub address: String,
    /// Left, bottom, right, top in points.
    pub room: [f32; 4],
}

/// An entry of the document’s outline.
#[derive(Debug)]
pub struct Bookmark {
    /// The heading that it leads to.
    element: usize,
    pub title: String,
    pub page: usize,
    /// Points from the foot of the page.
    pub top: f32,
}

impl Structure {
    /// The element of a tag: a new one below `parent`, or the one that goes on.
    pub fn open(&mut self, tag: &Tag, parent: Option<usize>) -> usize {
        if let Some(known) = self.by_key.get(&tag.key) {
            return *known;
        }
        let index = self.elements.len();
        self.elements.push(Element {
            key: tag.key,
            role: tag.role.clone(),
            language: tag.language.clone(),
            parent,
            kids: Vec::new(),
            says: None,
            room: None,
        });
        self.by_key.insert(tag.key, index);
        match parent {
            Some(parent) => self.elements[parent].kids.push(Kid::Element(index)),
            None => self.top.push(index),
        }
        index
    }

    /// Puts the elements in the order they were laid out in, which is the order they are read in. The
    /// pages of a folded booklet lie otherwise on their sheets.
    pub fn order_as_laid(&mut self) {
        let elements = &self.elements;
        self.top.sort_by_key(|element| elements[*element].key);
    }

    /// The number of a new piece of the last page that belongs to an element.
    pub fn add_piece(&mut self, element: usize) -> usize {
        let page = self.pages.len() - 1;
        let number = self.pages[page].len();
        self.pages[page].push(element);
        self.elements[element].kids.push(Kid::Piece { page, number });
        number
    }

    /// Notes where a link’s words stand.
    pub fn add_link(&mut self, element: usize, address: &str, room: [f32; 4]) {
        let page = self.pages.len() - 1;
        self.elements[element].kids.push(Kid::Link(self.links.len()));
        self.links.push(LinkArea { page, element, address: address.to_owned(), room });
    }

    /// Notes a heading of the first level for the outline. One that goes on is noted once.
    pub fn add_bookmark(&mut self, element: usize, words: &str, top: f32) {
        let page = self.pages.len() - 1;
        match self.bookmarks.last_mut() {
            Some(last) if last.element == element => {
                last.title = format!("{} {words}", last.title);
            }
            _ => self.bookmarks.push(Bookmark { element, title: words.to_owned(), page, top }),
        }
    }
}

/// The room that items take, from the top left: left, top, right, bottom; `width_of` measures a run of
/// glyphs.
pub fn room_of(items: &[Item], width_of: &dyn Fn(&super::page::GlyphRun) -> f32) -> [f32; 4] {
    let mut room = [f32::MAX, f32::MAX, f32::MIN, f32::MIN];
    let mut take = |(x, y): At| {
        room = [room[0].min(x), room[1].min(y), room[2].max(x), room[3].max(y)];
    };
    for item in items {
        match item {
            Item::Glyphs(run) => {
                take((run.at.0, run.at.1 - run.size));
                take((run.at.0 + width_of(run), run.at.1 + run.size * 0.3));
            }
            Item::Line { from, to, .. } => {
                take(*from);
                take(*to);
            }
            Item::Shape { outline, .. } => outline.iter().for_each(|corner| take(corner.at)),
            Item::Picture { at, width, height, .. } => {
                take(*at);
                take((at.0 + width, at.1 + height));
            }
            Item::Plate(set) => {
                take(set.at);
                take((set.at.0 + set.width(), set.at.1 + set.height()));
            }
            Item::Group { items, .. } => {
                let [left, top, right, bottom] = room_of(items, width_of);
                take((left, top));
                take((right, bottom));
            }
        }
    }
    room
}
