use crate::{
    Block, BlockId, Face, FaceId, Job, Kit, Penetration, PenetrationId, PriceList, RuleBook, Site, Waiver,
};
use chalkcourse_geometry::{DVec2, Length, Units};
use std::sync::Arc;

/// The only way from one job to the next.
///
/// A face, penetration or block is put whole: one that has a number of the job replaces what was there, a new one
/// comes to the end and takes its number from [`Job::next_id`].
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// Puts a face.
    PutFace(Face),
    /// Takes a face away, and the blocks that lie on it.
    RemoveFace(FaceId),
    /// Puts a penetration.
    PutPenetration(Penetration),
    /// Takes a penetration away.
    RemovePenetration(PenetrationId),
    /// Puts a block.
    PutBlock(Block),
    /// Takes a block away.
    RemoveBlock(BlockId),
    /// Accepts a finding, or changes the reason.
    Waive(Waiver),
    /// No longer accepts a finding.
    Unwaive(String),
    /// Names the job.
    SetName(String),
    /// Says where it is.
    SetSite(Site),
    /// Shows lengths another way.
    SetUnits(Units),
    /// Takes another kit.
    SetKit(Arc<Kit>),
    /// Takes another rule book.
    SetRuleBook(Arc<RuleBook>),
    /// Takes another price list.
    SetPrices(Arc<PriceList>),
    /// Several edits that are one step for the person.
    Several(Vec<Edit>),
}

/// Why an edit makes no sense. The job stays as it was.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum EditError {
    /// There is no such thing in the job.
    #[error("the job has no {what} {number}")]
    Missing {
        /// "face", "block" or "penetration".
        what: &'static str,
        /// The number asked for.
        number: u32,
    },
    /// A number is not finite or beyond 100 km.
    #[error("{what}: a position must be a number within 100 km of the origin")]
    NotAPlace {
        /// Whose.
        what: String,
    },
    /// A block is too large or empty.
    #[error("{name}: a block has 1 to {most} places, not {rows} × {columns}", most = Block::MOST_CELLS)]
    BlockSize {
        /// The block.
        name: String,
        /// Rows asked for.
        rows: u32,
        /// Columns asked for.
        columns: u32,
    },
    /// A length that must be positive, or within sense, is not.
    #[error("{what} must be more than 0 and less than 1 km")]
    BadLength {
        /// Which.
        what: String,
    },
    /// A waiver needs a reason.
    #[error("a waiver needs a reason: write why this may be built so")]
    NoReason,
}

/// The job after an edit.
///
/// # Errors
/// [`EditError`] when the edit names what is not there or carries a number that no roof has.
pub fn apply(job: &Job, edit: &Edit) -> Result<Job, EditError> {
    let mut next = job.clone();
    apply_to(&mut next, edit)?;
    Ok(next)
}

fn apply_to(job: &mut Job, edit: &Edit) -> Result<(), EditError> {
    match edit {
        Edit::PutFace(face) => {
            check_face(face)?;
            put(&mut job.faces, face, |f| f.id.0);
            job.next_id = job.next_id.max(face.id.0.saturating_add(1));
        }
        Edit::RemoveFace(id) => {
            remove(&mut job.faces, "face", id.0, |f| f.id.0)?;
            job.blocks.retain(|block| block.face != *id);
        }
        Edit::PutPenetration(penetration) => {
            check_penetration(penetration)?;
            put(&mut job.penetrations, penetration, |p| p.id.0);
            job.next_id = job.next_id.max(penetration.id.0.saturating_add(1));
        }
        Edit::RemovePenetration(id) => remove(&mut job.penetrations, "penetration", id.0, |p| p.id.0)?,
        Edit::PutBlock(block) => {
            check_block(block)?;
            if job.face(block.face).is_none() {
                return Err(EditError::Missing { what: "face", number: block.face.0 });
            }
            put(&mut job.blocks, block, |b| b.id.0);
            job.next_id = job.next_id.max(block.id.0.saturating_add(1));
        }
        Edit::RemoveBlock(id) => remove(&mut job.blocks, "block", id.0, |b| b.id.0)?,
        Edit::Waive(waiver) => {
            if waiver.reason.trim().is_empty() {
                return Err(EditError::NoReason);
            }
            match job.waivers.iter_mut().find(|w| w.key == waiver.key) {
                Some(there) => *there = waiver.clone(),
                None => job.waivers.push(waiver.clone()),
            }
        }
        Edit::Unwaive(key) => job.waivers.retain(|w| w.key != *key),
        Edit::SetName(name) => job.name.clone_from(name),
        Edit::SetSite(site) => job.site.clone_from(site),
        Edit::SetUnits(units) => job.units = *units,
        Edit::SetKit(kit) => job.kit = Arc::clone(kit),
        Edit::SetRuleBook(book) => job.rule_book = Arc::clone(book),
        Edit::SetPrices(prices) => job.prices = Arc::clone(prices),
        Edit::Several(edits) => edits.iter().try_for_each(|edit| apply_to(job, edit))?,
    }
    Ok(())
}

