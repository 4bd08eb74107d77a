//! `record!` and `choice!`: a group of keys, or a fixed set of words, said once.
//!
//! One definition gives the type, its reading with collected findings, the list of its keys and its
//! [shape](super::shape), from which the schema is written. The comment above a key is its description there;
//! `title: Placed<Line> = "Brook leap",` adds an example, which every key of text needs.

/// Defines a group of keys as a struct that can be read from a node. `$whole` is what the group is
/// called in a message ("a warm-up, step or other part").
macro_rules! record {
    (
        $(#[doc = $about:literal])*
        pub struct $name:ident = $whole:literal {
            $( $(#[doc = $doc:literal])* $field:ident : $kind:ty $(= $example:literal)?, )*
        }
    ) => {
        $(#[doc = $about])*
        #[derive(Clone, Debug)]
        pub struct $name {
            $( $(#[doc = $doc])* pub $field: $kind, )*
        }

        impl $name {
            /// The keys of the group, in the order they are best written.
            pub const KEYS: &'static [&'static str] = &[$($crate::read::record::key_name(stringify!($field))),*];

            /// What the group looks like, for the schema and for mending.
            pub const GROUP: $crate::read::shape::Group = $crate::read::shape::Group {
                name: stringify!($name),
                whole: $whole,
                about: &[$($about),*],
                keys: &[$($crate::read::shape::Key {
                    name: $crate::read::record::key_name(stringify!($field)),
                    about: &[$($doc),*],
                    example: $crate::read::record::example_of(&[$($example)?]),
                    shape: <$kind as $crate::read::desk::FromNode>::shape,
                    is_needed: || <$kind as $crate::read::desk::FromNode>::when_absent().is_none(),
                }),*],
            };
        }

        impl $crate::read::desk::FromNode for $name {
            fn from_node(
                node: &$crate::read::node::Node,
                desk: &mut $crate::read::desk::Desk,
            ) -> Option<Self> {
                use $crate::read::desk::{FromNode, is_misspelt, miss_key, read_fields, refuse_unknown_keys};
                let fields = read_fields(node, desk, $whole)?;
                refuse_unknown_keys(fields, Self::KEYS, $whole, desk);
                let written = |key: &str| fields.iter().find(|field| field.key == key);
                $(
                    let key = $crate::read::record::key_name(stringify!($field));
                    let $field = match written(key) {
                        Some(field) => <$kind as FromNode>::from_node(&field.node, desk),
                        None => {
                            let absent = <$kind as FromNode>::when_absent();
                            if absent.is_none() && !is_misspelt(key, fields, Self::KEYS) {
                                miss_key(node, key, $whole, desk);
                            }
                            absent
                        }
                    };
                )*
                Some(Self { $($field: $field?,)* })
            }
            fn shape() -> $crate::read::shape::Shape {
                $crate::read::shape::Shape::Group(&Self::GROUP)
            }
        }
    };
}

/// Defines a fixed set of words as an enum that can be read from a node.
macro_rules! choice {
    (
        $(#[$about:meta])*
        pub enum $name:ident = $asked:literal {
            $( $(#[$doc:meta])* $variant:ident = $word:literal, )*
        }
    ) => {
        $(#[$about])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $( $(#[$doc])* $variant, )* }

        impl $name {
            /// Every choice, in the order it is offered.
            pub const ALL: &'static [Self] = &[$(Self::$variant),*];
            /// The words as they are written, in the same order.
            pub const WORDS: &'static [&'static str] = &[$($word),*];

            /// The word as it is written in a file.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $word),* }
            }
        }

        impl $crate::read::desk::FromNode for $name {
            fn from_node(
                node: &$crate::read::node::Node,
                desk: &mut $crate::read::desk::Desk,
            ) -> Option<Self> {
                let word = $crate::read::desk::read_scalar(node, desk, $asked)?.trim();
                // Keyboards have the straight mark, print has the bent one.
                let word = &word.replace('\'', "’");
                let found = Self::ALL.iter().copied().find(|choice| choice.word() == word);
                if found.is_none() {
                    let way_out = match $crate::read::desk::nearest(word, Self::WORDS) {
                        Some(near) => format!("Did you mean “{near}”?"),
                        None => format!("Choose one of: {}.", Self::WORDS.join(", ")),
                    };
                    desk.refuse(node.place, format!("“{word}” is not {}.", $asked), way_out);
                }
                found
            }
            fn shape() -> $crate::read::shape::Shape {
                $crate::read::shape::Shape::Words(Self::WORDS)
            }
        }
    };
}

pub(crate) use {choice, record};

/// The key as it is written in a file: `for` and `where` are words of Rust and carry a mark there.
pub(crate) const fn key_name(field: &'static str) -> &'static str {
    match field.as_bytes() {
        [b'r', b'#', ..] => field.split_at(2).1,
        _ => field,
    }
}

/// The example of a key, if one was given.
pub(crate) const fn example_of(given: &'static [&'static str]) -> Option<&'static str> {
    match given {
        [example, ..] => Some(example),
        [] => None,
    }
}
