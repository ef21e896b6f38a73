//! A building as read from a file, before it becomes part of a job.

use crate::ImportError;
use chalkcourse_geometry::{Defect, Length, Plane, Polygon, Units};
use chalkcourse_job::{Edit, Face, FaceId, GeoPoint, Resolved, Site};
use chalkcourse_plan::{RaiseAs, area_text, raise_roof};
use chalkcourse_words as words;

/// A building read from a file, in local metres around its own centre.
#[derive(Clone, Debug, PartialEq)]
pub struct House {
    /// Its id in the file.
    pub id: String,
    /// Its name; the id if the file has none.
    pub name: String,
    /// Its shape in the file.
    pub shape: HouseShape,
    /// The centre on the globe, if the file gives it.
    pub place: Option<GeoPoint>,
    /// Caveats about the data, in sentences.
    pub notes: Vec<String>,
}

/// The shape of a building in a file.
#[derive(Clone, Debug, PartialEq)]
pub enum HouseShape {
    /// The outline of its walls.
    Footprint(Polygon),
    /// Its roof.
    Roof(CityRoof),
}

/// A roof from a city model. Every roof surface of the building is in one of the two lists.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CityRoof {
    /// Level of detail, as written in the file.
    pub lod: String,
    /// Surfaces that become faces.
    pub surfaces: Vec<Surface>,
    /// Surfaces that can't become faces.
    pub left_out: Vec<LeftOut>,
}

/// A roof surface that becomes a face.
#[derive(Clone, Debug, PartialEq)]
pub struct Surface {
    /// 1-based index among the roof surfaces of the building.
    pub number: usize,
    /// Outline and holes in plan, metres.
    pub outline: Polygon,
    /// The plane through it; heights are above the building's lowest corner.
    pub plane: Plane,
    /// Largest distance of a corner from that plane, metres.
    pub off: f64,
}

/// A roof surface that does not become a face.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftOut {
    /// 1-based index among the roof surfaces of the building.
    pub number: usize,
    /// Its 3D area, m².
    pub area: f64,
    /// Why.
    pub reason: Reason,
}

/// Why a roof surface does not become a face.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Reason {
    /// It refers to a vertex that the file does not have.
    #[error("{}", words::formats::IT_NAMES_A_VERTEX_THAT.now().to_owned())]
    NoVertex,
    /// Fewer than three distinct corners.
    #[error("{}", words::formats::IT_HAS_FEWER_THAN_THREE.now().to_owned())]
    TooFewCorners,
    /// More corners than a face of a house can have.
    #[error("{}", words::formats::it_has_corners_a_face(&_0, &crate::MOST_CORNERS))]
    TooManyCorners(usize),
    /// Its corners are collinear.
    #[error("{}", words::formats::IT_HAS_NO_AREA.now().to_owned())]
    NoArea,
    /// It is vertical, or nearly so.
    #[error("{}", words::formats::it_stands_at_as_a(&format_args!("{_0:.1}")))]
    Upright(f64),
    /// It faces down.
    #[error("{}", words::formats::IT_LOOKS_DOWN_THE_UNDERSIDE.now().to_owned())]
    Underside,
    /// It is not planar.
    #[error("{}", words::formats::a_corner_is_m_out(&format_args!("{:.3}", .0), &crate::MOST_OFF))]
    OutOfPlane(f64),
    /// Its outline in plan is invalid.
    #[error("{}", defect_words(.0))]
    Outline(Defect),
    /// It extends too far.
    #[error("{}", words::formats::it_reaches_m_no_roof(&format_args!("{_0:.0}")))]
    TooFar(f64),
}

fn defect_words(defect: &Defect) -> String {
    match defect {
        Defect::NotFinite { .. } => words::formats::A_CORNER_OF_IT_IS.now().to_owned(),
        Defect::TooFewCorners { .. } => words::formats::A_RING_OF_IT_HAS.now().to_owned(),
        Defect::RepeatedCorner { .. } => words::formats::TWO_CORNERS_OF_IT_ARE.now().to_owned(),
        Defect::NoArea { .. } => words::formats::A_RING_OF_IT_HAS_NO.now().to_owned(),
        Defect::Crosses { at } => words::formats::its_sides_cross_or_touch(
            &format_args!("{:.2}", at.x),
            &format_args!("{:.2}", at.y),
        ),
        Defect::HoleOutside { .. } => words::formats::A_HOLE_OF_IT_IS.now().to_owned(),
    }
}

