//! The structure of a document as PDF has it: the tree of elements, the tree from pieces back to
//! elements, link annotations, bookmarks and the mark of PDF/UA-1 (ISO 14289-1; ISO 32000-1, 14.7 and
//! 14.8).

use lopdf::{Dictionary, Document, Object, ObjectId, Stream};

use super::page::Role;
use super::structure::{Bookmark, Element, Kid, Structure};
use super::writer::{About, text};

/// Adds the structure to a document that was written without.
pub fn tag_document(pdf: &mut Document, structure: &Structure, about: &About) {
    let pages: Vec<ObjectId> = pdf.get_pages().into_values().collect();
    let tree = Tree::new(pdf, structure, pages);
    tree.write_elements(pdf);
    tree.write_links(pdf);
    tree.write_pages(pdf);
    let outline = write_outline(pdf, &structure.bookmarks, &tree.pages);
    let metadata = write_metadata(pdf, about);
    let root = tree.root;
    let Ok(catalog) = pdf.catalog_mut() else { return };
    catalog.set("StructTreeRoot", root);
    catalog.set("MarkInfo", dictionary([("Marked", true.into())]));
    catalog.set("Metadata", metadata);
    if let Some(outline) = outline {
        catalog.set("Outlines", outline);
    }
}

/// The numbers of all objects that the structure needs, given out beforehand.
struct Tree<'s> {
    structure: &'s Structure,
    pages: Vec<ObjectId>,
    root: ObjectId,
    document: ObjectId,
    elements: Vec<ObjectId>,
    links: Vec<ObjectId>,
}

impl<'s> Tree<'s> {
    fn new(pdf: &mut Document, structure: &'s Structure, pages: Vec<ObjectId>) -> Self {
        Self {
            root: pdf.new_object_id(),
            document: pdf.new_object_id(),
            elements: structure.elements.iter().map(|_| pdf.new_object_id()).collect(),
            links: structure.links.iter().map(|_| pdf.new_object_id()).collect(),
            structure,
            pages,
        }
    }

    /// The tree itself, the document in it and every element.
    fn write_elements(&self, pdf: &mut Document) {
        let top: Vec<Object> =
            self.structure.top.iter().map(|element| self.elements[*element].into()).collect();
        pdf.objects.insert(
            self.document,
            Object::Dictionary(dictionary([
                ("Type", name("StructElem")),
                ("S", name("Document")),
                ("P", self.root.into()),
                ("K", top.into()),
            ])),
        );
        for (index, element) in self.structure.elements.iter().enumerate() {
            let written = self.element(element);
            pdf.objects.insert(self.elements[index], Object::Dictionary(written));
        }
        let parents = dictionary([("Nums", self.parent_numbers().into())]);
        let next = self.pages.len() + self.links.len();
        let root = dictionary([
            ("Type", name("StructTreeRoot")),
            ("K", self.document.into()),
            ("ParentTree", Object::Dictionary(parents)),
            ("ParentTreeNextKey", integer(next)),
        ]);
        pdf.objects.insert(self.root, Object::Dictionary(root));
    }

    fn element(&self, element: &Element) -> Dictionary {
        let parent = element.parent.map_or(self.document, |parent| self.elements[parent]);
        let kids: Vec<Object> = element.kids.iter().map(|kid| self.kid(*kid)).collect();
        let mut written = dictionary([
            ("Type", name("StructElem")),
            ("S", name(role_name(&element.role))),
            ("P", parent.into()),
            ("K", kids.into()),
        ]);
        if let Role::Figure(says) = &element.role {
            written.set("Alt", text(says));
        }
        if let Some(attributes) = attributes_of(element) {
            written.set("A", Object::Dictionary(attributes));
        }
        written
    }

    fn kid(&self, kid: Kid) -> Object {
        match kid {
            Kid::Element(index) => self.elements[index].into(),
            Kid::Piece { page, number } => Object::Dictionary(dictionary([
                ("Type", name("MCR")),
                ("Pg", self.pages[page].into()),
                ("MCID", integer(number)),
            ])),
            Kid::Link(index) => Object::Dictionary(dictionary([
                ("Type", name("OBJR")),
                ("Pg", self.pages[self.structure.links[index].page].into()),
                ("Obj", self.links[index].into()),
            ])),
        }
    }

    /// From each page to the elements of its pieces, then from each link to its element.
    fn parent_numbers(&self) -> Vec<Object> {
        let mut numbers = Vec::new();
        for (page, pieces) in self.structure.pages.iter().enumerate() {
            let elements: Vec<Object> =
                pieces.iter().map(|element| self.elements[*element].into()).collect();
            numbers.extend([integer(page), elements.into()]);
        }
        for (index, link) in self.structure.links.iter().enumerate() {
            numbers.extend([integer(self.pages.len() + index), self.elements[link.element].into()]);
        }
        numbers
    }

    /// An annotation for each link, with its address as its words.
    fn write_links(&self, pdf: &mut Document) {
        for (index, link) in self.structure.links.iter().enumerate() {
            let action = dictionary([
                ("Type", name("Action")),
                ("S", name("URI")),
                ("URI", Object::string_literal(link.address.as_bytes().to_vec())),
            ]);
            let room: Vec<Object> = link.room.iter().map(|side| Object::Real(*side)).collect();
            let border: Vec<Object> = vec![0.into(), 0.into(), 0.into()];
            let annotation = dictionary([
                ("Type", name("Annot")),
                ("Subtype", name("Link")),
                ("Rect", room.into()),
                ("Border", border.into()),
                // Printed with the page.
                ("F", 4.into()),
                ("A", Object::Dictionary(action)),
                ("Contents", text(&link.address)),
                ("StructParent", integer(self.pages.len() + index)),
            ]);
            pdf.objects.insert(self.links[index], Object::Dictionary(annotation));
        }
    }

