//! Linked data for search engines, in the open schema.org vocabulary. It says nothing
//! that the page does not say.
#![allow(clippy::wildcard_enum_match_arm, reason = "JSON's kinds are not ours")]

use serde_json::{Map, Value, json};

use crate::sheet::{
    Block, CourseSheet, Line, Nutrition, Outline, Part, Sheet, StepSheet, TechniqueSheet,
    Ticked,
};

use super::html::Html;
use super::prose::plain;
use super::shell::page_address;
use super::{Card, Input};

/// The data as the content of a script tag that is never run.
pub(super) fn script(data: &Value) -> Html {
    // A tag's end or a comment within the text must not end the block.
    let text = data.to_string();
    Html(text.replace('<', "\\u003c").replace('>', "\\u003e").replace('&', "\\u0026"))
}

/// The course, with its recipes.
pub(super) fn course(course: &CourseSheet, cards: &[Card]) -> Value {
    let parts = cards.iter().map(|card| {
        let mut part = Map::new();
        part.insert("@type".into(), "Recipe".into());
        part.insert("name".into(), card.title.clone().into());
        add(&mut part, "url", page(course, &format!("recipes/{}/", card.recipe)));
        Value::Object(part)
    });
    let mut data = begin("Course", &course.title, &course.summary, course);
    add(&mut data, "url", course.address.clone().map(Value::from));
    add(&mut data, "provider", school(course));
    add(&mut data, "version", course.edition.clone().map(Value::from));
    data.insert("hasPart".into(), parts.collect());
    Value::Object(data)
}

/// A technique, with the way to it; nothing where the site's address is not known.
pub(super) fn technique(course: &CourseSheet, sheet: &TechniqueSheet) -> Option<Value> {
    let address = page(course, &format!("techniques/{}/", sheet.technique))?;
    let mut data = begin("WebPage", &sheet.title, &sheet.summary, course);
    data.insert("url".into(), address);
    let stops = trail(course, &sheet.technique, &sheet.title);
    add(&mut data, "breadcrumb", stops);
    Some(Value::Object(data))
}

/// The way from the course to one of its pages.
fn trail(course: &CourseSheet, name: &str, title: &str) -> Option<Value> {
    let site = course.address.as_ref()?;
    let stops = super::course::trail(course, name);
    let above = stops.iter().map(|stop| {
        (stop.title.as_str(), Some(format!("{site}{}", page_address(&stop.page))))
    });
    let all = above.chain([(title, None)]).enumerate().map(|(at, (name, item))| {
        let mut data = Map::new();
        data.insert("@type".into(), "ListItem".into());
        data.insert("position".into(), (at + 1).into());
        data.insert("name".into(), name.into());
        add(&mut data, "item", item.map(Value::from));
        Value::Object(data)
    });
    let items: Vec<Value> = all.collect();
    Some(json!({ "@type": "BreadcrumbList", "itemListElement": items }))
}

/// A recipe as written.
pub(super) fn recipe(input: &Input, sheet: &Sheet) -> Value {
    let course = input.course;
    let address = page(course, &format!("recipes/{}/", sheet.recipe));
    let mut data = begin("Recipe", &sheet.title, &sheet.summary, course);
    add(&mut data, "url", address.clone());
    add(
        &mut data,
        "image",
        page(course, &format!("recipes/{}/social.png", sheet.recipe)),
    );
    add(&mut data, "author", instructor(course).or_else(|| school(course)));
    add(&mut data, "publisher", school(course));
    add(&mut data, "datePublished", course.date.clone().map(Value::from));
    add(&mut data, "recipeCategory", sheet.family.clone().map(Value::from));
    data.insert("recipeYield".into(), sheet.scale.makes.metric.clone().into());
    data.insert("recipeIngredient".into(), ingredients(sheet));
    data.insert("recipeInstructions".into(), instructions(input, sheet));
    let stops = trail(course, &sheet.recipe, &sheet.title);
    let page = stops.zip(address).map(|(stops, address)| {
        json!({ "@type": "WebPage", "@id": address, "breadcrumb": stops })
    });
    add(&mut data, "mainEntityOfPage", page);
    times(&mut data, sheet);
    add(&mut data, "tool", tools(sheet));
    add(&mut data, "nutrition", sheet.nutrition.as_ref().and_then(nutrition));
    Value::Object(data)
}

fn begin(
    kind: &str,
    name: &str,
    about: &str,
    course: &CourseSheet,
) -> Map<String, Value> {
    let data = json!({
        "@context": "https://schema.org",
        "@type": kind,
        "name": name,
        "description": about,
        "inLanguage": course.language,
    });
    match data {
        Value::Object(data) => data,
        _ => Map::new(),
    }
}

fn add(data: &mut Map<String, Value>, name: &str, value: Option<Value>) {
    if let Some(value) = value {
        data.insert(name.to_owned(), value);
    }
}

fn page(course: &CourseSheet, path: &str) -> Option<Value> {
    course.address.as_ref().map(|site| format!("{site}{path}").into())
}

fn school(course: &CourseSheet) -> Option<Value> {
    let name = course.school.as_ref()?;
    Some(json!({ "@type": "Organization", "name": name }))
}

fn instructor(course: &CourseSheet) -> Option<Value> {
    let name = course.instructor.as_ref()?;
    Some(json!({ "@type": "Person", "name": name }))
}

fn ingredients(sheet: &Sheet) -> Value {
    let line = |line: &Line| {
        let note = line.note.as_ref().map_or(String::new(), |note| format!(", {note}"));
        match line.grams {
            Some(_) => format!("{} {}{note}", line.metric, line.ingredient),
            None => format!("{}{note}, {}", line.ingredient, line.metric),
        }
    };
    sheet.formula.iter().map(line).collect()
}

