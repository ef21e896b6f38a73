//! Dimensions of the selection: from the four sides of a block to the border of its face, or the sides of a drawn face.
//! Each can be edited, which changes the selected object accordingly.

use super::crossings::crossings;
use super::hit::block_rect;
use super::labelling::{Of, bounds};
use super::{Canvas, Stage};
use crate::action::{Action, Actions};
use crate::edits::corners_at;
use crate::state::{Dimension, Toward};
use crate::state::{State, Tool, View};
use crate::widgets::fields;
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, Length, Polygon, Rect, RoofFace, dvec2};
use chalkcourse_job::{Edit, FaceId};
use egui::{CursorIcon, Id, Key, Role, Sense, TextEdit, Ui, WidgetInfo};

/// A dimension being edited.
#[derive(Clone, Debug)]
pub(crate) struct Typing {
    of: Dimension,
    typed: String,
    /// Whether the field has had keyboard focus.
    begun: bool,
}

/// A dimension as drawn: which one, its present length, and the rectangle of its label.
struct Shown {
    of: Dimension,
    length: Length,
    words: String,
    rect: egui::Rect,
}

impl Shown {
    /// A dimension whose label is on the drawing.
    fn of(own: &Canvas, of: Dimension, length: Length, words: String) -> Option<Self> {
        let label = own.shown.iter().find(|it| it.of == Of::Dimension(of))?;
        Some(Self { of, length, words, rect: bounds(label.placed.as_ref()?) })
    }
}

