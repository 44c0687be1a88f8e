### 文章のどこが問題で、どう書けばよいか。文中の { $name } にはプログラムが値を入れます。バッククォートで囲んだ語は、書き手が
### 書くとおりのもので、そのまま残します。メッセージには句点を付けず、対処には付けます。

## 端末での問題点の見え方

fault-place = { $file }、{ $line }行目
fault-error = エラー：
fault-caution = 注意：
fault-help = 対処：
fault-sentence = { $message }。
fault-errors =
    { $count ->
       *[other] エラー{ $count }件
    }
fault-cautions =
    { $count ->
       *[other] 注意{ $count }件
    }
fault-none = 問題点はありません
fault-all = { $parts }

## 了承済みの問題点

not-acceptable = `{ $name }`は了承済みにできません
names-acceptable = 了承済みにできるもの

## 食い違う量

amounts-disagree-more = かっこの中の量は{ $second }で、初めの量より{ $percent }%多くなっています
amounts-disagree-less = かっこの中の量は{ $second }で、初めの量より{ $percent }%少なくなっています
amounts-disagree-help = 初めの量（{ $first }）を使います。どちらかを直すか、2つ目を省いてください。
yield-off = ロスを引くと、配合からは{ $weight }しかできません
yield-off-help = `makes: { $weight }`と書くか、配合を増やしてください。

## 教室

class-makes-nothing = この教室では何も作りません
class-makes-nothing-help = 各ペアがどのレシピを作るかを`makes`の下に書いてください。
class-never-held = この教室には開く日がありません
class-never-held-help = いつ開くかを`sessions`の下に書いてください。例：`- 2027-03-02 18:00 to 21:00`。
missing-file = ファイル`{ $file }`がありません
names-recipes = ここにあるレシピ
class-pieces = `{ $name }`は個数ではなく重量で作ります
class-pieces-help = `pieces`の代わりに`batches: 1`と書いてください。
session-overlap = この回は、前の回が終わる前に始まります
session-overlap-help = それぞれの回に、重ならない時間を書いてください。
long-session = この回は{ $hours }時間続きます
long-session-help = 終わりの時刻を`18:00 to 21:00`のように書いてください。夜中の0時を過ぎて終わるものは、翌日に終わるものとします。
step-without-hands = `{ $step }`には手を動かす作業がありません
step-without-hands-help = `hands: 5 min`を加えるか、別の工程を実演してください。
late-nobody = `late`にある班は、この教室にありません：{ $groups }班までです
late-nobody-help = 班は1から数えてください。
late-never = それほど遅れると、どの回にも出られません
late-never-help = 始まってからどれだけ後に来るかを書いてください（例：`20 min`）。
break-outside = この休憩は、どの回にも入りません
break-outside-help = `{ $at }`、`{ $between }`、または各回の中ほどなら`{ $lasts } min`と書いてください。
besides-too-long = 集合、説明、片付け、余裕に{ $minutes }分かかり、この回の長さに届きます
besides-too-long-help = それらを短くするか、回を長くしてください。
unknown-class-step = この教室のどのレシピにも、工程`{ $step }`がありません
unknown-class-step-help = 工程の名前は、見出しを小文字にし、空白をハイフンにしたものです。
did-you-mean = `{ $near }`のことですか？
class-kit-short = { $name }を{ $count }使う工程がありますが、道具には{ $have }しかありません
class-kit-short-help = 工程カードか道具を直してください。このままでは、どんな計画も収まりません。
class-kit-none = レシピに要る道具（{ $name }）が、道具の一覧にありません
class-kit-none-help = 計画で割り振れるように、`kit`に`{ $name }: …`を加えてください。
class-kit-no-place = { $place }で待つ工程がありますが、そこには天板が1枚も入りません
class-kit-no-place-help = 天板が何枚入るかを書くか、この行を省いてください。
class-kit-no-oven = レシピに焼成がありますが、道具に{ $name }がありません
class-kit-no-oven-help = `kit`に`oven: 2, tray per oven: 4`を加えてください。
class-kit-oven-unlisted = レシピに焼成がありますが、道具の一覧にオーブンがありません
class-kit-instructor = この教室には講師が{ $least }人要りますが、{ $have }人になっています
class-kit-instructor-help = `instructor: { $least }`と書くか、実演をやめてください。
class-kit-unknown = この道具（{ $name }）を使うレシピも、そこで待つ工程もありません
class-kit-unknown-help = 要る工程の工程カードに書いてください：`kit: 1 mixer`。

## 切り分け

cut-no-sheet = 切り分ける生地がのばされていません
cut-no-sheet-help = この工程か前の工程に`sheet: 54 x 48 cm`のように書いてください。
cut-too-large = のばした生地から1個も取れません
cut-too-large-help = 1個を小さくするか、生地を大きくのばしてください。
cut-too-many = { $most }個を超えてしまいます
cut-too-many-help = 1個とのばした生地の単位を確かめてください。
cut-count = この切り方では{ $made }個できますが、`makes`には{ $count } { $word }とあります
cut-count-help = のばした生地、1個の大きさ、`makes`のどれかを直し、合わせてください。
cut-count-parts = 全部の部分を合わせると{ $made }個できますが、`makes`には{ $count } { $word }とあります

## 分割

unknown-part = 部分`{ $part }`を分ける工程がありません
unknown-part-help = 生地を分割するところで名前を付けてください：`divide: half for crescents, the rest for batons`。
divided-off-help = どれか1つの部分を`the rest`にするか、ほかの部分を直してください。
divided-too-much = 各部分の合計が、生地の{ $weight }より{ $over }%多くなっています
divided-no-rest = 生地の{ $weight }から、残りの分がなくなっています
divided-too-little = 生地の{ $weight }のうち{ $left }%の行き先がありません

## ミキサーと台

mixer-too-small = ここに入る生地は{ $dough }ですが、ミキサーに入るのは{ $most }までです
mixer-too-small-help = 2回に分けてこねるか、配合を減らしてください。
bench-too-short = 台は{ $bench }です
bench-too-short-help = 生地を2つに分けるか、もっと短く幅広くのばしてください。

