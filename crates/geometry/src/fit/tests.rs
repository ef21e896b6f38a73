//! Row and grid fits against the slow way of `brute`, and cases that can be proved by hand.

use super::brute::{
    Dice, carried_count, face, grid, random_face, rectangle, row_count, shape, sliding, stands, tile,
};
use super::*;
use crate::Polygon;
use glam::dvec2;

pub(super) fn never() -> bool {
    false
}

fn rules(joints: Joints) -> RowRules {
    RowRules { joints, base: Base::Anywhere, hooked: false }
}

const ALL: [Joints; 3] = [Joints::Free, Joints::Aligned, Joints::Lapped];

pub(super) fn lay(allowed: &Allowed, tile: &Tile, rules: &RowRules) -> Fit {
    fit_rows(allowed, tile, rules, &never).unwrap()
}

/// Every tile fits, none overlaps another or is closer than the gap, and rows are a pitch apart.
fn sound(allowed: &Allowed, tile: &Tile, fit: &Fit) {
    for (i, p) in fit.placed.iter().enumerate() {
        assert!(stands(allowed, tile, p.rect.min, FINE * 1.01), "{p:?} does not stand on {allowed:?}");
        for q in &fit.placed[..i] {
            let apart = -p.rect.overlap(&q.rect);
            let enough = apart.x >= tile.gap.x - 1e-9 || apart.y >= tile.gap.y - 1e-9;
            assert!(enough, "{p:?} {q:?} too near");
            let rows = (p.rect.min.y - q.rect.min.y) / tile.pitch().y;
            assert!((rows - rows.round()).abs() < 1e-9);
            assert_eq!(rows.round() as i64, p.row as i64 - q.row as i64);
        }
    }
}

#[test]
fn n_wide_holds_n_and_a_millionth_less_holds_one_less() {
    let module = tile(1.722, 1.134, 0.006);
    for columns in 1..12 {
        for rows in 1..6 {
            let exact = dvec2(columns as f64, rows as f64) * module.pitch() - module.gap;
            for joints in ALL {
                let count = |size: DVec2| {
                    lay(&face(rectangle(3.3, -7.1, size.x, size.y), vec![]), &module, &rules(joints)).count()
                };
                // Half-lapped, every other row loses one tile unless there is half a pitch to spare.
                let lost = |rows: usize| if joints == Joints::Lapped { rows / 2 } else { 0 };
                assert_eq!(count(exact), columns * rows - lost(rows), "{joints:?} {columns} x {rows}");
                assert_eq!(
                    count(exact - dvec2(1e-6, 0.0)),
                    (columns - 1) * rows,
                    "{joints:?} {columns} x {rows} narrower"
                );
                assert_eq!(count(exact - dvec2(0.0, 1e-6)), columns * (rows - 1) - lost(rows - 1));
                assert_eq!(count(exact + dvec2(1e-6, 1e-6)), columns * rows - lost(rows));
            }
        }
    }
}

#[test]
fn a_grid_fits_between_clearances_that_touch_it_on_all_sides() {
    // A 3 x 3 grid of places, with a clearance of exactly the size of the middle one.
    let module = tile(1.0, 1.0, 0.0);
    let middle = rectangle(1.0, 1.0, 1.0, 1.0);
    let allowed = face(rectangle(0.0, 0.0, 3.0, 3.0), vec![middle]);
    for joints in [Joints::Free, Joints::Aligned] {
        assert_eq!(lay(&allowed, &module, &rules(joints)).count(), 8);
    }
    // One metre up, a millionth thicker: the middle row keeps 2, but a whole side row is lost to the grid.
    let thick = face(rectangle(0.0, 0.0, 3.0, 3.0), vec![rectangle(1.0, 1.0, 1.0 + 1e-6, 1.0)]);
    assert_eq!(lay(&thick, &module, &rules(Joints::Aligned)).count(), 7);
    assert_eq!(lay(&thick, &module, &rules(Joints::Free)).count(), 7);
}

