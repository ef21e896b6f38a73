//! Measures of the roof itself, apart from the array.

use super::{Measures, NEAR, chimney, deck_under};
use crate::{MeasuredPlace, MeasuredShape, Spot, band, clip};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Length, RoofFace};
use chalkcourse_job::{Measure, PenetrationKind, Resolved, RoofKind, RoofScope};
use chalkcourse_layout::{Layout, OnFace, PlacedPenetration};
use std::sync::Arc;

/// Which faces are re-shingled. A face with an invalid outline has no area yet, and none is guessed; a cricket is covered in
/// metal.
pub(crate) fn covered(job: &Resolved, layout: &Layout) -> Vec<bool> {
    let carries =
        |index: usize| layout.blocks.iter().any(|block| block.face == index && !block.modules.is_empty());
    let chosen = |index: usize, id| match &job.order.roof.scope {
        RoofScope::Whole => true,
        RoofScope::ArrayFaces => carries(index),
        RoofScope::ArrayOnly => false,
        RoofScope::Faces(faces) => faces.contains(&id),
    };
    let crickets = chimney::cricket_faces(job);
    let faces = layout.roof.faces.iter().zip(&layout.faces).enumerate();
    let shingled = |index: usize| !crickets.get(index).copied().unwrap_or(false);
    faces.map(|(index, (face, placed))| face.sound && shingled(index) && chosen(index, placed.id)).collect()
}

/// Measures that do not change while blocks move.
pub(crate) fn is_of_roof(measure: &Measure) -> bool {
    matches!(
        measure,
        Measure::Deck
            | Measure::TearOff
            | Measure::LeakBarrier
            | Measure::AroundThrough
            | Measure::Edge(_)
            | Measure::SideWall
            | Measure::SideWallCourse
            | Measure::HeadWall
            | Measure::Through(_)
            | Measure::Pipe { .. }
            | Measure::CurbCourse
            | Measure::CurbWidth
            | Measure::KickOut
            | Measure::Chimney(_)
            | Measure::Cricket(_)
    )
}

/// Measures of the roof or the job that depend on the array too.
pub(crate) fn is_of_deck(measure: &Measure) -> bool {
    matches!(
        measure,
        Measure::Shingled
            | Measure::SingleUnderlayment
            | Measure::DoubleUnderlayment
            | Measure::Job
            | Measure::Person
            | Measure::PersonOnRoof
    )
}

