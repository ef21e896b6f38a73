//! Parts of the house on the drawing: their wall lines, corners to drag, and the place of a trouble.

use super::Stage;
use super::gesture::{Gesture, Step};
use super::hit::{Hit, distance, nearest};
use super::labelling::{ABOVE_RIGHT, around, rank};
use super::paint::Brush;
use super::snap::{self, Scene};
use crate::action::{Action, Actions};
use crate::desk::Desk;
use crate::selection::PartPlace;
use crate::theme;
use crate::view::{Space, View};
use crate::{Document, Selection, text};
use chalkcourse_geometry::{DVec2, nearest_on_segment};
use chalkcourse_job::{Edit, FaceId, PartId, PartKind, PlanMove, Resolved, RoofPart};
use egui::{Pos2, Stroke, Ui};

/// The part that is held, or that the held face comes from.
pub(super) fn held(job: &Resolved, selection: Selection) -> Option<&RoofPart> {
    let id = match selection {
        Selection::Part(id, _) => id,
        Selection::Face(face) | Selection::Side { face, .. } | Selection::Corner { face, .. } => {
            job.face(face)?.from?.part
        }
        _ => return None,
    };
    job.part(id)
}

/// The corner or side of the held part that is at a place of the screen.
pub(super) fn at(space: &Space, job: &Resolved, selection: Selection, pos: Pos2) -> Option<Hit> {
    let part = held(job, selection).filter(|_| space.face_on.is_none())?;
    let places = corners(part).map(|(ring, corner, p)| ((ring, corner), space.screen_from_plan(p)));
    if let Some((ring, corner)) = nearest(space, places, pos) {
        return Some(Hit::Part(part.id, PartPlace::Corner { ring, corner }));
    }
    // The sides of a part that is not held itself would hide those of its faces.
    if !matches!(selection, Selection::Part(..)) {
        return None;
    }
    part.outline
        .sides()
        .find(|&(_, _, a, b)| {
            distance(pos, space.screen_from_plan(a), space.screen_from_plan(b)) <= space.grab() * 0.7
        })
        .map(|(ring, side, ..)| Hit::Part(part.id, PartPlace::Side { ring, side }))
}

/// All corners of a part with ring and number.
fn corners(part: &RoofPart) -> impl Iterator<Item = (usize, usize, DVec2)> {
    part.outline.sides().map(|(ring, corner, p, _)| (ring, corner, p))
}

/// The drag that begins on a hit: of a corner; of the whole part where it is held.
pub(super) fn begin(hit: Hit, job: &Resolved, selection: Selection, plan: DVec2) -> Option<Gesture> {
    match hit {
        Hit::Part(id, PartPlace::Corner { ring, corner }) => {
            Some(Gesture::PartCorner { start: Box::new(job.part(id)?.clone()), ring, corner })
        }
        Hit::Part(id, _) => moved_whole(job, id, plan),
        Hit::Face(face) => {
            let Selection::Part(id, _) = selection else { return None };
            let from = job.face(face)?.from?;
            // What stands on the held part goes with it, so it can be taken there too.
            moving(job, id).contains(&from.part).then(|| moved_whole(job, id, plan))?
        }
        _ => None,
    }
}

fn moved_whole(job: &Resolved, id: PartId, grab: DVec2) -> Option<Gesture> {
    let name = job.part(id)?.name.clone();
    Some(Gesture::MovePart { name, parts: moving(job, id), grab })
}

/// A house goes with all that stands on it or leans on it; any other part goes alone.
pub(crate) fn moving(job: &Resolved, id: PartId) -> Vec<PartId> {
    match job.part(id).map(|part| part.kind) {
        Some(PartKind::Main) => job.parts_joined_to(id),
        _ => vec![id],
    }
}

/// What the drag of a corner means.
pub(super) fn corner_step(
    scene: Scene,
    start: &RoofPart,
    ring: usize,
    corner: usize,
    plan: DVec2,
    free: bool,
) -> Option<Step> {
    let corners = start.outline.rings().nth(ring)?;
    let count = corners.len();
    let beside = [*corners.get((corner + count - 1) % count)?, *corners.get((corner + 1) % count)?];
    let own: Vec<FaceId> = scene
        .job
        .faces
        .iter()
        .filter(|f| f.from.is_some_and(|from| from.part == start.id))
        .map(|f| f.id)
        .collect();
    let (to, guides) = if free { (plan, Vec::new()) } else { snap::point(scene, plan, &beside, &[], &own) };
    let edit = Edit::PutPart(start.with_corner_moved(ring, corner, to)?);
    Some(Step { label: text::move_corner_of(&start.name), edit, guides })
}

/// What the drag of a whole part means.
pub(super) fn move_step(name: &str, parts: &[PartId], by: DVec2) -> Step {
    Step {
        label: text::move_of(name),
        edit: Edit::MoveParts { parts: parts.to_vec(), how: PlanMove::shift(by) },
        guides: Vec::new(),
    }
}