#[test]
fn two_shapes_side_by_side_are_one_region() {
    let module = tile(1.0, 1.0, 0.0);
    let mut allowed = face(rectangle(0.0, 0.0, 1.5, 2.0), vec![]);
    allowed.region.push(rectangle(1.5, 0.0, 1.5, 2.0));
    assert_eq!(lay(&allowed, &module, &rules(Joints::Aligned)).count(), 6);
    allowed.region[1] = rectangle(1.0, 0.0, 2.0, 2.0);
    assert_eq!(lay(&allowed, &module, &rules(Joints::Aligned)).count(), 6);
    allowed.region[1] = shape(&[(0.5, -1.0), (3.0, 0.0), (3.0, 2.0), (0.5, 3.0)]);
    assert_eq!(lay(&allowed, &module, &rules(Joints::Free)).count(), 6);
}

#[test]
fn the_hip_trapezoid_holds_what_rows_can_and_claims_no_more() {
    // A known case: no lattice beats 10, free positions reach 11. Rows are not free positions, and must say so.
    let hip = face(shape(&[(0.0, 0.0), (9.0, 0.0), (6.5, 4.2), (2.5, 4.2)]), vec![]);
    let module = tile(1.722, 1.134, 0.0);
    for joints in ALL {
        for module in [module, module.turned()] {
            let fit = lay(&hip, &module, &rules(joints));
            sound(&hip, &module, &fit);
            assert!(fit.count() <= 10 && fit.gap() == 0, "{joints:?} {}", fit.count());
            assert!(fit.proof.claim().now().contains("rows level"));
        }
    }
    let best = fit_best(&hip, &[module, module.turned()], &rules(Joints::Free), &never).unwrap().unwrap();
    assert_eq!((best.count(), best.bound), (10, 10));
}

#[test]
fn no_sample_beats_a_fit_and_every_tile_stands() {
    for seed in 1..1500 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 9.0, 6.0);
        let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), [0.0, 0.006, 0.3][dice.below(3)]);
        let free = lay(&allowed, &module, &rules(Joints::Free));
        sound(&allowed, &module, &free);
        assert_eq!(free.gap(), 0, "seed {seed}");
        let sampled = sliding(&allowed, &module, Some((&mut dice, 12)));
        assert!(sampled <= free.count(), "seed {seed}: {sampled} > {}", free.count());
        for (joints, shift) in [(Joints::Aligned, 0.0), (Joints::Lapped, 0.5)] {
            for hooked in [false, true] {
                let fit = lay(&allowed, &module, &RowRules { hooked, ..rules(joints) });
                sound(&allowed, &module, &fit);
                assert_eq!(fit.gap(), 0, "seed {seed} {joints:?} hooked {hooked}");
                assert!(fit.count() <= free.count());
                let sampled = grid(&allowed, &module, shift, hooked, Some((&mut dice, 20)));
                assert!(sampled <= fit.count(), "seed {seed} {joints:?}: {sampled} > {}", fit.count());
            }
        }
    }
}

#[test]
fn sliding_rows_equal_every_critical_base_line() {
    let mut seen = 0;
    for seed in 2000..2100 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 5.0, 3.5);
        let module = tile(dice.between(0.8, 1.4), dice.between(0.7, 1.2), [0.0, 0.01][dice.below(2)]);
        let fit = lay(&allowed, &module, &rules(Joints::Free));
        assert_eq!(fit.count(), sliding(&allowed, &module, None), "seed {seed}");
        seen += fit.count();
    }
    assert!(seen > 300, "too easy: {seen}");
}

