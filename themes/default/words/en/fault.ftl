### What is wrong with a text, and what would be right. { $name } in a message is filled in by the program; words in `backticks`
### are what an author writes and stay as they are. A message has no full stop, a help has.

## How a fault stands on the terminal

fault-place = { $file }, line { $line }
fault-error = Error:
fault-caution = Caution:
fault-help = What to do:
fault-sentence = { $message }.
fault-errors =
    { $count ->
        [one] { $count } error
       *[other] { $count } errors
    }
fault-cautions =
    { $count ->
        [one] { $count } caution
       *[other] { $count } cautions
    }
fault-none = no faults
fault-all = { $parts }

## Faults that are accepted

not-acceptable = `{ $name }` cannot be accepted
names-acceptable = These can

## Amounts that disagree

amounts-disagree-more = the amount in brackets is { $second }, { $percent } % more than the first
amounts-disagree-less = the amount in brackets is { $second }, { $percent } % less than the first
amounts-disagree-help = The first counts: { $first }. Change one of them, or leave the second out.
yield-off = the formula gives only { $weight } after its loss
yield-off-help = Write `makes: { $weight }`, or raise the formula.

## Classes

class-makes-nothing = this class makes nothing
class-makes-nothing-help = Write under `makes` which recipe each pair makes.
class-never-held = this class is never held
class-never-held-help = Write under `sessions` when, as in `- 2027-03-02 18:00 to 21:00`.
missing-file = there is no file `{ $file }`
names-recipes = Recipes here
class-pieces = `{ $name }` is made by weight, not in pieces
class-pieces-help = Write `batches: 1` instead of `pieces`.
session-overlap = this session begins before the one before it is over
session-overlap-help = Give the sessions times of their own.
long-session = this session lasts { $hours } hours
long-session-help = Write the time at which it ends, as in `18:00 to 21:00`; one that ends after midnight ends the day after.
step-without-hands = nothing is done by hand in `{ $step }`
step-without-hands-help = Give it `hands: 5 min`, or show another step.
late-nobody = `late` names a group that this class does not have: it has { $groups }
late-nobody-help = Count the groups from 1.
late-never = who comes so late misses every session whole
late-never-help = Write how long after the opening they come, as in `20 min`.
break-outside = this break lies in none of the sessions
break-outside-help = Write `{ $at }`, `{ $between }`, or `{ $lasts } min` for the middle of each session.
besides-too-long = arrival, talks, washing up and slack take { $minutes } min, no less than this session lasts
besides-too-long-help = Make them shorter, or the session longer.
unknown-class-step = no recipe of this class has a step `{ $step }`
unknown-class-step-help = A step's name is its heading in small letters with dashes.
did-you-mean = Did you mean `{ $near }`?
class-kit-short = a step needs { $count } of { $name }, and the kit has { $have }
class-kit-short-help = Change the ticket or the kit: no plan could fit.
class-kit-none = the recipes need a { $name }, and the kit lists none
class-kit-none-help = Add `{ $name }: …` to `kit`, so that the plan can share them out.
class-kit-no-place = a step waits in the { $place }, and it has no tray
class-kit-no-place-help = Say how many trays it takes, or leave the line out.
class-kit-no-oven = the recipes bake, and the kit has no { $name }
class-kit-no-oven-help = Add `oven: 2, tray per oven: 4` to `kit`.
class-kit-oven-unlisted = the recipes bake, and the kit lists no oven
class-kit-instructor = the class needs { $least } to teach it, and has { $have }
class-kit-instructor-help = Write `instructor: { $least }`, or show nothing.
class-kit-unknown = no recipe needs a { $name }, and no step waits there
class-kit-unknown-help = Name it on the tickets that need it: `kit: 1 mixer`.

## Cuts

cut-no-sheet = there is no sheet to cut
cut-no-sheet-help = Give this step or one before it a `sheet: 54 x 48 cm`.
cut-too-large = not one piece fits on the sheet
cut-too-large-help = Make the pieces smaller or the sheet bigger.
cut-too-many = that would be more than { $most } pieces
cut-too-many-help = Look at the units of the piece and the sheet.
cut-count = this cut gives { $made } pieces, and `makes` says { $count } { $word }
cut-count-help = Change the sheet, the piece or `makes`, so that they agree.
cut-count-parts = all parts give { $made } pieces together, and `makes` says { $count } { $word }

## Dividing

unknown-part = no step divides off a part `{ $part }`
unknown-part-help = Name it where the dough is divided: `divide: half for crescents, the rest for batons`.
divided-off-help = Give one part `the rest`, or change the others.
divided-too-much = the parts ask for { $over } % more than the dough of { $weight }
divided-no-rest = nothing is left of the dough of { $weight } for the rest
divided-too-little = { $left } % of the dough of { $weight } goes nowhere

## Mixer and bench

mixer-too-small = { $dough } go in here; the mixer holds { $most }
mixer-too-small-help = Mix it in two doughs, or make the formula smaller.
bench-too-short = the bench is { $bench }
bench-too-short-help = Divide the dough in two, or roll it shorter and wider.

