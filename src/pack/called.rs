//! What things are called in another language, learnt from what is translated: a thing then has one name on all
//! pages of that language, also where a session stays in the original’s, and is gathered once.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::{Need, Pack, Session, Substitute, Thing, Translation, Unit};
use crate::place::Placed;
use crate::read::Line;

/// A name and its plural.
type Name = (Placed<Line>, String);

/// By what things are called in the original.
#[derive(Clone, Debug, Default)]
pub struct ThingsCalled(BTreeMap<String, Name>);

impl ThingsCalled {
    /// From the shared list and the sessions, each beside its translation: things stand in the same order in both.
    /// Of two names for one thing the first is taken.
    pub(super) fn learn(pack: &Pack, translation: &Translation) -> Self {
        let mut names = Self::default();
        for (name, called) in &translation.things {
            if let Some(thing) = pack.things.get(name) {
                names.note_thing(thing, called);
            }
        }
        for called in &translation.sessions {
            if let Some(at) = pack.find_session(called.id.as_str()) {
                for (need, called) in pack.sessions[at].needs.iter().zip(&called.needs) {
                    names.note_need(need, called);
                }
            }
        }
        names
    }

    fn note_need(&mut self, need: &Need, called: &Need) {
        self.note(&need.name, (&called.name, &called.plural));
        self.note_substitutes(&need.substitutes, &called.substitutes);
    }

    fn note_thing(&mut self, thing: &Thing, called: &Thing) {
        self.note(&thing.name, (&called.name, &called.plural));
        self.note_substitutes(&thing.substitutes, &called.substitutes);
    }

    fn note_substitutes(&mut self, substitutes: &[Substitute], called: &[Substitute]) {
        for (substitute, called) in substitutes.iter().zip(called) {
            self.note(&substitute.thing, (&called.thing, &called.plural));
        }
    }

    fn note(&mut self, name: &Placed<Line>, (called, plural): (&Placed<Line>, &String)) {
        if name.value != called.value {
            let known = self.0.entry(name.to_string());
            known.or_insert_with(|| (called.clone(), plural.clone()));
        }
    }

    /// Calls the things of a session by the names that are known; those that have others stay, and so does a
    /// session that has none of them.
    pub(super) fn call_in(&self, session: &mut Arc<Session>) {
        if !session.needs.iter().any(|need| self.knows(need)) {
            return;
        }
        let session = Arc::make_mut(session);
        for need in &mut session.needs {
            self.call(&mut need.name, &mut need.plural);
            self.call_substitutes(&mut need.substitutes);
            if let Some(thing) = &mut need.thing {
                let thing = Arc::make_mut(thing);
                self.call(&mut thing.name, &mut thing.plural);
                self.call_substitutes(&mut thing.substitutes);
            }
        }
    }

    /// Calls what a unit gathers step by step by the names that are known.
    pub(super) fn call_in_unit(&self, unit: &mut Unit) {
        for thing in unit.gather.iter_mut().flat_map(|step| &mut step.things) {
            if let Some((called, _)) = self.0.get(&thing.value.0) {
                *thing = called.clone();
            }
        }
    }

    /// Whether a thing has this name in the language, and not in the original.
    pub fn has(&self, name: &str) -> bool {
        self.0.values().any(|(called, plural)| called.value.0 == name || plural == name)
    }

    fn knows(&self, need: &Need) -> bool {
        let of_list = need.thing.iter().flat_map(|thing| &thing.substitutes);
        let others = need.substitutes.iter().chain(of_list).map(|other| &other.thing);
        std::iter::once(&need.name).chain(others).any(|name| self.0.contains_key(&name.value.0))
    }

    fn call_substitutes(&self, substitutes: &mut [Substitute]) {
        for substitute in substitutes {
            self.call(&mut substitute.thing, &mut substitute.plural);
        }
    }

    fn call(&self, name: &mut Placed<Line>, plural: &mut String) {
        if let Some((called, many)) = self.0.get(&name.value.0) {
            *name = called.clone();
            many.clone_into(plural);
        }
    }
}
