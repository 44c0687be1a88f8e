//! `tourier handout CLASS`: everything that a class hands out, as one PDF: student sheets
//! of what is made, and bench cards for each group with its own amounts; labels for its
//! tubs.

use crate::formula::Scaling;
use crate::model::Class;
use crate::paper::{Job, Part, SetCover, Tubs};
use crate::plan::{Portion, Station, Who, stations};
use crate::sheet::{ForWhom, HandoutKind, Tub, build};

use super::args::HandoutArgs;
use super::handout::{Plate, Print, Shop, grid, job, plate, print, put};
use super::{Done, Stop};

/// Prints the set, or the labels.
pub(super) fn run(shop: &Shop, class: &Class, options: &HandoutArgs) -> Done {
    if options.scaling.scaling()? != Scaling::Batches(crate::measure::exact(1, 1)) {
        let words = "a class says itself how much each group makes; leave the size out";
        return Err(Stop::Use(words.to_owned()));
    }
    let mut print = print(options, shop.course, "");
    let cannot = |reason| {
        Stop::Use(format!("the handouts of `{}` cannot be made: {reason}", class.name))
    };
    let stations = stations(class, shop.edition.book()).map_err(cannot)?;
    if let Some(size) = &options.labels {
        let order =
            build::order(class, shop.edition.book(), shop.words).map_err(cannot)?;
        let tubs = tubs(&order.tubs, &stations, shop, class);
        let (course, words) = (shop.course, shop.words);
        let (title, paper) = (class.title.value.as_str(), print.paper);
        let tubs = Tubs { title, course, words, paper, stations: &tubs };
        let pdf = shop.press.tub_labels(&tubs, print.units, grid(size, print.paper)?);
        return put((&class.name, "labels"), &print, (options, pdf));
    }
    let portions = portions(&stations);
    let plates = plates(shop, &portions)?;
    let names: Vec<String> = stations.iter().map(|it| called(it, shop, class)).collect();
    let stations: Vec<(&str, &Station)> =
        names.iter().map(String::as_str).zip(&stations).collect();
    let made = Made { class, stations: &stations, portions: &portions, plates: &plates };
    let kinds = kinds(options, &mut print)?;
    let (jobs, parts) = made.jobs(shop, &print, &kinds);
    let cover = cover(shop, class, parts);
    if options.booklet {
        let Some(first) = jobs.first() else { return Err(Stop::Faults) };
        let data = shop.press.covered(&jobs, &cover, true);
        let pdf = shop.press.booklet(&data, first);
        return put((&class.name, "student-booklet"), &print, (options, pdf));
    }
    let what = if let [one] = kinds[..] { one.word() } else { "set" };
    let pdf = shop.press.print(&shop.press.covered(&jobs, &cover, false));
    put((&class.name, what), &print, (options, pdf))
}

/// The kinds of handout in the set.
fn kinds(options: &HandoutArgs, print: &mut Print) -> Result<Vec<HandoutKind>, Stop> {
    let chosen = options.kind.map(HandoutKind::from);
    if options.booklet && !matches!(chosen, None | Some(HandoutKind::Student)) {
        return Err(Stop::Use("a booklet is made of student sheets".to_owned()));
    }
    print.kind = chosen.unwrap_or(HandoutKind::Student);
    Ok(match chosen {
        None if options.booklet => vec![HandoutKind::Student],
        None => vec![HandoutKind::Student, HandoutKind::Bench],
        Some(kind) => vec![kind],
    })
}

/// Everything that is made, each size once.
fn portions(stations: &[Station]) -> Vec<Portion> {
    let mut portions: Vec<Portion> = Vec::new();
    for portion in stations.iter().flat_map(|station| &station.portions) {
        let known = |it: &Portion| same(it, portion);
        if !portions.iter().any(known) {
            portions.push(portion.clone());
        }
    }
    portions
}

fn same(one: &Portion, other: &Portion) -> bool {
    one.recipe == other.recipe && one.scaling == other.scaling
}

fn plates(shop: &Shop, portions: &[Portion]) -> Result<Vec<Plate>, Stop> {
    let plate = |portion: &Portion| {
        let recipe = super::recipe(shop.edition, &portion.recipe)?;
        plate(shop.edition, recipe, &portion.scaling, shop.words)
    };
    portions.iter().map(plate).collect()
}

/// What is made in a class.
struct Made<'a> {
    class: &'a Class,
    /// What each station is called, and what it makes.
    stations: &'a [(&'a str, &'a Station)],
    portions: &'a [Portion],
    plates: &'a [Plate],
}

