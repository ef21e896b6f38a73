//! Chimneys, drawn as parts of the house or as penetrations, and the crickets behind wide ones and wide curbs.

use super::roof::through;
use super::{Measures, NEAR};
use crate::{MeasuredPlace, MeasuredShape, Spot};
use chalkcourse_geometry::{DVec2, EdgeSpan, Rect, distance_to_segment, dvec2};
use chalkcourse_job::{ChimneyPart, CricketPart, PartKind, PenetrationKind, Resolved, RoofPart};

/// Which faces of a job belong to a cricket.
pub(super) fn cricket_faces(job: &Resolved) -> Vec<bool> {
    let chimney = |part| job.part(part).is_some_and(|part| part.kind == PartKind::Chimney);
    job.faces.iter().map(|face| face.from.is_some_and(|from| chimney(from.part))).collect()
}

/// Something that stands up out of a face and is flashed there.
struct Upstand {
    name: String,
    /// Whether this is the first face it is counted on: one over a ridge is on two.
    first: bool,
    kind: PenetrationKind,
    /// Index of the face.
    face: usize,
    /// Its bounds in the frame of the face.
    bounds: Rect,
    /// Whether the face continues below it, and above it.
    low: bool,
    high: bool,
    cricket: Option<Cricket>,
}

/// A cricket: a level ridge from the middle of the upper side back to the roof. True lengths, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Cricket {
    /// Ridge length.
    ridge: f64,
    /// From the ridge's end at the wall down to each corner.
    rafter: f64,
    /// From the ridge's other end down to each corner, on the roof.
    valley: f64,
    /// Both faces.
    area: f64,
    /// How far its ridge extends up the slope of the roof.
    reach: f64,
}

impl Cricket {
    /// Behind an upstand of width `wide`; `slope` of the cricket and `roof` slope are both rise over run.
    fn of(wide: f64, slope: f64, roof: f64) -> Option<Self> {
        if wide <= 0.0 || slope <= 0.0 || roof < 1e-3 {
            return None;
        }
        let half = wide / 2.0;
        let rise = half * slope;
        let ridge = rise / roof;
        let reach = ridge.hypot(rise);
        Some(Self {
            ridge,
            rafter: half.hypot(rise),
            valley: half.hypot(reach),
            area: half * ridge * slope.hypot(1.0),
            reach,
        })
    }
}

