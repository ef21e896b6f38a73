use crate::action::Actions;
use crate::commands::Command;
use crate::state::{State, Tool};
use crate::{text, theme};
use egui::{Button, Color32, Painter, Pos2, Rect, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo};

/// Height of the button at the bottom, in points.
const FOOT: f32 = 44.0;

/// The tools, each with its name and key.
pub(crate) fn tool_buttons(ui: &mut Ui, state: &State, actions: &mut Actions) {
    // With large text in a low window the tools scroll, above the button at the bottom.
    let room = (ui.available_height() - FOOT).max(58.0);
    egui::ScrollArea::vertical().id_salt("tools").max_height(room).show(ui, |ui| {
        ui.vertical_centered_justified(|ui| {
            ui.add_space(theme::GAP);
            for (command, tool) in Command::of_tools() {
                if button(ui, command, tool, state.tool == tool) {
                    actions.push(command.action());
                }
            }
        });
    });
    ui.with_layout(egui::Layout::bottom_up(egui::Align::Center), |ui| {
        ui.add_space(theme::GAP * 2.0);
        let words = if ui.visuals().dark_mode { text::TO_LIGHT.now() } else { text::TO_DARK.now() };
        if ui.add(Button::new(words)).on_hover_text(text::THEME.now()).clicked() {
            actions.push(Command::Theme.action());
        }
    });
}

fn button(ui: &mut Ui, command: Command, tool: Tool, chosen: bool) -> bool {
    let p = theme::of(ui);
    let (rect, response) = ui.allocate_exact_size(Vec2::new(ui.available_width(), 58.0), Sense::click());
    response.widget_info(|| WidgetInfo::selected(egui::Role::Button, true, chosen, command.title()));
    let hovered = response.hovered() || response.has_focus();
    let fill = match (chosen, hovered) {
        (true, _) => p.accent_ground,
        (_, true) => p.button_hover,
        _ => Color32::TRANSPARENT,
    };
    let painter = ui.painter();
    painter.rect_filled(rect, 6.0, fill);
    if chosen {
        let mark = Rect::from_min_size(rect.min + Vec2::new(0.0, 10.0), Vec2::new(3.0, rect.height() - 20.0));
        painter.rect_filled(mark, 1.5, p.accent);
    }
    if response.has_focus() {
        painter.rect_stroke(rect.shrink(1.0), 6.0, theme::focus(p), egui::StrokeKind::Inside);
    }
    sign(painter, tool, rect.center_top() + Vec2::new(0.0, 20.0), p.text);
    painter.text(
        rect.center_bottom() - Vec2::new(0.0, 6.0),
        egui::Align2::CENTER_BOTTOM,
        command.title(),
        theme::font(theme::size::SMALL),
        p.text,
    );
    response.on_hover_text(command.tip(ui.ctx())).clicked()
}

/// The icon of a tool.
fn sign(painter: &Painter, tool: Tool, at: Pos2, color: Color32) {
    let stroke = Stroke::new(1.6, color);
    let p = |x: f32, y: f32| at + Vec2::new(x, y);
    match tool {
        Tool::Select => {
            let points = vec![p(-5.0, -9.0), p(-5.0, 6.0), p(-1.0, 2.5), p(6.5, 2.5)];
            painter.add(Shape::closed_line(points, stroke));
        }
        Tool::DrawFace => {
            painter.add(Shape::closed_line(
                vec![p(-11.0, 7.0), p(-6.0, -7.0), p(6.0, -7.0), p(11.0, 7.0)],
                stroke,
            ));
            for corner in [p(-11.0, 7.0), p(-6.0, -7.0), p(6.0, -7.0), p(11.0, 7.0)] {
                painter.circle_filled(corner, 2.6, color);
            }
        }
        Tool::Penetration => {
            painter.circle_stroke(at, 8.5, Stroke::new(1.0, color));
            painter.circle_filled(at, 4.0, color);
        }
        Tool::Block => {
            for (x, y) in [(-11.0, -7.5), (0.5, -7.5), (-11.0, 0.5), (0.5, 0.5)] {
                let module = Rect::from_min_size(p(x, y), Vec2::new(10.0, 6.5));
                painter.rect_stroke(module, 1.0, stroke, egui::StrokeKind::Inside);
            }
        }
        Tool::Circuit => {
            for x in [-11.0, -3.5, 4.0] {
                let module = Rect::from_min_size(p(x, -4.0), Vec2::new(7.0, 10.0));
                painter.rect_stroke(module, 1.0, Stroke::new(1.0, color), egui::StrokeKind::Inside);
            }
            painter.add(Shape::line(vec![p(-7.5, 1.0), p(0.0, 1.0), p(7.5, 1.0)], stroke));
            painter.circle_filled(p(-7.5, 1.0), 2.0, color);
            painter.circle_filled(p(7.5, 1.0), 2.0, color);
        }
        Tool::JunctionBox => {
            let room = Rect::from_center_size(at, Vec2::splat(14.0));
            painter.rect_stroke(room, 2.0, stroke, egui::StrokeKind::Inside);
            painter.line_segment([p(-3.5, -3.5), p(3.5, 3.5)], stroke);
            painter.line_segment([p(-3.5, 3.5), p(3.5, -3.5)], stroke);
        }
        // It has no button: pasting switches to it.
        Tool::Paste => {}
        Tool::Picture => {
            let frame = Rect::from_min_max(p(-11.0, -8.0), p(11.0, 8.0));
            painter.rect_stroke(frame, 1.5, stroke, egui::StrokeKind::Inside);
            painter.add(Shape::line(
                vec![p(-9.0, 6.0), p(-3.0, -1.0), p(1.5, 4.0), p(4.0, 1.5), p(9.0, 6.0)],
                stroke,
            ));
            painter.circle_filled(p(5.0, -3.5), 1.8, color);
        }
        Tool::Tape => {
            painter.line_segment([p(-11.0, 3.0), p(11.0, 3.0)], stroke);
            for (n, x) in [-11.0, -5.5, 0.0, 5.5, 11.0].into_iter().enumerate() {
                painter.line_segment([p(x, 3.0), p(x, if n % 2 == 0 { -6.0 } else { -2.0 })], stroke);
            }
        }
    }
}
