//! One file to hand over: a folder of pages in a zip, a package for a learning platform, or a book.
//!
//! Rendered files → the bytes of an archive. Everything here is pure: order, dates and names come from what is
//! packed, so that the same pack gives the same bytes.

mod archive;
mod book;
mod manifest;
mod platform;
mod questions;
mod xml;

pub use archive::{Packed, pack_files, pack_folder};
pub use book::{BookAbout, write_book};
pub use manifest::About as CartridgeAbout;
pub use platform::{CartridgeFolder, write_cartridge};
pub use questions::AskedQuestion;
pub use xml::is_xml;

/// A name for a folder or file: lower-case letters and digits with hyphens between, never empty.
pub fn plain_name(title: &str) -> String {
    let spaced: String = title
        .chars()
        .flat_map(char::to_lowercase)
        .map(|letter| if letter.is_alphanumeric() { letter } else { ' ' })
        .collect();
    let name = spaced.split_whitespace().collect::<Vec<_>>().join("-");
    if name.is_empty() { "sessions".to_owned() } else { name }
}

/// A path as the address in a package: every byte but the unreserved ones written as %XX (RFC 3986, 2.3).
fn percent_encoded(path: &str) -> String {
    let encoded = |byte: u8| match byte {
        b if b.is_ascii_alphanumeric() || b"-._~/".contains(&b) => char::from(b).to_string(),
        b => format!("%{b:02X}"),
    };
    path.bytes().map(encoded).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_addresses_are_plain() {
        assert_eq!(plain_name("PE at home: Year 4!"), "pe-at-home-year-4");
        assert_eq!(plain_name("…"), "sessions");
        assert_eq!(percent_encoded("a b/é#1.html"), "a%20b/%C3%A9%231.html");
    }
}
