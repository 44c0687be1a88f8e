//! A course in a second language: the content as it was read, with the prose of its
//! translation in place of the original's. Every number stays where it was, so both
//! editions are worked out from one.

mod compare;
mod gaps;
mod numbers;

use std::collections::BTreeMap;

use crate::model::{
    Block, Brace, Class, Content, Course, Entry, InWay, Inline, Live, Part, Recipe, Step,
    Technique, TranslatedPart, TranslatedText, Translation, Untold,
};
use crate::pantry::Pantry;

use compare::{Standing, standing};
pub use gaps::gaps;

/// Short texts as they are written, and what they are in the second language.
pub type Phrases = BTreeMap<String, String>;

/// The short texts of a translation.
pub fn phrases(translation: &Translation) -> Phrases {
    let pairs = translation.words.iter();
    pairs.map(|[of, to]| (of.value.trim().to_owned(), to.value.clone())).collect()
}

/// What the prose of a translation is held against.
#[derive(Clone, Copy)]
struct Names<'a> {
    /// The language of the original.
    first: &'a str,
    words: &'a Phrases,
    pantry: &'a Pantry,
}

impl Names<'_> {
    /// What a name in braces stands for, in whichever of the languages it is written.
    fn meant(&self, name: &str) -> String {
        let own = self.words.iter().find(|(_, to)| *to == name);
        let name = own.map_or(name, |(of, _)| of);
        self.pantry.find(name).map_or_else(|| name.to_lowercase(), |it| it.name.clone())
    }
}

/// The content in the language of one of its translations.
pub fn in_language(content: &Content, translation: &Translation) -> Content {
    let words = phrases(translation);
    let course = content.course.as_ref().map(|it| course(it, translation, &words));
    let mut own = Content { course, ..content.clone() };
    let (pantry, _) = Pantry::of(&own);
    let first = content.course.as_ref().map_or("en", |course| &course.language);
    let names = Names { first, words: &words, pantry: &pantry };
    let of = |all: &'_ [TranslatedText], name: &str| {
        all.iter().position(|text| text.name == name)
    };
    for one in own.recipes.iter_mut().chain(&mut own.ways) {
        // A recipe in one of its ways is told as the recipe is.
        let name = one.way.as_ref().map_or(&one.name, |way| &way.of);
        let text = of(&translation.recipes, name);
        *one = recipe(one, text.map(|at| &translation.recipes[at]), names);
    }
    for one in &mut own.techniques {
        let text = of(&translation.techniques, &one.name);
        *one = match text.map(|at| &translation.techniques[at]) {
            Some(text) => technique(one, text, names),
            None => Technique {
                content: foreign(&one.content, names),
                title_in: Some(names.first.to_owned()),
                ..one.clone()
            },
        };
    }
    own.classes = own.classes.iter().map(|it| class(it, &words)).collect();
    own.glossary = own.glossary.iter().map(|it| entry(it, translation, names)).collect();
    own
}

/// A short text in the second language; as it stands where there is none.
fn said(text: &str, words: &Phrases) -> String {
    words.get(text.trim()).cloned().unwrap_or_else(|| text.to_owned())
}

fn course(course: &Course, translation: &Translation, words: &Phrases) -> Course {
    let mut own = course.clone();
    own.first_language = Some(course.language.clone());
    own.language.clone_from(&translation.language);
    own.title = said(&own.title, words);
    own.summary = said(&own.summary, words);
    own.school = own.school.map(|text| said(&text, words));
    own.edition = own.edition.map(|text| said(&text, words));
    own.address = own.address.map(|site| format!("{site}{}/", translation.language));
    own.since = None;
    // What is the instructor's alone is in the first language.
    own.papers_on_site = false;
    for lesson in &mut own.lessons {
        lesson.title = said(&lesson.title, words);
        lesson.summary = said(&lesson.summary, words);
    }
    for caution in &mut own.cautions {
        *caution = said(caution, words);
    }
    for news in &mut own.news {
        if let Some(text) = words.get(news.text.trim()) {
            let text = vec![Inline::Text { text: text.clone() }];
            news.content = vec![Block::Paragraph { content: text }];
        }
    }
    own
}

fn class(class: &Class, words: &Phrases) -> Class {
    let mut own = class.clone();
    own.title.value = said(&own.title.value, words);
    own.bring = own.bring.iter().map(|text| said(text, words)).collect();
    own
}

