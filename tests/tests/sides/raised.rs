//! Parts of a house that are edited at random, and the sides of their faces.

use super::{again, empty};
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length, Pitch, Polygon, SideId, distance_to_segment, dvec2, signed_area};
use chalkcourse_job::{Edit, Face, FaceId, History, PartId, PartKind, PartSide, Resolved, RoofPart, apply};
use chalkcourse_layout::Layout;
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

/// The identity of a side of a part's face: its lines, the walls that it runs along, and the faces beyond it.
#[derive(Clone, Debug)]
struct Seen {
    lines: Vec<(DVec2, DVec2)>,
    walls: BTreeSet<(PartId, u32)>,
    faces: BTreeSet<(PartId, u32)>,
}

/// How far mitred corners may extend beyond a wall, metres: far at a sharp one.
const MITRE: f64 = 20.0;

/// Distances beyond a side at which to look for what is there, metres. The roof reports no neighbour where the corners
/// of the two faces don't coincide. Where what is beyond is narrower than 2 cm, so that a side is practically next to
/// the following face too, both count.
const BEYOND: [f64; 2] = [0.0005, 0.02];

/// The edges of the area that a part covers: its walls offset by their overhangs.
fn edges(job: &Resolved) -> Vec<((PartId, u32), DVec2, DVec2)> {
    let mut list = Vec::new();
    for part in &job.parts {
        for (ring, corners) in part.outline.rings().enumerate() {
            let turn = if (signed_area(corners) > 0.0) == (ring == 0) { 1.0 } else { -1.0 };
            for (side, described) in part.sides[ring].iter().enumerate() {
                let (a, b) = part.wall_line(SideRef { ring, side }).unwrap();
                let along = (b - a).normalize_or_zero();
                let out = -along.perp() * turn * described.overhang.metres();
                list.push(((part.id, described.id), a + out, b + out));
            }
        }
    }
    list
}

/// Whether a side runs along an edge: entirely, as far as mitred corners may extend, or over collinear walls of which
/// this is one.
fn runs_along((a, b): (DVec2, DVec2), (c, d): (DVec2, DVec2)) -> bool {
    let beyond = (d - c).normalize_or_zero() * MITRE;
    let near = |p: DVec2, q: DVec2, r: DVec2| distance_to_segment(p, q, r) < 0.004;
    let lies_on_it = near(a, c - beyond, d + beyond) && near(b, c - beyond, d + beyond);
    lies_on_it || (near(c, a, b) && near(d, a, b))
}

fn seen(job: &Resolved) -> BTreeMap<(FaceId, SideId), Seen> {
    let layout = Layout::of(job);
    let edges = edges(job);
    let mut all: BTreeMap<(FaceId, SideId), Seen> = BTreeMap::new();
    for (face, on_roof) in job.faces.iter().zip(&layout.roof.faces).filter(|(face, _)| face.from.is_some()) {
        for span in &on_roof.edges {
            let (a, b) = span.plan;
            let along = |&&(_, c, d): &&(_, DVec2, DVec2)| runs_along((a, b), (c, d));
            let entry = all.entry((face.id, span.id)).or_insert_with(|| Seen {
                lines: Vec::new(),
                walls: BTreeSet::new(),
                faces: BTreeSet::new(),
            });
            entry.lines.push((a, b));
            entry.walls.extend(edges.iter().filter(along).map(|(name, ..)| *name));
            let other = span.neighbour.and_then(|n| job.faces.get(n.face)?.from);
            let out = -(b - a).normalize_or_zero().perp();
            let there = BEYOND.map(|far| [0.1, 0.3, 0.5, 0.7, 0.9].map(|t| a.lerp(b, t) + out * far));
            let is_there = |other: &Face| there.iter().flatten().any(|&p| other.outline.contains(p));
            let beyond = job.faces.iter().filter(|other| other.id != face.id && is_there(other));
            let beyond = beyond.filter_map(|face| face.from).chain(other);
            entry.faces.extend(beyond.map(|from| (from.part, from.side)));
        }
    }
    all
}

