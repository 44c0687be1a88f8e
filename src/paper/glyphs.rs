//! Which characters a theme's typefaces can print, and what stands in for the others.
//!
//! A PDF/UA must not contain a character without a shape, and no typeface from outside
//! the theme is ever used, so text is cleaned before it is set.

use std::collections::{BTreeMap, BTreeSet};

use typst::text::Font;

use crate::fault::{Fault, Place, Placed};
use crate::said;
use crate::theme::Theme;

use super::press::fonts;

/// Stands in for a character that cannot be printed.
const STAND_IN: char = '\u{25A1}';

/// The characters that a theme can print.
pub struct Glyphs {
    /// The faces of each family.
    families: BTreeMap<String, Vec<Font>>,
    stand_in: char,
}

/// What happens to a character on its way to paper.
enum Fate {
    Keep,
    Drop,
    Space,
    Missing,
}

impl Glyphs {
    /// The characters of a theme's typefaces.
    pub fn new(theme: &Theme) -> Self {
        let mut families = BTreeMap::<String, Vec<Font>>::new();
        for font in fonts(theme) {
            families.entry(font.info().family.to_lowercase()).or_default().push(font);
        }
        let mut glyphs = Self { families, stand_in: STAND_IN };
        if !glyphs.has(STAND_IN) {
            glyphs.stand_in = '?';
        }
        glyphs
    }

    /// Whether one family has the character in all its styles, so that it prints in
    /// upright, slanted and bold text alike.
    fn has(&self, sign: char) -> bool {
        let covers = |font: &Font| font.info().coverage.contains(sign as u32);
        self.families.values().any(|faces| faces.iter().all(covers))
    }

    fn fate(&self, sign: char) -> Fate {
        match sign {
            ' '..='~' | '\n' => Fate::Keep,
            '\t' | '\r' => Fate::Space,
            // The typesetter makes these from the plain space and hyphen.
            '\u{A0}' | '\u{AD}' | '\u{2007}' | '\u{2009}' | '\u{2011}' | '\u{202F}' => {
                Fate::Keep
            }
            _ if sign.is_control() || is_unseen(sign) => Fate::Drop,
            _ if self.has(sign) => Fate::Keep,
            _ => Fate::Missing,
        }
    }

    /// The characters of `text` that the theme cannot print, each once, in order.
    pub fn missing(&self, text: &str) -> Vec<char> {
        let missing = |sign: &char| matches!(self.fate(*sign), Fate::Missing);
        text.chars().filter(missing).collect::<BTreeSet<_>>().into_iter().collect()
    }

    /// `text` with only what can be printed: a visible sign stands in for each missing
    /// character; unseen marks (direction, joining, variation) go.
    pub fn clean(&self, text: &str) -> String {
        text.chars()
            .filter_map(|sign| match self.fate(sign) {
                Fate::Keep => Some(sign),
                Fate::Space => Some(' '),
                Fate::Missing => Some(self.stand_in),
                Fate::Drop => None,
            })
            .collect()
    }
}

/// Whether every theme can print all of `text`: it is in ASCII, as most drawings are.
pub(super) fn is_plain(text: &str) -> bool {
    text.bytes().all(|byte| matches!(byte, b' '..=b'~' | b'\n'))
}

/// Marks without a shape of their own: joiners, direction marks, variation selectors,
/// the byte-order mark and tags (Unicode, Default_Ignorable_Code_Point).
fn is_unseen(sign: char) -> bool {
    matches!(sign,
        '\u{034F}' | '\u{061C}' | '\u{115F}'..='\u{1160}' | '\u{17B4}'..='\u{17B5}'
        | '\u{180B}'..='\u{180F}' | '\u{200B}'..='\u{200F}' | '\u{2028}'..='\u{202E}'
        | '\u{2060}'..='\u{206F}' | '\u{3164}' | '\u{FE00}'..='\u{FE0F}' | '\u{FEFF}'
        | '\u{FFA0}' | '\u{FFF0}'..='\u{FFF8}' | '\u{1BCA0}'..='\u{1BCA3}'
        | '\u{1D173}'..='\u{1D17A}' | '\u{E0000}'..='\u{E0FFF}')
}

