//! Faces that break easy assumptions: borders slightly out of line, slivers, concave corners, holes, unusual kits and
//! books.

use super::{House, Kind, empty};
use crate::dice::Dice;
use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Face, FaceId, Kit, Orientation, Penetration, PenetrationId, PenetrationKind, Resolved, RowJoints,
    RuleBook, Shape,
};
use std::sync::Arc;

/// One or two drawn faces of an awkward shape, with a kit and a book that may differ from the usual ones.
pub fn awkward(seed: u64) -> House {
    let mut dice = Dice::new(seed ^ 0xa3b0_0000_0000);
    let with_fire = dice.chance(0.4);
    let mut job = empty(format!("Awkward {seed}"), with_fire);
    let (corners, kind) = outline(&mut dice);
    let pitch = Pitch::from_rise_in_12(dice.within(4.0, 12.0)).unwrap_or(Pitch::FLAT);
    let height = Length::from_metres(3.0);
    let top = corners.iter().map(|p| p.y).fold(0.0, f64::max);
    let right = corners.iter().map(|p| p.x).fold(0.0, f64::max);
    let mut outline = Polygon::new(corners);
    if dice.chance(0.15) {
        let (at, size) =
            (dvec2(right * dice.within(0.3, 0.6), top * dice.within(0.2, 0.5)), dice.within(0.2, 1.0));
        let hole = [(0.0, 0.0), (size, 0.0), (size, size), (0.0, size)].map(|(x, y)| at + dvec2(x, y));
        if hole.iter().all(|&p| outline.contains(p) && outline.distance_to_border(p) > 0.05) {
            outline.holes.push(hole.to_vec());
        }
    }
    job.faces.push(Face::new(FaceId(1), "South".into(), outline, pitch, Azimuth::SOUTH, height));
    if dice.chance(0.6) {
        // The other side of the ridge, so that there is one.
        let back = [(right, 2.0 * top), (0.0, 2.0 * top), (0.0, top), (right, top)];
        let back = Polygon::new(back.iter().map(|&(x, y)| dvec2(x, y)).collect());
        job.faces.push(Face::new(FaceId(2), "North".into(), back, pitch, Azimuth::NORTH, height));
    }
    job.next_id = 3;
    through(&mut dice, &mut job, right, top);
    job.kit = Arc::new(kit(&mut dice, &job.kit));
    job.rule_book = Arc::new(book(&mut dice, &job.rule_book));
    House { seed, kind, job }
}

fn outline(dice: &mut Dice) -> (Vec<DVec2>, Kind) {
    let (wide, high) = (dice.within(4.0, 13.0), dice.within(2.5, 8.0));
    let hair = |dice: &mut Dice| dice.within(-0.002, 0.002);
    let corners = match dice.below(7) {
        // A rectangle with leaning rakes, its eave and ridge slightly out of level.
        0 | 1 => {
            let at = [(0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high)];
            at.map(|(x, y)| dvec2(x + hair(dice), y + hair(dice))).to_vec()
        }
        // Exactly a number of modules wide, or slightly less.
        2 => {
            let many = 2.0 + dice.below(5) as f64;
            let wide =
                many * 1.722 + (many - 1.0) * dice.within(0.0, 0.0035) + 24.0 * 0.0254 + hair(dice) / 4.0;
            [(0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high)].map(DVec2::from).to_vec()
        }
        // A trapezoid or a triangle, either way up.
        3 => {
            let (left, right) = (dice.within(0.0, wide * 0.5), dice.within(0.0, wide * 0.45));
            if dice.chance(0.5) {
                vec![dvec2(0.0, 0.0), dvec2(wide, 0.0), dvec2(wide - right, high), dvec2(left, high)]
            } else {
                vec![dvec2(left, 0.0), dvec2(wide - right, 0.0), dvec2(wide, high), dvec2(0.0, high)]
            }
        }
        // An L, with a step in the eave.
        4 => {
            let (x, y) = (wide * dice.within(0.3, 0.7), high * dice.within(0.15, 0.6));
            let at = [(0.0, 0.0), (x, 0.0), (x, y), (wide, y), (wide, high), (0.0, high)];
            at.map(DVec2::from).to_vec()
        }
        // A T with a sliver on one side.
        5 => {
            let (x, z) = (wide * dice.within(0.2, 0.4), wide * dice.within(0.6, 0.9));
            let (y, thin) = (high * dice.within(0.3, 0.6), dice.within(0.05, 0.4));
            let at = [
                (x, 0.0),
                (z, 0.0),
                (z, y),
                (wide, y),
                (wide, y + thin),
                (z, y + thin),
                (z, high),
                (0.0, high),
                (0.0, y),
                (x, y),
            ];
            at.map(DVec2::from).to_vec()
        }
        // A random star-shaped polygon.
        _ => {
            let many = 5 + dice.below(6);
            let middle = dvec2(wide, high) / 2.0;
            let at = (0..many).map(|i| {
                let turn = std::f64::consts::TAU * (i as f64 + dice.within(-0.35, 0.35)) / many as f64;
                middle + DVec2::from_angle(turn) * middle * dice.within(0.55, 1.0)
            });
            at.collect()
        }
    };
    (corners, Kind::Gable)
}

