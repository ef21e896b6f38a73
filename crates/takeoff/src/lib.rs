//! Takeoff: what to order for the blocks as placed, and where each quantity comes from.
//!
//! need → waste → packages → order → price. Every count is driven by the kit file; every line can show its places.
//!
//! - [`take_off`]: a job as laid out gives a [`Takeoff`]
//! - [`Line`], [`LineTerm`], [`Place`]: one part, how its need came about, and where on the roof
//! - [`to_text`], [`to_csv`], [`to_json`]: the order to read, for a spreadsheet and for another program
//!
//! This crate judges nothing and knows no screen. A count never depends on prices.

mod amount;
mod band;
mod csv_out;
mod header;
mod json;
mod line;
mod measure;
mod place;
mod text;
mod words;

pub use amount::DUST;
pub use csv_out::{safe_cell, to_csv};
pub use header::{CAUTION, Header};
pub use json::{TAKEOFF_FORMAT, TAKEOFF_VERSION, takeoff_schema, to_json};
pub use line::{Line, LineTerm, Takeoff};
pub use place::{Place, PlaceShape, Spot};
pub use text::to_text;
pub use words::show_amount;

use chalkcourse_job::{Job, Part, Unit};
use chalkcourse_layout::Layout;
use measure::Measures;
use rust_decimal::Decimal;

/// Why a takeoff could not be written.
#[derive(Debug, thiserror::Error)]
pub enum OutputError {
    /// The CSV writer gave up.
    #[error("the order could not be written as CSV: {0}")]
    Csv(String),
    /// A number in it is not finite, or the like.
    #[error("the order could not be written as JSON: {0}")]
    Json(#[from] serde_json::Error),
}

/// The takeoff of a job as laid out. Lines are in the order of the kit's parts, and only of parts that are needed.
pub fn take_off(job: &Job, layout: &Layout) -> Takeoff {
    let mut measures = Measures::of(layout, &job.kit);
    let mut takeoff =
        Takeoff { currency: job.prices.currency.clone(), units: job.units, ..Takeoff::default() };
    for part in &job.kit.parts {
        let terms: Vec<LineTerm> = part
            .needs
            .iter()
            .map(|term| {
                let counted = measures.counted(&term.of);
                LineTerm::new(term, part.unit, &counted)
            })
            .collect();
        measures.remember(part, &terms);
        let line = line_of(job, part, terms);
        if line.need > 0.0 {
            takeoff.lines.push(line);
        }
    }
    let mut total = Some(Decimal::ZERO);
    for line in &takeoff.lines {
        match line.cost {
            Some(cost) => total = total.and_then(|total| total.checked_add(cost)),
            None => takeoff.unpriced.push(line.number.clone()),
        }
    }
    // Beyond what a decimal holds there is no order; the largest number says so louder than a zero would.
    takeoff.priced_total = total.unwrap_or(Decimal::MAX);
    takeoff
}

fn line_of(job: &Job, part: &Part, terms: Vec<LineTerm>) -> Line {
    let whole = |amount: f64| if part.unit == Unit::Each { amount::whole(amount) } else { amount };
    let need = whole(terms.iter().map(|term| term.need).sum());
    let with_waste = whole(need * (1.0 + part.waste));
    let holds = part.package.holds.amount();
    // The cast of a number that is out of bounds or none saturates; a kit file with such numbers is refused.
    let packages = amount::whole(with_waste / holds).max(if need > 0.0 { 1.0 } else { 0.0 }) as u64;
    let price = job.prices.prices.get(&part.number).map(|price| price.package);
    Line {
        number: part.number.clone(),
        name: part.name.clone(),
        group: part.group,
        unit: part.unit,
        need,
        waste: part.waste,
        with_waste,
        package: part.package.name.clone(),
        holds,
        packages,
        ordered: packages as f64 * holds,
        price,
        cost: price.and_then(|price| price.checked_mul(Decimal::from(packages))),
        terms,
        source: part.source.clone(),
    }
}

#[cfg(test)]
mod tests;
