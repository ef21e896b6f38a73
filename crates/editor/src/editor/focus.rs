//! The ring around what has the keyboard.

use super::Editor;
use crate::theme;
use crate::widgets::LEAST;
use egui::{Context, Event, Key, Rect, StrokeKind};

impl Editor {
    /// Draws a ring around whatever has the keyboard, once keys brought it there: each widget of the window has the same one, over
    /// whatever it paints of itself.
    pub(super) fn ring_focus(&mut self, ctx: &Context) {
        let walks = |event: &Event| matches!(event, Event::Key { key: Key::Tab, pressed: true, .. });
        ctx.input(|input| {
            self.by_keys |= input.events.iter().any(walks);
            self.by_keys &= !input.pointer.any_pressed();
        });
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
}
