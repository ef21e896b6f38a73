//! Commands about the order: the takeoff, comparing orders or suppliers, and deliveries.

use crate::{Format, On, Outcome, text_of, write_file};
use anyhow::Context;
use chalkcourse_job::{
    Edit, Kit, OrderChoices, Override, OwnWaste, PriceList, PriceReading, Resolved, apply, load, load_counts,
    load_prices, load_stock,
};
use chalkcourse_plan::{By, evaluate};
use chalkcourse_sheets::Output;
use chalkcourse_words as words;
use clap::{Args, ValueEnum};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Lists what to order, with where each quantity comes from in JSON.
#[derive(Args)]
pub(crate) struct TakeoffArguments {
    #[command(flatten)]
    on: On,
    #[arg(help = words::commandline::HELP_XLSX_AND_PDF_ARE_WRITTEN.now())]
    #[arg(long, value_enum, default_value = "text")]
    format: OrderFormat,
    #[arg(help = words::commandline::HELP_HOW_TEXT_AND_PDF_ARE.now())]
    #[arg(long, value_enum, default_value = "group")]
    by: SortBy,
    #[arg(help = words::commandline::HELP_ANOTHER_PRICE_LIST_JSON_CSV.now())]
    #[arg(long, value_name = "PATH")]
    prices: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_A_WAREHOUSE_LIST_CSV_OR.now())]
    #[arg(long, value_name = "PATH")]
    stock: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_SWITCHES_A_LINE_OFF_NUMBERWHY.now())]
    #[arg(long, value_name = "NUMBER=WHY")]
    off: Vec<String>,
    #[arg(help = words::commandline::HELP_ORDERS_SO_MANY_PACKAGES_WHATEVER.now())]
    #[arg(long, value_name = "NUMBER=PACKAGES")]
    packages: Vec<String>,
    #[arg(help = words::commandline::HELP_TAKES_ONE_OF_THE_KITS.now())]
    #[arg(long, value_name = "CODE")]
    take: Vec<String>,
    #[arg(help = words::commandline::HELP_THE_OFFICE_HAS_ITS_OWN.now())]
    #[arg(long, value_name = "NUMBER")]
    own: Vec<String>,
    #[arg(help = words::commandline::HELP_THE_OFFICES_OWN_WASTE_IN.now())]
    #[arg(long, value_name = "NUMBER=PERCENT:WHY")]
    waste: Vec<String>,
    #[arg(help = words::commandline::HELP_WRITES_THE_JOB_WITH_THESE.now())]
    #[arg(long, value_name = "PATH")]
    save: Option<PathBuf>,
}

/// Tells what one order has more or less than another, and what that costs.
#[derive(Args)]
pub(crate) struct CompareArguments {
    #[arg(help = words::commandline::HELP_A_JOB_FILE.now())]
    one: PathBuf,
    #[arg(help = words::commandline::HELP_ANOTHER_ONE_A_LATER_VERSION.now())]
    other: PathBuf,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
}

/// Prices one order at several suppliers.
#[derive(Args)]
pub(crate) struct SuppliersArguments {
    #[arg(help = words::commandline::HELP_A_JOB_FILE.now())]
    job: PathBuf,
    #[arg(help = words::commandline::HELP_PRICE_LISTS_JSON_CSV_OR.now())]
    #[arg(required = true)]
    lists: Vec<PathBuf>,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
}

/// Prints the pallet list to count on, or takes counts and says what is short and what can start.
#[derive(Args)]
pub(crate) struct ReceiveArguments {
    #[command(flatten)]
    on: On,
    #[arg(help = words::commandline::HELP_TEXT_IS_THE_CLAIM_CSV.now())]
    #[arg(long, value_enum, default_value = "text")]
    format: ReceiveFormat,
    #[arg(help = words::commandline::HELP_A_PALLET_LIST_WITH_THE.now())]
    #[arg(long, value_name = "PATH")]
    counts: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_WRITES_THE_JOB_WITH_THESE_2.now())]
    #[arg(long, value_name = "PATH")]
    save: Option<PathBuf>,
}

#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum OrderFormat {
    Text,
    Csv,
    Json,
    Xlsx,
    Pdf,
}

#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum ReceiveFormat {
    Text,
    Csv,
    Json,
    Pdf,
    ClaimPdf,
}

#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum SortBy {
    #[value(help = words::commandline::HELP_WHAT_A_PART_BELONGS_TO.now())]
    Group,
    #[value(help = words::commandline::HELP_THE_STAGE_OF_WORK_THAT.now())]
    Stage,
}

fn decided(
    job: &Resolved,
    change: impl FnOnce(&mut OrderChoices) -> anyhow::Result<()>,
) -> anyhow::Result<Resolved> {
    let mut order = (*job.order).clone();
    change(&mut order)?;
    Ok(apply(job, &Edit::SetOrder(Arc::new(order)))?)
}

fn split<'a>(text: &'a str, what: &str) -> anyhow::Result<(&'a str, &'a str)> {
    text.split_once('=')
        .with_context(|| words::commandline::write_it_as_number(&format_args!("{text:?}"), &what))
}

/// A price list; what happened to its lines is reported on standard error.
fn prices_told(path: &Path, kit: &Kit) -> anyhow::Result<PriceList> {
    let PriceReading { list, summary } = load_prices(path, kit)?;
    crate::aside(&format!("{}: {}", path.display(), summary.said()));
    Ok(list)
}

