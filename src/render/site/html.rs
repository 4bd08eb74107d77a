//! A teacher's text → safe HTML for one page, its links turned towards the published places.

use serde::Serialize;

use super::frame::direction_of;
use super::picture::picture_path;
use crate::drawing::{Drawing, to_svg};
use crate::pack::{Lead, Pack};
use crate::place::{FileId, Placed};
use crate::prose::{line_to_html, prose_to_html};
use crate::read::{Line, Prose};
use crate::render::page_path;

/// Safe HTML. Only a [`Scribe`] makes it, [`drawn`] or [`data_block`]; templates print it with `| safe`.
#[derive(Serialize, Clone, Debug)]
#[serde(transparent)]
pub(super) struct Html(String);

/// Writes the texts of a pack for one page. A relative link leads from the file that its text stands
/// in, wherever the text is shown.
pub(super) struct Scribe<'p> {
    pack: &'p Pack,
    /// From the page up to the top of this language’s pages: `../../`.
    root: String,
    /// From there up to the pictures.
    up: String,
}

impl<'p> Scribe<'p> {
    pub(super) fn new(pack: &'p Pack, root: &str) -> Self {
        Self { pack, root: root.to_owned(), up: String::new() }
    }

    /// The same, on a page whose pictures lie further up.
    pub(super) fn above(mut self, up: &str) -> Self {
        up.clone_into(&mut self.up);
        self
    }

    /// A text, with the language of its file told where it is not that of the page (WCAG 2.2, 3.1.2).
    fn told(&self, element: &str, file: FileId, html: String) -> Html {
        let language = self.pack.language_at(file);
        if language == self.pack.language.value {
            return Html(html);
        }
        let (language, direction) = (escaped(&language), direction_of(&language));
        Html(format!("<{element} lang=\"{language}\" dir=\"{direction}\">{html}</{element}>"))
    }

    /// Several paragraphs.
    pub(super) fn prose(&self, text: &Placed<Prose>) -> Html {
        let file = text.place.file;
        self.told("div", file, prose_to_html(text, &|link| self.follow(file, link)))
    }

    /// One line, with nothing around it.
    pub(super) fn line(&self, text: &Placed<Line>) -> Html {
        let file = text.place.file;
        self.told("span", file, line_to_html(text, &|link| self.follow(file, link)))
    }

    /// A line that may not be written.
    pub(super) fn line_if_any(&self, text: Option<&Placed<Line>>) -> Option<Html> {
        text.map(|text| self.line(text))
    }

    /// All lines of a list.
    pub(super) fn lines(&self, lines: &[Placed<Line>]) -> Vec<Html> {
        lines.iter().map(|line| self.line(line)).collect()
    }

    /// A relative link leads to the page of a session or to a picture; any other is plain words.
    fn follow(&self, from: FileId, link: &str) -> Option<String> {
        let leads_to = match self.pack.lead(from, link) {
            Lead::Picture(path) => format!("{}{}", self.up, picture_path(path)),
            Lead::Session(session) => page_path(&session.id),
            Lead::Unread | Lead::Other | Lead::Nowhere => return None,
        };
        Some(format!("{}{leads_to}", self.root))
    }
}

/// A language tag as the inside of an attribute: letters, digits and hyphens.
fn escaped(tag: &str) -> String {
    tag.chars().filter(|c| c.is_ascii_alphanumeric() || *c == '-').collect()
}

/// A drawing of ours as SVG: its words are escaped.
pub(super) fn drawn(drawing: &Drawing, class: &str) -> Html {
    Html(to_svg(drawing, class))
}

/// A figure of ours as SVG.
pub(super) fn figure_html(svg: &str) -> Html {
    Html(svg.to_owned())
}

/// JSON as the inside of a `script` element: it holds no `<`.
pub(super) fn data_block(json: String) -> Html {
    debug_assert!(!json.contains('<'));
    Html(json)
}

/// Several paragraphs that stand in no file of a pack: the words of the rules.
pub(super) fn loose_prose(text: &str) -> Html {
    Html(prose_to_html(text, &|_| None))
}

/// One line that stands in no file of a pack.
pub(super) fn loose_line(text: &str) -> Html {
    Html(line_to_html(text, &|_| None))
}
