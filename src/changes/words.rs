//! Differences in words, and prose without what is live in it.

use serde::Serialize;
use serde_json::Value;

use crate::measure::Label;
use crate::words::Words;

/// The word for `key` with labels filled in, in both unit systems.
pub(super) fn fill(words: &Words, key: &str, values: &[(&str, &Label)]) -> Label {
    let side = |of: fn(&Label) -> &str| {
        let values: Vec<(&str, &str)> =
            values.iter().map(|(name, label)| (*name, of(label))).collect();
        words.fill(key, &values)
    };
    Label::new(side(|label| &label.metric), side(|label| &label.us))
}

/// The word for `key` with the old and the new value; `None` where they read the same in
/// both systems. Where rounding makes one system's two values the same, the other
/// system's are shown there: `375 °F, was 375 °F` would tell nobody anything.
pub(super) fn was(
    words: &Words,
    key: &str,
    (old, new): (&Label, &Label),
    more: &[(&str, &Label)],
) -> Option<Label> {
    let (metric, us) = (old.metric != new.metric, old.us != new.us);
    let seen = |label: &Label| match (metric, us) {
        (true, false) => Label::same(label.metric.clone()),
        (false, true) => Label::same(label.us.clone()),
        _ => label.clone(),
    };
    let (old, new) = (seen(old), seen(new));
    let mut values = vec![("old", &old), ("new", &new)];
    values.extend(more);
    (metric || us).then(|| fill(words, key, &values))
}

/// Text as data, without the values that follow the formula: those have their own place.
pub(super) fn bare(prose: &impl Serialize) -> Value {
    // Plain data with text for keys: serialising it cannot fail.
    let mut value = serde_json::to_value(prose).unwrap_or_default();
    empty_live(&mut value);
    value
}

fn empty_live(value: &mut Value) {
    match value {
        Value::Object(fields) => {
            if fields.get("kind").is_some_and(|kind| kind == "live") {
                fields.remove("value");
            }
            fields.iter_mut().for_each(|(_, field)| empty_live(field));
        }
        Value::Array(items) => items.iter_mut().for_each(empty_live),
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
    }
}
