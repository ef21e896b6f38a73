//! Placed labels overlap nothing, judged by intersection areas from the crate `geo`.
#![allow(clippy::unwrap_used, clippy::panic, missing_docs, reason = "a test may stop at the first surprise")]

use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_labels::{Anchor, Body, How, Label, Last, Obstacle, Over, Placed, Scene, Try, Weight, place};
use geo::{Area, BooleanOps, Euclidean, Intersects, Length, LineString, Polygon};
use proptest::prelude::*;

const BELOW: &[(i8, i8)] = &[(0, 1), (0, -1), (1, 0), (-1, 0)];
const CLIP: Rect = Rect { min: DVec2::ZERO, max: DVec2 { x: 800.0, y: 500.0 } };

fn shape(corners: &[DVec2]) -> Polygon {
    Polygon::new(corners.iter().map(|p| (p.x, p.y)).collect(), Vec::new())
}

fn common(a: &[DVec2], b: &[DVec2]) -> f64 {
    shape(a).intersection(&shape(b)).unsigned_area()
}

/// The length of a line inside a shape.
fn inside(corners: &[DVec2], a: DVec2, b: DVec2) -> f64 {
    let line = geo::MultiLineString::new(vec![LineString::from(vec![(a.x, a.y), (b.x, b.y)])]);
    Euclidean.length(&shape(corners).clip(&line, false))
}

fn look(x: f64, y: f64, how: How) -> Try {
    Try { size: dvec2(x, y), how }
}

fn label(rank: u8, anchor: Anchor, tries: Vec<Try>) -> Label {
    Label { rank, names: None, anchor, tries, over: Over::Nothing }
}

fn pipe(x: f64, y: f64) -> Rect {
    Rect { min: dvec2(x - 4.0, y - 4.0), max: dvec2(x + 4.0, y + 4.0) }
}

fn around(thing: Rect) -> Anchor {
    Anchor::Around { thing, gap: 3.0, sides: BELOW }
}

fn along(from: DVec2, to: DVec2, beside: &'static [f64]) -> Anchor {
    Anchor::Along { from, to, beside, gap: 4.0, turned: true, home: 0.5 }
}

fn scene(obstacles: Vec<Obstacle>, labels: Vec<Label>) -> Scene {
    Scene { clip: CLIP, obstacles, labels, clear: 1.0 }
}

/// Fails if anything overlaps.
fn clean(scene: &Scene, placed: &[Option<Placed>]) {
    let all: Vec<(usize, Placed)> =
        placed.iter().enumerate().filter_map(|(at, it)| Some((at, (*it)?))).collect();
    for (nth, (at, one)) in all.iter().enumerate() {
        for corner in one.corners() {
            assert!(CLIP.grown(1e-6).contains(corner), "{corner} is beyond the drawing");
        }
        for (_, other) in &all[nth + 1..] {
            assert!(common(&one.corners(), &other.corners()) < 1e-6, "{one:?} on {other:?}");
            if let (Some((a, b)), Some((c, d))) = (one.leader, other.leader) {
                let line = |a: DVec2, b: DVec2| geo::Line::new((a.x, a.y), (b.x, b.y));
                assert!(!line(a, b).intersects(&line(c, d)), "leaders cross: {one:?} {other:?}");
            }
        }
        for (_, other) in &all {
            if let Some((a, b)) = other.leader.filter(|_| one != other) {
                assert!(inside(&one.corners(), a, b) < 1e-6, "the leader of {other:?} runs over {one:?}");
            }
        }
        for obstacle in scene.obstacles.iter().filter(|it| it.weight >= Weight::Line) {
            if obstacle.of.is_some() && obstacle.of == scene.labels[*at].names {
                continue;
            }
            let on = match &obstacle.body {
                Body::Line(a, b, _) => inside(&one.corners(), *a, *b),
                Body::Rect(rect) => common(&one.corners(), &rect.corners()),
                Body::Convex(corners) => common(&one.corners(), corners),
            };
            assert!(on < 1e-6, "{one:?} on {obstacle:?}");
        }
    }
}

