//! The command palette: finds every command by its words, and every object of the job by its name.

use super::Windows;
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{PartPlace, State};
use crate::widgets::quiet;
use crate::{Document, Selection, text};
use chalkcourse_words::common::{BLOCK_2, FACE};
use chalkcourse_words::plain;
use egui::{Button, Context, Key, Modifiers, ScrollArea, TextEdit, Ui};

/// The search text, and the index of the line that Enter activates.
#[derive(Debug, Default)]
pub(crate) struct Palette {
    typed: String,
    at: usize,
    shown: bool,
}

/// Shows the search field and its results.
pub(super) fn palette_window(
    ctx: &Context,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let Some(mut palette) = windows.palette.take() else { return };
    let key = |key: Key| ctx.input_mut(|input| input.consume_key(Modifiers::NONE, key));
    let (left, down, up) = (key(Key::Escape), key(Key::ArrowDown), key(Key::ArrowUp));
    let entered = key(Key::Enter);
    let found = matching(&palette.typed, document);
    let last = found.len().saturating_sub(1);
    palette.at = (palette.at.saturating_add(usize::from(down)).min(last)).saturating_sub(usize::from(up));
    let mut run = found.get(palette.at).filter(|it| entered && it.can(document, state)).cloned();
    let mut open = true;
    egui::Window::new(text::FIND_COMMAND.now().trim_end_matches('…'))
        .id(egui::Id::unique(text::FIND_COMMAND.now()))
        .open(&mut open)
        .collapsible(false)
        .resizable(false)
        .anchor(egui::Align2::CENTER_TOP, [0.0, 84.0])
        .show(ctx, |ui| {
            ui.set_width(380.0);
            let field = TextEdit::singleline(&mut palette.typed)
                .hint_text(text::FIND_HINT.now())
                .desired_width(f32::INFINITY)
                .margin(egui::Margin::symmetric(6, 4));
            let field = ui.add(field).accessible_name(text::FIND_FIELD.now());
            if !palette.shown || !field.has_focus() {
                field.request_focus();
            }
            if field.changed() {
                palette.at = 0;
            }
            let pressed = list(ui, &found, palette.at, down || up, document, state);
            run = run.take().or(pressed);
        });
    palette.shown = true;
    if let Some(found) = run {
        actions.push(found.action());
    } else if open && !left {
        windows.palette = Some(palette);
    }
}

fn list(
    ui: &mut Ui,
    found: &[Found],
    at: usize,
    moved: bool,
    document: &Document,
    state: &State,
) -> Option<Found> {
    if found.is_empty() {
        quiet(ui, text::FIND_NOTHING.now());
    }
    let mut run = None;
    ScrollArea::vertical().max_height(320.0).show(ui, |ui| {
        ui.with_layout(egui::Layout::top_down_justified(egui::Align::Min), |ui| {
            for (nth, it) in found.iter().enumerate() {
                let mut button = Button::selectable(nth == at, it.title());
                let beside = it.beside(ui.ctx());
                if !beside.is_empty() {
                    button = button.shortcut_text(beside);
                }
                let row = ui.add_enabled(it.can(document, state), button);
                if nth == at && moved {
                    row.scroll_to_me(None);
                }
                let row = match it {
                    Found::Command(command) => row.on_hover_text(command.help()),
                    Found::Thing { .. } => row,
                };
                if row.on_disabled_hover_text(text::FIND_NOT_NOW.now()).clicked() {
                    run = Some(it.clone());
                }
            }
        });
    });
    run
}

/// A line of the results.
#[derive(Clone, Debug, PartialEq)]
enum Found {
    Command(Command),
    /// An object of the job to go to, its name, and its kind.
    Thing {
        what: Selection,
        name: String,
        kind: &'static str,
    },
}

impl Found {
    fn title(&self) -> &str {
        match self {
            Self::Command(command) => command.title(),
            Self::Thing { name, .. } => name,
        }
    }

    /// The text at the end of the line: the key, or the kind.
    fn beside(&self, ctx: &Context) -> String {
        match self {
            Self::Command(command) => command.key_words(ctx),
            Self::Thing { name, kind, .. } if plain(name).starts_with(&plain(kind)) => String::new(),
            Self::Thing { kind, .. } => (*kind).to_owned(),
        }
    }

