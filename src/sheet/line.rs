//! The formula's lines and sums, water, allergens, nutrients and cost.

use std::borrow::Cow;
use std::collections::BTreeMap;

use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

use crate::measure::Label;

use super::Units;

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
    /// The US weight as it stands in the formula's column, where ounces are in decimals if
    /// those of one line are.
    pub us_column: String,
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

/// The allergens of everything that touches the product. As facts each list stands under the
/// key of its law (`eu`), and with kinds and ingredients under the same with `_detail`.
#[derive(Clone, Debug)]
pub struct Allergens {
    /// What each law wants declared: the US and the EU list, and those that the course asks
    /// for.
    pub lists: Vec<AllergenList>,
    /// Ingredients whose allergens are not known.
    pub unknown: Vec<String>,
    /// Ingredients whose allergens stand on the instructor's word, who read them on the pack.
    pub read_on_pack: Vec<String>,
}

/// What one law wants declared.
#[derive(Clone, Debug)]
pub struct AllergenList {
    /// The law's key: `eu`.
    pub law: String,
    /// What is in it, with the kinds and the ingredients they come from, in the order of the
    /// law.
    pub found: Vec<Allergen>,
}

impl Allergens {
    /// What a law wants declared, by its key.
    pub fn by(&self, law: &str) -> &[Allergen] {
        let list = self.lists.iter().find(|list| list.law == law);
        list.map_or(&[], |list| &list.found)
    }

    /// The lists that are shown: those that the course asks for; without such the EU and the
    /// US list, the one of the first units first.
    pub fn shown<'a>(&'a self, asked: &[String], first: Units) -> Vec<&'a AllergenList> {
        let usual = match first {
            Units::Metric => ["eu", "us"],
            Units::Us => ["us", "eu"],
        };
        let of = |law: &str| self.lists.iter().find(|list| list.law == law);
        if asked.is_empty() {
            return usual.into_iter().filter_map(of).collect();
        }
        asked.iter().filter_map(|law| of(law)).collect()
    }
}

impl Serialize for Allergens {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        let mut map = to.serialize_map(None)?;
        for list in &self.lists {
            let names: Vec<&str> = list.found.iter().map(|it| it.name.as_str()).collect();
            map.serialize_entry(&list.law, &names)?;
        }
        map.serialize_entry("unknown", &self.unknown)?;
        map.serialize_entry("read_on_pack", &self.read_on_pack)?;
        for list in &self.lists {
            map.serialize_entry(&format!("{}_detail", list.law), &list.found)?;
        }
        map.end()
    }
}

/// The allergens as facts have them.
#[derive(JsonSchema)]
#[schemars(rename = "Allergens")]
#[allow(dead_code, reason = "only its schema is asked for")]
struct AllergenFacts {
    /// Ingredients whose allergens are not known.
    unknown: Vec<String>,
    /// Ingredients whose allergens stand on the instructor's word, who read them on the pack.
    read_on_pack: Vec<String>,
    /// By the key of each law, `us`, `eu`: the names of those that are in it, in the order of
    /// the law. By the same with `_detail`: the kinds and the ingredients they come from.
    #[schemars(flatten)]
    lists: BTreeMap<String, Vec<NameOrDetail>>,
}

#[derive(JsonSchema)]
#[schemars(untagged)]
#[allow(dead_code, reason = "only its schema is asked for")]
enum NameOrDetail {
    Name(String),
    Detail(Allergen),
}

impl JsonSchema for Allergens {
    fn schema_name() -> Cow<'static, str> {
        AllergenFacts::schema_name()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        AllergenFacts::json_schema(generator)
    }
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
