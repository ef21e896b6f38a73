//! Modules lie entirely on their face. Even an edge without a setback may not be crossed, and neither may a hole in the face.
//!
//! Source: geometry. The region of a fill is the face, whatever a book switches off: see [`room`](crate::room).

use crate::keep_out::{Against, KeepOut, Shape};
use crate::limit::{Limit, nothing_missing};
use crate::site::Site;

pub(crate) const LIMIT: Limit = Limit { code: "off-face", missing: nothing_missing, gives };

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    found.push(KeepOut::of(LIMIT.code, Against::Border, Shape::Outside(site.face.frame.clone())));
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable, just};
    use chalkcourse_geometry::DVec2;

    #[test]
    fn inside_at_and_over_the_rake() {
        just(&gable(), "off-face", (12.0 - 1.722, 1.0), DVec2::X);
        just(&gable(), "off-face", (0.0, 1.0), DVec2::NEG_X);
    }

    #[test]
    fn a_hole_is_not_deck() {
        let mut job = gable();
        let hole = [(4.0, 2.0), (4.5, 2.0), (4.5, 2.5), (4.0, 2.5)];
        job.faces[0].outline.holes.push(hole.map(Into::into).to_vec());
        just(&job, "off-face", (4.0 - 1.722, 2.0), DVec2::X);
    }
}
