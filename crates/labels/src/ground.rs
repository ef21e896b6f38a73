//! Occupied areas of a drawing, in a uniform grid, so that a rectangle is tested only against its neighbours.

use crate::spots::within;
use crate::{Body, Over, Placed, Scene, Weight};
use chalkcourse_geometry::{DVec2, Rect, dvec2};

/// Grid cells along the longer side of the drawing.
const CELLS: f64 = 28.0;

/// The owner of an occupied area.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Who {
    /// An obstacle, with its thing if it has one.
    Thing(Weight, Option<u32>),
    /// A label, by index.
    Label(usize),
    /// The leader of a label.
    Leader(usize),
}

struct Taken {
    corners: Vec<DVec2>,
    bounds: Rect,
    who: Who,
    /// The label moved away from here.
    gone: bool,
}

pub(crate) struct Ground {
    clip: Rect,
    cell: f64,
    columns: usize,
    cells: Vec<Vec<u32>>,
    taken: Vec<Taken>,
    /// The areas of each label; the last entry is for the label that is trying places.
    of_labels: Vec<Vec<u32>>,
    clear: f64,
}

/// What a place collides with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Under {
    /// Nothing that matters to its label.
    Free,
    /// One other label or its leader, and nothing else that matters.
    One(usize),
    /// More than that.
    Much,
}

impl Ground {
    pub(crate) fn of(scene: &Scene) -> Self {
        let size = scene.clip.size().max(DVec2::splat(1.0));
        let cell = size.max_element() / CELLS;
        let columns = (size.x / cell).ceil() as usize + 1;
        let rows = (size.y / cell).ceil() as usize + 1;
        let mut ground = Self {
            clip: scene.clip,
            cell,
            columns,
            cells: vec![Vec::new(); columns * rows],
            taken: Vec::with_capacity(scene.obstacles.len() + scene.labels.len()),
            of_labels: vec![Vec::new(); scene.labels.len() + 1],
            clear: scene.clear,
        };
        for obstacle in &scene.obstacles {
            let who = Who::Thing(obstacle.weight, obstacle.of);
            match &obstacle.body {
                Body::Line(a, b, half) => ground.take_line(*a, *b, half + scene.clear, who),
                Body::Rect(rect) => ground.take(rect.grown(scene.clear).corners().to_vec(), who),
                Body::Convex(corners) => ground.take(corners.clone(), who),
            }
        }
        ground
    }

    /// The grid cells of a rectangle.
    fn cells_of(&self, rect: &Rect) -> impl Iterator<Item = usize> + use<> {
        let rows = self.cells.len() / self.columns;
        let columns = self.columns;
        let cell = |at: DVec2| (at - self.clip.min) / self.cell;
        let (least, most) = (cell(rect.min).max(DVec2::ZERO), cell(rect.max));
        // The cast maps negative values and NaN to 0.
        let (left, low) = (least.x as usize, least.y as usize);
        let beyond = most.x < 0.0 || most.y < 0.0;
        let right = if beyond { 0 } else { (most.x as usize).min(columns - 1) + 1 };
        let high = (most.y as usize).min(rows - 1) + 1;
        (low..high).flat_map(move |row| (left..right).map(move |column| row * columns + column))
    }

    fn put(&mut self, number: u32, rect: &Rect) {
        for cell in self.cells_of(rect) {
            if let Some(list) = self.cells.get_mut(cell)
                && list.last() != Some(&number)
            {
                list.push(number);
            }
        }
    }

    fn take(&mut self, corners: Vec<DVec2>, who: Who) {
        let Some(bounds) = Rect::around(corners.iter().copied()) else { return };
        if !corners.iter().all(|corner| corner.is_finite()) {
            return;
        }
        let number = self.taken.len() as u32;
        self.taken.push(Taken { corners, bounds, who, gone: false });
        self.put(number, &bounds);
    }

