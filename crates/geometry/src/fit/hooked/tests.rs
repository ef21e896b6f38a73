//! Hooked rows over all base lines, against every layout at every critical line, and faces from reported cases.

use super::super::brute::{
    Dice, all_sides, base_lines, face, random_face, rectangle, shape, span, stands, tile, touching,
};
use super::super::kernel::{Allowed, Base, Constraint, FINE, Fit, Joints, RowRules};
use super::super::tests::lay;
use super::*;
use crate::Polygon;
use crate::fit::fit_rows;

const HOOKED: RowRules = RowRules { joints: Joints::Free, base: Base::Anywhere, hooked: true };

/// Whether tiles of the row below are under the whole lower edge from `x`, except for joints of one gap.
fn carried(x: f64, below: &[f64], tile: &Tile) -> bool {
    let mut at = x + 1e-8;
    for &q in below {
        if q <= at + 1e-8 + if at > x + 2e-8 { tile.gap.x } else { 0.0 } {
            at = at.max(q + tile.size.x);
        }
    }
    at >= x + tile.size.x - 1e-7
}

/// The number of tiles in a row on its own.
fn packed(row: &[f64], tile: &Tile) -> usize {
    let pack = |(n, next), &x| if x >= next - 1e-8 { (n + 1, x + tile.pitch().x) } else { (n, next) };
    row.iter().fold((0, f64::NEG_INFINITY), pack).0
}

fn best(rows: &[Vec<f64>], tile: &Tile, below: Option<&[f64]>) -> usize {
    let Some((row, above)) = rows.split_first() else { return 0 };
    let places: Vec<f64> =
        row.iter().copied().filter(|&x| below.is_none_or(|b| carried(x, b, tile))).collect();
    let cap = above.iter().map(|row| packed(row, tile)).sum();
    let (mut most, mut chosen) = (0, Vec::new());
    choose(&places, above, tile, cap, &mut chosen, &mut most);
    most
}

fn choose(
    places: &[f64],
    above: &[Vec<f64>],
    tile: &Tile,
    cap: usize,
    chosen: &mut Vec<f64>,
    most: &mut usize,
) {
    if !chosen.is_empty() && chosen.len() + cap > *most {
        *most = (*most).max(chosen.len() + best(above, tile, Some(chosen)));
    }
    for (i, &x) in places.iter().enumerate() {
        if chosen.last().is_none_or(|last| x >= last + tile.pitch().x - 1e-10) {
            chosen.push(x);
            choose(&places[i + 1..], above, tile, cap, chosen, most);
            chosen.pop();
        }
    }
}

/// The most tiles with row 0 at `v`, by trying every set of places whole pitches from where a tile touches something;
/// `reached` if the rows on their own hold no more than that.
fn slow(allowed: &Allowed, tile: &Tile, v: f64, reached: usize) -> usize {
    let (pitch, sides) = (tile.pitch(), all_sides(allowed));
    let lines: Vec<f64> =
        (0..9).map(|k| v + f64::from(k) * pitch.y).take_while(|&v| v < span(allowed).1).collect();
    let mut places: Vec<f64> = lines
        .iter()
        .flat_map(|&line| touching(&sides, tile, line))
        .flat_map(|u| (-5..6).map(move |n| u + f64::from(n) * pitch.x))
        .collect();
    places.sort_unstable_by(f64::total_cmp);
    places.dedup_by(|a, b| (*a - *b).abs() < 1e-11);
    let rows: Vec<Vec<f64>> = lines
        .iter()
        .map(|&v| {
            places.iter().copied().filter(|&u| stands(allowed, tile, dvec2(u, v), FINE + 1e-11)).collect()
        })
        .collect();
    if rows.iter().map(|row| packed(row, tile)).sum::<usize>() <= reached {
        return reached;
    }
    (0..rows.len()).map(|base| best(&rows[base..], tile, None)).max().unwrap_or(0)
}

