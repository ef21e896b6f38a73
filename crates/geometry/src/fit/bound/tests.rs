use super::super::brute::{Dice, face, random_face, rectangle, shape, stands};
use super::super::houses::house;
use super::super::kernel::{Base, FINE, Joints, RowRules, Tile};
use super::super::tests::never;
use super::super::{BlockRules, HookRules, Look, Several, Space, fit_blocks, fit_rows, fit_several, halves};
use super::*;
use crate::{Polygon, Rect};
use glam::dvec2;

const MODULE: DVec2 = dvec2(1.722, 1.134);
const LOOSE: Neighbours = Neighbours { joint: [0.0015, 0.0065], apart: 0.0, hooked: 0.0, bridged: 0.0 };
const USUAL: Neighbours =
    Neighbours { joint: [0.0015, 0.0065], apart: 0.3047, hooked: 0.4999, bridged: 0.007 };

fn most(allowed: &Allowed, sizes: &[DVec2], laws: &Neighbours, known: usize) -> AtMost {
    at_most(allowed, sizes, laws, None, Effort { known, steps: 30_000_000, steps_in_cases: 0 }, &never)
        .unwrap()
}

#[test]
fn rectangles_hold_columns_times_rows() {
    for (w, h, n) in [(1.8, 1.2, 1), (9.0, 5.0, 20), (8.7, 3.5, 15), (17.3, 9.2, 80), (1.7, 9.0, 0)] {
        let found = most(&face(rectangle(0.0, 0.0, w, h), vec![]), &[MODULE], &USUAL, n);
        assert_eq!((found.most, found.by_lines), (n, n), "{w} x {h}");
    }
}

#[test]
fn gables_ells_and_hips_hold_what_can_be_laid() {
    // By hand: two rows of 5; three rows of 5 and two of 2 on top; rows of 4, 3 and 1 between hips.
    let ell = shape(&[(0.0, 0.0), (8.7, 0.0), (8.7, 3.45), (3.6, 3.45), (3.6, 5.8), (0.0, 5.8)]);
    let hip = shape(&[(0.0, 0.0), (10.0, 0.0), (6.5, 3.5), (3.5, 3.5)]);
    for (outline, n) in [(rectangle(0.0, 0.0, 8.7, 2.3), 10), (ell, 19), (hip, 8)] {
        let found = most(&face(outline, vec![]), &[MODULE], &USUAL, n);
        assert_eq!(found.most, n, "{found:?}");
    }
}

/// Whether a layout obeys the constraints, tested module by module, with none of the code of the fits.
fn is_lawful(spots: &[DVec2], laws: &Neighbours, joint: f64, share: f64) -> bool {
    let near = |p: DVec2, q: DVec2| ((p - q).abs() - MODULE).max(DVec2::ZERO).length() < laws.apart;
    let mut block: Vec<usize> = (0..spots.len()).collect();
    for _ in 0..spots.len() {
        for i in 0..spots.len() {
            for j in 0..spots.len() {
                if near(spots[i], spots[j]) {
                    let low = block[i].min(block[j]);
                    (block[i], block[j]) = (low, low);
                }
            }
        }
    }
    let pitch = MODULE + joint;
    let (block, near) = (&block, &near);
    let fellows = |i: usize| {
        (0..spots.len())
            .filter(move |&j| j != i)
            .filter(move |&j| near(spots[i], spots[j]) || block[i] == block[j])
    };
    (0..spots.len()).all(|i| {
        let lowest = fellows(i).all(|j| spots[j].y > spots[i].y - 1e-6);
        let lined = fellows(i).all(|j| {
            let by = (spots[j] - spots[i]).abs();
            let rows = (by.y / pitch.y).round();
            (by.y - rows * pitch.y).abs() < 1e-6 && (rows > 0.0 || by.x > pitch.x - 1e-6)
        });
        let under: f64 = fellows(i)
            .filter(|&j| (spots[i].y - spots[j].y - pitch.y).abs() < 1e-6)
            .map(|j| (MODULE.x - (spots[i].x - spots[j].x).abs()).max(0.0))
            .sum();
        lined && (lowest || under >= share * MODULE.x)
    })
}

