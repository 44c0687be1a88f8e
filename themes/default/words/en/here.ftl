### What stands at a place in a text: what may be written there, and what a word of it is.

here-says = { $text }
here-also = { $of }, by another name
here-step-of = { $title }, in { $recipe }
here-word = { $word }, a word of the trade
here-line = { $ingredient }: { $amounts }
here-percent = baker’s percentage { $percent }
here-allergens = allergens ({ $law }): { $found }
here-allergens-unknown = its allergens are not known: read the pack
here-row = { $term }: { $value }
here-first = begins first
here-starts = begins { $start } after the first step at the earliest
here-picture = { $width } × { $height } pixels
here-write = Write `{ $text }`
here-take-out = Take it out
editor-broken = the editor broke off: { $error }
