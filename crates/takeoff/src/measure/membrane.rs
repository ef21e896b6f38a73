//! Self-adhered membranes: the leak barrier along the eaves, full length and laid first; the array's, under it and around it; and
//! the deck that remains for underlayment.

use super::{Measures, NEAR, On, deck_under};
use crate::{MeasuredPlace, MeasuredShape, Spot, band, clip, rolls};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, Rect, RoofFace, dvec2};
use chalkcourse_job::{Amount, Measure, Roll};
use chalkcourse_layout::{PlacedBlock, known};

impl Measures<'_> {
    /// The strip around each block on its face, with or without the deck under the block. Where it overlaps another block or the
    /// strip of an earlier one, it is counted there.
    pub(super) fn array_membrane(&self, with_under: bool, places: &mut Vec<MeasuredPlace>) {
        let margin = self.kit.flashing.membrane.metres();
        let placed: Vec<(&PlacedBlock, Rect)> = self
            .layout
            .blocks
            .iter()
            .filter_map(|block| Some((block.as_ref(), block.bounds?.grown(margin))))
            .collect();
        for (index, &(block, bounds)) in placed.iter().enumerate() {
            let under = deck_under(block);
            let grown: Vec<Rect> = under.iter().map(|rect| rect.grown(margin)).collect();
            let mut inner = if with_under { Vec::new() } else { under };
            for (other, &(near, near_bounds)) in placed.iter().enumerate() {
                if other == index
                    || near.face != block.face
                    || bounds.overlap(&near_bounds).min_element() <= 0.0
                {
                    continue;
                }
                let rects = deck_under(near);
                if other < index {
                    inner.extend(rects.iter().map(|rect| rect.grown(margin)));
                }
                inner.extend(rects);
            }
            let strip = band::without(&grown, &inner);
            let on = On { block, face: self.layout.faces.get(block.face).map(|face| face.id) };
            let (amount, shape) = match self.layout.roof.faces.get(block.face).filter(|face| face.sound) {
                Some(face) => clip::to_face(&strip, &face.frame),
                None => (strip.iter().map(Rect::area).sum(), MeasuredShape::Area(strip)),
            };
            let spot = if with_under { Spot::UnderAndAround } else { Spot::Around };
            places.push(on.place(spot, amount, shape));
        }
    }

    /// Share of shingles lost to course cuts at hips and valleys, over all faces.
    pub(crate) fn shingles_cut_off(&self) -> f64 {
        let (mut coursed, mut area) = (0.0, 0.0);
        for (index, face) in self.covered_faces() {
            if let Some(placed) = self.layout.faces.get(index) {
                coursed += rolls::coursed_area(&face.frame, &placed.courses);
                area += face.slope_area;
            }
        }
        if area > 0.0 { (coursed / area - 1.0).max(0.0) } else { 0.0 }
    }

    /// How far up the slope the rule book requires a leak barrier on a face, in metres; `None` if it requires none.
    fn barrier_depth(&self, index: usize, face: &RoofFace) -> Option<f64> {
        let rule = self.job.rule_book.roofing.as_ref()?.ice_barrier.as_ref()?;
        let id = self.layout.faces.get(index)?.id;
        let overhang = known::overhang(self.job, id).map_or(Length::ZERO, |known| known.length);
        let pitch = face.plane.pitch;
        let depth = (overhang + rule.inside_wall.value).metres() * pitch.slope_factor();
        let steep = pitch.slope() >= rule.steep_from.value.slope() - 1e-9;
        Some(if steep { depth.max(rule.steep_length.value.metres()) } else { depth })
    }

    /// Whether the leak barrier's reach is unknown because the overhang of a face that needs one is.
    pub(crate) fn overhang_missing(&self) -> bool {
        self.covered_faces().any(|(index, face)| {
            let eave = face.edges.iter().any(|span| span.kind == EdgeKind::Eave);
            let id = self.layout.faces.get(index).map(|face| face.id);
            eave && id.is_some_and(|id| known::overhang(self.job, id).is_none())
        })
    }

    /// Along each eave, full length: it is laid before anything else, under the array too.
    pub(super) fn leak_barrier(&self, places: &mut Vec<MeasuredPlace>) {
        for (index, face) in self.covered_faces() {
            let Some(depth) = self.barrier_depth(index, face) else { continue };
            let strips = along_eaves(face, depth);
            let (amount, shape) = clip::to_face(&band::without(&strips, &[]), &face.frame);
            if amount > 0.0 {
                places.push(self.on_face(index, Spot::LeakBarrier, amount, shape));
            }
        }
    }

    /// The deck that underlayment must cover on faces of one kind: all but what a membrane on the order covers, less the lap of
    /// the two: up the slope at the leak barrier, sideways beside an array. Above and below an array the course height is fixed,
    /// and a lap there would call for an extra course where the membrane ends at a ridge.
    pub(super) fn underlayment(&self, double: bool, places: &mut Vec<MeasuredPlace>) {
        let from = self.job.rule_book.roofing.as_ref().map(|roofing| roofing.single_underlayment_from.value);
        let barrier = self.roll_of(&Measure::LeakBarrier);
        let array = self.roll_of(&Measure::ArrayMembrane).is_some();
        let lap = self.kit.flashing.underlayment_lap.metres();
        let margin = self.kit.flashing.membrane.metres();
        let covered = dvec2(margin - lap, margin);
        for (index, face) in self.covered_faces() {
            // A slope calculated from three heights may miss its pitch by a hair.
            let low = from.is_some_and(|from| face.plane.pitch.slope() < from.slope() - 1e-9);
            if low != double {
                continue;
            }
            let mut membranes: Vec<Rect> = Vec::new();
            if let (Some(roll), Some(depth)) = (barrier, self.barrier_depth(index, face)) {
                membranes.extend(along_eaves(face, (as_laid(depth, roll) - lap).max(0.0)));
            }
            let blocks = self.layout.blocks.iter().filter(|block| array && block.face == index);
            membranes.extend(
                blocks
                    .flat_map(|block| deck_under(block))
                    .map(|rect| Rect { min: rect.min - covered, max: rect.max + covered }),
            );
            let (amount, shape) = if membranes.is_empty() {
                (face.slope_area, MeasuredShape::Outlines(vec![face.frame.clone()]))
            } else {
                clip::to_face(&band::without(&[face.bounds], &membranes), &face.frame)
            };
            if amount > 0.0 {
                places.push(self.on_face(index, Spot::Face, amount, shape));
            }
        }
    }

    /// The roll from which the order lays a membrane; `None` if no part of the order lays it.
    fn roll_of(&self, measure: &Measure) -> Option<&Roll> {
        let ordered = self.kit.parts.iter().filter(|part| !self.job.order.off.contains_key(&part.number));
        ordered.flat_map(|part| &part.needs).find_map(|term| match &term.each {
            Amount::Laid(roll) if term.of == *measure && self.job.order.counts(term) => Some(roll),
            _ => None,
        })
    }
}

