//! A figure as it is written: a pose by its name, or a group of keys with joint angles in trade words.

use super::desk::{Desk, FromNode, read_fields, read_scalar, refuse_unknown_keys};
use super::node::{Field, Node, Value};
use super::record::record;
use super::text::Line;
use crate::figure::trade::{KEYS as JOINTS, joints_of, read_angles};
use crate::figure::{Angles, Arrow, Holding, Part, Scene, Support, View, Way};
use crate::place::{Place, Placed};

record! {
    /// What is said of one moment besides its angles.
    pub struct MomentKeys = "a figure" {
        /// A pose of the library to begin from.
        pose: Option<Placed<Line>>,
        /// Another pose, for a moment on the way from one to the other.
        towards: Option<Placed<Line>>,
        /// How much of that way, in per cent; half of it where it is not said.
        share: Option<Placed<u32>>,
        /// What carries the body.
        on: Option<Placed<Support>>,
        /// From where it is seen.
        view: Option<Placed<View>>,
        /// Left for right.
        mirror: Option<Placed<bool>>,
        /// A thing of the session’s equipment that is held.
        holds: Option<Placed<Line>>,
        /// The hand that holds it.
        hand: Option<Placed<Holding>>,
        /// What is on the floor or behind.
        with: Vec<Placed<Scene>>,
        /// The way something moves: hands forward and up.
        arrow: Vec<Placed<Arrow>>,
        /// The key point it shows, from 1.
        point: Option<Placed<u32>>,
        /// Or words of its own.
        says: Option<Placed<Line>>,
        /// For a pose of a list: what it is called.
        name: Option<Placed<Line>>,
        /// For a pose of a list: one side leads, so that left-handers mirror it.
        handed: Option<Placed<bool>>,
    }
}

/// One moment of a figure.
#[derive(Clone, Debug)]
pub struct MomentDoc {
    pub place: Place,
    pub keys: MomentKeys,
    pub angles: Angles,
}

record! {
    /// A pack’s own poses.
    pub struct PosesDoc = "poses.yaml" {
        /// Each with its name.
        poses: Vec<MomentDoc>,
    }
}

impl FromNode for MomentDoc {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        let field = |key: &str, node: &Node| Field {
            key: key.to_owned(),
            key_place: node.place,
            node: node.clone(),
        };
        let named = [field("pose", node)];
        let fields = match node.value {
            Value::Scalar(_) => &named[..],
            _ => read_fields(node, desk, "the name of a pose, or a group of keys")?,
        };
        let known: Vec<&str> = MomentKeys::KEYS.iter().chain(&JOINTS).copied().collect();
        refuse_unknown_keys(fields, &known, "a figure", desk);
        let mut angles = Angles::default();
        for field in fields {
            read_joint(field, &mut angles, desk);
        }
        let rest = fields.iter().filter(|field| MomentKeys::KEYS.contains(&field.key.as_str()));
        let rest = Node { place: node.place, value: Value::Fields(rest.cloned().collect()) };
        let keys = MomentKeys::from_node(&rest, desk)?;
        Some(Self { place: node.place, keys, angles })
    }
}

/// Reads the angles under one key.
fn read_joint(field: &Field, angles: &mut Angles, desk: &mut Desk) {
    let joints = joints_of(&field.key);
    if joints.is_empty() {
        return;
    }
    let Some(value) = read_scalar(&field.node, desk, "how it moves, such as “bent 90”") else {
        return;
    };
    let mut said = Angles::default();
    if let Err((says, way_out)) = read_angles(&joints, value, &mut said) {
        desk.refuse(field.node.place, says, way_out);
        return;
    }
    // What is said of one side stands over what is said of both, whichever is written first.
    let is_of_both = joints.len() == 2;
    *angles = if is_of_both { said.with(angles) } else { std::mem::take(angles).with(&said) };
}

impl FromNode for Arrow {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        let text = read_scalar(node, desk, "what moves and where, such as “hands up”")?;
        let plain = text.trim().replace("forwards", "forward").replace("backwards", "back");
        let (of, way) = plain.split_once(' ').unwrap_or((&plain, ""));
        let of = Part::ALL.iter().find(|part| part.word() == of).copied();
        let way = Way::ALL.iter().find(|known| known.word() == way.trim()).copied();
        if let (Some(of), Some(way)) = (of, way) {
            return Some(Self { of, way });
        }
        let way_out = format!(
            "Write what moves ({}) and where ({}), such as “hands forward and up”.",
            Part::WORDS.join(", "),
            Way::WORDS.join(", ")
        );
        desk.refuse(node.place, format!("“{text}” does not say what moves and where."), way_out);
        None
    }
}
