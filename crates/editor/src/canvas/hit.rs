use crate::Selection;
use crate::state::{PartPlace, Space};
use chalkcourse_geometry::{DVec2, Plane, Rect, dvec2};
use chalkcourse_job::{
    Block, BlockId, BoxId, Cell, FaceId, JunctionBox, ModuleAt, PartId, PenetrationId, Resolved, RoofPart,
};
use chalkcourse_layout::Layout;
use chalkcourse_wiring::face_of_box;
use egui::{CursorIcon, Pos2, Vec2};

/// What is under the pointer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Hit {
    Nothing,
    /// A handle of the selected block; −1, 0 or 1 along u and v.
    Handle {
        block: BlockId,
        side: (i8, i8),
    },
    /// The grip at the end of a row of the selected block.
    RowEnd {
        block: BlockId,
        row: u32,
    },
    Corner {
        face: FaceId,
        ring: usize,
        corner: usize,
    },
    Side {
        face: FaceId,
        ring: usize,
        side: usize,
    },
    Penetration(PenetrationId),
    JunctionBox(BoxId),
    /// A cell of a block, with a module or (in the selected block) without.
    Module {
        block: BlockId,
        cell: Cell,
    },
    Face(FaceId),
    /// A corner or side of the selected part.
    Part(PartId, PartPlace),
}

impl Hit {
    /// What a click selects. A module is only selected if its block already is.
    pub(crate) fn selection(self, held: Selection) -> Selection {
        match self {
            Self::Nothing => Selection::Nothing,
            Self::Handle { block, .. } | Self::RowEnd { block, .. } => Selection::Block(block),
            Self::Corner { face, ring, corner } => Selection::Corner { face, ring, corner },
            Self::Side { face, ring, side } => Selection::Side { face, ring, side },
            Self::Penetration(id) => Selection::Penetration(id),
            Self::JunctionBox(id) => Selection::JunctionBox(id),
            Self::Module { block, cell } if held.block() == Some(block) => Selection::Module { block, cell },
            Self::Module { block, .. } => Selection::Block(block),
            Self::Face(face) => Selection::Face(face),
            Self::Part(part, place) => Selection::Part(part, place),
        }
    }
}

/// The handles of a block: all positions on its border.
pub(crate) const HANDLES: [(i8, i8); 8] =
    [(-1, -1), (0, -1), (1, -1), (-1, 0), (1, 0), (-1, 1), (0, 1), (1, 1)];

/// The cursor over a handle.
pub(super) fn resize_cursor(side: (i8, i8)) -> CursorIcon {
    match side {
        (0, _) => CursorIcon::ResizeVertical,
        (_, 0) => CursorIcon::ResizeHorizontal,
        (a, b) if a == b => CursorIcon::ResizeNeSw,
        _ => CursorIcon::ResizeNwSe,
    }
}

/// Position of a block's handle on the screen: a little outside, so that modules near it can still be clicked.
pub(crate) fn handle_at(space: &Space, plane: &Plane, bounds: Rect, side: (i8, i8)) -> Pos2 {
    let part = dvec2(f64::from(side.0), f64::from(side.1));
    let at = bounds.centre() + bounds.size() / 2.0 * part;
    outside(space, plane, at, part, if space.fingers { 20.0 } else { 7.0 })
}

/// Position of a row's grip on the screen.
pub(crate) fn row_end_at(space: &Space, plane: &Plane, row: Rect) -> Pos2 {
    outside(
        space,
        plane,
        dvec2(row.max.x, row.centre().y),
        dvec2(1.0, 0.0),
        if space.fingers { 62.0 } else { 22.0 },
    )
}

/// A point of a frame on the screen, moved by `points` in a direction of the frame.
fn outside(space: &Space, plane: &Plane, at: DVec2, toward: DVec2, points: f32) -> Pos2 {
    let here = space.screen_from_frame(plane, at);
    let there = space.screen_from_frame(plane, at + toward.normalize_or_zero());
    here + (there - here).normalized() * points
}

/// The rectangle of a cell of a block, with or without a module.
pub(crate) fn cell_rect(job: &Resolved, block: &Block, cell: Cell) -> Rect {
    Rect::at(block.corner_of(cell, &job.kit), block.module_size(&job.kit))
}

/// The bounding rectangle of a row of a block, including cells without a module.
pub(crate) fn row_rect(job: &Resolved, block: &Block, row: u32) -> Rect {
    let first = cell_rect(job, block, Cell { row, column: 0 });
    first.union(&cell_rect(job, block, Cell { row, column: block.columns.saturating_sub(1) }))
}

