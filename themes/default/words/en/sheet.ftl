### What stands on every sheet: ticket rows and their values, remarks, cautions. { $name } in a word is filled in by the program.

## Ticket rows

hands = Hands on
wait = Wait
where = Where
at = At
hold = May hold
day = Day
kit = Kit
sheet = Roll to
roll = Roll
thickness = Thickness
lock-in = Lock-in
turn = Turn
layers = Fat layers
plies = Layers of dough
cut = Cut
divide = Divide
part = Of the dough
oven = Oven
fan = With fan
bake = Bake
trays = Trays
core = Core
cool = Cool
mix = Mixer
water-at = Water at
sheeter = Sheeter
ph = pH
dough-temperature = Dough at
weight-loss = Loses
growth = Grows

## Values of ticket rows

day-before = { $time } the day before
days-before = { $time }, { $count } days before
batch =
    { $count ->
        [one] { $number } batch
       *[other] { $number } batches
    }
tins =
    { $count ->
        [one] { $number } tin, { $tin }
       *[other] { $number } tins, { $tin }
    }
tin-round = { $size } round
tin-square = { $size }
tin-ring = { $size } ring, hole { $hole }
pieces-range = { $pieces } ({ $range })
the-section = the { $name }
hold-up-to = up to { $time }
hold-in = up to { $time }, { $place }
hold-thaw = { $hold }, then thaw { $time }, { $place }
place-basket = basket
place-bench = bench
place-cold-room = cold room
place-counter = counter
place-freezer = freezer
place-fridge = fridge
place-oven = oven
place-proofer = proofer
place-rack = rack
used-instructor =
    { $count ->
        [one] { $count } instructor
       *[other] { $count } instructors
    }
used-bench-place =
    { $count ->
        [one] { $count } bench place
       *[other] { $count } bench places
    }
used-mixer =
    { $count ->
        [one] { $count } mixer
       *[other] { $count } mixers
    }
used-oven =
    { $count ->
        [one] { $count } oven
       *[other] { $count } ovens
    }
used-tray-per-oven =
    { $count ->
        [one] { $count } tray per oven
       *[other] { $count } trays per oven
    }
used-trays =
    { $count ->
        [one] { $count } { $place } tray
       *[other] { $count } { $place } trays
    }
so-many-days = { $count } days
day-of = { $day } of { $days }
lock-in-envelope = envelope
lock-in-letter = letter
lock-in-book = book
lock-in-inverted = { $name }, the fat outside
turn-book = book turn
turn-letter = letter turn
turn-half = half turn
turn-meet = { $name }, the ends meet at { $at } of the length
roll-same-way = the same way as before the fold
cut-into = { $pieces } { $shape }, { $size }
divide-part = { $weight } for { $name }
divide-share = { $weight }
divide-pieces = { $count } pieces, { $weight } each
shape-triangle =
    { $count ->
        [one] triangle
       *[other] triangles
    }
shape-right-triangle =
    { $count ->
        [one] right triangle
       *[other] right triangles
    }
shape-rectangle =
    { $count ->
        [one] rectangle
       *[other] rectangles
    }
shape-square =
    { $count ->
        [one] square
       *[other] squares
    }
shape-round =
    { $count ->
        [one] round
       *[other] rounds
    }
shape-strip =
    { $count ->
        [one] strip
       *[other] strips
    }
trays-in-loads = { $trays }, in { $loads } oven loads
trays-in-rows = { $trays }, in rows of { $rows }
mix-phase = { $speed } { $time }
speed-first = first speed
speed-second = second speed
speed-third = third speed
speed-low = low
speed-medium = medium
speed-high = high
weight-loss-to = { $value }, to { $weight } a piece
other-also =
    { $count ->
        [one] { $name } (step { $steps } too)
       *[other] { $name } (steps { $steps } too)
    }
growth-half = by half
growth-double = to double
growth-triple = to triple
growth-by = by { $share }

## Remarks on the numbers

note-yeast = In place of { $weight } of { $name }: { $of-one } of { $one }, or { $of-two } of { $two }.
note-left-over = Scaled to { $piece } each, { $pieces } leave over: { $rest }.
nothing = nothing
at-temperature = at { $temperature }
note-open-flour = No weight is given for { $names }. So there are no baker's percentages, no hydration and no weight of a piece.
note-open-weight = No weight is given for { $names }. So there is no hydration and no weight of a piece.
note-boiling = At { $height } water boils at { $boils }. Take { $drop } off each temperature to which a syrup is boiled. A custard sets at the same temperature as anywhere, but what you simmer cooks more slowly.
note-tin-depth = The depth of one of the two tins is not known, so they are taken as equally deep. Compare them before you fill one.
note-half-pieces = The ends of the rows are { $halves } half pieces. Pressed together in pairs, tips alike, they make { $whole } more.
note-ranges = Where a line gives two amounts, the sums count the middle between them.
note-whole-rows = The last sheet is of whole rows: it gives { $made } pieces, { $more } more than the { $asked } asked for. The formula is for all of them.
note-fat-firm = Butter for folding is beaten until it bends without breaking, at about { $at }. The dough should be as firm as it is.
note-fewer-pieces = So much dough gives { $made } on its sheet, its share would be { $share }.
note-too-small = So little dough is too small a sheet for a single piece as it is cut here. Make a whole batch, or cut to fit a smaller tin.
of-whole-batch = { $value } (with a whole batch)
note-reroll =
    { $pieces ->
        [1] Rolled once more to { $size }, the scrap gives one more. Rest it first.
       *[other] Rolled once more to { $size }, the scrap gives { $pieces } more. Rest it first.
    }
cool-rule = { $what }: from { $hot } to { $warm } within { $first }, to { $cold } within { $all } in all

## Cautions

caution-allergens-unknown = For some ingredients the allergens are not known. Read the packs, and ask, before you serve this to anyone.
caution-raw-egg = Raw egg can carry germs. Keep it cold, do not taste what holds it raw, and wash hands, bowls and brushes that it touched.
caution-raw-flour = Raw flour is not ready to eat. Do not taste raw dough, and wipe the bench where it lay.
caution-cooling = Cooked cream and custard must get cold quickly and stay cold. Cool in shallow dishes, measure with a thermometer, and throw away what missed its time.
caution-thawing = What was frozen thaws covered in the fridge, never on the bench, and is not frozen again once it has thawed.
caution-core = Measure the core temperature with a clean probe in the thickest place.
caution-heat = Ovens, trays and tins burn long after they look cool. Use dry cloths, and open the oven door standing to one side.
caution-blades = Cut on a firm board, fingers behind the blade, and pass a knife by laying it down.
caution-local-rules = Where local food rules differ from this sheet, follow the local rules, and ask those who are licensed to apply them.
video-from = from { $time }

## Ways

note-way = Another way, { $name }: { $changes }.
made-without = Made without { $names }.
made-without-kit = The same room, kit and hands work at other times with what is left out, so traces of it can be in here. Ask before you give it to anybody who must not eat it.
way-instead = { $new } for { $old }
way-beside = { $new } more, in { $old }
way-without = without { $old }
left-out = { $name } (left out)
amount-of = { $amount } { $name }

## Bakes in phases

bake-then = { $one }, then { $two }
bake-steam = with steam
bake-door = door ajar
bake-turn = turn the tray
bake-more = { $time } more if { $looks }
