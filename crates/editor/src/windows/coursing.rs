//! The courses pane: where the base rail falls, what is left at the head and the ridge, and what would leave whole
//! courses.

use super::Windows;
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{
    Ghost, State,
    coursing::{BlockAmongCourses, among, block_spoken_of, face_spoken_of},
};
use crate::widgets::{fields, quiet};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::coursing::Exposure;
use chalkcourse_geometry::{Length, Units, dvec2};
use chalkcourse_job::{Block, BlockId, Courses, Edit, Face, FaceId, Resolved};
use chalkcourse_plan::{
    BlockCourses, CoursedPlace, CoursesError, FaceCourses, base_edit, coursing, exposure_edit,
};
use egui::{RichText, ScrollArea, Ui};
use std::sync::Arc;

/// Most proposals to show.
const MOST: usize = 5;

/// State of the pane; not saved.
#[derive(Debug)]
pub(crate) struct Coursing {
    /// The last face and block.
    pub(crate) face: Option<FaceId>,
    pub(crate) block: Option<BlockId>,
    /// The range of exposures that the shingle allows.
    least: Length,
    most: Length,
    /// The last result: each proposal is checked against the rules, which is too slow for every frame.
    last: Option<Last>,
}

#[derive(Debug)]
struct Last {
    job: Arc<Resolved>,
    face: FaceId,
    range: (f64, f64),
    told: Result<FaceCourses, CoursesError>,
}

impl Default for Coursing {
    fn default() -> Self {
        Self {
            face: None,
            block: None,
            // The two usual exposures (common practice, no source): the shingle's package states its own.
            least: Length::from_inches(5.0),
            most: Length::from_inches(5.625),
            last: None,
        }
    }
}

impl Coursing {
    /// The courses of a face, without a drag in progress, and proposals for them.
    fn told(&mut self, job: &Arc<Resolved>, face: FaceId) -> Result<&FaceCourses, String> {
        let range = (self.least.metres(), self.most.metres());
        let holds = |last: &Last| Arc::ptr_eq(&last.job, job) && last.face == face && last.range == range;
        if !self.last.as_ref().is_some_and(holds) {
            let told = coursing(job, face, Some(range));
            self.last = Some(Last { job: Arc::clone(job), face, range, told });
        }
        match &self.last {
            Some(Last { told: Ok(told), .. }) => Ok(told),
            Some(Last { told: Err(error), .. }) => Err(text::sentence(&error.to_string())),
            None => Err(String::new()),
        }
    }
}

/// Shows the pane.
pub(super) fn coursing_pane(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let mut ghost = None;
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        ghost = contents(ui, document, state, windows, actions);
    });
    if state.ghost != ghost {
        // The drawing was painted before this pane.
        actions.push(Action::Ghost(ghost));
        ui.ctx().request_repaint();
    }
}

