//! A demand: wants of one session that get in each other’s way, in a form in which alike demands are equal.

use std::collections::BTreeMap;

use crate::plan::assign::{Span, Suit, Want, conflicts};

/// How many of some things are asked for, and when they are held.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Asked {
    /// The first and the last moment, of those in which something of the demand ends.
    pub from: usize,
    pub to: usize,
    /// What suits, in order.
    pub things: Vec<usize>,
    pub count: u32,
}

/// Wants that hang together, in order; no two alike but for the count.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Demand {
    pub asked: Vec<Asked>,
}

impl Demand {
    /// The demands of one session.
    pub fn of_session(asked: &[Asked]) -> Vec<Self> {
        let asked: Vec<&Asked> = asked.iter().filter(|asked| asked.count > 0).collect();
        let spans: Vec<Span> = asked
            .iter()
            .map(|asked| Span { from: asked.from, to: asked.to, things: &asked.things })
            .collect();
        let groups = conflicts(&spans).into_iter();
        groups.map(|group| Self::of_group(group.into_iter().map(|at| asked[at]))).collect()
    }

    /// Numbers the moments anew and joins what is alike.
    fn of_group<'a>(group: impl Iterator<Item = &'a Asked> + Clone) -> Self {
        let mut ends: Vec<usize> = group.clone().map(|asked| asked.to).collect();
        ends.sort_unstable();
        ends.dedup();
        let mut counts: BTreeMap<(usize, usize, &[usize]), u32> = BTreeMap::new();
        for asked in group {
            let from = ends.partition_point(|end| *end < asked.from);
            let to = ends.partition_point(|end| *end < asked.to);
            let count = counts.entry((from, to, &asked.things)).or_default();
            *count = count.saturating_add(asked.count);
        }
        let asked = counts.into_iter().map(|((from, to, things), count)| Asked {
            from,
            to,
            things: things.to_vec(),
            count,
        });
        Self { asked: asked.collect() }.at_one_moment()
    }

    /// If everything is held at one moment, that moment is all that counts.
    fn at_one_moment(mut self) -> Self {
        let from = self.asked.iter().map(|asked| asked.from).max();
        let to = self.asked.iter().map(|asked| asked.to).min();
        if from > to || self.is_at_one_moment() {
            return self;
        }
        for asked in &mut self.asked {
            (asked.from, asked.to) = (0, 0);
        }
        Self::of_group(self.asked.iter())
    }

    pub fn is_at_one_moment(&self) -> bool {
        self.asked.iter().all(|asked| asked.to == 0)
    }

    pub fn moments(&self) -> usize {
        self.asked.iter().map(|asked| asked.to + 1).max().unwrap_or(0)
    }

    /// What is held at a moment.
    pub fn held_at(&self, moment: usize) -> impl Iterator<Item = &Asked> {
        self.asked.iter().filter(move |asked| (asked.from..=asked.to).contains(&moment))
    }

    /// Whether a thing, or any if none is given, suits something here.
    pub fn may_use(&self, thing: Option<usize>) -> bool {
        let suits = |thing: usize| {
            self.asked.iter().any(|asked| asked.things.binary_search(&thing).is_ok())
        };
        thing.is_none_or(suits)
    }

    /// The same wants without their counts.
    pub fn shape(&self) -> Vec<(usize, usize, &[usize])> {
        self.asked.iter().map(|asked| (asked.from, asked.to, asked.things.as_slice())).collect()
    }

    /// Whether whatever meets `self` meets `other`, which has the same shape.
    pub fn asks_as_much_as(&self, other: &Self) -> bool {
        self.asked.iter().zip(&other.asked).all(|(own, other)| own.count >= other.count)
    }

    /// The demand as wants of an assignment, in which everything suits equally well.
    pub fn wants(&self) -> Vec<Want> {
        self.asked.iter().map(Asked::want).collect()
    }
}

impl Asked {
    pub fn want(&self) -> Want {
        let suits = self.things.iter().map(|thing| Suit { thing: *thing, unsuitability: 0 });
        let (from, to, count) = (self.from, self.to, self.count);
        Want { count, from, to, optional: false, suits: suits.collect() }
    }
}
