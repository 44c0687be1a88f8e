### Los dibujos, y los dibujos leídos en voz alta.

drawing-lock-in = Encierro
drawing-turn = Vuelta
drawing-cut = Plano de corte
drawing-timeline = Línea de tiempo
drawing-by = por
drawing-numbered = { $number }: { $text }
drawing-sentence = { $text }.
drawing-before = La plancha
drawing-folding = Pliegue, visto de lado
drawing-after = El bloque
drawing-spine = lomo
drawing-open-end = extremo abierto
drawing-edge-fold = pliegue
drawing-edge-folds =
    { $count ->
        [1] un pliegue
       *[other] { $number } pliegues
    }
drawing-edge-ends =
    { $count ->
        [1] un borde suelto
       *[other] { $number } bordes sueltos
    }
drawing-fat-layers = Capas de grasa
drawing-plies = Capas de masa
drawing-growth = { $before } → { $after }
drawing-next-quarter-turn = Después, un cuarto de giro y estire según la flecha: el lado de { $side } se alarga.
drawing-next-same-way = Después, sin cuarto de giro: estire según la flecha, el lado de { $side } se alarga.
drawing-next-any-way = Después, estire en el sentido que quiera.
drawing-roll-turned = Primero un cuarto de giro: los extremos abiertos a izquierda y derecha.
drawing-lay-in = Poner la grasa
drawing-lay-in-dough = Poner la masa
drawing-close = Cerrar, visto de lado
drawing-closed = Cerrado
drawing-dough = masa
drawing-fat = grasa
drawing-dough-thick = Masa: { $thickness }
drawing-dough-block = Masa: { $size }, { $thickness }
drawing-fat-thick = Grasa: { $thickness }
drawing-fat-block = Grasa: { $size }, { $thickness }
drawing-seam-note = Punteado: unión, pellizcar.
drawing-envelope-order = Doble las esquinas en este orden. Se juntan en el centro.
drawing-cut-pieces =
    { $count ->
        [one] { $count } pieza, { $piece }, { $weight }
       *[other] { $count } piezas, { $piece }, { $weight } cada una
    }
drawing-cut-all =
    { $count ->
        [one] { $count } pieza de todas las planchas
       *[other] { $count } piezas de todas las planchas
    }
