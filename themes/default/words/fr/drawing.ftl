### Les dessins, et les dessins lus à haute voix.

drawing-lock-in = Beurrage
drawing-turn = Tour
drawing-cut = Plan de coupe
drawing-timeline = Déroulement
drawing-by = sur
drawing-numbered = { $number } : { $text }
drawing-sentence = { $text }.
drawing-before = L’abaisse
drawing-folding = Pliage, vu de côté
drawing-after = Le pâton
drawing-spine = dos
drawing-open-end = bout ouvert
drawing-edge-fold = pli
drawing-edge-folds =
    { $count ->
        [1] un pli
       *[other] { $number } plis
    }
drawing-edge-ends =
    { $count ->
        [1] un bord libre
       *[other] { $number } bords libres
    }
drawing-fat-layers = Couches de matière grasse
drawing-plies = Couches de pâte
drawing-growth = { $before } → { $after }
drawing-next-quarter-turn = Ensuite un quart de tour, puis abaissez dans le sens de la flèche : le côté de { $side } s’allonge.
drawing-next-same-way = Ensuite, sans quart de tour : abaissez dans le sens de la flèche, le côté de { $side } s’allonge.
drawing-next-any-way = Ensuite, abaissez dans le sens que vous voulez.
drawing-roll-turned = D’abord un quart de tour : les bouts ouverts à gauche et à droite.
drawing-lay-in = Poser le beurre
drawing-lay-in-dough = Poser la pâte
drawing-close = Fermer, vu de côté
drawing-closed = Fermé
drawing-dough = pâte
drawing-fat = beurre
drawing-dough-thick = Pâte : { $thickness }
drawing-dough-block = Pâte : { $size }, { $thickness }
drawing-fat-thick = Beurre : { $thickness }
drawing-fat-block = Beurre : { $size }, { $thickness }
drawing-seam-note = Pointillé : clé, à souder.
drawing-envelope-order = Rabattez les coins dans cet ordre. Ils se rejoignent au milieu.
drawing-cut-pieces =
    { $count ->
        [one] { $count } pièce, { $piece }, { $weight }
       *[other] { $count } pièces, { $piece }, { $weight } chacune
    }
drawing-cut-all =
    { $count ->
        [one] { $count } pièce de toutes les abaisses
       *[other] { $count } pièces de toutes les abaisses
    }
