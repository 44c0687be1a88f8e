### Lo que hay en un lugar de un texto: lo que allí se puede escribir, y lo que una palabra es.

here-says = { $text }
here-also = { $of }, con otro nombre
here-step-of = { $title }, en { $recipe }
here-word = { $word }, una palabra del oficio
here-line = { $ingredient }: { $amounts }
here-percent = porcentaje panadero { $percent }
here-allergens = alérgenos ({ $law }): { $found }
here-allergens-unknown = no se conocen sus alérgenos: lea el envase
here-row = { $term }: { $value }
here-first = empieza primero
here-starts = empieza como pronto { $start } después del primer paso
here-picture = { $width } × { $height } píxeles
here-write = Escribir `{ $text }`
here-take-out = Quitarlo
editor-broken = el editor se interrumpió: { $error }
