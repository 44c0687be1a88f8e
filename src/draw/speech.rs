//! The drawings in words: what someone reads, or hears, who does not see them. Composed
//! from the same numbers, and enough to do the fold by ear.

use crate::dough::Direction;
use crate::dough::cutting::Way;
use crate::measure::show;
use crate::sheet::{
    Cut, Fold, Folding, GrowthFact, GrowthOf, LockIn, LockInFact, Mark, RollFact,
    ShapeFact, Time, TrayFact,
};

use super::system::voice::Voice;

/// A turn in words.
pub(super) fn turn(fold: &Fold, voice: Voice<'_>) -> String {
    let meets_in_the_middle = fold
        .meet
        .as_ref()
        .is_none_or(|at| (at.at_cm * 2.0 - fold.length_cm).abs() < 0.01);
    let kind = match fold.turn {
        Folding::Half => "alt-half",
        Folding::Letter => "alt-letter",
        Folding::Book if meets_in_the_middle => "alt-book",
        Folding::Book => "alt-book-off-middle",
        Folding::Parts(_) => "alt-parts",
    };
    let at = |index: usize| {
        let mark = fold.folds.get(index).map(|mark| voice.of(&mark.at).to_owned());
        mark.unwrap_or_default()
    };
    let meet = fold.meet.as_ref().map(|mark| voice.of(&mark.at).to_owned());
    let side = if fold.next == Direction::SameWay {
        voice.length(fold.folded_length_cm)
    } else {
        voice.length(fold.folded_width_cm)
    };
    let (counted, growth) = fold.growth();
    let values = [
        ("length", voice.length(fold.length_cm)),
        ("first", at(0)),
        ("second", at(1)),
        ("third", at(2)),
        ("meet", meet.unwrap_or_default()),
        ("opposite", super::layers::block::edge_word(fold.edges, voice)),
        ("side", side),
        ("size", voice.aloud(&fold.size)),
        ("part", voice.of(&fold.part).to_owned()),
        ("folded", voice.aloud(&fold.folded)),
        ("count", voice.count(u64::from(fold.parts))),
        ("before", growth[0].to_string()),
        ("after", growth[1].to_string()),
    ];
    let layers = match counted {
        GrowthOf::Fat => "alt-layers",
        GrowthOf::Plies => "alt-plies",
    };
    say(&["alt-turn-sheet", kind, "alt-edges", layers, next(fold.next)], &values, voice)
}

/// How a block is rolled next.
fn next(way: Direction) -> &'static str {
    match way {
        Direction::QuarterTurn => "alt-next-turned",
        Direction::SameWay => "alt-next-along",
        Direction::Any | Direction::Onward => "alt-next-any",
    }
}

/// A lock-in in words.
pub(super) fn lock_in(fact: &LockInFact, voice: Voice<'_>) -> String {
    let (kind, closed) = match fact.kind {
        LockIn::Envelope => ("alt-lock-in-envelope", "alt-edges-envelope"),
        LockIn::Letter => ("alt-lock-in-letter", "alt-edges"),
        LockIn::Book => ("alt-lock-in-book", "alt-edges-book"),
    };
    let opposite = fact.edges.map(|edges| super::layers::block::edge_word(edges, voice));
    let (outer, inner) = if fact.inverted { ("fat", "dough") } else { ("dough", "fat") };
    let values = [
        ("size", voice.aloud(&fact.size)),
        ("thickness", voice.of(&fact.thickness).to_owned()),
        ("block", voice.aloud(&fact.block)),
        ("block-thickness", voice.of(&fact.block_thickness).to_owned()),
        ("closed", voice.aloud(&fact.closed)),
        ("length", voice.length(fact.length_cm)),
        ("side", voice.length(fact.closed_width_cm)),
        ("opposite", opposite.unwrap_or_default()),
        ("outer", voice.word(outer)),
        ("inner", voice.word(inner)),
        ("inverted", if fact.inverted { "yes" } else { "no" }.to_owned()),
    ];
    say(&["alt-dough", kind, "alt-closed", closed, next(fact.next)], &values, voice)
}

