//! `tourier order`: the order list and the weigh-out of a class.

use crate::lists::{first_units, order, order_csv, order_text};

use super::args::{Args, OrderArgs, OrderForm};
use super::{Done, Stop, json, say, sound, timetable};

/// Prints the order.
pub(super) fn run(args: &Args, options: &OrderArgs) -> Done {
    let edition = sound(args)?;
    let class = timetable::class(&edition, &options.class).ok_or_else(|| {
        let known = edition.content.classes.iter().map(|class| class.name.as_str());
        let known: Vec<&str> = known.collect();
        Stop::Use(format!(
            "there is no class `{}`; there are: {}",
            options.class,
            known.join(", ")
        ))
    })?;
    let order = order(class, edition.book()).map_err(|reason| {
        Stop::Use(format!("`{}` cannot be ordered: {reason}", class.name))
    })?;
    let text = match options.form {
        OrderForm::Text => order_text(&order, first_units(edition.book())),
        OrderForm::Csv => order_csv(&order),
        OrderForm::Json => json(&order)?,
    };
    say(text.as_bytes())
}
