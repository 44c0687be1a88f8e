//! Whole handouts, looked at as pages: what is printed, on how many pages, inside the
//! margins. The PDFs themselves are judged by validators outside the program.

use std::collections::BTreeMap;
use std::sync::Mutex;

use typst::layout::{Abs, Frame, FrameItem, Point};
use typst_layout::PagedDocument;

use crate::measure::Label;
use crate::sheet::{HandoutKind, Paper, Part, Units};
use crate::theme::Theme;

use super::fixture::{Fixture, line, paragraph, step};
use super::{Job, PaperFault, Press, spread};

const HOSTILE: &str = r##"# $ @ * _ <script> {{ }} \ "x" [y] ~z // `w` #panic()"##;

/// A stretch of printed text and where it stands.
pub(super) struct Printed {
    pub(super) text: String,
    pub(super) left: Abs,
    pub(super) right: Abs,
    pub(super) bottom: Abs,
}

fn walk(frame: &Frame, origin: Point, out: &mut Vec<Printed>) {
    for (at, item) in frame.items() {
        let at = origin + *at;
        match item {
            FrameItem::Group(group) => {
                let shift = Point::new(group.transform.tx, group.transform.ty);
                walk(&group.frame, at + shift, out);
            }
            FrameItem::Text(text) => out.push(Printed {
                text: text.text.to_string(),
                left: at.x,
                right: at.x + text.width(),
                bottom: at.y,
            }),
            _ => {}
        }
    }
}

pub(super) fn pages(press: &Press, job: &Job) -> Result<PagedDocument, PaperFault> {
    press.pages(&press.data(job))
}

pub(super) fn printed(document: &PagedDocument) -> Vec<Printed> {
    let mut out = Vec::new();
    for page in document.pages() {
        walk(&page.frame, Point::zero(), &mut out);
    }
    out
}

/// Everything that is printed, spaces left out: a line may break anywhere.
pub(super) fn text(document: &PagedDocument) -> String {
    let text = printed(document).into_iter().map(|it| it.text).collect::<String>();
    text.split([' ', '\u{A0}', '\n']).collect()
}

fn press() -> Press {
    Press::new(&Theme::built_in())
}

fn jobs(fixture: &Fixture) -> impl Iterator<Item = Job<'_>> {
    HandoutKind::ALL.into_iter().flat_map(move |kind| {
        [Units::Metric, Units::Us].into_iter().flat_map(move |units| {
            [Paper::A4, Paper::Letter].map(|paper| fixture.job(kind, units, paper))
        })
    })
}

#[test]
fn every_kind_stays_inside_its_page() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    for job in jobs(&fixture) {
        let document = pages(&press, &job)?;
        let size = document.pages()[0].frame.size();
        for it in printed(&document) {
            let inside = it.left >= Abs::mm(13.9)
                && it.right <= size.x - Abs::mm(13.9)
                && it.bottom <= size.y - Abs::mm(8.0);
            assert!(inside, "{:?}: {} at {:?}", job.kind, it.text, it.right);
        }
        let count = document.pages().len();
        match job.kind {
            HandoutKind::Bench => assert_eq!(count, 1),
            HandoutKind::Student => assert!((2..=4).contains(&count), "{count}"),
            HandoutKind::LargePrint => assert!(count >= 4, "{count}"),
        }
    }
    Ok(())
}

#[test]
fn the_same_data_gives_the_same_bytes() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let data = |kind| press.data(&fixture.job(kind, Units::Us, Paper::Letter));
    let first = press.print(&data(HandoutKind::Student))?;
    press.print(&data(HandoutKind::Bench))?;
    assert!(first == press.print(&data(HandoutKind::Student))?);
    assert!(first.starts_with(b"%PDF-1.7"));
    Ok(())
}

#[test]
fn two_workers_print_what_one_prints() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let data: Vec<_> = jobs(&fixture).map(|job| press.data(&job)).collect();
    let made = Mutex::new(BTreeMap::new());
    spread(data.len(), 2, &|at| {
        let pdf = press.print(&data[at]);
        made.lock().expect("no worker panicked").insert(at, pdf);
    });
    for (at, pdf) in made.into_inner().expect("no worker panicked") {
        assert!(pdf? == press.print(&data[at])?, "handout {at}");
    }
    Ok(())
}

#[test]
fn what_looks_like_markup_is_printed_as_typed() -> Result<(), PaperFault> {
    let (press, mut fixture) = (press(), Fixture::new());
    fixture.sheet.title = HOSTILE.into();
    fixture.sheet.opening = vec![paragraph(HOSTILE)];
    fixture.sheet.caution_texts = vec![HOSTILE.into()];
    fixture.sheet.formula[0].note = Some(HOSTILE.into());
    if let Some(Part::Step(step)) = fixture.sheet.parts.first_mut() {
        step.title = HOSTILE.into();
        step.until = Some(Box::new(Label::same(HOSTILE)));
        step.ingredients[0].amount = Label::same(HOSTILE);
    }
    let typed = HOSTILE.replace(' ', "");
    for (kind, times) in [(HandoutKind::Student, 7), (HandoutKind::Bench, 5)] {
        let document = pages(&press, &fixture.job(kind, Units::Metric, Paper::A4))?;
        // Each leaf has the title at its foot; a drawing may name its step once more.
        let times = times + document.pages().len();
        assert!(text(&document).matches(&typed).count() >= times, "{kind:?}");
    }
    Ok(())
}