fn contents(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) -> Option<Ghost> {
    let job = document.job();
    let own = &mut windows.coursing;
    let Some(face) = face_spoken_of(document, state.selection, own.face).and_then(|id| job.face(id)) else {
        ui.label(text::NO_FACE_YET.now());
        return None;
    };
    own.face = Some(face.id);
    own.block = block_spoken_of(document, state.selection, own.block, face.id);
    super::face_choice(ui, document, face.id, actions);
    let mut shown = state.courses_in_plan;
    if ui
        .checkbox(&mut shown, text::COURSES_IN_PLAN.now())
        .on_hover_text(text::COURSES_IN_PLAN_HELP.now())
        .clicked()
    {
        actions.push(Command::CoursesInPlan.action());
    }
    ui.push_id(face.id, |ui| lines(ui, face, job.units, actions));
    ui.separator();
    let blocks: Vec<_> = job
        .blocks
        .iter()
        .filter(|block| block.face == face.id)
        .map(|block| (block.id, text::block_heading(&block.name).to_string()))
        .collect();
    let Some(block) = own.block.and_then(|id| job.block(id)) else {
        quiet(ui, text::NO_BLOCK_ON_FACE.now());
        return None;
    };
    if blocks.len() > 1 {
        let names: Vec<_> = blocks.iter().map(|(id, name)| (*id, name.as_ref())).collect();
        if let Some(id) = fields::choice(ui, text::BLOCK.now(), block.id, &names) {
            actions.push(Action::Select(Selection::Block(id)));
        }
    } else {
        ui.strong(text::block_heading(&block.name).now());
    }
    let Some(among) = among(document, block.id) else {
        quiet(ui, text::NO_MODULES_AMONG.now());
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
    let own = &mut windows.coursing;
    ui.strong(text::WHOLE_BY_EXPOSURE.now());
    for (label, value) in
        [(text::LEAST_EXPOSURE.now(), &mut own.least), (text::MOST_EXPOSURE.now(), &mut own.most)]
    {
        if let Some(next) = fields::length(ui, label, *value, job.units, true, text::SHINGLE_RANGE_HELP.now())
        {
            *value = next;
        }
    }
    let told = match own.told(document.settled(), face.id) {
        Ok(told) => told,
        Err(error) => {
            fields::wrong(ui, &error);
            return None;
        }
    };
    let proposed = told.blocks.iter().find(|proposed| proposed.block == block.id)?;
    let exposures = exposures(ui, job, face, &among, proposed, actions);
    ui.separator();
    let places = places(ui, job, block, &among, proposed, actions);
    places.or(exposures)
}

/// Fields for exposure and first line.
fn lines(ui: &mut Ui, face: &Face, units: Units, actions: &mut Actions) {
    let courses = face.courses;
    let mut put = |courses: Courses| {
        let next = Face { courses, ..face.clone() };
        actions.push(Action::Edit(text::courses_of(&face.name), Edit::PutFace(next)));
    };
    if let Some(exposure) =
        fields::length(ui, text::EXPOSURE.now(), courses.exposure, units, true, text::EXPOSURE_HELP.now())
    {
        put(Courses { exposure, ..courses });
    }
    if let Some(first) = fields::length(
        ui,
        text::FIRST_COURSE.now(),
        courses.first,
        units,
        true,
        text::FIRST_COURSE_HELP.now(),
    ) {
        put(Courses { first, ..courses });
    }
}

/// Positions of the block where the courses allow the rail.
fn places(
    ui: &mut Ui,
    job: &Resolved,
    block: &Block,
    among: &BlockAmongCourses,
    proposed: &BlockCourses,
    actions: &mut Actions,
) -> Option<Ghost> {
    ui.strong(text::RAIL_ON_A_LINE.now());
    let there = |place: &CoursedPlace| (place.base.bottom - among.span.bottom).abs() < 1e-6;
    if proposed.places.iter().any(there) {
        quiet(ui, text::RAIL_IS_ON_A_LINE.now());
    }
    let mut ghost = None;
    for place in proposed.places.iter().filter(|place| !there(place)).take(MOST) {
        let by = dvec2(0.0, place.base.bottom - among.span.bottom);
        let words = text::base_place(place, by.y, job.units);
        let row = proposal(ui, &words, text::MOVE_IT.now());
        if row.pressed
            && let Some(edit) = base_edit(job, block.id, place.base.bottom)
        {
            let label = text::rail_to_line(text::block_heading(&block.name), place.base.course);
            actions.push(Action::EditAndSelect(label, edit, Selection::Block(block.id)));
        }
        if row.pointed {
            ghost = Some(Ghost { face: block.face, rects: vec![among.bounds.moved(by)], lines: Vec::new() });
        }
    }
    if proposed.places.is_empty() {
        quiet(ui, &text::no_base_place(chalkcourse_limits::courses_asked(job)));
    }
    ghost
}

/// Exposures that bring a course line to the rail and to the top.
fn exposures(
    ui: &mut Ui,
    job: &Resolved,
    face: &Face,
    among: &BlockAmongCourses,
    proposed: &BlockCourses,
    actions: &mut Actions,
) -> Option<Ghost> {
    let mut ghost = None;
    for exposure in proposed.exposures.iter().take(MOST) {
        let row = proposal(ui, &text::exposure_proposal(exposure, job.units), text::USE_IT.now());
        if row.pressed
            && let Some(edit) = exposure_edit(job, face.id, exposure.exposure)
        {
            actions.push(Action::Edit(text::courses_of(&face.name), edit));
        }
        if row.pointed {
            ghost = Some(Ghost { face: face.id, rects: Vec::new(), lines: lines_of(among, exposure) });
        }
    }
    if proposed.exposures.is_empty() {
        quiet(ui, text::NO_EXPOSURE.now());
    }
    ghost
}

/// Course lines with another exposure.
fn lines_of(among: &BlockAmongCourses, exposure: &Exposure) -> Vec<f64> {
    let courses = among.courses;
    let count = ((courses.top - courses.first) / exposure.exposure).clamp(0.0, 500.0) as usize;
    (0..=count).map(|n| courses.first + exposure.exposure * n as f64).collect()
}

struct Row {
    pressed: bool,
    pointed: bool,
}

/// A proposal with a button to apply it; the drawing previews it while the pointer is on it.
fn proposal(ui: &mut Ui, words: &str, press: &str) -> Row {
    let row = ui.push_id(words, |ui| {
        ui.horizontal(|ui| {
            let name = format!("{press}: {words}");
            let button = ui.button(press).on_hover_text(text::FIX_HELP.now());
            button.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
            ui.add(egui::Label::new(words).wrap());
            button
        })
    });
    let rect = row.inner.response.rect;
    let button = row.inner.inner;
    Row { pressed: button.clicked(), pointed: ui.rect_contains_pointer(rect) || button.has_focus() }
}
