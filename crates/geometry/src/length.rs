use chalkcourse_words::later as words;
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

/// Metres per inch, exactly (international inch, 1959 agreement; NIST SP 811 appendix B).
const INCH: f64 = 0.0254;

/// A length, stored in metres.
///
/// People read and type feet, inches and fractions, or metric; see [`Length::parse`]. Rounding happens only on display. In a data
/// file a length is a string with its unit (`"1/16 in"`, `"1722 mm"`), never a bare number, and reads back as the same `f64`.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Length(f64);

/// How lengths are shown, and what a bare number means when one is typed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// `12' 6 1/2"`; a bare number is feet, and `12-6-8` is feet, inches, sixteenths.
    #[default]
    FeetInches,
    /// `3.823 m`; a bare number is metres.
    Metric,
}

/// Fractions of an inch on display.
const PARTS: f64 = 16.0;

/// Differences below this share of a step are rounding.
const ROUNDING: f64 = 1e-6;

impl Units {
    /// Display step, metres: a sixteenth of an inch, or a millimetre.
    pub fn told_to(self) -> f64 {
        match self {
            Self::FeetInches => INCH / PARTS,
            Self::Metric => 0.001,
        }
    }

    /// A length (metres) rounded up to the display step.
    pub fn up(self, metres: f64) -> f64 {
        let step = self.told_to();
        (metres / step - ROUNDING).ceil() * step
    }

    /// The same rounded down.
    pub fn down(self, metres: f64) -> f64 {
        -self.up(-metres)
    }
}

/// Why a typed length could not be read.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LengthError {
    /// Nothing was typed.
    #[error("{}", words::measures::NO_LENGTH_WAS_GIVEN_TYPE)]
    Empty,
    /// Part of the text is not a length.
    #[error("{}", words::measures::cant_read_as_a_length(&format_args!("{_0:?}")))]
    Unreadable(String),
    /// A length in a data file must have a unit.
    #[error("{}", words::measures::the_length_has_no_unit(&format_args!("{_0:?}")))]
    NoUnit(String),
}

impl Length {
    /// Zero.
    pub const ZERO: Self = Self(0.0);

    /// From metres.
    pub const fn from_metres(metres: f64) -> Self {
        Self(metres)
    }
    /// From millimetres.
    pub fn from_mm(mm: f64) -> Self {
        Self(mm / 1000.0)
    }
    /// From inches of 25.4 mm.
    pub const fn from_inches(inches: f64) -> Self {
        Self(inches * INCH)
    }
    /// From feet of 12 inches.
    pub const fn from_feet(feet: f64) -> Self {
        Self(feet * 12.0 * INCH)
    }
    /// In metres.
    pub const fn metres(self) -> f64 {
        self.0
    }
    /// In millimetres.
    pub fn mm(self) -> f64 {
        self.0 * 1000.0
    }
    /// In inches.
    pub fn inches(self) -> f64 {
        self.0 / INCH
    }
    /// In feet.
    pub fn feet(self) -> f64 {
        self.0 / INCH / 12.0
    }
    /// The absolute value.
    pub fn abs(self) -> Self {
        Self(self.0.abs())
    }
    /// The longer of two.
    pub fn max(self, other: Self) -> Self {
        Self(self.0.max(other.0))
    }
    /// The shorter of two.
    pub fn min(self, other: Self) -> Self {
        Self(self.0.min(other.0))
    }

    /// Parses what a person typed: `12' 6 1/2"`, `12-6-8/16`, `12-6-8`, `150.5"`, `6 1/2 in`, `3.82 m`, `40 mm`, `12.5` (feet or
    /// metres by `units`), a leading minus, and sums such as `12' + 6 1/2" - 3/16 in`.
    ///
    /// # Errors
    /// [`LengthError`] says which part could not be read and shows valid forms.
    pub fn parse(text: &str, units: Units) -> Result<Self, LengthError> {
        let (value, _) = parse_sum(text, units)?;
        Ok(value)
    }

