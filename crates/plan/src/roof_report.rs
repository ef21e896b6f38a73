//! Roof measurements for roofers: faces, edges by kind, squares, heights.

use crate::{Plan, Standing, area_text, standing};
use chalkcourse_geometry::{EdgeKind, Length, Polygon, RoofLine};
use chalkcourse_job::Resolved;
use chalkcourse_telling::order::CAUTION;
use chalkcourse_words as words;
use schemars::JsonSchema;
use serde::Serialize;
use std::fmt::Write;

/// A roof as data.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RoofReport {
    /// Always "chalkcourse-roof".
    pub format: &'static str,
    /// Version of this format.
    pub version: u32,
    /// Name of the job.
    pub job: String,
    /// Caution.
    pub caution: &'static str,
    /// Where the job stands.
    #[serde(flatten)]
    pub standing: Standing,
    /// Area covered by the roof, overlaps counted once, m²; accurate to a part in a million.
    pub footprint_m2: f64,
    /// Plan area of all faces, m². More than the footprint where faces overlap in plan.
    pub plan_area_m2: f64,
    /// Area on the slope, m².
    pub slope_area_m2: f64,
    /// Area on the slope in squares of 100 ft², without waste.
    pub squares: f64,
    /// Least and greatest height of the ridges, metres above the job's height datum.
    pub ridge_m: Option<Heights>,
    /// Least and greatest height of the eaves, likewise.
    pub eave_m: Option<Heights>,
    /// Faces in the order of the job.
    pub faces: Vec<RoofFaceRow>,
    /// Edges by kind, each line once.
    pub edges: Vec<EdgeRow>,
    /// Number of defects of the roof; the findings describe them.
    pub problems: usize,
}

/// A range of heights.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Heights {
    /// The lowest, metres.
    pub least: f64,
    /// The highest, metres.
    pub most: f64,
}

/// A face in the roof report.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RoofFaceRow {
    /// Its number in the job.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// Whether its outline is sound; otherwise it has no area.
    pub sound: bool,
    /// Rise in 12.
    pub rise_in_12: f64,
    /// The pitch as an angle above level.
    pub pitch_degrees: f64,
    /// The direction of water runoff, degrees clockwise from north.
    pub azimuth_degrees: f64,
    /// In m².
    pub plan_area_m2: f64,
    /// In m², on the slope.
    pub slope_area_m2: f64,
    /// On the slope, in squares of 100 ft².
    pub squares: f64,
    /// Height of its lowest and its highest corner, metres.
    pub heights_m: Option<Heights>,
}

/// All edges of one kind.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct EdgeRow {
    /// Their kind.
    pub kind: EdgeKind,
    /// Total true length, metres.
    pub length_m: f64,
    /// The individual edges.
    pub lines: Vec<LineRow>,
}

/// One line of the roof.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LineRow {
    /// True length, metres.
    pub length_m: f64,
    /// Start and end: x east, y north, height, metres.
    pub ends_m: [[f64; 3]; 2],
    /// The face that it belongs to.
    pub face: u32,
    /// The face on the other side.
    pub other: Option<u32>,
}

/// A square of roofing, m².
const SQUARE: f64 = 100.0 * 0.3048 * 0.3048;

fn heights(all: impl Iterator<Item = f64>) -> Option<Heights> {
    all.map(|h| Heights { least: h, most: h })
        .reduce(|a, b| Heights { least: a.least.min(b.least), most: a.most.max(b.most) })
}

