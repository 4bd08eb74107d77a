//! The report of a class’s progress on paper, and the slips to send home.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::drawings::place_drawing;
use super::faces::Faces;
use super::origin::Origin;
use super::page::Page;
use super::scale::{Air, Type};
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::slip::lay_slip;
use super::strip::{Column, Seat};
use super::table_row::{table_row, table_row_with};
use super::turned;
use super::writer::{About, Writer};
use crate::drawing::Drawing;
use crate::progress::phrases::Speaker;
use crate::progress::view::{ReportView, SlipView, TaskView};
use crate::prose::{Run, plain_line};
use crate::quantity::Date;
use crate::read::print_choices::Spacing;
use crate::render::house::House;
use crate::render::phrases::is_right_to_left;
use crate::render::{Bundle, RenderFault};
use crate::words::{Filling, Words};

/// Renders the report, all slips in one file to print, and each slip in a file of its own to send.
///
/// # Errors
/// Where a font of the pack's own look can't be used.
pub fn render_progress_sheets(
    house: &House<'_>,
    speaker: Speaker<'_>,
    report: &ReportView,
    slips: &[SlipView],
    today: Date,
) -> Result<Bundle, RenderFault> {
    let faces = Faces::load(house)?;
    let sheet = letterhead(speaker, report);
    let about = |title: String| About {
        title,
        author: sheet.school.clone(),
        language: report.language.clone(),
        date: today.to_string().replace('-', ""),
        is_folded: false,
        is_rtl: is_right_to_left(sheet.words.language()),
    };
    let new_shaper = || Shaper::new(&faces, sheet.words.language(), Air::of(Spacing::Usual));
    let none = BTreeMap::new();
    let mut shaper = new_shaper();
    let pages = lay_report(&mut shaper, &sheet, report);
    let pages = turned(pages, &faces, sheet.words.language());
    let mut writer = Writer::new(&faces);
    let title = sheet.words.say("progress-title");
    let mut bundle = Bundle::new();
    bundle.insert("report.pdf".into(), writer.write_alone(&pages, &about(title), &none));
    let laid: Vec<(String, Vec<Page>, Vec<u8>)> = slips
        .par_iter()
        .map_init(
            || (new_shaper(), Writer::new(&faces)),
            |(shaper, writer), slip| {
                shaper.begin_session();
                let pages = lay_slip(shaper, &sheet, slip);
                let pages = turned(pages, &faces, sheet.words.language());
                let name = sheet.words.say("progress-slip");
                let bytes =
                    writer.write_alone(&pages, &about(format!("{name} – {}", slip.code)), &none);
                (slip.code.clone(), pages, bytes)
            },
        )
        .collect();
    let mut all = Vec::new();
    for ((code, pages, bytes), copy) in laid.into_iter().zip(0..) {
        bundle.insert(format!("slips/{}.pdf", code.replace(' ', "_")), bytes);
        // Each slip is read out on its own.
        all.extend(pages.into_iter().map(|page| page.copied(copy)));
    }
    bundle.insert(
        "slips.pdf".into(),
        writer.write_alone(&all, &about(sheet.words.say("progress-slip")), &none),
    );
    Ok(bundle)
}

fn letterhead<'s>(speaker: Speaker<'s>, report: &ReportView) -> Letterhead<'s> {
    Letterhead {
        paper: speaker.pack.paper,
        words: speaker.words,
        school: report.school.clone().unwrap_or_else(|| report.pack.clone()),
        origin: Origin { title: report.pack.clone(), ..Origin::default() },
    }
}

