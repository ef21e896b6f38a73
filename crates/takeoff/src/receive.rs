//! Deliveries: the pallet list, what can start with what arrived, and the claim to the supplier.

use crate::Takeoff;
use crate::line::PackageName;
use chalkcourse_job::{Delivery, Stage};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeSet;

/// One line of the pallet list.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PalletRow {
    /// The part.
    pub number: String,
    /// What it is.
    #[schemars(with = "String")]
    pub name: Said,
    /// The first stage of work that needs some of it.
    pub stage: Stage,
    /// What a package is called.
    #[schemars(with = "String")]
    pub package: PackageName,
    /// Packages ordered.
    pub ordered: u64,
    /// Stages that need some of it, in order, each with the packages that must be on site by then, excluding waste and stock.
    pub needed: Vec<NeededBy>,
    /// Packages delivered; `None` if not counted yet.
    pub counted: Option<u64>,
    /// Of those, packages that are unusable.
    pub damaged: u64,
    /// Note to the supplier.
    pub note: String,
}

/// Packages that must be on site before a stage can be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct NeededBy {
    /// The stage.
    pub stage: Stage,
    /// Cumulative: what this stage and all before it need.
    pub packages: u64,
}

impl PalletRow {
    /// Usable packages.
    pub fn good(&self) -> u64 {
        self.counted.unwrap_or(0).saturating_sub(self.damaged)
    }

    /// Packages missing from the delivery.
    pub fn short(&self) -> u64 {
        self.counted.map_or(0, |counted| self.ordered.saturating_sub(counted))
    }

    /// Packages delivered beyond the order.
    pub fn over(&self) -> u64 {
        self.counted.map_or(0, |counted| counted.saturating_sub(self.ordered))
    }

    /// Packages still to come: short or damaged, and not made up for by surplus.
    pub fn wanting(&self) -> u64 {
        self.ordered.saturating_sub(self.good())
    }

    /// Whether it was counted and is complete.
    pub fn is_complete(&self) -> bool {
        self.counted.is_some() && self.wanting() == 0
    }
}

/// Whether a stage of work can start with what arrived.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StageReady {
    /// The stage.
    pub stage: Stage,
    /// Whether everything it needs was counted and is usable.
    pub can_start: bool,
    /// What it waits for, one entry per part.
    #[schemars(with = "Vec<String>")]
    pub waits_for: Vec<Said>,
}

/// The pallet list: every package delivered by truck, with its count. Labour is left out.
pub fn pallet(takeoff: &Takeoff, delivery: &Delivery) -> Vec<PalletRow> {
    let row = |number: &str, name: Said, stage: Stage, package: PackageName| {
        let count = delivery.counts.get(number);
        PalletRow {
            number: number.to_owned(),
            name,
            stage,
            package,
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
            let mut row = row(&line.number, line.name.clone(), line.stage, line.package.clone());
            row.ordered = line.packages;
            let needed = line.needed_by_stage().into_iter();
            row.needed = needed.map(|(stage, packages)| NeededBy { stage, packages }).collect();
            if number != line.number {
                row.name = words::takeoff::as_2(&row.name, &number);
            }
            row
        })
        .collect();
    // Delivered but not ordered, or no longer ordered: it goes back.
    let known = |number: &str| rows.iter().any(|row| row.number == number);
    let strays: Vec<PalletRow> = delivery
        .counts
        .keys()
        .filter(|number| !known(number))
        .map(|number| {
            let line = takeoff.lines.iter().chain(&takeoff.off).find(|line| line.number == **number);
            let name = line.map_or(words::takeoff::NOT_ON_THE_ORDER.into(), |line| line.name.clone());
            let (stage, package) = line.map_or((Stage::Wires, PackageName::of_kit("package")), |line| {
                (line.stage, line.package.clone())
            });
            row(number, name, stage, package)
        })
        .collect();
    rows.extend(strays);
    rows
}

/// For each stage that needs something from the truck, whether it can start: the delivery must cover what the stage *needs*, not
/// the surplus ordered, and the stages it depends on must be able to start too.
pub fn stages_ready(rows: &[PalletRow]) -> Vec<StageReady> {
    let mut ready: Vec<StageReady> = Vec::new();
    for stage in Stage::ALL {
        let needs = |row: &PalletRow| row.needed.iter().find(|at| at.stage == stage).map(|at| at.packages);
        let mut of_stage = rows.iter().filter_map(|row| Some((row, needs(row)?))).peekable();
        if of_stage.peek().is_none() {
            continue;
        }
        let mut waits_for: Vec<Said> = of_stage
            .filter(|(row, needed)| row.counted.is_none() || row.good() < *needed)
            .map(|(row, needed)| match row.counted {
                None => words::takeoff::not_counted_2(&row.number, &row.name),
                Some(_) => {
                    let needed = row.package.counted(needed);
                    words::takeoff::of(&row.number, &row.name, &row.good(), &needed)
                }
            })
            .collect();
        let can_not = |on: &Stage| ready.iter().any(|before| before.stage == *on && !before.can_start);
        for on in depends_on(stage, rows).into_iter().filter(can_not) {
            waits_for.push(words::takeoff::cant_start(&on.name()));
        }
        ready.push(StageReady { stage, can_start: waits_for.is_empty(), waits_for });
    }
    ready
}

/// The stages that a stage depends on, among those that need something; one that needs nothing is replaced by its own
/// dependencies.
fn depends_on(stage: Stage, rows: &[PalletRow]) -> BTreeSet<Stage> {
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
