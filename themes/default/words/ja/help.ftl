### コマンド、オプション、値について`--help`が言うこと。キーはその名前からできている：`help-コマンド`、`help-コマンド-オプション`、その後に`-値`。
### `any`はすべてのコマンドを指す。`バッククォート`の中の語は入力するもので、そのまま残す。

## 見出し

help-head-usage = 使い方
help-head-commands = コマンド
help-head-command = コマンド
help-head-arguments = 引数
help-head-options = オプション
help-head-values = 使える値
help-head-values-short = 使える値
help-head-default = 既定
help-head-examples = 例
help-head-name = 名前
help-head-description = 説明
help-head-version = バージョン

## すべてのコマンド

help-tourier = 手作りの焼き菓子やパンのレシピをプレーンテキストで収めたフォルダーから、確かめ済みの講座サイトと印刷用の配布資料を作る
help-any-content = コンテンツのフォルダー。いくつも指定すると、いくつもの講座が公開される：それぞれ、出力フォルダーの下の同じ名前のフォルダーに
help-any-theme = 組み込みのテーマに重ねるテーマのフォルダー
help-any-quiet = 進み具合も最後の行も表示しない
help-any-color = メッセージに色を付けるとき
help-any-color-auto = 端末のとき（NO_COLORが設定されていれば付けない）
help-any-color-always = いつも
help-any-color-never = 付けない
help-any-help = ヘルプを表示する：`-h`は要約、`--help`は全部
help-any-version = バージョンを表示する

## いくつものコマンドにあるもの

help-any-recipe = レシピのファイル名
help-any-class = 教室のファイル名
help-any-name = 教室またはレシピのファイル名。いくつものレシピ、`crescents,chocolate-batons`は一緒に作り、共通の生地は一度だけ作る
help-any-as = 答えの形
help-any-as-text = 人が読むため
help-any-as-json = プログラムのため
help-any-as-csv = 表計算のため
help-any-as-ics = カレンダーのファイル
help-any-as-svg = 図
help-any-units-metric = メートル法
help-any-units-us = 米国の単位
help-any-pieces = 個数：`24`
help-any-piece-weight = 1個の重さ：`60g`。個数はレシピのとおりか、`--pieces`のとおり
help-any-batches = 仕込みの倍数：`1.5`
help-any-flour = 粉の合計：`1kg`
help-any-total = 全体の量：`2kg`
help-any-tin = 別の型に合わせて：`23 cm round`
help-any-with = レシピにある別の作り方の一つ、またはいくつか：`"oat drink"`、`"without walnuts"`

## `start`

help-start = 始めるための小さな講座を新しいフォルダーに書く
help-start-dir = 講座を書き込むフォルダー。新しいもの、または空のもの

## `publish`

help-publish = すべてを確かめてから、サイトとすべての配布資料を書く。変わったものだけが作られる
help-publish-to = 出力フォルダー。指定しなければ`output`。講座がいくつもあるときは、それぞれのフォルダーが入るフォルダー
help-publish-among-others = `--to`で指定したフォルダーに、よそのファイルがあり、まだ公開したことがなくても公開する。そのファイルはそのまま残る
help-publish-thorough = 公開したファイルが壊れていないか、大きさと時刻だけでなく中身をすべて読んで確かめる
help-publish-shared = いくつもの機械や講座で共有する、できあがったファイルのフォルダー：そこにあるものは作り直さず、作ったものは、書き込めるときはそこに入れる

## `preview`

help-preview = この機械の上だけでサイトを見せ、ファイルが保存されると作り直す
help-preview-port = 使うポート。指定しなければ空いているもの
help-preview-desk = 書き物机から始める：ブラウザーで文章を書き、その横にできあがるページを見る
help-preview-to-read = 読むだけ：書き物机はなく、何も書き込まない
help-preview-room = 同じローカルネットワークの電話から、コードを読み取ってページを読み、教室の当日に起きたことを記せるようにする。この機械にアドレスがいくつもあるときはADDRESSで
help-preview-no-browser = ブラウザーを開かない

## `editor`

help-editor = 書いている間エディターと話す：誤り、補完、語の意味（標準入出力でのLanguage Server Protocol）

## `handout`

