//! The house in space: roof, walls, ground, modules and penetrations as triangles, worked out from a job and its layout.
//!
//! - [`solid`]: a pure, total function; a half-drawn roof gives the part of the house that it makes
//! - [`Solid`]: surfaces (what they are, what of the job they show, where their own frame lies) and their triangles
//!
//! What people measured is true to size: faces, modules, outlines of penetrations. What nobody measures is drawn as is usual:
//! the thickness of the roof's edge, how high a pipe stands up, where the walls stand while the job does not say. No count
//! and no rule reads a solid. Metres, x east, y north, z up.

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
    /// The upright edge of a roof.
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

    /// A plain word for it.
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
pub enum Of {
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

/// Lines that a surface bears, in its own frame: for a picture near enough to see them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Marks {
    /// None.
    Plain,
    /// Courses of shingles: lines of equal v.
    Courses {
        /// Height v of the first line.
        first: f64,
        /// From one line to the next.
        exposure: f64,
    },
    /// A module: its frame is along the border of 0 ≤ u ≤ width, 0 ≤ v ≤ height.
    Module {
        /// Along u.
        width: f64,
        /// Along v.
        height: f64,
    },
}

/// A plane piece of the house.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surface {
    /// What it is made of.
    pub kind: Kind,
    /// What of the job it shows.
    pub of: Of,
    /// Unit vector out of the house.
    pub normal: DVec3,
    /// Where its own frame begins.
    pub origin: DVec3,
    /// Unit vector of u in its frame; on roofs and modules along the eave.
    pub u: DVec3,
    /// Unit vector of v in its frame; on roofs and modules up the slope.
    pub v: DVec3,
    /// Lines on it.
    pub marks: Marks,
}

/// A triangle of a surface; its corners run counter-clockwise for one who looks at it from outside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Triangle {
    /// Index in [`Solid::surfaces`].
    pub surface: u32,
    /// Corners.
    pub corners: [DVec3; 3],
}

impl Triangle {
    /// In m².
    pub fn area(&self) -> f64 {
        let [a, b, c] = self.corners;
        (b - a).cross(c - a).length() / 2.0
    }
}

/// Everything that stands on the lot.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solid {
    /// Surfaces.
    pub surfaces: Vec<Surface>,
    /// Their triangles. All numbers in it are finite, and none is without area.
    pub triangles: Vec<Triangle>,
    /// The least and the greatest corner of the house, the ground around it left out; `None` without a house.
    pub bounds: Option<(DVec3, DVec3)>,
}

impl Solid {
    /// The triangles of one kind.
    pub fn triangles_of(&self, kind: Kind) -> impl Iterator<Item = &Triangle> {
        self.triangles
            .iter()
            .filter(move |t| self.surfaces.get(t.surface as usize).is_some_and(|s| s.kind == kind))
    }

    /// Area of all triangles of one kind, in m².
    pub fn area_of(&self, kind: Kind) -> f64 {
        self.triangles_of(kind).map(Triangle::area).sum()
    }
}

/// What is to be seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Show {
    /// Modules and their flashing: without them, the house as it was before.
    pub array: bool,
}

impl Default for Show {
    fn default() -> Self {
        Self { array: true }
    }
}

/// The corners of all sound faces, on the roof and down on the ground: what a picture of the house must show.
pub fn outline_points(job: &Resolved, layout: &Layout) -> Vec<DVec3> {
    let ground = house::ground_height(job, layout);
    let faces = layout.roof.faces.iter().filter(|face| face.sound);
    faces
        .flat_map(|face| {
            face.plan.outer.iter().flat_map(|&p| [p.extend(face.plane.height_at(p)), p.extend(ground)])
        })
        .collect()
}

/// The house of a job in space.
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
