//! For homes with no printer: a session as a few words to copy by hand, and as text messages. Both
//! are plain text, UTF-8, beside the sheets.

mod copy;
mod gsm;
mod messages;

pub use copy::{copy_lines, copy_minutes};
pub use messages::write_messages;

use rayon::prelude::*;

use super::{Bundle, Publication};
use crate::pack::{Session, SessionId};

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
    offered
        .flat_map_iter(|(session, plans)| {
            let copy = copy_lines(session, plans, publication.pack, words).join("\n") + "\n";
            let messages =
                write_messages(session, plans, publication.pack, words).join("\n\n") + "\n";
            [
                (copy_path(&session.id), copy.into_bytes()),
                (messages_path(&session.id), messages.into_bytes()),
            ]
        })
        .collect()
}
