use crate::*;
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length, Pitch, Polygon, dvec2};
use std::path::Path;

fn pitch(rise: f64) -> Treatment {
    Treatment::Slope(Pitch::from_rise_in_12(rise).unwrap())
}

fn rectangle(x: f64, y: f64, wide: f64, deep: f64) -> Polygon {
    Polygon::new(vec![dvec2(x, y), dvec2(x + wide, y), dvec2(x + wide, y + deep), dvec2(x, y + deep)])
}

fn part(id: u32, outline: Polygon) -> RoofPart {
    let eave = Length::from_metres(3.0);
    RoofPart::new(PartId(id), "Main".into(), PartKind::Main, outline, eave, pitch(6.0), Length::ZERO)
}

/// A hip on 12 × 8 m with a block on its south face.
fn house() -> Resolved {
    let job = Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let job = apply(&job, &Edit::PutPart(part(job.next_id, rectangle(0.0, 0.0, 12.0, 8.0)))).unwrap();
    let block = Block {
        id: BlockId(job.next_id),
        name: "A".into(),
        face: job.faces[0].id,
        at: dvec2(4.0, 0.5),
        rows: 1,
        columns: 2,
        orientation: Orientation::Landscape,
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    };
    apply(&job, &Edit::PutBlock(block)).unwrap()
}

fn back_from_file(job: &Resolved) -> Resolved {
    job_from_text(&job_to_text(job).unwrap(), Path::new("t")).unwrap()
}

fn names(job: &Resolved) -> Vec<&str> {
    job.faces.iter().map(|face| face.name.as_str()).collect()
}

fn corner_of_block(job: &Resolved, block: usize) -> DVec2 {
    let block = &job.blocks[block];
    job.face(block.face).unwrap().plane().to_plan(block.at)
}

#[test]
fn faces_of_a_part_are_derived_again_when_loading() {
    let job = house();
    assert_eq!(names(&job), ["South", "East", "North", "West"]);
    let text = job_to_text(&job).unwrap();
    assert_eq!(text.matches("\"outline\"").count(), 1, "only the part's own outline: {text}");
    assert!(!text.contains("downslope"));
    assert_eq!(back_from_file(&job), job);
    let area: f64 = job.faces.iter().map(|face| face.outline.area()).sum();
    assert!((area - 96.0).abs() < 1e-9);
}

#[test]
fn a_dragged_corner_raises_again_and_faces_keep_their_numbers() {
    let job = house();
    let before = corner_of_block(&job, 0);
    let dragged = job.parts[0].with_corner_moved(0, 1, dvec2(14.0, 0.0)).unwrap();
    let next = apply(&job, &Edit::PutPart(dragged)).unwrap();
    let ids = |job: &Resolved| job.faces.iter().map(|face| (face.id, face.from)).collect::<Vec<_>>();
    assert_eq!(ids(&next), ids(&job));
    assert_eq!(corner_of_block(&next, 0), before, "its own eave did not move");
    assert_ne!(next.faces[1].outline, job.faces[1].outline);
    assert_eq!(back_from_file(&next), next);
}

#[test]
fn a_moved_eave_takes_the_block_with_it() {
    let job = house();
    let before = corner_of_block(&job, 0);
    let part = job.parts[0].with_corner_moved(0, 0, dvec2(0.0, -1.5)).unwrap();
    let part = part.with_corner_moved(0, 1, dvec2(12.0, -1.5)).unwrap();
    let next = apply(&job, &Edit::PutPart(part)).unwrap();
    assert!(corner_of_block(&next, 0).distance(before - dvec2(0.0, 1.5)) < 1e-9);
    assert_eq!(next.blocks, job.blocks, "on its face it is where it was");
    assert!((next.faces[0].height.metres() - 3.0).abs() < 1e-9);
}

#[test]
fn a_hidden_face_rests_with_its_block_and_comes_back() {
    let job = house();
    let south = SideRef { ring: 0, side: 0 };
    let gable = |treatment| {
        job.parts[0].with_side(south, |side| PartSide { treatment, ..side }).map(Edit::PutPart).unwrap()
    };
    let gone = apply(&job, &gable(Treatment::Gable)).unwrap();
    assert_eq!(names(&gone), ["East", "North", "West"]);
    assert_eq!(gone.resting.len(), 1);
    assert_eq!(gone.blocks, job.blocks, "never dropped");
    assert_eq!(back_from_file(&gone), gone);
    let back = apply(&gone, &gable(pitch(8.0))).unwrap();
    assert!(back.resting.is_empty());
    let south = back.face(job.blocks[0].face).unwrap();
    assert_eq!((south.name.as_str(), south.pitch.rise_in_12().round()), ("South", 8.0));
}

