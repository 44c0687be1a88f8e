//! Steps and their tickets in words.

use std::collections::BTreeSet;

use crate::dough::cutting::Form;
use crate::dough::{self, Direction};
use crate::formula::LineRef;
use crate::formula::parts::DoughPart;
use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Exact, Label, Length, Mass, Temperature, exact};
use crate::model::{self, Folding, Purpose, Step, Wait};
use crate::pantry::Kind;
use crate::words::Words;
use crate::work::{Work, gives_pieces};

use super::super::{
    Ingredients, Part, Picture, Sight, StepSheet, Ticked, TicketRow, Watch,
};
use super::content::plain;
use super::kit::{place_words, used_words};
use super::{Context, alternatives, goals, lines, notes, proofs, prose};

/// Steps and prose in reading order.
pub(super) fn parts(work: &Work, context: Context) -> Vec<Part> {
    let mut number = 0;
    let parts = work.recipe.parts.iter().map(|part| match part {
        model::Part::Prose { name: _, title, content } => Part::Prose {
            title: title.value.clone(),
            content: prose::blocks(content, None, work, context),
        },
        model::Part::Step(step) => {
            number += 1;
            Part::Step(self::step(step, number, work, context))
        }
    });
    parts.collect()
}

fn step(step: &Step, number: usize, work: &Work, context: Context) -> StepSheet {
    let at = number - 1;
    let ticket = rows(step, at, work, context);
    StepSheet {
        others: alternatives::others((at, step), &ticket, work, context),
        step: step.name.clone(),
        number,
        title: step.title.value.clone(),
        ticket,
        ingredients: ingredients(at, work, context),
        watch: step
            .watch
            .as_ref()
            .and_then(|name| watch(&name.value, work, context.words)),
        until: step
            .until
            .as_deref()
            .map(|until| Box::new(prose::cue(until, context.words))),
        pictures: pictures(step, work, context.words),
        prose: prose::blocks(&step.prose, Some(at), work, context),
    }
}

/// The rows of a step's ticket.
pub(super) fn rows(
    step: &Step,
    at: usize,
    work: &Work,
    context: Context,
) -> Vec<TicketRow> {
    Ticket { work, context, rows: Vec::new() }.rows(step, at)
}

/// The pictures of a step; where one of them shows what is wrong, each says what it shows.
fn pictures(step: &Step, work: &Work, words: &Words) -> Vec<Picture> {
    let compared = step.pictures.iter().any(|one| one.is_wrong);
    let sight = |wrong: bool| if wrong { Sight::Wrong } else { Sight::Right };
    let pictures = step.pictures.iter().map(|one| Picture {
        printed: step.printed && work.recipe.printed,
        sight: compared.then(|| sight(one.is_wrong)),
        ..picture(&one.shown, words)
    });
    pictures.collect()
}

fn watch(name: &str, work: &Work, words: &Words) -> Option<Watch> {
    let video = work.recipe.videos.iter().find(|video| video.name == name)?;
    Some(video_sheet(video, words))
}

/// A video as it is painted.
pub(super) fn video_sheet(video: &model::Video, words: &Words) -> Watch {
    let length = video.length.as_ref();
    Watch {
        name: words.author(&video.name),
        address: begun(&video.address.value, video.from),
        from: video.from.map(|from| words.fill("video-from", &[("time", &clock(from))])),
        length: length.map(|length| show::minutes(length.value.whole_minutes(), words)),
        still: video.still.as_ref().map(|it| Box::new(picture(it, words))),
    }
}

/// An address with the second at which to begin, as W3C Media Fragments URI 1.0 (4.2.1) has
/// it; one that leads to a part of a page already is left as it is.
fn begun(address: &str, from: Option<u64>) -> String {
    match from {
        Some(from) if !address.contains('#') => format!("{address}#t={from}"),
        Some(_) | None => address.to_owned(),
    }
}

/// A moment of a video as its clock shows it: `8:25`, `1:02:05`.
fn clock(all: u64) -> String {
    let (hours, minutes, seconds) = (all / 3600, all / 60 % 60, all % 60);
    match hours {
        0 => format!("{minutes}:{seconds:02}"),
        _ => format!("{hours}:{minutes:02}:{seconds:02}"),
    }
}

