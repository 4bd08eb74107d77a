//! Two short texts of a card side by side.

use super::breaks::shape_running;
use super::page::Role;
use super::scale::Type;
use super::strip::{Column, Seat, placed};
use super::wrap::Wrap;
use crate::prose::Run;

/// Texts side by side are no taller than so many lines.
const MOST_PAIRED: f32 = 9.0;

/// And no narrower than so many sizes of their letters: about seventeen letters.
const LEAST_PAIRED: f32 = 8.6;

impl Column<'_, '_> {
    /// Two short texts side by side, each under its label, as one piece: the left is read before the
    /// right. Longer ones stand one below the other, so that they can go on elsewhere.
    pub fn pair(
        &mut self,
        left: (&str, &[Run]),
        right: (&str, &[Run]),
        (kind, label_kind): (Type, Type),
    ) {
        let gutter = 10.0;
        let half = (self.width - gutter) / 2.0;
        let sides = [(left, 0.0), (right, half + gutter)];
        if half < kind.size * LEAST_PAIRED {
            return self.below_each_other(sides.map(|(side, _)| side), (kind, label_kind));
        }
        let aired = self.shaper.air.let_in(kind);
        let mut items = Vec::new();
        let mut tallest = 0.0_f32;
        for ((label, runs), x) in sides {
            let mut y = 0.0;
            let label = [Run::bold(label)];
            for (role, runs, kind) in
                [(Role::Heading(2), &label[..], label_kind), (Role::Paragraph, runs, aired)]
            {
                let (key, leading) = (self.shaper.next_key(), self.shaper.leading(kind));
                let wrap = Wrap::plain(role, key, runs);
                for line in shape_running(self.shaper, runs, kind, half) {
                    let words = placed(line, x).map(|item| item.moved(0.0, y)).collect();
                    if !self.shaper.is_trial() {
                        items.push(wrap.around(None, words, self.shaper));
                    }
                    y += leading;
                }
            }
            tallest = tallest.max(y);
        }
        if tallest > self.tallest.min(aired.leading * MOST_PAIRED) {
            self.below_each_other(sides.map(|(side, _)| side), (kind, label_kind));
        } else {
            self.drawing(tallest, items);
        }
    }

    /// Texts under their labels, which may go on elsewhere.
    fn below_each_other(&mut self, texts: [(&str, &[Run]); 2], (kind, label_kind): (Type, Type)) {
        for (label, runs) in texts {
            self.label(label, label_kind);
            self.words(runs, kind, Seat::default());
            self.gap(kind.size * 0.4);
        }
    }
}
