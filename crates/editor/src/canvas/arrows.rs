//! Step sizes of the arrow keys.

use chalkcourse_geometry::{DVec2, Length, dvec2};
use egui::{Key, Modifiers, Ui};

/// The displacement by arrow keys in this frame on the screen, to the right and up: 1 in, with Shift 1 ft, with Alt
/// 1/16 in.
pub(super) fn nudge(ui: &Ui) -> Option<DVec2> {
    let steps = [
        (Modifiers::SHIFT, Length::from_feet(1.0)),
        (Modifiers::ALT, Length::from_inches(1.0 / 16.0)),
        (Modifiers::NONE, Length::from_inches(1.0)),
    ];
    arrows(ui, &steps, true)
}

/// The displacement by arrow keys in this frame on the screen, to the right and up, metres, by modifiers: combinations
/// with more modifiers come first. `None` if none was pressed; Left and Right only with `sideways`.
pub(super) fn arrows(ui: &Ui, steps: &[(Modifiers, Length)], sideways: bool) -> Option<DVec2> {
    let keys = [
        (Key::ArrowLeft, dvec2(-1.0, 0.0)),
        (Key::ArrowRight, dvec2(1.0, 0.0)),
        (Key::ArrowUp, dvec2(0.0, 1.0)),
        (Key::ArrowDown, dvec2(0.0, -1.0)),
    ];
    ui.input_mut(|input| {
        let mut by = DVec2::ZERO;
        for &(modifiers, length) in steps {
            for (key, toward) in keys.into_iter().filter(|(_, toward)| sideways || toward.x == 0.0) {
                by += toward * length.metres() * input.count_and_consume_key(modifiers, key) as f64;
            }
        }
        (by != DVec2::ZERO).then_some(by)
    })
}