    /// For display: to the nearest sixteenth of an inch, or the nearest millimetre.
    pub fn show(self, units: Units) -> String {
        match units {
            Units::FeetInches => show_feet_inches(self),
            Units::Metric => {
                let mm = (self.0 * 1000.0).round();
                let mm = if mm == 0.0 { 0.0 } else { mm };
                if mm.abs() < 1000.0 { format!("{mm} mm") } else { format!("{:.3} m", mm / 1000.0) }
            }
        }
    }

    /// A short length in inches alone, `37 1/4"`, or millimetres: for gaps, reveals and clearances.
    pub fn show_small(self, units: Units) -> String {
        match units {
            Units::FeetInches => {
                let sixteenths = (self.inches() * PARTS).round();
                let sign = if sixteenths < 0.0 { "-" } else { "" };
                let sixteenths = sixteenths.abs() as u64;
                format!("{sign}{}\"", inches_text(sixteenths))
            }
            Units::Metric => self.show(units),
        }
    }

    /// For a data file: a string with a unit that reads back as exactly this `f64`.
    pub fn to_data(self) -> String {
        let mut forms = vec![format!("{} mm", round_near(self.0 * 1000.0))];
        let inches = self.inches();
        let sixty_fourths = (inches * 64.0).round();
        if (inches * 64.0 - sixty_fourths).abs() < 1e-6 {
            let (whole, part) = ((sixty_fourths / 64.0).trunc(), (sixty_fourths % 64.0).abs() as u64);
            let (top, bottom) = reduce(part, 64);
            forms.insert(
                0,
                match (whole == 0.0, top) {
                    (_, 0) => format!("{whole} in"),
                    (true, _) if sixty_fourths > 0.0 => format!("{top}/{bottom} in"),
                    (false, _) => format!("{whole} {top}/{bottom} in"),
                    _ => format!("{inches} in"),
                },
            );
        }
        forms
            .into_iter()
            .find(|form| Self::parse(form, Units::Metric).is_ok_and(|back| back.0 == self.0))
            .unwrap_or_else(|| format!("{} m", self.0))
    }
}

/// Removes float dust from a value that is otherwise a whole number of hundredths.
fn round_near(value: f64) -> f64 {
    let rounded = (value * 100.0).round() / 100.0;
    if (rounded - value).abs() < 1e-9 { rounded } else { value }
}

fn reduce(mut top: u64, mut bottom: u64) -> (u64, u64) {
    while top != 0 && top.is_multiple_of(2) && bottom > 1 {
        top /= 2;
        bottom /= 2;
    }
    (top, bottom)
}

/// `6 1/2` from a count of sixteenths.
fn inches_text(sixteenths: u64) -> String {
    let (whole, part) = (sixteenths / 16, sixteenths % 16);
    let (top, bottom) = reduce(part, 16);
    match (whole, top) {
        (_, 0) => format!("{whole}"),
        (0, _) => format!("{top}/{bottom}"),
        _ => format!("{whole} {top}/{bottom}"),
    }
}

fn show_feet_inches(length: Length) -> String {
    let sixteenths = (length.inches() * PARTS).round();
    let sign = if sixteenths < 0.0 { "-" } else { "" };
    // Larger than any roof the cast to u64 saturates, and the result stays readable.
    let sixteenths = sixteenths.abs() as u64;
    let (feet, rest) = (sixteenths / 192, sixteenths % 192);
    match (feet, rest) {
        (0, _) => format!("{sign}{}\"", inches_text(rest)),
        (_, 0) => format!("{sign}{feet}'"),
        // On a roof 7' 3/8" is read as 7 3/8 in.
        (_, 1..16) => format!("{sign}{feet}' 0 {}\"", inches_text(rest)),
        _ => format!("{sign}{feet}' {}\"", inches_text(rest)),
    }
}

