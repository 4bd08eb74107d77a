//! A figure as it is written: a pose by its name, or a group of keys with joint angles in trade words.

use super::desk::{Desk, FromNode, read_scalar};
use super::node::{Field, Node, Value};
use super::record::record;
use super::shape::Shape;
use super::text::Line;
use crate::figure::trade::{joints_of, read_angles};
use crate::figure::{Angles, Arrow, Holding, Part, Scene, Support, View, Way};
use crate::place::{Place, Placed};

record! {
    /// One moment of a figure: a pose by its name, or what moves and how far.
    pub struct MomentKeys = "a figure" {
        /// A pose of the library to begin from.
        pose: Option<Placed<Line>> = "ready stance",
        /// Another pose, for a moment on the way from one to the other.
        towards: Option<Placed<Line>> = "take-off",
        /// How much of that way, in per cent; half of it where it is not said.
        share: Option<Placed<u32>>,
        /// What carries the body.
        on: Option<Placed<Support>>,
        /// From where it is seen.
        view: Option<Placed<View>>,
        /// Left for right.
        mirror: Option<Placed<bool>>,
        /// The lean of the whole body.
        trunk: Option<Placed<Line>> = "forward 30",
        /// How the back bends.
        back: Option<Placed<Line>> = "rounded 20",
        /// How the head turns.
        head: Option<Placed<Line>> = "up 20",
        /// Both arms at the shoulders.
        arms: Option<Placed<Line>> = "back 45",
        /// Both elbows.
        elbows: Option<Placed<Line>> = "bent 90",
        /// Both wrists.
        wrists: Option<Placed<Line>> = "back 30",
        /// Both legs at the hips; left open, they find the balance.
        legs: Option<Placed<Line>> = "sideways 20",
        /// Both knees.
        knees: Option<Placed<Line>> = "bent 90",
        /// Both feet at the ankles.
        feet: Option<Placed<Line>> = "pointed 40",
        /// The left arm alone.
        left_arm: Option<Placed<Line>> = "forward 90",
        /// The left elbow alone.
        left_elbow: Option<Placed<Line>> = "bent 90",
        /// The left wrist alone.
        left_wrist: Option<Placed<Line>> = "back 30",
        /// The left leg alone.
        left_leg: Option<Placed<Line>> = "forward 45",
        /// The left knee alone.
        left_knee: Option<Placed<Line>> = "bent 60",
        /// The left foot alone.
        left_foot: Option<Placed<Line>> = "pointed 30",
        /// The right arm alone.
        right_arm: Option<Placed<Line>> = "forward 90",
        /// The right elbow alone.
        right_elbow: Option<Placed<Line>> = "bent 90",
        /// The right wrist alone.
        right_wrist: Option<Placed<Line>> = "back 30",
        /// The right leg alone.
        right_leg: Option<Placed<Line>> = "forward 45",
        /// The right knee alone.
        right_knee: Option<Placed<Line>> = "bent 60",
        /// The right foot alone.
        right_foot: Option<Placed<Line>> = "pointed 30",
        /// A thing of the session’s equipment that is held.
        holds: Option<Placed<Line>> = "beanbag",
        /// The hand that holds it.
        hand: Option<Placed<Holding>>,
        /// What is on the floor or behind.
        with: Vec<Placed<Scene>>,
        /// The way something moves.
        arrow: Vec<Placed<Arrow>> = "hands forward and up",
        /// The key point it shows, from 1.
        point: Option<Placed<u32>>,
        /// Or words of its own.
        says: Option<Placed<Line>> = "Quiet as a cat",
        /// For a pose of a list: what it is called.
        name: Option<Placed<Line>> = "crane stand",
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
        let keys = match node.value {
            Value::Scalar(_) => {
                let pose = Field { key: "pose".into(), key_place: node.place, node: node.clone() };
                let group = Node { place: node.place, value: Value::Fields(vec![pose]) };
                MomentKeys::from_node(&group, desk)?
            }
            _ => MomentKeys::from_node(node, desk)?,
        };
        let angles = keys.angles(desk);
        Some(Self { place: node.place, keys, angles })
    }
    fn shape() -> Shape {
        Shape::Either(Box::new(Line::shape()), &MomentKeys::GROUP)
    }
}

impl MomentKeys {
    /// What is said of the joints: of both sides first, so that one side stands over both.
    fn angles(&self, desk: &mut Desk) -> Angles {
        let mut angles = Angles::default();
        for (key, said) in self.joints() {
            let Some(said) = said else { continue };
            if let Err((says, way_out)) = read_angles(&joints_of(key), said, &mut angles) {
                desk.refuse(said.place, says, way_out);
            }
        }
        angles
    }

    const fn joints(&self) -> [(&'static str, &Option<Placed<Line>>); 21] {
        [
            ("trunk", &self.trunk),
            ("back", &self.back),
            ("head", &self.head),
            ("arms", &self.arms),
            ("elbows", &self.elbows),
            ("wrists", &self.wrists),
            ("legs", &self.legs),
            ("knees", &self.knees),
            ("feet", &self.feet),
            ("left_arm", &self.left_arm),
            ("left_elbow", &self.left_elbow),
            ("left_wrist", &self.left_wrist),
            ("left_leg", &self.left_leg),
            ("left_knee", &self.left_knee),
            ("left_foot", &self.left_foot),
            ("right_arm", &self.right_arm),
            ("right_elbow", &self.right_elbow),
            ("right_wrist", &self.right_wrist),
            ("right_leg", &self.right_leg),
            ("right_knee", &self.right_knee),
            ("right_foot", &self.right_foot),
        ]
    }
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
    fn shape() -> Shape {
        Shape::Text { most: 60 }
    }
}
