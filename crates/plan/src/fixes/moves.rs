//! Moves of a block past all limits at once: straight, first along one axis and then the other, and the shortest in any
//! direction. A movable penetration is moved out of the way of blocks the same way.

use super::FixRequest;
use super::change::{Change, Step};
use super::ground::{Body, Ground, rows_of};
use crate::room::path_strips;
use chalkcourse_geometry::fit::least_slide;
use chalkcourse_geometry::{Convex, DVec2, RoofFace, dvec2};
use chalkcourse_job::{Block, BlockId, Edit, FaceId, Penetration};
use chalkcourse_layout::{PlacedBlock, reaches_over};
use chalkcourse_limits::{Against, TOLERANCE};

/// Most moves to try for one set of limits.
const MOST_MOVES: usize = 12;

/// Whether a finding may be about the position of a block.
fn is_about_place(rule: &str) -> bool {
    matches!(rule, "laying" | "fire-paths" | "fire-street" | "wind" | "deck")
        || chalkcourse_limits::LIMITS.iter().any(|limit| limit.code == rule)
}

/// Moves of a block: past all limits at once, shortest first; then with room for each possible pathway; then past what
/// the finding is about without getting closer to anything else that the block already breaks.
pub(super) fn of_block(asked: &FixRequest<'_>, block: &Block, stop: &dyn Fn() -> bool) -> Vec<Step> {
    let Some(placed) = asked.state.layout.block(block.id).filter(|_| is_about_place(asked.finding.rule))
    else {
        return Vec::new();
    };
    let Some(body) = Body::of(&rows_of(placed, |_| true)) else { return Vec::new() };
    let ground = |kept: Vec<Convex>| asked.ground(placed.face, |id| id != block.id, kept);
    let Some(all) = ground(Vec::new()) else { return Vec::new() };
    let mut found = past(asked, &all, &body, placed, stop);
    let mut beside: Vec<DVec2> = path_strips(&asked.state.job, &asked.state.layout, placed.face)
        .into_iter()
        .filter_map(|strip| Some(past(asked, &ground(vec![strip])?, &body, placed, stop)))
        .flatten()
        .collect();
    sort(&mut beside);
    found.extend(beside.into_iter().take(MOST_MOVES));
    found.extend(past(asked, &all.relaxed(&body, asked.finding), &body, placed, stop));
    steps(block, found)
}

/// Moves of a block past all limits, ignoring other blocks that may be moved too: for the first of several steps.
pub(super) fn through_others(asked: &FixRequest<'_>, block: &Block, stop: &dyn Fn() -> bool) -> Vec<Step> {
    let Some(placed) = asked.state.layout.block(block.id).filter(|_| is_about_place(asked.finding.rule))
    else {
        return Vec::new();
    };
    let locked = |id: BlockId| asked.state.job.block(id).is_some_and(|other| other.locked) && id != block.id;
    let body = Body::of(&rows_of(placed, |_| true));
    let ground = asked.ground(placed.face, locked, Vec::new());
    let found = body.zip(ground).map(|(body, ground)| past(asked, &ground, &body, placed, stop));
    steps(block, found.unwrap_or_default())
}

fn steps(block: &Block, moves: Vec<DVec2>) -> Vec<Step> {
    let mut seen: Vec<DVec2> = Vec::new();
    for by in moves.into_iter().filter(|by| by.length() > 1e-6) {
        if !seen.iter().any(|there| there.distance(by) < 1e-6) {
            seen.push(by);
        }
    }
    let step = |by: DVec2| Step {
        change: Change::Move(block.id, by),
        edit: Edit::PutBlock(Block { at: block.at + by, ..block.clone() }),
    };
    seen.into_iter().map(step).collect()
}

fn sort(moves: &mut [DVec2]) {
    moves.sort_by(|a, b| a.abs().element_sum().total_cmp(&b.abs().element_sum()));
}

/// The shortest moves after which a block is free.
fn past(
    asked: &FixRequest<'_>,
    ground: &Ground,
    body: &Body,
    placed: &PlacedBlock,
    stop: &dyn Fn() -> bool,
) -> Vec<DVec2> {
    if ground.is_free(body, DVec2::ZERO) {
        return Vec::new();
    }
    let mut found: Vec<DVec2> = Vec::new();
    for by in ground.ways(body) {
        if stop() {
            return Vec::new();
        }
        found.push(by);
    }
    sort(&mut found);
    if found.is_empty() {
        found.extend(shortest_moves(asked, ground, body, placed, stop));
    }
    found.truncate(MOST_MOVES);
    found
}

