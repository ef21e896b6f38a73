//! A person's decisions about an order; money; comparing orders; deliveries; the memo.

use super::*;
use chalkcourse_job::{
    AddedLine, Alternate, Edit, Group, Holds, Leftover, Override, OwnWaste, Pricing, Profit, Received,
    RoofKind, Stage, WasteAs, apply,
};
use std::collections::BTreeMap;

fn decimal(text: &str) -> Decimal {
    text.parse().unwrap()
}

fn decided(job: &Resolved, change: impl FnOnce(&mut OrderChoices)) -> Resolved {
    let mut order = (*job.order).clone();
    change(&mut order);
    apply(job, &Edit::SetOrder(Arc::new(order))).unwrap()
}

fn added(packages: u64, price: &str) -> AddedLine {
    AddedLine {
        number: "X-1".into(),
        name: "Snow guard".into(),
        group: Group::Roofing,
        stage: Stage::Shingles,
        package: "piece".into(),
        packages,
        price: Some(decimal(price)),
        why: "asked for by the owner".into(),
    }
}

/// An order of one line: the array switched off, one part added by hand.
fn one_line(price: &str) -> Resolved {
    let mut job = array_alone(block(1, 1));
    job.blocks.clear();
    decided(&job, |order| order.added = vec![added(1, price)])
}

#[test]
fn a_line_can_be_off_overridden_or_added_and_shows_it() {
    let plain = array_alone(block(3, 4));
    let job = decided(&plain, |order| {
        order.off.insert("FH-101".into(), "owner has them".into());
        order.overrides.insert("FH-110".into(), Override { packages: 9, why: "two spare".into() });
        order.added = vec![added(3, "10.00")];
    });
    let (before, after) = (takeoff(&plain), takeoff(&job));
    assert!(after.lines.iter().all(|line| line.number != "FH-101"));
    assert_eq!(after.off[0].number, "FH-101");
    assert_eq!((after.off[0].packages, after.off[0].counted), (0, 12));
    let rail = line(&after, "FH-110");
    assert_eq!((rail.packages, rail.counted), (9, 3));
    assert!(matches!(&rail.state, LineState::Overridden { why } if why == "two spare"));
    // 12 modules at 212.00 off, six sticks at 38.75 and three guards at 10.00 added
    let change = decimal("-2544.00") + decimal("232.50") + decimal("30.00");
    assert_eq!(after.priced_total - before.priced_total, change);
    // What depends on a part that is switched off is still counted: the feet are needed.
    assert_eq!(line(&after, "FH-102").need, 60.0);
    let text = to_text(&after, &Header::of(&job), Units::FeetInches);
    for words in
        ["OFF: owner has them", "OVERRIDDEN, counted 3 sticks: two spare", "ADDED by hand: asked for"]
    {
        assert!(text.contains(words), "{words:?} is not in\n{text}");
    }
    // A part number of the kit can't be added as a new one.
    let mut clash = (*plain.order).clone();
    clash.added = vec![AddedLine { number: "FH-101".into(), ..added(1, "1") }];
    assert!(apply(&plain, &Edit::SetOrder(Arc::new(clash))).is_err());
}

#[test]
fn stock_in_hand_is_used_first() {
    let leftover = |number: &str, amount| Leftover { number: number.into(), amount, note: String::new() };
    let job = decided(&array_alone(block(3, 4)), |order| {
        order.stock = vec![
            leftover("FH-102", Holds::Pieces(40.0)),
            leftover("FH-101", Holds::Pieces(99.0)),
            leftover("FH-162", Holds::Pieces(1.0)),
        ];
    });
    let takeoff = takeoff(&job);
    // 60 feet plus 2 % is 62; 40 are in the warehouse, so 22: one box of 25 instead of three
    let feet = line(&takeoff, "FH-102");
    assert_eq!((feet.with_waste, feet.from_stock, feet.packages), (62.0, 40.0, 1));
    let modules = line(&takeoff, "FH-101");
    assert_eq!((modules.from_stock, modules.packages, modules.cost), (12.0, 0, Some(Decimal::ZERO)));
    assert!(takeoff.notes.iter().any(|note| note.now().contains("FH-162")), "{:?}", takeoff.notes);
    assert!(to_text(&takeoff, &Header::of(&job), Units::FeetInches).contains("40 from stock on hand"));
}