drawing-cut-scrap = Punteado: recortes, { $percent }
drawing-far-edge = borde lejano
drawing-near-edge = borde cercano, { $length }
drawing-marked-edges = Marcas: { $edges }.
drawing-edge-both-long = los dos bordes largos, desde la esquina izquierda
drawing-edge-near = borde cercano, desde la esquina izquierda
drawing-edge-far = borde lejano, desde la esquina izquierda
drawing-edge-both-sides = los dos lados cortos, desde la esquina cercana
drawing-edge-left = lado izquierdo, desde la esquina cercana
drawing-edge-right = lado derecho, desde la esquina cercana
drawing-along = a lo largo de la plancha
drawing-across = a lo ancho
drawing-rising = en diagonal, de cerca a la izquierda a lejos a la derecha
drawing-falling = en diagonal, de lejos a la izquierda a cerca a la derecha
drawing-cut-one = Corte { $first }: { $way }.
drawing-cuts = Cortes { $first }–{ $last }: { $way }.
drawing-cut-out = Corte las piezas como se dibuja.
drawing-hands-on = trabajo
drawing-waiting = espera
drawing-may-hold = aguanta
drawing-sums = { $elapsed } en total: { $hands } de trabajo, { $wait } de espera
drawing-lasts-hands = { $hands } de trabajo
drawing-lasts-wait = { $wait } de espera
drawing-lasts-both = { $hands } de trabajo, { $wait } de espera
drawing-roll = Estirar
drawing-tray = La bandeja
drawing-shape-crescent = Medialuna
drawing-shape-baton = Napolitana
drawing-shape-spiral = Caracola
drawing-shape-twist = Torcido
drawing-shape-knot = Nudo
drawing-shape-plait-of-3 = Trenza de tres cabos
drawing-shape-plait-of-4 = Trenza de cuatro cabos
drawing-shape-pinwheel = Molinillo
drawing-shape-envelope = Sobre
drawing-shape-pocket = Bolsillo
drawing-shape-turnover = Empanadilla
drawing-shape-folded-square = Cuadrado doblado
drawing-shape-ring = Rosca
drawing-shape-round = Redondo
drawing-shape-oval = Ovalado
drawing-shape-tin = Pan de molde
drawing-shape-filled-ball = Bola rellena
drawing-from-above = Desde arriba
drawing-from-the-side = De lado
drawing-bench-ends = la mesa acaba aquí, { $bench }
drawing-roll-from = De { $size }, grosor { $thickness }
drawing-roll-to = A { $size }, grosor { $thickness }
drawing-growth-title = Cómo crecen las capas de grasa
drawing-growth-note = En corte, sin escala. Donde las líneas se juntan hay demasiadas para dibujarlas.
drawing-oven-loads = Hornadas
drawing-tray-pieces = { $pieces } en una bandeja de { $tray }
drawing-tray-apart = De centro a centro: { $along } a lo largo de la bandeja, { $across } a lo ancho
drawing-tray-in-pairs = Por parejas, lado largo con lado largo; las marcas son los centros de las parejas
drawing-tray-gap = Para fermentar hace falta una separación de { $along }. Con ella caben { $fits } en la bandeja
drawing-tray-gaps = Para fermentar hace falta una separación de { $along } a lo largo y { $across } a lo ancho. Con ella caben { $fits } en la bandeja
drawing-tray-gap-only = Hace falta una separación de { $along }. Con ella caben { $fits } en la bandeja
drawing-tray-part = { $part }: { $said }
drawing-tray-alike = { $trays } bandejas así
drawing-tray-loads = { $trays } bandejas, en { $loads } hornadas
drawing-tray-one-load = { $trays } bandejas, en una hornada
drawing-does-notch-and-stretch = Haga una muesca de { $notch } en el centro de la base. Estire la pieza a { $stretched }, la punta sobre el centro de la base.
drawing-does-notch = Haga una muesca de { $notch } en el centro de la base.
drawing-does-stretch = Estire la pieza a { $stretched }, la punta sobre el centro de la base.
drawing-does-stroke-tip = Alise la punta hasta que mire al centro de la base.
drawing-does-roll-triangle = Abra un poco la base y enróllela hasta la punta. No apriete.
drawing-does-tip-beneath = Póngala sobre su punta.
drawing-does-bend-ends = Doble los dos extremos hacia usted.
drawing-does-join-ends = Doble los dos extremos hasta que se toquen y únalos.
drawing-does-roll-in = Enrolle la primera barrita desde el lado corto. Ponga la segunda donde cae la vuelta y siga enrollando.
drawing-does-seen-from-end = Visto desde el extremo.
drawing-does-seam-beneath = Póngala sobre su unión, la línea punteada.
drawing-does-roll-strand = Haga un cordón de { $strand } de largo y { $roll } de grueso.
drawing-does-wind = Enróllelo en plano alrededor de un extremo, sin apretar. Meta el otro extremo debajo.
drawing-does-turn-ends = Gire un extremo hacia fuera y el otro hacia usted.
drawing-does-set-twist = Póngalo torcido y apriete los dos extremos contra la bandeja.
drawing-does-knot = Haga un lazo y pase un extremo por él.
drawing-does-join-ring = Ponga un extremo sobre el otro, lo que mide de grueso, y ruédelos juntos.
drawing-does-lay-strands = Ponga los cabos uno junto a otro, cada uno de { $strand } de largo y { $roll } de grueso. Únalos en el extremo lejano.
drawing-does-cross-three = Pase el cabo derecho sobre el del medio y luego el izquierdo sobre el nuevo del medio. Siga por turnos.
drawing-does-cross-four = Pase el cabo derecho sobre su vecino y bajo el siguiente. Pase el izquierdo sobre su vecino. Siga por turnos.
drawing-does-tuck-ends = Una los extremos y métalos debajo.
drawing-does-cut-corners = Corte desde cada esquina dos tercios del camino al centro. Doble una de cada dos puntas al centro, en este orden.
drawing-does-press-middle = Apriete bien el centro.
drawing-does-corners-in = Rellene el centro. Doble las esquinas hacia él en este orden, hasta que se toquen.
drawing-does-two-corners-in = Rellene el centro. Doble una esquina por encima y la opuesta sobre la primera.
drawing-does-fold-over = Rellene una mitad, lejos de los bordes, y doble la otra por encima.
drawing-does-fold-corner = Rellene junto al pliegue y doble esquina con esquina.
drawing-does-fold-round = Rellene una mitad, lejos del borde, y doble la otra por encima.
drawing-does-press-edges = Apriete los bordes punteados.
drawing-does-gather = Lleve los bordes al centro, todo alrededor, y únalos.
drawing-does-gather-filling = Rellene el centro. Suba los bordes por encima, todo alrededor, y pellízquelos.
drawing-does-turn-over = Dele la vuelta y bolee bajo la mano: { $roll } de ancho.
drawing-does-fold-thirds = Doble el tercio lejano al centro y luego el tercio cercano por encima.
drawing-does-roll-oval = Con la unión debajo, ruédelo del centro a los extremos para alargarlo.
drawing-does-roll-for-tin = Enrolle la masa al largo del molde, { $base }.
drawing-does-set-in-tin = Póngala con la unión debajo. Está lista para hornear cuando llega al borde.
drawing-does-own = { "" }
drawing-goes-round = Da { $wraps } vueltas, y el rollo tiene { $roll } de grueso en el centro.
drawing-alt-bench = La plancha es más larga que la mesa: { $bench }.
drawing-alt-piece = La pieza, { $piece }.
drawing-alt-tin = El molde, { $piece }.
drawing-alt-growth = Tras el encierro, capas de grasa: { $count }.
drawing-alt-grows = Doblada en { $parts }: { $count }.
drawing-alt-sheet = La plancha, { $size }, el lado largo frente a usted.
drawing-alt-turn-sheet = La plancha, { $size }: su lado de { $length } va de izquierda a derecha.
drawing-alt-book = Doble el extremo izquierdo y el derecho hasta que se junten en el centro: cada pliegue queda a { $part } de su extremo. Luego ciérrela como un libro, la mitad izquierda sobre la derecha: { $count } partes, un bloque de { $folded }, el lomo a su izquierda.
drawing-alt-book-off-middle = Doble el extremo izquierdo a { $first } de la izquierda y el derecho a { $third }, hasta que se junten a { $meet }. Luego ciérrela como un libro a { $second }, la mitad izquierda sobre la derecha: { $count } partes, un bloque de { $folded }, el lomo a su izquierda.
drawing-alt-letter = Doble el tercio derecho sobre el centro, el pliegue a { $part } del extremo. Luego doble el tercio izquierdo sobre los dos, como una carta: { $count } partes, un bloque de { $folded }, el lomo a su izquierda.
drawing-alt-half = Doble la mitad izquierda sobre la derecha, el pliegue a { $part } del extremo: { $count } partes, un bloque de { $folded }, el lomo a su izquierda.
drawing-alt-parts = Marque { $count } partes de { $part }. Doble la parte izquierda sobre la siguiente y siga así hasta el extremo derecho: { $count } partes, un bloque de { $folded }, el lomo a su izquierda.
drawing-alt-layers = Capas de grasa: { $before } antes, { $after } después.
drawing-alt-plies = Capas de masa: { $before } antes, { $after } después.
drawing-alt-edges = Frente al lomo, a su derecha: { $opposite }. Cerca y lejos quedan los extremos abiertos, donde se ven las capas.
drawing-alt-edges-book = Un pliegue a su izquierda y otro a su derecha; la unión va entre ellos por arriba. Cerca y lejos quedan los extremos abiertos.
drawing-alt-edges-envelope = Está cerrado por los cuatro lados; cuatro uniones se juntan en el centro de arriba.
drawing-alt-next-turned = Después, un cuarto de giro, con los extremos abiertos a izquierda y derecha, y estire hacia ellos: el lado de { $side } se alarga.
drawing-alt-next-along = Después, sin cuarto de giro: estire de lado a lado, en el mismo sentido que antes. El lado de { $side } se alarga.
drawing-alt-next-any = Después, estire en el sentido que quiera.
drawing-alt-dough =
    { $inverted ->
        [yes] Una plancha de grasa, { $size }, grosor { $thickness }; un bloque de masa, { $block }, grosor { $block-thickness }.
       *[no] Una plancha de masa, { $size }, grosor { $thickness }; un bloque de grasa, { $block }, grosor { $block-thickness }.
    }
