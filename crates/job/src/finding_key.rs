//! The name of a finding: which rule, about what. It stays the same from run to run, so that a waiver holds.
//!
//! Written in one form everywhere, rule and subject as steps: `setback/block-16/face-2/side-3/valley`. Sides, faces, blocks and
//! penetrations are named by numbers that are never given away again, so that a key means one thing or nothing.

use crate::{BlockId, BoxId, CircuitId, FaceId, PartId, PenetrationId};
use chalkcourse_geometry::{EdgeKind, SideId};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;
use std::str::FromStr;

/// The name of a finding.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FindingKey {
    /// The code of the rule.
    pub rule: Cow<'static, str>,
    /// What it is about.
    pub subject: Subject,
}

/// One of several matters that a rule has with one thing, as a code: `thickness`, `folds-over`.
pub type Matter = Cow<'static, str>;

/// What a finding is about. The comments have the text form.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Subject {
    /// The roof or the job as a whole: `roof`.
    Whole,
    /// One matter of the whole: `thickness`.
    Matter(Matter),
    /// A part of the house: `part-3/hidden`.
    Part(PartId, Matter),
    /// A face: `face-1`.
    Face(FaceId),
    /// The outline of a face: `face-1/folds-over`.
    Outline(FaceId, Matter),
    /// The outline of a hole, by its lowest side: `face-1/hole-5/no-area`.
    HoleOutline(FaceId, SideId, Matter),
    /// Two faces, the lower number first: `face-1/face-2`.
    Faces(FaceId, FaceId),
    /// A penetration: `penetration-6`.
    Penetration(PenetrationId),
    /// A block: `block-3`.
    Block(BlockId),
    /// A row of a block, from 1: `block-3/row-2`.
    Row(BlockId, u32),
    /// Two blocks, the lower number first: `block-3/block-4`.
    Blocks(BlockId, BlockId),
    /// A block on a face: `block-3/face-1`.
    OnFace(BlockId, FaceId),
    /// One matter of a block on a face: `block-3/face-1/eave`.
    OfBlock(BlockId, FaceId, Matter),
    /// A block beside a side of its face, where that is of one kind: `block-3/face-1/side-4/valley`.
    Side(BlockId, FaceId, SideId, EdgeKind),
    /// A block beside a hole, by the hole's lowest side: `block-3/face-1/hole-5/wall-line`.
    Hole(BlockId, FaceId, SideId, EdgeKind),
    /// A block and a penetration: `block-3/penetration-5`.
    Through(BlockId, PenetrationId),
    /// One side of a penetration: `block-3/penetration-5/above`.
    BesideOf(BlockId, PenetrationId, Matter),
    /// A circuit: `circuit-8`.
    Circuit(CircuitId),
    /// One matter of a circuit: `circuit-8/leads`.
    OfCircuit(CircuitId, Matter),
    /// A junction box: `box-9`.
    Box(BoxId),
    /// A waiver, by its own key: `setback/block-3/…`.
    Waiver(Box<FindingKey>),
    /// What a file says that this program does not know how to read, as it stands there. It names nothing.
    Unread(String),
}

/// What is wrong with the text of a key.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{}", chalkcourse_words::job::is_no_key_of_a(&_0))]
pub struct KeyError(pub String);

impl FindingKey {
    /// The key of what a rule found about something.
    pub const fn new(rule: &'static str, subject: Subject) -> Self {
        Self { rule: Cow::Borrowed(rule), subject }
    }
}

impl fmt::Display for FindingKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.subject {
            // As it stood in its file, rule and all.
            Subject::Unread(text) => f.write_str(text),
            subject => write!(f, "{}/{subject}", self.rule),
        }
    }
}

impl fmt::Display for Subject {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Whole => f.write_str("roof"),
            Self::Matter(matter) => f.write_str(matter),
            Self::Part(part, matter) => write!(f, "part-{part}/{matter}"),
            Self::Face(face) => write!(f, "face-{face}"),
            Self::Outline(face, matter) => write!(f, "face-{face}/{matter}"),
            Self::HoleOutline(face, hole, matter) => write!(f, "face-{face}/hole-{hole}/{matter}"),
            Self::Faces(one, two) => write!(f, "face-{one}/face-{two}"),
            Self::Penetration(id) => write!(f, "penetration-{id}"),
            Self::Block(block) => write!(f, "block-{block}"),
            Self::Row(block, row) => write!(f, "block-{block}/row-{row}"),
            Self::Blocks(one, two) => write!(f, "block-{one}/block-{two}"),
            Self::OnFace(block, face) => write!(f, "block-{block}/face-{face}"),
            Self::OfBlock(block, face, matter) => write!(f, "block-{block}/face-{face}/{matter}"),
            Self::Side(block, face, side, kind) => {
                write!(f, "block-{block}/face-{face}/side-{side}/{}", kind_code(*kind))
            }
            Self::Hole(block, face, hole, kind) => {
                write!(f, "block-{block}/face-{face}/hole-{hole}/{}", kind_code(*kind))
            }
            Self::Through(block, id) => write!(f, "block-{block}/penetration-{id}"),
            Self::BesideOf(block, id, matter) => write!(f, "block-{block}/penetration-{id}/{matter}"),
            Self::Circuit(id) => write!(f, "circuit-{id}"),
            Self::OfCircuit(id, matter) => write!(f, "circuit-{id}/{matter}"),
            Self::Box(id) => write!(f, "box-{id}"),
            Self::Waiver(key) => write!(f, "{key}"),
            Self::Unread(text) => f.write_str(text),
        }
    }
}

