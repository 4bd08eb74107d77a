//! The time line in its small form, and the strip of work and rest, both to scale. They stand on pages
//! only, where they stretch with the page.

use serde::Serialize;

use crate::pack::{Part, Session};
use crate::plan::{PartSpan, TimePlan};
use crate::quantity::Duration;
use crate::read::words::Effort;

/// Where the floor line lies, from the top.
const FLOOR: u32 = 66;

/// How tall a bar stands for an effort.
const fn height_of(effort: Option<Effort>) -> u32 {
    match effort {
        None | Some(Effort::Rest) => 8,
        Some(Effort::Light) => 22,
        Some(Effort::Moderate) => 40,
        Some(Effort::Vigorous) => 60,
    }
}

/// The time line in small, as the `d` of an SVG path in a field of 100 × 66.
pub(super) fn draw_skyline(session: &Session, time: &TimePlan) -> String {
    session.parts.iter().zip(&time.spans).fold(String::new(), |path, (part, span)| {
        let (x, width) = (share(span.start, time.total), share(span.total, time.total));
        let height = height_of(part.effort.as_ref().map(|effort| effort.value));
        let width = figure((width - 2.0).max(0.5));
        format!("{path}M{} {FLOOR}v-{height}h{width}v{height}z", figure(x))
    })
}

/// Work and rest in rounds as one dashed line in a field 100 wide: the dashes are the work, the gaps
/// the rest, what stands before and after is talk and recovery.
#[derive(Serialize, Clone, Debug)]
pub(super) struct Beats {
    from: String,
    to: String,
    /// In seconds, so that the dashes can be said in seconds.
    length: u32,
    dashes: String,
}

/// Nothing for a part without rounds.
pub(super) fn draw_beats(part: &Part, span: &PartSpan, is_rtl: bool) -> Option<Beats> {
    let time = part.time.as_ref().filter(|time| time.rounds > 1)?;
    let rounds = time.work * time.rounds + time.rest * (time.rounds - 1);
    let (from, to) = (share(span.talk, span.total), share(span.talk + rounds, span.total));
    let place = |x: f64| figure(if is_rtl { 100.0 - x } else { x });
    let dashes = format!("{} {}", time.work.seconds(), time.rest.seconds());
    Some(Beats { from: place(from), to: place(to), length: rounds.seconds(), dashes })
}

/// The share of `whole` in per cent.
fn share(part: Duration, whole: Duration) -> f64 {
    f64::from(part.seconds()) * 100.0 / f64::from(whole.seconds().max(1))
}

/// Two decimals at most: a hundredth of a per cent is a tenth of a pixel.
fn figure(number: f64) -> String {
    let text = format!("{number:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_short() {
        assert_eq!(figure(33.333_333), "33.33");
        assert_eq!(figure(50.0), "50");
        assert_eq!(figure(0.0), "0");
    }
}