/// Parses a sum of terms; the flag says whether every term had a unit.
pub(crate) fn parse_sum(text: &str, units: Units) -> Result<(Length, bool), LengthError> {
    let text = text
        .trim()
        .replace(['\u{2032}', '\u{2019}'], "'")
        .replace(['\u{2033}', '\u{201d}', '\u{201c}'], "\"")
        .replace("''", "\"")
        .replace('\u{2212}', "-")
        .replace('\u{00a0}', " ");
    if text.is_empty() {
        return Err(LengthError::Empty);
    }
    let mut total = 0.0;
    let mut with_unit = true;
    let mut rest = text.as_str();
    let mut first = true;
    while !rest.trim_start().is_empty() {
        rest = rest.trim_start();
        let mut sign = 1.0;
        if let Some(after) = rest.strip_prefix('+') {
            if first && after.trim().is_empty() {
                return Err(LengthError::Unreadable(text.clone()));
            }
            rest = after;
        } else if let Some(after) = rest.strip_prefix('-') {
            sign = -1.0;
            rest = after;
        }
        // A term ends at a sign: `+`, or a `-` after a space. (`12-6-8` is one term, and so is `1e-3`.)
        let end = rest
            .char_indices()
            .skip(1)
            .find(|&(at, c)| c == '+' && !exponent_before(rest, at) || c == '-' && rest[..at].ends_with(' '))
            .map_or(rest.len(), |(at, _)| at);
        let (value, named) = parse_term(rest[..end].trim(), units)?;
        total += sign * value;
        with_unit &= named;
        rest = &rest[end..];
        first = false;
        if rest == "+" || rest == "-" {
            return Err(LengthError::Unreadable(text.clone()));
        }
    }
    if total.is_finite() { Ok((Length(total), with_unit)) } else { Err(LengthError::Unreadable(text)) }
}

fn exponent_before(text: &str, at: usize) -> bool {
    let mut before = text[..at].chars().rev();
    matches!(before.next(), Some('e' | 'E')) && before.next().is_some_and(|c| c.is_ascii_digit())
}

/// One term in metres: mixed numbers, each with a unit, or feet-inches-sixteenths.
fn parse_term(term: &str, units: Units) -> Result<(f64, bool), LengthError> {
    let bad = || LengthError::Unreadable(term.to_owned());
    if term.is_empty() {
        return Err(bad());
    }
    if let Some(value) = parse_dashed(term) {
        return Ok((value, true));
    }
    let mut total = 0.0;
    let mut rest = term;
    let mut named = true;
    let mut last_unit = f64::INFINITY;
    while !rest.is_empty() {
        let number_end = rest
            .char_indices()
            .find(|&(at, c)| {
                !(c.is_ascii_digit() || matches!(c, '.' | '/' | ' ') || is_exponent(rest, at, c))
            })
            .map_or(rest.len(), |(at, _)| at);
        let number = mixed_number(rest[..number_end].trim()).ok_or_else(bad)?;
        rest = &rest[number_end..];
        let unit_end = rest
            .char_indices()
            .find(|&(_, c)| c.is_ascii_digit() || c == ' ' || c == '.')
            .map_or(rest.len(), |(at, _)| at);
        let scale = match rest[..unit_end].trim().trim_end_matches('.').to_ascii_lowercase().as_str() {
            "'" | "ft" | "foot" | "feet" => 12.0 * INCH,
            "\"" | "in" | "inch" | "inches" => INCH,
            "m" | "metre" | "metres" | "meter" | "meters" => 1.0,
            "mm" => 1e-3,
            "cm" => 1e-2,
            "" => {
                named = false;
                // After feet a bare number is inches: 12' 6
                match (units, last_unit == 12.0 * INCH) {
                    (_, true) => INCH,
                    (Units::FeetInches, _) => 12.0 * INCH,
                    (Units::Metric, _) => 1.0,
                }
            }
            _ => return Err(bad()),
        };
        // `6" 12'` or `3 m 4 m` is a typing error, not a length.
        if scale >= last_unit {
            return Err(bad());
        }
        last_unit = scale;
        // Division keeps 1722 mm at the f64 nearest to 1.722, where multiplying by 0.001 would not.
        total += match scale {
            1e-3 => number / 1000.0,
            1e-2 => number / 100.0,
            _ => number * scale,
        };
        rest = rest[unit_end..].trim_start();
    }
    Ok((total, named))
}