#[test]
fn adding_and_removing_corners_keeps_faces_of_sides() {
    let job = house();
    let part = &job.parts[0];
    let more = part.with_corner_added(0, 0, dvec2(6.0, 0.0)).unwrap();
    let next = apply(&job, &Edit::PutPart(more.clone())).unwrap();
    assert_eq!(names(&next), ["South", "East", "North", "West"], "two sides in one plane are one face");
    let bent = more.with_corner_moved(0, 1, dvec2(6.0, -2.0)).unwrap();
    let bent = apply(&next, &Edit::PutPart(bent)).unwrap();
    assert_eq!(bent.faces.len(), 5);
    let straight = bent.parts[0].without_corner(0, 1).unwrap();
    let straight = apply(&bent, &Edit::PutPart(straight)).unwrap();
    let as_drawn = |part: &RoofPart| (part.outline.clone(), part.sides.clone());
    assert_eq!(as_drawn(&straight.parts[0]), as_drawn(&job.parts[0]));
    assert_eq!(straight.parts[0].next_side, 5, "a number that was given is not given again");
    assert_eq!(
        straight.faces.iter().map(|f| &f.outline).collect::<Vec<_>>(),
        job.faces.iter().map(|f| &f.outline).collect::<Vec<_>>()
    );
    assert!(straight.resting.is_empty());
}

#[test]
fn a_courtyard_is_added_and_removed() {
    let job = house();
    let part = &job.parts[0];
    let middle = part.outline.bounds().unwrap().centre();
    let corners = [dvec2(-0.5, -0.5), dvec2(0.5, -0.5), dvec2(0.0, 0.5)].map(|p| middle + p);
    let around = part.with_courtyard(corners.to_vec());
    assert_eq!(
        around.sides[1].iter().map(|side| side.treatment).collect::<Vec<_>>(),
        [part.sides[0][0].treatment; 3]
    );
    let next = apply(&job, &Edit::PutPart(around)).unwrap();
    assert!(next.faces.len() > job.faces.len(), "three more slopes look into it");
    // A courtyard of three corners is removed with any of them; the outline of a house of three is not.
    let closed = next.parts[0].without_corner(1, 2).unwrap();
    let closed = apply(&next, &Edit::PutPart(closed)).unwrap();
    assert_eq!(closed.parts[0].outline, part.outline);
    assert_eq!((&closed.parts[0].sides, closed.parts[0].next_side), (&part.sides, 7));
    let mut three = part.clone();
    three.outline.outer.pop();
    three.sides[0].pop();
    assert_eq!(three.without_corner(0, 0), None);
}

#[test]
fn parts_move_with_all_that_stands_on_them() {
    let mut job = house();
    let kind = PenetrationKind::PipeBoot;
    let pipe = |at| Penetration {
        id: PenetrationId(90),
        name: "P".into(),
        kind,
        at,
        shape: kind.usual_shape(),
        clearance: None,
    };
    job = apply(&job, &Edit::PutPenetration(pipe(dvec2(3.0, 1.0)))).unwrap();
    let how = PlanMove { turn: 90.0, about: DVec2::ZERO, by: dvec2(1.0, 2.0) };
    let next = apply(&job, &Edit::MoveParts { parts: vec![job.parts[0].id], how }).unwrap();
    assert!(next.penetrations[0].at.distance(dvec2(0.0, 5.0)) < 1e-9);
    assert!(corner_of_block(&next, 0).distance(how.of(corner_of_block(&job, 0))) < 1e-9);
    let turn = next.faces[0].downslope.degrees() - job.faces[0].downslope.degrees();
    assert!((turn + 90.0).abs() < 1e-9, "{turn}");
}

#[test]
fn faces_of_a_part_are_not_editable_until_freed() {
    let job = house();
    let mut south = job.faces[0].clone();
    south.outline.outer[0].x -= 1.0;
    let refused = apply(&job, &Edit::PutFace(south.clone())).unwrap_err();
    assert!(refused.to_string().contains("set it free"), "{refused}");
    assert!(apply(&job, &Edit::RemoveFace(south.id)).is_err());
    let renamed = Face { name: "Front".into(), ..job.faces[0].clone() };
    let named = apply(&job, &Edit::PutFace(renamed)).unwrap();
    assert_eq!(named.faces[0].name, "Front");
    let free = apply(&named, &Edit::FreePart(job.parts[0].id)).unwrap();
    assert!(free.parts.is_empty() && free.faces.iter().all(|face| face.from.is_none()));
    assert_eq!(free.faces[0].outline, job.faces[0].outline);
    apply(&free, &Edit::PutFace(south_of(&free))).unwrap();
    assert_eq!(back_from_file(&free), free);
}

