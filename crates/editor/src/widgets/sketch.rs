//! The sketches of rules, in the colours and line styles of the roof.

use super::hatch;
use crate::{text, theme};
use chalkcourse_rules::sketch::{HIGH, Stroke as Line, WIDE};
use chalkcourse_rules::{RULES, Rule};
use egui::{Pos2, Rect, Response, RichText, Sense, Shape, Stroke, StrokeKind, Ui, Vec2, WidgetInfo};

/// Half the length of a tick across the end of a dimension, and a side of an arrowhead, in points.
const TICK: f32 = 3.5;

/// Adds a tooltip about a rule: what it checks, its sketch, and its reason.
pub(crate) fn tip(words: Response, code: &str) {
    let Some(rule) = RULES.iter().find(|rule| rule.code == code) else { return };
    words.on_hover_ui(|ui| {
        ui.set_max_width(240.0);
        ui.label(RichText::new(chalkcourse_telling::title(rule)).strong());
        rule_sketch(ui, rule, 200.0);
        ui.label(chalkcourse_telling::reason(rule));
    });
}

/// Draws the sketch of a rule with a given width.
pub(crate) fn rule_sketch(ui: &mut Ui, rule: &Rule, width: f32) -> Response {
    let (rect, response) = ui.allocate_exact_size(Vec2::new(width, width * HIGH / WIDE), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, text::sketch_of(rule)));
    if !ui.is_rect_visible(rect) {
        return response;
    }
    let p = theme::of(ui);
    let painter = ui.painter_at(rect);
    painter.rect(rect, 4.0, p.ground, Stroke::new(1.0, p.rule), StrokeKind::Inside);
    let scale = width / WIDE;
    let at = |[x, y]: [f32; 2]| Pos2::new(rect.left() + x * scale, rect.bottom() - y * scale);
    let all = |points: &[[f32; 2]]| points.iter().map(|&point| at(point)).collect::<Vec<_>>();
    let area = |[x, y, w, h]: [f32; 4]| Rect::from_two_pos(at([x, y]), at([x + w, y + h]));
    for line in rule.sketch {
        match *line {
            Line::Roof(points) => {
                painter.add(Shape::convex_polygon(all(points), p.face, Stroke::new(1.6, p.line)));
            }
            Line::Edge(points) => {
                painter.add(Shape::line(all(points), Stroke::new(2.2, p.line)));
            }
            Line::Limit(points) => {
                painter.extend(Shape::dashed_line(&all(points), Stroke::new(1.2, p.zone), 4.0, 3.0));
            }
            Line::Free(points) => {
                let outline = all(points);
                for (from, to) in hatch(&outline, rect) {
                    painter.line_segment([from, to], Stroke::new(1.0, p.note));
                }
                painter.add(Shape::closed_line(outline, Stroke::new(1.2, p.note)));
            }
            Line::Module(place) => {
                painter.rect(area(place), 0.0, p.module, Stroke::new(1.2, p.module_line), StrokeKind::Middle);
            }
            Line::Wrong(place) => {
                let area = area(place);
                painter.rect_filled(area, 0.0, p.module);
                let corners = [area.left_top(), area.right_top(), area.right_bottom(), area.left_bottom()];
                for (from, to) in hatch(&corners, rect) {
                    painter.line_segment([from, to], Stroke::new(1.2, p.module_stop));
                }
                painter.rect_stroke(area, 0.0, Stroke::new(1.8, p.module_stop), StrokeKind::Middle);
            }
            Line::Thing(place) => {
                painter.rect(area(place), 0.0, p.penetration, Stroke::new(1.2, p.line), StrokeKind::Middle);
            }
            Line::Pipe([x, y, radius]) => {
                painter.circle(at([x, y]), radius * scale, p.penetration, Stroke::new(1.2, p.line));
            }
            Line::Measure(from, to) => {
                let (from, to) = (at(from), at(to));
                let across = (to - from).normalized().rot90() * TICK;
                for ends in [[from, to], [from - across, from + across], [to - across, to + across]] {
                    painter.line_segment(ends, Stroke::new(1.4, p.accent));
                }
            }
            Line::Way(from, to) => {
                let (from, to) = (at(from), at(to));
                let along = (to - from).normalized() * TICK;
                for ends in [
                    [from, to],
                    [to, to - along * 1.6 + along.rot90()],
                    [to, to - along * 1.6 - along.rot90()],
                ] {
                    painter.line_segment(ends, Stroke::new(1.4, p.text));
                }
            }
        }
    }
    response
}