help-handout = 配布資料を一つPDFにする。または講座全体や教室のものを一つのPDFにする
help-handout-recipe = レシピのファイル名。いくつか、`crescents,chocolate-batons`なら一つにし、共通の生地は一度だけ。`all`なら表紙を付けて講座のすべてのレシピ。教室のファイル名ならその一式：受講者用の資料と、班ごとの量を書いた作業カード
help-handout-kind = 配布資料の種類：指定しなければ`student`、教室なら`student`と`bench`
help-handout-kind-student = 持ち帰り用
help-handout-kind-bench = 作業場所に立てる1ページ
help-handout-kind-large-print = 18ポイントの受講者用資料
help-handout-units = 先に書く単位。指定しなければ講座のもの
help-handout-paper = 用紙。指定しなければ講座のもの
help-handout-paper-a4 = A4判
help-handout-paper-letter = 米国のレター判
help-handout-language = 言語。講座にあるもののうちから。指定しなければ最初のもの
help-handout-level = 一部の人に向けた、ページでは畳んである説明も印刷する。教室では、指定しなければそのファイルのとおり
help-handout-level-beginners = 初めて作る人
help-handout-level-practised = 作ったことのある人
help-handout-booklet = 紙の片面に2ページずつ。半分に折って使う
help-handout-labels = 計量したもののラベル。この大きさのラベル用紙に：`70 x 37 mm`
help-handout-to = 書き込むフォルダー

## `proof`

help-proof = すべてを確かめ、何も書き込まない

## `facts`

help-facts = レシピ、または一緒に作るいくつかについて計算したすべてをJSONで出す
help-facts-recipe = レシピのファイル名。いくつか、`crescents,chocolate-batons`は一緒に作り、共通の生地は一度だけ作る
help-facts-schema = この出力、またはあなたが書く文章のJSON Schemaを出す
help-facts-schema-facts = `facts`の出力
help-facts-schema-together = いくつものレシピについて出すもの
help-facts-schema-course = course.yaml
help-facts-schema-pantry = pantry.yaml
help-facts-schema-glossary = glossary.yaml
help-facts-schema-class = 教室
help-facts-schema-recipe = レシピの頭の部分
help-facts-schema-technique = 技法の頭の部分
help-facts-schema-translation = 別の言語の文章の頭の部分

## `scale`

help-scale = レシピ、または一緒に作るいくつかの配合を、量を変えて、両方の単位系で見せる
help-scale-recipe = レシピのファイル名。いくつか、`crescents,chocolate-batons`は一緒に作り、共通の生地は一度だけ作る

## `timetable`

help-timetable = 教室の予定を立てる。または家で作るレシピの予定を、できあがる時刻から逆に立てる
help-timetable-ready = レシピのとき：できあがる時刻、`2027-03-07 09:00`
help-timetable-group = `--as ics`と一緒に：この番号の班のカレンダー。指定しなければ講師のもの

## `today`

help-today = 進行中の教室：起きたことを残し、残りの予定を立て直す
help-today-said = 起きたこと：`pairs 1-3: second turn; pair 4 late 10; pair 2: brush skipped`、`all: first turn at 18:50`、`pair 1: bake from 19:40`、`all: nothing yet`、`pair 3 gone`、`oven 2 out`、`oven 2 back`。`take back`は前の行を取り消す。手順の名前は初めの部分だけでよい。名前の出ない班は予定どおりとみなす
help-today-now = 今の時刻、`18:55`。指定しなければこの機械の時刻
help-today-try = どうなるかを見るだけ：何も残さない

## `note`

help-note = 作業台で気づいたことを、レシピの次の版のために書き留める。その覚え書きを見せる
help-note-said = 書き留めること。2つ目の覚え書きがレシピに入ったら`taken up 2`、すべて入ったら`taken up`。何も書かなければ覚え書きを見せる
help-note-on = 覚え書きの日付、`2027-03-03`。指定しなければこの機械の今日

## `order`

help-order = 教室、または一緒に作るレシピの買い物と計量の一覧

## `changes`

help-changes = コンテンツの2つの版の違いを、読む人の言葉で言う
help-changes-old = 古い版のコンテンツのフォルダー
help-changes-new = 新しい版のコンテンツのフォルダー
help-changes-units = 使う単位。指定しなければ新しい版のもの

## `draft`

help-draft = すでにあるレシピから下書きを作る：どこかから写した文章、schema.orgのデータがある保存済みのウェブページ、またはそのデータだけ。ネットワークからは何も取らない
help-draft-file = レシピのファイル。入力や貼り付けをするときは`-`
help-draft-to = 書き込むファイル。指定しなければ、コンテンツのフォルダーの、レシピの名前のファイル。下書きを見るだけなら`-`

## `convert`

help-convert = 量を一つ換算し、使った密度を言う
help-convert-amount = 換算するもの：`2 cups bread flour`、`190 °C`
help-convert-unit = 求める単位：`g`、`oz`、`cup`、`tbsp`、`ml`。オーブンなら`°C`、`°F`、`fan`、`no fan`。ファン付きで書いたオーブン、`fan 170 °C`には要らない

## `completions`

help-completions = シェルがコマンドとオプションを補完するためのものを出す
help-completions-shell = シェル

## `manual`

help-manual = マニュアルのページを出す（`man`用）

## `help`

help-help = このヘルプ、またはコマンドのヘルプを表示する
help-help-command = コマンド
