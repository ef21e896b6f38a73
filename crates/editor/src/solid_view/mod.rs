//! The 3-D view of the house, lit by the sun at a date and time. For viewing; nothing is edited here except the
//! selection.

mod eye;
mod renderer;
mod sun;
mod sun_bar;

pub(crate) use eye::Eye;
pub(crate) use renderer::{RenderRequest, Renderer};
pub(crate) use sun::SunDial;

use crate::action::{Action, Actions};
use crate::state::{HOUSE, State};
use crate::{Document, Selection, text, theme};
use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;
use chalkcourse_picture::{Camera, Detail, Light, Look, Picture, Shot};
use chalkcourse_solid::{Show, SolidObject};
use egui::{Align2, Id, Panel, Pos2, Rect, Response, Role, Sense, Stroke, Ui, Vec2, WidgetInfo};

/// State of the 3-D view.
#[derive(Debug, Default)]
pub(crate) struct SolidView {
    pub(crate) eye: Eye,
    pub(crate) sun: SunDial,
    /// Whether the house is shown without the array.
    pub(crate) before: bool,
    renderer: Renderer,
}

/// The picture and the controls below it.
pub(crate) fn solid_view(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    view: &mut SolidView,
    keys: bool,
    actions: &mut Actions,
) {
    let p = theme::of(ui);
    let frame = egui::Frame::new().fill(p.panel).inner_margin(egui::Margin::symmetric(12, 6));
    let high = ui.available_height();
    Panel::bottom("sun bar").resizable(false).frame(frame).show(ui, |ui| {
        sun_bar::sun_bar(ui, document, view, high, actions);
    });
    let area = ui.available_rect_before_wrap();
    ui.advance_cursor_after_rect(area);
    let response = ui.interact(area, Id::unique(HOUSE), Sense::click_and_drag());
    let held = held_of(state.selection);
    view.eye.follow(ui, &response, keys);
    if document.job().faces.is_empty() {
        words_instead(ui, area, text::NO_HOUSE_YET.now());
        response.widget_info(|| WidgetInfo::labeled(Role::Canvas, true, text::NO_HOUSE_YET.now()));
        return;
    }
    draw_house(ui, area, document, view, held);
    compass(ui, area, view, document);
    let words = text::house_words(document, &view.eye.camera, &view.sun.words(document), view.before);
    response.widget_info(|| WidgetInfo::labeled(Role::Canvas, true, &words));
    things(ui, area, &response, document, state, view, actions);
    if response.clicked()
        && let Some(pos) = response.interact_pointer_pos()
    {
        let at = (pos - area.min) / area.size();
        let what = view.renderer.what(at.x, at.y);
        actions.push(Action::Select(selection_of(what, state.selection)));
    }
}

/// Draws the house into a part of the window; a text if it can't be rendered.
pub(crate) fn draw_house(
    ui: &Ui,
    area: Rect,
    document: &Document,
    view: &mut SolidView,
    held: Option<SolidObject>,
) {
    let ctx = ui.ctx();
    view.eye.settle(ctx, document, area);
    let points = ctx.pixels_per_point();
    let most = ctx.input(|input| input.max_texture_side);
    let quick = view.eye.is_moving(ctx);
    // While it moves, half the resolution is enough; less on a large screen.
    let whole = area.size() * points;
    let scale = if quick { (600_000.0 / (whole.x * whole.y).max(1.0)).sqrt().min(0.5) } else { 1.0 };
    let side = |pixels: f32| ((pixels * scale).round() as usize).clamp(1, most);
    let p = theme::of(ui);
    let dark = ui.visuals().dark_mode;
    let shot = Shot {
        camera: view.eye.camera,
        size: [side(whole.x), side(whole.y)],
        light: view.sun.light(document),
        look: look(p, dark),
        detail: if quick { Detail::Quick } else { Detail::Fine },
        held,
    };
    let show = Show { array: !view.before };
    let order = RenderRequest { job: document.job().clone(), plan: document.plan().clone(), show, shot };
    view.renderer.ask(ctx, order);
    let painter = ui.painter().with_clip_rect(area);
    painter.rect_filled(area, 0.0, p.ground);
    if view.renderer.show_newest(ctx, HOUSE)
        && let Some(texture) = view.renderer.texture()
    {
        let whole = Rect::from_min_max(Pos2::ZERO, Pos2::new(1.0, 1.0));
        painter.image(texture.id(), area, whole, egui::Color32::WHITE);
    } else if view.renderer.is_unavailable() {
        words_instead(ui, area, &text::cant_draw(document));
    }
}

