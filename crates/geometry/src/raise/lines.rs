use super::{Footprint, LEAST_SLOPE, RaiseError, SideRef, Treatment};
use crate::{Defect, Polygon, signed_area};
use chalkcourse_words::later as words;
use glam::DVec2;

/// Lines whose directions differ by less than this (radians) are parallel: over 30 m, 3 µm.
pub(super) const PARALLEL: f64 = 1e-7;

/// A line of the water line: where the plane of a side is at water level.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    /// Unit vector along it; the part not yet under water is to its left.
    pub(super) dir: DVec2,
    /// Unit vector to the left.
    pub(super) normal: DVec2,
    /// `normal · p` for a point on it before it moves.
    pub(super) offset: f64,
    /// The height at which it starts to move.
    pub(super) start: f64,
    /// Run over rise: how far it moves per metre of height. 0 if vertical.
    pub(super) run: f64,
    /// Whether it has started to move; never, if vertical.
    pub(super) moving: bool,
    /// Its side of the footprint; for a step, an adjacent one.
    pub(super) owner: SideRef,
    /// The next line around the footprint; `None` for a step.
    pub(super) follower: Option<usize>,
}

impl Line {
    pub(super) fn upright(point: DVec2, dir: DVec2, owner: SideRef) -> Self {
        let normal = dir.perp();
        let offset = normal.dot(point);
        Self { dir, normal, offset, start: 0.0, run: 0.0, moving: false, owner, follower: None }
    }

    pub(super) fn speed(&self) -> f64 {
        if self.moving { self.run } else { 0.0 }
    }

    pub(super) fn offset_at(&self, height: f64) -> f64 {
        if self.moving { self.offset + self.run * (height - self.start) } else { self.offset }
    }

    pub(super) fn same_plane(&self, other: &Self, near: f64) -> bool {
        let foot = |line: &Self| line.offset - line.run * line.start;
        self.run > 0.0
            && (self.run - other.run).abs() <= 1e-9 * self.run
            && self.dir.distance(other.dir) <= 1e-9
            && (foot(self) - foot(other)).abs() <= near
    }
}

/// A corner of the footprint with overhangs, and the line that starts at it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Start {
    pub(super) at: DVec2,
    pub(super) line: usize,
}

/// A prepared footprint: counter-clockwise outline, clockwise holes, centred on its bounding box.
pub(super) struct Setup {
    pub(super) lines: Vec<Line>,
    pub(super) rings: Vec<Vec<Start>>,
    /// The offset subtracted from all coordinates, so that no precision is lost far from the origin.
    pub(super) centre: DVec2,
    /// Points closer than this, in metres, coincide.
    pub(super) near: f64,
}

impl Setup {
    pub(super) fn of(footprint: &Footprint) -> Result<Self, RaiseError> {
        check_numbers(footprint)?;
        let outline = &footprint.outline;
        let finite = outline.rings().flatten().all(|p| p.is_finite());
        let bounds = outline.bounds().filter(|_| finite);
        let (centre, size) = bounds.map_or((DVec2::ZERO, 1.0), |b| (b.centre(), b.size().length()));
        let near = 2e-9 * size.max(1e-3);
        if let Some(&defect) = outline.defects(near * 50.0).first() {
            return Err(RaiseError::Outline(defect));
        }
        let mut setup = Self { lines: Vec::new(), rings: Vec::new(), centre, near };
        for (ring, corners) in outline.rings().enumerate() {
            setup.add_ring(footprint, ring, corners)?;
        }
        if footprint.sides.iter().flatten().any(|side| side.overhang > 0.0) {
            setup.check_overhangs(near)?;
        }
        Ok(setup)
    }

    /// The side that a line belongs to; for a step, an adjacent one.
    pub(super) fn side_at(&self, line: usize) -> SideRef {
        // Faces stand on lines of the footprint.
        debug_assert!(line < self.lines.len());
        self.lines.get(line).map_or(SideRef { ring: 0, side: 0 }, |line| line.owner)
    }

    /// The ground that the roof covers, in the footprint's own coordinates.
    pub(super) fn ground(&self) -> Polygon {
        // A footprint that is raised has an outline.
        debug_assert!(!self.rings.is_empty());
        let mut rings =
            self.rings.iter().map(|ring| ring.iter().map(|start| start.at + self.centre).collect());
        Polygon { outer: rings.next().unwrap_or_default(), holes: rings.collect() }
    }

