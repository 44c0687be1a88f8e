### 文章のある場所に何があるか：そこに書けるものと、そこの語が何であるか。

here-says = { $text }
here-also = { $of }の別名
here-step-of = { $title }（{ $recipe }）
here-word = { $word }：用語
here-line = { $ingredient }：{ $amounts }
here-percent = ベーカーズパーセント { $percent }
here-allergens = アレルゲン（{ $law }）：{ $found }
here-allergens-unknown = アレルゲンが分かりません：包装を読んでください
here-row = { $term }：{ $value }
here-first = 最初に始めます
here-starts = 早くて最初の工程の{ $start }後に始めます
here-picture = { $width } × { $height } ピクセル
here-write = `{ $text }` と書く
here-take-out = 取り除く
editor-broken = エディターとの接続が切れました：{ $error }
