### Was auf jedem Blatt steht: Zeilen der Schritte, Anmerkungen, Hinweise.

hands = Handarbeit
wait = Ruhezeit
where = Wo
at = Bei
hold = Hält
day = Tag
kit = Gerät
sheet = Ausrollen auf
roll = Richtung
thickness = Dicke
lock-in = Einschlagen
turn = Tour
layers = Fettschichten
plies = Teiglagen
cut = Schneiden
divide = Teilen
part = Vom Teig
oven = Ofen
fan = Umluft
bake = Backzeit
trays = Bleche
core = Kern
cool = Kühlen
mix = Kneter
water-at = Wasser mit
sheeter = Ausrollmaschine
ph = pH
dough-temperature = Teig bei
weight-loss = Verliert
growth = Wächst
day-before = { $time } am Vortag
days-before =
    { $count ->
        [one] { $time }, { $count } Tag vorher
       *[other] { $time }, { $count } Tage vorher
    }
batch =
    { $count ->
        [one] { $number } Ansatz
       *[other] { $number } Ansätze
    }
tins =
    { $count ->
        [one] { $number } Form, { $tin }
       *[other] { $number } Formen, { $tin }
    }
tin-round = { $size } rund
tin-square = { $size }
tin-ring = { $size } Kranz, Loch { $hole }
pieces-range = { $pieces } ({ $range })
the-section = { $name }
at-temperature = bei { $temperature }
hold-up-to = bis zu { $time }
hold-in = bis zu { $time }, { $place }
hold-thaw = { $hold }, dann { $time } auftauen lassen, { $place }
place-basket = Gärkorb
place-bench = Arbeitsfläche
place-cold-room = Kühlraum
place-counter = Theke
place-freezer = Gefrierschrank
place-fridge = Kühlschrank
place-oven = Ofen
place-proofer = Gärschrank
place-rack = Gitter
used-instructor =
    { $count ->
        [one] { $count } Kursleitung
       *[other] { $count } Kursleitungen
    }
used-bench-place =
    { $count ->
        [one] { $count } Arbeitsplatz
       *[other] { $count } Arbeitsplätze
    }
used-mixer =
    { $count ->
        [one] { $count } Knetmaschine
       *[other] { $count } Knetmaschinen
    }
used-oven =
    { $count ->
        [one] { $count } Ofen
       *[other] { $count } Öfen
    }
used-tray-per-oven =
    { $count ->
        [one] { $count } Blech je Ofen
       *[other] { $count } Bleche je Ofen
    }
used-trays =
    { $count ->
        [one] { $count } Blech ({ $place })
       *[other] { $count } Bleche ({ $place })
    }
so-many-days = { $count } Tage
day-of = { $day } von { $days }
lock-in-envelope = im Umschlag
lock-in-letter = wie ein Brief
lock-in-book = wie ein Buch
lock-in-inverted = { $name }, Fett außen
turn-book = doppelte Tour
turn-letter = einfache Tour
turn-half = halbe Tour
turn-meet = { $name }, die Enden treffen sich bei { $at } der Länge
roll-same-way = in derselben Richtung wie vor dem Falten
cut-into = { $pieces } { $shape }, { $size }
divide-part = { $weight } für { $name }
divide-share = { $weight }
divide-pieces =
    { $count ->
        [one] { $count } Stück zu { $weight }
       *[other] { $count } Stück zu je { $weight }
    }
shape-triangle =
    { $count ->
        [one] Dreieck
       *[other] Dreiecke
    }
shape-right-triangle =
    { $count ->
        [one] rechtwinkliges Dreieck
       *[other] rechtwinklige Dreiecke
    }
shape-rectangle =
    { $count ->
        [one] Rechteck
       *[other] Rechtecke
    }
shape-square =
    { $count ->
        [one] Quadrat
       *[other] Quadrate
    }
shape-round =
    { $count ->
        [one] Scheibe
       *[other] Scheiben
    }
shape-strip =
    { $count ->
        [one] Streifen
       *[other] Streifen
    }
trays-in-loads =
    { $loads ->
        [one] { $trays }, in { $loads } Schuss
       *[other] { $trays }, in { $loads } Schüssen
    }
trays-in-rows = { $trays }, in Reihen zu { $rows }
mix-phase = { $speed } { $time }
speed-first = Gang 1
speed-second = Gang 2
speed-third = Gang 3
speed-low = langsam
speed-medium = mittel
speed-high = schnell
weight-loss-to = { $value }, auf { $weight } je Stück
other-also =
    { $count ->
        [one] { $name } (auch in Schritt { $steps })
       *[other] { $name } (auch in den Schritten { $steps })
    }