fn is_same(was: &Seen, now: &Seen) -> bool {
    let on_one_line = |(a, b): (DVec2, DVec2), (c, d): (DVec2, DVec2)| {
        let along = (d - c).normalize_or_zero();
        let (start, end) = ((a - c).dot(along).max(0.0), (b - c).dot(along).min(c.distance(d)));
        let near = |p: DVec2| {
            let q = a + (b - a) * ((p - a).dot(b - a) / (b - a).length_squared());
            q.distance(p) < 0.02
        };
        end > start && near(c + along * start) && near(c + along * end)
    };
    let lies_there = was.lines.iter().any(|one| now.lines.iter().any(|two| on_one_line(*one, *two)));
    // The roof does not report what is beyond a side shorter than 5 cm.
    let length = |side: &Seen| side.lines.iter().map(|(a, b)| a.distance(*b)).sum::<f64>();
    if length(was).min(length(now)) < 0.05 {
        return true;
    }
    lies_there || !was.walls.is_disjoint(&now.walls) || !was.faces.is_disjoint(&now.faces)
}

fn slope(rise: f64) -> Treatment {
    Treatment::Slope(Pitch::from_rise_in_12(rise).unwrap())
}

fn rectangle(x: f64, y: f64, wide: f64, deep: f64) -> Polygon {
    Polygon::new(
        [(0.0, 0.0), (wide, 0.0), (wide, deep), (0.0, deep)].map(|(u, v)| dvec2(x + u, y + v)).to_vec(),
    )
}

/// A house of 12 × 8 m with overhangs and a gabled dormer on its south slope.
fn house() -> Resolved {
    let (eave, over) = (Length::from_metres(3.0), Length::from_metres(0.3));
    let main = RoofPart::new(
        PartId(1),
        "Main".into(),
        PartKind::Main,
        rectangle(0.0, 0.0, 12.0, 8.0),
        eave,
        slope(6.0),
        over,
    );
    let job = apply(&empty(), &Edit::PutPart(main)).unwrap();
    apply(&job, &Edit::PutPart(dormer(&job, 5.0, 2.2))).unwrap()
}

fn dormer(job: &Resolved, x: f64, wide: f64) -> RoofPart {
    let high = Length::from_metres(4.3);
    let mut dormer = RoofPart::new(
        PartId(job.next_id),
        "Dormer".into(),
        PartKind::Dormer,
        rectangle(x, 1.0, wide, 3.0),
        high,
        slope(6.0),
        Length::from_metres(0.1),
    );
    for side in [0, 2] {
        dormer.sides[0][side].treatment = Treatment::Gable;
    }
    dormer
}

#[derive(Clone, Debug)]
enum Build {
    Corner(usize, usize, f64, f64),
    Add(usize, usize, f64),
    Remove(usize, usize),
    Side(usize, usize, u8),
    Courtyard(usize),
    Shift(usize, f64, f64),
    Dormer(f64, f64),
    Chimney(f64, f64),
    Demolish(usize),
}

fn build() -> impl Strategy<Value = Build> {
    let small = || prop_oneof![Just(0.0), -1.5..1.5f64];
    prop_oneof![
        4 => (0..4usize, 0..12usize, small(), small()).prop_map(|(p, n, x, y)| Build::Corner(p, n, x, y)),
        3 => (0..4usize, 0..12usize, 0.1..0.9f64).prop_map(|(p, n, t)| Build::Add(p, n, t)),
        3 => (0..4usize, 0..12usize).prop_map(|(p, n)| Build::Remove(p, n)),
        3 => (0..4usize, 0..12usize, 0..4u8).prop_map(|(p, n, to)| Build::Side(p, n, to)),
        1 => (0..2usize).prop_map(Build::Courtyard),
        2 => (0..4usize, -3.0..3.0f64, small()).prop_map(|(p, x, y)| Build::Shift(p, x, y)),
        2 => (0.5..9.0f64, 1.0..2.5f64).prop_map(|(x, wide)| Build::Dormer(x, wide)),
        1 => (1.0..11.0f64, 1.0..7.0f64).prop_map(|(x, y)| Build::Chimney(x, y)),
        1 => (1..4usize).prop_map(Build::Demolish),
    ]
}

