//! Recognises the sides of an outline that was computed again.
//!
//! What a side borders says more than where it is: the rake over the east gable is the same rake however far the gable
//! was moved. So sides are matched in passes, each among those that are left:
//! 1. those at exactly the same position
//! 2. those that border the same, between sides that border the same, if there is only one
//! 3. those that border the same: longest overlap first, so that of a side that was split the longer piece is the same
//!    side, and of two sides that merged it is the longer; if there is only one, it needs no overlap
//! 4. those that border some of the same and run beside the old side
//! 5. those on the same line that overlap

use super::SideId;
use glam::DVec2;

/// Where a side was.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FormerPosition {
    /// Along this line, with the face to its left.
    Along(DVec2, DVec2),
    /// Unknown, but sides that border the same are in the order of the outline.
    InOrder,
    /// On no outline: hidden by another roof, or what it bordered was gone.
    Hidden,
}

/// A side before the change.
#[derive(Clone, Copy, Debug)]
pub struct Before<'a, B> {
    /// Its number.
    pub id: SideId,
    /// Where it was.
    pub was: FormerPosition,
    /// What it bordered, in an order that does not depend on position.
    pub borders: &'a [B],
    /// What the sides before and after it bordered.
    pub beside: [&'a [B]; 2],
}

/// A side after the change.
#[derive(Clone, Copy, Debug)]
pub struct After<'a, B> {
    /// Start and end, with the face to the left.
    pub line: (DVec2, DVec2),
    /// What it borders, in an order that does not depend on position.
    pub borders: &'a [B],
    /// What the sides before and after it border.
    pub beside: [&'a [B]; 2],
}

/// Ends closer than this, in metres, are at the same position.
const SAME: f64 = 1e-5;
/// A line closer than this, in metres, is the same line.
const BESIDE: f64 = 0.010;
/// Directions more than 45° apart are different.
const ALIKE: f64 = std::f64::consts::FRAC_1_SQRT_2;

/// The numbers of the recognised sides, in the order of `after`.
pub fn found_again<B: PartialEq>(before: &[Before<'_, B>], after: &[After<'_, B>]) -> Vec<Option<SideId>> {
    let mut pairs = Pairs { before, after, taken: vec![false; before.len()], found: vec![None; after.len()] };
    let line = |i: usize| match before[i].was {
        FormerPosition::Along(a, b) => Some((a, b)),
        FormerPosition::InOrder | FormerPosition::Hidden => None,
    };
    let same_borders =
        |i: usize, j: usize| !before[i].borders.is_empty() && before[i].borders == after[j].borders;
    pairs.pair(|i, j| {
        let ((a, b), (c, d)) = (line(i)?, after[j].line);
        let away = a.distance(c).max(b.distance(d));
        (away <= SAME).then_some(-away)
    });
    let borders = |j: usize| after[j].borders;
    pairs.alone(
        |i, j| same_borders(i, j) && before[i].beside == after[j].beside,
        |j, k| borders(j) == borders(k) && after[j].beside == after[k].beside,
    );
    pairs.pair(|i, j| if same_borders(i, j) { in_common(line(i)?, after[j].line) } else { None });
    pairs.alone(same_borders, |j, k| borders(j) == borders(k));
    pairs.pair(|i, j| {
        let common = before[i].borders.iter().any(|border| after[j].borders.contains(border));
        let (old, new) = (line(i)?, after[j].line);
        (common && direction(old).dot(direction(new)) >= ALIKE).then(|| in_common(old, new)).flatten()
    });
    pairs.pair(|i, j| {
        let (old, new) = (line(i)?, after[j].line);
        lies_on(old, new).then(|| in_common(old, new)).flatten()
    });
    pairs.found.iter().map(|found| found.map(|i| before[i].id)).collect()
}

struct Pairs<'a, B> {
    before: &'a [Before<'a, B>],
    after: &'a [After<'a, B>],
    taken: Vec<bool>,
    /// For each side after the change, the index of the matching one before.
    found: Vec<Option<usize>>,
}