## 折り込み

block-too-big-envelope = { $block }の油脂は、この生地の封筒包みには{ $short }大きすぎます：油脂の一辺は生地の一辺の0.7倍までです
block-too-big-letter = { $block }の油脂は、この生地の3分の2に対して{ $short }大きすぎます
block-too-big-book = { $block }の油脂は、この生地の中央の半分に対して{ $short }大きすぎます
block-too-big-help = 閉じるための余白を5 mm残して、油脂を小さくするか、生地を大きくのばしてください。
fat-unlike-dough = 油脂の厚さは{ $fat }、生地は{ $dough }です：このままでは一緒にのびません
fat-unlike-dough-help = 両方がほぼ同じ厚さになるまで、油脂をたたいて広く薄くするか、生地のほうを広く薄くのばしてください。
block-no-margin = 油脂のまわりに、閉じるための余白がありません
block-no-margin-help = 油脂のまわりに、生地を少なくとも5 mm残してください。
sheet-of-nothing = この工程では、台の上に生地がありません
sheet-of-nothing-help = 何が入るかを、前の工程カードに書いてください：`uses: dough`。
sheet-too-big = ここでは生地の厚さが{ $lies }しかありません：この生地の量には大きすぎます
sheet-may-tear = ここでは生地の厚さが{ $lies }しかありません：破れることがあります
sheet-too-thick = ここでは生地の厚さが{ $lies }もあります
sheet-thickness-help = 厚さを{ $usual }にするには、面積をこの{ $share }%にします。または配合を直してください。
fat-layer-too-thin = この折りの前で、{ $layers }層の油脂は1層が{ $thickness } mmしかありません
fat-layer-too-thin-help = 0.01 mmより薄いと層がくっつきます。生地をもっと小さくのばすか、折りを1回減らしてください。
part-too-short = { $parts }つに折ると、それぞれの部分の長さが{ $short }足りません
part-too-short-crossed = 初めの数値が折る辺です：長いほうを先に書いてください。
part-too-short-help = 生地をもっと長くのばすか、折る数を減らしてください。

## 油脂と層

fat-share-puff = 折り込み油脂が、折りパイ生地の粉の{ $percent }%になっています
fat-share-yeast = 折り込み油脂が、発酵生地の{ $percent }%になっています
fat-share-help = 普通は{ $least }〜{ $most }%です。
seams-not-turned = 生地を、折る前と同じ向きにのばしています
seams-not-turned-help = 普通は90度回し、生地が前とは違う向きにのびるようにします。この行を消すか、了承済みにしてください。
sheet-gets-narrower = ここで生地の幅が狭くなります：{ $from }の辺が{ $to }になってしまいます
sheet-gets-narrower-help = 生地を押し縮めることはできません。初めの数値はのばす辺で、折ったあとは背に沿った辺です。生地をもっと幅広く書くか、前の折りを狭くしてください。

## リンク

bad-link = `{ $link }`へのリンクには行き先がありません
bad-link-help = ここにあるファイル（`../techniques/letter-turn.md`）か、https:、http:、mailto:で始まるアドレスへリンクしてください。

## 講座の見た目

logo-holds-pictures = ロゴに画像が入っています
logo-holds-program = ロゴにプログラムが入っています
logo-holds-page = ロゴにページの部品が入っています
logo-holds-words = ロゴに文字のままの言葉が入っています
logo-holds-entities = ロゴに実体参照が入っています
pale-accent = 白地でのこの色のコントラストは{ $ratio }:1です：少なくとも{ $least }:1が要ります
pale-accent-help = もっと濃い色にしてください。コピー機では灰色になります。
no-logo = 図`{ $logo }`がありません
no-logo-help = content/mediaの下にSVGファイルを置いてください：`logo: media/house.svg`。
unknown-law = アレルゲンの一覧`{ $law }`がありません
unknown-law-help = 使えるのは{ $known }です：`allergen lists: eu`。
logo-unreadable = ロゴが図として読めません
bad-logo-help = 文字を図形に変え、普通のSVGとして保存してください。
no-words = 言語`{ $language }`の文言がありません
no-words-help = `en`と書くか、`words/en/`のファイルを訳したものを、その言語の名前のフォルダーとしてご自分のテーマに置き、そのテーマを--themeで指定してください。

## 入るもの

unused-help-allergen = これを入れる工程の工程カードに`uses: { $name }`を加えてください。
unused-help = これを入れる工程の工程カードに`uses: { $name }`を加えてください。どこにも入れないのなら、この行を消してください。
unused-section = 区分`{ $name }`のものを使う工程がありません
unused-ingredient = この材料（{ $name }）を使う工程がありません
place-misspelt = `{ $name }` は既知の場所の名前とほぼ同じですが、別の場所として扱われます
unknown-use = `{ $name }`は、このレシピの区分でも材料でもありません
names-in-recipe = このレシピにあるもの

## 名前

taken-by-windows = `{ $name }`は、Windowsが装置のために取ってある名前です
taken-all = `tourier handout all`は講座全体を印刷するもので、このレシピだけを印刷することはできません
taken-by-recipe = 同じ名前`{ $name }`のレシピもあります：コマンドはこの名前を教室とみなします
taken-name-help = ファイルの名前を`{ $better }`のように変え、それを指しているところも直してください。
one-page-for-two = このファイルと`{ $file }`が、同じ1つのページになってしまいます
one-page-for-two-help = どちらかのファイルの名前を変えてください。大文字と小文字だけの違いでは区別できません。
bare-name = `{ $word }`は、ここのすべてのレシピで{ $meant }とみなします
bare-name-help = この講座で何を指すかを`course.yaml`に書いてください：
    { $entry }
same-word = `{ $word }`の説明が2つあります
same-word-help = どちらか1つを残してください。
names-files = そこにあるファイル

## オーブン

