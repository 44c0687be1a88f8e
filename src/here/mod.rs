//! What stands at a place in a text: what may be written there, from whatever is there now,
//! a line half typed or a text that does not read.
//!
//! The keys and what their values hold come from the schemas of `read`, the names from the
//! content as it was worked out last. The text itself is looked at as it is this moment.

mod amount;
mod defined;
mod holds;
mod keys;
mod names;
mod offer;
mod outline;
mod prose;
mod target;
mod told;
mod yaml;

use std::ops::Range;

use crate::edition::Edition;
use crate::fault::Place;
use crate::read::Shape;
use crate::words::Words;

use outline::{Outline, Region};

pub use offer::{Offer, OfferKind};
pub use told::Told;

/// A place in a text as it is this moment.
#[derive(Clone, Copy, Debug)]
pub struct Spot<'a> {
    /// The file's path below the content folder.
    pub file: &'a str,
    /// Its text.
    pub text: &'a str,
    /// The byte that the place is before; one within a letter counts as that letter's first.
    pub at: usize,
}

/// What is known at a spot.
#[derive(Clone, Copy)]
struct Here<'a> {
    spot: Spot<'a>,
    outline: &'a Outline<'a>,
    edition: &'a Edition,
}

/// What may be written at a spot, the likeliest first. `edition` is what the course was when
/// it was worked out last: the names of other texts come from there.
pub fn offers(spot: Spot, edition: &Edition) -> Vec<Offer> {
    let Some(shape) = Shape::of(spot.file) else { return Vec::new() };
    let outline = Outline::of(spot.text, shape);
    let here = Here::new(spot, &outline, edition);
    let offers = match outline.region(here.spot.at) {
        Region::Keys(range) => keys::offers(here, (shape, ""), range),
        Region::Ticket(range) => keys::offers(here, (shape, TICKET), range),
        Region::Fence(range) => vec![Offer::whole(OfferKind::Row, "~~~ticket", range)],
        Region::Prose(range) => prose::offers(here, range),
        Region::Heading => Vec::new(),
    };
    offers.into_iter().map(|offer| offer.at(here.spot.at)).collect()
}

/// What the word at a spot is, worked out: `edition` was made of this very text.
pub fn told(spot: Spot, edition: &Edition, words: &Words) -> Option<Told> {
    let shape = Shape::of(spot.file)?;
    let outline = Outline::of(spot.text, shape);
    told::told(Here::new(spot, &outline, edition), shape, words)
}

/// Where what the word at a spot names is defined: `edition` was made of this very text.
pub fn defined(spot: Spot, edition: &Edition) -> Option<Place> {
    let shape = Shape::of(spot.file)?;
    let outline = Outline::of(spot.text, shape);
    defined::place(Here::new(spot, &outline, edition), shape)
}

/// Where the schema of a text has the lines of its tickets.
const TICKET: &str = "/$defs/ticket";

/// The first byte of the letter that byte `at` belongs to.
fn floor(text: &str, at: usize) -> usize {
    let at = at.min(text.len());
    (0..=at).rev().find(|at| text.is_char_boundary(*at)).unwrap_or(0)
}

impl<'a> Here<'a> {
    fn new(spot: Spot<'a>, outline: &'a Outline<'a>, edition: &'a Edition) -> Self {
        let spot = Spot { at: floor(spot.text, spot.at), ..spot };
        Self { spot, outline, edition }
    }

    /// The words of a stretch of the text.
    fn words(&self, range: &Range<usize>) -> &'a str {
        self.spot.text.get(range.clone()).unwrap_or("")
    }

    /// What of a stretch stands before the spot.
    fn typed(&self, range: &Range<usize>) -> &'a str {
        self.words(&(range.start..self.spot.at.clamp(range.start, range.end)))
    }

    /// The stretch without the blanks around it; one of blanks alone ends up at the spot.
    fn trimmed(&self, range: Range<usize>) -> Range<usize> {
        let words = self.words(&range);
        let lead = words.len() - words.trim_start().len();
        let start = (range.start + lead).min(self.spot.at.max(range.start));
        let end = (range.start + words.trim_end().len()).max(start);
        start..end.max(self.spot.at.min(range.end))
    }
}
