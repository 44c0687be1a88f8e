### Plans des séances et des cuissons à la maison, commandes, pesées.

crew-baker = participant
crew-pair = binôme
crew-three = trio
crew-four = quatuor
crew-group = groupe
crews-baker =
    { $count ->
        [one] { $count } participant
       *[other] { $count } participants
    }
crews-pair =
    { $count ->
        [one] { $count } binôme
       *[other] { $count } binômes
    }
crews-three =
    { $count ->
        [one] { $count } trio
       *[other] { $count } trios
    }
crews-four =
    { $count ->
        [one] { $count } quatuor
       *[other] { $count } quatuors
    }
crews-group =
    { $count ->
        [one] { $count } groupe
       *[other] { $count } groupes
    }
who-instructor = formateur
who-helper = aide
who-staff = formateur ou aide
who-home = vous
who-baker =
    { $count ->
        [one] participant { $numbers }
       *[other] participants { $numbers }
    }
who-pair =
    { $count ->
        [one] binôme { $numbers }
       *[other] binômes { $numbers }
    }
who-three =
    { $count ->
        [one] trio { $numbers }
       *[other] trios { $numbers }
    }
who-four =
    { $count ->
        [one] quatuor { $numbers }
       *[other] quatuors { $numbers }
    }
who-group =
    { $count ->
        [one] groupe { $numbers }
       *[other] groupes { $numbers }
    }
who-member = { $who }, participant { $number }
hands-home = vos mains
plan-done = Fait
plan-of = { $recipe } : { $what }
plan-into = { $title } : mettre ici : { $place }
plan-out = { $title } : sortir d’ici : { $place }
plan-arrival = Arrivée
plan-talk = Exposé
plan-break = Pause
plan-tasting = Dégustation
plan-washing = Vaisselle
plan-oven-on =
    { $count ->
        [one] Allumer le four { $ovens } : { $heat }
       *[other] Allumer les fours { $ovens } : { $heat }
    }
plan-oven-to =
    { $count ->
        [one] Four { $ovens } à { $heat }
       *[other] Fours { $ovens } à { $heat }
    }
plan-watch = Regarder : { $what }
plan-oven =
    { $count ->
        [one] four { $oven } avec { $count } plaque
       *[other] four { $oven } avec { $count } plaques
    }
plan-heat = { $heat } : { $ovens }
kit-instructor = formateur
kit-bench-place = place au plan de travail
kit-mixer = pétrin
kit-oven = four
kit-tray-per-oven = plaque par four
kit-trays = plaque ({ $place })
standing-best = prouvé : aucun plan n’est meilleur
standing-nearest = prouvé : aucun plan n’est plus près des temps de la recette
standing-nearer = un plan sûr ; un autre pourrait être plus près des temps de la recette de { $minutes } min au plus
standing-sound = un plan sûr : { $rests }{ $grid }, { $moments } débuts différents (aucun plan n’en a moins de { $fewest }), { $waiting } d’attente (aucun plan n’en a moins de { $least }) ; aucun plan ne finit avant { $end }
standing-rests = chaque repos comme d’habitude
standing-rests-short = repos plus courts que d’habitude de { $minutes } min en tout
standing-off-grid = {", "}à la minute près pour que cela tienne
standing-never = prouvé : aucun plan ne tient
standing-unknown = indécis : aucun plan n’a été trouvé, et il n’est pas prouvé qu’il n’y en a pas
reason-chain = les étapes se suivent plus longtemps que ne durent les séances, quel que soit le matériel : il manque { $minutes } min à la séance { $session }
reason-apart = les étapes, leurs attentes et les démonstrations n’entrent pas dans ces séances, quel que soit le matériel : une attente qui ne peut se prolonger ne dure pas d’une séance à l’autre
reason-kit = trop peu de ce matériel pour { $steps } : { $kit }, il y en a { $have } ; cela tient avec { $need }, et pas avec moins
reason-step = « { $title } »
reason-together = aucun matériel n’est seul en cause : plusieurs manquent ensemble
reason-over = ce qui reste ne finit pas avec la séance : il manque { $minutes } min à la séance { $session } ; voici plus bas le plan qui déborde
reason-hours = levé de { $from } à { $to }, il ne reste pas jusqu’à { $ready } de temps où chaque étape, et chaque déplacement, ne vient ni trop tôt ni trop tard pour son attente
reason-waits = ses étapes ne se suivent pas dans leurs attentes, quelles que soient les heures
remedy-fits = { $change }, cela tient
remedy-fits-by = { $change }, cela tient et finit à { $end }
remedy-more =
    { $count ->
        [one] avec { $count } de plus de ce matériel ({ $kit })
       *[other] avec { $count } de plus de ce matériel ({ $kit })
    }