drawing-cut-scrap = Pointillé : chutes, { $percent }
drawing-far-edge = bord éloigné
drawing-near-edge = bord proche, { $length }
drawing-marked-edges = Repères : { $edges }.
drawing-edge-both-long = les deux longs bords, depuis le coin gauche
drawing-edge-near = bord proche, depuis le coin gauche
drawing-edge-far = bord éloigné, depuis le coin gauche
drawing-edge-both-sides = les deux petits côtés, depuis le coin proche
drawing-edge-left = côté gauche, depuis le coin proche
drawing-edge-right = côté droit, depuis le coin proche
drawing-along = dans la longueur de l’abaisse
drawing-across = en travers
drawing-rising = en biais, de près à gauche vers loin à droite
drawing-falling = en biais, de loin à gauche vers près à droite
drawing-cut-one = Coupe { $first } : { $way }.
drawing-cuts = Coupes { $first } à { $last } : { $way }.
drawing-cut-out = Découpez les pièces comme dessiné.
drawing-hands-on = travail
drawing-waiting = attente
drawing-may-hold = peut attendre
drawing-sums = { $elapsed } en tout : { $hands } de travail, { $wait } d’attente
drawing-lasts-hands = { $hands } de travail
drawing-lasts-wait = { $wait } d’attente
drawing-lasts-both = { $hands } de travail, { $wait } d’attente
drawing-roll = Abaisser
drawing-tray = La plaque
drawing-shape-crescent = Croissant
drawing-shape-baton = Bâton
drawing-shape-spiral = Escargot
drawing-shape-twist = Torsade
drawing-shape-knot = Nœud
drawing-shape-plait-of-3 = Tresse à trois brins
drawing-shape-plait-of-4 = Tresse à quatre brins
drawing-shape-pinwheel = Moulin
drawing-shape-envelope = Enveloppe
drawing-shape-pocket = Pochette
drawing-shape-turnover = Chausson
drawing-shape-folded-square = Carré plié
drawing-shape-ring = Couronne
drawing-shape-round = Boule
drawing-shape-oval = Bâtard
drawing-shape-tin = Pain moulé
drawing-shape-filled-ball = Boule fourrée
drawing-from-above = Vu de dessus
drawing-from-the-side = Vu de côté
drawing-bench-ends = le plan de travail finit ici, { $bench }
drawing-roll-from = De { $size }, épaisseur { $thickness }
drawing-roll-to = À { $size }, épaisseur { $thickness }
drawing-growth-title = Comment les couches se multiplient
drawing-growth-note = En coupe, sans échelle. Où les traits se confondent, il y en a trop pour les dessiner.
drawing-oven-loads = Fournées
drawing-tray-pieces = { $pieces } sur une plaque de { $tray }
drawing-tray-apart = De milieu à milieu : { $along } dans la longueur de la plaque, { $across } en travers
drawing-tray-in-pairs = Par paires, long côté contre long côté ; les repères sont les milieux des paires
drawing-tray-gap = L’apprêt demande un écart de { $along }. Avec lui, { $fits } tiennent sur la plaque
drawing-tray-gaps = L’apprêt demande un écart de { $along } en long et de { $across } en travers. Avec lui, { $fits } tiennent sur la plaque
drawing-tray-gap-only = Il faut un écart de { $along }. Avec lui, { $fits } tiennent sur la plaque
drawing-tray-part = { $part } : { $said }
drawing-tray-alike = { $trays } plaques pareilles
drawing-tray-loads = { $trays } plaques, en { $loads } fournées
drawing-tray-one-load = { $trays } plaques, en une fournée
drawing-does-notch-and-stretch = Entaillez le milieu de la base, sur { $notch }. Étirez la pièce à { $stretched }, la pointe au-dessus du milieu de la base.
drawing-does-notch = Entaillez le milieu de la base, sur { $notch }.
drawing-does-stretch = Étirez la pièce à { $stretched }, la pointe au-dessus du milieu de la base.
drawing-does-stroke-tip = Lissez la pointe jusqu’à ce qu’elle vise le milieu de la base.
drawing-does-roll-triangle = Écartez un peu la base et roulez-la jusqu’à la pointe. N’appuyez pas.
drawing-does-tip-beneath = Posez-le sur sa pointe.
drawing-does-bend-ends = Courbez les deux bouts vers vous.
drawing-does-join-ends = Courbez les deux bouts jusqu’à ce qu’ils se touchent, et soudez-les.
drawing-does-roll-in = Enroulez le premier bâton depuis le petit côté. Posez le second où le tour retombe, et continuez.
drawing-does-seen-from-end = Vu du bout.
drawing-does-seam-beneath = Posez-le sur sa clé, la ligne pointillée.
drawing-does-roll-strand = Roulez un boudin long de { $strand } et épais de { $roll }.
drawing-does-wind = Enroulez-le à plat autour d’un bout, sans serrer. Glissez l’autre bout dessous.
drawing-does-turn-ends = Tournez un bout loin de vous et l’autre vers vous.
drawing-does-set-twist = Posez-la torsadée et appuyez les deux bouts sur la plaque.
drawing-does-knot = Faites une boucle et passez-y un bout.
drawing-does-join-ring = Posez un bout sur l’autre, de sa propre épaisseur, et roulez-les ensemble.
drawing-does-lay-strands = Posez les brins côte à côte, chacun long de { $strand } et épais de { $roll }. Soudez-les au bout éloigné.
drawing-does-cross-three = Passez le brin droit par-dessus celui du milieu, puis le gauche par-dessus le nouveau milieu. Continuez tour à tour.
drawing-does-cross-four = Passez le brin droit par-dessus son voisin et sous le suivant. Passez le gauche par-dessus son voisin. Continuez tour à tour.
drawing-does-tuck-ends = Soudez les bouts et glissez-les dessous.
drawing-does-cut-corners = Entaillez depuis chaque coin, aux deux tiers du chemin vers le milieu. Rabattez une pointe sur deux au milieu, dans cet ordre.
drawing-does-press-middle = Appuyez fermement le milieu.
drawing-does-corners-in = Garnissez le milieu. Rabattez-y les coins dans cet ordre, jusqu’à ce qu’ils se touchent.
drawing-does-two-corners-in = Garnissez le milieu. Rabattez un coin par-dessus, et le coin opposé sur le premier.
drawing-does-fold-over = Garnissez une moitié, loin des bords, et rabattez l’autre moitié dessus.
drawing-does-fold-corner = Garnissez près du pli, puis pliez coin sur coin.
drawing-does-fold-round = Garnissez une moitié, loin du bord, et rabattez l’autre moitié dessus.
drawing-does-press-edges = Soudez les bords pointillés.
drawing-does-gather = Ramenez les bords au milieu, tout autour, et soudez-les.
drawing-does-gather-filling = Garnissez le milieu. Ramenez les bords par-dessus, tout autour, et pincez-les.
drawing-does-turn-over = Retournez-la et boulez-la sous la main : { $roll } de large.
drawing-does-fold-thirds = Rabattez le tiers éloigné au milieu, puis le tiers proche par-dessus.
drawing-does-roll-oval = Clé dessous, allongez-la en roulant du milieu vers les deux bouts.
drawing-does-roll-for-tin = Roulez la pâte à la longueur du moule, { $base }.
drawing-does-set-in-tin = Mettez-la au moule, clé dessous. Elle est prête à cuire quand elle atteint le bord.
drawing-does-own = { "" }
drawing-goes-round = Elle fait { $wraps } tours, et le rouleau est épais de { $roll } au milieu.
drawing-alt-bench = L’abaisse est plus longue que le plan de travail : { $bench }.
drawing-alt-piece = La pièce, { $piece }.
drawing-alt-tin = Le moule, { $piece }.
drawing-alt-growth = Après le beurrage, couches de matière grasse : { $count }.
drawing-alt-grows = Pliée en { $parts } : { $count }.
drawing-alt-sheet = L’abaisse, { $size }, le long côté face à vous.
drawing-alt-turn-sheet = L’abaisse, { $size } : son côté de { $length } va de gauche à droite.
drawing-alt-book = Rabattez le bout gauche et le bout droit jusqu’à ce qu’ils se rejoignent au milieu : chaque pli est à { $part } de son bout. Puis fermez comme un livre, la moitié gauche sur la droite : { $count } épaisseurs, un pâton de { $folded }, le dos à votre gauche.
drawing-alt-book-off-middle = Rabattez le bout gauche à { $first } de la gauche et le bout droit à { $third }, jusqu’à ce qu’ils se rejoignent à { $meet }. Puis fermez comme un livre à { $second }, la moitié gauche sur la droite : { $count } épaisseurs, un pâton de { $folded }, le dos à votre gauche.
drawing-alt-letter = Rabattez le tiers droit sur le milieu, le pli à { $part } du bout. Puis rabattez le tiers gauche sur les deux, comme une lettre : { $count } épaisseurs, un pâton de { $folded }, le dos à votre gauche.
drawing-alt-half = Rabattez la moitié gauche sur la droite, le pli à { $part } du bout : { $count } épaisseurs, un pâton de { $folded }, le dos à votre gauche.
drawing-alt-parts = Marquez { $count } parties de { $part }. Rabattez la partie gauche sur la suivante, et ainsi de suite jusqu’au bout droit : { $count } épaisseurs, un pâton de { $folded }, le dos à votre gauche.
drawing-alt-layers = Couches de matière grasse : { $before } avant, { $after } après.
drawing-alt-plies = Couches de pâte : { $before } avant, { $after } après.
drawing-alt-edges = En face du dos, à votre droite : { $opposite }. Près de vous et loin de vous sont les bouts ouverts, où l’on voit les couches.
drawing-alt-edges-book = Un pli à votre gauche et un pli à votre droite ; la clé passe entre eux sur le dessus. Près de vous et loin de vous sont les bouts ouverts.
drawing-alt-edges-envelope = Il est fermé sur ses quatre côtés ; quatre clés se rejoignent au milieu du dessus.
drawing-alt-next-turned = Ensuite, donnez un quart de tour, les bouts ouverts à gauche et à droite, et abaissez vers eux : le côté de { $side } s’allonge.
drawing-alt-next-along = Ensuite, sans quart de tour : abaissez d’un côté à l’autre, dans le même sens qu’avant. Le côté de { $side } s’allonge.
drawing-alt-next-any = Ensuite, abaissez dans le sens que vous voulez.
drawing-alt-dough =
    { $inverted ->
        [yes] Une plaque de beurre, { $size }, épaisseur { $thickness } ; un pâton, { $block }, épaisseur { $block-thickness }.
       *[no] Une abaisse de pâte, { $size }, épaisseur { $thickness } ; une plaque de beurre, { $block }, épaisseur { $block-thickness }.
    }
