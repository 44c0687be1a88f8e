//! A small invented course for the tests of this room.

use std::collections::BTreeMap;

use crate::draw::{Figure, FigureKind, Forms, labelled};
use crate::measure::Label;
use crate::media::Medium;
use crate::model::{Block, Inline};
use crate::sheet::*;
use crate::theme::Theme;
use crate::words::Words;

use super::{
    Card, EditionFiles, FigureMap, Input, Lacking, Page, Site, TemplateFault, Unpacked,
};

/// The words of the default theme.
pub(super) fn words() -> Words {
    let theme = Theme::built_in();
    crate::read::words_in(&theme, "en").unwrap_or_default()
}

/// All that a site is made from, owned.
pub(super) struct Sample {
    pub(super) course: CourseSheet,
    pub(super) recipes: Vec<RecipeSheets>,
    pub(super) techniques: Vec<TechniqueSheet>,
    pub(super) drawn: Vec<(String, Vec<Figure>)>,
    pub(super) outlines: BTreeMap<String, Outline>,
    pub(super) figures: FigureMap,
    pub(super) handouts: Vec<HandoutLink>,
    pub(super) media: Vec<Medium>,
    pub(super) theme: Theme,
}

impl Sample {
    /// One recipe at two sizes, one technique, all handouts.
    pub(super) fn new() -> Self {
        let batches: Vec<BatchSheet> = [("x1", "1 batch", 1), ("x2", "2 batches", 2)]
            .map(|(key, title, times)| BatchSheet {
                key: key.into(),
                title: title.into(),
                sheet: sheet(title, times),
            })
            .into();
        Self {
            course: course(),
            recipes: vec![RecipeSheets { base: batches[0].sheet.clone(), batches }],
            techniques: vec![technique()],
            drawn: ["x1", "x2"].map(|key| (key.to_owned(), vec![figure()])).into(),
            outlines: [("crescents".to_owned(), outline())].into(),
            figures: [("letter-turn".to_owned(), vec![shown()])].into(),
            handouts: handouts(),
            media: vec![loaf()],
            theme: Theme::built_in(),
        }
    }

    /// The site.
    pub(super) fn pages(&self) -> Result<Vec<Page>, TemplateFault> {
        let words = words();
        let site = Site::new(self.input(&words))?;
        let mut pages = site.course_pages()?;
        for sheets in &self.recipes {
            pages.push(site.recipe(sheets, &self.drawn)?);
        }
        pages.extend(site.listing_pages(&self.cards())?);
        pages.sort_by(|one, other| one.path.cmp(&other.path));
        let paths: Vec<&str> = pages.iter().map(|page| page.path.as_str()).collect();
        let kept = site.kept(&paths);
        let worker = site.worker(&kept, &On(&pages)).unwrap_or_default();
        pages.push(Page { path: super::WORKER.to_owned(), bytes: worker });
        Ok(pages)
    }

    /// The package, without its picture, of which there is only the size.
    pub(super) fn package(&self) -> Result<Vec<u8>, Unpacked> {
        let (words, pages) = (words(), self.pages().unwrap_or_default());
        let input = Input { media: &[], ..self.input(&words) };
        let unmade = |fault: TemplateFault| Unpacked::File(Lacking::Unmade(fault.said()));
        let site = Site::new(input).map_err(unmade)?;
        let paths: Vec<&str> = pages.iter().map(|page| page.path.as_str()).collect();
        let mut packed = std::io::Cursor::new(Vec::new());
        site.cartridge(&self.cards(), &paths).pack(&On(&pages), &mut packed)?;
        Ok(packed.into_inner())
    }

    fn cards(&self) -> Vec<Card> {
        self.recipes.iter().map(Card::new).collect()
    }

    /// All of it, as the room takes it.
    pub(super) fn input<'a>(&'a self, words: &'a Words) -> Input<'a> {
        Input {
            notes: &[],
            course: &self.course,
            outlines: &self.outlines,
            techniques: &self.techniques,
            figures: &self.figures,
            handouts: &self.handouts,
            media: &self.media,
            words,
            theme: &self.theme,
        }
    }

