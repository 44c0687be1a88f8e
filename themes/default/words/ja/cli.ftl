### 端末とプレビューでプログラムが伝えること。文中の { $name } にはプログラムが値を入れます。バッククォートで囲んだ語は
### 打ち込むとおりのもので、そのまま残します。

## レシピがその量で作れない理由

size-piece-unknown = 1個の重量が分かりません
size-no-flour = 粉が入っていません
size-weightless = 重量がありません
size-no-tin = 型が書かれていません
size-out-of-bounds = それでは何も作らないか、10,000バッチを超えます
size-not-in-pieces = 個数で作るものではありません

## 計画を立てられない理由

unclear-no-sessions = 回がありません
unclear-first-session = 最初の回が実際の時刻になっていません
unclear-session = 実際の時刻になっていない回があります
unclear-overlap = 2つの回が重なっています
unclear-no-recipe = レシピがありません
unclear-ring = 工程が輪になって互いを待っています
unclear-own-ring = このレシピの工程が輪になって互いを待っています
unclear-no-time = 時計にない時刻です：読めないか、時計を進めるために飛ばされる時刻です

## 機械ができなかったこと

store-open-content = コンテンツのフォルダー{ $path }を開けません：{ $why }
store-open-theme = テーマ{ $path }を開けません：{ $why }
store-open = { $path }を開けません：{ $why }
store-read = { $path }を読めません：{ $why }
store-write = { $path }を書けません：{ $why }
store-write-in = { $path }の中に書けません：{ $why }
store-write-to = { $path }へ書けません：{ $why }
store-write-beside = 出力フォルダーの隣、{ $path }の中に書けません：{ $why }
store-lock = { $path }をロックできません：{ $why }
store-make = { $path }を作れません：{ $why }
store-move = { $path }を移せません：{ $why }
store-copy = { $path }を写せません：{ $why }
store-clear = { $path }を片づけられません：{ $why }
store-entitle = { $path }に、もとの権限を付けられません：{ $why }
store-use = { $path }を使えません：{ $why }
store-publish = { $path }へ公開できません：{ $why }
store-serve = { $path }で配信できません：{ $why }
machine-says = { $reason }
machine-not-there = そこにありません
machine-no-right = その権限がありません
machine-read-only = 読み取り専用です
machine-disk-full = ディスクがいっぱいです
machine-file-for-folder = フォルダーのあるはずのところにファイルがあります
machine-folder-for-file = ファイルのあるはずのところにフォルダーがあります

## テンプレート

template-fault = { $template }:{ $line }：{ $message }

## 版を公開できる場所

place-of-instructor = その名前のフォルダーには、サイトの隣で、講師だけのものを入れます。別の名前にしてください
place-beside-link = リンクです。サイトの隣に置くものは、独立したフォルダーでなければなりません
place-file = その場所にはファイルがあります
place-root = ディスクのいちばん上です。専用のフォルダーを指定してください
place-inputs = コンテンツやテーマがこの中にあるか、これがそれらの中にあります。別のフォルダーにしてください
place-home = ホームフォルダーか、それを含むフォルダーです。専用のフォルダーを指定してください
place-mount = そこにはディスクかよそのフォルダーがマウントされていて、新しい版と入れ替えられません。その中のフォルダーを指定してください
place-strangers = 公開したものではないファイルがあります。別のフォルダーにするか、それらと一緒に公開するなら--among-othersを付けてください
place-link = 行き先のないリンクです。行き先を作るか、リンクを取り除いてください
place-leads-out = 存在しないフォルダーから外へ戻る道になっています

## 同時に2つ

place-under-way = このフォルダーへの別の公開が進んでいます。終わってから、もう一度試してください

## よそから来た文章

text-too-long = 8 MiBを超えています
text-not-utf8 = UTF-8のテキストではありません。エディターで開き、UTF-8で保存してください

## ファイル作り

place-not-ours = 出力フォルダーのその場所に、前に公開したものではないものがあります：それを移すか、別のフォルダーへ公開してください
place-twice = この場所に2つのファイルが置かれることになるか、置ける場所ではありません
file-needed = { $path }が要りますが、読めません

## 読めないファイル

theme-link = 別の場所へのリンクです。ファイルそのものをそこに置いてください
theme-too-large = テーマが大きすぎます
theme-file-too-large = 16 MiBより大きいファイルです
theme-not-utf8 = UTF-8のテキストではありません：UTF-8のテキストとして保存してください

## 画像

picture-none = 画像ではありません

## 紙の上の画像

picture-no-size = 大きさがありません

