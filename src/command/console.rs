//! The one place that prints: results to standard output, messages to standard error.

use std::io::{IsTerminal, Write};

use super::Ending;

/// Standard output and standard error.
#[derive(Clone, Debug)]
pub struct Console {
    pub is_terminal: bool,
}

#[allow(
    clippy::unused_self,
    reason = "whoever prints is handed the console, so that it is seen where"
)]
impl Console {
    pub fn new() -> Self {
        let asks_plain = std::env::var_os("NO_COLOR").is_some();
        Self { is_terminal: std::io::stderr().is_terminal() && !asks_plain }
    }

    /// Writes a result. A reader that has gone away (a closed pipe) is no fault of ours.
    pub fn result(&self, text: &str) {
        let _ = std::io::stdout().lock().write_all(text.as_bytes());
    }

    /// Writes a message on a line of its own.
    pub fn message(&self, text: &str) {
        let _ = writeln!(std::io::stderr().lock(), "{text}");
    }

    /// Says why the program could not run.
    pub fn could_not_run(&self, why: &str) -> Ending {
        self.message(&format!("homeground: {why}"));
        Ending::CouldNotRun
    }

    /// Help and version are results; a slip in the arguments is a message.
    pub fn show_usage(&self, fault: &clap::Error) -> Ending {
        match super::usage::explain_usage(fault) {
            Some(words) => self.message(&words),
            None => drop(fault.print()),
        }
        if fault.use_stderr() { Ending::CouldNotRun } else { Ending::Well }
    }
}
