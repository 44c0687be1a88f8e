//! What typesetting costs, as ratios, over the demonstration course's student sheets. Run it
//! when the machine is quiet; each figure in a process of its own:
//!
//!     cargo test --release --test typesetting -- --ignored --nocapture --exact NAME
//!
//! with NAME one of `near_the_bare_typesetter`, `two_cores`, `flat_memory`, `one_sheet`.
#![allow(
    clippy::disallowed_methods,
    reason = "the course is read, time and memory are measured"
)]

use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

use tourier::draw::figures;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::paper::{Files, Job, Press, spread};
use tourier::sheet::{CourseSheet, HandoutKind, Paper, Sheet, Units};
use tourier::store;
use tourier::theme::Theme;
use tourier::words::Words;
use typst::foundations::Bytes;
use typst::text::Font;
use typst_as_lib::{TypstEngine, TypstTemplateCollection};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

/// As the program has it: what is measured is the program.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

/// The demonstration course, worked out.
struct Course {
    course: CourseSheet,
    /// Every recipe as written.
    sheets: Vec<Sheet>,
    words: Words,
    theme: Theme,
}

impl Course {
    fn new() -> Self {
        let (sources, found) =
            store::load(Path::new("content")).expect("the demonstration course");
        let edition = Edition::new(&sources, Vec::new(), found);
        let theme = Theme::built_in();
        let words = tourier::read::words_in(&theme, "en");
        let words = words.expect("the theme's words");
        let course = edition.course(&words).expect("a course");
        let one = Scaling::Batches(exact(1, 1));
        let recipes = edition.content.recipes.iter();
        let sheets = recipes.map(|recipe| edition.sheet(recipe, &one, &words));
        let sheets = sheets.collect::<Result<_, _>>().expect("one batch of each");
        Self { course, sheets, words, theme }
    }

    /// The data of every student sheet: each recipe in both units on both papers.
    fn data(&self, press: &Press) -> Vec<Vec<u8>> {
        let mut data = Vec::new();
        for sheet in &self.sheets {
            let figures = figures(sheet, &self.words);
            for (units, paper) in [
                (Units::Metric, Paper::A4),
                (Units::Metric, Paper::Letter),
                (Units::Us, Paper::A4),
                (Units::Us, Paper::Letter),
            ] {
                data.push(press.data(&Job {
                    sheet,
                    course: &self.course,
                    figures: &figures,
                    included: &[],
                    media: &[],
                    words: &self.words,
                    kind: HandoutKind::Student,
                    units,
                    paper,
                    batch_key: "x1",
                    levels: &[],
                    whose: None,
                    makers: 1,
                }));
            }
        }
        data
    }
}

/// The same templates, typefaces and files in an engine of nobody's making.
fn bare_engine(theme: &Theme, files: &Files) -> TypstEngine<TypstTemplateCollection> {
    let named = |folder: &'static str, end: &'static str| {
        theme.below(folder).filter(move |path| path.ends_with(end))
    };
    let fonts = named("fonts/", ".ttf").flat_map(|path| {
        Font::iter(Bytes::new(theme.bytes(path).unwrap_or(&[]).to_vec()))
    });
    let templates =
        named("paper/", ".typ").map(|path| (&path["paper/".len()..], theme.text(path)));
    let files = files.by_name.iter().map(|(name, bytes)| (name.as_str(), bytes.to_vec()));
    TypstEngine::builder()
        .fonts(fonts.collect::<Vec<_>>())
        .with_static_source_file_resolver(templates.collect::<Vec<_>>())
        .with_static_file_resolver(files.collect::<Vec<_>>())
        .comemo_evict_max_age(None)
        .build()
}

/// Compiles and exports, and nothing else.
fn bare(engine: &TypstEngine<TypstTemplateCollection>) -> Vec<u8> {
    let document: PagedDocument = engine.compile("main.typ").output.expect("pages");
    let standards = PdfStandards::new(&[PdfStandard::A_2a, PdfStandard::Ua_1]);
    let options =
        PdfOptions { standards: standards.expect("standards"), ..PdfOptions::default() };
    let pdf = typst_pdf::pdf(&document, &options).expect("a PDF");
    drop(document);
    comemo::evict(0);
    pdf
}

