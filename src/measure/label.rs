//! One value in both unit systems, ready to print.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The same value in metric and in US customary units, as words.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Label {
    /// In metric units.
    pub metric: String,
    /// In US customary units.
    pub us: String,
}

impl Label {
    /// A label from its two forms.
    pub fn new(metric: impl Into<String>, us: impl Into<String>) -> Self {
        Self { metric: metric.into(), us: us.into() }
    }

    /// A label that reads the same in both systems.
    pub fn same(text: impl Into<String>) -> Self {
        let metric = text.into();
        Self { us: metric.clone(), metric }
    }

    /// Applies the same change to both forms.
    #[must_use]
    pub fn map(&self, change: impl Fn(&str) -> String) -> Self {
        Self { metric: change(&self.metric), us: change(&self.us) }
    }
}
