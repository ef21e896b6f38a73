//! Shading of each covered pixel.

use crate::camera::{Axes, pixels};
use crate::look::{Tone, linear};
use crate::raster::NOTHING;
use crate::scene::{Detail, Light, Shot};
use crate::shadow::Shadow;
use chalkcourse_geometry::DVec3;
use chalkcourse_solid::{Kind, Marks, SolidObject, Surface};
use glam::Vec3;

/// Sky light, sunlight and ground reflection: set by eye.
const SKY: f32 = 0.46;
const SUN: f32 = 0.86;

/// The setting of the surfaces.
pub(crate) struct Setting<'a> {
    pub(crate) surfaces: &'a [Surface],
    pub(crate) middle: DVec3,
    /// Radius of the ground.
    pub(crate) ground: f32,
}

/// A surface under the light of a shot.
struct Lit {
    kind: Kind,
    normal: Vec3,
    origin: Vec3,
    u: Vec3,
    v: Vec3,
    marks: Marks,
    sunny: Vec3,
    shaded: Vec3,
    /// The sun is on this side of it.
    faces_sun: bool,
}

pub(crate) struct Shader<'a> {
    lit: Vec<Lit>,
    shadow: Option<&'a Shadow>,
    smooth: bool,
    toward: Option<Vec3>,
    eye: Vec3,
    right: Vec3,
    up: Vec3,
    forward: Vec3,
    size: [usize; 2],
    /// Pixels per metre at a distance of one metre.
    scale: f32,
    sky: [Vec3; 2],
    /// The sky as reflected by glass.
    glare: Vec3,
    ground: f32,
    tone: Tone,
}

fn step(from: f32, to: f32, at: f32) -> f32 {
    let t = ((at - from) / (to - from)).clamp(0.0, 1.0);
    t * t * (3.0 - 2.0 * t)
}

fn is_held(of: SolidObject, held: Option<SolidObject>) -> bool {
    match (of, held) {
        (SolidObject::Module(block, _), Some(SolidObject::Block(held))) => block == held,
        (of, held) => Some(of) == held,
    }
}

impl<'a> Shader<'a> {
    pub(crate) fn new(
        place: &Setting<'_>,
        shadow: Option<&'a Shadow>,
        shot: &Shot,
        axes: &Axes,
        size: [usize; 2],
    ) -> Self {
        let toward = match shot.light {
            Light::Sun(toward) => toward.as_vec3().try_normalize().filter(|t| t.z > 0.0),
            Light::Even => None,
        };
        // A low sun is weak and warm; without a sun only dusk remains; even light has all of the sky.
        let (sun, sky) = match (shot.light, toward) {
            (_, Some(t)) => {
                let high = step(-0.02, 0.45, t.z);
                (Vec3::new(1.0, 0.80 + 0.18 * high, 0.58 + 0.36 * high) * (SUN * (0.45 + 0.55 * high)), SKY)
            }
            (Light::Even, None) => (Vec3::ZERO, 1.05),
            (Light::Sun(down), None) => (Vec3::ZERO, SKY * (0.22 + 0.5 * step(-0.25, 0.0, down.z as f32))),
        };
        let night = if sky < SKY { Vec3::new(0.75, 0.85, 1.15) } else { Vec3::ONE };
        let dim = (sky / SKY).min(1.0);
        let lit = place
            .surfaces
            .iter()
            .map(|s| {
                let normal = s.normal.as_vec3();
                let mut colour = Vec3::from_array(linear(shot.look.material(s.kind)));
                if is_held(s.of, shot.held) {
                    colour = colour.lerp(Vec3::from_array(linear(shot.look.held)), 0.55);
                }
                let facing = toward.map_or(0.0, |t| normal.dot(t)).max(0.0);
                // walls get half of the sky, undersides only ground reflection
                let open = 0.62 + 0.38 * normal.z;
                // without a sun to distinguish the sides, make the sky slightly brighter in the west
                let side = if toward.is_none() { 1.0 - 0.10 * normal.x + 0.06 * normal.y } else { 1.0 };
                let shaded = colour * night * (sky * open * side);
                Lit {
                    kind: s.kind,
                    normal,
                    origin: (s.origin - place.middle).as_vec3(),
                    u: s.u.as_vec3(),
                    v: s.v.as_vec3(),
                    marks: s.marks,
                    sunny: shaded + colour * sun * facing,
                    shaded,
                    faces_sun: facing > 0.0,
                }
            })
            .collect();
        let sky_colours = shot.look.sky.map(|c| Vec3::from_array(linear(c)) * night * dim);
        Self {
            lit,
            shadow,
            smooth: shot.detail == Detail::Fine,
            toward,
            eye: (axes.eye - place.middle).as_vec3(),
            right: axes.right.as_vec3(),
            up: axes.up.as_vec3(),
            forward: axes.forward.as_vec3(),
            size,
            scale: pixels(size) as f32,
            glare: sky_colours[0].lerp(sky_colours[1], 0.5),
            sky: sky_colours,
            ground: place.ground,
            tone: Tone::new(),
        }
    }

