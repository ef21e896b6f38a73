//! Dimensions of the block that is held: from its four sides to the border of its face. Each can be typed over, and the block
//! moves so that it is true.

use super::Stage;
use super::hit::block_rect;
use super::paint_marks::words_of_measure;
use super::paint_roof::crossings;
use crate::action::{Action, Actions};
use crate::desk::Desk;
use crate::{Document, fields, text, theme};
use chalkcourse_geometry::{DVec2, Length, Polygon, Rect, RoofFace, Units, dvec2};
use chalkcourse_job::{BlockId, Edit};
use egui::{Id, Key, Role, Sense, TextEdit, Ui, WidgetInfo};

/// Which side of the block a dimension belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Toward {
    Left,
    Right,
    Eave,
    Top,
}

/// A dimension that is being typed over.
#[derive(Clone, Debug)]
pub(crate) struct Typing {
    block: BlockId,
    toward: Toward,
    typed: String,
    /// The field has had the keyboard.
    begun: bool,
}

/// The dimensions of a block in the frame of its face, from the border of the face to the block or on from it.
pub(super) fn of_block(face: &RoofFace, bounds: Rect) -> Vec<(Toward, DVec2, DVec2)> {
    let middle = bounds.centre();
    let across = crossings(&face.frame, middle.y);
    let turned: Polygon = face.frame.map(|p| dvec2(p.y, p.x));
    let upright = crossings(&turned, middle.x);
    let before = |list: &[f64], at: f64| list.iter().copied().filter(|x| *x <= at).reduce(f64::max);
    let after = |list: &[f64], at: f64| list.iter().copied().filter(|x| *x >= at).reduce(f64::min);
    // Off the middle, so that the lines don't run through the handles there.
    let beside = middle + bounds.size() * 0.12;
    let along = |from: f64, to: f64| (dvec2(from, beside.y), dvec2(to, beside.y));
    let up = |from: f64, to: f64| (dvec2(beside.x, from), dvec2(beside.x, to));
    let lines = [
        (Toward::Left, before(&across, bounds.min.x).map(|u| along(u, bounds.min.x))),
        (Toward::Right, after(&across, bounds.max.x).map(|u| along(bounds.max.x, u))),
        (Toward::Eave, before(&upright, bounds.min.y).map(|v| up(v, bounds.min.y))),
        (Toward::Top, after(&upright, bounds.max.y).map(|v| up(bounds.max.y, v))),
    ];
    lines.into_iter().filter_map(|(toward, line)| line.map(|(from, to)| (toward, from, to))).collect()
}

/// How far the block must go in the frame of its face, so that a dimension becomes `wanted`.
fn step(toward: Toward, by: f64) -> DVec2 {
    match toward {
        Toward::Left => dvec2(by, 0.0),
        Toward::Right => dvec2(-by, 0.0),
        Toward::Eave => dvec2(0.0, by),
        Toward::Top => dvec2(0.0, -by),
    }
}

/// Lets the dimensions be pressed and typed over.
pub(crate) fn show(ui: &mut Ui, stage: &Stage, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let (job, layout) = (document.job(), &document.plan().layout);
    let held = desk.selection.block().and_then(|id| job.block(id));
    let Some((block, (index, face))) = held.and_then(|block| Some((block, layout.face(block.face)?))) else {
        desk.typing = None;
        return;
    };
    if !stage.space.shows(index) || desk.gesture.is_some() || desk.tool != crate::commands::Tool::Select {
        desk.typing = None;
        return;
    }
    if desk.typing.as_ref().is_some_and(|typing| typing.block != block.id) {
        desk.typing = None;
    }
    let units: Units = job.units;
    for (toward, from, to) in of_block(face, block_rect(job, block)) {
        let length = Length::from_metres(from.distance(to));
        let shown = length.show(units);
        let ends = [from, to].map(|p| stage.space.screen_from_frame(&face.plane, p));
        let Some(rect) = words_of_measure(ui.painter(), ends, &shown) else { continue };
        let id = Id::unique(("dimension", block.id, toward));
        if desk.typing.as_ref().is_some_and(|typing| typing.toward == toward) {
            field(ui, rect, document, desk, (toward, length), actions);
            continue;
        }
        let response = ui.interact(rect.expand(3.0), id, Sense::click());
        response
            .widget_info(|| WidgetInfo::labeled(Role::Button, true, text::dimension_words(toward, &shown)));
        let response = response.on_hover_text(text::TYPE_OVER.now()).on_hover_cursor(egui::CursorIcon::Text);
        if response.clicked() {
            desk.typing = Some(Typing { block: block.id, toward, typed: shown, begun: false });
        }
    }
}

fn field(
    ui: &mut Ui,
    rect: egui::Rect,
    document: &Document,
    desk: &mut Desk,
    (toward, length): (Toward, Length),
    actions: &mut Actions,
) {
    let Some(mut typing) = desk.typing.take() else { return };
    let place = egui::Rect::from_center_size(rect.center(), egui::vec2(112.0, theme::PRESS));
    let id = Id::unique(("dimension typed", toward));
    let response = ui.put(place, TextEdit::singleline(&mut typing.typed).id(id));
    response.widget_info(|| WidgetInfo::labeled(Role::TextInput, true, text::dimension_of(toward)));
    if !typing.begun {
        typing.begun = true;
        response.request_focus();
        fields::mark_all(ui.ctx(), id, &typing.typed);
        desk.typing = Some(typing);
        return;
    }
    let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    if entered {
        match Length::parse(&typing.typed, document.job().units) {
            Ok(wanted) => {
                if let Some(block) = document.job().block(typing.block).filter(|_| wanted != length) {
                    let mut next = block.clone();
                    next.at += step(toward, wanted.metres() - length.metres());
                    let label = text::move_of(&text::block_name(&block.name));
                    actions.push(Action::Edit(label, Edit::PutBlock(next)));
                }
            }
            Err(error) => {
                actions.push(Action::Say(text::sentence(&error.to_string())));
                typing.begun = false;
                desk.typing = Some(typing);
            }
        }
    } else if response.has_focus() {
        desk.typing = Some(typing);
    }
}
