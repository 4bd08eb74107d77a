//! A session file as it is written: every key a teacher can use.

use super::allowance_file::AllowDoc;
use super::desk::{Desk, FromNode};
use super::node::{Node, Value};
use super::part_file::PartDoc;
use super::record::record;
use super::shape::Shape;
use super::shared_file::OrShared;
use super::text::{Line, Prose};
use super::words::{Activity, Filling, QuestionKind, State, Surface, Whereabouts};
use crate::place::Placed;
use crate::quantity::{Ages, Date, Duration, Form, Length, Mass, Quantity, Range, Volume};

record! {
    /// One session.
    pub struct SessionDoc = "a session" {
        /// A session of a neighbour’s pack that this one is, but for the keys that stand here too.
        borrows: Option<Placed<Line>> = "saltmarsh/games/sluice-gate",
        /// What the session is called.
        title: Placed<Line> = "Brook leap",
        /// One or two sentences to the family.
        summary: Placed<Line> = "Learn to jump far from two feet and to land without a sound.",
        /// The ages it is for.
        ages: Placed<Ages>,
        /// The slot in minutes; the parts' times add up to it.
        minutes: Placed<Slot>,
        /// Athletics, dance, fitness, games, gymnastics or outdoor.
        activity: Placed<Activity>,
        /// The licence of this session, else the pack's.
        licence: Option<Placed<Line>> = "CC-BY-4.0",
        /// Who made it, else the pack's.
        credit: Option<Placed<Line>> = "Hollin Staithe School",
        /// Codes of the department's curriculum list.
        curriculum: Vec<Placed<Line>> = "ks2-jump",
        /// The sessions whose skills it builds on, by their addresses: athletics/brook-leap.
        builds_on: Vec<Placed<Line>> = "games/gull-catch",
        /// Learning objectives, for the teacher.
        objectives: Vec<Placed<Line>> = "Use the arms and legs together to jump further",
        /// Success criteria, for the child, beginning with “I”.
        success: Vec<Placed<Line>> = "I land on two feet and stay still",
        /// What is needed, each thing with the parts that use it.
        equipment: Vec<NeedDoc>,
        /// The floor and headroom it needs.
        space: Option<Placed<SpaceDoc>>,
        /// This session's own cautions.
        safety: Vec<Placed<OrShared<Prose>>> = "Jump only on grass, carpet or a mat that cannot slide.",
        /// How much of an adult's time it needs.
        adult: Option<Placed<AdultDoc>>,
        /// A film to watch before.
        film: Option<FilmDoc>,
        /// Pictures for the whole session.
        pictures: Vec<PictureDoc>,
        /// The warm-up game.
        warm_up: Option<PartDoc>,
        /// The technique, step by step.
        technique: Vec<PartDoc>,
        /// Measured tries.
        challenge: Vec<PartDoc>,
        /// Harder tasks for the confident.
        stretch: Vec<PartDoc>,
        /// The cool-down.
        cool_down: Option<PartDoc>,
        /// Review questions with their answers.
        review: Vec<QuestionDoc>,
        /// What to change for another space, task, thing or child.
        adaptations: Option<AdaptationsDoc>,
        /// Where the session stands in the department's work.
        standing: Option<Placed<StandingDoc>>,
        /// Findings of inspect that are known and meant to stay.
        allow: Vec<AllowDoc>,
    }
}

record! {
    /// A thing that a session needs.
    pub struct NeedDoc = "a piece of equipment" {
        /// Its name in the shared list, or a thing of this session only.
        need: Placed<Line> = "beanbag",
        /// How many, 1 where it is not said.
        count: Option<Placed<u32>>,
        /// The parts that use it.
        r#for: Vec<Placed<Line>> = "challenge",
        /// The mass a thing in its place may have.
        mass: Option<Placed<Range<Mass>>>,
        /// The longest side a thing in its place may have.
        size: Option<Placed<Range<Length>>>,
        /// Whether a thing in its place must be soft.
        soft: Option<Placed<bool>>,
        /// What else a thing in its place must be: flat, round, see-through …
        must_be: Vec<Placed<Line>> = "unbreakable",
        /// Whether the session works without it.
        optional: Option<Placed<bool>>,
        /// What else to know.
        note: Option<Placed<Line>> = "Something flat or soft, in case a foot lands on it.",
        /// Household substitutes for this session, else the shared list's.
        instead: Vec<SubstituteDoc>,
    }
}

