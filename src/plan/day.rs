//! What is said of an evening while it runs: `pairs 1-3: second turn; pair 4 late 10`.
//!
//! A step's name may be its heading, its name, or the beginning of either; where two recipes
//! have it, the recipe stands before it: `crescents/cut`.

use super::class::{ClassDraft, Unit, Who};

/// One thing that is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// Of whom.
    pub of: Of,
    /// What.
    pub what: What,
}

/// Of whom, or of what, something is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Of {
    /// Everybody who bakes.
    All,
    /// Groups by their numbers from 0.
    Groups(Vec<u32>),
    /// Who teaches.
    Instructor,
    /// So many of a kind of kit.
    Kit(String, u32),
}

/// What is said. Times are minutes since midnight; `None` for now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// A step, as it is written, is done.
    Done(String, Option<i32>),
    /// A step is begun.
    Begun(String, Option<i32>),
    /// Everything is so many minutes late.
    Late(i32),
    /// Nothing is done yet.
    Nothing,
    /// They went home.
    Gone,
    /// It is out of order.
    Out,
}

/// Reads what is said; the part that does not read otherwise.
///
/// # Errors
/// The words that say nothing.
pub fn read_day(text: &str) -> Result<Vec<Said>, String> {
    let parts = text.split([';', '\n']).map(str::trim).filter(|part| !part.is_empty());
    parts.map(|part| one(part).ok_or_else(|| part.to_owned())).collect()
}

fn one(text: &str) -> Option<Said> {
    if let Some(kit) = text.strip_suffix(" out") {
        let (count, name) = match kit.split_once(' ') {
            Some((count, name)) if count.parse::<u32>().is_ok() => {
                (count.parse().ok()?, name)
            }
            _ => (1, kit),
        };
        let kit = crate::model::one_of(name);
        return Some(Said { of: Of::Kit(kit, count), what: What::Out });
    }
    if let Some(who) = text.strip_suffix(" gone") {
        return Some(Said { of: of(who)?, what: What::Gone });
    }
    if let Some((who, minutes)) = text.rsplit_once(" late ") {
        let minutes = minutes.trim_end_matches("min").trim().parse().ok()?;
        let late = (0..24 * 60).contains(&minutes);
        return late.then_some(Said { of: of(who)?, what: What::Late(minutes) });
    }
    if text == "nothing yet" {
        return Some(Said { of: Of::All, what: What::Nothing });
    }
    let (who, step) = text.split_once(':')?;
    let step = step.trim();
    if step.is_empty() {
        return None;
    }
    let of = of(who)?;
    if step == "nothing yet" {
        return Some(Said { of, what: What::Nothing });
    }
    let timed = |word: &str| {
        let (step, at) = step.rsplit_once(word)?;
        let (hour, minute) = at.trim().split_once(':')?;
        let (hour, minute): (i32, i32) = (hour.parse().ok()?, minute.parse().ok()?);
        let sound = (0..24).contains(&hour) && (0..60).contains(&minute);
        sound.then_some((step.trim().to_owned(), hour * 60 + minute))
    };
    let what = if let Some((step, at)) = timed(" from ") {
        What::Begun(step, Some(at))
    } else if let Some((step, at)) = timed(" at ") {
        What::Done(step, Some(at))
    } else if let Some(step) = step.strip_suffix(" begun") {
        What::Begun(step.trim().to_owned(), None)
    } else {
        What::Done(step.to_owned(), None)
    };
    Some(Said { of, what })
}

/// `all`, `instructor`, `pairs 1-3, 5`, `pair 4`.
fn of(text: &str) -> Option<Of> {
    let text = text.trim();
    match text {
        "all" | "everybody" => return Some(Of::All),
        "instructor" | "demonstration" => return Some(Of::Instructor),
        _ => {}
    }
    let (word, numbers) = text.split_once(' ')?;
    let word = word.trim_end_matches('s');
    if !["pair", "baker", "three", "four", "five", "group"].contains(&word) {
        return None;
    }
    let mut groups = Vec::new();
    for part in numbers.split(',') {
        let (from, to) = part.split_once(['-', '–']).unwrap_or((part, part));
        let (from, to): (u32, u32) = (from.trim().parse().ok()?, to.trim().parse().ok()?);
        if from == 0 || from > to || to > 1000 {
            return None;
        }
        groups.extend(from - 1..to);
    }
    Some(Of::Groups(groups))
}

impl Said {
    /// The highest group that is named, from 0.
    pub fn highest(&self) -> Option<u32> {
        match &self.of {
            Of::Groups(groups) => groups.iter().copied().max(),
            Of::All | Of::Instructor | Of::Kit(..) => None,
        }
    }

