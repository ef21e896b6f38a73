use super::*;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Shape, apply, job_from_text};
use chalkcourse_rules::Severity;
use std::path::Path;

/// A 60 × 30 ft gable, 6:12, with block 7 of 3 rows of 4 on its south face and no stops.
fn alder_court() -> Resolved {
    let text = include_str!("../../../../sample-roofs/alder-court.chalk.json");
    job_from_text(text, Path::new("alder-court.chalk.json")).unwrap()
}

const A: BlockId = BlockId(7);
const SOUTH: FaceId = FaceId(1);
const NORTH: FaceId = FaceId(2);
/// Half the depth of the house, where the ridge is.
const RIDGE: f64 = 4.572;

fn uneven() -> Resolved {
    let mut job = alder_court();
    let block = &mut job.blocks[0];
    let shift = |row, from, by| RowShift { row, from, by: Length::from_metres(by) };
    block.shifts = vec![shift(1, 0, 0.4), shift(1, 2, 0.25), shift(2, 3, 0.1)];
    block.off = [Cell { row: 2, column: 0 }, Cell { row: 1, column: 3 }].into();
    job
}

fn after(job: &Resolved, edit: Option<Edit>) -> Resolved {
    apply(job, &edit.expect("no edit")).unwrap()
}

/// Modules of some blocks in plan: lower and upper corner, sorted.
fn in_plan(job: &Resolved, blocks: &[BlockId], place: impl Fn(DVec2) -> DVec2) -> Vec<[DVec2; 2]> {
    let layout = Layout::of(job);
    let mut all: Vec<[DVec2; 2]> = Vec::new();
    for id in blocks {
        let placed = layout.block(*id).unwrap();
        let plane = layout.roof.faces[placed.face].plane;
        for module in &placed.modules {
            let ends = [module.rect.min, module.rect.max].map(|p| place(plane.to_plan(p)));
            all.push([ends[0].min(ends[1]), ends[0].max(ends[1])]);
        }
    }
    all.sort_by(|a, b| (a[0].y, a[0].x).partial_cmp(&(b[0].y, b[0].x)).unwrap());
    all
}

fn same(a: &[[DVec2; 2]], b: &[[DVec2; 2]]) {
    assert_eq!(a.len(), b.len());
    for (a, b) in a.iter().zip(b) {
        assert!(a[0].distance(b[0]) < 1e-9 && a[1].distance(b[1]) < 1e-9, "{a:?} is not {b:?}");
    }
}

#[test]
fn a_mirror_image_is_the_reflection_at_the_ridge_in_plan() {
    let job = uneven();
    let mirrored = after(&job, mirror(&job, A));
    let image = mirrored.blocks.last().unwrap();
    assert_eq!((image.face, image.id), (NORTH, BlockId(job.next_id)));
    assert_ne!(image.name, job.blocks[0].name);
    let reflected = in_plan(&job, &[A], |p| dvec2(p.x, 2.0 * RIDGE - p.y));
    let mut got = in_plan(&mirrored, &[image.id], |p| p);
    // Rows at equal height differ by rounding: sort both lists the same way.
    let mut expected = reflected;
    for list in [&mut got, &mut expected] {
        list.sort_by_key(|m| ((m[0].y * 1e6).round() as i64, (m[0].x * 1e6).round() as i64));
    }
    same(&got, &expected);
    assert_eq!(other_slope(&Layout::of(&job), SOUTH), Some(NORTH));
    let back = after(&mirrored, mirror(&mirrored, image.id));
    let twice = back.blocks.last().unwrap();
    assert!(twice.at.distance(job.blocks[0].at) < 1e-9);
    assert_eq!(twice.off, job.blocks[0].off);
}

#[test]
fn a_face_without_a_shared_ridge_has_no_other_slope() {
    let mut job = alder_court();
    job = apply(&job, &Edit::RemoveFace(NORTH)).unwrap();
    assert_eq!(mirror(&job, A), None);
    assert_eq!(other_slope(&Layout::of(&job), SOUTH), None);
    assert_eq!(mirror(&job, BlockId(99)), None);
}

#[test]
fn a_copy_keeps_its_distance_from_left_end_and_eave() {
    let job = alder_court();
    let copied = after(&job, copy_to_face(&job, A, NORTH));
    let (layout, copy) = (Layout::of(&copied), copied.blocks.last().unwrap());
    let from = |id, at: DVec2| at - layout.face(id).unwrap().1.bounds.min;
    assert!(from(NORTH, copy.at).distance(from(SOUTH, job.blocks[0].at)) < 1e-9);
    assert_eq!((copy.face, copied.blocks.len(), copy.name.as_str()), (NORTH, 2, "B"));
    assert_eq!(copy_to_face(&job, A, SOUTH), None);
}

