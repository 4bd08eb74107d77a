//! Two outlines → what changed between them, and which printed sheets are out of date.
//!
//! Sessions are matched by id. Parts of one kind are matched by title, then those left over by what they
//! ask to be done, then in order. Entries of a list are matched by a longest common subsequence; what is left in one
//! gap counts as reworded where half of its words stayed.

use std::collections::{BTreeMap, BTreeSet};

use super::kind::{Audience, Kind, Shape};
use super::reworded::{common, likeness};
use super::stale::{StaleSheet, stale_sheets};
use super::{Fact, KINDS, Outline, PackOutline, PartOutline};

/// A session by its id and title.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SessionRef {
    pub id: String,
    pub title: String,
}

/// A part by its kind and title.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PartRef {
    pub kind: String,
    pub title: String,
}

/// What happened to something that is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Happened {
    Became {
        before: String,
        now: String,
    },
    /// The same for a text.
    Reworded {
        before: String,
        now: String,
    },
    Added(String),
    Gone(String),
    /// The entries are the same in another order.
    Reordered,
    PartAdded,
    PartGone,
    PartsReordered,
}

/// One change.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// The part as it is now; as it was, where it is gone.
    pub part: Option<PartRef>,
    /// `None` where a whole part came, went or moved.
    pub kind: Option<&'static Kind>,
    pub happened: Happened,
}

/// A session that says something else than before.
#[derive(Clone, Debug, PartialEq)]
pub struct SessionChange {
    pub session: SessionRef,
    pub changes: Vec<Change>,
    pub stale: Vec<StaleSheet>,
}

/// All that changed.
#[derive(Clone, Debug, PartialEq)]
pub struct Changes {
    /// What every session shares.
    pub shared: Vec<Change>,
    pub new: Vec<SessionRef>,
    pub gone: Vec<SessionRef>,
    pub changed: Vec<SessionChange>,
    /// How many say the same as before.
    pub same: usize,
}

/// Compares two editions of a pack. A retired session counts as gone.
pub fn compare_packs(before: &PackOutline, now: &PackOutline) -> Changes {
    let is_known = Known { all: !before.is_for_families && !now.is_for_families };
    let offered = |pack: &'_ PackOutline| -> BTreeMap<String, Outline> {
        let sessions = pack.sessions.iter().filter(|session| !session.is_retired);
        sessions.map(|session| (session.id.clone(), session.clone())).collect()
    };
    let (old, new) = (offered(before), offered(now));
    let name =
        |session: &Outline| SessionRef { id: session.id.clone(), title: session.title.clone() };
    let only = |of: &BTreeMap<String, Outline>, other: &BTreeMap<String, Outline>| {
        of.values().filter(|session| !other.contains_key(&session.id)).map(name).collect()
    };
    let pairs = new.values().filter_map(|session| Some((old.get(&session.id)?, session)));
    let (mut changed, mut same) = (Vec::new(), 0);
    for (before, now) in pairs {
        let changes = compare_sessions(before, now, is_known);
        let stale = stale_sheets(before, now);
        if changes.is_empty() && stale.is_empty() {
            same += 1;
        } else {
            changed.push(SessionChange { session: name(now), changes, stale });
        }
    }
    Changes {
        shared: compare_facts(&before.facts, &now.facts, None, is_known),
        new: only(&new, &old),
        gone: only(&old, &new),
        changed,
        same,
    }
}

/// Which kinds both sides know: a record for families lacks what only teachers see.
#[derive(Clone, Copy)]
struct Known {
    all: bool,
}

impl Known {
    fn tells(self, kind: &Kind) -> bool {
        match kind.audience {
            Audience::Families => true,
            Audience::Reviewers => self.all,
            Audience::Nobody => false,
        }
    }
}

fn compare_sessions(before: &Outline, now: &Outline, known: Known) -> Vec<Change> {
    let mut changes = compare_facts(&before.facts, &now.facts, None, known);
    let pairs = match_parts(&before.parts, &now.parts);
    if pairs.windows(2).any(|two| two[0].0 > two[1].0) {
        changes.push(Change { part: None, kind: None, happened: Happened::PartsReordered });
    }
    let (old, new): (BTreeSet<usize>, BTreeSet<usize>) = pairs.iter().copied().unzip();
    let whole =
        |part: &PartOutline, happened| Change { part: Some(name_of(part)), kind: None, happened };
    let gone = before.parts.iter().enumerate().filter(|(at, _)| !old.contains(at));
    changes.extend(gone.map(|(_, part)| whole(part, Happened::PartGone)));
    for (at, part) in now.parts.iter().enumerate() {
        match pairs.iter().find(|pair| pair.1 == at) {
            Some((earlier, _)) => changes.extend(compare_facts(
                &before.parts[*earlier].facts,
                &part.facts,
                Some(&name_of(part)),
                known,
            )),
            None if !new.contains(&at) => changes.push(whole(part, Happened::PartAdded)),
            None => {}
        }
    }
    changes
}

pub(super) fn name_of(part: &PartOutline) -> PartRef {
    PartRef { kind: part.kind.clone(), title: part.title.clone() }
}

/// Whether two parts may be one.
type Alike<'a> = &'a dyn Fn(&PartOutline, &PartOutline) -> bool;

