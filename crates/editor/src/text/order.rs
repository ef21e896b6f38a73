//! Words of the order's window.

use chalkcourse_job::PriceList;
use chalkcourse_takeoff::{Comparison, Offer, PriceComparison, Takeoff};
use std::fmt::Display;

pub(crate) const ORDER: &str = "Order";
pub(crate) const OPEN_ORDER: &str = "Work on the order…";
pub(crate) const ORDER_HELP: &str =
    "All lines of the order: change them, count what arrives, hold it against another";
pub(crate) const ORDER_LINES: &str = "Lines";
pub(crate) const ORDER_MONEY: &str = "Roof, money, stock";
pub(crate) const ORDER_DELIVERY: &str = "Delivery";
pub(crate) const ORDER_COMPARE: &str = "Compare";
pub(crate) const LOAD_STOCK: &str = "Load a warehouse list…";
pub(crate) const COMPARE_JOB: &str = "With another job…";
pub(crate) const ADD_SUPPLIER: &str = "Add a price list…";
pub(crate) const LOAD_COUNTS: &str = "Load counts…";

pub(crate) fn order_total(takeoff: &Takeoff) -> String {
    format!("{} {:.2}", takeoff.currency, takeoff.totals.total)
}

// Lines
pub(crate) const COLUMN_NUMBER: &str = "Number";
pub(crate) const COLUMN_WHAT: &str = "What";
pub(crate) const COLUMN_NEED: &str = "Need";
pub(crate) const COLUMN_ORDER: &str = "Order";
pub(crate) const COLUMN_PACKAGE: &str = "Package";
pub(crate) const COLUMN_PRICE: &str = "Price";
pub(crate) const COLUMN_COST: &str = "Cost";
pub(crate) const SORT_HELP: &str = "Sort by it; once more from the greatest down; once more as listed";
pub(crate) const FIND: &str = "Find";
pub(crate) const FIND_LINE: &str = "number or words";
pub(crate) const NO_SUCH_LINE: &str = "No line is like that.";
pub(crate) const SHOWN_LINES: &str = "Which lines are listed";
pub(crate) const SHOWN_BY_GROUP: &str = "By group";
pub(crate) const SHOWN_BY_STAGE: &str = "By stage of work";
pub(crate) const SHOWN_PLAIN: &str = "Without headings";
pub(crate) const SHOWN_CHANGED: &str = "Changed by hand";
pub(crate) const SHOWN_UNPRICED: &str = "Without a price";
pub(crate) const COPY_LINES: &str = "Copy";
pub(crate) const COPY_LINES_HELP: &str = "Put the lines that are listed on the clipboard, for a spreadsheet";
pub(crate) const ADD_LINE: &str = "Add a line";
pub(crate) const ADD_LINE_HELP: &str = "Something that the kit does not count";
pub(crate) const ON_ORDER_HELP: &str =
    "Order this line. A line that is off stays here, and every output tells it.";
pub(crate) const PACKAGES_HELP: &str =
    "Packages to order. Type another number to put it in place of the count; empty is the count again.";
pub(crate) const PRICE_HELP: &str =
    "For one package, in this job's own copy of the price list. Empty: no price, and every output tells so.";
pub(crate) const BAD_PACKAGES: &str = "A whole number";
pub(crate) const BAD_PRICE: &str = "Such as 184.50";
pub(crate) const CHANGED_PRICES: &str = ", changed in this job";
pub(crate) const NEW_LINE: &str = "New line";
pub(crate) const PIECE: &str = "piece";
pub(crate) const REASON: &str = "Reason";
pub(crate) const TAKE_INSTEAD: &str = "Take instead";
pub(crate) const LINE_WHAT: &str = "What it is";
pub(crate) const LINE_PACKAGE: &str = "A package is a";
pub(crate) const LINE_GROUP: &str = "Group";
pub(crate) const LINE_STAGE: &str = "Needed for";
pub(crate) const REMOVE_LINE: &str = "Take the line away";

