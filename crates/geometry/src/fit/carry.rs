//! Rows that slide and are carried by the row below, on fixed lines: the exact optimum, by runs.
//!
//! A *run* is tiles of one row at one pitch. A tile is carried if its position is between the first and the last
//! position of one run of the row below. So runs are nested: every run of a row is within the hull of one run of the
//! row below.
//!
//! **Why few positions are enough.** Take any layout, and keep which tile belongs to which run, interval and parent.
//! The positions of its runs must then only satisfy lower and upper ends of intervals, and differences by whole pitches
//! (within a hull; after the previous run). The least solution of such a system puts each run whole pitches from the
//! left end of some interval of some row. So positions may be taken from `left ends + n · pitch` alone, and whether a
//! layout exists depends only on how left ends and right ends compare, whole pitches apart. Numbered from the left,
//! those positions are integers, a pitch is as many steps as there are different remainders, and the best of each row
//! over each range of positions follows from the row above it.
//!
//! If there are very many remainders, some are merged: moving left ends down to a remainder that is kept gives a bound,
//! moving them up gives a layout.

use super::grid::Row;

/// Positions closer than this (metres) count as one: above rounding, far below the tolerance.
const SAME: f64 = 4e-12;

/// How many table entries one result may fill, and how many steps it may take, before remainders are merged. A bound
/// from merged remainders is needed often and may cost only a twelfth of that.
const MOST_PLACES: usize = 4_000_000;
const MOST_STEPS: usize = 60_000_000;

/// Which way left ends move if their remainder is not kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Round {
    /// Down: the result is an upper bound.
    Bound,
    /// Up: the result can be laid.
    Lay,
}

/// The optimum of rows on fixed lines.
pub(super) struct Carried {
    levels: Vec<Level>,
    /// The rows that may be the lowest: the index among the levels, and a level of its own if the row has less room as
    /// the lowest.
    bases: Vec<(usize, Option<Level>)>,
    scale: Scale,
    /// Whether no remainder was merged: bound and layout are then equal.
    pub(super) exact: bool,
    /// Steps taken, a measure of the time.
    pub(super) steps: usize,
}

/// The integer positions: `origin + n · pitch + remainder`.
struct Scale {
    origin: f64,
    pitch: f64,
    remainders: Vec<f64>,
}

impl Scale {
    fn new(rows: &[Row], pitch: f64) -> Self {
        let lefts = || rows.iter().flat_map(|row| row.all().map(|gap| gap.0));
        let origin = lefts().fold(f64::INFINITY, f64::min);
        let mut remainders: Vec<f64> = lefts().map(|a| (a - origin).rem_euclid(pitch)).collect();
        remainders.sort_unstable_by(f64::total_cmp);
        let mut scale = Self { origin, pitch, remainders };
        scale.thin_out(SAME);
        scale
    }

    /// Keeps remainders that are at least `apart`, counted modulo the pitch.
    fn thin_out(&mut self, apart: f64) {
        let mut kept: Vec<f64> = Vec::with_capacity(self.remainders.len());
        for &r in &self.remainders {
            if kept.last().is_none_or(|last| r - last > apart) {
                kept.push(r);
            }
        }
        while kept.len() > 1 && kept[0] + self.pitch - kept[kept.len() - 1] <= apart {
            kept.pop();
        }
        self.remainders = kept;
    }

    fn step(&self) -> usize {
        self.remainders.len()
    }

    /// The position `at` as whole pitches and a remainder.
    fn split(&self, at: f64) -> (i64, f64) {
        let n = ((at - self.origin) / self.pitch).floor();
        (n as i64 * self.step() as i64, at - self.origin - n * self.pitch)
    }

    /// The first position at or above.
    fn up(&self, at: f64) -> i64 {
        let (n, over) = self.split(at - SAME * 1.25);
        n + self.remainders.partition_point(|&r| r < over) as i64
    }

    /// The last position at or below.
    fn down(&self, at: f64) -> i64 {
        let (n, over) = self.split(at + SAME * 1.25);
        n + self.remainders.partition_point(|&r| r <= over) as i64 - 1
    }

    fn metres(&self, position: i64) -> f64 {
        let step = self.step() as i64;
        let remainder = self.remainders.get(position.rem_euclid(step) as usize).copied().unwrap_or(0.0);
        self.origin + position.div_euclid(step) as f64 * self.pitch + remainder
    }
}

/// Intervals of one row that a run could bridge, or that are too close for their tiles to be independent.
struct Cluster {
    from: i64,
    width: usize,
    allowed: Vec<bool>,
    /// Most tiles of this row and those above, by first and last position of this row: `first * width + last`.
    most: Vec<u32>,
}

