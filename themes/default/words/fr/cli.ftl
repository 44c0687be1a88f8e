### Ce que dit le programme sur le terminal et dans l’aperçu. { $name } dans un message est rempli par le programme ; les mots entre
### `accents graves` se tapent et restent tels quels.

## Pourquoi une recette ne peut pas se faire en une quantité

size-piece-unknown = on ne sait pas ce que pèse une pièce
size-no-flour = il n’y a pas de farine dedans
size-weightless = elle ne pèse rien
size-no-tin = elle ne nomme pas de moule
size-out-of-bounds = c’est zéro, ou plus de 10 000 recettes entières
size-not-in-pieces = elle ne se fait pas à la pièce

## Pourquoi il n’y a rien à planifier

unclear-no-sessions = il n’y a aucune séance
unclear-first-session = la date de la première séance n’existe pas
unclear-session = la date d’une séance n’existe pas
unclear-overlap = deux séances se chevauchent
unclear-no-recipe = il manque une recette
unclear-ring = des étapes s’attendent en cercle
unclear-own-ring = ses étapes s’attendent en cercle
unclear-no-time = ce n’est pas une heure d’horloge : elle ne se lit pas, ou le passage à l’heure d’été la saute

## Ce que la machine n’a pas voulu faire

store-open-content = impossible d’ouvrir le dossier de contenu { $path } : { $why }
store-open-theme = impossible d’ouvrir le thème { $path } : { $why }
store-open = impossible d’ouvrir { $path } : { $why }
store-read = impossible de lire { $path } : { $why }
store-write = impossible d’écrire { $path } : { $why }
store-write-in = impossible d’écrire dans { $path } : { $why }
store-write-to = impossible d’écrire vers { $path } : { $why }
store-write-beside = impossible d’écrire à côté du dossier de sortie, dans { $path } : { $why }
store-lock = impossible de verrouiller { $path } : { $why }
store-make = impossible de créer { $path } : { $why }
store-move = impossible de déplacer { $path } : { $why }
store-copy = impossible de copier { $path } : { $why }
store-clear = impossible de vider { $path } : { $why }
store-entitle = impossible de donner ses droits à { $path } : { $why }
store-use = impossible d’utiliser { $path } : { $why }
store-publish = impossible de publier vers { $path } : { $why }
store-serve = impossible de servir sur { $path } : { $why }
machine-says = { $reason }
machine-not-there = cela n’existe pas
machine-no-right = vous n’en avez pas le droit
machine-read-only = c’est en lecture seule
machine-disk-full = le disque est plein
machine-file-for-folder = il y a un fichier à la place d’un dossier
machine-folder-for-file = il y a un dossier à la place d’un fichier

## Modèles de page

template-fault = { $template }:{ $line }: { $message }

## Où une édition peut être publiée

place-of-instructor = un dossier de ce nom contient ce qui est au formateur seul, à côté d’un site ; prenez un autre nom
place-beside-link = c’est un lien ; ce qui est à côté d’un site doit être un dossier à part entière
place-file = un fichier occupe sa place
place-root = c’est la racine d’un disque ; nommez un dossier à part
place-inputs = le contenu et le thème s’y trouvent, ou lui s’y trouve ; prenez-en un autre
place-home = c’est votre dossier personnel, ou un dossier qui le contient ; nommez un dossier à part
place-mount = un disque ou un dossier d’ailleurs y est monté, et ne peut pas être échangé contre une nouvelle édition ; nommez un dossier à l’intérieur
place-strangers = il contient des fichiers qui n’ont pas été publiés ; prenez-en un autre, ou dites --among-others pour publier à côté d’eux
place-link = c’est un lien vers un endroit qui n’existe pas ; créez cet endroit, ou enlevez le lien
place-leads-out = il ressort d’un dossier qui n’existe pas

## Deux à la fois

place-under-way = une autre publication vers ce dossier est en cours ; réessayez quand elle sera finie

## Textes venus d’ailleurs

text-too-long = il fait plus de 8 Mio
text-not-utf8 = ce n’est pas du texte en UTF-8 ; ouvrez-le dans un éditeur et enregistrez-le en UTF-8

