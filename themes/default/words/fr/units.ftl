### Nombres et unités.

decimal-mark = ,
unit-teaspoon = { $number } c. à c.
unit-tablespoon = { $number } c. à s.
unit-fluid-ounce = { $number } oz liq.
unit-dessertspoon =
    { $count ->
        [one] { $number } cuillerée à dessert
       *[other] { $number } cuillerées à dessert
    }
unit-cup =
    { $count ->
        [one] { $number } tasse
       *[other] { $number } tasses
    }
unit-gill =
    { $count ->
        [one] { $number } gill
       *[other] { $number } gills
    }
unit-pint =
    { $count ->
        [one] { $number } pinte
       *[other] { $number } pintes
    }
unit-quart =
    { $count ->
        [one] { $number } quart américain
       *[other] { $number } quarts américains
    }
unit-gallon =
    { $count ->
        [one] { $number } gallon
       *[other] { $number } gallons
    }
unit-percent = { $number } %
unit-inch = { $number } po
unit-foot = { $number } pi
under = moins de { $amount }
named-value = { $name } : { $value }
piece-stick =
    { $count ->
        [one] { $number } plaquette (stick)
       *[other] { $number } plaquettes (sticks)
    }
piece-sachet =
    { $count ->
        [one] { $number } sachet
       *[other] { $number } sachets
    }
piece-leaf =
    { $count ->
        [one] { $number } feuille
       *[other] { $number } feuilles
    }
piece-sheet =
    { $count ->
        [one] { $number } feuille
       *[other] { $number } feuilles
    }
piece-cake =
    { $count ->
        [one] { $number } cube
       *[other] { $number } cubes
    }
piece-slice =
    { $count ->
        [one] { $number } tranche
       *[other] { $number } tranches
    }
piece-clove =
    { $count ->
        [one] { $number } gousse
       *[other] { $number } gousses
    }
piece-pod =
    { $count ->
        [one] { $number } gousse
       *[other] { $number } gousses
    }
piece-square =
    { $count ->
        [one] { $number } carré
       *[other] { $number } carrés
    }
piece-envelope =
    { $count ->
        [one] { $number } sachet
       *[other] { $number } sachets
    }
piece-package =
    { $count ->
        [one] { $number } paquet
       *[other] { $number } paquets
    }
piece-small =
    { $count ->
        [one] { $number } petit
       *[other] { $number } petits
    }
piece-medium =
    { $count ->
        [one] { $number } moyen
       *[other] { $number } moyens
    }
piece-large =
    { $count ->
        [one] { $number } gros
       *[other] { $number } gros
    }
piece-extra-large =
    { $count ->
        [one] { $number } très gros
       *[other] { $number } très gros
    }
