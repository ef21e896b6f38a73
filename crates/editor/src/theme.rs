//! Colours, fonts and spacing: the whole look in one place.
//!
//! The palette is chalk on slate and ink on paper. Kinds are primarily told apart by line style and a written word;
//! hues are on the blue–orange axis, which is distinguishable with the common kinds of colour blindness. The tests
//! below check that every pair of text and background has a contrast of at least 4.5 : 1 (WCAG 2.2, success criterion
//! 1.4.3), and lines that carry meaning 3 : 1 (1.4.11).

use chalkcourse_geometry::EdgeKind;
use chalkcourse_rules::Severity;
use egui::{
    Color32, CornerRadius, FontDefinitions, FontFamily, FontId, Margin, Stroke, Style, TextStyle, Theme,
    Vec2, Visuals,
};

/// Gap between related items, in points; other gaps are multiples of it.
pub(crate) const GAP: f32 = 4.0;
/// Least height of clickable items.
pub(crate) const PRESS: f32 = 28.0;
/// Radius of a handle on the drawing.
pub(crate) const HANDLE: f32 = 5.0;
/// Distance, in points, within which the pointer grabs a handle, corner or side.
pub(crate) const GRAB: f32 = 9.0;

/// Font sizes, in points.
pub(crate) mod size {
    pub(crate) const SMALL: f32 = 12.0;
    pub(crate) const BODY: f32 = 14.0;
    pub(crate) const HEADING: f32 = 17.0;
    pub(crate) const TITLE: f32 = 24.0;
}

/// Every colour of the window and the drawing.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Palette {
    /// Background of the drawing.
    pub(crate) ground: Color32,
    /// Background of panels.
    pub(crate) panel: Color32,
    /// Fields and cards on a panel.
    pub(crate) field: Color32,
    /// Buttons at rest.
    pub(crate) button: Color32,
    /// Buttons under the pointer.
    pub(crate) button_hover: Color32,
    /// Separators.
    pub(crate) rule: Color32,
    /// Borders of fields and buttons.
    pub(crate) border: Color32,
    /// Text.
    pub(crate) text: Color32,
    /// Secondary text.
    pub(crate) quiet: Color32,
    /// Selected or active items.
    pub(crate) accent: Color32,
    /// Background of selected items; text on it is `text`.
    pub(crate) accent_ground: Color32,
    /// Violations that stop the job.
    pub(crate) stop: Color32,
    /// Cautions.
    pub(crate) caution: Color32,
    /// Notes, and what is in order.
    pub(crate) note: Color32,
    /// The deck.
    pub(crate) face: Color32,
    /// The deck of the selected face.
    pub(crate) face_held: Color32,
    /// Roof lines.
    pub(crate) line: Color32,
    /// Setback outlines and clearances.
    pub(crate) zone: Color32,
    /// Course lines.
    pub(crate) course: Color32,
    /// Module glass.
    pub(crate) module: Color32,
    /// Frames and cell lines of modules.
    pub(crate) module_line: Color32,
    /// Hatching of modules with a stop.
    pub(crate) module_stop: Color32,
    /// Hatching of modules with a caution.
    pub(crate) module_caution: Color32,
    /// Penetrations.
    pub(crate) penetration: Color32,
    /// Snap guides.
    pub(crate) guide: Color32,
    /// Circuits, over modules.
    pub(crate) wire: Color32,
    /// Bare copper.
    pub(crate) copper: Color32,
    /// What the list row under the pointer refers to.
    pub(crate) light: Color32,
}

const fn rgb(hex: u32) -> Color32 {
    Color32::from_rgb((hex >> 16) as u8, (hex >> 8) as u8, hex as u8)
}

