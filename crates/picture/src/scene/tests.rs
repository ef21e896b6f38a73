use super::*;
use crate::Rgb;
use chalkcourse_geometry::{Azimuth, dvec3};
use chalkcourse_job::{FaceId, PenetrationId};
use chalkcourse_solid::{Marks, Triangle};
use proptest::prelude::*;

/// Vertical and horizontal pieces, by hand.
#[derive(Default)]
struct Pieces(Solid);

impl Pieces {
    fn quad(&mut self, kind: Kind, of: SolidObject, corners: [(f64, f64, f64); 4]) {
        let c = corners.map(|(x, y, z)| dvec3(x, y, z));
        let normal = (c[2] - c[0]).cross(c[3] - c[1]).normalize();
        let u = (c[1] - c[0]).normalize();
        let surface = Surface { kind, of, normal, origin: c[0], u, v: normal.cross(u), marks: Marks::Plain };
        let index = self.0.surfaces.len() as u32;
        self.0.surfaces.push(surface);
        for corners in [[c[0], c[1], c[2]], [c[0], c[2], c[3]]] {
            self.0.triangles.push(Triangle { surface: index, corners });
        }
        if kind != Kind::Ground {
            let all = c.into_iter().chain(self.0.bounds.into_iter().flat_map(|(a, b)| [a, b]));
            let all: Vec<DVec3> = all.collect();
            let least = all.iter().copied().reduce(DVec3::min).unwrap();
            self.0.bounds = Some((least, all.into_iter().reduce(DVec3::max).unwrap()));
        }
    }
}

/// A box of 4 × 4 m, 3 m high, on level ground, with a face of its own on top.
fn hut() -> Scene {
    let mut pieces = Pieces::default();
    let (o, w, h) = (0.0, 4.0, 3.0);
    let wall = |p: &mut Pieces, a: (f64, f64), b: (f64, f64)| {
        p.quad(Kind::Wall, SolidObject::House, [(a.0, a.1, o), (b.0, b.1, o), (b.0, b.1, h), (a.0, a.1, h)]);
    };
    for (a, b) in [((o, o), (w, o)), ((w, o), (w, w)), ((w, w), (o, w)), ((o, w), (o, o))] {
        wall(&mut pieces, a, b);
    }
    pieces.quad(Kind::Roof, SolidObject::Face(FaceId(1)), [(o, o, h), (w, o, h), (w, w, h), (o, w, h)]);
    pieces.quad(
        Kind::Ground,
        SolidObject::Ground,
        [(-80.0, -80.0, 0.0), (80.0, -80.0, 0.0), (80.0, 80.0, 0.0), (-80.0, 80.0, 0.0)],
    );
    Scene::of(&pieces.0)
}

fn shot(scene: &Scene, from: Azimuth, above: f64, light: Light) -> Shot {
    let size = [160, 120];
    let camera =
        Camera { from, above, ..Camera::default() }.fitted(&scene.corners(), 160.0 / 120.0).nearer(0.6);
    Shot { camera, size, light, look: Look::default(), detail: Detail::Fine, held: None }
}

/// The pixel of a projected point.
fn pixel(shot: &Shot, point: (f64, f64, f64)) -> (usize, usize) {
    let (x, y, _) = shot.camera.project(dvec3(point.0, point.1, point.2), shot.size).unwrap();
    (x as usize, y as usize)
}

fn bright(colour: Rgb) -> u32 {
    colour.iter().map(|&c| u32::from(c)).sum()
}

#[test]
fn nearer_things_hide_farther_ones() {
    let scene = hut();
    let shot = shot(&scene, Azimuth::SOUTH, 30.0, Light::Even);
    let picture = scene.draw(&shot);
    let what = |p| {
        let (x, y) = pixel(&shot, p);
        picture.what(x, y)
    };
    assert_eq!(what((2.0, 2.0, 3.0)), Some(SolidObject::Face(FaceId(1))));
    assert_eq!(what((2.0, 0.0, 1.0)), Some(SolidObject::House));
    assert_eq!(what((2.0, -1.0, 0.0)), Some(SolidObject::Ground));
    // the middle of the north wall's foot is hidden by the house
    assert_eq!(what((2.0, 4.0, 0.0)), Some(SolidObject::House));
    let level = scene.draw(&Shot { camera: shot.camera.turned(0.0, -28.0), ..shot });
    assert_eq!(level.what(0, 0), None, "the sky is nothing");
    assert_eq!(picture.what(160, 0), None);
    assert_eq!(picture.what(0, 120), None);
}

