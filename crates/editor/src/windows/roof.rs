use super::Windows;
use crate::action::{Action, Actions};
use crate::state::{RoofPart, RoofReports};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_plan::{EdgeRow, area_text, heights_text};
use chalkcourse_sheets::Output;
use egui::{RichText, ScrollArea, Sense, Ui, Vec2, WidgetInfo};

/// State of the pane.
#[derive(Debug, Default)]
pub(crate) struct RoofWindow {
    /// The part of the roof whose row is under the pointer.
    pub(crate) pointed: Option<RoofPart>,
    unfolded: Option<EdgeKind>,
    report: RoofReports,
}

/// Faces, edges by kind, squares and heights. A row highlights its place on the roof; a click on a face selects it.
pub(super) fn roof_pane(ui: &mut Ui, document: &Document, windows: &mut Windows, actions: &mut Actions) {
    let before = windows.roof.pointed.take();
    let job = document.job();
    let units = job.units;
    let report = windows.roof.report.of(document).clone();
    ui.horizontal(|ui| {
        if ui.button(text::COPY.now()).on_hover_text(text::ROOF_COPY_HELP.now()).clicked() {
            super::copy(ui, document, Output::Roof);
            actions.push(Action::Say(text::ROOF_COPIED.now().to_owned()));
        }
    });
    ui.separator();
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 2.0;
        for (words, said) in [
            (text::ROOF_SLOPE.now(), area_text(report.slope_area_m2, units)),
            (text::ROOF_SQUARES.now(), format!("{:.2}", report.squares)),
            (text::ROOF_PLAN.now(), area_text(report.plan_area_m2, units)),
            (text::ROOF_FOOTPRINT.now(), area_text(report.footprint_m2, units)),
            (text::ROOF_RIDGE.now(), heights_text(report.ridge_m, job)),
            (text::ROOF_EAVE.now(), heights_text(report.eave_m, job)),
        ] {
            line(ui, words, &said, "", false, false);
        }
        heading(ui, text::ROOF_FACES.now());
        for (face, of_job) in report.faces.iter().zip(&job.faces) {
            let part = RoofPart::Face(of_job.id);
            let area = text::face_areas(face, units);
            let (pitch, falls) = (of_job.pitch.to_string(), of_job.downslope.to_string());
            let more = text::face_pitch(&pitch, &falls, face.pitch_degrees);
            let response = line(ui, &face.name, &area, &more, true, before == Some(part));
            point(&response, part, windows);
            if response.clicked() {
                actions.push(Action::Select(Selection::Face(of_job.id)));
            }
        }
        heading(ui, text::ROOF_EDGES.now());
        for row in &report.edges {
            edges(ui, row, before, units, windows);
        }
        if report.problems > 0 {
            ui.add_space(theme::GAP);
            ui.label(RichText::new(text::roof_problems(report.problems)).color(theme::of(ui).caution));
        }
        ui.add_space(theme::GAP * 2.0);
        ui.label(RichText::new(text::ROOF_LEVEL.now()).small().color(theme::of(ui).quiet));
    });
    if windows.roof.pointed != before {
        ui.ctx().request_repaint();
    }
}

fn heading(ui: &mut Ui, words: &str) {
    ui.add_space(theme::GAP * 2.0);
    ui.label(RichText::new(words).strong());
}

fn point(response: &egui::Response, part: RoofPart, windows: &mut Windows) {
    if response.hovered() || response.has_focus() {
        windows.roof.pointed = Some(part);
    }
}

/// A kind of edge with its total length; a click expands its lines.
fn edges(ui: &mut Ui, row: &EdgeRow, before: Option<RoofPart>, units: Units, windows: &mut Windows) {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    let part = RoofPart::Edges(row.kind);
    let response = line(ui, row.kind.name().now(), &show(row.length_m), "", true, before == Some(part));
    point(&response, part, windows);
    let unfolded = windows.roof.unfolded == Some(row.kind);
    if response.on_hover_text(text::ROOF_UNFOLD.now()).clicked() {
        windows.roof.unfolded = if unfolded { None } else { Some(row.kind) };
    }
    if unfolded {
        for (index, one) in row.lines.iter().enumerate() {
            let part = RoofPart::Line(row.kind, index);
            let words = text::roof_line(index + 1, one.ends_m[0][2], one.ends_m[1][2], units);
            let response = line(ui, &words, &show(one.length_m), "", true, before == Some(part));
            point(&response, part, windows);
        }
    }
}

/// A row: a label on the left, a value on the right, and details below.
fn line(ui: &mut Ui, words: &str, said: &str, more: &str, live: bool, lit: bool) -> egui::Response {
    let p = theme::of(ui);
    let height = if more.is_empty() { 26.0 } else { 42.0 };
    let sense = if live { Sense::click() } else { Sense::hover() };
    let (rect, response) = ui.allocate_exact_size(Vec2::new(ui.available_width(), height), sense);
    let role = if live { egui::Role::Button } else { egui::Role::Label };
    response.widget_info(|| WidgetInfo::labeled(role, true, text::roof_row(words, said, more)));
    if live && (lit || response.hovered() || response.has_focus()) {
        ui.painter().rect_filled(rect, 5.0, p.button_hover);
    }
    let inner = rect.shrink2(Vec2::new(8.0, 4.0));
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    let said = painter.layout_no_wrap(said.to_owned(), theme::font(theme::size::BODY), p.text);
    let left = inner.right() - said.size().x;
    painter.galley(egui::pos2(left, inner.top()), said, p.text);
    let mut job =
        egui::text::LayoutJob::simple_singleline(words.to_owned(), theme::font(theme::size::BODY), p.text);
    job.wrap = egui::text::TextWrapping::truncate_at_width((left - inner.left() - 10.0).max(20.0));
    painter.galley(inner.min, painter.layout_job(job), p.text);
    if !more.is_empty() {
        let more = painter.layout_no_wrap(more.to_owned(), theme::font(theme::size::SMALL), p.quiet);
        painter.galley(inner.min + Vec2::new(0.0, 19.0), more, p.quiet);
    }
    response
}
