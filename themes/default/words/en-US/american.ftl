### What American English says otherwise: spelling, words of the trade, dates and the clock.

date = { $month } { $day }, { $year }
date-weekday = { $weekday }, { $month } { $day }, { $year }
clock =
    { $half ->
        [am] { $hour-12 }:{ $minute } AM
       *[pm] { $hour-12 }:{ $minute } PM
    }
unit-millilitre = { $number } mL
unit-centilitre = { $number } cL
unit-decilitre = { $number } dL
unit-litre = { $number } L
change-tin = for another pan
tins =
    { $count ->
        [one] { $number } pan, { $tin }
       *[other] { $number } pans, { $tin }
    }
note-tin-depth = The depth of one of the two pans is not known, so they are taken as equally deep. Compare them before you fill one.
caution-heat = Ovens, sheets and pans burn long after they look cool. Use dry cloths, and open the oven door standing to one side.
drawing-shape-plait-of-3 = Three-strand braid
drawing-shape-plait-of-4 = Four-strand braid
drawing-shape-tin = Pan loaf
drawing-does-roll-for-tin = Roll the dough up as long as the pan, { $base }.
drawing-alt-tin = The pan, { $piece }.
page-fibre = Fiber
