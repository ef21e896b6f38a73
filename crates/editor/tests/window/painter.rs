//! Renders a window without a graphics card: triangles with texture and interpolated colours, as the toolkit passes
//! them to every painter. Only what the pictures of this folder need: no callbacks, and nearest-point texture lookup.

use egui::epaint::{ImageDelta, Mesh, Primitive, Vertex};
use egui::{Color32, FullOutput, ImageData, Rect, TextureId, TexturesDelta};
use egui_kittest::TestRenderer;
use image::{Rgba, RgbaImage};
use std::collections::HashMap;

#[derive(Default)]
pub(crate) struct Painter {
    textures: HashMap<TextureId, (usize, Vec<Color32>)>,
}

impl Painter {
    fn keep(&mut self, id: TextureId, delta: &ImageDelta) {
        let ImageData::Color(image) = &delta.image;
        match delta.pos {
            None => _ = self.textures.insert(id, (image.width(), image.pixels.clone())),
            Some([left, top]) => {
                let Some((width, pixels)) = self.textures.get_mut(&id) else { return };
                for row in 0..image.height() {
                    let from = &image.pixels[row * image.width()..][..image.width()];
                    pixels[(top + row) * *width + left..][..image.width()].copy_from_slice(from);
                }
            }
        }
    }
}

impl TestRenderer for Painter {
    fn handle_delta(&mut self, delta: &mut TexturesDelta) {
        for (id, images) in &delta.set {
            images.iter().for_each(|image| self.keep(*id, image));
        }
        for id in &delta.free {
            self.textures.remove(id);
        }
        delta.clear();
    }

    fn render(&mut self, ctx: &egui::Context, output: &FullOutput) -> Result<RgbaImage, String> {
        let scale = output.pixels_per_point;
        let size = ctx.content_rect().size() * scale;
        let mut picture = RgbaImage::from_pixel(size.x as u32, size.y as u32, Rgba([0, 0, 0, 255]));
        for clipped in ctx.tessellate(output.shapes.clone(), scale) {
            if let Primitive::Mesh(mesh) = &clipped.primitive {
                let (width, pixels) = self.textures.get(&mesh.texture_id).ok_or("a texture is missing")?;
                let clip = Rect { min: clipped.clip_rect.min * scale, max: clipped.clip_rect.max * scale };
                triangles(&mut picture, mesh, scale, clip, *width, pixels);
            }
        }
        Ok(picture)
    }
}

fn triangles(
    picture: &mut RgbaImage,
    mesh: &Mesh,
    scale: f32,
    clip: Rect,
    width: usize,
    texture: &[Color32],
) {
    for corners in mesh.indices.chunks_exact(3) {
        let [mut a, mut b, c] = [0, 1, 2].map(|n| mesh.vertices[corners[n] as usize]);
        let place = |v: &Vertex| v.pos * scale;
        let area = (place(&b) - place(&a)).rot90().dot(place(&c) - place(&a));
        if area == 0.0 {
            continue;
        }
        if area < 0.0 {
            std::mem::swap(&mut a, &mut b);
        }
        triangle(picture, [&a, &b, &c], scale, clip, width, texture);
    }
}

fn triangle(
    picture: &mut RgbaImage,
    corners: [&Vertex; 3],
    scale: f32,
    clip: Rect,
    width: usize,
    texture: &[Color32],
) {
    let at = corners.map(|v| v.pos * scale);
    // Twice the area to the left of each side, and whether a pixel on the side itself is inside.
    let side = |n: usize, p: egui::Pos2| {
        let (from, to) = (at[(n + 1) % 3], at[(n + 2) % 3]);
        (to - from).rot90().dot(p - from)
    };
    let mine = |n: usize| {
        let along = at[(n + 2) % 3] - at[(n + 1) % 3];
        along.y < 0.0 || along.y == 0.0 && along.x > 0.0
    };
    let whole = side(0, at[0]);
    let bounds = Rect::from_points(&at).intersect(clip);
    let (columns, rows) = (picture.width() as f32, picture.height() as f32);
    let (left, right) =
        (bounds.min.x.floor().max(0.0) as u32, bounds.max.x.ceil().clamp(0.0, columns) as u32);
    let (top, bottom) = (bounds.min.y.floor().max(0.0) as u32, bounds.max.y.ceil().clamp(0.0, rows) as u32);
    let height = texture.len() / width.max(1);
    for y in top..bottom {
        for x in left..right {
            let p = egui::pos2(x as f32 + 0.5, y as f32 + 0.5);
            let areas = [0, 1, 2].map(|n| side(n, p));
            if !clip.contains(p) || (0..3).any(|n| areas[n] < 0.0 || areas[n] == 0.0 && !mine(n)) {
                continue;
            }
            let part = areas.map(|area| area / whole);
            let mixed = |of: &dyn Fn(&Vertex) -> f32| (0..3).map(|n| of(corners[n]) * part[n]).sum::<f32>();
            let pick = |share: f32, of: usize| ((share * of as f32) as usize).min(of.saturating_sub(1));
            let (u, v) = (mixed(&|c| c.uv.x), mixed(&|c| c.uv.y));
            let texel = texture[pick(v, height) * width + pick(u, width)].to_array();
            let source: [f32; 4] = std::array::from_fn(|n| {
                mixed(&|c| f32::from(c.color.to_array()[n])) * f32::from(texel[n]) / 255.0
            });
            let under = picture.get_pixel_mut(x, y);
            for n in 0..3 {
                let over = source[n] + f32::from(under.0[n]) * (1.0 - source[3] / 255.0);
                under.0[n] = over.round().clamp(0.0, 255.0) as u8;
            }
        }
    }
}
