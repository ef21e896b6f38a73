use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::cross::Aimed;
use crate::canvas::gesture::{Drag, Gesture};
use crate::canvas::hit::{Hit, module_at};
use crate::commands::Command;
use crate::edits::wiring::{begun_at, circuit_of, gone_on, pressed};
use crate::state::State;
use crate::{Document, Selection, edits, text};
use chalkcourse_job::{Circuit, Edit, ModuleAt};
use egui::{Button, CursorIcon, Key, Label, Modifiers, Pos2, Shape, Stroke, Ui};

/// How far apart, in points, places on the way of the pointer are looked at, so that a quick drag leaves no module out.
const STEP: f32 = 5.0;

/// Joins modules to circuits: dragged over one after the other, or pressed one by one.
#[derive(Debug, Default)]
pub(super) struct StringModules {
    /// The circuit that is being dragged.
    draft: Option<Circuit>,
    /// Where the pointer was on the screen in the frame before.
    last: Option<Pos2>,
    /// The module that a press would take.
    over: Option<ModuleAt>,
}

impl StringModules {
    /// Goes on to where the pointer is, past all modules on its way.
    fn go_on(&mut self, at: &Frame, actions: &mut Actions) {
        let (Some(circuit), Some(to)) = (&mut self.draft, at.stage.response.interact_pointer_pos()) else {
            return;
        };
        let from = self.last.replace(to).unwrap_or(to);
        let steps = ((to - from).length() / STEP).ceil().clamp(1.0, 400.0) as u32;
        let layout = &at.document.plan().layout;
        let was = circuit.modules.len();
        for step in 1..=steps {
            let pos = from + (to - from) * (step as f32 / steps as f32);
            if let Some(module) = module_at(&at.stage.space, layout, at.stage.space.plan(pos)) {
                gone_on(circuit, module);
            }
        }
        if circuit.modules.len() != was {
            actions.push(Action::Preview(text::string_of(&circuit.name), Edit::PutCircuit(circuit.clone())));
        }
    }

    fn press(at: &Frame, plan: chalkcourse_geometry::DVec2, actions: &mut Actions) {
        match module_at(&at.stage.space, &at.document.plan().layout, plan) {
            Some(module) => actions.push(pressed(at.document.job(), at.state.selection, module)),
            None => actions.push(Action::Select(Selection::Nothing)),
        }
    }
}

impl Tool for StringModules {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, actions: &mut Actions) {
        let (layout, space) = (&at.document.plan().layout, &at.stage.space);
        self.over = at
            .stage
            .pointer
            .filter(|_| at.stage.response.hovered() || at.stage.by_keys)
            .and_then(|plan| module_at(space, layout, plan));
        if let Some(origin) = at.drag_from()
            && let Some(module) = module_at(space, layout, space.plan(origin))
        {
            let circuit = begun_at(at.document.job(), module);
            // One that goes on from its first end is turned about only once it does.
            if circuit.modules.len() == 1 {
                let label = text::string_of(&circuit.name);
                actions.push(Action::Preview(label, Edit::PutCircuit(circuit.clone())));
            }
            actions.push(Action::Select(Selection::Circuit(circuit.id)));
            drag.gesture = Some(Gesture::String);
            (self.draft, self.last) = (Some(circuit), Some(origin));
        }
        if matches!(drag.gesture, Some(Gesture::String)) {
            self.go_on(at, actions);
        } else {
            (self.draft, self.last) = (None, None);
        }
        if let Some(plan) = at.stage.pointer.filter(|_| at.stage.response.clicked()) {
            Self::press(at, plan, actions);
        }
    }

    fn aimed(&self) -> Option<Aimed> {
        Some(Aimed::default())
    }

    fn keys(&mut self, at: &Frame, actions: &mut Actions) {
        if at.ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)) {
            Self::press(at, at.stage.pointer.unwrap_or_else(|| at.middle()), actions);
        }
    }

    fn cursor(&self, over: Hit) -> CursorIcon {
        if matches!(over, Hit::Module { .. }) { CursorIcon::Crosshair } else { CursorIcon::Default }
    }

    fn bar(&mut self, _: u8, ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
        let command = Command::StringAutomatically;
        if ui.button(command.title()).on_hover_text(command.tip(ui.ctx())).clicked() {
            actions.push(command.action());
        }
        let held = match state.selection {
            Selection::Circuit(id) => document.plan().wires.circuit(id),
            _ => None,
        };
        let Some(held) = held else { return };
        ui.separator();
        if ui.button(text::BEST_ORDER.now()).on_hover_text(text::BEST_ORDER_HELP.now()).clicked() {
            actions.extend(edits::wiring::best_order(document, held.id));
        }
        if ui.add(Button::new(text::NEW_CIRCUIT.now())).on_hover_text(text::NEW_CIRCUIT_HELP.now()).clicked()
        {
            actions.push(Action::Select(Selection::Nothing));
        }
        ui.separator();
        let live = text::circuit_live(held, document.plan().wires.window.as_ref());
        ui.add(Label::new(live).truncate());
    }

    fn let_go(&mut self) {
        *self = Self::default();
    }

    fn paint(&self, brush: &Brush, document: &Document, _: &State) {
        let Some(module) = self.over.filter(|_| self.draft.is_none()) else { return };
        let layout = &document.plan().layout;
        let Some(placed) = layout.blocks.iter().find(|block| block.id == module.block) else { return };
        let rect = placed.modules.iter().find(|it| it.cell == module.cell).map(|it| it.rect);
        let (Some(rect), Some(face)) = (rect, layout.roof.faces.get(placed.face)) else { return };
        let corners = rect.corners().map(|corner| brush.space.screen_from_frame(&face.plane, corner));
        let free = circuit_of(document.job(), module).is_none();
        let stroke = Stroke::new(if free { 2.4 } else { 1.2 }, brush.palette.accent);
        brush.painter.add(Shape::closed_line(corners.to_vec(), stroke));
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        match document.job().kit.wiring {
            Some(_) => text::STRING_HINT.now(),
            None => text::KIT_WITHOUT_WIRING.now(),
        }
    }
}
