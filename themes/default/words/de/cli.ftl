### Was das Programm im Terminal und in der Vorschau sagt. { $name } in einer Meldung setzt das Programm ein; Wörter in `Backticks`
### werden so getippt und bleiben, wie sie sind.

## Warum sich ein Rezept in einer Größe nicht machen lässt

size-piece-unknown = es ist nicht bekannt, was ein Stück wiegt
size-no-flour = es ist kein Mehl darin
size-weightless = es wiegt nichts
size-no-tin = es nennt keine Form
size-out-of-bounds = das ist nichts, oder mehr als 10.000 Ansätze
size-not-in-pieces = es wird nicht in Stücken gemacht

## Warum es nichts zu planen gibt

unclear-no-sessions = es sind keine Termine genannt
unclear-first-session = der erste Termin ist keine wirkliche Zeit
unclear-session = ein Termin ist keine wirkliche Zeit
unclear-overlap = zwei Termine überschneiden sich
unclear-no-recipe = ein Rezept fehlt
unclear-ring = Schritte warten im Kreis aufeinander
unclear-own-ring = die eigenen Schritte warten im Kreis aufeinander
unclear-no-time = das ist keine Uhrzeit: sie lässt sich nicht lesen, oder die Uhren werden darüber hinweg vorgestellt

## Was der Rechner nicht tun wollte

store-open-content = der Inhaltsordner { $path } lässt sich nicht öffnen: { $why }
store-open-theme = das Theme { $path } lässt sich nicht öffnen: { $why }
store-open = { $path } lässt sich nicht öffnen: { $why }
store-read = { $path } lässt sich nicht lesen: { $why }
store-write = { $path } lässt sich nicht schreiben: { $why }
store-write-in = in { $path } lässt sich nicht schreiben: { $why }
store-write-to = nach { $path } lässt sich nicht schreiben: { $why }
store-write-beside = neben dem Ausgabeordner, in { $path }, lässt sich nicht schreiben: { $why }
store-lock = { $path } lässt sich nicht sperren: { $why }
store-make = { $path } lässt sich nicht anlegen: { $why }
store-move = { $path } lässt sich nicht verschieben: { $why }
store-copy = { $path } lässt sich nicht kopieren: { $why }
store-clear = { $path } lässt sich nicht wegräumen: { $why }
store-entitle = { $path } lassen sich die Zugriffsrechte nicht geben: { $why }
store-use = { $path } lässt sich nicht verwenden: { $why }
store-publish = nach { $path } lässt sich nicht veröffentlichen: { $why }
store-serve = auf { $path } lässt sich nichts anbieten: { $why }
machine-says = { $reason }
machine-not-there = nicht vorhanden
machine-no-right = Ihnen fehlt das Recht dazu
machine-read-only = nur lesbar
machine-disk-full = die Festplatte ist voll
machine-file-for-folder = eine Datei steht dort, wo ein Ordner sein sollte
machine-folder-for-file = ein Ordner steht dort, wo eine Datei sein sollte

## Vorlagen

template-fault = { $template }:{ $line }: { $message }

## Wohin eine Ausgabe veröffentlicht werden darf

place-of-instructor = ein Ordner mit so einem Namen enthält neben einer Website, was allein der Kursleitung gehört; nehmen Sie einen anderen Namen
place-beside-link = das ist eine Verknüpfung; was neben einer Website steht, muss ein eigener Ordner sein
place-file = an dieser Stelle steht eine Datei
place-root = das ist das oberste Verzeichnis eines Laufwerks; nennen Sie einen eigenen Ordner
place-inputs = der Inhalt und das Theme liegen in diesem Ordner, oder er in ihnen; nehmen Sie einen anderen
place-home = das ist Ihr persönlicher Ordner, oder einer, der ihn enthält; nennen Sie einen eigenen Ordner
place-mount = dort ist ein Laufwerk oder ein Ordner von anderswo eingehängt und kann nicht gegen eine neue Ausgabe getauscht werden; nennen Sie einen Ordner darin
place-strangers = der Ordner enthält Dateien, die nicht veröffentlicht wurden; nehmen Sie einen anderen, oder geben Sie --among-others an, um neben ihnen zu veröffentlichen
place-link = das ist eine Verknüpfung mit einem Ort, den es nicht gibt; legen Sie ihn an, oder nehmen Sie die Verknüpfung weg
place-leads-out = das führt aus einem Ordner, den es nicht gibt, wieder hinaus

