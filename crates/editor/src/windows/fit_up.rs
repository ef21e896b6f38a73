//! The fit-up pane: how far a measured deck is out of square, where to snap the base line, whether each row closes.

mod picture;

use super::Windows;
use crate::action::{Action, Actions};
use crate::state::{
    State,
    coursing::{block_spoken_of, face_spoken_of},
};
use crate::widgets::{fields, quiet};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::fit_up::{Along, Deck, Measured, square_check};
use chalkcourse_geometry::{Length, RoofFace};
use chalkcourse_job::{Block, BlockId, Edit, Face, FaceId, Resolved, TapedDeck};
use chalkcourse_plan::{
    FitUpAsked, deck_as_drawn, deck_measured, fit_up, reveal_words, row_errors, row_words,
};
use chalkcourse_sheets::Output;
use chalkcourse_words::Say;
use egui::{ScrollArea, Ui};

/// State of the pane; the measurements are in the job.
#[derive(Debug)]
pub(crate) struct FitUp {
    /// The last face and block.
    face: Option<FaceId>,
    block: Option<BlockId>,
    /// Height of the base line, if entered.
    up: Option<Length>,
    along: Along,
    module_varies: Length,
    reveal_varies: Length,
}

impl Default for FitUp {
    fn default() -> Self {
        // The error of a tape read to a sixteenth.
        let read = Length::from_inches(1.0 / 32.0);
        Self {
            face: None,
            block: None,
            up: None,
            along: Along::Eave,
            module_varies: read,
            reveal_varies: read,
        }
    }
}

const SIDES: [(Say, Say); 6] = [
    (text::MEASURED_EAVE, text::SIDE_HELP),
    (text::MEASURED_HEAD, text::SIDE_HELP),
    (text::MEASURED_LEFT, text::SIDE_HELP),
    (text::MEASURED_RIGHT, text::SIDE_HELP),
    (text::MEASURED_RISING, text::RISING_HELP),
    (text::MEASURED_FALLING, text::FALLING_HELP),
];

const BOWS: [Say; 4] = [text::BOW_EAVE, text::BOW_HEAD, text::BOW_LEFT, text::BOW_RIGHT];

/// Shows the pane.
pub(super) fn fit_up_pane(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        contents(ui, document, state, windows, actions);
    });
}

fn contents(ui: &mut Ui, document: &Document, state: &State, windows: &mut Windows, actions: &mut Actions) {
    let job = document.job();
    let held = state.selection;
    let own = &mut windows.fit_up;
    let Some(id) = face_spoken_of(document, held, own.face) else {
        ui.label(text::NO_FACE_YET.now());
        return;
    };
    let Some((_, face)) = document.plan().layout.face(id) else { return };
    if own.face != Some(id) {
        // Another deck has another line.
        (own.face, own.up) = (Some(id), None);
    }
    own.block = block_spoken_of(document, held, own.block, id);
    quiet(ui, text::FIT_UP_WHY.now());
    super::face_choice(ui, document, id, actions);
    ui.push_id(id, |ui| measures(ui, job, id, face, actions));
    let taped = job.face(id).map(Face::taped_now).unwrap_or_default();
    let Some(measured) = deck_measured(&taped, face) else {
        quiet(ui, text::STILL_TO_MEASURE.now());
        return;
    };
    match measured.solve() {
        Ok(deck) => {
            let name = job.face(id).map_or("", |face| face.name.as_str());
            let said = solved(ui, own, &Taped { document, face, measured, deck }, actions);
            ui.add_space(theme::GAP);
            if ui.button(text::COPY_FIT_UP.now()).clicked() {
                ui.ctx().copy_text(format!("{}\n{said}", text::face_heading(name)));
                actions.push(Action::Say(text::FIT_UP_COPIED.now().to_owned()));
            }
        }
        Err(error) => fields::wrong(ui, &text::sentence(&error.to_string())),
    }
}

/// A deck that could be computed, with its face.
struct Taped<'a> {
    document: &'a Document,
    face: &'a RoofFace,
    measured: Measured,
    deck: Deck,
}

