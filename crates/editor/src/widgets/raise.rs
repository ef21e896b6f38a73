//! Settings for raising a whole roof from the outline of its walls: in the strip over the drawing, and for an imported
//! building.

use super::fields;
use crate::edits::usual_roof;
use crate::text;
use chalkcourse_geometry::{Length, Pitch, Units};
use chalkcourse_plan::{Ends, RaiseAs};
use egui::{Button, Ui};

/// The fields. Returns the new settings, if changed.
pub(crate) fn raise_fields(ui: &mut Ui, how: Option<RaiseAs>, units: Units) -> Option<RaiseAs> {
    let before = how.unwrap_or_else(usual_roof);
    let mut chosen = before;
    let how = &mut chosen;
    for (ends, words) in [(Ends::Gable, text::RAISE_GABLES.now()), (Ends::Hip, text::RAISE_HIPS.now())] {
        if ui.add(Button::selectable(how.ends == ends, words)).clicked() {
            how.ends = ends;
        }
    }
    let height = ui.spacing().interact_size.y;
    let mut field = |width: f32, add: &mut dyn FnMut(&mut Ui)| {
        ui.allocate_ui(egui::vec2(width, height), |ui| add(ui));
    };
    field(94.0, &mut |ui| {
        let shown = how.pitch.to_string();
        if let Some(pitch) =
            fields::parsed_at(ui, 36.0, text::PITCH.now(), &shown, text::PITCH_HELP.now(), Pitch::parse)
        {
            how.pitch = pitch;
        }
    });
    field(116.0, &mut |ui| {
        let parse = |typed: &str| text::at_least_none(Length::parse(typed, units));
        let shown = how.overhang.show_small(units);
        if let Some(overhang) = fields::parsed_at(
            ui,
            64.0,
            text::RAISE_OVERHANG.now(),
            &shown,
            text::RAISE_OVERHANG_HELP.now(),
            parse,
        ) {
            how.overhang = overhang;
        }
    });
    field(98.0, &mut |ui| {
        let parse = |typed: &str| text::at_least_none(Length::parse(typed, units));
        let shown = how.eave.show(units);
        if let Some(eave) =
            fields::parsed_at(ui, 40.0, text::RAISE_WALLS.now(), &shown, text::RAISE_WALLS_HELP.now(), parse)
        {
            how.eave = eave;
        }
    });
    (chosen != before).then_some(chosen)
}
