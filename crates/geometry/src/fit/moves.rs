//! The shortest move of a constraint that gains a tile while the rows stay on their lines. As the constraint moves, the
//! interval ends that it causes in the rows move piecewise linearly; the count can change only where such an end is
//! whole pitches from another.

use super::blocked::Patch;
use super::carry::{Carried, Round};
use super::grid::{Row, Stretches};
use super::kernel::{Allowed, Base, Joints, Placed, RowRules, Tile};
use super::room::{Room, THIN};
use super::row_lines::{greedy, inside, whole_pitches};
use crate::Rect;
use chalkcourse_words::{Said, later as words};
use glam::{DVec2, dvec2};
use serde::Serialize;

/// The shortest move of a constraint that gains tiles.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Move {
    /// All shapes of this number move together.
    pub id: usize,
    /// The move, along u or along v, metres.
    pub by: DVec2,
    /// Tiles gained.
    pub wins: usize,
    /// What was searched.
    pub searched: Said,
}

/// The lines of the rows of a fit, over the whole face.
pub(super) struct Lines {
    pub(super) tile: Tile,
    pub(super) tolerance: f64,
    /// Whether the first line is the base row's and must hold a tile.
    pub(super) grounded: bool,
    /// The joints, if every tile above the base row must be carried.
    pub(super) hooked: Option<Joints>,
    /// v of each row, with the u of one of its places for a row of a grid.
    pub(super) rows: Vec<(f64, Option<f64>)>,
}

impl Lines {
    pub(super) fn of(allowed: &Allowed, tile: &Tile, rules: &RowRules, placed: &[Placed]) -> Option<Self> {
        let (first, tile) = (placed.first()?, *tile);
        let pitch = tile.pitch();
        let bounds = Rect::around(allowed.region.iter().flat_map(|s| s.outer.iter().copied()))?;
        let origin = dvec2(first.rect.min.x, first.rect.min.y - first.row as f64 * pitch.y);
        // On the courses the base row is given; otherwise there may be room for rows below it. A line too many does no
        // harm.
        let grounded = rules.base != Base::Anywhere;
        let below = if grounded { 0.0 } else { ((origin.y - bounds.min.y) / pitch.y).ceil() };
        let above = ((bounds.max.y - origin.y) / pitch.y).ceil();
        let rows = (-below as i64..above as i64)
            .map(|k| {
                let odd = (k - first.row as i64).rem_euclid(2) == 1;
                let u = match rules.joints {
                    Joints::Free => None,
                    Joints::Lapped if odd => Some(origin.x + pitch.x / 2.0),
                    _ => Some(origin.x),
                };
                (origin.y + k as f64 * pitch.y, u)
            })
            .collect();
        let hooked = rules.hooked.then_some(rules.joints);
        Some(Self { tile, tolerance: allowed.tolerance, grounded, hooked, rows })
    }
}

/// The shortest gaining move along u and the shortest along v, if there is one.
pub(super) fn least_moves(
    id: usize,
    (rest, own): (&Room, &[Patch]),
    lines: &Lines,
    farthest: f64,
    count: usize,
    stop: &dyn Fn() -> bool,
) -> Vec<Move> {
    let pitch = lines.tile.pitch();
    let farthest = farthest.clamp(0.0, 1e3);
    let axes = [dvec2(1.0, 0.0), dvec2(0.0, 1.0)];
    axes.into_iter()
        .filter_map(|axis| {
            let cuts = critical(rest, own, lines, farthest, axis);
            let mut cells: Vec<(f64, f64)> =
                cuts.windows(2).filter(|c| c[1] - c[0] > THIN).map(|c| (c[0], c[1])).collect();
            let nearest = |c: &(f64, f64)| c.0.abs().min(c.1.abs());
            cells.sort_by(|p, q| nearest(p).total_cmp(&nearest(q)));
            let mut exact = true;
            cells.into_iter().take_while(|_| !stop()).find_map(|(lo, hi)| {
                let (total, sure) = counted(rest, own, lines, axis * ((lo + hi) / 2.0));
                exact &= sure;
                let wins = total.checked_sub(count).filter(|&w| w > 0)?;
                // As short as the cell allows, clear of the tolerance.
                let by = if lo >= 0.0 {
                    inside(lo, hi, lines.tolerance)
                } else {
                    -inside(-hi, -lo, lines.tolerance)
                };
                let searched = words::fill::every_move_of_up_to(
                    &farthest,
                    &if axis.x > 0.0 { "u" } else { "v" },
                    &format_args!("{:.4}", pitch.y),
                    &if lines.rows.iter().any(|r| r.1.is_some()) {
                        words::fill::AND_IN_THEIR_COLUMNS
                    } else {
                        words::fill::AND_FREE_TO_SLIDE
                    },
                    &lines.hooked.is_some().then_some(words::fill::EVERY_UPPER_TILE_CARRIED),
                    &(!exact).then_some(words::fill::TOO_MANY_ENDS_FOR_THE),
                );
                Some(Move { id, by: axis * by, wins, searched })
            })
        })
        .collect()
}

