use crate::Orientation;
use chalkcourse_geometry::{Length, Pitch};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A maker's kit: the module, what it allows, and every part with the way it is counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Kit {
    /// Its name.
    pub name: String,
    /// Which issue of the kit, as the maker writes it.
    pub issue: String,
    /// The module.
    pub module: ModuleSpec,
    /// Ways that the module may lie.
    pub orientations: Vec<Orientation>,
    /// The least pitch of a face that carries it.
    pub least_pitch: Pitch,
    /// The gap between neighbouring modules.
    pub reveal: RevealRange,
    /// How far the flashing reaches on the deck beyond the modules.
    pub flashing: Flashing,
    /// Where the base rail may be: how far the lowest row stays above the eave and what is kept free for work.
    #[serde(default)]
    pub clearances: Clearances,
    /// All parts that are ordered.
    pub parts: Vec<Part>,
    /// Where the maker's numbers come from, and cautions.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub notes: String,
}

/// The module as made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ModuleSpec {
    /// Its part number, which is among the parts.
    pub part: String,
    /// The long side.
    pub length: Length,
    /// The short side.
    pub width: Length,
    /// How thick.
    pub thickness: Length,
    /// In kilograms.
    pub mass_kg: f64,
    /// Rated power at standard test conditions, in watts.
    pub watts: f64,
    /// Electrical ratings.
    pub electrical: Electrical,
}

/// Ratings of a module at standard test conditions (1000 W/m², 25 °C cell, AM 1.5; IEC 61215).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Electrical {
    /// Open-circuit voltage.
    pub voc_volts: f64,
    /// Short-circuit current.
    pub isc_amps: f64,
    /// Voltage at the greatest power.
    pub vmp_volts: f64,
    /// Current at the greatest power.
    pub imp_amps: f64,
    /// Change of the open-circuit voltage, percent a kelvin.
    pub voc_percent_per_kelvin: f64,
    /// Change of power, percent a kelvin.
    pub power_percent_per_kelvin: f64,
}

/// The reveal that a kit allows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RevealRange {
    /// Not less.
    pub least: Length,
    /// Not more.
    pub most: Length,
    /// What a new block starts with.
    pub usual: Length,
}

/// How far flashing reaches on the deck beyond the modules.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Flashing {
    /// Head flashing, up the slope beyond the top row.
    pub head: Length,
    /// Side flashing, beyond each side.
    pub side: Length,
    /// Base rail, down the slope below the lowest row.
    pub base: Length,
    /// Membrane around the array, beyond the modules on all sides.
    pub membrane: Length,
}

/// Room that the kit itself asks for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Clearances {
    /// Between two blocks on one face, for the flashing of both.
    pub between_blocks: Length,
}

/// What a part belongs to on the order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Group {
    /// Modules, their electronics and what holds them.
    Solar,
    /// Base rail, side, head and corner flashing and their fasteners.
    Flashing,
    /// Membranes and underlayment under and around the array.
    Roofing,
    /// Grounding, leads and the junction box.
    Wire,
}

impl Group {
    /// All groups, in the order in which an order lists them.
    pub const ALL: [Self; 4] = [Self::Solar, Self::Flashing, Self::Roofing, Self::Wire];

    /// The heading on an order.
    pub fn name(self) -> &'static str {
        match self {
            Self::Solar => "Solar",
            Self::Flashing => "Flashing",
            Self::Roofing => "Roofing",
            Self::Wire => "Wire and grounding",
        }
    }
}

/// What a part is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unit {
    /// Pieces.
    Each,
    /// Length, in metres inside.
    Length,
    /// Area on the slope, in square metres inside.
    Area,
}

/// One part of the kit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Where it stands on the order.
    pub group: Group,
    /// What it is counted in.
    pub unit: Unit,
    /// How it is counted: the sum of these.
    pub needs: Vec<Term>,
    /// What is lost to breakage and cutting, as a share of the need: 0.05 is 5 %.
    #[serde(default)]
    pub waste: f64,
    /// How it is packed.
    pub package: Package,
    /// Whose word the count is: a section, a listing, or "common practice, no source".
    pub source: String,
}

/// One term of a count: so much for each of something.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Term {
    /// Of what.
    pub of: Measure,
    /// How much for each: a number; for a measured length, a part's share of it.
    pub each: Amount,
}

/// How much for each.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Amount {
    /// So many pieces, or metres of length for each metre, or square metres for each square metre.
    Count(f64),
    /// So much length for each piece or each run.
    Length(Length),
    /// Pieces of this length end to end along each run, each lapping the next.
    Pieces {
        /// Length of a piece.
        length: Length,
        /// How far one laps the next.
        lap: Length,
    },
    /// One piece at this spacing along each run, and one more at its end.
    Spaced(Length),
}

