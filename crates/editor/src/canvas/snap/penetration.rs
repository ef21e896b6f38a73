//! Where a penetration that is dragged is meant to be.

use super::{Guide, Pull, Scene, beside, guide, nearest, upright};
use crate::text;
use chalkcourse_geometry::{DVec2, Rect, RoofFace};
use chalkcourse_job::{Penetration, PenetrationId};

/// Where a penetration that is dragged is meant to be, in plan, and why: clear of a block, in line with another
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
    let clearance = scene.layout.penetration(dragged.id).map_or(0.0, |placed| placed.clearance);
    let bounds = outline.moved(middle);
    let mut at = middle;
    let mut found = Vec::new();
    if let Some(pull) = nearest(up_the_slope(scene, index, dragged, bounds, clearance), scene.reach) {
        at.y += pull.by;
        found.push(pull);
    }
    let bounds = outline.moved(at);
    if let Some(pull) = nearest(along_the_eave(scene, index, dragged, bounds, clearance), scene.reach) {
        at.x += pull.by;
        found.push(pull);
    }
    if found.is_empty() {
        return (dragged.at, Vec::new());
    }
    (face.plane.to_plan(at), found.into_iter().map(|pull| guide(&face.plane, pull)).collect())
}

fn up_the_slope(
    scene: Scene,
    index: usize,
    dragged: &Penetration,
    bounds: Rect,
    clearance: f64,
) -> Vec<Pull> {
    let middle = bounds.centre();
    let mut pulls = Vec::new();
    if let Some(courses) = scene.layout.faces.get(index).map(|face| face.courses)
        && let Some(v) = courses.nearest(middle.y)
    {
        let number = ((v - courses.first) / courses.exposure).round() as usize + 1;
        pulls.push(Pull { by: v - middle.y, line: beside(bounds, v), words: text::middle_on_course(number) });
    }
    for (other, name) in blocks_on(scene, index) {
        if bounds.grown(clearance).overlap(&other).x > 0.0 {
            let (own, its) = ((bounds.min.y, bounds.max.y), (other.min.y, other.max.y));
            pulls.extend(clear_of(&name, own, its, clearance, |to| beside(bounds, to)));
        }
    }
    for (other, name) in others_through(scene, index, dragged.id) {
        let line = (other, DVec2::new(middle.x, other.y));
        pulls.push(Pull { by: other.y - middle.y, line, words: text::middle_in_line(&name) });
    }
    pulls
}

fn along_the_eave(
    scene: Scene,
    index: usize,
    dragged: &Penetration,
    bounds: Rect,
    clearance: f64,
) -> Vec<Pull> {
    let middle = bounds.centre();
    let mut pulls = Vec::new();
    for (other, name) in blocks_on(scene, index) {
        if bounds.grown(clearance).overlap(&other).y > 0.0 {
            let (own, its) = ((bounds.min.x, bounds.max.x), (other.min.x, other.max.x));
            pulls.extend(clear_of(&name, own, its, clearance, |to| upright(bounds, to)));
        }
    }
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

/// Just clear of a block on either side of it: least and greatest of what is dragged and of the block, along one axis.
fn clear_of(
    name: &str,
    own: (f64, f64),
    its: (f64, f64),
    clearance: f64,
    line: impl Fn(f64) -> (DVec2, DVec2),
) -> [Pull; 2] {
    let pull = |from: f64, to: f64| Pull { by: to - from, line: line(to), words: text::clear_of_block(name) };
    [pull(own.0, its.1 + clearance), pull(own.1, its.0 - clearance)]
}

/// Bounds and names of the blocks on a face.
fn blocks_on<'a>(scene: Scene<'a>, index: usize) -> impl Iterator<Item = (Rect, String)> + use<'a> {
    let on = scene.layout.blocks.iter().filter(move |block| block.face == index);
    on.filter_map(|block| Some((block.bounds?, block.name.clone())))
}

/// Middles and names of what else comes through a face.
fn others_through<'a>(
    scene: Scene<'a>,
    index: usize,
    but: PenetrationId,
) -> impl Iterator<Item = (DVec2, String)> + use<'a> {
    let others = scene.layout.penetrations.iter().filter(move |other| other.id != but);
    others.filter_map(move |other| Some((other.on_face(index)?.bounds.centre(), other.name.clone())))
}
