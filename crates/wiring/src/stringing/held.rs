//! What holds an automatic stringing back: one limit changed at a time, the circuits made anew, and told where that takes fewer.

use super::{Left, Stringing, Strung, groups, whole_problem};
use crate::leads::{fewest_leads, reach};
use crate::paths::{Effort, Problem, divide};
use crate::place::{Device, devices, face_of_box, way};
use crate::window::{Kind, LimitedBy, Window, window};
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{BoxId, KitWiring, Leads, ModuleDevice, Resolved};
use chalkcourse_layout::Layout;
use schemars::JsonSchema;
use serde::Serialize;
use std::sync::Arc;

/// One change to what a group of modules is strung by, and what it would do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeldBack {
    /// Modules of the group.
    pub modules: usize,
    /// What changes, and nothing else.
    pub change: Change,
    /// What that gives.
    pub gives: Gives,
}

/// A change to one limit, the least that does it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Change {
    /// A circuit may hold more modules.
    Most {
        /// So many.
        modules: u32,
        /// Instead of so many.
        instead: u32,
        /// What limits them now.
        by: LimitedBy,
    },
    /// A circuit may hold fewer modules.
    Least {
        /// So many.
        modules: u32,
        /// Instead of so many.
        instead: u32,
        /// What asks for them now.
        by: LimitedBy,
    },
    /// Both leads of each module are longer.
    Leads {
        /// Each lead so long, in whole centimetres, metres.
        each: f64,
        /// How far apart two modules are that they then reach over, metres.
        apart: f64,
        /// How far leads reach now, metres.
        reach: f64,
    },
    /// There are more or fewer modules.
    Modules {
        /// So many.
        modules: usize,
    },
}

/// What a change gives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Gives {
    /// Fewer circuits.
    Circuits {
        /// So many.
        circuits: usize,
        /// Instead of so many.
        instead: usize,
    },
    /// Fewer extension leads in as many circuits.
    Leads {
        /// So many.
        leads: u64,
        /// Instead of so many, which are proved to be the fewest.
        instead: u64,
    },
    /// Circuits for modules that none can take now.
    Fits {
        /// So many.
        circuits: usize,
    },
}

/// What holds a stringing of a job back, group by group: only what is proved to be the fewest is said to need a change. It makes circuits
/// anew some ten times a group, and so is for when a person asks.
pub fn held_back(job: &Resolved, layout: &Layout, made: &Stringing, to: Option<BoxId>) -> Vec<HeldBack> {
    let (Ok(limits), Some(wiring)) = (window(job), &job.kit.wiring) else { return Vec::new() };
    let to = to.or(job.boxes.first().map(|junction| junction.id));
    let home =
        to.and_then(|id| job.junction_box(id)).and_then(|junction| face_of_box(&layout.roof, junction));
    let devices = devices(job, layout);
    let mut strung = made.groups.iter();
    let mut found = Vec::new();
    for group in groups(&layout.roof, &devices, wiring, limits.kind) {
        let asking = Asking { job, layout, wiring, home, limits: &limits, group: &group };
        let is_left = |left: &&Left| group.first().is_some_and(|device| left.modules.contains(&device.at));
        if made.left.iter().any(|left| is_left(&left)) {
            found.extend(asking.that_fit());
        } else if let Some(strung) = strung.next() {
            found.extend(asking.fewer_circuits(strung));
            found.extend(asking.fewer_leads(strung));
        }
    }
    found
}

/// A group, and what its circuits are made by.
struct Asking<'a> {
    job: &'a Resolved,
    layout: &'a Layout,
    wiring: &'a KitWiring,
    home: Option<(usize, DVec2)>,
    limits: &'a Window,
    group: &'a [Device],
}

