//! Differences between two jobs.

use crate::{Face, Reading, Resolved};
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::{Map, Value};

/// A difference between two jobs in one object.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct JobDifference {
    /// The kind of object.
    pub what: ObjectKind,
    /// Its id in the job, if it has one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id: Option<u32>,
    /// Its name; the key of a waiver.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// What happened to it.
    pub how: DifferenceKind,
    /// Fields that differ, if it is in both jobs.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub fields: Vec<FieldDifference>,
}

/// A kind of object in a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ObjectKind {
    /// A part of the house.
    Part,
    /// A roof face.
    Face,
    /// A penetration.
    Penetration,
    /// A block.
    Block,
    /// A circuit.
    Circuit,
    /// A junction box.
    JunctionBox,
    /// What was read of a circuit; its number is the circuit's.
    Reading,
    /// Decisions about the wiring as a whole.
    Wiring,
    /// An accepted finding.
    Waiver,
    /// The job itself: name, units.
    Job,
    /// Its site.
    Site,
    /// The picture under the plan.
    Underlay,
    /// The kit.
    Kit,
    /// The rule book.
    RuleBook,
    /// The price list.
    Prices,
    /// Decisions about the order.
    Order,
}

impl ObjectKind {
    /// Its name.
    pub fn name(self) -> Say {
        match self {
            Self::Part => words::job::PART_3,
            Self::Face => words::common::FACE_2,
            Self::Penetration => words::common::PENETRATION,
            Self::Block => words::common::BLOCK_2,
            Self::Circuit => words::job::CIRCUIT,
            Self::JunctionBox => words::job::JUNCTION_BOX,
            Self::Reading => words::job::READING,
            Self::Wiring => words::job::WIRING,
            Self::Waiver => words::job::WAIVER,
            Self::Job => words::common::JOB,
            Self::Site => words::job::SITE,
            Self::Underlay => words::job::PICTURE_UNDER_THE_PLAN,
            Self::Kit => words::job::KIT,
            Self::RuleBook => words::job::RULE_BOOK,
            Self::Prices => words::job::PRICE_LIST,
            Self::Order => words::job::ORDER,
        }
    }
}

/// What happened to an object.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum DifferenceKind {
    /// It was added.
    Added,
    /// It was changed.
    Changed,
    /// It was removed.
    Removed,
}

impl DifferenceKind {
    /// Its name.
    pub fn name(self) -> Say {
        match self {
            Self::Added => words::job::ADDED,
            Self::Changed => words::job::CHANGED,
            Self::Removed => words::job::REMOVED,
        }
    }
}

/// A field that differs.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FieldDifference {
    /// Its name in the job file.
    pub field: String,
    /// The value before, as in a file; left out if long or absent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub before: Option<Value>,
    /// The value after.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub after: Option<Value>,
}

/// All differences between two jobs, part by part, face by face and so on, including what is derived from parts.
pub fn differences(before: &Resolved, after: &Resolved) -> Vec<JobDifference> {
    let mut found = Vec::new();
    let mut list = |what, before: Vec<Item>, after: Vec<Item>| of_lists(what, &before, &after, &mut found);
    let items = |job: &Resolved| -> Vec<Item> {
        job.parts.iter().map(|part| Item::of(Some(part.id.0), &part.name, part)).collect()
    };
    list(ObjectKind::Part, items(before), items(after));
    list(ObjectKind::Face, faces(before), faces(after));
    let items = |job: &Resolved| -> Vec<Item> {
        job.penetrations.iter().map(|there| Item::of(Some(there.id.0), &there.name, there)).collect()
    };
    list(ObjectKind::Penetration, items(before), items(after));
    let items = |job: &Resolved| -> Vec<Item> {
        job.blocks.iter().map(|block| Item::of(Some(block.id.0), &block.name, block)).collect()
    };
    list(ObjectKind::Block, items(before), items(after));
    let items = |job: &Resolved| -> Vec<Item> {
        job.circuits.iter().map(|circuit| Item::of(Some(circuit.id.0), &circuit.name, circuit)).collect()
    };
    list(ObjectKind::Circuit, items(before), items(after));
    let items = |job: &Resolved| -> Vec<Item> {
        job.boxes.iter().map(|junction| Item::of(Some(junction.id.0), &junction.name, junction)).collect()
    };
    list(ObjectKind::JunctionBox, items(before), items(after));
    let items = |job: &Resolved| -> Vec<Item> {
        let name = |circuit| job.circuit(circuit).map_or("", |circuit| circuit.name.as_str());
        let item = |reading: &Reading| Item::of(Some(reading.circuit.0), name(reading.circuit), reading);
        job.readings.iter().map(item).collect()
    };
    list(ObjectKind::Reading, items(before), items(after));
    let items = |job: &Resolved| -> Vec<Item> {
        job.waivers.iter().map(|waiver| Item::of(None, &waiver.key.to_string(), waiver)).collect()
    };
    list(ObjectKind::Waiver, items(before), items(after));
    let items = |job: &Resolved| {
        let fields = Map::from_iter([
            ("name".to_owned(), Value::from(job.name.as_str())),
            ("units".to_owned(), serde_json::to_value(job.units).unwrap_or_default()),
        ]);
        vec![Item { id: None, name: String::new(), fields }]
    };
    list(ObjectKind::Job, items(before), items(after));
    let site = |job: &Resolved| {
        let mut item = Item::of(None, "", &job.site);
        // Facts about the building are part of the site: compare them field by field.
        item.fields.remove("building");
        let building = Item::of(None, "", &job.site.building).fields;
        item.fields.extend(building.into_iter().map(|(field, value)| (format!("building.{field}"), value)));
        vec![item]
    };
    list(ObjectKind::Site, site(before), site(after));
    let items = |job: &Resolved| -> Vec<Item> { job.underlay.iter().flat_map(alone).collect() };
    list(ObjectKind::Underlay, items(before), items(after));
    // Large objects are only serialized if they differ.
    if before.kit != after.kit {
        list(ObjectKind::Kit, alone(&before.kit), alone(&after.kit));
    }
    if before.rule_book != after.rule_book {
        list(ObjectKind::RuleBook, alone(&before.rule_book), alone(&after.rule_book));
    }
    if before.prices != after.prices {
        list(ObjectKind::Prices, alone(&before.prices), alone(&after.prices));
    }
    if before.wiring != after.wiring {
        list(ObjectKind::Wiring, alone(&before.wiring), alone(&after.wiring));
    }
    if before.order != after.order {
        list(ObjectKind::Order, alone(&before.order), alone(&after.order));
    }
    found
}

