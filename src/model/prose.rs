//! Prose: what is said to the student, as a small tree that no painter can misread.
//!
//! `L` is what a live value is: a reference still to be looked up in the model, a label
//! in both unit systems once computed.

use schemars::JsonSchema;
use serde::Serialize;

use crate::fault::Placed;
use crate::measure::{Length, Size, Temperature};

use super::Share;

/// A reference in braces: `{190 °C}`, `{half of the butter}`. Boxed, so that plain text, which
/// is most of prose, takes no room for one.
pub type Brace = Box<Placed<Live>>;

/// What a reference in braces means.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Live {
    /// A temperature, which follows the units.
    Temperature(Temperature),
    /// A rectangle; follows the units, and the scale where it is a sheet of the recipe.
    Size(Size),
    /// A length, which follows the units.
    Length(Length),
    /// `{pieces}`: what the recipe makes.
    Pieces,
    /// A share of a section or ingredient.
    Named {
        /// How much of it.
        share: Share,
        /// Its name.
        name: String,
        /// Whether an article stands before the brace: `the {butter}`.
        article: bool,
    },
    /// The same, of what this way of the recipe leaves out: its name.
    LeftOut(String),
}

/// Who a stretch of prose is for, where it is not for all.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// Those who make such a thing for the first time.
    Beginners,
    /// Those who have made it before.
    Practised,
}

impl Level {
    /// Every level.
    pub const ALL: [Self; 2] = [Self::Beginners, Self::Practised];

    /// Its name in the format.
    pub fn name(self) -> &'static str {
        match self {
            Self::Beginners => "beginners",
            Self::Practised => "practised",
        }
    }
}

/// A block of prose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Block<L> {
    /// A paragraph.
    Paragraph {
        /// Its text.
        content: Vec<Inline<L>>,
    },
    /// A heading below the step headings.
    Heading {
        /// Its text.
        content: Vec<Inline<L>>,
    },
    /// A list.
    List {
        /// The first number of a numbered list.
        start: Option<u64>,
        /// Whether its items are things to do that a student ticks; not there where they
        /// are none.
        #[serde(skip_serializing_if = "std::ops::Not::not")]
        #[schemars(default)]
        ticks: bool,
        /// Its items.
        items: Vec<Vec<Block<L>>>,
    },
    /// A quotation.
    Quote {
        /// What is quoted.
        content: Vec<Block<L>>,
    },
    /// A caution that must stand out.
    Caution {
        /// What is cautioned against.
        content: Vec<Block<L>>,
    },
    /// What is said to some of those who bake.
    Level {
        /// To whom.
        level: Level,
        /// What is said to them.
        content: Vec<Block<L>>,
    },
    /// Text in another language than the rest: what a translation lacks.
    Foreign {
        /// The language's tag.
        language: String,
        /// The text.
        content: Vec<Block<L>>,
    },
    /// Text set as it is typed.
    Code {
        /// The text.
        text: String,
    },
    /// A table: the first row is its head.
    Table {
        /// Rows of cells.
        rows: Vec<Vec<Vec<Inline<L>>>>,
    },
    /// A line across.
    Rule,
}

/// A stretch of text within a block.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Inline<L> {
    /// Plain text.
    Text {
        /// The text.
        text: String,
    },
    /// A live value that follows scale and units.
    Live {
        /// The value.
        value: L,
    },
    /// Stressed text.
    Emphasis {
        /// Its content.
        content: Vec<Inline<L>>,
    },
    /// Strongly stressed text.
    Strong {
        /// Its content.
        content: Vec<Inline<L>>,
    },
    /// Text set as it is typed.
    Code {
        /// The text.
        text: String,
    },
    /// A link.
    Link {
        /// Where to, as written in the model; in the sheet a page name such as
        /// `techniques/letter-turn`, or an `http(s)` or `mailto` address.
        to: String,
        /// Its content.
        content: Vec<Inline<L>>,
    },
    /// A picture from the media folder.
    Picture {
        /// The file's name below the media folder.
        file: String,
        /// What it shows, in words.
        alt: String,
    },
    /// A new line within a paragraph.
    Break,
}

impl<L: Clone> Block<L> {
    /// A text without what is said to other levels than these.
    #[must_use]
    pub fn for_levels(blocks: &[Self], levels: &[Level]) -> Vec<Self> {
        let inner = |content: &[Self]| Self::for_levels(content, levels);
        let kept = blocks.iter().filter_map(|block| match block {
            Self::Level { level, content } => levels
                .contains(level)
                .then(|| Self::Level { level: *level, content: inner(content) }),
            Self::List { start, ticks, items } => {
                let items = items.iter().map(|item| inner(item)).collect();
                Some(Self::List { start: *start, ticks: *ticks, items })
            }
            Self::Quote { content } => Some(Self::Quote { content: inner(content) }),
            Self::Foreign { language, content } => {
                let (language, content) = (language.clone(), inner(content));
                (!content.is_empty()).then_some(Self::Foreign { language, content })
            }
            Self::Paragraph { .. }
            | Self::Heading { .. }
            | Self::Caution { .. }
            | Self::Code { .. }
            | Self::Table { .. }
            | Self::Rule => Some(block.clone()),
        });
        kept.collect()
    }
}