    fn can(&self, document: &Document, state: &State) -> bool {
        match self {
            Self::Command(command) => command.can(document, state),
            Self::Thing { .. } => true,
        }
    }

    fn action(&self) -> Action {
        match self {
            Self::Command(command) => command.action(),
            Self::Thing { what, .. } => Action::GoTo(*what),
        }
    }

    /// The text that is searched: for an object including its kind.
    fn words(&self) -> String {
        match self {
            Self::Command(command) => plain(command.title()),
            Self::Thing { name, kind, .. } => plain(&format!("{name} {kind}")),
        }
    }
}

/// Every face, part, block, penetration, circuit and junction box.
fn things(document: &Document) -> Vec<Found> {
    let job = document.job();
    let thing = |what, name: String, kind| Found::Thing { what, name, kind };
    let faces = job.faces.iter().map(|face| thing(Selection::Face(face.id), face.name.clone(), FACE.now()));
    let parts = job.parts.iter().map(|part| {
        thing(Selection::Part(part.id, PartPlace::Whole), part.name.clone(), part.kind.name().now())
    });
    let blocks = job.blocks.iter().map(|block| {
        thing(Selection::Block(block.id), text::block_heading(&block.name).into(), BLOCK_2.now())
    });
    let penetrations = job
        .penetrations
        .iter()
        .map(|it| thing(Selection::Penetration(it.id), it.name.clone(), text::kind(it.kind)));
    let circuits = job.circuits.iter().map(|circuit| {
        let name = text::circuit_heading(&circuit.name).to_string();
        thing(Selection::Circuit(circuit.id), name, text::CIRCUITS.now())
    });
    let boxes = job
        .boxes
        .iter()
        .map(|it| thing(Selection::JunctionBox(it.id), it.name.clone(), text::JUNCTION_BOX.now()));
    faces.chain(parts).chain(blocks).chain(penetrations).chain(circuits).chain(boxes).collect()
}

/// Most objects in the list: another search word narrows it.
const MOST_THINGS: usize = 60;

/// Commands and objects in whose names each typed word is a prefix of some word; names that start with the first word
/// come first, and among those objects before commands. Without a search only commands are listed.
fn matching(typed: &str, document: &Document) -> Vec<Found> {
    let typed = plain(typed);
    let words: Vec<&str> = typed.split_whitespace().collect();
    let fits = |found: &Found| {
        let name = found.words();
        words.iter().all(|word| name.split([' ', '-', '–']).any(|of_name| of_name.starts_with(word)))
    };
    let begins = |found: &Found| words.first().is_some_and(|word| plain(found.title()).starts_with(word));
    let commands = Command::every().filter(|command| *command != Command::Find).map(Found::Command);
    let things = if words.is_empty() { Vec::new() } else { things(document) };
    let mut found: Vec<Found> = things.into_iter().filter(fits).take(MOST_THINGS).collect();
    found.extend(commands.filter(fits));
    found.sort_by_key(|found| !begins(found));
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;

    fn document() -> Document {
        Document::new(sample::alder_court().unwrap(), None)
    }

    #[test]
    fn words_find_a_command_in_any_order() {
        let matching = |typed| matching(typed, &document());
        assert_eq!(matching("csv order"), [Found::Command(Command::ExportCsv)]);
        assert_eq!(matching("und").first(), Some(&Found::Command(Command::Undo)));
        assert_eq!(matching("no such thing"), []);
        assert_eq!(matching(" ").len(), Command::every().count() - 1);
    }

    #[test]
    fn objects_are_found_by_name_and_by_kind() {
        let document = document();
        let job = document.job();
        let first = |typed: &str| match matching(typed, &document).into_iter().next() {
            Some(Found::Thing { what, .. }) => Some(what),
            _ => None,
        };
        assert_eq!(first("pipe 1"), Some(Selection::Penetration(job.penetrations[0].id)));
        assert_eq!(first("block a"), Some(Selection::Block(job.blocks[0].id)));
        let faces = matching("face", &document);
        for face in &job.faces {
            let here = |found: &Found| matches!(found, Found::Thing { what, .. } if *what == Selection::Face(face.id));
            assert!(faces.iter().any(here), "{}", face.name);
        }
    }
}
