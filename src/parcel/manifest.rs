//! The manifest of a Common Cartridge 1.3: what is in it, in which order it is shown, and which files belong together.

use super::percent_encoded;
use super::xml::Element;

/// The types of resources that are used here (CC 1.3, table of resource types).
pub const PAGE: &str = "webcontent";
pub const ASSESSMENT: &str = "imsqti_xmlv1p2/imscc_xmlv1p3/assessment";

/// The resource that every page depends on.
pub const SHARED: &str = "shared";

/// A resource of the cartridge.
#[derive(Clone, Debug)]
pub struct Resource {
    pub identifier: String,
    pub kind: &'static str,
    /// What is opened, where it is a thing to open.
    pub href: Option<String>,
    pub files: Vec<String>,
    pub needs_shared: bool,
}

/// An entry of the table of contents: a folder of others, or one that opens a resource.
#[derive(Clone, Debug)]
pub struct Entry {
    pub identifier: String,
    pub title: String,
    pub opens: Option<String>,
    pub inside: Vec<Entry>,
}

/// The words of the cartridge as a whole.
#[derive(Clone, Debug)]
pub struct About {
    pub title: String,
    pub language: String,
    pub about: String,
    pub licence: Option<String>,
}

/// Writes `imsmanifest.xml`.
pub fn write_manifest(about: &About, entries: &[Entry], resources: &[Resource]) -> Vec<u8> {
    let root = Element::new("item").with("identifier", "root").children(entries.iter().map(item));
    let organization = Element::new("organization")
        .with("identifier", "contents")
        .with("structure", "rooted-hierarchy")
        .child(root);
    Element::new("manifest")
        .with("identifier", "cartridge")
        .with("xmlns", "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1")
        .with("xmlns:lomimscc", "http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest")
        .with("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance")
        .with(
            "xsi:schemaLocation",
            "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1 \
             http://www.imsglobal.org/profile/cc/ccv1p3/ccv1p3_imscp_v1p2_v1p0.xsd \
             http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest \
             http://www.imsglobal.org/profile/cc/ccv1p3/LOM/ccv1p3_lommanifest_v1p0.xsd",
        )
        .child(metadata(about))
        .child(Element::new("organizations").child(organization))
        .child(Element::new("resources").children(resources.iter().map(resource)))
        .write_document()
}

fn metadata(about: &About) -> Element {
    let said = |name: &'static str, text: &str| {
        let string = Element::new("lomimscc:string").with("language", about.language.as_str());
        Element::new(name).child(string.text(text))
    };
    let general = Element::new("lomimscc:general")
        .child(said("lomimscc:title", &about.title))
        .child(said("lomimscc:description", &about.about));
    let mut lom = Element::new("lomimscc:lom").child(general);
    if let Some(licence) = &about.licence {
        let yes = Element::new("lomimscc:copyrightAndOtherRestrictions")
            .child(Element::new("lomimscc:value").text("yes"));
        let rights = Element::new("lomimscc:rights").child(yes);
        lom = lom.child(rights.child(said("lomimscc:description", licence)));
    }
    Element::new("metadata")
        .child(Element::new("schema").text("IMS Common Cartridge"))
        .child(Element::new("schemaversion").text("1.3.0"))
        .child(lom)
}

fn item(entry: &Entry) -> Element {
    let mut item = Element::new("item").with("identifier", entry.identifier.as_str());
    if let Some(resource) = &entry.opens {
        item = item.with("identifierref", resource.as_str());
    }
    item.child(Element::new("title").text(entry.title.as_str()))
        .children(entry.inside.iter().map(self::item))
}

fn resource(resource: &Resource) -> Element {
    let mut element = Element::new("resource")
        .with("identifier", resource.identifier.as_str())
        .with("type", resource.kind);
    if let Some(href) = &resource.href {
        element = element.with("href", percent_encoded(href));
    }
    let file = |path: &String| Element::new("file").with("href", percent_encoded(path));
    element = element.children(resource.files.iter().map(file));
    if resource.needs_shared {
        element = element.child(Element::new("dependency").with("identifierref", SHARED));
    }
    element
}
