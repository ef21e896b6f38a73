//! Blocks and penetrations on the clipboard.

use crate::check::{check_block, check_penetration, is_place};
use crate::data_file::{DATA_VERSION, data_from_text, file_schema};
use crate::{Block, EditError, FileError, Penetration};
use chalkcourse_geometry::DVec2;
use chalkcourse_words::{Said, later as words};
use schemars::{JsonSchema, Schema};
use serde::{Deserialize, Serialize};
use std::path::Path;

/// The format name in the clipboard text.
pub const PIECES_FORMAT: &str = "chalkcourse-pieces";
/// Most objects that can be copied at once.
const MOST: usize = 2_000;

/// Blocks and penetrations copied from a roof, with their relative positions.
///
/// Ids, names and faces in it are those of the source job; pasting assigns new ones.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Pieces {
    /// Whether they come from a single face: then positions are in its frame, to the right along the eave and up the
    /// slope. Otherwise in plan, x east and y north.
    pub of_one_face: bool,
    /// Blocks, each with its centre.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub blocks: Vec<Piece<Block>>,
    /// Penetrations, each with its centre.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub penetrations: Vec<Piece<Penetration>>,
}

/// A copied object.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Piece<T> {
    /// Its centre relative to the centre of all pieces, metres.
    #[schemars(with = "[f64; 2]")]
    pub from_middle: DVec2,
    /// The object as it was in its job.
    pub what: T,
}

impl Pieces {
    /// Whether there is nothing in it.
    pub fn is_empty(&self) -> bool {
        self.blocks.is_empty() && self.penetrations.is_empty()
    }
}

/// Pieces as clipboard text.
///
/// # Errors
/// [`FileError::Wrong`] if a number in it is not finite.
pub fn pieces_to_text(pieces: &Pieces) -> Result<String, FileError> {
    #[derive(Serialize)]
    struct Out<'a> {
        format: &'a str,
        version: u32,
        data: &'a Pieces,
    }
    let out = Out { format: PIECES_FORMAT, version: DATA_VERSION, data: pieces };
    serde_json::to_string_pretty(&out).map_err(|error| FileError::wrong(clipboard(), error.to_string()))
}

/// Reads pieces from a text.
///
/// # Errors
/// [`FileError`] names the line or field and what was expected; objects that no job could hold are rejected.
pub fn pieces_from_text(text: &str) -> Result<Pieces, FileError> {
    let pieces: Pieces = data_from_text(text, clipboard(), PIECES_FORMAT)?;
    let wrong = |words: String| FileError::wrong(clipboard(), Said::own(words));
    if pieces.blocks.len() + pieces.penetrations.len() > MOST {
        return Err(wrong(format!("data: > {MOST}")));
    }
    let middle = |at: DVec2, name: &str| match is_place(at) {
        true => Ok(()),
        false => Err(EditError::NotAPlace { what: Said::own(name) }),
    };
    for (nth, Piece { from_middle, what }) in pieces.blocks.iter().enumerate() {
        check_block(what)
            .and_then(|()| middle(*from_middle, &what.name))
            .map_err(|error| wrong(format!("field data.blocks[{nth}]: {error}")))?;
    }
    for (nth, Piece { from_middle, what }) in pieces.penetrations.iter().enumerate() {
        check_penetration(what)
            .and_then(|()| middle(*from_middle, &what.name))
            .map_err(|error| wrong(format!("field data.penetrations[{nth}]: {error}")))?;
    }
    Ok(pieces)
}

/// The JSON Schema (2020-12) of the clipboard text.
pub fn pieces_schema() -> Schema {
    file_schema::<Pieces>(PIECES_FORMAT)
}

/// The name that an error shows in place of a file path.
fn clipboard() -> &'static Path {
    Path::new(words::job::THE_CLIPBOARD.now())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{BlockId, FaceId, Orientation, PenetrationId, PenetrationKind};
    use chalkcourse_geometry::{Length, dvec2};

    fn pieces() -> Pieces {
        let block = Block {
            id: BlockId(7),
            name: "A".to_owned(),
            face: FaceId(3),
            at: dvec2(1.0, 2.0),
            rows: 2,
            columns: 3,
            orientation: Orientation::Landscape,
            reveal: Length::from_metres(0.006),
            shifts: Vec::new(),
            off: std::collections::BTreeSet::new(),
            locked: false,
        };
        let pipe = Penetration {
            id: PenetrationId(9),
            name: "Pipe 1".to_owned(),
            kind: PenetrationKind::PipeBoot,
            at: dvec2(4.0, 4.0),
            shape: PenetrationKind::PipeBoot.usual_shape(),
            clearance: None,
        };
        Pieces {
            of_one_face: true,
            blocks: vec![Piece { from_middle: dvec2(0.0, 0.5), what: block }],
            penetrations: vec![Piece { from_middle: dvec2(-1.0, 0.0), what: pipe }],
        }
    }

    #[test]
    fn pieces_round_trip() {
        let text = pieces_to_text(&pieces()).unwrap();
        assert_eq!(pieces_from_text(&text).unwrap(), pieces());
    }

    #[test]
    fn other_clipboard_texts_are_refused() {
        let text = pieces_to_text(&pieces()).unwrap();
        assert!(matches!(pieces_from_text("Hello"), Err(FileError::Malformed { .. })));
        let job = text.replace(PIECES_FORMAT, crate::JOB_FORMAT);
        assert!(matches!(pieces_from_text(&job), Err(FileError::OtherFormat { .. })));
        let newer = text.replace("\"version\": 1", "\"version\": 2");
        assert!(matches!(pieces_from_text(&newer), Err(FileError::Newer { .. })));
        let huge = text.replace("\"rows\": 2", "\"rows\": 4000000000");
        assert!(matches!(pieces_from_text(&huge), Err(FileError::Wrong { .. })), "{huge}");
        let far = Pieces { blocks: pieces().blocks, ..Pieces::default() };
        let far = pieces_to_text(&far).unwrap().replace("0.5", "1e300");
        assert!(matches!(pieces_from_text(&far), Err(FileError::Wrong { .. })), "{far}");
    }
}
