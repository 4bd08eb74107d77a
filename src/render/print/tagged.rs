//! The structure of a document as PDF has it: the tree of elements, the tree from pieces back to
//! elements, link annotations, bookmarks and the mark of PDF/UA-1 (ISO 14289-1; ISO 32000-1, 14.7 and
//! 14.8).

use super::page::Role;
use super::pdf_file::PdfFile;
use super::pdf_text::PdfText;
use super::structure::{Bookmark, Element, Kid, Structure};
use super::writer::About;

/// The structure with the numbers of all its objects, given out beforehand.
pub struct Tagged<'s> {
    structure: &'s Structure,
    pages: &'s [usize],
    pub root: usize,
    document: usize,
    elements: Vec<usize>,
    links: Vec<usize>,
}

impl<'s> Tagged<'s> {
    /// Takes the numbers that the structure needs; `pages` are those of the pages.
    pub fn new(file: &mut PdfFile, structure: &'s Structure, pages: &'s [usize]) -> Self {
        Self {
            root: file.number(),
            document: file.number(),
            elements: structure.elements.iter().map(|_| file.number()).collect(),
            links: structure.links.iter().map(|_| file.number()).collect(),
            structure,
            pages,
        }
    }

    /// The tree itself, the document in it, every element and every link.
    pub fn write_elements(&self, file: &mut PdfFile) {
        file.object(self.document, |text| {
            let top = self.structure.top.iter().map(|element| self.elements[*element]);
            text.put("<</Type/StructElem/S/Document/P ").reference(self.root).put("/K");
            text.references(top).put(">>");
        });
        for (element, number) in self.structure.elements.iter().zip(&self.elements) {
            file.object(*number, |text| self.write_element(element, text));
        }
        for index in 0..self.links.len() {
            file.object(self.links[index], |text| self.write_link(index, text));
        }
        file.object(self.root, |text| {
            text.put("<</Type/StructTreeRoot/K ").reference(self.document);
            text.put("/ParentTree<</Nums[");
            self.write_parents(text);
            let next = self.pages.len() + self.links.len();
            text.put("]>>/ParentTreeNextKey ").integer(next).put(">>");
        });
    }

    fn write_element(&self, element: &Element, text: &mut PdfText) {
        let parent = element.parent.map_or(self.document, |parent| self.elements[parent]);
        text.put("<</S/").put(role_name(&element.role));
        text.put("/P ").reference(parent);
        let home = element.kids.iter().find_map(|kid| match kid {
            Kid::Piece { page, .. } => Some(*page),
            _ => None,
        });
        if let Some(page) = home {
            text.put("/Pg ").reference(self.pages[page]);
        }
        let is_one = element.kids.len() == 1;
        text.put(if is_one { "/K " } else { "/K[" });
        for kid in &element.kids {
            self.write_kid(*kid, home, text);
        }
        if !is_one {
            text.put("]");
        }
        if let Some(language) = &element.language {
            text.put("/Lang").words(language);
        }
        if let Some(says) = &element.says {
            text.put("/ActualText").words(says);
        }
        if let Role::Figure(says) = &element.role {
            text.put("/Alt").words(says);
        }
        write_attributes(element, text);
        text.put(">>");
    }

    /// Pieces of the page that the element is on need no more than their number.
    fn write_kid(&self, kid: Kid, home: Option<usize>, text: &mut PdfText) {
        match kid {
            Kid::Piece { page, number } if home == Some(page) => text.integer(number).put(" "),
            Kid::Element(index) => text.reference(self.elements[index]).put(" "),
            Kid::Piece { page, number } => {
                text.put("<</Type/MCR/Pg ").reference(self.pages[page]);
                text.put("/MCID ").integer(number).put(">>")
            }
            Kid::Link(index) => {
                let page = self.pages[self.structure.links[index].page];
                text.put("<</Type/OBJR/Pg ").reference(page);
                text.put("/Obj ").reference(self.links[index]).put(">>")
            }
        };
    }

