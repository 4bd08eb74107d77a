//! Whose a session is that was borrowed, in a sentence for pages and paper.

use crate::pack::Session;
use crate::words::{Filling, Words};

/// “Borrowed from PE on the marsh; changed by Hollin Staithe School”. A licence that asks for credit asks for this
/// too (Creative Commons legal code 4.0, section 3a).
pub fn say_borrowed(session: &Session, words: &Words) -> Option<String> {
    let borrowed = session.borrowed.as_ref()?;
    let pack = ("pack", Filling::Text(&borrowed.pack));
    Some(match &borrowed.changed_by {
        _ if borrowed.changed.is_empty() => words.say_with("borrowed-from", &[pack]),
        Some(school) => {
            words.say_with("borrowed-changed-by", &[pack, ("school", Filling::Text(school))])
        }
        None => words.say_with("borrowed-changed", &[pack]),
    })
}