/// 100.00 of goods, 7.25 % tax 7.25, delivery 145.00: 252.25. Overhead 10 % is 25.225, so 25.23: 277.48. A margin of 20 %
/// of the price is a quarter of that: 69.37, and the price 346.85. A markup of 20 % is 55.496, so 55.50.
#[test]
fn from_lines_to_the_price_by_hand() {
    let priced = |profit| {
        let job = decided(&one_line("100.00"), |order| {
            order.pricing = Pricing { overhead_percent: decimal("10"), profit };
        });
        takeoff(&job).totals
    };
    let margin = priced(Profit::Margin { percent: decimal("20") });
    assert_eq!((margin.goods, margin.labour), (decimal("100.00"), Decimal::ZERO));
    assert_eq!((margin.tax, margin.delivery), (Some(decimal("7.25")), Some(decimal("145.00"))));
    assert_eq!((margin.cost, margin.overhead), (decimal("252.25"), decimal("25.23")));
    assert_eq!((margin.profit, margin.total), (decimal("69.37"), decimal("346.85")));
    let markup = priced(Profit::Markup { percent: decimal("20") });
    assert_eq!((markup.profit, markup.total), (decimal("55.50"), decimal("332.98")));
}

#[test]
fn a_list_without_tax_and_delivery_is_reported() {
    let mut job = array_alone(block(1, 1));
    let mut prices = (*job.prices).clone();
    (prices.tax_percent, prices.delivery) = (None, None);
    job.prices = Arc::new(prices);
    let takeoff = takeoff(&job);
    assert_eq!((takeoff.totals.tax, takeoff.totals.delivery), (None, None));
    assert_eq!(takeoff.notes.len(), 2, "{:?}", takeoff.notes);
    assert!(to_text(&takeoff, &Header::of(&job), Units::FeetInches).contains("Sales tax: not known"));
}

#[test]
fn an_alternate_is_taken_at_its_price() {
    let mut job = array_alone(block(1, 1));
    let mut prices = (*job.prices).clone();
    let other = Alternate { number: "QX-9".into(), name: "Other module".into(), package: decimal("200.00") };
    prices.prices.get_mut("FH-101").unwrap().alternates.push(other);
    job.prices = Arc::new(prices);
    let job = decided(&job, |order| drop(order.alternates.insert("FH-101".into(), "QX-9".into())));
    let takeoff = takeoff(&job);
    assert_eq!(line(&takeoff, "FH-101").cost, Some(decimal("200.00")));
    assert!(pallet(&takeoff, &job.order.delivery)[0].name.now().contains("QX-9"));
}

/// Handbooks: 10 % on a gable, 15 % on a hip roof; a cut-up one 15 to 20 %, from memory.
#[test]
fn waste_goes_by_the_kind_of_roof_and_never_by_the_cuts_alone() {
    let plain = job(vec![block(3, 4)]);
    let by = |waste_as| takeoff(&decided(&plain, |order| order.waste_as = waste_as));
    let shingles = |takeoff: &Takeoff| line(takeoff, "FH-214").clone();
    for (waste_as, share, kind, chosen) in [
        (WasteAs::AsDrawn, 0.1, RoofKind::Gable, false),
        (WasteAs::Gable, 0.1, RoofKind::Gable, true),
        (WasteAs::Hip, 0.15, RoofKind::Hip, true),
        (WasteAs::CutUp, 0.2, RoofKind::CutUp, true),
    ] {
        let line = shingles(&by(waste_as));
        assert_eq!((line.waste, line.waste_from.clone()), (share, WasteFrom::Roof { kind, chosen }));
        // A rectangle has no waste from its own cuts; that is reported, not used for the order.
        assert!(line.waste_by_geometry.unwrap() < 1e-9);
        assert!(waste_words(&line).unwrap().contains("make 0 %, which is not ordered by"));
    }
    assert_eq!(line(&by(WasteAs::Hip), "FH-102"), line(&by(WasteAs::Gable), "FH-102"), "feet are not cut");
    // An office with better figures overrides them, with its source.
    let own = decided(&plain, |order| {
        order.waste.insert("FH-214".into(), OwnWaste { share: 0.12, why: "ten of our roofs".into() });
    });
    let line = shingles(&takeoff(&own));
    assert!((line.with_waste - line.need * 1.12).abs() < 1e-9);
    assert!(waste_words(&line).unwrap().starts_with("12 %, the office's own: ten of our roofs"));
}

