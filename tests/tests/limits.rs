//! All users of a limit agree: where the check finds nothing the fill may lay, the drawn outlines show where it may not, a snap
//! border is where a module just clears; and what is switched off is gone from all of them.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod limits_by_hand;
mod random_jobs;

use chalkcourse_geometry::fit::{Allowed, Part, Tile, TilePlace, stands};
use chalkcourse_geometry::{Convex, DVec2, EdgeKind, Length, Polygon, Rect, RoofFace, dvec2};
use chalkcourse_job::{
    Block, BlockId, FaceId, Limit, Orientation, PenetrationKind, RailLimits, Resolved, builtin_rule_book,
};
use chalkcourse_layout::{Layout, outline_on_deck};
use chalkcourse_limits::{
    Against, ConstrainedPart, KeepOut, KeepOutContext, LIMITS, Shape, TOLERANCE, Zones, keep_outs, limit,
    off, room,
};
use chalkcourse_rules::{Checker, RULES, check};
use chalkcourse_tests::{houses, one_module};
use limits_by_hand::Tried;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use random_jobs::jobs;
use std::collections::BTreeSet;
use std::sync::Arc;

/// The single-module block to try at various positions.
const TRIED: BlockId = BlockId(999);
/// Number of random jobs, each with a book and a kit, of which one face is tried.
const CASES: u32 = 1_500;
/// Number of houses, all faces of which are tried, each with a book and a kit.
const HOUSES: u64 = 150;

/// Requirements of book and kit, in inches, and which limits are off.
#[derive(Clone, Debug)]
struct Changes {
    setbacks: Vec<Option<f64>>,
    clearances: Vec<Option<f64>>,
    above: Vec<Option<f64>>,
    rail: Option<f64>,
    base: f64,
    side: f64,
    apart: f64,
    courses: u32,
    beside_hip: Option<f64>,
    hip_clear: Option<f64>,
    sprinklers: bool,
    off: BTreeSet<usize>,
}

fn changes() -> impl Strategy<Value = Changes> {
    let inches = || proptest::option::of(prop_oneof![Just(0.0), 0.0..40.0f64]);
    let many = move |n| proptest::collection::vec(inches(), n);
    let kit = (inches(), 0.0..6.0f64, 0.0..9.0f64, prop_oneof![Just(0.0), 0.0..20.0f64], 0..3u32);
    let off = prop_oneof![Just(BTreeSet::new()), proptest::collection::btree_set(0..LIMITS.len(), 0..3)];
    (many(8), many(9), many(9), kit, (inches(), inches(), any::<bool>()), off).prop_map(
        |(setbacks, clearances, above, kit, fire, off)| Changes {
            setbacks,
            clearances,
            above,
            rail: kit.0,
            base: kit.1,
            side: kit.2,
            apart: kit.3,
            courses: kit.4,
            beside_hip: fire.0,
            hip_clear: fire.1,
            sprinklers: fire.2,
            off,
        },
    )
}

impl Changes {
    fn make(&self, job: &mut Resolved) {
        let inches = Length::from_inches;
        let book = Arc::make_mut(&mut job.rule_book);
        let word = builtin_rule_book().setbacks.values().next().unwrap().clone();
        let limit = |value: f64| Limit { value: inches(value), ..word.clone() };
        let kinds = || PenetrationKind::ALL.into_iter();
        book.setbacks = EdgeKind::ALL
            .into_iter()
            .zip(&self.setbacks)
            .filter_map(|(k, v)| Some((k, limit((*v)?))))
            .collect();
        book.clearances =
            kinds().zip(&self.clearances).filter_map(|(k, v)| Some((k, limit((*v)?)))).collect();
        book.clearances_above =
            kinds().zip(&self.above).filter_map(|(k, v)| Some((k, limit((*v)?)))).collect();
        book.clearances_below =
            kinds().zip(self.above.iter().rev()).filter_map(|(k, v)| Some((k, limit((*v)?)))).collect();
        book.courses_to_ridge.value = self.courses;
        // Some houses have a book that does not cover fire access.
        if let Some(fire) = &mut book.fire_access {
            fire.hip_or_valley = self.beside_hip.map(limit);
            fire.below_escape = Some(limit(36.0));
        }
        if let Some(roofing) = &mut book.roofing {
            (roofing.hip_clear, roofing.valley_clear) =
                (self.hip_clear.map(limit), self.hip_clear.map(limit));
        }
        book.off = self.off.iter().map(|&at| LIMITS[at].code.to_owned()).collect();
        let kit = Arc::make_mut(&mut job.kit);
        let longest = Length::from_metres(90.0);
        kit.base_rail = self.rail.map(|least| RailLimits { least_above_eave: inches(least), longest });
        (kit.flashing.base, kit.flashing.side) = (inches(self.base), inches(self.side));
        kit.clearances.between_blocks = inches(self.apart);
        job.site.building.sprinklers = self.sprinklers;
        // What a self-intersecting outline covers is ambiguous.
        job.penetrations.retain(|p| outline_on_deck(&p.shape).defects(1e-3).is_empty());
    }
}