fan-not-cooler = 熱風を使うときは、使わないときより低い温度にしますが、ここではそうなっていません
fan-not-cooler-help = 約20 °C低くすると同じように焼けます。省くと、そのように計算します。

## 冷却、生卵。安全に関わるもの

cooling-missing = 卵の入ったカスタードかクリームですが、後のどの工程にも、どう冷やすかが書かれていません
cooling-missing-help = 冷やす工程に`cool: custard`を加えてください：2時間以内に57 °Cから21 °Cへ、合計6時間以内に5 °Cへ冷やします。地域の決まりを優先してください。
cooling-slow-warm = 冷蔵庫の外で、2時間より長く冷ますことになるかもしれません
cooling-slow-all = 合計6時間より長く冷ますことになるかもしれません
cooling-slow-help = 2時間以内に57 °Cから21 °Cへ、合計6時間以内に5 °Cへ冷やします：いちばん長い待ちを短くしてください。地域の決まりを優先してください。
held-warm = カスタードかクリームを詰めたものが、ここで冷蔵庫の外に置かれるかもしれません
held-warm-help = `hold: up to 24 h in the fridge`と書くか、保存の行を消してください：詰めたものは5 °C以下で保ちます。地域の決まりを優先してください。
day-too-early = これは{ $day }日目ですが、後の日の「{ $step }」を待っています
day-too-early-help = `{ $step }`を早い日に移すか、本当に何に続くのかを`after`に書いてください。
night-without-hold = これが{ $day }日目まで置けると、どこにも書かれていません：少なくとも{ $time }
night-without-hold-help = 十分に長い待ちか保存を書いてください：`hold: up to 24 h in the fridge`。
thawed-warm = 凍らせたものを、ここでは温かい所で解凍しています
thawed-warm-help = 冷蔵庫で、5 °C以下で解凍してください：`thaw 9 h in the fridge`。地域の決まりを優先してください。
raw-egg-eaten = この材料（{ $name }）は生で食べることになります：後のどの工程でも、焼いたり火を通したりしません
raw-egg-eaten-help = `pasteurised egg`を使うか、火を通してください：工程カードに`core: 71 °C`。地域の決まりを優先してください。
core-too-low = 生卵が入っているので、これより高い温度にしなければなりません
core-too-low-help = すぐに食べない生卵は、少なくとも68 °Cまで火を通します。地域の決まりを優先してください。

## 画像

missing-picture-help = 画像を`media/{ $picture }`に置いてください。
missing-picture = mediaフォルダーに画像`{ $picture }`がありません

## 1個の重量

weight-open = 混ぜ込むこの材料（{ $title }）に重量がありません
weight-open-help = およその量を`300 g { $title }`のように書くか、表面に使うものだと書いてください：`{ $title }, for dusting`。それまでは、これによって決まるベーカーズパーセント、加水率、1個の重量を出しません。
piece-weight-unknown = 1個の重量が計算できないので、どの用紙にも載りません
piece-weight-unknown-help = 分けて形にするまでの各工程に、何が入るかを書いてください：`uses: dough`。

## 波かっこ

unknown-brace = `{"{"}{ $name }{"}"}`は、ここでは何も指しません
unknown-brace-help = { $suggested }波かっこをそのまま書くには`\{"{"}{ $name }\{"}"}`とします。
brace-temperature-help = 温度を記号と一緒に書いてください：`{"{"}{ $digits } °{ $scale }{"}"}`。
brace-number-help = 温度`{"{"}190 °C{"}"}`、大きさ`{"{"}20 x 20 cm{"}"}`、長さ`{"{"}4 mm{"}"}`のどれかで書いてください。

## アレルゲンと水。安全に関わるもの

allergens-unknown = `{ $name }`のアレルゲンが分かりません
allergens-unknown-help = 包装の表示を読み、書かれているものを`pantry.yaml`に書いてください：
    { $entry }
named-beside = この行に`{ $name }`の名前があります：そのアレルゲンも数えます
named-beside-help = 重量を付けるか`{ $name }, as needed`として、独立した行にしてください。入れないのなら、この行からその名前を消してください。
water-too-cold = この講座の部屋では、水を氷より冷たくしなければなりません
water-too-cold-help = 粉を冷やすか、こねる時間を短くするか、こね上げ温度を高くしてください。
water-unknown = `{ $name }`の水分が分からないので、それを含む加水率が計算できません
water-unknown-help = `pantry.yaml`に`like:`を書くか、`true hydration`を省いてください。

## 下書き

to-settle = まだ決まっていません：{ $line }
to-settle-help = 本文で決めてから、この行を消してください。

## 形

unknown-shape = `{ $name }`という形はありません
unknown-shape-help = 技法の`shapes`の下に、`frames`を並べて形を書いてください。
form-triangle = 三角形
form-right-triangle = 直角三角形
form-rectangle = 長方形
form-square = 正方形
form-round = 円形
form-strip = 帯状
form-lump = かたまり
shape-misfit = { $form }の生地は{ $shaping }の形にできません
shape-misfit-help = 前の切り分けか、形を直してください。そうしないと図が描けません。

## 工程

step-ring = 次の工程が互いを待っています：{ $steps }
step-ring-help = 最初の工程ができるように、`after:`から名前を1つ消してください。
unknown-video-help = 冒頭部の`watch:`の下に、`- { $name }: https://…`の行を加えてください。
unknown-video = 冒頭部に動画`{ $name }`がありません
makes-missing = このレシピで何ができるかが書かれていません
makes-missing-help = `makes: 22 crescents`を加えてください。元になる生地なら、その重量を`makes: 1100 g`のように書きます。
no-formula = このレシピには配合がありません
no-formula-help = `formula:`を加え、区分と`- 500 g bread flour`のような行を書いてください。
no-steps = このレシピには工程がありません
no-steps-help = 工程は、見出しと、そのすぐ下の`~~~ticket`でできています。
preferment-not-above = `{ $name }`は、これより前に書かれた前生地ではありません
preferment-not-above-help = 先に書いてください：`preferment: { $first }, { $second } from { $first }`。
names-sections = ここにある区分
unknown-section = 配合に区分`{ $name }`がありません