/// All moves at which a count may change, sorted, with 0 and the farthest ones in both directions.
fn critical(rest: &Room, own: &[Patch], lines: &Lines, farthest: f64, axis: DVec2) -> Vec<f64> {
    let pitch = lines.tile.pitch().x;
    let mut cuts = vec![-farthest, 0.0, farthest];
    let mut shares = Vec::new();
    // In rows that slide and carry each other, ends meet across rows; otherwise each row is independent.
    let together = if lines.hooked == Some(Joints::Free) { lines.rows.len().max(1) } else { 1 };
    for rows in lines.rows.chunks(together) {
        let ends = |&(v, column): &(f64, Option<f64>)| -> Vec<f64> {
            let row = rest.slab(v).map(|slab| Row::of(0, slab, v, 0.0));
            let ends = || row.iter().flat_map(Row::all).flat_map(|&(a, b)| [a, b]).collect();
            column.map_or_else(ends, |u| vec![u])
        };
        let fixed: Vec<f64> = rows.iter().flat_map(ends).collect();
        // The bends of the patches where the rows meet them.
        let mut bends = vec![-farthest, farthest];
        if axis.y > 0.0 {
            let met =
                rows.iter().flat_map(|&(v, _)| own.iter().flat_map(Patch::bends).map(move |bend| v - bend));
            bends.extend(met.filter(|move_| move_.abs() < farthest));
            bends.sort_unstable_by(f64::total_cmp);
            cuts.extend(bends.iter().copied());
        }
        for piece in bends.windows(2).filter(|p| p[1] - p[0] > THIN) {
            let mut moving: Vec<[f64; 2]> = Vec::new();
            for &(v, _) in rows {
                let middle = v - axis.y * (piece[0] + piece[1]) / 2.0;
                for patch in own.iter().filter(|p| p.lo < middle && middle < p.hi) {
                    let at =
                        |by: f64, side: fn(&Patch, f64) -> f64| side(patch, v - axis.y * by) + axis.x * by;
                    moving.push([at(piece[0], Patch::left_at), at(piece[1], Patch::left_at)]);
                    moving.push([at(piece[0], Patch::right_at), at(piece[1], Patch::right_at)]);
                }
            }
            shares.clear();
            for (i, &end) in moving.iter().enumerate() {
                for &still in &fixed {
                    whole_pitches([still; 2], end, pitch, &mut shares);
                }
                for &other in &moving[..i] {
                    whole_pitches(other, end, pitch, &mut shares);
                }
            }
            cuts.extend(shares.iter().map(|s| piece[0] + (piece[1] - piece[0]) * s));
        }
    }
    cuts.sort_unstable_by(f64::total_cmp);
    cuts
}

