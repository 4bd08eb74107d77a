//! One part of a session as it is shown on its page and to teachers.

use serde::Serialize;

use super::Site;
use super::figures::FigureView;
use super::html::{Html, Scribe};
use super::picture::{PictureView, show_pictures};
use super::plans::FloorView;
use super::timeline::{Beats, draw_beats};
use crate::pack::{Measure, Part};
use crate::place::Placed;
use crate::plan::PartSpan;
use crate::prose::plain_line;
use crate::quantity::Duration;
use crate::read::{Line, PartTime};
use crate::render::phrases::{part_key, time_pieces};
use crate::render::quantities::Said;

#[derive(Serialize, Clone, Debug)]
pub(super) struct PartView {
    /// Counts from 1; the page's anchors are `part-1` …
    number: usize,
    kind: &'static str,
    title: String,
    /// `4 min 30 s`
    time: String,
    /// Seconds for the timer: explain, set up, work, rest, rounds, recover.
    times: Option<String>,
    from: String,
    to: String,
    effort: Option<&'static str>,
    /// `work 30 s`, `4 rounds` …; nothing for a plain time.
    pieces: Vec<String>,
    beats: Option<Beats>,
    /// `[1, 2, 3, 4]` to tick off.
    rounds: Vec<u32>,
    task: Option<&'static str>,
    how: Html,
    key_points: Vec<Html>,
    faults: Vec<FaultView>,
    easier: Option<Html>,
    harder: Option<Html>,
    adult: Option<&'static str>,
    throw: Option<ThrowView>,
    measure: Option<MeasureView>,
    /// `Points: 1 from 100 cm, 2 from 120 cm.`
    pub(super) points: Option<String>,
    pictures: Vec<PictureView>,
    /// Filled in where the page shows figures.
    pub(super) figure: Option<FigureView>,
    /// Which picture of the figure shows each key point, 0 for none.
    pictured: Vec<usize>,
    /// Filled in where the page shows floors.
    pub(super) floor: Option<FloorView>,
}

#[derive(Serialize, Clone, Debug)]
struct FaultView {
    see: Html,
    say: Html,
}

#[derive(Serialize, Clone, Debug)]
struct ThrowView {
    landing_zone: Option<Html>,
    stop_and_collect: Option<Html>,
}

/// How a try is measured.
#[derive(Serialize, Clone, Debug)]
pub(super) struct MeasureView {
    what: &'static str,
    unit: String,
    attempts: u32,
    better: Option<&'static str>,
    criteria: Vec<Html>,
}

pub(super) fn show_part(
    site: &Site<'_>,
    scribe: &Scribe<'_>,
    number: usize,
    part: &Part,
    span: &PartSpan,
) -> PartView {
    let line = |text: &Option<Placed<Line>>| scribe.line_if_any(text.as_ref());
    PartView {
        number,
        kind: part_key(part.kind),
        title: plain_line(&part.title),
        time: span.total.say(&site.words),
        times: part.time.as_ref().map(|time| timer_of(time)),
        from: span.start.clock(),
        to: span.end().clock(),
        effort: part.effort.as_ref().map(|effort| effort.word()),
        pieces: part.time.as_ref().map(|time| time_pieces(time, &site.words)).unwrap_or_default(),
        beats: draw_beats(part, span, site.is_rtl()),
        rounds: rounds_of(part),
        task: part.task.as_ref().map(|task| task.word()),
        how: scribe.prose(&part.how),
        key_points: scribe.lines(&part.key_points),
        faults: part
            .faults
            .iter()
            .map(|fault| FaultView { see: scribe.line(&fault.see), say: scribe.line(&fault.say) })
            .collect(),
        easier: line(&part.easier),
        harder: line(&part.harder),
        adult: part.adult.as_ref().map(|adult| adult.word()),
        throw: part.throw.as_ref().map(|rules| ThrowView {
            landing_zone: line(&rules.landing_zone),
            stop_and_collect: line(&rules.stop_and_collect),
        }),
        measure: part.measure.as_ref().map(|measure| show_measure(scribe, measure)),
        pictures: show_pictures(site.publication.pack, scribe, &part.pictures),
        floor: None,
        figure: None,
        pictured: part.figure.pictured(part.key_points.len()),
        points: None,
    }
}

fn timer_of(time: &PartTime) -> String {
    let [explain, set_up, work, rest, recover] =
        [time.explain, time.set_up, time.work, time.rest, time.recover].map(Duration::seconds);
    format!("{explain} {set_up} {work} {rest} {} {recover}", time.rounds)
}

/// More rounds than this are counted, not ticked.
const MOST_TICKS: u32 = 12;

fn rounds_of(part: &Part) -> Vec<u32> {
    let rounds = part.time.as_ref().map_or(1, |time| time.rounds);
    if (2..=MOST_TICKS).contains(&rounds) { (1..=rounds).collect() } else { Vec::new() }
}

pub(super) fn show_measure(scribe: &Scribe<'_>, measure: &Measure) -> MeasureView {
    MeasureView {
        what: measure.what.word(),
        unit: measure.unit.as_ref().map(|unit| plain_line(unit)).unwrap_or_default(),
        attempts: measure.attempts.as_ref().map_or(1, |attempts| attempts.value),
        better: measure.better.as_ref().map(|better| better.word()),
        criteria: scribe.lines(&measure.criteria),
    }
}
