//! A figure in words, for who can’t see it: put together from the pose out of few labels, so that it makes
//! sense in every language.

use super::phrases::comma;
use crate::drawing::figure::Held;
use crate::figure::{Arrow, Joint, Moment, Motion, Scene, Side, trade};
use crate::words::{Filling, Words};

/// Smaller angles are not worth telling.
const LEAST: f64 = 15.0;

/// What is told of one moment at most.
const MOST: usize = 6;

/// “Seen from the side, on both feet: knees bent 55°, trunk forward 35°. Holding a ball.”
pub fn moment_says(moment: &Moment, words: &Words) -> String {
    let pose = &moment.pose;
    let view = words.say(&format!("figure-view-{}", key(pose.view.word())));
    let on = words.say(&format!("figure-on-{}", key(pose.on.word())));
    let told = told_angles(moment, words);
    let list = if told.is_empty() { words.say("figure-straight") } else { told.join(comma(words)) };
    let filling = [
        ("view", Filling::Text(&view)),
        ("on", Filling::Text(&on)),
        ("angles", Filling::Text(&list)),
    ];
    let mut sentences = vec![words.say_with("figure-says", &filling)];
    if let Some(thing) = &moment.holds {
        sentences.push(words.say(&format!("figure-holds-{}", Held::of(thing).word())));
    }
    let mut scenes: Vec<Scene> = pose.with.clone();
    scenes.dedup();
    sentences.extend(scenes.iter().map(|s| words.say(&format!("figure-with-{}", key(s.word())))));
    sentences.extend(moment.arrows.iter().map(|arrow| arrow_says(*arrow, words)));
    sentences.join(" ")
}

/// The name of the pose for English readers: the library is named in the English of the trade.
pub fn pose_name(moment: &Moment, words: &Words) -> Option<String> {
    let is_english = words.language().starts_with("en");
    moment.name.clone().filter(|_| is_english && !moment.is_changed)
}

/// A whole strip: every moment with its number, and for whom to mirror it.
pub fn figure_says(moments: &[Moment], words: &Words) -> String {
    let mut sentences: Vec<String> = Vec::new();
    for (index, moment) in moments.iter().enumerate() {
        let named = pose_name(moment, words).map_or_else(String::new, |name| {
            let mut letters = name.chars();
            let first = letters.next().map(|first| first.to_uppercase().to_string());
            format!("{}{}. ", first.unwrap_or_default(), letters.as_str())
        });
        let says = moment_says(moment, words);
        sentences.push(if moments.len() > 1 {
            format!("{}. {named}{says}", index + 1)
        } else {
            format!("{named}{says}")
        });
    }
    if moments.iter().any(|moment| moment.pose.is_handed) {
        sentences.push(words.say("figure-handed"));
    }
    sentences.join(" ")
}

/// The joint of a side.
type OfSide = fn(Side) -> Joint;

/// The order that the body is told in.
const ORDER: [(&str, &str, OfSide); 6] = [
    ("legs", "leg", Joint::Leg),
    ("knees", "knee", Joint::Knee),
    ("arms", "arm", Joint::Arm),
    ("elbows", "elbow", Joint::Elbow),
    ("feet", "foot", Joint::Foot),
    ("wrists", "wrist", Joint::Wrist),
];

fn told_angles(moment: &Moment, words: &Words) -> Vec<String> {
    let ways = |joint| ways_of(moment, joint, words);
    let tell = |ways: Option<String>, name: &str, side: Option<Side>| {
        let (ways, part) = (ways?, part_name(name, side, words));
        let filling = [("part", Filling::Text(&part)), ("ways", Filling::Text(&ways))];
        // “knees bent 55°”
        Some(words.say_with("figure-angle", &filling))
    };
    let mut told = Vec::new();
    for (name, joint) in [("trunk", Joint::Trunk), ("back", Joint::Back)] {
        told.extend(tell(ways(joint), name, None));
    }
    for (both, one, joint) in ORDER {
        let [left, right] = [Side::Left, Side::Right].map(|side| ways(joint(side)));
        if left == right {
            told.extend(tell(left, both, None));
        } else {
            told.extend(tell(left, one, Some(Side::Left)));
            told.extend(tell(right, one, Some(Side::Right)));
        }
    }
    told.extend(tell(ways(Joint::Head), "head", None));
    told.truncate(MOST);
    told
}

fn part_name(name: &str, side: Option<Side>, words: &Words) -> String {
    let part = words.say(&format!("figure-part-{name}"));
    let key = match side {
        None => return part,
        Some(Side::Left) => "figure-left",
        Some(Side::Right) => "figure-right",
    };
    words.say_with(key, &[("part", Filling::Text(&part))])
}

/// “bent 55°, out 20°”; nothing where there is nothing to tell.
fn ways_of(moment: &Moment, joint: Joint, words: &Words) -> Option<String> {
    let angles = &moment.pose.angles;
    let ways: Vec<String> = [Motion::Forward, Motion::Sideways]
        .into_iter()
        .filter(|motion| angles.is_said(joint, *motion))
        .filter_map(|motion| way_of(joint, motion, angles.of(joint, motion), words))
        .collect();
    (!ways.is_empty()).then(|| ways.join(comma(words)))
}

/// “bent 55°”, to five degrees.
fn way_of(joint: Joint, motion: Motion, degrees: f64, words: &Words) -> Option<String> {
    if degrees.abs() < LEAST {
        return None;
    }
    if matches!(joint, Joint::Arm(_)) && motion == Motion::Forward && degrees > 155.0 {
        return Some(words.say("figure-way-up"));
    }
    let way = words.say(&format!("figure-way-{}", key(trade::word_for(joint, motion, degrees))));
    Some(format!("{way} {:.0}°", (degrees.abs() / 5.0).round() * 5.0))
}

fn arrow_says(arrow: Arrow, words: &Words) -> String {
    let part = words.say(&format!("figure-part-{}", arrow.of.word()));
    let way = words.say(&format!("figure-way-{}", key(arrow.way.word())));
    words.say_with("figure-arrow", &[("part", Filling::Text(&part)), ("way", Filling::Text(&way))])
}

fn key(word: &str) -> String {
    word.replace(' ', "-")
}
