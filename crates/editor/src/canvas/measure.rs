//! Dimension lines on the drawing.

use super::brush::Brush;
use chalkcourse_labels::Weight;
use egui::{Color32, Pos2, Stroke};

/// A dimension: a thin line with ticks at its ends; returns false if it is too short to be drawn.
pub(super) fn measure(brush: &Brush, [a, b]: [Pos2; 2], color: Color32, thing: Option<u32>) -> bool {
    let along = b - a;
    if along.length() < 6.0 {
        return false;
    }
    let stroke = Stroke::new(1.0, color);
    brush.painter.line_segment([a, b], stroke);
    brush.keep_off_line(a, b, 1.0, Weight::Solid, thing);
    let tick = along.normalized().rot90() * 5.0;
    for end in [a, b] {
        brush.painter.line_segment([end - tick, end + tick], stroke);
    }
    true
}