pub(super) fn picture(shown: &model::Shown, words: &Words) -> Picture {
    let alt = words.author(&shown.alt);
    Picture { file: shown.file.value.clone(), alt, printed: true, sight: None }
}

fn ingredients(at: usize, work: &Work, context: Context) -> Vec<Ingredients> {
    let used = work.flow.uses[at].iter().map(|(line, share)| {
        let weighed = &work.formula.lines[*line];
        let share: Exact = share * &work.factor;
        let words = || match &weighed.line.amount {
            model::Amount::Free(words) => plain(context.words.author(words)),
            model::Amount::Of(_) => Label::default(),
        };
        let (amount, weight) = match lines::portion_of(weighed, &share, context) {
            Some((weight, Some(count))) => (plain(count), Some(weight)),
            Some((weight, None)) => (weight, None),
            None => (words(), None),
        };
        let each = (put_on(*line, work) && has_pieces(at, work))
            .then(|| work.in_hand.get(at).copied().flatten())
            .flatten()
            .filter(|pieces| *pieces > 1)
            .and_then(|pieces| {
                lines::share_of(weighed, &(share / whole(pieces)), context)
            });
        let at = lines::own_temperature(weighed, context);
        Ingredients {
            amount: match at {
                Some(at) => Label::new(
                    context.words.together(&amount.metric, &at.metric),
                    context.words.together(&amount.us, &at.us),
                ),
                None => amount,
            },
            ingredient: context.ingredient(weighed),
            weight,
            each,
        }
    });
    used.chain(brought(at, work, context)).collect()
}

/// What was cooked or mixed apart and comes to the pieces at this step, whole sections by
/// their weight as mixed: `pastry cream, 303 g, 25 g each`.
fn brought<'w>(
    at: usize,
    work: &'w Work,
    context: Context<'w>,
) -> impl Iterator<Item = Ingredients> + 'w {
    let pieces = work.in_hand.get(at).copied().flatten().filter(|pieces| *pieces > 1);
    let sections = pieces.map_or_else(Vec::new, |_| made_apart(at, work));
    sections.into_iter().map(move |section| {
        let mass = &lines::section_mass(section, &work.formula) * &work.factor;
        let weight = |mass: &Mass| lines::weight(mass, Kind::Other, context);
        let each = pieces.map(|pieces| weight(&(&mass * &(exact(1, 1) / whole(pieces)))));
        Ingredients {
            amount: weight(&mass),
            ingredient: context.words.author(section),
            weight: None,
            each,
        }
    })
}

/// The sections of which everything went in on ways to this step that no piece came by.
fn made_apart<'w>(at: usize, work: &'w Work) -> Vec<&'w str> {
    let with_pieces = |step: &&usize| has_pieces(**step, work);
    let (own, others): (Vec<&usize>, Vec<&usize>) =
        work.flow.after[at].iter().partition(with_pieces);
    let used = |steps: &[&usize]| -> BTreeSet<LineRef> {
        let before = steps.iter().flat_map(|step| work.flow.before(**step));
        before.flat_map(|step| work.flow.uses[step].iter().map(|used| used.0)).collect()
    };
    let (own_lines, apart) = (used(&own), used(&others));
    let here = |line: LineRef| {
        apart.contains(&line) && !own_lines.contains(&line) && put_on(line, work)
    };
    let lines = &work.formula.lines;
    let mut sections: Vec<&str> = lines.iter().map(|line| line.section).collect();
    sections.dedup();
    sections.retain(|section| {
        let of_it = (0..lines.len()).filter(|line| lines[*line].section == *section);
        !own.is_empty() && of_it.into_iter().all(here)
    });
    sections
}

fn whole(pieces: u64) -> Exact {
    Exact::new(pieces.into(), 1.into())
}

/// Whether a line is filled into or laid on pieces, in such an amount that each one's share
/// can be weighed: no wash, no dusting.
fn put_on(line: LineRef, work: &Work) -> bool {
    let filled = match work.formula.lines[line].purpose {
        Purpose::Mixed | Purpose::Filling | Purpose::Topping => true,
        Purpose::RollIn | Purpose::Wash | Purpose::Dusting => false,
    };
    filled && !work.body.holds(line)
}

/// Whether pieces lie on the bench at a step: cut, divided or shaped at it or before. What is
/// cooked or mixed apart has no share in them yet.
fn has_pieces(at: usize, work: &Work) -> bool {
    let steps = work.steps();
    let before = work.flow.before(at);
    before.into_iter().any(|before| {
        let step = steps[before];
        step.cut.is_some() || step.shape.is_some() || gives_pieces(step)
    })
}

