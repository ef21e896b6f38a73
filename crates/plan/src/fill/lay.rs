//! Rows and whole blocks: as many modules as can be.

use super::made::{self, Maker};
use super::{Basis, Fill, FillError, Laid, Mode, Site, allowed};
use crate::room::Fire;
use chalkcourse_geometry::fit::{
    Allowed, Base, BlockRules, Fit, Joints, RowRules, Tile, fit_blocks, fit_rows, fit_rows_improving,
};
use chalkcourse_job::{Orientation, Resolved, RowJoints};
use chalkcourse_layout::Layout;
use chalkcourse_words::{pick, tell};

/// Ways for the joints of rows that a mode asks for and the kit allows: the one that covers most first.
pub(super) fn joints(job: &Resolved, mode: Mode) -> Result<Vec<Joints>, FillError> {
    let allows = |joints| job.kit.laying.joints.contains(&joints);
    let refuse = |joints| Err(FillError::Joints { kit: job.kit.name.clone(), joints });
    let all = [
        (RowJoints::Free, Joints::Free),
        (RowJoints::Aligned, Joints::Aligned),
        (RowJoints::HalfLapped, Joints::Lapped),
    ];
    match mode {
        Mode::SlidingRows | Mode::OnCourses if allows(RowJoints::Free) => {
            // rows that stand in line or lapped are among those that slide
            Ok(vec![Joints::Free, Joints::Aligned, Joints::Lapped])
        }
        Mode::SlidingRows | Mode::OnCourses => {
            Ok(all.iter().filter(|(kit, _)| allows(*kit)).map(|(_, joints)| *joints).collect())
        }
        Mode::HalfLapped if allows(RowJoints::HalfLapped) || allows(RowJoints::Free) => {
            Ok(vec![Joints::Lapped])
        }
        Mode::HalfLapped => refuse(pick("half-lapped", "a media pieza")),
        _ if allows(RowJoints::Aligned) || allows(RowJoints::Free) => Ok(vec![Joints::Aligned]),
        _ => refuse(pick("aligned", "alineadas")),
    }
}

/// Where the base rail may fall on a face.
pub(super) fn base(job: &Resolved, layout: &Layout, index: usize, mode: Mode) -> Base {
    let rail = job.kit.laying.base_rail;
    match layout.faces.get(index).map(|face| face.courses) {
        Some(lines) if mode == Mode::OnCourses || !rail.anywhere => Base::Courses {
            first: lines.first,
            exposure: lines.exposure,
            play: (rail.above_course_from.metres(), rail.above_course_to.metres()),
        },
        _ => Base::Anywhere,
    }
}

/// Fills the room on a face with rows or whole blocks.
pub(super) fn fill_room(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: Fire,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    if let Mode::WholeBlocks(most) = site.mode {
        return whole_blocks(site, allowed, fire, most, stop);
    }
    let maker = Maker { job: site.job, face: site.face };
    let base = base(site.job, &site.layout, site.index, site.mode);
    let ways = joints(site.job, site.mode)?;
    let mut best: Option<(Orientation, Fit)> = None;
    let mut bounds = Vec::new();
    for (orientation, tile) in maker.tiles() {
        let mut bound = 0;
        for &joints in &ways {
            // Where rows slide freely the other ways are among theirs: only worth a look where those are not proved.
            let free = ways.first() == Some(&Joints::Free);
            if free && joints != Joints::Free && best.as_ref().is_none_or(|(_, fit)| fit.count() >= bound) {
                break;
            }
            // a module with nothing below it to hook into may not be built
            let fit = fit_rows(allowed, &tile, &RowRules { joints, base, hooked: true }, stop)?;
            if !free || joints == Joints::Free {
                bound = bound.max(fit.bound);
            }
            if best.as_ref().is_none_or(|(_, best)| fit.count() > best.count()) {
                best = Some((orientation, fit));
            }
        }
        bounds.push(bound);
    }
    let Some((orientation, fit)) = best else { return Ok(maker.nothing(fire)) };
    Ok(rows_fill(&maker, site.mode, base, fire, orientation, fit, bounds))
}

/// A fill of rows.
fn rows_fill(
    maker: &Maker<'_>,
    mode: Mode,
    base: Base,
    fire: Fire,
    orientation: Orientation,
    fit: Fit,
    bounds: Vec<usize>,
) -> Fill {
    let blocks: Vec<_> = maker.block(0, orientation, fit.proof.tile, &fit.placed).into_iter().collect();
    let bound = bounds.iter().copied().max().unwrap_or(0);
    let rows = match mode {
        Mode::OneGrid => pick("one grid", "una sola cuadrícula").to_owned(),
        Mode::HalfLapped => pick("half-lapped rows", "filas a media pieza").to_owned(),
        _ => match maker.job.kit.laying.joints.as_slice() {
            joints if joints.contains(&RowJoints::Free) => {
                pick("rows sliding", "filas que se deslizan").to_owned()
            }
            joints => {
                let names: Vec<&str> = joints
                    .iter()
                    .map(|joints| match joints {
                        RowJoints::HalfLapped => pick("half-lapped", "a media pieza"),
                        _ => pick("aligned", "alineadas"),
                    })
                    .collect();
                tell!("rows {} as the kit asks", "filas {} como pide el kit", names.join(pick(" or ", " o ")))
            }
        },
    };
    let way = format!("{rows}, {}", made::base_words(maker.job, base));
    let searched = fit.proof.words();
    let modules = fit.count();
    let basis = Basis { fire, way, laid: Laid::Rows(Box::new(fit), bounds) };
    maker.fill(blocks, modules, bound, modules == bound, searched, basis)
}

