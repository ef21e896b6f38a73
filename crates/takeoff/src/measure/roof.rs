//! What is counted or measured on the roof itself, apart from the array.

use super::{Measures, deck_under};
use crate::{Place, PlaceShape, Spot, band, clip};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Length, Rect, RoofFace, dvec2};
use chalkcourse_job::{Job, Measure, PenetrationKind, RoofScope};
use chalkcourse_layout::{Layout, OnFace, PlacedPenetration};
use std::sync::Arc;

/// Which faces are covered anew. A face whose outline is wrong has no area yet, and none is guessed.
pub(crate) fn covered(job: &Job, layout: &Layout) -> Vec<bool> {
    let carries =
        |index: usize| layout.blocks.iter().any(|block| block.face == index && !block.modules.is_empty());
    let chosen = |index: usize, id| match &job.order.roof.scope {
        RoofScope::Whole => true,
        RoofScope::ArrayFaces => carries(index),
        RoofScope::ArrayOnly => false,
        RoofScope::Faces(faces) => faces.contains(&id),
    };
    let faces = layout.roof.faces.iter().zip(&layout.faces).enumerate();
    faces.map(|(index, (face, placed))| face.sound && chosen(index, placed.id)).collect()
}

/// Measures that stay as they are while blocks move.
pub(crate) fn is_of_roof(measure: &Measure) -> bool {
    matches!(
        measure,
        Measure::Deck
            | Measure::TearOff
            | Measure::SingleUnderlayment
            | Measure::DoubleUnderlayment
            | Measure::AroundThrough
            | Measure::Edge(_)
            | Measure::SideWall
            | Measure::SideWallCourse
            | Measure::HeadWall
            | Measure::Through(_)
            | Measure::Pipe { .. }
            | Measure::CurbCourse
            | Measure::CurbWidth
    )
}

/// Measures of the roof or the job that hang on the array too.
pub(crate) fn is_of_deck(measure: &Measure) -> bool {
    matches!(measure, Measure::Shingled | Measure::LeakBarrier | Measure::Job | Measure::Person)
}