drawing-alt-lock-in-envelope =
    { $inverted ->
        [yes] Ponga la masa sobre la grasa, con sus esquinas hacia el centro de los lados de la grasa. Doble por encima las cuatro esquinas de la grasa, cerca a la izquierda, lejos a la derecha, cerca a la derecha, lejos a la izquierda, hasta que se junten en el centro.
       *[no] Ponga la grasa sobre la masa, con sus esquinas hacia el centro de los lados de la masa. Doble por encima las cuatro esquinas de la masa, cerca a la izquierda, lejos a la derecha, cerca a la derecha, lejos a la izquierda, hasta que se junten en el centro.
    }
drawing-alt-lock-in-letter =
    { $inverted ->
        [yes] El lado de { $length } va de izquierda a derecha. Ponga la masa sobre los dos tercios de la izquierda. Doble el tercio derecho libre sobre el centro y luego el izquierdo, con la masa encima, sobre los dos.
       *[no] El lado de { $length } va de izquierda a derecha. Ponga la grasa sobre los dos tercios de la izquierda. Doble el tercio derecho libre sobre el centro y luego el izquierdo, con la grasa encima, sobre los dos.
    }
drawing-alt-lock-in-book =
    { $inverted ->
        [yes] El lado de { $length } va de izquierda a derecha. Ponga la masa en la mitad central. Doble por encima el extremo izquierdo y luego el derecho, hasta que se junten en el centro.
       *[no] El lado de { $length } va de izquierda a derecha. Ponga la grasa en la mitad central. Doble por encima el extremo izquierdo y luego el derecho, hasta que se junten en el centro.
    }
