//! Painting the plan: the order of things, and the strokes and labels that all of them use.

use super::gesture::Gesture;
use super::labelling::Words;
use super::{
    Stage, group, paint_blocks, paint_courses, paint_fill, paint_legend, paint_limits, paint_marks,
    paint_paths, paint_preview, paint_report, paint_roof, paint_zones, part, picture,
};
use crate::Document;
use crate::desk::Desk;
use crate::theme::{self, Palette};
use crate::view::Space;
use chalkcourse_geometry::Polygon;
use chalkcourse_labels::Obstacle;
use egui::{Align2, Color32, CornerRadius, Mesh, Painter, Pos2, Rect, Shape, Stroke, Ui, Vec2};
use std::cell::RefCell;

/// Paints the drawing as the document and the desk are now.
pub(crate) fn all(ui: &Ui, stage: &Stage, document: &Document, desk: &mut Desk) {
    let brush = Brush {
        painter: ui.painter().with_clip_rect(stage.space.area),
        space: stage.space,
        palette: theme::of(ui),
        words: RefCell::default(),
        obstacles: RefCell::default(),
    };
    brush.painter.rect_filled(stage.space.area, CornerRadius::ZERO, brush.palette.ground);
    picture::paint(&brush, document, desk);
    paint_roof::faces(&brush, document, desk);
    paint_limits::zones(&brush, document, desk);
    paint_zones::zones(&brush, document, desk);
    paint_paths::pathways(&brush, document, desk);
    paint_roof::penetrations(&brush, document, desk);
    paint_blocks::blocks(&brush, document, desk);
    paint_roof::penetration_names(&brush, document, desk);
    paint_roof::edges(&brush, document, desk);
    paint_roof::names(&brush, document, desk);
    paint_marks::signs(&brush, document);
    paint_marks::lights(&brush, document, desk);
    paint_report::part(&brush, document, desk);
    paint_preview::preview(&brush, document, desk);
    paint_fill::so_far(&brush, document, desk);
    paint_fill::near(&brush, document, desk);
    paint_courses::marks(&brush, document, desk);
    paint_courses::ghost(&brush, document, desk);
    paint_marks::held(&brush, document, desk);
    group::paint(&brush, &document.plan().layout, &desk.group);
    if let (Some(Gesture::Box { from, .. }), Some(to)) = (&desk.gesture, ui.input(|i| i.pointer.latest_pos()))
    {
        group::paint_box(&brush, brush.space.screen_from_plan(*from), to);
    }
    part::paint(&brush, document, desk);
    paint_marks::draft(&brush, document, desk);
    paint_marks::tape(&brush, document, desk);
    picture::marks(&brush, document, desk);
    paint_marks::guides(&brush, desk);
    paint_marks::frame(&brush, document, desk);
    paint_legend::legend(&brush, document, desk);
    desk.shown = brush.place_words();
}

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

/// The sign of a severity, told apart by its shape: an octagon, a triangle, a disc.
pub(crate) fn severity_sign(
    painter: &Painter,
    centre: Pos2,
    radius: f32,
    severity: chalkcourse_rules::Severity,
    palette: &Palette,
) {
    use chalkcourse_rules::Severity;
    let color = theme::severity(palette, severity);
    let (corners, turn, mark) = match severity {
        Severity::Stop => (8, std::f32::consts::PI / 8.0, "×"),
        Severity::Caution => (3, -std::f32::consts::FRAC_PI_2, "!"),
        Severity::Note => (24, 0.0, "i"),
    };
    let reach = if corners == 3 { radius * 1.25 } else { radius };
    let points = (0..corners)
        .map(|n| centre + Vec2::angled(turn + std::f32::consts::TAU * n as f32 / corners as f32) * reach)
        .collect();
    painter.add(Shape::convex_polygon(points, color, Stroke::NONE));
    painter.text(centre, Align2::CENTER_CENTER, mark, theme::font(radius * 1.7), palette.panel);
}
