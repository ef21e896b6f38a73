//! Numbers as written in a column, with a decimal point or a decimal comma.
//!
//! Ambiguous numbers are never guessed: `1.205` is 1205 with a decimal comma and 1.205 with a decimal point. The other
//! cells of the column decide; if they don't, it is rejected.

use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use std::str::FromStr;

/// The decimal mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Mark {
    Point,
    Comma,
}

/// Parses a number with a given decimal mark. Groups of three digits may be separated by the other mark, an apostrophe
/// or a blank.
fn read_as(text: &str, mark: Mark) -> Option<Decimal> {
    let (mark, other) = match mark {
        Mark::Point => ('.', ','),
        Mark::Comma => (',', '.'),
    };
    let (sign, text) = text.strip_prefix('-').map_or(("", text), |text| ("-", text));
    let (whole, decimals) = match text.split_once(mark) {
        Some((_, "")) => return None,
        Some((whole, decimals)) => (whole, decimals),
        None => (text, ""),
    };
    let apart = |c: char| c == other || matches!(c, '\'' | '’' | ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}');
    let groups: Vec<&str> = whole.split(apart).collect();
    let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    let one_sign = whole.chars().filter(|c| apart(*c)).collect::<std::collections::BTreeSet<_>>().len() <= 1;
    let grouped = match groups.as_slice() {
        [one] => !one.is_empty(),
        [first, rest @ ..] => {
            (1..=3).contains(&first.len()) && !first.starts_with('0') && rest.iter().all(|g| g.len() == 3)
        }
        [] => false,
    };
    if !(grouped && one_sign && digits(decimals) && groups.iter().all(|group| digits(group))) {
        return None;
    }
    Decimal::from_str(&format!("{sign}{}.{decimals}0", groups.concat())).ok().map(|number| number.normalize())
}

/// What a text implies about the decimal mark of its column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Says {
    Nothing,
    Only(Mark),
    /// It is a valid number either way, with different values.
    Either,
    NoNumber,
}

fn says(text: &str) -> Says {
    match (read_as(text, Mark::Point), read_as(text, Mark::Comma)) {
        (Some(point), Some(comma)) if point == comma => Says::Nothing,
        (Some(_), Some(_)) => Says::Either,
        (Some(_), None) => Says::Only(Mark::Point),
        (None, Some(_)) => Says::Only(Mark::Comma),
        (None, None) => Says::NoNumber,
    }
}

/// The decimal mark of a column, from all its texts with their positions; `None` if none of them decides.
///
/// # Errors
/// If two cells use different marks.
pub(crate) fn mark_of<'a>(cells: impl Iterator<Item = (String, &'a str)>) -> Result<Option<Mark>, Said> {
    let mut found: Option<(Mark, String, String)> = None;
    for (place, text) in cells {
        let Says::Only(mark) = says(text) else { continue };
        match &found {
            Some((first, at, said)) if *first != mark => {
                return Err(words::job::and_in_are_written_in(
                    &place,
                    &format_args!("{text:?}"),
                    &format_args!("{said:?}"),
                    &at,
                ));
            }
            Some(_) => {}
            None => found = Some((mark, place, text.to_owned())),
        }
    }
    Ok(found.map(|(mark, ..)| mark))
}

/// Parses a number with the mark of its column.
///
/// # Errors
/// If it is not a number, or is ambiguous.
pub(crate) fn read(text: &str, mark: Option<Mark>) -> Result<Decimal, Said> {
    let no_number = || words::job::cant_read_as_a_number(&format_args!("{text:?}"));
    match (says(text), mark) {
        (Says::NoNumber, _) => Err(no_number()),
        (Says::Either, None) => Err(words::job::can_be_read_in_two(&format_args!("{text:?}"))),
        (_, mark) => read_as(text, mark.unwrap_or(Mark::Point))
            .or_else(|| read_as(text, Mark::Comma))
            .ok_or_else(no_number),
    }
}

/// Parses an amount typed in a field: with a decimal point, and optional commas between thousands.
///
/// # Errors
/// If it is not a number in that form: a decimal comma is reported, not guessed.
pub fn amount_from_text(text: &str) -> Result<Decimal, Said> {
    read_as(text.trim(), Mark::Point)
        .ok_or_else(|| words::job::cant_read_write_it_with(&format_args!("{text:?}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn decimal(text: &str) -> Decimal {
        Decimal::from_str(text).unwrap()
    }

    #[test]
    fn each_decimal_mark_is_recognised() {
        for (text, is) in [
            ("184.50", Says::Only(Mark::Point)),
            ("1,205.00", Says::Only(Mark::Point)),
            ("1,205,000", Says::Only(Mark::Point)),
            ("0.125", Says::Only(Mark::Point)),
            ("1.205,00", Says::Only(Mark::Comma)),
            ("12,5", Says::Only(Mark::Comma)),
            ("0,125", Says::Only(Mark::Comma)),
            ("1.205", Says::Either),
            ("1,205", Says::Either),
            ("1205", Says::Nothing),
            ("1 205", Says::Nothing),
            ("1'205", Says::Nothing),
            ("1205.125", Says::Only(Mark::Point)),
            ("12 50", Says::NoNumber),
            ("1.2.3", Says::NoNumber),
            ("1,205'000.00", Says::NoNumber),
            ("1.", Says::NoNumber),
            (".5", Says::NoNumber),
            ("", Says::NoNumber),
            ("1e3", Says::NoNumber),
            ("twelve", Says::NoNumber),
        ] {
            assert_eq!(says(text), is, "{text}");
        }
    }

    #[test]
    fn a_column_resolves_ambiguous_cells() {
        let of = |texts: &[&str]| mark_of(texts.iter().map(|text| ("line 2".to_owned(), *text)));
        assert_eq!(read("1.205", of(&["12,50", "1.205"]).unwrap()).unwrap(), decimal("1205"));
        assert_eq!(read("1.205", of(&["12.50", "1.205"]).unwrap()).unwrap(), decimal("1.205"));
        assert_eq!(of(&["12", "1.205"]).unwrap(), None);
        assert!(read("1.205", None).unwrap_err().now().contains("two ways"));
        assert!(of(&["12.50", "12,50"]).unwrap_err().now().contains("two ways"));
        assert_eq!(read("-1.205,5", Some(Mark::Comma)).unwrap(), decimal("-1205.5"));
        assert!(amount_from_text("1.205,00").is_err() && amount_from_text("12,5").is_err());
        assert_eq!(amount_from_text(" 1,205.50 ").unwrap(), decimal("1205.50"));
    }
}
