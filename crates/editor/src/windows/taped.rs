//! The form for a face by measurements, with a live picture.

use super::Windows;
use crate::action::{Action, Actions};
use crate::edits::taping::{Ground, PitchBy, Taping, TapingResult, face_of};
use crate::state::{Change, Pane, State};
use crate::widgets::{LittleButton, fields};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::taped::{Form, TapedLine};
use chalkcourse_geometry::{DVec2, Length, Rect as Bounds, Units, dvec2};
use chalkcourse_job::Edit;
use egui::{Align2, Button, Pos2, RichText, ScrollArea, Sense, Shape, Stroke, TextEdit, Ui, WidgetInfo};

/// Width of the label of a field.
const LABEL: f32 = 132.0;

/// Shows the form.
pub(super) fn taped_pane(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let units = document.job().units;
    let ground = Ground::of(&document.plan().layout, document.job(), state.selection);
    let taping = &mut windows.taping;
    let worked = taping.worked(units);
    picture(ui, taping, worked.as_ref().ok());
    outcome(ui, taping, &worked, units);
    ui.separator();
    let foot = 40.0;
    ScrollArea::vertical()
        .max_height((ui.available_height() - foot).max(80.0))
        .auto_shrink([false, false])
        .show(ui, |ui| form(ui, taping, worked.as_ref().ok(), ground.as_ref(), units));
    ui.separator();
    let ready = worked.as_ref().ok();
    ui.horizontal(|ui| {
        let add = Button::new(text::ADD_FACE.now()).fill(theme::of(ui).accent_ground);
        if ui.add_enabled(ready.is_some(), add).clicked()
            && let Some(worked) = ready
        {
            let face = face_of(taping, worked, ground.as_ref(), document.job(), &document.plan().layout);
            let (label, held) = (text::draw_of(&face.name), Selection::Face(face.id));
            actions.push(Action::EditAndSelect(label, Edit::PutFace(face), held));
            actions.push(Action::Fit);
            taping.against = None;
        }
        if ui.button(text::CLOSE.now()).clicked() {
            actions.push(Action::Panes(Change::Close(Pane::Taped)));
        }
    });
}

fn form(
    ui: &mut Ui,
    taping: &mut Taping,
    worked: Option<&TapingResult>,
    ground: Option<&Ground>,
    units: Units,
) {
    let polygon = Form::Polygon(if let Form::Polygon(corners) = taping.form { corners } else { 5 });
    let forms = [
        (Form::Triangle, text::FORM_TRIANGLE.now()),
        (Form::Rectangle, text::FORM_RECTANGLE.now()),
        (Form::Parallelogram, text::FORM_PARALLELOGRAM.now()),
        (Form::Trapezoid, text::FORM_TRAPEZOID.now()),
        (polygon, text::FORM_POLYGON.now()),
    ];
    if let Some(form) = fields::choice_at(ui, LABEL, text::FORM.now(), taping.form, &forms) {
        taping.take(form);
    }
    lines(ui, taping, worked, units);
    if let Form::Polygon(corners) = taping.form {
        ui.horizontal(|ui| {
            if ui.button(text::ADD_CORNER_TAPED.now()).clicked() {
                taping.with_corners(corners + 1);
            }
            if ui.add_enabled(corners > 3, Button::new(text::LESS_CORNER_TAPED.now())).clicked() {
                taping.with_corners(corners - 1);
            }
            if ui.button(text::ADD_DIAGONAL.now()).clicked() {
                taping.add_diagonal();
            }
        });
    }
    ui.add_space(theme::GAP);
    pitch(ui, taping, units);
    ui.add_space(theme::GAP);
    let shown = taping.limit.show_small(units);
    let limit = fields::parsed_at(
        ui,
        LABEL,
        text::SPREAD_LIMIT.now(),
        &shown,
        text::SPREAD_LIMIT_HELP.now(),
        |typed| text::at_least_none(Length::parse(typed, units)),
    );
    if let Some(limit) = limit {
        taping.limit = limit;
    }
    lay_it(ui, taping, ground);
}

