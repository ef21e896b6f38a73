//! A drawing as an SVG 1.1 file (W3C Recommendation, 16 August 2011): for the clipboard, a letter, a web page.

use crate::drawing::{Drawing, Ink, Shape};
use chalkcourse_geometry::DVec2;
use chalkcourse_takeoff::CAUTION;
use std::fmt::Write as _;

/// The longer side, in user units of 1/96 in.
const LONG: f64 = 960.0;
/// User units in a point.
const POINT: f64 = 96.0 / 72.0;

/// The drawing as an SVG file. It carries the cautions as its description.
pub fn svg(drawing: &Drawing) -> String {
    let size = drawing.bounds.size();
    let scale = LONG / size.max_element().max(1e-6);
    let (width, height) = (size.x * scale, size.y * scale);
    let at = |p: DVec2| ((p.x - drawing.bounds.min.x) * scale, (drawing.bounds.max.y - p.y) * scale);
    let path = |points: &[DVec2]| {
        let places = points.iter().map(|&p| at(p)).map(|(x, y)| format!("{x:.2} {y:.2}"));
        format!("M{}", places.collect::<Vec<_>>().join("L"))
    };
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width:.0}\" height=\"{height:.0}\" viewBox=\"0 0 {width:.2} \
         {height:.2}\" role=\"img\">\n<title>{}</title>\n<desc>{}</desc>\n<rect width=\"100%\" height=\"100%\" \
         fill=\"#ffffff\"/>\n",
        escaped(&drawing.title),
        escaped(CAUTION.now())
    );
    for shape in &drawing.shapes {
        let _ = match shape {
            Shape::Line { points, width, dashes, ink } => {
                let dashes: Vec<String> =
                    dashes.iter().map(|dash| format!("{:.1}", f64::from(*dash) * POINT)).collect();
                let dashes = match dashes.is_empty() {
                    true => String::new(),
                    false => format!(" stroke-dasharray=\"{}\"", dashes.join(" ")),
                };
                let width = f64::from(*width) * POINT;
                let (path, color) = (path(points), color(*ink));
                writeln!(
                    out,
                    "<path d=\"{path}\" fill=\"none\" stroke=\"{color}\" stroke-width=\"{width:.2}\"{dashes}/>"
                )
            }
            Shape::Area { ring, ink } => writeln!(
                out,
                "<path d=\"{}Z\" fill=\"{}\" stroke=\"{}\" stroke-width=\"0.8\"/>",
                path(ring),
                color(*ink),
                color(Ink::Dark)
            ),
            Shape::Words { at: place, turn, size, text } => {
                let (x, y) = at(*place);
                let (size, turn, words) = (f64::from(*size) * POINT, -turn.to_degrees(), escaped(text));
                // Their ground first, as a wide white line around the letters: SVG 1.1 has no other order in one element.
                let ground = "fill=\"none\" stroke=\"#ffffff\" stroke-width=\"3\" stroke-linejoin=\"round\"";
                let ink = format!("fill=\"{}\"", color(Ink::Dark));
                [ground, &ink].into_iter().try_for_each(|paint| {
                    writeln!(
                        out,
                        "<text x=\"{x:.2}\" y=\"{y:.2}\" dy=\"0.35em\" font-family=\"sans-serif\" font-size=\"{size:.1}\" \
                         text-anchor=\"middle\" transform=\"rotate({turn:.2} {x:.2} {y:.2})\" {paint}>{words}</text>"
                    )
                })
            }
        };
    }
    out.push_str("</svg>\n");
    out
}

fn color(ink: Ink) -> &'static str {
    match ink {
        Ink::Dark => "#14161a",
        Ink::Soft => "#54585f",
        Ink::Module => "#c9d8ea",
        Ink::Penetration => "#d9cdb8",
    }
}

/// Text as XML takes it (XML 1.0, section 2.4); what XML can't hold at all is left out.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            c if c.is_control() || matches!(c, '\u{fffe}' | '\u{ffff}') => out.push(' '),
            c => out.push(c),
        }
    }
    out
}
