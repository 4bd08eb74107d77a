//! For homes with no printer: a session as a few words to copy by hand, and as text messages. Both
//! are plain text, UTF-8, beside the sheets.

mod copy;
mod gsm;
mod messages;

pub use copy::{copy_lines, copy_minutes};
pub use messages::write_messages;

use std::sync::Arc;

use rayon::prelude::*;

use super::near::keep_near;
use super::shelf::Made;
use super::{Bundle, Publication};
use crate::pack::{Session, SessionId};
use crate::plan::Plans;

/// The path of the words to copy below the published folder.
pub fn copy_path(session: &SessionId) -> String {
    format!("print/{session}/copy.txt")
}

/// The path of the text messages below the published folder.
pub fn messages_path(session: &SessionId) -> String {
    format!("print/{session}/texts.txt")
}

/// Both texts of every session that is offered. A message stands on a line of its own, with an empty
/// line between two, so that each is picked up in one go.
pub fn render_texts(publication: &Publication<'_>) -> Bundle {
    let words = &publication.words;
    let sessions = publication.pack.sessions.par_iter().zip(&publication.plans);
    let is_wanted = |session: &Session| publication.wants_below(&format!("print/{}/", session.id));
    let offered = sessions.filter(|(session, _)| !session.is_retired() && is_wanted(session));
    let write = |(session, plans): (&Arc<Session>, &Arc<Plans>)| {
        let paths = [copy_path(&session.id), messages_path(&session.id)];
        let near = publication.near("texts", session);
        if publication.leave(near, &paths).is_some() {
            return Vec::new();
        }
        let copy = copy_lines(session, plans, publication.pack, words).join("\n") + "\n";
        let messages = write_messages(session, plans, publication.pack, words).join("\n\n") + "\n";
        let made = [copy, messages].map(|text| Made { bytes: text.into_bytes(), ink: Vec::new() });
        keep_near(near, &made);
        paths.into_iter().zip(made.map(|made| made.bytes)).collect()
    };
    offered.flat_map_iter(write).collect()
}
