### Lo que va en cada hoja: filas de los pasos, notas, advertencias.

hands = Trabajo
wait = Espera
where = Dónde
at = A
hold = Aguanta
day = Día
kit = Equipo
sheet = Estirar a
roll = Sentido
thickness = Grosor
lock-in = Encierro
turn = Vuelta
layers = Capas de grasa
plies = Capas de masa
cut = Cortar
divide = Dividir
part = De la masa
oven = Horno
fan = Con ventilador
bake = Cocción
trays = Bandejas
core = Centro
cool = Enfriar
mix = Amasadora
water-at = Agua a
sheeter = Laminadora
ph = pH
dough-temperature = Masa a
weight-loss = Pierde
growth = Crece
day-before = { $time } el día antes
days-before =
    { $count ->
        [one] { $time }, { $count } día antes
       *[other] { $time }, { $count } días antes
    }
batch =
    { $count ->
        [one] { $number } tanda
       *[other] { $number } tandas
    }
tins =
    { $count ->
        [one] { $number } molde, { $tin }
       *[other] { $number } moldes, { $tin }
    }
tin-round = redondo { $size }
tin-square = { $size }
tin-ring = corona { $size }, hueco { $hole }
pieces-range = { $pieces } ({ $range })
the-section = { $name }
at-temperature = a { $temperature }
hold-up-to = hasta { $time }
hold-in = hasta { $time }, { $place }
hold-thaw = { $hold }, después descongelar { $time }, { $place }
place-basket = banetón
place-bench = mesa de trabajo
place-cold-room = cámara fría
place-counter = encimera
place-freezer = congelador
place-fridge = nevera
place-oven = horno
place-proofer = cámara de fermentación
place-rack = rejilla
used-instructor =
    { $count ->
        [one] { $count } docente
       *[other] { $count } docentes
    }
used-bench-place =
    { $count ->
        [one] { $count } puesto de trabajo
       *[other] { $count } puestos de trabajo
    }
used-mixer =
    { $count ->
        [one] { $count } amasadora
       *[other] { $count } amasadoras
    }
used-oven =
    { $count ->
        [one] { $count } horno
       *[other] { $count } hornos
    }
used-tray-per-oven =
    { $count ->
        [one] { $count } bandeja por horno
       *[other] { $count } bandejas por horno
    }
used-trays =
    { $count ->
        [one] { $count } bandeja ({ $place })
       *[other] { $count } bandejas ({ $place })
    }
so-many-days = { $count } días
day-of = { $day } de { $days }
lock-in-envelope = en sobre
lock-in-letter = en tres, como carta
lock-in-book = en libro
lock-in-inverted = { $name }, la grasa por fuera
turn-book = vuelta doble
turn-letter = vuelta sencilla
turn-half = pliegue en dos
turn-meet = { $name }, los extremos se juntan a { $at } del largo
roll-same-way = en el mismo sentido que antes del pliegue
cut-into = { $pieces } { $shape }, { $size }
divide-part = { $weight } para { $name }
divide-share = { $weight }
divide-pieces =
    { $count ->
        [one] { $count } pieza de { $weight }
       *[other] { $count } piezas de { $weight }
    }
shape-triangle =
    { $count ->
        [one] triángulo
       *[other] triángulos
    }
shape-right-triangle =
    { $count ->
        [one] triángulo rectángulo
       *[other] triángulos rectángulos
    }
shape-rectangle =
    { $count ->
        [one] rectángulo
       *[other] rectángulos
    }
shape-square =
    { $count ->
        [one] cuadrado
       *[other] cuadrados
    }
shape-round =
    { $count ->
        [one] disco
       *[other] discos
    }
shape-strip =
    { $count ->
        [one] tira
       *[other] tiras
    }
trays-in-loads =
    { $loads ->
        [one] { $trays }, en { $loads } hornada
       *[other] { $trays }, en { $loads } hornadas
    }
trays-in-rows = { $trays }, en filas de { $rows }
mix-phase = { $speed } { $time }
speed-first = 1.ª velocidad
speed-second = 2.ª velocidad
speed-third = 3.ª velocidad
speed-low = velocidad baja
speed-medium = velocidad media
speed-high = velocidad alta
weight-loss-to = { $value }, hasta { $weight } por pieza
other-also =
    { $count ->
        [one] { $name } (también en el paso { $steps })
       *[other] { $name } (también en los pasos { $steps })
    }
