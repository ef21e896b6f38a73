//! What has the keyboard: the ring around it, and how keys walk menus.

use super::Editor;
use crate::panels::FIRST_MENU;
use crate::theme;
use crate::widgets::LEAST;
use egui::{Context, Event, FocusDirection, Id, Key, Modifiers, Popup, Rect, StrokeKind};

/// A border that is dragged is no thicker, in points; all else that is pressed is.
const BORDER: f32 = 12.0;

impl Editor {
    /// Draws a ring around whatever has the keyboard, once keys brought it there: each widget of the window has the same one, over
    /// whatever it paints of itself.
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

    /// A border that only a pointer can move is no stop for the Tab key: the focus goes on the way that it came.
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

    /// The next step of a focus that passes borders, before anything of the frame is drawn.
    pub(super) fn go_on_passing(&mut self, ctx: &Context) {
        if let Some(way) = self.passing.take() {
            ctx.memory_mut(|memory| memory.move_focus(way));
        }
    }

    /// The keyboard to the first menu. A field that was typed in keeps what was typed.
    pub(super) fn go_to_menus(&mut self, ctx: &Context) {
        let first: Option<Id> = ctx.data(|data| data.get_temp(Id::unique(FIRST_MENU)));
        if let Some(first) = first {
            self.by_keys = true;
            ctx.memory_mut(|memory| memory.request_focus(first));
        }
    }

    /// Up and Down walk an open menu or list from entry to entry: by their places the toolkit would as soon go to what lies under it.
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