    /// Adds a line to the cells that it crosses, not to all of its bounding box.
    fn take_line(&mut self, a: DVec2, b: DVec2, half: f64, who: Who) {
        if !(a.is_finite() && b.is_finite() && half.is_finite()) {
            return;
        }
        let Some((a, b)) = within(a, b, &self.clip.grown(half)) else { return };
        let along = (b - a).normalize_or(DVec2::X) * half;
        let aside = along.perp();
        let corners = vec![a - along + aside, a - along - aside, b + along - aside, b + along + aside];
        let Some(bounds) = Rect::around(corners.iter().copied()) else { return };
        let number = self.taken.len() as u32;
        self.taken.push(Taken { corners, bounds, who, gone: false });
        // A line as wide as the drawing covers all of it.
        let steps = (a.distance(b) / self.cell).ceil().clamp(1.0, 4.0 * CELLS) as u32;
        for step in 0..steps {
            let at = |share: u32| a.lerp(b, f64::from(share) / f64::from(steps));
            let (from, to) = (at(step), at(step + 1));
            let piece = Rect { min: from.min(to), max: from.max(to) }.grown(half * 1.5);
            self.put(number, &piece);
        }
    }

    /// Occupies the place of a label.
    pub(crate) fn settle(&mut self, label: usize, placed: &Placed) {
        let first = self.taken.len() as u32;
        let grown = Placed { half: placed.half + DVec2::splat(self.clear), ..*placed };
        self.take(grown.corners().to_vec(), Who::Label(label));
        if let Some((a, b)) = placed.leader {
            self.take_line(a, b, 0.5 + self.clear, Who::Leader(label));
        }
        if let Some(numbers) = self.of_labels.get_mut(label) {
            numbers.extend(first..self.taken.len() as u32);
        }
    }

    /// Frees the place of a label.
    pub(crate) fn lift(&mut self, label: usize) {
        for number in self.of_labels.get_mut(label).map(std::mem::take).into_iter().flatten() {
            if let Some(taken) = self.taken.get_mut(number as usize) {
                taken.gone = true;
            }
        }
    }

    /// What a place collides with, for a label that names a thing.
    pub(crate) fn under(&self, placed: &Placed, names: Option<u32>, over: Over) -> Under {
        let bounds = placed.bounds();
        let edge = self.clip;
        if bounds.min.cmplt(edge.min).any() || bounds.max.cmpgt(edge.max).any() {
            return Under::Much;
        }
        let mut under = Under::Free;
        let on_label = |who: Who| match who {
            Who::Thing(weight, of) => {
                // A label with a leader must not lie on its own thing.
                let own = of.is_some() && of == names && placed.leader.is_none();
                let may = match weight {
                    Weight::Faint => over >= Over::Faint,
                    Weight::Ground => over >= Over::Ground,
                    Weight::Line | Weight::Solid => false,
                };
                !own && !may
            }
            Who::Label(_) | Who::Leader(_) => true,
        };
        if !self.meets(&placed.corners(), &bounds, &mut under, |taken| on_label(taken.who)) {
            return Under::Much;
        }
        if let Some((a, b)) = placed.leader {
            if !edge.contains(a) {
                return Under::Much;
            }
            // A leader may start under something solid: it leads the label out from under it.
            let on_leader = |taken: &Taken| match taken.who {
                Who::Thing(weight, of) => {
                    weight == Weight::Solid && (of.is_none() || of != names) && !holds(&taken.corners, a)
                }
                Who::Label(_) | Who::Leader(_) => true,
            };
            let line = Rect { min: a.min(b), max: a.max(b) };
            if !self.meets(&[a, b], &line, &mut under, on_leader) {
                return Under::Much;
            }
        }
        under
    }