growth-half = la mitad
growth-double = hasta el doble
growth-triple = hasta el triple
growth-by = un { $share }
note-yeast = En lugar de { $weight } de { $name }: { $of-one } de { $one }, o { $of-two } de { $two }.
note-left-over = A { $piece } la pieza, de { $pieces } sobra: { $rest }.
nothing = nada
note-open-flour = No se indica el peso de { $names }. Por eso no hay porcentajes de panadero, ni hidratación, ni peso por pieza.
note-open-weight = No se indica el peso de { $names }. Por eso no hay hidratación ni peso por pieza.
note-boiling = A { $height } de altitud el agua hierve a { $boils }. Reste { $drop } a cada temperatura a la que se cuece un almíbar. Una crema de huevo cuaja a la misma temperatura que en todas partes, pero lo que se cuece a fuego lento tarda más.
note-tin-depth = No se conoce la profundidad de uno de los dos moldes; se toman como igual de hondos. Compárelos antes de llenar uno.
note-half-pieces = Los extremos de las filas son { $halves } medias piezas. Unidas de dos en dos, con las puntas hacia el mismo lado, dan { $whole } más.
note-ranges = Donde una línea da dos cantidades, las sumas cuentan el punto medio.
note-whole-rows = La última plancha es de filas enteras: da { $made } piezas, { $more } más que las { $asked } pedidas. La fórmula es para todas.
note-reroll =
    { $pieces ->
        [1] Estirados otra vez a { $size }, los recortes dan una más. Déjelos reposar primero.
       *[other] Estirados otra vez a { $size }, los recortes dan { $pieces } más. Déjelos reposar primero.
    }
cool-rule = { $what }: de { $hot } a { $warm } en un máximo de { $first }, a { $cold } en un máximo de { $all } en total
caution-allergens-unknown = De algunos ingredientes no se conocen los alérgenos. Lea los envases y pregunte antes de servirlo a nadie.
caution-raw-egg = El huevo crudo puede llevar gérmenes. Manténgalo frío, no pruebe lo que lo contenga crudo, y lave manos, boles y pinceles que haya tocado.
caution-raw-flour = La harina cruda no está lista para comer. No pruebe la masa cruda y limpie la mesa donde estuvo.
caution-cooling = Las cremas cocidas deben enfriarse deprisa y seguir frías. Enfríe en recipientes bajos, mida con termómetro y tire lo que pasó de su tiempo.
caution-thawing = Lo congelado se descongela tapado en la nevera, nunca sobre la mesa, y no se vuelve a congelar.
caution-core = Mida la temperatura del centro con una sonda limpia en la parte más gruesa.
caution-heat = Hornos, bandejas y moldes queman mucho después de parecer fríos. Use paños secos y abra la puerta del horno poniéndose a un lado.
caution-blades = Corte sobre una tabla firme, los dedos detrás de la hoja, y pase un cuchillo dejándolo en la mesa.
caution-local-rules = Donde las normas alimentarias locales difieran de esta hoja, siga las locales y pregunte a quienes están autorizados a aplicarlas.
video-from = desde { $time }
note-fat-firm = La mantequilla de hojaldrar se golpea hasta que se dobla sin romperse, a unos { $at }. La masa debe estar igual de firme.
note-fewer-pieces = Tanta masa da { $made } en su plancha, su parte serían { $share }.
note-too-small = Tan poca masa da una plancha demasiado pequeña para una sola pieza cortada así. Haga una tanda entera, o corte para un molde más pequeño.
of-whole-batch = { $value } (con una tanda entera)

## Variantes

note-way = De otra manera, { $name }: { $changes }.
made-without = Hecho sin { $names }.
made-without-kit = En la misma sala, con el mismo material y las mismas manos se trabaja en otros momentos con lo que aquí se omite: puede contener trazas. Pregunte antes de dárselo a quien no deba comerlo.
way-instead = { $new } en lugar de { $old }
way-beside = { $new } más, en { $old }
way-without = sin { $old }
left-out = { $name } (se omite)
amount-of = { $amount } { $name }

## Horneado por fases

bake-then = { $one }, luego { $two }
bake-steam = con vapor
bake-door = puerta entreabierta
bake-turn = girar la bandeja
bake-more = { $time } más si { $looks }
