//! Snapping: finding nearby targets, and the text that says what was snapped to.

mod limit;
mod penetration;
mod row;

pub(crate) use penetration::snapped as penetration;
pub(crate) use row::snapped as row;

use super::hit::block_rect;
use crate::text;
use chalkcourse_geometry::{DVec2, Plane, Rect, RoofFace, nearest_on_segment};
use chalkcourse_job::{Block, Face, FaceId, Resolved, RoofPart};
use chalkcourse_layout::Layout;

/// A line on the drawing that shows why something stopped where it did.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Guide {
    /// In plan.
    pub(crate) line: (DVec2, DVec2),
    /// The text for it.
    pub(crate) words: String,
}

/// Input for snapping.
#[derive(Clone, Copy)]
pub(crate) struct Scene<'a> {
    pub(crate) job: &'a Resolved,
    pub(crate) layout: &'a Layout,
    /// Snap distance, in metres.
    pub(crate) reach: f64,
    /// Whether a single face is shown: nothing moves to another face.
    pub(crate) one_face: bool,
}

/// A snap candidate along one axis of the frame.
struct Pull {
    by: f64,
    line: (DVec2, DVec2),
    words: String,
}

fn nearest(pulls: Vec<Pull>, reach: f64) -> Option<Pull> {
    pulls.into_iter().filter(|p| p.by.abs() <= reach).min_by(|a, b| a.by.abs().total_cmp(&b.by.abs()))
}

/// The snapped position of a block: its corner in the frame, and the guides.
pub(crate) fn block(scene: Scene, block: &Block) -> (DVec2, Vec<Guide>) {
    let Some((index, face)) = scene.layout.face(block.face) else { return (block.at, Vec::new()) };
    let bounds = block_rect(scene.job, block);
    let mut at = block.at;
    let mut found = Vec::new();
    if let Some(pull) = nearest(up_the_slope(scene, index, block, bounds), scene.reach) {
        at.y += pull.by;
        found.push(pull);
    }
    // The rake of a hip face depends on the height, so snap along the eave after snapping up the slope.
    let bounds = bounds.moved(at - block.at);
    let risen = Block { at, ..block.clone() };
    if let Some(pull) = nearest(along_the_eave(scene, index, &risen, bounds), scene.reach) {
        at.x += pull.by;
        found.push(pull);
    }
    (at, found.into_iter().map(|pull| guide(&face.plane, pull)).collect())
}

fn guide(plane: &Plane, pull: Pull) -> Guide {
    Guide { line: (plane.to_plan(pull.line.0), plane.to_plan(pull.line.1)), words: pull.words }
}

/// A level line slightly longer than a block.
fn beside(bounds: Rect, v: f64) -> (DVec2, DVec2) {
    (DVec2::new(bounds.min.x - 0.5, v), DVec2::new(bounds.max.x + 0.5, v))
}

/// A line up the slope slightly longer than a block.
fn upright(bounds: Rect, u: f64) -> (DVec2, DVec2) {
    (DVec2::new(u, bounds.min.y - 0.5), DVec2::new(u, bounds.max.y + 0.5))
}

fn up_the_slope(scene: Scene, index: usize, block: &Block, bounds: Rect) -> Vec<Pull> {
    let mut pulls = limit::pulls(scene, index, block, DVec2::Y);
    let span = |v: f64| beside(bounds, v);
    if let Some(courses) = scene.layout.faces.get(index).map(|face| face.courses)
        && let Some(v) = courses.nearest(bounds.min.y)
    {
        let number = ((v - courses.first) / courses.exposure).round() as usize + 1;
        pulls.push(Pull { by: v - bounds.min.y, line: span(v), words: text::on_course(number) });
    }
    let reveal = block.reveal;
    for (other, name) in neighbours(scene, index, block) {
        for (from, to) in [(bounds.min.y, other.min.y), (bounds.max.y, other.max.y)] {
            pulls.push(Pull { by: to - from, line: span(to), words: text::flush_with(&name) });
        }
        if bounds.overlap(&other).x > 0.0 {
            let words = text::reveal_to(&name, reveal, scene.job.units);
            for (from, to) in
                [(bounds.min.y, other.max.y + reveal.metres()), (bounds.max.y, other.min.y - reveal.metres())]
            {
                pulls.push(Pull { by: to - from, line: span(to), words: words.clone() });
            }
        }
    }
    pulls
}