    /// The text of one of its pages; empty where there is none.
    pub(super) fn page(&self, path: &str) -> String {
        let pages = self.pages().unwrap_or_default();
        let found = pages.into_iter().find(|page| page.path == path);
        found.map_or(String::new(), |page| {
            String::from_utf8_lossy(&page.bytes).into_owned()
        })
    }
}

/// A picture of which only the size is ever looked at.
fn loaf() -> Medium {
    let bytes: &[u8] = &[];
    Medium {
        name: "loaf.png".into(),
        width: 1200,
        height: 800,
        hash: "0".into(),
        bytes: bytes.into(),
    }
}

fn course() -> CourseSheet {
    CourseSheet {
        lessons: vec![LessonSheet {
            title: "Butter between sheets".into(),
            summary: "From the butter block to the last turn.".into(),
            recipes: vec!["crescents".into()],
            techniques: vec!["letter-turn".into()],
        }],
        cautions: vec!["Do not taste raw dough.".into()],
        news: vec![NewsSheet {
            date: "2027-02-15".into(),
            content: vec![Block::Paragraph {
                content: vec![text("The crescents are new.")],
            }],
        }],
        glossary: vec![TradeWord {
            everyday: false,
            name: "bench".into(),
            word: "bench".into(),
            also: vec!["benches".into()],
            meaning: vec![Block::Paragraph { content: vec![text("Where you roll.")] }],
        }],
        offline: true,
        ..crate::sheet::sample::course()
    }
}

fn technique() -> TechniqueSheet {
    TechniqueSheet {
        technique: "letter-turn".into(),
        title: "Letter turn".into(),
        title_in: None,
        summary: "A sheet folded in three.".into(),
        demonstrations: Vec::new(),
        content: vec![
            Block::Heading { content: vec![text("Fold")] },
            Block::Paragraph { content: vec![text("One end over the middle.")] },
        ],
        used_in: vec![UsedIn {
            recipe: "crescents".into(),
            title: "Crescents".into(),
            title_in: None,
        }],
    }
}

fn text(text: &str) -> Inline<Label> {
    Inline::Text { text: text.into() }
}

fn live(metric: String, us: &str) -> Inline<Label> {
    Inline::Live { value: Label::new(metric, us) }
}

#[expect(clippy::too_many_lines, reason = "every field of a sheet")]
fn sheet(batch: &str, times: u64) -> Sheet {
    let pieces = 12 * times;
    Sheet {
        way: None,
        ways: Vec::new(),
        since: None,
        untold: None,
        proofs: Vec::new(),
        mixing: Vec::new(),
        goals: Vec::new(),
        bakes: Vec::new(),
        notes: Vec::new(),
        facts: 1,
        recipe: "crescents".into(),
        title: "Crescents".into(),
        summary: "Plain crescents from one sheet, cut on the diagonal.".into(),
        family: Some("layered yeast dough".into()),
        picture: None,
        printed: true,
        scale: Scale {
            factor: 1.0,
            pieces: Some(pieces),
            piece_g: Some(57.0),
            piece: Some(Label::new("57 g", "2 oz")),
            doughs: times,
            makes: Label::same(format!("{pieces} crescents")),
            batch: batch.into(),
        },
        formula: formula(times),
        totals: Totals {
            true_hydration: false,
            each_dough: None,
            grams: 700.0,
            flour_g: 500.0,
            hydration_percent: Some(56.0),
            weight: Label::new(format!("{} g", 700 * times), "1½ lb"),
            flour: Label::new(format!("{} g", 500 * times), "1 lb"),
            sections: vec![SectionTotal {
                section: "dough".into(),
                grams: 640.0,
                weight: Label::new(format!("{} g", 640 * times), "1 lb 6 oz"),
            }],
        },
        preferments: Vec::new(),
        lamination: Some(lamination()),
        cuts: Vec::new(),
        handwork: crate::sheet::Handwork::default(),
        time: time(),
        water: Some(water()),
        allergens: allergens(),
        nutrition: Some(nutrition()),
        cost: None,
        cautions: vec!["raw-egg".into()],
        caution_texts: ["Egg wash is raw egg.", "Do not taste raw dough."]
            .map(str::to_owned)
            .to_vec(),
        faults: Vec::new(),
        opening: vec![Block::Paragraph {
            content: vec![text("A crescent hides nothing.")],
        }],
        parts: parts(times),
        videos: vec![watch()],
    }
}

