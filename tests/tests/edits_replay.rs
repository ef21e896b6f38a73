//! Edits as data: written and read back they do the same, on random jobs and on a house of parts, and a job made by any of them
//! reopens unchanged.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

mod random_jobs;

use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, Length, Pitch, Polygon, Units, dvec2};
use chalkcourse_job::{
    Accepted, Block, BlockId, BoxId, BoxStands, Cell, Circuit, CircuitId, CodeEdition, Connection, Current,
    Edit, Face, FaceId, FindingKey, Gauge, GeoPoint, History, InverterInput, JunctionBox, Leg, LiesIn,
    ModuleAt, NoFiles, OrderChoices, Orientation, OtherConductors, PartId, PartKind, Penetration,
    PenetrationId, PenetrationKind, PlanMove, Quantity, Reading, Required, Resolved, RoofPart, Service,
    Shape, Subject, Waiver, WiringChoices, apply, builtin_kit, builtin_prices, builtin_rule_books,
    edits_to_text, job_from_text, job_to_text, script_from_text,
};
use proptest::prelude::*;
use std::path::Path;
use std::sync::Arc;

/// Random input of one edit: what to do, to which thing, and how far.
type Dice = (u8, usize, f64, f64, u32);

fn dice() -> impl Strategy<Value = Vec<Dice>> {
    proptest::collection::vec((0..33u8, 0..8usize, -3.0..3.0f64, -3.0..3.0f64, 0..7u32), 1..14)
}

fn nth<T>(list: &[T], at: usize) -> Option<&T> {
    list.get(at % list.len().max(1))
}

