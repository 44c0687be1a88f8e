### Die Zeichnungen, und die Zeichnungen vorgelesen.

drawing-lock-in = Einschlagen
drawing-turn = Tour
drawing-cut = Schnittplan
drawing-timeline = Zeitablauf
drawing-by = mal
drawing-numbered = { $number }: { $text }
drawing-sentence = { $text }.
drawing-before = Die Teigplatte
drawing-folding = Falten, von der Seite
drawing-after = Der Block
drawing-spine = Rücken
drawing-open-end = offenes Ende
drawing-edge-fold = Falz
drawing-edge-folds =
    { $count ->
        [1] Falz
       *[other] { $number } Falze
    }
drawing-edge-ends =
    { $count ->
        [1] lose Kante
       *[other] { $number } lose Kanten
    }
drawing-fat-layers = Fettschichten
drawing-plies = Teiglagen
drawing-growth = { $before } → { $after }
drawing-next-quarter-turn = Dann eine Vierteldrehung und in Pfeilrichtung ausrollen: Die Seite von { $side } wird länger.
drawing-next-same-way = Dann ohne Vierteldrehung in Pfeilrichtung ausrollen: Die Seite von { $side } wird länger.
drawing-next-any-way = Dann ausrollen, in welche Richtung Sie wollen.
drawing-roll-turned = Zuerst eine Vierteldrehung: die offenen Enden links und rechts.
drawing-lay-in = Fett auflegen
drawing-lay-in-dough = Teig auflegen
drawing-close = Schließen, von der Seite
drawing-closed = Geschlossen
drawing-dough = Teig
drawing-fat = Fett
drawing-dough-thick = Teig: { $thickness }
drawing-dough-block = Teig: { $size }, { $thickness }
drawing-fat-thick = Fett: { $thickness }
drawing-fat-block = Fett: { $size }, { $thickness }
drawing-seam-note = Gepunktet: Naht, zudrücken.
drawing-envelope-order = Die Ecken in dieser Reihenfolge überschlagen. Sie treffen sich in der Mitte.
drawing-cut-pieces =
    { $count ->
        [one] { $count } Stück, { $piece }, { $weight }
       *[other] { $count } Stück, { $piece }, je { $weight }
    }
drawing-cut-all =
    { $count ->
        [one] { $count } Stück aus allen Platten
       *[other] { $count } Stück aus allen Platten
    }
