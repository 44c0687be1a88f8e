### Plans of classes and of bakes at home, orders, weigh-outs. { $name } in a word is filled in by the program.

## Plans. Who works together, and what is done when

crew-baker = baker
crew-pair = pair
crew-three = three
crew-four = four
crew-group = group
crews-baker =
    { $count ->
        [one] { $count } baker
       *[other] { $count } bakers
    }
crews-pair =
    { $count ->
        [one] { $count } pair
       *[other] { $count } pairs
    }
crews-three =
    { $count ->
        [one] { $count } three
       *[other] { $count } threes
    }
crews-four =
    { $count ->
        [one] { $count } four
       *[other] { $count } fours
    }
crews-group =
    { $count ->
        [one] { $count } group
       *[other] { $count } groups
    }
who-instructor = instructor
who-helper = helper
who-staff = instructor or helper
who-home = you
who-baker =
    { $count ->
        [one] baker { $numbers }
       *[other] bakers { $numbers }
    }
who-pair =
    { $count ->
        [one] pair { $numbers }
       *[other] pairs { $numbers }
    }
who-three =
    { $count ->
        [one] three { $numbers }
       *[other] threes { $numbers }
    }
who-four =
    { $count ->
        [one] four { $numbers }
       *[other] fours { $numbers }
    }
who-group =
    { $count ->
        [one] group { $numbers }
       *[other] groups { $numbers }
    }
who-member = { $who }, baker { $number }
hands-home = your hands
plan-done = Done
plan-of = { $recipe }: { $what }
plan-into = { $title }: move to the { $place }
plan-out = { $title }: take from the { $place }
plan-arrival = Arrival
plan-talk = Talk
plan-break = Break
plan-tasting = Tasting
plan-washing = Washing up
plan-oven-on =
    { $count ->
        [one] Oven { $ovens } on: { $heat }
       *[other] Ovens { $ovens } on: { $heat }
    }
plan-oven-to =
    { $count ->
        [one] Oven { $ovens } to { $heat }
       *[other] Ovens { $ovens } to { $heat }
    }
plan-watch = Watch: { $what }
plan-oven =
    { $count ->
        [one] oven { $oven } with { $count } tray
       *[other] oven { $oven } with { $count } trays
    }
plan-heat = { $heat }: { $ovens }
kit-instructor = instructor
kit-bench-place = bench place
kit-mixer = mixer
kit-oven = oven
kit-tray-per-oven = tray per oven
kit-trays = { $place } tray
standing-best = proven: no plan is better
standing-nearest = proven: no plan is nearer to the recipe's own times
standing-nearer = a sound plan; another could be up to { $minutes } min nearer to the recipe's own times
standing-sound = a sound plan: { $rests }{ $grid }, { $moments } different starts (no plan has fewer than { $fewest }), { $waiting } of waiting (no plan has less than { $least }); no plan ends before { $end }
standing-rests = every rest as usual
standing-rests-short = rests shorter than usual by { $minutes } min all together
standing-off-grid = {", "}single minutes to make it fit
standing-never = proven: no plan fits
standing-unknown = not decided: no plan was found, and it is not proven that there is none
reason-chain = the steps follow each other for longer than the sessions last, whatever the kit: session { $session } is { $minutes } min short
reason-apart = the steps, their waits and the demonstrations do not go into these sessions, whatever the kit: a wait without a hold cannot last from one session to the next
reason-kit = too little of this kit for { $steps }: { $kit }, of which there are { $have }; it fits with { $need }, and with no fewer
reason-step = “{ $title }”
reason-together = no one piece of kit alone is the reason: several are short together
reason-over = what is left does not end with the session: session { $session } is { $minutes } min short; below is the plan that runs over
reason-hours = up from { $from } to { $to } leaves no time until { $ready } at which every step, and every move into a hold and out of it, comes neither too early nor too late for its wait
reason-waits = its steps do not follow each other within their waits, whatever the hours
remedy-fits = { $change } it fits
remedy-fits-by = { $change } it fits, ending by { $end }
remedy-more =
    { $count ->
        [one] with { $count } more { $kit }
       *[other] with { $count } more of this kit, { $kit },
    }
