//! A price list as a table: CSV or a workbook.

use crate::price_reading::{PriceReading, PriceSummary};
use crate::table::{Kind, Row, Table};
use crate::written_number::{Mark, mark_of, read};
use crate::{Alternate, Kit, Price, PriceList};
use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use std::collections::BTreeMap;

/// The required columns of a price table, each with its accepted names.
pub(crate) const COLUMNS: [&[&str]; 2] = [NUMBER, PRICE];
const NUMBER: &[&str] = &["number", "número", "numero"];
const PRICE: &[&str] = &["price", "precio"];
const NAME: &[&str] = &["name", "nombre"];
const UNTAXED: &[&str] = &["untaxed", "sin impuesto"];
const INSTEAD: &[&str] = &["alternate for", "alterna de"];

/// Reads a price list from a table with the columns `number` and `price`, and optionally `name`, `untaxed` ("yes") and
/// `alternate for` (the number of the part that a row is an alternate for).
///
/// A row without a number is about the whole list: its `name` cell is `list`, `date`, `currency`, `tax %` or
/// `delivery`, its `price` cell the value. The number format is that of the column; part numbers are respelled as in
/// the kit.
pub(crate) fn price_list(table: &Table, name: &str, kit: &Kit) -> Result<PriceReading, Said> {
    let columns = Columns {
        number: table.column(NUMBER)?,
        price: table.column(PRICE)?,
        name: table.column(NAME).ok(),
        untaxed: table.column(UNTAXED).ok(),
        instead: table.column(INSTEAD).ok(),
    };
    if let Some(row) = table.longer_row() {
        return Err(words::order::it_has_more_cells_than(&row.place()));
    }
    let mut reader = Reader {
        kit,
        columns,
        mark: None,
        list: PriceList {
            name: name.to_owned(),
            date: String::new(),
            currency: String::new(),
            tax_percent: None,
            delivery: None,
            prices: BTreeMap::new(),
        },
        summary: PriceSummary { titles: table.titles(), ..PriceSummary::default() },
        alternates: Vec::new(),
    };
    reader.summary.other_sheets = table.other_sheets().to_vec();
    reader.words(table)?;
    if reader.list.currency.is_empty() {
        return Err(words::order::THE_LIST_MUST_SAY_ITS.into());
    }
    reader.mark = reader.mark(table)?;
    for row in table.rows() {
        reader.row(row).map_err(|wrong| wrong.after(format!("{}: ", row.place())))?;
    }
    reader.alternates()?;
    reader.list.check()?;
    Ok(reader.done())
}

struct Columns {
    number: usize,
    price: usize,
    name: Option<usize>,
    untaxed: Option<usize>,
    instead: Option<usize>,
}

struct Reader<'a> {
    kit: &'a Kit,
    columns: Columns,
    /// The decimal mark of the price column.
    mark: Option<Mark>,
    list: PriceList,
    summary: PriceSummary,
    /// Position in the file, the part that it is an alternate for, the alternate.
    alternates: Vec<(String, String, Alternate)>,
}

fn cell(row: &Row, column: Option<usize>) -> &str {
    column.map_or("", |at| row.cell(at))
}

/// The rows without a number that set values of the whole list.
const SAYS: [&str; 5] = ["list", "date", "currency", "tax %", "delivery"];