drawing-cut-scrap = Gepunktet: Verschnitt, { $percent }
drawing-far-edge = ferne Kante
drawing-near-edge = nahe Kante, { $length }
drawing-marked-edges = Marken: { $edges }.
drawing-edge-both-long = beide langen Kanten, von der linken Ecke
drawing-edge-near = nahe Kante, von der linken Ecke
drawing-edge-far = ferne Kante, von der linken Ecke
drawing-edge-both-sides = beide kurzen Seiten, von der nahen Ecke
drawing-edge-left = linke Seite, von der nahen Ecke
drawing-edge-right = rechte Seite, von der nahen Ecke
drawing-along = längs der Platte
drawing-across = quer dazu
drawing-rising = schräg, von vorn links nach hinten rechts
drawing-falling = schräg, von hinten links nach vorn rechts
drawing-cut-one = Schnitt { $first }: { $way }.
drawing-cuts = Schnitte { $first }–{ $last }: { $way }.
drawing-cut-out = Die Stücke wie gezeichnet ausschneiden.
drawing-hands-on = Handarbeit
drawing-waiting = Ruhezeit
drawing-may-hold = hält
drawing-sums = { $elapsed } insgesamt: { $hands } Handarbeit, { $wait } Ruhezeit
drawing-lasts-hands = { $hands } Handarbeit
drawing-lasts-wait = { $wait } Ruhezeit
drawing-lasts-both = { $hands } Handarbeit, { $wait } Ruhezeit
drawing-roll = Ausrollen
drawing-tray = Das Blech
drawing-shape-crescent = Hörnchen
drawing-shape-baton = Stange
drawing-shape-spiral = Schnecke
drawing-shape-twist = Kordel
drawing-shape-knot = Knoten
drawing-shape-plait-of-3 = Zopf aus drei Strängen
drawing-shape-plait-of-4 = Zopf aus vier Strängen
drawing-shape-pinwheel = Windrad
drawing-shape-envelope = Kuvert
drawing-shape-pocket = Plunderecke
drawing-shape-turnover = Tasche
drawing-shape-folded-square = Gefaltetes Quadrat
drawing-shape-ring = Kranz
drawing-shape-round = Rund
drawing-shape-oval = Oval
drawing-shape-tin = Kastenbrot
drawing-shape-filled-ball = Gefüllte Kugel
drawing-from-above = Von oben
drawing-from-the-side = Von der Seite
drawing-bench-ends = hier endet der Tisch, { $bench }
drawing-roll-from = Von { $size }, { $thickness } dick
drawing-roll-to = Auf { $size }, { $thickness } dick
drawing-growth-title = Wie die Fettschichten wachsen
drawing-growth-note = Im Schnitt, nicht maßstäblich. Wo die Linien ineinanderlaufen, sind es zu viele zum Zeichnen.
drawing-oven-loads = Schüsse
drawing-tray-pieces = { $pieces } auf einem Blech von { $tray }
drawing-tray-apart = Von Mitte zu Mitte: { $along } längs, { $across } quer
drawing-tray-in-pairs = Paarweise, lange Seite an langer Seite; die Marken sind die Mitten der Paare
drawing-tray-gap = Zur Gare braucht es { $along } Abstand. Damit passen { $fits } auf das Blech
drawing-tray-gaps = Zur Gare braucht es { $along } Abstand längs und { $across } quer. Damit passen { $fits } auf das Blech
drawing-tray-gap-only = Es braucht { $along } Abstand. Damit passen { $fits } auf das Blech
drawing-tray-part = { $part }: { $said }
drawing-tray-alike = { $trays } Bleche davon
drawing-tray-loads = { $trays } Bleche, in { $loads } Schüssen
drawing-tray-one-load = { $trays } Bleche, in einem Schuss
drawing-does-notch-and-stretch = Die Mitte der Grundseite { $notch } tief einschneiden. Das Stück auf { $stretched } ziehen, die Spitze über der Mitte der Grundseite.
drawing-does-notch = Die Mitte der Grundseite { $notch } tief einschneiden.
drawing-does-stretch = Das Stück auf { $stretched } ziehen, die Spitze über der Mitte der Grundseite.
drawing-does-stroke-tip = Die Spitze ausstreichen, bis sie zur Mitte der Grundseite zeigt.
drawing-does-roll-triangle = Die Grundseite etwas spreizen und zur Spitze hin aufrollen. Nicht drücken.
drawing-does-tip-beneath = Auf die Spitze setzen.
drawing-does-bend-ends = Beide Enden zu sich her biegen.
drawing-does-join-ends = Beide Enden herumbiegen, bis sie sich treffen, und zusammendrücken.
drawing-does-roll-in = Die erste Stange von der kurzen Seite her einrollen. Die zweite dort auflegen, wo die Drehung aufkommt, und weiterrollen.
drawing-does-seen-from-end = Vom Ende gesehen.
drawing-does-seam-beneath = Auf die Naht setzen, die gepunktete Linie.
drawing-does-roll-strand = Einen Strang von { $strand } Länge und { $roll } Dicke rollen.
drawing-does-wind = Flach und locker um ein Ende wickeln. Das andere Ende darunterstecken.
drawing-does-turn-ends = Ein Ende von sich weg drehen, das andere zu sich her.
drawing-does-set-twist = Gedreht absetzen und beide Enden auf das Blech drücken.
drawing-does-knot = Eine Schlinge legen und ein Ende hindurchziehen.
drawing-does-join-ring = Ein Ende über das andere legen, um die eigene Dicke, und zusammenrollen.
drawing-does-lay-strands = Die Stränge nebeneinanderlegen, jeder { $strand } lang und { $roll } dick. Am fernen Ende zusammendrücken.
drawing-does-cross-three = Den rechten Strang über den mittleren legen, dann den linken über den neuen mittleren. Abwechselnd weiter.
drawing-does-cross-four = Den rechten Strang über seinen Nachbarn und unter den nächsten legen. Den linken über seinen Nachbarn. Abwechselnd weiter.
drawing-does-tuck-ends = Die Enden zusammendrücken und darunterstecken.
drawing-does-cut-corners = Von jeder Ecke zwei Drittel des Wegs zur Mitte einschneiden. Jede zweite Spitze zur Mitte klappen, in dieser Reihenfolge.
drawing-does-press-middle = Die Mitte fest andrücken.
drawing-does-corners-in = Die Mitte füllen. Die Ecken in dieser Reihenfolge darauf klappen, bis sie sich treffen.
drawing-does-two-corners-in = Die Mitte füllen. Eine Ecke darüberklappen und die gegenüberliegende über die erste.
drawing-does-fold-over = Eine Hälfte füllen, gut innerhalb der Kanten, und die andere darüberklappen.
drawing-does-fold-corner = Neben dem Falz füllen, dann Ecke auf Ecke falten.
drawing-does-fold-round = Eine Hälfte füllen, gut innerhalb des Rands, und die andere darüberklappen.
drawing-does-press-edges = Die gepunkteten Kanten zudrücken.
drawing-does-gather = Die Ränder ringsum zur Mitte holen und zusammendrücken.
drawing-does-gather-filling = Die Mitte füllen. Die Ränder ringsum darüber hochholen und zukneifen.
drawing-does-turn-over = Umdrehen und unter der Hand rundwirken: { $roll } breit.
drawing-does-fold-thirds = Das ferne Drittel zur Mitte klappen, dann das nahe Drittel darüber.
drawing-does-roll-oval = Mit der Naht unten von der Mitte zu beiden Enden länger rollen.
drawing-does-roll-for-tin = Den Teig so lang wie die Form aufrollen, { $base }.
drawing-does-set-in-tin = Mit der Naht nach unten einlegen. Backreif ist er, wenn er den Rand erreicht.
drawing-does-own = { "" }
drawing-goes-round = Es geht { $wraps }-mal herum, und die Rolle ist in der Mitte { $roll } dick.
drawing-alt-bench = Die Platte ist länger als der Tisch: { $bench }.
drawing-alt-piece = Das Stück, { $piece }.
drawing-alt-tin = Die Form, { $piece }.
drawing-alt-growth = Nach dem Einschlagen, Fettschichten: { $count }.
drawing-alt-grows = In { $parts } gefaltet: { $count }.
drawing-alt-sheet = Die Platte, { $size }, die lange Seite zu Ihnen.
drawing-alt-turn-sheet = Die Platte, { $size }: Ihre Seite von { $length } liegt von links nach rechts.
drawing-alt-book = Das linke und das rechte Ende einschlagen, bis sie sich in der Mitte treffen: Jeder Falz liegt { $part } von seinem Ende. Dann wie ein Buch schließen, die linke Hälfte über die rechte: { $count } Lagen, ein Block von { $folded }, der Rücken links von Ihnen.
drawing-alt-book-off-middle = Das linke Ende bei { $first } von links und das rechte bei { $third } einschlagen, bis sie sich bei { $meet } treffen. Dann bei { $second } wie ein Buch schließen, die linke Hälfte über die rechte: { $count } Lagen, ein Block von { $folded }, der Rücken links von Ihnen.
drawing-alt-letter = Das rechte Drittel über die Mitte klappen, der Falz { $part } vom Ende. Dann das linke Drittel über beide, wie einen Brief: { $count } Lagen, ein Block von { $folded }, der Rücken links von Ihnen.
drawing-alt-half = Die linke Hälfte über die rechte klappen, der Falz { $part } vom Ende: { $count } Lagen, ein Block von { $folded }, der Rücken links von Ihnen.
drawing-alt-parts = { $count } Teile von je { $part } anzeichnen. Den linken Teil über den nächsten klappen und so weiter bis zum rechten Ende: { $count } Lagen, ein Block von { $folded }, der Rücken links von Ihnen.
drawing-alt-layers = Fettschichten: { $before } vorher, { $after } nachher.
drawing-alt-plies = Teiglagen: { $before } vorher, { $after } nachher.
drawing-alt-edges = Gegenüber dem Rücken, rechts von Ihnen: { $opposite }. Vorn und hinten sind die offenen Enden, an denen man die Schichten sieht.
drawing-alt-edges-book = Ein Falz links und ein Falz rechts von Ihnen; die Naht läuft dazwischen über die Oberseite. Vorn und hinten sind die offenen Enden.
drawing-alt-edges-envelope = Er ist an allen vier Seiten geschlossen; vier Nähte treffen sich in der Mitte der Oberseite.
drawing-alt-next-turned = Dann eine Vierteldrehung, sodass die offenen Enden links und rechts liegen, und zu ihnen hin ausrollen: Die Seite von { $side } wird länger.
drawing-alt-next-along = Dann ohne Vierteldrehung von Seite zu Seite ausrollen, in derselben Richtung wie vorher. Die Seite von { $side } wird länger.
drawing-alt-next-any = Dann ausrollen, in welche Richtung Sie wollen.
drawing-alt-dough =
    { $inverted ->
        [yes] Eine Fettplatte, { $size }, { $thickness } dick; ein Teigblock, { $block }, { $block-thickness } dick.
       *[no] Eine Teigplatte, { $size }, { $thickness } dick; ein Fettblock, { $block }, { $block-thickness } dick.
    }