/// The number of tiles in the rows when the constraint is moved, and whether that is certainly the maximum.
fn counted(rest: &Room, own: &[Patch], lines: &Lines, by: DVec2) -> (usize, bool) {
    let pitch = lines.tile.pitch().x;
    let rows: Vec<Row> =
        lines.rows.iter().enumerate().map(|(k, &(v, _))| free(rest, own, k, v, by)).collect();
    if lines.hooked == Some(Joints::Free) {
        let carried = Carried::new(&rows, pitch, Round::Lay, lines.grounded);
        return (carried.count(), carried.exact);
    }
    let first = lines.rows.iter().find_map(|row| row.1).unwrap_or(0.0);
    // The places of each row in half pitches from the first, and those of the row as the lowest.
    let places_in = |free: &[(f64, f64)], column: Option<f64>| -> Vec<i64> {
        match column {
            None => (0..greedy(free.iter().copied(), pitch, |_, _| {}) as i64).collect(),
            Some(u) => free
                .iter()
                .flat_map(|&(a, b)| ((a - u) / pitch).ceil() as i64..=((b - u) / pitch).floor() as i64)
                .map(|n| n * 2 + ((u - first) / pitch * 2.0).round() as i64)
                .collect(),
        }
    };
    let with_columns = || rows.iter().zip(&lines.rows);
    let places: Vec<Vec<i64>> =
        with_columns().map(|(row, &(_, column))| places_in(&row.free, column)).collect();
    let lowest: Vec<Vec<i64>> =
        with_columns().map(|(row, &(_, column))| places_in(row.lowest(), column)).collect();
    if lines.grounded && lowest.first().is_none_or(Vec::is_empty) {
        return (0, true);
    }
    let Some(joints) = lines.hooked else { return (places.iter().map(Vec::len).sum(), true) };
    let aside = i64::from(joints == Joints::Lapped);
    let bases = if lines.grounded { 1 } else { places.len() };
    let upon = |base: usize| {
        let mut below: Option<Vec<i64>> = None;
        let mut total = 0;
        for row in lowest.iter().skip(base).take(1).chain(places.iter().skip(base + 1)) {
            let mut here = row.clone();
            if let Some(below) = &below {
                here.retain(|n| [n - aside, n + aside].iter().all(|m| below.binary_search(m).is_ok()));
            }
            total += here.len();
            below = Some(here);
        }
        total
    };
    ((0..bases).map(upon).max().unwrap_or(0), true)
}

/// The row at `v` when the constraint is moved.
fn free(rest: &Room, own: &[Patch], k: usize, v: f64, by: DVec2) -> Row {
    let met = v - by.y;
    let mut blocked: Vec<(f64, f64)> = own
        .iter()
        .filter(|p| p.lo < met && met < p.hi)
        .map(|p| (p.left_at(met) + by.x, p.right_at(met) + by.x))
        .collect();
    blocked.sort_unstable_by(|p, q| p.0.total_cmp(&q.0));
    let left_of = |stretches: &Stretches| {
        let mut free = Stretches::new();
        for &(a, b) in stretches {
            let mut from = a;
            for &(left, right) in blocked.iter().filter(|s| s.1 > a && s.0 < b) {
                if left > from {
                    free.push((from, left));
                }
                from = from.max(right);
            }
            if from < b {
                free.push((from, b));
            }
        }
        free
    };
    let Some(slab) = rest.slab(v) else { return Row { k, free: Stretches::new(), foot: None } };
    let row = Row::of(k, slab, v, 0.0);
    Row { k, free: left_of(&row.free), foot: row.foot.as_ref().map(left_of) }
}

#[cfg(test)]
mod tests {
    use super::super::brute::{Dice, face, grid_cells, random_face, rectangle, row_count, tile};
    use super::super::hold::{Barrier, Question, holds_back};
    use super::super::kernel::{Allowed, Base, Joints, RowRules};
    use super::super::tests::{lay, never};
    use super::*;

    fn rules(joints: Joints) -> RowRules {
        RowRules { joints, base: Base::Anywhere, hooked: false }
    }

    fn question() -> Question {
        Question { near: 0.5, movable: vec![0], farthest: 0.6, prices: true }
    }

