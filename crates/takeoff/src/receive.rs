//! What arrived: the pallet list, what can start with it, and the claim to the supplier.

use crate::csv_out::write_rows;
use crate::text::plain;
use crate::words::plural;
use crate::{OutputError, Takeoff};
use chalkcourse_job::{Delivery, Stage};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeSet;
use std::fmt::Write;

/// One line of the pallet list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct PalletRow {
    /// The part.
    pub number: String,
    /// What it is.
    pub name: String,
    /// The first stage of work at which some of it is needed.
    pub stage: Stage,
    /// What a package is called.
    pub package: String,
    /// Packages that were ordered.
    pub ordered: u64,
    /// Stages at which some of it is needed, first to last, each with the packages that must be there by then: waste is not in
    /// them, and neither is what comes from stock.
    pub needed: Vec<NeededBy>,
    /// Packages that came; `None` where nobody counted yet.
    pub counted: Option<u64>,
    /// Of those, packages that can't be used.
    pub damaged: u64,
    /// What to tell the supplier.
    pub note: String,
}

/// Packages that must be there before a stage can be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct NeededBy {
    /// The stage.
    pub stage: Stage,
    /// All that it and the stages before it need.
    pub packages: u64,
}

impl PalletRow {
    /// Packages that can be used.
    pub fn good(&self) -> u64 {
        self.counted.unwrap_or(0).saturating_sub(self.damaged)
    }

    /// Packages that did not come.
    pub fn short(&self) -> u64 {
        self.counted.map_or(0, |counted| self.ordered.saturating_sub(counted))
    }

    /// Packages beyond the order.
    pub fn over(&self) -> u64 {
        self.counted.map_or(0, |counted| counted.saturating_sub(self.ordered))
    }

    /// Packages that are still wanted: short ones and damaged ones that no other makes up for.
    pub fn wanting(&self) -> u64 {
        self.ordered.saturating_sub(self.good())
    }

    /// Whether it was counted and all is there.
    pub fn is_complete(&self) -> bool {
        self.counted.is_some() && self.wanting() == 0
    }

    /// "3 short, 1 damaged", "complete", "not counted".
    pub fn words(&self) -> String {
        let Some(_) = self.counted else { return chalkcourse_words::takeoff::NOT_COUNTED.now().to_owned() };
        let counts = [
            (self.short(), chalkcourse_words::takeoff::SHORT.now()),
            (self.over(), chalkcourse_words::takeoff::OVER.now()),
            (self.damaged, chalkcourse_words::takeoff::DAMAGED.now()),
        ];
        let words: Vec<String> =
            counts.iter().filter(|(n, _)| *n > 0).map(|(n, word)| format!("{n} {word}")).collect();
        if words.is_empty() {
            chalkcourse_words::takeoff::COMPLETE.now().to_owned()
        } else {
            words.join(", ")
        }
    }
}

/// Whether a stage of work can start with what arrived.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct StageReady {
    /// The stage.
    pub stage: Stage,
    /// Whether all that it needs was counted and is good.
    pub can_start: bool,
    /// What it waits for, in words, a part each.
    pub waits_for: Vec<String>,
}

/// The pallet list: every package that comes on a truck, with what was counted. Work is no package.
pub fn pallet(takeoff: &Takeoff, delivery: &Delivery) -> Vec<PalletRow> {
    let row = |number: &str, name: &str, stage: Stage, package: &str| {
        let count = delivery.counts.get(number);
        PalletRow {
            number: number.to_owned(),
            name: name.to_owned(),
            stage,
            package: package.to_owned(),
            ordered: 0,
            needed: Vec::new(),
            counted: count.map(|count| count.packages),
            damaged: count.map_or(0, |count| count.damaged),
            note: count.map_or_else(String::new, |count| count.note.clone()),
        }
    };
    let ordered = takeoff.lines.iter().filter(|line| line.group.comes_on_a_truck() && line.packages > 0);
    let mut rows: Vec<PalletRow> = ordered
        .map(|line| {
            let number = line.alternate.as_ref().map_or(line.number.as_str(), |(number, _)| number.as_str());
            let mut row = row(&line.number, &line.name, line.stage, &line.package);
            row.ordered = line.packages;
            let needed = line.needed_by_stage().into_iter();
            row.needed = needed.map(|(stage, packages)| NeededBy { stage, packages }).collect();
            if number != line.number {
                row.name = chalkcourse_words::takeoff::as_2(&row.name, &number);
            }
            row
        })
        .collect();
    // What came and was not ordered, or is no longer: it goes back.
    let known = |number: &str| rows.iter().any(|row| row.number == number);
    let strays: Vec<PalletRow> = delivery
        .counts
        .keys()
        .filter(|number| !known(number))
        .map(|number| {
            let line = takeoff.lines.iter().chain(&takeoff.off).find(|line| line.number == **number);
            let name =
                line.map_or(chalkcourse_words::takeoff::NOT_ON_THE_ORDER.now(), |line| line.name.as_str());
            let (stage, package) = line.map_or((Stage::Wires, "package"), |line| (line.stage, &line.package));
            row(number, name, stage, package)
        })
        .collect();
    rows.extend(strays);
    rows
}