## 組版

handout-unset = 配布資料を組めませんでした

## 画像にした図

unpainted = 図を画像にできませんでした：{ $why }
unpainted-tall = 縦に長すぎます
unpainted-large = 大きすぎます
unpainted-typeface = テーマに書体Asapがありません

## 配布資料

picture-unshown = { $name }：{ $reason }
handout-no-setting = 試せる組み方がありません
handout-unwritten = ページを書けませんでした

## プレビュー

preview-broke-file = このファイルを作っている途中で、プレビューに異常が起きました
file-missing = { $path }がありません

## オプション

option-unreadable = --{ $option } { $value }が読めません。--{ $option } { $example }のように書いてください

## 変更

changes-in = { $folder }での変更：
changes-from-to = { $old }から{ $new }への変更
changes-new-recipe = { $title }（新しいレシピ）
changes-recipe-left-out = { $title }（なくなったレシピ）
changes-new-technique = { $title }（新しい技法）
changes-technique-left-out = { $title }（なくなった技法）

## 教室の配布資料

class-own-size = 班ごとに作る量は教室に書かれています。量の指定を省いてください
handout-cannot = `{ $name }`の配布資料を作れません：{ $reason }
handout-no-booklet = 冊子は受講者用資料で作ります

## 換算

convert-without-fan = { $text } = { $heat }（熱風なし）
convert-into-what = `{ $text }`を何で表すかを書いてください：g、oz、cup、tbsp、ml
convert-no-unit = `{ $unit }`は単位ではありません。g、oz、cup、tbsp、mlなどを書いてください
convert-unreadable = `{ $text }`が読めません。"2 cups bread flour"のように書いてください
convert-unknown = `{ $name }`は材料棚にありません。`{ $near }`のことですか？
convert-answer-density = { $text } = { $amount } { $unit }（{ $density } g/ml）
convert-answer = { $text } = { $amount } { $unit }
convert-heat = { $heat } = { $shown }
convert-with-fan = { $text } = { $heat }（熱風あり）
convert-from-fan = { $text }（熱風あり）= { $heat }
convert-no-scale = `{ $wanted }`では温度を表せません。°C、°F、fan、"no fan"のどれかを書いてください

## 下書き

draft-cannot = { $file }：{ $why }
draft-settle-each = それぞれを本文で直してから、その行を消してください。
draft-no-method = 作り方がありません。手順を書いてください
draft-degrees = `{ $words }`ではどの度か分かりません。{"{"}190 °C{"}"}か{"{"}375 °F{"}"}のように書いてください
draft-overnight = `overnight`は時間ではありません。`wait: 12 h (8 h to 16 h)`など、意味する時間を書いてください
draft-rise = 発酵の時間が書かれていません：{ $sentence }
draft-times = 時間がいくつも書かれています。手順票には`{ $time }`を入れました：{ $sentence }
draft-work-or-wait = `{ $key }: { $time }`は`{ $other }`かもしれません：{ $sentence }
draft-no-oven = オーブンの温度が書かれていません。調べて、`wait`と`where`の代わりに`bake: TEMPERATURE, { $time }`と書いてください：{ $sentence }
draft-cook-time = 焼き時間はページの`cookTime`から取りました。手順にはありません：{ $sentence }
draft-no-bake-time = 焼き時間が書かれていません：{ $sentence }
draft-second = ここに二つ目の`{ $key }: { $value }`があります。別の手順にしてください
draft-of-step = { $title }：{ $doubt }
draft-lost-all = `{ $section }`の材料に触れる手順がありません。すべて`{ $title }`に入れました
draft-lost = { $names }に触れる手順がありません。`{ $title }`に入れました
draft-lost-one = 「{ $name }」
draft-no-title = 題名がありません。付けてください
draft-no-summary = `summary`がありません。何であるかを一文で書いてください
draft-left-out = `{ $line }`は配合から外れています：{ $why }
draft-of-what = 何が{ $number }できますか。代わりに`{ $good }`としました
draft-makes-unread = `{ $told }`からは`makes`が読めません。代わりに`1 batch`としました。`24 rolls`のように数と言葉で書いてください
draft-makes-untold = できあがりの数が書かれていません。代わりに`1 batch`としました。`24 rolls`のように書いてください
draft-line-wrong = { $line }行目：{ $said }
draft-no-weight = `{ $line }`は重さなしで`{ $text }`としました：{ $why }
draft-turned = `{ $text }`を`{ $turned }`としました。これでよいですか
draft-why = { $why }。{ $help }
draft-ask-proof = そう書いた所で何をすればよいかは`tourier proof`が教えます
draft-besides = 手順とは別に書かれていたこと：{ $line }
draft-longer = 材料が{ $lines }、または手順が{ $steps }を超えています。残りは省きました
draft-others = ページにはほかに{ $others }件のレシピがあります。最初のものだけを取りました
draft-author = ページにある作者：{ $author }
draft-no-ingredients = 材料の一覧が見つかりません。材料を一つずつ別の行に、作り方より上に書いてください
draft-not-in-data = JSONのようですが、schema.orgのRecipeがありません
draft-not-in-page = このページにはschema.orgのRecipeのデータがありません。レシピの文章をテキストファイルに写し、そこから下書きを作ってください
draft-there = { $to }がすでにあり、上書きはしません。`--to`で別のファイルを指定してください
draft-stands = 下書きを{ $to }に書きました
draft-sure = 疑わしいところはありません。それでも、ひととおり読んでください
draft-next = ほかに書くべきことを見るには：  tourier proof{ $content }

