//! Fills faces.

use crate::{Format, On, Outcome, text_of};
use chalkcourse_job::{FaceId, Orientation, Resolved, apply, load};
use chalkcourse_plan::{Mode, Size, Target, Way, Worth, evaluate};
use chalkcourse_sheets::Output;
use clap::{Args, ValueEnum};
use std::path::PathBuf;
use std::time::{Duration, Instant};

#[derive(Args)]
pub(crate) struct FitArgs {
    #[command(flatten)]
    on: On,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    /// How the array is laid.
    #[arg(long, value_enum, default_value = "sliding-rows")]
    mode: FitMode,
    /// The face by its name, again for several; all faces that the kit allows where none is named.
    #[arg(long)]
    face: Vec<String>,
    /// With --mode whole-blocks: at most so many rectangles on a face.
    #[arg(long, default_value_t = 1)]
    most: usize,
    /// With --mode worth: what a module is worth after what it costs itself, in the currency of the price list.
    #[arg(long, required_if_eq("mode", "worth"))]
    value: Option<f64>,
    /// With --mode worth: a module counts by the area of its face, whole on the largest one.
    #[arg(long)]
    by_area: bool,
    /// With --mode number: just so many modules, those in locked blocks included.
    #[arg(long, conflicts_with = "kilowatts")]
    modules: Option<usize>,
    /// With --mode number: the fewest modules of this rated power together.
    #[arg(long)]
    kilowatts: Option<f64>,
    /// With --mode number: what the array should be like.
    #[arg(long, value_enum, default_value = "compact")]
    way: FitWay,
    /// Lets modules lie one way alone, where the kit allows both.
    #[arg(long, value_enum)]
    lie: Option<Lie>,
    /// Goes on proving for so many seconds at most, and says what gap is left; as long again for what holds it back.
    #[arg(long, default_value_t = 30.0)]
    seconds: f64,
    /// Leaves out what holds it back.
    #[arg(long)]
    brief: bool,
    /// Writes the job with the array in place.
    #[arg(long, value_name = "PATH")]
    save: Option<PathBuf>,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum FitMode {
    /// Rows and columns in line; the grid may lie anywhere.
    OneGrid,
    /// The usual way, all that the kit allows: in one block or several, rows that slide and hook as far as the book asks.
    SlidingRows,
    /// Every other row half a module aside.
    HalfLapped,
    /// Rows that slide in one block, with the base rail where the kit allows it above a course line.
    OnCourses,
    /// Rectangles alone.
    WholeBlocks,
    /// The modules that are worth most, less what the flashing around them costs.
    Worth,
    /// A number of modules or a size in kilowatts.
    Number,
}

#[derive(Clone, Copy, ValueEnum)]
enum Lie {
    /// The long side along the eave.
    Landscape,
    /// The long side up the slope.
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
    /// The least length around it.
    Compact,
    /// The least cost of flashing around it.
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
                    (None, None) => anyhow::bail!("--mode number needs --modules or --kilowatts"),
                };
                let way = match self.way {
                    FitWay::Compact => Way::Compact,
                    FitWay::Cheapest => Way::Cheapest,
                };
                Mode::ToNumber(Target { size, way })
            }
        })
    }

    /// The faces that are named, or all that the kit allows.
    fn faces(&self, job: &Resolved) -> anyhow::Result<Vec<FaceId>> {
        let file = self.on.file.display();
        let known = || job.faces.iter().map(|f| f.name.as_str()).collect::<Vec<_>>().join(", ");
        if self.face.is_empty() {
            let steep = job.faces.iter().filter(|f| f.pitch >= job.kit.least_pitch);
            let faces: Vec<FaceId> = steep.map(|f| f.id).collect();
            if faces.is_empty() {
                let least = job.kit.least_pitch;
                anyhow::bail!(
                    "{file}: no face is as steep as the kit asks, {least}; the faces are {}",
                    known()
                );
            }
            return Ok(faces);
        }
        let mut faces = Vec::new();
        for name in &self.face {
            let before = faces.len();
            faces.extend(job.faces.iter().filter(|f| f.name == *name).map(|f| f.id));
            if faces.len() == before {
                anyhow::bail!("{file}: no face is named {name:?}; there are {}", known());
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