/// A face on which to try a module at various positions.
struct Trial {
    job: Resolved,
    checker: Checker,
    index: usize,
    face: RoofFace,
    keep_outs: Vec<KeepOut>,
    allowed: Allowed,
    zones: Zones,
    size: DVec2,
    /// Whether `off-face` and `overlap` are on. Without them the fill is still bounded by its face and existing blocks, the check
    /// is not.
    bounded: bool,
}

impl Trial {
    /// On a face of a job, by index, optionally with a strip reserved as a pathway.
    fn of(mut job: Resolved, index: usize, kept: Option<Rect>) -> Option<Self> {
        let id = job.faces.get(index)?.id;
        let tried = tried(id, &job);
        let size = tried.module_size(&job.kit);
        job.blocks.push(tried);
        let layout = Layout::of(&job);
        let face = layout.roof.faces.get(index).filter(|on| on.sound)?.clone();
        let mut given = KeepOutContext::as_laid(&job, &layout);
        given.standing.retain(|id| *id != TRIED);
        given.kept = kept.iter().map(Convex::rect).collect();
        let keep_outs = keep_outs(&job, &layout, index, &given);
        let mut number = 0..;
        let allowed = room(&face, &keep_outs, &mut |_| number.next().unwrap());
        let zones = Zones::of(&face, &keep_outs);
        let bounded = ["off-face", "overlap"].iter().all(|code| off(&job, code).is_none());
        // Rules that are not limits on a single module take long and are irrelevant here. Pathways are reserved by the fill.
        let others = RULES.iter().map(|rule| rule.code).filter(|code| limit(code).is_none());
        let others: Vec<String> = others.chain(["fire-plane-path"]).map(str::to_owned).collect();
        Arc::make_mut(&mut job.rule_book).off.extend(others);
        Some(Self { job, checker: Checker::default(), index, face, keep_outs, allowed, zones, size, bounded })
    }

    fn module(&self, at: DVec2) -> Part {
        Part { rect: Rect::at(at, self.size), lowest: true }
    }

