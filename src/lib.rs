//! **tourier**: a folder of recipe texts in, a checked course site and handouts out.
//!
//! The program is `tourier`, and what it does is in the README. This is the same as a library:
//! texts become an [`Edition`], which knows its [`Fault`]s and gives a [`Sheet`] of each recipe
//! at any scale, all numbers computed and in words; [`Products`] are the pages, drawings and
//! handouts of an edition, each made when its bytes are asked for.
//!
//! # From texts to a page and a handout
//!
//! Nothing here touches a disk, a clock or a terminal.
//!
//! ```
//! use std::sync::Arc;
//! use tourier::{Edition, Inputs, Products, Scaling, Source, Theme, words_in};
//!
//! let text = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
//! let course = "title: Bread on Mondays\nsummary: Four evenings, four loaves.\n";
//! let loaf = "\
//! ---
//! title: Plain loaf
//! summary: One dough, one shape, a good crust.
//! makes: 1 loaf
//! formula:
//!   dough:
//!     - 500 g bread flour
//!     - 340 g water
//!     - 10 g fine salt
//!     - 3 g instant yeast
//! ---
//!
//! ## Mix
//! ~~~ticket
//! uses: dough
//! hands: 12 min
//! until: it is smooth and springs back
//! ~~~
//! Mix {dough} by hand until smooth.
//!
//! ## Bake
//! ~~~ticket
//! bake: 230 °C, 35 min
//! until: the crust is dark and the base sounds hollow
//! ~~~
//! Bake at {230 °C} on a hot stone.
//! ";
//! let texts = [text("course.yaml", course), text("recipes/plain-loaf.md", loaf)];
//!
//! // Read and check. Pictures, and faults of loading, are none.
//! let edition = Edition::new(&texts, Vec::new(), Vec::new());
//! assert!(!edition.stops());
//!
//! // Compute: two loaves.
//! let theme = Theme::built_in();
//! let words = words_in(&theme, "en").expect("the theme's own words read");
//! let recipe = edition.content.recipe("plain-loaf").expect("it was read");
//! let sheet = edition.sheet(recipe, &Scaling::Pieces(2), &words).expect("it scales");
//! assert_eq!(sheet.formula[0].metric, "1000 g");
//!
//! // Paint: the recipe's page, and its first handout.
//! let inputs = Inputs::new(&edition, &words, &theme).expect("there is a course");
//! let products = Products::new(&inputs).expect("the theme's own templates read");
//! let worked = Arc::new(inputs.worked(recipe).expect("it can be worked out"));
//! let files = products.recipe_page(&worked).expect("the page is filled in");
//! let page = files[0].bytes(&()).expect("it is made");
//! assert_eq!(files[0].path, "recipes/plain-loaf/index.html");
//! assert!(page.starts_with(b"<!DOCTYPE html>"));
//! let pdf = products.handouts(&worked)[0].bytes(&()).expect("it is set");
//! assert!(pdf.starts_with(b"%PDF-"));
//! ```
//!
//! # What is wrong, and where
//!
//! A fault is data. The words of a language tell it.
//!
//! ```
//! use tourier::{Edition, Severity, Source, Theme, words_in};
//!
//! let course = "title: Bread on Mondays\nsumary: Four evenings, four loaves.\n";
//! let texts = [Source { path: "course.yaml".into(), text: course.into() }];
//! let edition = Edition::new(&texts, Vec::new(), Vec::new());
//! assert!(edition.stops());
//!
//! let words = words_in(&Theme::built_in(), "en").expect("the theme's own words read");
//! let fault = edition.faults.iter().find(|it| it.name == "unknown-key").expect("a slip");
//! assert_eq!(fault.severity, Severity::Error);
//! assert_eq!(edition.texts.words(&fault.place), "sumary");
//! assert_eq!(edition.texts.position(&fault.place).line, 2);
//! assert!(fault.told(&words).help.is_some_and(|help| help.contains("summary")));
//! ```
//!
//! # From a folder to a folder
//!
//! [`load`] and [`pictures`] read a content folder, [`Target`] writes an edition beside the one
//! that stands, whole or not at all, and makes only what changed.
//!
//! ```
//! use tourier::{Edition, Inputs, Look, Output, Products, Target, Theme, words_in};
//!
//! # let folder = std::env::temp_dir().join(format!("tourier-doc-{}", std::process::id()));
//! # std::fs::create_dir_all(folder.join("content")).expect("a folder is made");
//! # std::fs::write(folder.join("content/course.yaml"), "title: A\nsummary: B.\n").expect("a text");
//! let content = folder.join("content");
//! let (texts, mut found) = tourier::load(&content).expect("the folder is there");
//! let (pictures, faults) = tourier::pictures(&content).expect("the folder is there");
//! found.extend(faults);
//! let edition = Edition::new(&texts, pictures, found);
//!
//! let theme = Theme::built_in();
//! let words = words_in(&theme, "en").expect("the theme's own words read");
//! let inputs = Inputs::new(&edition, &words, &theme).expect("there is a course");
//! let products = [Products::new(&inputs).expect("the theme's own templates read")];
//! let output = folder.join("site");
//! let place = Output { output: &output, inputs: &[&content], among_others: false };
//! let target = Target::open(&place, Look::Quick).expect("a place to publish to");
//! let made = target.publish((&products, ""), &|_, _| {}).expect("it is published");
//! assert!(made.made.iter().any(|path| path == "index.html"));
//! assert!(output.join("index.html").is_file());
//! # std::fs::remove_dir_all(&folder).expect("the folder is cleared away");
//! ```
//!
//! # What may be used from outside
//!
//! What stands on this page: it keeps its names and meaning from one patch of a version to the
//! next (`0.1.0` to `0.1.1`), and *Changes* in the README says what a new version (`0.2.0`,
//! later `2.0.0`) has others. What is reached through these by a field or a result counts as far as it is
//! read, not built. The facts ([`Sheet`] as JSON) have a version of their own, its first field.
//! The modules themselves are public for the program and the tests alone; they may be any other
//! tomorrow.
//!
//! # For those who work on it
//!
//! The modules are the pipeline, in order: text → model → check → compute → sheet →
//! draw → paint → write. A module may use what stands above it, never what stands below.

