use super::*;
use crate::raise::{Footprint, Side, raise};
use crate::{FaceInput, Pitch, Roof};
use glam::dvec2;

fn rectangle(x: f64, y: f64, wide: f64, deep: f64) -> Polygon {
    Polygon::new(vec![dvec2(x, y), dvec2(x + wide, y), dvec2(x + wide, y + deep), dvec2(x, y + deep)])
}

fn rise(rise: f64) -> Pitch {
    Pitch::from_rise_in_12(rise).unwrap()
}

/// A part on a rectangle: south, east, north and west sides by rise in 12; 0 is a gable.
fn part(number: usize, ground: Polygon, eave: f64, rises: [f64; 4]) -> Vec<Surface> {
    let side = |r: f64| if r == 0.0 { Side::gable() } else { Side::sloped(rise(r), eave) };
    let mut footprint = Footprint::even(ground, Side::gable());
    footprint.sides[0] = rises.map(side).to_vec();
    raised(number, &footprint)
}

fn raised(number: usize, footprint: &Footprint) -> Vec<Surface> {
    let raised = raise(footprint).unwrap();
    let faces = raised.faces.into_iter();
    faces.map(|f| Surface { part: number, outline: f.outline, plane: f.plane, deck: true }).collect()
}

fn roof_of(surfaces: &[Surface]) -> (Vec<Piece>, Roof) {
    let pieces = envelope(surfaces, Tolerances::default()).unwrap();
    let inputs: Vec<FaceInput> = pieces
        .iter()
        .map(|piece| FaceInput {
            outline: piece.outline.clone(),
            sides: Vec::new(),
            plane: surfaces[piece.surfaces[0]].plane,
            overruled: piece.kinds.clone(),
        })
        .collect();
    let roof = Roof::assemble(&inputs, Tolerances::default());
    (pieces, roof)
}

fn total(roof: &Roof, kind: EdgeKind) -> f64 {
    roof.lines().iter().filter(|line| line.kind == kind).map(|line| line.length).sum()
}

/// A gable dormer 2 m wide at 6:12, eaves 1.2 m above the slope at its front, in a slope of 6:12. Closed forms: its eaves meet
/// the slope 2.4 m behind the front, its ridge (0.5 m above the eaves) 1 m further.
#[test]
fn a_gable_dormer_in_the_middle_of_a_slope() {
    let mut all = part(0, rectangle(0.0, 0.0, 12.0, 10.0), 3.0, [6.0, 0.0, 6.0, 0.0]);
    all.extend(part(1, rectangle(5.0, 1.0, 2.0, 4.0), 3.5 + 1.2, [0.0, 6.0, 0.0, 6.0]));
    let (pieces, roof) = roof_of(&all);
    assert_eq!(roof.problems, vec![]);
    assert_eq!(pieces.len(), 4);
    assert!((roof.plan_area() - 120.0).abs() < 1e-9, "no area twice");
    let dormer: f64 = 2.0 * 2.4 + 2.0 * 1.0 / 2.0;
    assert!((roof.faces[2].plan_area + roof.faces[3].plan_area - dormer).abs() < 1e-9);
    let hole = &pieces[0].outline.holes;
    assert_eq!((hole.len(), hole[0].len()), (1, 6), "front in two halves, two cheeks, two valleys: {hole:?}");
    // each valley: 1 m each way in plan, rising 0.5 m
    assert!((total(&roof, EdgeKind::Valley) - 2.0 * 2.25f64.sqrt()).abs() < 1e-9);
    // in the slope below: the front level, the cheeks up the slope
    let walls = 2.0 + 2.0 * 2.4 * 1.25f64.sqrt();
    assert!((total(&roof, EdgeKind::WallLine) - walls).abs() < 1e-9);
    assert!((total(&roof, EdgeKind::Ridge) - 12.0 - 3.4).abs() < 1e-9);
}

