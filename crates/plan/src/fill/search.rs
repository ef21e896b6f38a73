//! Search on one face: laid without regard to pathways, checked, and if the rules reject it, laid again beside each
//! corridor that may be left free.

use super::corridor::{Corridor, corridors};
use super::every::Every;
use super::judge::Judge;
use super::{Fill, FillError, FillKind, Mode, Site, lay, made, rank, trim, worth};
use crate::room::Fire;
use chalkcourse_geometry::fit::Allowed;
use chalkcourse_limits::Share;
use chalkcourse_words::{Said, later as words};
use std::cell::Cell;

/// Most corridors to lay a face again beside.
const MOST_LAID: usize = 6;

/// Search effort for bounds at first and at the end; a million steps take about a millisecond.
pub(super) const STEPS: usize = 100_000_000;
const MOST_STEPS: usize = 2_000_000_000;
/// Effort where more than one module is left open.
const STEPS_IF_WIDE: usize = 2_000_000_000;
/// Random steps per module that may be missing on a face, and how many of those modules count; a million steps take
/// about a second.
const STEPS_BY_CHANCE: usize = 600_000;
const MOST_MISSING: usize = 3;

/// Effort of the usual fill.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Pace {
    /// One block of rows, with the bound by straight lines: for a first answer.
    AtOnce,
    /// All kinds of layouts.
    Whole,
}

/// The best layout found on a face, with its bound and claim.
pub(super) fn face(
    judge: &Judge,
    site: &Site<'_>,
    (share, pace): (Share, Pace),
    weight: f64,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let mut fill = match site.mode {
        Mode::SlidingRows => usual(judge, site, (share, pace), stop)?,
        Mode::ByWorth(asked) => {
            let lay =
                |allowed: &Allowed, fire: &Fire| worth::fill_room(site, allowed, fire, asked, weight, stop);
            let mut fill = best(judge, site, share, f64::INFINITY, &lay, stop)?;
            let every = Every::of(judge, site.face, site.index, share);
            let most = every.at_most(fill.modules, STEPS, stop)?;
            worth::bound_all(&mut fill, most, asked, weight);
            fill
        }
        _ => {
            let lay = |allowed: &Allowed, fire: &Fire| lay::fill_room(site, allowed, fire, stop);
            best(judge, site, share, f64::INFINITY, &lay, stop)?
        }
    };
    made::claim(judge, site.job, &mut fill, site.mode);
    Ok(fill)
}

/// All kinds of layouts with a bound for all of them: first the quick search, and more if that leaves a gap.
fn usual(
    judge: &Judge,
    site: &Site<'_>,
    (share, pace): (Share, Pace),
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let every = Every::of(judge, site.face, site.index, share);
    let by_lines = every.at_most(usize::MAX, 0, stop)?;
    let rows = |allowed: &Allowed, fire: &Fire| lay::rows(site, allowed, fire, by_lines, stop);
    let mut fill = best(judge, site, share, by_lines as f64, &rows, stop)?;
    let whole = pace == Pace::Whole;
    let bound =
        if whole && fill.modules < by_lines { every.at_most(fill.modules, STEPS, stop)? } else { by_lines };
    if whole && fill.modules < bound && !stop() {
        let by_chance = Cell::new(STEPS_BY_CHANCE * (bound - fill.modules).min(MOST_MISSING));
        let several =
            |allowed: &Allowed, fire: &Fire| lay::several(site, allowed, fire, (bound, &by_chance), stop);
        let fuller = best(judge, site, share, bound as f64, &several, stop)?;
        if fuller.modules > fill.modules {
            fill = fuller;
        }
    }
    fill.bound = bound.max(fill.modules);
    if whole && fill.modules + 1 < fill.bound && !stop() {
        let bound = every.at_most(fill.modules + 1, STEPS_IF_WIDE, stop)?;
        fill.bound = fill.bound.min(bound.max(fill.modules));
    }
    fill.proved = fill.bound == fill.modules;
    (fill.basis.way, fill.searched) = (lay::base_asked(site), searched(site, &fill, pace));
    Ok(fill)
}

