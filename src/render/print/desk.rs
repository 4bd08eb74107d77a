//! What the sheets of one session are made from: the session and what all sessions share, never another
//! session. Made from the same things, they are the same sheets: those that were kept are taken again.

use super::Printed;
use crate::pack::{Pack, Session};
use crate::render::key::{Key, KeyMaker};
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
        let mut pack = self.shared.clone();
        pack.pictures = self.publication.pack.pictures_of(session);
        let make = || {
            let printed = print(&pack).into_iter();
            Ok::<_, std::convert::Infallible>(printed.map(|sheet| sheet.made).collect())
        };
        let Ok(made) =
            find_or_make(self.publication.order.shelf, || self.key(session, &pack), make);
        let paths = self.chosen.iter().map(|sheet| sheet.path(&session.id));
        paths.zip(made).map(|(path, made)| Printed { path, made }).collect()
    }

    fn key(&self, session: &Session, pack: &Pack) -> Key {
        let pictures = pack.pictures.iter();
        let made_from = self.made_from.clone().with_all_of(session);
        pictures.fold(made_from, |all, (path, bytes)| all.with(path).with(bytes)).finish()
    }
}

impl Printed {
    pub(super) fn new(path: String, bytes: Vec<u8>, ink: Vec<f32>) -> Self {
        Self { path, made: Made { bytes, ink } }
    }
}
