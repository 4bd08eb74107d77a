//! When to look again: a moment after the last of the writes to a pack’s folders, and now and then in any case,
//! for folders whose computer tells of no writes (shared drives).

use std::collections::BTreeSet;
use std::ops::ControlFlow;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use notify::event::{AccessKind, AccessMode, ModifyKind, RenameMode};
use notify::{Event, EventKind, RecommendedWatcher, RecursiveMode, Watcher};

/// Editors write in several steps (write, rename, set times): so long after the last it is settled.
const SETTLED: Duration = Duration::from_millis(25);
/// A file that has been closed or put in its place is whole: little more is to come.
const CLOSED: Duration = Duration::from_millis(6);
/// Something that writes without end is looked at all the same.
const LONGEST: Duration = Duration::from_millis(400);
/// Between looks where nothing is told.
const UNTOLD: Duration = Duration::from_secs(2);

/// The folders to watch from now on, or that it is enough.
pub type Watched = ControlFlow<(), BTreeSet<PathBuf>>;

/// What was told of a write.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Told {
    /// More may follow at once.
    Begun,
    /// A file was closed, or another put in its place.
    Closed,
}

/// Calls `look` after every settled change in the folders it names, until it says to stop. It takes a thread of
/// its own.
pub fn watch_pack(mut folders: BTreeSet<PathBuf>, mut look: impl FnMut() -> Watched) {
    let (tell, told) = channel();
    // Where the system won’t tell (too many folders, a shared drive), the looks now and then are left.
    let tell = move |event: Result<Event, notify::Error>| {
        if let Some(write) = event.ok().and_then(|event| write_of(event.kind)) {
            let _ = tell.send(write);
        }
    };
    let mut watcher = notify::recommended_watcher(tell).ok();
    let mut watched = BTreeSet::new();
    loop {
        if let Some(watcher) = &mut watcher {
            watch_folders(watcher, &folders, &mut watched);
        }
        wait_for_change(&told);
        match look() {
            ControlFlow::Continue(next) => folders = next,
            ControlFlow::Break(()) => return,
        }
    }
}

/// Watches folders that are not watched yet. One that is asked for no more goes on being watched: a look too many
/// does no harm.
fn watch_folders(
    watcher: &mut RecommendedWatcher,
    folders: &BTreeSet<PathBuf>,
    watched: &mut BTreeSet<PathBuf>,
) {
    for folder in folders {
        let is_new = !watched.iter().any(|known| folder.starts_with(known));
        if is_new && watcher.watch(folder, RecursiveMode::Recursive).is_ok() {
            watched.insert(folder.clone());
        }
    }
}

/// Reading a file is told too; only what may change one counts.
fn write_of(kind: EventKind) -> Option<Told> {
    match kind {
        EventKind::Access(AccessKind::Close(AccessMode::Write)) => Some(Told::Closed),
        EventKind::Access(_) => None,
        EventKind::Modify(ModifyKind::Name(RenameMode::To | RenameMode::Both)) => {
            Some(Told::Closed)
        }
        _ => Some(Told::Begun),
    }
}

/// Waits for a change and until it has settled, or for a while.
fn wait_for_change(told: &Receiver<Told>) {
    let mut last = match told.recv_timeout(UNTOLD) {
        Ok(told) => told,
        Err(RecvTimeoutError::Timeout) => return,
        Err(RecvTimeoutError::Disconnected) => {
            // No watcher could be made.
            std::thread::sleep(UNTOLD / 4);
            return;
        }
    };
    let began = Instant::now();
    while began.elapsed() < LONGEST {
        let quiet = if last == Told::Closed { CLOSED } else { SETTLED };
        match told.recv_timeout(quiet) {
            Ok(next) => last = next,
            Err(_) => return,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_save_in_steps_is_one() {
        let (tell, told) = channel();
        let save = std::thread::spawn(move || {
            for step in [Told::Begun, Told::Begun, Told::Closed, Told::Begun, Told::Closed] {
                tell.send(step).unwrap();
                std::thread::sleep(Duration::from_millis(1));
            }
            tell
        });
        wait_for_change(&told);
        let _tell = save.join().unwrap();
        assert!(told.try_recv().is_err());
    }
}
