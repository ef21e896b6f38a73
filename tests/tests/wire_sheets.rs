//! The sheets about the wires, held against the order, the circuits and the roof: what is drawn is what is bought, every module is in
//! one circuit or told, the bare copper passes each lug once, and no word lies on anything.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_job::{
    BoxId, BoxStands, Cell, Edit, JunctionBox, ModuleAt, ModuleDevice, Resolved, RowShift, apply,
    builtin_kits,
};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Plan, evaluate};
use chalkcourse_sheets::{BlockWires, Drawing, End, Ink, LinkPart, Made, Output, Shape, WireDiagram, words};
use chalkcourse_tests::samples;
use chalkcourse_wiring::paths::Effort;
use chalkcourse_wiring::string_up;
use chalkcourse_words::{Language, speaking};
use geo::{Area, BooleanOps, Euclidean, LineString, MultiLineString, Polygon};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Which kit: dc devices, ac devices, or bare modules.
const KITS: [&str; 3] = ["dc devices", "ac devices", "bare"];

fn with_kit(mut job: Resolved, which: usize) -> Resolved {
    let mut kit = (*builtin_kits()[which % 2]).clone();
    if which == 2 {
        let wiring = kit.wiring.as_mut().unwrap();
        wiring.device = ModuleDevice::None;
        for inverter in &mut wiring.inverters {
            (inverter.most_volts, inverter.least_volts, inverter.string_volts) = (600.0, 60.0, None);
        }
    }
    job.kit = Arc::new(kit);
    let choices = Arc::make_mut(&mut job.wiring);
    (choices.lowest_celsius, choices.hottest_cell_celsius) = (Some(-22.0), Some(77.0));
    choices.inverters = vec!["FH-182".into(); 12];
    job
}

/// With a junction box above each of the first two blocks, and circuits made automatically.
fn strung(mut job: Resolved) -> (Resolved, Plan) {
    let layout = Layout::of(&job);
    for block in layout.blocks.iter().take(2) {
        let bounds = block.bounds.unwrap();
        let at = layout.roof.faces[block.face].plane.to_plan(bounds.max + dvec2(0.1, 0.3));
        let id = BoxId(job.next_id);
        let name = format!("Box {}", block.name);
        let junction =
            JunctionBox { id, name, at, stands: BoxStands::OnRoof, legs: Vec::new(), others: Vec::new() };
        job = apply(&job, &Edit::PutBox(junction)).unwrap();
    }
    let made = string_up(&job, &Layout::of(&job), None, Effort::FIRST).unwrap();
    let job = apply(&job, &made.edit(&job)).unwrap();
    let plan = evaluate(&job);
    (job, plan)
}

/// The samples that are houses with each kit; and Alder Court with a row that is shifted, a hole and a row that is short, so that leads
/// don't reach everywhere.
fn jobs() -> Vec<(String, Resolved, Plan)> {
    let mut jobs = Vec::new();
    for (which, kit) in KITS.iter().enumerate() {
        for (name, job) in samples::all().into_iter().filter(|(_, job)| job.faces.len() < 40) {
            let mut odd = job.clone();
            jobs.push((format!("{name}, {kit}"), with_kit(job, which)));
            let block = &mut odd.blocks[0];
            if block.rows > 2 {
                block.shifts.push(RowShift { row: 1, from: 0, by: Length::from_metres(0.55) });
                block.off.extend([
                    Cell { row: 0, column: 2 },
                    Cell { row: 0, column: 3 },
                    Cell { row: 1, column: 1 },
                ]);
                jobs.push((format!("{name}, odd, {kit}"), with_kit(odd, which)));
            }
        }
    }
    jobs.into_iter()
        .map(|(name, job)| {
            let (job, plan) = strung(job);
            (name, job, plan)
        })
        .collect()
}

fn need(plan: &Plan, number: &str) -> f64 {
    plan.takeoff.lines.iter().find(|line| line.number == number).map_or(0.0, |line| line.need)
}

