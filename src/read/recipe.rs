//! One recipe file to a recipe.

use std::collections::BTreeMap;

use crate::fault::{Fault, FileName, Place, Placed, clip};
use crate::measure::{Exact, Mass, exact};
use crate::model::{
    Accept, Included, Makes, Part, Preferment, Quantity, Recipe, Section, Shown, Step,
    Tin, Unread, Video,
};
use crate::said;

use super::fields::{Fields, entries};
use super::lexicon::{Lexicon, Locale};
use super::mark::mark;
use super::measured::measured;
use super::yaml::Node;
use super::{
    alternative, amount, body, picture, prose, purpose, quantity, swaps, ticket,
};

/// What a recipe's head may say.
const KEYS: [&str; 21] = [
    "title",
    "summary",
    "makes",
    "family",
    "formula",
    "preferment",
    "swaps",
    "own page",
    "dough temperature",
    "dough density",
    "loss",
    "bake loss",
    "true hydration",
    "included",
    "picture",
    "print",
    "also for",
    "tin",
    "watch",
    "to settle",
    "accept",
];

/// More sizes than anyone asks for.
const MOST_ASKED: usize = 24;

/// Reads the recipe `name` from the text of `file`. `locale` is how
/// numbers and amounts are written.
pub(super) fn read(
    file: &FileName,
    text: &str,
    name: &str,
    locale: Locale,
    faults: &mut Vec<Fault>,
) -> Option<Recipe> {
    let (head, node) = body::parsed_head(file, text, faults)?;
    let mut fields = Fields::new(node, &KEYS, faults);
    let mut recipe = read_head(&mut fields, name, locale, (file, text));
    fields.finish();
    let place = Place::new(file, head.body, text.len());
    read_body(&text[head.body..], &place, &mut recipe, locale.words, faults);
    Some(recipe)
}

fn read_head(
    fields: &mut Fields,
    name: &str,
    locale: Locale,
    (file, text): (&FileName, &str),
) -> Recipe {
    let mut unread = Unread::default();
    let title = fields.needed("title", "Crescents");
    let summary = fields.needed("summary", said!("example-recipe-summary")).value;
    let makes = stated(fields, locale, &mut unread);
    let tin = tin_of(fields, makes.as_ref());
    let formula = formula(fields, locale, text, &mut unread);
    let videos = videos(fields, &mut unread);
    Recipe {
        name: name.to_owned(),
        title,
        summary,
        makes,
        family: fields.text("family").map(|family| family.value),
        formula,
        untold: None,
        preferments: preferments(fields),
        swaps: swaps::swaps(fields, locale),
        own_pages: fields.list("own page").unwrap_or_default(),
        way: None,
        dough_temperature: fields.parsed(
            "dough temperature",
            "22 °C",
            quantity::temperature,
        ),
        dough_density: fields
            .parsed("dough density", "1.1 g/ml", density)
            .map(|d| d.value),
        loss: fields
            .parsed("loss", "2 %", loss)
            .map_or_else(|| exact(0, 1), |loss| loss.value),
        bake_loss: fields.parsed("bake loss", "12 %", loss).map(|loss| loss.value),
        true_hydration: fields
            .parsed("true hydration", "yes", yes)
            .map(|answer| answer.value),
        included: fields
            .parsed("included", "by name only", by_name)
            .map_or(Included::Whole, |said| said.value),
        picture: shown(fields),
        printed: fields.parsed("print", "no", yes).is_none_or(|said| said.value),
        also_for: also_for(fields),
        tin,
        videos,
        unsettled: fields.placed_texts("to settle"),
        accept: accept(fields),
        opening: Vec::new(),
        parts: Vec::new(),
        pictures: Vec::new(),
        links: Vec::new(),
        marks: BTreeMap::new(),
        unread,
        place: Place::new(file, 0, text.len()),
    }
}

/// `picture: crescents.jpg, eight crescents on a rack`.
fn shown(fields: &mut Fields) -> Option<Shown> {
    let read = picture::in_line(&fields.text("picture")?);
    read.map_err(|fault| fields.faults().push(fault)).ok()
}

