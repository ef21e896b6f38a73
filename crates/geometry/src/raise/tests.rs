//! Shapes with a known roof, and properties of every roof.

use super::*;
use crate::{Roof, Tolerances, dvec2};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

const FOOT: f64 = 0.3048;

fn ring(points: &[(f64, f64)]) -> Vec<DVec2> {
    points.iter().map(|&(x, y)| dvec2(x, y)).collect()
}

fn pitch(rise: f64) -> Pitch {
    Pitch::from_rise_in_12(rise).unwrap()
}

fn sloped(rise: f64) -> Side {
    Side::sloped(pitch(rise), 0.0)
}

fn footprint(points: &[(f64, f64)], rise: f64) -> Footprint {
    Footprint::even(Polygon::new(ring(points)), sloped(rise))
}

/// Raises it and checks the properties of every roof.
fn raised(footprint: &Footprint) -> Raised {
    let raised = raise(footprint).unwrap_or_else(|error| panic!("{error}: {footprint:?}"));
    let area = raised.outline.area();
    assert!((raised.plan_area() - area).abs() <= 1e-9 * area, "{} of {area}", raised.plan_area());
    for face in &raised.faces {
        for ring in &face.corners {
            for &node in ring {
                let node = raised.nodes[node];
                let off = (face.plane.height_at(node.truncate()) - node.z).abs();
                assert!(off <= 1e-6, "{off} off its plane at {node}");
            }
        }
    }
    every_point_is_at_equal_rise_from_its_sides(footprint, &raised);
    raised
}

/// Directly from the footprint as drawn: the height of a roof point is its level distance from the wall line of each side with a
/// face there, times that side's slope, plus its eave height. On a ridge, hip or valley that holds for the sides of all faces
/// that meet there.
fn every_point_is_at_equal_rise_from_its_sides(footprint: &Footprint, raised: &Raised) {
    let rings: Vec<&[DVec2]> = footprint.outline.rings().collect();
    for face in &raised.faces {
        for on in &face.sides {
            let side = footprint.sides[on.ring][on.side];
            let Treatment::Slope(pitch) = side.treatment else { continue };
            let ring = rings[on.ring];
            let (a, b) = (ring[on.side], ring[(on.side + 1) % ring.len()]);
            // The roof is to the left of a counter-clockwise outline, and to the right of a counter-clockwise hole.
            let left = (crate::signed_area(ring) > 0.0) == (on.ring == 0);
            let inward = if left { (b - a).perp() } else { -(b - a).perp() } / (b - a).length();
            for &node in face.corners.iter().flatten() {
                let point = raised.nodes[node];
                let rise = side.eave_height + inward.dot(point.truncate() - a) * pitch.slope();
                // Off its plane by at most a micrometre, plus half of one where a knot was resolved by perturbation.
                assert!((rise - point.z).abs() <= 2e-6, "{point} is not at the rise of {on:?}, {rise}");
            }
        }
    }
}

fn total(raised: &Raised, kind: EdgeKind) -> f64 {
    let inputs: Vec<_> = raised.face_inputs(1e-3).into_iter().map(|(_, input)| input).collect();
    let roof = Roof::assemble(&inputs, Tolerances::default());
    assert_eq!(roof.problems, vec![]);
    roof.lines().iter().filter(|line| line.kind == kind).map(|line| line.length).sum()
}

fn face_area(raised: &Raised, ring: usize, side: usize) -> f64 {
    let on = SideRef { ring, side };
    raised.faces.iter().filter(|face| face.sides.contains(&on)).map(|face| face.outline.area()).sum()
}

fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() < 1e-9, "{found}, not {expected}");
}

const RECTANGLE: [(f64, f64); 4] = [(0.0, 0.0), (10.0, 0.0), (10.0, 6.0), (0.0, 6.0)];
const ELL: [(f64, f64); 6] = [(0.0, 0.0), (12.0, 0.0), (12.0, 4.0), (6.0, 4.0), (6.0, 10.0), (0.0, 10.0)];

