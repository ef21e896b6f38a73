use super::*;
use chalkcourse_geometry::{Azimuth, Pitch, Polygon, dvec2};
use chalkcourse_job::{builtin_kit, builtin_prices, builtin_rule_book};

const INCH: f64 = 0.0254;

/// A face of 200 in up the slope with one block of a single row, its base rail at `rail` inches.
fn job(rail: f64, courses: Courses) -> Resolved {
    let mut job = Resolved::new("courses".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let pitch = Pitch::from_rise_in_12(6.0).unwrap();
    let run = 200.0 * INCH / pitch.slope_factor();
    let outline = Polygon::new(vec![dvec2(0.0, 0.0), dvec2(9.0, 0.0), dvec2(9.0, run), dvec2(0.0, run)]);
    let face = Face::new(FaceId(1), "F".into(), outline, pitch, Azimuth::SOUTH, Length::from_metres(3.0));
    job.faces.push(Face { courses, ..face });
    job.blocks.push(Block {
        id: BlockId(2),
        name: "A".into(),
        face: FaceId(1),
        at: dvec2(1.0, rail * INCH),
        rows: 1,
        columns: 3,
        orientation: chalkcourse_job::Orientation::Landscape,
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: std::collections::BTreeSet::new(),
        locked: false,
    });
    job.next_id = 3;
    job
}

#[test]
fn metric_shingles_of_five_and_five_eighths_by_hand() {
    // An exposure of 5 5/8 in (metric shingles, 13 1/4 in high less 2 in of headlap, halved: (13.25 − 2) / 2). Lines at
    // 5.625, 11.25, … 200 / 5.625 is 35.56: lines up to the 35th, and 0.5556 of a course, 3.125 in, left at the top.
    let exposure = Length::from_inches((13.25 - 2.0) / 2.0);
    let job = job(22.5, Courses { exposure, first: exposure });
    let told = coursing(&job, FaceId(1), None).unwrap();
    assert_eq!(told.lines, 35);
    assert!((told.left_at_top / INCH - 3.125).abs() < 1e-9);
    // 22.5 in is the fourth line. The module is 1134 mm, 44.646 in, the head flashing shows 8 in: it ends at 75.146 in,
    // 13.359 courses up. The next line is the 14th, at 78.75 in: 3.604 in of a cut course, then 21 whole ones up to the
    // 35th, with 3.125 in left.
    let block = &told.blocks[0];
    assert_eq!((block.laid.base.course, block.laid.base.above), (3, 0.0));
    assert!((block.laid.cut_at_head / INCH - 3.604).abs() < 1e-3);
    assert_eq!(block.laid.whole_to_top, 21);
    assert!((block.laid.left_at_top / INCH - 3.125).abs() < 1e-9);
    assert!(block.places.iter().any(|place| place.base.course == 3 && place.clear));
}

#[test]
fn a_proposed_exposure_fits_when_applied() {
    // From the line at 5 in it is 33.25 in to a rail at 38.25 in, and 195 in to the top. 228.25 in in 48 courses are
    // 4.755 in each: 7 make 33.286 in, 41 make 194.964 in, both 0.036 in off. The head flashing ends at 90.896 in,
    // 18.06 courses above the first line: 22 whole ones from the 19th on.
    let five = Length::from_inches(5.0);
    let job = job(38.25, Courses { exposure: five, first: five });
    let told = coursing(&job, FaceId(1), Some((4.5 * INCH, 5.0 * INCH))).unwrap();
    let proposed = told.blocks[0].exposures.first().expect("some exposure comes out");
    assert!((proposed.exposure / INCH - 4.755).abs() < 1e-3 && (proposed.below, proposed.above) == (7, 22));
    assert!((proposed.cut_at_head / INCH - 4.453).abs() < 1e-3);
    let edit = exposure_edit(&job, FaceId(1), proposed.exposure).unwrap();
    let after = apply(&job, &edit).unwrap();
    let laid = coursing(&after, FaceId(1), None).unwrap().blocks[0].laid;
    assert!(laid.base.to_nearest.abs() <= WITHIN + 1e-9, "{laid:?}");
    let text = courses_text(&job, &[told], &Standing::default());
    assert!(text.contains("an exposure of") && text.contains("base rail at course line"), "{text}");
}

#[test]
fn a_block_moves_to_the_proposed_position() {
    let five = Length::from_inches(5.0);
    let job = job(37.0, Courses { exposure: five, first: five });
    let told = coursing(&job, FaceId(1), None).unwrap();
    let nearest = told.blocks[0].places[0];
    assert_eq!(nearest.base.course, 6);
    let after = apply(&job, &base_edit(&job, BlockId(2), nearest.base.bottom).unwrap()).unwrap();
    assert!((after.blocks[0].at.y - 35.0 * INCH).abs() < 1e-9);
    assert_eq!(coursing(&after, FaceId(1), None).unwrap().blocks[0].laid.base.above, 0.0);
    assert!(coursing(&job, FaceId(9), None).is_err() && base_edit(&job, BlockId(9), 0.0).is_none());
    assert!(coursing(&job, FaceId(1), Some((0.2, 0.1))).is_err());
}