#[test]
fn hooked_rows_equal_every_layout_at_every_critical_line() {
    let (mut seen, mut lost) = (0, 0);
    for seed in 7000..7040 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 3.6, 2.6);
        let module = tile(dice.between(0.8, 1.3), dice.between(0.7, 1.0), [0.0, 0.01][dice.below(2)]);
        let fit = lay(&allowed, &module, &HOOKED);
        let lines = base_lines(&allowed, &module, true).into_iter();
        let slowly = lines.fold(0, |most, v| most.max(slow(&allowed, &module, v, most)));
        assert_eq!((fit.count(), fit.gap()), (slowly, 0), "seed {seed}");
        seen += fit.count();
        lost += lay(&allowed, &module, &RowRules { hooked: false, ..HOOKED }).count() - fit.count();
    }
    assert!(seen > 50 && lost > 0, "too easy: {seen}, {lost}");
}

#[test]
fn no_sampled_line_holds_more() {
    for seed in 7100..7200 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 4.5, 3.5);
        let module = tile(dice.between(0.9, 1.4), dice.between(0.8, 1.2), 0.006);
        let fit = lay(&allowed, &module, &HOOKED);
        for _ in 0..4 {
            let low = span(&allowed).0;
            let slowly = slow(&allowed, &module, dice.between(low, low + module.pitch().y), 0);
            assert!(slowly <= fit.count(), "seed {seed}: {slowly} > {}", fit.count());
        }
    }
}

fn proved(fit: &Fit) -> usize {
    assert_eq!(fit.gap(), 0, "{} of {}: {}", fit.count(), fit.bound, fit.proof.claim());
    fit.count()
}

#[test]
fn a_slope_with_a_pathway_strip_and_a_pipe_boot_is_proved() {
    // 60 ft by 5.112 m; 36 in reserved for a pathway at one end, a 4 in pipe with 12 in around it, room at the ridge.
    let module = tile(1.722, 1.134, 0.125 * 0.0254);
    let pipe = Polygon::circle(dvec2(11.5824, 2.0447), 0.3556, 64);
    for (strip, ridge) in [(17.3736, 0.6), (0.0, 0.6), (17.3736, 0.3), (17.3736, 0.9)] {
        let blocked = vec![
            rectangle(strip, -1.0, 0.9144, 7.112),
            pipe.clone(),
            rectangle(0.0, 5.112 - ridge, 18.288, ridge),
        ];
        let allowed = face(rectangle(0.0, 0.0, 18.288, 5.112), blocked);
        for module in [module, module.turned()] {
            let most = proved(&lay(&allowed, &module, &HOOKED));
            let free = lay(&allowed, &module, &RowRules { hooked: false, ..HOOKED }).count();
            let grid = lay(&allowed, &module, &RowRules { joints: Joints::Aligned, ..HOOKED }).count();
            assert!(grid <= most && most <= free, "{grid} {most} {free}");
        }
    }
}

#[test]
fn a_hip_of_sixty_modules_and_twelve_pipes_is_proved() {
    let (height, module) = (9.99, tile(1.722, 1.134, 0.006));
    let (width, slant) = (height * 2.0, height * 0.45);
    let blocked = (0..12).map(|i| {
        let share = (i as f64 * 0.618_034) % 1.0;
        let v = height * (0.05 + 0.85 * (i as f64 + 0.5) / 12.0);
        let inset = slant * v / height;
        let at = dvec2(inset + (width - 2.0 * inset) * (0.05 + 0.9 * share), v);
        let shape = if i % 2 == 0 {
            Polygon::circle(at, 0.15, 24)
        } else {
            rectangle(at.x - 0.2, at.y - 0.15, 0.4, 0.3)
        };
        Constraint { id: i, shape }
    });
    let outline = shape(&[(0.0, 0.0), (width, 0.0), (width - slant, height), (slant, height)]);
    let allowed = Allowed { region: vec![outline], blocked: blocked.collect(), foot: None, tolerance: FINE };
    let most = proved(&lay(&allowed, &module, &HOOKED));
    for joints in [Joints::Aligned, Joints::Lapped] {
        assert!(lay(&allowed, &module, &RowRules { joints, ..HOOKED }).count() <= most);
    }
    // On the courses too; and if stopped early, the bound is still valid.
    let base = Base::Courses { first: 0.127, exposure: 0.127, play: (0.0, 0.0) };
    assert!(proved(&lay(&allowed, &module, &RowRules { base, ..HOOKED })) <= most);
    for asks in 0..5 {
        let asked = std::cell::Cell::new(0);
        let stop = || asked.replace(asked.get() + 1) >= asks;
        let part = fit_rows(&allowed, &module, &HOOKED, &stop).unwrap();
        assert!(part.bound >= most && part.count() <= most);
    }
}