/// The bounding rectangle of all rows of a block.
pub(crate) fn block_rect(job: &Resolved, block: &Block) -> Rect {
    let first = row_rect(job, block, 0);
    (1..block.rows).map(|row| row_rect(job, block, row)).fold(first, |all, row| all.union(&row))
}

/// What is at a point of the screen. Handles take precedence, then small objects over large ones.
pub(crate) fn at(space: &Space, job: &Resolved, layout: &Layout, held: Selection, pos: Pos2) -> Hit {
    let plan = space.plan(pos);
    block_handle(space, job, layout, held, pos)
        .or_else(|| on_part(space, job, held, pos))
        .or_else(|| corner(space, job, held.face(job), pos))
        .or_else(|| junction_box(space, job, layout, pos))
        .or_else(|| penetration(space, layout, plan, pos))
        .or_else(|| module(space, job, layout, held, plan))
        .or_else(|| side(space, job, layout, held.face(job), pos))
        .or_else(|| face(space, layout, plan).map(|(id, _)| Hit::Face(id)))
        .unwrap_or(Hit::Nothing)
}

pub(super) fn near(space: &Space, a: Pos2, b: Pos2) -> bool {
    (a - b).length() <= space.grab()
}

/// The nearest of several points that can be grabbed, if it is close enough.
pub(super) fn nearest<T>(space: &Space, places: impl Iterator<Item = (T, Pos2)>, pos: Pos2) -> Option<T> {
    let away = |at: Pos2| (at - pos).length();
    let near = places.filter(|(_, at)| near(space, *at, pos));
    near.min_by(|(_, a), (_, b)| away(*a).total_cmp(&away(*b))).map(|(what, _)| what)
}

fn block_handle(space: &Space, job: &Resolved, layout: &Layout, held: Selection, pos: Pos2) -> Option<Hit> {
    let block = job.block(held.block()?)?;
    let (index, face) = layout.face(block.face)?;
    if !space.shows(index) {
        return None;
    }
    let bounds = block_rect(job, block);
    let handles = HANDLES.into_iter().map(|side| (side, handle_at(space, &face.plane, bounds, side)));
    if let Some(side) = nearest(space, handles, pos) {
        return Some(Hit::Handle { block: block.id, side });
    }
    let ends = (0..block.rows.min(200)).filter(|_| block.rows > 1);
    let ends = ends.map(|row| (row, row_end_at(space, &face.plane, row_rect(job, block, row))));
    nearest(space, ends, pos).map(|row| Hit::RowEnd { block: block.id, row })
}

/// The corners of a drawn face's outline, with ring and index; none for a part's face.
pub(crate) fn corners(job: &Resolved, face: FaceId) -> impl Iterator<Item = (usize, usize, DVec2)> {
    job.face(face).filter(|face| face.from.is_none()).into_iter().flat_map(|face| {
        face.outline
            .rings()
            .enumerate()
            .flat_map(|(ring, corners)| corners.iter().enumerate().map(move |(at, &p)| (ring, at, p)))
    })
}

fn corner(space: &Space, job: &Resolved, held: Option<FaceId>, pos: Pos2) -> Option<Hit> {
    let face = held?;
    // Corners are only moved in plan, where adjacent faces are visible.
    if space.face_on.is_some() {
        return None;
    }
    let places = corners(job, face).map(|(ring, corner, p)| ((ring, corner), space.screen_from_plan(p)));
    nearest(space, places, pos).map(|(ring, corner)| Hit::Corner { face, ring, corner })
}

fn side(space: &Space, job: &Resolved, layout: &Layout, held: Option<FaceId>, pos: Pos2) -> Option<Hit> {
    let face = held?;
    if !space.shows(layout.face(face)?.0) {
        return None;
    }
    job.face(face)?
        .outline
        .sides()
        .find(|&(_, _, a, b)| {
            distance(pos, space.screen_from_plan(a), space.screen_from_plan(b)) <= space.grab() * 0.7
        })
        .map(|(ring, side, _, _)| Hit::Side { face, ring, side })
}

/// Distance of a point on the screen from a line segment.
pub(super) fn distance(p: Pos2, a: Pos2, b: Pos2) -> f32 {
    let along: Vec2 = b - a;
    let length = along.length_sq();
    let part = if length > 0.0 { ((p - a).dot(along) / length).clamp(0.0, 1.0) } else { 0.0 };
    (a + along * part - p).length()
}

fn penetration(space: &Space, layout: &Layout, plan: DVec2, pos: Pos2) -> Option<Hit> {
    layout
        .penetrations
        .iter()
        .filter(|p| space.face_on.is_none_or(|(face, _)| p.on_face(face).is_some()))
        .find(|p| {
            let middle = p.plan.bounds().map(|b| space.screen_from_plan(b.centre()));
            p.plan.contains(plan) || middle.is_some_and(|middle| near(space, middle, pos))
        })
        .map(|p| Hit::Penetration(p.id))
}