fn lay_report(shaper: &mut Shaper<'_>, sheet: &Letterhead<'_>, report: &ReportView) -> Vec<Page> {
    let words = sheet.words;
    let (items, height) =
        lay_head(shaper, sheet, &words.say("nav-teachers"), &words.say("progress-title"));
    let mut column = Column::new(shaper, inner_width(sheet));
    let date = [("date", Filling::Text(&report.keep_until))];
    column.words(
        &[Run::bold(words.say_with("progress-private", &date))],
        Type::body(12.0),
        Seat::default(),
    );
    for key in ["progress-how", "progress-rule"] {
        column.gap(4.0);
        column.words(&one(words.say(key)), Type::body(12.0), Seat::default());
    }
    if !report.silent.is_empty() {
        column.gap(14.0);
        column.label(&words.say("progress-silent"), Type::HEADING);
        column.words(&one(report.silent.join(", ")), Type::body(12.0), Seat::default());
    }
    for task in &report.tasks {
        lay_task(&mut column, task, report, words);
    }
    lay_questions(&mut column, report, words);
    lay_unread(&mut column, report, words);
    let strips = column.strips;
    lay_columns(shaper, sheet, SheetHead { items, height: height + 6.0 }, strips, 1)
}

fn lay_task(column: &mut Column<'_, '_>, task: &TaskView, report: &ReportView, words: &Words) {
    column.gap(20.0);
    column.label(
        &format!("{}: {}", task.session, task.part),
        Type { is_bold: true, ..Type::body(17.0) },
    );
    if let Some(chart) = &task.chart {
        lay_class(column, chart, task, words);
    } else {
        let fewest = u32::try_from(report.fewest).unwrap_or(u32::MAX);
        let fewest = [("fewest", Filling::Count(fewest))];
        let said = words.say_with("progress-class-small", &fewest);
        column.words(&one(said), Type::body(12.0), Seat::default());
    }
    if let Some(reference) = &task.reference {
        column.gap(5.0);
        column.words(&one(plain_line(reference)), Type::body(12.0), Seat::default());
    }
    lay_send(column, task, words);
    lay_children(column, task, words);
}

fn lay_class(column: &mut Column<'_, '_>, chart: &Drawing, task: &TaskView, words: &Words) {
    column.gap(6.0);
    let items = place_drawing(column.shaper, chart);
    column.figure(chart.height, items, &chart.says);
    column.keep_with_next();
    let way = if task.is_better_more { "progress-better-more" } else { "progress-better-less" };
    let said = format!("{} {}", words.say("progress-spread-says"), words.say(way));
    column.words(&one(said), Type::SMALL, Seat::default());
    column.gap(8.0);
    let [first, latest] = ["progress-first", "progress-latest"].map(|key| words.say(key));
    let children = format!("{}: {}", words.say("progress-children"), task.children);
    let widths = [190.0, 150.0, 190.0];
    table_row(column, &[(&children, widths[0]), (&first, widths[1]), (&latest, widths[2])], true);
    for row in &task.figures {
        match row.figures.as_slice() {
            [one] => {
                table_row(column, &[(&row.name, widths[0]), (one, widths[1] + widths[2])], false);
            }
            [first, latest, ..] => table_row(
                column,
                &[(&row.name, widths[0]), (first, widths[1]), (latest, widths[2])],
                false,
            ),
            [] => {}
        }
    }
}

/// What to send next, the faults that were ticked, who has sent nothing.
fn lay_send(column: &mut Column<'_, '_>, task: &TaskView, words: &Words) {
    let body = Type::body(12.0);
    column.gap(10.0);
    column.label(&words.say("progress-send"), Type::HEADING);
    for line in &task.send {
        column.entry(&one(line.as_str()), body);
    }
    if !task.faults.is_empty() {
        column.gap(8.0);
        column.label(&words.say("progress-faults"), Type::HEADING);
        for fault in &task.faults {
            column.entry(&one(format!("{}: {}", fault.name, fault.figures.join(" "))), body);
        }
    }
    column.gap(8.0);
    column.label(&words.say("progress-missing"), Type::HEADING);
    let missing = if task.missing.is_empty() {
        words.say("progress-missing-none")
    } else {
        task.missing.join(", ")
    };
    column.words(&one(missing), body, Seat::default());
}

/// The width of a small strip in a row.
const STRIP: (f32, f32) = (110.0, 36.0);

