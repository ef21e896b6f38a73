//! Sketches: small wordless drawings of what a rule is about.

/// An element of a sketch, on a canvas [`WIDE`] by [`HIGH`], y up. It shows a slope face-on, eave at the bottom, or a roof in
/// section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stroke {
    /// A piece of roof: a closed outline.
    Roof(&'static [[f32; 2]]),
    /// An edge, a wall, flashing: a bold line.
    Edge(&'static [[f32; 2]]),
    /// A limit: a dashed line.
    Limit(&'static [[f32; 2]]),
    /// A required clear area: a closed outline, hatched.
    Free(&'static [[f32; 2]]),
    /// A module: lower left corner, width and height.
    Module([f32; 4]),
    /// What breaks the rule, given likewise.
    Wrong([f32; 4]),
    /// A chimney, a window, a firebrand, given likewise.
    Thing([f32; 4]),
    /// A pipe: centre and radius.
    Pipe([f32; 3]),
    /// A dimension, from one point to another.
    Measure([f32; 2], [f32; 2]),
    /// A path of water, wind or a person.
    Way([f32; 2], [f32; 2]),
}

/// Width of the canvas.
pub const WIDE: f32 = 100.0;
/// Height of the canvas.
pub const HIGH: f32 = 60.0;

/// The slope of most sketches.
pub(crate) const SLOPE: Stroke = Stroke::Roof(&[[8.0, 8.0], [92.0, 8.0], [92.0, 52.0], [8.0, 52.0]]);

#[cfg(test)]
mod tests {
    use super::*;
    use crate::RULES;

    /// All points of a stroke; the corners of a box, the extreme points of a pipe.
    fn points(stroke: &Stroke) -> Vec<[f32; 2]> {
        match *stroke {
            Stroke::Roof(points) | Stroke::Edge(points) | Stroke::Limit(points) | Stroke::Free(points) => {
                points.to_vec()
            }
            Stroke::Module([x, y, w, h]) | Stroke::Wrong([x, y, w, h]) | Stroke::Thing([x, y, w, h]) => {
                vec![[x, y], [x + w, y], [x + w, y + h], [x, y + h]]
            }
            Stroke::Pipe([x, y, r]) => vec![[x - r, y], [x, y - r], [x + r, y], [x, y + r]],
            Stroke::Measure(a, b) | Stroke::Way(a, b) => vec![a, b],
        }
    }

    #[test]
    fn every_rule_has_its_own_sketch_within_the_canvas() {
        for (at, rule) in RULES.iter().enumerate() {
            assert!(rule.sketch.len() >= 2, "{}", rule.code);
            for [x, y] in rule.sketch.iter().flat_map(points) {
                assert!((0.0..=WIDE).contains(&x) && (0.0..=HIGH).contains(&y), "{}: {x}, {y}", rule.code);
            }
            for other in &RULES[..at] {
                assert_ne!(rule.sketch, other.sketch, "{} and {}", rule.code, other.code);
            }
        }
    }
}
