### Qué está mal en un texto, y qué estaría bien. { $name } en un mensaje lo pone el programa; las palabras entre `comillas invertidas`
### son lo que escribe quien hace el curso y se quedan como están. Un mensaje no lleva punto final, una ayuda sí.

## Cómo se muestra un fallo en la terminal

fault-place = { $file }, línea { $line }
fault-error = Error:
fault-caution = Aviso:
fault-help = Qué hacer:
fault-sentence = { $message }.
fault-errors =
    { $count ->
        [one] { $count } error
       *[other] { $count } errores
    }
fault-cautions =
    { $count ->
        [one] { $count } aviso
       *[other] { $count } avisos
    }
fault-none = sin fallos
fault-all = { $parts }

## Fallos que se aceptan

not-acceptable = `{ $name }` no se puede aceptar
names-acceptable = Se pueden aceptar

## Cantidades que no concuerdan

amounts-disagree-more = la cantidad entre paréntesis es { $second }, un { $percent } % más que la primera
amounts-disagree-less = la cantidad entre paréntesis es { $second }, un { $percent } % menos que la primera
amounts-disagree-help = Cuenta la primera: { $first }. Cambie una de las dos, o quite la segunda.
yield-off = la fórmula da solo { $weight } después de su merma
yield-off-help = Escriba `makes: { $weight }`, o aumente la fórmula.

## Clases

class-makes-nothing = en esta clase no se hace nada
class-makes-nothing-help = Escriba debajo de `makes` qué receta hace cada pareja.
class-never-held = esta clase no se da nunca
class-never-held-help = Escriba debajo de `sessions` cuándo se da, como en `- 2027-03-02 18:00 to 21:00`.
missing-file = no hay ningún archivo `{ $file }`
names-recipes = Recetas de aquí
class-pieces = `{ $name }` se hace por peso, no por piezas
class-pieces-help = Escriba `batches: 1` en lugar de `pieces`.
session-overlap = esta sesión empieza antes de que acabe la anterior
session-overlap-help = Dé a cada sesión sus propias horas.
long-session = esta sesión dura { $hours } horas
long-session-help = Escriba la hora a la que acaba, como en `18:00 to 21:00`; la que acaba pasada la medianoche acaba al día siguiente.
step-without-hands = en `{ $step }` no hay nada que hacer con las manos
step-without-hands-help = Póngale `hands: 5 min`, o muestre otro paso.
late-nobody = `late` nombra un grupo que esta clase no tiene: tiene { $groups }
late-nobody-help = Cuente los grupos desde 1.
late-never = quien llega tan tarde se pierde todas las sesiones
late-never-help = Escriba cuánto después de empezar llegan, por ejemplo `20 min`.
break-outside = esta pausa no cae en ninguna sesión
break-outside-help = Escriba `{ $at }`, `{ $between }`, o `{ $lasts } min` para la mitad de cada sesión.
besides-too-long = llegada, charlas, fregado y margen ocupan { $minutes } min, no menos de lo que dura esta sesión
besides-too-long-help = Acórtelos, o alargue la sesión.
unknown-class-step = ninguna receta de esta clase tiene un paso `{ $step }`
unknown-class-step-help = El nombre de un paso es su título en minúsculas y con guiones.
did-you-mean = ¿Quería decir `{ $near }`?
class-kit-short = un paso necesita { $count } de «{ $name }», y en el equipo hay { $have }
class-kit-short-help = Cambie la ficha o el equipo: ningún plan podría caber.
class-kit-none = las recetas necesitan «{ $name }», y el equipo no lo incluye
class-kit-none-help = Añada `{ $name }: …` a `kit`, para que el plan pueda repartirlo.
class-kit-no-place = un paso espera en «{ $place }», y ahí no hay ninguna bandeja
class-kit-no-place-help = Diga cuántas bandejas caben, o quite la línea.
class-kit-no-oven = las recetas se hornean, y en el equipo no hay «{ $name }»
class-kit-no-oven-help = Añada `oven: 2, tray per oven: 4` a `kit`.
class-kit-oven-unlisted = las recetas se hornean, y el equipo no incluye ningún horno
class-kit-instructor = personas para enseñar en esta clase: hacen falta { $least }, y hay { $have }
class-kit-instructor-help = Escriba `instructor: { $least }`, o no muestre nada.
class-kit-unknown = ninguna receta necesita «{ $name }», y ningún paso espera ahí
class-kit-unknown-help = Nómbrelo en las fichas que lo necesitan: `kit: 1 mixer`.

## Cortes

cut-no-sheet = no hay plancha que cortar
cut-no-sheet-help = Dé a este paso o a uno anterior un `sheet: 54 x 48 cm`.
cut-too-large = en la plancha no cabe ni una pieza
cut-too-large-help = Haga las piezas más pequeñas o la plancha más grande.
cut-too-many = serían más de { $most } piezas
cut-too-many-help = Revise las unidades de la pieza y de la plancha.
cut-count = este corte da { $made } piezas, y `makes` dice { $count } { $word }
cut-count-help = Cambie la plancha, la pieza o `makes`, para que concuerden.
cut-count-parts = todas las partes juntas dan { $made } piezas, y `makes` dice { $count } { $word }

## División

unknown-part = ningún paso separa una parte `{ $part }`
unknown-part-help = Nómbrela donde se divide la masa: `divide: half for crescents, the rest for batons`.
divided-off-help = Dé a una de las partes `the rest`, o cambie las otras.
divided-too-much = las partes piden un { $over } % más que la masa de { $weight }
divided-no-rest = de la masa de { $weight } no queda nada para el resto
divided-too-little = un { $left } % de la masa de { $weight } no va a ninguna parte

## Amasadora y mesa

mixer-too-small = aquí va una masa de { $dough }; la amasadora admite { $most }
mixer-too-small-help = Amase en dos masas, o haga más pequeña la fórmula.
bench-too-short = la mesa mide { $bench }
bench-too-short-help = Divida la masa en dos, o estírela menos larga y más ancha.

