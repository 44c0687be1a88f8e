//! The pages of a room: a list of evenings, an evening, and a remark. They are read without a
//! script, and what they ask for is sent by plain forms.

use crate::encode::escape;
use crate::sheet::{LineSheet, NowFact, ShiftFact};
use crate::words::Words;

use super::super::page::{OWN, insert};
use super::evening::{Step, TAKE_BACK, Told};
use super::form::How;
use super::{EVENINGS, evening_path};

/// So many of the last lines of a day file are shown.
const LAST: usize = 8;

/// A page of the site, with the way to the evenings.
pub(super) fn linked(page: &str, words: &Words) -> String {
    let link = link(EVENINGS, words.get("room-evenings"));
    insert(page, "</main>", &format!("<p>{link}</p>\n"))
}

/// The evenings of a course, those that are held about now first.
pub(super) fn list(classes: &[(String, String, bool)], words: &Words) -> String {
    let mut body = format!("<h1>{}</h1>\n", word(words, "room-evenings"));
    for (held, key) in [(true, "room-now"), (false, "room-others")] {
        let some: String = classes
            .iter()
            .filter(|class| class.2 == held)
            .map(|(name, title, _)| {
                format!("<li>{}</li>\n", link(&evening_path(name), title))
            })
            .collect();
        if !some.is_empty() {
            body += &format!("<h2>{}</h2>\n<ul>\n{some}</ul>\n", word(words, key));
        }
    }
    page(words.get("room-evenings"), &body, words)
}

/// A sentence on a page of its own, with the way back.
pub(super) fn remark(text: &str, back: &str, words: &Words) -> String {
    let heading = word(words, "room-evening");
    let back = link(back, words.get("room-back"));
    let body = format!("<h1>{heading}</h1>\n<p>{}</p>\n<p>{back}</p>\n", escape(text));
    page(words.get("room-evening"), &body, words)
}

/// An evening as it is now.
pub(super) fn evening(told: &Told, class: &str, words: &Words) -> String {
    let path = evening_path(class);
    let plan = &told.plan;
    let mut body = format!("<h1>{}</h1>\n", escape(&plan.title));
    if let Some(now) = &plan.now {
        let (time, day) = (escape(&now.time), escape(&now.day));
        let again = link(&path, words.get("room-again"));
        body +=
            &format!("<p class=\"now\"><strong>{time}</strong> {day} · {again}</p>\n");
        body += &changed(told, now, words);
        body += &next(told, words);
    }
    body += &marks(told, &path, words);
    body += &said(&told.said, &path, words);
    let later: Vec<&LineSheet> = rows(told, false).collect();
    if !later.is_empty() {
        let head = sentence(words.get("evening-later"));
        body += &format!(
            "<details>\n<summary>{head}</summary>\n{}</details>\n",
            table(&later, words)
        );
    }
    let back = link(EVENINGS, words.get("room-evenings"));
    body += &format!("<p>{back}</p>\n");
    page(&plan.title, &body, words)
}

/// What changed and why, and what must be known besides.
fn changed(told: &Told, now: &NowFact, words: &Words) -> String {
    let plan = &told.plan;
    let mut body = format!("<p>{}</p>\n", escape(&sentence(&plan.standing)));
    for (key, lines) in [
        ("room-why", &plan.reasons),
        ("room-remedies", &plan.remedies),
        ("room-notes", &plan.notes),
    ] {
        let lines: Vec<String> = lines.iter().map(|line| escape(line)).collect();
        body += &section(&word(words, key), &items(&lines));
    }
    let mut parts = String::new();
    for fact in &told.before {
        let since = words.fill("room-since", &[("time", &fact.time)]);
        parts += &section(&escape(&since), &shifts(fact, words));
    }
    parts += &section(&shown(words, "evening-changed"), &shifts(now, words));
    if parts.is_empty() {
        parts = format!("<p>{}</p>\n", shown(words, "evening-unchanged"));
    }
    body + &parts
}

