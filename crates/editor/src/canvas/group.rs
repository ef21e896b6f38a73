//! Several things held at once: taken with a box, with Shift and a click, or all of them; moved, switched and deleted as one step.

use super::hit::Hit;
use super::paint::Brush;
use crate::action::Action;
use crate::view::{Space, View};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, Polygon};
use chalkcourse_job::{BlockId, Cell, Edit, Penetration, PenetrationId, Resolved};
use chalkcourse_layout::Layout;
use egui::{CornerRadius, Pos2, Rect, Shape, Stroke, StrokeKind};
use std::collections::BTreeSet;

/// Several things that are held. Empty where one thing or nothing is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Group {
    pub(crate) blocks: BTreeSet<BlockId>,
    pub(crate) penetrations: BTreeSet<PenetrationId>,
    /// Modules of blocks that are not held whole.
    pub(crate) modules: BTreeSet<(BlockId, Cell)>,
}

impl Group {
    pub(crate) fn is_empty(&self) -> bool {
        self.blocks.is_empty() && self.penetrations.is_empty() && self.modules.is_empty()
    }

    /// Everything that can be moved or deleted by itself.
    pub(crate) fn all(job: &Resolved) -> Self {
        Self {
            blocks: job.blocks.iter().map(|block| block.id).collect(),
            penetrations: job.penetrations.iter().map(|penetration| penetration.id).collect(),
            modules: BTreeSet::new(),
        }
    }

    /// What lies whole in a box on the screen: blocks, penetrations, and modules of blocks that reach out of it.
    pub(super) fn in_box(space: &Space, layout: &Layout, area: Rect) -> Self {
        let mut group = Self::default();
        for placed in layout.blocks.iter().filter(|placed| space.shows(placed.face)) {
            let Some(face) = layout.roof.faces.get(placed.face) else { continue };
            let inside = |cell: &chalkcourse_geometry::Rect| {
                cell.corners()
                    .iter()
                    .all(|&corner| area.contains(space.screen_from_frame(&face.plane, corner)))
            };
            let within: Vec<Cell> = placed
                .modules
                .iter()
                .filter(|module| inside(&module.rect))
                .map(|module| module.cell)
                .collect();
            if !placed.modules.is_empty() && within.len() == placed.modules.len() {
                group.blocks.insert(placed.id);
            } else {
                group.modules.extend(within.into_iter().map(|cell| (placed.id, cell)));
            }
        }
        for penetration in &layout.penetrations {
            let shown = space.face_on.is_none_or(|(face, _)| penetration.on_face(face).is_some());
            if shown && penetration.plan.outer.iter().all(|&p| area.contains(space.screen_from_plan(p))) {
                group.penetrations.insert(penetration.id);
            }
        }
        group
    }

    pub(super) fn with(mut self, other: Self) -> Self {
        self.blocks.extend(other.blocks);
        self.penetrations.extend(other.penetrations);
        self.modules.extend(other.modules);
        let blocks = &self.blocks;
        self.modules.retain(|(block, _)| !blocks.contains(block));
        self
    }

    /// The one thing that is held with Shift and a click beside others, or let go of by another.
    pub(super) fn toggled(mut self, held: Selection, hit: Hit) -> Self {
        match held {
            Selection::Block(id) | Selection::Module { block: id, .. } => _ = self.blocks.insert(id),
            Selection::Penetration(id) => _ = self.penetrations.insert(id),
            _ => {}
        }
        match hit {
            Hit::Module { block, .. } | Hit::Handle { block, .. } | Hit::RowEnd { block, .. } => {
                self.modules.retain(|(of, _)| *of != block);
                if !self.blocks.remove(&block) {
                    self.blocks.insert(block);
                }
            }
            Hit::Penetration(id) if !self.penetrations.remove(&id) => _ = self.penetrations.insert(id),
            _ => {}
        }
        self
    }

    /// Held as one thing where it is one.
    pub(super) fn held(self) -> Action {
        let one = self.blocks.len() + self.penetrations.len() == 1 && self.modules.is_empty();
        let block = self.blocks.first().copied().map(Selection::Block);
        let penetration = self.penetrations.first().copied().map(Selection::Penetration);
        match block.or(penetration).filter(|_| one) {
            Some(one) => Action::Select(one),
            None if self.is_empty() => Action::Select(Selection::Nothing),
            None => Action::Hold(self),
        }
    }

    pub(super) fn has(&self, hit: Hit) -> bool {
        match hit {
            Hit::Module { block, cell } => {
                self.blocks.contains(&block) || self.modules.contains(&(block, cell))
            }
            Hit::Penetration(id) => self.penetrations.contains(&id),
            _ => false,
        }
    }

    /// What the job still has of it.
    pub(crate) fn still_there(&mut self, job: &Resolved) {
        self.blocks.retain(|id| job.block(*id).is_some());
        self.penetrations.retain(|id| job.penetration(*id).is_some());
        self.modules.retain(|(id, cell)| {
            job.block(*id).is_some_and(|block| cell.row < block.rows && cell.column < block.columns)
        });
    }

