### Was an einer Stelle eines Textes steht: was dort geschrieben werden kann, und was ein Wort dort ist.

here-says = { $text }
here-also = { $of }, unter anderem Namen
here-step-of = { $title }, in { $recipe }
here-word = { $word }, ein Fachwort
here-line = { $ingredient }: { $amounts }
here-percent = Bäckerprozente { $percent }
here-allergens = Allergene ({ $law }): { $found }
here-allergens-unknown = seine Allergene sind nicht bekannt: lesen Sie die Packung
here-row = { $term }: { $value }
here-first = beginnt als Erstes
here-starts = beginnt frühestens { $start } nach dem ersten Schritt
here-picture = { $width } × { $height } Pixel
here-write = `{ $text }` schreiben
here-take-out = Weglassen
editor-broken = der Editor brach ab: { $error }
