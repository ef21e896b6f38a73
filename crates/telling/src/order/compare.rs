//! Comparisons of orders and of suppliers, as text.

use super::money::{show_money, show_more};
use chalkcourse_takeoff::{Change, Comparison, PriceComparison};
use chalkcourse_words as words;
use rust_decimal::Decimal;
use std::fmt::Write;

/// The comparison as text: what is added, what is dropped, what else changed, and the cost.
pub fn comparison(orders: &Comparison) -> String {
    let plain = super::text::plain;
    let mut out = String::new();
    let kind = |change: &Change| change.packages[1].cmp(&change.packages[0]);
    for (heading, wanted) in [
        (words::takeoff::MORE.now(), std::cmp::Ordering::Greater),
        (words::takeoff::LESS.now(), std::cmp::Ordering::Less),
        (words::takeoff::AS_MANY_PACKAGES_ANOTHER_NEED.now(), std::cmp::Ordering::Equal),
    ] {
        let changes: Vec<&Change> = orders.changes.iter().filter(|change| kind(change) == wanted).collect();
        if changes.is_empty() {
            continue;
        }
        // Writing to a string can't fail.
        let _ = writeln!(out, "{heading}");
        for change in changes {
            let more = change.more.map_or_else(
                || words::common::NO_PRICE.now().to_owned(),
                |more| format!("{} {}", show_more(more), plain(&orders.currency)),
            );
            let _ = writeln!(
                out,
                "{}",
                words::takeoff::need_order(
                    &plain(&change.number),
                    &plain(&change.name.now()),
                    &change.need_words[0],
                    &change.need_words[1],
                    &change.packages[0],
                    &plain(&change.package.counted(change.packages[1]).now()),
                    &more
                )
            );
        }
    }
    if orders.changes.is_empty() {
        let _ = writeln!(out, "{}", words::common::THE_TWO_ORDERS_ARE_ALIKE);
    }
    let currency = plain(&orders.currency);
    match &orders.money_apart {
        Some(why) => {
            let _ = writeln!(out, "{}", words::takeoff::totals_cant_be_compared(&plain(&why.now())));
        }
        None => {
            let [before, after] = [orders.before, orders.after].map(show_money);
            let _ = writeln!(
                out,
                "{}",
                words::takeoff::total_before_and_after(&before, &after, &currency, &show_more(orders.more))
            );
        }
    }
    out
}

/// One order at the prices of several suppliers, as text.
pub fn offers(prices: &PriceComparison) -> String {
    let plain = super::text::plain;
    let mut out = String::new();
    // Writing to a string can't fail.
    for offer in &prices.offers {
        let known = |amount: Option<Decimal>| {
            amount.map_or_else(|| words::common::NOT_KNOWN.now().to_owned(), show_money)
        };
        let _ = writeln!(out, "{}, {}", plain(&offer.list), plain(&offer.date));
        let _ = writeln!(
            out,
            "{}",
            words::takeoff::lines_sales_tax_delivery_total(
                &show_money(offer.lines),
                &known(offer.tax),
                &known(offer.delivery),
                &show_money(offer.total),
                &plain(&offer.currency),
                &show_money(offer.in_common)
            )
        );
        if !offer.missing.is_empty() {
            let missing: Vec<String> = offer.missing.iter().map(|number| plain(number)).collect();
            let _ = writeln!(out, "{}", words::takeoff::no_price_and_not_in(&missing.join(", ")));
        }
    }
    if let Some(why) = &prices.money_apart {
        let _ = writeln!(out, "{}", words::takeoff::amounts_cant_be_compared(&plain(&why.now())));
        return out;
    }
    let _ = writeln!(out);
    for row in &prices.rows {
        let costs = row.costs.iter().enumerate().map(|(at, cost)| match cost {
            Some(cost) if row.cheapest == Some(at) => format!("{}*", show_money(*cost)),
            Some(cost) => show_money(*cost),
            None => words::common::NO_PRICE.now().to_owned(),
        });
        let costs: Vec<String> = costs.collect();
        let _ = writeln!(
            out,
            "  {}  {}  {}: {}",
            plain(&row.number),
            plain(&row.name.now()),
            words::things::package(row.packages),
            costs.join("  ")
        );
    }
    let _ = writeln!(out, "{}", words::takeoff::the_cheapest_each_line_where(&show_money(prices.cheapest)));
    out
}
