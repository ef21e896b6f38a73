//! The courses of a face and its array: where the base rail falls, what is left at the head and the ridge, and what would
//! leave whole courses.

use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::coursing::{Among, among, block_spoken_of, face_spoken_of};
use crate::desk::{Desk, Ghost};
use crate::panels::quiet;
use crate::{Document, Selection, fields, text, theme};
use chalkcourse_geometry::coursing::{BasePlace, Exposure, propose_base, propose_exposure};
use chalkcourse_geometry::{Length, Units, dvec2};
use chalkcourse_job::{Block, BlockId, Courses, Edit, Face, FaceId};
use egui::{Context, RichText, ScrollArea, Ui};

/// A person reads a few proposals, not all.
const MOST: usize = 5;

/// What the window holds; none of it is saved.
#[derive(Debug)]
pub(crate) struct Coursing {
    pub(crate) open: bool,
    /// The face and the block spoken of last.
    pub(crate) face: Option<FaceId>,
    pub(crate) block: Option<BlockId>,
    /// The exposures that the shingle allows.
    least: Length,
    most: Length,
    /// How far a course may miss the rail or the top and still count as whole.
    within: Length,
}

impl Default for Coursing {
    fn default() -> Self {
        Self {
            open: false,
            face: None,
            block: None,
            // The two usual exposures (common practice, no source): a shingle's package has its own.
            least: Length::from_inches(5.0),
            most: Length::from_inches(5.625),
            within: Length::from_inches(1.0 / 16.0),
        }
    }
}

/// Shows the window.
pub(super) fn show(ctx: &Context, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let mut open = true;
    let mut ghost = None;
    super::window(ctx, text::COURSING, &mut open, 420.0).show(ctx, |ui| {
        ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
            ghost = contents(ui, document, desk, actions);
        });
    });
    if desk.ghost != ghost {
        // The drawing was painted before this window.
        desk.ghost = ghost;
        ctx.request_repaint();
    }
    if !open {
        desk.windows.coursing.open = false;
        desk.ghost = None;
    }
}

fn contents(ui: &mut Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) -> Option<Ghost> {
    let job = document.job();
    let state = &mut desk.windows.coursing;
    let Some(face) = face_spoken_of(document, desk.selection, state.face).and_then(|id| job.face(id)) else {
        ui.label(text::NO_FACE_YET);
        return None;
    };
    state.face = Some(face.id);
    state.block = block_spoken_of(document, desk.selection, state.block, face.id);
    super::face_choice(ui, document, face.id, actions);
    let mut shown = desk.courses_in_plan;
    if ui.checkbox(&mut shown, text::COURSES_IN_PLAN).on_hover_text(text::COURSES_IN_PLAN_HELP).clicked() {
        actions.push(Action::Run(Command::CoursesInPlan));
    }
    ui.push_id(face.id, |ui| lines(ui, face, job.units, actions));
    ui.separator();
    let blocks: Vec<_> = job
        .blocks
        .iter()
        .filter(|block| block.face == face.id)
        .map(|block| (block.id, text::block_name(&block.name)))
        .collect();
    let Some(block) = state.block.and_then(|id| job.block(id)) else {
        quiet(ui, text::NO_BLOCK_ON_FACE);
        return None;
    };
    if blocks.len() > 1 {
        let names: Vec<_> = blocks.iter().map(|(id, name)| (*id, name.as_str())).collect();
        if let Some(id) = fields::choice(ui, text::BLOCK, block.id, &names) {
            actions.push(Action::Select(Selection::Block(id)));
        }
    } else {
        ui.strong(text::block_name(&block.name));
    }
    let Some(among) = among(document, block.id) else {
        quiet(ui, text::NO_MODULES_AMONG);
        return None;
    };
    match among.courses.laid(&among.span) {
        Ok(laid) => {
            for words in text::laid(&laid, &among, job.units) {
                ui.label(words);
            }
        }
        Err(error) => {
            ui.label(RichText::new(text::sentence(&error.to_string())).color(theme::of(ui).stop));
            return None;
        }
    }
    ui.separator();
    let places = places(ui, document, block, &among, actions);
    ui.separator();
    let exposures = exposures(ui, &mut desk.windows.coursing, face, &among, job.units, actions);
    places.or(exposures)
}

/// Exposure and first line, typed.
fn lines(ui: &mut Ui, face: &Face, units: Units, actions: &mut Actions) {
    let courses = face.courses;
    let mut put = |courses: Courses| {
        let next = Face { courses, ..face.clone() };
        actions.push(Action::Edit(text::courses_of(&face.name), Edit::PutFace(next)));
    };
    if let Some(exposure) =
        fields::length(ui, text::EXPOSURE, courses.exposure, units, true, text::EXPOSURE_HELP)
    {
        put(Courses { exposure, ..courses });
    }
    if let Some(first) =
        fields::length(ui, text::FIRST_COURSE, courses.first, units, true, text::FIRST_COURSE_HELP)
    {
        put(Courses { first, ..courses });
    }
}

