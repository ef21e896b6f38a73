//! One block: rows hooked onto one another, with as many modules as can be found.
//!
//! Beam search from the lowest row up: a few of the best stacks are kept; each is extended by the possible next rows
//! that hook onto it: as many modules as fit, pushed left, pushed right, or split at each place.

use super::room::{Room, Step, at, pack, pack_right};
use super::shape::Stretch;
use crate::dice::Dice;
use chalkcourse_job::Orientation;

/// Gaps in a row up to the reveal plus this don't interrupt it.
const NO_BREAK: f64 = 5e-4;
/// Tolerance on the share of the lower edge that must hook.
const SLACK: f64 = 0.9e-4;

/// The modules of one block.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Piece {
    pub(super) orientation: Orientation,
    pub(super) reveal: f64,
    /// Height of the lower edge of the lowest row.
    pub(super) foot: f64,
    /// Left sides of the modules of each row, from the eave up.
    pub(super) rows: Vec<Vec<f64>>,
}

impl Piece {
    pub(super) fn count(&self) -> usize {
        self.rows.iter().map(Vec::len).sum()
    }
}

/// The allowed ways of laying rows.
#[derive(Clone, Debug)]
pub(super) struct Laying {
    pub(super) reveal: f64,
    /// The share of a lower edge that must hook.
    pub(super) hooked: f64,
    /// Allowed shifts of a row against the one below, as shares of the spacing; `None` if any is allowed.
    pub(super) joints: Option<Vec<f64>>,
    /// Where a block may start: first course, exposure, and the range above a course line; `None` for anywhere.
    pub(super) courses: Option<(f64, f64, f64, f64)>,
}

impl Laying {
    /// The lowest allowed start of a block at or above a height.
    pub(super) fn foot_from(&self, v: f64) -> f64 {
        let Some((first, exposure, from, to)) = self.courses else { return v };
        let course = ((v - first - to) / exposure).ceil();
        v.max(first + course * exposure + from)
    }
}

/// Search effort.
#[derive(Clone, Copy, Debug)]
pub(super) struct Effort {
    /// Positions of the lowest row that are tried in full.
    pub(super) feet: usize,
    /// Stacks kept from row to row.
    pub(super) stacks: usize,
}

/// The best block found in a room; `None` where no module fits.
pub(super) fn best_block(
    room: &Room,
    orientation: Orientation,
    laying: &Laying,
    effort: Effort,
    dice: &mut Dice,
) -> Option<Piece> {
    let apart = room.size.x + laying.reveal;
    let rise = room.size.y + laying.reveal;
    let (steps, lowest) = (room.steps(apart, false), room.steps(apart, true));
    let (_, high) = room.heights();
    let mut feet = feet(room, &steps, &lowest, rise, laying, dice);
    let value = |foot: f64| -> usize {
        let above = (1..).map(|row| foot + rise * f64::from(row)).take_while(|&v| v <= high);
        at(&lowest, foot) + above.map(|v| at(&steps, v)).sum::<usize>()
    };
    feet.retain(|&foot| at(&lowest, foot) > 0);
    let mut valued: Vec<(usize, f64)> = feet.into_iter().map(|foot| (value(foot), foot)).collect();
    // Shuffle those of equal promise, so that another run tries others.
    let mut keyed: Vec<(usize, f64, f64)> =
        valued.drain(..).map(|(n, foot)| (n, dice.unit(), foot)).collect();
    keyed.sort_by(|a, b| b.0.cmp(&a.0).then(a.1.total_cmp(&b.1)));
    let mut best: Option<Piece> = None;
    for (most, _, foot) in keyed.into_iter().take(effort.feet) {
        if best.as_ref().is_some_and(|best| best.count() >= most) {
            break;
        }
        let Some(rows) = stack(room, &steps, foot, laying, effort.stacks, dice) else { continue };
        let piece = Piece { orientation, reveal: laying.reveal, foot, rows };
        if best.as_ref().is_none_or(|best| piece.count() > best.count()) {
            best = Some(piece);
        }
    }
    best
}

/// Heights worth trying for the lowest row: those where some row just gains modules.
fn feet(
    room: &Room,
    steps: &[Step],
    lowest: &[Step],
    rise: f64,
    laying: &Laying,
    dice: &mut Dice,
) -> Vec<f64> {
    let (low, high) = room.heights();
    let mut feet: Vec<f64> = lowest.iter().map(|step| step.from).collect();
    for step in steps {
        feet.extend((0..).map(|row| step.from - rise * f64::from(row)).take_while(|&v| v >= low));
    }
    // Also just below a change, where a row with more modules ends, and at random.
    let below: Vec<f64> = feet.iter().map(|v| v - 2e-8).collect();
    feet.extend(below);
    feet.extend((0..12).map(|_| dice.within(low, low + rise.min(high - low).max(0.0))));
    let mut feet: Vec<f64> =
        feet.into_iter().map(|v| laying.foot_from(v)).filter(|&v| v >= low && v <= high).collect();
    feet.sort_by(f64::total_cmp);
    feet.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    feet
}

