### Was an einem Text nicht stimmt und was richtig wäre. { $name } in einer Meldung setzt das Programm ein; Wörter in `Backticks`
### schreibt so, wer den Text verfasst, und sie bleiben, wie sie sind. Eine Meldung hat keinen Punkt am Ende, eine Hilfe hat einen.

## Wie ein Fehler im Terminal steht

fault-place = { $file }, Zeile { $line }
fault-error = Fehler:
fault-caution = Warnung:
fault-help = Was zu tun ist:
fault-sentence = { $message }.
fault-errors =
    { $count ->
        [one] { $count } Fehler
       *[other] { $count } Fehler
    }
fault-cautions =
    { $count ->
        [one] { $count } Warnung
       *[other] { $count } Warnungen
    }
fault-none = keine Fehler
fault-all = { $parts }

## Fehler, die hingenommen werden

not-acceptable = `{ $name }` lässt sich nicht hinnehmen
names-acceptable = Hinnehmen lassen sich

## Mengen, die einander widersprechen

amounts-disagree-more = die Menge in Klammern ist { $second }, { $percent } % mehr als die erste
amounts-disagree-less = die Menge in Klammern ist { $second }, { $percent } % weniger als die erste
amounts-disagree-help = Die erste zählt: { $first }. Ändern Sie eine der beiden, oder lassen Sie die zweite weg.
yield-off = die Rezeptur ergibt nach Abzug ihres Verlusts nur { $weight }
yield-off-help = Schreiben Sie `makes: { $weight }`, oder vergrößern Sie die Rezeptur.

## Kursabende

class-makes-nothing = an diesem Kursabend wird nichts gemacht
class-makes-nothing-help = Schreiben Sie unter `makes`, welches Rezept jedes Paar macht.
class-never-held = dieser Kursabend findet nie statt
class-never-held-help = Schreiben Sie unter `sessions`, wann, etwa `- 2027-03-02 18:00 to 21:00`.
missing-file = es gibt keine Datei `{ $file }`
names-recipes = Rezepte hier
class-pieces = `{ $name }` wird nach Gewicht gemacht, nicht in Stücken
class-pieces-help = Schreiben Sie `batches: 1` statt `pieces`.
session-overlap = dieser Termin beginnt, bevor der vorige zu Ende ist
session-overlap-help = Geben Sie den Terminen eigene Zeiten.
long-session = dieser Termin dauert { $hours } Stunden
long-session-help = Schreiben Sie, um wie viel Uhr er endet, etwa `18:00 to 21:00`; einer, der nach Mitternacht endet, endet am Tag darauf.
step-without-hands = bei `{ $step }` gibt es keine Handarbeit
step-without-hands-help = Geben Sie ihm `hands: 5 min`, oder zeigen Sie einen anderen Schritt.
late-nobody = `late` nennt eine Gruppe, die es in diesem Kurs nicht gibt: Er hat { $groups }
late-nobody-help = Zählen Sie die Gruppen ab 1.
late-never = wer so spät kommt, versäumt jeden Termin ganz
late-never-help = Schreiben Sie, wie lange nach Beginn sie kommen, etwa `20 min`.
break-outside = diese Pause liegt in keinem der Termine
break-outside-help = Schreiben Sie `{ $at }`, `{ $between }`, oder `{ $lasts } min` für die Mitte jedes Termins.
besides-too-long = Ankommen, Vorträge, Abwasch und Puffer brauchen { $minutes } min, nicht weniger, als dieser Termin dauert
besides-too-long-help = Kürzen Sie sie, oder verlängern Sie den Termin.
unknown-class-step = kein Rezept dieses Kursabends hat einen Schritt `{ $step }`
unknown-class-step-help = Ein Schritt heißt wie seine Überschrift, in Kleinbuchstaben und mit Bindestrichen.
did-you-mean = Meinten Sie `{ $near }`?
class-kit-short = ein Schritt braucht von diesem Gerät { $count }, und es gibt { $have }: { $name }
class-kit-short-help = Ändern Sie das Ticket oder das Gerät: So könnte kein Plan passen.
class-kit-none = die Rezepte brauchen dieses Gerät, und die Geräteliste nennt es nicht: { $name }
class-kit-none-help = Tragen Sie `{ $name }: …` unter `kit` ein, damit der Plan es aufteilen kann.
class-kit-no-place = ein Schritt ruht an diesem Ort, und dort hat kein Blech Platz: { $place }
class-kit-no-place-help = Schreiben Sie, wie viele Bleche dort Platz haben, oder lassen Sie die Zeile weg.
class-kit-no-oven = in den Rezepten wird gebacken, und hiervon ist nichts da: { $name }
class-kit-no-oven-help = Tragen Sie `oven: 2, tray per oven: 4` unter `kit` ein.
class-kit-oven-unlisted = in den Rezepten wird gebacken, und die Geräteliste nennt keinen Ofen
class-kit-instructor = Kursleitung: der Kursabend braucht { $least } und hat { $have }
class-kit-instructor-help = Schreiben Sie `instructor: { $least }`, oder zeigen Sie nichts.
class-kit-unknown = kein Rezept braucht dieses Gerät, und kein Schritt ruht dort: { $name }
class-kit-unknown-help = Nennen Sie es auf den Tickets, die es brauchen: `kit: 1 mixer`.

## Schneiden

cut-no-sheet = es ist keine Teigplatte da, die sich schneiden ließe
cut-no-sheet-help = Geben Sie diesem Schritt oder einem davor ein `sheet: 54 x 48 cm`.
cut-too-large = nicht ein einziges Stück hat auf der Teigplatte Platz
cut-too-large-help = Machen Sie die Stücke kleiner oder die Teigplatte größer.
cut-too-many = das wären mehr als { $most } Stück
cut-too-many-help = Sehen Sie sich die Einheiten des Stücks und der Teigplatte an.
cut-count = so geschnitten werden es { $made } Stück, und `makes` nennt { $count } { $word }
cut-count-help = Ändern Sie die Teigplatte, das Stück oder `makes`, sodass sie übereinstimmen.
cut-count-parts = alle Teile zusammen ergeben { $made } Stück, und `makes` nennt { $count } { $word }

## Teilen

unknown-part = kein Schritt teilt einen Teil `{ $part }` ab
unknown-part-help = Nennen Sie ihn dort, wo der Teig geteilt wird: `divide: half for crescents, the rest for batons`.
divided-off-help = Geben Sie einem Teil `the rest`, oder ändern Sie die anderen.
divided-too-much = die Teile verlangen { $over } % mehr, als der Teig von { $weight } hergibt
divided-no-rest = vom Teig von { $weight } bleibt für den Rest nichts übrig
divided-too-little = { $left } % des Teigs von { $weight } gehen nirgendwohin

## Kneter und Tisch

mixer-too-small = hier kommen { $dough } hinein; der Kneter fasst { $most }
mixer-too-small-help = Kneten Sie zwei Teige, oder machen Sie die Rezeptur kleiner.
bench-too-short = der Tisch misst { $bench }
bench-too-short-help = Teilen Sie den Teig in zwei, oder rollen Sie ihn kürzer und breiter aus.