/// Pairs of parts that are one, by their indices, in the order of those now.
pub(super) fn match_parts(before: &[PartOutline], now: &[PartOutline]) -> Vec<(usize, usize)> {
    let (mut old, mut pairs): (BTreeSet<usize>, _) = ((0..before.len()).collect(), Vec::new());
    let mut new: BTreeSet<usize> = (0..now.len()).collect();
    let says = |part: &PartOutline| -> String {
        part.facts
            .iter()
            .find(|fact| fact.kind.key == "how")
            .map(|f| f.says.clone())
            .unwrap_or_default()
    };
    let rounds: [Alike<'_>; 3] =
        [&|a, b| a.title == b.title, &|a, b| says(a) == says(b), &|_, _| true];
    for alike in rounds {
        for to in new.clone() {
            let is_one =
                |at: &&usize| before[**at].kind == now[to].kind && alike(&before[**at], &now[to]);
            if let Some(at) = old.iter().find(is_one).copied() {
                old.remove(&at);
                new.remove(&to);
                pairs.push((at, to));
            }
        }
    }
    pairs.sort_by_key(|pair| pair.1);
    pairs
}

/// The changes of all kinds, in the order of the table.
fn compare_facts(
    before: &[Fact],
    now: &[Fact],
    part: Option<&PartRef>,
    known: Known,
) -> Vec<Change> {
    let of = |facts: &[Fact], kind: &Kind| -> Vec<String> {
        facts.iter().filter(|fact| fact.kind == kind).map(|fact| fact.says.clone()).collect()
    };
    let told = KINDS.iter().filter(|kind| known.tells(kind));
    told.flat_map(|kind| {
        let happened = compare_kind(kind.shape, &of(before, kind), &of(now, kind));
        happened.into_iter().map(move |happened| Change {
            part: part.cloned(),
            kind: Some(kind),
            happened,
        })
    })
    .collect()
}

fn compare_kind(shape: Shape, before: &[String], now: &[String]) -> Vec<Happened> {
    if before == now {
        return Vec::new();
    }
    match (shape, before, now) {
        (Shape::One, [before], [now]) => {
            vec![Happened::Became { before: before.clone(), now: now.clone() }]
        }
        (Shape::Text, [before], [now]) => {
            vec![Happened::Reworded { before: before.clone(), now: now.clone() }]
        }
        _ => compare_lists(before, now),
    }
}

/// Entries that came, went or were reworded.
fn compare_lists(before: &[String], now: &[String]) -> Vec<Happened> {
    let sorted = |list: &[String]| {
        let mut list = list.to_vec();
        list.sort();
        list
    };
    if sorted(before) == sorted(now) {
        return vec![Happened::Reordered];
    }
    let mut pairs = common(before, now, |a, b| a == b);
    pairs.push((before.len(), now.len()));
    let (mut happened, mut at, mut to) = (Vec::new(), 0, 0);
    for (end, stop) in pairs {
        happened.extend(compare_gap(&before[at..end], &now[to..stop]));
        (at, to) = ((end + 1).min(before.len()), (stop + 1).min(now.len()));
    }
    happened
}

/// What stands between two entries that stayed. The likest go together first.
fn compare_gap(before: &[String], now: &[String]) -> Vec<Happened> {
    let mut alike: Vec<(usize, usize, usize)> = Vec::new();
    for (at, old) in before.iter().enumerate() {
        for (to, new) in now.iter().enumerate() {
            alike.push((likeness(old, new), at, to));
        }
    }
    alike.sort_by(|a, b| b.0.cmp(&a.0).then(a.1.cmp(&b.1)).then(a.2.cmp(&b.2)));
    let mut partner: BTreeMap<usize, usize> = BTreeMap::new();
    let mut taken = BTreeSet::new();
    for (share, at, to) in alike {
        if share >= 50 && !taken.contains(&to) && !partner.contains_key(&at) {
            partner.insert(at, to);
            taken.insert(to);
        }
    }
    let gone = before.iter().enumerate().map(|(at, old)| match partner.get(&at) {
        Some(to) if now[*to] == *old => Happened::Reordered,
        Some(to) => Happened::Reworded { before: old.clone(), now: now[*to].clone() },
        None => Happened::Gone(old.clone()),
    });
    let added = now.iter().enumerate().filter(|(to, _)| !taken.contains(to));
    gone.chain(added.map(|(_, new)| Happened::Added(new.clone()))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn list(before: &[&str], now: &[&str]) -> Vec<Happened> {
        let owned =
            |list: &[&str]| -> Vec<String> { list.iter().map(ToString::to_string).collect() };
        compare_lists(&owned(before), &owned(now))
    }

    #[test]
    fn entries_come_and_go_and_are_reworded() {
        let added = Happened::Added("Knees soft".into());
        assert_eq!(list(&["Arms back", "Push"], &["Arms back", "Knees soft", "Push"]), [added]);
        assert_eq!(list(&["a b", "c"], &["c"]), [Happened::Gone("a b".into())]);
        assert_eq!(list(&["a", "b"], &["b", "a"]), [Happened::Reordered]);
        let reworded = Happened::Reworded {
            before: "Land on two feet".into(),
            now: "Land on both feet".into(),
        };
        assert_eq!(list(&["Land on two feet"], &["Land on both feet"]), [reworded]);
    }
}
