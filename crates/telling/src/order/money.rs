//! Money as people read it: the only place that formats an amount. Machine-readable files have plain decimals.

use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;

/// An amount with thousands separators of the language and at least two decimals: 14,962.65.
pub fn show_money(amount: Decimal) -> String {
    money(amount).into()
}

fn money(amount: Decimal) -> Said {
    let text = if amount.scale() < 2 { format!("{amount:.2}") } else { amount.to_string() };
    let (whole, decimals) = text.split_once('.').unwrap_or((&text, "00"));
    Said::joined([with_separators(whole), words::takeoff::DECIMAL_MARK.into(), Said::own(decimals)])
}

/// A whole number with thousands separators.
fn with_separators(whole: &str) -> Said {
    let (sign, digits) = whole.strip_prefix('-').map_or(("", whole), |digits| ("-", digits));
    let first = digits.len() - digits.len().saturating_sub(1) / 3 * 3;
    let starts = std::iter::once(0).chain((first..digits.len()).step_by(3));
    let ends = (first..digits.len()).step_by(3).chain([digits.len()]);
    let threes = starts.zip(ends).filter_map(|(from, to)| digits.get(from..to)).map(Said::own);
    Said::listed(threes, words::takeoff::BETWEEN_THOUSANDS).after(sign)
}

/// A difference, always with its sign: +1,204.50.
pub(super) fn show_more(amount: Decimal) -> String {
    format!("{}{}", plus(amount), show_money(amount))
}

/// An amount with its currency sign in front: $14,962.65, −$1.00. A currency without a sign of its own is shown by its code in
/// the price list: "SEK 14,962.65".
pub fn show_sum(amount: Decimal, currency: &str) -> String {
    sum(amount, currency).into()
}

fn sum(amount: Decimal, currency: &str) -> Said {
    signed(amount, money(amount.abs()), currency)
}

/// The same, rounded to whole units of the currency, to be read from across a table: $14,963.
pub fn show_round_sum(amount: Decimal, currency: &str) -> String {
    let whole = amount.round();
    signed(whole, with_separators(&whole.abs().trunc().to_string()), currency).into()
}

/// The same for a floating-point amount, such as the value of modules. What no decimal can hold is shown as it is.
pub fn worth(amount: f64, currency: &str) -> Said {
    match Decimal::try_from(amount) {
        Ok(exact) => sum(exact.round_dp(2), currency),
        Err(_) => Said::own(format!("{amount:.2} {currency}")),
    }
}

fn signed(amount: Decimal, digits: Said, currency: &str) -> Said {
    let minus = if is_less(amount) { "−" } else { "" };
    digits.after(match sign_of(currency) {
        Some(sign) => format!("{minus}{sign}"),
        None if currency.trim().is_empty() => minus.to_owned(),
        None => format!("{minus}{} ", currency.trim()),
    })
}

/// A difference of such amounts, always with its sign: +$1,204.50.
pub fn show_sum_more(amount: Decimal, currency: &str) -> String {
    format!("{}{}", plus(amount), show_sum(amount, currency))
}

/// The plus sign, unless the amount is negative.
fn plus(amount: Decimal) -> &'static str {
    if is_less(amount) { "" } else { "+" }
}

/// Whether it is below zero; a zero may carry a minus sign too.
fn is_less(amount: Decimal) -> bool {
    amount.is_sign_negative() && !amount.is_zero()
}

/// Unambiguous currency signs, by ISO 4217 code (Unicode CLDR has these for English; from memory).
fn sign_of(currency: &str) -> Option<&'static str> {
    Some(match currency.trim() {
        "USD" => "$",
        "CAD" => "CA$",
        "AUD" => "A$",
        "NZD" => "NZ$",
        "MXN" => "MX$",
        "EUR" => "€",
        "GBP" => "£",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn money_has_thousands_separators() {
        for (amount, text) in [
            ("0", "0.00"),
            ("7.5", "7.50"),
            ("999.99", "999.99"),
            ("1000", "1,000.00"),
            ("14962.65", "14,962.65"),
            ("-1234567.125", "-1,234,567.125"),
        ] {
            assert_eq!(show_money(amount.parse().unwrap()), text);
        }
    }

    #[test]
    fn a_sum_has_the_sign_of_its_currency_or_its_name() {
        for (amount, currency, text) in [
            ("2852473.72", "USD", "$2,852,473.72"),
            ("-227.37", "USD", "−$227.37"),
            ("0", "USD", "$0.00"),
            ("999", "EUR", "€999.00"),
            ("1000", " CAD ", "CA$1,000.00"),
            ("1000", "SEK", "SEK 1,000.00"),
            ("-0.5", "sand dollars", "−sand dollars 0.50"),
            ("5", "", "5.00"),
        ] {
            assert_eq!(show_sum(amount.parse().unwrap(), currency), text);
        }
        assert_eq!(show_sum_more("227.37".parse().unwrap(), "USD"), "+$227.37");
        assert_eq!(show_sum_more("-227.37".parse().unwrap(), "USD"), "−$227.37");
        assert_eq!(show_sum_more("0".parse().unwrap(), "USD"), "+$0.00");
        assert_eq!(show_round_sum("14962.65".parse().unwrap(), "USD"), "$14,963");
        assert_eq!(show_round_sum("-0.2".parse().unwrap(), "USD"), "$0");
        assert_eq!(worth(1234.567, "USD").now(), "$1,234.57");
        assert_eq!(worth(f64::INFINITY, "USD").now(), "inf USD");
    }
}