    /// The rules that find something about the module at a position, and the shortfall there by hand.
    fn found(&mut self, at: DVec2) -> (BTreeSet<&'static str>, Vec<(&'static str, f64)>) {
        let tried = self.job.blocks.last_mut().unwrap();
        tried.at = at;
        let layout = Layout::of(&self.job);
        let findings = self.checker.check(&self.job, &layout);
        let about_it = findings.iter().filter(|finding| {
            let key = finding.key.to_string();
            key.split('/').any(|step| step == "block-999") && !key.ends_with("/length")
        });
        let module = Rect::at(at, self.size);
        let by_hand = Tried {
            job: &self.job,
            layout: &layout,
            index: self.index,
            face: &self.face,
            module,
            own: TRIED,
        };
        (about_it.map(|finding| finding.rule).collect(), by_hand.missing())
    }

    fn may_lie(&self, at: DVec2) -> bool {
        let tile = Tile { size: self.size, gap: DVec2::ZERO };
        stands(&self.allowed, &tile, &[TilePlace { at, lowest: true }]).unwrap()[0]
    }

    /// Whether any of some keep-outs stops the module, grown on all sides by `wider`.
    fn stopped(&self, at: DVec2, wider: f64, of: impl Fn(&KeepOut) -> bool) -> bool {
        let module = self.module(at);
        self.keep_outs.iter().filter(|keep_out| of(keep_out)).any(|keep_out| match keep_out.shape {
            Shape::Pieces(_) => keep_out.distance(&module) < keep_out.reach + wider,
            // Past a border counts from twice the tolerance on.
            Shape::Outside(_) => {
                keep_out.distance(&Part { rect: module.rect.grown(wider + TOLERANCE), ..module }) < 0.0
            }
        })
    }

    /// What the module is too near.
    fn stop(&self, at: DVec2) -> Vec<(&'static str, Against)> {
        let module = self.module(at);
        let stop = self.keep_outs.iter().filter(|keep_out| !keep_out.clears(&module));
        stop.map(|keep_out| (keep_out.rule, keep_out.against)).collect()
    }

    /// Whether an outline is drawn where the module is, or the rail below it.
    fn drawn_on(&self, at: DVec2) -> bool {
        let held = |keep_out: &KeepOut| {
            let rect = self.module(at).rect;
            match keep_out.held {
                ConstrainedPart::Module => rect,
                ConstrainedPart::Rail { depth } => Rect {
                    min: dvec2(rect.min.x, rect.min.y - depth.max(1e-8)),
                    max: dvec2(rect.max.x, rect.min.y),
                },
            }
        };
        let on = |shape: &Polygon, rect: &Rect| {
            Convex::around(shape.outer.iter().copied()).is_some_and(|shape| shape.clearance(rect) < -2e-8)
        };
        self.keep_outs.iter().any(|k| k.outlines().iter().any(|shape| on(shape, &held(k))))
    }

    /// Whether a module shrunk on all sides by `smaller` is where the drawn zones leave room: entirely in the free zone, and its
    /// lower edge outside the not-for-the-lowest-row zone.
    fn drawn_free(&self, at: DVec2, smaller: f64) -> bool {
        let rect = self.module(at).rect.grown(-smaller);
        let edge = Rect { min: rect.min, max: dvec2(rect.max.x, rect.min.y) };
        let face = [self.face.frame.clone()];
        let free = if self.zones.free.is_empty() { &face[..] } else { &self.zones.free };
        let beside = |shape: &Polygon| {
            !shape.contains(edge.centre()) && shape.sides().all(|(_, _, a, b)| edge.clip(a, b).is_none())
        };
        free.iter().any(|shape| rect.overhang(shape, 1e-9) == 0.0) && self.zones.not_lowest.iter().all(beside)
    }

    /// Positions just inside and outside the borders of keep-outs, right of `from` and above it; about `some` of them.
    fn places(&self, from: DVec2, some: usize) -> Vec<DVec2> {
        let mut places = Vec::new();
        for way in [DVec2::X, DVec2::Y] {
            for keep_out in &self.keep_outs {
                for (low, high) in keep_out.too_near_along(&[self.module(from)], way) {
                    let hairs = [-1e-3, -3e-4, -1.5e-4, -5e-5, 0.0, 5e-5, 1.5e-4, 3e-4, 1e-3];
                    places.extend(
                        [low, high].into_iter().flat_map(|end| hairs.map(|hair| from + way * (end + hair))),
                    );
                }
            }
        }
        // Trying all would take long; a step coprime to the number of offsets covers all kinds.
        let step = (places.len() / some).max(1);
        let step = if step.is_multiple_of(3) { step + 1 } else { step };
        places.into_iter().step_by(step).chain([from]).collect()
    }

    /// Asserts that check, fill, outlines and zones agree on a position.
    fn agrees(&mut self, at: DVec2) -> Result<(), TestCaseError> {
        let (all, checked) = (|_: &KeepOut| true, |it: &KeepOut| it.against != Against::Pathway);
        let hair = 1e-6;
        let lies = self.may_lie(at);
        let stopped = |wider: f64| self.stopped(at, wider, all);
        if self.bounded {
            prop_assert!(lies || stopped(TOLERANCE + hair), "the fill may not lie at {at}");
        }
        prop_assert!(!lies || !stopped(-hair), "the fill lies too near at {at}");

        let outlined = self.drawn_on(at);
        prop_assert!(!(lies && outlined), "an outline is drawn where the fill lies, {at}");
        let pieces = |it: &KeepOut| matches!(it.shape, Shape::Pieces(_));
        prop_assert!(outlined || !self.stopped(at, -hair, pieces), "no outline is drawn at {at}");

        // The zones are clipped to the border of the face, whether it is a limit or not.
        let inside = self.module(at).rect.grown(TOLERANCE).overhang(&self.face.frame, 1e-9) == 0.0;
        let free = inside && !stopped(TOLERANCE + 1e-5);
        prop_assert!(!free || self.drawn_free(at, 1e-5), "a zone is drawn where nothing stops it, {at}");
        let zoned = !self.drawn_free(at, 2.0 * TOLERANCE);
        prop_assert!(
            zoned || !stopped(-4.0 * TOLERANCE),
            "no zone is drawn at {at}, where something stops it"
        );

        if self.bounded {
            let (codes, by_hand) = self.found(at);
            for &(code, missing) in &by_hand {
                // Overlapping blocks are reported once.
                let told = codes.contains(code) || code == "between-blocks" && codes.contains("overlap");
                let enough = missing <= 3.0 * TOLERANCE;
                prop_assert!(told || enough, "{code}: {missing} is missing at {at}, and nothing is found");
            }
            for code in &codes {
                let most = by_hand.iter().filter(|(by, _)| by == code).map(|(_, missing)| *missing);
                let most = most.fold(f64::NEG_INFINITY, f64::max);
                prop_assert!(
                    most > TOLERANCE / 2.0,
                    "{code} is found at {at}, and by hand {most} is missing"
                );
            }
            let found = !codes.is_empty();
            let stopped = |wider: f64| self.stopped(at, wider, checked);
            prop_assert!(!(lies && found), "the fill may lie at {at}, where the check finds something");
            prop_assert!(!found || stopped(-TOLERANCE + hair), "found at {at}, where nothing stops it");
            prop_assert!(
                found || !stopped(-2.0 * TOLERANCE - hair),
                "nothing is found at {at} for {:?}",
                self.stop(at)
            );
        }
        Ok(())
    }
}