impl Measures<'_> {
    pub(super) fn measure_roof(&self, measure: &Measure, places: &mut Vec<MeasuredPlace>) {
        match measure {
            Measure::Deck => places.extend(self.faces(|_, face| face.slope_area)),
            Measure::TearOff => {
                let layers = f64::from(self.job.order.roof.layers);
                places.extend(self.faces(|_, face| face.slope_area * layers));
            }
            Measure::Shingled => places.extend(self.faces(|index, face| {
                let on_face = self.layout.blocks.iter().filter(|block| block.face == index);
                let arrays: f64 = on_face.flat_map(|block| deck_under(block)).map(|rect| rect.area()).sum();
                (face.slope_area - arrays).max(0.0)
            })),
            Measure::SingleUnderlayment => self.underlayment(false, places),
            Measure::DoubleUnderlayment => self.underlayment(true, places),
            Measure::LeakBarrier => self.leak_barrier(places),
            Measure::Edge(kind) => {
                places.extend(self.edges(*kind).into_iter().map(|line| self.along(Spot::Edge(*kind), &line)));
            }
            Measure::SideWall => {
                places.extend(self.walls(true).into_iter().map(|line| self.along(Spot::SideWall, &line)));
            }
            Measure::HeadWall => {
                places.extend(self.walls(false).into_iter().map(|line| self.along(Spot::HeadWall, &line)));
            }
            Measure::SideWallCourse => places.extend(self.walls(true).into_iter().map(|line| {
                let (low, high) = (line.from.y.min(line.to.y), line.from.y.max(line.to.y));
                let courses = self.courses(line.face, low, high);
                MeasuredPlace { amount: courses, ..self.along(Spot::SideWall, &line) }
            })),
            Measure::Through(kind) => {
                for (penetration, on) in self.penetrations().filter(|(p, _)| p.kind == *kind) {
                    let spot = MeasuredShape::Point(on.bounds.centre());
                    places.push(through(self.layout, on.face, &penetration.name, Spot::Through, 1.0, spot));
                }
            }
            Measure::Pipe { over_mm, to_mm } => {
                let pipes = self.penetrations().filter(|(p, _)| p.kind == PenetrationKind::PipeBoot);
                for (penetration, on) in pipes {
                    let across = Length::from_metres(on.bounds.size().max_element()).mm();
                    // Within a tenth of a millimetre of a size counts as that size.
                    if across > f64::from(*over_mm) + 0.1 && across <= f64::from(*to_mm) + 0.1 {
                        let spot = MeasuredShape::Point(on.bounds.centre());
                        places.push(through(
                            self.layout,
                            on.face,
                            &penetration.name,
                            Spot::Through,
                            1.0,
                            spot,
                        ));
                    }
                }
            }
            Measure::AroundThrough => self.around_through(places),
            Measure::KickOut => self.kick_outs(places),
            Measure::CurbCourse | Measure::CurbWidth => self.curbs(*measure == Measure::CurbCourse, places),
            Measure::Chimney(part) => self.chimneys(*part, places),
            Measure::Cricket(part) => self.crickets(*part, places),
            Measure::Job if self.is_work() => places.push(whole(1.0)),
            Measure::Person | Measure::PersonOnRoof if self.is_work() => {
                let all = *measure == Measure::Person;
                let crews = self.job.kit.crews.iter().filter(|crew| all || crew.on_roof);
                places.push(whole(crews.map(|crew| f64::from(crew.people)).sum()));
            }
            // Measures of blocks or of another part.
            _ => {}
        }
    }

    /// Whether there is any work to do.
    fn is_work(&self) -> bool {
        self.covered.contains(&true) || self.layout.blocks.iter().any(|block| !block.modules.is_empty())
    }

    pub(super) fn on_face(
        &self,
        index: usize,
        spot: Spot,
        amount: f64,
        shape: MeasuredShape,
    ) -> MeasuredPlace {
        let placed = self.layout.faces.get(index);
        MeasuredPlace {
            face: placed.map(|face| face.id),
            block: None,
            name: placed.map(|face| Arc::from(face.name.as_str())),
            spot,
            amount,
            shape,
        }
    }

    pub(super) fn covered_faces(&self) -> impl Iterator<Item = (usize, &RoofFace)> {
        let faces = self.layout.roof.faces.iter().enumerate();
        faces.filter(|(index, _)| self.covered.get(*index).copied().unwrap_or(false))
    }

    /// Re-roofed faces with an amount each; zero amounts are left out.
    fn faces(&self, amount: impl Fn(usize, &RoofFace) -> f64) -> impl Iterator<Item = MeasuredPlace> {
        self.covered_faces().filter_map(move |(index, face)| {
            let amount = amount(index, face);
            let shape = || MeasuredShape::Outlines(vec![face.frame.clone()]);
            (amount > 0.0).then(|| self.on_face(index, Spot::Face, amount, shape()))
        })
    }

    fn along(&self, spot: Spot, line: &Line) -> MeasuredPlace {
        self.on_face(line.face, spot, line.length, MeasuredShape::Path(vec![line.from, line.to]))
    }

    /// Lines of a kind on re-roofed faces; a line that two faces share counts once, and one that continues straight along the
    /// next face counts as one. Lines along a chimney or a cricket belong to those.
    fn edges(&self, kind: EdgeKind) -> Vec<Line> {
        let mut lines: Vec<Line> = Vec::new();
        for (face, on_roof) in self.covered_faces() {
            let of_kind = on_roof.edges.iter().filter(|span| span.kind == kind && !self.meets_chimney(span));
            for span in of_kind.filter(|span| !self.counted_before(kind, face, span)) {
                let line = Line { face, from: span.frame.0, to: span.frame.1, length: span.length };
                match lines.iter_mut().find(|before| before.continues_in(&line)) {
                    Some(before) => before.join(&line),
                    None => lines.push(line),
                }
            }
        }
        lines
    }

    /// Whether the face on the other side of a shared line has already counted it.
    fn counted_before(&self, kind: EdgeKind, face: usize, span: &EdgeSpan) -> bool {
        let shared = !matches!(kind, EdgeKind::Eave | EdgeKind::Rake | EdgeKind::WallLine);
        let told = |other: usize| other < face && self.covered.get(other).copied().unwrap_or(false);
        shared && span.neighbour.is_some_and(|other| told(other.face))
    }

    /// Wall lines that run more up the slope than across it, or the others.
    fn walls(&self, up: bool) -> Vec<Line> {
        let is_up = |line: &Line| (line.to - line.from).abs().y > (line.to - line.from).abs().x;
        self.edges(EdgeKind::WallLine).into_iter().filter(|line| is_up(line) == up).collect()
    }

    /// The courses between two heights of a face, plus one.
    pub(super) fn courses(&self, face: usize, low: f64, high: f64) -> f64 {
        self.layout.faces.get(face).map_or(0.0, |face| face.courses.crossed(low, high) as f64 + 1.0)
    }

    /// Penetrations through re-roofed faces, each with its outline on its own face.
    pub(super) fn penetrations(&self) -> impl Iterator<Item = (&PlacedPenetration, &OnFace)> {
        self.layout.penetrations.iter().filter_map(|penetration| {
            let home = penetration.home.filter(|home| self.covered.get(*home).copied().unwrap_or(false))?;
            Some((penetration.as_ref(), penetration.on_face(home)?))
        })
    }

    /// The strip around each penetration, on its face. One that spans two faces counts on the face under its centre.
    fn around_through(&self, places: &mut Vec<MeasuredPlace>) {
        let margin = self.job.kit.flashing.through.metres();
        for (penetration, on) in self.penetrations() {
            let Some(face) = self.layout.roof.faces.get(on.face) else { continue };
            let strip = band::without(&[on.bounds.grown(margin)], &[on.bounds]);
            let (amount, shape) = clip::to_face(&strip, &face.frame);
            if amount > 0.0 {
                places.push(through(
                    self.layout,
                    on.face,
                    &penetration.name,
                    Spot::AroundThrough,
                    amount,
                    shape,
                ));
            }
        }
    }

    /// Kick-outs, where water runs down a wall and off the roof beside it: at the lower end of a wall line that ends at an eave.
    fn kick_outs(&self, places: &mut Vec<MeasuredPlace>) {
        for line in self.walls(true) {
            let low = if line.from.y < line.to.y { line.from } else { line.to };
            let Some(face) = self.layout.roof.faces.get(line.face) else { continue };
            let eaves = face.edges.iter().filter(|edge| edge.kind == EdgeKind::Eave);
            let near = |end: DVec2| end.distance(low) < NEAR;
            if eaves.into_iter().any(|eave| near(eave.frame.0) || near(eave.frame.1)) {
                places.push(self.on_face(line.face, Spot::KickOut, 1.0, MeasuredShape::Point(low)));
            }
        }
    }

    /// The type of the roof as drawn, by which shingle waste is graded.
    pub(crate) fn roof_kind(&self) -> RoofKind {
        if !self.edges(EdgeKind::Valley).is_empty() {
            RoofKind::CutUp
        } else if !self.edges(EdgeKind::Hip).is_empty() {
            RoofKind::Hip
        } else {
            RoofKind::Gable
        }
    }
}

