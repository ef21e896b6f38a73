//! The ridge setback grows with the share of the roof that the array covers: faces are filled with each setback, and
//! modules above the share for the smaller one are removed.

use super::every::Every;
use super::judge::Judge;
use super::search::{Pace, STEPS};
use super::{Fill, FillError, MeasureOf, Mode, Site, made, search, trim, worth};
use chalkcourse_job::{FaceId, Resolved};
use chalkcourse_limits::{Share, array_share};

/// Fills faces with whichever ridge setback holds more modules.
pub(super) fn fill(
    judge: &Judge,
    faces: &[FaceId],
    mode: Mode,
    pace: Pace,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Fill>, FillError> {
    let (mut first, after) = pass(judge, faces, mode, (Share::Within, pace), stop)?;
    let share = Share::of(&after, array_share(&judge.laid_out(&after)));
    if Share::Beyond.asked(&after) <= Share::Within.asked(&after) {
        return Ok(first);
    }
    if share == Share::Within {
        if let ([fill], Pace::Whole, false) = (first.as_mut_slice(), pace, stop()) {
            tighten(judge, fill, mode, stop)?;
        }
        return Ok(first);
    }
    // This many modules require the larger ridge setback. Keep results that are valid should the user stop the second
    // pass: one cut back to that setback, and one that covers no more than the share.
    let less = to_share(judge, faces, mode, &first)?;
    let clear = to_ridge(judge, faces, mode, &first, share)?;
    let second = if stop() { Vec::new() } else { pass(judge, faces, mode, (share, pace), stop)?.0 };
    let bounds = bounds(judge, faces, &first, &second);
    let sum = |fills: &[Fill]| fills.iter().map(super::rank).sum::<f64>();
    let mut best = less;
    for other in [clear, second] {
        if other.len() == best.len() && sum(&other) > sum(&best) {
            best = other;
        }
    }
    for (fill, bound) in best.iter_mut().zip(bounds) {
        fill.bound = bound.max(fill.modules);
        match &mut fill.measure {
            None => fill.proved = fill.bound == fill.modules,
            Some(measure) => {
                let before = first.iter().find(|old| old.face == fill.face);
                let old =
                    before.and_then(|old| old.measure.as_ref()).filter(|old| old.of == MeasureOf::Worth);
                measure.bound = old.map_or(measure.bound, |old| old.bound.max(measure.bound));
                fill.proved &= measure.bound - measure.value <= 1e-7 * (1.0 + measure.value.abs());
            }
        }
        made::claim(judge, &after, fill, mode);
    }
    Ok(best)
}

/// The overall bound: with the smaller ridge setback and then no more than the share allows, or with the larger one.
/// Only a single face has the whole share to itself.
fn bounds(judge: &Judge, faces: &[FaceId], first: &[Fill], second: &[Fill]) -> Vec<usize> {
    let with_more =
        |fill: &Fill| second.iter().find(|other| other.face == fill.face).map(|other| other.bound);
    let bound = |fill: &Fill| match (faces, with_more(fill)) {
        ([face], Some(more)) => {
            fill.bound.min(within_share(judge, *face, fill.bound)).max(more.min(fill.bound))
        }
        _ => fill.bound,
    };
    first.iter().map(bound).collect()
}

/// Lowers the bound of a single filled face, where more modules than the share allows would require the larger ridge
/// setback.
fn tighten(judge: &Judge, fill: &mut Fill, mode: Mode, stop: &dyn Fn() -> bool) -> Result<(), FillError> {
    if fill.proved || mode != Mode::SlidingRows {
        return Ok(());
    }
    let within = within_share(judge, fill.face, fill.bound);
    let Some((index, _)) = judge.layout.face(fill.face).filter(|_| within < fill.bound) else {
        return Ok(());
    };
    let every = Every::of(judge, fill.face, index, Share::Beyond);
    let beyond = every.at_most(fill.modules.max(within), STEPS, stop)?;
    fill.bound = fill.bound.min(within.max(beyond)).max(fill.modules);
    fill.proved = fill.bound == fill.modules;
    made::claim(judge, &judge.bare, fill, mode);
    Ok(())
}

/// How many modules on a face, at most `most`, keep the array within the share of the roof for the smaller setback:
/// counting modules without reveals, which is the least that they cover.
fn within_share(judge: &Judge, face: FaceId, most: usize) -> usize {
    let (job, layout) = (&judge.bare, &judge.layout);
    let Some(on) = layout.face(face).and_then(|(index, _)| layout.roof.faces.get(index)) else { return most };
    let module = &job.kit.module;
    let each = module.length.metres() * module.width.metres() / on.plane.pitch.slope_factor();
    let roof = layout.roof.plan_area();
    if roof <= 0.0 {
        return most;
    }
    let there = array_share(layout);
    let within = |n: &usize| Share::of(job, there + (*n as f64 * each - 1e-6) / roof) == Share::Within;
    (0..=most).take_while(within).last().unwrap_or(0)
}

/// Fills faces one after the other, each given those before it; also returns the job with all of them in place.
fn pass(
    judge: &Judge,
    faces: &[FaceId],
    mode: Mode,
    (share, pace): (Share, Pace),
    stop: &dyn Fn() -> bool,
) -> Result<(Vec<Fill>, Resolved), FillError> {
    let mut job = judge.bare.clone();
    let mut fills: Vec<Fill> = Vec::new();
    for &face in faces {
        // If stopped before anything was found, still give a first answer; after that, faces not started stay as they
        // are.
        if !fills.is_empty() && stop() {
            break;
        }
        let site = Site::of(judge, &job, face, mode, faces.len() > 1)?;
        let weight = worth::weight(&job, &site.layout, faces, face, mode);
        let found = search::face(judge, &site, (share, pace), weight, stop)?;
        job = judge.with(&job, &found).0;
        fills.push(found);
    }
    Ok((fills, job))
}

/// Fills cut back one after the other, with the others in place.
fn cut(
    judge: &Judge,
    faces: &[FaceId],
    mode: Mode,
    fills: &[Fill],
    cut: &dyn Fn(&Site<'_>, &Fill) -> Fill,
) -> Result<Vec<Fill>, FillError> {
    let mut fills = fills.to_vec();
    for at in (0..fills.len()).rev() {
        let others = fills.iter().enumerate().filter(|(other, _)| *other != at);
        let job = others.fold(judge.bare.clone(), |job, (_, fill)| judge.with(&job, fill).0);
        let Some(fill) = fills.get_mut(at) else { continue };
        let site = Site::of(judge, &job, fill.face, mode, faces.len() > 1)?;
        *fill = cut(&site, fill);
    }
    Ok(fills)
}

fn to_share(judge: &Judge, faces: &[FaceId], mode: Mode, fills: &[Fill]) -> Result<Vec<Fill>, FillError> {
    cut(judge, faces, mode, fills, &|site, fill| trim::to_share(site, judge, fill, Share::Within))
}

fn to_ridge(
    judge: &Judge,
    faces: &[FaceId],
    mode: Mode,
    fills: &[Fill],
    share: Share,
) -> Result<Vec<Fill>, FillError> {
    cut(judge, faces, mode, fills, &|site, fill| trim::to_ridge(site, fill, share))
}
