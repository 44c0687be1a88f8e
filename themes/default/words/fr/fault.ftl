### Ce qui ne va pas dans un texte, et ce qui serait juste. { $name } dans un message est rempli par le programme ; les mots entre
### `accents graves` sont ceux qu’un auteur écrit et restent tels quels. Un message n’a pas de point final, une aide en a un.

## Comment un défaut s’affiche sur le terminal

fault-place = { $file }, ligne { $line }
fault-error = Erreur :
fault-caution = Attention :
fault-help = Que faire :
fault-sentence = { $message }.
fault-errors =
    { $count ->
        [one] { $count } erreur
       *[other] { $count } erreurs
    }
fault-cautions =
    { $count ->
        [one] { $count } mise en garde
       *[other] { $count } mises en garde
    }
fault-none = aucun défaut
fault-all = { $parts }

## Défauts acceptés

not-acceptable = `{ $name }` ne peut pas être accepté
names-acceptable = Peuvent l’être

## Quantités qui ne s’accordent pas

amounts-disagree-more = la quantité entre parenthèses est { $second }, soit { $percent } % de plus que la première
amounts-disagree-less = la quantité entre parenthèses est { $second }, soit { $percent } % de moins que la première
amounts-disagree-help = C’est la première qui compte : { $first }. Changez l’une des deux, ou laissez la seconde de côté.
yield-off = la formule ne donne que { $weight }, perte déduite
yield-off-help = Écrivez `makes: { $weight }`, ou augmentez la formule.

## Séances

class-makes-nothing = on ne fait rien dans cette séance
class-makes-nothing-help = Écrivez sous `makes` quelle recette fait chaque binôme.
class-never-held = cette séance n’a jamais lieu
class-never-held-help = Écrivez sous `sessions` quand elle a lieu, comme dans `- 2027-03-02 18:00 to 21:00`.
missing-file = il n’y a pas de fichier `{ $file }`
names-recipes = Recettes présentes
class-pieces = `{ $name }` se fait au poids, non à la pièce
class-pieces-help = Écrivez `batches: 1` au lieu de `pieces`.
session-overlap = cette séance commence avant que la précédente soit finie
session-overlap-help = Donnez à chaque séance des heures à elle.
long-session = cette séance dure { $hours } heures
long-session-help = Écrivez l’heure à laquelle elle finit, comme dans `18:00 to 21:00` ; celle qui finit après minuit finit le lendemain.
step-without-hands = rien ne se fait à la main dans `{ $step }`
step-without-hands-help = Donnez-lui `hands: 5 min`, ou montrez une autre étape.
late-nobody = `late` nomme un groupe que cette séance n’a pas : elle en a { $groups }
late-nobody-help = Comptez les groupes à partir de 1.
late-never = qui arrive si tard manque toute la séance
late-never-help = Écrivez combien de temps après l’ouverture, par exemple `20 min`.
break-outside = cette pause ne tombe dans aucune séance
break-outside-help = Écrivez `{ $at }`, `{ $between }`, ou `{ $lasts } min` pour le milieu de chaque séance.
besides-too-long = arrivée, exposés, vaisselle et marge prennent { $minutes } min : pas moins que ne dure cette séance
besides-too-long-help = Raccourcissez-les, ou allongez la séance.
unknown-class-step = aucune recette de cette séance n’a d’étape `{ $step }`
unknown-class-step-help = Le nom d’une étape est son titre en minuscules, avec des traits d’union.
did-you-mean = Vouliez-vous dire `{ $near }` ?
class-kit-short = une étape demande ce matériel : { $name } ; il en faut { $count }, il y en a { $have }
class-kit-short-help = Changez le ticket ou le matériel : aucun plan ne pourrait tenir.
class-kit-none = les recettes demandent ce matériel, que la séance ne compte pas : { $name }
class-kit-none-help = Ajoutez `{ $name }: …` à `kit`, pour que le plan puisse le répartir.
class-kit-no-place = une étape attend à cet endroit, qui n’a aucune plaque : { $place }
class-kit-no-place-help = Dites combien de plaques y tiennent, ou supprimez la ligne.
class-kit-no-oven = les recettes se cuisent au four, et il manque ceci au matériel : { $name }
class-kit-no-oven-help = Ajoutez `oven: 2, tray per oven: 4` à `kit`.
class-kit-oven-unlisted = les recettes se cuisent au four, et le matériel ne compte pas de four
class-kit-instructor = formateurs qu’il faut pour donner cette séance : { $least } ; il y en a { $have }
class-kit-instructor-help = Écrivez `instructor: { $least }`, ou ne montrez rien.
class-kit-unknown = aucune recette ne demande ceci, et aucune étape n’y attend : { $name }
class-kit-unknown-help = Nommez-le sur les tickets qui le demandent : `kit: 1 mixer`.

## Découpes

cut-no-sheet = il n’y a pas d’abaisse à détailler
cut-no-sheet-help = Donnez à cette étape, ou à une étape avant elle, une `sheet: 54 x 48 cm`.
cut-too-large = pas une seule pièce ne tient sur l’abaisse
cut-too-large-help = Faites les pièces plus petites ou l’abaisse plus grande.
cut-too-many = cela ferait plus de { $most } pièces
cut-too-many-help = Regardez les unités de la pièce et de l’abaisse.
cut-count = cette découpe donne { $made } pièces, et `makes` dit { $count } { $word }
cut-count-help = Changez l’abaisse, la pièce ou `makes`, pour qu’ils s’accordent.
cut-count-parts = toutes les parties donnent ensemble { $made } pièces, et `makes` dit { $count } { $word }

## Diviser

unknown-part = aucune étape ne sépare une partie `{ $part }`
unknown-part-help = Nommez-la là où la pâte est divisée : `divide: half for crescents, the rest for batons`.
divided-off-help = Donnez à une partie `the rest`, ou changez les autres.
divided-too-much = les parties demandent { $over } % de plus que la pâte de { $weight }
divided-no-rest = la pâte de { $weight } est déjà toute partagée : rien n’est laissé à la partie qui prend le reste
divided-too-little = { $left } % de la pâte de { $weight } ne va nulle part

## Pétrin et plan de travail

mixer-too-small = { $dough } entrent ici ; le pétrin contient { $most }
mixer-too-small-help = Pétrissez en deux fois, ou réduisez la formule.
bench-too-short = le plan de travail fait { $bench }
bench-too-short-help = Divisez la pâte en deux, ou abaissez-la plus courte et plus large.

