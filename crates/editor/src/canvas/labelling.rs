//! Labels of the drawing: collected while painting, then all placed at once without overlapping each other, dimensions,
//! penetrations or lines that they don't name, and painted last.

use super::brush::{Brush, fan_into};
use super::words::{ARROW, SIGN};
pub(super) use super::words::{Of, Show, Words};
use crate::theme;
use crate::widgets::severity_sign;
use chalkcourse_geometry::{DVec2, Polygon, dvec2};
use chalkcourse_labels::{Anchor, Body, How, Label, Last, Obstacle, Placed, Scene, Try, Weight};
use egui::epaint::TextShape;
use egui::{Align2, Color32, CornerRadius, Galley, Mesh, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2};
use std::sync::Arc;

/// Placement priorities: lower ranks are placed first.
pub(super) mod rank {
    pub(in super::super) const TYPED: u8 = 1;
    pub(in super::super) const FINDING: u8 = 2;
    pub(in super::super) const DIMENSION: u8 = 3;
    pub(in super::super) const BLOCK: u8 = 4;
    pub(in super::super) const PENETRATION: u8 = 5;
    pub(in super::super) const EDGE: u8 = 6;
    /// Defined by the rank of edges: the same rank, so that face names are placed before edge labels are moved to
    /// leaders.
    pub(in super::super) const FACE: u8 = EDGE;
    pub(in super::super) const COURSE: u8 = 7;
}

/// Ids of objects on the drawing, to relate them to their labels.
pub(super) mod thing {
    pub(in super::super) fn edge(face: usize, nth: usize) -> u32 {
        (face as u32) << 12 | nth as u32
    }
    pub(in super::super) fn dimension(nth: usize) -> u32 {
        1 << 30 | nth as u32
    }
}

/// Least gap between labels and obstacles, in points.
const CLEAR: f64 = 1.0;
/// How much of each corner of a label's background is cut off, in points.
const CUT: f64 = 2.5;
/// The sides of an object for its label, best first; y points down.
pub(super) const BELOW: &[(i8, i8)] = &[(0, 1), (0, -1), (1, 0), (-1, 0), (1, 1), (-1, 1), (1, -1), (-1, -1)];
pub(super) const RIGHT_BELOW: &[(i8, i8)] = &[(1, 1), (1, -1), (-1, 1), (-1, -1), (0, 1), (0, -1)];
pub(super) const ABOVE_RIGHT: &[(i8, i8)] = &[(1, -1), (1, 1), (-1, -1), (-1, 1), (0, -1), (0, 1)];
pub(super) const ON_IT: &[(i8, i8)] =
    &[(0, 0), (0, 1), (0, -1), (1, 0), (-1, 0), (1, 1), (-1, 1), (1, -1), (-1, -1)];
pub(super) const LEFT: &[(i8, i8)] = &[(-1, 0), (-1, 1), (-1, -1), (0, 1), (0, -1), (1, 0)];
pub(super) const OVER_IT: &[(i8, i8)] = &[(0, -1), (1, -1), (-1, -1), (1, 0), (-1, 0), (0, 1)];

/// A label of this frame; `placed` is `None` if there was no room and it is not drawn.
#[derive(Clone, Debug)]
pub(crate) struct Shown {
    pub(crate) of: Of,
    pub(crate) placed: Option<Placed>,
}

pub(super) fn point(at: Pos2) -> DVec2 {
    dvec2(f64::from(at.x), f64::from(at.y))
}

fn pos(at: DVec2) -> Pos2 {
    Pos2::new(at.x as f32, at.y as f32)
}

pub(super) fn rect(of: Rect) -> chalkcourse_geometry::Rect {
    chalkcourse_geometry::Rect { min: point(of.min), max: point(of.max) }
}

/// An anchor around an object on the screen.
pub(super) fn around(thing: Rect, gap: f32, sides: &'static [(i8, i8)]) -> Anchor {
    Anchor::Around { thing: rect(thing), gap: f64::from(gap), sides }
}

/// The bounding rectangle of a label on the screen.
pub(crate) fn bounds(placed: &Placed) -> Rect {
    let bounds = placed.bounds();
    Rect::from_min_max(pos(bounds.min), pos(bounds.max))
}

impl Brush {
    pub(super) fn galley(&self, words: &str, size: f32, color: Color32) -> Arc<Galley> {
        self.painter.layout_no_wrap(words.to_owned(), theme::font(size), color)
    }

    pub(super) fn small(&self, words: &str, color: Color32) -> Show {
        Show::Words(self.galley(words, theme::size::SMALL, color))
    }

    /// Collects a label.
    pub(super) fn say(&self, words: Words) {
        self.words.borrow_mut().push(words);
    }

    /// Text close to an object, or on a leader if there is no room.
    pub(super) fn say_at(&self, rank: u8, anchor: Anchor, words: &str, color: Color32) {
        let show = self.small(words, color);
        let tries = vec![(show.clone(), How::Home), (show, How::Leader(120.0))];
        self.say(Words::of(rank, anchor, tries, color));
    }

    /// Text at a fixed position in the frame of the drawing.
    pub(super) fn label(&self, at: Pos2, anchor: Align2, words: &str, size: f32, color: Color32) {
        let galley = self.galley(words, size, color);
        let anchor = Anchor::Fixed(point(anchor.anchor_size(at, galley.size()).center()));
        self.say(Words::of(0, anchor, vec![(Show::Words(galley), How::Home)], color));
    }

    /// Text along a line being drawn, on its left.
    pub(super) fn label_along(&self, a: Pos2, b: Pos2, words: &str, color: Color32) {
        let show = self.small(words, color);
        let (from, to) = (point(a), point(b));
        let anchor = Anchor::Along { from, to, beside: &[-1.0, 1.0], gap: 3.0, turned: true, home: 0.5 };
        self.say(Words::of(rank::TYPED, anchor, vec![(show, How::Home)], color));
    }

