//! The only way from one job to the next.

mod parts;

use crate::check::{check_block, check_face, check_order, check_penetration, check_site, check_underlay};
use crate::id::MOST_NUMBER;
use crate::resolved::{Strictness, follow};
use crate::{
    Block, BlockId, BoxId, Circuit, CircuitId, EditError, Face, FaceId, FindingKey, Job, JunctionBox,
    KeyError, Kit, OrderChoices, PartId, Penetration, PenetrationId, PlanMove, PriceList, Reading, Resolved,
    RoofPart, RuleBook, Site, Subject, Underlay, Waiver, WiringChoices, circuits,
};
use chalkcourse_geometry::Units;
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// The only way from one job to the next.
///
/// A part, face, penetration, block, circuit or junction box is put whole: one that has a number of the job replaces what was there, a new one
/// comes to the end and takes its number from [`Job::next_id`].
///
/// As data it is an object with one field that names what is done: `{"remove-block": 7}`. [`Step`](crate::Step) has shorter ways to
/// say most of them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Edit {
    /// Puts a part of the house; its roof is raised again.
    PutPart(RoofPart),
    /// Takes a part away with its faces, and the blocks that lie on them.
    RemovePart(PartId),
    /// Moves parts as they are, with the penetrations and blocks on them.
    MoveParts {
        /// Which.
        parts: Vec<PartId>,
        /// Turned and shifted so.
        how: PlanMove,
    },
    /// Turns the faces of a part, and of the parts that it meets, into drawn ones.
    FreePart(PartId),
    /// Puts a face. Of one that comes from a part, name, datum, courses, what was taped and overruled edges are a person's
    /// to change.
    PutFace(Face),
    /// Takes a drawn face away, and the blocks that lie on it.
    RemoveFace(FaceId),
    /// Puts a penetration.
    PutPenetration(Penetration),
    /// Takes a penetration away.
    RemovePenetration(PenetrationId),
    /// Puts a block.
    PutBlock(Block),
    /// Takes a block away.
    RemoveBlock(BlockId),
    /// Puts a circuit. Its modules leave the circuits that they were in.
    PutCircuit(Circuit),
    /// Takes a circuit away; its modules are in none.
    RemoveCircuit(CircuitId),
    /// Puts a junction box.
    PutBox(JunctionBox),
    /// Takes a junction box away.
    RemoveBox(BoxId),
    /// Puts what was read of a circuit, in place of what was read of it before.
    PutReading(Reading),
    /// Takes away what was read of a circuit.
    RemoveReading(CircuitId),
    /// Accepts a finding, or changes the reason.
    Waive(Waiver),
    /// No longer accepts a finding.
    Unwaive(FindingKey),
    /// Names the job.
    SetName(String),
    /// Says where it is.
    SetSite(Site),
    /// Shows lengths another way.
    SetUnits(Units),
    /// Lays a picture under the plan, or takes it away.
    SetUnderlay(Option<Underlay>),
    /// Decides about the wires as a whole: edition, temperatures, inverters, service, texts of labels.
    SetWiring(Arc<WiringChoices>),
    /// Takes another kit.
    SetKit(Arc<Kit>),
    /// Takes another rule book.
    SetRuleBook(Arc<RuleBook>),
    /// Takes another price list.
    SetPrices(Arc<PriceList>),
    /// Decides about the order: what is off, overridden or added, what is in stock, what arrived.
    SetOrder(Arc<OrderChoices>),
    /// Several edits that are one step for the person.
    Several(Vec<Edit>),
}

impl Edit {
    /// What each begins with as data.
    pub(crate) const NAMES: [&str; 28] = [
        "put-part",
        "remove-part",
        "move-parts",
        "free-part",
        "put-face",
        "remove-face",
        "put-penetration",
        "remove-penetration",
        "put-block",
        "remove-block",
        "put-circuit",
        "remove-circuit",
        "put-box",
        "remove-box",
        "put-reading",
        "remove-reading",
        "waive",
        "unwaive",
        "set-name",
        "set-site",
        "set-units",
        "set-underlay",
        "set-wiring",
        "set-kit",
        "set-rule-book",
        "set-prices",
        "set-order",
        "several",
    ];

