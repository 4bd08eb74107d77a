//! A teacher's text → safe HTML for one page, its links turned towards the published places.

use serde::Serialize;

use super::picture::picture_path;
use crate::pack::{Pack, Session};
use crate::place::Placed;
use crate::prose::{line_to_html, prose_to_html};
use crate::read::Line;
use crate::render::page_path;
use crate::resolve::path_from;

/// Safe HTML. Only a [`Scribe`] makes it; templates print it with `| safe`.
#[derive(Serialize, Clone, Debug)]
#[serde(transparent)]
pub(super) struct Html(String);

/// Writes the texts of one file for one page.
pub(super) struct Scribe<'p> {
    pack: &'p Pack,
    /// From the page up to the top of the site: `../../`.
    root: String,
    /// The file the text stands in, from which its relative links lead.
    from: String,
}

impl<'p> Scribe<'p> {
    /// For the shared texts of a pack.
    pub(super) fn of_pack(pack: &'p Pack, root: &str) -> Self {
        Self { pack, root: root.to_owned(), from: "pack.yaml".to_owned() }
    }

    /// For the texts of a session.
    pub(super) fn of_session(pack: &'p Pack, session: &Session, root: &str) -> Self {
        Self { pack, root: root.to_owned(), from: session.path.clone() }
    }

    /// Several paragraphs.
    pub(super) fn prose(&self, text: &str) -> Html {
        Html(prose_to_html(text, &|link| self.follow(link)))
    }

    /// One line, with nothing around it.
    pub(super) fn line(&self, text: &str) -> Html {
        Html(line_to_html(text, &|link| self.follow(link)))
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
    fn follow(&self, link: &str) -> Option<String> {
        let path = path_from(&self.from, link)?;
        let leads_to = if self.pack.pictures.contains_key(&path) {
            picture_path(&path)
        } else {
            let session = self.pack.sessions.iter().find(|session| session.path == path)?;
            (!session.is_retired()).then(|| page_path(&session.id))?
        };
        Some(format!("{}{leads_to}", self.root))
    }
}