fn lines(ui: &mut Ui, taping: &mut Taping, worked: Option<&TapingResult>, units: Units) {
    let names: Vec<String> = taping.lines.iter().map(|line| taping.name(line.of)).collect();
    let corners = taping.form.corners();
    let fresh = taping.lines.iter().all(|line| line.typed.is_empty());
    let mut gone = None;
    for (index, (line, name)) in taping.lines.iter_mut().zip(&names).enumerate() {
        // Diagonals of a polygon can be chosen: their ends are fields too.
        let is_side = |a: usize, b: usize| (a + 1) % corners == b;
        if let (Form::Polygon(_), TapedLine::Between(a, b)) = (taping.form, line.of)
            && !is_side(a, b)
            && ends(ui, line, corners, index)
        {
            gone = Some(index);
        }
        let correction = worked.and_then(|worked| {
            let at = worked.lines.iter().position(|from| *from == index)?;
            worked.taped.corrections.get(at).copied()
        });
        ui.push_id(("line", index), |ui| {
            fields::row_at(ui, LABEL, &text::lettered(letter(index), name), |ui, words| {
                let hint = if line.needed { text::length_hint(units) } else { text::A_CHECK.now() };
                let width = (ui.available_width() - 84.0).max(60.0);
                let field = ui
                    .add(
                        TextEdit::singleline(&mut line.typed)
                            .desired_width(width)
                            .hint_text(hint)
                            .margin(egui::Margin::symmetric(6, 4)),
                    )
                    .labelled_by(words);
                // The first field has the initial focus.
                if index == 0 && fresh && ui.memory(|memory| memory.focused().is_none()) {
                    field.request_focus();
                }
                if let Some(by) = correction.filter(|by| by.abs() >= Length::from_mm(0.5)) {
                    ui.label(RichText::new(text::correction(by, units)).color(theme::of(ui).quiet));
                }
            });
        });
    }
    if let Some(index) = gone {
        taping.lines.remove(index);
    }
}

/// The ends of a diagonal. Returns whether to remove it.
fn ends(ui: &mut Ui, line: &mut crate::edits::taping::Line, corners: usize, index: usize) -> bool {
    let TapedLine::Between(mut from, mut to) = line.of else { return false };
    let mut gone = false;
    ui.horizontal(|ui| {
        let quiet = theme::of(ui).quiet;
        for (at, words, salt) in
            [(&mut from, text::DIAGONAL_FROM.now(), "from"), (&mut to, text::DIAGONAL_TO.now(), "to")]
        {
            let label = ui.label(RichText::new(words).color(quiet));
            egui::ComboBox::from_id_salt((salt, index))
                .selected_text((*at + 1).to_string())
                .width(44.0)
                .show_ui(ui, |ui| {
                    for corner in 0..corners {
                        ui.selectable_value(at, corner, (corner + 1).to_string());
                    }
                })
                .response
                .labelled_by(label.id);
        }
        let button = ui.little_button("×").on_hover_text(text::TAKE_DIAGONAL.now());
        button.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, text::TAKE_DIAGONAL.now()));
        gone = button.clicked();
    });
    if from != to {
        line.of = TapedLine::Between(from.min(to), from.max(to));
    }
    gone
}