## Lamination

block-too-big-envelope = a block of { $block } is { $short } too big for an envelope of this sheet: its side may be 0.7 of the sheet's
block-too-big-letter = a block of { $block } is { $short } too big for two thirds of this sheet
block-too-big-book = a block of { $block } is { $short } too big for the middle half of this sheet
block-too-big-help = Make the block smaller or the sheet bigger, with 5 mm to spare for sealing.
fat-unlike-dough = the fat lies { $fat } thick and the dough { $dough }: they will not roll together
fat-unlike-dough-help = Beat the fat out wider or thinner, or roll the dough so, until both are about as thick.
block-no-margin = the block leaves no margin to seal it in
block-no-margin-help = Leave at least 5 mm of dough around it.
sheet-of-nothing = no dough lies on the bench at this step
sheet-of-nothing-help = Say in a ticket before it what goes in: `uses: dough`.
sheet-too-big = the dough lies only { $lies } here: the sheet is too big for it
sheet-may-tear = the dough lies only { $lies } here: it may tear
sheet-too-thick = the dough lies { $lies } thick here
sheet-thickness-help = For { $usual } the sheet would have { $share } % of this area; or change the formula.
fat-layer-too-thin = each of the { $layers } fat layers is only { $thickness } mm thick before this turn
fat-layer-too-thin-help = Below 0.01 mm the layers run together. Roll a smaller sheet, or leave a turn out.
part-too-short = folded in { $parts }, each part would be { $short } too short
part-too-short-crossed = The first figure is the side that is folded: write the longer one first.
part-too-short-help = Roll the sheet longer, or fold it in fewer parts.

## Fat and layers

fat-share-puff = the roll-in fat is { $percent } % of the flour of puff paste
fat-share-yeast = the roll-in fat is { $percent } % of a yeast dough
fat-share-help = Usual is { $least } to { $most } %.
seams-not-turned = the block is rolled the same way as before the fold
seams-not-turned-help = Usual is a quarter turn, so that the dough is stretched the other way. Take this line out, or accept it.
sheet-gets-narrower = the sheet gets narrower here: a side of { $from } would become { $to }
sheet-gets-narrower-help = Dough cannot be pushed together. The first figure is the side that is stretched; after a fold it is the side along the spine. Write a wider sheet, or fold the one before it narrower.

## Links

bad-link = the link to `{ $link }` leads nowhere
bad-link-help = Link to a file here (`../techniques/letter-turn.md`) or to an address beginning with https:, http: or mailto:.

## The look of the course

logo-holds-pictures = the logo holds pictures
logo-holds-program = the logo holds a program
logo-holds-page = the logo holds parts of a page
logo-holds-words = the logo holds words set in type
logo-holds-entities = the logo holds entities
pale-accent = on white this colour has a contrast of { $ratio }:1; { $least }:1 is the least
pale-accent-help = Take a darker one: a copier prints it grey.
no-logo = there is no drawing `{ $logo }`
no-logo-help = Put an SVG file below content/media: `logo: media/house.svg`.
unknown-law = there is no allergen list `{ $law }`
unknown-law-help = Known are { $known }: `allergen lists: eu`.
logo-unreadable = the logo does not read as a drawing
bad-logo-help = Save it as plain SVG with its words turned into shapes.
no-words = there are no words in the language `{ $language }`
no-words-help = Write `en`, or put a translation of the files in `words/en/` into a theme of your own as a folder named after the language, and name that theme with --theme.

## What goes in

unused-help-allergen = Add `uses: { $name }` to the ticket of the step where it goes in.
unused-help = Add `uses: { $name }` to the ticket of the step where it goes in. Where it goes into nothing, take the line out.
unused-section = no step uses anything of the section `{ $name }`
unused-ingredient = no step uses this { $name }
place-misspelt = `{ $name }` is nearly the name of a place, and taken for a place of its own
unknown-use = `{ $name }` is no section or ingredient of this recipe
names-in-recipe = This recipe has

## Names

taken-by-windows = Windows keeps the name `{ $name }` for a device
taken-all = `tourier handout all` prints the whole course, never this recipe
taken-by-recipe = a recipe has the name `{ $name }` too: commands take the class for it
taken-name-help = Rename the file, such as to `{ $better }`, and what names it.
one-page-for-two = this file and `{ $file }` would become one page
one-page-for-two-help = Rename one of the files: no two may differ in capitals only.
bare-name = `{ $word }` is taken as { $meant }, in all recipes here
bare-name-help = Say in `course.yaml` what it means in this course:
    { $entry }
same-word = `{ $word }` is explained twice
same-word-help = Keep one of the two.
names-files = Files there

## Ovens

fan-not-cooler = with a fan the oven is set cooler than without, and here it is not
fan-not-cooler-help = About 20 °C less bakes alike. Left out, it is worked out so.

## Cooling, raw egg. These concern safety

