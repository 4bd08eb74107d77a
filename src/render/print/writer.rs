//! Laid-out pages → the bytes of a PDF, the same on every run.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::content::ContentWriter;
use super::deflate::Deflater;
use super::faces::Faces;
use super::page::Page;
use super::paper_pictures::PaperPictures;
use super::pdf_file::PdfFile;
use super::read_out::say_in_order;
use super::stock::Stock;
use super::tagged::{Tagged, write_metadata};
use super::used::Used;

/// What a PDF says about itself.
#[derive(Clone, Debug)]
pub struct About {
    pub title: String,
    pub author: String,
    /// BCP 47 tag.
    pub language: String,
    /// YYYYMMDD; fixed by the session, so that the same session gives the same bytes.
    pub date: String,
    /// Its pages lie on the sheets as they are folded, not as they are read.
    pub is_folded: bool,
    /// It opens at the right, as its script runs.
    pub is_rtl: bool,
}

/// One thread’s writer.
pub struct Writer<'f> {
    faces: &'f Faces,
    deflater: Deflater,
}

impl<'f> Writer<'f> {
    pub fn new(faces: &'f Faces) -> Self {
        Self { faces, deflater: Deflater::new() }
    }

    /// Fonts, pictures and plates for documents that show all this.
    pub fn stock(&mut self, used: &Used<'_>, pictures: &PaperPictures) -> Stock {
        Stock::of(used, self.faces, pictures, &mut self.deflater)
    }

    /// Writes a document that stands alone.
    pub fn write_alone(
        &mut self,
        pages: &[Page],
        about: &About,
        files: &BTreeMap<String, Arc<[u8]>>,
    ) -> Vec<u8> {
        let used = Used::by(pages.iter());
        let pictures = PaperPictures::of(&used.paths, files);
        let stock = self.stock(&used, &pictures);
        self.write(pages, about, &stock)
    }

    /// Writes a document with the stock that it shares with others.
    pub fn write(&mut self, pages: &[Page], about: &About, stock: &Stock) -> Vec<u8> {
        let mut content = ContentWriter::new(self.faces, stock);
        let written: Vec<Vec<u8>> = pages.iter().map(|page| content.write_page(page)).collect();
        say_in_order(&mut content.structure, pages);
        if about.is_folded {
            content.structure.order_as_laid();
        }
        let mut file = PdfFile::new(stock.first_free);
        let shown = stock.write_to(&mut file, &content);
        let resources = file.number();
        file.object(resources, |text| _ = text.put("<<").put(&shown).put(">>"));
        let tree = file.number();
        let numbers: Vec<usize> = pages.iter().map(|_| file.number()).collect();
        let tagged = Tagged::new(&mut file, &content.structure, &numbers);
        for (index, (page, drawn)) in pages.iter().zip(&written).enumerate() {
            let stream = file.number();
            file.stream(stream, "/Filter/FlateDecode", &self.deflater.deflate(drawn));
            file.object(numbers[index], |text| {
                text.put("<</Type/Page/Parent ")
                    .reference(tree)
                    .put("/Contents ")
                    .reference(stream);
                text.put("/MediaBox").reals(&[0.0, 0.0, page.width, page.height]);
                text.put("/Resources ").reference(resources);
                tagged.write_page_entries(index, text);
                text.put(">>");
            });
        }
        file.object(tree, |text| {
            text.put("<</Type/Pages/Count ").integer(pages.len()).put("/Kids");
            text.references(numbers.iter().copied()).put(">>");
        });
        tagged.write_elements(&mut file);
        let root = write_catalog(&mut file, tree, &tagged, about);
        let info = write_info(&mut file, about);
        file.finish(root, info, &mut self.deflater)
    }
}

fn write_catalog(file: &mut PdfFile, tree: usize, tagged: &Tagged<'_>, about: &About) -> usize {
    let outline = tagged.write_outline(file);
    let metadata = write_metadata(file, about);
    let root = file.number();
    file.object(root, |text| {
        text.put("<</Type/Catalog/PageLayout/OneColumn/Pages ").reference(tree);
        text.put("/Lang").words(&about.language).put("/ViewerPreferences<</DisplayDocTitle true");
        // ISO 32000-1, table 150: the order of pages that are shown side by side.
        text.put(if about.is_rtl { "/Direction/R2L>>" } else { ">>" });
        text.put("/MarkInfo<</Marked true>>/StructTreeRoot ").reference(tagged.root);
        text.put("/Metadata ").reference(metadata);
        if let Some(outline) = outline {
            text.put("/Outlines ").reference(outline);
        }
        text.put(">>");
    });
    root
}

fn write_info(file: &mut PdfFile, about: &About) -> usize {
    let info = file.number();
    let date = format!("(D:{}000000Z)", about.date);
    file.object(info, |text| {
        text.put("<</Title").words(&about.title).put("/Author").words(&about.author);
        text.put("/Creator(homeground)/CreationDate")
            .put(&date)
            .put("/ModDate")
            .put(&date)
            .put(">>");
    });
    info
}
