//! Pathways and wind in reports: what the rules found about them, as text and as data.

use crate::Plan;
use chalkcourse_geometry::Length;
use chalkcourse_job::Resolved;
use chalkcourse_words as words;
use schemars::JsonSchema;
use serde::Serialize;
use std::fmt::Write;

/// A fire service pathway in a report.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PathwayReport {
    /// Numbers of the faces that it runs on: one, or two that it straddles.
    pub faces: Vec<u32>,
    /// Its width in plan, metres.
    pub width_m: f64,
    /// Whether it runs straight up the slope.
    pub straight: bool,
    /// For a straight pathway its corners in plan, metres; for a winding one the area in which its centre line may run.
    pub plan: Vec<[f64; 2]>,
}

/// Wind suction in a report.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WindReport {
    /// What the pressures are based on.
    pub about: String,
    /// Faces with their zones.
    pub faces: Vec<WindFaceReport>,
    /// Why faces are missing.
    pub not_worked_out: Vec<String>,
}

/// The zones of a face in a report.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WindFaceReport {
    /// The number of the face.
    pub face: u32,
    /// Which figure.
    pub figure: String,
    /// Its zones, mildest first: name, outward coefficient, outward pressure in pounds per square foot at strength
    /// level.
    pub zones: Vec<(&'static str, f64, f64)>,
}

pub(crate) fn pathway_reports(job: &Resolved, plan: &Plan) -> Vec<PathwayReport> {
    let id = |index: &usize| plan.layout.faces.get(*index).map(|face| face.id.0);
    chalkcourse_rules::pathways(job, &plan.layout)
        .into_iter()
        .map(|path| PathwayReport {
            faces: path.faces.iter().filter_map(id).collect(),
            width_m: path.width,
            straight: path.straight,
            plan: path.outline.iter().map(|p| p.to_array()).collect(),
        })
        .collect()
}

pub(crate) fn wind_report(job: &Resolved, plan: &Plan) -> WindReport {
    let drawn = chalkcourse_rules::wind::drawn(job, &plan.layout);
    let faces = drawn.faces.iter().filter_map(|face| {
        let zones = face.zones.iter().map(|zone| (zone.zone.name(), zone.gcp, zone.psf)).collect();
        let figure = chalkcourse_telling::wind::figure(face.figure);
        Some(WindFaceReport { face: plan.layout.faces.get(face.face)?.id.0, figure, zones })
    });
    WindReport {
        about: chalkcourse_telling::wind::about(&drawn),
        faces: faces.collect(),
        not_worked_out: chalkcourse_telling::wind::not_drawn(&drawn),
    }
}

/// Pathways and wind as text.
pub(crate) fn room_and_wind_text(job: &Resolved, plan: &Plan) -> String {
    let name = |index: &usize| plan.layout.faces.get(*index).map_or("", |face| face.name.as_str());
    let mut text = words::report::PATHWAYS_FOR_THE_FIRE_SERVICE.now().to_owned();
    let paths = chalkcourse_rules::pathways(job, &plan.layout);
    if paths.is_empty() {
        text.push_str(words::report::NONE_FOUND.now());
    }
    for path in &paths {
        let on: Vec<&str> = path.faces.iter().map(name).collect();
        let way = if path.straight {
            words::report::STRAIGHT_UP_THE_SLOPE.now()
        } else {
            words::report::WINDING.now()
        };
        let width = Length::from_metres(path.width).show(job.units);
        let _ = writeln!(
            text,
            "{}",
            words::report::wide_in_plan(&on.join(words::common::AND.now()), &width, &way)
        );
    }
    let wind = chalkcourse_rules::wind::drawn(job, &plan.layout);
    text.push_str(words::report::WIND_SUCTION_A_SCREENING.now());
    if wind.from.is_ok() {
        let _ = writeln!(text, "  {}", chalkcourse_telling::wind::about(&wind));
    }
    for face in &wind.faces {
        let zones: Vec<String> = face
            .zones
            .iter()
            .map(|zone| words::report::zone_psf(&zone.zone.name(), &format_args!("{:.1}", zone.psf)))
            .collect();
        let _ = writeln!(
            text,
            "  {}: {} ({})",
            name(&face.face),
            zones.join(", "),
            chalkcourse_telling::wind::figure(face.figure)
        );
    }
    if let Some(path) = chalkcourse_telling::wind::load_path(&job.kit) {
        let _ = writeln!(text, "  {path}");
    }
    for refused in chalkcourse_telling::wind::not_drawn(&wind) {
        let _ = writeln!(text, "{}", words::report::not_worked_out(&refused));
    }
    text.push('\n');
    text
}