#[test]
fn a_hip_and_a_gable_of_60_by_30_feet() {
    // Slope factors √(1 + (6/12)²) = 1.1180 and hip factor √(2 + (6/12)²) = 1.5, as carpenters' tables print them
    // (Architectural Graphic Standards, slope conversion; from memory). 1,800 ft² × 1.118034 = 2,012.46 ft².
    let (long, wide) = (60.0 * FOOT, 30.0 * FOOT);
    let mut plan = footprint(&[(0.0, 0.0), (long, 0.0), (long, wide), (0.0, wide)], 6.0);
    let hip = raised(&plan);
    assert_eq!(hip.faces.len(), 4);
    assert!((hip.slope_area() / FOOT.powi(2) - 2012.46).abs() < 0.005);
    near(total(&hip, EdgeKind::Hip) / FOOT, 4.0 * 22.5);
    near(total(&hip, EdgeKind::Ridge) / FOOT, 30.0);
    near(total(&hip, EdgeKind::Eave) / FOOT, 180.0);
    plan.sides[0][1] = Side::gable();
    plan.sides[0][3] = Side::gable();
    let gable = raised(&plan);
    assert_eq!(gable.faces.len(), 2);
    assert!((gable.slope_area() / FOOT.powi(2) - 2012.46).abs() < 0.005);
    near(total(&gable, EdgeKind::Ridge) / FOOT, 60.0);
    // each rake 16.771 ft: half the span times the slope factor
    assert!((total(&gable, EdgeKind::Rake) / FOOT - 4.0 * 16.771).abs() < 0.002);
}

#[test]
fn a_square_comes_to_one_point() {
    let pyramid = raised(&footprint(&[(0.0, 0.0), (8.0, 0.0), (8.0, 8.0), (0.0, 8.0)], 12.0));
    assert_eq!(pyramid.faces.len(), 4);
    assert_eq!(pyramid.nodes.len(), 5);
    near(total(&pyramid, EdgeKind::Ridge), 0.0);
}

#[test]
fn ell_tee_and_u() {
    let ell = raised(&footprint(&ELL, 6.0));
    assert_eq!(ell.faces.len(), 6);
    near(ell.slope_area(), 84.0 * 1.25f64.sqrt());
    // The wing is 4 wide: its ridge is 2 high in plan, and the valley runs 2·√2 to it and on to the other one's.
    near(face_area(&ell, 0, 1), 4.0);
    assert!(total(&ell, EdgeKind::Valley) > 2.0);

    let tee =
        [(0.0, 0.0), (14.0, 0.0), (14.0, 4.0), (9.0, 4.0), (9.0, 9.0), (5.0, 9.0), (5.0, 4.0), (0.0, 4.0)];
    let tee = raised(&footprint(&tee, 6.0));
    assert_eq!(tee.faces.len(), 8);
    // Stem as wide as the bar: both valleys and the bar's ridge meet at one point on the ridge.
    near(total(&tee, EdgeKind::Valley), 2.0 * 2.0 * pitch(6.0).hip_valley_factor());
    near(total(&tee, EdgeKind::Ridge), (14.0 - 4.0) + 5.0);

    let you =
        [(0.0, 0.0), (14.0, 0.0), (14.0, 9.0), (10.0, 9.0), (10.0, 4.0), (4.0, 4.0), (4.0, 9.0), (0.0, 9.0)];
    let you = raised(&footprint(&you, 6.0));
    // The ends of both arms are coplanar but do not touch; eight faces in total.
    assert_eq!(you.faces.len(), 8);
    near(total(&you, EdgeKind::Ridge), 10.0 + 2.0 * 5.0);
}

