//! One plain word → its atoms, straight from the shaping engine: what parley does for whole texts – bidi
//! levels, line breaks, the choice of a font for every letter – a word of one script in one face does not
//! need. Most words need not even the engine ([`super::letters`]). Other words are left to parley.

use harfrust::{
    BufferClusterLevel, Direction, FontRef, GlyphBuffer, Script, ShapeOptions, ShapePlan,
    ShaperData, UnicodeBuffer, script,
};
use smallvec::SmallVec;

use super::atoms::{Atom, Style};
use super::faces::{Face, Faces};
use super::letters::{Letter, Letters};
use super::page::{GlyphText, PlacedGlyph};
use super::shaper::SHAPED_AT;

/// A face as the engine reads it.
struct Engine<'f> {
    face: Face,
    font: FontRef<'f>,
    /// From the font’s units to points at the size that words are shaped in.
    scale: f32,
    data: ShaperData,
    /// By script.
    plans: Vec<(Script, ShapePlan)>,
    letters: Option<Letters<'f>>,
}

/// One thread’s shaper of words.
pub struct WordShaper<'f> {
    /// In the order of [`Style`].
    engines: Vec<Engine<'f>>,
    buffer: UnicodeBuffer,
}

impl<'f> WordShaper<'f> {
    pub fn new(faces: &'f Faces) -> Self {
        let engines = [Face::Regular, Face::Bold, Face::Italic].into_iter().filter_map(|face| {
            let loaded = faces.get(face);
            let font = FontRef::from_index(loaded.blob.as_ref(), 0).ok()?;
            let letters = skrifa::FontRef::new(loaded.blob.as_ref()).ok();
            let letters = letters.filter(|_| loaded.is_shipped).map(|font| Letters::of(&font));
            let data = ShaperData::new(&font);
            #[allow(clippy::cast_precision_loss, reason = "a font has a few thousand units an em")]
            let units = data.shaper(&font).build().units_per_em() as f32;
            let scale = SHAPED_AT / units.max(1.0);
            Some(Engine { face, data, font, scale, plans: Vec::new(), letters })
        });
        Self { engines: engines.collect(), buffer: UnicodeBuffer::new() }
    }

    /// The atoms of a word; none where it is of several scripts, has marks over its letters, or letters that
    /// the face lacks.
    pub fn shape(&mut self, word: &str, style: Style) -> Option<Vec<Atom>> {
        let engine = self.engines.get_mut(style as usize)?;
        if let Some(atoms) = engine.set_side_by_side(word) {
            return Some(atoms);
        }
        let script = script_of(word)?;
        let mut buffer = std::mem::take(&mut self.buffer);
        buffer.set_cluster_level(BufferClusterLevel::MonotoneCharacters);
        buffer.push_str(word);
        buffer.set_direction(Direction::LeftToRight);
        buffer.set_script(script);
        let glyphs = engine.shape(buffer, script);
        let atoms = atoms_of(&glyphs, word, engine);
        self.buffer = glyphs.clear();
        atoms
    }
}

impl Engine<'_> {
    /// The atoms of a word whose letters stand as they are.
    fn set_side_by_side(&mut self, word: &str) -> Option<Vec<Atom>> {
        let (face, scale) = (self.face, self.scale);
        let mut atoms = Vec::with_capacity(word.len());
        self.letters.as_mut()?.of_word(word, |letter, Letter { glyph, advance }| {
            let text = GlyphText::Letter(letter);
            let glyph = glyph.map(|id| PlacedGlyph { id, x: 0.0, rise: 0.0, text });
            atoms.push(Atom {
                length: letter.len_utf8(),
                advance: advance * scale,
                face,
                glyphs: glyph.into_iter().collect(),
                is_space: letter == ' ',
                may_break: false,
            });
        })?;
        Some(atoms)
    }

    fn shape(&mut self, buffer: UnicodeBuffer, script: Script) -> GlyphBuffer {
        let shaper = self.data.shaper(&self.font).build();
        let known = self.plans.iter().position(|(of, _)| *of == script).unwrap_or_else(|| {
            let plan = ShapePlan::new(&shaper, Direction::LeftToRight, Some(script), None, &[]);
            self.plans.push((script, plan));
            self.plans.len() - 1
        });
        shaper.shape(buffer, ShapeOptions::new().plan(Some(&self.plans[known].1)))
    }
}