impl Asking<'_> {
    fn problem(&self, wiring: &KitWiring, least: u32, most: u32) -> Problem {
        let both_ends = self.limits.kind != Kind::AcDevices;
        let (least, most) = (least as usize, most as usize);
        whole_problem(&self.layout.roof, self.group, wiring, self.home, both_ends, least, most)
    }

    /// The circuits and extension leads that a window takes, as found.
    fn strung(&self, wiring: &KitWiring, least: u32, most: u32) -> Option<(usize, u64)> {
        let answer = divide(&self.problem(wiring, least, most), Effort::FIRST)?;
        Some((answer.paths.len(), answer.leads))
    }

    fn told(&self, change: Change, gives: Gives) -> HeldBack {
        HeldBack { modules: self.group.len(), change, gives }
    }

    /// Circuits that hold more modules each, by the one limit that stands in the way.
    fn fewer_circuits(&self, strung: &Strung) -> Option<HeldBack> {
        let fewer = strung.circuits.checked_sub(1).filter(|fewer| *fewer > 0 && strung.fewest_circuits)?;
        let (least, most) = (&self.limits.least, &self.limits.most);
        let needed = u32::try_from(self.group.len().div_ceil(fewer)).ok()?;
        let beyond = without(self.job, most.by)?.most.modules;
        if needed <= most.modules || needed > beyond {
            return None;
        }
        let (circuits, _) = self.strung(self.wiring, least.modules, needed)?;
        (circuits < strung.circuits).then(|| {
            let change = Change::Most { modules: needed, instead: most.modules, by: most.by };
            self.told(change, Gives::Circuits { circuits, instead: strung.circuits })
        })
    }

    /// A smaller least, a larger most, or another number of modules, for modules that fit no number of circuits.
    fn that_fit(&self) -> Vec<HeldBack> {
        let modules = self.group.len();
        let (least, most) = (&self.limits.least, &self.limits.most);
        let (fewest, largest) = (least.modules as usize, most.modules as usize);
        if fewest > largest || modules == 0 {
            return Vec::new();
        }
        let mut found = Vec::new();
        let smaller = modules / modules.div_ceil(largest);
        if smaller < fewest
            && without(self.job, least.by).is_some_and(|w| w.least.modules as usize <= smaller)
        {
            let changed = smaller as u32;
            if let Some((circuits, _)) = self.strung(self.wiring, changed, most.modules) {
                let change = Change::Least { modules: changed, instead: least.modules, by: least.by };
                found.push(self.told(change, Gives::Fits { circuits }));
            }
        }
        if let Some(circuits) = modules.checked_div(fewest).filter(|circuits| *circuits > 0) {
            let larger = modules.div_ceil(circuits);
            let beyond = without(self.job, most.by).map_or(0, |window| window.most.modules as usize);
            if larger > largest && larger <= beyond {
                let changed = larger as u32;
                if let Some((circuits, _)) = self.strung(self.wiring, least.modules, changed) {
                    let change = Change::Most { modules: changed, instead: most.modules, by: most.by };
                    found.push(self.told(change, Gives::Fits { circuits }));
                }
            }
        }
        // The nearest numbers that some number of circuits holds, by arithmetic: where modules stand is for a person to say.
        let fits = |number: usize| number > 0 && number.div_ceil(largest) * fewest <= number;
        let fewer = (1..modules).rev().find(|number| fits(*number));
        let more = (modules + 1..=modules + fewest).find(|number| fits(*number));
        found.extend(more.into_iter().chain(fewer).map(|number| {
            let gives = Gives::Fits { circuits: number.div_ceil(largest) };
            self.told(Change::Modules { modules: number }, gives)
        }));
        found
    }

    /// Longer leads: the shortest that take fewer extension leads, and the shortest that take none.
    fn fewer_leads(&self, strung: &Strung) -> Vec<HeldBack> {
        if strung.leads == 0 || strung.least_leads < strung.leads {
            return Vec::new();
        }
        let least_longer = |enough: u64| {
            let change = self.shortest_leads(strung.circuits, enough)?;
            Some(self.told(change.0, Gives::Leads { leads: change.1, instead: strung.leads }))
        };
        let mut found: Vec<HeldBack> = least_longer(strung.leads - 1).into_iter().collect();
        found.extend(least_longer(0).filter(|none| !found.contains(none)));
        found
    }

    /// The shortest leads, in whole centimetres, with which as many circuits take no more extension leads than enough; and how many.
    fn shortest_leads(&self, circuits: usize, enough: u64) -> Option<(Change, u64)> {
        let now = reach(&self.wiring.leads);
        let mut apart = self.apart();
        apart.retain(|apart| *apart > now);
        let tried = |apart: f64| {
            let longer = reaching(&self.wiring.leads, apart);
            let each = longer.positive.metres().max(longer.negative.metres());
            let wiring = KitWiring { leads: longer, ..self.wiring.clone() };
            let (found, leads) = self.strung(&wiring, self.limits.least.modules, self.limits.most.modules)?;
            (found == circuits && leads <= enough).then_some((each, leads))
        };
        // With longer leads no answer takes more: the first place that is enough, by halves.
        let mut at = (0, apart.len());
        let mut best = None;
        while at.0 < at.1 {
            let middle = at.0.midpoint(at.1);
            match tried(apart[middle]) {
                Some(answer) => (at.1, best) = (middle, Some((apart[middle], answer))),
                None => at.0 = middle + 1,
            }
        }
        let (apart, (each, leads)) = best?;
        Some((Change::Leads { each, apart, reach: now }, leads))
    }

    /// How far apart two modules of the group are, each distance once, in metres.
    fn apart(&self) -> Vec<f64> {
        let roof = &self.layout.roof;
        let pairs = self.group.iter().enumerate().flat_map(|(at, a)| {
            self.group.iter().skip(at + 1).filter_map(|b| way(roof, (a.face, a.point), (b.face, b.point)))
        });
        let linked = pairs.filter(|apart| fewest_leads(*apart, &self.wiring.leads).is_some());
        let mut apart: Vec<f64> = linked.collect();
        // Of those that are one, the farthest has to be reached.
        apart.sort_by(|a, b| b.total_cmp(a));
        apart.dedup_by(|a, b| *b - *a < SAME);
        apart.reverse();
        apart
    }
}

