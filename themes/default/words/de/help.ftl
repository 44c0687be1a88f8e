### Was `--help` zu Befehlen, Optionen und Werten sagt. Der Schlüssel eines Textes besteht aus ihren Namen: `help-BEFEHL`, `help-BEFEHL-OPTION` und
### dahinter `-WERT`; `any` steht für jeden Befehl. Wörter in `Gravis` werden so getippt und bleiben, wie sie sind.

## Überschriften

help-head-usage = Aufruf
help-head-commands = Befehle
help-head-command = Befehl
help-head-arguments = Angaben
help-head-options = Optionen
help-head-values = Mögliche Werte
help-head-values-short = mögliche Werte
help-head-default = Vorgabe
help-head-examples =
    { $count ->
        [one] Beispiel
       *[other] Beispiele
    }
help-head-name = Name
help-head-description = Beschreibung
help-head-version = Version

## Jeder Befehl

help-tourier = Macht aus einem Ordner mit Rezepten für das Backen von Hand, in reinem Text, eine geprüfte Kurs-Website und gedruckte Blätter
help-any-content = Der Inhaltsordner. Mehrmals genannt, werden mehrere Kurse veröffentlicht: jeder in einen Ordner seines Namens unter dem Ausgabeordner
help-any-theme = Der Ordner eines Themes, das über das eingebaute gelegt wird
help-any-quiet = Keinen Fortschritt und keine Schlusszeile zeigen
help-any-color = Wann Meldungen farbig sind
help-any-color-auto = In einem Terminal, wenn nicht NO_COLOR gesetzt ist
help-any-color-always = Immer
help-any-color-never = Nie
help-any-help = Die Hilfe ausgeben: `-h` kurz, `--help` ganz
help-any-version = Die Version ausgeben

## Was mehrere Befehle nehmen

help-any-recipe = Der Dateiname des Rezepts
help-any-class = Der Dateiname des Kursabends
help-any-name = Der Dateiname des Kursabends oder des Rezepts; mehrere Rezepte, `crescents,chocolate-batons`, werden zusammen gemacht, ein gemeinsamer Teig einmal
help-any-as = Die Form der Antwort
help-any-as-text = Für Menschen
help-any-as-json = Für Programme
help-any-as-csv = Für eine Tabellenkalkulation
help-any-as-ics = Eine Kalenderdatei
help-any-as-svg = Ein Schaubild
help-any-units-metric = Metrisch
help-any-units-us = US-Maße
help-any-pieces = So viele Stück: `24`
help-any-piece-weight = Stücke von diesem Gewicht: `60g`; so viele wie geschrieben oder wie `--pieces` sagt
help-any-batches = So viele Male die ganze Menge: `1.5`
help-any-flour = So viel Mehl im Ganzen: `1kg`
help-any-total = So viel im Ganzen: `2kg`
help-any-tin = Für eine andere Form: `23 cm round`
help-any-with = Auf eine der anderen Arten oder auf mehrere: `"oat drink"`, `"without walnuts"`

## `start`

help-start = Einen kleinen Kurs für den Anfang in einen neuen Ordner schreiben
help-start-dir = Der Ordner, in den der Kurs geschrieben wird; ein neuer oder einer, in dem nichts ist

## `publish`

help-publish = Alles prüfen, dann die Website und alle Blätter schreiben; nur was sich geändert hat, wird gemacht
help-publish-to = Der Ausgabeordner; ohne Angabe `output`. Bei mehreren Kursen der Ordner, in dem die ihren stehen
help-publish-among-others = In den Ordner veröffentlichen, den `--to` nennt, obwohl fremde Dateien darin liegen und noch nie dorthin veröffentlicht wurde; sie bleiben, wie sie sind
help-publish-thorough = Jede veröffentlichte Datei ganz lesen, um zu sehen, dass sie heil ist, nicht nur Größe und Zeit
help-publish-shared = Ein Ordner mit fertigen Dateien, den sich Rechner und Kurse teilen: Was darin liegt, wird nicht noch einmal gemacht; was gemacht wird, kommt hinein, wo dort geschrieben werden darf

