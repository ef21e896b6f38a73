use crate::text;
use crate::widgets::fields;
use chalkcourse_geometry::{Length, Units};
use egui::{RichText, Ui};

/// The heading of a section of a form.
pub(super) fn part_of_form(ui: &mut Ui, words: &str) {
    ui.add_space(6.0);
    ui.label(RichText::new(words).strong());
}

pub(super) fn length_field(
    ui: &mut Ui,
    label: &str,
    help: &str,
    length: &mut Option<Length>,
    units: Units,
    least_metres: f64,
) {
    let shown = length.map(|length| length.show(units)).unwrap_or_default();
    let parse = |typed: &str| -> Result<Option<Length>, String> {
        if typed.trim().is_empty() {
            return Ok(None);
        }
        let length = Length::parse(typed, units).map_err(|error| error.to_string())?;
        if (least_metres..3_048.0).contains(&length.metres()) {
            Ok(Some(length))
        } else {
            Err(text::BAD_LENGTH_RANGE.now().to_owned())
        }
    };
    if let Some(typed) = fields::parsed(ui, label, &shown, help, parse) {
        *length = typed;
    }
}
