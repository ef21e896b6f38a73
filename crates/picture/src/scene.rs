use crate::Camera;
use crate::camera::{Axes, NEAREST, pixels};
use crate::look::Look;
use crate::raster::{Corner, Flat, NOTHING, Rows};
use crate::shade::Shader;
use crate::shadow::Shadow;
use chalkcourse_geometry::{DVec3, dvec3};
use chalkcourse_solid::{Kind, Solid, SolidObject, Surface};
use glam::Vec3;
use std::sync::Mutex;

/// The light source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Light {
    /// The sun, as the unit vector towards it, and the sky. Below the horizon, the sky alone.
    Sun(DVec3),
    /// Even light without shadows.
    Even,
}

/// Rendering quality.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Detail {
    /// During movement: one sample per pixel.
    Quick,
    /// At rest: the mean of four samples per pixel, if the picture is no larger than [`Detail::SMOOTH`].
    Fine,
}

impl Detail {
    /// Maximum pixels of a picture that is antialiased.
    pub const SMOOTH: usize = 4_200_000;
}

/// Parameters of a rendering.
#[derive(Clone, Debug, PartialEq)]
pub struct Shot {
    /// The camera.
    pub camera: Camera,
    /// Pixels, wide and high.
    pub size: [usize; 2],
    /// The light.
    pub light: Light,
    /// The colours.
    pub look: Look,
    /// The quality.
    pub detail: Detail,
    /// What is held, and so highlighted; a block includes all its modules.
    pub held: Option<SolidObject>,
}

/// A rendered picture, with the object at each pixel.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Picture {
    /// Pixels, wide and high.
    pub size: [usize; 2],
    /// RGBA with alpha 255, sRGB, row by row from the top left.
    pub rgba: Vec<u8>,
    /// The object at each pixel.
    what: Vec<u32>,
    things: Vec<SolidObject>,
}

impl Picture {
    /// The object at a pixel; `None` for the sky and outside the picture.
    pub fn what(&self, x: usize, y: usize) -> Option<SolidObject> {
        if x >= self.size[0] {
            return None;
        }
        let surface = *self.what.get(y * self.size[0] + x)?;
        self.things.get(surface as usize).copied()
    }

    /// The colour of a pixel.
    pub fn colour(&self, x: usize, y: usize) -> Option<crate::Rgb> {
        let at = (y * self.size[0] + x) * 4;
        match self.rgba.get(at..at + 3) {
            Some(&[r, g, b]) if x < self.size[0] => Some([r, g, b]),
            _ => None,
        }
    }
}

/// A triangle with its vertices relative to the centre of the scene.
struct Placed {
    surface: u32,
    corners: [Vec3; 3],
}

/// A solid prepared for repeated rendering. Caches the shadows of the last sun.
pub struct Scene {
    surfaces: Vec<Surface>,
    triangles: Vec<Placed>,
    middle: DVec3,
    bounds: Option<(DVec3, DVec3)>,
    ground: f32,
    shadow: Mutex<Option<std::sync::Arc<Shadow>>>,
}

/// Maximum pixels per side.
const MOST_PIXELS: usize = 16_384;

/// Rows rendered at a time, to bound memory.
const STRIP: usize = 96;

impl Scene {
    /// Prepares a solid.
    pub fn of(solid: &Solid) -> Self {
        let middle = solid.bounds.map_or(DVec3::ZERO, |(least, most)| least.midpoint(most));
        let triangles: Vec<Placed> = solid
            .triangles
            .iter()
            .filter(|t| (t.surface as usize) < solid.surfaces.len())
            .map(|t| Placed { surface: t.surface, corners: t.corners.map(|c| (c - middle).as_vec3()) })
            .collect();
        let is_ground =
            |t: &&Placed| solid.surfaces.get(t.surface as usize).is_some_and(|s| s.kind == Kind::Ground);
        let ground = triangles
            .iter()
            .filter(is_ground)
            .flat_map(|t| t.corners)
            .map(|c| c.truncate().length())
            .fold(1.0, f32::max);
        Self {
            surfaces: solid.surfaces.clone(),
            triangles,
            middle,
            bounds: solid.bounds,
            ground,
            shadow: Mutex::new(None),
        }
    }

