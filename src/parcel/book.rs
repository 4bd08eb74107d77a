//! Chapters → an EPUB 3.3 (W3C Recommendation): the type first and stored, the package document with metadata on
//! accessibility (EPUB Accessibility 1.1, schema.org vocabulary), then the files.

use super::archive::{Packed, pack_files};
use super::percent_encoded;
use super::xml::Element;
use crate::quantity::Date;
use crate::render::Bundle;

/// The words of the book as a whole.
#[derive(Clone, Debug)]
pub struct BookAbout {
    pub title: String,
    pub language: String,
    pub maker: Option<String>,
    pub licence: Option<String>,
    pub description: String,
    /// What helps and what is missing for readers with a disability, in a sentence.
    pub access: String,
    pub is_rtl: bool,
}

/// The folder of the book in its archive.
const FOLDER: &str = "EPUB";

/// Packs a book; `spine` is the order it is read in.
pub fn write_book(
    about: &BookAbout,
    files: &Bundle,
    spine: &[String],
    date: Option<Date>,
) -> Packed {
    let package = package(about, files, spine, date).write_document();
    let container = container();
    let mut packed: Vec<(String, &[u8], bool)> = vec![
        ("mimetype".to_owned(), b"application/epub+zip".as_slice(), true),
        ("META-INF/container.xml".to_owned(), container.as_slice(), false),
        (format!("{FOLDER}/package.opf"), package.as_slice(), false),
    ];
    let rest =
        files.iter().map(|(path, bytes)| (format!("{FOLDER}/{path}"), bytes.as_slice(), false));
    packed.extend(rest);
    pack_files(&packed, date)
}

fn container() -> Vec<u8> {
    let root = Element::new("rootfile")
        .with("full-path", format!("{FOLDER}/package.opf"))
        .with("media-type", "application/oebps-package+xml");
    Element::new("container")
        .with("version", "1.0")
        .with("xmlns", "urn:oasis:names:tc:opendocument:xmlns:container")
        .child(Element::new("rootfiles").child(root))
        .write_document()
}

fn package(about: &BookAbout, files: &Bundle, spine: &[String], date: Option<Date>) -> Element {
    let names: Vec<&String> = files.keys().collect();
    let id_of =
        |path: &str| format!("f{}", names.iter().position(|name| *name == path).unwrap_or(0) + 1);
    let item = |(path, bytes): (&String, &Vec<u8>)| {
        let mut item = Element::new("item")
            .with("id", id_of(path))
            .with("href", percent_encoded(path))
            .with("media-type", media_type(path));
        let has_drawing = path.ends_with(".xhtml") && holds(bytes, b"<svg ");
        let properties = [("nav", path == "nav.xhtml"), ("svg", has_drawing)];
        let properties: Vec<&str> =
            properties.iter().filter(|(_, has)| *has).map(|(name, _)| *name).collect();
        if !properties.is_empty() {
            item = item.with("properties", properties.join(" "));
        }
        item
    };
    let mut order = Element::new("spine");
    if about.is_rtl {
        order = order.with("page-progression-direction", "rtl");
    }
    let order =
        order.children(spine.iter().map(|path| Element::new("itemref").with("idref", id_of(path))));
    Element::new("package")
        .with("xmlns", "http://www.idpf.org/2007/opf")
        .with("version", "3.0")
        .with("unique-identifier", "book")
        .with("xml:lang", about.language.as_str())
        .child(metadata(about, files, date))
        .child(Element::new("manifest").children(files.iter().map(item)))
        .child(order)
}

fn metadata(about: &BookAbout, files: &Bundle, date: Option<Date>) -> Element {
    let day = date.map_or_else(|| "1980-01-01".to_owned(), |date| date.to_string());
    let meta =
        |property: &str, text: String| Element::new("meta").with("property", property).text(text);
    let mut metadata = Element::new("metadata")
        .with("xmlns:dc", "http://purl.org/dc/elements/1.1/")
        .child(Element::new("dc:identifier").with("id", "book").text(identifier(about, files)))
        .child(Element::new("dc:title").text(about.title.as_str()))
        .child(Element::new("dc:language").text(about.language.as_str()))
        .child(Element::new("dc:description").text(about.description.as_str()))
        .child(meta("dcterms:modified", format!("{day}T00:00:00Z")));
    if let Some(maker) = &about.maker {
        metadata = metadata.child(Element::new("dc:creator").text(maker.as_str()));
    }
    if let Some(licence) = &about.licence {
        metadata = metadata.child(Element::new("dc:rights").text(licence.as_str()));
    }
    // Drawings are described in words beside them, so that text alone suffices. No conformance is claimed:
    // that is for whoever has looked through the whole book.
    let access = [
        ("schema:accessMode", "textual"),
        ("schema:accessMode", "visual"),
        ("schema:accessModeSufficient", "textual"),
        ("schema:accessibilityFeature", "alternativeText"),
        ("schema:accessibilityFeature", "displayTransformability"),
        ("schema:accessibilityFeature", "readingOrder"),
        ("schema:accessibilityFeature", "structuralNavigation"),
        ("schema:accessibilityFeature", "tableOfContents"),
        ("schema:accessibilityHazard", "none"),
    ];
    metadata
        .children(access.into_iter().map(|(property, text)| meta(property, text.to_owned())))
        .child(meta("schema:accessibilitySummary", about.access.clone()))
}

/// A name that changes with the title and the language alone, so that a new edition replaces the last: a UUID of
/// version 8 (RFC 9562, 5.8) from two FNV-1a hashes.
fn identifier(about: &BookAbout, files: &Bundle) -> String {
    let chapters: Vec<&str> =
        files.keys().map(String::as_str).filter(|path| path.ends_with(".xhtml")).collect();
    let name = format!("{}\n{}\n{}", about.title, about.language, chapters.join("\n"));
    let hash = |start: u64| {
        let take = |hash: u64, byte: u8| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        name.bytes().fold(start, take)
    };
    let (high, low) = (hash(0xcbf2_9ce4_8422_2325), hash(0x8422_2325_cbf2_9ce4));
    let high = (high & 0xffff_ffff_ffff_0fff) | 0x8000;
    let low = (low & 0x3fff_ffff_ffff_ffff) | 0x8000_0000_0000_0000;
    format!(
        "urn:uuid:{:08x}-{:04x}-{:04x}-{:04x}-{:012x}",
        high >> 32,
        (high >> 16) & 0xffff,
        high & 0xffff,
        low >> 48,
        low & 0xffff_ffff_ffff
    )
}

/// The core media types that occur here (EPUB 3.3, 3.2).
fn media_type(path: &str) -> &'static str {
    match path.to_lowercase().rsplit_once('.').map(|(_, ending)| ending) {
        Some("xhtml") => "application/xhtml+xml",
        Some("css") => "text/css",
        Some("png") => "image/png",
        Some("jpg" | "jpeg") => "image/jpeg",
        Some("svg") => "image/svg+xml",
        Some("woff2") => "font/woff2",
        _ => "application/octet-stream",
    }
}

fn holds(bytes: &[u8], sought: &[u8]) -> bool {
    bytes.windows(sought.len()).any(|window| window == sought)
}
