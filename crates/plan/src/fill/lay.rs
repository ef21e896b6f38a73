//! Rows, several blocks and whole blocks: as many modules as can be in some room.

use super::{Basis, Fill, FillError, Laid, Mode, Site, allowed, made};
use crate::room::Fire;
use chalkcourse_geometry::fit::{
    Allowed, Base, BlockRules, Fit, HookRules, Joints, RowRules, fit_blocks, fit_rows, fit_rows_improving,
    fit_several,
};
use chalkcourse_job::{Block, Job, Orientation, RowJoints};
use chalkcourse_layout::Layout;
use chalkcourse_words::{pick, tell};

/// Ways for the joints of rows that a mode asks for and the kit allows: the one that covers most first.
pub(super) fn joints(job: &Job, mode: Mode) -> Result<Vec<Joints>, FillError> {
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
pub(super) fn base(job: &Job, layout: &Layout, index: usize, mode: Mode) -> Base {
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

/// What the kit asks of the base rail, in words; nothing where it may lie anywhere.
pub(super) fn base_asked(site: &Site<'_>) -> String {
    match site.base() {
        Base::Anywhere => String::new(),
        base => made::base_words(site.job, base),
    }
}

/// Fills the room on a face in one way of laying. The bound is that of the way.
pub(super) fn fill_room(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: &Fire,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    if let Mode::WholeBlocks(most) = site.mode {
        return whole_blocks(site, allowed, fire, most, stop);
    }
    let maker = site.maker();
    let base = site.base();
    let (mut best, mut bound): (Option<(Orientation, Fit)>, usize) = (None, 0);
    for (orientation, tile) in maker.tiles() {
        let (mut most, ways) = (0, joints(site.job, site.mode)?);
        for &joints in &ways {
            // Where rows slide freely the other ways are among theirs: only worth a look where those are not proved.
            let free = ways.first() == Some(&Joints::Free);
            if free && joints != Joints::Free && best.as_ref().is_none_or(|(_, fit)| fit.count() >= most) {
                break;
            }
            // a module with nothing below it to hook into may not be built
            let fit = fit_rows(allowed, &tile, &RowRules { joints, base, hooked: true }, stop)?;
            if !free || joints == Joints::Free {
                most = most.max(fit.bound);
            }
            if best.as_ref().is_none_or(|(_, best)| fit.count() > best.count()) {
                best = Some((orientation, fit));
            }
        }
        bound = bound.max(most);
    }
    let Some((orientation, fit)) = best else { return Ok(maker.nothing(fire)) };
    Ok(rows_fill(site, fire, orientation, fit, bound))
}

/// A fill of rows in one block.
fn rows_fill(site: &Site<'_>, fire: &Fire, orientation: Orientation, fit: Fit, bound: usize) -> Fill {
    let maker = site.maker();
    let blocks: Vec<_> = maker.block(0, orientation, fit.proof.tile, &fit.placed).into_iter().collect();
    let rows = match site.mode {
        Mode::OneGrid => pick("one grid", "una sola cuadrícula"),
        Mode::HalfLapped => pick("half-lapped rows in one block", "filas a media pieza en un bloque"),
        _ => pick("rows in one block", "filas en un bloque"),
    };
    let way = format!("{rows}, {}", made::base_words(site.job, site.base()));
    let (searched, modules) = (fit.proof.words(), fit.count());
    let basis = Basis { fire: fire.clone(), way, laid: Laid::Rows(Box::new(fit)), every: false };
    maker.fill(blocks, modules, bound, modules == bound, searched, basis)
}

fn whole_blocks(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: &Fire,
    most: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    joints(site.job, site.mode)?;
    let (maker, base) = (site.maker(), site.base());
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
            let blocks = found.blocks.iter().map(|block| block.placed.as_slice());
            let blocks = maker.blocks(orientation, tile, blocks);
            let basis =
                Basis { fire: fire.clone(), way: way.clone(), laid: Laid::Blocks(most), every: false };
            best = Some(maker.fill(blocks, found.count, found.bound, false, found.method, basis));
        }
    }
    let mut fill = best.unwrap_or_else(|| maker.nothing(fire));
    fill.bound = bound;
    fill.proved = fill.modules == bound;
    Ok(fill)
}

/// Whole blocks that are looked for where rows and several blocks hold less than there may be room for.
const WHOLE: usize = 3;

/// Lays the room on a face in all ways that the kit allows, as far as one could hold more than those before it, and keeps the
/// fullest: one block of rows, each carried wholly by the one below; several blocks whose rows hook as far as the book asks; whole
/// rectangles. With `enough` modules the search ends. There is no bound in it.
pub(super) fn any(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: &Fire,
    enough: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let (maker, base) = (site.maker(), site.base());
    let ways = joints(site.job, site.mode)?;
    let apart = chalkcourse_limits::apart(site.job);
    let mut best = maker.nothing(fire);
    let mut better = |found: Fill| {
        if found.modules > best.modules {
            best = found;
        }
        best.modules >= enough
    };
    for (orientation, tile) in maker.tiles() {
        for &joints in &ways {
            let fit = fit_rows(allowed, &tile, &RowRules { joints, base, hooked: true }, stop)?;
            if better(rows_fill(site, fire, orientation, fit, usize::MAX)) {
                return Ok(best);
            }
        }
    }
    for (orientation, tile) in maker.tiles() {
        if ways.contains(&Joints::Free) {
            let hooked = site.job.rule_book.hooked_share.value;
            let found = fit_several(allowed, &tile, &HookRules { base, hooked, apart }, enough, stop)?;
            let blocks = maker.blocks(orientation, tile, found.blocks.iter().map(Vec::as_slice));
            if better(pieces(site, fire, blocks)) {
                return Ok(best);
            }
        }
        if ways.contains(&Joints::Free) || ways.contains(&Joints::Aligned) {
            let found = fit_blocks(allowed, &tile, &BlockRules { most: WHOLE, apart, base }, stop)?;
            let blocks = found.blocks.iter().map(|block| block.placed.as_slice());
            if better(pieces(site, fire, maker.blocks(orientation, tile, blocks))) {
                return Ok(best);
            }
        }
    }
    Ok(best)
}

/// A fill of several blocks.
fn pieces(site: &Site<'_>, fire: &Fire, blocks: Vec<Block>) -> Fill {
    let modules = blocks.iter().map(|block| block.cells().count()).sum();
    let way = made::base_words(site.job, site.base());
    let basis = Basis { fire: fire.clone(), way, laid: Laid::Pieces, every: false };
    site.maker().fill(blocks, modules, usize::MAX, false, String::new(), basis)
}

/// Goes on with rows in one block on the room of a fill: tells of each with more modules.
pub(super) fn improve(
    site: &Site<'_>,
    fill: &Fill,
    stop: &dyn Fn() -> bool,
    tell: &mut dyn FnMut(Fill),
) -> Result<(), FillError> {
    if joints(site.job, site.mode)?.first() != Some(&Joints::Free) {
        return Ok(());
    }
    let fire = &fill.basis.fire;
    let room = allowed(site.job, &site.layout, site.index, fire, &fill.blocks).allowed;
    let rules = RowRules { joints: Joints::Free, base: site.base(), hooked: true };
    let mut most = fill.modules;
    for (orientation, tile) in site.maker().tiles() {
        let mut better = |fit: &Fit| {
            if fit.count() > most {
                most = fit.count();
                tell(rows_fill(site, fire, orientation, fit.clone(), usize::MAX));
            }
        };
        let last = fit_rows_improving(&room, &tile, &rules, stop, &mut better)?;
        better(&last);
    }
    Ok(())
}
