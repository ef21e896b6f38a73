//! What a drawn outline becomes: a face, a whole roof, a hole in a face, or a penetration with its own outline.

use super::draft::Draft;
use crate::edits::{
    new_face, new_penetration,
    parting::{new_part, trouble_spot},
    usual_roof,
};
use crate::state::OutlineFor;
use crate::state::{PartPlace, State};
use crate::{Document, Selection, text};
use chalkcourse_geometry::raise::raise;
use chalkcourse_geometry::{DVec2, Polygon};
use chalkcourse_job::{Edit, PartKind, Resolved, RoofPart, Shape};
use chalkcourse_layout::Layout;
use chalkcourse_plan::part_over;
use chalkcourse_words::Said;

/// The step for a drawn outline.
pub(crate) struct Drawn {
    pub(crate) label: Said,
    pub(crate) edit: Edit,
    pub(crate) selection: Selection,
}

/// Why an outline can't be used, and the location of the error.
pub(crate) struct Refused {
    pub(crate) words: String,
    pub(crate) at: Option<DVec2>,
}

impl From<String> for Refused {
    fn from(words: String) -> Self {
        Self { words, at: None }
    }
}

/// The step for the corners of a draft.
///
/// # Errors
/// A message for the user if they can't be used.
pub(crate) fn drawn(draft: &Draft, document: &Document, state: &State) -> Result<Drawn, Refused> {
    let (job, layout) = (document.job(), &document.plan().layout);
    let corners = draft.outline()?;
    match state.outline_for {
        OutlineFor::Face => {
            let face = new_face(job, layout, corners);
            let (label, selection) = (text::draw_of(&face.name), Selection::Face(face.id));
            Ok(Drawn { label, edit: Edit::PutFace(face), selection })
        }
        OutlineFor::Roof => {
            let how = state.raise_as.unwrap_or_else(usual_roof);
            raised(text::RAISE_ROOF.into(), part_over(job, &Polygon::new(corners), &how))
        }
        OutlineFor::Part => {
            let how = state.raise_as.unwrap_or_else(usual_roof);
            let part = new_part(job, layout, state.part, &Polygon::new(corners), &how);
            raised(text::draw_of(&part.name), part)
        }
        OutlineFor::Hole => hole(job, layout, corners),
        OutlineFor::Penetration => Ok(penetration(job, layout, &corners, state)),
    }
}

/// Adds a part, if its roof can be raised.
fn raised(label: Said, part: RoofPart) -> Result<Drawn, Refused> {
    if part.kind != PartKind::Chimney
        && let Err(error) = raise(&part.footprint())
    {
        return Err(Refused { words: error.to_string(), at: trouble_spot(&error, &part.outline) });
    }
    let selection = Selection::Part(part.id, PartPlace::Whole);
    Ok(Drawn { label, edit: Edit::PutPart(part), selection })
}

/// A hole in a drawn face; over a raised roof, a courtyard of its part.
fn hole(job: &Resolved, layout: &Layout, corners: Vec<DVec2>) -> Result<Drawn, Refused> {
    let around = layout
        .roof
        .faces
        .iter()
        .position(|face| face.sound && corners.iter().all(|&p| face.plan.contains(p)));
    let drawn = around.and_then(|index| job.faces.get(index)).filter(|face| face.from.is_none());
    let Some(face) = drawn else {
        let inside = |part: &&RoofPart| {
            part.kind != PartKind::Chimney && corners.iter().all(|&p| part.outline.contains(p))
        };
        let Some(part) = job.parts.iter().find(inside) else {
            return Err(text::HOLE_IN_NO_FACE.now().to_owned().into());
        };
        return raised(text::courtyard_in(&part.name), part.with_courtyard(corners));
    };
    let (label, selection) = (text::hole_in(&face.name), Selection::Face(face.id));
    Ok(Drawn { label, edit: Edit::PutFace(face.with_hole(corners)), selection })
}

/// A penetration is measured on the deck of the face that contains its centre; outside all faces, in plan.
fn penetration(job: &Resolved, layout: &Layout, corners: &[DVec2], state: &State) -> Drawn {
    let middle = middle_of(corners);
    let home = layout.roof.faces.iter().find(|face| face.sound && face.plan.contains(middle));
    let on_deck =
        |p: DVec2| home.map_or(p - middle, |face| face.plane.to_frame(p) - face.plane.to_frame(middle));
    let shape = Shape::Polygon { corners: corners.iter().copied().map(on_deck).collect() };
    let penetration = new_penetration(job, state.kind(), middle, shape);
    let selection = Selection::Penetration(penetration.id);
    let label = text::draw_of(&penetration.name);
    Drawn { label, edit: Edit::PutPenetration(penetration), selection }
}

/// The centre of the bounds, which can be measured on site.
fn middle_of(corners: &[DVec2]) -> DVec2 {
    Polygon::new(corners.to_vec()).bounds().map_or(DVec2::ZERO, |bounds| bounds.centre())
}
