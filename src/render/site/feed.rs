//! A feed of new and changed sessions, for readers of feeds and for a school’s own site.
//!
//! Source: RFC 4287 (Atom). Feeds ask for full addresses and dates: there is one only where the pack says
//! where its pages will stand, and it holds the sessions whose standing has a date. No clock is asked.

use std::fmt::Write as _;

use super::Site;
use super::learning_data::dated;
use crate::pack::Session;
use crate::prose::plain_line;
use crate::render::page_path;

/// The path of the feed below the folder of its language.
pub(super) const FEED: &str = "feed.xml";

/// At most so many sessions, the latest: our own choice.
const MOST: usize = 50;

/// Whether this language of the pack has a feed.
pub(super) fn has_feed(site: &Site<'_>) -> bool {
    site.address_of("").is_some() && site.offered().any(|(session, _)| dated(session).is_some())
}

/// The feed, if there can be one.
pub(super) fn render_feed(site: &Site<'_>) -> Option<Vec<u8>> {
    let mut dated_sessions: Vec<(String, &Session)> =
        site.offered().filter_map(|(session, _)| Some((dated(session)?, session))).collect();
    dated_sessions.sort_by(|a, b| b.0.cmp(&a.0).then_with(|| a.1.id.cmp(&b.1.id)));
    dated_sessions.truncate(MOST);
    let (latest, _) = dated_sessions.first()?;
    let (front, own) = (site.address_of("")?, site.address_of(FEED)?);
    let pack = site.publication.pack;
    let (title, school) = (plain_line(&pack.title), pack.school.as_ref().unwrap_or(&pack.title));
    let mut feed = format!(
        "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n\
         <feed xmlns=\"http://www.w3.org/2005/Atom\" xml:lang=\"{}\">\n<title>{}</title>\n\
         <id>{}</id>\n<link rel=\"self\" href=\"{}\"/>\n<link href=\"{}\"/>\n\
         <updated>{}</updated>\n<author><name>{}</name></author>\n",
        escape(&pack.language),
        escape(&title),
        escape(&front),
        escape(&own),
        escape(&front),
        instant(latest),
        escape(&plain_line(school)),
    );
    for (date, session) in &dated_sessions {
        write_entry(&mut feed, site, date, session)?;
    }
    feed.push_str("</feed>\n");
    Some(feed.into_bytes())
}

fn write_entry(feed: &mut String, site: &Site<'_>, date: &str, session: &Session) -> Option<()> {
    let address = site.address_of(&page_path(&session.id))?;
    let activity = site.words.say(&format!("activity-{}", session.activity.word()));
    let changed = session.standing.iter().flat_map(|standing| &standing.changed);
    let lines: Vec<String> =
        std::iter::once(&session.summary).chain(changed).map(|line| plain_line(line)).collect();
    write!(
        feed,
        "<entry>\n<title>{}</title>\n<id>{}</id>\n<link href=\"{}\"/>\n<updated>{}</updated>\n\
         <category term=\"{}\" label=\"{}\"/>\n<summary>{}</summary>\n</entry>\n",
        escape(&plain_line(&session.title)),
        escape(&address),
        escape(&address),
        instant(date),
        escape(session.activity.word()),
        escape(&activity),
        escape(&lines.join("\n")),
    )
    .ok()
}

/// The beginning of a day (RFC 3339); a session has a date and no hour.
fn instant(date: &str) -> String {
    format!("{date}T00:00:00Z")
}

/// Text for XML 1.0; control characters, which it can’t hold at all, are left out.
fn escape(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            '\u{fffe}' | '\u{ffff}' => {}
            _ if letter.is_control() && letter != '\n' && letter != '\t' => {}
            _ => escaped.push(letter),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_a_pack_holds_becomes_markup() {
        assert_eq!(escape("a <b> & \"c\"\u{1}\n"), "a &lt;b&gt; &amp; &quot;c&quot;\n");
    }
}