## `preview`

help-preview = Die Website nur auf diesem Rechner zeigen und neu machen, sobald eine Datei gespeichert wird
help-preview-port = Der Port; ohne Angabe ein freier
help-preview-desk = Am Schreibpult beginnen: die Texte im Browser geschrieben, neben der Seite, die aus ihnen wird
help-preview-to-read = Nur zum Lesen: kein Schreibpult, und nichts wird geschrieben
help-preview-room = Handys im selben lokalen Netz dürfen die Seiten lesen und festhalten, was am Kursabend geschieht, über einen Code zum Scannen; an ADDRESS, wenn dieser Rechner mehrere Adressen hat
help-preview-no-browser = Den Browser nicht öffnen

## `editor`

help-editor = Mit Ihrem Editor sprechen, während Sie schreiben: Fehler, Vervollständigung, was ein Wort ist (Language Server Protocol auf Standardeingabe und -ausgabe)

## `handout`

help-handout = Ein Blatt als PDF ausgeben, oder die des ganzen Kurses oder eines Kursabends als eines
help-handout-recipe = Der Dateiname eines Rezepts; mehrere, `crescents,chocolate-batons`, in einem, ein gemeinsamer Teig einmal; `all` für alle Rezepte des Kurses hinter einem Deckblatt; der Dateiname eines Kursabends für alles dazu: Kursblätter, und Arbeitskarten für jede Gruppe mit ihren eigenen Mengen
help-handout-kind = Die Art des Blattes: ohne Angabe `student`, für einen Kursabend `student` und `bench`
help-handout-kind-student = Zum Mitnehmen
help-handout-kind-bench = Eine Seite, die am Arbeitsplatz steht
help-handout-kind-large-print = Das Kursblatt in 18 pt
help-handout-units = Die Maße, die vorn stehen; ohne Angabe die des Kurses
help-handout-paper = Das Papier; ohne Angabe das des Kurses
help-handout-paper-a4 = A4
help-handout-paper-letter = US-Letter
help-handout-language = Die Sprache, eine von denen, in denen es den Kurs gibt; ohne Angabe die erste
help-handout-level = Was nur einem Teil der Backenden gesagt wird und auf Seiten eingeklappt ist, auch drucken; für einen Kursabend ohne Angabe so, wie es seine Datei sagt
help-handout-level-beginners = Wer es zum ersten Mal macht
help-handout-level-practised = Wer es schon gemacht hat
help-handout-booklet = Zwei Seiten auf jeder Seite des Papiers, zum Falten in der Mitte
help-handout-labels = Etiketten für das Abgewogene, auf Bögen mit Etiketten dieser Größe: `70 x 37 mm`
help-handout-to = Der Ordner, in den geschrieben wird

## `proof`

help-proof = Alles prüfen und nichts schreiben

## `facts`

help-facts = Alles, was über ein Rezept oder mehrere zusammen ausgerechnet ist, als JSON ausgeben
help-facts-recipe = Der Dateiname des Rezepts; mehrere, `crescents,chocolate-batons`, werden zusammen gemacht, ein gemeinsamer Teig einmal
help-facts-schema = Das JSON-Schema dieser Ausgabe zeigen oder das eines Textes, den Sie schreiben
help-facts-schema-facts = Was `facts` ausgibt
help-facts-schema-together = Was es über mehrere Rezepte ausgibt
help-facts-schema-course = course.yaml
help-facts-schema-pantry = pantry.yaml
help-facts-schema-glossary = glossary.yaml
help-facts-schema-class = Ein Kursabend
help-facts-schema-recipe = Der Kopf eines Rezepts
help-facts-schema-technique = Der Kopf einer Technik
help-facts-schema-translation = Der Kopf eines Textes in einer weiteren Sprache

