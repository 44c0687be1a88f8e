//! What is bought for a class, and what is weighed out.

use serde::Serialize;

/// The order list of a class, or of recipes that one person makes together. Money stands in the currency's smallest unit.
#[derive(Clone, Debug, Serialize)]
pub struct Order {
    /// Version of this form.
    pub order: u32,
    /// The class's file name, or those of the recipes.
    pub class: String,
    /// Its title, or theirs.
    pub title: String,
    /// Bakers of a class; `null` at home.
    pub bakers: Option<u32>,
    /// Pieces made in all.
    pub pieces: u64,
    /// The spare, in percent.
    pub spare_percent: f64,
    /// What to buy, by name.
    pub lines: Vec<OrderLine>,
    /// ISO 4217 code.
    pub currency: String,
    /// The packs to buy, all together; without those of unknown price; `null` where no price
    /// is known.
    pub total_minor: Option<i64>,
    /// The total over the bakers, rounded; `null` where no price is known, and at home.
    pub per_student_minor: Option<i64>,
    /// The total over the pieces, rounded; `null` where nothing is made in pieces.
    pub per_piece_minor: Option<i64>,
    /// What has no price or pack.
    pub unpriced: Vec<String>,
    /// The weigh-out: one tub list for each kind of batch.
    pub tubs: Vec<Tub>,
}

/// One ingredient of the order.
#[derive(Clone, Debug, Serialize)]
pub struct OrderLine {
    /// The ingredient.
    pub ingredient: String,
    /// Needed in all, with the spare, in grams.
    pub need_g: f64,
    /// The same in words; empty where no weight is known.
    pub need: String,
    /// What is bought by the piece, as eggs are: so many whole ones hold what is needed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub count: Option<u64>,
    /// Of that on the shelf, in grams.
    pub shelf_g: f64,
    /// One pack, in grams.
    pub pack_g: Option<f64>,
    /// Packs to buy; `null` where no pack is known.
    pub packs: Option<u64>,
    /// Left over afterwards, in grams.
    pub left_g: Option<f64>,
    /// The packs' price.
    pub cost_minor: Option<i64>,
    /// Whether it is only for dusting or to taste, so that no weight is known.
    pub as_needed: bool,
    /// The weights in US units.
    pub us: UsWeights,
}

/// The weights of one line in US units, in words.
#[derive(Clone, Debug, Default, Serialize)]
pub struct UsWeights {
    /// Needed in all; empty where no weight is known.
    pub need: String,
    /// One pack.
    pub pack: Option<String>,
    /// Left over afterwards.
    pub left: Option<String>,
}

/// The order in words, in one unit system.
#[derive(Clone, Debug, Serialize)]
pub struct OrderSheet {
    /// Ingredient, need, packs, left over, cost.
    pub lines: Vec<[String; 5]>,
    /// What is needed of each, in the other units; empty where no weight is known.
    pub others: Vec<String>,
    /// The total; `null` where no price is known.
    pub total: Option<String>,
    /// Each student's share.
    pub per_student: Option<String>,
    /// A piece's share.
    pub per_piece: Option<String>,
    /// What has no price.
    pub unpriced: Vec<String>,
}

/// Who gets a tub.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ForWhom {
    /// Every group.
    Group,
    /// Every baker.
    Baker,
    /// The instructor, who demonstrates.
    Demonstration,
    /// Whoever makes it at home.
    Home,
}

impl ForWhom {
    /// All of them, in the order in which tubs are weighed out.
    pub const ALL: [Self; 4] =
        [Self::Group, Self::Baker, Self::Demonstration, Self::Home];
}

/// The tubs of one kind of batch.
#[derive(Clone, Debug, Serialize)]
pub struct Tub {
    /// The recipe.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// Who gets one.
    pub each: ForWhom,
    /// How many such sets are weighed out.
    pub sets: u64,
    /// What goes in, in the order of use.
    pub lines: Vec<TubLine>,
}

/// One weighing.
#[derive(Clone, Debug, Serialize)]
pub struct TubLine {
    /// The recipe it goes into: another one's for included doughs.
    pub recipe: String,
    /// The step that uses it first.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// The ingredient.
    pub ingredient: String,
    /// Grams; `null` where no weight is known.
    pub grams: Option<f64>,
    /// The weight in words.
    pub metric: String,
    /// The same in US units.
    pub us: String,
}
