//! Removing modules from layouts.

use super::corridor::{Corridor, stands_in};
use super::judge::Judge;
use super::{Fill, FillKind, Site};
use chalkcourse_geometry::fit::{Tile, TilePlace, stands};
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, Resolved};
use chalkcourse_layout::PlacedBlock;
use chalkcourse_limits::{Share, array_share};
use chalkcourse_rules::Finding;
use std::collections::BTreeSet;

/// The modules of a block, as placed.
pub(super) fn rects(site: &Site<'_>, block: &Block) -> Vec<(Cell, Rect)> {
    let placed = PlacedBlock::of(block, site.index, &site.job.kit);
    placed.modules.iter().map(|module| (module.cell, module.rect)).collect()
}

/// A fill without some modules, and without those that they supported.
fn cut(site: &Site<'_>, fill: &Fill, away: &BTreeSet<(BlockId, Cell)>) -> Fill {
    let mut cut = fill.clone();
    for block in &mut cut.blocks {
        let cells = away.iter().filter(|(id, _)| *id == block.id).map(|(_, cell)| *cell);
        let before = block.off.len();
        block.off.extend(cells);
        if block.off.len() > before {
            unhook(site.job, block, site.index);
            settle(block);
        }
    }
    cut.blocks.retain(|block| block.cells().next().is_some());
    cut.modules = cut.blocks.iter().map(|block| block.cells().count()).sum();
    if cut.modules != fill.modules {
        (cut.measure, cut.basis.laid) = (None, FillKind::Pieces);
        cut.proved = false;
    }
    cut
}

/// A fill without the modules that are in a corridor.
pub(super) fn out_of(site: &Site<'_>, fill: &Fill, way: &Corridor) -> Fill {
    let hit = |block: &Block| {
        let modules = rects(site, block).into_iter().filter(|(_, rect)| stands_in(way, rect));
        modules.map(|(cell, _)| (block.id, cell)).collect::<Vec<_>>()
    };
    cut(site, fill, &fill.blocks.iter().flat_map(hit).collect())
}

/// A fill without the modules that extend into the larger ridge setback.
pub(super) fn to_ridge(site: &Site<'_>, fill: &Fill, share: Share) -> Fill {
    let mut fire = fill.basis.fire.clone();
    fire.share = share;
    let room = super::allowed(site.job, &site.layout, site.index, &fire, &fill.blocks).allowed;
    let mut away = BTreeSet::new();
    for block in &fill.blocks {
        let size = block.module_size(&site.job.kit);
        let tile = Tile { size, gap: DVec2::splat(block.reveal.metres()) };
        let cells: Vec<Cell> = block.cells().collect();
        // Slightly inside, so that rounding does not put a module on the border beyond it.
        let place = |cell: &Cell| TilePlace {
            at: block.corner_of(*cell, &site.job.kit) + dvec2(0.0, -1e-9),
            lowest: cell.row == 0,
        };
        let places: Vec<TilePlace> = cells.iter().map(place).collect();
        let Ok(stand) = stands(&room, &tile, &places) else { continue };
        let gone = cells.iter().zip(stand).filter(|(_, stands)| !stands);
        away.extend(gone.map(|(cell, _)| (block.id, *cell)));
    }
    let mut cut = cut(site, fill, &away);
    cut.basis.fire = fire;
    cut
}

/// Removes modules from a fill one by one from the top until the array covers no more of the roof than the share.
pub(super) fn to_share(site: &Site<'_>, judge: &Judge, fill: &Fill, share: Share) -> Fill {
    let mut fill = fill.clone();
    loop {
        let after = judge.with(site.job, &fill).0;
        if fill.blocks.is_empty() || Share::of(&after, array_share(&judge.laid_out(&after))) <= share {
            return fill;
        }
        fill = without_one(site, &fill);
    }
}

/// A fill reduced to a number of modules from the top.
pub(super) fn to_number(site: &Site<'_>, fill: &Fill, number: usize) -> Fill {
    let mut fill = fill.clone();
    while fill.modules > number {
        fill = without_one(site, &fill);
    }
    fill
}

/// A fill without its most dispensable module: one that supports none, in the highest row, at the end of its shorter
/// run.
fn without_one(site: &Site<'_>, fill: &Fill) -> Fill {
    let all: Vec<(BlockId, Cell, Rect)> = fill
        .blocks
        .iter()
        .flat_map(|block| rects(site, block).into_iter().map(|(cell, rect)| (block.id, cell, rect)))
        .collect();
    let in_row = |one: &(BlockId, Cell, Rect)| {
        all.iter().filter(|other| other.0 == one.0 && other.1.row == one.1.row).count()
    };
    let key = |one: &(BlockId, Cell, Rect)| (one.2.max.y, -(in_row(one) as f64), one.2.max.x);
    let highest = all.iter().max_by(|a, b| {
        let (a, b) = (key(a), key(b));
        a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.total_cmp(&b.2))
    });
    let away = highest.map(|(id, cell, _)| (*id, *cell));
    cut(site, fill, &away.into_iter().collect())
}

/// Removes modules from a fill until no new stop is left: those that the rules propose to remove, those that a finding
/// names, or else from the top.
pub(super) fn to_pass(site: &Site<'_>, judge: &Judge, fill: &Fill) -> Fill {
    let mut fill = fill.clone();
    while !fill.blocks.is_empty() {
        let (_, stops) = judge.with(site.job, &fill);
        if stops.is_empty() {
            break;
        }
        let own = |id: BlockId| fill.blocks.iter().any(|block| block.id == id);
        let offered = stops.iter().filter_map(|stop| offered(stop, &own)).min_by_key(BTreeSet::len);
        let named = || stops.iter().find_map(|stop| named(stop, &own));
        fill = match offered.or_else(named) {
            Some(away) => cut(site, &fill, &away),
            None => without_one(site, &fill),
        };
    }
    fill
}

/// The modules that a finding proposes to remove, if all belong to the fill.
fn offered(stop: &Finding, own: &dyn Fn(BlockId) -> bool) -> Option<BTreeSet<(BlockId, Cell)>> {
    let blocks = stop.facts.opening()?;
    let whole = !blocks.is_empty() && blocks.iter().all(|(id, _)| own(*id));
    let all = blocks.iter().flat_map(|(id, cells)| cells.iter().map(|cell| (*id, *cell)));
    whole.then(|| all.collect())
}

/// The modules that a finding names, if they belong to the fill.
fn named(stop: &Finding, own: &dyn Fn(BlockId) -> bool) -> Option<BTreeSet<(BlockId, Cell)>> {
    let block = stop.place.block.filter(|id| own(*id) && !stop.place.cells.is_empty())?;
    Some(stop.place.cells.iter().map(|cell| (block, *cell)).collect())
}

/// Removes unsupported modules, row by row.
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

/// Shrinks rows and columns to the modules.
fn settle(block: &mut Block) {
    let rows = block.cells().map(|cell| cell.row + 1).max();
    let columns = block.cells().map(|cell| cell.column + 1).max();
    if let Some((rows, columns)) = rows.zip(columns) {
        *block = block.with_size(rows, columns);
    }
}
