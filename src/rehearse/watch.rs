//! When to look again: a moment after the last of the writes to a pack’s folder, and now and then in any case,
//! for folders whose computer tells of no writes (shared drives).

use std::ops::ControlFlow;
use std::path::Path;
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use notify::event::{AccessKind, AccessMode};
use notify::{Event, EventKind, RecursiveMode, Watcher};

/// Editors write in several steps (write, rename, set times): so long after the last it is settled.
const SETTLED: Duration = Duration::from_millis(25);
/// Something that writes without end is looked at all the same.
const LONGEST: Duration = Duration::from_millis(400);
/// Between looks where nothing is told.
const UNTOLD: Duration = Duration::from_secs(2);

/// Calls `look` after every settled change, until it says to stop. It takes a thread of its own.
pub fn watch_pack(root: &Path, mut look: impl FnMut() -> ControlFlow<()>) {
    let (tell, told) = channel();
    // Where the system won’t tell (too many folders, a shared drive), the looks now and then are left.
    let tell = move |event: Result<Event, notify::Error>| {
        if event.is_ok_and(|event| is_write(event.kind)) {
            let _ = tell.send(());
        }
    };
    let mut watcher = notify::recommended_watcher(tell).ok();
    if let Some(watcher) = &mut watcher {
        let _ = watcher.watch(root, RecursiveMode::Recursive);
    }
    while wait_for_change(&told) {
        if look().is_break() {
            return;
        }
    }
}

/// Reading a file is told too; only what may change one counts.
fn is_write(kind: EventKind) -> bool {
    match kind {
        EventKind::Access(access) => access == AccessKind::Close(AccessMode::Write),
        _ => true,
    }
}

/// Waits for a change and until it has settled.
fn wait_for_change(told: &Receiver<()>) -> bool {
    match told.recv_timeout(UNTOLD) {
        Ok(()) => {}
        Err(RecvTimeoutError::Timeout) => return true,
        Err(RecvTimeoutError::Disconnected) => {
            // No watcher could be made.
            std::thread::sleep(UNTOLD / 4);
            return true;
        }
    }
    let began = Instant::now();
    while began.elapsed() < LONGEST && told.recv_timeout(SETTLED).is_ok() {}
    true
}