#[test]
fn labels_are_at_home_if_nothing_is_in_the_way() {
    // By hand: 40 wide and 10 high below a pipe that ends 4 below its centre, 3 away: the centre is 4 + 3 + 5 = 12 below.
    let labels = vec![
        label(0, around(pipe(100.0, 100.0)), vec![look(40.0, 10.0, How::Home)]),
        // To the left of a line that runs down: rotated a quarter turn, 4 + 5 beside it.
        label(0, along(dvec2(400.0, 100.0), dvec2(400.0, 300.0), &[1.0]), vec![look(60.0, 10.0, How::Home)]),
    ];
    let placed = place(&scene(Vec::new(), labels));
    assert_eq!(placed[0].unwrap().at, dvec2(100.0, 112.0));
    let turned = placed[1].unwrap();
    assert!((turned.at - dvec2(391.0, 200.0)).length() < 1e-9, "{turned:?}");
    assert!((turned.turn.abs() - std::f64::consts::FRAC_PI_2).abs() < 1e-9);
}

#[test]
fn labels_slide_then_shorten_then_get_leaders_then_drop() {
    let line = (dvec2(100.0, 250.0), dvec2(300.0, 250.0));
    let tries =
        vec![look(120.0, 10.0, How::Home), look(30.0, 10.0, How::Home), look(30.0, 10.0, How::Leader(60.0))];
    let with = |blocks: &[(f64, f64)]| {
        let obstacles = blocks.iter().map(|&(from, to)| Obstacle {
            body: Body::Rect(Rect { min: dvec2(from, 225.0), max: dvec2(to, 275.0) }),
            weight: Weight::Solid,
            of: None,
        });
        let it = label(0, along(line.0, line.1, &[-1.0]), tries.clone());
        let scene = scene(obstacles.collect(), vec![it]);
        let placed = place(&scene);
        clean(&scene, &placed);
        placed[0]
    };
    assert_eq!(with(&[]).unwrap().at, dvec2(200.0, 241.0));
    let slid = with(&[(90.0, 110.0)]).unwrap();
    assert!(slid.nth == 0 && slid.at.x > 170.0, "{slid:?}");
    let short = with(&[(180.0, 210.0)]).unwrap();
    assert_eq!((short.nth, short.leader), (1, None));
    let all = with(&[(90.0, 190.0), (210.0, 310.0)]).unwrap();
    assert!(all.nth == 2 && all.leader.is_some(), "{all:?}");
    let under = with(&[(0.0, 800.0)]).unwrap();
    assert!(under.leader.is_some(), "led out from under what is solid: {under:?}");
    let all = Obstacle { body: Body::Rect(CLIP), weight: Weight::Solid, of: None };
    assert!(
        place(&scene(vec![all], vec![label(0, along(line.0, line.1, &[-1.0]), tries.clone())]))[0].is_none()
    );
}

#[test]
fn a_lower_rank_gives_way_whatever_the_order() {
    let at = |rank| label(rank, around(pipe(400.0, 250.0)), vec![look(60.0, 20.0, How::Home)]);
    // Five labels around a pipe with four sides and two slides: those of rank 1 are placed, wherever they are in the list.
    let labels = vec![at(2), at(2), at(2), at(2), at(1), at(1)];
    let placed = place(&scene(Vec::new(), labels));
    assert!(placed[4].is_some() && placed[5].is_some());
    assert_eq!(placed[4].unwrap().at.x, 400.0, "the best place is for the first of the higher rank");
    assert!(placed[..4].iter().any(Option::is_none));
}

#[test]
fn one_label_moves_so_that_another_is_seen() {
    let free = label(0, around(pipe(400.0, 250.0)), vec![look(60.0, 20.0, How::Home)]);
    let below = Anchor::Within {
        rings: vec![Rect::at(dvec2(365.0, 254.0), dvec2(70.0, 26.0)).corners().to_vec()],
        home: dvec2(400.0, 267.0),
    };
    let bound = label(1, below, vec![look(60.0, 20.0, How::Home)]);
    let scene = scene(Vec::new(), vec![free, bound]);
    let placed = place(&scene);
    clean(&scene, &placed);
    assert!(placed.iter().all(Option::is_some), "{placed:?}");
}

