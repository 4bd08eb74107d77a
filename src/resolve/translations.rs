//! The pack’s other languages: translated documents → sessions and units under the ids of their originals, things
//! called as in that language.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::resolve_session;
use super::units::resolve_translated_unit;
use crate::figure::library::Library;
use crate::pack::{Need, Session, Substitute, Thing, Translation};
use crate::place::Files;
use crate::read::Written;
use crate::read::pack_files::PackDoc;
use crate::read::translation::{ThingNames, TranslatedDoc, TranslatedPack, TranslatedUnit};

/// By language tag.
pub(super) fn resolve_translations(
    (packs, units, sessions): (Vec<TranslatedPack>, Vec<TranslatedUnit>, Vec<TranslatedDoc>),
    (files, shared): (&Files, Option<&PackDoc>),
    (things, poses): (&BTreeMap<String, Arc<Thing>>, &Library),
) -> BTreeMap<String, Translation> {
    let mut translations: BTreeMap<String, Translation> = BTreeMap::new();
    let mut names: BTreeMap<String, BTreeMap<String, ThingNames>> = BTreeMap::new();
    for pack in packs {
        let entry = translations.entry(pack.language.clone()).or_default();
        entry.title = Some(pack.doc.title.to_string());
        entry.school = pack.doc.school.as_ref().map(ToString::to_string);
        entry.welcome = pack.doc.welcome;
        entry.cautions = pack.doc.cautions;
        entry.contact = pack.doc.contact;
        entry.things = things
            .iter()
            .filter_map(|(name, thing)| Some((name, called(thing, pack.things.get(name)?))))
            .map(|(name, thing)| (name.clone(), Arc::new(thing)))
            .collect();
        names.insert(pack.language, pack.things);
    }
    for translated in units {
        let (language, unit) = resolve_translated_unit(translated);
        translations.entry(language).or_default().units.push(unit);
    }
    for translated in sessions {
        let language = translated.language.clone();
        let shared_names = names.get(&language);
        let session =
            resolve_translated(translated, shared_names, (files, shared), (things, poses));
        translations.entry(language).or_default().sessions.push(session);
    }
    translations
}

fn resolve_translated(
    translated: TranslatedDoc,
    shared_names: Option<&BTreeMap<String, ThingNames>>,
    (files, shared): (&Files, Option<&PackDoc>),
    (things, poses): (&BTreeMap<String, Arc<Thing>>, &Library),
) -> Session {
    let TranslatedDoc { language, file, original, doc, things: names, is_old } = translated;
    let mut session = resolve_session(Written { file, doc }, files, shared, (things, poses));
    session.id = crate::pack::SessionId::of_path(&original);
    session.path = original;
    session.language = language;
    session.is_old_translation = is_old;
    for need in &mut session.needs {
        let name = need.name.value.0.clone();
        let own = names.get(&name);
        for names in shared_names.and_then(|shared| shared.get(&name)).into_iter().chain(own) {
            call_need(need, names);
        }
    }
    session
}

fn call_need(need: &mut Need, names: &ThingNames) {
    if let Some(name) = &names.name {
        need.name = name.clone();
        need.plural = names.plural.clone().unwrap_or_else(|| name.to_string());
    }
    need.note = names.note.clone().or(need.note.take());
    call_substitutes(&mut need.substitutes, names);
    if let Some(thing) = &need.thing {
        need.thing = Some(Arc::new(called(thing, names)));
    }
}

fn called(thing: &Thing, names: &ThingNames) -> Thing {
    let mut thing = thing.clone();
    if let Some(name) = &names.name {
        thing.name = name.clone();
        thing.plural = names.plural.clone().unwrap_or_else(|| name.to_string());
    }
    call_substitutes(&mut thing.substitutes, names);
    thing
}

fn call_substitutes(substitutes: &mut [Substitute], names: &ThingNames) {
    for (substitute, names) in substitutes.iter_mut().zip(&names.instead) {
        if let Some(name) = &names.name {
            substitute.thing = name.clone();
            substitute.plural = names.plural.clone().unwrap_or_else(|| name.to_string());
        }
        substitute.note = names.note.clone().or(substitute.note.take());
    }
}