fn recipe(original: &Recipe, text: Option<&TranslatedText>, names: Names) -> Recipe {
    let mut own = original.clone();
    own.opening = foreign(&original.opening, names);
    for part in &mut own.parts {
        match part {
            Part::Step(step) => {
                step.prose = foreign(&step.prose, names);
                for other in &mut step.others {
                    other.step.prose = foreign(&other.step.prose, names);
                }
            }
            Part::Prose { content, .. } => *content = foreign(content, names),
        }
    }
    let names_of = |part: &Part| part.name().to_owned();
    let mut untold = Untold {
        language: names.first.to_owned(),
        head: true,
        parts: original.parts.iter().map(names_of).collect(),
    };
    let Some(text) = text else {
        return Recipe { untold: Some(untold), ..own };
    };
    untold.head = !translate_head(&mut own, original, text, names);
    for (part, written) in own.parts.iter_mut().zip(&original.parts) {
        let found = text.parts.iter().find(|it| it.of.value == written.name());
        let Some(found) = found else { continue };
        let told = match written {
            Part::Step(step) => done_so(step, found),
            Part::Prose { .. } => Some((written.name().to_owned(), found.clone())),
        };
        let Some((key, found)) = told else { continue };
        let mark = original.marks.get(&key).map_or("", String::as_str);
        if let Part::Step(step) = part {
            translate_others(step, original, &found, names);
        }
        if translate_part(part, written, mark, &found, names) {
            untold.parts.remove(written.name());
        }
    }
    let all_told = !untold.head && untold.parts.is_empty();
    own.untold = (!all_told).then_some(untold);
    own
}

/// What translates a step, and by which of the recipe's marks that is known: where it is done with
/// other kit, the words for that and the step's own cautions; nothing where they are not there.
fn done_so(step: &Step, found: &TranslatedPart) -> Option<(String, TranslatedPart)> {
    let Some(name) = &step.done_with else {
        return Some((step.name.clone(), found.clone()));
    };
    let other = found.others.iter().find(|it| it.of.says(name))?;
    let mut own = TranslatedPart { mark: other.mark.clone(), ..found.clone() };
    if !other.prose.is_empty() {
        let cautions = compare::cautions(&found.prose).into_iter().cloned();
        own.prose = other.prose.iter().cloned().chain(cautions).collect();
    }
    // Without it the original's stands: the step's own tells when something else is done.
    own.until.clone_from(&other.until);
    Some((Recipe::mark_key(&step.name, name), own))
}

/// Gives the other ways to do a step their words in the second language, where they have some.
fn translate_others(
    step: &mut Step,
    original: &Recipe,
    found: &TranslatedPart,
    names: Names,
) {
    let steps = original.steps().find(|it| it.name == step.name);
    for other in &mut step.others {
        let name = &other.name.value;
        let mut all = steps.iter().flat_map(|step| &step.others);
        let written = all.find(|it| it.name.says(name));
        let it = found.others.iter().find(|it| it.of.says(name));
        let (Some(written), Some(it)) = (written, it) else { continue };
        let key = Recipe::mark_key(&step.name, name);
        let mark = original.marks.get(&key).map_or("", String::as_str);
        let own = &written.step;
        let first = compare::of_other(name, own.until.as_deref(), &own.prose);
        let told = compare::of_other(name, it.until.as_deref(), &it.prose);
        let stands = standing(&first, mark, &told, it.mark.as_ref(), names);
        translate_doing(&mut other.step, own, (&it.until, &it.prose), stands, names);
    }
}

/// Whether title, summary and opening are told in the second language now.
fn translate_head(
    own: &mut Recipe,
    original: &Recipe,
    text: &TranslatedText,
    names: Names,
) -> bool {
    let head = compare::of_head(&original.title, &original.summary, &original.opening);
    let translated = compare::of_text(text);
    let mark = original.marks.get("").map_or("", String::as_str);
    let stands = standing(&head, mark, &translated, text.mark.as_ref(), names);
    if stands == Standing::Apart {
        return false;
    }
    own.opening = blocks(&original.opening, &text.opening, stands, names);
    own.title.value = match &original.way {
        None => text.title.value.clone(),
        Some(way) => format!("{} ({})", text.title.value, called(way, names)),
    };
    own.summary.clone_from(&text.summary);
    true
}

/// Whether a step or a piece of prose is told in the second language now.
fn translate_part(
    part: &mut Part,
    written: &Part,
    mark: &str,
    found: &TranslatedPart,
    names: Names,
) -> bool {
    match (part, written) {
        (Part::Step(step), Part::Step(written)) => {
            translate_step(step, written, mark, found, names)
        }
        (Part::Prose { title, content, .. }, Part::Prose { content: written, .. }) => {
            let own = compare::of_heading(&title.value, written);
            let it = compare::of_part(found);
            let stands = standing(&own, mark, &it, found.mark.as_ref(), names);
            if stands == Standing::Apart {
                return false;
            }
            *content = blocks(written, &found.prose, stands, names);
            title.value.clone_from(&found.title.value);
            true
        }
        (Part::Step(_), Part::Prose { .. }) | (Part::Prose { .. }, Part::Step(_)) => {
            false
        }
    }
}

/// What the ways of a recipe are called: by the author's phrase for each, else what is left
/// out as the language says it.
fn called(way: &InWay, names: Names) -> String {
    let thing = |thing: &str| {
        let phrase = names.words.get(thing).cloned();
        let item = || names.pantry.find(thing).and_then(|item| item.shown.clone());
        phrase.or_else(item).unwrap_or_else(|| thing.to_owned())
    };
    let one = |name: &String| {
        let phrase = names.words.get(name).cloned();
        let left_out = || {
            let left_out = name.strip_prefix("without ")?;
            names.pantry.lexicon().without(&thing(left_out))
        };
        phrase.or_else(left_out).unwrap_or_else(|| name.clone())
    };
    way.names.iter().map(one).collect::<Vec<_>>().join(", ")
}