/// Places of the block with its rail on a course line.
fn places(
    ui: &mut Ui,
    document: &Document,
    block: &Block,
    among: &Among,
    actions: &mut Actions,
) -> Option<Ghost> {
    ui.strong(text::RAIL_ON_A_LINE);
    let job = document.job();
    let least = job.rule_book.courses_to_ridge.value as usize;
    let rail = job.kit.laying.base_rail;
    let above = if rail.anywhere { 0.0 } else { rail.above_course_from.metres() };
    let found = propose_base(&among.courses, &among.span, above, least).unwrap_or_default();
    let there = |place: &BasePlace| (place.bottom - among.span.bottom).abs() < 1e-6;
    if found.iter().any(there) {
        quiet(ui, text::RAIL_IS_ON_A_LINE);
    }
    let mut ghost = None;
    for place in found.iter().filter(|place| !there(place)).take(MOST) {
        let by = dvec2(0.0, place.bottom - among.span.bottom);
        let words = text::base_place(place, by.y, job.units);
        let row = proposal(ui, &words, text::MOVE_IT);
        if row.pressed {
            let moved = Block { at: block.at + by, ..block.clone() };
            let label = text::rail_to_line(&text::block_name(&block.name), place.course);
            actions.push(Action::EditAndSelect(label, Edit::PutBlock(moved), Selection::Block(block.id)));
        }
        if row.pointed {
            ghost = Some(Ghost { face: block.face, rects: vec![among.bounds.moved(by)], lines: Vec::new() });
        }
    }
    if found.is_empty() {
        quiet(ui, &text::no_base_place(least));
    }
    ghost
}

/// Exposures that leave whole courses at both ends.
fn exposures(
    ui: &mut Ui,
    state: &mut Coursing,
    face: &Face,
    among: &Among,
    units: Units,
    actions: &mut Actions,
) -> Option<Ghost> {
    ui.strong(text::WHOLE_BY_EXPOSURE);
    for (label, value, help) in [
        (text::LEAST_EXPOSURE, &mut state.least, text::SHINGLE_RANGE_HELP),
        (text::MOST_EXPOSURE, &mut state.most, text::SHINGLE_RANGE_HELP),
        (text::MISS_AT_MOST, &mut state.within, text::MISS_HELP),
    ] {
        if let Some(next) = fields::length(ui, label, *value, units, true, help) {
            *value = next;
        }
    }
    let range = (state.least.metres(), state.most.metres());
    let found = match propose_exposure(range, &among.courses, &among.span, state.within.metres()) {
        Ok(found) => found,
        Err(error) => {
            ui.label(RichText::new(text::sentence(&error.to_string())).color(theme::of(ui).stop));
            return None;
        }
    };
    let mut ghost = None;
    for exposure in found.iter().take(MOST) {
        let now = (exposure.exposure - face.courses.exposure.metres()).abs() < 1e-7;
        let row = proposal(ui, &text::exposure_proposal(exposure, units), text::USE_IT);
        if row.pressed && !now {
            let courses = Courses { exposure: Length::from_metres(exposure.exposure), ..face.courses };
            let next = Face { courses, ..face.clone() };
            actions.push(Action::Edit(text::courses_of(&face.name), Edit::PutFace(next)));
        }
        if row.pointed {
            ghost = Some(Ghost { face: face.id, rects: Vec::new(), lines: lines_of(among, exposure) });
        }
    }
    if found.is_empty() {
        quiet(ui, text::NO_EXPOSURE);
    }
    ghost
}

/// Course lines with another exposure.
fn lines_of(among: &Among, exposure: &Exposure) -> Vec<f64> {
    let courses = among.courses;
    let count = ((courses.top - courses.first) / exposure.exposure).clamp(0.0, 500.0) as usize;
    (0..=count).map(|n| courses.first + exposure.exposure * n as f64).collect()
}

struct Row {
    pressed: bool,
    pointed: bool,
}

/// A proposal with a button that takes it; the drawing shows it while it is pointed at.
fn proposal(ui: &mut Ui, words: &str, press: &str) -> Row {
    let row = ui.push_id(words, |ui| {
        ui.horizontal(|ui| {
            let name = format!("{press}: {words}");
            let button = ui.button(press).on_hover_text(text::FIX_HELP);
            button.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
            ui.add(egui::Label::new(words).wrap());
            button
        })
    });
    let rect = row.inner.response.rect;
    let button = row.inner.inner;
    Row { pressed: button.clicked(), pointed: ui.rect_contains_pointer(rect) || button.has_focus() }
}
