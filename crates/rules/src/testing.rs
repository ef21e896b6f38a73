//! Small jobs for the tests of rules, and shorthands for checking them.

use crate::{Facts, Finding, RULES, WhyNot, check};
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, BlockId, BoxId, Cell, Circuit, CircuitId, Face, FaceId, InverterInput, JunctionBox, Kit, Leg,
    LiesIn, ModuleAt, ModuleDevice, Penetration, PenetrationId, PenetrationKind, Quantity, Required,
    Resolved, RuleBook, Shape, Source, Standing, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use std::sync::Arc;

/// The demo module as laid, metres.
pub(crate) const MODULE: DVec2 = dvec2(1.722, 1.134);

pub(crate) fn face(
    id: u32,
    name: &str,
    corners: &[(f64, f64)],
    rise: f64,
    downslope: f64,
    height: f64,
) -> Face {
    Face::new(
        FaceId(id),
        name.into(),
        Polygon::new(corners.iter().map(|&c| c.into()).collect()),
        Pitch::from_rise_in_12(rise).unwrap(),
        Azimuth::from_degrees(downslope),
        Length::from_metres(height),
    )
}

pub(crate) fn block(id: u32, face: u32, at: (f64, f64), rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(id),
        name: id.to_string(),
        face: FaceId(face),
        at: at.into(),
        rows,
        columns,
        orientation: Default::default(),
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}

pub(crate) fn vent(id: u32, x: f64, y: f64) -> Penetration {
    Penetration {
        id: PenetrationId(id),
        name: format!("vent {id}"),
        kind: PenetrationKind::Vent,
        at: dvec2(x, y),
        shape: Shape::Rectangle { along: Length::from_metres(0.4), up: Length::from_metres(0.4) },
        clearance: None,
    }
}

/// A 12 × 12 m gable, 6:12; face 1 falls south and is 6 m deep in plan, 6.708 m up the slope. Block 3 is 2 rows of
/// 3, 5.172 × 2.271 m, at (3, 1) on it. No finding.
pub(crate) fn gable_job() -> Resolved {
    let mut job = Resolved::new("Gable".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    job.faces = vec![
        face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 6.0, 180.0, 3.0),
        face(2, "North", &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 6.0, 0.0, 3.0),
    ];
    job.blocks = vec![block(3, 1, (3.0, 1.0), 2, 3)];
    job.next_id = 10;
    job
}

/// The same with its modules as one string of bare modules, back and forth, on an inverter that works from 120 V to 600 V. No finding but
/// that plain strings can't be shut down at the module.
pub(crate) fn wired() -> Resolved {
    let mut job = gable_job();
    let wiring = kit(&mut job).wiring.as_mut().unwrap();
    wiring.device = ModuleDevice::None;
    let inverter = &mut wiring.inverters[0];
    let number = inverter.number.clone();
    (inverter.most_volts, inverter.least_volts, inverter.string_volts) = (600.0, 120.0, None);
    let choices = Arc::make_mut(&mut job.wiring);
    choices.inverters = vec![number];
    (choices.lowest_celsius, choices.hottest_cell_celsius) = (Some(-22.0), Some(77.0));
    let cells = [(0, 0), (0, 1), (0, 2), (1, 2), (1, 1), (1, 0)];
    let module = |(row, column)| ModuleAt { block: BlockId(3), cell: Cell { row, column } };
    job.circuits = vec![Circuit {
        id: CircuitId(8),
        name: "1".into(),
        modules: cells.map(module).to_vec(),
        to: None,
        input: Some(InverterInput { inverter: 0, input: 0 }),
    }];
    job
}

/// The same, led to a box above the block: 3 m of raceway on the roof, 10 mm up, and 5 m down a wall.
pub(crate) fn boxed() -> Resolved {
    let mut job = wired();
    let leg = |metres: f64, lies| Leg { length: Length::from_metres(metres), lies };
    job.boxes = vec![JunctionBox {
        id: BoxId(9),
        name: "1".into(),
        at: dvec2(6.0, 5.0),
        stands: Default::default(),
        legs: vec![leg(3.0, LiesIn::RoofRaceway(Length::from_mm(10.0))), leg(5.0, LiesIn::Wall)],
        others: Vec::new(),
    }];
    job.circuits[0].to = Some(BoxId(9));
    Arc::make_mut(&mut job.wiring).highest_celsius = Some(34.0);
    job
}

