//! Rows, several blocks and whole blocks: as many modules as fit in some room.

use super::{Basis, Fill, FillError, FillKind, Mode, Site, allowed, made};
use crate::room::Fire;
use chalkcourse_geometry::fit::{
    Allowed, Base, BlockRules, Fit, HookRules, Joints, Look, Placed, RowRules, Space, Tile, fit_blocks,
    fit_rows, fit_rows_improving, fit_rows_in, fit_several, halves,
};
use chalkcourse_geometry::{Length, Polygon};
use chalkcourse_job::{Block, Orientation, Resolved, RowJoints};
use chalkcourse_layout::Layout;
use chalkcourse_words::{Said, later as words};
use std::cell::Cell;

/// Joint patterns that a mode asks for and the kit allows, the most general first.
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
            // Aligned or lapped rows are special cases of sliding ones.
            Ok(vec![Joints::Free, Joints::Aligned, Joints::Lapped])
        }
        Mode::SlidingRows | Mode::OnCourses => {
            Ok(all.iter().filter(|(kit, _)| allows(*kit)).map(|(_, joints)| *joints).collect())
        }
        Mode::HalfLapped if allows(RowJoints::HalfLapped) || allows(RowJoints::Free) => {
            Ok(vec![Joints::Lapped])
        }
        Mode::HalfLapped => refuse(words::common::HALF_LAPPED),
        _ if allows(RowJoints::Aligned) || allows(RowJoints::Free) => Ok(vec![Joints::Aligned]),
        _ => refuse(words::fill::ALIGNED),
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

/// What the kit requires of the base rail, in words; `None` if it may be anywhere.
pub(super) fn base_asked(site: &Site<'_>) -> Option<Said> {
    match site.base() {
        Base::Anywhere => None,
        base => Some(made::base_words(site.job, base)),
    }
}

/// Fills the room on a face in one mode. The bound is for that mode.
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
            // Sliding rows include the other patterns, which are only worth trying if those are not proved optimal.
            let free = ways.first() == Some(&Joints::Free);
            if free && joints != Joints::Free && best.as_ref().is_none_or(|(_, fit)| fit.count() >= most) {
                break;
            }
            // A module that hooks into nothing below it can't be built.
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
        Mode::OneGrid => words::common::ONE_GRID,
        Mode::HalfLapped => words::fill::HALF_LAPPED_ROWS_IN_ONE,
        _ => words::fill::ROWS_IN_ONE_BLOCK,
    };
    let base = made::base_words(site.job, site.base());
    let way = Some(Said::listed([rows.into(), base], ", "));
    let (searched, modules) = (fit.proof.claim(), fit.count());
    let basis = Basis { fire: fire.clone(), way, laid: FillKind::Rows(Box::new(fit)), every: false };
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
    let way = words::fill::at_most_whole(
        &most,
        &if most == 1 { words::fill::BLOCK } else { words::fill::BLOCKS },
        &made::base_words(site.job, base),
    );
    let mut best: Option<Fill> = None;
    let mut bound = 0;
    for (orientation, tile) in maker.tiles() {
        let found = fit_blocks(allowed, &tile, &rules, stop)?;
        bound = bound.max(found.bound);
        if best.as_ref().is_none_or(|best| found.count > best.modules) {
            let blocks = found.blocks.iter().map(|block| block.placed.as_slice());
            let blocks = maker.blocks(orientation, tile, blocks);
            let basis = Basis {
                fire: fire.clone(),
                way: Some(way.clone()),
                laid: FillKind::Blocks(most),
                every: false,
            };
            best = Some(maker.fill(blocks, found.count, found.bound, false, found.method, basis));
        }
    }
    let mut fill = best.unwrap_or_else(|| maker.nothing(fire));
    fill.bound = bound;
    fill.proved = fill.modules == bound;
    Ok(fill)
}

/// Whole blocks to look for where rows and several blocks hold fewer than the room may allow.
const WHOLE: usize = 3;

/// Fills the room on a face with one block of rows, each module fully supported by the row below, with the joints that
/// the kit allows: the fullest, or the first with at least `enough` modules. Without a bound.
pub(super) fn rows(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: &Fire,
    enough: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    rows_of(site, &spaces(site, allowed)?, fire, (site.job.kit.reveal.usual, enough), stop)
}

fn rows_of(
    site: &Site<'_>,
    spaces: &Spaces,
    fire: &Fire,
    (reveal, enough): (Length, usize),
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let mut best = site.maker().nothing(fire);
    for ((orientation, tile), (_, space)) in site.maker().tiles_with(reveal).zip(spaces) {
        for joints in joints(site.job, site.mode)? {
            if best.modules >= enough {
                break;
            }
            let rules = RowRules { joints, base: site.base(), hooked: true };
            let fit = fit_rows_in(space, &tile, &rules, stop)?;
            if fit.count() > best.modules {
                best = rows_fill(site, fire, orientation, fit, usize::MAX);
            }
        }
    }
    Ok(best)
}

