//! Which versions of a part can be done safely in a home, on which floors, and if on none, why.

use super::model::{Model, PartModel, Version, WantModel};
use super::stock::Cupboard;
use crate::homes::{Home, HomeFloor, HomeNeed};
use crate::pack::{Alternative, Pack, Part, PartKind, Session, Space};
use crate::plan::slot_fit::{Lengths, PartOffer};
use crate::plan::{Footprint, fit_on_floor, offer_of, plan_flights, plan_footprint, total_of};
use crate::quantity::{Duration, Length};
use crate::read::words::{Movement, Suited, Whereabouts};

/// What a session asks, reckoned once for all homes.
#[derive(Debug)]
pub(super) struct SessionFacts<'p> {
    pub session: &'p Session,
    pub parts: Vec<PartFacts<'p>>,
    pub wants: Vec<WantModel>,
    /// The height of a usual room, where a home doesn’t say.
    room_height: Length,
}

#[derive(Debug)]
pub(super) struct PartFacts<'p> {
    pub part: &'p Part,
    pub offer: PartOffer,
    pub versions: Vec<PartVersion<'p>>,
}

/// A part as written, or another version of it.
#[derive(Debug)]
pub(super) struct PartVersion<'p> {
    /// None for the part as written.
    pub alternative: Option<&'p Alternative>,
    /// None where neither the part nor the session says anything of the floor.
    footprint: Option<Footprint>,
    /// The needs it uses.
    uses: Vec<usize>,
    /// How many people besides the child it takes.
    helpers: u32,
}

/// Why a version, or a whole part, can’t be done in a home.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// It is not done sitting.
    Seated,
    /// So many more people are needed, to join in or stay near.
    Helpers(u32),
    /// The home has no floor in such a place.
    Place(Whereabouts),
    /// Feet come down indoors.
    Noise,
    /// What is underfoot doesn’t suit, or isn’t known.
    Surface,
    Headroom(Length),
    /// No floor is so long and wide.
    Floor(Length, Length),
    /// Needs by their index, and how many are missing of each.
    Things(Vec<(usize, u32)>),
    /// What is kept is worth more in the time there is.
    Time,
    /// What must stay takes longer than there is time.
    Short,
}

/// The floors of a home that a version fits, or why it fits none.
pub(super) type Refused = Result<Vec<usize>, Why>;

impl<'p> SessionFacts<'p> {
    pub fn of(session: &'p Session, pack: &Pack, cupboard: &mut Cupboard) -> Self {
        let flights = plan_flights(session, pack.room_height);
        let parts = session.parts.iter().zip(flights).enumerate().map(|(index, (part, flight))| {
            let headroom = flight.map(|flight| flight.headroom);
            PartFacts {
                part,
                offer: offer_up_to_usual(part),
                versions: plan_versions(session, index, headroom),
            }
        });
        Self {
            session,
            parts: parts.collect(),
            wants: cupboard.wants_of(session),
            room_height: pack.room_height,
        }
    }

    /// The question in numbers, and for each part the versions it is asked about: their indices.
    pub fn model(&self, home: &Home, stock: Vec<u32>) -> (Model, Vec<Vec<usize>>) {
        let (parts, versions) = self.parts.iter().map(|part| self.model_part(part, home)).unzip();
        let usual: Duration = self.session.parts.iter().map(usual_length).sum();
        let slot = home.minutes.min(self.session.slot.value.max(usual));
        (Model { parts, wants: self.wants.clone(), stock, slot }, versions)
    }

    fn model_part(&self, part: &PartFacts<'_>, home: &Home) -> (PartModel, Vec<usize>) {
        let done = |(index, version): (usize, &PartVersion<'_>)| {
            self.floors_for(part, version, home).ok().map(|_| {
                let change = change_of(version, home);
                (Version { change, uses: version.uses.clone() }, index)
            })
        };
        let (versions, indices) = part.versions.iter().enumerate().filter_map(done).unzip();
        let is_main = !matches!(part.part.kind, PartKind::WarmUp | PartKind::CoolDown);
        (PartModel { offer: part.offer, is_main, versions }, indices)
    }

