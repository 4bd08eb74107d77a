//! Codes to scan, each with its address in words beside it: for the session’s page and for its film.
//! Paper can’t be clicked.

use super::drawings::place_drawing;
use super::page::{Item, Role};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::{SheetSource, one};
use super::strip::{Column, placed};
use crate::drawing::{Drawing, draw_qr};
use crate::pack::{Pack, Session};
use crate::prose::{Run, is_web_address};
use crate::render::page_path;
use crate::render::phrases::colon;

/// Between a code’s quiet zone and its words.
const GAP: f32 = 4.0;

/// The code of the session’s page, to stand in a corner, and the words that go with it.
pub struct PageCode {
    pub width: f32,
    pub height: f32,
    pub items: Vec<Item>,
    pub words: Vec<Run>,
}

/// An address and its code, drawn once for all sheets and sizes.
#[derive(Clone, Debug)]
pub struct Scanned {
    address: String,
    /// `None` where the address is none of the web’s, or too long for a small code.
    code: Option<Drawing>,
}

/// What can be scanned on the sheets of a session.
#[derive(Clone, Debug, Default)]
pub struct Codes {
    page: Option<Scanned>,
    film: Option<Scanned>,
}

impl Codes {
    pub fn of(session: &Session, pack: &Pack) -> Self {
        let scanned = |address: String| {
            let code = draw_qr(&address).filter(|_| is_web_address(&address));
            Scanned { address, code }
        };
        Self {
            page: page_address(session, pack).map(scanned),
            film: session.film.as_ref().map(|film| scanned(film.link.to_string())),
        }
    }
}

/// The code of the session’s page, where the pack says where its pages stand.
pub fn page_code(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Option<PageCode> {
    let Scanned { address, code } = source.codes.page.as_ref()?;
    let code = code.as_ref()?;
    let said = source.words.say("scan-page");
    let label = Run::bold(format!("{said}{}", colon(source.words)));
    let drawn = place_drawing(shaper, code);
    let figure = Role::Figure(format!("{said}: {address}"));
    Some(PageCode {
        width: code.width,
        height: code.height,
        items: vec![Item::group(figure, shaper.next_key(), drawn)],
        words: vec![label, Run::plain(address.as_str())],
    })
}

/// The film’s code, or its address alone where no code can be scanned.
pub fn film_code(column: &mut Column<'_, '_>, source: &SheetSource<'_>, kinds: (Type, Type)) {
    if let Some(film) = &source.codes.film {
        code_beside_words(column, &source.words.say("scan-film"), film, kinds);
    }
}

/// A code for the session’s page and one for its film, each in one piece with its words.
pub fn scan_codes(column: &mut Column<'_, '_>, source: &SheetSource<'_>, kinds: (Type, Type)) {
    if let Some(page) = &source.codes.page {
        column.gap(3.0);
        code_beside_words(column, &source.words.say("scan-page"), page, kinds);
    }
    column.gap(3.0);
    film_code(column, source, kinds);
}

fn page_address(session: &Session, pack: &Pack) -> Option<String> {
    let home = pack.address.as_ref().filter(|address| is_web_address(address))?;
    let path = percent_encoded(&page_path(&session.id));
    Some(format!("{}/{path}", home.trim_end_matches('/')))
}

/// A path with every byte outside ASCII written as %XX (RFC 3986, 2.1).
fn percent_encoded(path: &str) -> String {
    let encoded = |byte: u8| match byte {
        b if b.is_ascii() => char::from(b).to_string(),
        b => format!("%{b:02X}"),
    };
    path.bytes().map(encoded).collect()
}

/// An address with no code that fits stands alone.
fn code_beside_words(
    column: &mut Column<'_, '_>,
    label: &str,
    scanned: &Scanned,
    (name, small): (Type, Type),
) {
    let address = scanned.address.as_str();
    let code = scanned.code.as_ref().filter(|code| code.width < column.width * 0.45);
    let left = code.map_or(0.0, |code| code.width + GAP);
    let mut items = Vec::new();
    let mut y = 0.0;
    let mut words = Vec::new();
    for (text, kind) in [(label, name), (address, small)] {
        for line in column.shaper.shape(&one(text), kind, column.width - left) {
            words.extend(placed(line, left).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
    }
    items.push(Item::group(Role::Paragraph, column.shaper.next_key(), words));
    let mut tall = y;
    if let Some(code) = code {
        tall = tall.max(code.height);
        // Words that are less tall than the code stand in its middle.
        let down = (tall - y) / 2.0;
        items = items.into_iter().map(|item| item.moved(0.0, down)).collect();
        let figure = Role::Figure(format!("{label}: {address}"));
        let drawn = place_drawing(column.shaper, code);
        items.push(Item::group(figure, column.shaper.next_key(), drawn));
    }
    column.drawing(tall, items);
}