impl<B: PartialEq> Pairs<'_, B> {
    /// Matches pairs by score, best first.
    fn pair(&mut self, score: impl Fn(usize, usize) -> Option<f64>) {
        let mut list: Vec<(f64, usize, usize)> = Vec::new();
        for j in (0..self.after.len()).filter(|&j| self.found[j].is_none()) {
            let free = (0..self.before.len()).filter(|&i| !self.taken[i]);
            list.extend(free.filter_map(|i| Some((score(i, j)?, i, j))));
        }
        list.sort_by(|p, q| q.0.total_cmp(&p.0).then((p.1, p.2).cmp(&(q.1, q.2))));
        for (_, i, j) in list {
            self.take(i, j);
        }
    }

    fn take(&mut self, i: usize, j: usize) {
        if !self.taken[i] && self.found[j].is_none() {
            self.taken[i] = true;
            self.found[j] = Some(i);
        }
    }

    /// Matches a side that is the only one to border what it borders; and several, in the order of the outline, if
    /// there are as many as before. If the numbers differ, they can't be matched.
    fn alone(&mut self, same: impl Fn(usize, usize) -> bool, alike: impl Fn(usize, usize) -> bool) {
        for j in 0..self.after.len() {
            if self.found[j].is_some() {
                continue;
            }
            let old: Vec<usize> = (0..self.before.len()).filter(|&i| !self.taken[i] && same(i, j)).collect();
            let new: Vec<usize> =
                (0..self.after.len()).filter(|&k| self.found[k].is_none() && alike(j, k)).collect();
            let ordered = old.iter().all(|&i| self.before[i].was == FormerPosition::InOrder);
            if old.len() == new.len() && (old.len() == 1 || ordered) {
                old.into_iter().zip(new).for_each(|(i, k)| self.take(i, k));
            }
        }
    }
}

fn direction((a, b): (DVec2, DVec2)) -> DVec2 {
    (b - a).normalize_or_zero()
}

/// The length over which two sides run beside each other, along the second; `None` if they don't, or run in opposite
/// directions.
fn in_common(old: (DVec2, DVec2), new: (DVec2, DVec2)) -> Option<f64> {
    let unit = direction(new);
    let along = |p: DVec2| (p - new.0).dot(unit);
    let (from, to) = (along(old.0).max(0.0), along(old.1).min(along(new.1)));
    (to - from > SAME).then_some(to - from)
}

/// Whether the overlap of two sides is on one line.
fn lies_on(old: (DVec2, DVec2), new: (DVec2, DVec2)) -> bool {
    let unit = direction(new);
    if direction(old).dot(unit) < ALIKE {
        return false;
    }
    let along = |p: DVec2| (p - new.0).dot(unit);
    let away = |p: DVec2| (p - new.0).perp_dot(unit).abs();
    let (start, end, length) = (along(old.0), along(old.1), along(new.1));
    let at = |t: f64| {
        let part = if end - start > 0.0 { (t - start) / (end - start) } else { 0.0 };
        away(old.0.lerp(old.1, part))
    };
    at(start.max(0.0)) <= BESIDE && at(end.min(length)) <= BESIDE
}

#[cfg(test)]
mod tests {
    use super::*;
    use glam::dvec2;

