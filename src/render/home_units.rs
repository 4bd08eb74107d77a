//! A unit as a home does it: on the days that the whole class has, without the sessions that don’t fit there.

use crate::pack::{Session, SessionId, Unit};
use crate::place::Placed;
use crate::plan::unit::UnitDays;
use crate::read::Line;

/// The unit for the sessions that a home can do; `None` where it can do none. What to gather by which week is
/// kept for the things that those sessions ask for by that name.
pub(super) fn unit_of_home(unit: &Unit, days: &UnitDays, sessions: &[Session]) -> Option<Unit> {
    let is_done = |id: &SessionId| sessions.iter().any(|session| session.id == *id);
    let mut own = days.hold(unit, &is_done)?;
    let is_asked = |thing: &Placed<Line>| {
        let mut needs = sessions.iter().flat_map(|session| &session.needs);
        needs.any(|need| need.name.value == thing.value)
    };
    own.gather.iter_mut().for_each(|step| step.things.retain(is_asked));
    own.gather.retain(|step| !step.things.is_empty());
    Some(own)
}
