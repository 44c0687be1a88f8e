//! Ratios measured in one run, on a quiet machine:
//! `cargo test --release --test speed -- --ignored --nocapture`.
#![allow(
    clippy::disallowed_methods,
    reason = "a measurement reads the clock and the course"
)]

mod common;

use std::path::Path;
use std::time::Instant;

use rayon::prelude::*;
use sha2::Digest;
use tourier::draw::figures;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::paper::{Job, Press};
use tourier::product::{Card, Inputs, Memory, Products};
use tourier::sheet::{HandoutKind, Paper, Units};
use tourier::store;
use tourier::theme::Theme;

/// As the program has it: what is measured is the program.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

/// The middle of fifteen runs, in milliseconds.
fn timed(work: &dyn Fn()) -> f64 {
    work();
    let mut times: Vec<f64> = (0..15)
        .map(|_| {
            let start = Instant::now();
            work();
            start.elapsed().as_secs_f64() * 1000.0
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[7]
}

/// Drawing all figures of each recipe, upright and wide, in both unit systems, beside
/// typesetting its student sheet.
#[test]
#[ignore = "measures time: run alone on a quiet machine"]
fn drawing_costs_a_hundredth_of_typesetting() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("content");
    let (sources, faults) = store::load(&content).expect("the demonstration course");
    let edition = Edition::new(&sources, Vec::new(), faults);
    let theme = Theme::built_in();
    let words = tourier::read::words_in(&theme, "en").expect("the words");
    let course = edition.course(&words).expect("the course");
    let press = Press::new(&theme);
    let (mut all_drawing, mut all_setting) = (0.0, 0.0);
    for recipe in &edition.content.recipes {
        let sheet = edition
            .sheet(recipe, &Scaling::Batches(exact(1, 1)), &words)
            .expect("one batch");
        let drawing = timed(&|| drop(figures(&sheet, &words)));
        let drawn = figures(&sheet, &words);
        let data = press.data(&Job {
            sheet: &sheet,
            course: &course,
            figures: &drawn,
            included: &[],
            media: &[],
            words: &words,
            kind: HandoutKind::Student,
            units: Units::Metric,
            paper: Paper::A4,
            batch_key: "x1",
            levels: &[],
            whose: None,
            makers: 1,
        });
        // Each time as if it were the first: what was set before would be remembered.
        let setting = timed(&|| {
            comemo::evict(0);
            drop(press.print(&data).expect("a handout"));
        });
        let share = drawing / setting * 100.0;
        println!("{}: {drawing:.2} of {setting:.0} ms, {share:.2} %", sheet.recipe);
        (all_drawing, all_setting) = (all_drawing + drawing, all_setting + setting);
    }
    let share = all_drawing / all_setting * 100.0;
    println!("drawing beside typesetting, all recipes: {share:.2} %");
    assert!(share < 1.0, "{share:.2} %");
}

/// What a preview does between a save and the new page: read, check, work out and draw what
/// changed, paint every page of the demonstration course.
#[test]
#[ignore = "measures time: run alone on a quiet machine"]
fn a_saved_course_is_seen_soon() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("content");
    let theme = Theme::built_in();
    let words = tourier::read::words_in(&theme, "en").expect("the words");
    let open = |edit: &str| {
        let (mut sources, faults) =
            store::load(&content).expect("the demonstration course");
        for source in sources.iter_mut().filter(|one| one.path.ends_with("turnovers.md"))
        {
            source.text.push_str(edit);
        }
        let (media, _) = store::media(&content).expect("its pictures");
        Edition::new(&sources, media, faults)
    };
    let editions = [open(""), open("One more word.\n")];
    let memory = Memory::default();
    let stocks = editions
        .each_ref()
        .map(|one| Inputs::new(one, &words, &theme).expect("a course"));
    let shops = stocks.each_ref().map(|one| Products::new(one).expect("sound templates"));
    let work = |products: &Products| {
        let recipes = products.inputs().recipes().iter();
        let worked = recipes.map(|one| memory.worked(products, one).expect("no fault"));
        worked.collect::<Vec<_>>()
    };
    let worked = work(&shops[0]);
    let saves = std::cell::Cell::new(0);
    let opening = timed(&|| drop(open("")));
    let working = timed(&|| {
        saves.set(saves.get() + 1);
        drop(work(&shops[saves.get() % 2]));
    });
    let painting = timed(&|| {
        let inputs = Inputs::new(&editions[0], &words, &theme).expect("a course");
        let products = Products::new(&inputs).expect("sound templates");
        let shown =
            worked.par_iter().map(|one| products.recipe_page(one).expect("a page").len());
        let cards: Vec<Card> = worked.iter().map(|one| one.card.clone()).collect();
        let across = products.listing_pages(&cards).expect("pages").len();
        assert!(
            shown.sum::<usize>() + across + products.course_pages().expect("pages").len()
                > 0
        );
    });
    let all = opening + working + painting;
    println!(
        "opening {opening:.1} ms, working out and drawing {working:.1} ms, \
         painting {painting:.1} ms: {all:.1} ms"
    );
}