## 天板

tray-too-full = { $piece }のもの{ $on_one }個は、間隔を空けると{ $tray }の天板に載りません：載るのは{ $fits }個です
tray-too-full-help = `per tray: { $most }`と書くか、もっと小さく成形してください。くっついたものは、側面に焼き色が付きません。

## 書き損じ：温度

impossible-oven = { $heat }で焼くオーブンはありません
unlikely-oven-hot = { $heat }は、製パン用のオーブンの温度より高すぎます
both-units = { $metric }（{ $us }）
look-at-degrees = 数値と、その後ろの単位（°Cか°F）を確かめてください。
unlikely-oven-cool = { $heat }では生地が乾くだけで、焼けません
unlikely-core = 中心温度{ $heat }で焼き上がるものはありません
unlikely-core-help = パンは中心が88〜99 °C、カスタードは76〜85 °Cで火が通り、卵は71 °Cより低いと安全ではありません。地域の決まりを優先してください。
impossible-wait-heat = { $heat }で待つものはありません
yeast-dies = { $heat }では酵母が死にます
butter-runs-out = { $heat }ではバターが層から流れ出します
butter-runs-out-help = 26 °Cを保ち、28 °Cより低くしてください。
butter-oils-out = { $heat }ではバターが溶けて生地からしみ出します
butter-oils-out-help = 32 °Cより低く保ってください。
impossible-dough-heat = こね上げ温度が{ $heat }になる生地はありません
unlikely-dough-heat = { $heat }は、製パンのこね上げ温度から外れています

## 書き損じ：粉に対する割合

unlikely-share = これは粉の{ $percent }%です
unlikely-share-help = 数値と単位を確かめてください。製パンで、これほど多く入る生地はありません。
unlikely-water = 水分は全部で粉の{ $percent }%です：これでは発酵生地になりません
unlikely-water-help = 粉と水の数値を確かめてください。

## 書き損じ：時間

bake-without-time = 焼成には時間が要ります
bake-without-time-help = `190 °C, 22 min`のように書いてください。
unlikely-bake-time = { $time }は、この温度の焼成時間としては珍しい長さです
impossible-wait = 1年より長く待つ人はいません
unlikely-wait-cold = 冷たいところで{ $time }は、生地を置く時間としては長すぎます
unlikely-wait-warm = 冷蔵庫の外で{ $time }は、生地を置く時間としては長すぎます
impossible-hands = これでは作業が1日より長く続きます
unlikely-hands = 作業{ $time }は、1つの工程としては1日がかりの長さです
unlikely-time-help = 数値と、その後ろの単位（s、min、h、days）を確かめてください。

## What steps are to reach

goal-ph = pH { $value }
goal-percent = { $percent }%
goal-impossible = { $value }になるものはありません
goal-unlikely = { $value }は、この仕事で知られている範囲の外です
goal-unlikely-help = 数字を確かめてください。生地のpHは3から8、温度は5から40 °C、膨らみは10から400%、オーブンで減る重さは1から45%です。
growth-without-wait = 待ち時間のない工程では何も膨らみません
loss-without-bake = 焼成も待ち時間もない工程では重さは減りません
goal-out-of-place-help = `{ $key }`は、それが起こる工程に書いてください。
goals-at-odds = 見出し部では{ $value }となっていて、この範囲の外です
goals-at-odds-help = 見出し部の`{ $key }`にも同じ値を書いてください。
unlikely-mixing = 生地をこねる時間として{ $time }は珍しい長さです
mixing-beyond-step = ミキサーは{ $time }回り、工程は{ $own }で終わります
mixing-beyond-step-help = `hands`に同じ分数を書くか、その行を消してください。消せばミキサーの時間になります。

## Other kit

way-of-step-twice = この工程には{ $way }が二度書かれています
way-of-step-twice-help = 工程の別のやり方には、それぞれ違う名前を付けてください。
sheeter-without-sheet = この工程では何も伸ばしません
sheeter-without-sheet-help = `sheeter: yes`は`sheet`のある工程に書いてください。
friction-unsaid = { $way }の場合に生地がどれだけ温まるか書かれていません
friction-unsaid-help = その欄に`friction: 2 °C`のように書いてください。手はミキサーほど生地を温めないので、水は温かくなります。

## 何を指していたか

more-faults = このファイルには、ほかに問題点が{ $count }件あります
more-faults-help = 先にほかのものを直してください。そのあとで示します。
names-none = { $they }：まだありません。
names-known = { $they }：{ $names }。
names-more = { $they }：{ $names }、ほか{ $more }。

## 量の行

link-no-recipe = このリンクの先はレシピではありません
link-no-recipe-help = このファイルの隣にあるファイルへリンクしてください：`900 g [layered dough](layered-dough.md)`。
amount-not-whole = 量が最後まで読めません
amount-not-whole-help = 量1つ、単位1つ、材料1つを書いてください。例：`250 g butter, cold`、`1 lb 4 oz butter`、`2 large eggs`。材料が2つなら2行に分けます。
no-amount = ここでは量が読めません
no-amount-help = `250 g butter, cold`のように、名前の前に量を書いてください。量を決めないのなら、`{ $name }, as needed`と書きます。
heaped-spoon = 山盛り1杯の量は分かりません
heaped-spoon-help = すりきりにして何杯分かを書いてください：`2 tbsp cocoa`。
unknown-vessel = この容器に入る量は分かりません
unknown-vessel-help = 水を満たして量り、その量を書いてください：`250 ml buttermilk`。
old-measure = この古い単位がどれだけかは分かりません。時代や土地によって違いました
old-measure-help = グラムで書いてください：`250 g バター`。

## 冒頭部、見出し、工程カード

