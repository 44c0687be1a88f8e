//! The course in words.

use std::collections::BTreeSet;

use crate::encode::hex;
use crate::fault::Placed;
use crate::model::{BenchNotes, Content, Course, Entry, News, Note, Recipe};
use crate::words::Words;

use super::super::{
    ClassLink, CourseSheet, LessonSheet, Look, NewsSheet, NotesSheet, TradeWord,
};
use super::prose::plain_blocks;

/// The course, its lessons with only the recipes and techniques that exist, and a last
/// lesson without title for what stands in none.
pub fn course(course: &Course, content: &Content, words: &Words) -> CourseSheet {
    CourseSheet {
        title: course.title.clone(),
        school: course.school.clone(),
        instructor: course.instructor.clone(),
        summary: course.summary.clone(),
        language: course.language.clone(),
        edition: course.edition.clone(),
        date: course.date.clone(),
        address: course.address.clone(),
        metric_first: course.metric_first,
        both_units: course.both_units,
        a4_first: course.a4_first,
        currency: course.currency.clone(),
        lessons: lessons(course, content),
        classes: classes(content, words),
        laws: course.laws.iter().map(|law| law.value.clone()).collect(),
        cautions: course.cautions.clone(),
        look: look(course, content),
        news: course.news.iter().map(|it| news(it, words)).collect(),
        glossary: glossary(content, words),
        offline: course.offline,
        papers_on_site: course.papers_on_site,
        others: Vec::new(),
    }
}

/// The notes from the bench in words, those of recipes that have any.
pub fn bench_notes(content: &Content, words: &Words) -> Vec<NotesSheet> {
    let of = |notes: &BenchNotes| {
        let recipe = content.recipe(&notes.recipe);
        let title = recipe.map_or(&notes.recipe, |recipe| &recipe.title.value).clone();
        let said = |note: &Note| [words.date(note.on), note.text.value.clone()];
        let (open, taken): (Vec<_>, Vec<_>) =
            notes.notes.iter().partition(|note| note.taken_up.is_none());
        NotesSheet {
            recipe: notes.recipe.clone(),
            title,
            open: open.into_iter().map(said).collect(),
            taken_up: taken.into_iter().map(said).collect(),
        }
    };
    let any = content.notes.iter().filter(|notes| !notes.notes.is_empty());
    any.map(of).collect()
}

fn classes(content: &Content, words: &Words) -> Vec<ClassLink> {
    let mut classes: Vec<_> = content.classes.iter().collect();
    let first = |class: &&crate::model::Class| {
        (class.sessions.first().map(|session| session.value.from), class.name.clone())
    };
    classes.sort_by_key(first);
    let when = |class: &crate::model::Class| {
        let sessions = class.sessions.iter().map(|session| {
            let (from, to) = (session.value.from, session.value.to);
            let clock = |at: jiff::civil::DateTime| words.clock(at.hour(), at.minute());
            let values = [
                ("date", &*words.date(from.date())),
                ("from", &*clock(from)),
                ("to", &*clock(to)),
            ];
            words.fill("session", &values)
        });
        sessions.collect::<Vec<_>>().join(words.get("list-semicolon"))
    };
    let link = |class: &&crate::model::Class| ClassLink {
        class: class.name.clone(),
        title: class.title.value.clone(),
        when: when(class),
    };
    classes.iter().map(link).collect()
}

fn look(course: &Course, content: &Content) -> Look {
    let hex = |parts: &[u8; 3]| format!("#{}", hex(parts));
    let logo = course.look.logo.as_ref();
    Look {
        accent: course.look.accent.as_ref().map(|accent| hex(&accent.value)),
        logo: logo.and_then(|path| content.drawings.get(&path.value)).cloned(),
        text: course.look.text.as_ref().map(|family| family.value.clone()),
        labels: course.look.labels.as_ref().map(|family| family.value.clone()),
    }
}

fn news(news: &News, words: &Words) -> NewsSheet {
    NewsSheet { date: news.date.clone(), content: plain_blocks(&news.content, words) }
}

/// The words of the trade in order of the alphabet.
fn glossary(content: &Content, words: &Words) -> Vec<TradeWord> {
    let word = |entry: &Entry| TradeWord {
        name: entry.name(),
        word: entry.word.value.clone(),
        also: entry.also.iter().map(|form| form.value.clone()).collect(),
        everyday: entry.everyday,
        meaning: plain_blocks(&entry.meaning, words),
    };
    let mut words: Vec<TradeWord> = content.glossary.iter().map(word).collect();
    words.sort_by_key(|word| word.word.to_lowercase());
    words
}

fn lessons(course: &Course, content: &Content) -> Vec<LessonSheet> {
    let recipes: Vec<&str> =
        content.recipes.iter().map(|recipe| recipe.name.as_str()).collect();
    let techniques: Vec<&str> =
        content.techniques.iter().map(|technique| technique.name.as_str()).collect();
    // A way with a page of its own stands right behind the recipe as written.
    let with_ways = |named: Vec<String>| -> Vec<String> {
        let ways = |of: &str| -> Vec<String> {
            let all = content.recipes.iter();
            let own = |it: &&Recipe| it.way.as_ref().is_some_and(|way| way.of == of);
            all.filter(own).map(|recipe| recipe.name.clone()).collect()
        };
        let with = |name: &String| [vec![name.clone()], ways(name)].concat();
        let mut all: Vec<String> = named.iter().flat_map(with).collect();
        let mut seen = BTreeSet::new();
        all.retain(|name| seen.insert(name.clone()));
        all
    };
    let known = |named: &[Placed<String>], all: &[&str]| -> Vec<String> {
        let named = named.iter().map(|name| name.value.clone());
        named.filter(|name| all.contains(&name.as_str())).collect()
    };
    let mut lessons: Vec<LessonSheet> = course
        .lessons
        .iter()
        .map(|lesson| LessonSheet {
            title: lesson.title.clone(),
            summary: lesson.summary.clone(),
            recipes: with_ways(known(&lesson.recipes, &recipes)),
            techniques: known(&lesson.techniques, &techniques),
        })
        .collect();
    let missing = |all: &[&str], taught: BTreeSet<&String>| -> Vec<String> {
        let all = all.iter().map(|name| (*name).to_owned());
        all.filter(|name| !taught.contains(name)).collect()
    };
    let rest = LessonSheet {
        title: String::new(),
        summary: String::new(),
        recipes: missing(
            &recipes,
            lessons.iter().flat_map(|lesson| &lesson.recipes).collect(),
        ),
        techniques: missing(
            &techniques,
            lessons.iter().flat_map(|lesson| &lesson.techniques).collect(),
        ),
    };
    if !rest.recipes.is_empty() || !rest.techniques.is_empty() {
        lessons.push(rest);
    }
    lessons
}
