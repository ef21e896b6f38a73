//! Snapping of a dragged penetration.

use super::limit::rows;
use super::{Guide, Pull, Scene, beside, guide, nearest, upright};
use crate::text;
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{DVec2, Rect, RoofFace};
use chalkcourse_job::{Penetration, PenetrationId};
use chalkcourse_layout::PlacedBlock;
use chalkcourse_limits::{Against, KeepOut, KeepOutContext, keep_outs};

/// The snapped position of a dragged penetration in plan, and the guides: clear of a block, aligned with another
/// penetration, on a course line, in the middle of its face.
pub(crate) fn snapped(scene: Scene, dragged: &Penetration) -> (DVec2, Vec<Guide>) {
    let here = |face: &&RoofFace| face.sound && face.plan.contains(dragged.at);
    let upper = scene.layout.roof.faces.iter().enumerate().filter(|(_, face)| here(face));
    let height = |face: &RoofFace| face.plane.height_at(dragged.at);
    let Some((index, face)) = upper.max_by(|(_, a), (_, b)| height(a).total_cmp(&height(b))) else {
        return (dragged.at, Vec::new());
    };
    let middle = face.plane.to_frame(dragged.at);
    let Some(outline) = chalkcourse_layout::outline_on_deck(&dragged.shape).bounds() else {
        return (dragged.at, Vec::new());
    };
    let bounds = outline.moved(middle);
    let mut at = middle;
    let mut found = Vec::new();
    if let Some(pull) = nearest(up_the_slope(scene, index, dragged, bounds), scene.reach) {
        at.y += pull.by;
        found.push(pull);
    }
    let bounds = outline.moved(at);
    if let Some(pull) = nearest(along_the_eave(scene, index, dragged, bounds), scene.reach) {
        at.x += pull.by;
        found.push(pull);
    }
    if found.is_empty() {
        return (dragged.at, Vec::new());
    }
    (face.plane.to_plan(at), found.into_iter().map(|pull| guide(&face.plane, pull)).collect())
}

fn up_the_slope(scene: Scene, index: usize, dragged: &Penetration, bounds: Rect) -> Vec<Pull> {
    let middle = bounds.centre();
    let mut pulls = clear_of_blocks(scene, index, dragged, bounds, DVec2::Y);
    if let Some(courses) = scene.layout.faces.get(index).map(|face| face.courses)
        && let Some(v) = courses.nearest(middle.y)
    {
        let number = ((v - courses.first) / courses.exposure).round() as usize + 1;
        pulls.push(Pull { by: v - middle.y, line: beside(bounds, v), words: text::middle_on_course(number) });
    }
    for (other, name) in others_through(scene, index, dragged.id) {
        let line = (other, DVec2::new(middle.x, other.y));
        pulls.push(Pull { by: other.y - middle.y, line, words: text::middle_in_line(&name) });
    }
    pulls
}

fn along_the_eave(scene: Scene, index: usize, dragged: &Penetration, bounds: Rect) -> Vec<Pull> {
    let middle = bounds.centre();
    let mut pulls = clear_of_blocks(scene, index, dragged, bounds, DVec2::X);
    for (other, name) in others_through(scene, index, dragged.id) {
        let line = (other, DVec2::new(other.x, middle.y));
        pulls.push(Pull { by: other.x - middle.x, line, words: text::middle_in_line(&name) });
    }
    if let Some(face) = scene.layout.roof.faces.get(index) {
        let u = face.bounds.centre().x;
        pulls.push(Pull {
            by: u - middle.x,
            line: upright(bounds, u),
            words: text::CENTRED.now().to_owned(),
        });
    }
    pulls
}

