//! What stands on a student sheet, and how it is laid out.

use std::io::Cursor;

use image::{ImageFormat, RgbImage};

use crate::draw::figures;
use crate::media::Medium;
use crate::sheet::{Allergen, HandoutKind, Paper, Part, Picture, Units};
use crate::theme::Theme;

use super::fixture::Fixture;
use super::page::Waste;
use super::tests::{long, pages, text};
use super::world::Setting;
use super::{Inner, Job, PaperFault, Press};

fn press() -> Press {
    Press::new(&Theme::built_in())
}

fn student(fixture: &Fixture) -> Job<'_> {
    fixture.job(HandoutKind::Student, Units::Metric, Paper::A4)
}

#[test]
fn no_setting_wastes_less_than_the_one_that_is_taken() -> Result<(), PaperFault> {
    let press = press();
    for fixture in [Fixture::new(), long("it wobbles"), long("it wobbles in the middle")]
    {
        let data = press.data(&student(&fixture));
        let taken = Waste::of(&press.pages(&data)?, 2);
        let mut files = press.files(&data)?;
        for setting in Setting::ALL {
            files.set_as(setting);
            let tried = Waste::of(&press.set(&files)?, 2);
            assert!(taken.is_good() || taken <= tried, "{taken:?} {tried:?}");
        }
    }
    Ok(())
}

#[test]
fn what_goes_into_a_recipe_stands_on_its_sheet_before_the_method()
-> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let mut sheet = fixture.sheet.clone();
    sheet.title = "Paste".into();
    for (at, part) in sheet.parts.iter_mut().enumerate() {
        if let Part::Step(step) = part {
            step.title = format!("Inner{at}");
        }
    }
    sheet.caution_texts = vec!["Pastealone.".into()];
    let figures = figures(&sheet, &fixture.words);
    let included = [Inner { sheet, figures }];
    let printed =
        text(&pages(&press, &Job { included: &included, ..student(&fixture) })?);
    let place = |words: &str| printed.find(words).unwrap_or_else(|| panic!("no {words}"));
    assert!(place("Paste") < place("Inner"));
    assert!(place("Inner") < place("Method"));
    assert!(printed.contains("Pastealone."));
    // Alone it is as complete as before.
    assert!(!text(&pages(&press, &student(&fixture))?).contains("Inner"));
    Ok(())
}

#[test]
fn an_allergen_that_both_lists_name_alike_stands_once() {
    let mut fixture = Fixture::new();
    let named = |name: &str| Allergen {
        name: name.into(),
        kinds: Vec::new(),
        from: vec!["butter".into()],
    };
    fixture.sheet.allergens.lists[0].found = vec![named("milk"), named("wheat")];
    fixture.sheet.allergens.lists[1].found = vec![named("milk"), named("cereals")];
    let data = press().data(&student(&fixture));
    let data: serde_json::Value = serde_json::from_slice(&data).expect("data is JSON");
    let names = |list: &serde_json::Value| {
        let all = list.as_array().into_iter().flatten();
        all.map(|it| it["name"].as_str().unwrap_or_default().to_owned())
            .collect::<Vec<_>>()
    };
    assert_eq!(names(&data["contains"]["both"]), ["milk"]);
    assert_eq!(names(&data["contains"]["apart"][0][1]), ["cereals"]);
    assert_eq!(names(&data["contains"]["apart"][1][1]), ["wheat"]);
}

#[test]
fn a_picture_is_printed_with_its_words() -> Result<(), PaperFault> {
    let mut bytes = Cursor::new(Vec::new());
    RgbImage::new(1200, 800).write_to(&mut bytes, ImageFormat::Jpeg).expect("a picture");
    let medium = Medium::read("crust.jpg", bytes.into_inner()).expect("a picture");
    let media = [medium];
    let mut fixture = Fixture::new();
    let first = fixture.sheet.parts.iter_mut().find_map(|part| match part {
        Part::Step(step) => Some(step),
        Part::Prose { .. } => None,
    });
    first.expect("a step").pictures = vec![Picture {
        file: "crust.jpg".into(),
        alt: "Chestnutbrown".into(),
        printed: true,
        sight: None,
    }];
    let press = press().showing(&media);
    let job = Job { media: &media, ..student(&fixture) };
    let files = press.files(&press.data(&job))?;
    let names: Vec<&String> =
        files.by_name.keys().filter(|name| name.ends_with("-840.jpg")).collect();
    assert_eq!(names.len(), 1);
    assert!(text(&pages(&press, &job)?).contains("Chestnutbrown"));
    // A picture that is not there leaves its words.
    let bare = press.files(&press.data(&Job { media: &[], ..job }))?;
    assert!(bare.by_name.keys().all(|name| !name.ends_with(".jpg")));
    Ok(())
}