head-begin-help = `---`の行、`title: Crescents`のような行、もう一度`---`の行、という形で始めてください。
head-file-empty = このファイルは空です
head-does-not-begin = 冒頭部が始まっていません：ファイルの最初の行は`---`です
head-has-no-end = 冒頭部が終わっていません
head-has-no-end-help = 冒頭部の最後の行の後ろ、本文の前に、`---`（ハイフン3つ）の行を置いてください。
bad-heading = 工程の見出しは`##`と空白で始まります
bad-heading-help = `## { $words }`と書いてください。
ticket-fence = 工程カードは`~~~ticket`の行で始まります
ticket-fence-help = 最初の行の前に`~~~ticket`、最後の行の後ろに`~~~`を書いてください。
ticket-no-end = この工程カードが終わっていません
ticket-no-end-help = 最後の行の後ろに`~~~`の行を置いてください。
stray-ticket = この工程カードの上に見出しがありません
stray-ticket-help = 工程カードは、`## Mix`のような工程の見出しのすぐ下に1つだけ置きます。

## 教室のファイル

example-changeover = `5 min`、または`{"{"} mixer: 10 min, oven: 5 min {"}"}`
example-late = `{"{"} pair 3: 20 min {"}"}`
example-talk = `15 min`、または`15 min before first-turn`
example-break = `15 min at 19:30`、`15 min between 19:15 and 20:00`、または`15 min`
example-pace = `1.5`、または`{"{"} first-turn: 1.5 {"}"}`：レシピの時間の4分の1から4倍まで
example-makes = `recipe: crescents`、`each: pair`、`pieces: 12`を並べたリスト
makes-no-list = `makes`はレシピのリストです
makes-no-list-help = それぞれを`- recipe: crescents`で始めてください。
example-each = pair（またはbaker、demonstration）
makes-both = `pieces`と`batches`の両方に、作る量が書かれています
makes-both-help = どちらか1つだけを書いてください。
kit-twice = ここに`{ $name }`が2回あります
kit-twice-help = いくつあるかを1回だけ書いてください。
kit-no-number = ここの`{ $name }`には整数が要ります
kit-no-number-help = `{ $name }: 2`のように書いてください。

## course.yaml

news-no-day = ここには、日付と、それ以来新しくなったことが入ります
news-no-day-help = `- 2027-02-15: The buns rest overnight now.`のように書いてください。

## キーと値

no-map = ここには`key: value`の行が入ります
no-map-help = 1行に1つずつ`key: value`を書いてください。
no-list = `{ $key }`はリストです
no-list-help = 各行を`- `で始めてください：`{ $example }`。
not-filled-in = `{ $name }`の`{ $key }`がまだ書かれていません
not-filled-in-help = 包装の表示か、量った値を`{ $key }:`の後ろに書いてください。
not-one-value = `{ $key }`はリストではなく、1つの値です
not-one-value-help = 1行に書いてください：`{ $key }: …`。
missing-key = `{ $key }`がありません
missing-key-help = `{ $key }: { $example }`のような行を加えてください。
no-words-list = ここには言葉のリストが入ります
no-words-list-help = 言葉に`: `が含まれるときは、"二重引用符"で囲んでください。
unknown-key = `{ $key }`は、ここで使うキーではありません
unknown-key-help = ここで使えるもの：{ $keys }。
unreadable-value = `{ $value }`は`{ $key }`の値として読めません
unreadable-value-help = `{ $example }`のように書いてください。

## glossary.yaml

example-title = クレセント
example-meaning = 生地がゆるむまで休ませる時間

## 講座そのもの

missing-course = `course.yaml`がありません
missing-course-help = 少なくとも`title: …`と`summary: …`を書いたものを作ってください。

## pantry.yaml

pantry-amount = ここは量で始まっていますが、材料の名前が量で始まることはありません
pantry-amount-help = ここには材料の名前だけを書き、量はレシピに書いてください：`1 lb 4 oz butter`。
pack-not-said = ここに、包装に表示されているものが書かれていません
pack-not-said-help = 包装に表示されているアレルゲンを1つ残らず書き、ほかのものは書かないでください。

## 文章の中の画像

bad-picture = `{ $picture }`は、ここの画像にできません
bad-picture-help = mediaフォルダーにある.jpgか.pngで終わるファイルを、英字、数字、ハイフンだけの名前で書いてください：`![what it shows](../media/roll-up.jpg)`。
picture-without-words = 画像`{ $picture }`に何が写っているかが書かれていません
picture-without-words-help = 画像が見えない人のために、短い言葉で書いてください：本文では`![both hands roll it away](../media/roll-up.jpg)`、工程カードでは`picture: roll-up.jpg, both hands roll it away`。

## 本文

until-brace = `until`で単位に合わせて変わるのは、温度、長さ、大きさだけです
until-brace-help = これらは`{"{"}5 °C{"}"}`のように書き、材料の名前は波かっこなしで書いてください。
too-deep = ここではリストの入れ子が深すぎます
too-deep-help = 見出しを使うか、段を減らしてください。

## 注意書き

caution-mark = `{ $mark }`という印は、ここの引用には使えません
caution-mark-help = 注意書きは、その言葉で始めてください：`> Caution: The tray is hot.`注意書きでない引用には、印は要りません。
caution-for-some = 一部の人への行の中に注意書きがあるか、注意書きの中に一部の人への行があります
caution-for-some-help = 注意書きは皆のためのもので、折りたたまれません。それぞれ別の引用にしてください。

## 変わる値

open-brace = この波かっこが閉じていません
open-brace-help = 閉じてください：`{"{"}butter{"}"}`。波かっこをそのまま書くには`\{"{"}`とします。
plain-amount = { $words }は、ここではただの文字なので、単位に合わせて変わりません
plain-amount-help = {"{"}{ $words }{"}"}と書いてください。

## レシピ

