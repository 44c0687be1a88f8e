### Lo que `--help` dice de órdenes, opciones y valores. La clave de un mensaje se hace con sus nombres: `help-ORDEN`, `help-ORDEN-OPCIÓN`, y
### detrás `-VALOR`; `any` vale para todas las órdenes. Las palabras entre `acentos graves` se teclean y se quedan como están.

## Encabezados

help-head-usage = Uso
help-head-commands = Órdenes
help-head-command = Orden
help-head-arguments = Argumentos
help-head-options = Opciones
help-head-values = Valores posibles
help-head-values-short = valores posibles
help-head-default = por defecto
help-head-examples =
    { $count ->
        [one] Ejemplo
       *[other] Ejemplos
    }
help-head-name = Nombre
help-head-description = Descripción
help-head-version = Versión

## Todas las órdenes

help-tourier = Hace de una carpeta de recetas para hornear a mano, en texto sencillo, el sitio comprobado de un curso y hojas impresas
help-any-content = La carpeta de contenido. Si se nombra varias veces, se publican varios cursos: cada uno en una carpeta de su nombre dentro de la carpeta de salida
help-any-theme = La carpeta de un tema, que se pone sobre el tema incorporado
help-any-quiet = No mostrar ni el avance ni la línea final
help-any-color = Cuándo dar color a los mensajes
help-any-color-auto = En un terminal, salvo que NO_COLOR esté definido
help-any-color-always = Siempre
help-any-color-never = Nunca
help-any-help = Mostrar la ayuda: `-h` en breve, `--help` entera
help-any-version = Mostrar la versión

## Lo que admiten varias órdenes

help-any-recipe = El nombre de archivo de la receta
help-any-class = El nombre de archivo de la clase
help-any-name = El nombre de archivo de la clase o de la receta; varias recetas, `crescents,chocolate-batons`, se hacen juntas, y una masa común, una sola vez
help-any-as = La forma de la respuesta
help-any-as-text = Para leerla
help-any-as-json = Para programas
help-any-as-csv = Para una hoja de cálculo
help-any-as-ics = Un archivo de calendario
help-any-as-svg = Un gráfico
help-any-units-metric = Métricas
help-any-units-us = Medidas de EE. UU.
help-any-pieces = Tantas piezas: `24`
help-any-piece-weight = Piezas de este peso: `60g`; tantas como está escrito o como diga `--pieces`
help-any-batches = Tantas veces la receta: `1.5`
help-any-flour = Tanta harina en total: `1kg`
help-any-total = Tanto en total: `2kg`
help-any-tin = Para otro molde: `23 cm round`
help-any-with = De una de las maneras de la receta, o de varias: `"oat drink"`, `"without walnuts"`

## `start`

help-start = Escribir un curso pequeño para empezar, en una carpeta nueva
help-start-dir = La carpeta en la que se escribe el curso; una nueva, o una en la que no haya nada

## `publish`

help-publish = Comprobarlo todo y escribir después el sitio y todas las hojas; solo se hace lo que ha cambiado
help-publish-to = La carpeta de salida; `output` si no se dice. Con varios cursos, la carpeta en la que están las suyas
help-publish-among-others = Publicar en la carpeta que nombra `--to` aunque haya en ella archivos ajenos y nunca se haya publicado ahí; se quedan como están
help-publish-thorough = Leer entero cada archivo publicado para ver que está intacto, no solo su tamaño y su fecha
help-publish-shared = Una carpeta de archivos hechos que comparten ordenadores y cursos: lo que hay en ella no se hace otra vez, y lo que se hace se pone en ella si se puede escribir ahí

## `preview`

help-preview = Servir el sitio solo en este ordenador, y hacerlo de nuevo cuando se guarda un archivo
help-preview-port = El puerto; uno libre si no se dice
help-preview-desk = Empezar en la mesa de escribir: los textos se escriben en el navegador, junto a la página que hacen
help-preview-to-read = Solo para leer: sin mesa de escribir, y no se escribe nada
help-preview-room = Dejar que los teléfonos de la misma red local lean las páginas y anoten lo que pasa durante una clase, con un código que se escanea; en ADDRESS si este ordenador tiene varias
help-preview-no-browser = No abrir el navegador

## `editor`

help-editor = Hablar con su editor mientras usted escribe: fallos, cómo completar, qué es una palabra (Language Server Protocol en la entrada y la salida estándar)

## `handout`

