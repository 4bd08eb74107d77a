//! `homeground publish`

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

use super::Ending;
use super::args::PublishArguments;
use super::console::Console;
use super::earlier::find_earlier;
use super::packs::open_folder;
use super::teacher_folder::{check_teacher_folder, publish_teacher_folder, way_to_families};
use crate::finding::{Finding, Severity, count_severity};
use crate::pack::Pack;
use crate::progress::guard::check_no_results;
use crate::publish::{LastTime, Published, check_target, publish_again};
use crate::read::Selection;
use crate::render::{
    CHANGES_PAGE, ChangesPages, Earlier, Order, Rendering, render_changes, render_order,
};
use crate::report::{advise_ink, report_text, say_ink};

pub fn run_publish(arguments: &PublishArguments, console: &Console) -> Ending {
    match publish(arguments, console) {
        Ok(ending) => ending,
        Err(why) => console.could_not_run(&why),
    }
}

fn publish(arguments: &PublishArguments, console: &Console) -> Result<Ending, String> {
    let source = open_folder(&arguments.pack, arguments.as_of.as_deref())?;
    check_target(&arguments.to, &arguments.pack).map_err(|fault| fault.to_string())?;
    check_no_results(&arguments.to)?;
    check_teacher_folder(arguments)?;
    let (last, read) = rayon::join(
        || LastTime::look_up(&arguments.to),
        || crate::read_resolved(&source, &Selection::All),
    );
    let (pack, met_while_reading) = read?;
    let mut inspected = crate::inspect_noting(pack, met_while_reading, &last);
    if has_problems(&inspected.findings) {
        let report = report_text(&inspected.findings, &inspected.pack.files, console.is_terminal);
        console.message(report.trim_end());
        console.message(&kept_message(arguments));
        return Ok(Ending::Problems);
    }
    if inspected.pack.sessions.is_empty() {
        return Err(format!("There are no sessions in {}.", arguments.pack.display()));
    }
    let printing = std::mem::take(&mut inspected.pack.printing);
    inspected.pack.printing = printing.with(arguments.print.wishes());
    let earlier = arguments
        .since
        .as_deref()
        .map(|since| find_earlier(since, &arguments.pack, &languages_of(&inspected.pack)))
        .transpose()?;
    inspected.pack.has_changes = earlier.is_some();
    let bar = progress_bar(inspected.pack.sessions.len(), console);
    let order = Order { shelf: Some(&last), on_session: &|| bar.inc(1), ..Order::default() };
    let plans = inspected.plans.clone();
    let Rendering { mut bundle, ink } =
        render_order(&inspected.pack, plans, order).map_err(|fault| fault.to_string())?;
    bar.finish_and_clear();
    let mut changes =
        earlier.map(|earlier| tell_changes(&inspected.pack, &earlier, arguments)).transpose()?;
    if let Some((pages, _)) = &mut changes {
        bundle.append(&mut pages.families);
    }
    let published = publish_again(&bundle, &arguments.to, &arguments.pack, &last)
        .map_err(|fault| fault.to_string())?;
    mention_others(&inspected.findings, arguments, console);
    if let Some(advice) = advise_ink(&ink, inspected.pack.ink_budget) {
        console.message(&advice);
    }
    console.result(&format!("{}{}\n", tell_result(&published, arguments), say_ink(&ink)));
    let (teachers, told) =
        changes.map_or_else(Default::default, |(pages, told)| (pages.teachers, told));
    console.result(&told);
    let plans = inspected.plans.clone();
    publish_teacher_folder(&inspected.pack, plans, teachers, arguments, console)?;
    // The program ends here: to clear away thousands of sessions one by one would only take its time.
    std::mem::forget(inspected);
    Ok(Ending::Well)
}

/// The languages that a pack is published in, its own first.
fn languages_of(pack: &Pack) -> Vec<String> {
    std::iter::once(pack.language.value.clone()).chain(pack.languages.iter().cloned()).collect()
}

/// The pages about what changed, and a line about it.
fn tell_changes(
    pack: &Pack,
    earlier: &Earlier,
    arguments: &PublishArguments,
) -> Result<(ChangesPages, String), String> {
    let pages = render_changes(pack, earlier, &way_to_families(arguments))
        .map_err(|fault| fault.to_string())?;
    let (new, changed, gone) = pages.counts;
    let told = format!(
        "Since {}: {new} new, {changed} changed, {gone} gone. Open {}.\n",
        earlier.when,
        arguments.to.join(CHANGES_PAGE).display()
    );
    Ok((pages, told))
}

pub(super) fn has_problems(findings: &[Finding]) -> bool {
    count_severity(findings, Severity::Problem) > 0
}

fn kept_message(arguments: &PublishArguments) -> String {
    let to = arguments.to.display();
    if arguments.to.exists() {
        format!("Nothing was published: {to} is as it was. Mend the problems and publish again.")
    } else {
        "Nothing was published. Mend the problems and publish again.".into()
    }
}

/// Two ticks a session: its pages and its sheets.
pub(super) fn progress_bar(sessions: usize, console: &Console) -> ProgressBar {
    let target = if console.is_terminal {
        ProgressDrawTarget::stderr()
    } else {
        ProgressDrawTarget::hidden()
    };
    let bar = ProgressBar::with_draw_target(Some(sessions as u64 * 2), target);
    let style = ProgressStyle::with_template("{bar:30} {percent} %");
    bar.with_style(style.unwrap_or_else(|_| ProgressStyle::default_bar()))
}

fn mention_others(findings: &[Finding], arguments: &PublishArguments, console: &Console) {
    if !findings.is_empty() {
        console.message(&format!(
            "{} To read them: homeground inspect {}",
            crate::report::summary_of(findings),
            arguments.pack.display()
        ));
    }
}

fn tell_result(published: &Published, arguments: &PublishArguments) -> String {
    let count = |ending: &str| published.keys().filter(|path| path.ends_with(ending)).count();
    let bytes: u64 = published.values().map(|file| file.length).sum();
    format!(
        "Published {} pages and {} printable PDFs ({} KB) to {}.\nOpen {} in a browser.\n",
        count(".html"),
        count(".pdf"),
        bytes.div_ceil(1000),
        arguments.to.display(),
        arguments.to.join("index.html").display(),
    )
}
