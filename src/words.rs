//! The one catalogue of our own words on pages and paper (Fluent), by language.

use fixed_decimal::Decimal;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement};
use icu_decimal::DecimalFormatter;
use icu_decimal::options::DecimalFormatterOptions;
use icu_locale_core::Locale;
use unic_langid::LanguageIdentifier;

/// The labels of one language, and how it writes decimals.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
    language: String,
    /// What stands before decimals: “.” or “,”.
    decimal_mark: String,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("locales", &self.bundle.locales).finish_non_exhaustive()
    }
}

impl Words {
    /// Builds the catalogue from shipped Fluent texts, each over the one before it, with a pack's own
    /// labels over all: what those leave out stays as shipped.
    ///
    /// # Errors
    /// Where the pack's own text is not Fluent: which line.
    ///
    /// # Panics
    /// Where a shipped text is not: our own slip.
    pub fn from_fluent(
        language: &str,
        shipped: &[&str],
        own: Option<&str>,
    ) -> Result<Self, String> {
        let locale: LanguageIdentifier = language.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        // The marks that isolate right-to-left from left-to-right text would be printed as glyphs.
        bundle.set_use_isolating(false);
        for text in shipped {
            let labels = read_labels(text).expect("the shipped labels are sound");
            bundle.add_resource_overriding(labels);
        }
        if let Some(own) = own {
            bundle.add_resource_overriding(read_labels(own)?);
        }
        let decimal_mark = decimal_mark_of(language);
        Ok(Self { bundle, language: language.to_owned(), decimal_mark })
    }

    /// The language of these labels, by its BCP 47 tag.
    pub fn language(&self) -> &str {
        &self.language
    }

    /// A number as this language writes it, from one with a point before its decimals.
    pub fn number(&self, number: &str) -> String {
        number.replace('.', &self.decimal_mark)
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
        if let Some(said) = fill_in(pattern, with) {
            return said;
        }
        let mut args = FluentArgs::new();
        for (name, filling) in with {
            args.set((*name).to_owned(), filling.value());
        }
        let mut faults = Vec::new();
        self.bundle.format_pattern(pattern, Some(&args), &mut faults).into_owned()
    }
}

/// Room for most labels.
const USUAL: usize = 64;

/// Words with names and figures between them, as most labels are, put together directly; nothing where there is a choice
/// to make, which is Fluent’s.
fn fill_in(pattern: &Pattern<&str>, with: &[(&str, Filling<'_>)]) -> Option<String> {
    let mut said = String::with_capacity(USUAL);
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => said.push_str(value),
            PatternElement::Placeable {
                expression: Expression::Inline(InlineExpression::VariableReference { id }),
            } => match with.iter().find(|(name, _)| *name == id.name)?.1 {
                Filling::Text(text) => said.push_str(text),
                Filling::Count(count) => said.push_str(&count.to_string()),
            },
            PatternElement::Placeable { .. } => return None,
        }
    }
    Some(said)
}

/// What stands before decimals in a language (Unicode CLDR), with the digits 0 to 9 in every one: school
/// timers, tapes and scales show those, and children write their marks beside them.
fn decimal_mark_of(language: &str) -> String {
    let western = format!("{language}-u-nu-latn");
    let Ok(locale) = western.parse::<Locale>() else { return ".".to_owned() };
    let Ok(formatter) =
        DecimalFormatter::try_new(locale.into(), DecimalFormatterOptions::default())
    else {
        return ".".to_owned();
    };
    let mut half = Decimal::from(15);
    half.multiply_pow10(-1);
    let written = formatter.format(&half).to_string();
    written.trim_start_matches('1').trim_end_matches('5').to_owned()
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
        let words = Words::from_fluent("en-GB", &[shipped], Some("easier = Simpler\n")).unwrap();
        assert_eq!(words.say("easier"), "Simpler");
        assert_eq!(words.say_with("attempts", &[("count", Filling::Count(1))]), "One attempt");
        assert_eq!(words.say_with("attempts", &[("count", Filling::Count(3))]), "3 attempts");
        let fault = Words::from_fluent("en-GB", &[shipped], Some("easier = a\n!!\n")).unwrap_err();
        assert!(fault.starts_with("line 2"), "{fault}");
    }

    /// Labels that are put together directly are what Fluent makes of them.
    #[test]
    fn filled_labels_are_those_of_fluent() {
        let shipped = "plain = Ready\nnamed = { $who } has { $count } markers\n    and a rope\nescaped = a { \"{\" } b\n";
        let words = Words::from_fluent("pl", &[shipped], None).unwrap();
        let with = [("who", Filling::Text("Ida")), ("count", Filling::Count(12_000))];
        for key in ["plain", "named", "escaped"] {
            let pattern = words.bundle.get_message(key).unwrap().value().unwrap();
            let mut args = FluentArgs::new();
            args.set("who", "Ida");
            args.set("count", 12_000);
            let said = words.bundle.format_pattern(pattern, Some(&args), &mut Vec::new());
            assert_eq!(words.say_with(key, &with), said);
            assert_eq!(fill_in(pattern, &with).is_some(), key != "escaped");
        }
    }

    #[test]
    fn decimals_are_written_as_the_language_does() {
        // Unicode CLDR 46, numbers, symbols of the numbering system latn.
        let marks =
            [("en-GB", "."), ("cy", "."), ("fr", ","), ("es", ","), ("pl", ","), ("uk", ",")];
        for (language, mark) in marks.into_iter().chain([("ar", "."), ("ur", "."), ("x!", ".")]) {
            assert_eq!(decimal_mark_of(language), mark, "{language}");
        }
    }
}