/// A ticket's rows as they are collected.
struct Ticket<'a> {
    work: &'a Work<'a>,
    context: Context<'a>,
    rows: Vec<TicketRow>,
}

impl Ticket<'_> {
    fn rows(mut self, step: &Step, at: usize) -> Vec<TicketRow> {
        self.day(step, at);
        self.times(step, at);
        self.sheet(step);
        self.oven(step);
        self.goals(step);
        self.rows
    }

    fn row(&mut self, key: Ticked, value: Option<Label>) {
        let Some(value) = value else { return };
        let term = self.context.words.get(key.word()).to_owned();
        self.rows.push(TicketRow { key, term, value });
    }

    /// The day, at the first of its steps.
    fn day(&mut self, step: &Step, at: usize) {
        let steps = self.work.steps();
        let of = |step: &Step| step.day.as_ref().map(|day| day.value);
        let before = at.checked_sub(1).and_then(|above| of(steps[above]));
        let last = steps.iter().filter_map(|step| of(step)).max();
        let day = of(step).filter(|day| before != Some(*day)).zip(last);
        let words = self.context.words;
        let day = day.map(|(day, days)| {
            let (day, days) = (day.to_string(), days.to_string());
            plain(words.fill("day-of", &[("day", &day), ("days", &days)]))
        });
        self.row(Ticked::Day, day);
    }

    fn times(&mut self, step: &Step, at: usize) {
        let hands = self.hands(step, at);
        self.row(Ticked::Hands, hands);
        let words = self.context.words;
        self.row(Ticked::Mix, goals::speeds(step, words));
        self.row(Ticked::Wait, proofs::times(step, words));
        self.row(Ticked::Where, proofs::places(step, words));
        self.row(Ticked::At, proofs::heats(step, words));
        self.row(
            Ticked::Hold,
            step.hold.as_ref().map(|hold| plain(self.hold_words(&hold.value))),
        );
        let kit: Vec<String> =
            step.kit.iter().map(|used| used_words(used, self.context.words)).collect();
        self.row(
            Ticked::Kit,
            (!kit.is_empty()).then(|| plain(self.context.words.list(&kit))),
        );
    }

    /// Attended time as planned; a range stays a range.
    fn hands(&self, step: &Step, at: usize) -> Option<Label> {
        let span = &step.hands.as_ref()?.value;
        if span.least < span.most {
            let (least, most) = (span.least.whole_minutes(), span.most.whole_minutes());
            return Some(plain(range_words(least, most, self.context.words)));
        }
        let timing = self.work.timing.as_ref().ok()?;
        let own = timing.jobs.iter().filter(|job| job.recipe == self.work.recipe.name);
        let own = own.filter(|job| job.stand == 0);
        let minutes = own.skip(at).map(|job| job.job.hands.whole_minutes()).next()?;
        Some(plain(show::minutes(minutes, self.context.words)))
    }

    fn hold_words(&self, hold: &model::Hold) -> String {
        let words = self.context.words;
        let time = long_words(hold.up_to.whole_minutes(), words);
        let held = match &hold.at_place {
            Some(place) => {
                let place = place_words(place, words);
                words.fill("hold-in", &[("time", &time), ("place", &place)])
            }
            None => words.fill("hold-up-to", &[("time", &time)]),
        };
        let Some(thaw) = &hold.thaw else { return held };
        let (time, place) =
            (wait_words(&thaw.time, words), place_words(&thaw.place, words));
        let values = [("hold", &*held), ("time", &*time), ("place", &*place)];
        words.fill("hold-thaw", &values)
    }

    fn sheet(&mut self, step: &Step) {
        let words = self.context.words;
        self.part_in_hand(step);
        let layering = &self.work.layering.laminated;
        let rolled = layering.sheets.iter().find(|rolled| rolled.step == step.name);
        let block = layering.lock_in.as_ref().filter(|_| self.is_block(step));
        let written = step.sheet.as_ref().map(|sheet| &sheet.value);
        let sheet = rolled
            .map(|rolled| &rolled.sheet)
            .or_else(|| block.map(|locked| &locked.block))
            .or(written);
        let thickness = rolled
            .map(|rolled| &rolled.thickness)
            .or_else(|| block.map(|locked| &locked.block_thickness));
        let layers = rolled.map(|rolled| rolled.fat_layers).filter(|layers| *layers > 0);
        self.row(
            Ticked::Sheet,
            sheet.filter(|_| written.is_some()).map(|size| show::size(size, words)),
        );
        let thick = thickness.filter(|thick| written.is_some() && thick.is_positive());
        self.row(Ticked::Thickness, thick.map(|thick| show::thickness(thick, words)));
        let openings = rolled.filter(|_| step.sheeter.is_some()).and_then(openings);
        self.row(Ticked::Sheeter, openings.map(|all| plain(in_mm(&all, words))));
        let same_way = rolled.is_some_and(|rolled| rolled.way == Direction::SameWay);
        let roll = same_way.then(|| plain(words.get("roll-same-way")));
        self.row(Ticked::Roll, roll);
        self.row(
            Ticked::LockIn,
            step.lock_in.as_ref().map(|kind| self.lock_in(kind.value, step.inverted)),
        );
        self.row(Ticked::Turn, step.turn.as_ref().map(|turn| self.turn(&turn.value)));
        let fold = layering.folds.iter().find(|fold| fold.step == step.name);
        let growth = |growth: [u64; 2]| {
            let [before, after] = growth.map(|count| count.to_string());
            let values = [("before", &*before), ("after", &*after)];
            plain(words.fill("drawing-growth", &values))
        };
        let of_fat = fold.filter(|fold| fold.fat_after > 0);
        let after = of_fat.map(|fold| growth([fold.fat_before, fold.fat_after]));
        let same = || layers.map(|layers| plain(layers.to_string()));
        self.row(Ticked::Layers, after.or_else(same));
        let mixed_in = fold.filter(|fold| fold.fat_after == 0);
        let plies = mixed_in.map(|fold| growth([fold.plies_before, fold.plies_after]));
        self.row(Ticked::Plies, plies);
        self.cut(step);
        self.divide(step);
    }

    /// What a dough is divided into, and the part that a step works on, each with its weight.
    fn divide(&mut self, step: &Step) {
        let steps = self.work.steps();
        let Some(at) = steps.iter().position(|own| own.name == step.name) else { return };
        let parts = &self.work.flow.parts;
        let words: Vec<Label> = match step.divide.as_ref().map(|divide| &divide.value) {
            Some(model::Divide::Parts(_)) => parts
                .divided_at(at)
                .map(|part| self.part(at, part, "divide-part"))
                .collect(),
            Some(model::Divide::Count(count)) => {
                let count = Exact::from_integer((*count).into()) * &self.work.factor;
                let count = count.round();
                let each = (count > Exact::from_integer(0.into())).then(|| {
                    &self.dough_at(at) * &(Exact::from_integer(1.into()) / &count)
                });
                each.map(|each| self.pieces(&count, &each)).into_iter().collect()
            }
            Some(model::Divide::Pieces(each)) => {
                let count = self.dough_at(at).over(each).map(|count| count.trunc());
                count.map(|count| self.pieces(&count, each)).into_iter().collect()
            }
            None => Vec::new(),
        };
        self.row(Ticked::Divide, joined(&words, self.context.words));
    }

    /// The part that a step works on, where it is the first to: the steps after it go on.
    fn part_in_hand(&mut self, step: &Step) {
        let steps = self.work.steps();
        let Some(at) = steps.iter().position(|own| own.name == step.name) else { return };
        let parts = &self.work.flow.parts;
        let own = parts.of(at);
        let begins = own > 0 && !(0..at).any(|before| parts.of(before) == own);
        let part = parts.part(own);
        let key = if part.name.is_some() { "divide-part" } else { "divide-share" };
        let words = begins.then(|| self.part(part.from, part, key));
        self.row(Ticked::Part, words);
    }

    /// The weight of the whole dough on the bench at a step, all doughs together.
    fn dough_at(&self, step: usize) -> Mass {
        let work = self.work;
        let (dough, fat) = work.flow.on_bench(step, &work.formula);
        &(dough + fat) * &work.factor
    }

    /// `crescents: 600 g`.
    fn part(&self, at: usize, part: &DoughPart, key: &str) -> Label {
        let work = self.work;
        let (dough, fat) = work.flow.whole(at, &work.formula);
        let mass = &(&(dough + fat) * &work.factor) * &part.share;
        let weight = lines::weight(&mass, Kind::Other, self.context);
        let name = self.context.words.author(part.name.as_deref().unwrap_or_default());
        let fill = |weight: &str| {
            self.context.words.fill(key, &[("name", &name), ("weight", weight)])
        };
        weight.map(fill)
    }

    /// `12 pieces, 60 g each`.
    fn pieces(&self, count: &Exact, each: &Mass) -> Label {
        let count = show::number(count, 0, self.context.words);
        let weight = lines::weight(each, Kind::Other, self.context);
        let fill = |weight: &str| {
            let values = [("count", count.as_str()), ("weight", weight)];
            self.context.words.fill("divide-pieces", &values)
        };
        weight.map(fill)
    }

    /// `book`, `book, the fat outside`.
    fn lock_in(&self, kind: model::LockIn, inverted: bool) -> Label {
        let word = self.word("lock-in", kind.word());
        let outside =
            |word: &str| self.context.words.fill("lock-in-inverted", &[("name", word)]);
        if inverted { word.map(outside) } else { word }
    }

    /// `book turn`, `book turn, ends meet at 1/3`.
    fn turn(&self, turn: &model::Turn) -> Label {
        let word = self.turn_word(turn.folding());
        if turn.meet.share() == model::Meet::MIDDLE.share() {
            return word;
        }
        let at = format!("{}/{}", turn.meet.over, turn.meet.under);
        let meet = |word: &str| {
            self.context.words.fill("turn-meet", &[("name", word), ("at", &at)])
        };
        word.map(meet)
    }

    /// `book turn`, `in 5 parts`.
    fn turn_word(&self, turn: Folding) -> Label {
        match turn {
            Folding::Half | Folding::Letter | Folding::Book => {
                self.word("turn", &turn.word())
            }
            Folding::Parts(parts) => {
                let number = parts.to_string();
                plain(self.context.words.fill("page-turn-parts", &[("number", &number)]))
            }
        }
    }

    fn is_block(&self, step: &Step) -> bool {
        let steps = self.work.steps();
        self.work.layering.block.is_some_and(|at| steps[at].name == step.name)
    }

    /// The word for a kind of lock-in or turn; the kind itself where there is none.
    fn word(&self, what: &str, kind: &str) -> Label {
        let key = format!("{what}-{kind}");
        let word = self.context.words.get(&key);
        plain(if word == key { kind } else { word })
    }

    fn cut(&mut self, step: &Step) {
        let steps = self.work.steps();
        let cut = self.work.cuts.iter().find(|(at, _)| steps[*at].name == step.name);
        let Some((_, Ok(cut))) = cut else { return };
        let cut = super::dough::layout(&cut.layout, &cut.piece, self.context);
        let pieces = (cut.pieces * self.work.doughs).to_string();
        let shape = self.shape(cut.shape, cut.pieces * self.work.doughs);
        let words = |size: &str| {
            self.context.words.fill(
                "cut-into",
                &[("pieces", &pieces), ("shape", &shape), ("size", size)],
            )
        };
        let value = cut.piece.map(words);
        self.row(Ticked::Cut, Some(value));
    }

    /// The word for so many pieces of a shape.
    fn shape(&self, shape: Form, pieces: u64) -> String {
        let key = format!("shape-{}", shape.word().replace(' ', "-"));
        self.context.words.fill(&key, &[("count", &pieces.to_string())])
    }

    /// `3`, `4, in 2 oven loads`, `1, in rows of 3, 4, 3`.
    fn trays(&self, step: &Step) -> String {
        let trays = self.work.trays_at(step);
        let words = self.context.words;
        let trays = match crate::work::loads(trays, self.context.book) {
            1 => trays.to_string(),
            loads => words.fill(
                "trays-in-loads",
                &[("trays", &trays.to_string()), ("loads", &loads.to_string())],
            ),
        };
        if step.tray_rows.is_empty() {
            return trays;
        }
        let rows: Vec<String> = step.tray_rows.iter().map(u64::to_string).collect();
        let rows = words.list(&rows);
        words.fill("trays-in-rows", &[("trays", &trays), ("rows", &rows)])
    }

    fn oven(&mut self, step: &Step) {
        let words = self.context.words;
        self.row(Ticked::Oven, super::bakes::heats(step, false, words));
        self.row(Ticked::Fan, super::bakes::heats(step, true, words));
        self.row(Ticked::Bake, super::bakes::times(step, words));
        let trays = step.per_tray.as_ref().filter(|_| step.bake.is_some());
        self.row(Ticked::Trays, trays.map(|_| plain(self.trays(step))));
        self.row(
            Ticked::Core,
            step.core
                .as_ref()
                .map(|core| show::temperature(&core.value, self.context.words)),
        );
        let cool = step.cool.as_ref().map(|what| cooling(&what.value, self.context));
        self.row(Ticked::Cool, cool);
    }
}

