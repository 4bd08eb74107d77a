//! A class → the pack of each home, the teacher’s page and sheet, and the survey.
//!
//! Homes are rendered one by one, so that memory doesn’t grow with the class. Sheets that come out alike, and
//! what all pages load, are rendered once: later homes only name where the first of them lies.

mod survey;
mod teacher;

use std::collections::BTreeMap;
use std::sync::Mutex;

use super::home_pack::{key_of, pack_of_home, session_of_home};
use super::home_units::unit_of_home;
use super::house::House;
use super::print::{ClassSheet, Press};
use super::site::{ClassTable, class_assets, render_class_page, render_site};
use super::{Bundle, Publication, RenderFault, Sheet};
use crate::fit::{FittedHome, HomePlan, SessionPlan};
use crate::homes::{Home, HomeNeed};
use crate::pack::{Pack, Session, SessionId, Unit};
use crate::plan::unit::UnitDays;
use crate::words::Words;

/// What all homes of a run share.
#[derive(Debug)]
pub struct ClassPress<'p> {
    pack: &'p Pack,
    sessions: Vec<&'p Session>,
    /// The days of each unit, as the class has them.
    units: Vec<UnitDays>,
    press: Press,
    words: Words,
    assets: Bundle,
    /// The folder that the sheets of a session lie in, by what tells them apart.
    known: Mutex<BTreeMap<String, String>>,
}

/// The files of one home.
#[derive(Debug, Default)]
pub struct HomeFiles {
    pub fresh: Bundle,
    /// Files that lie elsewhere already: their path, and where.
    pub repeats: Vec<(String, String)>,
    /// The sheets that are fresh: what tells them apart, and their folder.
    sheets: Vec<(String, String)>,
}

impl<'p> ClassPress<'p> {
    /// Gets everything ready that homes share.
    ///
    /// # Errors
    /// Where a file of the pack's own look can't be used.
    pub fn begin(pack: &'p Pack, sessions: Vec<&'p Session>) -> Result<Self, RenderFault> {
        let publication = Publication::of(pack)?;
        Ok(Self {
            press: Press::load(&publication.house)?,
            words: publication.house.words(&pack.language)?,
            assets: class_assets(&publication),
            units: publication.days_of_units(),
            known: Mutex::default(),
            pack,
            sessions,
        })
    }

    /// What all pages load; it lies at the top, and homes repeat it.
    pub fn assets(&self) -> &Bundle {
        &self.assets
    }

    /// The pack of one home, below a folder named by its code.
    ///
    /// # Errors
    /// Where a template of the pack's own look can't be used.
    pub fn render_home(&self, home: &Home, plan: &HomePlan) -> Result<HomeFiles, RenderFault> {
        let fitted: Vec<(&Session, &FittedHome)> = self.fitted(plan).collect();
        if fitted.is_empty() {
            return Ok(HomeFiles::default());
        }
        let language = home.language.as_ref().unwrap_or(&self.pack.language.value);
        let translated = self.pack.in_language(language);
        let words = House::new(&self.pack.look).words(language)?;
        let is_large = home.needs.contains(&HomeNeed::LowVision);
        let as_done = |(session, fitted): &(&Session, &FittedHome)| {
            let own = translated.sessions.iter().find(|own| own.id == session.id);
            let own = own.map_or(*session, |own| own);
            let session = session_of_home((own, session), fitted, home, &words);
            // Sheets are alike only in one language and size.
            let key = format!("{language} {is_large} {}", key_of(&session, fitted));
            (session, key)
        };
        let (sessions, keys): (Vec<Session>, Vec<String>) = fitted.iter().map(as_done).unzip();
        let ids: Vec<SessionId> = sessions.iter().map(|session| session.id.clone()).collect();
        let folders: Vec<Option<String>> = keys.iter().map(|key| self.folder_of(key)).collect();
        let units = self.units_of(&translated, &sessions);
        let pack = pack_of_home(&translated, (sessions, units), home);
        let publication = Publication::of(&pack)?;
        let is_new = |id: &SessionId| ids.iter().zip(&folders).any(|(i, f)| i == id && f.is_none());
        let mut bundle = render_site(&publication)?;
        bundle.append(&mut self.press.render(&publication, &is_new).0);
        let mut files = self.sort_out(&home.code, bundle);
        for ((id, key), folder) in ids.iter().zip(keys).zip(folders) {
            let own = home.code.value.clone();
            match folder {
                None => files.sheets.push((key, own)),
                Some(other) => {
                    files.repeats.extend(Sheet::chosen(&pack.printing).iter().map(|sheet| {
                        let path = sheet.path(id);
                        (format!("{own}/{path}"), format!("{other}/{path}"))
                    }));
                }
            }
        }
        Ok(files)
    }

    /// Takes note that the files of a home have been written, so that others may repeat them.
    pub fn remember(&self, files: HomeFiles) {
        self.known().extend(files.sheets);
    }

    fn known(&self) -> std::sync::MutexGuard<'_, BTreeMap<String, String>> {
        self.known.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
    }

    fn folder_of(&self, key: &str) -> Option<String> {
        self.known().get(key).cloned()
    }

    /// Tells what is the home’s own from what lies at the top already.
    fn sort_out(&self, code: &str, bundle: Bundle) -> HomeFiles {
        let mut files = HomeFiles::default();
        for (path, bytes) in bundle {
            let to = format!("{code}/{path}");
            if self.assets.get(&path) == Some(&bytes) {
                files.repeats.push((to, path));
            } else {
                files.fresh.insert(to, bytes);
            }
        }
        files
    }

    /// The units with the days that a home can do, for its own page, calendar and sheets.
    fn units_of(&self, translated: &Pack, sessions: &[Session]) -> Vec<Unit> {
        let units = translated.units.iter().zip(&self.units);
        units.filter_map(|(unit, days)| unit_of_home(unit, days, sessions)).collect()
    }

    fn fitted<'h>(
        &'h self,
        plan: &'h HomePlan,
    ) -> impl Iterator<Item = (&'p Session, &'h FittedHome)> {
        self.sessions.iter().zip(&plan.sessions).filter_map(|(session, plan)| match plan {
            SessionPlan::Fits(fitted) => Some((*session, fitted)),
            SessionPlan::Unfit { .. } => None,
        })
    }

    /// A page and its sheet for paper.
    fn page_and_sheet(
        &self,
        (here, page, paper): (&'static str, &'static str, &'static str),
        sheet: &ClassSheet,
        table: &ClassTable,
    ) -> Result<Bundle, RenderFault> {
        let publication = Publication::of(self.pack)?;
        Ok(Bundle::from([
            (page.to_owned(), render_class_page(&publication, (here, paper), sheet, table)?),
            (paper.to_owned(), self.press.render_class(self.pack, &self.words, sheet)),
        ]))
    }
}
