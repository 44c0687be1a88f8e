### The drawings, and the drawings read aloud. { $name } in a word is filled in by the program.

## Drawings

drawing-lock-in = Lock-in
drawing-turn = Turn
drawing-cut = Cutting plan
drawing-timeline = Timeline
drawing-by = by
drawing-numbered = { $number }: { $text }
drawing-sentence = { $text }.
drawing-before = The sheet
drawing-folding = Fold, seen from the side
drawing-after = The block
drawing-spine = spine
drawing-open-end = open end
drawing-edge-fold = fold
drawing-edge-folds =
    { $count ->
        [1] fold
       *[other] { $number } folds
    }
drawing-edge-ends =
    { $count ->
        [1] loose edge
       *[other] { $number } loose edges
    }
drawing-fat-layers = Fat layers
drawing-plies = Layers of dough
drawing-growth = { $before } → { $after }
drawing-next-quarter-turn = Next, a quarter turn, then roll along the arrow: the side of { $side } is stretched.
drawing-next-same-way = Next, no quarter turn: roll along the arrow, the side of { $side } is stretched.
drawing-next-any-way = Next, roll whichever way you like.
drawing-roll-turned = A quarter turn first: the open ends to your left and right.
drawing-lay-in = Lay the fat in
drawing-lay-in-dough = Lay the dough in
drawing-close = Close it, seen from the side
drawing-closed = Closed
drawing-dough = dough
drawing-fat = fat
drawing-dough-thick = Dough: { $thickness }
drawing-dough-block = Dough: { $size }, { $thickness }
drawing-fat-thick = Fat: { $thickness }
drawing-fat-block = Fat: { $size }, { $thickness }
drawing-seam-note = Dotted: seam, pinch it shut.
drawing-envelope-order = Fold the corners over in this order. Let them meet in the middle.
drawing-cut-pieces =
    { $count ->
        [one] { $count } piece, { $piece }, { $weight }
       *[other] { $count } pieces, { $piece }, { $weight } each
    }
