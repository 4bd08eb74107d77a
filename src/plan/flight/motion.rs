//! The equations of motion with quadratic drag, and one step of Dormand and Prince’s method.
//!
//! Source of the method: J. R. Dormand and P. J. Prince, A family of embedded Runge–Kutta
//! formulae, J. Comput. Appl. Math. 6 (1980), RK5(4)7M.

use super::GRAVITY;

/// What changes in flight. The way along the ground is counted in units of the speed along the
/// ground at release: a steep throw’s short way is then as exact as a flat throw’s long one.
#[derive(Clone, Copy, Debug)]
pub(super) struct State {
    /// Seconds’ worth of the first speed along the ground.
    pub way: f64,
    /// What is left of the first speed along the ground, from 1.
    pub keep: f64,
    /// Above where this part of the flight began, m.
    pub rise: f64,
    /// Upward speed, m/s.
    pub up: f64,
}

/// The forces on one throw.
#[derive(Clone, Copy, Debug)]
pub(super) struct Motion {
    /// Slowing for each m/s squared, 1/m.
    pub slowing: f64,
    /// Speed along the ground at release, m/s.
    pub along: f64,
}

/// What one step comes to.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    pub to: State,
    /// The rates at its end, which are the first rates of the next step.
    pub rates: State,
    /// The fifth-order result less the fourth-order one.
    pub doubt: State,
}

/// The stages: each is reckoned from the rates of those before it; the last is the result.
const STAGE_2: [f64; 1] = [1.0 / 5.0];
const STAGE_3: [f64; 2] = [3.0 / 40.0, 9.0 / 40.0];
const STAGE_4: [f64; 3] = [44.0 / 45.0, -56.0 / 15.0, 32.0 / 9.0];
const STAGE_5: [f64; 4] = [19372.0 / 6561.0, -25360.0 / 2187.0, 64448.0 / 6561.0, -212.0 / 729.0];
const STAGE_6: [f64; 5] =
    [9017.0 / 3168.0, -355.0 / 33.0, 46732.0 / 5247.0, 49.0 / 176.0, -5103.0 / 18656.0];
const RESULT: [f64; 6] =
    [35.0 / 384.0, 0.0, 500.0 / 1113.0, 125.0 / 192.0, -2187.0 / 6784.0, 11.0 / 84.0];

/// Weights of the fifth order less those of the fourth.
const DOUBTS: [f64; 7] = [
    71.0 / 57600.0,
    0.0,
    -71.0 / 16695.0,
    71.0 / 1920.0,
    -17253.0 / 339_200.0,
    22.0 / 525.0,
    -1.0 / 40.0,
];

impl Motion {
    /// Drag acts against the way it moves, by the square of its speed; weight acts downwards.
    pub fn rates(&self, state: &State) -> State {
        let drag = self.slowing * self.speed(state);
        State {
            way: state.keep,
            keep: -drag * state.keep,
            rise: state.up,
            up: -GRAVITY - drag * state.up,
        }
    }

    /// m/s.
    pub fn speed(&self, state: &State) -> f64 {
        let along = self.along * state.keep;
        (along * along + state.up * state.up).sqrt()
    }

    /// One step of `span` seconds.
    pub fn step(&self, from: &State, rates: &State, span: f64) -> Step {
        let first = *rates;
        let second = self.rates(&from.plus(span, STAGE_2, [first]));
        let third = self.rates(&from.plus(span, STAGE_3, [first, second]));
        let fourth = self.rates(&from.plus(span, STAGE_4, [first, second, third]));
        let fifth = self.rates(&from.plus(span, STAGE_5, [first, second, third, fourth]));
        let sixth = self.rates(&from.plus(span, STAGE_6, [first, second, third, fourth, fifth]));
        let to = from.plus(span, RESULT, [first, second, third, fourth, fifth, sixth]);
        let last = self.rates(&to);
        let all = [first, second, third, fourth, fifth, sixth, last];
        Step { to, rates: last, doubt: State::NOTHING.plus(span, DOUBTS, all) }
    }
}

impl State {
    const NOTHING: Self = Self { way: 0.0, keep: 0.0, rise: 0.0, up: 0.0 };

    fn plus<const N: usize>(&self, span: f64, weights: [f64; N], rates: [Self; N]) -> Self {
        let mut sum = Self::NOTHING;
        for (weight, rate) in weights.iter().zip(rates) {
            sum.way += weight * rate.way;
            sum.keep += weight * rate.keep;
            sum.rise += weight * rate.rise;
            sum.up += weight * rate.up;
        }
        Self {
            way: self.way + span * sum.way,
            keep: self.keep + span * sum.keep,
            rise: self.rise + span * sum.rise,
            up: self.up + span * sum.up,
        }
    }

    pub(super) fn values(&self) -> [f64; 4] {
        [self.way, self.keep, self.rise, self.up]
    }
}