#[test]
fn a_plus_sign_meets_in_the_middle() {
    let plus = [
        (4.0, 0.0),
        (8.0, 0.0),
        (8.0, 4.0),
        (12.0, 4.0),
        (12.0, 8.0),
        (8.0, 8.0),
        (8.0, 12.0),
        (4.0, 12.0),
        (4.0, 8.0),
        (0.0, 8.0),
        (0.0, 4.0),
        (4.0, 4.0),
    ];
    let plus = raised(&footprint(&plus, 6.0));
    assert_eq!(plus.faces.len(), 12);
    near(total(&plus, EdgeKind::Ridge), 4.0 * 4.0);
    near(total(&plus, EdgeKind::Valley), 4.0 * 2.0 * 1.5);
}

#[test]
fn a_courtyard_has_a_ridge_all_around() {
    let mut outline = Polygon::new(ring(&[(0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0)]));
    // drawn counter-clockwise, the wrong way for a hole
    outline.holes.push(ring(&[(6.0, 6.0), (14.0, 6.0), (14.0, 14.0), (6.0, 14.0)]));
    let court = raised(&Footprint::even(outline, sloped(6.0)));
    assert_eq!(court.faces.len(), 8);
    near(total(&court, EdgeKind::Ridge), 4.0 * 14.0);
    // From the south side of the court the roof rises southwards.
    let south = court.faces.iter().find(|face| face.sides[0] == SideRef { ring: 1, side: 0 }).unwrap();
    assert_eq!(south.plane.downslope.degrees(), 0.0);
    near(south.outline.area(), (8.0 + 14.0) / 2.0 * 3.0);
}

#[test]
fn one_gable_and_one_hip_end() {
    let mut plan = footprint(&RECTANGLE, 6.0);
    plan.sides[0][1] = Side::gable();
    let roof = raised(&plan);
    assert_eq!(roof.faces.len(), 3);
    near(total(&roof, EdgeKind::Ridge), 7.0);
    near(face_area(&roof, 0, 1), 0.0);
}

#[test]
fn a_wall_makes_wall_lines() {
    let mut plan = footprint(&RECTANGLE, 6.0);
    plan.sides[0][1] = Side { treatment: Treatment::Wall, ..Side::gable() };
    let roof = raised(&plan);
    near(total(&roof, EdgeKind::WallLine), 2.0 * 3.0 * 1.25f64.sqrt());
    near(total(&roof, EdgeKind::Rake), 0.0);
}

#[test]
fn a_lean_to_has_one_face() {
    let mut plan = footprint(&RECTANGLE, 3.0);
    for side in 1..4 {
        plan.sides[0][side] = Side::gable();
    }
    let roof = raised(&plan);
    assert_eq!(roof.faces.len(), 1);
    near(roof.plan_area(), 60.0);
    near(roof.nodes.iter().map(|node| node.z).fold(0.0, f64::max), 1.5);
}

#[test]
fn different_pitches_put_the_ridge_off_the_middle() {
    let mut plan = footprint(&RECTANGLE, 4.0);
    plan.sides[0] = vec![sloped(4.0), Side::gable(), sloped(8.0), Side::gable()];
    let roof = raised(&plan);
    // 4 y = 8 (6 − y): the ridge is at y = 4
    near(face_area(&roof, 0, 0), 40.0);
    near(face_area(&roof, 0, 2), 20.0);
}

#[test]
fn a_higher_eave_starts_where_its_neighbours_reach_it() {
    let mut plan = footprint(&RECTANGLE, 12.0);
    plan.sides[0][1].eave_height = 1.0;
    let roof = raised(&plan);
    // The two long faces rise 1 m along the east wall; there its own eave begins, 4 m wide.
    let east = roof.faces.iter().find(|face| face.sides[0].side == 1).unwrap();
    near(east.outline.area(), 4.0);
    assert!(roof.nodes.iter().any(|node| node.distance(DVec3::new(10.0, 1.0, 1.0)) < 1e-9));
    // So high that its neighbours meet under it: buried, the roof runs out to a gable.
    plan.sides[0][1].eave_height = 3.5;
    let buried = raised(&plan);
    assert_eq!(buried.faces.len(), 3);
    near(face_area(&buried, 0, 1), 0.0);
}

