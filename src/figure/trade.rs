//! The trade’s words for a joint’s angles: “bent 90°”, “forward 60°, out 20°”, “up”.

use super::joint::{Angles, Joint, Motion, Side};
use crate::read::nearest;

/// A word for a movement: which, in which sense, and how far where the word says it all.
struct Word {
    is: &'static str,
    motion: Motion,
    sense: f64,
    whole: Option<f64>,
}

const fn way(word: &'static str, motion: Motion, sense: f64) -> Word {
    Word { is: word, motion, sense, whole: None }
}

const fn whole(word: &'static str, motion: Motion, degrees: f64) -> Word {
    Word { is: word, motion, sense: 1.0, whole: Some(degrees) }
}

use Motion::{Forward, Sideways, Turned};

const ARM: &[Word] = &[
    way("forward", Forward, 1.0),
    way("back", Forward, -1.0),
    whole("up", Forward, 180.0),
    whole("down", Forward, 0.0),
    way("sideways", Sideways, 1.0),
    way("out", Sideways, 1.0),
    way("across", Sideways, -1.0),
    way("turned out", Turned, 1.0),
    way("turned in", Turned, -1.0),
];
const LEG: &[Word] = &[
    way("forward", Forward, 1.0),
    way("back", Forward, -1.0),
    whole("straight down", Forward, 0.0),
    way("sideways", Sideways, 1.0),
    way("out", Sideways, 1.0),
    way("across", Sideways, -1.0),
    way("turned out", Turned, 1.0),
    way("turned in", Turned, -1.0),
];
const BENT: &[Word] = &[way("bent", Forward, 1.0), whole("straight", Forward, 0.0)];
const WRIST: &[Word] =
    &[way("bent", Forward, 1.0), way("back", Forward, -1.0), whole("straight", Forward, 0.0)];
const FOOT: &[Word] =
    &[way("pointed", Forward, 1.0), way("pulled up", Forward, -1.0), whole("square", Forward, 0.0)];
const TRUNK: &[Word] = &[
    way("forward", Forward, 1.0),
    way("back", Forward, -1.0),
    whole("upright", Forward, 0.0),
    way("left", Sideways, 1.0),
    way("right", Sideways, -1.0),
    way("turned left", Turned, 1.0),
    way("turned right", Turned, -1.0),
];
const BACK: &[Word] = &[
    way("rounded", Forward, 1.0),
    way("arched", Forward, -1.0),
    whole("straight", Forward, 0.0),
    way("left", Sideways, 1.0),
    way("right", Sideways, -1.0),
    way("turned left", Turned, 1.0),
    way("turned right", Turned, -1.0),
];
const HEAD: &[Word] = &[
    way("down", Forward, 1.0),
    way("up", Forward, -1.0),
    whole("straight", Forward, 0.0),
    way("left", Sideways, 1.0),
    way("right", Sideways, -1.0),
    way("turned left", Turned, 1.0),
    way("turned right", Turned, -1.0),
];

const fn words_of(joint: Joint) -> &'static [Word] {
    match joint {
        Joint::Trunk => TRUNK,
        Joint::Back => BACK,
        Joint::Head => HEAD,
        Joint::Arm(_) => ARM,
        Joint::Elbow(_) | Joint::Knee(_) => BENT,
        Joint::Wrist(_) => WRIST,
        Joint::Leg(_) => LEG,
        Joint::Foot(_) => FOOT,
    }
}

/// The keys that angles are written under.
pub const KEYS: [&str; 21] = [
    "trunk",
    "back",
    "head",
    "arms",
    "elbows",
    "wrists",
    "legs",
    "knees",
    "feet",
    "left_arm",
    "left_elbow",
    "left_wrist",
    "left_leg",
    "left_knee",
    "left_foot",
    "right_arm",
    "right_elbow",
    "right_wrist",
    "right_leg",
    "right_knee",
    "right_foot",
];

