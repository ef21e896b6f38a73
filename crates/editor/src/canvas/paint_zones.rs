//! Zones of wind suction, as in the figures of the standard: shades with a number and a pressure on each.

use super::Canvas;
use super::brush::Brush;
use super::labelling::{ON_IT, around, rank};
use crate::state::State;
use crate::{Document, text, theme};
use chalkcourse_geometry::Polygon;
use chalkcourse_plan::Plan;
use chalkcourse_rules::wind::{Drawn, drawn};
use egui::{Align2, Stroke};
use std::sync::Arc;

/// The zones of a plan, cached per plan.
#[derive(Debug)]
pub(crate) struct WindZones {
    plan: Arc<Plan>,
    pub(crate) drawn: Drawn,
}

/// Draws the zones, if they are switched on; if they can't be drawn, the reason is shown over the drawing.
pub(super) fn zones(brush: &Brush, document: &Document, state: &State, own: &mut Canvas) {
    if !state.show_zones {
        own.wind_zones = None;
        return;
    }
    let plan = document.plan();
    let kept = own.wind_zones.take().filter(|zones| Arc::ptr_eq(&zones.plan, plan));
    let zones =
        own.wind_zones.insert(kept.unwrap_or_else(|| WindZones {
            plan: Arc::clone(plan),
            drawn: drawn(document.job(), &plan.layout),
        }));
    let p = brush.palette;
    for face in zones.drawn.faces.iter().filter(|face| brush.space.shows(face.face)) {
        for (rank, zone) in face.zones.iter().enumerate() {
            // The worse the zone, the darker its shade; the label says which it is.
            let shade = theme::faint(p.caution, [0, 34, 74, 96][rank.min(3)]);
            for shape in &zone.shapes {
                brush.fill(shape, shade);
                brush.outline(shape, Stroke::new(1.0, theme::faint(p.caution, 190)), Some((4.0, 4.0)));
            }
        }
        for zone in &face.zones {
            let Some(largest) = zone.shapes.iter().max_by(|a, b| a.area().total_cmp(&b.area())) else {
                continue;
            };
            let at = brush.space.screen_from_plan(inside(largest));
            let at = around(egui::Rect::from_pos(at), -9.0, ON_IT);
            brush.say_at(rank::BLOCK, at, &text::wind_zone(zone), p.caution);
        }
    }
    let corner = brush.space.area.left_top() + egui::vec2(14.0, 14.0);
    let words = text::wind_zones_said(&zones.drawn);
    brush.label(corner, Align2::LEFT_TOP, &words, theme::size::SMALL, p.caution);
}

/// A point inside a polygon, well away from its border: the centre of its largest triangle.
pub(super) fn inside(shape: &Polygon) -> chalkcourse_geometry::DVec2 {
    let area = |t: &[chalkcourse_geometry::DVec2; 3]| (t[1] - t[0]).perp_dot(t[2] - t[0]).abs();
    let largest = shape.triangles().into_iter().max_by(|a, b| area(a).total_cmp(&area(b)));
    largest.map_or_else(Default::default, |t| (t[0] + t[1] + t[2]) / 3.0)
}