cooling-missing = this is a custard or cream with egg, and no later step says how it is cooled
cooling-missing-help = Add `cool: custard` to the step where it cools: from 57 °C to 21 °C within 2 h, and to 5 °C within 6 h in all. Local rules come first.
cooling-slow-warm = this may cool for more than 2 h outside the fridge
cooling-slow-all = this may cool for more than 6 h in all
cooling-slow-help = From 57 °C to 21 °C within 2 h, and to 5 °C within 6 h in all: shorten the longest wait. Local rules come first.
held-warm = what is filled with custard or cream may stand outside the fridge here
held-warm-help = Say `hold: up to 24 h in the fridge`, or take the hold out: it is kept at 5 °C or colder. Local rules come first.
day-too-early = this is of day { $day }, but waits for “{ $step }”, which is of a later day
day-too-early-help = Move `{ $step }` to an earlier day, or say in `after` what this really follows.
night-without-hold = nothing says that this may stand until day { $day }: { $time } at least
night-without-hold-help = Give it a wait or a hold that is long enough: `hold: up to 24 h in the fridge`.
thawed-warm = what was frozen thaws in the warm here
thawed-warm-help = Let it thaw in the fridge, at 5 °C or colder: `thaw 9 h in the fridge`. Local rules come first.
raw-egg-eaten = this { $name } is eaten raw: no later step bakes or cooks it
raw-egg-eaten-help = Use `pasteurised egg`, or cook it: `core: 71 °C` in the ticket. Local rules come first.
core-too-low = with raw egg in it this must get hotter than that
core-too-low-help = Raw egg that is not eaten at once is cooked to at least 68 °C. Local rules come first.

## Pictures

missing-picture-help = Put the picture at `media/{ $picture }`.
missing-picture = there is no picture `{ $picture }` in the media folder

## What pieces weigh

weight-open = this { $title } is mixed in and has no weight
weight-open-help = Write about how much it takes, `300 g { $title }`, or say that it is put on: `{ $title }, for dusting`. Till then percentages, hydration and the weight of a piece that depend on it are left out.
piece-weight-unknown = what one of these weighs cannot be worked out, so no sheet says it
piece-weight-unknown-help = The steps up to where the pieces are made must say what goes in: `uses: dough`.

## Braces

unknown-brace = `{"{"}{ $name }{"}"}` means nothing here
unknown-brace-help = { $suggested } For plain braces write `\{"{"}{ $name }\{"}"}`.
brace-temperature-help = Write the temperature with its sign: `{"{"}{ $digits } °{ $scale }{"}"}`.
brace-number-help = Write a temperature `{"{"}190 °C{"}"}`, a size `{"{"}20 x 20 cm{"}"}` or a length `{"{"}4 mm{"}"}`.

## Allergens and water. These concern safety

allergens-unknown = the allergens of `{ $name }` are not known
allergens-unknown-help = Read the pack, and say in `pantry.yaml` what it lists:
    { $entry }
named-beside = `{ $name }` is named on this line: its allergens count
named-beside-help = Give it a line of its own, with its weight or as `{ $name }, as needed`; where it does not go in, leave its name out of this line.
water-too-cold = in this course's room the water would have to be colder than ice
water-too-cold-help = Cool the flour, mix for a shorter time, or allow a warmer dough.
water-unknown = the water in `{ $name }` is not known, so true hydration cannot be worked out
water-unknown-help = Give it a `like:` in `pantry.yaml`, or leave `true hydration` out.

## Drafts

to-settle = this is still to be settled: { $line }
to-settle-help = Settle it in the text, then take this line out.

## Shapes

unknown-shape = no shape is called `{ $name }`
unknown-shape-help = Give it a strip of `frames` under `shapes` in a technique.
form-triangle = triangle
form-right-triangle = right triangle
form-rectangle = rectangle
form-square = square
form-round = round
form-strip = strip
form-lump = lump
shape-misfit = a { $form } cannot become a { $shaping }
shape-misfit-help = Change the cut before it, or the shape: without that nothing can be drawn.

## Steps

step-ring = these steps wait for each other: { $steps }
step-ring-help = Take one name out of an `after:` so that there is a first step.
unknown-video-help = Add to the head, under `watch:`, a line `- { $name }: https://…`.
unknown-video = the head names no video `{ $name }`
makes-missing = it is not said what this recipe makes
makes-missing-help = Add `makes: 22 crescents`, or for a base dough its weight, `makes: 1100 g`.
no-formula = this recipe has no formula
no-formula-help = Add `formula:` with sections and lines such as `- 500 g bread flour`.
no-steps = this recipe has no steps
no-steps-help = A step is a heading with a `~~~ticket` right beneath it.
preferment-not-above = `{ $name }` is no preferment named before this one
preferment-not-above-help = Name it first: `preferment: { $first }, { $second } from { $first }`.
names-sections = Sections here
unknown-section = the formula has no section `{ $name }`

## Trays