#[test]
fn one_grid_equals_every_critical_offset() {
    let mut seen = 0;
    for seed in 3000..3030 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 3.6, 2.6);
        let module = tile(dice.between(0.8, 1.3), dice.between(0.7, 1.0), [0.0, 0.01][dice.below(2)]);
        for (joints, shift) in [(Joints::Aligned, 0.0), (Joints::Lapped, 0.5)] {
            let hooked = seed % 2 == 0;
            let fit = lay(&allowed, &module, &RowRules { hooked, ..rules(joints) });
            assert_eq!(fit.count(), grid(&allowed, &module, shift, hooked, None), "seed {seed} {joints:?}");
            seen += fit.count();
        }
    }
    assert!(seen > 50, "too easy: {seen}");
}

#[test]
fn the_base_falls_on_a_course_and_nothing_better_does() {
    for seed in 4000..4100 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 9.0, 6.0);
        let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), 0.006);
        let (first, exposure) = (dice.between(0.0, 0.3), dice.between(0.13, 0.3));
        let play = if seed % 3 == 0 { (0.0, 0.0) } else { (-0.01, dice.between(0.0, 0.05)) };
        let base = Base::Courses { first, exposure, play };
        let anywhere = lay(&allowed, &module, &rules(Joints::Free)).count();
        for joints in ALL {
            let fit = lay(&allowed, &module, &RowRules { base, ..rules(joints) });
            sound(&allowed, &module, &fit);
            assert_eq!(fit.gap(), 0);
            assert!(fit.count() <= anywhere);
            if let Some(lowest) = fit.placed.first() {
                let course = ((lowest.rect.min.y - first - play.0 + 1e-8) / exposure).floor();
                let off = lowest.rect.min.y - first - course * exposure;
                assert!(off >= play.0 - 2e-9 && off <= play.1 + 2e-9, "seed {seed}: {off}");
            }
        }
        // Any course, any offset in its play, rows from there upwards.
        let fit = lay(&allowed, &module, &RowRules { base, ..rules(Joints::Free) });
        let sides: Vec<_> = allowed
            .region
            .iter()
            .chain(allowed.blocked.iter().map(|c| &c.shape))
            .flat_map(|s| s.sides().map(|(_, _, a, b)| (a, b)).collect::<Vec<_>>())
            .collect();
        for n in 0..30 {
            for share in [0.0, 0.37, 1.0] {
                let v = first + f64::from(n) * exposure + play.0 + (play.1 - play.0) * share;
                let rows: Vec<usize> = (0..9)
                    .map(|k| row_count(&allowed, &sides, &module, v + f64::from(k) * module.pitch().y))
                    .collect();
                assert!(rows[0] == 0 || rows.iter().sum::<usize>() <= fit.count(), "seed {seed} course {n}");
            }
        }
    }
}

#[test]
fn hooked_rows_are_carried_and_the_bound_holds() {
    for seed in 5000..5300 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 9.0, 6.0);
        let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), 0.006);
        let fit = lay(&allowed, &module, &RowRules { hooked: true, ..rules(Joints::Free) });
        sound(&allowed, &module, &fit);
        for p in fit.placed.iter().filter(|p| p.row > 0) {
            // Walk along the lower edge: the row below must be under it except for one gap.
            let mut at = p.rect.min.x + 1e-8;
            for q in fit.placed.iter().filter(|q| q.row + 1 == p.row) {
                if q.rect.min.x <= at + module.gap.x + 1e-8 {
                    at = at.max(q.rect.max.x);
                }
            }
            assert!(at >= p.rect.max.x - module.gap.x - 1e-7, "seed {seed}: {p:?} hangs");
        }
        for shift in [0.0, 0.5] {
            let at = dvec2(dice.between(0.0, 1.0), dice.between(0.0, 1.0));
            let cells = super::brute::grid_cells(&allowed, &module, shift, at);
            assert!(carried_count(&cells, shift) <= fit.bound);
        }
        assert_eq!(fit.gap(), 0, "seed {seed}: {} of {}", fit.count(), fit.bound);
    }
}