## Tourage

block-too-big-envelope = un bloc de { $block } est trop grand de { $short } pour un beurrage en enveloppe sur cette abaisse : son côté peut faire 0,7 de l’abaisse
block-too-big-letter = un bloc de { $block } est trop grand de { $short } pour les deux tiers de cette abaisse
block-too-big-book = un bloc de { $block } est trop grand de { $short } pour la moitié du milieu de cette abaisse
block-too-big-help = Faites le bloc plus petit ou l’abaisse plus grande, avec 5 mm de marge pour souder.
fat-unlike-dough = la matière grasse est épaisse de { $fat } et la pâte de { $dough } : elles ne s’abaisseront pas ensemble
fat-unlike-dough-help = Battez la matière grasse pour l’élargir ou l’amincir, ou abaissez la pâte ainsi, jusqu’à ce que les deux soient à peu près de même épaisseur.
block-no-margin = le bloc ne laisse pas de marge pour souder la pâte autour
block-no-margin-help = Laissez au moins 5 mm de pâte tout autour.
sheet-of-nothing = à cette étape, il n’y a pas de pâte sur le plan de travail
sheet-of-nothing-help = Dites dans un ticket avant elle ce qui entre : `uses: dough`.
sheet-too-big = ici la pâte n’est épaisse que de { $lies } : l’abaisse est trop grande pour elle
sheet-may-tear = ici la pâte n’est épaisse que de { $lies } : elle peut se déchirer
sheet-too-thick = ici la pâte est épaisse de { $lies }
sheet-thickness-help = Pour { $usual }, l’abaisse aurait { $share } % de cette surface ; ou changez la formule.
fat-layer-too-thin = chacune des { $layers } couches de matière grasse n’a plus que { $thickness } mm d’épaisseur avant ce tour
fat-layer-too-thin-help = En dessous de 0,01 mm, les couches se mêlent. Abaissez moins grand, ou laissez un tour de côté.
part-too-short = pliée en { $parts }, chaque partie serait trop courte de { $short }
part-too-short-crossed = Le premier nombre est le côté que l’on plie : écrivez d’abord le plus long.
part-too-short-help = Abaissez plus long, ou pliez en moins de parties.

## Matière grasse et couches

fat-share-puff = la matière grasse de tourage fait { $percent } % de la farine d’une pâte feuilletée
fat-share-yeast = la matière grasse de tourage fait { $percent } % d’une pâte levée
fat-share-help = L’usage est de { $least } à { $most } %.
seams-not-turned = le pâton est abaissé dans le même sens qu’avant le pliage
seams-not-turned-help = L’usage est un quart de tour, pour que la pâte s’allonge dans l’autre sens. Supprimez cette ligne, ou acceptez le défaut.
sheet-gets-narrower = ici l’abaisse se rétrécit : un côté de { $from } deviendrait { $to }
sheet-gets-narrower-help = On ne peut pas resserrer une pâte. Le premier nombre est le côté que l’on allonge ; après un pliage, c’est le côté le long du dos. Écrivez une abaisse plus large, ou pliez plus étroit celle d’avant.

## Liens

bad-link = le lien vers `{ $link }` ne mène nulle part
bad-link-help = Faites un lien vers un fichier d’ici (`../techniques/letter-turn.md`) ou vers une adresse qui commence par https:, http: ou mailto:.

## L’aspect du cours

logo-holds-pictures = le logo contient des images
logo-holds-program = le logo contient un programme
logo-holds-page = le logo contient des parties d’une page
logo-holds-words = le logo contient des mots composés en caractères
logo-holds-entities = le logo contient des entités
pale-accent = sur du blanc, cette couleur a un contraste de { $ratio }:1 ; { $least }:1 est le moins qu’il faut
pale-accent-help = Prenez-en une plus foncée : un copieur l’imprime grise.
no-logo = il n’y a pas de dessin `{ $logo }`
no-logo-help = Mettez un fichier SVG sous content/media : `logo: media/house.svg`.
unknown-law = il n’y a pas de liste d’allergènes `{ $law }`
unknown-law-help = Sont connues { $known } : `allergen lists: eu`.
logo-unreadable = le logo ne se lit pas comme un dessin
bad-logo-help = Enregistrez-le en SVG simple, ses mots convertis en formes.
no-words = il n’y a pas de mots dans la langue `{ $language }`
no-words-help = Écrivez `en`, ou mettez une traduction des fichiers de `words/en/` dans un thème à vous, en un dossier qui porte le nom de la langue, et nommez ce thème avec --theme.

## Ce qui entre

unused-help-allergen = Ajoutez `uses: { $name }` au ticket de l’étape où cela entre.
unused-help = Ajoutez `uses: { $name }` au ticket de l’étape où cela entre. Si cela n’entre nulle part, supprimez la ligne.
unused-section = aucune étape n’emploie quoi que ce soit de la section `{ $name }`
unused-ingredient = aucune étape n’emploie cet ingrédient : { $name }
place-misspelt = `{ $name }` est presque le nom d’un lieu connu, et compte comme un lieu à part
unknown-use = `{ $name }` n’est ni une section ni un ingrédient de cette recette
names-in-recipe = Dans cette recette

## Noms

taken-by-windows = Windows garde le nom `{ $name }` pour un appareil
taken-all = `tourier handout all` imprime tout le cours, jamais cette recette
taken-by-recipe = une recette porte aussi le nom `{ $name }` : les commandes prennent la séance à sa place
taken-name-help = Renommez le fichier, par exemple en `{ $better }`, ainsi que ce qui le nomme.
one-page-for-two = ce fichier et `{ $file }` deviendraient une seule page
one-page-for-two-help = Renommez l’un des fichiers : deux noms ne peuvent pas différer par les seules majuscules.
bare-name = dans toutes les recettes d’ici, `{ $word }` est pris pour { $meant }
bare-name-help = Dites dans `course.yaml` ce que cela veut dire dans ce cours :
    { $entry }
same-word = `{ $word }` est expliqué deux fois
same-word-help = Gardez l’une des deux explications.
names-files = Fichiers présents

## Fours

fan-not-cooler = en chaleur tournante, le four se règle moins chaud que sans, et ici ce n’est pas le cas
fan-not-cooler-help = À 20 °C de moins environ, la cuisson est pareille. Si vous ne l’écrivez pas, elle est calculée ainsi.