#[test]
fn a_high_wing_stands_over_a_low_one() {
    // The ell's wing to the east has its eaves 1 m lower.
    let mut plan = footprint(&ELL, 12.0);
    for side in [3, 4, 5] {
        plan.sides[0][side].eave_height = 1.0;
    }
    let roof = raised(&plan);
    let inputs: Vec<_> = roof.face_inputs(1e-3).into_iter().map(|(_, input)| input).collect();
    let solid = Roof::assemble(&inputs, Tolerances::default());
    assert_eq!(solid.problems, vec![]);
    let walls: f64 = solid.lines().iter().filter(|l| l.kind == EdgeKind::WallLine).map(|l| l.length).sum();
    assert!(walls > 0.5, "{walls}");
}

#[test]
fn overhangs_keep_the_plane_at_the_wall() {
    let mut plan = footprint(&RECTANGLE, 6.0);
    for side in &mut plan.sides[0] {
        *side = Side { overhang: 0.5, eave_height: 3.0, ..*side };
    }
    let roof = raised(&plan);
    near(roof.plan_area(), 11.0 * 7.0);
    near(roof.nodes.iter().map(|node| node.z).fold(f64::INFINITY, f64::min), 2.75);
    near(roof.nodes.iter().map(|node| node.z).fold(0.0, f64::max), 3.0 + 1.5);
    near(roof.faces[0].plane.height_at(dvec2(4.0, 0.0)), 3.0);
    // a rake overhang lengthens the ridge
    plan.sides[0][1] = Side { overhang: 0.3, ..Side::gable() };
    plan.sides[0][3] = Side { overhang: 0.3, ..Side::gable() };
    near(total(&raised(&plan), EdgeKind::Ridge), 10.6);
}

#[test]
fn a_courtyard_overhang_reaches_into_the_court() {
    let mut outline = Polygon::new(ring(&[(0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0)]));
    outline.holes.push(ring(&[(6.0, 6.0), (14.0, 6.0), (14.0, 14.0), (6.0, 14.0)]));
    let side = Side { overhang: 0.5, ..sloped(6.0) };
    near(raised(&Footprint::even(outline, side)).plan_area(), 21.0 * 21.0 - 49.0);
}

#[test]
fn corners_in_line() {
    let points = [(0.0, 0.0), (4.0, 0.0), (10.0, 0.0), (10.0, 6.0), (0.0, 6.0)];
    let even = raised(&footprint(&points, 6.0));
    assert_eq!(even.faces.len(), 4, "one plane, one face");
    assert_eq!(even.faces[0].sides, [SideRef { ring: 0, side: 0 }, SideRef { ring: 0, side: 1 }]);
    let mut plan = footprint(&points, 6.0);
    plan.sides[0][1] = sloped(12.0);
    let steps = raised(&plan);
    assert_eq!(steps.faces.len(), 5);
    // The lower pitch runs out under the higher one: the step is at right angles at their corner.
    let low = steps.faces.iter().find(|face| face.sides[0].side == 0).unwrap();
    assert!(low.outline.outer.iter().all(|p| p.x <= 4.0 + 1e-9), "{:?}", low.outline);
    let mut plan = footprint(&points, 6.0);
    plan.sides[0][1].overhang = 0.4;
    near(raised(&plan).outline.area(), 60.0 + 6.0 * 0.4);
}