/// The roof report of a job.
pub fn roof_report(job: &Resolved, plan: &Plan) -> RoofReport {
    let roof = &plan.layout.roof;
    let lines = roof.lines();
    let of = |kind: EdgeKind| lines.iter().filter(move |line| line.kind == kind);
    let ends = |kind: EdgeKind| heights(of(kind).flat_map(|line| [line.space.0.z, line.space.1.z]));
    let sound: Vec<Polygon> =
        roof.faces.iter().filter(|face| face.sound).map(|face| face.plan.clone()).collect();
    let faces = job.faces.iter().zip(&roof.faces).map(|(face, on_roof)| RoofFaceRow {
        id: face.id.0,
        name: face.name.clone(),
        sound: on_roof.sound,
        rise_in_12: face.pitch.rise_in_12(),
        pitch_degrees: face.pitch.degrees(),
        azimuth_degrees: face.downslope.degrees(),
        plan_area_m2: on_roof.plan_area,
        slope_area_m2: on_roof.slope_area,
        squares: on_roof.slope_area / SQUARE,
        heights_m: heights(on_roof.plan.outer.iter().map(|&p| on_roof.plane.height_at(p)))
            .filter(|_| on_roof.sound),
    });
    let id = |index: usize| job.faces.get(index).map_or(0, |face| face.id.0);
    let row = |line: &RoofLine| LineRow {
        length_m: line.length,
        ends_m: [line.space.0.to_array(), line.space.1.to_array()],
        face: id(line.face),
        other: line.other.map(id),
    };
    let edges = EdgeKind::ALL.into_iter().filter_map(|kind| {
        let lines: Vec<LineRow> = of(kind).map(row).collect();
        let length_m = lines.iter().map(|line| line.length_m).sum();
        (!lines.is_empty()).then_some(EdgeRow { kind, length_m, lines })
    });
    RoofReport {
        format: "chalkcourse-roof",
        version: 1,
        job: job.name.clone(),
        caution: CAUTION.now(),
        standing: standing(job, plan),
        // An empty sum of floats is −0.
        footprint_m2: Polygon::union(&sound).iter().map(Polygon::area).sum::<f64>() + 0.0,
        plan_area_m2: roof.plan_area() + 0.0,
        slope_area_m2: roof.slope_area() + 0.0,
        squares: roof.slope_area() / SQUARE + 0.0,
        ridge_m: ends(EdgeKind::Ridge),
        eave_m: ends(EdgeKind::Eave),
        faces: faces.collect(),
        edges: edges.collect(),
        problems: roof.problems.len(),
    }
}

/// The roof report as text.
pub fn roof_text(job: &Resolved, plan: &Plan) -> String {
    let report = roof_report(job, plan);
    let length = |metres: f64| Length::from_metres(metres).show(job.units);
    let mut text = words::report::roof(&report.job);
    text.push_str(&report.standing.head());
    text.push('\n');
    for (words, said) in [
        (words::common::ON_THE_SLOPE.now(), area_text(report.slope_area_m2, job.units)),
        (words::report::SQUARES_100_FT_NO_WASTE.now(), format!("{:.2}", report.squares)),
        (words::common::IN_PLAN.now(), area_text(report.plan_area_m2, job.units)),
        (words::common::FOOTPRINT_EACH_PLACE_ONCE.now(), area_text(report.footprint_m2, job.units)),
        (words::common::RIDGE_HEIGHT.now(), heights_text(report.ridge_m, job)),
        (words::common::EAVE_HEIGHT.now(), heights_text(report.eave_m, job)),
    ] {
        let _ = writeln!(text, "  {words:<28} {said:>20}");
    }
    text.push_str(words::report::FACES_PITCH_FALLS_IN_PLAN.now());
    for (row, face) in report.faces.iter().zip(&job.faces) {
        let state = if row.sound { "" } else { words::report::OUTLINE_IS_WRONG_SEE_THE.now() };
        let _ = writeln!(
            text,
            "  {:<16} {:>8}  {:<10} {:>13} {:>15} {:>8.2}{state}",
            row.name,
            face.pitch.to_string(),
            face.downslope.to_string(),
            area_text(row.plan_area_m2, job.units),
            area_text(row.slope_area_m2, job.units),
            row.squares,
        );
    }
    text.push_str(words::report::EDGES_TRUE_LENGTH.now());
    for row in &report.edges {
        let _ = writeln!(text, "  {:<16} {:>14}", row.kind.name(), length(row.length_m));
    }
    if report.problems > 0 {
        let _ = writeln!(text, "{}", words::report::the_roof_does_not_hold(report.problems));
    }
    let _ = writeln!(text, "{}", words::report::heights_are_above_the_level(&report.caution));
    text
}