## Zwei auf einmal

place-under-way = in diesen Ordner wird gerade schon veröffentlicht; versuchen Sie es wieder, wenn das fertig ist

## Texte von anderswo

text-too-long = der Text hat mehr als 8 MiB
text-not-utf8 = das ist kein Text in UTF-8; öffnen Sie ihn in einem Editor und speichern Sie ihn als UTF-8

## Dateien machen

place-not-ours = im Ausgabeordner steht dort etwas, das nicht zuvor veröffentlicht wurde: Räumen Sie es weg, oder veröffentlichen Sie in einen anderen Ordner
place-twice = an diese Stelle kämen zwei Dateien, oder es ist keine
file-needed = dazu ist { $path } nötig, und das lässt sich nicht lesen

## Dateien, die sich nicht lesen lassen

theme-link = das ist eine Verknüpfung mit einem anderen Ort; legen Sie die Datei selbst dorthin
theme-too-large = das Theme ist zu groß
theme-file-too-large = die Datei ist größer als 16 MiB
theme-not-utf8 = das ist kein Text in UTF-8: Speichern Sie ihn als einfachen Text in UTF-8

## Bilder

picture-none = das ist kein Bild

## Bilder auf Papier

picture-no-size = das Bild hat keine Größe

## Satz

handout-unset = das Blatt ließ sich nicht setzen

## Zeichnungen als Bilder

unpainted = aus der Zeichnung ließ sich kein Bild machen: { $why }
unpainted-tall = sie ist zu hoch
unpainted-large = sie ist zu groß
unpainted-typeface = das Theme hat keine Schrift Asap

## Blätter

picture-unshown = { $name }: { $reason }
handout-no-setting = es gibt keinen Satz, der sich versuchen ließe
handout-unwritten = die Seiten ließen sich nicht schreiben

## Die Vorschau

preview-broke-file = die Vorschau brach ab, während sie diese Datei machte
file-missing = { $path } gibt es nicht

## Optionen

option-unreadable = --{ $option } { $value } lässt sich nicht lesen; schreiben Sie --{ $option } { $example }

## Änderungen

changes-in = in { $folder }:
changes-from-to = von { $old } zu { $new }
changes-new-recipe = { $title } (neues Rezept)
changes-recipe-left-out = { $title } (Rezept entfällt)
changes-new-technique = { $title } (neue Technik)
changes-technique-left-out = { $title } (Technik entfällt)

## Blätter eines Kursabends

class-own-size = ein Kursabend sagt selbst, wie viel jede Gruppe macht; lassen Sie die Größe weg
handout-cannot = die Blätter von `{ $name }` lassen sich nicht machen: { $reason }
handout-no-booklet = ein Heft wird aus Kursblättern gemacht

## Umrechnen

convert-without-fan = { $text } = { $heat } ohne Umluft
convert-into-what = schreiben Sie, worin Sie `{ $text }` haben wollen: g, oz, cup, tbsp, ml
convert-no-unit = `{ $unit }` ist keine Einheit; schreiben Sie eine wie g, oz, cup, tbsp oder ml
convert-unreadable = `{ $text }` lässt sich nicht lesen; schreiben Sie "2 cups bread flour"
convert-unknown = `{ $name }` steht nicht in der Vorratsliste; meinten Sie `{ $near }`?
convert-answer-density = { $text } = { $amount } { $unit } ({ $density } g/ml)
convert-answer = { $text } = { $amount } { $unit }
convert-heat = { $heat } = { $shown }
convert-with-fan = { $text } = { $heat } mit Umluft
convert-from-fan = { $text } mit Umluft = { $heat }
convert-no-scale = `{ $wanted }` ist keine Art, eine Temperatur anzugeben; schreiben Sie °C, °F, fan oder "no fan"

## Entwürfe

