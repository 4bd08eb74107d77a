//! The flight of what a part throws, tosses or kicks: how far, how high and how long, with the drag of
//! the air; the headroom it needs; the farthest throw that a room allows.

use super::flight::{
    Ball, BestThrow, Flight, FlightInAir, Release, plan_best_throw, plan_farthest_under,
    plan_figure, plan_flight, plan_flight_in_air, plan_headroom, plan_speed, plan_toss,
    plan_toss_in_air,
};
use crate::pack::{FlightSaid, Need, Part, Session};
use crate::quantity::{Length, Mass, Range};

/// The angle of a throw that names none. A person’s own speed falls as the angle rises, so throws are
/// flatter than the best angle of the formula: athletes put the shot at 37° to 38° (Lenz and Rappl,
/// arXiv:1007.3689).
const USUAL_ANGLE: f64 = 38.0;

/// From one point of the figure to the next, in degrees.
const FIGURE_STEP: u32 = 5;

/// The flight of one part.
#[derive(Clone, Debug)]
pub struct FlightPlan {
    pub release: Release,
    /// What flies and its figures; `None` where nothing is known of its mass and size.
    pub ball: Option<(String, Ball)>,
    /// With drag where what flies is known, else without.
    pub flight: Flight,
    /// How far the reckoning with drag may be off, as a share; 0 for the closed form.
    pub error: f64,
    pub vacuum: Flight,
    /// To the top of what flies, up to the next centimetre.
    pub headroom: Length,
    /// Under the session’s headroom, or a usual room’s where it says none and is done indoors.
    pub ceiling: Option<Length>,
    /// Straight up.
    pub is_toss: bool,
}

/// What only a page for teachers shows is reckoned when it asks: each looks at many throws.
impl FlightPlan {
    fn drag(&self) -> Option<&Ball> {
        self.ball.as_ref().map(|(_, ball)| ball)
    }

    /// The best throw at this speed from this height.
    pub fn best(&self) -> Option<BestThrow> {
        let Release { speed, height, .. } = self.release;
        plan_best_throw(speed, height, self.drag()).filter(|_| !self.is_toss)
    }

    /// The farthest throw under the ceiling.
    pub fn best_in_room(&self) -> Option<BestThrow> {
        let ceiling = self.ceiling.filter(|_| !self.is_toss)?;
        let Release { speed, height, .. } = self.release;
        let radius = self.drag().map_or(0.0, Ball::radius);
        plan_farthest_under(metres(ceiling), speed, height, radius, self.drag())
    }

    /// Distance against angle, with drag where it is known.
    pub fn figure(&self) -> Vec<(f64, f64)> {
        if self.is_toss { Vec::new() } else { self.figure_with(self.drag()) }
    }

    /// The same without drag, beside one with it.
    pub fn vacuum_figure(&self) -> Vec<(f64, f64)> {
        let is_beside = !self.is_toss && self.ball.is_some();
        if is_beside { self.figure_with(None) } else { Vec::new() }
    }

    fn figure_with(&self, drag: Option<&Ball>) -> Vec<(f64, f64)> {
        plan_figure(self.release.speed, self.release.height, drag, FIGURE_STEP)
            .map(|figure| figure.points)
            .unwrap_or_default()
    }
}

/// The flight of each part; `None` where it says none, or one that can’t be.
pub fn plan_flights(session: &Session, room_height: Length) -> Vec<Option<FlightPlan>> {
    session.parts.iter().map(|part| plan_of(part, session, room_height)).collect()
}

fn plan_of(part: &Part, session: &Session, room_height: Length) -> Option<FlightPlan> {
    let said = part.flight.as_ref()?;
    let ball = said.of.as_ref().and_then(|name| ball_named(name, session));
    let drag = ball.as_ref().map(|(_, ball)| ball);
    let release = release_of(said, drag)?;
    let vacuum = plan_flight(&release)?;
    let in_air = match drag {
        Some(ball) => plan_flight_in_air(&release, ball)?,
        None => FlightInAir { flight: vacuum, error: 0.0 },
    };
    let radius = drag.map_or(0.0, Ball::radius);
    Some(FlightPlan {
        headroom: centimetres_up(plan_headroom(&in_air.flight, radius)?),
        flight: in_air.flight,
        error: in_air.error,
        ceiling: ceiling_of(session, room_height),
        is_toss: said.rise.is_some(),
        release,
        vacuum,
        ball,
    })
}

/// The speed that is written, or that the distance or the rise asks for.
fn release_of(said: &FlightSaid, drag: Option<&Ball>) -> Option<Release> {
    let height = metres(said.height.value);
    let angle = said.angle.as_ref().map_or(USUAL_ANGLE, |angle| angle.value.degrees());
    match (&said.speed, &said.distance, &said.rise) {
        (Some(speed), _, _) => {
            Some(Release { speed: speed.value.metres_a_second(), angle, height })
        }
        (None, Some(distance), _) => {
            let speed = plan_speed(metres(distance.value), angle, height, drag)?;
            Some(Release { speed, angle, height })
        }
        (None, None, Some(rise)) => {
            let rise = metres(rise.value);
            let speed = match drag {
                Some(ball) => plan_toss_in_air(rise, ball)?,
                None => plan_toss(rise)?.speed,
            };
            Some(Release { speed, angle: 90.0, height })
        }
        (None, None, None) => None,
    }
}

/// Indoors there is a ceiling: the headroom that the session says, else a usual room’s.
fn ceiling_of(session: &Session, room_height: Length) -> Option<Length> {
    use crate::read::words::Whereabouts;
    let space = session.space.as_ref()?;
    let said = space.height.as_ref().map(|height| height.value);
    space.whereabouts.contains(&Whereabouts::Indoors).then(|| said.unwrap_or(room_height))
}

/// A ball of the rules, else a thing of the session or what stands in for it first.
fn ball_named(name: &str, session: &Session) -> Option<(String, Ball)> {
    let published = Ball::PUBLISHED.iter().find(|(known, _)| *known == name);
    if let Some((known, ball)) = published {
        return Some(((*known).to_owned(), *ball));
    }
    let need = session.needs.iter().find(|need| need.name.value.0 == name)?;
    ball_of_need(need).or_else(|| ball_of_substitute(need))
}

fn ball_of_need(need: &Need) -> Option<(String, Ball)> {
    let thing = need.thing.as_ref()?;
    let ball = ball_of(thing.mass.as_deref()?, thing.size.as_deref()?)?;
    Some((need.name.to_string(), ball))
}

fn ball_of_substitute(need: &Need) -> Option<(String, Ball)> {
    need.substitutes.iter().find_map(|substitute| {
        let ball = ball_of(substitute.mass.as_deref()?, substitute.size.as_deref()?)?;
        Some((substitute.thing.to_string(), ball))
    })
}

/// The middle of both ranges.
fn ball_of(mass: &Range<Mass>, size: &Range<Length>) -> Option<Ball> {
    let grams = |mass: Mass| f64::from(mass.milligrams()) / 1e6;
    let mass = f64::midpoint(grams(mass.least?), grams(mass.most?));
    let size = f64::midpoint(metres(size.least?), metres(size.most?));
    Some(Ball::of_mass_and_size(mass, size)).filter(Ball::is_possible)
}

fn metres(length: Length) -> f64 {
    f64::from(length.millimetres()) / 1000.0
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "no throw of a session goes higher than a length can be"
)]
fn centimetres_up(metres: f64) -> Length {
    Length::from_millimetres(((metres * 100.0 - 1e-9).ceil() as u32).saturating_mul(10))
}
