//! `tourier order`: the order list and the weigh-out of a class, or of recipes made together.

use crate::lists::{order_csv, order_text};
use crate::said;
use crate::sheet::making;

use super::args::{OrderArgs, OrderForm};
use super::together::{Recipes, class_of, names, own_size};
use super::{Call, Done, Stop, json, say, sound};

/// Prints the order.
pub(super) fn run(call: &Call, options: &OrderArgs) -> Done {
    let (mut edition, words) = sound(call)?;
    let names = names(call, &mut edition, &options.name, &options.scaling.with)?;
    let order = match class_of(&edition, &names)? {
        Some(class) => {
            own_size(&options.scaling)?;
            making::order(class, edition.book(), &words).map_err(|reason| {
                let (name, reason) = (&class.name, reason.said());
                Stop::Use(said!("order-cannot", name, reason))
            })?
        }
        None => {
            let recipes = Recipes::new(call, &edition, &names, &options.scaling)?;
            making::order_at_home(recipes.works()?, edition.book(), &words)
        }
    };
    let text = match options.form {
        OrderForm::Text => order_text(&order, edition.first_units(), &words),
        OrderForm::Csv => order_csv(&order, &words),
        OrderForm::Json => json(&order)?,
    };
    say(text.as_bytes())
}