    /// The edit that changes some decisions about the order of a job.
    pub fn order(job: &Resolved, how: impl FnOnce(&mut OrderChoices)) -> Self {
        let mut order = (*job.order).clone();
        how(&mut order);
        Self::SetOrder(Arc::new(order))
    }
}

/// The job after an edit.
///
/// # Errors
/// [`EditError`] when the edit names what is not there or carries a number that no roof has.
pub fn apply(job: &Resolved, edit: &Edit) -> Result<Resolved, EditError> {
    let mut next = job.clone();
    apply_to(&mut next, edit)?;
    if touches_parts(job, edit) {
        follow(&mut next, Strictness::Refuse)?;
    }
    circuits::forget_gone(&mut next);
    Ok(next)
}

/// Whether faces have to follow their parts again.
fn touches_parts(job: &Job<Face>, edit: &Edit) -> bool {
    match edit {
        Edit::PutPart(_) | Edit::RemovePart(_) | Edit::MoveParts { .. } | Edit::FreePart(_) => true,
        Edit::Several(edits) => edits.iter().any(|edit| touches_parts(job, edit)),
        // Its height is that of the roof over its datum, the very same as when the job is opened again.
        Edit::PutFace(face) => {
            face.from.is_some() && job.face(face.id).is_some_and(|there| there.datum != face.datum)
        }
        _ => false,
    }
}

fn apply_to(job: &mut Job<Face>, edit: &Edit) -> Result<(), EditError> {
    match edit {
        Edit::PutPart(part) => parts::put(job, part)?,
        Edit::RemovePart(id) => parts::remove(job, *id)?,
        Edit::MoveParts { parts, how } => parts::relocate(job, parts, how)?,
        Edit::FreePart(id) => parts::free(job, *id)?,
        Edit::PutFace(face) => {
            let mut face = face.clone();
            fill_from_part(job, &mut face);
            if face.from.is_none() {
                face.settle_sides(job.face(face.id));
            }
            check_face(&face)?;
            check_follows(job, &face)?;
            take_number(job, face.id.0)?;
            put(&mut job.faces, &face, |f| f.id.0);
        }
        Edit::RemoveFace(id) => {
            if let Some(face) = job.face(*id).filter(|face| face.from.is_some()) {
                return Err(EditError::FollowsPart { name: face.name.clone() });
            }
            remove(&mut job.faces, words::job::FACE, id.0, |f| f.id.0)?;
            job.blocks.retain(|block| block.face != *id);
        }
        Edit::PutPenetration(penetration) => {
            check_penetration(penetration)?;
            take_number(job, penetration.id.0)?;
            put(&mut job.penetrations, penetration, |p| p.id.0);
        }
        Edit::RemovePenetration(id) => {
            remove(&mut job.penetrations, words::job::PENETRATION, id.0, |p| p.id.0)?;
        }
        Edit::PutBlock(block) => {
            check_block(block)?;
            if job.face(block.face).is_none() && !job.resting.iter().any(|face| face.id == block.face) {
                return Err(EditError::Missing { what: words::job::FACE, number: block.face.0 });
            }
            take_number(job, block.id.0)?;
            put(&mut job.blocks, block, |b| b.id.0);
        }
        Edit::RemoveBlock(id) => remove(&mut job.blocks, words::job::BLOCK, id.0, |b| b.id.0)?,
        Edit::PutCircuit(circuit) => {
            circuits::check_circuit(job, circuit)?;
            take_number(job, circuit.id.0)?;
            circuits::leave_others(job, circuit);
            put(&mut job.circuits, circuit, |c| c.id.0);
        }
        Edit::RemoveCircuit(id) => remove(&mut job.circuits, words::job::CIRCUIT, id.0, |c| c.id.0)?,
        Edit::PutBox(junction) => {
            circuits::check_box(junction)?;
            take_number(job, junction.id.0)?;
            put(&mut job.boxes, junction, |b| b.id.0);
        }
        Edit::RemoveBox(id) => remove(&mut job.boxes, words::job::JUNCTION_BOX, id.0, |b| b.id.0)?,
        Edit::PutReading(reading) => {
            circuits::check_reading(job, reading)?;
            put(&mut job.readings, reading, |r| r.circuit.0);
        }
        Edit::RemoveReading(id) => remove(&mut job.readings, words::job::READING, id.0, |r| r.circuit.0)?,
        Edit::SetWiring(choices) => {
            circuits::check_choices(choices)?;
            job.wiring = Arc::clone(choices);
        }
        Edit::Waive(waiver) => {
            if waiver.reason.trim().is_empty() {
                return Err(EditError::NoReason);
            }
            if let Subject::Unread(text) = &waiver.key.subject {
                return Err(KeyError(text.clone()).into());
            }
            match job.waivers.iter_mut().find(|w| w.key == waiver.key) {
                Some(there) => *there = waiver.clone(),
                None => job.waivers.push(waiver.clone()),
            }
        }
        Edit::Unwaive(key) => job.waivers.retain(|w| w.key != *key),
        Edit::SetName(name) => job.name.clone_from(name),
        Edit::SetSite(site) => {
            check_site(site)?;
            job.site.clone_from(site);
        }
        Edit::SetUnits(units) => job.units = *units,
        Edit::SetUnderlay(underlay) => {
            check_underlay(underlay.as_ref())?;
            job.underlay.clone_from(underlay);
        }
        Edit::SetKit(kit) => {
            kit.check().map_err(|wrong| EditError::Data { what: words::job::THE_KIT, wrong })?;
            job.kit = Arc::clone(kit);
        }
        Edit::SetRuleBook(book) => {
            let what = words::job::THE_RULE_BOOK;
            book.check().map_err(|wrong| EditError::Data { what, wrong })?;
            job.rule_book = Arc::clone(book);
        }
        Edit::SetPrices(prices) => {
            let what = words::job::THE_PRICE_LIST;
            prices.check().map_err(|wrong| EditError::Data { what, wrong })?;
            job.prices = Arc::clone(prices);
        }
        Edit::SetOrder(order) => {
            check_order(order, &job.kit).map_err(EditError::Order)?;
            job.order = Arc::clone(order);
        }
        Edit::Several(edits) => edits.iter().try_for_each(|edit| apply_to(job, edit))?,
    }
    Ok(())
}

