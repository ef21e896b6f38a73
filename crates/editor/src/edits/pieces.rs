//! Copies of blocks and penetrations, to be placed on this roof or another.

use super::standing::{face_at, keep_on_face, room_of};
use crate::Selection;
use crate::state::Group;
use chalkcourse_geometry::{DVec2, Polygon, Rect, slide_in};
use chalkcourse_job::{
    Block, BlockId, Edit, FaceId, Penetration, PenetrationId, Piece, Pieces, Resolved, apply,
};
use chalkcourse_layout::{Layout, PlacedBlock};
use chalkcourse_limits::{Against, KeepOut, KeepOutContext, keep_outs};

/// The selection as a group: a module stands for its block.
pub(crate) fn group_of(held: Selection, group: &Group) -> Group {
    let mut all = group.clone();
    all.modules.clear();
    all.blocks.extend(held.block());
    if let Selection::Penetration(id) = held {
        all.penetrations.insert(id);
    }
    all
}

/// Copies of blocks and penetrations; `None` if the group has none.
pub(crate) fn taken(job: &Resolved, layout: &Layout, group: &Group) -> Option<Pieces> {
    let blocks: Vec<&Block> = group.blocks.iter().filter_map(|id| job.block(*id)).collect();
    let penetrations: Vec<&Penetration> =
        group.penetrations.iter().filter_map(|id| job.penetration(*id)).collect();
    let home = |penetration: &Penetration| {
        let home = layout.penetration(penetration.id)?.home?;
        layout.faces.get(home).map(|face| face.id)
    };
    let mut faces: Vec<Option<FaceId>> = blocks.iter().map(|block| Some(block.face)).collect();
    faces.extend(penetrations.iter().map(|penetration| home(penetration)));
    let first =
        faces.first().copied().flatten().filter(|first| faces.iter().all(|face| *face == Some(*first)));
    let plane = first.and_then(|id| layout.face(id)).map(|(_, face)| face.plane);
    // Centres in the frame of the single face, otherwise in plan.
    let of_block = |block: &Block| {
        let middle = room_of(job, layout, block)?.centre();
        let own = layout.face(block.face)?.1.plane;
        Some(if plane.is_some() { middle } else { own.to_plan(middle) })
    };
    let of_penetration =
        |penetration: &Penetration| plane.map_or(penetration.at, |p| p.to_frame(penetration.at));
    let blocks: Vec<(DVec2, Block)> =
        blocks.into_iter().filter_map(|block| Some((of_block(block)?, block.clone()))).collect();
    let penetrations: Vec<(DVec2, Penetration)> =
        penetrations.into_iter().map(|p| (of_penetration(p), p.clone())).collect();
    let middles = blocks.iter().map(|(at, _)| *at).chain(penetrations.iter().map(|(at, _)| *at));
    let middle = Rect::around(middles)?.centre();
    let blocks = blocks.into_iter().map(|(at, what)| Piece { from_middle: at - middle, what });
    let penetrations = penetrations.into_iter().map(|(at, what)| Piece { from_middle: at - middle, what });
    Some(Pieces {
        of_one_face: plane.is_some(),
        blocks: blocks.collect(),
        penetrations: penetrations.collect(),
    })
}

/// A placement of pieces, still with their original names and ids.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Placement {
    pub(crate) blocks: Vec<Block>,
    pub(crate) penetrations: Vec<Penetration>,
}

/// Pieces with their centre as close as possible to a point in plan, none over the edge of a face. `None` if there is
/// no room for them, or no face.
pub(crate) fn standing(job: &Resolved, layout: &Layout, pieces: &Pieces, plan: DVec2) -> Option<Placement> {
    let stand = if pieces.of_one_face {
        on_face(job, layout, pieces, face_at(layout, plan)?, plan)?
    } else {
        in_plan(job, layout, pieces, plan)?
    };
    (!stand.blocks.is_empty() || !stand.penetrations.is_empty()).then_some(stand)
}

fn on_face(job: &Resolved, layout: &Layout, pieces: &Pieces, face: FaceId, plan: DVec2) -> Option<Placement> {
    let (_, on) = layout.face(face)?;
    let middle = on.plane.to_frame(plan);
    let mut stand = Placement::default();
    let mut around: Option<Rect> = None;
    let mut take = |room: Rect| around = Some(around.map_or(room, |all| all.union(&room)));
    for piece in &pieces.blocks {
        let block = centred(job, layout, &Block { face, ..piece.what.clone() }, middle + piece.from_middle)?;
        take(room_of(job, layout, &block)?);
        stand.blocks.push(block);
    }
    for piece in &pieces.penetrations {
        let at = on.plane.to_plan(middle + piece.from_middle);
        let penetration = Penetration { at, ..piece.what.clone() };
        take(room_of_penetration(&penetration, middle + piece.from_middle));
        stand.penetrations.push(penetration);
    }
    let by = slide_in(&on.frame, around?)?;
    for block in &mut stand.blocks {
        block.at += by;
    }
    for penetration in &mut stand.penetrations {
        penetration.at = on.plane.to_plan(on.plane.to_frame(penetration.at) + by);
    }
    Some(stand)
}

fn in_plan(job: &Resolved, layout: &Layout, pieces: &Pieces, plan: DVec2) -> Option<Placement> {
    let blocks = pieces.blocks.iter().map(|piece| {
        let middle = plan + piece.from_middle;
        let face = face_at(layout, middle)?;
        let (_, on) = layout.face(face)?;
        let mut block =
            centred(job, layout, &Block { face, ..piece.what.clone() }, on.plane.to_frame(middle))?;
        keep_on_face(job, layout, &mut block).then_some(block)
    });
    let penetrations = pieces.penetrations.iter().map(|piece| {
        let at = plan + piece.from_middle;
        face_at(layout, at).map(|_| Penetration { at, ..piece.what.clone() })
    });
    Some(Placement {
        blocks: blocks.collect::<Option<_>>()?,
        penetrations: penetrations.collect::<Option<_>>()?,
    })
}

