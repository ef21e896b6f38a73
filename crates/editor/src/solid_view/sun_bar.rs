//! The controls below the picture: date and time, before and after, and saving the picture.

use super::{SolidView, SunDial};
use crate::action::Actions;
use crate::commands::Command;
use crate::{Document, text, theme};
use egui::{Button, DragValue, RichText, Slider, Ui};

/// `high` is the total height of the picture and this bar, points.
pub(super) fn sun_bar(
    ui: &mut Ui,
    document: &Document,
    view: &mut SolidView,
    high: f32,
    actions: &mut Actions,
) {
    // In a low pane the rows scroll horizontally, so that the house keeps its space.
    if high < LOW {
        let along = egui::ScrollArea::horizontal().id_salt("sun bar").auto_shrink([false, true]);
        along.show(ui, |ui| {
            ui.horizontal(|ui| sun(ui, document, view));
            ui.horizontal(|ui| press(ui, view, actions));
        });
        return;
    }
    if ui.available_width() < NARROW {
        narrow_sun(ui, document, view);
    } else {
        ui.horizontal(|ui| sun(ui, document, view));
    }
    ui.horizontal_wrapped(|ui| press(ui, view, actions));
}

/// Below this height a pane has no room for more than two rows, points.
const LOW: f32 = 420.0;
/// Below this width date and time are on separate rows, points.
const NARROW: f32 = 640.0;

fn press(ui: &mut Ui, view: &mut SolidView, actions: &mut Actions) {
    for (words, turn, up, nearer) in [
        (text::TURN_LEFT.now(), -15.0, 0.0, 1.0),
        (text::TURN_RIGHT.now(), 15.0, 0.0, 1.0),
        (text::EYE_UP.now(), 0.0, 10.0, 1.0),
        (text::EYE_DOWN.now(), 0.0, -10.0, 1.0),
        (text::NEARER.now(), 0.0, 0.0, 1.25),
        (text::FARTHER.now(), 0.0, 0.0, 0.8),
    ] {
        if ui.button(words).clicked() {
            view.eye.camera = view.eye.camera.turned(turn, up).nearer(nearer);
        }
    }
    ui.separator();
    before_after(ui, view);
    ui.separator();
    for command in [Command::SavePicture, Command::ShowHome] {
        if ui.button(command.title()).on_hover_text(command.tip(ui.ctx())).clicked() {
            actions.push(command.action());
        }
    }
}

/// With the array and without.
pub(crate) fn before_after(ui: &mut Ui, view: &mut SolidView) {
    for (words, before) in [(text::BEFORE.now(), true), (text::AFTER.now(), false)] {
        let button = Button::selectable(view.before == before, words);
        if ui.add(button).on_hover_text(text::BEFORE_HELP.now()).clicked() {
            view.before = before;
        }
    }
}

/// Date and time in a row, and the sun on that day.
fn sun(ui: &mut Ui, document: &Document, view: &mut SolidView) {
    if no_place(ui, document) {
        return;
    }
    ui.spacing_mut().slider_width = (ui.available_width() * 0.17).clamp(90.0, 260.0);
    day(ui, view);
    hour(ui, document, view);
    told(ui, document, view);
}

/// The same on separate rows.
fn narrow_sun(ui: &mut Ui, document: &Document, view: &mut SolidView) {
    if no_place(ui, document) {
        return;
    }
    ui.spacing_mut().slider_width = (ui.available_width() * 0.4).clamp(60.0, 160.0);
    ui.horizontal(|ui| day(ui, view));
    ui.horizontal_wrapped(|ui| hour(ui, document, view));
    told(ui, document, view);
}

fn no_place(ui: &mut Ui, document: &Document) -> bool {
    let nowhere = SunDial::spot(document).is_none();
    if nowhere {
        let words = RichText::new(text::NO_PLACE_NO_SUN.now()).color(theme::of(ui).quiet);
        ui.add(egui::Label::new(words).wrap());
    }
    nowhere
}

fn day(ui: &mut Ui, view: &mut SolidView) {
    let year = view.sun.date().year();
    let label = ui.label(text::DAY.now());
    let shown = move |day: f64, _: std::ops::RangeInclusive<usize>| {
        text::day(chalkcourse_sunlight::Date::of_year(year, day as u32))
    };
    let day = Slider::new(&mut view.sun.day, 1..=365).custom_formatter(shown);
    if ui.add(day).labelled_by(label.id).on_hover_text(text::DAY_HELP.now()).changed() {
        view.eye.mark_moving(ui.ctx());
    }
}

fn hour(ui: &mut Ui, document: &Document, view: &mut SolidView) {
    let label = ui.label(text::HOUR.now());
    let hour = Slider::new(&mut view.sun.hour, 0.0..=24.0).step_by(0.25);
    let hour = hour.custom_formatter(|hour, _| text::clock(hour)).custom_parser(text::parse_clock);
    if ui.add(hour).labelled_by(label.id).on_hover_text(text::HOUR_HELP.now()).changed() {
        view.eye.mark_moving(ui.ctx());
    }
    let mut offset = view.sun.offset(document);
    let label = ui.label(text::UTC.now());
    let field = DragValue::new(&mut offset).range(-12.0..=14.0).speed(0.05).max_decimals(2);
    if ui.add(field).labelled_by(label.id).on_hover_text(text::UTC_HELP.now()).changed() {
        view.sun.utc_offset = Some(offset);
    }
}

fn told(ui: &mut Ui, document: &Document, view: &SolidView) {
    if let (Some(spot), Some(day)) = (SunDial::spot(document), view.sun.sun_day(document)) {
        let words = RichText::new(text::sun_day(&day)).color(theme::of(ui).quiet);
        ui.add(egui::Label::new(words).truncate()).on_hover_text(text::spot(&spot));
    }
}