fn south_of(job: &Resolved) -> Face {
    let mut south = job.faces[0].clone();
    south.outline.outer[0].x -= 1.0;
    south
}

#[test]
fn a_part_that_cannot_be_raised_is_refused_naming_the_corner() {
    let job = house();
    let crossed = job.parts[0].with_corner_moved(0, 0, dvec2(6.0, 20.0)).unwrap();
    let error = apply(&job, &Edit::PutPart(crossed)).unwrap_err().to_string();
    assert!(error.contains("Main") && error.contains("pull them apart"), "{error}");
    let mut twice = job.parts[0].clone();
    twice.sides[0][1].id = 0;
    assert!(matches!(apply(&job, &Edit::PutPart(twice)), Err(EditError::SideTwice { .. })));
    let mut few = job.parts[0].clone();
    few.sides[0].pop();
    assert!(matches!(apply(&job, &Edit::PutPart(few)), Err(EditError::PartSides { .. })));
}

#[test]
fn a_removed_part_takes_its_faces_and_undo_brings_all_back() {
    let job = house();
    let mut history = History::new(job.clone());
    history.edit("remove", &Edit::RemovePart(job.parts[0].id)).unwrap();
    assert!(history.job().faces.is_empty() && history.job().blocks.is_empty());
    history.undo();
    assert_eq!(**history.job(), job);
}

/// A chimney 1 m wide and 0.6 m deep on a slope of 6:12, its cricket 6:12. Closed form: the level ridge is 0.25 m above
/// the roof at the back of the chimney and meets the slope 0.5 m behind it: two triangles of 0.5 × 0.5 / 2 m² in plan.
#[test]
fn a_chimney_with_its_cricket() {
    let job = house();
    let top = Length::from_metres(7.0);
    let cricket = Some(Pitch::from_rise_in_12(6.0).unwrap());
    let id = PartId(job.next_id);
    let chimney = RoofPart::chimney(id, "Chimney".into(), rectangle(6.0, 1.0, 1.0, 0.6), top, cricket);
    let with = apply(&job, &Edit::PutPart(chimney.clone())).unwrap();
    assert_eq!(with.faces.len(), 6, "{:?}", names(&with));
    assert_eq!(&names(&with)[4..], ["Chimney east", "Chimney west"]);
    for face in &with.faces[4..] {
        assert!((face.outline.area() - 0.125).abs() < 1e-9, "{}", face.outline.area());
        assert!((face.pitch.rise_in_12() - 6.0).abs() < 1e-9);
    }
    let area: f64 = with.faces.iter().map(|face| face.outline.area()).sum();
    assert!((area - (96.0 - 0.6)).abs() < 1e-9, "no area twice");
    assert_eq!(back_from_file(&with), with);
    // Across the ridge it needs no cricket, and reports that.
    let across = RoofPart { outline: rectangle(5.5, 3.7, 1.0, 0.6), ..chimney };
    let across = apply(&job, &Edit::PutPart(across)).unwrap();
    assert!(matches!(across.problems()[..], [PartProblem { trouble: PartTrouble::NoCricket, .. }]));
}

#[test]
fn a_dormer_cuts_the_slope_and_a_hidden_part_is_reported() {
    let job = house();
    let eave = Length::from_metres(4.2);
    let mut dormer = RoofPart::new(
        PartId(job.next_id),
        "Dormer".into(),
        PartKind::Dormer,
        rectangle(5.0, 1.0, 2.0, 3.0),
        eave,
        pitch(6.0),
        Length::ZERO,
    );
    for side in [0, 2] {
        dormer.sides[0][side].treatment = Treatment::Gable;
    }
    let with = apply(&job, &Edit::PutPart(dormer.clone())).unwrap();
    assert_eq!(names(&with)[4..], ["Dormer east", "Dormer west"]);
    assert_eq!(with.faces[0].outline.holes.len(), 1);
    assert_eq!(back_from_file(&with), with);
    let sunk = RoofPart { eave_height: Length::from_metres(1.0), ..dormer };
    let hidden = apply(&with, &Edit::PutPart(sunk)).unwrap();
    assert!(matches!(hidden.problems()[..], [PartProblem { trouble: PartTrouble::Hidden, .. }]));
    assert_eq!((hidden.faces.len(), hidden.resting.len()), (4, 2));
    let free = apply(&with, &Edit::FreePart(with.parts[1].id)).unwrap();
    assert!(free.parts.is_empty(), "the house under it is freed with it");
    assert_eq!(free.faces[0].outline, with.faces[0].outline);
}

