//! Stage five, render: pack and plans → an ordered map of path → bytes. The mini-site and the
//! printed sheets are two renderers over the same plans; neither touches the disk.

mod changes;
pub mod class_pages;
pub mod equipment_phrases;
pub mod fit_phrases;
pub mod flight_phrases;
mod home_pack;
pub mod house;
mod ink_report;
pub mod no_printer;
pub mod phrases;
pub mod plan_phrases;
pub mod print;
pub mod progress;
pub mod quantities;
mod sheet;
pub mod site;

use std::collections::BTreeMap;
use std::fmt;
use std::sync::Arc;

use crate::edition::{RECORD, outline_pack, write_record};
use crate::pack::{Pack, SessionId};
use crate::plan::{GatherPlan, GatherSet, Plans, plan_gather_set, plan_gathering, plan_session};
use crate::words::Words;
pub use changes::{
    CHANGES_PAGE, ChangesPages, Earlier, latest_date, outline_languages, render_changes,
};
use house::House;
pub use ink_report::{InkReport, ink_by_sheet, sheets_over};
pub use sheet::Sheet;

/// Every file to publish, by its path below the target folder.
pub type Bundle = BTreeMap<String, Vec<u8>>;

/// What both renderers work from.
pub struct Publication<'p> {
    pub pack: &'p Pack,
    /// The plans of each session, in the order of `pack.sessions`.
    pub plans: Vec<Plans>,
    pub gathering: GatherPlan,
    pub gather_set: GatherSet,
    pub words: Arc<Words>,
    pub house: House<'p>,
    /// Every language that the pack is published in, its own first.
    pub editions: Vec<Edition>,
    /// Which of them this is.
    pub edition: usize,
    /// Called once for each session that a renderer has finished.
    pub on_session: &'p (dyn Fn() + Sync),
}

impl fmt::Debug for Publication<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Publication").field("pack", &self.pack.title).finish_non_exhaustive()
    }
}

/// One of the languages that a pack is published in.
#[derive(Clone, Debug)]
pub struct Edition {
    /// A BCP 47 tag.
    pub language: String,
    /// Its name in itself: “Français”.
    pub name: String,
    /// The folder that it stands in, with a slash; nothing for the pack’s own, which stands at the top.
    pub folder: String,
}

impl<'p> Publication<'p> {
    /// Plans a whole pack, to be published in its own language alone.
    ///
    /// # Errors
    /// Where the labels of the pack's own look can't be read.
    pub fn of(pack: &'p Pack, on_session: &'p (dyn Fn() + Sync)) -> Result<Self, RenderFault> {
        let own = editions_of(pack)?.into_iter().take(1).collect();
        Self::of_edition(pack, own, 0, on_session)
    }

    fn of_edition(
        pack: &'p Pack,
        editions: Vec<Edition>,
        edition: usize,
        on_session: &'p (dyn Fn() + Sync),
    ) -> Result<Self, RenderFault> {
        let house = House::new(&pack.look);
        Ok(Self {
            pack,
            plans: pack.sessions.iter().map(|session| plan_session(session, pack)).collect(),
            gathering: plan_gathering(pack),
            gather_set: plan_gather_set(pack),
            words: Arc::new(house.words(&pack.language)?),
            house,
            editions,
            edition,
            on_session,
        })
    }
}

/// Why a pack could not be rendered: only a pack's own look can cause it.
#[derive(Debug)]
pub struct RenderFault {
    pub file: String,
    pub says: String,
}

impl fmt::Display for RenderFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.file, self.says)
    }
}

/// The path of the sheet with what to gather once for the whole pack.
pub const GATHER_SHEET: &str = "print/gather.pdf";

/// The path of a session's page below the published folder.
pub fn page_path(session: &SessionId) -> String {
    format!("sessions/{session}.html")
}

/// All that a pack becomes.
#[derive(Debug)]
pub struct Rendering {
    pub bundle: Bundle,
    pub ink: InkReport,
}

/// Renders the mini-site and the sheets of a whole pack.
///
/// # Errors
/// Where a template or other file of the pack's own look can't be used.
pub fn render_pack(pack: &Pack, on_session: &(dyn Fn() + Sync)) -> Result<Rendering, RenderFault> {
    let editions = editions_of(pack)?;
    let mut whole = render_edition(pack, &editions, 0, on_session)?;
    for edition in 1..editions.len() {
        let translated = pack.in_language(&editions[edition].language);
        let rendered = render_edition(&translated, &editions, edition, &|| {})?;
        let folder = &editions[edition].folder;
        let files = rendered.bundle.into_iter();
        // The ink is told of the pack’s own language: the others say the same in as many words.
        whole.bundle.extend(files.map(|(path, bytes)| (format!("{folder}{path}"), bytes)));
    }
    Ok(whole)
}

/// Renders the pages for teachers, in the pack’s own language, for a folder of their own; `families`
/// leads from there to the families’ folder: `../published/`.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_teacher_folder(pack: &Pack, families: &str) -> Result<Bundle, RenderFault> {
    let editions = editions_of(pack)?;
    with_publication(pack, &editions, 0, &|| (), |publication| {
        site::render_teacher_pages(publication, families)
    })
}

/// Renders the sheets of the pack’s own language alone.
///
/// # Errors
/// Where a font or label of the pack's own look can't be used.
pub fn render_sheets_of(pack: &Pack) -> Result<Bundle, RenderFault> {
    let editions = editions_of(pack)?;
    with_publication(pack, &editions, 0, &|| (), |publication| {
        print::render_sheets(publication).map(|(bundle, _)| bundle)
    })
}

/// Renders the activity cards of the pack’s own language alone.
///
/// # Errors
/// Where a font or label of the pack's own look can't be used.
pub fn render_cards_of(pack: &Pack) -> Result<Bundle, RenderFault> {
    let editions = editions_of(pack)?;
    with_publication(pack, &editions, 0, &|| (), print::render_cards)
}

/// The pack’s own language and the others it asks for or has translations in.
fn editions_of(pack: &Pack) -> Result<Vec<Edition>, RenderFault> {
    let house = House::new(&pack.look);
    let others = pack.languages.iter().map(|language| (language, format!("{language}/")));
    std::iter::once((&pack.language.value, String::new()))
        .chain(others)
        .map(|(language, folder)| {
            let name = if house.has_words(language) {
                house.words(language)?.say("language-name")
            } else {
                language.clone()
            };
            Ok(Edition { language: language.clone(), name, folder })
        })
        .collect()
}

/// The pages and sheets of one language, by their paths below its folder.
fn render_edition(
    pack: &Pack,
    editions: &[Edition],
    edition: usize,
    on_session: &(dyn Fn() + Sync),
) -> Result<Rendering, RenderFault> {
    with_publication(pack, editions, edition, on_session, |publication| {
        let mut bundle = site::render_site(publication)?;
        let (mut sheets, ink) = print::render_sheets(publication)?;
        bundle.append(&mut sheets);
        bundle.append(&mut no_printer::render_texts(publication));
        let outline = outline_pack(publication.pack, &publication.plans, &publication.words);
        bundle.insert(RECORD.to_owned(), write_record(&outline, true));
        Ok(Rendering { bundle, ink })
    })
}

fn with_publication<T>(
    pack: &Pack,
    editions: &[Edition],
    edition: usize,
    on_session: &(dyn Fn() + Sync),
    render: impl FnOnce(&Publication<'_>) -> Result<T, RenderFault>,
) -> Result<T, RenderFault> {
    render(&Publication::of_edition(pack, editions.to_vec(), edition, on_session)?)
}
