//! Edits: the only way to change a job.

mod parts;

use crate::check::{check_block, check_face, check_order, check_penetration, check_site, check_underlay};
use crate::id::MOST_NUMBER;
use crate::resolved::{Strictness, derive_faces};
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

/// An edit: the only way to change a job.
///
/// `put` edits set a whole part, face, penetration, block, circuit or junction box: with an id of the job it replaces
/// that object, otherwise it is appended as a new one, with its id from [`Job::next_id`].
///
/// As data it is an object with one field that names the edit: `{"remove-block": 7}`. [`Step`](crate::Step) has shorter
/// forms of most edits.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Edit {
    /// Adds or replaces a part of the house; its roof is raised again.
    PutPart(RoofPart),
    /// Removes a part with its faces and the blocks on them.
    RemovePart(PartId),
    /// Moves parts without changing them, with the penetrations and blocks on them.
    MoveParts {
        /// The parts.
        parts: Vec<PartId>,
        /// The rotation and shift.
        how: PlanMove,
    },
    /// Converts the faces of a part, and of the parts joined to it, to drawn faces.
    FreePart(PartId),
    /// Adds or replaces a face. For a part's face, only name, datum, courses, taped measurements and overruled edges
    /// can be changed.
    PutFace(Face),
    /// Removes a drawn face and the blocks on it.
    RemoveFace(FaceId),
    /// Adds or replaces a penetration.
    PutPenetration(Penetration),
    /// Removes a penetration.
    RemovePenetration(PenetrationId),
    /// Adds or replaces a block.
    PutBlock(Block),
    /// Removes a block.
    RemoveBlock(BlockId),
    /// Adds or replaces a circuit. Its modules are removed from other circuits.
    PutCircuit(Circuit),
    /// Removes a circuit; its modules are then in none.
    RemoveCircuit(CircuitId),
    /// Adds or replaces a junction box.
    PutBox(JunctionBox),
    /// Removes a junction box.
    RemoveBox(BoxId),
    /// Puts what was read of a circuit, in place of what was read of it before.
    PutReading(Reading),
    /// Takes away what was read of a circuit.
    RemoveReading(CircuitId),
    /// Accepts a finding, or changes the reason.
    Waive(Waiver),
    /// Withdraws the acceptance of a finding.
    Unwaive(FindingKey),
    /// Renames the job.
    SetName(String),
    /// Sets its site.
    SetSite(Site),
    /// Sets the units of length.
    SetUnits(Units),
    /// Puts a picture under the plan, or removes it.
    SetUnderlay(Option<Underlay>),
    /// Sets the wiring choices: code edition, temperatures, inverters, service, label texts.
    SetWiring(Arc<WiringChoices>),
    /// Sets the kit.
    SetKit(Arc<Kit>),
    /// Sets the rule book.
    SetRuleBook(Arc<RuleBook>),
    /// Sets the price list.
    SetPrices(Arc<PriceList>),
    /// Sets the decisions about the order: parts left out, overridden or added, stock, deliveries.
    SetOrder(Arc<OrderChoices>),
    /// Several edits that are a single step for the user.
    Several(Vec<Edit>),
}

impl Edit {
    /// The names of the edits as data.
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

    /// The edit that changes decisions about the order of a job.
    pub fn order(job: &Resolved, how: impl FnOnce(&mut OrderChoices)) -> Self {
        let mut order = (*job.order).clone();
        how(&mut order);
        Self::SetOrder(Arc::new(order))
    }
}

/// Applies an edit to a job.
///
/// # Errors
/// [`EditError`] if the edit refers to something missing or contains an invalid value.
pub fn apply(job: &Resolved, edit: &Edit) -> Result<Resolved, EditError> {
    let mut next = job.clone();
    apply_to(&mut next, edit)?;
    if touches_parts(job, edit) {
        derive_faces(&mut next, Strictness::Refuse)?;
    }
    circuits::forget_gone(&mut next);
    Ok(next)
}

/// Whether the faces of parts have to be derived again.
fn touches_parts(job: &Job<Face>, edit: &Edit) -> bool {
    match edit {
        Edit::PutPart(_) | Edit::RemovePart(_) | Edit::MoveParts { .. } | Edit::FreePart(_) => true,
        Edit::Several(edits) => edits.iter().any(|edit| touches_parts(job, edit)),
        // Its height is that of the roof over its datum, exactly as when the job is opened again.
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

/// Edits as data do not contain what a face inherits from its part: fill that in from the job.
fn fill_from_part(job: &Job<Face>, face: &mut Face) {
    let there = job.face(face.id).filter(|there| there.from.is_some() && there.from == face.from);
    let Some(there) = there.filter(|_| face.outline.outer.is_empty()) else { return };
    face.outline.clone_from(&there.outline);
    face.sides.clone_from(&there.sides);
    face.kinds.clone_from(&there.kinds);
    (face.pitch, face.downslope, face.height) = (there.pitch, there.downslope, there.height);
}

/// Reserves an id that is used in the job.
fn take_number(job: &mut Job<Face>, number: u32) -> Result<(), EditError> {
    if number > MOST_NUMBER {
        return Err(EditError::NoNumber(number));
    }
    job.next_id = job.next_id.max(number + 1);
    Ok(())
}

/// Checks that a part's face still has what it inherits from the part.
fn check_follows(job: &Job<Face>, face: &Face) -> Result<(), EditError> {
    let there = job.face(face.id);
    // Ids are unique: a resting face comes back under its own.
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
