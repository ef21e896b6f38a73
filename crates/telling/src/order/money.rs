//! Money as people read it.

use rust_decimal::Decimal;

/// An amount with its thousands apart and at least two decimals: 14,962.65.
pub fn show_money(amount: Decimal) -> String {
    let text = if amount.scale() < 2 { format!("{amount:.2}") } else { amount.to_string() };
    let (whole, decimals) = text.split_once('.').unwrap_or((&text, "00"));
    let (sign, digits) = whole.strip_prefix('-').map_or(("", whole), |digits| ("-", digits));
    let mut apart = String::new();
    for (at, digit) in digits.char_indices() {
        if at > 0 && (digits.len() - at).is_multiple_of(3) {
            apart.push(',');
        }
        apart.push(digit);
    }
    format!("{sign}{apart}.{decimals}")
}

/// A difference, always with its sign: +1,204.50.
pub(super) fn show_more(amount: Decimal) -> String {
    let sign = if amount.is_sign_negative() && !amount.is_zero() { "" } else { "+" };
    format!("{sign}{}", show_money(amount))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn money_has_its_thousands_apart() {
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
}