## Tourieren

block-too-big-envelope = ein Block von { $block } ist für einen Umschlag aus dieser Platte um { $short } zu groß: Seine Seite darf 0,7 der Plattenseite messen
block-too-big-letter = ein Block von { $block } ist für zwei Drittel dieser Platte um { $short } zu groß
block-too-big-book = ein Block von { $block } ist für die mittlere Hälfte dieser Platte um { $short } zu groß
block-too-big-help = Machen Sie den Block kleiner oder die Platte größer, mit 5 mm Zugabe zum Verschließen.
fat-unlike-dough = das Fett liegt { $fat } dick und der Teig { $dough }: Sie werden sich nicht zusammen ausrollen lassen
fat-unlike-dough-help = Klopfen Sie das Fett breiter oder dünner aus, oder rollen Sie den Teig so aus, bis beide etwa gleich dick sind.
block-no-margin = der Block lässt keinen Rand, um ihn einzuschließen
block-no-margin-help = Lassen Sie ringsum mindestens 5 mm Teig frei.
sheet-of-nothing = bei diesem Schritt liegt kein Teig auf dem Tisch
sheet-of-nothing-help = Schreiben Sie in ein Ticket davor, was hineinkommt: `uses: dough`.
sheet-too-big = der Teig liegt hier nur { $lies } dick: Die Platte ist für ihn zu groß
sheet-may-tear = der Teig liegt hier nur { $lies } dick: Er kann reißen
sheet-too-thick = der Teig liegt hier { $lies } dick
sheet-thickness-help = Für { $usual } hätte die Platte { $share } % dieser Fläche; oder ändern Sie die Rezeptur.
fat-layer-too-thin = jede der { $layers } Fettschichten ist vor dieser Tour nur noch { $thickness } mm dick
fat-layer-too-thin-help = Unter 0,01 mm laufen die Schichten ineinander. Rollen Sie eine kleinere Platte aus, oder lassen Sie eine Tour weg.
part-too-short = in { $parts } gefaltet wäre jeder Teil um { $short } zu kurz
part-too-short-crossed = Die erste Zahl ist die Seite, die gefaltet wird: Schreiben Sie die längere zuerst.
part-too-short-help = Rollen Sie die Platte länger aus, oder falten Sie sie in weniger Teile.

## Fett und Schichten

fat-share-puff = das Ziehfett macht { $percent } % des Mehls eines Blätterteigs aus
fat-share-yeast = das Ziehfett macht { $percent } % eines Hefeteigs aus
fat-share-help = Üblich sind { $least } bis { $most } %.
seams-not-turned = der Block wird in derselben Richtung ausgerollt wie vor dem Falten
seams-not-turned-help = Üblich ist eine Vierteldrehung, damit der Teig in die andere Richtung gedehnt wird. Nehmen Sie diese Zeile heraus, oder nehmen Sie den Fehler hin.
sheet-gets-narrower = die Platte wird hier schmaler: Aus einer Seite von { $from } würde { $to }
sheet-gets-narrower-help = Teig lässt sich nicht zusammenschieben. Die erste Zahl ist die Seite, die gedehnt wird; nach dem Falten ist es die Seite am Rücken. Schreiben Sie eine breitere Platte, oder falten Sie die davor schmaler.

## Verweise

bad-link = der Verweis auf `{ $link }` führt nirgendwohin
bad-link-help = Verweisen Sie auf eine Datei hier (`../techniques/letter-turn.md`) oder auf eine Adresse, die mit https:, http: oder mailto: beginnt.

## Das Aussehen des Kurses

logo-holds-pictures = das Logo enthält Bilder
logo-holds-program = das Logo enthält ein Programm
logo-holds-page = das Logo enthält Teile einer Seite
logo-holds-words = das Logo enthält gesetzte Wörter
logo-holds-entities = das Logo enthält Entities
pale-accent = auf Weiß hat diese Farbe einen Kontrast von { $ratio }:1; das Mindeste ist { $least }:1
pale-accent-help = Nehmen Sie eine dunklere: Ein Kopierer druckt sie grau.
no-logo = es gibt keine Zeichnung `{ $logo }`
no-logo-help = Legen Sie eine SVG-Datei unter content/media ab: `logo: media/house.svg`.
unknown-law = es gibt keine Allergenliste `{ $law }`
unknown-law-help = Bekannt sind { $known }: `allergen lists: eu`.
logo-unreadable = das Logo lässt sich nicht als Zeichnung lesen
bad-logo-help = Speichern Sie es als einfaches SVG, die Wörter in Formen umgewandelt.
no-words = in der Sprache `{ $language }` gibt es keine Wörter
no-words-help = Schreiben Sie `en`, oder legen Sie eine Übersetzung der Dateien in `words/en/` in ein eigenes Theme, in einem Ordner, der nach der Sprache heißt, und nennen Sie dieses Theme mit --theme.

## Was hineinkommt

unused-help-allergen = Fügen Sie `uses: { $name }` zum Ticket des Schritts hinzu, in dem es hineinkommt.
unused-help = Fügen Sie `uses: { $name }` zum Ticket des Schritts hinzu, in dem es hineinkommt. Kommt es nirgends hinein, nehmen Sie die Zeile heraus.
unused-section = kein Schritt verwendet etwas aus dem Abschnitt `{ $name }`
unused-ingredient = kein Schritt verwendet diese Zutat: { $name }
place-misspelt = `{ $name }` ist fast der Name eines bekannten Ortes und gilt als ein Ort für sich
unknown-use = `{ $name }` ist weder ein Abschnitt noch eine Zutat dieses Rezepts
names-in-recipe = Dieses Rezept hat

## Namen

taken-by-windows = Windows hält den Namen `{ $name }` für ein Gerät frei
taken-all = `tourier handout all` druckt den ganzen Kurs, nie dieses Rezept
taken-by-recipe = auch ein Rezept heißt `{ $name }`: Befehle halten den Kursabend dafür
taken-name-help = Benennen Sie die Datei um, etwa in `{ $better }`, und ebenso, was sie nennt.
one-page-for-two = diese Datei und `{ $file }` würden eine einzige Seite
one-page-for-two-help = Benennen Sie eine der Dateien um: Keine zwei dürfen sich nur in der Großschreibung unterscheiden.
bare-name = `{ $word }` gilt in allen Rezepten hier als { $meant }
bare-name-help = Schreiben Sie in `course.yaml`, was es in diesem Kurs bedeutet:
    { $entry }
same-word = `{ $word }` wird zweimal erklärt
same-word-help = Behalten Sie eine der beiden Erklärungen.
names-files = Dateien dort

## Öfen

fan-not-cooler = mit Umluft stellt man den Ofen kühler ein als ohne, und hier ist es nicht so
fan-not-cooler-help = Etwa 20 °C weniger bäckt gleich. Weggelassen, wird es so ausgerechnet.

## Kühlen, rohes Ei. Hier geht es um die Sicherheit

