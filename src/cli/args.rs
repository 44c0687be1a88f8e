//! What may be typed.

use std::net::IpAddr;
use std::path::{Path, PathBuf};

use clap::{Args as ClapArgs, Parser, Subcommand, ValueEnum};

use crate::formula::Scaling;
use crate::measure::{Exact, Mass, Unit, parse};
use crate::model::Quantity;
use crate::read::{amount_of, tin};
use crate::said;

use super::Stop;

/// The program's version, and where the built-in pantry's numbers come from.
const VERSION: &str = concat!(env!("CARGO_PKG_VERSION"), " (pantry: USDA SR28)");

/// The output folder where none is named.
pub(super) const OUTPUT: &str = "output";

/// The content folder where none is named.
pub(super) const CONTENT: &str = "content";

/// Turns a folder of hand-baking recipes in plain text into a checked course site and
/// printed handouts.
#[derive(Clone, Parser)]
#[command(version = VERSION, about, propagate_version = true)]
pub(super) struct Args {
    /// The content folder. Named several times, several courses are published: each to a folder
    /// of its own name below the output folder.
    #[arg(long, global = true, default_value = CONTENT, value_name = "DIR")]
    pub(super) content: Vec<PathBuf>,
    /// A theme's folder, laid over the default theme.
    #[arg(long, global = true, value_name = "DIR")]
    pub(super) theme: Option<PathBuf>,
    /// Show no progress and no closing line.
    #[arg(long, short, global = true)]
    pub(super) quiet: bool,
    /// When to colour messages.
    #[arg(long, global = true, value_enum, default_value_t = Color::Auto)]
    pub(super) color: Color,
    #[command(subcommand)]
    pub(super) command: Command,
}

/// When to colour messages.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum Color {
    /// On a terminal, unless NO_COLOR is set.
    Auto,
    /// Always.
    Always,
    /// Never.
    Never,
}

impl Color {
    /// Makes every later message follow the choice.
    pub(super) fn apply(self) {
        match self {
            Self::Auto => anstream::ColorChoice::Auto,
            Self::Always => anstream::ColorChoice::Always,
            Self::Never => anstream::ColorChoice::Never,
        }
        .write_global();
    }
}

