//! No module overlaps another. Blocks that stay in place are obstacles, row by row, reveals included. Overlaps within a block are
//! up to whoever lays it: a shift within a row may put one module on the next, which the check reports.
//!
//! Source: geometry.

use crate::keep_out::{Against, KeepOut, Shape};
use crate::limit::{Limit, nothing_missing};
use crate::site::Site;
use chalkcourse_geometry::Convex;
use chalkcourse_layout::PlacedBlock;

pub(crate) const LIMIT: Limit = Limit { code: "overlap", missing: nothing_missing, gives };

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    found.extend(site.standing().map(|block| around(LIMIT.code, block)));
}

/// A block as a keep-out.
pub(crate) fn around(rule: &'static str, block: &PlacedBlock) -> KeepOut {
    let rows = block.stretches().map(|(_, row)| Convex::rect(&row)).collect();
    KeepOut::of(rule, Against::Block(block.id), Shape::Pieces(rows))
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