    /// Adds to `under` what a convex shape collides with; false once that is more than one label.
    fn meets(
        &self,
        corners: &[DVec2],
        bounds: &Rect,
        under: &mut Under,
        counts: impl Fn(&Taken) -> bool,
    ) -> bool {
        for cell in self.cells_of(bounds) {
            for &number in self.cells.get(cell).into_iter().flatten() {
                let Some(taken) = self.taken.get(number as usize) else { continue };
                if taken.gone
                    || taken.bounds.overlap(bounds).min_element() < 0.0
                    || !counts(taken)
                    || !overlap(corners, &taken.corners)
                {
                    continue;
                }
                match (taken.who, *under) {
                    (Who::Label(it) | Who::Leader(it), Under::Free) => *under = Under::One(it),
                    (Who::Label(it) | Who::Leader(it), Under::One(other)) if it == other => {}
                    _ => return false,
                }
            }
        }
        true
    }
}

/// Whether a point is inside a convex shape.
fn holds(corners: &[DVec2], p: DVec2) -> bool {
    let sides = || corners.iter().zip(corners.iter().cycle().skip(1));
    let turns = || sides().map(|(a, b)| (*b - *a).perp_dot(p - *a));
    turns().all(|turn| turn >= 0.0) || turns().all(|turn| turn <= 0.0)
}

/// Whether two convex shapes overlap by more than a border: no side of either separates them. Two points are a line.
pub(crate) fn overlap(one: &[DVec2], other: &[DVec2]) -> bool {
    !parts(one, other) && !parts(other, one)
}

fn parts(a: &[DVec2], b: &[DVec2]) -> bool {
    a.iter().zip(a.iter().cycle().skip(1)).any(|(from, to)| {
        let axis = (*to - *from).perp().normalize_or_zero();
        let reach = |shape: &[DVec2]| {
            shape
                .iter()
                .map(|p| p.dot(axis))
                .fold(dvec2(f64::INFINITY, f64::NEG_INFINITY), |at, v| dvec2(at.x.min(v), at.y.max(v)))
        };
        let (one, other) = (reach(a), reach(b));
        axis != DVec2::ZERO && (one.y <= other.x + 1e-9 || other.y <= one.x + 1e-9)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rotated_shapes_overlap_by_shape_not_by_bounds() {
        let square = |x: f64, turn: f64| {
            Placed { at: dvec2(x, x), turn, half: DVec2::splat(1.0), nth: 0, leader: None }.corners()
        };
        let eighth = std::f64::consts::FRAC_PI_4;
        // By hand: a square of 2 turned by 45° extends 1 towards the corner of another, whose corner is √2 from its centre: they
        // touch at √2 + 1 = 2.414 along the diagonal, 1.707 along each axis.
        assert!(!overlap(&square(0.0, 0.0), &square(1.8, eighth)));
        assert!(overlap(&square(0.0, 0.0), &square(1.6, eighth)));
        let line = [dvec2(-3.0, 0.0), dvec2(3.0, 0.5)];
        assert!(overlap(&line, &square(0.0, eighth)) && !overlap(&line, &square(3.0, eighth)));
    }

    #[test]
    fn a_line_is_found_in_every_cell_that_it_runs_through() {
        let clip = Rect::at(DVec2::ZERO, dvec2(900.0, 500.0));
        let line = Body::Line(dvec2(-200.0, -80.0), dvec2(1200.0, 700.0), 1.0);
        let obstacles = vec![crate::Obstacle { body: line, weight: Weight::Line, of: None }];
        let ground = Ground::of(&Scene { clip, obstacles, labels: Vec::new(), clear: 0.0 });
        // y = −80 + (x + 200) · 780 / 1400, from (0, 31.4) to (841, 500).
        for x in (10..840).map(f64::from) {
            let at =
                dvec2(x, (x + 200.0) * 780.0 / 1400.0 - 80.0).max(DVec2::splat(3.0)).min(dvec2(897.0, 497.0));
            let small = Placed { at, turn: 0.0, half: DVec2::splat(2.0), nth: 0, leader: None };
            assert_eq!(ground.under(&small, None, Over::Ground), Under::Much, "{at}");
            let beside = Placed { at: at + dvec2(30.0, -25.0), ..small };
            if clip.grown(-5.0).contains(beside.at) {
                assert_eq!(ground.under(&beside, None, Over::Nothing), Under::Free, "{}", beside.at);
            }
        }
    }
}
