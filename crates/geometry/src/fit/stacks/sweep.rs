//! The best heights up to those of given places, column by column.

use super::{StackCosts, Want};

/// The best gain by the height of the last column and, if numbers are requested, by the tiles so far.
pub(super) struct Sweep<'a> {
    costs: &'a StackCosts,
    value: f64,
    /// Numbers that are distinguished: 1 if none are.
    counts: usize,
    counting: bool,
    highest: usize,
    gains: Vec<f64>,
}

impl<'a> Sweep<'a> {
    pub(super) fn new(costs: &'a StackCosts, want: Want, heights: &[usize], tiles: usize) -> Self {
        let highest = heights.iter().copied().max().unwrap_or(0);
        let (value, counts, counting) = match want {
            Want::Worth(value) => (value, 1, false),
            Want::Numbers(_, to) => (0.0, to.min(tiles) + 1, true),
        };
        let mut gains = vec![f64::NEG_INFINITY; (highest + 1) * counts];
        if let Some(empty) = gains.first_mut() {
            *empty = 0.0;
        }
        Self { costs, value, counts, counting, highest, gains }
    }

    fn gain(&self, height: usize, count: usize) -> f64 {
        // A state of the sweep.
        debug_assert!(height <= self.highest && count < self.counts);
        self.gains.get(height * self.counts + count).copied().unwrap_or(f64::NEG_INFINITY)
    }

    /// Advances to a column of at most some height. `marks` gets, for each state, the height before.
    pub(super) fn column(&mut self, most: usize, mut marks: Option<&mut Vec<u32>>) {
        let (counts, costs) = (self.counts, self.costs);
        let mut next = vec![f64::NEG_INFINITY; self.gains.len()];
        if let Some(marks) = &mut marks {
            marks.resize(self.gains.len(), 0);
        }
        let mut put = |height: usize, count: usize, gain: f64, from: usize| {
            let slot = height * counts + count;
            if let Some(best) = next.get_mut(slot)
                && gain > *best
            {
                *best = gain;
                if let Some(mark) = marks.as_mut().and_then(|marks| marks.get_mut(slot)) {
                    *mark = from as u32;
                }
            }
        };
        let stepped = costs.head_corner + costs.inside_corner;
        let raised = costs.foot_corner + costs.head_corner;
        for count in 0..counts {
            let to = |height: usize| if self.counting { count + height } else { count };
            let worth = |height: usize| self.value * height as f64 - costs.foot - costs.head;
            put(0, count, self.gain(0, count), 0);
            // The best height to step up from, scanning from below; and the best to step down from, scanning from
            // above.
            let mut up = (f64::NEG_INFINITY, 0);
            for height in 1..=most {
                if to(height) >= counts {
                    break;
                }
                let side = costs.side * height as f64;
                let here = self.gain(height, count);
                put(height, to(height), here + worth(height), height);
                put(height, to(height), self.gain(0, count) - raised - side + worth(height), 0);
                put(height, to(height), up.0 - stepped - side + worth(height), up.1);
                if here + side > up.0 {
                    up = (here + side, height);
                }
            }
            let mut down = (f64::NEG_INFINITY, 0);
            for height in (0..=self.highest).rev() {
                let side = costs.side * height as f64;
                if height == 0 {
                    put(0, count, down.0 - raised, down.1);
                } else if height <= most && to(height) < counts {
                    put(height, to(height), down.0 - stepped + side + worth(height), down.1);
                }
                let here = self.gain(height, count) - side;
                if here > down.0 {
                    down = (here, height);
                }
            }
        }
        self.gains = next;
    }

    /// The gain of each number if nothing follows.
    pub(super) fn ends(&self) -> Vec<f64> {
        (0..self.counts)
            .map(|count| {
                let of = |height| self.gain(height, count) - self.costs.step(height, 0);
                (0..=self.highest).map(of).fold(f64::NEG_INFINITY, f64::max)
            })
            .collect()
    }

    /// The heights of the best end with a number.
    pub(super) fn back(&self, trace: &[Vec<u32>], number: usize) -> Vec<usize> {
        let mut count = if self.counting { number } else { 0 };
        let of = |height: &usize| self.gain(*height, count) - self.costs.step(*height, 0);
        let last = (0..=self.highest).max_by(|a, b| of(a).total_cmp(&of(b)));
        let mut height = last.unwrap_or(0);
        let mut heights = vec![0; trace.len()];
        for (place, marks) in heights.iter_mut().zip(trace).rev() {
            *place = height;
            // A state of the sweep.
            debug_assert!(height <= self.highest && count < self.counts);
            let before = marks.get(height * self.counts + count).copied().unwrap_or(0);
            if self.counting {
                count = count.saturating_sub(height);
            }
            height = before as usize;
        }
        heights
    }
}
