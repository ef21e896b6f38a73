//! The homeowner's view: full screen, in large type, without anything that is only for the office.

use crate::action::Actions;
use crate::commands::Command;
use crate::solid_view::{self, SolidView};
use crate::theme::{self, Palette};
use crate::{Document, text};
use chalkcourse_geometry::{DVec2, Rect as Bounds};
use chalkcourse_plan::is_bare_cost;
use egui::{
    Button, CentralPanel, Frame, Id, Key, Margin, Mesh, Modifiers, Painter, Panel, Pos2, Rect, RichText,
    Role, ScrollArea, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo,
};

/// Shows the view in the whole window.
pub(crate) fn home_view(ui: &mut Ui, document: &Document, view: &mut SolidView, actions: &mut Actions) {
    let p = theme::of(ui);
    let room = ui.available_size();
    // Type scales with the window, so that it is legible from across a table.
    let large = (room.y / 720.0).min(room.x / 1200.0).clamp(0.8, 1.6);
    if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape)) {
        actions.push(Command::ShowHome.action());
    }
    let side = Frame::new().fill(p.panel).inner_margin(Margin::same((20.0 * large) as i8));
    Panel::right("home facts").exact_size(380.0 * large).resizable(false).frame(side).show(ui, |ui| {
        facts(ui, document, large);
    });
    let top = Frame::new().fill(p.panel).inner_margin(Margin::symmetric(20, 10));
    Panel::top("home top").frame(top).show(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            ui.label(RichText::new(&document.job().name).size(theme::size::TITLE * large).strong());
            ui.add_space(theme::GAP * 4.0);
            for (words, before) in [(text::BEFORE.now(), true), (text::AFTER.now(), false)] {
                let words = RichText::new(words).size(theme::size::HEADING * large);
                if ui.add(Button::selectable(view.before == before, words)).clicked() {
                    view.before = before;
                }
            }
            let leave = Button::new(RichText::new(text::LEAVE.now()).size(theme::size::BODY * large));
            // On the right if there is room, otherwise on the next line.
            let at_right = ui.available_size_before_wrap().x - 110.0 * large;
            if at_right > 0.0 {
                ui.add_space(at_right);
            }
            if ui.add(leave).clicked() {
                actions.push(Command::ShowHome.action());
            }
        });
    });
    CentralPanel::no_frame().show(ui, |ui| picture(ui, document, view));
}

fn picture(ui: &mut Ui, document: &Document, view: &mut SolidView) {
    let area = ui.available_rect_before_wrap();
    let response = ui.interact(area, Id::unique("home picture"), Sense::click_and_drag());
    view.eye.follow(ui, &response, true);
    solid_view::draw_house(ui, area, document, view, None);
    let sun = view.sun.sun(document).map(|_| view.sun.words(document)).unwrap_or_default();
    let words = text::house_words(document, &view.eye.camera, &sun, view.before);
    response.widget_info(|| WidgetInfo::labeled(Role::Canvas, true, &words));
}

fn facts(ui: &mut Ui, document: &Document, large: f32) {
    let p = theme::of(ui);
    ui.spacing_mut().item_spacing.y = 5.0 * large;
    let pages = |key| ui.input_mut(|input| input.count_and_consume_key(Modifiers::NONE, key)) as f32;
    let pages = pages(Key::PageUp) - pages(Key::PageDown);
    if pages != 0.0 {
        ui.scroll_with_delta(Vec2::new(0.0, pages * (ui.available_height() - 40.0)));
    }
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        not_done(ui, document, large, p);
        heading(ui, text::HOME_COVERS.now(), large, p);
        egui::Grid::new("home facts").num_columns(2).spacing([14.0 * large, 4.0 * large]).show(ui, |ui| {
            for (number, what) in text::home_facts(document) {
                ui.label(RichText::new(number).size(theme::size::TITLE * large).strong());
                ui.label(RichText::new(what).size(theme::size::HEADING * large).color(p.quiet));
                ui.end_row();
            }
        });
        heading(ui, text::HOME_COSTS.now(), large, p);
        price(ui, document, large, p);
        heading(ui, text::FROM_ABOVE.now(), large, p);
        let size = Vec2::new(ui.available_width(), 190.0 * large);
        let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, text::FROM_ABOVE.now()));
        plan(&ui.painter().with_clip_rect(rect), rect, document, p);
        heading(ui, text::GOOD_TO_KNOW.now(), large, p);
        for words in text::HOME_CAUTIONS {
            ui.label(RichText::new(words.now()).size(theme::size::BODY * large));
        }
    });
}

