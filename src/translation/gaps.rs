//! What a translation lacks, and what of it has fallen behind its original.

use std::collections::BTreeSet;

use crate::fault::{Fault, Place, Placed, nearest};
use crate::model::{
    AlsoIn, Alternative, Amount, Content, Ingredient, Makes, Part, Recipe, Step,
    Technique, TranslatedPart, TranslatedText, Translation,
};
use crate::pantry::Pantry;
use crate::said;
use crate::statement::Lines;

use super::compare::{self, Prose, Standing, cautions, other_numbers, standing};
use super::{Names, Phrases, in_language, phrases};

/// Everything that the translations of a course lack, in the order of its languages.
pub fn gaps(content: &Content) -> Vec<Fault> {
    let wanted = || content.course.iter().flat_map(|course| &course.also_in);
    let named = |language: &str| wanted().any(|it| it.language.value == language);
    let known = content.course.is_some();
    let all = content.translations.iter();
    let unnamed = all.filter(|it| known && !named(&it.language));
    let mut faults: Vec<Fault> = unnamed.map(not_named).collect();
    for wanted in wanted() {
        let all = content.translations.iter();
        let mut own = all.filter(|it| it.language == wanted.language.value);
        let none = Translation::default();
        let translation = own.next().unwrap_or(&none);
        let words = phrases(translation);
        let (pantry, _) = Pantry::of(&in_language(content, translation));
        let first = content.course.as_ref().map_or("en", |course| &course.language);
        let names = Names { first, words: &words, pantry: &pantry };
        let gaps = Gaps { content, translation, wanted, names, faults: &mut faults };
        gaps.find(&words);
    }
    faults
}

/// The caution about a folder of a language that the course does not name.
fn not_named(translation: &Translation) -> Fault {
    let language = &translation.language;
    let place = Place::file(&format!("in/{language}"));
    Fault::caution("unread-file", &place, said!("translation-not-named", language))
        .help(said!("translation-not-named-help", language))
}

struct Gaps<'a> {
    content: &'a Content,
    translation: &'a Translation,
    wanted: &'a AlsoIn,
    names: Names<'a>,
    faults: &'a mut Vec<Fault>,
}

/// A text and its translation, with the marks of both.
struct Pair<'a> {
    original: Prose<'a>,
    mark: &'a str,
    translated: Prose<'a>,
    written: Option<&'a Placed<String>>,
    /// Where the translation stands.
    place: &'a Place,
}

