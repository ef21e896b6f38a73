//! Modules and their flashing.

use crate::build::Build;
use crate::{Kind, Marks, SolidObject};
use chalkcourse_geometry::{DVec2, DVec3, Plane, dvec2};
use chalkcourse_job::{Flashing, Resolved};
use chalkcourse_layout::{Layout, PlacedBlock, Run, RunKind};

/// Height of flashing above the deck as drawn, so that the two do not intersect.
const SHEET: f64 = 0.006;

/// All blocks on sound faces.
pub(crate) fn blocks(build: &mut Build, job: &Resolved, layout: &Layout) {
    for block in &layout.blocks {
        let face = layout.roof.faces.get(block.face).filter(|face| face.sound);
        if let Some(face) = face {
            let laid = Laid { plane: &face.plane, thick: job.kit.module.thickness.metres().clamp(0.0, 1.0) };
            modules(build, &laid, block);
            border(build, &laid, block, &job.kit.flashing);
        }
    }
}

/// A plane carrying modules of one thickness.
struct Laid<'a> {
    plane: &'a Plane,
    thick: f64,
}

impl Laid<'_> {
    /// A point of the face's frame at a height above the deck.
    fn at(&self, frame: DVec2, above: f64) -> DVec3 {
        self.plane.to_space(frame) + self.plane.normal() * above
    }
}

fn modules(build: &mut Build, laid: &Laid<'_>, block: &PlacedBlock) {
    for module in &block.modules {
        let size = module.rect.size();
        let top = module.rect.corners().map(|corner| laid.at(corner, laid.thick));
        let marks = Marks::Module { width: size.x, height: size.y };
        build.quad(Kind::Module, SolidObject::Module(block.id, module.cell), top, marks);
    }
}

/// The sides of the block and the flashing beyond them. Gaps between modules are a few millimetres, so no sides show there.
fn border(build: &mut Build, laid: &Laid<'_>, block: &PlacedBlock, flashing: &Flashing) {
    let of = SolidObject::Block(block.id);
    for run in &block.runs {
        let (out, reach) = match run.kind {
            RunKind::Row => continue,
            RunKind::BaseRail | RunKind::OpenBottom => (dvec2(0.0, -1.0), flashing.base),
            RunKind::Head => (dvec2(0.0, 1.0), flashing.head),
            RunKind::LeftSide => (dvec2(-1.0, 0.0), flashing.side),
            RunKind::RightSide => (dvec2(1.0, 0.0), flashing.side),
        };
        let (a, b) = seen_from(run, out);
        let side = [laid.at(a, 0.0), laid.at(b, 0.0), laid.at(b, laid.thick), laid.at(a, laid.thick)];
        build.quad(Kind::ModuleSide, of, side, Marks::Plain);
        // Head flashing laps over the side flashing; under a higher row it is hidden.
        let lap = if run.kind == RunKind::Head { flashing.side.metres() } else { 0.0 };
        let along = (b - a).normalize_or_zero() * lap.clamp(0.0, 1.0);
        let beyond = out * reach.metres().clamp(0.0, 2.0);
        let sheet = [a - along + beyond, b + along + beyond, b + along, a - along];
        build.quad(Kind::Flashing, of, sheet.map(|p| laid.at(p, SHEET)), Marks::Plain);
    }
}

/// The ends of a run as seen from outside, left end first.
fn seen_from(run: &Run, out: DVec2) -> (DVec2, DVec2) {
    if (run.to - run.from).perp_dot(out) < 0.0 { (run.from, run.to) } else { (run.to, run.from) }
}