/// Random layouts: modules beside, on and apart from the existing ones, now and then one removed. Reports each; returns
/// the most.
fn climb(
    allowed: &Allowed,
    laws: &Neighbours,
    dice: &mut Dice,
    tries: usize,
    tell: &mut dyn FnMut(&[DVec2]),
) -> usize {
    let (joint, share) = (laws.joint[0] + 0.0015, 0.5);
    let tile = Tile { size: MODULE, gap: DVec2::ZERO };
    let bounds = Rect::around(allowed.region.iter().flat_map(|r| r.outer.iter().copied())).unwrap();
    let (mut spots, mut best): (Vec<DVec2>, usize) = (Vec::new(), 0);
    for _ in 0..tries {
        let by = spots.get(dice.below(spots.len().max(1))).copied();
        let pitch = MODULE + joint;
        let at = match (by, dice.below(8)) {
            (Some(p), 0) => p + dvec2(pitch.x, 0.0),
            (Some(p), 1) => p - dvec2(pitch.x, 0.0),
            (Some(p), 2) => p + dvec2(dice.between(-0.8, 0.8), pitch.y),
            (Some(p), 3) => p + dvec2(dice.between(-0.8, 0.8), -pitch.y),
            // As near as another block may be: beside it, or from corner to corner.
            (Some(p), side @ 4..6) => {
                let near =
                    DVec2::from_angle(dice.between(0.0, std::f64::consts::FRAC_PI_2)) * (laws.apart + 1e-9);
                let aside = if side == 4 {
                    MODULE + near
                } else {
                    dvec2(MODULE.x + laws.apart + 1e-9, dice.between(0.0, 1.2))
                };
                p + aside * dvec2(dice.between(-1.0, 1.0).signum(), dice.between(-1.0, 1.0).signum())
            }
            _ => dvec2(dice.between(bounds.min.x, bounds.max.x), dice.between(bounds.min.y, bounds.max.y)),
        };
        if !stands(allowed, &tile, at, FINE) {
            continue;
        }
        let mut next: Vec<DVec2> =
            spots.iter().copied().filter(|p| ((*p - at).abs() - MODULE).max_element() > -1e-9).collect();
        next.push(at);
        if next.len() + 1 >= spots.len() + dice.below(2) && is_lawful(&next, laws, joint, share) {
            spots = next;
            best = best.max(spots.len());
            tell(&spots);
        }
    }
    best
}

fn several_on(allowed: &Allowed, tile: &Tile, rules: &HookRules) -> Several {
    let space = Space::of(allowed, tile).unwrap();
    let effort = Effort { known: 0, steps: 0, steps_in_cases: 0 };
    let enough = at_most(allowed, &[tile.size], &USUAL, None, effort, &never).unwrap().by_lines;
    fit_several((&space, &halves(allowed)), tile, rules, Look { enough, by_chance: 20_000 }, &never).unwrap()
}

#[test]
fn no_layout_of_any_kind_has_more() {
    let tile = Tile { size: MODULE, gap: DVec2::splat(0.003) };
    let (mut tight, mut all) = (0, 0);
    for seed in 0..120 {
        let mut dice = Dice::new(seed + 9000);
        let allowed = random_face(&mut dice, 11.0, 7.0);
        let never_held = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: false };
        let touching = BlockRules { most: 3, apart: 0.0, base: Base::Anywhere };
        let rows = fit_rows(&allowed, &tile, &never_held, &never).unwrap().count();
        let blocks = fit_blocks(&allowed, &tile, &touching, &never).unwrap().count;
        let loose = most(&allowed, &[MODULE], &LOOSE, rows.max(blocks)).most;
        assert!(loose >= rows.max(blocks), "seed {seed}: {rows}, {blocks} of at most {loose}");

        let carried =
            fit_rows(&allowed, &tile, &RowRules { hooked: true, ..never_held }, &never).unwrap().count();
        let blocks =
            fit_blocks(&allowed, &tile, &BlockRules { apart: 0.3048, ..touching }, &never).unwrap().count;
        let rules = HookRules { base: Base::Anywhere, hooked: 0.5, apart: 0.3048 };
        let several = several_on(&allowed, &tile, &rules);
        let spots: Vec<DVec2> = several.blocks.iter().flatten().map(|p| p.rect.min).collect();
        let found = carried.max(blocks).max(several.count());
        assert!(is_lawful(&spots, &USUAL, 0.003, 0.5 - 1e-6), "seed {seed}: {several:?}");
        assert!(spots.iter().all(|&p| stands(&allowed, &tile, p, FINE * 2.0)), "seed {seed}: {several:?}");
        // Without a known count: the bound must not depend on what was found.
        let usual = most(&allowed, &[MODULE], &USUAL, 0);
        let climbed = climb(&allowed, &USUAL, &mut dice, 1500, &mut |_| {});
        assert!(usual.most >= found.max(climbed), "seed {seed}: {found}, {climbed} of {usual:?}");
        all += 1;
        tight += usize::from(usual.most == found);
    }
    println!("{tight} of {all} are settled");
    assert!(tight * 5 >= all * 3, "{tight} of {all}");
}

