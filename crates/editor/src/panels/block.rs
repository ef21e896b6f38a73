use super::{heading, quiet};
use crate::action::{Action, Actions};
use crate::edits::{Growth, grown};
use crate::state::State;
use crate::widgets::{arrange, fields};
use crate::{Document, Selection, text};
use chalkcourse_geometry::{Length, dvec2};
use chalkcourse_job::{Block, BlockId, Edit, Orientation};
use egui::Ui;

/// The form of a block: size, gaps, position, modules.
pub(super) fn block_form(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    id: BlockId,
    actions: &mut Actions,
) {
    let job = document.job();
    let Some(block) = job.block(id) else { return };
    let units = job.units;
    heading(ui, &text::block_heading(&block.name).now());
    ui.columns(2, |columns| {
        arrange::arrange_buttons(columns, document, state.selection, state.view.seen(), id, actions);
    });
    let mut put = |next: Block| {
        actions.push(Action::Edit(text::change_of(text::block_heading(&block.name)), Edit::PutBlock(next)));
    };
    if let Selection::Module { cell, .. } = state.selection {
        let off = block.off.contains(&cell);
        // Below each other: side by side they would widen the panel, and the drawing would jump.
        ui.strong(text::module_words(cell, off));
        if ui.button(if off { text::SWITCH_ON.now() } else { text::SWITCH_OFF.now() }).clicked() {
            put(block.with_switched(cell));
        }
    }
    if let Some(name) = fields::name(ui, text::NAME.now(), &block.name) {
        put(Block { name, ..block.clone() });
    }
    let more = |rows: u32, columns: u32| Growth {
        top: i64::from(rows) - i64::from(block.rows),
        right: i64::from(columns) - i64::from(block.columns),
        ..Growth::default()
    };
    if let Some(rows) = fields::count(ui, text::ROWS.now(), block.rows, text::ROWS_HELP.now()) {
        put(grown(block, job, more(rows, block.columns)));
    }
    if let Some(columns) = fields::count(ui, text::COLUMNS.now(), block.columns, text::COLUMNS_HELP.now()) {
        put(grown(block, job, more(block.rows, columns)));
    }
    let ways =
        [(Orientation::Landscape, text::LANDSCAPE.now()), (Orientation::Portrait, text::PORTRAIT.now())];
    if let Some(orientation) = fields::choice(ui, text::MODULES_LIE.now(), block.orientation, &ways) {
        put(Block { orientation, ..block.clone() });
    }
    if let Some(reveal) =
        fields::length(ui, text::REVEAL.now(), block.reveal, units, true, text::REVEAL_HELP.now())
    {
        put(Block { reveal, ..block.clone() });
    }
    faces(ui, document, block, &mut put);
    place(ui, document, block, &mut put);
    shifts(ui, block, units, &mut put);
    let mut locked = block.locked;
    if ui.checkbox(&mut locked, text::LOCKED.now()).on_hover_text(text::LOCKED_HELP.now()).changed() {
        put(Block { locked, ..block.clone() });
    }
    if ui.button(text::DELETE_BLOCK.now()).clicked() {
        actions.extend(crate::edits::delete(document, Selection::Block(id)));
    }
}

fn faces(ui: &mut Ui, document: &Document, block: &Block, put: &mut impl FnMut(Block)) {
    let faces: Vec<_> = document.job().faces.iter().map(|face| (face.id, face.name.as_str())).collect();
    if let Some(face) = fields::choice(ui, text::FACE.now(), block.face, &faces) {
        put(Block { face, ..block.clone() });
    }
}

/// The position of its lower left corner relative to the face's, as a crew snaps it.
fn place(ui: &mut Ui, document: &Document, block: &Block, put: &mut impl FnMut(Block)) {
    let Some((_, face)) = document.plan().layout.face(block.face) else { return };
    let units = document.job().units;
    let from = block.at - face.bounds.min;
    let left = Length::from_metres(from.x);
    if let Some(left) =
        fields::length(ui, text::FROM_LEFT.now(), left, units, false, text::FROM_LEFT_HELP.now())
    {
        put(Block { at: face.bounds.min + dvec2(left.metres(), from.y), ..block.clone() });
    }
    let up = Length::from_metres(from.y);
    if let Some(up) = fields::length(ui, text::FROM_EAVE.now(), up, units, false, text::FROM_EAVE_HELP.now())
    {
        put(Block { at: face.bounds.min + dvec2(from.x, up.metres()), ..block.clone() });
    }
}

fn shifts(ui: &mut Ui, block: &Block, units: chalkcourse_geometry::Units, put: &mut impl FnMut(Block)) {
    if block.rows < 2 {
        return;
    }
    egui::CollapsingHeader::new(text::ROW_SHIFTS.now()).id_salt("shifts").default_open(false).show(
        ui,
        |ui| {
            for row in (0..block.rows.min(40)).rev() {
                let by = block.shift(row);
                if let Some(by) =
                    fields::length(ui, &text::row_name(row), by, units, true, text::SHIFT_HELP.now())
                {
                    put(block.with_shift(row, by));
                }
            }
            quiet(ui, text::SHIFT_HELP.now());
        },
    );
}