const DARK: Palette = Palette {
    ground: rgb(0x0014_181d),
    panel: rgb(0x001c_2229),
    field: rgb(0x0012_161b),
    button: rgb(0x002b_343e),
    button_hover: rgb(0x0038_444f),
    rule: rgb(0x003a_4550),
    border: rgb(0x007c_8894),
    text: rgb(0x00ec_e9e1),
    quiet: rgb(0x00ae_b6be),
    accent: rgb(0x0079_b8f2),
    accent_ground: rgb(0x0020_4566),
    stop: rgb(0x00ff_8f6b),
    caution: rgb(0x00f0_c35a),
    note: rgb(0x0084_c4e8),
    face: rgb(0x002a_2f35),
    face_held: rgb(0x0033_3c46),
    line: rgb(0x00d9_d5ca),
    zone: rgb(0x00a8_a08c),
    course: rgb(0x0046_4d55),
    module: rgb(0x001b_3a5c),
    module_line: rgb(0x0074_9cc4),
    module_stop: rgb(0x00ff_8f6b),
    module_caution: rgb(0x00f0_c35a),
    penetration: rgb(0x006b_6254),
    guide: rgb(0x00f2_b7e0),
    wire: rgb(0x00f4_e3b8),
    copper: rgb(0x00e6_9a62),
    light: rgb(0x00ff_e08a),
};

const LIGHT: Palette = Palette {
    ground: rgb(0x00f2_efe8),
    panel: rgb(0x00fb_faf6),
    field: rgb(0x00ff_ffff),
    button: rgb(0x00e9_e5db),
    button_hover: rgb(0x00dc_d7ca),
    rule: rgb(0x00c9_c3b5),
    border: rgb(0x0080_7a6c),
    text: rgb(0x001f_252b),
    quiet: rgb(0x0056_5d64),
    accent: rgb(0x0012_5a9c),
    accent_ground: rgb(0x00cf_e2f4),
    stop: rgb(0x00a8_2f0c),
    caution: rgb(0x007a_5200),
    note: rgb(0x0015_5f8a),
    face: rgb(0x00df_dacd),
    face_held: rgb(0x00e9_e7e0),
    line: rgb(0x0033_3a40),
    zone: rgb(0x007d_735c),
    course: rgb(0x00c2_bba9),
    module: rgb(0x0033_557c),
    module_line: rgb(0x00b9_cde2),
    module_stop: rgb(0x00ff_a486),
    module_caution: rgb(0x00ff_d37a),
    penetration: rgb(0x00a8_9d88),
    guide: rgb(0x0097_1f78),
    wire: rgb(0x00ff_f0cc),
    copper: rgb(0x00f0_a46c),
    light: rgb(0x00c4_5f00),
};

/// The colours of a theme.
pub(crate) fn palette(dark: bool) -> &'static Palette {
    if dark { &DARK } else { &LIGHT }
}

/// The colours of the theme of a `Ui`.
pub(crate) fn of(ui: &egui::Ui) -> &'static Palette {
    palette(ui.visuals().dark_mode)
}

/// The clear colour of the window, which is the background of the drawing: painting that over another colour would take
/// a fifth of the frame time without a graphics card.
pub fn ground(visuals: &egui::Visuals) -> Color32 {
    palette(visuals.dark_mode).ground
}

/// The same colour with an opacity: 0 is transparent, 255 is opaque.
pub(crate) fn faint(color: Color32, alpha: u8) -> Color32 {
    Color32::from_rgba_unmultiplied(color.r(), color.g(), color.b(), alpha)
}

/// The colour of a severity. Its word and sign are always shown with it.
pub(crate) fn severity(palette: &Palette, severity: Severity) -> Color32 {
    match severity {
        Severity::Stop => palette.stop,
        Severity::Caution => palette.caution,
        Severity::Note => palette.note,
    }
}

/// Width of the focus ring, in points (WCAG 2.2, 2.4.13: at least 2; from memory).
pub(crate) const FOCUS: f32 = 2.0;

/// The focus ring.
pub(crate) fn focus(p: &Palette) -> Stroke {
    Stroke::new(FOCUS, p.accent)
}

/// The line style of a kind of edge: width, then dashes and gaps in points; no dashes for a solid line.
pub(crate) fn edge_style(kind: EdgeKind) -> (f32, &'static [f32], &'static [f32]) {
    chalkcourse_sheets::edge_line(kind)
}

/// The font for titles and numbers.
pub(crate) fn font(size: f32) -> FontId {
    FontId::proportional(size)
}

