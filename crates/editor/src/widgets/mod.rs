//! Composite widgets used throughout the window.

pub(crate) mod arrange;
pub(crate) mod fields;
mod preset;
mod raise;
pub(crate) mod sketch;
mod steps;
pub(crate) mod tree;

pub(crate) use preset::preset_button;
pub(crate) use raise::raise_fields;
pub(crate) use steps::{list_steps, stepped};

use crate::theme::{self, Palette};
use egui::{Align2, Painter, Pos2, Rect, Response, RichText, Sense, Shape, Stroke, Ui, Vec2};

/// The heading of a section of a panel.
pub(crate) fn heading(ui: &mut Ui, words: &str) -> Response {
    ui.label(RichText::new(words).heading().strong())
}

/// Least width and height of click targets, in points (WCAG 2.2, 2.5.8; from memory).
pub(crate) const LEAST: Vec2 = Vec2::splat(24.0);

/// Buttons in small type with click targets as large as others.
pub(crate) trait LittleButton {
    /// Adds one.
    fn little_button(&mut self, words: &str) -> Response;
}

impl LittleButton for Ui {
    fn little_button(&mut self, words: &str) -> Response {
        self.add(egui::Button::new(RichText::new(words).small()).min_size(LEAST))
    }
}

/// Scrolls what is drawn next by arrow and Page keys, Home and End, while `node` has the focus: read-only content has
/// nothing else to focus.
pub(crate) fn scroll_by_keys(ui: &Ui, node: egui::Id) {
    use egui::{EventFilter, Key, Modifiers};
    if !ui.memory(|memory| memory.has_focus(node)) {
        return;
    }
    let filter = EventFilter { vertical_arrows: true, ..EventFilter::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(node, filter));
    let (line, page) = (40.0, (ui.available_height() - 40.0).max(40.0));
    let keys = [
        (Key::ArrowDown, line),
        (Key::ArrowUp, -line),
        (Key::PageDown, page),
        (Key::PageUp, -page),
        (Key::Home, -1e6),
        (Key::End, 1e6),
    ];
    let down =
        |(key, by)| ui.input_mut(|input| input.count_and_consume_key(Modifiers::NONE, key)) as f32 * by;
    let down: f32 = keys.into_iter().map(down).sum();
    if down != 0.0 {
        ui.scroll_with_delta(Vec2::new(0.0, -down));
    }
}

/// Secondary text.
pub(crate) fn quiet(ui: &mut Ui, words: &str) -> Response {
    let color = theme::of(ui).quiet;
    ui.label(RichText::new(words).small().color(color))
}

/// A small button with an icon that `draw` paints in a square; its text is for tooltip and screen readers.
pub(crate) fn sign_button(ui: &mut Ui, words: &str, draw: impl FnOnce(&Painter, Rect, Stroke)) -> bool {
    let (rect, response) = ui.allocate_exact_size(Vec2::splat(24.0), Sense::click());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, words));
    let p = theme::of(ui);
    if response.hovered() || response.has_focus() {
        ui.painter().rect_filled(rect, 4.0, p.button_hover);
    }
    if response.has_focus() {
        ui.painter().rect_stroke(rect, 4.0, Stroke::new(2.0, p.accent), egui::StrokeKind::Inside);
    }
    draw(ui.painter(), Rect::from_center_size(rect.center(), Vec2::splat(10.0)), Stroke::new(1.4, p.text));
    response.on_hover_text(words).clicked()
}

/// A spinner that moves every eighth of a second: one that moves in every frame would repaint a large roof sixty times
/// a second, and slow down the fill.
pub(crate) fn turning(ui: &mut Ui) {
    let (rect, _) = ui.allocate_exact_size(egui::Vec2::splat(20.0), Sense::hover());
    let p = theme::of(ui);
    let now = (ui.input(|input| input.time) * 8.0) as usize % 8;
    for dot in 0..8 {
        let way = egui::Vec2::angled(std::f32::consts::TAU * dot as f32 / 8.0);
        let (radius, color) = if dot == now { (2.6, p.accent) } else { (1.6, p.quiet) };
        ui.painter().circle_filled(rect.center() + way * 7.5, radius, color);
    }
    ui.ctx().request_repaint_after(std::time::Duration::from_millis(125));
}

/// The sign of a severity, distinct by its shape: an octagon, a triangle, a disc.
pub(crate) fn severity_sign(
    painter: &Painter,
    centre: Pos2,
    radius: f32,
    severity: chalkcourse_rules::Severity,
    palette: &Palette,
) {
    use chalkcourse_rules::Severity;
    let color = theme::severity(palette, severity);
    let (corners, turn, mark) = match severity {
        Severity::Stop => (8, std::f32::consts::PI / 8.0, "×"),
        Severity::Caution => (3, -std::f32::consts::FRAC_PI_2, "!"),
        Severity::Note => (24, 0.0, "i"),
    };
    let reach = if corners == 3 { radius * 1.25 } else { radius };
    let points = (0..corners)
        .map(|n| centre + Vec2::angled(turn + std::f32::consts::TAU * n as f32 / corners as f32) * reach)
        .collect();
    painter.add(Shape::convex_polygon(points, color, Stroke::NONE));
    painter.text(centre, Align2::CENTER_CENTER, mark, theme::font(radius * 1.7), palette.panel);
}

/// Distance of hatch lines, points.
const HATCH: f32 = 9.0;

/// Hatch lines inside an outline, clipped to the visible area.
pub(crate) fn hatch(outline: &[Pos2], seen: Rect) -> Vec<(Pos2, Pos2)> {
    let bounds = Rect::from_points(outline).intersect(seen);
    if !bounds.is_positive() {
        return Vec::new();
    }
    // Lines x + y = c, aligned to the screen, so that the hatching of adjacent strips is continuous.
    let first = ((bounds.left() + bounds.top()) / HATCH).ceil() as i32;
    let last = ((bounds.right() + bounds.bottom()) / HATCH).floor() as i32;
    let mut lines = Vec::new();
    for line in first..=last {
        let c = line as f32 * HATCH;
        let mut crossings: Vec<f32> = outline
            .iter()
            .zip(outline.iter().cycle().skip(1))
            .filter_map(|(a, b)| {
                let (at_a, at_b) = (a.x + a.y - c, b.x + b.y - c);
                ((at_a > 0.0) != (at_b > 0.0)).then(|| a.x + (b.x - a.x) * at_a / (at_a - at_b))
            })
            .collect();
        crossings.sort_by(f32::total_cmp);
        for pair in crossings.chunks_exact(2) {
            if let [from, to] = *pair {
                lines.push((Pos2::new(from, c - from), Pos2::new(to, c - to)));
            }
        }
    }
    lines
}