#[test]
fn impossible_footprints_report_why() {
    let check = |plan: &Footprint, expect: fn(&RaiseError) -> bool, words: &str| {
        let error = raise(plan).unwrap_err();
        assert!(expect(&error), "{error:?}");
        assert!(error.to_string().contains(words), "{error}");
    };
    let bow = footprint(&[(0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0)], 6.0);
    check(&bow, |e| matches!(e, RaiseError::Outline(Defect::Crosses { .. })), "pull them apart");
    let flat = footprint(&RECTANGLE, 0.0);
    check(
        &flat,
        |e| matches!(e, RaiseError::BadNumber { .. }),
        "side 1 of the outline has a rise in 12 of 0",
    );
    let mut none = footprint(&RECTANGLE, 6.0);
    none.sides[0] = vec![Side::gable(); 4];
    check(&none, |e| matches!(e, RaiseError::NoSlope { .. }), "give it, or a side near it, a pitch");
    let mut few = footprint(&RECTANGLE, 6.0);
    few.sides[0].pop();
    check(&few, |e| matches!(e, RaiseError::SideCount { corners: 4, given: 3, .. }), "4 sides, but 3");
    let mut wide = footprint(
        &[(0.0, 0.0), (9.0, 0.0), (9.0, 6.0), (5.0, 6.0), (5.0, 3.0), (4.0, 3.0), (4.0, 6.0), (0.0, 6.0)],
        6.0,
    );
    for side in &mut wide.sides[0] {
        side.overhang = 0.6;
    }
    check(&wide, |e| matches!(e, RaiseError::Overhang { .. }), "make them narrower");
    let mut nan = footprint(&RECTANGLE, 6.0);
    nan.sides[0][2].eave_height = f64::NAN;
    check(&nan, |e| matches!(e, RaiseError::BadNumber { .. }), "side 3 of the outline has an eave height");
    let mut part = footprint(&ELL, 6.0);
    part.sides[0][3] = Side::gable();
    part.sides[0][4] = Side::gable();
    part.sides[0][5] = Side::gable();
    part.sides[0][0] = Side::gable();
    // Only the wing's own end and its north side rise: either the roof closes, or the error says why not.
    if let Err(error) = raise(&part) {
        assert!(matches!(error, RaiseError::NoSlope { .. }), "{error:?}");
    }
}

#[test]
fn far_from_the_origin_and_drawn_the_other_way() {
    let here = raised(&footprint(&ELL, 6.0));
    let mut points = ring(&ELL);
    points.reverse();
    let far = Footprint::even(Polygon::new(points).map(|p| p + dvec2(9e4, -8e4)), sloped(6.0));
    let far = raised(&far);
    // Drawn side 0 ran from corner 0 to 1; reversed it is side 4.
    assert!((face_area(&far, 0, 4) - face_area(&here, 0, 0)).abs() < 1e-7);
    assert!((face_area(&far, 0, 0) - face_area(&here, 0, 4)).abs() < 1e-7);
}

/// A small generator, so that a failing case is a single number.
pub(super) struct Dice(u64);

impl Dice {
    pub(super) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1)
    }
    fn bits(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0.wrapping_mul(0x2545_f491_4f6c_dd1d)
    }
    fn below(&mut self, n: usize) -> usize {
        ((self.bits() >> 33) as usize) % n
    }
    fn unit(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1u64 << 53) as f64
    }
}

