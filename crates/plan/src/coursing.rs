//! The courses of a face and the blocks on them: where base rails fall, what is left at the ends, and which exposure or
//! position of a block would leave whole courses.

use crate::Standing;
use chalkcourse_geometry::coursing::{
    ArrayCourses, BasePlace, Coursing, CoursingError, Exposure, Span, propose_base, propose_exposure,
};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Block, BlockId, Courses, Edit, Face, FaceId, FindingKey, Resolved, apply};
use chalkcourse_layout::{Layout, PlacedBlock};
use chalkcourse_rules::Severity;
use chalkcourse_words::{self as words, face_heading};
use serde::Serialize;
use std::fmt::Write;

/// How much less than its exposure a shingle may show: an eighth (common practice, no source; more headlap is always
/// allowed, less never).
const LESS: f64 = 0.125;
/// A course that is off by this much still looks whole: 1/16 in, as chalk lines are read.
const WITHIN: f64 = 0.0254 / 16.0;
/// Most proposals.
const MOST: usize = 12;

/// The courses of a face and the blocks on it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FaceCourses {
    /// The face.
    pub face: FaceId,
    /// Its name.
    pub name: String,
    /// Its courses, as heights in its frame, metres.
    pub courses: Coursing,
    /// Number of course lines on the face.
    pub lines: usize,
    /// Remainder of the last course below the top of the face, metres; 0 if it is whole.
    pub left_at_top: f64,
    /// The range of exposures that was searched, metres.
    pub exposures: (f64, f64),
    /// Each block that has modules.
    pub blocks: Vec<BlockCourses>,
}

/// A block among the courses.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BlockCourses {
    /// The block.
    pub block: BlockId,
    /// Its name.
    pub name: String,
    /// From the base rail to the upper edge of the highest row, in the frame of the face.
    pub span: Span,
    /// How it lies now.
    pub laid: ArrayCourses,
    /// Exposures of the whole face that bring lines to the base rail of the block as it is and to the top, best first.
    pub exposures: Vec<Exposure>,
    /// Positions of the block with whole courses below it and as many above it as the rule book requires, nearest
    /// first.
    pub places: Vec<CoursedPlace>,
}

/// A position for a block on the courses.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CoursedPlace {
    /// Where its base rail is, and what is left.
    pub base: BasePlace,
    /// Whether the rules find nothing about it there that they don't find now.
    pub clear: bool,
}

/// Why the courses of a face can't be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CoursesError {
    /// There is no such face.
    #[error("{}", words::common::the_job_has_no_face(&_0))]
    NoFace(FaceId),
    /// Its outline is not sound.
    #[error("{}", words::common::face_has_no_sound_outline(&_0))]
    Unsound(String),
    /// Invalid numbers for courses.
    #[error(transparent)]
    Courses(#[from] CoursingError),
}

/// The courses of a face, and proposals for its blocks. `exposures` is the range that the shingle may show, metres; by
/// default from seven eighths of the face's exposure up to it.
///
/// # Errors
/// If the face has no sound outline, or the numbers make no courses.
pub fn coursing(
    job: &Resolved,
    face: FaceId,
    exposures: Option<(f64, f64)>,
) -> Result<FaceCourses, CoursesError> {
    let layout = Layout::of(job);
    let (index, on) = layout.face(face).ok_or(CoursesError::NoFace(face))?;
    let drawn = job.face(face).ok_or(CoursesError::NoFace(face))?;
    let lines = layout.faces.get(index).ok_or(CoursesError::NoFace(face))?.courses;
    if !on.sound {
        return Err(CoursesError::Unsound(drawn.name.clone()));
    }
    let courses = Coursing { eave: lines.eave, top: lines.top, first: lines.first, exposure: lines.exposure };
    let exposures = exposures.unwrap_or((lines.exposure * (1.0 - LESS), lines.exposure));
    let mut told = FaceCourses {
        face,
        name: drawn.name.clone(),
        courses,
        lines: lines.count(),
        left_at_top: courses.at(courses.top)?.above,
        exposures,
        blocks: Vec::new(),
    };
    for placed in layout.blocks.iter().filter(|placed| placed.face == index) {
        if let (Some(span), Some(block)) = (block_span(job, placed), job.block(placed.id)) {
            told.blocks.push(block_courses(job, &courses, block, span, exposures)?);
        }
    }
    Ok(told)
}

/// The extent of a block along the slope, with the visible part of the head flashing; `None` without modules.
pub fn block_span(job: &Resolved, placed: &PlacedBlock) -> Option<Span> {
    let bounds = placed.bounds?;
    Some(Span { bottom: bounds.min.y, top: bounds.max.y, head: job.kit.flashing.head.metres() })
}

fn block_courses(
    job: &Resolved,
    courses: &Coursing,
    block: &Block,
    span: Span,
    exposures: (f64, f64),
) -> Result<BlockCourses, CoursesError> {
    let laid = courses.laid(&span)?;
    let mut found = propose_exposure(exposures, courses, &span, WITHIN)?;
    found.truncate(MOST);
    let rail = job.kit.laying.base_rail;
    let above = if rail.anywhere { 0.0 } else { rail.above_course_from.metres() };
    let least = usize::try_from(chalkcourse_limits::courses_asked(job)).unwrap_or(usize::MAX);
    let now = troubles(job, block);
    let mut places = Vec::new();
    for base in propose_base(courses, &span, above, least)?.into_iter().take(MOST) {
        let there = moved(block, base.bottom - span.bottom);
        let clear = apply(job, &Edit::PutBlock(there.clone())).is_ok_and(|job| {
            let then = troubles(&job, &there);
            then.iter().all(|key| now.contains(key))
        });
        places.push(CoursedPlace { base, clear });
    }
    let (id, name) = (block.id, block.name.clone());
    Ok(BlockCourses { block: id, name, span, laid, exposures: found, places })
}