/// The commands.
#[derive(Clone, Subcommand)]
pub(super) enum Command {
    /// Write a small course to begin from, into a new folder.
    #[command(after_help = "Example: tourier start content")]
    Start(StartArgs),
    /// Check everything, then write the site and every handout; only what changed is made.
    #[command(after_help = "Examples: tourier publish --to output
          tourier publish --content bread --content pastry --to site")]
    Publish(PublishArgs),
    /// Serve the site on this machine only, and make it anew when a file is saved.
    #[command(after_help = "Example: tourier preview --port 8000")]
    Preview(PreviewArgs),
    /// Speak with your editor while you write: faults, completion, what a word is (Language
    /// Server Protocol on standard input and output).
    Editor,
    /// Print one handout as PDF, or those of the whole course or of a class as one.
    #[command(
        after_help = "Examples: tourier handout crescents --kind bench --units us --paper letter --pieces 24
          tourier handout all --kind student
          tourier handout all --booklet
          tourier handout evening-3
          tourier handout evening-3 --labels \"70 x 37 mm\"
          tourier handout crescents --labels \"70 x 37 mm\""
    )]
    Handout(HandoutArgs),
    /// Check everything and write nothing.
    #[command(after_help = "Example: tourier proof")]
    Proof(ProofArgs),
    /// Print everything worked out about a recipe, or several made together, as JSON.
    #[command(after_help = "Example: tourier facts crescents --pieces 24")]
    Facts(FactsArgs),
    /// Show a recipe's formula, or of several made together, scaled, in both unit systems.
    #[command(after_help = "Example: tourier scale tin-loaf --tin \"20 x 10 x 6 cm\"")]
    Scale(RecipeArgs),
    /// Plan a class, or a recipe at home backwards from when it shall be ready.
    #[command(
        after_help = "Examples:\n  tourier timetable evening-3\n  tourier timetable crescents --ready \"2027-03-07 09:00\"\n  tourier timetable evening-3 --now 18:55 --done \"pairs 1-3: second-turn\""
    )]
    Timetable(TimetableArgs),
    /// An evening under way: keep what happened, and plan the rest anew.
    #[command(
        after_help = "Examples: tourier today evening-3 \"all: first turn\"\n          tourier today evening-3 \"pairs 1-3: second turn; pair 4 late 10\" --now 18:55\n          tourier today evening-3 \"oven 2 out\"\n          tourier today evening-3"
    )]
    Today(TodayArgs),
    /// Note something of a recipe at the bench, for its next edition; show its notes.
    #[command(
        after_help = "Examples: tourier note crescents \"baked 2 min longer\"\n          tourier note crescents\n          tourier note crescents \"taken up 1\""
    )]
    Note(NoteArgs),
    /// The order list and the weigh-out of a class, or of recipes made together.
    #[command(after_help = "Example: tourier order evening-3 --as csv")]
    Order(OrderArgs),
    /// Say what differs between two editions of the content, in a reader's words.
    #[command(after_help = "Example: tourier changes past/autumn content")]
    Changes(ChangesArgs),
    /// Make a draft of a recipe that exists: plain text pasted from anywhere, a saved web page
    /// with schema.org data, or that data alone. Nothing is fetched.
    #[command(
        after_help = "Examples: tourier draft old-card.txt\n          tourier draft saved-page.html --to content/recipes/soda-bread.md\n          tourier draft - < pasted.txt"
    )]
    Draft(DraftArgs),
    /// Convert one amount, naming the density used.
    #[command(after_help = "Example: tourier convert \"2 cups bread flour\" g")]
    Convert(ConvertArgs),
    /// Print what a shell needs to complete commands and options.
    #[command(
        after_help = "Example: tourier completions bash > ~/.local/share/bash-completion/completions/tourier"
    )]
    Completions(CompletionsArgs),
    /// Print the manual page, for `man`.
    #[command(after_help = "Example: tourier manual > tourier.1")]
    Manual,
}

/// How faults are printed.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum As {
    /// For people.
    Text,
    /// For programs.
    Json,
}

/// `start`.
#[derive(Clone, ClapArgs)]
pub(super) struct StartArgs {
    /// The folder to write the course into; a new one, or one with nothing in it.
    pub(super) dir: PathBuf,
}

/// `draft`.
#[derive(Clone, ClapArgs)]
pub(super) struct DraftArgs {
    /// The file with the recipe; `-` for what is typed or pasted in.
    pub(super) file: PathBuf,
    /// The file to write, in place of one in the content folder named after the recipe; `-` to
    /// show the draft only.
    #[arg(long, value_name = "FILE")]
    pub(super) to: Option<PathBuf>,
}

/// `publish`.
#[derive(Clone, Default, ClapArgs)]
pub(super) struct PublishArgs {
    /// The output folder; `output` where not said. Of several courses the folder that theirs
    /// stand in.
    #[arg(long, value_name = "DIR")]
    pub(super) to: Option<PathBuf>,
    /// Publish to the folder named by `--to` though files of others lie in it and it was
    /// never published to; they stay as they are.
    #[arg(long)]
    pub(super) among_others: bool,
    /// Read every published file through to see that it is whole, not only its size and
    /// time.
    #[arg(long)]
    pub(super) thorough: bool,
    /// A folder of made files that machines and courses share: what is in it is not made
    /// again, and what is made is put into it where that may be written to.
    #[arg(long, value_name = "DIR")]
    pub(super) shared: Option<PathBuf>,
}

impl PublishArgs {
    /// The output folder.
    pub(super) fn folder(&self) -> &Path {
        self.to.as_deref().unwrap_or(Path::new(OUTPUT))
    }
}