fn along_the_eave(scene: Scene, index: usize, block: &Block, bounds: Rect) -> Vec<Pull> {
    let mut pulls = limit::pulls(scene, index, block, DVec2::X);
    let span = |u: f64| upright(bounds, u);
    let reveal = block.reveal;
    for (other, name) in neighbours(scene, index, block) {
        for (from, to) in [(bounds.min.x, other.min.x), (bounds.max.x, other.max.x)] {
            pulls.push(Pull { by: to - from, line: span(to), words: text::flush_with(&name) });
        }
        if bounds.overlap(&other).y > 0.0 {
            let words = text::reveal_to(&name, reveal, scene.job.units);
            for (from, to) in
                [(bounds.min.x, other.max.x + reveal.metres()), (bounds.max.x, other.min.x - reveal.metres())]
            {
                pulls.push(Pull { by: to - from, line: span(to), words: words.clone() });
            }
        }
    }
    if let Some(middle) = between(scene, index, block, bounds) {
        let by = middle - bounds.centre().x;
        pulls.push(Pull { by, line: span(middle), words: text::SAME_GAPS.now().to_owned() });
    }
    if let Some(face) = scene.layout.roof.faces.get(index) {
        let by = face.bounds.centre().x - bounds.centre().x;
        pulls.push(Pull { by, line: span(face.bounds.centre().x), words: text::CENTRED.now().to_owned() });
    }
    pulls
}

/// The middle between the nearest objects on the left and right of a block at its height: other blocks, penetrations,
/// the ends of the face. `None` if neither is a block or a penetration, since that is the middle of the face.
fn between(scene: Scene, index: usize, block: &Block, bounds: Rect) -> Option<f64> {
    let face = scene.layout.roof.faces.get(index)?;
    let beside: Vec<Rect> =
        others(scene, index, block).filter(|other| bounds.overlap(other).y > 0.0).collect();
    let (middle, ends) = (bounds.centre(), super::crossings::crossings(&face.frame, bounds.centre().y));
    let left = beside.iter().map(|other| other.max.x).filter(|u| *u <= middle.x).reduce(f64::max);
    let right = beside.iter().map(|other| other.min.x).filter(|u| *u >= middle.x).reduce(f64::min);
    if left.is_none() && right.is_none() {
        return None;
    }
    let left = left.or_else(|| ends.iter().copied().filter(|u| *u <= middle.x).reduce(f64::max))?;
    let right = right.or_else(|| ends.iter().copied().filter(|u| *u >= middle.x).reduce(f64::min))?;
    Some((left + right) / 2.0)
}

/// Other objects on a face: penetrations and other blocks.
fn others<'a>(scene: Scene<'a>, index: usize, block: &Block) -> impl Iterator<Item = Rect> + use<'a> {
    let penetrations = scene.layout.penetrations.iter().filter_map(move |p| Some(p.on_face(index)?.bounds));
    penetrations.chain(neighbours(scene, index, block).map(|(rect, _)| rect))
}

fn neighbours<'a>(
    scene: Scene<'a>,
    index: usize,
    block: &Block,
) -> impl Iterator<Item = (Rect, String)> + use<'a> {
    let id = block.id;
    scene
        .layout
        .blocks
        .iter()
        .filter(move |other| other.face == index && other.id != id)
        .filter_map(|other| Some((other.bounds?, other.name.clone())))
}

