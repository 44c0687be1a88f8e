//! The parts of a divided dough: which steps work on which, and how much of the whole each
//! is. What a part takes changes nothing that came before it.

use crate::measure::{Exact, Mass, exact};
use crate::model::{Divide, Portion, Step};

use super::weigh::LineRef;

/// The number of a part among all; nought is the whole dough.
pub type PartRef = usize;

/// A dough, or a part of one.
#[derive(Clone, Debug)]
pub struct DoughPart {
    /// Its name; `None` for the whole, and for a share that a step takes without naming it.
    pub name: Option<String>,
    /// What it is a part of.
    pub parent: Option<PartRef>,
    /// How much of the whole it is, 0 to 1.
    pub share: Exact,
    /// The step that divides it off, or takes it.
    pub from: usize,
    /// The lines of which a step takes a share without naming a part.
    taken: Vec<LineRef>,
}

/// All parts, and the part that each step works on.
#[derive(Clone, Debug)]
pub struct Parts {
    parts: Vec<DoughPart>,
    of: Vec<PartRef>,
}

impl Parts {
    /// The whole dough alone, for so many steps.
    pub(super) fn new(steps: usize) -> Self {
        let whole = DoughPart {
            name: None,
            parent: None,
            share: exact(1, 1),
            from: 0,
            taken: Vec::new(),
        };
        Self { parts: vec![whole], of: vec![0; steps] }
    }

    /// The part that a step works on.
    pub fn of(&self, step: usize) -> PartRef {
        self.of.get(step).copied().unwrap_or(0)
    }

    /// A part.
    pub fn part(&self, part: PartRef) -> &DoughPart {
        &self.parts[part.min(self.parts.len() - 1)]
    }

    /// How much of the whole dough a step works on, 0 to 1.
    pub fn share(&self, step: usize) -> &Exact {
        &self.part(self.of(step)).share
    }

    /// The parts that `step` divides the dough into, in order.
    pub fn divided_at(&self, step: usize) -> impl Iterator<Item = &DoughPart> {
        let named = move |part: &&DoughPart| part.from == step && part.name.is_some();
        self.parts.iter().filter(named)
    }

    /// How many parts there are, the whole counted as one.
    #[allow(clippy::len_without_is_empty, reason = "the whole is always there")]
    pub fn len(&self) -> usize {
        self.parts.len()
    }

    /// Whether the dough is divided anywhere.
    pub fn are_several(&self) -> bool {
        self.parts.len() > 1
    }

    /// Whether `part` is `whole` or a part of it.
    pub fn is_within(&self, part: PartRef, whole: PartRef) -> bool {
        std::iter::successors(Some(part), |part| self.part(*part).parent)
            .any(|part| part == whole)
    }

    /// Whether a step's dough takes its share of this line without naming a part.
    pub(super) fn takes(&self, step: usize, line: LineRef) -> bool {
        std::iter::successors(Some(self.of(step)), |part| self.part(*part).parent)
            .any(|part| self.part(part).taken.contains(&line))
    }

    /// Puts a step to its part: the one that it names, else the one that all steps go on
    /// with that it waits for.
    pub(super) fn put(&mut self, at: usize, step: &Step, after: &[usize]) {
        let named = step.part.as_ref().and_then(|name| self.named(&name.value));
        self.of[at] = named.unwrap_or_else(|| self.common(after));
    }

    fn named(&self, name: &str) -> Option<PartRef> {
        self.parts.iter().rposition(|part| part.name.as_deref() == Some(name))
    }

    /// The smallest part that holds those of all `steps`.
    fn common(&self, steps: &[usize]) -> PartRef {
        let parts = steps.iter().map(|step| self.of(*step));
        let meet = |one: PartRef, other: PartRef| {
            std::iter::successors(Some(one), |part| self.part(*part).parent)
                .find(|part| self.is_within(other, *part))
                .unwrap_or(0)
        };
        parts.reduce(meet).unwrap_or(0)
    }

    /// Lets a step take `share` of these lines' dough.
    pub(super) fn take(&mut self, at: usize, share: &Exact, lines: Vec<LineRef>) {
        // A share is one of the last part that has a name, or of the whole: a step that takes
        // the other half does not take half of the first.
        let above =
            std::iter::successors(Some(self.of(at)), |part| self.part(*part).parent);
        let parent = above.into_iter().find(|part| self.part(*part).taken.is_empty());
        let parent = parent.unwrap_or(0);
        let share = &self.part(parent).share * share;
        self.add(DoughPart {
            name: None,
            parent: Some(parent),
            share,
            from: at,
            taken: lines,
        });
        self.of[at] = self.parts.len() - 1;
    }

    /// Divides the dough that a step works on, of which `mass` lies on the bench. Parts that
    /// ask for more than there is share what there is; a check says so.
    pub(super) fn divide(&mut self, at: usize, divide: &Divide, mass: &Mass) {
        let Divide::Parts(portions) = divide else { return };
        let parent = self.of(at);
        let asked = shares(portions.iter().map(|it| &it.portion), mass);
        let sum: Exact = asked.iter().sum();
        let most = if sum > exact(1, 1) { sum } else { exact(1, 1) };
        for (portion, share) in portions.iter().zip(asked) {
            self.add(DoughPart {
                name: Some(portion.name.value.clone()),
                parent: Some(parent),
                share: &self.part(parent).share * share / &most,
                from: at,
                taken: Vec::new(),
            });
        }
    }

    fn add(&mut self, part: DoughPart) {
        self.parts.push(part);
    }
}

/// How much of `mass` each portion asks for; the rest is what the others leave, at least
/// nothing.
pub fn shares<'a>(
    portions: impl Iterator<Item = &'a Portion> + Clone,
    mass: &Mass,
) -> Vec<Exact> {
    let nothing = || exact(0, 1);
    let asked = |portion: &Portion| match portion {
        Portion::Share(share) => share.clone(),
        Portion::Weight(_) | Portion::Pieces(..) => {
            portion.mass().and_then(|asked| asked.over(mass)).unwrap_or_else(nothing)
        }
        Portion::Rest => nothing(),
    };
    let sum: Exact = portions.clone().map(asked).sum();
    let left = (exact(1, 1) - sum).max(nothing());
    portions
        .map(|portion| match portion {
            Portion::Rest => left.clone(),
            Portion::Share(_) | Portion::Weight(_) | Portion::Pieces(..) => {
                asked(portion)
            }
        })
        .collect()
}
