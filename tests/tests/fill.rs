//! Filled faces: what a fill lays passes the rules; a claim of "at most" holds across modes; and provable cases come
//! out exactly.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Face, FaceId, Penetration, PenetrationId, PenetrationKind, Resolved, RowJoints, RuleBook, apply,
    builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_limits::Against;
use chalkcourse_plan::{
    Fill, FillError, Mode, Size, Target, Way, Worth, evaluate, fill, fill_edit, fill_improving, hold_back,
};
use chalkcourse_rules::Severity;
use chalkcourse_tests::samples;
use proptest::prelude::*;
use std::sync::Arc;

const MODES: [Mode; 5] =
    [Mode::OneGrid, Mode::SlidingRows, Mode::HalfLapped, Mode::OnCourses, Mode::WholeBlocks(2)];

fn filled(job: &Resolved, face: FaceId, mode: Mode) -> (Fill, Resolved) {
    let fill = fill(job, &[face], mode, &|| false).expect("the face can be filled").remove(0);
    let job = apply(job, &fill_edit(job, &fill)).expect("the fill is an edit of this job");
    (fill, job)
}

/// Keys of all stops.
fn troubles(job: &Resolved) -> Vec<String> {
    let plan = evaluate(job);
    plan.findings.iter().filter(|f| f.severity == Severity::Stop).map(|f| f.key.to_string()).collect()
}

/// One face of `wide` × `high` metres on the slope, with a book that has no limits.
fn bare(wide: f64, high: f64) -> Resolved {
    let mut book = RuleBook { setbacks: Default::default(), ..(*builtin_rule_book()).clone() };
    book.courses_to_ridge.value = 0;
    book.fire_access = None;
    let mut kit = (*builtin_kit()).clone();
    kit.flashing.head = Length::ZERO;
    kit.base_rail = None;
    let mut job = Resolved::new("bare".into(), Arc::new(kit), Arc::new(book), builtin_prices());
    let pitch = Pitch::from_rise_in_12(6.0).unwrap();
    let run = high / pitch.slope_factor();
    let outline = Polygon::new(vec![dvec2(0.0, 0.0), dvec2(wide, 0.0), dvec2(wide, run), dvec2(0.0, run)]);
    job.faces.push(Face::new(
        FaceId(1),
        "F".into(),
        outline,
        pitch,
        Azimuth::SOUTH,
        Length::from_metres(3.0),
    ));
    job.next_id = 2;
    job
}

#[test]
fn a_face_n_modules_wide_holds_n_and_a_hair_less_holds_one_fewer() {
    let reveal = Length::from_inches(0.125).metres();
    for n in 1..6 {
        let wide = 1.722 * f64::from(n) + reveal * f64::from(n - 1);
        for mode in [Mode::OneGrid, Mode::SlidingRows, Mode::WholeBlocks(1)] {
            let (fill, job) = filled(&bare(wide + 1e-6, 1.2), FaceId(1), mode);
            assert_eq!((fill.modules, fill.bound), (n as usize, n as usize), "{mode:?}: {}", fill.claim);
            assert_eq!(troubles(&job), Vec::<String>::new());
            // `check` tolerates a tenth of a millimetre, and narrower reveals; the bound of this mode covers those too.
            if mode == Mode::SlidingRows {
                continue;
            }
            let (fill, _) = filled(&bare(wide - 1e-6, 1.2), FaceId(1), mode);
            assert_eq!(
                (fill.modules, fill.bound),
                (n as usize - 1, n as usize - 1),
                "{mode:?}: {}",
                fill.claim
            );
        }
    }
}

