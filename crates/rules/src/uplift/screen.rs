use crate::view::{BlockView, LaidBlock, Snapshot};
use crate::wind::{
    Coefficients, Conditions, Figure, Near, Refused, RoofShape, Zone, coefficients, unknown_wind, zone_near,
};
use crate::{Section, Unknown, WhyNot};
use chalkcourse_geometry::{DVec2, EdgeKind, Rect, dvec2};
use chalkcourse_job::{BlockId, LoadStandard, Resolved};
use chalkcourse_layout::Layout;

/// Result of screening a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Screening {
    /// The edition.
    pub standard: LoadStandard,
    /// Mean roof height, feet.
    pub height_ft: f64,
    /// Velocity pressure times Kd, pounds per square foot.
    pub q_kd_psf: f64,
    /// Width of edge zones, feet.
    pub zone_width_ft: f64,
    /// Each block on a sound face.
    pub blocks: Vec<BlockScreening>,
}

/// Screening of one block.
#[derive(Clone, Debug, PartialEq)]
pub struct BlockScreening {
    /// The block.
    pub block: BlockId,
    /// Its worst zone and the uplift there, or why it is not calculated.
    pub outcome: Result<Uplift, Refused>,
}

/// Uplift on a block, in its worst zone.
#[derive(Clone, Debug, PartialEq)]
pub struct Uplift {
    /// The worst zone that a module reaches into.
    pub zone: Zone,
    /// The figure used.
    pub figure: Figure,
    /// Outward pressure, pounds per square foot, at strength level; positive lifts.
    pub psf: f64,
    /// Demand on one fastener after dead load, for allowable stress design, pounds.
    pub pounds: f64,
}

/// What a screening needs that the job does not state; `None` if nothing is missing.
pub(super) fn unknown(job: &Resolved) -> Option<WhyNot> {
    if job.rule_book.loads.is_none() {
        return Some(WhyNot::NotInBook(Section::Wind));
    }
    let site = &job.site.building;
    let mut missing = unknown_wind(job);
    missing.extend(Unknown::among([
        (Unknown::FastenerHold, site.fastener_pounds.is_none() && job.kit.hold_down.is_none()),
        (
            Unknown::DeckUnderFastener,
            site.fastener_square_feet.is_none() && job.kit.deck_a_fastener().is_none(),
        ),
    ]));
    (!missing.is_empty()).then_some(WhyNot::NotKnown(missing))
}

/// Screens the blocks of a job. `None` if rule book or site lack data for it.
pub fn screen(job: &Resolved, layout: &Layout) -> Option<Screening> {
    let snapshot = Snapshot::of(job, layout);
    let conditions = snapshot.wind()?;
    let blocks = snapshot
        .blocks()
        .map(|view| Some(BlockScreening { block: view.laid.block.id, outcome: uplift(view, conditions)? }));
    Some(Screening {
        standard: conditions.standard,
        height_ft: conditions.height_ft,
        q_kd_psf: conditions.q_kd_psf,
        zone_width_ft: conditions.zone_width_ft,
        blocks: blocks.collect::<Option<Vec<_>>>()?,
    })
}

/// Uplift on one block. `None` if neither site nor kit gives the deck area per fastener.
pub(super) fn uplift(view: BlockView<'_>, conditions: &Conditions) -> Option<Result<Uplift, Refused>> {
    let square_feet = view.kit().fastener(view.site())?.square_feet;
    let lift = match Lift::of(view, conditions)? {
        Ok(lift) => lift,
        Err(refused) => return Some(Err(refused)),
    };
    let outward = |zone| Some((zone, lift.figure.outward(zone, square_feet)?));
    let worst = view.laid.placed.modules.iter().filter_map(|module| outward(lift.zone(&module.rect)));
    let Some((zone, _)) = worst.min_by(|a, b| a.1.total_cmp(&b.1)) else { return Some(Err(Refused::NoZone)) };
    let (psf, pounds) = lift.on_fastener(zone, square_feet)?;
    Some(Ok(Uplift { zone, figure: lift.figure.figure, psf, pounds: pounds.max(0.0) }))
}

/// Uplift on the fasteners of one block.
pub(super) struct Lift<'a> {
    laid: &'a LaidBlock<'a>,
    conditions: &'a Conditions,
    figure: Coefficients,
    shape: RoofShape,
    /// Component of the array's weight square to the deck, pounds per square foot.
    dead: f64,
    wind_factor: f64,
    dead_factor: f64,
}

impl<'a> Lift<'a> {
    /// `None` if the rule book does not cover loads; refused if the figures do not cover the roof.
    pub(super) fn of(view: BlockView<'a>, conditions: &'a Conditions) -> Option<Result<Self, Refused>> {
        let laid = view.laid;
        let loads = view.book().loads.as_ref()?;
        let module = &view.kit().module;
        let module_feet = module.length.feet() * module.width.feet();
        let dead = if module_feet > 0.0 { module.mass_kg / 0.453_592_37 / module_feet } else { 0.0 };
        let of = |shape| {
            let figure = coefficients(conditions.standard, shape, laid.face.plane.pitch.degrees())?;
            Ok(Self {
                laid,
                conditions,
                figure,
                shape,
                // Dead load acts vertically; its component square to the deck resists uplift.
                dead: dead * laid.face.plane.pitch.radians().cos(),
                wind_factor: loads.wind_factor.value,
                dead_factor: loads.dead_factor.value,
            })
        };
        Some(conditions.shape.and_then(of))
    }

    /// The zone of a module.
    pub(super) fn zone(&self, rect: &Rect) -> Zone {
        let steep = self.laid.face.plane.pitch.degrees() > 27.0;
        let near = near(self.laid, rect, self.conditions.zone_width_ft * 0.3048);
        zone_near(self.conditions.standard, self.shape, steep, near)
    }

    /// Outward pressure, pounds per square foot at strength level, and uplift on one fastener for a deck area, pounds for
    /// allowable stress design. `None` for a zone that the figure does not have.
    pub(super) fn on_fastener(&self, zone: Zone, square_feet: f64) -> Option<(f64, f64)> {
        let psf = self.conditions.psf(self.figure.outward(zone, square_feet)?);
        Some((psf, (self.wind_factor * psf - self.dead_factor * self.dead) * square_feet))
    }
}

/// The edges within an edge-zone width of a module, in plan.
fn near(laid: &LaidBlock<'_>, rect: &Rect, width: f64) -> Near {
    let factor = laid.face.plane.pitch.slope_factor();
    let level = |p: DVec2| dvec2(p.x, p.y / factor);
    let flat = Rect { min: level(rect.min), max: level(rect.max) };
    let mut near = Near::default();
    for span in &laid.face.edges {
        if flat.distance_to_segment(level(span.frame.0), level(span.frame.1)) < width {
            match span.kind {
                EdgeKind::Eave => near.eave = true,
                EdgeKind::Rake => near.rake = true,
                EdgeKind::Ridge => near.ridge = true,
                EdgeKind::Hip => near.hip = true,
                _ => {}
            }
        }
    }
    near
}
