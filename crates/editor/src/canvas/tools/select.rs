use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::gesture::{Drag, Gesture};
use crate::canvas::group;
use crate::canvas::hit::{Hit, resize_cursor};
use crate::state::{Group, PartPlace, State};
use crate::{Document, Selection, edits, state, text};
use chalkcourse_job::Edit;
use egui::CursorIcon;

/// Selects, drags, switches modules.
#[derive(Debug, Default)]
pub(super) struct Select;

impl Tool for Select {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, actions: &mut Actions) {
        let (document, state, hit) = (at.document, at.state, at.hit);
        let response = &at.stage.response;
        let beside = at.shift();
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
                        let label = text::switch_of(text::block_heading(&block.name));
                        actions.push(Action::Edit(label, Edit::PutBlock(block.with_switched(cell))));
                    }
                }
                Hit::Part(id, PartPlace::Side { ring, side }) => {
                    actions.extend(edits::part::add_corner(document.job(), id, ring, side, at.stage.pointer));
                }
                Hit::Side { face, ring, side } => {
                    if let Some(at) = at.stage.pointer {
                        actions.extend(edits::add_corner(document, face, ring, side, at));
                    }
                }
                _ => {}
            }
        }
        if let Some(origin) = at.drag_from() {
            let hit = at.hit_at(origin);
            let plan = at.stage.space.plan(origin);
            if group::has(&state.group, hit) {
                drag.gesture = Some(Gesture::MoveGroup { start: state.group.clone(), grab: plan });
                return;
            }
            let layout = &document.plan().layout;
            drag.gesture = Gesture::begin(hit, document.job(), layout, state.selection, plan);
            if drag.gesture.is_some() {
                let selection = match hit {
                    Hit::Module { block, .. } => Selection::Block(block),
                    // A part dragged by one of its faces stays selected.
                    Hit::Face(_) if matches!(state.selection, Selection::Part(..)) => state.selection,
                    hit => hit.selection(state.selection),
                };
                actions.push(Action::Select(selection));
            } else {
                let beside = if beside { state.group.clone() } else { Group::default() };
                drag.gesture = Some(Gesture::Box { from: plan, beside });
            }
        }
    }

    fn dropped(&mut self, gesture: Gesture, at: &Frame, actions: &mut Actions) {
        let Gesture::Box { from, beside } = gesture else {
            actions.push(Action::Commit);
            return;
        };
        if let Some(to) = at.ui.input(|input| input.pointer.latest_pos()) {
            let space = &at.stage.space;
            let area = egui::Rect::from_two_pos(space.screen_from_plan(from), to);
            let found = group::in_box(space, &at.document.plan().layout, area);
            actions.push(edits::group::held(beside.with(found)));
        }
    }

    fn cursor(&self, over: Hit) -> CursorIcon {
        match over {
            Hit::Handle { side, .. } => resize_cursor(side),
            Hit::RowEnd { .. } => CursorIcon::ResizeHorizontal,
            Hit::Corner { .. }
            | Hit::Part(..)
            | Hit::Penetration(_)
            | Hit::JunctionBox(_)
            | Hit::Module { .. } => CursorIcon::Move,
            _ => CursorIcon::Default,
        }
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Select, 0, document.job())
    }
}