/// The joints of a key; nothing for a key that is none.
pub fn joints_of(key: &str) -> Vec<Joint> {
    let (sides, name): (&[Side], &str) = match key.split_once('_') {
        Some(("left", name)) => (&[Side::Left], name),
        Some(("right", name)) => (&[Side::Right], name),
        _ => (&Side::BOTH, key),
    };
    let is_one = sides.len() == 1;
    let joint: fn(Side) -> Joint = match name {
        "trunk" => return vec![Joint::Trunk],
        "back" => return vec![Joint::Back],
        "head" => return vec![Joint::Head],
        "arm" if is_one => Joint::Arm,
        "arms" => Joint::Arm,
        "elbow" if is_one => Joint::Elbow,
        "elbows" => Joint::Elbow,
        "wrist" if is_one => Joint::Wrist,
        "wrists" => Joint::Wrist,
        "leg" if is_one => Joint::Leg,
        "legs" => Joint::Leg,
        "knee" if is_one => Joint::Knee,
        "knees" => Joint::Knee,
        "foot" if is_one => Joint::Foot,
        "feet" => Joint::Foot,
        _ => return Vec::new(),
    };
    sides.iter().map(|side| joint(*side)).collect()
}

/// What a joint is called in a message to the teacher.
pub const fn name_of(joint: Joint) -> &'static str {
    match joint {
        Joint::Trunk => "trunk",
        Joint::Back => "back",
        Joint::Head => "neck",
        Joint::Arm(Side::Left) => "left shoulder",
        Joint::Arm(Side::Right) => "right shoulder",
        Joint::Elbow(Side::Left) => "left elbow",
        Joint::Elbow(Side::Right) => "right elbow",
        Joint::Wrist(Side::Left) => "left wrist",
        Joint::Wrist(Side::Right) => "right wrist",
        Joint::Leg(Side::Left) => "left hip",
        Joint::Leg(Side::Right) => "right hip",
        Joint::Knee(Side::Left) => "left knee",
        Joint::Knee(Side::Right) => "right knee",
        Joint::Foot(Side::Left) => "left ankle",
        Joint::Foot(Side::Right) => "right ankle",
    }
}

/// The word of a joint’s movement, such as “bent”, for a message or a description.
pub fn word_for(joint: Joint, motion: Motion, degrees: f64) -> &'static str {
    let same = |word: &&Word| {
        word.whole.is_none() && word.motion == motion && (word.sense > 0.0) == (degrees > 0.0)
    };
    words_of(joint).iter().find(same).map_or("", |word| word.is)
}

/// Sets what a value says of some joints.
///
/// # Errors
/// What is wrong, and what to do.
pub fn read_angles(
    joints: &[Joint],
    value: &str,
    angles: &mut Angles,
) -> Result<(), (String, String)> {
    let Some(first) = joints.first() else { return Ok(()) };
    let words = words_of(*first);
    for piece in value.split(',').flat_map(|piece| piece.split(" and ")) {
        let piece = piece.trim().trim_end_matches('°').trim_end_matches("degrees").trim();
        let name = piece.trim_end_matches(|c: char| c.is_ascii_digit() || c == '.').trim();
        let number = piece.strip_prefix(name).unwrap_or_default().trim();
        let plain = name.replace("forwards", "forward").replace("backwards", "back");
        let Some(word) = words.iter().find(|word| word.is == plain) else {
            return Err(unknown_word(name, words));
        };
        let degrees = match (number.parse::<f64>(), word.whole) {
            (Ok(number), _) if number <= 200.0 => number * word.sense,
            (Err(_), Some(whole)) if number.is_empty() => whole,
            _ => {
                return Err((
                    format!("“{piece}” does not say how far."),
                    format!("Write degrees from 0 to 180 after it, such as “{} 45”.", word.is),
                ));
            }
        };
        for joint in joints {
            angles.set(*joint, word.motion, degrees);
        }
    }
    Ok(())
}

fn unknown_word(name: &str, words: &[Word]) -> (String, String) {
    let known: Vec<&str> = words.iter().map(|word| word.is).collect();
    let way_out = match nearest(name, &known) {
        Some(near) => format!("Did you mean “{near}”?"),
        None => format!("The words here are: {}.", known.join(", ")),
    };
    (format!("“{name}” is no way that this part of the body moves."), way_out)
}
