use super::drawn::drawn;
use super::gesture::{Gesture, snapped};
use super::group;
use super::hit::{self, Hit};
use super::snap::Scene;
use super::{Aim, Canvas, Draft, Stage, keys, menu, pan_key, part, picture};
use crate::action::{Action, Actions};
use crate::edits::{self, new_block};
use crate::state::{Group, OutlineFor, PartPlace, Shaped, State, Tool};
use crate::{Document, Selection, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Edit, Penetration, PenetrationId};
use egui::{CursorIcon, EventFilter, PointerButton, Pos2, Ui};

/// What the pointer and the keys of this frame do on the drawing.
pub(crate) fn run(
    ui: &mut Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    actions: &mut Actions,
) {
    let response = &stage.response;
    if response.clicked() || response.drag_started() || response.secondary_clicked() {
        response.request_focus();
    }
    // Arrow keys nudge; they don't wander off to the next button.
    let filter = EventFilter { tab: false, horizontal_arrows: true, vertical_arrows: true, escape: true };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));

    let pos = response.hover_pos().or_else(|| response.interact_pointer_pos());
    let hit = match pos {
        Some(pos) if own.gesture.is_none() => hit_at(stage, document, state, pos),
        _ => Hit::Nothing,
    };
    let hover = match hit {
        _ if own.gesture.is_some() => state.hover,
        Hit::Module { block, cell } => Selection::Module { block, cell },
        hit => hit.selection(state.selection),
    };
    if (state.hover, state.pointer) != (hover, stage.pointer) {
        actions.push(Action::Hover(hover, stage.pointer));
    }
    if state.hover != hover {
        // The lists were drawn before the drawing: what the pointer is on now shows there in the next frame.
        ui.ctx().request_repaint();
    }
    match state.tool {
        Tool::Select => select(ui, stage, document, state, own, hit, actions),
        Tool::DrawFace => draw_face(ui, stage, document, state, own, actions),
        Tool::Penetration => place_penetration(ui, stage, document, state, actions),
        Tool::Block => place_block(ui, stage, document, state, own, actions),
        Tool::Tape => tape(ui, stage, own),
        Tool::Picture => picture::interact(ui, stage, document, own),
    }
    if ui.input(|input| input.multi_touch().is_some()) {
        give_up(own, actions);
    }
    drag(ui, stage, document, own, actions);
    keys::run(ui, stage, document, state, own, actions);
    menu::show(stage, document, state, actions);
    cursor(ui, stage, state, own, hit);
}

fn hit_at(stage: &Stage, document: &Document, state: &State, pos: Pos2) -> Hit {
    hit::at(&stage.space, document.job(), &document.plan().layout, state.selection, pos)
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

fn select(
    ui: &Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    hit: Hit,
    actions: &mut Actions,
) {
    let response = &stage.response;
    let beside = ui.input(|input| input.modifiers.shift);
    let thing =
        matches!(hit, Hit::Module { .. } | Hit::Penetration(_) | Hit::Handle { .. } | Hit::RowEnd { .. });
    if response.clicked() && beside && thing {
        let group = group::toggled(state.group.clone(), state.selection, hit);
        actions.push(edits::group::held(group));
    } else if response.clicked() || response.secondary_clicked() && !group::has(&state.group, hit) {
        actions.push(Action::Select(hit.selection(state.selection)));
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
                actions.extend(edits::part::add_corner(document.job(), id, ring, side, stage.pointer));
            }
            Hit::Side { face, ring, side } => {
                if let Some(at) = stage.pointer {
                    actions.extend(edits::add_corner(document, face, ring, side, at));
                }
            }
            _ => {}
        }
    }
    if response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        let hit = hit_at(stage, document, state, origin);
        let plan = stage.space.plan(origin);
        if group::has(&state.group, hit) {
            own.gesture = Some(Gesture::MoveGroup { start: state.group.clone(), grab: plan });
            return;
        }
        own.gesture = part::begin(hit, document.job(), state.selection, plan)
            .or_else(|| Gesture::begin(hit, document.job(), &document.plan().layout, plan));
        if own.gesture.is_some() {
            let selection = match hit {
                Hit::Module { block, .. } => Selection::Block(block),
                // A part that is dragged by one of its faces is held all the while.
                Hit::Face(_) if matches!(state.selection, Selection::Part(..)) => state.selection,
                hit => hit.selection(state.selection),
            };
            actions.push(Action::Select(selection));
        } else {
            let beside = if beside { state.group.clone() } else { Group::default() };
            own.gesture = Some(Gesture::Box { from: plan, beside });
        }
    }
}

/// Ends a drag as if it had not been: at Esc, and when a second finger comes down, which moves the view.
fn give_up(own: &mut Canvas, actions: &mut Actions) {
    if own.gesture.as_ref().is_some_and(|gesture| !matches!(gesture, Gesture::Dropped)) {
        own.gesture = Some(Gesture::Dropped);
        own.guides.clear();
        actions.push(Action::Abort);
    }
}