tray-too-full = { $on_one } pieces of { $piece } each do not fit on a tray of { $tray } with a gap between them: { $fits } do
tray-too-full-help = Write `per tray: { $most }`, or shape smaller pieces. Pieces that touch do not brown at their sides.

## Slips of the hand: temperatures

impossible-oven = no oven bakes at { $heat }
unlikely-oven-hot = { $heat } is hotter than ovens of this trade go
both-units = { $metric } ({ $us })
look-at-degrees = Look at the figure and at the unit behind it, °C or °F.
unlikely-oven-cool = { $heat } dries a dough and does not bake it
unlikely-core = a core of { $heat } is that of nothing baked
unlikely-core-help = Breads are done at 88 to 99 °C inside, custards at 76 to 85 °C, and no egg below 71 °C is safe. Local rules come first.
impossible-wait-heat = nothing waits at { $heat }
yeast-dies = at { $heat } the yeast dies
butter-runs-out = at { $heat } the butter runs out of the layers
butter-runs-out-help = Stay at 26 °C, and below 28 °C.
butter-oils-out = at { $heat } the butter oils out of the dough
butter-oils-out-help = Stay below 32 °C.
impossible-dough-heat = no dough is mixed to { $heat }
unlikely-dough-heat = a dough of { $heat } is outside what the trade mixes

## Slips of the hand: shares of the flour

unlikely-share = this is { $percent } % of the flour
unlikely-share-help = Look at the figure and its unit: no dough of the trade has so much.
unlikely-water = all water together is { $percent } % of the flour, which makes no yeast dough
unlikely-water-help = Look at the figure of flour and of water.

## Slips of the hand: times

bake-without-time = a bake takes some time
bake-without-time-help = Write it as `190 °C, 22 min`.
unlikely-bake-time = { $time } is an unusual time to bake at this heat
impossible-wait = nobody waits longer than a year
unlikely-wait-cold = { $time } in the cold is longer than doughs stand
unlikely-wait-warm = { $time } outside the fridge is longer than doughs stand
impossible-hands = this keeps hands busy for more than a day
unlikely-hands = { $time } of work is a long day for one step
unlikely-time-help = Look at the figure and at the unit behind it, s, min, h or days.

## What steps are to reach

goal-ph = pH { $value }
goal-percent = { $percent } %
goal-impossible = nothing comes to { $value }
goal-unlikely = { $value } is outside what the trade knows here
goal-unlikely-help = Look at the figure. Doughs have a pH of 3 to 8 and 5 to 40 °C, grow by 10 to 400 % and lose 1 to 45 % in the oven.
growth-without-wait = nothing grows in a step that does not wait
loss-without-bake = nothing loses weight in a step that neither bakes nor waits
goal-out-of-place-help = Put `{ $key }` into the step in which it happens.
goals-at-odds = the head has { $value } for this, which is not within it
goals-at-odds-help = Write the same in `{ $key }` of the head.
unlikely-mixing = { $time } is an unusual time to mix a dough
mixing-beyond-step = the mixer runs for { $time }, the step takes { $own }
mixing-beyond-step-help = Write as many minutes in `hands`, or leave that out: then it is the mixer's time.

## Other kit

way-of-step-twice = this step is told twice { $way }
way-of-step-twice-help = Give each further ticket of a step a name of its own.
sheeter-without-sheet = nothing is rolled in this step
sheeter-without-sheet-help = Put `sheeter: yes` into a step that has a `sheet`.
friction-unsaid = nothing says how much the dough warms { $way }
friction-unsaid-help = Write it into that ticket, as `friction: 2 °C`. Hands warm a dough less than a mixer, so the water is warmer.

## What was meant

more-faults = this file has { $count } more faults
more-faults-help = Mend the others first: these are shown then.
names-none = { $they }: none yet.
names-known = { $they }: { $names }.
names-more = { $they }: { $names } and { $more } more.

## Amount lines

link-no-recipe = this link does not lead to a recipe
link-no-recipe-help = Link to a file beside this one: `900 g [layered dough](layered-dough.md)`.
amount-not-whole = the amount cannot be read to its end
amount-not-whole-help = Write one amount, one unit and one ingredient, such as `250 g butter, cold`, `1 lb 4 oz butter` or `2 large eggs`; for two ingredients write two lines.
no-amount = no amount can be read here
no-amount-help = Put one before the name, as in `250 g butter, cold`; where none is meant, write `{ $name }, as needed`.
heaped-spoon = how much is on a heaped spoon is not known
heaped-spoon-help = Level it off, and write how many level spoons it comes to: `2 tbsp cocoa`.
unknown-vessel = how much this vessel holds is not known
unknown-vessel-help = Fill it with water, and write what that measures: `250 ml buttermilk`.
old-measure = how much this old measure is, is not known: it was another one at other times and places
old-measure-help = Write the weight in grams: `250 g butter`.

## Heads, headings, tickets