/// Strips along the eaves of a face. Where an eave ends at a valley the strip is run through to the valley line.
fn along_eaves(face: &RoofFace, depth: f64) -> Vec<Rect> {
    let eaves = face.edges.iter().filter(|span| span.kind == EdgeKind::Eave);
    eaves
        .filter_map(|span| {
            let line = Rect::around([span.frame.0, span.frame.1])?;
            let mut strip = Rect { min: line.min, max: line.max + dvec2(0.0, depth) };
            for end in [span.frame.0, span.frame.1] {
                for to in valleys_from(face, end) {
                    let climb = to.y - end.y;
                    let out = (to.x - end.x) * if climb > depth { depth / climb } else { 1.0 };
                    strip.min.x = strip.min.x.min(end.x + out);
                    strip.max.x = strip.max.x.max(end.x + out);
                }
            }
            Some(strip)
        })
        .collect()
}

/// The upper ends of valleys that start at a vertex of a face's outline.
fn valleys_from(face: &RoofFace, at: DVec2) -> impl Iterator<Item = DVec2> + '_ {
    let valleys = face.edges.iter().filter(|span| span.kind == EdgeKind::Valley);
    valleys
        .flat_map(|span| [span.frame, (span.frame.1, span.frame.0)])
        .filter(move |(from, to)| from.distance(at) < NEAR && to.y > from.y)
        .map(|(_, to)| to)
}

/// The reach of full-width courses laid until they cover a depth.
fn as_laid(depth: f64, roll: &Roll) -> f64 {
    let (width, step) = (roll.width.metres(), (roll.width - roll.side_lap).metres());
    let more = ((depth - width) / step - 1e-6).ceil().max(0.0);
    width + more * step
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A roll of 36 in lapped 3 1/2 in reaches 36, 68 1/2, 101 in.
    #[test]
    fn rolls_are_laid_whole() {
        let inches = Length::from_inches;
        let roll = Roll {
            width: inches(36.0),
            length: Length::from_feet(66.7),
            side_lap: inches(3.5),
            end_lap: inches(6.0),
            starter: false,
        };
        for (depth, reaches) in
            [(0.0, 36.0), (26.8, 36.0), (36.0, 36.0), (36.1, 68.5), (68.5, 68.5), (69.0, 101.0)]
        {
            let got = as_laid(inches(depth).metres(), &roll);
            assert!((Length::from_metres(got).inches() - reaches).abs() < 1e-6, "{depth} in");
        }
    }
}
