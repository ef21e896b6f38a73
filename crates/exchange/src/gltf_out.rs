//! The house as glTF 2.0 (ISO/IEC 12113:2022) in its binary container (.glb).
//!
//! One node for each face, penetration and module, for the border of each block and for the walls; one material per kind of
//! surface. Metres; glTF has y up and z towards the viewer, so east, north, up become x, −z, y.

use chalkcourse_geometry::DVec3;
use chalkcourse_job::Resolved;
use chalkcourse_plan::{CAUTION, Standing};
use chalkcourse_solid::{Kind, Solid, SolidObject};
use chalkcourse_words as words;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// Why no glTF was made.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum GltfError {
    /// There is nothing to export.
    #[error("{}", words::formats::THERE_IS_NO_HOUSE_TO.now().to_owned())]
    Nothing,
    /// The container counts bytes in 32 bits.
    #[error("{}", words::formats::THE_HOUSE_IS_LARGER_THAN.now().to_owned())]
    TooLarge,
}

/// Colour and roughness of a kind of surface: linear RGBA, 0 to 1.
fn finish(kind: Kind) -> ([f64; 4], f64) {
    match kind {
        Kind::Roof => ([0.16, 0.14, 0.13, 1.0], 0.95),
        Kind::Fascia | Kind::Soffit => ([0.78, 0.77, 0.73, 1.0], 0.8),
        Kind::Wall => ([0.68, 0.62, 0.52, 1.0], 0.9),
        Kind::Ground => ([0.25, 0.32, 0.18, 1.0], 1.0),
        Kind::Module => ([0.01, 0.02, 0.05, 1.0], 0.2),
        Kind::ModuleSide => ([0.03, 0.03, 0.03, 1.0], 0.5),
        Kind::Flashing => ([0.20, 0.20, 0.21, 1.0], 0.4),
        Kind::Penetration => ([0.35, 0.35, 0.36, 1.0], 0.6),
        Kind::Chimney => ([0.36, 0.13, 0.08, 1.0], 0.95),
        Kind::Glass => ([0.30, 0.42, 0.50, 0.6], 0.1),
    }
}

/// Triangles of one mesh: one thing, one kind.
#[derive(Default)]
struct Part {
    positions: Vec<[f32; 3]>,
    normals: Vec<[f32; 3]>,
}

fn turned(p: DVec3) -> [f32; 3] {
    [p.x as f32, p.z as f32, -p.y as f32]
}

/// A house as the bytes of a .glb file, without the ground around it. The asset's extras carry stop findings, waivers and the
/// caution.
///
/// # Errors
/// [`GltfError`] if there is nothing to export, or more than 4 GB.
pub fn house_to_glb(job: &Resolved, solid: &Solid, standing: &Standing) -> Result<Vec<u8>, GltfError> {
    let mut things: BTreeMap<SolidObject, BTreeMap<Kind, Part>> = BTreeMap::new();
    for triangle in &solid.triangles {
        let Some(surface) = solid.surfaces.get(triangle.surface as usize) else { continue };
        if surface.of == SolidObject::Ground {
            continue;
        }
        let part = things.entry(surface.of).or_default().entry(surface.kind).or_default();
        part.positions.extend(triangle.corners.map(turned));
        part.normals.extend([turned(surface.normal); 3]);
    }
    if things.is_empty() {
        return Err(GltfError::Nothing);
    }
    let mut file = File::default();
    let mut nodes = Vec::new();
    let mut meshes = Vec::new();
    for (of, parts) in things {
        let primitives: Vec<Value> =
            parts.into_iter().map(|(kind, part)| file.primitive(kind, &part)).collect();
        let name = name_of(job, of);
        nodes.push(json!({"name": name, "mesh": meshes.len(), "extras": extras(job, of)}));
        meshes.push(json!({"name": name, "primitives": primitives}));
    }
    let all: Vec<usize> = (0..nodes.len()).collect();
    let materials: Vec<Value> = Kind::ALL.into_iter().map(material).collect();
    let document = json!({
        "asset": {"version": "2.0", "generator": "Chalkcourse", "extras": {
            "caution": CAUTION.now(), "stops": standing.stops, "waived": standing.waived,
        }},
        "scene": 0,
        "scenes": [{"name": job.name, "nodes": all}],
        "nodes": nodes, "meshes": meshes, "materials": materials,
        "accessors": file.accessors, "bufferViews": file.views,
        "buffers": [{"byteLength": file.bytes.len()}],
    });
    container(&document.to_string(), file.bytes)
}

