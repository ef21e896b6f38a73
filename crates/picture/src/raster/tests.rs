use super::*;
use proptest::prelude::*;

const WIDTH: usize = 20;
const HEIGHT: usize = 16;

fn corner(x: f64, y: f64, near: f64) -> Corner {
    Corner { x, y, near }
}

/// Draws in two bands, as threads do.
fn draw(flats: &[Flat], width: usize, near: &mut [f32], ids: &mut [u32]) {
    let band = (width * HEIGHT / 2).max(1);
    for (number, (near, ids)) in near.chunks_mut(band).zip(ids.chunks_mut(band)).enumerate() {
        let mut rows = Rows { width, top: number * HEIGHT / 2, near, ids };
        for flat in flats {
            rows.draw(flat);
        }
    }
}

/// The triangle at each pixel.
fn drawn(flats: &[Flat]) -> Vec<u32> {
    let (mut near, mut ids) = (vec![0.0; WIDTH * HEIGHT], vec![NOTHING; WIDTH * HEIGHT]);
    draw(flats, WIDTH, &mut near, &mut ids);
    ids
}

/// Vertices ordered to face the viewer.
fn seen(corners: [(f64, f64); 3], near: [f64; 3], id: u32) -> Flat {
    let [a, b, c] = corners;
    let area = (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0);
    let mut flat = [0, 1, 2].map(|i| corner(corners[i].0, corners[i].1, near[i]));
    if area > 0.0 {
        flat.swap(1, 2);
    }
    Flat { corners: flat, id }
}

#[test]
fn a_right_triangle_covers_the_pixels_whose_centres_are_inside() {
    // legs of 8 pixels from (2, 2): in row r from the top 8 − r centres are above the slanted side, less the one on it
    let ids = drawn(&[seen([(2.0, 2.0), (10.0, 2.0), (2.0, 10.0)], [1.0; 3], 7)]);
    for y in 0..HEIGHT {
        for x in 0..WIDTH {
            let inside = x >= 2 && y >= 2 && (x - 2) + (y - 2) < 7;
            let on_the_slant = x >= 2 && y >= 2 && (x - 2) + (y - 2) == 7;
            // centres on the slanted side belong to the triangle beyond it: it is a right side of this one
            assert_eq!(ids[y * WIDTH + x] == 7, inside, "{x}, {y} {on_the_slant}");
        }
    }
    assert_eq!(ids.iter().filter(|&&id| id == 7).count(), 28);
}

#[test]
fn back_faces_are_not_drawn() {
    let mut flat = seen([(2.0, 2.0), (10.0, 2.0), (2.0, 10.0)], [1.0; 3], 7);
    flat.corners.swap(0, 1);
    assert!(drawn(&[flat]).iter().all(|&id| id == NOTHING));
}

#[test]
fn the_nearer_wins_in_any_order() {
    let far = seen([(0.0, 0.0), (20.0, 0.0), (0.0, 16.0)], [0.1; 3], 1);
    let near = seen([(0.0, 0.0), (8.0, 0.0), (0.0, 8.0)], [0.2; 3], 2);
    for flats in [[far, near], [near, far]] {
        let ids = drawn(&flats);
        assert_eq!(ids[0], 2);
        assert_eq!(ids[10], 1);
        assert_eq!(ids.iter().filter(|&&id| id == 2).count(), 28);
    }
    // two intersecting triangles swap where they are equally near
    let left = seen([(0.0, 0.0), (20.0, 0.0), (0.0, 100.0)], [0.9, 0.1, 0.9], 1);
    let right = seen([(0.0, 0.0), (20.0, 0.0), (0.0, 100.0)], [0.1, 0.9, 0.1], 2);
    let ids = drawn(&[left, right]);
    assert_eq!((ids[2], ids[17]), (1, 2));
}

#[test]
fn degenerate_triangles_are_skipped() {
    let point = seen([(5.0, 5.0); 3], [1.0; 3], 1);
    let line = seen([(0.0, 0.0), (5.0, 5.0), (10.0, 10.0)], [1.0; 3], 1);
    let lost = seen([(f64::NAN, 0.0), (5.0, f64::INFINITY), (10.0, 10.0)], [1.0; 3], 1);
    let deep = seen([(0.0, 0.0), (20.0, 0.0), (0.0, 16.0)], [f64::NAN, 1.0, 1.0], 1);
    for flat in [point, line, deep] {
        assert!(drawn(&[flat]).iter().all(|&id| id == NOTHING));
    }
    drawn(&[lost]);
    draw(&[line], 0, &mut [], &mut []);
    draw(&[line], 5, &mut [], &mut []);
}

proptest! {
    /// The triangles of a fan around a point cover its hull without gaps or overlaps.
    #[test]
    fn a_fan_covers_every_pixel_once(
        turn in 0.0..6.0f64, count in 3usize..12, x in 4.0..16.0f64, y in 4.0..12.0f64,
    ) {
        // a rim beyond the picture, so that every pixel is in the fan
        let rim: Vec<(f64, f64)> = (0..count)
            .map(|n| turn + n as f64 / count as f64 * std::f64::consts::TAU)
            .map(|a| (x + a.cos() * 90.0, y + a.sin() * 90.0))
            .collect();
        let mut times = vec![0; WIDTH * HEIGHT];
        for n in 0..count {
            let flat = seen([(x, y), rim[n], rim[(n + 1) % count]], [1.0; 3], 3);
            for (times, id) in times.iter_mut().zip(drawn(&[flat])) {
                *times += u32::from(id == 3);
            }
        }
        prop_assert!(times.iter().all(|&times| times == 1), "{times:?}");
    }

    #[test]
    fn no_triangle_breaks_it(
        numbers in prop::collection::vec(prop_oneof![
            -50.0..50.0f64, -1e12..1e12f64, Just(f64::NAN), Just(f64::INFINITY), Just(f64::MAX), Just(0.0),
        ], 9),
    ) {
        let n = &numbers;
        let flat = Flat { corners: [corner(n[0], n[1], n[2]), corner(n[3], n[4], n[5]), corner(n[6], n[7], n[8])], id: 1 };
        drawn(&[flat]);
    }

    /// Against a brute-force test of whether each pixel's centre is in the triangle; centres on a side are left out.
    #[test]
    fn coverage_agrees_with_brute_force(
        p in prop::collection::vec((-8i32..320, -8i32..300), 3),
    ) {
        // on the grid of 1/16 pixel both see the same vertices
        let p: Vec<(f64, f64)> = p.into_iter().map(|(x, y)| (f64::from(x) / 16.0, f64::from(y) / 16.0)).collect();
        let ids = drawn(&[seen([p[0], p[1], p[2]], [1.0; 3], 3)]);
        for y in 0..HEIGHT {
            for x in 0..WIDTH {
                let m = (x as f64 + 0.5, y as f64 + 0.5);
                let side = |a: (f64, f64), b: (f64, f64)| (b.0 - a.0) * (m.1 - a.1) - (b.1 - a.1) * (m.0 - a.0);
                let sides = [side(p[0], p[1]), side(p[1], p[2]), side(p[2], p[0])];
                if sides.contains(&0.0) {
                    continue;
                }
                let inside = sides.iter().all(|&s| s > 0.0) || sides.iter().all(|&s| s < 0.0);
                prop_assert_eq!(ids[y * WIDTH + x] == 3, inside);
            }
        }
    }
}
