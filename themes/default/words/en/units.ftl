### Numbers and units. { $number } is a number as it stands, { $count } the same in digits: 1 for all up to one.

decimal-mark = .
unit-milligram = { $number } mg
unit-gram = { $number } g
unit-kilogram = { $number } kg
unit-ounce = { $number } oz
unit-pound = { $number } lb
unit-millilitre = { $number } ml
unit-centilitre = { $number } cl
unit-decilitre = { $number } dl
unit-litre = { $number } l
unit-teaspoon = { $number } tsp
unit-tablespoon = { $number } tbsp
unit-fluid-ounce = { $number } fl oz
unit-dessertspoon =
    { $count ->
        [one] { $number } dessertspoon
       *[other] { $number } dessertspoons
    }
unit-cup =
    { $count ->
        [one] { $number } cup
       *[other] { $number } cups
    }
unit-gill =
    { $count ->
        [one] { $number } gill
       *[other] { $number } gills
    }
unit-pint =
    { $count ->
        [one] { $number } pint
       *[other] { $number } pints
    }
unit-quart =
    { $count ->
        [one] { $number } quart
       *[other] { $number } quarts
    }
unit-gallon =
    { $count ->
        [one] { $number } gallon
       *[other] { $number } gallons
    }
unit-percent = { $number } %
unit-millimetre = { $number } mm
unit-centimetre = { $number } cm
unit-metre = { $number } m
unit-inch = { $number } in
unit-foot = { $number } ft
unit-celsius = { $number } °C
unit-fahrenheit = { $number } °F
unit-minute = { $number } min
unit-hour = { $number } h
unit-kilocalorie = { $number } kcal
under = under { $amount }
units-together = { $larger } { $smaller }
units-plus = { $one } + { $other }
units-apart = { $low } – { $high }
with-range = { $usual } ({ $range })
so-many = { $count } { $name }
so-many-pieces = { $number } { $name }
share-of = { $share } { $name }
with-amount = { $name } ({ $amount })
named-value = { $name }: { $value }
money = { $sum } { $currency }

## Pieces of an ingredient, by the pantry's word. What has no line here is shown as that word.

piece-stick =
    { $count ->
        [one] { $number } stick
       *[other] { $number } sticks
    }
piece-sachet =
    { $count ->
        [one] { $number } sachet
       *[other] { $number } sachets
    }
piece-leaf =
    { $count ->
        [one] { $number } leaf
       *[other] { $number } leaves
    }
piece-sheet =
    { $count ->
        [one] { $number } sheet
       *[other] { $number } sheets
    }
piece-cake =
    { $count ->
        [one] { $number } cake
       *[other] { $number } cakes
    }
piece-slice =
    { $count ->
        [one] { $number } slice
       *[other] { $number } slices
    }
piece-clove =
    { $count ->
        [one] { $number } clove
       *[other] { $number } cloves
    }
piece-pod =
    { $count ->
        [one] { $number } pod
       *[other] { $number } pods
    }
piece-square =
    { $count ->
        [one] { $number } square
       *[other] { $number } squares
    }
piece-envelope =
    { $count ->
        [one] { $number } envelope
       *[other] { $number } envelopes
    }
piece-package =
    { $count ->
        [one] { $number } package
       *[other] { $number } packages
    }
