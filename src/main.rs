//! The command line of homeground; everything it does is in the library.

use std::process::ExitCode;

/// Setting type makes and drops very many small pieces; this allocator halves what that costs.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    ExitCode::from(homeground::command::run_command().status())
}