/// Sets the fonts, colours and spacing of a window.
pub(crate) fn install(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
    // Text sizes are commands, so that they have menu items and keys.
    ctx.options_mut(|options| options.zoom_with_keyboard = false);
    ctx.set_style_of(Theme::Dark, style(true));
    ctx.set_style_of(Theme::Light, style(false));
}

/// Larger click targets once touch input was seen: a height of 40 points plus spacing, where WCAG 2.2 (2.5.8) requires
/// 24.
pub(crate) fn for_fingers(ctx: &egui::Context) {
    for theme in [Theme::Dark, Theme::Light] {
        ctx.style_mut_of(theme, |style| {
            style.spacing.interact_size.y = 38.0;
            style.spacing.button_padding = Vec2::new(GAP * 3.0, GAP * 2.0);
            style.spacing.scroll.bar_width = 16.0;
        });
    }
}

/// The built-in fonts, with Hack as fallback for the arrows and signs that the text font lacks.
fn fonts() -> FontDefinitions {
    let mut fonts = FontDefinitions::default();
    let behind: Vec<String> = fonts.families.get(&FontFamily::Monospace).cloned().unwrap_or_default();
    let text = fonts.families.entry(FontFamily::Proportional).or_default();
    for name in behind {
        if !text.contains(&name) {
            text.push(name);
        }
    }
    fonts
}

fn style(dark: bool) -> Style {
    let p = palette(dark);
    let text_styles = [
        (TextStyle::Small, font(size::SMALL)),
        (TextStyle::Body, font(size::BODY)),
        (TextStyle::Button, font(size::BODY)),
        (TextStyle::Monospace, FontId::monospace(size::BODY - 1.0)),
        (TextStyle::Heading, font(size::HEADING)),
    ]
    .into();
    // No animations, so that nothing is drawn while nothing happens.
    let mut style = Style { text_styles, visuals: visuals(dark, p), animation_time: 0.0, ..Style::default() };
    style.spacing.item_spacing = Vec2::new(GAP * 1.5, GAP * 1.5);
    style.spacing.button_padding = Vec2::new(GAP * 2.0, GAP);
    style.spacing.interact_size = Vec2::new(32.0, PRESS - 2.0);
    style.spacing.menu_margin = Margin::same(6);
    style.spacing.window_margin = Margin::same(16);
    style.spacing.scroll.floating = false;
    style.spacing.scroll.bar_width = 8.0;
    style.spacing.scroll.foreground_color = false;
    style.spacing.tooltip_width = 340.0;
    style
}