impl Measures<'_> {
    pub(super) fn measure_roof(&self, measure: &Measure, places: &mut Vec<Place>) {
        match measure {
            Measure::Deck => places.extend(self.faces(|_, face| face.slope_area)),
            Measure::TearOff => {
                let layers = f64::from(self.job.order.roof.layers);
                places.extend(self.faces(|_, face| face.slope_area * layers));
            }
            Measure::Shingled => places.extend(self.faces(|index, face| {
                let on_face = self.layout.blocks.iter().filter(|block| block.face == index);
                let arrays: f64 = on_face.flat_map(deck_under).map(|rect| rect.area()).sum();
                (face.slope_area - arrays).max(0.0)
            })),
            Measure::SingleUnderlayment => places.extend(self.faces(|_, face| self.if_double(face, false))),
            Measure::DoubleUnderlayment => places.extend(self.faces(|_, face| self.if_double(face, true))),
            Measure::LeakBarrier => self.leak_barrier(places),
            Measure::Edge(kind) => places.extend(
                self.edges(*kind)
                    .map(|(index, span)| self.on_face(index, Spot::Edge(*kind), span.length, along(span))),
            ),
            Measure::SideWall => places.extend(
                self.walls(true)
                    .map(|(index, span)| self.on_face(index, Spot::SideWall, span.length, along(span))),
            ),
            Measure::HeadWall => places.extend(
                self.walls(false)
                    .map(|(index, span)| self.on_face(index, Spot::HeadWall, span.length, along(span))),
            ),
            Measure::SideWallCourse => places.extend(self.walls(true).map(|(index, span)| {
                let (low, high) = (span.frame.0.y.min(span.frame.1.y), span.frame.0.y.max(span.frame.1.y));
                self.on_face(index, Spot::SideWall, self.courses(index, low, high), along(span))
            })),
            Measure::Through(kind) => {
                for (penetration, on) in self.penetrations().filter(|(p, _)| p.kind == *kind) {
                    let spot = PlaceShape::Point(on.bounds.centre());
                    places.push(through(self.layout, penetration, on, Spot::Through, 1.0, spot));
                }
            }
            Measure::Pipe { over_mm, to_mm } => {
                let pipes = self.penetrations().filter(|(p, _)| p.kind == PenetrationKind::PipeBoot);
                for (penetration, on) in pipes {
                    let across = Length::from_metres(on.bounds.size().max_element()).mm();
                    // A tenth of a millimetre beside a size is that size.
                    if across > f64::from(*over_mm) + 0.1 && across <= f64::from(*to_mm) + 0.1 {
                        let spot = PlaceShape::Point(on.bounds.centre());
                        places.push(through(self.layout, penetration, on, Spot::Through, 1.0, spot));
                    }
                }
            }
            Measure::AroundThrough => self.around_through(places),
            Measure::CurbCourse | Measure::CurbWidth => self.curbs(*measure == Measure::CurbCourse, places),
            Measure::Job if self.is_work() => places.push(whole(1.0)),
            Measure::Person if self.is_work() => {
                places.push(whole(self.job.kit.crews.iter().map(|crew| f64::from(crew.people)).sum()));
            }
            // Of blocks or of another part.
            _ => {}
        }
    }

    /// Whether there is anything to do at all.
    fn is_work(&self) -> bool {
        self.covered.contains(&true) || self.layout.blocks.iter().any(|block| !block.modules.is_empty())
    }

    fn on_face(&self, index: usize, spot: Spot, amount: f64, shape: PlaceShape) -> Place {
        let placed = self.layout.faces.get(index);
        Place {
            face: placed.map(|face| face.id),
            block: None,
            name: placed.map(|face| Arc::from(face.name.as_str())),
            spot,
            amount,
            shape,
        }
    }

    fn covered_faces(&self) -> impl Iterator<Item = (usize, &RoofFace)> {
        let faces = self.layout.roof.faces.iter().enumerate();
        faces.filter(|(index, _)| self.covered.get(*index).copied().unwrap_or(false))
    }

    /// Faces that are covered anew with an amount each; those with none left out.
    fn faces(&self, amount: impl Fn(usize, &RoofFace) -> f64) -> impl Iterator<Item = Place> {
        self.covered_faces().filter_map(move |(index, face)| {
            let amount = amount(index, face);
            let shape = || PlaceShape::Outlines(vec![face.frame.clone()]);
            (amount > 0.0).then(|| self.on_face(index, Spot::Face, amount, shape()))
        })
    }

    /// The area of a face if its slope asks for the one kind of underlayment.
    fn if_double(&self, face: &RoofFace, double: bool) -> f64 {
        let from = self.job.rule_book.roofing.as_ref().map(|roofing| roofing.single_underlayment_from.value);
        // A slope that was worked out from three heights may miss its pitch by a hair.
        let low = from.is_some_and(|from| face.plane.pitch.slope() < from.slope() - 1e-9);
        if low == double { face.slope_area } else { 0.0 }
    }

    /// Lines of a kind on the faces that are covered anew, one that two faces share once.
    fn edges(&self, kind: EdgeKind) -> impl Iterator<Item = (usize, &EdgeSpan)> {
        self.covered_faces()
            .flat_map(|(index, face)| face.edges.iter().map(move |span| (index, span)))
            .filter(move |(index, span)| {
                let told_before = span.neighbour.is_some_and(|other| {
                    other.face < *index && self.covered.get(other.face).copied().unwrap_or(false)
                });
                let shared = !matches!(kind, EdgeKind::Eave | EdgeKind::Rake | EdgeKind::WallLine);
                span.kind == kind && !(shared && told_before)
            })
    }

    /// Wall lines that run more up the slope than across it, or the others.
    fn walls(&self, up: bool) -> impl Iterator<Item = (usize, &EdgeSpan)> {
        self.edges(EdgeKind::WallLine).filter(move |(_, span)| {
            let run = (span.frame.1 - span.frame.0).abs();
            (run.y > run.x) == up
        })
    }

    /// Courses between two heights of a face, and one more.
    fn courses(&self, face: usize, low: f64, high: f64) -> f64 {
        self.layout.faces.get(face).map_or(0.0, |face| face.courses.crossed(low, high) as f64 + 1.0)
    }

    /// What comes through faces that are covered anew, each with its outline on its own face.
    fn penetrations(&self) -> impl Iterator<Item = (&PlacedPenetration, &OnFace)> {
        self.layout.penetrations.iter().filter_map(|penetration| {
            let home = penetration.home.filter(|home| self.covered.get(*home).copied().unwrap_or(false))?;
            Some((penetration, penetration.on_face(home)?))
        })
    }

    /// Along each eave as far up the slope as the rule book asks, without what the array's membrane covers.
    fn leak_barrier(&self, places: &mut Vec<Place>) {
        let Some(rule) = self.job.rule_book.roofing.as_ref().and_then(|r| r.ice_barrier.as_ref()) else {
            return;
        };
        let overhang = self.job.site.building.overhang.unwrap_or(Length::ZERO);
        let in_plan = (overhang + rule.inside_wall.value).metres();
        for (index, face) in self.covered_faces() {
            let pitch = face.plane.pitch;
            let mut depth = in_plan * pitch.slope_factor();
            if pitch.slope() >= rule.steep_from.value.slope() - 1e-9 {
                depth = depth.max(rule.steep_length.value.metres());
            }
            let eaves = face.edges.iter().filter(|span| span.kind == EdgeKind::Eave);
            let strips: Vec<Rect> = eaves
                .filter_map(|span| Rect::around([span.frame.0, span.frame.1]))
                .map(|line| Rect { min: line.min, max: line.max + dvec2(0.0, depth) })
                .collect();
            if strips.is_empty() {
                continue;
            }
            let left = band::without(&strips, &self.membrane_on(index));
            let (amount, shape) = clip::to_face(&left, &face.frame);
            if amount > 0.0 {
                places.push(self.on_face(index, Spot::LeakBarrier, amount, shape));
            }
        }
    }

    /// The strip around each penetration, on its face. One over two faces is told on the face of its middle.
    fn around_through(&self, places: &mut Vec<Place>) {
        let margin = self.job.kit.flashing.through.metres();
        for (penetration, on) in self.penetrations() {
            let Some(face) = self.layout.roof.faces.get(on.face) else { continue };
            let strip = band::without(&[on.bounds.grown(margin)], &[on.bounds]);
            let (amount, shape) = clip::to_face(&strip, &face.frame);
            if amount > 0.0 {
                places.push(through(self.layout, penetration, on, Spot::AroundThrough, amount, shape));
            }
        }
    }

    /// Sides of chimneys and skylights: courses beside them, or widths below and above.
    fn curbs(&self, courses: bool, places: &mut Vec<Place>) {
        let curbs = |kind| matches!(kind, PenetrationKind::Chimney | PenetrationKind::Skylight);
        for (penetration, on) in self.penetrations().filter(|(p, _)| curbs(p.kind)) {
            let Rect { min, max } = on.bounds;
            let corner = |left: bool, low: bool| -> DVec2 {
                dvec2(if left { min.x } else { max.x }, if low { min.y } else { max.y })
            };
            let mut put = |spot, amount, from, to| {
                let shape = PlaceShape::Path(vec![from, to]);
                places.push(through(self.layout, penetration, on, spot, amount, shape));
            };
            if courses {
                let crossed = self.courses(on.face, min.y, max.y);
                put(Spot::ThroughLeft, crossed, corner(true, true), corner(true, false));
                put(Spot::ThroughRight, crossed, corner(false, true), corner(false, false));
            } else {
                put(Spot::ThroughLow, max.x - min.x, corner(true, true), corner(false, true));
                put(Spot::ThroughHigh, max.x - min.x, corner(true, false), corner(false, false));
            }
        }
    }
}

fn along(span: &EdgeSpan) -> PlaceShape {
    PlaceShape::Path(vec![span.frame.0, span.frame.1])
}

fn through(
    layout: &Layout,
    penetration: &PlacedPenetration,
    on: &OnFace,
    spot: Spot,
    amount: f64,
    shape: PlaceShape,
) -> Place {
    Place {
        face: layout.faces.get(on.face).map(|face| face.id),
        block: None,
        name: Some(Arc::from(penetration.name.as_str())),
        spot,
        amount,
        shape,
    }
}

fn whole(amount: f64) -> Place {
    Place { face: None, block: None, name: None, spot: Spot::Job, amount, shape: PlaceShape::Whole }
}
