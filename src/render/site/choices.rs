//! The questions on the front page that narrow the list, and which answers each session fits.
//!
//! They work by style sheet alone: an answer's token is the id of its button, an entry lists the
//! tokens that it fits and those of the things that it can’t do without, and `choose.css` holds one rule
//! for each token of this pack. `choose.js` reads the same tokens.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::Site;
use crate::pack::{Need, Session};
use crate::prose::plain_line;
use crate::quantity::Length;
use crate::read::words::{Activity, Whereabouts};
use crate::words::Filling;

/// The questions; one with fewer than two answers is not asked.
#[derive(Serialize, Clone, Debug, Default)]
pub(super) struct Choices {
    ages: Vec<Choice>,
    minutes: Vec<Choice>,
    spaces: Vec<Choice>,
    places: Vec<Choice>,
    activities: Vec<Choice>,
    /// Things a home may lack.
    lacking: Vec<Choice>,
}

/// One answer.
#[derive(Serialize, Clone, Debug)]
struct Choice {
    /// Letters, digits and hyphens.
    token: String,
    label: String,
}

/// Times a family may have, in minutes.
const MINUTES: [u32; 6] = [15, 20, 30, 45, 60, 90];

/// Clear floors a family may have: the key of its name, longer and shorter side in metres. Our own
/// steps, made for choosing only.
const FLOORS: [(&str, u32, u32); 3] = [("rug", 2, 2), ("small-room", 3, 3), ("big-room", 5, 4)];

/// At most so many things to tick, the most used first.
const MOST_THINGS: usize = 24;

/// Every question with the answers that make sense for this pack.
pub(super) struct Chooser {
    pub(super) choices: Choices,
    /// Names of the things asked for, by token.
    things: BTreeMap<String, String>,
}

impl Chooser {
    pub(super) fn of(site: &Site<'_>) -> Self {
        let sessions: Vec<&Session> = site.offered().map(|(session, _)| session).collect();
        let (things, lacking) = lacking_of(&sessions);
        let choices = Choices {
            ages: ages_of(&sessions),
            minutes: minutes_of(site, &sessions),
            spaces: spaces_of(site, &sessions),
            places: places_of(site, &sessions),
            activities: activities_of(site, &sessions),
            lacking,
        };
        Self { choices, things }
    }

    /// The token of every answer that a session has to fit.
    pub(super) fn tokens(&self) -> Vec<&str> {
        let Choices { ages, minutes, spaces, places, activities, .. } = &self.choices;
        let asked =
            [ages, minutes, spaces, places, activities].into_iter().filter(|all| all.len() > 1);
        asked.flatten().map(|choice| choice.token.as_str()).collect()
    }

    /// The tokens of the things that a home may lack.
    pub(super) fn lacking(&self) -> Vec<&str> {
        self.choices.lacking.iter().map(|choice| choice.token.as_str()).collect()
    }

    /// The tokens of the things that a session can’t do without, apart by spaces.
    pub(super) fn needs_of(&self, session: &Session) -> String {
        let needed: BTreeSet<&str> = lackable(session).map(|need| need.name.0.as_str()).collect();
        let tokens = self.things.iter().filter(|(_, name)| needed.contains(name.as_str()));
        tokens.map(|(token, _)| token.as_str()).collect::<Vec<_>>().join(" ")
    }

    /// The tokens that a session fits, apart by spaces.
    pub(super) fn fits_of(&self, session: &Session) -> String {
        let mut fits: Vec<String> =
            (session.ages.youngest..=session.ages.oldest).map(|age| format!("age-{age}")).collect();
        fits.extend(
            MINUTES
                .iter()
                .filter(|most| fits_time(session, **most))
                .map(|most| format!("minutes-{most}")),
        );
        fits.extend(
            FLOORS
                .iter()
                .filter(|floor| fits_floor(session, floor))
                .map(|floor| format!("space-{}", floor.0)),
        );
        fits.extend(places_in(session).into_iter().map(|place| format!("place-{}", place.word())));
        fits.push(format!("activity-{}", session.activity.word()));
        let asked: BTreeSet<&str> = self.tokens().into_iter().collect();
        fits.retain(|token| asked.contains(token.as_str()));
        fits.join(" ")
    }
}