## Refroidissement, œuf cru. Ceci touche à la sécurité

cooling-missing = c’est une crème cuite ou une crème avec de l’œuf, et aucune étape suivante ne dit comment on la refroidit
cooling-missing-help = Ajoutez `cool: custard` à l’étape où elle refroidit : de 57 °C à 21 °C en 2 h au plus, et à 5 °C en 6 h au plus en tout. Les règles locales passent d’abord.
cooling-slow-warm = ceci peut refroidir plus de 2 h hors du réfrigérateur
cooling-slow-all = ceci peut refroidir plus de 6 h en tout
cooling-slow-help = De 57 °C à 21 °C en 2 h au plus, et à 5 °C en 6 h au plus en tout : raccourcissez l’attente la plus longue. Les règles locales passent d’abord.
held-warm = ce qui est garni de crème, cuite ou non, peut ici rester hors du réfrigérateur
held-warm-help = Écrivez `hold: up to 24 h in the fridge`, ou supprimez cette attente possible : cela se garde à 5 °C ou plus froid. Les règles locales passent d’abord.
day-too-early = ceci est du jour { $day }, mais attend « { $step } », qui est d’un jour plus tardif
day-too-early-help = Mettez `{ $step }` à un jour plus tôt, ou dites dans `after` ce que ceci suit vraiment.
night-without-hold = rien ne dit que ceci peut rester jusqu’au jour { $day } : { $time } au moins
night-without-hold-help = Donnez-lui une attente assez longue, ou une attente possible : `hold: up to 24 h in the fridge`.
thawed-warm = ce qui a été congelé se décongèle ici au chaud
thawed-warm-help = Laissez-le décongeler au réfrigérateur, à 5 °C ou plus froid : `thaw 9 h in the fridge`. Les règles locales passent d’abord.
raw-egg-eaten = cet ingrédient se mange cru : { $name } ; aucune étape suivante ne le cuit, au four ni autrement
raw-egg-eaten-help = Prenez `pasteurised egg`, ou cuisez-le : `core: 71 °C` dans le ticket. Les règles locales passent d’abord.
core-too-low = avec de l’œuf cru dedans, ceci doit devenir plus chaud que cela
core-too-low-help = L’œuf cru qui n’est pas mangé aussitôt se cuit à 68 °C au moins. Les règles locales passent d’abord.

## Images

missing-picture-help = Mettez l’image sous `media/{ $picture }`.
missing-picture = il n’y a pas d’image `{ $picture }` dans le dossier media

## Ce que pèsent les pièces

weight-open = cet ingrédient entre dans la pâte et n’a pas de poids : { $title }
weight-open-help = Écrivez à peu près combien il en faut, `300 g { $title }`, ou dites qu’on le met dessus : `{ $title }, for dusting`. Jusque-là, les pourcentages, l’hydratation et le poids d’une pièce qui en dépendent ne sont pas donnés.
piece-weight-unknown = ce que pèse une de ces pièces ne peut pas se calculer ; aucune fiche ne le dit donc
piece-weight-unknown-help = Les étapes jusqu’à celle où l’on fait les pièces doivent dire ce qui entre : `uses: dough`.

## Accolades

unknown-brace = `{"{"}{ $name }{"}"}` ne veut rien dire ici
unknown-brace-help = { $suggested } Pour de simples accolades, écrivez `\{"{"}{ $name }\{"}"}`.
brace-temperature-help = Écrivez la température avec son signe : `{"{"}{ $digits } °{ $scale }{"}"}`.
brace-number-help = Écrivez une température `{"{"}190 °C{"}"}`, une taille `{"{"}20 x 20 cm{"}"}` ou une longueur `{"{"}4 mm{"}"}`.

## Allergènes et eau. Ceci touche à la sécurité

allergens-unknown = les allergènes de `{ $name }` ne sont pas connus
allergens-unknown-help = Lisez l’emballage, et écrivez dans `pantry.yaml` ceux qu’il indique :
    { $entry }
named-beside = `{ $name }` est nommé sur cette ligne : ses allergènes comptent
named-beside-help = Donnez-lui une ligne à lui, avec son poids ou sous la forme `{ $name }, as needed` ; s’il n’y entre pas, retirez son nom de cette ligne.
water-too-cold = dans la salle de ce cours, il faudrait une eau plus froide que la glace
water-too-cold-help = Refroidissez la farine, pétrissez moins longtemps, ou admettez une pâte plus chaude.
water-unknown = l’eau que contient `{ $name }` n’est pas connue ; la vraie hydratation ne peut donc pas se calculer
water-unknown-help = Donnez-lui un `like:` dans `pantry.yaml`, ou laissez `true hydration` de côté.

## Brouillons

to-settle = ceci reste à régler : { $line }
to-settle-help = Réglez-le dans le texte, puis supprimez cette ligne.

## Formes

unknown-shape = aucune forme ne s’appelle `{ $name }`
unknown-shape-help = Donnez-lui une suite de `frames` sous `shapes` dans une technique.
form-triangle = triangle
form-right-triangle = triangle rectangle
form-rectangle = rectangle
form-square = carré
form-round = disque
form-strip = bande
form-lump = morceau
shape-misfit = une pièce de cette forme ({ $form }) ne peut pas se façonner en { $shaping }
shape-misfit-help = Changez la découpe qui précède, ou la forme : sans cela, rien ne peut se dessiner.

## Étapes

step-ring = ces étapes s’attendent les unes les autres : { $steps }
step-ring-help = Retirez un nom d’un `after:` pour qu’il y ait une première étape.
unknown-video-help = Ajoutez à l’en-tête, sous `watch:`, une ligne `- { $name }: https://…`.
unknown-video = l’en-tête ne nomme pas de vidéo `{ $name }`
makes-missing = il n’est pas dit ce que donne cette recette
makes-missing-help = Ajoutez `makes: 22 crescents`, ou pour une pâte de base son poids, `makes: 1100 g`.
no-formula = cette recette n’a pas de formule
no-formula-help = Ajoutez `formula:` avec des sections et des lignes comme `- 500 g bread flour`.
no-steps = cette recette n’a pas d’étapes
no-steps-help = Une étape est un titre avec un `~~~ticket` juste en dessous.
preferment-not-above = `{ $name }` n’est pas un préferment nommé avant celui-ci
preferment-not-above-help = Nommez-le d’abord : `preferment: { $first }, { $second } from { $first }`.
names-sections = Sections présentes
unknown-section = la formule n’a pas de section `{ $name }`