/// `also for: 6, 8, 18, 24`.
fn also_for(fields: &mut Fields) -> Vec<Placed<u64>> {
    let size = |text: &str| {
        text.trim().parse().ok().filter(|count| (1..=10_000).contains(count))
    };
    let sizes = |text: &str| {
        let sizes: Option<Vec<u64>> = text.split(',').map(size).collect();
        sizes.filter(|sizes| sizes.len() <= MOST_ASKED)
    };
    let said = fields.parsed("also for", "6, 8, 18, 24", sizes);
    said.map_or_else(Vec::new, |said| {
        said.value.iter().map(|size| Placed::new(*size, said.place.clone())).collect()
    })
}

/// `by name only`.
fn by_name(text: &str) -> Option<Included> {
    (text == "by name only").then_some(Included::ByName)
}

/// The tin: its own key says it, or what the recipe makes. They say one thing.
fn tin_of(fields: &mut Fields, makes: Option<&Placed<Makes>>) -> Option<Placed<Tin>> {
    let said = fields.parsed("tin", said!("example-tin"), quantity::tin);
    let made = makes.and_then(|makes| match &makes.value {
        Makes::Tins { tin, .. } => Some(Placed::new(tin.clone(), makes.place.clone())),
        Makes::Pieces { .. } | Makes::Weight(_) => None,
    });
    if let (Some(said), Some(made)) = (&said, &made)
        && said.value != made.value
    {
        let message = said!("tin-twice");
        fields.faults().push(
            Fault::error("bad-value", &said.place, message).help(said!("tin-twice-help")),
        );
    }
    made.or(said)
}

/// `22 crescents`, `2 dozen rolls`, `12-14 pieces`, `2 x 9 in round`, `1 loaf`, `1150 g`,
/// `1 lb 9 oz`.
fn stated(
    fields: &mut Fields,
    locale: Locale,
    unread: &mut Unread,
) -> Option<Placed<Makes>> {
    let text = fields.text("makes")?;
    match makes(&text.value, locale) {
        Some(makes) => Some(Placed::new(makes, text.place)),
        None => {
            let message = said!("bad-makes", makes = clip(&text.value));
            let fault = Fault::error("bad-value", &text.place, message);
            fields.faults().push(fault.help(said!("bad-makes-help")));
            unread.makes = true;
            None
        }
    }
}

/// What a batch makes. A range of pieces counts as its middle, a
/// half as one more: each is then the smaller, and none is short.
fn makes(text: &str, locale: Locale) -> Option<Makes> {
    let found = measured(text, locale).ok()?;
    let rest = found.rest.trim();
    let weight = match &found.quantity {
        Quantity::Unit(value, unit) => unit.grams().map(|grams| value * grams),
        Quantity::Sum(terms) => {
            terms.iter().map(|(value, unit)| Some(value * unit.grams()?)).sum()
        }
        Quantity::Pieces(middle, _) => {
            let range = found.range.map(|(low, high)| [middle * low, middle * high]);
            return pieces(middle, range, rest);
        }
        Quantity::Batches(count) => {
            let word = if *count == exact(1, 1) { "batch" } else { "batches" };
            return pieces(count, None, word);
        }
    };
    let sound =
        |grams: &Exact| found.range.is_none() && rest.is_empty() && grams.is_positive();
    weight.filter(sound).map(|grams| Makes::Weight(Mass::grams(grams)))
}

fn pieces(count: &Exact, range: Option<[Exact; 2]>, rest: &str) -> Option<Makes> {
    let whole = |number: &Exact| {
        let number = number.is_integer().then(|| crate::measure::ceil(number));
        number.filter(|number| (1..=100_000).contains(number))
    };
    let ends = match &range {
        Some([low, high]) => Some([whole(low)?, whole(high)?]),
        None => None,
    };
    let count = whole(&if ends.is_some() { count.ceil() } else { count.clone() })?;
    let size = rest.strip_prefix(['x', '×']).filter(|size| size.starts_with(' '));
    if let Some(tin) = size.and_then(quantity::tin) {
        return ends.is_none().then_some(Makes::Tins { count, tin });
    }
    let word = rest.to_owned();
    (!rest.is_empty()).then_some(Makes::Pieces { count, word, range: ends })
}

/// `sponge`, or several: `starter, levain from starter`, of which the second takes in the
/// first.
fn preferments(fields: &mut Fields) -> Vec<Preferment> {
    let listed = fields.list("preferment").unwrap_or_default();
    let one = |text: Placed<String>| match text.value.split_once(" from ") {
        None => Preferment { section: text, from: None },
        Some((section, from)) => {
            let start = text.value.len() - from.len();
            let part = |words: &str, start: usize| {
                let place = text.place.part(start, start + words.len());
                Placed::new(words.trim().to_owned(), place)
            };
            Preferment { section: part(section, 0), from: Some(part(from, start)) }
        }
    };
    listed.into_iter().map(one).collect()
}