pub(crate) fn lines_copied(count: usize) -> String {
    format!("{count} lines are on the clipboard.")
}
pub(crate) fn order_this(number: &str) -> String {
    format!("Order {number}")
}
pub(crate) fn packages_of(number: &str) -> String {
    format!("Packages of {number}")
}
pub(crate) fn price_of(number: &str) -> String {
    format!("Price of {number}")
}
pub(crate) fn switch_line(number: &str, was_off: bool) -> String {
    format!("{} {number}", if was_off { "Order" } else { "Leave out" })
}
pub(crate) fn give_reason(number: &str) -> String {
    format!("Reason for {number}")
}
pub(crate) fn as_counted(packages: u64) -> String {
    format!("As counted: {packages}")
}
pub(crate) fn take_alternate(number: &str) -> String {
    format!("Another part for {number}")
}
pub(crate) fn no_alternate(price: impl Display) -> String {
    format!("the kit's own, {price:.2}")
}
pub(crate) fn change_line(number: &str) -> String {
    format!("Line {number}")
}
pub(crate) fn remove_line(number: &str) -> String {
    format!("Take line {number} away")
}

// Roof, money, stock
pub(crate) const ROOF_WORK: &str = "The roof";
pub(crate) const COVERED_ANEW: &str = "Covered anew";
pub(crate) const SCOPE_WHOLE: &str = "the whole roof";
pub(crate) const SCOPE_ARRAY_FACES: &str = "faces with modules";
pub(crate) const SCOPE_ARRAY_ONLY: &str = "nothing but the array";
pub(crate) const SCOPE_FACES: &str = "some faces, as the job's file says";
pub(crate) const LAYERS: &str = "Old layers to strip";
pub(crate) const BAD_LAYERS: &str = "0 to 5 layers";
pub(crate) const WASTE_BY: &str = "Waste";
pub(crate) const WASTE_BY_RULE: &str = "as handbooks say";
pub(crate) const WASTE_BY_GEOMETRY: &str = "by the cuts of these faces";
pub(crate) const PRICE_LIST: &str = "Price list";
pub(crate) const TAX_PERCENT: &str = "Sales tax, %";
pub(crate) const DELIVERY: &str = "Delivery";
pub(crate) const UNKNOWN_HELP: &str =
    "Empty: not known, which every output tells. It is never taken for zero.";
pub(crate) const ON_TOP: &str = "On top of the cost";
pub(crate) const OVERHEAD: &str = "Overhead, % of the cost";
pub(crate) const PROFIT: &str = "Profit";
pub(crate) const PROFIT_NONE: &str = "none";
pub(crate) const PROFIT_MARKUP: &str = "markup: % of the cost";
pub(crate) const PROFIT_MARGIN: &str = "margin: % of the price";
pub(crate) const PROFIT_PERCENT: &str = "Profit, %";
pub(crate) const STOCK: &str = "Stock in hand";
pub(crate) const STOCK_HELP: &str = "A warehouse list: CSV with the columns number, amount, and maybe note";
pub(crate) const STOCK_EMPTY: &str = "None. What lies in the warehouse is used before anything is bought.";
pub(crate) const ADD_STOCK: &str = "Add what is left";
pub(crate) const STOCK_AMOUNT_HELP: &str = "Such as 40, 100 ft, 200 sq ft";
pub(crate) const STOCK_NOTE: &str = "Where it lies";
pub(crate) const REMOVE: &str = "Remove";

pub(crate) fn list_words(list: &PriceList) -> String {
    format!("{}, {}; {} prices in {}", list.name, list.date, list.prices.len(), list.currency)
}
pub(crate) fn no_such_part(number: &str) -> String {
    format!("The kit has no part {}.", number.trim())
}
pub(crate) fn stock_part(nth: usize) -> String {
    format!("Part of leftover {nth}")
}
pub(crate) fn stock_amount(nth: usize) -> String {
    format!("Amount of leftover {nth}")
}
pub(crate) fn stock_note(nth: usize) -> String {
    format!("Note of leftover {nth}")
}

// Delivery
pub(crate) const NOTHING_ON_ORDER: &str = "Nothing is on order.";
pub(crate) const REST_CAME: &str = "The rest came whole";
pub(crate) const REST_CAME_HELP: &str =
    "All lines that nobody has counted yet are there, and none is damaged";