drawing-alt-lock-in-envelope =
    { $inverted ->
        [yes] Posez la pâte sur le beurre, ses coins tournés vers le milieu des côtés du beurre. Rabattez les quatre coins du beurre par-dessus, près à gauche, loin à droite, près à droite, loin à gauche, jusqu’à ce qu’ils se rejoignent au milieu.
       *[no] Posez le beurre sur la pâte, ses coins tournés vers le milieu des côtés de la pâte. Rabattez les quatre coins de la pâte par-dessus, près à gauche, loin à droite, près à droite, loin à gauche, jusqu’à ce qu’ils se rejoignent au milieu.
    }
drawing-alt-lock-in-letter =
    { $inverted ->
        [yes] Le côté de { $length } va de gauche à droite. Posez la pâte sur les deux tiers gauches. Rabattez le tiers droit nu sur le milieu, puis le tiers gauche, avec la pâte dessus, sur les deux.
       *[no] Le côté de { $length } va de gauche à droite. Posez le beurre sur les deux tiers gauches. Rabattez le tiers droit nu sur le milieu, puis le tiers gauche, avec le beurre dessus, sur les deux.
    }
drawing-alt-lock-in-book =
    { $inverted ->
        [yes] Le côté de { $length } va de gauche à droite. Posez la pâte sur la moitié du milieu. Rabattez par-dessus le bout gauche puis le bout droit, jusqu’à ce qu’ils se rejoignent au milieu.
       *[no] Le côté de { $length } va de gauche à droite. Posez le beurre sur la moitié du milieu. Rabattez par-dessus le bout gauche puis le bout droit, jusqu’à ce qu’ils se rejoignent au milieu.
    }
