//! A scale from marks, in steps of their rule, to points, and the round steps to write along it.

/// A straight scale.
#[derive(Clone, Copy, Debug)]
pub struct Scale {
    least: f64,
    most: f64,
    from: f32,
    to: f32,
}

impl Scale {
    /// A scale over all these marks between two places; a single mark lies in the middle.
    pub fn over(marks: impl Iterator<Item = f64>, (from, to): (f32, f32)) -> Self {
        let (least, most) =
            marks.fold((f64::MAX, f64::MIN), |(l, m), mark| (l.min(mark), m.max(mark)));
        let (least, most) = if least > most { (0.0, 1.0) } else { (least, most) };
        let (least, most) =
            if most - least < 1.0 { (least - 1.0, most + 1.0) } else { (least, most) };
        Self { least, most, from, to }
    }

    #[allow(clippy::cast_possible_truncation, reason = "a share of the scale")]
    pub fn at(&self, mark: f64) -> f32 {
        let share = (mark - self.least) / (self.most - self.least);
        self.from + share as f32 * (self.to - self.from)
    }

    #[allow(clippy::cast_precision_loss, reason = "no mark has more than 1 000 000 000 steps")]
    pub fn at_step(&self, step: i64) -> f32 {
        self.at(step as f64)
    }

    pub const fn ends(&self) -> (f64, f64) {
        (self.least, self.most)
    }
}

/// Round numbers of steps between two marks: 1, 2 or 5 of a power of ten apart, `most` at most.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    reason = "no mark has more than 1 000 000 000 steps"
)]
pub fn tick_steps((least, most): (f64, f64), count: u32) -> Vec<i64> {
    let mut apart = 1_i64;
    let mut factors = [2, 5, 10].into_iter().cycle();
    let mut power = 1_i64;
    while (most - least) / apart as f64 > f64::from(count) {
        let factor = factors.next().unwrap_or(10);
        apart = power * factor;
        if factor == 10 {
            power *= 10;
        }
    }
    let first = (least / apart as f64).ceil() as i64;
    let last = (most / apart as f64).floor() as i64;
    (first..=last).map(|step| step * apart).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_are_round_and_few() {
        assert_eq!(tick_steps((93.0, 171.0), 5), [100, 120, 140, 160]);
        assert_eq!(tick_steps((0.0, 3.0), 5), [0, 1, 2, 3]);
        assert_eq!(tick_steps((7.0, 2400.0), 5), [500, 1000, 1500, 2000]);
    }

    #[test]
    fn one_mark_lies_in_the_middle() {
        let scale = Scale::over([5.0].into_iter(), (0.0, 10.0));
        assert!((scale.at(5.0) - 5.0).abs() < 1e-6);
        assert!((scale.at_step(6) - 10.0).abs() < 1e-6);
    }
}
