//! Pages: the data in their scripts, and the plain words of a piece of HTML.
#![allow(clippy::wildcard_enum_match_arm, reason = "the tokens of HTML are not ours")]

use html5gum::{State, Token, Tokenizer, emitters::default::DefaultEmitter};

/// Whether a text is a page rather than plain words.
pub(super) fn is_page(text: &str) -> bool {
    let head: String = text.chars().take(2_000).collect::<String>().to_lowercase();
    ["<!doctype html", "<html", "<head", "<script", "<body"]
        .iter()
        .any(|tag| head.contains(tag))
}

/// The texts of every script with linked data, in order.
pub(super) fn linked_data(page: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut inside: Option<String> = None;
    for Ok(token) in tokens(page) {
        match token {
            Token::StartTag(tag) if *tag.name == *b"script" => {
                let kind = tag.attributes.get(&b"type"[..]);
                let kind =
                    kind.map(|kind| String::from_utf8_lossy(&kind.value).to_lowercase());
                let linked = kind.is_some_and(|kind| kind.contains("ld+json"));
                inside = linked.then(String::new);
            }
            Token::String(text) => {
                if let Some(so_far) = &mut inside {
                    so_far.push_str(&String::from_utf8_lossy(&text));
                }
            }
            Token::EndTag(tag) if *tag.name == *b"script" => found.extend(inside.take()),
            _ => {}
        }
    }
    found
}

/// The words of a piece of HTML: signs behind `&amp;` and its like, without tags. Paragraphs
/// and items stand on lines of their own.
pub(super) fn words(html: &str) -> String {
    if !html.contains(['<', '&']) {
        return html.to_owned();
    }
    let mut words = String::new();
    for Ok(token) in tokens(html) {
        match token {
            Token::String(text) => words.push_str(&String::from_utf8_lossy(&text)),
            Token::StartTag(tag) if is_block(&tag.name) => words.push('\n'),
            Token::EndTag(tag) if is_block(&tag.name) => words.push('\n'),
            _ => {}
        }
    }
    words
}

fn is_block(name: &[u8]) -> bool {
    matches!(
        name,
        b"p" | b"br" | b"li" | b"div" | b"ol" | b"ul" | b"h1" | b"h2" | b"h3" | b"tr"
    )
}

/// The tokens of a text, scripts and styles read as a browser reads them.
fn tokens(text: &str) -> Tokenizer<html5gum::StringReader<'_>, DefaultEmitter> {
    let mut emitter = DefaultEmitter::default();
    emitter.naively_switch_states(true);
    let mut tokenizer = Tokenizer::new_with_emitter(text, emitter);
    tokenizer.set_state(State::Data);
    tokenizer
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn scripts_with_linked_data_are_found() {
        let page = "<!doctype html><script>if (a < b) {}</script>\
            <script type='application/ld+json'>{\"a\": \"<b>\"}</script>\
            <SCRIPT TYPE=\"application/ld+json; charset=utf-8\">[1]</SCRIPT>";
        assert!(is_page(page));
        assert_eq!(linked_data(page), ["{\"a\": \"<b>\"}", "[1]"]);
        assert!(!is_page("Plum cake\n1 lb flour < 2 lb sugar"));
    }

    #[test]
    fn words_of_html() {
        assert_eq!(
            words("<p>Cream &amp; <b>sugar</b>&nbsp;½</p>").trim(),
            "Cream & sugar\u{a0}½"
        );
        assert_eq!(words("&lt;script&gt;"), "<script>");
    }
}
