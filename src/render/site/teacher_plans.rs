//! The plans of a session on the teachers’ page: effort, other slots, floors, things, flights, marks
//! and reading, each with its figures.

use serde::Serialize;

use super::Site;
use super::html::{Html, drawn};
use super::plans::{SlotView, page_room, show_slots};
use crate::drawing::{Curves, draw_angle_figure, draw_effort_bar};
use crate::pack::{Part, Session};
use crate::plan::{
    ACTIVE_A_DAY, FlightPlan, MarksPlan, PartFloor, Plans, SessionReading, usual_work,
};
use crate::prose::plain_line;
use crate::quantity::Duration;
use crate::render::equipment_phrases::{counted_things, refusal_sentence};
use crate::render::flight_phrases::flight_sentences;
use crate::render::phrases::{effort_name, hold_together};
use crate::render::plan_phrases::still_sentence;
use crate::render::quantities::{Said, say_size};
use crate::words::Filling;

/// A figure and its name.
#[derive(Serialize, Clone, Debug)]
struct Row {
    name: String,
    figures: Vec<String>,
}

/// Drawings and sentences about one part.
#[derive(Serialize, Clone, Debug)]
struct PartPlan {
    title: String,
    svg: Option<Html>,
    says: Vec<String>,
    rows: Vec<Row>,
}

#[derive(Serialize, Clone, Debug)]
pub(super) struct TeacherPlans {
    effort: Html,
    effort_says: Vec<String>,
    slots: Vec<SlotView>,
    /// Part, floor, headroom, whether it fits.
    floors: Vec<Row>,
    /// Need, what serves it, what is refused.
    things: Vec<Row>,
    flights: Vec<PartPlan>,
    marks: Vec<PartPlan>,
    reading: Option<ReadingView>,
}

#[derive(Serialize, Clone, Debug)]
struct ReadingView {
    rows: Vec<Row>,
    long_words: Vec<String>,
    long_sentences: Vec<String>,
}

pub(super) fn show_teacher_plans(
    site: &Site<'_>,
    session: &Session,
    plans: &Plans,
) -> TeacherPlans {
    let bar = draw_effort_bar(&plans.effort, &plans.time, &site.words, page_room(site));
    TeacherPlans {
        effort: drawn(&bar, "effort-bar"),
        effort_says: effort_sentences(site, session, plans),
        slots: show_slots(site, session, plans),
        floors: show_floors(site, session, plans),
        things: show_things(site, session, plans),
        flights: show_flights(site, session, plans),
        marks: show_marks(site, session, plans),
        reading: plans
            .reading(session, site.publication.pack)
            .map(|reading| show_reading(site, reading)),
    }
}

fn effort_sentences(site: &Site<'_>, session: &Session, plans: &Plans) -> Vec<String> {
    let words = &site.words;
    let effort = &plans.effort;
    let time = |length: Duration| length.say(words);
    let active = effort.active();
    let of_day = (active.seconds() * 200 + ACTIVE_A_DAY.seconds()) / (ACTIVE_A_DAY.seconds() * 2);
    let mut said = vec![
        words.say_with("effort-of-day", &[("share", Filling::Count(of_day))]),
        still_sentence(effort, session, words),
    ];
    let (least, most) = usual_work(session.ages.value);
    let (least, most) = (least.seconds(), most.seconds());
    for (part, rhythm) in session.parts.iter().zip(&effort.rhythms) {
        let Some(rhythm) = rhythm else { continue };
        let (title, work, rest) = (plain_line(&part.title), time(rhythm.work), time(rhythm.rest));
        let tenths = rhythm.rest_for_one();
        let ratio =
            format!("1 : {}", words.number(&crate::plan::short_number(f64::from(tenths) / 10.0)));
        let with = [
            ("part", Filling::Text(&title)),
            ("work", Filling::Text(&work)),
            ("rest", Filling::Text(&rest)),
            ("ratio", Filling::Text(&ratio)),
        ];
        said.push(words.say_with("effort-rhythm", &with));
    }
    let with = [("least", Filling::Count(least)), ("most", Filling::Count(most))];
    said.push(words.say_with("effort-usual", &with));
    said.extend(session.parts.iter().filter_map(|part| likened(site, part)));
    said
}

