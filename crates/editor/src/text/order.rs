//! Words of the order's pane.

use chalkcourse_job::PriceList;
use chalkcourse_takeoff::{Comparison, Offer, PriceComparison, Takeoff};
use chalkcourse_telling::order::{show_money, show_sum, show_sum_more};
use chalkcourse_words::{self as words, Said, Say, later};
use rust_decimal::Decimal;

pub(crate) const ORDER: Say = words::common::ORDER;
pub(crate) const OPEN_ORDER: Say = words::order::WORK_ON_THE_ORDER;
pub(crate) const ORDER_HELP: Say = words::order::ALL_LINES_OF_THE_ORDER;
pub(crate) const ORDER_LINES: Say = words::order::LINES;
pub(crate) const ORDER_MONEY: Say = words::order::ROOF_MONEY_STOCK;
pub(crate) const ORDER_DELIVERY: Say = words::common::DELIVERY;
pub(crate) const ORDER_COMPARE: Say = words::common::COMPARE;
pub(crate) const LOAD_STOCK: Say = words::order::LOAD_A_WAREHOUSE_LIST;
pub(crate) const COMPARE_JOB: Say = words::order::WITH_ANOTHER_JOB;
pub(crate) const ADD_SUPPLIER: Say = words::order::ADD_A_PRICE_LIST;
pub(crate) const LOAD_COUNTS: Say = words::order::LOAD_COUNTS;

pub(crate) const COLUMN_CHANGE: Say = words::order::CHANGE;
pub(crate) const ORDER_COLUMNS: Say = words::order::COLUMNS;
pub(crate) const ORDER_COLUMNS_HELP: Say = words::order::COLUMNS_HELP;
pub(crate) const SEEN: Say = words::order::SEEN;
pub(crate) const SEEN_HELP: Say = words::order::SEEN_HELP;
pub(crate) const PIN: Say = words::order::PIN;
pub(crate) const PIN_HELP: Say = words::order::PIN_HELP;
pub(crate) const TOTALS_SHOWN: Say = words::order::TOTALS_SHOWN;
pub(crate) const LINES_OF_ORDER: Say = words::order::LINES_OF_THE_ORDER;
pub(crate) const MATERIALS_AND_WORK: Say = words::order::MATERIALS_AND_WORK;
pub(crate) const TAKE_LIST: Say = words::order::TAKE_THIS_LIST;
pub(crate) const TAKE_LIST_HELP: Say = words::order::TAKE_THIS_LIST_HELP;

pub(crate) fn order_total(takeoff: &Takeoff) -> String {
    show_sum(takeoff.totals.total, &takeoff.currency)
}
/// An amount in the currency of a price list.
pub(crate) fn sum(amount: Decimal, list: &PriceList) -> String {
    show_sum(amount, &list.currency)
}
pub(crate) fn many_unpriced(count: usize) -> String {
    words::order::many_without_a_price(count)
}
/// "3 lines changed since you last looked"
pub(crate) fn many_changed(count: usize, pinned: bool) -> String {
    let since = if pinned { words::order::SINCE_PINNED } else { words::order::SINCE_LOOKED };
    format!("{} {}", words::order::many_changed(count), since.now())
}
pub(crate) fn packages_counted(counted: u64) -> String {
    words::order::packages_counted(&counted)
}
pub(crate) fn price_was(price: Option<Decimal>) -> String {
    words::order::price_was(&price.map_or_else(|| super::NO_PRICE.now().to_owned(), show_money))
}

