### Planes de clases y de horneados en casa, compras, pesadas.

crew-baker = alumno
crew-pair = pareja
crew-three = trío
crew-four = cuarteto
crew-group = grupo
crews-baker =
    { $count ->
        [one] { $count } alumno
       *[other] { $count } alumnos
    }
crews-pair =
    { $count ->
        [one] { $count } pareja
       *[other] { $count } parejas
    }
crews-three =
    { $count ->
        [one] { $count } trío
       *[other] { $count } tríos
    }
crews-four =
    { $count ->
        [one] { $count } cuarteto
       *[other] { $count } cuartetos
    }
crews-group =
    { $count ->
        [one] { $count } grupo
       *[other] { $count } grupos
    }
who-instructor = quien enseña
who-helper = ayudante
who-staff = quien enseña o ayudante
who-home = usted
who-baker =
    { $count ->
        [one] alumno { $numbers }
       *[other] alumnos { $numbers }
    }
who-pair =
    { $count ->
        [one] pareja { $numbers }
       *[other] parejas { $numbers }
    }
who-three =
    { $count ->
        [one] trío { $numbers }
       *[other] tríos { $numbers }
    }
who-four =
    { $count ->
        [one] cuarteto { $numbers }
       *[other] cuartetos { $numbers }
    }
who-group =
    { $count ->
        [one] grupo { $numbers }
       *[other] grupos { $numbers }
    }
who-member = { $who }, alumno { $number }
hands-home = sus manos
plan-done = Hecho
plan-of = { $recipe }: { $what }
plan-into = { $title }: llevar a { $place }
plan-out = { $title }: sacar de { $place }
plan-arrival = Llegada
plan-talk = Charla
plan-break = Pausa
plan-tasting = Cata
plan-washing = Fregado
plan-oven-on =
    { $count ->
        [one] Encender el horno { $ovens }: { $heat }
       *[other] Encender los hornos { $ovens }: { $heat }
    }
plan-oven-to =
    { $count ->
        [one] Horno { $ovens } a { $heat }
       *[other] Hornos { $ovens } a { $heat }
    }
plan-watch = Mirar: { $what }
plan-oven =
    { $count ->
        [one] horno { $oven } con { $count } bandeja
       *[other] horno { $oven } con { $count } bandejas
    }
plan-heat = { $heat }: { $ovens }
kit-instructor = docente
kit-bench-place = puesto de trabajo
kit-mixer = amasadora
kit-oven = horno
kit-tray-per-oven = bandeja por horno
kit-trays = bandeja ({ $place })
standing-best = demostrado: ningún plan es mejor
standing-nearest = demostrado: ningún plan se acerca más a los tiempos de la receta
standing-nearer = un buen plan; otro podría acercarse hasta { $minutes } min más a los tiempos de la receta
standing-sound = un buen plan: { $rests }{ $grid }, { $moments } comienzos distintos (ningún plan tiene menos de { $fewest }), { $waiting } de espera (ningún plan tiene menos de { $least }); ningún plan acaba antes de { $end }
standing-rests = cada reposo como de costumbre
standing-rests-short = reposos { $minutes } min más cortos en total que de costumbre
standing-off-grid = {", "}al minuto para que quepa
standing-never = demostrado: ningún plan cabe
standing-unknown = sin decidir: no se encontró ningún plan, y no está demostrado que no lo haya
reason-chain = los pasos se siguen durante más tiempo del que duran las sesiones, con cualquier equipo: a la sesión { $session } le faltan { $minutes } min
reason-apart = los pasos, sus esperas y las demostraciones no caben en estas sesiones, con cualquier equipo: una espera que no aguanta no puede durar de una sesión a la siguiente
reason-kit = demasiado poco de este equipo para { $steps }: { $kit }, hay { $have }; cabe con { $need }, y no con menos
reason-step = «{ $title }»
reason-together = ningún equipo por sí solo es la causa: faltan varios a la vez
reason-over = lo que queda no acaba con la sesión: a la sesión { $session } le faltan { $minutes } min; abajo está el plan que se pasa de la hora
reason-hours = en pie de { $from } a { $to } no queda tiempo hasta { $ready } en que cada paso, y cada traslado, no llegue ni demasiado pronto ni demasiado tarde para su espera
reason-waits = sus pasos no se siguen dentro de sus esperas, sean cuales sean las horas
remedy-fits = { $change }, cabe
remedy-fits-by = { $change }, cabe y acaba a las { $end }
remedy-more =
    { $count ->
        [one] con { $count } más de este equipo ({ $kit })
       *[other] con { $count } más de este equipo ({ $kit })
    }
remedy-session = con una sesión más, { $date } de { $from } a { $to }
remedy-bakers =
    { $count ->
        [one] con { $count } alumno como máximo
       *[other] con { $count } alumnos como máximo
    }
