//! What the sheets of one session are made from: the session and what all sessions share, never another
//! session. Made from the same things, they are the same sheets: those that were kept are taken again.

use super::Printed;
use crate::pack::{Pack, Session};
use crate::render::key::{Key, KeyMaker};
use crate::render::near::keep_near;
use crate::render::shelf::{Made, find_or_make};
use crate::render::{Publication, Sheet};

/// The pack as sheets see it.
pub(super) struct Desk<'d> {
    publication: &'d Publication<'d>,
    chosen: &'d [Sheet],
    shared: Pack,
    made_from: KeyMaker,
}

impl<'d> Desk<'d> {
    pub(super) fn of(publication: &'d Publication<'d>, chosen: &'d [Sheet]) -> Self {
        let shared = publication.pack.shared_alone();
        let mut made_from = KeyMaker::default();
        if publication.order.shelf.is_some() {
            made_from = made_from
                .with("sheets")
                .with(publication.words.language())
                .with(publication.house.own_key())
                .with_all_of(&chosen)
                .with_all_of(&shared);
        }
        Self { publication, chosen, shared, made_from }
    }

    /// The sheets of a session, found again or printed from what `print` is handed.
    pub(super) fn find_or_print(
        &self,
        session: &Session,
        print: impl FnOnce(&Pack) -> Vec<Printed>,
    ) -> Vec<Printed> {
        let near = self.publication.near("sheets", session);
        let paths: Vec<String> = self.chosen.iter().map(|sheet| sheet.path(&session.id)).collect();
        if let Some(left) = self.publication.leave(near, &paths) {
            let sheets = paths.into_iter().zip(left);
            return sheets
                .map(|(path, left)| Printed { path, bytes: None, ink: left.ink })
                .collect();
        }
        let made = self.find_or_print_far(session, print);
        keep_near(near, &made);
        paths.into_iter().zip(made).map(|(path, made)| Printed::of(path, made)).collect()
    }

    fn find_or_print_far(
        &self,
        session: &Session,
        print: impl FnOnce(&Pack) -> Vec<Printed>,
    ) -> Vec<Made> {
        let mut pack = self.shared.clone();
        pack.pictures = self.publication.pack.pictures_of(session);
        let make = || {
            let printed = print(&pack).into_iter();
            Ok::<_, std::convert::Infallible>(printed.map(Printed::into_made).collect())
        };
        let Ok(made) =
            find_or_make(self.publication.order.shelf, || self.key(session, &pack), make);
        made
    }

    fn key(&self, session: &Session, pack: &Pack) -> Key {
        let pictures = pack.pictures.iter();
        let made_from = self.made_from.clone().with_all_of(session);
        pictures.fold(made_from, |all, (path, bytes)| all.with(path).with(bytes)).finish()
    }
}

impl Printed {
    pub(super) fn new(path: String, bytes: Vec<u8>, ink: Vec<f32>) -> Self {
        Self { path, bytes: Some(bytes), ink }
    }

    fn of(path: String, Made { bytes, ink }: Made) -> Self {
        Self::new(path, bytes, ink)
    }

    fn into_made(self) -> Made {
        Made { bytes: self.bytes.unwrap_or_default(), ink: self.ink }
    }
}
