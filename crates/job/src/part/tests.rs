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
fn house() -> Job {
    let job = Job::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
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

fn back_from_file(job: &Job) -> Job {
    job_from_text(&job_to_text(job).unwrap(), Path::new("t")).unwrap()
}

fn names(job: &Job) -> Vec<&str> {
    job.faces.iter().map(|face| face.name.as_str()).collect()
}

fn corner_of_block(job: &Job, block: usize) -> DVec2 {
    let block = &job.blocks[block];
    job.face(block.face).unwrap().plane().to_plan(block.at)
}

#[test]
fn a_part_gives_faces_that_are_in_no_file_and_come_back_from_one() {
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
    let ids = |job: &Job| job.faces.iter().map(|face| (face.id, face.from)).collect::<Vec<_>>();
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
fn a_face_that_goes_rests_with_its_block_and_comes_back() {
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
fn corners_come_and_go_and_sides_keep_their_faces() {
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
    assert_eq!(straight.parts, job.parts);
    assert_eq!(
        straight.faces.iter().map(|f| &f.outline).collect::<Vec<_>>(),
        job.faces.iter().map(|f| &f.outline).collect::<Vec<_>>()
    );
    assert!(straight.resting.is_empty());
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
    let next = apply(&job, &Edit::MoveParts(vec![job.parts[0].id], how)).unwrap();
    assert!(next.penetrations[0].at.distance(dvec2(0.0, 5.0)) < 1e-9);
    assert!(corner_of_block(&next, 0).distance(how.of(corner_of_block(&job, 0))) < 1e-9);
    let turn = next.faces[0].downslope.degrees() - job.faces[0].downslope.degrees();
    assert!((turn + 90.0).abs() < 1e-9, "{turn}");
}

#[test]
fn what_follows_from_a_part_is_not_drawn_until_it_is_free() {
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

fn south_of(job: &Job) -> Face {
    let mut south = job.faces[0].clone();
    south.outline.outer[0].x -= 1.0;
    south
}

#[test]
fn what_cannot_be_raised_is_refused_with_the_corner() {
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