// Lines
pub(crate) const COLUMN_NUMBER: Say = words::common::NUMBER;
pub(crate) const COLUMN_WHAT: Say = words::common::WHAT;
pub(crate) const COLUMN_NEED: Say = words::common::NEED;
pub(crate) const COLUMN_ORDER: Say = words::common::ORDER_2;
pub(crate) const COLUMN_PACKAGE: Say = words::common::PACKAGE;
pub(crate) const COLUMN_PRICE: Say = words::common::PRICE;
pub(crate) const COLUMN_COST: Say = words::common::COST;
pub(crate) const SORT_HELP: Say = words::order::SORT_BY_IT_ONCE_MORE;
pub(crate) const FIND: Say = words::common::FIND;
pub(crate) const FIND_LINE: Say = words::order::NUMBER_OR_WORDS;
pub(crate) const NO_SUCH_LINE: Say = words::order::NO_LINE_IS_LIKE_THAT;
pub(crate) const SHOWN_LINES: Say = words::order::WHICH_LINES_ARE_LISTED;
pub(crate) const SHOWN_BY_GROUP: Say = words::common::BY_GROUP;
pub(crate) const SHOWN_BY_STAGE: Say = words::common::BY_STAGE_OF_WORK;
pub(crate) const SHOWN_PLAIN: Say = words::order::WITHOUT_HEADINGS;
pub(crate) const SHOWN_CHANGED: Say = words::order::CHANGED_BY_HAND;
pub(crate) const SHOWN_UNPRICED: Say = words::order::WITHOUT_A_PRICE;
pub(crate) const COPY_LINES: Say = words::common::COPY;
pub(crate) const COPY_LINES_HELP: Say = words::order::PUT_THE_LINES_THAT_ARE;
pub(crate) const ADD_LINE: Say = words::order::ADD_A_LINE;
pub(crate) const ADD_LINE_HELP: Say = words::order::SOMETHING_THAT_THE_KIT_DOES;
pub(crate) const ON_ORDER_HELP: Say = words::order::ORDER_THIS_LINE_A_LINE;
pub(crate) const PACKAGES_HELP: Say = words::order::PACKAGES_TO_ORDER_TYPE_ANOTHER;
pub(crate) const PRICE_HELP: Say = words::order::FOR_ONE_PACKAGE_IN_THIS;
pub(crate) const BAD_PACKAGES: Say = words::order::A_WHOLE_NUMBER;
pub(crate) const BAD_PRICE: Say = words::order::SUCH_AS_184_50;
pub(crate) const CHANGED_PRICES: Say = words::order::CHANGED_IN_THIS_JOB;
pub(crate) const NEW_LINE: Say = words::order::NEW_LINE;
pub(crate) const PIECE: Say = words::order::PIECE;
pub(crate) const REASON: Say = words::order::REASON;
pub(crate) const TAKE_INSTEAD: Say = words::order::TAKE_INSTEAD;
pub(crate) const LINE_WHAT: Say = words::common::WHAT_IT_IS;
pub(crate) const LINE_PACKAGE: Say = words::order::A_PACKAGE_IS_A;
pub(crate) const LINE_GROUP: Say = words::common::GROUP;
pub(crate) const LINE_STAGE: Say = words::order::NEEDED_FOR;
pub(crate) const REMOVE_LINE: Say = words::order::TAKE_THE_LINE_AWAY;

pub(crate) fn lines_copied(count: usize) -> String {
    words::order::lines_are_on_the_clipboard(count)
}
pub(crate) fn order_this(number: &str) -> String {
    words::order::order(&number)
}
pub(crate) fn width_of_column(column: &str) -> String {
    words::order::width_of(&column)
}
pub(crate) fn packages_of(number: &str) -> Said {
    later::order::packages_of(&number)
}
pub(crate) fn price_of(number: &str) -> Said {
    later::order::price_of(&number)
}
pub(crate) fn switch_line(number: &str, was_off: bool) -> Said {
    let verb = if was_off { words::common::ORDER_2 } else { words::order::LEAVE_OUT };
    Said::listed([verb.into(), Said::own(number)], " ")
}
pub(crate) fn give_reason(number: &str) -> Said {
    later::order::reason_for(&number)
}
pub(crate) fn as_counted(packages: u64) -> String {
    words::order::as_counted(&packages)
}
pub(crate) fn waste_of(number: &str) -> Said {
    later::order::waste_of(&number)
}
pub(crate) fn own_gear_of(number: &str) -> Said {
    later::order::own(&number)
}
pub(crate) fn take_alternate(number: &str) -> Said {
    later::order::another_part_for(&number)
}
pub(crate) fn no_alternate(price: Decimal) -> String {
    words::order::the_kits_own(&show_money(price))
}
pub(crate) fn change_line(number: &str) -> Said {
    later::order::line(&number)
}
pub(crate) fn remove_line(number: &str) -> Said {
    later::order::take_line_away(&number)
}