/// A stack of rows so far.
#[derive(Clone)]
struct Stack {
    rows: Vec<Vec<f64>>,
    count: usize,
    /// Joint position of the top row, where it matters.
    phase: f64,
}

/// The best stack of rows on a given foot.
fn stack(
    room: &Room,
    steps: &[Step],
    foot: f64,
    laying: &Laying,
    keep: usize,
    dice: &mut Dice,
) -> Option<Vec<Vec<f64>>> {
    let apart = room.size.x + laying.reveal;
    let rise = room.size.y + laying.reveal;
    let high = room.heights().1;
    let free = room.starts(foot, true);
    let phases = phases(room, foot, rise, apart, laying, dice);
    let mut stacks: Vec<Stack> = Vec::new();
    for phase in phases {
        for row in ways(&free, apart, laying.joints.as_ref().map(|_| phase)) {
            stacks.push(Stack { count: row.len(), rows: vec![row], phase });
        }
    }
    let mut best: Option<Stack> = None;
    for level in 1.. {
        let v = foot + rise * f64::from(level);
        let to_come: usize = (level..)
            .map(|row| foot + rise * f64::from(row))
            .take_while(|&v| v <= high)
            .map(|v| at(steps, v))
            .sum();
        stacks.sort_by_key(|stack| std::cmp::Reverse(stack.count));
        if let Some(first) = stacks.first()
            && best.as_ref().is_none_or(|best| first.count > best.count)
        {
            best = Some(first.clone());
        }
        let enough = best.as_ref().map_or(0, |best| best.count);
        stacks.retain(|stack| stack.count + to_come > enough);
        if v > high || stacks.is_empty() {
            break;
        }
        thin_out(&mut stacks, keep, dice);
        let free = room.starts(v, false);
        let mut next: Vec<Stack> = Vec::new();
        for stack in &stacks {
            let below = stack.rows.last().map_or(&[][..], Vec::as_slice);
            let held = hooked(below, room.size.x, laying);
            let both = common(&free, &held);
            let shifts = laying.joints.clone().unwrap_or_else(|| vec![0.0]);
            for shift in shifts {
                let phase = stack.phase + shift * apart;
                for row in ways(&both, apart, laying.joints.as_ref().map(|_| phase)) {
                    let mut longer = stack.clone();
                    longer.count += row.len();
                    longer.rows.push(row);
                    longer.phase = phase;
                    next.push(longer);
                }
            }
        }
        stacks = next;
    }
    best.map(|best| best.rows)
}

/// Keeps the best stacks, breaking ties at random.
fn thin_out(stacks: &mut Vec<Stack>, keep: usize, dice: &mut Dice) {
    stacks.dedup_by(|a, b| a.rows.last() == b.rows.last() && a.count == b.count);
    if stacks.len() > keep {
        let mut keyed: Vec<(usize, f64, Stack)> =
            stacks.drain(..).map(|stack| (stack.count, dice.unit(), stack)).collect();
        keyed.sort_by(|a, b| b.0.cmp(&a.0).then(a.1.total_cmp(&b.1)));
        stacks.extend(keyed.into_iter().take(keep).map(|(.., stack)| stack));
    }
}

/// Candidate joint positions: at the end of each interval of each row; one candidate where joints are free.
fn phases(room: &Room, foot: f64, rise: f64, apart: f64, laying: &Laying, dice: &mut Dice) -> Vec<f64> {
    let Some(joints) = &laying.joints else { return vec![0.0] };
    let high = room.heights().1;
    let mut phases: Vec<f64> = Vec::new();
    for row in (0..).take_while(|&row| foot + rise * f64::from(row) <= high) {
        for (from, to) in room.starts(foot + rise * f64::from(row), row == 0) {
            let over =
                joints.iter().flat_map(|&joint| [from, to].map(|u| u - joint * apart * f64::from(row)));
            phases.extend([from, to].into_iter().chain(over).map(|u| u.rem_euclid(apart)));
        }
    }
    phases.push(dice.within(0.0, apart));
    phases.sort_by(f64::total_cmp);
    phases.dedup_by(|a, b| (*a - *b).abs() < 1e-7);
    phases
}

