//! Random jobs, consistent or nearly so.

use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon, Units, dvec2};
use chalkcourse_job::{
    Block, BlockId, Cell, Face, FaceId, Orientation, Penetration, PenetrationId, PenetrationKind, Resolved,
    Shape, builtin_kit, builtin_prices, builtin_rule_book,
};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// Two faces that meet at a ridge or nearly so, one of them with a random corner and perhaps a hole.
fn faces() -> impl Strategy<Value = Vec<Face>> {
    let corner = (-3.0..14.0f64, -3.0..9.0f64);
    let lift = prop_oneof![Just(0.0), Just(0.0), 0.0..0.5f64];
    (
        corner,
        0.0..20.0f64,
        lift,
        proptest::option::of((0.0..12.0f64, 0.0..6.0f64, 0.1..2.0f64)),
        0.0..360.0f64,
        0..4u8,
    )
        .prop_map(|(corner, rise, lift, hole, downslope, wild)| {
            let pitch = Pitch::from_rise_in_12(rise).unwrap();
            let mut south = vec![dvec2(0.0, 0.0), dvec2(12.0, 0.0), dvec2(12.0, 6.0), dvec2(0.0, 6.0)];
            if wild == 0 {
                south.insert(2, corner.into());
            }
            let mut south = Polygon::new(south);
            if let Some((x, y, size)) = hole {
                south.holes.push(
                    [(0.0, 0.0), (size, 0.0), (size, size), (0.0, size)]
                        .map(|(dx, dy)| dvec2(x + dx, y + dy))
                        .to_vec(),
                );
            }
            let north =
                Polygon::new(vec![dvec2(0.0, 6.0), dvec2(12.0, 6.0), dvec2(9.0, 12.0), dvec2(3.0, 12.0)]);
            let way = Azimuth::from_degrees(if wild == 1 { downslope } else { 180.0 });
            vec![
                Face::new(FaceId(1), "South".into(), south, pitch, way, Length::from_metres(3.0)),
                Face::new(
                    FaceId(2),
                    "North".into(),
                    north,
                    pitch,
                    Azimuth::NORTH,
                    Length::from_metres(3.0 + lift),
                ),
            ]
        })
}

fn blocks() -> impl Strategy<Value = Vec<Block>> {
    let one = (
        1..=2u32,
        (-2.0..12.0f64, -1.0..7.0f64),
        (1..4u32, 1..5u32),
        0.0..0.02f64,
        proptest::option::of((0..4u32, -2.0..2.0f64)),
        proptest::collection::btree_set((0..4u32, 0..5u32), 0..3),
        (any::<bool>(), any::<bool>()),
    );
    proptest::collection::vec(one, 0..4).prop_map(|blocks| {
        let mut number = 10;
        let placed =
            blocks.into_iter().map(|(face, at, (rows, columns), reveal, shift, off, (portrait, locked))| {
                number += 1;
                let block = Block {
                    id: BlockId(number),
                    name: format!("{number}"),
                    face: FaceId(face),
                    at: at.into(),
                    rows,
                    columns,
                    orientation: if portrait { Orientation::Portrait } else { Orientation::Landscape },
                    reveal: Length::from_metres(reveal),
                    shifts: Vec::new(),
                    off: off.into_iter().map(|(row, column)| Cell { row, column }).collect::<BTreeSet<_>>(),
                    locked,
                };
                match shift {
                    Some((row, by)) if row < rows => block.with_shift(row, Length::from_metres(by)),
                    _ => block,
                }
            });
        placed.collect()
    })
}

fn penetrations() -> impl Strategy<Value = Vec<Penetration>> {
    let shape = prop_oneof![
        (0.05..1.0f64).prop_map(|d| Shape::Circle { diameter: Length::from_metres(d) }),
        (0.1..1.5f64, 0.1..1.5f64).prop_map(|(a, b)| Shape::Rectangle {
            along: Length::from_metres(a),
            up: Length::from_metres(b)
        }),
        proptest::collection::vec((-1.0..1.0f64, -1.0..1.0f64), 3..7)
            .prop_map(|c| Shape::Polygon { corners: c.into_iter().map(Into::into).collect() }),
    ];
    let one = (
        shape,
        (-1.0..13.0f64, -1.0..13.0f64),
        proptest::option::of(0.0..0.5f64),
        0..PenetrationKind::ALL.len(),
    );
    proptest::collection::vec(one, 0..4).prop_map(|list| {
        let placed = (30..).zip(list).map(|(number, (shape, at, clearance, kind))| Penetration {
            id: PenetrationId(number),
            name: String::new(),
            kind: PenetrationKind::ALL[kind],
            at: at.into(),
            shape,
            clearance: clearance.map(Length::from_metres),
        });
        placed.collect()
    })
}

pub(crate) fn jobs() -> impl Strategy<Value = Resolved> {
    (faces(), blocks(), penetrations(), any::<bool>()).prop_map(|(faces, blocks, penetrations, metric)| {
        let mut job = Resolved::new("Random".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        job.units = if metric { Units::Metric } else { Units::FeetInches };
        (job.faces, job.blocks, job.penetrations, job.next_id) = (faces, blocks, penetrations, 50);
        job
    })
}