/// What begins at another time than was announced, and why.
fn shifts(fact: &NowFact, words: &Words) -> String {
    let line = |it: &ShiftFact| {
        let values = [
            ("who", &*it.who),
            ("what", &*it.what),
            ("from", &*it.from),
            ("to", &*it.to),
            ("why", &*it.why),
        ];
        escape(&words.fill("evening-shift", &values))
    };
    items(&fact.changed.iter().map(line).collect::<Vec<_>>())
}

fn next(told: &Told, words: &Words) -> String {
    let soon: Vec<&LineSheet> = rows(told, true).collect();
    let inside = if soon.is_empty() {
        format!("<p>{}</p>\n", shown(words, "evening-nothing"))
    } else {
        table(&soon, words)
    };
    section(&shown(words, "evening-next"), &inside)
}

/// The rows that are soon, or those that are not.
fn rows(told: &Told, soon: bool) -> impl Iterator<Item = &LineSheet> {
    let next = told.plan.now.as_ref().map_or(0, |now| now.next_min);
    told.plan.rows.iter().filter(move |row| (row.from_min < next) == soon)
}

fn table(rows: &[&LineSheet], words: &Words) -> String {
    let mut body = String::from("<ul class=\"rows\">\n");
    let mut day = rows.first().map_or("", |row| &row.day);
    for row in rows {
        if row.day != day {
            day = &row.day;
            body += &format!("</ul>\n<h3>{}</h3>\n<ul class=\"rows\">\n", escape(day));
        }
        let time = if row.from == row.to {
            row.from.clone()
        } else {
            words.range(&row.from, &row.to)
        };
        let mut what = row.what.clone();
        if let Some(watching) = &row.watching {
            let watching = words.fill("page-class-watching", &[("name", watching)]);
            what += &format!(" ({watching})");
        }
        if let Some(oven) = &row.oven {
            what += &format!(" · {oven}");
        }
        let (time, who, what) = (escape(&time), escape(&row.who), escape(&what));
        body += &format!("<li><strong>{time}</strong> <span>{who}</span> {what}</li>\n");
    }
    body + "</ul>\n"
}

/// The forms by which something is marked.
fn marks(told: &Told, path: &str, words: &Words) -> String {
    let steps: String = told.steps.iter().map(|it| step(it, path, words)).collect();
    let mut body = String::new();
    if !steps.is_empty() {
        body += &format!("<ul class=\"marks\">\n{steps}</ul>\n");
    }
    let who: String = told.who.iter().map(|[said, named]| option(said, named)).collect();
    let who = field(words, "room-who", &format!("<select name=\"who\">{who}</select>"));
    if !told.steps.is_empty() {
        let mut known: Vec<(&str, &str)> = Vec::new();
        for it in &told.steps {
            if !known.iter().any(|(step, _)| *step == it.step) {
                known.push((&it.step, &it.title));
            }
        }
        let steps: String =
            known.iter().map(|(said, title)| option(said, title)).collect();
        let hows = How::ALL.map(|how| option(how.name(), words.get(how.key())));
        let steps = format!("<select name=\"step\">{steps}</select>");
        let hows = format!("<select name=\"how\">{}</select>", hows.concat());
        let fields = [
            who.clone(),
            field(words, "room-step", &steps),
            field(words, "room-how", &hows),
        ];
        body += &form(path, ("room-some", "room-mark"), &fields.concat(), words);
    }
    let late = "<input name=\"late\" type=\"number\" min=\"0\" max=\"600\" value=\"10\" inputmode=\"numeric\" required>";
    let fields = [who, field(words, "room-minutes", late)];
    body += &form(path, ("room-late", "room-mark"), &fields.concat(), words);
    let free = "<input name=\"said\" maxlength=\"400\" autocapitalize=\"none\" autocomplete=\"off\" required>";
    let free = field(words, "room-words", free);
    body += &form(path, ("room-other", "room-mark"), &free, words);
    section(&word(words, "room-marks"), &body)
}