pub(crate) fn kind_code(kind: EdgeKind) -> String {
    kind.code().replace(' ', "-")
}

/// The code of the rule of findings about waivers.
pub const WAIVER: &str = "waiver";

/// A step of a key.
enum Step<'t> {
    Part(PartId),
    Face(FaceId),
    Side(SideId),
    Hole(SideId),
    Block(BlockId),
    Row(u32),
    Penetration(PenetrationId),
    Circuit(CircuitId),
    Junction(BoxId),
    Roof,
    Word(&'t str),
}

impl<'t> Step<'t> {
    fn read(step: &'t str) -> Option<Self> {
        let numbered = step.rsplit_once('-').and_then(|(what, number)| {
            // "+3" is a number too, and no step.
            let number = number.parse::<u32>().ok().filter(|id| id.to_string() == number)?;
            Some(match what {
                "part" => Self::Part(PartId(number)),
                "face" => Self::Face(FaceId(number)),
                "side" => Self::Side(SideId(number)),
                "hole" => Self::Hole(SideId(number)),
                "block" => Self::Block(BlockId(number)),
                "row" => Self::Row(number),
                "penetration" => Self::Penetration(PenetrationId(number)),
                "circuit" => Self::Circuit(CircuitId(number)),
                "box" => Self::Junction(BoxId(number)),
                _ => return None,
            })
        });
        let is_word = || !step.is_empty() && step.chars().all(|c| c.is_ascii_lowercase() || c == '-');
        match step {
            "roof" => Some(Self::Roof),
            _ => numbered.or_else(|| is_word().then_some(Self::Word(step))),
        }
    }
}

impl FromStr for FindingKey {
    type Err = KeyError;

    fn from_str(text: &str) -> Result<Self, KeyError> {
        let none = || KeyError(text.to_owned());
        let (rule, subject) = text.split_once('/').ok_or_else(none)?;
        if !matches!(Step::read(rule), Some(Step::Word(_))) {
            return Err(none());
        }
        let subject = if rule == WAIVER {
            Subject::Waiver(Box::new(subject.parse()?))
        } else {
            subject
                .split('/')
                .map(Step::read)
                .collect::<Option<Vec<_>>>()
                .as_deref()
                .and_then(of_steps)
                .ok_or_else(none)?
        };
        Ok(Self { rule: Cow::Owned(rule.to_owned()), subject })
    }
}