cooling-missing = das ist eine Eiercreme oder eine Creme oder Sahne mit Ei, und kein späterer Schritt sagt, wie sie gekühlt wird
cooling-missing-help = Fügen Sie `cool: custard` zu dem Schritt hinzu, in dem sie abkühlt: von 57 °C auf 21 °C innerhalb von 2 h, und auf 5 °C innerhalb von 6 h insgesamt. Örtliche Vorschriften gehen vor.
cooling-slow-warm = das kühlt womöglich länger als 2 h außerhalb des Kühlschranks ab
cooling-slow-all = das kühlt womöglich länger als 6 h insgesamt ab
cooling-slow-help = Von 57 °C auf 21 °C innerhalb von 2 h, und auf 5 °C innerhalb von 6 h insgesamt: Verkürzen Sie die längste Ruhezeit. Örtliche Vorschriften gehen vor.
held-warm = was mit Eiercreme, Creme oder Sahne gefüllt ist, steht hier womöglich außerhalb des Kühlschranks
held-warm-help = Schreiben Sie `hold: up to 24 h in the fridge`, oder nehmen Sie den Halt heraus: Es wird bei 5 °C oder kälter aufbewahrt. Örtliche Vorschriften gehen vor.
day-too-early = dies ist vom Tag { $day }, wartet aber auf „{ $step }“ von einem späteren Tag
day-too-early-help = Legen Sie `{ $step }` auf einen früheren Tag, oder schreiben Sie in `after`, worauf dies wirklich folgt.
night-without-hold = nichts sagt, dass dies bis Tag { $day } stehen darf: mindestens { $time }
night-without-hold-help = Geben Sie ihm eine Ruhezeit oder einen Halt, der lang genug ist: `hold: up to 24 h in the fridge`.
thawed-warm = Gefrorenes taut hier im Warmen auf
thawed-warm-help = Lassen Sie es im Kühlschrank auftauen, bei 5 °C oder kälter: `thaw 9 h in the fridge`. Örtliche Vorschriften gehen vor.
raw-egg-eaten = diese Zutat wird roh gegessen: { $name }; kein späterer Schritt bäckt oder kocht sie
raw-egg-eaten-help = Nehmen Sie `pasteurised egg`, oder garen Sie es: `core: 71 °C` im Ticket. Örtliche Vorschriften gehen vor.
core-too-low = mit rohem Ei darin muss es heißer werden als hier angegeben
core-too-low-help = Rohes Ei, das nicht sofort gegessen wird, wird auf mindestens 68 °C erhitzt. Örtliche Vorschriften gehen vor.

## Bilder

missing-picture-help = Legen Sie das Bild als `media/{ $picture }` ab.
missing-picture = im Ordner media gibt es kein Bild `{ $picture }`

## Was Stücke wiegen

weight-open = diese Zutat wird eingemischt und hat kein Gewicht: { $title }
weight-open-help = Schreiben Sie, wie viel es ungefähr braucht, `300 g { $title }`, oder dass es nur aufgetragen wird: `{ $title }, for dusting`. Bis dahin bleiben Bäckerprozente, Hydratation und das Stückgewicht, die davon abhängen, weg.
piece-weight-unknown = was eines davon wiegt, lässt sich nicht ausrechnen, darum sagt es kein Blatt
piece-weight-unknown-help = Die Schritte bis dorthin, wo die Stücke entstehen, müssen sagen, was hineinkommt: `uses: dough`.

## Geschweifte Klammern

unknown-brace = `{"{"}{ $name }{"}"}` bedeutet hier nichts
unknown-brace-help = { $suggested } Für einfache geschweifte Klammern schreiben Sie `\{"{"}{ $name }\{"}"}`.
brace-temperature-help = Schreiben Sie die Temperatur mit ihrem Zeichen: `{"{"}{ $digits } °{ $scale }{"}"}`.
brace-number-help = Schreiben Sie eine Temperatur `{"{"}190 °C{"}"}`, eine Größe `{"{"}20 x 20 cm{"}"}` oder eine Länge `{"{"}4 mm{"}"}`.

## Allergene und Wasser. Hier geht es um die Sicherheit

allergens-unknown = die Allergene von `{ $name }` sind nicht bekannt
allergens-unknown-help = Lesen Sie die Packung, und schreiben Sie in `pantry.yaml`, was sie aufführt:
    { $entry }
named-beside = `{ $name }` wird in dieser Zeile genannt: die Allergene davon zählen
named-beside-help = Geben Sie ihm eine eigene Zeile, mit Gewicht oder als `{ $name }, as needed`; kommt es nicht hinein, lassen Sie den Namen in dieser Zeile weg.
water-too-cold = im Raum dieses Kurses müsste das Wasser kälter sein als Eis
water-too-cold-help = Kühlen Sie das Mehl, kneten Sie kürzer, oder lassen Sie einen wärmeren Teig zu.
water-unknown = das Wasser in `{ $name }` ist nicht bekannt, darum lässt sich die wahre Hydratation nicht ausrechnen
water-unknown-help = Geben Sie ihm ein `like:` in `pantry.yaml`, oder lassen Sie `true hydration` weg.

## Entwürfe

to-settle = das ist noch zu klären: { $line }
to-settle-help = Klären Sie es im Text, dann nehmen Sie diese Zeile heraus.

## Formen

unknown-shape = keine Form heißt `{ $name }`
unknown-shape-help = Geben Sie ihr in einer Technik unter `shapes` eine Bildfolge `frames`.
form-triangle = einem Dreieck
form-right-triangle = einem rechtwinkligen Dreieck
form-rectangle = einem Rechteck
form-square = einem Quadrat
form-round = einer Scheibe
form-strip = einem Streifen
form-lump = einem Teigstück
shape-misfit = aus { $form } lässt sich das nicht formen: { $shaping }
shape-misfit-help = Ändern Sie den Schnitt davor oder die Form: Sonst lässt sich nichts zeichnen.

## Schritte

step-ring = diese Schritte warten aufeinander: { $steps }
step-ring-help = Nehmen Sie einen Namen aus einem `after:` heraus, damit es einen ersten Schritt gibt.
unknown-video-help = Fügen Sie im Kopf unter `watch:` eine Zeile `- { $name }: https://…` hinzu.
unknown-video = der Kopf nennt kein Video `{ $name }`
makes-missing = es ist nicht gesagt, was dieses Rezept ergibt
makes-missing-help = Fügen Sie `makes: 22 crescents` hinzu, oder für einen Grundteig sein Gewicht, `makes: 1100 g`.
no-formula = dieses Rezept hat keine Rezeptur
no-formula-help = Fügen Sie `formula:` hinzu, mit Abschnitten und Zeilen wie `- 500 g bread flour`.
no-steps = dieses Rezept hat keine Schritte
no-steps-help = Ein Schritt ist eine Überschrift mit einem `~~~ticket` gleich darunter.
preferment-not-above = `{ $name }` ist kein Vorteig, der vor diesem genannt wird
preferment-not-above-help = Nennen Sie ihn zuerst: `preferment: { $first }, { $second } from { $first }`.
names-sections = Abschnitte hier
unknown-section = die Rezeptur hat keinen Abschnitt `{ $name }`

## Bleche

