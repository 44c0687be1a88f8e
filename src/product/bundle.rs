//! Everything that a class hands out, in one: student sheets of what is made, and bench cards
//! for each station with its own amounts, behind a cover that says what to copy how often.

use crate::changes;
use crate::draw::{Figure, figures};
use crate::edition::{Edition, batch_key};
use crate::formula::{Scaling, Unscalable};
use crate::measure::exact;
use crate::media::Medium;
use crate::model::{Class, Recipe};
use crate::paper::{Inner, Job, Printing, SetCover};
use crate::plan::{SizedRecipe, Station, Unclear, Who, stations};
use crate::sheet::{
    CourseSheet, ForWhom, HandoutKind, Level, Paper, Sheet, Tub, Units, making,
};
use crate::words::Words;

/// One recipe at one size, as its handouts are made from it.
pub struct Plate {
    /// The sheet.
    pub sheet: Sheet,
    /// The size's short name where the recipe's page offers it; nothing where it does not.
    pub batch: String,
    /// Its drawings.
    pub figures: Vec<Figure>,
    /// The recipes that stand on its sheets too.
    pub included: Vec<Inner>,
}

impl Plate {
    /// Works a recipe out at a size; what goes into it has sheets of its own.
    ///
    /// # Errors
    /// The reason, where it cannot be scaled so.
    pub fn new(
        edition: &Edition,
        recipe: &Recipe,
        scaling: &Scaling,
        words: &Words,
    ) -> Result<Self, Unscalable> {
        let mut sheet = edition.sheet(recipe, scaling, words)?;
        // The differences are said for one batch.
        if *scaling == Scaling::Batches(exact(1, 1)) {
            sheet.since = changes::since(edition, recipe, words);
        }
        let figures = figures(&sheet, words);
        let batch = batch_key(recipe, sheet.scale.factor).unwrap_or_default();
        Ok(Self { sheet, batch, figures, included: Vec::new() })
    }
}

/// What a bundle is made with.
#[derive(Clone, Copy)]
pub struct Supplies<'a> {
    /// The content.
    pub edition: &'a Edition,
    /// The course.
    pub course: &'a CourseSheet,
    /// The words.
    pub words: &'a Words,
    /// To whom the sheets say more than to all.
    pub levels: &'a [Level],
}

impl<'a> Supplies<'a> {
    /// The handout of a plate.
    pub fn job(self, plate: &'a Plate, how: (HandoutKind, Units, Paper)) -> Job<'a> {
        let (kind, units, paper) = how;
        Job {
            sheet: &plate.sheet,
            course: self.course,
            figures: &plate.figures,
            included: &plate.included,
            media: self.media(),
            words: self.words,
            kind,
            units,
            paper,
            batch_key: &plate.batch,
            levels: self.levels,
            whose: None,
            makers: 1,
        }
    }

    fn media(self) -> &'a [Medium] {
        &self.edition.content.media
    }
}

/// What is made in a class, worked out.
pub struct Bundle<'a> {
    class: &'a Class,
    supplies: Supplies<'a>,
    /// What each station is called, and what it makes.
    stations: Vec<(String, Station)>,
    /// Everything that is made, each size once.
    portions: Vec<SizedRecipe>,
    plates: Vec<Plate>,
}

impl<'a> Bundle<'a> {
    /// Works a class's portions out.
    ///
    /// # Errors
    /// The reason, where a recipe is missing or cannot be scaled so.
    pub fn new(class: &'a Class, supplies: Supplies<'a>) -> Result<Self, Unclear> {
        let Supplies { edition, words, .. } = supplies;
        let stations = stations(class, edition.book())?;
        let portions = portions(&stations);
        let plate = |portion: &SizedRecipe| {
            let recipe = edition.content.recipe(&portion.recipe);
            let recipe = recipe.ok_or(Unclear::NoRecipe)?;
            Ok(Plate::new(edition, recipe, &portion.scaling, words)?)
        };
        let plates = portions.iter().map(plate).collect::<Result<_, Unclear>>()?;
        let called = |it: Station| (making::who(class, it.who, words), it);
        let stations = stations.into_iter().map(called).collect();
        Ok(Self { class, supplies, stations, portions, plates })
    }

