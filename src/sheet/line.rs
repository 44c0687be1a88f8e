//! The formula's lines and sums, water, allergens, nutrients and cost.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Label;

/// One line of the formula, scaled and put into words.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Line {
    /// The section it stands in.
    pub section: String,
    /// The ingredient as the student reads it: `bread flour`, `large eggs`.
    pub ingredient: String,
    /// The ingredient's name in the pantry, or the recipe's file name.
    pub key: String,
    /// Whether it is another recipe.
    pub is_recipe: bool,
    /// The note: `cold`.
    pub note: Option<String>,
    /// The temperature it has when it goes in, where the line says it: `at 43 °C`.
    pub at: Option<Label>,
    /// Weight in grams; `null` where it carries none (`to taste`).
    pub grams: Option<f64>,
    /// Percent of the flour, where there is flour and a weight.
    pub percent: Option<f64>,
    /// The same in words: `28 %`.
    pub percent_label: Option<String>,
    /// Metric weight; the words as written where there is no weight.
    pub metric: String,
    /// US weight; the words as written where there is no weight.
    pub us_weight: String,
    /// US household measure; `null` where none is close enough or none is known.
    pub us_measure: Option<String>,
    /// Whole pieces that it comes to, for counted things: `2 large`.
    pub count: Option<String>,
    /// How far the household measure (else the US weight) is off, as a share: 0.01 is 1 %.
    pub us_error: f64,
    /// How far the metric weight shown is off, as a share.
    pub metric_error: f64,
    /// What goes into each of several equal doughs; `null` where there is one dough, and for
    /// what is not mixed or rolled into it.
    pub each_dough: Option<EachDough>,
}

/// A line's amount in one of several equal doughs.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct EachDough {
    /// Weight in grams.
    pub grams: f64,
    /// Metric weight.
    pub metric: String,
    /// US weight.
    pub us_weight: String,
    /// US household measure; `null` where none is close enough or none is known.
    pub us_measure: Option<String>,
    /// Whole pieces that it comes to, for counted things.
    pub count: Option<String>,
}

/// The sums of a formula.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Totals {
    /// All weights together, in grams.
    pub grams: f64,
    /// All flour, in grams, with the flour inside preferments and included doughs.
    pub flour_g: f64,
    /// Liquids over the flour of the dough, in percent; `null` without flour. Wash, filling
    /// and roll-in fat do not count.
    pub hydration_percent: Option<f64>,
    /// Whether hydration counts the water in milk, eggs and butter, instead of plain liquids
    /// by their weight.
    pub true_hydration: bool,
    /// One of several equal doughs with its roll-in fat, in words; `null` where there is one.
    pub each_dough: Option<Label>,
    /// The total in words.
    pub weight: Label,
    /// The flour in words.
    pub flour: Label,
    /// Sums by section: name, weight in words, grams.
    pub sections: Vec<SectionTotal>,
}

/// The sum of one section.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SectionTotal {
    /// The section's name.
    pub section: String,
    /// Its weight in grams.
    pub grams: f64,
    /// Its weight in words.
    pub weight: Label,
}

/// A preferment shown both ways.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Preferment {
    /// The section's name.
    pub section: String,
    /// Its flour over all flour, in percent.
    pub flour_percent: f64,
    /// Its own hydration, in percent.
    pub hydration_percent: f64,
    /// The overall formula: each ingredient summed over preferment and dough.
    pub overall: Vec<OverallLine>,
}

/// One ingredient of the overall formula.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct OverallLine {
    /// The ingredient.
    pub ingredient: String,
    /// Grams in the preferment.
    pub preferment_g: f64,
    /// Grams added to the final dough.
    pub dough_g: f64,
    /// Percent of all flour.
    pub percent: f64,
    /// In the preferment, in words; empty if none.
    pub preferment: Label,
    /// In the final dough, in words; empty if none.
    pub dough: Label,
    /// Percent in words.
    pub percent_label: String,
}

/// The water that brings the dough to its temperature.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Water {
    /// The dough's wanted temperature, °C.
    pub desired_c: f64,
    /// The water's temperature, °C.
    pub water_c: f64,
    /// Ice that replaces part of the water, in grams; 0 where none is needed.
    pub ice_g: f64,
    /// The wanted temperature in words.
    pub desired: Label,
    /// The water's temperature in words.
    pub water: Label,
    /// The ice in words; `null` where none is needed.
    pub ice: Option<Label>,
}

/// The allergens of everything that touches the product.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Allergens {
    /// Those of the US nine that are in it, in the order of the law.
    pub us: Vec<String>,
    /// Those of the EU fourteen that are in it, in the order of the annex.
    pub eu: Vec<String>,
    /// Ingredients whose allergens are not known.
    pub unknown: Vec<String>,
    /// Ingredients whose allergens stand on the instructor's word, who read them on the pack.
    pub read_on_pack: Vec<String>,
    /// The US nine with the kinds and the ingredients they come from.
    pub us_detail: Vec<Allergen>,
    /// The EU fourteen with the kinds and the ingredients they come from.
    pub eu_detail: Vec<Allergen>,
}

/// One allergen and where it comes from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Allergen {
    /// Its name in the law: `tree nuts`.
    pub name: String,
    /// Its kinds where the law wants them named: `almond`.
    pub kinds: Vec<String>,
    /// The ingredients that bring it.
    pub from: Vec<String>,
}

/// Nutrients, as an estimate.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Nutrition {
    /// In one piece, less the loss; `null` for a base dough.
    pub per_piece: Option<Nutrients>,
    /// The same in words, rounded by 21 CFR 101.9(c).
    pub per_piece_rounded: Option<NutrientWords>,
    /// In 100 g as baked, or before baking where the bake loss is not known.
    pub per_100_g: Nutrients,
    /// What the bake drives off, in percent of the weight; `null` where it is not known.
    pub bake_loss_percent: Option<f64>,
    /// Always true: this is no label.
    pub estimate: bool,
}

/// The nutrients that are counted.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct Nutrients {
    /// Energy, kcal.
    pub energy_kcal: f64,
    /// Protein, g.
    pub protein_g: f64,
    /// Fat, g.
    pub fat_g: f64,
    /// Saturated fat, g.
    pub saturated_g: f64,
    /// Carbohydrate, g.
    pub carbohydrate_g: f64,
    /// Sugars, g.
    pub sugars_g: f64,
    /// Fibre, g.
    pub fibre_g: f64,
    /// Sodium, mg.
    pub sodium_mg: f64,
    /// Salt, g: sodium × 2.5.
    pub salt_g: f64,
}

/// The nutrients in words.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct NutrientWords {
    /// Energy: `210 kcal`.
    pub energy: String,
    /// Protein: `4 g`.
    pub protein: String,
    /// Fat: `4.5 g`.
    pub fat: String,
    /// Saturated fat.
    pub saturated: String,
    /// Carbohydrate.
    pub carbohydrate: String,
    /// Sugars.
    pub sugars: String,
    /// Fibre: `under 1 g`.
    pub fibre: String,
    /// Sodium: `150 mg`.
    pub sodium: String,
}

/// What the ingredients cost.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Cost {
    /// ISO 4217 code.
    pub currency: String,
    /// All of it, in the currency's smallest unit, by weight used.
    pub total_minor: i64,
    /// One piece; `null` for a base dough.
    pub per_piece_minor: Option<i64>,
}
