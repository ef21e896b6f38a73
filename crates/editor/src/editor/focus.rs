//! Keyboard focus: the focus ring, and walking menus by keys.

use super::Editor;
use crate::panels::FIRST_MENU;
use crate::theme;
use crate::widgets::LEAST;
use egui::{Context, Event, FocusDirection, Id, Key, Modifiers, Popup, Rect, StrokeKind};

/// Draggable borders are at most this thick, in points; everything else clickable is thicker.
const BORDER: f32 = 12.0;

impl Editor {
    /// Draws a ring around the focused widget, if keys moved the focus there: the same for all widgets, over their own
    /// painting.
    pub(super) fn ring_focus(&mut self, ctx: &Context) {
        let walks = |event: &Event| matches!(event, Event::Key { key: Key::Tab, pressed: true, .. });
        ctx.input(|input| {
            self.by_keys |= input.events.iter().any(walks);
            self.by_keys &= !input.pointer.any_pressed();
        });
        self.pass_borders(ctx);
        let focused = ctx.memory(egui::Memory::focused).filter(|_| self.by_keys);
        let Some(response) = focused.and_then(|id| ctx.read_response(id)) else { return };
        let palette = theme::palette(ctx.theme() == egui::Theme::Dark);
        // Around a pipe on the drawing it would be a dot.
        let ring =
            Rect::from_center_size(response.rect.center(), response.rect.size().max(LEAST)).expand(1.0);
        let clip = response.interact_rect.expand(theme::FOCUS);
        let clip = if response.rect.size().min_elem() < LEAST.x { ring.expand(1.0) } else { clip };
        let painter = ctx.layer_painter(response.layer_id).with_clip_rect(clip);
        painter.rect_stroke(ring, 6.0, theme::focus(palette), StrokeKind::Inside);
    }

    /// Skips borders that only a pointer can move: the focus continues in the same direction.
    fn pass_borders(&mut self, ctx: &Context) {
        let tab = |event: &Event| match event {
            Event::Key { key: Key::Tab, pressed: true, modifiers, .. } => Some(modifiers.shift),
            _ => None,
        };
        if let Some(back) = ctx.input(|input| input.events.iter().rev().find_map(tab)) {
            self.tab_way = Some(if back { FocusDirection::Previous } else { FocusDirection::Next });
        }
        let focused = ctx.memory(egui::Memory::focused).and_then(|id| ctx.read_response(id));
        let border = focused.is_some_and(|it| it.sense.senses_drag() && it.rect.size().min_elem() <= BORDER);
        self.passing = self.tab_way.filter(|_| border && self.by_keys);
        if self.passing.is_some() {
            ctx.request_repaint();
        }
    }

    /// Continues a focus move that skips borders, before anything of the frame is drawn.
    pub(super) fn go_on_passing(&mut self, ctx: &Context) {
        if let Some(way) = self.passing.take() {
            ctx.memory_mut(|memory| memory.move_focus(way));
        }
    }

    /// Moves the focus to the first menu. A field being edited keeps its text.
    pub(super) fn go_to_menus(&mut self, ctx: &Context) {
        let first: Option<Id> = ctx.data(|data| data.get_temp(Id::unique(FIRST_MENU)));
        if let Some(first) = first {
            self.by_keys = true;
            ctx.memory_mut(|memory| memory.request_focus(first));
        }
    }

    /// Up and Down walk the entries of an open menu or list: the toolkit's spatial navigation might go to what is under
    /// it.
    pub(super) fn walk_menu(&self, ctx: &Context) {
        let has_focus = ctx.memory(|memory| memory.focused().is_some());
        if !has_focus || !Popup::is_any_open(ctx) || ctx.text_edit_focused() {
            return;
        }
        for (key, way) in [(Key::ArrowDown, FocusDirection::Next), (Key::ArrowUp, FocusDirection::Previous)] {
            if ctx.input_mut(|input| input.consume_key(Modifiers::NONE, key)) {
                ctx.memory_mut(|memory| memory.move_focus(way));
            }
        }
    }
}
