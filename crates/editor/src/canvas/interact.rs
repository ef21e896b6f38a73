use super::drawn::{OutlineFor, drawn};
use super::gesture::{Gesture, new_block, snapped};
use super::group::Group;
use super::hit::{self, Hit};
use super::snap::Scene;
use super::{Aim, Draft, Shaped, Stage, keys, menu, pan_key, part, picture};
use crate::action::{Action, Actions};
use crate::desk::Desk;
use crate::selection::PartPlace;
use crate::tool::Tool;
use crate::{Document, Selection, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Edit, Penetration, PenetrationId};
use egui::{CursorIcon, EventFilter, PointerButton, Pos2, Ui};

/// What the pointer and the keys of this frame do on the drawing.
pub(crate) fn run(ui: &mut Ui, stage: &Stage, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let response = &stage.response;
    if response.clicked() || response.drag_started() || response.secondary_clicked() {
        response.request_focus();
    }
    // Arrow keys nudge; they don't wander off to the next button.
    let filter = EventFilter { tab: false, horizontal_arrows: true, vertical_arrows: true, escape: true };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));

    let pos = response.hover_pos().or_else(|| response.interact_pointer_pos());
    desk.pointer = pos.map(|pos| stage.space.plan(pos));
    let before = desk.hover;
    let hit = match pos {
        Some(pos) if desk.gesture.is_none() => hit_at(stage, document, desk, pos),
        _ => Hit::Nothing,
    };
    if desk.gesture.is_none() {
        desk.hover = match hit {
            Hit::Module { block, cell } => Selection::Module { block, cell },
            hit => hit.selection(desk.selection),
        };
    }
    if before != desk.hover {
        // The lists were drawn before the drawing: what the pointer is on now shows there in the next frame.
        ui.ctx().request_repaint();
    }
    match desk.tool {
        Tool::Select => select(ui, stage, document, desk, hit, actions),
        Tool::DrawFace => draw_face(ui, stage, document, desk, actions),
        Tool::Penetration => place_penetration(ui, stage, document, desk, actions),
        Tool::Block => place_block(ui, stage, document, desk, actions),
        Tool::Tape => tape(ui, stage, desk),
        Tool::Picture => picture::interact(ui, stage, document, desk),
    }
    if ui.input(|input| input.multi_touch().is_some()) {
        give_up(desk, actions);
    }
    drag(ui, stage, document, desk, actions);
    keys::run(ui, document, desk, actions);
    menu::show(stage, document, desk, actions);
    cursor(ui, stage, desk, hit);
}

fn hit_at(stage: &Stage, document: &Document, desk: &Desk, pos: Pos2) -> Hit {
    hit::at(&stage.space, document.job(), &document.plan().layout, desk.selection, pos)
}

/// Ctrl or Alt passes all snaps.
fn free(ui: &Ui) -> bool {
    ui.input(|input| input.modifiers.command || input.modifiers.alt)
}

fn scene<'a>(stage: &Stage, document: &'a Document) -> Scene<'a> {
    Scene {
        job: document.settled(),
        layout: &document.plan().layout,
        reach: stage.space.reach(f64::from(stage.space.grab())),
    }
}

fn select(ui: &Ui, stage: &Stage, document: &Document, desk: &mut Desk, hit: Hit, actions: &mut Actions) {
    let response = &stage.response;
    let beside = ui.input(|input| input.modifiers.shift);
    let thing =
        matches!(hit, Hit::Module { .. } | Hit::Penetration(_) | Hit::Handle { .. } | Hit::RowEnd { .. });
    if response.clicked() && beside && thing {
        actions.push(desk.group.clone().toggled(desk.selection, hit).held());
    } else if response.clicked() || response.secondary_clicked() && !desk.group.has(hit) {
        actions.push(Action::Select(hit.selection(desk.selection)));
    }
    if response.double_clicked() {
        match hit {
            Hit::Module { block, cell } => {
                if let Some(block) = document.job().block(block) {
                    let label = text::switch_of(&text::block_name(&block.name));
                    actions.push(Action::Edit(label, Edit::PutBlock(block.with_switched(cell))));
                }
            }
            Hit::Part(id, PartPlace::Side { ring, side }) => {
                actions.extend(part::add_corner(document.job(), id, ring, side, desk.pointer));
            }
            Hit::Side { face, ring, side } => {
                if let Some(at) = desk.pointer {
                    actions.extend(add_corner(document, face, ring, side, at));
                }
            }
            _ => {}
        }
    }
    if response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        let hit = hit_at(stage, document, desk, origin);
        let plan = stage.space.plan(origin);
        if desk.group.has(hit) {
            desk.gesture = Some(Gesture::MoveGroup { start: desk.group.clone(), grab: plan });
            return;
        }
        desk.gesture = part::begin(hit, document.job(), desk.selection, plan)
            .or_else(|| Gesture::begin(hit, document.job(), &document.plan().layout, plan));
        if desk.gesture.is_some() {
            let selection = match hit {
                Hit::Module { block, .. } => Selection::Block(block),
                // A part that is dragged by one of its faces is held all the while.
                Hit::Face(_) if matches!(desk.selection, Selection::Part(..)) => desk.selection,
                hit => hit.selection(desk.selection),
            };
            actions.push(Action::Select(selection));
        } else {
            let beside = if beside { desk.group.clone() } else { Group::default() };
            desk.gesture = Some(Gesture::Box { from: plan, beside });
        }
    }
}

