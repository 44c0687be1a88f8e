//! What those in a class are called, alone and together.

use crate::model::Class;
use crate::plan::{PoolName, Who};
use crate::words::Words;

use super::super::kit::kit_words;

/// How many bakers work together.
#[derive(Clone, Copy)]
enum Crew {
    Baker,
    Pair,
    Three,
    Four,
    Group,
}

impl Crew {
    fn of(together: u32) -> Self {
        match together {
            0 | 1 => Self::Baker,
            2 => Self::Pair,
            3 => Self::Three,
            4 => Self::Four,
            5.. => Self::Group,
        }
    }

    /// Its name in the keys of words.
    fn key(self) -> &'static str {
        match self {
            Self::Baker => "baker",
            Self::Pair => "pair",
            Self::Three => "three",
            Self::Four => "four",
            Self::Group => "group",
        }
    }
}

/// What calls those in a class, or the one at home, by name.
#[derive(Clone, Copy)]
pub(super) struct Names<'a> {
    words: &'a Words,
    crew: Crew,
}

impl<'a> Names<'a> {
    /// The names where so many work together.
    pub(super) fn new(together: u32, words: &'a Words) -> Self {
        Self { words, crew: Crew::of(together) }
    }

    /// What those who work together are called: `pair`.
    pub(super) fn crew(&self) -> String {
        self.words.get(&format!("crew-{}", self.crew.key())).to_owned()
    }

    /// So many groups: `7 pairs`.
    pub(super) fn crews(&self, count: u32) -> String {
        let number = count.to_string();
        let key = format!("crews-{}", self.crew.key());
        self.words.fill(&key, &[("count", &number)])
    }

    /// `pair 3`, `pair 3, baker 2`, `instructor`.
    pub(super) fn one(&self, who: Who) -> String {
        match who {
            Who::Instructor => self.words.get("who-instructor").to_owned(),
            Who::Helper => self.words.get("who-helper").to_owned(),
            Who::Home => self.words.get("who-home").to_owned(),
            Who::Group(group) => self.groups(&[group]),
            Who::Baker(group, baker) => {
                let (group, number) = (self.groups(&[group]), (baker + 1).to_string());
                self.words.fill("who-member", &[("who", &group), ("number", &number)])
            }
        }
    }

    /// `pairs 1–3, 5, instructor`: groups that follow each other are drawn together.
    pub(super) fn all(&self, who: &[Who]) -> String {
        let mut parts: Vec<String> = Vec::new();
        let mut groups: Vec<u32> = Vec::new();
        for one in who {
            if let Who::Group(group) = one {
                groups.push(*group);
                continue;
            }
            if !groups.is_empty() {
                parts.push(self.groups(&std::mem::take(&mut groups)));
            }
            parts.push(self.one(*one));
        }
        if !groups.is_empty() {
            parts.push(self.groups(&groups));
        }
        self.words.list(&parts)
    }

    /// What a pool is called.
    pub(super) fn pool(&self, pool: &PoolName) -> String {
        match pool {
            PoolName::Instructor => self.one(Who::Instructor),
            PoolName::Staff => self.words.get("who-staff").to_owned(),
            PoolName::Group(group) => self.one(Who::Group(*group)),
            PoolName::Kit(kit) => kit_words(kit, self.words),
            PoolName::Home => self.words.get("hands-home").to_owned(),
        }
    }

    fn groups(&self, groups: &[u32]) -> String {
        let key = format!("who-{}", self.crew.key());
        let numbers = self.words.list(&self.runs(groups));
        let count = groups.len().to_string();
        self.words.fill(&key, &[("count", &count), ("numbers", &numbers)])
    }

    /// `1–3`, `5`.
    fn runs(&self, groups: &[u32]) -> Vec<String> {
        let mut numbers: Vec<u32> = groups.iter().map(|group| group + 1).collect();
        numbers.sort_unstable();
        let mut runs: Vec<(u32, u32)> = Vec::new();
        for number in numbers {
            match runs.last_mut() {
                Some(last) if last.1 + 1 == number => last.1 = number,
                _ => runs.push((number, number)),
            }
        }
        let mut parts = Vec::new();
        for (from, to) in runs {
            match to - from {
                0 => parts.push(from.to_string()),
                1 => parts.extend([from.to_string(), to.to_string()]),
                _ => parts.push(self.words.range(&from.to_string(), &to.to_string())),
            }
        }
        parts
    }
}

/// What one of those who make a station's portions is called: `pair 3`, `instructor`.
pub fn who(class: &Class, who: Who, words: &Words) -> String {
    Names::new(class.together, words).one(who)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::theme::Theme;

    #[test]
    fn names_are_drawn_together() {
        let theme = Theme::built_in();
        let words = crate::read::words_in(&theme, "en");
        let words = words.expect("the words");
        let pairs = Names::new(2, &words);
        let groups = [0, 1, 2, 4].map(Who::Group);
        let who: Vec<Who> = groups.into_iter().chain([Who::Instructor]).collect();
        assert_eq!(pairs.all(&who), "pairs 1–3, 5, instructor");
        assert_eq!(pairs.all(&[Who::Group(1)]), "pair 2");
        assert_eq!(pairs.all(&[Who::Group(0), Who::Group(1)]), "pairs 1, 2");
        assert_eq!(pairs.all(&[Who::Home]), "you");
        assert_eq!(pairs.one(Who::Baker(2, 1)), "pair 3, baker 2");
        assert_eq!(Names::new(9, &words).crews(1), "1 group");
        assert_eq!(Names::new(4, &words).crews(3), "3 fours");
    }
}