/// The ways to lay a row with as many modules as fit: the first few pushed left and the rest right; on a lattice where
/// joints have fixed positions.
fn ways(free: &[Stretch], apart: f64, phase: Option<f64>) -> Vec<Vec<f64>> {
    if let Some(phase) = phase {
        let mut row: Vec<f64> = Vec::new();
        for &(from, to) in free {
            let mut u = phase + ((from - phase) / apart - 1e-9).ceil() * apart;
            while u <= to + 1e-9 {
                if row.last().is_none_or(|last| u - last > apart / 2.0) {
                    row.push(u);
                }
                u += apart;
            }
        }
        return if row.is_empty() { Vec::new() } else { vec![row] };
    }
    let (left, right) = (pack(free, apart), pack_right(free, apart));
    if left.is_empty() || left.len() != right.len() {
        return if left.is_empty() { Vec::new() } else { vec![left] };
    }
    let parted = |at: usize| -> Vec<f64> { left[..at].iter().chain(&right[at..]).copied().collect() };
    let mut ways: Vec<Vec<f64>> = vec![left.clone()];
    for at in (0..left.len()).rev() {
        // Splitting here changes nothing if left and right positions are equal.
        if right[at] - left[at] > 1e-9 {
            ways.push(parted(at));
        }
    }
    let even: Vec<f64> = (0..left.len())
        .map(|i| left[i] + (right[i] - left[i]) * (i as f64 + 0.5) / left.len() as f64)
        .collect();
    let stands = |u: &f64| free.iter().any(|(from, to)| from <= u && u <= to);
    if even.iter().all(stands) {
        ways.push(even);
    }
    let middle: Vec<f64> = (0..left.len()).map(|i| (left[i] + right[i]) / 2.0).collect();
    if middle.iter().all(stands) {
        ways.push(middle);
    }
    ways
}

/// Where a module may start so that enough of its lower edge hooks into the row below.
pub(super) fn hooked(below: &[f64], width: f64, laying: &Laying) -> Vec<Stretch> {
    if laying.hooked <= SLACK {
        return vec![(f64::NEG_INFINITY, f64::INFINITY)];
    }
    let mut spans: Vec<Stretch> = Vec::new();
    for &u in below {
        match spans.last_mut() {
            Some(last) if u - last.1 <= laying.reveal + NO_BREAK => last.1 = u + width,
            _ => spans.push((u, u + width)),
        }
    }
    let asked = (laying.hooked - SLACK) * width;
    let over = |u: f64| spans.iter().map(|s| (s.1.min(u + width) - s.0.max(u)).max(0.0)).sum::<f64>() - asked;
    let mut ends: Vec<f64> =
        spans.iter().flat_map(|&(from, to)| [from - width, from, to - width, to]).collect();
    ends.sort_by(f64::total_cmp);
    let mut held: Vec<Stretch> = Vec::new();
    for pair in ends.windows(2) {
        let (a, b) = (pair[0], pair[1]);
        let (at_a, at_b) = (over(a), over(b));
        if at_a < 0.0 && at_b < 0.0 || b - a <= 0.0 {
            continue;
        }
        let cross = a + (b - a) * at_a / (at_a - at_b);
        let part = (if at_a < 0.0 { cross } else { a }, if at_b < 0.0 { cross } else { b });
        match held.last_mut() {
            Some(last) if part.0 - last.1 <= 1e-12 => last.1 = part.1,
            _ => held.push(part),
        }
    }
    held
}

/// The intersection of two lists of intervals.
fn common(one: &[Stretch], two: &[Stretch]) -> Vec<Stretch> {
    let mut both: Vec<Stretch> = one
        .iter()
        .flat_map(|a| two.iter().map(move |b| (a.0.max(b.0), a.1.min(b.1))))
        .filter(|(from, to)| from <= to)
        .collect();
    both.sort_by(|a, b| a.0.total_cmp(&b.0));
    both
}

#[cfg(test)]
mod tests {
    use super::*;

    fn laying(hooked: f64) -> Laying {
        Laying { reveal: 0.0, hooked, joints: None, courses: None }
    }

    /// Over two modules of width 2 from 0 to 4, half a module may overhang at both ends.
    #[test]
    fn half_a_module_may_overhang() {
        let held = hooked(&[0.0, 2.0], 2.0, &laying(0.5));
        assert_eq!(held.len(), 1);
        assert!((held[0].0 + 1.0).abs() < 1e-3 && (held[0].1 - 3.0).abs() < 1e-3, "{held:?}");
        // Over a gap of 1 a module rests on both sides of it; over a gap of 1.5 it needs half its width on one side.
        assert_eq!(hooked(&[0.0, 3.0], 2.0, &laying(0.5)).len(), 1);
        assert_eq!(hooked(&[0.0, 3.5], 2.0, &laying(0.5)).len(), 2);
        assert_eq!(hooked(&[0.0, 2.0], 2.0, &laying(1.0)).len(), 1);
    }

    #[test]
    fn rows_are_split_at_each_place() {
        let ways = ways(&[(0.0, 4.5)], 2.0, None);
        assert!(ways.contains(&vec![0.0, 2.0, 4.0]) && ways.contains(&vec![0.5, 2.5, 4.5]), "{ways:?}");
        assert!(ways.contains(&vec![0.0, 2.5, 4.5]) && ways.contains(&vec![0.0, 2.0, 4.5]), "{ways:?}");
    }

    #[test]
    fn a_block_starts_only_at_allowed_heights() {
        let mut laying = laying(0.5);
        laying.courses = Some((0.1, 0.2, 0.0, 0.05));
        for (asked, is) in [(0.0, 0.1), (0.12, 0.12), (0.16, 0.3), (0.31, 0.31)] {
            assert!((laying.foot_from(asked) - is).abs() < 1e-9, "{asked}: {}", laying.foot_from(asked));
        }
    }
}