tray-too-full = { $on_one } Stück von je { $piece } haben auf einem Blech von { $tray } mit Abstand dazwischen keinen Platz: { $fits } haben ihn
tray-too-full-help = Schreiben Sie `per tray: { $most }`, oder formen Sie kleinere Stücke. Stücke, die sich berühren, bräunen an den Seiten nicht.

## Versehen: Temperaturen

impossible-oven = kein Ofen bäckt bei { $heat }
unlikely-oven-hot = { $heat } ist heißer, als Öfen der Backstube werden
both-units = { $metric } ({ $us })
look-at-degrees = Sehen Sie sich die Zahl und die Einheit dahinter an, °C oder °F.
unlikely-oven-cool = { $heat } trocknet einen Teig und bäckt ihn nicht
unlikely-core = einen Kern von { $heat } hat nichts Gebackenes
unlikely-core-help = Brote sind innen bei 88 bis 99 °C gar, Eiercremes bei 76 bis 85 °C, und kein Ei ist unter 71 °C sicher. Örtliche Vorschriften gehen vor.
impossible-wait-heat = bei { $heat } ruht nichts
yeast-dies = bei { $heat } stirbt die Hefe ab
butter-runs-out = bei { $heat } läuft die Butter aus den Schichten
butter-runs-out-help = Bleiben Sie bei 26 °C, und unter 28 °C.
butter-oils-out = bei { $heat } ölt die Butter aus dem Teig aus
butter-oils-out-help = Bleiben Sie unter 32 °C.
impossible-dough-heat = kein Teig wird auf { $heat } geknetet
unlikely-dough-heat = ein Teig von { $heat } liegt außerhalb dessen, was man in der Backstube knetet

## Versehen: Anteile am Mehl

unlikely-share = das sind { $percent } % des Mehls
unlikely-share-help = Sehen Sie sich die Zahl und ihre Einheit an: Kein Teig der Backstube enthält so viel davon.
unlikely-water = alles Wasser zusammen macht { $percent } % des Mehls aus, und das gibt keinen Hefeteig
unlikely-water-help = Sehen Sie sich die Zahl beim Mehl und die beim Wasser an.

## Versehen: Zeiten

bake-without-time = Backen dauert eine Weile
bake-without-time-help = Schreiben Sie es so: `190 °C, 22 min`.
unlikely-bake-time = { $time } ist bei dieser Hitze eine ungewöhnliche Backzeit
impossible-wait = niemand wartet länger als ein Jahr
unlikely-wait-cold = { $time } in der Kälte ist länger, als Teige stehen
unlikely-wait-warm = { $time } außerhalb des Kühlschranks ist länger, als Teige stehen
impossible-hands = das gibt Händen länger als einen Tag zu tun
unlikely-hands = { $time } Handarbeit ist ein langer Tag für einen Schritt
unlikely-time-help = Sehen Sie sich die Zahl und die Einheit dahinter an, s, min, h oder days.

## What steps are to reach

goal-ph = pH { $value }
goal-percent = { $percent } %
goal-impossible = { $value } erreicht nichts
goal-unlikely = { $value } liegt außerhalb dessen, was das Handwerk hier kennt
goal-unlikely-help = Prüfen Sie die Zahl. Teige haben einen pH von 3 bis 8 und 5 bis 40 °C, wachsen um 10 bis 400 % und verlieren im Ofen 1 bis 45 %.
growth-without-wait = in einem Schritt ohne Wartezeit wächst nichts
loss-without-bake = in einem Schritt ohne Backen und Warten verliert nichts an Gewicht
goal-out-of-place-help = Schreiben Sie `{ $key }` in den Schritt, in dem es geschieht.
goals-at-odds = der Kopf nennt dafür { $value }, das liegt außerhalb
goals-at-odds-help = Schreiben Sie dasselbe in `{ $key }` im Kopf.
unlikely-mixing = { $time } ist eine ungewöhnliche Zeit, um Teig zu kneten
mixing-beyond-step = der Kneter läuft { $time }, der Schritt dauert { $own }
mixing-beyond-step-help = Schreiben Sie ebenso viele Minuten in `hands`, oder lassen Sie das weg: dann gilt die Zeit des Kneters.

## Other kit

way-of-step-twice = dieser Schritt steht zweimal da: { $way }
way-of-step-twice-help = Geben Sie jedem weiteren Zettel eines Schritts einen eigenen Namen.
sheeter-without-sheet = in diesem Schritt wird nichts ausgerollt
sheeter-without-sheet-help = Schreiben Sie `sheeter: yes` in einen Schritt mit `sheet`.
friction-unsaid = nichts sagt, wie sehr sich der Teig erwärmt: { $way }
friction-unsaid-help = Schreiben Sie es in diesen Zettel, etwa `friction: 2 °C`. Hände erwärmen den Teig weniger als ein Kneter, das Wasser ist also wärmer.

## Was gemeint war

more-faults = diese Datei hat noch { $count } weitere Fehler
more-faults-help = Beheben Sie zuerst die anderen: Dann werden diese gezeigt.
names-none = { $they }: noch nichts.
names-known = { $they }: { $names }.
names-more = { $they }: { $names } und { $more } weitere.

## Zeilen mit Mengen

link-no-recipe = dieser Verweis führt nicht zu einem Rezept
link-no-recipe-help = Verweisen Sie auf eine Datei neben dieser: `900 g [layered dough](layered-dough.md)`.
amount-not-whole = die Menge lässt sich nicht bis zum Ende lesen
amount-not-whole-help = Schreiben Sie eine Menge, eine Einheit und eine Zutat, etwa `250 g butter, cold`, `1 lb 4 oz butter` oder `2 large eggs`; für zwei Zutaten schreiben Sie zwei Zeilen.
no-amount = hier lässt sich keine Menge lesen
no-amount-help = Setzen Sie eine vor den Namen, wie in `250 g butter, cold`; ist keine gemeint, schreiben Sie `{ $name }, as needed`.
heaped-spoon = wie viel auf einem gehäuften Löffel ist, ist nicht bekannt
heaped-spoon-help = Streichen Sie ihn ab, und schreiben Sie, wie viele gestrichene Löffel es sind: `2 tbsp cocoa`.
unknown-vessel = wie viel dieses Gefäß fasst, ist nicht bekannt
unknown-vessel-help = Füllen Sie es mit Wasser, und schreiben Sie, wie viel das ist: `250 ml buttermilk`.
old-measure = wie viel dieses alte Maß ist, ist nicht bekannt: Es war zu anderen Zeiten und an anderen Orten ein anderes
old-measure-help = Schreiben Sie das Gewicht in Gramm: `250 g Butter`.

## Köpfe, Überschriften, Tickets