#[test]
fn samples_are_filled_within_the_rules() {
    for (name, job) in
        samples::all().into_iter().filter(|(name, _)| name.starts_with("alder") || name.starts_with("quarry"))
    {
        for face in job.faces.iter().filter(|face| face.pitch >= job.kit.least_pitch) {
            for mode in MODES {
                let (fill, job) = filled(&job, face.id, mode);
                assert!(fill.modules <= fill.bound);
                assert_eq!(fill.modules, fill.blocks.iter().map(|b| b.cells().count()).sum::<usize>());
                let about: Vec<String> = evaluate(&job)
                    .findings
                    .iter()
                    .filter(|f| f.severity == Severity::Stop && f.place.face == Some(face.id))
                    // A porch that dies into a wall has no ridge for a pathway to lead to.
                    .filter(|f| !(face.name == "Porch" && f.rule == "fire-plane-path"))
                    .filter(|f| f.place.block.is_none_or(|id| fill.blocks.iter().any(|b| b.id == id)))
                    .map(|f| f.key.to_string())
                    .collect();
                assert_eq!(about, Vec::<String>::new(), "{name}, {}, {mode:?}", face.name);
            }
        }
    }
}

#[test]
fn alder_court_holds_more_than_its_demo_block() {
    let job = samples::alder_court();
    let (fill, job) = filled(&job, job.faces[0].id, Mode::SlidingRows);
    assert!(fill.modules > 12 && fill.bound <= fill.modules + 1, "{}", fill.claim);
    assert_eq!(evaluate(&job).summary.modules, fill.modules);
}

#[test]
fn a_face_that_is_too_flat_is_refused_with_the_reason() {
    let job = samples::low_barn();
    let error = fill(&job, &[job.faces[0].id], Mode::OneGrid, &|| false).unwrap_err().to_string();
    assert!(error.contains("2:12") && error.contains("4:12"), "{error}");
}

