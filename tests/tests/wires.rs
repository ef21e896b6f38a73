//! Circuits from end to end: jobs strung automatically, edited by scripts, saved and read back, checked and ordered.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

mod random_jobs;

use chalkcourse_job::{
    Edit, ModuleAt, NoFiles, Resolved, apply, builtin_kits, job_from_text, job_to_text, script_from_text,
};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{apply_script, evaluate, held_words, wires_report, wires_text};
use chalkcourse_tests::samples;
use chalkcourse_wiring::paths::Effort;
use chalkcourse_wiring::{Change, Gives, Stringing, held_back, string_up};
use chalkcourse_words::{Language, speaking};
use proptest::prelude::*;
use random_jobs::jobs;
use std::path::Path;
use std::sync::Arc;

const WIRE_RULES: [&str; 25] = [
    "string-voltage",
    "string-start",
    "circuit-size",
    "inverter-input",
    "parallel-strings",
    "string-faces",
    "leads-reach",
    "device-input",
    "modules-wired",
    "plugs-mate",
    "arc-fault",
    "ground-fault",
    "overcurrent",
    "conductor-size",
    "voltage-drop",
    "grounding-conductor",
    "bonding",
    "box-fill",
    "raceway-fill",
    "dc-ac-apart",
    "raceway-inside",
    "rapid-shutdown",
    "box-place",
    "point-of-connection",
    "readings",
];

/// The job with temperatures and inverters enough for any house.
fn ready(mut job: Resolved, kit: usize) -> Resolved {
    job.kit = Arc::clone(&builtin_kits()[kit]);
    let choices = Arc::make_mut(&mut job.wiring);
    (choices.lowest_celsius, choices.hottest_cell_celsius) = (Some(-22.0), Some(77.0));
    choices.inverters = vec!["FH-182".into(); 12];
    // No house has a panel for twelve of them.
    choices.service = None;
    job
}

fn strung(job: &Resolved) -> (Resolved, Stringing) {
    let made = string_up(job, &Layout::of(job), None, Effort::FIRST).unwrap();
    (apply(job, &made.edit(job)).unwrap(), made)
}

/// Each module on the roof is in exactly one circuit, or told as left.
fn every_module_once(job: &Resolved, made: &Stringing) {
    let layout = Layout::of(job);
    let of_block = |block: &chalkcourse_layout::PlacedBlock| {
        let id = block.id;
        block.modules.iter().map(|module| ModuleAt { block: id, cell: module.cell }).collect::<Vec<_>>()
    };
    let sound = |block: &&std::sync::Arc<chalkcourse_layout::PlacedBlock>| {
        layout.roof.faces.get(block.face).is_some_and(|face| face.sound)
    };
    let mut on_roof: Vec<ModuleAt> =
        layout.blocks.iter().filter(sound).flat_map(|block| of_block(block)).collect();
    let left = made.left.iter().flat_map(|left| left.modules.clone());
    let mut told: Vec<ModuleAt> =
        job.circuits.iter().flat_map(|circuit| circuit.modules.clone()).chain(left).collect();
    on_roof.sort();
    told.sort();
    assert_eq!(told, on_roof);
}

/// What was strung automatically breaks no rule of the wires but that inputs run out or modules are left.
#[test]
fn samples_strung_automatically_pass_the_rules() {
    for kit in 0..2 {
        for (name, job) in samples::all() {
            // Mill Row, 5,000 modules, is no house.
            if job.faces.len() > 40 {
                continue;
            }
            let (after, made) = strung(&ready(job, kit));
            every_module_once(&after, &made);
            let plan = evaluate(&after);
            let mut allowed = vec!["modules-wired"];
            allowed.extend((kit == 1).then_some("inverter-input"));
            let found: Vec<_> = plan
                .findings
                .iter()
                .filter(|finding| WIRE_RULES.contains(&finding.rule) && !allowed.contains(&finding.rule))
                .collect();
            assert!(found.is_empty(), "{name}, kit {kit}: {found:#?}");
            assert_eq!(
                plan.wires.loose.len(),
                made.left.iter().map(|left| left.modules.len()).sum::<usize>()
            );
            // Ways told by the claim are those of the circuits as wired: no box stands, so that none is led home.
            let way: f64 = plan
                .wires
                .circuits
                .iter()
                .flat_map(|circuit| &circuit.links)
                .filter_map(|link| link.way)
                .sum();
            let leads: usize = plan
                .wires
                .circuits
                .iter()
                .flat_map(|circuit| &circuit.links)
                .filter_map(|link| link.leads.as_ref())
                .map(Vec::len)
                .sum();
            assert!(
                (way - made.groups.iter().map(|group| group.way).sum::<f64>()).abs() < 1e-2,
                "{name}: {way}"
            );
            assert_eq!(leads as u64, made.groups.iter().map(|group| group.leads).sum::<u64>(), "{name}");
            // A file brings it all back.
            let back = job_from_text(&job_to_text(&after).unwrap(), Path::new("a.chalk.json")).unwrap();
            assert_eq!(back, after);
        }
    }
}

