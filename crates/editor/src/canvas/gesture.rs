//! Drags: computes the edit from the start of a drag and the pointer position.

use super::hit::Hit;
use super::snap::{self, Guide, Scene};
use crate::edits::standing::{face_at, keep_on_face, largest_on_face};
use crate::edits::{self, Growth, corners_at, grown, new_block};
use crate::state::{Group, PartPlace, PictureMode};
use crate::{Selection, text};
use chalkcourse_geometry::{DVec2, Length, Plane};
use chalkcourse_job::{
    Block, BlockId, Crop, Edit, Face, FaceId, JunctionBox, PartId, Penetration, PlanMove, Resolved, RoofPart,
    Underlay,
};
use chalkcourse_layout::Layout;
use chalkcourse_words::Said;

/// What is being dragged, in its state at the start of the drag.
#[derive(Clone, Debug)]
pub(crate) enum Gesture {
    MoveBlock {
        start: Block,
        plane: Plane,
        grab: DVec2,
    },
    ResizeBlock {
        start: Block,
        plane: Plane,
        grab: DVec2,
        side: (i8, i8),
    },
    ShiftRow {
        start: Block,
        plane: Plane,
        grab: DVec2,
        row: u32,
    },
    MoveCorner {
        start: Box<Face>,
        ring: usize,
        corner: usize,
    },
    MovePenetration {
        start: Penetration,
        grab: DVec2,
    },
    MoveBox {
        start: JunctionBox,
        grab: DVec2,
    },
    /// Modules joined to a circuit, one after the other.
    String,
    NewBlock {
        face: FaceId,
        plane: Plane,
        from: DVec2,
    },
    Tape {
        from: DVec2,
    },
    /// A selection box; `beside` is the selection that it adds to.
    Box {
        from: DVec2,
        beside: Group,
    },
    /// Several objects at once.
    MoveGroup {
        start: Group,
        grab: DVec2,
    },
    /// A corner of a part's footprint.
    PartCorner {
        start: Box<RoofPart>,
        ring: usize,
        corner: usize,
    },
    /// Whole parts.
    MovePart {
        name: String,
        parts: Vec<PartId>,
        grab: DVec2,
    },
    /// The picture under the plan.
    Picture {
        start: Box<Underlay>,
        mode: PictureMode,
        grab: DVec2,
    },
    /// The drag was cancelled; its remainder does nothing.
    Dropped,
}

/// The drag in progress.
#[derive(Debug, Default)]
pub(super) struct Drag {
    /// What is being dragged.
    pub(super) gesture: Option<Gesture>,
    /// Guides that show what the dragged or drawn object snapped to.
    pub(super) guides: Vec<Guide>,
}

impl Drag {
    pub(super) fn end(&mut self) {
        self.gesture = None;
        self.guides.clear();
    }

    /// Cancels the drag; its remainder does nothing. Returns false if there is none, or it was already cancelled.
    pub(super) fn give_up(&mut self) -> bool {
        let goes_on = self.gesture.as_ref().is_some_and(|gesture| !matches!(gesture, Gesture::Dropped));
        if goes_on {
            self.gesture = Some(Gesture::Dropped);
            self.guides.clear();
        }
        goes_on
    }
}

/// The result of a drag so far.
pub(crate) struct Step {
    pub(crate) label: Said,
    pub(crate) edit: Edit,
    pub(crate) guides: Vec<Guide>,
}

impl Gesture {
    /// The drag that starts on a hit: the selected part takes precedence over what is on it.
    pub(crate) fn begin(
        hit: Hit,
        job: &Resolved,
        layout: &Layout,
        held: Selection,
        plan: DVec2,
    ) -> Option<Self> {
        begin_part(hit, job, held, plan).or_else(|| Self::begin_thing(hit, job, layout, plan))
    }

