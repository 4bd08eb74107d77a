//! The command line of homeground; everything it does is in the library.

use std::process::ExitCode;

use homeground::command::Ending;

/// Setting type makes and drops very many small pieces; this allocator halves what that costs.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    // A panic has been explained by then; to a script it is a run that could not be made.
    let ending = std::panic::catch_unwind(homeground::command::run_command);
    ExitCode::from(ending.unwrap_or(Ending::CouldNotRun).status())
}
