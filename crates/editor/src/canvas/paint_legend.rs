//! The legend of line styles, on demand: a sample of each kind of line present, as drawn and printed.

use super::Canvas;
use super::brush::{Brush, Style};
use super::paint_limits::Zones;
use super::paint_wires;
use crate::state::State;
use crate::{Document, text, theme};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_labels::Weight;
use egui::{Color32, CornerRadius, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2};

/// Length of a line sample, and distance of rows, in points.
const PIECE: f32 = 56.0;
const ROW: f32 = 19.0;
const MARGIN: f32 = 12.0;

/// Draws the legend in the lower right corner, if it is switched on.
pub(super) fn legend(brush: &Brush, document: &Document, state: &State, own: &Canvas) {
    if !state.show_lines {
        return;
    }
    let p = brush.palette;
    let faces = document.plan().layout.roof.faces.iter().enumerate();
    let shown = || faces.clone().filter(|(index, _)| brush.space.shows(*index));
    let there = |kind: EdgeKind| shown().any(|(_, face)| face.edges.iter().any(|edge| edge.kind == kind));
    let kinds = EdgeKind::ALL.into_iter().filter(|kind| there(*kind));
    let wires = if paint_wires::is_shown(state) { paint_wires::legend(document) } else { Vec::new() };
    let mut rows: Vec<(Color32, Style, &str)> =
        kinds.map(|kind| (p.line, theme::edge_style(kind), kind.name().now())).collect();
    if own.zones.as_ref().is_some_and(Zones::are_drawn) {
        rows.push((p.zone, (1.0, &[2.0], &[4.0]), text::LINE_OF_FREE.now()));
        rows.push((p.zone, (1.0, &[7.0], &[4.0]), text::LINE_OF_LOWEST.now()));
    }
    rows.extend(
        wires
            .iter()
            .map(|(style, copper, words)| (if *copper { p.copper } else { p.text }, *style, words.as_str())),
    );
    let words: Vec<_> =
        rows.iter().map(|(_, _, words)| brush.galley(words, theme::size::SMALL, p.text)).collect();
    let wide = words.iter().map(|galley| galley.size().x).fold(0.0, f32::max);
    let size = Vec2::new(PIECE + wide + MARGIN * 3.0, ROW * rows.len() as f32 + MARGIN);
    let card = Rect::from_min_size(brush.space.area.right_bottom() - size - Vec2::splat(MARGIN), size);
    brush.keep_off_rect(card, Weight::Solid);
    let frame = Stroke::new(1.0, p.rule);
    brush.painter.rect(card, CornerRadius::same(6), theme::faint(p.panel, 245), frame, StrokeKind::Inside);
    let mut y = card.top() + (MARGIN + ROW) / 2.0;
    for ((color, style, _), galley) in rows.into_iter().zip(words) {
        let from = Pos2::new(card.left() + MARGIN, y);
        // Its dashes too, though on the roof so short a line would be whole.
        let ends = [from, from + Vec2::new(PIECE, 0.0)];
        let (width, dashes, gaps) = style;
        let stroke = Stroke::new(width, color);
        brush.painter.extend(match dashes.is_empty() {
            true => vec![Shape::line_segment(ends, stroke)],
            false => Shape::dashed_line_with_offset(&ends, stroke, dashes, gaps, 0.0),
        });
        let at = Pos2::new(from.x + PIECE + MARGIN, y - galley.size().y / 2.0);
        brush.painter.galley(at, galley, p.text);
        y += ROW;
    }
}