#[test]
fn both_orientations_at_once() {
    for seed in 0..25 {
        let mut dice = Dice::new(seed + 500);
        let allowed = random_face(&mut dice, 9.0, 6.0);
        let turned = dvec2(MODULE.y, MODULE.x);
        let found = most(&allowed, &[MODULE, turned], &LOOSE, 0).most;
        for size in [MODULE, turned] {
            let tile = Tile { size, gap: DVec2::splat(0.003) };
            let rules = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: false };
            let rows = fit_rows(&allowed, &tile, &rules, &never).unwrap().count();
            assert!(rows <= found, "seed {seed}: {rows} of at most {found}");
        }
    }
}

#[test]
fn a_stopped_search_and_odd_input() {
    let allowed = face(rectangle(0.0, 0.0, 12.0, 5.0), vec![rectangle(4.0, 2.0, 1.0, 1.0)]);
    let effort = Effort { known: 0, steps: 0, steps_in_cases: 0 };
    let stopped = at_most(&allowed, &[MODULE], &USUAL, None, effort, &|| true).unwrap();
    assert!(stopped.most >= 20, "{stopped:?}");
    let nothing = Allowed { region: Vec::new(), ..allowed.clone() };
    assert_eq!(at_most(&nothing, &[MODULE], &USUAL, None, effort, &never).unwrap().most, 0);
    let overlapping = Neighbours { apart: -1.0, ..USUAL };
    assert!(at_most(&allowed, &[MODULE], &overlapping, None, effort, &never).is_err());
}

/// Faces like those of houses: how much the best of the fits leaves open.
#[test]
fn house_faces_are_mostly_settled() {
    let tile = Tile { size: MODULE, gap: dvec2(0.003, 0.003) };
    let number = |name: &str, or: u64| std::env::var(name).map_or(or, |s| s.parse().unwrap());
    let (from, to) = (number("FROM", 0), number("TO", 100));
    let mut gaps = [0; 6];
    for nth in from..to {
        let house = house(nth);
        let at = std::time::Instant::now();
        let rules = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: true };
        let carried = fit_rows(&house.allowed, &tile, &rules, &never).unwrap().count();
        let rules = BlockRules { most: 3, apart: 0.3048, base: Base::Anywhere };
        let blocks = fit_blocks(&house.allowed, &tile, &rules, &never).unwrap().count;
        let before = at.elapsed();
        let rules = HookRules { base: Base::Anywhere, hooked: 0.5, apart: 0.3048 };
        let several = several_on(&house.allowed, &tile, &rules);
        let found = blocks.max(carried).max(several.count());
        let finding = at.elapsed() - before;
        let bound = most(&house.allowed, &[MODULE], &USUAL, found);
        let gap = bound.most - found;
        gaps[gap.min(5)] += 1;
        println!(
            "{nth:3} {:8} carried {carried:2} blocks {blocks:2} ({before:5.0?}) several {:2} ({finding:5.0?}) at most {:2}, by lines {:2} ({:5.0?}) open {gap}",
            house.name,
            several.count(),
            bound.most,
            bound.by_lines,
            at.elapsed() - before - finding
        );
    }
    println!("open by 0, 1, 2, 3, 4, more: {gaps:?}");
    assert!(gaps[0] * 4 >= gaps.iter().sum::<usize>() * 3, "{gaps:?}");
}