pub(crate) fn book(job: &mut Resolved) -> &mut RuleBook {
    Arc::make_mut(&mut job.rule_book)
}

pub(crate) fn kit(job: &mut Resolved) -> &mut Kit {
    Arc::make_mut(&mut job.kit)
}

pub(crate) fn all(job: &Resolved) -> Vec<Finding> {
    check(job, &Layout::of(job))
}

/// The findings of one rule.
pub(crate) fn of(job: &Resolved, code: &str) -> Vec<Finding> {
    all(job).into_iter().filter(|finding| finding.rule == code).collect()
}

/// The only finding of a rule.
pub(crate) fn one(job: &Resolved, code: &str) -> Finding {
    let found = of(job, code);
    assert_eq!(found.len(), 1, "{found:#?}");
    found.into_iter().next().unwrap()
}

/// Inches of a quantity.
pub(crate) fn inches(quantity: Quantity) -> f64 {
    match quantity {
        Quantity::Length(length) | Quantity::InPlan(length) => length.inches(),
        other => panic!("no length: {other:?}"),
    }
}

/// Metres of two quantities of the same kind.
pub(crate) fn lengths(one: Quantity, other: Quantity) -> Option<(f64, f64)> {
    match (one, other) {
        (Quantity::Length(one), Quantity::Length(other))
        | (Quantity::InPlan(one), Quantity::InPlan(other)) => Some((one.metres(), other.metres())),
        _ => None,
    }
}

/// Asserts the inches measured and the inches required, as a minimum or maximum.
#[track_caller]
pub(crate) fn measures(finding: &Finding, measured: f64, asked: f64) {
    let (Required::AtLeast(limit) | Required::AtMost(limit) | Required::Free(limit)) = finding.required
    else {
        panic!("{finding:#?}")
    };
    let near = |a: f64, b: f64| (a - b).abs() < 1e-6;
    let (got, limit) = (inches(finding.measured), inches(limit));
    assert!(near(got, measured) && near(limit, asked), "{got} of {limit}");
}

/// Why a rule is not checked.
pub(crate) fn why_not(job: &Resolved, code: &str) -> Option<WhyNot> {
    RULES.iter().find(|rule| rule.code == code).and_then(|rule| rule.why_not(job))
}

/// How many pathways were found.
pub(crate) fn found(finding: &Finding) -> u32 {
    let Quantity::Pathways { count, .. } = finding.measured else { panic!("{finding:#?}") };
    count
}

/// The modules that a fire-access finding says to remove.
fn opening(finding: &Finding) -> &[(BlockId, Vec<Cell>)] {
    match &finding.facts {
        Facts::FirePaths { opening: Some(opening), .. } | Facts::FirePlanePath { opening: Some(opening) } => {
            opening
        }
        other => panic!("{other:?}"),
    }
}

/// How many modules have to be removed for a pathway.
pub(crate) fn taken(finding: &Finding) -> usize {
    opening(finding).iter().map(|(_, cells)| cells.len()).sum()
}

/// Removes them and asserts that the finding is gone.
pub(crate) fn opened(job: &Resolved, finding: &Finding) {
    let mut next = job.clone();
    for (id, cells) in opening(finding) {
        let block = next.blocks.iter_mut().find(|block| block.id == *id).unwrap();
        block.off.extend(cells.iter().copied());
    }
    let still = all(&next).into_iter().find(|f| f.key == finding.key);
    assert!(still.is_none(), "{still:#?}");
}

pub(crate) fn office() -> Source {
    Source::new("office", Standing::Office)
}

#[test]
fn the_small_gable_has_no_finding() {
    assert_eq!(all(&gable_job()), vec![]);
    // Plain strings can't be shut down at the module.
    let keys: Vec<String> = all(&wired()).iter().map(|finding| finding.key.to_string()).collect();
    assert_eq!(keys, ["rapid-shutdown/modules"]);
}
