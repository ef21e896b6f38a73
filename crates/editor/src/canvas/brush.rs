//! The strokes that all painting of the plan uses, and what its words keep off.

use super::words::Words;
use crate::state::Space;
use crate::theme::Palette;
use chalkcourse_geometry::Polygon;
use chalkcourse_labels::Obstacle;
use egui::{Color32, Mesh, Painter, Pos2, Rect, Shape, Stroke};
use std::cell::RefCell;

/// What all painting needs.
pub(super) struct Brush {
    pub(super) painter: Painter,
    pub(super) space: Space,
    pub(super) palette: &'static Palette,
    /// The words of this frame, placed when all is painted.
    pub(super) words: RefCell<Vec<Words>>,
    /// What they keep off.
    pub(super) obstacles: RefCell<Vec<Obstacle>>,
}

impl Brush {
    /// Fills a shape given in plan; any shape, with holes.
    pub(super) fn fill(&self, plan: &Polygon, color: Color32) {
        let mut mesh = Mesh::default();
        for triangle in plan.triangles() {
            let first = mesh.vertices.len() as u32;
            for corner in triangle {
                mesh.colored_vertex(self.space.screen_from_plan(corner), color);
            }
            mesh.add_triangle(first, first + 1, first + 2);
        }
        self.painter.add(Shape::mesh(mesh));
    }

    /// Draws all rings of a shape given in plan.
    pub(super) fn outline(&self, plan: &Polygon, stroke: Stroke, dashes: Option<(f32, f32)>) {
        for ring in plan.rings() {
            let mut points: Vec<Pos2> = ring.iter().map(|&p| self.space.screen_from_plan(p)).collect();
            match dashes {
                None => {
                    self.painter.add(Shape::closed_line(points, stroke));
                }
                Some((dash, gap)) => {
                    points.extend(points.first().copied());
                    self.painter.extend(Shape::dashed_line(&points, stroke, dash, gap));
                }
            }
        }
    }

    /// Draws a line on the screen in the style of a kind: see [`theme::edge_style`].
    pub(super) fn styled(&self, a: Pos2, b: Pos2, color: Color32, (width, dashes, gaps): Style) {
        let stroke = Stroke::new(width, color);
        if dashes.is_empty() {
            self.painter.line_segment([a, b], stroke);
        } else if self.nearly_seen(a, b) {
            self.painter.extend(Shape::dashed_line_with_offset(&[a, b], stroke, dashes, gaps, 0.0));
        }
    }

    /// A line that runs far off the screen would be cut into dashes without end.
    fn nearly_seen(&self, a: Pos2, b: Pos2) -> bool {
        (a - b).length() < 50_000.0
            && self.space.area.expand(20.0).intersects(Rect::from_two_pos(a, b).expand(1.0))
    }
}

/// Width, dashes and gaps of a line.
pub(super) type Style = (f32, &'static [f32], &'static [f32]);
