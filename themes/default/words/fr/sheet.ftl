### Ce qui figure sur chaque fiche : lignes des étapes, remarques, mises en garde.

hands = Travail
wait = Attente
where = Où
at = À
hold = Peut attendre
day = Jour
kit = Matériel
sheet = Abaisser à
roll = Sens
thickness = Épaisseur
lock-in = Beurrage
turn = Tour
layers = Couches de matière grasse
plies = Couches de pâte
cut = Détailler
divide = Diviser
part = De la pâte
oven = Four
fan = Chaleur tournante
bake = Cuisson
trays = Plaques
core = À cœur
cool = Refroidir
mix = Batteur
water-at = Eau à
sheeter = Laminoir
ph = pH
dough-temperature = Pâte à
weight-loss = Perd
growth = Gonfle
day-before = { $time } la veille
days-before =
    { $count ->
        [one] { $time }, { $count } jour avant
       *[other] { $time }, { $count } jours avant
    }
batch =
    { $count ->
        [one] { $number } recette
       *[other] { $number } recettes
    }
tins =
    { $count ->
        [one] { $number } moule, { $tin }
       *[other] { $number } moules, { $tin }
    }
tin-round = rond { $size }
tin-square = { $size }
tin-ring = couronne { $size }, trou { $hole }
pieces-range = { $pieces } ({ $range })
the-section = { $name }
at-temperature = à { $temperature }
hold-up-to = jusqu’à { $time }
hold-in = jusqu’à { $time }, { $place }
hold-thaw = { $hold }, puis décongeler { $time }, { $place }
place-basket = banneton
place-bench = plan de travail
place-cold-room = chambre froide
place-counter = comptoir
place-freezer = congélateur
place-fridge = frigo
place-oven = four
place-proofer = étuve
place-rack = grille
used-instructor =
    { $count ->
        [one] { $count } formateur
       *[other] { $count } formateurs
    }
used-bench-place =
    { $count ->
        [one] { $count } place au plan de travail
       *[other] { $count } places au plan de travail
    }
used-mixer =
    { $count ->
        [one] { $count } pétrin
       *[other] { $count } pétrins
    }
used-oven =
    { $count ->
        [one] { $count } four
       *[other] { $count } fours
    }
used-tray-per-oven =
    { $count ->
        [one] { $count } plaque par four
       *[other] { $count } plaques par four
    }
used-trays =
    { $count ->
        [one] { $count } plaque ({ $place })
       *[other] { $count } plaques ({ $place })
    }
so-many-days = { $count } jours
day-of = { $day } sur { $days }
lock-in-envelope = en enveloppe
lock-in-letter = en trois
lock-in-book = en deux volets
lock-in-inverted = { $name }, beurre à l’extérieur (inversé)
turn-book = tour double
turn-letter = tour simple
turn-half = pli en deux
turn-meet = { $name }, bords réunis à { $at } de la longueur
roll-same-way = dans le même sens qu’avant le pliage
cut-into = { $pieces } { $shape }, { $size }
divide-part = { $weight } pour { $name }
divide-share = { $weight }
divide-pieces =
    { $count ->
        [one] { $count } pièce de { $weight }
       *[other] { $count } pièces de { $weight }
    }
shape-triangle =
    { $count ->
        [one] triangle
       *[other] triangles
    }
shape-right-triangle =
    { $count ->
        [one] triangle rectangle
       *[other] triangles rectangles
    }
shape-rectangle =
    { $count ->
        [one] rectangle
       *[other] rectangles
    }
shape-square =
    { $count ->
        [one] carré
       *[other] carrés
    }
shape-round =
    { $count ->
        [one] disque
       *[other] disques
    }
shape-strip =
    { $count ->
        [one] bande
       *[other] bandes
    }
trays-in-loads =
    { $loads ->
        [one] { $trays }, en { $loads } fournée
       *[other] { $trays }, en { $loads } fournées
    }
trays-in-rows = { $trays }, en rangées de { $rows }
mix-phase = { $speed } { $time }
speed-first = 1re vitesse
speed-second = 2e vitesse
speed-third = 3e vitesse
speed-low = vitesse lente
speed-medium = vitesse moyenne
speed-high = vitesse rapide
weight-loss-to = { $value }, à { $weight } par pièce
other-also =
    { $count ->
        [one] { $name } (aussi à l’étape { $steps })
       *[other] { $name } (aussi aux étapes { $steps })
    }
