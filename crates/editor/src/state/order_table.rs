//! Display settings of the order's table: columns, widths, and whether the total is itemised. Kept between sessions.

use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// A column of the order's table, from left to right.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub(crate) enum OrderColumn {
    /// Whether it is ordered.
    Ordered,
    Number,
    What,
    Need,
    Waste,
    Packages,
    /// Changes since the order was last viewed.
    Change,
    Package,
    Price,
    Cost,
}

impl OrderColumn {
    pub(crate) const ALL: [Self; 10] = [
        Self::Ordered,
        Self::Number,
        Self::What,
        Self::Need,
        Self::Waste,
        Self::Packages,
        Self::Change,
        Self::Package,
        Self::Price,
        Self::Cost,
    ];

    /// Required columns.
    pub(crate) fn always(self) -> bool {
        matches!(self, Self::Ordered | Self::Number | Self::What)
    }

    /// Its default width, points.
    fn usual(self) -> f32 {
        match self {
            Self::Ordered => 18.0,
            Self::Number => 64.0,
            Self::What => 150.0,
            Self::Need => 76.0,
            Self::Waste => 54.0,
            Self::Packages => 48.0,
            Self::Change => 46.0,
            Self::Package => 78.0,
            Self::Price => 66.0,
            Self::Cost => 78.0,
        }
    }
}

/// The chosen columns, their widths, and what is expanded.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct OrderTable {
    pub(crate) hidden: BTreeSet<OrderColumn>,
    widths: BTreeMap<OrderColumn, f32>,
    /// Whether the total is itemised.
    pub(crate) totals: bool,
}

impl Default for OrderTable {
    fn default() -> Self {
        Self { hidden: BTreeSet::from([OrderColumn::Waste]), widths: BTreeMap::new(), totals: false }
    }
}

/// Gap between two columns, points.
pub(crate) const BETWEEN: f32 = 6.0;
/// Least width of the part names, points.
const NAMES: f32 = 110.0;

impl OrderTable {
    pub(crate) fn width(&self, column: OrderColumn) -> f32 {
        self.widths.get(&column).copied().unwrap_or_else(|| column.usual())
    }

    /// Stores the width of a column; returns whether it changed.
    pub(crate) fn keep(&mut self, column: OrderColumn, width: f32) -> bool {
        let other = (self.width(column) - width).abs() > 0.5;
        if other {
            self.widths.insert(column, width);
        }
        other
    }

    /// The chosen columns that fit into a width, in points. In a narrow one, those that duplicate information are
    /// dropped first; the change column is shown only if something changed.
    pub(crate) fn fitting(&self, room: f32, changed: bool) -> Vec<OrderColumn> {
        let mut shown: Vec<OrderColumn> = OrderColumn::ALL
            .into_iter()
            .filter(|column| column.always() || !self.hidden.contains(column))
            .filter(|column| *column != OrderColumn::Change || changed)
            .collect();
        let needs = |shown: &[OrderColumn]| -> f32 {
            let wide = |column: &OrderColumn| match column {
                OrderColumn::What => NAMES,
                column => self.width(*column),
            };
            shown.iter().map(wide).sum::<f32>() + BETWEEN * shown.len() as f32
        };
        for first in [OrderColumn::Package, OrderColumn::Need, OrderColumn::Waste, OrderColumn::Price] {
            if needs(&shown) <= room {
                break;
            }
            shown.retain(|column| *column != first);
        }
        shown
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use OrderColumn::{Change, Cost, Need, Number, Package, Packages, Price, Waste, What};

    #[test]
    fn a_narrow_table_drops_duplicate_columns_but_never_the_cost() {
        let table = OrderTable::default();
        assert!(!table.fitting(900.0, true).contains(&Waste), "nobody chose it");
        assert!(table.fitting(900.0, false).contains(&Package));
        let narrow = table.fitting(500.0, true);
        assert!(!narrow.contains(&Package) && !narrow.contains(&Need), "{narrow:?}");
        for room in [0.0, 200.0, 500.0, 560.0, 900.0] {
            let shown = table.fitting(room, true);
            for column in [Number, What, Packages, Cost, Change] {
                assert!(shown.contains(&column), "{room}: {shown:?}");
            }
            assert!(!table.fitting(room, false).contains(&Change));
        }
    }

    #[test]
    fn a_column_width_is_stored_and_reported_once() {
        let mut table = OrderTable::default();
        assert!(table.keep(Price, 90.0) && !table.keep(Price, 90.2));
        assert_eq!(table.width(Price), 90.0);
        assert_eq!(table.width(Cost), OrderColumn::Cost.usual());
    }
}