/// `2 %` as a part of 1, below one half.
fn loss(text: &str) -> Option<Exact> {
    let (value, sign) = quantity::number(text, false)?;
    (sign.trim() == "%" && value < exact(50, 1)).then(|| value / exact(100, 1))
}

/// `yes` or `no`.
pub(super) fn yes(text: &str) -> Option<bool> {
    match text.to_lowercase().as_str() {
        "yes" | "true" => Some(true),
        "no" | "false" => Some(false),
        _ => None,
    }
}

/// `1.1 g/ml`.
pub(crate) fn density(text: &str) -> Option<Exact> {
    let (value, unit) = quantity::number(text, false)?;
    let sound = value > exact(0, 1) && unit.trim() == "g/ml";
    sound.then_some(value)
}

fn formula(
    fields: &mut Fields,
    locale: Locale,
    text: &str,
    unread: &mut Unread,
) -> Vec<Section> {
    let Some(node) = fields.take("formula") else { return Vec::new() };
    let entries = match node.value {
        Node::Map(entries) => entries,
        Node::List(_) | Node::Text(_) | Node::Empty => {
            let name = Placed::new("dough".to_owned(), node.place.part(0, 0));
            vec![(name, node)]
        }
    };
    let mut room = MOST_LINES;
    let mut sections = Vec::new();
    for (name, node) in entries {
        let mut lines = lines(&name, node, &mut room, (fields, unread));
        lines.retain(|line| match run_on(&line.place, text, locale) {
            Some(fault) => {
                fields.faults().push(fault);
                unread
                    .lines
                    .push(text[line.place.start()..line.place.end()].to_lowercase());
                false
            }
            None => true,
        });
        sections.push(section(name, lines, locale, (fields, unread)));
    }
    sections
}

/// More lines than this in a formula are not read.
const MOST_LINES: usize = 300;

/// The lines of a section, as many as there is room for in the formula.
fn lines(
    name: &Placed<String>,
    node: Placed<Node>,
    room: &mut usize,
    (fields, unread): (&mut Fields, &mut Unread),
) -> Vec<Placed<Node>> {
    let mut items = match node.value {
        Node::List(items) => items,
        Node::Text(_) => vec![node],
        Node::Map(_) | Node::Empty => {
            let message = said!("section-without-lines", section = name.value);
            let help = said!("section-without-lines-help");
            fields
                .faults()
                .push(Fault::error("bad-value", &name.place, message).help(help));
            unread.lines.push(String::new());
            Vec::new()
        }
    };
    if let Some(first) = items.get(*room) {
        let message = said!("too-many-lines", most = MOST_LINES);
        fields.faults().push(
            Fault::error("too-many-lines", &first.place, message)
                .help(said!("too-many-lines-help")),
        );
        items.truncate(*room);
    }
    *room -= items.len();
    items
}

fn section(
    name: Placed<String>,
    items: Vec<Placed<Node>>,
    locale: Locale,
    (fields, unread): (&mut Fields, &mut Unread),
) -> Section {
    let mut lines = Vec::new();
    for item in items {
        let text = match item.value {
            Node::Text(text) => Placed::new(text, item.place),
            Node::Map(_) | Node::List(_) | Node::Empty => {
                fields.faults().push(not_one_text(&item.place));
                unread.lines.push(String::new());
                continue;
            }
        };
        match amount::line(&text, locale) {
            Ok(line) => lines.push(purpose::within(&name.value, line, locale.words)),
            Err(fault) => {
                unread.lines.push(text.value.to_lowercase());
                fields.faults().push(fault);
            }
        }
    }
    Section { name, lines }
}

