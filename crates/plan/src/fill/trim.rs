//! What is left of a fill when more room is kept free beside the ridge.

use super::{Fill, Laid, made};
use crate::room::Fire;
use chalkcourse_geometry::fit::{Place, Tile, stands};
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::{Block, Cell, Resolved};
use chalkcourse_layout::{Layout, PlacedBlock};
use chalkcourse_limits::Share;

/// A fill without the modules that reach into the room for a greater share of the roof, and without those that they carried. Less is allowed with more
/// room kept free, so that the bound still holds.
pub(super) fn to_ridge(job: &Resolved, fill: &Fill, share: Share) -> Fill {
    let mut cut = fill.clone();
    let layout = Layout::of(job);
    let Some((index, _)) = layout.face(fill.face) else { return cut };
    let fire = Fire { share, ..fill.basis.fire };
    let room = super::allowed(job, &layout, index, fire, &fill.blocks).allowed;
    for block in &mut cut.blocks {
        let size = block.module_size(&job.kit);
        let tile = Tile { size, gap: DVec2::splat(block.reveal.metres()) };
        let cells: Vec<Cell> = block.cells().collect();
        // A hair inside, so that what touches the border does not count as beyond it for rounding.
        let place = |cell: &Cell| Place {
            at: block.corner_of(*cell, &job.kit) + dvec2(0.0, -1e-9),
            lowest: cell.row == 0,
        };
        let places: Vec<Place> = cells.iter().map(place).collect();
        let Ok(stand) = stands(&room, &tile, &places) else { continue };
        block.off.extend(cells.iter().zip(stand).filter(|(_, stands)| !stands).map(|(cell, _)| *cell));
        unhook(job, block, index);
    }
    cut.blocks.retain(|block| block.cells().next().is_some());
    cut.modules = cut.blocks.iter().map(|block| block.cells().count()).sum();
    cut.bound = cut.bound.max(cut.modules);
    cut.proved = cut.modules == cut.bound && fill.measure.is_none();
    cut.basis.fire = fire;
    if cut.modules != fill.modules {
        cut.measure = None;
        if let Laid::Rows(fit, _) = &mut cut.basis.laid {
            let kept: Vec<DVec2> =
                cut.blocks.iter().flat_map(|b| b.cells().map(|cell| b.corner_of(cell, &job.kit))).collect();
            fit.placed.retain(|p| kept.iter().any(|at| at.distance(p.rect.min) < 1e-6));
        }
    }
    made::claim(job, &mut cut);
    cut
}

/// Takes away what nothing carries any more, row by row.
fn unhook(job: &Resolved, block: &mut Block, face: usize) {
    for _ in 0..block.rows {
        let placed = PlacedBlock::of(block, face, &job.kit);
        let least = job.rule_book.hooked_share.value;
        let loose: Vec<Cell> = placed
            .modules
            .iter()
            .filter(|module| module.cell.row > 0 && module.hooked < least)
            .map(|module| module.cell)
            .collect();
        if loose.is_empty() {
            break;
        }
        block.off.extend(loose);
    }
}