#[test]
fn words_in_other_scripts_are_printed_or_leave_a_visible_sign() -> Result<(), PaperFault>
{
    let (press, mut fixture) = (press(), Fixture::new());
    fixture.sheet.opening = vec![paragraph("The word 小麦粉 or خبز, and 🥐\u{FE0F}.")];
    fixture.sheet.formula[0].note = Some("طحين, 強力粉".into());
    let job = fixture.job(HandoutKind::Student, Units::Metric, Paper::A4);
    let document = pages(&press, &job)?;
    let words = text(&document);
    assert!(words.contains("Theword小麦粉or") && words.contains(",and□."), "{words}");
    assert!(words.contains("خبز") && words.contains("طحين"), "{words}");
    assert!(words.contains("強力粉"), "{words}");
    press.print(&press.data(&job)).map(|_| ())
}

/// 45 ingredients, 40 steps, a title of 120 characters.
pub(super) fn long(cue: &str) -> Fixture {
    let mut fixture = Fixture::new();
    let name = "Braided festival loaf with poppy seed, candied peel and marzipan ";
    fixture.sheet.title = name.repeat(2)[..120].to_owned();
    fixture.sheet.formula = (0..45)
        .map(|i| {
            let name = format!("ingredient number {i}");
            line(["dough", &name, "sifted"], 100.0, ["3½ oz", "¾ cup + 1 tbsp"])
        })
        .collect();
    let ticket = [(crate::sheet::Ticked::Hands, ["Hands on", "8 min", "8 min"])];
    fixture.sheet.parts = (1..=40)
        .map(|number| {
            let mut step = step(number, &format!("step-number-{number}"), &ticket);
            step.until = (!cue.is_empty()).then(|| Box::new(Label::same(cue)));
            Part::Step(step)
        })
        .collect();
    fixture
}

#[test]
fn a_very_long_recipe_still_prints() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), long("it is done"));
    let job = fixture.job(HandoutKind::Student, Units::Metric, Paper::A4);
    let count = pages(&press, &job)?.pages().len();
    assert!((4..=12).contains(&count), "{count}");
    Ok(())
}

#[test]
fn a_bench_card_that_does_not_fit_goes_on_to_its_other_side() -> Result<(), PaperFault> {
    let press = press();
    let cue = "it bends over the edge of the bench without cracking and looks dull";
    let (long, usual) = (long(cue), Fixture::new());
    for paper in [Paper::A4, Paper::Letter] {
        let card = |fixture: &Fixture| {
            press.data(&fixture.job(HandoutKind::Bench, Units::Metric, paper))
        };
        let sides = press.sides(&card(&long))?;
        assert!((2..=4).contains(&sides), "{sides}");
        assert_eq!(press.sides(&card(&usual))?, 1);
        press.print(&card(&long))?;
        let words =
            text(&pages(&press, &long.job(HandoutKind::Bench, Units::Metric, paper))?);
        for part in &long.sheet.parts {
            let Part::Step(step) = part else { continue };
            let title: String = step.title.split_whitespace().collect();
            assert!(words.contains(&title), "{title} is on no side");
        }
        for line in &long.sheet.formula {
            let name: String = line.ingredient.split_whitespace().collect();
            assert!(words.contains(&name), "{name} is on no side");
        }
    }
    // A block that is longer than a side runs on.
    let endless = self::long(&cue.repeat(150));
    let job = endless.job(HandoutKind::Bench, Units::Metric, Paper::A4);
    assert!(press.sides(&press.data(&job))? > 8);
    Ok(())
}

#[test]
fn a_broken_template_is_reported_at_its_line() {
    let mut theme = Theme::built_in();
    let broken = theme.text("paper/student.typ").replace("  masthead(d, large)", "  nix");
    let line = broken.lines().position(|line| line == "  nix").map(|line| line + 1);
    theme.files.insert("paper/student.typ".into(), broken.into_bytes().into());
    let (press, fixture) = (Press::new(&theme), Fixture::new());
    let job = fixture.job(HandoutKind::Student, Units::Metric, Paper::A4);
    let fault = press.print(&press.data(&job)).expect_err("an unknown word");
    assert_eq!((fault.template.as_str(), Some(fault.line)), ("student.typ", line));
    let said = format!("{:?}", fault.why);
    assert!(said.contains("unknown variable: nix"), "{said}");
}