/// Objects that a job has only one of.
fn alone(thing: &impl Serialize) -> Vec<Item> {
    vec![Item::of(None, "", thing)]
}

/// An object with its fields as in a file.
struct Item {
    id: Option<u32>,
    name: String,
    fields: Map<String, Value>,
}

impl Item {
    fn of(id: Option<u32>, name: &str, thing: &impl Serialize) -> Self {
        let fields = match serde_json::to_value(thing) {
            Ok(Value::Object(fields)) => fields,
            _ => Map::new(),
        };
        Self { id, name: name.to_owned(), fields }
    }

    fn is(&self, other: &Self) -> bool {
        self.id == other.id && (self.id.is_some() || self.name == other.name)
    }
}

/// Faces with their derived geometry, and whether they are resting.
fn faces(job: &Resolved) -> Vec<Item> {
    let item = |face: &Face, rests: bool| {
        let mut item = Item::of(Some(face.id.0), &face.name, &face.as_drawn());
        if face.from.is_some() {
            item.fields.insert("from".to_owned(), serde_json::to_value(face.from).unwrap_or_default());
        }
        if rests {
            item.fields.insert("rests".to_owned(), Value::Bool(true));
        }
        item
    };
    let here = job.faces.iter().map(|face| item(face, false));
    here.chain(job.resting.iter().map(|face| item(face, true))).collect()
}

fn of_lists(what: ObjectKind, before: &[Item], after: &[Item], found: &mut Vec<JobDifference>) {
    let told =
        |item: &Item, how, fields| JobDifference { what, id: item.id, name: item.name.clone(), how, fields };
    for item in after {
        match before.iter().find(|old| old.is(item)) {
            None => found.push(told(item, DifferenceKind::Added, Vec::new())),
            Some(old) => {
                let fields = of_fields(&old.fields, &item.fields);
                if !fields.is_empty() {
                    found.push(told(item, DifferenceKind::Changed, fields));
                }
            }
        }
    }
    for item in before.iter().filter(|item| !after.iter().any(|new| new.is(item))) {
        found.push(told(item, DifferenceKind::Removed, Vec::new()));
    }
}

fn of_fields(before: &Map<String, Value>, after: &Map<String, Value>) -> Vec<FieldDifference> {
    let mut names: Vec<&String> = before.keys().chain(after.keys()).collect();
    names.sort_unstable();
    names.dedup();
    // A missing field is the same as null.
    let of =
        |fields: &Map<String, Value>, name: &str| fields.get(name).filter(|value| !value.is_null()).cloned();
    names
        .into_iter()
        .map(|name| (name, of(before, name), of(after, name)))
        .filter(|(_, before, after)| before != after)
        .map(|(name, before, after)| FieldDifference {
            field: name.clone(),
            before: before.filter(is_short),
            after: after.filter(is_short),
        })
        .collect()
}

/// Whether a value fits on a line: a word, a number, a point.
fn is_short(value: &Value) -> bool {
    match value {
        Value::Array(items) => {
            items.len() <= 4 && items.iter().all(|item| !item.is_array() && !item.is_object())
        }
        Value::Object(fields) => {
            fields.len() <= 2 && fields.values().all(|value| !value.is_array() && !value.is_object())
        }
        _ => true,
    }
}