remedy-session = with one more session, { $date } { $from } to { $to },
remedy-bakers = with no more than { $count } bakers
remedy-without = without { $recipe }
remedy-end = { $time } on { $day }
remedy-together-2 = working in pairs
remedy-together-3 = working in threes
remedy-together-4 = working in fours
remedy-together-5 = working in fives
remedy-no-demonstration = without the instructor's own batch
remedy-no-talk = without the talks
remedy-no-break = without the breaks
remedy-no-tasting = without the tasting
remedy-no-slack = without the slack at the end
remedy-hold = with a hold over night (`hold: up to 24 h`) at “{ $title }” ({ $recipe })
remedy-longer = with session { $session } { $minutes } min longer
remedy-stop = if { $who } stop where they are
remedy-ready = ready at { $time } on { $day }
remedy-up = getting up at { $time }
remedy-stay-up = staying up until { $time }
evening-head = { $title }: { $time } on { $day }
evening-changed = what changes
evening-unchanged = nothing changes
evening-shift = { $who }: { $what } at { $to }, not { $from } ({ $why })
evening-why-after = it follows “{ $title }”
evening-why-busy = { $what } not free before
evening-why-hands = hands not free before
evening-why-oven = no oven free before
evening-why-now = not begun by now
evening-why-together = together with others
evening-next = the next 30 minutes
evening-nothing = nothing
evening-later = later
plan-note-shortened = “{ $title }” has { $lasts } instead of { $usual }, within its range: it would stand longer elsewhere
plan-note-other-days = on the days that the recipe names no plan fits: this one keeps to every wait on other days
plan-note-shared = { $title } is made once: { $parts }. For these { $taken }, mix { $mixed }; the rest is lost on the way.
plan-note-too-long = { $who }: { $title } has already lasted longer than its longest time
plan-note-crowded = what is begun already will need more trays than there are: find a place for it
plan-note-usual = with session { $session } { $minutes } min longer every rest is as long as usual
plan-note-oven-in-break = at { $time }, in a break, something is due out of the oven: somebody stays by it
plan-note-uncounted = the class does not count this kit, { $kit }: the plan takes it that there is enough
plan-note-unused = nothing that is made in this class needs this kit: { $kit }
plan-note-stopped = the search was stopped: this is the best of it so far
plan-by-short = rests shorter than usual
plan-by-moments = different minutes at which something starts
plan-by-waiting = waiting beyond the recipes' own times
plan-by-away = away from the recipe's own times, all waits together
plan-by-end = from the first opening to the end
plan-by-lead = from the first step until it is ready
plan-measured = { $what }: { $time }
plan-why = why: { $reason }
plan-help = what would help: { $remedy }
plan-note = note: { $note }
plan-all-watch = { $what } (all watch)
plan-closes = when the session closes at { $date } { $time }
plan-left = { $what } ({ $count })
plan-summary = { $who }: { $what }
plan-about = { $title } ({ $oven })

## The order and the weigh-out

as-needed = as needed
order-head = { $title }: { $bakers } bakers, { $pieces } pieces, { $spare } % spare, in the tubs too
order-head-home =
    { $pieces ->
        [0] { $title }
        [one] { $title }: { $pieces } piece
       *[other] { $title }: { $pieces } pieces
    }
order-to-buy = to buy
order-count = { $count } ({ $weight })
order-left = { $weight } left
order-total = total { $sum }
order-a-student = { $sum } a student
order-a-piece = { $sum } a piece
order-unpriced = without a price: { $names }
order-weigh = weigh out, { $sets } × { $title } ({ $each })
order-weigh-home = weigh out: { $title }
order-weigh-table = weigh-out: { $title } for each { $each } ({ $sets } sets)
each-group = group
each-baker = baker
each-demonstration = demonstration
order-ingredient = ingredient
order-need = need (g)
order-shelf = on the shelf (g)
order-pack = pack (g)
order-packs = packs
order-left-over = left over (g)
order-cost = cost
order-currency = currency
order-sum = total
order-step = step
order-recipe = recipe
order-grams = grams
order-in-words = in words
