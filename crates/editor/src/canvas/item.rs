use super::Stage;
use crate::Selection;
use crate::action::{Action, Actions};
use crate::theme;
use egui::{Id, Key, Rect, Role, Sense, Shape, Ui, WidgetInfo, accesskit};

/// The widget id of an object on the drawing.
pub(super) fn id(what: Selection) -> Id {
    Id::unique(("thing on the drawing", what))
}

/// An object on the drawing as an item for screen readers and keyboard focus; Enter selects it.
pub(super) fn item(
    ui: &mut Ui,
    stage: &Stage,
    points: impl IntoIterator<Item = egui::Pos2>,
    what: Selection,
    held: Selection,
    words: impl Fn() -> String,
    actions: &mut Actions,
) {
    let points: Vec<egui::Pos2> = points.into_iter().collect();
    let rect = Rect::from_points(&points).intersect(stage.space.area);
    if !rect.is_positive() {
        return;
    }
    // It takes no clicks from the drawing, whose hit test knows what is on top; but it can be focused.
    let id = id(what);
    let response = ui.interact(rect, id, Sense::focusable_noninteractive());
    response.widget_info(|| WidgetInfo::selected(Role::ListItem, true, what == held, words()));
    if response.has_focus() {
        ui.painter().add(Shape::closed_line(points, theme::focus(theme::of(ui))));
    }
    let pressed = response.has_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    let asked = ui.input(|input| input.has_accesskit_action_request(id, accesskit::Action::Click));
    if pressed || asked {
        actions.push(Action::Select(what));
        stage.response.request_focus();
    }
}
