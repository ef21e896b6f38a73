//! Label placement for paper: labels are measured in the sheets' typeface and placed clear of everything that must stay visible.
//! A label that does not fit at its thing moves out with a leader; failing that it is listed beside the drawing, with a number at
//! the thing. None is dropped.

use crate::drawing::{Ink, Shape};
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_labels::{Anchor, Body, How, Label, Obstacle, Over, Scene, Try, Weight, place};

/// Upper bound on the average character width of the sheets' typeface, as a share of the size.
const WIDE: f64 = 0.6;
/// Minimum clearance around labels, points.
const CLEAR: f64 = 0.5;
/// Sides of a thing to try for its label, below first.
pub(crate) const BELOW: &[(i8, i8)] = &[(0, -1), (0, 1), (1, 0), (-1, 0), (1, -1), (-1, -1), (1, 1), (-1, 1)];
/// On the thing, then around it.
const ON_IT: &[(i8, i8)] = &[(0, 0), (0, -1), (0, 1), (1, 0), (-1, 0)];

/// The labels of a drawing and the obstacles they avoid.
pub(crate) struct Labels {
    /// Metres of the drawing per point of paper.
    point: f64,
    bounds: Rect,
    obstacles: Vec<Obstacle>,
    wanted: Vec<Wanted>,
}

/// A label to place.
pub(crate) struct Wanted {
    /// Lower ranks are placed first.
    pub(crate) rank: u8,
    /// Number of the thing it names.
    pub(crate) names: Option<u32>,
    /// Where it belongs.
    pub(crate) anchor: Anchor,
    /// The text in full, then shorter forms.
    pub(crate) texts: Vec<String>,
    /// Text size.
    pub(crate) size: f32,
    /// The entry beside the drawing if there is no room.
    pub(crate) told: String,
}

impl Labels {
    /// For a drawing scaled to fit a width and height in points.
    pub(crate) fn new(bounds: Rect, room: (f32, f32)) -> Self {
        let size = bounds.size();
        let point = (size.x / f64::from(room.0)).max(size.y / f64::from(room.1));
        Self { point, bounds, obstacles: Vec::new(), wanted: Vec::new() }
    }

    /// Converts points to metres of the drawing.
    pub(crate) fn points(&self, points: f64) -> f64 {
        points * self.point
    }

    /// Keeps words off a rectangle.
    pub(crate) fn take_rect(&mut self, rect: Rect) {
        self.obstacles.push(Obstacle { body: Body::Rect(rect), weight: Weight::Solid, of: None });
    }

    /// Keeps labels off a line of the given width in points, except labels that name it.
    pub(crate) fn take_line(&mut self, from: DVec2, to: DVec2, width: f32, weight: Weight, of: Option<u32>) {
        let body = Body::Line(from, to, self.points(f64::from(width) / 2.0));
        self.obstacles.push(Obstacle { body, weight, of });
    }

    fn size(&self, text: &str, size: f32) -> DVec2 {
        let size = f64::from(size);
        dvec2(text.chars().count() as f64 * size * WIDE + 2.0, size * 1.2) * self.point
    }

    /// Queues a label.
    pub(crate) fn want(&mut self, wanted: Wanted) {
        self.wanted.push(wanted);
    }

