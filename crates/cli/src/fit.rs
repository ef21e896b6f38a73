//! The `fit` command: fills faces.

use crate::{Format, On, Outcome, text_of};
use chalkcourse_job::{FaceId, Orientation, Resolved, apply, load};
use chalkcourse_plan::{Mode, Size, Target, Way, Worth, evaluate};
use chalkcourse_sheets::Output;
use chalkcourse_words as words;
use clap::{Args, ValueEnum};
use std::path::PathBuf;
use std::time::{Duration, Instant};

#[derive(Args)]
pub(crate) struct FitArgs {
    #[command(flatten)]
    on: On,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    #[arg(help = words::commandline::HELP_HOW_THE_ARRAY_IS_LAID.now())]
    #[arg(long, value_enum, default_value = "sliding-rows")]
    mode: FitMode,
    #[arg(help = words::commandline::HELP_THE_FACE_BY_ITS_NAME_2.now())]
    #[arg(long)]
    face: Vec<String>,
    #[arg(help = words::commandline::HELP_WITH_MODE_WHOLE_BLOCKS_AT.now())]
    #[arg(long, default_value_t = 1)]
    most: usize,
    #[arg(help = words::commandline::HELP_WITH_MODE_WORTH_WHAT_A.now())]
    #[arg(long, required_if_eq("mode", "worth"))]
    value: Option<f64>,
    #[arg(help = words::commandline::HELP_WITH_MODE_WORTH_A_MODULE.now())]
    #[arg(long)]
    by_area: bool,
    #[arg(help = words::commandline::HELP_WITH_MODE_NUMBER_JUST_SO.now())]
    #[arg(long, conflicts_with = "kilowatts")]
    modules: Option<usize>,
    #[arg(help = words::commandline::HELP_WITH_MODE_NUMBER_THE_FEWEST.now())]
    #[arg(long)]
    kilowatts: Option<f64>,
    #[arg(help = words::commandline::HELP_WITH_MODE_NUMBER_WHAT_THE.now())]
    #[arg(long, value_enum, default_value = "compact")]
    way: FitWay,
    #[arg(help = words::commandline::HELP_LETS_MODULES_LIE_ONE_WAY.now())]
    #[arg(long, value_enum)]
    lie: Option<Lie>,
    #[arg(help = words::commandline::HELP_GOES_ON_PROVING_FOR_SO.now())]
    #[arg(long, default_value_t = 30.0)]
    seconds: f64,
    #[arg(help = words::commandline::HELP_LEAVES_OUT_WHAT_HOLDS_IT.now())]
    #[arg(long)]
    brief: bool,
    #[arg(help = words::commandline::HELP_WRITES_THE_JOB_WITH_THE.now())]
    #[arg(long, value_name = "PATH")]
    save: Option<PathBuf>,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum FitMode {
    #[value(help = words::commandline::HELP_ROWS_AND_COLUMNS_IN_LINE.now())]
    OneGrid,
    #[value(help = words::commandline::HELP_THE_USUAL_WAY_ALL_THAT.now())]
    SlidingRows,
    #[value(help = words::commandline::HELP_EVERY_OTHER_ROW_HALF_A.now())]
    HalfLapped,
    #[value(help = words::commandline::HELP_ROWS_THAT_SLIDE_IN_ONE.now())]
    OnCourses,
    #[value(help = words::commandline::HELP_RECTANGLES_ALONE.now())]
    WholeBlocks,
    #[value(help = words::commandline::HELP_THE_MODULES_THAT_ARE_WORTH.now())]
    Worth,
    #[value(help = words::commandline::HELP_A_NUMBER_OF_MODULES_OR.now())]
    Number,
}

#[derive(Clone, Copy, ValueEnum)]
enum Lie {
    #[value(help = words::commandline::HELP_THE_LONG_SIDE_ALONG_THE.now())]
    Landscape,
    #[value(help = words::commandline::HELP_THE_LONG_SIDE_UP_THE.now())]
    Portrait,
}

impl From<Lie> for Orientation {
    fn from(lie: Lie) -> Self {
        match lie {
            Lie::Landscape => Self::Landscape,
            Lie::Portrait => Self::Portrait,
        }
    }
}

#[derive(Clone, Copy, ValueEnum)]
enum FitWay {
    #[value(help = words::commandline::HELP_THE_LEAST_LENGTH_AROUND_IT.now())]
    Compact,
    #[value(help = words::commandline::HELP_THE_LEAST_COST_OF_FLASHING.now())]
    Cheapest,
}

impl FitArgs {
    fn mode(&self) -> anyhow::Result<Mode> {
        Ok(match self.mode {
            FitMode::OneGrid => Mode::OneGrid,
            FitMode::SlidingRows => Mode::SlidingRows,
            FitMode::HalfLapped => Mode::HalfLapped,
            FitMode::OnCourses => Mode::OnCourses,
            FitMode::WholeBlocks => Mode::WholeBlocks(self.most),
            FitMode::Worth => {
                Mode::ByWorth(Worth { module: self.value.unwrap_or_default(), by_area: self.by_area })
            }
            FitMode::Number => {
                let size = match (self.modules, self.kilowatts) {
                    (Some(modules), _) => Size::Modules(modules),
                    (None, Some(kilowatts)) => Size::Kilowatts(kilowatts),
                    (None, None) => anyhow::bail!("{}", words::commandline::NUMBER_NEEDS_MODULES),
                };
                let way = match self.way {
                    FitWay::Compact => Way::Compact,
                    FitWay::Cheapest => Way::Cheapest,
                };
                Mode::ToNumber(Target { size, way })
            }
        })
    }