impl Reader<'_> {
    /// The setting of a row without a number.
    fn about(&self, row: &Row) -> Option<String> {
        row.cell(self.columns.number).is_empty().then(|| cell(row, self.columns.name).to_lowercase())
    }

    /// Name, date and currency of the list.
    fn words(&mut self, table: &Table) -> Result<(), Said> {
        for row in table.rows() {
            let amount = row.cell(self.columns.price);
            match self.about(row).as_deref() {
                Some("list") => amount.clone_into(&mut self.list.name),
                Some("date") => amount.clone_into(&mut self.list.date),
                Some("currency") => amount.clone_into(&mut self.list.currency),
                Some(other) if !SAYS.contains(&other) && !amount.is_empty() => {
                    return Err(words::order::a_row_without_a_number(
                        &row.place(),
                        &SAYS.join(", "),
                        &format_args!("{other:?}"),
                    ));
                }
                _ => {}
            }
        }
        Ok(())
    }

    fn mark(&self, table: &Table) -> Result<Option<Mark>, Said> {
        let price = self.columns.price;
        let amounts = table.rows().iter().filter(|row| {
            let words =
                self.about(row).is_some_and(|about| ["list", "date", "currency"].contains(&about.as_str()));
            row.kind(price) == Kind::Text && !words
        });
        let texts = amounts.filter_map(|row| Some((row.place(), self.bare(row.cell(price)).ok()?)));
        mark_of(texts)
    }

    /// An amount without its currency sign or code.
    fn bare<'t>(&self, text: &'t str) -> Result<&'t str, Said> {
        let currency = self.list.currency.to_uppercase();
        let text = text.trim().trim_end_matches('%').trim_end();
        let apart = |c: char| c.is_alphabetic() || matches!(c, '$' | '€' | '£');
        let head = text.find(|c: char| !apart(c)).unwrap_or(text.len());
        let (before, rest) = text.split_at(head);
        let tail = rest.trim_end_matches(apart).len();
        let (number, after) = rest.split_at(tail);
        if number.trim().is_empty() {
            return Ok(text);
        }
        for said in [before, after] {
            let other = match said {
                "" | "$" => false,
                "€" => currency != "EUR",
                "£" => currency != "GBP",
                // "US$" matches "USD" too.
                code => !currency.starts_with(&code.trim_end_matches('$').to_uppercase()),
            };
            if other {
                return Err(words::order::is_not_in_the_currency(&format_args!("{text:?}"), &currency));
            }
        }
        Ok(number.trim())
    }

    /// An amount of money.
    fn money(&self, row: &Row) -> Result<Decimal, Said> {
        let (text, kind) = (row.cell(self.columns.price), row.kind(self.columns.price));
        if kind == Kind::Percent || text.ends_with('%') {
            return Err(words::order::a_price_cant_be_format(&text.trim_end_matches('%').trim_end()));
        }
        self.number(row)
    }

    fn number(&self, row: &Row) -> Result<Decimal, Said> {
        let (text, kind) = (row.cell(self.columns.price), row.kind(self.columns.price));
        // A workbook stores binary fractions; round what is very close to four decimals.
        let near = |amount: Decimal| {
            let rounded = amount.round_dp(4);
            if (amount - rounded).abs() < Decimal::new(1, 9) { rounded } else { amount }
        };
        match kind {
            Kind::Text => read(self.bare(text)?, self.mark),
            Kind::Number | Kind::Percent => read(text, Some(Mark::Point)).map(near),
        }
    }

    /// Sales tax. A value below one without a percent sign is ambiguous, since 0.0825 may mean 8.25 %: it is rejected.
    fn percent(&self, row: &Row) -> Result<Decimal, Said> {
        let text = row.cell(self.columns.price);
        let percent = self.number(row)?;
        let said = row.kind(self.columns.price) == Kind::Percent || text.ends_with('%');
        if !said && percent > Decimal::ZERO && percent < Decimal::ONE {
            return Err(words::order::a_tax_of_can_be(&text));
        }
        Ok(percent)
    }

    fn row(&mut self, row: &Row) -> Result<(), Said> {
        let amount = row.cell(self.columns.price);
        if let Some(about) = self.about(row) {
            match about.as_str() {
                "tax %" => self.list.tax_percent = Some(self.percent(row)?),
                "delivery" => self.list.delivery = Some(self.money(row)?),
                said if SAYS.contains(&said) => {}
                // A title row among the lines.
                _ => self.summary.titles += 1,
            }
            return Ok(());
        }
        let typed = row.cell(self.columns.number);
        // A part listed without a price has none: it is reported as missing, not taken as zero.
        if amount.is_empty() {
            self.summary.without_price.push(typed.to_owned());
            return Ok(());
        }
        let package = self.money(row)?;
        let other = cell(row, self.columns.instead);
        if !other.is_empty() {
            let alternate = Alternate {
                number: typed.to_owned(),
                name: cell(row, self.columns.name).to_owned(),
                package,
            };
            self.alternates.push((row.place(), other.to_owned(), alternate));
            return Ok(());
        }
        let untaxed = match cell(row, self.columns.untaxed).to_lowercase().as_str() {
            "" | "no" | "false" => false,
            "yes" | "true" | "x" | "sí" | "si" => true,
            said => {
                return Err(words::order::under_untaxed_write_yes_or(&format_args!("{said:?}")));
            }
        };
        let part = self.part(typed);
        match self.list.prices.get(&part) {
            Some(price) if price.package == package && price.untaxed == untaxed => {
                self.summary.twice.push(part);
            }
            Some(price) => {
                return Err(words::order::has_a_price_already_take(
                    &format_args!("{part:?}"),
                    &format_args!("{}", price.package),
                ));
            }
            None => {
                self.list.prices.insert(part, Price { untaxed, ..Price::of(package) });
            }
        }
        Ok(())
    }

    /// A part number as spelled in the kit: only letters and digits are compared, ignoring case, blanks and dashes.
    fn part(&mut self, typed: &str) -> String {
        if self.kit.part(typed).is_some() {
            return typed.to_owned();
        }
        let wanted = letters(typed);
        let mut alike = self.kit.parts.iter().filter(|part| letters(&part.number) == wanted);
        let (Some(part), None) = (alike.next(), alike.next()) else { return typed.to_owned() };
        let told = (typed.to_owned(), part.number.clone());
        if !self.summary.respelled.contains(&told) {
            self.summary.respelled.push(told);
        }
        part.number.clone()
    }

    fn alternates(&mut self) -> Result<(), Said> {
        for (place, typed, alternate) in std::mem::take(&mut self.alternates) {
            let part = self.part(&typed);
            match self.list.prices.get_mut(&part) {
                Some(price) => {
                    price.alternates.push(alternate);
                    self.summary.alternates += 1;
                }
                None => {
                    return Err(words::order::the_list_has_no_price(&place, &format_args!("{typed:?}")));
                }
            }
        }
        Ok(())
    }

    fn done(self) -> PriceReading {
        let mut reading = PriceReading::of(self.list, self.kit);
        reading.summary = PriceSummary {
            taken: reading.summary.taken,
            unknown: reading.summary.unknown,
            missing: reading.summary.missing,
            ..self.summary
        };
        reading
    }
}

/// The characters of a part number that identify it.
fn letters(number: &str) -> String {
    number.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_uppercase).collect()
}

#[cfg(test)]
mod tests;
