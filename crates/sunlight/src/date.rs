use std::fmt;

/// A day of the Gregorian calendar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    year: i32,
    month: u32,
    day: u32,
}

/// A date and a clock time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// The date.
    pub date: Date,
    /// Clock time in hours since midnight, 14.5 for half past two.
    pub hour: f64,
    /// Offset of the clock from UTC in hours; −5 for New York in winter.
    pub utc_offset: f64,
}

impl Date {
    /// A date by its numbers; `None` if it is not in the calendar.
    pub fn new(year: i32, month: u32, day: u32) -> Option<Self> {
        let there = (1..=12).contains(&month) && (1..=days_of_month(year, month)).contains(&day);
        there.then_some(Self { year, month, day })
    }

    /// The n-th day of a year, 1-based; clamped to the year.
    pub fn of_year(year: i32, nth: u32) -> Self {
        let mut left = nth.clamp(1, days_of_year(year));
        let mut month = 1;
        while left > days_of_month(year, month) {
            left -= days_of_month(year, month);
            month += 1;
        }
        Self { year, month, day: left }
    }

    /// The day of the year, 1-based.
    pub fn day_of_year(self) -> u32 {
        (1..self.month).map(|month| days_of_month(self.year, month)).sum::<u32>() + self.day
    }

    /// The year.
    pub fn year(self) -> i32 {
        self.year
    }
    /// The month, 1-based.
    pub fn month(self) -> u32 {
        self.month
    }
    /// The day of the month, 1-based.
    pub fn day(self) -> u32 {
        self.day
    }

    /// Parses `2026-06-21`.
    pub fn parse(text: &str) -> Option<Self> {
        let mut parts = text.trim().splitn(3, '-');
        let mut number = || parts.next()?.parse::<u32>().ok();
        let (year, month, day) = (number()?, number()?, number()?);
        Self::new(i32::try_from(year).ok()?, month, day)
    }
}

impl fmt::Display for Date {
    /// `2026-06-21`
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

/// Number of days in a year.
fn days_of_year(year: i32) -> u32 {
    if is_leap(year) { 366 } else { 365 }
}

fn is_leap(year: i32) -> bool {
    year % 4 == 0 && (year % 100 != 0 || year % 400 == 0)
}

fn days_of_month(year: i32, month: u32) -> u32 {
    match month {
        2 if is_leap(year) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_of_a_year_round_trip() {
        for year in [1900, 2000, 2024, 2026] {
            for nth in 1..=days_of_year(year) {
                let date = Date::of_year(year, nth);
                assert_eq!(date.day_of_year(), nth);
                assert_eq!(Date::new(date.year(), date.month(), date.day()), Some(date));
            }
        }
        // Meeus, Astronomical Algorithms, chapter 7: 14 November 1978 is day 318, 22 April 1988 day 113
        assert_eq!(Date::new(1978, 11, 14).unwrap().day_of_year(), 318);
        assert_eq!(Date::new(1988, 4, 22).unwrap().day_of_year(), 113);
    }

    #[test]
    fn invalid_dates_are_refused() {
        assert_eq!(Date::parse("2026-06-21"), Date::new(2026, 6, 21));
        for wrong in ["", "2026", "2026-13-01", "2026-02-29", "2026-06-31", "-1-2-3", "a-b-c", "2026-06-21-9"]
        {
            assert_eq!(Date::parse(wrong), None, "{wrong}");
        }
    }
}
