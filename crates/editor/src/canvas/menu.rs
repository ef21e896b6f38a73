//! The context menu of the drawing, by right click or long press.

use super::Stage;
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{PartPlace, State, Tool, View};
use crate::widgets::arrange::arrange_buttons;
use crate::{Document, Selection, edits, text};
use chalkcourse_job::Edit;
use egui::{Popup, Pos2, Rect, Role, Sense, Ui, Vec2, WidgetInfo};

/// The context menu opened by a key.
#[derive(Debug, Default)]
pub(super) struct MenuByKey {
    asked: bool,
    /// Its corner, while it is open.
    at: Option<Pos2>,
}

impl MenuByKey {
    /// Opens it in this frame or the next.
    pub(super) fn ask(&mut self) {
        self.asked = true;
    }
}

/// Shows the menu while it is open. A click that opens it also selects the object; a key opens it for the selection.
pub(crate) fn context_menu(
    stage: &Stage,
    document: &Document,
    state: &State,
    by_key: &mut MenuByKey,
    actions: &mut Actions,
) {
    let (ctx, id) = (&stage.response.ctx, Popup::default_response_id(&stage.response));
    let head = id.with("head");
    if std::mem::take(&mut by_key.asked) {
        by_key.at = Some(place_of(stage, state));
        Popup::open_id(ctx, id);
        ctx.memory_mut(|memory| memory.request_focus(head));
    } else if !Popup::is_id_open(ctx, id) || stage.response.secondary_clicked() {
        by_key.at = None;
    }
    let mut popup = Popup::context_menu(&stage.response);
    if let Some(at) = by_key.at {
        popup = popup.at_position(at);
    }
    popup.show(|ui| {
        if by_key.at.is_some() {
            // Start keyboard navigation above the first entry.
            let room = Rect::from_min_size(ui.cursor().min, Vec2::new(ui.available_width(), 1.0));
            let head = ui.interact(room, head, Sense::focusable_noninteractive());
            head.widget_info(|| WidgetInfo::labeled(Role::Menu, true, text::HELD_MENU.now()));
        }
        contents(ui, document, state, actions);
    });
}

/// The middle of the selection if visible, otherwise of the drawing.
fn place_of(stage: &Stage, state: &State) -> Pos2 {
    let held = stage.response.ctx.read_response(super::item::id(state.selection));
    held.map_or_else(|| stage.space.area.center(), |held| held.rect.center())
}

/// The clipboard commands for the selection.
fn copies(ui: &mut Ui, actions: &mut Actions) {
    for command in [Command::Cut, Command::Copy, Command::Duplicate] {
        let button = egui::Button::new(command.title()).shortcut_text(command.key_words(ui.ctx()));
        if ui.add(button).on_hover_text(command.help()).clicked() {
            actions.push(command.action());
        }
    }
}