## Création des fichiers

place-not-ours = le dossier de sortie a là quelque chose qui n’a pas été publié auparavant : déplacez-le, ou publiez vers un autre dossier
place-twice = deux fichiers iraient à cette place, ou ce n’en est pas une
file-needed = il lui faut { $path }, qui ne peut pas être lu

## Fichiers qui ne peuvent pas être lus

theme-link = c’est un lien vers un autre endroit ; mettez-y le fichier lui-même
theme-too-large = le thème est trop grand
theme-file-too-large = il fait plus de 16 Mio
theme-not-utf8 = ce n’est pas du texte en UTF-8 : enregistrez-le en texte brut, en UTF-8

## Images

picture-none = ce n’est pas une image

## Images sur papier

picture-no-size = elle n’a pas de taille

## Composition

handout-unset = la fiche n’a pas pu être composée

## Dessins en images

unpainted = le dessin n’a pas pu devenir une image : { $why }
unpainted-tall = il est trop haut
unpainted-large = il est trop grand
unpainted-typeface = le thème n’a pas la police Asap

## Fiches

picture-unshown = { $name } : { $reason }
handout-no-setting = il n’y a pas de composition à essayer
handout-unwritten = les pages n’ont pas pu être écrites

## L’aperçu

preview-broke-file = l’aperçu s’est interrompu en faisant ce fichier
file-missing = il n’y a pas de { $path }

## Options

option-unreadable = --{ $option } { $value } ne se lit pas ; écrivez --{ $option } { $example }

## Changements

changes-in = dans { $folder } :
changes-from-to = de { $old } à { $new }
changes-new-recipe = { $title } (nouvelle recette)
changes-recipe-left-out = { $title } (recette supprimée)
changes-new-technique = { $title } (nouvelle technique)
changes-technique-left-out = { $title } (technique supprimée)

## Fiches d’une séance

class-own-size = une séance dit elle-même combien fait chaque groupe ; ne donnez pas la quantité
handout-cannot = les fiches de `{ $name }` ne peuvent pas être faites : { $reason }
handout-no-booklet = un livret se fait de fiches d’élève

## Conversions

convert-without-fan = { $text } = { $heat } sans chaleur tournante
convert-into-what = dites en quoi vous voulez `{ $text }` : g, oz, cup, tbsp, ml
convert-no-unit = `{ $unit }` n’est pas une unité ; écrivez-en une comme g, oz, cup, tbsp ou ml
convert-unreadable = `{ $text }` ne se lit pas ; écrivez "2 cups bread flour"
convert-unknown = `{ $name }` n’est pas dans le garde-manger ; vouliez-vous dire `{ $near }` ?
convert-answer-density = { $text } = { $amount } { $unit } ({ $density } g/ml)
convert-answer = { $text } = { $amount } { $unit }
convert-heat = { $heat } = { $shown }
convert-with-fan = { $text } = { $heat } en chaleur tournante
convert-from-fan = { $text } en chaleur tournante = { $heat }
convert-no-scale = `{ $wanted }` n’est pas une façon de dire une température ; écrivez °C, °F, fan ou "no fan"

## Brouillons

