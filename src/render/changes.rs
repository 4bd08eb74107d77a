//! What changed since an earlier edition: a page for families in each language, one for whoever reviews.

use std::collections::BTreeMap;

use super::site::render_changes_page;
use super::{Bundle, Order, Publication, RenderFault, editions_of, plans_of};
use crate::edition::{PackOutline, compare_packs, outline_pack};
use crate::pack::Pack;
use crate::quantity::Date;

/// The path of the page in each folder.
pub const CHANGES_PAGE: &str = "changes.html";

/// What the sessions said at an earlier time.
#[derive(Clone, Debug)]
pub struct Earlier {
    /// What it is called: “spring-term”, “v2 (2027-03-01)”.
    pub when: String,
    /// By language.
    pub outlines: BTreeMap<String, PackOutline>,
}

/// The pages that tell of it.
#[derive(Debug)]
pub struct ChangesPages {
    /// For the families' folder.
    pub families: Bundle,
    /// For the teachers' folder.
    pub teachers: Bundle,
    /// New, changed and gone sessions, for telling.
    pub counts: (usize, usize, usize),
}

/// What a pack says in each of some languages.
///
/// # Errors
/// Where the labels of the pack's own look can't be read.
pub fn outline_languages(
    pack: &Pack,
    languages: &[String],
) -> Result<BTreeMap<String, PackOutline>, RenderFault> {
    let outline = |language: &String| {
        let is_own = *language == pack.language.value;
        let translated = if is_own { pack.clone() } else { pack.in_language(language) };
        Ok((language.clone(), outline_of(&Publication::of(&translated)?)))
    };
    languages.iter().map(outline).collect()
}

/// Renders the pages. `way` leads from the teachers' folder to the families'.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_changes(
    pack: &Pack,
    earlier: &Earlier,
    way: &str,
) -> Result<ChangesPages, RenderFault> {
    let editions = editions_of(pack)?;
    let (mut families, mut teachers, mut counts) = (Bundle::new(), Bundle::new(), (0, 0, 0));
    for (at, edition) in editions.iter().enumerate() {
        let translated = if at == 0 { pack.clone() } else { pack.in_language(&edition.language) };
        let nothing = nothing_in(&edition.language);
        let before = earlier.outlines.get(&edition.language).unwrap_or(&nothing);
        let edition_at = (editions.clone(), at);
        let plans = plans_of(&translated);
        let publication =
            Publication::of_edition(&translated, plans, edition_at, Order::default())?;
        let changes = compare_packs(before, &outline_of(&publication));
        let page = render_changes_page(&publication, &earlier.when, &changes, None)?;
        families.insert(format!("{}{CHANGES_PAGE}", edition.folder), page);
        if at == 0 {
            let page = render_changes_page(&publication, &earlier.when, &changes, Some(way))?;
            teachers.insert(CHANGES_PAGE.to_owned(), page);
            counts = (changes.new.len(), changes.changed.len(), changes.gone.len());
        }
    }
    Ok(ChangesPages { families, teachers, counts })
}

fn outline_of(publication: &Publication<'_>) -> PackOutline {
    outline_pack(publication.pack, &publication.plans, &publication.words)
}

/// An edition in a language that there was none in.
fn nothing_in(language: &str) -> PackOutline {
    PackOutline {
        language: language.to_owned(),
        is_for_families: true,
        facts: Vec::new(),
        sessions: Vec::new(),
    }
}

/// The latest date that a session of the pack gives for its standing, if any does.
pub fn latest_date(pack: &Pack) -> Option<Date> {
    let standings = pack.sessions.iter().filter_map(|session| session.standing.as_ref());
    standings.filter_map(|standing| standing.on.as_ref()).map(|on| on.value).max()
}
