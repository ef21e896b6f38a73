//! What is under the picture: the day and the hour, before and after, and the picture as a file.

use super::{SolidView, SunDial};
use crate::action::Actions;
use crate::commands::Command;
use crate::{Document, text, theme};
use egui::{Button, DragValue, RichText, Slider, Ui};

pub(super) fn sun_bar(ui: &mut Ui, document: &Document, view: &mut SolidView, actions: &mut Actions) {
    // Where the pane is narrow the rows are drawn along, so that the house keeps its room.
    egui::ScrollArea::horizontal().id_salt("sun bar").auto_shrink([false, true]).show(ui, |ui| {
        rows(ui, document, view, actions);
    });
}

fn rows(ui: &mut Ui, document: &Document, view: &mut SolidView, actions: &mut Actions) {
    ui.horizontal(|ui| sun(ui, document, view));
    ui.horizontal(|ui| {
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
    });
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

fn sun(ui: &mut Ui, document: &Document, view: &mut SolidView) {
    let p = theme::of(ui);
    let Some(spot) = SunDial::spot(document) else {
        ui.label(RichText::new(text::NO_PLACE_NO_SUN.now()).color(p.quiet));
        return;
    };
    let room = ui.available_width();
    ui.spacing_mut().slider_width = (room * 0.17).clamp(90.0, 260.0);
    let year = view.sun.date().year();
    let label = ui.label(text::DAY.now());
    let shown = move |day: f64, _: std::ops::RangeInclusive<usize>| {
        text::day(chalkcourse_sunlight::Date::of_year(year, day as u32))
    };
    let day = Slider::new(&mut view.sun.day, 1..=365).custom_formatter(shown);
    let moved_day = ui.add(day).labelled_by(label.id).on_hover_text(text::DAY_HELP.now()).changed();
    let label = ui.label(text::HOUR.now());
    let hour = Slider::new(&mut view.sun.hour, 0.0..=24.0).step_by(0.25);
    let hour = hour.custom_formatter(|hour, _| text::clock(hour)).custom_parser(text::parse_clock);
    let moved_hour = ui.add(hour).labelled_by(label.id).on_hover_text(text::HOUR_HELP.now()).changed();
    let mut offset = view.sun.offset(document);
    let label = ui.label(text::UTC.now());
    let field = DragValue::new(&mut offset).range(-12.0..=14.0).speed(0.05).max_decimals(2);
    if ui.add(field).labelled_by(label.id).on_hover_text(text::UTC_HELP.now()).changed() {
        view.sun.utc_offset = Some(offset);
    }
    if moved_day || moved_hour {
        view.eye.stir(ui.ctx());
    }
    if let Some(day) = view.sun.sun_day(document) {
        let words = text::sun_day(&day);
        ui.add(egui::Label::new(RichText::new(words).color(p.quiet)).truncate())
            .on_hover_text(text::spot(&spot));
    }
}