draft-cannot = { $file } : { $why }
draft-settle-each = Réglez chacun de ces points dans le texte, puis ôtez sa ligne.
draft-no-method = le texte n’a pas de méthode : écrivez-en les étapes
draft-degrees = `{ $words }` ne dit pas quels degrés : écrivez {"{"}190 °C{"}"} ou {"{"}375 °F{"}"}
draft-overnight = `overnight` n’est pas une durée : écrivez `wait: 12 h (8 h to 16 h)` ou ce qui est voulu
draft-rise = la durée de la pousse n’est pas dite : { $sentence }
draft-times = plusieurs durées sont dites, `{ $time }` est sur la fiche : { $sentence }
draft-work-or-wait = `{ $key }: { $time }` peut aussi bien être `{ $other }` : { $sentence }
draft-no-oven = aucune température de four n’est dite ; trouvez-en une et écrivez `bake: TEMPERATURE, { $time }` au lieu de `wait` et `where` : { $sentence }
draft-cook-time = la durée de cuisson est le `cookTime` de la page, elle n’est pas dans l’étape : { $sentence }
draft-no-bake-time = aucune durée de cuisson n’est dite : { $sentence }
draft-second = un second `{ $key }: { $value }` est dit ici : faites-en une étape à part
draft-of-step = { $title } : { $doubt }
draft-lost-all = aucune étape ne nomme ce qui est dans `{ $section }` : tout est mis dans `{ $title }`
draft-lost = aucune étape ne nomme { $names } : mis dans `{ $title }`
draft-lost-one = « { $name } »
draft-no-title = le texte n’a pas de titre : donnez-lui-en un
draft-no-summary = `summary` n’est pas dit : dites en une phrase ce que c’est
draft-left-out = `{ $line }` reste hors de la formule : { $why }
draft-of-what = cela donne { $number } de quoi ? `{ $good }` en tient lieu
draft-makes-unread = `makes` ne se lit pas dans `{ $told }` : `1 batch` en tient lieu ; écrivez un nombre et un mot, comme `24 rolls`
draft-makes-untold = on ne dit pas ce que cela donne : `1 batch` en tient lieu ; écrivez par exemple `24 rolls`
draft-line-wrong = ligne { $line } : { $said }
draft-no-weight = `{ $line }` reste sans poids, en tant que `{ $text }` : { $why }
draft-turned = `{ $text }` est écrit `{ $turned }` : est-ce bien cela ?
draft-why = { $why }. { $help }
draft-ask-proof = `tourier proof` dit que faire là où c’est écrit ainsi
draft-besides = dit à part des étapes : { $line }
draft-longer = il y a plus de { $lines } ingrédients ou de { $steps } étapes : le reste est omis
draft-others = la page contient encore { $others } recette(s) : seule la première est reprise
draft-author = la page nomme comme auteur : { $author }
draft-no-ingredients = aucune liste d’ingrédients n’y est trouvée ; écrivez chaque ingrédient sur sa propre ligne, au-dessus de la méthode
draft-not-in-data = cela ressemble à du JSON, mais il n’y a pas de Recipe de schema.org
draft-not-in-page = cette page ne contient pas de données Recipe de schema.org ; copiez le texte de la recette dans un fichier texte et faites-en l’ébauche
draft-there = { $to } existe déjà, et rien n’est écrasé ; nommez un autre fichier avec `--to`
draft-stands = il y a un brouillon dans { $to }
draft-sure = rien n’y est douteux ; relisez-le tout de même
draft-next = pour voir ce qu’il y a d’autre à dire :  tourier proof{ $content }

## Faits

facts-schema = écrivez --schema={ $name } pour le schéma d’un texte, ou sans `{ $name }` pour celui des faits

## Fiches en ligne de commande

handout-none-written = aucune fiche n’est écrite
cli-error = erreur : { $message }
handout-waiting = attente de la fin d’une publication vers { $folder }
handout-no-recipe = il n’y a pas de recette à imprimer
labels-unreadable = --labels { $size } ne se lit pas ; écrivez la taille d’une étiquette, --labels "70 x 37 mm"
labels-unfit = des étiquettes de { $size } sont trop petites pour être lues, ou plus grandes que le papier

## Dossiers et noms

cli-stop = tourier: { $message }
cli-no-stop = impossible d’attendre un signal d’arrêt : { $error }
cli-no-answer = impossible d’écrire la réponse : { $error }
content-file = { $folder } est un fichier, non un dossier de contenu ; nommez le dossier qui contient `course.yaml` avec `--content FOLDER`
content-none = il n’y a pas de dossier de contenu { $folder } ; `tourier start { $folder }` y écrit un petit cours pour commencer, `--content { $near }` nomme un autre dossier
theme-none = il n’y a pas de thème dans { $folder } ; `--theme FOLDER` nomme un dossier avec les fichiers qui diffèrent du thème intégré
scale-cannot = `{ $name }` ne peut pas se mettre à cette quantité : { $reason }
way-cannot = `{ $name }` ne peut pas se faire ainsi : { $reason }
theme-words = dans le thème, { $path }:{ $line }: { $message }
none-near = il n’y a pas de { $kind } `{ $name }` ; vouliez-vous dire `{ $near }` ?
none-at-all = il n’y a pas de { $kind } `{ $name }` : le dossier de contenu n’en contient aucune
none-known = il n’y a pas de { $kind } `{ $name }` ; il y a : { $known }

