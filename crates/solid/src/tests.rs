use super::*;
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, Face, Orientation, Penetration, PenetrationKind, builtin_kit, builtin_prices, builtin_rule_book,
};
use proptest::prelude::*;

const FOOT: f64 = 0.3048;

fn empty() -> Resolved {
    Resolved::new("Test".into(), builtin_kit(), builtin_rule_book(), builtin_prices())
}

fn face(job: &mut Resolved, corners: &[(f64, f64)], rise: f64, downslope: Azimuth, height: f64) -> FaceId {
    let id = FaceId(job.next_id);
    job.next_id += 1;
    let outline = Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y)).collect());
    let pitch = Pitch::from_rise_in_12(rise).unwrap();
    job.faces.push(Face::new(id, "Face".into(), outline, pitch, downslope, Length::from_metres(height)));
    id
}

/// A gable of 60 × 30 ft at 6:12 with its eaves at 9 ft and a given overhang.
fn gable(overhang: f64) -> Resolved {
    let mut job = empty();
    let (long, half, eave) = (60.0 * FOOT, 15.0 * FOOT, 9.0 * FOOT);
    face(&mut job, &[(0.0, 0.0), (long, 0.0), (long, half), (0.0, half)], 6.0, Azimuth::SOUTH, eave);
    face(
        &mut job,
        &[(long, 2.0 * half), (0.0, 2.0 * half), (0.0, half), (long, half)],
        6.0,
        Azimuth::NORTH,
        eave,
    );
    job.site.building.overhang = Some(Length::from_metres(overhang));
    job.site.building.eave_height = Some(Length::from_feet(9.0));
    job
}

fn with_block(mut job: Resolved, rows: u32, columns: u32) -> Resolved {
    let block = Block {
        id: BlockId(job.next_id),
        name: "A".into(),
        face: job.faces[0].id,
        at: dvec2(1.0, 0.5),
        rows,
        columns,
        orientation: Orientation::Landscape,
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    };
    job.blocks.push(block);
    job.next_id += 1;
    job
}

fn of(job: &Resolved) -> Solid {
    solid(job, &Layout::of(job), Show::default())
}

/// The volume enclosed above a level by a closed surface, by the divergence theorem: each triangle contributes its signed plan
/// area times its mean height.
fn volume(solid: &Solid, kinds: &[Kind], level: f64) -> f64 {
    let all = kinds.iter().flat_map(|&kind| solid.triangles_of(kind));
    all.map(|t| {
        let [a, b, c] = t.corners;
        let plan = (b - a).cross(c - a).z / 2.0;
        plan * ((a.z + b.z + c.z) / 3.0 - level)
    })
    .sum()
}

/// Vector area: it vanishes for a closed surface. The volume says nothing about vertical walls.
fn flux(solid: &Solid, kinds: &[Kind]) -> DVec3 {
    let all = kinds.iter().flat_map(|&kind| solid.triangles_of(kind));
    all.map(|t| (t.corners[1] - t.corners[0]).cross(t.corners[2] - t.corners[0]) / 2.0)
        .fold(DVec3::ZERO, |a, b| a + b)
}

#[test]
fn a_gable_of_60_by_30_ft_is_closed_and_has_the_area_and_volume_of_the_handbook() {
    let solid = of(&gable(0.0));
    let square_feet = |area: f64| area / (FOOT * FOOT);
    // 60 × 30 ft times the slope factor of 6:12, 1.118 (as roofing handbooks print it; from memory): 2,012.5 sq ft
    assert!((square_feet(solid.area_of(Kind::Roof)) - 1800.0 * 1.25f64.sqrt()).abs() < 0.01);
    // walls with the roof's edge: two of 60 × 9, two of 30 × 9 with a triangle of 30 × 7.5 above
    let upright = solid.area_of(Kind::Wall) + solid.area_of(Kind::Fascia);
    assert!((square_feet(upright) - (2.0 * 540.0 + 2.0 * (270.0 + 112.5))).abs() < 0.5, "{upright}");
    // 60 × 30 × 9 and half of 60 × 30 × 7.5, cubic feet
    let skin = [Kind::Roof, Kind::Wall, Kind::Fascia];
    let cubic_feet = volume(&solid, &skin, 0.0) / FOOT.powi(3);
    assert!((cubic_feet - 22_950.0).abs() < 1.0, "{cubic_feet}");
    let open = flux(&solid, &skin);
    assert!(open.truncate().length() < 0.01, "a side of the house is open: {open}");
    assert!((square_feet(open.z) - 1800.0).abs() < 0.01, "the floor alone is open: {open}");
}

