//! `homeground progress`

use std::path::Path;

use super::Ending;
use super::args::ProgressArguments;
use super::console::Console;
use super::packs::open_folder;
use crate::pack::Pack;
use crate::progress::code::read_code;
use crate::progress::entries::{Entries, Unread};
use crate::progress::files::read_files;
use crate::progress::guard::check_kept_apart;
use crate::progress::keep::{KEEP_FILE, choose_date};
use crate::progress::model::{Progress, plan_progress};
use crate::publish::{check_target, forget_bundle, publish_bundle};
use crate::quantity::{Date, Quantity};
use crate::read::Selection;
use crate::render::Bundle;
use crate::render::progress::render_progress;
use crate::source::Source;

/// Cells that could not be read and are told on the console; all of them stand in the report.
const TOLD: usize = 20;

pub fn run_progress(arguments: &ProgressArguments, console: &Console) -> Ending {
    let done =
        if arguments.forget { forget(arguments, console) } else { report(arguments, console) };
    done.unwrap_or_else(|why| console.could_not_run(&why))
}

/// Deletes what was made of marks here, and nothing else.
fn forget(arguments: &ProgressArguments, console: &Console) -> Result<Ending, String> {
    let to = arguments.to.display();
    if !arguments.to.join(KEEP_FILE).is_file() {
        return Err(format!("{to} holds no results of children, so nothing was deleted."));
    }
    let removed = forget_bundle(&arguments.to).map_err(|fault| fault.to_string())?;
    console.result(&format!("Deleted {removed} files of results from {to}.\n"));
    console.message("The files of marks themselves are yours: delete them too, and their copies.");
    Ok(Ending::Well)
}

fn report(arguments: &ProgressArguments, console: &Console) -> Result<Ending, String> {
    let source = open_folder(&arguments.pack, arguments.as_of.as_deref())?;
    let today = source.today();
    if let Some(lost) = arguments.marks.iter().chain(&arguments.codes).find(|path| !path.exists()) {
        return Err(format!("There is no file {} here.", lost.display()));
    }
    for path in arguments.marks.iter().chain(&arguments.codes).chain([&arguments.to]) {
        check_kept_apart(path, &arguments.pack)?;
    }
    check_target(&arguments.to, &arguments.pack).map_err(|fault| fault.to_string())?;
    let pack = crate::inspect(&source, &Selection::All)?.pack;
    if pack.sessions.is_empty() {
        return Err(format!("There are no sessions in {}.", arguments.pack.display()));
    }
    let entries = read_marks(arguments, &pack)?;
    let asked = arguments.keep_until.as_deref().map(read_date).transpose()?;
    let keep_until = choose_date(asked, entries.keep_until, &arguments.to, today)?;
    let progress = plan_progress(&pack, entries, arguments.rank);
    if progress.codes.is_empty() {
        tell_unread(&progress.unread, console);
        return Err("No marks and no answers could be read, so nothing was made.".into());
    }
    let bundle = render_progress(&pack, &progress, keep_until, today).map_err(|f| f.to_string())?;
    publish_bundle(&bundle, &arguments.to, &arguments.pack).map_err(|fault| fault.to_string())?;
    tell_unread(&progress.unread, console);
    console.result(&tell_result(&progress, &bundle, arguments, keep_until));
    Ok(if progress.unread.is_empty() { Ending::Well } else { Ending::Problems })
}

fn read_date(text: &str) -> Result<Date, String> {
    Date::read_quantity(text)
        .map_err(|fault| format!("After --keep-until: {}. {}", fault.says, fault.way_out))
}

fn read_marks(arguments: &ProgressArguments, pack: &Pack) -> Result<Entries, String> {
    let files = arguments.marks.iter().map(|path| Ok((file_name(path), read_bytes(path)?)));
    let files = files.collect::<Result<Vec<_>, String>>()?;
    let mut entries = read_files(&files, pack)?;
    if let Some(path) = &arguments.codes {
        add_codes(path, &mut entries)?;
    }
    Ok(entries)
}

/// One code a line.
fn add_codes(path: &Path, entries: &mut Entries) -> Result<(), String> {
    let bytes = read_bytes(path)?;
    let text = String::from_utf8_lossy(&bytes);
    for (line, row) in text.trim_start_matches('\u{feff}').lines().zip(1..) {
        match read_code(line) {
            Ok(code) if !code.eq_ignore_ascii_case("code") => {
                entries.add_code(code);
            }
            Err(says) if !line.trim().is_empty() => {
                entries.unread.push(Unread { file: file_name(path), row, column: None, says });
            }
            _ => {}
        }
    }
    Ok(())
}

fn read_bytes(path: &Path) -> Result<Vec<u8>, String> {
    std::fs::read(path).map_err(|why| match why.kind() {
        std::io::ErrorKind::NotFound => format!("There is no file {}.", path.display()),
        _ => format!("{} could not be read.", path.display()),
    })
}

fn file_name(path: &Path) -> String {
    path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned()
}

fn tell_unread(unread: &[Unread], console: &Console) {
    for Unread { file, row, column, says } in unread.iter().take(TOLD) {
        let column = column.as_ref().map_or_else(String::new, |(at, name)| {
            format!(
                ", column {at}{}",
                if name.is_empty() { String::new() } else { format!(" ({name})") }
            )
        });
        console.message(&format!("{file}: row {row}{column}: {says}"));
    }
    if unread.len() > TOLD {
        console.message(&format!("… and {} more, listed in the report.", unread.len() - TOLD));
    }
}

fn tell_result(
    progress: &Progress,
    bundle: &Bundle,
    arguments: &ProgressArguments,
    keep_until: Date,
) -> String {
    let slips = bundle.keys().filter(|path| path.starts_with("slips/")).count();
    let unread = match progress.unread.len() {
        0 => "Every cell was read.".to_owned(),
        1 => "1 cell was not read.".to_owned(),
        count => format!("{count} cells were not read."),
    };
    format!(
        "Marks of {} children in {} tasks. {unread}\nWrote a report, {slips} slips and tables to {}, \
         to be kept until {keep_until}.\nOpen {} in a browser.\n",
        progress.codes.len(),
        progress.tasks.len(),
        arguments.to.display(),
        arguments.to.join("report.html").display(),
    )
}
