### Ce que `--help` dit des commandes, des options et des valeurs. La clé d’un message est faite de leurs noms : `help-COMMANDE`,
### `help-COMMANDE-OPTION`, suivi de `-VALEUR` ; `any` vaut pour toutes les commandes. Les mots entre `accents graves` se tapent et restent tels quels.

## Titres

help-head-usage = Utilisation{" "}
help-head-commands = Commandes{" "}
help-head-command = Commande
help-head-arguments = Arguments{" "}
help-head-options = Options{" "}
help-head-values = Valeurs possibles{" "}
help-head-values-short = valeurs possibles{" "}
help-head-default = par défaut{" "}
help-head-examples =
    { $count ->
        [one] Exemple{" "}
       *[other] Exemples{" "}
    }
help-head-name = Nom
help-head-description = Description
help-head-version = Version

## Toutes les commandes

help-tourier = Fait d’un dossier de recettes à faire à la main, en texte brut, le site vérifié d’un cours et des fiches imprimées
help-any-content = Le dossier de contenu. Nommé plusieurs fois, plusieurs cours sont publiés : chacun dans un dossier à son nom, sous le dossier de sortie
help-any-theme = Le dossier d’un thème, posé par-dessus le thème intégré
help-any-quiet = Ne montrer ni l’avancement ni la ligne finale
help-any-color = Quand colorer les messages
help-any-color-auto = Dans un terminal, sauf si NO_COLOR est défini
help-any-color-always = Toujours
help-any-color-never = Jamais
help-any-help = Afficher l’aide : `-h` en bref, `--help` en entier
help-any-version = Afficher la version

## Ce que prennent plusieurs commandes

help-any-recipe = Le nom de fichier de la recette
help-any-class = Le nom de fichier de la séance
help-any-name = Le nom de fichier de la séance ou de la recette ; plusieurs recettes, `crescents,chocolate-batons`, se font ensemble, une pâte commune une seule fois
help-any-as = La forme de la réponse
help-any-as-text = Pour être lue
help-any-as-json = Pour des programmes
help-any-as-csv = Pour un tableur
help-any-as-ics = Un fichier d’agenda
help-any-as-svg = Un diagramme
help-any-units-metric = Métriques
help-any-units-us = Mesures des États-Unis
help-any-pieces = Tant de pièces : `24`
help-any-piece-weight = Des pièces de ce poids : `60g` ; autant que c’est écrit, ou que le dit `--pieces`
help-any-batches = Tant de fois la recette : `1.5`
help-any-flour = Tant de farine en tout : `1kg`
help-any-total = Tant en tout : `2kg`
help-any-tin = Pour un autre moule : `23 cm round`
help-any-with = D’une des façons de la recette, ou de plusieurs : `"oat drink"`, `"without walnuts"`

## `start`

help-start = Écrire un petit cours pour commencer, dans un nouveau dossier
help-start-dir = Le dossier où écrire le cours ; un nouveau, ou un où il n’y a rien

## `publish`

help-publish = Tout vérifier, puis écrire le site et toutes les fiches ; seul ce qui a changé est fait
help-publish-to = Le dossier de sortie ; `output` si rien n’est dit. Pour plusieurs cours, le dossier où sont les leurs
help-publish-among-others = Publier dans le dossier nommé par `--to` bien qu’il contienne des fichiers venus d’ailleurs et qu’on n’y ait jamais publié ; ils restent tels quels
help-publish-thorough = Lire en entier chaque fichier publié pour voir qu’il est intact, pas seulement sa taille et sa date
help-publish-shared = Un dossier de fichiers faits que se partagent des machines et des cours : ce qui s’y trouve n’est pas refait, et ce qui est fait y est mis là où l’on peut écrire

## `preview`

help-preview = Servir le site sur cette machine seulement, et le refaire quand un fichier est enregistré
help-preview-port = Le port où servir ; un port libre si rien n’est dit
help-preview-desk = Commencer au bureau d’écriture : les textes écrits dans le navigateur, à côté de la page qu’ils font
help-preview-to-read = Seulement pour lire : pas de bureau d’écriture, et rien n’est écrit
help-preview-room = Laisser les téléphones du même réseau local lire les pages et noter ce qui se passe le soir d’une séance, par un code à scanner ; à ADDRESS si cette machine en a plusieurs
help-preview-no-browser = Ne pas ouvrir le navigateur

## `editor`

help-editor = Parler avec votre éditeur pendant que vous écrivez : fautes, complétion, ce qu’est un mot (Language Server Protocol sur l’entrée et la sortie standard)

## `handout`