/// The steps; a section for each recipe that has to be made first, in order, where there
/// are such.
fn instructions(input: &Input, sheet: &Sheet) -> Value {
    let mut first: Vec<&str> = Vec::new();
    for step in &sheet.time.steps {
        if step.recipe != sheet.recipe && !first.contains(&step.recipe.as_str()) {
            first.push(&step.recipe);
        }
    }
    let found = first.iter().filter_map(|name| input.outlines.get(*name));
    let above = found.map(|one| outlined(input.course, one));
    let sections: Vec<Value> = above.chain([own(input.course, sheet)]).collect();
    match sections.as_slice() {
        [only] => only["itemListElement"].clone(),
        _ => sections.into(),
    }
}

/// The steps of a recipe that has to be made first: the page says no more of those than
/// their names.
fn outlined(course: &CourseSheet, outline: &Outline) -> Value {
    let address = page(course, &format!("recipes/{}/", outline.recipe));
    let address = address.as_ref().and_then(Value::as_str);
    let steps = outline.steps.iter().enumerate();
    let steps = steps
        .map(|(at, [step, title])| told((at + 1, step, title), address, title.clone()));
    section(&outline.title, steps.collect())
}

/// The steps of the page's own recipe.
fn own(course: &CourseSheet, sheet: &Sheet) -> Value {
    let address = page(course, &format!("recipes/{}/", sheet.recipe));
    let steps = sheet.parts.iter().filter_map(|part| match part {
        Part::Step(step) => Some(step),
        Part::Prose { .. } => None,
    });
    let address = address.as_ref().and_then(Value::as_str);
    section(&sheet.title, steps.map(|step| instruction(step, address)).collect())
}

fn section(title: &str, steps: Vec<Value>) -> Value {
    json!({ "@type": "HowToSection", "name": title, "itemListElement": steps })
}

fn instruction(step: &StepSheet, address: Option<&str>) -> Value {
    let prose = plain(&Block::for_levels(&step.prose, &[]));
    // A step may be its ticket alone: its rows are then what there is to say.
    let rows =
        || step.ticket.iter().map(|row| format!("{}: {}", row.term, row.value.metric));
    let text =
        if prose.is_empty() { rows().collect::<Vec<_>>().join("; ") } else { prose };
    let text = if text.is_empty() { step.title.clone() } else { text };
    told((step.number, &step.step, &step.title), address, text)
}

/// A step by its number, its name in addresses and its title.
fn told(
    (number, step, title): (usize, &str, &str),
    address: Option<&str>,
    text: String,
) -> Value {
    let mut data = Map::new();
    data.insert("@type".into(), "HowToStep".into());
    data.insert("position".into(), number.into());
    data.insert("name".into(), title.into());
    data.insert("text".into(), text.into());
    add(&mut data, "url", address.map(|page| format!("{page}#step-{step}").into()));
    Value::Object(data)
}

fn times(data: &mut Map<String, Value>, sheet: &Sheet) {
    let bake: u64 = sheet
        .time
        .steps
        .iter()
        .filter(|step| step.bake)
        .map(|step| step.wait_min[0])
        .sum();
    data.insert("totalTime".into(), duration(sheet.time.elapsed_min).into());
    data.insert("prepTime".into(), duration(sheet.time.hands_min).into());
    add(data, "cookTime", (bake > 0).then(|| duration(bake).into()));
}

/// Minutes as an ISO 8601 duration: `PT1H25M`.
fn duration(minutes: u64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, rest) => format!("PT{rest}M"),
        (hours, 0) => format!("PT{hours}H"),
        (hours, rest) => format!("PT{hours}H{rest}M"),
    }
}

fn tools(sheet: &Sheet) -> Option<Value> {
    let mut tools: Vec<&str> = Vec::new();
    for part in &sheet.parts {
        let Part::Step(step) = part else { continue };
        let kit = step.ticket.iter().filter(|row| row.key == Ticked::Kit);
        tools.extend(kit.map(|row| row.value.metric.as_str()));
    }
    tools.sort_unstable();
    tools.dedup();
    (!tools.is_empty()).then(|| json!(tools))
}

fn nutrition(nutrition: &Nutrition) -> Option<Value> {
    let piece = nutrition.per_piece.as_ref()?;
    let grams = |value: f64| format!("{value:.1} g");
    Some(json!({
        "@type": "NutritionInformation",
        "servingSize": "1",
        "calories": format!("{:.0} kcal", piece.energy_kcal),
        "fatContent": grams(piece.fat_g),
        "saturatedFatContent": grams(piece.saturated_g),
        "carbohydrateContent": grams(piece.carbohydrate_g),
        "sugarContent": grams(piece.sugars_g),
        "fiberContent": grams(piece.fibre_g),
        "proteinContent": grams(piece.protein_g),
        "sodiumContent": format!("{:.0} mg", piece.sodium_mg),
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn durations_are_iso_8601() {
        assert_eq!(duration(0), "PT0M");
        assert_eq!(duration(45), "PT45M");
        assert_eq!(duration(120), "PT2H");
        assert_eq!(duration(1505), "PT25H5M");
    }

    #[test]
    fn text_cannot_end_the_block() {
        let block = script(&json!({ "name": "</script><!-- & \"" }));
        assert_eq!(
            block.0,
            "{\"name\":\"\\u003c/script\\u003e\\u003c!-- \\u0026 \\\"\"}"
        );
    }
}
