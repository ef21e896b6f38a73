use super::super::brute::{Dice, face, grid_cells, random_face, rectangle, tile};
use super::super::fit_rows;
use super::super::kernel::{Base, Joints, RowRules, TilePlace};
use super::super::tests::never;
use super::*;
use glam::dvec2;

fn costs() -> StackCosts {
    StackCosts { foot: 3.0, head: 5.0, side: 2.0, foot_corner: 1.5, head_corner: 4.0, inside_corner: 2.5 }
}

/// All choices of heights up to given ones, by exhaustion: the greatest gain of each number.
fn all_heights(most: &[usize], costs: &StackCosts) -> Vec<f64> {
    let tiles: usize = most.iter().sum();
    let mut best = vec![f64::NEG_INFINITY; tiles + 1];
    let mut heights = vec![0_usize; most.len()];
    loop {
        let mut cost = 0.0;
        for column in 0..=heights.len() {
            let left = if column == 0 { 0 } else { heights[column - 1] };
            let right = heights.get(column).copied().unwrap_or(0);
            cost += costs.side * left.abs_diff(right) as f64;
            if right > 0 {
                cost += costs.foot + costs.head;
            }
            if left != right {
                cost += costs.head_corner;
                cost += if left.min(right) == 0 { costs.foot_corner } else { costs.inside_corner };
            }
        }
        let number: usize = heights.iter().sum();
        best[number] = best[number].max(-cost);
        let Some(next) = (0..most.len()).find(|&c| heights[c] < most[c]) else { return best };
        heights[..next].fill(0);
        heights[next] += 1;
    }
}

#[test]
fn a_sweep_finds_what_trying_all_heights_finds() {
    for seed in 1..300 {
        let mut dice = Dice::new(seed);
        let most: Vec<usize> = (0..1 + dice.below(5)).map(|_| dice.below(4)).collect();
        let costs = StackCosts {
            foot: dice.between(0.0, 5.0),
            head: dice.between(0.0, 5.0),
            side: dice.between(0.0, 5.0),
            foot_corner: dice.between(0.0, 5.0),
            head_corner: dice.between(0.0, 5.0),
            inside_corner: dice.between(0.0, 5.0),
        };
        let tiles: usize = most.iter().sum();
        let expected = all_heights(&most, &costs);
        let run = |want| {
            let mut sweep = Sweep::new(&costs, want, &most, tiles);
            most.iter().for_each(|&height| sweep.column(height, None));
            sweep.ends()
        };
        for (n, (got, expected)) in run(Want::Numbers(0, tiles)).iter().zip(&expected).enumerate() {
            assert!((got - expected).abs() < 1e-9, "seed {seed}, {n} of {most:?}: {got}, not {expected}");
        }
        let value = dice.between(0.0, 15.0);
        let expected =
            expected.iter().enumerate().map(|(n, gain)| gain + value * n as f64).fold(f64::MIN, f64::max);
        assert!((run(Want::Worth(value))[0] - expected).abs() < 1e-9, "seed {seed}");
    }
}

#[test]
fn a_bare_rectangle_has_the_answer_of_a_hand_calculation() {
    // 5 x 3 places of 1 m. Six tiles, 3 wide and 2 high: a perimeter of 2 (3 + 2).
    let allowed = face(rectangle(0.0, 0.0, 5.0, 3.0), vec![]);
    let module = tile(1.0, 1.0, 0.0);
    let around = StackCosts::length_around(&module);
    let found = fit_stacks(&allowed, &module, Base::Anywhere, &around, Want::Numbers(1, 99), &never).unwrap();
    assert!(found.finished && found.most == 15 && found.found.len() == 15);
    let lengths: Vec<f64> = found.found.iter().map(|s| s.cost).collect();
    // The minimum perimeter of n unit squares is 2 ceil(2 sqrt(n)) (Harary and Harborth 1976), if the width and the
    // height allow it.
    for (n, length) in (1..=12).zip(&lengths) {
        assert_eq!(*length, 2.0 * (2.0 * f64::from(n).sqrt()).ceil(), "{n}");
    }
    assert!(found.found.iter().all(Stacks::proved));
    assert!(found.found.iter().zip(1..).all(|(s, n)| s.placed.len() == n));
    // A tile is worth 12, a foot 3, a head 5, a side 2: a full column of 3 brings 36 - 8; all five 140 - 12 - 11.
    let worth = fit_stacks(&allowed, &module, Base::Anywhere, &costs(), Want::Worth(12.0), &never).unwrap();
    assert_eq!((worth.found[0].placed.len(), worth.found[0].cost), (15, 5.0 * 8.0 + 12.0 + 11.0));
    let none = fit_stacks(&allowed, &module, Base::Anywhere, &costs(), Want::Worth(1.0), &never).unwrap();
    assert!(none.found[0].placed.is_empty() && none.found[0].cost == 0.0);
}

#[test]
fn a_face_exactly_n_wide_holds_n_and_a_hair_less_does_not() {
    let module = tile(1.722, 1.134, 0.003);
    for n in 1..6 {
        let wide = 1.722 * f64::from(n) + 0.003 * f64::from(n - 1);
        for (off, expected) in [(0.0, n as usize), (1e-6, n as usize), (-1e-6, n as usize - 1)] {
            let allowed = face(rectangle(0.3, 0.1, wide + off, 1.3), vec![]);
            let around = StackCosts::length_around(&module);
            let found =
                fit_stacks(&allowed, &module, Base::Anywhere, &around, Want::Numbers(1, 9), &never).unwrap();
            assert_eq!((found.found.len(), found.most), (expected, expected));
        }
    }
}

