### Números y unidades.

decimal-mark = ,
unit-teaspoon =
    { $count ->
        [one] { $number } cdta.
       *[other] { $number } cdtas.
    }
unit-tablespoon =
    { $count ->
        [one] { $number } cda.
       *[other] { $number } cdas.
    }
unit-fluid-ounce = { $number } oz líq.
unit-dessertspoon =
    { $count ->
        [one] { $number } cuchara de postre
       *[other] { $number } cucharas de postre
    }
unit-cup =
    { $count ->
        [one] { $number } taza
       *[other] { $number } tazas
    }
unit-gill =
    { $count ->
        [one] { $number } gill
       *[other] { $number } gills
    }
unit-pint =
    { $count ->
        [one] { $number } pinta
       *[other] { $number } pintas
    }
unit-quart =
    { $count ->
        [one] { $number } cuarto de galón
       *[other] { $number } cuartos de galón
    }
unit-gallon =
    { $count ->
        [one] { $number } galón
       *[other] { $number } galones
    }
unit-percent = { $number } %
unit-inch = { $number } pulg.
unit-foot =
    { $count ->
        [one] { $number } pie
       *[other] { $number } pies
    }
under = menos de { $amount }
piece-stick =
    { $count ->
        [one] { $number } barra (stick)
       *[other] { $number } barras (sticks)
    }
piece-sachet =
    { $count ->
        [one] { $number } sobre
       *[other] { $number } sobres
    }
piece-leaf =
    { $count ->
        [one] { $number } hoja
       *[other] { $number } hojas
    }
piece-sheet =
    { $count ->
        [one] { $number } hoja
       *[other] { $number } hojas
    }
piece-cake =
    { $count ->
        [one] { $number } dado
       *[other] { $number } dados
    }
piece-slice =
    { $count ->
        [one] { $number } rebanada
       *[other] { $number } rebanadas
    }
piece-clove =
    { $count ->
        [one] { $number } diente
       *[other] { $number } dientes
    }
piece-pod =
    { $count ->
        [one] { $number } vaina
       *[other] { $number } vainas
    }
piece-square =
    { $count ->
        [one] { $number } onza
       *[other] { $number } onzas
    }
piece-envelope =
    { $count ->
        [one] { $number } sobre
       *[other] { $number } sobres
    }
piece-package =
    { $count ->
        [one] { $number } paquete
       *[other] { $number } paquetes
    }
piece-small =
    { $count ->
        [one] { $number } pequeño
       *[other] { $number } pequeños
    }
piece-medium =
    { $count ->
        [one] { $number } mediano
       *[other] { $number } medianos
    }
piece-large =
    { $count ->
        [one] { $number } grande
       *[other] { $number } grandes
    }
piece-extra-large =
    { $count ->
        [one] { $number } muy grande
       *[other] { $number } muy grandes
    }
