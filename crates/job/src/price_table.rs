//! A price list as a table: CSV or a workbook.

use crate::table::{Row, Table};
use crate::{Alternate, Price, PriceList};
use chalkcourse_words::{pick, tell};
use rust_decimal::Decimal;
use std::collections::BTreeMap;
use std::str::FromStr;

/// Reads a price list out of a table with the columns `number` and `price`, and maybe `name`, `untaxed` ("yes") and
/// `alternate for` (the number of the part in whose place a row may be taken).
///
/// A row without a number says something of the whole list: its `name` cell is `list`, `date`, `currency`, `tax %` or
/// `delivery`, its `price` cell what that is.
pub(crate) fn price_list(table: &Table, name: &str) -> Result<PriceList, String> {
    let (number, price) = (table.column("number")?, table.column("price")?);
    let (words, untaxed, instead) =
        (table.column("name").ok(), table.column("untaxed").ok(), table.column("alternate for").ok());
    let cell =
        |row: &Row, column: Option<usize>| column.map_or_else(String::new, |at| row.cell(at).to_owned());
    let mut list = PriceList {
        name: name.to_owned(),
        date: String::new(),
        currency: String::new(),
        tax_percent: None,
        delivery: None,
        prices: BTreeMap::new(),
    };
    let mut alternates = Vec::new();
    for row in table.rows() {
        let amount = row.cell(price);
        let wrong = |wrong: String| format!("{}: {wrong}", row.place());
        let part = row.cell(number).to_owned();
        if part.is_empty() {
            match cell(row, words).to_lowercase().as_str() {
                "list" => amount.clone_into(&mut list.name),
                "date" => amount.clone_into(&mut list.date),
                "currency" => amount.clone_into(&mut list.currency),
                "tax %" => list.tax_percent = Some(money(amount).map_err(wrong)?),
                "delivery" => list.delivery = Some(money(amount).map_err(wrong)?),
                other => {
                    return Err(wrong(tell!(
                        "a row without a number is one of list, date, currency, tax %, delivery, not {other:?}",
                        "una fila sin número es una de list, date, currency, tax %, delivery, no {other:?}"
                    )));
                }
            }
            continue;
        }
        // A part that the supplier lists without a price has none: it is told as missing, not taken for nothing.
        if amount.is_empty() {
            continue;
        }
        let package = money(amount).map_err(wrong)?;
        let other = cell(row, instead);
        if other.is_empty() {
            let untaxed = matches!(cell(row, untaxed).to_lowercase().as_str(), "yes" | "true" | "x" | "1");
            let price = Price { untaxed, ..Price::of(package) };
            if list.prices.insert(part.clone(), price).is_some() {
                return Err(wrong(tell!("{part:?} has a price already", "{part:?} ya tiene precio")));
            }
        } else {
            alternates.push((
                row.place(),
                other,
                Alternate { number: part, name: cell(row, words), package },
            ));
        }
    }
    for (place, other, alternate) in alternates {
        match list.prices.get_mut(&other) {
            Some(price) => price.alternates.push(alternate),
            None => {
                return Err(tell!(
                    "{place}: the list has no price for {other:?}, whose alternate this is",
                    "{place}: la lista no tiene precio de {other:?}, de la que esta es alterna"
                ));
            }
        }
    }
    if list.currency.is_empty() {
        return Err(pick(
            "the list must say its currency: a row without a number, with the name \"currency\"",
            "la lista debe decir su moneda: una fila sin número, con el nombre \"currency\"",
        )
        .to_owned());
    }
    list.check()?;
    Ok(list)
}

/// A decimal as typed: `184.50`, `1,184.50`, `$184.50`. A workbook keeps binary fractions; what is a hair beside four
/// decimals was four decimals.
fn money(text: &str) -> Result<Decimal, String> {
    let plain: String = text.chars().filter(|c| !matches!(c, '$' | '€' | '£' | ' ' | '\u{a0}')).collect();
    // A comma groups thousands where three figures follow it; a decimal comma is told, not guessed.
    let grouped =
        plain.split('.').next().unwrap_or_default().split(',').skip(1).all(|group| group.len() == 3);
    let amount = Decimal::from_str(&plain.replace(',', "")).or_else(|_| Decimal::from_scientific(&plain));
    match amount {
        Ok(amount) if grouped => {
            let rounded = amount.round_dp(4);
            let hair = Decimal::new(1, 9);
            Ok(if (amount - rounded).abs() < hair { rounded } else { amount })
        }
        _ => Err(tell!(
            "can't read {text:?} as money: write it as 184.50",
            "no se puede leer {text:?} como dinero: escríbalo como 184.50"
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn decimal(text: &str) -> Decimal {
        Decimal::from_str(text).unwrap()
    }

    #[test]
    fn money_reads_as_people_write_it() {
        assert_eq!(money("184.50").unwrap(), decimal("184.50"));
        assert_eq!(money("$1,184.5").unwrap(), decimal("1184.5"));
        assert_eq!(money("0.30000000000000004").unwrap(), decimal("0.3"));
        for wrong in ["12,50", "twelve", "", "1.2.3", "NaN"] {
            assert!(money(wrong).is_err(), "{wrong}");
        }
    }

    #[test]
    fn a_table_gives_a_list() {
        let text = "number;name;price;untaxed;alternate for\n\
                    ;currency;USD;;\n;tax %;7.25;;\n;delivery;85;;\n;date;2026-04-01;;\n\
                    FH-101;Module;212.00;;\nFH-102;Foot;;;\nFH-401;Strip;48.00;yes;\nQX-9;Other module;205.5;;FH-101\n";
        let list = price_list(&Table::from_csv(text).unwrap(), "Harbour Supply").unwrap();
        assert_eq!((list.name.as_str(), list.currency.as_str()), ("Harbour Supply", "USD"));
        assert_eq!(list.tax_percent, Some(decimal("7.25")));
        assert_eq!(list.prices.len(), 2, "a row without a price gives none");
        assert!(list.prices["FH-401"].untaxed);
        assert_eq!(list.prices["FH-101"].alternates[0].number, "QX-9");
    }

    #[test]
    fn what_is_wrong_is_told_with_its_line() {
        let check = |text: &str, words: &str| {
            let wrong = price_list(&Table::from_csv(text).unwrap(), "x").unwrap_err();
            assert!(wrong.contains(words), "{wrong}");
        };
        check("number,name,price\n,currency,USD\nA,,1\nA,,2\n", "line 4");
        check("number,name,price\n,currency,USD\nA,,x\n", "line 3");
        check("number,name,price\nA,,1\n", "currency");
        check("number,name,price\n,colour,red\n", "tax %");
        check("part,price\n", "\"number\"");
    }
}