    fn begin_thing(hit: Hit, job: &Resolved, layout: &Layout, plan: DVec2) -> Option<Self> {
        let on_face = |id: BlockId| {
            let start = job.block(id)?.clone();
            let plane = layout.face(start.face)?.1.plane;
            let grab = plane.to_frame(plan);
            Some((start, plane, grab))
        };
        match hit {
            Hit::Handle { block, side } => {
                let (start, plane, grab) = on_face(block)?;
                Some(Self::ResizeBlock { start, plane, grab, side })
            }
            Hit::RowEnd { block, row } => {
                let (start, plane, grab) = on_face(block)?;
                Some(Self::ShiftRow { start, plane, grab, row })
            }
            Hit::Module { block, .. } => {
                let (start, plane, grab) = on_face(block)?;
                Some(Self::MoveBlock { start, plane, grab })
            }
            Hit::Corner { face, ring, corner } => {
                Some(Self::MoveCorner { start: Box::new(job.face(face)?.clone()), ring, corner })
            }
            Hit::Penetration(id) => {
                let start = job.penetration(id)?.clone();
                let grab = plan - start.at;
                Some(Self::MovePenetration { start, grab })
            }
            Hit::JunctionBox(id) => {
                let start = job.junction_box(id)?.clone();
                let grab = plan - start.at;
                Some(Self::MoveBox { start, grab })
            }
            Hit::Face(_) | Hit::Side { .. } | Hit::Part(..) | Hit::Nothing => None,
        }
    }

    /// The result of the drag with the pointer at `plan`. `free` disables snapping, `alone` leaves coincident corners
    /// of other faces in place.
    pub(crate) fn step(&self, scene: Scene, plan: DVec2, free: bool, alone: bool) -> Option<Step> {
        let put = |label: Said, block: Block, guides| Step { label, edit: Edit::PutBlock(block), guides };
        match self {
            Self::MoveGroup { start, grab } => {
                let label = text::move_of(text::group_words(start));
                let by = edits::group::within_faces(start, scene.job, scene.layout, plan - *grab);
                let edit = edits::group::moved(start, scene.job, scene.layout, by)?;
                Some(Step { label, edit, guides: Vec::new() })
            }
            Self::MoveBlock { start, plane, grab } => {
                let mut block = moved_block(scene, start, plane, *grab, plan);
                let mut guides = snapped(scene, &mut block, free);
                let there = block.at;
                keep_on_face(scene.job, scene.layout, &mut block);
                // If the edge held it back, it did not stop because of the snap.
                if there.distance(block.at) > 1e-6 {
                    guides.clear();
                }
                Some(put(text::move_of(text::block_heading(&start.name)), block, guides))
            }
            Self::ResizeBlock { start, plane, grab, side } => {
                let spacing = start.spacing(&scene.job.kit);
                let moved = (plane.to_frame(plan) - *grab) / spacing;
                let added = |side: i8, moved: f64| (f64::from(side) * moved).round() as i64;
                let (along, up) = (added(side.0, moved.x), added(side.1, moved.y));
                let (left, right) = if side.0 < 0 { (along, 0) } else { (0, along) };
                let (bottom, top) = if side.1 < 0 { (up, 0) } else { (0, up) };
                let block = grown(start, scene.job, Growth { left, right, bottom, top });
                Some(put(text::resize_of(text::block_heading(&start.name)), block, Vec::new()))
            }
            Self::ShiftRow { start, plane, grab, row } => {
                let moved = plane.to_frame(plan).x - grab.x;
                let wanted = start.shift(*row).metres() + moved;
                let (by, guides) =
                    if free { (wanted, Vec::new()) } else { snap::row(scene, start, *row, wanted) };
                Some(put(
                    text::shift_of(text::block_heading(&start.name)),
                    start.with_shift(*row, Length::from_metres(by)),
                    guides,
                ))
            }
            Self::MoveCorner { start, ring, corner } => {
                move_corner(scene, start, (*ring, *corner), plan, free, alone)
            }
            Self::MovePenetration { start, grab } => {
                let mut penetration = Penetration { at: plan - *grab, ..start.clone() };
                let mut guides = Vec::new();
                if !free {
                    (penetration.at, guides) = snap::penetration(scene, &penetration);
                }
                Some(Step {
                    label: text::move_of(&start.name),
                    edit: Edit::PutPenetration(penetration),
                    guides,
                })
            }
            Self::MoveBox { start, grab } => Some(Step {
                label: text::move_of(&start.name),
                edit: Edit::PutBox(JunctionBox { at: plan - *grab, ..start.clone() }),
                guides: Vec::new(),
            }),
            Self::NewBlock { face, plane, from } => {
                let to = plane.to_frame(plan);
                let wide = new_block(scene.job, *face, *from);
                let fits = ((to - *from).abs() / wide.spacing(&scene.job.kit)).floor();
                let wide = wide.with_size(fits.y.min(100.0) as u32, fits.x.min(100.0) as u32);
                // The point where the button went down stays a corner of the block.
                let (left, down) = (to.x < from.x, to.y < from.y);
                let back = edits::standing::room_of(scene.job, scene.layout, &wide).map(|room| room.size());
                let back = back.unwrap_or(DVec2::ZERO) * DVec2::new(f64::from(left), f64::from(down));
                let wide = Block { at: wide.at - back, ..wide };
                let cut = edits::standing::cut_to_face(scene.job, scene.layout, &wide, (left, down));
                let mut block =
                    cut.or_else(|| largest_on_face(scene.job, scene.layout, &wide.with_size(1, 1)))?;
                let guides = snapped(scene, &mut block, free);
                keep_on_face(scene.job, scene.layout, &mut block);
                Some(put(text::place_of(text::block_heading(&block.name)), block, guides))
            }
            Self::PartCorner { start, ring, corner } => {
                part_corner_step(scene, start, *ring, *corner, plan, free)
            }
            Self::MovePart { name, parts, grab } => Some(part_step(name, parts, plan - *grab)),
            Self::Picture { start, mode, grab } => picture_step(start, *mode, *grab, plan),
            Self::Tape { .. } | Self::Box { .. } | Self::String | Self::Dropped => None,
        }
    }
}

