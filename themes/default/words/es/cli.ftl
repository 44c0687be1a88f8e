### Lo que el programa dice en la terminal y en la vista previa. { $name } en un mensaje lo pone el programa; las palabras entre
### `comillas invertidas` se teclean y se quedan como están.

## Por qué una receta no se puede hacer en un tamaño

size-piece-unknown = no se sabe cuánto pesa una pieza
size-no-flour = no lleva harina
size-weightless = no pesa nada
size-no-tin = no nombra ningún molde
size-out-of-bounds = eso no es nada, o son más de 10 000 tandas
size-not-in-pieces = no se hace por piezas

## Por qué no hay nada que planear

unclear-no-sessions = no tiene sesiones
unclear-first-session = su primera sesión no es una hora que exista
unclear-session = una sesión no es una hora que exista
unclear-overlap = dos sesiones se solapan
unclear-no-recipe = falta una receta
unclear-ring = hay pasos que se esperan unos a otros en círculo
unclear-own-ring = sus pasos se esperan unos a otros en círculo
unclear-no-time = esa no es una hora de reloj: no se puede leer, o los relojes se adelantan y se la saltan

## Lo que la máquina no quiso hacer

store-open-content = no se puede abrir la carpeta del contenido { $path }: { $why }
store-open-theme = no se puede abrir el tema { $path }: { $why }
store-open = no se puede abrir { $path }: { $why }
store-read = no se puede leer { $path }: { $why }
store-write = no se puede escribir { $path }: { $why }
store-write-in = no se puede escribir en { $path }: { $why }
store-write-to = no se puede escribir en { $path }: { $why }
store-write-beside = no se puede escribir junto a la carpeta de salida, en { $path }: { $why }
store-lock = no se puede bloquear { $path }: { $why }
store-make = no se puede crear { $path }: { $why }
store-move = no se puede mover { $path }: { $why }
store-copy = no se puede copiar { $path }: { $why }
store-clear = no se puede vaciar { $path }: { $why }
store-entitle = no se pueden dar sus permisos a { $path }: { $why }
store-use = no se puede usar { $path }: { $why }
store-publish = no se puede publicar en { $path }: { $why }
store-serve = no se puede servir en { $path }: { $why }
machine-says = { $reason }
machine-not-there = no está ahí
machine-no-right = usted no tiene permiso para ello
machine-read-only = es de solo lectura
machine-disk-full = el disco está lleno
machine-file-for-folder = hay un archivo donde debería haber una carpeta
machine-folder-for-file = hay una carpeta donde debería haber un archivo

## Plantillas

template-fault = { $template }:{ $line }: { $message }

## Dónde se puede publicar una edición

place-of-instructor = una carpeta con ese nombre guarda lo que es solo de quien enseña, junto a un sitio; tome otro nombre
place-beside-link = es un enlace; lo que está junto a un sitio tiene que ser una carpeta propia
place-file = hay un archivo en su lugar
place-root = es la raíz de un disco; nombre una carpeta propia
place-inputs = el contenido y el tema están dentro de ella, o ella dentro de ellos; tome otra
place-home = es su carpeta personal, o una que la contiene; nombre una carpeta propia
place-mount = ahí está montado un disco o una carpeta de otro lugar, y no se puede cambiar por una edición nueva; nombre una carpeta dentro de ella
place-strangers = contiene archivos que no se publicaron; tome otra, o diga --among-others para publicar junto a ellos
place-link = es un enlace a un lugar que no está ahí; cree ese lugar, o quite el enlace
place-leads-out = vuelve a salir de una carpeta que no está ahí

## Dos a la vez

place-under-way = ya hay otra publicación en marcha en esta carpeta; pruebe otra vez cuando acabe

## Textos de otra parte

text-too-long = pasa de 8 MiB
text-not-utf8 = no es texto UTF-8; ábralo en un editor y guárdelo como UTF-8

## Hacer los archivos

place-not-ours = en la carpeta de salida hay algo ahí que no se publicó antes: llévelo a otra parte, o publique en otra carpeta
place-twice = en este lugar se pondrían dos archivos, o no es un lugar
file-needed = necesita { $path }, que no se puede leer

## Archivos que no se pueden leer

theme-link = es un enlace a otro lugar; ponga ahí el archivo mismo
theme-too-large = el tema es demasiado grande
theme-file-too-large = pasa de 16 MiB
theme-not-utf8 = no es texto UTF-8: guárdelo como texto sin formato en UTF-8

## Imágenes

picture-none = no es una imagen

## Imágenes en papel

picture-no-size = no tiene tamaño

## Composición

