//! One part of a session → its facts.

use super::outline::{Notebook, bare, pictures};
use super::{Mark, PartOutline};
use crate::figure::Caption;
use crate::pack::{Alternative, FlightSaid, Pack, Part};
use crate::plan::Plans;
use crate::prose::plain_line;
use crate::read::PartTime;
use crate::read::words::Measured;
use crate::render::phrases::{effort_name, part_key, part_name};
use crate::render::plan_phrases::points_sentence;
use crate::render::quantities::{Said, say_size};
use crate::words::{Filling, Words};

pub(super) fn outline_part(
    part: &Part,
    at: usize,
    plans: &Plans,
    pack: &Pack,
    words: &Words,
) -> PartOutline {
    let mut notebook = Notebook::new(words);
    notebook.note("part-title", plain_line(&part.title));
    notebook.note("part-name", part_name(part, words));
    if let Some(span) = plans.time.spans.get(at) {
        notebook.note("part-start", span.start.clock());
        notebook.note("part-total", span.total.say(words));
    }
    time(&mut notebook, part);
    notebook.note_if("part-effort", part.effort.as_ref().map(|e| effort_name(e.value, words)));
    let adult = part.adult.as_ref().map(|adult| words.say(&format!("adult-{}", adult.word())));
    notebook.note_if("part-adult", adult);
    doing(&mut notebook, part, pack);
    figure(&mut notebook, part);
    measure(&mut notebook, part, at, plans);
    planning(&mut notebook, part, at, plans);
    PartOutline {
        kind: part_key(part.kind).to_owned(),
        title: plain_line(&part.title),
        facts: notebook.facts,
    }
}

/// One plain time, or what it is made of; a rest counts between rounds alone.
fn time(notebook: &mut Notebook<'_>, part: &Part) {
    let words = notebook.words;
    let Some(time) = &part.time else { return };
    if **time == PartTime::of_work(time.work) {
        notebook.note("time", time.work.say(words));
        return;
    }
    let work = time.counts.map_or_else(
        || time.work.say(words),
        |(counts, tempo)| {
            let with = [("counts", Filling::Count(counts)), ("tempo", Filling::Count(tempo))];
            words.say_with("piece-counts", &with)
        },
    );
    let rest = if time.rounds > 1 { time.rest } else { crate::quantity::Duration::ZERO };
    let pieces = [
        ("explain", time.explain),
        ("set-up", time.set_up),
        ("rest", rest),
        ("recover", time.recover),
    ];
    notebook.note("work", work);
    for (key, length) in pieces {
        notebook.note_if(key, (!length.is_zero()).then(|| length.say(words)));
    }
    notebook.note_if("rounds", (time.rounds > 1).then(|| time.rounds.to_string()));
}

fn doing(notebook: &mut Notebook<'_>, part: &Part, pack: &Pack) {
    if let Some(rules) = &part.throw {
        notebook.note_if("landing-zone", rules.landing_zone.as_ref().map(|rule| plain_line(rule)));
        notebook.note_if(
            "stop-and-collect",
            rules.stop_and_collect.as_ref().map(|rule| plain_line(rule)),
        );
    }
    notebook.note("how", bare(&part.how));
    notebook.note_all("key-points", part.key_points.iter().map(|point| plain_line(point)));
    notebook.note_if("easier", part.easier.as_ref().map(|line| plain_line(line)));
    notebook.note_if("harder", part.harder.as_ref().map(|line| plain_line(line)));
    let faults = part.faults.iter().map(|fault| {
        let see = plain_line(&fault.see);
        format!("{} → {}", see.trim_end_matches(['.', ':']), plain_line(&fault.say))
    });
    notebook.note_all("faults", faults);
    pictures(notebook, ["part-pictures", "part-picture-bytes"], &part.pictures, pack);
}

/// What stands under the moments of a figure, and a mark of what each is drawn from.
fn figure(notebook: &mut Notebook<'_>, part: &Part) {
    for moment in &part.figure.moments {
        if let Some(Caption::Words(words)) = &moment.caption {
            notebook.note("figure-words", plain_line(words));
        }
        let held = moment.holds.as_ref().map(|thing| &*thing.value);
        // A head drawn a little larger for other ages makes no printed card wrong.
        let drawn_from = format!("{:?} {held:?} {:?}", moment.pose, moment.arrows);
        notebook.note("figure", Mark::of_bytes(drawn_from.as_bytes()).to_string());
    }
    let pictured = part.figure.pictured(part.key_points.len());
    notebook
        .note("figure-numbers", pictured.iter().map(|at| format!("{at:?} ")).collect::<String>());
}