## Plaques

tray-too-full = { $on_one } pièces de { $piece } chacune ne tiennent pas sur une plaque de { $tray } avec un écart entre elles : il en tient { $fits }
tray-too-full-help = Écrivez `per tray: { $most }`, ou façonnez des pièces plus petites. Les pièces qui se touchent ne dorent pas sur les côtés.

## Fautes d’inattention : températures

impossible-oven = aucun four ne cuit à { $heat }
unlikely-oven-hot = { $heat }, c’est plus chaud que ne vont les fours de ce métier
both-units = { $metric } ({ $us })
look-at-degrees = Regardez le nombre et l’unité derrière lui, °C ou °F.
unlikely-oven-cool = { $heat }, cela sèche une pâte et ne la cuit pas
unlikely-core = une température à cœur de { $heat } n’est celle de rien de cuit
unlikely-core-help = Les pains sont cuits entre 88 et 99 °C à cœur, les crèmes entre 76 et 85 °C, et aucun œuf n’est sûr en dessous de 71 °C. Les règles locales passent d’abord.
impossible-wait-heat = rien n’attend à { $heat }
yeast-dies = à { $heat } la levure meurt
butter-runs-out = à { $heat } le beurre coule hors des couches
butter-runs-out-help = Restez à 26 °C, et en dessous de 28 °C.
butter-oils-out = à { $heat } le beurre fond et suinte de la pâte
butter-oils-out-help = Restez en dessous de 32 °C.
impossible-dough-heat = aucune pâte n’est pétrie à { $heat }
unlikely-dough-heat = une pâte à { $heat } sort de ce que le métier pétrit

## Fautes d’inattention : parts de la farine

unlikely-share = ceci fait { $percent } % de la farine
unlikely-share-help = Regardez le nombre et son unité : aucune pâte du métier n’en a autant.
unlikely-water = toute l’eau ensemble fait { $percent } % de la farine, ce qui ne donne pas une pâte levée
unlikely-water-help = Regardez le nombre de la farine et celui de l’eau.

## Fautes d’inattention : durées

bake-without-time = une cuisson prend du temps
bake-without-time-help = Écrivez-la sous la forme `190 °C, 22 min`.
unlikely-bake-time = { $time }, c’est une durée inhabituelle pour cuire à cette chaleur
impossible-wait = personne n’attend plus d’un an
unlikely-wait-cold = { $time } au froid, c’est plus long que n’attendent les pâtes
unlikely-wait-warm = { $time } hors du réfrigérateur, c’est plus long que n’attendent les pâtes
impossible-hands = ceci occupe les mains pendant plus d’un jour
unlikely-hands = { $time } de travail, c’est une longue journée pour une seule étape
unlikely-time-help = Regardez le nombre et l’unité derrière lui, s, min, h ou days.

## What steps are to reach

goal-ph = pH { $value }
goal-percent = { $percent } %
goal-impossible = rien n’arrive à { $value }
goal-unlikely = { $value } sort de ce que le métier connaît ici
goal-unlikely-help = Vérifiez le chiffre. Les pâtes ont un pH de 3 à 8 et de 5 à 40 °C, gonflent de 10 à 400 % et perdent de 1 à 45 % au four.
growth-without-wait = rien ne gonfle dans une étape sans attente
loss-without-bake = rien ne perd de poids dans une étape sans cuisson ni attente
goal-out-of-place-help = Mettez `{ $key }` dans l’étape où cela se passe.
goals-at-odds = l’en-tête donne { $value }, ce qui est en dehors
goals-at-odds-help = Écrivez la même chose dans `{ $key }` de l’en-tête.
unlikely-mixing = { $time } est une durée inhabituelle pour pétrir une pâte
mixing-beyond-step = le batteur tourne { $time }, l’étape dure { $own }
mixing-beyond-step-help = Écrivez autant de minutes dans `hands`, ou retirez cette ligne : c’est alors le temps du batteur.

## Other kit

way-of-step-twice = cette étape est décrite deux fois { $way }
way-of-step-twice-help = Donnez à chaque autre fiche d’une étape un nom à elle.
sheeter-without-sheet = rien n’est abaissé dans cette étape
sheeter-without-sheet-help = Mettez `sheeter: yes` dans une étape qui a un `sheet`.
friction-unsaid = rien ne dit de combien la pâte se réchauffe { $way }
friction-unsaid-help = Écrivez-le dans cette fiche, par exemple `friction: 2 °C`. Les mains réchauffent moins qu’un batteur, l’eau est donc plus chaude.

## Ce qui était voulu

more-faults = autres défauts dans ce fichier : { $count }
more-faults-help = Corrigez d’abord ceux-ci : les autres s’afficheront ensuite.
names-none = { $they } : rien encore.
names-known = { $they } : { $names }.
names-more = { $they } : { $names } et { $more } de plus.

## Lignes de quantité

link-no-recipe = ce lien ne mène pas à une recette
link-no-recipe-help = Faites un lien vers un fichier à côté de celui-ci : `900 g [layered dough](layered-dough.md)`.
amount-not-whole = la quantité ne se lit pas jusqu’au bout
amount-not-whole-help = Écrivez une quantité, une unité et un ingrédient, comme `250 g butter, cold`, `1 lb 4 oz butter` ou `2 large eggs` ; pour deux ingrédients, écrivez deux lignes.
no-amount = aucune quantité ne se lit ici
no-amount-help = Mettez-en une avant le nom, comme dans `250 g butter, cold` ; si vous n’en voulez pas, écrivez `{ $name }, as needed`.
heaped-spoon = on ne sait pas ce que tient une cuillère bombée
heaped-spoon-help = Arasez-la, et écrivez combien de cuillères rases cela fait : `2 tbsp cocoa`.
unknown-vessel = on ne sait pas ce que tient ce récipient
unknown-vessel-help = Remplissez-le d’eau, et écrivez ce que vous mesurez : `250 ml buttermilk`.
old-measure = on ne sait pas ce que vaut cette mesure ancienne : elle a changé selon les temps et les lieux
old-measure-help = Écrivez le poids en grammes : `250 g beurre`.

## En-têtes, titres, tickets

