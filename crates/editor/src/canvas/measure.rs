//! A measure on the drawing: a thin line with its length in the middle.

use super::brush::Brush;
use crate::theme;
use egui::{Align2, Color32, Pos2, Rect, Stroke, Vec2};

/// A dimension: a thin line with ticks at its ends and words in its middle.
pub(super) fn measure(brush: &Brush, a: Pos2, b: Pos2, words: &str, color: Color32) {
    let along = b - a;
    if along.length() < 6.0 {
        return;
    }
    let stroke = Stroke::new(1.0, color);
    brush.painter.line_segment([a, b], stroke);
    let tick = along.normalized().rot90() * 5.0;
    for end in [a, b] {
        brush.painter.line_segment([end - tick, end + tick], stroke);
    }
    if words.is_empty() {
        return;
    }
    let (at, anchor) = place_of_words(a, b);
    brush.label(at, anchor, words, theme::size::SMALL, color);
}

/// Where the words of a dimension stand, beside a line that is too short for them.
fn place_of_words(a: Pos2, b: Pos2) -> (Pos2, Align2) {
    let along = b - a;
    let middle = a + along * 0.5;
    let across = along.x.abs() > along.y.abs();
    match (across, along.length()) {
        (true, ..80.0) => (middle + Vec2::new(0.0, 10.0), Align2::CENTER_TOP),
        (false, ..34.0) => (middle + Vec2::new(12.0, 0.0), Align2::LEFT_CENTER),
        _ => (middle, Align2::CENTER_CENTER),
    }
}

/// The room that the words of a dimension take on the screen; none where it is too short to be drawn.
pub(super) fn words_of_measure(painter: &egui::Painter, [a, b]: [Pos2; 2], words: &str) -> Option<Rect> {
    if (b - a).length() < 6.0 {
        return None;
    }
    let size =
        painter.layout_no_wrap(words.to_owned(), theme::font(theme::size::SMALL), Color32::WHITE).size();
    let (at, anchor) = place_of_words(a, b);
    Some(anchor.anchor_size(at, size))
}
