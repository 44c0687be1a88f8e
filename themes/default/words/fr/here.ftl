### Ce qui se trouve à un endroit d’un texte : ce qu’on peut y écrire, et ce qu’un mot y est.

here-says = { $text }
here-also = { $of }, sous un autre nom
here-step-of = { $title }, dans { $recipe }
here-word = { $word }, un mot du métier
here-line = { $ingredient } : { $amounts }
here-percent = pourcentage boulanger { $percent }
here-allergens = allergènes ({ $law }) : { $found }
here-allergens-unknown = ses allergènes ne sont pas connus : lisez l’emballage
here-row = { $term } : { $value }
here-first = commence en premier
here-starts = commence au plus tôt { $start } après la première étape
here-picture = { $width } × { $height } pixels
here-write = Écrire `{ $text }`
here-take-out = L’enlever
editor-broken = l’éditeur s’est interrompu : { $error }
