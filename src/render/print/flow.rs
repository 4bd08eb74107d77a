//! Strips → frames: as many as they need, so that nothing is ever cut off.

use super::page::Item;
use super::strip::Strip;

/// Strips placed in one frame, and how much of its height they take.
#[derive(Clone, Debug, Default)]
pub struct Frame {
    pub items: Vec<Item>,
    pub used: f32,
}

/// Places strips one below another. `height_of` tells the height of each frame by its number from 0.
/// What must stay with the next strip moves on with it, unless that would leave a frame empty.
pub fn flow_strips(strips: Vec<Strip>, height_of: impl Fn(usize) -> f32) -> Vec<Frame> {
    let mut frames: Vec<Vec<Strip>> = vec![Vec::new()];
    let mut used = 0.0;
    for strip in strips {
        let limit = height_of(frames.len() - 1);
        let is_empty = frames.last().is_none_or(Vec::is_empty);
        let before = if is_empty { 0.0 } else { strip.space_before };
        if !is_empty && used + before + strip.height > limit {
            let carried = carry_over(frames.last_mut());
            used = height_of_strips(&carried);
            frames.push(carried);
        }
        let is_first = frames.last().is_none_or(Vec::is_empty);
        used += if is_first { 0.0 } else { strip.space_before } + strip.height;
        if let Some(frame) = frames.last_mut() {
            frame.push(strip);
        }
    }
    frames.into_iter().map(place).collect()
}

/// The strips at the end of a frame that must not be its last.
fn carry_over(frame: Option<&mut Vec<Strip>>) -> Vec<Strip> {
    let Some(frame) = frame else { return Vec::new() };
    let kept = frame.iter().rposition(|strip| !strip.keeps_next).map_or(0, |last| last + 1);
    if kept == 0 { Vec::new() } else { frame.split_off(kept) }
}

fn height_of_strips(strips: &[Strip]) -> f32 {
    let inner: f32 = strips.iter().skip(1).map(|strip| strip.space_before).sum();
    inner + strips.iter().map(|strip| strip.height).sum::<f32>()
}

fn place(strips: Vec<Strip>) -> Frame {
    let mut frame = Frame::default();
    for (index, strip) in strips.into_iter().enumerate() {
        if index > 0 {
            frame.used += strip.space_before;
        }
        let top = frame.used;
        frame.items.extend(strip.items.into_iter().map(|item| item.moved(0.0, top)));
        frame.used += strip.height;
    }
    frame
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strip(height: f32, space_before: f32, keeps_next: bool) -> Strip {
        let items = vec![Item::line((0.0, 0.0), (1.0, 0.0), 1.0)];
        Strip { height, space_before, keeps_next, items }
    }

    #[test]
    fn nothing_is_lost_and_nothing_overflows() {
        let strips: Vec<Strip> = (0..57_u8)
            .map(|i| strip(10.0 + f32::from(i % 4), 3.0, i % 5 == 0))
            .collect();
        let frames = flow_strips(strips, |_| 60.0);
        assert_eq!(frames.iter().map(|frame| frame.items.len()).sum::<usize>(), 57);
        assert!(frames.iter().all(|frame| frame.used <= 60.0 && frame.used > 0.0));
    }

    #[test]
    fn a_heading_moves_on_with_what_it_heads() {
        let strips = vec![strip(40.0, 0.0, false), strip(15.0, 0.0, true), strip(15.0, 0.0, false)];
        let frames = flow_strips(strips, |_| 60.0);
        assert_eq!(frames.iter().map(|frame| frame.items.len()).collect::<Vec<_>>(), [1, 2]);
    }

    #[test]
    fn a_strip_taller_than_any_frame_still_gets_one() {
        let frames = flow_strips(vec![strip(90.0, 0.0, true), strip(10.0, 0.0, false)], |_| 60.0);
        assert_eq!(frames.len(), 2);
    }
}
