//! All pictures of a session, for the rules that look at them.

use crate::pack::{Picture, Session};

/// The session's own pictures, then those of its parts in order.
pub(super) fn pictures_of(session: &Session) -> impl Iterator<Item = &Picture> {
    session.pictures.iter().chain(session.parts.iter().flat_map(|part| &part.pictures))
}