help-handout = Faire une fiche en PDF, ou celles de tout le cours ou d’une séance en un seul
help-handout-recipe = Le nom de fichier d’une recette ; plusieurs, `crescents,chocolate-batons`, en un, une pâte commune une seule fois ; `all` pour toutes les recettes du cours derrière une couverture ; le nom de fichier d’une séance pour tout son jeu : fiches d’élève, et fiches de poste pour chaque groupe avec ses propres quantités
help-handout-kind = La sorte de fiche : `student` si rien n’est dit, pour une séance `student` et `bench`
help-handout-kind-student = À emporter
help-handout-kind-bench = Une page à poser au poste
help-handout-kind-large-print = La fiche d’élève en 18 points
help-handout-units = Les unités qui viennent d’abord ; celles du cours si rien n’est dit
help-handout-paper = Le papier ; celui du cours si rien n’est dit
help-handout-paper-a4 = A4
help-handout-paper-letter = Lettre US
help-handout-language = La langue, parmi celles où le cours existe ; la première si rien n’est dit
help-handout-level = Imprimer aussi ce qui n’est dit qu’à certains et que les pages replient ; pour une séance, comme le dit son fichier si rien n’est dit
help-handout-level-beginners = Qui le font pour la première fois
help-handout-level-practised = Qui l’ont déjà fait
help-handout-booklet = Deux pages sur chaque face du papier, à plier en deux
help-handout-labels = Des étiquettes pour ce qui est pesé, sur des planches d’étiquettes de ce format : `70 x 37 mm`
help-handout-to = Le dossier où écrire

## `proof`

help-proof = Tout vérifier et ne rien écrire

## `facts`

help-facts = Donner en JSON tout ce qui est calculé d’une recette, ou de plusieurs faites ensemble
help-facts-recipe = Le nom de fichier de la recette ; plusieurs, `crescents,chocolate-batons`, se font ensemble, une pâte commune une seule fois
help-facts-schema = Donner le schéma JSON de cette sortie, ou d’un texte que vous écrivez
help-facts-schema-facts = Ce que donne `facts`
help-facts-schema-together = Ce qu’elle donne de plusieurs recettes
help-facts-schema-course = course.yaml
help-facts-schema-pantry = pantry.yaml
help-facts-schema-glossary = glossary.yaml
help-facts-schema-class = Une séance
help-facts-schema-recipe = L’en-tête d’une recette
help-facts-schema-technique = L’en-tête d’une technique
help-facts-schema-translation = L’en-tête d’un texte dans une autre langue

## `scale`

help-scale = Montrer la formule d’une recette, ou de plusieurs faites ensemble, mise à l’échelle, dans les deux systèmes d’unités
help-scale-recipe = Le nom de fichier de la recette ; plusieurs, `crescents,chocolate-batons`, se font ensemble, une pâte commune une seule fois

## `timetable`

help-timetable = Planifier une séance, ou une recette à la maison à rebours de l’heure où elle doit être prête
help-timetable-ready = Pour une recette : quand elle doit être prête, `2027-03-07 09:00`
help-timetable-group = Avec `--as ics` : l’agenda du groupe de ce numéro ; celui du formateur sans cela

## `today`

help-today = Une séance en cours : garder ce qui s’est passé, et replanifier le reste
help-today-said = Ce qui s’est passé : `pairs 1-3: second turn; pair 4 late 10; pair 2: brush skipped`, `all: first turn at 18:50`, `pair 1: bake from 19:40`, `all: nothing yet`, `pair 3 gone`, `oven 2 out`, `oven 2 back` ; `take back` reprend la ligne d’avant. Le début du nom d’une étape suffit. Les groupes qui ne sont pas nommés ont suivi le plan
help-today-now = L’heure qu’il est, `18:55` ; celle de cette machine si rien n’est dit
help-today-try = Voir seulement ce que cela donnerait : rien n’est gardé

## `note`

help-note = Noter au plan de travail quelque chose d’une recette, pour sa prochaine édition ; montrer ses notes
help-note-said = Ce qu’il faut noter ; `taken up 2` quand la recette tient compte de la deuxième note, `taken up` quand elle tient compte de toutes. Sans rien, les notes sont montrées
help-note-on = Le jour de la note, `2027-03-03` ; aujourd’hui selon cette machine si rien n’est dit

## `order`

help-order = La commande et les pesées d’une séance, ou de recettes faites ensemble

## `changes`

help-changes = Dire ce qui diffère entre deux éditions du contenu, dans les mots d’un lecteur
help-changes-old = Le dossier de contenu de l’ancienne édition
help-changes-new = Le dossier de contenu de la nouvelle édition
help-changes-units = Les unités pour le dire ; celles de la nouvelle édition si rien n’est dit

## `draft`

help-draft = Faire l’ébauche d’une recette qui existe : un texte brut collé de n’importe où, une page web enregistrée avec des données schema.org, ou ces données seules. Rien n’est cherché sur le réseau
help-draft-file = Le fichier de la recette ; `-` pour ce qui est tapé ou collé
help-draft-to = Le fichier à écrire, au lieu d’un fichier du dossier de contenu au nom de la recette ; `-` pour seulement montrer l’ébauche

## `convert`

help-convert = Convertir une quantité, en nommant la densité utilisée
help-convert-amount = Ce qu’il faut convertir : `2 cups bread flour`, `190 °C`
help-convert-unit = L’unité voulue : `g`, `oz`, `cup`, `tbsp`, `ml` ; pour un four `°C`, `°F`, `fan` ou `no fan`. Un four écrit avec sa chaleur tournante, `fan 170 °C`, n’en demande pas

## `completions`

help-completions = Donner ce qu’il faut à un shell pour compléter commandes et options
help-completions-shell = Le shell

## `manual`

help-manual = Donner la page de manuel, pour `man`

## `help`

help-help = Afficher cette aide, ou celle d’une commande
help-help-command = La commande
