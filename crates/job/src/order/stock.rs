use crate::Holds;
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A leftover of a part from another job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Leftover {
    /// The part number.
    pub number: String,
    /// How much: pieces, a length or an area, in the unit of the part.
    pub amount: Holds,
    /// Where it is stored, and other remarks.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Leftover {
    pub(super) fn check(&self) -> Result<(), Said> {
        if self.number.trim().is_empty() {
            return Err(words::order::NUMBER_A_LEFTOVER_NEEDS_THE.into());
        }
        if (0.0..1e6).contains(&self.amount.amount()) {
            Ok(())
        } else {
            Err(words::order::amount_must_be_0_or(&self.amount.amount()))
        }
    }
}

/// Reads a warehouse list: CSV with a header row that has the columns `number` and `amount`, and optionally `note`. An
/// amount is written as in a kit: `25`, `100 ft`, `200 sq ft`.
///
/// # Errors
/// The line and what was expected there.
pub fn stock_from_csv(text: &str) -> Result<Vec<Leftover>, Said> {
    let table = crate::table::Table::from_csv(text, &[&["number"], &["amount"]])?;
    let (number, amount) = (table.column(&["number"])?, table.column(&["amount"])?);
    let note = table.column(&["note"]).ok();
    let mut stock = Vec::new();
    for row in table.rows() {
        let amount =
            Holds::parse_cell(row.cell(amount)).map_err(|wrong| wrong.after(format!("{}: ", row.place())))?;
        let leftover = Leftover {
            number: row.cell(number).to_owned(),
            amount,
            note: note.map_or_else(String::new, |note| row.cell(note).to_owned()),
        };
        leftover.check().map_err(|wrong| wrong.after(format!("{}: ", row.place())))?;
        stock.push(leftover);
    }
    Ok(stock)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Length, Units};

    #[test]
    fn a_warehouse_list_reads_by_its_header() {
        let text = "Note,Number,Amount\n\"rack 2, left\",FH-121,40\n,FH-162,\"100 ft\"\n";
        let stock = stock_from_csv(text).unwrap();
        assert_eq!(stock.len(), 2);
        assert_eq!(stock[0].amount, Holds::Pieces(40.0));
        assert_eq!(stock[0].note, "rack 2, left");
        assert_eq!(stock[1].amount, Holds::Length(Length::parse("100 ft", Units::FeetInches).unwrap()));
    }

    #[test]
    fn unreadable_stock_lines_are_reported() {
        assert!(stock_from_csv("number,amount\nFH-1,many\n").unwrap_err().now().starts_with("line 2"));
        assert!(stock_from_csv("number\nFH-1\n").unwrap_err().now().contains("\"amount\""));
    }
}