draft-cannot = { $file }: { $why }
draft-settle-each = Klären Sie jeden dieser Punkte im Text und nehmen Sie dann seine Zeile heraus.
draft-no-method = der Text hat keine Arbeitsschritte: schreiben Sie sie
draft-degrees = `{ $words }` sagt nicht, welche Grade: schreiben Sie {"{"}190 °C{"}"} oder {"{"}375 °F{"}"}
draft-overnight = `overnight` ist keine Zeit: schreiben Sie `wait: 12 h (8 h to 16 h)` oder was gemeint ist
draft-rise = wie lange es geht, steht nicht da: { $sentence }
draft-times = es steht mehr als eine Zeit da, `{ $time }` steht auf dem Zettel: { $sentence }
draft-work-or-wait = `{ $key }: { $time }` kann ebenso gut `{ $other }` sein: { $sentence }
draft-no-oven = es steht keine Ofentemperatur da; suchen Sie eine und schreiben Sie `bake: TEMPERATURE, { $time }` statt `wait` und `where`: { $sentence }
draft-cook-time = die Backzeit ist `cookTime` der Seite und steht nicht im Schritt: { $sentence }
draft-no-bake-time = es steht keine Backzeit da: { $sentence }
draft-second = hier steht ein zweites `{ $key }: { $value }`: machen Sie einen eigenen Schritt daraus
draft-of-step = { $title }: { $doubt }
draft-lost-all = kein Schritt nennt, was in `{ $section }` ist: alles kommt in `{ $title }`
draft-lost = kein Schritt nennt { $names }: kommt in `{ $title }`
draft-lost-one = „{ $name }“
draft-no-title = der Text hat keinen Titel: geben Sie ihm einen
draft-no-summary = `summary` steht nicht da: sagen Sie in einem Satz, was es ist
draft-left-out = `{ $line }` fehlt in der Formel: { $why }
draft-of-what = es ergibt { $number } wovon? Dafür steht `{ $good }`
draft-makes-unread = `makes` lässt sich aus `{ $told }` nicht lesen: dafür steht `1 batch`; schreiben Sie eine Zahl und ein Wort, etwa `24 rolls`
draft-makes-untold = es steht nicht da, was es ergibt: dafür steht `1 batch`; schreiben Sie etwa `24 rolls`
draft-line-wrong = Zeile { $line }: { $said }
draft-no-weight = `{ $line }` steht ohne Gewicht da, als `{ $text }`: { $why }
draft-turned = `{ $text }` steht als `{ $turned }` da: ist das gemeint?
draft-why = { $why }. { $help }
draft-ask-proof = `tourier proof` sagt, was zu tun ist, wo es so geschrieben steht
draft-besides = neben den Schritten gesagt: { $line }
draft-longer = es sind mehr als { $lines } Zutaten oder { $steps } Schritte: der Rest fehlt
draft-others = die Seite enthält noch { $others } Rezept(e): nur das erste wird übernommen
draft-author = die Seite nennt als Verfasser: { $author }
draft-no-ingredients = darin wird keine Zutatenliste gefunden; schreiben Sie jede Zutat in eine eigene Zeile, über die Zubereitung
draft-not-in-data = es sieht nach JSON aus, enthält aber kein Recipe von schema.org
draft-not-in-page = diese Seite enthält keine Recipe-Daten von schema.org; kopieren Sie den Text des Rezepts in eine Textdatei und machen Sie daraus den Entwurf
draft-there = { $to } ist schon da, und nichts wird überschrieben; nennen Sie mit `--to` eine andere Datei
draft-stands = ein Entwurf steht in { $to }
draft-sure = nichts darin ist zweifelhaft; lesen Sie ihn trotzdem ganz durch
draft-next = was sonst noch zu sagen ist, zeigt:  tourier proof{ $content }

## Fakten

facts-schema = schreiben Sie --schema={ $name } für das Schema eines Textes, oder lassen Sie `{ $name }` weg für das der Fakten

## Blätter auf der Befehlszeile

handout-none-written = es wird kein Blatt geschrieben
cli-error = Fehler: { $message }
handout-waiting = es wird gewartet, bis das Veröffentlichen nach { $folder } fertig ist
handout-no-recipe = es gibt kein Rezept zu drucken
labels-unreadable = --labels { $size } lässt sich nicht lesen; schreiben Sie die Größe eines einzelnen, --labels "70 x 37 mm"
labels-unfit = Etiketten von { $size } sind zum Lesen zu klein oder größer als das Papier

## Ordner und Namen