/// What holds a stringing back is in the text and in the JSON, in both languages; where it was not asked, nothing is.
#[test]
fn what_holds_it_back_is_told() {
    let mut circuits = 0;
    let schemas = chalkcourse_plan::schemas();
    let (_, schema) = schemas.iter().find(|(name, _)| *name == "wires").unwrap();
    let keeps_schema = |report: &chalkcourse_plan::WiresReport| {
        let report = serde_json::to_value(report).unwrap();
        jsonschema::validator_for(schema)
            .unwrap()
            .validate(&report)
            .map_err(|wrong| wrong.to_string())
            .unwrap();
    };
    for (name, mut job) in samples::all().into_iter().filter(|(_, job)| job.faces.len() <= 40) {
        if name.contains("alder") {
            // More than one branch of 13 holds.
            job.blocks[0] = job.blocks[0].with_size(2, 8);
        }
        let job = ready(job, 1);
        let (after, mut made) = strung(&job);
        let plan = evaluate(&after);
        assert!(wires_report(&after, &plan, Some(&made)).held_back.is_empty(), "{name}");
        keeps_schema(&wires_report(&after, &plan, None));
        made.held = held_back(&job, &Layout::of(&job), &made, None);
        for held in &made.held {
            if let (
                Change::Most { modules, instead: 13, .. },
                Gives::Circuits { circuits: so_many, instead },
            ) = (held.change, held.gives)
            {
                // A branch of the kit holds 13: by arithmetic.
                assert_eq!(instead, held.modules.div_ceil(13), "{name}");
                assert!(so_many < instead && held.modules.div_ceil(so_many) == modules as usize, "{name}");
                circuits += 1;
            }
        }
        for language in [Language::ENGLISH, Language::SPANISH] {
            let (text, report) = speaking(language, || {
                (wires_text(&after, &plan, Some(&made)), wires_report(&after, &plan, Some(&made)))
            });
            keeps_schema(&report);
            assert_eq!(report.held_back.len(), made.held.len());
            for (told, held) in report.held_back.iter().zip(&made.held) {
                assert_eq!(told.words, speaking(language, || held_words(&after, held)));
                assert!(text.contains(&told.words), "{name}: {text}");
            }
        }
    }
    assert!(circuits > 0, "no sample has a branch of 14 modules and more");
}

/// The order counts what is drawn: leads, cable by colour, plugs, box, bare copper, inverter; allowances give way.
#[test]
fn the_order_is_the_wires_as_drawn() {
    let (_, mut job) = samples::all().swap_remove(1);
    let before = evaluate(&job).takeoff;
    let has = |takeoff: &chalkcourse_takeoff::Takeoff, number: &str| {
        takeoff.lines.iter().find(|line| line.number == number).map(|line| line.need)
    };
    for number in ["FH-171", "FH-172", "FH-173", "FH-174", "FH-175", "FH-178", "FH-181", "FH-182"] {
        assert_eq!(has(&before, number), None, "{number} before a circuit is drawn");
    }
    assert!(has(&before, "FH-163").is_some() && has(&before, "FH-164").is_some());
    // A box in the middle of the first block's face.
    let layout = Layout::of(&job);
    let (face, bounds) = (layout.blocks[0].face, layout.blocks[0].bounds.unwrap());
    let at = layout.roof.faces[face].plane.to_plan(bounds.max);
    let junction = chalkcourse_job::JunctionBox {
        id: chalkcourse_job::BoxId(job.next_id),
        name: "Ridge box".into(),
        at,
        stands: chalkcourse_job::BoxStands::OnRoof,
        legs: Vec::new(),
        others: Vec::new(),
    };
    job = apply(&job, &Edit::PutBox(junction)).unwrap();
    let (after, _) = strung(&ready(job, 0));
    let plan = evaluate(&after);
    let order = &plan.takeoff;
    assert_eq!((has(order, "FH-163"), has(order, "FH-164")), (None, None), "allowances");
    assert_eq!((has(order, "FH-165"), has(order, "FH-182")), (Some(1.0), Some(12.0)));
    let circuits = &plan.wires.circuits;
    assert!(!circuits.is_empty());
    let tails = circuits.len() as f64 * 2.0 * 0.3048;
    let sum = |way: fn(&chalkcourse_wiring::HomeWay) -> Option<f64>| -> f64 {
        circuits.iter().filter_map(|circuit| circuit.home.as_ref().and_then(way)).sum()
    };
    let near = |number: &str, expected: f64| {
        let need = has(order, number).unwrap_or(0.0);
        assert!((need - expected).abs() < 1e-9, "{number}: {need}, not {expected}");
    };
    near("FH-174", sum(|home| home.last) + tails);
    near("FH-175", sum(|home| home.first) + tails);
    near("FH-178", 2.0 * circuits.len() as f64);
    let leads = &after.kit.wiring.as_ref().unwrap().leads.extensions;
    for (which, lead) in leads.iter().enumerate() {
        let links = circuits.iter().flat_map(|circuit| &circuit.links).filter_map(|link| link.leads.as_ref());
        near(&lead.number, links.flatten().filter(|one| **one == which).count() as f64);
    }
    // Places add up to what is needed, so that any of it can be lit on the roof.
    for line in order.lines.iter().filter(|line| line.number.starts_with("FH-17")) {
        let placed: f64 = line.terms.iter().flat_map(|term| term.shares()).sum();
        assert!((placed - line.need).abs() < 1e-9, "{}", line.number);
    }
}