/// What of a face follows from its part is in no data: it is as the job has it.
fn fill_from_part(job: &Job<Face>, face: &mut Face) {
    let there = job.face(face.id).filter(|there| there.from.is_some() && there.from == face.from);
    let Some(there) = there.filter(|_| face.outline.outer.is_empty()) else { return };
    face.outline.clone_from(&there.outline);
    face.sides.clone_from(&there.sides);
    face.kinds.clone_from(&there.kinds);
    (face.pitch, face.downslope, face.height) = (there.pitch, there.downslope, there.height);
}

/// Takes a number that something of the job has or gets.
fn take_number(job: &mut Job<Face>, number: u32) -> Result<(), EditError> {
    if number > MOST_NUMBER {
        return Err(EditError::NoNumber(number));
    }
    job.next_id = job.next_id.max(number + 1);
    Ok(())
}

/// A face of a part keeps what follows from the part.
fn check_follows(job: &Job<Face>, face: &Face) -> Result<(), EditError> {
    let there = job.face(face.id);
    // One number, one face: a face that rests comes back under its own.
    let rests = job.resting.iter().any(|resting| resting.id == face.id);
    let holds = !rests
        && match (there.map(|there| (there, there.from)), face.from) {
            (None | Some((_, None)), None) => true,
            (Some((there, Some(from))), Some(same)) => {
                from == same
                    && (&there.outline, &there.sides) == (&face.outline, &face.sides)
                    && there.borders == face.borders
                    && there.kinds == face.kinds
                    && (there.pitch, there.downslope) == (face.pitch, face.downslope)
                    && (there.height == face.height || there.datum != face.datum)
            }
            _ => false,
        };
    if holds { Ok(()) } else { Err(EditError::FollowsPart { name: face.name.clone() }) }
}

fn put<T: Clone>(list: &mut Vec<T>, item: &T, id: impl Fn(&T) -> u32) {
    match list.iter_mut().find(|there| id(there) == id(item)) {
        Some(there) => *there = item.clone(),
        None => list.push(item.clone()),
    }
}

fn remove<T>(list: &mut Vec<T>, what: Say, number: u32, id: impl Fn(&T) -> u32) -> Result<(), EditError> {
    let before = list.len();
    list.retain(|item| id(item) != number);
    if list.len() == before { Err(EditError::Missing { what, number }) } else { Ok(()) }
}
