//! Fields for typed values: every notation of a length or pitch is accepted, and errors are shown below the field.

use crate::theme;
use chalkcourse_geometry::{Azimuth, Length, Pitch, Units};
use egui::{Align, Align2, Id, Key, RichText, TextEdit, Ui};

/// Selects all text of a field, so that typing replaces it.
pub(crate) fn mark_all(ctx: &egui::Context, id: egui::Id, words: &str) {
    use egui::text::{CCursor, CCursorRange};
    let mut state = egui::text_edit::TextEditState::load(ctx, id).unwrap_or_default();
    let all = CCursorRange::two(CCursor::new(0), CCursor::new(words.chars().count()));
    state.cursor.set_char_range(Some(all));
    state.store(ctx, id);
}

/// Width of the label of a field.
const LABEL: f32 = 112.0;

/// A row of a form: label and field. The label is also the accessible name of the field.
pub(crate) fn row<R>(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui, Id) -> R) -> R {
    row_at(ui, LABEL, label, add)
}

/// [`row`] with a given label width.
pub(crate) fn row_at<R>(ui: &mut Ui, room: f32, label: &str, add: impl FnOnce(&mut Ui, Id) -> R) -> R {
    ui.horizontal(|ui| {
        let height = ui.spacing().interact_size.y;
        let words = ui
            .allocate_ui_with_layout(
                egui::vec2(room, height),
                egui::Layout::left_to_right(egui::Align::Center),
                |ui| {
                    ui.set_min_width(room);
                    ui.label(RichText::new(label).color(theme::of(ui).quiet))
                },
            )
            .inner;
        add(ui, words.id)
    })
    .inner
}

/// A field for a value typed as text. Returns the new value when editing ends by Enter or by losing the focus; Esc
/// reverts it.
pub(crate) fn parsed<T, E: std::fmt::Display>(
    ui: &mut Ui,
    label: &str,
    shown: &str,
    help: &str,
    parse: impl Fn(&str) -> Result<T, E>,
) -> Option<T> {
    parsed_at(ui, LABEL, label, shown, help, parse)
}

/// [`parsed`] with a given label width.
pub(crate) fn parsed_at<T, E: std::fmt::Display>(
    ui: &mut Ui,
    room: f32,
    label: &str,
    shown: &str,
    help: &str,
    parse: impl Fn(&str) -> Result<T, E>,
) -> Option<T> {
    typed(ui, label, shown, parse, true, |ui, id, text| {
        let response = row_at(ui, room, label, |ui, words| {
            let width = (ui.available_width() - 2.0).max(40.0);
            ui.add(
                TextEdit::singleline(text)
                    .id(id)
                    .align(egui::Align2::LEFT_CENTER)
                    .desired_width(width)
                    .margin(egui::Margin::symmetric(6, 4)),
            )
            .labelled_by(words)
        });
        if help.is_empty() { response } else { response.on_hover_text(help) }
    })
}

/// [`parsed`] as a table cell: only the field, over the whole cell. An error is shown while the pointer is on it.
pub(crate) fn cell<T, E: std::fmt::Display>(
    ui: &mut Ui,
    label: &str,
    shown: &str,
    help: &str,
    align: Align,
    parse: impl Fn(&str) -> Result<T, E>,
) -> Option<T> {
    let stop = theme::of(ui).stop;
    typed(ui, label, shown, &parse, false, |ui, id, text| {
        let wrong = (text.trim() != shown.trim()).then(|| parse(text).err()).flatten();
        let width = (ui.available_width() - 2.0).max(30.0);
        let mut field = TextEdit::singleline(text)
            .id(id)
            .desired_width(width)
            .align(Align2([align, Align::Center]))
            // In the low rows of a long table the field is as high as its row.
            .margin(egui::Margin::symmetric(4, if ui.spacing().interact_size.y < 20.0 { 0 } else { 3 }));
        if wrong.is_some() {
            field = field.text_color(stop);
        }
        let response = ui.add(field).accessible_name(label.to_owned());
        if response.double_clicked() {
            // Not just the digits on one side of the point.
            mark_all(ui.ctx(), id, text);
        }
        match wrong {
            Some(wrong) => response.on_hover_text(wrong.to_string()),
            None if help.is_empty() => response,
            None => response.on_hover_text(help),
        }
    })
}