/// Keys of the stops and cautions about a block.
fn troubles(job: &Resolved, block: &Block) -> Vec<FindingKey> {
    let findings = chalkcourse_rules::check(job, &Layout::of(job));
    let weighs = findings
        .into_iter()
        .filter(|f| f.place.block == Some(block.id) && f.waived.is_none() && f.severity != Severity::Note);
    weighs.map(|finding| finding.key).collect()
}

fn moved(block: &Block, up: f64) -> Block {
    let mut there = block.clone();
    there.at.y += up;
    there
}

/// The edit that changes the exposure of a face; the first line stays.
pub fn exposure_edit(job: &Resolved, face: FaceId, exposure: f64) -> Option<Edit> {
    let drawn = job.face(face)?;
    let courses = Courses { exposure: Length::from_metres(exposure), ..drawn.courses };
    Some(Edit::PutFace(Face { courses, ..drawn.clone() }))
}

/// The edit that moves a block up or down its face until its base rail is at `bottom` in the frame of the face.
pub fn base_edit(job: &Resolved, block: BlockId, bottom: f64) -> Option<Edit> {
    let block = job.block(block)?;
    let layout = Layout::of(job);
    let bounds = layout.blocks.iter().find(|placed| placed.id == block.id)?.bounds?;
    Some(Edit::PutBlock(moved(block, bottom - bounds.min.y)))
}

/// Courses of faces as text.
pub fn courses_text(job: &Resolved, faces: &[FaceCourses], standing: &Standing) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let small = |metres: f64| Length::from_metres(metres).show_small(job.units);
    let mut text = format!("{}\n{}", job.name, standing.head());
    for face in faces {
        let Coursing { eave, top, first, exposure } = face.courses;
        let _ = writeln!(
            text,
            "{}",
            words::coursing::up_the_slope_the_first(
                &face_heading(&face.name),
                &long(top - eave),
                &small(first - eave),
                &face.lines,
                &small(exposure),
                &if face.left_at_top == 0.0 {
                    words::coursing::THE_LAST_COURSE_IS_WHOLE.now().to_owned()
                } else {
                    words::coursing::are_left_below_the_top(&small(face.left_at_top))
                }
            )
        );
        for block in &face.blocks {
            block_text(&mut text, face, block, job.units);
            let lap = job.kit.flashing.head_lap.metres();
            if lap > 0.0 {
                let _ = writeln!(
                    text,
                    "{}",
                    words::coursing::the_head_flashing_shows_and(
                        &small(job.kit.flashing.head.metres()),
                        &small(lap)
                    )
                );
            }
        }
    }
    let _ = writeln!(text, "\n{}", crate::CAUTION.now());
    text
}

fn block_text(text: &mut String, face: &FaceCourses, block: &BlockCourses, units: Units) {
    let long = |metres: f64| Length::from_metres(metres).show(units);
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let ArrayCourses { base, cut_at_head, whole_to_top, left_at_top, .. } = block.laid;
    let from_eave = |v: f64| long(v - face.courses.eave);
    let rail = if base.above == 0.0 {
        words::coursing::on_course_line_2(&(base.course + 1))
    } else {
        words::coursing::above_course_line_2(&small(base.above), &(base.course + 1))
    };
    let whole = whole_words(whole_to_top);
    let cut = cut_words(cut_at_head, units);
    let _ = writeln!(
        text,
        "{}",
        words::coursing::block_base_rail_line_up(
            &block.name,
            &from_eave(block.span.bottom),
            &rail,
            &cut,
            &whole,
            &if left_at_top == 0.0 { String::new() } else { words::coursing::and_over(&small(left_at_top)) }
        )
    );
    let (least, most) = face.exposures;
    if block.exposures.is_empty() {
        let _ =
            writeln!(text, "{}", words::coursing::no_exposure_from_to_brings(&small(least), &small(most)));
    }
    for it in &block.exposures {
        let _ = writeln!(
            text,
            "{}",
            words::coursing::an_exposure_of_brings_a(
                &small(it.exposure),
                &small(it.miss()),
                &whole_words(it.below),
                &cut_words(it.cut_at_head, units),
                &whole_words(it.above)
            )
        );
    }
    for CoursedPlace { base, clear } in &block.places {
        let _ = writeln!(
            text,
            "{}",
            words::coursing::base_rail_at_course_line(
                &(base.course + 1),
                &from_eave(base.bottom),
                &cut_words(base.cut_at_head, units),
                &whole_words(base.whole_to_top),
                &if *clear { "" } else { words::coursing::THE_RULES_ARE_AGAINST_IT.now() }
            )
        );
    }
}

/// "6 whole courses"
pub fn whole_words(courses: usize) -> String {
    words::coursing::whole_courses_2(courses)
}

/// "3 13/16" of a cut course above the head flashing"
pub fn cut_words(cut: f64, units: Units) -> String {
    if cut == 0.0 {
        return words::coursing::NO_CUT_COURSE_THE_HEAD.now().to_owned();
    }
    words::coursing::of_a_cut_course_above(&Length::from_metres(cut).show_small(units))
}

#[cfg(test)]
mod tests;