    /// Each page says where its pieces belong, and that it is walked through by structure.
    fn write_pages(&self, pdf: &mut Document) {
        for (page, id) in self.pages.iter().enumerate() {
            let links =
                self.structure.links.iter().enumerate().filter(|(_, link)| link.page == page);
            let annotations: Vec<Object> =
                links.map(|(index, _)| self.links[index].into()).collect();
            let Ok(written) = pdf.get_object_mut(*id).and_then(Object::as_dict_mut) else {
                continue;
            };
            written.set("StructParents", integer(page));
            written.set("Tabs", name("S"));
            if !annotations.is_empty() {
                written.set("Annots", annotations);
            }
        }
    }
}

fn role_name(role: &Role) -> &'static str {
    match role {
        Role::Section => "Sect",
        Role::Heading(1) => "H1",
        Role::Heading(2) => "H2",
        Role::Heading(_) => "H3",
        Role::Paragraph => "P",
        Role::List { .. } => "L",
        Role::Entry => "LI",
        Role::Marker => "Lbl",
        Role::EntryText => "LBody",
        Role::Table => "Table",
        Role::Row => "TR",
        Role::ColumnHead | Role::RowHead => "TH",
        Role::Cell => "TD",
        Role::Figure(_) => "Figure",
        Role::Link(_) => "Link",
        Role::Decoration => "Artifact",
    }
}

/// The name that a piece is marked with on its page: that of its element.
pub fn piece_name(role: &Role) -> String {
    role_name(role).to_owned()
}

fn attributes_of(element: &Element) -> Option<Dictionary> {
    let of = |owner: &str, key: &str, value: Object| {
        let mut attributes = dictionary([("O", name(owner))]);
        attributes.set(key, value);
        Some(attributes)
    };
    match &element.role {
        Role::List { is_numbered } => {
            let numbering = if *is_numbered { "Decimal" } else { "Disc" };
            of("List", "ListNumbering", name(numbering))
        }
        Role::ColumnHead => of("Table", "Scope", name("Column")),
        Role::RowHead => of("Table", "Scope", name("Row")),
        Role::Figure(_) => element.room.and_then(|(_, room)| {
            let sides: Vec<Object> = room.iter().map(|side| Object::Real(*side)).collect();
            of("Layout", "BBox", sides.into())
        }),
        _ => None,
    }
}

/// One bookmark below another, in the order of the pages.
fn write_outline(
    pdf: &mut Document,
    bookmarks: &[Bookmark],
    pages: &[ObjectId],
) -> Option<ObjectId> {
    if bookmarks.is_empty() {
        return None;
    }
    let outline = pdf.new_object_id();
    let ids: Vec<ObjectId> = bookmarks.iter().map(|_| pdf.new_object_id()).collect();
    for (index, bookmark) in bookmarks.iter().enumerate() {
        let destination: Vec<Object> = vec![
            pages[bookmark.page].into(),
            name("XYZ"),
            Object::Null,
            Object::Real(bookmark.top),
            Object::Null,
        ];
        let mut written = dictionary([
            ("Title", text(&bookmark.title)),
            ("Parent", outline.into()),
            ("Dest", destination.into()),
        ]);
        if index > 0 {
            written.set("Prev", ids[index - 1]);
        }
        if let Some(next) = ids.get(index + 1) {
            written.set("Next", *next);
        }
        pdf.objects.insert(ids[index], Object::Dictionary(written));
    }
    let written = dictionary([
        ("Type", name("Outlines")),
        ("First", ids[0].into()),
        ("Last", ids[ids.len() - 1].into()),
        ("Count", integer(ids.len())),
    ]);
    pdf.objects.insert(outline, Object::Dictionary(written));
    Some(outline)
}

/// The document’s description as XMP, with the mark of PDF/UA-1 (ISO 14289-1, 5).
fn write_metadata(pdf: &mut Document, about: &About) -> ObjectId {
    let escape = |text: &str| text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
    let (title, author) = (escape(&about.title), escape(&about.author));
    let language = escape(&about.language);
    let (year, month, day) = (&about.date[..4], &about.date[4..6], &about.date[6..8]);
    let packet = format!(
        "<?xpacket begin=\"\u{feff}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n\
         <x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\
         <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" \
         xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\
         <pdfuaid:part>1</pdfuaid:part>\
         <dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{title}</rdf:li></rdf:Alt></dc:title>\
         <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>\
         <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>\
         <xmp:CreateDate>{year}-{month}-{day}</xmp:CreateDate><xmp:ModifyDate>{year}-{month}-{day}</xmp:ModifyDate>\
         <xmp:CreatorTool>homeground</xmp:CreatorTool>\
         </rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"r\"?>"
    );
    let about_stream = dictionary([("Type", name("Metadata")), ("Subtype", name("XML"))]);
    pdf.add_object(Stream::new(about_stream, packet.into_bytes()).with_compression(false))
}

fn dictionary<const N: usize>(entries: [(&str, Object); N]) -> Dictionary {
    Dictionary::from_iter(entries)
}

fn name(name: &str) -> Object {
    Object::Name(name.as_bytes().to_vec())
}

fn integer(number: usize) -> Object {
    Object::Integer(i64::try_from(number).unwrap_or(i64::MAX))
}