#[test]
fn labels_overlap_their_own_line_only() {
    let (a, b) = (dvec2(100.0, 250.0), dvec2(700.0, 250.0));
    let line = |of| Obstacle { body: Body::Line(a, b, 1.0), weight: Weight::Line, of };
    let on = |names| Label { names, ..label(0, along(a, b, &[0.0]), vec![look(60.0, 10.0, How::Home)]) };
    assert!(place(&scene(vec![line(Some(7))], vec![on(Some(7))]))[0].is_some());
    assert!(place(&scene(vec![line(Some(7))], vec![on(Some(8))]))[0].is_none());
    assert!(place(&scene(vec![line(None)], vec![on(None)]))[0].is_none(), "nobody's line is nobody's own");
}

#[test]
fn invalid_drawings_do_not_panic() {
    let odd = [f64::NAN, f64::INFINITY, 0.0, -1.0, 1e300];
    for x in odd {
        for y in odd {
            let at = dvec2(x, y);
            let rings = vec![vec![at, dvec2(y, x), dvec2(1.0, 2.0)], Vec::new()];
            let anchors = [
                Anchor::Fixed(at),
                around(Rect { min: at, max: at }),
                along(at, dvec2(10.0, x), &[0.0, 1.0]),
                Anchor::Within { rings, home: at },
            ];
            let tries = vec![look(x, y, How::Home), look(y, x, How::Leader(x))];
            let labels = anchors.map(|anchor| label(0, anchor, tries.clone())).to_vec();
            let bodies = [
                Body::Line(at, dvec2(3.0, y), x),
                Body::Rect(Rect { min: at, max: -at }),
                Body::Convex(vec![at; 3]),
            ];
            let obstacles = bodies.map(|body| Obstacle { body, weight: Weight::Solid, of: None }).to_vec();
            place(&scene(obstacles.clone(), labels.clone()));
            place(&Scene { clip: Rect { min: at, max: dvec2(y, x) }, obstacles, labels, clear: x });
        }
    }
}

fn point() -> impl Strategy<Value = DVec2> {
    (-60.0..860.0f64, -40.0..540.0f64).prop_map(|(x, y)| dvec2(x, y))
}

fn any_label() -> impl Strategy<Value = Label> {
    let size = || (10.0..120.0f64, 8.0..22.0f64);
    let anchor = prop_oneof![
        point().prop_map(|at| around(Rect { min: at, max: at + dvec2(9.0, 6.0) })),
        (point(), point(), any::<bool>(), 0.0..1.0f64).prop_map(|(from, to, turned, home)| {
            Anchor::Along { from, to, beside: &[1.0, -1.0, 0.0], gap: 3.0, turned, home }
        }),
        (point(), 20.0..300.0f64, 20.0..200.0f64).prop_map(|(at, wide, high)| {
            let ring = Rect { min: at, max: at + dvec2(wide, high) }.corners().to_vec();
            Anchor::Within { rings: vec![ring], home: at + dvec2(wide, high) / 2.0 }
        }),
    ];
    (0..4u8, anchor, size(), any::<bool>(), proptest::option::of(0..30u32), 0..3u8).prop_map(
        |(rank, anchor, (x, y), led, names, over)| {
            let mut tries = vec![look(x, y, How::Home), look(x * 0.6, y, How::Overhanging)];
            if led {
                tries.push(look(x * 0.6, y, How::Leader(80.0)));
            }
            let over = [Over::Nothing, Over::Faint, Over::Ground][usize::from(over)];
            Label { rank, names, anchor, tries, over }
        },
    )
}

