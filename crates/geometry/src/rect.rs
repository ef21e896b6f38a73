use glam::{DVec2, dvec2};
use serde::Serialize;

/// An axis-aligned rectangle in a frame: a module as laid, or a bounding box.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Rect {
    /// The lower left corner.
    #[serde(serialize_with = "as_pair")]
    pub min: DVec2,
    /// The upper right corner.
    #[serde(serialize_with = "as_pair")]
    pub max: DVec2,
}

fn as_pair<S: serde::Serializer>(point: &DVec2, serializer: S) -> Result<S::Ok, S::Error> {
    point.to_array().serialize(serializer)
}

impl Rect {
    /// From the lower left corner and a size.
    pub fn at(min: DVec2, size: DVec2) -> Self {
        Self { min, max: min + size }
    }

    /// The bounding box of some points; `None` if there are none.
    pub fn around(points: impl IntoIterator<Item = DVec2>) -> Option<Self> {
        points.into_iter().fold(None, |bounds: Option<Self>, p| {
            Some(bounds.map_or(Self { min: p, max: p }, |b| Self { min: b.min.min(p), max: b.max.max(p) }))
        })
    }

    /// Width and height.
    pub fn size(&self) -> DVec2 {
        self.max - self.min
    }
    /// The centre.
    pub fn centre(&self) -> DVec2 {
        (self.min + self.max) / 2.0
    }
    /// Width times height.
    pub fn area(&self) -> f64 {
        self.size().x * self.size().y
    }
    /// Counter-clockwise from the lower left.
    pub fn corners(&self) -> [DVec2; 4] {
        [self.min, dvec2(self.max.x, self.min.y), self.max, dvec2(self.min.x, self.max.y)]
    }
    /// Grown on all sides by `margin` (shrunk if negative).
    pub fn grown(&self, margin: f64) -> Self {
        Self { min: self.min - DVec2::splat(margin), max: self.max + DVec2::splat(margin) }
    }
    /// Translated.
    pub fn moved(&self, by: DVec2) -> Self {
        Self { min: self.min + by, max: self.max + by }
    }
    /// The bounding box of both.
    pub fn union(&self, other: &Self) -> Self {
        Self { min: self.min.min(other.min), max: self.max.max(other.max) }
    }
    /// Whether a point lies inside or on the border.
    pub fn contains(&self, p: DVec2) -> bool {
        p.cmpge(self.min).all() && p.cmple(self.max).all()
    }
    /// Overlap along each axis; negative is the gap along that axis.
    pub fn overlap(&self, other: &Self) -> DVec2 {
        self.max.min(other.max) - self.min.max(other.min)
    }
    /// The point of the rectangle (interior included) nearest to `p`.
    pub fn nearest(&self, p: DVec2) -> DVec2 {
        p.clamp(self.min, self.max)
    }
}