    /// From each page to the elements of its pieces, then from each link to its element.
    fn write_parents(&self, text: &mut PdfText) {
        for (page, pieces) in self.structure.pages.iter().enumerate() {
            text.integer(page);
            text.references(pieces.iter().map(|element| self.elements[*element]));
        }
        for (index, link) in self.structure.links.iter().enumerate() {
            text.put(" ").integer(self.pages.len() + index).put(" ");
            text.reference(self.elements[link.element]);
        }
    }

    /// An annotation for a link, with its address as its words. It is printed with the page (F 4).
    fn write_link(&self, index: usize, text: &mut PdfText) {
        let link = &self.structure.links[index];
        text.put("<</Type/Annot/Subtype/Link/F 4/Border[0 0 0]/Rect").reals(&link.room);
        text.put("/A<</Type/Action/S/URI/URI").literal(&link.address).put(">>/Contents");
        text.words(&link.address).put("/StructParent ");
        text.integer(self.pages.len() + index).put(">>");
    }

    /// A page says where its pieces belong, and that it is walked through by structure.
    pub fn write_page_entries(&self, page: usize, text: &mut PdfText) {
        text.put("/StructParents ").integer(page).put("/Tabs/S");
        let links = self.structure.links.iter().zip(&self.links);
        let mut links = links.filter(|(link, _)| link.page == page).peekable();
        if links.peek().is_some() {
            text.put("/Annots").references(links.map(|(_, number)| *number));
        }
    }

    /// One bookmark below another, in the order of the pages.
    pub fn write_outline(&self, file: &mut PdfFile) -> Option<usize> {
        let bookmarks = &self.structure.bookmarks;
        let outline = bookmarks.first().map(|_| file.number())?;
        let numbers: Vec<usize> = bookmarks.iter().map(|_| file.number()).collect();
        for (index, bookmark) in bookmarks.iter().enumerate() {
            file.object(numbers[index], |text| {
                self.write_bookmark(bookmark, text);
                text.put("/Parent ").reference(outline);
                if index > 0 {
                    text.put("/Prev ").reference(numbers[index - 1]);
                }
                if let Some(next) = numbers.get(index + 1) {
                    text.put("/Next ").reference(*next);
                }
                text.put(">>");
            });
        }
        file.object(outline, |text| {
            text.put("<</Type/Outlines/First ").reference(numbers[0]).put("/Last ");
            text.reference(numbers[numbers.len() - 1]).put("/Count ");
            text.integer(numbers.len()).put(">>");
        });
        Some(outline)
    }

    fn write_bookmark(&self, bookmark: &Bookmark, text: &mut PdfText) {
        text.put("<</Title").words(&bookmark.title).put("/Dest[");
        text.reference(self.pages[bookmark.page]).put("/XYZ null ");
        text.real(bookmark.top).put(" null]");
    }
}

/// The name of an element, and of its pieces on their pages.
pub const fn role_name(role: &Role) -> &'static str {
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
        Role::Span => "Span",
        Role::Decoration => "Artifact",
    }
}

fn write_attributes(element: &Element, text: &mut PdfText) {
    match &element.role {
        Role::List { is_numbered: true } => text.put("/A<</O/List/ListNumbering/Decimal>>"),
        Role::List { is_numbered: false } => text.put("/A<</O/List/ListNumbering/Disc>>"),
        Role::ColumnHead => text.put("/A<</O/Table/Scope/Column>>"),
        Role::RowHead => text.put("/A<</O/Table/Scope/Row>>"),
        Role::Figure(_) => match element.room {
            Some((_, room)) => text.put("/A<</O/Layout/BBox").reals(&room).put(">>"),
            None => text,
        },
        _ => text,
    };
}

/// The document’s description as XMP, with the mark of PDF/UA-1 (ISO 14289-1, 5).
pub fn write_metadata(file: &mut PdfFile, about: &About) -> usize {
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
    let number = file.number();
    // What says that it is PDF/UA is left as plain text for every reader to find.
    file.stream(number, "/Type/Metadata/Subtype/XML", packet.as_bytes());
    number
}
