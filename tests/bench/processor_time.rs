//! How long this process has had the processor, in milliseconds: what else the machine does is left out.
//! Linux says it for each thread in nanoseconds (`/proc/PID/task/TID/schedstat`, first figure, see the
//! kernel’s sched-stats documentation). Elsewhere the clock on the wall has to do.

use std::path::Path;
use std::sync::LazyLock;
use std::time::Instant;

static BEGAN: LazyLock<Instant> = LazyLock::new(Instant::now);

pub fn milliseconds() -> f64 {
    let began = *BEGAN;
    let threads = std::fs::read_dir("/proc/self/task").into_iter().flatten().flatten();
    let nanoseconds: f64 = threads.filter_map(|thread| of_thread(&thread.path())).sum();
    if nanoseconds > 0.0 { nanoseconds / 1e6 } else { began.elapsed().as_secs_f64() * 1000.0 }
}

fn of_thread(folder: &Path) -> Option<f64> {
    let said = std::fs::read_to_string(folder.join("schedstat")).ok()?;
    said.split_whitespace().next()?.parse().ok()
}
