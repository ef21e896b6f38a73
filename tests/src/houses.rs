//! Test houses by number, for judging what fills claim: usual ones as on any street, roofs of odd sizes, awkward faces,
//! and real roofs. All invented except the real ones; a number gives the same house on every machine.
//!
//! What is usual (sizes, pitches, overhangs, penetrations and where they are) is common practice, no source.

mod awkward;
mod through;

pub use awkward::awkward;

use crate::dice::Dice;
use chalkcourse_exchange::{HouseShape, find, list};
use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Edit, PartId, PartKind, Resolved, RoofPart, RuleBook, apply, builtin_kit, builtin_prices,
    builtin_rule_book,
};
use chalkcourse_plan::{Ends, RaiseAs};
use std::ops::RangeInclusive;
use std::path::Path;
use std::sync::Arc;

/// The usual houses that fill gaps are counted on.
pub const USUAL: RangeInclusive<u64> = 1..=200;

/// The type of roof.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Two slopes with a ridge.
    Gable,
    /// Slopes on all sides.
    Hip,
    /// A wing at an angle, with valleys.
    Ell,
    /// A gable or a hip with one or two dormers.
    Dormer,
}

/// A test house.
#[derive(Clone, Debug)]
pub struct House {
    /// Its number.
    pub seed: u64,
    /// Its type of roof.
    pub kind: Kind,
    /// The job: a roof without an array.
    pub job: Resolved,
}

/// Granularity of sizes and pitches.
#[derive(Clone, Copy)]
struct Sizes {
    /// Plan lengths are multiples of this, metres.
    step: f64,
    /// Rise in 12 is a multiple of this.
    rise: f64,
}

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;

/// A usual house: 24 × 30 to 40 × 60 ft in half feet, 4:12 to 9:12, the office book with or without fire access, two to
/// six penetrations.
pub fn usual(seed: u64) -> House {
    raised(seed, Dice::new(seed), Sizes { step: FOOT / 2.0, rise: 1.0 })
}

/// The same types of houses with sizes and pitches to the millimetre, so that hips and corners are at odd positions.
pub fn odd(seed: u64) -> House {
    raised(seed, Dice::new(seed ^ 0x0dd0_0000), Sizes { step: 0.001, rise: 0.01 })
}

fn raised(seed: u64, mut dice: Dice, sizes: Sizes) -> House {
    // Sometimes a wing and a dormer collide: then draw again.
    loop {
        let kind = *dice.one(&[Kind::Gable, Kind::Hip, Kind::Ell, Kind::Dormer]);
        if let Some(job) = house(&mut dice, kind, sizes, seed) {
            return House { seed, kind, job };
        }
    }
}

/// The empty job that a house starts from.
fn empty(name: String, with_fire: bool) -> Resolved {
    let book = builtin_rule_book();
    let book =
        if with_fire { book } else { Arc::new(RuleBook { fire_access: None, ..RuleBook::clone(&book) }) };
    Resolved::new(name, builtin_kit(), book, builtin_prices())
}

fn house(dice: &mut Dice, kind: Kind, sizes: Sizes, seed: u64) -> Option<Resolved> {
    let with_fire = dice.chance(0.5);
    let mut job = empty(format!("House {seed}"), with_fire);
    if with_fire && dice.chance(0.25) {
        job.site.building.street_sides = vec![*dice.one(&[Azimuth::SOUTH, Azimuth::WEST])];
    }
    let feet = |dice: &mut Dice, from: f64, to: f64| dice.stepped(from * FOOT, to * FOOT, sizes.step);
    let depth = feet(dice, 24.0, 40.0);
    let long = feet(dice, 30.0f64.max(depth / FOOT), 60.0);
    let eave = Length::from_metres(feet(dice, 8.0, 10.0));
    let pitch = Pitch::from_rise_in_12(dice.stepped(4.0, 9.0, sizes.rise)).ok()?;
    let roof = Roof {
        pitch,
        eave,
        overhang: *dice.one(&[0.0, 12.0, 16.0, 18.0, 24.0]) * INCH,
        rake: *dice.one(&[0.0, 6.0, 12.0]) * INCH,
    };
    match kind {
        Kind::Gable | Kind::Hip => {
            let corners = [(0.0, 0.0), (long, 0.0), (long, depth), (0.0, depth)];
            let gables: &[usize] = if kind == Kind::Gable { &[1, 3] } else { &[] };
            job = roof.put(&job, "Main", PartKind::Main, &corners, gables)?;
        }
        Kind::Ell => job = ell(dice, &job, &roof, (long, depth), &feet)?,
        Kind::Dormer => {
            let corners = [(0.0, 0.0), (long, 0.0), (long, depth), (0.0, depth)];
            let gables: &[usize] = if dice.chance(0.7) { &[1, 3] } else { &[] };
            job = roof.put(&job, "Main", PartKind::Main, &corners, gables)?;
            job = dormers(dice, job, &roof, (long, depth), &feet)?;
        }
    }
    through::put(dice, &mut job);
    Some(job)
}

/// Properties common to the sides of a house.
struct Roof {
    pitch: Pitch,
    eave: Length,
    /// Overhang beyond walls with an eave, and `rake` beyond gables, metres.
    overhang: f64,
    rake: f64,
}