## Commandes de marchandises

order-cannot = impossible de faire la commande pour `{ $name }` : { $reason }

## L’aperçu sur le terminal

preview-no-stop = impossible d’attendre Ctrl-C : { $error }
preview-faults = il y a des défauts
preview-port-in-use = le port { $port } est occupé ; n’écrivez pas --port pour en avoir un libre
preview-no-port = impossible de servir sur le port { $port } : { $error }

## Publication

publish-mended = { $file } avait été changé ou enlevé depuis la dernière publication : refait
publish-mended-two = { $file } et { $other } avaient été changés ou enlevés depuis la dernière publication : refaits
publish-mended-more = { $file } et { $count } autres fichiers avaient été changés ou enlevés depuis la dernière publication : refaits
publish-kept = un fichier venu d’ailleurs n’avait pas de place dans la nouvelle édition ; il est gardé sous { $path }
publish-recounted = cette version de tourier compte autrement que celle de la dernière publication : si un nombre diffère et que vous n’avez pas touché à son texte, c’est pour cela
publish-old-stands = { $error } ; la dernière édition reste en place
publish-new-stands = { $error } ; la nouvelle édition est en place, et la prochaine publication réessaiera
publish-cannot-make = erreur : { $path } ne peut pas être fait : { $reason }
publish-begins = le cours commence à { $folder }/index.html

## Commencer

start-not-empty = { $folder } n’est pas vide, et rien n’y est écrasé ; nommez un nouveau dossier, comme dans `tourier start content`
start-stands = un petit cours vous attend dans { $folder }
start-ignored = un .gitignore laisse ici de côté ce que fait la publication
start-see = pour le voir :    tourier preview{ $content }
start-make = pour le faire :   tourier publish{ $content }{ $beside }

## Plans

plan-none = il n’y a pas de plan : { $standing }
plan-done-no-step = ceux-là n’ont pas d’étape `{ $step }` ; ils ont { $known }
plan-done-several = `{ $step }` peut être plusieurs étapes ; dites laquelle : { $which }
plan-done-no-group = il n’y a pas de tels groupes dans cette séance
plan-done-no-kit = la séance ne compte pas autant de `{ $kit }`
plan-now-unreadable = --now { $now } ne se lit pas ; écrivez --now 18:55
plan-ready-missing = pour une recette, dites quand elle doit être prête : écrivez --ready "2027-03-07 09:00"
plan-ready-unreadable = --ready { $ready } ne se lit pas ; écrivez --ready "2027-03-07 09:00"
plan-cannot = `{ $name }` ne peut pas être planifié : { $reason }

## En attendant un plan

plan-waiting = calcul du plan ; Ctrl-C arrête avec le meilleur plan trouvé jusque-là
plan-waiting-reasons = aucun plan trouvé ; recherche des raisons et de ce qui aiderait ; Ctrl-C arrête avec ce qui est connu jusque-là

## Ce qui a été tapé

