//! Job files of version 1, which named a side by ring and corner. They say the same as those of today, with the sides by
//! their numbers.

mod keys;

use crate::face::decided::FaceInFile;
use crate::{
    Block, DecidedFace, FaceId, FindingKey, Kit, OrderChoices, Overrule, Penetration, PriceList, Resolved,
    RoofPart, RuleBook, Site, Subject, TapedDeck, Underlay, Waiver,
};
use chalkcourse_geometry::{EdgeKind, Units};
use serde::Deserialize;
use std::sync::Arc;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Job {
    name: String,
    #[serde(default)]
    site: Site,
    #[serde(default)]
    units: Units,
    #[serde(default)]
    parts: Vec<RoofPart>,
    faces: Vec<OldFace>,
    #[serde(default)]
    resting: Vec<OldFace>,
    #[serde(default)]
    penetrations: Vec<Penetration>,
    #[serde(default)]
    blocks: Vec<Block>,
    #[serde(default)]
    waivers: Vec<Waiver>,
    #[serde(default)]
    underlay: Option<Underlay>,
    kit: Arc<Kit>,
    rule_book: Arc<RuleBook>,
    prices: Arc<PriceList>,
    #[serde(default)]
    order: Arc<OrderChoices>,
    next_id: u32,
}

#[derive(Deserialize)]
#[serde(try_from = "FaceInFile<OldOverrule>")]
struct OldFace {
    face: DecidedFace,
    overruled: Vec<OldOverrule>,
}

impl TryFrom<FaceInFile<OldOverrule>> for OldFace {
    type Error = String;

    fn try_from(file: FaceInFile<OldOverrule>) -> Result<Self, String> {
        let (face, overruled) = file.split()?;
        Ok(Self { face, overruled })
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct OldOverrule {
    ring: usize,
    side: usize,
    kind: EdgeKind,
}

/// What named sides by ring and corner. It can be brought over once the outlines are there.
pub(super) struct ByPlace {
    overruled: Vec<(FaceId, Vec<OldOverrule>)>,
}

impl Job {
    /// The job with all that does not name a side by its place, or does so in text alone; and the rest.
    pub(super) fn split(self) -> (crate::Job, ByPlace) {
        let Self {
            name,
            site,
            units,
            parts,
            faces,
            resting,
            penetrations,
            blocks,
            waivers,
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
        } = self;
        let mut overruled = Vec::new();
        let mut faces_of = |faces: Vec<OldFace>| -> Vec<DecidedFace> {
            let face = |old: OldFace| {
                overruled.push((old.face.id, old.overruled));
                old.face
            };
            faces.into_iter().map(face).collect()
        };
        let (faces, resting) = (faces_of(faces), faces_of(resting));
        let job = crate::Job {
            name,
            site,
            units,
            parts,
            faces,
            resting,
            penetrations,
            blocks,
            circuits: Vec::new(),
            boxes: Vec::new(),
            readings: Vec::new(),
            wiring: Arc::default(),
            waivers,
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
        };
        (job, ByPlace { overruled })
    }
}

impl ByPlace {
    /// Names the sides by the numbers that they got in the order of the outline. What named no side keeps naming none.
    pub(super) fn bring_over(self, job: &mut Resolved) {
        for (id, overruled) in self.overruled {
            let Some(face) = job.faces.iter_mut().find(|face| face.id == id) else { continue };
            for OldOverrule { ring, side, kind } in overruled {
                let side = face.sides.at(ring, side).unwrap_or_else(|| face.sides.take());
                if face.overruled_kind(side).is_none() {
                    face.overruled.push(Overrule { side, kind });
                }
            }
            face.overruled.sort_by_key(|o| o.side);
            if !face.taped.is_empty() {
                face.taped = TapedDeck { of: face.deck_sides(), ..face.taped };
            }
        }
        let read = |waiver: &Waiver| match &waiver.key.subject {
            Subject::Unread(text) => keys::read(text, job),
            _ => None,
        };
        let keys: Vec<Option<FindingKey>> = job.waivers.iter().map(read).collect();
        for (waiver, key) in job.waivers.iter_mut().zip(keys) {
            waiver.key = key.unwrap_or_else(|| waiver.key.clone());
        }
    }
}
