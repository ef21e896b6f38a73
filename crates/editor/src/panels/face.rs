use super::{heading, part, quiet};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::edits::squaring;
use crate::state::State;
use crate::widgets::{LittleButton, fields};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_job::{Courses, Edit, Face, FaceId};
use egui::{RichText, Ui};

/// The form of a face: slope, courses, sides.
pub(super) fn face_form(ui: &mut Ui, document: &Document, state: &State, id: FaceId, actions: &mut Actions) {
    let job = document.job();
    let Some(face) = job.face(id) else { return };
    let units = job.units;
    ui.horizontal(|ui| {
        heading(ui, &text::face_heading(&face.name).now());
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            if ui.little_button(text::FACE_ON_VIEW.now()).clicked() {
                actions.push(Command::FaceOnView.action());
            }
        });
    });
    if ui
        .button(text::FILL_THIS_FACE.now())
        .on_hover_text(Command::Fill.with_key(ui.ctx(), text::FILL_HELP.now()))
        .clicked()
    {
        actions.push(Action::Fill(vec![id]));
    }
    let mut put = |next: Face| {
        actions.push(Action::Edit(text::change_of(&face.name), Edit::PutFace(next)));
    };
    if let Some(name) = fields::name(ui, text::NAME.now(), &face.name) {
        put(Face { name, ..face.clone() });
    }
    if face.from.is_some() {
        part::of_face(ui, job, face, actions);
    } else {
        slope(ui, face, units, actions);
        super::square::square(ui, &face.outline, || squaring::of_face(job, id), actions);
    }
    let mut put = |next: Face| {
        actions.push(Action::Edit(text::change_of(&face.name), Edit::PutFace(next)));
    };
    let courses = face.courses;
    if let Some(exposure) =
        fields::length(ui, text::EXPOSURE.now(), courses.exposure, units, true, text::EXPOSURE_HELP.now())
    {
        put(Face { courses: Courses { exposure, ..courses }, ..face.clone() });
    }
    if let Some(first) = fields::length(
        ui,
        text::FIRST_COURSE.now(),
        courses.first,
        units,
        true,
        text::FIRST_COURSE_HELP.now(),
    ) {
        put(Face { courses: Courses { first, ..courses }, ..face.clone() });
    }
    if let Selection::Corner { ring, corner, .. } = state.selection {
        corner_fields(ui, face, ring, corner, units, &mut put);
    }
    sides(ui, document, state, face, actions);
}

/// Values that don't follow from a part: pitch, downslope, height.
fn slope(ui: &mut Ui, face: &Face, units: Units, actions: &mut Actions) {
    let mut put = |next: Face| {
        actions.push(Action::Edit(text::change_of(&face.name), Edit::PutFace(next)));
    };
    if let Some(pitch) = fields::pitch(ui, text::PITCH.now(), face.pitch, text::PITCH_HELP.now()) {
        put(Face { pitch, ..face.clone() });
    }
    if let Some(downslope) =
        fields::azimuth(ui, text::DOWNSLOPE.now(), face.downslope, text::DOWNSLOPE_HELP.now())
    {
        put(Face { downslope, ..face.clone() });
    }
    if let Some(height) =
        fields::length(ui, text::HEIGHT.now(), face.height, units, false, text::HEIGHT_HELP.now())
    {
        put(Face { height, ..face.clone() });
    }
}

/// The position of the selected corner relative to the first corner of its face.
fn corner_fields(
    ui: &mut Ui,
    face: &Face,
    ring: usize,
    corner: usize,
    units: Units,
    put: &mut impl FnMut(Face),
) {
    let Some(&at) = face.outline.rings().nth(ring).and_then(|corners| corners.get(corner)) else { return };
    ui.add_space(4.0);
    ui.strong(text::corner_heading(corner));
    let from = at - face.datum;
    let east = Length::from_metres(from.x);
    let north = Length::from_metres(from.y);
    ui.push_id(("corner", ring, corner), |ui| {
        if let Some(east) = fields::length(ui, text::EAST.now(), east, units, false, text::CORNER_HELP.now())
        {
            let to = face.datum + chalkcourse_geometry::dvec2(east.metres(), from.y);
            face.with_corner_moved(ring, corner, to).into_iter().for_each(&mut *put);
        }
        if let Some(north) =
            fields::length(ui, text::NORTHWARD.now(), north, units, false, text::CORNER_HELP.now())
        {
            let to = face.datum + chalkcourse_geometry::dvec2(from.x, north.metres());
            face.with_corner_moved(ring, corner, to).into_iter().for_each(&mut *put);
        }
    });
}

fn sides(ui: &mut Ui, document: &Document, state: &State, face: &Face, actions: &mut Actions) {
    let layout = &document.plan().layout;
    let Some((_, on_roof)) = layout.face(face.id) else { return };
    ui.add_space(6.0);
    ui.strong(text::SIDES.now());
    if !on_roof.sound {
        ui.label(RichText::new(text::FACE_NOT_SOUND.now()).color(theme::of(ui).stop));
        return;
    }
    let units = document.job().units;
    for (index, edge) in on_roof.edges.iter().enumerate() {
        let held = state.selection == Selection::Side { face: face.id, ring: edge.ring, side: edge.side };
        ui.push_id(index, |ui| {
            ui.horizontal(|ui| {
                let length = Length::from_metres(edge.length).show(units);
                let words = text::side_row(edge.side, &length);
                if ui.add(egui::Button::selectable(held, words).min_size(egui::vec2(128.0, 0.0))).clicked() {
                    let side = Selection::Side { face: face.id, ring: edge.ring, side: edge.side };
                    actions.push(Action::Select(side));
                }
                let now = if edge.overruled { text::overruled(edge.kind) } else { edge.kind.name().into() };
                let mut chosen = None;
                egui::ComboBox::from_id_salt("kind")
                    .selected_text(now)
                    .width((ui.available_width() - 2.0).max(80.0))
                    .show_ui(ui, |ui| {
                        if ui.selectable_label(!edge.overruled, text::WORKED_OUT.now()).clicked() {
                            chosen = Some(None);
                        }
                        for kind in EdgeKind::ALL {
                            let this = edge.overruled && edge.kind == kind;
                            if ui.selectable_label(this, kind.name().now()).clicked() {
                                chosen = Some(Some(kind));
                            }
                        }
                    })
                    .response
                    .accessible_name(text::kind_of_side(edge.side))
                    .on_hover_text(text::KIND_HELP.now());
                if let Some(kind) = chosen {
                    let next = face.with_side_overruled(edge.id, kind);
                    actions.push(Action::Edit(text::change_of(&face.name), Edit::PutFace(next)));
                }
            });
        });
    }
    quiet(ui, &text::area_words(on_roof.plan_area, on_roof.slope_area, units));
}
