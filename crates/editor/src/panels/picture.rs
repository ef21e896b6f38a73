use super::{heading, quiet};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::State;
use crate::widgets::{LittleButton, fields};
use crate::{Document, text, theme};
use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_job::{Crop, Edit, Underlay};
use chalkcourse_words::Say;
use egui::{RichText, Ui};

/// The form of the picture under the plan, with all its numbers.
pub(super) fn picture_form(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    heading(ui, text::PICTURE.now());
    let Some(underlay) = &document.job().underlay else {
        ui.label(text::NO_PICTURE.now());
        if ui.button(text::CHOOSE_PICTURE.now()).clicked() {
            actions.push(Command::LayPicture.action());
        }
        if state.pictures.is_reading() {
            quiet(ui, text::READING_PICTURE.now());
        }
        return;
    };
    let put = |next: Underlay, label: Say| Action::Edit(label.into(), Edit::SetUnderlay(Some(next)));
    let units = document.job().units;
    ui.add(egui::Label::new(text::picture_name(&underlay.path)).truncate()).on_hover_text(&underlay.path);
    quiet(ui, &text::picture_size(underlay.size(), underlay.pixels, units));
    if state.pictures.is_reading() {
        quiet(ui, text::READING_PICTURE.now());
    }
    if let Some(words) = state.pictures.trouble(underlay) {
        ui.label(RichText::new(words).color(theme::of(ui).caution));
        ui.horizontal(|ui| {
            if let Some(changed) = state.pictures.changed(underlay)
                && ui.button(text::TAKE_AS_IT_IS.now()).clicked()
            {
                actions.push(put(changed, text::CHANGE_PICTURE));
            }
            if ui.button(text::LOOK_AGAIN.now()).clicked() {
                actions.push(Action::ReadPictureAgain);
            }
        });
    }
    let wide = Length::from_metres(underlay.size().x);
    if let Some(length) =
        fields::length(ui, text::WIDE_ON_GROUND.now(), wide, units, false, text::WIDE_HELP.now())
    {
        let metres_per_pixel = length.metres() / f64::from(underlay.pixels[0].max(1));
        actions.push(put(Underlay { metres_per_pixel, ..underlay.clone() }, text::SCALE_PICTURE));
    }
    let turn = format!("{}°", (underlay.turn * 100.0).round() / 100.0);
    if let Some(turn) =
        fields::parsed(ui, text::PICTURE_TURN.now(), &turn, text::PICTURE_TURN_HELP.now(), degrees)
    {
        actions.push(put(Underlay { turn, ..underlay.clone() }, text::TURN_PICTURE));
    }
    let (east, north) = (Length::from_metres(underlay.at.x), Length::from_metres(underlay.at.y));
    let mut moved = |at: DVec2| actions.push(put(Underlay { at, ..underlay.clone() }, text::MOVE_PICTURE));
    if let Some(east) =
        fields::length(ui, text::EAST.now(), east, units, false, text::PICTURE_MIDDLE_HELP.now())
    {
        moved(dvec2(east.metres(), underlay.at.y));
    }
    if let Some(north) =
        fields::length(ui, text::NORTHWARD.now(), north, units, false, text::PICTURE_MIDDLE_HELP.now())
    {
        moved(dvec2(underlay.at.x, north.metres()));
    }
    if let Some(dim) = percent(ui, text::PICTURE_DIM.now(), underlay.dim) {
        actions.push(put(Underlay { dim, ..underlay.clone() }, text::DIM_PICTURE));
    }
    dim_by_hand(ui, underlay, actions);
    crop(ui, underlay, actions);
    ui.add_space(theme::GAP);
    ui.horizontal_wrapped(|ui| {
        if ui.button(text::CHOOSE_ANOTHER.now()).clicked() {
            actions.push(Command::LayPicture.action());
        }
        if ui.button(text::TAKE_AWAY.now()).clicked() {
            actions.push(Action::Edit(text::REMOVE_PICTURE.into(), Edit::SetUnderlay(None)));
        }
    });
}

/// A slider for fading; one drag is one step.
fn dim_by_hand(ui: &mut Ui, underlay: &Underlay, actions: &mut Actions) {
    let mut dim = underlay.dim;
    ui.spacing_mut().slider_width = (ui.available_width() - 8.0).max(80.0);
    let slider = ui.add(egui::Slider::new(&mut dim, 0.0..=1.0).show_value(false));
    slider.widget_info(|| egui::WidgetInfo::slider(true, dim * 100.0, text::PICTURE_DIM_BY_HAND.now()));
    let next = Edit::SetUnderlay(Some(Underlay { dim: (dim * 100.0).round() / 100.0, ..underlay.clone() }));
    if slider.changed() {
        let label = text::DIM_PICTURE.into();
        actions.push(if slider.dragged() { Action::Preview(label, next) } else { Action::Edit(label, next) });
    }
    if slider.drag_stopped() {
        actions.push(Action::Commit);
    }
}

fn crop(ui: &mut Ui, underlay: &Underlay, actions: &mut Actions) {
    let crop = underlay.crop;
    let put = |crop: Crop| {
        Action::Edit(
            text::CROP_PICTURE.into(),
            Edit::SetUnderlay(Some(Underlay { crop, ..underlay.clone() })),
        )
    };
    ui.horizontal(|ui| {
        quiet(ui, text::PICTURE_CROP.now());
        if !crop.is_whole() && ui.little_button(text::SHOW_WHOLE.now()).clicked() {
            actions.push(put(Crop::default()));
        }
    });
    let cut = [crop.left, crop.top, 1.0 - crop.right, 1.0 - crop.bottom];
    for (index, (words, part)) in text::CROP_SIDES.into_iter().zip(cut).enumerate() {
        let Some(part) = percent(ui, words.now(), part) else { continue };
        let next = match index {
            0 => Crop { left: part, ..crop },
            1 => Crop { top: part, ..crop },
            2 => Crop { right: 1.0 - part, ..crop },
            _ => Crop { bottom: 1.0 - part, ..crop },
        };
        if next.left < next.right && next.top < next.bottom {
            actions.push(put(next));
        } else {
            actions.push(Action::Say(text::CROP_TOO_MUCH.now().to_owned()));
        }
    }
}

/// A field for a fraction, in percent.
fn percent(ui: &mut Ui, label: &str, part: f64) -> Option<f64> {
    let shown = format!("{}%", (part * 1000.0).round() / 10.0);
    fields::parsed(ui, label, &shown, "", |typed| {
        match typed.trim().trim_end_matches('%').trim().parse::<f64>() {
            Ok(percent) if (0.0..=100.0).contains(&percent) => Ok(percent / 100.0),
            _ => Err(text::BAD_PERCENT.now()),
        }
    })
}

fn degrees(typed: &str) -> Result<f64, &'static str> {
    match typed.trim().trim_end_matches('°').trim().parse::<f64>() {
        Ok(degrees) if degrees.is_finite() => Ok(degrees.rem_euclid(360.0)),
        _ => Err(text::BAD_TURN.now()),
    }
}