impl Cluster {
    fn to(&self) -> i64 {
        self.from + self.width as i64 - 1
    }
    fn most(&self, from: i64, to: i64) -> u32 {
        let (from, to) = (from.max(self.from), to.min(self.to()));
        if from > to {
            return 0;
        }
        let at = (from - self.from) as usize * self.width + (to - self.from) as usize;
        // The ends are within the cluster.
        debug_assert!(at < self.most.len());
        self.most.get(at).copied().unwrap_or(0)
    }
    fn whole(&self) -> u32 {
        self.most(self.from, self.to())
    }
    /// The maximum number of tiles in a run from this place (counted within the cluster).
    fn longest(&self, place: usize, step: usize) -> usize {
        self.allowed.iter().skip(place).step_by(step).take_while(|&&free| free).count()
    }
}

/// One row: its clusters from the left, and the total of the clusters up to each one.
struct Level {
    row: usize,
    clusters: Vec<Cluster>,
    sums: Vec<u32>,
}

impl Level {
    fn new(row: usize, gaps: &[(f64, f64)], scale: &Scale, round: Round) -> Self {
        let step = scale.step() as i64;
        let mut spans: Vec<Vec<(i64, i64)>> = Vec::new();
        for &(a, b) in gaps {
            let from = if round == Round::Lay { scale.up(a) } else { scale.down(a) };
            let to = scale.down(b);
            if from > to {
                continue;
            }
            match spans.last_mut() {
                Some(last) if last.last().is_some_and(|l| from - l.1 <= step) => last.push((from, to)),
                _ => spans.push(vec![(from, to)]),
            }
        }
        let clusters = spans.iter().map(|spans| {
            let from = spans.iter().map(|s| s.0).min().unwrap_or(0);
            let to = spans.iter().map(|s| s.1).max().unwrap_or(from);
            let width = (to - from + 1) as usize;
            let mut allowed = vec![false; width];
            for &(a, b) in spans {
                for free in allowed.iter_mut().take((b - from + 1) as usize).skip((a - from) as usize) {
                    *free = true;
                }
            }
            Cluster { from, width, allowed, most: Vec::new() }
        });
        Self { row, clusters: clusters.collect(), sums: Vec::new() }
    }

    fn places(&self) -> usize {
        self.clusters.iter().map(|c| c.width.saturating_mul(c.width)).fold(0, usize::saturating_add)
    }

    fn steps(&self, step: usize) -> usize {
        let one = |c: &Cluster| c.width.saturating_mul(c.width).saturating_mul(c.width / step + 1) / 6;
        self.clusters.iter().map(one).fold(0, usize::saturating_add)
    }

    /// Most tiles of this row and those above within a range of positions of this row.
    fn most(&self, from: i64, to: i64) -> u32 {
        let first = self.clusters.partition_point(|c| c.to() < from);
        let end = self.clusters.partition_point(|c| c.from <= to);
        let Some(last) = end.checked_sub(1).filter(|&last| last >= first) else { return 0 };
        let (Some(left), Some(right)) = (self.clusters.get(first), self.clusters.get(last)) else { return 0 };
        if first == last {
            return left.most(from, to);
        }
        let between = self.sums.get(last).zip(self.sums.get(first + 1)).map_or(0, |(to, from)| to - from);
        left.most(from, to) + between + right.most(from, to)
    }

    fn whole(&self) -> u32 {
        self.sums.last().copied().unwrap_or(0)
    }

    fn fill(&mut self, above: Option<&Self>, step: usize) {
        let mut sum = 0;
        self.sums = vec![0];
        for cluster in &mut self.clusters {
            let width = cluster.width;
            let mut most = vec![0_u32; width * width];
            for place in (0..width).rev() {
                let (head, tail) = most.split_at_mut((place + 1) * width);
                let Some(mine) = head.get_mut(place * width..) else { continue };
                if let Some(next) = tail.get(..width) {
                    mine.copy_from_slice(next);
                }
                let start = cluster.from + place as i64;
                for n in 1..=cluster.longest(place, step) {
                    let end = place + (n - 1) * step;
                    let worth = n as u32 + above.map_or(0, |a| a.most(start, cluster.from + end as i64));
                    // The best to the right of this run, for every last position from the run's end on.
                    let rest = (n * step - 1) * width + end;
                    let rest = tail.get(rest..rest + width - end).filter(|_| place + n * step < width);
                    let Some(mine) = mine.get_mut(end..) else { continue };
                    match rest {
                        Some(rest) => {
                            for (mine, rest) in mine.iter_mut().zip(rest) {
                                *mine = (*mine).max(worth + rest);
                            }
                        }
                        None => mine.iter_mut().for_each(|mine| *mine = (*mine).max(worth)),
                    }
                }
            }
            cluster.most = most;
            sum += cluster.whole();
            self.sums.push(sum);
        }
    }
}

