//! A drawing drops nothing: labels without room are listed beside it, with a number.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

mod random_jobs;

use chalkcourse_geometry::Length;
use chalkcourse_job::Resolved;
use chalkcourse_plan::{Plan, base_line, evaluate};
use chalkcourse_sheets::{Drawing, Output, Shape, face_drawing, plan_drawing, words};
use chalkcourse_tests::samples;
use proptest::prelude::*;
use random_jobs::jobs;

/// The text on a drawing.
fn on(drawing: &Drawing) -> Vec<&str> {
    let words = drawing.shapes.iter().filter_map(|shape| match shape {
        Shape::Words { text, .. } => Some(text.as_str()),
        _ => None,
    });
    words.collect()
}

/// Takes one of these sentences off the drawing or its list; as many things need as many.
fn take(left: &mut Vec<String>, any: &[&str], what: &str) {
    let at = left.iter().position(|words| any.contains(&words.as_str())).or_else(|| {
        // In the list it has a number in front, and what it belongs to behind.
        left.iter().position(|words| words.starts_with('(') && any.iter().any(|it| words.contains(it)))
    });
    match at {
        Some(at) => drop(left.remove(at)),
        None => panic!("{what}: none of {any:?} is told; left {left:?}"),
    }
}

fn labels_of(drawing: &Drawing) -> Vec<String> {
    let on = on(drawing);
    let is_number = |words: &&str| words.starts_with('(') && words.ends_with(')');
    let numbers: Vec<&str> = on.iter().copied().filter(is_number).collect();
    for number in &numbers {
        assert_eq!(numbers.iter().filter(|other| *other == number).count(), 1, "{number} stands twice");
        assert!(drawing.beside.iter().any(|words| words.starts_with(number)), "{number} stands for nothing");
    }
    on.into_iter().map(str::to_owned).chain(drawing.beside.clone()).collect()
}

fn nothing_is_left_out(job: &Resolved, plan: &Plan) {
    let show = |metres: f64| Length::from_metres(metres).show(job.units);
    if let Some(drawing) = plan_drawing(job, plan) {
        let mut left = labels_of(&drawing);
        for line in plan.layout.roof.lines() {
            let length = show(line.length);
            let whole = format!("{} {length}", line.kind.name());
            take(&mut left, &[&whole, &length], "the plan");
        }
        for (face, placed) in plan.layout.roof.faces.iter().zip(&plan.layout.faces) {
            if face.sound {
                take(&mut left, &[&format!("{}  {}", placed.name, face.plane.pitch)], "the plan");
            }
        }
    }
    for (index, face) in plan.layout.roof.faces.iter().enumerate() {
        let Some(drawing) = face_drawing(job, plan, index) else { continue };
        let mut left = labels_of(&drawing);
        for block in plan.layout.blocks.iter().filter(|block| block.face == index && block.bounds.is_some()) {
            take(&mut left, &[&format!("Block {}", block.name)], "the face");
            let line = base_line(face, block);
            for from in line.iter().flat_map(|line| [line.up, line.along]).flatten() {
                if from.length() >= 0.01 {
                    take(&mut left, &[&show(from.length())], "the face");
                }
            }
        }
        for penetration in plan.layout.penetrations.iter().filter(|it| it.on_face(index).is_some()) {
            if !penetration.name.is_empty() {
                take(&mut left, &[&penetration.name], "the face");
            }
        }
    }
}

#[test]
fn samples_label_every_edge_face_block_and_measure() {
    for (_, job) in samples::all() {
        nothing_is_left_out(&job, &evaluate(&job));
    }
}

/// The list is printed below its drawing, and is in the file of the drawing.
#[test]
fn labels_beside_a_drawing_are_on_paper_and_in_the_file() {
    let job = samples::all().into_iter().find(|(name, _)| name.contains("quarry")).unwrap().1;
    let plan = evaluate(&job);
    let drawing = plan_drawing(&job, &plan).unwrap();
    assert!(!drawing.beside.is_empty(), "a dormer has edges shorter than their words");
    let letters = |text: &str| text.chars().filter(|c| c.is_alphanumeric()).collect::<String>();
    let chalkcourse_sheets::Made::Sheet(sheet) = Output::BuildSheet.made(&job, &plan).unwrap() else {
        panic!()
    };
    let paper = letters(&words(&sheet).unwrap().concat().concat());
    let file = Output::PlanDrawing.text(&job, &plan).unwrap();
    let lines = file.lines().filter_map(|line| line.split_once('>')?.1.strip_suffix("</text>"));
    let file = letters(&lines.collect::<String>());
    for words in &drawing.beside {
        assert!(paper.contains(&letters(words)), "{words}");
        assert!(file.contains(&letters(words)), "{words}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]
    #[test]
    fn random_roofs_label_every_edge_face_block_and_measure(job in jobs()) {
        nothing_is_left_out(&job, &evaluate(&job));
    }
}