## Laminado

block-too-big-envelope = un bloque de { $block } es { $short } demasiado grande para un sobre de esta plancha: su lado puede ser 0,7 del lado de la plancha
block-too-big-letter = un bloque de { $block } es { $short } demasiado grande para dos tercios de esta plancha
block-too-big-book = un bloque de { $block } es { $short } demasiado grande para la mitad central de esta plancha
block-too-big-help = Haga el bloque más pequeño o la plancha más grande, con 5 mm de sobra para sellar.
fat-unlike-dough = la grasa tiene un grosor de { $fat } y la masa de { $dough }: no se estirarán juntas
fat-unlike-dough-help = Golpee la grasa hasta que quede más ancha o más fina, o estire así la masa, hasta que las dos tengan más o menos el mismo grosor.
block-no-margin = el bloque no deja margen para sellarlo
block-no-margin-help = Deje al menos 5 mm de masa a su alrededor.
sheet-of-nothing = en este paso no hay masa sobre la mesa
sheet-of-nothing-help = Diga en una ficha anterior qué entra: `uses: dough`.
sheet-too-big = la masa queda aquí con solo { $lies } de grosor: la plancha es demasiado grande para ella
sheet-may-tear = la masa queda aquí con solo { $lies } de grosor: puede romperse
sheet-too-thick = la masa queda aquí con { $lies } de grosor
sheet-thickness-help = Para { $usual }, la plancha tendría el { $share } % de esta superficie; o cambie la fórmula.
fat-layer-too-thin = antes de esta vuelta, cada una de las { $layers } capas de grasa tiene solo { $thickness } mm de grosor
fat-layer-too-thin-help = Por debajo de 0,01 mm las capas se funden unas con otras. Estire una plancha más pequeña, o quite una vuelta.
part-too-short = doblada en { $parts }, cada parte quedaría { $short } demasiado corta
part-too-short-crossed = La primera cifra es el lado que se dobla: escriba primero el más largo.
part-too-short-help = Estire la plancha más larga, o dóblela en menos partes.

## Grasa y capas

fat-share-puff = la grasa de hojaldrar es el { $percent } % de la harina de un hojaldre
fat-share-yeast = la grasa de hojaldrar es el { $percent } % de una masa con levadura
fat-share-help = Lo habitual es de { $least } a { $most } %.
seams-not-turned = el bloque se estira en el mismo sentido que antes del pliegue
seams-not-turned-help = Lo habitual es un cuarto de giro, para que la masa se estire en el otro sentido. Quite esta línea, o acéptelo.
sheet-gets-narrower = aquí la plancha se estrecha: un lado de { $from } pasaría a { $to }
sheet-gets-narrower-help = La masa no se puede encoger empujándola. La primera cifra es el lado que se estira; después de un pliegue es el lado que va a lo largo del lomo. Escriba una plancha más ancha, o doble más estrecha la anterior.

## Enlaces

bad-link = el enlace a `{ $link }` no lleva a ningún sitio
bad-link-help = Enlace un archivo de aquí (`../techniques/letter-turn.md`) o una dirección que empiece por https:, http: o mailto:.

## El aspecto del curso

logo-holds-pictures = el logotipo contiene imágenes
logo-holds-program = el logotipo contiene un programa
logo-holds-page = el logotipo contiene partes de una página
logo-holds-words = el logotipo contiene palabras compuestas con letra
logo-holds-entities = el logotipo contiene entidades
pale-accent = sobre blanco este color tiene un contraste de { $ratio }:1; lo mínimo es { $least }:1
pale-accent-help = Tome uno más oscuro: una fotocopiadora lo imprime gris.
no-logo = no hay ningún dibujo `{ $logo }`
no-logo-help = Ponga un archivo SVG dentro de content/media: `logo: media/house.svg`.
unknown-law = no hay ninguna lista de alérgenos `{ $law }`
unknown-law-help = Se conocen { $known }: `allergen lists: eu`.
logo-unreadable = el logotipo no se puede leer como dibujo
bad-logo-help = Guárdelo como SVG simple, con las palabras convertidas en trazados.
no-words = no hay palabras en el idioma `{ $language }`
no-words-help = Escriba `en`, o ponga una traducción de los archivos de `words/en/` en un tema propio, en una carpeta con el nombre del idioma, e indique ese tema con --theme.

## Lo que entra

unused-help-allergen = Añada `uses: { $name }` a la ficha del paso en que entra.
unused-help = Añada `uses: { $name }` a la ficha del paso en que entra. Si no entra en nada, quite la línea.
unused-section = ningún paso usa nada de la sección `{ $name }`
unused-ingredient = ningún paso usa este ingrediente: { $name }
place-misspelt = `{ $name }` es casi el nombre de un lugar conocido, y cuenta como un lugar aparte
unknown-use = `{ $name }` no es ninguna sección ni ningún ingrediente de esta receta
names-in-recipe = Esta receta tiene

## Nombres

taken-by-windows = Windows reserva el nombre `{ $name }` para un dispositivo
taken-all = `tourier handout all` imprime el curso entero, nunca esta receta
taken-by-recipe = también hay una receta con el nombre `{ $name }`: las órdenes la toman por la clase
taken-name-help = Cambie el nombre del archivo, por ejemplo a `{ $better }`, y también donde se nombre.
one-page-for-two = este archivo y `{ $file }` darían una misma página
one-page-for-two-help = Cambie el nombre de uno de los archivos: no puede haber dos que difieran solo en las mayúsculas.
bare-name = `{ $word }` se entiende como { $meant }, en todas las recetas de aquí
bare-name-help = Diga en `course.yaml` qué significa en este curso:
    { $entry }
same-word = `{ $word }` se explica dos veces
same-word-help = Deje una de las dos.
names-files = Archivos que hay

## Hornos

fan-not-cooler = con ventilador el horno se pone a menos temperatura que sin él, y aquí no es así
fan-not-cooler-help = Con unos 20 °C menos se hornea igual. Si no lo escribe, se calcula así.

