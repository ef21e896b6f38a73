//! Multiple selection: with a box, or by Shift and click; and how it is marked.

use super::brush::Brush;
use super::hit::Hit;
use crate::state::{Group, Space};
use crate::{Selection, theme};
use chalkcourse_geometry::Polygon;
use chalkcourse_job::Cell;
use chalkcourse_layout::Layout;
use egui::{CornerRadius, Pos2, Rect, Shape, Stroke, StrokeKind};

/// Everything entirely inside a box on the screen: blocks, penetrations, and modules of blocks that extend beyond it.
pub(super) fn in_box(space: &Space, layout: &Layout, area: Rect) -> Group {
    let mut group = Group::default();
    for placed in layout.blocks.iter().filter(|placed| space.shows(placed.face)) {
        let Some(face) = layout.roof.faces.get(placed.face) else { continue };
        let inside = |cell: &chalkcourse_geometry::Rect| {
            cell.corners().iter().all(|&corner| area.contains(space.screen_from_frame(&face.plane, corner)))
        };
        let within: Vec<Cell> =
            placed.modules.iter().filter(|module| inside(&module.rect)).map(|module| module.cell).collect();
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

/// Adds an object to the selection by Shift and click, or removes it.
pub(super) fn toggled(mut group: Group, held: Selection, hit: Hit) -> Group {
    match held {
        Selection::Block(id) | Selection::Module { block: id, .. } => _ = group.blocks.insert(id),
        Selection::Penetration(id) => _ = group.penetrations.insert(id),
        _ => {}
    }
    match hit {
        Hit::Module { block, .. } | Hit::Handle { block, .. } | Hit::RowEnd { block, .. } => {
            group.modules.retain(|(of, _)| *of != block);
            if !group.blocks.remove(&block) {
                group.blocks.insert(block);
            }
        }
        Hit::Penetration(id) if !group.penetrations.remove(&id) => _ = group.penetrations.insert(id),
        _ => {}
    }
    group
}

pub(super) fn has(group: &Group, hit: Hit) -> bool {
    match hit {
        Hit::Module { block, cell } => {
            group.blocks.contains(&block) || group.modules.contains(&(block, cell))
        }
        Hit::Penetration(id) => group.penetrations.contains(&id),
        _ => false,
    }
}

/// Marks the selected objects.
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

/// Paints the selection box being drawn.
pub(super) fn paint_box(brush: &Brush, from: Pos2, to: Pos2) {
    let area = Rect::from_two_pos(from, to);
    let fill = theme::faint(brush.palette.accent, 30);
    let stroke = Stroke::new(1.2, brush.palette.accent);
    brush.painter.rect(area, CornerRadius::ZERO, fill, stroke, StrokeKind::Middle);
}