    /// The floors that a version can be done on.
    pub fn floors_for(
        &self,
        part: &PartFacts<'_>,
        version: &PartVersion<'_>,
        home: &Home,
    ) -> Refused {
        check_people(version, home)?;
        let ask = |floor: &HomeFloor| self.check_floor(part, version, home, floor);
        let asked: Vec<Result<(), Why>> = home.floors.iter().map(ask).collect();
        let fitting: Vec<usize> = (0..asked.len()).filter(|at| asked[*at].is_ok()).collect();
        if !fitting.is_empty() {
            return Ok(fitting);
        }
        // The floor that comes nearest says most: reasons stand in the order in which they are looked at.
        let nearest = asked.into_iter().filter_map(Result::err).max_by_key(rank);
        Err(nearest.unwrap_or(Why::Floor(self.length(), self.width())))
    }

    fn check_floor(
        &self,
        part: &PartFacts<'_>,
        version: &PartVersion<'_>,
        home: &Home,
        floor: &HomeFloor,
    ) -> Result<(), Why> {
        let space = self.session.space.as_deref();
        check_place(space, floor)?;
        let is_quiet = version.is_for(Suited::Quiet) || version.is_for(Suited::Seated);
        let is_noisy = part.part.movements.iter().any(|movement| is_loud(movement.value));
        if home.has_need(HomeNeed::Quiet) && !floor.is_outdoors && is_noisy && !is_quiet {
            return Err(Why::Noise);
        }
        let footprint = version.footprint.as_ref();
        let own = footprint.and_then(|footprint| footprint.headroom);
        let asked = own.or(space.and_then(|space| space.height.as_ref().map(|h| h.value)));
        let height = floor.height.unwrap_or(self.room_height);
        if let Some(asked) = asked.filter(|asked| !floor.is_outdoors && *asked > height) {
            return Err(Why::Headroom(asked));
        }
        match footprint {
            Some(asked) if fit_on_floor(&asked.outline, &floor.floor).is_none() => {
                let (width, length) = asked.size();
                Err(Why::Floor(length.max(width), length.min(width)))
            }
            _ => Ok(()),
        }
    }

    fn length(&self) -> Length {
        self.session.space.as_ref().map_or(Length::default(), |space| space.length.value)
    }

    fn width(&self) -> Length {
        self.session.space.as_ref().map_or(Length::default(), |space| space.width.value)
    }
}

/// Which reason is nearer to being no hindrance.
const fn rank(why: &Why) -> u8 {
    match why {
        Why::Seated | Why::Helpers(_) => 0,
        Why::Place(_) => 1,
        Why::Surface => 2,
        Why::Noise => 3,
        Why::Headroom(_) => 4,
        _ => 5,
    }
}

impl PartVersion<'_> {
    pub fn is_for(&self, suited: Suited) -> bool {
        self.alternative.is_some_and(|other| other.is_for(suited))
    }
}

/// Every version of a part, as written first.
fn plan_versions(session: &Session, part: usize, headroom: Option<Length>) -> Vec<PartVersion<'_>> {
    let alternatives = session.parts[part].alternatives.iter().map(Some);
    let versions = std::iter::once(None).chain(alternatives);
    versions.map(|alternative| plan_version(session, part, alternative, headroom)).collect()
}