/// For each stage that needs something from the truck whether it can start: what came must cover what it *needs*, not what was
/// ordered beyond it, and the stages that it stands on must be able to start too.
pub fn stages_ready(rows: &[PalletRow]) -> Vec<StageReady> {
    let mut ready: Vec<StageReady> = Vec::new();
    for stage in Stage::ALL {
        let needs = |row: &PalletRow| row.needed.iter().find(|at| at.stage == stage).map(|at| at.packages);
        let mut of_stage = rows.iter().filter_map(|row| Some((row, needs(row)?))).peekable();
        if of_stage.peek().is_none() {
            continue;
        }
        let mut waits_for: Vec<String> = of_stage
            .filter(|(row, needed)| row.counted.is_none() || row.good() < *needed)
            .map(|(row, needed)| match row.counted {
                None => chalkcourse_words::takeoff::not_counted_2(&row.number, &row.name),
                Some(_) => {
                    let (good, packages) = (row.good(), plural(&row.package, needed as f64));
                    chalkcourse_words::takeoff::of(&row.number, &row.name, &good, &needed, &packages)
                }
            })
            .collect();
        let can_not = |on: &Stage| ready.iter().any(|before| before.stage == *on && !before.can_start);
        for on in stands_on(stage, rows).into_iter().filter(can_not) {
            waits_for.push(chalkcourse_words::takeoff::cant_start(&on.name()));
        }
        ready.push(StageReady { stage, can_start: waits_for.is_empty(), waits_for });
    }
    ready
}

/// The stages that a stage stands on, of those that need something: one that needs nothing is passed over to what it stands on.
fn stands_on(stage: Stage, rows: &[PalletRow]) -> BTreeSet<Stage> {
    let needs = |stage: Stage| rows.iter().any(|row| row.needed.iter().any(|at| at.stage == stage));
    let mut on = BTreeSet::new();
    let mut open = stage.stands_on().to_vec();
    while let Some(below) = open.pop() {
        if needs(below) {
            on.insert(below);
        } else {
            open.extend(below.stands_on());
        }
    }
    on
}

/// What to tell the supplier: what is short, damaged or over, with notes. It says so when nothing is.
pub fn claim_text(job: &str, delivery: &Delivery, rows: &[PalletRow]) -> String {
    let mut out = String::new();
    // Writing to a string can't fail.
    let _ = writeln!(out, "{}", chalkcourse_words::takeoff::delivery_for(&plain(job)));
    for (what, text) in [
        (chalkcourse_words::common::DATE.now(), &delivery.date),
        (chalkcourse_words::common::COUNTED_BY.now(), &delivery.by),
        (chalkcourse_words::common::NOTE.now(), &delivery.note),
    ] {
        if !text.trim().is_empty() {
            let _ = writeln!(out, "{what}: {}", plain(text));
        }
    }
    for (heading, wanted) in [
        (chalkcourse_words::common::SHORT.now(), 0),
        (chalkcourse_words::common::DAMAGED.now(), 1),
        (chalkcourse_words::takeoff::OVER_OR_NOT_ORDERED.now(), 2),
    ] {
        let count = |row: &PalletRow| [row.short(), row.damaged, row.over()][wanted];
        let wrong: Vec<&PalletRow> = rows.iter().filter(|row| count(row) > 0).collect();
        if wrong.is_empty() {
            continue;
        }
        let _ = writeln!(out, "\n{heading}");
        for row in wrong {
            let packages = plural(&row.package, count(row) as f64);
            let note = if row.note.is_empty() { String::new() } else { format!("; {}", row.note) };
            let _ = writeln!(
                out,
                "{}",
                chalkcourse_words::takeoff::of_ordered_came(
                    &plain(&row.number),
                    &plain(&row.name),
                    &count(row),
                    &packages,
                    &row.ordered,
                    &row.counted.unwrap_or(0),
                    &plain(&note)
                )
            );
        }
    }
    let open = rows.iter().filter(|row| row.counted.is_none()).count();
    if open > 0 {
        let _ = writeln!(out, "{}", chalkcourse_words::takeoff::not_counted_yet_of_lines(&open, &rows.len()));
    } else if rows.iter().all(|row| row.is_complete() && row.over() == 0 && row.damaged == 0) {
        let _ = writeln!(out, "{}", chalkcourse_words::takeoff::all_lines_are_complete(&rows.len()));
    }
    let _ = writeln!(out, "{}", chalkcourse_words::takeoff::WHAT_CAN_START);
    for stage in stages_ready(rows) {
        let _ = match stage.can_start {
            true => writeln!(out, "{}", chalkcourse_words::takeoff::can_start(&stage.stage.name())),
            false => {
                let why: Vec<String> = stage.waits_for.iter().map(|why| plain(why)).collect();
                writeln!(
                    out,
                    "{}",
                    chalkcourse_words::takeoff::cant_start_2(&stage.stage.name(), &why.join("; "))
                )
            }
        };
    }
    out
}

/// The pallet list for a spreadsheet, with cells as safe as in [`to_csv`](crate::to_csv). Sentences below it stand in the column of
/// names, with neither number nor count, so that what reads counts passes over them.
///
/// # Errors
/// [`OutputError::Csv`] when the writer gives up, which memory alone could cause.
pub fn pallet_csv(rows: &[PalletRow], below: &[String]) -> Result<String, OutputError> {
    let header =
        ["Number", "Name", "Stage", "Package", "Ordered", "Counted", "Damaged", "Short", "Over", "Note"];
    let cells = rows.iter().map(|row| {
        [
            row.number.clone(),
            row.name.clone(),
            row.stage.name().to_owned(),
            row.package.clone(),
            row.ordered.to_string(),
            row.counted.map_or_else(String::new, |counted| counted.to_string()),
            row.damaged.to_string(),
            row.short().to_string(),
            row.over().to_string(),
            row.note.clone(),
        ]
    });
    let below = below.iter().map(|sentence| {
        let mut cells = header.map(|_| String::new());
        cells[1].clone_from(sentence);
        cells
    });
    write_rows(std::iter::once(header.map(str::to_owned)).chain(cells).chain(below))
}