#[test]
fn splitting_moves_no_module_and_joining_reverts_it() {
    for job in [alder_court(), uneven()] {
        let whole = in_plan(&job, &[A], |p| p);
        let cuts = [Cut::AboveRows(1), Cut::AboveRows(2), Cut::RightOfColumns(1), Cut::RightOfColumns(3)];
        for cut in cuts {
            let apart = after(&job, split(&job, A, cut));
            let part = BlockId(job.next_id);
            let mut both = in_plan(&apart, &[A, part], |p| p);
            both.sort_by_key(|m| ((m[0].y * 1e6).round() as i64, (m[0].x * 1e6).round() as i64));
            let mut expected = whole.clone();
            expected.sort_by_key(|m| ((m[0].y * 1e6).round() as i64, (m[0].x * 1e6).round() as i64));
            same(&both, &expected);
            if job.blocks[0].shifts.is_empty() || matches!(cut, Cut::AboveRows(_)) {
                for (keeps, goes) in [(A, part), (part, A)] {
                    let joined = after(&apart, join(&apart, keeps, goes));
                    assert_eq!(joined.blocks.len(), 1, "{cut:?}");
                    let mut got = in_plan(&joined, &[keeps], |p| p);
                    got.sort_by_key(|m| ((m[0].y * 1e6).round() as i64, (m[0].x * 1e6).round() as i64));
                    same(&got, &expected);
                }
            }
        }
        for nothing in [Cut::AboveRows(0), Cut::AboveRows(3), Cut::RightOfColumns(0), Cut::RightOfColumns(9)]
        {
            assert_eq!(split(&job, A, nothing), None);
        }
    }
}

#[test]
fn blocks_that_do_not_touch_or_overlap_are_not_joined() {
    let job = alder_court();
    let apart = after(&job, split(&job, A, Cut::RightOfColumns(2)));
    let part = BlockId(job.next_id);
    for by in [dvec2(0.02, 0.0), dvec2(-0.3, 0.0), dvec2(0.0, 0.1), dvec2(5.0, 0.0)] {
        let mut moved = apart.clone();
        moved.blocks[1].at += by;
        assert_eq!(join(&moved, A, part), None, "{by}");
    }
    let mut wider = apart.clone();
    wider.blocks[1].reveal = Length::from_mm(6.0);
    assert_eq!(join(&wider, A, part), None);
    assert_eq!(join(&apart, A, A), None);
    // Slightly off the grid is still flush.
    let mut hair = apart;
    hair.blocks[1].at.x += 2e-4;
    let joined = after(&hair, join(&hair, A, part));
    assert_eq!((joined.blocks[0].columns, joined.blocks[0].shifts.len()), (4, 0));
}

#[test]
fn ends_are_aligned() {
    let mut job = alder_court();
    let block = job.blocks[0].clone();
    job.blocks.push(Block { id: BlockId(20), at: dvec2(0.3, 4.0), columns: 2, rows: 1, ..block });
    for (to, of) in [
        (Align::Left, (|r: Rect| r.min.x) as fn(Rect) -> f64),
        (Align::Right, |r| r.max.x),
        (Align::Bottom, |r| r.min.y),
    ] {
        let aligned = after(&job, align(&job, BlockId(20), A, to));
        let at = |id| of(Layout::of(&aligned).block(id).unwrap().bounds.unwrap());
        assert!((at(BlockId(20)) - at(A)).abs() < 1e-9, "{to:?}");
        assert_eq!(aligned.blocks[0], job.blocks[0]);
    }
    job.blocks[1].face = NORTH;
    assert_eq!(align(&job, BlockId(20), A, Align::Left), None);
}

fn troubles(job: &Resolved) -> usize {
    let findings = chalkcourse_rules::check(job, &Layout::of(job));
    findings.iter().filter(|f| f.severity != Severity::Note && f.place.block == Some(A)).count()
}

fn vent(x: f64, y: f64) -> chalkcourse_job::Penetration {
    chalkcourse_job::Penetration {
        id: chalkcourse_job::PenetrationId(30),
        name: "Vent".into(),
        kind: chalkcourse_job::PenetrationKind::Vent,
        at: dvec2(x, y),
        shape: Shape::Rectangle { along: Length::from_metres(0.4), up: Length::from_metres(0.4) },
        clearance: None,
    }
}

/// No position of a raster that is clearly nearer is clear: the shortest move, by brute force.
#[test]
fn room_is_made_by_the_shortest_move() {
    for (x, y, has_room) in
        [(3.5, 2.0, true), (10.8, 1.2, true), (9.0, 0.7, true), (7.0, 3.5, false), (5.0, 2.0, true)]
    {
        let mut job = alder_court();
        job.penetrations.push(vent(x, y));
        assert!(troubles(&job) > 0, "{x}, {y}");
        let nearer = match slide_clear(&job, A, &|| false) {
            Some(slide) => {
                let clear = apply(&job, &slide.edit).unwrap();
                assert_eq!(troubles(&clear), 0, "{x}, {y}");
                assert!((clear.blocks[0].at - job.blocks[0].at).distance(slide.by) < 1e-9);
                // Round clearances are approximated with an error below a millimetre; a sequence of moves has more
                // slack.
                slide.by.length() - if slide.proved { 0.001 } else { 0.02 }
            }
            None => f64::INFINITY,
        };
        assert_eq!(nearer.is_finite(), has_room, "{x}, {y}");
        let raster =
            (-45..=145).flat_map(|u| (-8..=20).map(move |v| dvec2(f64::from(u), f64::from(v)) * 0.1));
        for step in raster.filter(|step| step.length() < nearer) {
            let mut tried = job.clone();
            tried.blocks[0].at += step;
            assert!(troubles(&tried) > 0, "{step} clears a vent at {x}, {y}, nearer than {nearer}");
        }
    }
}

