//! Counted things.

/// A number that selects a plural, with its text form.
#[derive(Clone, Debug, PartialEq)]
pub struct Count {
    pub(crate) number: f64,
    pub(crate) shown: String,
}

impl Count {
    /// A number with its own notation, such as 0.5 as "1/2" or 1,000,000 with its commas.
    pub fn shown(number: f64, shown: impl Into<String>) -> Self {
        Self { number, shown: shown.into() }
    }

    /// A count of something without a plural: "3 × crate".
    pub fn times(&self, thing: &str) -> String {
        format!("{} × {thing}", self.shown)
    }

    /// Its text form.
    pub fn as_text(&self) -> &str {
        &self.shown
    }
}

macro_rules! counted {
    ($($number:ty)+) => {$(
        impl From<$number> for Count {
            fn from(number: $number) -> Self {
                // Plurals depend on the last digits of numbers far below 2⁵³, above which the conversion rounds.
                #[allow(clippy::cast_lossless, reason = "one text for all kinds of numbers")]
                Self { number: number as f64, shown: number.to_string() }
            }
        }

        impl From<&$number> for Count {
            fn from(number: &$number) -> Self {
                (*number).into()
            }
        }
    )+};
}

counted!(u8 u16 u32 u64 usize i32 i64 f64);