fn pitch(ui: &mut Ui, taping: &mut Taping, units: Units) {
    let ways = [(PitchBy::Typed, text::PITCH_TYPED.now()), (PitchBy::Level, text::PITCH_BY_LEVEL.now())];
    if let Some(by) = fields::choice_at(ui, LABEL, text::TAPED_PITCH.now(), taping.pitch_by, &ways) {
        taping.pitch_by = by;
    }
    let field = |ui: &mut Ui, words: &str, help: &str, typed: &mut String, hint: &str| {
        fields::row_at(ui, LABEL, words, |ui, label| {
            let width = (ui.available_width() - 84.0).max(60.0);
            ui.add(
                TextEdit::singleline(typed)
                    .desired_width(width)
                    .hint_text(hint)
                    .margin(egui::Margin::symmetric(6, 4)),
            )
            .labelled_by(label)
            .on_hover_text(help);
        });
    };
    match taping.pitch_by {
        PitchBy::Typed => {
            field(ui, text::PITCH_AS_TYPED.now(), text::PITCH_TYPED_HELP.now(), &mut taping.pitch, "6:12");
        }
        PitchBy::Level => {
            field(
                ui,
                text::LEVEL_RISE.now(),
                text::LEVEL_RISE_HELP.now(),
                &mut taping.rise,
                text::length_hint(units),
            );
            field(ui, text::LEVEL_LONG.now(), text::LEVEL_RISE_HELP.now(), &mut taping.level, "24\"");
        }
    }
}

/// The position of the face.
fn lay_it(ui: &mut Ui, taping: &mut Taping, ground: Option<&Ground>) {
    let Some(ground) = ground else {
        taping.against = None;
        if let Some(downslope) =
            fields::azimuth_at(ui, LABEL, text::DOWNSLOPE.now(), taping.downslope, text::DOWNSLOPE_HELP.now())
        {
            taping.downslope = downslope;
        }
        ui.label(RichText::new(text::SELECT_A_SIDE.now()).small().color(theme::of(ui).quiet));
        return;
    };
    let sides: Vec<(Option<usize>, String)> = std::iter::once((None, text::BESIDE_THE_ROOF.now().to_owned()))
        .chain((0..taping.form.corners()).map(|side| {
            let of = TapedLine::Between(side, (side + 1) % taping.form.corners());
            (Some(side), text::against(&taping.name(of), ground.side, &ground.face))
        }))
        .collect();
    let choices: Vec<(Option<usize>, &str)> =
        sides.iter().map(|(side, words)| (*side, words.as_str())).collect();
    if let Some(against) = fields::choice_at(ui, LABEL, text::WHERE_TO.now(), taping.against, &choices) {
        taping.against = against;
    }
    if taping.against.is_none()
        && let Some(downslope) =
            fields::azimuth_at(ui, LABEL, text::DOWNSLOPE.now(), taping.downslope, text::DOWNSLOPE_HELP.now())
    {
        taping.downslope = downslope;
    }
}

/// The result, in words.
fn outcome(ui: &mut Ui, taping: &Taping, worked: &Result<TapingResult, String>, units: Units) {
    match worked {
        Err(wrong) => {
            let begun = taping.lines.iter().any(|line| !line.typed.trim().is_empty());
            let p = theme::of(ui);
            let color = if begun && !wrong.starts_with(text::STILL_NEEDED.now()) { p.stop } else { p.quiet };
            ui.label(RichText::new(wrong).color(color));
        }
        Ok(worked) => {
            let slope = worked.taped.area();
            ui.label(text::area_words(slope / worked.pitch.slope_factor(), slope, units));
            ui.label(text::closes(worked.taped.closing_error, worked.taped.spare, units));
            let suspect =
                worked.taped.suspect.and_then(|at| worked.lines.get(at)).and_then(|&at| taping.lines.get(at));
            if let Some(line) = suspect {
                ui.label(text::suspect(&taping.name(line.of)));
            }
        }
    }
}

fn letter(index: usize) -> char {
    u8::try_from(index)
        .ok()
        .and_then(|index| b'a'.checked_add(index))
        .filter(u8::is_ascii_lowercase)
        .map_or('·', char::from)
}