fn through(dice: &mut Dice, job: &mut Resolved, right: f64, top: f64) {
    for _ in 0..dice.below(5) {
        let kind = *dice.one(&PenetrationKind::ALL);
        let inches = |dice: &mut Dice, from: f64, to: f64| Length::from_inches(dice.within(from, to));
        let shape = match dice.below(3) {
            0 => Shape::Circle { diameter: inches(dice, 1.5, 20.0) },
            1 => Shape::Rectangle { along: inches(dice, 4.0, 40.0), up: inches(dice, 4.0, 40.0) },
            _ => {
                // Sometimes with a concave corner.
                let many = 3 + dice.below(4);
                let at = |i: usize, dice: &mut Dice| {
                    DVec2::from_angle(std::f64::consts::TAU * i as f64 / many as f64) * dice.within(0.08, 0.5)
                };
                Shape::Polygon { corners: (0..many).map(|i| at(i, dice)).collect() }
            }
        };
        let clearance = dice.chance(0.3).then(|| Length::from_inches(dice.stepped(0.0, 12.0, 3.0)));
        let id = PenetrationId(job.next_id);
        job.next_id += 1;
        let at = dvec2(right * dice.unit(), top * dice.unit());
        job.penetrations.push(Penetration { id, name: format!("{id}"), kind, at, shape, clearance });
    }
}

fn kit(dice: &mut Dice, like: &Kit) -> Kit {
    let mut kit = like.clone();
    match dice.below(4) {
        0 => kit.orientations = vec![Orientation::Landscape, Orientation::Portrait],
        1 => kit.orientations = vec![Orientation::Portrait],
        _ => {}
    }
    match dice.below(6) {
        0 => kit.laying.joints = vec![RowJoints::Aligned],
        1 => kit.laying.joints = vec![RowJoints::HalfLapped],
        _ => {}
    }
    kit.laying.base_rail.anywhere = dice.chance(0.8);
    if dice.chance(0.3) {
        kit.clearances.between_blocks = Length::from_inches(*dice.one(&[0.0, 4.0, 20.0]));
    }
    kit
}

fn book(dice: &mut Dice, like: &RuleBook) -> RuleBook {
    let mut book = like.clone();
    if dice.chance(0.4) {
        for kind in EdgeKind::ALL {
            if let Some(limit) = book.setbacks.get_mut(&kind) {
                limit.value = Length::from_inches(dice.stepped(0.0, 24.0, 3.0));
            }
            if dice.chance(0.2) {
                book.setbacks.remove(&kind);
            }
        }
    }
    if dice.chance(0.3) {
        book.hooked_share.value = *dice.one(&[0.0, 0.3, 0.75, 1.0]);
    }
    if dice.chance(0.3) {
        book.courses_to_ridge.value = dice.below(3) as u32;
    }
    book
}
