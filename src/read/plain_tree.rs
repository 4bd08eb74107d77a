//! The usual YAML file, read straight from the parser’s events: the same parser that `serde-saphyr` stands on,
//! without the layers that it needs for types. Reading a file this way takes about a third of the time.
//!
//! In: a text; out: its tree, or nothing where anything unusual stands in it: a tag, an anchor, a key that is no
//! word, a doubled key, a slip. Such a file is read by `serde-saphyr` alone ([`super::yaml`]), which also says what
//! is wrong with it; a test holds both ways to the same tree.

use granit_parser::{Event, Options, Parser, ScalarStyle, Span, StrInput};

use super::node::{Field, Node, Value};
use crate::place::{FileId, Place};

/// Deeper or longer files are left to the bounds in [`super::yaml`].
const DEEPEST: usize = 30;
const MOST_EVENTS: usize = 90_000;

/// The tree of a file with nothing unusual in it.
pub(super) fn read_plain_tree(text: &str, file: FileId) -> Option<Node> {
    let mut options = Options::default();
    options.set_emit_comments(false);
    let parser = Parser::new_from_str_with_options(text, options);
    let mut events = Events { parser, file, left: MOST_EVENTS };
    matches!(events.next()?.0, Event::StreamStart).then_some(())?;
    matches!(events.next()?.0, Event::DocumentStart(_, None)).then_some(())?;
    let root = events.next()?;
    let tree = events.read_node(root, 1)?;
    matches!(events.next()?.0, Event::DocumentEnd).then_some(())?;
    matches!(events.next()?.0, Event::StreamEnd).then_some(tree)
}

struct Events<'t> {
    parser: Parser<'t, StrInput<'t>>,
    file: FileId,
    left: usize,
}

impl<'t> Events<'t> {
    fn next(&mut self) -> Option<(Event<'t>, Span)> {
        self.left = self.left.checked_sub(1)?;
        self.parser.next()?.ok()
    }

    fn read_node(&mut self, (event, span): (Event<'t>, Span), depth: usize) -> Option<Node> {
        let place = self.place_of(&span)?;
        let value = match event {
            Event::Scalar(words, style, 0, None) => value_of(words.into_owned(), style)?,
            Event::SequenceStart(_, 0, None) if depth < DEEPEST => self.read_list(depth)?,
            Event::MappingStart(_, 0, None) if depth < DEEPEST => self.read_fields(depth)?,
            _ => return None,
        };
        Some(Node { place, value })
    }

    fn read_list(&mut self, depth: usize) -> Option<Value> {
        let mut items = Vec::new();
        loop {
            match self.next()? {
                (Event::SequenceEnd, _) => return Some(Value::List(items)),
                item => items.push(self.read_node(item, depth + 1)?),
            }
        }
    }

    fn read_fields(&mut self, depth: usize) -> Option<Value> {
        let mut fields: Vec<Field> = Vec::new();
        loop {
            let (key, key_place) = match self.next()? {
                (Event::MappingEnd, _) => return Some(Value::Fields(fields)),
                (Event::Scalar(key, _, 0, None), span) if is_word(&key) => {
                    (key.into_owned(), self.place_of(&span)?)
                }
                _ => return None,
            };
            if fields.iter().any(|field| field.key == key) {
                return None;
            }
            let node = self.next()?;
            let node = self.read_node(node, depth + 1)?;
            fields.push(Field { key, key_place, node });
        }
    }

    fn place_of(&self, span: &Span) -> Option<Place> {
        let at = |offset: Option<usize>| u32::try_from(offset?).ok();
        let (start, end) = (at(span.start.byte_offset())?, at(span.end.byte_offset())?);
        Some(Place { file: self.file, start, end: end.max(start) })
    }
}

/// A key that stands for itself, whatever YAML makes of numbers and of `<<`.
fn is_word(key: &str) -> bool {
    let is_nothing = matches!(key, "null" | "Null" | "NULL");
    key.starts_with(char::is_alphabetic) && !is_nothing
}

/// A single value as it was written; nothing where it might be a number without bounds, which is refused.
fn value_of(words: String, style: ScalarStyle) -> Option<Value> {
    if style != ScalarStyle::Plain {
        return Some(Value::Scalar(words));
    }
    if matches!(words.as_str(), "" | "~" | "null" | "Null" | "NULL") {
        return Some(Value::Empty);
    }
    (!may_be_boundless(&words)).then_some(Value::Scalar(words))
}

/// `.inf`, `-.nan`, `1e999` and the like.
fn may_be_boundless(words: &str) -> bool {
    let figures = words.trim_start_matches(['+', '-']);
    if let Some(after) = figures.strip_prefix('.') {
        return !after.starts_with(|first: char| first.is_ascii_digit());
    }
    let is_number = figures.starts_with(|first: char| first.is_ascii_digit())
        && figures.bytes().all(|byte| b"0123456789._eE+-".contains(&byte));
    is_number && (figures.len() > 300 || figures.contains(['e', 'E']))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::read::yaml::read_any_tree;

    const SESSION: &str = include_str!("../inspect/sound/session.yaml");

    /// What a slip or a whim puts into a file.
    const WHIMS: [&str; 28] = [
        ":", "- ", "\"", "'", "#", " ", "\n", "&a ", "*a", "!!str ", "? ", "|", ">-", "{", "}",
        "[", "]", ",", "~", "null", "1e999", ".inf", "0x1f", "<<: ", "ü", "\t", "---\n", "yes",
    ];

    fn shown(node: &Node) -> String {
        format!("{node:#?}")
    }

    #[test]
    fn both_ways_read_the_same_tree() {
        let (mut plain, mut chance) = (0, 1u64);
        let mut below = |most: usize| {
            // Knuth’s linear congruential generator (MMIX): the same texts in every run.
            chance = chance
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            usize::try_from(chance >> 33).unwrap() % most
        };
        for round in 0..2000 {
            let mut text = SESSION.to_owned();
            for _ in 0..round % 4 {
                let at = (0..=below(text.len())).rev().find(|at| text.is_char_boundary(*at));
                text.insert_str(at.unwrap_or(0), WHIMS[below(WHIMS.len())]);
            }
            if let Some(tree) = read_plain_tree(&text, FileId(0)) {
                plain += 1;
                let other = read_any_tree(&text, FileId(0)).expect("it can be read either way");
                assert_eq!(shown(&tree), shown(&other), "{text}");
            }
        }
        // Those with nothing put in are among them.
        assert!(plain > 600, "{plain}");
    }

    #[test]
    fn what_is_unusual_is_left() {
        for text in [
            "a: &x 1\nb: *x\n",
            "a: !!str 1\n",
            "1: a\n",
            "a: 1\na: 2\n",
            "a: .inf\n",
            "a: 1e999\n",
        ] {
            assert!(read_plain_tree(text, FileId(0)).is_none(), "{text}");
        }
        assert!(read_plain_tree("a: 1.50\nb: [No, 3 e]\nc:\n", FileId(0)).is_some());
    }
}