## Enfriado, huevo crudo. Estos mensajes tocan a la seguridad

cooling-missing = esto es una crema cocida o una crema con huevo, y ningún paso posterior dice cómo se enfría
cooling-missing-help = Añada `cool: custard` al paso en que se enfría: de 57 °C a 21 °C en un máximo de 2 h, y a 5 °C en un máximo de 6 h en total. Las normas locales tienen prioridad.
cooling-slow-warm = esto puede pasar más de 2 h enfriándose fuera de la nevera
cooling-slow-all = esto puede tardar más de 6 h en total en enfriarse
cooling-slow-help = De 57 °C a 21 °C en un máximo de 2 h, y a 5 °C en un máximo de 6 h en total: acorte la espera más larga. Las normas locales tienen prioridad.
held-warm = lo que va relleno de crema o de nata puede quedarse aquí fuera de la nevera
held-warm-help = Escriba `hold: up to 24 h in the fridge`, o quite el aguante: se guarda a 5 °C o menos. Las normas locales tienen prioridad.
day-too-early = esto es del día { $day }, pero espera a «{ $step }», que es de un día posterior
day-too-early-help = Ponga `{ $step }` en un día anterior, o diga en `after` a qué sigue esto de verdad.
night-without-hold = nada dice que esto pueda quedarse hasta el día { $day }: { $time } como mínimo
night-without-hold-help = Dele una espera o un aguante bastante largo: `hold: up to 24 h in the fridge`.
thawed-warm = lo congelado se descongela aquí al calor
thawed-warm-help = Déjelo descongelar en la nevera, a 5 °C o menos: `thaw 9 h in the fridge`. Las normas locales tienen prioridad.
raw-egg-eaten = { $name }: se come en crudo; ningún paso posterior lo hornea ni lo cuece
raw-egg-eaten-help = Use `pasteurised egg`, o cuézalo: `core: 71 °C` en la ficha. Las normas locales tienen prioridad.
core-too-low = con huevo crudo dentro, esto tiene que calentarse a más temperatura que esa
core-too-low-help = El huevo crudo que no se come enseguida se cuece hasta 68 °C como mínimo. Las normas locales tienen prioridad.

## Imágenes

missing-picture-help = Ponga la imagen en `media/{ $picture }`.
missing-picture = no hay ninguna imagen `{ $picture }` en la carpeta media

## Cuánto pesan las piezas

weight-open = { $title }: entra en la mezcla y no tiene peso
weight-open-help = Escriba más o menos cuánto lleva, `300 g { $title }`, o diga que se pone por encima: `{ $title }, for dusting`. Mientras tanto se omiten los porcentajes, la hidratación y el peso por pieza que dependen de ello.
piece-weight-unknown = no se puede calcular cuánto pesa una de estas piezas, así que ninguna hoja lo dice
piece-weight-unknown-help = Los pasos hasta aquel en que se hacen las piezas tienen que decir qué entra: `uses: dough`.

## Llaves

unknown-brace = `{"{"}{ $name }{"}"}` no significa nada aquí
unknown-brace-help = { $suggested } Para unas llaves sin más, escriba `\{"{"}{ $name }\{"}"}`.
brace-temperature-help = Escriba la temperatura con su signo: `{"{"}{ $digits } °{ $scale }{"}"}`.
brace-number-help = Escriba una temperatura `{"{"}190 °C{"}"}`, un tamaño `{"{"}20 x 20 cm{"}"}` o una longitud `{"{"}4 mm{"}"}`.

## Alérgenos y agua. Estos mensajes tocan a la seguridad

allergens-unknown = no se conocen los alérgenos de `{ $name }`
allergens-unknown-help = Lea el envase y diga en `pantry.yaml` lo que indica:
    { $entry }
named-beside = `{ $name }` se nombra en esta línea: sus alérgenos cuentan
named-beside-help = Dele una línea propia, con su peso o como `{ $name }, as needed`; si no entra, quite su nombre de esta línea.
water-too-cold = en la sala de este curso el agua tendría que estar más fría que el hielo
water-too-cold-help = Enfríe la harina, amase menos tiempo, o admita una masa más caliente.
water-unknown = no se conoce el agua de `{ $name }`, así que no se puede calcular la hidratación real
water-unknown-help = Dele un `like:` en `pantry.yaml`, o quite `true hydration`.

## Borradores

to-settle = esto queda todavía por decidir: { $line }
to-settle-help = Decídalo en el texto y después quite esta línea.

## Formas

unknown-shape = ninguna forma se llama `{ $name }`
unknown-shape-help = Dele una tira de `frames` debajo de `shapes` en una técnica.
form-triangle = triángulo
form-right-triangle = triángulo rectángulo
form-rectangle = rectángulo
form-square = cuadrado
form-round = disco
form-strip = tira
form-lump = trozo sin forma
shape-misfit = de una pieza así ({ $form }) no puede salir «{ $shaping }»
shape-misfit-help = Cambie el corte anterior, o la forma: si no, no se puede dibujar nada.

## Pasos

step-ring = estos pasos se esperan unos a otros: { $steps }
step-ring-help = Quite un nombre de un `after:` para que haya un primer paso.
unknown-video-help = Añada a la cabecera, debajo de `watch:`, una línea `- { $name }: https://…`.
unknown-video = la cabecera no nombra ningún vídeo `{ $name }`
makes-missing = no se dice cuánto rinde esta receta
makes-missing-help = Añada `makes: 22 crescents`, o para una masa base su peso, `makes: 1100 g`.
no-formula = esta receta no tiene fórmula
no-formula-help = Añada `formula:` con secciones y líneas como `- 500 g bread flour`.
no-steps = esta receta no tiene pasos
no-steps-help = Un paso es un título con un `~~~ticket` justo debajo.
preferment-not-above = `{ $name }` no es ningún prefermento nombrado antes de este
preferment-not-above-help = Nómbrelo antes: `preferment: { $first }, { $second } from { $first }`.
names-sections = Secciones de aquí
unknown-section = la fórmula no tiene ninguna sección `{ $name }`