remedy-without = sin { $recipe }
remedy-end = { $time } del { $day }
remedy-together-2 = trabajando de dos en dos
remedy-together-3 = trabajando de tres en tres
remedy-together-4 = trabajando de cuatro en cuatro
remedy-together-5 = trabajando de cinco en cinco
remedy-no-demonstration = sin la tanda de quien enseña
remedy-no-talk = sin las charlas
remedy-no-break = sin las pausas
remedy-no-tasting = sin la cata
remedy-no-slack = sin el margen al final
remedy-hold = si puede aguantar la noche (`hold: up to 24 h`) en «{ $title }» ({ $recipe })
remedy-longer = si la sesión { $session } dura { $minutes } min más
remedy-stop = si el trabajo de { $who } se detiene donde está
remedy-ready = listo a las { $time } del { $day }
remedy-up = levantándose a las { $time }
remedy-stay-up = quedándose en pie hasta las { $time }
evening-head = { $title }: { $time } del { $day }
evening-changed = qué cambia
evening-unchanged = no cambia nada
evening-shift = { $who }: { $what } a las { $to }, no a las { $from } ({ $why })
evening-why-after = sigue a «{ $title }»
evening-why-busy = no está libre antes: { $what }
evening-why-hands = las manos no están libres antes
evening-why-oven = ningún horno libre antes
evening-why-now = todavía sin empezar
evening-why-together = junto con otros
evening-next = los próximos 30 minutos
evening-nothing = nada
evening-later = después
plan-note-shortened = «{ $title }» tiene { $lasts } en lugar de { $usual }, dentro de su margen: si no, esperaría más en otro sitio
plan-note-other-days = ningún plan cabe en los días que nombra la receta: este cumple cada espera en otros días
plan-note-shared = { $title } se hace una sola vez: { $parts }. Para estos { $taken }, amase { $mixed }; el resto se pierde por el camino.
plan-note-too-long = { $who }: { $title } ya ha durado más que su tiempo más largo
plan-note-crowded = lo que ya está empezado va a necesitar más bandejas de las que hay: búsquele un sitio
plan-note-usual = si la sesión { $session } dura { $minutes } min más, cada reposo es tan largo como de costumbre
plan-note-oven-in-break = a las { $time }, en una pausa, hay que sacar algo del horno: alguien se queda al lado
plan-note-uncounted = la clase no cuenta este equipo, { $kit }: el plan supone que hay bastante
plan-note-unused = nada de lo que se hace en esta clase necesita este equipo: { $kit }
plan-note-stopped = se detuvo la búsqueda: este es el mejor hasta ahora
plan-by-short = reposos más cortos que de costumbre
plan-by-moments = minutos distintos en que algo empieza
plan-by-waiting = espera más allá de los tiempos de las recetas
plan-by-away = distancia a los tiempos de la receta, todas las esperas juntas
plan-by-end = desde la primera apertura hasta el final
plan-by-lead = desde el primer paso hasta que está listo
plan-measured = { $what }: { $time }
plan-why = por qué: { $reason }
plan-help = qué ayudaría: { $remedy }
plan-note = nota: { $note }
plan-all-watch = { $what } (todos miran)
plan-closes = cuando acaba la sesión, { $date } { $time }
plan-left = { $what } ({ $count })
plan-summary = { $who }: { $what }
plan-about = { $title } ({ $oven })
as-needed = según haga falta
order-head = { $title }: { $bakers } alumnos, { $pieces } piezas, { $spare } % de reserva, también al pesar
order-head-home =
    { $pieces ->
        [0] { $title }
        [one] { $title }: { $pieces } pieza
       *[other] { $title }: { $pieces } piezas
    }
order-to-buy = comprar
order-count = { $count } ({ $weight })
order-left = sobra { $weight }
order-total = total { $sum }
order-a-student = { $sum } por alumno
order-a-piece = { $sum } por pieza
order-unpriced = sin precio: { $names }
order-weigh = pesar, { $sets } × { $title } ({ $each })
order-weigh-home = pesar: { $title }
order-weigh-table =
    { $sets ->
        [one] pesadas: { $title } para cada { $each } ({ $sets } juego)
       *[other] pesadas: { $title } para cada { $each } ({ $sets } juegos)
    }
each-group = grupo
each-baker = alumno
each-demonstration = demostración
order-ingredient = ingrediente
order-need = hace falta (g)
order-shelf = en la despensa (g)
order-pack = paquete (g)
order-packs = paquetes
order-left-over = sobra (g)
order-cost = coste
order-currency = moneda
order-sum = total
order-step = paso
order-recipe = receta
order-grams = gramos
order-in-words = en palabras