#[test]
fn a_shed_dormer_and_a_hip_dormer() {
    // A shed 3 m wide: 3:12 from 1 m over a slope of 9:12 meets it after 1 / (0.75 − 0.25) = 2 m.
    let mut all = part(0, rectangle(0.0, 0.0, 12.0, 10.0), 3.0, [9.0, 0.0, 9.0, 0.0]);
    all.extend(part(1, rectangle(4.0, 1.0, 3.0, 3.0), 3.75 + 1.0, [3.0, 0.0, 0.0, 0.0]));
    let (_, roof) = roof_of(&all);
    assert_eq!(roof.problems, vec![]);
    assert!((roof.faces[2].plan_area - 6.0).abs() < 1e-9 && (roof.plan_area() - 120.0).abs() < 1e-9);
    assert!((total(&roof, EdgeKind::PitchChange) + total(&roof, EdgeKind::Valley) - 3.0).abs() < 1e-9);

    let mut all = part(0, rectangle(0.0, 0.0, 12.0, 10.0), 3.0, [6.0, 0.0, 6.0, 0.0]);
    all.extend(part(1, rectangle(5.0, 1.0, 2.0, 4.0), 3.5 + 1.2, [6.0, 6.0, 0.0, 6.0]));
    let (pieces, roof) = roof_of(&all);
    assert_eq!((roof.problems.len(), pieces.len()), (0, 5));
    assert!((roof.faces[2].plan_area - 1.0).abs() < 1e-9, "the hip end");
    assert!((total(&roof, EdgeKind::Hip) - 2.0 * 2.25f64.sqrt()).abs() < 1e-9);
}

#[test]
fn a_cross_gable_below_and_above_the_ridge() {
    for (eave, crosses_over) in [(3.0, false), (4.5, true)] {
        let mut all = part(0, rectangle(0.0, 0.0, 14.0, 8.0), 3.0, [6.0, 0.0, 6.0, 0.0]);
        all.extend(part(1, rectangle(4.0, -3.0, 6.0, 11.0), eave, [0.0, 6.0, 0.0, 6.0]));
        let (_, roof) = roof_of(&all);
        assert_eq!(roof.problems, vec![], "{eave}");
        assert!((roof.plan_area() - (14.0 * 8.0 + 6.0 * 3.0)).abs() < 1e-9, "{eave}");
        // The lower ridge, 4.5 m, dies into the slope 1 m before the main ridge at 5 m and comes out 1 m behind it; the higher
        // one runs through, and hides 4 m of the main ridge.
        let ridge = if crosses_over { 14.0 - 4.0 + 11.0 } else { 14.0 + 6.0 + 3.0 };
        assert!((total(&roof, EdgeKind::Ridge) - ridge).abs() < 1e-9, "{}", total(&roof, EdgeKind::Ridge));
    }
}

#[test]
fn an_ell_in_the_same_plane_makes_one_face() {
    let mut all = part(0, rectangle(0.0, 0.0, 8.0, 8.0), 3.0, [6.0, 0.0, 6.0, 0.0]);
    all.extend(part(1, rectangle(8.0, 0.0, 5.0, 8.0), 3.0, [6.0, 0.0, 6.0, 0.0]));
    let (pieces, roof) = roof_of(&all);
    assert_eq!((pieces.len(), roof.problems.len()), (2, 0));
    assert_eq!(pieces[0].surfaces.len(), 2);
    assert_eq!(pieces[0].outline.outer.len(), 4, "no corner is left where they join");
}

/// A porch whose top is 0.2 m below the eave of the house above it: a low wall, not a height error.
#[test]
fn a_low_wall_is_a_wall() {
    let mut all = part(0, rectangle(0.0, 0.0, 10.0, 8.0), 3.0, [6.0, 0.0, 6.0, 0.0]);
    all.extend(part(1, rectangle(2.0, -2.4, 4.0, 2.4), 3.0 - 0.2 - 0.8, [4.0, 0.0, 0.0, 0.0]));
    let (_, roof) = roof_of(&all);
    assert_eq!(roof.problems, vec![]);
    assert!((total(&roof, EdgeKind::WallLine) - 4.0).abs() < 1e-9);
    assert!((total(&roof, EdgeKind::Eave) - 20.0 - 4.0).abs() < 1e-9);
    assert!((total(&roof, EdgeKind::Step)).abs() < 1e-9);
}