// Roof, money, stock
pub(crate) const ROOF_WORK: Say = words::order::THE_ROOF;
pub(crate) const COVERED_ANEW: Say = words::order::COVERED_ANEW;
pub(crate) const SCOPE_WHOLE: Say = words::order::THE_WHOLE_ROOF;
pub(crate) const SCOPE_ARRAY_FACES: Say = words::order::FACES_WITH_MODULES;
pub(crate) const SCOPE_ARRAY_ONLY: Say = words::order::NOTHING_BUT_THE_ARRAY;
pub(crate) const SCOPE_FACES: Say = words::order::SOME_FACES_AS_THE_JOBS;
pub(crate) const LAYERS: Say = words::order::OLD_LAYERS_TO_STRIP;
pub(crate) const BAD_LAYERS: Say = words::order::TO_5_LAYERS;
pub(crate) const WASTE_AS: Say = words::order::WASTE_AS_FOR;
pub(crate) const WASTE_AS_DRAWN: Say = words::order::THE_ROOF_AS_DRAWN;
pub(crate) const OWN_WASTE: Say = words::order::WASTE;
pub(crate) const OWN_WASTE_WHY: Say = words::order::BY_WHOSE_WORD;
pub(crate) const OWN_WASTE_HELP: Say = words::order::THE_OFFICES_OWN_SHARE_IN;
pub(crate) const BAD_WASTE: Say = words::order::TO_100;
pub(crate) const OWN_GEAR: Say = words::order::THE_OFFICE_HAS_ITS_OWN;
pub(crate) const OWN_GEAR_HELP: Say = words::order::IT_COMES_BACK_FROM_THE;
pub(crate) const WITH_ORDER: Say = words::order::TAKEN_WITH_THE_ORDER;
pub(crate) const PRICE_LIST: Say = words::common::PRICE_LIST;
pub(crate) const TAX_PERCENT: Say = words::order::SALES_TAX;
pub(crate) const DELIVERY: Say = words::common::DELIVERY;
pub(crate) const UNKNOWN_HELP: Say = words::order::EMPTY_NOT_KNOWN_WHICH_EVERY;
pub(crate) const PRICES_READ: Say = words::order::WHAT_BECAME_OF_THE_PRICE;
pub(crate) const ON_TOP: Say = words::order::ON_TOP_OF_THE_COST;
pub(crate) const OVERHEAD: Say = words::order::OVERHEAD_OF_THE_COST;
pub(crate) const PROFIT: Say = words::common::PROFIT;
pub(crate) const PROFIT_NONE: Say = words::common::NONE;
pub(crate) const PROFIT_MARKUP: Say = words::order::MARKUP_OF_THE_COST;
pub(crate) const PROFIT_MARGIN: Say = words::order::MARGIN_OF_THE_PRICE;
pub(crate) const PROFIT_PERCENT: Say = words::order::PROFIT;
pub(crate) const STOCK: Say = words::order::STOCK_IN_HAND;
pub(crate) const STOCK_HELP: Say = words::order::A_WAREHOUSE_LIST_CSV_WITH;
pub(crate) const STOCK_EMPTY: Say = words::order::NONE_WHAT_LIES_IN_THE;
pub(crate) const ADD_STOCK: Say = words::order::ADD_WHAT_IS_LEFT;
pub(crate) const STOCK_AMOUNT_HELP: Say = words::order::SUCH_AS_40_100_FT;
pub(crate) const STOCK_NOTE: Say = words::order::WHERE_IT_LIES;
pub(crate) const REMOVE: Say = words::order::REMOVE;

pub(crate) fn list_words(list: &PriceList) -> String {
    words::order::prices_in(&list.name, &list.date, list.prices.len(), &list.currency)
}
pub(crate) fn no_such_part(number: &str) -> String {
    words::order::the_kit_has_no_part(&number.trim())
}
pub(crate) fn stock_part(nth: usize) -> String {
    words::order::part_of_leftover(&nth)
}
pub(crate) fn stock_amount(nth: usize) -> String {
    words::order::amount_of_leftover(&nth)
}
pub(crate) fn stock_note(nth: usize) -> String {
    words::order::note_of_leftover(&nth)
}

