//! The one catalogue of our own words on pages and paper (Fluent), by language.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

/// The labels of one language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("locales", &self.bundle.locales).finish_non_exhaustive()
    }
}

impl Words {
    /// Builds the catalogue from the shipped Fluent text, with a pack's own labels over it: what those
    /// leave out stays as shipped.
    ///
    /// # Errors
    /// Where the pack's own text is not Fluent: which line.
    ///
    /// # Panics
    /// Where the shipped text is not: our own slip.
    pub fn from_fluent(language: &str, shipped: &str, own: Option<&str>) -> Result<Self, String> {
        let locale: LanguageIdentifier = language.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        // The marks that isolate right-to-left from left-to-right text would be printed as glyphs.
        bundle.set_use_isolating(false);
        bundle.add_resource_overriding(read_labels(shipped).expect("the shipped labels are sound"));
        if let Some(own) = own {
            bundle.add_resource_overriding(read_labels(own)?);
        }
        Ok(Self { bundle })
    }

    /// Whether there is a label of a key.
    pub fn has(&self, key: &str) -> bool {
        self.bundle.has_message(key)
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
}

/// Reads Fluent text, or says on which line it breaks off.
fn read_labels(text: &str) -> Result<FluentResource, String> {
    FluentResource::try_new(text.to_owned()).map_err(|(_, faults)| {
        let at = faults.first().map_or(0, |fault| fault.pos.start);
        let line = text.get(..at).unwrap_or_default().matches('\n').count() + 1;
        format!("line {line} is not a label. Write it as “key = words”.")
    })
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn own_labels_lie_over_the_shipped_ones() {
        let shipped = "easier = Easier\nattempts = { $count ->\n    [one] One attempt\n   *[other] { $count } attempts\n}\n";
        let words = Words::from_fluent("en-GB", shipped, Some("easier = Simpler\n")).unwrap();
        assert_eq!(words.say("easier"), "Simpler");
        assert_eq!(words.say_with("attempts", &[("count", Filling::Count(1))]), "One attempt");
        assert_eq!(words.say_with("attempts", &[("count", Filling::Count(3))]), "3 attempts");
        let fault = Words::from_fluent("en-GB", shipped, Some("easier = a\n!!\n")).unwrap_err();
        assert!(fault.starts_with("line 2"), "{fault}");
    }
}