handout-unset = la hoja no se pudo componer

## Dibujos como imágenes

unpainted = el dibujo no se pudo convertir en imagen: { $why }
unpainted-tall = es demasiado alto
unpainted-large = es demasiado grande
unpainted-typeface = el tema no tiene el tipo de letra Asap

## Hojas

picture-unshown = { $name }: { $reason }
handout-no-setting = no hay ninguna composición que probar
handout-unwritten = las páginas no se pudieron escribir

## La vista previa

preview-broke-file = la vista previa falló mientras hacía este archivo
file-missing = no hay { $path }

## Opciones

option-unreadable = --{ $option } { $value } no se puede leer; escriba --{ $option } { $example }

## Cambios

changes-in = en { $folder }:
changes-from-to = de { $old } a { $new }
changes-new-recipe = { $title } (receta nueva)
changes-recipe-left-out = { $title } (receta que se quita)
changes-new-technique = { $title } (técnica nueva)
changes-technique-left-out = { $title } (técnica que se quita)

## Hojas de una clase

class-own-size = una clase dice ella misma cuánto hace cada grupo; no escriba el tamaño
handout-cannot = no se pueden hacer las hojas de `{ $name }`: { $reason }
handout-no-booklet = un cuadernillo se hace con hojas del alumno

## Conversiones

convert-without-fan = { $text } = { $heat } sin ventilador
convert-into-what = diga en qué quiere `{ $text }`: g, oz, cup, tbsp, ml
convert-no-unit = `{ $unit }` no es una unidad; escriba una como g, oz, cup, tbsp o ml
convert-unreadable = `{ $text }` no se puede leer; escriba "2 cups bread flour"
convert-unknown = `{ $name }` no está en la despensa; ¿quería decir `{ $near }`?
convert-answer-density = { $text } = { $amount } { $unit } ({ $density } g/ml)
convert-answer = { $text } = { $amount } { $unit }
convert-heat = { $heat } = { $shown }
convert-with-fan = { $text } = { $heat } con ventilador
convert-from-fan = { $text } con ventilador = { $heat }
convert-no-scale = `{ $wanted }` no es una manera de decir una temperatura; escriba °C, °F, fan o "no fan"

## Borradores

draft-cannot = { $file }: { $why }
draft-settle-each = Resuelva cada uno de estos puntos en el texto y quite después su línea.
draft-no-method = el texto no tiene método: escriba sus pasos
draft-degrees = `{ $words }` no dice qué grados: escriba {"{"}190 °C{"}"} o {"{"}375 °F{"}"}
draft-overnight = `overnight` no es un tiempo: escriba `wait: 12 h (8 h to 16 h)` o lo que se quiera decir
draft-rise = no se dice cuánto fermenta: { $sentence }
draft-times = se dice más de un tiempo, `{ $time }` está en la ficha: { $sentence }
draft-work-or-wait = `{ $key }: { $time }` puede ser igualmente `{ $other }`: { $sentence }
draft-no-oven = no se dice la temperatura del horno; busque una y escriba `bake: TEMPERATURE, { $time }` en lugar de `wait` y `where`: { $sentence }
draft-cook-time = el tiempo de horno es el `cookTime` de la página, no está en el paso: { $sentence }
draft-no-bake-time = no se dice el tiempo de horno: { $sentence }
draft-second = aquí se dice un segundo `{ $key }: { $value }`: haga de ello un paso propio
draft-of-step = { $title }: { $doubt }
draft-lost-all = ningún paso nombra lo que hay en `{ $section }`: todo se pone en `{ $title }`
draft-lost = ningún paso nombra { $names }: se pone en `{ $title }`
draft-lost-one = «{ $name }»
draft-no-title = el texto no tiene título: póngale uno
draft-no-summary = no se dice `summary`: diga en una frase qué es
draft-left-out = `{ $line }` queda fuera de la fórmula: { $why }
draft-of-what = ¿da { $number } de qué? En su lugar está `{ $good }`
draft-makes-unread = `makes` no se lee en `{ $told }`: en su lugar está `1 batch`; escriba un número y una palabra, como `24 rolls`
draft-makes-untold = no se dice cuánto da: en su lugar está `1 batch`; escriba por ejemplo `24 rolls`
draft-line-wrong = línea { $line }: { $said }
draft-no-weight = `{ $line }` queda sin peso, como `{ $text }`: { $why }
draft-turned = `{ $text }` está escrito como `{ $turned }`: ¿es eso lo que se quiere decir?
draft-why = { $why }. { $help }
draft-ask-proof = `tourier proof` dice qué hacer donde está escrito así
draft-besides = dicho aparte de los pasos: { $line }
draft-longer = hay más de { $lines } ingredientes o { $steps } pasos: el resto se omite
draft-others = la página contiene { $others } receta(s) más: solo se toma la primera
draft-author = la página nombra como autor: { $author }
draft-no-ingredients = no se encuentra ninguna lista de ingredientes; escriba cada ingrediente en su propia línea, por encima del método
draft-not-in-data = parece JSON, pero no contiene ningún Recipe de schema.org
draft-not-in-page = esta página no contiene datos Recipe de schema.org; copie el texto de la receta en un archivo de texto y haga el borrador a partir de él
draft-there = { $to } ya está ahí, y no se escribe encima de nada; nombre otro archivo con `--to`
draft-stands = hay un borrador en { $to }
draft-sure = nada en él es dudoso; léalo entero de todos modos
draft-next = vea qué más hay que decir:  tourier proof{ $content }