head-begin-help = Commencez par une ligne `---`, des lignes comme `title: Crescents`, et une ligne `---`.
head-file-empty = ce fichier est vide
head-does-not-begin = l’en-tête ne commence pas : la première ligne d’un fichier est `---`
head-has-no-end = l’en-tête n’a pas de fin
head-has-no-end-help = Mettez une ligne `---`, trois traits d’union, après sa dernière ligne, avant le texte.
bad-heading = le titre d’une étape commence par `##` et une espace
bad-heading-help = Écrivez `## { $words }`.
ticket-fence = un ticket commence par la ligne `~~~ticket`
ticket-fence-help = Écrivez `~~~ticket` avant sa première ligne et `~~~` après la dernière.
ticket-no-end = ce ticket n’a pas de fin
ticket-no-end-help = Mettez une ligne `~~~` après sa dernière ligne.
stray-ticket = ce ticket n’est sous aucun titre
stray-ticket-help = Un ticket se met juste sous le titre de son étape, comme `## Mix`, et il n’y en a qu’un.

## Fichiers de séance

example-changeover = `5 min`, ou `{"{"} mixer: 10 min, oven: 5 min {"}"}`
example-late = `{"{"} pair 3: 20 min {"}"}`
example-talk = `15 min`, ou `15 min before first-turn`
example-break = `15 min at 19:30`, `15 min between 19:15 and 20:00` ou `15 min`
example-pace = `1.5`, ou `{"{"} first-turn: 1.5 {"}"}` : d’un quart à quatre fois le temps de la recette
example-makes = une liste de `recipe: crescents`, `each: pair`, `pieces: 12`
makes-no-list = `makes` est une liste de recettes
makes-no-list-help = Commencez chacune par `- recipe: crescents`.
example-each = pair (ou baker, ou demonstration)
makes-both = `pieces` et `batches` disent tous deux combien on en fait
makes-both-help = Écrivez l’un des deux.
kit-twice = `{ $name }` figure ici deux fois
kit-twice-help = Dites une seule fois combien il y en a.
kit-no-number = `{ $name }` veut ici un nombre entier
kit-no-number-help = Écrivez `{ $name }: 2`.

## course.yaml

news-no-day = il faut ici un jour, et ce qui est nouveau depuis
news-no-day-help = Écrivez `- 2027-02-15: The buns rest overnight now.`

## Clés et valeurs

no-map = il faut ici des lignes `key: value`
no-map-help = Écrivez une `key: value` par ligne.
no-list = `{ $key }` est une liste
no-list-help = Commencez chacune de ses lignes par `- ` : `{ $example }`.
not-filled-in = `{ $key }` de `{ $name }` n’est pas encore rempli
not-filled-in-help = Écrivez derrière `{ $key }:` ce que dit l’emballage ou votre balance.
not-one-value = `{ $key }` est une seule valeur, non une liste
not-one-value-help = Écrivez-la sur une ligne : `{ $key }: …`.
missing-key = il manque `{ $key }`
missing-key-help = Ajoutez une ligne comme `{ $key }: { $example }`.
no-words-list = il faut ici une liste de mots
no-words-list-help = Si les mots contiennent `: `, mettez-les entre "guillemets droits".
unknown-key = `{ $key }` n’est pas une clé qui a sa place ici
unknown-key-help = Connues ici : { $keys }.
unreadable-value = `{ $value }` ne se lit pas comme une valeur de `{ $key }`
unreadable-value-help = Écrivez-la comme `{ $example }`.

## glossary.yaml

example-title = Croissants
example-meaning = une pause pendant laquelle la pâte se détend

## Le cours lui-même

missing-course = il n’y a pas de `course.yaml`
missing-course-help = Faites-en un avec au moins `title: …` et `summary: …`.

## pantry.yaml

pantry-amount = ceci commence par une quantité, ce que ne fait aucun nom d’ingrédient
pantry-amount-help = Nommez ici l’ingrédient seul, et écrivez la quantité dans la recette : `1 lb 4 oz butter`.
pack-not-said = ce qu’indique l’emballage n’est pas dit ici
pack-not-said-help = Écrivez chaque allergène qu’indique l’emballage ; rien d’autre à côté.

## Images dans les textes

bad-picture = `{ $picture }` ne peut pas être une image ici
bad-picture-help = Nommez un fichier du dossier media qui finit par .jpg ou .png, avec de simples lettres, chiffres et traits d’union : `![what it shows](../media/roll-up.jpg)`.
picture-without-words = il n’est pas dit ce que montre l’image `{ $picture }`
picture-without-words-help = Dites-le en quelques mots, pour qui ne peut pas la voir : dans le texte `![both hands roll it away](../media/roll-up.jpg)`, dans un ticket `picture: roll-up.jpg, both hands roll it away`.

## Texte courant

until-brace = dans `until`, seules les températures, les longueurs et les tailles sont vivantes
until-brace-help = Écrivez `{"{"}5 °C{"}"}` ainsi, et les noms d’ingrédients sans accolades.
too-deep = les listes sont ici imbriquées trop profondément
too-deep-help = Prenez des titres ou moins de niveaux.

## Mises en garde

caution-mark = `{ $mark }` ne sert pas à marquer une citation ici
caution-mark-help = Commencez une mise en garde par le mot lui-même : `> Caution: The tray is hot.` Une citation qui n’en est pas une n’a besoin d’aucune marque.
caution-for-some = une mise en garde se trouve dans une ligne pour certains, ou une telle ligne dans une mise en garde
caution-for-some-help = Une mise en garde est pour tous et n’est jamais repliée : que chacune soit une citation à part.

## Valeurs vivantes

open-brace = cette accolade n’est pas fermée
open-brace-help = Fermez-la : `{"{"}butter{"}"}`. Pour une simple accolade, écrivez `\{"{"}`.
plain-amount = { $words } est ici du simple texte et ne changera pas avec les unités
plain-amount-help = Écrivez {"{"}{ $words }{"}"}.

## Recettes