/// Two blocks corner to corner that are closer than a joint along u and along v: boxes as wide as a module and a joint
/// would share a corner. By hand: one module in each of two corners, 0.284 m aside and above, 0.4016 m apart.
#[test]
fn two_blocks_corner_to_corner() {
    let laws = Neighbours { joint: [0.3, 0.31], apart: 0.4, hooked: 0.4999, bridged: 0.32 };
    let aside = 0.284;
    let corners = [DVec2::ZERO, MODULE + aside].map(|at| Rect::at(at, MODULE + 1e-6));
    let region = corners.map(|rect| rectangle(rect.min.x, rect.min.y, rect.size().x, rect.size().y)).to_vec();
    let allowed = Allowed { region, ..face(rectangle(0.0, 0.0, 1.0, 1.0), vec![]) };
    assert_eq!(most(&allowed, &[MODULE], &laws, 0).most, 2);
    // Slightly closer than 0.4 m they are one too many, and a bound may say so.
    assert!((laws.spacing() - 0.4 / 2.0_f64.sqrt()).abs() < 1e-12 && laws.further() < 1e-12);
    // With a large distance, the joint determines the spacing, and the rest of the distance along the other axis
    // follows.
    assert_eq!(USUAL.spacing(), 0.0015);
    assert!((USUAL.further() + 0.0015 - (0.3047_f64.powi(2) - 0.0015_f64.powi(2)).sqrt()).abs() < 1e-12);
}

fn passage(wide: f64, high: f64, blocked: Vec<Polygon>) -> Passage {
    Passage { ways: face(rectangle(0.0, 0.0, wide, high), blocked), width: 0.914, levels: [0.5, high - 0.5] }
}

/// By hand: 9 m and 8.7 m hold 5 in a row, and 4 beside 0.914 m; 9.6 m minus 0.914 m hold 5 as well.
#[test]
fn a_way_that_is_left_free_takes_a_module_of_each_row() {
    for (wide, n) in [(9.0, 16), (8.7, 16), (9.6, 20)] {
        let allowed = face(rectangle(0.0, 0.0, wide, 4.6), vec![]);
        let effort = Effort { known: n, steps: 30_000_000, steps_in_cases: 0 };
        let way = passage(wide, 4.6, vec![]);
        let found = at_most(&allowed, &[MODULE], &USUAL, Some(&way), effort, &never).unwrap();
        assert_eq!(found.most, n, "{wide}: {found:?}");
    }
}

/// Layouts on both sides of a strip, wherever the strip is, are within the bound for layouts that leave a passage.
#[test]
fn no_layout_that_leaves_a_way_has_more() {
    let tile = Tile { size: MODULE, gap: DVec2::splat(0.003) };
    let (mut tight, mut all) = (0, 0);
    for seed in 0..30 {
        let mut dice = Dice::new(seed + 4000);
        let (wide, high) = (dice.between(4.0, 12.0), dice.between(2.5, 7.0));
        let through: Vec<_> = (0..dice.below(3))
            .map(|_| rectangle(dice.between(0.0, wide), dice.between(0.0, high), dice.between(0.2, 1.2), 0.8))
            .collect();
        let allowed = face(rectangle(0.0, 0.0, wide, high), through.clone());
        let way = passage(wide, high, through.clone());
        let effort = Effort { known: 0, steps: 20_000_000, steps_in_cases: 0 };
        let bound = at_most(&allowed, &[MODULE], &USUAL, Some(&way), effort, &never).unwrap();
        let plain = most(&allowed, &[MODULE], &USUAL, 0);
        assert!(bound.by_lines <= plain.by_lines, "seed {seed}: {bound:?}, {plain:?} without a way");
        let mut best = 0;
        for step in 0..16 {
            let from = (wide - 0.914) * f64::from(step) / 15.0;
            let strip = rectangle(from, -1.0, 0.914, high + 2.0);
            let meets =
                |shape: &Polygon| shape.bounds().is_some_and(|b| b.min.x < from + 0.914 && from < b.max.x);
            if through.iter().any(meets) {
                continue;
            }
            let left = face(rectangle(0.0, 0.0, wide, high), [through.clone(), vec![strip]].concat());
            let rules = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: true };
            let rules_of_blocks = HookRules { base: Base::Anywhere, hooked: 0.5, apart: 0.3048 };
            let rows = fit_rows(&left, &tile, &rules, &never).unwrap().count();
            let several = several_on(&left, &tile, &rules_of_blocks).count();
            best = best.max(rows).max(several);
        }
        assert!(bound.most >= best, "seed {seed}: {best} of {bound:?}");
        all += 1;
        tight += usize::from(bound.most == best);
    }
    println!("{tight} of {all} are settled");
    assert!(tight * 2 >= all, "{tight} of {all}");
}

