//! The rows of the table: which lines are listed, under which headings, in which order.

use super::OrderWindow;
use super::by_hand::ByHand;
use super::changes::Changes;
use chalkcourse_job::{Group, Stage};
use chalkcourse_takeoff::{Line, LineState, cost_of};
use rust_decimal::Decimal;

/// Which lines are listed, and under which headings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Shown {
    #[default]
    ByGroup,
    ByStage,
    /// Without headings.
    Plain,
    /// Lines changed manually.
    Changed,
    /// Lines without a price.
    Unpriced,
}

/// How lines are sorted, within their headings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum SortBy {
    /// In the order of the kit.
    #[default]
    Listed,
    Number,
    What,
    Packages,
    Change,
    Price,
    Cost,
}

/// A row of the table.
pub(super) enum Row<'a> {
    Heading(&'static str, Decimal),
    Line(&'a Line),
    /// A line of the earlier order.
    Gone(&'a Line),
}

/// The listed lines in order, under their headings.
pub(super) fn rows<'a>(
    all: &[&'a Line],
    own: &OrderWindow,
    changes: &Changes<'a>,
    by_hand: &ByHand,
) -> Vec<Row<'a>> {
    let wanted = own.find.trim().to_lowercase();
    let found = |line: &&Line| {
        wanted.is_empty()
            || line.number.to_lowercase().contains(&wanted)
            || line.name.now().to_lowercase().contains(&wanted)
    };
    let kept = |line: &&Line| match own.shown {
        Shown::ByGroup | Shown::ByStage | Shown::Plain => true,
        Shown::Changed => by_hand.changed(line),
        Shown::Unpriced => line.price.is_none(),
    };
    let mut lines: Vec<&Line> = all.iter().copied().filter(found).filter(kept).collect();
    match own.sorted {
        SortBy::Listed => {}
        SortBy::Number => lines.sort_by(|a, b| a.number.cmp(&b.number)),
        SortBy::What => lines.sort_by_key(|line| line.name.now().to_lowercase()),
        SortBy::Packages => lines.sort_by_key(|line| line.packages),
        SortBy::Change => lines.sort_by_key(|line| changes.of(line).packages),
        SortBy::Price => lines.sort_by_key(|line| line.price),
        SortBy::Cost => lines.sort_by_key(|line| line.cost),
    }
    if own.down {
        lines.reverse();
    }
    let under = |heading: &'static str, of: &dyn Fn(&Line) -> bool| -> Vec<Row<'a>> {
        let lines: Vec<&Line> = lines.iter().copied().filter(|line| of(line)).collect();
        if lines.is_empty() {
            return Vec::new();
        }
        let sum = cost_of(lines.iter().copied().filter(|line| !is_off(line)));
        std::iter::once(Row::Heading(heading, sum)).chain(lines.into_iter().map(Row::Line)).collect()
    };
    let mut rows: Vec<Row<'a>> = match own.shown {
        Shown::ByGroup => {
            Group::ALL.into_iter().flat_map(|g| under(g.name().now(), &|line| line.group == g)).collect()
        }
        Shown::ByStage => {
            Stage::ALL.into_iter().flat_map(|s| under(s.name().now(), &|line| line.stage == s)).collect()
        }
        Shown::Plain | Shown::Changed | Shown::Unpriced => lines.iter().copied().map(Row::Line).collect(),
    };
    if !matches!(own.shown, Shown::Changed | Shown::Unpriced) {
        rows.extend(changes.gone.iter().copied().filter(|line| found(line)).map(Row::Gone));
    }
    rows
}

pub(super) fn is_off(line: &Line) -> bool {
    matches!(line.state, LineState::Off { .. })
}
