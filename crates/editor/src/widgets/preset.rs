//! Buttons for kinds of parts of a house, each with a small picture.

use crate::state::PartPreset;
use crate::text;
use crate::theme::{self, Palette};
use egui::{Align2, Color32, Painter, Pos2, Rect, Sense, Shape, Stroke, StrokeKind, Ui, Vec2, WidgetInfo};

/// Size of the picture, in points.
const PICTURE: Vec2 = Vec2::new(30.0, 20.0);

/// A button that chooses what to draw next. Returns whether it was clicked.
pub(crate) fn preset_button(ui: &mut Ui, preset: PartPreset, chosen: bool) -> bool {
    let p = theme::of(ui);
    let (name, pad) = (text::part_preset(preset), theme::GAP * 1.5);
    let words = ui.painter().layout_no_wrap(name.to_owned(), theme::font(theme::size::BODY), p.text);
    let size = Vec2::new(PICTURE.x + words.size().x + 3.0 * pad, theme::PRESS);
    let (rect, response) = ui.allocate_exact_size(size, Sense::click());
    response.widget_info(|| WidgetInfo::selected(egui::Role::Button, true, chosen, name));
    let fill = match (chosen, response.hovered() || response.has_focus()) {
        (true, _) => p.accent_ground,
        (_, true) => p.button_hover,
        _ => Color32::TRANSPARENT,
    };
    ui.painter().rect(rect, 4.0, fill, Stroke::NONE, StrokeKind::Inside);
    let corner = Pos2::new(rect.left() + pad, rect.center().y - PICTURE.y / 2.0);
    picture(ui.painter(), preset, Rect::from_min_size(corner, PICTURE), p);
    let at = Pos2::new(rect.left() + PICTURE.x + 2.0 * pad, rect.center().y);
    ui.painter().galley(Align2::LEFT_CENTER.anchor_size(at, words.size()).min, words, p.text);
    response.on_hover_text(text::part_preset_help(preset)).clicked()
}

/// The house in thin lines, with the part filled.
fn picture(painter: &Painter, preset: PartPreset, area: Rect, p: &Palette) {
    let at = |&(x, y): &(f32, f32)| Pos2::new(area.left() + x, area.bottom() - y);
    let all = |points: &[(f32, f32)]| points.iter().map(at).collect::<Vec<_>>();
    let house = |points: &[(f32, f32)]| painter.add(Shape::line(all(points), Stroke::new(1.0, p.quiet)));
    let part = |points: &[(f32, f32)]| {
        painter.add(Shape::convex_polygon(all(points), p.face, Stroke::new(1.4, p.text)))
    };
    match preset {
        PartPreset::Dormer => {
            house(&[(0.0, 1.0), (5.0, 19.0), (25.0, 19.0), (30.0, 1.0), (0.0, 1.0)]);
            part(&[(9.0, 4.0), (9.0, 9.0), (15.0, 15.0), (21.0, 9.0), (21.0, 4.0)]);
        }
        PartPreset::Porch => {
            house(&[(1.0, 0.0), (1.0, 11.0), (10.0, 19.0), (19.0, 11.0), (19.0, 0.0)]);
            part(&[(15.0, 14.5), (29.0, 8.0), (29.0, 6.0), (15.0, 12.5)]);
            house(&[(27.0, 7.0), (27.0, 0.0)]);
        }
        PartPreset::LeanTo => {
            house(&[(0.0, 0.0), (0.0, 13.0)]);
            house(&[(-1.0, 12.0), (8.5, 19.5), (18.0, 12.0)]);
            house(&[(17.0, 13.0), (17.0, 0.0)]);
            part(&[(17.0, 0.0), (17.0, 10.0), (29.0, 5.0), (29.0, 0.0)]);
        }
        PartPreset::Ell => {
            house(&[(0.0, 9.0), (0.0, 20.0), (30.0, 20.0), (30.0, 9.0), (0.0, 9.0)]);
            house(&[(0.0, 14.5), (30.0, 14.5)]);
            part(&[(10.0, 0.0), (10.0, 9.0), (15.0, 14.5), (20.0, 9.0), (20.0, 0.0)]);
            painter.add(Shape::line(all(&[(15.0, 0.0), (15.0, 14.5)]), Stroke::new(1.0, p.text)));
        }
        PartPreset::Chimney => {
            house(&[(1.0, 1.0), (15.0, 15.0), (29.0, 1.0)]);
            part(&[(18.0, 8.0), (18.0, 19.0), (24.0, 19.0), (24.0, 8.0)]);
        }
    }
}