/// Extension leads, cable by colour with tails of 1 ft at both ends, and bare copper with a tail of 6 ft a block: what is drawn is what
/// is ordered.
#[test]
fn the_order_is_what_the_diagram_shows() {
    let mut leads_seen = 0;
    for (name, job, plan) in jobs() {
        let diagram = WireDiagram::of(&job, &plan);
        let near = |number: &str, drawn: f64| {
            let ordered = need(&plan, number);
            assert!((ordered - drawn).abs() < 1e-6, "{name} {number}: {drawn} drawn, {ordered} ordered");
        };
        let mut leads: BTreeMap<usize, usize> = BTreeMap::new();
        let links = diagram.blocks.iter().flat_map(|block| &block.links);
        for link in links.filter(|link| link.part != LinkPart::Arrives) {
            let chosen = link.leads.as_ref().unwrap();
            let stock = &job.kit.wiring.as_ref().unwrap().leads.extensions;
            let sum: f64 = chosen.iter().map(|at| stock[*at].length.metres()).sum();
            assert!((sum - link.lengths.metres()).abs() < 1e-9, "{name}");
            chosen.iter().for_each(|at| *leads.entry(*at).or_default() += 1);
        }
        for (at, lead) in job.kit.wiring.as_ref().unwrap().leads.extensions.iter().enumerate() {
            let drawn = leads.get(&at).copied().unwrap_or(0);
            leads_seen += drawn;
            near(&lead.number, drawn as f64);
        }
        let ends = || diagram.blocks.iter().flat_map(|block| &block.ends);
        let cable = |which: End| -> f64 {
            let ways = ends().filter(|end| end.end == which);
            ways.map(|end| end.home.unwrap().1.unwrap() + 2.0 * 0.3048).sum()
        };
        if name.contains("ac devices") {
            near("FH-179", cable(End::Branch));
            assert_eq!(ends().filter(|end| end.end == End::Closed).count(), job.circuits.len(), "{name}");
        } else {
            near("FH-174", cable(End::Positive));
            near("FH-175", cable(End::Negative));
        }
        let copper = diagram
            .blocks
            .iter()
            .map(|block| block.ground.along + block.ground.home.map_or(0.0, |(_, way)| way) + 6.0 * 0.3048);
        near("FH-162", copper.sum());
    }
    assert!(leads_seen > 3, "extension leads were looked at: {leads_seen}");
}

/// Each module on the roof is drawn once, and is in one circuit at its place in it, or told to be in none.
#[test]
fn every_module_is_in_one_circuit_or_told() {
    for (name, job, plan) in jobs() {
        let diagram = WireDiagram::of(&job, &plan);
        let drawn: Vec<_> = diagram.blocks.iter().flat_map(|block| &block.modules).collect();
        let mut at: Vec<ModuleAt> = drawn.iter().map(|module| module.at).collect();
        at.sort();
        at.dedup();
        assert_eq!((at.len(), drawn.len()), (plan.summary.modules, plan.summary.modules), "{name}");
        for module in drawn {
            let named: Vec<(usize, usize)> = (job.circuits.iter().enumerate())
                .flat_map(|(nth, circuit)| {
                    let places = (1..).zip(&circuit.modules).filter(|(_, at)| **at == module.at);
                    places.map(move |(place, _)| (nth, place))
                })
                .collect();
            assert!(named.len() <= 1, "{name}");
            assert_eq!(module.circuit, named.first().copied(), "{name}");
            assert_eq!(module.circuit.is_none(), plan.wires.loose.contains(&module.at), "{name}");
            assert!(module.rect.contains(module.device) && module.rect.contains(module.lug), "{name}");
        }
        // Each circuit is one way from its first module to its last.
        for (nth, circuit) in job.circuits.iter().enumerate() {
            let links =
                diagram.blocks.iter().flat_map(|block| &block.links).filter(|link| link.circuit == nth);
            let mut steps: Vec<(ModuleAt, ModuleAt)> = links.map(|link| (link.from, link.to)).collect();
            steps.sort();
            steps.dedup();
            let mut expected: Vec<_> = circuit.modules.windows(2).map(|pair| (pair[0], pair[1])).collect();
            expected.sort();
            assert_eq!(steps, expected, "{name}");
        }
    }
}

