//! A recipe as written.

use std::collections::BTreeMap;

use crate::fault::{Place, Placed};
use crate::measure::{Duration, Exact, Length, Mass, Temperature};

use super::{AmountLine, Block, Brace, InWay, Shown, Step, Swap, Untold};

/// One recipe file.
#[derive(Clone, Debug)]
pub struct Recipe {
    /// The file's name without ending, which is its name everywhere.
    pub name: String,
    /// Its title.
    pub title: Placed<String>,
    /// What it is, in a sentence.
    pub summary: String,
    /// What one batch gives.
    pub makes: Option<Placed<Makes>>,
    /// The family of dough, for finding.
    pub family: Option<String>,
    /// The formula's sections in order.
    pub formula: Vec<Section>,
    /// The sections that are preferments, in the order written.
    pub preferments: Vec<Preferment>,
    /// What may be taken in place of what, under a name for all of it.
    pub swaps: Vec<Swap>,
    /// Its ways that have a page and sheets of their own; several at once are joined by ` + `.
    pub own_pages: Vec<Placed<String>>,
    /// What it is a way of; `None` for a recipe as written.
    pub way: Option<InWay>,
    /// The temperature the mixed dough should have.
    pub dough_temperature: Option<Placed<Temperature>>,
    /// Density of the dough without its roll-in fat, g/ml.
    pub dough_density: Option<Exact>,
    /// The part of the dough lost before scaling, 0 to 1.
    pub loss: Exact,
    /// The part of the weight that the bake drives off, 0 to 1; `None` where not said.
    pub bake_loss: Option<Exact>,
    /// Whether hydration counts the water in milk, eggs and butter; the course's way where
    /// not said.
    pub true_hydration: Option<bool>,
    /// How the recipes that it includes stand on its sheets.
    pub included: Included,
    /// The finished piece.
    pub picture: Option<Shown>,
    /// Whether its pictures are printed too.
    pub printed: bool,
    /// Numbers of pieces that its page offers beside the usual batches.
    pub also_for: Vec<Placed<u64>>,
    /// The tin it is baked in.
    pub tin: Option<Placed<Tin>>,
    /// Videos by the name that tickets use.
    pub videos: Vec<Video>,
    /// What its author has yet to settle, in a draft.
    pub unsettled: Vec<Placed<String>>,
    /// Faults the author accepts, with reasons.
    pub accept: Vec<Accept>,
    /// What stands before the first heading.
    pub opening: Vec<Block<Brace>>,
    /// Steps and prose in reading order.
    pub parts: Vec<Part>,
    /// The pictures that stand in the prose.
    pub pictures: Vec<Placed<String>>,
    /// Where the links in the prose lead, as written.
    pub links: Vec<Placed<String>>,
    /// The marks of its texts, by which a translation knows that they have changed: of each
    /// heading by its name, of title, summary and opening by none.
    pub marks: BTreeMap<String, String>,
    /// What of it has no translation, in an edition in a further language.
    pub untold: Option<Untold>,
    /// What of it could not be read.
    pub unread: Unread,
    /// The file.
    pub place: Place,
}

/// How the recipes that a recipe includes stand on its sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Included {
    /// With their formulas and steps, so that the sheet is complete by itself.
    Whole,
    /// By their names in the list of ingredients alone.
    ByName,
}

/// What of a recipe could not be read. A fault says why; nothing that would only follow
/// from it is said.
#[derive(Clone, Debug, Default)]
pub struct Unread {
    /// What it makes.
    pub makes: bool,
    /// Lines of the formula, in small letters; empty where not even their words are known.
    pub lines: Vec<String>,
    /// A video that the head names.
    pub videos: bool,
    /// A ticket, or a line of one.
    pub method: bool,
}

/// What one batch gives.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Makes {
    /// So many pieces of something: `22 crescents`.
    Pieces {
        /// How many, at least 1.
        count: u64,
        /// What they are called, as written.
        word: String,
        /// The fewest and the most, where a range is written; its middle is the count.
        range: Option<[u64; 2]>,
    },
    /// So many tins of one size, filled alike: `2 x 9 in round`.
    Tins {
        /// How many, at least 1.
        count: u64,
        /// The tin.
        tin: Tin,
    },
    /// A weight of dough for other recipes: `1150 g`.
    Weight(Mass),
}

/// One section of the formula.
#[derive(Clone, Debug)]
pub struct Section {
    /// Its name: `dough`, `roll-in`.
    pub name: Placed<String>,
    /// Its lines in order.
    pub lines: Vec<AmountLine>,
}

