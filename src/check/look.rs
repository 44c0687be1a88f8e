//! The course's own look: a colour that can be read, a logo that can be printed.

use resvg::usvg::{Options, Tree};

use crate::fault::{Fault, nearest};
use crate::model::Content;
use crate::said;
use crate::statement::Statement;
use crate::theme::Theme;

/// The least contrast of text with its ground (WCAG 2.2, 1.4.3).
const LEAST: f64 = 4.5;

/// What a logo must not hold: pictures and pages of others, programs, and words, whose
/// typefaces may not be at hand.
const REFUSED: [(&str, Statement); 5] = [
    ("<image", said!("logo-holds-pictures")),
    ("<script", said!("logo-holds-program")),
    ("<foreignObject", said!("logo-holds-page")),
    ("<text", said!("logo-holds-words")),
    ("<!ENTITY", said!("logo-holds-entities")),
];

/// An accent too pale for white paper: badges and headings would not be read.
pub(super) fn accent(content: &Content) -> Vec<Fault> {
    let course = content.course.as_ref();
    let accent = course.and_then(|course| course.look.accent.as_ref());
    let pale = accent.filter(|accent| on_white(accent.value) < LEAST);
    pale.map(|accent| {
        let least = LEAST.to_string();
        let ratio = format!("{:.1}", on_white(accent.value));
        let message = said!("pale-accent", ratio, least);
        Fault::error("pale-accent", &accent.place, message)
            .help(said!("pale-accent-help"))
    })
    .into_iter()
    .collect()
}

/// A logo that is not there, or that holds what cannot be printed safely.
pub(super) fn logo(content: &Content) -> Vec<Fault> {
    let course = content.course.as_ref();
    let Some(logo) = course.and_then(|course| course.look.logo.as_ref()) else {
        return Vec::new();
    };
    let Some(svg) = content.drawings.get(&logo.value) else {
        if content.is_unread(logo.value.rsplit('/').next().unwrap_or_default()) {
            return Vec::new();
        }
        let message = said!("no-logo", logo = logo.value);
        let near = nearest(&logo.value, content.drawings.keys().map(String::as_str));
        let fault = Fault::error("no-logo", &logo.place, message);
        return vec![fault.meant(&logo.value, near, || said!("no-logo-help"))];
    };
    let refused = REFUSED.into_iter().filter(|(sign, _)| svg.contains(sign));
    let mut wrong: Vec<Statement> = refused.map(|(_, holds)| holds).collect();
    if wrong.is_empty() && Tree::from_str(svg, &Options::default()).is_err() {
        wrong.push(said!("logo-unreadable"));
    }
    let fault = |message| {
        Fault::error("bad-logo", &logo.place, message).help(said!("bad-logo-help"))
    };
    wrong.into_iter().map(fault).collect()
}

/// Contrast with white: (1 + 0.05) / (L + 0.05), L the relative luminance of sRGB
/// (WCAG 2.2, Definitions).
fn on_white(parts: [u8; 3]) -> f64 {
    let linear = |part: u8| {
        let part = f64::from(part) / 255.0;
        if part <= 0.04045 { part / 12.92 } else { ((part + 0.055) / 1.055).powf(2.4) }
    };
    let [red, green, blue] = parts.map(linear);
    1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05)
}

/// The faults of a course in languages that the theme has no words for.
pub fn unspoken(content: &Content, theme: &Theme) -> Vec<Fault> {
    let Some(course) = &content.course else { return Vec::new() };
    let own = course.language_place.iter().map(|place| (&course.language, place));
    let further =
        course.also_in.iter().map(|it| (&it.language.value, &it.language.place));
    let unspoken = own.chain(further).filter(|(language, _)| !theme.speaks(language));
    let fault = |(language, place)| {
        let message = said!("no-words", language);
        Fault::error("no-words", place, message).help(said!("no-words-help"))
    };
    unspoken.map(fault).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::read::{Source, content};

    fn faults(theme: &str) -> Vec<(&'static str, String)> {
        let source = |path: &str, text: String| Source { path: path.into(), text };
        let svg = |inner: &str| {
            format!(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">{inner}</svg>"
            )
        };
        let files = [
            source("course.yaml", format!("title: c\ntheme: {{{theme}}}\n")),
            source("media/house.svg", svg("<path d=\"M0 0h9\"/>")),
            source("media/loud.svg", svg("<text>Eat</text>")),
            source("media/torn.svg", "<svg".into()),
        ];
        let (content, texts, mut faults) = content(&files);
        faults.extend(accent(&content).into_iter().chain(logo(&content)));
        let words = |fault: &Fault| texts.words(&fault.place).to_owned();
        faults.iter().map(|fault| (fault.name, words(fault))).collect()
    }

    #[test]
    fn contrast_is_that_of_the_guidelines() {
        // WCAG 2.2: black on white is 21:1; #767676 is the palest grey that passes.
        assert!((on_white([0, 0, 0]) - 21.0).abs() < 1e-9);
        assert!(on_white([0x76; 3]) >= LEAST && on_white([0x77; 3]) < LEAST);
    }

    #[test]
    fn a_look_is_checked_at_its_place() {
        assert_eq!(faults("accent: \"#2f6b62\", logo: media/house.svg"), []);
        let one = |name, words: &str| vec![(name, words.to_owned())];
        assert_eq!(faults("accent: \"#ffcc00\""), one("pale-accent", "#ffcc00"));
        assert_eq!(faults("logo: ../x.svg"), one("no-logo", "../x.svg"));
        assert_eq!(faults("logo: media/loud.svg"), one("bad-logo", "media/loud.svg"));
        assert_eq!(faults("logo: media/torn.svg"), one("bad-logo", "media/torn.svg"));
    }
}