fn material(kind: Kind) -> Value {
    let (colour, rough) = finish(kind);
    let mut material = json!({
        "name": kind.name(),
        "pbrMetallicRoughness": {"baseColorFactor": colour, "metallicFactor": 0.0, "roughnessFactor": rough},
    });
    if let Value::Object(members) = &mut material
        && colour[3] < 1.0
    {
        members.insert("alphaMode".to_owned(), "BLEND".into());
    }
    material
}

fn name_of(job: &Resolved, of: SolidObject) -> String {
    let block = |id| job.block(id).map_or("Block", |block| block.name.as_str());
    match of {
        SolidObject::Ground => "Ground".to_owned(),
        SolidObject::House => "Walls".to_owned(),
        SolidObject::Face(id) => {
            job.face(id).map_or_else(|| "Face".to_owned(), |face| format!("Face {}", face.name))
        }
        SolidObject::Penetration(id) => {
            job.penetration(id).map_or_else(|| "Penetration".to_owned(), |p| p.name.clone())
        }
        SolidObject::Block(id) => format!("Border of {}", block(id)),
        SolidObject::Module(id, cell) => format!("{}, module {}", block(id), cell.number()),
    }
}

fn extras(job: &Resolved, of: SolidObject) -> Value {
    match of {
        SolidObject::Face(id) => match job.face(id) {
            Some(face) => json!({
                "kind": "face", "id": id.0, "rise_in_12": face.pitch.rise_in_12(),
                "downslope_degrees": face.downslope.degrees(),
            }),
            None => json!({"kind": "face", "id": id.0}),
        },
        SolidObject::Penetration(id) => {
            json!({"kind": "penetration", "id": id.0, "is": job.penetration(id).map(|p| p.kind.code())})
        }
        SolidObject::Module(id, cell) => {
            json!({"kind": "module", "block": id.0, "row": cell.row + 1, "column": cell.column + 1})
        }
        SolidObject::Block(id) => json!({"kind": "block", "id": id.0}),
        SolidObject::House => json!({"kind": "walls"}),
        SolidObject::Ground => json!({"kind": "ground"}),
    }
}

/// The binary buffer with the JSON that describes it.
#[derive(Default)]
struct File {
    bytes: Vec<u8>,
    views: Vec<Value>,
    accessors: Vec<Value>,
}

const FLOAT: u32 = 5126;
const ARRAY_BUFFER: u32 = 34_962;

impl File {
    fn primitive(&mut self, kind: Kind, part: &Part) -> Value {
        let all = |pick: fn(f32, f32) -> f32, start: f32| {
            part.positions.iter().fold([start; 3], |mut bound, p| {
                bound.iter_mut().zip(p).for_each(|(b, x)| *b = pick(*b, *x));
                bound
            })
        };
        let (least, most) = (all(f32::min, f32::INFINITY), all(f32::max, f32::NEG_INFINITY));
        let position = self.accessor(&part.positions);
        if let Some(Value::Object(accessor)) = self.accessors.get_mut(position) {
            accessor.insert("min".to_owned(), json!(least));
            accessor.insert("max".to_owned(), json!(most));
        }
        let normal = self.accessor(&part.normals);
        let material = Kind::ALL.iter().position(|&k| k == kind);
        json!({"attributes": {"POSITION": position, "NORMAL": normal}, "material": material, "mode": 4})
    }

    /// Appends vectors to the buffer; returns the index of their accessor.
    fn accessor(&mut self, vectors: &[[f32; 3]]) -> usize {
        let start = self.bytes.len();
        self.bytes.extend(vectors.iter().flatten().flat_map(|x| x.to_le_bytes()));
        self.views.push(json!({
            "buffer": 0, "byteOffset": start, "byteLength": self.bytes.len() - start, "target": ARRAY_BUFFER,
        }));
        self.accessors.push(json!({
            "bufferView": self.views.len() - 1, "componentType": FLOAT, "count": vectors.len(), "type": "VEC3",
        }));
        self.accessors.len() - 1
    }
}

/// Packs a JSON and a binary chunk into one file, each padded to a multiple of four bytes.
fn container(json: &str, mut binary: Vec<u8>) -> Result<Vec<u8>, GltfError> {
    let mut text = json.as_bytes().to_vec();
    text.resize(text.len().next_multiple_of(4), b' ');
    binary.resize(binary.len().next_multiple_of(4), 0);
    let length = |n: usize| u32::try_from(n).map_err(|_| GltfError::TooLarge);
    let mut file = Vec::with_capacity(28 + text.len() + binary.len());
    file.extend(b"glTF");
    file.extend(2u32.to_le_bytes());
    file.extend(length(28 + text.len() + binary.len())?.to_le_bytes());
    for (kind, chunk) in [(b"JSON", text), (b"BIN\0", binary)] {
        file.extend(length(chunk.len())?.to_le_bytes());
        file.extend(kind);
        file.extend(chunk);
    }
    Ok(file)
}