/// Cautions for the characters of a course's texts that none of the theme's typefaces has,
/// each once in a file. The texts come with their paths.
pub fn missing_glyphs<'t>(
    texts: impl Iterator<Item = (&'t str, &'t str)>,
    theme: &Theme,
) -> Vec<Fault> {
    let glyphs = Glyphs::new(theme);
    let read = texts.filter(|(path, _)| !path.ends_with(".svg"));
    read.flat_map(|(path, text)| in_text(path, text, &glyphs)).collect()
}

/// Errors for the families of type that are asked for and that the theme does not have.
pub fn missing_faces<'f>(
    asked: impl Iterator<Item = &'f Placed<String>>,
    theme: &Theme,
) -> Vec<Fault> {
    let mut asked = asked.peekable();
    if asked.peek().is_none() {
        return Vec::new();
    }
    let families = families(theme);
    let known = |name: &str| families.iter().any(|it| it.eq_ignore_ascii_case(name));
    let missing = asked.filter(|family| !known(&family.value)).map(|family| {
        let message = said!("no-typeface", name = family.value);
        let help = said!("no-typeface-help", families);
        Fault::error("no-typeface", &family.place, message).help(help)
    });
    missing.collect()
}

/// The families of type in a theme, each once, in order of the alphabet.
pub(super) fn families(theme: &Theme) -> Vec<String> {
    let names = fonts(theme).into_iter().map(|font| font.info().family.clone());
    names.collect::<BTreeSet<_>>().into_iter().collect()
}

fn in_text(path: &str, text: &str, glyphs: &Glyphs) -> Vec<Fault> {
    let file = path.into();
    let missing = glyphs.missing(text);
    let found = missing.into_iter().filter_map(|sign| {
        let at = text.find(sign)?;
        let place = Place::new(&file, at, at + sign.len_utf8());
        let message = said!("no-glyph", sign, stand_in = STAND_IN);
        Some(Fault::caution("no-glyph", &place, message).help(said!("no-glyph-help")))
    });
    found.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_cannot_be_printed_is_named_and_stood_in_for() {
        let theme = Theme::built_in();
        let text = "½ cup × 3 – crème, 粉, خبز and ขนม\u{200D}!\u{0}";
        assert_eq!(Glyphs::new(&theme).missing(text), ['ข', 'น', 'ม']);
        let texts = [("recipes/a.md", text)];
        let faults = missing_glyphs(texts.into_iter(), &theme);
        assert_eq!(faults.len(), 3);
        assert_eq!(&text[faults[2].place.start()..faults[2].place.end()], "ม");
        let clean = Glyphs::new(&theme).clean(text);
        assert_eq!(clean, "½ cup × 3 – crème, 粉, خبز and □□□!");
    }

    #[test]
    fn a_typeface_that_is_not_there_is_an_error_at_its_place() {
        let file = "course.yaml".into();
        let named = |name: &str, at: usize| {
            Placed::new(name.to_owned(), Place::new(&file, at, at + name.len()))
        };
        let asked = [named("Vollkorn", 20), named("Nowhere Sans", 40)];
        let faults = missing_faces(asked.iter(), &Theme::built_in());
        assert_eq!(faults.len(), 1);
        assert_eq!((faults[0].place.start(), faults[0].place.end()), (40, 52));
    }

    #[test]
    fn every_word_of_the_theme_can_be_printed() {
        let theme = Theme::built_in();
        for path in theme.below("words/") {
            let missing = Glyphs::new(&theme).missing(theme.text(path));
            assert_eq!(missing, Vec::<char>::new(), "{path}");
        }
    }
}
