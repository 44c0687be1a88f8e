//! What may be typed. What each command, option and value is for is said by message files, under
//! keys made of their names (`help`).

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

/// Everything that is typed.
#[derive(Clone, Parser)]
#[command(
    version = VERSION, propagate_version = true,
    disable_help_flag = true, disable_version_flag = true, disable_help_subcommand = true
)]
pub(super) struct Args {
    #[arg(long, global = true, default_value = CONTENT, value_name = "DIR")]
    pub(super) content: Vec<PathBuf>,
    #[arg(long, global = true, value_name = "DIR")]
    pub(super) theme: Option<PathBuf>,
    #[arg(long, short, global = true)]
    pub(super) quiet: bool,
    #[arg(long, global = true, value_enum, default_value_t = Color::Auto)]
    pub(super) color: Color,
    #[command(subcommand)]
    pub(super) command: Command,
}

/// When to colour messages.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum Color {
    Auto,
    Always,
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

/// The commands, each with examples of what to type.
#[derive(Clone, Subcommand)]
pub(super) enum Command {
    #[command(after_help = "tourier start content")]
    Start(StartArgs),
    #[command(after_help = "tourier publish --to output
tourier publish --content bread --content pastry --to site")]
    Publish(PublishArgs),
    #[command(after_help = "tourier preview --port 8000")]
    Preview(PreviewArgs),
    Editor,
    #[command(
        after_help = "tourier handout crescents --kind bench --units us --paper letter --pieces 24
tourier handout all --kind student
tourier handout all --booklet
tourier handout evening-3
tourier handout evening-3 --labels \"70 x 37 mm\"
tourier handout crescents --labels \"70 x 37 mm\""
    )]
    Handout(HandoutArgs),
    #[command(after_help = "tourier proof")]
    Proof(ProofArgs),
    #[command(after_help = "tourier facts crescents --pieces 24")]
    Facts(FactsArgs),
    #[command(after_help = "tourier scale tin-loaf --tin \"20 x 10 x 6 cm\"")]
    Scale(RecipeArgs),
    #[command(after_help = "tourier timetable evening-3
tourier timetable crescents --ready \"2027-03-07 09:00\"
tourier timetable evening-3 --as ics --group 2")]
    Timetable(TimetableArgs),
    #[command(after_help = "tourier today evening-3 \"all: first turn\"
tourier today evening-3 \"pairs 1-3: second turn; pair 4 late 10\" --now 18:55
tourier today evening-3 \"oven 2 out\"
tourier today evening-3")]
    Today(TodayArgs),
    #[command(after_help = "tourier note crescents \"baked 2 min longer\"
tourier note crescents
tourier note crescents \"taken up 1\"")]
    Note(NoteArgs),
    #[command(after_help = "tourier order evening-3 --as csv")]
    Order(OrderArgs),
    #[command(after_help = "tourier changes past/autumn content")]
    Changes(ChangesArgs),
    #[command(after_help = "tourier draft old-card.txt
tourier draft saved-page.html --to content/recipes/soda-bread.md
tourier draft - < pasted.txt")]
    Draft(DraftArgs),
    #[command(after_help = "tourier convert \"2 cups bread flour\" g")]
    Convert(ConvertArgs),
    #[command(
        after_help = "tourier completions bash > ~/.local/share/bash-completion/completions/tourier"
    )]
    Completions(CompletionsArgs),
    #[command(after_help = "tourier manual > tourier.1")]
    Manual,
    #[command(after_help = "tourier help handout")]
    Help(HelpArgs),
}

/// How faults are printed.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum As {
    Text,
    Json,
}

/// `start`.
#[derive(Clone, ClapArgs)]
pub(super) struct StartArgs {
    pub(super) dir: PathBuf,
}

/// `draft`.
#[derive(Clone, ClapArgs)]
pub(super) struct DraftArgs {
    pub(super) file: PathBuf,
    #[arg(long, value_name = "FILE")]
    pub(super) to: Option<PathBuf>,
}

/// `publish`.
#[derive(Clone, Default, ClapArgs)]
pub(super) struct PublishArgs {
    #[arg(long, value_name = "DIR")]
    pub(super) to: Option<PathBuf>,
    #[arg(long)]
    pub(super) among_others: bool,
    #[arg(long)]
    pub(super) thorough: bool,
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
    #[arg(long, value_parser = clap::value_parser!(u16).range(1..))]
    pub(super) port: Option<u16>,
    #[arg(long)]
    pub(super) desk: bool,
    #[arg(long, conflicts_with = "desk")]
    pub(super) to_read: bool,
    #[arg(long, value_name = "ADDRESS", conflicts_with = "to_read")]
    pub(super) room: Option<Option<IpAddr>>,
    #[arg(long)]
    pub(super) no_browser: bool,
}