example-recipe-summary = Croissants nature, trois tours, bien cuits.
example-tin = 23 x 13 x 7 cm` ou `9 in round`, un seul moule ; deux se disent dans `makes: 2 x 9 in round
tin-twice = `makes` dit un autre moule
tin-twice-help = Supprimez `tin` : ce que dit `makes` est le moule.
bad-makes = `{ $makes }` n’est pas ce que donne une recette entière
bad-makes-help = Écrivez un nombre entier et un mot, `22 crescents` ; des moules d’une seule taille, `2 x 9 in round` ; ou pour une pâte de base son poids, `1150 g`.
section-without-lines = la section `{ $section }` n’a pas de lignes
section-without-lines-help = Ses lignes viennent en dessous, chacune précédée de `- `, comme `- 500 g bread flour`.
too-many-lines = une formule a { $most } lignes au plus
too-many-lines-help = Faites-en deux recettes : l’une peut être un ingrédient de l’autre.
too-many-sizes = une page offre { $most } tailles, avec celle qui est écrite ; laissées de côté : { $sizes }
too-many-sizes-help = Nommez celles que l’on demande le plus ; les autres s’obtiennent par `tourier handout --pieces { $size }`.
note-open = cette note sur { $recipe } n’est pas encore reprise
note-open-help = Reprenez-la dans la recette, et dites-le : `tourier note { $recipe } "taken up { $number }"`. Vous seul la voyez.
note-of-nothing = il n’y a pas de recette `{ $name }` à laquelle ces notes se rapportent
note-of-nothing-help = Donnez au texte le nom de sa recette, comme dans `recipes/crescents.bench.txt`.
note-without-day = cette ligne n’est pas lue comme une note : elle ne commence pas par son jour
note-without-day-help = Écrivez `2027-03-03 baked 2 min longer` ; ou commencez par `#` ce qui n’est que pour vous.
line-run-on = cette ligne est lue comme une partie de celle du dessus
line-run-on-help = Commencez-la par `- ` : `- { $line }`.
line-not-one = cette ligne ne se lit pas comme une seule ligne de quantité
line-not-one-help = Mettez toute la ligne entre "guillemets droits" : un deux-points suivi d’une espace veut dire ici autre chose.
video-without-address = il faut ici l’adresse d’une vidéo
video-without-address-help = Écrivez `- roll-up: https://…`.
video-start = `{ $said }` derrière l’adresse d’une vidéo ne se lit pas
video-start-help = Écrivez où commencer, comme l’horloge de la vidéo le montre : `https://… from 8:25`, ou `from 1:02:05`.
accept-without-reason = un défaut s’accepte avec une raison
accept-without-reason-help = Écrivez `{ $name }: "the reason"`.
too-many-headings = une recette a { $most } titres au plus
too-many-turns = une pâte a { $most } tours au plus
too-many-turns-help = De trois à six, les couches sont assez fines ; avec plus, elles redeviennent farine et matière grasse.
same-heading = une autre étape a le même titre
same-heading-help = Distinguez-les : `Second turn`, `Third turn`.
names-steps = Étapes présentes
unknown-step = il n’y a pas d’étape `{ $step }` dans cette recette

## Formes à soi

example-shape = crescent, notch 1 cm, stretch 1/4, curved (ou baton, spiral, twist, knot, plait of 3, pinwheel, envelope, pocket, turnover, folded square, ring, round, oval, tin, filled ball, ou le nom d’une forme dans une technique)
shape-without-frames = une forme a une `piece` et de deux à six `frames`
shape-without-frames-help = Donnez la taille de la pièce que vous dessinez, et pour chaque stade ce que l’on fait et ses points en cm, comme `dough: 0 0, 12 0, 12 8, 0 8`.
shape-drawn-and-pictures = certains stades de cette forme sont dessinés et d’autres sont des images
shape-drawn-and-pictures-help = Dessinez-les tous, ou prenez une image de chacun.
example-stage = Rabattez le bord proche au milieu.
bad-stage = un stade montre sa `dough` ou une `picture`, et chaque `arrow` a deux points
bad-stage-help = Écrivez le contour par ses coins, en cm depuis le coin proche de gauche : `dough: 0 0, 12 0, 12 8, 0 8` ; ou montrez-le : `picture: roll-up.jpg, both hands roll it away`.

## Techniques

example-technique-summary = Trois parties, l’une sur l’autre.
bad-drawing = il n’y a pas assez ici pour dessiner
bad-drawing-help = Un dessin a une `sheet` et un `turn`, des `turns`, une `cut`, un `roll`, une `shape`, des pièces `per tray`, ou un `lock-in` avec son `block`.

## Lignes des tickets

ticket-line-twice = `{ $key }` figure ici deux fois
ticket-line-twice-help = Gardez une des deux lignes.
ticket-beside-proof = un apprêt à plusieurs températures a déjà ses durées et ses chaleurs, et n’est pas une cuisson : `{ $key }` ne peut pas figurer à côté
ticket-beside-proof-help = Écrivez `proof: 5 °C, 12 h in the fridge; then 26 °C, 90 min in the proofer` seul ; une cuisson et un refroidissement ont leurs propres étapes.
ticket-no-key = cette ligne n’est pas `key: value`
ticket-no-key-help = Écrivez par exemple `hands: 10 min`.
ticket-no-value = `{ $key }` n’a pas de valeur
ticket-no-value-help = Écrivez la valeur après le deux-points, ou supprimez la ligne.
example-turn = book (ou letter, half, ou un nombre de parties de 2 à 12 ; un tour double peut dire `book, ends meet at 1/3`)
example-roll = same way (ou quarter turn, ce qui est l’usage)
example-lock-in = envelope (ou letter, ou book ; inverted book pour la matière grasse à l’extérieur)
example-divide = half for crescents, the rest for batons (ou 12 pieces)
unknown-line = `{ $key }` n’est pas une ligne qu’un ticket peut contenir
unknown-line-help = Un ticket peut contenir : { $keys }.

## Fichiers de messages

words-unreadable = ceci ne se lit pas
words-unreadable-why = ceci ne se lit pas : { $reason }
words-unknown-form = un message se compose ici de mots, de `{"{"} $name {"}"}` et de choix selon `{"{"} $name -> {"}"}`

## YAML

