//! The `import` and `export` commands: buildings in open formats.

use crate::raise::AllSides;
use crate::{Format, Outcome, json};
use anyhow::Context;
use chalkcourse_exchange::{Listing, find, list};
use chalkcourse_geometry::Units;
use chalkcourse_job::{
    GeoPoint, Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book, load, write_atomically,
};
use chalkcourse_plan::{area_text, evaluate};
use chalkcourse_sheets::Output;
use chalkcourse_words as words;
use clap::{Args, ValueEnum};
use std::fmt::Write;
use std::path::{Path, PathBuf};

/// Arguments of `import`.
#[derive(Args)]
pub(crate) struct Import {
    #[arg(help = words::commandline::HELP_A_GEOJSON_RFC_7946_OR.now())]
    from: PathBuf,
    #[arg(help = words::commandline::HELP_LISTS_THE_BUILDINGS_THAT_ARE.now())]
    #[arg(long)]
    list: bool,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    #[arg(help = words::commandline::HELP_WHICH_BUILDING_BY_ITS_ID.now())]
    #[arg(long, value_name = "ID")]
    building: Option<String>,
    #[arg(help = words::commandline::HELP_WHERE_THE_JOB_IS_WRITTEN.now())]
    #[arg(long, value_name = "PATH", required_unless_present = "list")]
    out: Option<PathBuf>,
    #[command(flatten, next_help_heading = "For a footprint")]
    sides: AllSides,
}