impl Roof {
    /// The job with a part added; sides count from the first corner, `gables` lists the sides that are gables.
    fn put(
        &self,
        job: &Resolved,
        name: &str,
        kind: PartKind,
        corners: &[(f64, f64)],
        gables: &[usize],
    ) -> Option<Resolved> {
        let outline = Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y)).collect());
        let slope = Treatment::Slope(self.pitch);
        let overhang = Length::from_metres(self.overhang);
        let id = PartId(job.next_id);
        let mut part = RoofPart::new(id, name.to_owned(), kind, outline, self.eave, slope, overhang);
        for (index, side) in part.sides.iter_mut().flatten().enumerate() {
            if gables.contains(&index) {
                (side.treatment, side.overhang) = (Treatment::Gable, Length::from_metres(self.rake));
            }
        }
        apply(job, &Edit::PutPart(part)).ok()
    }
}

/// A house with a wing to the south: as one outline, or as a part that runs into the main house.
fn ell(
    dice: &mut Dice,
    job: &Resolved,
    roof: &Roof,
    (long, depth): (f64, f64),
    feet: &impl Fn(&mut Dice, f64, f64) -> f64,
) -> Option<Resolved> {
    let wide = feet(dice, 14.0, 24.0).min(depth);
    let out = feet(dice, 6.0, 18.0);
    // At the left end, at the right end, or in between.
    let from = match dice.below(3) {
        0 => 0.0,
        1 => long - wide,
        _ => feet(dice, 4.0, 20.0).min(long - wide),
    };
    let hips = dice.chance(0.5);
    if dice.chance(0.5) {
        let main = [(0.0, 0.0), (long, 0.0), (long, depth), (0.0, depth)];
        let job = roof.put(job, "Main", PartKind::Main, &main, if hips { &[] } else { &[1, 3] })?;
        // As far in as the ridge of the wing can reach.
        let back = wide / 2.0;
        let wing = [(from, -out), (from + wide, -out), (from + wide, back), (from, back)];
        return roof.put(&job, "Wing", PartKind::Ell, &wing, if hips { &[2] } else { &[0, 2] });
    }
    let mut corners = vec![(from, -out), (from + wide, -out)];
    if from + wide < long - 1e-6 {
        corners.extend([(from + wide, 0.0), (long, 0.0)]);
    }
    corners.extend([(long, depth), (0.0, depth)]);
    if from > 1e-6 {
        corners.extend([(0.0, 0.0), (from, 0.0)]);
    }
    let n = corners.len();
    let end = |a: (f64, f64), b: (f64, f64)| {
        // The front of the wing, and the walls at both ends of the main house.
        let front = (a.1 - b.1).abs() < 1e-9 && a.1 < -1e-6;
        let side = (a.0 - b.0).abs() < 1e-9 && (a.0 < 1e-6 || a.0 > long - 1e-6);
        front || side && (a.1 - b.1).abs() > depth - 1e-6
    };
    let gables: Vec<usize> = (0..n).filter(|&i| end(corners[i], corners[(i + 1) % n])).collect();
    roof.put(job, "Main", PartKind::Main, &corners, if hips { &[] } else { &gables })
}

/// One or two dormers on the south slope, gabled or with a shed roof.
fn dormers(
    dice: &mut Dice,
    mut job: Resolved,
    roof: &Roof,
    (long, depth): (f64, f64),
    feet: &impl Fn(&mut Dice, f64, f64) -> f64,
) -> Option<Resolved> {
    let many = 1 + dice.below(2);
    let wide = feet(dice, 4.0, 9.0);
    let front = feet(dice, 1.0, 3.0);
    let room = long / many as f64;
    let shed = dice.chance(0.3);
    for n in 0..many {
        let left = room * n as f64 + feet(dice, 3.0, (room - wide) / FOOT - 3.0).max(3.0 * FOOT);
        let right = left + wide;
        let knee = feet(dice, 3.0, 4.5);
        let eave = Length::from_metres(roof.eave.metres() + front * roof.pitch.slope() + knee);
        let pitch = if shed { Pitch::from_rise_in_12(3.0).ok()? } else { roof.pitch };
        // Its roof dies into the slope behind it.
        let back = (front + depth / 2.0).min(depth * 0.45 + front);
        let corners = [(left, front), (right, front), (right, back), (left, back)];
        let overhang = roof.overhang.min(8.0 * INCH);
        let on_slope = Roof { pitch, eave, overhang, rake: overhang };
        let gables: &[usize] = if shed { &[1, 2, 3] } else { &[0, 2] };
        job = on_slope.put(&job, &format!("Dormer {}", n + 1), PartKind::Dormer, &corners, gables)?;
    }
    Some(job)
}

/// The roofs of real buildings in a city model, each as a job with the office book; empty if the file can't be read.
/// Footprints without a roof are skipped.
pub fn real(file: &Path, with_fire: bool) -> Vec<(String, Resolved)> {
    let Ok(listing) = list(file) else { return Vec::new() };
    let how = RaiseAs { pitch: Pitch::FLAT, eave: Length::ZERO, overhang: Length::ZERO, ends: Ends::Hip };
    let read = |id: &str| {
        let house = find(file, Some(id)).ok()?;
        let HouseShape::Roof(_) = &house.shape else { return None };
        let job = empty(house.name.clone(), with_fire);
        let edit = house.edit(&job, &how).ok()?;
        Some((id.to_owned(), apply(&job, &edit).ok()?))
    };
    listing.buildings.iter().filter_map(|entry| read(&entry.id)).collect()
}
