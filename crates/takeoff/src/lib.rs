//! Takeoff: what to order for the roof and the blocks as placed, and where each quantity comes from.
//!
//! need → waste → stock in hand → packages → order → price → total. Every count is driven by the kit file and by the job's
//! decisions about its order; every line can show its places.
//!
//! - [`take_off`]: the [`Takeoff`] of a job as laid out; [`take_off_with`] the same, with a [`Memo`] for a drag
//! - [`Line`], [`LineTerm`], [`MeasuredPlace`]: one part, how its need was counted, and where on the roof
//! - [`CutList`], [`LaidOut`]: how sticks are cut and rolls laid; [`cutting`] is the solver, which knows nothing of roofs
//! - [`Totals`]: from line costs to the price of the job, to the cent
//! - [`compare`]: the differences between two orders; [`compare_prices`]: suppliers
//! - [`pallet`], [`stages_ready`]: what arrived, what can start
//!
//! This crate judges nothing, writes no sentences and has no user interface: crate `telling` puts an order into words. A count
//! never depends on prices.

mod amount;
mod band;
mod clip;
mod compare;
mod costs;
mod counted;
mod cutlist;
pub mod cutting;
mod labour;
mod line;
mod measure;
mod memo;
mod place;
mod receive;
mod rolls;
mod suppliers;
mod totals;

pub use amount::{DUST, number, show_amount};
pub use compare::{Change, Comparison, compare};
pub use costs::cost_of;
pub use cutlist::{CutList, CutPiece, CutStick};
pub use line::{CrewTime, Line, LineState, LineTerm, PackageName, Takeoff, WasteFrom};
pub use memo::Memo;
pub use place::{MeasuredPlace, MeasuredShape, Spot};
pub use receive::{NeededBy, PalletRow, StageReady, pallet, stages_ready};
pub use rolls::{LaidOut, Strip};
pub use suppliers::{Offer, PriceComparison, PriceRow, compare_prices};
pub use totals::Totals;

use chalkcourse_job::{AddedLine, Amount, BlockId, Measure, Part, Resolved, Term, Unit, Waste};
use chalkcourse_layout::Layout;
use chalkcourse_rules::uplift::MoreFasteners;
use chalkcourse_wiring::Wires;
use chalkcourse_words::{Said, later as words};
use measure::Measures;
use rust_decimal::Decimal;
use std::collections::BTreeMap;

/// The takeoff of a job as laid out. Lines are in the order of the kit's parts; only parts that are ordered have one.
pub fn take_off(job: &Resolved, layout: &Layout) -> Takeoff {
    take_off_with(job, layout, &Wires::of(job, layout), &mut Memo::default())
}

/// The same takeoff with the circuits as wired, reusing what has not changed since the last one.
pub fn take_off_with(job: &Resolved, layout: &Layout, wires: &Wires, memo: &mut Memo) -> Takeoff {
    let mut measures = Measures::of(job, layout, wires);
    memo.look_at(job, layout, &measures.covered);
    let mut takeoff =
        Takeoff { currency: job.prices.currency.clone(), units: job.units, ..Takeoff::default() };
    for part in &job.kit.parts {
        let wired = !job.circuits.is_empty();
        let now = |term: &&Term| term.wired.is_none_or(|with| with == wired);
        let wanted = part.needs.iter().filter(|term| job.order.counts(term)).filter(now);
        let terms: Vec<LineTerm> = wanted.map(|term| term_of(part, term, &mut measures, memo)).collect();
        notes_on(part, &terms, &mut takeoff.notes);
        measures.remember(part, &terms);
        let line = line_of(job, part, terms, &measures, memo);
        if job.order.off.contains_key(&part.number) {
            if line.need > 0.0 {
                takeoff.off.push(line);
            }
        } else if line.need > 0.0 || line.packages > 0 {
            takeoff.lines.push(line);
        }
    }
    for added in &job.order.added {
        let line = added_line(job, added);
        let off = job.order.off.contains_key(&added.number);
        if off { takeoff.off.push(line) } else { takeoff.lines.push(line) }
    }
    labour::in_whole_hours(&mut takeoff.lines, &job.kit);
    let unpriced = takeoff.lines.iter().filter(|line| line.cost.is_none() && line.packages > 0);
    takeoff.unpriced = unpriced.map(|line| line.number.clone()).collect();
    // An overflow shows the largest decimal, which stands out more than a zero would.
    takeoff.priced_total = totals::sum(takeoff.lines.iter().filter_map(|line| line.cost));
    takeoff.totals = Totals::of(&takeoff.lines, job);
    takeoff.crews = labour::crews(&takeoff.lines, &job.kit);
    notes_on_job(job, &measures, &mut takeoff);
    takeoff
}