/// Materials are the same in both themes; the sky follows the window.
fn look(p: &theme::Palette, dark: bool) -> Look {
    let usual = Look::default();
    let [r, g, b, _] = p.ground.to_array();
    if dark { Look { sky: [[r, g, b], [0x4a, 0x55, 0x60]], ..usual } } else { usual }
}

fn words_instead(ui: &Ui, area: Rect, words: &str) {
    let p = theme::of(ui);
    let painter = ui.painter().with_clip_rect(area);
    painter.rect_filled(area, 0.0, p.ground);
    let wide = (area.width() - 80.0).clamp(80.0, 520.0);
    let galley = painter.layout(words.to_owned(), theme::font(theme::size::HEADING), p.text, wide);
    painter.galley(area.center() - galley.size() / 2.0, galley, p.text);
}

/// Compass rose and sun.
fn compass(ui: &Ui, area: Rect, view: &SolidView, document: &Document) {
    let p = theme::of(ui);
    let painter = ui.painter().with_clip_rect(area);
    let centre = area.right_top() + Vec2::new(-46.0, 46.0);
    let radius = 26.0;
    painter.circle(centre, radius + 10.0, theme::faint(p.panel, 215), Stroke::new(1.0, p.rule));
    // The viewing direction is up.
    let ahead = view.eye.camera.from.degrees() + 180.0;
    let on_rose = |azimuth: f64, reach: f32| {
        let turn = ((azimuth - ahead).to_radians()) as f32;
        centre + Vec2::new(turn.sin(), -turn.cos()) * reach
    };
    for (azimuth, long) in [(0.0, true), (90.0, false), (180.0, false), (270.0, false)] {
        let stroke = Stroke::new(if long { 2.5 } else { 1.2 }, if long { p.text } else { p.quiet });
        painter.line_segment([on_rose(azimuth, radius * 0.35), on_rose(azimuth, radius * 0.7)], stroke);
    }
    let small = theme::font(theme::size::SMALL);
    painter.text(on_rose(0.0, radius), Align2::CENTER_CENTER, text::NORTH, small, p.text);
    if let Some(sun) = view.sun.sun(document).filter(|sun| sun.is_up()) {
        let at = on_rose(sun.azimuth.degrees(), radius + 3.0);
        painter.circle(at, 5.0, p.caution, Stroke::new(1.0, p.panel));
    }
    let words = text::seen_from(&view.eye.camera);
    let galley = painter.layout_no_wrap(words, theme::font(theme::size::BODY), p.text);
    let at = area.left_top() + Vec2::new(14.0, 12.0);
    painter.rect_filled(
        Rect::from_min_size(at, galley.size()).expand2(Vec2::new(7.0, 4.0)),
        4.0,
        theme::faint(p.panel, 215),
    );
    painter.galley(at, galley, p.text);
}

/// Exposes the visible objects to screen readers; each can be selected by keyboard.
fn things(
    ui: &mut Ui,
    area: Rect,
    picture: &Response,
    document: &Document,
    state: &State,
    view: &SolidView,
    actions: &mut Actions,
) {
    let layout = &document.plan().layout;
    let job = document.job();
    let mut list: Vec<(Selection, String, chalkcourse_geometry::DVec3)> = Vec::new();
    for (face, placed) in layout.roof.faces.iter().zip(&layout.faces) {
        let words = text::face_words(&placed.name, face, job.units);
        list.push((Selection::Face(placed.id), words, face.plane.to_space(face.bounds.centre())));
    }
    for penetration in &layout.penetrations {
        let face = penetration.home.and_then(|home| layout.roof.faces.get(home));
        if let (Some(face), Some(bounds)) = (face, penetration.plan.bounds()) {
            let at = bounds.centre();
            let words = text::penetration_words(penetration);
            list.push((Selection::Penetration(penetration.id), words, at.extend(face.plane.height_at(at))));
        }
    }
    for placed in layout.blocks.iter().filter(|_| !view.before) {
        let face = layout.roof.faces.get(placed.face);
        if let (Some(face), Some(block), Some(bounds)) = (face, job.block(placed.id), placed.bounds) {
            let words = text::block_words(block, placed.modules.len());
            list.push((Selection::Block(placed.id), words, face.plane.to_space(bounds.centre())));
        }
    }
    let size = [area.width().max(1.0) as usize, area.height().max(1.0) as usize];
    for (what, words, at) in list {
        let Some((x, y, _)) = view.eye.camera.project(at, size) else { continue };
        let rect = Rect::from_center_size(area.min + Vec2::new(x as f32, y as f32), Vec2::splat(24.0));
        if !area.contains(rect.center()) {
            continue;
        }
        let id = Id::unique(("thing of the house", what));
        let response = ui.interact(rect, id, Sense::focusable_noninteractive());
        response.widget_info(|| WidgetInfo::selected(Role::ListItem, true, what == state.selection, &words));
        let pressed = response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter));
        let asked = ui.input(|input| input.has_accesskit_action_request(id, egui::accesskit::Action::Click));
        if pressed || asked {
            actions.push(Action::Select(what));
            picture.request_focus();
        }
    }
}

