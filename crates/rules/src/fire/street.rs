//! One pathway lies on a side of the roof that faces a street or driveway.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1.1 (2018 on). A pathway counts for a street if its plane falls towards it, within 45°, or
//! if it runs within 10 ft (in plan) of the roof's edge on that side: an interpretation, since the code does not define the side.

use super::pathway::{alone, straddling};
use super::{exempt, has_array, source};
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::{BesideView, WholeView};
use crate::way::RemovedModules;
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Quantity, Required, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "fire-street",
    sketch: &[
        Stroke::Edge(&[[2.0, 4.0], [98.0, 4.0]]),
        Stroke::Roof(&[[8.0, 18.0], [92.0, 18.0], [92.0, 54.0], [8.0, 54.0]]),
        Stroke::Free(&[[8.0, 18.0], [24.0, 18.0], [24.0, 54.0], [8.0, 54.0]]),
        Stroke::Way([16.0, 6.0], [16.0, 50.0]),
        Stroke::Module([36.0, 24.0, 24.0, 14.0]),
        Stroke::Module([60.0, 24.0, 24.0, 14.0]),
    ],
    source: |job| source(job, |fire| &fire.street_side.source),
    missing: |job| {
        exempt(job).or_else(|| {
            let asked = job.rule_book.fire_access.as_ref().is_some_and(|fire| fire.street_side.value);
            if !asked {
                return Some(WhyNot::LeftOut);
            }
            let unknown = job.site.building.street_sides.is_empty();
            unknown.then(|| WhyNot::NotKnown(vec![Unknown::Street]))
        })
    },
    run: Run::Whole(run),
};

/// Ten feet.
const NEAR: f64 = 3.048;

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &view.book().fire_access else { return };
    if !has_array(view, fire) {
        return;
    }
    let streets: Vec<DVec2> = view.site().building.street_sides.iter().map(|side| side.unit()).collect();
    let faces = &view.layout().roof.faces;
    let edge = |street: DVec2| {
        let corners = faces.iter().filter(|face| face.sound).flat_map(|face| face.plan.outer.iter());
        corners.map(|p| p.dot(street)).fold(f64::NEG_INFINITY, f64::max)
    };
    let edges: Vec<(DVec2, f64)> = streets.into_iter().map(|street| (street, edge(street))).collect();
    let serves = |plane: BesideView<'_>| {
        let downslope = plane.own.face.plane.downslope.unit();
        let falls =
            edges.iter().any(|(street, _)| downslope.dot(*street) >= std::f64::consts::FRAC_1_SQRT_2 - 1e-6);
        let near = |outline: &[DVec2]| {
            edges.iter().any(|(street, edge)| {
                let reach = outline.iter().map(|p| p.dot(*street)).fold(f64::NEG_INFINITY, f64::max);
                reach >= edge - NEAR
            })
        };
        let none = RemovedModules::new();
        let own = alone(plane.own, fire, &none);
        let beside = if own.is_empty() { straddling(plane, fire, &none) } else { own };
        beside.iter().any(|path| falls || near(&path.outline))
    };
    if !view.faces().any(serves) {
        findings.push(Finding {
            measured: Quantity::Count(0),
            required: Required::AtLeast(Quantity::Count(1)),
            source: Authority::of(&fire.street_side.source),
            ..Finding::of(RULE.code, Severity::Stop, Subject::Whole, Facts::FireStreet)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, gable_job, of, one};
    use chalkcourse_geometry::Azimuth;

    #[test]
    fn to_the_street_along_it_and_away_from_it() {
        let mut job = gable_job();
        assert!(of(&job, "fire-street").is_empty(), "not known, not checked");
        job.site.building.street_sides = vec![Azimuth::SOUTH];
        assert!(of(&job, "fire-street").is_empty());
        // South full: the only pathway is on the north side
        job.blocks = vec![block(3, 1, (0.5, 1.0), 2, 6)];
        for corner in [1, 2] {
            job.faces[0].outline.outer[corner].x = 11.2;
        }
        one(&job, "fire-street");
        // a street in the west: the north plane has a pathway along its west rake
        job.site.building.street_sides = vec![Azimuth::WEST];
        assert!(of(&job, "fire-street").is_empty());
    }
}
