//! What sheets are printed with: a printer for each thread that is at work. It keeps the words it has shaped and the
//! fonts it has read, for every session that it prints.

use std::sync::{Mutex, PoisonError};

use super::faces::Faces;
use super::ink::InkMeter;
use super::page::Page;
use super::paper_pictures::PaperPictures;
use super::scale::Air;
use super::shaper::Shaper;
use super::used::Used;
use super::writer::Writer;
use super::{LaidSheet, Printed};
use crate::pack::Pack;

/// The printers of one edition, which share a language and a look.
pub struct Printers<'f> {
    faces: &'f Faces,
    language: &'f str,
    air: Air,
    idle: Mutex<Vec<Printer<'f>>>,
}

impl<'f> Printers<'f> {
    pub fn of(faces: &'f Faces, pack: &'f Pack) -> Self {
        let air = Air::of(pack.printing.spacing);
        Self { faces, language: &pack.language, air, idle: Mutex::default() }
    }

    /// Lends a printer that is idle, or a new one.
    pub fn lend<T>(&self, print: impl FnOnce(&mut Printer<'f>) -> T) -> T {
        let idle = || self.idle.lock().unwrap_or_else(PoisonError::into_inner);
        let waiting = idle().pop();
        let mut printer =
            waiting.unwrap_or_else(|| Printer::new(self.faces, self.language, self.air));
        let printed = print(&mut printer);
        idle().push(printer);
        printed
    }
}

/// What one thread prints with.
pub struct Printer<'f> {
    pub shaper: Shaper<'f>,
    pub writer: Writer<'f>,
    meter: InkMeter<'f>,
}

impl<'f> Printer<'f> {
    pub fn new(faces: &'f Faces, language: &str, air: Air) -> Self {
        Self {
            shaper: Shaper::new(faces, language, air),
            writer: Writer::new(faces),
            meter: InkMeter::new(faces),
        }
    }

    /// Prints sheets that share their fonts and pictures.
    pub fn print(&mut self, sheets: Vec<LaidSheet>, pack: &Pack) -> Vec<Printed> {
        let used = Used::by(sheets.iter().flat_map(|sheet| &sheet.pages));
        let pictures = PaperPictures::of(&used.paths, &pack.pictures);
        let stock = self.writer.stock(&used, &pictures);
        let mut ink_of = |page: &Page| self.meter.measure(page, &stock, &pictures);
        let print = |sheet: LaidSheet| {
            let ink = sheet.pages.iter().map(&mut ink_of).collect();
            Printed::new(sheet.path, self.writer.write(&sheet.pages, &sheet.about, &stock), ink)
        };
        sheets.into_iter().map(print).collect()
    }
}