fn plan_version<'p>(
    session: &'p Session,
    index: usize,
    alternative: Option<&'p Alternative>,
    headroom: Option<Length>,
) -> PartVersion<'p> {
    let mut part = session.parts[index].clone();
    if let Some(space) = alternative.and_then(|other| other.space.as_ref()) {
        part.space = Some(space.clone());
    }
    let mut footprint = plan_footprint(&part).or_else(|| session_footprint(session, &part));
    if let Some(footprint) = &mut footprint {
        footprint.headroom = footprint.headroom.max(headroom);
    }
    let named = |name: &str| {
        let named = alternative.and_then(|other| other.needs.as_ref());
        named.is_none_or(|names| names.iter().any(|asked| asked.0 == name))
    };
    let is_used = |at: &usize| {
        let need = &session.needs[*at];
        (need.parts.is_empty() || need.parts.contains(&index)) && named(&need.name)
    };
    PartVersion {
        alternative,
        footprint,
        uses: (0..session.needs.len()).filter(is_used).collect(),
        helpers: helpers_for(session, &part, alternative),
    }
}

/// A part that says nothing of its floor takes all that the session asks for.
fn session_footprint(session: &Session, part: &Part) -> Option<Footprint> {
    let space = session.space.as_ref()?;
    let whole = crate::pack::PartSpace {
        kind: crate::place::Placed::new(crate::read::words::SpaceKind::Area, space.place),
        length: Some(space.length),
        width: Some(space.width),
        height: space.height,
        people: None,
        run_up: None,
        stopping: None,
        reach: None,
        margin: None,
        sector: None,
    };
    let space = Some(crate::place::Placed::new(whole, part.title.place));
    plan_footprint(&Part { space, ..part.clone() })
}

/// Partners, and the adult that the session or the part asks for.
fn helpers_for(session: &Session, part: &Part, alternative: Option<&Alternative>) -> u32 {
    let is_for = |suited| alternative.is_some_and(|other| other.is_for(suited));
    let people = part.space.as_ref().and_then(|space| space.people.as_ref());
    let partners = people.map_or(0, |people| people.value.saturating_sub(1));
    let partners = if is_for(Suited::Alone) { 0 } else { partners };
    let partners = partners.max(u32::from(is_for(Suited::Partner)));
    let adult = u32::from(session.adult.is_some() || part.adult.is_some());
    partners.max(adult)
}

fn check_people(version: &PartVersion<'_>, home: &Home) -> Result<(), Why> {
    let is_seated = version.is_for(Suited::Seated);
    if home.has_need(HomeNeed::Seated) && !is_seated {
        return Err(Why::Seated);
    }
    match version.helpers.saturating_sub(home.helpers) {
        0 => Ok(()),
        more => Err(Why::Helpers(more)),
    }
}

/// As written is best, but for a child whom another version is made for.
fn change_of(version: &PartVersion<'_>, home: &Home) -> u32 {
    let is_made_for = home.has_need(HomeNeed::LowVision) && version.is_for(Suited::LowVision);
    u32::from(version.alternative.is_some() && !is_made_for)
}

/// Running, and whatever lands.
const fn is_loud(movement: Movement) -> bool {
    movement.lands() || matches!(movement, Movement::Running)
}

fn check_place(space: Option<&Space>, floor: &HomeFloor) -> Result<(), Why> {
    let Some(space) = space else { return Ok(()) };
    let place = if floor.is_outdoors { Whereabouts::Outdoors } else { Whereabouts::Indoors };
    if !space.whereabouts.contains(&place) {
        return Err(Why::Place(space.whereabouts[0]));
    }
    let suits = floor.surface.is_some_and(|surface| space.surfaces.contains(&surface));
    if space.surfaces.is_empty() || suits { Ok(()) } else { Err(Why::Surface) }
}

pub(super) fn usual_length(part: &Part) -> Duration {
    part.time.as_ref().map_or(Duration::ZERO, |time| total_of(time))
}

/// The part’s lengths without those longer than its usual one.
fn offer_up_to_usual(part: &Part) -> PartOffer {
    let offer = offer_of(part);
    let Lengths { least, step, .. } = offer.lengths;
    let steps = usual_length(part).seconds().saturating_sub(least.seconds());
    let count = steps.checked_div(step.seconds()).unwrap_or(0);
    PartOffer { lengths: Lengths { least, step, count }, ..offer }
}
