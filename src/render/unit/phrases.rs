//! Dates, weeks and questions of a unit in the words of a language.

use crate::pack::{Pack, Unit};
use crate::plan::ACTIVE_A_DAY;
use crate::plan::unit::{BackAgain, PlannedDay, UnitPlan, UnitWeek};
use crate::prose::{plain_line, plain_words};
use crate::quantity::Date;
use crate::read::words::Weekday;
use crate::words::{Filling, Words};

/// What is said of a unit as a whole.
#[derive(Clone, Debug)]
pub struct UnitWords {
    pub title: String,
    /// “11 January – 18 February 2027”
    pub dates: String,
    /// “Monday 09:30, Thursday 14:00”
    pub times: String,
}

impl UnitWords {
    pub fn of(unit: &Unit, plan: &UnitPlan, words: &Words) -> Self {
        let days =
            unit.days.iter().map(|day| format!("{} {}", day_name(day.day.value, words), day.at));
        let ends = plan.days.first().zip(plan.days.last());
        let dates = ends.map(|(first, last)| span_words(first.slot.date, last.slot.date, words));
        Self {
            title: plain_line(&unit.title),
            dates: dates.unwrap_or_default(),
            times: days.collect::<Vec<_>>().join(", "),
        }
    }
}

fn day_name(day: Weekday, words: &Words) -> String {
    words.say(&format!("weekday-{}", day.word()))
}

/// “Monday 11 January”
pub fn date_words(date: Date, words: &Words) -> String {
    let Some(day) = Weekday::after_monday(date.days_after_monday()) else {
        return date_short(date, words);
    };
    let (weekday, day) = (day_name(day, words), date_short(date, words));
    words.say_with(
        "date-with-weekday",
        &[("weekday", Filling::Text(&weekday)), ("date", Filling::Text(&day))],
    )
}

/// “11 January”
pub fn date_short(date: Date, words: &Words) -> String {
    let month = words.say(&format!("month-{}", date.month()));
    let day = date.day_of_month().to_string();
    words.say_with(
        "date-day-month",
        &[("day", Filling::Text(&day)), ("month", Filling::Text(&month))],
    )
}

/// “11 January – 18 February 2027”
pub fn span_words(first: Date, last: Date, words: &Words) -> String {
    let year = |date: Date| {
        let year = date.year().to_string();
        let day = date_short(date, words);
        words.say_with(
            "date-with-year",
            &[("date", Filling::Text(&day)), ("year", Filling::Text(&year))],
        )
    };
    match (first == last, first.year() == last.year()) {
        (true, _) => year(last),
        (false, true) => format!("{} – {}", date_short(first, words), year(last)),
        (false, false) => format!("{} – {}", year(first), year(last)),
    }
}

/// “09:30”
pub fn clock(day: &PlannedDay) -> String {
    format!("{:02}:{:02}", day.begins / 60 % 24, day.begins % 60)
}

/// “Week 1”
pub fn week_title(week: u32, words: &Words) -> String {
    words.say_with("unit-week", &[("week", Filling::Count(week))])
}

/// A question that comes back, its answer and the title of its session.
pub fn question_of(pack: &Pack, back: BackAgain) -> (String, Option<String>, String) {
    let session = &pack.sessions[back.session];
    // A translation may have fewer questions than its original.
    let Some(question) = session.review.get(back.question) else {
        return (plain_line(&session.title), None, plain_line(&session.title));
    };
    let answer = question.answer.as_ref().map(|answer| plain_words(answer));
    (plain_words(&question.ask), answer, plain_line(&session.title))
}

/// The share of the 60 minutes a day, seven days, that a week’s sessions bring, in per cent.
pub fn active_share(week: &UnitWeek) -> u32 {
    let whole = ACTIVE_A_DAY.seconds() * 7;
    (week.active.seconds() * 200 + whole) / (whole * 2)
}