head-begin-help = Begin with a line `---`, lines such as `title: Crescents`, and a line `---`.
head-file-empty = this file is empty
head-does-not-begin = the head does not begin: the first line of a file is `---`
head-has-no-end = the head has no end
head-has-no-end-help = Put a line `---`, three hyphens, behind its last line, before the text.
bad-heading = a step's heading begins with `##` and a space
bad-heading-help = Write `## { $words }`.
ticket-fence = a ticket begins with the line `~~~ticket`
ticket-fence-help = Write `~~~ticket` before its first line and `~~~` behind its last.
ticket-no-end = this ticket has no end
ticket-no-end-help = Put a line `~~~` behind its last line.
stray-ticket = this ticket stands under no heading
stray-ticket-help = A ticket stands right beneath its step's heading, such as `## Mix`, and only one does.

## Class files

example-changeover = `5 min`, or `{"{"} mixer: 10 min, oven: 5 min {"}"}`
example-late = `{"{"} pair 3: 20 min {"}"}`
example-talk = `15 min`, or `15 min before first-turn`
example-break = `15 min at 19:30`, `15 min between 19:15 and 20:00` or `15 min`
example-pace = `1.5`, or `{"{"} first-turn: 1.5 {"}"}`: from a quarter to four times the recipe's own time
example-makes = a list of `recipe: crescents`, `each: pair`, `pieces: 12`
makes-no-list = `makes` is a list of recipes
makes-no-list-help = Begin each with `- recipe: crescents`.
example-each = pair (or baker, or demonstration)
makes-both = `pieces` and `batches` both say how much is made
makes-both-help = Write one of the two.
kit-twice = `{ $name }` stands here twice
kit-twice-help = Say once how many there are.
kit-no-number = `{ $name }` wants a whole number here
kit-no-number-help = Write `{ $name }: 2`.

## course.yaml

news-no-day = here a day and what is new since then are expected
news-no-day-help = Write `- 2027-02-15: The buns rest overnight now.`

## Keys and values

no-map = here `key: value` lines are expected
no-map-help = Write one `key: value` on each line.
no-list = `{ $key }` is a list
no-list-help = Begin each of its lines with `- `: `{ $example }`.
not-filled-in = `{ $key }` of `{ $name }` is not filled in yet
not-filled-in-help = Write behind `{ $key }:` what its pack or your scale says.
not-one-value = `{ $key }` is one value, not a list
not-one-value-help = Write it on one line: `{ $key }: …`.
missing-key = `{ $key }` is missing
missing-key-help = Add a line such as `{ $key }: { $example }`.
no-words-list = here a list of words is expected
no-words-list-help = If the words hold `: `, put them in "double quotes".
unknown-key = `{ $key }` is not a key that belongs here
unknown-key-help = Known here: { $keys }.
unreadable-value = `{ $value }` does not read as a value of `{ $key }`
unreadable-value-help = Write it like `{ $example }`.

## glossary.yaml

example-title = Crescents
example-meaning = a pause in which the dough slackens

## The course itself

missing-course = there is no `course.yaml`
missing-course-help = Make one with at least `title: …` and `summary: …`.

## pantry.yaml

pantry-amount = this begins with an amount, which no ingredient's name does
pantry-amount-help = Name the ingredient alone here, and write the amount in the recipe: `1 lb 4 oz butter`.
pack-not-said = what the pack lists is not said here
pack-not-said-help = Write each allergen that the pack lists; nothing else beside them.

## Pictures in texts

bad-picture = `{ $picture }` cannot be a picture here
bad-picture-help = Name a file in the media folder, ending in .jpg or .png, with plain letters, digits and hyphens: `![what it shows](../media/roll-up.jpg)`.
picture-without-words = it is not said what the picture `{ $picture }` shows
picture-without-words-help = Say it in a few words, for those who cannot see it: in prose `![both hands roll it away](../media/roll-up.jpg)`, in a ticket `picture: roll-up.jpg, both hands roll it away`.

## Prose

until-brace = only temperatures, lengths and sizes are live in `until`
until-brace-help = Write `{"{"}5 °C{"}"}` so, and the names of ingredients without braces.
too-deep = lists are nested too deep here
too-deep-help = Use headings or fewer levels.

## Cautions

caution-mark = `{ $mark }` is no way to mark a quotation here
caution-mark-help = Begin a caution with the word itself: `> Caution: The tray is hot.` A quotation that is none needs no mark.
caution-for-some = a caution stands in a line for some, or such a line in a caution
caution-for-some-help = A caution is for everybody, and is never folded away: let each be a quotation of its own.

## Live values

open-brace = this brace is not closed
open-brace-help = Close it: `{"{"}butter{"}"}`. For a plain brace write `\{"{"}`.
plain-amount = { $words } is plain text here and will not change with the units
plain-amount-help = Write {"{"}{ $words }{"}"}.

## Recipes

