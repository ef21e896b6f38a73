//! The strokes and labels that all painting of the plan uses.

use crate::state::Space;
use crate::theme::{self, Palette};
use chalkcourse_geometry::Polygon;
use egui::epaint::TextShape;
use egui::{Align2, Color32, CornerRadius, Mesh, Painter, Pos2, Rect, Shape, Stroke, Vec2};

/// What all painting needs.
pub(super) struct Brush {
    pub(super) painter: Painter,
    pub(super) space: Space,
    pub(super) palette: &'static Palette,
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

    /// How wide words are, in points.
    pub(super) fn width(&self, words: &str, size: f32) -> f32 {
        self.painter.layout_no_wrap(words.to_owned(), theme::font(size), self.palette.text).size().x
    }

    /// Words on the drawing, on a ground that keeps them readable.
    pub(super) fn label(&self, at: Pos2, anchor: Align2, words: &str, size: f32, color: Color32) -> Rect {
        let galley = self.painter.layout_no_wrap(words.to_owned(), theme::font(size), color);
        let rect = anchor.anchor_size(at, galley.size());
        let ground = theme::faint(self.palette.panel, 225);
        self.painter.rect_filled(rect.expand2(Vec2::new(5.0, 2.0)), CornerRadius::same(4), ground);
        self.painter.galley(rect.min, galley, color);
        rect
    }

    /// Words along a line, beside it by `beside` points (to its left as it runs); none where it is too short.
    pub(super) fn label_along(&self, a: Pos2, b: Pos2, beside: f32, words: &str, color: Color32) {
        let along = b - a;
        let galley = self.painter.layout_no_wrap(words.to_owned(), theme::font(theme::size::SMALL), color);
        if along.length() < galley.size().x + 16.0 {
            return;
        }
        let along = along.normalized();
        // On the screen y grows downward: the left of a line is this way.
        let left = Vec2::new(along.y, -along.x);
        let middle = a + (b - a) * 0.5 + left * beside;
        let mut angle = along.angle();
        // Never upside down.
        let quarter = std::f32::consts::FRAC_PI_2;
        if angle > quarter + 0.01 {
            angle -= 2.0 * quarter;
        } else if angle < -quarter + 0.01 {
            angle += 2.0 * quarter;
        }
        let corner = Vec2::angled(angle) * (-galley.size().x / 2.0)
            + Vec2::new(-angle.sin(), angle.cos()) * (-galley.size().y / 2.0);
        let (right, down) = (Vec2::angled(angle), Vec2::new(-angle.sin(), angle.cos()));
        let half = galley.size() / 2.0 + Vec2::new(5.0, 1.0);
        let ground = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]
            .map(|(x, y)| middle + right * half.x * x + down * half.y * y);
        let fill = theme::faint(self.palette.ground, 215);
        self.painter.add(Shape::convex_polygon(ground.to_vec(), fill, Stroke::NONE));
        self.painter.add(TextShape::new(middle + corner, galley, color).with_angle(angle));
    }
}

/// Width, dashes and gaps of a line.
pub(super) type Style = (f32, &'static [f32], &'static [f32]);