/// An edit as the window makes them; `None` if there is nothing to apply it to.
fn edit(job: &Resolved, (what, at, x, y, n): Dice) -> Option<Edit> {
    let by = dvec2(x, y);
    let free = job.next_id;
    let corner = n as usize % 4;
    Some(match what {
        0 => Edit::PutBlock(Block { at: nth(&job.blocks, at)?.at + by, ..nth(&job.blocks, at)?.clone() }),
        1 => Edit::PutBlock(nth(&job.blocks, at)?.with_size(n % 4 + 1, n + 1)),
        2 => Edit::PutBlock(nth(&job.blocks, at)?.with_switched(Cell { row: n % 2, column: n % 3 })),
        3 => Edit::PutBlock(nth(&job.blocks, at)?.with_shift(n % 3, Length::from_metres(x / 7.0))),
        4 => Edit::RemoveBlock(nth(&job.blocks, at)?.id),
        5 => Edit::PutBlock(Block {
            id: BlockId(free),
            name: Block::free_name(|name| job.blocks.iter().any(|block| block.name == name)),
            face: nth(&job.faces, at)?.id,
            at: by,
            rows: n + 1,
            columns: n % 3 + 1,
            orientation: if n % 2 == 0 { Orientation::Portrait } else { Orientation::Landscape },
            reveal: Length::from_metres(x.abs() / 300.0),
            shifts: Vec::new(),
            off: Default::default(),
            locked: n == 3,
        }),
        6 => Edit::PutPenetration(Penetration {
            id: PenetrationId(free),
            name: format!("P{n}"),
            kind: PenetrationKind::ALL[n as usize % PenetrationKind::ALL.len()],
            at: by * 4.0,
            shape: Shape::Circle { diameter: Length::from_metres(x.abs() + 0.01) },
            clearance: (n % 2 == 0).then(|| Length::from_metres(y.abs())),
        }),
        7 => {
            let there = nth(&job.penetrations, at)?;
            Edit::PutPenetration(Penetration { at: there.at + by, ..there.clone() })
        }
        8 => Edit::RemovePenetration(nth(&job.penetrations, at)?.id),
        9 => {
            let face = nth(&job.faces, at)?;
            let to = face.outline.outer.get(corner).copied()? + by / 5.0;
            Edit::PutFace(face.with_corner_moved(0, corner, to)?)
        }
        10 => {
            let face = nth(&job.faces, at)?;
            let to = face.outline.outer.get(corner).copied()? + by / 5.0;
            Edit::PutFace(face.with_corner_added(0, corner, to)?)
        }
        11 => Edit::PutFace(nth(&job.faces, at)?.without_corner(0, corner)?),
        12 => {
            let kind = [EdgeKind::Eave, EdgeKind::Rake, EdgeKind::WallLine][n as usize % 3];
            let face = nth(&job.faces, at)?;
            Edit::PutFace(face.with_side_overruled(face.sides.at(0, corner)?, (n != 5).then_some(kind)))
        }
        13 => {
            let face = nth(&job.faces, at)?;
            Edit::PutFace(Face { name: format!("F{n}"), datum: face.datum + by, ..face.clone() })
        }
        14 => Edit::Waive(Waiver {
            key: FindingKey::new("setback", Subject::Face(FaceId(n))),
            accepted: (n % 2 == 0).then(|| Accepted {
                measured: Quantity::Length(Length::from_metres(x.abs() / 7.0)),
                required: Required::AtLeast(Quantity::Length(Length::from_inches(12.0))),
            }),
            reason: "“so”, \\ \n 3 ft".to_owned(),
            by: "me".to_owned(),
            date: String::new(),
        }),
        15 => Edit::Unwaive(FindingKey::new("setback", Subject::Face(FaceId(n)))),
        16 => {
            let mut site = job.site.clone();
            site.building.wind_mph = Some(100.0 + x);
            site.building.street_sides =
                vec![Azimuth::from_degrees(x * 77.7), Azimuth::from_degrees(y * 33.3)];
            site.building.eave_height = Some(Length::from_metres(y.abs() + 1.0));
            site.place = Some(GeoPoint { latitude: x * 20.0, longitude: y * 50.0 });
            Edit::SetSite(site)
        }
        17 => Edit::SetUnits(if n % 2 == 0 { Units::Metric } else { Units::FeetInches }),
        18 => Edit::SetRuleBook(Arc::clone(&builtin_rule_books()[n as usize % 4])),
        19 => Edit::order(job, |order: &mut OrderChoices| order.roof.layers = n % 5),
        20 => {
            let part = nth(&job.parts, at)?;
            let to = part.outline.outer.get(corner).copied()? + by / 4.0;
            Edit::PutPart(part.with_corner_moved(0, corner, to)?)
        }
        21 => {
            let treatment = match n % 3 {
                0 => Treatment::Gable,
                1 => Treatment::Wall,
                _ => Treatment::Slope(Pitch::from_rise_in_12(x.abs() * 4.0 + 1.0).ok()?),
            };
            let part = nth(&job.parts, at)?;
            let side = chalkcourse_geometry::raise::SideRef { ring: 0, side: corner };
            Edit::PutPart(part.with_side(side, |side| chalkcourse_job::PartSide { treatment, ..side })?)
        }
        22 => Edit::MoveParts {
            parts: vec![nth(&job.parts, at)?.id],
            how: PlanMove { turn: y * 9.0, about: by, by },
        },
        23 if n == 0 => Edit::FreePart(nth(&job.parts, at)?.id),
        23 => Edit::RemovePart(nth(&job.parts, at)?.id),
        26 => {
            let (one, other) = (nth(&job.blocks, at)?, nth(&job.blocks, at + 1)?);
            let of = |block: &Block| {
                let id = block.id;
                block
                    .cells()
                    .take(n as usize + 1)
                    .map(move |cell| ModuleAt { block: id, cell })
                    .collect::<Vec<_>>()
            };
            let mut modules = of(one);
            modules.extend(of(other).into_iter().filter(|_| other.id != one.id));
            let there = nth(&job.circuits, at).filter(|_| n % 2 == 0);
            Edit::PutCircuit(Circuit {
                id: there.map_or(CircuitId(free), |there| there.id),
                name: format!("C{n}"),
                modules,
                to: nth(&job.boxes, at).map(|junction| junction.id),
                input: (n > 3).then_some(InverterInput { inverter: n, input: n % 2 }),
            })
        }
        27 => Edit::RemoveCircuit(nth(&job.circuits, at)?.id),
        28 => Edit::PutBox(JunctionBox {
            id: nth(&job.boxes, at).filter(|_| n % 2 == 0).map_or(BoxId(free), |there| there.id),
            name: format!("J{n}"),
            at: by * 3.0,
            stands: if n % 3 == 0 { BoxStands::UnderDeck } else { BoxStands::OnRoof },
            legs: vec![Leg {
                length: Length::from_metres(y.abs()),
                lies: LiesIn::RoofRaceway(Length::from_metres(x.abs() / 50.0)),
            }],
            others: vec![OtherConductors { current: Current::Ac, gauge: Gauge::Awg12, count: n + 1 }],
        }),
        29 => Edit::RemoveBox(nth(&job.boxes, at)?.id),
        30 => Edit::SetWiring(Arc::new(WiringChoices {
            edition: CodeEdition::ALL[n as usize % 3],
            lowest_celsius: (n % 2 == 0).then_some(x * 9.0),
            hottest_cell_celsius: Some(70.0 + y),
            voltage_by_table: n % 3 == 0,
            inverters: vec!["FH-181".to_owned(); n as usize % 3],
            service: (n % 2 == 1).then_some(Service {
                bus_amps: 200.0,
                main_breaker_amps: 150.0 + x,
                other_breakers_amps: (n == 3).then_some(y.abs()),
                connection: Connection::ALL[n as usize % 6],
            }),
            label_texts: [(format!("label-{n}"), format!("{x}"))].into_iter().take(corner % 2).collect(),
            ..WiringChoices::default()
        })),
        31 => Edit::PutReading(Reading {
            circuit: nth(&job.circuits, at)?.id,
            celsius: x * 9.0,
            open_volts: (n % 2 == 0).then_some(y.abs() * 100.0),
            polarity_right: (n > 3).then_some(n == 4),
            insulation_megohms: (n % 3 == 0).then_some(x.abs()),
            test_volts: (n % 3 == 0).then_some(500.0),
        }),
        32 => Edit::RemoveReading(nth(&job.readings, at)?.circuit),
        24 => {
            let outline = [dvec2(0.0, 0.0), dvec2(5.0, 0.0), dvec2(5.0, 4.0), dvec2(0.0, 4.0)];
            let outline = Polygon::new(outline.map(|p: DVec2| p + by * 3.0).to_vec());
            let slope = Treatment::Slope(Pitch::from_rise_in_12(6.0).ok()?);
            let (eave, reach) = (Length::from_metres(2.5 + x.abs()), Length::from_metres(y.abs() / 6.0));
            let (id, name) = (PartId(free), format!("Part {free}"));
            Edit::PutPart(RoofPart::new(id, name, PartKind::Ell, outline, eave, slope, reach))
        }
        _ => {
            let two = [Edit::SetName(format!("N{n}")), Edit::RemoveFace(nth(&job.faces, at)?.id)];
            Edit::Several(two.into_iter().take(1 + corner % 2).collect())
        }
    })
}