fn whole_blocks(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: Fire,
    most: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    joints(site.job, site.mode)?;
    let maker = Maker { job: site.job, face: site.face };
    let base = base(site.job, &site.layout, site.index, site.mode);
    let rules = BlockRules { most, apart: chalkcourse_limits::apart(site.job), base };
    let way = tell!(
        "at most {most} whole {}, {}",
        "como máximo {most} {}, {}",
        if most == 1 { pick("block", "bloque entero") } else { pick("blocks", "bloques enteros") },
        made::base_words(site.job, base)
    );
    let mut best: Option<Fill> = None;
    let mut bound = 0;
    for (orientation, tile) in maker.tiles() {
        let found = fit_blocks(allowed, &tile, &rules, stop)?;
        bound = bound.max(found.bound);
        if best.as_ref().is_none_or(|best| found.count > best.modules) {
            let blocks = (0u32..)
                .zip(&found.blocks)
                .filter_map(|(n, block)| maker.block(n, orientation, tile, &block.placed))
                .collect();
            let basis = Basis { fire, way: way.clone(), laid: Laid::Blocks(most) };
            best = Some(maker.fill(blocks, found.count, found.bound, false, found.method, basis));
        }
    }
    let mut fill = best.unwrap_or_else(|| maker.nothing(fire));
    fill.bound = bound;
    fill.proved = fill.modules == bound;
    Ok(fill)
}

/// Goes on with rows that are not proved: better ones and lower bounds take the place of the fill and are told.
pub(super) fn improve(
    job: &Resolved,
    layout: &Layout,
    fills: &mut [Fill],
    at: usize,
    mode: Mode,
    stop: &dyn Fn() -> bool,
    tell: &mut dyn FnMut(&[Fill]),
) -> Result<(), FillError> {
    let Some(fill) = fills.get(at).filter(|fill| !fill.proved) else { return Ok(()) };
    let (Laid::Rows(_, bounds), Some((index, _))) = (&fill.basis.laid, layout.face(fill.face)) else {
        return Ok(());
    };
    let (fire, face, mut bounds) = (fill.basis.fire, fill.face, bounds.clone());
    if joints(job, mode)?.first() != Some(&Joints::Free) {
        return Ok(());
    }
    let maker = Maker { job, face };
    let base = base(job, layout, index, mode);
    let rules = RowRules { joints: Joints::Free, base, hooked: true };
    let room = allowed(job, layout, index, fire, &fill.blocks).allowed;
    let path = fill
        .basis
        .way
        .find(pick(", pathway", ", paso"))
        .map_or("", |from| &fill.basis.way[from..])
        .to_owned();
    let tiles: Vec<(Orientation, Tile)> = maker.tiles().collect();
    for (way, (orientation, tile)) in tiles.into_iter().enumerate() {
        let holds = fills.get(at).map_or(0, |fill| fill.modules);
        if bounds.get(way).is_none_or(|bound| *bound <= holds) {
            continue;
        }
        let mut better = |fit: &Fit| {
            let (Some(fill), Some(bound)) = (fills.get_mut(at), bounds.get_mut(way)) else { return };
            let lower = fit.bound < *bound;
            *bound = (*bound).min(fit.bound);
            if fit.count() > fill.modules {
                let ids: Vec<_> = fill.blocks.iter().map(|block| (block.id, block.name.clone())).collect();
                *fill = rows_fill(&maker, mode, base, fire, orientation, fit.clone(), bounds.clone());
                fill.basis.way += &path;
                // the same block goes on under its number
                for (block, (id, name)) in fill.blocks.iter_mut().zip(ids) {
                    (block.id, block.name) = (id, name);
                }
            } else if lower {
                fill.bound = bounds.iter().copied().max().unwrap_or(0).max(fill.modules);
                if let Laid::Rows(_, known) = &mut fill.basis.laid {
                    known.clone_from(&bounds);
                }
            } else {
                return;
            }
            fill.proved = fill.bound <= fill.modules;
            made::claim(job, fill);
            tell(fills);
        };
        let last = fit_rows_improving(&room, &tile, &rules, stop, &mut better)?;
        better(&last);
    }
    Ok(())
}
