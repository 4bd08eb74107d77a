//! The command line: arguments in, results on standard output, messages on standard error.

mod args;
mod console;
mod draft;
mod earlier;
mod fit;
mod git;
mod inspect;
mod mend;
mod packs;
mod parcel;
mod print_args;
mod progress;
mod publish;
mod rehearse;
mod schema;
mod teacher_folder;
mod usage;

use clap::Parser;

use args::{Arguments, Command};
use console::Console;

/// How a run ended, as its exit status.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Nothing, or only warnings and advice.
    Well,
    /// Problems were found.
    Problems,
    /// It could not run.
    CouldNotRun,
}

impl Ending {
    pub const fn status(self) -> u8 {
        match self {
            Self::Well => 0,
            Self::Problems => 1,
            Self::CouldNotRun => 2,
        }
    }
}

/// A panic is our own slip, never the teacher's: say so in words, and what helps us to mend it.
fn explain_panics(console: Console) {
    std::panic::set_hook(Box::new(move |slip| {
        let place = slip.location().map_or_else(String::new, |at| format!(" ({at})"));
        let words = slip.payload().downcast_ref::<String>().map(String::as_str);
        let words = words.or_else(|| slip.payload().downcast_ref::<&str>().copied());
        let what = words.unwrap_or("no more is known");
        console.message(&format!(
            "homeground: This is a mistake in the program, not in your files. Nothing was changed. \
             Please report it with the session it met: {what}{place}"
        ));
    }));
}

/// Reads the command line and does what it asks.
pub fn run_command() -> Ending {
    let console = Console::new();
    explain_panics(console.clone());
    let command = match Arguments::try_parse() {
        Ok(arguments) => arguments.command.unwrap_or_default(),
        Err(fault) => return console.show_usage(&fault),
    };
    match command {
        Command::Draft(arguments) => draft::run_draft(&arguments, &console),
        Command::Inspect(arguments) => inspect::run_inspect(&arguments, &console),
        Command::Progress(arguments) => progress::run_progress(&arguments, &console),
        Command::Fit(arguments) => fit::run_fit(&arguments, &console),
        Command::Parcel(arguments) => parcel::run_parcel(&arguments, &console),
        Command::Publish(arguments) => publish::run_publish(&arguments, &console),
        Command::Rehearse(arguments) => rehearse::run_rehearse(&arguments, &console),
        Command::Schema(arguments) => schema::run_schema(&arguments, &console),
    }
}
