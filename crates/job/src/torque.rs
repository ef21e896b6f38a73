//! How hard a screw is turned, with its unit.

use chalkcourse_geometry::Units;
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::de::{Deserialize, Deserializer, Unexpected, Visitor};
use serde::{Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;

/// A torque, as a torque wrench is set; newton metres inside. In files "35 in-lb" or "4 N m".
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Torque(f64);

/// An inch-pound in newton metres: 0.0254 m times 4.4482216152605 N (NIST SP 811, exact).
const INCH_POUND: f64 = 0.0254 * 4.448_221_615_260_5;

impl Torque {
    /// From newton metres.
    pub const fn from_newton_metres(newton_metres: f64) -> Self {
        Self(newton_metres)
    }

    /// From inch-pounds.
    pub fn from_inch_pounds(inch_pounds: f64) -> Self {
        Self(inch_pounds * INCH_POUND)
    }

    /// In newton metres.
    pub const fn newton_metres(self) -> f64 {
        self.0
    }

    /// In inch-pounds.
    pub fn inch_pounds(self) -> f64 {
        self.0 / INCH_POUND
    }

    /// As a wrench is set: whole inch-pounds, or tenths of a newton metre.
    pub fn show(self, units: Units) -> String {
        match units {
            Units::FeetInches => format!("{:.0} in-lb", self.inch_pounds()),
            Units::Metric => format!("{:.1} N m", self.0),
        }
    }

    /// Reads a number with its unit; `None` for anything else.
    fn parse(text: &str) -> Option<Self> {
        let text = text.trim();
        let at = text.find(|c: char| !(c.is_ascii_digit() || c == '.'))?;
        let (number, unit) = text.split_at(at);
        let number: f64 = number.parse().ok()?;
        match unit.trim() {
            "in-lb" | "in lb" | "lb-in" => Some(Self::from_inch_pounds(number)),
            "ft-lb" | "ft lb" | "lb-ft" => Some(Self::from_inch_pounds(12.0 * number)),
            "N m" | "Nm" | "N·m" => Some(Self(number)),
            _ => None,
        }
    }

    /// As a file has it: read back it is the very same.
    fn to_data(self) -> String {
        let inch_pounds = (self.inch_pounds() * 100.0).round() / 100.0;
        if Self::from_inch_pounds(inch_pounds) == self {
            return format!("{inch_pounds} in-lb");
        }
        format!("{} N m", self.0)
    }
}

impl Serialize for Torque {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.to_data())
    }
}

impl<'de> Deserialize<'de> for Torque {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl Visitor<'_> for Text {
            type Value = Torque;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a torque with its unit, such as \"35 in-lb\", \"20 ft-lb\" or \"4 N m\"")
            }
            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Torque, E> {
                Torque::parse(text).ok_or_else(|| E::invalid_value(Unexpected::Str(text), &self))
            }
        }
        deserializer.deserialize_str(Text)
    }
}

impl JsonSchema for Torque {
    fn schema_name() -> Cow<'static, str> {
        "Torque".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "A torque with its unit: \"35 in-lb\", \"20 ft-lb\", \"4 N m\".",
            "pattern": "(in-lb|in lb|lb-in|ft-lb|ft lb|lb-ft|N m|Nm|N·m)\\s*$"
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 35 in-lb are 3.95 N m, 20 ft-lb 27.1 N m (NIST SP 811, table of factors: 1 lbf·in = 0.1129848 N·m).
    #[test]
    fn both_units() {
        let read = |text: &str| serde_json::from_str::<Torque>(&format!("{text:?}"));
        let torque = read("35 in-lb").unwrap();
        assert!((torque.newton_metres() - 35.0 * 0.112_984_8).abs() < 2e-6);
        assert_eq!(
            (torque.show(Units::FeetInches), torque.show(Units::Metric)),
            ("35 in-lb".into(), "4.0 N m".into())
        );
        assert!((read("20 ft-lb").unwrap().newton_metres() - 27.116_4).abs() < 1e-4);
        assert_eq!(read("4 N m").unwrap(), Torque::from_newton_metres(4.0));
        for wrong in ["", "35", "in-lb", "35 lb", "1.2.3 Nm", "-4 Nm", "1e3 Nm"] {
            assert!(read(wrong).is_err(), "{wrong}");
        }
    }

    #[test]
    fn what_is_written_is_read_back() {
        for torque in
            [Torque::from_inch_pounds(35.0), Torque(4.0), Torque::from_inch_pounds(7.25), Torque(1.0 / 3.0)]
        {
            let text = serde_json::to_string(&torque).unwrap();
            assert_eq!(serde_json::from_str::<Torque>(&text).unwrap(), torque, "{text}");
        }
        assert_eq!(serde_json::to_string(&Torque::from_inch_pounds(35.0)).unwrap(), "\"35 in-lb\"");
    }
}
