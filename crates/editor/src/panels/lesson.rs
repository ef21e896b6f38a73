use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{State, Step};
use crate::{text, theme};
use chalkcourse_words as words;
use egui::{Area, Context, Frame, Id, Margin, Order, ProgressBar, Rect, RichText, Stroke, Ui};

/// The card of the current step, in a corner of the drawing until it is dragged elsewhere.
pub(crate) fn lesson_card(ui: &mut Ui, area: Rect, state: &State, actions: &mut Actions) {
    let Some(lesson) = state.lesson else { return };
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
                    let (title, words) = card(lesson.step(), ui.ctx());
                    ui.label(RichText::new(text::lesson_place(lesson.number(), last)).small().color(p.quiet));
                    ui.add(ProgressBar::new(lesson.number() as f32 / last as f32).desired_height(4.0));
                    ui.label(RichText::new(title).size(theme::size::HEADING).strong());
                    ui.label(words);
                    ui.add_space(theme::GAP);
                    ui.horizontal(|ui| {
                        if lesson.step() == Step::Done {
                            if ui.button(text::LESSON_END.now()).clicked() {
                                actions.push(Command::LeaveLesson.action());
                            }
                            return;
                        }
                        if ui.button(text::LESSON_SKIP.now()).clicked() {
                            actions.push(Action::SkipStep);
                        }
                        if ui.button(text::LESSON_LEAVE.now()).clicked() {
                            actions.push(Command::LeaveLesson.action());
                        }
                    });
                });
        });
}

/// The heading and text of a step.
fn card(step: Step, ctx: &Context) -> (&'static str, String) {
    let key = |command: Command| command.key_words(ctx);
    let taught = Command::taught_by(step).map(key).unwrap_or_default();
    match step {
        Step::Roof => (
            words::lesson::RAISE_A_ROOF_OVER_THE.now(),
            words::lesson::press_w_click_where_the(&taught, &key(Command::DrawFace)),
        ),
        Step::Pitch => {
            (words::lesson::SAY_HOW_STEEP_IT_IS.now(), words::lesson::THE_HOUSE_IS_HELD_ON.now().to_owned())
        }
        Step::Vent => {
            (words::lesson::MARK_WHAT_COMES_THROUGH.now(), words::lesson::press_p_and_click_where(&taught))
        }
        Step::Fill => (words::lesson::FILL_IT.now(), words::lesson::press_l_the_most_modules(&taught)),
        Step::Finding => {
            (words::lesson::BREAK_A_RULE_AND_MEND.now(), words::lesson::drag_the_block_over_the(&taught))
        }
        Step::Order => (words::lesson::SEE_THE_ORDER.now(), words::lesson::press_o_every_part_with(&taught)),
        Step::Done => {
            let [home, find, save] = [Command::ShowHome, Command::Find, Command::Save].map(key);
            (
                words::lesson::THAT_IS_THE_WHOLE_WAY.now(),
                words::lesson::from_a_bare_roof_to(&home, &find, &save),
            )
        }
    }
}
