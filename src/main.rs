//! The command line of homeground; everything it does is in the library.

use std::process::ExitCode;

fn main() -> ExitCode {
    ExitCode::from(homeground::command::run_command().status())
}