impl<L> Block<L> {
    /// Every piece of inline text below this block, in reading order.
    pub fn visit<'a>(&'a self, see: &mut dyn FnMut(&'a Inline<L>)) {
        match self {
            Self::Paragraph { content } | Self::Heading { content } => {
                content.iter().for_each(|inline| inline.visit(see));
            }
            Self::List { items, .. } => {
                items.iter().flatten().for_each(|block| block.visit(see));
            }
            Self::Quote { content }
            | Self::Caution { content }
            | Self::Level { content, .. }
            | Self::Foreign { content, .. } => {
                content.iter().for_each(|block| block.visit(see));
            }
            Self::Table { rows } => {
                rows.iter().flatten().flatten().for_each(|inline| inline.visit(see));
            }
            Self::Code { .. } | Self::Rule => {}
        }
    }

    /// The same block with every link and live value changed.
    #[must_use]
    pub fn map<M>(
        &self,
        change: &mut dyn FnMut(&Inline<L>) -> Option<Inline<M>>,
    ) -> Block<M> {
        let blocks =
            |content: &[Self],
             change: &mut dyn FnMut(&Inline<L>) -> Option<Inline<M>>| {
                content.iter().map(|block| block.map(change)).collect()
            };
        match self {
            Self::Paragraph { content } => {
                Block::Paragraph { content: map_all(content, change) }
            }
            Self::Heading { content } => {
                Block::Heading { content: map_all(content, change) }
            }
            Self::List { start, ticks, items } => Block::List {
                start: *start,
                ticks: *ticks,
                items: items.iter().map(|item| blocks(item, change)).collect(),
            },
            Self::Quote { content } => Block::Quote { content: blocks(content, change) },
            Self::Caution { content } => {
                Block::Caution { content: blocks(content, change) }
            }
            Self::Level { level, content } => {
                Block::Level { level: *level, content: blocks(content, change) }
            }
            Self::Foreign { language, content } => Block::Foreign {
                language: language.clone(),
                content: blocks(content, change),
            },
            Self::Code { text } => Block::Code { text: text.clone() },
            Self::Table { rows } => Block::Table {
                rows: rows
                    .iter()
                    .map(|row| row.iter().map(|cell| map_all(cell, change)).collect())
                    .collect(),
            },
            Self::Rule => Block::Rule,
        }
    }
}

impl Block<Brace> {
    /// The same block with other live values, as `change` has them; `None` keeps one.
    #[must_use]
    pub fn with_live(&self, change: &dyn Fn(&Live) -> Option<Live>) -> Self {
        self.map(&mut |inline| match inline {
            Inline::Live { value } => {
                let new = change(&value.value).unwrap_or_else(|| value.value.clone());
                let value = Box::new(Placed::new(new, value.place.clone()));
                Some(Inline::Live { value })
            }
            Inline::Text { .. }
            | Inline::Emphasis { .. }
            | Inline::Strong { .. }
            | Inline::Code { .. }
            | Inline::Link { .. }
            | Inline::Picture { .. }
            | Inline::Break => None,
        })
    }
}

impl<L> Inline<L> {
    fn visit<'a>(&'a self, see: &mut dyn FnMut(&'a Self)) {
        see(self);
        match self {
            Self::Emphasis { content }
            | Self::Strong { content }
            | Self::Link { content, .. } => {
                content.iter().for_each(|inline| inline.visit(see));
            }
            Self::Text { .. }
            | Self::Live { .. }
            | Self::Code { .. }
            | Self::Picture { .. }
            | Self::Break => {}
        }
    }

    fn map<M>(
        &self,
        change: &mut dyn FnMut(&Self) -> Option<Inline<M>>,
    ) -> Option<Inline<M>> {
        Some(match self {
            Self::Text { text } => Inline::Text { text: text.clone() },
            Self::Code { text } => Inline::Code { text: text.clone() },
            Self::Picture { file, alt } => change(self).unwrap_or_else(|| {
                Inline::Picture { file: file.clone(), alt: alt.clone() }
            }),
            Self::Break => Inline::Break,
            Self::Emphasis { content } => {
                Inline::Emphasis { content: map_all(content, change) }
            }
            Self::Strong { content } => {
                Inline::Strong { content: map_all(content, change) }
            }
            Self::Link { to, content } => {
                let content = map_all(content, change);
                match change(self) {
                    Some(Inline::Link { to, .. }) => Inline::Link { to, content },
                    _ => Inline::Link { to: to.clone(), content },
                }
            }
            Self::Live { .. } => return change(self),
        })
    }
}

fn map_all<L, M>(
    content: &[Inline<L>],
    change: &mut dyn FnMut(&Inline<L>) -> Option<Inline<M>>,
) -> Vec<Inline<M>> {
    content.iter().filter_map(|inline| inline.map(change)).collect()
}
