use super::{Windows, window};
use crate::action::{Action, Actions};
use crate::state::Importing;
use crate::widgets::raise_fields;
use crate::{text, theme};
use chalkcourse_exchange::Entry;
use chalkcourse_geometry::Units;
use chalkcourse_plan::RaiseAs;
use egui::{Button, Context, RichText, ScrollArea, Sense, TextEdit, Ui, Vec2, WidgetInfo};

/// Height of a row of the list.
const ROW: f32 = 42.0;

/// Lists the buildings of a file or folder to choose from.
pub(super) fn import_window(
    ctx: &Context,
    units: Units,
    windows: &mut Windows,
    how: Option<RaiseAs>,
    actions: &mut Actions,
) {
    let Some(importing) = &mut windows.import else { return };
    let mut open = true;
    let mut take = false;
    window(ctx, text::IMPORT.now(), &mut open, 480.0).show(ctx, |ui| {
        let quiet = theme::of(ui).quiet;
        let path = importing.path.display().to_string();
        ui.add(egui::Label::new(RichText::new(&path).small().color(quiet)).truncate()).on_hover_text(path);
        if importing.listing.is_none() && importing.is_reading() {
            ui.horizontal(|ui| {
                ui.spinner();
                ui.label(text::IMPORT_READING.now());
            });
            return;
        }
        if !importing.wrong.is_empty() {
            ui.label(RichText::new(&importing.wrong).color(theme::of(ui).stop));
        }
        if importing.listing.is_some() {
            take = buildings(ui, units, importing, how, actions);
        }
    });
    if take {
        actions.push(Action::TakeBuilding);
    }
    if !open {
        windows.import = None;
    }
}

/// The list, the chosen building, and whether to import it.
fn buildings(
    ui: &mut Ui,
    units: Units,
    importing: &mut Importing,
    how: Option<RaiseAs>,
    actions: &mut Actions,
) -> bool {
    let found = importing.found();
    ui.horizontal(|ui| {
        let label = ui.label(text::IMPORT_SEARCH.now());
        let field = TextEdit::singleline(&mut importing.search)
            .id(egui::Id::unique("search buildings"))
            .hint_text(text::IMPORT_SEARCH_HINT.now())
            .desired_width((ui.available_width() - 120.0).max(100.0))
            .margin(egui::Margin::symmetric(6, 4));
        ui.add(field).labelled_by(label.id);
        let all = importing.listing.as_ref().map_or(0, |listing| listing.buildings.len());
        ui.label(RichText::new(text::import_count(found.len(), all)).small().color(theme::of(ui).quiet));
    });
    ui.separator();
    let Some(listing) = &importing.listing else { return false };
    let mut chosen = importing.chosen;
    let mut take = false;
    // Leave space for the details of the chosen building, and for the button.
    let height = (ui.available_height() - 186.0).max(3.0 * ROW);
    ScrollArea::vertical().id_salt("buildings").max_height(height).auto_shrink([false, false]).show_rows(
        ui,
        ROW,
        found.len(),
        |ui, rows| {
            ui.spacing_mut().item_spacing.y = 0.0;
            for &index in found.get(rows).unwrap_or_default() {
                let Some(entry) = listing.buildings.get(index) else { continue };
                let response = row(ui, entry, chosen == Some(index), units);
                if response.clicked() {
                    chosen = Some(index);
                }
                take |= response.double_clicked();
            }
        },
    );
    ui.separator();
    let entry = chosen.and_then(|index| listing.buildings.get(index));
    ScrollArea::vertical().id_salt("told").max_height(86.0).auto_shrink([false, false]).show(ui, |ui| {
        told(ui, entry, &listing.troubles);
    });
    if entry.is_some_and(|entry| entry.kind == "footprint") {
        ui.horizontal(|ui| actions.extend(raise_fields(ui, how, units).map(Action::RaiseAs)));
    }
    let usable = entry.is_some_and(|entry| entry.plan_area_m2 > 0.0);
    ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
        let button = Button::new(text::IMPORT_TAKE.now()).fill(theme::of(ui).accent_ground);
        let button = ui.add_enabled(usable && !importing.is_reading(), button);
        take |= button.on_hover_text(text::IMPORT_TAKE_HELP.now()).clicked();
        if importing.is_reading() {
            ui.spinner();
        }
    });
    importing.chosen = chosen;
    take && usable
}

/// A building: name and id, contents, and whether there are remarks.
fn row(ui: &mut Ui, entry: &Entry, chosen: bool, units: Units) -> egui::Response {
    let p = theme::of(ui);
    let (rect, response) = ui.allocate_exact_size(Vec2::new(ui.available_width(), ROW), Sense::click());
    let gives = text::building_gives(entry, units);
    response.widget_info(|| {
        WidgetInfo::selected(egui::Role::Button, true, chosen, text::building_words(entry, &gives))
    });
    if chosen {
        ui.painter().rect_filled(rect, 5.0, p.accent_ground);
    } else if response.hovered() || response.has_focus() {
        ui.painter().rect_filled(rect, 5.0, p.button_hover);
    }
    let inner = rect.shrink2(Vec2::new(8.0, 3.0));
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    let line = |words: &str, size: f32, color: egui::Color32, at: egui::Pos2| {
        let mut job = egui::text::LayoutJob::simple_singleline(words.to_owned(), theme::font(size), color);
        job.wrap = egui::text::TextWrapping::truncate_at_width(inner.right() - at.x);
        painter.galley(at, painter.layout_job(job), color);
    };
    line(&entry.name, theme::size::BODY, p.text, inner.min);
    line(&gives, theme::size::SMALL, p.quiet, inner.min + Vec2::new(0.0, 19.0));
    response
}

/// Remarks on the chosen building, and on files that could not be read.
fn told(ui: &mut Ui, entry: Option<&Entry>, troubles: &[String]) {
    let p = theme::of(ui);
    let small = |ui: &mut Ui, words: &str, color| ui.label(RichText::new(words).small().color(color));
    match entry {
        None => {
            small(ui, text::IMPORT_CHOOSE.now(), p.quiet);
        }
        Some(entry) if entry.told.is_empty() => {
            let words =
                if entry.kind == "footprint" { text::IMPORT_RAISED.now() } else { text::IMPORT_WHOLE.now() };
            small(ui, words, p.quiet);
        }
        Some(entry) => {
            for words in &entry.told {
                small(ui, words, p.caution);
            }
        }
    }
    for trouble in troubles {
        small(ui, &text::import_not_read(trouble), p.caution);
    }
}
