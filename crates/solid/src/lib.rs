//! The house in 3D: roof, walls, ground, modules and penetrations as triangles, computed from a job and its layout.
//!
//! - [`solid`]: a pure, total function; a half-drawn roof gives a partial house
//! - [`Solid`]: surfaces (material, what of the job they show, their own frame) and their triangles
//!
//! What people measure is true to size: faces, modules, outlines of penetrations. The rest is drawn with usual dimensions: the
//! thickness of the roof's edge, the height of a pipe, the position of the walls if the job does not give it. No count and no
//! rule reads a solid. Metres, x east, y north, z up.

mod array;
mod build;
mod house;
mod through;
mod walls;

use chalkcourse_geometry::DVec3;
use chalkcourse_job::{BlockId, Cell, FaceId, PenetrationId, Resolved};
use chalkcourse_layout::Layout;

/// What a surface is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// Roofing.
    Roof,
    /// The vertical edge of a roof.
    Fascia,
    /// The underside of a roof.
    Soffit,
    /// An outer wall, or a wall between two roofs.
    Wall,
    /// The ground around the house.
    Ground,
    /// The glass of a module.
    Module,
    /// The side of a module at the border of its block.
    ModuleSide,
    /// Base rail, side and head flashing of a block.
    Flashing,
    /// A pipe, a vent, a curb.
    Penetration,
    /// A chimney.
    Chimney,
    /// The glass of a skylight.
    Glass,
}

impl Kind {
    /// All kinds.
    pub const ALL: [Self; 11] = [
        Self::Roof,
        Self::Fascia,
        Self::Soffit,
        Self::Wall,
        Self::Ground,
        Self::Module,
        Self::ModuleSide,
        Self::Flashing,
        Self::Penetration,
        Self::Chimney,
        Self::Glass,
    ];

    /// Its name, for files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Roof => "roof",
            Self::Fascia => "roof edge",
            Self::Soffit => "soffit",
            Self::Wall => "wall",
            Self::Ground => "ground",
            Self::Module => "module",
            Self::ModuleSide => "module side",
            Self::Flashing => "flashing",
            Self::Penetration => "penetration",
            Self::Chimney => "chimney",
            Self::Glass => "skylight",
        }
    }
}

/// What of the job a surface shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SolidObject {
    /// The ground.
    Ground,
    /// The walls of the house.
    House,
    /// A face of the roof.
    Face(FaceId),
    /// A penetration.
    Penetration(PenetrationId),
    /// The border of a block.
    Block(BlockId),
    /// A module.
    Module(BlockId, Cell),
}

/// Line patterns on a surface, in its own frame, drawn when the picture is close enough to resolve them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Marks {
    /// None.
    Plain,
    /// Courses of shingles: lines of equal v.
    Courses {
        /// Height v of the first course line.
        first: f64,
        /// Distance between course lines.
        exposure: f64,
    },
    /// A module: 0 ≤ u ≤ width, 0 ≤ v ≤ height in its frame.
    Module {
        /// Along u.
        width: f64,
        /// Along v.
        height: f64,
    },
}

/// A planar piece of the house.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surface {
    /// What it is made of.
    pub kind: Kind,
    /// What of the job it shows.
    pub of: SolidObject,
    /// Outward unit normal.
    pub normal: DVec3,
    /// Origin of its own frame.
    pub origin: DVec3,
    /// Unit vector of u in its frame; on roofs and modules along the eave.
    pub u: DVec3,
    /// Unit vector of v in its frame; on roofs and modules up the slope.
    pub v: DVec3,
    /// Its line pattern.
    pub marks: Marks,
}

/// A triangle of a surface; counter-clockwise as seen from outside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Triangle {
    /// Index in [`Solid::surfaces`].
    pub surface: u32,
    /// Corners.
    pub corners: [DVec3; 3],
}

impl Triangle {
    /// Area in m².
    pub fn area(&self) -> f64 {
        let [a, b, c] = self.corners;
        (b - a).cross(c - a).length() / 2.0
    }
}

/// Everything on the lot.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solid {
    /// Surfaces.
    pub surfaces: Vec<Surface>,
    /// Their triangles. All coordinates are finite, and none is degenerate.
    pub triangles: Vec<Triangle>,
    /// Bounding box of the house without the ground, as least and greatest corner; `None` without a house.
    pub bounds: Option<(DVec3, DVec3)>,
}

impl Solid {
    /// The triangles of one kind.
    pub fn triangles_of(&self, kind: Kind) -> impl Iterator<Item = &Triangle> {
        self.triangles
            .iter()
            .filter(move |t| self.surfaces.get(t.surface as usize).is_some_and(|s| s.kind == kind))
    }

    /// Total area of the triangles of one kind, in m².
    pub fn area_of(&self, kind: Kind) -> f64 {
        self.triangles_of(kind).map(Triangle::area).sum()
    }
}

/// What to show.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Show {
    /// Modules and their flashing; without them, the house before the array.
    pub array: bool,
}

impl Default for Show {
    fn default() -> Self {
        Self { array: true }
    }
}

/// The corners of all sound faces, on the roof and projected onto the ground: what a picture of the house must show.
pub fn outline_points(job: &Resolved, layout: &Layout) -> Vec<DVec3> {
    let ground = house::ground_height(job, layout);
    let faces = layout.roof.faces.iter().filter(|face| face.sound);
    faces
        .flat_map(|face| {
            face.plan.outer.iter().flat_map(|&p| [p.extend(face.plane.height_at(p)), p.extend(ground)])
        })
        .collect()
}

/// The house of a job in 3D.
pub fn solid(job: &Resolved, layout: &Layout, show: Show) -> Solid {
    let mut build = build::Build::default();
    let ground = house::ground_height(job, layout);
    house::roof(&mut build, layout);
    walls::walls(&mut build, job, layout, ground);
    through::penetrations(&mut build, layout);
    if show.array {
        array::blocks(&mut build, job, layout);
    }
    house::ground(&mut build, ground);
    build.done()
}

#[cfg(test)]
mod tests;