drawing-cut-all = { $count } pieces from all sheets
drawing-cut-scrap = Dotted: scrap, { $percent }
drawing-far-edge = far edge
drawing-near-edge = near edge, { $length }
drawing-marked-edges = Marks: { $edges }.
drawing-edge-both-long = both long edges, from the left corner
drawing-edge-near = near edge, from the left corner
drawing-edge-far = far edge, from the left corner
drawing-edge-both-sides = both short sides, from the near corner
drawing-edge-left = left side, from the near corner
drawing-edge-right = right side, from the near corner
drawing-along = along the sheet
drawing-across = across it
drawing-rising = slantwise, from near left to far right
drawing-falling = slantwise, from far left to near right
drawing-cut-one = Cut { $first }: { $way }.
drawing-cuts = Cuts { $first }–{ $last }: { $way }.
drawing-cut-out = Cut the pieces out as drawn.
drawing-hands-on = hands on
drawing-waiting = waiting
drawing-may-hold = may hold
drawing-sums = { $elapsed } in all: { $hands } hands on, { $wait } waiting
drawing-lasts-hands = { $hands } hands on
drawing-lasts-wait = { $wait } waiting
drawing-lasts-both = { $hands } hands on, { $wait } waiting
drawing-roll = Rolling out
drawing-tray = The tray
drawing-shape-crescent = Crescent
drawing-shape-baton = Baton
drawing-shape-spiral = Spiral
drawing-shape-twist = Twist
drawing-shape-knot = Knot
drawing-shape-plait-of-3 = Plait of three
drawing-shape-plait-of-4 = Plait of four
drawing-shape-pinwheel = Pinwheel
drawing-shape-envelope = Envelope
drawing-shape-pocket = Pocket
drawing-shape-turnover = Turnover
drawing-shape-folded-square = Folded square
drawing-shape-ring = Ring
drawing-shape-round = Round
drawing-shape-oval = Oval
drawing-shape-tin = Tin loaf
drawing-shape-filled-ball = Filled ball
drawing-from-above = From above
drawing-from-the-side = From the side
drawing-bench-ends = the bench ends here, { $bench }
drawing-roll-from = From { $size }, { $thickness } thick
drawing-roll-to = To { $size }, { $thickness } thick
drawing-growth-title = How the fat layers grow
drawing-growth-note = Cut through, not to scale. Where the lines run together there are too many to draw.
drawing-oven-loads = Oven loads
drawing-tray-pieces = { $pieces } on a tray of { $tray }
drawing-tray-apart = Middle to middle: { $along } along the tray, { $across } across it
drawing-tray-in-pairs = In pairs, long side to long side; the marks are the middles of the pairs
drawing-tray-gap = Proofing needs a gap of { $along }. With it, { $fits } fit on the tray
drawing-tray-gaps = Proofing needs a gap of { $along } along the tray and { $across } across it. With it, { $fits } fit on the tray
drawing-tray-gap-only = They need a gap of { $along }. With it, { $fits } fit on the tray
drawing-tray-part = { $part }: { $said }
drawing-tray-alike = { $trays } trays of these
drawing-tray-loads = { $trays } trays, in { $loads } loads
drawing-tray-one-load = { $trays } trays, in one load
drawing-does-notch-and-stretch = Nick the middle of the base, { $notch } deep. Stretch the piece to { $stretched }, its tip above the middle of the base.
drawing-does-notch = Nick the middle of the base, { $notch } deep.
drawing-does-stretch = Stretch the piece to { $stretched }, its tip above the middle of the base.
drawing-does-stroke-tip = Stroke the tip out until it points at the middle of the base.
drawing-does-roll-triangle = Spread the base a little and roll it up to the tip. Do not press.
drawing-does-tip-beneath = Set it on its tip.
drawing-does-bend-ends = Bend both ends toward you.
drawing-does-join-ends = Bend both ends round until they meet, and press them together.
drawing-does-roll-in = Roll the first stick in from the short side. Lay the second where the turn comes down, and roll on.
drawing-does-seen-from-end = Seen from the end.
drawing-does-seam-beneath = Set it on its seam, the dotted line.
drawing-does-roll-strand = Roll a strand { $strand } long and { $roll } thick.
drawing-does-wind = Wind it flat round one end, loosely. Tuck the other end beneath.
drawing-does-turn-ends = Turn one end away from you and the other toward you.
drawing-does-set-twist = Set it down twisted, and press both ends to the tray.
drawing-does-knot = Lay a loop and draw one end through it.
drawing-does-join-ring = Lay one end over the other, by its own thickness, and roll them together.
drawing-does-lay-strands = Lay the strands side by side, each { $strand } long and { $roll } thick. Press them together at the far end.
drawing-does-cross-three = Lay the right strand over the middle one, then the left over the new middle one. Go on in turn.
drawing-does-cross-four = Lay the right strand over its neighbour and under the next. Lay the left one over its neighbour. Go on in turn.
drawing-does-tuck-ends = Press the ends together and tuck them beneath.
drawing-does-cut-corners = Cut in from each corner, two thirds of the way to the middle. Fold every other tip to the middle, in this order.
drawing-does-press-middle = Press the middle down firmly.
drawing-does-corners-in = Fill the middle. Fold the corners to it in this order, until they meet.
drawing-does-two-corners-in = Fill the middle. Fold one corner over it, and the opposite one over the first.
drawing-does-fold-over = Fill one half, well inside the edges, and fold the other half over it.
drawing-does-fold-corner = Fill beside the fold, then fold corner to corner.
drawing-does-fold-round = Fill one half, well inside the edge, and fold the other half over it.
drawing-does-press-edges = Press the dotted edges shut.
drawing-does-gather = Bring the edges to the middle, all round, and press them together.
drawing-does-gather-filling = Fill the middle. Bring the edges up over it, all round, and pinch them shut.
drawing-does-turn-over = Turn it over and round it under your hand: { $roll } wide.
drawing-does-fold-thirds = Fold the far third to the middle, then the near third over it.
drawing-does-roll-oval = Seam beneath, roll it longer from the middle to both ends.
drawing-does-roll-for-tin = Roll the dough up as long as the tin, { $base }.
drawing-does-set-in-tin = Set it in with its seam beneath. It is ready to bake when it reaches the rim.
drawing-does-own = { "" }
drawing-goes-round = It goes round { $wraps } times, and the roll is { $roll } thick in the middle.