pub(crate) const LOAD_COUNTS_HELP: &str = "A pallet list with the column counted filled in, as CSV";
pub(crate) const PRINT_LIST: &str = "Print the list…";
pub(crate) const PRINT_THE_CLAIM: &str = "Print the claim…";
pub(crate) const COPY_CLAIM: &str = "Copy the claim";
pub(crate) const CLAIM_COPIED: &str = "The claim is on the clipboard.";
pub(crate) const CHANGE_DELIVERY: &str = "About the delivery";
pub(crate) const DELIVERY_DATE: &str = "Date";
pub(crate) const DELIVERY_BY: &str = "Counted by";
pub(crate) const DELIVERY_NOTE: &str = "Note";
pub(crate) const COLUMN_ORDERED: &str = "Ordered";
pub(crate) const COLUMN_CAME: &str = "Came";
pub(crate) const COLUMN_DAMAGED: &str = "Damaged";
pub(crate) const COLUMN_NOTE: &str = "Note";
pub(crate) const COLUMN_STATE: &str = "State";
pub(crate) const ALL_CAME_HELP: &str = "All of it is there, and none is damaged";
pub(crate) const CAN_START: &str = "What can start";
pub(crate) const CAN: &str = "can start";

pub(crate) fn counted_so_far(counted: usize, of: usize) -> String {
    format!("{counted} of {of} lines counted")
}
pub(crate) fn count_part(number: &str) -> String {
    format!("Count {number}")
}
pub(crate) fn counts_taken(lines: usize) -> String {
    format!("{lines} lines are counted.")
}
pub(crate) fn all_came(number: &str) -> String {
    format!("All of {number} came")
}
pub(crate) fn came_of(number: &str) -> String {
    format!("Came of {number}")
}
pub(crate) fn damaged_of(number: &str) -> String {
    format!("Damaged of {number}")
}
pub(crate) fn note_of(number: &str) -> String {
    format!("Note of {number}")
}
pub(crate) fn too_many_damaged(came: u64) -> String {
    format!("At most {came}")
}
pub(crate) fn waits_for(parts: &[String]) -> String {
    match parts {
        [] => "waits".to_owned(),
        [one] => format!("waits for {one}"),
        [first, rest @ ..] => format!("waits for {first}, and {} more", rest.len()),
    }
}

// Compare
pub(crate) const COMPARE_ORDERS: &str = "Another order";
pub(crate) const COMPARE_ORDERS_WHY: &str = "Keep the order as it is now, go on with the job, and see here what is more, what is less, and what it costs. Or hold it against another job.";
pub(crate) const KEEP_THIS: &str = "Keep this order to compare";
pub(crate) const KEEP_THIS_HELP: &str = "What changes from here on shows below; it is not saved with the job";
pub(crate) const ORDERS_ALIKE: &str = "The two orders are alike, line by line.";
pub(crate) const COMPARE_SUPPLIERS: &str = "Other suppliers";
pub(crate) const COMPARE_SUPPLIERS_WHY: &str =
    "Add the price list of another supplier to see this order at its prices, line by line.";
pub(crate) const FORGET_SUPPLIERS: &str = "Take them away";

pub(crate) fn as_it_was(job: &str) -> String {
    format!("{job}, as it was")
}
pub(crate) fn compared_with(name: &str) -> String {
    format!("From {name} to the job as it is:")
}
pub(crate) fn total_moved(found: &Comparison) -> String {
    format!("{:.2} → {:.2} {}, {:+.2}", found.before, found.after, found.currency, found.more)
}
pub(crate) fn from_to(from: &str, to: &str) -> String {
    if from == to { to.to_owned() } else { format!("{from} → {to}") }
}
pub(crate) fn offer_words(offer: &Offer) -> String {
    format!("{}, {}: {:.2} {}", offer.list, offer.date, offer.total, offer.currency)
}
pub(crate) fn offer_sums(offer: &Offer) -> String {
    format!(
        "lines {:.2}, sales tax {}, delivery {}; lines that all have {:.2}",
        offer.lines,
        super::money(offer.tax),
        super::money(offer.delivery),
        offer.in_common
    )
}
pub(crate) fn cheapest_words(found: &PriceComparison) -> String {
    format!("Each line where it is cheapest (•): {:.2}", found.cheapest)
}
pub(crate) fn cheapest(cost: impl Display) -> String {
    format!("• {cost:.2}")
}