/// Every page of the demonstration course from its texts, drawings and all, beside a loop
/// that only hands the same texts and pages to the same libraries: each text's head to the
/// YAML parser and its body to the Markdown parser, each page's words to the template
/// engine between tags that stand in the template, each page to the hash. One core.
#[test]
#[ignore = "measures time: run alone on a quiet machine"]
fn pages_beside_a_bare_loop() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("content");
    let theme = Theme::built_in();
    let words = tourier::read::words_in(&theme, "en").expect("the words");
    let (sources, _) = store::load(&content).expect("the demonstration course");
    let (media, _) = store::media(&content).expect("its pictures");
    let build = || {
        let edition = Edition::new(&sources, media.clone(), Vec::new());
        let inputs = Inputs::new(&edition, &words, &theme).expect("a course");
        let products = Products::new(&inputs).expect("sound templates");
        let mut pages = products.course_pages().expect("pages");
        let mut cards = Vec::new();
        for recipe in inputs.recipes() {
            let worked = inputs.worked(recipe).expect("no fault");
            pages.extend(products.recipe_page(&worked).expect("a page"));
            cards.push(worked.card);
        }
        pages.extend(products.listing_pages(&cards).expect("pages"));
        let html = pages.iter().filter(|one| one.path.ends_with(".html"));
        html.map(|one| one.bytes(&common::Bare).expect("it is there")).collect::<Vec<_>>()
    };
    let pages: Vec<String> =
        build().into_iter().map(|page| String::from_utf8(page).expect("text")).collect();
    let (tera, filled) = bare_templates(&pages);
    let bare = || {
        for source in &sources {
            let head = source.text.strip_prefix("---\n");
            let (head, body) = head
                .and_then(|text| text.split_once("\n---\n"))
                .unwrap_or((&source.text, ""));
            let head: serde_json::Value =
                serde_yaml::from_str(head).expect("a sound head");
            let mut html = String::new();
            let options = pulldown_cmark::Options::all();
            let events = pulldown_cmark::Parser::new_ext(body, options);
            pulldown_cmark::html::push_html(&mut html, events);
            std::hint::black_box((head, html));
        }
        for (at, said) in filled.iter().enumerate() {
            let mut context = tera::Context::new();
            context.insert("said", said);
            let page = tera.render(&format!("{at}.html"), &context).expect("a page");
            std::hint::black_box(sha2::Sha256::digest(page.as_bytes()));
        }
    };
    let alone = rayon::ThreadPoolBuilder::new().num_threads(1).build().expect("a pool");
    let (ours, theirs) = alone.install(|| (timed(&|| drop(build())), timed(&bare)));
    println!("pages {ours:.1} ms, bare {theirs:.1} ms: {:.2}", ours / theirs);
}

/// Each page as a template with its tags, and the words that stand between them.
fn bare_templates(pages: &[String]) -> (tera::Tera, Vec<Vec<String>>) {
    let mut tera = tera::Tera::default();
    tera.autoescape_on([".html"]);
    let mut filled = Vec::new();
    for (at, page) in pages.iter().enumerate() {
        let (mut template, mut said) = (String::new(), Vec::new());
        for part in page.split_inclusive('>') {
            let (words, tag) = part.split_at(part.find('<').unwrap_or(part.len()));
            if !words.trim().is_empty() {
                template.push_str(&format!("{{{{ said[{}] }}}}", said.len()));
                said.push(words.to_owned());
            }
            template.push_str("{% raw %}");
            template.push_str(tag);
            template.push_str("{% endraw %}");
        }
        tera.add_raw_template(&format!("{at}.html"), &template).expect("a template");
        filled.push(said);
    }
    (tera, filled)
}