/// A step about now, with a button for each thing that may have become of it.
fn step(step: &Step, path: &str, words: &Words) -> String {
    let (time, title, named) =
        (escape(&step.time), escape(&step.title), escape(&step.named));
    let button = |how: How| {
        let (name, said) = (how.name(), word(words, how.key()));
        format!(
            "<button name=\"how\" value=\"{name}\" aria-label=\"{said}: {title}, {named}\">{said}</button>"
        )
    };
    let (who, what) = (escape(&step.who), escape(&step.step));
    let (done, begun) = (button(How::Done), button(How::Begun));
    format!(
        "<li><form method=\"post\" action=\"/{path}\"><span><strong>{time}</strong> {title} <small>{named}</small></span>\
         <input type=\"hidden\" name=\"who\" value=\"{who}\"><input type=\"hidden\" name=\"step\" value=\"{what}\">\
         <span class=\"buttons\">{done} {begun}</span></form></li>\n",
        path = escape(path)
    )
}

/// The last lines of the day file, and the way to take back the last one.
fn said(lines: &[String], path: &str, words: &Words) -> String {
    if lines.is_empty() {
        return String::new();
    }
    let last = lines[lines.len().saturating_sub(LAST)..].iter();
    let last: Vec<String> =
        last.map(|line| format!("<code>{}</code>", escape(line))).collect();
    let form = format!(
        "<form method=\"post\" action=\"/{}\"><button name=\"said\" value=\"{TAKE_BACK}\">{}</button></form>\n",
        escape(path),
        word(words, "room-take-back")
    );
    section(&word(words, "room-said"), &(items(&last) + &form))
}

fn form(path: &str, (head, button): (&str, &str), fields: &str, words: &Words) -> String {
    format!(
        "<form method=\"post\" action=\"/{}\">\n<fieldset><legend>{}</legend>\n{fields}<button>{}</button></fieldset>\n</form>\n",
        escape(path),
        word(words, head),
        word(words, button)
    )
}

fn field(words: &Words, key: &str, control: &str) -> String {
    format!("<label><span>{}</span>{control}</label>\n", word(words, key))
}

fn option(value: &str, label: &str) -> String {
    format!("<option value=\"{}\">{}</option>", escape(value), escape(label))
}

fn items(lines: &[String]) -> String {
    let all: String = lines.iter().map(|line| format!("<li>{line}</li>\n")).collect();
    if all.is_empty() { all } else { format!("<ul>\n{all}</ul>\n") }
}

/// A part with its heading; nothing where there is nothing in it.
fn section(head: &str, inside: &str) -> String {
    if inside.is_empty() {
        return String::new();
    }
    format!("<section>\n<h2>{head}</h2>\n{inside}</section>\n")
}

fn word(words: &Words, key: &str) -> String {
    escape(words.get(key))
}

/// A word that stands in the middle of a line on the terminal, at the beginning of one here.
fn shown(words: &Words, key: &str) -> String {
    escape(&sentence(words.get(key)))
}

fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(char::to_uppercase);
    first.into_iter().flatten().chain(letters).collect()
}

fn link(path: &str, text: &str) -> String {
    format!("<a href=\"/{}\">{}</a>", escape(path), escape(text))
}

/// A page of a room, in the colours and faces of the theme.
fn page(title: &str, body: &str, words: &Words) -> String {
    let (language, title) = (escape(&words.language), escape(title));
    let home = link("", words.get("room-course"));
    format!(
        "<!DOCTYPE html>\n<html lang=\"{language}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'self'; base-uri 'none'; form-action 'self'; object-src 'none'\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <meta name=\"color-scheme\" content=\"light dark\">\n\
         <link rel=\"icon\" href=\"/assets/icon.svg\" type=\"image/svg+xml\">\n<title>{title}</title>\n\
         <link rel=\"stylesheet\" href=\"/assets/tourier.css\">\n<link rel=\"stylesheet\" href=\"/{OWN}room.css\">\n</head>\n\
         <body>\n<header class=\"top\"><p class=\"home\">{home}</p></header>\n<main class=\"room\">\n{body}</main>\n</body>\n</html>\n"
    )
}