fn any_obstacle() -> impl Strategy<Value = Obstacle> {
    let body = prop_oneof![
        (point(), point()).prop_map(|(a, b)| Body::Line(a, b, 0.8)),
        (point(), 2.0..60.0f64).prop_map(|(at, size)| Body::Rect(Rect::at(at, DVec2::splat(size)))),
        (point(), 5.0..40.0f64).prop_map(|(at, size)| Body::Convex(
            [0.1, 0.9, 1.7, 2.9, 4.0, 5.2].map(|turn| at + DVec2::from_angle(turn) * size).to_vec()
        )),
    ];
    (body, 0..4u8, proptest::option::of(0..30u32)).prop_map(|(body, weight, of)| Obstacle {
        body,
        weight: [Weight::Faint, Weight::Ground, Weight::Line, Weight::Solid][usize::from(weight)],
        of,
    })
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(300) })]

    #[test]
    fn nothing_lies_on_anything(
        obstacles in proptest::collection::vec(any_obstacle(), 0..40),
        labels in proptest::collection::vec(any_label(), 1..60),
    ) {
        let scene = scene(obstacles, labels);
        let placed = place(&scene);
        prop_assert_eq!(placed.len(), scene.labels.len());
        prop_assert!(placed == place(&scene), "the same scene, the same places");
        clean(&scene, &placed);
    }

    /// What was placed for the scene before never shows in another one: not where one label, one obstacle, the clip or the
    /// clearance alone is different.
    #[test]
    fn a_scene_is_placed_as_if_it_were_the_first(
        obstacles in proptest::collection::vec(any_obstacle(), 1..20),
        labels in proptest::collection::vec(any_label(), 1..20),
        (other_obstacle, other_label) in (any_obstacle(), any_label()),
        at in any::<proptest::sample::Index>(),
    ) {
        let first = scene(obstacles, labels);
        let mut scenes = vec![first.clone(), first.clone()];
        let (one, of) = (at.index(first.labels.len()), at.index(first.obstacles.len()));
        let change = |edit: &dyn Fn(&mut Scene)| {
            let mut changed = first.clone();
            edit(&mut changed);
            [changed, first.clone()]
        };
        scenes.extend(change(&|it| it.obstacles[of] = other_obstacle.clone()));
        scenes.extend(change(&|it| it.labels[one] = other_label.clone()));
        scenes.extend(change(&|it| it.labels[one].tries[0].size.x += 0.5));
        scenes.extend(change(&|it| it.labels.push(other_label.clone())));
        scenes.extend(change(&|it| it.clip.max.x -= 100.0));
        scenes.extend(change(&|it| it.clear += 4.0));
        let mut last = Last::default();
        for scene in scenes {
            prop_assert_eq!(last.place(scene.clone()), place(&scene));
        }
    }

    /// A fully visible label moves with its drawing.
    #[test]
    fn labels_move_with_the_drawing(
        labels in proptest::collection::vec(any_label(), 1..20),
        by in (-3.0..3.0f64, -3.0..3.0f64),
    ) {
        let by = dvec2(by.0, by.1);
        let far = Rect { min: CLIP.min - DVec2::splat(500.0), max: CLIP.max + DVec2::splat(500.0) };
        let here = Scene { clip: far, ..scene(Vec::new(), labels) };
        let mut there = here.clone();
        for label in &mut there.labels {
            match &mut label.anchor {
                Anchor::Fixed(at) => *at += by,
                Anchor::Around { thing, .. } => *thing = thing.moved(by),
                Anchor::Along { from, to, .. } => { *from += by; *to += by; }
                Anchor::Within { rings, home } => {
                    *home += by;
                    rings.iter_mut().flatten().for_each(|p| *p += by);
                }
            }
        }
        for (one, other) in place(&here).into_iter().zip(place(&there)) {
            let moved = one.zip(other).map(|(one, other)| (one.at + by - other.at).length());
            prop_assert!(one.is_some() == other.is_some() && moved.unwrap_or(0.0) < 1e-6, "{one:?} {other:?}");
        }
    }
}