yaml-no-space = il n’y a pas d’espace après le `-`
yaml-no-space-help = Écrivez `- { $line }: …`.
yaml-run-on = cette ligne est lue comme une partie de celle du dessus, car son `-` est plus à droite
yaml-run-on-help = Mettez le `-` de toutes les lignes d’une liste à la même colonne, chacun suivi d’une espace.
yaml-help = Chaque ligne est `key: value` ; les lignes qui vont ensemble commencent à la même colonne, en retrait par des espaces. Mettez entre "guillemets droits" une valeur qui contient `: ` ou commence par un signe comme `[`, `{"{"}`, `*`, `&`, `!`, `%`, `@` ou un guillemet.
yaml-key-twice = la même clé figure ici deux fois
yaml-alias = `*name` et `&name` ne servent pas dans ces fichiers
yaml-tab = le retrait est fait ici par une tabulation ; prenez des espaces
yaml-too-deep = les listes et les clés sont ici imbriquées trop profondément
yaml-too-large = ce fichier est trop grand ou imbriqué trop profondément
bad-yaml = cette ligne ne se lit ni comme `key: value` ni comme un élément d’une liste

## Étourderies en YAML

yaml-open-quote-help = Écrivez `{ $close }` après son dernier mot.
yaml-open-quote = ce guillemet n’est pas fermé
yaml-open-bracket-help = Écrivez `{ $end }` après le dernier mot qu’il contient.
yaml-open-bracket = ce crochet n’est pas fermé
yaml-write-item = Écrivez `- { $rest }`.
yaml-no-space-colon = il n’y a pas d’espace après le deux-points
yaml-no-colon = il n’y a pas de deux-points après la clé
yaml-write = Écrivez `{ $right }`.
yaml-odd-value = une valeur qui contient `: `, ou commence par un signe comme `[` ou `*`, veut dire ici autre chose
yaml-odd-value-help = Mettez-la entre guillemets droits : `{ $right }`.
yaml-column = cette ligne commence à une autre colonne que celles avec lesquelles elle va
yaml-column-help = Faites commencer à la même colonne les lignes qui vont ensemble ; prenez des espaces, pas de tabulations.

## Recettes en cercle

recipe-cycle = cette recette a besoin d’elle-même : { $way }
recipe-cycle-help = Retirez de l’une de ces recettes l’ingrédient qui ramène en arrière.

## Peser

not-counted = `{ $name }` ne se compte pas à la pièce : son poids n’est pas connu
not-counted-help = Écrivez son poids ; ou pesez-en un, et remplissez ceci dans `pantry.yaml` :
    { $entry }
no-batches = `{ $name }` n’est pas une recette et ne se compte donc pas en recettes entières
no-batches-help = On compte ainsi une autre recette : `1 batch [layered dough](layered-dough.md)`.
no-density = on ne sait pas ce que pèse cette mesure ({ $unit }) de `{ $title }`
no-density-help = Écrivez un poids ; ou pesez-en une mesure rase ({ $unit }), et remplissez ceci dans `pantry.yaml` :
    { $entry }
no-anchor = les pourcentages ont besoin d’un poids sur lequel s’appuyer
no-anchor-help = Donnez un poids à une farine de `{ $recipe }` : `500 g bread flour`.

## Allergènes laissés de côté. Ceci touche à la sécurité

allergen-taken-out = `{ $word }` passerait pour être sans : { $missing }
allergen-taken-out-help = Écrivez `{ $name }` dans les recettes où c’est lui que vous voulez dire, et laissez `{ $word }` de côté ici.
allergen-left-out = `{ $name }` devrait contenir, d’après son nom ou son semblable : { $missing } ; ses allergènes ne le disent pas
allergen-left-out-nut = Lisez son emballage, et écrivez tout ce qu’il indique :
    { $entry }
    Si l’emballage lui-même en indique moins, écrivez ce qu’il indique, puis `, read on the pack`. Dites de quel fruit à coque il s’agit.
allergen-left-out-help = Lisez son emballage, et écrivez tout ce qu’il indique :
    { $entry }
    Si l’emballage lui-même en indique moins, écrivez ce qu’il indique, puis `, read on the pack`.

## Ingrédients à soi

example-kind = flour, liquid, fat, egg, sugar, salt ou leavener
example-density = 0.46 g/ml ou 1 tbsp = 6.8 g
example-allergens = ce qu’indique son emballage, avec ces mots : { $words }
pantry-unreadable = `{ $value }` ne se lit pas ici
pantry-unreadable-help = Écrivez { $example }.

## Ingrédients inconnus

known-name = `{ $name }`
unknown-ingredient = `{ $name }` n’est pas dans le garde-manger
unknown-ingredient-help = Si le nom est juste, ajoutez à `pantry.yaml`, une fois rempli ce qu’indique l’emballage :
    { $entry }
unknown-ingredient-one = Vouliez-vous dire { $only } ? Sinon, ajoutez à `pantry.yaml`, une fois rempli ce qu’indique l’emballage :
    { $entry }
unknown-ingredient-several = Vouliez-vous dire { $rest } ou { $last } ? Sinon, ajoutez à `pantry.yaml`, une fois rempli ce qu’indique l’emballage :
    { $entry }

## Fichiers qui ne peuvent pas être lus

unread-link = c’est un lien vers un autre endroit
unread-link-help = Mettez ici le fichier ou le dossier lui-même.
unread-too-much = il y a ici plus de { $files } fichiers, ou plus de { $text } Mio de texte ou de { $pictures } Mio d’images
unread-too-much-help = Rangez le reste ailleurs ; d’un grand cours, faites-en deux.
unread-not-plain = ce n’est pas un fichier ordinaire
unread-picture-link-help = Mettez ici l’image elle-même.
picture-smaller-help = Enregistrez-la plus petite : 3000 pixels de large suffisent largement.
unread-picture-large = elle fait plus de 30 Mio
unread-not-plain-help = Mettez ici un fichier de texte.
unread-name = son nom fait partie d’adresses web, et tous les signes n’y sont pas permis
unread-name-help = N’employez que des lettres de a à z, des chiffres, des traits d’union et des tirets bas, comme `{ $better }`.
unread-large = il fait plus de 1 Mio
unread-large-help = Une recette, c’est une page ou deux de texte.
unread-not-text = ce n’est pas du texte en UTF-8
unread-not-text-help = Enregistrez-le en texte brut, en UTF-8.
unread-zero-byte = il contient un octet nul
unreadable-file = ce fichier n’est pas lu : { $why }

## Polices

unread-typeface-link = c’est un lien vers un autre endroit, ou un dossier
unread-typeface-link-help = Mettez ici la police elle-même.
unread-typeface-large-help = Prenez-en une qui a moins de lettres : une partie de celle-ci, pour une seule langue.
unread-typeface-large = elle fait plus de 20 Mio

## Fichiers que personne ne lit