## `scale`

help-scale = Die Formel eines Rezepts oder mehrerer zusammen zeigen, umgerechnet, in beiden Maßsystemen
help-scale-recipe = Der Dateiname des Rezepts; mehrere, `crescents,chocolate-batons`, werden zusammen gemacht, ein gemeinsamer Teig einmal

## `timetable`

help-timetable = Einen Kursabend planen, oder ein Rezept zu Hause rückwärts von der Zeit, zu der es fertig sein soll
help-timetable-ready = Für ein Rezept: wann es fertig sein soll, `2027-03-07 09:00`
help-timetable-group = Mit `--as ics`: der Kalender der Gruppe mit dieser Nummer; ohne Angabe der der Kursleitung

## `today`

help-today = Ein laufender Abend: festhalten, was geschehen ist, und den Rest neu planen
help-today-said = Was geschehen ist: `pairs 1-3: second turn; pair 4 late 10; pair 2: brush skipped`, `all: first turn at 18:50`, `pair 1: bake from 19:40`, `all: nothing yet`, `pair 3 gone`, `oven 2 out`, `oven 2 back`; `take back` nimmt die Zeile davor zurück. Vom Namen eines Schrittes genügt der Anfang. Gruppen, die nicht genannt sind, sind im Plan geblieben
help-today-now = Die Uhrzeit jetzt, `18:55`; ohne Angabe die dieses Rechners
help-today-try = Nur sehen, was daraus würde: nichts wird festgehalten

## `note`

help-note = An der Werkbank etwas zu einem Rezept notieren, für seine nächste Ausgabe; seine Notizen zeigen
help-note-said = Was zu notieren ist; `taken up 2`, wenn die zweite Notiz nun im Rezept steht, `taken up`, wenn alle darin stehen. Ohne Angabe werden die Notizen gezeigt
help-note-on = Der Tag der Notiz, `2027-03-03`; ohne Angabe der heutige dieses Rechners

## `order`

help-order = Einkaufsliste und Abwiegeliste eines Kursabends oder mehrerer Rezepte zusammen

## `changes`

help-changes = Sagen, worin sich zwei Ausgaben des Inhalts unterscheiden, wie man es beim Lesen sähe
help-changes-old = Der Inhaltsordner der alten Ausgabe
help-changes-new = Der Inhaltsordner der neuen Ausgabe
help-changes-units = Die Maße, in denen es gesagt wird; ohne Angabe die der neuen Ausgabe

## `draft`

help-draft = Aus einem vorhandenen Rezept einen Entwurf machen: aus reinem Text von irgendwoher, aus einer gespeicherten Webseite mit Daten von schema.org oder aus diesen Daten allein. Nichts wird aus dem Netz geholt
help-draft-file = Die Datei mit dem Rezept; `-` für das, was getippt oder eingefügt wird
help-draft-to = Die Datei, in die geschrieben wird, statt einer im Inhaltsordner mit dem Namen des Rezepts; `-`, um den Entwurf nur zu zeigen

## `convert`

help-convert = Eine Menge umrechnen und die Dichte dazu nennen
help-convert-amount = Was umgerechnet wird: `2 cups bread flour`, `190 °C`
help-convert-unit = Die gewünschte Einheit: `g`, `oz`, `cup`, `tbsp`, `ml`; für einen Ofen `°C`, `°F`, `fan` oder `no fan`. Ein Ofen mit Umluft, `fan 170 °C`, braucht keine

## `completions`

help-completions = Ausgeben, was eine Shell braucht, um Befehle und Optionen zu vervollständigen
help-completions-shell = Die Shell

## `manual`

help-manual = Die Handbuchseite ausgeben, für `man`

## `help`

help-help = Diese Hilfe ausgeben, oder die zu einem Befehl
help-help-command = Der Befehl
