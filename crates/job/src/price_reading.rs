//! The result of reading a price list: what was taken, what is unknown, what was ignored.

use crate::{Kit, PriceList};
use chalkcourse_words::{Said, Say, later as words};

/// A price list that was read, and what in its file was not taken literally.
#[derive(Clone, Debug, PartialEq)]
pub struct PriceReading {
    /// The list.
    pub list: PriceList,
    /// The summary.
    pub summary: PriceSummary,
}

/// What happened to the lines of a price list.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PriceSummary {
    /// Prices of parts of the kit.
    pub taken: usize,
    /// Alternates of parts.
    pub alternates: usize,
    /// Numbers that the kit does not have: they stay in the list but are on no order.
    pub unknown: Vec<String>,
    /// Numbers as the file spells them, and as the kit does.
    pub respelled: Vec<(String, String)>,
    /// Parts listed twice with the same price.
    pub twice: Vec<String>,
    /// Lines with a part number and no price.
    pub without_price: Vec<String>,
    /// Parts of the kit without a price in the list.
    pub missing: Vec<String>,
    /// Title rows, above the header or among the lines.
    pub titles: usize,
    /// Sheets of the workbook that were not read.
    pub other_sheets: Vec<String>,
}

impl PriceReading {
    /// Summarises a list for a kit.
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
    /// How many lines, titles and sheets were ignored.
    pub fn left_alone(&self) -> usize {
        self.twice.len() + self.without_price.len() + self.titles + self.other_sheets.len()
    }

    /// Whether the whole file was taken literally and has a price for each part of the kit.
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

    /// A line of counts, followed by a line for each remark.
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