/// "9' to 12' 6"", or a single height if both display the same.
pub fn heights_text(heights: Option<Heights>, job: &Resolved) -> String {
    let Some(Heights { least, most }) = heights else { return words::common::NONE.now().to_owned() };
    let show = |metres: f64| Length::from_metres(metres).show(job.units);
    let (least, most) = (show(least), show(most));
    if least == most { least } else { words::report::to(&least, &most) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Ends, RaiseAs, evaluate, raise_roof};
    use chalkcourse_geometry::{Pitch, dvec2};
    use chalkcourse_job::{apply, builtin_kit, builtin_prices, builtin_rule_book};

    const FOOT: f64 = 0.3048;

    fn report(ends: Ends) -> RoofReport {
        let job = Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let corners = [(0.0, 0.0), (60.0, 0.0), (60.0, 30.0), (0.0, 30.0)];
        let outline = Polygon::new(corners.map(|(x, y)| dvec2(x, y) * FOOT).to_vec());
        let pitch = Pitch::from_rise_in_12(6.0).unwrap();
        let how = RaiseAs { pitch, eave: Length::from_feet(9.0), overhang: Length::ZERO, ends };
        let job = apply(&job, &raise_roof(&job, &outline, &how).unwrap()).unwrap();
        roof_report(&job, &evaluate(&job))
    }

    fn feet(report: &RoofReport, kind: EdgeKind) -> f64 {
        report.edges.iter().find(|row| row.kind == kind).map_or(0.0, |row| row.length_m / FOOT)
    }

    /// 60 × 30 ft at 6:12 (closed forms; slope factor and hip factor as in framing-square tables): 2,012.46 ft², 20.12 squares either
    /// way; a rake is 15 ft × 1.1180 = 16.771 ft, a hip 15 ft × 1.5 = 22.50 ft; the ridge 7.5 ft over an eave at 9 ft.
    #[test]
    fn gable_and_hip_on_60_by_30() {
        let gable = report(Ends::Gable);
        let hip = report(Ends::Hip);
        for roof in [&gable, &hip] {
            assert!((roof.slope_area_m2 / FOOT.powi(2) - 2_012.461).abs() < 0.001);
            assert!((roof.squares - 20.124_61).abs() < 1e-4);
            assert!((roof.footprint_m2 / FOOT.powi(2) - 1_800.0).abs() < 1e-3);
            assert!((roof.plan_area_m2 / FOOT.powi(2) - 1_800.0).abs() < 1e-6);
            let (ridge, eave) = (roof.ridge_m.unwrap(), roof.eave_m.unwrap());
            assert!((ridge.least / FOOT - 16.5).abs() < 1e-6 && (ridge.most / FOOT - 16.5).abs() < 1e-6);
            assert!((eave.least / FOOT - 9.0).abs() < 1e-6 && (eave.most / FOOT - 9.0).abs() < 1e-6);
            // Equal pitch: slope area is plan area × slope factor.
            assert!((roof.slope_area_m2 / (roof.plan_area_m2 * 1.25f64.sqrt()) - 1.0).abs() < 1e-12);
            assert_eq!(roof.problems, 0);
        }
        assert!((feet(&gable, EdgeKind::Rake) - 4.0 * 16.771).abs() < 0.002);
        assert!((feet(&gable, EdgeKind::Ridge) - 60.0).abs() < 1e-6);
        assert!((feet(&gable, EdgeKind::Eave) - 120.0).abs() < 1e-6);
        assert!((feet(&hip, EdgeKind::Hip) - 4.0 * 22.50).abs() < 1e-6);
        assert!((feet(&hip, EdgeKind::Ridge) - 30.0).abs() < 1e-6);
        assert!((feet(&hip, EdgeKind::Eave) - 180.0).abs() < 1e-6);
        assert_eq!((gable.faces.len(), hip.faces.len()), (2, 4));
        let whole: f64 = hip.faces.iter().map(|face| face.squares).sum();
        assert!((whole - hip.squares).abs() < 1e-9);
    }

    #[test]
    fn the_report_of_a_job_without_a_roof_is_empty() {
        let job = Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let plan = evaluate(&job);
        let report = roof_report(&job, &plan);
        assert_eq!((report.squares, report.footprint_m2, report.ridge_m), (0.0, 0.0, None));
        assert!(roof_text(&job, &plan).contains("none"));
    }
}