/// `preview`.
#[derive(Clone, ClapArgs)]
pub(super) struct PreviewArgs {
    /// The port to serve on; a free one where not said.
    #[arg(long, value_parser = clap::value_parser!(u16).range(1..))]
    pub(super) port: Option<u16>,
    /// Begin at the desk: the texts written in the browser, beside the page that they make.
    #[arg(long)]
    pub(super) desk: bool,
    /// Only to read: no desk, and nothing is written.
    #[arg(long, conflicts_with = "desk")]
    pub(super) to_read: bool,
    /// Let phones on the same local network read the pages and mark what happens on a
    /// class's evening, by a code to scan; at ADDRESS where this machine has several.
    #[arg(long, value_name = "ADDRESS", conflicts_with = "to_read")]
    pub(super) room: Option<Option<IpAddr>>,
    /// Do not open the browser.
    #[arg(long)]
    pub(super) no_browser: bool,
}

/// `handout`.
#[derive(Clone, ClapArgs)]
pub(super) struct HandoutArgs {
    /// The file name of a recipe; several, `crescents,chocolate-batons`, in one, a dough that they
    /// share once; `all` for every recipe of the course behind a cover; the file name of a
    /// class for its whole set: student sheets, and bench cards for each group with its own
    /// amounts.
    pub(super) recipe: String,
    /// The kind of handout: `student` where not said, for a class `student` and `bench`.
    #[arg(long, value_enum)]
    pub(super) kind: Option<KindArg>,
    /// The units that come first; the course's own where not said.
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsArg>,
    /// The paper; the course's own where not said.
    #[arg(long, value_enum)]
    pub(super) paper: Option<PaperArg>,
    /// The language, of those that the course is to be had in; its first where not said.
    #[arg(long, value_name = "TAG")]
    pub(super) language: Option<String>,
    /// What is said to some of those who bake, which pages fold away, printed too; for a class
    /// as its file says where not said.
    #[arg(long, value_enum, value_delimiter = ',', value_name = "LEVEL")]
    pub(super) level: Vec<LevelArg>,
    /// Two pages on each side of the paper, to be folded in half.
    #[arg(long)]
    pub(super) booklet: bool,
    /// Labels for what is weighed out, on sheets of labels of this size: `70 x 37 mm`.
    #[arg(long, value_name = "SIZE", conflicts_with = "booklet")]
    pub(super) labels: Option<String>,
    /// The folder to write to.
    #[arg(long, default_value = OUTPUT, value_name = "DIR")]
    pub(super) to: PathBuf,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// A word for each value of another type, as typed.
macro_rules! typed {
    ($name:ident, $of:ident, $doc:literal, $($value:ident: $help:literal),*) => {
        #[doc = $doc]
        #[derive(Clone, Copy, ValueEnum)]
        pub(super) enum $name {
            $(#[doc = $help] $value),*
        }

        impl From<$name> for crate::sheet::$of {
            fn from(typed: $name) -> Self {
                match typed { $($name::$value => Self::$value),* }
            }
        }
    };
}

typed!(KindArg, HandoutKind, "A kind of handout.",
    Student: "To take home", Bench: "One page to stand at the station", LargePrint: "The student sheet in 18 pt");
typed!(UnitsArg, Units, "A unit system.", Metric: "Metric", Us: "US customary");
typed!(LevelArg, Level, "For whom a line is.",
    Beginners: "Who make it for the first time", Practised: "Who have done it before");
typed!(PaperArg, Paper, "A size of paper.", A4: "A4", Letter: "US Letter");

/// `proof`.
#[derive(Clone, ClapArgs)]
pub(super) struct ProofArgs {
    /// The form of the answer.
    #[arg(long = "as", value_enum, default_value_t = As::Text)]
    pub(super) form: As,
}

/// `facts`.
#[derive(Clone, ClapArgs)]
pub(super) struct FactsArgs {
    /// The recipe's file name; several, `crescents,chocolate-batons`, are made together, a dough
    /// that they share once.
    #[arg(required_unless_present = "schema")]
    pub(super) recipe: Option<String>,
    /// Print the JSON Schema of the facts, or of a text that you write.
    #[arg(
        long, value_enum, num_args = 0..=1, require_equals = true,
        default_missing_value = "facts", value_name = "OF"
    )]
    pub(super) schema: Option<SchemaOf>,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// What a schema describes.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum SchemaOf {
    /// What `facts` prints.
    Facts,
    /// What it prints of several recipes.
    Together,
    /// course.yaml.
    Course,
    /// pantry.yaml.
    Pantry,
    /// glossary.yaml.
    Glossary,
    /// A class.
    Class,
    /// A recipe's head.
    Recipe,
    /// A technique's head.
    Technique,
    /// The head of a text in a further language.
    Translation,
}