pub(crate) fn takeoff(arguments: TakeoffArguments) -> anyhow::Result<Outcome> {
    let TakeoffArguments { mut on, format, by, prices, stock, off, packages, take, own, waste, save } =
        arguments;
    let mut job = load(&on.file)?;
    if let Some(path) = prices {
        job = apply(&job, &Edit::SetPrices(Arc::new(prices_told(&path, &job.kit)?)))?;
    }
    job = decided(&job, |order| {
        if let Some(path) = stock {
            order.stock = load_stock(&path)?;
        }
        for text in &off {
            let (number, why) = split(text, "WHY")?;
            order.off.insert(number.to_owned(), why.to_owned());
        }
        for text in &packages {
            let (number, count) = split(text, "PACKAGES")?;
            let packages = count.parse().with_context(|| {
                words::commandline::no_number_of_packages(
                    &format_args!("{text:?}"),
                    &format_args!("{count:?}"),
                )
            })?;
            order.overrides.insert(
                number.to_owned(),
                Override { packages, why: words::commandline::BY_THE_COMMAND_LINE.into() },
            );
        }
        for code in take {
            let known: Vec<&str> = job.kit.choices.iter().map(|choice| choice.code.as_str()).collect();
            anyhow::ensure!(
                known.contains(&code.as_str()),
                "{}",
                words::commandline::no_choice(&format_args!("{code:?}"), &known.join(", "))
            );
            order.taken.insert(code);
        }
        for number in own {
            let part = job
                .kit
                .part(&number)
                .with_context(|| words::commandline::no_part(&format_args!("{number:?}")))?;
            anyhow::ensure!(
                part.comes_back,
                "{}",
                words::commandline::does_not_come_back(&format_args!("{number:?}"))
            );
            order.own.insert(number);
        }
        for text in &waste {
            let (number, share) = split(text, "PERCENT:WHY")?;
            let (percent, why) = share.split_once(':').unwrap_or((share, ""));
            let percent: f64 = percent.parse().with_context(|| {
                words::commandline::is_no_percentage(&format_args!("{text:?}"), &format_args!("{percent:?}"))
            })?;
            let own = OwnWaste { share: percent / 100.0, why: why.to_owned() };
            order.waste.insert(number.to_owned(), own);
        }
        for number in order.off.keys().chain(order.overrides.keys()).chain(order.waste.keys()) {
            let added = order.added.iter().any(|line| line.number == *number);
            anyhow::ensure!(
                added || job.kit.part(number).is_some(),
                "{}",
                words::commandline::no_part(&format_args!("{number:?}"))
            );
        }
        Ok(())
    })?;
    if let Some(path) = save {
        chalkcourse_job::save(&job, &path)?;
    }
    let plan = evaluate(&job);
    let by = match by {
        SortBy::Group => By::Group,
        SortBy::Stage => By::Stage,
    };
    let text = match format {
        OrderFormat::Text => Output::Order(by).text(&job, &plan)?,
        OrderFormat::Csv => Output::OrderCsv.text(&job, &plan)?,
        OrderFormat::Json => Output::OrderJson.text(&job, &plan)?,
        OrderFormat::Xlsx => write_file(on.out.take(), &Output::OrderWorkbook.bytes(&job, &plan)?)?,
        OrderFormat::Pdf => write_file(on.out.take(), &Output::OrderSheet(by).bytes(&job, &plan)?)?,
    };
    Ok(Outcome { text, out: on.out, stops: plan.worst() == Some(chalkcourse_rules::Severity::Stop) })
}

pub(crate) fn compare(arguments: &CompareArguments) -> anyhow::Result<Outcome> {
    let one = evaluate(&load(&arguments.one)?).takeoff;
    // The exit status is about the other job, the one that would be ordered.
    let job = load(&arguments.other)?;
    let plan = evaluate(&job);
    let comparison = chalkcourse_plan::compare(&one, &plan.takeoff);
    let (text, json) = (Output::Compared(&comparison), Output::ComparedJson(&comparison));
    let text = text_of(arguments.format, text, json, &job, &plan)?;
    Ok(Outcome { text, out: None, stops: false })
}

pub(crate) fn suppliers(arguments: &SuppliersArguments) -> anyhow::Result<Outcome> {
    let job = load(&arguments.job)?;
    let plan = evaluate(&job);
    let lists: Vec<PriceList> =
        arguments.lists.iter().map(|path| prices_told(path, &job.kit)).collect::<Result<_, _>>()?;
    let comparison = chalkcourse_plan::compare_prices(&plan.takeoff, &lists.iter().collect::<Vec<_>>());
    let (text, json) = (Output::Suppliers(&comparison), Output::SuppliersJson(&comparison));
    let text = text_of(arguments.format, text, json, &job, &plan)?;
    Ok(Outcome { text, out: None, stops: false })
}

pub(crate) fn receive(arguments: ReceiveArguments) -> anyhow::Result<Outcome> {
    let ReceiveArguments { mut on, format, counts, save } = arguments;
    let mut job = load(&on.file)?;
    if let Some(path) = counts {
        let counts = load_counts(&path)?;
        job = apply(&job, &Edit::order(&job, |order| order.delivery.counts.extend(counts)))?;
    }
    if let Some(path) = save {
        chalkcourse_job::save(&job, &path)?;
    }
    let plan = evaluate(&job);
    let text = match format {
        ReceiveFormat::Text => Output::Claim.text(&job, &plan)?,
        ReceiveFormat::Csv => Output::PalletCsv.text(&job, &plan)?,
        ReceiveFormat::Json => Output::PalletJson.text(&job, &plan)?,
        ReceiveFormat::Pdf => write_file(on.out.take(), &Output::PalletSheet.bytes(&job, &plan)?)?,
        ReceiveFormat::ClaimPdf => write_file(on.out.take(), &Output::ClaimSheet.bytes(&job, &plan)?)?,
    };
    Ok(Outcome { text, out: on.out, stops: false })
}
