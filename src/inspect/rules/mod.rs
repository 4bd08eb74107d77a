//! The rules, one a file, in the order of the rule reference.

use super::rule::Rule;

/// Names the files of the rules and lists what they define.
macro_rules! rules {
    ($($file:ident),* $(,)?) => {
        $(mod $file;)*
        /// Every rule, in the order of the reference.
        pub static ALL: &[Rule] = &[$($file::RULE),*];
    };
}

rules![
    slot_sum,
    time_missing,
];

/// The rule of a code.
pub fn find_rule(code: &str) -> Option<&'static Rule> {
    ALL.iter().find(|rule| rule.code == code)
}
