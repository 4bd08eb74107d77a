//! The page templates (Tera), and the labels they ask for.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use serde::Serialize;
use tera::{Context, Error, Kwargs, State, Tera, TeraResult, Value};

use crate::render::RenderFault;
use crate::render::house::House;
use crate::render::key::KeyMaker;
use crate::render::shelf::{Made, Shelf, find_or_make};
use crate::words::{Filling, Words};

const FOLDER: &str = "templates/site";

/// The templates of one pack: the shipped ones, with the pack's own in place of some.
pub(super) struct Templates<'s> {
    tera: Arc<Tera>,
    shelf: Option<&'s dyn Shelf>,
    /// What every page is made from besides its view: templates and labels.
    house: KeyMaker,
}

impl<'s> Templates<'s> {
    /// Reads every template. Their names are their paths below `templates`.
    pub(super) fn load(house: &House<'_>, words: Arc<Words>) -> Result<Self, RenderFault> {
        let made_from =
            KeyMaker::default().with("page").with(words.language()).with(house.own_key());
        Ok(Self { tera: kept_tera(house, words)?, shelf: None, house: made_from })
    }

    /// The same, looking first for pages that were made before.
    pub(super) fn looking_on(self, shelf: Option<&'s dyn Shelf>) -> Self {
        Self { shelf, ..self }
    }

    /// Fills one template, or finds the page as it was filled with the same view before.
    pub(super) fn fill(&self, name: &str, view: &impl Serialize) -> Result<Vec<u8>, RenderFault> {
        let key = || {
            let view = serde_json::to_vec(view).unwrap_or_default();
            self.house.clone().with(name).with(view).finish()
        };
        let make = || Ok(vec![Made { bytes: self.fill_anew(name, view)?, ink: Vec::new() }]);
        let made = find_or_make(self.shelf, key, make)?;
        Ok(made.into_iter().next().map(|made| made.bytes).unwrap_or_default())
    }

    fn fill_anew(&self, name: &str, view: &impl Serialize) -> Result<Vec<u8>, RenderFault> {
        let path = format!("{FOLDER}/{name}");
        let context = Context::from_serialize(view).map_err(|fault| render_fault(&path, &fault))?;
        let filled = self.tera.render(&format!("site/{name}"), &context);
        let page = filled.map_err(|fault| render_fault(&path, &fault))?;
        Ok(tighten(&page).into_bytes())
    }
}

/// The templates of a house; those that are shipped are read once, as its labels are ([`House::kept_words`]).
fn kept_tera(house: &House<'_>, words: Arc<Words>) -> Result<Arc<Tera>, RenderFault> {
    static SHIPPED: Mutex<BTreeMap<String, Arc<Tera>>> = Mutex::new(BTreeMap::new());
    if !house.is_as_shipped() {
        return read_tera(house, words).map(Arc::new);
    }
    let kept = || SHIPPED.lock().unwrap_or_else(PoisonError::into_inner);
    let language = words.language().to_owned();
    if let Some(tera) = kept().get(&language) {
        return Ok(Arc::clone(tera));
    }
    let tera = Arc::new(read_tera(house, words)?);
    kept().insert(language, Arc::clone(&tera));
    Ok(tera)
}

fn read_tera(house: &House<'_>, words: Arc<Words>) -> Result<Tera, RenderFault> {
    let mut tera = Tera::default();
    let say = move |kwargs: Kwargs, _: &State<'_>| say(&words, &kwargs);
    tera.register_function("say", say);
    let texts = house.paths_below(FOLDER).into_iter().map(|path| {
        let text = house.text(&path).into_owned();
        (path.trim_start_matches("templates/").to_owned(), text)
    });
    tera.add_raw_templates(texts).map_err(|fault| render_fault(FOLDER, &fault))?;
    Ok(tera)
}

fn render_fault(file: &str, fault: &Error) -> RenderFault {
    RenderFault { file: file.to_owned(), says: fault.to_string() }
}

/// `say(key="…", count=3)` in a template. A key that the catalogue lacks is a slip in a template,
/// which may be the pack's own.
fn say(words: &Words, kwargs: &Kwargs) -> TeraResult<String> {
    let key = kwargs.must_get::<&str>("key")?;
    if !words.has(key) {
        return Err(Error::message(format!("there is no label “{key}”")));
    }
    let with: Vec<(&str, Filling<'_>)> = kwargs
        .iter()
        .filter_map(|(name, value)| Some((name.as_str()?, filling_of(value)?)))
        .collect();
    Ok(words.say_with(key, &with))
}

fn filling_of(value: &Value) -> Option<Filling<'_>> {
    let count = value.as_u64().and_then(|count| u32::try_from(count).ok()).map(Filling::Count);
    count.or_else(|| value.as_str().map(Filling::Text))
}

/// Takes out indentation and empty lines, which a phone on poor data need not fetch; what stands in
/// `pre` stays as it is.
fn tighten(page: &str) -> String {
    let mut tight = String::with_capacity(page.len());
    let mut is_kept = false;
    for line in page.lines() {
        is_kept |= line.contains("<pre");
        let shown = if is_kept { line } else { line.trim() };
        if is_kept || !shown.is_empty() {
            tight.push_str(shown);
            tight.push('\n');
        }
        is_kept &= !line.contains("</pre>");
    }
    tight
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_shows_is_sent() {
        let page = "<p>\n\n  a\n</p>\n<pre><code>b:\n\n  c</code></pre>\n  <p>";
        assert_eq!(tighten(page), "<p>\na\n</p>\n<pre><code>b:\n\n  c</code></pre>\n<p>\n");
    }
}