/// Fall protection is for those on the roof: four of the roof crew and the electrician, not the two on the ground (29 CFR
/// 1926.501(b)(13) speaks of each employee on the roof).
#[test]
fn gear_is_for_people_on_the_roof_and_may_be_the_offices_own() {
    let plain = array_alone(block(3, 4));
    let bought = takeoff(&plain);
    assert_eq!((line(&bought, "FH-301").need, line(&bought, "FH-301").packages), (5.0, 5));
    assert_eq!(line(&bought, "FH-303").need, 7.0, "gloves are for all");
    let job = decided(&plain, |order| order.own = ["FH-301".into(), "FH-101".into()].into());
    let own = takeoff(&job);
    let sets = line(&own, "FH-301");
    assert_eq!((sets.need, sets.from_stock, sets.packages), (5.0, 5.0, 0));
    let text = to_text(&own, &Header::of(&job), Units::FeetInches);
    assert!(text.contains("5 of the office's own, to bring along"), "{text}");
    assert_eq!(line(&own, "FH-101").packages, 12, "modules do not come back");
}

#[test]
fn what_is_taken_with_an_order_is_on_it_and_else_is_not() {
    let plain = job(vec![block(3, 4)]);
    let by_hand = ["FH-156", "FH-228", "FH-306", "FH-307", "FH-502"];
    let before = takeoff(&plain);
    assert!(before.lines.iter().all(|line| !by_hand.contains(&line.number.as_str())));
    let all = plain.kit.choices.iter().map(|choice| choice.code.clone()).collect();
    let after = takeoff(&decided(&plain, |order| order.taken = all));
    for number in by_hand {
        assert!(line(&after, number).packages > 0, "{number}");
    }
    assert_eq!((line(&before, "FH-101").packages, line(&after, "FH-101").packages), (12, 13));
    // The gable face has no ridge here: its upper edge is drawn as one.
    assert_eq!(after.lines.len(), before.lines.len() + by_hand.len());
}

fn rows(csv: &str) -> Vec<csv::StringRecord> {
    csv::Reader::from_reader(csv.as_bytes()).records().map(Result::unwrap).collect()
}

/// Every money column adds up as printed, in CSV and in JSON.
fn foots(job: &Resolved) {
    let takeoff = takeoff(job);
    let totals = &takeoff.totals;
    let text = to_csv(&takeoff, &Header::of(job), Units::FeetInches).unwrap();
    let rows = rows(&text);
    let of = |record: &str| -> Decimal {
        rows.iter().filter(|row| &row[0] == record).filter_map(|row| row[13].parse::<Decimal>().ok()).sum()
    };
    assert_eq!(of("part"), of("goods") + of("labour"));
    assert_eq!(of("goods") + of("labour") + of("sales tax") + of("delivery"), of("cost"));
    assert_eq!(of("cost") + of("overhead") + of("profit"), of("total"));
    assert_eq!(of("total"), totals.total);
    for part in rows.iter().filter(|row| &row[0] == "part") {
        let (packages, price): (Decimal, Decimal) = (part[8].parse().unwrap(), part[12].parse().unwrap());
        assert_eq!(
            (packages * price).round_dp_with_strategy(2, RoundingStrategy::MidpointAwayFromZero),
            part[13].parse::<Decimal>().unwrap()
        );
    }
    let json: serde_json::Value =
        serde_json::from_str(&to_json(&takeoff, &Header::of(job), job.units).unwrap()).unwrap();
    let money = |value: &serde_json::Value| value.as_str().unwrap().parse::<Decimal>().unwrap();
    let order = &json["data"]["takeoff"];
    let lines: Decimal = order["lines"].as_array().unwrap().iter().map(|line| money(&line["cost"])).sum();
    assert_eq!(lines, money(&order["totals"]["goods"]) + money(&order["totals"]["labour"]));
    assert_eq!(money(&order["totals"]["total"]), totals.total);
    let staged: Decimal = takeoff.cost_by_stage().iter().map(|(_, cost)| *cost).sum();
    let grouped: Decimal = takeoff.cost_by_group().iter().map(|(_, cost)| *cost).sum();
    assert_eq!((staged, grouped), (lines, lines));
}