impl Ticket<'_> {
    /// What the step is to reach.
    fn goals(&mut self, step: &Step) {
        for goal in &step.goals {
            let key = match goal.value.kind {
                model::GoalKind::Ph => Ticked::Ph,
                model::GoalKind::Dough => Ticked::DoughTemperature,
                model::GoalKind::WeightLoss => Ticked::WeightLoss,
                model::GoalKind::Growth => Ticked::Growth,
            };
            let value = goals::row(&goal.value, step, self.work, self.context);
            self.row(key, Some(value));
        }
    }
}

/// The openings of a sheeter from what lay there to the sheet.
fn openings(rolled: &dough::Rolled) -> Option<Vec<Length>> {
    let before = rolled.block_thickness.as_ref()?;
    Some(dough::openings(before, &rolled.thickness))
}

/// `24 → 16 → 11 → 7.5 → 5 → 4 mm`: a sheeter's dial has millimetres everywhere.
fn in_mm(openings: &[Length], words: &Words) -> String {
    let number =
        |opening: &Length| show::number(&(opening.amount() * exact(10, 1)), 1, words);
    let all: Vec<String> = openings.iter().map(number).collect();
    words.of(&all.join(" → "), Sign::Millimetre)
}

/// Labels one after another; nothing for none.
fn joined(labels: &[Label], words: &Words) -> Option<Label> {
    let join = |form: fn(&Label) -> &str| {
        let parts: Vec<&str> = labels.iter().map(form).collect();
        parts.join(words.get("list-semicolon"))
    };
    (!labels.is_empty()).then(|| Label::new(join(|it| &it.metric), join(|it| &it.us)))
}