/// A dormer as wide as the slope divides the face below it in two: each block goes with the piece that it is on.
#[test]
fn a_block_goes_with_the_piece_under_it() {
    let mut job = house();
    job.blocks[0].at = dvec2(1.5, 0.3);
    let other = Block { id: BlockId(60), at: dvec2(8.6, 0.3), columns: 1, ..job.blocks[0].clone() };
    job = apply(&job, &Edit::PutBlock(other)).unwrap();
    let before = [corner_of_block(&job, 0), corner_of_block(&job, 1)];
    let outline = rectangle(5.0, -1.0, 1.5, 5.5);
    let eave = Length::from_metres(5.5);
    let kind = PartKind::Dormer;
    let mut wall =
        RoofPart::new(PartId(job.next_id), "Bay".into(), kind, outline, eave, pitch(6.0), Length::ZERO);
    for side in [0, 2] {
        wall.sides[0][side].treatment = Treatment::Gable;
    }
    let cut = apply(&job, &Edit::PutPart(wall)).unwrap();
    let south = job.faces[0].from.unwrap();
    assert_eq!(cut.faces_on(south.part, south.side).count(), 2);
    assert_ne!(cut.blocks[0].face, cut.blocks[1].face);
    assert!(
        corner_of_block(&cut, 0).distance(before[0]) < 1e-9
            && corner_of_block(&cut, 1).distance(before[1]) < 1e-9
    );
    assert_eq!(back_from_file(&cut), cut);
}

/// The longer piece of a wall remains that wall, wherever the corner is added: with its face, and what is on it.
#[test]
fn the_longer_piece_of_a_wall_keeps_the_face() {
    let job = house();
    for (x, numbers) in [(8.0, [0, 4]), (3.0, [4, 0])] {
        let more = job.parts[0].with_corner_added(0, 0, dvec2(x, 0.0)).unwrap();
        let sides: Vec<u32> = more.sides[0].iter().map(|side| side.id).collect();
        assert_eq!(sides[..2], numbers);
        let straight = apply(&job, &Edit::PutPart(more.clone())).unwrap();
        assert_eq!(
            straight.faces[0].from, job.faces[0].from,
            "in one plane: one face, of the side that was there"
        );
        assert_eq!(straight.resting, vec![]);
        let bent = more.with_corner_moved(0, 1, dvec2(x, -2.0)).unwrap();
        let bent = apply(&straight, &Edit::PutPart(bent)).unwrap();
        assert_eq!(bent.faces[0].from, job.faces[0].from);
        let middle = (bent.parts[0].wall_line(SideRef { ring: 0, side: usize::from(x < 6.0) })).unwrap();
        let middle = (middle.0 + middle.1) / 2.0;
        let face = &bent.faces[0];
        assert!(face.outline.distance_to_border(middle) < 1e-9, "South is not on the longer piece");
        // Without the corner the longer wall continues, with its face.
        let back = bent.parts[0].without_corner(0, 1).unwrap();
        assert_eq!(back.sides, job.parts[0].sides);
    }
}

/// Ids of deleted sides are not reused: a new side gets neither the id nor the resting face.
#[test]
fn side_ids_are_never_reused() {
    let job = house();
    let more = job.parts[0].with_corner_added(0, 2, dvec2(5.0, 8.0)).unwrap();
    let bent = more.with_corner_moved(0, 3, dvec2(5.0, 10.0)).unwrap();
    let bent = apply(&job, &Edit::PutPart(bent)).unwrap();
    let new = bent.faces.iter().find(|face| face.from.unwrap().side == 4).unwrap().id;
    let block = Block { face: new, ..job.blocks[0].clone() };
    let with_block = apply(&bent, &Edit::PutBlock(block)).unwrap();
    let less = with_block.parts[0].without_corner(0, 3).unwrap();
    let less = apply(&with_block, &Edit::PutPart(less)).unwrap();
    assert_eq!(less.resting.iter().map(|face| face.id).collect::<Vec<_>>(), [new], "its block waits");
    let again = less.parts[0].with_corner_added(0, 1, dvec2(12.0, 5.0)).unwrap();
    assert!(again.place_of(4).is_none() && again.place_of(5).is_some());
    // It does not come back when an old state of the part is put by hand either.
    let stale = apply(&less, &Edit::PutPart(with_block.parts[0].clone())).unwrap();
    assert!(stale.parts[0].place_of(4).is_none());
    assert_eq!(stale.parts[0].outline, with_block.parts[0].outline);
}