example-recipe-summary = Plain crescents, three turns, baked dark.
example-tin = 23 x 13 x 7 cm` or `9 in round`, one tin; two of them are said in `makes: 2 x 9 in round
tin-twice = `makes` says another tin
tin-twice-help = Take `tin` out: what `makes` says is the tin.
bad-makes = `{ $makes }` is not what one batch makes
bad-makes-help = Write a whole number and a word, `22 crescents`; tins of one size, `2 x 9 in round`; or for a base dough its weight, `1150 g`.
section-without-lines = the section `{ $section }` has no lines
section-without-lines-help = Its lines stand under it, each with `- ` before it, such as `- 500 g bread flour`.
too-many-lines = a formula has { $most } lines at the most
too-many-lines-help = Make two recipes of it: one can be an ingredient of the other.
too-many-sizes = a page offers { $most } sizes, with the one as written; left out: { $sizes }
too-many-sizes-help = Name those that are asked for most; the others are had with `tourier handout --pieces { $size }`.
note-open = this note on { $recipe } is not yet taken up
note-open-help = Take it into the recipe, and say so: `tourier note { $recipe } "taken up { $number }"`. Only you see it.
note-of-nothing = there is no recipe `{ $name }` that these notes belong to
note-of-nothing-help = Name the text after its recipe, as in `recipes/crescents.bench.txt`.
note-without-day = this line is read as no note: it does not begin with its day
note-without-day-help = Write `2027-03-03 baked 2 min longer`; or begin with `#` what is yours alone.
line-run-on = this line is read as a part of the one above
line-run-on-help = Begin it with `- `: `- { $line }`.
line-not-one = this line does not read as one amount line
line-not-one-help = Put the whole line in "double quotes": a colon with a space behind it means something else here.
video-without-address = a video's address is expected here
video-without-address-help = Write `- roll-up: https://…`.
video-start = `{ $said }` behind the address of a video cannot be read
video-start-help = Write where to begin as its clock shows it: `https://… from 8:25`, or `from 1:02:05`.
accept-without-reason = a fault is accepted with a reason
accept-without-reason-help = Write `{ $name }: "the reason"`.
too-many-headings = a recipe has { $most } headings at the most
too-many-turns = a dough has { $most } turns at the most
too-many-turns-help = With three to six the layers are thin enough; more and they are flour and fat again.
same-heading = another step has the same heading
same-heading-help = Tell them apart: `Second turn`, `Third turn`.
names-steps = The steps here
unknown-step = there is no step `{ $step }` in this recipe

## Shapes of one's own

example-shape = crescent, notch 1 cm, stretch 1/4, curved (or baton, spiral, twist, knot, plait of 3, pinwheel, envelope, pocket, turnover, folded square, ring, round, oval, tin, filled ball, or the name of a shape in a technique)
shape-without-frames = a shape has a `piece` and two to six `frames`
shape-without-frames-help = Give the size of the piece that you draw, and for each stage what is done and its points in cm, as `dough: 0 0, 12 0, 12 8, 0 8`.
shape-drawn-and-pictures = some stages of this shape are drawn and others are pictures
shape-drawn-and-pictures-help = Draw all of them, or take a picture of each.
example-stage = Fold the near edge to the middle.
bad-stage = a stage shows its `dough` or a `picture`, and each `arrow` has two points
bad-stage-help = Write the outline by its corners, in cm from the near left one: `dough: 0 0, 12 0, 12 8, 0 8`; or show it: `picture: roll-up.jpg, both hands roll it away`.

## Techniques

example-technique-summary = Three parts, one over the other.
bad-drawing = there is not enough here to draw
bad-drawing-help = A drawing has a `sheet` and a `turn`, `turns`, a `cut`, a `roll`, a `shape`, pieces `per tray`, or a `lock-in` with its `block`.

## Lines of tickets

ticket-line-twice = `{ $key }` stands here twice
ticket-line-twice-help = Keep one of the two lines.
ticket-beside-proof = a proof by several temperatures has its times and heats already, and is no bake: `{ $key }` cannot stand beside it
ticket-beside-proof-help = Write `proof: 5 °C, 12 h in the fridge; then 26 °C, 90 min in the proofer` alone; a bake and a cooling have steps of their own.
ticket-no-key = this line is not `key: value`
ticket-no-key-help = Write for example `hands: 10 min`.
ticket-no-value = `{ $key }` has no value
ticket-no-value-help = Write the value behind the colon, or take the line out.
example-turn = book (or letter, half, or a number of parts from 2 to 12; a book may say `book, ends meet at 1/3`)
example-roll = same way (or quarter turn, which is usual)
example-lock-in = envelope (or letter, or book; inverted book for fat outside)
example-divide = half for crescents, the rest for batons (or 12 pieces)
unknown-line = `{ $key }` is not a line that a ticket may hold
unknown-line-help = A ticket may hold: { $keys }.

## Message files

words-unreadable = this does not read
words-unreadable-why = this does not read: { $reason }
words-unknown-form = a message here has words, `{"{"} $name {"}"}` and choices by `{"{"} $name -> {"}"}`

## YAML