record! {
    /// A household thing that can stand in.
    pub struct SubstituteDoc = "a household substitute" {
        /// What it is called.
        thing: Placed<Line> = "pair of rolled socks",
        /// Its name for more than one.
        plural: Option<Placed<Line>> = "pairs of rolled socks",
        /// Its mass.
        mass: Option<Placed<Range<Mass>>>,
        /// Its longest side.
        size: Option<Placed<Range<Length>>>,
        /// Whether it is soft.
        soft: Option<Placed<bool>>,
        /// What else it is: flat, round, see-through …
        is: Vec<Placed<Line>> = "round",
        /// What it holds when it is full.
        volume: Option<Placed<Volume>>,
        /// What it is filled with; its own mass is then that of the empty thing.
        filling: Option<Placed<Filling>>,
        /// How many a usual home has; where it is not said, enough.
        at_home: Option<Placed<u32>>,
        /// How to make or hold it.
        note: Option<Placed<Line>> = "Roll them tight, so that they stay together.",
    }
}

record! {
    /// The floor and headroom a session needs.
    pub struct SpaceDoc = "the space" {
        /// A space of shared.yaml that this one is, but for the keys that stand here too.
        r#use: Option<Placed<Line>> = "front room",
        /// The longer side of the floor.
        length: Placed<Length>,
        /// The shorter side of the floor.
        width: Placed<Length>,
        /// The headroom.
        height: Option<Placed<Length>>,
        /// Indoors, outdoors or both.
        r#where: Vec<Placed<Whereabouts>>,
        /// What may be underfoot.
        surface: Vec<Placed<Surface>>,
    }
}

record! {
    /// How much of an adult's time a session needs.
    pub struct AdultDoc = "the adult’s time" {
        /// In the same room or within sight.
        nearby: Option<Placed<Duration>>,
        /// Taking part.
        helping: Option<Placed<Duration>>,
        /// What for.
        why: Option<Placed<Line>> = "To check the landing before the first jump.",
    }
}

record! {
    /// A film to watch before.
    pub struct FilmDoc = "the film" {
        /// Its web address.
        link: Placed<Line> = "https://films.example/brook-leap",
        /// What it shows.
        shows: Placed<Line> = "A child swings both arms and lands on bent knees.",
    }
}

record! {
    /// A picture with its alternative text.
    pub struct PictureDoc = "a picture" {
        /// The PNG or JPEG file, from the session's file on.
        file: Placed<Line> = "pictures/landing.png",
        /// What it shows, for who can't see it.
        alt: Option<Placed<Line>> = "A child lands on both feet with bent knees.",
        /// A line below it.
        caption: Option<Placed<Line>> = "Sink as you land",
    }
}

record! {
    /// A review question.
    pub struct QuestionDoc = "a review question" {
        /// The question.
        ask: Placed<Prose> = "Why do you bend your knees when you land?",
        /// The model answer.
        answer: Option<Placed<Prose>> = "To slow down over a longer time.",
        /// Recall, explain, compare, apply or reflect.
        kind: Option<Placed<QuestionKind>>,
    }
}

record! {
    /// What to change for another space, task, thing or child.
    pub struct AdaptationsDoc = "the adaptations" {
        /// A smaller or other space.
        space: Option<Placed<Prose>> = "In a small room, jump on the spot and turn.",
        /// An easier or harder task.
        task: Option<Placed<Prose>> = "Step over the line first, then jump.",
        /// Other things.
        equipment: Option<Placed<Prose>> = "No tape? Count your own feet, heel to toe.",
        /// Alone, with a partner, seated, with support.
        people: Option<Placed<Prose>> = "Seated, swing the arms and reach.",
    }
}

record! {
    /// Where a session stands in the department's work.
    pub struct StandingDoc = "the standing" {
        /// Draft, reviewed, approved or retired.
        state: Placed<State>,
        /// Who looked, in initials.
        by: Vec<Placed<Line>> = "AK",
        /// When.
        on: Option<Placed<Date>>,
        /// When to look again.
        look_again: Option<Placed<Date>>,
        /// What changed.
        changed: Vec<Placed<Line>> = "Three tries in place of five",
    }
}

/// The length of the slot; a bare number counts minutes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Slot(pub Duration);

impl FromNode for Slot {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        let bare = match &node.value {
            Value::Scalar(text) => text.trim().parse::<u32>().ok(),
            _ => None,
        };
        let slot = match bare {
            Some(minutes) if minutes <= 600 => Duration::from_minutes(minutes),
            _ => Duration::from_node(node, desk)?,
        };
        if slot.is_zero() {
            desk.refuse(
                node.place,
                "A slot of no minutes holds nothing.",
                "Write how long the session is, such as 30.",
            );
            return None;
        }
        Some(Self(slot))
    }
    fn shape() -> Shape {
        let form = Duration::form();
        let pattern = format!("{}|^\\s*[0-9]{{1,3}}\\s*$", form.pattern);
        Shape::Quantity(Form { pattern, bare: Some((1, 600)), examples: &["30", "45"], ..form })
    }
}
