//! The order in words, in the units that a course prefers.

use serde::Serialize;

use crate::sheet::Units;

use super::order::{Order, OrderLine, grams};
use super::table::money;

/// The order in words.
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

/// The order with every weight in `units`.
pub(super) fn priced(order: &Order, units: Units) -> OrderSheet {
    let with = |minor: i64| format!("{} {}", money(minor), order.currency);
    let other = match units {
        Units::Metric => Units::Us,
        Units::Us => Units::Metric,
    };
    let needs = |line: &OrderLine| match line.as_needed {
        true => String::new(),
        false => need(line, other),
    };
    OrderSheet {
        lines: order.lines.iter().map(|line| words(line, units)).collect(),
        others: order.lines.iter().map(needs).collect(),
        total: order.total_minor.map(with),
        per_student: order.per_student_minor.map(with),
        per_piece: order.per_piece_minor.map(with),
        unpriced: order.unpriced.clone(),
    }
}

/// Ingredient, need, packs, left over and cost of a line.
pub(super) fn words(line: &OrderLine, units: Units) -> [String; 5] {
    let (pack, left) = match units {
        Units::Metric => (line.pack_g.map(grams), line.left_g.map(grams)),
        Units::Us => (line.us.pack.clone(), line.us.left.clone()),
    };
    let packs = line.packs.zip(pack).map(|(packs, pack)| format!("{packs} × {pack}"));
    let need = if line.as_needed { "as needed".to_owned() } else { need(line, units) };
    let cost = line.cost_minor.map(money).unwrap_or_default();
    let [packs, left] = [packs, left].map(Option::unwrap_or_default);
    [line.ingredient.clone(), need, packs, left, cost]
}

fn need(line: &OrderLine, units: Units) -> String {
    match units {
        Units::Metric => line.need.clone(),
        Units::Us => line.us.need.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lists::order::UsWeights;

    fn flour() -> OrderLine {
        OrderLine {
            ingredient: "bread flour".into(),
            need_g: 2675.0,
            need: "2675 g".into(),
            shelf_g: 0.0,
            pack_g: Some(1500.0),
            packs: Some(2),
            left_g: Some(325.0),
            cost_minor: Some(390),
            as_needed: false,
            us: UsWeights {
                need: "5 lb 14¼ oz".into(),
                pack: Some("3 lb 5 oz".into()),
                left: Some("11½ oz".into()),
            },
        }
    }

    #[test]
    fn a_line_reads_in_either_units() {
        let metric = words(&flour(), Units::Metric);
        assert_eq!(metric, ["bread flour", "2675 g", "2 × 1500 g", "325 g", "3.90"]);
        let us = words(&flour(), Units::Us);
        let weights = ["5 lb 14¼ oz", "2 × 3 lb 5 oz", "11½ oz"];
        assert_eq!(us[1..4], weights);
    }

    #[test]
    fn what_has_no_weight_is_bought_as_needed() {
        let us = UsWeights::default();
        let line =
            OrderLine { as_needed: true, packs: None, left_g: None, us, ..flour() };
        assert_eq!(words(&line, Units::Us)[1..4], ["as needed", "", ""]);
    }
}