yaml-no-space = there is no space behind the `-`
yaml-no-space-help = Write `- { $line }: …`.
yaml-run-on = this line is read as a part of the one above, because its `-` stands further right
yaml-run-on-help = Let the `-` of all lines of a list stand at the same column, with a space behind each.
yaml-help = Each line is `key: value`; lines that belong together start at the same column, indented with spaces. Put a value that holds `: ` or begins with a sign such as `[`, `{"{"}`, `*`, `&`, `!`, `%`, `@` or a quote in "double quotes".
yaml-key-twice = the same key stands here twice
yaml-alias = `*name` and `&name` are not used in these files
yaml-tab = a tab is used for indenting here; use spaces
yaml-too-deep = lists and keys are nested too deep here
yaml-too-large = this file is too large or nested too deep
bad-yaml = this line does not read as `key: value` or as an item of a list

## Slips in YAML

yaml-open-quote-help = Write `{ $close }` behind its last word.
yaml-open-quote = this quote is not closed
yaml-open-bracket-help = Write `{ $end }` behind the last word in it.
yaml-open-bracket = this bracket is not closed
yaml-write-item = Write `- { $rest }`.
yaml-no-space-colon = there is no space behind the colon
yaml-no-colon = there is no colon behind the key
yaml-write = Write `{ $right }`.
yaml-odd-value = a value that holds `: `, or begins with a sign such as `[` or `*`, means something else here
yaml-odd-value-help = Put it in double quotes: `{ $right }`.
yaml-column = this line begins at another column than those it belongs to
yaml-column-help = Let lines that belong together begin at the same column; use spaces, no tabs.

## Recipes in a ring

recipe-cycle = this recipe needs itself: { $way }
recipe-cycle-help = Take the ingredient that leads back out of one of these recipes.

## Weighing

not-counted = `{ $name }` is not counted in pieces: its weight is not known
not-counted-help = Write its weight; or weigh one, and fill that in in `pantry.yaml`:
    { $entry }
no-batches = `{ $name }` is no recipe, so it has no batches
no-batches-help = Batches are of another recipe: `1 batch [layered dough](layered-dough.md)`.
no-density = it is not known what a { $unit } of `{ $title }` weighs
no-density-help = Write a weight; or weigh a level { $unit } of it, and fill that in in `pantry.yaml`:
    { $entry }
no-anchor = percentages need one weight to stand on
no-anchor-help = Give one flour of `{ $recipe }` a weight: `500 g bread flour`.

## Allergens that are left out. These concern safety

allergen-taken-out = `{ $word }` would be taken to be without { $missing }
allergen-taken-out-help = Write `{ $name }` in the recipes where it is meant, and leave `{ $word }` out here.
allergen-left-out = `{ $name }` should hold { $missing } by its name or its like, and its allergens leave it out
allergen-left-out-nut = Read its pack, and write all that it lists:
    { $entry }
    Where the pack itself lists less, write what it lists and then `, read on the pack`. Say which nut it is.
allergen-left-out-help = Read its pack, and write all that it lists:
    { $entry }
    Where the pack itself lists less, write what it lists and then `, read on the pack`.

## Ingredients of one's own

example-kind = flour, liquid, fat, egg, sugar, salt or leavener
example-density = 0.46 g/ml or 1 tbsp = 6.8 g
example-allergens = what its pack lists, by these words: { $words }
pantry-unreadable = `{ $value }` does not read here
pantry-unreadable-help = Write { $example }.

## Unknown ingredients

known-name = `{ $name }`
unknown-ingredient = `{ $name }` is not in the pantry
unknown-ingredient-help = If the name is right, add to `pantry.yaml`, with what its pack lists filled in:
    { $entry }
unknown-ingredient-one = Did you mean { $only }? If not, add to `pantry.yaml`, with what its pack lists filled in:
    { $entry }
unknown-ingredient-several = Did you mean { $rest } or { $last }? If not, add to `pantry.yaml`, with what its pack lists filled in:
    { $entry }

## Files that cannot be read

unread-link = it is a link to another place
unread-link-help = Put the file or folder itself here.
unread-too-much = there are more than { $files } files here, or more than { $text } MiB of text or { $pictures } MiB of pictures
unread-too-much-help = Keep other things elsewhere; make two courses of a large one.
unread-not-plain = it is no plain file
unread-picture-link-help = Put the picture itself here.
picture-smaller-help = Save it smaller: 3000 pixels wide is plenty.
unread-picture-large = it is larger than 30 MiB
unread-not-plain-help = Put a text file here.
unread-name = its name is part of web addresses, and not every sign may stand there
unread-name-help = Use letters from a to z, digits, hyphens and underscores only, such as `{ $better }`.
unread-large = it is larger than 1 MiB
unread-large-help = A recipe is a page or two of text.
unread-not-text = it is not UTF-8 text
unread-not-text-help = Save it as plain text in UTF-8.
unread-zero-byte = it holds a zero byte
unreadable-file = this file is not read: { $why }

## Typefaces

unread-typeface-link = it is a link to another place, or a folder
unread-typeface-link-help = Put the typeface itself here.
unread-typeface-large-help = Take one with fewer letters: a part of it for one language.
unread-typeface-large = it is larger than 20 MiB