/// Whether a junction box is on a face that is drawn.
pub(super) fn shows_box(space: &Space, layout: &Layout, junction: &JunctionBox) -> bool {
    match space.face_on {
        None => true,
        Some((shown, _)) => face_of_box(&layout.roof, junction).is_some_and(|(face, _)| face == shown),
    }
}

fn junction_box(space: &Space, job: &Resolved, layout: &Layout, pos: Pos2) -> Option<Hit> {
    let shown = job.boxes.iter().filter(|junction| shows_box(space, layout, junction));
    let places = shown.map(|junction| (junction.id, space.screen_from_plan(junction.at)));
    nearest(space, places, pos).map(Hit::JunctionBox)
}

/// The module at a place in plan.
pub(super) fn module_at(space: &Space, layout: &Layout, plan: DVec2) -> Option<ModuleAt> {
    match any_module(space, layout, plan)? {
        Hit::Module { block, cell } => Some(ModuleAt { block, cell }),
        _ => None,
    }
}

fn module(space: &Space, job: &Resolved, layout: &Layout, held: Selection, plan: DVec2) -> Option<Hit> {
    // The selected block is on top, and its cells without a module can be clicked too.
    if let Some(block) = held.block().and_then(|id| job.block(id))
        && let Some((index, face)) = layout.face(block.face)
        && space.shows(index)
        && layout.roof.faces.get(index).is_some()
    {
        let frame = face.plane.to_frame(plan);
        let found = (0..block.rows)
            .flat_map(|row| (0..block.columns).map(move |column| Cell { row, column }))
            .find(|&cell| cell_rect(job, block, cell).contains(frame));
        if let Some(cell) = found {
            return Some(Hit::Module { block: block.id, cell });
        }
    }
    any_module(space, layout, plan)
}

fn any_module(space: &Space, layout: &Layout, plan: DVec2) -> Option<Hit> {
    layout.blocks.iter().rev().filter(|placed| space.shows(placed.face)).find_map(|placed| {
        let frame = layout.roof.faces.get(placed.face)?.plane.to_frame(plan);
        if !placed.bounds?.contains(frame) {
            return None;
        }
        let module = placed.modules.iter().find(|module| module.rect.contains(frame))?;
        Some(Hit::Module { block: placed.id, cell: module.cell })
    })
}

/// The face at a plan point, the upper one if several overlap; in the face-on view only the face shown.
pub(crate) fn face(space: &Space, layout: &Layout, plan: DVec2) -> Option<(FaceId, Plane)> {
    layout
        .roof
        .faces
        .iter()
        .zip(&layout.faces)
        .enumerate()
        .filter(|(index, (face, _))| space.shows(*index) && face.plan.contains(plan))
        .max_by(|(_, (a, _)), (_, (b, _))| a.plane.height_at(plan).total_cmp(&b.plane.height_at(plan)))
        .map(|(_, (face, placed))| (placed.id, face.plane))
}

/// The selected part, or the part of the selected face.
pub(super) fn part_held(job: &Resolved, selection: Selection) -> Option<&RoofPart> {
    let id = match selection {
        Selection::Part(id, _) => id,
        Selection::Face(face) | Selection::Side { face, .. } | Selection::Corner { face, .. } => {
            job.face(face)?.from?.part
        }
        _ => return None,
    };
    job.part(id)
}

/// The corner or side of the selected part at a point of the screen.
fn on_part(space: &Space, job: &Resolved, selection: Selection, pos: Pos2) -> Option<Hit> {
    let part = part_held(job, selection).filter(|_| space.face_on.is_none())?;
    let places = part_corners(part).map(|(ring, corner, p)| ((ring, corner), space.screen_from_plan(p)));
    if let Some((ring, corner)) = nearest(space, places, pos) {
        return Some(Hit::Part(part.id, PartPlace::Corner { ring, corner }));
    }
    // If only a face is selected, the sides of its part would cover those of the face.
    if !matches!(selection, Selection::Part(..)) {
        return None;
    }
    part.outline
        .sides()
        .find(|&(_, _, a, b)| {
            distance(pos, space.screen_from_plan(a), space.screen_from_plan(b)) <= space.grab() * 0.7
        })
        .map(|(ring, side, ..)| Hit::Part(part.id, PartPlace::Side { ring, side }))
}

/// All corners of a part with ring and index.
pub(super) fn part_corners(part: &RoofPart) -> impl Iterator<Item = (usize, usize, DVec2)> {
    part.outline.sides().map(|(ring, corner, p, _)| (ring, corner, p))
}