cli-stop = tourier: { $message }
cli-no-stop = auf ein Anhalten lässt sich nicht achten: { $error }
cli-no-answer = die Antwort lässt sich nicht schreiben: { $error }
content-file = { $folder } ist eine Datei und kein Inhaltsordner; nennen Sie mit `--content FOLDER` den Ordner, der `course.yaml` enthält
content-none = es gibt keinen Inhaltsordner { $folder }; `tourier start { $folder }` schreibt dort einen kleinen Kurs für den Anfang, `--content { $near }` nennt einen anderen Ordner
theme-none = in { $folder } ist kein Theme; `--theme FOLDER` nennt einen Ordner mit den Dateien, die vom eingebauten Theme abweichen
scale-cannot = `{ $name }` lässt sich so nicht umrechnen: { $reason }
way-cannot = `{ $name }` lässt sich so nicht machen: { $reason }
theme-words = { $path }:{ $line } des Themes: { $message }
none-near = hier ist kein { $kind } `{ $name }`; meinten Sie `{ $near }`?
none-at-all = hier ist kein { $kind } `{ $name }`: der Inhaltsordner enthält nichts davon
none-known = hier ist kein { $kind } `{ $name }`; es gibt: { $known }

## Einkauf

order-cannot = für `{ $name }` lässt sich nicht einkaufen: { $reason }

## Die Vorschau im Terminal

preview-no-stop = auf Strg-C (Ctrl-C) lässt sich nicht achten: { $error }
preview-faults = es gibt Fehler
preview-port-in-use = Port { $port } ist belegt; lassen Sie --port weg, um einen freien zu bekommen
preview-no-port = auf Port { $port } lässt sich nichts anbieten: { $error }

## Veröffentlichen

publish-mended = { $file } war seit dem letzten Veröffentlichen geändert oder weggenommen worden: neu gemacht
publish-mended-two = { $file } und { $other } waren seit dem letzten Veröffentlichen geändert oder weggenommen worden: neu gemacht
publish-mended-more = { $file } und { $count } weitere Dateien waren seit dem letzten Veröffentlichen geändert oder weggenommen worden: neu gemacht
publish-kept = eine fremde Datei hatte in der neuen Ausgabe keinen Platz; sie bleibt erhalten als { $path }
publish-recounted = diese Version von tourier rechnet anders als die, mit der zuletzt veröffentlicht wurde: Wo eine Zahl abweicht und Sie ihren Text nicht angerührt haben, liegt es daran
publish-old-stands = { $error }; es bleibt bei der letzten Ausgabe
publish-new-stands = { $error }; die neue Ausgabe gilt, und das nächste Veröffentlichen versucht es noch einmal
publish-cannot-make = Fehler: { $path } lässt sich nicht machen: { $reason }
publish-begins = der Kurs beginnt bei { $folder }/index.html

## Anfangen

start-not-empty = { $folder } ist nicht leer, und dort wird nichts überschrieben; nennen Sie einen neuen Ordner, etwa `tourier start content`
start-stands = ein kleiner Kurs steht in { $folder }
start-ignored = eine .gitignore hier lässt aus, was publish macht
start-see = ansehen mit:  tourier preview{ $content }
start-make = machen mit:   tourier publish{ $content }{ $beside }

## Zeitpläne

plan-none = es gibt keinen Plan: { $standing }
plan-done-no-step = diese haben keinen Schritt `{ $step }`; sie haben { $known }
plan-done-several = `{ $step }` kann mehreres sein; schreiben Sie, was: { $which }
plan-done-no-group = solche Gruppen gibt es an diesem Kursabend nicht
plan-done-no-kit = der Kursabend zählt nicht so viel von `{ $kit }`
plan-now-unreadable = --now { $now } lässt sich nicht lesen; schreiben Sie --now 18:55
plan-ready-missing = bei einem Rezept sagen Sie, wann es fertig sein soll: schreiben Sie --ready "2027-03-07 09:00"
plan-ready-unreadable = --ready { $ready } lässt sich nicht lesen; schreiben Sie --ready "2027-03-07 09:00"
plan-cannot = `{ $name }` lässt sich nicht planen: { $reason }

## Warten auf einen Plan

plan-waiting = es wird geplant; Strg-C (Ctrl-C) hält an, mit dem besten Plan bis dahin
plan-waiting-reasons = kein Plan gefunden; gesucht werden die Gründe und was helfen würde; Strg-C (Ctrl-C) hält an, mit dem, was bis dahin bekannt ist

## Was getippt wurde