#[test]
fn bad_input_is_named() {
    let good = face(rectangle(0.0, 0.0, 5.0, 5.0), vec![]);
    let module = tile(1.0, 1.0, 0.0);
    let fails = |allowed: &Allowed, tile: &Tile, base: Base| {
        fit_rows(allowed, tile, &RowRules { base, ..rules(Joints::Free) }, &never).unwrap_err().to_string()
    };
    assert!(fails(&good, &tile(0.0, 1.0, 0.0), Base::Anywhere).contains("cannot be laid"));
    assert!(fails(&good, &tile(1.0, 1.0, -0.1), Base::Anywhere).contains("cannot be laid"));
    assert!(fails(&good, &tile(1e-4, 1e-4, 0.0), Base::Anywhere).contains("check the units"));
    let courses = Base::Courses { first: 0.0, exposure: 0.0, play: (0.0, 0.0) };
    assert!(fails(&good, &module, courses).contains("exposure must be above 0.001"));
    let loose = Allowed { tolerance: 0.5, ..good.clone() };
    assert!(fails(&loose, &module, Base::Anywhere).contains("1e-9"));
    let mut broken = good.clone();
    broken.region[0].outer[2].x = f64::NAN;
    assert!(fails(&broken, &module, Base::Anywhere).contains("corner 2 of the face"));
    let empty = Allowed { region: vec![], ..good };
    assert_eq!(lay(&empty, &module, &rules(Joints::Free)).bound, 0);
}

#[test]
fn a_stopped_search_keeps_a_bound_that_holds() {
    let allowed =
        face(shape(&[(0.0, 0.0), (20.0, 0.0), (15.0, 9.0), (4.0, 9.5)]), vec![rectangle(7.0, 3.0, 1.0, 1.0)]);
    let module = tile(1.722, 1.134, 0.006);
    for joints in ALL {
        for hooked in [false, true] {
            let rules = RowRules { hooked, ..rules(joints) };
            let whole = lay(&allowed, &module, &rules);
            for asks in 0..6 {
                let asked = std::cell::Cell::new(0);
                let stop = || asked.replace(asked.get() + 1) >= asks;
                let part = fit_rows(&allowed, &module, &rules, &stop).unwrap();
                sound(&allowed, &module, &part);
                assert!(part.bound >= whole.count() && part.count() <= whole.bound);
            }
        }
    }
}

#[test]
fn no_shape_makes_it_panic() {
    // Crossed, doubled, flat and tiny shapes: any result, but a result, and never more than the bound.
    for seed in 6000..7000 {
        let mut dice = Dice::new(seed);
        let mut ring = |most: usize| -> Polygon {
            let corners = dice.below(most);
            let mut points: Vec<(f64, f64)> = Vec::new();
            for _ in 0..corners {
                let last = points.last().copied().unwrap_or((1.0, 1.0));
                points.push(match dice.below(6) {
                    0 => last,
                    1 => (last.0, dice.below(5) as f64),
                    2 => (last.0 + 1e-10, last.1 - 1e-13),
                    3 => (dice.below(6) as f64, last.1),
                    _ => (dice.between(-1.0, 7.0), dice.between(-1.0, 5.0)),
                });
            }
            shape(&points)
        };
        let mut allowed = face(ring(9), vec![ring(6), ring(4), ring(3)]);
        allowed.region.push(ring(8));
        allowed.region[0].holes.push(ring(5).outer);
        let module = tile(1.0, 0.8, 0.006);
        for joints in ALL {
            for hooked in [false, true] {
                let fit = lay(&allowed, &module, &RowRules { hooked, ..rules(joints) });
                assert!(fit.count() <= fit.bound);
                if joints != Joints::Lapped {
                    let question = Question { near: 0.4, movable: vec![1], farthest: 0.5, prices: true };
                    holds_back(&allowed, &fit, &question, &never).unwrap();
                }
            }
        }
        let found =
            fit_blocks(&allowed, &module, &BlockRules { most: 2, apart: 0.1, base: Base::Anywhere }, &never)
                .unwrap();
        assert!(found.count <= found.bound);
    }
}