/// The shortest move in any direction, rounded to the surrounding whole steps that are free.
fn shortest_moves(
    asked: &FixRequest<'_>,
    ground: &Ground,
    body: &Body,
    placed: &PlacedBlock,
    stop: &dyn Fn() -> bool,
) -> Vec<DVec2> {
    let parts = rows_of(placed, |_| true);
    let allowed = ground.allowed(&asked.state.layout, placed.face);
    let least = allowed.and_then(|allowed| least_slide(&allowed, &parts, stop).ok().flatten());
    let Some(least) = least else { return Vec::new() };
    let away = |by: f64| [ground.up(by), -ground.up(-by)];
    let mut around: Vec<DVec2> =
        away(least.x).into_iter().flat_map(|u| away(least.y).map(|v| dvec2(u, v))).collect();
    around.retain(|by| ground.is_free(body, *by));
    sort(&mut around);
    around.push(least);
    around
}

/// Straight moves of a penetration after which it is no longer in the way of any block on the face.
pub(super) fn of_penetration(asked: &FixRequest<'_>) -> Vec<Step> {
    let job = &asked.state.job;
    let place = &asked.finding.place;
    let of = place.penetration.and_then(|id| job.penetration(id)).filter(|it| it.kind.can_be_moved());
    let (Some(it), Some(on_id)) = (of, place.face) else { return Vec::new() };
    let Some((face, on)) = asked.state.layout.face(on_id) else { return Vec::new() };
    let parts: Vec<_> = asked
        .state
        .layout
        .blocks
        .iter()
        .filter(|block| block.face == face)
        .flat_map(|block| rows_of(block, |_| true))
        .collect();
    let Some(body) = Body::of(&parts) else { return Vec::new() };
    let Some(ground) = asked.ground(face, |_| false, Vec::new()) else { return Vec::new() };
    let mut ground = ground.on_any_course();
    ground.keep_outs.retain(|keep_out| keep_out.against == Against::Penetration(it.id));
    // Moving the blocks past the penetration one way is the same as moving the penetration the other way.
    let mut ways: Vec<DVec2> = [DVec2::X, DVec2::Y]
        .into_iter()
        .flat_map(|axis| ground.free_along(&body, DVec2::ZERO, axis))
        .map(|by| -by)
        .filter(|by| by.length() > 1e-6)
        .collect();
    sort(&mut ways);
    ways.into_iter().map(|by| moved(it, on_id, on, by)).collect()
}

fn moved(it: &Penetration, face: FaceId, on: &RoofFace, by: DVec2) -> Step {
    let at = on.plane.to_plan(on.plane.to_frame(it.at) + by);
    Step {
        change: Change::MoveThrough { penetration: it.id, face, by },
        edit: Edit::PutPenetration(Penetration { at, ..it.clone() }),
    }
}

/// Moves of a penetration that extends over an edge of its face, until it is clear of all edges: straight away from the
/// edge, along the eave, up or down the slope; shortest first.
pub(super) fn onto_one_plane(asked: &FixRequest<'_>) -> Vec<Step> {
    let job = &asked.state.job;
    let place = &asked.finding.place;
    let of = place.penetration.and_then(|id| job.penetration(id)).filter(|it| it.kind.can_be_moved());
    let (Some(it), Some(face)) = (of.filter(|_| asked.finding.rule == "one-plane"), place.face) else {
        return Vec::new();
    };
    let Some((index, on)) = asked.state.layout.face(face) else { return Vec::new() };
    let placed = asked.state.layout.penetration(it.id).and_then(|it| it.on_face(index));
    let Some(placed) = placed else { return Vec::new() };
    let up = |length: f64| job.units.up(length.abs()) * length.signum();
    let clear = |along: DVec2| {
        let mut by = DVec2::ZERO;
        // In a corner, clear one edge after the other.
        for _ in 0..4 {
            let Some(over) = reaches_over(on, &placed.outline.map(|p| p + by), TOLERANCE) else {
                return Some(by);
            };
            let away = over.span.inward();
            let way = if along == DVec2::ZERO { away } else { along * along.dot(away).signum() };
            let share = way.dot(away);
            if share < 0.05 {
                return None;
            }
            let step = way * (over.by / share);
            by += DVec2::new(up(step.x), up(step.y));
        }
        None
    };
    let mut ways: Vec<DVec2> = [DVec2::ZERO, DVec2::X, DVec2::Y].into_iter().filter_map(clear).collect();
    ways.sort_by(|a, b| a.length().total_cmp(&b.length()));
    ways.into_iter().map(|by| moved(it, face, on, by)).collect()
}