/// Edits of circuits as a script has them; a module is in one circuit at most, and goes with its block.
#[test]
fn circuits_by_a_script() {
    let (_, job) = samples::all().swap_remove(0);
    let block = job.blocks[0].id.0;
    let module = |row: u32, column: u32| {
        format!(r#"{{"block": {block}, "cell": {{"row": {row}, "column": {column}}}}}"#)
    };
    let (a, b, c) = (module(0, 0), module(0, 1), module(0, 2));
    let script = format!(
        r#"[{{"put-box": {{"id": 70, "name": "Ridge box", "at": [4.0, 4.0]}}}},
            {{"change-wiring": {{"edition": "2020", "lowest_celsius": -22, "inverters": ["FH-181"]}}}},
            {{"put-circuit": {{"id": 71, "name": "1", "modules": [{a}, {b}], "to": 70}}}},
            {{"put-circuit": {{"id": 72, "name": "2", "modules": [{b}, {c}]}}}}]"#
    );
    let read = script_from_text(&script, Path::new("edits.json")).unwrap();
    let done = apply_script(&job, &read, &NoFiles, false);
    assert!(done.refused.is_empty(), "{:?}", done.refused);
    let sizes: Vec<usize> = done.job.circuits.iter().map(|circuit| circuit.modules.len()).collect();
    assert_eq!((sizes, done.job.next_id, done.job.wiring.edition.year()), (vec![1, 2], 73, 2020));
    let boxless = apply(&done.job, &Edit::RemoveBox(done.job.boxes[0].id)).unwrap();
    assert!(boxless.circuits[0].to.is_none());
    let bare = apply(&done.job, &Edit::RemoveBlock(job.blocks[0].id)).unwrap();
    assert!(bare.circuits.is_empty());
    for wrong in [
        format!(r#"{{"put-circuit": {{"id": 80, "name": " ", "modules": [{a}]}}}}"#),
        r#"{"put-circuit": {"id": 80, "name": "1", "modules": []}}"#.to_owned(),
        format!(r#"{{"put-circuit": {{"id": 80, "name": "1", "modules": [{a}, {a}]}}}}"#),
        format!(r#"{{"put-circuit": {{"id": 80, "name": "1", "modules": [{a}], "to": 9}}}}"#),
        r#"{"change-wiring": {"lowest_celsius": -300}}"#.to_owned(),
        r#"{"change-wiring": {"edition": "2026"}}"#.to_owned(),
        r#"{"remove-circuit": 9}"#.to_owned(),
    ] {
        let script = script_from_text(&wrong, Path::new("edits.json"));
        let refused =
            script.map_or(1, |script| apply_script(&done.job, &script, &NoFiles, false).refused.len());
        assert_eq!(refused, 1, "{wrong}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]
    #[test]
    fn random_jobs_are_strung_whole_or_told(job in jobs(), kit in 0_usize..2) {
        let ready = ready(job, kit);
        let (after, made) = strung(&ready);
        every_module_once(&after, &made);
        for group in &made.groups {
            prop_assert!(group.least_leads <= group.leads && group.least_way <= group.way + 1e-9);
        }
        let back = job_from_text(&job_to_text(&after).unwrap(), Path::new("a.chalk.json")).unwrap();
        prop_assert_eq!(&back.circuits, &after.circuits);
    }
}