/// The script of a word’s letters; signs and figures are of whatever script is beside them.
fn script_of(word: &str) -> Option<Script> {
    let mut found = None;
    for letter in word.chars().filter(|letter| letter.is_alphabetic()) {
        let script = match letter {
            'a'..='z' | 'A'..='Z' | '\u{c0}'..='\u{24f}' | '\u{1e00}'..='\u{1eff}' => script::LATIN,
            '\u{370}'..='\u{3ff}' => script::GREEK,
            '\u{400}'..='\u{52f}' => script::CYRILLIC,
            _ => return None,
        };
        if *found.get_or_insert(script) != script {
            return None;
        }
    }
    let has_marks = word.chars().any(|letter| matches!(letter, '\u{300}'..='\u{36f}' | '\u{483}'..='\u{489}' | '\u{20d0}'..='\u{20ff}'));
    (!has_marks).then(|| found.unwrap_or(script::LATIN))
}

/// What belongs to one letter or ligature is an atom.
fn atoms_of(glyphs: &GlyphBuffer, word: &str, engine: &Engine<'_>) -> Option<Vec<Atom>> {
    #[allow(clippy::cast_precision_loss, reason = "a few thousand units")]
    let points = |units: i32| units as f32 * engine.scale;
    let mut atoms: Vec<Atom> = Vec::with_capacity(glyphs.len());
    let mut starts: Vec<usize> = Vec::with_capacity(glyphs.len());
    for (info, position) in glyphs.glyph_infos().iter().zip(glyphs.glyph_positions()) {
        let start = usize::try_from(info.cluster).ok()?;
        if starts.last() != Some(&start) {
            starts.push(start);
            atoms.push(Atom {
                length: 0,
                advance: 0.0,
                face: engine.face,
                glyphs: SmallVec::new(),
                is_space: false,
                may_break: false,
            });
        }
        let atom = atoms.last_mut()?;
        let x = atom.advance + points(position.x_offset);
        let id = u16::try_from(info.glyph_id).ok().filter(|id| *id != 0)?;
        let rise = points(position.y_offset);
        atom.glyphs.push(PlacedGlyph { id, x, rise, text: GlyphText::Nothing });
        atom.advance += points(position.x_advance);
    }
    if starts.first() != Some(&0) {
        return None;
    }
    let ends = starts.iter().skip(1).copied().chain([word.len()]);
    for ((atom, start), end) in atoms.iter_mut().zip(&starts).zip(ends) {
        atom.tell(word.get(*start..end)?);
    }
    Some(atoms)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::super::letters::ALL;
    use super::*;
    use crate::render::house::House;

    /// Words of every two letters of a script, with others about them, are what the engine makes of them.
    #[test]
    fn letters_side_by_side_are_as_the_engine_sets_them() {
        let own = BTreeMap::new();
        let faces = Faces::load(&House::new(&own)).unwrap();
        let mut shaper = WordShaper::new(&faces);
        let letters: Vec<char> = ALL.iter().flat_map(|(first, last)| *first..=*last).collect();
        let mut compared = 0;
        for style in [Style::Regular, Style::Bold, Style::Italic] {
            for (at, first) in letters.iter().enumerate() {
                // Each beside each of a third of the others, and one more.
                for (step, second) in letters.iter().enumerate().skip(at % 3).step_by(3) {
                    let third = letters[(at * 31 + step * 17) % letters.len()];
                    let word = format!("{first}{second}{third}{first} ");
                    let engine = &mut shaper.engines[style as usize];
                    let Some(plainly) = engine.set_side_by_side(&word) else { continue };
                    let known = engine.letters.take();
                    let shaped = shaper.shape(&word, style);
                    shaper.engines[style as usize].letters = known;
                    let Some(shaped) = shaped else { continue };
                    assert_eq!(format!("{plainly:?}"), format!("{shaped:?}"), "{word}");
                    compared += 1;
                }
            }
        }
        assert!(compared > 100_000, "{compared}");
    }
}