/// `handout`.
#[derive(Clone, ClapArgs)]
pub(super) struct HandoutArgs {
    pub(super) recipe: String,
    #[arg(long, value_enum)]
    pub(super) kind: Option<KindArg>,
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsArg>,
    #[arg(long, value_enum)]
    pub(super) paper: Option<PaperArg>,
    #[arg(long, value_name = "TAG")]
    pub(super) language: Option<String>,
    #[arg(long, value_enum, value_delimiter = ',', value_name = "LEVEL")]
    pub(super) level: Vec<LevelArg>,
    #[arg(long)]
    pub(super) booklet: bool,
    #[arg(long, value_name = "SIZE", conflicts_with = "booklet")]
    pub(super) labels: Option<String>,
    #[arg(long, default_value = OUTPUT, value_name = "DIR")]
    pub(super) to: PathBuf,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// A word for each value of another type, as typed.
macro_rules! typed {
    ($name:ident, $of:ident, $($value:ident),*) => {
        #[derive(Clone, Copy, ValueEnum)]
        pub(super) enum $name {
            $($value),*
        }

        impl From<$name> for crate::sheet::$of {
            fn from(typed: $name) -> Self {
                match typed { $($name::$value => Self::$value),* }
            }
        }
    };
}

typed!(KindArg, HandoutKind, Student, Bench, LargePrint);
typed!(UnitsArg, Units, Metric, Us);
typed!(LevelArg, Level, Beginners, Practised);
typed!(PaperArg, Paper, A4, Letter);

/// `proof`.
#[derive(Clone, ClapArgs)]
pub(super) struct ProofArgs {
    #[arg(long = "as", value_enum, default_value_t = As::Text)]
    pub(super) form: As,
}

/// `facts`.
#[derive(Clone, ClapArgs)]
pub(super) struct FactsArgs {
    #[arg(required_unless_present = "schema")]
    pub(super) recipe: Option<String>,
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
    Facts,
    Together,
    Course,
    Pantry,
    Glossary,
    Class,
    Recipe,
    Technique,
    Translation,
}

/// A recipe and how to scale it.
#[derive(Clone, ClapArgs)]
pub(super) struct RecipeArgs {
    pub(super) recipe: String,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// `today`.
#[derive(Clone, ClapArgs)]
pub(super) struct TodayArgs {
    pub(super) class: String,
    #[arg(default_value = "")]
    pub(super) said: String,
    #[arg(long, value_name = "TIME")]
    pub(super) now: Option<String>,
    #[arg(long = "try")]
    pub(super) only_try: bool,
    #[arg(long = "as", value_enum, default_value_t = PlanForm::Text)]
    pub(super) form: PlanForm,
}

/// `note`.
#[derive(Clone, ClapArgs)]
pub(super) struct NoteArgs {
    pub(super) recipe: String,
    #[arg(default_value = "")]
    pub(super) said: String,
    #[arg(long, value_name = "DATE")]
    pub(super) on: Option<String>,
}

/// `timetable`.
#[derive(Clone, ClapArgs)]
pub(super) struct TimetableArgs {
    pub(super) name: String,
    #[arg(long, value_name = "TIME")]
    pub(super) ready: Option<String>,
    #[arg(long = "as", value_enum, default_value_t = PlanForm::Text)]
    pub(super) form: PlanForm,
    #[arg(long, value_name = "NUMBER")]
    pub(super) group: Option<u32>,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// How a plan is printed.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum PlanForm {
    Text,
    Json,
    Ics,
    Svg,
}

/// `order`.
#[derive(Clone, ClapArgs)]
pub(super) struct OrderArgs {
    pub(super) name: String,
    #[arg(long = "as", value_enum, default_value_t = OrderForm::Text)]
    pub(super) form: OrderForm,
    #[command(flatten)]
    pub(super) scaling: ScalingArgs,
}

/// How an order is printed.
#[derive(Clone, Copy, ValueEnum)]
pub(super) enum OrderForm {
    Text,
    Csv,
    Json,
}

/// `changes`.
#[derive(Clone, ClapArgs)]
pub(super) struct ChangesArgs {
    pub(super) old: PathBuf,
    pub(super) new: PathBuf,
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsArg>,
    #[arg(long = "as", value_enum, default_value_t = As::Text)]
    pub(super) form: As,
}

/// `convert`.
#[derive(Clone, ClapArgs)]
pub(super) struct ConvertArgs {
    pub(super) amount: String,
    pub(super) unit: Option<String>,
}

/// `completions`.
#[derive(Clone, ClapArgs)]
pub(super) struct CompletionsArgs {
    #[arg(value_enum)]
    pub(super) shell: clap_complete::Shell,
}

/// `help`.
#[derive(Clone, ClapArgs)]
pub(super) struct HelpArgs {
    pub(super) command: Option<String>,
}

/// Scaling, wherever a recipe is named, and in which of its ways it is meant.
#[derive(Clone, ClapArgs, Default)]
pub(super) struct ScalingArgs {
    #[arg(long, value_name = "NUMBER")]
    pub(super) pieces: Option<u64>,
    #[arg(long, value_name = "WEIGHT")]
    pub(super) piece_weight: Option<String>,
    #[arg(long, value_name = "NUMBER", conflicts_with_all = ["pieces", "piece_weight", "flour", "total", "tin"])]
    pub(super) batches: Option<String>,
    #[arg(long, value_name = "WEIGHT", conflicts_with_all = ["pieces", "piece_weight", "batches", "total", "tin"])]
    pub(super) flour: Option<String>,
    #[arg(long, value_name = "WEIGHT", conflicts_with_all = ["pieces", "piece_weight", "batches", "flour", "tin"])]
    pub(super) total: Option<String>,
    #[arg(long, value_name = "SIZE", conflicts_with_all = ["pieces", "piece_weight", "batches", "flour", "total"])]
    pub(super) tin: Option<String>,
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