fn searched(site: &Site<'_>, fill: &Fill, pace: Pace) -> Said {
    if pace == Pace::AtOnce && !fill.proved {
        return words::fill::ONE_BLOCK_SO_FAR.into();
    }
    let laid = match (&fill.basis.laid, fill.blocks.len()) {
        (FillKind::Rows(_), _) | (_, 1) => words::fill::ONE_BLOCK,
        _ => words::fill::SEVERAL_BLOCKS,
    };
    let others = site.job.blocks.iter().any(|block| block.face != site.face);
    words::fill::rows_that_slide_in_one(&laid, &others.then_some(words::fill::OTHER_FACES_AS_THEY_ARE))
}

/// The best layout in one mode. The bound is that without any corridor: it holds whatever corridor is left free.
fn best(
    judge: &Judge,
    site: &Site<'_>,
    share: Share,
    enough: f64,
    lay: &dyn Fn(&Allowed, &Fire) -> Result<Fill, FillError>,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let within = |kept: Corridor| {
        let fire = site.fire(share, kept);
        lay(&site.allowed(&fire), &fire)
    };
    let free = within(Vec::new())?;
    if judge.passes(site.job, &free) {
        return Ok(free);
    }
    let mut best = trim::to_pass(site, judge, &free);
    let mut laid = 0;
    for way in corridors(site, &free.blocks) {
        if stop() || laid >= MOST_LAID || rank(&best) >= enough {
            break;
        }
        // If not even what is left beside it passes, nothing laid beside it will.
        let left = trim::out_of(site, &free, &way);
        if !judge.passes(site.job, &left) {
            continue;
        }
        laid += 1;
        let anew = within(way)?;
        for found in [left, anew] {
            let found =
                if judge.passes(site.job, &found) { found } else { trim::to_pass(site, judge, &found) };
            if rank(&found) > rank(&best) {
                best = found;
            }
        }
    }
    best.bound = free.bound.max(best.modules);
    best.proved = free.proved && rank(&best) >= rank(&free);
    if let (Some(best), Some(free)) = (&mut best.measure, &free.measure) {
        best.bound = free.bound.max(best.value);
    }
    Ok(best)
}

/// Continues with faces whose bound is not reached; reports better layouts and lower bounds, for all faces at a time.
pub(super) fn improve(
    judge: &Judge,
    fills: &mut [Fill],
    stop: &dyn Fn() -> bool,
    tell: &mut dyn FnMut(&[Fill]),
) -> Result<(), FillError> {
    for at in 0..fills.len() {
        let Some(fill) = fills.get(at).filter(|fill| !fill.proved).cloned() else { continue };
        let others = fills.iter().enumerate().filter(|(other, _)| *other != at);
        let job = others.fold(judge.bare.clone(), |job, (_, fill)| judge.with(&job, fill).0);
        let site = Site::of(judge, &job, fill.face, Mode::SlidingRows, fills.len() > 1)?;
        // A bound with the smaller ridge setback holds for either.
        let every = Every::of(judge, site.face, site.index, Share::Within);
        let mut steps = STEPS;
        while steps < MOST_STEPS && !stop() && fills.get(at).is_some_and(|fill| !fill.proved) {
            steps *= 8;
            let bound = every.at_most_in_cases(fill.modules, (steps, steps), stop)?;
            let Some(now) = fills.get_mut(at).filter(|now| bound < now.bound) else { continue };
            now.bound = bound.max(now.modules);
            now.proved = now.bound == now.modules;
            made::claim(judge, &job, now, Mode::SlidingRows);
            tell(fills);
        }
        let mut found: Vec<Fill> = Vec::new();
        if !stop() && fills.get(at).is_some_and(|fill| !fill.proved) {
            lay::improve(&site, &fill, stop, &mut |better| found.push(better))?;
        }
        for mut better in found {
            let Some(now) = fills.get_mut(at).filter(|now| better.modules > now.modules) else { continue };
            if !judge.passes_at_last(&job, &better) {
                continue;
            }
            better.keep_names(now);
            better.bound = now.bound.max(better.modules);
            better.proved = better.bound == better.modules;
            (better.basis.way, better.searched) =
                (lay::base_asked(&site), searched(&site, &better, Pace::Whole));
            made::claim(judge, &job, &mut better, Mode::SlidingRows);
            *now = better;
            tell(fills);
        }
    }
    Ok(())
}