fn edit_of(job: &Resolved, build: &Build) -> Option<Edit> {
    let part = |n: usize| job.parts.get(n % job.parts.len().max(1));
    let place = |part: &RoofPart, n: usize| part.outline.sides().nth(n % part.outline.sides().count());
    let put = |part: Option<RoofPart>| part.map(Edit::PutPart);
    match *build {
        Build::Corner(p, n, x, y) => {
            let (ring, corner, a, _) = place(part(p)?, n)?;
            put(part(p)?.with_corner_moved(ring, corner, a + dvec2(x, y)))
        }
        Build::Add(p, n, t) => {
            let (ring, side, a, b) = place(part(p)?, n)?;
            put(part(p)?.with_corner_added(ring, side, a.lerp(b, t)))
        }
        Build::Remove(p, n) => {
            let (ring, corner, ..) = place(part(p)?, n)?;
            put(part(p)?.without_corner(ring, corner))
        }
        Build::Side(p, n, to) => {
            let (ring, side, ..) = place(part(p)?, n)?;
            let treatment = [Treatment::Gable, Treatment::Wall, slope(6.0), slope(9.0)][usize::from(to)];
            put(part(p)?.with_side(SideRef { ring, side }, |side| PartSide { treatment, ..side }))
        }
        Build::Courtyard(p) => {
            let middle = part(p)?.outline.bounds()?.centre();
            let corners = [(-0.6, -0.5), (0.7, -0.5), (0.1, 0.6)].map(|(x, y)| middle + dvec2(x, y));
            Some(Edit::PutPart(part(p)?.with_courtyard(corners.to_vec())))
        }
        Build::Shift(p, x, y) => {
            let part = part(p)?;
            Some(Edit::PutPart(RoofPart { outline: part.outline.map(|q| q + dvec2(x, y)), ..part.clone() }))
        }
        Build::Dormer(x, wide) => Some(Edit::PutPart(dormer(job, x, wide))),
        Build::Chimney(x, y) => {
            let cricket = Some(Pitch::from_rise_in_12(8.0).unwrap());
            let top = Length::from_metres(8.0);
            let id = PartId(job.next_id);
            Some(Edit::PutPart(RoofPart::chimney(
                id,
                "Chimney".into(),
                rectangle(x, y, 0.9, 0.6),
                top,
                cricket,
            )))
        }
        Build::Demolish(n) => Some(Edit::RemovePart(job.parts.get(n)?.id)),
    }
}

