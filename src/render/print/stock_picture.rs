//! The pictures of a session’s sheets, as printpdf makes image objects of them.

use std::collections::{BTreeMap, BTreeSet};

use lopdf::{Object, Stream};
use printpdf::{
    PdfDocument, PdfSaveOptions, RawImage, RawImageData, RawImageFormat, XObject, XObjectId,
};

use super::deflate::Deflater;
use super::paper_pictures::PaperPictures;
use super::pdf_object::write_object;
use super::pdf_text::PdfText;
use super::stock::StockThing;

/// The pictures by their paths, and the first number that no object of theirs has. Those that can’t be read are left out.
pub fn pictures_of(
    paths: &BTreeSet<&String>,
    pictures: &PaperPictures,
    deflater: &mut Deflater,
) -> (BTreeMap<String, StockThing>, usize) {
    let mut things = BTreeMap::new();
    let mut number = 1;
    for path in paths {
        let Some(picture) = pictures.get(path) else { continue };
        let Some(stream) = image_of(raw_picture(&picture.dots)) else { continue };
        things.insert((*path).clone(), thing_of(stream, number, deflater));
        number += 1;
    }
    (things, number)
}

/// The only stream of a document whose resources are one picture.
fn image_of(picture: RawImage) -> Option<Stream> {
    let mut document = PdfDocument::new("");
    document.resources.xobjects.map.insert(XObjectId("P".to_owned()), XObject::Image(picture));
    let options = PdfSaveOptions { image_optimization: None, ..PdfSaveOptions::default() };
    let written = document.to_lopdf_document(&options, &mut Vec::new());
    written.objects.into_values().find_map(|object| match object {
        Object::Stream(stream) => Some(stream),
        _ => None,
    })
}

fn thing_of(mut stream: Stream, number: usize, deflater: &mut Deflater) -> StockThing {
    if stream.dict.get(b"Filter").is_err() {
        let deflated = deflater.deflate_well(&stream.content);
        if deflated.len() < stream.content.len() {
            stream.dict.set("Filter", "FlateDecode");
            stream.set_content(deflated);
        }
    }
    let mut text = PdfText::default();
    write_object(&Object::Stream(stream), &mut text);
    StockThing { number, packed: Vec::new(), streams: vec![(number, text.bytes)] }
}

/// A picture without colours, as most drawings for paper are, is a third as long.
fn raw_picture(picture: &image::RgbImage) -> RawImage {
    let side = |dots: u32| usize::try_from(dots).unwrap_or(0);
    let is_grey = picture.pixels().all(|dot| dot.0[0] == dot.0[1] && dot.0[1] == dot.0[2]);
    let (dots, data_format) = if is_grey {
        (picture.pixels().map(|dot| dot.0[0]).collect(), RawImageFormat::R8)
    } else {
        (picture.as_raw().clone(), RawImageFormat::RGB8)
    };
    RawImage {
        width: side(picture.width()),
        height: side(picture.height()),
        pixels: RawImageData::U8(dots),
        data_format,
        tag: Vec::new(),
    }
}