fn term_of(part: &Part, term: &Term, measures: &mut Measures, memo: &mut Memo) -> LineTerm {
    let counted = match &term.of {
        Measure::Sticks(of) => measures.sticks(of, &part.number),
        _ => None,
    };
    let counted = counted.unwrap_or_else(|| measures.counted(&term.of, memo));
    let (mut cuts, mut laid) = (None, None);
    match &term.each {
        Amount::Cut(sticks) => cuts = Some(memo.cut(sticks, &counted.places)),
        Amount::Laid(roll) => {
            laid = Some(memo.laid(&counted.places, roll));
        }
        _ => {}
    }
    let mut line = LineTerm {
        of: term.of.clone(),
        of_unit: counted.unit,
        measured: counted.total,
        each: term.each.clone(),
        stage: part.stage_of(term),
        spare: term.spare,
        unit: part.unit,
        need: 0.0,
        places: counted.places,
        cuts,
        laid,
    };
    // an empty sum of floats is -0
    line.need = line.shares().sum::<f64>() + 0.0;
    line
}

fn line_of(job: &Resolved, part: &Part, terms: Vec<LineTerm>, measures: &Measures, memo: &mut Memo) -> Line {
    let choices = &job.order;
    let whole = |amount: f64| if part.unit == Unit::Each { amount::whole(amount) } else { amount };
    let need = whole(terms.iter().map(|term| term.need).sum());
    let shingled =
        |term: &LineTerm| term.of == Measure::Shingled && part.unit == Unit::Area && term.laid.is_none();
    let waste_by_geometry =
        terms.iter().any(shingled).then(|| memo.shingles_cut_off(|| measures.shingles_cut_off()));
    let (waste, waste_from) = match (choices.waste.get(&part.number), part.waste) {
        (Some(own), _) => (own.share, WasteFrom::Office { why: own.why.clone() }),
        (None, Waste::Share(share)) => (share, WasteFrom::Kit),
        (None, by_roof @ Waste::ByRoof(_)) => {
            let kind = choices.waste_as.chosen().unwrap_or_else(|| measures.roof_kind());
            (by_roof.share(kind), WasteFrom::Roof { kind, chosen: choices.waste_as.chosen().is_some() })
        }
    };
    let with_waste = whole(need * (1.0 + waste));
    let stock =
        choices.stock.iter().filter(|left| left.number == part.number && left.amount.unit() == part.unit);
    let own = part.comes_back && choices.own.contains(&part.number);
    let in_stock = if own { with_waste } else { stock.map(|left| left.amount.amount()).sum() };
    let from_stock = in_stock.min(with_waste) + 0.0;
    let holds = part.package.holds.amount();
    let to_buy = with_waste - from_stock;
    // Casts of out-of-range or NaN values saturate; a kit file with such numbers is refused. A need above zero, however small,
    // takes at least one package.
    let least = if to_buy > 0.0 && need > 0.0 && from_stock <= 0.0 { 1.0 } else { 0.0 };
    let counted = amount::whole(to_buy / holds).max(least) as u64;
    let (packages, state) = match (choices.off.get(&part.number), choices.overrides.get(&part.number)) {
        (Some(why), _) => (0, LineState::Off { why: why.clone() }),
        (None, Some(choice)) => (choice.packages, LineState::Overridden { why: choice.why.clone() }),
        (None, None) => (counted, LineState::Counted),
    };
    let (price, taxed, alternate) = price_of(job, &part.number);
    Line {
        number: part.number.clone(),
        name: Said::of_data(&part.name),
        group: part.group,
        stage: terms.iter().filter(|t| t.need > 0.0).map(|t| t.stage).min().unwrap_or(part.stage()),
        crew: part.crew.clone(),
        unit: part.unit,
        need,
        waste,
        waste_from,
        waste_by_geometry,
        with_waste,
        from_stock,
        own,
        package: PackageName::of_kit(&part.package.name),
        holds,
        counted,
        packages,
        ordered: packages as f64 * holds,
        state,
        alternate,
        price,
        taxed,
        cost: totals::cost(price, packages),
        terms,
        source: Said::own(&part.source.text),
    }
}