fn replayed(job: &Resolved, text: &str) -> Resolved {
    let script = script_from_text(text, Path::new("edits")).expect("what is written is read");
    script
        .steps
        .iter()
        .fold(job.clone(), |job, step| step.apply(&job, &NoFiles).expect("what was done can be done"))
}

/// A random sequence of edits as in a session of the window: some undone, some gestures.
fn session(job: &Resolved, dice: &[Dice]) -> History {
    let mut history = History::new(job.clone());
    for &one in dice {
        let Some(edit) = edit(history.job(), one) else { continue };
        match one.4 {
            0 => drop(history.undo()),
            1 => {
                let _ = history.preview("drag", &edit);
                history.commit();
            }
            2 => {
                let _ = history.preview("drag", &edit);
                history.abort();
            }
            3 => drop(history.redo()),
            _ => drop(history.edit("edit", &edit)),
        }
    }
    history
}

/// A house with an ell and a dormer, in addition to the random ones.
fn house() -> Resolved {
    let mut job = Resolved::new(
        "House".to_owned(),
        builtin_kit(),
        Arc::clone(&builtin_rule_books()[0]),
        builtin_prices(),
    );
    let slope = Treatment::Slope(Pitch::from_rise_in_12(7.0).unwrap());
    let rect = |x: f64, y: f64, w: f64, h: f64| {
        Polygon::new(vec![dvec2(x, y), dvec2(x + w, y), dvec2(x + w, y + h), dvec2(x, y + h)])
    };
    for (kind, outline, eave) in [
        (PartKind::Main, rect(0.0, 0.0, 14.0, 9.0), 2.7),
        (PartKind::Ell, rect(9.0, -5.0, 5.0, 7.0), 2.7),
        (PartKind::Dormer, rect(3.0, 1.5, 2.5, 3.0), 4.4),
    ] {
        let id = PartId(job.next_id);
        let (eave, reach) = (Length::from_metres(eave), Length::from_inches(12.0));
        let part = RoofPart::new(id, kind.name().to_owned().into(), kind, outline, eave, slope, reach);
        job = apply(&job, &Edit::PutPart(part)).unwrap();
    }
    job
}

