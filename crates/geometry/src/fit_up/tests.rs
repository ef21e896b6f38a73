//! Decks with closed forms, and random ones measured from their corners.

use super::*;
use proptest::prelude::*;

const FOOT: f64 = 0.3048;

fn measured([a, b, c, d]: [DVec2; 4]) -> Measured {
    Measured {
        eave: a.distance(b),
        head: d.distance(c),
        left: a.distance(d),
        right: b.distance(c),
        rising: a.distance(c),
        falling: b.distance(d),
        bows: Bows::default(),
    }
}

#[test]
fn three_four_five_and_twelve_by_sixteen() {
    // Common practice, no source: 3-4-5 and its multiples; a 12 by 16 ft rectangle has diagonals of 20 ft.
    assert!((square_check(3.0, 4.0) - 5.0).abs() < 1e-12);
    assert!((square_check(9.0, 12.0) - 15.0).abs() < 1e-12);
    assert!((square_check(12.0 * FOOT, 16.0 * FOOT) - 20.0 * FOOT).abs() < 1e-12);
    let deck = Measured {
        eave: 16.0 * FOOT,
        head: 16.0 * FOOT,
        left: 12.0 * FOOT,
        right: 12.0 * FOOT,
        rising: 20.0 * FOOT,
        falling: 20.0 * FOOT,
        bows: Bows::default(),
    }
    .solve()
    .unwrap();
    assert!(deck.closing.abs() < 1e-12 && deck.racked_left.abs() < 1e-12 && deck.racked_right.abs() < 1e-12);
    assert!((deck.corners[2] - dvec2(16.0, 12.0) * FOOT).length() < 1e-12);
}

#[test]
fn a_parallelogram_is_racked_by_what_its_diagonals_say() {
    // The parallelogram law: d1² + d2² = 2 (a² + b²); and d1² - d2² = 4 w δ.
    let (w, height, by) = (9.0, 4.0, 0.05);
    let m = measured([dvec2(0.0, 0.0), dvec2(w, 0.0), dvec2(w + by, height), dvec2(by, height)]);
    assert!((m.rising.powi(2) + m.falling.powi(2) - 2.0 * (m.eave.powi(2) + m.left.powi(2))).abs() < 1e-9);
    assert!((racking(m.rising, m.falling, w) - by).abs() < 1e-12);
    let deck = m.solve().unwrap();
    assert!((deck.racked_left - by).abs() < 1e-12 && (deck.racked_right - by).abs() < 1e-12);
    // The rule: the diagonals differ by about 2 δ w / D (common practice, no source).
    let mean = (m.rising + m.falling) / 2.0;
    assert!((m.rising - m.falling - 2.0 * by * w / mean).abs() < 1e-12);
}

#[test]
fn an_isosceles_trapezoid_obeys_ptolemy() {
    // Ptolemy's theorem for the cyclic quadrilateral: d² = a b + c².
    let m = measured([dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(8.5, 4.0), dvec2(1.5, 4.0)]);
    assert!((m.rising * m.falling - (m.eave * m.head + m.left * m.right)).abs() < 1e-9);
    let deck = m.solve().unwrap();
    assert!((deck.racked_left - 1.5).abs() < 1e-9 && (deck.racked_right + 1.5).abs() < 1e-9);
    let (from, to) = deck.opening(1.0, 2.0);
    assert!((from - 1.125).abs() < 1e-9 && (to - 8.875).abs() < 1e-9);
}

#[test]
fn a_head_out_of_parallel_moves_one_end_of_the_line() {
    let mut m = measured([dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(10.0, 4.1), dvec2(0.0, 4.0)]);
    m.bows = Bows { eave: 0.01, left: 0.02, ..Bows::default() };
    let deck = m.solve().unwrap();
    assert!((deck.head_out_of_parallel - 0.1).abs() < 1e-9);
    let eave = deck.snap(0.3, Along::Eave);
    assert!((eave.at_left, eave.at_right) == (0.3, 0.3) && (eave.at_middle - 0.29).abs() < 1e-12);
    let head = deck.snap(0.3, Along::Head);
    assert!((head.at_left - 0.3).abs() < 1e-12 && (head.at_right - 0.4).abs() < 1e-9);
    let between = deck.snap(0.3, Along::Between);
    assert!((between.at_right - 0.35).abs() < 1e-4);
    assert!((deck.opening(0.0, 4.0).0 - 0.02).abs() < 1e-9);
}

