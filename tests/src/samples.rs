//! The sample jobs, all invented, drawn by their numbers.

use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, BlockId, Cell, Connection, Edit, Face, FaceId, GeoPoint, Orientation, PartId, PartKind,
    Penetration, PenetrationId, PenetrationKind, Resolved, RoofPart, Service, Shape, Site, WiringChoices,
    apply, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use std::sync::Arc;

const FOOT: f64 = 0.3048;

/// All samples: file name, job.
pub fn all() -> Vec<(&'static str, Resolved)> {
    vec![
        ("alder-court.chalk.json", alder_court()),
        ("quarry-lane.chalk.json", quarry_lane()),
        ("mill-row.chalk.json", mill_row()),
        ("low-barn.chalk.json", low_barn()),
    ]
}

struct Draw(Resolved);

impl Draw {
    fn new(name: &str, notes: &str) -> Self {
        let mut job = Resolved::new(name.to_owned(), builtin_kit(), builtin_rule_book(), builtin_prices());
        job.site = Site {
            address: format!("{name}, Tamsin Bluff"),
            notes: notes.to_owned(),
            place: Some(GeoPoint { latitude: 39.1, longitude: -84.5 }),
            ..Site::default()
        };
        // Tamsin Bluff: lowest expected, exceeded in 2 % of summer hours, and cells flat on a deck at that.
        job.wiring = Arc::new(WiringChoices {
            lowest_celsius: Some(-22.0),
            highest_celsius: Some(34.0),
            hottest_cell_celsius: Some(77.0),
            attic_celsius: Some(55.0),
            inverters: vec!["FH-182".to_owned()],
            // Its main breaker was changed for a smaller one, so that a larger inverter fits.
            service: Some(Service {
                bus_amps: 200.0,
                main_breaker_amps: 175.0,
                other_breakers_amps: None,
                connection: Connection::OppositeEnds,
            }),
            ..WiringChoices::default()
        });
        Self(job)
    }

    fn id(&mut self) -> u32 {
        self.0.next_id += 1;
        self.0.next_id - 1
    }

    /// A face by its corners in plan, metres; `height` at its lowest corner.
    fn face(
        &mut self,
        name: &str,
        corners: &[(f64, f64)],
        rise: f64,
        downslope: Azimuth,
        height: f64,
    ) -> FaceId {
        let id = FaceId(self.id());
        let outline = Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y)).collect());
        let pitch = Pitch::from_rise_in_12(rise).unwrap_or(Pitch::FLAT);
        self.0.faces.push(Face::new(
            id,
            name.to_owned(),
            outline,
            pitch,
            downslope,
            Length::from_metres(height),
        ));
        id
    }

    /// A part with one pitch on all sides but its gables.
    fn part(
        &mut self,
        name: &str,
        kind: PartKind,
        corners: &[(f64, f64)],
        eave: f64,
        rise: f64,
        gables: &[usize],
    ) {
        let outline = Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y)).collect());
        let slope = Treatment::Slope(Pitch::from_rise_in_12(rise).unwrap_or(Pitch::FLAT));
        let (id, eave) = (PartId(self.0.next_id), Length::from_metres(eave));
        let mut part = RoofPart::new(id, name.to_owned(), kind, outline, eave, slope, Length::ZERO);
        for (index, side) in part.sides.iter_mut().flatten().enumerate() {
            if gables.contains(&index) {
                side.treatment = Treatment::Gable;
            }
        }
        self.edit(&Edit::PutPart(part));
    }

    fn edit(&mut self, edit: &Edit) {
        match apply(&self.0, edit) {
            Ok(job) => self.0 = job,
            Err(error) => unreachable!("a sample is sound: {error}"),
        }
    }

    fn named(&self, name: &str) -> FaceId {
        self.0.faces.iter().find(|face| face.name == name).map_or(FaceId(0), |face| face.id)
    }

    fn rename(&mut self, from: &str, to: &str) {
        if let Some(face) = self.0.face(self.named(from)).cloned() {
            self.edit(&Edit::PutFace(Face { name: to.to_owned(), ..face }));
        }
    }

    fn penetration(&mut self, name: &str, kind: PenetrationKind, at: (f64, f64)) {
        let id = PenetrationId(self.id());
        self.0.penetrations.push(Penetration {
            id,
            name: name.to_owned(),
            kind,
            at: dvec2(at.0, at.1),
            shape: kind.usual_shape(),
            clearance: None,
        });
    }

    fn block(&mut self, name: &str, face: FaceId, at: DVec2, rows: u32, columns: u32) {
        let id = BlockId(self.id());
        self.0.blocks.push(Block {
            id,
            name: name.to_owned(),
            face,
            at,
            rows,
            columns,
            orientation: Orientation::Landscape,
            reveal: Length::from_inches(0.125),
            shifts: Vec::new(),
            off: Default::default(),
            locked: false,
        });
    }
}

