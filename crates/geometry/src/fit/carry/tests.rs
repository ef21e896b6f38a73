//! Runs on fixed lines against every possible layout, on half steps, tested tile by tile.

use super::super::brute::Dice;
use super::*;

/// Whether the tile at `x` is on tiles that follow each other at one pitch, walking along its lower edge.
fn stands_on(x: f64, below: &[f64], pitch: f64) -> bool {
    let mut at = x;
    for &q in below {
        if q <= at && q + pitch > at {
            at = q + pitch;
        }
    }
    at >= x + pitch
}

/// The most tiles in these rows, by trying every set of places.
pub(super) fn every_layout(rows: &[Vec<f64>], pitch: f64, below: Option<&[f64]>) -> usize {
    let Some((row, above)) = rows.split_first() else { return 0 };
    let places: Vec<f64> =
        row.iter().copied().filter(|&x| below.is_none_or(|b| stands_on(x, b, pitch))).collect();
    let packed = |row: &[f64]| {
        let (mut n, mut next) = (0, f64::NEG_INFINITY);
        for &x in row {
            if x >= next {
                (n, next) = (n + 1, x + pitch);
            }
        }
        n
    };
    let cap: usize = above.iter().map(|row| packed(row)).sum();
    let (mut best, mut chosen) = (0, Vec::new());
    choose(&places, above, pitch, cap, &mut chosen, &mut best);
    best
}

fn choose(
    places: &[f64],
    above: &[Vec<f64>],
    pitch: f64,
    cap: usize,
    chosen: &mut Vec<f64>,
    best: &mut usize,
) {
    if !chosen.is_empty() && chosen.len() + cap > *best {
        *best = (*best).max(chosen.len() + every_layout(above, pitch, Some(chosen)));
    }
    for (i, &x) in places.iter().enumerate() {
        if chosen.last().is_none_or(|last| x >= last + pitch) {
            chosen.push(x);
            choose(&places[i + 1..], above, pitch, cap, chosen, best);
            chosen.pop();
        }
    }
}

/// Intervals with integer ends; some less than a pitch apart, so that runs may bridge them.
fn random_rows(dice: &mut Dice, count: usize, length: usize) -> Vec<Row> {
    (0..count)
        .map(|k| {
            let (mut at, mut gaps) = (dice.below(4), Vec::new());
            while at < length {
                let end = (at + dice.below(16)).min(length);
                gaps.push((at as f64, end as f64));
                at = end + 1 + dice.below(7);
            }
            // As the lowest row, half of them have less room.
            let foot = (dice.below(2) == 0).then(|| {
                let less = |&(a, b): &(f64, f64)| (a + dice.below(3) as f64, b - dice.below(6) as f64);
                gaps.iter().map(less).filter(|(a, b)| a <= b).collect()
            });
            Row { k, free: gaps, foot }
        })
        .collect()
}

fn halves(gaps: &[(f64, f64)]) -> Vec<f64> {
    let steps = |&(a, b): &(f64, f64)| {
        let n = ((b - a) * 2.0) as usize;
        (0..=n).map(move |i| a + i as f64 / 2.0)
    };
    gaps.iter().flat_map(steps).collect()
}

#[test]
fn runs_equal_every_layout() {
    let (mut total, mut by_bridge) = (0, 0);
    for seed in 1..400 {
        let mut dice = Dice::new(seed);
        let (count, length) = [(2, 24), (3, 20), (4, 16)][dice.below(3)];
        let rows = random_rows(&mut dice, count, length);
        let pitch = [4.0, 5.0][dice.below(2)];
        let found = Carried::new(&rows, pitch, Round::Lay, false);
        let slow = (0..count)
            .map(|base| {
                let lowest = halves(rows[base].lowest());
                let above = rows[base + 1..].iter().map(|row| halves(&row.free));
                every_layout(&std::iter::once(lowest).chain(above).collect::<Vec<_>>(), pitch, None)
            })
            .max()
            .unwrap();
        assert!(found.exact);
        assert_eq!(found.count(), slow, "seed {seed}: pitch {pitch}, {rows:?}");
        assert_eq!(Carried::new(&rows, pitch, Round::Bound, false).count(), slow);
        let tiles = found.tiles();
        assert_eq!(tiles.len(), slow);
        let base = tiles.iter().map(|t| t.0).min().unwrap_or(0);
        for &(row, x) in &tiles {
            let line =
                |row: usize| -> Vec<f64> { tiles.iter().filter(|t| t.0 == row).map(|t| t.1).collect() };
            let room = if row == base { rows[row].lowest() } else { &rows[row].free };
            assert!(room.iter().any(|g| g.0 <= x && x <= g.1), "seed {seed}: {x} in row {row}");
            assert!(line(row).windows(2).all(|p| p[1] - p[0] >= pitch));
            assert!(
                row == base || stands_on(x, &line(row - 1), pitch),
                "seed {seed}: {x} in row {row} hangs"
            );
        }
        total += slow;
        by_bridge += usize::from(rows.iter().any(|r| r.free.windows(2).any(|g| g[1].0 - g[0].1 <= pitch)));
    }
    assert!(total > 1500 && by_bridge > 200, "{total} tiles, {by_bridge} with a bridge");
}

#[test]
fn a_run_is_broken_where_that_carries_more() {
    // 3.5 pitches: one run of four carries three of the row above, two runs of two carry all four.
    let row = |k: usize, free: Vec<(f64, f64)>| Row { k, free, foot: None };
    let rows = [row(0, vec![(0.0, 7.0)]), row(1, vec![(0.0, 2.0), (5.0, 7.0)])];
    assert_eq!(Carried::new(&rows, 2.0, Round::Lay, false).count(), 8);
}

#[test]
fn merged_remainders_leave_a_bound_and_a_layout() {
    let mut merged = 0;
    for seed in 1..6 {
        let mut dice = Dice::new(seed);
        let rows: Vec<Row> = (0..24)
            .map(|k| {
                let cut = dice.between(15.0, 30.0);
                let free = vec![(dice.between(0.0, 5.0), cut), (cut + 1.5, dice.between(55.0, 60.0))];
                Row { k, free, foot: None }
            })
            .collect();
        let (low, high) =
            (Carried::new(&rows, 1.0, Round::Lay, false), Carried::new(&rows, 1.0, Round::Bound, false));
        assert!(low.count() <= high.count() && low.tiles().len() == low.count());
        merged += usize::from(!low.exact);
    }
    assert!(merged > 0);
}