fn contents(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    ui.set_min_width(190.0);
    let (job, seen) = (document.job(), state.view.seen());
    match state.selection {
        Selection::Module { block, cell } => {
            let off = job.block(block).is_some_and(|b| b.off.contains(&cell));
            if ui.button(if off { text::SWITCH_ON.now() } else { text::SWITCH_OFF.now() }).clicked() {
                actions.extend(edits::switch(document, state.selection));
            }
            ui.separator();
            arrange_buttons(std::slice::from_mut(ui), document, state.selection, seen, block, actions);
            ui.separator();
            copies(ui, actions);
            if ui.button(text::DELETE_BLOCK.now()).clicked() {
                actions.extend(edits::delete(document, Selection::Block(block)));
            }
        }
        Selection::Block(id) => {
            arrange_buttons(std::slice::from_mut(ui), document, state.selection, seen, id, actions);
            ui.separator();
            if let Some(block) = job.block(id).filter(|b| !b.off.is_empty())
                && ui.button(text::SWITCH_ALL_ON.now()).clicked()
            {
                let mut block = block.clone();
                block.off.clear();
                actions.push(Action::Edit(
                    text::switch_of(text::block_heading(&block.name)),
                    Edit::PutBlock(block),
                ));
            }
            copies(ui, actions);
            if ui.button(text::DELETE_BLOCK.now()).clicked() {
                actions.extend(edits::delete(document, state.selection));
            }
        }
        Selection::Side { face, ring, side } => {
            if ui.button(text::ADD_CORNER.now()).clicked() {
                let middle = job.face(face).and_then(|f| {
                    f.outline
                        .sides()
                        .find(|&(r, s, _, _)| (r, s) == (ring, side))
                        .map(|(_, _, a, b)| (a + b) / 2.0)
                });
                if let Some(at) = middle {
                    actions.extend(edits::add_corner(document, face, ring, side, at));
                }
            }
        }
        Selection::Corner { .. } => {
            if ui.button(text::DELETE_CORNER.now()).clicked() {
                actions.extend(edits::delete(document, state.selection));
            }
        }
        Selection::Part(id, place) => {
            match place {
                PartPlace::Side { ring, side } => {
                    if ui.button(text::ADD_CORNER.now()).clicked() {
                        actions.extend(edits::part::add_corner(job, id, ring, side, None));
                    }
                }
                PartPlace::Corner { .. } => {
                    if ui.button(text::DELETE_CORNER.now()).clicked() {
                        actions.extend(edits::delete(document, state.selection));
                    }
                }
                PartPlace::Whole => {}
            }
            if ui.button(text::SET_FREE.now()).on_hover_text(text::SET_FREE_HELP.now()).clicked()
                && let Some(part) = job.part(id)
            {
                let label = text::change_of(&part.name);
                actions.push(Action::EditAndSelect(label, Edit::FreePart(id), Selection::Nothing));
            }
            if ui.button(text::DELETE_PART.now()).clicked() {
                actions.extend(edits::delete(document, Selection::Part(id, PartPlace::Whole)));
            }
        }
        Selection::JunctionBox(_) => {
            if ui.button(text::DELETE_BOX.now()).clicked() {
                actions.extend(edits::delete(document, state.selection));
            }
        }
        Selection::Circuit(id) => {
            if ui.button(text::BEST_ORDER.now()).clicked() {
                actions.extend(edits::wiring::best_order(document, id));
            }
            if let Some(circuit) = job.circuit(id)
                && ui.button(text::TURN_ABOUT.now()).clicked()
            {
                actions.push(edits::wiring::reversed(circuit));
            }
            if ui.button(text::DELETE_CIRCUIT.now()).clicked() {
                actions.extend(edits::delete(document, state.selection));
            }
        }
        Selection::Penetration(_) => {
            copies(ui, actions);
            if ui.button(text::DELETE_PENETRATION.now()).clicked() {
                actions.extend(edits::delete(document, state.selection));
            }
        }
        Selection::Face(id) => {
            if state.view == View::Plan && ui.button(text::SHOW_FACE_ON.now()).clicked() {
                actions.push(Command::FaceOnView.action());
            }
            if let Some(from) = job.face(id).and_then(|face| face.from)
                && ui.button(text::SHOW_PART.now()).clicked()
            {
                actions.push(Action::Select(Selection::Part(from.part, PartPlace::Whole)));
            }
            if ui.button(text::FILL_THIS_FACE.now()).clicked() {
                actions.push(Action::Fill(vec![id]));
            }
            if ui.button(text::PLACE_BLOCK.now()).clicked() {
                actions.push(Action::Use(Tool::Block));
            }
            if ui.button(text::DELETE_FACE.now()).clicked() {
                actions.extend(edits::delete(document, state.selection));
            }
        }
        Selection::Nothing => {
            if ui.button(text::TOOL_FACE.now()).clicked() {
                actions.push(Action::Use(Tool::DrawFace));
            }
        }
    }
    ui.separator();
    if ui.button(text::FIT.now()).clicked() {
        actions.push(Command::Fit.action());
    }
}
