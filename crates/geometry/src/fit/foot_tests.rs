//! The foot of the lowest row, against testing each tile and the strip below it separately.

use super::brute::{Dice, face, grid_cells, random_face, rectangle, span, stands as stands_slowly, tile};
use super::tests::never;
use super::*;
use crate::{Polygon, Rect};
use glam::dvec2;

/// A face with a rail that stays within the region, and off some shapes.
fn railed(dice: &mut Dice, width: f64, height: f64) -> Allowed {
    let mut allowed = random_face(dice, width, height);
    let depth = [0.0, 0.05, 0.2, 0.6][dice.below(4)];
    let within = (dice.below(3) > 0).then_some(89);
    let blocked = (0..1 + dice.below(3)).map(|i| {
        let at = dvec2(dice.between(0.0, width), dice.between(-0.2, height * 0.7));
        let shape = match dice.below(3) {
            0 => rectangle(at.x, at.y, 0.7, 0.2),
            1 => Polygon::circle(at, 0.3, 12),
            _ => Polygon::new(vec![at, at + dvec2(1.5, 0.3), at + dvec2(1.5, 0.31)]),
        };
        Constraint { id: 90 + i, shape }
    });
    allowed.foot = Some(Foot { depth, within, blocked: blocked.collect() });
    allowed
}

/// Whether a tile of the lowest row fits, with it and its foot shrunk by `spare` on all sides.
fn lowest_stands(allowed: &Allowed, tile: &Tile, p: DVec2, spare: f64) -> bool {
    let foot = allowed.foot.as_ref().unwrap();
    let strip = Tile { size: dvec2(tile.size.x, foot.depth.max(1e-8)), gap: DVec2::ZERO };
    let around = Rect::around(allowed.region.iter().flat_map(|shape| shape.outer.iter().copied())).unwrap();
    let all = vec![Polygon::new(around.grown(50.0).corners().to_vec())];
    let below = Allowed {
        region: if foot.within.is_some() { allowed.region.clone() } else { all },
        blocked: foot.blocked.clone(),
        foot: None,
        tolerance: FINE,
    };
    stands_slowly(allowed, tile, p, spare) && stands_slowly(&below, &strip, p - dvec2(0.0, foot.depth), spare)
}

#[test]
fn a_place_in_the_lowest_row_is_one_where_tile_and_foot_stand() {
    let (mut differ, mut stand) = (0, 0);
    for seed in 1..300 {
        let mut dice = Dice::new(seed);
        let allowed = railed(&mut dice, 6.0, 4.0);
        let module = tile(dice.between(0.5, 1.5), dice.between(0.4, 1.2), 0.006);
        let (lo, hi) = span(&allowed);
        for _ in 0..60 {
            let at = dvec2(dice.between(-0.5, 6.0), dice.between(lo - 0.3, hi));
            let places = [true, false].map(|lowest| TilePlace { at, lowest });
            let [lowest, upper] = stands(&allowed, &module, &places).unwrap()[..] else { panic!() };
            // Within a millionth of a border either answer is accepted.
            let slowly = lowest_stands(&allowed, &module, at, 1e-6);
            if slowly == lowest_stands(&allowed, &module, at, -1e-6) {
                assert_eq!(lowest, slowly, "seed {seed}: {at}");
            }
            assert!(upper || !lowest);
            differ += usize::from(upper && !lowest);
            stand += usize::from(lowest);
        }
    }
    assert!(differ > 300 && stand > 1000, "{differ} {stand}");
}

/// The count of a grid at an offset if each base row must have room for its foot.
fn grid_holds(allowed: &Allowed, module: &Tile, shift: f64, at: DVec2) -> usize {
    let cells = grid_cells(allowed, module, shift, at);
    let bases = cells.iter().map(|c| c.0).max().map_or(0, |top| top + 1);
    let corner = |(k, n): (usize, i64)| {
        let aside = if k % 2 == 1 { shift } else { 0.0 };
        at + dvec2((n as f64 + aside) * module.pitch().x, k as f64 * module.pitch().y)
    };
    let from = |base: usize| {
        let stay = |c: &&(usize, i64)| {
            c.0 > base || c.0 == base && lowest_stands(allowed, module, corner(**c), FINE)
        };
        let kept: Vec<(usize, i64)> = cells.iter().filter(stay).copied().collect();
        carried_from(&kept, shift, base)
    };
    (0..bases).map(from).max().unwrap_or(0)
}

