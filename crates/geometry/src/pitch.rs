use crate::length::{Length, Units, mixed_number, parse_sum};
use chalkcourse_words::later as words;
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;

/// The steepness of a face: rise over run, never negative, less than 1000.
///
/// Roofers say it as rise in 12 of run. In a data file it is the text `"6:12"`.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Pitch(f64);

/// Why a pitch is invalid.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum PitchError {
    /// The text is not a pitch.
    #[error("{}", words::measures::cant_read_as_a_pitch(&format_args!("{_0:?}")))]
    Unreadable(String),
    /// No plane has that slope.
    #[error("{}", words::measures::a_pitch_of_in_12(&_0))]
    OutOfRange(f64),
}

impl Pitch {
    /// A level face.
    pub const FLAT: Self = Self(0.0);

    /// From a rise in 12 of run.
    ///
    /// # Errors
    /// [`PitchError::OutOfRange`] below 0, at vertical, or if not finite.
    pub fn from_rise_in_12(rise: f64) -> Result<Self, PitchError> {
        Self::from_slope(rise / 12.0)
    }

    /// From rise over run.
    ///
    /// # Errors
    /// [`PitchError::OutOfRange`] below 0, at vertical, or if not finite.
    pub fn from_slope(slope: f64) -> Result<Self, PitchError> {
        if (0.0..1000.0).contains(&slope) {
            Ok(Self(slope))
        } else {
            Err(PitchError::OutOfRange(slope * 12.0))
        }
    }

    /// From an angle above level, in degrees.
    ///
    /// # Errors
    /// [`PitchError::OutOfRange`] outside 0° to short of 90°.
    pub fn from_degrees(degrees: f64) -> Result<Self, PitchError> {
        if !(0.0..90.0).contains(&degrees) {
            return Err(PitchError::OutOfRange(degrees.to_radians().tan() * 12.0));
        }
        Self::from_slope(degrees.to_radians().tan())
    }

    /// From a spirit level held level with one end on the deck: the plumb distance from its other end to the deck, and the length
    /// of the level.
    ///
    /// # Errors
    /// [`PitchError::OutOfRange`] below 0, at vertical, or for a level of zero length.
    pub fn from_level(rise: Length, level: Length) -> Result<Self, PitchError> {
        Self::from_slope(rise.metres() / level.metres())
    }

    /// Rise over run.
    pub fn slope(self) -> f64 {
        self.0
    }
    /// Rise in 12 of run.
    pub fn rise_in_12(self) -> f64 {
        self.0 * 12.0
    }
    /// The angle above level, in radians.
    pub fn radians(self) -> f64 {
        self.0.atan()
    }
    /// The angle above level, in degrees.
    pub fn degrees(self) -> f64 {
        self.radians().to_degrees()
    }
    /// Length on the slope per length in plan, straight up the slope: √(1 + slope²).
    pub fn slope_factor(self) -> f64 {
        self.0.hypot(1.0)
    }
    /// Length of a hip or valley per *common* run, between two faces of this pitch at a square corner: √(2 + slope²).
    pub fn hip_valley_factor(self) -> f64 {
        (2.0 + self.0 * self.0).sqrt()
    }

