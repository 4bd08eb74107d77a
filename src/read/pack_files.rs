//! The files a department writes once for the whole pack: pack.yaml, equipment.yaml, curriculum.yaml.

use super::allowance_file::AllowDoc;
use super::print_choices::PrintDoc;
use super::record::record;
use super::session_file::SubstituteDoc;
use super::text::{Line, Prose};
use super::words::Paper;
use crate::place::Placed;
use crate::quantity::{Ages, Decimal, Length, Mass, Range};

record! {
    /// What a department says once for all its sessions.
    pub struct PackDoc = "pack.yaml" {
        /// What the pack is called.
        title: Placed<Line> = "PE at home from Hollin Staithe",
        /// The school.
        school: Option<Placed<Line>> = "Hollin Staithe School",
        /// The language the sessions are written in, as a BCP 47 tag.
        language: Option<Placed<Line>> = "en-GB",
        /// Other languages that pages and sheets are made in, as BCP 47 tags; those of translations are added.
        languages: Vec<Placed<Line>> = "fr",
        /// A4 or Letter.
        paper: Option<Placed<Paper>>,
        /// The front page's words to families.
        welcome: Option<Placed<Prose>> = "Hello to everyone at home.",
        /// The usual cautions, shown in every session.
        cautions: Vec<Placed<Prose>> = "Clear the floor first.",
        /// Whom to ask.
        contact: Option<Placed<Line>> = "Leave a question for the PE teachers at the school office",
        /// Where the pages will stand on the web.
        address: Option<Placed<Line>> = "https://pe.hollin-staithe.example/",
        /// The licence of every session that names none.
        licence: Option<Placed<Line>> = "CC-BY-4.0",
        /// Who made the sessions that name nobody.
        credit: Option<Placed<Line>> = "Hollin Staithe School",
        /// The metabolic equivalent that moderate begins at, 4 where it is not said.
        moderate_from: Option<Placed<Decimal>>,
        /// The height of a usual room, 2.3 m where it is not said.
        room_height: Option<Placed<Length>>,
        /// The ink that a page may take, in per cent of it, 10 where it is not said.
        ink_budget: Option<Placed<Decimal>>,
        /// What is printed, and how.
        print: Option<PrintDoc>,
        /// Other packs that sessions are borrowed from.
        draws_on: Vec<NeighbourDoc>,
        /// Findings of inspect that are known and meant to stay, anywhere in the pack.
        allow: Vec<AllowDoc>,
    }
}

record! {
    /// A pack that sessions are borrowed from.
    pub struct NeighbourDoc = "a neighbour’s pack" {
        /// The name that sessions borrow by.
        name: Placed<Line> = "saltmarsh",
        /// Its folder: set aside inside this pack, or right beside it.
        folder: Placed<Line> = "_neighbours/saltmarsh",
    }
}

record! {
    /// The shared list of equipment.
    pub struct EquipmentDoc = "equipment.yaml" {
        /// Every thing the sessions share.
        equipment: Vec<ThingDoc>,
    }
}

record! {
    /// A thing of the shared list.
    pub struct ThingDoc = "a thing of the shared list" {
        /// What it is called.
        name: Placed<Line> = "beanbag",
        /// Its name for more than one.
        plural: Option<Placed<Line>> = "beanbags",
        /// Its mass.
        mass: Option<Placed<Range<Mass>>>,
        /// Its longest side.
        size: Option<Placed<Range<Length>>>,
        /// Whether it is soft.
        soft: Option<Placed<bool>>,
        /// What else it is: flat, round, see-through …
        is: Vec<Placed<Line>> = "flat",
        /// Whether it is lifted as a weight.
        weight: Option<Placed<bool>>,
        /// How a weight is held and closed securely.
        grip: Option<Placed<Line>> = "Screw the lid tight and hold the bottle round its neck.",
        /// How many a usual home has; where it is not said, enough.
        at_home: Option<Placed<u32>>,
        /// Whether every home has it.
        household: Option<Placed<bool>>,
        /// What can stand in for it.
        instead: Vec<SubstituteDoc>,
    }
}

record! {
    /// The department's curriculum list.
    pub struct CurriculumDoc = "curriculum.yaml" {
        /// What the list is called.
        title: Placed<Line> = "Physical education, key stage 2",
        /// Where it comes from.
        source: Option<Placed<Line>> = "National curriculum in England, physical education programmes of study",
        /// Its licence.
        licence: Option<Placed<Line>> = "OGL-UK-3.0",
        /// The school’s year groups, so that coverage is told by them.
        year_groups: Vec<YearGroupDoc>,
        /// Its statements.
        statements: Vec<StatementDoc>,
    }
}

record! {
    /// A year group.
    pub struct YearGroupDoc = "a year group" {
        /// What it is called.
        name: Placed<Line> = "Year 4",
        /// The ages of its children over the school year.
        ages: Placed<Ages>,
    }
}

record! {
    /// One statement of the curriculum.
    pub struct StatementDoc = "a curriculum statement" {
        /// The code that sessions name.
        code: Placed<Line> = "ks2-jump",
        /// What it says.
        says: Placed<Line> = "use running, jumping, throwing and catching in isolation and in combination",
        /// The ages it is for.
        ages: Option<Placed<Ages>>,
    }
}
