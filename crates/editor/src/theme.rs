//! Colours, type and spacing: the whole look in one place.
//!
//! The palette is chalk on slate and ink on paper. Kinds are told apart by line style and a written word first;
//! hues lie on the blue–orange axis, which the common kinds of colour blindness keep apart. The tests below hold
//! every pair of text and ground to a contrast of at least 4.5 : 1 (WCAG 2.2, success criterion 1.4.3), and lines
//! that carry meaning to 3 : 1 (1.4.11).

use chalkcourse_geometry::EdgeKind;
use chalkcourse_rules::Severity;
use egui::{
    Color32, CornerRadius, FontDefinitions, FontFamily, FontId, Margin, Stroke, Style, TextStyle, Theme,
    Vec2, Visuals,
};

/// Gap between things that belong together, in points; other gaps are multiples of it.
pub(crate) const GAP: f32 = 4.0;
/// Least height of anything that is pressed.
pub(crate) const PRESS: f32 = 28.0;
/// Radius of a handle on the drawing, and how near counts as on it.
pub(crate) const HANDLE: f32 = 5.0;
/// How near, in points, the pointer must be to a handle, corner or side to take it.
pub(crate) const GRAB: f32 = 9.0;

/// Sizes of type, in points.
pub(crate) mod size {
    pub(crate) const SMALL: f32 = 12.0;
    pub(crate) const BODY: f32 = 14.0;
    pub(crate) const HEADING: f32 = 17.0;
    pub(crate) const TITLE: f32 = 24.0;
}

/// Every colour of the window and the drawing.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Palette {
    /// Behind the drawing.
    pub(crate) ground: Color32,
    /// Behind panels.
    pub(crate) panel: Color32,
    /// Fields and cards on a panel.
    pub(crate) field: Color32,
    /// Buttons at rest.
    pub(crate) button: Color32,
    /// Buttons under the pointer.
    pub(crate) button_hover: Color32,
    /// Lines between things.
    pub(crate) rule: Color32,
    /// Around what can be typed into or pressed.
    pub(crate) border: Color32,
    /// Text.
    pub(crate) text: Color32,
    /// Text that matters less.
    pub(crate) quiet: Color32,
    /// What is held or active.
    pub(crate) accent: Color32,
    /// Behind what is chosen; text on it is `text`.
    pub(crate) accent_ground: Color32,
    /// May not be built so.
    pub(crate) stop: Color32,
    /// Look again.
    pub(crate) caution: Color32,
    /// Good to know, and what is well.
    pub(crate) note: Color32,
    /// The deck.
    pub(crate) face: Color32,
    /// The deck of the face that is held.
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
    /// Hatching of modules that may not be built so, and of those to look at again.
    pub(crate) module_stop: Color32,
    /// See `module_stop`.
    pub(crate) module_caution: Color32,
    /// Things that come through the roof.
    pub(crate) penetration: Color32,
    /// Snap guides.
    pub(crate) guide: Color32,
    /// Circuits, over modules.
    pub(crate) wire: Color32,
    /// Bare copper.
    pub(crate) copper: Color32,
    /// What a row of a list points at.
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

/// The colours of the theme that a part of the window is drawn in.
pub(crate) fn of(ui: &egui::Ui) -> &'static Palette {
    palette(ui.visuals().dark_mode)
}

/// What the window is cleared to, and so the ground of the drawing: to paint it over anything else would take a fifth of the time
/// that a frame is drawn in without a graphics card.
pub fn ground(visuals: &egui::Visuals) -> Color32 {
    palette(visuals.dark_mode).ground
}

/// The same colour, see-through: 0 is clear, 255 is solid.
pub(crate) fn faint(color: Color32, alpha: u8) -> Color32 {
    Color32::from_rgba_unmultiplied(color.r(), color.g(), color.b(), alpha)
}

/// The colour of a severity. Its word and its sign stand beside it always.
pub(crate) fn severity(palette: &Palette, severity: Severity) -> Color32 {
    match severity {
        Severity::Stop => palette.stop,
        Severity::Caution => palette.caution,
        Severity::Note => palette.note,
    }
}

/// Width of the ring around what has the keyboard, in points (WCAG 2.2, 2.4.13: at least 2; from memory).
pub(crate) const FOCUS: f32 = 2.0;

/// That ring.
pub(crate) fn focus(p: &Palette) -> Stroke {
    Stroke::new(FOCUS, p.accent)
}

/// How a kind of edge is drawn: width, then dashes and gaps in points; no dashes for a solid line.
pub(crate) fn edge_style(kind: EdgeKind) -> (f32, &'static [f32], &'static [f32]) {
    chalkcourse_sheets::edge_line(kind)
}

/// The face that titles and numbers are set in.
pub(crate) fn font(size: f32) -> FontId {
    FontId::proportional(size)
}

/// Gives a window its fonts, colours and spacing.
pub(crate) fn install(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
    // The sizes of type are commands, so that menus and keys have them.
    ctx.options_mut(|options| options.zoom_with_keyboard = false);
    ctx.set_style_of(Theme::Dark, style(true));
    ctx.set_style_of(Theme::Light, style(false));
}

/// Larger things to press, once a finger was seen on the screen: a height of 40 points with room around, where WCAG 2.2
/// (2.5.8) asks for 24.
pub(crate) fn for_fingers(ctx: &egui::Context) {
    for theme in [Theme::Dark, Theme::Light] {
        ctx.style_mut_of(theme, |style| {
            style.spacing.interact_size.y = 38.0;
            style.spacing.button_padding = Vec2::new(GAP * 3.0, GAP * 2.0);
            style.spacing.scroll.bar_width = 16.0;
        });
    }
}

/// The built-in faces, with Hack behind the text face: it has the arrows and signs that the latter lacks.
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
    // A calm window: nothing slides or fades, and so nothing is drawn when nothing happens.
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
    // The ring of a field that is typed in, and the words of what is chosen.
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
    // What has the focus, and what is pressed.
    v.widgets.active.bg_stroke = focus(p);
    v
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance and contrast ratio as WCAG 2.2 defines them (definitions "relative luminance" and
    /// "contrast ratio"; from memory).
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
    fn lines_stand_out_from_the_deck() {
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

    /// WCAG 2.2, 1.4.11: what shows that something can be typed into or pressed stands out at 3 to 1 from what is beside it, and so
    /// does the ring of the focus (2.4.13), which is as wide as that asks.
    #[test]
    fn what_can_be_pressed_is_seen_and_so_is_the_focus() {
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
            // The ring is seen beside what lies within it.
            assert!(contrast(v.widgets.active.bg_stroke.color, v.widgets.active.bg_fill) >= 3.0);
        }
    }

    /// WCAG 2.2, 2.5.8 asks for targets of 24 by 24 points.
    #[test]
    fn what_is_pressed_is_large_enough() {
        for dark in [true, false] {
            let spacing = style(dark).spacing;
            assert!(spacing.interact_size.min_elem() >= 24.0);
        }
    }

    #[test]
    fn no_two_kinds_of_edge_look_the_same() {
        let styles: Vec<_> = EdgeKind::ALL.iter().map(|k| edge_style(*k)).collect();
        for (i, a) in styles.iter().enumerate() {
            assert!(styles[..i].iter().all(|b| a != b));
        }
    }
}