/// A checkbox in a table, without a label. Returns whether it was clicked.
pub(crate) fn tick(ui: &mut Ui, on: bool, enabled: bool, label: &str, help: &str) -> bool {
    let mut shown = on;
    let tick = ui.add_enabled(enabled, egui::Checkbox::without_text(&mut shown));
    tick.widget_info(|| egui::WidgetInfo::selected(egui::Role::CheckBox, enabled, on, label));
    tick.on_hover_text(help).clicked()
}

/// A text value that is stored while it is edited, and returned at the end. If it can't be parsed, the error says how
/// to write it; until then text and focus stay in the field, and Esc reverts it.
fn typed<T, E: std::fmt::Display>(
    ui: &mut Ui,
    label: &str,
    shown: &str,
    parse: impl Fn(&str) -> Result<T, E>,
    tell: bool,
    add: impl FnOnce(&mut Ui, Id, &mut String) -> egui::Response,
) -> Option<T> {
    let id = ui.make_persistent_id(("field", label));
    let draft: Option<String> = ui.data(|data| data.get_temp(id));
    let mut text = draft.clone().unwrap_or_else(|| shown.to_owned());
    let response = add(ui, id, &mut text);
    if response.changed() {
        ui.data_mut(|data| data.insert_temp(id, text.clone()));
    }
    let touched = draft.is_some() || response.changed();
    if !touched {
        return None;
    }
    if response.lost_focus() && ui.input(|input| input.key_pressed(Key::Escape)) {
        ui.data_mut(|data| data.remove_temp::<String>(id));
        return None;
    }
    let forget = |ui: &Ui| ui.data_mut(|data| data.remove_temp::<String>(id));
    match parse(&text) {
        Ok(value) if response.lost_focus() => {
            forget(ui);
            (text.trim() != shown.trim()).then_some(value)
        }
        Ok(_) => None,
        Err(error) => {
            let refused = id.with("refused");
            if response.changed() {
                ui.data_mut(|data| data.remove_temp::<bool>(refused));
            }
            // If it was left by Enter or Tab it keeps the focus and the text; otherwise what was clicked has the focus.
            let by_key = ui.input(|input| input.key_pressed(Key::Enter) || input.key_pressed(Key::Tab));
            if response.lost_focus() && by_key && text.trim() != shown.trim() {
                response.request_focus();
                ui.data_mut(|data| data.insert_temp(refused, true));
            }
            if !tell && ui.data(|data| data.get_temp::<bool>(refused).unwrap_or(false)) {
                response.show_tooltip_text(error.to_string());
            }
            // An empty field that is still being edited is not an error yet.
            if tell && !(response.has_focus() && text.trim().is_empty()) {
                wrong(ui, &error.to_string());
            }
            if !response.has_focus() && text.trim() == shown.trim() {
                forget(ui);
                ui.data_mut(|data| data.remove_temp::<bool>(refused));
            }
            None
        }
    }
}

/// An error message in place.
pub(crate) fn wrong(ui: &mut Ui, words: &str) {
    ui.label(RichText::new(words).small().color(theme::of(ui).stop));
}

/// A field for a length; `small` shows only inches.
pub(crate) fn length(
    ui: &mut Ui,
    label: &str,
    value: Length,
    units: Units,
    small: bool,
    help: &str,
) -> Option<Length> {
    let shown = if small { value.show_small(units) } else { value.show(units) };
    parsed(ui, label, &shown, help, |text| Length::parse(text, units))
}

/// A field for a pitch.
pub(crate) fn pitch(ui: &mut Ui, label: &str, value: Pitch, help: &str) -> Option<Pitch> {
    parsed(ui, label, &value.to_string(), help, Pitch::parse)
}

/// A field for a direction: degrees clockwise from north, or one of the eight compass points.
pub(crate) fn azimuth(ui: &mut Ui, label: &str, value: Azimuth, help: &str) -> Option<Azimuth> {
    azimuth_at(ui, LABEL, label, value, help)
}

/// [`azimuth`] with a given label width.
pub(crate) fn azimuth_at(ui: &mut Ui, room: f32, label: &str, value: Azimuth, help: &str) -> Option<Azimuth> {
    parsed_at(ui, room, label, &value.to_string(), help, parse_azimuth)
}

