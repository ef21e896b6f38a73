//! Drawings on a page.

use super::{INK, Ink, SOFT};
use crate::drawing::{self, Drawing, Shape};
use crate::letters::Letters;
use chalkcourse_geometry::DVec2;
use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point, Rect, Transform};
use krilla::paint::{Fill, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::TextDirection;

/// Scale in points per metre, and height in points, for a drawing of at most `wide` × `most` points.
pub(super) fn scaled(drawing: &Drawing, wide: f32, most: f32) -> (f32, f32) {
    let size = drawing.bounds.size().as_vec2();
    let scale = (wide / size.x).min(most / size.y);
    (scale, size.y * scale)
}

/// Draws with the upper left corner at a point of the page, at a scale in points per metre.
pub(super) fn draw_all(
    surface: &mut Surface<'_>,
    letters: &Letters,
    at: (f32, f32),
    scale: f32,
    drawing: &Drawing,
) {
    let place = |p: DVec2| {
        let (x, y) = ((p.x - drawing.bounds.min.x) as f32, (drawing.bounds.max.y - p.y) as f32);
        (at.0 + x * scale, at.1 + y * scale)
    };
    let path = |points: &[DVec2], closed: bool| {
        let mut path = PathBuilder::new();
        for (nth, (x, y)) in points.iter().map(|&p| place(p)).enumerate() {
            if nth == 0 { path.move_to(x, y) } else { path.line_to(x, y) }
        }
        if closed {
            path.close();
        }
        path.finish()
    };
    let color = |ink| match ink {
        drawing::Ink::Dark => INK,
        drawing::Ink::Soft | drawing::Ink::Leader => SOFT,
        drawing::Ink::Module => [201, 216, 234],
        drawing::Ink::Penetration => [217, 205, 184],
        drawing::Ink::Paper => [255, 255, 255],
    };
    let paint = |[red, green, blue]: Ink| rgb::Color::new(red, green, blue).into();
    for shape in &drawing.shapes {
        match shape {
            Shape::Line { points, width, dashes, ink } => {
                let dash = (!dashes.is_empty()).then(|| StrokeDash { array: dashes.clone(), offset: 0.0 });
                surface.set_fill(None);
                surface.set_stroke(Some(Stroke {
                    paint: paint(color(*ink)),
                    width: *width,
                    dash,
                    ..Stroke::default()
                }));
                if let Some(path) = path(points, false) {
                    surface.draw_path(&path);
                }
            }
            Shape::Area { ring, ink } => {
                surface.set_fill(Some(Fill { paint: paint(color(*ink)), ..Fill::default() }));
                surface.set_stroke(Some(Stroke { paint: paint(INK), width: 0.5, ..Stroke::default() }));
                if let Some(path) = path(ring, true) {
                    surface.draw_path(&path);
                }
            }
            Shape::Words { at, turn, size, text } => {
                let text = letters.shown(text);
                let wide = letters.width(&text, *size);
                let (x, y) = place(*at);
                let (sin, cos) = (-*turn as f32).sin_cos();
                surface.push_transform(&Transform::from_row(cos, sin, -sin, cos, x, y));
                surface.set_stroke(None);
                surface.set_fill(Some(Fill { paint: paint([255, 255, 255]), ..Fill::default() }));
                let ground = Rect::from_xywh(-wide / 2.0 - 1.0, -size * 0.6, wide + 2.0, size * 1.2);
                let mut back = PathBuilder::new();
                if let Some(rect) = ground {
                    back.push_rect(rect);
                }
                if let Some(path) = back.finish() {
                    surface.draw_path(&path);
                }
                surface.set_fill(Some(Fill { paint: paint(INK), ..Fill::default() }));
                let at = Point::from_xy(-wide / 2.0, size * 0.35);
                surface.draw_text(at, letters.font.clone(), *size, &text, false, TextDirection::LeftToRight);
                surface.pop();
            }
        }
    }
    surface.set_stroke(None);
}
