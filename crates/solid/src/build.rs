//! Building surfaces.

use crate::{Kind, Marks, Solid, SolidObject, Surface, Triangle};
use chalkcourse_geometry::{DVec2, DVec3, Plane, Polygon, signed_area};

/// A solid under construction.
#[derive(Default)]
pub(crate) struct Build {
    solid: Solid,
}

/// A corner farther out than this is an input error: 1,000 km.
const FARTHEST: f64 = 1e6;

impl Build {
    /// Bounds of the house so far.
    pub(crate) fn bounds(&self) -> Option<(DVec3, DVec3)> {
        self.solid.bounds
    }

    pub(crate) fn done(self) -> Solid {
        self.solid
    }

    /// Adds a surface without triangles yet; `None` if its vectors are degenerate.
    fn surface(&mut self, surface: Surface) -> Option<u32> {
        let sound = [surface.normal, surface.u, surface.v].iter().all(|v| (v.length() - 1.0).abs() < 1e-6)
            && surface.origin.is_finite();
        let index = u32::try_from(self.solid.surfaces.len()).ok()?;
        sound.then(|| {
            self.solid.surfaces.push(surface);
            index
        })
    }

    fn triangle(&mut self, surface: u32, corners: [DVec3; 3]) {
        let triangle = Triangle { surface, corners };
        let sound = corners.iter().all(|c| c.is_finite() && c.abs().max_element() < FARTHEST);
        if !sound || triangle.area() <= 1e-10 {
            return;
        }
        let kind = self.solid.surfaces.get(surface as usize).map(|s| s.kind);
        if kind != Some(Kind::Ground) {
            for corner in corners {
                self.solid.bounds = Some(
                    self.solid
                        .bounds
                        .map_or((corner, corner), |(least, most)| (least.min(corner), most.max(corner))),
                );
            }
        }
        self.solid.triangles.push(triangle);
    }

    /// A flat quad, its corners counter-clockwise as seen from outside. Its u axis runs along the first side. Two corners may
    /// coincide.
    pub(crate) fn quad(&mut self, kind: Kind, of: SolidObject, corners: [DVec3; 4], marks: Marks) {
        let [a, b, c, d] = corners;
        let normal = (c - a).cross(d - b).normalize_or_zero();
        let along = if b.distance(a) > 1e-9 { b - a } else { c - d };
        let u = along.normalize_or_zero();
        let surface = Surface { kind, of, normal, origin: a, u, v: normal.cross(u), marks };
        if let Some(index) = self.surface(surface) {
            self.triangle(index, [a, b, c]);
            self.triangle(index, [a, c, d]);
        }
    }

    /// A polygon in plan, lifted onto a plane raised by `up`; facing up, or down if `turned`.
    pub(crate) fn lifted(&mut self, kind: Kind, of: SolidObject, plan: &Polygon, on: Lifted, marks: Marks) {
        let Lifted { plane, up, turned } = on;
        let along = plane.along().extend(0.0);
        let normal = plane.normal();
        let surface = Surface {
            kind,
            of,
            normal: if turned { -normal } else { normal },
            origin: plane.datum + DVec3::Z * up,
            u: along,
            v: normal.cross(along),
            marks,
        };
        let Some(index) = self.surface(surface) else { return };
        for mut corners in plan.triangles() {
            if (signed_area(&corners) < 0.0) != turned {
                corners.swap(1, 2);
            }
            self.triangle(index, corners.map(|p: DVec2| p.extend(plane.height_at(p) + up)));
        }
    }
}

/// The plane a polygon is lifted onto.
#[derive(Clone, Copy)]
pub(crate) struct Lifted<'a> {
    pub(crate) plane: &'a Plane,
    /// Vertical offset from the plane, metres.
    pub(crate) up: f64,
    /// Facing down.
    pub(crate) turned: bool,
}
