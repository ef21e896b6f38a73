//! Courses of faces, and decks as measured.

use crate::{Format, On, Outcome, text_of};
use anyhow::Context;
use chalkcourse_geometry::Length;
use chalkcourse_geometry::fit_up::Along;
use chalkcourse_job::{Face, Resolved, load};
use chalkcourse_plan::{FitUpAsked, coursing, deck_measured, evaluate, fit_up};
use chalkcourse_sheets::Output;
use clap::{Args, ValueEnum};

#[derive(Args)]
pub(crate) struct CoursingArgs {
    #[command(flatten)]
    on: On,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    /// The face by its name; all faces where none is named.
    #[arg(long)]
    face: Option<String>,
    /// The least and the greatest exposure that the shingle may show; from seven eighths of the face's own up to it without.
    #[arg(long, num_args = 2, value_names = ["LEAST", "GREATEST"])]
    exposures: Option<Vec<String>>,
}

pub(crate) fn courses(args: CoursingArgs) -> anyhow::Result<Outcome> {
    let job = load(&args.on.file)?;
    let exposures = match args.exposures.as_deref() {
        Some([least, greatest]) => Some((metres(&job, least)?, metres(&job, greatest)?)),
        _ => None,
    };
    let faces: Vec<_> =
        job.faces.iter().filter(|face| args.face.as_ref().is_none_or(|name| face.name == *name)).collect();
    if faces.is_empty() {
        let known: Vec<&str> = job.faces.iter().map(|face| face.name.as_str()).collect();
        anyhow::bail!(
            "{}: no face is named {:?}; there are {}",
            args.on.file.display(),
            args.face.unwrap_or_default(),
            known.join(", ")
        );
    }
    let mut told = Vec::new();
    for face in faces {
        told.push(coursing(&job, face.id, exposures).with_context(|| format!("face {}", face.name))?);
    }
    let plan = evaluate(&job);
    let text = text_of(args.format, Output::Courses(&told), Output::CoursesJson(&told), &job, &plan)?;
    Ok(Outcome { text, out: args.on.out, stops: false })
}

#[derive(Args)]
pub(crate) struct FitUpArgs {
    #[command(flatten)]
    on: On,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    /// The block by its name; the first one where none is named.
    #[arg(long)]
    block: Option<String>,
    /// Along the eave, from corner to corner. What is not given is as the job has it: measured, or else drawn.
    #[arg(long)]
    eave: Option<String>,
    /// Along the head: the ridge or the upper edge.
    #[arg(long)]
    head: Option<String>,
    /// Up the left and the right rake.
    #[arg(long, num_args = 2, value_names = ["LEFT", "RIGHT"])]
    rakes: Vec<String>,
    /// From the left end of the eave up to the right end of the head, and from its right end up to the left.
    #[arg(long, num_args = 2, value_names = ["RISING", "FALLING"])]
    diagonals: Vec<String>,
    /// How far eave, head, left and right rake bow into the deck at their middle; with a minus out of it.
    #[arg(long, num_args = 4, value_names = ["EAVE", "HEAD", "LEFT", "RIGHT"], allow_hyphen_values = true)]
    bows: Option<Vec<String>>,
    /// What the base line is parallel to.
    #[arg(long, value_enum, default_value = "eave")]
    along: AlongWhat,
    /// The base line above the eave at its lower end; as in the job where it is not given.
    #[arg(long)]
    up: Option<String>,
    /// Modules in each row; as in the block where it is not given.
    #[arg(long)]
    modules: Option<usize>,
    /// How much a module may be larger or smaller.
    #[arg(long, default_value = "1/32 in")]
    module_varies: String,
    /// How far a reveal may be set wrong.
    #[arg(long, default_value = "1/32 in")]
    reveal_varies: String,
}

#[derive(Clone, Copy, ValueEnum)]
enum AlongWhat {
    /// The eave.
    Eave,
    /// The head, so that the courses above come out even.
    Head,
    /// Halfway.
    Between,
}

pub(crate) fn deck(args: FitUpArgs) -> anyhow::Result<Outcome> {
    let job = load(&args.on.file)?;
    let named = |name: &String| job.blocks.iter().find(|block| block.name == *name);
    let block = args.block.as_ref().map_or(job.blocks.first(), named);
    let Some(block) = block else {
        let known: Vec<&str> = job.blocks.iter().map(|block| block.name.as_str()).collect();
        anyhow::bail!(
            "{}: there is no such block; there are {}",
            args.on.file.display(),
            if known.is_empty() { "none".to_owned() } else { known.join(", ") }
        );
    };
    let mut taped = job.face(block.face).map(Face::taped_now).unwrap_or_default();
    let given = [args.eave.as_ref(), args.head.as_ref()].into_iter();
    let pairs = [&args.rakes, &args.diagonals].into_iter().flat_map(|pair| [pair.first(), pair.get(1)]);
    let mut sides = taped.sides();
    for (side, given) in sides.iter_mut().zip(given.chain(pairs)) {
        if let Some(given) = given {
            *side = Some(Length::parse(given, job.units)?);
        }
    }
    taped = taped.with_sides(sides);
    for (bow, given) in taped.bows.iter_mut().zip(args.bows.iter().flatten()) {
        *bow = Length::parse(given, job.units)?;
    }
    let plan = evaluate(&job);
    let measured = plan.layout.face(block.face).and_then(|(_, on)| deck_measured(&taped, on));
    let Some(measured) = measured else {
        anyhow::bail!(
            "{}: the face of block {} has not four corners: give --eave, --head, --rakes and --diagonals",
            args.on.file.display(),
            block.name
        );
    };
    let mut asked = FitUpAsked::of_block(&job, block, measured);
    asked.along = match args.along {
        AlongWhat::Eave => Along::Eave,
        AlongWhat::Head => Along::Head,
        AlongWhat::Between => Along::Between,
    };
    if let Some(up) = &args.up {
        asked.up = metres(&job, up)?;
    }
    if let Some(modules) = args.modules {
        asked.rows.iter_mut().filter(|row| **row > 0).for_each(|row| *row = modules);
    }
    asked.module_varies = metres(&job, &args.module_varies)?;
    asked.reveal_varies = metres(&job, &args.reveal_varies)?;
    let found = fit_up(&job, &asked)?;
    let text = text_of(args.format, Output::FitUp(&asked, &found), Output::FitUpJson(&found), &job, &plan)?;
    Ok(Outcome { text, out: args.on.out, stops: false })
}

fn metres(job: &Resolved, text: &str) -> anyhow::Result<f64> {
    Ok(Length::parse(text, job.units)?.metres())
}