/// How far along a route a point is, once for each time that the route passes it.
fn passes(route: &[DVec2], point: DVec2) -> Vec<f64> {
    let mut found: Vec<f64> = Vec::new();
    let mut gone = 0.0;
    for pair in route.windows(2) {
        let long = pair[0].distance(pair[1]);
        let share = (point - pair[0]).dot(pair[1] - pair[0]) / (long * long);
        if long > 0.0 && (pair[0].lerp(pair[1], share.clamp(0.0, 1.0))).distance(point) < 1e-6 {
            let at = gone + long * share.clamp(0.0, 1.0);
            if found.last().is_none_or(|last| at - last > 1e-6) {
                found.push(at);
            }
        }
        gone += long;
    }
    found
}

fn copper_is_whole(name: &str, block: &BlockWires) {
    let route = &block.ground.route;
    for pair in route.windows(2) {
        let apart = (pair[1] - pair[0]).abs();
        assert!(apart.min_element() < 1e-9 && apart.max_element() > 1e-9, "{name}: {route:?}");
    }
    let mut order: Vec<(f64, Cell)> = Vec::new();
    for module in &block.modules {
        let passed = passes(route, module.lug);
        assert_eq!(
            passed.len(),
            1,
            "{name}: the lug of {} is passed {passed:?}: {route:?}",
            module.at.cell.number()
        );
        order.push((passed[0], module.at.cell));
    }
    order.sort_by(|a, b| a.0.total_cmp(&b.0));
    assert!(order.windows(2).all(|pair| pair[0].1.row <= pair[1].1.row), "{name}: from the lowest row up");
    assert!(route.last().unwrap().y > block.bounds.max.y, "{name}: it leaves at the head");
}

#[test]
fn bare_copper_passes_each_lug_once_in_one_piece() {
    for (name, job, plan) in jobs() {
        let diagram = WireDiagram::of(&job, &plan);
        diagram.blocks.iter().for_each(|block| copper_is_whole(&name, block));
    }
    // Mill Row has 5,000 lugs.
    let (name, job) = samples::all().swap_remove(2);
    let plan = evaluate(&job);
    let diagram = WireDiagram::of(&job, &plan);
    assert_eq!(diagram.blocks.iter().map(|block| block.modules.len()).sum::<usize>(), plan.summary.modules);
    diagram.blocks.iter().for_each(|block| copper_is_whole(name, block));
}

fn shape(corners: &[DVec2]) -> Polygon {
    Polygon::new(corners.iter().map(|p| (p.x, p.y)).collect(), Vec::new())
}

/// No word of a drawing lies on another, on a line or on a filled sign, at a size in points, by areas of the crate `geo`.
fn words_are_clear(name: &str, drawing: &Drawing, room: (f64, f64)) -> usize {
    use geo::Length as _;
    let size = drawing.bounds.size();
    let point = (size.x / room.0).max(size.y / room.1);
    let mut boxes: Vec<(&str, [DVec2; 4])> = Vec::new();
    for it in &drawing.shapes {
        let Shape::Words { at, turn, size, text } = it else { continue };
        // DejaVu Sans Condensed averages half an em in width, and tall letters are four fifths of an em.
        let half = dvec2(text.chars().count() as f64 * 0.5, 0.8) * (f64::from(*size) * point / 2.0);
        let along = DVec2::from_angle(*turn);
        let (x, y) = (along * half.x, along.perp() * half.y);
        let corners = [*at - x - y, *at + x - y, *at + x + y, *at - x + y];
        assert!(corners.iter().all(|corner| drawing.bounds.contains(*corner)), "{name}: {text:?} is cut off");
        boxes.push((text, corners));
    }
    for (nth, (text, corners)) in boxes.iter().enumerate() {
        for (other, over) in &boxes[nth + 1..] {
            let common = shape(corners).intersection(&shape(over)).unsigned_area();
            assert!(common < 1e-9, "{name}: {text:?} lies on {other:?}");
        }
        for it in &drawing.shapes {
            match it {
                Shape::Line { ink: Ink::Leader, .. } => {}
                Shape::Line { points, .. } => {
                    let line = points.iter().map(|p| (p.x, p.y)).collect::<Vec<_>>();
                    let line = MultiLineString::new(vec![LineString::from(line)]);
                    let on = Euclidean.length(&shape(corners).clip(&line, false));
                    assert!(on < 1e-9, "{name}: {text:?} lies on a line");
                }
                Shape::Area { ring, ink: Ink::Dark } => {
                    let common = shape(corners).intersection(&shape(ring)).unsigned_area();
                    assert!(common < 1e-9, "{name}: {text:?} lies on a sign");
                }
                _ => {}
            }
        }
    }
    boxes.len()
}