prop_compose! {
    fn face()(
        wide in 4.5..11.0f64, high in 2.0..7.0f64, left in 0.0..2.0f64, right in 0.0..2.0f64,
        boots in prop::collection::vec((0.1..0.9f64, 0.1..0.9f64, 0..5usize), 0..4),
    ) -> Resolved {
        // Without fire access: the reserved pathway differs between modes, and the claim with it.
        let book = RuleBook { fire_access: None, ..(*builtin_rule_book()).clone() };
        let mut job = Resolved::new("random".into(), builtin_kit(), Arc::new(book), builtin_prices());
        let corners = vec![dvec2(0.0, 0.0), dvec2(wide, 0.0), dvec2(wide - right, high), dvec2(left, high)];
        let pitch = Pitch::from_rise_in_12(7.0).unwrap();
        job.faces.push(Face::new(FaceId(1), "F".into(), Polygon::new(corners), pitch, Azimuth::SOUTH, Length::ZERO));
        for (n, (x, y, kind)) in (2u32..).zip(boots) {
            let kind = PenetrationKind::ALL[kind];
            let at: DVec2 = dvec2(wide * x, high * y);
            job.penetrations.push(Penetration {
                id: PenetrationId(n), name: format!("P{n}"), kind, at, shape: kind.usual_shape(), clearance: None,
            });
        }
        job.next_id = 10;
        job
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// No mode exceeds the general bound; one grid holds one whole block.
    #[test]
    fn modes_are_ordered_and_the_rules_pass_what_is_laid(job in face()) {
        let laid = |mode| -> Result<Fill, TestCaseError> {
            let (fill, after) = filled(&job, FaceId(1), mode);
            prop_assert!(fill.modules <= fill.bound);
            let stops: Vec<String> = evaluate(&after).findings.into_iter()
                .filter(|f| f.severity == Severity::Stop && f.place.block.is_some())
                .map(|f| f.key.to_string()).collect();
            prop_assert!(stops.is_empty(), "{mode:?}: {stops:?}");
            Ok(fill)
        };
        let (grid, rows) = (laid(Mode::OneGrid)?, laid(Mode::SlidingRows)?);
        prop_assert!(rows.modules >= grid.modules);
        prop_assert!(grid.bound >= laid(Mode::WholeBlocks(1))?.modules);
        prop_assert!(rows.bound >= laid(Mode::OnCourses)?.modules);
        prop_assert!(rows.bound >= laid(Mode::HalfLapped)?.modules);
        prop_assert!(rows.bound >= laid(Mode::WholeBlocks(2))?.modules);
        prop_assert_eq!(rows.most(), Some(rows.bound));
        prop_assert_eq!(grid.most(), None);
    }
}

/// Filling a face with locked blocks keeps them, and new blocks keep their distance from them.
#[test]
fn locked_blocks_stay() {
    let job = samples::alder_court();
    let (first, mut job) = filled(&job, job.faces[0].id, Mode::SlidingRows);
    for block in &mut job.blocks {
        block.locked = true;
    }
    let (second, after) = filled(&job, first.face, Mode::SlidingRows);
    assert!(second.modules < 4, "{}", second.claim);
    assert_eq!(after.blocks[..job.blocks.len()], job.blocks[..]);
    assert_eq!(troubles(&after), Vec::<String>::new());
}

const TO: fn(usize, Way) -> Mode =
    |modules, way| Mode::ToNumber(Target { size: Size::Modules(modules), way });

#[test]
fn a_fill_to_a_number_is_exact_and_its_split_is_cheapest() {
    let job = samples::alder_court();
    let faces: Vec<FaceId> = job.faces.iter().map(|face| face.id).collect();
    for way in [Way::Compact, Way::Cheapest] {
        let fills = fill(&job, &faces, TO(30, way), &|| false).unwrap();
        let total: usize = fills.iter().map(|fill| fill.modules).sum();
        assert!(total == 30 && fills.iter().all(|fill| fill.proved), "{}", fills[0].claim);
        let sum =
            |fills: &[Fill]| fills.iter().filter_map(|f| f.measure.as_ref()).map(|m| m.value).sum::<f64>();
        // Face by face, each number by itself: the minimum over all splits.
        let alone = |face: FaceId, modules: usize| match modules {
            0 => Some(0.0),
            _ => fill(&job, &[face], TO(modules, way), &|| false).ok().map(|fills| sum(&fills)),
        };
        let least = (5..=25)
            .filter_map(|n| Some(alone(faces[0], n)? + alone(faces[1], 30 - n)?))
            .fold(f64::INFINITY, f64::min);
        assert!((sum(&fills) - least).abs() < 1e-6, "{way:?}: {} and {least}", sum(&fills));
        let after = fills.iter().fold(job.clone(), |job, fill| apply(&job, &fill_edit(&job, fill)).unwrap());
        assert_eq!(evaluate(&after).summary.modules, 30);
    }
    let kilowatts = Mode::ToNumber(Target { size: Size::Kilowatts(4.86), way: Way::Compact });
    let fills = fill(&job, &faces, kilowatts, &|| false).unwrap();
    assert_eq!(fills.iter().map(|fill| fill.modules).sum::<usize>(), 12, "12 of 405 W");
    let error = fill(&job, &faces, TO(500, Way::Compact), &|| false).unwrap_err().to_string();
    assert!(error.contains("500 modules were asked for"), "{error}");
}

/// When a number can't be reached, the error tells how many were found, on one face and on several, with a ridge
/// setback that grows with the array and beside locked blocks: that many can be laid, and one more is refused with the
/// same number. The bound is no less.
#[test]
fn asking_for_too_many_reports_how_many_fit() {
    let most = |job: &Resolved, faces: &[FaceId], modules: usize| match fill(
        job,
        faces,
        TO(modules, Way::Compact),
        &|| false,
    ) {
        Ok(fills) => panic!("{modules} were laid: {}", fills[0].claim),
        Err(FillError::TooFew { asked, found, most }) => {
            assert!(asked == modules && found <= most && most < modules);
            found
        }
        Err(FillError::NotFound { asked, found, most }) => {
            assert!(asked == modules && found < modules && modules <= most);
            found
        }
        Err(other) => panic!("{other}"),
    };
    let mut cases: Vec<(Resolved, Vec<FaceId>)> = Vec::new();
    for n in 1..5 {
        let reveal = builtin_kit().reveal.usual.metres();
        let wide = 1.722 * f64::from(n) + reveal * f64::from(n - 1) + 1e-6;
        let job = bare(wide, 1.134 * 2.0 + reveal + 1e-6);
        assert_eq!(most(&job, &[FaceId(1)], 50), 2 * n as usize);
        cases.push((job, vec![FaceId(1)]));
    }
    let alder = samples::alder_court();
    let both: Vec<FaceId> = alder.faces.iter().map(|face| face.id).collect();
    let (_, mut locked) = filled(&alder, both[0], Mode::WholeBlocks(1));
    locked.blocks.iter_mut().for_each(|block| block.locked = true);
    cases.extend([(locked, both.clone()), (alder.clone(), both.clone()), (alder, vec![both[0]])]);
    let quarry = samples::quarry_lane();
    let steep = quarry.faces.iter().filter(|face| face.pitch >= quarry.kit.least_pitch).take(3);
    let steep: Vec<FaceId> = steep.map(|face| face.id).collect();
    cases.push((quarry, steep));
    for (job, faces) in cases {
        let fits = most(&job, &faces, 400);
        assert!(fits > 0);
        assert_eq!(most(&job, &faces, fits + 1), fits, "{}", job.name);
        let fills = fill(&job, &faces, TO(fits, Way::Compact), &|| false).unwrap();
        let locked: usize = job.blocks.iter().filter(|b| b.locked).map(|b| b.cells().count()).sum();
        assert_eq!(fills.iter().map(|fill| fill.modules).sum::<usize>() + locked, fits, "{}", job.name);
        assert!(fills.iter().all(|fill| fill.bound >= fill.modules && fill.most().is_none()));
    }
}

#[test]
fn worth_grows_with_module_value_and_worthless_modules_are_left_out() {
    let job = samples::alder_court();
    let laid = |module| {
        let fill = filled(&job, job.faces[0].id, Mode::ByWorth(Worth { module, by_area: false })).0;
        assert!(fill.proved, "{}", fill.claim);
        (fill.modules, fill.measure.unwrap().value)
    };
    assert_eq!(laid(0.0), (0, 0.0));
    let (few, some) = laid(80.0);
    let (many, most) = laid(2_000.0);
    let grid = filled(&job, job.faces[0].id, Mode::OneGrid).0.modules;
    assert!(few <= many && some < most && many == grid, "{few} {some} {many} {most} {grid}");
}

/// With a kit that allows rails only within a range above a course line, all modes comply; and with a kit without free
/// joints no row is shifted.
#[test]
fn the_kit_restricts_rows_and_rails() {
    let mut job = samples::alder_court();
    let mut kit = (*job.kit).clone();
    kit.laying.base_rail.anywhere = false;
    kit.laying.joints = vec![RowJoints::Aligned];
    job.kit = Arc::new(kit);
    let face = job.faces[0].id;
    let worth = Mode::ByWorth(Worth { module: 400.0, by_area: false });
    for mode in [Mode::OneGrid, Mode::SlidingRows, Mode::OnCourses, Mode::WholeBlocks(2), worth] {
        let (fill, after) = filled(&job, face, mode);
        assert!(fill.modules > 0 && fill.claim.now().contains("above a course line"), "{}", fill.claim);
        for told in chalkcourse_plan::coursing(&after, face, None).unwrap().blocks {
            let above = told.laid.base.above / 0.0254;
            assert!(above <= 0.25 + 1e-6, "{mode:?}: {above} in");
        }
        assert!(fill.blocks.iter().all(|block| block.shifts.is_empty()), "{mode:?}");
    }
    let error = fill(&job, &[face], Mode::HalfLapped, &|| false).unwrap_err().to_string();
    assert!(error.contains("half-lapped"), "{error}");
}

/// Improving ends with a proof or with the result of the first pass, each reported answer is better than the one
/// before, and stopping in the first pass still leaves modules that the rules pass.
#[test]
fn improving_never_gets_worse_and_stopping_keeps_the_best() {
    let job = samples::quarry_lane();
    let faces: Vec<FaceId> =
        job.faces.iter().filter(|face| face.pitch >= job.kit.least_pitch).map(|face| face.id).collect();
    let mut told: Vec<(usize, usize)> = Vec::new();
    let sums = |fills: &[Fill]| {
        let sum = |of: fn(&Fill) -> usize| fills.iter().map(of).sum::<usize>();
        (sum(|fill| fill.modules), sum(|fill| fill.bound))
    };
    let end = std::time::Instant::now() + std::time::Duration::from_secs(4);
    let late = || std::time::Instant::now() >= end;
    let last =
        fill_improving(&job, &faces, Mode::SlidingRows, &late, &mut |fills| told.push(sums(fills))).unwrap();
    assert!(!told.is_empty() && told.windows(2).all(|two| two[0].0 <= two[1].0), "{told:?}");
    assert_eq!(told.last(), Some(&sums(&last)));
    // A first answer for all faces comes at once: stopping there yields at least that much.
    let first = std::cell::RefCell::new(Vec::new());
    let once = || !first.borrow().is_empty();
    let kept = fill_improving(&job, &faces, Mode::SlidingRows, &once, &mut |fills| {
        first.borrow_mut().push((fills.len(), sums(fills)));
    });
    assert_eq!(first.borrow()[0].0, faces.len());
    assert!(sums(&kept.unwrap()).0 >= first.borrow()[0].1.0);
    for after in [0, 3, 40] {
        let asked = std::cell::Cell::new(0);
        let stop = || {
            asked.set(asked.get() + 1);
            asked.get() > after
        };
        for fill in fill(&job, &faces, Mode::SlidingRows, &stop).unwrap() {
            assert!(fill.modules <= fill.bound);
        }
    }
}

/// All faces of a house at once, improved until nothing is left to improve: an array that covers more than a third of
/// the roof has a ridge setback of 36 in, or covers no more (IRC R324.6.2, 2018). Improving a single face used to
/// ignore the total coverage.
#[test]
fn whole_houses_improved_to_the_end_have_no_stop() {
    for name in ["quarry-lane.chalk.json", "alder-court.chalk.json"] {
        let (_, job) = samples::all().into_iter().find(|(known, _)| *known == name).unwrap();
        let steep = job.faces.iter().filter(|face| face.pitch >= job.kit.least_pitch);
        let faces: Vec<FaceId> = steep.map(|face| face.id).collect();
        let mut told = 0;
        let fills = fill_improving(&job, &faces, Mode::SlidingRows, &|| false, &mut |_| told += 1).unwrap();
        assert!(told > 0);
        let done = fills.iter().fold(job.clone(), |job, fill| apply(&job, &fill_edit(&job, fill)).unwrap());
        assert_eq!(troubles(&done), Vec::<String>::new(), "{name}");
    }
}

/// Every obstacle has its cost, and every cost its places.
#[test]
fn limits_of_a_fill_have_names_and_places() {
    let job = samples::alder_court();
    for mode in [Mode::SlidingRows, Mode::WholeBlocks(1), TO(12, Way::Compact)] {
        let (fill, after) = filled(&job, job.faces[0].id, mode);
        let held = hold_back(&job, &fill, mode, &|| false).unwrap();
        assert!(held.finished && held.costs.iter().all(|cost| !cost.shapes.is_empty()));
        let penetrations =
            held.costs.iter().filter(|cost| matches!(cost.what.against, Against::Penetration(_))).count();
        assert!(penetrations >= 2, "{mode:?}: {:?}", held.costs);
        assert_eq!(
            hold_back(&after, &fill, mode, &|| false).unwrap(),
            held,
            "asked before or after it is in place"
        );
        assert!(!hold_back(&job, &fill, mode, &|| true).unwrap().finished);
    }
}
