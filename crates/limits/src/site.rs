//! The inputs of limits for one face.

use crate::context::KeepOutContext;
use crate::keep_out::{Against, KeepOut, Metric, Shape};
use chalkcourse_geometry::{Convex, EdgeKind, EdgeSpan, RoofFace, SideId};
use chalkcourse_job::Resolved;
use chalkcourse_layout::{Layout, OnFace, PlacedBlock, PlacedFace, PlacedPenetration};
use std::sync::Arc;

/// A sound face with everything that a limit may read.
pub(crate) struct Site<'a> {
    pub(crate) job: &'a Resolved,
    pub(crate) layout: &'a Layout,
    pub(crate) index: usize,
    pub(crate) face: &'a RoofFace,
    pub(crate) placed: &'a PlacedFace,
    pub(crate) given: &'a KeepOutContext,
}

/// The spans of one side with the same kind, or of one hole: a hole is a single obstacle, not one per side.
pub(crate) struct Side<'a> {
    pub(crate) kind: EdgeKind,
    /// Id of the side; of a hole, the least of its sides.
    id: SideId,
    is_hole: bool,
    /// With their indices among the edges of the face.
    pub(crate) spans: Vec<(usize, &'a EdgeSpan)>,
}

impl<'a> Site<'a> {
    pub(crate) fn of(
        job: &'a Resolved,
        layout: &'a Layout,
        index: usize,
        given: &'a KeepOutContext,
    ) -> Option<Self> {
        let face = layout.roof.faces.get(index).filter(|face| face.sound)?;
        Some(Self { job, layout, index, face, placed: layout.faces.get(index)?, given })
    }

    /// The border of the face.
    pub(crate) fn sides(&self) -> Vec<Side<'a>> {
        self.sides_with(|_| true)
    }

    /// The border sides made of the spans that count.
    pub(crate) fn sides_with(&self, counts: impl Fn(&EdgeSpan) -> bool) -> Vec<Side<'a>> {
        let mut sides: Vec<Side<'a>> = Vec::new();
        let key = |span: &EdgeSpan| (span.ring, (span.ring == 0).then_some(span.side), span.kind);
        for (index, span) in self.face.edges.iter().enumerate().filter(|(_, span)| counts(span)) {
            let same =
                |side: &&mut Side<'_>| side.spans.first().is_some_and(|(_, own)| key(own) == key(span));
            match sides.iter_mut().find(same) {
                Some(side) => side.spans.push((index, span)),
                None => {
                    let is_hole = span.ring > 0;
                    let id = if is_hole { self.face.ring_id(span.ring).unwrap_or(span.id) } else { span.id };
                    sides.push(Side { kind: span.kind, id, is_hole, spans: vec![(index, span)] });
                }
            }
        }
        sides
    }

    /// The penetrations of the face, with their outlines there.
    pub(crate) fn through(&self) -> impl Iterator<Item = (&'a PlacedPenetration, &'a OnFace)> {
        self.layout.penetrations.iter().filter_map(|p| Some((p.as_ref(), p.on_face(self.index)?)))
    }

    /// The blocks on the face that stay in place.
    pub(crate) fn standing(&self) -> impl Iterator<Item = &'a PlacedBlock> {
        let on = self.layout.blocks.iter().map(Arc::as_ref).filter(|block| block.face == self.index);
        on.filter(|block| block.bounds.is_some() && self.given.standing.contains(&block.id))
    }

    /// Whether the face beyond a border span has modules, or is to get some.
    pub(crate) fn covered_beyond(&self, span: &EdgeSpan) -> bool {
        self.given.covered_beyond(span)
    }

    /// The metric of horizontal distance, as in plan.
    pub(crate) fn in_plan(&self) -> Metric {
        Metric::InPlan { slope_factor: self.face.plane.pitch.slope_factor() }
    }
}

impl Side<'_> {
    /// A keep-out of `reach` beside its line, metres on the slope.
    pub(crate) fn keep_out(&self, rule: &'static str, reach: f64) -> KeepOut {
        let shape = Shape::Pieces(self.segments());
        KeepOut { edges: self.edges(), ..KeepOut::of(rule, self.against(), shape).reaching(reach) }
    }

    pub(crate) fn against(&self) -> Against {
        let (side, kind) = (self.id, self.kind);
        if self.is_hole { Against::Hole { side, kind } } else { Against::Side { side, kind } }
    }

    /// The spans as segments in the frame of the face.
    fn segments(&self) -> Vec<Convex> {
        self.spans.iter().map(|(_, span)| Convex::segment(span.frame.0, span.frame.1)).collect()
    }

    pub(crate) fn edges(&self) -> Vec<usize> {
        self.spans.iter().map(|(index, _)| *index).collect()
    }
}