/// A blob of cells on a grid of whole or uneven steps, with holes: full of simultaneous events.
fn blob(dice: &mut Dice, cells: usize, even: bool) -> Option<Polygon> {
    let mut filled = BTreeSet::from([(0i32, 0i32)]);
    while filled.len() < cells {
        let from = *filled.iter().nth(dice.below(filled.len()))?;
        let step = [(1, 0), (0, 1), (-1, 0), (0, -1)][dice.below(4)];
        filled.insert((from.0 + step.0, from.1 + step.1));
    }
    let full = |x: i32, y: i32| filled.contains(&(x, y));
    // each boundary edge has its cell on the left
    let mut next = BTreeMap::new();
    for &(x, y) in &filled {
        let edges = [
            (full(x, y - 1), (x, y), (x + 1, y)),
            (full(x + 1, y), (x + 1, y), (x + 1, y + 1)),
            (full(x, y + 1), (x + 1, y + 1), (x, y + 1)),
            (full(x - 1, y), (x, y + 1), (x, y)),
        ];
        for (inside, from, to) in edges {
            if !inside && next.insert(from, to).is_some() {
                return None; // two cells touch at a corner alone
            }
        }
    }
    let mut step = |_| if even { 2.0 } else { 1.0 + 3.0 * dice.unit() };
    let xs: Vec<f64> = (0..=2 * cells)
        .scan(0.0, |x, i| {
            *x += step(i);
            Some(*x)
        })
        .collect();
    let ys: Vec<f64> = (0..=2 * cells)
        .scan(0.0, |y, i| {
            *y += step(i);
            Some(*y)
        })
        .collect();
    let place = |(x, y): (i32, i32)| dvec2(xs[(x + cells as i32) as usize], ys[(y + cells as i32) as usize]);
    let mut rings = Vec::new();
    while let Some((&first, _)) = next.iter().next() {
        let mut corners = Vec::new();
        let mut at = first;
        while let Some(to) = next.remove(&at) {
            corners.push(at);
            at = to;
        }
        let n = corners.len();
        let turns = |i: usize| {
            let (a, b, c) = (corners[(i + n - 1) % n], corners[i], corners[(i + 1) % n]);
            (b.0 - a.0) * (c.1 - b.1) != (b.1 - a.1) * (c.0 - b.0)
        };
        rings.push((0..n).filter(|&i| turns(i)).map(|i| place(corners[i])).collect::<Vec<_>>());
    }
    let outer = rings.iter().position(|ring| crate::signed_area(ring) > 0.0)?;
    let outer = rings.swap_remove(outer);
    Some(Polygon { outer, holes: rings })
}

/// A random simple polygon: corners anywhere, each inserted into a side where it crosses nothing.
fn scrawl(dice: &mut Dice, corners: usize) -> Polygon {
    let mut ring = ring(&[(0.0, 0.0), (30.0, 0.0), (12.0, 25.0)]);
    for _ in 0..corners * 30 {
        if ring.len() >= corners {
            break;
        }
        let p = dvec2(40.0 * dice.unit() - 5.0, 40.0 * dice.unit() - 5.0);
        let at = dice.below(ring.len());
        let mut tried = ring.clone();
        tried.insert(at + 1, p);
        let shape = Polygon::new(tried);
        if shape.defects(0.05).is_empty() {
            ring = shape.outer;
        }
    }
    Polygon::new(ring)
}

/// Random pitches, gables, eave heights and overhangs; `wild` from 0 (all even) to 3.
fn dress(dice: &mut Dice, outline: Polygon, wild: usize) -> Footprint {
    let mut plan = Footprint::even(outline, sloped(6.0));
    for side in plan.sides.iter_mut().flatten() {
        if wild > 0 {
            side.treatment = Treatment::Slope(pitch([4.0, 6.0, 8.0, 12.0][dice.below(4)]));
        }
        if wild > 1 && dice.below(6) == 0 {
            side.treatment = Treatment::Gable;
        }
        if wild > 2 {
            side.eave_height = [0.0, 0.5, 1.0, 1.0 + dice.unit()][dice.below(4)];
        }
    }
    plan
}

