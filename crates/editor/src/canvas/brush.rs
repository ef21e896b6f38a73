//! Drawing primitives shared by all painting of the plan, and the collection of labels and their obstacles.

use super::words::Words;
use crate::state::Space;
use crate::theme::Palette;
use chalkcourse_geometry::Polygon;
use chalkcourse_labels::Obstacle;
use egui::{Color32, Mesh, Painter, Pos2, Rect, Shape, Stroke};
use std::cell::RefCell;

/// Lines with fewer repeats of their dash pattern are drawn solid, since the pattern would not be recognisable.
const REPEATS: f32 = 3.0;

/// How far from level or upright a line may be to be drawn as such, in points.
const LEVEL: f32 = 0.05;

/// The context for painting.
pub(super) struct Brush {
    pub(super) painter: Painter,
    pub(super) space: Space,
    pub(super) palette: &'static Palette,
    /// The labels of this frame, placed after everything is painted.
    pub(super) words: RefCell<Vec<Words>>,
    /// Obstacles for labels.
    pub(super) obstacles: RefCell<Vec<Obstacle>>,
}

impl Brush {
    /// Fills any polygon given in plan, including holes.
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

    /// Draws all rings of a polygon given in plan.
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

    /// Draws a line on the screen in a style: see [`theme::edge_style`].
    pub(super) fn styled(&self, a: Pos2, b: Pos2, color: Color32, style: Style) {
        let mut lines = Mesh::default();
        self.styled_into(&mut lines, (a, b), color, style);
        self.painter.add(Shape::mesh(lines));
    }

    /// Like [`Self::styled`], but level and upright lines, most of a drawing, are added to a mesh: aligned to pixels
    /// they need no antialiasing, which takes a fifth of the triangles.
    pub(super) fn styled_into(
        &self,
        lines: &mut Mesh,
        (a, b): (Pos2, Pos2),
        color: Color32,
        (width, dashes, gaps): Style,
    ) {
        let stroke = Stroke::new(width, color);
        let repeat: f32 = dashes.iter().chain(gaps).sum();
        let pieces = if dashes.is_empty() || (b - a).length() < repeat * REPEATS {
            vec![Shape::line_segment([a, b], stroke)]
        } else if self.is_near_view(a, b) {
            Shape::dashed_line_with_offset(&[a, b], stroke, dashes, gaps, 0.0)
        } else {
            return;
        };
        let way = b - a;
        if way.x.abs().min(way.y.abs()) > LEVEL {
            self.painter.extend(pieces);
            return;
        }
        let pixel = 1.0 / self.painter.pixels_per_point();
        let wide = (width / pixel).round().max(1.0) * pixel;
        let snapped = |middle: f32| ((middle - wide / 2.0) / pixel).round() * pixel;
        for piece in pieces {
            let Shape::LineSegment { points: [from, to], .. } = piece else { continue };
            let mut quad = Rect::from_two_pos(from, to);
            if way.x.abs() >= way.y.abs() {
                quad.min.y = snapped(from.y);
                quad.max.y = quad.min.y + wide;
            } else {
                quad.min.x = snapped(from.x);
                quad.max.x = quad.min.x + wide;
            }
            lines.add_colored_rect(quad, color);
        }
    }

    /// Whether a line is near the visible area; one that extends far outside would produce far too many dashes.
    fn is_near_view(&self, a: Pos2, b: Pos2) -> bool {
        (a - b).length() < 50_000.0
            && self.space.area.expand(20.0).intersects(Rect::from_two_pos(a, b).expand(1.0))
    }
}

/// Width, dashes and gaps of a line.
pub(super) type Style = (f32, &'static [f32], &'static [f32]);

/// Adds a convex polygon.
pub(super) fn fan_into(mesh: &mut Mesh, corners: impl IntoIterator<Item = Pos2>, color: Color32) {
    let first = mesh.vertices.len() as u32;
    for corner in corners {
        mesh.colored_vertex(corner, color);
    }
    for next in first + 2..mesh.vertices.len() as u32 {
        mesh.add_triangle(first, next - 1, next);
    }
}