    #[test]
    fn a_vent_that_sticks_into_the_third_column_is_reported_to_the_millimetre() {
        // Exactly four 1 m columns; the vent extends 40 mm into the third from a 1 m wide strip on its right.
        let allowed = face(rectangle(0.0, 0.0, 4.0, 1.0), vec![rectangle(2.96, 0.0, 0.2, 0.2)]);
        for joints in [Joints::Free, Joints::Aligned] {
            let fit = lay(&allowed, &tile(1.0, 1.0, 0.0), &rules(joints));
            assert_eq!(fit.count(), 2);
            let held = holds_back(&allowed, &fit, &question(), &never).unwrap();
            assert_eq!((held.prices[0].id, held.prices[0].tiles, held.prices[0].proved), (0, 2, true));
            let right = held.moves.iter().find(|m| m.by.x != 0.0).unwrap();
            assert!((right.by.x - 0.04).abs() < 1e-8 && right.wins == 1, "{right:?}");
            let down = held.moves.iter().find(|m| m.by.y != 0.0).unwrap();
            assert!((down.by.y + 0.2).abs() < 1e-8 && down.wins == 2, "{down:?}");
            let near = &held.near[0];
            assert_eq!(near.stops[0].by, Barrier::Constraint(0));
            assert!((near.stops[0].depth() - 0.04).abs() < 1e-8, "{near:?}");
        }
    }

    #[test]
    fn the_top_row_of_an_exact_height_counts_too() {
        // Exactly two rows of two with joints of 6 mm; a vent 30 mm into the upper right place.
        let module = tile(1.0, 1.0, 0.006);
        let allowed = face(rectangle(0.0, 0.0, 2.006, 2.006), vec![rectangle(1.5, 1.976, 0.1, 0.1)]);
        for base in [Base::Anywhere, Base::Courses { first: 0.0, exposure: 0.2, play: (0.0, 0.0) }] {
            for joints in [Joints::Free, Joints::Aligned] {
                let fit = lay(&allowed, &module, &RowRules { base, ..rules(joints) });
                assert_eq!(fit.count(), 3);
                let held = holds_back(&allowed, &fit, &question(), &never).unwrap();
                let up = held.moves.iter().find(|m| m.by.y != 0.0).unwrap();
                assert!((up.by.y - 0.03).abs() < 1e-8 && up.wins == 1, "{up:?}");
                let near = &held.near[0];
                assert!((near.stops[0].along_v + 0.03).abs() < 1e-8, "{near:?}");
            }
        }
    }

    #[test]
    fn a_side_that_stops_is_named_with_its_depth() {
        // 2.9 m wide: the third column lacks 0.1 m at side 1, the right one.
        let allowed = face(rectangle(0.0, 0.0, 2.9, 1.0), vec![]);
        let fit = lay(&allowed, &tile(1.0, 1.0, 0.0), &rules(Joints::Free));
        let held = holds_back(&allowed, &fit, &Question { near: 0.2, ..question() }, &never).unwrap();
        let right = held.near.iter().find(|n| n.rect.min.x > 1.5).unwrap();
        assert_eq!(right.stops[0].by, Barrier::Side { shape: 0, ring: 0, side: 1 });
        assert!((right.stops[0].along_u + 0.1).abs() < 1e-8, "{right:?}");
        assert!(held.moves.is_empty() && held.prices.is_empty());
    }

    /// The count on the fit's lines when shape 0 is moved, computed the slow way.
    fn slow(
        allowed: &Allowed,
        lines: &[f64],
        module: &super::super::Tile,
        column: Option<f64>,
        by: DVec2,
    ) -> usize {
        let mut moved = allowed.clone();
        for c in moved.blocked.iter_mut().filter(|c| c.id == 0) {
            c.shape = c.shape.map(|p| p + by);
        }
        let shapes = moved.region.iter().chain(moved.blocked.iter().map(|c| &c.shape));
        let sides: Vec<_> = shapes.flat_map(|s| s.sides().map(|x| (x.2, x.3)).collect::<Vec<_>>()).collect();
        let pitch = module.pitch();
        match column {
            None => lines.iter().map(|&v| row_count(&moved, &sides, module, v)).sum(),
            Some(u) => {
                let low = moved.region[0].outer.iter().map(|p| p.y).fold(f64::INFINITY, f64::min);
                let v = lines.first().map_or(low, |&v| v + ((low - 1e-7 - v) / pitch.y).ceil() * pitch.y);
                grid_cells(&moved, module, 0.0, dvec2(u, v)).len()
            }
        }
    }

