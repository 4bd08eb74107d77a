//! Stage five, render: pack and plans → an ordered map of path → bytes. The mini-site and the
//! printed sheets are two renderers over the same plans; neither touches the disk.

pub mod equipment_phrases;
pub mod flight_phrases;
pub mod house;
pub mod phrases;
pub mod plan_phrases;
pub mod print;
pub mod site;

use std::collections::BTreeMap;
use std::fmt;
use std::sync::Arc;

use crate::pack::{Pack, SessionId};
use crate::plan::{GatherPlan, GatherSet, Plans, plan_gather_set, plan_gathering, plan_session};
use crate::words::Words;
use house::House;

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
    /// Called once for each session that a renderer has finished.
    pub on_session: &'p (dyn Fn() + Sync),
}

impl fmt::Debug for Publication<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Publication").field("pack", &self.pack.title).finish_non_exhaustive()
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

/// The printed sheets of a session, in the order they are offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sheet {
    Cards,
    HomeGuide,
    Record,
    Review,
}

impl Sheet {
    pub const ALL: [Self; 4] = [Self::Cards, Self::HomeGuide, Self::Record, Self::Review];

    const fn file(self) -> &'static str {
        match self {
            Self::Cards => "cards.pdf",
            Self::HomeGuide => "home-guide.pdf",
            Self::Record => "record.pdf",
            Self::Review => "review.pdf",
        }
    }

    /// The path of a session's sheet below the published folder.
    pub fn path(self, session: &SessionId) -> String {
        format!("print/{session}/{}", self.file())
    }

    /// The key of its name in the catalogue of words.
    pub const fn word_key(self) -> &'static str {
        match self {
            Self::Cards => "sheet-cards",
            Self::HomeGuide => "sheet-home-guide",
            Self::Record => "sheet-record",
            Self::Review => "sheet-review",
        }
    }
}

/// The path of the sheet with what to gather once for the whole pack.
pub const GATHER_SHEET: &str = "print/gather.pdf";

/// The path of a session's page below the published folder.
pub fn page_path(session: &SessionId) -> String {
    format!("sessions/{session}.html")
}

/// Renders the mini-site and the sheets of a whole pack.
///
/// # Errors
/// Where a template or other file of the pack's own look can't be used.
pub fn render_pack(pack: &Pack, on_session: &(dyn Fn() + Sync)) -> Result<Bundle, RenderFault> {
    with_publication(pack, on_session, |publication| {
        let mut bundle = site::render_site(publication)?;
        bundle.append(&mut print::render_sheets(publication)?);
        Ok(bundle)
    })
}

/// Renders the sheets alone.
///
/// # Errors
/// Where a font or label of the pack's own look can't be used.
pub fn render_sheets_of(pack: &Pack) -> Result<Bundle, RenderFault> {
    with_publication(pack, &|| (), print::render_sheets)
}

/// Renders the activity cards alone.
///
/// # Errors
/// Where a font or label of the pack's own look can't be used.
pub fn render_cards_of(pack: &Pack) -> Result<Bundle, RenderFault> {
    with_publication(pack, &|| (), print::render_cards)
}

fn with_publication(
    pack: &Pack,
    on_session: &(dyn Fn() + Sync),
    render: impl Fn(&Publication<'_>) -> Result<Bundle, RenderFault>,
) -> Result<Bundle, RenderFault> {
    let house = House::new(&pack.look);
    let publication = Publication {
        pack,
        plans: pack.sessions.iter().map(|session| plan_session(session, pack)).collect(),
        gathering: plan_gathering(pack),
        gather_set: plan_gather_set(pack),
        words: Arc::new(house.words(&pack.language)?),
        house,
        on_session,
    };
    render(&publication)
}