## データ

facts-schema = 文章のスキーマなら--schema={ $name }と書き、データのスキーマなら`{ $name }`を省いてください

## コマンドラインでの配布資料

handout-none-written = 配布資料は書きませんでした
cli-error = エラー：{ $message }
handout-waiting = { $folder }への公開が終わるのを待っています
handout-no-recipe = 印刷するレシピがありません
labels-unreadable = --labels { $size }が読めません。1枚の大きさを--labels "70 x 37 mm"のように書いてください
labels-unfit = { $size }のラベルは、小さすぎて読めないか、用紙より大きくなっています

## フォルダーと名前

cli-stop = tourier：{ $message }
cli-no-stop = 停止の合図を受け取れません：{ $error }
cli-no-answer = 答えを書けません：{ $error }
content-file = { $folder }はファイルで、コンテンツのフォルダーではありません。`course.yaml`のあるフォルダーを`--content FOLDER`で指定してください
content-none = コンテンツのフォルダー{ $folder }がありません。`tourier start { $folder }`は、始めるための小さな講座をそこに書きます。`--content { $near }`は、別のフォルダーを指定します
theme-none = { $folder }にテーマがありません。`--theme FOLDER`で、組み込みのテーマと違うファイルの入ったフォルダーを指定してください
scale-cannot = `{ $name }`をその量にできません：{ $reason }
way-cannot = `{ $name }`はそのようには作れません：{ $reason }
theme-words = テーマの{ $path }:{ $line }：{ $message }
none-near = { $kind }`{ $name }`はありません。`{ $near }`のことですか？
none-at-all = { $kind }`{ $name }`はありません：コンテンツのフォルダーに1つもありません
none-known = { $kind }`{ $name }`はありません。あるもの：{ $known }

## 買い物

order-cannot = `{ $name }`の買い物の一覧を作れません：{ $reason }

## 端末でのプレビュー

preview-no-stop = Ctrl-Cを受け取れません：{ $error }
preview-faults = 問題点があります
preview-port-in-use = ポート{ $port }は使用中です。--portを省くと、空いているものを使います
preview-no-port = ポート{ $port }で配信できません：{ $error }

## 公開

publish-mended = 前の公開のあとで{ $file }が変えられたか消されていました：作り直しました
publish-mended-two = 前の公開のあとで{ $file }と{ $other }が変えられたか消されていました：作り直しました
publish-mended-more = 前の公開のあとで{ $file }とほかの{ $count }個のファイルが変えられたか消されていました：作り直しました
publish-kept = 新しい版に置き場所のない、よそのファイルが1つありました。{ $path }として残してあります
publish-recounted = このバージョンのtourierは、前に公開したものと数え方が違います：文章を直していないのに数値が違うところは、そのためです
publish-old-stands = { $error }。前の版がそのまま残っています
publish-new-stands = { $error }。新しい版はできていて、次の公開のときにもう一度試します
publish-cannot-make = エラー：{ $path }を作れません：{ $reason }
publish-begins = 講座の始まりは{ $folder }/index.htmlです

## 始める

start-not-empty = { $folder }は空ではなく、そこには上書きしません。`tourier start content`のように、新しいフォルダーを指定してください
start-stands = 小さな講座を{ $folder }に書きました
start-ignored = 公開で作られるものは、ここの.gitignoreで除いてあります
start-see = 見るには：  tourier preview{ $content }
start-make = 作るには：  tourier publish{ $content }{ $beside }

## 時刻表