## Files that nobody reads

unread-file = nobody reads this file
unread-file-help = As `{ $better }` it would be read.

## Letters

no-typeface = there is no typeface `{ $name }`
no-typeface-help = There are: { $families }. Put its .ttf or .otf files into content/media to add one.
no-glyph = the typefaces have no `{ $sign }`: handouts print { $stand_in } for it
no-glyph-help = Write it in another way, or put a typeface that has it into content/media.

## Broken pictures

unreadable-picture = this file is not a picture that can be shown
unreadable-picture-help = Save it as JPEG or PNG.
broken-picture = this picture is cut short or broken: not all of its lines are there
broken-picture-help = Copy it again from where it came from, or save it again as JPEG or PNG.
picture-too-large = this picture has more than 60 million pixels

## Long handouts

card-two-sides = the bench card of this recipe does not fit on one side
card-two-sides-help = It goes on to its other side. Shorter cues (`until`), or two recipes of which one is an ingredient of the other, make one side of it.
long-sheet = the student sheet of this recipe takes more than { $most } sides
long-sheet-help = It goes on to a further side. Shorter paragraphs help, and so does `included: by name only` in the head, if what goes into it has a sheet of its own.

## The edition before

faulty-edition = the edition in `{ $folder }` has errors, so no handout says what changed since
faulty-edition-help = See them with `tourier proof --content` and its folder.
missing-edition = there is no folder `{ $folder }` in the content folder
missing-edition-help = Copy the old content there, or leave this line out.

## Pictures on paper

coarse-picture = `{ $picture }` has { $dots } dots across, which is coarse on paper
coarse-picture-help = Take a larger picture, of 1000 dots across or more; or keep it from paper: `print: no`.
faint-picture = in grey, `{ $picture }` is nearly all of one lightness
faint-picture-help = From a copier nobody will see what it shows. Take it in better light, or keep it from paper: `print: no`.

## Ways of a recipe

in-this-way = in the way `{ $way }`: { $message }
unknown-way = `{ $recipe }` is not offered in a way `{ $way }`
names-ways = Ways of it
ways-at-odds = the way `{ $way }` changes a line that another of them has changed
ways-at-odds-help = Take one of the two, or write a swap that does both.
swap-of-nothing = nothing here is called `{ $name }`, so that nothing can take its place
names-lines = Lines here
swap-of-several = `{ $name }` stands in several sections: { $sections }
swap-of-several-help = Say which is meant: `{ $name } in { $section }`. For each of them write a line.
swap-leaves-nothing = the way `{ $way }` leaves nothing of the formula
swap-leaves-nothing-help = Write in it what is taken instead, such as `140 g oat drink for whole milk`.
swap-without-lines = the swap `{ $name }` changes nothing
swap-without-lines-help = Its lines stand under it, each with `- ` before it: `- 140 g oat drink for whole milk`, `- 30 g water in dough` or `- without walnuts`.
way-still-told = this step speaks of { $name }, which the way `{ $way }` has not
way-still-told-help = Write the ingredient in braces, as `{"{"}whole milk{"}"}`: each way then says its own. Or speak of it by what it does there, such as the liquid.

## Translations. Cautions touch safety

translates-nothing = nothing says which text “{ $title }” translates
translates-nothing-help = Write `translates: mix-the-dough` with the name of the original's step or heading in a ticket under it: texts are never matched by their order.
translation-unknown = there is no text `{ $name }` to translate
translation-unknown-help = Write the name of the original: of a step its heading in small letters with hyphens, of a file its name.
translation-not-named = nobody reads this folder: the course does not name the language `{ $language }`
translation-not-named-help = Write `also in: { $language }` in `course.yaml`, or take the folder away.
translation-no-file = these texts are not translated: { $files }
translation-no-file-help = They are shown in the first language. Write { $first } and so on, or name in `also in` what is to be had in this language.
translation-no-part = these parts are not translated: { $titles }
translation-no-part-help =
    They are shown in the first language. Write each in your language, under its heading:
    { $blocks }
translation-behind = “{ $title }” was not made from the original as it is now
translation-behind-help = Read the original again and mend this where it must be; then write `mark: { $mark }`. Until then its cautions and what tells that it is done stand in the first language.
translation-numbers = “{ $title }” and its original do not say the same numbers: { $numbers }
translation-numbers-help = Say them as the original does, in figures or in braces. Until then the original is shown.
translation-caution = cautions in the original of “{ $title }”: { $there }; here: { $here }
translation-caution-help = Begin each with the word, as in `> Caution:`. Until then those of the original are shown too.
untranslated-words =
    { $count ->
        [one] one short text has no words in this language
       *[other] { $count } short texts have no words in this language
    }
untranslated-words-help =
    They are shown as they are written. Write what each is called, in `{ $file }`:
    { $block }
translation-key-help = A translation holds prose alone. Its tickets say `translates`, `mark` and `until`; numbers, sizes and times come from the original.