head-begin-help = Beginnen Sie mit einer Zeile `---`, Zeilen wie `title: Crescents` und einer Zeile `---`.
head-file-empty = diese Datei ist leer
head-does-not-begin = der Kopf beginnt nicht: Die erste Zeile einer Datei ist `---`
head-has-no-end = der Kopf hat kein Ende
head-has-no-end-help = Setzen Sie hinter seine letzte Zeile, vor den Text, eine Zeile `---`, drei Bindestriche.
bad-heading = die Überschrift eines Schritts beginnt mit `##` und einem Leerzeichen
bad-heading-help = Schreiben Sie `## { $words }`.
ticket-fence = ein Ticket beginnt mit der Zeile `~~~ticket`
ticket-fence-help = Schreiben Sie `~~~ticket` vor seine erste Zeile und `~~~` hinter seine letzte.
ticket-no-end = dieses Ticket hat kein Ende
ticket-no-end-help = Setzen Sie hinter seine letzte Zeile eine Zeile `~~~`.
stray-ticket = dieses Ticket steht unter keiner Überschrift
stray-ticket-help = Ein Ticket steht gleich unter der Überschrift seines Schritts, etwa `## Mix`, und nur eines steht dort.

## Dateien von Kursabenden

example-changeover = `5 min`, oder `{"{"} mixer: 10 min, oven: 5 min {"}"}`
example-late = `{"{"} pair 3: 20 min {"}"}`
example-talk = `15 min`, oder `15 min before first-turn`
example-break = `15 min at 19:30`, `15 min between 19:15 and 20:00` oder `15 min`
example-pace = `1.5`, oder `{"{"} first-turn: 1.5 {"}"}`: vom Viertel bis zum Vierfachen der Zeit im Rezept
example-makes = eine Liste aus `recipe: crescents`, `each: pair`, `pieces: 12`
makes-no-list = `makes` ist eine Liste von Rezepten
makes-no-list-help = Beginnen Sie jedes mit `- recipe: crescents`.
example-each = pair (oder baker oder demonstration)
makes-both = `pieces` und `batches` sagen beide, wie viel gemacht wird
makes-both-help = Schreiben Sie eines von beiden.
kit-twice = `{ $name }` steht hier zweimal
kit-twice-help = Schreiben Sie einmal, wie viele es gibt.
kit-no-number = `{ $name }` verlangt hier eine ganze Zahl
kit-no-number-help = Schreiben Sie `{ $name }: 2`.

## course.yaml

news-no-day = hier wird ein Tag erwartet und was seitdem neu ist
news-no-day-help = Schreiben Sie `- 2027-02-15: The buns rest overnight now.`

## Schlüssel und Werte

no-map = hier werden Zeilen `key: value` erwartet
no-map-help = Schreiben Sie in jede Zeile ein `key: value`.
no-list = `{ $key }` ist eine Liste
no-list-help = Beginnen Sie jede ihrer Zeilen mit `- `: `{ $example }`.
not-filled-in = `{ $key }` von `{ $name }` ist noch nicht ausgefüllt
not-filled-in-help = Schreiben Sie hinter `{ $key }:`, was die Packung oder Ihre Waage sagt.
not-one-value = `{ $key }` ist ein einzelner Wert, keine Liste
not-one-value-help = Schreiben Sie ihn in eine Zeile: `{ $key }: …`.
missing-key = `{ $key }` fehlt
missing-key-help = Fügen Sie eine Zeile hinzu wie `{ $key }: { $example }`.
no-words-list = hier wird eine Liste von Wörtern erwartet
no-words-list-help = Enthalten die Wörter `: `, setzen Sie sie in "doppelte Anführungszeichen".
unknown-key = `{ $key }` ist kein Schlüssel, der hierher gehört
unknown-key-help = Hier bekannt: { $keys }.
unreadable-value = `{ $value }` lässt sich nicht als Wert von `{ $key }` lesen
unreadable-value-help = Schreiben Sie es so: `{ $example }`.

## glossary.yaml

example-title = Hörnchen
example-meaning = eine Pause, in der sich der Teig entspannt

## Der Kurs selbst

missing-course = es gibt keine Datei `course.yaml`
missing-course-help = Legen Sie eine an, mindestens mit `title: …` und `summary: …`.

## pantry.yaml

pantry-amount = das beginnt mit einer Menge, und so beginnt kein Name einer Zutat
pantry-amount-help = Nennen Sie hier nur die Zutat, und schreiben Sie die Menge ins Rezept: `1 lb 4 oz butter`.
pack-not-said = was die Packung aufführt, ist hier nicht gesagt
pack-not-said-help = Schreiben Sie jedes Allergen, das die Packung aufführt, und daneben nichts anderes.

## Bilder in Texten

bad-picture = `{ $picture }` kann hier kein Bild sein
bad-picture-help = Nennen Sie eine Datei im Ordner media, die auf .jpg oder .png endet, mit einfachen Buchstaben, Ziffern und Bindestrichen: `![what it shows](../media/roll-up.jpg)`.
picture-without-words = es ist nicht gesagt, was das Bild `{ $picture }` zeigt
picture-without-words-help = Sagen Sie es in wenigen Worten, für alle, die es nicht sehen können: im Fließtext `![both hands roll it away](../media/roll-up.jpg)`, in einem Ticket `picture: roll-up.jpg, both hands roll it away`.

## Fließtext

until-brace = in `until` passen sich nur Temperaturen, Längen und Größen den Einheiten an
until-brace-help = Schreiben Sie `{"{"}5 °C{"}"}` so, und die Namen von Zutaten ohne geschweifte Klammern.
too-deep = hier sind Listen zu tief verschachtelt
too-deep-help = Nehmen Sie Überschriften oder weniger Ebenen.

## Hinweise zur Vorsicht

caution-mark = mit `{ $mark }` lässt sich ein Zitat hier nicht kennzeichnen
caution-mark-help = Beginnen Sie einen Hinweis zur Vorsicht mit dem Wort selbst: `> Caution: The tray is hot.` Ein Zitat, das keiner ist, braucht kein Zeichen.
caution-for-some = eine Warnung steht in einer Zeile für einige, oder eine solche Zeile in einer Warnung
caution-for-some-help = Eine Warnung gilt allen und wird nie eingeklappt: jede sei ein Zitat für sich.

## Lebendige Werte

open-brace = diese geschweifte Klammer ist nicht geschlossen
open-brace-help = Schließen Sie sie: `{"{"}butter{"}"}`. Für eine einfache geschweifte Klammer schreiben Sie `\{"{"}`.
plain-amount = { $words } ist hier einfacher Text und ändert sich nicht mit den Einheiten
plain-amount-help = Schreiben Sie {"{"}{ $words }{"}"}.

## Rezepte

