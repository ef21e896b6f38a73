//! Places for words on a drawing, where they lie on nothing that must be seen: not on one another, on dimensions or on what
//! comes through the roof.

use crate::drawing::Shape;
use chalkcourse_geometry::{DVec2, Rect, dvec2};

/// No letter of the sheets' type is wider than this on average, as a share of its size.
const WIDE: f64 = 0.6;

/// What is taken on a drawing, and how large a point is on it.
pub(crate) struct Labels {
    /// Corners of what is taken, convex, in order.
    taken: Vec<Vec<DVec2>>,
    /// Metres of the drawing in a point of paper.
    point: f64,
    bounds: Rect,
    beside: Vec<String>,
}

/// Where words could stand: their middle, and how far they are turned.
pub(crate) type Spot = (DVec2, f64);

impl Labels {
    /// On a drawing that is put into so many points of width and height.
    pub(crate) fn new(bounds: Rect, room: (f32, f32)) -> Self {
        let size = bounds.size();
        let point = (size.x / f64::from(room.0)).max(size.y / f64::from(room.1));
        Self { taken: Vec::new(), point, bounds, beside: Vec::new() }
    }

    /// Points as metres of the drawing.
    pub(crate) fn points(&self, points: f64) -> f64 {
        points * self.point
    }

    /// Takes the room of a rectangle.
    pub(crate) fn take_rect(&mut self, rect: Rect) {
        self.taken.push(rect.corners().to_vec());
    }

    /// Takes the room of a line, three points wide.
    pub(crate) fn take_line(&mut self, from: DVec2, to: DVec2) {
        let aside = (to - from).perp().normalize_or_zero() * self.points(1.5);
        self.taken.push(vec![from + aside, to + aside, to - aside, from - aside]);
    }

    fn corners(&self, text: &str, size: f32, (at, turn): Spot) -> Vec<DVec2> {
        let size = f64::from(size);
        let half = dvec2(text.chars().count() as f64 * size * WIDE / 2.0 + 1.0, size * 0.6) * self.point;
        let along = DVec2::from_angle(turn);
        [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]
            .map(|(x, y)| at + along * (half.x * x) + along.perp() * (half.y * y))
            .to_vec()
    }

    /// How long words are on the drawing, metres.
    pub(crate) fn length(&self, text: &str, size: f32) -> f64 {
        text.chars().count() as f64 * f64::from(size) * WIDE * self.point
    }

    /// The words at the first spot where they lie on nothing, and within the drawing; `None` where there is none.
    pub(crate) fn put(
        &mut self,
        text: String,
        size: f32,
        spots: impl IntoIterator<Item = Spot>,
    ) -> Option<Shape> {
        let free = |corners: &Vec<DVec2>| {
            corners.iter().all(|corner| self.bounds.contains(*corner))
                && !self.taken.iter().any(|other| overlap(corners, other))
        };
        let (corners, (at, turn)) = spots
            .into_iter()
            .map(|spot| (self.corners(&text, size, spot), spot))
            .find(|(corners, _)| free(corners))?;
        self.taken.push(corners);
        Some(Shape::Words { at, turn, size, text })
    }

    /// A number close to a place, for words that stand beside the drawing: for those that find no free spot on it. Nothing is left
    /// out; where not even the number has room, the words must tell by themselves what they are of.
    pub(crate) fn list(&mut self, told: &str, size: f32, near: Rect) -> Option<Shape> {
        let number = format!("({})", self.beside.len() + 1);
        self.beside.push(format!("{number} {told}"));
        let spots = around(near, self, &number, size, 3);
        self.put(number, size, std::iter::once((near.centre(), 0.0)).chain(spots))
    }

    /// What stands beside the drawing.
    pub(crate) fn into_beside(self) -> Vec<String> {
        self.beside
    }
}

/// Whether two convex shapes have more than a border in common: no side of either parts them.
fn overlap(one: &[DVec2], other: &[DVec2]) -> bool {
    let parts = |a: &[DVec2], b: &[DVec2]| {
        (0..a.len()).any(|i| {
            let side = a[(i + 1) % a.len()] - a[i];
            let axis = side.perp().normalize_or_zero();
            let reach = |shape: &[DVec2]| {
                shape
                    .iter()
                    .map(|p| p.dot(axis))
                    .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| (low.min(v), high.max(v)))
            };
            let ((low, high), (least, most)) = (reach(a), reach(b));
            axis != DVec2::ZERO && (high <= least + 1e-9 || most <= low + 1e-9)
        })
    };
    !parts(one, other) && !parts(other, one)
}