    /// The faces named, or all that the kit allows.
    fn faces(&self, job: &Resolved) -> anyhow::Result<Vec<FaceId>> {
        let file = self.on.file.display();
        let known = || job.faces.iter().map(|f| f.name.as_str()).collect::<Vec<_>>().join(", ");
        if self.face.is_empty() {
            let steep = job.faces.iter().filter(|f| f.pitch >= job.kit.least_pitch);
            let faces: Vec<FaceId> = steep.map(|f| f.id).collect();
            if faces.is_empty() {
                let least = job.kit.least_pitch;
                anyhow::bail!("{}", words::commandline::no_face_is_as_steep(&file, &least, &known()));
            }
            return Ok(faces);
        }
        let mut faces = Vec::new();
        for name in &self.face {
            let before = faces.len();
            faces.extend(job.faces.iter().filter(|f| f.name == *name).map(|f| f.id));
            if faces.len() == before {
                anyhow::bail!(
                    "{}",
                    words::commandline::no_face_is_named(&file, &format_args!("{name:?}"), &known())
                );
            }
        }
        faces.dedup();
        Ok(faces)
    }
}

pub(crate) fn fit(args: FitArgs) -> anyhow::Result<Outcome> {
    let mut job = load(&args.on.file)?;
    let (faces, mode) = (args.faces(&job)?, args.mode()?);
    let asked = match args.lie {
        Some(lie) => chalkcourse_plan::lying(&job, lie.into())?,
        None => job.clone(),
    };
    let allotted = Duration::from_secs_f64(args.seconds.clamp(0.0, 1e6));
    let end = Instant::now() + allotted;
    let mut fills =
        chalkcourse_plan::fill_improving(&asked, &faces, mode, &|| Instant::now() >= end, &mut |_| {})?;
    if !args.brief {
        let end = Instant::now() + allotted;
        for fill in &mut fills {
            let held = chalkcourse_plan::hold_back(&asked, fill, mode, &|| Instant::now() >= end)?;
            fill.held = Some(held);
        }
    }
    for fill in &fills {
        job = apply(&job, &chalkcourse_plan::fill_edit(&job, fill))?;
    }
    if let Some(path) = args.save {
        chalkcourse_job::save(&job, &path)?;
    }
    let plan = evaluate(&job);
    let text = text_of(args.format, Output::Fills(&fills), Output::FillsJson(&fills), &job, &plan)?;
    Ok(Outcome { text, out: args.on.out, stops: plan.worst() == Some(chalkcourse_rules::Severity::Stop) })
}