example-recipe-summary = 基本のクロワッサン。折り3回、濃いめに焼きます。
example-tin = 23 x 13 x 7 cm`または`9 in round`（型1台）。2台なら`makes: 2 x 9 in round
tin-twice = `makes`には別の型が書かれています
tin-twice-help = `tin`を消してください。`makes`に書いたものが型になります。
bad-makes = `{ $makes }`は、1バッチのできあがりとして読めません
bad-makes-help = 整数と言葉を`22 crescents`のように、同じ大きさの型を`2 x 9 in round`のように、元になる生地ならその重量を`1150 g`のように書いてください。
section-without-lines = 区分`{ $section }`に行がありません
section-without-lines-help = その行は区分の下に、それぞれ`- `を前に付けて書きます。例：`- 500 g bread flour`。
too-many-lines = 配合は{ $most }行までです
too-many-lines-help = レシピを2つに分けてください。一方をもう一方の材料にできます。
too-many-sizes = ページに載る分量は、書かれたものを含めて{ $most }通りです。省かれたもの：{ $sizes }
too-many-sizes-help = よく使うものを書いてください。ほかの分量は`tourier handout --pieces { $size }`で得られます。
note-open = { $recipe }へのこの覚え書きは、まだ取り入れられていません
note-open-help = レシピに取り入れて、そう書き留めてください：`tourier note { $recipe } "taken up { $number }"`。見えるのはあなただけです。
note-of-nothing = この覚え書きに当たるレシピ`{ $name }`がありません
note-of-nothing-help = `recipes/crescents.bench.txt`のように、レシピの名前を付けてください。
note-without-day = この行は覚え書きとして読まれません：日付で始まっていません
note-without-day-help = `2027-03-03 baked 2 min longer`のように書いてください。自分だけの行は`#`で始めます。
line-run-on = この行は、上の行の続きとして読まれます
line-run-on-help = `- `で始めてください：`- { $line }`。
line-not-one = この行は、1つの量の行として読めません
line-not-one-help = 行全体を"二重引用符"で囲んでください。後ろに空白のあるコロンは、ここでは別の意味になります。
video-without-address = ここには動画のアドレスが入ります
video-without-address-help = `- roll-up: https://…`のように書いてください。
video-start = 動画のアドレスの後の`{ $said }`が読めません
video-start-help = 始める所を、動画の時計のとおりに書いてください：`https://… from 8:25`、または`from 1:02:05`。
accept-without-reason = 問題点を了承済みにするには、理由が要ります
accept-without-reason-help = `{ $name }: "the reason"`のように書いてください。
too-many-headings = レシピの見出しは{ $most }個までです
too-many-turns = 1つの生地の折りは{ $most }回までです
too-many-turns-help = 3〜6回で層は十分に薄くなります。それより多いと、ただの粉と油脂に戻ってしまいます。
same-heading = 同じ見出しの工程がほかにもあります
same-heading-help = 区別できるようにしてください：`Second turn`、`Third turn`。
names-steps = ここにある工程
unknown-step = このレシピに工程`{ $step }`はありません

## 自分で作る形

example-shape = crescent, notch 1 cm, stretch 1/4, curved（またはbaton、spiral、twist、knot、plait of 3、pinwheel、envelope、pocket、turnover、folded square、ring、round、oval、tin、filled ball、あるいは技法にある形の名前）
shape-without-frames = 形には、`piece`と、2つから6つの`frames`が要ります
shape-without-frames-help = 図に描く1個の大きさと、段階ごとに、何をするかと、点の位置（cm）を書いてください：`dough: 0 0, 12 0, 12 8, 0 8`。
shape-drawn-and-pictures = この形には、図の段階と画像の段階が混ざっています
shape-drawn-and-pictures-help = 全部を図にするか、全部を画像にしてください。
example-stage = 手前の辺を中央へ折ります。
bad-stage = 段階には`dough`か`picture`を書き、`arrow`にはそれぞれ点を2つ書きます
bad-stage-help = 輪郭を角の位置で、手前左の角からcmで書いてください：`dough: 0 0, 12 0, 12 8, 0 8`。または画像で見せてください：`picture: roll-up.jpg, both hands roll it away`。

## 技法

example-technique-summary = 3つに分け、順に重ねます。
bad-drawing = 図を描くには足りないものがあります
bad-drawing-help = 図には、`sheet`と、`turn`、`turns`、`cut`、`roll`、`shape`、天板に並べるもの（`per tray`）、または`lock-in`とその`block`が要ります。

## 工程カードの行

ticket-line-twice = ここに`{ $key }`が2回あります
ticket-line-twice-help = どちらか1行を残してください。
ticket-beside-proof = 温度を変える発酵には時間と温度がもうあり、焼成でもありません。`{ $key }` を並べて書くことはできません
ticket-beside-proof-help = `proof: 5 °C, 12 h in the fridge; then 26 °C, 90 min in the proofer` とだけ書いてください。焼成と冷却は別の工程にします。
ticket-no-key = この行は`key: value`になっていません
ticket-no-key-help = たとえば`hands: 10 min`のように書いてください。
ticket-no-value = `{ $key }`に値がありません
ticket-no-value-help = コロンの後ろに値を書くか、この行を消してください。
example-turn = book（またはletter、half、あるいは2から12までの分ける数。bookは`book, ends meet at 1/3`とも書けます）
example-roll = same way（またはquarter turn。普通はこちら）
example-lock-in = envelope（またはletter、book。油脂を外側にするならinverted book）
example-divide = half for crescents, the rest for batons（または12 pieces）
unknown-line = `{ $key }`は、工程カードで使える行ではありません
unknown-line-help = 工程カードで使えるもの：{ $keys }。

## 文言のファイル

words-unreadable = これは読めません
words-unreadable-why = これは読めません：{ $reason }
words-unknown-form = ここの文言に使えるのは、言葉、`{"{"} $name {"}"}`、`{"{"} $name -> {"}"}`による選択です

## YAML