/// The edit that puts a corner on a side, where the pointer is.
pub(super) fn add_corner(
    document: &Document,
    face: chalkcourse_job::FaceId,
    ring: usize,
    side: usize,
    at: DVec2,
) -> Option<Action> {
    // A face of a part has the corners that follow from the part.
    let face = document.job().face(face).filter(|face| face.from.is_none())?;
    let (_, _, a, b) = face.outline.sides().find(|&(r, s, _, _)| (r, s) == (ring, side))?;
    let on_side = chalkcourse_geometry::nearest_on_segment(at, a, b);
    let next = face.with_corner_added(ring, side, on_side)?;
    let held = Selection::Corner { face: face.id, ring, corner: side + 1 };
    Some(Action::EditAndSelect(text::add_corner_of(&face.name), Edit::PutFace(next), held))
}

/// Ends a drag as if it had not been: at Esc, and when a second finger comes down, which moves the view.
fn give_up(desk: &mut Desk, actions: &mut Actions) {
    if desk.gesture.as_ref().is_some_and(|gesture| !matches!(gesture, Gesture::Dropped)) {
        desk.gesture = Some(Gesture::Dropped);
        desk.guides.clear();
        actions.push(Action::Abort);
    }
}

/// Carries on the drag that is going on, and ends it.
fn drag(ui: &Ui, stage: &Stage, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let Some(gesture) = desk.gesture.clone() else { return };
    let response = &stage.response;
    if ui.input(|input| input.key_pressed(egui::Key::Escape)) {
        give_up(desk, actions);
        return;
    }
    if response.dragged_by(PointerButton::Primary)
        && let Some(pos) = response.interact_pointer_pos()
    {
        let plan = stage.space.plan(pos);
        if let Gesture::Tape { from } = gesture {
            desk.tape = Some((from, plan));
        }
        let alone = ui.input(|input| input.modifiers.shift);
        if let Some(step) = gesture.step(scene(stage, document), plan, free(ui), alone) {
            desk.guides = step.guides;
            actions.push(Action::Preview(step.label, step.edit));
        }
    }
    if response.drag_stopped() || !ui.input(|input| input.pointer.any_down()) {
        if let Gesture::NewBlock { .. } = gesture {
            let id = chalkcourse_job::BlockId(document.settled().next_id);
            actions.push(Action::Commit);
            if document.job().block(id).is_some() {
                actions.push(Action::Select(Selection::Block(id)));
                desk.tool = Tool::Select;
            }
        } else if let Gesture::Box { from, beside } = gesture {
            if let Some(to) = ui.input(|input| input.pointer.latest_pos()) {
                let area = egui::Rect::from_two_pos(stage.space.screen_from_plan(from), to);
                let found = Group::in_box(&stage.space, &document.plan().layout, area);
                actions.push(beside.with(found).held());
            }
        } else if !matches!(gesture, Gesture::Dropped) {
            actions.push(Action::Commit);
        }
        desk.gesture = None;
        desk.guides.clear();
    }
}

fn draw_face(ui: &Ui, stage: &Stage, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let job = document.job();
    if desk.draft.as_ref().is_none_or(|draft| draft.corners.is_empty() && draft.shaped != desk.shaped) {
        desk.draft = Some(Draft::of(desk.shaped, job));
    }
    let Some(draft) = &mut desk.draft else { return };
    let how = Aim { free: free(ui), square: ui.input(|input| input.modifiers.shift) };
    // Pressed and pulled open: a rectangle from where the button went down.
    if stage.response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && draft.corners.is_empty()
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        if draft.shaped == Shaped::Corners {
            *draft = Draft::of(Shaped::Rectangle, job);
        }
        draft.aim(scene(stage, document), stage.space.plan(origin), how);
        draft.set();
    }
    let pos = stage.response.hover_pos().or_else(|| stage.response.interact_pointer_pos());
    if let Some(pos) = pos {
        let typing = !draft.typed.trim().is_empty();
        let aimed = draft.aim(scene(stage, document), stage.space.plan(pos), how);
        // A typed length wants the direction alone.
        desk.guides = if typing { Vec::new() } else { aimed };
    } else {
        desk.guides.clear();
    }
    let pulled = stage.response.drag_stopped_by(PointerButton::Primary) && !draft.corners.is_empty();
    if (stage.response.clicked() || pulled) && draft.set() {
        close_draft(document, desk, actions);
    }
}