    /// Parses `6:12`, `6 1/2:12`, `6/12`, `6 in 12`, a bare `6` (in 12), `26.6°`, `26.6 deg`, `50%`, or a level reading: `12"
    /// over 24"`.
    ///
    /// # Errors
    /// [`PitchError`] shows valid forms.
    pub fn parse(text: &str) -> Result<Self, PitchError> {
        let bad = || PitchError::Unreadable(text.to_owned());
        let number = |piece: &str| {
            let piece = piece.trim();
            piece.parse::<f64>().ok().or_else(|| mixed_number(piece)).ok_or_else(bad)
        };
        let lower = text.trim().to_ascii_lowercase();
        if let Some((rise, level)) = lower.split_once(" over ") {
            // Two bare numbers are in the same unit, whichever it is; a single bare number is ambiguous.
            let (rise, rise_named) = parse_sum(rise, Units::FeetInches).map_err(|_| bad())?;
            let (level, level_named) = parse_sum(level, Units::FeetInches).map_err(|_| bad())?;
            let known = rise_named == level_named && level > Length::ZERO;
            return if known { Self::from_level(rise, level) } else { Err(bad()) };
        }
        let clean = lower.replace(" in ", ":");
        if let Some(degrees) = clean.strip_suffix('°').or_else(|| clean.strip_suffix("deg")) {
            return Self::from_degrees(number(degrees)?);
        }
        if let Some(percent) = clean.strip_suffix('%') {
            return Self::from_slope(number(percent)? / 100.0);
        }
        if let Some(slope) = clean.strip_suffix("rise/run") {
            return Self::from_slope(number(slope)?);
        }
        match clean.split_once(':').or_else(|| clean.split_once('/')) {
            Some((rise, run)) => {
                let run = number(run)?;
                if run > 0.0 { Self::from_slope(number(rise)? / run) } else { Err(bad()) }
            }
            None => Self::from_rise_in_12(number(&clean)?),
        }
    }

    /// For a data file; reads back as exactly this `f64`.
    pub fn to_data(self) -> String {
        let rise = (self.rise_in_12() * 1000.0).round() / 1000.0;
        let text = format!("{rise}:12");
        if Self::parse(&text).is_ok_and(|back| back == self) { text } else { format!("{} rise/run", self.0) }
    }
}

impl fmt::Display for Pitch {
    /// `6:12`, to the nearest hundredth of a rise.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:12", (self.rise_in_12() * 100.0).round() / 100.0)
    }
}

impl Serialize for Pitch {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.to_data())
    }
}

impl<'de> Deserialize<'de> for Pitch {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl serde::de::Visitor<'_> for Text {
            type Value = Pitch;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a pitch as a text, such as \"6:12\"")
            }
            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Pitch, E> {
                Pitch::parse(text).map_err(E::custom)
            }
        }
        deserializer.deserialize_str(Text)
    }
}

impl JsonSchema for Pitch {
    fn schema_name() -> Cow<'static, str> {
        "Pitch".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "Rise over run: \"6:12\", \"26.6°\", \"50%\" or \"0.5 rise/run\"."
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn reads_every_form() {
        for text in ["6:12", "6/12", " 6 in 12 ", "6", "50%", "50 %", "0.5 rise/run", "3:6"] {
            assert_eq!(Pitch::parse(text).unwrap().slope(), 0.5, "{text}");
        }
        assert!((Pitch::parse("45°").unwrap().slope() - 1.0).abs() < 1e-12);
        assert_eq!(Pitch::parse("6 1/2:12").unwrap().rise_in_12(), 6.5);
        for text in ["", "x", "-1:12", "90°", "6:0", "nan", "inf:12", "6:12:4"] {
            assert!(Pitch::parse(text).is_err(), "{text} was taken");
        }
    }

    /// 12 in on a 24 in level is 6 in 12; 14 in is 7 in 12, 30.26° (rafter tables).
    #[test]
    fn a_level_reading_is_a_pitch() {
        for text in ["12\" over 24\"", "1' over 2'", "12 over 24", "305 mm over 610 mm", "12 in over 2 ft"] {
            assert!((Pitch::parse(text).unwrap().slope() - 0.5).abs() < 1e-12, "{text}");
        }
        let seven = Pitch::from_level(Length::from_inches(14.0), Length::from_inches(24.0)).unwrap();
        assert!((seven.degrees() - 30.26).abs() < 0.005);
        for text in
            ["12\" over 24", "over 24\"", "12\" over 0\"", "-2\" over 24\"", "1 over -2", "6' over 0.01 mm"]
        {
            assert!(Pitch::parse(text).is_err(), "{text} was taken");
        }
        assert!(Pitch::from_level(Length::ZERO, Length::ZERO).is_err());
    }

    proptest! {
        #[test]
        fn data_reads_back_to_the_bit(slope in 0.0..20.0f64) {
            let pitch = Pitch::from_slope(slope).unwrap();
            let text = serde_json::to_string(&pitch).unwrap();
            prop_assert_eq!(serde_json::from_str::<Pitch>(&text).unwrap(), pitch);
        }
    }
}
