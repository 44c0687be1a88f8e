### Pläne für Kursabende und fürs Backen zu Hause, Einkauf, Abwiegen.

crew-baker = Person
crew-pair = Paar
crew-three = Dreiergruppe
crew-four = Vierergruppe
crew-group = Gruppe
crews-baker =
    { $count ->
        [one] { $count } Person
       *[other] { $count } Personen
    }
crews-pair =
    { $count ->
        [one] { $count } Paar
       *[other] { $count } Paare
    }
crews-three =
    { $count ->
        [one] { $count } Dreiergruppe
       *[other] { $count } Dreiergruppen
    }
crews-four =
    { $count ->
        [one] { $count } Vierergruppe
       *[other] { $count } Vierergruppen
    }
crews-group =
    { $count ->
        [one] { $count } Gruppe
       *[other] { $count } Gruppen
    }
who-instructor = Kursleitung
who-helper = Hilfe
who-staff = Kursleitung oder Hilfe
who-home = Sie
who-baker =
    { $count ->
        [one] Person { $numbers }
       *[other] Personen { $numbers }
    }
who-pair =
    { $count ->
        [one] Paar { $numbers }
       *[other] Paare { $numbers }
    }
who-three =
    { $count ->
        [one] Dreiergruppe { $numbers }
       *[other] Dreiergruppen { $numbers }
    }
who-four =
    { $count ->
        [one] Vierergruppe { $numbers }
       *[other] Vierergruppen { $numbers }
    }
who-group =
    { $count ->
        [one] Gruppe { $numbers }
       *[other] Gruppen { $numbers }
    }
who-member = { $who }, Person { $number }
hands-home = Ihre Hände
plan-done = Fertig
plan-of = { $recipe }: { $what }
plan-into = { $title }: hineinstellen: { $place }
plan-out = { $title }: herausnehmen: { $place }
plan-arrival = Ankommen
plan-talk = Vortrag
plan-break = Pause
plan-tasting = Verkosten
plan-washing = Abwasch
plan-oven-on =
    { $count ->
        [one] Ofen { $ovens } einschalten: { $heat }
       *[other] Öfen { $ovens } einschalten: { $heat }
    }
plan-oven-to =
    { $count ->
        [one] Ofen { $ovens } auf { $heat }
       *[other] Öfen { $ovens } auf { $heat }
    }
plan-watch = Zusehen: { $what }
plan-oven =
    { $count ->
        [one] Ofen { $oven } mit { $count } Blech
       *[other] Ofen { $oven } mit { $count } Blechen
    }
plan-heat = { $heat }: { $ovens }
kit-instructor = Kursleitung
kit-bench-place = Arbeitsplatz
kit-mixer = Knetmaschine
kit-oven = Ofen
kit-tray-per-oven = Blech je Ofen
kit-trays = Blech ({ $place })
standing-best = bewiesen: kein Plan ist besser
standing-nearest = bewiesen: kein Plan ist näher an den Zeiten des Rezepts
standing-nearer = ein guter Plan; ein anderer könnte den Zeiten des Rezepts um bis zu { $minutes } min näher kommen
standing-sound = ein guter Plan: { $rests }{ $grid }, { $moments } verschiedene Anfangszeiten (kein Plan hat weniger als { $fewest }), { $waiting } Warten (kein Plan hat weniger als { $least }); kein Plan endet vor { $end }
standing-rests = jede Ruhezeit wie üblich
standing-rests-short = Ruhezeiten zusammen um { $minutes } min kürzer als üblich
standing-off-grid = {", "}minutengenau, damit es passt
standing-never = bewiesen: kein Plan passt
standing-unknown = nicht entschieden: kein Plan wurde gefunden, und dass es keinen gibt, ist nicht bewiesen
reason-chain = die Schritte folgen länger aufeinander, als die Kursabende dauern, gleich mit welchem Gerät: Abend { $session } ist { $minutes } min zu kurz
reason-apart = die Schritte, ihre Ruhezeiten und die Vorführungen gehen nicht in diese Kursabende, gleich mit welchem Gerät: Eine Ruhezeit, die sich nicht halten lässt, reicht nicht von einem Abend zum nächsten
reason-kit = zu wenig von diesem Gerät für { $steps }: { $kit }, davon gibt es { $have }; mit { $need } passt es, mit weniger nicht
reason-step = „{ $title }“
reason-together = kein Gerät allein ist der Grund: mehrere zusammen sind knapp
reason-over = was noch zu tun ist, endet nicht mit dem Kursabend: Abend { $session } ist { $minutes } min zu kurz; unten steht der Plan, der länger dauert
reason-hours = wach von { $from } bis { $to } bleibt bis { $ready } keine Zeit, in der jeder Schritt und jedes Umstellen weder zu früh noch zu spät für seine Ruhezeit kommt
reason-waits = die Schritte folgen einander nicht innerhalb ihrer Ruhezeiten, gleich zu welchen Stunden
remedy-fits = { $change } passt es
remedy-fits-by = { $change } passt es und endet um { $end }
remedy-more =
    { $count ->
        [one] mit { $count } mehr von diesem Gerät ({ $kit })
       *[other] mit { $count } mehr von diesem Gerät ({ $kit })
    }