#[test]
fn words_of_wire_diagrams_lie_on_nothing() {
    for (name, job, plan) in jobs() {
        for language in [Language::ENGLISH, Language::SPANISH] {
            speaking(language, || {
                for block in &WireDiagram::of(&job, &plan).blocks {
                    let drawing = block.drawing(&job, &plan);
                    let words = words_are_clear(&name, &drawing, (706.0, 285.0));
                    assert!(words >= block.modules.len(), "{name}: {words}");
                    // Nothing is left out: what has no room is listed.
                    let shown = |text: &str| {
                        let on = drawing
                            .shapes
                            .iter()
                            .any(|it| matches!(it, Shape::Words { text: on, .. } if on == text));
                        on || drawing.beside.iter().any(|it| it.contains(text))
                    };
                    for module in &block.modules {
                        assert!(shown(&module.at.cell.number()), "{name}: {:?}", module.at);
                    }
                }
            });
        }
    }
}

fn paper(output: Output<'_>, job: &Resolved, plan: &Plan) -> String {
    let Made::Sheet(sheet) = output.made(job, plan).unwrap() else { panic!("{} is no sheet", output.code()) };
    words(&sheet).unwrap().concat().join(" ")
}

/// The text of the wire diagram has every module, circuit, end and extension lead, in both languages.
#[test]
fn the_text_of_the_diagram_has_all() {
    for (name, job, plan) in jobs() {
        for (language, string, branch) in
            [(Language::ENGLISH, "string", "branch"), (Language::SPANISH, "cadena", "ramal")]
        {
            speaking(language, || {
                let text = paper(Output::WireDiagram, &job, &plan);
                let is_there = |what: &str| assert!(text.contains(what), "{name}: no {what:?} in {text}");
                for (circuit, wired) in job.circuits.iter().zip(&plan.wires.circuits) {
                    if name.contains("ac devices") {
                        is_there(&format!("{branch} {}", circuit.name));
                    } else {
                        is_there(&format!("{string} {} +", circuit.name));
                        is_there(&format!("{string} {} \u{2212}", circuit.name));
                    }
                    for module in &circuit.modules {
                        is_there(&format!("{}-{}", module.cell.row + 1, module.cell.column + 1));
                    }
                    let stock = &job.kit.wiring.as_ref().unwrap().leads.extensions;
                    for lead in wired.links.iter().flat_map(|link| link.leads.iter().flatten()) {
                        is_there(&stock[*lead].number);
                    }
                }
                plan.wires.loose.iter().for_each(|module| is_there(&module.cell.number()));
                job.boxes.iter().take(1).for_each(|junction| is_there(&junction.name));
            });
        }
    }
}

/// What a meter should show, by hand: 12 × 37.2 V, −0.26 %/K: 446.4 V at 25 °C, 487.0 V at −10 °C, 411.6 V at 55 °C; 1 V a device; 240 V.
#[test]
fn the_handover_says_what_a_meter_shows() {
    for (name, job, plan) in
        jobs().into_iter().filter(|(name, ..)| name.starts_with("alder") && !name.contains("odd"))
    {
        let modules: Vec<usize> = job.circuits.iter().map(|circuit| circuit.modules.len()).collect();
        for language in [Language::ENGLISH, Language::SPANISH] {
            let text = speaking(language, || paper(Output::Handover, &job, &plan));
            let has = |what: &str| assert!(text.contains(what), "{name} {modules:?}: no {what:?} in {text}");
            if name.contains("bare") {
                assert_eq!(modules, [12]);
                ["446.4", "487.0", "411.6", "424.1\u{2013}468.7", "1000 V"].iter().for_each(|it| has(it));
            } else if name.contains("ac devices") {
                ["240.0", "228.0\u{2013}252.0"].iter().for_each(|it| has(it));
            } else {
                ["12.0", "11.5\u{2013}12.5"].iter().for_each(|it| has(it));
                assert!(!text.contains("446.4"), "n times Voc is for bare modules alone");
            }
        }
    }
}