/// Stops and waivers come first, so that an unfinished job is not presented as done.
fn not_done(ui: &mut Ui, document: &Document, large: f32, p: &Palette) {
    let stand = chalkcourse_plan::standing(document.job(), document.plan());
    for (heading, sentences) in [(text::HOME_NOT_DONE, stand.stops), (text::HOME_WAIVED, stand.waived)] {
        if sentences.is_empty() {
            continue;
        }
        let heading = RichText::new(heading.now());
        ui.label(heading.size(theme::size::TITLE * large).color(p.stop).strong());
        for sentence in sentences {
            ui.label(RichText::new(sentence).size(theme::size::BODY * large));
        }
    }
}

/// The price. The bare cost is never shown by accident: it is labelled as such, and shown only on confirmation.
fn price(ui: &mut Ui, document: &Document, large: f32, p: &Palette) {
    let bare = is_bare_cost(document.job());
    let price = text::home_price(document);
    // Ask again for another amount.
    let told = Id::unique(("bare cost", &price));
    let shown = ui.data(|data| data.get_temp::<bool>(told).unwrap_or(false));
    if bare && price.is_some() {
        let words = RichText::new(text::HOME_BARE_COST.now());
        ui.label(words.size(theme::size::TITLE * large).color(p.stop).strong());
        if !shown {
            let words = RichText::new(text::SHOW_BARE_COST.now()).size(theme::size::BODY * large);
            if ui.button(words).clicked() {
                ui.data_mut(|data| data.insert_temp(told, true));
            }
            return;
        }
    }
    let price = price.unwrap_or_else(|| text::TO_BE_QUOTED.now().to_owned());
    ui.label(RichText::new(price).size(theme::size::TITLE * 1.25 * large).strong());
    ui.label(RichText::new(text::PRICE_NOTE.now()).size(theme::size::BODY * large).color(p.quiet));
}

fn heading(ui: &mut Ui, words: &str, large: f32, p: &Palette) {
    ui.add_space(8.0 * large);
    ui.label(RichText::new(words).size(theme::size::HEADING * large).color(p.accent).strong());
}

/// The roof from above, north up: faces and modules, without names or dimensions.
fn plan(painter: &Painter, rect: Rect, document: &Document, p: &Palette) {
    let layout = &document.plan().layout;
    let faces = layout.roof.faces.iter().filter(|face| face.sound);
    let Some(bounds) = faces.filter_map(|face| face.plan.bounds()).reduce(|a: Bounds, b| a.union(&b)) else {
        return;
    };
    let need = bounds.size().max(DVec2::splat(1.0));
    // The north arrow is on the right.
    let room = rect.with_max_x(rect.right() - 16.0);
    let scale = (f64::from(room.width() - 20.0) / need.x).min(f64::from(room.height() - 12.0) / need.y);
    let centre = bounds.centre();
    let on_screen = |plan: DVec2| -> Pos2 {
        let from = (plan - centre) * scale;
        room.center() + Vec2::new(from.x as f32, -from.y as f32)
    };
    painter.rect_filled(rect, 6.0, p.ground);
    for face in layout.roof.faces.iter().filter(|face| face.sound) {
        let mut mesh = Mesh::default();
        for triangle in face.plan.triangles() {
            let first = mesh.vertices.len() as u32;
            triangle.into_iter().for_each(|corner| mesh.colored_vertex(on_screen(corner), p.face));
            mesh.add_triangle(first, first + 1, first + 2);
        }
        painter.add(Shape::mesh(mesh));
        for ring in face.plan.rings() {
            let points = ring.iter().map(|&corner| on_screen(corner)).collect();
            painter.add(Shape::closed_line(points, Stroke::new(1.2, p.line)));
        }
    }
    for block in &layout.blocks {
        let Some(face) = layout.roof.faces.get(block.face) else { continue };
        for module in &block.modules {
            let corners = module.rect.corners().map(|corner| on_screen(face.plane.to_plan(corner)));
            let line = if scale > 8.0 { Stroke::new(0.8, p.module_line) } else { Stroke::NONE };
            painter.add(Shape::convex_polygon(corners.to_vec(), p.module, line));
        }
    }
    for penetration in &layout.penetrations {
        let points: Vec<Pos2> = penetration.plan.outer.iter().map(|&corner| on_screen(corner)).collect();
        painter.add(Shape::closed_line(points, Stroke::new(1.0, p.quiet)));
    }
    let north = rect.right_top() + Vec2::new(-12.0, 10.0);
    painter
        .line_segment([north + Vec2::new(0.0, 18.0), north + Vec2::new(0.0, 4.0)], Stroke::new(1.5, p.quiet));
    let small = theme::font(theme::size::SMALL);
    painter.text(north, egui::Align2::CENTER_CENTER, text::NORTH, small, p.quiet);
}