impl Import {
    pub(crate) fn run(self) -> anyhow::Result<Outcome> {
        if self.list {
            let listing = list(&self.from)?;
            let text = match self.format {
                Format::Text => listing_text(&listing),
                Format::Json => json(&listing)?,
            };
            return Ok(Outcome { text, out: self.out, stops: false });
        }
        let out = self.out.as_deref().context(words::commandline::NAME_THE_JOB_FILE)?;
        let how = self.sides.how()?;
        let house = find(&self.from, self.building.as_deref())?;
        let empty = Resolved::new(house.name.clone(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let edit = house.edit(&empty, &how).with_context(|| self.from.display().to_string())?;
        let job = apply(&empty, &edit)?;
        chalkcourse_job::save(&job, out)?;
        let told = house.told(job.units);
        let mut text = match self.format {
            Format::Text => Output::Roof.text(&job, &evaluate(&job))?,
            Format::Json => {
                let report = chalkcourse_plan::roof_report(&job, &evaluate(&job));
                return Ok(Outcome {
                    text: json(&Imported { roof: report, told })?,
                    out: None,
                    stops: false,
                });
            }
        };
        if !told.is_empty() {
            let _ = writeln!(text, "\n{}", words::commandline::ABOUT_THE_IMPORT);
        }
        for words in told {
            let _ = writeln!(text, "  {words}");
        }
        Ok(Outcome { text, out: None, stops: false })
    }
}

/// The imported roof, and what was not imported as it is in the file.
#[derive(serde::Serialize)]
struct Imported {
    roof: chalkcourse_plan::RoofReport,
    told: Vec<String>,
}

fn listing_text(listing: &Listing) -> String {
    let mut text = String::new();
    let mut file: Option<&Path> = None;
    for building in &listing.buildings {
        if file != Some(building.file.as_path()) {
            file = Some(&building.file);
            let _ = writeln!(text, "{}", building.file.display());
        }
        let faces = match (building.kind, building.faces) {
            ("footprint", _) => "footprint".to_owned(),
            (_, 1) => "1 face".to_owned(),
            (_, faces) => format!("{faces} faces"),
        };
        let name = if building.name == building.id { "" } else { building.name.as_str() };
        let area = area_text(building.plan_area_m2, Units::Metric);
        let _ = writeln!(text, "  {:<34} {faces:>10} {area:>12}  {name}", building.id);
        for words in &building.told {
            let _ = writeln!(text, "      {words}");
        }
    }
    for trouble in &listing.troubles {
        let _ = writeln!(text, "{}", words::formats::not_read(&trouble));
    }
    let _ = writeln!(text, "\n{}", words::formats::buildings(listing.buildings.len()));
    text
}

/// Arguments of `export`.
#[derive(Args)]
pub(crate) struct Export {
    #[arg(help = words::commandline::HELP_THE_JOB_FILE.now())]
    file: PathBuf,
    #[arg(help = words::commandline::HELP_AS_WHAT.now())]
    #[arg(long = "as", value_enum)]
    format: ExportFormat,
    #[arg(help = words::commandline::HELP_WHERE_IT_IS_WRITTEN.now())]
    #[arg(long, value_name = "PATH")]
    out: PathBuf,
    #[arg(help = words::commandline::HELP_FOR_GEOJSON_LATITUDE_AND_LONGITUDE.now())]
    #[arg(long, value_name = "LAT,LON", allow_hyphen_values = true)]
    at: Option<String>,
}

/// An export format.
#[derive(Clone, Copy, ValueEnum)]
enum ExportFormat {
    #[value(help = words::commandline::HELP_FACES_PENETRATIONS_AND_MODULES_IN.now())]
    Geojson,
    #[value(help = words::commandline::HELP_THE_PLAN_AS_A_DRAWING.now())]
    Svg,
    #[value(help = words::commandline::HELP_THE_PLAN_AND_EACH_FACE.now())]
    Build,
    #[value(help = words::commandline::HELP_THE_HOUSE_WITH_MODULES_AND.now())]
    Glb,
    #[value(help = words::commandline::HELP_WIRE_DIAGRAM.now())]
    WireDiagram,
    #[value(help = words::commandline::HELP_ONE_LINE.now())]
    OneLine,
    #[value(help = words::commandline::HELP_HANDOVER.now())]
    Handover,
    #[value(help = words::commandline::HELP_LABELS.now())]
    Labels,
}

impl Export {
    pub(crate) fn run(self) -> anyhow::Result<Outcome> {
        let mut job = load(&self.file)?;
        if let Some(at) = &self.at {
            job.site.place = Some(place(at)?);
        }
        let plan = evaluate(&job);
        let file = self.file.display();
        // A drawing by the ending of the file, else a sheet.
        let drawn = self.out.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("svg"));
        let bytes = match self.format {
            ExportFormat::Geojson => {
                let bytes = Output::GeoJson.bytes(&job, &plan);
                bytes.with_context(|| words::commandline::at_names_the_place(&file))?
            }
            ExportFormat::Svg => Output::PlanDrawing.bytes(&job, &plan).with_context(|| file.to_string())?,
            ExportFormat::Build => Output::BuildSheet.bytes(&job, &plan)?,
            ExportFormat::Glb => Output::Glb.bytes(&job, &plan).with_context(|| file.to_string())?,
            ExportFormat::WireDiagram if drawn => Output::WireDiagramDrawing.bytes(&job, &plan)?,
            ExportFormat::WireDiagram => Output::WireDiagram.bytes(&job, &plan)?,
            ExportFormat::Labels => Output::Labels.bytes(&job, &plan)?,
            ExportFormat::OneLine if drawn => Output::OneLineDrawing.bytes(&job, &plan)?,
            ExportFormat::OneLine => Output::OneLine.bytes(&job, &plan)?,
            ExportFormat::Handover => Output::Handover.bytes(&job, &plan)?,
        };
        write_atomically(&self.out, &bytes)?;
        let text = format!("{}\n", words::commandline::bytes_written(&self.out.display(), &bytes.len()));
        Ok(Outcome { text, out: None, stops: false })
    }
}

fn place(text: &str) -> anyhow::Result<GeoPoint> {
    let degrees = |words: &str| words.trim().parse::<f64>().ok();
    text.split_once(',')
        .and_then(|(latitude, longitude)| {
            Some(GeoPoint { latitude: degrees(latitude)?, longitude: degrees(longitude)? })
        })
        .filter(|place| place.is_on_globe())
        .with_context(|| words::commandline::cant_read_a_place(&format_args!("{text:?}")))
}