/// Carries on the drag that is going on, and ends it.
fn drag(ui: &Ui, stage: &Stage, document: &Document, own: &mut Canvas, actions: &mut Actions) {
    let Some(gesture) = own.gesture.clone() else { return };
    let response = &stage.response;
    if ui.input(|input| input.key_pressed(egui::Key::Escape)) {
        give_up(own, actions);
        return;
    }
    if response.dragged_by(PointerButton::Primary)
        && let Some(pos) = response.interact_pointer_pos()
    {
        let plan = stage.space.plan(pos);
        if let Gesture::Tape { from } = gesture {
            own.tape = Some((from, plan));
        }
        let alone = ui.input(|input| input.modifiers.shift);
        if let Some(step) = gesture.step(scene(stage, document), plan, free(ui), alone) {
            own.guides = step.guides;
            actions.push(Action::Preview(step.label, step.edit));
        }
    }
    if response.drag_stopped() || !ui.input(|input| input.pointer.any_down()) {
        if let Gesture::NewBlock { .. } = gesture {
            let id = chalkcourse_job::BlockId(document.settled().next_id);
            actions.push(Action::Commit);
            if document.job().block(id).is_some() {
                actions.push(Action::Select(Selection::Block(id)));
                actions.push(Action::Use(Tool::Select));
            }
        } else if let Gesture::Box { from, beside } = gesture {
            if let Some(to) = ui.input(|input| input.pointer.latest_pos()) {
                let area = egui::Rect::from_two_pos(stage.space.screen_from_plan(from), to);
                let found = group::in_box(&stage.space, &document.plan().layout, area);
                actions.push(edits::group::held(beside.with(found)));
            }
        } else if !matches!(gesture, Gesture::Dropped) {
            actions.push(Action::Commit);
        }
        own.gesture = None;
        own.guides.clear();
    }
}

fn draw_face(
    ui: &Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    actions: &mut Actions,
) {
    let job = document.job();
    if own.draft.as_ref().is_none_or(|draft| draft.corners.is_empty() && draft.shaped != state.shaped) {
        own.draft = Some(Draft::of(state.shaped, job));
    }
    let Some(draft) = &mut own.draft else { return };
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
        own.guides = if typing { Vec::new() } else { aimed };
    } else {
        own.guides.clear();
    }
    let pulled = stage.response.drag_stopped_by(PointerButton::Primary) && !draft.corners.is_empty();
    if (stage.response.clicked() || pulled) && draft.set() {
        close_draft(document, state, own, actions);
    }
}

/// Makes what was drawn, or says why there is none yet.
pub(super) fn close_draft(document: &Document, state: &State, own: &mut Canvas, actions: &mut Actions) {
    let Some(draft) = &mut own.draft else { return };
    match drawn(draft, document, state) {
        Ok(done) => {
            actions.push(Action::EditAndSelect(done.label, done.edit, done.selection));
            actions.push(Action::Use(Tool::Select));
            actions.push(Action::OutlineFor(OutlineFor::Face));
            // The first face shows where the roof is: bring it into view.
            if document.job().faces.is_empty() {
                actions.push(Action::Fit);
            }
        }
        Err(refused) => {
            actions.push(Action::Trouble(refused.at));
            // The last corner of a shape is to be set anew.
            if draft.shaped.is_whole(draft.corners.len()) {
                draft.back();
            }
            draft.wrong = refused.words;
        }
    }
}

/// Where Enter places something: in the middle of the face that is held or shown, else of the first one.
fn by_key(ui: &Ui, document: &Document, state: &State) -> Option<DVec2> {
    if !super::has_keys(ui) || !ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        return None;
    }
    let layout = &document.plan().layout;
    let shown = match state.view {
        crate::state::View::FaceOn(face) => Some(face),
        _ => state.selection.face(document.job()),
    };
    let held = shown.and_then(|id| layout.face(id)).map(|(_, face)| face);
    let face = held.or_else(|| layout.roof.faces.first())?;
    Some(face.plane.to_plan(face.bounds.centre()))
}

fn place_penetration(ui: &Ui, stage: &Stage, document: &Document, state: &State, actions: &mut Actions) {
    let pressed = stage.pointer.filter(|_| stage.response.clicked());
    let Some(at) = pressed.or_else(|| by_key(ui, document, state)) else { return };
    let job = document.job();
    let kind = state.kind();
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

fn place_block(
    ui: &Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    actions: &mut Actions,
) {
    let response = &stage.response;
    let layout = &document.plan().layout;
    let pressed = stage.pointer.filter(|_| response.clicked());
    if let Some(plan) = pressed.or_else(|| by_key(ui, document, state)) {
        let Some((face, plane)) = hit::face(&stage.space, layout, plan) else {
            actions.push(Action::Say(text::NO_FACE_HERE.now().to_owned()));
            return;
        };
        let mut block = new_block(document.job(), face, plane.to_frame(plan));
        snapped(scene(stage, document), &mut block, free(ui));
        let (label, id) = (text::place_of(&text::block_name(&block.name)), block.id);
        actions.push(Action::EditAndSelect(label, Edit::PutBlock(block), Selection::Block(id)));
        actions.push(Action::Use(Tool::Select));
    }
    if response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        let plan = stage.space.plan(origin);
        own.gesture = hit::face(&stage.space, layout, plan).map(|(face, plane)| Gesture::NewBlock {
            face,
            plane,
            from: plane.to_frame(plan),
        });
        if own.gesture.is_none() {
            actions.push(Action::Say(text::NO_FACE_HERE.now().to_owned()));
        }
    }
}

fn tape(ui: &Ui, stage: &Stage, own: &mut Canvas) {
    if stage.response.drag_started_by(PointerButton::Primary)
        && !pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        own.gesture = Some(Gesture::Tape { from: stage.space.plan(origin) });
    }
    if stage.response.clicked() {
        own.tape = None;
    }
}

fn cursor(ui: &Ui, stage: &Stage, state: &State, own: &Canvas, hit: Hit) {
    if !stage.response.hovered() && own.gesture.is_none() {
        return;
    }
    let icon = if pan_key(ui) {
        CursorIcon::Grab
    } else {
        match (&own.gesture, state.tool, &hit) {
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
