//! Drawing the panes: tabs, splits, separate windows.

use super::Editor;
use crate::action::Actions;
use crate::commands;
use crate::state::panes::holds_drawing_alone;
use crate::state::{Change, DRAWING, HOUSE, OwnWindow, Pane};
use crate::widgets::{scroll_by_keys, sign_button, tree};
use crate::{solid_view, text, theme, windows};
use egui::{
    CentralPanel, Color32, Frame, Id, IdSalt, Margin, Order, Painter, PointerButton, Pos2, Rect, Response,
    Role, Sense, Stroke, Style, Ui, Vec2, ViewportBuilder, ViewportClass, ViewportId, Visuals, WidgetInfo,
    WidgetText,
};
use egui_tiles::{
    Behavior, EditAction, SimplificationOptions, TabState, Tabs, Tile, TileId, Tiles, Tree, UiResponse,
};

impl Editor {
    /// Draws all panes, docked ones and those in separate windows.
    pub(super) fn panes(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        let room = ui.available_size();
        let mut tree = self.state.desk.lift();
        let bare = holds_drawing_alone(&tree);
        let out = dragged_out(&ctx, &tree);
        let before = out.is_some().then(|| tree.clone());
        let out_of = out.map(|(pane, _)| pane);
        let mut desk = DeskView { editor: self, bare, out: out_of, drawn: Vec::new(), asked: Vec::new() };
        tree.ui(&mut desk, ui);
        let (mut drawn, mut asked) = (desk.drawn, desk.asked);
        if let Some(root) = tree.root() {
            name_borders(&ctx, &tree, root, ui.scope_id());
        }
        if let (Some((pane, at)), Some(before)) = (out, before)
            && ctx.input(|input| input.pointer.any_released())
        {
            // It was dropped outside of the window, and not at the nearest place inside.
            tree = before;
            asked.push(Change::OwnWindowAt(pane, at));
        }
        self.keys_follow_pointer(ui, &drawn);
        for change in asked {
            self.state.desk.change(change);
        }
        let before = self.state.desk.keys();
        self.state.desk.put_back(tree, room);
        for window in self.state.desk.own_windows() {
            // It was undocked in this frame and has already been drawn there.
            if drawn.iter().any(|(shown, _)| *shown == window.pane) {
                continue;
            }
            self.own_window(ui, window);
            drawn.push((window.pane, Rect::NOTHING));
        }
        self.forget_unseen(&drawn);
        if self.state.desk.took_keys() || before != self.state.desk.keys() {
            self.focus_pane(&ctx);
        }
    }

    /// The content of a pane.
    fn pane(&mut self, ui: &mut Ui, pane: Pane) {
        let keys = self.state.desk.keys() == pane;
        match pane {
            Pane::Drawing => {
                self.drawing(ui);
                return;
            }
            Pane::House => {
                let mut actions = Actions::new();
                let keys = keys && !self.is_asking();
                solid_view::solid_view(ui, &self.document, &self.state, &mut self.solid, keys, &mut actions);
                self.carry_out(&ui.ctx().clone(), actions);
                return;
            }
            _ => {}
        }
        let p = theme::of(ui);
        let frame =
            Frame::new().fill(p.panel).inner_margin(Margin { left: 12, right: 10, top: 6, bottom: 4 });
        frame.show(ui, |ui| {
            let rect = ui.max_rect();
            let node = ui.interact(rect, node(pane), Sense::focusable_noninteractive());
            node.widget_info(|| WidgetInfo::labeled(Role::Pane, true, text::pane_title(pane)));
            ui.set_clip_rect(ui.clip_rect().intersect(rect.expand(4.0)));
            if pane != Pane::Order {
                scroll_by_keys(ui, node.id);
            }
            let mut actions = Actions::new();
            windows::pane(ui, pane, &self.document, &self.state, &mut self.windows, &mut actions);
            self.carry_out(&ui.ctx().clone(), actions);
            ui.take_available_space();
        });
    }