#![cfg_attr(
    test,
    allow(clippy::wildcard_enum_match_arm, reason = "a test looks at what it is about")
)]

// Words every room may use; they import nothing of ours.
#[doc(hidden)]
pub mod encode;
#[doc(hidden)]
pub mod measure;
#[doc(hidden)]
pub mod statement;
#[doc(hidden)]
pub mod theme;
#[doc(hidden)]
pub mod words;

#[doc(hidden)]
pub mod fault;
#[doc(hidden)]
pub mod media;

// Text to model.
#[doc(hidden)]
pub mod model;
#[doc(hidden)]
pub mod read;

#[doc(hidden)]
pub mod pantry;

// A course in a second language.
#[doc(hidden)]
pub mod translation;

// Computing: pure, exact.
#[doc(hidden)]
pub mod dough;
#[doc(hidden)]
pub mod formula;
#[doc(hidden)]
pub mod time;

// One recipe worked out, judged, and the one computed result.
#[doc(hidden)]
pub mod work;

// When what happens: the class plan and the home plan.
#[doc(hidden)]
pub mod plan;

#[doc(hidden)]
pub mod check;
#[doc(hidden)]
pub mod sheet;

// Painting: these decide nothing.
#[doc(hidden)]
pub mod draw;
#[doc(hidden)]
pub mod lists;
#[doc(hidden)]
pub mod paper;
#[doc(hidden)]
pub mod site;

// The stages in order, and what is published.
#[doc(hidden)]
pub mod edition;

// What stands at a place in a text, for whoever writes it.
#[doc(hidden)]
pub mod here;

// The text of a class as fields of a form, and back.
#[doc(hidden)]
pub mod form;

// A recipe that exists, made into a draft in our format.
#[doc(hidden)]
pub mod draft;

#[doc(hidden)]
pub mod changes;

#[doc(hidden)]
pub mod product;

// The edge: files and the terminal.
#[doc(hidden)]
pub mod store;

// A class while it is held.
#[doc(hidden)]
pub mod evening;

#[doc(hidden)]
pub mod preview;

#[doc(hidden)]
pub mod editor;

#[doc(hidden)]
pub mod cli;

// What may be used from outside.
pub use edition::{Edition, Further};
pub use fault::{Fault, Place, Position, Severity, Texts, Told};
pub use formula::{Scaling, Unscalable};
pub use measure::{Exact, Mass};
pub use media::Medium;
pub use model::{Content, Recipe};
pub use product::{EditionFiles, Inputs, Product, Products, Unmade, Worked};
pub use read::{Source, words_in};
pub use sheet::Sheet;
pub use statement::Statement;
pub use store::{
    Look, Outcome, Place as Output, PublishError, StoreError, Target, load,
    media as pictures, theme,
};
pub use theme::Theme;
pub use words::Words;