    /// Whether it is said of the maker of this batch.
    pub(super) fn is_of(&self, unit: &Unit) -> bool {
        match (&self.of, unit.who) {
            (Of::All, Who::Group(_) | Who::Baker(..)) => true,
            (Of::Instructor, Who::Instructor) => true,
            (Of::Groups(groups), Who::Group(own) | Who::Baker(own, _)) => {
                groups.contains(&own)
            }
            (Of::All | Of::Groups(_), Who::Instructor | Who::Home)
            | (Of::Instructor, Who::Home)
            | (Of::Instructor, Who::Group(_) | Who::Baker(..))
            | (Of::Kit(..), _) => false,
        }
    }
}

/// Why something that was said cannot be taken in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unheard {
    /// No batch of those who are named has such a step; the steps that there are.
    NoStep(String, Vec<String>),
    /// Several have it: how they are told apart.
    Several(String, Vec<String>),
    /// The class has no such groups.
    NoGroup,
    /// The class does not count such kit, or has less of it.
    NoKit(String),
}

/// A batch and the place of one of its steps.
pub(super) type Spot = (usize, usize);

impl ClassDraft {
    /// The batches of which something is said, and where in each the step is.
    ///
    /// # Errors
    /// Where there is none, or where the words do not tell which.
    pub(super) fn spots(&self, said: &Said, step: &str) -> Result<Vec<Spot>, Unheard> {
        let units: Vec<(usize, &Unit)> =
            self.units.iter().enumerate().filter(|(_, unit)| said.is_of(unit)).collect();
        if units.is_empty() {
            return Err(Unheard::NoGroup);
        }
        let (recipe, name) = match step.split_once('/') {
            Some((recipe, name)) => (Some(plain(recipe)), plain(name)),
            None => (None, plain(step)),
        };
        let mut found: Vec<(Spot, (String, String, String))> = Vec::new();
        for exact in [true, false] {
            for (at, unit) in &units {
                for (place, own) in unit.strand.steps.iter().enumerate() {
                    let of = [plain(&own.recipe), plain(&unit.strand.recipe)];
                    let named = [plain(&own.step), plain(&own.title)];
                    let same = |known: &String| {
                        if exact { *known == name } else { known.starts_with(&name) }
                    };
                    let meant = recipe.as_ref().is_none_or(|recipe| of.contains(recipe));
                    if meant && named.iter().any(same) {
                        let key = (
                            unit.strand.recipe.clone(),
                            own.recipe.clone(),
                            own.step.clone(),
                        );
                        found.push(((*at, place), key));
                    }
                }
            }
            if !found.is_empty() {
                break;
            }
        }
        let mut keys: Vec<_> = found.iter().map(|(_, key)| key.clone()).collect();
        keys.sort();
        keys.dedup();
        match keys.len() {
            0 => {
                let steps = units.iter().flat_map(|(_, unit)| &unit.strand.steps);
                let mut names: Vec<String> = steps.map(|own| own.step.clone()).collect();
                let mut seen = std::collections::BTreeSet::new();
                names.retain(|name| seen.insert(name.clone()));
                Err(Unheard::NoStep(step.to_owned(), names))
            }
            1 => Ok(found.into_iter().map(|(spot, _)| spot).collect()),
            _ => {
                let several = keys.iter().map(|(made, _, step)| format!("{made}/{step}"));
                Err(Unheard::Several(step.to_owned(), several.collect()))
            }
        }
    }
}

/// A name as it is compared: small, with dashes.
fn plain(name: &str) -> String {
    let words =
        name.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
    words.map(str::to_lowercase).collect::<Vec<_>>().join("-")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_is_said() {
        let said = read_day(
            "pairs 1-3, 5: second-turn; pair 4 late 10; instructor: cut at 18:40; \
             all: nothing yet; oven out; 2 mixers out; pair 2 gone; pair 1: bake from 19:05",
        );
        let said = said.expect("readable");
        assert_eq!(said[0].of, Of::Groups(vec![0, 1, 2, 4]));
        assert_eq!(said[1].what, What::Late(10));
        assert_eq!(said[2].what, What::Done("cut".into(), Some(18 * 60 + 40)));
        assert_eq!(said[3], Said { of: Of::All, what: What::Nothing });
        assert_eq!(said[4].of, Of::Kit("oven".into(), 1));
        assert_eq!(said[5].of, Of::Kit("mixer".into(), 2));
        assert_eq!(said[6].what, What::Gone);
        assert_eq!(said[7].what, What::Begun("bake".into(), Some(19 * 60 + 5)));
    }

    #[test]
    fn what_says_nothing_is_named() {
        for text in [
            "pairs: x",
            "pairs 3-1: x",
            "pair 0: x",
            "pair 1:",
            "dogs 1: x",
            "pair 1 late -5",
        ] {
            assert_eq!(read_day(text), Err(text.to_owned()), "{text}");
        }
    }
}