/// One page, with every group of circuits, whatever the job does not state told as that.
#[test]
fn the_one_line_diagram_is_one_page() {
    for (name, job, plan) in jobs() {
        for (language, not_stated) in [(Language::ENGLISH, "not stated"), (Language::SPANISH, "sin indicar")]
        {
            speaking(language, || {
                let Made::Sheet(sheet) = Output::OneLine.made(&job, &plan).unwrap() else { panic!() };
                let pages = words(&sheet).unwrap();
                if sheet.standing.is_plain() {
                    assert_eq!(pages.len(), 1, "{name}: {pages:#?}");
                }
                let text = pages.concat().join(" ");
                assert!(text.contains(not_stated), "{name}: {text}");
                let drawing = Output::OneLineDrawing.text(&job, &plan).unwrap();
                let mut sizes: Vec<usize> = plan.wires.circuits.iter().map(|it| it.devices.len()).collect();
                sizes.sort_by(|a, b| b.cmp(a));
                let sizes: Vec<String> = sizes.iter().map(usize::to_string).collect();
                let letters = |text: &str| {
                    text.chars().filter(|c| c.is_alphanumeric() || *c == ',').collect::<String>()
                };
                let shown: String = drawing
                    .lines()
                    .filter_map(|line| line.split_once("fill=\"#14161a\">")?.1.strip_suffix("</text>"))
                    .collect();
                assert!(
                    letters(&shown).contains(&letters(&sizes.join(", "))),
                    "{name}: {sizes:?} in {shown}"
                );
            });
        }
    }
}

/// Labels by edition: what the raceway says, and the section of the largest voltage; the largest voltage and current as the circuits
/// have them. Alder Court's one string of dc devices: 480 V by the maker's word, 15 A; twelve inverters of 48 A.
#[test]
fn labels_are_those_of_the_edition() {
    let (_, job, _) = jobs()
        .into_iter()
        .find(|(name, ..)| name.starts_with("alder") && name.ends_with("dc devices"))
        .unwrap();
    for (edition, has, has_not) in [
        (
            chalkcourse_job::CodeEdition::Nec2017,
            ["WARNING: PHOTOVOLTAIC POWER SOURCE", "NEC 690.53 (2017, from memory)"],
            "SOLAR PV DC CIRCUIT",
        ),
        (
            chalkcourse_job::CodeEdition::Nec2023,
            ["SOLAR PV DC CIRCUIT", "NEC 690.7(D) (2023, from memory)"],
            "RATED OUTPUT CURRENT",
        ),
    ] {
        let mut job = job.clone();
        Arc::make_mut(&mut job.wiring).edition = edition;
        let text = paper(Output::Labels, &job, &evaluate(&job));
        has.iter().for_each(|it| assert!(text.contains(it), "{edition:?}: no {it:?} in {text}"));
        assert!(!text.contains(has_not), "{edition:?}: {text}");
        let all: String = text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(all.contains("MAXIMUM VOLTAGE 480.0 V. MAXIMUM CIRCUIT CURRENT 15.0 A."), "{all}");
        if edition == chalkcourse_job::CodeEdition::Nec2017 {
            assert!(all.contains("RATED OUTPUT CURRENT 576.0 A. NOMINAL VOLTAGE 240.0 V."), "{all}");
        }
    }
    let (_, branch, plan) = jobs().into_iter().find(|(name, ..)| name.ends_with("ac devices")).unwrap();
    let text = paper(Output::Labels, &branch, &plan);
    assert!(
        !text.contains("PHOTOVOLTAIC POWER SOURCE") && !text.contains("MAXIMUM VOLTAGE"),
        "no dc leaves the array"
    );
}