fn is_exponent(text: &str, at: usize, c: char) -> bool {
    let digit_before = text[..at].ends_with(|c: char| c.is_ascii_digit());
    let after = &text[at + c.len_utf8()..];
    match c {
        'e' | 'E' => digit_before && after.starts_with(|c: char| c.is_ascii_digit() || c == '-' || c == '+'),
        '-' | '+' => exponent_before(text, at) && after.starts_with(|c: char| c.is_ascii_digit()),
        _ => false,
    }
}

/// `12-6` and `12-6-8` and `12-6-8/16`: feet, inches, sixteenths.
fn parse_dashed(term: &str) -> Option<f64> {
    let pieces: Vec<&str> = term.split('-').collect();
    if !(2..=3).contains(&pieces.len()) {
        return None;
    }
    let feet: f64 = whole(pieces[0])?;
    let inches: f64 = whole(pieces[1])?;
    let sixteenths = match pieces.get(2) {
        None => 0.0,
        Some(piece) => match piece.strip_suffix("/16") {
            Some(top) => whole(top)?,
            None if piece.contains('/') => mixed_number(piece)? * 16.0,
            None => whole(piece)?,
        },
    };
    (inches < 12.0 && sixteenths < 16.0).then_some((feet * 12.0 + inches + sixteenths / 16.0) * INCH)
}

fn whole(text: &str) -> Option<f64> {
    (!text.is_empty() && text.len() < 8 && text.bytes().all(|b| b.is_ascii_digit()))
        .then(|| text.parse().ok())
        .flatten()
}

/// `6`, `6.25`, `1/2` or `6 1/2`.
pub(crate) fn mixed_number(text: &str) -> Option<f64> {
    let fraction = |text: &str| -> Option<f64> {
        let (top, bottom) = text.split_once('/')?;
        let (top, bottom) = (whole(top.trim())?, whole(bottom.trim())?);
        (bottom > 0.0).then_some(top / bottom)
    };
    let decimal = |text: &str| {
        text.starts_with(|c: char| c.is_ascii_digit() || c == '.').then(|| text.parse::<f64>().ok())
    };
    if let Some((first, second)) = text.split_once(' ') {
        return Some(whole(first)? + fraction(second.trim())?);
    }
    if text.contains('/') { fraction(text) } else { decimal(text)? }
}

impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.show(Units::FeetInches))
    }
}

impl Serialize for Length {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.to_data())
    }
}

impl<'de> Deserialize<'de> for Length {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl serde::de::Visitor<'_> for Text {
            type Value = Length;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a length with its unit, such as \"0.5 in\", \"12 ft\", \"40 mm\" or \"3.2 m\"")
            }
            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Length, E> {
                match parse_sum(text, Units::Metric) {
                    Ok((length, true)) => Ok(length),
                    Ok((_, false)) => Err(E::custom(LengthError::NoUnit(text.to_owned()))),
                    Err(error) => Err(E::custom(error)),
                }
            }
        }
        deserializer.deserialize_str(Text)
    }
}