/// A line of the formula that lacks its `- `, and would be read as a part of the one above
/// it: an ingredient, and what it brings to those who must not eat it, would be lost.
fn run_on(place: &Place, text: &str, locale: Locale) -> Option<Fault> {
    let written = text.get(place.start()..place.end())?;
    if written.starts_with(['"', '\'', '|', '>']) {
        return None;
    }
    let mut at = 0;
    for line in written.split_inclusive('\n') {
        let bare = line.trim();
        let start = at + (line.len() - line.trim_start().len());
        let weighed =
            amount::quantity_in(bare, locale).is_some_and(|(_, name)| !name.is_empty());
        if at > 0 && weighed {
            let place = place.part(start, start + bare.len());
            let message = said!("line-run-on");
            let fault = Fault::error("bad-amount", &place, message)
                .help(said!("line-run-on-help", line = bare));
            return Some(item_of_its_own(fault, text));
        }
        at += line.len();
    }
    None
}

/// The fault with the change that begins its line as the item above it begins.
fn item_of_its_own(fault: Fault, text: &str) -> Fault {
    let start_of = |at: usize| text[..at].rfind('\n').map_or(0, |found| found + 1);
    let start = start_of(fault.place.start());
    let mut above = text[..start].lines().rev();
    let item = above.find_map(|line| {
        let blanks = line.len() - line.trim_start().len();
        line.trim_start().starts_with("- ").then(|| &line[..blanks])
    });
    let place = Place::new(&fault.place.file, start, fault.place.start());
    match item {
        Some(blanks) => fault.mended(place, [blanks, "- "].concat()),
        None => fault,
    }
}

/// A line with a colon in it, which YAML takes for a key.
fn not_one_text(place: &Place) -> Fault {
    Fault::error("bad-amount", place, said!("line-not-one"))
        .help(said!("line-not-one-help"))
}

/// `watch:` a list of `name: address`, each with its `length` and `still` if wished.
fn videos(fields: &mut Fields, unread: &mut Unread) -> Vec<Video> {
    let so_far = fields.faults().len();
    let items = fields.items("watch", "- roll-up: https://…");
    let videos = items.into_iter().flat_map(|item| listed(item, fields)).collect();
    unread.videos = fields.faults().len() > so_far;
    videos
}

/// One item: a video's name and address, and what is known of it. A map without list
/// marks may name several videos.
fn listed(item: Placed<Node>, fields: &mut Fields) -> Vec<Video> {
    let mut own = Fields::new(item, &["length", "still"], fields.faults());
    let length = own.parsed("length", "4 min", quantity::duration);
    let still = own.text("still").and_then(|text| {
        picture::in_line(&text).map_err(|fault| own.faults().push(fault)).ok()
    });
    let rest = own.rest();
    let named = rest.into_iter().filter_map(|(name, node)| video(name, node, fields));
    named
        .map(|video| Video { length: length.clone(), still: still.clone(), ..video })
        .collect()
}

fn video(name: Placed<String>, node: Placed<Node>, fields: &mut Fields) -> Option<Video> {
    match node.value {
        Node::Text(address)
            if address.starts_with("https://") || address.starts_with("http://") =>
        {
            let (address, from) = video_from(&address, &node.place, fields.faults());
            let address = Placed::new(address, node.place);
            Some(Video { name: name.value, address, from, length: None, still: None })
        }
        Node::Empty | Node::Text(_) | Node::List(_) | Node::Map(_) => {
            fields.faults().push(
                Fault::error("bad-value", &node.place, said!("video-without-address"))
                    .help(said!("video-without-address-help")),
            );
            None
        }
    }
}

/// `https://… from 8:25`: the address, and where to begin.
fn video_from(
    text: &str,
    place: &Place,
    faults: &mut Vec<Fault>,
) -> (String, Option<u64>) {
    let Some((address, said)) = text.split_once(char::is_whitespace) else {
        return (text.to_owned(), None);
    };
    let from = said.trim().strip_prefix("from ").and_then(|at| start(at.trim()));
    if from.is_none() {
        let message = said!("video-start", said = said.trim());
        faults.push(
            Fault::error("bad-value", place, message).help(said!("video-start-help")),
        );
    }
    (address.to_owned(), from)
}

/// `8:25`, `1:02:05`: hours, minutes and seconds of a video, in seconds.
fn start(text: &str) -> Option<u64> {
    let parts: Vec<&str> = text.split(':').collect();
    let sound = |(at, part): (usize, &&str)| {
        let digits = part.bytes().all(|byte| byte.is_ascii_digit());
        let value = part.parse::<u64>().ok().filter(|_| digits)?;
        (at == 0 && (1..=3).contains(&part.len()) || part.len() == 2 && value < 60)
            .then_some(value)
    };
    let values: Vec<u64> = parts.iter().enumerate().map(sound).collect::<Option<_>>()?;
    let seconds = values.iter().fold(0, |sum, value| 60 * sum + value);
    (2..=3).contains(&parts.len()).then_some(seconds)
}