/// Parses a direction.
pub(crate) fn parse_azimuth(text: &str) -> Result<Azimuth, String> {
    let clean = text.trim().trim_end_matches(|c: char| c.is_alphabetic()).trim().trim_end_matches('°').trim();
    if clean.is_empty() {
        let winds = [0.0, 45.0, 90.0, 135.0, 180.0, 225.0, 270.0, 315.0].map(Azimuth::from_degrees);
        return winds
            .into_iter()
            .find(|azimuth| azimuth.wind().eq_ignore_ascii_case(text.trim()))
            .ok_or_else(|| crate::text::bad_direction(text));
    }
    match clean.parse::<f64>() {
        Ok(degrees) if degrees.is_finite() => Ok(Azimuth::from_degrees(degrees)),
        _ => Err(crate::text::bad_direction(text)),
    }
}

/// A field for a count from 1.
pub(crate) fn count(ui: &mut Ui, label: &str, value: u32, help: &str) -> Option<u32> {
    parsed(ui, label, &value.to_string(), help, |text| match text.trim().parse::<u32>() {
        Ok(number) if (1..=1_000).contains(&number) => Ok(number),
        _ => Err(crate::text::BAD_COUNT.now()),
    })
}

/// A field for a name that may not be empty.
pub(crate) fn name(ui: &mut Ui, label: &str, value: &str) -> Option<String> {
    parsed(ui, label, value, crate::text::help_of(label), |text| match text.trim() {
        "" => Err(crate::text::NO_NAME.now()),
        name => Ok(name.to_owned()),
    })
}

/// A field for any text.
pub(crate) fn words(ui: &mut Ui, label: &str, value: &str) -> Option<String> {
    parsed(ui, label, value, crate::text::help_of(label), |text| Ok::<_, String>(text.trim().to_owned()))
}

/// A multi-line field, over the whole width below its label.
pub(crate) fn sentences(ui: &mut Ui, label: &str, value: &str) -> Option<String> {
    let id = ui.make_persistent_id(("field", label));
    let mut text: String = ui.data(|data| data.get_temp(id)).unwrap_or_else(|| value.to_owned());
    let words = ui.label(RichText::new(label).color(theme::of(ui).quiet));
    let field =
        TextEdit::multiline(&mut text).id(id).desired_rows(2).desired_width(ui.available_width() - 4.0);
    let response = ui.add(field.margin(egui::Margin::symmetric(6, 4))).labelled_by(words.id);
    if response.changed() {
        ui.data_mut(|data| data.insert_temp(id, text.clone()));
    }
    if !response.lost_focus() {
        return None;
    }
    ui.data_mut(|data| data.remove_temp::<String>(id));
    let kept = !ui.input(|input| input.key_pressed(Key::Escape)) && text.trim() != value.trim();
    kept.then(|| text.trim().to_owned())
}

/// A choice between a few options. Returns the new choice, if changed.
pub(crate) fn choice<T: Copy + PartialEq>(
    ui: &mut Ui,
    label: &str,
    value: T,
    choices: &[(T, &str)],
) -> Option<T> {
    choice_at(ui, LABEL, label, value, choices)
}

/// [`choice`] with a given label width.
pub(crate) fn choice_at<T: Copy + PartialEq>(
    ui: &mut Ui,
    room: f32,
    label: &str,
    value: T,
    choices: &[(T, &str)],
) -> Option<T> {
    let now = choices.iter().find(|(choice, _)| *choice == value).map_or("", |(_, name)| *name);
    let mut chosen = None;
    row_at(ui, room, label, |ui, words| {
        let width = (ui.available_width() - 2.0).max(60.0);
        let shown = egui::ComboBox::from_id_salt(label)
            .selected_text(now)
            // A long name is cut, and does not widen the panel: the drawing beside it must not jump.
            .truncate()
            .width(width)
            // Show short lists completely: options that have to be scrolled to are not found.
            .height(400.0)
            .show_ui(ui, |ui| {
                for (choice, name) in choices {
                    if ui.selectable_label(*choice == value, *name).clicked() && *choice != value {
                        chosen = Some(*choice);
                    }
                }
            })
            .response
            .labelled_by(words);
        let help = crate::text::help_of(label);
        if !help.is_empty() {
            shown.on_hover_text(help);
        }
    });
    chosen
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn directions_are_read_in_every_form() {
        for (text, degrees) in
            [("180", 180.0), ("180° S", 180.0), ("sw", 225.0), ("-90", 270.0), (" 12.5 ° ", 12.5)]
        {
            assert_eq!(parse_azimuth(text).unwrap().degrees(), degrees, "{text}");
        }
        for text in ["", "up", "nan", "1e999"] {
            assert!(parse_azimuth(text).is_err(), "{text}");
        }
    }
}