## Bandejas

tray-too-full = { $on_one } piezas de { $piece } cada una no caben en una bandeja de { $tray } con separación entre ellas: caben { $fits }
tray-too-full-help = Escriba `per tray: { $most }`, o forme piezas más pequeñas. Las piezas que se tocan no se doran por los lados.

## Deslices: temperaturas

impossible-oven = ningún horno cuece a { $heat }
unlikely-oven-hot = { $heat } es más de lo que alcanzan los hornos de este oficio
both-units = { $metric } ({ $us })
look-at-degrees = Revise la cifra y la unidad que la sigue, °C o °F.
unlikely-oven-cool = a { $heat } una masa se seca y no se hornea
unlikely-core = un centro a { $heat } no es el de nada horneado
unlikely-core-help = Los panes están hechos de 88 a 99 °C por dentro, las cremas cocidas de 76 a 85 °C, y ningún huevo es seguro por debajo de 71 °C. Las normas locales tienen prioridad.
impossible-wait-heat = nada espera a { $heat }
yeast-dies = a { $heat } la levadura muere
butter-runs-out = a { $heat } la mantequilla se escurre de las capas
butter-runs-out-help = Quédese en 26 °C, y por debajo de 28 °C.
butter-oils-out = a { $heat } la mantequilla se separa de la masa en aceite
butter-oils-out-help = Quédese por debajo de 32 °C.
impossible-dough-heat = ninguna masa se amasa a { $heat }
unlikely-dough-heat = una masa a { $heat } se sale de lo que se amasa en el oficio

## Deslices: partes de la harina

unlikely-share = esto es el { $percent } % de la harina
unlikely-share-help = Revise la cifra y su unidad: ninguna masa del oficio lleva tanto.
unlikely-water = toda el agua junta es el { $percent } % de la harina, y eso no da una masa con levadura
unlikely-water-help = Revise la cifra de la harina y la del agua.

## Deslices: tiempos

bake-without-time = una cocción lleva algún tiempo
bake-without-time-help = Escríbala así: `190 °C, 22 min`.
unlikely-bake-time = { $time } es un tiempo de cocción poco habitual a esta temperatura
impossible-wait = nadie espera más de un año
unlikely-wait-cold = { $time } en frío es más de lo que reposan las masas
unlikely-wait-warm = { $time } fuera de la nevera es más de lo que reposan las masas
impossible-hands = esto ocupa las manos más de un día
unlikely-hands = { $time } de trabajo es un día muy largo para un solo paso
unlikely-time-help = Revise la cifra y la unidad que la sigue, s, min, h o days.

## What steps are to reach

goal-ph = pH { $value }
goal-percent = { $percent } %
goal-impossible = nada llega a { $value }
goal-unlikely = { $value } queda fuera de lo que el oficio conoce aquí
goal-unlikely-help = Revise la cifra. Las masas tienen un pH de 3 a 8 y de 5 a 40 °C, crecen de 10 a 400 % y pierden de 1 a 45 % en el horno.
growth-without-wait = nada crece en un paso sin espera
loss-without-bake = nada pierde peso en un paso sin cocción ni espera
goal-out-of-place-help = Ponga `{ $key }` en el paso en que ocurre.
goals-at-odds = la cabecera dice { $value }, que queda fuera
goals-at-odds-help = Escriba lo mismo en `{ $key }` de la cabecera.
unlikely-mixing = { $time } es un tiempo inusual para amasar
mixing-beyond-step = la amasadora trabaja { $time } y el paso dura { $own }
mixing-beyond-step-help = Escriba esos minutos en `hands`, o quite esa línea: entonces vale el tiempo de la amasadora.

## Other kit

way-of-step-twice = este paso está dos veces { $way }
way-of-step-twice-help = Dé a cada ficha más de un paso un nombre propio.
sheeter-without-sheet = en este paso no se estira nada
sheeter-without-sheet-help = Ponga `sheeter: yes` en un paso que tenga `sheet`.
friction-unsaid = nada dice cuánto se calienta la masa { $way }
friction-unsaid-help = Escríbalo en esa ficha, por ejemplo `friction: 2 °C`. Las manos calientan menos que una amasadora, así que el agua va más caliente.

## Lo que se quería decir

more-faults = más fallos en este archivo: { $count }
more-faults-help = Corrija antes los otros: después se muestran estos.
names-none = { $they }: todavía nada.
names-known = { $they }: { $names }.
names-more = { $they }: { $names } y { $more } más.

## Líneas de cantidades

link-no-recipe = este enlace no lleva a ninguna receta
link-no-recipe-help = Enlace un archivo que esté junto a este: `900 g [layered dough](layered-dough.md)`.
amount-not-whole = la cantidad no se puede leer hasta el final
amount-not-whole-help = Escriba una cantidad, una unidad y un ingrediente, como `250 g butter, cold`, `1 lb 4 oz butter` o `2 large eggs`; para dos ingredientes escriba dos líneas.
no-amount = aquí no se puede leer ninguna cantidad
no-amount-help = Póngala delante del nombre, como en `250 g butter, cold`; si no se quiere dar ninguna, escriba `{ $name }, as needed`.
heaped-spoon = no se sabe cuánto hay en una cucharada colmada
heaped-spoon-help = Enrásela y escriba cuántas cucharadas rasas son: `2 tbsp cocoa`.
unknown-vessel = no se sabe cuánto cabe en este recipiente
unknown-vessel-help = Llénelo de agua y escriba lo que mide: `250 ml buttermilk`.
old-measure = no se sabe cuánto es esta medida antigua: cambió según la época y el lugar
old-measure-help = Escriba el peso en gramos: `250 g mantequilla`.

## Cabeceras, títulos, fichas