fn ages_of(sessions: &[&Session]) -> Vec<Choice> {
    let youngest = sessions.iter().map(|session| session.ages.youngest).min();
    let oldest = sessions.iter().map(|session| session.ages.oldest).max();
    let (Some(youngest), Some(oldest)) = (youngest, oldest) else { return Vec::new() };
    let choice = |age: u8| Choice { token: format!("age-{age}"), label: age.to_string() };
    (youngest..=oldest).map(choice).collect()
}

fn minutes_of(site: &Site<'_>, sessions: &[&Session]) -> Vec<Choice> {
    let fitting = |most: u32| sessions.iter().filter(|session| fits_time(session, most)).count();
    let mut before = 0;
    // A longer time that brings no further session is not asked.
    let steps = MINUTES
        .into_iter()
        .filter(|most| fitting(*most) > std::mem::replace(&mut before, fitting(*most)));
    let label = |most| site.words.say_with("front-up-to", &[("count", Filling::Count(most))]);
    steps.map(|most| Choice { token: format!("minutes-{most}"), label: label(most) }).collect()
}

fn fits_time(session: &Session, most: u32) -> bool {
    session.slot.seconds() <= most * 60
}

fn spaces_of(site: &Site<'_>, sessions: &[&Session]) -> Vec<Choice> {
    let is_met =
        |floor: &&(&str, u32, u32)| sessions.iter().any(|session| fits_floor(session, floor));
    let choice = |(key, _, _): &(&str, u32, u32)| Choice {
        token: format!("space-{key}"),
        label: site.words.say(&format!("front-space-{key}")),
    };
    let met: Vec<Choice> = FLOORS.iter().filter(is_met).map(choice).collect();
    met
}

/// A session that names no floor may fit anywhere.
fn fits_floor(session: &Session, (_, long, short): &(&str, u32, u32)) -> bool {
    let metres = |m: u32| Length::from_millimetres(m * 1000);
    session.space.as_ref().is_none_or(|space| {
        space.length.value <= metres(*long) && space.width.value <= metres(*short)
    })
}

fn places_of(site: &Site<'_>, sessions: &[&Session]) -> Vec<Choice> {
    let met: BTreeSet<Whereabouts> =
        sessions.iter().flat_map(|session| places_in(session)).collect();
    let choice = |place: Whereabouts| Choice {
        token: format!("place-{}", place.word()),
        label: site.words.say(&format!("place-{}", place.word())),
    };
    met.into_iter().map(choice).collect()
}

fn places_in(session: &Session) -> Vec<Whereabouts> {
    session
        .space
        .as_ref()
        .map_or_else(|| Whereabouts::ALL.to_vec(), |space| space.whereabouts.clone())
}

fn activities_of(site: &Site<'_>, sessions: &[&Session]) -> Vec<Choice> {
    let met: BTreeSet<Activity> = sessions.iter().map(|session| session.activity.value).collect();
    let choice = |activity: Activity| Choice {
        token: format!("activity-{}", activity.word()),
        label: site.words.say(&format!("activity-{}", activity.word())),
    };
    met.into_iter().map(choice).collect()
}

/// The things that a home may lack, by token, and the answers for them.
fn lacking_of(sessions: &[&Session]) -> (BTreeMap<String, String>, Vec<Choice>) {
    let mut uses: BTreeMap<&str, usize> = BTreeMap::new();
    for need in sessions.iter().flat_map(|session| lackable(session)) {
        *uses.entry(&need.name.0).or_default() += 1;
    }
    let mut names: Vec<(&str, usize)> = uses.into_iter().collect();
    names.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(b.0)));
    names.truncate(MOST_THINGS);
    names.sort_unstable();
    let tokens =
        names.iter().enumerate().map(|(at, (name, _))| (format!("without-{}", at + 1), *name));
    let choice = |(token, name): (String, &str)| Choice { token, label: plain_line(name) };
    let choices: Vec<Choice> = tokens.clone().map(choice).collect();
    (tokens.map(|(token, name)| (token, name.to_owned())).collect(), choices)
}

/// The needs that stop a session where the thing is lacking.
fn lackable(session: &Session) -> impl Iterator<Item = &Need> {
    session.needs.iter().filter(|need| !need.optional && !need.is_household())
}
