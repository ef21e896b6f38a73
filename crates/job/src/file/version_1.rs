//! Job files of version 1, which named a side by ring and corner. They say the same as those of today, with the sides by
//! their numbers.

use crate::face::in_file::FaceInFile;
use crate::{
    Block, Face, FaceId, Kit, OrderChoices, Overrule, Penetration, PriceList, RoofPart, RuleBook, Site,
    TapedDeck, Underlay, Waiver, WorkedOut,
};
use chalkcourse_geometry::{EdgeKind, SideId, Units};
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
    waivers: Vec<OldWaiver>,
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
    face: Face,
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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct OldWaiver {
    key: String,
    reason: String,
    by: String,
    date: String,
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
        let mut faces_of = |faces: Vec<OldFace>| -> Vec<Face> {
            let face = |old: OldFace| {
                overruled.push((old.face.id, old.overruled));
                old.face
            };
            faces.into_iter().map(face).collect()
        };
        let (faces, resting) = (faces_of(faces), faces_of(resting));
        let waiver = |OldWaiver { key, reason, by, date }| Waiver { key, reason, by, date };
        let job = crate::Job {
            name,
            site,
            units,
            parts,
            faces,
            resting,
            penetrations,
            blocks,
            waivers: waivers.into_iter().map(waiver).collect(),
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
            worked_out: WorkedOut::default(),
        };
        (job, ByPlace { overruled })
    }
}

impl ByPlace {
    /// Names the sides by the numbers that they got in the order of the outline. What named no side keeps naming none.
    pub(super) fn bring_over(self, job: &mut crate::Job) {
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
        let crate::Job { faces, waivers, .. } = job;
        for waiver in waivers {
            waiver.key = key_now(&waiver.key, |face, ring, side| {
                let sides = &faces.iter().find(|there| there.id == face)?.sides;
                side.map_or_else(|| sides.of_ring(ring), |side| sides.at(ring, side))
            });
        }
    }
}

/// A finding's key as version 1 wrote it, with sides by their numbers: `face-1/ring-0-side-3/rake` becomes
/// `face-1/side-7/rake`, and a hole is named by the least of its sides. `number` gives that of a side, or with `None` of a
/// ring. A key that names no side of the face stays as it was: it names nothing today.
fn key_now(key: &str, number: impl Fn(FaceId, usize, Option<usize>) -> Option<SideId>) -> String {
    let mut face = None;
    let parts = key.split('/').map(|part| {
        if let Some(id) = part.strip_prefix("face-").and_then(|id| id.parse().ok()) {
            face = Some(FaceId(id));
        }
        face.and_then(|face| part_now(part, |ring, side| number(face, ring, side)))
            .unwrap_or_else(|| part.to_owned())
    });
    parts.collect::<Vec<_>>().join("/")
}

/// The same for what is between two strokes; `None` where no side is named.
fn part_now(part: &str, number: impl Fn(usize, Option<usize>) -> Option<SideId>) -> Option<String> {
    let at = part.find("ring-").filter(|&at| at == 0 || part[..at].ends_with('-'))?;
    let (before, named) = (&part[..at], &part[at + "ring-".len()..]);
    match named.split_once("-side-") {
        Some((ring, side)) => {
            let (side, beyond) = side.split_once('-').map_or((side, None), |(side, face)| (side, Some(face)));
            let id = number(ring.parse().ok()?, Some(side.parse().ok()?))?;
            let beyond = beyond.map_or_else(String::new, |face| format!("/face-{face}"));
            Some(format!("{before}side-{id}{beyond}"))
        }
        None => match named.parse().ok()? {
            0 => Some(format!("{before}outline")),
            ring => Some(format!("{before}hole-{}", number(ring, None)?)),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Face 2 has five sides and a hole of three, numbered from 10.
    fn now(key: &str) -> String {
        key_now(key, |face, ring, side| {
            let (first, corners) = *[(10, 5), (15, 3)].get(ring).filter(|_| face == FaceId(2))?;
            let side = side.unwrap_or(0);
            (side < corners).then(|| SideId(first + side as u32))
        })
    }

    #[test]
    fn keys_of_old_name_the_same_side() {
        for (old, expect) in [
            ("setback/block-3/face-2/ring-0-side-3/rake", "setback/block-3/face-2/side-13/rake"),
            ("setback/block-3/face-2/ring-1/wall-line", "setback/block-3/face-2/hole-15/wall-line"),
            ("valley-hip/block-3/face-2/ring-1-side-2-9", "valley-hip/block-3/face-2/side-17/face-9"),
            (
                "fire-hip-valley/block-3/face-2/ring-0-side-0/face-1",
                "fire-hip-valley/block-3/face-2/side-10/face-1",
            ),
            ("fire-ridge/block-3/face-2/ring-0-side-4", "fire-ridge/block-3/face-2/side-14"),
            ("outline/face-2/no-area-ring-0", "outline/face-2/no-area-outline"),
            ("outline/face-2/hole-outside-ring-1", "outline/face-2/hole-outside-hole-15"),
            // What names no side stays, and so do keys without one.
            ("ridge-course/block-3/face-2/ring-0-side-5", "ridge-course/block-3/face-2/ring-0-side-5"),
            ("ridge-course/block-3/face-7/ring-0-side-0", "ridge-course/block-3/face-7/ring-0-side-0"),
            ("setback/block-3/face-2/ring-x/rake", "setback/block-3/face-2/ring-x/rake"),
            ("pitch/block-3/face-2", "pitch/block-3/face-2"),
            ("ring-0-side-0", "ring-0-side-0"),
            ("", ""),
        ] {
            assert_eq!(now(old), expect);
        }
    }
}
