use crate::FaceId;
use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, FaceInput, Length, Pitch, Plane, Polygon};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A roof face as drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Face {
    /// Its number in the job.
    pub id: FaceId,
    /// What people call it: "South", "Porch".
    pub name: String,
    /// Outline and holes in plan: x east, y north, metres.
    pub outline: Polygon,
    /// Rise over run.
    pub pitch: Pitch,
    /// The way that water runs, degrees clockwise from north.
    pub downslope: Azimuth,
    /// The plan point where the face's own frame has its origin. Blocks are placed from here, so it stays put
    /// while corners move.
    #[schemars(with = "[f64; 2]")]
    pub datum: DVec2,
    /// Height of the face at its datum, above any level that is the same for the whole job.
    pub height: Length,
    /// How shingles are laid on it.
    #[serde(default)]
    pub courses: Courses,
    /// Edge kinds that a person overruled.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub overruled: Vec<Overrule>,
}

/// A side of the outline whose kind a person decided.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Overrule {
    /// 0 for the outline, n for the n-th hole.
    pub ring: usize,
    /// The corner that the side starts from, from 0.
    pub side: usize,
    /// What it is.
    pub kind: EdgeKind,
}

/// The courses of shingles on a face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Courses {
    /// How much of each course is to the weather, up the slope.
    pub exposure: Length,
    /// From the eave up to the first course line (the butts of the second course).
    pub first: Length,
}

impl Default for Courses {
    /// 5 in to the weather, as three-tab shingles of 12 × 36 in are laid.
    fn default() -> Self {
        Self { exposure: Length::from_inches(5.0), first: Length::from_inches(5.0) }
    }
}

impl Face {
    /// A new face. Its datum is the corner that is lowest down the slope, and of those the one to the left of a
    /// person who looks up it, at `height`.
    pub fn new(
        id: FaceId,
        name: String,
        outline: Polygon,
        pitch: Pitch,
        downslope: Azimuth,
        height: Length,
    ) -> Self {
        let mut face = Self {
            id,
            name,
            outline,
            pitch,
            downslope,
            datum: DVec2::ZERO,
            height,
            courses: Courses::default(),
            overruled: Vec::new(),
        };
        let plane = face.plane();
        let place = |p: DVec2| {
            let frame = plane.to_frame(p);
            // A millimetre of unevenness along a drawn eave must not decide between its two ends.
            ((frame.y * 1000.0).round(), frame.x)
        };
        let lowest = face.outline.outer.iter().copied().min_by(|&p, &q| {
            let (p, q) = (place(p), place(q));
            p.0.total_cmp(&q.0).then(p.1.total_cmp(&q.1))
        });
        face.datum = lowest.unwrap_or(DVec2::ZERO);
        face
    }

    /// The plane of the face, and so its frame.
    pub fn plane(&self) -> Plane {
        Plane { datum: self.datum.extend(self.height.metres()), pitch: self.pitch, downslope: self.downslope }
    }

    /// What the roof is put together from.
    pub fn input(&self) -> FaceInput {
        FaceInput {
            outline: self.outline.clone(),
            plane: self.plane(),
            overruled: self.overruled.iter().map(|o| ((o.ring, o.side), o.kind)).collect(),
        }
    }

    /// The face with a corner moved; `None` where there is no such corner.
    pub fn with_corner_moved(&self, ring: usize, corner: usize, to: DVec2) -> Option<Self> {
        let mut face = self.clone();
        *face.ring_mut(ring)?.get_mut(corner)? = to;
        Some(face)
    }

    /// The face with a new corner on a side, its overruled kinds kept with their sides.
    pub fn with_corner_added(&self, ring: usize, side: usize, at: DVec2) -> Option<Self> {
        let mut face = self.clone();
        let corners = face.ring_mut(ring)?;
        if side >= corners.len() {
            return None;
        }
        corners.insert(side + 1, at);
        for overrule in face.overruled.iter_mut().filter(|o| o.ring == ring && o.side > side) {
            overrule.side += 1;
        }
        if let Some(split) = self.overruled.iter().find(|o| o.ring == ring && o.side == side) {
            face.overruled.push(Overrule { side: side + 1, ..*split });
        }
        Some(face)
    }

    /// The face without a corner. A ring of three keeps its corners: `None`.
    pub fn without_corner(&self, ring: usize, corner: usize) -> Option<Self> {
        let mut face = self.clone();
        let corners = face.ring_mut(ring)?;
        if corners.len() <= 3 || corner >= corners.len() {
            return None;
        }
        corners.remove(corner);
        face.overruled.retain(|o| o.ring != ring || o.side != corner);
        for overrule in face.overruled.iter_mut().filter(|o| o.ring == ring && o.side > corner) {
            overrule.side -= 1;
        }
        Some(face)
    }

    /// The face with the kind of a side decided, or with `None` left to be worked out again.
    pub fn with_side_overruled(&self, ring: usize, side: usize, kind: Option<EdgeKind>) -> Self {
        let mut face = self.clone();
        face.overruled.retain(|o| (o.ring, o.side) != (ring, side));
        face.overruled.extend(kind.map(|kind| Overrule { ring, side, kind }));
        face.overruled.sort_by_key(|o| (o.ring, o.side));
        face
    }

    fn ring_mut(&mut self, ring: usize) -> Option<&mut Vec<DVec2>> {
        match ring {
            0 => Some(&mut self.outline.outer),
            hole => self.outline.holes.get_mut(hole - 1),
        }
    }
}