/// Makes what was drawn, or says why there is none yet.
pub(super) fn close_draft(document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let Some(draft) = &desk.draft else { return };
    match drawn(draft, document, desk) {
        Ok(done) => {
            actions.push(Action::EditAndSelect(done.label, done.edit, done.selection));
            desk.take(Tool::Select);
            desk.outline_for = OutlineFor::Face;
            // The first face shows where the roof is: bring it into view.
            desk.fit = document.job().faces.is_empty();
        }
        Err(refused) => {
            desk.trouble = refused.at;
            if let Some(draft) = &mut desk.draft {
                // The last corner of a shape is to be set anew.
                if draft.shaped.is_whole(draft.corners.len()) {
                    draft.back();
                }
                draft.wrong = refused.words;
            }
        }
    }
}

/// Where Enter places something: in the middle of the face that is held or shown, else of the first one.
fn by_key(ui: &Ui, document: &Document, desk: &Desk) -> Option<DVec2> {
    if !super::has_keys(ui) || !ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        return None;
    }
    let layout = &document.plan().layout;
    let shown = match desk.view {
        crate::view::View::FaceOn(face) => Some(face),
        _ => desk.selection.face(document.job()),
    };
    let held = shown.and_then(|id| layout.face(id)).map(|(_, face)| face);
    let face = held.or_else(|| layout.roof.faces.first())?;
    Some(face.plane.to_plan(face.bounds.centre()))
}

fn place_penetration(ui: &Ui, stage: &Stage, document: &Document, desk: &Desk, actions: &mut Actions) {
    let pressed = desk.pointer.filter(|_| stage.response.clicked());
    let Some(at) = pressed.or_else(|| by_key(ui, document, desk)) else { return };
    let job = document.job();
    let kind = desk.kind();
    let id = PenetrationId(job.next_id);
    let penetration = Penetration {
        id,
        name: text::new_penetration_name(job, kind),
        kind,
        at,
        shape: kind.usual_shape(),
        clearance: None,
    };
    let label = text::place_of(&penetration.name);
    actions.push(Action::EditAndSelect(label, Edit::PutPenetration(penetration), Selection::Penetration(id)));
}

fn place_block(ui: &Ui, stage: &Stage, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let response = &stage.response;
    let layout = &document.plan().layout;
    let pressed = desk.pointer.filter(|_| response.clicked());
    if let Some(plan) = pressed.or_else(|| by_key(ui, document, desk)) {
        let Some((face, plane)) = hit::face(&stage.space, layout, plan) else {
            actions.push(Action::Say(text::NO_FACE_HERE.now().to_owned()));
            return;
        };
        let mut block = new_block(document.job(), face, plane.to_frame(plan));
        snapped(scene(stage, document), &mut block, free(ui));
        let (label, id) = (text::place_of(&text::block_name(&block.name)), block.id);
        actions.push(Action::EditAndSelect(label, Edit::PutBlock(block), Selection::Block(id)));
        desk.tool = Tool::Select;
    }
    if response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        let plan = stage.space.plan(origin);
        desk.gesture = hit::face(&stage.space, layout, plan).map(|(face, plane)| Gesture::NewBlock {
            face,
            plane,
            from: plane.to_frame(plan),
        });
        if desk.gesture.is_none() {
            actions.push(Action::Say(text::NO_FACE_HERE.now().to_owned()));
        }
    }
}

fn tape(ui: &Ui, stage: &Stage, desk: &mut Desk) {
    if stage.response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        desk.gesture = Some(Gesture::Tape { from: stage.space.plan(origin) });
    }
    if stage.response.clicked() {
        desk.tape = None;
    }
}

fn cursor(ui: &Ui, stage: &Stage, desk: &Desk, hit: Hit) {
    if !stage.response.hovered() && desk.gesture.is_none() {
        return;
    }
    let icon = if pan_key(ui) {
        CursorIcon::Grab
    } else {
        match (&desk.gesture, desk.tool, &hit) {
            (Some(Gesture::ResizeBlock { side, .. }), ..)
            | (None, Tool::Select, Hit::Handle { side, .. }) => match *side {
                (0, _) => CursorIcon::ResizeVertical,
                (_, 0) => CursorIcon::ResizeHorizontal,
                (a, b) if a == b => CursorIcon::ResizeNeSw,
                _ => CursorIcon::ResizeNwSe,
            },
            (Some(Gesture::ShiftRow { .. }), ..) | (None, Tool::Select, Hit::RowEnd { .. }) => {
                CursorIcon::ResizeHorizontal
            }
            (Some(Gesture::Tape { .. }), ..) | (None, Tool::Tape | Tool::DrawFace, _) => {
                CursorIcon::Crosshair
            }
            (Some(_), ..) => CursorIcon::Grabbing,
            (None, Tool::Penetration | Tool::Block | Tool::Picture, _) => CursorIcon::Crosshair,
            (
                None,
                Tool::Select,
                Hit::Corner { .. } | Hit::Part(..) | Hit::Penetration(_) | Hit::Module { .. },
            ) => CursorIcon::Move,
            _ => CursorIcon::Default,
        }
    };
    ui.ctx().set_cursor_icon(icon);
}
