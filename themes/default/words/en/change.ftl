### What is new since another edition. { $name } in a word is filled in by the program.

## What is new since another edition

change-contains = now contains { $name }
change-contains-not = no longer contains { $name }
change-unknown = the allergens of { $name } are not known
change-title = now called { $new }, was { $old }
change-makes = makes { $new }, was { $old }
change-more = { $amount } more { $name }
change-less = { $amount } less { $name }
change-is = { $name }: { $new }, was { $old }
change-in = { $change } in the { $section }
change-note = { $name }: now { $note }
change-note-gone = { $name }: no longer { $note }
change-added = new: { $amount } { $name }
change-removed = left out: { $amount } { $name }
change-dough = dough at { $new }, was { $old }
change-loss = loss { $new }, was { $old }
change-tin = for another tin
change-oven = bake { $new }, was { $old }
change-bake = bake for { $new }, was { $old }
change-row = { $step }: { $lower } { $new }, was { $old }
change-row-added = { $step }: { $lower } { $new } is new
change-row-removed = { $step }: { $lower } { $old } is left out
change-until = { $step }: until { $new }
change-step-added = new step: { $name }
change-step-removed = step left out: { $name }
change-step-name = the step { $old } is now called { $new }
change-order = the steps stand in another order
change-hands = hands on { $new } in all, was { $old }
change-elapsed = start to end { $new }, was { $old }
change-reworded = reworded: { $name }
change-text-added = new: { $name }
change-text-removed = left out: { $name }
change-drawn = drawn from other numbers
change-worded = reworded