/// The snapped position of a corner being drawn or dragged. `anchors` are the adjacent corners; faces in `without` are
/// ignored.
pub(crate) fn point(
    scene: Scene,
    pointer: DVec2,
    anchors: &[DVec2],
    draft: &[DVec2],
    without: &[FaceId],
) -> (DVec2, Vec<Guide>) {
    let faces = || {
        scene
            .layout
            .roof
            .faces
            .iter()
            .zip(&scene.layout.faces)
            .filter(|(_, placed)| !without.contains(&placed.id))
    };
    // Walls are inside the edge of their roof: both are targets, walls first.
    let moving = |part: &RoofPart| {
        let own = |face: &&Face| face.from.is_some_and(|from| from.part == part.id);
        scene.job.faces.iter().filter(own).any(|face| without.contains(&face.id))
    };
    let walls = || scene.job.parts.iter().filter(|part| !moving(part));
    let corners =
        || {
            let of_walls = walls()
                .flat_map(|part| part.outline.rings().flatten().map(move |&p| (p, part.name.as_str())));
            of_walls.chain(faces().flat_map(|(face, placed)| {
                face.plan.rings().flatten().map(move |&p| (p, placed.name.as_str()))
            }))
        };
    let corner = corners()
        .filter(|(p, _)| p.distance(pointer) <= scene.reach)
        .min_by(|(a, _), (b, _)| a.distance(pointer).total_cmp(&b.distance(pointer)));
    if let Some((p, name)) = corner {
        return (p, vec![Guide { line: (p, p), words: text::corner_of(name) }]);
    }
    let mut lines: Vec<(DVec2, DVec2, String)> = Vec::new();
    for &anchor in anchors {
        for (direction, words) in eighths() {
            lines.push((anchor, direction, words.to_owned()));
        }
        for (direction, words) in
            along_sides(draft, faces().map(|(face, placed)| (face, placed.name.as_str())))
        {
            lines.push((anchor, direction, words));
        }
    }
    let mut near: Vec<(DVec2, DVec2, DVec2, String)> = lines
        .into_iter()
        .map(|(from, along, words)| (from + along * (pointer - from).dot(along), from, along, words))
        .collect();
    for (face, placed) in faces() {
        for (_, _, a, b) in face.plan.sides() {
            let foot = nearest_on_segment(pointer, a, b);
            near.push((foot, a, (b - a).normalize_or_zero(), text::on_side_of(&placed.name)));
        }
    }
    for part in walls() {
        for (_, _, a, b) in part.outline.sides() {
            let foot = nearest_on_segment(pointer, a, b);
            near.push((foot, a, (b - a).normalize_or_zero(), text::on_side_of(&part.name)));
        }
    }
    near.retain(|(foot, ..)| foot.distance(pointer) <= scene.reach);
    near.sort_by(|a, b| a.0.distance(pointer).total_cmp(&b.0.distance(pointer)));
    let Some((foot, from, along, words)) = near.first().cloned() else { return (pointer, Vec::new()) };
    // If two lines cross nearby, snap to the crossing.
    for (_, other_from, other_along, other_words) in near.iter().skip(1) {
        let turn = along.perp_dot(*other_along);
        if turn.abs() < 0.1 {
            continue;
        }
        let crossing = from + along * ((*other_from - from).perp_dot(*other_along) / turn);
        if crossing.distance(pointer) <= scene.reach * 1.5 {
            let guides = vec![
                Guide { line: (from, crossing), words },
                Guide { line: (*other_from, crossing), words: other_words.clone() },
            ];
            return (crossing, guides);
        }
    }
    // On a single line: level with a corner, if one is close.
    let level = corners()
        .map(|(p, name)| (p, text::level_with(name)))
        .chain(draft.iter().map(|&p| (p, text::LEVEL_WITH_START.now().to_owned())))
        .map(|(p, words)| (from + along * (p - from).dot(along), p, words))
        .filter(|(at, p, _)| at.distance(foot) <= scene.reach && at.distance(*p) > 1e-6)
        .min_by(|a, b| a.0.distance(foot).total_cmp(&b.0.distance(foot)));
    match level {
        Some((at, p, level_words)) => {
            let guides = vec![Guide { line: (from, at), words }, Guide { line: (p, at), words: level_words }];
            (at, guides)
        }
        None => (foot, vec![Guide { line: (from, foot), words }]),
    }
}

/// Directions parallel and perpendicular to the sides already drawn, then to those of faces: for houses that are not
/// aligned with the axes. Known directions, including the eighths, are not repeated.
fn along_sides<'a>(
    draft: &[DVec2],
    faces: impl Iterator<Item = (&'a RoofFace, &'a str)>,
) -> Vec<(DVec2, String)> {
    /// With more directions than this, everything would snap.
    const MOST: usize = 12;
    let drawn = draft.windows(2).rev().map(|side| (side[1] - side[0], None));
    let there = faces.flat_map(|(face, name)| face.plan.sides().map(move |(_, _, a, b)| (b - a, Some(name))));
    let sides: Vec<(DVec2, Option<&str>)> =
        drawn.chain(there).filter_map(|(side, name)| Some((side.try_normalize()?, name))).collect();
    // Parallel directions come before perpendicular ones.
    let along = sides.iter().map(|&(along, name)| (along, text::parallel_to(name)));
    let square = sides.iter().map(|&(along, name)| (along.perp(), text::square_to(name)));
    let mut known: Vec<DVec2> = eighths().map(|(direction, _)| direction).to_vec();
    let mut found = Vec::new();
    for (direction, words) in along.chain(square) {
        if found.len() < MOST && known.iter().all(|other| other.perp_dot(direction).abs() > 1e-3) {
            known.push(direction);
            found.push((direction, words));
        }
    }
    found
}

/// The standard directions of a side: along the axes, and the diagonals.
fn eighths() -> [(DVec2, &'static str); 4] {
    let half = std::f64::consts::FRAC_1_SQRT_2;
    [
        (DVec2::X, text::EAST_WEST.now()),
        (DVec2::Y, text::NORTH_SOUTH.now()),
        (DVec2::new(half, half), text::DIAGONAL.now()),
        (DVec2::new(half, -half), text::DIAGONAL.now()),
    ]
}
