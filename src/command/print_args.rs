//! What `publish` prints: the words of `print:` in pack.yaml, over what the pack says.

use clap::Args;
use clap::builder::{PossibleValuesParser, TypedValueParser};

use crate::pack::PrintWishes;
use crate::read::print_choices::{CardCount, Copies, RecordKind, Sides, Spacing};

/// The choices about paper. None need be made.
#[derive(Args, Clone, Debug, Default)]
#[command(next_help_heading = "Paper (over “print:” in pack.yaml)")]
pub struct PrintArguments {
    /// How many activity cards stand on a sheet.
    #[arg(long, value_name = "COUNT", value_parser = word_of(CardCount::WORDS, CardCount::ALL))]
    pub cards: Option<CardCount>,
    /// Fronts only, or fronts and backs that meet when the sheet is turned over on an edge.
    #[arg(long, value_name = "SIDES", value_parser = word_of(Sides::WORDS, Sides::ALL))]
    pub sides: Option<Sides>,
    /// Add a set of cards in large print: 18 point and more, one card a sheet.
    #[arg(long, num_args = 0..=1, default_missing_value = "true", require_equals = true)]
    pub large_print: Option<bool>,
    /// How far letters, words and lines stand apart.
    #[arg(long, value_name = "SPACING", value_parser = word_of(Spacing::WORDS, Spacing::ALL))]
    pub spacing: Option<Spacing>,
    /// Add a booklet to print on both sides and fold.
    #[arg(long, num_args = 0..=1, default_missing_value = "true", require_equals = true)]
    pub booklet: Option<bool>,
    /// Add a poster of the key points.
    #[arg(long, num_args = 0..=1, default_missing_value = "true", require_equals = true)]
    pub poster: Option<bool>,
    /// Add so many numbered sets of cards for a class.
    #[arg(long, value_name = "COUNT", value_parser = clap::value_parser!(u32).range(1..=i64::from(Copies::MOST)))]
    pub copies: Option<u32>,
    /// Which record sheets to make: for one child, for a class, for a week.
    #[arg(long, value_name = "KIND", value_delimiter = ',', value_parser = word_of(RecordKind::WORDS, RecordKind::ALL))]
    pub record: Vec<RecordKind>,
}

impl PrintArguments {
    /// What is wished over the pack’s own choices.
    pub fn wishes(&self) -> PrintWishes {
        PrintWishes {
            cards: self.cards,
            sides: self.sides,
            large_print: self.large_print,
            spacing: self.spacing,
            booklet: self.booklet,
            poster: self.poster,
            copies: self.copies,
            records: self.record.clone(),
        }
    }
}

/// Reads one of a set of words, in the order of what they mean.
fn word_of<T: Copy + Send + Sync + 'static>(
    words: &'static [&'static str],
    all: &'static [T],
) -> impl TypedValueParser<Value = T> {
    PossibleValuesParser::new(words).try_map(move |word| {
        let at = words.iter().position(|known| *known == word);
        at.and_then(|at| all.get(at).copied()).ok_or("is none of the words offered")
    })
}