/// The block with the centre of its modules at a point of its face's frame.
fn centred(job: &Resolved, layout: &Layout, block: &Block, middle: DVec2) -> Option<Block> {
    let now = room_of(job, layout, block)?.centre();
    Some(Block { at: block.at + middle - now, ..block.clone() })
}

/// The bounds of a penetration around its centre, in the frame of a face.
fn room_of_penetration(penetration: &Penetration, middle: DVec2) -> Rect {
    let outline: Polygon = chalkcourse_layout::outline_on_deck(&penetration.shape);
    let half = outline.bounds().map_or(DVec2::ZERO, |bounds| bounds.size() / 2.0);
    Rect { min: middle - half, max: middle + half }
}

/// The edit that places pieces, with new names and ids, and what it adds.
pub(crate) fn set_down(job: &Resolved, stand: &Placement) -> Option<(Edit, Group)> {
    let mut group = Group::default();
    let mut edits = Vec::new();
    let mut next = job.clone();
    for block in &stand.blocks {
        let id = BlockId(next.next_id);
        let name = crate::text::new_block_name(&next);
        let edit = Edit::PutBlock(Block { id, name, ..block.clone() });
        next = apply(&next, &edit).ok()?;
        edits.push(edit);
        group.blocks.insert(id);
    }
    for penetration in &stand.penetrations {
        let id = PenetrationId(next.next_id);
        let name = crate::text::new_penetration_name(&next, penetration.kind);
        let edit = Edit::PutPenetration(Penetration { id, name, ..penetration.clone() });
        next = apply(&next, &edit).ok()?;
        edits.push(edit);
        group.penetrations.insert(id);
    }
    (!edits.is_empty()).then_some((Edit::Several(edits), group))
}

/// A copy beside pieces on one face: to the right, left, below or above, whichever is closest among those where the
/// modules clear all keep-outs, otherwise among those where they clear other blocks. `None` if there is no such
/// position.
pub(crate) fn beside(job: &Resolved, layout: &Layout, group: &Group) -> Option<Placement> {
    let pieces = taken(job, layout, group).filter(|pieces| pieces.of_one_face)?;
    let face = match (pieces.blocks.first(), pieces.penetrations.first()) {
        (Some(block), _) => block.what.face,
        (None, Some(penetration)) => face_at(layout, penetration.what.at)?,
        (None, None) => return None,
    };
    let (index, on) = layout.face(face)?;
    let rooms = pieces.blocks.iter().filter_map(|piece| room_of(job, layout, &piece.what));
    let pipes = pieces
        .penetrations
        .iter()
        .map(|piece| room_of_penetration(&piece.what, on.plane.to_frame(piece.what.at)));
    let around = rooms.chain(pipes).reduce(|a, b| a.union(&b))?;
    let parts: Vec<_> = pieces
        .blocks
        .iter()
        .flat_map(|piece| {
            let placed = PlacedBlock::of(&piece.what, index, &job.kit);
            let rows = placed.stretches().collect::<Vec<_>>();
            rows.into_iter().map(|(row, rect)| chalkcourse_geometry::fit::Part { rect, lowest: row == 0 })
        })
        .collect();
    let keep_outs = keep_outs(job, layout, index, &KeepOutContext::as_laid(job, layout));
    let gap = if parts.is_empty() { LOOSE } else { 0.0 };
    let past = |counts: &dyn Fn(&KeepOut) -> bool| {
        let ways = [DVec2::X, DVec2::NEG_X, DVec2::NEG_Y, DVec2::Y].into_iter();
        let by = ways.filter_map(|way| {
            let least = (around.size() * way.abs()).element_sum() + gap;
            let stretches =
                keep_outs.iter().filter(|it| counts(it)).flat_map(|it| it.too_near_along(&parts, way));
            let by = way * beyond(stretches.collect(), least);
            chalkcourse_geometry::holds(&on.frame, around.moved(by)).then_some(by)
        });
        by.min_by(|a, b| a.length().total_cmp(&b.length()))
    };
    // Clear of everything; otherwise clear of other blocks, and the findings report the rest.
    let by = past(&|_| true).or_else(|| past(&|it| matches!(it.against, Against::Block(_))))?;
    let moved = |at: DVec2| on.plane.to_plan(on.plane.to_frame(at) + by);
    Some(Placement {
        blocks: pieces.blocks.into_iter().map(|p| Block { at: p.what.at + by, ..p.what }).collect(),
        penetrations: pieces
            .penetrations
            .into_iter()
            .map(|p| Penetration { at: moved(p.what.at), ..p.what })
            .collect(),
    })
}

/// The first position from `least` on that is in none of the intervals.
fn beyond(mut stretches: Vec<(f64, f64)>, least: f64) -> f64 {
    stretches.sort_by(|a, b| a.0.total_cmp(&b.0));
    let past = |far, (from, to)| if from < far - CLOSE && far < to - CLOSE { to } else { far };
    stretches.into_iter().fold(least, past)
}

/// Distance between two penetrations, metres, so that a boot fits between them. Common practice, no source.
const LOOSE: f64 = 0.3;
/// Positions within this distance of the end of an interval count as outside, metres.
const CLOSE: f64 = 1e-6;
