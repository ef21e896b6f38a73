//! Eaves and rakes of a shingle roof have a drip edge.
//!
//! Source: IRC R905.2.8.5 (2018): a drip edge at eaves and rake edges of shingle roofs.

use super::{missing, source};
use crate::array::moves::ends;
use crate::case::Case;
use crate::finding::{Finding, Fix, Place, Severity};
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::{DripEdge, Edit, Site};
use chalkcourse_words::{of_data, pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "drip-edge",
    title: say("Eaves and rakes have a drip edge", "Aleros y bordes inclinados tienen goterón"),
    reason: say(
        "Without it water runs back under the shingles and rots the edge of the deck.",
        "Sin él el agua regresa por debajo de las tejas y pudre el borde del entablado.",
    ),
    sketch: &[
        Stroke::Edge(&[[34.0, 36.0], [94.0, 52.0]]),
        Stroke::Edge(&[[34.0, 28.0], [94.0, 44.0]]),
        Stroke::Edge(&[[34.0, 28.0], [34.0, 36.0]]),
        Stroke::Edge(&[[70.0, 47.0], [30.0, 37.0], [30.0, 20.0], [25.0, 16.0]]),
        Stroke::Way([24.0, 14.0], [24.0, 4.0]),
    ],
    source: |job| {
        source(job, |roofing| {
            roofing
                .drip_edge
                .as_ref()
                .map_or(pick("not asked by this book", "no lo pide este libro"), |limit| &limit.source)
        })
    },
    missing: |job| {
        missing(job).or_else(|| {
            let asked = job.rule_book.roofing.as_ref().is_some_and(|roofing| roofing.drip_edge.is_some());
            if !asked {
                return Some(pick("this book does not ask for it", "este libro no lo pide").into());
            }
            let unknown = job.site.building.drip_edge.is_none();
            unknown.then(|| {
                pick("the job does not say whether there is a drip edge", "la obra no dice si hay goterón")
                    .into()
            })
        })
    },
    run: Run::Whole(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let asked = case.book.roofing.as_ref().and_then(|roofing| roofing.drip_edge.as_ref());
    let Some(asked) = asked.filter(|_| case.job.site.building.drip_edge == Some(DripEdge::Absent)) else {
        return;
    };
    let mut site: Site = case.job.site.clone();
    site.building.drip_edge = Some(DripEdge::WithThisJob);
    let edges = case.layout.roof.faces.iter().flat_map(|face| &face.edges);
    let bare = edges.filter(|span| matches!(span.kind, EdgeKind::Eave | EdgeKind::Rake));
    findings.push(Finding {
        message: tell!(
            "The roof has no drip edge at its eaves and rakes. {}",
            "El techo no tiene goterón en sus aleros y bordes inclinados. {}",
            of_data(&asked.value)
        ),
        place: Place { shape: ends(bare), ..Place::default() },
        measured: pick("none", "ninguno").into(),
        required: pick("a drip edge at eaves and rakes", "goterón en aleros y bordes inclinados").into(),
        source: asked.source.clone(),
        fix: Some(Fix {
            label: pick("Put drip edge on with this job", "Poner goterón con esta obra").into(),
            edit: Edit::SetSite(site),
        }),
        ..Finding::of(RULE.code, Severity::Stop, "drip-edge/roof".into())
    });
}

#[cfg(test)]
mod tests {
    use crate::testing::{fixed, gable_job, of, one};
    use chalkcourse_job::DripEdge;

    /// IRC R905.2.8.5 (2018): there is one, or there is none; no limit lies between.
    #[test]
    fn there_planned_and_absent() {
        let mut job = gable_job();
        assert!(of(&job, "drip-edge").is_empty(), "not known, not checked");
        assert!(crate::checked(&job).iter().any(|line| line.code == "drip-edge" && !line.on));
        for fine in [DripEdge::InPlace, DripEdge::WithThisJob] {
            job.site.building.drip_edge = Some(fine);
            assert!(of(&job, "drip-edge").is_empty());
        }
        job.site.building.drip_edge = Some(DripEdge::Absent);
        let bare = one(&job, "drip-edge");
        // Two eaves and four rakes.
        assert_eq!(bare.place.shape.len(), 12);
        fixed(&job, &bare);
    }
}
