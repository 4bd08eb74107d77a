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
use crate::pack::{Pack, Session, SessionId, Unit};
use crate::parcel::{Packed, pack_folder, plain_name};
use crate::plan::unit::plan_unit;
use crate::prose::plain_line;
use crate::quantity::{Date, Quantity};
use crate::read::{Selection, nearest};
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
    match &arguments.unit {
        Some(named) => keep_unit(&mut pack, named)?,
        None => keep_chosen(&mut pack, &arguments.sessions)?,
    }
    // Where no day is asked for, it is that of the sessions: the clock would make each parcel another.
    let date = arguments.as_of.as_deref().and_then(|day| Date::read_quantity(day).ok());
    let asked = Asked { kind, is_unit: arguments.unit.is_some() };
    let packed = pack_kind(&pack, asked, date.or_else(|| latest_date(&pack)), console)?;
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

/// Leaves the sessions out that are not asked for, so that no link leads to them, and the units that would be
/// without one of theirs.
fn keep_chosen(pack: &mut Pack, asked: &[String]) -> Result<(), String> {
    let chosen = chosen_sessions(pack, asked)?;
    let ids: BTreeSet<_> = chosen.iter().map(|session| session.id.clone()).collect();
    let is_whole = |unit: &&Unit| sessions_of(unit, pack).iter().all(|id| ids.contains(id));
    let whole: BTreeSet<_> =
        pack.units.iter().filter(is_whole).map(|unit| unit.id.clone()).collect();
    keep_only(pack, &ids, &whole);
    Ok(())
}

/// Leaves all but a unit and its sessions out.
fn keep_unit(pack: &mut Pack, named: &str) -> Result<(), String> {
    let name = named.trim_start_matches("units/");
    let name = name.strip_suffix(".yaml").unwrap_or(name);
    let ids: Vec<&str> = pack.units.iter().map(|unit| unit.id.as_str()).collect();
    let Some(at) = ids.iter().position(|id| *id == name) else {
        return Err(format!(
            "There is no unit “{named}” in this pack. {}",
            way_to_unit(name, &ids)
        ));
    };
    let unit = &pack.units[at];
    let sessions: BTreeSet<_> = sessions_of(unit, pack).into_iter().collect();
    if sessions.is_empty() {
        return Err(format!(
            "The unit “{named}” has no day with a session, so there is nothing to pack."
        ));
    }
    let unit = BTreeSet::from([unit.id.clone()]);
    keep_only(pack, &sessions, &unit);
    Ok(())
}

fn way_to_unit(name: &str, ids: &[&str]) -> String {
    match nearest(name, ids) {
        Some(near) => format!("Did you mean “{near}”?"),
        None if ids.is_empty() => "Units are the files in its folder “units”.".into(),
        None => format!("There are: {}.", ids.join(", ")),
    }
}

/// The sessions of a unit, also those that were chosen for it.
fn sessions_of(unit: &Unit, pack: &Pack) -> Vec<SessionId> {
    let days = plan_unit(unit, pack).days;
    days.iter().map(|day| pack.sessions[day.session].id.clone()).collect()
}

fn keep_only(pack: &mut Pack, sessions: &BTreeSet<SessionId>, units: &BTreeSet<SessionId>) {
    let is_kept = |session: &Session| sessions.contains(&session.id);
    pack.sessions.retain(|session| is_kept(session));
    pack.units.retain(|unit| units.contains(&unit.id));
    for translation in pack.translations.values_mut() {
        translation.sessions.retain(is_kept);
    }
}

/// What is to be packed, and how.
#[derive(Clone, Copy)]
struct Asked {
    kind: ParcelKind,
    is_unit: bool,
}

fn pack_kind(
    pack: &Pack,
    Asked { kind, is_unit }: Asked,
    date: Option<Date>,
    console: &Console,
) -> Result<Packed, String> {
    let unit = pack.units.first().filter(|_| is_unit);
    let packed = if kind == ParcelKind::Book {
        render_epub(pack, unit, date)
    } else {
        let bar = progress_bar(pack.sessions.len(), console);
        let pages = render_pack(pack, &|| bar.inc(1));
        bar.finish_and_clear();
        let pages = pages.map_err(|fault| fault.to_string())?.bundle;
        if kind == ParcelKind::Platform {
            render_cartridge(pack, unit, &pages, date)
        } else {
            let name = unit.map_or_else(|| pack.title.clone(), |unit| plain_line(&unit.title));
            Ok(pack_folder(&pages, &plain_name(&name), date))
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
