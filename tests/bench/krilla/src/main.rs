//! Sets the cards with krilla and parley on one thread and prints one JSON line, for `compare_sheets.py`:
//! `set_with_krilla words.json fonts folder`. Fonts are read before the clock starts; one warm-up, one
//! timed pass over all documents.

mod card;
mod fonts;
#[path = "../../processor_time.rs"]
mod processor_time;

use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::Point;
use krilla::metadata::Metadata;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::tagging::TagTree;
use krilla::{Document, SerializeSettings};
use serde::Deserialize;

use card::{Block, Setter};

/// As in homeground.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

pub const MM: f32 = 72.0 / 25.4;
/// ISO 216 A4.
const PAPER: (f32, f32) = (210.0 * MM, 297.0 * MM);
const MARGIN: f32 = 10.8 * MM;
/// From a cut line to what stands on the card.
const INNER: f32 = 6.0 * MM;

#[derive(Deserialize)]
struct Words {
    title: String,
    cards: Vec<Vec<Block>>,
}

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [words, fonts, folder] = &arguments[..] else { panic!("words.json fonts folder") };
    let words = std::fs::read_to_string(words).expect("the words");
    let documents: Vec<Words> = serde_json::from_str(&words).expect("the words as JSON");
    let mut setter = Setter::new(fonts);
    for words in &documents {
        set_document(&mut setter, words);
    }
    let began = processor_time::milliseconds();
    let files: Vec<Vec<u8>> =
        documents.iter().map(|words| set_document(&mut setter, words)).collect();
    let spent = processor_time::milliseconds() - began;
    for (number, file) in files.iter().enumerate() {
        std::fs::write(format!("{folder}/{number:02}.pdf"), file).expect("a folder to write to");
    }
    let bytes: usize = files.iter().map(Vec::len).sum();
    println!(
        r#"{{"ms": {spent:.3}, "bytes": {bytes}, "version": "krilla 0.8.2 with parley 0.12.0"}}"#
    );
}

fn set_document(setter: &mut Setter, words: &Words) -> Vec<u8> {
    let configuration =
        ConfigurationBuilder::new().with_accessibility_validator(Accessibility::UA1).finish();
    let mut document = Document::new_with(SerializeSettings {
        configuration: configuration.expect("PDF/UA-1 alone"),
        ..SerializeSettings::default()
    });
    let mut tree = TagTree::new().with_lang(Some("en-GB".to_owned()));
    let mut outline = Outline::new();
    for (page_number, cards) in words.cards.chunks(4).enumerate() {
        let settings = PageSettings::from_wh(PAPER.0, PAPER.1).expect("a page with room");
        let mut page = document.start_page_with(settings);
        let mut surface = page.surface();
        for (place, blocks) in cards.iter().enumerate() {
            let (x, y) = corner(place);
            for title in setter.set_card(&mut surface, &mut tree, blocks, (x, y)) {
                let destination = XyzDestination::new(page_number, Point::from_xy(x, y));
                outline.push_child(OutlineNode::new(title, destination));
            }
        }
        surface.finish();
        page.finish();
    }
    document.set_outline(outline);
    document.set_tag_tree(tree);
    let about = Metadata::new().title(words.title.clone()).language("en-GB".to_owned());
    document.set_metadata(about);
    document.finish().expect("a sound document")
}

/// The top left corner of a card: four to a page, row by row.
fn corner(place: usize) -> (f32, f32) {
    let along =
        |is_second: bool, length: f32| if is_second { length / 2.0 + INNER } else { MARGIN };
    (along(place % 2 == 1, PAPER.0), along(place / 2 == 1, PAPER.1))
}

/// How wide a card is.
pub const WIDTH: f32 = PAPER.0 / 2.0 - MARGIN - INNER;