/// A reserved pathway: a strip up the slope at a position along a face.
fn kept(along: Option<f64>, bounds: Rect) -> Option<Rect> {
    let from = dvec2(bounds.min.x + bounds.size().x * along?, bounds.min.y - 1.0);
    Some(Rect::at(from, dvec2(36.0 * 0.0254, bounds.size().y + 2.0)))
}

/// Tries positions on a face; returns whether there was one to try.
fn try_face(
    job: &Resolved,
    face: usize,
    path: Option<f64>,
    spot: (f64, f64),
    places: usize,
) -> Result<bool, TestCaseError> {
    let Some(bounds) = Layout::of(job).roof.faces.get(face).map(|face| face.bounds) else { return Ok(false) };
    let Some(mut trial) = Trial::of(job.clone(), face, kept(path, bounds)) else { return Ok(false) };
    let from = bounds.min + (bounds.size() - trial.size).max(DVec2::ZERO) * dvec2(spot.0, spot.1);
    for at in trial.places(from, places) {
        trial.agrees(at)?;
    }
    Ok(true)
}

/// Values of a strategy, one per case, the same on every run.
fn given<T: std::fmt::Debug>(strategy: impl Strategy<Value = T>, cases: usize) -> impl Iterator<Item = T> {
    let mut runner = TestRunner::deterministic();
    (0..cases).map(move |_| strategy.new_tree(&mut runner).unwrap().current())
}

/// Hips, valleys, dormers and awkward faces: all faces of generated houses, with modules on every face so that limits at hips
/// with modules beyond apply, each house with books and kits of its own.
#[test]
fn check_fill_outlines_and_zones_are_one_region_on_houses() {
    let tried = (changes(), proptest::option::of(0.0..1.0f64), (0.0..1.0f64, 0.0..1.0f64));
    let mut tried = given(tried, 10_000);
    let (mut faces, mut asked) = (0, BTreeSet::new());
    for seed in 1..=HOUSES {
        let house = match seed % 3 {
            0 => houses::usual(seed),
            1 => houses::odd(seed),
            _ => houses::awkward(seed),
        };
        let covered = with_modules(house.job);
        for face in 0..covered.faces.len() {
            let (changes, path, spot) = tried.next().unwrap();
            let mut job = covered.clone();
            changes.make(&mut job);
            match try_face(&job, face, path, spot, 8) {
                Ok(true) => faces += 1,
                Ok(false) => {}
                Err(wrong) => panic!("house {seed}, face {face}: {wrong}\n{changes:?}, pathway {path:?}"),
            }
            let layout = Layout::of(&job);
            let given = KeepOutContext {
                kept: vec![Convex::rect(&Rect::at(DVec2::ZERO, DVec2::ONE))],
                ..KeepOutContext::as_laid(&job, &layout)
            };
            asked.extend(keep_outs(&job, &layout, face, &given).into_iter().map(|keep_out| keep_out.rule));
        }
    }
    assert!(faces >= 3 * HOUSES as usize, "{faces} faces");
    let all: BTreeSet<&str> = LIMITS.iter().map(|limit| limit.code).collect();
    assert_eq!(asked, all, "each limit was there to be told from the others");
}

/// A module in the middle of each face, and one penetration turned into an escape window.
fn with_modules(mut job: Resolved) -> Resolved {
    if let Some(first) = job.penetrations.first_mut() {
        first.kind = PenetrationKind::EscapeWindow;
    }
    let layout = Layout::of(&job);
    for (number, (face, placed)) in (500..).zip(layout.roof.faces.iter().zip(&layout.faces)) {
        let mut block = tried(placed.id, &job);
        (block.id, block.at) = (BlockId(number), face.bounds.centre());
        job.blocks.push(block);
    }
    job
}