fn carried_from(cells: &[(usize, i64)], shift: f64, base: usize) -> usize {
    let mut kept: Vec<(usize, i64)> = Vec::new();
    for &(k, n) in cells.iter().filter(|c| c.0 >= base) {
        let other = if shift == 0.0 {
            n
        } else if k % 2 == 1 {
            n + 1
        } else {
            n - 1
        };
        if k == base || [n, other].iter().all(|&m| kept.contains(&(k - 1, m))) {
            kept.push((k, n));
        }
    }
    kept.len()
}

#[test]
fn no_sampled_grid_beats_rows_that_carry_their_foot() {
    let (mut laid, mut less) = (0, 0);
    for seed in 1..250 {
        let mut dice = Dice::new(seed);
        let allowed = railed(&mut dice, 6.0, 4.0);
        let module = tile(dice.between(0.6, 1.5), dice.between(0.5, 1.1), [0.0, 0.006][dice.below(2)]);
        let (lo, _) = span(&allowed);
        let mut counts = Vec::new();
        for joints in [Joints::Free, Joints::Aligned, Joints::Lapped] {
            let rules = RowRules { joints, base: Base::Anywhere, hooked: true };
            let fit = fit_rows(&allowed, &module, &rules, &never).unwrap();
            assert_eq!(fit.gap(), 0, "seed {seed}");
            for p in &fit.placed {
                let stands = if p.row == 0 { lowest_stands } else { stands_slowly };
                assert!(stands(&allowed, &module, p.rect.min, FINE * 1.01), "seed {seed} {joints:?}: {p:?}");
            }
            counts.push(fit.count());
            let shift = if joints == Joints::Lapped { 0.5 } else { 0.0 };
            for _ in 0..if joints == Joints::Free { 0 } else { 12 } {
                let at = dvec2(dice.between(0.0, module.pitch().x), dice.between(lo, lo + module.pitch().y));
                let sampled = grid_holds(&allowed, &module, shift, at);
                assert!(sampled <= fit.count(), "seed {seed} {joints:?}: {sampled} at {at}, {}", fit.count());
            }
        }
        assert!(counts[0] >= counts[1].max(counts[2]), "seed {seed}: {counts:?}");
        let stacks = fit_stacks(
            &allowed,
            &module,
            Base::Anywhere,
            &StackCosts::length_around(&module),
            Want::Numbers(0, 999),
            &never,
        );
        let stacks = stacks.unwrap();
        assert_eq!(stacks.most, counts[1], "seed {seed}");
        for p in stacks.found.iter().flat_map(|found| &found.placed).filter(|p| p.row == 0) {
            assert!(lowest_stands(&allowed, &module, p.rect.min, FINE * 1.01), "seed {seed}: {p:?}");
        }
        let bare = Allowed { foot: None, ..allowed.clone() };
        let rules = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: true };
        let without = fit_rows(&bare, &module, &rules, &never).unwrap().count();
        assert!(without >= counts[0]);
        (laid, less) = (laid + counts[0], less + without - counts[0]);
    }
    assert!(laid > 800 && less > 20, "{laid} tiles, {less} lost to the foot");
}

