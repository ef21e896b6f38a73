//! Commands about coursing: courses of faces, and decks as measured.

use crate::{Format, On, Outcome, text_of};
use anyhow::Context;
use chalkcourse_geometry::Length;
use chalkcourse_geometry::fit_up::Along;
use chalkcourse_job::{Face, Resolved, load};
use chalkcourse_plan::{FitUpAsked, coursing, deck_measured, evaluate, fit_up};
use chalkcourse_sheets::Output;
use chalkcourse_words as words;
use clap::{Args, ValueEnum};

#[derive(Args)]
pub(crate) struct CoursingArgs {
    #[command(flatten)]
    on: On,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    #[arg(help = words::commandline::HELP_THE_FACE_BY_ITS_NAME.now())]
    #[arg(long)]
    face: Option<String>,
    #[arg(help = words::commandline::HELP_THE_LEAST_AND_THE_GREATEST.now())]
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
        let name = args.face.unwrap_or_default();
        let file = args.on.file.display();
        anyhow::bail!(
            "{}",
            words::commandline::no_face_is_named(&file, &format_args!("{name:?}"), &known.join(", "))
        );
    }
    let mut told = Vec::new();
    for face in faces {
        told.push(coursing(&job, face.id, exposures).with_context(|| words::common::face_3(&face.name))?);
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
    #[arg(help = words::commandline::HELP_THE_BLOCK_BY_ITS_NAME.now())]
    #[arg(long)]
    block: Option<String>,
    #[arg(help = words::commandline::HELP_ALONG_THE_EAVE_FROM_CORNER.now())]
    #[arg(long)]
    eave: Option<String>,
    #[arg(help = words::commandline::HELP_ALONG_THE_HEAD_THE_RIDGE.now())]
    #[arg(long)]
    head: Option<String>,
    #[arg(help = words::commandline::HELP_UP_THE_LEFT_AND_THE.now())]
    #[arg(long, num_args = 2, value_names = ["LEFT", "RIGHT"])]
    rakes: Vec<String>,
    #[arg(help = words::commandline::HELP_FROM_THE_LEFT_END_OF.now())]
    #[arg(long, num_args = 2, value_names = ["RISING", "FALLING"])]
    diagonals: Vec<String>,
    #[arg(help = words::commandline::HELP_HOW_FAR_EAVE_HEAD_LEFT.now())]
    #[arg(long, num_args = 4, value_names = ["EAVE", "HEAD", "LEFT", "RIGHT"], allow_hyphen_values = true)]
    bows: Option<Vec<String>>,
    #[arg(help = words::commandline::HELP_WHAT_THE_BASE_LINE_IS.now())]
    #[arg(long, value_enum, default_value = "eave")]
    along: AlongWhat,
    #[arg(help = words::commandline::HELP_THE_BASE_LINE_ABOVE_THE.now())]
    #[arg(long)]
    up: Option<String>,
    #[arg(help = words::commandline::HELP_MODULES_IN_EACH_ROW_AS.now())]
    #[arg(long)]
    modules: Option<usize>,
    #[arg(help = words::commandline::HELP_HOW_MUCH_A_MODULE_MAY.now())]
    #[arg(long, default_value = "1/32 in")]
    module_varies: String,
    #[arg(help = words::commandline::HELP_HOW_FAR_A_REVEAL_MAY.now())]
    #[arg(long, default_value = "1/32 in")]
    reveal_varies: String,
}

#[derive(Clone, Copy, ValueEnum)]
enum AlongWhat {
    #[value(help = words::commandline::HELP_THE_EAVE.now())]
    Eave,
    #[value(help = words::commandline::HELP_THE_HEAD_SO_THAT_THE.now())]
    Head,
    #[value(help = words::commandline::HELP_HALFWAY.now())]
    Between,
}

pub(crate) fn deck(args: FitUpArgs) -> anyhow::Result<Outcome> {
    let job = load(&args.on.file)?;
    let named = |name: &String| job.blocks.iter().find(|block| block.name == *name);
    let block = args.block.as_ref().map_or(job.blocks.first(), named);
    let Some(block) = block else {
        let known: Vec<&str> = job.blocks.iter().map(|block| block.name.as_str()).collect();
        let known = if known.is_empty() { words::common::NONE_2.now().to_owned() } else { known.join(", ") };
        anyhow::bail!("{}", words::commandline::no_such_block(&args.on.file.display(), &known));
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
        anyhow::bail!("{}", words::commandline::not_four_corners(&args.on.file.display(), &block.name));
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
