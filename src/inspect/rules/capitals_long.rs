use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Placed;

pub const RULE: Rule = Rule {
    code: "capitals-long",
    severity: Severity::Advice,
    asks: "No whole sentence is in capitals.",
    why: "Words are known by their shape, and capitals are all one shape. A short call such as “STOP!” is \
          let pass.",
    source: "RNIB: no block capitals in running text",
    bad: "\
safety:
  - NEVER HOP IN SOCKS ON A SMOOTH FLOOR.
",
    good: "\
safety:
  - \"**Never** hop in socks on a smooth floor.\"
",
    check: Check::Text(check),
};

/// Three long words in a row are more than a call or an abbreviation.
const MOST: usize = 3;

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    let mut run: Vec<&str> = Vec::new();
    for word in text.split_whitespace() {
        if is_shouted(word) {
            run.push(word);
        } else {
            run.clear();
        }
        if run.iter().filter(|word| word.chars().count() > 2).count() > MOST {
            notes.find(
                pack.files.place_within(text.place, run[0]),
                "This runs on in capitals.",
                "Write it in small letters, and make the word that matters **bold**.",
            );
            return;
        }
    }
}

/// Whether a word has letters, and all of them are capitals.
fn is_shouted(word: &str) -> bool {
    let mut letters = word.chars().filter(|c| c.is_alphabetic()).peekable();
    letters.peek().is_some() && letters.all(char::is_uppercase)
}
