//! The job as one document.

use crate::{
    Block, BlockId, BoxId, Circuit, CircuitId, DecidedFace, Face, FaceId, FromPart, JunctionBox, Kit,
    OrderChoices, PartId, Penetration, PenetrationId, PriceList, Reading, RoofPart, RuleBook, Site, Underlay,
    Waiver, WiringChoices,
};
use chalkcourse_geometry::Units;
use chalkcourse_geometry::raise::SideRef;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Everything that a person decided or measured for one roof, and nothing that follows from it.
// `F` is a face as it is held: `DecidedFace` with what was decided about it, as a file has it; `Face` in `Resolved`, which works
// out the rest. The sentence above stands in the schema too.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, bound(serialize = "F: Serialize", deserialize = "F: Deserialize<'de>"))]
#[schemars(rename = "Job")]
pub struct Job<F = DecidedFace> {
    /// What people call the job.
    pub name: String,
    /// Where it is.
    #[serde(default)]
    pub site: Site,
    /// How lengths are shown and typed.
    #[serde(default)]
    pub units: Units,
    /// Parts of the house, whose faces follow from them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<RoofPart>,
    /// Roof faces: drawn ones, and those of parts with what a person decided about them.
    pub faces: Vec<F>,
    /// Faces of parts that have no ground at present, because another part hides it or their side became a gable. They
    /// keep number, name and courses until they come back, and blocks wait on them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub resting: Vec<F>,
    /// What comes through the roof.
    #[serde(default)]
    pub penetrations: Vec<Penetration>,
    /// Blocks of modules.
    #[serde(default)]
    pub blocks: Vec<Block>,
    /// Strings and branches of modules.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub circuits: Vec<Circuit>,
    /// Junction boxes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub boxes: Vec<JunctionBox>,
    /// What an electrician read of circuits, one a circuit.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub readings: Vec<Reading>,
    /// What was decided about the wires as a whole.
    #[serde(default, skip_serializing_if = "is_default")]
    pub wiring: Arc<WiringChoices>,
    /// Findings that a person accepted, with the reason.
    #[serde(default)]
    pub waivers: Vec<Waiver>,
    /// A picture under the plan.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub underlay: Option<Underlay>,
    /// The maker's kit.
    pub kit: Arc<Kit>,
    /// The office's rule book.
    pub rule_book: Arc<RuleBook>,
    /// The supplier's prices.
    pub prices: Arc<PriceList>,
    /// What was decided about the order, and what arrived.
    #[serde(default, skip_serializing_if = "is_default")]
    pub order: Arc<OrderChoices>,
    /// The next free number for a part, face, penetration, block, circuit or junction box.
    pub next_id: u32,
}

fn is_default<T: Default + PartialEq>(choices: &Arc<T>) -> bool {
    **choices == T::default()
}

impl<F> Job<F> {
    /// A job without a roof.
    pub fn new(name: String, kit: Arc<Kit>, rule_book: Arc<RuleBook>, prices: Arc<PriceList>) -> Self {
        Self {
            name,
            site: Site::default(),
            units: Units::default(),
            parts: Vec::new(),
            faces: Vec::new(),
            resting: Vec::new(),
            penetrations: Vec::new(),
            blocks: Vec::new(),
            circuits: Vec::new(),
            boxes: Vec::new(),
            readings: Vec::new(),
            wiring: Arc::default(),
            waivers: Vec::new(),
            underlay: None,
            kit,
            rule_book,
            prices,
            order: Arc::default(),
            next_id: 1,
        }
    }

    /// The same with each face held otherwise.
    pub(crate) fn with_faces<G>(self, how: impl FnMut(F) -> G) -> Job<G> {
        let Self {
            name,
            site,
            units,
            parts,
            faces,
            resting,
            penetrations,
            blocks,
            circuits,
            boxes,
            readings,
            wiring,
            waivers,
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
        } = self;
        let mut how = how;
        Job {
            name,
            site,
            units,
            parts,
            faces: faces.into_iter().map(&mut how).collect(),
            resting: resting.into_iter().map(&mut how).collect(),
            penetrations,
            blocks,
            circuits,
            boxes,
            readings,
            wiring,
            waivers,
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
        }
    }
    /// The part of that number.
    pub fn part(&self, id: PartId) -> Option<&RoofPart> {
        self.parts.iter().find(|part| part.id == id)
    }
    /// The penetration of that number.
    pub fn penetration(&self, id: PenetrationId) -> Option<&Penetration> {
        self.penetrations.iter().find(|penetration| penetration.id == id)
    }
    /// The block of that number.
    pub fn block(&self, id: BlockId) -> Option<&Block> {
        self.blocks.iter().find(|block| block.id == id)
    }
    /// The circuit of that number.
    pub fn circuit(&self, id: CircuitId) -> Option<&Circuit> {
        self.circuits.iter().find(|circuit| circuit.id == id)
    }
    /// The junction box of that number.
    pub fn junction_box(&self, id: BoxId) -> Option<&JunctionBox> {
        self.boxes.iter().find(|junction| junction.id == id)
    }
    /// What was read of a circuit.
    pub fn reading(&self, circuit: CircuitId) -> Option<&Reading> {
        self.readings.iter().find(|reading| reading.circuit == circuit)
    }
}

impl Job<Face> {
    /// The face of that number.
    pub fn face(&self, id: FaceId) -> Option<&Face> {
        self.faces.iter().find(|face| face.id == id)
    }
    /// The faces on one side of a part, as pieces from left to right.
    pub fn faces_on(&self, part: PartId, side: u32) -> impl Iterator<Item = &Face> {
        let on = move |from: FromPart| (from.part, from.side) == (part, side);
        let mut pieces: Vec<&Face> = self.faces.iter().filter(|face| face.from.is_some_and(on)).collect();
        pieces.sort_by_key(|face| face.from);
        pieces.into_iter()
    }
    /// The part and the place of its side that a face comes from; `None` for a drawn one.
    pub fn side_of(&self, face: FaceId) -> Option<(&RoofPart, SideRef)> {
        let from = self.face(face)?.from?;
        let part = self.part(from.part)?;
        Some((part, part.place_of(from.side)?))
    }
    /// A part with all parts that its ground overlaps, and those that theirs does.
    pub fn parts_joined_to(&self, id: PartId) -> Vec<PartId> {
        let mut joined: Vec<&RoofPart> = self.part(id).into_iter().collect();
        let mut next = 0;
        while let Some(&one) = joined.get(next) {
            next += 1;
            for other in &self.parts {
                if !joined.iter().any(|there| there.id == other.id) && one.may_meet(other) {
                    joined.push(other);
                }
            }
        }
        joined.iter().map(|part| part.id).collect()
    }
}