impl Gaps<'_> {
    fn find(mut self, words: &Phrases) {
        self.files();
        for text in &self.translation.recipes {
            match self.content.recipe(&text.name) {
                Some(recipe) => self.recipe(recipe, text),
                None => self.unknown_file("recipes", text),
            }
        }
        for text in &self.translation.techniques {
            let mut all = self.content.techniques.iter();
            match all.find(|technique| technique.name == text.name) {
                Some(technique) => self.technique(technique, text),
                None => self.unknown_file("techniques", text),
            }
        }
        self.glossary();
        self.words(words);
    }

    /// Whether a recipe or technique is to be had in the language.
    fn is_wanted(&self, name: &str) -> bool {
        let only = &self.wanted.only;
        only.is_empty() || only.iter().any(|it| it.value == name)
    }

    /// Recipes and techniques that have no file.
    fn files(&mut self) {
        let there =
            |all: &[TranslatedText], name: &str| all.iter().any(|it| it.name == name);
        let written = self.content.recipes.iter().filter(|it| it.way.is_none());
        let recipes = written.map(|it| ("recipes", &it.name));
        let techniques =
            self.content.techniques.iter().map(|it| ("techniques", &it.name));
        let all: Vec<_> = recipes.chain(techniques).collect();
        for name in &self.wanted.only {
            let known = self.content.is_unread(&name.value)
                || all.iter().any(|(_, it)| **it == name.value);
            if !known {
                let known = all.iter().map(|(_, it)| it.as_str());
                let near = nearest(&name.value, known).unwrap_or("").to_owned();
                self.faults.push(unknown(name, &near));
            }
        }
        let missing = all.iter().filter(|(folder, name)| {
            let translated = match *folder {
                "recipes" => there(&self.translation.recipes, name),
                _ => there(&self.translation.techniques, name),
            };
            !translated && self.is_wanted(name) && !self.content.is_unread(name)
        });
        let language = &self.wanted.language;
        let missing: Vec<String> = missing
            .map(|(folder, name)| format!("in/{}/{folder}/{name}.md", language.value))
            .collect();
        if let Some(first) = missing.first() {
            let message = said!("translation-no-file", files = missing);
            self.faults.push(
                Fault::caution("translation-missing", &language.place, message)
                    .help(said!("translation-no-file-help", first)),
            );
        }
    }

    fn unknown_file(&mut self, folder: &str, text: &TranslatedText) {
        if self.content.is_unread(&text.name) {
            return;
        }
        let name = Placed::new(text.name.clone(), text.title.place.clone());
        let recipes = self.content.recipes.iter().map(|it| it.name.as_str());
        let techniques = self.content.techniques.iter().map(|it| it.name.as_str());
        let near = match folder {
            "recipes" => nearest(&text.name, recipes),
            _ => nearest(&text.name, techniques),
        };
        self.faults.push(unknown(&name, near.unwrap_or("")));
    }

    fn recipe(&mut self, recipe: &Recipe, text: &TranslatedText) {
        let mark = |name: &str| recipe.marks.get(name).map_or("", String::as_str);
        self.pair(&Pair {
            original: compare::of_head(&recipe.title, &recipe.summary, &recipe.opening),
            mark: mark(""),
            translated: compare::of_text(text),
            written: text.mark.as_ref(),
            place: &text.title.place,
        });
        let of_part = |part: &Part| match part {
            Part::Step(step) => (step.name.clone(), step.title.value.clone()),
            Part::Prose { name, title, .. } => (name.clone(), title.value.clone()),
        };
        let known: Vec<(String, String)> = recipe.parts.iter().map(of_part).collect();
        for found in &text.parts {
            let part = recipe.parts.iter().find(|part| of_part(part).0 == found.of.value);
            let Some(part) = part else {
                let names = known.iter().map(|(name, _)| name.as_str());
                let near = nearest(&found.of.value, names).unwrap_or("").to_owned();
                self.faults.push(unknown(&found.of, &near));
                continue;
            };
            let original = match part {
                Part::Step(step) => compare::of_step(step),
                Part::Prose { title, content, .. } => {
                    compare::of_heading(&title.value, content)
                }
            };
            self.pair(&Pair {
                original,
                mark: mark(&found.of.value),
                translated: compare::of_part(found),
                written: found.mark.as_ref(),
                place: &found.title.place,
            });
            if let Part::Step(step) = part {
                self.others(recipe, step, found);
            }
        }
        self.missing_parts(recipe, text, &known);
    }

    /// The other ways to do a step, those that have words of their own.
    fn others(&mut self, recipe: &Recipe, step: &Step, found: &TranslatedPart) {
        let own =
            |it: &&Alternative| !it.step.prose.is_empty() || it.step.until.is_some();
        let written: Vec<&Alternative> = step.others.iter().filter(own).collect();
        let mark = |name: &str| {
            let key = Recipe::mark_key(&step.name, name);
            recipe.marks.get(&key).map_or("", String::as_str)
        };
        for other in &found.others {
            let Some(own) = written.iter().find(|it| it.name.says(&other.of.value))
            else {
                let known = written.iter().map(|it| it.name.value.as_str());
                let near = nearest(&other.of.value, known).unwrap_or("").to_owned();
                self.faults.push(unknown(&other.of, &near));
                continue;
            };
            let (name, step) = (&own.name.value, &own.step);
            self.pair(&Pair {
                original: compare::of_other(name, step.until.as_deref(), &step.prose),
                mark: mark(name),
                translated: compare::of_other(name, other.until.as_deref(), &other.prose),
                written: other.mark.as_ref(),
                place: &other.of.place,
            });
        }
        let told = |name: &str| found.others.iter().any(|it| it.of.says(name));
        for own in written.iter().filter(|it| !told(&it.name.value)) {
            let name = &own.name.value;
            let titles = vec![format!("{} ({name})", step.title.value)];
            let block = format!("~~~ticket {name}\nmark: {}\n~~~\n", mark(name));
            let message = said!("translation-no-part", titles);
            self.faults.push(
                Fault::caution("translation-missing", &found.title.place, message)
                    .help(said!("translation-no-part-help", blocks = Lines(&block))),
            );
        }
    }

    /// Parts of a recipe, by their names and titles, that are not translated.
    fn missing_parts(
        &mut self,
        recipe: &Recipe,
        text: &TranslatedText,
        known: &[(String, String)],
    ) {
        let mark = |name: &str| recipe.marks.get(name).map_or("", String::as_str);
        let missing: Vec<&(String, String)> = known
            .iter()
            .filter(|(name, _)| !text.parts.iter().any(|it| it.of.value == *name))
            .collect();
        if missing.is_empty() {
            return;
        }
        let titles: Vec<&str> = missing.iter().map(|(_, title)| title.as_str()).collect();
        let block = |(name, title): &&(String, String)| {
            format!(
                "## {title}\n~~~ticket\ntranslates: {name}\nmark: {}\n~~~\n",
                mark(name)
            )
        };
        let blocks: String = missing.iter().map(block).collect();
        let message = said!("translation-no-part", titles);
        self.faults.push(
            Fault::caution("translation-missing", &text.title.place, message)
                .help(said!("translation-no-part-help", blocks = Lines(&blocks))),
        );
    }

    fn technique(&mut self, technique: &Technique, text: &TranslatedText) {
        self.pair(&Pair {
            original: compare::of_head(
                &technique.title,
                &technique.summary,
                &technique.content,
            ),
            mark: &technique.mark,
            translated: compare::of_text(text),
            written: text.mark.as_ref(),
            place: &text.title.place,
        });
    }

    fn glossary(&mut self) {
        let translation = self.translation;
        for entry in &translation.glossary {
            let mut all = self.content.glossary.iter();
            let original =
                all.find(|it| it.word.value.eq_ignore_ascii_case(&entry.of.value));
            let Some(original) = original else {
                let known = self.content.glossary.iter().map(|it| it.word.value.as_str());
                let near = nearest(&entry.of.value, known).unwrap_or("").to_owned();
                self.faults.push(unknown(&entry.of, &near));
                continue;
            };
            self.pair(&Pair {
                original: compare::of_heading(&original.word.value, &original.meaning),
                mark: &original.mark,
                translated: compare::of_heading(&entry.word.value, &entry.meaning),
                written: entry.mark.as_ref(),
                place: &entry.of.place,
            });
        }
    }

    /// One text that has fallen behind its original, or says other numbers.
    fn pair(&mut self, pair: &Pair) {
        let Pair { original, mark, translated, written, place } = pair;
        let title = translated.titles[0];
        let names = self.names;
        match standing(original, mark, translated, *written, names) {
            Standing::Apart => {
                let numbers: Vec<String> =
                    other_numbers(original, translated, names).into_iter().collect();
                let message = said!("translation-numbers", title, numbers);
                self.faults.push(
                    Fault::caution("translation-numbers", place, message)
                        .help(said!("translation-numbers-help")),
                );
            }
            Standing::Behind => {
                let place = written.map_or(*place, |written| &written.place);
                let message = said!("translation-behind", title);
                self.faults.push(
                    Fault::caution("translation-behind", place, message)
                        .help(said!("translation-behind-help", mark = *mark)),
                );
            }
            Standing::Current => {
                let there = cautions(original.blocks).len();
                let here = cautions(translated.blocks).len();
                if here < there {
                    let message = said!("translation-caution", title, there, here);
                    self.faults.push(
                        Fault::caution("translation-caution", place, message)
                            .help(said!("translation-caution-help")),
                    );
                }
            }
        }
    }

    /// Short texts that `words.yaml` does not have.
    fn words(&mut self, words: &Phrases) {
        let mut texts: Vec<String> = Vec::new();
        if let Some(course) = &self.content.course {
            texts.extend([course.title.clone(), course.summary.clone()]);
            texts.extend(course.cautions.iter().cloned());
            for lesson in &course.lessons {
                let mut named = lesson.recipes.iter();
                if named.any(|name| self.is_wanted(&name.value)) {
                    texts.extend([lesson.title.clone(), lesson.summary.clone()]);
                }
            }
        }
        if self.wanted.only.is_empty() {
            let news = self.content.course.iter().flat_map(|course| &course.news);
            texts.extend(news.map(|news| news.text.clone()));
            for class in &self.content.classes {
                texts.push(class.title.value.clone());
                texts.extend(class.bring.iter().cloned());
            }
        }
        let recipes = self.content.recipes.iter().filter(|it| it.way.is_none());
        for recipe in recipes.filter(|recipe| self.is_wanted(&recipe.name)) {
            if self.translation.recipes.iter().any(|text| text.name == recipe.name) {
                texts.extend(short_texts(recipe, self.names.pantry));
            }
        }
        let mut seen = BTreeSet::new();
        let missing: Vec<String> = texts
            .into_iter()
            .map(|text| text.trim().to_owned())
            .filter(|text| !text.is_empty() && !words.contains_key(text))
            .filter(|text| seen.insert(text.clone()))
            .collect();
        if missing.is_empty() {
            return;
        }
        let block: String =
            missing.iter().map(|text| format!("{}:\n", key(text))).collect();
        let language = &self.wanted.language;
        let file = format!("in/{}/words.yaml", language.value);
        let message = said!("untranslated-words", count = missing.len());
        self.faults.push(
            Fault::caution("untranslated-words", &language.place, message).help(said!(
                "untranslated-words-help",
                file,
                block = Lines(&block)
            )),
        );
    }
}