/// Distances within this, in metres, are one.
const SAME: f64 = 1e-4;

/// Both leads longer by as much, up to the next centimetre, so that they reach so far.
fn reaching(leads: &Leads, apart: f64) -> Leads {
    let short = (apart - reach(leads)).max(0.0);
    let longer =
        |lead: Length| Length::from_metres(((lead.metres() + short / 2.0) * 100.0 - 1e-6).ceil() / 100.0);
    Leads { positive: longer(leads.positive), negative: longer(leads.negative), ..leads.clone() }
}

/// The window of a job without what one limit asks; `None` for what no kit can change.
fn without(job: &Resolved, by: LimitedBy) -> Option<Window> {
    const ANY: f64 = 1e9;
    let mut job = job.clone();
    let kit = Arc::make_mut(&mut job.kit);
    let wiring = kit.wiring.as_mut()?;
    match by {
        LimitedBy::InverterVolts => {
            wiring.inverters.iter_mut().for_each(|inverter| inverter.most_volts = ANY);
        }
        LimitedBy::LeastVolts => wiring.inverters.iter_mut().for_each(|inverter| inverter.least_volts = 0.0),
        LimitedBy::ModuleVolts => wiring.system_volts = ANY,
        LimitedBy::DwellingVolts | LimitedBy::One => return None,
        LimitedBy::DeviceCount | LimitedBy::DeviceWatts | LimitedBy::StringCurrent => {
            let ModuleDevice::Dc(device) = &mut wiring.device else { return None };
            match by {
                LimitedBy::DeviceCount => (device.least_in_string, device.most_in_string) = (1, u32::MAX),
                LimitedBy::DeviceWatts => device.most_string_watts = ANY,
                // The input and the devices carry it together.
                _ => {
                    device.output_amps = ANY;
                    wiring.inverters.iter_mut().for_each(|inverter| inverter.most_amps = ANY);
                }
            }
        }
        LimitedBy::Breaker => {
            let ModuleDevice::Ac(device) = &mut wiring.device else { return None };
            device.branch_breaker_amps = ANY;
        }
    }
    window(&job).ok()
}

#[cfg(test)]
mod tests;