/// What can be counted or measured on the blocks as placed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Measure {
    /// Each module.
    Module,
    /// Each block.
    Block,
    /// Each row of modules without a break.
    Row,
    /// Each seam between two modules of one row.
    Seam,
    /// Each run of base rail: its length.
    BaseRail,
    /// Each side run: its length up the slope.
    Side,
    /// Each course that a side run crosses, and one more: the pieces of step flashing.
    SideCourse,
    /// Each run of head flashing: its length.
    Head,
    /// Each end of a head run and each seam between modules under it.
    HeadSupport,
    /// Each left head corner.
    HeadCornerLeft,
    /// Each right head corner.
    HeadCornerRight,
    /// Each left corner at the base rail.
    BaseCornerLeft,
    /// Each right corner at the base rail.
    BaseCornerRight,
    /// Area of the deck under the array, reveals included.
    Under,
    /// Area of the strip around the array that the kit's membrane margin makes.
    Around,
    /// Length of the way from the lowest row past every module device to the top of the array.
    BondingPath,
    /// Pieces of another part, before waste and packages.
    Part(String),
}

/// How a part is packed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Package {
    /// What the pallet list calls it: "box", "roll", "stick".
    pub name: String,
    /// How much is in it: pieces, metres or square metres.
    pub holds: f64,
}

impl Kit {
    /// The part of that number.
    pub fn part(&self, number: &str) -> Option<&Part> {
        self.parts.iter().find(|part| part.number == number)
    }

    /// What a kit must hold beyond the shape of its file: the words name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), String> {
        let positive = |field: &str, value: f64| {
            if value > 0.0 && value.is_finite() && value < 1e6 {
                Ok(())
            } else {
                Err(format!("{field} must be more than 0, not {value}"))
            }
        };
        positive("module.length", self.module.length.metres())?;
        positive("module.width", self.module.width.metres())?;
        positive("module.watts", self.module.watts)?;
        positive("module.mass_kg", self.module.mass_kg)?;
        if self.module.width > self.module.length {
            return Err("module.length is the long side: it can't be less than module.width".to_owned());
        }
        if self.orientations.is_empty() {
            return Err("orientations must name at least one of \"landscape\" and \"portrait\"".to_owned());
        }
        let reveal = self.reveal;
        if !(Length::ZERO <= reveal.least && reveal.least <= reveal.usual && reveal.usual <= reveal.most) {
            return Err("reveal: least, usual and most must rise from 0 in that order".to_owned());
        }
        let flashing = self.flashing;
        for (field, length) in [
            ("flashing.head", flashing.head),
            ("flashing.side", flashing.side),
            ("flashing.base", flashing.base),
            ("flashing.membrane", flashing.membrane),
            ("clearances.between_blocks", self.clearances.between_blocks),
        ] {
            if !(0.0..100.0).contains(&length.metres()) {
                return Err(format!("{field} must be 0 or more"));
            }
        }
        if self.part(&self.module.part).is_none() {
            return Err(format!("module.part: there is no part {:?} among the parts", self.module.part));
        }
        for (index, part) in self.parts.iter().enumerate() {
            if self.parts[..index].iter().any(|other| other.number == part.number) {
                return Err(format!("parts[{index}].number: {:?} is taken twice", part.number));
            }
            positive(&format!("parts[{index}].package.holds"), part.package.holds)?;
            if !(0.0..=1.0).contains(&part.waste) {
                return Err(format!("parts[{index}].waste is a share from 0 to 1, not {}", part.waste));
            }
            for (term_index, term) in part.needs.iter().enumerate() {
                term.check(self, index)
                    .map_err(|wrong| format!("parts[{index}].needs[{term_index}]: {wrong}"))?;
            }
        }
        Ok(())
    }
}

impl Term {
    fn check(&self, kit: &Kit, index: usize) -> Result<(), String> {
        if let Measure::Part(number) = &self.of {
            // Parts may count parts above them alone, so that no circle can come about.
            if !kit.parts[..index].iter().any(|part| part.number == *number) {
                return Err(format!("of: the part {number:?} must stand above this one"));
            }
        }
        let sound = match self.each {
            Amount::Count(count) => (0.0..1e6).contains(&count),
            Amount::Length(length) => (0.0..1e3).contains(&length.metres()),
            Amount::Pieces { length, lap } => {
                lap >= Length::ZERO && lap < length && (1e-3..1e3).contains(&(length - lap).metres())
            }
            Amount::Spaced(length) => (1e-3..1e3).contains(&length.metres()),
        };
        if sound {
            Ok(())
        } else {
            Err("each: the amount must be 0 or more, and a lap shorter than its piece".to_owned())
        }
    }
}