/// Cooling limits of the FDA Food Code 3-501.14 (A): 57 °C to 21 °C within 2 h and to
/// 5 °C within 6 h in all; 135, 70 and 41 °F there.
fn cooling(what: &str, context: Context) -> Label {
    let at = |celsius| {
        show::temperature(&Temperature::celsius(exact(celsius, 1)), context.words)
    };
    let [hot, warm, cold] = [57, 21, 5].map(at);
    let hours = |hours: u64| Label::same(show::minutes(hours * 60, context.words));
    let values = [
        ("what", &Label::same(context.words.author(what))),
        ("hot", &hot),
        ("warm", &warm),
        ("cold", &cold),
        ("first", &hours(2)),
        ("all", &hours(6)),
    ];
    notes::fill("cool-rule", &values, context)
}

/// `60 min (45 min to 2 h)`, or the time alone.
pub(super) fn wait_words(wait: &Wait, words: &Words) -> String {
    let usual = wait.usual.whole_minutes();
    let (least, most) = (wait.least.whole_minutes(), wait.most.whole_minutes());
    if least == most {
        return show::minutes(usual, words);
    }
    let range = range_words(least, most, words);
    if usual == least {
        return range;
    }
    let usual = show::minutes(usual, words);
    words.fill("with-range", &[("usual", &usual), ("range", &range)])
}

/// Minutes from which whole days are told as such.
const LONG: u64 = 3 * 24 * 60;

/// `16 h`, `28 days`.
fn long_words(minutes: u64, words: &Words) -> String {
    let day = 24 * 60;
    if minutes >= LONG && minutes.is_multiple_of(day) {
        return words.fill("so-many-days", &[("count", &(minutes / day).to_string())]);
    }
    show::minutes(minutes, words)
}

/// `30–60 min`, `45 min–2 h`.
fn range_words(least: u64, most: u64, words: &Words) -> String {
    if most < 60 {
        let range = words.range(&least.to_string(), &most.to_string());
        words.of(&range, Sign::Minute)
    } else {
        words.range(&show::minutes(least, words), &show::minutes(most, words))
    }
}