typed-wrong = { $said } ; { $help }
typed-help = `tourier { $name } --help` dit ce qu’il faut lui donner
typed-commands = `tourier --help` donne la liste des commandes
typed-command-near = il n’y a pas de commande `{ $word }` ; vouliez-vous dire `tourier { $near }` ?
typed-command = il n’y a pas de commande `{ $word }` ; il y a : { $names }
option-unreadable-in = { $option } { $value } ne se lit pas ; écrivez { $option } { $example }
typed-option-of-near = `{ $name }` n’a pas d’option `{ $word }` ; vouliez-vous dire `{ $near }` ?
typed-option-near = il n’y a pas d’option `{ $word }` ; vouliez-vous dire `{ $near }` ?
typed-option-of = `{ $name }` n’a pas d’option `{ $word }` ; { $help }
typed-option = il n’y a pas d’option `{ $word }` ; { $help }
typed-does-not-belong = `{ $word }` n’a pas sa place ici ; { $help }
typed-takes-no-name = `{ $name }` travaille sur le dossier de contenu et ne prend pas de nom ; pour un autre dossier, écrivez `tourier { $name } --content { $word }`
typed-word-too-many = `{ $word }` est un mot de trop ; mettez la quantité entre guillemets droits : `tourier { $name } "2 cups bread flour" g`
typed-takes-none = `{ $name }` ne prend pas de `{ $word }` à cet endroit ; { $help }
typed-missing = il manque { $what }
typed-needs-option = `{ $name }` a besoin ici de { $option } ; { $help }
typed-want-folder = un dossier où écrire
typed-want-recipe-file = un fichier avec une recette
typed-want-two-folders = deux dossiers de contenu
typed-want-amount = une quantité
typed-want-shell = un shell
typed-want-class = le nom de fichier d’une séance
typed-want-class-or-recipe = le nom de fichier d’une séance ou d’une recette
typed-want-recipe-or-class = le nom de fichier d’une recette ou d’une séance, ou `all`
typed-needs-recipe = `{ $name }` demande le nom de fichier d’une recette : `tourier { $example }`
typed-needs = `{ $name }` demande { $wanted } : `tourier { $example }`
typed-needs-value = { $option } demande une valeur : { $option } { $example }
typed-needs-choice = { $option } demande l’une de ces valeurs : { $choice }
typed-needs-a-value = { $option } demande une valeur
typed-none-near = { $option } { $found } n’est pas connu ; vouliez-vous dire `{ $near }` ?
typed-none = { $option } { $found } n’est pas connu ; écrivez l’une de ces valeurs : { $choice }
option-unreadable-as = { $option } { $found } ne se lit pas ; écrivez { $option } { $example }
option-unreadable-plain = { $option } { $found } ne se lit pas
typed-twice = { $one } figure là deux fois ; une fois suffit
typed-not-together = { $one } et { $other } ne vont pas ensemble ; enlevez l’un des deux

## Nombres, résultats, l’aperçu dans le navigateur

cli-stopped = arrêté ; { $stands }
kind-language = langue
kind-recipe = recette
kind-class = séance
kind-recipe-or-class = recette ou séance
kind-class-or-recipe = séance ou recette
proof-sound =
    { $count ->
        [one] aucun défaut dans { $count } recette
       *[other] aucun défaut dans { $count } recettes
    }
changes-none = rien ne diffère qu’un lecteur verrait
changes-of = { $title }
draft-to-settle =
    { $count ->
        [one] une chose est à régler :
       *[other] { $count } choses sont à régler :
    }
preview-at = le cours est à { $address } jusqu’à ce que vous tapiez Ctrl-C
preview-over = l’aperçu est fini
preview-waits = rien de plus récent n’est montré tant que ceci n’est pas corrigé
publish-stands = rien n’est écrit, et la dernière édition reste en place
publish-unwritten = rien n’est écrit ; la dernière édition reste en place
publish-progress = fichiers
publish-idle =
    { $count ->
        [one] { $count } fichier est à jour dans { $folder }/ ; rien de refait
       *[other] { $count } fichiers sont à jour dans { $folder }/ ; rien de refait
    }
publish-apart = ce qui est à vous seul se trouve dans { $folder }/ : ne le mettez pas sur le web
publish-of = { $content } :
publish-same-name = { $one } et { $other } s’appellent tous deux { $name }, et chaque cours veut son propre dossier ; publiez-les un par un avec `--to DIR`, ou donnez un autre nom à l’un des dossiers
publish-not-begun = il n’a pas été commencé
publish-all = { $count } cours sont publiés
publish-some =
    { $count ->
        [one] { $count } cours sur { $all } publié ; non publiés : { $names }
       *[other] { $count } cours sur { $all } publiés ; non publiés : { $names }
    }
