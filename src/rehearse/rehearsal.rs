//! From save to scene: what changed is read and inspected; a file with a problem is shown as it last was
//! sound, under what is found in it now.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use super::lent::Lent;
use super::scene::Scene;
use super::shelf::MemoryShelf;
use super::snapshot::{Changes, LastSound, Snapshot};
use crate::Inspected;
use crate::finding::{Finding, Severity};
use crate::inspect::FoundBefore;
use crate::place::FileId;
use crate::read::ReadBefore;
use crate::render::Bundle;
use crate::source::Source;

/// A pack under rehearsal.
#[derive(Debug)]
pub struct Rehearsal {
    root: PathBuf,
    snapshot: Snapshot,
    before: Before,
    /// The bytes of each file when it last had no problem.
    sound: BTreeMap<String, Arc<[u8]>>,
    lent: Lent,
    shelf: Arc<MemoryShelf>,
    scene: Arc<Scene>,
}

/// What was read and found before; what no longer holds of it is not used.
#[derive(Debug, Default)]
struct Before {
    read: ReadBefore,
    found: FoundBefore,
}

impl Before {
    fn inspect(&mut self, source: &dyn Source) -> Result<Inspected, String> {
        crate::inspect_again(source, &mut self.read, &mut self.found)
    }
}

/// What a look at the pack came to.
#[derive(Debug)]
pub struct News {
    pub changes: Changes,
    pub scene: Arc<Scene>,
}

impl Rehearsal {
    /// Reads a pack for the first time.
    ///
    /// # Errors
    /// A sentence for the teacher, where it can't be looked into.
    pub fn begin(root: &Path) -> Result<Self, String> {
        let snapshot = Snapshot::take(root)?;
        let mut before = Before::default();
        let inspected = before.inspect(&snapshot)?;
        let shelf = Arc::new(MemoryShelf::default());
        let files = inspected.pack.files.clone();
        let Inspected { pack, plans, findings, .. } = inspected;
        let made = Mutex::default();
        let kept: Arc<MemoryShelf> = Arc::clone(&shelf);
        let scene = Scene { number: 0, pack, plans, findings, files, made, shelf: kept };
        let mut rehearsal = Self {
            root: root.to_owned(),
            snapshot,
            before,
            sound: BTreeMap::new(),
            lent: Lent::default(),
            shelf,
            scene: Arc::new(scene),
        };
        rehearsal.put_scene()?;
        Ok(rehearsal)
    }

    pub fn scene(&self) -> Arc<Scene> {
        Arc::clone(&self.scene)
    }

    /// The folders to watch: the pack’s own, and those of neighbours that it draws on.
    pub fn folders(&self) -> BTreeSet<PathBuf> {
        let mut folders = self.lent.folders(&self.root);
        folders.insert(self.root.clone());
        folders
    }

    /// Looks at the pack again; `None` where nothing has changed.
    ///
    /// # Errors
    /// A sentence for the teacher, where it can't be looked into any more.
    pub fn look_again(&mut self) -> Result<Option<News>, String> {
        let (snapshot, mut changes) = self.snapshot.take_again(&self.root)?;
        self.snapshot = snapshot;
        changes.changed.extend(self.lent.changed(&self.root));
        if changes.is_empty() {
            return Ok(None);
        }
        self.put_scene()?;
        Ok(Some(News { changes, scene: self.scene() }))
    }

    fn put_scene(&mut self) -> Result<(), String> {
        let now = self.before.inspect(&self.snapshot)?;
        self.lent = Lent::of(&self.root, &now.pack);
        let broken = files_with_problems(&now.findings);
        self.remember_sound(&now, &broken);
        let last = self.last_sound(&now, &broken);
        let (findings, files) = (now.findings.clone(), now.pack.files.clone());
        let mut shown = now;
        if !last.is_empty() {
            let source = LastSound { now: &self.snapshot, sound: last };
            shown = self.before.inspect(&source)?;
        }
        leave_out_broken(&mut shown);
        let is_same_house = shown.pack.look == self.scene.pack.look
            && shown.pack.languages == self.scene.pack.languages
            && shown.pack.language.value == self.scene.pack.language.value;
        let made = if is_same_house { self.scene.house_files() } else { Bundle::new() };
        let shelf: Arc<MemoryShelf> = Arc::clone(&self.shelf);
        let number = self.scene.number + 1;
        let Inspected { pack, plans, .. } = shown;
        let made = Mutex::new(made);
        self.scene = Arc::new(Scene { number, pack, plans, findings, files, made, shelf });
        Ok(())
    }

    fn remember_sound(&mut self, now: &Inspected, broken: &BTreeSet<FileId>) {
        for (_, file) in now.pack.files.each().filter(|(id, _)| !broken.contains(id)) {
            if self.snapshot.has(&file.path)
                && let Ok(bytes) = self.snapshot.bytes_kept(&file.path)
            {
                self.sound.insert(file.path.clone(), bytes);
            }
        }
    }

    /// Of the files with problems, those that once were sound.
    fn last_sound(
        &self,
        now: &Inspected,
        broken: &BTreeSet<FileId>,
    ) -> BTreeMap<String, Arc<[u8]>> {
        let paths = broken.iter().map(|file| now.pack.files.get(*file).path.clone());
        paths.filter_map(|path| Some((path.clone(), Arc::clone(self.sound.get(&path)?)))).collect()
    }
}

fn files_with_problems(findings: &[Finding]) -> BTreeSet<FileId> {
    let problems = findings.iter().filter(|finding| finding.severity == Severity::Problem);
    problems.map(|finding| finding.place.file).collect()
}

/// A session with a problem would not be published: it is not shown either.
fn leave_out_broken(shown: &mut Inspected) {
    let broken = files_with_problems(&shown.findings);
    let pack = &mut shown.pack;
    let sessions =
        std::mem::take(&mut pack.sessions).into_iter().zip(std::mem::take(&mut shown.plans));
    let kept = sessions.filter(|(session, _)| !broken.contains(&session.file));
    (pack.sessions, shown.plans) = kept.unzip();
    for translation in pack.translations.values_mut() {
        translation.sessions.retain(|session| !broken.contains(&session.file));
        translation.units.retain(|unit| !broken.contains(&unit.file));
    }
}
