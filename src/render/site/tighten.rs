//! Style sheets and scripts as they are published: without what only their writers need.
//!
//! Names and everything in quotes stay as they are, so that a published file can still be read. A script’s
//! line ends stay where one may end a statement (ECMAScript, 12.10): our scripts end theirs with `;`, but
//! nothing here relies on it.

/// Takes comments, needless spaces and line ends out of a script.
pub(super) fn tighten_script(bytes: &[u8]) -> Vec<u8> {
    let text = String::from_utf8_lossy(bytes);
    let mut script = Script::default();
    let mut rest = text.as_ref();
    while let Some(first) = rest.chars().next() {
        let taken = script.take(rest, first);
        rest = &rest[taken..];
    }
    script.out.into_bytes()
}

/// A script as it is written tight.
#[derive(Default)]
struct Script {
    out: String,
    /// The spaces or line end met since the last piece.
    gap: Option<char>,
}

impl Script {
    /// Takes the next piece: how many bytes of the text it is.
    fn take(&mut self, rest: &str, first: char) -> usize {
        if first.is_whitespace() {
            if first == '\n' || self.gap.is_none() {
                self.gap = Some(if first == '\n' { '\n' } else { ' ' });
            }
            return first.len_utf8();
        }
        if rest.starts_with("//") {
            return rest.find('\n').unwrap_or(rest.len());
        }
        if rest.starts_with("/*") {
            return rest.find("*/").map_or(rest.len(), |end| end + 2);
        }
        let length = match first {
            '"' | '\'' => quoted(rest, first),
            '`' => template(rest),
            '/' if self.begins_pattern() => pattern(rest),
            _ => first.len_utf8(),
        };
        self.close_gap(first);
        self.out.push_str(&rest[..length]);
        length
    }

    /// Writes the gap before the next piece, where it says something.
    fn close_gap(&mut self, next: char) {
        let Some(gap) = self.gap.take() else { return };
        let Some(last) = self.out.chars().next_back() else { return };
        let is_needed = match gap {
            '\n' => !"{;,([=&|?:".contains(last) && !"}])".contains(next),
            _ => {
                (is_of_name(last) && is_of_name(next))
                    || ("+-".contains(last) && last == next)
                    || (last.is_ascii_digit() && next == '.')
            }
        };
        if is_needed {
            self.out.push(gap);
        }
    }

    /// Whether a slash begins a pattern here, rather than divide: after a sign that wants a value.
    fn begins_pattern(&self) -> bool {
        let before = self.out.trim_end();
        ["return", "typeof", "case", "of", "in"].iter().any(|word| ends_with_word(before, word))
            || before.chars().next_back().is_none_or(|last| "(,=:[!&|?{};+-*%~^<>".contains(last))
    }
}

fn ends_with_word(text: &str, word: &str) -> bool {
    text.strip_suffix(word).is_some_and(|before| !before.ends_with(is_of_name))
}

fn is_of_name(letter: char) -> bool {
    letter.is_alphanumeric() || "_$".contains(letter)
}

/// The length of a text in quotes.
fn quoted(text: &str, quote: char) -> usize {
    until(text, |letter, _| letter == quote)
}

/// The length of a pattern to its second slash; one in square brackets ends nothing.
fn pattern(text: &str) -> usize {
    let mut is_class = false;
    until(text, |letter, _| {
        is_class = (is_class || letter == '[') && letter != ']';
        letter == '/' && !is_class
    })
}

/// The length of a text in backticks, with what stands in its braces, kept as it is.
fn template(text: &str) -> usize {
    let mut depth = 0_usize;
    let mut inner_ends = 0;
    until(text, |letter, at| {
        if at < inner_ends {
            return false;
        }
        match letter {
            '{' if depth > 0 || text[..at].ends_with('$') => depth += 1,
            '}' => depth = depth.saturating_sub(1),
            '`' if depth == 0 => return true,
            '`' => inner_ends = at + template(&text[at..]),
            '"' | '\'' if depth > 0 => inner_ends = at + quoted(&text[at..], letter),
            _ => {}
        }
        false
    })
}

