//! The feed of changes: what is new, in the open Atom format (RFC 4287), for those who
//! read feeds.

use super::html::escape;
use super::prose::plain;
use super::shell::page_address;
use super::{Input, Page};

/// Where it stands.
pub(super) const PATH: &str = "news.xml";
/// A title longer than this, in characters, is cut at a word.
const TITLE: usize = 72;

/// The feed, where the site's address is known and something is new.
pub(super) fn feed(input: &Input) -> Option<Page> {
    let site = input.course.address.as_deref()?;
    let newest = input.course.news.first()?;
    let course = input.course;
    let who = course.instructor.as_ref().or(course.school.as_ref());
    let author = who.unwrap_or(&course.title);
    let head = format!(
        "<title>{}</title>\n<id>{site}</id>\n<updated>{}</updated>\n\
         <link rel=\"self\" href=\"{site}{PATH}\"/>\n<link href=\"{site}\"/>\n\
         <author><name>{}</name></author>\n",
        escape(&course.title),
        moment(&newest.date),
        escape(author),
        site = escape(site),
    );
    let entries: String =
        (0..course.news.len()).map(|at| entry(input, site, at)).collect();
    let (space, language) = ("http://www.w3.org/2005/Atom", escape(&course.language));
    Some(Page::text(
        PATH,
        format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
             <feed xmlns=\"{space}\" xml:lang=\"{language}\">\n{head}{entries}</feed>\n"
        ),
    ))
}

/// One thing that is new. Its identifier is its day and its place within the day counted
/// from the oldest, so that it stays when newer ones are added above.
fn entry(input: &Input, site: &str, at: usize) -> String {
    let one = &input.course.news[at];
    let older = input.course.news[at + 1..].iter().filter(|other| other.date == one.date);
    let id = format!("{site}#news-{}-{}", one.date, older.count() + 1);
    let text = plain(&one.content);
    format!(
        "<entry><title>{}</title><id>{id}</id><updated>{}</updated>\
         <link href=\"{}#news\"/><content>{}</content></entry>\n",
        escape(&title(&text)),
        moment(&one.date),
        escape(&format!("{site}{}", page_address("index.html"))),
        escape(&text),
        id = escape(&id),
    )
}

/// A day as Atom wants it: with a time.
fn moment(date: &str) -> String {
    format!("{}T00:00:00Z", escape(date))
}

/// The first words of a text.
fn title(text: &str) -> String {
    if text.chars().count() <= TITLE {
        return text.to_owned();
    }
    let cut: String = text.chars().take(TITLE).collect();
    format!("{} …", cut.rsplit_once(' ').map_or(cut.as_str(), |(words, _)| words))
}