/// A cutting plan in words: its marks, its cuts, what it gives.
pub(super) fn cut(cut: &Cut, voice: Voice<'_>) -> String {
    let size = voice.aloud(&cut.size);
    let mut said = vec![voice.fill("alt-sheet", &[("size", &size)])];
    said.extend(marks(cut).into_iter().map(|(edge, marks)| {
        voice.fill(&format!("marks-{edge}"), &[("marks", &distances(marks, voice))])
    }));
    said.extend(knife(cut, voice));
    let captions = pieces(cut, voice).into_iter().chain(scrap(cut, "alt-scrap", voice));
    said.extend(
        captions.map(|text| voice.sentence(&text.replace('×', &voice.word("by")))),
    );
    voice.sentences(&said)
}

/// The edges that are marked, and their marks; edges that are marked alike are one.
fn marks(cut: &Cut) -> Vec<(&'static str, &[Mark])> {
    let sides = [&cut.marks_left, &cut.marks_right];
    let long = [&cut.marks_near, &cut.marks_far];
    let sides = edges(["both-sides", "left", "right"], sides);
    let long = edges(["both-long", "near", "far"], long);
    sides.into_iter().chain(long).filter(|(_, marks)| !marks.is_empty()).collect()
}

fn edges<'a>(
    [both, one, other]: [&'static str; 3],
    [first, second]: [&'a Vec<Mark>; 2],
) -> Vec<(&'static str, &'a [Mark])> {
    if alike(first, second) {
        vec![(both, first)]
    } else {
        vec![(one, first), (other, second)]
    }
}

/// Whether two edges are marked at the same places.
pub(super) fn alike(one: &[Mark], other: &[Mark]) -> bool {
    one.len() == other.len()
        && one.iter().zip(other).all(|(one, other)| one.at == other.at)
}

/// The cuts in the order of the knife.
fn knife(cut: &Cut, voice: Voice<'_>) -> Vec<String> {
    if cut.strokes.is_empty() {
        return vec![voice.word("cut-out")];
    }
    let said = cut.strokes.iter().map(|stroke| {
        let way = match stroke.way {
            Way::Along => "along",
            Way::Across => "across",
            Way::Rising => "rising",
            Way::Falling => "falling",
        };
        let (first, last) = (stroke.first.to_string(), stroke.last.to_string());
        let key = if stroke.first == stroke.last { "cut-one" } else { "cuts" };
        let values =
            [("first", first.as_str()), ("last", &last), ("way", &voice.word(way))];
        voice.fill(key, &values)
    });
    said.collect()
}

/// What a cutting plan gives, as it stands beneath the drawing.
pub(super) fn cut_captions(cut: &Cut, voice: Voice<'_>) -> Vec<String> {
    let edges = marks(cut).into_iter().map(|(edge, _)| edge);
    let edges: Vec<String> =
        edges.map(|edge| voice.word(&format!("edge-{edge}"))).collect();
    let marked = voice.fill(
        "marked-edges",
        &[("edges", &edges.join(voice.words.get("list-semicolon")))],
    );
    let marked = (!edges.is_empty()).then_some(marked);
    let given = pieces(cut, voice).into_iter().chain(scrap(cut, "cut-scrap", voice));
    given.chain(marked).chain([voice.sentences(&knife(cut, voice))]).collect()
}

/// How many pieces, how large and how heavy.
fn pieces(cut: &Cut, voice: Voice<'_>) -> Vec<String> {
    let count = cut.pieces_per_sheet.to_string();
    let values = [
        ("count", count.as_str()),
        ("piece", voice.of(&cut.piece)),
        ("weight", voice.of(&cut.piece_weight)),
    ];
    let mut captions = vec![voice.fill("cut-pieces", &values)];
    if cut.pieces != cut.pieces_per_sheet {
        captions.push(voice.fill("cut-all", &[("count", &cut.pieces.to_string())]));
    }
    captions
}

/// How much of the sheet is left over, where it is worth a word.
fn scrap(cut: &Cut, key: &str, voice: Voice<'_>) -> Option<String> {
    // Less than half a percent would read as nought.
    (cut.scrap_percent >= 0.5).then(|| {
        let percent = show::whole_percent(cut.scrap_percent, voice.words);
        voice.fill(key, &[("percent", &percent)])
    })
}

fn distances(marks: &[Mark], voice: Voice<'_>) -> String {
    voice.distances(marks.iter().map(|mark| mark.at_cm))
}

/// A rolling in words.
pub(super) fn roll(fact: &RollFact, voice: Voice<'_>) -> String {
    let slab = |key: &str, slab: &crate::sheet::Slab| {
        let size = voice.aloud(&slab.size);
        let values = [("size", size.as_str()), ("thickness", voice.of(&slab.thickness))];
        voice.sentence(&voice.fill(key, &values))
    };
    let from = fact.from.as_ref().map(|from| slab("roll-from", from));
    let turned = (fact.way == Direction::QuarterTurn).then(|| voice.word("roll-turned"));
    let to = slab("roll-to", &fact.to);
    let mut said: Vec<String> = turned.into_iter().chain(from).chain([to]).collect();
    if let (Some(cm), Some(bench)) = (fact.bench_cm, &fact.bench)
        && cm < fact.to.length_cm
    {
        let ends = voice.fill("bench-ends", &[("bench", voice.of(bench))]);
        said.push(voice.fill("alt-bench", &[("bench", &ends)]));
    }
    voice.sentences(&said)
}

/// A shaping in words: the piece, then every stage with its number.
pub(super) fn shape(fact: &ShapeFact, voice: Voice<'_>) -> String {
    let piece = voice.aloud(&fact.piece);
    let mut said = match (piece.is_empty(), fact.in_tin) {
        (true, _) => Vec::new(),
        (false, true) => vec![voice.fill("alt-tin", &[("piece", &piece)])],
        (false, false) => vec![voice.fill("alt-piece", &[("piece", &piece)])],
    };
    let stages = super::pieces::shape::captions(fact, voice).into_iter().enumerate();
    said.extend(stages.map(|(at, text)| {
        let number = (at + 1).to_string();
        voice.fill("numbered", &[("number", &number), ("text", &text)])
    }));
    voice.sentences(&said).replace('×', &voice.word("by"))
}

/// A tray in words: what stands where, and what goes into the oven together.
pub(super) fn tray(fact: &TrayFact, voice: Voice<'_>) -> String {
    let captions = super::pieces::tray::captions(fact, voice).into_iter();
    let said: Vec<String> = captions.map(|text| voice.sentence(&text)).collect();
    voice.sentences(&said).replace('×', &voice.word("by"))
}

/// The growth of the layers in words.
pub(super) fn growth(fact: &GrowthFact, voice: Voice<'_>) -> String {
    let counts: Vec<String> = fact.fat_layers.iter().map(u64::to_string).collect();
    let first = counts.first().cloned().unwrap_or_default();
    let mut said = vec![voice.fill("alt-growth", &[("count", &first)])];
    for (parts, after) in fact.parts.iter().zip(counts.iter().skip(1)) {
        let parts = voice.count(u64::from(*parts));
        said.push(voice.fill("alt-grows", &[("parts", &parts), ("count", after)]));
    }
    voice.sentences(&said)
}

/// A timeline in words: the sums, then every step with its start and its times.
pub(super) fn timeline(time: &Time, voice: Voice<'_>) -> String {
    let sums = [
        ("elapsed", time.elapsed.as_str()),
        ("hands", time.hands.as_str()),
        ("wait", time.wait.as_str()),
    ];
    let mut said = vec![voice.fill("alt-timeline", &sums)];
    let mut day = None;
    for step in &time.steps {
        if let Some(own) = step.day.filter(|own| day != Some(*own)) {
            day = Some(own);
            said.push(voice.fill("alt-day", &[("day", &own.to_string())]));
        }
        let clock = super::times::timeline::clock(step.start_min);
        let lasts = super::times::timeline::lasts(step, voice);
        let values =
            [("start", clock.as_str()), ("title", &step.title), ("lasts", &lasts)];
        said.push(voice.fill("alt-timeline-step", &values));
    }
    voice.sentences(&said)
}

fn say(keys: &[&str], values: &[(&str, String)], voice: Voice<'_>) -> String {
    let values: Vec<(&str, &str)> =
        values.iter().map(|(name, value)| (*name, value.as_str())).collect();
    let said: Vec<String> = keys.iter().map(|key| voice.fill(key, &values)).collect();
    voice.sentences(&said)
}