example-recipe-summary = Schlichte Hörnchen, drei Touren, dunkel gebacken.
example-tin = 23 x 13 x 7 cm` oder `9 in round`, eine Form; zwei davon nennt man in `makes: 2 x 9 in round
tin-twice = `makes` nennt eine andere Form
tin-twice-help = Nehmen Sie `tin` heraus: Was `makes` nennt, ist die Form.
bad-makes = `{ $makes }` ist nicht, was ein Ansatz ergibt
bad-makes-help = Schreiben Sie eine ganze Zahl und ein Wort, `22 crescents`; Formen von einer Größe, `2 x 9 in round`; oder für einen Grundteig sein Gewicht, `1150 g`.
section-without-lines = der Abschnitt `{ $section }` hat keine Zeilen
section-without-lines-help = Seine Zeilen stehen darunter, jede mit `- ` davor, etwa `- 500 g bread flour`.
too-many-lines = eine Rezeptur hat höchstens { $most } Zeilen
too-many-lines-help = Machen Sie zwei Rezepte daraus: Eines kann eine Zutat des anderen sein.
too-many-sizes = eine Seite bietet { $most } Größen, mit der geschriebenen; weggelassen: { $sizes }
too-many-sizes-help = Nennen Sie die, nach denen am meisten gefragt wird; die anderen gibt es mit `tourier handout --pieces { $size }`.
note-open = diese Notiz zu { $recipe } ist noch nicht übernommen
note-open-help = Übernehmen Sie sie ins Rezept, und sagen Sie es: `tourier note { $recipe } "taken up { $number }"`. Nur Sie sehen sie.
note-of-nothing = es gibt kein Rezept `{ $name }`, zu dem diese Notizen gehören
note-of-nothing-help = Benennen Sie den Text nach seinem Rezept, wie in `recipes/crescents.bench.txt`.
note-without-day = diese Zeile wird nicht als Notiz gelesen: sie beginnt nicht mit ihrem Tag
note-without-day-help = Schreiben Sie `2027-03-03 baked 2 min longer`; oder beginnen Sie mit `#`, was nur für Sie ist.
line-run-on = diese Zeile wird als Teil der vorigen gelesen
line-run-on-help = Beginnen Sie sie mit `- `: `- { $line }`.
line-not-one = diese Zeile lässt sich nicht als eine Zeile mit Menge lesen
line-not-one-help = Setzen Sie die ganze Zeile in "doppelte Anführungszeichen": Ein Doppelpunkt mit einem Leerzeichen dahinter bedeutet hier etwas anderes.
video-without-address = hier wird die Adresse eines Videos erwartet
video-without-address-help = Schreiben Sie `- roll-up: https://…`.
video-start = `{ $said }` hinter der Adresse eines Videos ist nicht zu lesen
video-start-help = Schreiben Sie, wo es beginnen soll, wie seine Uhr es zeigt: `https://… from 8:25`, oder `from 1:02:05`.
accept-without-reason = ein Fehler wird mit einer Begründung hingenommen
accept-without-reason-help = Schreiben Sie `{ $name }: "the reason"`.
too-many-headings = ein Rezept hat höchstens { $most } Überschriften
too-many-turns = ein Teig hat höchstens { $most } Touren
too-many-turns-help = Mit drei bis sechs sind die Schichten dünn genug; bei mehr sind es wieder Mehl und Fett.
same-heading = ein anderer Schritt hat dieselbe Überschrift
same-heading-help = Unterscheiden Sie sie: `Second turn`, `Third turn`.
names-steps = Die Schritte hier
unknown-step = in diesem Rezept gibt es keinen Schritt `{ $step }`

## Eigene Formen

example-shape = crescent, notch 1 cm, stretch 1/4, curved (oder baton, spiral, twist, knot, plait of 3, pinwheel, envelope, pocket, turnover, folded square, ring, round, oval, tin, filled ball oder der Name einer Form in einer Technik)
shape-without-frames = eine Form hat ein `piece` und zwei bis sechs `frames`
shape-without-frames-help = Geben Sie die Größe des Stücks an, das Sie zeichnen, und für jede Stufe, was getan wird, und ihre Punkte in cm, etwa `dough: 0 0, 12 0, 12 8, 0 8`.
shape-drawn-and-pictures = einige Stufen dieser Form sind gezeichnet, und andere sind Bilder
shape-drawn-and-pictures-help = Zeichnen Sie alle, oder machen Sie von jeder ein Bild.
example-stage = Die nahe Kante zur Mitte falten.
bad-stage = eine Stufe zeigt ihr `dough` oder ein `picture`, und jeder `arrow` hat zwei Punkte
bad-stage-help = Schreiben Sie den Umriss mit seinen Ecken, in cm von der vorderen linken an: `dough: 0 0, 12 0, 12 8, 0 8`; oder zeigen Sie ihn: `picture: roll-up.jpg, both hands roll it away`.

## Techniken

example-technique-summary = Drei Teile, einer über dem anderen.
bad-drawing = hier ist nicht genug zum Zeichnen
bad-drawing-help = Eine Zeichnung hat ein `sheet` und einen `turn`, `turns`, einen `cut`, ein `roll`, eine `shape`, Stücke `per tray` oder ein `lock-in` mit seinem `block`.

## Zeilen von Tickets

ticket-line-twice = `{ $key }` steht hier zweimal
ticket-line-twice-help = Behalten Sie eine der beiden Zeilen.
ticket-beside-proof = eine Gare mit mehreren Temperaturen hat ihre Zeiten und Wärmen schon und ist kein Backen: `{ $key }` kann nicht daneben stehen
ticket-beside-proof-help = Schreiben Sie `proof: 5 °C, 12 h in the fridge; then 26 °C, 90 min in the proofer` allein; Backen und Abkühlen haben eigene Schritte.
ticket-no-key = diese Zeile ist nicht `key: value`
ticket-no-key-help = Schreiben Sie zum Beispiel `hands: 10 min`.
ticket-no-value = `{ $key }` hat keinen Wert
ticket-no-value-help = Schreiben Sie den Wert hinter den Doppelpunkt, oder nehmen Sie die Zeile heraus.
example-turn = book (oder letter, half oder eine Zahl von Teilen von 2 bis 12; bei book geht auch `book, ends meet at 1/3`)
example-roll = same way (oder quarter turn, das Übliche)
example-lock-in = envelope (oder letter oder book; inverted book für Fett außen)
example-divide = half for crescents, the rest for batons (oder 12 pieces)
unknown-line = `{ $key }` ist keine Zeile, die in einem Ticket stehen kann
unknown-line-help = In einem Ticket können stehen: { $keys }.

## Dateien mit Meldungen

words-unreadable = das lässt sich nicht lesen
words-unreadable-why = das lässt sich nicht lesen: { $reason }
words-unknown-form = eine Meldung hier hat Wörter, `{"{"} $name {"}"}` und Auswahlen mit `{"{"} $name -> {"}"}`

## YAML

yaml-no-space = hinter dem `-` ist kein Leerzeichen
yaml-no-space-help = Schreiben Sie `- { $line }: …`.
yaml-run-on = diese Zeile wird als Teil der vorigen gelesen, weil ihr `-` weiter rechts steht
yaml-run-on-help = Lassen Sie das `-` aller Zeilen einer Liste in derselben Spalte stehen, jedes mit einem Leerzeichen dahinter.
yaml-help = Jede Zeile ist `key: value`; Zeilen, die zusammengehören, beginnen in derselben Spalte, mit Leerzeichen eingerückt. Setzen Sie einen Wert, der `: ` enthält oder mit einem Zeichen wie `[`, `{"{"}`, `*`, `&`, `!`, `%`, `@` oder einem Anführungszeichen beginnt, in "doppelte Anführungszeichen".
yaml-key-twice = derselbe Schlüssel steht hier zweimal
yaml-alias = `*name` und `&name` werden in diesen Dateien nicht verwendet
yaml-tab = hier ist mit einem Tabulator eingerückt; nehmen Sie Leerzeichen
yaml-too-deep = hier sind Listen und Schlüssel zu tief verschachtelt
yaml-too-large = diese Datei ist zu groß oder zu tief verschachtelt
bad-yaml = diese Zeile lässt sich weder als `key: value` noch als Eintrag einer Liste lesen

