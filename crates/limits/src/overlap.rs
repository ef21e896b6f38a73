//! No module lies on another one. Modules of one block can't: a block's reveal is never below zero and rows shift only along
//! themselves. So it is blocks that stay which are in the way, row by row, reveals and all.
//!
//! Source: geometry.

use crate::keep_out::{Against, Held, KeepOut, Metric, Shape};
use crate::registry::{Limit, nothing_missing};
use crate::site::Site;
use chalkcourse_geometry::{Convex, Rect, dvec2};
use chalkcourse_layout::{PlacedBlock, Run};

pub(crate) const LIMIT: Limit = Limit { code: "overlap", missing: nothing_missing, keep_outs };

fn keep_outs(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    found.extend(site.standing().map(|block| around(LIMIT.code, block, 0.0)));
}

/// What stays so far off a block.
pub(crate) fn around(rule: &'static str, block: &PlacedBlock, reach: f64) -> KeepOut {
    KeepOut {
        rule,
        against: Against::Block(block.id),
        shape: Shape::Pieces(rows(block)),
        reach,
        metric: Metric::OnSlope,
        held: Held::Module,
        asked: reach,
        edges: Vec::new(),
    }
}

/// The rows of a block, each without a break.
fn rows(block: &PlacedBlock) -> Vec<Convex> {
    let high = block.modules.first().map_or(0.0, |module| module.rect.size().y);
    let row = |run: &Run| Rect { min: run.from, max: run.to + dvec2(0.0, high) };
    block.strings.iter().map(|run| Convex::rect(&row(run))).collect()
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, gable, just};
    use chalkcourse_geometry::DVec2;

    #[test]
    fn beside_touching_and_over() {
        let mut job = gable();
        job.blocks = vec![block(3, 1, (3.0, 1.0), 2, 3)];
        just(&job, "overlap", (3.0 - 1.722, 1.0), DVec2::X);
        just(&job, "overlap", (4.0, 1.0 + 2.0 * 1.134 + 0.003), DVec2::NEG_Y);
    }
}
