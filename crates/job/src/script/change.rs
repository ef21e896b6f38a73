//! Edits that can be written in short form in a script.

use super::blocks::{AddBlock, ChangeBlock, MoveBlock, ShiftRow, SwitchModules};
use super::corners::{AddCorner, MoveCorner, RemoveCorner};
use super::faces::{AddFace, ChangeFace, OverruleSide};
use super::fields::Whole;
use super::parts::{AddCourtyard, AddPart, ChangePart, ChangeSide, MoveParts};
use super::penetrations::{AddPenetration, ChangePenetration, MovePenetration};
use super::{ObjectRef, Shelf, StepErrorKind, find};
use crate::{
    Accepted, Building, Edit, FindingKey, Kit, OrderChoices, PriceList, Pricing, Resolved, RoofWork,
    RuleBook, Site, Underlay, Waiver, WiringChoices,
};
use schemars::JsonSchema;
use serde::Deserialize;
use std::sync::Arc;

/// A short form of an edit: objects by id or name, corners and sides by number, and only the fields to change.
///
/// `change-…` replaces the given fields, and `null` resets one; `put-…` and `set-…` of [`Edit`] replace a whole object.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
#[expect(clippy::enum_variant_names, reason = "the variants are the words that people write: `change-block`")]
pub(super) enum Change {
    AddPart(AddPart),
    AddCourtyard(AddCourtyard),
    ChangePart(ChangePart),
    ChangeSide(ChangeSide),
    MoveParts(MoveParts),
    /// Removes a part with its faces and the blocks on them.
    RemovePart(ObjectRef),
    /// Converts the faces of a part, and of the parts joined to it, to drawn faces.
    FreePart(ObjectRef),
    MoveCorner(MoveCorner),
    AddCorner(AddCorner),
    RemoveCorner(RemoveCorner),
    AddFace(AddFace),
    ChangeFace(ChangeFace),
    OverruleSide(OverruleSide),
    /// Removes a drawn face and the blocks on it.
    RemoveFace(ObjectRef),
    AddPenetration(AddPenetration),
    ChangePenetration(ChangePenetration),
    MovePenetration(MovePenetration),
    /// Removes a penetration.
    RemovePenetration(ObjectRef),
    AddBlock(AddBlock),
    ChangeBlock(ChangeBlock),
    MoveBlock(MoveBlock),
    SwitchModules(SwitchModules),
    ShiftRow(ShiftRow),
    /// Removes a block.
    RemoveBlock(ObjectRef),
    Waive(Waive),
    /// Changes facts about the house and the site that rules need: streets, eave height, wind, sprinklers, deck and
    /// more.
    ChangeBuilding(Whole<Building>),
    /// Changes address, notes, place.
    ChangeSite(Whole<Site>),
    /// Changes overhead and profit.
    ChangePricing(Whole<Pricing>),
    /// Changes how much of the roof is torn off and covered.
    ChangeRoofWork(Whole<RoofWork>),
    /// Changes other decisions about the order.
    ChangeOrder(Whole<OrderChoices>),
    /// Changes fields of the kit.
    ChangeKit(Whole<Kit>),
    /// Changes fields of the rule book.
    ChangeRuleBook(Whole<RuleBook>),
    /// Changes fields of the price list.
    ChangePrices(Whole<PriceList>),
    /// Changes code edition, temperatures, inverters, service and label texts of the wiring.
    ChangeWiring(Whole<WiringChoices>),
    /// Changes the picture under the plan.
    ChangeUnderlay(Whole<Underlay>),
    /// Sets the kit from a file, relative to the script.
    TakeKit(String),
    /// Sets the rule book: the name of a built-in one, or a file.
    TakeRuleBook(String),
    /// Sets the price list from a file.
    TakePrices(String),
}

/// Accepts a finding, or changes the reason.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Waive {
    /// The key of the finding, as printed by `check --format json`.
    key: FindingKey,
    /// What is accepted: by default what the finding measures when the step is run.
    #[serde(default)]
    accepted: Option<Accepted>,
    /// Why it is accepted.
    reason: String,
    /// Who accepted it.
    #[serde(default)]
    by: String,
    /// The date, as typed.
    #[serde(default)]
    date: String,
}

