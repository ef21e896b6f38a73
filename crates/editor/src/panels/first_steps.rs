use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{OutlineFor, Tool};
use crate::{text, theme};
use egui::{Align2, Area, Button, Frame, Id, Margin, Order, Rect, RichText, Stroke, Ui};

/// What to do if there is no roof yet.
pub(crate) fn first_steps_card(ui: &mut Ui, area: Rect, actions: &mut Actions) {
    let p = theme::of(ui);
    Area::new(Id::unique("first steps"))
        .order(Order::Middle)
        .pivot(Align2::CENTER_CENTER)
        .fixed_pos(area.center())
        .constrain_to(area)
        .show(ui.ctx(), |ui| {
            Frame::new()
                .fill(p.panel)
                .stroke(Stroke::new(1.0, p.rule))
                .corner_radius(10)
                .inner_margin(Margin::same(28))
                .show(ui, |ui| {
                    ui.set_width(400.0_f32.min(area.width() - 80.0).max(200.0));
                    ui.label(RichText::new(text::EMPTY_TITLE.now()).size(theme::size::TITLE));
                    ui.add_space(theme::GAP * 2.0);
                    for step in text::EMPTY_STEPS {
                        ui.label(step.now());
                    }
                    ui.add_space(theme::GAP * 4.0);
                    let first = Button::new(text::RAISE_OVER_WALLS.now()).fill(p.accent_ground);
                    ui.horizontal_wrapped(|ui| {
                        if ui.add(first).clicked() {
                            actions.push(Command::RaiseRoof.action());
                        }
                        if ui.button(text::EMPTY_DRAW.now()).clicked() {
                            actions
                                .extend([Action::Use(Tool::DrawFace), Action::OutlineFor(OutlineFor::Face)]);
                        }
                        if ui.button(text::LESSON_SHOW.now()).clicked() {
                            actions.push(Command::Lesson.action());
                        }
                        if ui.button(text::EMPTY_OPEN.now()).clicked() {
                            actions.push(Command::Open.action());
                        }
                        if ui.button(text::OPEN_SAMPLE.now()).clicked() {
                            actions.push(Action::OpenSample);
                        }
                    });
                });
        });
}