typed-wrong = { $said }; { $help }
typed-help = `tourier { $name } --help` sagt, was dazugehört
typed-commands = `tourier --help` führt die Befehle auf
typed-command-near = es gibt keinen Befehl `{ $word }`; meinten Sie `tourier { $near }`?
typed-command = es gibt keinen Befehl `{ $word }`; es gibt: { $names }
option-unreadable-in = { $option } { $value } lässt sich nicht lesen; schreiben Sie { $option } { $example }
typed-option-of-near = `{ $name }` hat keine Option `{ $word }`; meinten Sie `{ $near }`?
typed-option-near = es gibt keine Option `{ $word }`; meinten Sie `{ $near }`?
typed-option-of = `{ $name }` hat keine Option `{ $word }`; { $help }
typed-option = es gibt keine Option `{ $word }`; { $help }
typed-does-not-belong = `{ $word }` gehört nicht hierher; { $help }
typed-takes-no-name = `{ $name }` arbeitet mit dem Inhaltsordner und nimmt keinen Namen; für einen anderen Ordner schreiben Sie `tourier { $name } --content { $word }`
typed-word-too-many = `{ $word }` ist ein Wort zu viel; setzen Sie die Menge in Anführungszeichen: `tourier { $name } "2 cups bread flour" g`
typed-takes-none = `{ $name }` nimmt dort kein `{ $word }`; { $help }
typed-missing = { $what } fehlt
typed-needs-option = `{ $name }` braucht hier { $option }; { $help }
typed-want-folder = einen Ordner, in den geschrieben wird
typed-want-recipe-file = eine Datei mit einem Rezept
typed-want-two-folders = zwei Inhaltsordner
typed-want-amount = eine Menge
typed-want-shell = eine Shell
typed-want-class = den Dateinamen eines Kursabends
typed-want-class-or-recipe = den Dateinamen eines Kursabends oder eines Rezepts
typed-want-recipe-or-class = den Dateinamen eines Rezepts oder eines Kursabends, oder `all`
typed-needs-recipe = `{ $name }` braucht den Dateinamen eines Rezepts: `tourier { $example }`
typed-needs = `{ $name }` braucht { $wanted }: `tourier { $example }`
typed-needs-value = { $option } braucht einen Wert: { $option } { $example }
typed-needs-choice = { $option } braucht eines von diesen: { $choice }
typed-needs-a-value = { $option } braucht einen Wert
typed-none-near = { $option } { $found } ist nicht bekannt; meinten Sie `{ $near }`?
typed-none = { $option } { $found } ist nicht bekannt; schreiben Sie eines von diesen: { $choice }
option-unreadable-as = { $option } { $found } lässt sich nicht lesen; schreiben Sie { $option } { $example }
option-unreadable-plain = { $option } { $found } lässt sich nicht lesen
typed-twice = { $one } steht dort zweimal; einmal genügt
typed-not-together = { $one } und { $other } gehen nicht zusammen; lassen Sie eines davon weg

## Anzahlen, Ergebnisse, die Vorschau im Browser

cli-stopped = angehalten; { $stands }
kind-language = Sprache
kind-recipe = Rezept
kind-class = Kursabend
kind-recipe-or-class = Rezept oder Kursabend
kind-class-or-recipe = Kursabend oder Rezept
proof-sound =
    { $count ->
        [one] keine Fehler in { $count } Rezept
       *[other] keine Fehler in { $count } Rezepten
    }
changes-none = nichts ist anders, was man beim Lesen sähe
changes-of = { $title }
draft-to-settle =
    { $count ->
        [one] eines ist noch zu klären:
       *[other] { $count } Dinge sind noch zu klären:
    }
preview-at = der Kurs ist unter { $address }, bis Sie Strg-C (Ctrl-C) drücken
preview-over = die Vorschau ist zu Ende
preview-waits = Neueres wird nicht gezeigt, bis das behoben ist
publish-stands = nichts ist geschrieben, und es bleibt bei der letzten Ausgabe
publish-unwritten = nichts ist geschrieben; es bleibt bei der letzten Ausgabe
publish-progress = Dateien
publish-idle =
    { $count ->
        [one] { $count } Datei in { $folder }/ ist aktuell; nichts gemacht
       *[other] { $count } Dateien in { $folder }/ sind aktuell; nichts gemacht
    }
publish-apart = was nur Ihnen gehört, ist in { $folder }/: Stellen Sie es nicht ins Netz
publish-of = { $content }:
publish-same-name = { $one } und { $other } heißen beide { $name }, und jeder Kurs braucht einen eigenen Ordner; veröffentlichen Sie sie einzeln mit `--to DIR`, oder geben Sie einem Ordner einen anderen Namen
publish-not-begun = damit wurde nicht begonnen
publish-all = { $count } Kurse sind veröffentlicht
publish-some = { $count } von { $all } Kursen veröffentlicht; nicht veröffentlicht: { $names }
publish-made-nothing = nichts gemacht
publish-made = gemacht: { $kinds }
publish-and-kept =
    { $count ->
        [one] { $made }; { $count } war schon aktuell
       *[other] { $made }; { $count } waren schon aktuell
    }