impl Change {
    /// The names of short forms, including those that are also names of an [`Edit`].
    pub(super) const NAMES: [&str; 38] = [
        "add-part",
        "add-courtyard",
        "change-part",
        "change-side",
        "move-parts",
        "remove-part",
        "free-part",
        "move-corner",
        "add-corner",
        "remove-corner",
        "add-face",
        "change-face",
        "overrule-side",
        "remove-face",
        "add-penetration",
        "change-penetration",
        "move-penetration",
        "remove-penetration",
        "add-block",
        "change-block",
        "move-block",
        "switch-modules",
        "shift-row",
        "remove-block",
        "waive",
        "change-building",
        "change-site",
        "change-pricing",
        "change-roof-work",
        "change-order",
        "change-kit",
        "change-rule-book",
        "change-prices",
        "change-wiring",
        "change-underlay",
        "take-kit",
        "take-rule-book",
        "take-prices",
    ];

    /// The edit for a job. Pure, except for files, which are read from the shelf.
    pub(super) fn edit(&self, job: &Resolved, shelf: &dyn Shelf) -> Result<Edit, StepErrorKind> {
        let order = |order| Edit::SetOrder(Arc::new(order));
        let there = || OrderChoices::clone(&job.order);
        Ok(match self {
            Self::AddPart(change) => change.edit(job)?,
            Self::AddCourtyard(change) => change.edit(job)?,
            Self::ChangePart(change) => change.edit(job)?,
            Self::ChangeSide(change) => change.edit(job)?,
            Self::MoveParts(change) => change.edit(job)?,
            Self::RemovePart(which) => Edit::RemovePart(find::part(job, which)?.id),
            Self::FreePart(which) => Edit::FreePart(find::part(job, which)?.id),
            Self::MoveCorner(change) => change.edit(job)?,
            Self::AddCorner(change) => change.edit(job)?,
            Self::RemoveCorner(change) => change.edit(job)?,
            Self::AddFace(change) => change.edit(job),
            Self::ChangeFace(change) => change.edit(job)?,
            Self::OverruleSide(change) => change.edit(job)?,
            Self::RemoveFace(which) => Edit::RemoveFace(find::face(job, which)?.id),
            Self::AddPenetration(change) => change.edit(job)?,
            Self::ChangePenetration(change) => change.edit(job)?,
            Self::MovePenetration(change) => change.edit(job)?,
            Self::RemovePenetration(which) => Edit::RemovePenetration(find::penetration(job, which)?.id),
            Self::AddBlock(change) => change.edit(job)?,
            Self::ChangeBlock(change) => change.edit(job)?,
            Self::MoveBlock(change) => change.edit(job)?,
            Self::SwitchModules(change) => change.edit(job)?,
            Self::ShiftRow(change) => change.edit(job)?,
            Self::RemoveBlock(which) => Edit::RemoveBlock(find::block(job, which)?.id),
            Self::Waive(Waive { key, accepted, reason, by, date }) => Edit::Waive(Waiver {
                key: key.clone(),
                accepted: accepted.clone(),
                reason: reason.clone(),
                by: by.clone(),
                date: date.clone(),
            }),
            Self::ChangeBuilding(change) => {
                let building = change.over(&job.site.building)?;
                Edit::SetSite(Site { building, ..job.site.clone() })
            }
            Self::ChangeSite(change) => Edit::SetSite(change.over(&job.site)?),
            Self::ChangePricing(change) => {
                order(OrderChoices { pricing: change.over(&job.order.pricing)?, ..there() })
            }
            Self::ChangeRoofWork(change) => {
                order(OrderChoices { roof: change.over(&job.order.roof)?, ..there() })
            }
            Self::ChangeOrder(change) => order(change.over(&job.order)?),
            Self::ChangeKit(change) => Edit::SetKit(Arc::new(change.over(&job.kit)?)),
            Self::ChangeRuleBook(change) => Edit::SetRuleBook(Arc::new(change.over(&job.rule_book)?)),
            Self::ChangePrices(change) => Edit::SetPrices(Arc::new(change.over(&job.prices)?)),
            Self::ChangeWiring(change) => Edit::SetWiring(Arc::new(change.over(&job.wiring)?)),
            Self::ChangeUnderlay(change) => {
                let there = job.underlay.as_ref().ok_or(StepErrorKind::NoUnderlay)?;
                Edit::SetUnderlay(Some(change.over(there)?))
            }
            Self::TakeKit(file) => Edit::SetKit(Arc::new(shelf.kit(file)?)),
            Self::TakeRuleBook(file) => Edit::SetRuleBook(shelf.rule_book(file)?),
            Self::TakePrices(file) => Edit::SetPrices(Arc::new(shelf.prices(file, &job.kit)?)),
        })
    }
}