/// “Rope jig is like rope skipping in the Compendium: 11.8, vigorous.”
fn likened(site: &Site<'_>, part: &Part) -> Option<String> {
    let like = part.compendium.as_ref()?;
    let moderate_from = site.publication.pack.moderate_from;
    let band = effort_name(like.band(moderate_from), &site.words).to_lowercase();
    let (title, met, from) = (
        plain_line(&part.title),
        site.words.number(&like.met().to_string()),
        site.words.number(&moderate_from.to_string()),
    );
    let with = [
        ("part", Filling::Text(&title)),
        ("like", Filling::Text(like.word())),
        ("met", Filling::Text(&met)),
        ("band", Filling::Text(&band)),
        ("from", Filling::Text(&from)),
    ];
    Some(site.words.say_with("effort-like", &with))
}

fn show_floors(site: &Site<'_>, session: &Session, plans: &Plans) -> Vec<Row> {
    let row = |(part, floor): (&Part, &Option<PartFloor>)| {
        let floor = floor.as_ref()?;
        let (width, length) = floor.footprint.size();
        let headroom = floor.footprint.headroom.map_or_else(String::new, |h| h.say(&site.words));
        let key = match floor.placement {
            Some(placement) if placement.is_askew() => "floor-askew",
            Some(_) => "floor-fits",
            None if plans.space.floor.is_some() => "floor-unfit",
            None => "floor-unsaid",
        };
        Some(Row {
            name: plain_line(&part.title),
            figures: vec![say_size(length, width, &site.words), headroom, site.words.say(key)],
        })
    };
    session.parts.iter().zip(&plans.space.parts).filter_map(row).collect()
}

fn show_things(site: &Site<'_>, session: &Session, plans: &Plans) -> Vec<Row> {
    let equipment = &plans.equipment;
    let served = session.needs.iter().zip(&equipment.served);
    served
        .map(|(need, served)| {
            let mut things: Vec<String> = served.things.iter().map(counted_things).collect();
            if served.missing > 0 {
                let missing = [("count", Filling::Count(served.missing))];
                things.push(site.words.say_with("things-missing", &missing));
            }
            let refused: Vec<String> = need
                .refused
                .iter()
                .map(|refusal| refusal_sentence(refusal, session, &site.words))
                .collect();
            Row {
                name: plain_line(&need.counted()),
                figures: vec![things.join(", "), refused.join(". ")],
            }
        })
        .collect()
}

fn show_flights(site: &Site<'_>, session: &Session, plans: &Plans) -> Vec<PartPlan> {
    let show = |(part, flight): (&Part, &Option<FlightPlan>)| {
        let flight = flight.as_ref()?;
        Some(PartPlan {
            title: plain_line(&part.title),
            svg: flight.best().map(|best| {
                let curves = Curves {
                    flown: &flight.figure(),
                    vacuum: &flight.vacuum_figure(),
                    best: (best.angle, best.distance),
                };
                drawn(&draw_angle_figure(curves, &site.words, page_room(site)), "angle-figure")
            }),
            says: flight_sentences(flight, &site.words),
            rows: Vec::new(),
        })
    };
    session.parts.iter().zip(&plans.flights).filter_map(show).collect()
}

fn show_marks(site: &Site<'_>, session: &Session, plans: &Plans) -> Vec<PartPlan> {
    let show = |(part, marks): (&Part, &Option<MarksPlan>)| {
        let marks = marks.as_ref()?;
        Some(PartPlan {
            title: plain_line(&part.title),
            svg: None,
            says: mark_sentences(site, part, marks),
            rows: point_rows(marks),
        })
    };
    session.parts.iter().zip(&plans.marks).filter_map(show).collect()
}

fn point_rows(marks: &MarksPlan) -> Vec<Row> {
    let rows = marks.steps.iter().map(|(mark, points)| Row {
        name: marks.rule.show(*mark),
        figures: vec![points.to_string()],
    });
    rows.collect()
}

