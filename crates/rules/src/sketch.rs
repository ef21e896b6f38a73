//! Small drawings: what a rule is about, without a word.

/// A stroke of a sketch, on a ground [`WIDE`] by [`HIGH`], y up. A slope is seen square from the front, its eave below; or a roof
/// in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stroke {
    /// A piece of roof: a closed outline.
    Roof(&'static [[f32; 2]]),
    /// An edge, a wall, a sheet of metal: a line that stands out.
    Edge(&'static [[f32; 2]]),
    /// Where a limit runs: broken.
    Limit(&'static [[f32; 2]]),
    /// What must be free: a closed outline, hatched.
    Free(&'static [[f32; 2]]),
    /// A module: its lower left corner, its width and height.
    Module([f32; 4]),
    /// What breaks the rule, in the same way.
    Wrong([f32; 4]),
    /// A chimney, a window, a firebrand, in the same way.
    Thing([f32; 4]),
    /// A pipe: its middle and radius.
    Pipe([f32; 3]),
    /// What is measured, from one point to another.
    Measure([f32; 2], [f32; 2]),
    /// A way that somebody or something goes: water, wind, a person.
    Way([f32; 2], [f32; 2]),
}

/// How wide the ground of a sketch is.
pub const WIDE: f32 = 100.0;
/// How high the ground of a sketch is.
pub const HIGH: f32 = 60.0;

/// The slope that most sketches are drawn on.
pub(crate) const SLOPE: Stroke = Stroke::Roof(&[[8.0, 8.0], [92.0, 8.0], [92.0, 52.0], [8.0, 52.0]]);

#[cfg(test)]
mod tests {
    use super::*;
    use crate::RULES;

    /// All points of a stroke; the corners of a box, the ends of a pipe's width and height.
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
    fn every_rule_has_a_sketch_of_its_own_that_lies_on_its_ground() {
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