yaml-no-space = `-`の後ろに空白がありません
yaml-no-space-help = `- { $line }: …`と書いてください。
yaml-run-on = この行は、`-`が右に寄っているので、上の行の続きとして読まれます
yaml-run-on-help = 1つのリストの行はすべて`-`を同じ桁にそろえ、それぞれの後ろに空白を置いてください。
yaml-help = 各行は`key: value`です。まとまりになる行は、空白で字下げして同じ桁から始めます。`: `を含む値や、`[`、`{"{"}`、`*`、`&`、`!`、`%`、`@`、引用符などの記号で始まる値は、"二重引用符"で囲んでください。
yaml-key-twice = ここに同じキーが2回あります
yaml-alias = これらのファイルでは`*name`と`&name`を使いません
yaml-tab = ここの字下げにタブが使われています：空白にしてください
yaml-too-deep = ここではリストとキーの入れ子が深すぎます
yaml-too-large = このファイルは大きすぎるか、入れ子が深すぎます
bad-yaml = この行は`key: value`としても、リストの項目としても読めません

## YAMLの書き損じ

yaml-open-quote-help = 最後の言葉の後ろに`{ $close }`を書いてください。
yaml-open-quote = この引用符が閉じていません
yaml-open-bracket-help = 中の最後の言葉の後ろに`{ $end }`を書いてください。
yaml-open-bracket = このかっこが閉じていません
yaml-write-item = `- { $rest }`と書いてください。
yaml-no-space-colon = コロンの後ろに空白がありません
yaml-no-colon = キーの後ろにコロンがありません
yaml-write = `{ $right }`と書いてください。
yaml-odd-value = `: `を含む値や、`[`や`*`などの記号で始まる値は、ここでは別の意味になります
yaml-odd-value-help = 二重引用符で囲んでください：`{ $right }`。
yaml-column = この行は、まとまりになるほかの行と違う桁から始まっています
yaml-column-help = まとまりになる行は同じ桁から始めてください。タブではなく空白を使います。

## 輪になったレシピ

recipe-cycle = このレシピを作るのに、このレシピ自身が要ります：{ $way }
recipe-cycle-help = 元に戻ってくる材料を、どれか1つのレシピから消してください。

## 計量

not-counted = `{ $name }`は個数では数えません：重量が分かりません
not-counted-help = 重量を書いてください。または1個を量り、その重量を`pantry.yaml`に書いてください：
    { $entry }
no-batches = `{ $name }`はレシピではないので、バッチで数えられません
no-batches-help = バッチは、ほかのレシピを数えるものです：`1 batch [layered dough](layered-dough.md)`。
no-density = `{ $title }`の1 { $unit }の重量が分かりません
no-density-help = 重量を書いてください。または、すりきりの1 { $unit }を量り、その重量を`pantry.yaml`に書いてください：
    { $entry }
no-anchor = ベーカーズパーセントには、元になる重量が1つ要ります
no-anchor-help = `{ $recipe }`の粉のどれか1つに重量を書いてください：`500 g bread flour`。

## 省かれたアレルゲン。安全に関わるもの

allergen-taken-out = `{ $word }`が、{ $missing }を含まないものとみなされてしまいます
allergen-taken-out-help = それを指しているレシピには`{ $name }`と書き、ここからは`{ $word }`を省いてください。
allergen-left-out = `{ $name }`は、名前または似た材料からすると{ $missing }を含むはずですが、アレルゲンに書かれていません
allergen-left-out-nut = 包装の表示を読み、書かれているものをすべて書いてください：
    { $entry }
    包装の表示そのものがこれより少ないときは、表示されているものを書き、続けて`, read on the pack`と書きます。どのナッツかも書いてください。
allergen-left-out-help = 包装の表示を読み、書かれているものをすべて書いてください：
    { $entry }
    包装の表示そのものがこれより少ないときは、表示されているものを書き、続けて`, read on the pack`と書きます。

## 自分で加える材料

example-kind = flour、liquid、fat、egg、sugar、salt、leavenerのどれか
example-density = 0.46 g/mlまたは1 tbsp = 6.8 g
example-allergens = 包装に表示されているもの。使える語：{ $words }
pantry-unreadable = ここの`{ $value }`は読めません
pantry-unreadable-help = 書き方：{ $example }。

## 知られていない材料

known-name = `{ $name }`
unknown-ingredient = `{ $name }`は材料棚にありません
unknown-ingredient-help = 名前が正しければ、包装の表示を書き入れて、`pantry.yaml`に加えてください：
    { $entry }
unknown-ingredient-one = { $only }のことですか？違うなら、包装の表示を書き入れて、`pantry.yaml`に加えてください：
    { $entry }
unknown-ingredient-several = { $rest }か{ $last }のことですか？違うなら、包装の表示を書き入れて、`pantry.yaml`に加えてください：
    { $entry }

## 読めないファイル

unread-link = 別の場所へのリンクです
unread-link-help = ファイルかフォルダーそのものをここに置いてください。
unread-too-much = ここのファイルが{ $files }個を超えているか、文章が{ $text } MiBまたは画像が{ $pictures } MiBを超えています
unread-too-much-help = ほかのものは別の場所に置き、大きな講座は2つに分けてください。
unread-not-plain = 普通のファイルではありません
unread-picture-link-help = 画像そのものをここに置いてください。
picture-smaller-help = もっと小さく保存してください。幅は3000ピクセルで十分です。
unread-picture-large = 30 MiBより大きいファイルです
unread-not-plain-help = テキストファイルをここに置いてください。
unread-name = 名前がウェブのアドレスの一部になりますが、そこに使えない文字があります
unread-name-help = aからzまでの英字、数字、ハイフン、下線だけを使ってください。例：`{ $better }`。
unread-large = 1 MiBより大きいファイルです
unread-large-help = レシピは1、2ページほどの文章です。
unread-not-text = UTF-8のテキストではありません
unread-not-text-help = UTF-8のテキストとして保存してください。
unread-zero-byte = ゼロのバイトが入っています
unreadable-file = このファイルは読み込まれません：{ $why }

## 書体

