//! Stage five, render: pack and plans → an ordered map of path → bytes. The mini-site and the
//! printed sheets are two renderers over the same plans; neither touches the disk.

pub mod borrowed_phrases;
mod changes;
pub mod class_pages;
pub mod equipment_phrases;
pub mod figure_phrases;
pub mod fit_phrases;
pub mod flight_phrases;
mod home_pack;
mod home_units;
pub mod house;
mod ink_report;
pub mod key;
mod near;
pub mod no_printer;
mod order;
mod parcels;
pub mod phrases;
pub mod plan_phrases;
pub mod print;
pub mod progress;
pub mod quantities;
mod sheet;
pub mod shelf;
pub mod site;
pub mod unit;

use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Arc, OnceLock};

use rayon::prelude::*;

use crate::edition::{RECORD, outline_session, outline_shared, write_parts, write_session};
use crate::pack::{Pack, SessionId};
use crate::plan::unit::{UnitDays, UnitPlan, plan_unit};
use crate::plan::{GatherPlan, GatherSet, Plans, plan_gather_set, plan_gathering, plan_session};
use crate::words::Words;
pub use changes::{
    CHANGES_PAGE, ChangesPages, Earlier, latest_date, outline_languages, render_changes,
};
use house::House;
pub use ink_report::{InkReport, ink_by_sheet, sheets_over};
pub use order::Order;
pub use parcels::{render_cartridge, render_epub};
pub use sheet::Sheet;
use shelf::find_or_note;

/// Every file to publish, by its path below the target folder.
pub type Bundle = BTreeMap<String, Vec<u8>>;

/// What both renderers work from.
pub struct Publication<'p> {
    pub pack: &'p Pack,
    /// The plans of each session, in the order of `pack.sessions`.
    pub plans: Vec<Arc<Plans>>,
    pub words: Arc<Words>,
    pub house: House<'p>,
    /// Every language that the pack is published in, its own first.
    pub editions: Vec<Edition>,
    /// Which of them this is.
    pub edition: usize,
    pub order: Order<'p>,
    /// Planned when first asked for.
    pub gathered: Gathered,
}

/// What is reckoned once for a whole edition: what there is to gather, the units, and the marks of its sessions.
#[derive(Debug, Default)]
pub struct Gathered {
    gathering: OnceLock<GatherPlan>,
    gather_set: OnceLock<GatherSet>,
    units: OnceLock<Vec<UnitPlan>>,
    near: OnceLock<near::Near>,
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
    pub fn of(pack: &'p Pack) -> Result<Self, RenderFault> {
        let own = editions_of(pack)?.into_iter().take(1).collect();
        Self::of_edition(pack, plans_of(pack), (own, 0), Order::default())
    }

    fn of_edition(
        pack: &'p Pack,
        plans: Vec<Arc<Plans>>,
        (editions, edition): (Vec<Edition>, usize),
        order: Order<'p>,
    ) -> Result<Self, RenderFault> {
        let house = House::new(&pack.look);
        let words = house.kept_words(&pack.language)?;
        let gathered = Gathered::default();
        Ok(Self { pack, plans, words, house, editions, edition, order, gathered })
    }

    /// Everything that a family gathers, thing by thing.
    pub fn gathering(&self) -> &GatherPlan {
        self.gathered.gathering.get_or_init(|| plan_gathering(self.pack))
    }

    /// The smallest set that serves every session.
    pub fn gather_set(&self) -> &GatherSet {
        self.gathered.gather_set.get_or_init(|| plan_gather_set(self.pack))
    }

    /// The plan of each unit, in the order of `pack.units`.
    pub fn units(&self) -> &[UnitPlan] {
        let plan = || self.pack.units.iter().map(|unit| plan_unit(unit, self.pack)).collect();
        self.gathered.units.get_or_init(plan)
    }

    /// The days of each unit, to be held fast elsewhere.
    fn days_of_units(&self) -> Vec<UnitDays> {
        self.units().iter().map(|plan| UnitDays::of(plan, self.pack)).collect()
    }

    /// Whether a file is wanted, by its path below the folder of this language.
    pub fn wants(&self, path: &str) -> bool {
        self.order.wants(&format!("{}{path}", self.editions[self.edition].folder))
    }

    /// Whether something below a folder of this language is wanted.
    pub fn wants_below(&self, folder: &str) -> bool {
        self.order.wants_below(&format!("{}{folder}", self.editions[self.edition].folder))
    }