impl Measures<'_> {
    fn chimney_parts(&self) -> impl Iterator<Item = &RoofPart> {
        self.job.parts.iter().filter(|part| part.kind == PartKind::Chimney)
    }

    /// Whether a roof line runs along a chimney or a cricket.
    pub(super) fn meets_chimney(&self, span: &EdgeSpan) -> bool {
        span.neighbour.is_some_and(|other| self.crickets.get(other.face).copied().unwrap_or(false))
            || self.chimney_parts().any(|part| runs_along(span, part))
    }

    /// Everything on re-roofed faces that is flashed like a chimney or needs a cricket.
    fn upstands(&self) -> Vec<Upstand> {
        let mut all: Vec<Upstand> = Vec::new();
        for (penetration, on) in self.penetrations() {
            let cricket = self.cricket(penetration.kind, on.bounds.size().x, on.face, None);
            all.push(Upstand {
                name: penetration.name.clone(),
                first: true,
                kind: penetration.kind,
                face: on.face,
                bounds: on.bounds,
                low: true,
                high: true,
                cricket,
            });
        }
        for part in self.chimney_parts() {
            let mut first = true;
            for (index, face) in self.covered_faces() {
                let walls: Vec<&EdgeSpan> = face.edges.iter().filter(|span| runs_along(span, part)).collect();
                let Some(bounds) = Rect::around(walls.iter().flat_map(|span| [span.frame.0, span.frame.1]))
                else {
                    continue;
                };
                let across_at = |v: f64| {
                    walls
                        .iter()
                        .any(|span| (span.frame.0.y - v).abs() < NEAR && (span.frame.1.y - v).abs() < NEAR)
                };
                let drawn = self.has_cricket(part, index);
                let high = drawn || across_at(bounds.max.y);
                let pitch = part.cricket.filter(|_| drawn).map(|pitch| pitch.slope());
                let cricket = self.cricket(PenetrationKind::Chimney, bounds.size().x, index, pitch);
                all.push(Upstand {
                    name: part.name.clone(),
                    first: std::mem::take(&mut first),
                    kind: PenetrationKind::Chimney,
                    face: index,
                    bounds,
                    low: across_at(bounds.min.y),
                    high,
                    cricket: cricket.filter(|_| high),
                });
            }
        }
        all
    }

    /// Whether a part's cricket is on a face.
    fn has_cricket(&self, part: &RoofPart, face: usize) -> bool {
        let edges = self.layout.roof.faces.get(face).map_or(&[][..], |face| &face.edges);
        edges.iter().filter_map(|span| span.neighbour).any(|other| {
            self.job.faces.get(other.face).and_then(|face| face.from).is_some_and(|from| from.part == part.id)
        })
    }

    /// A cricket as drawn, at the slope of its faces; otherwise, where the rule book requires one, as steep as the roof (common
    /// practice, no source).
    fn cricket(&self, kind: PenetrationKind, wide: f64, face: usize, drawn: Option<f64>) -> Option<Cricket> {
        let roof = self.layout.roof.faces.get(face)?.plane.pitch.slope();
        let asked = || {
            let roofing = self.job.rule_book.roofing.as_ref();
            roofing.is_some_and(|roofing| roofing.asks_cricket(kind, wide)).then_some(roof)
        };
        Cricket::of(wide, drawn.or_else(asked)?, roof)
    }

    pub(super) fn chimneys(&self, part: ChimneyPart, places: &mut Vec<MeasuredPlace>) {
        let more = self.job.kit.flashing.chimney_return.metres();
        for at in self.upstands().iter().filter(|at| at.kind == PenetrationKind::Chimney) {
            let mut put = |spot, amount, from, to| places.push(self.of_upstand(at, spot, amount, from, to));
            let [low_left, low_right, high_left, high_right] = corners(at.bounds);
            let wide = at.bounds.size().x;
            match part {
                ChimneyPart::Each if at.first => put(Spot::Through, 1.0, low_left, high_right),
                ChimneyPart::Apron if at.low => put(Spot::ThroughLow, wide + 2.0 * more, low_left, low_right),
                ChimneyPart::BackPan if at.high && at.cricket.is_none() => {
                    put(Spot::ThroughHigh, wide + 2.0 * more, high_left, high_right);
                }
                ChimneyPart::Course => self.side_courses(at, &mut put),
                ChimneyPart::Counter => {
                    let up = at.bounds.size().y;
                    put(Spot::ThroughLeft, up, low_left, high_left);
                    put(Spot::ThroughRight, up, low_right, high_right);
                    if at.low {
                        put(Spot::ThroughLow, wide, low_left, low_right);
                    }
                    match (at.high, at.cricket) {
                        (true, Some(cricket)) => {
                            let middle = (high_left + high_right) / 2.0;
                            put(Spot::ThroughHigh, cricket.rafter, high_left, middle);
                            put(Spot::ThroughHigh, cricket.rafter, high_right, middle);
                        }
                        (true, None) => put(Spot::ThroughHigh, wide, high_left, high_right),
                        (false, _) => {}
                    }
                }
                ChimneyPart::Each | ChimneyPart::Apron | ChimneyPart::BackPan => {}
            }
        }
    }

    pub(super) fn crickets(&self, part: CricketPart, places: &mut Vec<MeasuredPlace>) {
        for at in &self.upstands() {
            let Some(cricket) = at.cricket else { continue };
            let [_, _, left, right] = corners(at.bounds);
            let middle = (left + right) / 2.0;
            let back = middle + dvec2(0.0, cricket.reach);
            let mut put =
                |amount, from, to| places.push(self.of_upstand(at, Spot::Cricket, amount, from, to));
            match part {
                CricketPart::Each => put(1.0, middle, back),
                CricketPart::Area => put(cricket.area, middle, back),
                CricketPart::Valley => {
                    put(cricket.valley, left, back);
                    put(cricket.valley, right, back);
                }
                CricketPart::Wall => {
                    put(cricket.rafter, left, middle);
                    put(cricket.rafter, right, middle);
                }
                CricketPart::Frame => {
                    put(cricket.ridge, middle, back);
                    put(cricket.rafter, left, middle);
                    put(cricket.rafter, right, middle);
                    put(cricket.valley, left, back);
                    put(cricket.valley, right, back);
                }
            }
        }
    }

    /// Sides of chimneys and skylights: courses along their sides, or widths below and above.
    pub(super) fn curbs(&self, courses: bool, places: &mut Vec<MeasuredPlace>) {
        let curb = |kind| matches!(kind, PenetrationKind::Chimney | PenetrationKind::Skylight);
        for at in self.upstands().iter().filter(|at| curb(at.kind)) {
            let mut put = |spot, amount, from, to| places.push(self.of_upstand(at, spot, amount, from, to));
            let [low_left, low_right, high_left, high_right] = corners(at.bounds);
            let wide = at.bounds.size().x;
            if courses {
                self.side_courses(at, &mut put);
            } else {
                if at.low {
                    put(Spot::ThroughLow, wide, low_left, low_right);
                }
                if at.high {
                    put(Spot::ThroughHigh, wide, high_left, high_right);
                }
            }
        }
    }

    fn side_courses(&self, at: &Upstand, put: &mut impl FnMut(Spot, f64, DVec2, DVec2)) {
        let [low_left, low_right, high_left, high_right] = corners(at.bounds);
        let crossed = self.courses(at.face, at.bounds.min.y, at.bounds.max.y);
        put(Spot::ThroughLeft, crossed, low_left, high_left);
        put(Spot::ThroughRight, crossed, low_right, high_right);
    }

    fn of_upstand(&self, at: &Upstand, spot: Spot, amount: f64, from: DVec2, to: DVec2) -> MeasuredPlace {
        let shape = match spot {
            Spot::Through => MeasuredShape::Point(at.bounds.centre()),
            _ => MeasuredShape::Path(vec![from, to]),
        };
        through(self.layout, at.face, &at.name, spot, amount, shape)
    }
}