## The drawings read aloud

drawing-alt-bench = The sheet is longer than the bench: { $bench }.
drawing-alt-piece = The piece, { $piece }.
drawing-alt-tin = The tin, { $piece }.
drawing-alt-growth = After the lock-in, fat layers: { $count }.
drawing-alt-grows = Folded in { $parts }: { $count }.
drawing-alt-sheet = The sheet, { $size }, long side facing you.
drawing-alt-turn-sheet = The sheet, { $size }: its side of { $length } lies from left to right.
drawing-alt-book = Fold the left and the right end in until they meet in the middle: each fold lies { $part } from its end. Then close it like a book, the left half over the right: { $count } parts, a block of { $folded }, the spine to your left.
drawing-alt-book-off-middle = Fold the left end in at { $first } from the left and the right end in at { $third }, until they meet at { $meet }. Then close it like a book at { $second }, the left half over the right: { $count } parts, a block of { $folded }, the spine to your left.
drawing-alt-letter = Fold the right third over the middle, the fold { $part } from the end. Then fold the left third over both, like a letter: { $count } parts, a block of { $folded }, the spine to your left.
drawing-alt-half = Fold the left half over the right, the fold { $part } from the end: { $count } parts, a block of { $folded }, the spine to your left.
drawing-alt-parts = Mark { $count } parts of { $part } each. Fold the left part over the next, and on, over and over, to the right end: { $count } parts, a block of { $folded }, the spine to your left.
drawing-alt-layers = Fat layers: { $before } before, { $after } after.
drawing-alt-plies = Layers of dough: { $before } before, { $after } after.
drawing-alt-edges = Opposite the spine, to your right: { $opposite }. Near and far are the open ends, where the layers show.
drawing-alt-edges-book = A fold to your left and a fold to your right; the seam runs between them over the top. Near and far are the open ends.
drawing-alt-edges-envelope = It is closed on all four sides; four seams meet in the middle of the top.
drawing-alt-next-turned = Next, give it a quarter turn, so that the open ends lie to your left and right, and roll towards them: the side of { $side } is stretched.
drawing-alt-next-along = Next, no quarter turn: roll from side to side, the same way as before. The side of { $side } is stretched.
drawing-alt-next-any = Next, roll it whichever way you like.
drawing-alt-dough = A sheet of { $outer }, { $size }, { $thickness } thick; a block of { $inner }, { $block }, { $block-thickness } thick.
drawing-alt-lock-in-envelope = Lay the { $inner } on the { $outer } so that its corners point at the middles of the { $outer }'s sides. Fold the four corners of the { $outer } over it, near left, far right, near right, far left, until they meet in the middle.
drawing-alt-lock-in-letter = The side of { $length } lies from left to right. Lay the { $inner } on the left two thirds. Fold the bare right third over the middle, then the left third, with the { $inner } on it, over both.
drawing-alt-lock-in-book = The side of { $length } lies from left to right. Lay the { $inner } on the middle half. Fold the left end and then the right end over it, until they meet in the middle.
drawing-alt-closed = Pinch the seams shut. The closed parcel: { $closed }.
drawing-marks-both-long = Along both long edges, mark from the left corner: { $marks }.
drawing-marks-near = Along the near long edge, mark from the left corner: { $marks }.
drawing-marks-far = Along the far long edge, mark from the left corner: { $marks }.
drawing-marks-both-sides = Along both short sides, mark from the near corner: { $marks }.
drawing-marks-left = Along the left short side, mark from the near corner: { $marks }.
drawing-marks-right = Along the right short side, mark from the near corner: { $marks }.
drawing-alt-scrap = Scrap: { $percent } of the sheet
drawing-alt-timeline = { $elapsed } in all: { $hands } hands on, { $wait } waiting. By the clock from the start:
drawing-alt-timeline-step = { $start } { $title }, { $lasts }.
drawing-alt-day = Day { $day }.
drawing-day = Day { $day }
drawing-alt-social = { $title }, from { $course }.

## Plans. Who works together, and what is done when

drawing-in-the-oven = in the oven
drawing-together = together
drawing-waits = waits
drawing-alt-plan = { $date } { $from } to { $to }, { $who }: { $what }.