help-handout = Hacer una hoja en PDF, o las de todo el curso o de una clase en uno solo
help-handout-recipe = El nombre de archivo de una receta; varias, `crescents,chocolate-batons`, en uno, y una masa común, una sola vez; `all` para todas las recetas del curso detrás de una portada; el nombre de archivo de una clase para todo su juego: hojas del alumno, y fichas de mesa para cada grupo con sus propias cantidades
help-handout-kind = La clase de hoja: `student` si no se dice, para una clase `student` y `bench`
help-handout-kind-student = Para llevar a casa
help-handout-kind-bench = Una página para ponerla en la mesa
help-handout-kind-large-print = La hoja del alumno en 18 puntos
help-handout-units = Las unidades que van primero; las del curso si no se dice
help-handout-paper = El papel; el del curso si no se dice
help-handout-paper-a4 = A4
help-handout-paper-letter = Carta de EE. UU.
help-handout-language = El idioma, de aquellos en los que hay curso; el primero si no se dice
help-handout-level = Imprimir también lo que se dice solo a algunos y las páginas tienen plegado; para una clase, como diga su archivo si no se dice
help-handout-level-beginners = Quienes lo hacen por primera vez
help-handout-level-practised = Quienes ya lo han hecho
help-handout-booklet = Dos páginas en cada cara del papel, para doblarlo por la mitad
help-handout-labels = Etiquetas para lo que se ha pesado, en hojas de etiquetas de este tamaño: `70 x 37 mm`
help-handout-to = La carpeta en la que escribir

## `proof`

help-proof = Comprobarlo todo y no escribir nada

## `facts`

help-facts = Dar en JSON todo lo que se calcula de una receta, o de varias hechas juntas
help-facts-recipe = El nombre de archivo de la receta; varias, `crescents,chocolate-batons`, se hacen juntas, y una masa común, una sola vez
help-facts-schema = Dar el esquema JSON de esta salida, o de un texto que usted escribe
help-facts-schema-facts = Lo que da `facts`
help-facts-schema-together = Lo que da de varias recetas
help-facts-schema-course = course.yaml
help-facts-schema-pantry = pantry.yaml
help-facts-schema-glossary = glossary.yaml
help-facts-schema-class = Una clase
help-facts-schema-recipe = El encabezado de una receta
help-facts-schema-technique = El encabezado de una técnica
help-facts-schema-translation = El encabezado de un texto en otro idioma

## `scale`

help-scale = Mostrar la fórmula de una receta, o de varias hechas juntas, en otro tamaño, en los dos sistemas de unidades
help-scale-recipe = El nombre de archivo de la receta; varias, `crescents,chocolate-batons`, se hacen juntas, y una masa común, una sola vez

## `timetable`

help-timetable = Planificar una clase, o una receta en casa hacia atrás desde cuando debe estar lista
help-timetable-ready = Para una receta: cuándo debe estar lista, `2027-03-07 09:00`
help-timetable-group = Con `--as ics`: el calendario del grupo de este número; sin ello, el del docente

## `today`

help-today = Una clase en marcha: guardar lo que ha pasado, y planificar de nuevo el resto
help-today-said = Lo que ha pasado: `pairs 1-3: second turn; pair 4 late 10; pair 2: brush skipped`, `all: first turn at 18:50`, `pair 1: bake from 19:40`, `all: nothing yet`, `pair 3 gone`, `oven 2 out`, `oven 2 back`; `take back` retira la línea anterior. Basta el principio del nombre de un paso. Los grupos que no se nombran han seguido el plan
help-today-now = La hora que es, `18:55`; la de este ordenador si no se dice
help-today-try = Ver solo en qué quedaría: no se guarda nada

## `note`

help-note = Anotar en la mesa de trabajo algo de una receta, para su próxima edición; mostrar sus notas
help-note-said = Lo que hay que anotar; `taken up 2` cuando la receta ya recoge la segunda nota, `taken up` cuando las recoge todas. Sin nada se muestran las notas
help-note-on = El día de la nota, `2027-03-03`; el de hoy según este ordenador si no se dice

## `order`

help-order = La lista de la compra y las pesadas de una clase, o de recetas hechas juntas

## `changes`

help-changes = Decir en qué difieren dos ediciones del contenido, con las palabras de un lector
help-changes-old = La carpeta de contenido de la edición antigua
help-changes-new = La carpeta de contenido de la edición nueva
help-changes-units = Las unidades en que se dice; las de la edición nueva si no se dice

## `draft`

help-draft = Hacer el borrador de una receta que existe: texto sencillo pegado de cualquier parte, una página web guardada con datos de schema.org, o esos datos solos. No se busca nada en la red
help-draft-file = El archivo con la receta; `-` para lo que se teclea o se pega
help-draft-to = El archivo que se escribe, en lugar de uno en la carpeta de contenido con el nombre de la receta; `-` para solo mostrar el borrador

## `convert`

help-convert = Convertir una cantidad, nombrando la densidad usada
help-convert-amount = Lo que se convierte: `2 cups bread flour`, `190 °C`
help-convert-unit = La unidad que se quiere: `g`, `oz`, `cup`, `tbsp`, `ml`; para un horno `°C`, `°F`, `fan` o `no fan`. Un horno escrito con su ventilador, `fan 170 °C`, no necesita ninguna

## `completions`

help-completions = Dar lo que necesita un intérprete de órdenes para completar órdenes y opciones
help-completions-shell = El intérprete de órdenes

## `manual`

help-manual = Dar la página de manual, para `man`

## `help`

help-help = Mostrar esta ayuda, o la de una orden
help-help-command = La orden
