//! What holds an automatic stringing back, in sentences and for other programs.

use chalkcourse_geometry::Length;
use chalkcourse_job::{ModuleDevice, Resolved};
use chalkcourse_telling::limited_by;
use chalkcourse_wiring::{Change, Gives, HeldBack};
use chalkcourse_words as words;
use schemars::JsonSchema;
use serde::Serialize;

/// One change to what a group of modules was strung by, and what it would do. Lengths are metres.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct HeldReport {
    /// Modules of the group.
    pub modules: usize,
    /// What would change, and nothing else.
    pub change: Change,
    /// What that would give.
    pub gives: Gives,
    /// In words.
    pub words: String,
}

impl HeldReport {
    pub(crate) fn of(job: &Resolved, held: &HeldBack) -> Self {
        Self { modules: held.modules, change: held.change, gives: held.gives, words: held_words(job, held) }
    }
}

/// What one change would do, in a sentence.
pub fn held_words(job: &Resolved, held: &HeldBack) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let count = words::common::modules(held.modules);
    match (held.change, held.gives) {
        (Change::Most { modules, instead, by }, Gives::Circuits { circuits, instead: now }) => {
            words::wires::held_circuits(&count, modules, instead, &limited_by(by), circuits, now)
        }
        (Change::Most { modules, instead, by }, _) => {
            words::wires::held_most(&count, modules, instead, &limited_by(by))
        }
        (Change::Least { modules, instead, by }, _) => {
            words::wires::held_least(&count, modules, instead, &limited_by(by))
        }
        (Change::Modules { modules }, _) => words::wires::held_modules(&count, &modules),
        (Change::Leads { each, apart, reach }, gives) => {
            let counted = |leads: u64| {
                if leads == 0 {
                    words::wires::NO_LEAD.now().to_owned()
                } else {
                    words::wires::extension_leads(leads)
                }
            };
            let (takes, now) = match gives {
                Gives::Leads { leads, instead } => (counted(leads), counted(instead)),
                Gives::Circuits { .. } | Gives::Fits { .. } => Default::default(),
            };
            let device = job.kit.wiring.as_ref().map(|wiring| &wiring.device);
            if matches!(device, Some(ModuleDevice::Ac(_))) {
                // The kit has half of a trunk's way from plug to plug as each of two leads.
                words::wires::held_trunk(&long(reach), &long(2.0 * each), &long(apart), &takes, &now)
            } else {
                words::wires::held_leads(&long(reach), &long(each), &long(apart), &takes, &now)
            }
        }
    }
}