    /// A separate system window for a pane; an embedded window if the system does not support that.
    fn own_window(&mut self, ui: &Ui, OwnWindow { pane, size, at }: OwnWindow) {
        let ctx = ui.ctx().clone();
        let title = text::own_window_title(pane, &self.document.job().name);
        let mut builder = ViewportBuilder::default()
            .with_title(&title)
            .with_app_id("chalkcourse")
            .with_inner_size(size)
            .with_min_inner_size([320.0, 240.0]);
        if let Some(at) = at {
            builder = builder.with_position(at);
        }
        ctx.show_viewport_immediate(ViewportId::from_hash_of(("pane", pane)), builder, |ui, class| {
            let ctx = ui.ctx().clone();
            name_window(&ctx, &title);
            // Its keys trigger commands too, unless a dialog is open in the main window.
            if !self.is_asking() {
                let asked = commands::pressed(&ctx, false).into_iter().collect();
                self.carry_out(&ctx, asked);
            }
            let (closed, inner, outer, pressed) = ui.input(|input| {
                let viewport = input.viewport();
                let rects = (viewport.inner_rect, viewport.outer_rect);
                (viewport.close_requested(), rects.0, rects.1, input.pointer.any_pressed())
            });
            if pressed {
                self.state.desk.change(Change::Keys(pane));
            }
            if let Some(inner) = inner.filter(|_| class == ViewportClass::Immediate) {
                self.state.desk.keep_window(pane, inner.size(), outer.map(|outer| outer.min));
            }
            let p = theme::of(ui);
            let bar = Frame::new().fill(p.ground).inner_margin(Margin::symmetric(10, 3));
            egui::Panel::top(Id::unique(("own window", pane))).frame(bar).show(ui, |ui| {
                let help = text::BESIDE_DRAWING_HELP.now();
                if ui.button(text::BESIDE_DRAWING.now()).on_hover_text(help).clicked() {
                    self.state.desk.change(Change::OwnWindow(pane));
                }
            });
            CentralPanel::no_frame().show(ui, |ui| self.pane(ui, pane));
            if closed {
                self.state.desk.change(Change::Close(pane));
            }
            // Changes made here are visible in the main window too.
            if ui.input(|input| !input.events.is_empty()) {
                ctx.request_repaint_of(ViewportId::ROOT);
            }
        });
    }

    /// The pane that was clicked gets the keyboard; a popup of a pane counts as part of it.
    fn keys_follow_pointer(&mut self, ui: &Ui, drawn: &[(Pane, Rect)]) {
        let pressed = ui.input(|input| input.pointer.press_origin().filter(|_| input.pointer.any_pressed()));
        let Some(at) = pressed else { return };
        if ui.ctx().layer_id_at(at).is_none_or(|layer| layer.order != Order::Background) {
            return;
        }
        let in_pane = drawn.iter().find(|(_, rect)| rect.contains(at));
        let pane = in_pane.map_or(Pane::Drawing, |(pane, _)| *pane);
        if pane != self.state.desk.keys() {
            self.state.desk.change(Change::Keys(pane));
        }
    }

    /// Esc in a pane returns the keyboard to the drawing; a text field being edited or a menu takes precedence.
    pub(super) fn esc_leaves_pane(&mut self, ctx: &egui::Context) {
        let keys = self.state.desk.keys();
        let typing = self.focused.is_some_and(|focused| focused != node(keys));
        if keys == Pane::Drawing || typing || egui::Popup::is_any_open(ctx) {
            return;
        }
        if ctx.input_mut(|input| input.consume_key(egui::Modifiers::NONE, egui::Key::Escape)) {
            self.state.desk.change(Change::Keys(Pane::Drawing));
            self.focus_pane(ctx);
        }
    }

    /// Moves the focus to the pane that has the keyboard, so that Tab and screen readers continue from there.
    fn focus_pane(&mut self, ctx: &egui::Context) {
        self.state.desk.took_keys();
        let pane = self.state.desk.keys();
        let already = ctx.memory(|memory| memory.focused()).is_some();
        let pointer = ctx.input(|input| input.pointer.any_down() || input.pointer.any_released());
        // A click has already focused the clicked widget.
        if !(already && pointer) {
            ctx.memory_mut(|memory| memory.request_focus(node(pane)));
        }
        ctx.request_repaint();
    }

    /// A highlighted row in a pane that is now covered no longer highlights anything.
    fn forget_unseen(&mut self, drawn: &[(Pane, Rect)]) {
        let unseen = |pane: Pane| !drawn.iter().any(|(shown, _)| *shown == pane);
        if unseen(Pane::Order) {
            self.windows.order.look_away();
        }
        if unseen(Pane::RoofReport) {
            self.windows.roof.pointed = None;
        }
    }
}

