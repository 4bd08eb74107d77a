//! What the words of a line are part of: a paragraph, an entry of a list, a link.

use std::borrow::Cow;

use super::page::{Item, Key, Role};
use super::shaper::Shaper;
use crate::prose::{Run, is_web_address};

/// What the lines of a paragraph are wrapped in, from the outside in.
pub struct Wrap<'r> {
    pub around: Vec<(Role, Key)>,
    pub marker: Option<Key>,
    pub text: (Role, Key),
    /// The words they were shaped from, for their links.
    pub runs: &'r [Run],
}

impl<'r> Wrap<'r> {
    pub fn plain(role: Role, key: Key, runs: &'r [Run]) -> Self {
        Self { around: Vec::new(), marker: None, text: (role, key), runs }
    }

    /// A line with its marker, if it has one, in all its groups.
    pub fn around(
        &self,
        marker: Option<Vec<Item>>,
        words: Vec<Item>,
        shaper: &mut Shaper<'_>,
    ) -> Item {
        let (role, key) = &self.text;
        let text = Item::group(role.clone(), *key, self.with_links(words, shaper));
        let marker = marker.zip(self.marker);
        let marker = marker.map(|(items, key)| Item::group(Role::Marker, key, items));
        let mut inside: Vec<Item> = marker.into_iter().chain([text]).collect();
        for (role, key) in self.around.iter().rev() {
            inside = vec![Item::group(role.clone(), *key, inside)];
        }
        inside.pop().expect("the text at least is inside")
    }

    /// Words that lead to the web in groups of their own.
    fn with_links(&self, words: Vec<Item>, shaper: &mut Shaper<'_>) -> Vec<Item> {
        words
            .into_iter()
            .map(|item| {
                let Item::Glyphs(run) = &item else { return item };
                let link = self.runs.get(run.source).and_then(|run| run.link.as_ref());
                match link.filter(|link| is_web_address(link) || link.starts_with("mailto:")) {
                    Some(link) => {
                        Item::group(Role::Link(link.clone()), shaper.next_key(), vec![item])
                    }
                    None => item,
                }
            })
            .collect()
    }
}

/// Paper can’t be clicked: a link to the web is followed by its address, unless that is its text.
pub fn with_addresses(runs: &[Run]) -> Cow<'_, [Run]> {
    if runs.iter().all(|run| run.link.is_none()) {
        return Cow::Borrowed(runs);
    }
    let mut spelled: Vec<Run> = Vec::with_capacity(runs.len());
    for (index, run) in runs.iter().enumerate() {
        spelled.push(run.clone());
        let goes_on = runs.get(index + 1).is_some_and(|next| next.link == run.link);
        let Some(link) = run.link.as_ref().filter(|link| link.contains(':') && !goes_on) else {
            continue;
        };
        let address = link.trim_start_matches("https://").trim_start_matches("mailto:");
        if !run.text.contains(address.trim_end_matches('/')) {
            spelled.push(Run::plain(format!(" ({address})")));
        }
    }
    Cow::Owned(spelled)
}
