//! `tourier order`: the order list and the weigh-out of a class.

use crate::lists::{order_csv, order_text};
use crate::said;
use crate::sheet::making;

use super::args::{OrderArgs, OrderForm};
use super::{Call, Done, Stop, json, nowhere, say, sound, stem, timetable};

/// Prints the order.
pub(super) fn run(call: &Call, options: &OrderArgs) -> Done {
    let (edition, words) = sound(call)?;
    let class = timetable::class(&edition, &options.class).ok_or_else(|| {
        let known = edition.content.classes.iter().map(|class| class.name.as_str());
        nowhere(said!("kind-class"), stem(&options.class), &known.collect::<Vec<_>>())
    })?;
    let order = making::order(class, edition.book(), &words).map_err(|reason| {
        Stop::Use(said!("order-cannot", name = class.name, reason = reason.said()))
    })?;
    let text = match options.form {
        OrderForm::Text => order_text(&order, edition.first_units(), &words),
        OrderForm::Csv => order_csv(&order, &words),
        OrderForm::Json => json(&order)?,
    };
    say(text.as_bytes())
}
