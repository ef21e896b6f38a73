//! One limit is one thing for all who read it: where the check finds nothing the fill may lay, what the outlines draw is
//! where it may not, a border to snap to is where a module just clears; and what is switched off is gone from all of them.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod random_jobs;

use chalkcourse_geometry::fit::{Allowed, Part, Place, Tile, stands};
use chalkcourse_geometry::{Convex, DVec2, EdgeKind, Length, Polygon, Rect, dvec2};
use chalkcourse_job::{Block, BlockId, Job, Limit, PenetrationKind, RailLimits};
use chalkcourse_layout::{Layout, outline_on_deck};
use chalkcourse_limits::{Against, Given, Held, KeepOut, LIMITS, Shape, TOLERANCE, keep_outs, off, room};
use chalkcourse_rules::check;
use proptest::prelude::*;
use random_jobs::jobs;
use std::collections::BTreeSet;
use std::sync::Arc;

/// The block of one module that is tried at places.
const TRIED: BlockId = BlockId(999);

/// What a book and a kit ask, in inches, and which limits are off.
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
    fn make(&self, job: &mut Job) {
        let inches = Length::from_inches;
        let book = Arc::make_mut(&mut job.rule_book);
        let word = book.setbacks.values().next().unwrap().clone();
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
        let fire = book.fire_access.as_mut().unwrap();
        fire.hip_or_valley = self.beside_hip.map(limit);
        fire.below_escape = Some(limit(36.0));
        let roofing = book.roofing.as_mut().unwrap();
        (roofing.hip_clear, roofing.valley_clear) = (self.hip_clear.map(limit), self.hip_clear.map(limit));
        book.off = self.off.iter().map(|&at| LIMITS[at].code.to_owned()).collect();
        let kit = Arc::make_mut(&mut job.kit);
        let longest = Length::from_metres(90.0);
        kit.base_rail = self.rail.map(|least| RailLimits { least_above_eave: inches(least), longest });
        (kit.flashing.base, kit.flashing.side) = (inches(self.base), inches(self.side));
        kit.clearances.between_blocks = inches(self.apart);
        job.site.building.sprinklers = self.sprinklers;
        // What an outline that folds over itself covers is anyone's guess.
        job.penetrations.retain(|p| outline_on_deck(&p.shape).defects(1e-3).is_empty());
    }
}

/// A face on which one module is tried at places.
struct Trial {
    job: Job,
    face: usize,
    keep_outs: Vec<KeepOut>,
    allowed: Allowed,
    size: DVec2,
}

impl Trial {
    fn of(mut job: Job, face: usize) -> Option<Self> {
        let id = job.faces.get(face)?.id;
        let tried = Block {
            id: TRIED,
            name: "tried".into(),
            face: id,
            at: dvec2(1.0, 1.0),
            rows: 1,
            columns: 1,
            orientation: Default::default(),
            reveal: job.kit.reveal.usual,
            shifts: Vec::new(),
            off: BTreeSet::new(),
            locked: false,
        };
        let size = tried.module_size(&job.kit);
        job.blocks.push(tried);
        let layout = Layout::of(&job);
        let on = layout.roof.faces.get(face).filter(|on| on.sound)?;
        let mut given = Given::as_laid(&job, &layout);
        given.standing.retain(|id| *id != TRIED);
        let keep_outs = keep_outs(&job, &layout, face, &given);
        let mut number = 0..;
        let allowed = room(on, &keep_outs, &mut |_| number.next().unwrap());
        Some(Self { job, face, keep_outs, allowed, size })
    }

    fn module(&self, at: DVec2) -> Part {
        Part { rect: Rect::at(at, self.size), lowest: true }
    }

    /// Whether the rules find something about the module at a place that one of the limits is about.
    fn found(&mut self, at: DVec2) -> bool {
        let tried = self.job.blocks.last_mut().unwrap();
        tried.at = at;
        let findings = check(&self.job, &Layout::of(&self.job));
        findings.iter().any(|finding| {
            let limit =
                LIMITS.iter().any(|limit| limit.code == finding.rule) && finding.rule != "fire-plane-path";
            let key = finding.key.to_string();
            limit && key.split('/').any(|step| step == "block-999") && !key.ends_with("/length")
        })
    }

    fn may_lie(&self, at: DVec2) -> bool {
        let tile = Tile { size: self.size, gap: DVec2::ZERO };
        stands(&self.allowed, &tile, &[Place { at, lowest: true }]).unwrap()[0]
    }

    /// Whether a keep-out stops the module, when it is so much wider on all sides.
    fn stopped(&self, at: DVec2, wider: f64) -> bool {
        let module = self.module(at);
        self.keep_outs.iter().any(|keep_out| match keep_out.shape {
            Shape::Pieces(_) => keep_out.distance(&module) < keep_out.reach + wider,
            // Over a border is over it by twice the tolerance at least.
            Shape::Outside(_) => {
                keep_out.distance(&Part { rect: module.rect.grown(wider + TOLERANCE), ..module }) < 0.0
            }
        })
    }

