//! `homeground schema`

use std::path::Path;

use super::Ending;
use super::args::SchemaArguments;
use super::console::Console;
use crate::read::nearest;
use crate::schema::{FileKind, KINDS, find_kind, schema_text};

pub fn run_schema(arguments: &SchemaArguments, console: &Console) -> Ending {
    match schema(arguments, console) {
        Ok(()) => Ending::Well,
        Err(why) => console.could_not_run(&why),
    }
}

fn schema(arguments: &SchemaArguments, console: &Console) -> Result<(), String> {
    if let Some(folder) = &arguments.to {
        return write_all(folder, console);
    }
    console.result(&schema_text(kind_of(&arguments.kind)?));
    Ok(())
}

fn kind_of(name: &str) -> Result<&'static FileKind, String> {
    let names: Vec<&str> = KINDS.iter().map(|kind| kind.name).collect();
    find_kind(name).ok_or_else(|| match nearest(name, &names) {
        Some(near) => format!("There is no kind of file “{name}”. Did you mean “{near}”?"),
        None => format!("There is no kind of file “{name}”. The kinds are: {}.", names.join(", ")),
    })
}

fn write_all(folder: &Path, console: &Console) -> Result<(), String> {
    std::fs::create_dir_all(folder)
        .map_err(|_| format!("The folder {} could not be made.", folder.display()))?;
    for kind in KINDS {
        let path = folder.join(kind.file_name());
        std::fs::write(&path, schema_text(kind))
            .map_err(|_| format!("{} could not be written.", path.display()))?;
        console.result(&format!("{}: for {}\n", path.display(), kind.files.join(", ")));
    }
    console.message(
        "In your editor’s settings for YAML, give each schema to the files named after it. \
         Many editors also take a comment in the first line of a file that names its schema.",
    );
    Ok(())
}
