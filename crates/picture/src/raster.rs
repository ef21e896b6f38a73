//! Rasterization with a depth buffer.
//!
//! Vertices are snapped to a grid of 1/16 pixel, so that edge functions are integers and two triangles with a common side leave
//! no pixel out and cover none twice (the top-left rule). A pixel belongs to the triangle that contains its centre.

/// Grid steps per pixel.
const GRID: f64 = 16.0;
/// Vertices are clamped to this distance so that no product overflows: half a million pixels.
const FARTHEST: f64 = 500_000.0;

/// No triangle.
pub(crate) const NOTHING: u32 = u32::MAX;

/// A vertex on the picture: pixels from the left and from the top, and nearness. Nearness must be linear in screen space (1 over
/// the depth in perspective, minus the depth in parallel projection) and greater for what is nearer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Corner {
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) near: f64,
}

/// A projected triangle.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Flat {
    pub(crate) corners: [Corner; 3],
    /// Id of what it belongs to.
    pub(crate) id: u32,
}

/// A band of rows: nearness of the nearest triangle at each pixel, and its id.
pub(crate) struct Rows<'a> {
    pub(crate) width: usize,
    /// The first row.
    pub(crate) top: usize,
    pub(crate) near: &'a mut [f32],
    pub(crate) ids: &'a mut [u32],
}

struct Edge {
    /// Value at the centre of the first pixel of the first row.
    at: i64,
    /// Step per pixel.
    right: i64,
    /// Step per row.
    down: i64,
}

/// `floor(a / b)` for b > 0.
fn floor_div(a: i64, b: i64) -> i64 {
    a.div_euclid(b)
}

impl Rows<'_> {
    /// Draws a triangle if it faces the viewer: counter-clockwise as seen (so clockwise with y down).
    pub(crate) fn draw(&mut self, flat: &Flat) {
        let height = self.near.len().checked_div(self.width).unwrap_or(0);
        let grid = |v: f64| (v.clamp(-FARTHEST, FARTHEST) * GRID).round() as i64;
        let points = flat.corners.map(|c| (grid(c.x), grid(c.y)));
        let [a, b, c] = points;
        // Twice the signed area; y points down, so counter-clockwise as seen is negative.
        let area = (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0);
        if area >= 0 || flat.corners.iter().any(|c| !c.near.is_finite()) {
            return;
        }
        let half = GRID as i64 / 2;
        let step = GRID as i64;
        let (min_y, max_y) = (a.1.min(b.1).min(c.1), a.1.max(b.1).max(c.1));
        let first = floor_div(min_y - half + step - 1, step).max(self.top as i64);
        let last = floor_div(max_y - half, step).min((self.top + height) as i64 - 1);
        if first > last {
            return;
        }
        let edges = [(a, b), (b, c), (c, a)].map(|(p, q)| {
            let (dx, dy) = (q.0 - p.0, q.1 - p.1);
            // Positive inside. A pixel on a side belongs to the triangle of which it is a top or left side.
            let owned = dy > 0 || (dy == 0 && dx < 0);
            let at = dy * (half - p.0) - dx * (first * step + half - p.1);
            Edge { at: at - i64::from(!owned), right: dy * step, down: -dx * step }
        });
        let Some(slope) = Slope::of(&flat.corners) else { return };
        for row in first..=last {
            let down = row - first;
            let (mut from, mut to) = (0, self.width as i64 - 1);
            for edge in &edges {
                let at = edge.at + edge.down * down;
                match edge.right {
                    0 if at < 0 => to = -1,
                    0 => {}
                    right if right > 0 => from = from.max(floor_div(-at + right - 1, right)),
                    left => to = to.min(floor_div(at, -left)),
                }
            }
            if from > to {
                continue;
            }
            let start = (row as usize - self.top) * self.width;
            let span = start + from as usize..start + to as usize + 1;
            let (Some(near), Some(ids)) = (self.near.get_mut(span.clone()), self.ids.get_mut(span)) else {
                continue;
            };
            let mut at = slope.at(from as f64 + 0.5, row as f64 + 0.5) as f32;
            let right = slope.right as f32;
            for (near, id) in near.iter_mut().zip(ids) {
                if at > *near {
                    *near = at;
                    *id = flat.id;
                }
                at += right;
            }
        }
    }
}

/// The gradient of nearness over the picture.
struct Slope {
    right: f64,
    down: f64,
    at_zero: f64,
    most: f64,
    least: f64,
}

impl Slope {
    fn of(corners: &[Corner; 3]) -> Option<Self> {
        let [a, b, c] = corners;
        let (bx, by, cx, cy) = (b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y);
        let area = bx * cy - by * cx;
        let (b_near, c_near) = (b.near - a.near, c.near - a.near);
        let right = (b_near * cy - c_near * by) / area;
        let down = (c_near * bx - b_near * cx) / area;
        let at_zero = a.near - right * a.x - down * a.y;
        let sound = right.is_finite() && down.is_finite() && at_zero.is_finite();
        let (most, least) = (a.near.max(b.near).max(c.near), a.near.min(b.near).min(c.near));
        sound.then_some(Self { right, down, at_zero, most, least })
    }

    /// Clamped to the values at the vertices: on a sliver the plane through them extrapolates far out.
    fn at(&self, x: f64, y: f64) -> f64 {
        (self.at_zero + self.right * x + self.down * y).clamp(self.least, self.most)
    }
}

#[cfg(test)]
mod tests;