    /// Blocks and penetrations, farther by so much in plan; modules go with their blocks alone. None where nothing moves.
    pub(super) fn moved(&self, job: &Resolved, layout: &Layout, by: DVec2) -> Option<Edit> {
        let blocks = self.blocks.iter().filter_map(|id| {
            let mut block = job.block(*id)?.clone();
            let plane = layout.face(block.face)?.1.plane;
            block.at += plane.to_frame(by) - plane.to_frame(DVec2::ZERO);
            Some(Edit::PutBlock(block))
        });
        let penetrations = self.penetrations.iter().filter_map(|id| {
            let penetration = job.penetration(*id)?;
            let at = penetration.at + by;
            Some(Edit::PutPenetration(Penetration { at, ..penetration.clone() }))
        });
        let edits: Vec<Edit> = blocks.chain(penetrations).collect();
        (!edits.is_empty()).then_some(Edit::Several(edits))
    }

    /// A step on the screen, along the axis nearest to it of the face that the first block lies on.
    pub(super) fn nudged(&self, document: &Document, view: View, screen: DVec2) -> Option<Action> {
        let (job, layout) = (document.job(), &document.plan().layout);
        let first = self.blocks.first().and_then(|id| job.block(*id));
        let plane = first.and_then(|block| Some(layout.face(block.face)?.1.plane));
        let by = plane.map_or_else(
            || view.in_plan(layout, screen),
            |plane| plane.to_plan(view.seen().on_face(&plane, screen)) - plane.to_plan(DVec2::ZERO),
        );
        Some(Action::Edit(text::nudge_of(&text::group_words(self)), self.moved(job, layout, by)?))
    }

    /// Blocks and penetrations are gone, modules are switched off.
    pub(crate) fn deleted(&self, job: &Resolved) -> Option<Action> {
        let blocks = self.blocks.iter().map(|id| Edit::RemoveBlock(*id));
        let penetrations = self.penetrations.iter().map(|id| Edit::RemovePenetration(*id));
        let edits: Vec<Edit> = blocks.chain(penetrations).chain(self.switches(job, false)).collect();
        let label = text::delete_of(&text::group_words(self));
        (!edits.is_empty()).then_some(Action::EditAndSelect(label, Edit::Several(edits), Selection::Nothing))
    }

    /// All modules of it on or off: those that are held by themselves, and those of the blocks that are held.
    pub(crate) fn switched(&self, job: &Resolved, on: bool) -> Option<Action> {
        let whole = self.blocks.iter().filter_map(|id| {
            let mut block = job.block(*id)?.clone();
            block.off = if on { BTreeSet::new() } else { all_cells(&block) };
            Some(Edit::PutBlock(block))
        });
        let edits: Vec<Edit> = whole.chain(self.switches(job, on)).collect();
        (!edits.is_empty())
            .then(|| Action::Edit(text::switch_of(&text::group_words(self)), Edit::Several(edits)))
    }

    /// Blocks of single modules that are held, with those on or off.
    fn switches(&self, job: &Resolved, on: bool) -> Vec<Edit> {
        let blocks: BTreeSet<BlockId> = self.modules.iter().map(|(block, _)| *block).collect();
        let switched = blocks.into_iter().filter_map(|id| {
            let mut block = job.block(id)?.clone();
            let cells = self.modules.iter().filter(|(of, _)| *of == id).map(|(_, cell)| *cell);
            for cell in cells {
                if on {
                    block.off.remove(&cell)
                } else {
                    block.off.insert(cell)
                };
            }
            let none_left = block.off.len() as u64 >= u64::from(block.rows) * u64::from(block.columns);
            Some(if none_left { Edit::RemoveBlock(id) } else { Edit::PutBlock(block) })
        });
        switched.collect()
    }

    /// Whether any module of it is switched off.
    pub(crate) fn has_off(&self, job: &Resolved) -> bool {
        let off = |id: &BlockId| job.block(*id).is_some_and(|block| !block.off.is_empty());
        self.blocks.iter().any(off)
            || self.modules.iter().any(|(id, cell)| job.block(*id).is_some_and(|b| b.off.contains(cell)))
    }
}

fn all_cells(block: &chalkcourse_job::Block) -> BTreeSet<Cell> {
    (0..block.rows).flat_map(|row| (0..block.columns).map(move |column| Cell { row, column })).collect()
}

/// Marks what is held.
pub(super) fn paint(brush: &Brush, layout: &Layout, group: &Group) {
    let stroke = Stroke::new(2.4, brush.palette.accent);
    for placed in layout.blocks.iter().filter(|placed| brush.space.shows(placed.face)) {
        let Some(face) = layout.roof.faces.get(placed.face) else { continue };
        let ring = |rect: chalkcourse_geometry::Rect| {
            let points = rect.corners().map(|corner| brush.space.screen_from_frame(&face.plane, corner));
            brush.painter.add(Shape::closed_line(points.to_vec(), stroke));
        };
        if group.blocks.contains(&placed.id) {
            placed.bounds.map(ring);
        }
        for module in placed.modules.iter().filter(|m| group.modules.contains(&(placed.id, m.cell))) {
            ring(module.rect);
        }
    }
    for penetration in layout.penetrations.iter().filter(|p| group.penetrations.contains(&p.id)) {
        brush.outline(&Polygon::new(penetration.plan.outer.clone()), stroke, None);
    }
}

/// The box that is being drawn.
pub(super) fn paint_box(brush: &Brush, from: Pos2, to: Pos2) {
    let area = Rect::from_two_pos(from, to);
    let fill = theme::faint(brush.palette.accent, 30);
    let stroke = Stroke::new(1.2, brush.palette.accent);
    brush.painter.rect(area, CornerRadius::ZERO, fill, stroke, StrokeKind::Middle);
}