head-begin-help = Empiece con una línea `---`, líneas como `title: Crescents` y una línea `---`.
head-file-empty = este archivo está vacío
head-does-not-begin = la cabecera no empieza: la primera línea de un archivo es `---`
head-has-no-end = la cabecera no tiene fin
head-has-no-end-help = Ponga una línea `---`, tres guiones, detrás de su última línea, antes del texto.
bad-heading = el título de un paso empieza con `##` y un espacio
bad-heading-help = Escriba `## { $words }`.
ticket-fence = una ficha empieza con la línea `~~~ticket`
ticket-fence-help = Escriba `~~~ticket` antes de su primera línea y `~~~` detrás de la última.
ticket-no-end = esta ficha no tiene fin
ticket-no-end-help = Ponga una línea `~~~` detrás de su última línea.
stray-ticket = esta ficha no está debajo de ningún título
stray-ticket-help = Una ficha va justo debajo del título de su paso, como `## Mix`, y solo una.

## Archivos de clases

example-changeover = `5 min`, o `{"{"} mixer: 10 min, oven: 5 min {"}"}`
example-late = `{"{"} pair 3: 20 min {"}"}`
example-talk = `15 min`, o `15 min before first-turn`
example-break = `15 min at 19:30`, `15 min between 19:15 and 20:00` o `15 min`
example-pace = `1.5`, o `{"{"} first-turn: 1.5 {"}"}`: de un cuarto a cuatro veces el tiempo de la receta
example-makes = una lista de `recipe: crescents`, `each: pair`, `pieces: 12`
makes-no-list = `makes` es una lista de recetas
makes-no-list-help = Empiece cada una con `- recipe: crescents`.
example-each = pair (o baker, o demonstration)
makes-both = `pieces` y `batches` dicen los dos cuánto se hace
makes-both-help = Escriba uno de los dos.
kit-twice = `{ $name }` está aquí dos veces
kit-twice-help = Diga una sola vez cuántos hay.
kit-no-number = `{ $name }` pide aquí un número entero
kit-no-number-help = Escriba `{ $name }: 2`.

## course.yaml

news-no-day = aquí se espera un día y qué hay de nuevo desde entonces
news-no-day-help = Escriba `- 2027-02-15: The buns rest overnight now.`

## Claves y valores

no-map = aquí se esperan líneas `key: value`
no-map-help = Escriba un `key: value` en cada línea.
no-list = `{ $key }` es una lista
no-list-help = Empiece cada una de sus líneas con `- `: `{ $example }`.
not-filled-in = falta todavía rellenar `{ $key }` de `{ $name }`
not-filled-in-help = Escriba detrás de `{ $key }:` lo que dice su envase o su balanza.
not-one-value = `{ $key }` es un solo valor, no una lista
not-one-value-help = Escríbalo en una línea: `{ $key }: …`.
missing-key = falta `{ $key }`
missing-key-help = Añada una línea como `{ $key }: { $example }`.
no-words-list = aquí se espera una lista de palabras
no-words-list-help = Si las palabras contienen `: `, póngalas entre "comillas dobles".
unknown-key = `{ $key }` no es una clave que corresponda aquí
unknown-key-help = Aquí se conocen: { $keys }.
unreadable-value = `{ $value }` no se puede leer como valor de `{ $key }`
unreadable-value-help = Escríbalo así: `{ $example }`.

## glossary.yaml

example-title = Medialunas
example-meaning = una pausa en la que la masa se relaja

## El curso mismo

missing-course = no hay ningún `course.yaml`
missing-course-help = Cree uno con al menos `title: …` y `summary: …`.

## pantry.yaml

pantry-amount = esto empieza con una cantidad, y el nombre de un ingrediente no
pantry-amount-help = Nombre aquí solo el ingrediente, y escriba la cantidad en la receta: `1 lb 4 oz butter`.
pack-not-said = aquí no se dice lo que indica el envase
pack-not-said-help = Escriba cada alérgeno que indica el envase, y nada más junto a ellos.

## Imágenes en los textos

bad-picture = `{ $picture }` no puede ser aquí una imagen
bad-picture-help = Nombre un archivo de la carpeta media, acabado en .jpg o .png, con letras sin acentos, cifras y guiones: `![what it shows](../media/roll-up.jpg)`.
picture-without-words = no se dice qué muestra la imagen `{ $picture }`
picture-without-words-help = Dígalo en pocas palabras, para quienes no pueden verla: en el texto `![both hands roll it away](../media/roll-up.jpg)`, en una ficha `picture: roll-up.jpg, both hands roll it away`.

## Texto

until-brace = en `until` solo están vivos las temperaturas, las longitudes y los tamaños
until-brace-help = Escriba así `{"{"}5 °C{"}"}`, y los nombres de los ingredientes sin llaves.
too-deep = aquí hay listas dentro de listas a demasiada profundidad
too-deep-help = Use títulos o menos niveles.

## Avisos

caution-mark = `{ $mark }` no es manera de marcar aquí una cita
caution-mark-help = Empiece un aviso con la palabra misma: `> Caution: The tray is hot.` Una cita que no es un aviso no necesita marca.
caution-for-some = un aviso está dentro de una línea para algunos, o una línea así dentro de un aviso
caution-for-some-help = Un aviso es para todos y nunca se pliega: que cada uno sea una cita aparte.

## Valores vivos

open-brace = esta llave no está cerrada
open-brace-help = Ciérrela: `{"{"}butter{"}"}`. Para una llave sin más, escriba `\{"{"}`.
plain-amount = { $words } es aquí texto sin más y no cambiará con las unidades
plain-amount-help = Escriba {"{"}{ $words }{"}"}.

## Recetas