#[test]
fn whole_blocks_carry_their_foot_and_slides_keep_it_free() {
    for seed in 1..120 {
        let mut dice = Dice::new(seed);
        let allowed = railed(&mut dice, 5.0, 3.5);
        let module = tile(dice.between(0.6, 1.4), dice.between(0.5, 1.1), 0.0);
        let rules = BlockRules { most: 2, apart: 0.1, base: Base::Anywhere };
        let found = fit_blocks(&allowed, &module, &rules, &never).unwrap();
        let stands = |rect: &Rect, spare: f64| {
            let whole = Tile { size: rect.size(), gap: DVec2::ZERO };
            lowest_stands(&allowed, &whole, rect.min, spare)
        };
        assert!(found.blocks.iter().all(|block| stands(&block.rect, FINE * 1.01)), "seed {seed}");
        let at = dvec2(dice.between(-0.5, 5.0), dice.between(-0.5, 3.0));
        let rect = Rect::at(at, module.size);
        let by = least_slide(&allowed, &[Part { rect, lowest: true }], &never).unwrap();
        if let Some(by) = by {
            assert!(stands(&rect.moved(by), FINE * 2.0), "seed {seed}: {by}");
        }
        let reach = by.map_or(8.0, |by| by.length());
        for _ in 0..40 {
            let way = DVec2::from_angle(dice.between(0.0, std::f64::consts::TAU));
            let tried = way * (reach - 1e-7) * dice.between(0.0, 1.0).sqrt();
            assert!(
                reach < 1e-6 || !stands(&rect.moved(tried), FINE),
                "seed {seed}: {tried} stands, found {by:?}"
            );
        }
    }
}

/// A face 3 wide and 2.2 high, tiles of 1 by 1; the rail is 0.3 deep: two rows fit on a face of 2.3, but not on one of
/// 2.29.
#[test]
fn the_rail_takes_room_once_and_not_for_every_row() {
    let rows = |height: f64, foot: Option<Foot>| {
        let mut allowed = face(rectangle(0.0, 0.0, 3.0, height), vec![]);
        allowed.foot = foot;
        let rules = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: true };
        fit_rows(&allowed, &tile(1.0, 1.0, 0.0), &rules, &never).unwrap().count()
    };
    let foot = Foot { depth: 0.3, within: Some(0), blocked: Vec::new() };
    assert_eq!((rows(2.3, None), rows(2.3, Some(foot.clone())), rows(2.29, Some(foot))), (6, 6, 3));
    // A shape that the rail may not touch, beside the second row, does not affect that row.
    let beside = Constraint { id: 1, shape: rectangle(-0.1, 1.1, 0.2, 0.1) };
    let foot = Foot { depth: 0.0, within: None, blocked: vec![beside] };
    assert_eq!(rows(2.0, Some(foot)), 6);
}

#[test]
fn what_holds_back_names_the_rail() {
    // 0.1 too low for two rows with the rail; without its limit there are two.
    let mut allowed = face(rectangle(0.0, 0.0, 2.0, 2.2), vec![]);
    let eave = Constraint { id: 7, shape: rectangle(0.0, 0.0, 2.0, 0.1) };
    allowed.foot = Some(Foot { depth: 0.2, within: Some(3), blocked: vec![eave] });
    let rules = RowRules { joints: Joints::Aligned, base: Base::Anywhere, hooked: true };
    let fit = fit_rows(&allowed, &tile(1.0, 1.0, 0.0), &rules, &never).unwrap();
    assert_eq!(fit.count(), 2);
    let question = Question { near: 0.3, movable: Vec::new(), farthest: 0.0, prices: true };
    let held = holds_back(&allowed, &fit, &question, &never).unwrap();
    let price = |id: usize| held.prices.iter().find(|price| price.id == id).map(|price| price.tiles);
    // A rail that may be beyond the face is below the strip.
    assert_eq!((price(7), price(3)), (Some(2), Some(2)));
    // A third tile beside two is stopped by what its rail would lie on.
    allowed.region = vec![rectangle(0.0, 0.0, 3.0, 1.3)];
    let corner = Constraint { id: 8, shape: rectangle(2.5, 0.0, 0.5, 0.2) };
    allowed.foot = Some(Foot { depth: 0.2, within: Some(3), blocked: vec![corner] });
    let fit = fit_rows(&allowed, &tile(1.0, 1.0, 0.0), &rules, &never).unwrap();
    let held = holds_back(&allowed, &fit, &question, &never).unwrap();
    assert_eq!((fit.count(), held.near[0].stops[0].by.clone()), (2, Barrier::Constraint(8)));
}