remedy-session = mit einem Kursabend mehr, { $date } { $from } bis { $to },
remedy-bakers =
    { $count ->
        [one] mit höchstens { $count } Person
       *[other] mit höchstens { $count } Personen
    }
remedy-without = ohne { $recipe }
remedy-end = { $time } am { $day }
remedy-together-2 = zu zweit
remedy-together-3 = zu dritt
remedy-together-4 = zu viert
remedy-together-5 = zu fünft
remedy-no-demonstration = ohne den eigenen Ansatz der Kursleitung
remedy-no-talk = ohne die Vorträge
remedy-no-break = ohne die Pausen
remedy-no-tasting = ohne das Verkosten
remedy-no-slack = ohne den Puffer am Ende
remedy-hold = mit einem Halt über Nacht (`hold: up to 24 h`) bei „{ $title }“ ({ $recipe })
remedy-longer = wenn Abend { $session } { $minutes } min länger dauert,
remedy-stop = wenn für { $who } beim jetzigen Stand Schluss ist,
remedy-ready = fertig um { $time } am { $day }
remedy-up = beim Aufstehen um { $time }
remedy-stay-up = beim Aufbleiben bis { $time }
evening-head = { $title }: { $time } am { $day }
evening-changed = was sich ändert
evening-unchanged = nichts ändert sich
evening-shift = { $who }: { $what } um { $to }, nicht { $from } ({ $why })
evening-why-after = es folgt auf „{ $title }“
evening-why-busy = vorher nicht frei: { $what }
evening-why-hands = vorher keine Hand frei
evening-why-oven = vorher kein Ofen frei
evening-why-now = bis jetzt nicht begonnen
evening-why-together = zusammen mit anderen
evening-next = die nächsten 30 Minuten
evening-nothing = nichts
evening-later = später
plan-note-shortened = „{ $title }“ hat { $lasts } statt { $usual }, im erlaubten Bereich: Sonst stünde es anderswo länger
plan-note-other-days = an den Tagen, die das Rezept nennt, passt kein Plan: Dieser hält jede Ruhezeit an anderen Tagen ein
plan-note-shared = { $title } wird einmal gemacht: { $parts }. Für diese { $taken } mischen Sie { $mixed }; der Rest geht unterwegs verloren.
plan-note-too-long = { $who }: { $title } dauert schon länger als die längste Zeit
plan-note-crowded = was schon begonnen ist, wird mehr Bleche brauchen, als da sind: Suchen Sie einen Platz dafür
plan-note-usual = wenn Abend { $session } { $minutes } min länger dauert, ist jede Ruhezeit so lang wie üblich
plan-note-oven-in-break = um { $time }, in einer Pause, muss etwas aus dem Ofen: Jemand bleibt dabei
plan-note-uncounted = der Kurs zählt dieses Gerät nicht, { $kit }: der Plan nimmt an, dass genug da ist
plan-note-unused = nichts, was an diesem Abend gemacht wird, braucht dieses Gerät: { $kit }
plan-note-stopped = die Suche wurde angehalten: dies ist das Beste bis dahin
plan-by-short = Ruhezeiten kürzer als üblich
plan-by-moments = verschiedene Minuten, in denen etwas beginnt
plan-by-waiting = Warten über die Zeiten der Rezepte hinaus
plan-by-away = Abstand von den Zeiten des Rezepts, alle Ruhezeiten zusammen
plan-by-end = vom ersten Öffnen bis zum Ende
plan-by-lead = vom ersten Schritt bis es fertig ist
plan-measured = { $what }: { $time }
plan-why = warum: { $reason }
plan-help = was helfen würde: { $remedy }
plan-note = Anmerkung: { $note }
plan-all-watch = { $what } (alle sehen zu)
plan-closes = am Ende des Kursabends, { $date } { $time }
plan-left = { $what } ({ $count })
plan-summary = { $who }: { $what }
plan-about = { $title } ({ $oven })
as-needed = nach Bedarf
order-head = { $title }: { $bakers } Personen, { $pieces } Stück, { $spare } % Reserve, auch beim Abwiegen
order-head-home =
    { $pieces ->
        [0] { $title }
       *[other] { $title }: { $pieces } Stück
    }
order-to-buy = einkaufen
order-count = { $count } ({ $weight })
order-left = { $weight } übrig
order-total = Summe { $sum }
order-a-student = { $sum } pro Person
order-a-piece = { $sum } pro Stück
order-unpriced = ohne Preis: { $names }
order-weigh = abwiegen, { $sets } × { $title } ({ $each })
order-weigh-home = abwiegen: { $title }
order-weigh-table =
    { $sets ->
        [one] Abwiegen: { $title } je { $each } ({ $sets } Satz)
       *[other] Abwiegen: { $title } je { $each } ({ $sets } Sätze)
    }
each-group = Gruppe
each-baker = Person
each-demonstration = Vorführung
order-ingredient = Zutat
order-need = Bedarf (g)
order-shelf = vorrätig (g)
order-pack = Packung (g)
order-packs = Packungen
order-left-over = übrig (g)
order-cost = Kosten
order-currency = Währung
order-sum = Summe
order-step = Schritt
order-recipe = Rezept
order-grams = Gramm
order-in-words = in Worten
