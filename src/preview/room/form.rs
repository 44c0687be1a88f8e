//! What a form of an evening brings, as the words of `today`.

use super::super::request::{Refusal, decoded};

/// A form may bring so many bytes.
pub(in super::super) const MOST: usize = 4 << 10;
/// So many letters may be said at once.
const LONGEST: usize = 400;

/// The words that the fields of a form make: those of `said`; or who, a step of theirs and how
/// far it is; or who, and by how many minutes they are late.
pub(super) fn words(bytes: &[u8]) -> Result<String, Refusal> {
    let text = std::str::from_utf8(bytes).map_err(|_| Refusal::Unclear)?;
    let fields = text.split('&').filter(|part| !part.is_empty()).map(field);
    let fields = fields.collect::<Option<Vec<_>>>().ok_or(Refusal::Unclear)?;
    let value = |name: &str| {
        let found = fields.iter().find(|(own, _)| own == name);
        found.map(|(_, value)| value.trim()).filter(|value| !value.is_empty())
    };
    let words = match (value("said"), value("who")) {
        (Some(said), _) => said.to_owned(),
        (None, Some(who)) => match (value("step"), value("late")) {
            (Some(step), None) => {
                let how = How::named(value("how").unwrap_or_default());
                format!("{who}: {step}{}", how.ok_or(Refusal::Unclear)?.ending())
            }
            (None, Some(late)) => format!("{who} late {late}"),
            (Some(_), Some(_)) | (None, None) => return Err(Refusal::Unclear),
        },
        (None, None) => return Err(Refusal::Unclear),
    };
    if words.chars().count() > LONGEST { Err(Refusal::Large) } else { Ok(words) }
}

/// `name=value`, as forms write it.
fn field(part: &str) -> Option<(String, String)> {
    let (name, value) = part.split_once('=')?;
    let read = |text: &str| decoded(&text.replace('+', " "));
    Some((read(name)?, read(value)?))
}

/// How far a step is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum How {
    /// It is done.
    Done,
    /// It is begun.
    Begun,
    /// It is left out.
    Skipped,
}

impl How {
    /// All, in the order in which they are offered.
    pub(super) const ALL: [Self; 3] = [Self::Done, Self::Begun, Self::Skipped];

    /// What a form calls it.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Begun => "begun",
            Self::Skipped => "skipped",
        }
    }

    /// The message that says it.
    pub(super) fn key(self) -> &'static str {
        match self {
            Self::Done => "room-done",
            Self::Begun => "room-begun",
            Self::Skipped => "room-skipped",
        }
    }

    /// What follows the step where it is said.
    fn ending(self) -> &'static str {
        match self {
            Self::Done => "",
            Self::Begun => " begun",
            Self::Skipped => " skipped",
        }
    }

    fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|how| how.name() == name)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_make_words() {
        for (form, said) in [
            ("said=pair+3+late+10", "pair 3 late 10"),
            ("said=all%3A+mix%3B+oven+out", "all: mix; oven out"),
            ("who=group+3&step=crescents%2Fcut&how=done", "group 3: crescents/cut"),
            ("who=all&step=crescents%2Fcut&how=begun", "all: crescents/cut begun"),
            ("said=&who=all&late=10", "all late 10"),
        ] {
            assert_eq!(words(form.as_bytes()).as_deref(), Ok(said), "{form}");
        }
    }

    #[test]
    fn what_says_nothing_is_refused() {
        let long = format!("said={}", "a".repeat(401));
        for (form, why) in [
            ("", Refusal::Unclear),
            ("said", Refusal::Unclear),
            ("said=%zz", Refusal::Unclear),
            ("who=all", Refusal::Unclear),
            ("who=all&step=cut&how=eaten", Refusal::Unclear),
            ("who=all&step=cut&how=done&late=5", Refusal::Unclear),
            (&*long, Refusal::Large),
        ] {
            assert_eq!(words(form.as_bytes()), Err(why), "{form}");
        }
        assert_eq!(words(b"said=\xff"), Err(Refusal::Unclear));
    }
}