impl House {
    /// Number of faces it yields; 0 for a footprint, whose roof is raised.
    pub fn faces(&self) -> usize {
        match &self.shape {
            HouseShape::Footprint(_) => 0,
            HouseShape::Roof(roof) => roof.surfaces.len(),
        }
    }

    /// Area in plan, m²: of the footprint, or of all faces.
    pub fn plan_area(&self) -> f64 {
        match &self.shape {
            HouseShape::Footprint(outline) => outline.area(),
            // an empty sum of floats is -0
            HouseShape::Roof(roof) => roof.surfaces.iter().map(|s| s.outline.area()).sum::<f64>() + 0.0,
        }
    }

    /// What was not imported as it is in the file, and what to check, in sentences.
    pub fn told(&self, units: Units) -> Vec<String> {
        let mut told = self.notes.clone();
        if let HouseShape::Roof(roof) = &self.shape {
            for surface in roof.surfaces.iter().filter(|s| s.off > crate::TOLD_OFF) {
                told.push(words::formats::roof_surface_is_no_exact(
                    &surface.number,
                    &Length::from_metres(surface.off).show_small(units),
                ));
            }
            for left in &roof.left_out {
                told.push(words::formats::roof_surface_was_left_out(
                    &left.number,
                    &area_text(left.area, units),
                    &left.reason,
                ));
            }
        }
        told
    }

    /// The edit that adds this building's roof to a job; a job without faces also gets the building's name and place. A footprint
    /// is raised according to `how`.
    ///
    /// # Errors
    /// [`ImportError`] if the footprint can't be raised, or no surface of the roof can be a face.
    pub fn edit(&self, job: &Resolved, how: &RaiseAs) -> Result<Edit, ImportError> {
        let mut edits = Vec::new();
        if job.faces.is_empty() {
            edits.push(Edit::SetName(self.name.clone()));
            if self.place.is_some() {
                edits.push(Edit::SetSite(Site { place: self.place, ..job.site.clone() }));
            }
        }
        match &self.shape {
            HouseShape::Footprint(outline) => {
                let raised = raise_roof(job, outline, how)
                    .map_err(|error| ImportError::Raise { name: self.name.clone(), error })?;
                edits.push(raised);
            }
            HouseShape::Roof(roof) if roof.surfaces.is_empty() => {
                return Err(ImportError::NoFaces {
                    name: self.name.clone(),
                    told: self.told(job.units).join(" "),
                });
            }
            HouseShape::Roof(roof) => edits.extend(put_faces(job, roof)),
        }
        Ok(Edit::Several(edits))
    }
}

/// Names a face by the direction it falls: "South", or "South 2" if that is taken; "Level" below half a degree.
fn face_name(plane: &Plane, taken: &[String]) -> String {
    let way =
        if plane.pitch.degrees() < 0.5 { words::formats::LEVEL.now() } else { plane.downslope.word().now() };
    let stem: String = way.chars().take(1).flat_map(char::to_uppercase).chain(way.chars().skip(1)).collect();
    let free = |name: &String| !taken.contains(name);
    std::iter::once(stem.clone()).chain((2..).map(|n| format!("{stem} {n}"))).find(free).unwrap_or_default()
}

fn put_faces(job: &Resolved, roof: &CityRoof) -> Vec<Edit> {
    let mut names: Vec<String> = job.faces.iter().map(|face| face.name.clone()).collect();
    let mut edits = Vec::new();
    for (id, surface) in (job.next_id..).zip(&roof.surfaces) {
        let name = face_name(&surface.plane, &names);
        names.push(name.clone());
        let Plane { pitch, downslope, .. } = surface.plane;
        let mut face = Face::new(FaceId(id), name, surface.outline.clone(), pitch, downslope, Length::ZERO);
        face.height = Length::from_metres(surface.plane.height_at(face.datum));
        edits.push(Edit::PutFace(face));
    }
    edits
}