/// Where the blocks of a face just clear the keep-outs of a penetration as it moves along an axis of the frame; not
/// where another block would be hit.
fn clear_of_blocks(scene: Scene, index: usize, dragged: &Penetration, bounds: Rect, way: DVec2) -> Vec<Pull> {
    let placed = scene.layout.penetration(dragged.id).and_then(|placed| placed.on_face(index));
    // If it was just dragged here from another face, wait for the next frame.
    let Some(there) = placed else { return Vec::new() };
    let moved = bounds.centre() - there.bounds.centre();
    let given = KeepOutContext { standing: Vec::new(), ..KeepOutContext::as_laid(scene.job, scene.layout) };
    let all = keep_outs(scene.job, scene.layout, index, &given);
    let own: Vec<&KeepOut> =
        all.iter().filter(|keep_out| keep_out.against == Against::Penetration(dragged.id)).collect();
    let mut stretches = Vec::new();
    for block in scene.layout.blocks.iter().filter(|block| block.face == index) {
        // Moving it is the same as moving everything else the other way.
        let rows: Vec<Part> =
            rows(block).into_iter().map(|row| Part { rect: row.rect.moved(-moved), ..row }).collect();
        for (from, to) in own.iter().flat_map(|keep_out| keep_out.too_near_along(&rows, way)) {
            stretches.push(((-to, -from), block));
        }
    }
    let free = |by: f64| !stretches.iter().any(|((from, to), _)| from + 1e-9 < by && by < to - 1e-9);
    let ends = stretches.iter().flat_map(|&((from, to), block)| [(from, block), (to, block)]);
    ends.filter(|(by, _)| by.abs() <= scene.reach && free(*by))
        .map(|(by, block)| Pull {
            by,
            line: facing(bounds, block, way, by),
            words: text::clear_of_block(&block.name),
        })
        .collect()
}

/// A line along the side of a penetration that faces a block after a move.
fn facing(bounds: Rect, block: &PlacedBlock, way: DVec2, by: f64) -> (DVec2, DVec2) {
    let there = bounds.moved(way * by);
    let after = block.bounds.is_some_and(|other| (there.centre() - other.centre()).dot(way) > 0.0);
    let side = if after { there.min } else { there.max };
    if way.y != 0.0 { beside(there, side.y) } else { upright(there, side.x) }
}

/// Centres and names of other penetrations of a face.
fn others_through<'a>(
    scene: Scene<'a>,
    index: usize,
    but: PenetrationId,
) -> impl Iterator<Item = (DVec2, String)> + use<'a> {
    let others = scene.layout.penetrations.iter().filter(move |other| other.id != but);
    others.filter_map(move |other| Some((other.on_face(index)?.bounds.centre(), other.name.clone())))
}

#[cfg(test)]
mod tests {
    use super::super::block_rect;
    use super::*;
    use crate::sample;
    use chalkcourse_geometry::dvec2;
    use chalkcourse_job::{PenetrationKind, Resolved};
    use chalkcourse_layout::Layout;
    use chalkcourse_rules::check;
    use std::sync::Arc;

    /// A vent placed to the right of where the first block just clears it, at half its height.
    fn beside_the_block(aside: f64) -> (Resolved, f64) {
        let mut job = sample::alder_court().unwrap();
        job.penetrations.truncate(1);
        let block = job.blocks[0].clone();
        let (bounds, plane) = (block_rect(&job, &block), job.face(block.face).unwrap().plane());
        let clearance = job.rule_book.clearance(PenetrationKind::Vent).metres();
        let vent = &mut job.penetrations[0];
        (vent.kind, vent.clearance) = (PenetrationKind::Vent, None);
        let half = chalkcourse_layout::outline_on_deck(&vent.shape).bounds().unwrap().size().x / 2.0;
        let just = bounds.max.x + clearance + half;
        vent.at = plane.to_plan(dvec2(just + aside, bounds.centre().y));
        (job, just)
    }

    fn snap(job: &Resolved) -> (DVec2, Vec<Guide>) {
        snapped(Scene { job, layout: &Layout::of(job), reach: 0.05, one_face: false }, &job.penetrations[0])
    }

    #[test]
    fn a_vent_stops_where_a_block_just_clears_it() {
        let too_near = |job: &Resolved| check(job, &Layout::of(job)).iter().any(|it| it.rule == "clearance");
        for aside in [-0.03, -0.002, 0.002, 0.03] {
            let (mut job, just) = beside_the_block(aside);
            let plane = job.face(job.blocks[0].face).unwrap().plane();
            let (to, guides) = snap(&job);
            let at = plane.to_frame(to);
            assert!((at.x - just).abs() < 1e-5, "{aside}: {} for {just}, {guides:?}", at.x);
            assert!(guides.iter().any(|guide| guide.words.contains("just clear of")), "{guides:?}");
            job.penetrations[0].at = to;
            assert!(!too_near(&job), "{aside}");
            job.penetrations[0].at = plane.to_plan(at - dvec2(0.001, 0.0));
            assert!(too_near(&job), "{aside}");
        }
    }

    #[test]
    fn a_rule_that_is_off_stops_nothing() {
        let (mut job, _) = beside_the_block(0.01);
        Arc::make_mut(&mut job.rule_book).off.insert("clearance".into());
        assert!(snap(&job).1.iter().all(|guide| !guide.words.contains("just clear of")));
    }
}