growth-half = de moitié
growth-double = jusqu’au double
growth-triple = jusqu’au triple
growth-by = de { $share }
note-yeast = À la place de { $weight } de { $name } : { $of-one } de { $one }, ou { $of-two } de { $two }.
note-left-over = À { $piece } pièce, sur { $pieces } il reste { $rest }.
nothing = rien
note-open-flour = Aucun poids n’est donné pour { $names }. Il n’y a donc ni pourcentages du boulanger, ni hydratation, ni poids d’une pièce.
note-open-weight = Aucun poids n’est donné pour { $names }. Il n’y a donc ni hydratation ni poids d’une pièce.
note-boiling = À { $height } d’altitude l’eau bout à { $boils }. Retirez { $drop } à chaque température de cuisson d’un sirop. Une crème aux œufs prend à la même température que partout, mais ce qui mijote cuit plus lentement.
note-tin-depth = La profondeur d’un des deux moules n’est pas connue ; on les suppose de même profondeur. Comparez-les avant d’en remplir un.
note-half-pieces =
    { $whole ->
        [one] Les bouts des rangées sont { $halves } demi-pièces. Pressées l’une contre l’autre, pointes du même côté, elles donnent { $whole } pièce de plus.
       *[other] Les bouts des rangées sont { $halves } demi-pièces. Pressées deux à deux, pointes du même côté, elles donnent { $whole } pièces de plus.
    }
note-ranges = Quand une ligne donne deux quantités, les sommes comptent leur milieu.
note-whole-rows = La dernière abaisse se compose de rangées entières : elle donne { $made } pièces, soit { $more } de plus que les { $asked } demandées. La formule vaut pour toutes.
note-reroll =
    { $pieces ->
        [1] Abaissées une fois de plus à { $size }, les chutes en donnent une de plus. Laissez-les d’abord reposer.
       *[other] Abaissées une fois de plus à { $size }, les chutes en donnent { $pieces } de plus. Laissez-les d’abord reposer.
    }
cool-rule = { $what } : de { $hot } à { $warm } en { $first } au plus, à { $cold } en { $all } au plus en tout
caution-allergens-unknown = Pour certains ingrédients, les allergènes ne sont pas connus. Lisez les emballages et renseignez-vous avant d’en servir à qui que ce soit.
caution-raw-egg = L’œuf cru peut porter des germes. Gardez-le au froid, ne goûtez pas ce qui en contient cru, et lavez les mains, les récipients et les pinceaux qu’il a touchés.
caution-raw-flour = La farine crue n’est pas prête à être mangée. Ne goûtez pas la pâte crue et nettoyez le plan de travail où elle a reposé.
caution-cooling = Les crèmes cuites doivent refroidir vite et rester froides. Refroidissez dans des plats peu profonds, mesurez au thermomètre, et jetez ce qui a dépassé son temps.
caution-thawing = Ce qui a été congelé se décongèle couvert au réfrigérateur, jamais sur le plan de travail, et ne se recongèle pas.
caution-core = Mesurez la température à cœur avec une sonde propre, à l’endroit le plus épais.
caution-heat = Fours, plaques et moules brûlent longtemps après avoir l’air froids. Prenez des torchons secs, et ouvrez la porte du four en vous tenant de côté.
caution-blades = Coupez sur une planche stable, les doigts derrière la lame, et passez un couteau en le posant.
caution-local-rules = Si les règles sanitaires locales diffèrent de cette fiche, suivez les règles locales et demandez à ceux qui sont habilités à les appliquer.
video-from = à partir de { $time }
note-fat-firm = Le beurre de tourage se bat jusqu’à plier sans casser, vers { $at }. La pâte doit être aussi ferme que lui.
note-fewer-pieces = Tant de pâte donne { $made } sur son abaisse, sa part serait { $share }.
note-too-small = Si peu de pâte fait une abaisse trop petite pour une seule pièce coupée ainsi. Faites une recette entière, ou coupez pour un moule plus petit.
of-whole-batch = { $value } (avec une recette entière)

## Variantes

note-way = Autre façon, { $name } : { $changes }.
made-without = Préparé sans { $names }.
made-without-kit = Les mêmes locaux, le même matériel et les mêmes mains travaillent à d’autres moments avec ce qui est laissé de côté : des traces sont possibles. Demandez avant d’en servir à quelqu’un qui ne doit pas en manger.
way-instead = { $new } à la place de { $old }
way-beside = { $new } en plus, dans { $old }
way-without = sans { $old }
left-out = { $name } (laissé de côté)
amount-of = { $amount } { $name }

## Cuissons en plusieurs temps

bake-then = { $one }, puis { $two }
bake-steam = avec buée
bake-door = porte entrouverte
bake-turn = tourner la plaque
bake-more = { $time } de plus si { $looks }