/// Raises it; the only acceptable failure is a part without a slope.
fn raises(plan: &Footprint) -> Result<(), TestCaseError> {
    match raise(plan) {
        Ok(_) => {
            let raised = raised(plan);
            let even = raised.faces.iter().all(|face| face.plane.pitch == raised.faces[0].plane.pitch);
            if even {
                let factor = raised.faces[0].plane.pitch.slope_factor();
                prop_assert!((raised.slope_area() - raised.outline.area() * factor).abs() < 1e-7);
            }
            Ok(())
        }
        Err(RaiseError::NoSlope { .. }) => Ok(()),
        Err(error) => Err(TestCaseError::fail(format!("{error} {}", serde_json::to_string(plan).unwrap()))),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn rectilinear_footprints_raise(seed: u64, cells in 1usize..40, even: bool, wild in 0usize..4) {
        let mut dice = Dice::new(seed);
        if let Some(outline) = blob(&mut dice, cells, even) {
            raises(&dress(&mut dice, outline, wild))?;
        }
    }

    #[test]
    fn turned_rectilinear_footprints_raise(seed: u64, cells in 1usize..30, turn in 0.0..7.0f64, wild in 0usize..4) {
        let mut dice = Dice::new(seed);
        if let Some(outline) = blob(&mut dice, cells, true) {
            raises(&dress(&mut dice, outline.map(|p| DVec2::from_angle(turn).rotate(p)), wild))?;
        }
    }

    #[test]
    fn any_simple_footprint_raises(seed: u64, corners in 3usize..40, wild in 0usize..4) {
        let mut dice = Dice::new(seed);
        let outline = scrawl(&mut dice, corners);
        raises(&dress(&mut dice, outline, wild))?;
    }

    #[test]
    fn a_nearly_regular_footprint_raises(seed: u64, cells in 1usize..20, digits in 3i32..13, wild in 0usize..4) {
        // The same patterns, slightly perturbed: events that just miss each other.
        let mut dice = Dice::new(seed);
        let hair = 10f64.powi(-digits);
        if let Some(outline) = blob(&mut dice, cells, true) {
            let mut off = Dice::new(seed ^ 7);
            let mut plan = dress(&mut dice, outline, wild);
            for p in plan.outline.outer.iter_mut().chain(plan.outline.holes.iter_mut().flatten()) {
                *p += dvec2(off.unit() - 0.5, off.unit() - 0.5) * hair;
            }
            raises(&plan)?;
        }
    }

    #[test]
    fn over_a_convex_footprint_the_roof_is_the_lowest_plane(
        angles in prop::collection::btree_set(0usize..360, 3..16), seed: u64,
    ) {
        let mut dice = Dice::new(seed);
        let points: Vec<DVec2> = angles.iter()
            .map(|&a| DVec2::from_angle((a as f64).to_radians()) * dvec2(12.0, 8.0)).collect();
        let shape = Polygon::new(points);
        prop_assume!(shape.area() > 1.0);
        let plan = dress(&mut dice, shape, 3);
        let Ok(roof) = raise(&plan) else { return Ok(()) };
        // A side buried under its neighbours stays buried, though its plane may surface again further up.
        let stands = |side: usize| roof.faces.iter().any(|face| face.sides.contains(&SideRef { ring: 0, side }));
        if (0..plan.sides[0].len()).any(|i| plan.sides[0][i].treatment != Treatment::Gable && !stands(i)) {
            return Ok(());
        }
        let planes: Vec<Plane> = plan.outline.sides().filter_map(|(_, i, a, b)| {
            let side = plan.sides[0][i];
            let Treatment::Slope(pitch) = side.treatment else { return None };
            let downslope = crate::Azimuth::of(-(b - a).perp());
            Some(Plane { datum: a.extend(side.eave_height), pitch, downslope })
        }).collect();
        for face in &roof.faces {
            for triangle in face.outline.triangles() {
                let p = (triangle[0] + triangle[1] + triangle[2]) / 3.0;
                let lowest = planes.iter().map(|plane| plane.height_at(p)).fold(f64::INFINITY, f64::min);
                prop_assert!((face.plane.height_at(p) - lowest).abs() < 1e-7);
            }
        }
    }

    #[test]
    fn every_input_terminates(points in prop::collection::vec((-9i32..9, -9i32..9), 0..9), overhang in -1.0..9.0f64) {
        let outline = Polygon::new(points.iter().map(|&(x, y)| dvec2(f64::from(x), f64::from(y))).collect());
        let _ = raise(&Footprint::even(outline, Side { overhang, ..sloped(5.0) }));
    }
}