## Versehen in YAML

yaml-open-quote-help = Schreiben Sie `{ $close }` hinter das letzte Wort darin.
yaml-open-quote = dieses Anführungszeichen ist nicht geschlossen
yaml-open-bracket-help = Schreiben Sie `{ $end }` hinter das letzte Wort darin.
yaml-open-bracket = diese Klammer ist nicht geschlossen
yaml-write-item = Schreiben Sie `- { $rest }`.
yaml-no-space-colon = hinter dem Doppelpunkt ist kein Leerzeichen
yaml-no-colon = hinter dem Schlüssel ist kein Doppelpunkt
yaml-write = Schreiben Sie `{ $right }`.
yaml-odd-value = ein Wert, der `: ` enthält oder mit einem Zeichen wie `[` oder `*` beginnt, bedeutet hier etwas anderes
yaml-odd-value-help = Setzen Sie ihn in doppelte Anführungszeichen: `{ $right }`.
yaml-column = diese Zeile beginnt in einer anderen Spalte als die, zu denen sie gehört
yaml-column-help = Lassen Sie Zeilen, die zusammengehören, in derselben Spalte beginnen; nehmen Sie Leerzeichen, keine Tabulatoren.

## Rezepte im Kreis

recipe-cycle = dieses Rezept braucht sich selbst: { $way }
recipe-cycle-help = Nehmen Sie aus einem dieser Rezepte die Zutat heraus, die zurückführt.

## Wiegen

not-counted = `{ $name }` wird nicht in Stücken gezählt: das Gewicht ist nicht bekannt
not-counted-help = Schreiben Sie das Gewicht; oder wiegen Sie eines davon, und tragen Sie das in `pantry.yaml` ein:
    { $entry }
no-batches = `{ $name }` ist kein Rezept und hat darum keine Ansätze
no-batches-help = Ansätze gibt es von einem anderen Rezept: `1 batch [layered dough](layered-dough.md)`.
no-density = es ist nicht bekannt, wie viel `{ $title }` in diesem Maß wiegt: { $unit }
no-density-help = Schreiben Sie ein Gewicht; oder wiegen Sie dieses Maß ({ $unit }) davon, gestrichen, und tragen Sie das in `pantry.yaml` ein:
    { $entry }
no-anchor = Bäckerprozente brauchen ein Gewicht, auf dem sie stehen
no-anchor-help = Geben Sie einem Mehl von `{ $recipe }` ein Gewicht: `500 g bread flour`.

## Weggelassene Allergene. Hier geht es um die Sicherheit

allergen-taken-out = `{ $word }` würde so verstanden, als fehlte darin: { $missing }
allergen-taken-out-help = Schreiben Sie `{ $name }` in den Rezepten, wo es gemeint ist, und lassen Sie `{ $word }` hier weg.
allergen-left-out = `{ $name }` müsste dem Namen nach oder nach dem, dem es gleicht, das enthalten: { $missing }; die Allergene dazu lassen es weg
allergen-left-out-nut = Lesen Sie die Packung, und schreiben Sie alles, was sie aufführt:
    { $entry }
    Führt die Packung selbst weniger auf, schreiben Sie, was sie aufführt, und dann `, read on the pack`. Schreiben Sie, welche Nuss es ist.
allergen-left-out-help = Lesen Sie die Packung, und schreiben Sie alles, was sie aufführt:
    { $entry }
    Führt die Packung selbst weniger auf, schreiben Sie, was sie aufführt, und dann `, read on the pack`.

## Eigene Zutaten

example-kind = flour, liquid, fat, egg, sugar, salt oder leavener
example-density = 0.46 g/ml oder 1 tbsp = 6.8 g
example-allergens = was die Packung aufführt, mit diesen Wörtern: { $words }
pantry-unreadable = `{ $value }` lässt sich hier nicht lesen
pantry-unreadable-help = Schreiben Sie { $example }.

## Unbekannte Zutaten

known-name = `{ $name }`
unknown-ingredient = `{ $name }` steht nicht in der Vorratsliste
unknown-ingredient-help = Ist der Name richtig, fügen Sie das zu `pantry.yaml` hinzu, ausgefüllt mit dem, was die Packung aufführt:
    { $entry }
unknown-ingredient-one = Meinten Sie { $only }? Wenn nicht, fügen Sie das zu `pantry.yaml` hinzu, ausgefüllt mit dem, was die Packung aufführt:
    { $entry }
unknown-ingredient-several = Meinten Sie { $rest } oder { $last }? Wenn nicht, fügen Sie das zu `pantry.yaml` hinzu, ausgefüllt mit dem, was die Packung aufführt:
    { $entry }

## Dateien, die sich nicht lesen lassen

unread-link = sie ist eine Verknüpfung mit einem anderen Ort
unread-link-help = Legen Sie die Datei oder den Ordner selbst hierher.
unread-too-much = hier sind mehr als { $files } Dateien, oder mehr als { $text } MiB Text oder { $pictures } MiB Bilder
unread-too-much-help = Bewahren Sie anderes woanders auf; machen Sie aus einem großen Kurs zwei.
unread-not-plain = sie ist keine gewöhnliche Datei
unread-picture-link-help = Legen Sie das Bild selbst hierher.
picture-smaller-help = Speichern Sie es kleiner: 3000 Pixel Breite sind reichlich.
unread-picture-large = sie ist größer als 30 MiB
unread-not-plain-help = Legen Sie eine Textdatei hierher.
unread-name = ihr Name ist Teil von Webadressen, und nicht jedes Zeichen darf dort stehen
unread-name-help = Nehmen Sie nur Buchstaben von a bis z, Ziffern, Bindestriche und Unterstriche, etwa `{ $better }`.
unread-large = sie ist größer als 1 MiB
unread-large-help = Ein Rezept ist eine Seite Text oder zwei.
unread-not-text = sie ist kein Text in UTF-8
unread-not-text-help = Speichern Sie sie als einfachen Text in UTF-8.
unread-zero-byte = sie enthält ein Null-Byte
unreadable-file = diese Datei wird nicht gelesen: { $why }

## Schriften

unread-typeface-link = sie ist eine Verknüpfung mit einem anderen Ort oder ein Ordner
unread-typeface-link-help = Legen Sie die Schrift selbst hierher.
unread-typeface-large-help = Nehmen Sie eine mit weniger Buchstaben: einen Teil davon, für eine Sprache.
unread-typeface-large = sie ist größer als 20 MiB

## Dateien, die niemand liest

unread-file = diese Datei liest niemand
unread-file-help = Als `{ $better }` würde sie gelesen.

## Buchstaben

