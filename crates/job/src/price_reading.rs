//! What became of a price list that was read: so many taken, so many unknown, so many left alone.

use crate::{Kit, PriceList};
use chalkcourse_words::{Said, Say, later as words};

/// A price list as it was read, and what of its file was not taken as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct PriceReading {
    /// The list.
    pub list: PriceList,
    /// What became of the file.
    pub summary: PriceSummary,
}

/// What became of the lines of a price list.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PriceSummary {
    /// Prices of parts of the kit.
    pub taken: usize,
    /// Alternates of parts.
    pub alternates: usize,
    /// Numbers that the kit does not have: they stay in the list and are on no order.
    pub unknown: Vec<String>,
    /// Numbers as the file writes them, and as the kit does.
    pub respelled: Vec<(String, String)>,
    /// Parts that stand twice with the same price.
    pub twice: Vec<String>,
    /// Lines with a part number and no price.
    pub without_price: Vec<String>,
    /// Parts of the kit that have no price in the list.
    pub missing: Vec<String>,
    /// Rows of titles, above the header or among the lines.
    pub titles: usize,
    /// Sheets of the workbook that were not read.
    pub other_sheets: Vec<String>,
}

impl PriceReading {
    /// A list by itself against a kit.
    pub(crate) fn of(list: PriceList, kit: &Kit) -> Self {
        let (known, unknown): (Vec<&String>, Vec<&String>) =
            list.prices.keys().partition(|number| kit.part(number).is_some());
        let missing = kit.parts.iter().filter(|part| !list.prices.contains_key(&part.number));
        let summary = PriceSummary {
            taken: known.len(),
            alternates: list.prices.values().map(|price| price.alternates.len()).sum(),
            unknown: unknown.into_iter().cloned().collect(),
            missing: missing.map(|part| part.number.clone()).collect(),
            ..PriceSummary::default()
        };
        Self { list, summary }
    }
}

impl PriceSummary {
    /// How many lines, titles and sheets were left alone.
    pub fn left_alone(&self) -> usize {
        self.twice.len() + self.without_price.len() + self.titles + self.other_sheets.len()
    }

    /// Whether all of the file was taken as it stands, and the kit has a price for each part.
    pub fn is_plain(&self) -> bool {
        let Self {
            taken: _,
            alternates: _,
            unknown,
            respelled,
            twice,
            without_price,
            missing,
            titles,
            other_sheets,
        } = self;
        [unknown, twice, without_price, missing, other_sheets].iter().all(|list| list.is_empty())
            && respelled.is_empty()
            && *titles == 0
    }

    /// One line of counts, and a line each of what is to be known.
    pub fn said(&self) -> Said {
        let mut said = vec![words::order::unknown_to_the_kit_left(
            &words::order::prices_taken(self.taken),
            &self.unknown.len(),
            &self.left_alone(),
        )];
        let mut line = |what: Say, things: Vec<Said>| {
            if !things.is_empty() {
                said.extend([Said::own("\n"), what.into(), Said::own(": "), Said::listed(things, ", ")]);
            }
        };
        let own = |things: &[String]| things.iter().map(Said::own).collect::<Vec<_>>();
        line(words::order::NOT_IN_THE_KIT, own(&self.unknown));
        let respelled = self.respelled.iter().map(|(typed, part)| words::order::as_2(&typed, &part));
        line(words::order::READ_AS_THE_KIT_SPELLS, respelled.collect());
        line(words::order::TWICE_WITH_THE_SAME_PRICE, own(&self.twice));
        line(words::order::WITHOUT_A_PRICE_2, own(&self.without_price));
        line(words::order::SHEETS_NOT_READ, own(&self.other_sheets));
        if self.titles > 0 {
            line(words::order::ROWS_OF_TITLES, vec![Said::own(self.titles.to_string())]);
        }
        line(words::order::PARTS_OF_THE_KIT_WITHOUT, own(&self.missing));
        Said::joined(said)
    }
}