publish-and-removed = { $made }; { $count } weggenommen
publish-pages =
    { $count ->
        [one] { $count } Seite
       *[other] { $count } Seiten
    }
publish-handouts =
    { $count ->
        [one] { $count } Blatt
       *[other] { $count } Blätter
    }
publish-drawings =
    { $count ->
        [one] { $count } Zeichnung
       *[other] { $count } Zeichnungen
    }
publish-others =
    { $count ->
        [one] { $count } andere Datei
       *[other] { $count } andere Dateien
    }
scale-head = { $title }: { $batch }, { $makes }
scale-doughs = in { $count } gleichen Teigen
scale-total = Summe { $metric } / { $us }
scale-total-hydration = Summe { $metric } / { $us }, Hydratation { $percent } %
scale-total-true-hydration = Summe { $metric } / { $us }, Hydratation mit dem Wasser aus Milch, Eiern und Butter { $percent } %
scale-each-dough = jeder Teig { $metric } / { $us }
scale-in-us = (US) { $us }
preview-broke-edition = die Vorschau brach ab, während sie diese Ausgabe machte
preview-cannot-make = { $name } lässt sich nicht machen: { $reason }
preview-no-file = eine solche Datei gibt es nicht
preview-no-page = eine solche Seite gibt es nicht
preview-unclear = das lässt sich nicht lesen
preview-path = dieser Pfad führt aus der Website hinaus
preview-method = die Vorschau lässt sich nur lesen
preview-host = die Vorschau antwortet nur als 127.0.0.1 oder localhost
preview-long = das ist zu lang
preview-last-good = Nicht veröffentlicht: gezeigt wird die letzte gute Ausgabe
preview-cautions =
    { $count ->
        [one] { $count } Warnung in dieser Ausgabe
       *[other] { $count } Warnungen in dieser Ausgabe
    }
preview-making = Wird gemacht
preview-being-made = Der Kurs wird gerade gemacht.
preview-faults-title = Fehler
preview-nothing-yet = Nicht veröffentlicht: noch gibt es nichts zu zeigen

## Ein laufender Abend

today-file-unreadable = { $file }:{ $line }: `{ $text }` lässt sich nicht lesen; schreiben Sie "pairs 1-3: second turn; pair 4 late 10"
today-file-unheard = { $file } um { $at }: { $why }
today-unreadable = `{ $part }` lässt sich nicht lesen; schreiben Sie "pairs 1-3: second turn; pair 4 late 10"
today-none-to-begin = der Kursabend hat keinen Plan, mit dem er beginnen könnte; `tourier timetable { $name }` sagt, warum
today-group = es gibt keine Gruppe { $number }: `{ $name }` hat { $groups } Gruppen
today-later-kept = etwas Späteres ist schon festgehalten; schreiben Sie eine frühere Zeile in die Tagesdatei selbst
today-no-time = { $time } ist keine wirkliche Zeit
today-no-session = --now { $now } liegt bei keinem Termin; schreiben Sie eine Zeit wie --now 18:55
today-several = --now { $now } kann an mehreren Tagen sein; schreiben Sie, an welchem: --now "{ $day }"
today-no-zone = der Kurs nennt keine `time zone`; schreiben Sie, wie spät es ist: --now "{ $example }"
note-kept =
    { $open ->
        [one] Behalten in { $file }; { $open } Notiz ist noch nicht übernommen
       *[other] Behalten in { $file }; { $open } Notizen sind noch nicht übernommen
    }
note-none = Zu { $recipe } ist nichts notiert
note-line = { $number }. { $on } { $text }
note-line-taken = { $number }. { $on } { $text } (übernommen { $taken })
note-no-number = zu { $recipe } gibt es keine Notiz { $number }; Notizen insgesamt: { $count }
note-taken-before = Notiz { $number } ist schon übernommen
note-unkept = eine Notiz hat bis zu 500 Zeichen; was mehr ist, gehört in den Text von { $recipe } selbst
note-no-day = `{ $said }` ist kein Tag; schreiben Sie `--on 2027-03-03`
today-by-the-clock = es ist { $time }, und kein Termin ist nahe; schreiben Sie, wann: --now "{ $example }"