#[test]
fn a_block_that_is_clear_or_has_no_room_stays() {
    let job = alder_court();
    assert_eq!(make_room(&job, A), None);
    assert_eq!(make_room(&job, BlockId(99)), None);
    let mut large = job.clone();
    large.blocks[0] = large.blocks[0].with_size(9, 20);
    assert_eq!(make_room(&large, A), None, "a block larger than its face");
    let mut metric = job;
    metric.units = Units::Metric;
    metric.blocks[0].at.x = -0.5;
    let moved = after(&metric, make_room(&metric, A));
    assert_eq!(troubles(&moved), 0);
    assert_eq!(moved.blocks[0].at.y, metric.blocks[0].at.y);
}

#[test]
fn of_two_blocks_the_requested_one_moves() {
    let mut job = alder_court();
    let at = job.blocks[0].at + dvec2(6.8, 0.0);
    let block = job.blocks[0].clone();
    job.blocks.push(Block { id: BlockId(20), at, name: "B".into(), columns: 1, ..block });
    for id in [A, BlockId(20)] {
        let moved = after(&job, make_room(&job, id));
        for (old, new) in job.blocks.iter().zip(&moved.blocks) {
            assert_eq!(old.at == new.at, old.id != id);
            assert_eq!(old.locked, new.locked);
        }
    }
}

#[test]
fn distributing_makes_equal_gaps() {
    let mut job = alder_court();
    let block = Block { columns: 1, rows: 1, ..job.blocks[0].clone() };
    // 1.722 m each from 1, 3 and 9 m: 10.722 − 1 − 3 × 1.722 = 4.556 m for two gaps.
    job.blocks = [1.0, 3.0, 9.0]
        .iter()
        .zip(20..)
        .map(|(u, id)| Block { id: BlockId(id), at: dvec2(*u, 1.0), name: id.to_string(), ..block.clone() })
        .collect();
    let ids = [BlockId(22), BlockId(20), BlockId(21)];
    let spread = after(&job, distribute(&job, &ids, Spread::Along));
    assert!(
        (spread.blocks[1].at.x - (1.0 + 1.722 + 4.556 / 2.0)).abs() < 1e-9 && spread.blocks[1].at.y == 1.0
    );
    assert_eq!((&spread.blocks[0], &spread.blocks[2]), (&job.blocks[0], &job.blocks[2]));
    assert_eq!(distribute(&spread, &ids, Spread::Along), None, "they are spread already");
    assert_eq!(distribute(&job, &ids[..2], Spread::Along), None, "two have nothing between them");
    assert_eq!(distribute(&job, &ids, Spread::Up), None, "beside each other they have no room up the slope");
    job.blocks[1].locked = true;
    assert_eq!(distribute(&job, &ids, Spread::Along), None);
}

#[test]
fn a_slide_is_proved_shortest_if_all_obstacles_have_shapes() {
    let mut job = alder_court();
    job.penetrations.push(vent(5.0, 2.5));
    assert!(troubles(&job) > 0);
    let slide = slide_clear(&job, A, &|| false).unwrap();
    assert!(slide.proved && slide.by.length() > 0.0);
    assert_eq!(troubles(&apply(&job, &slide.edit).unwrap()), 0);
    assert_eq!(slide_clear(&job, A, &|| true), None, "stopped at once");
}

/// A rake requires 12 in; the block is 8 in away and that is waived. No shape says how much closer it may go.
#[test]
fn with_a_waived_limit_positions_are_searched_step_by_step() {
    let mut job = alder_court();
    job.blocks[0].at.x = Length::from_inches(8.0).metres();
    let of = |job: &Resolved| chalkcourse_rules::check(job, &Layout::of(job));
    let short = of(&job).into_iter().find(|finding| finding.rule == "setback").unwrap();
    job.waivers.push(short.waiver("agreed".into(), "R. Fenn".into(), "2026-03-01".into()));
    job.penetrations.push(vent(5.0, 2.5));
    let slide = slide_clear(&job, A, &|| false).unwrap();
    assert!(!slide.proved && slide.by.length() > 0.0);
    let open = |job: &Resolved| {
        let weighs = |f: &chalkcourse_rules::Finding| f.severity != Severity::Note && f.waived.is_none();
        of(job).iter().filter(|f| weighs(f) && f.place.block == Some(A)).count()
    };
    assert!(open(&job) > 0);
    assert_eq!(open(&apply(&job, &slide.edit).unwrap()), 0);
}

#[test]
fn block_names_continue_after_z() {
    let mut job = alder_court();
    let block = job.blocks[0].clone();
    job.blocks = ('A'..='Z').map(|c| Block { name: c.to_string(), ..block.clone() }).collect();
    assert_eq!(new_block_name(&job), "A1");
    job.blocks.remove(2);
    assert_eq!(new_block_name(&job), "C");
}