example-recipe-summary = Medialunas sencillas, tres vueltas, bien doradas.
example-tin = 23 x 13 x 7 cm` o `9 in round`, un solo molde; dos se dicen en `makes: 2 x 9 in round
tin-twice = `makes` dice otro molde
tin-twice-help = Quite `tin`: el molde es el que dice `makes`.
bad-makes = `{ $makes }` no es lo que rinde una tanda
bad-makes-help = Escriba un número entero y una palabra, `22 crescents`; moldes de un mismo tamaño, `2 x 9 in round`; o para una masa base su peso, `1150 g`.
section-without-lines = la sección `{ $section }` no tiene líneas
section-without-lines-help = Sus líneas van debajo, cada una con `- ` delante, como `- 500 g bread flour`.
too-many-lines = una fórmula tiene { $most } líneas como máximo
too-many-lines-help = Haga de ella dos recetas: una puede ser ingrediente de la otra.
too-many-sizes = una página ofrece { $most } tamaños, con el que está escrito; se omiten: { $sizes }
too-many-sizes-help = Nombre los que más se piden; los demás se obtienen con `tourier handout --pieces { $size }`.
note-open = esta nota sobre { $recipe } aún no se ha recogido
note-open-help = Recójala en la receta, y dígalo: `tourier note { $recipe } "taken up { $number }"`. Solo usted la ve.
note-of-nothing = no hay ninguna receta `{ $name }` a la que pertenezcan estas notas
note-of-nothing-help = Dé al texto el nombre de su receta, como en `recipes/crescents.bench.txt`.
note-without-day = esta línea no se lee como nota: no empieza por su día
note-without-day-help = Escriba `2027-03-03 baked 2 min longer`; o empiece con `#` lo que es solo suyo.
line-run-on = esta línea se lee como parte de la de arriba
line-run-on-help = Empiécela con `- `: `- { $line }`.
line-not-one = esto no se puede leer como una sola línea de cantidad
line-not-one-help = Ponga la línea entera entre "comillas dobles": dos puntos seguidos de un espacio significan aquí otra cosa.
video-without-address = aquí se espera la dirección de un vídeo
video-without-address-help = Escriba `- roll-up: https://…`.
video-start = no se puede leer `{ $said }` detrás de la dirección de un vídeo
video-start-help = Escriba dónde empezar, como lo muestra su reloj: `https://… from 8:25`, o `from 1:02:05`.
accept-without-reason = un fallo se acepta dando un motivo
accept-without-reason-help = Escriba `{ $name }: "the reason"`.
too-many-headings = una receta tiene { $most } títulos como máximo
too-many-turns = una masa tiene { $most } vueltas como máximo
too-many-turns-help = Con tres a seis las capas ya son bastante finas; con más vuelven a ser harina y grasa.
same-heading = otro paso tiene el mismo título
same-heading-help = Distíngalos: `Second turn`, `Third turn`.
names-steps = Los pasos de aquí
unknown-step = no hay ningún paso `{ $step }` en esta receta

## Formas propias

example-shape = crescent, notch 1 cm, stretch 1/4, curved (o baton, spiral, twist, knot, plait of 3, pinwheel, envelope, pocket, turnover, folded square, ring, round, oval, tin, filled ball, o el nombre de una forma de una técnica)
shape-without-frames = una forma tiene una `piece` y de dos a seis `frames`
shape-without-frames-help = Dé el tamaño de la pieza que dibuja, y para cada fase qué se hace y sus puntos en cm, como `dough: 0 0, 12 0, 12 8, 0 8`.
shape-drawn-and-pictures = unas fases de esta forma están dibujadas y otras son imágenes
shape-drawn-and-pictures-help = Dibújelas todas, o tome una imagen de cada una.
example-stage = Doble el borde cercano hasta el centro.
bad-stage = una fase muestra su `dough` o una `picture`, y cada `arrow` tiene dos puntos
bad-stage-help = Escriba el contorno por sus esquinas, en cm desde la cercana de la izquierda: `dough: 0 0, 12 0, 12 8, 0 8`; o muéstrela: `picture: roll-up.jpg, both hands roll it away`.

## Técnicas

example-technique-summary = Tres partes, una sobre otra.
bad-drawing = aquí no hay bastante para dibujar
bad-drawing-help = Un dibujo tiene una `sheet` y una `turn`, `turns`, un `cut`, un `roll`, una `shape`, piezas `per tray`, o un `lock-in` con su `block`.

## Líneas de las fichas

ticket-line-twice = `{ $key }` está aquí dos veces
ticket-line-twice-help = Deje una de las dos líneas.
ticket-beside-proof = una fermentación a varias temperaturas ya tiene sus tiempos y calores, y no es un horneado: `{ $key }` no puede estar a su lado
ticket-beside-proof-help = Escriba `proof: 5 °C, 12 h in the fridge; then 26 °C, 90 min in the proofer` solo; un horneado y un enfriamiento tienen pasos propios.
ticket-no-key = esta línea no es `key: value`
ticket-no-key-help = Escriba por ejemplo `hands: 10 min`.
ticket-no-value = `{ $key }` no tiene valor
ticket-no-value-help = Escriba el valor detrás de los dos puntos, o quite la línea.
example-turn = book (o letter, half, o un número de partes de 2 a 12; con book se puede decir `book, ends meet at 1/3`)
example-roll = same way (o quarter turn, que es lo habitual)
example-lock-in = envelope (o letter, o book; inverted book para la grasa por fuera)
example-divide = half for crescents, the rest for batons (o 12 pieces)
unknown-line = `{ $key }` no es una línea que pueda llevar una ficha
unknown-line-help = Una ficha puede llevar: { $keys }.

## Archivos de mensajes

words-unreadable = esto no se puede leer
words-unreadable-why = esto no se puede leer: { $reason }
words-unknown-form = un mensaje lleva aquí palabras, `{"{"} $name {"}"}` y elecciones según `{"{"} $name -> {"}"}`

## YAML