    fn along(id: u32, line: [f64; 4], borders: &'static [char]) -> Before<'static, char> {
        let [a, b, c, d] = line;
        Before {
            id: SideId(id),
            was: FormerPosition::Along(dvec2(a, b), dvec2(c, d)),
            borders,
            beside: [&[], &[]],
        }
    }

    fn now(line: [f64; 4], borders: &'static [char]) -> After<'static, char> {
        let [a, b, c, d] = line;
        After { line: (dvec2(a, b), dvec2(c, d)), borders, beside: [&[], &[]] }
    }

    fn check(before: &[Before<'_, char>], after: &[After<'_, char>], expect: &[Option<u32>]) {
        let found: Vec<Option<u32>> =
            found_again(before, after).into_iter().map(|id| id.map(|id| id.0)).collect();
        assert_eq!(found, expect);
    }

    #[test]
    fn a_side_goes_with_what_it_borders_however_far() {
        let before = [along(1, [0.0, 0.0, 9.0, 0.0], &['s']), along(2, [9.0, 0.0, 9.0, 5.0], &['e'])];
        let after = [now([30.0, 0.0, 30.0, 7.0], &['e']), now([0.0, -3.0, 30.0, -3.0], &['s'])];
        check(&before, &after, &[Some(2), Some(1)]);
        // It turned by more than a right angle, and nothing else borders that.
        check(&before[..1], &[now([5.0, 5.0, 0.0, 5.0], &['s'])], &[Some(1)]);
    }

    #[test]
    fn the_longer_piece_is_the_side() {
        let whole = [along(1, [0.0, 0.0, 9.0, 0.0], &['s'])];
        let pieces = [now([0.0, -1.0, 3.0, -1.0], &['s']), now([4.0, -1.0, 9.0, -1.0], &['s'])];
        check(&whole, &pieces, &[None, Some(1)]);
        let two = [along(1, [0.0, 0.0, 3.0, 0.0], &['s']), along(2, [4.0, 0.0, 9.0, 0.0], &['s'])];
        check(&two, &[now([0.0, 0.0, 9.0, 0.0], &['s'])], &[Some(2)]);
        // There were two, and the one that is left overlaps neither: it can't be matched.
        check(&two, &[now([20.0, 0.0, 29.0, 0.0], &['s'])], &[None]);
    }

    #[test]
    fn the_sides_beside_tell_pieces_apart() {
        let beside = |one: &'static [char], two: &'static [char]| [one, two];
        let (left, right) = (beside(&['w'], &['d']), beside(&['d'], &['e']));
        let was = |id, line, beside| Before { beside, ..along(id, line, &['s']) };
        let two = [was(1, [0.0, 0.0, 3.0, 0.0], left), was(2, [4.0, 0.0, 9.0, 0.0], right)];
        // Moved so far that the left piece is where the right one was.
        let is = |line, beside| After { beside, ..now(line, &['s']) };
        let moved = [is([5.0, 0.0, 8.0, 0.0], left), is([9.0, 0.0, 14.0, 0.0], right)];
        check(&two, &moved, &[Some(1), Some(2)]);
    }

    #[test]
    fn what_borders_part_of_the_same_must_run_beside_it() {
        let before = [along(1, [0.0, 5.0, -9.0, 5.0], &['m', 'n'])];
        check(&before, &[now([0.0, 6.0, -9.0, 6.0], &['n'])], &[Some(1)]);
        check(&before, &[now([9.0, 6.0, 1.0, 6.0], &['n'])], &[None]);
        check(&before, &[now([-9.0, 6.0, 0.0, 6.0], &['n'])], &[None]);
    }

    #[test]
    fn the_same_line_is_the_same_side_whatever_it_borders() {
        let before = [along(1, [0.0, 0.0, 9.0, 0.0], &['s'])];
        check(&before, &[now([2.0, 0.004, 12.0, 0.004], &['t'])], &[Some(1)]);
        check(&before, &[now([2.0, 0.02, 12.0, 0.02], &['t'])], &[None]);
        check(&before, &[now([9.0, 0.0, 12.0, 0.0], &['t'])], &[None]);
        // A side at exactly the same position is the same, even if another one borders what it bordered.
        let after = [now([0.0, 0.0, 9.0, 0.0], &['t']), now([9.0, 0.0, 9.0, 5.0], &['s'])];
        check(&before, &after, &[Some(1), None]);
    }

    #[test]
    fn without_lines_the_order_tells_only_where_there_are_as_many() {
        let kept = |id, was| Before { id: SideId(id), was, borders: &['s'], beside: [&[], &[]] };
        let pieces = [now([0.0, 0.0, 3.0, 0.0], &['s']), now([4.0, 0.0, 9.0, 0.0], &['s'])];
        let two = [kept(1, FormerPosition::InOrder), kept(2, FormerPosition::InOrder)];
        check(&two, &pieces, &[Some(1), Some(2)]);
        check(&two[..1], &pieces, &[None, None]);
        check(&two, &pieces[..1], &[None]);
        check(&[kept(1, FormerPosition::Hidden)], &pieces[1..], &[Some(1)]);
        check(&[kept(1, FormerPosition::Hidden), kept(2, FormerPosition::Hidden)], &pieces, &[None, None]);
    }
}