#[test]
fn a_row_closes_or_says_what_is_missing() {
    let row = RowToClose {
        modules: 4,
        module: 1.722,
        module_varies: 0.002,
        reveal: 0.006,
        least: 0.0016,
        reveal_varies: 0.0,
        opening: 4.0 * 1.722 + 3.0 * 0.004,
    };
    let closed = row.close().unwrap();
    // Three joints of 6 mm are 6 mm too long; at 4 mm they fill the opening.
    assert!((closed.reveal - 0.004).abs() < 1e-12 && closed.spare.abs() < 1e-12);
    assert!((closed.too_long - 0.006).abs() < 1e-12);
    // 3 (4 - 1.6) = 7.2 mm to absorb: less than 4 · 2 = 8 mm, but more than 2 · √4 = 4 mm.
    assert!((closed.worst - 0.008).abs() < 1e-12 && (closed.likely - 0.004).abs() < 1e-12);
    assert_eq!((closed.closes, closed.closes_at_worst, closed.closes_likely), (true, false, true));
    // Spare room does not open the joints.
    let wide = RowToClose { opening: row.opening + 0.1, reveal: 0.003, ..row }.close().unwrap();
    assert!(wide.reveal == 0.003 && wide.too_long == 0.0 && wide.closes_at_worst);
    assert!((wide.spare - 0.103).abs() < 1e-12);
    let narrow = RowToClose { opening: 4.0 * 1.722, ..row }.close().unwrap();
    assert!(!narrow.closes && (narrow.spare + 0.0048).abs() < 1e-12);
    // Pythagoras again: errors of 3 and 4 combine to 5.
    assert!((stack(2, 3.0 / 2.0_f64.sqrt(), 4.0).1 - 5.0).abs() < 1e-12);
    assert!(RowToClose { modules: 0, ..row }.close().is_err());
    assert!(RowToClose { reveal: -0.001, ..row }.close().is_err());
    assert!(RowToClose { opening: f64::NAN, ..row }.close().is_err());
}

#[test]
fn impossible_decks_are_reported() {
    let good = measured([dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(10.0, 4.0), dvec2(0.0, 4.0)]);
    let error = |m: Measured| m.solve().unwrap_err().to_string();
    assert!(error(Measured { head: f64::NAN, ..good }).contains("the head of NaN"));
    assert!(error(Measured { left: 0.0, ..good }).contains("the left rake of 0"));
    assert!(error(Measured { falling: 20.0, ..good }).contains("no triangle"));
    let bows = Bows { eave: 3.0, ..Bows::default() };
    assert!(error(Measured { bows, ..good }).contains("the bend of the eave"));
}

prop_compose! {
    fn deck()(
        wide in 3.0..20.0f64, left in 2.0..9.0f64, right in 2.0..9.0f64, in_left in -0.8..0.8f64, in_right in -0.8..0.8f64,
    ) -> [DVec2; 4] {
        [dvec2(0.0, 0.0), dvec2(wide, 0.0), dvec2(wide - in_right, right), dvec2(in_left, left)]
    }
}

proptest! {
    #[test]
    fn measurements_reproduce_the_corners(corners in deck()) {
        let solved = measured(corners).solve().unwrap();
        prop_assert!(solved.closing.abs() < 1e-9 && solved.adjusted < 1e-9);
        for (p, q) in corners.iter().zip(solved.corners) {
            prop_assert!(p.distance(q) < 1e-8);
        }
    }

    #[test]
    fn a_misreading_shows_and_is_spread(corners in deck(), which in 0..6usize, by in -0.03..0.03f64) {
        let mut m = measured(corners);
        let all = [&mut m.eave, &mut m.head, &mut m.left, &mut m.right, &mut m.rising, &mut m.falling];
        for (i, length) in all.into_iter().enumerate() {
            if i == which {
                *length += by;
            }
        }
        let solved = m.solve().unwrap();
        let again = measured(solved.corners);
        // All six agree with the corners, except for the shared error; and no measurement moved by more than the misreading.
        prop_assert!(again.solve().unwrap().closing.abs() < 1e-9);
        prop_assert!(solved.adjusted <= by.abs() + 1e-9);
        if which == 1 {
            prop_assert!((solved.closing + by).abs() < 1e-9);
        }
        let changes = [again.eave - m.eave, again.head - m.head, again.left - m.left, again.right - m.right,
            again.rising - m.rising, again.falling - m.falling];
        // The true corners are one way to make all agree, by changing one measurement by `by`: least squares does no worse.
        prop_assert!(changes.iter().map(|c| c * c).sum::<f64>() <= by * by * (1.0 + 0.01) + 1e-15);
    }
}