fn check(job: &Resolved, dice: &[Dice]) -> Result<usize, TestCaseError> {
    let history = session(job, dice);
    let edits: Vec<&Edit> = history.edits().collect();
    let text = edits_to_text(edits.iter().copied()).unwrap();
    prop_assert!(replayed(job, &text) == **history.job(), "{text}");
    // The same from a job that was written and reopened, as a script sees it.
    let file = job_to_text(job).unwrap();
    let opened = job_from_text(&file, Path::new("job")).unwrap();
    let after = replayed(&opened, &text);
    prop_assert!(after == **history.job(), "after opening: {text}");
    let again = job_from_text(&job_to_text(&after).unwrap(), Path::new("job")).unwrap();
    prop_assert!(again == after, "a job made by edits is not opened as it was: {text}");
    Ok(edits.len())
}

proptest! {
    #[test]
    fn a_session_on_drawn_faces_is_replayed(job in random_jobs::jobs(), dice in dice()) {
        check(&job, &dice)?;
    }

    #[test]
    fn a_session_on_a_house_of_parts_is_replayed(dice in dice()) {
        check(&house(), &dice)?;
    }

    /// Each edit by itself: either the job accepts both or neither.
    #[test]
    fn an_edit_reads_back_as_it_was_written(job in random_jobs::jobs(), dice in dice()) {
        for one in dice {
            let Some(edit) = edit(&job, one) else { continue };
            let text = edits_to_text([&edit]).unwrap();
            let script = script_from_text(&text, Path::new("edits")).unwrap();
            let read = script.steps[0].edit(&job, &NoFiles).unwrap();
            prop_assert_eq!(&read, &edit);
            prop_assert_eq!(apply(&job, &read).is_ok(), apply(&job, &edit).is_ok());
        }
    }
}

#[test]
fn the_dice_reach_every_edit() {
    let job = house();
    let kinds: std::collections::BTreeSet<String> = (0..26u8)
        .filter_map(|what| edit(&job, (what, 0, 0.3, 0.4, 2)))
        .map(|edit| format!("{edit:?}").split(['(', ' ', '{']).next().unwrap_or_default().to_owned())
        .collect();
    assert!(kinds.len() >= 12, "{kinds:?}");
}