/// What is tinted for the selection.
fn held_of(selection: Selection) -> Option<SolidObject> {
    match selection {
        Selection::Nothing | Selection::Part(..) | Selection::Circuit(_) | Selection::JunctionBox(_) => None,
        Selection::Face(id) | Selection::Side { face: id, .. } | Selection::Corner { face: id, .. } => {
            Some(SolidObject::Face(id))
        }
        Selection::Penetration(id) => Some(SolidObject::Penetration(id)),
        Selection::Block(id) => Some(SolidObject::Block(id)),
        Selection::Module { block, cell } => Some(SolidObject::Module(block, cell)),
    }
}

/// What a click selects: first the block, then a module of it.
fn selection_of(what: Option<SolidObject>, held: Selection) -> Selection {
    match what {
        None | Some(SolidObject::Ground | SolidObject::House) => Selection::Nothing,
        Some(SolidObject::Face(id)) => Selection::Face(id),
        Some(SolidObject::Penetration(id)) => Selection::Penetration(id),
        Some(SolidObject::Module(block, cell)) if held.block() == Some(block) => {
            Selection::Module { block, cell }
        }
        Some(SolidObject::Block(id) | SolidObject::Module(id, _)) => Selection::Block(id),
    }
}

/// A small picture of a job's house with its array; `None` if there is no house yet.
pub(crate) fn small(job: &Resolved, size: [usize; 2], dark: bool) -> Option<Picture> {
    let layout = Layout::of(job);
    let corners = chalkcourse_solid::outline_points(job, &layout);
    if corners.is_empty() {
        return None;
    }
    let wide = size[0] as f64 / size[1].max(1) as f64;
    let shot = Shot {
        camera: Camera::fitted(Camera::default(), &corners, wide),
        size,
        light: WITHOUT_SUN,
        look: look(theme::palette(dark), dark),
        detail: Detail::Fine,
        held: None,
    };
    let house = chalkcourse_solid::solid(job, &layout, Show { array: true });
    Some(chalkcourse_picture::Scene::of(&house).draw(&shot))
}

/// The picture as a file: the present view at slide resolution.
pub(crate) fn png(document: &Document, view: &SolidView, dark: bool) -> Result<Vec<u8>, String> {
    let size = [1920, 1080];
    let corners = chalkcourse_solid::outline_points(document.job(), &document.plan().layout);
    if corners.is_empty() {
        return Err(text::NO_HOUSE_YET.now().to_owned());
    }
    let shot = Shot {
        camera: Camera::fitted(view.eye.camera, &corners, 1920.0 / 1080.0),
        size,
        light: view.sun.light(document),
        look: look(theme::palette(dark), dark),
        detail: Detail::Fine,
        held: None,
    };
    let house =
        chalkcourse_solid::solid(document.job(), &document.plan().layout, Show { array: !view.before });
    let picture = chalkcourse_picture::Scene::of(&house).draw(&shot);
    let output = match view.before {
        true => chalkcourse_sheets::Output::PictureBefore(&picture),
        false => chalkcourse_sheets::Output::Picture(&picture),
    };
    output.bytes(document.job(), document.plan()).map_err(|error| error.to_string())
}

/// Uniform light if the sun is unknown.
pub(crate) const WITHOUT_SUN: Light = Light::Even;
