//! The mini-site: pack and plans → pages. Each page kind has a file here that says what it shows
//! and fills it from the pack, and a template of the same name that says how it looks.
//!
//! Fields of type [`html::Html`] hold text that the prose stage has made safe; every other string is
//! escaped by the template. Tokens (`"warm-up"`, `"vigorous"`) become words in the template.

mod assets;
mod book;
mod changes;
mod choices;
mod class;
mod coverage;
mod equipment_matrix;
mod facts;
mod feed;
mod figures;
mod frame;
mod front;
mod home_marks;
mod home_rules;
mod html;
mod learning_data;
mod offline;
#[cfg(test)]
mod page_tests;
mod part;
mod picture;
mod plans;
mod poses;
mod progress;
mod rules;
mod search_index;
mod session;
mod teacher_folder;
mod teacher_plans;
mod teachers;
mod templates;
mod things;
mod tighten;
mod timeline;
mod unit_teachers;
mod units;

pub use book::{Book, render_book};
pub use changes::render_changes_page;
pub(crate) use picture::picture_path;
pub use progress::render_progress_page;
pub use teacher_folder::render_teacher_pages;

use std::collections::BTreeMap;
use std::sync::Arc;

use rayon::prelude::*;

use super::key::Key;
use super::near::keep_near;
use super::shelf::Made;
use super::{Bundle, Publication, RenderFault, page_path};
use crate::pack::{Session, SessionId};
use crate::plan::Plans;
use crate::words::Words;
pub use class::{ClassRow, ClassTable, class_assets, render_class_page};
pub use figures::proportions_of;
pub use poses::YEARS;
use templates::Templates;

/// What every page is filled from.
struct Site<'p> {
    publication: &'p Publication<'p>,
    words: Arc<Words>,
    templates: Templates<'p>,
    /// From the teachers’ folder to the families’; nothing for the families’ own pages.
    families: Option<String>,
}

impl<'p> Site<'p> {
    fn of(publication: &'p Publication<'p>) -> Result<Self, RenderFault> {
        let words = Arc::clone(&publication.words);
        let templates = Templates::load(&publication.house, Arc::clone(&words))?
            .looking_on(publication.order.shelf);
        Ok(Self { publication, words, templates, families: None })
    }

    /// Whether the pack is written from right to left; drawings are then turned round.
    fn is_rtl(&self) -> bool {
        frame::direction_of(&self.publication.pack.language) == "rtl"
    }

    /// From the folder of this language up to the top.
    fn up(&self) -> String {
        let publication = self.publication;
        let folder = &publication.editions[publication.edition].folder;
        "../".repeat(folder.matches('/').count())
    }

    /// The address on the web of a page of this language, where the pack says where it will stand.
    fn address_of(&self, path: &str) -> Option<String> {
        let publication = self.publication;
        let top = publication.pack.address.as_ref().filter(|_| self.families.is_none())?;
        let folder = &publication.editions[publication.edition].folder;
        Some(format!("{}/{folder}{path}", top.trim_end_matches('/')))
    }

    /// From a page that lies below its folder’s top (`up`: nothing, `../` …) to the families’ pages, and
    /// to what it loads.
    fn ways_from(&self, up: &str) -> (String, String) {
        match &self.families {
            Some(families) => (format!("{up}{families}"), up.to_owned()),
            None => (up.to_owned(), format!("{up}{}", self.up())),
        }
    }

    /// The name of a language in itself.
    fn name_of_language(&self, language: &str) -> String {
        let known = self.publication.editions.iter().find(|e| e.language == language);
        known.map_or_else(|| self.words.say("language-unnamed"), |e| e.name.clone())
    }

    fn sessions(&self) -> impl Iterator<Item = (&'p Session, &'p Plans)> + use<'p> {
        let plans = self.publication.plans.iter().map(AsRef::as_ref);
        self.publication.pack.sessions.iter().map(AsRef::as_ref).zip(plans)
    }

    /// The sessions that families choose from: a retired one keeps its page, with a notice, for who has its
    /// address.
    fn offered(&self) -> impl Iterator<Item = (&'p Session, &'p Plans)> + use<'p> {
        self.sessions().filter(|(session, _)| !session.is_retired())
    }

    /// The session of an id.
    fn session(&self, id: &SessionId) -> Option<&'p Session> {
        let sessions = &self.publication.pack.sessions;
        sessions.binary_search_by(|session| session.id.cmp(id)).ok().map(|at| &*sessions[at])
    }
}

/// Renders every page and asset of the mini-site that is wanted.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_site(publication: &Publication<'_>) -> Result<Bundle, RenderFault> {
    let site = Site::of(publication)?;
    // Style sheets, fonts and pictures lie at the top once, for every language.
    let is_top = publication.edition == 0;
    let wants = |path: &str| publication.wants(path);
    let mut bundle = Bundle::new();
    if is_top && (publication.wants_below("static/") || publication.wants_below("pictures/")) {
        bundle = assets::gather_assets(publication);
    }
    if wants("index.html") || wants("static/choose.css") || wants(search_index::INDEX) {
        bundle.extend(front::render_front(&site)?);
    }
    if wants("things.html") {
        bundle.insert("things.html".into(), things::render_things(&site)?);
    }
    bundle.extend(units::render_units(&site)?);
    let (pages, left) = render_sessions(&site)?;
    bundle.extend(pages);
    if wants(feed::FEED) {
        bundle.extend(feed::render_feed(&site).map(|feed| (feed::FEED.to_owned(), feed)));
    }
    // It is made from all pages there are: a single one asked for, as `rehearse` does, has no worker.
    if publication.order.only.is_none() {
        let worker = offline::render_worker(&site, &bundle, &left);
        bundle.insert(offline::WORKER.into(), worker);
    }
    Ok(bundle)
}

/// The pages of sessions that were made, and the marks of those that stay as they were published.
type Pages = (Bundle, BTreeMap<String, Key>);

fn render_sessions(site: &Site<'_>) -> Result<Pages, RenderFault> {
    let publication = site.publication;
    let what = format!("page, feed {}", feed::has_feed(site));
    let render = |(session, plans): (&Session, &Plans)| {
        let (path, near) = (page_path(&session.id), publication.near(&what, session));
        let left = publication.leave(near, std::slice::from_ref(&path));
        (publication.order.on_session)();
        if let Some([left]) = left.as_deref() {
            return Ok((path, Err(left.key)));
        }
        let bytes = session::render_session(site, session, plans)?;
        let made = Made { bytes, ink: Vec::new() };
        keep_near(near, std::slice::from_ref(&made));
        Ok((path, Ok(made.bytes)))
    };
    let is_wanted = |(session, _): &(&Session, &Plans)| publication.wants(&page_path(&session.id));
    let sessions: Vec<_> = site.sessions().filter(is_wanted).collect();
    let pages: Result<Vec<_>, RenderFault> = sessions.into_par_iter().map(render).collect();
    let (mut made, mut left) = Pages::default();
    for (path, page) in pages? {
        match page {
            Ok(bytes) => drop(made.insert(path, bytes)),
            Err(key) => drop(left.insert(path, key)),
        }
    }
    Ok((made, left))
}