    /// Placed labels with their leaders, and the entries listed beside the drawing.
    pub(crate) fn placed(self) -> (Vec<Shape>, Vec<String>) {
        let leader = How::Leader(self.points(48.0));
        let labels: Vec<Label> = self
            .wanted
            .iter()
            .map(|it| {
                let look = |text: &String, how| Try { size: self.size(text, it.size), how };
                let home = it.texts.iter().map(|text| look(text, How::Home));
                let out = it
                    .texts
                    .last()
                    .into_iter()
                    .flat_map(|text| [look(text, How::Overhanging), look(text, leader)]);
                Label {
                    rank: it.rank,
                    names: it.names,
                    anchor: it.anchor.clone(),
                    tries: home.chain(out).collect(),
                    over: Over::Ground,
                }
            })
            .collect();
        let clear = self.points(CLEAR);
        let mut scene = Scene { clip: self.bounds, obstacles: self.obstacles.clone(), labels, clear };
        let places = place(&scene);
        let mut shapes = Vec::new();
        let mut left = Vec::new();
        for (wanted, placed) in self.wanted.iter().zip(&places) {
            let Some(placed) = placed else {
                left.push(wanted);
                continue;
            };
            let taken = Body::Convex(placed.corners().to_vec());
            scene.obstacles.push(Obstacle { body: taken, weight: Weight::Solid, of: None });
            if let Some((a, b)) = placed.leader {
                shapes.push(leader_line(a, b));
                let body = Body::Line(a, b, 0.0);
                scene.obstacles.push(Obstacle { body, weight: Weight::Solid, of: None });
            }
            // The full text comes first among the candidates; attempts past the end are for the shortest form.
            let text = wanted.texts.get(placed.nth).or(wanted.texts.last()).cloned().unwrap_or_default();
            shapes.push(Shape::Words { at: placed.at, turn: placed.turn, size: wanted.size, text });
        }
        // A number at each thing whose label did not fit. If even the number does not fit, the entry says what it belongs to.
        let numbers: Vec<String> = (1..=left.len()).map(|number| format!("({number})")).collect();
        scene.labels = left
            .iter()
            .zip(&numbers)
            .map(|(it, number)| {
                let thing = match &it.anchor {
                    Anchor::Around { thing, .. } => *thing,
                    Anchor::Along { from, to, .. } => {
                        Rect { min: from.midpoint(*to), max: from.midpoint(*to) }
                    }
                    Anchor::Within { home, .. } | Anchor::Fixed(home) => Rect { min: *home, max: *home },
                };
                let size = self.size(number, it.size);
                Label {
                    rank: it.rank,
                    names: it.names,
                    anchor: Anchor::Around { thing, gap: clear, sides: ON_IT },
                    tries: vec![Try { size, how: How::Home }, Try { size, how: leader }],
                    over: Over::Ground,
                }
            })
            .collect();
        for ((wanted, number), placed) in left.iter().zip(&numbers).zip(place(&scene)) {
            let Some(placed) = placed else { continue };
            if let Some((a, b)) = placed.leader {
                shapes.push(leader_line(a, b));
            }
            shapes.push(Shape::Words {
                at: placed.at,
                turn: placed.turn,
                size: wanted.size,
                text: number.clone(),
            });
        }
        let beside = left.iter().zip(&numbers).map(|(it, number)| format!("{number} {}", it.told));
        (shapes, beside.collect())
    }
}

fn leader_line(a: DVec2, b: DVec2) -> Shape {
    Shape::Line { points: vec![a, b], width: 0.4, dashes: Vec::new(), ink: Ink::Leader }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rect(x: f64, y: f64, wide: f64, high: f64) -> Rect {
        Rect::at(dvec2(x, y), dvec2(wide, high))
    }

    fn want(texts: &[&str], at: Rect) -> Wanted {
        Wanted {
            rank: 0,
            names: None,
            anchor: Anchor::Around { thing: at, gap: 0.0, sides: BELOW },
            texts: texts.iter().map(|text| (*text).to_owned()).collect(),
            size: 5.0,
            told: format!("{} of it", texts[0]),
        }
    }

    fn texts(shapes: &[Shape]) -> Vec<&str> {
        let words = shapes.iter().filter_map(|shape| match shape {
            Shape::Words { text, .. } => Some(text.as_str()),
            _ => None,
        });
        words.collect()
    }

    #[test]
    fn labels_go_below_then_out_then_beside_the_drawing_with_a_number() {
        let labels = || Labels::new(rect(0.0, 0.0, 100.0, 100.0), (100.0, 100.0));
        let thing = rect(40.0, 40.0, 20.0, 20.0);
        let mut free = labels();
        free.want(want(&["four"], thing));
        let (shapes, beside) = free.placed();
        // Four letters of 5 points are 12 wide plus a point on each side, 6 high: their centre is 3 below the thing.
        let Some(Shape::Words { at, .. }) = shapes.first() else { panic!() };
        assert_eq!((*at, beside.len()), (dvec2(50.0, 37.0), 0));

        let mut shut = labels();
        shut.take_rect(rect(0.0, 0.0, 100.0, 100.0));
        shut.want(want(&["four"], thing));
        let (shapes, beside) = shut.placed();
        assert!(beside == ["(1) four of it"] && texts(&shapes).is_empty(), "no room at all");

        let mut full = labels();
        for _ in 0..40 {
            full.want(want(&["a long name indeed", "a name"], thing));
        }
        let (shapes, beside) = full.placed();
        let numbers = texts(&shapes).iter().filter(|text| text.starts_with('(')).count();
        let led = shapes.iter().filter(|shape| matches!(shape, Shape::Line { .. })).count();
        assert!(beside.len() > 1 && led > 1, "{beside:?} {led}");
        assert_eq!(texts(&shapes).len() - numbers + beside.len(), 40, "each is told");
    }
}
