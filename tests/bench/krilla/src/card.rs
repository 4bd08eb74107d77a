//! One card: blocks of words, shaped and broken by parley, drawn and tagged by krilla.

use krilla::geom::Point;
use krilla::surface::Surface;
use krilla::tagging::{
    Artifact, ContentTag, Identifier, ListNumbering, SpanTag, Tag, TagGroup, TagKind, TagTree,
};
use krilla::text::{GlyphId, KrillaGlyph};
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};
use parley::style::{FontStyle, FontWeight, LineHeight, StyleProperty};
use parley::{FontFamily, Layout, LayoutContext};
use serde::Deserialize;

use crate::fonts::Fonts;

/// Between two blocks, and how far an entry of a list is moved in.
const GAP: f32 = 1.0;
const STEP: f32 = 14.0;

#[derive(Deserialize)]
pub struct Block {
    role: String,
    marker: String,
    size: f32,
    runs: Vec<(String, String)>,
}

pub struct Setter {
    fonts: Fonts,
    context: LayoutContext<()>,
}

impl Setter {
    pub fn new(fonts: &str) -> Self {
        Self { fonts: Fonts::load(fonts), context: LayoutContext::new() }
    }

    /// Draws a card and says the titles on it.
    pub fn set_card(
        &mut self,
        surface: &mut Surface<'_>,
        tree: &mut TagTree,
        blocks: &[Block],
        (x, mut y): (f32, f32),
    ) -> Vec<String> {
        let mut titles = Vec::new();
        let mut list: Option<TagGroup> = None;
        for block in blocks {
            let is_entry = block.role == "LI";
            let indent = if is_entry { STEP } else { 0.0 };
            let text: String = block.runs.iter().map(|(text, _)| text.as_str()).collect();
            let layout = self.shape(&text, &block.runs, block.size, crate::WIDTH - indent);
            let at = (x + indent, y);
            let pieces = draw(&self.fonts, surface, &layout, &text, at, block.role.is_empty());
            y += layout.height() + GAP;
            if is_entry {
                let label = self.draw_marker(surface, block, (x, at.1));
                let list = list.get_or_insert_with(|| TagGroup::new(Tag::L(numbering(block))));
                list.push(entry(label, pieces));
                continue;
            }
            list.take().into_iter().for_each(|list| tree.push(list));
            push_words(tree, block, &text, pieces);
            titles.extend((block.role == "H1").then_some(text));
        }
        list.into_iter().for_each(|list| tree.push(list));
        titles
    }

    fn draw_marker(
        &mut self,
        surface: &mut Surface<'_>,
        block: &Block,
        at: (f32, f32),
    ) -> Vec<Identifier> {
        let runs = [(block.marker.clone(), String::new())];
        let layout = self.shape(&block.marker, &runs, block.size, STEP);
        draw(&self.fonts, surface, &layout, &block.marker, at, false)
    }

    fn shape(
        &mut self,
        text: &str,
        runs: &[(String, String)],
        size: f32,
        width: f32,
    ) -> Layout<()> {
        let mut builder = self.context.ranged_builder(&mut self.fonts.context, text, 1.0, false);
        builder.push_default(FontFamily::from("Andika"));
        builder.push_default(StyleProperty::FontSize(size));
        let leading = if size >= 16.0 { 1.2 } else { 1.28 };
        builder.push_default(StyleProperty::LineHeight(LineHeight::FontSizeRelative(leading)));
        let mut start = 0;
        for (text, style) in runs {
            let range = start..start + text.len();
            start = range.end;
            match style.as_str() {
                "bold" => builder.push(StyleProperty::FontWeight(FontWeight::BOLD), range),
                "italic" => builder.push(StyleProperty::FontStyle(FontStyle::Italic), range),
                _ => {}
            }
        }
        let mut layout = builder.build(text);
        layout.break_all_lines(Some(width));
        layout.align(Alignment::Start, AlignmentOptions::default());
        layout
    }
}

fn numbering(block: &Block) -> ListNumbering {
    if block.marker == "•" { ListNumbering::Disc } else { ListNumbering::Decimal }
}

fn entry(label: Vec<Identifier>, words: Vec<Identifier>) -> TagGroup {
    let parts = [group(Tag::Lbl, label), group(Tag::LBody, words)];
    TagGroup::with_children(Tag::LI, parts.map(Into::into).to_vec())
}

/// A paragraph or heading. Decoration has no tag.
fn push_words(tree: &mut TagTree, block: &Block, text: &str, pieces: Vec<Identifier>) {
    match block.role.strip_prefix('H') {
        _ if block.role.is_empty() => {}
        None => tree.push(group(Tag::P, pieces)),
        Some(level) => {
            let level = level.parse().expect("H and a number");
            tree.push(group(Tag::Hn(level, Some(text.to_owned())), pieces));
        }
    }
}

/// Draws lines, each as a piece of its own, and names the pieces.
fn draw(
    fonts: &Fonts,
    surface: &mut Surface<'_>,
    layout: &Layout<()>,
    text: &str,
    (x, y): (f32, f32),
    is_decoration: bool,
) -> Vec<Identifier> {
    let tag = match is_decoration {
        true => ContentTag::Artifact(Artifact::default()),
        false => ContentTag::Span(SpanTag::empty()),
    };
    let mut pieces = Vec::new();
    for line in layout.lines() {
        pieces.push(surface.start_tagged(tag));
        for item in line.items() {
            let PositionedLayoutItem::GlyphRun(run) = item else { continue };
            let font = fonts.faces[&run.run().font().data.id()].clone();
            let start = Point::from_xy(x + run.offset(), y + run.baseline());
            surface.draw_glyphs(start, &glyphs_of(&run), font, text, run.run().font_size(), false);
        }
        surface.end_tagged();
    }
    if is_decoration { Vec::new() } else { pieces }
}

fn group(tag: impl Into<TagKind>, pieces: Vec<Identifier>) -> TagGroup {
    TagGroup::with_children(tag, pieces.into_iter().map(Into::into).collect())
}

/// The glyphs of a run, measured in its size. A ligature carries the text of all its letters.
fn glyphs_of(run: &parley::layout::GlyphRun<'_, ()>) -> Vec<KrillaGlyph> {
    let size = run.run().font_size();
    let mut glyphs: Vec<KrillaGlyph> = Vec::new();
    for cluster in run.run().visual_clusters() {
        if cluster.is_ligature_continuation() {
            if let Some(last) = glyphs.last_mut() {
                last.text_range.end = cluster.text_range().end;
            }
            continue;
        }
        glyphs.extend(cluster.glyphs().map(|glyph| {
            let [advance, x, y] = [glyph.advance, glyph.x, glyph.y].map(|length| length / size);
            KrillaGlyph::new(GlyphId::new(glyph.id), advance, x, y, 0.0, cluster.text_range(), None)
        }));
    }
    glyphs
}