/// A recipe and how to scale it.
#[derive(Clone, ClapArgs)]
pub(super) struct RecipeArgs {
    /// The recipe's file name; several, `crescents,chocolate-batons`, are made together, a dough
    /// that they share once.
    pub(super) recipe: String,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// `today`.
#[derive(Clone, ClapArgs)]
pub(super) struct TodayArgs {
    /// The class's file name.
    pub(super) class: String,
    /// What happened: `pairs 1-3: second turn; pair 4 late 10; pair 2: brush skipped`, `all:
    /// first turn at 18:50`, `pair 1: bake from 19:40`, `all: nothing yet`, `pair 3 gone`, `oven
    /// 2 out`, `oven 2 back`; `take back` takes back the line before. The beginning of a step's
    /// name will do. Groups that are not named have kept to the plan.
    #[arg(default_value = "")]
    pub(super) said: String,
    /// The time now, `18:55`; this machine's where it is not said.
    #[arg(long, value_name = "TIME")]
    pub(super) now: Option<String>,
    /// Only see what would become of it: nothing is kept.
    #[arg(long = "try")]
    pub(super) only_try: bool,
    /// The form of the answer.
    #[arg(long = "as", value_enum, default_value_t = PlanForm::Text)]
    pub(super) form: PlanForm,
}

/// `note`.
#[derive(Clone, ClapArgs)]
pub(super) struct NoteArgs {
    /// The recipe's file name.
    pub(super) recipe: String,
    /// What to note; `taken up 2` where the recipe has the second note now, `taken up` where it
    /// has all. Nothing shows the notes.
    #[arg(default_value = "")]
    pub(super) said: String,
    /// The day of the note, `2027-03-03`; this machine's today where it is not said.
    #[arg(long, value_name = "DATE")]
    pub(super) on: Option<String>,
}

/// `timetable`.
#[derive(Clone, ClapArgs)]
pub(super) struct TimetableArgs {
    /// The class's or the recipe's file name; several recipes, `crescents,chocolate-batons`, are
    /// made together, a dough that they share once.
    pub(super) name: String,
    /// For a recipe: when it shall be ready, `2027-03-07 09:00`.
    #[arg(long, value_name = "TIME")]
    pub(super) ready: Option<String>,
    /// The form of the answer.
    #[arg(long = "as", value_enum, default_value_t = PlanForm::Text)]
    pub(super) form: PlanForm,
    /// With `--as ics`: the calendar of the group of this number; the instructor's without it.
    #[arg(long, value_name = "NUMBER")]
    pub(super) group: Option<u32>,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// How a plan is printed.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum PlanForm {
    /// For people.
    Text,
    /// For programs.
    Json,
    /// A calendar file.
    Ics,
    /// A chart.
    Svg,
}

/// `order`.
#[derive(Clone, ClapArgs)]
pub(super) struct OrderArgs {
    /// The class's or the recipe's file name; several recipes, `crescents,chocolate-batons`, are
    /// made together, a dough that they share once.
    pub(super) name: String,
    /// The form of the answer.
    #[arg(long = "as", value_enum, default_value_t = OrderForm::Text)]
    pub(super) form: OrderForm,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// How an order is printed.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum OrderForm {
    /// For people.
    Text,
    /// For a spreadsheet.
    Csv,
    /// For programs.
    Json,
}

/// `changes`.
#[derive(Clone, ClapArgs)]
pub(super) struct ChangesArgs {
    /// The content folder of the old edition.
    pub(super) old: PathBuf,
    /// The content folder of the new edition.
    pub(super) new: PathBuf,
    /// The units to say it in; the new edition's own where not said.
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsArg>,
    /// The form of the answer.
    #[arg(long = "as", value_enum, default_value_t = As::Text)]
    pub(super) form: As,
}

/// `convert`.
#[derive(Clone, ClapArgs)]
pub(super) struct ConvertArgs {
    /// What to convert: `2 cups bread flour`, `190 °C`.
    pub(super) amount: String,
    /// The unit wanted: `g`, `oz`, `cup`, `tbsp`, `ml`; for an oven `°C`, `°F`, `fan` or
    /// `no fan`. An oven written with its fan, `fan 170 °C`, needs none.
    pub(super) unit: Option<String>,
}

/// `completions`.
#[derive(Clone, ClapArgs)]
pub(super) struct CompletionsArgs {
    /// The shell.
    #[arg(value_enum)]
    pub(super) shell: clap_complete::Shell,
}

/// Scaling, wherever a recipe is named, and in which of its ways it is meant.
#[derive(Clone, ClapArgs, Default)]
pub(super) struct ScalingArgs {
    /// So many pieces: `24`.
    #[arg(long, value_name = "NUMBER")]
    pub(super) pieces: Option<u64>,
    /// Pieces of this weight: `60g`; as many as written, or as `--pieces` says.
    #[arg(long, value_name = "WEIGHT")]
    pub(super) piece_weight: Option<String>,
    /// So many batches: `1.5`.
    #[arg(long, value_name = "NUMBER", conflicts_with_all = ["pieces", "piece_weight", "flour", "total", "tin"])]
    pub(super) batches: Option<String>,
    /// This much flour in all: `1kg`.
    #[arg(long, value_name = "WEIGHT", conflicts_with_all = ["pieces", "piece_weight", "batches", "total", "tin"])]
    pub(super) flour: Option<String>,
    /// This much in all: `2kg`.
    #[arg(long, value_name = "WEIGHT", conflicts_with_all = ["pieces", "piece_weight", "batches", "flour", "tin"])]
    pub(super) total: Option<String>,
    /// For another tin: `23 cm round`.
    #[arg(long, value_name = "SIZE", conflicts_with_all = ["pieces", "piece_weight", "batches", "flour", "total"])]
    pub(super) tin: Option<String>,
    /// In one of its ways, or several: `"oat drink"`, `"without walnuts"`.
    #[arg(long, value_name = "WAY", value_delimiter = ',')]
    pub(super) with: Vec<String>,
}

impl ScalingArgs {
    /// The scaling that was typed; one batch where none was.
    pub(super) fn scaling(&self) -> Result<Scaling, Stop> {
        let wrong = |option: &str, text: &str, example: &str| {
            Stop::Use(said!("option-unreadable", option, value = text, example))
        };
        if let Some(text) = &self.piece_weight {
            let weight = mass(text).ok_or_else(|| wrong("piece-weight", text, "60g"))?;
            return Ok(Scaling::PieceWeight { pieces: self.pieces, weight });
        }
        if let Some(pieces) = self.pieces {
            return Ok(Scaling::Pieces(pieces));
        }
        if let Some(text) = &self.batches {
            let batches =
                parse(text, true).ok_or_else(|| wrong("batches", text, "1.5"))?;
            return Ok(Scaling::Batches(batches));
        }
        if let Some(text) = &self.tin {
            return tin(text)
                .map(Scaling::Tin)
                .ok_or_else(|| wrong("tin", text, "\"23 cm round\""));
        }
        type Weighed<'a> = (&'a str, &'a Option<String>, fn(Mass) -> Scaling);
        let weights: [Weighed; 2] = [
            ("flour", &self.flour, Scaling::Flour),
            ("total", &self.total, Scaling::Total),
        ];
        for (option, text, scaling) in weights {
            if let Some(text) = text {
                return mass(text).map(scaling).ok_or_else(|| wrong(option, text, "1kg"));
            }
        }
        Ok(Scaling::Batches(Exact::from_integer(1.into())))
    }
}

/// A weight as typed: `60g`, `1 kg`, `2 lb`.
fn mass(text: &str) -> Option<Mass> {
    let (Quantity::Unit(count, unit), rest) = amount_of(text, text.contains(','))? else {
        return None;
    };
    let grams = Unit::grams(unit).filter(|_| rest.trim().is_empty())?;
    Some(Mass::grams(count * grams))
}
