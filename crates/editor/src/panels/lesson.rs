use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::desk::Desk;
use crate::lesson::Step;
use crate::{Document, text, theme};
use egui::{Area, Frame, Id, Margin, Order, ProgressBar, Rect, RichText, Stroke, Ui};

/// The card of the step that is to be done, in a corner of the drawing until it is dragged elsewhere.
pub(crate) fn show(ui: &mut Ui, area: Rect, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let Some(mut lesson) = desk.lesson else { return };
    lesson.watch(document, desk);
    let p = theme::of(ui);
    Area::new(Id::unique("first job"))
        .order(Order::Middle)
        .default_pos(area.left_top() + egui::vec2(12.0, 12.0))
        .movable(true)
        .constrain_to(area)
        .show(ui.ctx(), |ui| {
            Frame::new()
                .fill(p.panel)
                .stroke(Stroke::new(1.4, p.accent))
                .corner_radius(10)
                .inner_margin(Margin::same(14))
                .show(ui, |ui| {
                    ui.set_width(310.0);
                    let last = Step::ALL.len() - 1;
                    let (title, words) = text::lesson_step(lesson.step());
                    ui.label(RichText::new(text::lesson_place(lesson.number(), last)).small().color(p.quiet));
                    ui.add(ProgressBar::new(lesson.number() as f32 / last as f32).desired_height(4.0));
                    ui.label(RichText::new(title).size(theme::size::HEADING).strong());
                    ui.label(words);
                    ui.add_space(theme::GAP);
                    ui.horizontal(|ui| {
                        if lesson.step() == Step::Done {
                            if ui.button(text::LESSON_END.now()).clicked() {
                                actions.push(Action::Run(Command::LeaveLesson));
                            }
                            return;
                        }
                        if ui.button(text::LESSON_SKIP.now()).clicked() {
                            lesson.skip();
                        }
                        if ui.button(text::LESSON_LEAVE.now()).clicked() {
                            actions.push(Action::Run(Command::LeaveLesson));
                        }
                    });
                });
        });
    if desk.lesson != Some(lesson) {
        desk.lesson = Some(lesson);
        ui.ctx().request_repaint();
    }
}