    fn add_ring(&mut self, footprint: &Footprint, ring: usize, corners: &[DVec2]) -> Result<(), RaiseError> {
        let n = corners.len();
        let reversed = (signed_area(corners) > 0.0) != (ring == 0);
        let corner = |i: usize| corners[if reversed { n - 1 - i % n } else { i % n }] - self.centre;
        // Side i of the reversed ring runs from drawn corner n-1-i to n-2-i.
        let drawn = |i: usize| if reversed { (2 * n - 2 - i) % n } else { i };
        let first = self.lines.len();
        let mut overhangs = Vec::with_capacity(n);
        for i in 0..n {
            let side = &footprint.sides[ring][drawn(i)];
            let dir = (corner(i + 1) - corner(i)).normalize_or_zero();
            let normal = dir.perp();
            let (run, slope) = match side.treatment {
                Treatment::Slope(pitch) => (1.0 / pitch.slope(), pitch.slope()),
                Treatment::Gable | Treatment::Wall => (0.0, 0.0),
            };
            self.lines.push(Line {
                dir,
                normal,
                offset: normal.dot((corner(i) + corner(i + 1)) / 2.0) - side.overhang,
                start: side.eave_height - side.overhang * slope,
                run,
                moving: false,
                owner: SideRef { ring, side: drawn(i) },
                follower: Some(first + (i + 1) % n),
            });
            overhangs.push(side.overhang);
        }
        let mut starts = Vec::with_capacity(n);
        for i in 0..n {
            let before = (i + n - 1) % n;
            let (a, b) = (self.lines[first + before], self.lines[first + i]);
            let cross = a.dir.perp_dot(b.dir);
            // Two nearly collinear sides with different overhangs would meet far out: put a step there.
            let in_line = a.dir.dot(b.dir) > 0.0 && cross.abs() < 0.02;
            if overhangs[before] == 0.0 && overhangs[i] == 0.0 {
                starts.push(Start { at: corner(i), line: first + i });
            } else if in_line && (overhangs[before] - overhangs[i]).abs() > self.near {
                let (from, to) =
                    (corner(i) - a.normal * overhangs[before], corner(i) - b.normal * overhangs[i]);
                let step = Line::upright(from, (to - from).normalize_or_zero(), b.owner);
                starts.push(Start { at: from, line: self.lines.len() });
                starts.push(Start { at: to, line: first + i });
                self.lines.push(step);
            } else {
                let middle = (a.normal + b.normal) / 2.0;
                let at = if in_line {
                    corner(i) - middle * (overhangs[i] / middle.length_squared())
                } else {
                    (b.dir * a.offset - a.dir * b.offset) / cross
                };
                starts.push(Start { at, line: first + i });
            }
        }
        self.rings.push(starts);
        Ok(())
    }

    fn check_overhangs(&self, near: f64) -> Result<(), RaiseError> {
        for ring in &self.rings {
            for (i, start) in ring.iter().enumerate() {
                let along = ring[(i + 1) % ring.len()].at - start.at;
                if !along.is_finite() || along.dot(self.lines[start.line].dir) <= near {
                    return Err(RaiseError::Overhang {
                        at: self.side_at(start.line),
                        near: start.at + self.centre,
                    });
                }
            }
        }
        match self.ground().defects(near).first() {
            None => Ok(()),
            Some(&defect) => {
                let near = if let Defect::Crosses { at } = defect { at } else { self.centre };
                let distance = |start: &Start| start.at.distance_squared(near - self.centre);
                let nearest = self.rings.iter().flatten().min_by(|a, b| distance(a).total_cmp(&distance(b)));
                Err(RaiseError::Overhang {
                    at: nearest.map_or(SideRef { ring: 0, side: 0 }, |start| self.side_at(start.line)),
                    near,
                })
            }
        }
    }
}

fn check_numbers(footprint: &Footprint) -> Result<(), RaiseError> {
    for (ring, corners) in footprint.outline.rings().enumerate() {
        let given = footprint.sides.get(ring).map_or(0, Vec::len);
        if given != corners.len() {
            return Err(RaiseError::SideCount { ring, corners: corners.len(), given });
        }
    }
    let rings = footprint.outline.holes.len() + 1;
    if let Some(extra) = footprint.sides.get(rings) {
        return Err(RaiseError::SideCount { ring: rings, corners: 0, given: extra.len() });
    }
    for (ring, sides) in footprint.sides.iter().enumerate() {
        for (index, side) in sides.iter().enumerate() {
            let at = SideRef { ring, side: index };
            if let Treatment::Slope(pitch) = side.treatment
                && pitch.slope() < LEAST_SLOPE
            {
                return Err(RaiseError::BadNumber {
                    at,
                    what: words::roof::A_RISE_IN_12,
                    value: pitch.rise_in_12(),
                    remedy: words::roof::A_LEVEL_SIDE_NEVER_CLOSES,
                });
            }
            if !side.eave_height.is_finite() || side.eave_height.abs() > 1e4 {
                return Err(RaiseError::BadNumber {
                    at,
                    what: words::roof::AN_EAVE_HEIGHT,
                    value: side.eave_height,
                    remedy: words::roof::GIVE_A_HEIGHT_WITHIN_10,
                });
            }
            if !(0.0..=100.0).contains(&side.overhang) {
                return Err(RaiseError::BadNumber {
                    at,
                    what: words::roof::AN_OVERHANG,
                    value: side.overhang,
                    remedy: words::roof::GIVE_0_OR_MORE_UP,
                });
            }
        }
    }
    Ok(())
}
