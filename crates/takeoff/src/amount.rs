use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Amount, Holds, Unit};

/// Tolerance when rounding up, as a part of a piece or of a package: a millionth. Sums of lengths carry float dust of a billionth
/// or less, and a cut on a roof is good to a millimetre in a stick of some metres, so nothing real is this small.
pub const DUST: f64 = 1e-6;

/// `amount` rounded up to a whole number, ignoring an excess of up to [`DUST`].
pub(crate) fn whole(amount: f64) -> f64 {
    (amount - DUST).ceil().max(0.0)
}

/// What one place needs, in the part's unit; `measured` is the place's own amount, in `of`.
pub(crate) fn share(each: &Amount, of: Unit, measured: f64) -> f64 {
    if measured.is_nan() || measured <= 0.0 {
        return 0.0;
    }
    match each {
        Amount::Count(count) => measured * count,
        Amount::Length(length) if of == Unit::Each => measured * length.metres(),
        Amount::Length(length) => length.metres(),
        // The first piece covers its length, each further one its length less the lap.
        Amount::Pieces { length, lap } => {
            whole((measured - lap.metres()) / (length.metres() - lap.metres())).max(1.0)
        }
        Amount::Spaced(spacing) if of == Unit::Area => whole(measured / spacing.metres().powi(2)).max(1.0),
        Amount::Spaced(spacing) => whole(measured / spacing.metres()).max(1.0) + 1.0,
        Amount::Rate { take, of } => take.amount() * measured / of.amount(),
        Amount::Width(width) => measured * width.metres(),
        // Calculated over all places together: the cut list and the rolls know the share of each.
        Amount::Cut(_) | Amount::Laid(_) => 0.0,
    }
}

/// A quantity as text: `58`, `22' 7 9/16"`, `253.04 sq ft`.
pub fn show_amount(amount: f64, unit: Unit, units: Units) -> String {
    match unit {
        Unit::Each => number(amount),
        Unit::Length => Length::from_metres(amount).show(units),
        Unit::Area => Holds::Area(amount).show(units),
        Unit::Time => Holds::Hours(amount).show(units),
        Unit::Mass => Holds::Kilograms(amount).show(units),
    }
}

/// With at most three decimals and no trailing zeros.
pub fn number(value: f64) -> String {
    let rounded = (value * 1000.0).round() / 1000.0;
    format!("{rounded}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Holds;

    fn check(each: &Amount, of: Unit, measured: f64, expect: f64) {
        let got = share(each, of, measured);
        assert!((got - expect).abs() < 1e-9, "{each:?} of {measured}: {got}, expected {expect}");
    }

    #[test]
    fn each_amount_by_hand() {
        check(&Amount::Count(5.0), Unit::Each, 12.0, 60.0);
        check(&Amount::Count(1.0), Unit::Length, 6.9, 6.9);
        check(&Amount::Length(Length::from_metres(2.0)), Unit::Each, 3.0, 6.0);
        check(&Amount::Length(Length::from_metres(2.0)), Unit::Length, 3.0, 2.0);
        // a square metre holds 4 squares of half a metre
        check(&Amount::Spaced(Length::from_metres(0.5)), Unit::Area, 1.0, 4.0);
        check(&Amount::Spaced(Length::from_metres(0.5)), Unit::Area, 1.01, 5.0);
        check(&Amount::Count(5.0), Unit::Each, 0.0, 0.0);
        // a strip of half a metre along three metres
        check(&Amount::Width(Length::from_metres(0.5)), Unit::Length, 3.0, 1.5);
        // 80 three-tab shingles a square (36 × 12 in with 5 in to the weather cover 1.25 sq ft each: 100 / 1.25)
        let square = Holds::Area(100.0 * 0.3048 * 0.3048);
        let shingles = Amount::Rate { take: Holds::Pieces(80.0), of: square };
        check(&shingles, Unit::Area, 25.0 * square.amount(), 2000.0);
    }

    /// Drip edge of 10 ft lapped 2 in covers 118 in a piece (IRC R905.2.8.5 (2018): laps of at least 2 in): 60 ft take
    /// 120 + 118 n ≥ 720, n = 5.08…, so 7 sticks; 59 ft 2 in take 120 + 5 × 118 = 710 in exactly, 6 sticks.
    #[test]
    fn pieces_lap_one_another() {
        let stick = Amount::Pieces { length: Length::from_feet(10.0), lap: Length::from_inches(2.0) };
        check(&stick, Unit::Length, Length::from_feet(60.0).metres(), 7.0);
        check(&stick, Unit::Length, Length::from_inches(710.0).metres(), 6.0);
        check(&stick, Unit::Length, Length::from_inches(710.0).metres() + 1e-3, 7.0);
        check(&stick, Unit::Length, Length::from_inches(1.0).metres(), 1.0);
    }

    #[test]
    fn dust_is_not_bought() {
        let tenths = Amount::Pieces { length: Length::from_metres(0.1), lap: Length::ZERO };
        // 0.1 + 0.2 = 0.30000000000000004
        check(&tenths, Unit::Length, 0.1 + 0.2, 3.0);
        check(&Amount::Spaced(Length::from_metres(0.1)), Unit::Length, 0.1 + 0.2, 4.0);
        assert_eq!(whole(f64::NAN), 0.0);
    }
}