fn measure(notebook: &mut Notebook<'_>, part: &Part, at: usize, plans: &Plans) {
    let words = notebook.words;
    let Some(measure) = &part.measure else { return };
    notebook.note("record-title", plain_line(&part.title));
    let unit = measure.unit.as_ref().map(|unit| plain_line(unit)).unwrap_or_default();
    let key = format!("measure-{}", measure.what.word());
    let how = words.say_with(&key, &[("unit", Filling::Text(&unit))]);
    let better =
        measure.better.as_ref().map(|better| words.say(&format!("better-{}", better.word())));
    // The unit stands in the corner of each box, and at criteria nowhere in the sentence.
    let corner = (measure.what.value == Measured::Criteria && !unit.is_empty()).then_some(unit);
    let says: Vec<String> = [Some(how), better, corner].into_iter().flatten().collect();
    notebook.note("measure", says.join(" "));
    notebook.note_if("attempts", measure.attempts.as_ref().map(ToString::to_string));
    let points = plans.marks.get(at).and_then(Option::as_ref);
    notebook.note_if("points", points.and_then(|marks| points_sentence(marks, words)));
    notebook.note_all("criteria", measure.criteria.iter().map(|line| plain_line(line)));
}

/// What only teachers see, and the floor.
fn planning(notebook: &mut Notebook<'_>, part: &Part, at: usize, plans: &Plans) {
    let words = notebook.words;
    let floor = plans.space.parts.get(at).and_then(Option::as_ref);
    notebook.note_if("part-floor", floor.map(|floor| floor_says(floor, words)));
    let movements: Vec<&str> = part.movements.iter().map(|movement| movement.word()).collect();
    notebook.note("movements", movements.join(", "));
    notebook.note_if(
        "task",
        part.task.as_ref().map(|task| words.say(&format!("task-{}", task.word()))),
    );
    notebook.note_all("versions", part.alternatives.iter().map(version_says));
    notebook.note_if("flight", part.flight.as_ref().map(|flight| flight_says(flight)));
    notebook.note_if("like", part.compendium.as_ref().map(|like| like.word().to_owned()));
    if let Some(measure) = &part.measure {
        notebook.note_if("step", measure.step.as_ref().map(|step| plain_line(step)));
        let reference = measure.reference.as_ref().map(|reference| {
            let source = reference.source.as_ref().map(|source| plain_line(source));
            format!("{} ({})", plain_line(&reference.mark), source.unwrap_or_default())
        });
        notebook.note_if("reference", reference);
    }
    let lengths = [&part.lengths.shortest, &part.lengths.longest];
    let lengths: Vec<String> = lengths
        .map(|length| length.as_ref().map_or_else(|| "–".to_owned(), |length| length.say(words)))
        .into();
    let essential = if part.lengths.essential { "!" } else { "" };
    let worth = part.lengths.worth.value;
    notebook.note("lengths", format!("{} ({worth}{essential})", lengths.join(" / ")));
}

fn floor_says(floor: &crate::plan::PartFloor, words: &Words) -> String {
    let (width, length) = floor.footprint.size();
    let size = say_size(length, width, words);
    match floor.footprint.headroom {
        Some(height) => format!("{size} × {}", height.say(words)),
        None => size,
    }
}

fn version_says(version: &Alternative) -> String {
    let suits: Vec<&str> = version.suits.iter().map(|suited| suited.word()).collect();
    format!("{}: {}", suits.join(", "), bare(&version.how))
}

fn flight_says(flight: &FlightSaid) -> String {
    let said = [
        flight.of.as_ref().map(|of| plain_line(of)),
        flight.speed.as_ref().map(ToString::to_string),
        flight.distance.as_ref().map(|distance| format!("→ {distance}")),
        flight.rise.as_ref().map(|rise| format!("↑ {rise}")),
        flight.angle.as_ref().map(ToString::to_string),
        Some(flight.height.to_string()),
    ];
    said.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