plan-none = 計画がありません：{ $standing }
plan-done-no-step = そこに工程`{ $step }`はありません。あるもの：{ $known }
plan-done-several = `{ $step }`に当てはまるものがいくつかあります。どれかを書いてください：{ $which }
plan-done-no-group = この教室にその班はありません
plan-done-no-kit = この教室の道具に、`{ $kit }`はそれほどありません
plan-now-unreadable = --now { $now }が読めません。--now 18:55のように書いてください
plan-ready-missing = レシピなら、いつできあがるかを書いてください：--ready "2027-03-07 09:00"
plan-ready-unreadable = --ready { $ready }が読めません。--ready "2027-03-07 09:00"のように書いてください
plan-cannot = `{ $name }`の計画を立てられません：{ $reason }

## 計画を待つあいだ

plan-waiting = 計画を立てています。Ctrl-Cを押すと、それまでで最良の計画で止めます
plan-waiting-reasons = 計画が見つかりませんでした。理由と、役に立つ変更を探しています。Ctrl-Cを押すと、それまでに分かったことで止めます

## 打ち込まれたもの

typed-wrong = { $said }。{ $help }
typed-help = 使い方は`tourier { $name } --help`で分かります
typed-commands = コマンドの一覧は`tourier --help`で分かります
typed-command-near = コマンド`{ $word }`はありません。`tourier { $near }`のことですか？
typed-command = コマンド`{ $word }`はありません。あるもの：{ $names }
option-unreadable-in = { $option } { $value }が読めません。{ $option } { $example }のように書いてください
typed-option-of-near = `{ $name }`にオプション`{ $word }`はありません。`{ $near }`のことですか？
typed-option-near = オプション`{ $word }`はありません。`{ $near }`のことですか？
typed-option-of = `{ $name }`にオプション`{ $word }`はありません。{ $help }
typed-option = オプション`{ $word }`はありません。{ $help }
typed-does-not-belong = `{ $word }`はここでは使えません。{ $help }
typed-takes-no-name = `{ $name }`はコンテンツのフォルダーに対して働くので、名前は付けません。別のフォルダーなら`tourier { $name } --content { $word }`と書いてください
typed-word-too-many = `{ $word }`は1語余分です。量を引用符で囲んでください：`tourier { $name } "2 cups bread flour" g`
typed-takes-none = `{ $name }`のそこに`{ $word }`は書けません。{ $help }
typed-missing = { $what }がありません
typed-needs-option = `{ $name }`にはここで{ $option }が要ります。{ $help }
typed-want-folder = 書き込むフォルダー
typed-want-recipe-file = レシピのファイル
typed-want-two-folders = 2つのコンテンツのフォルダー
typed-want-amount = 量
typed-want-shell = シェルの名前
typed-want-class = 教室のファイル名
typed-want-class-or-recipe = 教室またはレシピのファイル名
typed-want-recipe-or-class = レシピまたは教室のファイル名、あるいは`all`
typed-needs-recipe = `{ $name }`にはレシピのファイル名が要ります：`tourier { $example }`
typed-needs = `{ $name }`には次のものが要ります（{ $wanted }）：`tourier { $example }`
typed-needs-value = { $option }には値が要ります：{ $option } { $example }
typed-needs-choice = { $option }には次のどれかが要ります：{ $choice }
typed-needs-a-value = { $option }には値が要ります
typed-none-near = { $option } { $found }というものはありません。`{ $near }`のことですか？
typed-none = { $option } { $found }というものはありません。次のどれかを書いてください：{ $choice }
option-unreadable-as = { $option } { $found }が読めません。{ $option } { $example }のように書いてください
option-unreadable-plain = { $option } { $found }が読めません
typed-twice = { $one }が2回あります。1回で十分です
typed-not-together = { $one }と{ $other }は一緒に使えません。どちらかを省いてください

## 数、結果、ブラウザーでのプレビュー

cli-stopped = 止めました。{ $stands }
kind-language = 言語
kind-recipe = レシピ
kind-class = 教室
kind-recipe-or-class = レシピまたは教室
kind-class-or-recipe = 教室またはレシピ
proof-sound =
    { $count ->
       *[other] レシピ{ $count }件に問題点はありません
    }
changes-none = 読む人に見える違いはありません
changes-of = { $title }
draft-to-settle =
    { $count ->
       *[other] 決めることが{ $count }件あります：
    }