/// A 60 × 30 ft gable at 6:12 with three pipe boots, a chimney and the 3 × 4 block.
pub fn alder_court() -> Resolved {
    let mut draw = Draw::new("Alder Court", "Ladder on the west side; the dog is friendly.");
    let (long, half, eave) = (60.0 * FOOT, 15.0 * FOOT, 9.0 * FOOT);
    let south =
        draw.face("South", &[(0.0, 0.0), (long, 0.0), (long, half), (0.0, half)], 6.0, Azimuth::SOUTH, eave);
    draw.face(
        "North",
        &[(long, 2.0 * half), (0.0, 2.0 * half), (0.0, half), (long, half)],
        6.0,
        Azimuth::NORTH,
        eave,
    );
    draw.penetration("Pipe 1", PenetrationKind::PipeBoot, (44.0 * FOOT, 9.0 * FOOT));
    draw.penetration("Pipe 2", PenetrationKind::PipeBoot, (53.0 * FOOT, 4.0 * FOOT));
    draw.penetration("Pipe 3", PenetrationKind::PipeBoot, (22.0 * FOOT, 24.0 * FOOT));
    draw.penetration("Chimney", PenetrationKind::Chimney, (50.0 * FOOT, 12.0 * FOOT));
    draw.block("A", south, dvec2(12.0 * FOOT, 2.0 * FOOT), 3, 4);
    draw.0
}

/// A hip and valley L at 6:12 with a porch at 4:12, a gable dormer and a skylight, made of parts.
pub fn quarry_lane() -> Resolved {
    let mut draw = Draw::new("Quarry Lane", "Two storeys at the back: second ladder and tie-off points.");
    let eave = 3.0;
    let ell = [(0.0, 0.0), (6.0, 0.0), (6.0, -6.0), (12.0, -6.0), (12.0, 8.0), (0.0, 8.0)];
    draw.part("Main", PartKind::Main, &ell, eave, 6.0, &[2]);
    let dormer = [(7.0, 7.0), (5.0, 7.0), (5.0, 4.2), (7.0, 4.2)];
    draw.part("Dormer", PartKind::Dormer, &dormer, eave + 1.2, 6.0, &[0, 2]);
    // The porch dies into the wall half a metre below the main eave.
    let porch = [(1.0, -2.4), (5.0, -2.4), (5.0, 0.0), (1.0, 0.0)];
    draw.part("Porch", PartKind::Porch, &porch, eave - 0.5 - 0.8, 4.0, &[1, 2, 3]);
    draw.rename("West", "Wing west");
    draw.rename("West 2", "West");
    draw.rename("Porch south", "Porch");
    let (east, south) = (draw.named("East"), draw.named("South"));
    draw.penetration("Skylight", PenetrationKind::Skylight, (10.4, 4.6));
    draw.penetration("Pipe 1", PenetrationKind::PipeBoot, (11.0, 2.9));
    draw.penetration("Vent", PenetrationKind::Vent, (8.1, -1.0));
    draw.block("East", east, dvec2(0.8, 0.4), 2, 4);
    draw.block("South", south, dvec2(3.0, 0.6), 2, 2);
    draw.0
}

/// A 40-corner house with three dormers, for the time that a dragged corner takes: a long building with wings of uneven
/// width on both sides, every side at 6:12, and a block on its longest slope.
pub fn forty_corners() -> Resolved {
    let mut draw = Draw::new("Forty corners", "");
    let (mut south, mut north) = (Vec::new(), Vec::new());
    for i in 0..5 {
        let (x, more) = (f64::from(i) * 9.0, 0.37 * f64::from(i));
        let depth = 3.0 + more;
        south.extend([(x, 0.0), (x + 3.0, 0.0), (x + 3.0, -depth), (x + 7.0 + more / 2.0, -depth)]);
        north.extend([(x, 10.0), (x + 2.0, 10.0), (x + 2.0, 10.0 + depth), (x + 6.0, 10.0 + depth)]);
    }
    // Each wing comes back to the long wall where the next stretch begins.
    let close = |line: Vec<(f64, f64)>, wall: f64| -> Vec<(f64, f64)> {
        let mut all = Vec::new();
        for (i, &(x, y)) in line.iter().enumerate() {
            if i % 4 == 0 {
                if let Some(&(before, _)) = all.last() {
                    all.push((before, wall));
                } else {
                    all.push((x, y));
                }
            } else {
                all.push((x, y));
            }
        }
        all
    };
    let mut ring = close(south, 0.0);
    ring.extend(close(north, 10.0).into_iter().rev());
    draw.part("Main", PartKind::Main, &ring, 3.0, 6.0, &[]);
    for (name, x) in [("Dormer 1", 1.2), ("Dormer 2", 10.0), ("Dormer 3", 19.0)] {
        let dormer = [(x, 1.0), (x + 1.6, 1.0), (x + 1.6, 4.6), (x, 4.6)];
        draw.part(name, PartKind::Dormer, &dormer, 4.3, 6.0, &[0, 2]);
    }
    let south = draw.named("South");
    draw.block("A", south, dvec2(0.4, 0.4), 1, 1);
    draw.0
}