/// A wall 3 m high casts a shadow of 3 m / tan(elevation) on level ground, away from the sun: trigonometry.
#[test]
fn a_shadow_is_as_long_as_trigonometry_says() {
    let scene = hut();
    for (elevation, azimuth) in [(30.0f64, 180.0), (45.0, 180.0), (50.0, 0.0), (20.0, 90.0)] {
        let away = -Azimuth::from_degrees(azimuth).unit();
        let sun = (-away * elevation.to_radians().cos()).extend(elevation.to_radians().sin());
        let from = Azimuth::of(away);
        let mut shot = shot(&scene, from, 60.0, Light::Sun(sun));
        shot.camera = shot.camera.nearer(0.3);
        let length = 3.0 / elevation.to_radians().tan();
        let picture = scene.draw(&shot);
        let at = |beyond: f64| {
            let p = chalkcourse_geometry::dvec2(2.0, 2.0) + away * (2.0 + beyond);
            let (x, y) = pixel(&shot, (p.x, p.y, 0.0));
            assert_eq!(picture.what(x, y), Some(SolidObject::Ground));
            bright(picture.colour(x, y).unwrap())
        };
        let open = at(length + 1.5);
        assert!(at(length * 0.5) * 10 < open * 9, "no shadow at {elevation}°");
        assert!(at(length - 0.35) * 10 < open * 9, "the shadow is too short at {elevation}°");
        assert!(at(length + 0.35) * 100 > open * 97, "the shadow is too long at {elevation}°");
    }
}

#[test]
fn sides_that_face_the_sun_are_brighter_and_night_is_darker_than_day() {
    let scene = hut();
    let sun = |azimuth: f64, elevation: f64| {
        Light::Sun(
            (Azimuth::from_degrees(azimuth).unit() * elevation.to_radians().cos())
                .extend(elevation.to_radians().sin()),
        )
    };
    let south_wall = |light: Light| {
        let shot = shot(&scene, Azimuth::SOUTH, 30.0, light);
        let (x, y) = pixel(&shot, (2.0, 0.0, 1.5));
        bright(scene.draw(&shot).colour(x, y).unwrap())
    };
    assert!(south_wall(sun(180.0, 40.0)) > south_wall(sun(0.0, 40.0)) + 60);
    assert!(south_wall(sun(180.0, -10.0)) + 60 < south_wall(sun(0.0, 40.0)));
}

#[test]
fn held_things_are_highlighted() {
    let scene = hut();
    let mut shot = shot(&scene, Azimuth::SOUTH, 40.0, Light::Even);
    let plain = scene.draw(&shot);
    shot.held = Some(SolidObject::Face(FaceId(1)));
    let held = scene.draw(&shot);
    let (x, y) = pixel(&shot, (2.0, 2.0, 3.0));
    assert_ne!(plain.colour(x, y), held.colour(x, y));
    let (x, y) = pixel(&shot, (2.0, 0.0, 1.0));
    assert_eq!(plain.colour(x, y), held.colour(x, y));
}

#[test]
fn a_picture_is_the_same_every_time_and_reads_back_from_png() {
    let scene = hut();
    let shot = shot(&scene, Azimuth::WEST, 20.0, Light::Sun(dvec3(-0.5, -0.5, 0.7)));
    let picture = scene.draw(&shot);
    assert_eq!(picture, scene.draw(&shot));
    let bytes = picture.to_png().unwrap();
    let mut reader = png::Decoder::new(std::io::Cursor::new(bytes)).read_info().unwrap();
    let mut back = vec![0; reader.output_buffer_size().unwrap()];
    let info = reader.next_frame(&mut back).unwrap();
    assert_eq!((info.width, info.height), (160, 120));
    assert_eq!(back, picture.rgba);
}

#[test]
fn empty_scenes_and_sizes_still_give_a_picture() {
    let empty = Scene::of(&Solid::default());
    let mut shot = shot(&empty, Azimuth::SOUTH, 30.0, Light::Sun(dvec3(0.0, -0.5, 0.7)));
    let picture = empty.draw(&shot);
    assert_eq!(picture.rgba.len(), 160 * 120 * 4);
    assert_eq!(picture.what(80, 60), None);
    for size in [[0, 0], [0, 10], [10, 0]] {
        shot.size = size;
        let picture = hut().draw(&shot);
        assert!(picture.rgba.is_empty());
        assert!(picture.to_png().unwrap_err().to_string().contains("no area"));
    }
    shot.size = [1, 1];
    assert_eq!(hut().draw(&shot).rgba.len(), 4);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    /// From anywhere, even inside the house, under any sun.
    #[test]
    fn no_camera_position_panics(
        x in -20.0..20.0f64, y in -20.0..20.0f64, z in -5.0..20.0f64, from in 0.0..360.0f64, above in -90.0..90.0f64,
        distance in prop_oneof![0.0..40.0f64, Just(1e9), Just(f64::NAN)],
        sun in (-1.0..1.0f64, -1.0..1.0f64, -1.0..1.0f64), quick in any::<bool>(),
    ) {
        let camera = Camera { target: dvec3(x, y, z), from: Azimuth::from_degrees(from), above, distance };
        let shot = Shot {
            camera,
            size: [40, 30],
            light: Light::Sun(dvec3(sun.0, sun.1, sun.2)),
            look: Look::default(),
            detail: if quick { Detail::Quick } else { Detail::Fine },
            held: Some(SolidObject::Penetration(PenetrationId(1))),
        };
        prop_assert_eq!(hut().draw(&shot).rgba.len(), 40 * 30 * 4);
    }
}
