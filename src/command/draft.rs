//! `homeground draft`

use std::path::PathBuf;

use super::Ending;
use super::args::DraftArguments;
use super::console::Console;
use crate::pack::SessionId;

const STARTER: &str = include_str!("../../templates/draft/session.yaml");

/// A title is one line on a card.
const LONGEST_TITLE: usize = 60;

pub fn run_draft(arguments: &DraftArguments, console: &Console) -> Ending {
    match draft(arguments, console) {
        Ok(()) => Ending::Well,
        Err(why) => console.could_not_run(&why),
    }
}

fn draft(arguments: &DraftArguments, console: &Console) -> Result<(), String> {
    let session = starter_session(&arguments.title)?;
    let Some(folder) = &arguments.into else {
        console.result(&session);
        return Ok(());
    };
    let path = free_path(folder, &arguments.title)?;
    std::fs::create_dir_all(folder)
        .and_then(|()| std::fs::write(&path, session))
        .map_err(|_| format!("{} could not be written.", path.display()))?;
    console.result(&format!("{}\n", path.display()));
    console.message("Now change it to your session, and look at it with: homeground inspect");
    Ok(())
}

/// The starter with a title in it.
///
/// # Errors
/// Where the title is empty or too long for a card.
pub fn starter_session(title: &str) -> Result<String, String> {
    let title = title.split_whitespace().collect::<Vec<_>>().join(" ");
    if title.is_empty() || title.chars().count() > LONGEST_TITLE {
        return Err(format!("A title has from 1 to {LONGEST_TITLE} characters."));
    }
    // A JSON string is a YAML string, whatever marks the title holds.
    let quoted = serde_json::to_string(&title).map_err(|_| "This title can’t be written.")?;
    Ok(STARTER.replacen("title: TITLE", &format!("title: {quoted}"), 1))
}

fn free_path(folder: &std::path::Path, title: &str) -> Result<PathBuf, String> {
    let id = SessionId::of_path(&format!("{}.yaml", title.replace(['/', '\\', '.'], " ")));
    let path = folder.join(format!("{id}.yaml"));
    if path.exists() {
        return Err(format!("{} is already there, and is left as it is.", path.display()));
    }
    Ok(path)
}