/// A block grabbed at `grab` in the frame of its face and dragged to a point in plan: on the face there, or on its own
/// face if there is none.
fn moved_block(scene: Scene, start: &Block, plane: &Plane, grab: DVec2, plan: DVec2) -> Block {
    let on_own = Block { at: start.at + plane.to_frame(plan) - grab, ..start.clone() };
    let over = || {
        let face = face_at(scene.layout, plan).filter(|face| *face != start.face && !scene.one_face)?;
        let (_, on) = scene.layout.face(face)?;
        // The grabbed point stays under the pointer, relative to the centre of the block.
        let middle = edits::standing::room_of(scene.job, scene.layout, start)?.centre();
        let at = on.plane.to_frame(plan) - (grab - middle) - (middle - start.at);
        let mut block = Block { face, at, ..start.clone() };
        keep_on_face(scene.job, scene.layout, &mut block).then_some(block)
    };
    over().unwrap_or(on_own)
}

/// Snaps a block.
pub(crate) fn snapped(scene: Scene, block: &mut Block, free: bool) -> Vec<Guide> {
    if free {
        return Vec::new();
    }
    let (at, guides) = snap::block(scene, block);
    block.at = at;
    guides
}

fn move_corner(
    scene: Scene,
    start: &Face,
    (ring, corner): (usize, usize),
    plan: DVec2,
    free: bool,
    alone: bool,
) -> Option<Step> {
    let corners = start.outline.rings().nth(ring)?;
    let from = *corners.get(corner)?;
    let together = if alone { vec![(start.id, ring, corner)] } else { corners_at(scene.job, from) };
    let moving: Vec<FaceId> = together.iter().map(|(face, ..)| *face).collect();
    let (to, guides) = if free {
        (plan, Vec::new())
    } else {
        let count = corners.len();
        let beside = [corners[(corner + count - 1) % count], corners[(corner + 1) % count]];
        snap::point(scene, plan, &beside, &[], &moving)
    };
    let edits = together
        .into_iter()
        .filter_map(|(face, ring, corner)| scene.job.face(face)?.with_corner_moved(ring, corner, to))
        .map(Edit::PutFace)
        .collect();
    Some(Step { label: text::move_corner_of(&start.name), edit: Edit::Several(edits), guides })
}