fn lay_children(column: &mut Column<'_, '_>, task: &TaskView, words: &Words) {
    column.gap(12.0);
    column.label(&words.say("progress-child-table"), Type::HEADING);
    let place = if task.is_ranked { 42.0 } else { 0.0 };
    let widths = [56.0, 74.0, 74.0, 66.0, 150.0 - place];
    let keys = [
        "progress-code",
        "progress-first-mark",
        "progress-last-mark",
        "progress-change",
        "progress-verdict",
    ];
    let heads = keys.map(|key| words.say(key));
    let [place_head, over_time] =
        ["progress-place", "progress-over-time"].map(|key| words.say(key));
    let mut head: Vec<(&str, f32)> = heads.iter().map(String::as_str).zip(widths).collect();
    if task.is_ranked {
        head.insert(0, (&place_head, place));
    }
    head.push((&over_time, STRIP.0));
    table_row(column, &head, true);
    for (row, strip) in task.rows.iter().zip(&task.strips) {
        let place_said = row.place.map_or_else(String::new, |place| place.to_string());
        let cells = [&row.code, &row.first, &row.last, &row.change, &row.verdict];
        let mut cells: Vec<(&str, f32)> =
            cells.map(String::as_str).into_iter().zip(widths).collect();
        if task.is_ranked {
            cells.insert(0, (&place_said, place));
        }
        let drawn = place_drawing(column.shaper, strip);
        table_row_with(column, &cells, (drawn, STRIP.0, STRIP.1), &row.next);
    }
}

fn lay_questions(column: &mut Column<'_, '_>, report: &ReportView, words: &Words) {
    if report.questions.is_empty() {
        return;
    }
    column.gap(20.0);
    column.label(&words.say("progress-questions"), Type { is_bold: true, ..Type::body(17.0) });
    column.words(&one(words.say("progress-questions-how")), Type::body(12.0), Seat::default());
    for session in &report.questions {
        column.gap(10.0);
        column.label(&session.session, Type::HEADING);
        for question in &session.questions {
            column.gap(6.0);
            column.words(&[Run::bold(question.ask.as_str())], Type::body(12.0), Seat::default());
            column.keep_with_next();
            column.words(
                &one(counts_said(question, report.fewest, words)),
                Type::body(12.0),
                Seat::default(),
            );
        }
    }
}

/// “right 12, not yet 7, not marked 2”
fn counts_said(
    question: &crate::progress::view::QuestionView,
    fewest: usize,
    words: &Words,
) -> String {
    if question.is_few {
        let fewest = u32::try_from(fewest).unwrap_or(u32::MAX);
        return words.say_with("progress-answers-few", &[("fewest", Filling::Count(fewest))]);
    }
    let counts = [
        ("progress-right", question.right),
        ("progress-wrong", question.wrong),
        ("progress-unmarked", question.unmarked),
    ];
    counts.map(|(key, count)| format!("{} {count}", words.say(key))).join(", ")
}

fn lay_unread(column: &mut Column<'_, '_>, report: &ReportView, words: &Words) {
    if report.unread.is_empty() {
        return;
    }
    column.gap(20.0);
    column.label(&words.say("progress-unread"), Type { is_bold: true, ..Type::body(17.0) });
    column.words(&one(words.say("progress-unread-how")), Type::body(12.0), Seat::default());
    column.gap(6.0);
    let heads = ["progress-file", "progress-row", "progress-column", "progress-says"]
        .map(|key| words.say(key));
    let widths = [110.0, 40.0, 90.0, column.width - 240.0];
    let head: Vec<(&str, f32)> = heads.iter().map(String::as_str).zip(widths).collect();
    table_row(column, &head, true);
    for unread in &report.unread {
        let row = unread.row.to_string();
        let cells = [&unread.file, &row, &unread.column, &unread.says];
        let cells: Vec<(&str, f32)> = cells.map(String::as_str).into_iter().zip(widths).collect();
        table_row(column, &cells, false);
    }
}