/// The dimensions of a block in the frame of its face: lines from the border of the face to the block, or from the
/// block to the border.
pub(super) fn of_block(face: &RoofFace, bounds: Rect) -> Vec<(Toward, DVec2, DVec2)> {
    let middle = bounds.centre();
    let across = crossings(&face.frame, middle.y);
    let turned: Polygon = face.frame.map(|p| dvec2(p.y, p.x));
    let upright = crossings(&turned, middle.x);
    let before = |list: &[f64], at: f64| list.iter().copied().filter(|x| *x <= at).reduce(f64::max);
    let after = |list: &[f64], at: f64| list.iter().copied().filter(|x| *x >= at).reduce(f64::min);
    // Off centre, so that the lines don't run through the handles.
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

/// The displacement of a block in the frame of its face that changes a dimension by `by`.
fn step(toward: Toward, by: f64) -> DVec2 {
    match toward {
        Toward::Left => dvec2(by, 0.0),
        Toward::Right => dvec2(-by, 0.0),
        Toward::Eave => dvec2(0.0, by),
        Toward::Top => dvec2(0.0, -by),
    }
}

/// Lets dimensions be clicked and edited.
pub(crate) fn dimension_fields(
    ui: &mut Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    actions: &mut Actions,
) {
    let shown = match own.drag.gesture.is_none() && state.tool == Tool::Select {
        true => of_what_is_held(stage, document, state, own),
        false => Vec::new(),
    };
    if own.typing.as_ref().is_some_and(|typing| shown.iter().all(|it| it.of != typing.of)) {
        own.typing = None;
    }
    for it in shown {
        if own.typing.as_ref().is_some_and(|typing| typing.of == it.of) {
            field(ui, &it, document, own, actions);
            continue;
        }
        let response = ui.interact(it.rect.expand(3.0), Id::unique(("dimension", it.of)), Sense::click());
        response
            .widget_info(|| WidgetInfo::labeled(Role::Button, true, text::dimension_words(it.of, &it.words)));
        let response = response.on_hover_text(text::type_over(it.of)).on_hover_cursor(CursorIcon::Text);
        if response.clicked() {
            own.typing = Some(Typing { of: it.of, typed: it.words, begun: false });
        }
    }
}

fn of_what_is_held(stage: &Stage, document: &Document, state: &State, own: &Canvas) -> Vec<Shown> {
    let (job, layout, space) = (document.job(), &document.plan().layout, &stage.space);
    if let Some(block) = state.selection.block().and_then(|id| job.block(id)) {
        let Some((index, face)) = layout.face(block.face) else { return Vec::new() };
        if !space.shows(index) {
            return Vec::new();
        }
        let lines = of_block(face, block_rect(job, block)).into_iter();
        let shown = lines.filter_map(|(toward, from, to)| {
            let length = Length::from_metres(from.distance(to));
            Shown::of(own, Dimension::Block(block.id, toward), length, length.show(job.units))
        });
        return shown.collect();
    }
    let Some(face) = face_of_sides(document, state).and_then(|id| job.face(id)) else { return Vec::new() };
    let Some((_, on_roof)) = layout.face(face.id) else { return Vec::new() };
    let sides = face.outline.sides().filter_map(|(ring, side, ..)| {
        let span = on_roof.edges.iter().find(|span| (span.ring, span.side) == (ring, side))?;
        let length = Length::from_metres(span.length);
        Shown::of(own, Dimension::Side(face.id, ring, side), length, length.show(job.units))
    });
    sides.collect()
}

/// The selected drawn face, whose sides can be edited. The sides of a part's face are edited at the part.
pub(super) fn face_of_sides(document: &Document, state: &State) -> Option<FaceId> {
    let job = document.job();
    let held =
        matches!(state.selection, Selection::Face(_) | Selection::Side { .. } | Selection::Corner { .. });
    let face = state.selection.face(job).filter(|_| held && state.view == View::Plan)?;
    job.face(face).filter(|face| face.from.is_none()).map(|face| face.id)
}

fn field(ui: &mut Ui, it: &Shown, document: &Document, own: &mut Canvas, actions: &mut Actions) {
    let Some(mut typing) = own.typing.take() else { return };
    let place = egui::Rect::from_center_size(it.rect.center(), egui::vec2(112.0, theme::PRESS));
    let id = Id::unique(("dimension typed", it.of));
    let response = ui.put(place, TextEdit::singleline(&mut typing.typed).id(id));
    response.widget_info(|| WidgetInfo::labeled(Role::TextInput, true, text::dimension_of(it.of)));
    if !typing.begun {
        typing.begun = true;
        response.request_focus();
        fields::mark_all(ui.ctx(), id, &typing.typed);
        own.typing = Some(typing);
        return;
    }
    if response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter)) {
        let wanted = Length::parse(&typing.typed, document.job().units).map_err(|error| error.to_string());
        let wrong = match wanted {
            Ok(wanted) if wanted == it.length => None,
            Ok(wanted) => match changed(document, it, wanted) {
                Some(action) => {
                    actions.push(action);
                    None
                }
                None => Some(text::LENGTH_NOT_POSITIVE.now().to_owned()),
            },
            Err(words) => Some(words),
        };
        if let Some(words) = wrong {
            actions.push(Action::Say(text::sentence(&words)));
            typing.begun = false;
            own.typing = Some(typing);
        }
    } else if response.has_focus() {
        own.typing = Some(typing);
    }
}

/// The action that gives a dimension the typed length: moves the block; for a side, moves its end along it, along with
/// coincident corners of other faces. `None` for a side of zero length.
fn changed(document: &Document, it: &Shown, wanted: Length) -> Option<Action> {
    let job = document.job();
    match it.of {
        Dimension::Block(id, toward) => {
            let block = job.block(id)?;
            let mut next = block.clone();
            next.at += step(toward, wanted.metres() - it.length.metres());
            Some(Action::Edit(text::move_of(text::block_heading(&block.name)), Edit::PutBlock(next)))
        }
        Dimension::Side(id, ring, side) => {
            let (.., a, b) = job.face(id)?.outline.sides().find(|&(r, s, ..)| (r, s) == (ring, side))?;
            if wanted.metres() < 0.01 || it.length.metres() < 1e-6 {
                return None;
            }
            // On a plane, lengths in the same direction are proportional to those in plan.
            let to = a + (b - a) * (wanted.metres() / it.length.metres());
            let moved = corners_at(job, b).into_iter();
            let edits = moved
                .filter_map(|(face, ring, corner)| job.face(face)?.with_corner_moved(ring, corner, to))
                .map(Edit::PutFace)
                .collect();
            Some(Action::Edit(text::move_corner_of(&job.face(id)?.name), Edit::Several(edits)))
        }
    }
}
