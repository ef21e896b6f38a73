//! Where a block can be: on its face, and never over its edge.

use chalkcourse_geometry::{DVec2, Rect, holds, slide_in};
use chalkcourse_job::{Block, FaceId, Resolved};
use chalkcourse_layout::{Layout, PlacedBlock};

/// Bounds of a block's modules in the frame of its face; `None` if all are switched off, or its face does not exist.
pub(crate) fn room_of(job: &Resolved, layout: &Layout, block: &Block) -> Option<Rect> {
    let (index, _) = layout.face(block.face)?;
    PlacedBlock::of(block, index, &job.kit).bounds
}

/// The face at a plan point, the upper one if several overlap.
pub(crate) fn face_at(layout: &Layout, plan: DVec2) -> Option<FaceId> {
    let all = layout.roof.faces.iter().zip(&layout.faces);
    all.filter(|(face, _)| face.sound && face.plan.contains(plan))
        .max_by(|(a, _), (b, _)| a.plane.height_at(plan).total_cmp(&b.plane.height_at(plan)))
        .map(|(_, placed)| placed.id)
}

/// Slides a block by the shortest distance so that no module extends over the edge of its face. Returns false, without
/// changing it, if it does not fit.
pub(crate) fn keep_on_face(job: &Resolved, layout: &Layout, block: &mut Block) -> bool {
    let slide = || {
        let (_, face) = layout.face(block.face).filter(|(_, face)| face.sound)?;
        slide_in(&face.frame, room_of(job, layout, block)?)
    };
    let by = slide();
    block.at += by.unwrap_or(DVec2::ZERO);
    by.is_some()
}

/// The block, or if the face has no room for it, the largest smaller one that fits, by number of modules.
pub(crate) fn largest_on_face(job: &Resolved, layout: &Layout, block: &Block) -> Option<Block> {
    let mut sizes: Vec<(u32, u32)> =
        (1..=block.rows).flat_map(|rows| (1..=block.columns).map(move |columns| (rows, columns))).collect();
    sizes.sort_by_key(|(rows, columns)| std::cmp::Reverse(rows * columns));
    sizes.into_iter().find_map(|(rows, columns)| {
        let mut smaller = block.clone().with_size(rows, columns);
        keep_on_face(job, layout, &mut smaller).then_some(smaller)
    })
}

/// The block with rows and columns removed until it is on its face, with one corner fixed: left or right, lower or
/// upper.
pub(crate) fn cut_to_face(
    job: &Resolved,
    layout: &Layout,
    block: &Block,
    (right, upper): (bool, bool),
) -> Option<Block> {
    let (_, face) = layout.face(block.face).filter(|(_, face)| face.sound)?;
    let spacing = block.spacing(&job.kit);
    let cut = |rows: u32, columns: u32| {
        let mut smaller = block.clone().with_size(rows, columns);
        let gone =
            |now: u32, then: u32, end: bool| if end { f64::from(then.saturating_sub(now)) } else { 0.0 };
        smaller.at +=
            DVec2::new(gone(columns, block.columns, right), gone(rows, block.rows, upper)) * spacing;
        smaller
    };
    let mut best: Option<Block> = None;
    for rows in (1..=block.rows).rev() {
        let most = best.as_ref().map_or(0, |best| best.rows * best.columns);
        for columns in (1..=block.columns).rev().take_while(|columns| rows * columns > most) {
            let smaller = cut(rows, columns);
            if room_of(job, layout, &smaller).is_some_and(|room| holds(&face.frame, room)) {
                best = Some(smaller);
                break;
            }
        }
    }
    best
}