preview-at = 講座は、Ctrl-Cを押すまで{ $address }で見られます
preview-over = プレビューを終わりました
preview-waits = ここを直すまで、新しいものは表示されません
publish-stands = 何も書いていません。前の版がそのまま残っています
publish-unwritten = 何も書いていません。前の版がそのまま残っています
publish-progress = ファイル
publish-idle =
    { $count ->
       *[other] { $folder }/のファイル{ $count }個は最新です。何も作りませんでした
    }
publish-apart = 講師だけのものは{ $folder }/にあります：ウェブには置かないでください
publish-of = { $content }：
publish-same-name = { $one }と{ $other }はどちらも{ $name }という名前ですが、講座にはそれぞれ別のフォルダーが要ります。`--to DIR`で一つずつ公開するか、一方のフォルダーの名前を変えてください
publish-not-begun = まだ始めていません
publish-all = { $count }の講座を公開しました
publish-some = { $all }の講座のうち{ $count }を公開しました。公開していないもの：{ $names }
publish-made-nothing = 何も作りませんでした
publish-made = 作ったもの：{ $kinds }
publish-and-kept =
    { $count ->
       *[other] { $made }。{ $count }個は最新でした
    }
publish-and-removed = { $made }。{ $count }個を取り除きました
publish-pages =
    { $count ->
       *[other] ページ{ $count }個
    }
publish-handouts =
    { $count ->
       *[other] 配布資料{ $count }個
    }
publish-drawings =
    { $count ->
       *[other] 図{ $count }個
    }
publish-others =
    { $count ->
       *[other] ほかのファイル{ $count }個
    }
scale-head = { $title }：{ $batch }、{ $makes }
scale-doughs = 同じ量の生地{ $count }つに分けて
scale-total = 合計{ $metric } / { $us }
scale-total-hydration = 合計{ $metric } / { $us }、加水率{ $percent }%
scale-total-true-hydration = 合計{ $metric } / { $us }、加水率（牛乳、卵、バターの水分を含む）{ $percent }%
scale-each-dough = 生地1つ{ $metric } / { $us }
scale-in-us = （米国）{ $us }
preview-broke-edition = この版を作っている途中で、プレビューに異常が起きました
preview-cannot-make = { $name }を作れません：{ $reason }
preview-no-file = そのファイルはありません
preview-no-page = そのページはありません
preview-unclear = これは読めません
preview-path = この道はサイトの外へ出てしまいます
preview-method = プレビューは見ることだけができます
preview-host = プレビューは127.0.0.1かlocalhostとしてだけ応答します
preview-long = 長すぎます
preview-last-good = 公開されていません：問題のなかった前の版を表示しています
preview-cautions =
    { $count ->
       *[other] この版に注意が{ $count }件あります
    }
preview-making = 作成中
preview-being-made = 講座を作っています。
preview-faults-title = 問題点
preview-nothing-yet = 公開されていません：表示できるものがまだありません

## 進行中の教室

today-file-unreadable = { $file }:{ $line }：`{ $text }`が読めません。"pairs 1-3: second turn; pair 4 late 10"のように書いてください
today-file-unheard = { $file }、{ $at }：{ $why }
today-unreadable = `{ $part }`が読めません。"pairs 1-3: second turn; pair 4 late 10"のように書いてください
today-none-to-begin = この教室には、もとになる計画がありません。理由は`tourier timetable { $name }`で分かります
today-group = 班{ $number }はありません：`{ $name }`の班は{ $groups }までです
today-later-kept = それより後のことが、すでに書き留められています。前のことは、その日のファイルに直接書いてください
today-no-time = { $time }は実際の時刻ではありません
today-no-session = --now { $now }の近くに回がありません。--now 18:55のような時刻を書いてください
today-several = --now { $now }に当てはまる日がいくつかあります。どの日かを書いてください：--now "{ $day }"
today-no-zone = 講座に`time zone`が書かれていません。いまの時刻を書いてください：--now "{ $example }"
note-kept = { $file }に書き留めました。まだ取り入れていない覚え書き：{ $open }
note-none = { $recipe }についての覚え書きはありません
note-line = { $number }. { $on } { $text }
note-line-taken = { $number }. { $on } { $text }（{ $taken }に取り入れ）
note-no-number = { $recipe }に覚え書き{ $number }はありません。全部で{ $count }
note-taken-before = 覚え書き{ $number }はもう取り入れられています
note-unkept = 覚え書きは500字までです。長いものは{ $recipe }の本文に書いてください
note-no-day = `{ $said }`は日付ではありません。`--on 2027-03-03`のように書いてください
today-by-the-clock = いまは{ $time }で、近くに回がありません。時刻を書いてください：--now "{ $example }"
