use crate::{Holds, Orientation};
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

/// How much for each. What a term gives must be what its part is counted in; [`Kit::check`] says where it is not.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Amount {
    /// So many pieces for each piece, metre or square metre, metres of length for each metre, or square metres for
    /// each square metre.
    Count(f64),
    /// So much length for each piece or each run.
    Length(Length),
    /// Pieces of this length end to end along each run, each lapping the next; a run's last piece is cut and its
    /// offcut is not used again.
    Pieces {
        /// Length of a piece.
        length: Length,
        /// How far one laps the next.
        lap: Length,
    },
    /// One piece at this spacing, or less, along each run, and one more at its end; over an area one for each square
    /// of this spacing.
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
    /// Each run of base rail: its length. A row above the lowest with nothing below it has a rail of its own.
    BaseRail,
    /// Each side run: its length up the slope.
    Side,
    /// Each course that a side run crosses, and one more: the pieces of step flashing.
    SideCourse,
    /// Each run of head flashing: its length.
    Head,
    /// Each module with head flashing above it, over its whole width or a part.
    HeadModule,
    /// Each end of a head run and each seam between modules under it.
    HeadSupport,
    /// Each left head corner.
    HeadCornerLeft,
    /// Each right head corner.
    HeadCornerRight,
    /// Each corner where a head run meets the side of a higher row.
    InsideCorner,
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
    /// How much is in it, in what the part is counted in.
    pub holds: Holds,
}

impl Measure {
    /// What it is measured in. A part that the kit does not have counts as pieces.
    pub fn unit(&self, kit: &Kit) -> Unit {
        match self {
            Self::BaseRail | Self::Side | Self::Head | Self::BondingPath => Unit::Length,
            Self::Under | Self::Around => Unit::Area,
            Self::Part(number) => kit.part(number).map_or(Unit::Each, |part| part.unit),
            Self::Module
            | Self::Block
            | Self::Row
            | Self::Seam
            | Self::SideCourse
            | Self::HeadModule
            | Self::HeadSupport
            | Self::HeadCornerLeft
            | Self::HeadCornerRight
            | Self::InsideCorner
            | Self::BaseCornerLeft
            | Self::BaseCornerRight => Unit::Each,
        }
    }
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
            if part.number.trim().is_empty() {
                return Err(format!("parts[{index}].number: a part needs a number"));
            }
            let holds = part.package.holds;
            match (part.unit, holds) {
                (Unit::Each, Holds::Pieces(_))
                | (Unit::Length, Holds::Length(_))
                | (Unit::Area, Holds::Area(_)) => {}
                _ => {
                    return Err(format!(
                        "parts[{index}].package.holds must be in what the part is counted in: a number of pieces, a \
                         length such as \"100 ft\", or an area such as \"200 sq ft\""
                    ));
                }
            }
            if !(1e-3..1e6).contains(&holds.amount())
                || part.unit == Unit::Each && holds.amount().fract() != 0.0
            {
                return Err(format!(
                    "parts[{index}].package.holds must be more than 0, and whole where it is pieces, not {}",
                    holds.amount()
                ));
            }
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
        if !sound {
            return Err("each: the amount must be 0 or more, and a lap shorter than its piece".to_owned());
        }
        let of = self.of.unit(kit);
        let unit = kit.parts.get(index).map_or(Unit::Each, |part| part.unit);
        let fits = match self.each {
            Amount::Count(_) => unit == Unit::Each || unit == of,
            Amount::Length(_) => unit == Unit::Length && of != Unit::Area,
            Amount::Pieces { .. } => unit == Unit::Each && of == Unit::Length,
            Amount::Spaced(_) => unit == Unit::Each && of != Unit::Each,
        };
        if fits {
            Ok(())
        } else {
            Err("each: \"count\" gives pieces, or a length of a length, or an area of an area; \"length\" gives a length \
                 for each piece or run; \"pieces\" and \"spaced\" give pieces along a run (\"spaced\" also over an area). \
                 The part is counted in something else"
                .to_owned())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{builtin_kit, builtin_prices};

    fn refused(change: impl Fn(&mut Part), words: &str) {
        let mut kit = (*builtin_kit()).clone();
        change(&mut kit.parts[1]);
        let error = kit.check().unwrap_err();
        assert!(error.contains(words), "{error:?} does not say {words:?}");
    }

    #[test]
    fn the_kit_that_comes_with_the_program_is_sound_and_every_part_has_a_price() {
        let (kit, prices) = (builtin_kit(), builtin_prices());
        kit.check().unwrap();
        prices.check().unwrap();
        for part in &kit.parts {
            assert!(prices.prices.contains_key(&part.number), "{} has no price", part.number);
            assert!(!part.source.is_empty(), "{} names no source", part.number);
        }
        assert!(prices.prices.keys().all(|number| kit.part(number).is_some()));
    }

    #[test]
    fn what_a_term_gives_must_be_what_the_part_is_counted_in() {
        refused(
            |part| part.needs[0].each = Amount::Length(Length::from_feet(1.0)),
            "parts[1].needs[0]: each:",
        );
        refused(
            |part| part.needs[0].each = Amount::Spaced(Length::from_feet(1.0)),
            "parts[1].needs[0]: each:",
        );
        refused(|part| part.unit = Unit::Area, "parts[1].package.holds");
        refused(|part| part.package.holds = Holds::Pieces(2.5), "parts[1].package.holds");
        refused(|part| part.package.holds = Holds::Pieces(0.0), "parts[1].package.holds");
        refused(|part| part.number = " ".into(), "parts[1].number");
        refused(|part| part.waste = 1.5, "parts[1].waste");
        refused(|part| part.needs[0].of = Measure::Part("FH-999".into()), "FH-999");
        let laps = Amount::Pieces { length: Length::from_feet(1.0), lap: Length::from_feet(1.0) };
        refused(|part| part.needs[0].each = laps.clone(), "lap");
    }
}