## Datos

facts-schema = escriba --schema={ $name } para el esquema de un texto, o quite `{ $name }` para el de los datos

## Hojas desde la línea de órdenes

handout-none-written = no se escribe ninguna hoja
cli-error = error: { $message }
handout-waiting = esperando a que acabe una publicación en { $folder }
handout-no-recipe = no hay ninguna receta que imprimir
labels-unreadable = --labels { $size } no se puede leer; escriba el tamaño de una etiqueta, --labels "70 x 37 mm"
labels-unfit = las etiquetas de { $size } son demasiado pequeñas para leerlas o más grandes que el papel

## Carpetas y nombres

cli-stop = tourier: { $message }
cli-no-stop = no se puede atender a una señal de parada: { $error }
cli-no-answer = no se puede escribir la respuesta: { $error }
content-file = { $folder } es un archivo, no una carpeta de contenido; nombre la carpeta que contiene `course.yaml` con `--content FOLDER`
content-none = no hay ninguna carpeta de contenido { $folder }; `tourier start { $folder }` escribe ahí un curso pequeño para empezar, `--content { $near }` nombra otra carpeta
theme-none = no hay ningún tema en { $folder }; `--theme FOLDER` nombra una carpeta con los archivos que difieren del tema incorporado
scale-cannot = `{ $name }` no se puede hacer en ese tamaño: { $reason }
way-cannot = `{ $name }` no se puede hacer así: { $reason }
theme-words = en el tema, { $path }:{ $line }: { $message }
none-near = no hay ninguna { $kind } `{ $name }`; ¿quería decir `{ $near }`?
none-at-all = no hay ninguna { $kind } `{ $name }`: la carpeta del contenido no contiene ninguna
none-known = no hay ninguna { $kind } `{ $name }`; hay: { $known }

## Compras

order-cannot = no se puede hacer la compra de `{ $name }`: { $reason }

## La vista previa en la terminal

preview-no-stop = no se puede atender a Ctrl-C: { $error }
preview-faults = hay fallos
preview-port-in-use = el puerto { $port } está en uso; quite --port y tendrá uno libre
preview-no-port = no se puede servir en el puerto { $port }: { $error }

## Publicar

publish-mended = { $file } se había cambiado o quitado desde la última publicación: hecho de nuevo
publish-mended-two = { $file } y { $other } se habían cambiado o quitado desde la última publicación: hechos de nuevo
publish-mended-more = { $file } y otros { $count } archivos se habían cambiado o quitado desde la última publicación: hechos de nuevo
publish-kept = un archivo ajeno no tenía sitio en la edición nueva; se guarda como { $path }
publish-recounted = esta versión de tourier cuenta de otro modo que la que publicó la última vez: si un número difiere y usted no ha tocado su texto, es por eso
publish-old-stands = { $error }; se mantiene la última edición
publish-new-stands = { $error }; se mantiene la edición nueva, y la próxima publicación lo intentará otra vez
publish-cannot-make = error: no se puede hacer { $path }: { $reason }
publish-begins = el curso empieza en { $folder }/index.html

## Empezar

start-not-empty = { $folder } no está vacía, y no se escribe encima de nada; nombre una carpeta nueva, como en `tourier start content`
start-stands = hay un curso pequeño en { $folder }
start-ignored = un .gitignore deja fuera aquí lo que hace publish
start-see = véalo con:       tourier preview{ $content }
start-make = publíquelo con:  tourier publish{ $content }{ $beside }

## Horarios

