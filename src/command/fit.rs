//! `homeground fit`

use std::path::Path;

use indicatif::ProgressBar;
use rayon::prelude::*;

use super::Ending;
use super::args::FitArguments;
use super::console::Console;
use super::packs::open_folder;
use super::publish::{has_problems, progress_bar};
use crate::finding::{Finding, sort_findings};
use crate::fit::{ClassPlan, HomePlan, SessionPlan, plan_class};
use crate::homes::{Home, check_things, read_class, read_home};
use crate::pack::{Pack, Session};
use crate::place::{FileId, Files};
use crate::publish::{Workshop, check_target};
use crate::read::nearest;
use crate::read::{Selection, yaml};
use crate::render::Bundle;
use crate::render::class_pages::ClassPress;
use crate::report::report_text;

pub fn run_fit(arguments: &FitArguments, console: &Console) -> Ending {
    match fit(arguments, console) {
        Ok(ending) => ending,
        Err(why) => console.could_not_run(&why),
    }
}

fn fit(arguments: &FitArguments, console: &Console) -> Result<Ending, String> {
    let source = open_folder(&arguments.pack, arguments.as_of.as_deref())?;
    check_target(&arguments.to, &arguments.pack).map_err(|fault| fault.to_string())?;
    let inspected = crate::inspect(&source, &Selection::All)?;
    if has_problems(&inspected.findings) {
        return Ok(refuse(&inspected.findings, &inspected.pack.files, console));
    }
    let pack = inspected.pack;
    let sessions = chosen_sessions(&pack, &arguments.sessions)?;
    let mut list = match &arguments.homes {
        Some(path) => read_homes(path)?,
        None => List::default(),
    };
    let plan = plan_class(&pack, &sessions, &list.homes);
    list.findings.extend(check_things(&list.homes, &pack));
    sort_findings(&mut list.findings);
    if has_problems(&list.findings) {
        return Ok(refuse(&list.findings, &list.files, console));
    }
    if !list.findings.is_empty() {
        console.message(report_text(&list.findings, &list.files, console.is_terminal).trim_end());
    }
    write(arguments, &pack, sessions, &list.homes, &plan, console)?;
    console.result(&tell_result(arguments, &list.homes, &plan));
    Ok(Ending::Well)
}

fn refuse(findings: &[Finding], files: &Files, console: &Console) -> Ending {
    console.message(report_text(findings, files, console.is_terminal).trim_end());
    console.message("Nothing was written. Mend the problems and run it again.");
    Ending::Problems
}

/// The offered sessions, or those of them that are named by id or folder.
pub(super) fn chosen_sessions<'p>(
    pack: &'p Pack,
    asked: &[String],
) -> Result<Vec<&'p Session>, String> {
    let is_named = |session: &Session, name: &str| {
        let id = session.id.as_str();
        id == name
            || id.strip_prefix(name.trim_end_matches('/')).is_some_and(|r| r.starts_with('/'))
    };
    let offered: Vec<&Session> =
        pack.sessions.iter().map(AsRef::as_ref).filter(|s: &&Session| !s.is_retired()).collect();
    if let Some(lost) = asked.iter().find(|name| !offered.iter().any(|s| is_named(s, name))) {
        let ids: Vec<&str> = offered.iter().map(|session| session.id.as_str()).collect();
        let way_out = match nearest(lost, &ids) {
            Some(near) => format!("Did you mean “{near}”?"),
            None => {
                "Write the place of its file, such as games/gull-catch, or a folder.".to_owned()
            }
        };
        return Err(format!("There is no session “{lost}” in this pack. {way_out}"));
    }
    let is_asked =
        |session: &&&Session| asked.is_empty() || asked.iter().any(|name| is_named(session, name));
    let chosen: Vec<&Session> = offered.iter().filter(is_asked).copied().collect();
    if chosen.is_empty() { Err("There are no sessions in this pack.".into()) } else { Ok(chosen) }
}