fn visuals(dark: bool, p: &Palette) -> Visuals {
    let mut v = if dark { Visuals::dark() } else { Visuals::light() };
    v.panel_fill = p.panel;
    v.window_fill = p.panel;
    v.window_stroke = Stroke::new(1.0, p.rule);
    v.extreme_bg_color = p.field;
    v.text_edit_bg_color = Some(p.field);
    v.faint_bg_color = faint(p.rule, 40);
    v.code_bg_color = p.field;
    v.hyperlink_color = p.accent;
    v.warn_fg_color = p.caution;
    v.error_fg_color = p.stop;
    v.weak_text_color = Some(p.quiet);
    v.selection.bg_fill = p.accent_ground;
    // The border of a focused text field, and the text of selected items.
    v.selection.stroke = Stroke::new(FOCUS, p.text);
    v.striped = false;
    v.window_corner_radius = CornerRadius::same(8);
    v.menu_corner_radius = CornerRadius::same(6);
    v.text_cursor.blink = false;
    v.interact_cursor = Some(egui::CursorIcon::PointingHand);
    let radius = CornerRadius::same(5);
    for (widget, fill, line) in [
        (&mut v.widgets.noninteractive, p.panel, p.rule),
        (&mut v.widgets.inactive, p.button, p.border),
        (&mut v.widgets.hovered, p.button_hover, p.accent),
        (&mut v.widgets.active, p.accent_ground, p.accent),
        (&mut v.widgets.open, p.button_hover, p.border),
    ] {
        widget.bg_fill = fill;
        widget.weak_bg_fill = fill;
        widget.bg_stroke = Stroke::new(1.0, line);
        widget.fg_stroke = Stroke::new(1.2, p.text);
        widget.corner_radius = radius;
        widget.expansion = 0.0;
    }
    // Focused and pressed widgets.
    v.widgets.active.bg_stroke = focus(p);
    v
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance and contrast ratio as defined by WCAG 2.2 (definitions "relative luminance" and "contrast
    /// ratio"; from memory).
    fn contrast(a: Color32, b: Color32) -> f64 {
        let luminance = |c: Color32| {
            let linear = |v: u8| {
                let v = f64::from(v) / 255.0;
                if v <= 0.04045 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) }
            };
            0.2126 * linear(c.r()) + 0.7152 * linear(c.g()) + 0.0722 * linear(c.b())
        };
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn black_on_white_is_21_to_1() {
        assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 1e-9);
    }

    #[test]
    fn text_is_readable_on_every_ground() {
        for p in [&DARK, &LIGHT] {
            for (name, ground) in [
                ("panel", p.panel),
                ("ground", p.ground),
                ("field", p.field),
                ("face", p.face),
                ("face held", p.face_held),
            ] {
                let texts = [
                    ("text", p.text),
                    ("quiet", p.quiet),
                    ("stop", p.stop),
                    ("caution", p.caution),
                    ("note", p.note),
                    ("accent", p.accent),
                    ("guide", p.guide),
                ];
                for (text, color) in texts {
                    let ratio = contrast(color, ground);
                    assert!(ratio >= 4.5, "{text} on {name}: {ratio:.2}");
                }
            }
            for ground in [p.button, p.button_hover, p.accent_ground] {
                assert!(contrast(p.text, ground) >= 4.5);
            }
        }
    }

    #[test]
    fn lines_have_contrast_with_the_deck() {
        for p in [&DARK, &LIGHT] {
            for ground in [p.ground, p.face, p.face_held] {
                for line in [p.line, p.zone, p.light, p.guide] {
                    assert!(
                        contrast(line, ground) >= 3.0,
                        "{line:?} on {ground:?}: {}",
                        contrast(line, ground)
                    );
                }
            }
            for line in [p.module_line, p.module_stop, p.module_caution] {
                assert!(contrast(line, p.module) >= 3.0, "{line:?}");
            }
        }
    }

    /// WCAG 2.2, 1.4.11: boundaries of fields and buttons have a contrast of 3 to 1 to what is beside them, and so does
    /// the focus ring (2.4.13), which has the required width.
    #[test]
    fn buttons_and_the_focus_ring_have_contrast() {
        for (dark, p) in [(true, &DARK), (false, &LIGHT)] {
            let v = visuals(dark, p);
            for (name, ground) in
                [("panel", p.panel), ("field", p.field), ("button", p.button), ("ground", p.ground)]
            {
                let lines = [
                    ("border", v.widgets.inactive.bg_stroke),
                    ("border under the pointer", v.widgets.hovered.bg_stroke),
                    ("border of what is open", v.widgets.open.bg_stroke),
                    ("focus", v.widgets.active.bg_stroke),
                    ("focus of a field", v.selection.stroke),
                ];
                for (line, stroke) in lines {
                    let ratio = contrast(stroke.color, ground);
                    assert!(ratio >= 3.0, "{line} on {name}: {ratio:.2}");
                    assert!(stroke.width >= 1.0, "{line}");
                }
            }
            for ring in [v.widgets.active.bg_stroke, v.selection.stroke, focus(p)] {
                assert!(ring.width >= 2.0);
            }
            // The ring is visible against the widget inside it.
            assert!(contrast(v.widgets.active.bg_stroke.color, v.widgets.active.bg_fill) >= 3.0);
        }
    }

    /// WCAG 2.2, 2.5.8 requires targets of 24 by 24 points.
    #[test]
    fn click_targets_are_large_enough() {
        for dark in [true, false] {
            let spacing = style(dark).spacing;
            assert!(spacing.interact_size.min_elem() >= 24.0);
        }
    }

    #[test]
    fn no_two_edge_kinds_look_the_same() {
        let styles: Vec<_> = EdgeKind::ALL.iter().map(|k| edge_style(*k)).collect();
        for (i, a) in styles.iter().enumerate() {
            assert!(styles[..i].iter().all(|b| a != b));
        }
    }
}
