//! An initial shape from a minimal set of readings: by the law of cosines, corner by corner.

use super::spread::freedoms_of;
use super::{Form, Reading, TapedError, TapedLine};
use crate::Length;
use glam::{DVec2, dvec2};

/// The parameters of a shape near the best one. `slack` (metres) is by how much a triangle may fail to close if other readings
/// may still fix it.
pub(super) fn of(form: Form, readings: &[Reading], slack: f64) -> Result<Vec<f64>, TapedError> {
    let corners = match form {
        Form::Triangle | Form::Polygon(_) => placed(form.corners(), readings, slack)?,
        _ => four_sides(form, readings, slack)?,
    };
    Ok(freedoms_of(form, &corners))
}

fn between(readings: &[Reading], a: usize, b: usize) -> Option<f64> {
    let same = |of: TapedLine| of == TapedLine::Between(a, b) || of == TapedLine::Between(b, a);
    let found: Vec<f64> = readings.iter().filter(|r| same(r.of)).map(|r| r.length.metres()).collect();
    (!found.is_empty()).then(|| found.iter().sum::<f64>() / found.len() as f64)
}

/// Places corners one after the other, each from two placed ones.
fn placed(count: usize, readings: &[Reading], slack: f64) -> Result<Vec<DVec2>, TapedError> {
    let eave = between(readings, 0, 1).ok_or(TapedError::Loose(1))?;
    let mut there: Vec<Option<DVec2>> = vec![None; count];
    there[0] = Some(DVec2::ZERO);
    there[1] = Some(dvec2(eave, 0.0));
    while let Some(loose) = (0..count).find(|&corner| there[corner].is_none()) {
        // Of all corners reachable from two placed ones take the one with the best-conditioned triangle.
        let mut best: Option<(f64, usize, DVec2)> = None;
        let mut wrong = None;
        for corner in (0..count).filter(|&corner| there[corner].is_none()) {
            let held: Vec<(usize, DVec2, f64)> = (0..count)
                .filter_map(|from| Some((from, there[from]?, between(readings, from, corner)?)))
                .collect();
            for (index, &one) in held.iter().enumerate() {
                for &other in &held[index + 1..] {
                    match meeting(corner, one, other, slack) {
                        Ok((at, fat)) if best.as_ref().is_none_or(|(most, ..)| fat > *most) => {
                            best = Some((fat, corner, at));
                        }
                        Ok(_) => {}
                        Err(error) => wrong = Some(error),
                    }
                }
            }
        }
        match (best, wrong) {
            (Some((_, corner, at)), _) => there[corner] = Some(at),
            (None, Some(wrong)) => return Err(wrong),
            (None, None) => return Err(TapedError::Loose(loose)),
        }
    }
    Ok(there.into_iter().flatten().collect())
}

/// Where the tapes from two corners meet, and how well conditioned the triangle is: 1 for a right angle, 0 for a flat one.
fn meeting(
    corner: usize,
    (a, p, from_p): (usize, DVec2, f64),
    (b, q, from_q): (usize, DVec2, f64),
    slack: f64,
) -> Result<(DVec2, f64), TapedError> {
    let apart = p.distance(q);
    let long = [
        (TapedLine::Between(a, b), apart),
        (TapedLine::Between(a, corner), from_p),
        (TapedLine::Between(b, corner), from_q),
    ];
    let total = apart + from_p + from_q;
    for (of, is) in long {
        let reach = total - is;
        if is > reach + slack {
            let metres = Length::from_metres;
            return Err(TapedError::TooLong { of, is: metres(is), reach: metres(reach) });
        }
    }
    let toward = (q - p).normalize_or_zero();
    let along =
        if apart > 0.0 { (from_p.powi(2) - from_q.powi(2) + apart.powi(2)) / (2.0 * apart) } else { 0.0 };
    let aside = (from_p.powi(2) - along.powi(2)).max(0.0).sqrt();
    // The outline runs counter-clockwise, and diagonals are inside: so every triangle is counter-clockwise too.
    let side = if (a.min(b)..a.max(b)).contains(&corner) == (a < b) { -1.0 } else { 1.0 };
    let at = p + toward * along + toward.perp() * (aside * side);
    Ok((at, aside * apart / (from_p * from_q).max(1e-12)))
}