impl<'a> Made<'a> {
    /// The handouts of these kinds in their order, and how often each is printed.
    fn jobs(
        &self,
        shop: &Shop<'a>,
        print: &Print,
        kinds: &[HandoutKind],
    ) -> (Vec<Job<'a>>, Vec<Part>) {
        let (mut jobs, mut parts) = (Vec::new(), Vec::new());
        for kind in kinds {
            let print = Print { kind: *kind, ..*print };
            if *kind == HandoutKind::Bench {
                self.cards(shop, &print, (&mut jobs, &mut parts));
            } else {
                self.sheets(shop, &print, (&mut jobs, &mut parts));
            }
        }
        (jobs, parts)
    }

    /// One sheet of each recipe, at the size that most of it is made in, for every baker.
    fn sheets(
        &self,
        shop: &Shop<'a>,
        print: &Print,
        (jobs, parts): (&mut Vec<Job<'a>>, &mut Vec<Part>),
    ) {
        let mut seen = Vec::new();
        for (portion, plate) in self.portions.iter().zip(self.plates) {
            if seen.contains(&&portion.recipe) {
                continue;
            }
            seen.push(&portion.recipe);
            let print = Print { batch: batch(plate.sheet.scale.factor), ..*print };
            let at = jobs.len();
            jobs.push(job(plate, shop, &print));
            let kind =
                shop.words.get(&format!("handout-{}", print.kind.word())).to_owned();
            let title = format!("{kind}: {}", plate.sheet.title);
            let copies = self.class.bakers.value;
            parts.push(Part { title, first: at, last: at, copies });
        }
    }

    /// The cards of each station, in the order of the stations.
    fn cards(
        &self,
        shop: &Shop<'a>,
        print: &Print,
        (jobs, parts): (&mut Vec<Job<'a>>, &mut Vec<Part>),
    ) {
        for (who, station) in self.stations {
            let first = jobs.len();
            for portion in &station.portions {
                let at = self.portions.iter().position(|it| same(it, portion));
                let Some(plate) = at.and_then(|at| self.plates.get(at)) else { continue };
                let print = Print { batch: batch(plate.sheet.scale.factor), ..*print };
                let whose = Some(*who);
                let makers = portion.each;
                let card = job(plate, shop, &print);
                jobs.push(Job { whose, makers, ..card });
            }
            let words = [("who", *who)];
            let title = shop.words.fill("handout-cards-for", &words);
            parts.push(Part { title, first, last: jobs.len() - 1, copies: 1 });
        }
    }
}

/// The batch's short name where the recipe's page offers it; nothing where it does not.
fn batch(factor: f64) -> &'static str {
    let known = [("half", 0.5), ("x1", 1.0), ("x2", 2.0), ("x3", 3.0)];
    let near = |(_, size): &&(&str, f64)| (size - factor).abs() < 1e-9;
    known.iter().find(near).map_or("", |(key, _)| key)
}

fn cover(shop: &Shop, class: &Class, parts: Vec<Part>) -> SetCover {
    let sessions = class.sessions.iter().map(|session| {
        let (from, to) = (session.value.from, session.value.to);
        let clock = |at: jiff::civil::DateTime| shop.words.clock(at.hour(), at.minute());
        let hours = shop.words.range(&clock(from), &clock(to));
        shop.words.list(&[shop.words.day(from.date()), hours])
    });
    let bakers = class.bakers.value.to_string();
    SetCover {
        title: class.title.value.clone(),
        line: shop.words.fill("handout-set-class", &[("count", &bakers)]),
        lists: vec![(String::new(), sessions.collect())],
        parts,
    }
}

/// What a station is called.
fn called(station: &Station, shop: &Shop, class: &Class) -> String {
    build::who(class, station.who, shop.words)
}

/// Whose tub, and what goes in: every group has its own, a demonstration has one.
fn tubs<'a>(
    tubs: &'a [Tub],
    stations: &[Station],
    shop: &Shop,
    class: &Class,
) -> Vec<(String, &'a Tub)> {
    let mut found = Vec::new();
    for (at, station) in stations.iter().enumerate() {
        let shown = station.who == Who::Instructor;
        for tub in tubs.iter().filter(|tub| (tub.each == ForWhom::Demonstration) == shown)
        {
            let group = u32::try_from(at).unwrap_or(u32::MAX);
            let makers = match tub.each {
                ForWhom::Baker => class.members(group),
                ForWhom::Group | ForWhom::Demonstration => 1,
            };
            for _ in 0..makers {
                found.push((called(station, shop, class), tub));
            }
        }
    }
    found
}