/// A straight roof line on one face, in its frame, metres.
struct Line {
    face: usize,
    from: DVec2,
    to: DVec2,
    length: f64,
}

impl Line {
    /// Whether the other line is a straight continuation at either end of this one.
    fn continues_in(&self, other: &Self) -> bool {
        let straight = (self.to - self.from).perp_dot(other.to - other.from).abs()
            < NEAR * self.length.max(other.length);
        self.face == other.face
            && straight
            && (self.to.distance(other.from) < NEAR || other.to.distance(self.from) < NEAR)
    }

    fn join(&mut self, other: &Self) {
        if self.to.distance(other.from) < NEAR {
            self.to = other.to;
        } else {
            self.from = other.from;
        }
        self.length += other.length;
    }
}

pub(super) fn through(
    layout: &Layout,
    face: usize,
    name: &str,
    spot: Spot,
    amount: f64,
    shape: MeasuredShape,
) -> MeasuredPlace {
    MeasuredPlace {
        face: layout.faces.get(face).map(|face| face.id),
        block: None,
        name: Some(Arc::from(name)),
        spot,
        amount,
        shape,
    }
}

fn whole(amount: f64) -> MeasuredPlace {
    MeasuredPlace {
        face: None,
        block: None,
        name: None,
        spot: Spot::Job,
        amount,
        shape: MeasuredShape::Whole,
    }
}