unread-typeface-link = 別の場所へのリンクか、フォルダーです
unread-typeface-link-help = 書体のファイルそのものをここに置いてください。
unread-typeface-large-help = 字数の少ないもの、たとえば1つの言語の分だけのものを使ってください。
unread-typeface-large = 20 MiBより大きいファイルです

## 読まれないファイル

unread-file = このファイルは、どこからも読まれません
unread-file-help = `{ $better }`という名前なら読まれます。

## 文字

no-typeface = 書体`{ $name }`がありません
no-typeface-help = 使えるもの：{ $families }。加えるには、その.ttfか.otfのファイルをcontent/mediaに置いてください。
no-glyph = どの書体にも`{ $sign }`がありません：配布資料では代わりに{ $stand_in }を印刷します
no-glyph-help = 別の書き方にするか、その字のある書体をcontent/mediaに置いてください。

## 壊れた画像

unreadable-picture = このファイルは、表示できる画像ではありません
unreadable-picture-help = JPEGかPNGで保存してください。
broken-picture = この画像は途中で切れているか壊れています：全部の行がそろっていません
broken-picture-help = 元の場所からもう一度写すか、JPEGかPNGで保存し直してください。
picture-too-large = この画像は6000万画素を超えています

## 長い配布資料

card-two-sides = このレシピの作業カードは片面に収まりません
card-two-sides-help = 裏面に続きます。目安（`until`）を短くするか、一方がもう一方の材料になる2つのレシピに分けると、片面に収まります。
long-sheet = このレシピの受講者用資料は{ $most }面より多くなります
long-sheet-help = 次の面に続きます。段落を短くすると収まりやすくなります。材料になるレシピに受講者用資料が別にあるなら、冒頭部に`included: by name only`と書くのも役に立ちます。

## 前の版

faulty-edition = `{ $folder }`にある版にエラーがあるため、どの配布資料にもそれからの変更が載りません
faulty-edition-help = `tourier proof --content`の後ろにそのフォルダーを書くと、エラーを見られます。
missing-edition = コンテンツのフォルダーに、フォルダー`{ $folder }`がありません
missing-edition-help = 前のコンテンツをそこに写すか、この行を省いてください。

## 紙の上の画像

coarse-picture = `{ $picture }`は横{ $dots }ドットで、紙では粗くなります
coarse-picture-help = 横1000ドット以上の大きな画像にするか、紙には載せないでください：`print: no`。
faint-picture = `{ $picture }`は、灰色にすると全体がほぼ同じ明るさになります
faint-picture-help = コピー機では、何が写っているかだれにも分かりません。もっと明るいところで撮るか、紙には載せないでください：`print: no`。

## レシピの別の作り方

in-this-way = 作り方`{ $way }`では：{ $message }
unknown-way = `{ $recipe }`に`{ $way }`という作り方はありません
names-ways = その作り方
ways-at-odds = 作り方`{ $way }`は、別の作り方がすでに変えた行を変えます
ways-at-odds-help = どちらか一つにするか、両方を行う差し替えを書いてください。
swap-of-nothing = ここに`{ $name }`というものはなく、代わりを立てられません
names-lines = ここにある行
swap-of-several = `{ $name }`は複数の区分にあります：{ $sections }
swap-of-several-help = どれかを書いてください：`{ $name } in { $section }`。それぞれに一行ずつ書きます。
swap-leaves-nothing = 作り方`{ $way }`では配合に何も残りません
swap-leaves-nothing-help = 代わりに使うものを書いてください。例：`140 g oat drink for whole milk`。
swap-without-lines = 差し替え`{ $name }`は何も変えません
swap-without-lines-help = その下に`- `を付けて行を書きます：`- 140 g oat drink for whole milk`、`- 30 g water in dough`、`- without walnuts`。
way-still-told = この工程は{ $name }に触れますが、作り方`{ $way }`にはありません
way-still-told-help = 材料を`{"{"}whole milk{"}"}`のように波かっこで書けば、作り方ごとの材料になります。または「液体」など役割で書いてください。

## 翻訳。注意書きは安全にかかわる

translates-nothing = 「{ $title }」がどの文章の訳なのか書かれていません
translates-nothing-help = その下のカードに、元の手順や見出しの名前を`translates: mix-the-dough`のように書いてください。順番で結びつけることはありません。
translation-unknown = 訳すもとになる文章`{ $name }`がありません
translation-unknown-help = 元の名前を書いてください。手順なら見出しを小文字とハイフンで、ファイルならその名前です。
translation-not-named = このフォルダーは読まれません。講座が言語`{ $language }`を挙げていません
translation-not-named-help = `course.yaml`に`also in: { $language }`と書くか、フォルダーを取り除いてください。
translation-no-file = まだ訳されていない文章：{ $files }
translation-no-file-help = もとの言語のまま出ます。{ $first }などを書くか、この言語で出すものを`also in`に挙げてください。
translation-no-part = まだ訳されていない部分：{ $titles }
translation-no-part-help =
    もとの言語のまま出ます。それぞれを訳して、見出しの下に書いてください：
    { $blocks }
translation-behind = 「{ $title }」は今の原文から訳されたものではありません
translation-behind-help = 原文を読み直して必要なところを直し、それから`mark: { $mark }`と書いてください。それまで注意書きと仕上がりの目安はもとの言語で出ます。
translation-numbers = 「{ $title }」と原文で数字が違います：{ $numbers }
translation-numbers-help = 原文と同じように、数字か波かっこで書いてください。それまでは原文が出ます。
translation-caution = 「{ $title }」の原文の注意書き：{ $there }、ここ：{ $here }
translation-caution-help = それぞれ`> 注意：`のように言葉で始めてください。それまでは原文の注意書きも出ます。
untranslated-words = この言語での言い方がない短い言葉が{ $count }つあります
untranslated-words-help =
    書かれたまま出ます。それぞれの言い方を`{ $file }`に書いてください：
    { $block }
translation-key-help = 訳に書くのは文章だけです。カードには`translates`、`mark`、`until`を書きます。数字、大きさ、時間は原文のものです。
