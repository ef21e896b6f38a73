//! Finding the objects of a job that a script refers to.

use super::{ObjectRef, Point, Spot, StepErrorKind};
use crate::{Block, Face, Penetration, Resolved, RoofPart};
use chalkcourse_geometry::{DVec2, Polygon};
use chalkcourse_words::{Say, later as words};

pub(super) fn part<'a>(job: &'a Resolved, which: &ObjectRef) -> Result<&'a RoofPart, StepErrorKind> {
    one(&job.parts, words::job::PART, which, |part| (part.id.0, &part.name))
}

pub(super) fn face<'a>(job: &'a Resolved, which: &ObjectRef) -> Result<&'a Face, StepErrorKind> {
    one(&job.faces, words::job::FACE, which, |face| (face.id.0, &face.name))
}

pub(super) fn penetration<'a>(
    job: &'a Resolved,
    which: &ObjectRef,
) -> Result<&'a Penetration, StepErrorKind> {
    one(&job.penetrations, words::job::PENETRATION, which, |there| (there.id.0, &there.name))
}

pub(super) fn block<'a>(job: &'a Resolved, which: &ObjectRef) -> Result<&'a Block, StepErrorKind> {
    one(&job.blocks, words::job::BLOCK, which, |block| (block.id.0, &block.name))
}

/// The object of a list that is referred to.
fn one<'a, T>(
    list: &'a [T],
    what: Say,
    which: &ObjectRef,
    of: impl Fn(&T) -> (u32, &str),
) -> Result<&'a T, StepErrorKind> {
    let is_meant = |item: &&T| match which {
        ObjectRef::Number(number) => of(item).0 == *number,
        ObjectRef::Name(name) => of(item).1 == name,
    };
    let mut meant = list.iter().filter(is_meant);
    let asked = which.to_string();
    let Some(first) = meant.next() else {
        let known: Vec<String> = list.iter().map(|item| format!("{} {:?}", of(item).0, of(item).1)).collect();
        return Err(StepErrorKind::NoSuch { what, asked, known: known.join(", ") });
    };
    if meant.next().is_none() {
        return Ok(first);
    }
    let numbers: Vec<String> = list.iter().filter(is_meant).map(|item| of(item).0.to_string()).collect();
    Err(StepErrorKind::SameName { what, asked, numbers: numbers.join(", ") })
}

/// The error for a corner or side that an outline does not have.
pub(super) fn no_spot(field: &'static str, spot: Spot, outline: &Polygon) -> StepErrorKind {
    let counts: Vec<String> = outline.rings().map(|ring| ring.len().to_string()).collect();
    let wrong = words::job::there_is_no_the_rings(&format_args!("{spot}"), &counts.join(", "));
    StepErrorKind::field(field, wrong)
}

/// The new position of something moved to a point or by a displacement: exactly one of the two.
pub(super) fn moved(there: DVec2, to: Option<Point>, by: Option<Point>) -> Result<DVec2, StepErrorKind> {
    match (to, by) {
        (Some(Point(to)), None) => Ok(to),
        (None, Some(Point(by))) => Ok(there + by),
        _ => Err(StepErrorKind::OneOf { one: "to", other: "by" }),
    }
}

/// The left end of a face along its eave and its lowest point, in its own frame: the origin of measurements in the
/// window.
pub(super) fn lower_left(face: &Face) -> DVec2 {
    let plane = face.plane();
    face.outline.outer.iter().map(|&corner| plane.to_frame(corner)).reduce(DVec2::min).unwrap_or_default()
}

pub(super) fn outline(corners: &[Point]) -> Polygon {
    Polygon::new(corners.iter().map(|corner| corner.0).collect())
}