growth-half = um die Hälfte
growth-double = auf das Doppelte
growth-triple = auf das Dreifache
growth-by = um { $share }
note-yeast = Statt { $weight } { $name }: { $of-one } { $one } oder { $of-two } { $two }.
note-left-over = Bei { $piece } Teigeinlage bleiben von { $pieces } Stück übrig: { $rest }.
nothing = nichts
note-open-flour = Für { $names } ist kein Gewicht angegeben. Darum gibt es keine Bäckerprozente, keine Hydratation und kein Stückgewicht.
note-open-weight = Für { $names } ist kein Gewicht angegeben. Darum gibt es keine Hydratation und kein Stückgewicht.
note-boiling = In { $height } Höhe siedet Wasser bei { $boils }. Ziehen Sie von jeder Temperatur, auf die ein Sirup gekocht wird, { $drop } ab. Eine Eiercreme stockt bei derselben Temperatur wie überall, doch was köchelt, gart langsamer.
note-tin-depth = Die Tiefe einer der beiden Formen ist nicht bekannt; sie gelten als gleich tief. Vergleichen Sie sie, bevor Sie eine füllen.
note-half-pieces = Die Enden der Reihen sind { $halves } halbe Stücke. Paarweise zusammengedrückt, Spitzen gleich gerichtet, ergeben sie { $whole } mehr.
note-ranges = Wo eine Zeile zwei Mengen nennt, zählen die Summen die Mitte.
note-whole-rows = Die letzte Teigplatte besteht aus ganzen Reihen: Sie ergibt { $made } Stück, { $more } mehr als die gewünschten { $asked }. Die Rezeptur gilt für alle.
note-reroll =
    { $pieces ->
        [1] Noch einmal auf { $size } ausgerollt, ergeben die Reste eines mehr. Erst ruhen lassen.
       *[other] Noch einmal auf { $size } ausgerollt, ergeben die Reste { $pieces } mehr. Erst ruhen lassen.
    }
cool-rule = { $what }: von { $hot } auf { $warm } innerhalb von { $first }, auf { $cold } innerhalb von { $all } insgesamt
caution-allergens-unknown = Bei einigen Zutaten sind die Allergene nicht bekannt. Lesen Sie die Packungen und fragen Sie nach, bevor Sie davon jemandem anbieten.
caution-raw-egg = Rohes Ei kann Keime tragen. Kalt halten, nicht kosten, was rohes Ei enthält, und Hände, Schüsseln und Pinsel waschen, die damit in Berührung kamen.
caution-raw-flour = Rohes Mehl ist nicht verzehrfertig. Rohen Teig nicht kosten und die Arbeitsfläche abwischen, auf der er lag.
caution-cooling = Gekochte Sahne und Creme müssen schnell kalt werden und kalt bleiben. In flachen Schalen kühlen, mit dem Thermometer messen und wegwerfen, was seine Zeit überschritten hat.
caution-thawing = Gefrorenes taut zugedeckt im Kühlschrank auf, nie auf der Arbeitsfläche, und wird nach dem Auftauen nicht wieder eingefroren.
caution-core = Messen Sie die Kerntemperatur mit einem sauberen Fühler an der dicksten Stelle.
caution-heat = An Öfen, Blechen und Formen verbrennt man sich noch lange, nachdem sie kalt aussehen. Trockene Tücher nehmen und beim Öffnen der Ofentür zur Seite treten.
caution-blades = Auf einem festen Brett schneiden, die Finger hinter der Klinge, und ein Messer weitergeben, indem man es ablegt.
caution-local-rules = Wo örtliche Lebensmittelvorschriften von diesem Blatt abweichen, gelten die örtlichen; fragen Sie diejenigen, die sie anwenden dürfen.
video-from = ab { $time }
note-fat-firm = Butter zum Tourieren wird geklopft, bis sie sich biegt, ohne zu brechen, bei etwa { $at }. Der Teig soll so fest sein wie sie.
note-fewer-pieces = So viel Teig ergibt auf seiner Platte { $made }, sein Anteil wären { $share }.
note-too-small = So wenig Teig ergibt eine Platte, die selbst für ein einziges so geschnittenes Stück zu klein ist. Machen Sie einen ganzen Ansatz, oder schneiden Sie für eine kleinere Form.
of-whole-batch = { $value } (mit einem ganzen Ansatz)

## Abwandlungen

note-way = Auf andere Art, { $name }: { $changes }.
made-without = Hergestellt ohne { $names }.
made-without-kit = Im selben Raum, mit denselben Geräten und Händen wird zu anderen Zeiten mit dem gearbeitet, was hier fehlt; Spuren davon können enthalten sein. Fragen Sie nach, bevor Sie es jemandem geben, der es nicht essen darf.
way-instead = { $new } statt { $old }
way-beside = { $new } mehr, in { $old }
way-without = ohne { $old }
left-out = { $name } (weggelassen)
amount-of = { $amount } { $name }

## Backen in Abschnitten

bake-then = { $one }, dann { $two }
bake-steam = mit Schwaden
bake-door = Tür einen Spalt offen
bake-turn = Blech drehen
bake-more = { $time } länger, wenn { $looks }
