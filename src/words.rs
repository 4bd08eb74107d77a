//! The one catalogue of our own words on pages and paper (Fluent), by language.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

/// The labels of one language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
    keys: Vec<String>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("locales", &self.bundle.locales).finish_non_exhaustive()
    }
}

impl Words {
    /// Builds the catalogue from Fluent text.
    ///
    /// # Panics
    /// Where the text is not Fluent: it ships with the program, so that is our own slip.
    pub fn from_fluent(language: &str, text: &str) -> Self {
        let locale: LanguageIdentifier = language.parse().unwrap_or_default();
        let resource = FluentResource::try_new(text.to_owned())
            .unwrap_or_else(|(_, faults)| panic!("the labels of {language}: {faults:?}"));
        let keys = text
            .lines()
            .filter(|line| line.starts_with(|c: char| c.is_ascii_lowercase()))
            .filter_map(|line| line.split_once(" ="))
            .map(|(key, _)| key.to_owned())
            .collect();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        // The marks that isolate right-to-left from left-to-right text would be printed as glyphs.
        bundle.set_use_isolating(false);
        bundle.add_resource(resource).expect("each label stands once");
        Self { bundle, keys }
    }

    /// The label of a key.
    pub fn say(&self, key: &str) -> String {
        self.say_with(key, &[])
    }

    /// The label of a key with its figures and names filled in.
    ///
    /// # Panics
    /// Where the catalogue has no such key: our own slip, caught by the tests.
    pub fn say_with(&self, key: &str, with: &[(&str, Filling<'_>)]) -> String {
        let message = self.bundle.get_message(key).and_then(|message| message.value());
        let pattern = message.unwrap_or_else(|| panic!("no label “{key}”: please report this"));
        let mut args = FluentArgs::new();
        for (name, filling) in with {
            args.set((*name).to_owned(), filling.value());
        }
        let mut faults = Vec::new();
        self.bundle.format_pattern(pattern, Some(&args), &mut faults).into_owned()
    }

    /// Every key, in the order of the catalogue.
    pub fn keys(&self) -> &[String] {
        &self.keys
    }
}

/// What can be filled into a label.
#[derive(Clone, Copy, Debug)]
pub enum Filling<'t> {
    Count(u32),
    Text(&'t str),
}

impl Filling<'_> {
    fn value(&self) -> FluentValue<'static> {
        match self {
            Self::Count(count) => FluentValue::from(*count),
            Self::Text(text) => FluentValue::from((*text).to_owned()),
        }
    }
}
