//! Least-squares adjustment: the shape whose lengths differ from the readings by the least sum of squares.
//!
//! Every form is linear in its parameters (corners are sums of them), so each step solves a small linear system; steps that
//! overshoot are shortened (Levenberg–Marquardt damping).

use super::{Form, Reading, TapedLine};
use glam::{DVec2, dvec2};

/// The best-fitting shape.
pub(super) struct Best {
    pub(super) freedoms: Vec<f64>,
    /// Length in the shape minus the reading, metres.
    pub(super) corrections: Vec<f64>,
    pub(super) suspect: Option<usize>,
}

/// Residuals below this, in metres, are rounding.
const DUST: f64 = 1e-6;

/// The parameters that x and y of a corner are sums of.
fn sums(form: Form, corner: usize) -> (Vec<usize>, Vec<usize>) {
    match (form, corner) {
        (_, 0) => (vec![], vec![]),
        (_, 1) => (vec![0], vec![]),
        // eave, up
        (Form::Rectangle, 2) => (vec![0], vec![1]),
        (Form::Rectangle, _) => (vec![], vec![1]),
        // eave, lean, up
        (Form::Triangle, _) => (vec![1], vec![2]),
        (Form::Parallelogram, 2) => (vec![0, 1], vec![2]),
        (Form::Parallelogram, _) => (vec![1], vec![2]),
        // eave, ridge, lean, up
        (Form::Trapezoid, 2) => (vec![1, 2], vec![3]),
        (Form::Trapezoid, _) => (vec![2], vec![3]),
        (Form::Polygon(_), corner) => (vec![2 * corner - 3], vec![2 * corner - 2]),
    }
}

/// Corners in the face's frame.
pub(super) fn shape(form: Form, freedoms: &[f64]) -> Vec<DVec2> {
    let sum = |of: Vec<usize>| of.into_iter().filter_map(|at| freedoms.get(at)).sum();
    (0..form.corners())
        .map(|corner| {
            let (x, y) = sums(form, corner);
            dvec2(sum(x), sum(y))
        })
        .collect()
}

/// The parameters that bring the corners of a form nearest to given ones.
pub(super) fn freedoms_of(form: Form, corners: &[DVec2]) -> Vec<f64> {
    let at = |corner: usize| {
        // A form has all the corners that its lengths are between.
        debug_assert!(corner < corners.len());
        corners.get(corner).copied().unwrap_or_default()
    };
    match form {
        Form::Triangle => vec![at(1).x, at(2).x, at(2).y],
        Form::Rectangle => vec![at(1).x, at(3).y],
        Form::Parallelogram => vec![at(1).x, at(3).x, at(3).y],
        Form::Trapezoid => vec![at(1).x, at(2).x - at(3).x, at(3).x, at(3).y],
        Form::Polygon(_) => {
            std::iter::once(at(1).x).chain(corners.iter().skip(2).flat_map(|p| [p.x, p.y])).collect()
        }
    }
}

/// Residuals (length in the shape minus reading) and their derivatives by each parameter.
fn residuals(form: Form, freedoms: &[f64], readings: &[Reading]) -> (Vec<f64>, Vec<Vec<f64>>) {
    let corners = shape(form, freedoms);
    let at = |corner: usize| {
        // A form has all the corners that its lengths are between.
        debug_assert!(corner < corners.len());
        corners.get(corner).copied().unwrap_or_default()
    };
    let mut by = Vec::with_capacity(readings.len());
    let mut rows = Vec::with_capacity(readings.len());
    for reading in readings {
        let mut row = vec![0.0; freedoms.len()];
        let mut add = |corner: usize, part: DVec2| {
            let (x, y) = sums(form, corner);
            x.into_iter().for_each(|freedom| row[freedom] += part.x);
            y.into_iter().for_each(|freedom| row[freedom] += part.y);
        };
        let length = match reading.of {
            TapedLine::Between(from, to) => {
                let line = at(to) - at(from);
                let along = line.normalize_or_zero();
                add(to, along);
                add(from, -along);
                line.length()
            }
            TapedLine::Up(corner) => {
                add(corner, DVec2::Y);
                at(corner).y
            }
        };
        by.push(length - reading.length.metres());
        rows.push(row);
    }
    (by, rows)
}