/// Sets the accessible name of a system window.
pub(super) fn name_window(ctx: &egui::Context, title: &str) {
    ctx.accesskit_node_builder(egui::accesskit_root_id(), |node| node.set_label(title));
}

/// The pane whose tab was dragged out of the window, and where the corner of its own window would be on the screen,
/// points.
fn dragged_out(ctx: &egui::Context, tree: &Tree<Pane>) -> Option<(Pane, Pos2)> {
    let pane = tree.tiles.get_pane(&tree.dragged_id(ctx)?).copied().filter(|pane| *pane != Pane::Drawing)?;
    // Use the drop position too: a pointer that has left the window has no other position.
    let (pointer, inner) = ctx.input(|input| (input.pointer.interact_pos(), input.viewport().inner_rect));
    let pointer = pointer.filter(|at| !ctx.content_rect().contains(*at))?;
    // Its title bar is under the pointer.
    let corner = inner.map_or(Pos2::ZERO, |inner| inner.min) + pointer.to_vec2() - Vec2::new(60.0, 12.0);
    Some((pane, corner.max(Pos2::ZERO)))
}

/// Gives the borders between panes accessible names.
fn name_borders(ctx: &egui::Context, panes: &Tree<Pane>, tile: TileId, around: Id) {
    let Some(Tile::Container(container)) = panes.tiles.get(tile) else { return };
    // The toolkit's id scheme: one for the tile, and one for its child ui.
    let own = around.with(tile).with(IdSalt::new("child"));
    for (nth, child) in container.children().enumerate() {
        let border = own.with((tile, "resize", nth));
        tree::name_border(ctx, border, || text::BORDER_OF_PANES.now().to_owned());
        name_borders(ctx, panes, *child, own);
    }
}

/// What has the focus when a pane as a whole has the keyboard.
fn node(pane: Pane) -> Id {
    match pane {
        Pane::Drawing => Id::unique(DRAWING),
        Pane::House => Id::unique(HOUSE),
        pane => windows::node(pane),
    }
}

/// Draws tabs and splits in the style of the window, and the panes.
struct DeskView<'a> {
    editor: &'a mut Editor,
    /// The container without a tab bar.
    bare: Option<TileId>,
    /// The pane whose tab is dragged outside of the window.
    out: Option<Pane>,
    /// Where panes were drawn.
    drawn: Vec<(Pane, Rect)>,
    asked: Vec<Change>,
}

impl DeskView<'_> {
    /// The pane of a tile, if it is one.
    fn pane_of(tiles: &Tiles<Pane>, tile: TileId) -> Option<Pane> {
        tiles.get_pane(&tile).copied()
    }
}

