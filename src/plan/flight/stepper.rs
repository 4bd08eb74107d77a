//! Steps of the right size until the apex or the ground is met exactly.
//!
//! In: a motion and where it begins. Out: state and time at the event. The size of the steps is
//! controlled by the doubt of each, relative to each value itself. Source of the control: Hairer,
//! Nørsett and Wanner, Solving Ordinary Differential Equations I, section II.4.

use super::motion::{Motion, State, Step};

/// What a part of the flight ends with.
#[derive(Clone, Copy, Debug)]
pub(super) enum Event {
    /// No upward speed is left.
    Apex,
    /// It has come down by this much, m.
    Down(f64),
}

/// So many steps and no more: a feather from a tower settles into one speed and then needs many
/// small steps for very long. What is thrown in play needs under 200.
const MOST_STEPS: usize = 2_000;

/// Halvings that bring any step down to neighbouring binary numbers.
const MOST_HALVINGS: usize = 60;

/// Keeps a value that has not yet left 0 from being asked for digits of nothing.
const TINY: f64 = 1e-30;

impl Event {
    /// How far off it is; positive before it.
    fn ahead(self, state: &State) -> f64 {
        match self {
            Self::Apex => state.up,
            Self::Down(by) => state.rise + by,
        }
    }

    /// How fast it comes nearer, as a rate of [`Self::ahead`].
    fn nearing(self, rates: &State) -> f64 {
        match self {
            Self::Apex => rates.up,
            Self::Down(_) => rates.rise,
        }
    }
}

/// Goes on from `from` until the event; gives the state there and the seconds it took. `None`
/// where values run out of range or the steps run out.
pub(super) fn go_until(
    event: Event,
    motion: &Motion,
    from: State,
    first_span: f64,
    tolerance: f64,
) -> Option<(State, f64)> {
    let (mut state, mut rates) = (from, motion.rates(&from));
    let (mut time, mut span) = (0.0, first_span);
    for _ in 0..MOST_STEPS {
        let step = motion.step(&state, &rates, span);
        let doubt = relative_doubt(&state, &step) / tolerance;
        if doubt <= 1.0 {
            if event.ahead(&step.to) <= 0.0 {
                let (met, part) = meet(event, motion, (&state, &rates), span, time);
                return Some((met, time + part));
            }
            (state, rates) = (step.to, step.rates);
            time += span;
        }
        span *= growth(doubt);
    }
    None
}

/// The largest doubt of the four values, each against its own size.
fn relative_doubt(from: &State, step: &Step) -> f64 {
    let sizes = from.values().into_iter().zip(step.to.values());
    let doubts = step.doubt.values().into_iter().zip(sizes);
    let shares = doubts.map(|(doubt, (a, b))| doubt.abs() / a.abs().max(b.abs()).max(TINY));
    // A value out of range has every doubt; `max` alone would pass over it.
    shares.fold(0.0, |most, share| if share.is_nan() { f64::INFINITY } else { share.max(most) })
}

/// The next step against this one. The doubt of a step goes with the fifth power of its size and
/// aims at a little less than is allowed.
fn growth(doubt: f64) -> f64 {
    (0.9 * doubt.powf(-0.2)).clamp(0.2, 5.0)
}

/// The event lies within this step: finds the shorter step that ends on it, by Newton’s method
/// with halving where that would leave the step. `gone` is the time up to this step: what can’t
/// be told apart beside it is exact enough.
fn meet(
    event: Event,
    motion: &Motion,
    from: (&State, &State),
    span: f64,
    gone: f64,
) -> (State, f64) {
    let (mut before, mut after) = (0.0, span);
    let mut part = span;
    let mut step = motion.step(from.0, from.1, part);
    for _ in 0..MOST_HALVINGS {
        let ahead = event.ahead(&step.to);
        let missing = -ahead / event.nearing(&step.rates);
        if missing.abs() <= 8.0 * f64::EPSILON * (gone + part) {
            break;
        }
        *(if ahead > 0.0 { &mut before } else { &mut after }) = part;
        let guess = part + missing;
        part = if guess > before && guess < after { guess } else { before.midpoint(after) };
        step = motion.step(from.0, from.1, part);
    }
    (step.to, part)
}