// Delivery
pub(crate) const NOTHING_ON_ORDER: Say = words::common::NOTHING_IS_ON_ORDER;
pub(crate) const REST_CAME: Say = words::order::THE_REST_CAME_WHOLE;
pub(crate) const REST_CAME_HELP: Say = words::order::ALL_LINES_THAT_NOBODY_HAS;
pub(crate) const LOAD_COUNTS_HELP: Say = words::order::A_PALLET_LIST_WITH_THE;
pub(crate) const PRINT_LIST: Say = words::order::PRINT_THE_LIST;
pub(crate) const PRINT_THE_CLAIM: Say = words::order::PRINT_THE_CLAIM;
pub(crate) const COPY_CLAIM: Say = words::order::COPY_THE_CLAIM;
pub(crate) const CLAIM_COPIED: Say = words::order::THE_CLAIM_IS_ON_THE;
pub(crate) const CHANGE_DELIVERY: Say = words::order::ABOUT_THE_DELIVERY;
pub(crate) const DELIVERY_DATE: Say = words::common::DATE;
pub(crate) const DELIVERY_BY: Say = words::common::COUNTED_BY;
pub(crate) const DELIVERY_NOTE: Say = words::common::NOTE;
pub(crate) const COLUMN_ORDERED: Say = words::common::ORDERED;
pub(crate) const COLUMN_CAME: Say = words::common::CAME;
pub(crate) const COLUMN_DAMAGED: Say = words::common::DAMAGED;
pub(crate) const COLUMN_NOTE: Say = words::common::NOTE;
pub(crate) const COLUMN_STATE: Say = words::order::STATE;
pub(crate) const ALL_CAME_HELP: Say = words::order::ALL_OF_IT_IS_THERE;
pub(crate) const CAN_START: Say = words::common::WHAT_CAN_START;
pub(crate) const CAN: Say = words::common::CAN_START;

pub(crate) fn counted_so_far(counted: usize, of: usize) -> String {
    words::order::of_lines_counted(&counted, &of)
}
pub(crate) fn count_part(number: &str) -> Said {
    later::order::count(&number)
}
pub(crate) fn counts_taken(lines: usize) -> String {
    words::order::lines_are_counted(lines)
}
pub(crate) fn all_came(number: &str) -> String {
    words::order::all_of_came(&number)
}
pub(crate) fn came_of(number: &str) -> String {
    words::order::came_of(&number)
}
pub(crate) fn damaged_of(number: &str) -> String {
    words::order::damaged_of(&number)
}
pub(crate) fn note_of(number: &str) -> String {
    words::order::note_of(&number)
}
pub(crate) fn too_many_damaged(came: u64) -> String {
    words::order::at_most(&came)
}
pub(crate) fn waits_for(parts: &[Said]) -> String {
    match parts {
        [] => words::order::WAITS.now().to_owned(),
        [one] => words::order::waits_for(&one),
        [first, rest @ ..] => words::order::waits_for_and_more(&first, &rest.len()),
    }
}

// Compare
pub(crate) const COMPARE_ORDERS: Say = words::order::ANOTHER_ORDER;
pub(crate) const COMPARE_ORDERS_WHY: Say = words::order::KEEP_THE_ORDER_AS_IT;
pub(crate) const KEEP_THIS: Say = words::order::KEEP_THIS_ORDER_TO_COMPARE;
pub(crate) const KEEP_THIS_HELP: Say = words::order::WHAT_CHANGES_FROM_HERE_ON;
pub(crate) const ORDERS_ALIKE: Say = words::common::THE_TWO_ORDERS_ARE_ALIKE;
pub(crate) const COMPARE_SUPPLIERS: Say = words::order::OTHER_SUPPLIERS;
pub(crate) const COMPARE_SUPPLIERS_WHY: Say = words::order::ADD_THE_PRICE_LIST_OF;
pub(crate) const FORGET_SUPPLIERS: Say = words::order::TAKE_THEM_AWAY;

pub(crate) fn as_it_was(job: &str) -> String {
    words::order::as_it_was(&job)
}
pub(crate) fn compared_with(name: &str) -> String {
    words::order::from_to_the_job_as(&name)
}
pub(crate) fn total_moved(found: &Comparison) -> String {
    let [before, after] = [found.before, found.after].map(|sum| show_sum(sum, &found.currency));
    format!("{before} → {after}, {}", show_sum_more(found.more, &found.currency))
}
pub(crate) fn from_to(from: &str, to: &str) -> String {
    if from == to { to.to_owned() } else { format!("{from} → {to}") }
}
pub(crate) fn offer_words(offer: &Offer) -> String {
    format!("{}, {}: {}", offer.list, offer.date, show_sum(offer.total, &offer.currency))
}
pub(crate) fn offer_sums(offer: &Offer) -> String {
    words::order::lines_sales_tax_delivery_lines(
        &show_money(offer.lines),
        &super::money(offer.tax),
        &super::money(offer.delivery),
        &show_money(offer.in_common),
    )
}
pub(crate) fn cheapest_words(found: &PriceComparison) -> String {
    words::order::each_line_where_it_is(&show_money(found.cheapest))
}
pub(crate) fn cheapest(cost: Decimal) -> String {
    format!("• {}", show_money(cost))
}