yaml-no-space = falta un espacio detrás del `-`
yaml-no-space-help = Escriba `- { $line }: …`.
yaml-run-on = esta línea se lee como parte de la de arriba, porque su `-` está más a la derecha
yaml-run-on-help = Ponga el `-` de todas las líneas de una lista en la misma columna, cada uno con un espacio detrás.
yaml-help = Cada línea es `key: value`; las líneas que van juntas empiezan en la misma columna, sangradas con espacios. Un valor que contiene `: ` o empieza con un signo como `[`, `{"{"}`, `*`, `&`, `!`, `%`, `@` o una comilla va entre "comillas dobles".
yaml-key-twice = la misma clave está aquí dos veces
yaml-alias = `*name` y `&name` no se usan en estos archivos
yaml-tab = aquí se sangra con un tabulador; use espacios
yaml-too-deep = aquí hay listas y claves unas dentro de otras a demasiada profundidad
yaml-too-large = este archivo es demasiado grande o tiene demasiados niveles
bad-yaml = esta línea no se puede leer como `key: value` ni como elemento de una lista

## Deslices en YAML

yaml-open-quote-help = Escriba `{ $close }` detrás de su última palabra.
yaml-open-quote = esta comilla no está cerrada
yaml-open-bracket-help = Escriba `{ $end }` detrás de la última palabra que contiene.
yaml-open-bracket = este corchete o llave no está cerrado
yaml-write-item = Escriba `- { $rest }`.
yaml-no-space-colon = falta un espacio detrás de los dos puntos
yaml-no-colon = faltan los dos puntos detrás de la clave
yaml-write = Escriba `{ $right }`.
yaml-odd-value = un valor que contiene `: `, o que empieza con un signo como `[` o `*`, significa aquí otra cosa
yaml-odd-value-help = Póngalo entre comillas dobles: `{ $right }`.
yaml-column = esta línea empieza en otra columna que aquellas con las que va
yaml-column-help = Haga que las líneas que van juntas empiecen en la misma columna; use espacios, no tabuladores.

## Recetas en círculo

recipe-cycle = esta receta se necesita a sí misma: { $way }
recipe-cycle-help = Quite de una de estas recetas el ingrediente que lleva de vuelta.

## Pesar

not-counted = `{ $name }` no se cuenta por piezas: no se conoce su peso
not-counted-help = Escriba su peso; o pese una pieza y anótelo en `pantry.yaml`:
    { $entry }
no-batches = `{ $name }` no es una receta, así que no tiene tandas
no-batches-help = Las tandas son de otra receta: `1 batch [layered dough](layered-dough.md)`.
no-density = no se sabe cuánto pesa 1 { $unit } de `{ $title }`
no-density-help = Escriba un peso; o pese 1 { $unit } al ras y anótelo en `pantry.yaml`:
    { $entry }
no-anchor = los porcentajes necesitan un peso en que apoyarse
no-anchor-help = Dé un peso a una harina de `{ $recipe }`: `500 g bread flour`.

## Alérgenos que se omiten. Estos mensajes tocan a la seguridad

allergen-taken-out = `{ $word }` se tomaría por algo sin { $missing }
allergen-taken-out-help = Escriba `{ $name }` en las recetas donde se quiere decir eso, y no ponga aquí `{ $word }`.
allergen-left-out = `{ $name }`, por su nombre o por aquello a lo que se parece, debería contener { $missing }, y sus alérgenos lo omiten
allergen-left-out-nut = Lea su envase y escriba todo lo que indica:
    { $entry }
    Si el envase mismo indica menos, escriba lo que indica y después `, read on the pack`. Diga qué fruto de cáscara es.
allergen-left-out-help = Lea su envase y escriba todo lo que indica:
    { $entry }
    Si el envase mismo indica menos, escriba lo que indica y después `, read on the pack`.

## Ingredientes propios

example-kind = flour, liquid, fat, egg, sugar, salt o leavener
example-density = 0.46 g/ml o 1 tbsp = 6.8 g
example-allergens = lo que indica su envase, con estas palabras: { $words }
pantry-unreadable = `{ $value }` no se puede leer aquí
pantry-unreadable-help = Escriba { $example }.

## Ingredientes desconocidos

known-name = `{ $name }`
unknown-ingredient = `{ $name }` no está en la despensa
unknown-ingredient-help = Si el nombre es correcto, añada a `pantry.yaml`, rellenando lo que indica su envase:
    { $entry }
unknown-ingredient-one = ¿Quería decir { $only }? Si no, añada a `pantry.yaml`, rellenando lo que indica su envase:
    { $entry }
unknown-ingredient-several = ¿Quería decir { $rest } o { $last }? Si no, añada a `pantry.yaml`, rellenando lo que indica su envase:
    { $entry }

## Archivos que no se pueden leer

unread-link = es un enlace a otro lugar
unread-link-help = Ponga aquí el archivo o la carpeta misma.
unread-too-much = aquí hay más de { $files } archivos, o más de { $text } MiB de texto o { $pictures } MiB de imágenes
unread-too-much-help = Guarde lo demás en otra parte; haga dos cursos de uno grande.
unread-not-plain = no es un archivo corriente
unread-picture-link-help = Ponga aquí la imagen misma.
picture-smaller-help = Guárdela más pequeña: con 3000 píxeles de ancho sobra.
unread-picture-large = pasa de 30 MiB
unread-not-plain-help = Ponga aquí un archivo de texto.
unread-name = su nombre es parte de direcciones web, y ahí no puede ir cualquier signo
unread-name-help = Use solo letras de la a a la z, cifras, guiones y guiones bajos, como `{ $better }`.
unread-large = pasa de 1 MiB
unread-large-help = Una receta es una página o dos de texto.
unread-not-text = no es texto UTF-8
unread-not-text-help = Guárdelo como texto sin formato en UTF-8.
unread-zero-byte = contiene un byte cero
unreadable-file = este archivo no se lee: { $why }

## Tipos de letra

unread-typeface-link = es un enlace a otro lugar, o una carpeta
unread-typeface-link-help = Ponga aquí el tipo de letra mismo.
unread-typeface-large-help = Tome uno con menos letras: la parte que sirve para un idioma.
unread-typeface-large = pasa de 20 MiB

## Archivos que nadie lee

