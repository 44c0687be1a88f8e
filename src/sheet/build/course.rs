//! The course in words.

use std::collections::BTreeSet;

use crate::fault::Placed;
use crate::model::{Content, Course};

use super::super::{CourseSheet, LessonSheet, Look};

/// The course, its lessons with only the recipes and techniques that exist, and a last
/// lesson without title for what stands in none.
pub fn course(course: &Course, content: &Content) -> CourseSheet {
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
        a4_first: course.a4_first,
        currency: course.currency.clone(),
        lessons: lessons(course, content),
        cautions: course.cautions.clone(),
        look: look(course, content),
    }
}

fn look(course: &Course, content: &Content) -> Look {
    let hex = |parts: &[u8; 3]| {
        let digits = parts.iter().map(|part| format!("{part:02x}"));
        format!("#{}", digits.collect::<String>())
    };
    let logo = course.look.logo.as_ref();
    Look {
        accent: course.look.accent.as_ref().map(|accent| hex(&accent.value)),
        logo: logo.and_then(|path| content.media.get(&path.value)).cloned(),
    }
}

fn lessons(course: &Course, content: &Content) -> Vec<LessonSheet> {
    let recipes: Vec<&str> =
        content.recipes.iter().map(|recipe| recipe.name.as_str()).collect();
    let techniques: Vec<&str> =
        content.techniques.iter().map(|technique| technique.name.as_str()).collect();
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
            recipes: known(&lesson.recipes, &recipes),
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
