//! Sides found again in an outline that was worked out anew.
//!
//! What a side borders says more than where it is: the rake over the east gable is that rake however far the gable was
//! moved. So sides are found, each pass among those that are left,
//! 1. by lying exactly where they lay,
//! 2. by bordering the same: the longest stretch in common first, so that of a side that was cut the longer piece is it,
//!    and of two that became one the longer was it; one alone needs no stretch in common,
//! 3. by bordering something of the same and running beside where they ran,
//! 4. by lying on the same line, over a stretch in common.

use super::SideId;
use glam::DVec2;

/// Where a side was.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Was {
    /// Along this line, with the face to its left.
    Along(DVec2, DVec2),
    /// Nobody knows, but sides that border the same come in the order of the outline.
    InOrder,
    /// On no outline: another roof hides it, or what it bordered was gone.
    Hidden,
}

/// A side as it was.
#[derive(Clone, Copy, Debug)]
pub struct Before<'a, B> {
    /// Its number.
    pub id: SideId,
    /// Where it was.
    pub was: Was,
    /// What it bordered, in an order that does not depend on where.
    pub borders: &'a [B],
}

/// A side as it is now.
#[derive(Clone, Copy, Debug)]
pub struct After<'a, B> {
    /// Start and end, with the face to the left.
    pub line: (DVec2, DVec2),
    /// What it borders, in an order that does not depend on where.
    pub borders: &'a [B],
}

/// Ends nearer than this, in metres, are where they were.
const SAME: f64 = 1e-5;
/// A line that is nearer than this, in metres, is the same line.
const BESIDE: f64 = 0.010;
/// Directions that are farther apart than 45° are two.
const ALIKE: f64 = std::f64::consts::FRAC_1_SQRT_2;

/// The numbers of the sides that were found again, in the order of `after`.
pub fn found_again<B: PartialEq>(before: &[Before<'_, B>], after: &[After<'_, B>]) -> Vec<Option<SideId>> {
    let mut pairs = Pairs { before, after, taken: vec![false; before.len()], found: vec![None; after.len()] };
    let line = |i: usize| match before[i].was {
        Was::Along(a, b) => Some((a, b)),
        Was::InOrder | Was::Hidden => None,
    };
    let same_borders =
        |i: usize, j: usize| !before[i].borders.is_empty() && before[i].borders == after[j].borders;
    pairs.pair(|i, j| {
        let ((a, b), (c, d)) = (line(i)?, after[j].line);
        let away = a.distance(c).max(b.distance(d));
        (away <= SAME).then_some(-away)
    });
    pairs.pair(|i, j| if same_borders(i, j) { in_common(line(i)?, after[j].line) } else { None });
    pairs.alone(same_borders);
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
    /// For each side as it is now the index of the one that it was.
    found: Vec<Option<usize>>,
}

impl<B: PartialEq> Pairs<'_, B> {
    /// Pairs what scores, the best first.
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

    /// Pairs what is alone in bordering what it borders, and what comes in the order of the outline where there are as many
    /// as before. Where there are more or less nobody can tell which is which.
    fn alone(&mut self, same: impl Fn(usize, usize) -> bool) {
        for j in 0..self.after.len() {
            if self.found[j].is_some() {
                continue;
            }
            let old: Vec<usize> = (0..self.before.len()).filter(|&i| !self.taken[i] && same(i, j)).collect();
            let new: Vec<usize> = (0..self.after.len())
                .filter(|&k| self.found[k].is_none() && self.after[k].borders == self.after[j].borders)
                .collect();
            let ordered = old.iter().all(|&i| self.before[i].was == Was::InOrder);
            if old.len() == new.len() && (old.len() == 1 || ordered) {
                old.into_iter().zip(new).for_each(|(i, k)| self.take(i, k));
            }
        }
    }
}

fn direction((a, b): (DVec2, DVec2)) -> DVec2 {
    (b - a).normalize_or_zero()
}

/// How long two sides run beside each other, along the second; `None` where they don't, or run against each other.
fn in_common(old: (DVec2, DVec2), new: (DVec2, DVec2)) -> Option<f64> {
    let unit = direction(new);
    let along = |p: DVec2| (p - new.0).dot(unit);
    let (from, to) = (along(old.0).max(0.0), along(old.1).min(along(new.1)));
    (to - from > SAME).then_some(to - from)
}

/// Whether what two sides have in common is on one line.
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
        Before { id: SideId(id), was: Was::Along(dvec2(a, b), dvec2(c, d)), borders }
    }

    fn now(line: [f64; 4], borders: &'static [char]) -> After<'static, char> {
        let [a, b, c, d] = line;
        After { line: (dvec2(a, b), dvec2(c, d)), borders }
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
        // Two that were, one that runs beside neither: nobody can tell which it is.
        check(&two, &[now([20.0, 0.0, 29.0, 0.0], &['s'])], &[None]);
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
        // What lies exactly there is it, even where another one borders what it bordered.
        let after = [now([0.0, 0.0, 9.0, 0.0], &['t']), now([9.0, 0.0, 9.0, 5.0], &['s'])];
        check(&before, &after, &[Some(1), None]);
    }

    #[test]
    fn without_lines_the_order_tells_only_where_there_are_as_many() {
        let kept = |id, was| Before { id: SideId(id), was, borders: &['s'] };
        let pieces = [now([0.0, 0.0, 3.0, 0.0], &['s']), now([4.0, 0.0, 9.0, 0.0], &['s'])];
        let two = [kept(1, Was::InOrder), kept(2, Was::InOrder)];
        check(&two, &pieces, &[Some(1), Some(2)]);
        check(&two[..1], &pieces, &[None, None]);
        check(&two, &pieces[..1], &[None]);
        check(&[kept(1, Was::Hidden)], &pieces[1..], &[Some(1)]);
        check(&[kept(1, Was::Hidden), kept(2, Was::Hidden)], &pieces, &[None, None]);
    }
}
