//! Circuits on the roof: each by a line style and its number, in the direction of plugging, with its ends, its way home and the bare
//! copper; and junction boxes.

use super::brush::{Brush, Style, fan_into};
use super::hit::shows_box;
use super::labelling::{BELOW, ON_IT, around, rank};
use crate::state::{Pane, State, Tool};
use crate::{Document, Selection, text};
use chalkcourse_geometry::{DVec2, RoofFace, Units};
use chalkcourse_job::{BlockId, BoxStands, CircuitId, JunctionBox};
use chalkcourse_labels::Weight;
use chalkcourse_layout::Layout;
use chalkcourse_wiring::{Device, Joined, Kind, Wired, face_of_box, ground_path, ground_to_box};
use egui::{Color32, CornerRadius, Mesh, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2};
use std::collections::BTreeSet;

/// How many circuits the legend shows: after that their lines come again.
const IN_LEGEND: usize = 6;
/// How much wider than on paper the line of a circuit is, in points.
const WIDER: f32 = 0.7;
/// Width of the dark border that keeps a line apart from what it lies on.
const BORDER: f32 = 4.6;
/// A link shorter than this on the screen, in points, has no arrow; a circuit of such links no border, no ends and no words.
const NEAR: f32 = 16.0;
/// Half of an arrow, and of a box, in points.
const ARROW: f32 = 5.0;
const BOX: f32 = 7.0;
/// What leads the way home, and the bare copper.
const HOME: Style = (1.6, &[3.0], &[3.0]);
const COPPER: Style = (1.6, &[12.0, 2.0, 2.0], &[4.0, 4.0, 4.0]);

/// Whether the layer is seen: a person asked for it, or is at work on it.
pub(crate) fn is_shown(state: &State) -> bool {
    state.show_wires
        || state.desk.is_open(Pane::Circuits)
        || matches!(state.tool, Tool::Circuit | Tool::JunctionBox)
        || matches!(state.selection, Selection::Circuit(_) | Selection::JunctionBox(_))
}

/// The line of the circuit at a place in the list: as on paper.
pub(super) fn style_of(index: usize) -> Style {
    let (width, dashes, gaps) = chalkcourse_sheets::circuit_line(index);
    (width + WIDER, dashes, gaps)
}

/// The lines that the layer has now, each with its words, for the legend.
pub(super) fn legend(document: &Document) -> Vec<(Style, bool, String)> {
    let circuits = &document.plan().wires.circuits;
    let mut rows: Vec<_> = circuits
        .iter()
        .take(IN_LEGEND)
        .enumerate()
        .map(|(index, circuit)| (style_of(index), false, text::circuit_heading(&circuit.name).to_string()))
        .collect();
    if circuits.iter().any(|circuit| circuit.home.is_some()) {
        rows.push((HOME, false, text::LINE_OF_HOME.now().to_owned()));
    }
    if !circuits.is_empty() {
        rows.push((COPPER, true, text::LINE_OF_COPPER.now().to_owned()));
    }
    rows
}

/// Paints the layer where it is seen, and junction boxes always: they are things on the roof.
pub(super) fn wires(brush: &Brush, document: &Document, state: &State) {
    if is_shown(state) {
        let layout = &document.plan().layout;
        copper(brush, document, layout);
        let held = match state.selection {
            Selection::Circuit(id) => Some(id),
            _ => None,
        };
        let mut lines = Mesh::default();
        for (index, wired) in document.plan().wires.circuits.iter().enumerate() {
            circuit(brush, layout, wired, style_of(index), held, document.job().units, &mut lines);
            home(brush, document, layout, wired, &mut lines);
        }
        brush.painter.add(Shape::mesh(lines));
    }
    for junction in
        document.job().boxes.iter().filter(|it| shows_box(&brush.space, &document.plan().layout, it))
    {
        let held = state.selection == Selection::JunctionBox(junction.id)
            || state.hover == Selection::JunctionBox(junction.id);
        let at = brush.space.screen_from_plan(junction.at);
        let color = if held { brush.palette.accent } else { brush.palette.text };
        box_sign(brush, at, junction.stands, color);
        let room = Rect::from_center_size(at, Vec2::splat(BOX * 2.0));
        brush.keep_off_rect(room, Weight::Solid);
        brush.say_at(rank::PENETRATION, around(room, 3.0, BELOW), &junction.name, color);
    }
}