fn mark_sentences(site: &Site<'_>, part: &Part, marks: &MarksPlan) -> Vec<String> {
    use crate::plan::marks::{MarkUnit, Rounding};
    let words = &site.words;
    let key = match (marks.rule.unit, marks.rule.rounding) {
        (MarkUnit::Centimetre | MarkUnit::Metre, Rounding::Down) => "marks-distance",
        (MarkUnit::Second | MarkUnit::Minute, Rounding::Down) => "marks-time-held",
        (MarkUnit::Second | MarkUnit::Minute, _) => "marks-time",
        _ => "marks-whole",
    };
    let step = hold_together(&step_of(marks));
    let mut said = vec![words.say_with(key, &[("step", Filling::Text(&step))])];
    let measure = part.measure.as_ref();
    let attempts = measure.and_then(|measure| measure.attempts.as_ref());
    if attempts.is_some_and(|attempts| attempts.value > 1) {
        said.push(words.say("marks-ties"));
    }
    if let Some(reference) = measure.and_then(|measure| measure.reference.as_ref())
        && let Some(mark) = marks.reference
    {
        let (mark, source) = (
            hold_together(&marks.rule.show(mark)),
            reference.source.as_ref().map(|source| plain_line(source)).unwrap_or_default(),
        );
        let with = [("mark", Filling::Text(&mark)), ("source", Filling::Text(&source))];
        said.push(words.say_with("marks-reference", &with));
    }
    let points = measure.and_then(|measure| measure.points.as_ref());
    if let Some(formula) = points.and_then(|points| points.formula.as_ref()) {
        let (a, b, c) = (formula.a.to_string(), formula.b.to_string(), formula.c.to_string());
        let with = [("a", Filling::Text(&a)), ("b", Filling::Text(&b)), ("c", Filling::Text(&c))];
        said.push(words.say_with("marks-formula", &with));
    }
    if let Some(source) = points.and_then(|points| points.source.as_ref()) {
        let source = plain_line(source);
        said.push(words.say_with("marks-points-source", &[("source", Filling::Text(&source))]));
    }
    said
}

/// “1 cm”, “0.1 s”: one step of a mark.
fn step_of(marks: &MarksPlan) -> String {
    use crate::plan::marks::{Mark, MarkRule, MarkUnit};
    let unit = match marks.rule.unit {
        MarkUnit::Metre => MarkUnit::Centimetre,
        MarkUnit::Minute => MarkUnit::Second,
        unit => unit,
    };
    MarkRule { unit, ..marks.rule }.show(Mark::from_steps(1))
}

/// More long words than this are not listed: the rules name those that matter.
const MOST_LISTED: usize = 12;

fn show_reading(site: &Site<'_>, reading: &SessionReading) -> ReadingView {
    let words = &site.words;
    let row = |key: &str, figure: String| Row { name: words.say(key), figures: vec![figure] };
    let counts = &reading.whole.counts;
    let mut rows = vec![
        row("reading-words", counts.words.to_string()),
        row("reading-sentences", counts.sentences.to_string()),
    ];
    if let Some(scores) = reading.whole.scores.filter(|_| reading.is_enough()) {
        rows.extend([
            row("reading-flesch", format!("{:.0}", scores.flesch)),
            row("reading-kincaid", format!("{:.1}", scores.flesch_kincaid)),
            row("reading-smog", format!("{:.1}", scores.smog)),
            row("reading-ari", format!("{:.1}", scores.ari)),
            row("reading-coleman", format!("{:.1}", scores.coleman_liau)),
            row("reading-age", format!("{:.0}", scores.reading_age())),
        ]);
    }
    let listed = reading.whole.long_words.iter().take(MOST_LISTED);
    let quoted = reading.whole.long_sentences.iter();
    ReadingView {
        rows,
        long_words: listed.map(|word| word.word.clone()).collect(),
        long_sentences: quoted.map(|sentence| sentence.words.to_string()).collect(),
    }
}
