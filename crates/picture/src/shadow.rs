//! Shadow map: nearness to the sun of the nearest surface, on a grid perpendicular to its rays.

use crate::raster::{Corner, Flat, NOTHING, Rows};
use glam::Vec3;

/// The shadow map of one sun direction.
pub(crate) struct Shadow {
    /// Unit vector towards the sun.
    toward: Vec3,
    /// Cells across, and the requested number.
    size: usize,
    right: Vec3,
    up: Vec3,
    least: (f32, f32),
    /// Cells per metre.
    scale: f32,
    near: Vec<f32>,
    slack: f32,
}

impl Shadow {
    /// The shadow map of triangles (counter-clockwise from outside), `size` cells across.
    pub(crate) fn of<'a>(
        triangles: impl Iterator<Item = &'a [Vec3; 3]> + Clone,
        toward: Vec3,
        size: usize,
    ) -> Self {
        let right = toward.cross(Vec3::Z).try_normalize().unwrap_or(Vec3::X);
        let up = right.cross(toward);
        let (mut least, mut most) = ((f32::MAX, f32::MAX), (f32::MIN, f32::MIN));
        for p in triangles.clone().flatten() {
            let (x, y) = (p.dot(right), p.dot(up));
            (least.0, least.1) = (least.0.min(x), least.1.min(y));
            (most.0, most.1) = (most.0.max(x), most.1.max(y));
        }
        let extent = (most.0 - least.0).max(most.1 - least.1).max(1.0);
        // a cell of margin on all sides
        let scale = (size as f32 - 2.0).max(1.0) / extent;
        let least = (least.0 - 1.0 / scale, least.1 - 1.0 / scale);
        let mut near = vec![f32::MIN; size * size];
        let mut ids = vec![NOTHING; size * size];
        let mut rows = Rows { width: size, top: 0, near: &mut near, ids: &mut ids };
        for corners in triangles {
            let on_grid = |p: &Vec3| Corner {
                x: f64::from((p.dot(right) - least.0) * scale),
                y: f64::from((p.dot(up) - least.1) * scale),
                near: f64::from(p.dot(toward)),
            };
            // Only back faces, so that lit surfaces do not shadow themselves. With y up on this grid, back faces have the winding
            // that a picture with y down would draw.
            let [a, b, c] = corners;
            rows.draw(&Flat { corners: [on_grid(a), on_grid(b), on_grid(c)], id: 0 });
        }
        Self { toward, size, right, up, least, scale, near, slack: 0.01 + 1.0 / scale }
    }

    /// Whether this map is for that sun and at least that fine.
    pub(crate) fn serves(&self, toward: Vec3, size: usize) -> bool {
        self.toward.distance(toward) < 1e-6 && self.size >= size
    }

    /// The sunlit fraction of a surface point: 0 to 1, in between at the edge of a shadow.
    pub(crate) fn reaches(&self, p: Vec3, normal: Vec3, smooth: bool) -> f32 {
        // Offset from the surface: at grazing angles a cell of the grid covers a long stretch of it.
        let p = p + normal * (self.slack * 1.5);
        let x = (p.dot(self.right) - self.least.0) * self.scale - 0.5;
        let y = (p.dot(self.up) - self.least.1) * self.scale - 0.5;
        let near = p.dot(self.toward) + self.slack;
        if !smooth {
            return self.lit((x + 0.5).floor(), (y + 0.5).floor(), near);
        }
        let (left, top) = (x.floor(), y.floor());
        let (fx, fy) = (x - left, y - top);
        let row = |y: f32| self.lit(left, y, near) * (1.0 - fx) + self.lit(left + 1.0, y, near) * fx;
        row(top) * (1.0 - fy) + row(top + 1.0) * fy
    }

    fn lit(&self, x: f32, y: f32, near: f32) -> f32 {
        if x < 0.0 || y < 0.0 || x >= self.size as f32 || y >= self.size as f32 {
            return 1.0;
        }
        let shaded = self.near.get(y as usize * self.size + x as usize).is_some_and(|&n| n > near);
        if shaded { 0.0 } else { 1.0 }
    }
}