    fn keep(&self, body: Body, weight: Weight, of: Option<u32>) {
        self.obstacles.borrow_mut().push(Obstacle { body, weight, of });
    }

    /// Keeps labels off a line.
    pub(super) fn keep_off_line(&self, a: Pos2, b: Pos2, width: f32, weight: Weight, of: Option<u32>) {
        self.keep(Body::Line(point(a), point(b), f64::from(width) / 2.0), weight, of);
    }

    /// Keeps labels off a rectangle.
    pub(super) fn keep_off_rect(&self, of: Rect, weight: Weight) {
        self.keep(Body::Rect(rect(of)), weight, None);
    }

    /// Keeps labels off a convex shape.
    pub(super) fn keep_off_shape(&self, corners: &[Pos2], weight: Weight) {
        self.keep(Body::Convex(corners.iter().copied().map(point).collect()), weight, None);
    }

    /// Keeps labels off the border of a polygon in plan where possible.
    pub(super) fn keep_off_border(&self, plan: &Polygon) {
        for (_, _, a, b) in plan.sides() {
            let ends = [a, b].map(|end| self.space.screen_from_plan(end));
            self.keep_off_line(ends[0], ends[1], 1.0, Weight::Faint, None);
        }
    }

    /// Places the collected labels and paints them.
    pub(super) fn place_words(&self, last: &mut Last) -> Vec<Shown> {
        let words = self.words.take();
        let labels = words.iter().map(|it| Label {
            rank: it.rank,
            names: it.names,
            anchor: it.anchor.clone(),
            tries: it.tries.iter().map(|(show, how)| Try { size: show.size(), how: *how }).collect(),
            over: it.over,
        });
        let scene = Scene {
            clip: rect(self.space.area.shrink(2.0)),
            labels: labels.collect(),
            obstacles: self.obstacles.take(),
            clear: CLEAR,
        };
        let placed = last.place(scene);
        for (words, placed) in words.iter().zip(placed) {
            if let Some((a, b)) = placed.as_ref().and_then(|placed| placed.leader) {
                let stroke = Stroke::new(1.0, theme::faint(words.color, 170));
                self.painter.line_segment([pos(a), pos(b)], stroke);
                self.painter.circle_filled(pos(a), 1.8, words.color);
            }
        }
        self.paint_grounds(words.iter().zip(placed));
        for (words, placed) in words.iter().zip(placed) {
            if let Some(placed) = placed
                && let Some((show, _)) = words.tries.get(placed.nth)
            {
                self.paint_words(words, show, placed);
            }
        }
        words.into_iter().zip(placed).map(|(words, placed)| Shown { of: words.of, placed: *placed }).collect()
    }

    /// Label backgrounds as one mesh, since they don't overlap.
    fn paint_grounds<'a>(&self, all: impl Iterator<Item = (&'a Words, &'a Option<Placed>)>) {
        let mut grounds = Mesh::default();
        for (words, placed) in all {
            let Some(placed) = placed else { continue };
            let sign = words.tries.get(placed.nth).is_none_or(|(show, _)| matches!(show, Show::Sign(_)));
            if sign || words.framed {
                continue;
            }
            let (along, half) = (DVec2::from_angle(placed.turn), placed.half);
            let cut = CUT.min(half.min_element());
            let (long, high) = (half - DVec2::splat(cut), half);
            let corners =
                [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].into_iter().flat_map(|(x, y)| {
                    let ends = [dvec2(x * high.x, y * long.y), dvec2(x * long.x, y * high.y)];
                    // Go around the shape in one direction.
                    if x == y { ends } else { [ends[1], ends[0]] }
                });
            let on_screen = |at: DVec2| pos(placed.at + along.rotate(at));
            fan_into(&mut grounds, corners.map(on_screen), theme::faint(self.palette.panel, 225));
        }
        self.painter.add(Shape::mesh(grounds));
    }

    fn paint_words(&self, words: &Words, show: &Show, placed: &Placed) {
        let middle = pos(placed.at);
        let galley = match show {
            Show::Sign(severity) => {
                severity_sign(&self.painter, middle, SIGN, *severity, self.palette);
                return;
            }
            Show::Words(galley) | Show::Arrow(galley, _) => galley,
        };
        let half = Vec2::new(placed.half.x as f32, placed.half.y as f32);
        if words.framed {
            let fill = theme::faint(self.palette.panel, 225);
            let stroke = Stroke::new(1.0, words.color);
            if placed.turn == 0.0 {
                let ground = Rect::from_center_size(middle, half * 2.0);
                self.painter.rect(ground, CornerRadius::same(4), fill, stroke, StrokeKind::Inside);
            } else {
                let corners = placed.corners().map(pos).to_vec();
                self.painter.add(Shape::convex_polygon(corners, fill, stroke));
            }
        }
        let mut shift = Vec2::ZERO;
        if let Show::Arrow(_, way) = show {
            shift.x = -(ARROW + 4.0) / 2.0;
            let tail = middle + Vec2::new(half.x - 6.0 - ARROW / 2.0, 0.0) - *way * (ARROW / 2.0);
            self.painter.arrow(tail, *way * ARROW, Stroke::new(1.6, self.palette.quiet));
        }
        let turn = placed.turn as f32;
        let right = Vec2::angled(turn);
        let down = Vec2::new(-right.y, right.x);
        let size = galley.size();
        let corner = middle + right * (shift.x - size.x / 2.0) + down * (-size.y / 2.0);
        self.painter.add(TextShape::new(corner, Arc::clone(galley), words.color).with_angle(turn));
    }
}

#[cfg(test)]
mod tests;