fn water() -> Water {
    Water {
        desired_c: 22.0,
        water_c: 9.0,
        ice_g: 0.0,
        desired: Label::new("22 °C", "72 °F"),
        water: Label::new("9 °C", "48 °F"),
        ice: None,
    }
}

fn formula(times: u64) -> Vec<Line> {
    let line = |section: &str, ingredient: &str, grams: u64, percent: &str| Line {
        each_dough: None,
        section: section.into(),
        ingredient: ingredient.into(),
        key: ingredient.into(),
        is_recipe: false,
        at: None,
        note: (ingredient == "whole milk").then(|| "cold".into()),
        grams: Some((grams * times) as f64),
        percent: None,
        percent_label: Some(percent.into()),
        metric: format!("{} g", grams * times),
        us_weight: format!("{} oz", grams * times / 28),
        us_column: format!("{} oz", grams * times / 28),
        us_measure: Some(format!("{} cups", grams * times / 125)),
        count: None,
        us_error: 0.0,
        metric_error: 0.0,
    };
    vec![
        line("dough", "bread flour", 500, "100 %"),
        line("dough", "whole milk", 140, "28 %"),
        Line {
            us_measure: None,
            count: Some(format!("{times} large")),
            ..line("wash", "large eggs", 50, "")
        },
    ]
}

fn lamination() -> Lamination {
    Lamination {
        inverted: false,
        lock_in: None,
        turns: vec![Folding::Book, Folding::Letter],
        folds: Vec::new(),
        fat_layers: Some(48),
        layers_merged: Some(97),
        layers_unmerged: 144,
        fat_percent_of_dough: Some(28.0),
        sheets: vec![SheetFact {
            step: "mix".into(),
            title: "First turn".into(),
            length_cm: 60.0,
            width_cm: 25.0,
            way: crate::dough::Direction::Any,
            block_cm: None,
            thickness_mm: 6.0,
            fat_layer_mm: 1.0,
            dough_layer_mm: 2.0,
            fat_layers: 1,
            size: Label::new("60 × 25 cm", "23½ × 9¾ in"),
            thickness: Label::new("6 mm", "1/4 in"),
        }],
    }
}

fn time() -> Time {
    let step = |step: &str, title: &str, start: u64, wait: u64| StepTime {
        step: step.into(),
        title: title.into(),
        recipe: "crescents".into(),
        day: None,
        thaw_min: None,
        start_min: start,
        hands_min: 10,
        wait_min: [wait, wait, wait],
        hold_min: 0,
        after: Vec::new(),
        bake: step == "bake",
        place: None,
        critical: true,
    };
    Time {
        hands_min: 20,
        wait_min: 80,
        elapsed_min: 100,
        hands: "20 min".into(),
        wait: "1 h 20 min".into(),
        elapsed: "1 h 40 min".into(),
        critical_path: Vec::new(),
        ready: vec![Ready {
            hour: 18,
            at: "18:00".into(),
            starts: vec!["16:20".into(), "17:30".into()],
        }],
        steps: vec![step("mix", "Mix", 0, 60), step("bake", "Bake", 70, 20)],
    }
}

fn allergens() -> Allergens {
    let one = |name: &str, from: &str| Allergen {
        name: name.into(),
        kinds: Vec::new(),
        from: vec![from.into()],
    };
    let milk = || one("milk", "whole milk");
    let us = vec![one("wheat", "bread flour"), milk()];
    let eu = vec![one("cereals containing gluten", "bread flour"), milk()];
    let list = |law: &str, found| AllergenList { law: law.into(), found };
    Allergens {
        lists: vec![list("us", us), list("eu", eu)],
        unknown: Vec::new(),
        read_on_pack: Vec::new(),
    }
}