fn sum_of_squares(values: &[f64]) -> f64 {
    values.iter().map(|value| value * value).sum()
}

/// The best shape, from a nearby start.
pub(super) fn least_squares(form: Form, start: Vec<f64>, readings: &[Reading]) -> Best {
    let mut freedoms = start;
    let (mut by, mut rows) = residuals(form, &freedoms, readings);
    let mut damping = 1e-6;
    for _ in 0..200 {
        let pull: Vec<f64> = (0..freedoms.len())
            .map(|f| -rows.iter().zip(&by).map(|(row, by)| row[f] * by).sum::<f64>())
            .collect();
        if pull.iter().all(|p| p.abs() < 1e-14) {
            break;
        }
        let Some(step) = solve(normal(&rows, freedoms.len(), damping), pull) else {
            damping = (damping * 10.0).max(1e-9);
            if damping > 1e6 {
                break;
            }
            continue;
        };
        let next: Vec<f64> = freedoms.iter().zip(&step).map(|(f, s)| f + s).collect();
        let (next_by, next_rows) = residuals(form, &next, readings);
        if sum_of_squares(&next_by) <= sum_of_squares(&by) {
            let still = step.iter().all(|s| s.abs() < 1e-13);
            (freedoms, by, rows) = (next, next_by, next_rows);
            damping = (damping / 10.0).max(1e-15);
            if still {
                break;
            }
        } else {
            damping *= 10.0;
            if damping > 1e6 {
                break;
            }
        }
    }
    let suspect = suspect(&rows, &by, freedoms.len());
    Best { freedoms, corrections: by, suspect }
}

/// The normal matrix, with its diagonal increased by a damping fraction.
fn normal(rows: &[Vec<f64>], size: usize, damping: f64) -> Vec<Vec<f64>> {
    let mut matrix = vec![vec![0.0; size]; size];
    for row in rows {
        for i in 0..size {
            for j in 0..size {
                matrix[i][j] += row[i] * row[j];
            }
        }
    }
    for (i, row) in matrix.iter_mut().enumerate() {
        row[i] += damping * row[i].max(1e-6);
    }
    matrix
}

/// Solves a symmetric positive-definite system; `None` if it is not positive definite.
fn solve(mut matrix: Vec<Vec<f64>>, mut right: Vec<f64>) -> Option<Vec<f64>> {
    let size = right.len();
    for i in 0..size {
        for j in 0..=i {
            let sum: f64 = matrix[i][j] - (0..j).map(|k| matrix[i][k] * matrix[j][k]).sum::<f64>();
            if i == j {
                if sum <= 1e-14 {
                    return None;
                }
                matrix[i][i] = sum.sqrt();
            } else {
                matrix[i][j] = sum / matrix[j][j];
            }
        }
    }
    for i in 0..size {
        let sum: f64 = (0..i).map(|k| matrix[i][k] * right[k]).sum();
        right[i] = (right[i] - sum) / matrix[i][i];
    }
    for i in (0..size).rev() {
        let sum: f64 = (i + 1..size).map(|k| matrix[k][i] * right[k]).sum();
        right[i] = (right[i] - sum) / matrix[i][i];
    }
    Some(right)
}

/// The reading with the largest correction relative to what chance would give it: corrections are small where other readings
/// hardly check one, so each is weighted by its redundancy (Baarda's test, from memory). A single redundant reading can't tell
/// which one is wrong.
fn suspect(rows: &[Vec<f64>], by: &[f64], size: usize) -> Option<usize> {
    if rows.len() < size + 2 || by.iter().all(|by| by.abs() < DUST) {
        return None;
    }
    let mut weighed = Vec::with_capacity(rows.len());
    for (row, by) in rows.iter().zip(by) {
        let taken = solve(normal(rows, size, 0.0), row.clone())?;
        let checked = 1.0 - row.iter().zip(&taken).map(|(a, b)| a * b).sum::<f64>();
        weighed.push(if checked > 1e-6 { by.abs() / checked.sqrt() } else { 0.0 });
    }
    let most = (0..weighed.len()).max_by(|&a, &b| weighed[a].total_cmp(&weighed[b]))?;
    // Two equally suspicious ones can't be told apart.
    let alone = weighed.iter().enumerate().all(|(at, w)| at == most || *w < weighed[most] * 0.999);
    alone.then_some(most)
}