publish-made-nothing = rien de fait
publish-made = fait : { $kinds }
publish-and-kept =
    { $count ->
        [one] { $made } ; { $count } était à jour
       *[other] { $made } ; { $count } étaient à jour
    }
publish-and-removed = { $made } ; enlevé : { $count }
publish-pages =
    { $count ->
        [one] { $count } page
       *[other] { $count } pages
    }
publish-handouts =
    { $count ->
        [one] { $count } fiche
       *[other] { $count } fiches
    }
publish-drawings =
    { $count ->
        [one] { $count } dessin
       *[other] { $count } dessins
    }
publish-others =
    { $count ->
        [one] { $count } autre fichier
       *[other] { $count } autres fichiers
    }
scale-head = { $title } : { $batch }, { $makes }
scale-doughs = en { $count } pâtons égaux
scale-total = total { $metric } / { $us }
scale-total-hydration = total { $metric } / { $us }, hydratation { $percent } %
scale-total-true-hydration = total { $metric } / { $us }, vraie hydratation { $percent } %
scale-each-dough = chaque pâton { $metric } / { $us }
scale-in-us = (US) { $us }
preview-broke-edition = l’aperçu s’est interrompu en faisant cette édition
preview-cannot-make = { $name } ne peut pas être fait : { $reason }
preview-no-file = ce fichier n’existe pas
preview-no-page = cette page n’existe pas
preview-unclear = ceci ne se lit pas
preview-path = ce chemin sort du site
preview-method = l’aperçu ne peut qu’être lu
preview-host = l’aperçu ne répond que sous 127.0.0.1 ou localhost
preview-long = ceci est trop long
preview-last-good = Non publié : c’est la dernière bonne édition qui est montrée
preview-cautions =
    { $count ->
        [one] { $count } mise en garde dans cette édition
       *[other] { $count } mises en garde dans cette édition
    }
preview-making = En cours
preview-being-made = Le cours est en train d’être fait.
preview-faults-title = Défauts
preview-nothing-yet = Non publié : il n’y a encore rien à montrer

## Une séance en cours

today-file-unreadable = { $file }:{ $line }: `{ $text }` ne se lit pas ; écrivez "pairs 1-3: second turn; pair 4 late 10"
today-file-unheard = { $file } à { $at } : { $why }
today-unreadable = `{ $part }` ne se lit pas ; écrivez "pairs 1-3: second turn; pair 4 late 10"
today-none-to-begin = la séance n’a pas de plan de départ ; `tourier timetable { $name }` dit pourquoi
today-group = il n’y a pas de groupe { $number } : `{ $name }` a { $groups } groupes
today-later-kept = quelque chose de plus tard est déjà noté ; mettez une ligne plus ancienne dans le fichier du jour lui-même
today-no-time = { $time } n’est pas une heure qui existe
today-no-session = --now { $now } n’est proche d’aucune séance ; écrivez une heure comme --now 18:55
today-several = --now { $now } peut tomber sur plusieurs jours ; dites lequel : --now "{ $day }"
today-no-zone = le cours ne nomme pas de fuseau horaire (`time zone`) ; dites quelle heure il est : --now "{ $example }"
note-kept =
    { $open ->
        [one] Gardé dans { $file } ; { $open } note n’est pas encore reprise
       *[other] Gardé dans { $file } ; { $open } notes ne sont pas encore reprises
    }
note-none = Rien n’est noté sur { $recipe }
note-line = { $number }. { $on } { $text }
note-line-taken = { $number }. { $on } { $text } (reprise le { $taken })
note-no-number = sur { $recipe } il n’y a pas de note { $number } ; nombre de notes : { $count }
note-taken-before = la note { $number } est déjà reprise
note-unkept = une note a jusqu’à 500 signes ; mettez le reste dans le texte même de { $recipe }
note-no-day = `{ $said }` n’est pas un jour ; écrivez `--on 2027-03-03`
today-by-the-clock = il est { $time }, et aucune séance n’est proche ; dites quand : --now "{ $example }"