/// The face as typed, eave at the bottom; while there is none, the typical shape of the form.
fn picture(ui: &mut Ui, taping: &Taping, worked: Option<&TapingResult>) {
    let (area, response) = ui.allocate_exact_size(egui::vec2(ui.available_width(), 168.0), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, text::LIVE_PICTURE.now()));
    let p = theme::of(ui);
    let painter = ui.painter().with_clip_rect(area);
    painter.rect_filled(area, 6.0, p.ground);
    let usual = usual(taping.form);
    let corners: &[DVec2] = worked.map_or(&usual, |worked| &worked.taped.corners);
    let Some(bounds) = Bounds::around(corners.iter().copied()) else { return };
    let room = area.shrink(24.0);
    let size = bounds.size().max(DVec2::splat(1e-6));
    let scale = (f64::from(room.width()) / size.x).min(f64::from(room.height()) / size.y);
    let at = |p: DVec2| {
        let from = (p - bounds.centre()) * scale;
        Pos2::new(area.center().x + from.x as f32, area.center().y - from.y as f32)
    };
    let color = if worked.is_some() { p.line } else { p.quiet };
    let points: Vec<Pos2> = corners.iter().map(|&c| at(c)).collect();
    painter.add(Shape::closed_line(points.clone(), Stroke::new(1.6, color)));
    if let [a, b, ..] = points.as_slice() {
        painter.line_segment([*a, *b], Stroke::new(3.2, color));
    }
    let middle = at(bounds.centre());
    for (index, line) in taping.lines.iter().enumerate() {
        let (a, b, side) = match line.of {
            TapedLine::Between(a, b) => {
                let count = corners.len();
                let side = (a + 1) % count == b || (b + 1) % count == a;
                (corners.get(a).copied(), corners.get(b).copied(), side)
            }
            TapedLine::Up(corner) => {
                let top = corners.get(corner).copied();
                (top.map(|p| dvec2(p.x, 0.0)), top, false)
            }
        };
        let (Some(a), Some(b)) = (a, b) else { continue };
        let (a, b) = (at(a), at(b));
        // An optional measurement that is not entered is not drawn.
        if !side && line.typed.trim().is_empty() && !line.needed {
            continue;
        }
        if !side {
            painter.extend(Shape::dashed_line(&[a, b], Stroke::new(1.2, p.accent), 5.0, 4.0));
        }
        let half = a + (b - a) * if side { 0.5 } else { 0.38 };
        let away = if side { (half - middle).normalized() * 11.0 } else { egui::vec2(9.0, -5.0) };
        let ink = if side { p.text } else { p.accent };
        painter.text(half + away, Align2::CENTER_CENTER, letter(index), theme::font(theme::size::BODY), ink);
    }
    for (index, &point) in points.iter().enumerate() {
        let away = (point - middle).normalized() * 13.0;
        let number = (index + 1).to_string();
        painter.text(point + away, Align2::CENTER_CENTER, number, theme::font(theme::size::SMALL), p.quiet);
    }
}

/// The typical shape of a form, before anything is typed.
fn usual(form: Form) -> Vec<DVec2> {
    let at = |x: f64, y: f64| dvec2(x, y);
    match form {
        Form::Triangle => vec![at(0.0, 0.0), at(10.0, 0.0), at(5.0, 5.0)],
        Form::Rectangle => vec![at(0.0, 0.0), at(10.0, 0.0), at(10.0, 5.0), at(0.0, 5.0)],
        Form::Parallelogram => vec![at(0.0, 0.0), at(10.0, 0.0), at(12.5, 5.0), at(2.5, 5.0)],
        Form::Trapezoid => vec![at(0.0, 0.0), at(10.0, 0.0), at(7.0, 4.0), at(3.0, 4.0)],
        Form::Polygon(corners) => {
            let turn = std::f64::consts::TAU / corners.max(3) as f64;
            // The first side is at the bottom, level.
            let first = -std::f64::consts::FRAC_PI_2 - turn / 2.0;
            (0..corners).map(|i| DVec2::from_angle(first + turn * i as f64) * at(8.0, 5.0)).collect()
        }
    }
}
