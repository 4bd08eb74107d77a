//! `homeground parcel`

use std::collections::BTreeSet;
use std::io::{Read, Write};
use std::path::Path;

use super::Ending;
use super::args::{ParcelArguments, ParcelKind};
use super::console::Console;
use super::fit::chosen_sessions;
use super::packs::open_folder;
use super::publish::{has_problems, progress_bar};
use crate::pack::{Pack, Session};
use crate::parcel::{Packed, pack_folder, plain_name};
use crate::quantity::{Date, Quantity};
use crate::read::Selection;
use crate::render::{latest_date, render_cartridge, render_epub, render_pack};
use crate::report::report_text;

pub fn run_parcel(arguments: &ParcelArguments, console: &Console) -> Ending {
    match parcel(arguments, console) {
        Ok(ending) => ending,
        Err(why) => console.could_not_run(&why),
    }
}

fn parcel(arguments: &ParcelArguments, console: &Console) -> Result<Ending, String> {
    let kind = kind_of(arguments)?;
    check_file(&arguments.to)?;
    let source = open_folder(&arguments.pack, arguments.as_of.as_deref())?;
    let inspected = crate::inspect(&source, &Selection::All)?;
    if has_problems(&inspected.findings) {
        let report = report_text(&inspected.findings, &inspected.pack.files, console.is_terminal);
        console.message(report.trim_end());
        console.message("Nothing was packed. Mend the problems and run it again.");
        return Ok(Ending::Problems);
    }
    let mut pack = inspected.pack;
    keep_chosen(&mut pack, &arguments.sessions)?;
    // Where no day is asked for, it is that of the sessions: the clock would make each parcel another.
    let date = arguments.as_of.as_deref().and_then(|day| Date::read_quantity(day).ok());
    let packed = pack_kind(&pack, kind, date.or_else(|| latest_date(&pack)), console)?;
    write_beside(&arguments.to, &packed)?;
    console.result(&tell_result(&pack, kind, &packed, &arguments.to));
    Ok(Ending::Well)
}

/// What is asked for, or what the ending of the file says.
fn kind_of(arguments: &ParcelArguments) -> Result<ParcelKind, String> {
    if let Some(kind) = arguments.kind {
        return Ok(kind);
    }
    let ending = arguments.to.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    match ending.as_deref() {
        Some("zip") => Ok(ParcelKind::Pages),
        Some("imscc") => Ok(ParcelKind::Platform),
        Some("epub") => Ok(ParcelKind::Book),
        _ => Err(format!(
            "What {} is to be can’t be told from its name. End it in .zip, .imscc or .epub, or say --kind \
             pages, platform or book.",
            arguments.to.display()
        )),
    }
}

/// Only an archive is ever written over, so that a slip in the name costs nobody a file.
fn check_file(to: &Path) -> Result<(), String> {
    if to.is_dir() {
        return Err(format!("{} is a folder. Name a file after --to.", to.display()));
    }
    let Ok(mut file) = std::fs::File::open(to) else { return Ok(()) };
    let mut start = [0; 4];
    match file.read_exact(&mut start) {
        Ok(()) if start == *b"PK\x03\x04" => Ok(()),
        _ => Err(format!(
            "{} is there already and is no parcel, so it stays as it is. Choose another name after --to.",
            to.display()
        )),
    }
}

/// Leaves the sessions out that are not asked for, so that no link leads to them.
fn keep_chosen(pack: &mut Pack, asked: &[String]) -> Result<(), String> {
    let chosen = chosen_sessions(pack, asked)?;
    let ids: BTreeSet<_> = chosen.iter().map(|session| session.id.clone()).collect();
    let is_kept = |session: &Session| ids.contains(&session.id);
    pack.sessions.retain(|session| is_kept(session));
    for translation in pack.translations.values_mut() {
        translation.sessions.retain(is_kept);
    }
    Ok(())
}

fn pack_kind(
    pack: &Pack,
    kind: ParcelKind,
    date: Option<Date>,
    console: &Console,
) -> Result<Packed, String> {
    let packed = if kind == ParcelKind::Book {
        render_epub(pack, date)
    } else {
        let bar = progress_bar(pack.sessions.len(), console);
        let pages = render_pack(pack, &|| bar.inc(1));
        bar.finish_and_clear();
        let pages = pages.map_err(|fault| fault.to_string())?.bundle;
        match kind {
            ParcelKind::Platform => render_cartridge(pack, &pages, date),
            _ => Ok(pack_folder(&pages, &plain_name(&pack.title), date)),
        }
    };
    packed.map_err(|fault| fault.to_string())
}

/// Writes beside the target and renames, so that a full disk leaves the last good parcel as it was.
fn write_beside(to: &Path, packed: &[u8]) -> Result<(), String> {
    let refused = |_| format!("{} could not be written: the disk refused.", to.display());
    let folder =
        to.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    std::fs::create_dir_all(folder).map_err(refused)?;
    let mut file =
        tempfile::Builder::new().prefix(".homeground-").tempfile_in(folder).map_err(refused)?;
    file.write_all(packed).and_then(|()| file.as_file().sync_all()).map_err(refused)?;
    allow_reading(file.as_file());
    file.persist(to).map_err(|fault| refused(fault.error))?;
    Ok(())
}

/// A file made for a moment is closed to others; a parcel is to be handed on.
#[cfg(unix)]
fn allow_reading(file: &std::fs::File) {
    use std::os::unix::fs::PermissionsExt;
    // Where the disk knows no permissions there is nothing to allow.
    let _ = file.set_permissions(std::fs::Permissions::from_mode(0o644));
}

#[cfg(not(unix))]
const fn allow_reading(_file: &std::fs::File) {}

fn tell_result(pack: &Pack, kind: ParcelKind, packed: &[u8], to: &Path) -> String {
    let sessions = pack.sessions.iter().filter(|session| !session.is_retired()).count();
    let how = match kind {
        ParcelKind::Pages => "Unpack it and open index.html in a browser.",
        ParcelKind::Platform => {
            "Import it as a Common Cartridge: pages, sheets and review questions."
        }
        ParcelKind::Book => "Open it in an e-reader or a reading app.",
    };
    let count = if sessions == 1 { "1 session".to_owned() } else { format!("{sessions} sessions") };
    format!("Packed {count} into {} ({} KB). {how}\n", to.display(), packed.len().div_ceil(1000))
}
