//! Text and bytes as other formats write them.

/// Text with the characters that HTML and XML read as marks written as references: fit for
/// content and for quoted attributes.
pub(crate) fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            // These may stand neither in HTML nor in XML, not even as references.
            '\0'..='\u{8}' | '\u{b}' | '\u{c}' | '\u{e}'..='\u{1f}' => {
                out.push('\u{fffd}');
            }
            '\u{7f}'..='\u{9f}' | '\u{fffe}' | '\u{ffff}' => out.push('\u{fffd}'),
            _ => out.push(sign),
        }
    }
    out
}

/// Bytes in hexadecimal digits.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The byte before which so many letters stand, counted as browsers and editors do; one within
/// a letter is that letter's first, and the end of the text where it has fewer.
pub(crate) fn byte(text: &str, letters: usize) -> usize {
    let mut before = 0;
    let mut signs = text.char_indices();
    let found = signs.find(|(_, sign)| {
        before += sign.len_utf16();
        before > letters
    });
    found.map_or(text.len(), |(at, _)| at)
}

/// How many letters stand before a byte, counted as browsers and editors do: in units of
/// UTF-16.
pub(crate) fn letters(text: &str, byte: usize) -> usize {
    let before = text.char_indices().take_while(|(at, _)| *at < byte);
    before.map(|(_, letter)| letter.len_utf16()).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_are_counted_as_browsers_do() {
        let text = "a é 🥐 b";
        assert_eq!(letters(text, 0), 0);
        assert_eq!(letters(text, text.find('é').expect("there")), 2);
        assert_eq!(letters(text, text.find('b').expect("there")), 7);
        assert_eq!(letters(text, 999), 8);
        for (at, _) in text.char_indices() {
            assert_eq!(byte(text, letters(text, at)), at);
        }
        assert_eq!(byte(text, 99), text.len());
    }
}