/// `accept: { sheet-too-thin: "demonstration of tearing" }`.
fn accept(fields: &mut Fields) -> Vec<Accept> {
    let Some(node) = fields.take("accept") else { return Vec::new() };
    entries(node, fields.faults())
        .into_iter()
        .filter_map(|(fault, reason)| match reason.value {
            Node::Text(reason) => Some(Accept { fault, reason }),
            Node::Empty | Node::List(_) | Node::Map(_) => {
                fields.faults().push(
                    Fault::error(
                        "bad-value",
                        &fault.place,
                        said!("accept-without-reason"),
                    )
                    .help(said!("accept-without-reason-help", name = fault.value)),
                );
                None
            }
        })
        .collect()
}

/// More headings than this are not read.
const MOST_PARTS: usize = 200;

fn read_body(
    body: &str,
    place: &Place,
    recipe: &mut Recipe,
    words: &Lexicon,
    faults: &mut Vec<Fault>,
) {
    let body::Body { parts, stray } = body::parts(body, place, faults);
    recipe.unread.method = stray;
    let too_many = parts.get(MOST_PARTS).and_then(|part| part.title.as_ref());
    faults.extend(too_many.map(|title| {
        let message = said!("too-many-headings", most = MOST_PARTS);
        Fault::error("too-many-headings", &title.place, message)
            .help(said!("too-many-lines-help"))
    }));
    for part in parts.into_iter().take(MOST_PARTS) {
        let at = place.part(part.prose.start, part.prose.end);
        let written = &body[part.prose.clone()];
        let prose = prose::read(written, &at, faults);
        let content = prose.blocks;
        recipe.pictures.extend(prose.pictures);
        recipe.links.extend(prose.links);
        match (part.title, part.ticket) {
            (None, _) => {
                let own = mark(&[&recipe.title.value, &recipe.summary, written]);
                recipe.marks.insert(String::new(), own);
                recipe.opening = content;
            }
            (Some(title), None) => {
                let name = body::name(&title.value);
                let own = mark(&[&title.value, written]);
                recipe.marks.entry(name.clone()).or_insert(own);
                recipe.parts.push(Part::Prose { name, title, content });
            }
            (Some(title), Some(text)) => {
                let mut step = new_step(title, text.place.clone());
                let own = mark(&[&step.title.value, written, until(&text.value)]);
                recipe.marks.insert(step.name.clone(), own);
                step.prose = content;
                recipe.unread.method |= !ticket::read(&text, &mut step, words, faults);
                for other in part.others {
                    read_other(other, (body, place), &mut step, recipe, words, faults);
                }
                recipe.parts.push(Part::Step(Box::new(step)));
            }
        }
    }
    few_turns(recipe, faults);
    name_apart(recipe, faults);
    super::divide::settle(recipe);
    super::days::settle(recipe, faults);
}

/// Reads another way to do a step, from the body and its place.
fn read_other(
    other: body::Other,
    (body, place): (&str, &Place),
    step: &mut Step,
    recipe: &mut Recipe,
    words: &Lexicon,
    faults: &mut Vec<Fault>,
) {
    let written = &body[other.prose.clone()];
    let own = mark(&[written, until(&other.ticket.value)]);
    recipe.marks.insert(Recipe::mark_key(&step.name, &other.name.value), own);
    let whole = alternative::read(other.name, &other.ticket, step, words, faults);
    recipe.unread.method |= !whole;
    let place = place.part(other.prose.start, other.prose.end);
    let prose = prose::read(written, &place, faults);
    alternative::told(step, prose.blocks);
    recipe.pictures.extend(prose.pictures);
    recipe.links.extend(prose.links);
}

/// What a ticket says of how to tell that the step is done, as it is written.
fn until(ticket: &str) -> &str {
    ticket.lines().find_map(|line| line.strip_prefix("until:")).unwrap_or_default()
}

/// More turns than this are not worked out. Usual are three to six (common practice, no
/// source); letter turns alone make half a million layers of these.
const MOST_TURNS: usize = 12;