impl JsonSchema for Length {
    fn inline_schema() -> bool {
        false
    }
    fn schema_name() -> Cow<'static, str> {
        "Length".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "A length with its unit: \"1/16 in\", \"12 ft\", \"1722 mm\", \"3.2 m\".",
            "pattern": "(in|ft|mm|cm|m|'|\")\\s*$"
        })
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}
impl AddAssign for Length {
    fn add_assign(&mut self, other: Self) {
        self.0 += other.0;
    }
}
impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}
impl Mul<f64> for Length {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}
impl Div<f64> for Length {
    type Output = Self;
    fn div(self, divisor: f64) -> Self {
        Self(self.0 / divisor)
    }
}
impl Div for Length {
    type Output = f64;
    fn div(self, other: Self) -> f64 {
        self.0 / other.0
    }
}
impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn inches(text: &str, expect: f64) {
        let got = Length::parse(text, Units::FeetInches).unwrap().inches();
        assert!((got - expect).abs() < 1e-9, "{text}: {got} in, expected {expect}");
    }

    #[test]
    fn reads_what_people_type() {
        inches("12' 6 1/2\"", 150.5);
        inches("12'6 1/2\"", 150.5);
        inches("12-6-8/16", 150.5);
        inches("12-6-8", 150.5);
        inches("12-6", 150.0);
        inches("150.5\"", 150.5);
        inches("150.5 in", 150.5);
        inches("12' + 6 1/2\"", 150.5);
        inches("12' - 6 1/2\"", 137.5);
        inches("12 ft 6 in", 150.0);
        inches("12' 6", 150.0);
        inches("12.5", 150.0);
        inches("-3/16 in", -0.1875);
        inches("1/16\"", 0.0625);
        inches("3.82 m", 3.82 / 0.0254);
        inches("254 mm", 10.0);
        inches("25.4 cm", 10.0);
        inches("12\u{2032} 6\u{2033}", 150.0);
        inches(" 5 ' ", 60.0);
    }

    #[test]
    fn errors_name_the_wrong_part() {
        for text in [
            "", "  ", "abc", "12' x", "6\" 12'", "1/0 in", "12'' '", "+", "3 m 4 m", "1e999 m", "12-13-0",
            "--4",
        ] {
            assert!(Length::parse(text, Units::FeetInches).is_err(), "{text:?} was taken");
        }
        let error = Length::parse("12' 6 furlong", Units::FeetInches).unwrap_err().to_string();
        assert!(error.contains("furlong") && error.contains("3.82 m"), "{error}");
    }

    #[test]
    fn shows_sixteenths_and_carries() {
        let show = |inches: f64| Length::from_inches(inches).show(Units::FeetInches);
        assert_eq!(show(150.5), "12' 6 1/2\"");
        assert_eq!(show(84.375), "7' 0 3/8\"");
        assert_eq!(show(85.0), "7' 1\"");
        assert_eq!(show(11.99), "1'");
        assert_eq!(show(0.0), "0\"");
        assert_eq!(show(-0.01), "0\"");
        assert_eq!(show(-6.5), "-6 1/2\"");
        assert_eq!(Length::from_mm(1722.4).show(Units::Metric), "1.722 m");
        assert_eq!(Length::from_mm(-0.2).show(Units::Metric), "0 mm");
        assert_eq!(Length::from_inches(37.25).show_small(Units::FeetInches), "37 1/4\"");
    }

    #[test]
    fn a_data_file_names_the_unit() {
        let read = |text: &str| serde_json::from_str::<Length>(text);
        assert_eq!(read("\"1/16 in\"").unwrap(), Length::from_inches(0.0625));
        assert_eq!(read("\"1722 mm\"").unwrap(), Length::from_metres(1.722));
        assert!(read("\"5\"").unwrap_err().to_string().contains("no unit"));
        assert!(read("5").unwrap_err().to_string().contains("with its unit"));
        assert_eq!(serde_json::to_string(&Length::from_inches(0.0625)).unwrap(), "\"1/16 in\"");
        assert_eq!(serde_json::to_string(&Length::from_metres(1.722)).unwrap(), "\"1722 mm\"");
    }

    proptest! {
        #[test]
        fn data_reads_back_to_the_bit(value in -1e4..1e4f64) {
            let length = Length::from_metres(value);
            let text = serde_json::to_string(&length).unwrap();
            prop_assert_eq!(serde_json::from_str::<Length>(&text).unwrap(), length);
        }

        #[test]
        fn display_is_within_half_a_sixteenth(value in -1e3..1e3f64) {
            let length = Length::from_metres(value);
            let back = Length::parse(&length.show(Units::FeetInches), Units::FeetInches).unwrap();
            prop_assert!((back - length).abs().inches() <= 1.0 / 32.0 + 1e-9);
        }

        #[test]
        fn no_text_panics(text in "[-+0-9./'\" a-z]{0,20}|\\PC{0,12}") {
            let _ = Length::parse(&text, Units::FeetInches);
            let _ = Length::parse(&text, Units::Metric);
        }
    }
}