#[test]
fn walls_stand_in_by_the_overhang_and_reach_the_ground() {
    let job = gable(0.5);
    let solid = of(&job);
    let walls: Vec<DVec3> = solid.triangles_of(Kind::Wall).flat_map(|t| t.corners).collect();
    let least = walls.iter().copied().reduce(DVec3::min).unwrap();
    let most = walls.iter().copied().reduce(DVec3::max).unwrap();
    assert!((least.x - 0.5).abs() < 1e-4 && (least.y - 0.5).abs() < 1e-4 && least.z.abs() < 1e-9, "{least}");
    assert!((most.x - (60.0 * FOOT - 0.5)).abs() < 1e-4, "{most}");
    // the gable wall ends at the ridge, less the thickness of the roof
    assert!((most.z - (16.5 * FOOT - house::THICK)).abs() < 1e-4, "{most}");
}

#[test]
fn the_ground_follows_the_eave_height_or_a_default() {
    let mut job = gable(0.3);
    job.site.building.eave_height = Some(Length::from_metres(6.0));
    let ground = |job: &Resolved| house::ground_height(job, &Layout::of(job));
    assert!((ground(&job) - (9.0 * FOOT - 6.0)).abs() < 1e-9);
    job.site.building.eave_height = None;
    assert_eq!(ground(&job), 0.0);
    for face in &mut job.faces {
        face.height = Length::ZERO;
    }
    assert!((ground(&job) + 9.0 * FOOT).abs() < 1e-9, "heights that begin at the eave stand a storey up");
}

#[test]
fn modules_are_true_to_size_and_their_thickness_above_the_deck() {
    let job = with_block(gable(0.3), 3, 4);
    let solid = of(&job);
    assert_eq!(solid.triangles_of(Kind::Module).count(), 24);
    assert!((solid.area_of(Kind::Module) - 12.0 * 1.722 * 1.134).abs() < 1e-9);
    let plane = job.faces[0].plane();
    for corner in solid.triangles_of(Kind::Module).flat_map(|t| t.corners) {
        let above = (corner - plane.to_space(dvec2(0.0, 0.0))).dot(plane.normal());
        assert!((above - 0.040).abs() < 1e-9, "{above}");
    }
    // four sides of the block: 4 × 1.722 + 3 × 3 mm wide, 3 × 1.134 + 2 × 3 mm high
    let around = 2.0 * (6.897 + 3.408);
    assert!((solid.area_of(Kind::ModuleSide) - around * 0.040).abs() < 1e-9);
}

#[test]
fn without_the_array_the_house_is_as_before() {
    let job = gable(0.3);
    let bare = solid(
        &with_block(job.clone(), 3, 4),
        &Layout::of(&with_block(job.clone(), 3, 4)),
        Show { array: false },
    );
    assert_eq!(bare, of(&job));
}

#[test]
fn every_triangle_faces_along_its_normal() {
    let mut job = with_block(gable(0.4), 2, 3);
    for (number, kind) in PenetrationKind::ALL.into_iter().enumerate() {
        job.penetrations.push(Penetration {
            id: PenetrationId(50 + number as u32),
            name: kind.name().into(),
            kind,
            at: dvec2(9.0 + number as f64, 4.3),
            shape: kind.usual_shape(),
            clearance: None,
        });
    }
    let solid = of(&job);
    for t in &solid.triangles {
        let surface = &solid.surfaces[t.surface as usize];
        let [a, b, c] = t.corners;
        let normal = (b - a).cross(c - a).normalize();
        assert!(normal.dot(surface.normal) > 0.999, "{surface:?} {t:?}");
        assert!((surface.u.cross(surface.v).dot(surface.normal).abs() - 1.0).abs() < 1e-9);
    }
    for kind in Kind::ALL {
        assert!(solid.area_of(kind) > 0.0, "nothing is {}", kind.name());
    }
}

