//! Passages in another language than their sheet’s: the texts of a session that is not translated, on a sheet whose
//! labels are. They are found by their words, so that nothing that lays a sheet need know of them; a long word of theirs
//! is broken as theirs.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::alike::{fold, holds, stands_alone};
use super::breaks::Hyphens;
use crate::pack::{Pack, Session, Unit};
use crate::prose::{Run, plain_line, read_blocks};

/// What is not in the sheet’s language.
#[derive(Debug, Default)]
pub struct Passages {
    all: Vec<Passage>,
    /// What was asked before: content is tried in several sizes.
    asked: RefCell<BTreeMap<String, Option<usize>>>,
}

/// All that is in one language.
#[derive(Clone, Debug)]
struct Passage {
    language: Arc<str>,
    hyphens: Option<Hyphens>,
    /// Every text as it reads on paper, one after the other.
    said: String,
    /// Titles and things that stand inside sentences of the sheet’s own, the longest first.
    names: Vec<String>,
}

/// The texts of one language as they are gathered.
#[derive(Debug, Default)]
struct Gathered {
    said: String,
    names: BTreeSet<String>,
}

impl Gathered {
    fn add(&mut self, text: &str) {
        for block in read_blocks(text) {
            let words: String = block.runs.iter().map(|run| run.text.as_str()).collect();
            self.said.push_str(&fold(&words));
            self.said.push('\n');
        }
    }

    fn name(&mut self, name: &str) {
        let name = fold(&plain_line(name));
        self.said.push_str(&name);
        self.said.push('\n');
        self.names.insert(name);
    }

    fn add_session(&mut self, session: &Session, pack: &Pack) {
        session.texts().iter().for_each(|text| self.add(text));
        self.name(&session.title);
        session.parts.iter().for_each(|part| self.name(&part.title));
        for need in &session.needs {
            let others = need.substitutes.iter().map(|other| (&other.thing, &other.plural));
            for (name, plural) in others.chain([(&need.name, &need.plural)]) {
                // Things may have their names in the sheet’s language though the session has not.
                if !pack.called.has(name) {
                    self.name(name);
                    self.name(plural);
                }
            }
        }
    }
}

impl Passages {
    /// Those of sheets about sessions of a pack, and a unit of them.
    pub fn of<'s>(
        pack: &Pack,
        sessions: impl Iterator<Item = &'s Session>,
        unit: Option<&Unit>,
    ) -> Self {
        let mut gathered: BTreeMap<&str, Gathered> = BTreeMap::new();
        if let Some((language, texts)) = &pack.untranslated {
            let all = gathered.entry(language).or_default();
            for text in texts {
                all.add(text);
            }
        }
        for session in sessions.filter(|session| session.language != pack.language.value) {
            gathered.entry(&session.language).or_default().add_session(session, pack);
        }
        if let Some(unit) = unit.filter(|unit| unit.language != pack.language.value) {
            let all = gathered.entry(&unit.language).or_default();
            all.name(&unit.title);
            unit.summary.iter().for_each(|text| all.add(text));
        }
        let passage = |(language, Gathered { said, names }): (&str, Gathered)| {
            let mut names: Vec<String> = names.into_iter().collect();
            names.sort_by_key(|name| std::cmp::Reverse(name.len()));
            let hyphens = Hyphens::of(language);
            Passage { language: language.into(), hyphens, said, names }
        };
        Self { all: gathered.into_iter().map(passage).collect(), ..Self::default() }
    }

    /// What the words of a paragraph are broken by: those of a passage as its language, others as is usual.
    pub fn hyphens_of(&self, runs: &[Run], usual: Option<Hyphens>) -> Option<Hyphens> {
        if self.are_none() {
            return usual;
        }
        let mut known = Verdict::Open;
        for run in runs.iter().filter(|run| run.text.contains(char::is_alphabetic)) {
            known.add(|| self.find(fold(&run.text)));
        }
        let passage = known.passage().and_then(|index| self.all.get(index));
        passage.map_or(usual, |passage| passage.hyphens)
    }

    /// The passage that a text is part of.
    pub fn find(&self, text: String) -> Option<usize> {
        let known = self.asked.borrow().get(&text).copied();
        known.unwrap_or_else(|| {
            let found = self.all.iter().position(|passage| holds(&passage.said, &text));
            self.asked.borrow_mut().insert(text, found);
            found
        })
    }

    /// Whether all is in the language of the sheet.
    pub const fn are_none(&self) -> bool {
        self.all.is_empty()
    }

    /// What language a passage is in.
    pub fn language_of(&self, passage: Option<usize>) -> Option<Arc<str>> {
        self.all.get(passage?).map(|passage| passage.language.clone())
    }

    /// Where names stand in words, the longest first taken, in their order.
    pub fn find_names(&self, words: &str) -> Vec<(usize, usize, usize)> {
        let mut found: Vec<(usize, usize, usize)> = Vec::new();
        for (index, passage) in self.all.iter().enumerate() {
            for name in &passage.names {
                let places =
                    words.match_indices(name.as_str()).map(|(at, _)| (at, at + name.len()));
                for (from, to) in places.filter(|(from, to)| stands_alone(words, *from, *to)) {
                    if found.iter().all(|(begin, end, _)| to <= *begin || from >= *end) {
                        found.push((from, to, index));
                    }
                }
            }
        }
        found.sort_unstable();
        found
    }
}

/// Which passage all words so far are of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Verdict {
    #[default]
    Open,
    One(usize),
    Mixed,
}

impl Verdict {
    pub fn add(&mut self, find: impl FnOnce() -> Option<usize>) {
        *self = match (*self, find()) {
            (Self::Open, Some(index)) => Self::One(index),
            (Self::One(known), Some(index)) if known == index => *self,
            _ => Self::Mixed,
        };
    }

    pub const fn passage(self) -> Option<usize> {
        match self {
            Self::One(index) => Some(index),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn passages() -> Passages {
        let mut gathered = Gathered::default();
        gathered.add("Bend your knees as you land, *softly*.\n\n- Look ahead");
        gathered.name("gym mat");
        let Gathered { said, names } = gathered;
        let names = names.into_iter().collect();
        let passage = Passage { language: "en-GB".into(), hyphens: None, said, names };
        Passages { all: vec![passage], ..Passages::default() }
    }

    #[test]
    fn a_line_of_a_passage_is_found_and_a_label_is_not() {
        let all = passages();
        for text in ["Bend your knees", "land, softly.", "Look ahead", "you"] {
            assert_eq!(all.find(text.to_owned()), Some(0), "{text}");
        }
        for text in ["Objets à réunir", "oft", "ook ahea"] {
            assert_eq!(all.find(text.to_owned()), None, "{text}");
        }
    }

    #[test]
    fn names_are_found_inside_a_sentence() {
        assert_eq!(passages().find_names("à la place de gym mat, gym mats"), [(15, 22, 0)]);
    }
}