fn few_turns(recipe: &mut Recipe, faults: &mut Vec<Fault>) {
    let steps = recipe.parts.iter_mut().filter_map(|part| match part {
        Part::Step(step) => Some(step),
        Part::Prose { .. } => None,
    });
    let mut more = steps.filter(|step| step.turn.is_some()).skip(MOST_TURNS);
    let Some(first) = more.next().and_then(|step| step.turn.take()) else { return };
    more.for_each(|step| step.turn = None);
    let message = said!("too-many-turns", most = MOST_TURNS);
    faults.push(
        Fault::error("too-many-turns", &first.place, message)
            .help(said!("too-many-turns-help")),
    );
}

/// Two steps of one name cannot be told apart by `after`.
fn name_apart(recipe: &Recipe, faults: &mut Vec<Fault>) {
    let mut names: Vec<&str> = Vec::new();
    for step in recipe.steps() {
        if names.contains(&step.name.as_str()) {
            let message = said!("same-heading");
            faults.push(
                Fault::error("same-heading", &step.title.place, message)
                    .help(said!("same-heading-help")),
            );
        }
        names.push(&step.name);
    }
    for step in recipe.steps() {
        for after in step.after.iter().flatten() {
            if !recipe.unread.method && !names.contains(&after.value.as_str()) {
                faults.push(unknown_step(after, &names));
            }
        }
    }
}

fn unknown_step(after: &Placed<String>, names: &[&str]) -> Fault {
    let message = said!("unknown-step", step = after.value);
    Fault::error("unknown-step", &after.place, message).one_of(
        &after.value,
        names,
        said!("names-steps"),
    )
}

fn new_step(title: Placed<String>, place: Place) -> Step {
    Step {
        name: body::name(&title.value),
        title,
        day: None,
        after: None,
        uses: Vec::new(),
        kit: Vec::new(),
        hands: None,
        mixing: None,
        goals: Vec::new(),
        wait: None,
        at_place: None,
        at: None,
        proof: Vec::new(),
        hold: None,
        sheet: None,
        roll: None,
        lock_in: None,
        inverted: false,
        turn: None,
        cut: None,
        divide: None,
        part: None,
        shape: None,
        bake: None,
        fan: None,
        per_tray: None,
        tray_rows: Vec::new(),
        core: None,
        cool: None,
        until: None,
        watch: None,
        pictures: Vec::new(),
        printed: true,
        optional: false,
        friction: None,
        sheeter: None,
        others: Vec::new(),
        done_with: None,
        prose: Vec::new(),
        place,
    }
}

#[cfg(test)]
mod tests {
    use crate::measure::Length;

    use super::*;

    fn stated(text: &str, comma: bool) -> Option<Makes> {
        makes(text, Locale { comma, ..Locale::english() })
    }

    #[test]
    fn what_a_batch_makes_is_read_or_refused_in_words() {
        let pieces = |count, word: &str, range| {
            Some(Makes::Pieces { count, word: word.to_owned(), range })
        };
        assert_eq!(stated("1 batch", false), pieces(1, "batch", None));
        assert_eq!(stated("2 batches", false), pieces(2, "batches", None));
        assert_eq!(stated("2 dozen rolls", false), pieces(24, "rolls", None));
        assert_eq!(stated("12-14 pieces", false), pieces(13, "pieces", Some([12, 14])));
        assert_eq!(stated("2 to 3 loaves", false), pieces(3, "loaves", Some([2, 3])));
        let tin = Tin::Round(Length::inches(&exact(9, 1)), None);
        for text in ["2 x 9 in round", "2 × 9 in round", "two x 9 inch round"] {
            let two = Makes::Tins { count: 2, tin: tin.clone() };
            assert_eq!(stated(text, false), Some(two), "{text}");
        }
        let grams = |grams: i64| Some(Makes::Weight(Mass::grams(exact(grams, 1))));
        assert_eq!(stated("1,000 g", false), grams(1000));
        assert_eq!(stated("1.000 g", true), grams(1000));
        let pound = exact(25, 16) * exact(45_359_237, 100_000);
        assert_eq!(stated("1 lb 9 oz", false), Some(Makes::Weight(Mass::grams(pound))));
        for text in ["1½ rolls", "0 rolls", "24", "many", "1 to 2 kg", "2-3 x 9 in round"]
        {
            assert!(stated(text, false).is_none(), "{text}");
        }
    }
}