/// A junction box: a square with a cross of wires in it; dashed where it is under the deck.
pub(super) fn box_sign(brush: &Brush, at: Pos2, stands: BoxStands, color: Color32) {
    let room = Rect::from_center_size(at, Vec2::splat(BOX * 2.0));
    brush.painter.rect_filled(room, CornerRadius::same(2), brush.palette.panel);
    let stroke = Stroke::new(1.8, color);
    match stands {
        BoxStands::OnRoof => {
            brush.painter.rect_stroke(room, CornerRadius::same(2), stroke, StrokeKind::Middle);
        }
        BoxStands::UnderDeck => {
            let mut line = vec![room.left_top(), room.right_top(), room.right_bottom(), room.left_bottom()];
            line.push(room.left_top());
            brush.painter.extend(Shape::dashed_line(&line, stroke, 3.0, 2.5));
        }
    }
    for (a, b) in [(Vec2::new(-3.0, -3.0), Vec2::new(3.0, 3.0)), (Vec2::new(-3.0, 3.0), Vec2::new(3.0, -3.0))]
    {
        brush.painter.line_segment([at + a, at + b], Stroke::new(1.2, color));
    }
}

/// Its corners on the screen.
pub(super) fn box_corners(at: Pos2) -> [Pos2; 4] {
    let room = Rect::from_center_size(at, Vec2::splat(BOX * 2.0));
    [room.left_top(), room.right_top(), room.right_bottom(), room.left_bottom()]
}

fn on_screen(brush: &Brush, layout: &Layout, device: &Device) -> Option<Pos2> {
    let face = layout.roof.faces.get(device.face).filter(|_| brush.space.shows(device.face))?;
    Some(brush.space.screen_from_frame(&face.plane, device.point))
}

/// A line with a border, so that it stands out on glass and on shingles alike.
fn bordered(brush: &Brush, lines: &mut Mesh, ends: (Pos2, Pos2), color: Color32, style: Style) {
    brush.styled_into(lines, ends, brush.palette.module, (BORDER, &[], &[]));
    brush.styled_into(lines, ends, color, style);
}

fn circuit(
    brush: &Brush,
    layout: &Layout,
    wired: &Wired,
    style: Style,
    held: Option<CircuitId>,
    units: Units,
    lines: &mut Mesh,
) {
    let p = brush.palette;
    let places: Vec<Option<Pos2>> =
        wired.devices.iter().map(|device| on_screen(brush, layout, device)).collect();
    let is_held = held == Some(wired.id);
    let color = if is_held { p.light } else { p.wire };
    let style = if is_held { (style.0 + 1.0, style.1, style.2) } else { style };
    let mut longest = 0.0_f32;
    for (pair, link) in places.windows(2).zip(&wired.links) {
        let [Some(a), Some(b)] = *pair else { continue };
        longest = longest.max((b - a).length());
        if !brush.space.area.intersects(Rect::from_two_pos(a, b).expand(1.0)) {
            continue;
        }
        if link.leads.is_none() {
            // No lead reaches: the line is broken where the wire would be.
            brush.styled_into(lines, (a, b), p.stop, (3.0, &[3.0], &[5.0]));
            brush.say_at(
                rank::FINDING,
                around(Rect::from_pos(a + (b - a) / 2.0), 4.0, ON_IT),
                text::NO_LEAD_REACHES.now(),
                p.stop,
            );
        } else if (b - a).length() < NEAR {
            brush.styled_into(lines, (a, b), color, (style.0.min(1.4), &[], &[]));
        } else {
            bordered(brush, lines, (a, b), color, style);
            joined(brush, lines, (a, b), link, color, units);
        }
    }
    if longest >= NEAR || wired.devices.len() == 1 {
        ends(brush, wired, &places, color);
    }
}

/// The direction of plugging, and the extension leads of a link.
fn joined(
    brush: &Brush,
    lines: &mut Mesh,
    (a, b): (Pos2, Pos2),
    link: &Joined,
    color: Color32,
    units: Units,
) {
    let way = (b - a).normalized();
    let aside = Vec2::new(-way.y, way.x) * ARROW;
    let tip = a + (b - a) / 2.0 + way * ARROW;
    let back = tip - way * ARROW * 2.0;
    fan_into(lines, [tip + way * 1.6, back + aside * 1.35, back - aside * 1.35], brush.palette.module);
    fan_into(lines, [tip, back + aside, back - aside], color);
    if link.leads.as_ref().is_some_and(|leads| !leads.is_empty()) {
        let words = text::extension(link.lengths, units);
        brush.say_at(rank::PENETRATION, around(Rect::from_pos(tip), 7.0, BELOW), &words, brush.palette.text);
    }
}