#[test]
fn eaves_above_hide_the_strip_below_them() {
    let mut main = Footprint::even(rectangle(0.0, 0.0, 10.0, 8.0), Side::gable());
    for side in [0, 2] {
        main.sides[0][side] = Side { overhang: 0.5, ..Side::sloped(rise(6.0), 5.0) };
    }
    let mut all = raised(0, &main);
    all.extend(part(1, rectangle(2.0, -2.4, 4.0, 2.4), 2.5, [4.0, 0.0, 0.0, 0.0]));
    let (_, roof) = roof_of(&all);
    assert_eq!(roof.problems, vec![]);
    assert!((roof.plan_area() - (10.0 * 9.0 + 4.0 * 1.9)).abs() < 1e-9);
}

#[test]
fn a_chimney_is_a_hole_with_walls() {
    let mut all = part(0, rectangle(0.0, 0.0, 12.0, 10.0), 3.0, [6.0, 0.0, 6.0, 0.0]);
    let top = Plane { datum: dvec2(5.0, 2.0).extend(9.0), pitch: Pitch::FLAT, downslope: Default::default() };
    all.push(Surface { part: 1, outline: rectangle(5.0, 2.0, 1.0, 0.6), plane: top, deck: false });
    let (pieces, roof) = roof_of(&all);
    assert_eq!((pieces.len(), roof.problems.len()), (2, 0));
    assert!((roof.plan_area() - (120.0 - 0.6)).abs() < 1e-9);
    assert!((total(&roof, EdgeKind::WallLine) - (2.0 + 1.2 * 1.25f64.sqrt())).abs() < 1e-9);
    // On the ridge too, and at the eave, where it is a notch.
    for y in [4.7, -0.2] {
        all[2].outline = rectangle(5.0, y, 1.0, 0.6);
        let (_, roof) = roof_of(&all);
        assert_eq!(roof.problems, vec![], "{y}");
        assert!(total(&roof, EdgeKind::WallLine) > 1.7, "{y}");
    }
}

/// At random points the visible piece belongs to the highest surface (by definition), for parts at any rotation.
#[test]
fn every_point_shows_the_highest_face() {
    use proptest::prelude::*;
    let one = || {
        (
            0.0..10.0f64,
            0.0..10.0f64,
            2.0..9.0f64,
            2.0..9.0f64,
            0.0..6.3f64,
            0.0..3.0f64,
            0..16usize,
            2..12usize,
        )
    };
    proptest!(ProptestConfig::with_cases(64), |(specs in proptest::collection::vec(one(), 2..5), aligned in any::<bool>())| {
        let mut all = Vec::new();
        for (number, &(x, y, wide, deep, turn, eave, gables, r)) in specs.iter().enumerate() {
            let turn = if aligned { 0.0 } else { turn };
            // On a grid sides coincide, as with snapping.
            let q = |v: f64| if aligned { v.round() } else { v };
            let ground = rectangle(q(x), q(y), q(wide), q(deep)).map(|p| DVec2::from_angle(turn).rotate(p));
            let rises = [0, 1, 2, 3].map(|i| if gables >> i & 1 == 1 && gables != 15 { 0.0 } else { r as f64 });
            all.extend(part(number, ground, q(eave), rises));
        }
        let pieces = envelope(&all, Tolerances::default()).unwrap();
        for i in 0..40 {
            for j in 0..40 {
                let p = dvec2(f64::from(i) * 0.611 - 4.03, f64::from(j) * 0.603 - 4.01);
                let over: Vec<f64> = all.iter().filter(|s| s.outline.contains(p)).map(|s| s.plane.height_at(p)).collect();
                let highest = over.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                let shown: Vec<&Piece> = pieces.iter().filter(|piece| piece.outline.contains(p)).collect();
                let near_border = all.iter().any(|s| s.outline.distance_to_border(p) < 2e-3)
                    || pieces.iter().any(|piece| piece.outline.distance_to_border(p) < 2e-3);
                if near_border { continue; }
                prop_assert_eq!(shown.len(), usize::from(!over.is_empty()), "at {}", p);
                if let Some(piece) = shown.first() {
                    let here = all[piece.surfaces[0]].plane.height_at(p);
                    prop_assert!((here - highest).abs() < 1e-6, "{} is not {} at {}", here, highest, p);
                }
            }
        }
    });
}
