//! Finding keys of version 1, which referred to sides and holes by their positions in the outline.

use crate::finding_key::kind_code;
use crate::{BlockId, FaceId, FindingKey, Resolved, Subject};
use chalkcourse_geometry::{EdgeKind, Roof, SideId, Tolerances};
use std::borrow::Cow;

/// Reads a key of version 1, in the context of its job. `None` if it can't be determined what it referred to.
pub(super) fn read(text: &str, job: &Resolved) -> Option<FindingKey> {
    let (rule, rest) = text.split_once('/')?;
    let steps: Vec<&str> = rest.split('/').collect();
    let numbered = |step: &str, what: &str| step.strip_prefix(what)?.parse::<u32>().ok();
    let subject = match (rule, steps.as_slice()) {
        ("outline", [face, fault]) => outline(job, FaceId(numbered(face, "face-")?), fault)?,
        ("laying", [block, "rail"]) => {
            let block = job.block(BlockId(numbered(block, "block-")?))?;
            Subject::OfBlock(block.id, block.face, Cow::Borrowed("rail"))
        }
        (_, [block, face, edge, more @ ..]) => {
            let (block, face) = (BlockId(numbered(block, "block-")?), FaceId(numbered(face, "face-")?));
            let place = EdgeIndex::read(edge)?;
            let drawn = job.face(face)?;
            match place.side {
                Some(side) => {
                    let id = drawn.sides.at(place.ring, side)?;
                    Subject::Side(block, face, id, kind_of(rule, more, job, face, id)?)
                }
                None => Subject::Hole(
                    block,
                    face,
                    drawn.sides.of_ring(place.ring)?,
                    kind_of(rule, more, job, face, SideId(0))?,
                ),
            }
        }
        _ => return None,
    };
    Some(FindingKey { rule: Cow::Owned(rule.to_owned()), subject })
}

/// `folds-over`, or `no-area-ring-1`.
fn outline(job: &Resolved, face: FaceId, fault: &str) -> Option<Subject> {
    let matter = |fault: &str| Cow::Owned(fault.to_owned());
    match fault.rsplit_once("-ring-") {
        None => Some(Subject::Outline(face, matter(fault))),
        Some((fault, "0")) => Some(Subject::Outline(face, matter(fault))),
        Some((fault, ring)) => {
            let hole = job.face(face)?.sides.of_ring(ring.parse().ok()?)?;
            Some(Subject::HoleOutline(face, hole, matter(fault)))
        }
    }
}

/// `ring-0-side-3`, `ring-1`, or `ring-0-side-3-7` with the id of the face beyond.
struct EdgeIndex {
    ring: usize,
    side: Option<usize>,
}

impl EdgeIndex {
    fn read(step: &str) -> Option<Self> {
        let mut words = step.split('-');
        let mut number = |what: &str| (words.next()? == what).then(|| words.next())??.parse().ok();
        let ring = number("ring")?;
        Some(Self { ring, side: number("side") })
    }
}

/// The edge kind of a key: given in it, always that of its rule, or the kind of the side.
fn kind_of(rule: &str, more: &[&str], job: &Resolved, face: FaceId, side: SideId) -> Option<EdgeKind> {
    match (rule, more) {
        ("setback", [word]) => EdgeKind::ALL.into_iter().find(|kind| kind_code(*kind) == *word),
        ("ridge-course" | "fire-ridge", []) => Some(EdgeKind::Ridge),
        ("valley-hip", []) | ("fire-hip-valley", [_]) => {
            let inputs: Vec<_> = job.faces.iter().map(crate::Face::input).collect();
            let roof = Roof::assemble(&inputs, Tolerances::default());
            let at = job.faces.iter().position(|there| there.id == face)?;
            let spans = roof.faces.get(at)?.edges.iter().filter(|span| span.id == side);
            spans.map(|span| span.kind).find(|kind| matches!(kind, EdgeKind::Valley | EdgeKind::Hip))
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Block, Face, builtin_kit, builtin_prices, builtin_rule_book};
    use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon};

    /// Two planes that meet in a hip, the south one with a hole; block 3 is on it.
    fn job() -> Resolved {
        let face = |id: u32, corners: &[(f64, f64)], downslope: f64| {
            Face::new(
                FaceId(id),
                id.to_string(),
                Polygon::new(corners.iter().map(|&c| c.into()).collect()),
                Pitch::from_rise_in_12(6.0).unwrap(),
                Azimuth::from_degrees(downslope),
                Length::from_metres(3.0),
            )
        };
        let mut job = Resolved::new("Old".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        job.faces = vec![
            face(1, &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 180.0),
            face(2, &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 270.0),
        ];
        job.faces[0] =
            job.faces[0].with_hole([(6.0, 1.0), (7.0, 1.0), (7.0, 2.0), (6.0, 2.0)].map(Into::into).to_vec());
        job.blocks = vec![Block {
            id: BlockId(3),
            name: String::new(),
            face: FaceId(1),
            at: (2.0, 1.0).into(),
            rows: 1,
            columns: 1,
            orientation: crate::Orientation::default(),
            reveal: Length::from_mm(3.0),
            shifts: Vec::new(),
            off: Default::default(),
            locked: false,
        }];
        job
    }

    #[test]
    fn old_keys_keep_their_meaning() {
        let job = job();
        for (old, new) in [
            ("setback/block-3/face-1/ring-0-side-2/rake", "setback/block-3/face-1/side-2/rake"),
            ("setback/block-3/face-1/ring-0-side-0/wall-line", "setback/block-3/face-1/side-0/wall-line"),
            ("setback/block-3/face-1/ring-1/wall-line", "setback/block-3/face-1/hole-3/wall-line"),
            ("valley-hip/block-3/face-1/ring-0-side-2-2", "valley-hip/block-3/face-1/side-2/hip"),
            (
                "fire-hip-valley/block-3/face-1/ring-0-side-2/face-2",
                "fire-hip-valley/block-3/face-1/side-2/hip",
            ),
            ("fire-ridge/block-3/face-1/ring-0-side-1", "fire-ridge/block-3/face-1/side-1/ridge"),
            ("outline/face-1/folds-over", "outline/face-1/folds-over"),
            ("outline/face-1/repeated-corner-ring-0", "outline/face-1/repeated-corner"),
            ("outline/face-1/no-area-ring-1", "outline/face-1/hole-3/no-area"),
            ("laying/block-3/rail", "laying/block-3/face-1/rail"),
        ] {
            let read = read(old, &job).unwrap_or_else(|| panic!("{old}"));
            assert_eq!(read.to_string(), new);
            assert_eq!(new.parse(), Ok(read.clone()));
            assert_eq!(read.missing(&job), None);
        }
    }

    #[test]
    fn references_to_missing_sides_are_dropped() {
        let job = job();
        for old in [
            "setback/block-3/face-1/ring-0-side-3/rake",
            "setback/block-3/face-9/ring-0-side-0/rake",
            "setback/block-3/face-1/ring-2/wall-line",
            "valley-hip/block-3/face-1/ring-0-side-0-0",
            "laying/block-4/rail",
            "part/3",
            "moon",
        ] {
            assert_eq!(read(old, &job), None, "{old}");
        }
    }
}
