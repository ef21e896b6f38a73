use super::MOST_PACKAGES;
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// What was counted on delivery.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Delivery {
    /// The date, as typed.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub date: String,
    /// Who counted.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub by: String,
    /// Note about the whole delivery.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// By part number. A part not listed was not counted yet, which is different from zero received.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub counts: BTreeMap<String, Received>,
}

/// The count of one part.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Received {
    /// Packages received, including damaged ones.
    pub packages: u64,
    /// Packages among those that can't be used.
    #[serde(skip_serializing_if = "is_zero")]
    pub damaged: u64,
    /// Note for the supplier.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_zero(count: &u64) -> bool {
    *count == 0
}

impl Delivery {
    /// Whether nothing was counted or noted.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    pub(super) fn check(&self) -> Result<(), Said> {
        for (number, count) in &self.counts {
            if count.packages > MOST_PACKAGES {
                return Err(words::order::counts_packages_must_be_at(
                    &number,
                    &MOST_PACKAGES,
                    &count.packages,
                ));
            }
            if count.damaged > count.packages {
                return Err(words::order::counts_damaged_cant_be_damaged(
                    &number,
                    &count.damaged,
                    &count.packages,
                ));
            }
        }
        Ok(())
    }
}

/// Reads a pallet list with counts filled in: CSV with the columns `number` and `counted`, and optionally `damaged` and
/// `note`. A row without a count was not counted and is left out.
///
/// # Errors
/// The line and what was expected there.
pub fn counts_from_csv(text: &str) -> Result<BTreeMap<String, Received>, Said> {
    let table = crate::table::Table::from_csv(text, &[&["number"], &["counted"]])?;
    let (number, counted) = (table.column(&["number"])?, table.column(&["counted"])?);
    let (damaged, note) = (table.column(&["damaged"]).ok(), table.column(&["note"]).ok());
    let mut counts = BTreeMap::new();
    for row in table.rows().iter().filter(|row| !row.cell(counted).is_empty()) {
        let count = |column: usize| match row.cell(column) {
            "" => Ok(0),
            text => text
                .parse::<u64>()
                .map_err(|_| words::order::is_no_count_of_packages(&row.place(), &format_args!("{text:?}"))),
        };
        let received = Received {
            packages: count(counted)?,
            damaged: damaged.map_or(Ok(0), count)?,
            note: note.map_or_else(String::new, |note| row.cell(note).to_owned()),
        };
        if counts.insert(row.cell(number).to_owned(), received).is_some() {
            return Err(words::order::is_counted_twice(
                &row.place(),
                &format_args!("{:?}", row.cell(number)),
            ));
        }
    }
    let delivery = Delivery { counts, ..Delivery::default() };
    delivery.check()?;
    Ok(delivery.counts)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_read_from_a_pallet_list_that_was_filled_in() {
        let text = "\"Number\",\"Name\",\"Ordered\",\"Counted\",\"Damaged\",\"Note\"\n\
                    FH-101,Module,12,12,1,corner split\nFH-102,Foot,3,,,\nFH-103,Screw,1,0,,\n";
        let counts = counts_from_csv(text).unwrap();
        assert_eq!(counts.len(), 2, "what was not counted is not none");
        assert_eq!(counts["FH-101"], Received { packages: 12, damaged: 1, note: "corner split".into() });
        assert_eq!(counts["FH-103"].packages, 0);
        assert!(counts_from_csv("number,counted\nA,x\n").unwrap_err().now().starts_with("line 2"));
        assert!(counts_from_csv("number,counted\nA,1\nA,2\n").unwrap_err().now().contains("twice"));
        assert!(counts_from_csv("number,counted,damaged\nA,1,2\n").unwrap_err().now().contains("damaged"));
    }
}
