//! The modules with the greatest total worth.

use super::outline::outline;
use super::{Basis, Fill, FillError, FillKind, Measure, MeasureOf, Mode, Site, Worth, lay, made};
use crate::room::Fire;
use chalkcourse_geometry::fit::{Allowed, Want, fit_stacks};
use chalkcourse_job::{FaceId, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_words::later as words;

/// The weight of a module on a face: the face's area relative to the largest of the filled faces.
pub(super) fn weight(job: &Resolved, layout: &Layout, faces: &[FaceId], face: FaceId, mode: Mode) -> f64 {
    let Mode::ByWorth(Worth { by_area: true, .. }) = mode else { return 1.0 };
    let area = |face: FaceId| job.face(face).and(layout.face(face)).map_or(0.0, |(_, on)| on.slope_area);
    let most = faces.iter().map(|&face| area(face)).fold(0.0, f64::max);
    if most > 0.0 { area(face) / most } else { 1.0 }
}

/// Fills the room on a face with the modules of greatest total worth.
pub(super) fn fill_room(
    site: &Site<'_>,
    allowed: &Allowed,
    fire: &Fire,
    worth: Worth,
    weight: f64,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    if !(0.0..1e9).contains(&worth.module) {
        return Err(FillError::FillContext(words::fill::a_module_is_worth_give(&worth.module)));
    }
    lay::joints(site.job, site.mode)?;
    let (maker, base) = (site.maker(), site.base());
    let value = worth.module * weight;
    let mut best: Option<Fill> = None;
    let (mut most, mut bound, mut finished) = (0, 0.0_f64, true);
    for (orientation, tile) in maker.tiles() {
        let outline = outline(site.job, &tile, site.exposure())?;
        let found = fit_stacks(allowed, &tile, base, &outline.costs, Want::Worth(value), stop)?;
        most = most.max(found.most);
        finished &= found.finished;
        let Some(stacks) = found.found.first() else { continue };
        let tiles = stacks.placed.len();
        // A block that is worth less than its fixed cost is left out.
        let of = |cost: f64| value * tiles as f64 - cost - outline.block;
        bound = bound.max(of(stacks.least));
        let (pays, worth) = (of(stacks.cost) > 0.0, of(stacks.cost).max(0.0));
        if best.as_ref().is_none_or(|best| best.measure.as_ref().is_none_or(|m| worth > m.value)) {
            let laid: &[_] = if pays { &stacks.placed } else { &[] };
            let blocks = maker.block(0, orientation, tile, laid).into_iter().collect();
            let way = words::fill::one_grid_by_worth_a(
                &format_args!("{value:.2}"),
                &made::base_words(site.job, base),
            );
            let searched = words::fill::one_grid_at_every_offset_every(
                &found.sets,
                &found.ruled_out,
                &(!found.finished).then_some(words::fill::STOPPED_BEFORE_THE_END_2),
            );
            let basis = Basis { fire: fire.clone(), way: Some(way), laid: FillKind::Stacks, every: false };
            let mut fill = maker.fill(blocks, laid.len(), 0, false, searched, basis);
            fill.measure = Some(Measure { of: MeasureOf::Worth, value: worth, bound: worth, any: None });
            best = Some(fill);
        }
    }
    let mut fill = best.unwrap_or_else(|| maker.nothing(fire));
    fill.bound = most.max(fill.modules);
    if let Some(measure) = &mut fill.measure {
        measure.bound = bound.max(measure.value);
        fill.proved = finished || measure.bound - measure.value <= 1e-7 * (1.0 + measure.value);
    }
    Ok(fill)
}

/// Sets the bound on worth over layouts of every kind, given that none has more than `most` modules: their worth
/// without any flashing cost.
pub(super) fn bound_all(fill: &mut Fill, most: usize, worth: Worth, weight: f64) {
    fill.bound = most.max(fill.modules);
    if let Some(measure) = &mut fill.measure {
        measure.any = Some((most as f64 * worth.module * weight).max(measure.value));
    }
}