remedy-session = avec une séance de plus, { $date } de { $from } à { $to }
remedy-bakers =
    { $count ->
        [one] avec { $count } participant au plus
       *[other] avec { $count } participants au plus
    }
remedy-without = sans { $recipe }
remedy-end = { $time } le { $day }
remedy-together-2 = en travaillant à deux
remedy-together-3 = en travaillant à trois
remedy-together-4 = en travaillant à quatre
remedy-together-5 = en travaillant à cinq
remedy-no-demonstration = sans la fournée du formateur
remedy-no-talk = sans les exposés
remedy-no-break = sans les pauses
remedy-no-tasting = sans la dégustation
remedy-no-slack = sans la marge à la fin
remedy-hold = avec une attente possible pendant la nuit (`hold: up to 24 h`) à « { $title } » ({ $recipe })
remedy-longer = si la séance { $session } dure { $minutes } min de plus
remedy-stop = en arrêtant là { $who }
remedy-ready = prêt à { $time } le { $day }
remedy-up = en se levant à { $time }
remedy-stay-up = en veillant jusqu’à { $time }
evening-head = { $title } : { $time }, le { $day }
evening-changed = ce qui change
evening-unchanged = rien ne change
evening-shift = { $who } : { $what } à { $to }, et non à { $from } ({ $why })
evening-why-after = vient après « { $title } »
evening-why-busy = pas libre avant : { $what }
evening-why-hands = les mains prises jusque-là
evening-why-oven = pas de four libre avant
evening-why-now = pas encore commencé
evening-why-together = ensemble avec d’autres
evening-next = les 30 minutes qui viennent
evening-nothing = rien
evening-later = plus tard
plan-note-shortened = « { $title } » a { $lasts } au lieu de { $usual }, dans ses limites : ailleurs cela attendrait trop
plan-note-other-days = aucun plan ne tient dans les jours que nomme la recette : celui-ci respecte chaque attente, à d’autres jours
plan-note-shared = { $title } se fait en une fois : { $parts }. Pour ces { $taken }, pétrissez { $mixed } ; le reste se perd en route.
plan-note-too-long = { $who } : { $title } a déjà duré plus que son temps le plus long
plan-note-crowded = ce qui est déjà commencé demandera plus de plaques qu’il n’y en a : trouvez-lui une place
plan-note-usual = si la séance { $session } dure { $minutes } min de plus, chaque repos est aussi long que d’habitude
plan-note-oven-in-break = à { $time }, pendant une pause, quelque chose doit sortir du four : quelqu’un reste à côté
plan-note-uncounted = la séance ne compte pas ce matériel, { $kit } : le plan suppose qu’il y en a assez
plan-note-unused = rien de ce qui se fait dans cette séance ne demande ce matériel : { $kit }
plan-note-stopped = la recherche a été arrêtée : voici le meilleur plan trouvé
plan-by-short = repos plus courts que d’habitude
plan-by-moments = minutes différentes où quelque chose commence
plan-by-waiting = attente au-delà des temps des recettes
plan-by-away = écart aux temps de la recette, toutes attentes réunies
plan-by-end = de la première ouverture à la fin
plan-by-lead = de la première étape jusqu’à ce que ce soit prêt
plan-measured = { $what } : { $time }
plan-why = pourquoi : { $reason }
plan-help = ce qui aiderait : { $remedy }
plan-note = note : { $note }
plan-all-watch = { $what } (tous regardent)
plan-closes = à la fin de la séance, { $date } { $time }
plan-left = { $what } ({ $count })
plan-summary = { $who } : { $what }
plan-about = { $title } ({ $oven })
as-needed = selon besoin
order-head = { $title } : { $bakers } participants, { $pieces } pièces, { $spare } % de réserve, dans les bacs aussi
order-head-home =
    { $pieces ->
        [0] { $title }
        [one] { $title } : { $pieces } pièce
       *[other] { $title } : { $pieces } pièces
    }
order-to-buy = à acheter
order-count = { $count } ({ $weight })
order-left = reste { $weight }
order-total = total { $sum }
order-a-student = { $sum } par élève
order-a-piece = { $sum } la pièce
order-unpriced = sans prix : { $names }
order-weigh = à peser, { $sets } × { $title } ({ $each })
order-weigh-home = à peser : { $title }
order-weigh-table =
    { $sets ->
        [one] pesées : { $title } pour chaque { $each } ({ $sets } lot)
       *[other] pesées : { $title } pour chaque { $each } ({ $sets } lots)
    }
each-group = groupe
each-baker = participant
each-demonstration = démonstration
order-ingredient = ingrédient
order-need = besoin (g)
order-shelf = en réserve (g)
order-pack = paquet (g)
order-packs = paquets
order-left-over = reste (g)
order-cost = coût
order-currency = monnaie
order-sum = total
order-step = étape
order-recipe = recette
order-grams = grammes
order-in-words = en mots
