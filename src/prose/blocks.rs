//! Cleaned text → blocks of styled words, for paper.

use pulldown_cmark::{Event, Tag, TagEnd};

use super::clean::{clean_events, clean_line_events};

/// Words in one style.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Run {
    pub text: String,
    pub bold: bool,
    pub italic: bool,
    pub link: Option<String>,
}

impl Run {
    pub fn plain(text: impl Into<String>) -> Self {
        Self { text: text.into(), ..Self::default() }
    }

    pub fn bold(text: impl Into<String>) -> Self {
        Self { text: text.into(), bold: true, ..Self::default() }
    }
}

/// What stands before a block.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Marker {
    None,
    Bullet,
    /// "3" of an ordered list.
    Number(u64),
}

/// One paragraph, list entry or other block.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Block {
    pub marker: Marker,
    /// How many lists and quotations it stands in.
    pub depth: usize,
    pub is_heading: bool,
    pub runs: Vec<Run>,
}

/// The blocks of a text.
pub fn read_blocks(text: &str) -> Vec<Block> {
    let mut reader = Reader::default();
    for event in clean_events(text) {
        reader.take(event);
    }
    reader.close_block();
    reader.blocks
}

/// The styled words of one line.
pub fn read_line(line: &str) -> Vec<Run> {
    if is_plain(line) {
        return vec![Run::plain(line)];
    }
    let mut reader = Reader::default();
    for event in clean_line_events(line) {
        reader.take(event);
    }
    reader.runs
}

/// Whether a line has no sign that means anything in CommonMark, and no spaces that it would leave out: most
/// lines have none.
fn is_plain(line: &str) -> bool {
    let means_something = |byte: u8| {
        byte < b' ' || matches!(byte, b'\\' | b'`' | b'*' | b'_' | b'[' | b']' | b'<' | b'>' | b'&')
    };
    !line.ends_with([' ', '#']) && !line.starts_with(' ') && !line.bytes().any(means_something)
}

#[derive(Default)]
struct Reader {
    blocks: Vec<Block>,
    runs: Vec<Run>,
    /// The next number of each open list; `None` for one with bullets.
    lists: Vec<Option<u64>>,
    quotes: usize,
    marker: Option<Marker>,
    bold: usize,
    italic: usize,
    links: Vec<String>,
    is_heading: bool,
}

impl Reader {
    fn take(&mut self, event: Event<'_>) {
        match event {
            Event::Text(text) | Event::Code(text) => self.add(&text),
            Event::SoftBreak => self.add(" "),
            Event::HardBreak => self.add("\n"),
            Event::Rule => self.close_block(),
            Event::Start(tag) => self.open(tag),
            Event::End(tag) => self.close(tag),
            _ => {}
        }
    }

    fn open(&mut self, tag: Tag<'_>) {
        match tag {
            Tag::Strong => self.bold += 1,
            Tag::Emphasis => self.italic += 1,
            Tag::Link { dest_url, .. } => self.links.push(dest_url.into_string()),
            Tag::List(first) => {
                self.close_block();
                self.lists.push(first);
            }
            Tag::Item => {
                self.close_block();
                self.marker = Some(self.next_marker());
            }
            Tag::BlockQuote(_) => {
                self.close_block();
                self.quotes += 1;
            }
            Tag::Heading { .. } => {
                self.close_block();
                self.is_heading = true;
            }
            Tag::Paragraph | Tag::CodeBlock(_) => self.close_block(),
            _ => {}
        }
    }

    fn close(&mut self, tag: TagEnd) {
        match tag {
            TagEnd::Strong => self.bold = self.bold.saturating_sub(1),
            TagEnd::Emphasis => self.italic = self.italic.saturating_sub(1),
            TagEnd::Link => {
                self.links.pop();
            }
            TagEnd::List(_) => {
                self.close_block();
                self.lists.pop();
            }
            TagEnd::BlockQuote(_) => {
                self.close_block();
                self.quotes = self.quotes.saturating_sub(1);
            }
            TagEnd::Heading(_) => {
                self.close_block();
                self.is_heading = false;
            }
            TagEnd::Paragraph | TagEnd::Item | TagEnd::CodeBlock => self.close_block(),
            _ => {}
        }
    }

    fn next_marker(&mut self) -> Marker {
        match self.lists.last_mut() {
            Some(Some(number)) => {
                *number += 1;
                Marker::Number(*number - 1)
            }
            _ => Marker::Bullet,
        }
    }

    fn add(&mut self, text: &str) {
        let run = Run {
            text: text.to_owned(),
            bold: self.bold > 0 || self.is_heading,
            italic: self.italic > 0,
            link: self.links.last().cloned(),
        };
        match self.runs.last_mut() {
            Some(last)
                if (last.bold, last.italic, &last.link) == (run.bold, run.italic, &run.link) =>
            {
                last.text.push_str(&run.text);
            }
            _ => self.runs.push(run),
        }
    }

    fn close_block(&mut self) {
        let mut runs = std::mem::take(&mut self.runs);
        if let Some(last) = runs.last_mut() {
            last.text.truncate(last.text.trim_end().len());
        }
        if runs.iter().all(|run| run.text.trim().is_empty()) {
            return;
        }
        self.blocks.push(Block {
            marker: self.marker.take().unwrap_or(Marker::None),
            depth: self.lists.len() + self.quotes,
            is_heading: self.is_heading,
            runs,
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whatever is taken for plain reads as the parser reads it.
    #[test]
    fn plain_lines_are_read_as_the_parser_reads_them() {
        let whole = |line: &str| {
            let mut reader = Reader::default();
            for event in clean_line_events(line) {
                reader.take(event);
            }
            reader.runs
        };
        let lines = [
            "",
            "Jump far",
            "5. Jump",
            "# one",
            "- a",
            "one  two",
            "a - b",
            "1) x",
            "2 < 3",
            "a | b",
            "~~~",
            "===",
            "---",
            "“Well!” she said",
            "a\tb",
            "www.example.org",
            "one # two",
            "+ go",
            "$5",
            "it’s (so) {fine}: 3 × 4 = 12; 7 %",
            " led",
            "trailed ",
            "C#",
            "x@example.org",
            "é\u{a0}à",
            "~ soft ~",
        ];
        let read = lines.map(|line| (read_line(line) == whole(line), line));
        assert_eq!(
            read.iter().filter(|(is_same, _)| !is_same).collect::<Vec<_>>(),
            Vec::<&(bool, &str)>::new()
        );
    }

    #[test]
    fn lists_keep_their_numbers_and_depth() {
        let blocks = read_blocks("Do:\n\n3. one\n4. two\n   - deep\n\nEnd **now**.");
        let shape: Vec<_> =
            blocks.iter().map(|b| (b.marker.clone(), b.depth, b.runs[0].text.as_str())).collect();
        assert_eq!(
            shape,
            [
                (Marker::None, 0, "Do:"),
                (Marker::Number(3), 1, "one"),
                (Marker::Number(4), 1, "two"),
                (Marker::Bullet, 2, "deep"),
                (Marker::None, 0, "End "),
            ]
        );
        assert!(blocks[4].runs[1].bold);
    }
}
