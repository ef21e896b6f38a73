//! The `raise` command: a job from a footprint.

use crate::Outcome;
use anyhow::{Context, bail};
use chalkcourse_exchange::outlines_from_geojson;
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{Length, Pitch, Units};
use chalkcourse_job::{
    Edit, PartSide, Resolved, RoofPart, apply, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_plan::{Ends, RaiseAs, evaluate, part_over};
use chalkcourse_words as words;
use std::path::Path;

/// The roof settings for all sides of a footprint.
#[derive(clap::Args)]
pub(crate) struct AllSides {
    #[arg(help = words::commandline::HELP_PITCH_OF_ALL_SLOPED_SIDES.now())]
    #[arg(long, default_value = "6:12")]
    pitch: String,
    #[arg(help = words::commandline::HELP_HEIGHT_OF_THE_ROOF_OVER.now())]
    #[arg(long, default_value = "9 ft")]
    eave: String,
    #[arg(help = words::commandline::HELP_HOW_FAR_THE_ROOF_REACHES.now())]
    #[arg(long, default_value = "0 ft")]
    overhang: String,
    #[arg(help = words::commandline::HELP_GABLES_AT_THE_SHORT_ENDS.now())]
    #[arg(long)]
    gables: bool,
}

impl AllSides {
    /// The settings, parsed.
    pub(crate) fn how(&self) -> anyhow::Result<RaiseAs> {
        let length = |text: &str| Length::parse(text, Units::FeetInches);
        Ok(RaiseAs {
            pitch: Pitch::parse(&self.pitch)?,
            eave: length(&self.eave)?,
            overhang: length(&self.overhang)?,
            ends: if self.gables { Ends::Gable } else { Ends::Hip },
        })
    }
}

/// Writes the job raised from one outline of a GeoJSON file, and reports it.
pub(crate) fn raise(
    footprint: &Path,
    out: &Path,
    how: &RaiseAs,
    sides: &[String],
    name: Option<&str>,
) -> anyhow::Result<Outcome> {
    let shown = footprint.display();
    let text =
        std::fs::read_to_string(footprint).with_context(|| words::commandline::cant_read_it(&shown))?;
    let outlines = outlines_from_geojson(&text).with_context(|| shown.to_string())?;
    let chosen = match name {
        None => outlines.first(),
        Some(name) => outlines.iter().find(|outline| outline.name == name),
    };
    let Some(chosen) = chosen else {
        let known: Vec<&str> = outlines.iter().map(|outline| outline.name.as_str()).collect();
        let name = name.unwrap_or_default();
        bail!(
            "{}",
            words::commandline::no_outline_is_named(&shown, &format_args!("{name:?}"), &known.join(", "))
        );
    };
    let empty = Resolved::new(chosen.name.clone(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let outline = chosen.outline.clone().with_context(|| shown.to_string())?;
    let mut part = part_over(&empty, &outline, how);
    for text in sides {
        part = with_side(&part, text).with_context(|| format!("--side {text:?}"))?;
    }
    let mut job = apply(&empty, &Edit::PutPart(part)).with_context(|| format!("{shown}, {}", chosen.name))?;
    job.site.place = Some(chosen.place);
    chalkcourse_job::save(&job, out)?;
    let plan = evaluate(&job);
    Ok(Outcome { text: chalkcourse_sheets::Output::Plan.text(&job, &plan)?, out: None, stops: false })
}

/// A part with one side changed as in `3=8:12,eave=10 ft`.
fn with_side(part: &RoofPart, text: &str) -> anyhow::Result<RoofPart> {
    let form = words::commandline::WRITE_A_SIDE_AS;
    let (place, what) = text.split_once('=').context(form)?;
    let number = |text: &str| text.trim().parse::<usize>().ok().and_then(|n| n.checked_sub(1)).context(form);
    let at = match place.split_once('.') {
        None => SideRef { ring: 0, side: number(place)? },
        Some((ring, side)) => SideRef { ring: number(ring)?, side: number(side)? },
    };
    let mut side: PartSide = *part.side(at).with_context(|| {
        let counts: Vec<String> = part.sides.iter().map(|ring| ring.len().to_string()).collect();
        words::commandline::no_such_side(&counts.join(", "))
    })?;
    for word in what.split(',').map(str::trim) {
        let length = |text: &str| Length::parse(text, Units::FeetInches);
        match word.split_once('=') {
            Some(("eave", height)) => side.eave_height = Some(length(height)?),
            Some(("overhang", reach)) => side.overhang = length(reach)?,
            Some((other, _)) => {
                bail!("{}", words::commandline::no_measure_of_a_side(&format_args!("{other:?}"), &form))
            }
            None if word == "gable" => side.treatment = Treatment::Gable,
            None if word == "wall" => side.treatment = Treatment::Wall,
            None => side.treatment = Treatment::Slope(Pitch::parse(word)?),
        }
    }
    part.with_side(at, |_| side).context(form)
}
