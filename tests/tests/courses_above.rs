//! Courses above an array on the samples, by hand: the part between the head flashing and the next course line is a cut course.
#![allow(clippy::unwrap_used, reason = "a helper of a test may stop it")]

use chalkcourse_geometry::Length;
use chalkcourse_job::Resolved;
use chalkcourse_plan::{coursing, evaluate};
use chalkcourse_tests::samples;

fn sample(name: &str) -> Resolved {
    samples::all().into_iter().find(|(file, _)| file.contains(name)).unwrap().1
}

/// The courses above the first block of a job: cut at the head, full, remainder at the top; inches.
fn above(job: &Resolved) -> (f64, usize, f64) {
    let block = job.blocks.first().unwrap();
    let told = coursing(job, block.face, None).unwrap();
    let laid = told.blocks.iter().find(|it| it.block == block.id).unwrap().laid;
    let inches = |metres: f64| (metres / 0.0254 * 1000.0).round() / 1000.0;
    (inches(laid.cut_at_head), laid.whole_to_top, inches(laid.left_at_top))
}

/// Alder Court: the ridge is 201.246 in up, the head flashing is exposed 8 in and ends at 24 + 134.187 + 8 = 166.187 in; lines at
/// multiples of 5 in: the first above it is 170, the last 200. Six full courses, 3.813 in of a cut one below them, 1.246 in
/// above.
#[test]
fn alder_court_has_six_whole_courses_above_its_array() {
    assert_eq!(above(&sample("alder-court")), (3.813, 6, 1.246));
}

/// The same array with its head flashing at 196 in: 5.246 in are left below the ridge, more than a course, but no full course
/// fits on the lines at 200 and 205. The rule requires one.
#[test]
fn a_course_of_room_is_not_a_full_course() {
    let mut job = sample("alder-court");
    let up = (196.0 - 166.187) * 0.0254;
    job.blocks[0].at.y += up;
    let (cut, whole, left) = above(&job);
    assert_eq!(whole, 0);
    assert!((cut + left - 5.246).abs() < 0.002, "{cut} {left}");
    let told = |job: &Resolved| {
        evaluate(job).findings.iter().filter(|finding| finding.rule == "ridge-course").count()
    };
    assert_eq!(told(&job), 1);
    // Down to a line with a course above it: 195 in.
    job.blocks[0].at.y -= 0.0254;
    assert_eq!(told(&job), 0);
    // The lap under the shingles does not reduce the exposed part.
    std::sync::Arc::make_mut(&mut job.kit).flashing.head_lap = Length::from_inches(6.0);
    assert_eq!(above(&job).1, 1);
}