/// The drag that starts on a part: of a corner, or of the whole part if it is selected.
fn begin_part(hit: Hit, job: &Resolved, selection: Selection, plan: DVec2) -> Option<Gesture> {
    match hit {
        Hit::Part(id, PartPlace::Corner { ring, corner }) => {
            Some(Gesture::PartCorner { start: Box::new(job.part(id)?.clone()), ring, corner })
        }
        Hit::Part(id, _) => moved_whole(job, id, plan),
        Hit::Face(face) => {
            let Selection::Part(id, _) = selection else { return None };
            let from = job.face(face)?.from?;
            // Parts on the selected part move with it, so they can be grabbed as well.
            edits::part::moving(job, id).contains(&from.part).then(|| moved_whole(job, id, plan))?
        }
        _ => None,
    }
}

fn moved_whole(job: &Resolved, id: PartId, grab: DVec2) -> Option<Gesture> {
    let name = job.part(id)?.name.clone();
    Some(Gesture::MovePart { name, parts: edits::part::moving(job, id), grab })
}

/// The result of dragging a corner of a part.
fn part_corner_step(
    scene: Scene,
    start: &RoofPart,
    ring: usize,
    corner: usize,
    plan: DVec2,
    free: bool,
) -> Option<Step> {
    let corners = start.outline.rings().nth(ring)?;
    let count = corners.len();
    let beside = [*corners.get((corner + count - 1) % count)?, *corners.get((corner + 1) % count)?];
    let own: Vec<FaceId> = scene
        .job
        .faces
        .iter()
        .filter(|f| f.from.is_some_and(|from| from.part == start.id))
        .map(|f| f.id)
        .collect();
    let (to, guides) = if free { (plan, Vec::new()) } else { snap::point(scene, plan, &beside, &[], &own) };
    let edit = Edit::PutPart(start.with_corner_moved(ring, corner, to)?);
    Some(Step { label: text::move_corner_of(&start.name), edit, guides })
}

/// The result of dragging a whole part.
fn part_step(name: &str, parts: &[PartId], by: DVec2) -> Step {
    Step {
        label: text::move_of(name),
        edit: Edit::MoveParts { parts: parts.to_vec(), how: PlanMove::shift(by) },
        guides: Vec::new(),
    }
}

/// The result of dragging the picture.
fn picture_step(start: &Underlay, mode: PictureMode, grab: DVec2, plan: DVec2) -> Option<Step> {
    let (label, next) = match mode {
        PictureMode::Scale => return None,
        PictureMode::Move => (text::MOVE_PICTURE, Underlay { at: start.at + plan - grab, ..start.clone() }),
        PictureMode::Turn => {
            let degrees = -(grab - start.at).angle_to(plan - start.at).to_degrees();
            (
                text::TURN_PICTURE,
                if degrees.is_finite() { start.turned(start.at, degrees) } else { start.clone() },
            )
        }
        PictureMode::Crop => {
            let (a, b) = (start.to_picture(grab), start.to_picture(plan));
            let (from, to) =
                (a.min(b).clamp(DVec2::ZERO, DVec2::ONE), a.max(b).clamp(DVec2::ZERO, DVec2::ONE));
            let enough = (to - from).min_element() > 0.005;
            let crop = Crop { left: from.x, top: from.y, right: to.x, bottom: to.y };
            (text::CROP_PICTURE, if enough { Underlay { crop, ..start.clone() } } else { start.clone() })
        }
    };
    Some(Step { label: label.into(), edit: Edit::SetUnderlay(Some(next)), guides: Vec::new() })
}