/// A shape with parallel ridge and eave: `eave`, `ridge`, the offset of the ridge's left end from the eave's (`lean`), and `up`.
/// Each side and diagonal is a circle around a point of one line, with the left end of the ridge on it: two circles with
/// different centres intersect there.
fn four_sides(form: Form, readings: &[Reading], slack: f64) -> Result<Vec<DVec2>, TapedError> {
    let eave = between(readings, 0, 1);
    let ridge = between(readings, 2, 3);
    let alike = form != Form::Trapezoid;
    let (eave, ridge) = match (eave, ridge, alike) {
        (Some(eave), Some(ridge), true) => ((eave + ridge) / 2.0, (eave + ridge) / 2.0),
        (Some(one), None, true) | (None, Some(one), true) => (one, one),
        (Some(eave), Some(ridge), false) => (eave, ridge),
        (None, ..) => return Err(TapedError::Loose(1)),
        (_, None, _) => return Err(TapedError::Loose(2)),
    };
    let circles: Vec<(usize, usize, f64, f64)> =
        [(0, 3, 0.0), (1, 2, eave - ridge), (0, 2, -ridge), (1, 3, eave)]
            .into_iter()
            .filter_map(|(a, b, centre)| Some((a, b, centre, between(readings, a, b)?)))
            .collect();
    let corners =
        |lean: f64, up: f64| vec![DVec2::ZERO, dvec2(eave, 0.0), dvec2(lean + ridge, up), dvec2(lean, up)];
    let heights = || readings.iter().filter(|r| matches!(r.of, TapedLine::Up(_))).map(|r| r.length.metres());
    if form == Form::Rectangle {
        let from_side = circles.iter().find(|c| c.2 == 0.0).map(|c| c.3);
        let from_diagonal = || {
            let diagonal = circles.first()?.3;
            (diagonal > eave).then(|| (diagonal.powi(2) - eave.powi(2)).sqrt())
        };
        let up = from_side.or_else(|| heights().next()).or_else(from_diagonal).ok_or(TapedError::Loose(3))?;
        return Ok(corners(0.0, up));
    }
    let apart = |a: &(usize, usize, f64, f64), b: &(usize, usize, f64, f64)| (a.2 - b.2).abs();
    let pair = circles
        .iter()
        .enumerate()
        .flat_map(|(index, a)| circles[index + 1..].iter().map(move |b| (a, b)))
        .max_by(|x, y| apart(x.0, x.1).total_cmp(&apart(y.0, y.1)));
    let Some((one, other)) = pair else {
        // A height and one side leave two possible leans; a hip takes one of them.
        return Err(if circles.is_empty() { TapedError::Loose(3) } else { TapedError::Leans });
    };
    if apart(one, other) < 0.02 * eave.max(ridge) {
        return Err(TapedError::Leans);
    }
    let base = apart(one, other);
    if one.3 + other.3 + slack < base || (one.3 - other.3).abs() > base + slack {
        let metres = Length::from_metres;
        let (long, short) = if one.3 > other.3 { (one, other) } else { (other, one) };
        return Err(if one.3 + other.3 < base {
            let reach = metres(one.3 + other.3 + eave.min(ridge));
            TapedError::TooLong { of: TapedLine::Between(0, 1), is: metres(eave.max(ridge)), reach }
        } else {
            TapedError::TooLong {
                of: TapedLine::Between(long.0, long.1),
                is: metres(long.3),
                reach: metres(short.3 + base),
            }
        });
    }
    let lean =
        (one.3.powi(2) - other.3.powi(2) + other.2.powi(2) - one.2.powi(2)) / (2.0 * (other.2 - one.2));
    let up = (one.3.powi(2) - (lean - one.2).powi(2)).max(0.0).sqrt();
    Ok(corners(lean, up))
}