drawing-alt-closed = Pellizque las uniones. El paquete cerrado: { $closed }.
drawing-marks-both-long = En los dos bordes largos, marque desde la esquina izquierda: { $marks }.
drawing-marks-near = En el borde largo cercano, marque desde la esquina izquierda: { $marks }.
drawing-marks-far = En el borde largo lejano, marque desde la esquina izquierda: { $marks }.
drawing-marks-both-sides = En los dos lados cortos, marque desde la esquina cercana: { $marks }.
drawing-marks-left = En el lado corto izquierdo, marque desde la esquina cercana: { $marks }.
drawing-marks-right = En el lado corto derecho, marque desde la esquina cercana: { $marks }.
drawing-alt-scrap = Recortes: { $percent } de la plancha
drawing-alt-timeline = { $elapsed } en total: { $hands } de trabajo, { $wait } de espera. Según el reloj desde el comienzo:
drawing-alt-timeline-step = { $start } { $title }, { $lasts }.
drawing-alt-day = Día { $day }.
drawing-day = Día { $day }
drawing-alt-social = { $title }, de { $course }.
drawing-in-the-oven = en el horno
drawing-together = todos juntos
drawing-waits = espera
drawing-alt-plan = { $date } de { $from } a { $to }, { $who }: { $what }.