/// Spots around a rectangle for words, the nearest first, below before above, in so many steps away from it.
pub(crate) fn around(rect: Rect, labels: &Labels, text: &str, size: f32, steps: u8) -> Vec<Spot> {
    let (half, high) = (labels.length(text, size) / 2.0, labels.points(f64::from(size)));
    let (middle, out) = (rect.centre(), rect.size() / 2.0);
    let mut spots = Vec::new();
    for step in 0..steps {
        let far = high * (0.75 + f64::from(step));
        let side = out.x + half + labels.points(3.0);
        for along in [0.0, half * 0.7, -half * 0.7] {
            spots.push((middle + dvec2(along, -out.y - far), 0.0));
            spots.push((middle + dvec2(along, out.y + far), 0.0));
        }
        let up = high * f64::from(step) * 0.6;
        for up in [up, -up] {
            spots.push((middle + dvec2(side, up), 0.0));
            spots.push((middle + dvec2(-side, up), 0.0));
        }
    }
    spots
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rect(x: f64, y: f64, wide: f64, high: f64) -> Rect {
        Rect::at(dvec2(x, y), dvec2(wide, high))
    }

    #[test]
    fn words_go_where_nothing_lies() {
        let mut labels = Labels::new(rect(0.0, 0.0, 100.0, 100.0), (100.0, 100.0));
        labels.take_rect(rect(40.0, 40.0, 20.0, 20.0));
        let spots = [(dvec2(50.0, 50.0), 0.0), (dvec2(50.0, 30.0), 0.0), (dvec2(50.0, 80.0), 0.0)];
        // Four letters of 5 points are 12 wide and a point on each side, 6 high.
        let Some(Shape::Words { at, .. }) = labels.put("four".into(), 5.0, spots) else { panic!() };
        assert_eq!(at, dvec2(50.0, 30.0));
        let Some(Shape::Words { at, .. }) = labels.put("four".into(), 5.0, spots) else { panic!() };
        assert_eq!(at, dvec2(50.0, 80.0));
        assert!(labels.put("four".into(), 5.0, spots).is_none());
        assert!(labels.put("four".into(), 5.0, [(dvec2(2.0, 2.0), 0.0)]).is_none(), "beyond the border");
        // What has no spot is told beside the drawing, with a number at it.
        let Some(Shape::Words { text, at, .. }) = labels.list("four feet", 5.0, rect(40.0, 40.0, 20.0, 20.0))
        else {
            panic!()
        };
        assert_eq!(text, "(1)");
        assert!(at.distance(dvec2(50.0, 50.0)) < 25.0, "{at}");
        labels.take_rect(rect(0.0, 0.0, 100.0, 100.0));
        assert!(labels.list("no room at all", 5.0, rect(1.0, 1.0, 1.0, 1.0)).is_none());
        assert_eq!(labels.into_beside(), ["(1) four feet", "(2) no room at all"]);
    }

    #[test]
    fn turned_shapes_overlap_by_what_they_are_and_not_by_their_bounds() {
        let square = |at: DVec2, turn: f64| {
            [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]
                .map(|(x, y)| at + DVec2::from_angle(turn).rotate(dvec2(x, y)))
                .to_vec()
        };
        let eighth = std::f64::consts::FRAC_PI_4;
        // By hand: a square of 2 turned by 45° reaches √2 along its diagonal, and 1 along the diagonal of the other.
        assert!(!overlap(&square(dvec2(0.0, 0.0), 0.0), &square(dvec2(1.8, 1.8), eighth)));
        assert!(overlap(&square(dvec2(0.0, 0.0), 0.0), &square(dvec2(1.6, 1.6), eighth)));
        assert!(!overlap(&square(dvec2(0.0, 0.0), 0.0), &square(dvec2(2.0, 0.0), 0.0)), "side by side");
    }
}