/// The length of a text from its first letter to the letter that ends it; a backslash keeps the next
/// letter from doing so.
fn until(text: &str, mut is_end: impl FnMut(char, usize) -> bool) -> usize {
    let mut letters = text.char_indices().skip(1);
    while let Some((at, letter)) = letters.next() {
        if letter == '\\' {
            letters.next();
        } else if is_end(letter, at) {
            return at + letter.len_utf8();
        }
    }
    text.len()
}

/// Takes comments and needless spaces out of a style sheet; what stands in quotes stays.
pub(super) fn tighten_sheet(bytes: &[u8]) -> Vec<u8> {
    let text = String::from_utf8_lossy(bytes);
    let mut sheet = String::with_capacity(text.len());
    let mut letters = without_comments(&text).into_iter().peekable();
    let mut quote = None;
    while let Some(letter) = letters.next() {
        if quote.is_some() || !letter.is_whitespace() {
            quote = match (quote, letter) {
                (None, '"' | '\'') => Some(letter),
                (Some(open), _) if open == letter && !sheet.ends_with('\\') => None,
                _ => quote,
            };
            sheet.push(letter);
        } else if !is_open(&sheet) && !matches!(letters.peek(), Some('{' | '}' | '>') | None) {
            sheet.push(' ');
        }
    }
    sheet.into_bytes()
}

/// Whether a space would say nothing here.
fn is_open(sheet: &str) -> bool {
    sheet.is_empty() || sheet.ends_with(['{', '}', ';', ':', ',', '>', ' '])
}

fn without_comments(text: &str) -> Vec<char> {
    let mut kept = Vec::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, after)) = rest.split_once("/*") {
        kept.extend(before.chars());
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept.extend(rest.chars());
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tight_script(script: &str) -> String {
        String::from_utf8(tighten_script(script.as_bytes())).unwrap()
    }

    #[test]
    fn a_script_keeps_every_line_that_does_something() {
        let script = "// What it does.\n\n(() => {\n  // why\n  say(`a // b`);\n})();\n";
        assert_eq!(tight_script(script), "(()=>{say(`a // b`);})();");
    }

    #[test]
    fn comments_are_left_at_home() {
        let tight = |sheet: &str| String::from_utf8(tighten_sheet(sheet.as_bytes())).unwrap();
        assert_eq!(
            tight("/* a\n b */\n\np { color: red } /* c */\n  a > b, i { b: c }\n/* open"),
            "p{color:red}a>b,i{b:c}"
        );
        assert_eq!(
            tight("p::after { content: \" a; b \" counter(c) }"),
            "p::after{content:\" a; b \" counter(c)}"
        );
        assert_eq!(
            tight("p { margin: 0 calc(1px + 2px) }\n@media (min-width: 4em) { a :is(b) { c: d } }"),
            "p{margin:0 calc(1px + 2px)}@media (min-width:4em){a :is(b){c:d}}"
        );
    }

    #[test]
    fn what_stands_in_quotes_and_patterns_stays() {
        assert_eq!(tight_script("a = \"x  = y\" + 'it\\'s  so';\n"), "a=\"x  = y\"+'it\\'s  so';");
        assert_eq!(tight_script("b = `a  ${ c + `d  e` }  f` ;\n"), "b=`a  ${ c + `d  e` }  f`;");
        assert_eq!(tight_script("c = / [/ ] /u.test( d ) ;\n"), "c=/ [/ ] /u.test(d);");
        assert_eq!(tight_script("return / a /g;\n"), "return/ a /g;");
        assert_eq!(tight_script("e = f / 2 / g;\n"), "e=f/2/g;");
    }

    #[test]
    fn words_and_signs_that_would_become_others_stay_apart() {
        assert_eq!(tight_script("return a in b;"), "return a in b;");
        assert_eq!(tight_script("a = b + +c - -d;"), "a=b+ +c- -d;");
        assert_eq!(tight_script("a = 1 ... b"), "a=1 ...b");
    }

    #[test]
    fn a_line_ends_where_a_statement_may() {
        assert_eq!(tight_script("a()\nb()\n"), "a()\nb()");
        assert_eq!(tight_script("if (a) {\n  b();\n}\nc();\n"), "if(a){b();}\nc();");
        assert_eq!(tight_script("a\n  .b()\n  .c();\n"), "a\n.b()\n.c();");
    }
}