/// The first end of a circuit is its −, the last its +; of a branch the last leads home.
fn ends(brush: &Brush, wired: &Wired, places: &[Option<Pos2>], color: Color32) {
    let p = brush.palette;
    let branch = wired.kind == Kind::AcDevices;
    let first = places.first().copied().flatten().map(|at| (at, "−", branch));
    let last = places.last().copied().flatten().map(|at| (at, "+", false));
    let one = places.len() == 1;
    for (at, sign, plain) in first.into_iter().filter(|_| !(one && branch)).chain(last) {
        // Both ends of a single module stand side by side.
        let at = match (one, sign) {
            (true, "−") => at - Vec2::new(9.0, 0.0),
            (true, _) if !branch => at + Vec2::new(9.0, 0.0),
            _ => at,
        };
        brush.painter.circle(at, 7.0, p.module, Stroke::new(1.8, color));
        brush.keep_off_rect(Rect::from_center_size(at, Vec2::splat(15.0)), Weight::Solid);
        if !plain {
            let arm = 3.4;
            brush.painter.line_segment([at - Vec2::X * arm, at + Vec2::X * arm], Stroke::new(1.6, color));
            if sign == "+" && !branch {
                brush.painter.line_segment([at - Vec2::Y * arm, at + Vec2::Y * arm], Stroke::new(1.6, color));
            }
        }
        let words = match (branch, plain) {
            (false, _) => format!("{} {sign}", wired.name),
            (true, false) => wired.name.clone(),
            (true, true) => continue,
        };
        brush.say_at(
            rank::BLOCK,
            around(Rect::from_center_size(at, Vec2::splat(14.0)), 2.0, BELOW),
            &words,
            p.text,
        );
    }
}

/// The way along the eave and up the slope, from a place on a face to another on it; straight to one on another face.
fn legs(brush: &Brush, face: &RoofFace, from: DVec2, to: Option<DVec2>, junction: &JunctionBox) -> Vec<Pos2> {
    let at = |p: DVec2| brush.space.screen_from_frame(&face.plane, p);
    match to {
        Some(to) => vec![at(from), at(DVec2::new(from.x, to.y)), at(to)],
        None => vec![at(from), brush.space.screen_from_plan(junction.at)],
    }
}

fn home(brush: &Brush, document: &Document, layout: &Layout, wired: &Wired, lines: &mut Mesh) {
    let Some(junction) = wired.home.and_then(|home| document.job().junction_box(home.to)) else { return };
    let spot = face_of_box(&layout.roof, junction);
    let first = wired.devices.first().filter(|_| wired.kind != Kind::AcDevices);
    for device in first.into_iter().chain(wired.devices.last()) {
        let Some(face) = layout.roof.faces.get(device.face).filter(|_| brush.space.shows(device.face)) else {
            continue;
        };
        let to = spot.filter(|(index, _)| *index == device.face).map(|(_, at)| at);
        if to.is_none() && brush.space.face_on.is_some() {
            continue;
        }
        let way = legs(brush, face, device.point, to, junction);
        for pair in way.windows(2) {
            bordered(brush, lines, (pair[0], pair[1]), brush.palette.wire, HOME);
        }
    }
}

/// The bare copper past every lug of a block that has circuits, and on to the box.
fn copper(brush: &Brush, document: &Document, layout: &Layout) {
    let job = document.job();
    let wires = &document.plan().wires;
    let wired: BTreeSet<BlockId> =
        wires.circuits.iter().flat_map(|circuit| &circuit.devices).map(|device| device.at.block).collect();
    let mut lines = Mesh::default();
    for block in
        layout.blocks.iter().filter(|block| wired.contains(&block.id) && brush.space.shows(block.face))
    {
        let Some((face, bounds)) = layout.roof.faces.get(block.face).zip(block.bounds) else { continue };
        let row = block.modules.first().map_or(0.0, |module| module.rect.size().y);
        let on_screen = bounds.corners().map(|corner| brush.space.screen_from_frame(&face.plane, corner));
        let seen = brush.space.area.intersects(Rect::from_points(&on_screen));
        if row * brush.space.camera.scale < f64::from(NEAR) || !seen {
            continue;
        }
        // Beside the devices, so that it lies under no circuit.
        let aside = DVec2::new(0.0, -row * 0.18);
        let path = ground_path(block);
        let at = |p: DVec2| brush.space.screen_from_frame(&face.plane, p);
        let mut way: Vec<Pos2> = path.iter().map(|p| at(*p + aside)).collect();
        if let Some((junction, end, _)) = ground_to_box(job, layout, block) {
            let spot = face_of_box(&layout.roof, junction).filter(|(index, _)| *index == block.face);
            if spot.is_some() || brush.space.face_on.is_none() {
                way.extend(legs(brush, face, end, spot.map(|(_, at)| at), junction));
            }
        }
        for pair in way.windows(2) {
            bordered(brush, &mut lines, (pair[0], pair[1]), brush.palette.copper, COPPER);
        }
    }
    brush.painter.add(Shape::mesh(lines));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn six_circuits_have_six_lines() {
        for one in 0..IN_LEGEND {
            for other in one + 1..IN_LEGEND {
                assert_ne!(style_of(one), style_of(other));
            }
        }
        // From the seventh on they come again, wider.
        assert_eq!((style_of(7).1, style_of(7).2), (style_of(1).1, style_of(1).2));
        assert!(style_of(7).0 > style_of(1).0);
    }
}