impl Carried {
    /// Computes the optimum for every row as the base, or for row 0 alone. Rows are sorted by number.
    pub(super) fn new(rows: &[Row], pitch: f64, round: Round, grounded: bool) -> Self {
        let mut scale = Scale::new(rows, pitch);
        let mut exact = true;
        // Levels, and those of rows that have less room as the lowest.
        let build = |scale: &Scale| -> Vec<Level> {
            let all = rows.iter().map(|row| (row.k, &row.free));
            let lowest = rows.iter().filter(|row| !grounded || row.k == 0);
            let less = lowest.filter_map(|row| Some((row.k, row.foot.as_ref()?)));
            all.chain(less).map(|(k, gaps)| Level::new(k, gaps, scale, round)).collect()
        };
        let too_much = |levels: &[Level], step: usize, part: usize| {
            let places = levels.iter().map(Level::places).fold(0, usize::saturating_add);
            let steps = levels.iter().map(|l| l.steps(step)).fold(0, usize::saturating_add);
            places > MOST_PLACES / part || steps > MOST_STEPS / part
        };
        let mut levels = build(&scale);
        let part = if round == Round::Lay { 1 } else { 12 };
        let mut apart = pitch / 512.0;
        while scale.step() > 1 && too_much(&levels, scale.step(), if exact { 1 } else { part }) {
            scale.thin_out(apart);
            apart *= 1.25;
            exact = false;
            levels = build(&scale);
        }
        let steps = levels.iter().map(|l| l.steps(scale.step())).sum();
        let mut less = levels.split_off(rows.len().min(levels.len()));
        let mut above: Option<Level> = None;
        let mut done: Vec<Level> = Vec::with_capacity(levels.len());
        for mut level in levels.into_iter().rev() {
            level.fill(above.as_ref().filter(|a| a.row == level.row + 1), scale.step());
            done.extend(above.replace(level));
        }
        done.extend(above);
        done.reverse();
        let bases = done.iter().enumerate().filter(|(_, level)| !grounded || level.row == 0);
        let bases = bases.map(|(i, level)| {
            let at = less.iter().position(|own| own.row == level.row);
            let own = at.map(|at| {
                let mut own = less.swap_remove(at);
                own.fill(done.get(i + 1).filter(|above| above.row == own.row + 1), scale.step());
                own
            });
            (i, own)
        });
        let bases = bases.collect();
        Self { levels: done, bases, scale, exact, steps }
    }

    /// The largest number of tiles.
    pub(super) fn count(&self) -> usize {
        self.bases().map(|(_, level)| level.whole()).max().unwrap_or(0) as usize
    }

    /// Each row that may be the lowest, as the lowest.
    fn bases(&self) -> impl Iterator<Item = (usize, &Level)> {
        self.bases.iter().filter_map(|(i, own)| Some((*i, own.as_ref().or(self.levels.get(*i))?)))
    }

    /// The tiles of the optimum: row, and position in metres; by rows and from the left. Of equal ones, the lowest
    /// base.
    pub(super) fn tiles(&self) -> Vec<(usize, f64)> {
        let mut found: Vec<(usize, i64)> = Vec::new();
        let best = self.bases().max_by_key(|(i, level)| (level.whole(), std::cmp::Reverse(*i)));
        let mut open: Vec<(usize, &Level, i64, i64)> =
            best.map(|(i, level)| (i, level, i64::MIN, i64::MAX)).into_iter().collect();
        while let Some((i, level, from, to)) = open.pop() {
            for cluster in level.clusters.iter().filter(|c| c.to() >= from && c.from <= to) {
                for (start, n) in self.runs(i, cluster, from, to) {
                    let step = self.scale.step() as i64;
                    found.extend((0..n as i64).map(|m| (level.row, start + m * step)));
                    if let Some(above) = self.levels.get(i + 1).filter(|a| a.row == level.row + 1) {
                        open.push((i + 1, above, start, start + (n as i64 - 1) * step));
                    }
                }
            }
        }
        found.sort_unstable();
        found.into_iter().map(|(row, at)| (row, self.scale.metres(at))).collect()
    }

    /// The runs that make up a cluster's optimum within a range: first position and number of tiles.
    fn runs(&self, level: usize, cluster: &Cluster, from: i64, to: i64) -> Vec<(i64, usize)> {
        let step = self.scale.step();
        let above = self
            .levels
            .get(level + 1)
            .filter(|above| self.levels.get(level).is_some_and(|l| above.row == l.row + 1));
        let (mut at, to) = (from.max(cluster.from), to.min(cluster.to()));
        let mut runs = Vec::new();
        while at <= to {
            let most = cluster.most(at, to);
            let longest = cluster.longest((at - cluster.from) as usize, step);
            let found = (1..=longest).rev().find(|&n| {
                let end = at + ((n - 1) * step) as i64;
                let rest = cluster.most(end + step as i64, to);
                end <= to && n as u32 + above.map_or(0, |a| a.most(at, end)) + rest == most
            });
            match found {
                Some(n) if most > 0 => {
                    runs.push((at, n));
                    at += (n * step) as i64;
                }
                _ => at += 1,
            }
        }
        runs
    }
}

#[cfg(test)]
mod tests;