    #[test]
    fn a_least_move_wins_and_no_smaller_sampled_one_does() {
        let (mut moves, mut prices) = (0, 0);
        for seed in 1..400 {
            let mut dice = Dice::new(seed);
            let allowed = random_face(&mut dice, 8.0, 5.0);
            if allowed.blocked.is_empty() {
                continue;
            }
            let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), 0.006);
            let joints = if seed % 2 == 0 { Joints::Free } else { Joints::Aligned };
            let fit = lay(&allowed, &module, &rules(joints));
            let held = holds_back(&allowed, &fit, &question(), &never).unwrap();
            prices += held.prices.iter().map(|p| p.tiles).sum::<usize>();
            let Some(first) = fit.placed.first() else { continue };
            let base = first.rect.min.y - first.row as f64 * module.pitch().y;
            let lines: Vec<f64> = (-9..10).map(|k| base + f64::from(k) * module.pitch().y).collect();
            let column = (joints == Joints::Aligned).then_some(first.rect.min.x);
            for axis in [dvec2(1.0, 0.0), dvec2(0.0, 1.0)] {
                let found = held.moves.iter().find(|m| m.by.dot(axis) != 0.0);
                let reach = found.map_or(0.6, |m| m.by.length());
                for _ in 0..6 {
                    let by = axis * dice.between(-1.0, 1.0) * (reach - 1e-7);
                    assert!(slow(&allowed, &lines, &module, column, by) <= fit.count(), "seed {seed} {by}");
                }
                if let Some(found) = found {
                    moves += 1;
                    // Slightly farther, where the slow way doesn't need the tolerance.
                    let got = slow(&allowed, &lines, &module, column, found.by * (1.0 + 1e-9));
                    assert_eq!(got, fit.count() + found.wins, "seed {seed} {found:?}");
                }
            }
            for near in &held.near {
                for stop in near.stops.iter().take(1) {
                    assert!(stop.depth() > 0.0 && stop.depth() <= 0.5);
                }
            }
        }
        assert!(moves > 20 && prices > 50, "{moves} moves, {prices} tiles");
    }

    #[test]
    fn a_hooked_move_wins_what_a_new_fit_confirms_and_no_smaller_sampled_one_does() {
        let mut moves = 0;
        for seed in 500..640 {
            let mut dice = Dice::new(seed);
            let allowed = random_face(&mut dice, 7.0, 4.0);
            if allowed.blocked.is_empty() {
                continue;
            }
            let module = tile(dice.between(0.8, 1.8), dice.between(0.7, 1.3), 0.006);
            let joints = [Joints::Free, Joints::Aligned, Joints::Lapped][seed as usize % 3];
            let hooked = RowRules { hooked: true, ..rules(joints) };
            let fit = lay(&allowed, &module, &hooked);
            let Some(first) = fit.placed.first() else { continue };
            // The same lines, given as courses one row apart that begin below the face.
            let base = Base::Courses {
                first: first.rect.min.y - 9.0 * module.pitch().y,
                exposure: module.pitch().y,
                play: (0.0, 0.0),
            };
            let moved = |by: DVec2| {
                let mut moved = allowed.clone();
                for c in moved.blocked.iter_mut().filter(|c| c.id == 0) {
                    c.shape = c.shape.map(|p| p + by);
                }
                lay(&moved, &module, &RowRules { base, ..hooked }).count()
            };
            let held = holds_back(&allowed, &fit, &question(), &never).unwrap();
            for axis in [dvec2(1.0, 0.0), dvec2(0.0, 1.0)] {
                let found = held.moves.iter().find(|m| m.by.dot(axis) != 0.0);
                let reach = found.map_or(0.6, |m| m.by.length());
                // A grid that is laid again may shift its columns too; sliding rows have no columns to keep.
                for _ in 0..if joints == Joints::Free { 5 } else { 0 } {
                    let by = axis * dice.between(-1.0, 1.0) * (reach - 1e-7);
                    assert!(moved(by) <= fit.count(), "seed {seed} {by}");
                }
                if let Some(found) = found {
                    moves += 1;
                    assert!(found.searched.now().ends_with("every upper tile carried"));
                    let won = moved(found.by * (1.0 + 1e-8));
                    assert!(won >= fit.count() + found.wins, "seed {seed} {found:?}");
                    assert!(
                        joints != Joints::Free || won == fit.count() + found.wins,
                        "seed {seed} {found:?}"
                    );
                }
            }
        }
        assert!(moves > 20, "{moves} moves");
    }
}