impl Behavior<Pane> for DeskView<'_> {
    fn pane_ui(&mut self, ui: &mut Ui, _: TileId, pane: &mut Pane) -> UiResponse {
        self.drawn.push((*pane, ui.max_rect()));
        self.editor.pane(ui, *pane);
        UiResponse::None
    }

    fn tab_title_for_pane(&mut self, pane: &Pane) -> WidgetText {
        text::pane_title(*pane).into()
    }

    fn on_tab_button(&mut self, tiles: &mut Tiles<Pane>, tile: TileId, response: Response) -> Response {
        let Some(pane) = Self::pane_of(tiles, tile) else { return response };
        response.ctx.accesskit_node_builder(response.id, |node| node.set_role(Role::Tab));
        if response.clicked() {
            self.asked.push(Change::Keys(pane));
        }
        if response.clicked_by(PointerButton::Middle) {
            self.asked.push(Change::Close(pane));
        }
        let help = if pane == Pane::House { text::HOUSE_HINT } else { text::DRAG_TAB };
        response.on_hover_text(help.now())
    }

    fn top_bar_right_ui(&mut self, tiles: &Tiles<Pane>, ui: &mut Ui, _: TileId, tabs: &Tabs, _: &mut f32) {
        let front = tabs.active.and_then(|tile| Self::pane_of(tiles, tile));
        let Some(pane) = front.filter(|pane| *pane != Pane::Drawing) else { return };
        ui.spacing_mut().item_spacing.x = theme::GAP;
        ui.add_space(theme::GAP);
        let close = text::close_pane(pane);
        if sign_button(ui, &close, |painter, rect, stroke| {
            painter.line_segment([rect.left_top(), rect.right_bottom()], stroke);
            painter.line_segment([rect.right_top(), rect.left_bottom()], stroke);
        }) {
            self.asked.push(Change::Close(pane));
        }
        let own = text::in_own_window(pane);
        if sign_button(ui, &own, |painter, rect, stroke| {
            let back = Rect::from_min_max(rect.min, rect.max - Vec2::splat(3.0));
            let front = Rect::from_min_max(rect.min + Vec2::splat(3.0), rect.max);
            painter.rect_stroke(back, 1.0, stroke, egui::StrokeKind::Inside);
            painter.rect_filled(front, 1.0, stroke.color);
        }) {
            self.asked.push(Change::OwnWindow(pane));
        }
    }

    /// Only single tabs can be dragged. The drag handle of a whole tab group has no accessible name and no keyboard
    /// use.
    fn is_tile_draggable(&self, tiles: &Tiles<Pane>, tile: TileId) -> bool {
        Self::pane_of(tiles, tile).is_some()
    }

    fn is_tab_bar_visible(&self, tile: TileId, _: &Tabs) -> bool {
        self.bare != Some(tile)
    }

    fn tab_bar_height(&self, style: &Style) -> f32 {
        style.spacing.interact_size.y.max(26.0)
    }

    fn gap_width(&self, _: &Style) -> f32 {
        5.0
    }

    fn min_size(&self) -> f32 {
        120.0
    }

    fn cycle_tabs_with_keyboard(&self) -> bool {
        // F6 cycles through all panes, wherever the pointer is.
        false
    }

    fn simplification_options(&self) -> SimplificationOptions {
        SimplificationOptions {
            all_panes_must_have_tabs: true,
            join_nested_linear_containers: false,
            ..SimplificationOptions::default()
        }
    }

    fn on_edit(&mut self, action: EditAction) {
        if action == EditAction::TileResized {
            self.asked.push(Change::KeepWidths);
        }
    }

    fn tab_bar_color(&self, visuals: &Visuals) -> Color32 {
        theme::palette(visuals.dark_mode).ground
    }

    fn tab_bg_color(&self, visuals: &Visuals, _: &Tiles<Pane>, _: TileId, state: &TabState) -> Color32 {
        let p = theme::palette(visuals.dark_mode);
        if state.active { p.panel } else { p.ground }
    }

    fn tab_outline_stroke(&self, _: &Visuals, _: &Tiles<Pane>, _: TileId, _: &TabState) -> Stroke {
        Stroke::NONE
    }

    fn tab_bar_hline_stroke(&self, _: &Visuals) -> Stroke {
        Stroke::NONE
    }

    fn tab_text_color(&self, visuals: &Visuals, _: &Tiles<Pane>, _: TileId, state: &TabState) -> Color32 {
        let p = theme::palette(visuals.dark_mode);
        if state.active { p.text } else { p.quiet }
    }

    fn resize_stroke(&self, style: &Style, state: egui_tiles::ResizeState) -> Stroke {
        let p = theme::palette(style.visuals.dark_mode);
        match state {
            egui_tiles::ResizeState::Idle => Stroke::new(self.gap_width(style), p.rule),
            _ => Stroke::new(self.gap_width(style), p.accent),
        }
    }

    fn drag_preview_stroke(&self, visuals: &Visuals) -> Stroke {
        if self.out.is_some() {
            return Stroke::NONE;
        }
        Stroke::new(2.0, theme::palette(visuals.dark_mode).accent)
    }

    fn drag_preview_color(&self, visuals: &Visuals) -> Color32 {
        if self.out.is_some() {
            return Color32::TRANSPARENT;
        }
        theme::faint(theme::palette(visuals.dark_mode).accent, 60)
    }

    /// The pane with the keyboard has a line over its tab.
    fn paint_on_top_of_tile(&self, painter: &Painter, style: &Style, _: TileId, rect: Rect) {
        let keys = self.editor.state.desk.keys();
        let here = self
            .drawn
            .last()
            .is_some_and(|(pane, drawn)| *pane == keys && (drawn.min - rect.min).length() < 2.0);
        if here && self.editor.state.desk.has_others() {
            let p = theme::palette(style.visuals.dark_mode);
            painter.hline(rect.x_range(), rect.top() + 1.0, Stroke::new(2.0, p.accent));
        }
    }
}