#[test]
fn no_sampled_grid_beats_it_and_the_largest_is_what_rows_hold() {
    let mut full = 0;
    for seed in 1..250 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 6.0, 4.0);
        let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), 0.006);
        let costs = costs();
        let value = dice.between(4.0, 20.0);
        let numbers =
            fit_stacks(&allowed, &module, Base::Anywhere, &costs, Want::Numbers(0, 999), &never).unwrap();
        let worth =
            fit_stacks(&allowed, &module, Base::Anywhere, &costs, Want::Worth(value), &never).unwrap();
        assert!(numbers.finished && worth.finished && numbers.found.iter().all(Stacks::proved));
        let rules = RowRules { joints: Joints::Aligned, base: Base::Anywhere, hooked: true };
        let rows = fit_rows(&allowed, &module, &rules, &never).unwrap();
        assert_eq!(numbers.most, rows.count(), "seed {seed}");
        assert_eq!(numbers.found.len(), rows.count() + 1);
        full += rows.count();
        // The worth is that of the best number.
        let of = |s: &Stacks| value * s.placed.len() as f64 - s.cost;
        let best = numbers.found.iter().map(of).fold(0.0, f64::max);
        assert!((of(&worth.found[0]) - best).abs() < 1e-6, "seed {seed}");
        for stacks in &numbers.found {
            let place = |p: &Placed| TilePlace { at: p.rect.min, lowest: p.row == 0 };
            let places: Vec<_> = stacks.placed.iter().map(place).collect();
            assert!(super::super::stands(&allowed, &module, &places).unwrap().into_iter().all(|s| s));
            for p in stacks.placed.iter().filter(|p| p.row > 0) {
                assert!(stacks.placed.iter().any(|q| (q.row + 1, q.column) == (p.row, p.column)));
            }
        }
        for _ in 0..20 {
            let at = dvec2(dice.between(0.0, module.pitch().x), dice.between(0.0, module.pitch().y));
            let cells = grid_cells(&allowed, &module, 0.0, at);
            let Some(base) = cells.iter().map(|c| c.0).min() else { continue };
            let least = cells.iter().map(|c| c.1).min().unwrap_or(0);
            let most = cells.iter().map(|c| c.1).max().unwrap_or(0);
            let heights: Vec<usize> = (least..=most)
                .map(|c| (base..).take_while(|&r| cells.contains(&(r, c))).count().min(3))
                .take(6)
                .collect();
            for (n, gain) in all_heights(&heights, &costs).iter().enumerate() {
                let got = numbers.found.get(n).map_or(f64::INFINITY, |s| s.cost);
                assert!(got <= -gain + 1e-9, "seed {seed}: {n} tiles cost {got}, sampled {}", -gain);
            }
        }
    }
    assert!(full > 500, "{full}");
}

/// A single number costs the same as among all numbers. If it doesn't fit, the result says how many do, and its upper
/// bound holds for a number that does.
#[test]
fn a_single_number_agrees_with_all_and_too_many_reports_how_many_fit() {
    let mut told = 0;
    for seed in 1..80 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 6.0, 4.0);
        let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), 0.006);
        let run = |from, to| {
            let want = Want::Numbers(from, to);
            fit_stacks(&allowed, &module, Base::Anywhere, &costs(), want, &never).unwrap()
        };
        let all = run(1, 999);
        for number in 1..=all.most {
            let alone = run(number, number);
            assert!(alone.most >= all.most, "seed {seed}: {} for {number}", alone.most);
            assert!((alone.found[0].cost - all.found[number - 1].cost).abs() < 1e-9, "seed {seed}: {number}");
        }
        for more in 1..4 {
            let none = run(all.most + more, all.most + more);
            assert!(none.found.is_empty() && none.finished);
            assert_eq!(none.most, all.most, "seed {seed}: {more} too many");
            told += 1;
        }
    }
    assert!(told > 200);
}

#[test]
fn a_stopped_search_claims_no_more_than_it_knows() {
    let allowed = face(rectangle(0.0, 0.0, 9.3, 5.2), vec![rectangle(3.3, 1.4, 0.3, 0.4)]);
    let module = tile(1.2, 0.9, 0.006);
    let whole = fit_stacks(&allowed, &module, Base::Anywhere, &costs(), Want::Worth(9.0), &never).unwrap();
    let worth = |s: &Stacks| 9.0 * s.placed.len() as f64 - s.cost;
    for after in 0..12 {
        let asked = std::cell::Cell::new(0);
        let stop = || {
            asked.set(asked.get() + 1);
            asked.get() > after
        };
        let part = fit_stacks(&allowed, &module, Base::Anywhere, &costs(), Want::Worth(9.0), &stop).unwrap();
        let found = &part.found[0];
        assert!(worth(found) <= worth(&whole.found[0]) + 1e-9);
        let bound = 9.0 * found.placed.len() as f64 - found.least;
        assert!(bound >= worth(&whole.found[0]) - 1e-9, "{bound}");
        assert!(part.most >= whole.most);
    }
}

#[test]
fn on_the_courses_the_base_row_lies_on_one() {
    let allowed = face(rectangle(0.0, 0.0, 5.0, 4.0), vec![]);
    let base = Base::Courses { first: 0.13, exposure: 0.14, play: (0.0, 0.0) };
    let module = tile(1.0, 1.0, 0.0);
    let found = fit_stacks(&allowed, &module, base, &costs(), Want::Numbers(1, 99), &never).unwrap();
    assert_eq!(found.most, 15);
    for stacks in &found.found {
        let low = stacks.placed.iter().map(|p| p.rect.min.y).fold(f64::INFINITY, f64::min);
        let turns = (low - 0.13) / 0.14;
        assert!((turns - turns.round()).abs() < 1e-6, "{low}");
    }
}