fn put<T: Clone>(list: &mut Vec<T>, item: &T, id: impl Fn(&T) -> u32) {
    match list.iter_mut().find(|there| id(there) == id(item)) {
        Some(there) => *there = item.clone(),
        None => list.push(item.clone()),
    }
}

fn remove<T>(
    list: &mut Vec<T>,
    what: &'static str,
    number: u32,
    id: impl Fn(&T) -> u32,
) -> Result<(), EditError> {
    let before = list.len();
    list.retain(|item| id(item) != number);
    if list.len() == before { Err(EditError::Missing { what, number }) } else { Ok(()) }
}

fn is_place(p: DVec2) -> bool {
    p.is_finite() && p.abs().max_element() <= 1e5
}

fn is_sensible(length: Length) -> bool {
    length.metres() > 0.0 && length.metres() < 1000.0
}

/// What a face must be to be in a job at all. A wrong outline is allowed: it is told as a finding.
pub(crate) fn check_face(face: &Face) -> Result<(), EditError> {
    let places = face.outline.rings().flatten().chain(std::iter::once(&face.datum));
    if !places.copied().all(is_place) || !is_place(DVec2::splat(face.height.metres())) {
        return Err(EditError::NotAPlace { what: format!("face {}", face.name) });
    }
    if !is_sensible(face.courses.exposure) || !(0.0..1000.0).contains(&face.courses.first.metres()) {
        return Err(EditError::BadLength { what: format!("the courses of face {}", face.name) });
    }
    Ok(())
}

pub(crate) fn check_penetration(penetration: &Penetration) -> Result<(), EditError> {
    use crate::Shape;
    let what = || format!("penetration {}", penetration.name);
    if !is_place(penetration.at) {
        return Err(EditError::NotAPlace { what: what() });
    }
    let sizes_hold = match &penetration.shape {
        Shape::Circle { diameter } => is_sensible(*diameter),
        Shape::Rectangle { along, up } => is_sensible(*along) && is_sensible(*up),
        Shape::Polygon { corners } => corners.len() >= 3 && corners.iter().copied().all(is_place),
    };
    let clearance_holds = penetration.clearance.is_none_or(|c| (0.0..1000.0).contains(&c.metres()));
    if sizes_hold && clearance_holds { Ok(()) } else { Err(EditError::BadLength { what: what() }) }
}

pub(crate) fn check_block(block: &Block) -> Result<(), EditError> {
    if !is_place(block.at) || !block.shifts.iter().all(|s| is_place(DVec2::splat(s.by.metres()))) {
        return Err(EditError::NotAPlace { what: format!("block {}", block.name) });
    }
    let cells = u64::from(block.rows) * u64::from(block.columns);
    if !(1..=Block::MOST_CELLS).contains(&cells) {
        return Err(EditError::BlockSize {
            name: block.name.clone(),
            rows: block.rows,
            columns: block.columns,
        });
    }
    if (0.0..1000.0).contains(&block.reveal.metres()) {
        Ok(())
    } else {
        Err(EditError::BadLength { what: format!("the reveal of block {}", block.name) })
    }
}
