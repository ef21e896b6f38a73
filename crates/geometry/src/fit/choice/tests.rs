use super::super::brute::{Dice, face, random_face, rectangle, shape, tile};
use super::super::tests::never;
use super::*;
use crate::Rect;
use glam::dvec2;

fn some_cells(dice: &mut Dice, columns: usize, rows: usize) -> Vec<Cell> {
    let mut cells = Vec::new();
    for row in 0..rows {
        for column in 0..columns {
            if dice.below(5) > 0 {
                let rect = Rect::at(dvec2(column as f64 * 1.7, row as f64), dvec2(1.7, 1.0));
                cells.push(Cell { column, row, rect, value: dice.between(-1.0, 4.0) });
            }
        }
    }
    cells
}

/// Counted independently, side by side and corner by corner.
fn reckon(cells: &[Cell], taken: u32, costs: &Costs) -> f64 {
    let on = |c: i64, r: i64| {
        cells
            .iter()
            .enumerate()
            .any(|(i, k)| taken >> i & 1 == 1 && (k.column as i64, k.row as i64) == (c, r))
    };
    let mut worth = 0.0;
    for (i, k) in cells.iter().enumerate().filter(|(i, _)| taken >> i & 1 == 1) {
        let (c, r) = (k.column as i64, k.row as i64);
        worth += cells[i].value;
        for (open, cost) in [
            (!on(c - 1, r), costs.side),
            (!on(c + 1, r), costs.side),
            (!on(c, r - 1), costs.foot),
            (!on(c, r + 1), costs.head),
        ] {
            worth -= if open { cost } else { 0.0 };
        }
        for (dc, dr) in [(1, 1), (1, -1), (-1, 1), (-1, -1)] {
            match (on(c + dc, r), on(c, r + dr), on(c + dc, r + dr)) {
                (false, false, _) => worth -= costs.outer_corner,
                (true, true, false) => worth -= costs.inner_corner,
                _ => {}
            }
        }
    }
    worth
}

#[test]
fn worth_and_number_equal_every_choice_counted() {
    for seed in 1..120 {
        let mut dice = Dice::new(seed);
        let (columns, rows) = (2 + dice.below(3), 2 + dice.below(2));
        let cells = some_cells(&mut dice, columns, rows);
        let mut costs = Costs { foot: 0.7, head: 1.1, side: dice.between(0.0, 1.0), ..Costs::default() };
        if seed % 2 == 0 {
            (costs.outer_corner, costs.inner_corner) = (dice.between(0.0, 0.8), 0.5);
        }
        let every = 0..1u32 << cells.len();
        let best = every.clone().map(|s| reckon(&cells, s, &costs)).fold(f64::MIN, f64::max);
        let found = fit_worth(&cells, &costs, &never).unwrap();
        assert!((found.worth - best).abs() < 1e-9 && found.proved(), "seed {seed}: {} {best}", found.worth);
        let field = Field::new(&cells, &costs).unwrap();
        let (cut, bound) = field.cut(&costs, 0.0);
        assert!(bound >= best - 1e-9 && cut.len() == cells.len());
        let number = dice.below(cells.len() + 1);
        let best = every.filter(|s| s.count_ones() as usize == number).map(|s| reckon(&cells, s, &costs));
        let best = best.fold(f64::MIN, f64::max);
        let found = fit_number(&cells, number, &Aim::Worth(costs), &never).unwrap();
        assert_eq!(found.chosen.len(), number);
        assert!((found.worth - best).abs() < 1e-9 && found.proved(), "seed {seed}");
    }
}

#[test]
fn a_cut_equals_a_sweep_and_wide_grids_keep_an_honest_bound() {
    for seed in 1..60 {
        let mut dice = Dice::new(seed);
        let (columns, rows) = (3 + dice.below(8), 3 + dice.below(6));
        let cells = some_cells(&mut dice, columns, rows);
        let plain = Costs { foot: 0.4, head: 0.9, side: 0.6, ..Costs::default() };
        let cut = fit_worth(&cells, &plain, &never).unwrap();
        let field = Field::new(&cells, &plain).unwrap();
        let Swept::Best(Some(swept)) = sweep(&field, &plain, None, &never) else { panic!("too wide") };
        assert!(
            (field.proved(swept, &plain, words::common::SIDE).worth - cut.worth).abs() < 1e-9,
            "seed {seed}"
        );
        assert!(cut.proved());
        // The method for wide grids, compared with the exact one.
        let number = cells.len() / 2;
        let exact = fit_number(&cells, number, &Aim::Worth(plain), &never).unwrap();
        let asked = std::cell::Cell::new(0);
        let at_once = || asked.replace(asked.get() + 1) == 0;
        let wide = fit_number(&cells, number, &Aim::Worth(plain), &at_once).unwrap();
        assert!(wide.bound >= exact.worth - 1e-9 && wide.worth <= exact.worth + 1e-9, "seed {seed}");
        assert_eq!(wide.chosen.len(), number);
    }
}

#[test]
fn six_of_a_wide_row_make_a_block_and_fewest_rows_a_line() {
    let allowed = face(rectangle(0.0, 0.0, 10.0, 4.0), vec![]);
    let places = cells(&allowed, &tile(1.0, 1.0, 0.0), dvec2(0.0, 0.0)).unwrap();
    assert_eq!(places.len(), 40);
    let compact = fit_number(&places, 6, &Aim::Compact, &never).unwrap();
    assert!((compact.worth + 10.0).abs() < 1e-9 && compact.proved(), "2 x 3 has 10 m around");
    let line = fit_number(&places, 6, &Aim::FewRows, &never).unwrap();
    assert!((line.worth + 14.0).abs() < 1e-9 && line.proved() && line.method.now().starts_with("1 rows"));
    assert!(fit_number(&places, 41, &Aim::Compact, &never).unwrap_err().to_string().contains("40 places"));
    assert!(fit_worth(&places, &Costs { side: -1.0, ..Costs::default() }, &never).is_err());
    let none = fit_number(&places, 0, &Aim::FewRows, &never).unwrap();
    assert!(none.chosen.is_empty() && none.worth == 0.0);
}

#[test]
fn cells_are_the_places_of_the_grid() {
    for seed in 1..100 {
        let mut dice = Dice::new(seed);
        let allowed = random_face(&mut dice, 8.0, 6.0);
        let module = tile(1.1, 0.9, 0.01);
        let origin = dvec2(dice.between(-20.0, 20.0), dice.between(-20.0, 20.0));
        let places = cells(&allowed, &module, origin).unwrap();
        let low = allowed.region[0].outer.iter().map(|p| p.y).fold(f64::INFINITY, f64::min);
        let v = origin.y + ((low - origin.y) / module.pitch().y).ceil() * module.pitch().y;
        let slow = super::super::brute::grid_cells(&allowed, &module, 0.0, dvec2(origin.x, v));
        assert_eq!(places.len(), slow.len(), "seed {seed}");
        for cell in &places {
            let off = (cell.rect.min - origin) / module.pitch();
            assert!((off - off.round()).abs().max_element() < 1e-7);
        }
    }
    let sliver = face(shape(&[(0.0, 0.0), (9.0, 0.0), (9.0, 0.1)]), vec![]);
    assert!(cells(&sliver, &tile(1.0, 1.0, 0.0), dvec2(0.0, 0.0)).unwrap().is_empty());
}
