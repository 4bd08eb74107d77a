//! Everything a family gathers once for the whole pack: each thing with the largest count any
//! session asks for, the sessions that use it, and what can stand in.

use std::collections::BTreeMap;

use crate::pack::{Need, Pack, SessionId, Substitute};

/// One thing to gather.
#[derive(Clone, Debug)]
pub struct Gathered {
    pub name: String,
    pub plural: String,
    /// The most that any one session needs at once.
    pub count: u32,
    /// Every session that uses it works without.
    pub optional: bool,
    pub household: bool,
    /// Sessions that use it, in the order of their ids.
    pub sessions: Vec<SessionId>,
    /// What can stand in, each named once.
    pub substitutes: Vec<Substitute>,
}

/// The things of a pack, by name.
#[derive(Clone, Debug)]
pub struct GatherPlan {
    pub things: Vec<Gathered>,
}

/// Gathers the needs of every session that is offered.
pub fn plan_gathering(pack: &Pack) -> GatherPlan {
    let mut things: BTreeMap<String, Gathered> = BTreeMap::new();
    for session in pack.sessions.iter().filter(|session| !session.is_retired()) {
        for need in &session.needs {
            let thing = things.entry(need.name.to_string()).or_insert_with(|| begin(need));
            thing.count = thing.count.max(need.count);
            thing.optional &= need.optional;
            if thing.sessions.last() != Some(&session.id) {
                thing.sessions.push(session.id.clone());
            }
            add_substitutes(thing, &need.substitutes);
        }
    }
    GatherPlan { things: things.into_values().collect() }
}

fn begin(need: &Need) -> Gathered {
    Gathered {
        name: need.name.to_string(),
        plural: need.plural.clone(),
        count: 0,
        optional: true,
        household: need.is_household(),
        sessions: Vec::new(),
        substitutes: Vec::new(),
    }
}

fn add_substitutes(thing: &mut Gathered, substitutes: &[Substitute]) {
    for substitute in substitutes {
        if thing.substitutes.iter().all(|known| known.thing.value != substitute.thing.value) {
            thing.substitutes.push(substitute.clone());
        }
    }
}