unread-file = nadie lee este archivo
unread-file-help = Como `{ $better }` se leería.

## Letras

no-typeface = no hay ningún tipo de letra `{ $name }`
no-typeface-help = Hay: { $families }. Para añadir uno, ponga sus archivos .ttf u .otf en content/media.
no-glyph = los tipos de letra no tienen `{ $sign }`: las hojas imprimen { $stand_in } en su lugar
no-glyph-help = Escríbalo de otra manera, o ponga en content/media un tipo de letra que lo tenga.

## Imágenes dañadas

unreadable-picture = este archivo no es una imagen que se pueda mostrar
unreadable-picture-help = Guárdela como JPEG o PNG.
broken-picture = esta imagen está cortada o dañada: no están todas sus líneas
broken-picture-help = Cópiela otra vez de donde vino, o guárdela otra vez como JPEG o PNG.
picture-too-large = esta imagen tiene más de 60 millones de píxeles

## Hojas largas

card-two-sides = la ficha de mesa de esta receta no cabe en una cara
card-two-sides-help = Sigue en la otra cara. Con indicaciones más cortas (`until`), o con dos recetas de las que una es ingrediente de la otra, queda en una cara.
long-sheet = la hoja del alumno de esta receta ocupa más de { $most } caras
long-sheet-help = Sigue en una cara más. Ayudan los párrafos más cortos, y también `included: by name only` en la cabecera, si lo que entra en ella tiene su propia hoja.

## La edición anterior

faulty-edition = la edición de `{ $folder }` tiene errores, así que ninguna hoja dice qué ha cambiado desde entonces
faulty-edition-help = Véalos con `tourier proof --content` y su carpeta.
missing-edition = no hay ninguna carpeta `{ $folder }` en la carpeta del contenido
missing-edition-help = Copie ahí el contenido antiguo, o quite esta línea.

## Imágenes en papel

coarse-picture = `{ $picture }` tiene { $dots } puntos de ancho, y en papel se ve basta
coarse-picture-help = Tome una imagen más grande, de 1000 puntos de ancho o más; o no la lleve al papel: `print: no`.
faint-picture = en gris, `{ $picture }` tiene casi toda la misma claridad
faint-picture-help = En una fotocopia nadie verá lo que muestra. Tómela con mejor luz, o no la lleve al papel: `print: no`.

## Variantes de una receta

in-this-way = en la variante `{ $way }`: { $message }
unknown-way = `{ $recipe }` no se ofrece en una variante `{ $way }`
names-ways = Sus variantes
ways-at-odds = la variante `{ $way }` cambia una línea que otra ya ha cambiado
ways-at-odds-help = Tome una de las dos, o escriba un cambio que haga ambas cosas.
swap-of-nothing = aquí nada se llama `{ $name }`, así que nada puede ocupar su lugar
names-lines = Líneas de aquí
swap-of-several = `{ $name }` está en varias secciones: { $sections }
swap-of-several-help = Diga cuál: `{ $name } in { $section }`. Escriba una línea para cada una.
swap-leaves-nothing = la variante `{ $way }` no deja nada de la fórmula
swap-leaves-nothing-help = Escriba en ella lo que se toma en su lugar, como `140 g oat drink for whole milk`.
swap-without-lines = el cambio `{ $name }` no cambia nada
swap-without-lines-help = Sus líneas van debajo, cada una con `- ` delante: `- 140 g oat drink for whole milk`, `- 30 g water in dough` o `- without walnuts`.
way-still-told = este paso habla de { $name }, que la variante `{ $way }` no tiene
way-still-told-help = Escriba el ingrediente entre llaves, como `{"{"}whole milk{"}"}`: cada variante dice entonces el suyo. O nómbrelo por lo que hace ahí, como el líquido.

## Traducciones. Las advertencias tocan a la seguridad

translates-nothing = nada dice qué texto traduce «{ $title }»
translates-nothing-help = Escriba debajo, en una ficha, `translates: mix-the-dough` con el nombre del paso o del título original: los textos nunca se emparejan por su orden.
translation-unknown = no hay ningún texto `{ $name }` que traducir
translation-unknown-help = Escriba el nombre del original: de un paso, su título en minúsculas con guiones; de un archivo, su nombre.
translation-not-named = nadie lee esta carpeta: el curso no nombra el idioma `{ $language }`
translation-not-named-help = Escriba `also in: { $language }` en `course.yaml`, o quite la carpeta.
translation-no-file = estos textos no están traducidos: { $files }
translation-no-file-help = Se muestran en el primer idioma. Escriba { $first } y así sucesivamente, o nombre en `also in` lo que ha de haber en este idioma.
translation-no-part = estas partes no están traducidas: { $titles }
translation-no-part-help =
    Se muestran en el primer idioma. Escriba cada una en su idioma, bajo su título:
    { $blocks }
translation-behind = «{ $title }» no se hizo a partir del original tal como está ahora
translation-behind-help = Lea de nuevo el original y corrija este texto donde haga falta; escriba luego `mark: { $mark }`. Hasta entonces, sus advertencias y lo que indica que está listo aparecen en el primer idioma.
translation-numbers = «{ $title }» y su original no dicen los mismos números: { $numbers }
translation-numbers-help = Dígalos como el original, en cifras o entre llaves. Hasta entonces se muestra el original.
translation-caution = advertencias en el original de «{ $title }»: { $there }; aquí: { $here }
translation-caution-help = Empiece cada una con la palabra, como en `> Atención:`. Hasta entonces se muestran también las del original.
untranslated-words =
    { $count ->
        [one] un texto corto no tiene palabras en este idioma
       *[other] { $count } textos cortos no tienen palabras en este idioma
    }
untranslated-words-help =
    Se muestran como están escritos. Escriba cómo se llama cada uno, en `{ $file }`:
    { $block }
translation-key-help = Una traducción contiene solo prosa. Sus fichas dicen `translates`, `mark` y `until`; números, tamaños y tiempos vienen del original.