drawing-alt-lock-in-envelope =
    { $inverted ->
        [yes] Den Teig so auf das Fett legen, dass seine Ecken auf die Mitten der Fettseiten zeigen. Die vier Ecken des Fetts darüberklappen, vorn links, hinten rechts, vorn rechts, hinten links, bis sie sich in der Mitte treffen.
       *[no] Das Fett so auf den Teig legen, dass seine Ecken auf die Mitten der Teigseiten zeigen. Die vier Ecken des Teigs darüberklappen, vorn links, hinten rechts, vorn rechts, hinten links, bis sie sich in der Mitte treffen.
    }
drawing-alt-lock-in-letter =
    { $inverted ->
        [yes] Die Seite von { $length } liegt von links nach rechts. Den Teig auf die linken zwei Drittel legen. Das freie rechte Drittel über die Mitte klappen, dann das linke Drittel mit dem Teig darauf über beide.
       *[no] Die Seite von { $length } liegt von links nach rechts. Das Fett auf die linken zwei Drittel legen. Das freie rechte Drittel über die Mitte klappen, dann das linke Drittel mit dem Fett darauf über beide.
    }
drawing-alt-lock-in-book =
    { $inverted ->
        [yes] Die Seite von { $length } liegt von links nach rechts. Den Teig auf die mittlere Hälfte legen. Das linke und dann das rechte Ende darüberklappen, bis sie sich in der Mitte treffen.
       *[no] Die Seite von { $length } liegt von links nach rechts. Das Fett auf die mittlere Hälfte legen. Das linke und dann das rechte Ende darüberklappen, bis sie sich in der Mitte treffen.
    }