/// The module to try.
fn tried(face: FaceId, job: &Resolved) -> Block {
    Block {
        id: TRIED,
        name: "tried".into(),
        ..one_module(job, face, Orientation::default(), dvec2(1.0, 1.0))
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(CASES) })]

    #[test]
    fn check_fill_outlines_and_zones_are_one_region(
        job in jobs(), changes in changes(), face in 0..2usize, spot in (0.0..1.0f64, 0.0..1.0f64),
        path in proptest::option::of(0.0..1.0f64),
    ) {
        let mut job = job;
        changes.make(&mut job);
        try_face(&job, face, path, spot, 10)?;
    }

    /// Both ends of the interval where something is too near are snap positions: there it just clears.
    #[test]
    fn a_module_just_clears_at_snap_borders(
        job in jobs(), changes in changes(), face in 0..2usize, (u, v) in (0.0..1.0f64, 0.0..1.0f64),
    ) {
        let mut job = job;
        changes.make(&mut job);
        let Some(trial) = Trial::of(job, face, None) else { return Ok(()) };
        let bounds = trial.face.bounds;
        let from = bounds.min + bounds.size() * dvec2(u, v);
        for keep_out in &trial.keep_outs {
            for way in [DVec2::X, DVec2::Y] {
                for end in keep_out.too_near_along(&[trial.module(from)], way).into_iter().flat_map(|(a, b)| [a, b]) {
                    let there = trial.module(from + way * end);
                    // From a border a module may move outwards as well as inwards.
                    let outside = matches!(keep_out.shape, Shape::Outside(_));
                    prop_assert!(outside || keep_out.clears(&there), "{keep_out:?} at {there:?}");
                    if matches!(keep_out.shape, Shape::Pieces(_)) {
                        let off = keep_out.distance(&there) - keep_out.reach;
                        prop_assert!(off.abs() < 1e-5, "{off} off {keep_out:?}");
                    }
                }
            }
            for (a, b) in keep_out.borders(0.02) {
                let point = |p: DVec2| Part { rect: Rect { min: p, max: p }, lowest: true };
                if matches!(keep_out.shape, Shape::Pieces(_)) && keep_out.held == ConstrainedPart::Module && a != b {
                    let off = keep_out.distance(&point(a)) - keep_out.reach;
                    // Where pieces overlap, the border of one is inside another.
                    prop_assert!(off < 1e-9, "{off} off {keep_out:?}");
                }
            }
        }
    }

    #[test]
    fn a_limit_that_is_off_is_off_everywhere(job in jobs(), changes in changes(), face in 0..2usize) {
        let mut job = job;
        changes.make(&mut job);
        let report = chalkcourse_telling::checked(&job);
        for limit in LIMITS {
            let line = report.iter().find(|line| line.code == limit.code).unwrap();
            prop_assert_eq!(line.on, off(&job, limit.code).is_none(), "{} is off for one and on for another", limit.code);
        }
        let layout = Layout::of(&job);
        let mut given = KeepOutContext::as_laid(&job, &layout);
        given.kept = vec![Convex::rect(&Rect::at(dvec2(1.0, 0.0), dvec2(0.9, 6.0)))];
        for limit in LIMITS {
            let mut without = job.clone();
            Arc::make_mut(&mut without.rule_book).off.insert(limit.code.to_owned());
            let before = keep_outs(&job, &layout, face, &given);
            let after = keep_outs(&without, &layout, face, &given);
            let others: Vec<KeepOut> = before.into_iter().filter(|keep_out| keep_out.rule != limit.code).collect();
            prop_assert_eq!(after, others, "{} is switched off", limit.code);
            let found = check(&without, &layout);
            prop_assert!(found.iter().all(|finding| finding.rule != limit.code));
        }
    }
}

/// The demo job's own limits, by what they are against: no ambiguous ones.
#[test]
fn a_side_a_pipe_and_a_block_are_distinguished() {
    let job =
        chalkcourse_tests::samples::all().into_iter().map(|(_, job)| job).find(|job| job.blocks.len() == 1);
    let job = job.unwrap();
    let layout = Layout::of(&job);
    let given = KeepOutContext::as_laid(&job, &layout);
    let all: Vec<KeepOut> =
        (0..layout.roof.faces.len()).flat_map(|face| keep_outs(&job, &layout, face, &given)).collect();
    let some = |is: fn(&Against) -> bool| all.iter().any(|keep_out| is(&keep_out.against));
    assert!(some(|a| matches!(a, Against::Side { .. })) && some(|a| matches!(a, Against::Border)));
    assert!(some(|a| matches!(a, Against::Block(_))) && some(|a| matches!(a, Against::Penetration(_))));
}