/// The price of a part or of the alternate taken in its place, and whether it is taxed.
fn price_of(job: &Resolved, number: &str) -> (Option<Decimal>, bool, Option<(String, String)>) {
    let Some(price) = job.prices.prices.get(number) else { return (None, true, None) };
    let wanted = job.order.alternates.get(number);
    match price.alternates.iter().find(|other| Some(&other.number) == wanted) {
        Some(other) => {
            (Some(other.package), !price.untaxed, Some((other.number.clone(), other.name.clone())))
        }
        None => (Some(price.package), !price.untaxed, None),
    }
}

/// A line that a person added to the order.
fn added_line(job: &Resolved, added: &AddedLine) -> Line {
    let (listed, taxed, alternate) = price_of(job, &added.number);
    let price = added.price.or(listed);
    let off = job.order.off.get(&added.number);
    let packages = if off.is_some() { 0 } else { added.packages };
    let amount = added.packages as f64;
    Line {
        number: added.number.clone(),
        name: Said::own(&added.name),
        group: added.group,
        stage: added.stage,
        crew: None,
        unit: Unit::Each,
        need: amount,
        waste: 0.0,
        waste_from: WasteFrom::Kit,
        waste_by_geometry: None,
        with_waste: amount,
        from_stock: 0.0,
        own: false,
        package: PackageName::own(&added.package),
        holds: 1.0,
        counted: added.packages,
        packages,
        ordered: packages as f64,
        state: match off {
            Some(why) => LineState::Off { why: why.clone() },
            None => LineState::Added { why: added.why.clone() },
        },
        alternate,
        price,
        taxed,
        cost: totals::cost(price, packages),
        terms: Vec::new(),
        source: words::takeoff::PUT_ON_THE_ORDER_BY.into(),
    }
}

/// Notes on what could not be cut as the kit says.
fn notes_on(part: &Part, terms: &[LineTerm], notes: &mut Vec<Said>) {
    for term in terms {
        let Some(cuts) = &term.cuts else { continue };
        let places: Vec<Said> =
            cuts.too_long.iter().filter_map(|&run| term.places.get(run)).map(MeasuredPlace::label).collect();
        if !places.is_empty() {
            notes.push(words::takeoff::longer_than_any_stick_and(
                &part.number,
                &part.name,
                &Said::listed(places, ", "),
            ));
        }
    }
}

/// Notes on what the count had to assume.
fn notes_on_job(job: &Resolved, measures: &Measures, takeoff: &mut Takeoff) {
    let barrier =
        takeoff.lines.iter().flat_map(|line| &line.terms).any(|term| term.of == Measure::LeakBarrier);
    if barrier && measures.overhang_missing() {
        takeoff.notes.push(words::takeoff::THE_OVERHANG_OF_THE_EAVES.into());
    }
    let wind = takeoff.lines.iter().flat_map(|line| &line.terms).any(|term| term.of == Measure::WindFastener);
    if wind {
        takeoff.notes.extend(wind_notes(job, measures.more_fasteners()));
    }
    if takeoff.lines.is_empty() {
        return;
    }
    if job.prices.tax_percent.is_none() {
        takeoff.notes.push(words::takeoff::THE_PRICE_LIST_DOES_NOT.into());
    }
    if job.prices.delivery.is_none() {
        takeoff.notes.push(words::takeoff::THE_PRICE_LIST_DOES_NOT_SAY.into());
    }
    for left in &job.order.stock {
        let part = job.kit.part(&left.number);
        match part {
            None => {
                takeoff.notes.push(words::takeoff::stock_in_hand_the_kit(&format_args!("{:?}", left.number)));
            }
            Some(part) if part.unit != left.amount.unit() => takeoff
                .notes
                .push(words::takeoff::stock_in_hand_is_not(&part.number, &left.amount.show(job.units))),
            Some(_) => {}
        }
    }
}

/// Notes on blocks and zones where wind calls for more fasteners.
fn wind_notes(job: &Resolved, asked: &[MoreFasteners]) -> Vec<Said> {
    let mut zones: BTreeMap<(BlockId, &str), (u32, usize)> = BTreeMap::new();
    for more in asked {
        let (a_foot, modules) = zones.entry((more.block, more.zone.name())).or_default();
        *a_foot = (*a_foot).max(more.a_foot);
        *modules += 1;
    }
    let words = |((block, zone), (a_foot, modules)): ((BlockId, &str), (u32, usize))| {
        let name = job.block(block).map_or("", |block| block.name.as_str());
        words::takeoff::wind_a_screening_fasteners_a(&a_foot, &zone, &modules, &name)
    };
    zones.into_iter().map(words).collect()
}

#[cfg(test)]
mod tests;