/// The homes of a file, and what was found in it.
#[derive(Default)]
struct List {
    homes: Vec<Home>,
    findings: Vec<Finding>,
    files: Files,
}

fn read_homes(path: &Path) -> Result<List, String> {
    let unread = |_| format!("{} can’t be read.", path.display());
    let about = std::fs::metadata(path).map_err(unread)?;
    if !about.is_file() || about.len() > yaml::LARGEST_FILE {
        return Err(format!("{} is no list of homes.", path.display()));
    }
    let bytes = std::fs::read(path).map_err(unread)?;
    let mut files = Files::default();
    let text = match yaml::read_text(bytes, FileId(0)) {
        Ok(text) => text,
        Err(unread) => {
            files.add(path.display().to_string(), unread.shown);
            return Ok(List { homes: Vec::new(), findings: vec![*unread.finding], files });
        }
    };
    let file = files.add(path.display().to_string(), text.clone());
    let name = path.to_string_lossy().to_lowercase();
    let is_yaml = name.ends_with(".yaml") || name.ends_with(".yml");
    let (homes, findings) = if is_yaml { read_home(&text, file) } else { read_class(&text, file) };
    Ok(List { homes, findings, files })
}

fn write(
    arguments: &FitArguments,
    pack: &Pack,
    sessions: Vec<&Session>,
    homes: &[Home],
    plan: &ClassPlan,
    console: &Console,
) -> Result<(), String> {
    let say = |fault: crate::render::RenderFault| fault.to_string();
    let press = ClassPress::begin(pack, sessions).map_err(say)?;
    let workshop =
        Workshop::begin(&arguments.to, &arguments.pack).map_err(|fault| fault.to_string())?;
    put_all(&workshop, press.assets())?;
    put_all(&workshop, &press.render_survey(plan).map_err(say)?)?;
    if !arguments.survey {
        put_all(&workshop, &press.render_teacher(homes, plan).map_err(say)?)?;
        if !arguments.teacher_only {
            write_homes(&press, &workshop, homes, plan, console)?;
        }
    }
    workshop.finish().map_err(|fault| fault.to_string())
}

/// Homes side by side, each written before the next is begun, so that memory holds a few of them only.
fn write_homes(
    press: &ClassPress<'_>,
    workshop: &Workshop,
    homes: &[Home],
    plan: &ClassPlan,
    console: &Console,
) -> Result<(), String> {
    let bar: ProgressBar = progress_bar(homes.len().div_ceil(2), console);
    let write = |(home, plan): (&Home, &HomePlan)| {
        let files = press.render_home(home, plan).map_err(|fault| fault.to_string())?;
        put_all(workshop, &files.fresh)?;
        for (path, from) in &files.repeats {
            workshop.repeat(path, from).map_err(|fault| fault.to_string())?;
        }
        press.remember(files);
        bar.inc(1);
        Ok(())
    };
    let written: Result<(), String> = homes.par_iter().zip(&plan.homes).try_for_each(write);
    bar.finish_and_clear();
    written
}

fn put_all(workshop: &Workshop, bundle: &Bundle) -> Result<(), String> {
    let put = |(path, bytes): (&String, &Vec<u8>)| workshop.put(path, bytes).map(drop);
    bundle.iter().try_for_each(put).map_err(|fault| fault.to_string())
}

fn tell_result(arguments: &FitArguments, homes: &[Home], plan: &ClassPlan) -> String {
    let to = arguments.to.display();
    if arguments.survey {
        return format!("Wrote the survey to {to}: survey.html, survey.pdf and survey.csv.\n");
    }
    let fits = |home: &HomePlan| {
        home.sessions.iter().filter(|plan| matches!(plan, SessionPlan::Fits(_))).count()
    };
    let sessions: usize = plan.homes.iter().map(fits).sum();
    let none = plan.homes.iter().filter(|home| fits(home) == 0).count();
    format!(
        "Fitted {sessions} sessions to {} homes in {to}; {none} can do none of them.\nOpen {} in a browser.\n",
        homes.len(),
        arguments.to.join("teacher.html").display(),
    )
}
