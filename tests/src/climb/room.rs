//! Where modules of one size may stand on a face, by height, and how many fit in a row there.

use super::limits::{Limits, MET};
use super::shape::{Stretch, Swept, Thing, inside};
use chalkcourse_geometry::{DVec2, Polygon, Rect};

/// Margin at the ends of every interval, so that rounding does not decide.
const HAIR: f64 = 1e-8;
/// Sampling distance of heights; between two samples that differ, the change is located by bisection.
const STEP: f64 = 0.025;

/// The room of a face for modules of one size.
#[derive(Clone, Debug)]
pub(super) struct Room {
    pub(super) size: DVec2,
    modules: Vec<Swept>,
    rail: Vec<Swept>,
    rail_reach: f64,
    sides: Vec<(DVec2, DVec2)>,
    bounds: Rect,
}

impl Room {
    pub(super) fn of(face: &Polygon, limits: &Limits, size: DVec2) -> Self {
        let rail = DVec2::new(size.x, limits.rail_reach);
        Self {
            size,
            modules: limits.modules.iter().map(|thing| Swept::of(thing, size)).collect(),
            rail: limits.rail.iter().map(|thing| Swept::of(thing, rail)).collect(),
            rail_reach: limits.rail_reach,
            sides: face.sides().map(|(_, _, a, b)| (a, b)).collect(),
            bounds: face.bounds().unwrap_or(Rect { min: DVec2::ZERO, max: DVec2::ZERO }),
        }
    }

    /// The room with more obstacles.
    pub(super) fn without(&self, things: impl IntoIterator<Item = Thing>) -> Self {
        let mut room = self.clone();
        room.modules.extend(things.into_iter().map(|thing| Swept::of(&thing, self.size)));
        room
    }

    /// Heights of the lower edge of modules that are within the face's bounds.
    pub(super) fn heights(&self) -> (f64, f64) {
        (self.bounds.min.y - MET, self.bounds.max.y - self.size.y + MET)
    }

    pub(super) fn width(&self) -> (f64, f64) {
        (self.bounds.min.x, self.bounds.max.x)
    }

    /// Intervals along the eave where modules may start at height `v`; with `lowest` including the limits of their base
    /// rail.
    pub(super) fn starts(&self, v: f64, lowest: bool) -> Vec<Stretch> {
        let mut out = Vec::new();
        for thing in &self.modules {
            thing.at(v, &mut out);
        }
        if lowest {
            for thing in &self.rail {
                thing.at(v - self.rail_reach, &mut out);
            }
        }
        out.sort_by(|a, b| a.0.total_cmp(&b.0));
        let half = self.size / 2.0;
        let mut free = Vec::new();
        for (from, to) in inside(&self.sides, v + half.y) {
            let (mut from, to) = (from - half.x, to - half.x);
            for &(start, end) in &out {
                if end <= from {
                    continue;
                }
                if start >= to {
                    break;
                }
                if start - from > 2.0 * HAIR {
                    free.push((from + HAIR, start - HAIR));
                }
                from = from.max(end);
            }
            if to - from > 2.0 * HAIR {
                free.push((from + HAIR, to - HAIR));
            }
        }
        free
    }

    /// The most modules in a row at height `v`, with starts at least `apart` from each other.
    pub(super) fn most(&self, v: f64, apart: f64, lowest: bool) -> usize {
        pack(&self.starts(v, lowest), apart).len()
    }

    /// The heights where the count of a row changes, from the eave up.
    pub(super) fn steps(&self, apart: f64, lowest: bool) -> Vec<Step> {
        let (low, high) = self.heights();
        let mut steps: Vec<Step> = Vec::new();
        if high < low {
            return steps;
        }
        let many = ((high - low) / STEP).ceil() as usize + 1;
        let mut last = (low, self.most(low, apart, lowest));
        steps.push(Step { from: last.0, most: last.1 });
        for i in 1..=many {
            let v = (low + STEP * i as f64).min(high);
            let next = (v, self.most(v, apart, lowest));
            if next.1 != last.1 {
                let from = self.change(last, next, apart, lowest);
                steps.push(Step { from, most: next.1 });
            }
            last = next;
        }
        steps
    }

    /// The height between two where the count changes: on the side with the greater count.
    fn change(&self, low: (f64, usize), high: (f64, usize), apart: f64, lowest: bool) -> f64 {
        let (mut a, mut b) = (low.0, high.0);
        while b - a > 1e-8 {
            let middle = (a + b) / 2.0;
            if self.most(middle, apart, lowest) == low.1 {
                a = middle;
            } else {
                b = middle;
            }
        }
        // A row with the greater count is still possible at the end of its range.
        if high.1 > low.1 { b } else { b.max(a) }
    }
}

/// From this height on, a row holds at most this many modules.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    pub(super) from: f64,
    pub(super) most: usize,
}

/// The most modules at a height.
pub(super) fn at(steps: &[Step], v: f64) -> usize {
    let after = steps.partition_point(|step| step.from <= v);
    after.checked_sub(1).map_or(0, |index| steps[index].most)
}

/// The most starts in the given intervals, each as far left as possible.
pub(super) fn pack(free: &[Stretch], apart: f64) -> Vec<f64> {
    let mut placed: Vec<f64> = Vec::new();
    for &(from, to) in free {
        let mut next = placed.last().map_or(from, |last| from.max(last + apart));
        while next <= to {
            placed.push(next);
            next += apart;
        }
    }
    placed
}

/// As many, each as far right as possible.
pub(super) fn pack_right(free: &[Stretch], apart: f64) -> Vec<f64> {
    let turned: Vec<Stretch> = free.iter().rev().map(|&(from, to)| (-to, -from)).collect();
    let mut placed: Vec<f64> = pack(&turned, apart).into_iter().map(|u| -u).collect();
    placed.reverse();
    placed
}