/// A text as a key of YAML.
fn key(text: &str) -> String {
    let plain = text.chars().all(|sign| sign.is_alphanumeric() || sign == ' ');
    let word = text.starts_with(char::is_alphabetic);
    if plain && word { text.to_owned() } else { format!("{text:?}") }
}

/// The author's short texts that a recipe's pages and sheets show beside its prose.
fn short_texts(recipe: &Recipe, pantry: &Pantry) -> Vec<String> {
    let mut texts = Vec::new();
    if let Some(Makes::Pieces { word, .. }) = recipe.makes.as_ref().map(|it| &it.value) {
        texts.push(word.clone());
    }
    texts.extend(recipe.family.clone());
    texts.extend(recipe.videos.iter().map(|video| video.name.clone()));
    texts.extend(recipe.picture.iter().map(|shown| shown.alt.clone()));
    for section in &recipe.formula {
        texts.push(section.name.value.clone());
        for line in &section.lines {
            texts.extend(line.hedge.clone());
            texts.extend(line.note.clone());
            if let Amount::Free(words) = &line.amount {
                texts.push(words.clone());
            }
            if let Ingredient::Pantry(name) = &line.ingredient.value {
                let found = pantry.find(name).or(pantry.find_pieces(name).map(|it| it.0));
                if found.is_none_or(|item| item.shown.is_none()) {
                    texts.push(name.clone());
                }
            }
        }
    }
    for step in recipe.steps() {
        texts
            .extend(step.at_place.iter().filter_map(|place| place.value.written.clone()));
        let proof = step.proof.iter().filter_map(|phase| phase.place.as_ref());
        let hold = step.hold.iter().filter_map(|hold| hold.value.at_place.as_ref());
        let thaw = step.hold.iter().filter_map(|hold| hold.value.thaw.as_ref());
        let places = proof.chain(hold).chain(thaw.map(|thaw| &thaw.place));
        texts.extend(places.filter_map(|place| place.written.clone()));
        texts.extend(step.kit.iter().filter_map(|used| used.written.clone()));
        texts.extend(step.part.iter().map(|part| part.value.clone()));
        texts.extend(step.cool.iter().map(|what| what.value.clone()));
        texts.extend(step.pictures.iter().map(|one| one.shown.alt.clone()));
    }
    texts
}

/// The fault of a translation of nothing.
fn unknown(name: &Placed<String>, near: &str) -> Fault {
    let message = said!("translation-unknown", name = name.value);
    let near = Some(near).filter(|near| !near.is_empty());
    Fault::error("translation-unknown", &name.place, message).meant(
        &name.value,
        near,
        || said!("translation-unknown-help"),
    )
}