plan-none = no hay ningún plan: { $standing }
plan-done-no-step = esos no tienen ningún paso `{ $step }`; tienen { $known }
plan-done-several = `{ $step }` puede ser más de uno; diga cuál: { $which }
plan-done-no-group = no hay tales grupos en esta clase
plan-done-no-kit = la clase no cuenta tanto de `{ $kit }`
plan-now-unreadable = --now { $now } no se puede leer; escriba --now 18:55
plan-ready-missing = para una receta, diga cuándo debe estar lista: escriba --ready "2027-03-07 09:00"
plan-ready-unreadable = --ready { $ready } no se puede leer; escriba --ready "2027-03-07 09:00"
plan-cannot = no se puede planear `{ $name }`: { $reason }

## Mientras se espera un plan

plan-waiting = planeando; Ctrl-C para con el mejor plan hasta ahora
plan-waiting-reasons = no se halló ningún plan; se buscan las razones y lo que ayudaría; Ctrl-C para con lo que se sepa hasta entonces

## Lo que se tecleó

typed-wrong = { $said }; { $help }
typed-help = `tourier { $name } --help` dice qué admite
typed-commands = `tourier --help` muestra las órdenes
typed-command-near = no hay ninguna orden `{ $word }`; ¿quería decir `tourier { $near }`?
typed-command = no hay ninguna orden `{ $word }`; hay: { $names }
option-unreadable-in = { $option } { $value } no se puede leer; escriba { $option } { $example }
typed-option-of-near = `{ $name }` no tiene ninguna opción `{ $word }`; ¿quería decir `{ $near }`?
typed-option-near = no hay ninguna opción `{ $word }`; ¿quería decir `{ $near }`?
typed-option-of = `{ $name }` no tiene ninguna opción `{ $word }`; { $help }
typed-option = no hay ninguna opción `{ $word }`; { $help }
typed-does-not-belong = `{ $word }` no corresponde aquí; { $help }
typed-takes-no-name = `{ $name }` trabaja con la carpeta del contenido y no admite ningún nombre; para otra carpeta escriba `tourier { $name } --content { $word }`
typed-word-too-many = `{ $word }` es una palabra de más; ponga la cantidad entre comillas: `tourier { $name } "2 cups bread flour" g`
typed-takes-none = `{ $name }` no admite ahí `{ $word }`; { $help }
typed-missing = falta { $what }
typed-needs-option = `{ $name }` necesita aquí { $option }; { $help }
typed-want-folder = una carpeta en la que escribir
typed-want-recipe-file = un archivo con una receta
typed-want-two-folders = dos carpetas de contenido
typed-want-amount = una cantidad
typed-want-shell = un intérprete de órdenes
typed-want-class = el nombre de archivo de una clase
typed-want-class-or-recipe = el nombre de archivo de una clase o de una receta
typed-want-recipe-or-class = el nombre de archivo de una receta o de una clase, o `all`
typed-needs-recipe = `{ $name }` necesita el nombre de archivo de una receta: `tourier { $example }`
typed-needs = `{ $name }` necesita { $wanted }: `tourier { $example }`
typed-needs-value = { $option } necesita un valor: { $option } { $example }
typed-needs-choice = { $option } necesita uno de estos: { $choice }
typed-needs-a-value = { $option } necesita un valor
typed-none-near = { $option } { $found } no es de los que se conocen; ¿quería decir `{ $near }`?
typed-none = { $option } { $found } no es de los que se conocen; escriba uno de estos: { $choice }
option-unreadable-as = { $option } { $found } no se puede leer; escriba { $option } { $example }
option-unreadable-plain = { $option } { $found } no se puede leer
typed-twice = { $one } está ahí dos veces; basta con una
typed-not-together = { $one } y { $other } no van juntos; quite uno de los dos

## Cuentas, resultados, la vista previa en el navegador

cli-stopped = parado; { $stands }
kind-language = idioma
kind-recipe = receta
kind-class = clase
kind-recipe-or-class = receta ni clase
kind-class-or-recipe = clase ni receta
proof-sound =
    { $count ->
        [one] sin fallos en { $count } receta
       *[other] sin fallos en { $count } recetas
    }
changes-none = no hay ninguna diferencia que un lector vería
changes-of = { $title }
draft-to-settle =
    { $count ->
        [one] queda una cosa por decidir:
       *[other] quedan { $count } cosas por decidir:
    }
preview-at = el curso está en { $address } hasta que usted pulse Ctrl-C
preview-over = la vista previa ha terminado
preview-waits = no se muestra nada más nuevo hasta que esto esté corregido
publish-stands = no se escribe nada, y se mantiene la última edición
publish-unwritten = no se escribe nada; se mantiene la última edición
publish-progress = archivos
publish-idle =
    { $count ->
        [one] { $count } archivo de { $folder }/ está al día; no se ha hecho nada
       *[other] { $count } archivos de { $folder }/ están al día; no se ha hecho nada
    }