fn nutrition() -> Nutrition {
    let nutrients =
        Nutrients { energy_kcal: 210.4, protein_g: 4.25, ..Nutrients::default() };
    Nutrition {
        per_piece: Some(nutrients.clone()),
        per_piece_rounded: Some(NutrientWords {
            energy: "210 kcal".into(),
            protein: "4 g".into(),
            ..NutrientWords::default()
        }),
        per_100_g: nutrients,
        bake_loss_percent: None,
        estimate: true,
    }
}

fn watch() -> Watch {
    Watch {
        name: "roll-up".into(),
        address: "https://media.saltmarsh.example/layers/roll-up".into(),
        from: None,
        length: Some("4 min".into()),
        still: None,
    }
}

fn parts(times: u64) -> Vec<Part> {
    let row = |key: Ticked, term: &str, value: Label| TicketRow {
        key,
        term: term.into(),
        value,
    };
    let flour = Label::new(format!("{} g", 500 * times), "1 lb");
    let prose = vec![
        text("Put "),
        live(format!("{} g", 640 * times), "1 lb 6 oz"),
        text(" in the bowl."),
    ];
    vec![
        Part::Step(StepSheet {
            others: Vec::new(),
            step: "mix".into(),
            number: 1,
            title: "Mix".into(),
            ticket: vec![
                row(Ticked::Hands, "Hands on", Label::same("10 min")),
                row(Ticked::Kit, "Kit", Label::same("1 mixer")),
            ],
            ingredients: vec![Ingredients {
                amount: flour,
                ingredient: "bread flour".into(),
                weight: None,
                each: None,
            }],
            watch: None,
            pictures: Vec::new(),
            until: Some(Box::new(Label::same("it clears the bowl"))),
            prose: vec![Block::Paragraph { content: prose }],
        }),
        Part::Step(StepSheet {
            others: Vec::new(),
            step: "bake".into(),
            number: 2,
            title: "Bake".into(),
            ticket: vec![row(Ticked::Oven, "Oven", Label::new("190 °C", "375 °F"))],
            ingredients: Vec::new(),
            watch: Some(watch()),
            pictures: vec![Picture {
                file: "loaf.png".into(),
                alt: "A brown loaf".into(),
                printed: true,
                sight: None,
            }],
            until: None,
            prose: vec![Block::Caution {
                content: vec![Block::Paragraph {
                    content: vec![text("The tray is hot.")],
                }],
            }],
        }),
        Part::Prose {
            title: "Variations".into(),
            content: vec![Block::Paragraph {
                content: vec![text("<b>Ham</b> & {{ cheese }}.")],
            }],
        },
    ]
}

fn figure() -> Figure {
    let forms = || Forms { metric: labelled(640.0, "metric"), us: labelled(640.0, "us") };
    Figure {
        name: "mix".into(),
        step: Some("mix".into()),
        kind: FigureKind::Turn,
        title: "The sheet".into(),
        alt: Label::new("60 by 25 cm", "23½ by 9¾ in"),
        upright: forms(),
        wide: None,
        paper: None,
    }
}

/// The same of a technique.
fn shown() -> Figure {
    Figure { step: None, ..figure() }
}

fn outline() -> Outline {
    let steps = [["mix", "Mix"], ["bake", "Bake"]].map(|step| step.map(str::to_owned));
    Outline { recipe: "crescents".into(), title: "Crescents".into(), steps: steps.into() }
}

/// Pages as files that others are made from.
struct On<'a>(&'a [Page]);

impl EditionFiles for On<'_> {
    fn file(&self, path: &str) -> Result<Vec<u8>, Lacking> {
        let found = self.0.iter().find(|page| page.path == path);
        found
            .map(|page| page.bytes.clone())
            .ok_or_else(|| Lacking::NoFile(path.to_owned()))
    }
}

fn handouts() -> Vec<HandoutLink> {
    let mut all = Vec::new();
    for kind in HandoutKind::ALL {
        for units in [Units::Metric, Units::Us] {
            for paper in [Paper::A4, Paper::Letter] {
                all.push(HandoutLink { kind, units, paper });
            }
        }
    }
    all
}