unread-file = personne ne lit ce fichier
unread-file-help = Sous le nom `{ $better }`, il serait lu.

## Lettres

no-typeface = il n’y a pas de police `{ $name }`
no-typeface-help = Il y a : { $families }. Mettez ses fichiers .ttf ou .otf dans content/media pour en ajouter une.
no-glyph = les polices n’ont pas `{ $sign }` : les fiches impriment { $stand_in } à sa place
no-glyph-help = Écrivez-le autrement, ou mettez dans content/media une police qui l’a.

## Images abîmées

unreadable-picture = ce fichier n’est pas une image que l’on peut montrer
unreadable-picture-help = Enregistrez-la en JPEG ou en PNG.
broken-picture = cette image est coupée ou abîmée : toutes ses lignes n’y sont pas
broken-picture-help = Copiez-la de nouveau d’où elle vient, ou enregistrez-la de nouveau en JPEG ou en PNG.
picture-too-large = cette image a plus de 60 millions de pixels

## Fiches longues

card-two-sides = la fiche de poste de cette recette ne tient pas sur une face
card-two-sides-help = Elle continue au verso. Des repères plus courts (`until`), ou deux recettes dont l’une est un ingrédient de l’autre, la ramènent à une face.
long-sheet = la fiche d’élève de cette recette prend plus de { $most } faces
long-sheet-help = Elle continue sur une autre face. Des paragraphes plus courts aident, et aussi `included: by name only` dans l’en-tête, si ce qui y entre a sa propre fiche.

## L’édition d’avant

faulty-edition = l’édition dans `{ $folder }` a des erreurs ; aucune fiche ne dit donc ce qui a changé depuis
faulty-edition-help = Voyez-les avec `tourier proof --content` et son dossier.
missing-edition = il n’y a pas de dossier `{ $folder }` dans le dossier de contenu
missing-edition-help = Copiez-y l’ancien contenu, ou laissez cette ligne de côté.

## Images sur papier

coarse-picture = `{ $picture }` a { $dots } points de large, ce qui est grossier sur papier
coarse-picture-help = Prenez une image plus grande, de 1000 points de large ou plus ; ou ne la mettez pas sur papier : `print: no`.
faint-picture = en gris, `{ $picture }` est presque tout entière d’une seule clarté
faint-picture-help = Sortie d’un copieur, personne ne verra ce qu’elle montre. Prenez-la sous une meilleure lumière, ou ne la mettez pas sur papier : `print: no`.

## Variantes d’une recette

in-this-way = dans la variante `{ $way }` : { $message }
unknown-way = `{ $recipe }` n’est pas proposée dans une variante `{ $way }`
names-ways = Ses variantes
ways-at-odds = la variante `{ $way }` change une ligne qu’une autre a déjà changée
ways-at-odds-help = Prenez l’une des deux, ou écrivez un échange qui fait les deux.
swap-of-nothing = rien ici ne s’appelle `{ $name }` : rien ne peut en prendre la place
names-lines = Les lignes ici
swap-of-several = `{ $name }` figure dans plusieurs sections : { $sections }
swap-of-several-help = Dites laquelle : `{ $name } in { $section }`. Écrivez une ligne pour chacune.
swap-leaves-nothing = la variante `{ $way }` ne laisse rien de la formule
swap-leaves-nothing-help = Écrivez-y ce qui est pris à la place, par exemple `140 g oat drink for whole milk`.
swap-without-lines = l’échange `{ $name }` ne change rien
swap-without-lines-help = Ses lignes se placent dessous, chacune précédée de `- ` : `- 140 g oat drink for whole milk`, `- 30 g water in dough` ou `- without walnuts`.
way-still-told = cette étape parle de { $name }, que la variante `{ $way }` n’a pas
way-still-told-help = Écrivez l’ingrédient entre accolades, comme `{"{"}whole milk{"}"}` : chaque variante dit alors le sien. Ou nommez-le par son rôle, par exemple le liquide.

## Traductions. Les mises en garde touchent à la sécurité

translates-nothing = rien ne dit quel texte « { $title } » traduit
translates-nothing-help = Écrivez dessous, dans un ticket, `translates: mix-the-dough` avec le nom de l’étape ou du titre d’origine : les textes ne sont jamais rapprochés par leur ordre.
translation-unknown = il n’y a pas de texte `{ $name }` à traduire
translation-unknown-help = Écrivez le nom de l’original : pour une étape son titre en minuscules avec des traits d’union, pour un fichier son nom.
translation-not-named = personne ne lit ce dossier : le cours ne nomme pas la langue `{ $language }`
translation-not-named-help = Écrivez `also in: { $language }` dans `course.yaml`, ou enlevez le dossier.
translation-no-file = ces textes ne sont pas traduits : { $files }
translation-no-file-help = Ils paraissent dans la première langue. Écrivez { $first } et ainsi de suite, ou nommez dans `also in` ce qui existe dans cette langue.
translation-no-part = ces parties ne sont pas traduites : { $titles }
translation-no-part-help =
    Elles paraissent dans la première langue. Écrivez chacune dans votre langue, sous son titre :
    { $blocks }
translation-behind = « { $title } » n’a pas été fait d’après l’original tel qu’il est maintenant
translation-behind-help = Relisez l’original et corrigez ce texte s’il le faut ; puis écrivez `mark: { $mark }`. D’ici là, ses mises en garde et ce qui dit que c’est prêt paraissent dans la première langue.
translation-numbers = « { $title } » et son original ne disent pas les mêmes nombres : { $numbers }
translation-numbers-help = Dites-les comme l’original, en chiffres ou entre accolades. D’ici là, c’est l’original qui paraît.
translation-caution = mises en garde dans l’original de « { $title } » : { $there } ; ici : { $here }
translation-caution-help = Commencez chacune par le mot, comme dans `> Attention :`. D’ici là, celles de l’original paraissent aussi.
untranslated-words =
    { $count ->
        [one] { $count } texte court n’a pas de mots dans cette langue
       *[other] { $count } textes courts n’ont pas de mots dans cette langue
    }
untranslated-words-help =
    Ils paraissent comme ils sont écrits. Écrivez comment chacun se dit, dans `{ $file }` :
    { $block }
translation-key-help = Une traduction ne contient que de la prose. Ses tickets disent `translates`, `mark` et `until` ; nombres, tailles et durées viennent de l’original.