#[test]
fn the_pallet_list_says_what_is_short_and_what_can_start() {
    let mut job = array_alone(block(3, 4));
    job.kit = builtin_kit();
    let takeoff = takeoff(&job);
    let all: BTreeMap<String, Received> = takeoff
        .lines
        .iter()
        .map(|line| (line.number.clone(), Received { packages: line.packages, ..Received::default() }))
        .collect();
    let counted = |change: &dyn Fn(&mut BTreeMap<String, Received>)| {
        let mut counts = all.clone();
        change(&mut counts);
        decided(&job, |order| order.delivery.counts = counts)
    };
    let rows_of = |job: &Resolved| pallet(&takeoff, &job.order.delivery);
    let complete = counted(&|_| {});
    // Labour does not come on a pallet: a count of it is a stray.
    let rows: Vec<_> = rows_of(&complete).into_iter().filter(|row| row.ordered > 0).collect();
    assert!(rows.iter().all(PalletRow::is_complete));
    assert!(stages_ready(&rows).iter().all(|stage| stage.can_start));

    // One head flashing short: rail, modules and sides can start, the head can't, and neither can what stands on it.
    let short = counted(&|counts| counts.get_mut("FH-130").unwrap().packages -= 1);
    let ready = stages_ready(&rows_of(&short));
    let starts = |stage| ready.iter().find(|s| s.stage == stage).unwrap();
    for stage in [Stage::Ground, Stage::UnderArray, Stage::BaseRail, Stage::Modules, Stage::Sides] {
        assert!(starts(stage).can_start, "{stage:?}");
    }
    let told = |stage| starts(stage).waits_for.iter().map(ToString::to_string).collect::<Vec<_>>();
    assert_eq!(told(Stage::Head), ["FH-130 Head flashing, one module wide: 3 of 4 pieces"]);
    assert_eq!(told(Stage::Around), ["Head flashing can't start"]);
    assert_eq!(told(Stage::Wires), ["Shingles to the ridge can't start"]);

    // One damaged of thirteen modules delivered for twelve: one over, and all twelve are good.
    let damaged = counted(&|counts| {
        let note = "corner split".to_owned();
        counts.insert("FH-101".into(), Received { packages: 13, damaged: 1, note });
    });
    let rows = rows_of(&damaged);
    let modules = rows.iter().find(|row| row.number == "FH-101").unwrap();
    assert_eq!((modules.short(), modules.over(), modules.damaged, modules.wanting()), (0, 1, 1, 0));
    assert_eq!(counted_words(modules), "1 over, 1 damaged");
    let claim = claim_text(&job.name, &damaged.order.delivery, &rows);
    assert!(claim.contains("corner split") && claim.contains("Damaged"), "{claim}");

    // Not counted is not the same as none.
    let open = pallet(&takeoff, &job.order.delivery);
    assert!(open.iter().all(|row| counted_words(row) == "not counted" && row.short() == 0));
    assert!(!stages_ready(&open)[0].can_start);
}

#[test]
fn two_suppliers_are_compared_on_what_both_have() {
    let takeoff = takeoff(&array_alone(block(1, 1)));
    let one = builtin_prices();
    let mut other = (*one).clone();
    other.name = "Harbour Supply".into();
    other.prices.remove("FH-102");
    other.prices.get_mut("FH-101").unwrap().package = decimal("199.00");
    let comparison = compare_prices(&takeoff, &[&one, &other]);
    assert_eq!(comparison.offers[1].missing, ["FH-102"]);
    // the module is 13.00 cheaper, and the box of feet, 61.25, is not in its total
    assert_eq!(comparison.offers[0].in_common - comparison.offers[1].in_common, decimal("13.00"));
    assert_eq!(comparison.offers[0].lines - comparison.offers[1].lines, decimal("13.00") + decimal("61.25"));
    assert_eq!(comparison.cheapest, comparison.offers[0].lines - decimal("13.00"));
    assert!(offers(&comparison).contains("NO PRICE, and not in the total: FH-102"));
    other.currency = "EUR".into();
    assert!(compare_prices(&takeoff, &[&one, &other]).money_apart.is_some());
}

