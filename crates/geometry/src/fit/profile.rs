//! The best choice of places of a grid, exact and with corners, by a sweep that remembers the last row of choices.

use super::cells::{Costs, Field};

/// The limit on the work of a sweep: states times places times counts. About a second.
const MOST_WORK: usize = 400_000_000;

pub(super) enum Swept {
    /// The grid is too wide for a sweep.
    TooWide,
    Stopped,
    /// Which cells to take. `None` if the number can't be reached.
    Best(Option<Vec<usize>>),
}

/// Takes `number` cells, or as many as pay, for the greatest worth. Exact.
pub(super) fn sweep(
    field: &Field<'_>,
    costs: &Costs,
    number: Option<usize>,
    stop: &dyn Fn() -> bool,
) -> Swept {
    // The sweep runs along the longer dimension; an empty place ends every line, and an empty line ends the grid.
    let across = field.columns > field.rows;
    let (length, width) = if across { (field.columns, field.rows) } else { (field.rows, field.columns) };
    let counts = number.map_or(1, |n| n + 1);
    let line = width + 1;
    let places = (length + 1) * line;
    let work = 1usize.checked_shl(line as u32 + 1).and_then(|s| s.checked_mul(counts)?.checked_mul(places));
    if line > 20 || work.is_none_or(|w| w > MOST_WORK) {
        return Swept::TooWide;
    }
    let costs = if across { Turned::across(costs) } else { Turned::along(costs) };
    let states = 1usize << (line + 1);
    let size = states * counts;
    let mut now = vec![f64::NEG_INFINITY; size];
    now[0] = 0.0;
    let mut next = now.clone();
    // For each place and state: whether the bit that was shifted out on the way here was set.
    let mut fell = vec![0u64; places * size.div_ceil(64)];
    let cell_at = |place: usize| {
        let (i, j) = (place / line, place % line);
        if across { field.at(i, j) } else { field.at(j, i) }
    };
    for place in 0..places {
        if stop() {
            return Swept::Stopped;
        }
        next.fill(f64::NEG_INFINITY);
        let cell = cell_at(place);
        let value = cell.map_or(0.0, |c| field.value(c));
        let marks = &mut fell[place * size.div_ceil(64)..(place + 1) * size.div_ceil(64)];
        for state in 0..states {
            for taken in 0..=usize::from(cell.is_some()) {
                let bit = |back: usize| state >> (back - 1) & 1 == 1;
                let gain = value * taken as f64 - costs.of(bit(1), bit(line), bit(line + 1), taken == 1);
                let to = (state << 1 | taken) & (states - 1);
                let step = if number.is_some() { taken } else { 0 };
                for count in 0..counts - step {
                    let before = now[state * counts + count];
                    let slot = to * counts + count + step;
                    if before + gain > next[slot] {
                        next[slot] = before + gain;
                        let mask = 1 << (slot % 64);
                        if bit(line + 1) { marks[slot / 64] |= mask } else { marks[slot / 64] &= !mask }
                    }
                }
            }
        }
        std::mem::swap(&mut now, &mut next);
    }
    // Everything is empty at the end: the last line and the ends of lines hold nothing.
    let mut count = counts - 1;
    if now[count] == f64::NEG_INFINITY {
        return Swept::Best(None);
    }
    let mut state = 0;
    let mut chosen = Vec::new();
    for place in (0..places).rev() {
        if state & 1 == 1 {
            chosen.extend(cell_at(place));
        }
        let slot = state * counts + count;
        let oldest = fell[place * size.div_ceil(64) + slot / 64] >> (slot % 64) & 1;
        if number.is_some() {
            count -= state & 1;
        }
        state = state >> 1 | (oldest as usize) << line;
    }
    chosen.sort_unstable();
    Swept::Best(Some(chosen))
}

/// Costs in the order of the sweep: between a place and the previous one in its line, and the one in the previous line.
struct Turned {
    before: f64,
    after: f64,
    line_before: f64,
    line_after: f64,
    outer: f64,
    inner: f64,
}

impl Turned {
    fn along(c: &Costs) -> Self {
        let (outer, inner) = (c.outer_corner, c.inner_corner);
        Self { before: c.side, after: c.side, line_before: c.head, line_after: c.foot, outer, inner }
    }
    fn across(c: &Costs) -> Self {
        let (outer, inner) = (c.outer_corner, c.inner_corner);
        Self { before: c.head, after: c.foot, line_before: c.side, line_after: c.side, outer, inner }
    }
    /// The cost of the sides and the corner between a place, the previous one, the one in the previous line, and the
    /// one before that.
    fn of(&self, before: bool, line: bool, corner: bool, here: bool) -> f64 {
        let mut cost = match (before, here) {
            (true, false) => self.before,
            (false, true) => self.after,
            _ => 0.0,
        };
        cost += match (line, here) {
            (true, false) => self.line_before,
            (false, true) => self.line_after,
            _ => 0.0,
        };
        cost + match u8::from(before) + u8::from(line) + u8::from(corner) + u8::from(here) {
            1 => self.outer,
            2 if corner == here => 2.0 * self.outer,
            3 => self.inner,
            _ => 0.0,
        }
    }
}
