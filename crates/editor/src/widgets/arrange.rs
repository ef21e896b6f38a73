//! Commands on a block: the same buttons in its panel and in its menu.

use crate::action::Actions;
use crate::commands::Command;
use crate::edits::arranging;
use crate::{Document, Selection, text};
use chalkcourse_job::{Block, BlockId};
use chalkcourse_plan::{Align, Cut, Seen, Spread, other_slope};
use egui::{Button, Response, ScrollArea, Ui};

/// Taller menus scroll.
const MENU_HEIGHT: f32 = 320.0;

/// Buttons for a block, distributed over columns; `held` is the selected module, `seen` determines which end is left.
pub(crate) fn arrange_buttons(
    columns: &mut [Ui],
    document: &Document,
    held: Selection,
    seen: Seen,
    id: BlockId,
    actions: &mut Actions,
) {
    let job = document.job();
    let Some(block) = job.block(id) else { return };
    let count = columns.len().max(1);
    let mut deal = |nth: usize, add: &mut dyn FnMut(&mut Ui)| {
        if let Some(ui) = columns.get_mut(nth % count) {
            add(ui);
        }
    };
    deal(0, &mut |ui| {
        let trouble = arranging::is_in_trouble(document, id);
        let room = ui.add_enabled(trouble, Button::new(text::MAKE_ROOM.now()));
        let help = Command::MakeRoom.tip(ui.ctx());
        if told(room, &help, text::NOTHING_IN_THE_WAY.now()).clicked() {
            actions.push(Command::MakeRoom.action());
        }
    });
    deal(1, &mut |ui| {
        let other = other_slope(&document.plan().layout, block.face).and_then(|face| job.face(face));
        let words = other.map_or_else(|| text::MIRROR.now().to_owned(), |face| text::mirror_to(&face.name));
        let mirror = ui.add_enabled(other.is_some(), Button::new(words).truncate());
        let help = Command::Mirror.tip(ui.ctx());
        if told(mirror, &help, text::NO_OTHER_SLOPE.now()).clicked() {
            actions.push(arranging::mirrored(document, id));
        }
    });
    deal(2, &mut |ui| {
        menu(ui, text::COPY_TO.now(), job.faces.len() > 1, text::NO_OTHER_FACE.now(), |ui| {
            for face in job.faces.iter().filter(|face| face.id != block.face) {
                if ui.button(&face.name).clicked() {
                    actions.push(arranging::copied(document, id, face.id));
                }
            }
        });
    });
    deal(3, &mut |ui| {
        menu(ui, text::SPLIT.now(), block.rows > 1 || block.columns > 1, text::NO_SPLIT.now(), |ui| {
            let plane = job.face(block.face).map(chalkcourse_job::Face::plane);
            for (cut, plane) in
                plane.iter().flat_map(|plane| cuts(block, held).into_iter().map(move |c| (c, plane)))
            {
                if ui.button(text::cut(cut, plane, seen)).clicked() {
                    actions.push(arranging::cut(document, id, cut));
                }
            }
        });
    });
    let beside: Vec<&Block> =
        job.blocks.iter().filter(|other| other.id != id && other.face == block.face).collect();
    deal(4, &mut |ui| {
        menu(ui, text::JOIN.now(), !beside.is_empty(), text::NOT_FLUSH.now(), |ui| {
            let others = arranging::joinable(document, id);
            if others.is_empty() {
                ui.set_max_width(240.0);
                ui.label(text::NOT_FLUSH.now());
            }
            for other in others {
                if ui.button(text::block_heading(&other.name).now()).clicked() {
                    actions.push(arranging::joined(document, id, other.id));
                }
            }
        });
    });
    deal(6, &mut |ui| {
        menu(ui, text::SPREAD.now(), beside.len() > 1, text::NOT_SPREAD.now(), |ui| {
            for (way, words) in [(Spread::Along, text::SPREAD_ALONG), (Spread::Up, text::SPREAD_UP)] {
                if ui.button(words.now()).on_hover_text(text::SPREAD_HELP.now()).clicked() {
                    actions.push(arranging::spread(document, id, way));
                }
            }
        });
    });
    deal(5, &mut |ui| {
        menu(ui, text::ALIGN.now(), !beside.is_empty(), text::NOT_ALIGNED.now(), |ui| {
            for other in &beside {
                for to in [Align::Left, Align::Right, Align::Bottom] {
                    if ui.button(text::align_to(to, &text::block_heading(&other.name).now())).clicked() {
                        actions.push(arranging::aligned(document, id, other.id, to, seen));
                    }
                }
            }
        });
    });
}

/// The splits beside the selected module; all if none is selected.
fn cuts(block: &Block, held: Selection) -> Vec<Cut> {
    let (rows, columns) = match held {
        Selection::Module { cell, .. } => (cell.row..cell.row + 2, cell.column..cell.column + 2),
        _ => (1..block.rows, 1..block.columns),
    };
    let rows = rows.filter(|n| (1..block.rows).contains(n)).map(Cut::AboveRows);
    rows.chain(columns.filter(|n| (1..block.columns).contains(n)).map(Cut::RightOfColumns)).collect()
}

fn told(button: Response, help: &str, why_not: &str) -> Response {
    button.on_hover_text(help).on_disabled_hover_text(why_not)
}

fn menu(ui: &mut Ui, words: &str, enabled: bool, why_not: &str, contents: impl FnOnce(&mut Ui)) {
    ui.add_enabled_ui(enabled, |ui| {
        let button = ui.menu_button(format!("{words}…"), |ui| {
            ScrollArea::vertical().max_height(MENU_HEIGHT).show(ui, contents);
        });
        button.response.on_disabled_hover_text(why_not);
    });
}