#[test]
fn comparing_versions_reports_additions_and_removals() {
    let (small, large) = (takeoff(&job(vec![block(3, 4)])), takeoff(&job(vec![block(3, 5)])));
    let changes = compare(&small, &large);
    let of = |number: &str| changes.changes.iter().find(|change| change.number == number).unwrap();
    assert_eq!((of("FH-101").packages, of("FH-101").more), ([12, 15], Some(decimal("636.00"))));
    // Three more modules leave that much less to shingle.
    assert!(of("FH-214").need[1] < of("FH-214").need[0]);
    assert_eq!(changes.more, large.totals.total - small.totals.total);
    let back = compare(&large, &small);
    assert_eq!((back.more, back.changes.len()), (-changes.more, changes.changes.len()));
    assert!(comparison(&changes).contains("More") && comparison(&changes).contains("12 → 15 modules"));
}

/// Nothing starts before what it stands on: once the array showed as ready with none of its rails delivered.
#[test]
fn stages_wait_for_what_they_depend_on_and_not_for_spares() {
    let plain = decided(&array_alone(block(3, 4)), |order| {
        order.overrides.insert("FH-110".into(), Override { packages: 5, why: "two spare".into() });
        order.taken = ["spare-module".into()].into();
    });
    let takeoff = takeoff(&plain);
    let ready = |counts: &[(&str, u64)]| {
        let all = takeoff.lines.iter().map(|line| {
            let short = counts.iter().find(|(number, _)| *number == line.number);
            let packages = short.map_or(line.packages, |(_, packages)| *packages);
            (line.number.clone(), Received { packages, ..Received::default() })
        });
        let counts = all.collect();
        let job = decided(&plain, |order| order.delivery.counts = counts);
        stages_ready(&pallet(&takeoff, &job.order.delivery))
    };
    let stopped = |ready: &[StageReady]| -> Vec<Stage> {
        ready.iter().filter(|stage| !stage.can_start).map(|stage| stage.stage).collect()
    };
    // Three of five rails cover 22.6 ft, and twelve of thirteen modules cover the layout.
    assert_eq!(stopped(&ready(&[("FH-110", 3), ("FH-101", 12)])), []);
    use Stage::{Around, BaseRail, Head, Modules, Shingles, Sides, Wires};
    assert_eq!(stopped(&ready(&[("FH-110", 0)])), [BaseRail, Modules, Head, Sides, Around, Shingles, Wires]);
    assert_eq!(stopped(&ready(&[("FH-101", 11)]))[0], Stage::Ground);
    // Each stage that can't start names its own missing part or the stage it stands on.
    for stage in ready(&[("FH-110", 0)]).iter().filter(|stage| !stage.can_start) {
        let on = stage.stage.stands_on().iter().map(|on| on.name().now());
        let named =
            |why: &Said| why.now().contains("FH-110") || on.clone().any(|name| why.now().starts_with(name));
        assert!(stage.waits_for.iter().all(named), "{stage:?}");
    }
}

proptest! {
    #[test]
    fn an_order_compared_with_itself_has_no_differences(block in any_block()) {
        let takeoff = takeoff(&job(vec![block]));
        let changes = compare(&takeoff, &takeoff.clone());
        prop_assert!(changes.is_empty(), "{changes:?}");
    }

    #[test]
    fn money_foots_in_every_output(block in any_block(), overhead in 0u32..400, profit in 0u32..900, margin: bool) {
        let percent = Decimal::new(i64::from(profit), 1);
        let profit = if margin { Profit::Margin { percent } } else { Profit::Markup { percent } };
        let pricing = Pricing { overhead_percent: Decimal::new(i64::from(overhead), 1), profit };
        foots(&decided(&job(vec![block]), |order| order.pricing = pricing));
    }
}