/// The fields of measurements, completed from the drawing. Changes go into the job.
fn measures(ui: &mut Ui, job: &Resolved, id: FaceId, face: &RoofFace, actions: &mut Actions) {
    let Some(of) = job.face(id) else { return };
    let units = job.units;
    let taped = of.taped_now();
    let mut next = taped;
    ui.horizontal(|ui| {
        ui.strong(text::MEASURED.now());
        let again = ui.add_enabled(!taped.is_empty(), egui::Button::new(text::AS_DRAWN.now()));
        if again.on_hover_text(text::AS_DRAWN_HELP.now()).clicked() {
            next = TapedDeck::default();
        }
    });
    let drawn = deck_as_drawn(face);
    if drawn.is_none() {
        quiet(ui, text::NOT_FOUR.now());
    }
    let mut sides = next.sides();
    for (nth, (label, help)) in SIDES.into_iter().enumerate() {
        let Some(side) = sides.get_mut(nth) else { continue };
        let value = side.or_else(|| drawn.and_then(|drawn| drawn.get(nth).copied()));
        let shown = value.map(|length| length.show(units)).unwrap_or_default();
        if let Some(length) =
            fields::parsed(ui, label.now(), &shown, help.now(), |text| Length::parse(text, units))
        {
            *side = Some(length);
        }
    }
    next = next.with_sides(sides);
    egui::CollapsingHeader::new(text::BOWS.now()).id_salt("bows").default_open(false).show(ui, |ui| {
        for (label, bow) in BOWS.into_iter().zip(&mut next.bows) {
            if let Some(length) = fields::length(ui, label.now(), *bow, units, true, text::BOW_HELP.now()) {
                *bow = length;
            }
        }
    });
    if next != taped {
        let edit = Edit::PutFace(of.with_taped(next));
        actions.push(Action::Edit(text::measure_deck_of(text::face_heading(&of.name)), edit));
    }
}

/// The results for a deck; also returned as text to copy.
fn solved(ui: &mut Ui, own: &mut FitUp, taped: &Taped<'_>, actions: &mut Actions) -> String {
    let Taped { document, face, measured, deck } = taped;
    let job = document.job();
    let units = job.units;
    ui.separator();
    picture::deck_picture(ui, measured, deck);
    ui.strong(text::OUT_OF_SQUARE.now());
    let mut said = text::deck(deck, square_check(measured.eave, measured.left), units);
    for words in &said {
        ui.label(words);
    }

    ui.separator();
    ui.strong(text::BASE_LINE.now());
    let block = own.block.and_then(|id| job.block(id));
    let now = block.map_or(0.0, |block| block.at.y - face.bounds.min.y);
    let up = own.up.unwrap_or(Length::from_metres(now));
    if let Some(typed) = fields::length(ui, text::LINE_UP.now(), up, units, false, text::LINE_UP_HELP.now()) {
        own.up = Some(typed);
    }
    let ways = [Along::Eave, Along::Head, Along::Between].map(|along| (along, text::along(along)));
    if let Some(along) = fields::choice(ui, text::LEVEL_WITH.now(), own.along, &ways) {
        own.along = along;
    }
    let snap = text::snap(&deck.snap(up.metres(), own.along), units);
    ui.label(&snap);
    said.push(snap);

    let row = block.and_then(|block| {
        ui.separator();
        ui.strong(format!("{} · {}", text::THE_ROW.now(), text::block_heading(&block.name)));
        row(ui, own, taped, block, up.metres(), actions)
    });
    row.or_else(|| Output::Deck(&format!("{}\n", said.join("\n"))).text(job, document.plan()).ok())
        .unwrap_or_default()
}

/// Whether the rows of a block close between the rakes as measured; also returns everything as text, if it can be
/// computed.
fn row(
    ui: &mut Ui,
    own: &mut FitUp,
    taped: &Taped<'_>,
    block: &Block,
    up: f64,
    actions: &mut Actions,
) -> Option<String> {
    let Taped { document, measured, .. } = taped;
    let job = document.job();
    let units = job.units;
    for (label, value, help) in [
        (text::MODULE_VARIES.now(), &mut own.module_varies, text::MODULE_VARIES_HELP.now()),
        (text::REVEAL_VARIES.now(), &mut own.reveal_varies, text::REVEAL_VARIES_HELP.now()),
    ] {
        if let Some(next) = fields::length(ui, label, *value, units, true, help) {
            *value = next;
        }
    }
    let asked = FitUpAsked {
        up,
        along: own.along,
        module_varies: own.module_varies.metres(),
        reveal_varies: own.reveal_varies.metres(),
        ..FitUpAsked::of_block(job, block, *measured)
    };
    match fit_up(job, &asked) {
        Ok(found) => {
            ui.label(text::kept_beside(asked.beside, units));
            for row in &found.rows {
                ui.label(row_words(row, asked.reveal, units));
                quiet(ui, &row_errors(&row.closed, units));
            }
            ui.label(reveal_words(&found, asked.reveal, units));
            set_reveal(ui, block, &found, actions);
            Output::FitUp(&asked, &found).text(job, document.plan()).ok()
        }
        Err(error) => {
            fields::wrong(ui, &text::sentence(&error.to_string()));
            None
        }
    }
}

fn set_reveal(ui: &mut Ui, block: &Block, found: &chalkcourse_plan::FitUp, actions: &mut Actions) {
    let differs = (found.reveal - block.reveal.metres()).abs() > 1e-6;
    let button = ui.add_enabled(found.closes() && differs, egui::Button::new(text::SET_REVEAL.now()));
    if button.on_hover_text(text::SET_REVEAL_HELP.now()).clicked() {
        let next = Block { reveal: Length::from_metres(found.reveal), ..block.clone() };
        let label = text::set_reveal_of(text::block_heading(&block.name));
        actions.push(Action::EditAndSelect(label, Edit::PutBlock(next), Selection::Block(block.id)));
    }
}
