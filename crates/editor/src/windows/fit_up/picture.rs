//! A small picture of a deck as measured over a square one.

use crate::widgets::quiet;
use crate::{text, theme};
use chalkcourse_geometry::fit_up::{Deck, Measured};
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use egui::{Pos2, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo};

/// Deviations are magnified until visible: to this fraction of the shorter side.
const TOLD: f64 = 0.08;
/// Largest magnification.
const MOST: f64 = 200.0;

/// Draws the deck. Corners are where they were measured, with deviations magnified.
pub(super) fn deck_picture(ui: &mut Ui, measured: &Measured, deck: &Deck) {
    let up = (measured.left + measured.right) / 2.0;
    let wide = (measured.eave + measured.head) / 2.0;
    let square = [DVec2::ZERO, dvec2(wide, 0.0), dvec2(wide, up), dvec2(0.0, up)];
    let off: Vec<DVec2> = deck.corners.iter().zip(square).map(|(corner, square)| *corner - square).collect();
    let most = off.iter().map(|off| off.length()).fold(0.0, f64::max);
    let times = if most > 1e-4 { (TOLD * wide.min(up) / most).clamp(1.0, MOST).floor() } else { 1.0 };
    let drawn: Vec<DVec2> = square.iter().zip(&off).map(|(square, off)| *square + *off * times).collect();

    let size = Vec2::new(ui.available_width(), 170.0);
    let (area, response) = ui.allocate_exact_size(size, Sense::hover());
    let words = text::picture(times);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &words));
    let Some(bounds) = Rect::around(drawn.iter().chain(&square).copied()) else { return };
    let room = area.shrink2(Vec2::new(70.0, 22.0));
    let scale = (f64::from(room.width()) / bounds.size().x).min(f64::from(room.height()) / bounds.size().y);
    let place = |p: DVec2| {
        let from = (p - bounds.centre()) * scale;
        Pos2::new(room.center().x + from.x as f32, room.center().y - from.y as f32)
    };
    let p = theme::of(ui);
    let painter = ui.painter().with_clip_rect(area);
    painter.rect_filled(area, 6.0, p.field);
    let mut dashed: Vec<Pos2> = square.iter().map(|&corner| place(corner)).collect();
    dashed.extend(dashed.first().copied());
    painter.extend(Shape::dashed_line(&dashed, Stroke::new(1.0, p.quiet), 4.0, 4.0));
    let outline: Vec<Pos2> = drawn.iter().map(|&corner| place(corner)).collect();
    if let [a, b, c, d] = outline.as_slice() {
        painter.line_segment([*a, *c], Stroke::new(1.0, p.zone));
        painter.line_segment([*b, *d], Stroke::new(1.0, p.zone));
        for (from, to, name) in [
            (a, b, text::SIDE_EAVE.now()),
            (d, c, text::SIDE_HEAD.now()),
            (a, d, text::SIDE_LEFT.now()),
            (b, c, text::SIDE_RIGHT.now()),
        ] {
            let middle = *from + (*to - *from) * 0.5;
            let out = (middle - room.center()).normalized();
            let anchor = match (out.x, out.y) {
                (x, _) if x < -0.7 => egui::Align2::RIGHT_CENTER,
                (x, _) if x > 0.7 => egui::Align2::LEFT_CENTER,
                (_, y) if y > 0.0 => egui::Align2::CENTER_TOP,
                _ => egui::Align2::CENTER_BOTTOM,
            };
            painter.text(middle + out * 5.0, anchor, name, theme::font(theme::size::SMALL), p.quiet);
        }
    }
    painter.add(Shape::closed_line(outline, Stroke::new(2.0, p.accent)));
    quiet(ui, &words);
}