/// For every layout that obeys the constraints, some case of any window excludes none of its modules. With joints of
/// 0.3 m, two modules may be nearly as far apart up the slope as along it.
#[test]
fn every_layout_is_in_a_case() {
    let wide_joints = Neighbours { joint: [0.3, 0.31], apart: 0.4, hooked: 0.4999, bridged: 0.32 };
    let (mut told, mut cut, mut gone) = (0, 0, 0);
    for seed in 0..60 {
        let laws = if seed % 3 == 0 { wide_joints } else { USUAL };
        let mut dice = Dice::new(seed + 31_000);
        let allowed = random_face(&mut dice, 9.0, 7.0);
        let field = Field::new(&allowed, &[MODULE], &laws, None).unwrap();
        // Nothing fits on some faces.
        let Some(rows) = field.rows else { continue };
        let mut points = Dice::new(seed + 1);
        climb(&allowed, &laws, &mut dice, 900, &mut |spots| {
            for _ in 0..8 {
                let by = spots[points.below(spots.len())];
                let point = by + dvec2(points.between(-0.5, 2.2), points.between(-1.2, 2.4));
                let cases = rows.of_window(&field, point);
                let has = |r: &Rect, p: &DVec2| r.min.cmple(*p).all() && p.cmplt(r.max).all();
                let leaves = |away: &Vec<Rect>| !spots.iter().any(|p| away.iter().any(|r| has(r, p)));
                let left = cases.iter().filter(|away| leaves(away)).count();
                assert!(left > 0, "seed {seed}: {point} {spots:?}");
                told += 1;
                cut += cases.len();
                gone += cases.len() - left;
            }
        });
    }
    println!("{told} windows, {cut} cases, {gone} of them without");
    assert!(told > 10_000 && cut > 3 * told && gone > 2 * told, "{told} {cut} {gone}");
}

/// Cases lower the bound below the weights on cliques, and never below what can be laid.
#[test]
fn cases_settle_more_and_beat_nothing() {
    let tile = Tile { size: MODULE, gap: DVec2::splat(0.003) };
    let (mut lower, mut all) = (0, 0);
    for seed in 0..40 {
        let mut dice = Dice::new(seed + 9000);
        let allowed = random_face(&mut dice, 11.0, 7.0);
        let rules = HookRules { base: Base::Anywhere, hooked: 0.5, apart: 0.3048 };
        let rows = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: true };
        let carried = fit_rows(&allowed, &tile, &rows, &never).unwrap().count();
        let found = several_on(&allowed, &tile, &rules).count().max(carried);
        let without = most(&allowed, &[MODULE], &USUAL, found).most;
        if without == found {
            continue;
        }
        // Without a known count.
        let effort = Effort { known: 0, steps: 30_000_000, steps_in_cases: 150_000_000 };
        let with = at_most(&allowed, &[MODULE], &USUAL, None, effort, &never).unwrap().most;
        let climbed = climb(&allowed, &USUAL, &mut dice, 3000, &mut |_| {});
        assert!(with >= found.max(climbed), "seed {seed}: {found}, {climbed} of {with}");
        all += 1;
        lower += usize::from(with < without);
    }
    println!("{lower} of {all} are lower in cases");
    assert!(lower * 4 >= all && all > 3, "{lower} of {all}");
}