/// A terrace of a hundred houses in four streets, each with two faces and a block of 5 × 5 on both: the stress
/// case, 200 faces and 5 000 modules.
pub fn mill_row() -> Resolved {
    let mut draw = Draw::new("Mill Row", "Terrace: tell the neighbours on both sides before tear-off.");
    let (wide, half) = (10.0, 7.5);
    for street in 0..4u32 {
        for house in 0..25u32 {
            let (x, y) = (wide * f64::from(house), 40.0 * f64::from(street));
            // The blocks keep to the left, so that a pathway is left on the right.
            // Every second house stands half a metre higher, with a party wall between.
            let eave = 5.0 + 0.5 * f64::from(house % 2);
            let name = format!("{}-{}", street + 1, house + 1);
            let (right, ridge, back) = (x + wide, y + half, y + 2.0 * half);
            let front = draw.face(
                &format!("{name} front"),
                &[(x, y), (right, y), (right, ridge), (x, ridge)],
                6.0,
                Azimuth::SOUTH,
                eave,
            );
            let rear = draw.face(
                &format!("{name} rear"),
                &[(right, back), (x, back), (x, ridge), (right, ridge)],
                6.0,
                Azimuth::NORTH,
                eave,
            );
            draw.block(&format!("{name} front"), front, dvec2(0.31, 0.5), 5, 5);
            draw.block(&format!("{name} rear"), rear, dvec2(0.31, 0.5), 5, 5);
            draw.penetration(&format!("{name} pipe"), PenetrationKind::PipeBoot, (x + 5.0, y + 6.7));
        }
    }
    draw.0
}

/// A hip house of 48 × 30 ft at 6:12 with an ell of 16 × 12 ft that meets it in two valleys, overhangs of 16 in, two pipes, a
/// chimney, a skylight, and 18 modules as 6 + 5 + 4 + 3 on its south side: the second job that `data/hand` takes off by hand.
pub fn heron_bend() -> Resolved {
    let mut draw = Draw::new("Heron Bend", "Park on the street: the drive is new concrete.");
    let walls = [
        (0.0, 0.0),
        (48.0, 0.0),
        (48.0, 30.0),
        (32.0, 30.0),
        (32.0, 42.0),
        (16.0, 42.0),
        (16.0, 30.0),
        (0.0, 30.0),
    ];
    let outline = Polygon::new(walls.iter().map(|&(x, y)| dvec2(x, y) * FOOT).collect());
    let slope = Treatment::Slope(Pitch::from_rise_in_12(6.0).unwrap_or(Pitch::FLAT));
    let (eave, overhang) = (Length::from_feet(9.0), Length::from_inches(16.0));
    let id = PartId(draw.0.next_id);
    let house = RoofPart::new(id, "House".into(), PartKind::Main, outline, eave, slope, overhang);
    draw.edit(&Edit::PutPart(house));
    draw.penetration("Chimney", PenetrationKind::Chimney, (12.0 * FOOT, 26.0 * FOOT));
    draw.penetration("Skylight", PenetrationKind::Skylight, (38.0 * FOOT, 24.0 * FOOT));
    draw.penetration("Pipe 1", PenetrationKind::PipeBoot, (41.0 * FOOT, 28.0 * FOOT));
    draw.penetration("Pipe 2", PenetrationKind::PipeBoot, (20.0 * FOOT, 36.0 * FOOT));
    let inches = Length::from_inches;
    for penetration in &mut draw.0.penetrations {
        match penetration.name.as_str() {
            "Chimney" => penetration.shape = Shape::Rectangle { along: inches(24.0), up: inches(20.0) },
            "Pipe 2" => penetration.shape = Shape::Circle { diameter: inches(3.0) },
            _ => {}
        }
    }
    // From the left end of the eave, and up from it.
    let south = draw.named("South");
    let origin = Layout::of(&draw.0).face(south).map_or(DVec2::ZERO, |(_, face)| face.bounds.min);
    draw.block("A", south, origin + dvec2(inches(100.0).metres(), inches(24.0).metres()), 4, 6);
    if let Some(block) = draw.0.blocks.pop() {
        let half = block.spacing(&draw.0.kit).x / 2.0;
        let block = (1..4).fold(block, |block, row| {
            let short = (6 - row..6).fold(block, |block, column| block.with_switched(Cell { row, column }));
            short.with_shift(row, Length::from_metres(half * f64::from(row)))
        });
        draw.0.blocks.push(block);
    }
    draw.0
}

/// A barn at 2:12 with a block on it: the kit refuses the pitch.
pub fn low_barn() -> Resolved {
    let mut draw = Draw::new("Low Barn", "Shown to say no: the pitch is below what the kit allows.");
    let (long, half) = (40.0 * FOOT, 18.0 * FOOT);
    let south =
        draw.face("South", &[(0.0, 0.0), (long, 0.0), (long, half), (0.0, half)], 2.0, Azimuth::SOUTH, 3.5);
    draw.face(
        "North",
        &[(long, 2.0 * half), (0.0, 2.0 * half), (0.0, half), (long, half)],
        2.0,
        Azimuth::NORTH,
        3.5,
    );
    draw.block("A", south, dvec2(6.0 * FOOT, 2.0 * FOOT), 3, 4);
    draw.0
}