/// Whether it is told in the second language now.
fn translate_step(
    step: &mut Step,
    written: &Step,
    mark: &str,
    found: &TranslatedPart,
    names: Names,
) -> bool {
    let own = compare::of_step(written);
    let it = compare::of_part(found);
    let stands = standing(&own, mark, &it, found.mark.as_ref(), names);
    let is_told =
        translate_doing(step, written, (&found.until, &found.prose), stands, names);
    if is_told {
        step.title.value.clone_from(&found.title.value);
    }
    is_told
}

/// Whether what is done, and how to tell that it is done, are told in the second language now.
fn translate_doing(
    step: &mut Step,
    written: &Step,
    (until, prose): (&Option<Vec<Inline<Brace>>>, &[Block<Brace>]),
    stands: Standing,
    names: Names,
) -> bool {
    if stands == Standing::Apart {
        return false;
    }
    // What tells that something is done may keep people safe: it is said as it stands now.
    if stands == Standing::Current && until.is_some() {
        step.until.clone_from(until);
    }
    step.prose = blocks(&written.prose, prose, stands, names);
    true
}

fn technique(original: &Technique, text: &TranslatedText, names: Names) -> Technique {
    let mut own = original.clone();
    own.content = foreign(&original.content, names);
    own.title_in = Some(names.first.to_owned());
    let head = compare::of_head(&original.title, &original.summary, &original.content);
    let it = compare::of_text(text);
    let stands = standing(&head, &original.mark, &it, text.mark.as_ref(), names);
    if stands != Standing::Apart {
        own.title.value.clone_from(&text.title.value);
        own.summary.clone_from(&text.summary);
        own.content = blocks(&original.content, &text.opening, stands, names);
        own.title_in = None;
    }
    own
}

fn entry(original: &Entry, translation: &Translation, names: Names) -> Entry {
    let found = translation.glossary.iter();
    let mut found =
        found.filter(|it| it.of.value.eq_ignore_ascii_case(&original.word.value));
    let meaning = foreign(&original.meaning, names);
    let untold = Entry { meaning, ..original.clone() };
    let Some(it) = found.next() else { return untold };
    let own = compare::of_heading(&original.word.value, &original.meaning);
    let told = compare::of_heading(&it.word.value, &it.meaning);
    let stands = standing(&own, &original.mark, &told, it.mark.as_ref(), names);
    if stands == Standing::Apart {
        return untold;
    }
    Entry {
        word: it.word.clone(),
        also: it.also.clone(),
        meaning: blocks(&original.meaning, &it.meaning, stands, names),
        ..original.clone()
    }
}

/// Prose in the second language. A caution that has fallen behind, or is missing, stands
/// there in the first language.
fn blocks(
    original: &[Block<Brace>],
    translated: &[Block<Brace>],
    stands: Standing,
    names: Names,
) -> Vec<Block<Brace>> {
    let mut own: Vec<Block<Brace>> =
        translated.iter().map(|block| named(block, names)).collect();
    let cautions = compare::cautions(original);
    let of_first = |block: &Block<Brace>| in_first(block, names);
    match stands {
        Standing::Current if compare::cautions(&own).len() >= cautions.len() => {}
        Standing::Current => own.extend(cautions.into_iter().map(of_first)),
        Standing::Behind | Standing::Apart => {
            own = compare::without_cautions(&own);
            own.extend(cautions.into_iter().map(of_first));
        }
    }
    own
}

/// Prose that stands in the first language, marked as such.
fn foreign(blocks: &[Block<Brace>], names: Names) -> Vec<Block<Brace>> {
    blocks.iter().map(|block| in_first(block, names)).collect()
}

/// A block in the first language; of a caution all but the word that says so.
fn in_first(block: &Block<Brace>, names: Names) -> Block<Brace> {
    let language = names.first.to_owned();
    match block {
        Block::Caution { content } => {
            let content = vec![Block::Foreign { language, content: content.clone() }];
            Block::Caution { content }
        }
        Block::Level { level, content } => {
            let content = vec![Block::Foreign { language, content: content.clone() }];
            Block::Level { level: *level, content }
        }
        Block::Paragraph { .. }
        | Block::Heading { .. }
        | Block::List { .. }
        | Block::Quote { .. }
        | Block::Foreign { .. }
        | Block::Code { .. }
        | Block::Table { .. }
        | Block::Rule => Block::Foreign { language, content: vec![block.clone()] },
    }
}

/// Prose with its names in braces as the formula has them.
fn named(block: &Block<Brace>, names: Names) -> Block<Brace> {
    block.with_live(&|live| {
        let Live::Named { name, .. } = live else { return None };
        let own = names.words.iter().find(|(_, to)| *to == name).map(|(of, _)| of);
        let known = own.or_else(|| names.pantry.find(name).map(|item| &item.name))?;
        let mut live = live.clone();
        if let Live::Named { name, .. } = &mut live {
            name.clone_from(known);
        }
        Some(live)
    })
}