no-typeface = es gibt keine Schrift `{ $name }`
no-typeface-help = Es gibt: { $families }. Legen Sie ihre .ttf- oder .otf-Dateien in content/media ab, um eine hinzuzufügen.
no-glyph = die Schriften haben kein `{ $sign }`: Blätter drucken dafür { $stand_in }
no-glyph-help = Schreiben Sie es anders, oder legen Sie eine Schrift, die es hat, in content/media ab.

## Beschädigte Bilder

unreadable-picture = diese Datei ist kein Bild, das sich zeigen lässt
unreadable-picture-help = Speichern Sie es als JPEG oder PNG.
broken-picture = dieses Bild ist abgeschnitten oder beschädigt: nicht alle seine Zeilen sind da
broken-picture-help = Kopieren Sie es noch einmal von dort, woher es kam, oder speichern Sie es noch einmal als JPEG oder PNG.
picture-too-large = dieses Bild hat mehr als 60 Millionen Pixel

## Lange Blätter

card-two-sides = die Arbeitskarte dieses Rezepts passt nicht auf eine Seite
card-two-sides-help = Sie geht auf der Rückseite weiter. Mit kürzeren Hinweisen (`until`), oder mit zwei Rezepten, von denen eines eine Zutat des anderen ist, wird es eine Seite.
long-sheet = das Kursblatt dieses Rezepts braucht mehr als { $most } Seiten
long-sheet-help = Es geht auf einer weiteren Seite weiter. Kürzere Absätze helfen, ebenso `included: by name only` im Kopf, wenn das, was hineinkommt, ein eigenes Blatt hat.

## Die vorige Ausgabe

faulty-edition = die Ausgabe in `{ $folder }` hat Fehler, darum sagt kein Blatt, was sich seitdem geändert hat
faulty-edition-help = Sie sehen sie mit `tourier proof --content` und dem Ordner der Ausgabe.
missing-edition = im Inhaltsordner gibt es keinen Ordner `{ $folder }`
missing-edition-help = Kopieren Sie den alten Inhalt dorthin, oder lassen Sie diese Zeile weg.

## Bilder auf Papier

coarse-picture = `{ $picture }` ist { $dots } Punkte breit, und das ist auf Papier grob
coarse-picture-help = Nehmen Sie ein größeres Bild, 1000 Punkte breit oder mehr; oder drucken Sie es nicht: `print: no`.
faint-picture = in Grau hat `{ $picture }` fast überall dieselbe Helligkeit
faint-picture-help = Auf einer Kopie erkennt niemand, was es zeigt. Nehmen Sie es bei besserem Licht auf, oder drucken Sie es nicht: `print: no`.

## Abwandlungen eines Rezepts

in-this-way = in der Abwandlung `{ $way }`: { $message }
unknown-way = `{ $recipe }` gibt es nicht in einer Abwandlung `{ $way }`
names-ways = Seine Abwandlungen
ways-at-odds = die Abwandlung `{ $way }` ändert eine Zeile, die eine andere schon geändert hat
ways-at-odds-help = Nehmen Sie eine der beiden, oder schreiben Sie einen Tausch, der beides tut.
swap-of-nothing = nichts heißt hier `{ $name }`, also kann nichts an dessen Stelle treten
names-lines = Zeilen hier
swap-of-several = `{ $name }` steht in mehreren Abschnitten: { $sections }
swap-of-several-help = Sagen Sie, was gemeint ist: `{ $name } in { $section }`. Schreiben Sie für jeden eine Zeile.
swap-leaves-nothing = die Abwandlung `{ $way }` lässt nichts von der Formel übrig
swap-leaves-nothing-help = Schreiben Sie hinein, was stattdessen genommen wird, etwa `140 g oat drink for whole milk`.
swap-without-lines = der Tausch `{ $name }` ändert nichts
swap-without-lines-help = Seine Zeilen stehen darunter, jede mit `- ` davor: `- 140 g oat drink for whole milk`, `- 30 g water in dough` oder `- without walnuts`.
way-still-told = dieser Schritt spricht von { $name }, das es in der Abwandlung `{ $way }` nicht gibt
way-still-told-help = Schreiben Sie die Zutat in geschweiften Klammern, wie `{"{"}whole milk{"}"}`: Jede Abwandlung sagt dann ihre eigene. Oder nennen Sie sie nach dem, was sie dort tut, etwa die Flüssigkeit.

## Übersetzungen. Warnungen berühren die Sicherheit

translates-nothing = nichts sagt, welchen Text „{ $title }“ übersetzt
translates-nothing-help = Schreiben Sie darunter in ein Ticket `translates: mix-the-dough` mit dem Namen des Schritts oder der Überschrift im Original: Texte werden nie nach ihrer Reihenfolge zugeordnet.
translation-unknown = es gibt keinen Text `{ $name }`, der zu übersetzen wäre
translation-unknown-help = Schreiben Sie den Namen des Originals: bei einem Schritt seine Überschrift in kleinen Buchstaben mit Bindestrichen, bei einer Datei ihren Namen.
translation-not-named = diesen Ordner liest niemand: Der Kurs nennt die Sprache `{ $language }` nicht
translation-not-named-help = Schreiben Sie `also in: { $language }` in `course.yaml`, oder nehmen Sie den Ordner weg.
translation-no-file = diese Texte sind nicht übersetzt: { $files }
translation-no-file-help = Sie stehen in der ersten Sprache da. Schreiben Sie { $first } und so weiter, oder nennen Sie in `also in`, was es in dieser Sprache geben soll.
translation-no-part = diese Teile sind nicht übersetzt: { $titles }
translation-no-part-help =
    Sie stehen in der ersten Sprache da. Schreiben Sie jeden in Ihrer Sprache unter seine Überschrift:
    { $blocks }
translation-behind = „{ $title }“ ist nicht nach dem Original gemacht, wie es jetzt ist
translation-behind-help = Lesen Sie das Original noch einmal und bessern Sie diesen Text nach, wo es nötig ist; schreiben Sie dann `mark: { $mark }`. Bis dahin stehen seine Warnungen, und woran man sieht, dass es fertig ist, in der ersten Sprache da.
translation-numbers = „{ $title }“ und das Original sagen nicht dieselben Zahlen: { $numbers }
translation-numbers-help = Sagen Sie sie wie das Original, in Ziffern oder in Klammern. Bis dahin steht das Original da.
translation-caution = Warnungen im Original von „{ $title }“: { $there }; hier: { $here }
translation-caution-help = Beginnen Sie jede mit dem Wort, wie in `> Achtung:`. Bis dahin stehen die des Originals mit da.
untranslated-words =
    { $count ->
        [one] ein kurzer Text hat in dieser Sprache keine Worte
       *[other] { $count } kurze Texte haben in dieser Sprache keine Worte
    }
untranslated-words-help =
    Sie stehen da, wie sie geschrieben sind. Schreiben Sie in `{ $file }`, wie jeder heißt:
    { $block }
translation-key-help = Eine Übersetzung enthält nur Prosa. Ihre Tickets sagen `translates`, `mark` und `until`; Zahlen, Größen und Zeiten kommen aus dem Original.