    /// The corners of the house's bounding box; empty without a house.
    pub fn corners(&self) -> Vec<DVec3> {
        let Some((a, b)) = self.bounds else { return Vec::new() };
        (0..8)
            .map(|n| {
                dvec3(
                    if n & 1 == 0 { a.x } else { b.x },
                    if n & 2 == 0 { a.y } else { b.y },
                    if n & 4 == 0 { a.z } else { b.z },
                )
            })
            .collect()
    }

    /// Number of triangles.
    pub fn triangles(&self) -> usize {
        self.triangles.len()
    }

    /// Renders a shot. A size of 0 gives a picture without pixels.
    pub fn draw(&self, shot: &Shot) -> Picture {
        let size = shot.size.map(|side| side.min(MOST_PIXELS));
        let [width, height] = size;
        let mut picture = Picture {
            size,
            rgba: vec![255; width * height * 4],
            what: vec![NOTHING; width * height],
            things: self.surfaces.iter().map(|s| s.of).collect(),
        };
        if width == 0 || height == 0 {
            return picture;
        }
        let smooth = shot.detail == Detail::Fine && width * height <= Detail::SMOOTH;
        let looks = if smooth { 2 } else { 1 };
        let fine = size.map(|side| side * looks);
        let axes = shot.camera.axes();
        let flats = self.flats(&axes, fine);
        let shadow = self.shadow(shot);
        let shader = Shader::new(
            &crate::shade::Setting { surfaces: &self.surfaces, middle: self.middle, ground: self.ground },
            shadow.as_deref(),
            shot,
            &axes,
            fine,
        );
        let strips: Vec<_> = picture
            .rgba
            .chunks_mut(STRIP * width * 4)
            .zip(picture.what.chunks_mut(STRIP * width))
            .enumerate()
            .collect();
        let waiting = Mutex::new(strips);
        let cores = std::thread::available_parallelism().map_or(1, std::num::NonZero::get).min(8);
        let (flats, shader, waiting) = (&flats, &shader, &waiting);
        let work = || loop {
            let next = waiting.lock().ok().and_then(|mut strips| strips.pop());
            let Some((number, (rgba, what))) = next else { break };
            let top = number * STRIP * looks;
            let rows = what.len() / width * looks;
            self.strip(flats, shader, &mut Strip { looks, top, rows, width: fine[0], rgba, what });
        };
        std::thread::scope(|scope| {
            for _ in 1..cores {
                scope.spawn(work);
            }
            work();
        });
        picture
    }

    fn strip(&self, flats: &[Flat], shader: &Shader<'_>, strip: &mut Strip<'_>) {
        // One extra row: edges are detected against the row below.
        let cells = strip.width * (strip.rows + 1);
        let (mut near, mut ids) = (vec![0.0f32; cells], vec![NOTHING; cells]);
        let mut rows = Rows { width: strip.width, top: strip.top, near: &mut near, ids: &mut ids };
        for flat in flats {
            rows.draw(flat);
        }
        for id in &mut ids {
            *id = self.triangles.get(*id as usize).map_or(NOTHING, |t| t.surface);
        }
        let looks = strip.looks;
        let width = strip.width / looks;
        let mut shown = vec![[0u8; 3]; strip.width * strip.rows];
        for (row, line) in shown.chunks_mut(strip.width).enumerate() {
            shader.row(line, strip.top + row, row, &near, &ids);
        }
        for (pixel, what) in strip.what.iter_mut().enumerate() {
            let (x, y) = (pixel % width * looks, pixel / width * looks);
            let at = |dx: usize, dy: usize| (y + dy) * strip.width + x + dx;
            *what = ids.get(at(0, 0)).copied().unwrap_or(NOTHING);
            let mut sum = [0u32; 3];
            for dy in 0..looks {
                for dx in 0..looks {
                    for (sum, c) in sum.iter_mut().zip(shown.get(at(dx, dy)).copied().unwrap_or_default()) {
                        *sum += u32::from(c);
                    }
                }
            }
            let count = (looks * looks) as u32;
            if let Some(out) = strip.rgba.get_mut(pixel * 4..pixel * 4 + 3) {
                for (out, sum) in out.iter_mut().zip(sum) {
                    *out = ((sum + count / 2) / count) as u8;
                }
            }
        }
    }