    /// Shades a row: `y` from the top of the picture, `row` in the buffers, which hold an extra row.
    pub(crate) fn row(&self, line: &mut [[u8; 3]], y: usize, row: usize, near: &[f32], ids: &[u32]) {
        let width = self.size[0];
        let down = (y as f32 + 0.5) / self.size[1] as f32;
        let sky = self.sky[0].lerp(self.sky[1], step(0.0, 0.75, down));
        let sky_shown = self.tone.shown(sky.to_array());
        let high = (self.size[1] as f32 / 2.0 - y as f32 - 0.5) / self.scale;
        let ahead = self.forward + self.up * high;
        let at = row * width;
        for (x, out) in line.iter_mut().enumerate() {
            let here = at + x;
            let id = ids.get(here).copied().unwrap_or(NOTHING);
            let (Some(lit), Some(&nearness)) = (self.lit.get(id as usize), near.get(here)) else {
                *out = sky_shown;
                continue;
            };
            let aside = (x as f32 + 0.5 - width as f32 / 2.0) / self.scale;
            let ray = ahead + self.right * aside;
            let deep = 1.0 / nearness;
            let mut colour = self.colour(lit, ray, deep, sky);
            let beside = if x + 1 < width { here + 1 } else { here };
            if self.is_edge(lit, id, deep, beside, near, ids)
                || self.is_edge(lit, id, deep, here + width, near, ids)
            {
                colour *= 0.62;
            }
            *out = self.tone.shown(colour.to_array());
        }
    }

    /// Whether to draw an edge line between a pixel and its neighbour.
    fn is_edge(&self, lit: &Lit, id: u32, deep: f32, other: usize, near: &[f32], ids: &[u32]) -> bool {
        let Some(&other_id) = ids.get(other) else { return false };
        if other_id == id {
            return false;
        }
        let (Some(beyond), Some(&nearness)) = (self.lit.get(other_id as usize), near.get(other)) else {
            return lit.kind != Kind::Ground;
        };
        if lit.kind == Kind::Module && beyond.kind == Kind::Module {
            return false;
        }
        let jump = (1.0 / nearness - deep).abs() > 0.25 + 0.01 * deep;
        lit.kind != beyond.kind || jump || lit.normal.dot(beyond.normal) < 0.9
    }

    fn colour(&self, lit: &Lit, ray: Vec3, deep: f32, sky: Vec3) -> Vec3 {
        let p = self.eye + ray * deep;
        let sun = match self.shadow {
            Some(shadow) if lit.faces_sun => shadow.reaches(p, lit.normal, self.smooth),
            _ => 1.0,
        };
        let mut colour = lit.shaded.lerp(lit.sunny, sun);
        if lit.kind == Kind::Ground {
            // the ground fades into the sky with distance
            let far = p.truncate().length() / self.ground;
            return colour.lerp(sky, step(0.25, 0.92, far));
        }
        let toward_eye = -ray.normalize_or_zero();
        let facing = lit.normal.dot(toward_eye).max(0.04);
        // the extent of a pixel on the surface, along its steeper direction
        let pixel = deep / self.scale / facing;
        match lit.marks {
            Marks::Plain => {}
            Marks::Courses { first, exposure } => {
                let v = (p - lit.origin).dot(lit.v);
                colour *= courses(v - first as f32, exposure as f32, pixel);
            }
            Marks::Module { width, height } => {
                let from = p - lit.origin;
                let (u, v) = (from.dot(lit.u), from.dot(lit.v));
                let line = module_lines([u, v], [width as f32, height as f32], pixel);
                let bright = 1.4 * lit.shaded.lerp(lit.sunny, sun) + Vec3::splat(0.035) * (0.4 + 0.6 * sun);
                colour = colour.lerp(bright * 1.8, line);
            }
        }
        if matches!(lit.kind, Kind::Module | Kind::Glass) {
            colour += self.mirror(lit, toward_eye, facing, sun);
        }
        colour
    }

    /// Reflection of sky and sun in glass.
    fn mirror(&self, lit: &Lit, toward_eye: Vec3, facing: f32, sun: f32) -> Vec3 {
        let flat = (1.0 - facing).powi(5);
        let back = self.glare * (0.02 + 0.30 * flat);
        let Some(toward) = self.toward.filter(|_| lit.faces_sun) else { return back };
        let bounced = lit.normal * (2.0 * lit.normal.dot(toward_eye)) - toward_eye;
        back + Vec3::splat(0.35 * sun * bounced.dot(toward).max(0.0).powi(60))
    }
}

/// Darkness of a pixel at a course line: 1 beside a line. Lines fade as a pixel approaches the size of a course.
fn courses(v: f32, exposure: f32, pixel: f32) -> f32 {
    const LINE: f32 = 0.016;
    let fades = 1.0 - step(0.25, 0.8, pixel / exposure);
    if fades <= 0.0 {
        return 1.0;
    }
    let across = (v / exposure).fract();
    let across = if across < 0.0 { across + 1.0 } else { across };
    let away = across.min(1.0 - across) * exposure;
    let cover = 1.0 - step(LINE * 0.5 - pixel * 0.5, LINE * 0.5 + pixel, away);
    1.0 - 0.34 * cover * fades
}

/// Coverage of a pixel by a module's frame and the lines between its cells.
fn module_lines([u, v]: [f32; 2], [width, height]: [f32; 2], pixel: f32) -> f32 {
    const FRAME: f32 = 0.022;
    const BETWEEN: f32 = 0.004;
    // about the size of a cell, rounded to whole cells
    const CELL: f32 = 0.17;
    let rim = u.min(width - u).min(v).min(height - v);
    let frame = (1.0 - step(FRAME - pixel, FRAME + pixel, rim)) * (FRAME / (0.6 * pixel)).min(1.0);
    let cell = |at: f32, size: f32| {
        let count = ((size - 2.0 * FRAME) / CELL).round().max(1.0);
        let one = (size - 2.0 * FRAME) / count;
        let across = ((at - FRAME) / one).fract();
        across.min(1.0 - across).abs() * one
    };
    let away = cell(u, width).min(cell(v, height));
    let fades = 1.0 - step(0.1, 0.35, pixel / CELL);
    let cells = (1.0 - step(BETWEEN * 0.5, BETWEEN * 0.5 + pixel, away)) * 0.30 * fades;
    frame.max(cells)
}