fn of_steps(steps: &[Step<'_>]) -> Option<Subject> {
    use Step::{Block, Circuit, Face, Hole, Junction, Part, Penetration, Roof, Row, Side, Word};
    let matter = |word: &str| Cow::Owned(word.to_owned());
    let kind = |word: &str| EdgeKind::ALL.into_iter().find(|kind| kind_code(*kind) == word);
    Some(match *steps {
        [Roof] => Subject::Whole,
        [Word(word)] => Subject::Matter(matter(word)),
        [Part(part), Word(word)] => Subject::Part(part, matter(word)),
        [Face(face)] => Subject::Face(face),
        [Face(face), Word(word)] => Subject::Outline(face, matter(word)),
        [Face(face), Hole(hole), Word(word)] => Subject::HoleOutline(face, hole, matter(word)),
        [Face(one), Face(two)] => Subject::Faces(one, two),
        [Penetration(id)] => Subject::Penetration(id),
        [Circuit(id)] => Subject::Circuit(id),
        [Circuit(id), Word(word)] => Subject::OfCircuit(id, matter(word)),
        [Junction(id)] => Subject::Box(id),
        [Block(block)] => Subject::Block(block),
        [Block(block), Row(row)] => Subject::Row(block, row),
        [Block(one), Block(two)] => Subject::Blocks(one, two),
        [Block(block), Face(face)] => Subject::OnFace(block, face),
        [Block(block), Face(face), Word(word)] => Subject::OfBlock(block, face, matter(word)),
        [Block(block), Face(face), Side(side), Word(word)] => Subject::Side(block, face, side, kind(word)?),
        [Block(block), Face(face), Hole(hole), Word(word)] => Subject::Hole(block, face, hole, kind(word)?),
        [Block(block), Penetration(id)] => Subject::Through(block, id),
        [Block(block), Penetration(id), Word(word)] => Subject::BesideOf(block, id, matter(word)),
        _ => return None,
    })
}

impl Serialize for FindingKey {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for FindingKey {
    /// A text that can't be read is kept as [`Subject::Unread`], so that what a file says is not lost on the way.
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = Cow::<'de, str>::deserialize(deserializer)?;
        Ok(text.parse().unwrap_or_else(|_| {
            let rule = text.split('/').next().unwrap_or_default().to_owned();
            Self { rule: Cow::Owned(rule), subject: Subject::Unread(text.into_owned()) }
        }))
    }
}

impl JsonSchema for FindingKey {
    fn schema_name() -> Cow<'static, str> {
        "FindingKey".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "description": "The key of a finding as reports have it: rule and subject, \"setback/block-3/face-1/side-4/rake\".",
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn subjects() -> impl Strategy<Value = Subject> {
        let id = || any::<u32>();
        let matter =
            || prop::sample::select(vec!["thickness", "folds-over", "eave", "above"]).prop_map(Cow::Borrowed);
        let kind = || prop::sample::select(EdgeKind::ALL.to_vec());
        prop_oneof![
            Just(Subject::Whole),
            matter().prop_map(Subject::Matter),
            (id(), matter()).prop_map(|(a, m)| Subject::Part(PartId(a), m)),
            id().prop_map(|a| Subject::Face(FaceId(a))),
            (id(), matter()).prop_map(|(a, m)| Subject::Outline(FaceId(a), m)),
            (id(), id(), matter()).prop_map(|(a, b, m)| Subject::HoleOutline(FaceId(a), SideId(b), m)),
            (id(), id()).prop_map(|(a, b)| Subject::Faces(FaceId(a), FaceId(b))),
            id().prop_map(|a| Subject::Penetration(PenetrationId(a))),
            id().prop_map(|a| Subject::Block(BlockId(a))),
            id().prop_map(|a| Subject::Circuit(CircuitId(a))),
            (id(), matter()).prop_map(|(a, m)| Subject::OfCircuit(CircuitId(a), m)),
            id().prop_map(|a| Subject::Box(BoxId(a))),
            (id(), id()).prop_map(|(a, b)| Subject::Row(BlockId(a), b)),
            (id(), id()).prop_map(|(a, b)| Subject::Blocks(BlockId(a), BlockId(b))),
            (id(), id()).prop_map(|(a, b)| Subject::OnFace(BlockId(a), FaceId(b))),
            (id(), id(), matter()).prop_map(|(a, b, m)| Subject::OfBlock(BlockId(a), FaceId(b), m)),
            (id(), id(), id(), kind()).prop_map(|(a, b, c, k)| Subject::Side(
                BlockId(a),
                FaceId(b),
                SideId(c),
                k
            )),
            (id(), id(), id(), kind()).prop_map(|(a, b, c, k)| Subject::Hole(
                BlockId(a),
                FaceId(b),
                SideId(c),
                k
            )),
            (id(), id()).prop_map(|(a, b)| Subject::Through(BlockId(a), PenetrationId(b))),
            (id(), id(), matter()).prop_map(|(a, b, m)| Subject::BesideOf(BlockId(a), PenetrationId(b), m)),
        ]
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_back(subject in subjects(), waived in any::<bool>()) {
            let mut key = FindingKey::new("fire-ridge", subject);
            if waived {
                key = FindingKey::new(WAIVER, Subject::Waiver(Box::new(key)));
            }
            prop_assert_eq!(&key.to_string().parse::<FindingKey>().unwrap(), &key);
            let json = serde_json::to_string(&key).unwrap();
            prop_assert_eq!(serde_json::from_str::<FindingKey>(&json).unwrap(), key);
        }

        /// Whatever is read at all is the one text of its key.
        #[test]
        fn a_key_has_one_text(text in "[a-z]{1,4}(/(part|face|side|hole|block|row|penetration|circuit|box|roof|eave)(-[+0-9]{1,3})?){1,4}") {
            if let Ok(key) = text.parse::<FindingKey>() {
                prop_assert_eq!(key.to_string(), text);
            }
        }
    }

    #[test]
    fn what_is_no_key_is_refused_and_in_a_file_kept() {
        for text in [
            "",
            "setback",
            "setback/",
            "setback/moon-3",
            "setback/block-3/face-1/side-4/moon",
            "Setback/roof",
            "a/block-01",
        ] {
            assert!(text.parse::<FindingKey>().is_err(), "{text}");
            let json = serde_json::to_string(text).unwrap();
            let kept: FindingKey = serde_json::from_str(&json).unwrap();
            assert_eq!(kept.subject, Subject::Unread(text.to_owned()));
            assert_eq!(serde_json::to_string(&kept).unwrap(), json);
        }
    }
}