/// What is held moved by so much: a corner, or the part.
pub(super) fn nudged(job: &Resolved, id: PartId, place: PartPlace, by: DVec2) -> Option<Action> {
    let part = job.part(id)?;
    match place {
        PartPlace::Corner { ring, corner } => {
            let from = *part.outline.rings().nth(ring)?.get(corner)?;
            let next = part.with_corner_moved(ring, corner, from + by)?;
            Some(Action::Edit(text::move_corner_of(&part.name), Edit::PutPart(next)))
        }
        _ => {
            let edit = Edit::MoveParts { parts: moving(job, id), how: PlanMove::shift(by) };
            Some(Action::Edit(text::nudge_of(&part.name), edit))
        }
    }
}

/// A corner more on a side, where the pointer is.
pub(super) fn add_corner(
    job: &Resolved,
    id: PartId,
    ring: usize,
    side: usize,
    at: Option<DVec2>,
) -> Option<Action> {
    let part = job.part(id)?;
    let (.., a, b) = part.outline.sides().find(|&(r, s, ..)| (r, s) == (ring, side))?;
    let on = at.map_or((a + b) / 2.0, |at| nearest_on_segment(at, a, b));
    let next = part.with_corner_added(ring, side, on)?;
    let held = Selection::Part(id, PartPlace::Corner { ring, corner: side + 1 });
    Some(Action::EditAndSelect(text::add_corner_of(&part.name), Edit::PutPart(next), held))
}

/// What taking away what is held of a part means.
pub(super) fn delete(job: &Resolved, id: PartId, place: PartPlace) -> Option<Action> {
    let part = job.part(id)?;
    let PartPlace::Corner { ring, corner } = place else {
        return Some(Action::EditAndSelect(
            text::delete_of(&part.name),
            Edit::RemovePart(id),
            Selection::Nothing,
        ));
    };
    Some(match part.without_corner(ring, corner) {
        Some(next) => Action::EditAndSelect(
            text::delete_corner_of(&part.name),
            Edit::PutPart(next),
            Selection::Part(id, PartPlace::Whole),
        ),
        None => Action::Say(text::LAST_CORNERS_OF_PART.now().to_owned()),
    })
}

/// The wall lines and corners of the held part, the outlines of parts without faces, and the place of a trouble.
pub(super) fn paint(brush: &Brush, document: &Document, desk: &Desk) {
    if desk.view != View::Plan {
        return;
    }
    let (job, p) = (document.job(), brush.palette);
    for part in job.parts.iter().filter(|part| part.kind == PartKind::Chimney) {
        brush.outline(&part.outline, Stroke::new(1.5, p.line), None);
    }
    if let Some(part) = held(job, desk.selection) {
        brush.outline(&part.outline, Stroke::new(1.6, p.accent), Some((7.0, 4.0)));
        if let Selection::Part(_, PartPlace::Side { ring, side }) = desk.selection
            && let Some((.., a, b)) = part.outline.sides().find(|&(r, s, ..)| (r, s) == (ring, side))
        {
            let ends = [a, b].map(|end| brush.space.screen_from_plan(end));
            brush.painter.line_segment(ends, Stroke::new(3.5, p.accent));
        }
        for (ring, corner, at) in corners(part) {
            let this = desk.selection == Selection::Part(part.id, PartPlace::Corner { ring, corner });
            super::paint_marks::handle(brush, brush.space.screen_from_plan(at), this);
        }
    }
    if let Some(spot) = desk.trouble {
        let at = brush.space.screen_from_plan(spot);
        brush.painter.circle_stroke(at, 12.0, Stroke::new(2.5, p.stop));
        let around = around(egui::Rect::from_center_size(at, egui::Vec2::splat(24.0)), 2.0, ABOVE_RIGHT);
        brush.say_at(rank::TYPED, around, text::TROUBLE_HERE.now(), p.stop);
    }
}

/// Tells parts, and corners and sides of the held one, to screen readers and to the keyboard.
pub(super) fn tell(ui: &mut Ui, stage: &Stage, document: &Document, desk: &Desk, actions: &mut Actions) {
    if desk.view != View::Plan {
        return;
    }
    let job = document.job();
    let space = &stage.space;
    let mut item = |ui: &mut Ui, points: Vec<Pos2>, what: Selection, words: &str| {
        super::outline::item(ui, stage, points, what, desk.selection, words, actions);
    };
    for part in &job.parts {
        let points = part.outline.outer.iter().map(|&c| space.screen_from_plan(c)).collect();
        item(ui, points, Selection::Part(part.id, PartPlace::Whole), &text::part_words(part));
    }
    let Some(part) = held(job, desk.selection) else { return };
    for (ring, corner, at) in corners(part) {
        let at = space.screen_from_plan(at);
        let grip = egui::vec2(theme::HANDLE, theme::HANDLE);
        let what = Selection::Part(part.id, PartPlace::Corner { ring, corner });
        item(ui, vec![at - grip, at + grip], what, &text::part_corner_words(&part.name, corner));
    }
}