/// Fills the room on a face in all other ways that the kit allows: several blocks whose rows hook as far as the book
/// requires, whole rectangles; and, if fewer than `enough` modules are found, the same and rows with the kit's least
/// reveal. The fullest, or the first with `enough`. Without a bound. Random steps are deducted from the given budget.
pub(super) fn several(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: &Fire,
    (enough, by_chance): (usize, &Cell<usize>),
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let (maker, base) = (site.maker(), site.base());
    let ways = joints(site.job, site.mode)?;
    let (hooked, apart) = (site.job.rule_book.hooked_share.value, chalkcourse_limits::apart(site.job));
    let reveal = site.job.kit.reveal;
    let mut reveals = vec![reveal.usual];
    if reveal.least < reveal.usual {
        reveals.push(reveal.least);
    }
    let mut best = maker.nothing(fire);
    let mut better = |found: Fill| {
        if found.modules > best.modules {
            best = found;
        }
        best.modules >= enough
    };
    let (halves, spaces) = (halves(allowed), spaces(site, allowed)?);
    // Half of the remaining steps: the room may be searched again beside a corridor.
    let each = by_chance.get() / (2 * reveals.len() * spaces.len()).max(1);
    for reveal in reveals {
        for ((orientation, tile), (_, space)) in maker.tiles_with(reveal).zip(&spaces) {
            if ways.contains(&Joints::Free) {
                let rules = HookRules { base, hooked, apart };
                let look = Look { enough, by_chance: each };
                let found = fit_several((space, &halves), &tile, &rules, look, stop)?;
                by_chance.set(by_chance.get().saturating_sub(found.by_chance));
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
        if reveal < site.job.kit.reveal.usual && better(rows_of(site, &spaces, fire, (reveal, enough), stop)?)
        {
            return Ok(best);
        }
    }
    // What no search above covers: modules of both orientations, several blocks where rows may not slide, the fullest
    // block on one side of a wing before what is beside it.
    better(mixed(site, (&spaces, &halves), fire, enough, stop)?);
    Ok(best)
}

/// Most halves of a face to start consecutive blocks in.
const MOST_HALVES: usize = 24;

/// Blocks laid one after the other, each the fullest that the remaining room allows, in either orientation; the first
/// one anywhere, or in one half of the face.
fn mixed(
    site: &Site<'_>,
    (spaces, halves): (&Spaces, &[Polygon]),
    fire: &Fire,
    enough: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let mut best: Vec<(Orientation, Tile, Vec<Placed>)> = Vec::new();
    let count =
        |laid: &[(Orientation, Tile, Vec<Placed>)]| laid.iter().map(|(_, _, p)| p.len()).sum::<usize>();
    for half in std::iter::once(None).chain(halves.iter().take(MOST_HALVES).map(Some)) {
        if count(&best) >= enough || stop() {
            break;
        }
        let mut laid: Vec<(Orientation, Tile, Vec<Placed>)> = Vec::new();
        let mut left: Spaces = match half {
            Some(half) => of_each(spaces, &|space| space.less(std::slice::from_ref(half))),
            None => spaces.clone(),
        };
        while let Some(next) = fullest(site, &left, stop)?.filter(|_| laid.len() < MOST_BLOCKS) {
            laid.push(next);
            let blocks: Vec<Vec<Placed>> = laid.iter().map(|(_, _, placed)| placed.clone()).collect();
            left = of_each(spaces, &|space| space.beside(&blocks, chalkcourse_limits::apart(site.job)));
        }
        if count(&laid) > count(&best) {
            best = laid;
        }
    }
    let blocks = (0u32..).zip(&best);
    let blocks = blocks.filter_map(|(n, (way, tile, placed))| site.maker().block(n, *way, *tile, placed));
    Ok(pieces(site, fire, blocks.collect()))
}

/// Most blocks laid one after the other.
const MOST_BLOCKS: usize = 8;

/// The space for each orientation, with the tile at its usual reveal. The space does not depend on the reveal.
type Spaces = Vec<((Orientation, Tile), Space)>;

fn spaces(site: &Site<'_>, allowed: &Allowed) -> Result<Spaces, FillError> {
    let of = |way: (Orientation, Tile)| Ok((way, Space::of(allowed, &way.1)?));
    site.maker().tiles().map(of).collect()
}

fn of_each(spaces: &Spaces, left: &dyn Fn(&Space) -> Space) -> Spaces {
    spaces.iter().map(|(way, space)| (*way, left(space))).collect()
}

/// The block of rows with the most modules, in either orientation, with the joints that the kit allows.
fn fullest(
    site: &Site<'_>,
    spaces: &Spaces,
    stop: &dyn Fn() -> bool,
) -> Result<Option<(Orientation, Tile, Vec<Placed>)>, FillError> {
    let mut best: Option<(Orientation, Tile, Vec<Placed>)> = None;
    for ((orientation, tile), space) in spaces {
        for joints in joints(site.job, site.mode)? {
            let rules = RowRules { joints, base: site.base(), hooked: true };
            let fit = fit_rows_in(space, tile, &rules, stop)?;
            if fit.count() > best.as_ref().map_or(0, |(_, _, placed)| placed.len()) {
                best = Some((*orientation, *tile, fit.placed));
            }
        }
    }
    Ok(best)
}

/// A fill of several blocks.
fn pieces(site: &Site<'_>, fire: &Fire, blocks: Vec<Block>) -> Fill {
    let modules = blocks.iter().map(|block| block.cells().count()).sum();
    let way = Some(made::base_words(site.job, site.base()));
    let basis = Basis { fire: fire.clone(), way, laid: FillKind::Pieces, every: false };
    site.maker().fill(blocks, modules, usize::MAX, false, "", basis)
}

/// Continues the search for rows in one block in the room of a fill; reports each result with more modules.
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