fn timed(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

/// Nanoseconds that this process's threads have spent on a processor (`proc(5)`,
/// schedstat): what others do on the machine is not in it.
fn worked() -> f64 {
    let tasks = std::fs::read_dir("/proc/self/task").expect("Linux").flatten();
    let spent = tasks.filter_map(|task| {
        let stat = std::fs::read_to_string(task.path().join("schedstat")).ok()?;
        stat.split(' ').next()?.parse::<f64>().ok()
    });
    spent.sum()
}

fn spent(work: impl FnOnce()) -> f64 {
    let start = worked();
    work();
    worked() - start
}

/// A handout beside compiling and exporting the same source, in processor time: 1.05 at
/// most. A sheet that is set twice to save its last page is counted as it is.
#[test]
#[ignore = "a measurement"]
fn near_the_bare_typesetter() {
    let course = Course::new();
    let press = Press::new(&course.theme);
    let data = course.data(&press);
    let files = data.iter().map(|data| press.files(data).expect("files"));
    let engines: Vec<_> = files.map(|files| bare_engine(&course.theme, &files)).collect();
    let (mut ratios, mut sums) = (Vec::new(), [0.0; 2]);
    // Eight one after the other, as in a publish, then the same eight: what else happens on
    // the machine falls on both. Neither finds what the other left behind.
    let rounds = (0..4).flat_map(|_| data.chunks(8).zip(engines.chunks(8)));
    for (data, engines) in rounds {
        comemo::evict(0);
        let print = |data: &Vec<u8>| press.print(data).expect("a handout");
        let ours = data.iter().map(|data| spent(|| drop(black_box(print(data)))));
        let ours: Vec<f64> = ours.collect();
        comemo::evict(0);
        let theirs = engines.iter().map(|engine| spent(|| drop(black_box(bare(engine)))));
        for (ours, theirs) in ours.into_iter().zip(theirs) {
            ratios.push(ours / theirs);
            sums = [sums[0] + ours, sums[1] + theirs];
        }
    }
    let twice = ratios.iter().filter(|ratio| **ratio > 1.5).count() as f64;
    let share = 100.0 * twice / ratios.len() as f64;
    println!("a handout / bare: median {:.3}", median(ratios));
    println!("all / all bare: {:.3}; set twice: {share:.0} %", sums[0] / sums[1]);
}

/// Processor time of this process, in hundredths of a second (`proc(5)`, utime and stime).
fn busy() -> f64 {
    let stat = std::fs::read_to_string("/proc/self/stat").expect("Linux");
    let after = stat.rsplit(") ").next().unwrap_or_default();
    after.split(' ').skip(11).take(2).filter_map(|time| time.parse::<f64>().ok()).sum()
}

/// Two workers beside one: 1.8 at least, on a machine whose second core is free. Their
/// processor time shows, on a busy one too, whether two do work that one does not.
#[test]
#[ignore = "a measurement"]
fn two_cores() {
    let course = Course::new();
    let press = Press::new(&course.theme);
    let data = course.data(&press);
    let all = |workers| {
        timed(|| {
            spread(data.len(), workers, &|at| {
                drop(black_box(press.print(&data[at]).expect("a handout")));
            });
        })
    };
    all(2);
    let (mut ratios, mut spent) = (Vec::new(), [0.0; 2]);
    for _ in 0..5 {
        let start = busy();
        let one = all(1).as_secs_f64();
        let middle = busy();
        ratios.push(one / all(2).as_secs_f64());
        spent = [spent[0] + middle - start, spent[1] + busy() - middle];
    }
    println!("processor time of two / of one: {:.2}", spent[1] / spent[0]);
    println!("one worker / two: {ratios:.2?}, median {:.2}", median(ratios.clone()));
}

/// The most memory this process has held, MB of 10⁶ bytes (`proc(5)`, VmHWM).
fn peak() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").expect("Linux");
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kib =
        line.and_then(|line| line.trim().trim_end_matches(" kB").parse::<f64>().ok());
    kib.expect("a number") * 1024.0 / 1e6
}

/// Peak memory after 200 handouts and after 2,000: 1.1 at most, below 120 MB.
#[test]
#[ignore = "a measurement"]
fn flat_memory() {
    let course = Course::new();
    let press = Press::new(&course.theme);
    let data = course.data(&press);
    drop(course);
    let many = |count| {
        spread(count, 2, &|at| {
            drop(black_box(press.print(&data[at % data.len()]).expect("a handout")));
        });
        peak()
    };
    println!("peak {:.0} MB before the first", peak());
    let (few, more) = (many(200), many(1800));
    println!("peak {few:.0} MB after 200, {more:.0} MB after 2,000: {:.2}", more / few);
}

/// Milliseconds of one student sheet in steady state, for comparison with others.
#[test]
#[ignore = "a measurement"]
fn one_sheet() {
    let course = Course::new();
    let press = Press::new(&course.theme);
    let data = course.data(&press);
    let times = data.iter().chain(&data).map(|data| {
        timed(|| drop(black_box(press.print(data).expect("a handout")))).as_secs_f64()
    });
    let times: Vec<f64> = times.skip(data.len()).collect();
    println!("a student sheet: {:.1} ms", 1000.0 * median(times));
}