/// Consecutive edits: no side number passes to another side, none is reused, and all edits can be undone.
fn numbers_stay(steps: &[Build]) -> Result<(), TestCaseError> {
    let mut history = History::new(house());
    let mut past = vec![history.job().clone()];
    let mut last = seen(history.job());
    for step in steps {
        let before = history.job().clone();
        let Some(edit) = edit_of(&before, step) else { continue };
        // What can't be raised is refused, and changes nothing.
        if !matches!(history.edit("build", &edit), Ok(true)) {
            continue;
        }
        let after = history.job().clone();
        past.push(after.clone());
        for face in after.faces.iter().filter(|face| face.from.is_some()) {
            prop_assert!(face.sides.are_sound() && face.sides.fit(&face.outline));
        }
        let known = |id: FaceId| before.faces.iter().chain(&before.resting).find(|face| face.id == id);
        // A side that is too short to be an edge of the roof, or lies on another face, still has its number.
        let is_free = |(face, side): (FaceId, SideId)| {
            known(face).is_none_or(|face| side >= face.sides.next() || face.sides.place_of(side).is_some())
        };
        for (name, now) in seen(&after) {
            match last.get(&name) {
                Some(was) => prop_assert!(
                    is_same(was, &now),
                    "after {step:?} side {} of face {} passed from {was:?} to {now:?}",
                    name.1,
                    name.0
                ),
                None => prop_assert!(is_free(name), "side {} of face {} was used before", name.1, name.0),
            }
            last.insert(name, now);
        }
        let part_ids = |job: &Resolved| -> BTreeSet<(PartId, u32)> {
            job.parts.iter().flat_map(|p| p.sides.iter().flatten().map(|s| (p.id, s.id))).collect()
        };
        for (part, side) in part_ids(&after).difference(&part_ids(&before)) {
            let known = before.part(*part).map_or(0, |part| part.next_side);
            prop_assert!(*side >= known, "side {side} of part {part} was used before");
        }
        prop_assert_eq!(&again(&after), &*after);
    }
    while past.len() > 1 {
        past.pop();
        history.undo();
        prop_assert_eq!(&**history.job(), &*past[past.len() - 1]);
    }
    // When the part is set free, its sides become those of the drawn face.
    let job = history.job();
    let free = apply(job, &Edit::FreePart(job.parts[0].id)).unwrap();
    for face in &free.faces {
        let was = job.face(face.id).unwrap();
        prop_assert_eq!((&face.sides, &face.outline), (&was.sides, &was.outline));
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn ids_never_pass_to_another_side_of_a_raised_face(steps in prop::collection::vec(build(), 1..14)) {
        numbers_stay(&steps)?;
    }
}

/// A corner on an eave splits one wall into two collinear ones, with one eave over both. When its end is dragged, the
/// eave bends there, and its number stays with the longer wall.
#[test]
fn a_bent_eave_stays_with_the_longer_wall() {
    numbers_stay(&[Build::Add(0, 0, 0.5716), Build::Corner(0, 0, 0.0, 0.2623)]).unwrap();
}

/// A dormer over a hip, with its ridge 2 mm from where its west slope leaves the east face: beyond that slope's side
/// there is a 2 mm strip of the east face, and then the other slope. After another push the strip is wide, and the side
/// the same.
#[test]
fn a_side_along_a_narrow_strip_keeps_its_id_when_the_strip_widens() {
    numbers_stay(&[Build::Shift(1, 2.2042488464189374, 0.0), Build::Shift(1, 1.3295608935219159, 0.0)])
        .unwrap();
}

/// A hip that disappears while the side beyond it is a gable gets its number back afterwards.
#[test]
fn a_hidden_side_gets_its_id_back() {
    let job = house();
    let south = job.faces.iter().find(|face| face.name == "South").unwrap().clone();
    let hips: Vec<SideId> = seen(&job)
        .into_iter()
        .filter(|((face, _), side)| {
            *face == south.id && side.faces.iter().any(|(part, _)| *part == PartId(1))
        })
        .map(|((_, id), _)| id)
        .collect();
    assert!(hips.len() >= 2, "{hips:?}");
    let gable = |treatment| {
        let east = SideRef { ring: 0, side: 1 };
        Edit::PutPart(job.parts[0].with_side(east, |side| PartSide { treatment, ..side }).unwrap())
    };
    let gabled = apply(&job, &gable(Treatment::Gable)).unwrap();
    assert_eq!(again(&gabled), gabled);
    assert!(!hips.iter().all(|hip| gabled.face(south.id).unwrap().sides.place_of(*hip).is_some()));
    let back = apply(&again(&gabled), &gable(job.parts[0].sides[0][1].treatment)).unwrap();
    let sides = &back.face(south.id).unwrap().sides;
    assert!(hips.iter().all(|hip| sides.place_of(*hip).is_some()), "{hips:?} {sides:?}");
}
