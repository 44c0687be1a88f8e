//! Which oven each bake goes into, where their starts are known.

use crate::plan::question::problem::{Baking, Layout, Problem};
use crate::plan::question::rules::Load;

/// An oven for each bake, in order of start: the first one with room that it may share. `None`
/// where one finds none.
pub(in crate::plan) fn again(problem: &Problem, starts: &[i32]) -> Option<Vec<usize>> {
    let ovens = &problem.ovens;
    let mut order: Vec<usize> = (0..ovens.bakes.len()).collect();
    order.sort_by_key(|at| {
        let bake = &ovens.bakes[*at];
        (
            bake.oven.is_none(),
            starts[bake.task],
            (bake.heat, bake.phases),
            std::cmp::Reverse(bake.trays),
            *at,
        )
    });
    let mut chosen = vec![0; ovens.bakes.len()];
    let mut inside: Vec<Vec<(Baking, Load)>> = vec![Vec::new(); ovens.count];
    for at in order {
        let bake = &ovens.bakes[at];
        let load = problem.baked(bake, starts);
        let room = |there: &Vec<(Baking, Load)>| {
            let meets = |(other, with): &&(Baking, Load)| {
                with.wider(ovens.apart(other.heat, bake.heat)).meets(&load)
            };
            let now: Vec<&(Baking, Load)> = there.iter().filter(meets).collect();
            let trays: i32 = now.iter().map(|(_, other)| other.amount).sum();
            now.iter().all(|(other, with)| other.shares(bake, [with.from, load.from]))
                && trays + load.amount <= ovens.trays
        };
        let mut ovens = inside.iter().enumerate();
        let own = |oven: usize| bake.oven.is_none_or(|own| own == oven);
        let (oven, _) = ovens.find(|(oven, there)| own(*oven) && room(there))?;
        inside[oven].push((*bake, load));
        chosen[at] = oven;
    }
    Some(chosen)
}

/// The same plan with ovens given anew where that leaves it sound: the first ones are used.
pub(in crate::plan) fn tidy(problem: &Problem, layout: Layout) -> Layout {
    let Some(ovens) = again(problem, &layout.starts) else { return layout };
    let tidied = Layout { ovens, ..layout.clone() };
    if problem.broken(&tidied).is_empty() { tidied } else { layout }
}
