### Zahlen und Einheiten.

decimal-mark = ,
unit-teaspoon = { $number } TL
unit-tablespoon = { $number } EL
unit-fluid-ounce = { $number } fl oz
unit-dessertspoon = { $number } Dessertlöffel
unit-cup =
    { $count ->
        [one] { $number } Tasse
       *[other] { $number } Tassen
    }
unit-gill =
    { $count ->
        [one] { $number } Gill
       *[other] { $number } Gills
    }
unit-pint =
    { $count ->
        [one] { $number } Pint
       *[other] { $number } Pints
    }
unit-quart =
    { $count ->
        [one] { $number } Quart
       *[other] { $number } Quarts
    }
unit-gallon =
    { $count ->
        [one] { $number } Gallone
       *[other] { $number } Gallonen
    }
unit-percent = { $number } %
unit-inch = { $number } in
unit-foot = { $number } ft
under = unter { $amount }
piece-stick =
    { $count ->
        [one] { $number } Stick
       *[other] { $number } Sticks
    }
piece-sachet = { $number } Päckchen
piece-leaf =
    { $count ->
        [one] { $number } Blatt
       *[other] { $number } Blatt
    }
piece-sheet =
    { $count ->
        [one] { $number } Blatt
       *[other] { $number } Blatt
    }
piece-cake = { $number } Würfel
piece-slice =
    { $count ->
        [one] { $number } Scheibe
       *[other] { $number } Scheiben
    }
piece-clove =
    { $count ->
        [one] { $number } Zehe
       *[other] { $number } Zehen
    }
piece-pod =
    { $count ->
        [one] { $number } Schote
       *[other] { $number } Schoten
    }
piece-square =
    { $count ->
        [one] { $number } Stück
       *[other] { $number } Stücke
    }
piece-envelope = { $number } Tütchen
piece-package =
    { $count ->
        [one] { $number } Packung
       *[other] { $number } Packungen
    }
piece-small = { $number } klein
piece-medium = { $number } mittelgroß
piece-large = { $number } groß
piece-extra-large = { $number } sehr groß