/// A section that is fermented before the dough is mixed.
#[derive(Clone, Debug)]
pub struct Preferment {
    /// The section's name.
    pub section: Placed<String>,
    /// The preferment that goes into it, whole.
    pub from: Option<Placed<String>>,
}

/// A tin by its inner sizes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Tin {
    /// A round tin: diameter, and depth if given.
    Round(Length, Option<Length>),
    /// A tin with corners: length, width, and depth if given.
    Square(Length, Length, Option<Length>),
    /// A ring tin: diameter, diameter of the hole, and depth if given.
    Ring(Length, Length, Option<Length>),
}

/// A video to watch.
#[derive(Clone, Debug)]
pub struct Video {
    /// The name that tickets use.
    pub name: String,
    /// Its address.
    pub address: Placed<String>,
    /// The second of it to begin at.
    pub from: Option<u64>,
    /// How long it lasts.
    pub length: Option<Placed<Duration>>,
    /// A picture from it.
    pub still: Option<Shown>,
}

/// A fault that the author accepts.
#[derive(Clone, Debug)]
pub struct Accept {
    /// The fault's name.
    pub fault: Placed<String>,
    /// Why.
    pub reason: String,
}

/// What stands under one heading.
#[derive(Clone, Debug)]
pub enum Part {
    /// A heading with a ticket.
    Step(Box<Step>),
    /// A heading without one.
    Prose {
        /// The heading made into a name: `what-can-go-wrong`.
        name: String,
        /// The heading.
        title: Placed<String>,
        /// The text.
        content: Vec<Block<Brace>>,
    },
}

impl Makes {
    /// How many pieces or tins; `None` where a weight is made.
    pub fn count(&self) -> Option<u64> {
        match self {
            Self::Pieces { count, .. } | Self::Tins { count, .. } => Some(*count),
            Self::Weight(_) => None,
        }
    }
}

/// A recipe's page offers at most so many sizes of one way.
pub const MOST_SIZES: usize = 6;

impl Recipe {
    /// The key of the mark of another way to do a step.
    pub fn mark_key(step: &str, way: &str) -> String {
        format!("{step} {}", way.to_lowercase())
    }

    /// The language of its title and summary, where it is not the edition's.
    pub fn title_in(&self) -> Option<&str> {
        let untold = self.untold.as_ref().filter(|untold| untold.head)?;
        Some(&untold.language)
    }

    /// The numbers of pieces that its page offers beside the size as written, and those that
    /// its author asks for beyond.
    pub fn offered(&self) -> (Vec<&Placed<u64>>, Vec<&Placed<u64>>) {
        let written = self.makes.as_ref().and_then(|makes| match makes.value {
            Makes::Pieces { count, .. } | Makes::Tins { count, .. } => Some(count),
            Makes::Weight(_) => None,
        });
        let mut asked: Vec<&Placed<u64>> = Vec::new();
        for size in &self.also_for {
            let known = |it: &&Placed<u64>| it.value == size.value;
            if Some(size.value) != written && !asked.iter().any(known) {
                asked.push(size);
            }
        }
        let beyond = asked.split_off(asked.len().min(MOST_SIZES - 1));
        (asked, beyond)
    }

    /// Whether no formula was written: lines that could not be read are one.
    pub fn has_no_formula(&self) -> bool {
        self.unread.lines.is_empty()
            && self.formula.iter().all(|section| section.lines.is_empty())
    }

    /// The steps in the order written.
    pub fn steps(&self) -> impl Iterator<Item = &Step> {
        self.parts.iter().filter_map(|part| match part {
            Part::Step(step) => Some(step.as_ref()),
            Part::Prose { .. } => None,
        })
    }

    /// Every picture that the file asks for, by its name below the media folder.
    pub fn pictures(&self) -> impl Iterator<Item = &Placed<String>> {
        let stills = self.videos.iter().filter_map(|video| video.still.as_ref());
        let shown = self.steps().flat_map(|step| &step.pictures).map(|one| &one.shown);
        let shown = self.picture.iter().chain(stills).chain(shown);
        self.pictures.iter().chain(shown.map(|shown| &shown.file))
    }

    /// Every block of prose in the file.
    pub fn blocks(&self) -> impl Iterator<Item = &Block<Brace>> {
        self.opening.iter().chain(self.parts.iter().flat_map(|part| match part {
            Part::Step(step) => step.prose.iter(),
            Part::Prose { content, .. } => content.iter(),
        }))
    }
}

impl Part {
    /// Its heading made into a name.
    pub fn name(&self) -> &str {
        match self {
            Self::Step(step) => &step.name,
            Self::Prose { name, .. } => name,
        }
    }
}