drawing-alt-closed = Die Nähte zukneifen. Das geschlossene Paket: { $closed }.
drawing-marks-both-long = Entlang beider langen Kanten von der linken Ecke anzeichnen: { $marks }.
drawing-marks-near = Entlang der nahen langen Kante von der linken Ecke anzeichnen: { $marks }.
drawing-marks-far = Entlang der fernen langen Kante von der linken Ecke anzeichnen: { $marks }.
drawing-marks-both-sides = Entlang beider kurzen Seiten von der nahen Ecke anzeichnen: { $marks }.
drawing-marks-left = Entlang der linken kurzen Seite von der nahen Ecke anzeichnen: { $marks }.
drawing-marks-right = Entlang der rechten kurzen Seite von der nahen Ecke anzeichnen: { $marks }.
drawing-alt-scrap = Verschnitt: { $percent } der Platte
drawing-alt-timeline = { $elapsed } insgesamt: { $hands } Handarbeit, { $wait } Ruhezeit. Nach der Uhr vom Beginn an:
drawing-alt-timeline-step = { $start } { $title }, { $lasts }.
drawing-alt-day = Tag { $day }.
drawing-day = Tag { $day }
drawing-alt-social = { $title }, aus { $course }.
drawing-in-the-oven = im Ofen
drawing-together = gemeinsam
drawing-waits = ruht
drawing-alt-plan = { $date } { $from } bis { $to }, { $who }: { $what }.
