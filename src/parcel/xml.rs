//! A small tree of XML elements and its text (XML 1.0, fifth edition): names are ours, all text is escaped.

/// An element with its attributes, text and children.
#[derive(Clone, Debug)]
pub struct Element {
    name: &'static str,
    attributes: Vec<(&'static str, String)>,
    inside: Vec<Inside>,
}

#[derive(Clone, Debug)]
enum Inside {
    Text(String),
    Child(Element),
}

impl Element {
    pub const fn new(name: &'static str) -> Self {
        Self { name, attributes: Vec::new(), inside: Vec::new() }
    }

    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.attributes.push((name, value.into()));
        self
    }

    #[must_use]
    pub fn text(mut self, text: impl Into<String>) -> Self {
        self.inside.push(Inside::Text(text.into()));
        self
    }

    #[must_use]
    pub fn child(mut self, child: Self) -> Self {
        self.inside.push(Inside::Child(child));
        self
    }

    #[must_use]
    pub fn children(mut self, children: impl IntoIterator<Item = Self>) -> Self {
        self.inside.extend(children.into_iter().map(Inside::Child));
        self
    }

    /// The whole document.
    pub fn write_document(&self) -> Vec<u8> {
        let mut text = String::from("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        self.write(&mut text);
        text.push('\n');
        text.into_bytes()
    }

    fn write(&self, out: &mut String) {
        out.push('<');
        out.push_str(self.name);
        for (name, value) in &self.attributes {
            out.push_str(&format!(" {name}=\"{}\"", escaped(value)));
        }
        if self.inside.is_empty() {
            out.push_str("/>");
            return;
        }
        out.push('>');
        for inside in &self.inside {
            match inside {
                Inside::Text(text) => out.push_str(&escaped(text)),
                Inside::Child(child) => {
                    out.push('\n');
                    child.write(out);
                }
            }
        }
        out.push_str(&format!("</{}>", self.name));
    }
}

/// Whether XML may hold a letter (production 2, Char).
pub const fn is_xml(letter: char) -> bool {
    matches!(letter, '\t' | '\n' | '\r' | '\u{20}'..='\u{d7ff}' | '\u{e000}'..='\u{fffd}' | '\u{10000}'..)
}

fn escaped(text: &str) -> String {
    let mut shown = String::with_capacity(text.len());
    for letter in text.chars().filter(|letter| is_xml(*letter)) {
        match letter {
            '&' => shown.push_str("&amp;"),
            '<' => shown.push_str("&lt;"),
            '>' => shown.push_str("&gt;"),
            '"' => shown.push_str("&quot;"),
            other => shown.push(other),
        }
    }
    shown
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_escaped_and_what_xml_forbids_is_left_out() {
        let element =
            Element::new("a").with("b", "\"<").child(Element::new("c").text("x & \u{7}y"));
        let text = String::from_utf8(element.write_document()).unwrap();
        assert!(text.ends_with("<a b=\"&quot;&lt;\">\n<c>x &amp; y</c></a>\n"), "{text}");
    }
}