    /// Whether a page at the top is wanted: one that is not of a single session.
    pub fn wants_common(&self) -> bool {
        self.order.only.is_none_or(|only| {
            let own = only.strip_prefix(self.editions[self.edition].folder.as_str());
            own.is_none_or(|own| !own.starts_with("sessions/") && !own.starts_with("print/"))
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

/// The teachers’ sheet of every pose.
pub const POSES_SHEET: &str = "poses.pdf";

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
    render_order(pack, plans_of(pack), Order { on_session, ..Order::default() })
}

/// Renders what is asked for. The plans are those of the sessions, in their order.
///
/// # Errors
/// Where a template or other file of the pack's own look can't be used.
pub fn render_order(
    pack: &Pack,
    plans: Vec<Arc<Plans>>,
    order: Order<'_>,
) -> Result<Rendering, RenderFault> {
    let editions = editions_of(pack)?;
    let is_other = |folder: &str| order.only.is_some_and(|only| only.starts_with(folder));
    let other = editions.iter().skip(1).any(|edition| is_other(&edition.folder));
    let mut whole = Rendering { bundle: Bundle::new(), ink: InkReport::new() };
    if !other {
        whole = render_edition(pack, plans, (&editions, 0), order)?;
    }
    let days = OnceCell::new();
    for edition in 1..editions.len() {
        let folder = &editions[edition].folder;
        if !order.wants_below(folder) {
            continue;
        }
        let mut translated = pack.in_language(&editions[edition].language);
        hold_days(&mut translated, days.get_or_init(|| plan_days_of(pack)));
        let order = Order { on_session: &|| {}, ..order };
        let plans = plans_of(&translated);
        let rendered = render_edition(&translated, plans, (&editions, edition), order)?;
        let files = rendered.bundle.into_iter();
        // The ink is told of the pack’s own language: the others say the same in as many words.
        whole.bundle.extend(files.map(|(path, bytes)| (format!("{folder}{path}"), bytes)));
    }
    Ok(whole)
}

fn plan_days_of(pack: &Pack) -> Vec<UnitDays> {
    pack.units.iter().map(|unit| UnitDays::of(&plan_unit(unit, pack), pack)).collect()
}

/// Units in every language have the days of the pack’s own: things that are called otherwise in some sessions
/// would count as others, and sessions would change their days.
fn hold_days(pack: &mut Pack, days: &[UnitDays]) {
    for (unit, days) in pack.units.iter_mut().zip(days) {
        if let Some(held) = days.hold(unit, &|_| true) {
            *unit = held;
        }
    }
}

/// Plans every session of a pack.
pub fn plans_of(pack: &Pack) -> Vec<Arc<Plans>> {
    pack.sessions.par_iter().map(|session| Arc::new(plan_session(session, pack))).collect()
}

/// Renders the pages for teachers, in the pack’s own language, for a folder of their own; `families`
/// leads from there to the families’ folder: `../published/`. The plans are those of the sessions, in their
/// order.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_teacher_folder(
    pack: &Pack,
    plans: Vec<Arc<Plans>>,
    families: &str,
    order: Order<'_>,
) -> Result<Bundle, RenderFault> {
    let own = (editions_of(pack)?, 0);
    site::render_teacher_pages(&Publication::of_edition(pack, plans, own, order)?, families)
}

/// Renders the sheets of the pack’s own language alone.
///
/// # Errors
/// Where a font or label of the pack's own look can't be used.
pub fn render_sheets_of(pack: &Pack) -> Result<Bundle, RenderFault> {
    let editions = editions_of(pack)?;
    let own = (editions, 0);
    let publication = Publication::of_edition(pack, plans_of(pack), own, Order::default())?;
    print::render_sheets(&publication).map(|(bundle, _)| bundle)
}

/// Renders the activity cards of the pack’s own language alone.
///
/// # Errors
/// Where a font or label of the pack's own look can't be used.
pub fn render_cards_of(pack: &Pack) -> Result<Bundle, RenderFault> {
    let own = (editions_of(pack)?, 0);
    print::render_cards(&Publication::of_edition(pack, plans_of(pack), own, Order::default())?)
}

/// The pack’s own language and the others it asks for or has translations in.
fn editions_of(pack: &Pack) -> Result<Vec<Edition>, RenderFault> {
    let house = House::new(&pack.look);
    let others = pack.languages.iter().map(|language| (language, format!("{language}/")));
    std::iter::once((&pack.language.value, String::new()))
        .chain(others)
        .map(|(language, folder)| {
            let name = if house.has_words(language) {
                house.kept_words(language)?.say("language-name")
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
    plans: Vec<Arc<Plans>>,
    (editions, edition): (&[Edition], usize),
    order: Order<'_>,
) -> Result<Rendering, RenderFault> {
    let publication = Publication::of_edition(pack, plans, (editions.to_vec(), edition), order)?;
    let (site, (sheets, (mut texts, record))) = rayon::join(
        || site::render_site(&publication),
        || {
            let beside =
                || (no_printer::render_texts(&publication), write_edition(&publication, true));
            rayon::join(|| print::render_sheets(&publication), beside)
        },
    );
    let (mut bundle, (mut sheets, ink)) = (site?, sheets?);
    bundle.append(&mut sheets);
    bundle.append(&mut texts);
    bundle.extend(record.map(|record| (RECORD.to_owned(), record)));
    Ok(Rendering { bundle, ink })
}

/// The record of an edition, where it is wanted; a session’s part of it is looked for first.
fn write_edition(publication: &Publication<'_>, is_for_families: bool) -> Option<Vec<u8>> {
    publication.wants(RECORD).then_some(())?;
    let (pack, words) = (publication.pack, &publication.words);
    let what = if is_for_families { "outline" } else { "outline for teachers" };
    let sessions = pack.sessions.par_iter().zip(&publication.plans);
    // A retired session is no page for families.
    let parts: Vec<Vec<u8>> = sessions
        .filter(|(session, _)| !(session.is_retired() && is_for_families))
        .map(|(session, plans)| {
            let outline = || outline_session(session, plans, pack, words);
            let note = || write_session(&outline(), is_for_families);
            find_or_note(publication.near(what, session), note)
        })
        .collect();
    Some(write_parts(&outline_shared(pack, words), is_for_families, &parts))
}