publish-apart = lo que es solo de usted está en { $folder }/: no lo ponga en la web
publish-of = { $content }:
publish-same-name = { $one } y { $other } se llaman los dos { $name }, y cada curso quiere su propia carpeta; publíquelos uno por uno con `--to DIR`, o dé otro nombre a una de las carpetas
publish-not-begun = no se ha empezado
publish-all = { $count } cursos están publicados
publish-some =
    { $count ->
        [one] { $count } de { $all } cursos publicado; sin publicar: { $names }
       *[other] { $count } de { $all } cursos publicados; sin publicar: { $names }
    }
publish-made-nothing = no se ha hecho nada
publish-made = hecho: { $kinds }
publish-and-kept =
    { $count ->
        [one] { $made }; { $count } estaba al día
       *[other] { $made }; { $count } estaban al día
    }
publish-and-removed = { $made }; quitados: { $count }
publish-pages =
    { $count ->
        [one] { $count } página
       *[other] { $count } páginas
    }
publish-handouts =
    { $count ->
        [one] { $count } hoja
       *[other] { $count } hojas
    }
publish-drawings =
    { $count ->
        [one] { $count } dibujo
       *[other] { $count } dibujos
    }
publish-others =
    { $count ->
        [one] { $count } archivo más
       *[other] { $count } archivos más
    }
scale-head = { $title }: { $batch }, { $makes }
scale-doughs = en { $count } masas iguales
scale-total = total { $metric } / { $us }
scale-total-hydration = total { $metric } / { $us }, hidratación { $percent } %
scale-total-true-hydration = total { $metric } / { $us }, hidratación real { $percent } %
scale-each-dough = cada masa { $metric } / { $us }
scale-in-us = (EE. UU.) { $us }
preview-broke-edition = la vista previa falló mientras hacía esta edición
preview-cannot-make = no se puede hacer { $name }: { $reason }
preview-no-file = no hay tal archivo
preview-no-page = no hay tal página
preview-unclear = esto no se puede leer
preview-path = esta ruta lleva fuera del sitio
preview-method = la vista previa solo se puede leer
preview-host = la vista previa responde solo como 127.0.0.1 o localhost
preview-long = esto es demasiado largo
preview-last-good = Sin publicar: se muestra la última edición buena
preview-cautions =
    { $count ->
        [one] { $count } aviso en esta edición
       *[other] { $count } avisos en esta edición
    }
preview-making = En preparación
preview-being-made = El curso se está preparando.
preview-faults-title = Fallos
preview-nothing-yet = Sin publicar: todavía no hay nada que mostrar

## Una clase en marcha

today-file-unreadable = { $file }:{ $line }: `{ $text }` no se puede leer; escriba "pairs 1-3: second turn; pair 4 late 10"
today-file-unheard = { $file }, { $at }: { $why }
today-unreadable = `{ $part }` no se puede leer; escriba "pairs 1-3: second turn; pair 4 late 10"
today-none-to-begin = la clase no tiene ningún plan con el que empezar; `tourier timetable { $name }` dice por qué
today-group = no hay ningún grupo { $number }: `{ $name }` tiene { $groups } grupos
today-later-kept = ya hay anotado algo posterior; ponga una línea anterior en el propio archivo del día
today-no-time = { $time } no es una hora que exista
today-no-session = --now { $now } no está cerca de ninguna sesión; escriba una hora como --now 18:55
today-several = --now { $now } puede ser en varios días; diga en cuál: --now "{ $day }"
today-no-zone = el curso no nombra ninguna `time zone`; diga qué hora es: --now "{ $example }"
note-kept =
    { $open ->
        [one] Guardado en { $file }; { $open } nota aún no se ha recogido
       *[other] Guardado en { $file }; { $open } notas aún no se han recogido
    }
note-none = No hay nada anotado sobre { $recipe }
note-line = { $number }. { $on } { $text }
note-line-taken = { $number }. { $on } { $text } (recogida el { $taken })
note-no-number = sobre { $recipe } no hay nota { $number }; notas en total: { $count }
note-taken-before = la nota { $number } ya está recogida
note-unkept = una nota tiene hasta 500 signos; ponga lo demás en el texto mismo de { $recipe }
note-no-day = `{ $said }` no es un día; escriba `--on 2027-03-03`
today-by-the-clock = la hora es { $time }, y no hay ninguna sesión cerca; diga cuándo: --now "{ $example }"