    /// Every triangle that faces the camera, projected.
    fn flats(&self, axes: &Axes, size: [usize; 2]) -> Vec<Flat> {
        let eye = (axes.eye - self.middle).as_vec3();
        let (right, up, forward) = (axes.right.as_vec3(), axes.up.as_vec3(), axes.forward.as_vec3());
        let scale = pixels(size);
        let (half_x, half_y) = (size[0] as f64 / 2.0, size[1] as f64 / 2.0);
        let nearest = NEAREST as f32;
        let mut flats = Vec::with_capacity(self.triangles.len());
        for (id, triangle) in (0u32..).zip(&self.triangles) {
            let [a, b, c] = triangle.corners;
            if (b - a).cross(c - a).dot(eye - a) <= 0.0 {
                continue;
            }
            let seen = triangle.corners.map(|p| {
                let from = p - eye;
                Vec3::new(from.dot(right), from.dot(up), from.dot(forward))
            });
            let flat = |p: Vec3| {
                let deep = f64::from(p.z);
                Corner {
                    x: half_x + f64::from(p.x) * scale / deep,
                    y: half_y - f64::from(p.y) * scale / deep,
                    near: 1.0 / deep,
                }
            };
            if seen.iter().all(|p| p.z >= nearest) {
                flats.push(Flat { corners: seen.map(flat), id });
            } else {
                let cut = in_front(seen, nearest);
                if let [first, rest @ ..] = &cut[..] {
                    for pair in rest.windows(2) {
                        if let &[second, third] = pair {
                            flats.push(Flat { corners: [*first, second, third].map(flat), id });
                        }
                    }
                }
            }
        }
        flats
    }

    fn shadow(&self, shot: &Shot) -> Option<std::sync::Arc<Shadow>> {
        let Light::Sun(toward) = shot.light else { return None };
        let toward = toward.as_vec3().try_normalize().filter(|t| t.z > 0.0)?;
        let size = if shot.detail == Detail::Fine { 2048 } else { 1024 };
        let mut kept = self.shadow.lock().ok()?;
        if let Some(shadow) = kept.as_ref().filter(|shadow| shadow.serves(toward, size)) {
            return Some(std::sync::Arc::clone(shadow));
        }
        let casts =
            |t: &&Placed| self.surfaces.get(t.surface as usize).is_some_and(|s| s.kind != Kind::Ground);
        let casting = self.triangles.iter().filter(casts).map(|t| &t.corners);
        let shadow = std::sync::Arc::new(Shadow::of(casting, toward, size));
        *kept = Some(std::sync::Arc::clone(&shadow));
        Some(shadow)
    }
}

/// A band of rows to render.
struct Strip<'a> {
    looks: usize,
    /// First row and number of rows, in samples.
    top: usize,
    rows: usize,
    width: usize,
    rgba: &'a mut [u8],
    what: &'a mut [u32],
}

/// A triangle clipped to the near plane: a convex polygon.
fn in_front(corners: [Vec3; 3], nearest: f32) -> Vec<Vec3> {
    let mut kept = Vec::with_capacity(4);
    let [a, b, c] = corners;
    for (p, q) in [(a, b), (b, c), (c, a)] {
        if p.z >= nearest {
            kept.push(p);
        }
        if (p.z >= nearest) != (q.z >= nearest) {
            kept.push(p.lerp(q, (nearest - p.z) / (q.z - p.z)));
        }
    }
    kept
}

#[cfg(test)]
mod tests;
