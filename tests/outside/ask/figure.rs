//! Bodies and their balance, for the check of figures.

use homeground::figure::library::Library;
use homeground::figure::proportions::{Proportions, Segment};
use homeground::figure::{
    Angles, Body, Motion, Point, Pose, Side, balance, place_body, range, trade,
};
use serde_json::{Map, Value, json};

pub fn answer(question: &Value) -> Value {
    match question["what"].as_str() {
        Some("body") => body(question),
        Some("segments") => segments(question),
        Some("ranges") => ranges(),
        Some("library") => library(),
        _ => json!({ "fault": "no such question about figures" }),
    }
}

fn motion_of(name: &str) -> Motion {
    match name {
        "sideways" => Motion::Sideways,
        "turned" => Motion::Turned,
        _ => Motion::Forward,
    }
}

fn xyz(at: Point) -> Value {
    json!([at.x, at.y, at.z])
}

/// The points of a body whose angles are all said, hips at the origin.
fn body(question: &Value) -> Value {
    let mut angles = Angles::default();
    for (key, motions) in question["angles"].as_object().into_iter().flatten() {
        for joint in trade::joints_of(key) {
            for (name, degrees) in motions.as_object().into_iter().flatten() {
                angles.set(joint, motion_of(name), degrees.as_f64().unwrap_or_default());
            }
        }
    }
    let body = Body::of(&angles, Proportions::GROWN, homeground::figure::Flat::default());
    let mut answer = points_of(&body);
    answer.insert("centre".into(), xyz(body.centre_of_mass()));
    Value::Object(answer)
}

fn points_of(body: &Body) -> Map<String, Value> {
    let mut points = Map::new();
    for (name, at) in [
        ("hips", body.hips),
        ("waist", body.waist),
        ("chest", body.chest),
        ("chin", body.chin),
        ("head", body.head),
    ] {
        points.insert(name.into(), xyz(at));
    }
    for (side, name) in [(Side::Left, "left"), (Side::Right, "right")] {
        let (arm, leg) = (body.arm(side), body.leg(side));
        let [heel, ball, toes] = body.sole(side);
        for (part, at) in [
            ("shoulder", arm.root),
            ("elbow", arm.bend),
            ("wrist", arm.end),
            ("fingers", arm.tip),
            ("hip", leg.root),
            ("knee", leg.bend),
            ("ankle", leg.end),
            ("heel", heel),
            ("ball", ball),
            ("toes", toes),
        ] {
            points.insert(format!("{name} {part}"), xyz(at));
        }
    }
    points
}

fn segments(question: &Value) -> Value {
    let years = question["years"].as_f64();
    let body = years.map_or(Proportions::GROWN, Proportions::of_age);
    let each = Segment::ALL.iter().map(|segment| {
        let figures = [body.length(*segment), segment.mass(), segment.centre()];
        (segment.name().to_owned(), json!(figures))
    });
    json!({ "segments": each.collect::<Map<_, _>>(), "head": body.head, "ankle": body.ankle() })
}

fn ranges() -> Value {
    let mut answer = Map::new();
    for key in trade::KEYS {
        for joint in trade::joints_of(key).into_iter().take(1) {
            for name in ["forward", "sideways", "turned"] {
                if let Some((least, most)) = range::range_of((joint, motion_of(name))) {
                    answer.insert(format!("{key} {name}"), json!([least, most]));
                }
            }
        }
    }
    Value::Object(answer)
}

/// Every pose of the library on its floor: its points, what is beyond a range, how steady it is.
fn library() -> Value {
    let each = Library::shipped().poses.iter().map(|named| {
        let pose: &Pose = &named.pose;
        let (body, _) = place_body(pose, Proportions::of_age(10.0));
        json!({
            "name": named.name,
            "on": pose.on.word(),
            "points": points_of(&body),
            "centre": xyz(body.centre_of_mass()),
            "falls": balance::falls(pose, &body),
            "steady": balance::steadiness(pose, &body),
            "contacts": balance::contacts(pose, &body),
            "beyond": range::beyond_range(&pose.angles).len(),
        })
    });
    json!({ "poses": each.collect::<Vec<_>>() })
}