drawing-alt-closed = Soudez les clés. Le pâton fermé : { $closed }.
drawing-marks-both-long = Le long des deux longs bords, marquez depuis le coin gauche : { $marks }.
drawing-marks-near = Le long du long bord proche, marquez depuis le coin gauche : { $marks }.
drawing-marks-far = Le long du long bord éloigné, marquez depuis le coin gauche : { $marks }.
drawing-marks-both-sides = Le long des deux petits côtés, marquez depuis le coin proche : { $marks }.
drawing-marks-left = Le long du petit côté gauche, marquez depuis le coin proche : { $marks }.
drawing-marks-right = Le long du petit côté droit, marquez depuis le coin proche : { $marks }.
drawing-alt-scrap = Chutes : { $percent } de l’abaisse
drawing-alt-timeline = { $elapsed } en tout : { $hands } de travail, { $wait } d’attente. Heure par heure depuis le début :
drawing-alt-timeline-step = { $start } { $title }, { $lasts }.
drawing-alt-day = Jour { $day }.
drawing-day = Jour { $day }
drawing-alt-social = { $title }, de { $course }.
drawing-in-the-oven = au four
drawing-together = ensemble
drawing-waits = attend
drawing-alt-plan = { $date } de { $from } à { $to }, { $who } : { $what }.