    /// The handouts of these kinds in their order, and the cover that says how often each is
    /// printed.
    pub fn jobs(
        &self,
        kinds: &[HandoutKind],
        units: Units,
        paper: Paper,
    ) -> (Vec<Job<'_>>, SetCover) {
        let (mut jobs, mut parts) = (Vec::new(), Vec::new());
        for kind in kinds {
            let how = (*kind, units, paper);
            if *kind == HandoutKind::Bench {
                self.cards(how, (&mut jobs, &mut parts));
            } else {
                self.sheets(how, (&mut jobs, &mut parts));
            }
        }
        (jobs, self.cover(parts))
    }

    /// Whose tub, and what goes in: every group has its own, a demonstration has one.
    pub fn tubs<'t>(&self, tubs: &'t [Tub]) -> Vec<(String, &'t Tub)> {
        let mut found = Vec::new();
        for (at, (called, station)) in self.stations.iter().enumerate() {
            let shown = station.who == Who::Instructor;
            let own = |tub: &&Tub| (tub.each == ForWhom::Demonstration) == shown;
            for tub in tubs.iter().filter(own) {
                let group = u32::try_from(at).unwrap_or(u32::MAX);
                let makers = match tub.each {
                    ForWhom::Baker => self.class.members(group),
                    ForWhom::Group | ForWhom::Demonstration | ForWhom::Home => 1,
                };
                found.extend((0..makers).map(|_| (called.clone(), tub)));
            }
        }
        found
    }

    /// One sheet of each recipe, at the size that most of it is made in, for every baker.
    fn sheets<'s>(
        &'s self,
        how: (HandoutKind, Units, Paper),
        (jobs, parts): (&mut Vec<Job<'s>>, &mut Vec<Printing>),
    ) {
        let words = self.supplies.words;
        let mut seen = Vec::new();
        for (portion, plate) in self.portions.iter().zip(&self.plates) {
            if seen.contains(&&portion.recipe) {
                continue;
            }
            seen.push(&portion.recipe);
            let at = jobs.len();
            jobs.push(self.supplies.job(plate, how));
            let kind = words.get(&format!("handout-{}", how.0.word())).to_owned();
            let title = format!("{kind}: {}", plate.sheet.title);
            let copies = self.class.bakers.value;
            parts.push(Printing { title, first: at, last: at, copies });
        }
    }

    /// The cards of each station, in the order of the stations.
    fn cards<'s>(
        &'s self,
        how: (HandoutKind, Units, Paper),
        (jobs, parts): (&mut Vec<Job<'s>>, &mut Vec<Printing>),
    ) {
        for (who, station) in &self.stations {
            let first = jobs.len();
            for portion in &station.portions {
                let at = self.portions.iter().position(|it| same(it, portion));
                let Some(plate) = at.and_then(|at| self.plates.get(at)) else { continue };
                let (whose, makers) = (Some(who.as_str()), portion.each);
                let card = self.supplies.job(plate, how);
                jobs.push(Job { whose, makers, ..card });
            }
            let words = [("who", who.as_str())];
            let title = self.supplies.words.fill("handout-cards-for", &words);
            parts.push(Printing { title, first, last: jobs.len() - 1, copies: 1 });
        }
    }

    fn cover(&self, parts: Vec<Printing>) -> SetCover {
        let (class, words) = (self.class, self.supplies.words);
        let sessions = class.sessions.iter().map(|session| {
            let (from, to) = (session.value.from, session.value.to);
            let clock = |at: jiff::civil::DateTime| words.clock(at.hour(), at.minute());
            let hours = words.range(&clock(from), &clock(to));
            words.list(&[words.day(from.date()), hours])
        });
        let bakers = class.bakers.value.to_string();
        SetCover {
            title: class.title.value.clone(),
            line: words.fill("handout-set-class", &[("count", &bakers)]),
            lists: vec![(String::new(), sessions.collect())],
            parts,
        }
    }
}

/// Everything that is made, each size once.
fn portions(stations: &[Station]) -> Vec<SizedRecipe> {
    let mut portions: Vec<SizedRecipe> = Vec::new();
    for portion in stations.iter().flat_map(|station| &station.portions) {
        if !portions.iter().any(|known| same(known, portion)) {
            portions.push(portion.clone());
        }
    }
    portions
}

fn same(one: &SizedRecipe, other: &SizedRecipe) -> bool {
    one.recipe == other.recipe && one.scaling == other.scaling
}