#[test]
fn a_chimney_is_as_high_as_the_residential_code_requires() {
    // International Residential Code R1003.9: 2 ft above anything within 10 ft, at least 3 ft above the roof
    let mut job = gable(0.3);
    let chimney = |y: f64| Penetration {
        id: PenetrationId(50),
        name: "Chimney".into(),
        kind: PenetrationKind::Chimney,
        at: dvec2(9.0, y),
        shape: PenetrationKind::Chimney.usual_shape(),
        clearance: None,
    };
    let top = |job: &Resolved| {
        of(job).triangles_of(Kind::Chimney).flat_map(|t| t.corners).map(|c| c.z).fold(0.0, f64::max)
    };
    // 3 ft below the ridge: the ridge, 16.5 ft up, is within 10 ft
    job.penetrations = vec![chimney(12.0 * FOOT)];
    assert!((top(&job) - 18.5 * FOOT).abs() < 0.02, "{}", top(&job) / FOOT);
    // astride the ridge: 3 ft above it
    job.penetrations = vec![chimney(15.0 * FOOT)];
    let high = top(&job) / FOOT;
    assert!((19.4..=20.4).contains(&high), "{high}");
}

#[test]
fn a_terrace_with_a_step_has_a_wall_between_and_none_within() {
    let mut job = empty();
    for (x, eave) in [(0.0, 5.0), (10.0, 5.5)] {
        face(&mut job, &[(x, 0.0), (x + 10.0, 0.0), (x + 10.0, 7.5), (x, 7.5)], 6.0, Azimuth::SOUTH, eave);
        face(&mut job, &[(x + 10.0, 15.0), (x, 15.0), (x, 7.5), (x + 10.0, 7.5)], 6.0, Azimuth::NORTH, eave);
    }
    job.site.building.overhang = Some(Length::ZERO);
    let solid = of(&job);
    let skin = [Kind::Roof, Kind::Wall, Kind::Fascia];
    let open = flux(&solid, &skin);
    assert!(open.truncate().length() < 0.02, "a side of the house is open: {open}");
    let between: f64 = solid
        .triangles_of(Kind::Wall)
        .chain(solid.triangles_of(Kind::Fascia))
        .filter(|t| t.corners.iter().all(|c| (c.x - 10.0).abs() < 1e-3))
        .map(Triangle::area)
        .sum();
    assert!((between - 15.0 * 0.5).abs() < 1e-6, "{between}");
}

#[test]
fn a_half_drawn_roof_gives_a_partial_house() {
    assert_eq!(of(&empty()), Solid::default());
    let mut job = gable(0.3);
    job.faces[0].outline.outer.swap(1, 2);
    let solid = of(&job);
    assert!(solid.area_of(Kind::Roof) > 0.0);
    assert!(
        solid
            .triangles
            .iter()
            .all(|t| solid.surfaces[t.surface as usize].of != SolidObject::Face(job.faces[0].id))
    );
}

proptest! {
    /// Any outlines, sound or not: coordinates stay finite, and every triangle has a surface and an area.
    #[test]
    fn any_faces_give_a_sound_solid(
        corners in prop::collection::vec(prop::collection::vec((-20.0..20.0f64, -20.0..20.0f64), 0..6), 0..4),
        rise in 0.0..24.0f64, turn in 0.0..360.0f64, overhang in 0.0..4.0f64,
        at in (-20.0..20.0f64, -20.0..20.0f64),
    ) {
        let mut job = empty();
        for corners in &corners {
            face(&mut job, corners, rise, Azimuth::from_degrees(turn), 3.0);
        }
        job.site.building.overhang = Some(Length::from_metres(overhang));
        job.penetrations.push(Penetration {
            id: PenetrationId(90),
            name: "Any".into(),
            kind: PenetrationKind::Chimney,
            at: DVec2::new(at.0, at.1),
            shape: PenetrationKind::Chimney.usual_shape(),
            clearance: None,
        });
        if !job.faces.is_empty() {
            job = with_block(job, 2, 2);
        }
        let solid = of(&job);
        for t in &solid.triangles {
            prop_assert!(t.corners.iter().all(|c| c.is_finite()) && t.area() > 0.0);
            prop_assert!((t.surface as usize) < solid.surfaces.len());
        }
    }
}