    /// Whether the drawn outlines say that the module lies on something.
    fn drawn_on(&self, at: DVec2) -> bool {
        let held = |keep_out: &KeepOut| {
            let rect = self.module(at).rect;
            match keep_out.held {
                Held::Module => rect,
                Held::Rail { depth } => Rect {
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

    /// Places near the borders of keep-outs, from a place aside and a place up of it.
    fn places(&self, from: DVec2) -> Vec<DVec2> {
        let mut places = vec![from];
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
        places
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(60) })]

    #[test]
    fn check_fill_and_outlines_are_one_region(
        job in jobs(), changes in changes(), face in 0..2usize, spots in proptest::collection::vec((0.0..1.0f64, 0.0..1.0f64), 2),
    ) {
        let mut job = job;
        changes.make(&mut job);
        let Some(mut trial) = Trial::of(job, face) else { return Ok(()) };
        let layout = Layout::of(&trial.job);
        let bounds = layout.roof.faces[trial.face].bounds;
        let all_on = |codes: &[&str]| codes.iter().all(|code| off(&trial.job, code).is_none());
        // Without these the fill has bounds that the check has not: it fills a face, and not what is full already.
        let bounded = all_on(&["off-face", "overlap"]);
        for (u, v) in spots {
            let from = bounds.min + (bounds.size() - trial.size).max(DVec2::ZERO) * dvec2(u, v);
            let mut places = trial.places(from);
            // All of them would take long: each way along is a check of the whole job.
            let step = (places.len() / 60).max(1);
            places = places.into_iter().step_by(step).collect();
            for at in places {
                let lies = trial.may_lie(at);
                if bounded {
                    let found = trial.found(at);
                    prop_assert!(!(lies && found), "the fill may lie at {at}, where the check finds something");
                    prop_assert!(!found || trial.stopped(at, -TOLERANCE + 1e-6), "found at {at}, where nothing stops it");
                    prop_assert!(found || !trial.stopped(at, -2.0 * TOLERANCE - 1e-6), "nothing is found at {at}");
                }
                prop_assert!(lies || trial.stopped(at, TOLERANCE + 1e-6) || !bounded, "the fill may not lie at {at}");
                prop_assert!(!lies || !trial.stopped(at, -1e-6), "the fill lies too near at {at}");
                prop_assert!(!(lies && trial.drawn_on(at)), "an outline is drawn where the fill lies, {at}");
            }
        }
    }

    /// Both ends of the stretch in which something is too near are places to snap to: there it just clears.
    #[test]
    fn a_border_to_snap_to_is_where_a_module_just_clears(
        job in jobs(), changes in changes(), face in 0..2usize, (u, v) in (0.0..1.0f64, 0.0..1.0f64),
    ) {
        let mut job = job;
        changes.make(&mut job);
        let Some(trial) = Trial::of(job, face) else { return Ok(()) };
        let layout = Layout::of(&trial.job);
        let bounds = layout.roof.faces[trial.face].bounds;
        let from = bounds.min + bounds.size() * dvec2(u, v);
        for keep_out in &trial.keep_outs {
            for way in [DVec2::X, DVec2::Y] {
                for end in keep_out.too_near_along(&[trial.module(from)], way).into_iter().flat_map(|(a, b)| [a, b]) {
                    let there = trial.module(from + way * end);
                    // From a border a module may go out as well as in.
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
                if matches!(keep_out.shape, Shape::Pieces(_)) && keep_out.held == Held::Module && a != b {
                    let off = keep_out.distance(&point(a)) - keep_out.reach;
                    // Where pieces overlap, the border of one lies within another.
                    prop_assert!(off < 1e-9, "{off} off {keep_out:?}");
                }
            }
        }
    }

    #[test]
    fn what_is_off_is_gone_from_all(job in jobs(), changes in changes(), face in 0..2usize) {
        let mut job = job;
        changes.make(&mut job);
        let report = chalkcourse_telling::checked(&job);
        for limit in LIMITS {
            let line = report.iter().find(|line| line.code == limit.code).unwrap();
            prop_assert_eq!(line.on, off(&job, limit.code).is_none(), "{} is off for one and on for another", limit.code);
        }
        let layout = Layout::of(&job);
        let mut given = Given::as_laid(&job, &layout);
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

/// The demo job's own limits, by what they are against: none that a reader would have to guess.
#[test]
fn a_side_a_pipe_and_a_block_are_told_apart() {
    let job =
        chalkcourse_tests::samples::all().into_iter().map(|(_, job)| job).find(|job| job.blocks.len() == 1);
    let job = job.unwrap();
    let layout = Layout::of(&job);
    let given = Given::as_laid(&job, &layout);
    let all: Vec<KeepOut> =
        (0..layout.roof.faces.len()).flat_map(|face| keep_outs(&job, &layout, face, &given)).collect();
    let some = |is: fn(&Against) -> bool| all.iter().any(|keep_out| is(&keep_out.against));
    assert!(some(|a| matches!(a, Against::Side { .. })) && some(|a| matches!(a, Against::Border)));
    assert!(some(|a| matches!(a, Against::Block(_))) && some(|a| matches!(a, Against::Penetration(_))));
}