/// Corners of a rectangle: lower left, lower right, upper left, upper right.
fn corners(Rect { min, max }: Rect) -> [DVec2; 4] {
    [min, dvec2(max.x, min.y), dvec2(min.x, max.y), max]
}

/// Whether a roof line runs along the walls of a chimney.
fn runs_along(span: &EdgeSpan, part: &RoofPart) -> bool {
    let (a, b) = span.plan;
    part.outline
        .sides()
        .any(|(_, _, from, to)| [a, b].into_iter().all(|point| distance_to_segment(point, from, to) < NEAR))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Behind a chimney 32 in wide on a 6:12 roof, as steep as the roof: half the width is 16 in, so the ridge is 8 in high and
    /// 16 in long; to the corners √(16² + 8²) = 17.889 in at the wall and √(16² + 16² + 8²) = 24 in on the roof; two triangles of
    /// 16 × 16 / 2 in plan, × 1.118 on the slope: 286.22 sq in.
    #[test]
    fn a_cricket_by_hand() {
        let cricket = Cricket::of(32.0, 0.5, 0.5).unwrap();
        assert!((cricket.ridge - 16.0).abs() < 1e-9 && (cricket.valley - 24.0).abs() < 1e-9, "{cricket:?}");
        assert!((cricket.rafter - 17.889).abs() < 1e-3 && (cricket.area - 286.217).abs() < 1e-3);
        // on a cricket flatter than the roof the ridge is shorter
        assert!((Cricket::of(32.0, 0.25, 0.5).unwrap().ridge - 8.0).abs() < 1e-9);
        assert_eq!(Cricket::of(32.0, 0.5, 0.0), None);
    }
}
