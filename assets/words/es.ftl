language-name = Español
language-code = es

## Filling faces and moving blocks, in the window

arrange-fill-with-modules = Llenar con módulos
arrange-fill = Llenar
arrange-fill-this-face = Llenar este faldón
arrange-fill-all-faces = Llenar todos los faldones
arrange-all-faces-that-are-steep = Todos los faldones con pendiente suficiente para el kit, uno tras otro.  ({ $key }, sin nada seleccionado)
arrange-the-most-modules-that-the = El mayor número de módulos que permiten las reglas. Los bloques fijados se quedan, los demás del faldón hacen lugar; deshacer lo revierte.
arrange-puts-the-most-modules-on = Pone en un faldón el mayor número de módulos que permiten las reglas de esta obra, lo demuestra y enumera lo que lo limita. Seleccione un faldón para llenar solo ese.
arrange-laid-as = Filas
arrange-either-way = en cualquier sentido
arrange-blocks-at-most = Bloques como máximo
arrange-every-corner-of-a-block = Cada esquina de un bloque lleva tapajuntas: menos bloques, menos esquinas.
arrange-what-a-module-earns-after = Lo que gana un módulo ya descontado su propio costo. Una corrida de tapajuntas y una esquina cuestan lo que dice la lista de precios, así que se deja fuera el módulo que no alcanza a pagarlas.
arrange-weigh-by-the-area-of = Ponderar por el área del faldón
arrange-a-module-counts-whole-on = Un módulo cuenta entero en el faldón más grande de los que se llenan, y la mitad en uno de la mitad de su área.
arrange-size-by = Tamaño en
arrange-kilowatts = kilovatios
arrange-how-many-modules = Cuántos módulos
arrange-kilowatts-2 = Kilovatios
arrange-on-all-faces-that-are = En todos los faldones que se llenan juntos, contando los de sus bloques fijados.
arrange-as-2 = Que sea
arrange-compact-as-can-be = lo más compacto posible
arrange-cheap-as-can-be = lo más barato posible
arrange-the-faces-that-are-ticked = Los faldones marcados en la lista, uno tras otro.
arrange-no-layout-found-yet = Aún no se encontró ninguna disposición.
arrange-drawn-on-the-roof-not = Dibujado sobre el techo, todavía sin colocar. Sigue hasta demostrar que es lo mejor; Parar coloca lo que hay.
arrange-looking-for-what-holds-it = Buscando lo que lo limita…
arrange-stop-looking = Dejar de buscar
arrange-keep-what-was-found-of = Conservar lo que se encontró sobre lo que limita el arreglo.
arrange-being-looked-for = Se está buscando…
arrange-not-looked-for-to-the = No se buscó hasta el final: llene otra vez el faldón para saberlo.
arrange-not-looked-for-to-the-end = No se buscó hasta el final: puede haber más.
arrange-stop = Parar
arrange-take-the-best-that-was = Tomar lo mejor que se encontró hasta ahora, si es mejor que lo que hay.
arrange-what-was-searched = Lo que se buscó
arrange-what-holds-it-back = Lo que lo limita
arrange-nothing-but-the-size-of = Nada más que el tamaño del faldón.
arrange-there-is-no-face-to = Todavía no hay faldón que llenar: dibuje uno primero.
arrange-the-roof-changed-while-it = El techo cambió mientras se llenaba, así que se descartó la respuesta. Llénelo otra vez.
arrange-stopped-before-anything-better-than = Se paró antes de encontrar algo mejor que lo que hay: los bloques están como estaban.
arrange-filling-broke-off-by-itself = El llenado se interrumpió solo: es una falla de este programa. La obra está como estaba; pruebe otra manera de colocar.
arrange-all-that-the-kit-allows = todo lo que permite el kit
arrange-half-lapped-rows = filas a media pieza
arrange-rows-on-the-courses-one = filas sobre las hiladas, un bloque
arrange-whole-blocks = bloques enteros
arrange-by-worth = por valor
arrange-to-a-number = hasta un número

# $filled (text)
# $blocks (text)
# $count (number)
arrange-filled-in-place-of =
    { $count ->
        [one] { $filled }; el bloque { $blocks } dejó lugar
       *[other] { $filled }; los bloques { $blocks } dejaron lugar
    }

arrange-free = libres
arrange-in-line = alineadas
arrange-by-the-courses = según las hiladas
arrange-the-kit-allows-modules-joints = El kit permite módulos con { $ways }, juntas de filas { $joints }, riel base { $rail }.
arrange-a-modules-worth = Valor de un módulo, { $currency }
arrange-type-a-number-above-0 = Escriba un número mayor que 0, por ejemplo 12.5.
arrange-choose-several-faces = Elegir varios faldones

arrange-faces-chosen =
    { $count ->
        [one] { $count } faldón elegido
       *[other] { $count } faldones elegidos
    }

arrange-fill-chosen-faces =
    { $count ->
        [one] Llenar el faldón elegido
       *[other] Llenar { $count } faldones elegidos
    }

arrange-so-far = Hasta ahora { $of_most }
arrange-of-at-most = { $modules } de { $most } como máximo
arrange-what-was-found-against-the = Lo encontrado frente a lo máximo que puede haber: al final no queda nada por encontrar. Nadie puede decir de antemano cuánto tarda; Parar coloca lo que hay.
arrange-not-proved-between-and-something = Sin demostrar: entre { $value } y { $bound } puede haber algo mejor.
arrange-not-proved-up-to-more = Sin demostrar: tal vez quepan hasta { $open } { $modules } más.
arrange-costs-modules = Cuesta módulos: { $words }
arrange-would-win = Ganaría: { $words }
arrange-nearly-fits = Casi cabe: { $words }
arrange-do-this-undo-takes-it = Hacer esto; deshacer lo revierte. Después llene otra vez el faldón. { $sentence }
arrange-fill-2 = Llenar { $name }
arrange-filling = Llenando { $one }{ $since }…
arrange-filling-faces = Llenando { $names } faldones{ $since }…
arrange-fill-3 = llenar { $fill }
arrange-fill-faces = llenar { $fills } faldones
arrange-filled = Se llenó: { $of_most }
arrange-filled-faces = Se llenaron { $fills } faldones: { $of_most }
arrange-at-places = En { $places } lugares { $words }
arrange-make-room = Hacer lugar
arrange-move-it-the-least-distance = Moverlo la menor distancia que resuelve sus hallazgos.
arrange-nothing-is-in-its-way = Nada le estorba.
arrange-no-move-was-found-that = No se encontró ningún movimiento que libre este bloque: hágalo más pequeño o mueva lo que le estorba.
arrange-the-roof-changed-while-room = El techo cambió mientras se buscaba lugar, así que se descartó la respuesta. Oprima R otra vez.
arrange-stopped-before-a-place-was = Se paró antes de encontrar un lugar: el bloque está como estaba.
arrange-the-search-for-room-broke = La búsqueda de lugar se interrumpió sola: es una falla de este programa. La obra está como estaba.
arrange-end-the-search-with-the = Terminar la búsqueda con el lugar más cercano encontrado hasta ahora.
arrange-mirror = Reflejar
arrange-a-mirror-image-on-the = Una imagen reflejada en la vertiente al otro lado de la cumbrera.
arrange-its-face-shares-no-ridge = Su faldón no comparte cumbrera con otro.
arrange-copy-to-face = Copiar a un faldón
arrange-copy-to-a-face = Copiar a un faldón…
arrange-there-is-no-other-face = No hay otro faldón.
arrange-it-cant-be-copied-there = No se puede copiar ahí: corrija primero los contornos de ambos faldones.
arrange-split = Dividir
arrange-a-cut-there-leaves-nothing = Un corte ahí no deja nada en un lado.
arrange-join = Unir
arrange-no-block-is-flush-with = Ningún bloque está al ras con él: deben tocarse, tener el mismo sentido, la misma separación y las filas en línea.
arrange-align = Alinear
arrange-there-is-no-other-block = No hay otro bloque con módulos en este faldón.
arrange-select-a-block-first = Seleccione primero un bloque.
arrange-making-room-for = Haciendo lugar para { $name }…
arrange-the-least-that-clears-it = lo mínimo que lo libra, demostrado
arrange-the-least-that-was-found = lo mínimo que se encontró, sin demostrar
arrange-moved = { $name } se movió { $way_words }: { $sure }
arrange-up-the-slope = pendiente arriba
arrange-down-the-slope = pendiente abajo
arrange-not-at-all = nada
arrange-spread-along-the-eave = Repartir a lo largo del alero
arrange-spread-up-the-slope = Repartir pendiente arriba
arrange-spread-the-blocks-of = repartir los bloques de { $face }
arrange-spread = Repartir
arrange-equal-gaps-between-the-blocks = Espacios iguales entre los bloques de este faldón; el primero y el último se quedan.
arrange-nothing-to-spread-it-takes = Nada que repartir: se necesitan tres bloques del faldón que no estén fijados, con lugar entre los extremos y espacios distintos.
arrange-left-end-with-the-nearest = Extremo izquierdo con el bloque más cercano
arrange-right-end-with-the-nearest = Extremo derecho con el bloque más cercano
arrange-base-rail-with-the-nearest = Riel base con el bloque más cercano
arrange-copy-to = Copiar { $name } a
arrange-mirror-to = Reflejar en { $face }
arrange-row = la fila { $rows }
arrange-column = la columna { $columns }
arrange-right-of = a la derecha de
arrange-left-of = a la izquierda de
arrange-above = arriba de
arrange-below = debajo de
arrange-left-end-with = extremo izquierdo con { $name }
arrange-right-end-with = extremo derecho con { $name }
arrange-base-rail-with = riel base con { $name }
arrange-make-room-for = hacer lugar para { $name }
arrange-mirror-2 = reflejar { $name }
arrange-copy = copiar { $name }
arrange-split-2 = dividir { $name }
arrange-join-2 = unir { $name }
arrange-align-2 = alinear { $name }

## The drawing

canvas-pipe-boot = Bota de tubo
canvas-vent = Respiradero
canvas-skylight = Tragaluz
canvas-escape-window = Ventana de escape
canvas-what-the-lines-mean = Qué significan las líneas
canvas-inside-modules-may-stand = adentro puede haber módulos
canvas-not-for-the-lowest-row = no para la fila más baja
canvas-parallel-to-a-side-drawn = paralelo a un lado ya dibujado
canvas-parallel-to-a-side-of = paralelo a un lado de { $name }
canvas-square-to-a-side-drawn = a escuadra con un lado ya dibujado
canvas-square-to-a-side-of = a escuadra con un lado de { $name }
canvas-press-to-type-another-length = Oprima para escribir otra longitud: el bloque se mueve ahí
canvas-press-to-type-another-length-the = Oprima para escribir otra longitud: el extremo de este lado se mueve a lo largo de él
canvas-from-the-left-border-to = Del borde izquierdo al bloque
canvas-from-the-block-to-the = Del bloque al borde derecho
canvas-from-the-lower-border-to = Del borde inferior al bloque
canvas-from-the-block-to-the-upper = Del bloque al borde superior
canvas-length-of-side = Longitud del lado { $side }
canvas-hold-all-blocks-and-penetrations = Seleccionar todos los bloques y penetraciones
canvas-copied = En el portapapeles: { $what }. Péguelo en otro lugar o faldón, o en otra ventana.
canvas-nothing-to-copy = Seleccione primero un bloque o una penetración.
canvas-clipboard-has-other-text = El portapapeles no tiene ningún bloque ni penetración, sino el texto “{ $begins }”. Copie uno primero.
canvas-what-was-copied-cant-be = Lo que está en el portapapeles no se puede poner aquí: { $why }
canvas-a-click-sets-it-down = Haga clic en un faldón para ponerlo, u oprima Entrar para ponerlo en el centro del faldón seleccionado. Esc lo descarta.
canvas-it-does-not-fit-on = No cabe en este faldón aquí: se saldría del borde.
canvas-no-room-beside-it = No hay lugar junto a esto en este faldón. Cópielo y péguelo en otra parte.
canvas-drag-one-of-them-and = Arrastre uno y se mueven todos, o use las flechas. Con Mayús, un clic o un recuadro agrega o suelta.
canvas-switch-these-modules-on = Volver a poner estos módulos
canvas-switch-these-modules-off = Quitar estos módulos
canvas-delete-all-of-these = Borrar todo esto
canvas-blocks = bloques
canvas-penetrations = penetraciones
canvas-select-drag-switch-modules = Seleccionar, arrastrar, quitar y poner módulos
canvas-draw-a-face-of-the = Dibujar un techo entero sobre sus muros, una parte de la casa o un solo faldón
canvas-mark-what-comes-through-the = Marcar lo que atraviesa el techo
canvas-place-a-block-of-modules = Colocar un bloque de módulos en un faldón
canvas-measure = Medir
canvas-whole-roof = Techo entero
canvas-part = Parte
canvas-hole = Hueco
canvas-penetration-outline = Contorno de penetración
canvas-a-face-of-the-roof = Un faldón del techo, esquina por esquina
canvas-draw-the-walls-the-roof = Dibuje los muros: el techo se levanta sobre ellos, todo con una misma pendiente
canvas-a-courtyard-a-shaft-or = Un patio, un ducto o el pie de una buhardilla: su orilla cuenta como muro
canvas-a-penetration-that-is-neither = Una penetración que no es redonda ni cuadrada, por su propio contorno
canvas-raise-a-roof = levantar un techo
canvas-gables = Dos aguas
canvas-hips = Cuatro aguas
canvas-walls = Muros
canvas-how-far-the-roof-reaches = Cuánto sobresale el techo de los muros, en planta; 1' es lo usual
canvas-height-of-the-roof-over = Altura del techo sobre los muros; 9' es lo usual en un piso
canvas-this-cant-be-less-than = Esto no puede ser menor que 0: escriba 0 o más.
canvas-draw-a-courtyard-in = dibujar un patio en { $part }
canvas-draw-a-hole-in = dibujar un hueco en { $face }
canvas-choose-draw-face-to-begin = Elija “Dibujar techo” para empezar.
canvas-next-choose-block-and-press = Siguiente: elija “Bloque” y oprima sobre un faldón. Primero las penetraciones, si las conoce.
canvas-drag-blocks-vents-and-corners = Arrastre bloques, respiraderos y esquinas. El doble clic quita o pone un módulo. Ctrl o Alt arrastra sin ajuste.
canvas-click-the-first-corner-for = Haga clic en la primera esquina. En un faldón empiece por el alero si puede.
canvas-click-or-type-a-length = Haga clic, o escriba una longitud y Entrar.
canvas-click-the-first-corner-to = Haga clic en la primera esquina para cerrar.
canvas-choose-a-kind-and-click = Elija un tipo y haga clic en su centro sobre el techo, u oprima Entrar y muévala con las flechas.
canvas-click-a-face-for-3 = Haga clic en un faldón para 3 filas de 4, o arrastre el espacio que puede llenar. Entrar también coloca uno.
canvas-drag-from-one-place-to = Arrastre de un lugar a otro.
canvas-click-one-corner-or-press = Haga clic en una esquina, u oprima y jale el rectángulo.
canvas-click-the-corner-across-or = Haga clic en la esquina opuesta, o escriba la medida y Entrar.
canvas-click-the-inner-corner-or = Haga clic en la esquina interior, o escriba la medida del recorte y Entrar.
canvas-out-of-square = { $degrees }° fuera de escuadra
canvas-square = Escuadrar { $name }
canvas-corner-by-corner = Esquina por esquina
canvas-l = L
canvas-t = T
canvas-any-outline-shift-holds-right = Cualquier contorno. Mayús mantiene los ángulos rectos; escriba longitud y ángulo.
canvas-two-corners-or-one-and = Dos esquinas, o una y la medida, como 30' x 48'. También al oprimir y jalar.
canvas-a-rectangle-then-the-inner = Un rectángulo y luego la esquina interior de lo que falta.
canvas-a-rectangle-then-one-of = Un rectángulo y luego una de las dos esquinas interiores; la otra es su reflejo.
canvas-at-the = en la línea de { $kind }
canvas-from-the-its-setback = a { $setback } de la línea de { $kind }: su retiro
canvas-on-course-line = en la línea de hilada { $number }
canvas-just-clear-of = justo libre de { $name }
canvas-flush-with = al ras de { $name }
canvas-just-clear-of-2 = justo libre de { $block_name }
canvas-reveal-to = { $reveal } de separación con { $block_name }
canvas-the-same-gap-on-both = el mismo espacio a ambos lados
canvas-its-middle-on-course-line = su centro en la línea de hilada { $number }
canvas-in-line-with-the-middle = en línea con el centro de { $name }
canvas-as-far-as-the-rows = hasta donde las filas aún enganchan
canvas-the-blocks-corner = la esquina del bloque
canvas-the-row-below = la fila de abajo
canvas-in-line-with = en línea con { $below }
canvas-half-a-module-against = corrida medio módulo respecto a { $below }
canvas-module-against = corrida 1 módulo respecto a { $below }
canvas-modules-against = { $value ->
        [one] corrida { $value } módulo respecto
       *[other] corrida { $value } módulos respecto
    } a { $below }
canvas-modules-against-2 = corrida { $value } 1/2 módulos respecto a { $below }
canvas-corner-of = esquina de { $name }
canvas-on-a-side-of = en un lado de { $name }
canvas-in-line-with-a-corner = en línea con una esquina de { $name }
canvas-face-on-true-size-eave = { $name }, tamaño real: alero abajo
canvas-block = Bloque { $name }
canvas-modules = { $block_name } · { $modules ->
        [one] { $modules } módulo
       *[other] { $modules } módulos
    }
canvas-in-plan = { $length } en planta
canvas-on-the-slope-along-up = { $on_slope } en la pendiente ({ $part } a lo largo, { $part2 } hacia arriba), { $in_plan } en planta
canvas-from-the-left-up = { $from } desde la izquierda, { $from2 } hacia arriba
canvas-east-north = { $at } al este, { $at2 } al norte
canvas-drawing-of-plan = Dibujo de { $job }, planta
canvas-drawing-of-face-face-on = Dibujo de { $job }, faldón { $name } solo
canvas-face-pitch-on-the-slope = { $name }, pendiente { $pitch }, { $area } en la pendiente
canvas-rows-of-modules = { $block_name }, { $rows ->
        [one] { $rows } fila de
       *[other] { $rows } filas de
    } { $columns }, { $modules ->
        [one] { $modules } módulo
       *[other] { $modules } módulos
    }
canvas-switched-off = , quitado
canvas-module-row-column = Módulo fila { $row }, columna { $column }{ $state }
canvas-corner = Esquina { $corner }
canvas-chosen = { $kind } (puesto a mano)
canvas-kind-of-side = Tipo del lado { $side }
canvas-row = Fila { $row }
canvas-the-rule-book-says = El libro de reglas dice { $usual }.
canvas-cant-read-as-a-direction = no se puede leer { $text } como dirección: escriba grados desde el norte en el sentido del reloj, por ejemplo 180, o S

## The command line

commandline-saved-as =
    Guardado como { $to }.
    {""}

commandline-nothing-was-saved =
    No se guardó nada.
    {""}

commandline-new-roof = Techo nuevo
commandline-save-would-write-over-the = --save { $to } escribiría sobre las ediciones: indique otro archivo
commandline-save-would-write-over-the-job = --save { $to } escribiría sobre la obra: indique otro archivo, o use --in-place (la versión anterior queda como .previous)
commandline-in-place-says-that-save = --in-place quiere decir que --save apunta a la obra misma, y { $to } es otro archivo

commandline-no-fix-is-offered =
    No se ofrece ninguna corrección.
    {""}

commandline-nothing-is-found-by-the = no hay hallazgo con la clave { $key }: tome una de `check`

commandline-about = Todo el proceso sin pantalla: revisa, cuenta e da el informe de un techo con módulos solares sobre el entablado.
commandline-exit-status = Estado de salida: 0 si todo está bien, 1 si hay un hallazgo sin dispensa por el que parar, 2 si lo dado no se puede usar.
commandline-cant-write-to-the-screen = no se puede escribir en la pantalla
commandline-no-format = no hay formato { $name }; elija uno de { $known }

commandline-say-where-the-file-goes = este formato no es texto: diga con --out dónde va el archivo
commandline-is-written = se escribió { $path }

commandline-cant-read-it = { $file }: no se puede leer

commandline-no-outline-is-named = { $file }: ningún contorno se llama { $name }; los que hay son { $known }

commandline-write-a-side-as = escríbalo como 3=gable, 3=wall o 3=8:12,eave=10 ft,overhang=2 ft
commandline-no-such-side = no existe ese lado: los anillos de este contorno tienen { $counts } lados

commandline-no-measure-of-a-side = { $other } no es una medida de lado: { $form }

commandline-name-the-job-file = indique con --out el archivo de obra que se va a escribir
commandline-at-names-the-place = { $file }: --at indica el lugar

commandline-bytes-written = { $path }: { $bytes } bytes escritos

commandline-cant-read-a-place = no se puede leer { $text }: latitud de -85 a 85, una coma, longitud de -180 a 180 en grados

commandline-name-a-form = indique una forma: --triangle, --rectangle, --parallelogram, --trapezoid o --polygon
commandline-downslope-degrees = --downslope: dé grados desde el norte en el sentido del reloj, como 180
commandline-nothing-checks = Nada comprueba estas lecturas: con una diagonal más se podría.
commandline-closing-error = Error de cierre { $error } con { $spare } de sobra, repartido entre todas las lecturas por mínimos cuadrados.

commandline-if-one-was-misread = Si una se leyó mal, lo más probable es que sea { $reading }.

commandline-no-face-is-named = { $file }: ningún faldón se llama { $name }; los que hay son { $known }

commandline-number-needs-modules = --mode number necesita --modules o --kilowatts
commandline-no-face-is-as-steep = { $file }: ningún faldón tiene la pendiente que pide el kit, { $least }; los faldones son { $known }

commandline-no-roof-to-show = no hay techo que mostrar: ningún faldón de la obra tiene un contorno válido
commandline-picture-written = { $path }: { $wide } × { $high } píxeles, desde { $from } y { $above }° sobre la horizontal

commandline-no-day-was-asked-for = no se pidió un día: la luz no es la del sol
commandline-is-no-day = { $date } no es un día: escríbalo como 2026-06-21

commandline-place-is-not-known = no se sabe dónde está la casa: dé --latitude y --longitude en grados
commandline-is-no-hour = una hora va de 0 a 24, no { $hour }

commandline-sun-at = sol en { $azimuth }, { $elevation }° sobre la horizontal

commandline-the-sun-is-down = el sol está bajo el horizonte
commandline-is-no-size = { $text } no es un tamaño: escríbalo como 1600x1000, cada uno de 1 a { $most }

commandline-write-it-as-number = { $text }: escríbalo como NÚMERO={ $what }

commandline-no-number-of-packages = { $text }: { $count } no es un número de paquetes

commandline-no-choice = el kit no tiene la opción { $code }; tiene { $known }

commandline-no-part = el kit no tiene la pieza { $number }

commandline-does-not-come-back = { $number } no vuelve de una obra: cuéntelo en las existencias

commandline-is-no-percentage = { $text }: { $percent } no es un porcentaje

commandline-by-the-command-line = línea de comandos

commandline-examples-of-edits = Ejemplos de ediciones:
commandline-how-edits-name-things =
    Las cosas se nombran por número o nombre, las esquinas y los lados se cuentan desde 1, un número sin unidad va en metros. Una
    sesión dibujada en la ventana se puede escribir como un archivo así (Exportar, Pasos desde que se abrió como ediciones) y repetir sobre la obra tal como se abrió.

commandline-area-of-the-face = { $slope } ft² sobre la pendiente, { $plan } ft² en planta a { $pitch }

commandline-no-such-block = { $file }: no existe ese bloque; los que hay son { $known }

commandline-not-four-corners = { $file }: el faldón del bloque { $block } no tiene cuatro esquinas: dé --eave, --head, --rakes y --diagonals

commandline-write-a-line-as = --line { $line }: escríbalo como "1-3=25 ft" o "up-3=12 ft"

commandline-about-the-import = Sobre la importación

## Help of the command line

commandline-help-the-job-file-the-word = El archivo de la obra; la palabra `new` para una obra sin techo.
commandline-help-the-edits-one-or-a = Las ediciones: una, o una lista, en JSON; `-` las lee de la entrada del comando.
commandline-help-writes-the-job-after-them = Escribe la obra con ellas. Sin esto no se escribe nada: la respuesta dice qué cambiaría.
commandline-help-lets-save-name-the-job = Permite que --save nombre el mismo archivo de la obra; la versión anterior queda a su lado como `.previous`.
commandline-help-leaves-out-an-edit-that = Deja fuera una edición que no se puede hacer y sigue con la siguiente, en vez de no escribir nada. El estado de salida es 2 de todos modos.
commandline-help-writes-the-answer-there-instead = Escribe la respuesta ahí y no en la pantalla.
commandline-help-prints-the-json-schema-of = Imprime el esquema JSON de las ediciones, con unas palabras sobre cada una.
commandline-help-the-face-by-its-name = El faldón por su nombre; todos si no se nombra ninguno.
commandline-help-the-least-and-the-greatest = La exposición mínima y la máxima de la teja; sin esto, de siete octavos de la del faldón hasta la suya.
commandline-help-the-block-by-its-name = El bloque por su nombre; el primero si no se nombra ninguno.
commandline-help-along-the-eave-from-corner = A lo largo del alero, de esquina a esquina. Lo que no se da queda como en la obra: medido, o si no dibujado.
commandline-help-along-the-head-the-ridge = A lo largo del borde superior: la cumbrera o el borde de arriba.
commandline-help-up-the-left-and-the = A lo largo del borde inclinado izquierdo y del derecho, de abajo hacia arriba.
commandline-help-from-the-left-end-of = Del extremo izquierdo del alero al extremo derecho del borde superior, y del derecho al izquierdo.
commandline-help-how-far-eave-head-left = Cuánto se curvan en el centro, hacia el entablado, el alero, el borde superior y los bordes izquierdo y derecho; con signo menos, hacia afuera.
commandline-help-what-the-base-line-is = Con qué va paralela la línea base.
commandline-help-the-base-line-above-the = La línea base sobre el alero en su extremo más bajo; como en la obra si no se da.
commandline-help-modules-in-each-row-as = Módulos en cada fila; como en el bloque si no se da.
commandline-help-how-much-a-module-may = Cuánto más grande o más chico puede ser un módulo.
commandline-help-how-far-a-reveal-may = Cuánto puede fallar una separación al ponerla.
commandline-help-the-eave = El alero.
commandline-help-the-head-so-that-the = El borde superior, para que las hiladas de arriba salgan parejas.
commandline-help-halfway = A media distancia.
commandline-help-how-the-array-is-laid = Cómo se coloca el arreglo.
commandline-help-the-face-by-its-name-2 = El faldón por su nombre; repita la opción para varios; todos los que el kit permite si no se nombra ninguno.
commandline-help-with-mode-whole-blocks-at = Con --mode whole-blocks: como máximo este número de rectángulos en un faldón.
commandline-help-with-mode-worth-what-a = Con --mode worth: cuánto vale un módulo ya descontado su propio costo, en la moneda de la lista de precios.
commandline-help-with-mode-worth-a-module = Con --mode worth: un módulo cuenta por el área de su faldón, entero en el más grande.
commandline-help-with-mode-number-just-so = Con --mode number: exactamente este número de módulos, contando los de bloques fijados.
commandline-help-with-mode-number-the-fewest = Con --mode number: el menor número de módulos que juntos den esta potencia nominal.
commandline-help-with-mode-number-what-the = Con --mode number: cómo debe ser el arreglo.
commandline-help-lets-modules-lie-one-way = Pone los módulos en un solo sentido, donde el kit permite los dos.
commandline-help-goes-on-proving-for-so = Sigue demostrando como máximo estos segundos y dice qué diferencia queda; otro tanto para lo que lo limita.
commandline-help-leaves-out-what-holds-it = Omite lo que lo limita.
commandline-help-writes-the-job-with-the = Escribe la obra con el arreglo puesto.
commandline-help-rows-and-columns-in-line = Filas y columnas alineadas; la cuadrícula puede quedar en cualquier parte.
commandline-help-the-usual-way-all-that = La manera usual: todo lo que el kit permite, en un bloque o varios, filas que se corren y se enganchan lo que pide el libro de reglas.
commandline-help-every-other-row-half-a = Una fila sí y otra no, corrida medio módulo.
commandline-help-rows-that-slide-in-one = Filas que se corren en un bloque, con el riel base donde el kit lo permite sobre una línea de hilada.
commandline-help-rectangles-alone = Solo rectángulos.
commandline-help-the-modules-that-are-worth = Los módulos que más valen, menos lo que cuestan los tapajuntas a su alrededor.
commandline-help-a-number-of-modules-or = Un número de módulos o un tamaño en kilovatios.
commandline-help-the-long-side-along-the = El lado largo paralelo al alero.
commandline-help-the-long-side-up-the = El lado largo pendiente arriba.
commandline-help-the-least-length-around-it = El menor largo de contorno.
commandline-help-the-least-cost-of-flashing = El menor costo de tapajuntas alrededor.
commandline-help-the-job-file = El archivo de la obra.
commandline-help-the-key-of-the-finding = La clave del hallazgo, como la da `check`: se hace su mejor corrección.
commandline-help-does-fix-after-fix-stops = Hace una corrección tras otra, primero las de lo que detiene, hasta que no se ofrece ninguna.
commandline-help-writes-the-job-after-it = Escribe la obra después. Sin esto no se escribe nada: la respuesta dice qué cambiaría.
commandline-help-a-geojson-rfc-7946-or = Un archivo GeoJSON (RFC 7946) o CityJSON 1.1 o 2.0 (.city.json, .city.jsonl), o una carpeta de ellos.
commandline-help-lists-the-buildings-that-are = Enumera los edificios que hay.
commandline-help-which-building-by-its-id = Qué edificio, por su identificador en la lista; el único si no se nombra ninguno.
commandline-help-where-the-job-is-written = Dónde se escribe la obra.
commandline-help-as-what = En qué formato.
commandline-help-where-it-is-written = Dónde se escribe.
commandline-help-for-geojson-latitude-and-longitude = Para GeoJSON: latitud y longitud del origen de la planta, si la obra no las tiene: 39.1,-84.5
commandline-help-faces-penetrations-and-modules-in = Faldones, penetraciones y módulos en longitud y latitud (RFC 7946).
commandline-help-the-plan-as-a-drawing = La planta como dibujo (SVG 1.1).
commandline-help-the-plan-and-each-face = La planta y cada faldón con las líneas que se trazan, para imprimir (PDF).
commandline-help-the-house-with-modules-and = La casa con módulos y penetraciones como glTF 2.0 en un solo archivo binario.
commandline-help-wire-diagram = Cada bloque de frente con su cableado: PDF, o un dibujo (SVG) si el archivo termina en .svg.
commandline-help-labels = Las etiquetas que pide el código, a tamaño real, con dónde va cada una. PDF.
commandline-help-one-line = El diagrama unifilar: PDF, o un dibujo (SVG) si el archivo termina en .svg.
commandline-help-handover = La hoja de entrega al electricista: lo que debe marcar el medidor, y campos para llenar. PDF.
commandline-help-the-language-of-reports-orders = El idioma de informes, pedidos y hojas. Lo que lee un programa (claves, códigos, nombres de columnas) es igual en todos.
commandline-help-says-what-the-rule-book = Dice los hallazgos según el libro de reglas.
commandline-help-says-of-each-finding-what = Dice de cada hallazgo qué lo resolvería: cada corrección se probó y deja menos hallazgos de ese peso y ninguno nuevo.
commandline-help-clears-a-finding-by-the = Resuelve un hallazgo con la mejor corrección que se encontró para él, o todos los que tienen una.
commandline-help-lists-what-to-order-with = Enumera lo que se pide, y en JSON dice de dónde sale cada cantidad.
commandline-help-tells-what-one-order-has = Dice qué tiene un pedido de más o de menos que otro, y cuánto cuesta.
commandline-help-prices-one-order-at-several = Da el precio de un pedido con varios proveedores.
commandline-help-prints-the-pallet-list-to = Imprime la lista de tarimas para contar en ella, o toma los conteos y dice qué falta y qué puede empezar.
commandline-help-reports-roof-blocks-findings-and = Da un informe del techo, los bloques, los hallazgos y las cantidades.
commandline-help-fills-faces-with-the-array = Llena faldones con el arreglo que ninguna disposición con las mismas reglas puede superar, con la demostración y lo que lo limita.
commandline-help-does-edits-of-a-file = Hace en una obra las ediciones de un archivo: todo lo que se puede hacer en la ventana; de cada una dice lo que cambió.
commandline-help-tells-the-courses-of-faces = Enumera las hiladas de los faldones: dónde caen los rieles base, qué sobra abajo y arriba, y exposiciones o lugares que dejan hiladas enteras.
commandline-help-from-field-measurements-how-far = De medidas de campo: cuánto está fuera de escuadra un entablado, si una fila cierra, la separación que se debe poner, dónde se traza la línea.
commandline-help-draws-the-house-with-its = Dibuja la casa con su arreglo como imagen PNG, en el sol de un día o con luz pareja.
commandline-help-makes-a-job-from-a = Hace una obra a partir de una huella: una parte de la casa que se puede seguir editando, con pendiente, hastial o muro en cada lado.
commandline-help-a-geojson-file-rfc-7946 = Un archivo GeoJSON (RFC 7946) con el contorno de los muros.
commandline-help-what-stands-on-one-side = Lo que hay en un lado, si no es lo mismo que en los demás: `3=gable`, `3=wall`, `3=8:12`; con altura de alero y voladizo propios, `3=8:12,eave=10 ft,overhang=2 ft`. Los lados se cuentan desde 1 en la primera esquina del contorno, `2.1` es el primer lado del primer patio. Se puede dar muchas veces.
commandline-help-which-outline-of-the-file = Qué contorno del archivo, por su nombre; el primero si no se nombra ninguno.
commandline-help-reports-the-roof-faces-edges = Da un informe del techo: faldones, bordes por tipo, cuadros, huella, alturas.
commandline-help-wires = Dice los circuitos: orden de conexión, extensiones, bajadas, voltios y amperios; forma circuitos automáticamente
commandline-help-wires-automatically = Forma de nuevo todos los circuitos: los menos que permiten inversor y dispositivos, luego las menos extensiones, luego el menor cable, y dice qué está probado
commandline-help-lists-the-buildings-of-a = Enumera los edificios de un archivo o carpeta GeoJSON o CityJSON, o hace una obra de uno de ellos.
commandline-help-writes-the-plan-as-geojson = Escribe la planta como GeoJSON para un mapa, o la casa como glTF para un programa de 3D.
commandline-help-makes-a-job-or-adds = Hace una obra, o agrega a una, con un faldón a partir de los largos de los lados, las diagonales y la pendiente, medidos con cinta en el entablado.
commandline-help-prints-the-crews-checklist-work = Imprime la lista de verificación de la cuadrilla: seguridad en el trabajo, y lo que pide el techo como está dibujado.
commandline-help-pdf-is-to-print-and = pdf es para imprimir, y se escribe en el archivo que nombra --out.
commandline-help-lists-the-fields-in-which = Enumera los campos en que difieren dos libros de reglas, con lo que dice cada uno.
commandline-help-a-rule-book-file = Un archivo de libro de reglas.
commandline-help-another-one = Otro.
commandline-help-prints-the-json-schema-of-2 = Imprime el esquema JSON de un formato de archivo.
commandline-help-which-one-job-kit-rule = Cuál: job, kit, rule-book, price-list, edits, applied, findings, plan, takeoff, roof.
commandline-help-writes-there-instead-of-to = Escribe ahí y no en la pantalla.
commandline-help-xlsx-and-pdf-are-written = xlsx y pdf se escriben en el archivo que nombra --out.
commandline-help-how-text-and-pdf-are = Cómo se ordenan el texto y el pdf.
commandline-help-another-price-list-json-csv = Otra lista de precios: JSON, CSV o un libro de cálculo.
commandline-help-a-warehouse-list-csv-or = Una lista del almacén, CSV o JSON: lo que hay se usa primero.
commandline-help-switches-a-line-off-numberwhy = Omite un renglón: NÚMERO=POR QUÉ.
commandline-help-orders-so-many-packages-whatever = Pide este número de paquetes, sea cual sea la cuenta: NÚMERO=PAQUETES.
commandline-help-takes-one-of-the-kits = Agrega al pedido una de las opciones del kit: CÓDIGO, como spare-module, primer, ridge-vent, hoist, rope, permit.
commandline-help-the-office-has-its-own = La oficina tiene el suyo de este equipo, y vuelve de la obra: NÚMERO.
commandline-help-the-offices-own-waste-in = El desperdicio propio de la oficina, en porcentaje, y según quién: NÚMERO=PORCENTAJE:POR QUÉ.
commandline-help-writes-the-job-with-these = Escribe la obra con estos precios, estas existencias y estas decisiones.
commandline-help-a-job-file = Un archivo de obra.
commandline-help-another-one-a-later-version = Otro: una versión posterior de la misma obra, por ejemplo.
commandline-help-price-lists-json-csv-or = Listas de precios: JSON, CSV o libros de cálculo.
commandline-help-text-is-the-claim-csv = text es el reclamo, csv la lista de tarimas para llenar; pdf es la lista de tarimas para marcar y claim-pdf el reclamo, ambos para imprimir y escritos en el archivo que nombra --out.
commandline-help-a-pallet-list-with-the = Una lista de tarimas con la columna `counted` llena, y `damaged` y `note` donde hay algo que decir.
commandline-help-writes-the-job-with-these-2 = Escribe la obra con estos conteos.
commandline-help-what-a-part-belongs-to = A qué grupo pertenece una pieza.
commandline-help-the-stage-of-work-that = La etapa de trabajo para la que se necesita.
commandline-help-where-the-png-file-is = Dónde se escribe el archivo PNG.
commandline-help-the-way-from-the-house = El rumbo de la casa hacia el ojo: grados desde el norte en el sentido del reloj.
commandline-help-how-far-above-level-the = Cuánto está el ojo sobre la horizontal, en grados.
commandline-help-wide-and-high-in-pixels = Ancho y alto, en píxeles.
commandline-help-the-house-as-it-was = La casa como estaba antes, sin el arreglo.
commandline-help-a-day-with-hour-and = Un día, con --hour y un lugar: el sol como está a esa hora. Sin esto la luz viene por encima del hombro izquierdo.
commandline-help-the-hour-by-the-clock = La hora del reloj, 14.5 para las dos y media.
commandline-help-degrees-north-of-the-equator = Grados al norte del ecuador, si la obra no lo dice o es otro lugar.
commandline-help-degrees-east-of-greenwich = Grados al este de Greenwich.
commandline-help-how-many-hours-the-clock = Cuántas horas va adelantado el reloj respecto a UTC; por la longitud si no se dice.
commandline-help-pitch-of-all-sloped-sides = La pendiente de todos los lados inclinados.
commandline-help-height-of-the-roof-over = Altura del techo sobre los muros.
commandline-help-how-far-the-roof-reaches = Cuánto sobresale el techo de los muros, en planta.
commandline-help-gables-at-the-short-ends = Hastiales en los extremos cortos, en vez de cuatro aguas.
commandline-help-a-triangle-by-its-eave = Un triángulo por su alero y los lados a su derecha e izquierda.
commandline-help-a-rectangle-by-its-eave = Un rectángulo por su alero y cuánto sube por la pendiente.
commandline-help-a-parallelogram-by-its-eave = Un paralelogramo por su alero, su lado derecho y la diagonal desde el extremo izquierdo del alero.
commandline-help-a-trapezoid-by-its-sides = Un trapecio por sus lados, en sentido contrario al reloj desde el alero.
commandline-help-any-outline-by-its-sides = Cualquier contorno por sus lados, en sentido contrario al reloj desde el alero; con --line para sus diagonales.
commandline-help-a-diagonal-or-another-check = Una diagonal u otra comprobación: "1-3=25 ft" entre dos esquinas (la 1 es el extremo izquierdo del alero, y así en sentido contrario al reloj), "up-3=12 ft" del alero, en recto pendiente arriba, hasta una esquina.
commandline-help-the-most-by-which-a = Lo más que se puede corregir una lectura cuando las lecturas no cierran del todo.
commandline-help-612-266-50-or-a = 6:12, 26.6°, 50%, o una lectura de nivel: "12 in over 24 in".
commandline-help-the-way-that-water-runs = El rumbo en que corre el agua, grados desde el norte en el sentido del reloj.
commandline-help-height-of-the-eave = Altura del alero.
commandline-help-what-the-face-is-called = Cómo se llama el faldón.
commandline-help-a-job-that-gets-the = Una obra que recibe el faldón, puesto al lado de lo que tiene; una obra nueva si no se nombra ninguna.

## Said in several places

common-modules =
    { $count ->
        [one] { $count } módulo
       *[other] { $count } módulos
    }

common-modules-2 = módulos
common-one-grid = una sola cuadrícula
common-half-lapped = a media pieza
common-anywhere = en cualquier lugar
common-or = {" "}o{" "}
common-module = módulo
common-a-face = un faldón
common-to-the-right = a la derecha
common-to-the-left = a la izquierda
common-and = {" "}y{" "}
common-block = Bloque
common-course = hilada entera
common-courses = hiladas enteras
common-chimney = Chimenea
common-other = Otra
common-block-2 = bloque
common-penetration = penetración
common-face = Faldón
common-overhang = Voladizo
common-rectangle = Rectángulo
common-save = Guardar
common-compare = Comparar
common-order = Pedido
common-plan = Planta
common-kit = Kit
common-rule-book = Libro de reglas
common-price-list = Lista de precios
common-pallet-list = Lista de tarimas
common-job = obra
common-eave = alero
common-find = Buscar
common-on-the-slope = En la pendiente
common-in-plan = En planta
common-footprint-each-place-once = Huella, cada lugar una vez
common-ridge-height = Altura de la cumbrera
common-eave-height = Altura del alero
common-close = Cerrar
common-exposure = exposición
common-face-2 = faldón
common-gable = hastial
common-hip = limatesa
common-how-far-the-roof-reaches = Cuánto sobresale el techo del muro, en planta.
common-rake = borde inclinado
common-ridge = cumbrera
common-valley = limahoya
common-note = Nota
common-total = Total, { $currency }
common-not-known = no se sabe
common-save-as = Guardar como…
common-address = Dirección
common-load = Cargar…
common-pitch = Pendiente
common-exposure-2 = Exposición
common-reveal = Separación
common-from-the-left = Desde la izquierda
common-no-price = sin precio
common-waived = Dispensado
common-delivery = Entrega
common-number = Número
common-what = Qué
common-need = Se necesita
common-order-2 = Pedir
common-package = Paquete
common-price = Precio
common-cost = Costo
common-by-group = Por grupo
common-by-stage-of-work = Por etapa de trabajo
common-copy = Copiar
common-what-it-is = Qué es
common-group = Grupo
common-profit = Ganancia
common-none = ninguna
common-nothing-is-on-order = No hay nada pedido.
common-date = Fecha
common-counted-by = Contó
common-ordered = Pedido
common-came = Llegó
common-damaged = Dañado
common-what-can-start = Lo que puede empezar
common-can-start = puede empezar
common-the-two-orders-are-alike = Los dos pedidos son iguales, renglón por renglón.
common-main = Principal
common-ell = Ala
common-fire-access = Acceso de bomberos
common-wind-and-snow = Viento y nieve
common-drip-edge = Goterón
common-none-2 = ninguno
common-fire-class = Clase de fuego
common-source = Fuente
common-yes = sí
common-nothing = nada
common-north = norte
common-south = sur
common-east = este
common-west = oeste
common-the-outline = el contorno
common-hole = el hueco { $ring }
common-side = lado
common-the-face = el faldón
common-inside-corner = esquina interior
common-face-3 = el faldón { $face }
common-block-3 = el bloque { $block }
common-the-job = la obra
common-roofing = Recubrimiento
common-labour = Mano de obra
common-chimney-2 = chimenea
common-ice-barrier = Barrera contra hielo
common-row = fila
common-the-job-has-no-face = la obra no tiene el faldón { $value }
common-face-has-no-sound-outline = el faldón { $value } todavía no tiene un contorno válido: corríjalo primero (vea los hallazgos)
common-from-the = { $length } desde la línea de { $kind }
common-a-penetration = una penetración
common-short = Falta
common-nothing-to-order-no-module = No hay nada que pedir: no hay módulos colocados, o el kit no tiene piezas.
common-switched-off-not-ordered = Omitidos, no se piden
common-to-know-about-the-count = Conviene saber sobre el conteo
common-findings = Hallazgos
common-waived-findings = Hallazgos dispensados
common-cut-list = Lista de cortes
common-crews = Cuadrillas
common-prices = Precios
common-face-4 = Faldón { $name }

## Courses of shingles

coursing-courses-and-base-rail = Hiladas y riel base
coursing-face-on-they-are-drawn = Con un solo faldón a la vista se dibujan siempre.
coursing-no-block-lies-on-this = Todavía no hay bloque en este faldón. Coloque uno para ver dónde cae su riel base entre las hiladas.
coursing-this-block-has-no-modules = Este bloque no tiene módulos, o el contorno de su faldón aún no es válido.
coursing-rail-on-a-course-line = Riel sobre una línea de hilada
coursing-it-is-on-one-now = Ya está sobre una. Otras cercanas:
coursing-move-it = Moverlo
coursing-use-it = Usarla
coursing-an-exposure-that-brings-a = Una exposición que lleva una línea de hilada al riel y al borde superior
coursing-exposure-from = Exposición desde
coursing-exposure-to = Exposición hasta
coursing-what-the-shingle-may-be = A lo que se puede colocar la teja: lo dice su paquete. De 5" a 5 5/8" es lo usual (práctica común, sin fuente).
coursing-no-exposure-in-this-range = Ninguna exposición de este rango lleva una línea a ambos a 1/16": mueva el bloque o permita otro rango.
coursing-change-the-courses-of = cambiar las hiladas de { $face }
coursing-set-the-rail-of-on = poner el riel de { $block } en la línea de hilada { $course }
coursing-on-course-line = sobre la línea de hilada { $line }
coursing-above-course-line = { $small } sobre la línea de hilada { $line }
coursing-below-the-first-course-line = debajo de la primera línea de hilada
coursing-base-rail-line-up-from = Línea del riel base a { $up } del alero, { $on_line }.
coursing-base-rail-line-up-from-the = Línea del riel base a { $up } del alero, { $on_line }: debajo se ven { $small } de una hilada.
coursing-the-head-flashing-ends-on = El tapajuntas superior termina en una línea de hilada: la primera hilada arriba es entera.
coursing-a-cut-course-shows-above = Una hilada cortada muestra { $small } sobre el tapajuntas superior, hasta la próxima línea de hilada.
coursing-whole-above-the-array-the = { $whole_to_top } { $courses } sobre el arreglo; la última es entera.
coursing-whole-above-the-array-is = { $whole_to_top } { $courses } sobre el arreglo; quedan { $small } sobre ellas bajo el borde superior.
coursing-up = arriba
coursing-down = abajo
coursing-the-rules-are-against-it = ; las reglas no lo permiten
coursing-course-line-of-a-cut = Línea de hilada { $course }, { $small } { $way }: { $small2 } de hilada cortada en el borde superior, { $whole_to_top } { $courses } arriba{ $clear }
coursing-whole-course = hilada entera
coursing-whole-courses = hiladas enteras
coursing-no-course-line-leaves-above = Ninguna línea deja { $least } { $courses } sobre este bloque, como pide el libro de reglas.
coursing-as-even-as-a-tape = tan parejo como se lee en la cinta
coursing-off-at-most = { $small } de diferencia como máximo
coursing-below-the-rail-cut-at = { $small }: { $below } bajo el riel, { $small2 } cortados y { $above } enteras arriba, { $off }
coursing-head-flashing-ends-on-a = el tapajuntas superior termina en una línea de hilada
coursing-base-rail = riel base { $on }
coursing-head-flashing-ends-here-of = aquí termina el tapajuntas superior: { $left } de hilada cortada encima
coursing-whole-and = { $whole } { $courses } y { $left }
coursing-whole = { $whole } { $courses }
coursing-heights-from-to-m-give = alturas de { $from } a { $to } m: dé alturas finitas, la de arriba mayor que la de abajo
coursing-an-exposure-of-m-give = una exposición de { $value } m: dé una desde 0.001 m, y no menor que una cienmilésima del faldón
coursing-a-miss-of-up-to = un error de hasta { $value } m: dé uno de 0 a menos de la mitad de la exposición mínima
coursing-exposures-from-to-m-give = exposiciones de { $from } a { $to } m: dé primero la menor, mayor que 0.001 m
coursing-the-last-course-is-whole = la última hilada es entera
coursing-are-left-below-the-top = quedan { $small } bajo el borde superior

coursing-up-the-slope-the-first =
    {""}
    { $face_heading }: { $long } pendiente arriba; la primera línea de hilada a { $small }, { $lines } líneas cada { $small2 }; { $left_at_top }

coursing-the-head-flashing-shows-and = {"    "}el tapajuntas superior muestra { $small } y sigue { $small2 } bajo las tejas
coursing-on-course-line-2 = en la línea de hilada { $course }
coursing-above-course-line-2 = { $small } sobre la línea de hilada { $course }
coursing-and-over = {" "}y sobran { $small }
coursing-block-base-rail-line-up = {"  "}bloque { $block }: línea del riel base a { $from_eave } del alero, { $rail }; { $cut }, luego { $whole } hasta arriba{ $left_at_top }
coursing-no-exposure-from-to-brings = {"    "}ninguna exposición de { $small } a { $small2 } lleva una línea de hilada al riel y al borde superior
coursing-an-exposure-of-brings-a = {"    "}una exposición de { $small } lleva una línea de hilada al riel y al borde superior, a { $small2 }: { $whole_words } de la primera línea al riel; { $cut_words }, luego { $whole_words2 } arriba
coursing-base-rail-at-course-line = {"    "}riel base en la línea de hilada { $course }, a { $from_eave } del alero: { $cut_words }, luego { $whole_words } hasta arriba{ $clear }

coursing-whole-courses-2 =
    { $count ->
        [one] { $count } hilada entera
       *[other] { $count } hiladas enteras
    }

coursing-no-cut-course-the-head = sin hilada cortada, el tapajuntas superior termina en una línea de hilada
coursing-of-a-cut-course-above = { $from_metres } de hilada cortada sobre el tapajuntas superior

## Files, in the window

files-open-a-job = Abrir una obra
files-save-the-job-as = Guardar la obra como
files-write-the-order-to = Escribir el pedido en
files-write-the-sheet-to = Escribir la hoja en
files-write-the-plan-to = Escribir la planta en
files-import-a-building-from-a = Importar un edificio de un archivo o carpeta
files-import-a-building-from-a-folder = Importar un edificio de una carpeta
files-load-a-kit = Cargar un kit
files-load-a-rule-book = Cargar un libro de reglas
files-save-the-rule-book-as = Guardar el libro de reglas como
files-compare-with-a-rule-book = Comparar con un libro de reglas
files-load-a-price-list = Cargar una lista de precios
files-load-a-warehouse-list = Cargar una lista de almacén
files-load-a-pallet-list-with = Cargar una lista de tarimas con conteos
files-compare-with-the-order-of = Comparar con el pedido de una obra
files-add-the-price-list-of = Agregar la lista de precios de un proveedor
files-lay-a-picture-under-the = Poner una imagen bajo la planta
files-save-the-picture-as = Guardar la imagen como
files-write-the-steps-to = Escribir los pasos en
files-open = Abrir
files-write = Escribir
files-list = Enumerar
files-load = Cargar
files-chalkcourse-job = Obra de Chalkcourse
files-sheet-to-print = Hoja para imprimir
files-buildings = Edificios
files-warehouse-list = Lista de almacén
files-picture-png-or-jpeg = Imagen (PNG o JPEG)
files-png-picture = Imagen PNG
files-edits = Ediciones
files-not-saved = {"  "}(sin guardar)
files-save-the-changes-to = ¿Guardar los cambios de “{ $name }”?

files-the-job-that-is-open =
    { $error }

    La obra abierta no se tocó.

files-saved-to = Guardado en { $path }
files-order-written-to = Escrito en { $path }
files-done-undo-takes-it-back = { $trim_end_matches }: hecho. Deshacer lo revierte.
files-no-recovery-copies-are-kept = No se guardan copias de recuperación: { $error }
files-frames-are-not-timed-cant = No se miden los cuadros: no se puede escribir { $path } ({ $error })
files-kept = guardada
files-kept-on = guardada el { $moment }
files-a-job-whose-copy-cant = Una obra cuya copia no se puede leer
files-from = { $name }, { $written }; de { $from }
files-never-saved-to-a-file = { $name }, { $written }; nunca guardada en un archivo

## Folders and files, chosen in the window

browse-places = Lugares
browse-up = Subir
browse-up-help = A la carpeta que contiene a esta (Alt+Arriba)
browse-home = Inicio
browse-job-folder = Carpeta de una obra abierta hace poco
browse-filter = Solo nombres con
browse-all-kinds = Todo tipo de archivos
browse-all-kinds-help = También archivos que no terminan como los de este tipo
browse-new-folder = Carpeta nueva
browse-name-of-folder = Nombre de la carpeta nueva
browse-make = Crearla
browse-name = Nombre
browse-size = Tamaño
browse-changed = Cambiado
browse-list-of = Carpetas y archivos en { $folder }
browse-folder-named = Carpeta { $name }
browse-empty = Aquí no hay nada de este tipo.
browse-no-match = Ningún nombre de aquí contiene “{ $typed }”.
browse-cant-read = No se puede leer esta carpeta: { $why }
browse-cant-make = No se pudo crear la carpeta: { $why }
browse-no-folder = No existe la carpeta { $folder }.
browse-no-file = No existe el archivo { $file }.
browse-bad-name = El nombre de una carpeta no puede estar vacío ni tener una barra.
browse-use-folder = Usar esta carpeta
browse-keys = Arriba y Abajo eligen, Entrar abre, Retroceso sube. En la ruta, Tab completa el nombre.

## Filling faces

fill-blocks-m-apart-give-0 = bloques a { $apart } m: dé 0 o más
fill-stopped-before-the-end = parado antes del final
fill-ran-to-its-end = llegó a su fin
fill-every-parting-by-straight-cuts = cada división por cortes rectos
fill-partings-by-straight-cuts-the = divisiones por cortes rectos, la cota con menos bloques
fill-sizes-of-blocks-each-at = { $sizes } tamaños de bloques, cada uno en cada posición, bloques a { $apart } m; { $most }; { $end }
fill-smallest-cut-over-values-and = corte mínimo sobre valores y lados expuestos, esquinas sin costo: exacto
fill-sweep-over-every-choice-of = recorrido de cada elección de estas celdas, esquinas contadas: exacto
fill-smallest-cut-without-corners-as = corte mínimo sin esquinas como cota, mejorado celda por celda con ellas: la diferencia queda abierta
fill-tiles-were-asked-for-and = se pidieron { $number } piezas y hay { $cells } lugares: pida menos, o acomode otra vez con otras reglas
fill-no-rows-hold-tiles = no hay { $rows } filas en que quepan { $number } piezas
fill-rows-next-to-each-other = { $rows } filas una junto a otra, en menos no caben { $number }; entre ellas, { $method }
fill-foot = borde inferior
fill-head = borde superior
fill-outer-corner = esquina exterior
fill-inner-corner = esquina interior
fill-the-cost-of-a-is = el costo de { $name } es { $cost }: dé 0 o más
fill-a-grid-of-x-places = una cuadrícula de { $columns } x { $rows } lugares es demasiado grande
fill-the-value-of-cell-is = el valor { $cell } de la celda { $i } no es un número con que calcular
fill-two-cells-in-column-row = dos celdas en la columna { $column }, fila { $row }
fill-sweep-over-every-choice-of-this = recorrido de cada elección de tantas de estas celdas: exacto
fill-cuts-with-a-reward-for = cortes con un premio por pieza como cota, llevados al número celda por celda: la diferencia queda abierta
fill-each-row-slid-by-itself = cada fila deslizada por sí sola a cada posición
fill-one-grid-at-every-offset = una cuadrícula con cada desfase a lo largo de la fila
fill-half-lapped-rows-at-every = filas a media pieza con cada desfase a lo largo de la fila
fill-base-anywhere = base en cualquier lugar
fill-base-by-courses-of-m = base por hiladas de { $exposure } m desde { $first } m, juego de { $play } a { $play2 } m
fill-every-upper-tile-carried = , cada pieza superior apoyada
fill-stopped-before-the-end-2 = ; parado antes del final
fill-tiles-x-m-as-laid = piezas de { $size } x { $size2 } m como se colocan, filas a nivel y a { $pitch } m, { $joints }, { $base }{ $hooked }; { $cells } celdas de desfases examinadas, { $ruled_out } descartadas por una cota{ $end }
fill-a-tile-of-x-m = una pieza de { $width } x { $height } m con juntas de { $gap_u } y { $gap_v } m no se puede colocar: los tamaños deben ser mayores que 0, las juntas no menores
fill-a-tolerance-of-m-will = una tolerancia de { $value } m no sirve: dé una mayor que 0 y menor que un centésimo de la pieza, por ejemplo 1e-9
fill-the-lowest-row-carries-something = la fila más baja lleva algo que llega { $value } m por debajo: dé 0 o más
fill-corner-of-is-no-finite = la esquina { $corner } { DE($shape) } no es un lugar finito: dibújela otra vez
fill-courses-of-m-with-a = hiladas de { $exposure } m con un juego de { $from } a { $to } m: la exposición debe ser mayor que 0.001 m y el juego ir hacia arriba, dentro de 100 hiladas
fill-this-face-could-hold-tiles = en este faldón cabrían { $value } piezas, más de 1000000: revise las unidades de la pieza y del faldón
fill-blocked-shape = la forma bloqueada { $id }
fill-and-in-their-columns = {" "}y en sus columnas
fill-and-free-to-slide = {" "}y libres de deslizarse
fill-too-many-ends-for-the = ; demasiados extremos para el mejor de cada uno, así que un movimiento menor puede ganar
fill-every-move-of-up-to = cada movimiento de hasta { $farthest } m a lo largo de { $axis }, filas a { $pitch } m conservadas en sus líneas{ $rows }{ $is_some }{ $exact }
fill-corner-at-the-foot = esquina de abajo
fill-corner-at-the-head = esquina de arriba
fill-a-tile-is-worth-give = una pieza vale { $value }: dé un número
fill-moved-would-win = { $sentence }, al moverse { $ways }, ganaría { $modules }.
fill-costs = cuesta
fill-seems-to-cost = parece costar
fill-by = { $what } ({ $small })
fill-one-more-module-is-stopped = otro módulo cabría si no fuera por { $join }.
fill-aligned = alineadas
fill-half-lapped-rows-in-one = filas a media pieza en un bloque
fill-rows-in-one-block = filas en un bloque
fill-block = bloque entero
fill-blocks = bloques enteros
fill-at-most-whole = como máximo { $most } { $most2 }, { $base_words }
fill-base-rail-anywhere = riel base en cualquier lugar
fill-base-rail-on-a-course = riel base en una línea de hilada
fill-base-rail-above-a-course = riel base { $small } sobre una línea de hilada
fill-base-rail-to-above-a = riel base de { $small } a { $small2 } sobre una línea de hilada
fill-proved = demostrado
fill-not-proved = sin demostrar
fill-of-at-most = { $modules } de { $bound } como máximo
fill-none-can-hold-more-than = { $modules }, ninguna puede tener más de { $bound }
fill-reveal = , con separación de { $small }
fill-whatever-the-blocks-rows-and = , sean cuales sean los bloques, las filas y los pasos{ $base }{ $apart }
fill-whatever-is-laid-here-two = ; se coloque lo que se coloque aquí, no puede haber dos pasos en dos planos: contado sin ellos
fill-blocks-apart-as-the-kit = , bloques a { $apart } como pide el kit
fill-and-no-layout-of-any = , y ninguna disposición de ningún tipo vale más de { $money }
fill-worth-of-at-most = , con valor de { $money } de { $money2 } como máximo{ $all }
fill-flashing-around-them-of-at = , con tapajuntas alrededor por { $money } (no puede costar menos de { $money2 })
fill-around-them-of-at-least = , con { $length } de contorno (no puede ser menos de { $length2 })
fill-face-is-the-kit-asks = el faldón { $face } tiene { $pitch }; el kit pide { $least } o más, así que ningún módulo puede ir en él
fill-the-kit-does-not-allow = el kit “{ $kit }” no permite filas con juntas { $joints }: elija otra manera de colocar
fill-the-kit-does-not-let = el kit “{ $kit }” no permite módulos con el { $way }: elija el otro sentido, o déjeselo al kit
fill-the-price-list-has-no = la lista de precios no tiene precio de { $value }: sin él no se puede ponderar lo que cuesta el tapajuntas
fill-modules-were-asked-for-were = { $asked ->
        [one] se pidió { $asked } módulo
       *[other] se pidieron { $asked } módulos
    }; se colocaron { $found }, y ninguna disposición de estos faldones tiene más de { $most }
fill-modules-were-asked-for-were-laid = { $asked ->
        [one] se pidió { $asked } módulo
       *[other] se pidieron { $asked } módulos
    }; se colocaron { $found }. Ninguna disposición de estos faldones tiene más de { $most }: no se sabe si alguna tiene { $asked }
fill-modules-were-asked-for-and = { $asked ->
        [one] se pidió { $asked } módulo
       *[other] se pidieron { $asked } módulos
    }, y los bloques fijados ya tienen { $locked }: suelte algunos o pida más
fill-stopped-before-a-layout-of = se paró antes de encontrar una disposición de { $value } módulos: dele más tiempo
fill-an-array-of-modules-was = se pidió un arreglo de { $number } módulos: dé un tamaño de 1 a { $most } módulos
fill-on-all-faces-taken-from = { $number }{ $stays } en todos los faldones, tomados de la disposición más llena encontrada
fill-one-grid = una sola cuadrícula, { $base_words }
fill-flashing-by-the-metre-and = ; tapajuntas por metro y por esquina, antes de paquetes enteros
fill-one-grid-on-each-face = una cuadrícula en cada faldón con cada desfase, cada módulo superior apoyado en el de abajo, desde una línea base; cada reparto entre los faldones; en este faldón { $sets } conjuntos distintos de lugares, { $ruled_out } rangos de desfases descartados por una cota{ $way }{ $finished }
fill-most-compact = más compactos
fill-cheapest = más baratos
fill-the-on-all-faces = los { $number } { $how }{ $stays } en todos los faldones, { $way }
fill-beside-locked = {" "}además de { $locked } fijados
fill-searched = {"  "}se buscó: { $searched }

fill-rows =
    { $count ->
        [one] { $count } fila
       *[other] { $count } filas
    }

fill-block-base-rail-up-from = {"  "}bloque { $block }: { $rows }, riel base a { $from_metres } del origen del faldón, extremo izquierdo a { $from_metres2 } a lo largo
fill-row-from = {"    "}fila { $row }: { $modules }, desde { $shown }

fill-nothing-but-the-size-of =
    {"  "}nada más que el tamaño del faldón lo limita
    {""}

fill-place = lugar
fill-places = lugares
fill-at = {"  "}En { $places } { $places2 }: { $words }

fill-findings =
    { $count ->
        [one] { $count } hallazgo
       *[other] { $count } hallazgos
    }

fill-kw =
    {""}
    { $modules }, { $kilowatts } kW; { $findings }

    { $caution }

fill-one-block = un bloque
fill-several-blocks = varios bloques
fill-other-faces-as-they-are = ; los demás faldones como están
fill-rows-that-slide-in-one = filas que se deslizan en un bloque, varios bloques cuyas filas se enganchan lo que pide el libro de reglas, hasta tres rectángulos; los pasos según la verificación, junto a cada paso que puede quedar libre; lo más lleno es { $laid }; la cota vale para toda disposición que la verificación acepta: conjuntos de lugares de los que una disposición toma uno como máximo{ $others }
fill-one-block-so-far = un bloque de filas que se deslizan, por ahora: falta probar varios bloques; la cota es por líneas rectas a través del faldón
fill-a-module-is-worth-give = un módulo vale { $module }: dé 0 o más
fill-one-grid-by-worth-a = una cuadrícula por valor, un módulo { $value }, { $base_words }
fill-one-grid-at-every-offset-every = una cuadrícula con cada desfase, cada módulo superior apoyado en el de abajo, desde una línea base; { $sets } conjuntos distintos de lugares, la mejor elección de cada uno; { $ruled_out } rangos de desfases descartados por una cota; tapajuntas por metro y por esquina, antes de paquetes enteros{ $finished }

## The reveal and what closes a run

fitup-fit-up-of-a-deck = Replanteo de un entablado
fitup-type-what-the-tape-reads = Escriba lo que lee la cinta sobre el entablado; hasta entonces vale lo dibujado. Se guarda con la obra. Son cifras de planeación: trace desde una línea de control recta y compruebe en el techo.
fitup-measured-on-the-deck = Medido en el entablado
fitup-width-at-the-eave = Ancho en el alero
fitup-width-at-the-head = Ancho arriba
fitup-left-rake = Borde izquierdo
fitup-right-rake = Borde derecho
fitup-rising-diagonal = Diagonal que sube
fitup-falling-diagonal = Diagonal que baja
fitup-from-the-left-end-of = Del extremo izquierdo del alero al extremo derecho del borde superior.
fitup-from-the-right-end-of = Del extremo derecho del alero al extremo izquierdo del borde superior.
fitup-from-corner-to-corner-on = De esquina a esquina, sobre el entablado.
fitup-head = arriba
fitup-left = izquierdo
fitup-right = derecho
fitup-bows-at-the-middle-of = Cuánto se curva cada borde en su centro
fitup-bow-of-the-eave = Curva del alero
fitup-bow-of-the-head = Curva del borde superior
fitup-bow-of-the-left-rake = Curva, borde izquierdo
fitup-bow-of-the-right-rake = Curva, borde derecho
fitup-from-the-string-between-the = Del cordel entre las esquinas al borde: hacia el entablado es mayor que 0, hacia afuera (escriba −) menor.
fitup-as-drawn = Como se dibujó
fitup-forget-what-was-measured-and = Olvidar lo medido y empezar con el faldón como se dibujó; deshacer lo revierte.
fitup-this-face-has-not-four = Este faldón no tiene cuatro esquinas: escriba los anchos, bordes y diagonales de la parte que lleva el arreglo.
fitup-still-to-measure-both-widths = Falta medir: ambos anchos, ambos bordes y ambas diagonales.
fitup-out-of-square = Fuera de escuadra
fitup-base-line = Línea base
fitup-up-from-the-eave = Subiendo desde el alero
fitup-where-the-base-rail-line = Dónde está la línea del riel base, en su extremo más bajo. Como está ahora el bloque, hasta que escriba otra.
fitup-level-with = A nivel con
fitup-the-row = La fila
fitup-a-module-varies-by = Un módulo varía
fitup-how-much-one-may-be = Cuánto puede ser uno más grande o más chico que en su ficha. 1/32" es la mitad del dieciseisavo que se lee en una cinta.
fitup-a-reveal-is-set-to = Una separación se pone a
fitup-how-far-one-reveal-can = Cuánto puede fallar una separación, hacia cualquier lado.
fitup-set-this-reveal = Poner esta separación
fitup-give-the-block-this-reveal = Dar al bloque esta separación; deshacer lo revierte.
fitup-copy-as-text = Copiar como texto
fitup-the-fit-up-is-on = El replanteo está en el portapapeles.
fitup-the-eave = el alero
fitup-the-head = el borde superior
fitup-halfway-between = a media distancia
fitup-measure-the-deck-of = medir el entablado de { $face }
fitup-set-the-reveal-of = poner la separación de { $block }
fitup-the-rake-is-square-to = El borde { $name } está a escuadra con el alero.
fitup-right-2 = derecha
fitup-left-2 = izquierda
fitup-the-rake-leans-to-the = El borde { $name } se inclina { $small } hacia la { $way } en el borde superior.
fitup-head-and-eave-are-parallel = El borde superior y el alero son paralelos.
fitup-the-head-is-farther-from = El borde superior está { $small } más lejos del alero en el extremo { $end }.
fitup-square-with-this-eave-and = A escuadra, con este alero y borde izquierdo, ambas diagonales medirían { $from_metres }.
fitup-the-measures-disagree-by-spread = Las medidas discrepan en { $small }; repartido entre las seis, ninguna cambió más de { $small2 }.
fitup-snap-it-up-at-the = Trácela a { $at_left } en el borde izquierdo y a { $at_right } en el derecho; en el centro son { $at_middle } desde el borde mismo.
fitup-kept-free-at-the-left = { $small } libres a la izquierda y { $small2 } a la derecha.
fitup-solid-as-measured-what-is = Continua: como se midió, lo que está fuera de escuadra dibujado { $times } veces. Punteada: a escuadra.
fitup-solid-as-measured-dashed-square = Continua: como se midió. Punteada: a escuadra.
fitup-of-m-measure-it-again = { $name }, { $value } m: mida otra vez, debe ser { $must }
fitup-the-eave-and-make-no = el alero, { $rake } y { $diagonal } no forman triángulo ({ $a }, { $b } y { $c } m): una de esas medidas se leyó mal
fitup-the-left-rake = el borde izquierdo
fitup-the-right-rake = el borde derecho
fitup-the-rising-diagonal = la diagonal que sube
fitup-the-falling-diagonal = la diagonal que baja
fitup-above-0-and-below-100 = mayor que 0 y menor que 100 km
fitup-the-bow-of-the-eave = la curva del alero
fitup-the-bow-of-the-head = la curva del borde superior
fitup-the-bow-of-the-left = la curva del borde izquierdo
fitup-the-bow-of-the-right = la curva del borde derecho
fitup-short-of-a-quarter-of = menor que un cuarto del lado más corto
fitup-the-module = el módulo
fitup-the-variation-of-modules = la variación de los módulos
fitup-the-variation-of-reveals = la variación de las separaciones
fitup-the-least-reveal = la separación mínima
fitup-the-reveal = la separación
fitup-the-opening = el claro
fitup-a-length-ranges-from-less = una longitud, los rangos de menor a mayor
fitup-a-row = una fila
fitup-at-least-one-module-long = de un módulo de largo como mínimo
fitup-row-to-fill = Fila { $row }, { $modules }: { $open } por llenar
fitup-it-fits-with-its-reveal = cabe con su separación de { $small }, sobran { $long } a los lados
fitup-with-its-reveal-of-it = con su separación de { $small } le sobran { $small2 } de largo; cabe con { $small3 }
fitup-it-does-not-close-even = no cabe: aun con la separación mínima de { $small } le sobran { $long } de largo; quite un módulo de esta fila o mueva lo que la detiene
fitup-it-closes = la fila cabe
fitup-it-does-not-close = la fila no cabe
fitup-sizes-and-reveals-can-add = Tamaños y separaciones pueden sumar { $small } hacia cualquier lado en el peor caso: { $yes }; { $small2 } como raíz de la suma de cuadrados: { $yes2 }.
fitup-the-reveal-stays-at = La separación queda en { $small }.
fitup-set-the-reveal-of-the = Ponga la separación del bloque en { $small } en lugar de { $small2 }, con la que una fila queda demasiado larga.

fitup-deck-the-measures-agree =
    Entablado: las medidas concuerdan
    {""}

fitup-deck-the-measures-disagree-by = Entablado: las medidas discrepan en { $small }; repartido entre las seis, ninguna cambia más de { $small2 }
fitup-the-end-of-the-head = {"  "}el extremo { $end } del borde superior está a escuadra con el alero
fitup-the-end-of-the-head-stands = {"  "}el extremo { $end } del borde superior está { $small } a la { $way } de la escuadra con el alero

fitup-head-and-eave-are-parallel-2 =
    {"  "}el borde superior y el alero son paralelos
    {""}

fitup-the-head-is-farther-from-the = {"  "}el borde superior está { $small } más lejos del alero en su extremo { $end }
fitup-parallel-to-the-eave = paralela al alero
fitup-parallel-to-the-head = paralela al borde superior
fitup-halfway-between-eave-and-head = a media distancia entre alero y borde superior
fitup-base-line-snap-it-from = Línea base, { $along }: trácela a { $long } hacia arriba en la izquierda y a { $long2 } en la derecha, ambas desde el cordel del alero; { $long3 } desde el borde en su centro

fitup-it-may-reach-from-to =
    { $row_words } Puede llegar de { $long } a { $long2 } del extremo izquierdo del alero.
    {"  "}{ $row_errors }

fitup-measure-each-line-from-one =
    Mida cada línea desde un solo origen, y compruebe el primer módulo de una fila antes del siguiente.

    { $caution }

## What can be done about a finding

fixes-no-single-step-keeps-as = ningún paso solo conserva tantos módulos: { $words }
fixes-no-single-step-clears-it = ningún paso solo lo resuelve: { $words }
fixes-none-was-found-among-moves = no se encontró ninguna corrección entre movimientos, filas, módulos y pasos
fixes-then = , luego{" "}
fixes-first-then = primero { $first }, luego { $then }
fixes-move-2 = mover { $block } { $ways }
fixes-move-3 = mover { $penetration } { $ways }
fixes-take-away = quitar { $block }
fixes-switch-on-in-row-of = volver a poner { $modules } en la fila { $row } { DE($block) }
fixes-shift-row-of-over-the = correr la fila { $row } { DE($block) } sobre la fila de abajo
fixes-shift-row-of-and-those = correr la fila { $row } { DE($name) } y las de arriba { $ways }
fixes-shift-row-of = correr la fila { $row } { DE($name) } { $ways }
fixes-set-the-reveal-of-to = poner la separación { DE($block) } en { $length }
fixes-take-the-repeated-corner-away = quitar la esquina repetida
fixes-take-hole-away = quitar el hueco { $ring }
fixes-take-back-what-was-said = retirar lo que se dijo de lados que { $face } ya no tiene
fixes-put-drip-edge-on-with = poner goterón en esta obra
fixes-take-the-waiver-away = quitar la dispensa
fixes-raise = subir
fixes-lower = bajar
fixes-up-the-slope = pendiente arriba
fixes-down-the-slope = pendiente abajo
fixes-to-the = hacia el { $to }
fixes-up-the-plan = hacia arriba en la planta
fixes-down-the-plan = hacia abajo en la planta
fixes-row-place = fila { $row }, lugar { $column }
fixes-switch-off-of = quitar { $modules } { DE($blocks) }

## Files of other programs

formats-latitude-longitude = Latitud, longitud
formats-of-the-plans-origin-in = Del origen de la planta, en grados de WGS 84, como las dan los mapas: 39.1, -84.5. Se necesita para escribir la planta como GeoJSON.
formats-latitude-from-85-to-85 = Latitud de -85 a 85, una coma, luego longitud de -180 a 180, en grados: 39.1, -84.5.
formats-import-a-building = Importar un edificio…
formats-import-from-a-folder = Importar de una carpeta…
formats-reading-the-buildings = Leyendo los edificios…
formats-reading-broke-off-try-again = La lectura se interrumpió: pruebe otra vez, o recorte el archivo al área de una sola calle.
formats-name-or-number = nombre o número
formats-take-this-building = Tomar este edificio
formats-into-this-job-where-it = Entra en esta obra si aún no tiene techo, y deshacer lo revierte; si no, en una obra nueva con el mismo kit y libro de reglas.
formats-choose-a-building-what-is = Elija un edificio: aquí se muestra lo que hay que saber de él.
formats-every-roof-surface-of-it = Cada superficie de su techo se vuelve un faldón.
formats-outline-of-the-walls-alone = Solo el contorno de los muros: el techo se levanta sobre él como se dice aquí.
formats-plan-as-geojson = Planta como GeoJSON…
formats-house-as-gltf = Casa como glTF…
formats-the-plan-could-not-be = No se pudo escribir la planta
formats-roof-report = Informe del techo
formats-put-the-report-on-the = Poner el informe en el portapapeles como texto
formats-the-roof-report-is-on = El informe del techo está en el portapapeles.
formats-squares-of-100-ft-no = Cuadros de 100 ft², sin desperdicio
formats-faces = Faldones
formats-edges-true-length = Bordes, longitud real
formats-press-to-list-each-line = Oprima para enumerar cada línea de este tipo
formats-heights-are-above-the-level = Las alturas se cuentan desde el nivel de referencia de la obra.
formats-footprint = huella  ·  { $area }
formats-face-in-plan = 1 faldón  ·  { $area } en planta
formats-faces-in-plan = { $faces ->
        [one] { $faces } faldón
       *[other] { $faces } faldones
    }  ·  { $area } en planta
formats-left-out = {"  "}·  { $left_out } omitidos
formats-look-at-it = {"  "}·  revíselo
formats-building = Edificio { $entry }: { $gives }
formats-buildings = { $all ->
        [one] { $all } edificio
       *[other] { $all } edificios
    }
formats-of = { $found } de { $all }
formats-not-read = Sin leer: { $trouble }
formats-import = Importar { $house }

formats-things-to-look-at-were =
    { $count ->
        [one] {" "}En la lista se indicó una cosa por revisar.
       *[other] {" "}En la lista se indicaron { $count } cosas por revisar.
    }

formats-was-imported-it-is-not = Se importó { $house }. Todavía no se ha guardado.{ $more }
formats-written-to = Escrito en { $path }
formats-falls = { $pitch } ({ $degrees }°), cae hacia { $falls }
formats-level-at = {"    "}{ $number }, a nivel en { $from }
formats-up-to = {"    "}{ $number }, sube de { $from } a { $to }

formats-the-roof-does-not-hold =
    { $count ->
        [one] El techo no cuadra en un lugar: vea los hallazgos.
       *[other] El techo no cuadra en { $count } lugares: vea los hallazgos.
    }

formats-it-has-no-roof-surface = No tiene ninguna superficie de techo.
formats-it-has-roof-surfaces-a = Tiene { $raw } superficies de techo; un edificio tiene como máximo { $most_surfaces }: no se tomó ninguna.
formats-it-is-a-template-which = es una plantilla, que no se lee
formats-it-has-no-surfaces = no tiene superficies
formats-it-does-not-say-which = no dice qué superficies son techo
formats-its-boundaries-are-not-as = sus límites ("boundaries") no tienen la profundidad que dice su tipo
formats-it-does-not-say-of = no dice de cada superficie qué es
formats-no-surface-of-it-is = ninguna superficie está marcada como techo
formats-of-its-geometry-of-lod = de su geometría de LoD { $lod }, { $why }
formats-text-in-it-line-column = el texto { $nth }, línea { $line }, columna { $column }: { $wrong }
formats-text-in-it-is-of = el texto { $nth } es de tipo { $found }; un modelo de ciudad es CityJSON, seguido en una secuencia por CityJSONFeature
formats-it-is-cityjson-versions-1 = es CityJSON { $value }; se leen las versiones 1.1 y 2.0: actualícelo primero
formats-it-has-no-usable-transform = no tiene "transform" utilizable: CityJSON 1.1 y 2.0 tienen una escala y una traslación de tres números cada una
formats-of-no-version = de ninguna versión
formats-more-than-city-objects-cut = más de { $most_objects } objetos de ciudad: recórtelo primero al área de una sola calle
formats-check-that-the-path-is = { $path }: { $error }; revise que la ruta sea correcta y que pueda leerlo
formats-is-larger-than-mb-cut = { $path }: { $what } mide más de { $most } MB; recórtelo primero al área de una sola calle
formats-there-is-no-building-list = { $path }: no existe el edificio { $id }; enumere lo que hay con --list
formats-there-is-no-building-in = { $path }: no contiene ningún edificio; se leen GeoJSON (.geojson, .json) y CityJSON (.city.json, .city.jsonl, .json, .jsonl)
formats-no-roof-surface-of-it = { $name }: ninguna superficie de su techo puede ser un faldón. { $told }
formats-this-is-no-geojson-rfc = esto no es GeoJSON (RFC 7946): { $value }
formats-this-geojson-holds-no-polygon = este GeoJSON no tiene Polygon ni MultiPolygon: una huella es uno de ellos
formats-its-crs-is-geojson-is = su "crs" es { $value }; GeoJSON está siempre en grados WGS 84 (RFC 7946, sección 4): conviértalo a longitud y latitud
formats-position-is-no-longitude-from = { $name }, posición { $position }: { $longitude }, { $latitude } no es una longitud de -180 a 180 y latitud de -85 a 85 en grados; GeoJSON está siempre en grados WGS 84
formats-reaches-m-from-its-middle = { $name } llega a { $metres } m de su centro: una casa no pasa de { $most } m
formats-has-corners-a-house-has = { $name } tiene { $corners } esquinas: una casa tiene como máximo { $most }
formats-has-a-corner-at-no = { $ring } tiene una esquina sin posición
formats-has-fewer-than-three-corners = { $ring } tiene menos de tres esquinas; un anillo tiene cuatro posiciones o más
formats-corner-of-is-on-the = la esquina { $corner } { DE($ring) } está en el lugar de la anterior
formats-has-no-area = { $ring } no tiene área
formats-sides-cross-or-touch-m = los lados se cruzan o tocan { $at } m al este y { $at2 } m al norte de su centro
formats-is-not-inside-the-outline = { $ring } no está dentro del contorno
formats-outline = Contorno { $index }
formats-geojson-is-longitude-and-latitude = GeoJSON es longitud y latitud, y la obra no dice dónde está su planta: dé latitud y longitud del sitio
formats-the-plan-lies-over-the = la planta cruza el meridiano 180: GeoJSON pide cortar ahí las formas (RFC 7946, sección 3.1.9), y eso no se hace aquí
formats-the-plan-reaches-beyond-85 = la planta pasa de los 85° de latitud o queda a más de { $most } m de su origen
formats-there-is-no-house-to = todavía no hay casa que escribir: dibuje primero un faldón
formats-the-house-is-larger-than = la casa es más grande de lo que puede ser un archivo glTF
formats-its-coordinates-are-degrees-turn = sus coordenadas son grados ({ $value }): pase el archivo primero a una cuadrícula nacional en metros
formats-its-coordinates-stretch-lengths-by = sus coordenadas ({ $value }) alargan las longitudes más de 2 en 1,000: pase el archivo primero a una cuadrícula nacional en metros
formats-its-reference-system-is-not = su sistema de referencia { $value } no se conoce aquí, así que nadie puede decir cuánto miden sus longitudes: pase el archivo primero a una cuadrícula nacional en metros de la lista EPSG
formats-it-names-no-reference-system = no nombra ningún sistema de referencia, y su edificio más grande mide { $value }: eso son grados, no metros; pase el archivo primero a una cuadrícula nacional en metros
formats-the-file-names-no-reference = El archivo no nombra ningún sistema de referencia: sus longitudes se tomaron como metros. Compruebe una en la casa.
formats-the-file-is-in-web = El archivo está en Web Mercator (EPSG:3857), que alarga las longitudes: se redujeron a { $factor } de lo que dice hacia el este y { $factor2 } hacia el norte, para la latitud { $mercator_latitude }°.
formats-it-names-a-vertex-that = nombra un vértice que no está en el archivo
formats-it-has-fewer-than-three = tiene menos de tres esquinas
formats-it-has-corners-a-face = tiene { $value } esquinas; un faldón tiene como máximo { $most }
formats-it-has-no-area = no tiene área
formats-it-stands-at-as-a = está a { $value }°, como un muro
formats-it-looks-down-the-underside = mira hacia abajo: es la cara inferior de un voladizo
formats-a-corner-is-m-out = una esquina está a { $value } m del plano de las demás; con más de { $most } m ya no es un solo faldón
formats-it-reaches-m-no-roof = llega a { $value } m: ningún techo lo hace
formats-a-corner-of-it-is = una esquina no tiene posición
formats-a-ring-of-it-has = un anillo tiene menos de tres esquinas
formats-two-corners-of-it-are = dos esquinas están en un mismo lugar
formats-a-ring-of-it-has-no = un anillo no tiene área en planta
formats-its-sides-cross-or-touch = sus lados se cruzan o tocan en { $at }, { $at2 } en planta
formats-a-hole-of-it-is = un hueco no está dentro de su contorno
formats-roof-surface-is-no-exact = La superficie de techo { $surface } no es un plano exacto: una esquina queda a { $from_metres } del faldón que salió de ella.
formats-roof-surface-was-left-out = La superficie de techo { $left } ({ $area_text }) se omitió: { $reason }.
formats-level = a nivel
formats-it-is-neither-a-png = no es PNG ni JPEG; guárdela como uno de ellos
formats-it-is-pixels-more-than = mide { $width } × { $height } píxeles, más de los { $most_pixels } millones que se leen; haga una más pequeña
formats-the-file-is-damaged-save = { $value }; el archivo está dañado: guarde la imagen otra vez
formats-more-than-buildings-the-rest = { $file }: más de { $most_entries } edificios; el resto no se enumera. Recórtelo primero al área de una sola calle.
formats-there-are-several-buildings-in = contiene varios edificios: enumérelos con --list, y nombre uno con --building
formats-it-is-empty = está vacío
formats-this-file = este archivo
formats-a-line-of-it = una línea suya

## What stands beside fields

help-what-people-call-it-on = Cómo lo llama la gente: en el dibujo, en los hallazgos y en cada hoja.
help-where-the-house-stands-as = Dónde está la casa, como se imprime en las hojas.
help-what-the-crew-must-know = Lo que la cuadrilla debe saber antes de ir; se imprime en el plano para construir.
help-how-lengths-are-shown-any = Cómo se muestran las longitudes. Se puede escribir cualquier unidad: 12' 6 1/2", 3.82 m.
help-which-side-of-a-module = Qué lado del módulo va a lo largo del alero; el kit dice qué permite.
help-the-face-that-the-block = El faldón en que está el bloque; otro lo lleva ahí.
help-what-comes-through-the-roof = Qué atraviesa el techo: el libro de reglas tiene una holgura para cada tipo.
help-round-for-pipes-a-rectangle = Redonda para tubos, rectángulo para marcos de tragaluz y chimeneas, o el contorno como se dibujó.
help-how-rows-lie-to-one = Cómo quedan las filas entre sí al llenar faldones; el kit dice qué juntas permite.
help-whether-the-size-of-the = Si el tamaño del arreglo se dice en módulos o en kilovatios nominales.
help-of-all-arrays-of-this = De todos los arreglos de este tamaño: el de menos tapajuntas alrededor, o el más barato.
help-what-it-is-in-a = Qué es, en una palabra que otros entiendan.
help-which-block-is-spoken-of = De qué bloque se trata.
help-why-the-line-differs-from = Por qué el renglón difiere de lo contado; aparece en cada salida.
help-another-part-of-the-price = Otra pieza de la lista de precios que puede ir en lugar de esta.
help-what-one-of-it-is = Cómo se llama una unidad, por ejemplo caja, rollo o pieza.
help-under-which-heading-it-stands = Bajo qué encabezado va en el pedido.
help-the-stage-of-work-that = La etapa de trabajo que no puede empezar sin él.
help-year-month-day-2026-11 = Año, mes, día: 2026-11-26.
help-who-counted-and-can-be = Quién contó, y a quién se puede preguntar.
help-what-the-supplier-must-know = Lo que el proveedor debe saber de esto.
help-what-the-base-line-runs = Con qué va a nivel la línea base donde alero y borde superior no son paralelos.
help-which-face-is-spoken-of = De qué faldón se trata; también se selecciona en el dibujo.
help-what-shape-the-face-has = Qué forma tiene el faldón: según ella se necesitan unas longitudes u otras.
help-how-the-pitch-was-found = Cómo se sacó la pendiente: dada, o medida con nivel y regla.
help-how-much-of-the-roof = Cuánto del techo recibe tejas nuevas: determina lo que se quita, la membrana y las tejas.
help-handbooks-give-shingles-10-on = Los manuales dan 10 % de desperdicio de tejas en un techo de dos aguas, 15 % en uno de cuatro aguas, más si hay limahoyas. El que dan los cortes de estos faldones se muestra junto al renglón.

## What was done, for undo

history-move-2 = mover { $name }
history-nudge = mover un poco { $name }
history-resize = cambiar el tamaño de { $name }
history-shift-a-row-of = correr una fila de { $name }
history-switch-modules-of = quitar y poner módulos de { $name }
history-change = cambiar { $name }
history-place = colocar { $name }
history-draw = dibujar { $name }
history-delete = borrar { $name }
history-cut = cortar { $name }
history-paste = pegar { $name }
history-duplicate = duplicar { $name }
history-move-a-corner-of = mover una esquina de { $name }
history-add-a-corner-to = agregar una esquina a { $name }
history-delete-a-corner-of = borrar una esquina de { $name }
history-rename-the-job = renombrar la obra
history-change-the-site = cambiar el sitio
history-change-the-units = cambiar las unidades
history-nothing-to-undo = Nada que deshacer
history-undo = Deshacer: { $label }
history-nothing-to-redo = Nada que rehacer
history-redo = Rehacer: { $label }
history-undone = Deshecho: { $label }
history-done-again = Hecho otra vez: { $label }
history-steps-taken = Pasos dados
history-since-the-job-was-opened = Desde que se abrió la obra, del primero al último. Oprima uno para ir ahí; nada se pierde hasta cerrar la obra.
history-now = ahora
history-undone-2 = deshecho
history-done-otherwise-later = dejado aparte
history-saved = guardado
history-back-at-step = De vuelta en el paso { $words }

## The job and its edits

job-landscape = lado largo paralelo al alero
job-portrait = lado largo pendiente arriba
job-price-list = lista de precios
job-warehouse-list = lista de almacén
job-pallet-list = lista de tarimas
job-osb = OSB
job-plywood = triplay
job-boards = tablas
job-spaced-boards = tablas separadas
job-class-a = clase A
job-class-b = clase B
job-class-c = clase C
job-no-class = ninguna clase
job-the-job-has-no = la obra no tiene { $what } { $number }
job-a-position-must-be-a = { $what }: una posición debe ser un número a menos de 100 km del origen
job-a-block-has-1-to = { $name }: un bloque tiene de 1 a { $most } lugares, no { $rows } × { $columns }
job-must-be-more-than-0 = { $what } debe medir más de 0 y menos de 1 km
job-cant-be-raised = { $part } no se puede levantar: { $error }
job-the-parts-of-the-house = las partes de la casa no se pueden juntar: { $value }
job-face-follows-from-a-part = el faldón { $name } resulta de una parte de la casa: cambie esa parte, o libérela para dibujar sus faldones
job-part-describes-sides-for-rings = la parte { $part } describe { $described } lados para anillos de { $drawn } esquinas: describa un lado por esquina
job-face-numbers-sides-for-rings = el faldón { $face } numera { $numbered } lados para anillos de { $drawn } esquinas: dé a cada lado un número propio, menor que `next`
job-part-has-two-sides-with = la parte { $part } tiene dos lados con el número { $side }: dé a cada lado el suyo
job-latitude-longitude-degrees-from-85 = latitud { $latitude }, longitud { $longitude }: dé grados de -85 a 85 y de -180 a 180
job-the-picture-under-the-plan = la imagen bajo la planta debe estar a menos de 100 km del origen, medir de 1 mm a 100 km de ancho y mostrar al menos una parte
job-picture-missing = { $path }: { $error }; vuelva a poner la imagen ahí, o elíjala otra vez
job-picture-too-large = { $path }: esta imagen mide más de { $most } MB; haga una más pequeña
job-a-waiver-needs-a-reason = una dispensa necesita una razón: escriba por qué se puede construir así
job-cant-be-the-number-of = { $value } no puede ser el número de nada: los números llegan hasta { $most_number }
job-a-circuit-has-1-to = { $name }: un circuito tiene de 1 a { $most } módulos, no { $modules }
job-a-module-is-in-one-circuit = { $name }: un módulo está en un solo circuito, y una sola vez
job-a-name-is-needed = un circuito y una caja de empalme necesitan un nombre
job-is-no-temperature = { $field }: { $celsius } °C no es una temperatura de esta tierra
job-is-out-of-range = { $field }: { $value } debe estar entre { $least } y { $most }
job-a-circuit-is-read-once = un circuito tiene una sola lectura
job-label-text-must-be = label_texts: el código { $code } tiene de 1 a 64 minúsculas, cifras y guiones, y un texto tiene como máximo { $most } caracteres
job-the-order = el pedido: { $value }
job-face = el faldón
job-penetration = la penetración
job-block = el bloque
job-the-kit = el kit
job-the-rule-book = el libro de reglas
job-the-price-list = la lista de precios
job-the-courses-of-face = las hiladas del faldón { $face }
job-penetration-2 = la penetración { $penetration }
job-junction-box-2 = la caja de empalme { $name }
job-added-number-is-a-part = added[{ $index }].number: { $added } es una pieza del kit: cambie ese renglón o use otro número
job-the-reveal-of-block = la separación del bloque { $block }
job-missing-field-in-face-which = falta el campo `{ $field }` en el faldón { $id }, que es dibujado: no sale de ninguna parte de la casa
job-check-that-the-path-is = { $path }: { $error }; revise que la ruta sea correcta y que pueda { $doing }
job-this-file-is-larger-than = { $path }: este archivo mide más de { $most_bytes } MB y no puede ser un archivo { $format }
job-line-column-field = { $path }, línea { $line }, columna { $column }, campo { $field }: { $wrong }
job-this-is-a-file-expected = { $path }: este es un archivo { $found }; se esperaba el formato { $expected }
job-this-file-is-version-of = { $path }: este archivo es la versión { $found } de su formato; este programa lee hasta la versión { $known }. Ábralo con un programa más nuevo: leerlo aquí podría perder lo que escribió el más nuevo
job-the-clipboard = el portapapeles
job-read = leerlo
job-write = escribirlo
job-field-data-id-the-number = campo data.{ $field }[{ $index }].id: el número { $id } debe ser menor que next_id, { $next_id }
job-field-data-id-the-number-is = campo data.{ $field }[{ $index }].id: el número { $id } está dos veces
job-field-data-from-piece-of = campo data.{ $field }[{ $index }].from: el trozo { $piece } del lado { $side } de la parte { $part } ya tiene un faldón
job-field-data-blocks-face-the = campo data.blocks[{ $index }].face: la obra no tiene el faldón { $face }
job-is-no-key-of-a = “{ $value }” no es la clave de un hallazgo: copie la clave de un informe, como “setback/block-3/face-1/side-4/rake”
job-open = abrir
job-other-amounts-are-written-as = { $error }; otras cantidades se escriben como "200 sq ft", "20 sq m", "1 h", "250 lb"
job-part = la parte
job-part-2 = la parte { $part }
job-main-house = casa principal
job-ell = ala
job-dormer = buhardilla
job-porch = porche
job-other-part = otra parte
job-pipe-boot = bota de tubo
job-vent = respiradero
job-skylight = tragaluz
job-escape-window = ventana de escape
job-other-penetration = otra penetración
job-the-pipe-boot = la bota de tubo
job-the-vent = el respiradero
job-the-chimney = la chimenea
job-the-skylight = el tragaluz
job-the-escape-window = la ventana de escape
job-the-other-penetration = la otra penetración
job-block-has-rows-1-to = el bloque { $block } tiene las filas 1 a { $rows } y los lugares 1 a { $columns }: no hay fila { $row }, lugar { $place }
job-an-outline-of-three-corners = un contorno de tres esquinas las conserva todas
job-part-3 = parte
job-waiver = dispensa
job-circuit = circuito
job-junction-box = caja de empalme
job-reading = lectura
job-wiring = cableado
job-site = sitio
job-picture-under-the-plan = imagen bajo la planta
job-kit = kit
job-rule-book = libro de reglas
job-order = pedido
job-added = se agrega
job-changed = cambia
job-removed = se quita
job-it-says-which-thing-this = dice de qué cosa se trata y no cambia: omítalo
job-there-is-no-the-rings = { $spot } no existe: los anillos tienen { $counts } esquinas, contadas desde 1
job-field = campo { $field }: { $wrong }
job-the-job-has-no-there = la obra no tiene { $what } { $asked }; hay: { $known }
job-several-have-the-name-of = el nombre { DE($what) } { $asked } está repetido: diga cuál por su número, uno de { $numbers }
job-give-or-one-of-the = dé { $one } o { $other }, uno de los dos
job-the-face-of-block-has = el faldón del bloque { $block } no existe por ahora en el techo: recupérelo primero
job-no-picture-lies-under-the = no hay imagen bajo la planta: ponga una primero con set-underlay
job-no-file-is-read-here = { $value }: aquí no se lee ningún archivo: dé el contenido entero con set-…
job-a-step-is-an-object = un paso es un objeto con un campo que dice qué se hace, como { $value }
job-nothing-is-done-by-there = no se hace nada con { $name }; las ediciones que hay son { $known }
job-say-what-stands-on-its = diga qué hay en sus lados: { $value }, "gable" o "wall"
job-corners-and-sides-count-from = las esquinas y los lados se cuentan desde 1: 3 es el tercero del contorno, "2.1" el primero del primer patio
job-edit = edición { $number } ({ $name }): { $wrong }
job-edit-of-field = edición { $number } de { $of }, campo { $field }: { $wrong }
job-field-language-is-none-that = campo language: el idioma { $code } no existe aquí: use uno de { $known }
job-line = línea
job-the-workbook-is-damaged-a = el libro de cálculo está dañado: no se puede leer una celda
job-the-workbook-has-no-sheet = el libro de cálculo no tiene hojas
job-there-is-no-header-row = no hay fila de encabezados
job-the-header-needs-a-column = el encabezado necesita la columna { $name }; la primera { $word } tiene { $known }
job-and-in-are-written-in = { $place }: { $text } y { $said } en { $at } están escritos de dos maneras; escriba todos con punto decimal, como 1205.00
job-cant-read-as-a-number = no se puede leer { $text } como número: escríbalo como 1205.00
job-can-be-read-in-two = { $text } se puede leer de dos maneras y ninguna otra celda dice cuál: escríbalo como 1205.00 o 1.21
job-cant-read-write-it-with = no se puede leer { $text }: escríbalo con punto decimal, como 184.50 o 1,205.00

## The kit

kit-must-be-0-or-more = { $field } debe ser 0 o más y menos de 1 km
kit-deck-kinds-must-name-at = deck.kinds debe nombrar al menos un tipo de tablero
kit-fire-underlayment-there-is-no = fire.underlayment: no hay pieza { $underlayment } entre las piezas
kit-must-be-more-than-0 = { $field } debe ser mayor que 0, no { $value }
kit-module-length-is-the-long = module.length es el lado largo: no puede ser menor que module.width
kit-orientations-must-name-at-least = orientations debe nombrar al menos una de "landscape" y "portrait"
kit-reveal-least-usual-and-most = reveal: least, usual y most deben ir de menor a mayor, desde 0, en ese orden
kit-must-be-0-or-more-2 = { $field } debe ser 0 o más
kit-must-be-0-or-more-and = { $field } debe ser 0 o más y menos de 1 m
kit-module-part-there-is-no = module.part: no hay pieza { $part } entre las piezas
kit-parts-number-is-taken-twice = parts[{ $index }].number: { $part } está dos veces
kit-parts-number-a-part-needs = parts[{ $index }].number: una pieza necesita un número
kit-parts-package-holds-must-be = parts[{ $index }].package.holds debe ir en la unidad en que se cuenta la pieza: un número de piezas, una longitud como "100 ft", un área como "200 sq ft", "1 h" o "250 lb"
kit-parts-crew-there-is-no = parts[{ $index }].crew: no hay cuadrilla { $crew } entre las cuadrillas
kit-parts-package-holds-must-be-more = parts[{ $index }].package.holds debe ser mayor que 0, y entero donde son piezas, no { $amount }
kit-choices-code-each-choice-needs = choices[{ $index }].code: cada opción necesita un código propio, no { $choice }
kit-of-the-part-must-stand = of: la pieza { $number } debe estar arriba de esta
kit-when-there-is-no-choice = when: no hay opción { $when } entre las opciones
kit-each-the-amount-must-be = each: la cantidad debe ser 0 o más, y un solape menor que su pieza
kit-each-count-gives-pieces-or = each: "count" da piezas, o una longitud de una longitud, o un área de un área; "length" da una longitud por pieza o corrida; "pieces" y "spaced" dan piezas a lo largo de una corrida ("spaced" también en un área). La pieza se cuenta en otra cosa
kit-solar = Solar
kit-flashing = Tapajuntas
kit-wire-and-grounding = Cables, unión y tierra
kit-tear-off-and-deck = Techo viejo y entablado
kit-safety-and-consumables = Seguridad y consumibles
kit-disposal = Desecho
kit-permits-and-fees = Permisos y cuotas
kit-hold-down-there-is-no = hold_down.{ $field }: no hay pieza { $number } entre las piezas
kit-hold-down-part-must-count = hold_down.part: { $part } debe contar al menos uno por cada { $foot }
kit-hold-down-pounds-must-be = hold_down: las libras (pounds) deben ser de 1 a 100000, no { $pounds }
kit-parts-until-must-not-come = parts[{ $index }].until no debe venir antes de su etapa
kit-parts-laps-lies-over-but = parts[{ $index }].laps: { $part } va sobre { $under }, pero se coloca antes
kit-parts-laps-there-is-no = parts[{ $index }].laps: no hay pieza { $under } entre las piezas
kit-laying-joints-must-name-at = laying.joints debe nombrar al menos uno de "free", "aligned" y "half-lapped"
kit-laying-base-rail-above-course = laying.base_rail: above_course_from y above_course_to deben ir de menor a mayor, a menos de un metro de la línea de hilada
kit-wiring-share = { $field } es una parte de 0 a 1, no { $share }
kit-wiring-terminals = { $field } debe ser 60 o 75
kit-wiring-vmp = wiring.vmp_percent_per_kelvin debe ser 0 o menos, y no menos de -5: el voltaje baja con las celdas calientes
kit-wiring-string-rises = wiring.device.dc: least_in_string no puede ser más que most_in_string
kit-wiring-inverter-rises = wiring.inverters[{ $index }]: least_volts no puede ser más que most_volts
kit-wiring-inverter-twice = wiring.inverters[{ $index }].number: { $number } está dos veces
kit-tear-off = Quitar el techo viejo
kit-deck = Entablado
kit-dry-in = Impermeabilización
kit-first-courses = Primeras hiladas
kit-on-the-ground = En el suelo
kit-under-the-array = Debajo del arreglo
kit-base-rail = Riel base
kit-modules = Módulos
kit-head-flashing = Tapajuntas superior
kit-sides-of-the-array = Lados del arreglo
kit-around-the-array = Alrededor del arreglo
kit-shingles-to-the-ridge = Tejas hasta la cumbrera
kit-wires-into-the-box = Cables a la caja
kit-old-roofing-off-anchors-ropes = Quitar el recubrimiento viejo; primero anclas, cuerdas y lonas.
kit-replace-bad-sheathing-frame-crickets = Reemplazar tableros malos, armar desviadores de agua, sacar o clavar todo clavo salido, barrer.
kit-drip-edge-at-the-eaves = Goterón en los aleros, barrera contra filtraciones a todo lo largo, forro de limahoyas, membrana base y, encima de ella, goterón en los bordes inclinados.
kit-starter-at-eaves-and-rakes = Tira de arranque en aleros y bordes inclinados, tejas hasta la línea del riel base; el tapajuntas de tubos, muros, chimeneas y tragaluces se pone conforme llegan las hiladas.
kit-meanwhile-feet-brackets-and-devices = Mientras tanto: montar patas, soportes y dispositivos en los módulos. Cada módulo se carga entre dos personas.
kit-self-adhered-membrane-in-level = Membrana autoadherible en franjas a nivel de abajo hacia arriba, luego la capa resistente al fuego con clavos con arandela.
kit-snap-the-line-screw-the = Trazar la línea con gis, atornillar el riel al entablado, empalmarlo, tapar sus extremos.
kit-row-by-row-from-the = Fila por fila desde el riel: enganchar, bajar, atornillar cada pata al entablado; cables al módulo siguiente, la bajada aparte, cobre desnudo por cada zapata. Los módulos con luz están energizados.
kit-supports-at-ends-and-seams = Soportes en extremos y juntas, insertos, el puente de unión antes de cerrar, el tapajuntas superior bien alineado y clavado.
kit-a-piece-of-step-flashing = Una pieza de tapajuntas escalonado con cada hilada, subiendo por los lados; luego el contratapajuntas a presión.
kit-corners-interlocked-an-l-piece = Esquinas trabadas, una pieza en L de membrana sobre cada una, una franja de membrana, luego la tira de arranque autoadhesiva.
kit-cut-course-over-the-head = Hilada cortada sobre el tapajuntas superior, hiladas enteras hasta la cumbrera, tapas de cumbrera; de paso se pone el tapajuntas de la caja.
kit-both-ends-of-the-home = Los dos extremos de la bajada y la tierra a la caja de empalme; ahí se dejan para el electricista.
kit-gable-roof = techo de dos aguas
kit-hip-roof = techo de cuatro aguas
kit-cut-up-roof-with-valleys = techo con muchos quiebres y limahoyas
kit-waste-is-a-share-from = waste es una parte de 0 a 1, no { $share }

## The lesson

lesson-a-first-job-step-by = Una primera obra, paso a paso
lesson-show-me-step-by-step = Muéstreme, paso a paso
lesson-skip-this-step = Saltar este paso
lesson-leave-the-steps = Dejar los pasos
lesson-all-done = Todo hecho
lesson-step-of = Paso { $number } de { $of }
lesson-raise-a-roof-over-the = Levante un techo sobre los muros
lesson-press-w-click-where-the = Oprima { $key }. Haga clic donde está la esquina inferior izquierda de los muros, apunte arriba a la derecha, escriba 48' x 30' y Entrar. Dos o cuatro aguas, pendiente y voladizo se eligen sobre el dibujo. ({ $face } dibuja otras partes y faldones sueltos.)
lesson-say-how-steep-it-is = Diga qué tan inclinado es
lesson-the-house-is-held-on = La casa está seleccionada: a la derecha escriba la pendiente de todas sus aguas, por ejemplo 5:12, y Entrar. Salte este paso si 6:12 está bien.
lesson-mark-what-comes-through = Marque lo que lo atraviesa
lesson-press-p-and-click-where = Oprima { $key } y haga clic donde hay un respiradero. Aparta los módulos tanto como dice el libro de reglas.
lesson-fill-it = Llénelo
lesson-press-l-the-most-modules = Oprima { $key }. Se coloca el mayor número de módulos que permiten las reglas, y la lista dice qué lo limita.
lesson-break-a-rule-and-mend = Rompa una regla y corríjalo
lesson-drag-the-block-over-the = Arrastre el bloque sobre el respiradero: lo que está mal se pone rojo y se enumera. Suelte, y oprima el movimiento que ofrece el hallazgo, o deshaga ({ $key }).
lesson-see-the-order = Vea el pedido
lesson-press-o-every-part-with = Oprima { $key }: cada pieza, cuántas y por qué. Exportar, arriba a la derecha, lo escribe para imprimir o para una hoja de cálculo.
lesson-that-is-the-whole-way = Ese es todo el camino
lesson-from-a-bare-roof-to = Así se va de un techo vacío a un pedido. { $home } lo muestra al dueño de la casa; { $find } busca cualquier comando; { $save } guarda. Solo ayuda para planear: lea las precauciones antes de que nadie suba.
lesson-words-of-the-trade = Palabras del oficio
lesson-find-a-word = Buscar una palabra
lesson-no-word-is-like-that = No hay ninguna palabra así.
lesson-as-roofers-and-installers-use = Como las usan los techadores e instaladores; práctica común, sin fuente. Donde un código define una palabra, vale el código.
lesson-array = arreglo
lesson-all-modules-of-a-job = Todos los módulos de una obra juntos.
lesson-base-rail = riel base
lesson-the-rail-under-the-lowest = El riel bajo la fila más baja de un bloque, atornillado al entablado sobre una línea trazada: desde él se mide todo.
lesson-rows-of-modules-that-interlock = Filas de módulos que se enlazan y llevan el tapajuntas alrededor, como una sola pieza.
lesson-bonding = unión eléctrica
lesson-joining-all-metal-so-that = Unir todo el metal para que tenga un solo voltaje, y camino a tierra. Trabajo de un electricista calificado.
lesson-chalk-line = línea de gis
lesson-a-straight-line-snapped-on = Una línea recta trazada en el entablado con un cordel con gis.
lesson-clearance = holgura
lesson-how-far-modules-stay-away = Qué tan lejos quedan los módulos de lo que atraviesa el techo.
lesson-counter-flashing = contratapajuntas
lesson-flashing-that-covers-the-upper = Tapajuntas que cubre el borde superior de otro tapajuntas.
lesson-course = hilada
lesson-one-row-of-shingles-its = Una fila de tejas; su exposición es lo que queda a la intemperie.
lesson-cricket = desviador
lesson-a-small-ridge-behind-a = Una pequeña cumbrera detrás de una chimenea que desvía el agua a los lados.
lesson-deck = entablado
lesson-the-sheathing-of-the-roof = Los tableros del techo, sobre los que está todo.
lesson-deck-mounted = sobre entablado
lesson-modules-screwed-straight-to-the = Módulos atornillados directo al entablado y con tapajuntas entre las tejas, sin estructura encima de ellas.
lesson-downslope = caída
lesson-the-way-in-which-water = Hacia donde corre el agua de un faldón.
lesson-drip-edge = goterón
lesson-metal-along-eaves-and-rakes = Metal a lo largo de aleros y bordes inclinados que aparta el agua del entablado.
lesson-the-lower-level-edge-of = El borde inferior, a nivel, de un faldón.
lesson-how-much-of-each-course = Lo que se ve de cada hilada, pendiente arriba.
lesson-one-plane-of-the-roof = Un plano del techo.
lesson-finding = hallazgo
lesson-what-a-rule-has-to = Lo que una regla dice de la obra: algo por lo que parar, por revisar o por saber.
lesson-fit-up = replanteo
lesson-setting-out-the-array-on = Trazar el arreglo sobre el entablado tal como es en realidad, aunque esté fuera de escuadra.
lesson-flashing = tapajuntas
lesson-sheet-metal-that-laps-into = Lámina que se solapa con las tejas para que el agua corra por encima.
lesson-the-upright-end-of-a = La pared triangular en el extremo de un techo de dos aguas.
lesson-head-flashing = tapajuntas superior
lesson-flashing-along-the-upper-edge = Tapajuntas a lo largo del borde superior de un bloque, bajo la hilada de arriba.
lesson-where-two-faces-meet-outward = Donde dos faldones se juntan hacia afuera, subiendo por una esquina de la casa.
lesson-ice-barrier = barrera contra hielo
lesson-self-adhered-membrane-along-eaves = Membrana autoadherible a lo largo de aleros donde el hielo estanca el agua.
lesson-one-solar-panel-it-is = Un panel solar. Está energizado siempre que le da la luz.
lesson-overhang = voladizo
lesson-pathway = paso
lesson-a-strip-without-modules-on = Una franja sin módulos por la que los bomberos suben a la cumbrera.
lesson-what-comes-through-the-roof = Lo que atraviesa el techo: tubos, respiraderos, chimeneas, tragaluces.
lesson-pitch = pendiente
lesson-rise-in-12-of-run = Lo que sube por cada 12 en horizontal: a 6:12 un techo sube 6 in en 12 in de planta.
lesson-the-sloping-edge-of-a = El borde de un faldón que sube por el hastial.
lesson-reveal = separación
lesson-the-gap-between-neighbouring-modules = El espacio entre módulos vecinos.
lesson-the-level-line-at-the = La línea a nivel de arriba donde se juntan dos faldones.
lesson-setback = retiro
lesson-how-far-modules-stay-away-from = Qué tan lejos quedan los módulos de un borde.
lesson-square = cuadro
lesson-square-feet-of-roof = 100 pies cuadrados de techo.
lesson-takeoff = cuantificación
lesson-counting-from-a-drawing-what = Contar a partir de un dibujo lo que hay que pedir.
lesson-underlayment = membrana base
lesson-the-layer-on-the-deck = La capa sobre el entablado debajo de tejas y arreglo.
lesson-where-two-faces-meet-inward = Donde dos faldones se juntan hacia adentro, y ahí se junta su agua.

## Lengths, directions, outlines

measures-north-east = noreste
measures-south-east = sureste
measures-south-west = suroeste
measures-north-west = noroeste
measures-no-length-was-given-type = no se dio ninguna longitud: escriba una como 12' 6 1/2", 12-6-8, 150.5 in o 3.82 m
measures-cant-read-as-a-length = no se puede leer { $value } como longitud: escriba una como 12' 6 1/2", 12-6-8, 150.5 in o 3.82 m
measures-the-length-has-no-unit = la longitud { $value } no tiene unidad: escríbala como "0.5 in", "12 ft", "40 mm" o "3.2 m"
measures-cant-read-as-a-pitch = no se puede leer { $value } como pendiente: escriba una como 6:12, 6/12, 26.6°, 50% o 12" over 24"
measures-a-pitch-of-in-12 = una pendiente de { $value } en 12 no puede ser un faldón: debe ser 0 o más y sin llegar a vertical
measures-three-points-on-one-line = tres puntos en una recta no forman un plano: dé una tercera altura fuera de la línea de las otras dos
measures-these-heights-make-an-upright = estas alturas dan un muro vertical, no un faldón
measures-wall-line = encuentro con muro
measures-step = escalón
measures-pitch-change = quiebre de pendiente

## The order and its prices

order-work-on-the-order = Trabajar en el pedido…
order-all-lines-of-the-order = Todos los renglones del pedido: cambiarlos, contar lo que llega, compararlos con otro
order-lines = Renglones
order-roof-money-stock = Techo, dinero, existencias
order-load-a-warehouse-list = Cargar una lista de almacén…
order-with-another-job = Con otra obra…
order-add-a-price-list = Agregar una lista de precios…
order-load-counts = Cargar conteos…
order-sort-by-it-once-more = Ordenar por esto. Otra vez: de mayor a menor. Una vez más: como en la lista.
order-number-or-words = número o palabras
order-no-line-is-like-that = No hay ningún renglón así.
order-which-lines-are-listed = Qué renglones se muestran
order-without-headings = Sin encabezados
order-changed-by-hand = Cambiados a mano
order-without-a-price = Sin precio
order-columns = Columnas
order-columns-help = Elija qué columnas se muestran. Arrastre la línea entre dos encabezados para ensanchar una columna.
order-change = Cambio
order-seen = Visto
order-seen-help = Contar los cambios desde ahora
order-pin = Fijar
order-pin-help = Contar los cambios desde este momento hasta que lo suelte, aunque el pedido se cierre entretanto
order-since-looked = desde la última vez que lo vio
order-since-pinned = desde el momento fijado
order-totals-shown = Mostrar cómo se suma el total: por etapa, por grupo, materiales y mano de obra
order-lines-of-the-order = Renglones del pedido
order-walk-rows = Moverse por los renglones del pedido
order-walk-keys = Arriba, Abajo, Re Pág, Av Pág; Entrar abre un renglón
order-leave-line = Quitar un renglón del pedido, o pedirlo de nuevo
order-space-bar = Espacio
order-width-of = Ancho de la columna { $column }
order-materials-and-work = Materiales y trabajo
order-take-this-list = Tomar esta lista de precios
order-take-this-list-help = Calcular el pedido con ella desde ahora
order-price-was = Cambiado a mano: { $price } en la lista de precios
order-packages-counted = Cambiado a mano: { $packages } según la cuenta
order-many-without-a-price =
    { $count ->
        [one] { $count } renglón sin precio
       *[other] { $count } renglones sin precio
    }
order-many-changed =
    { $count ->
        [one] { $count } renglón cambiado
       *[other] { $count } renglones cambiados
    }
order-put-the-lines-that-are = Poner en el portapapeles los renglones enumerados, para una hoja de cálculo
order-add-a-line = Agregar un renglón
order-something-that-the-kit-does = Algo que el kit no cuenta
order-order-this-line-a-line = Pedir este renglón. Un renglón omitido se queda aquí, y cada salida lo dice.
order-packages-to-order-type-another = Paquetes por pedir. Escriba otro número en lugar de la cuenta; vacío vuelve a la cuenta.
order-for-one-package-in-this = Por un paquete, en la copia de la lista de precios de esta obra. Vacío: sin precio, y cada salida lo dice.
order-a-whole-number = Un número entero
order-such-as-184-50 = Por ejemplo 184.50
order-changed-in-this-job = , cambiado en esta obra
order-new-line = Renglón nuevo
order-piece = pieza
order-reason = Razón
order-take-instead = Tomar en su lugar
order-a-package-is-a = Un paquete es
order-needed-for = Se necesita para
order-take-the-line-away = Quitar el renglón
order-lines-are-on-the-clipboard = { $count ->
        [one] { $count } renglón está en
       *[other] { $count } renglones están en
    } el portapapeles.
order-order = Pedir { $number }
order-packages-of = Paquetes de { $number }
order-price-of = Precio de { $number }
order-leave-out = Omitir
order-reason-for = Razón de { $number }
order-as-counted = Según la cuenta: { $packages }
order-waste-of = Desperdicio de { $number }
order-own = Propio de la oficina: { $number }
order-another-part-for = Otra pieza por { $number }
order-the-kits-own = la del kit, { $price }
order-line = Renglón { $number }
order-take-line-away = Quitar el renglón { $number }
order-the-roof = El techo
order-covered-anew = Techado nuevo en
order-the-whole-roof = el techo entero
order-faces-with-modules = los faldones con módulos
order-nothing-but-the-array = nada más que el arreglo
order-some-faces-as-the-jobs = algunos faldones, como dice el archivo de la obra
order-old-layers-to-strip = Capas viejas por quitar
order-to-5-layers = De 0 a 5 capas
order-waste-as-for = Desperdicio como en
order-the-roof-as-drawn = el techo como está dibujado
order-waste = Desperdicio, %
order-by-whose-word = Según quién
order-the-offices-own-share-in = El porcentaje propio de la oficina, en lugar del que trae el kit. Vacío: como dice el kit.
order-to-100 = De 0 a 100 %
order-the-office-has-its-own = La oficina tiene el suyo
order-it-comes-back-from-the = Vuelve de la obra: está en la lista para llevar, y no se compra nada.
order-taken-with-the-order = Se toma con el pedido
order-sales-tax = Impuesto de venta, %
order-empty-not-known-which-every = Vacío: no se sabe, y cada salida lo dice. Nunca cuenta como cero.
order-what-became-of-the-price = Qué pasó con la lista de precios
order-on-top-of-the-cost = Además del costo
order-overhead-of-the-cost = Gastos generales, % del costo
order-markup-of-the-cost = recargo: % del costo y los gastos generales
order-margin-of-the-price = margen: % del precio
order-profit = Ganancia, %
order-stock-in-hand = Existencias
order-a-warehouse-list-csv-with = Una lista de almacén: CSV con las columnas number, amount y quizá note
order-none-what-lies-in-the = Ninguna. Lo que hay en el almacén se usa antes de comprar.
order-add-what-is-left = Agregar lo que sobró
order-such-as-40-100-ft = Por ejemplo 40, 100 ft, 200 sq ft
order-where-it-lies = Dónde está
order-remove = Quitar
order-prices-in = { $list }, { $date }; { $prices ->
        [one] { $prices } precio en
       *[other] { $prices } precios en
    } { $currency }
order-the-kit-has-no-part = El kit no tiene la pieza { $trim }.
order-part-of-leftover = Pieza del sobrante { $nth }
order-amount-of-leftover = Cantidad del sobrante { $nth }
order-note-of-leftover = Nota del sobrante { $nth }
order-the-rest-came-whole = El resto llegó completo
order-all-lines-that-nobody-has = Todo lo de los renglones que nadie ha contado llegó, y nada está dañado
order-a-pallet-list-with-the = Una lista de tarimas con la columna counted llena, como CSV
order-print-the-list = Imprimir la lista…
order-print-the-claim = Imprimir el reclamo…
order-copy-the-claim = Copiar el reclamo
order-the-claim-is-on-the = El reclamo está en el portapapeles.
order-about-the-delivery = Sobre la entrega
order-state = Estado
order-all-of-it-is-there = Está todo, y nada está dañado
order-of-lines-counted = { $counted } de { $of } renglones contados
order-count = Contar { $number }
order-lines-are-counted = { $lines ->
        [one] { $lines } renglón está contado
       *[other] { $lines } renglones están contados
    }.
order-all-of-came = Llegó todo lo de { $number }
order-came-of = Llegaron de { $number }
order-damaged-of = Dañados de { $number }
order-note-of = Nota de { $number }
order-at-most = Como máximo { $came }
order-waits = espera
order-waits-for = espera: { $one }
order-waits-for-and-more = espera: { $first } y { $rest } más
order-another-order = Otro pedido
order-keep-the-order-as-it = Conserve el pedido como está ahora, siga con la obra y vea aquí qué sube, qué baja y cuánto cuesta. O compárelo con otra obra.
order-keep-this-order-to-compare = Conservar este pedido para comparar
order-what-changes-from-here-on = Lo que cambie desde ahora se muestra abajo; el pedido conservado no se guarda con la obra
order-other-suppliers = Otros proveedores
order-add-the-price-list-of = Agregue la lista de precios de otro proveedor para ver este pedido a sus precios, renglón por renglón.
order-take-them-away = Quitar estos proveedores
order-as-it-was = { $job }, como estaba
order-from-to-the-job-as = De { $name } a la obra como está:
order-lines-sales-tax-delivery-lines = renglones { $lines }, impuesto de venta { $money }, entrega { $money2 }; renglones que todos tienen { $in_common }
order-each-line-where-it-is = Cada renglón donde sale más barato (•): { $cheapest }
order-number-a-line-needs-a = number: cada renglón necesita un número
order-packages-must-be-at-most = packages debe ser como máximo { $most_packages }, no { $packages }
order-must-be-0-to-with = { $field } debe ser de 0 a { $most } con cuatro decimales como máximo, no { $share }
order-counts-packages-must-be-at = counts.{ $number }.packages debe ser como máximo { $most_packages }, no { $packages }
order-counts-damaged-cant-be-damaged = counts.{ $number }.damaged: no puede haber { $damaged } dañados si llegaron { $packages }
order-is-no-count-of-packages = { $place }: { $text } no es un conteo de paquetes
order-is-counted-twice = { $place }: { $cell } está contado dos veces
order-number-a-leftover-needs-the = number: un sobrante necesita el número de su pieza
order-amount-must-be-0-or = amount debe ser 0 o más, no { $amount }
order-roof-layers-must-be-0 = roof.layers debe ser de 0 a 5, no { $layers }
order-waste-share-is-a-share = waste.{ $number }.share es una parte de 0 a 1, no { $share }
order-added-number-is-taken-twice = added[{ $index }].number: { $line } está dos veces

order-prices-taken =
    { $count ->
        [one] { $count } precio tomado
       *[other] { $count } precios tomados
    }

order-unknown-to-the-kit-left = { $taken }, { $unknown } que el kit no conoce, { $left_alone } sin tocar
order-not-in-the-kit = no están en el kit
order-as-2 = { $typed } como { $part }
order-read-as-the-kit-spells = leídos como los escribe el kit
order-twice-with-the-same-price = dos veces con el mismo precio
order-without-a-price-2 = sin precio
order-sheets-not-read = hojas no leídas
order-rows-of-titles = filas de títulos
order-parts-of-the-kit-without = piezas del kit sin precio
order-it-has-more-cells-than = { $place }: tiene más celdas que el encabezado; ponga entre comillas un número con coma
order-the-list-must-say-its = la lista debe decir su moneda: una fila sin número, con el nombre "currency"
order-a-row-without-a-number = { $place }: una fila sin número es una de { $says }, no { $other }
order-is-not-in-the-currency = { $text } no está en { $currency }, la moneda de la lista
order-a-price-cant-be-format = un precio no puede ser { $text } %: dé a la celda formato de número
order-a-tax-of-can-be = un impuesto de { $text } puede ser una fracción o un porcentaje: escríbalo con su signo, como 8.25 %
order-under-untaxed-write-yes-or = { $said } en "untaxed": escriba yes o no
order-has-a-price-already-take = { $part } ya tiene precio, { $package }; quite uno de los dos
order-the-list-has-no-price = { $place }: la lista no tiene precio de { $typed }, del que este es alterno
order-is-below-zero = { $amount } es menor que cero
order-is-more-than = { $amount } es mayor que { $most }
order-has-more-than-four-decimals = { $amount } tiene más de cuatro decimales
order-tax-percent-is-more-than = tax_percent: { $tax } es mayor que 100

## Lists beside the drawing

panels-stop = Alto
panels-caution = Precaución
panels-findings-none = Hallazgos: ninguno
panels-findings = Hallazgos: { $open }
panels-nothing-to-check-yet-draw = Todavía no hay nada que revisar: dibuje primero un faldón.
panels-the-roof-holds-together-place = El techo cuadra. Coloque un bloque, y las reglas se revisan mientras lo mueve.
panels-the-rules-of-this-book = Las reglas de este libro no encontraron nada. No son todo lo que puede estar mal: lea las precauciones.
panels-on-the-slope-in-plan = { $area } en la pendiente, { $area2 } en planta

panels-faces =
    { $count ->
        [one] { $count } faldón
       *[other] { $count } faldones
    }

panels-parts-without-a-price =
    { $count ->
        [one] {" "}+ { $count } pieza sin precio
       *[other] {" "}+ { $count } piezas sin precio
    }

panels-without-a-price-and-not = Sin precio, y fuera del total: { $numbers }
panels-order = { $line }, { $line2 }: { $amount }{ $delta }, pedir { $packages_words }
panels-none-left = { $number } { $name }: −{ $amount }, ya no se pide
panels-with-waste-in = con { $waste } % de desperdicio { $with_waste }, en { $packages }
panels-no-waste-added-in = sin desperdicio agregado, en { $packages }

## Parts of the house

part-parts-of-the-house = Partes de la casa
part-a-dormer-porch-ell-or = Una buhardilla, un porche, un ala o una chimenea: dibuje su huella sobre el techo
part-eaves = Aleros
part-how-high-the-roof-is = A qué altura está el techo sobre las líneas de los muros, desde el nivel de referencia de la obra.
part-top = Remate
part-height-of-its-top-above = Altura de su remate desde el nivel de referencia de la obra.
part-with-a-cricket = Con un desviador de agua
part-two-small-faces-upslope-of = Dos faldones pequeños pendiente arriba que desvían el agua a los lados.
part-cricket = Desviador
part-pitch-all-slopes = Pendiente, todas
part-overhang-all = Voladizo, todos
part-various = varios
part-own-eave = Alero propio
part-height-of-this-sides-plane = Altura del plano de este lado sobre su muro. Vacío: como el de la parte.
part-slope = vertiente
part-wall = muro
part-sides-wall-to-wall = Lados, de muro a muro
part-set-free = Convertir en faldones sueltos
part-turn-its-faces-and-those = Convertir sus faldones, y los de las partes que toca, en faldones sueltos que ya ninguna parte cambia
part-delete-the-part = Borrar la parte

part-the-kinds-of-edges-that =
    { $count ->
        [one] El tipo de un borde, puesto a mano, se fue con su lado. Deshacer lo recupera.
       *[other] Los tipos de { $count } bordes, puestos a mano, se fueron con sus lados. Deshacer los recupera.
    }

part-its-part = Su parte…
part-this-face-follows-from-a = Este faldón resulta de una parte de la casa: cambie aquí su lado.
part-a-part-keeps-its-last = Una parte conserva sus últimas tres esquinas: mejor borre la parte.
part-here = aquí
part-dormer = Buhardilla
part-porch = Porche
part-lean-to = Cobertizo
part-dormer-help = Una casita sobre una pendiente, con una pared al frente; su cumbrera entra en el techo.
part-porch-help = Una pendiente hacia afuera de la casa sobre una puerta; sube hasta el techo de la casa.
part-lean-to-help = Una pendiente hacia afuera de la casa, contra su pared y bajo sus aleros.
part-ell-help = Un ala a través de la casa; su cumbrera entra en el techo, con una limahoya a cada lado.
part-chimney-help = Una caja que atraviesa el techo, con un desviador detrás donde es ancha.
part-part = Parte { $name }
part-part-sides = Parte { $part }, { $kind }, { $sides } lados
part-corner-of-part = Esquina { $corner } de la parte { $part }
part-stands-on-side = Está sobre el lado { $side }
part-has = tiene
part-have = tienen
part-it = sí
part-them = sí
part-no-face-under-now-it = { $blocks } ya no { $verb } faldón debajo de { $blocks2 }: espere a que vuelva, o arrastre a otro faldón.
part-nothing-of-it-is-seen = No se ve nada de ella: queda debajo de otras partes. Suba sus aleros, o muévala.
part-no-cricket-stands-there-the = Ahí no cabe un desviador: la chimenea no tiene ningún lado que mire pendiente arriba. Apártela de la cumbrera.

## Pictures

picture-picture = Imagen
picture-lay-an-aerial-photo-or = Poner una foto aérea o un croquis bajo la planta, para dibujar encima
picture-picture-under-the-plan = Imagen bajo la planta
picture-picture-under-the-plan-2 = Imagen bajo la planta…
picture-choose-a-picture = Elegir una imagen…
picture-choose-another = Elegir otra…
picture-an-aerial-photo-or-a = Una foto aérea o un croquis para dibujar encima: PNG o JPEG. Elija uno, o suéltelo en la ventana.
picture-reading-the-picture-broke-off = La lectura de la imagen se interrumpió: elíjala otra vez.
picture-the-file-holds-another-picture = El archivo ya no tiene la misma imagen que cuando se puso aquí. Vea si todavía queda bien.
picture-the-file-holds-a-picture = El archivo tiene una imagen de forma distinta de la que se puso aquí, así que no se dibuja.
picture-take-it-as-it-is = Tomarla como está ahora
picture-look-again = Volver a mirar
picture-the-picture-is-being-read = Se está leyendo la imagen…
picture-this-picture-cant-be-laid = Esta imagen no se puede poner bajo la planta
picture-move-2 = Mover
picture-turn = Girar
picture-scale = Escala
picture-crop = Recortar
picture-drag-the-picture-or-move = Arrastre la imagen, o muévala con las flechas
picture-drag-around-the-pictures-middle = Arrastre alrededor del centro de la imagen; o haga clic en dos puntos de una línea que deba quedar a escuadra
picture-click-two-points-whose-distance = Haga clic en dos puntos cuya distancia conoce, y escríbala
picture-drag-over-the-part-that = Arrastre sobre la parte que se debe ver
picture-length-on-the-ground = Longitud en el terreno
picture-make-the-line-square = Poner la línea a escuadra
picture-turn-the-picture-so-that = Girar la imagen para que la línea corra exactamente este–oeste o norte–sur
picture-width = Ancho
picture-how-wide-the-whole-picture = Qué ancho tiene la imagen entera en el terreno. Conserva su proporción.
picture-turned-by = Girada
picture-degrees-clockwise = Grados en el sentido del reloj.
picture-where-the-middle-of-the = Dónde está el centro de la imagen entera.
picture-dimmed-by = Atenuada
picture-dim-the-picture = Atenuar la imagen
picture-cropped-in-percent-of-the = Recorte, en porcentaje de la imagen
picture-from-the-top = Desde arriba
picture-from-the-right = Desde la derecha
picture-from-the-bottom = Desde abajo
picture-show-all-of-it = Mostrarla toda
picture-take-it-away = Quitarla
picture-something-of-the-picture-must = Debe quedar algo de la imagen: escriba menos.
picture-the-picture-would-be-of = La imagen no tendría un tamaño razonable: haga clic en dos puntos más separados.
picture-type-a-number-from-0 = Escriba un número de 0 a 100.
picture-type-degrees-such-as-12 = Escriba grados, por ejemplo 12.5.
picture-lay-a-picture-under-the = poner una imagen bajo la planta
picture-move-the-picture = mover la imagen
picture-turn-the-picture = girar la imagen
picture-scale-the-picture = escalar la imagen
picture-crop-the-picture = recortar la imagen
picture-dim-the-picture-2 = atenuar la imagen
picture-take-the-changed-picture = tomar la imagen cambiada
picture-take-the-picture-away = quitar la imagen
picture-lies-under-the-plan-set = { $picture_name } está bajo la planta. Ponga su escala: haga clic en dos puntos cuya distancia conoce.
picture-on-the-ground-pixels = { $size } × { $size2 } en el terreno, { $pixels } × { $pixels2 } píxeles
picture-cant-be-shown = No se puede mostrar { $picture_name }
picture-click-a-point-then-another = Haga clic en un punto, y luego en otro cuya distancia conoce.
picture-click-the-other-point = Haga clic en el otro punto.
picture-type-how-far-apart-they = Escriba qué tan separados están en el terreno.
picture-a-picture-of-pixels-cant = no se puede escribir una imagen de { $value } × { $value2 } píxeles: no tiene área
picture-the-picture-cant-be-written = no se puede escribir la imagen como PNG: { $value }
picture-the-letters-of-the-picture = no se pueden leer las letras de la imagen
picture-a-picture-of-pixels-cant-hold = una imagen de { $value } × { $value2 } píxeles no alcanza para lo que debe llevar: hágala más grande

## Reports in text

report-pathways-for-the-fire-service =
    Pasos para los bomberos
    {""}

report-none-found =
    {"  "}no se encontró ninguno
    {""}

report-straight-up-the-slope = recto pendiente arriba
report-winding = sinuoso
report-wide-in-plan = {"  "}{ $on }: { $width } de ancho en planta, { $way }

report-wind-suction-a-screening =
    {""}
    Succión del viento, revisión preliminar
    {""}

report-zone-psf = zona { $zone } { $psf } psf
report-not-worked-out = {"  "}sin calcular: { $refused }
report-nothing-is-found-by-the = no hay hallazgo con la clave { $key }: tome una de `check --format json`
report-not-done = {"   "}NO SE HIZO: { $wrong }
report-changes-nothing = {"   "}no cambia nada
report-modules = {"   "}módulos { $before } → { $after }
report-findings-to-stop-for = {"   "}hallazgos por los que parar { $before } → { $after }
report-new = {"     "}nuevo: { $key }
report-no-more = {"     "}ya no: { $key }

report-modules-findings-to-stop-for =
    {""}
    { $modules ->
        [one] { $modules } módulo
       *[other] { $modules } módulos
    }, { $stops ->
        [one] { $stops } hallazgo por el que parar
       *[other] { $stops } hallazgos por los que parar
    }.

report-none = nada
report-stop = ALTO
report-caution = PRECAUCIÓN
report-note = NOTA
report-source = {"    "}fuente: { $source }
report-fix = {"    "}corrección: { $fix }
report-waiver-lapsed = {"    "}DISPENSA VENCIDA: { $lapsed }
report-waived-by-on = {"    "}DISPENSADO por { $by } el { $date }: { $reason }
report-key = {"    "}clave: { $key }

report-rule-book =
    { $job }
    Libro de reglas: { $book } ({ $date })
    { $based_on }

    {""}

report-to-stop-for-to-look =
    { $count } para parar, { $count2 } por revisar, { $count3 } por saber, { $waived } dispensados.
    {""}

report-what-was-checked =
    Lo que se revisó
    {""}

report-source-2 =
    {"  "}{ $title } [{ $rule }]
    {"    "}fuente: { $source }

report-what-was-not-checked =
    {""}
    Lo que no se revisó
    {""}

report-every-rule-of-this-program =
    {"  "}se revisó cada regla de este programa; no son todo lo que puede estar mal
    {""}

report-because =
    {"  "}{ $title } [{ $rule }]
    {"    "}porque: { $why }

report-crew-checklist-after-the-rule =
    { $job }
    Lista de verificación, según el libro de reglas { $rule_book }
    {""}

report-source-3 =
    {"  "}[ ] { $line }
    {"      "}fuente: { $source }

report-one-other =
    uno:  { $one }, { $date }
    otro: { $other }, { $date2 }
    {""}

report-fields-differ =
    {""}
    { $differences ->
        [one] { $differences } campo difiere
       *[other] { $differences } campos difieren
    }

report-one-other-2 =
    {""}
    { $field }
    {"  "}uno:  { $said }
    {"  "}otro: { $said2 }

report-kw-kg-of-modules-roof =
    {""}
    { $modules_words }, { $kilowatts } kW, { $modules_kg } kg de módulos
    Techo: { $area_text } en planta, { $area_text2 } en la pendiente; arreglo { $area_text3 }

    Faldones

report-outline-is-wrong-see-the = {"  "}(contorno equivocado: vea los hallazgos)
report-falls-in-plan-on-the = {"  "}{ $face } { $pitch }  cae hacia { $downslope } { $area_text } en planta { $area_text2 } en la pendiente{ $state }

report-lines-of-the-roof =
    {""}
    Líneas del techo
    {""}

report-blocks =
    {""}
    Bloques
    {""}

report-on-all-modules-are-switched = {"  "}{ $block } en { $face }: todos los módulos están quitados
report-on-base-rail-its-left = {"  "}{ $block } en { $face }: { $rows_words }, { $modules_words }; riel base a { $from }, su extremo izquierdo a { $from2 } sobre él

report-findings =
    {""}
    Hallazgos
    {""}

report-none-against-this-rule-book =
    {"  "}ninguno según este libro de reglas

    {""}

report-rows-of =
    { $count ->
        [one] { $count } fila de { $each }
       *[other] { $count } filas de { $each }
    }

report-roof =
    { $job }
    Techo
    {""}

report-squares-100-ft-no-waste = Cuadros (100 ft², sin desperdicio)

report-faces-pitch-falls-in-plan =
    {""}
    Faldones              pendiente cae a           en planta    en pendiente  cuadros
    {""}

report-edges-true-length =
    {""}
    Bordes, longitud real
    {""}

report-the-roof-does-not-hold =
    {""}
    El techo no cuadra en { $problems ->
        [one] { $problems } lugar
       *[other] { $problems } lugares
    }: vea los hallazgos.

report-heights-are-above-the-level =
    {""}
    Las alturas se cuentan desde el nivel de referencia de la obra.
    { $caution }

report-to = de { $least } a { $most }
report-border = borde
report-the-pathway-for-the-fire = el paso para los bomberos
report-another-block = otro bloque
report-block = el bloque { $name }
report-the-setback-from-the = el retiro de { $kind }
report-the-room-for-flashing-beside = el espacio del tapajuntas junto a la línea de { $kind }
report-the-courses-below-the-ridge = las hiladas bajo la cumbrera
report-the-deck-that-the-base = el entablado que necesita el riel base
report-the-room-below-the-base = el espacio debajo del riel base en la línea de { $kind }
report-the-fire-services-room-beside = el espacio de los bomberos junto a la línea de { $kind }
report-the-edge-of-the-face = el borde del faldón
report-the-room-beside-the = el espacio junto a la línea de { $kind }
report-wind-kind = { $kind } del { $wind }

## Raising a roof

roof-roofs-cant-be-told-apart = no se pueden distinguir los techos cerca de x { $near } m, y { $near2 } m: mueva ahí una esquina unos milímetros
roof-a-rise-in-12 = una subida en 12
roof-a-level-side-never-closes = un lado a nivel nunca cierra sobre la huella; dele una pendiente o hágalo hastial
roof-an-eave-height = una altura de alero
roof-give-a-height-within-10 = dé una altura de menos de 10 km
roof-an-overhang = un voladizo
roof-give-0-or-more-up = dé 0 o más, hasta 100 m
roof-the-footprint-cant-be-used = la huella no se puede usar: { $outline_words }
roof-has-sides-but-are-described = { $ring_words } tiene { $corners } lados, pero se describen { $given }: describa cada uno
roof-has-of = { $side_words } tiene { $what } de { $value }: { $remedy }
roof-the-overhangs-around-run-into = los voladizos alrededor { DE($side_words) } chocan entre sí en x { $near } m, y { $near2 } m: hágalos más angostos o dibuje la esquina más simple
roof-nothing-slopes-over-the-part = ningún faldón sube sobre la parte junto { A($side_words) }: dele a ese lado, o a uno cercano, una pendiente
roof-the-roof-cant-be-worked = el techo no se puede calcular cerca de x { $near } m, y { $near2 } m, junto a la esquina { $corner } { DE($ring_words) }: mueva esa esquina unos milímetros
roof-side-of = el lado { $side } { DE($ring_words) }
roof-corner-of-is-no-usable = la esquina { $corner } { DE($ring_words) } no es un número utilizable: escríbala otra vez
roof-has-fewer-than-three-corners = { $ring_words } tiene menos de tres esquinas: dibuje al menos tres
roof-corner-of-lies-on-the = la esquina { $corner } { DE($ring_words) } está sobre la anterior: borre una de las dos
roof-encloses-nothing-move-its-corners = { $ring_words } no encierra nada: separe sus esquinas
roof-two-sides-meet-at-x = dos lados se tocan en x { $at } m, y { $at2 } m: sepárelos
roof-is-not-inside-the-outline = { $ring_words } no está dentro del contorno, o está dentro de otro hueco: muévalo

## The rule book

rulebook-fire-access-must-be-0 = fire_access.{ $field } debe ser 0 o más y menos de 100 m
rulebook-fire-access-ridge-is-a = fire_access.ridge.{ $field } es una parte de 0 a 1, no { $share }
rulebook-say-where-the-limit-comes = diga de dónde viene el límite: una sección, una certificación, o “práctica común, sin fuente”
rulebook-this-rule-book-has-no = este libro de reglas no tiene el límite { $field }
rulebook-the-limit-is-of-another = el límite { $field } es de otro tipo
rulebook-setbacks-on-the-slope = Retiros, en la pendiente
rulebook-from = Desde { $kind }
rulebook-clearances-on-the-slope = Holguras, en la pendiente
rulebook-to = Hasta { $kind }
rulebook-above = Arriba de
rulebook-below = Debajo de
rulebook-clearances-by-side-where-more = Holguras por lado, donde son mayores
rulebook-the-array = El arreglo
rulebook-full-courses-left-to-the = Hiladas enteras que quedan hasta la cumbrera
rulebook-share-of-a-lower-edge = Parte de un borde inferior que engancha
rulebook-pathways = Pasos
rulebook-least-width-of-a-pathway = Ancho mínimo de un paso
rulebook-one-on-the-street-side = Uno del lado de la calle
rulebook-exempt-up-to-a-pitch = Exento hasta una pendiente de
rulebook-beside-a-ridge-smaller-array = Junto a una cumbrera, arreglo menor
rulebook-beside-a-ridge-larger-array = Junto a una cumbrera, arreglo mayor
rulebook-smaller-array-share-of-the = Arreglo menor: parte del techo
rulebook-the-same-with-sprinklers = Lo mismo, con rociadores
rulebook-beside-a-hip-or-valley = Junto a una limatesa o limahoya
rulebook-free-below-an-escape-window = Libre bajo una ventana de escape, al menos
rulebook-roof-integrated-is-exempt = Integrado al techo: exento
rulebook-least-pitch-for-shingles = Pendiente mínima para tejas
rulebook-one-underlayment-from = Una sola membrana base desde
rulebook-cricket-behind-wider-than = Desviador si el ancho pasa de
rulebook-side-flashing-to-a-valleys = Tapajuntas lateral a la línea de limahoya
rulebook-side-flashing-to-a-hips = Tapajuntas lateral a la línea de limatesa
rulebook-fire-class-where-a-lot = Clase de fuego con el lindero a menos de
rulebook-ice-barrier-inside-the-wall = Barrera contra hielo hacia adentro del muro
rulebook-ice-barrier-steep-from = Barrera contra hielo, techo empinado desde
rulebook-ice-barrier-steep-length = Barrera contra hielo, longitud en techo empinado
rulebook-edition = Edición
rulebook-wind-factor = Factor de viento
rulebook-dead-load-factor = Factor de carga muerta
rulebook-least-pressure = Presión mínima
rulebook-loads-is-out-of-range = loads.{ $field } está fuera de rango
rulebook-room-beside-hips-and-valleys = Espacio junto a limatesas y limahoyas
rulebook-room-below-escape-windows = Espacio bajo ventanas de escape
rulebook-exemption-of-roof-integrated-arrays = Exención de arreglos integrados al techo
rulebook-side-flashing-to-valleys = Tapajuntas lateral a limahoyas
rulebook-side-flashing-to-hips = Tapajuntas lateral a limatesas
rulebook-fire-class-near-a-lot = Clase de fuego cerca de un lindero
rulebook-no-book-that-comes-with = ningún libro incluido en el programa tiene { $part }
rulebook-this-rule-book-has-no-place = este libro de reglas no tiene lugar para { $part }
rulebook-roofing-must-be-0-or = roofing.{ $field } debe ser 0 o más y menos de 100 m
rulebook-must-be-0-or-more = { $field } debe ser 0 o más y menos de 100 m
rulebook-hooked-share-is-a-share = hooked_share es una parte de 0 a 1

## Rules, findings and checklist

rules-flashing-from-the = tapajuntas a { $small } de la línea de { $kind }
rules-of-courses-left-below-the = quedan { $small } de hiladas bajo la cumbrera
rules-the-base-rail-ends-with = el riel base termina con el entablado
rules-the-base-rail-above-the = el riel base { $small } arriba de la línea de { $kind }
rules-in-plan-from-the-for = a { $small } en planta de la línea de { $kind }, para los bomberos
rules-beside-the-strip-below = junto a la franja bajo { $penetration }
rules-from-the = a { $small } de la línea de { $kind }
rules-rule-book = Libro de reglas…
rules-save-the-rule-book-as = Guardar el libro de reglas como…
rules-compare-with-a-rule-book = Comparar con un libro de reglas suyo…
rules-crew-checklist = Lista de verificación
rules-pathways-for-the-fire-service = Pasos para los bomberos
rules-house-and-place = Casa y lugar
rules-what-rules-need-to-know = Lo que las reglas necesitan saber. Lo que no se sabe no se supone: las reglas que lo necesitan dicen que no se revisaron.
rules-the-house = La casa
rules-fasteners-of-the-array = Fijaciones del arreglo
rules-sprinklers-throughout = Rociadores en todo
rules-an-automatic-sprinkler-system-in = Un sistema automático de rociadores en toda la casa. Sí o no; la mayoría de las casas viejas no lo tienen (de memoria). Con él, un arreglo más grande puede conservar el espacio menor junto a la cumbrera. Fuente: IRC R324.6.2.1; los planos o el oficial de bomberos.
rules-detached-nobody-lives-in-it = Aparte de la casa, sin habitar
rules-a-shed-or-carport-that = Un cobertizo o cochera separado de la casa. Sí o no; una casa no cuenta como tal. Fuente: IRC R324.6, excepciones.
rules-streets-lie-to = Calles hacia
rules-the-ways-in-which-a = Hacia dónde queda una calle o entrada de autos: grados desde el norte en el sentido del reloj, o rumbos, separados por comas: S, 90. La mayoría de las casas tienen una o dos (de memoria). Fuente: IRC R324.6.1; el plano del terreno.
rules-no-roof-work = Nadie trabaja arriba
rules-who-of-the-fire-service = Quién de los bomberos determinó que nadie trabajará en este techo, y cuándo; vacío donde nadie lo hizo, como en la mayoría de las casas. Fuente: IRC R324.6, excepciones; guarde la carta con el permiso.
rules-listing-read-by = Quién la leyó
rules-who-read-the-listing-by = Quién leyó la certificación que exime a este arreglo integrado del acceso de bomberos, y cuándo; vacío donde nadie lo hizo. Fuente: la certificación del producto y la edición adoptada donde está la casa.
rules-from-the-ground-to-the = Del suelo al alero, una longitud; 9 ft en un piso, 18 ft en dos (de memoria). Fuente: medido en el sitio.
rules-least-width = Ancho mínimo
rules-the-least-width-of-the = El ancho mínimo de la casa en planta, una longitud; de 24 a 40 ft es lo usual (de memoria). Determina qué tan anchas son las franjas de succión fuerte del viento. Fuente: medido en el sitio; ASCE/SEI 7, capítulo 30.
rules-how-far-the-eave-reaches = Cuánto sobresale el alero del muro exterior, en planta; de 12 a 24 in es lo usual (de memoria). Determina hasta dónde sube la barrera contra hielo. Fuente: medido en el sitio; IRC R905.1.2.
rules-wind-mph = Viento, mph
rules-basic-wind-speed-for-the = Velocidad básica del viento para la categoría de riesgo de la casa, millas por hora, ráfaga de 3 segundos; a menudo de 105 a 120 tierra adentro y más junto a la costa (de memoria). Fuente: los mapas de ASCE/SEI 7, capítulo 26, o el departamento de construcción.
rules-by-the-ground-upwind-b = Según el terreno del lado de donde viene el viento: B es ciudad o bosque, C campo abierto, D llano junto a agua abierta. La mayoría de las casas en ciudad son B (de memoria). Fuente: ASCE/SEI 7, sección 26.7.
rules-b-town-wood = B: ciudad, bosque
rules-c-open-country = C: campo abierto
rules-d-open-water = D: agua abierta
rules-elevation = Elevación
rules-of-the-ground-above-sea = Del terreno sobre el nivel del mar, una longitud; si se deja vacía, el aire cuenta como al nivel del mar, que es el lado seguro. Fuente: un mapa topográfico; ASCE/SEI 7, sección 26.9.
rules-snow-psf = Nieve, psf
rules-ground-snow-load-pounds-a = Carga de nieve en el suelo, en libras por pie cuadrado, como la da la edición del libro; 0 en el sur, de 20 a 50 donde los inviernos son fríos (de memoria). Fuente: ASCE/SEI 7, capítulo 7, o el departamento de construcción.
rules-one-holds-lb = Fijación, lb
rules-what-one-fastener-of-the = Lo que una fijación del arreglo aguanta contra el levantamiento, en libras, valor admisible: ensayado o certificado. No hay un valor típico de que fiarse. Fuente: la certificación o el informe de ensayo del fabricante para este entablado.
rules-deck-each-ft = Su entablado, ft²
rules-deck-under-one-such-fastener = Entablado que toca a cada fijación, pies cuadrados; de 2 a 6 es lo usual (de memoria). Fuente: el plano de fijaciones del fabricante.
rules-the-deck = El entablado
rules-the-covering = El recubrimiento
rules-sheathing = Tablero
rules-how-thick-the-sheathing-is = Qué grueso es el tablero, una longitud; de 7/16 a 5/8 in es lo usual (de memoria). Fuente: medido en un borde o un respiradero.
rules-made-of = Hecho de
rules-what-the-sheathing-is-made = De qué está hecho el tablero; OSB o triplay en la mayoría de las casas desde los años 1970 (de memoria). Fuente: visto desde abajo.
rules-rafters-every = Vigas cada
rules-from-rafter-to-rafter-middle = De viga a viga, de centro a centro; 16 o 24 in es lo usual (de memoria). Fuente: medido desde abajo.
rules-its-state = Su estado
rules-what-state-the-deck-is = En qué estado está el entablado, una vez que alguien lo revisó desde abajo o ya sin las tejas viejas. Fuente: práctica común, sin fuente.
rules-sound = sano
rules-needs-repair = necesita reparación
rules-metal-along-eaves-and-rakes = Metal a lo largo de aleros y bordes inclinados que aparta el agua del entablado. Fuente: IRC R905.2.8.5 (2018); visto en el sitio.
rules-there-and-stays = está, y se queda
rules-goes-on-with-this-job = se pone en esta obra
rules-the-class-against-fire-of = La clase de fuego del recubrimiento fuera del arreglo; la mayoría de las tejas de fibra de vidrio son clase A (de memoria). Fuente: el paquete de las tejas; UL 790 o ASTM E108.
rules-law-asks = Clase exigida
rules-the-class-that-the-law = La clase que pide la ley donde está la casa; “ninguna clase” donde no pide ninguna. Fuente: IRC R902.1 (2018); el departamento de construcción.
rules-lot-line = Lindero
rules-from-the-nearest-edge-of = Del borde más cercano del entablado a un lindero, en planta. A menos de 3 ft se pide una clase de fuego. Fuente: IRC R902.1 (2018); el plano del terreno.
rules-zones-of-wind-suction = Zonas de succión del viento
rules-zones-of-components-and-cladding = Zonas de componentes y revestimientos según ASCE/SEI 7, con la presión hacia afuera en cada una: una revisión preliminar, nunca un diseño. Necesita viento, exposición, altura del alero y ancho mínimo en Casa y lugar.
rules-zone-psf = zona { $zone }: { $psf } psf

rules-not-drawn =
    {""}
    Sin dibujar:{" "}

rules-a-screening-design-by-a =
    {""}
    Revisión preliminar. El diseño es de un ingeniero con licencia.

rules-type-a-number-such-as = Escriba un número, por ejemplo 115.
rules-type-a-number-from-to = Escriba un número de { $least } a { $most }.
rules-this-length-cant-be-right = Esta longitud no puede estar bien: debe ser 0 o más y menos de 10,000 ft.
rules-the-rule-book-could-not = No se pudo guardar el libro de reglas
rules-book = Libro
rules-based-on = Basado en
rules-limits = Límites
rules-rules = Reglas
rules-show = Mostrar
rules-every-limit-of-the-book = Cada límite del libro, con su fuente; se puede cambiar, guardar y comparar.
rules-change-the-source = Cambiar la fuente
rules-no = no
rules-compare-with = Comparar con
rules-choose-a-book = elija un libro
rules-from-a-file = De un archivo…
rules-the-two-books-say-the = Los dos libros dicen lo mismo.
rules-this-book = este libro
rules-the-other = el otro
rules-a-rule-that-is-off = Una regla desactivada aparece en cada informe, en lo que no se revisó.
rules-type-a-share-such-as = Escriba una parte, por ejemplo 33 % o 0.33.
rules-choose-another-rule-book = elegir otro libro de reglas
rules-change-the-books-heading = cambiar el encabezado del libro
rules-change-the-rule-book = cambiar el libro de reglas: { $row }
rules-change-the-source-of = cambiar la fuente: { $row }
rules-on = activar
rules-off = desactivar
rules-switch-the-rule = { $on } la regla: { $title }
rules-two-on-the-roof-one = dos en el techo, uno por cada plano
rules-on-each-slope-with-modules = uno en cada vertiente con módulos
rules-in-doubt-quoted-from-memory = En duda: citado de memoria. Confírmelo con el texto.
rules-in-doubt-the-code-leaves = En duda: el código lo deja abierto. Pregunte al oficial.
rules-read-in-the-text = leído en el texto
rules-the-text-leaves-it-open = el texto lo deja abierto
rules-from-memory = de memoria
rules-the-makers-word = palabra del fabricante
rules-the-offices-own = propio de la oficina
rules-common-practice = práctica común
rules-how-far-it-can-be = Hasta dónde se puede confiar
rules-none-in-this-book = ninguno en este libro
rules-no-limit-of-its-own = Sin límite propio: los módulos deben quedar en el faldón y fuera del hueco.
rules-parts-of-this-book = Partes de este libro
rules-a-part-that-the-book = Una parte que el libro no tiene no se revisa, y cada informe lo dice. Una parte que se agrega viene con los números y fuentes de los libros propios del programa: léalos, y cambie lo que su localidad haya enmendado.
rules-puts-this-part-in-as = Agrega esta parte como la tienen los libros propios del programa
rules-takes-this-part-out-what = Quita esta parte: lo que pide ya no se revisa
rules-put-in = Agregar: { $part }
rules-take-out = Quitar: { $part }

rules-fields-differ-from =
    { $count ->
        [one] { $count } campo difiere de “{ $other }”.
       *[other] { $count } campos difieren de “{ $other }”.
    }

rules-its-source = , su fuente
rules-how-far-its-source-can = , hasta dónde se puede confiar en su fuente
rules-only-what-is-held = Solo lo seleccionado
rules-only-findings-on-the-face = Solo hallazgos del faldón, bloque o penetración seleccionado
rules-show-all = Mostrar todos
rules-to-stop-for = { $count } para parar
rules-to-look-at = { $count } por revisar
rules-to-know = { $count } por saber

rules-findings-are-hidden-by-the =
    { $count ->
        [one] El filtro oculta { $count } hallazgo.
       *[other] El filtro oculta { $count } hallazgos.
    }

rules-what-was-checked-of-rules = Lo que se revisó: { $on } de { $checked } reglas
rules-against-these-rules-are-not = Según { $book }. Estas reglas no son todo lo que puede estar mal.
rules-not-checked = Sin revisar: { $unwrap_or_default }
rules-pathway = paso { $width }
rules-pathway-winding = paso { $width }, sinuoso
rules-the-checklist-is-on-the = La lista de verificación está en el portapapeles.
rules-from-the-rule-book-and = Del libro de reglas y del techo dibujado. Se imprime con la obra; no reemplaza el plan de trabajo de la cuadrilla.
rules-cost-by-part-of-the = Costo por parte del pedido
rules-bar-chart-of-the-cost = Gráfica de barras del costo por etapa de trabajo
rules-as-rows-are-added-from = Al agregar filas desde el alero
rules-lines-without-a-price-are = Se omiten los renglones sin precio. Grupos y etapas van sin impuesto ni entrega; el total lo incluye todo.
rules-bar-chart-of-the-cost-by = Gráfica de barras del costo por grupo
rules-bar-chart-of-the-total = Gráfica de barras del total por número de módulos
rules-sketch = Croquis: { $title }
rules-as-the-house-is-drawn = Según la casa dibujada: { $length }
rules-blocks-lie-on-a-face = Los bloques están en un faldón de contorno válido
rules-nothing-can-be-placed-measured = Nada se puede colocar, medir ni contar en un contorno que se cruza a sí mismo.
rules-geometry-no-deck-can-be = geometría: ahí no se puede medir ningún entablado
rules-faces-are-steep-enough-for = Los faldones tienen pendiente suficiente para el kit
rules-lapped-flashing-sheds-water-only = Los tapajuntas solapados solo desalojan el agua donde esta corre lo bastante rápido.
rules-modules-lie-on-their-face = Los módulos están sobre su faldón
rules-a-module-is-screwed-to = Un módulo se atornilla al entablado de abajo: donde no hay entablado no hay módulo.
rules-geometry-no-deck-is-there = geometría: ahí no hay entablado
rules-no-module-lies-on-another = Ningún módulo está encima de otro
rules-two-modules-cant-have-one = Dos módulos no pueden tener un mismo lugar.
rules-geometry-two-modules-cant-have = geometría: dos módulos no pueden tener un mismo lugar
rules-modules-keep-each-edges-setback = Los módulos respetan el retiro de cada borde
rules-edges-need-room-for-drip = Los bordes necesitan lugar: para goterón, tira de arranque y tapajuntas, para el agua, para pisar, para los bomberos.
rules-modules-keep-clear-of-what = Los módulos se apartan de lo que atraviesa el techo
rules-a-boot-a-curb-or = Una bota, un marco de tragaluz o una chimenea necesita sus propios tapajuntas, y lugar para repararlos.
rules-flashing-keeps-off-valleys-and = Los tapajuntas se apartan de limahoyas y limatesas
rules-a-nail-in-a-valley = Un clavo en el forro de una limahoya deja entrar agua, y un tapajuntas bajo las tapas de limatesa las levanta.
rules-full-courses-are-left-between = Quedan hiladas enteras entre el tapajuntas superior y la cumbrera
rules-the-course-above-laps-the = La hilada de arriba cubre el tapajuntas superior, y la tapa de cumbrera necesita una hilada en que apoyarse.
rules-the-base-rail-is-where = El riel base está donde lo permite el kit
rules-the-rail-carries-the-block = El riel lleva el bloque: necesita entablado debajo de todo, lugar abajo para la tira de arranque y lugar para dilatarse.
rules-the-deck-is-one-that = El entablado es de los que acepta el kit para sus tornillos
rules-all-that-holds-the-array = Lo único que sostiene el arreglo son tornillos en el entablado.
rules-modules-hook-into-the-row = Los módulos se enganchan en la fila de abajo
rules-the-row-below-holds-a = La fila de abajo sostiene un módulo; donde no hay nada debajo, nada lo sostiene.
rules-rows-and-base-rail-are = Las filas y el riel base se colocan como dice el kit
rules-modules-interlock-only-in-the = Los módulos se enlazan solo de las maneras para las que se hicieron, y a un riel entre hiladas no se le puede poner tapajuntas.
rules-the-reveal-is-within-the = La separación está en el rango del kit
rules-modules-need-room-to-grow = Los módulos necesitan lugar para dilatarse al sol, y los sellos un espacio que puedan cerrar.
rules-blocks-leave-room-for-each = Los bloques dejan lugar para los tapajuntas de los demás
rules-side-flashing-of-two-blocks = Los tapajuntas laterales de dos bloques no deben encimarse, y alguien debe poder repararlos.
rules-whose-outline-does-not-hold = { $face_of }, cuyo contorno no cierra bien. Corrija primero el contorno
rules-face-which-is-gone-its = el faldón { $rests }, que ya no existe: ese lado de la casa ya no tiene techo. Ponga el bloque en otro faldón, o recupere el faldón
rules-a-face-that-the-job = un faldón que la obra no tiene. Ponga el bloque en otro faldón
rules-an-outline-with-defects = un contorno con defectos
rules-no-face = ningún faldón
rules-lies-on-nothing-on-it = { $sentence } está en { $what }; hasta entonces no se revisa nada de él.
rules-a-face-with-a-sound = un faldón con contorno válido
rules-lies-on-which-is-the = { $sentence } está en { $face_of }, que tiene pendiente { $measured }; el kit pide { $required } o más. Este kit no puede ir en este faldón: elija un faldón más inclinado, u otro kit que su fabricante admita aquí.
rules-lies = está
rules-lies-with = está con { $modules }
rules-border = el contorno
rules-up-to-over-the-of = { $sentence } { $reach } hasta { $over } fuera { DE($edge) } { DE($face_of) }.
rules-over = { $over } fuera
rules-all-on-the-face = todo dentro del faldón
rules-lies-up-to-over = { $sentence } está hasta { $deep } encima { DE($block) }.
rules-over-2 = { $deep } encima
rules-beside-each-other = uno junto a otro
rules-of-are-shifted-up-to = { $sentence } { DE($block_of) } se corren hasta { $deep } sobre el módulo anterior de su fila.
rules-the-of = { $the_edge } { DE($face_of) }
rules-the-border-of = el contorno { DE($face_of) }
rules-a-pathway = un paso
rules-is-from-the-limit-asks = { $sentence } está a { $near } { DE($from) }; el límite “{ $rule }” pide { $required }.
rules-is-from-the-of = está a { $near } { DE($the_kind) } { DE($on) }
rules-lies-on-or-over-the = está sobre o más allá { DE($the_kind) } { DE($on) }
rules-the-book-asks = { $sentence } { $is }; el libro pide { $required }.
rules-is-from = está a { $near } { DE($the_penetration) }
rules-lies-on = está encima { DE($the_penetration) }
rules-is-above = está { $near } arriba { DE($the_penetration) }
rules-is-below = está { $near } debajo { DE($the_penetration) }
rules-it-is-to-have = debe tener
rules-the-book-asks-2 = el libro pide
rules-sentence-is = { $sentence } { $is }; { $whose } { $required }.
rules-comes-within-of-the = llega a { $near } { DE($the_kind) }
rules-lies-on-the = está sobre { $the_kind }
rules-the-side-flashing-of-wide = El tapajuntas lateral { DE($block_of) }, de { $length } de ancho, { $comes } { DE($face_of) }; el libro pide { $required }.
rules-whole-on-its-lines = { $courses } { $courses2 } ({ $length } en sus líneas)
rules-no-whole-course-on-the = { $too_short } (ninguna hilada entera en las líneas)

rules-whole-courses-on-the-lines =
    { $count ->
        [one] { $too_short } ({ $count } hilada entera en las líneas)
       *[other] { $too_short } ({ $count } hiladas enteras en las líneas)
    }

rules-is-left = Quedan { $measured }
rules-nothing-is-left = No queda nada
rules-between-the-head-flashing-of = { $left } entre el tapajuntas superior { DE($block_of) } y la cumbrera { DE($face_of) }; el libro pide { $required }.
rules-the-base-rail-of-is = El riel base { DE($block_of) } está { $near } arriba del alero { DE($face_of) }; el kit pide { $required }.
rules-the-base-rail-of-reaches = El riel base { DE($block_of) } sobresale { $over } del entablado { DE($face_of) }. Mueva el bloque hasta que haya entablado debajo de todo.
rules-beyond = sobresale { $over }
rules-all-on-the-deck = todo sobre el entablado
rules-the-base-rail-of-is-long = el riel base { DE($block_of) } mide { $long } sin interrupción; el kit permite { $required }. Divida el bloque, o deje un espacio en el riel donde lo muestra el fabricante.
rules-the-sheathing-the-kit-asks = El tablero { $what } { $measured }; el kit pide { $required }. Consulte al fabricante, o refuerce el entablado antes de poner el arreglo.
rules-thick = { $too_short } de grueso
rules-is = tiene
rules-is-of = es de
rules-or = {" "}u{" "}
rules-spans = cubre claros de
rules-of-the-deck-the-job = Del entablado la obra no dice { $unknown }: eso no se revisó.
rules-a-measurement-on-site = una medida tomada en el sitio

rules-hook =
    { $count ->
        [one] { $count } módulo se engancha
       *[other] { $modules } se enganchan
    }

rules-in-row-of-into-the = En la fila { $row_of } { DE($block_of) } { $hooks } en la fila de abajo con { $hooked } del borde inferior como mínimo; el libro pide { $required }.
rules-of-the-lower-edge = { $hooked } del borde inferior
rules-the-joints-of-row-of = Las juntas de la fila { $row_of } { DE($block_of) } están { $aside } corridas de las de abajo; el kit las coloca { $required }.
rules-aside = { $aside } corridas
rules-in-line = en línea
rules-half-a-module-aside = medio módulo corridas
rules-to = de { $length } a { $length2 }
rules-the-base-rail-of-is-above = El riel base { DE($block_of) } está { $above } arriba de una línea de hilada; el kit permite { $required }.
rules-above-a-course-line = { $above } arriba de una línea de hilada
rules-the-reveal-of-is-the = La separación { DE($block_of) } es { $measured }; el kit permite { $allowed }.
rules-is-from-the-kit-asks = { $sentence } está a { $near } { DE($block) }; el kit pide { $required } para los tapajuntas de ambos.
rules-from-the-eave-to-inside = Del alero a { $length } hacia adentro del muro exterior, donde el lugar tiene hielo en los aleros; indique el voladizo para calcular la longitud en la pendiente.
rules-on-where-the-place-has = En { $names } ({ $pitch }), donde el lugar tiene hielo en los aleros: { $length } pendiente arriba desde el alero.
rules-the-ridge-is-clear-for = La cumbrera está libre para los bomberos
rules-fire-fighters-open-the-roof = Los bomberos abren el techo a lo largo de la cumbrera para dejar salir calor y humo.
rules-two-pathways-lead-to-the = Dos pasos llevan a la cumbrera, en planos separados
rules-who-works-on-a-roof = Quien trabaja en un techo necesita un camino para subir, y otro para bajar.
rules-each-plane-with-modules-has = Cada plano con módulos tiene un paso
rules-whoever-must-reach-the-array = Quien debe llegar al arreglo o a la cumbrera de arriba necesita un camino junto a él.
rules-one-pathway-is-on-a = Un paso está del lado de la calle o entrada de autos
rules-a-ladder-is-raised-where = La escalera se levanta donde puede pararse un camión de bomberos.
rules-a-hip-or-valley-between = Una limatesa o limahoya entre módulos está libre
rules-a-hip-between-two-arrays = Una limatesa entre dos arreglos es un camino hacia arriba, y una limahoya, un camino de paso.
rules-the-roof-below-an-escape = El techo debajo de una ventana de escape está libre
rules-who-climbs-out-of-a = Quien sale por una ventana, y quien llega a ayudar, necesita un camino en el techo debajo de ella.
rules-in-plan = { $near } en planta
rules-at-least-in-plan = al menos { $required } en planta
rules-leaves-beside-the-ridge-of = { $sentence } deja { $near } junto a la cumbrera { DE($face_of) }, en planta; el arreglo cubre { $share } % del área del techo en planta, para lo cual el código pide { $required }.
rules-leaves-beside-the-of-in = { $sentence } deja { $near } junto { A($the_kind) } { DE($face_of) }, en planta, y hay módulos también del otro lado; el código pide { $required }.
rules-lies-into-the-strip-below = { $sentence } está { $over } dentro de la franja bajo { $penetration }, que se mantiene libre con { $wide } de ancho hasta el borde inferior.
rules-into-it = { $over } adentro
rules-free-below-the-window = { $wide } libres bajo la ventana
rules-no-ridge-to-go-to = no hay cumbrera adonde llegar
rules-each-wide-in-plan = 2, cada uno de { $width } de ancho en planta
rules-found = encontrados: { $found }
rules-the-roof-as-drawn-has = {" "}El techo como está dibujado no tiene lugar para dos, se coloque lo que se coloque: dibuje sus otros planos, o pregunte al oficial de bomberos.
rules-no-removal-of-modules-opens = {" "}Los pasos no se abren quitando módulos: pregunte al oficial de bomberos.
rules-of-2-pathways-of-lead = { $found } de 2 pasos de { $width } llevan del borde más bajo a la cumbrera en planos separados.{ $none }
rules-no-plane-of-this-roof = Ningún plano de este techo tiene cumbrera: el código pide dos pasos de { $width } del borde más bajo a la cumbrera y no dice qué vale aquí. No se juzga: pregunte al oficial de bomberos.
rules-no-removal-of-modules-along = {" "}El paso no se abre quitando módulos en una sola franja: deje lugar junto al arreglo.
rules-has-of-pathways-of-from = { $on } tiene { $found } de { $asked } pasos de { $width } de su borde más bajo a la cumbrera.{ $none }
rules-wide-in-plan = { $asked }, de { $width } de ancho en planta
rules-has-no-ridge-and-no = { $on } no tiene cumbrera, y ningún plano vecino la tiene: el código pide un paso del borde más bajo a la cumbrera y no dice qué vale aquí. No se juzga: pregunte al oficial de bomberos.
rules-a-pathway-wide-from-the = un paso de { $width } de ancho del borde más bajo a la cumbrera
rules-no-pathway-lies-on-the = Ningún paso está del lado de la calle o entrada de autos ({ $ways }). Deje uno en un plano que caiga hacia ese lado, o a lo largo del borde del techo de ese lado.
rules-none-on-that-side = ninguno de ese lado
rules-one-on-that-side = uno de ese lado
rules-block = el bloque { $id }
rules-a-block = un bloque
rules-face = el faldón { $id }
rules-at-least = al menos { $required }
rules-at-most = como máximo { $required }
rules-eave = el alero
rules-rake = el borde inclinado
rules-ridge = la cumbrera
rules-hip = la limatesa
rules-valley = la limahoya
rules-wall-line = el encuentro con el muro
rules-step = el escalón
rules-pitch-change = el quiebre de pendiente
rules-every-part-of-the-house = Cada parte de la casa lleva un techo
rules-a-part-that-cant-be = Una parte que no se puede levantar no tiene faldones: nada de ella se cuenta.
rules-geometry-no-roof-closes-over = geometría: ningún techo cierra sobre esta huella
rules-outlines-of-faces-enclose-one = Los contornos de los faldones encierran un área una sola vez
rules-lengths-areas-and-edges-of = Longitudes, áreas y bordes de un contorno que se cruza a sí mismo no significan nada.
rules-geometry-such-an-outline-has = geometría: un contorno así no tiene área
rules-faces-that-meet-in-plan = Los faldones que se juntan en planta se juntan en altura
rules-a-roof-with-a-gap = Un techo con un escalón se midió o se dibujó mal, y también sus cumbreras y áreas.
rules-geometry-faces-of-one-roof = geometría: los faldones de un techo comparten sus bordes, a menos de 10 mm
rules-edges-that-all-but-meet = Los bordes que casi se juntan, se juntan
rules-two-edges-a-hand-apart = Dos bordes a un palmo cuentan como dos, y la cumbrera o limahoya entre ellos se pierde.
rules-geometry-sides-beside-each-other = geometría: lados a menos de 150 mm uno de otro debían ser uno solo
rules-no-roof-is-counted-twice = Ningún techo se cuenta dos veces
rules-where-two-faces-lie-over = Donde dos faldones están sobre la misma planta, su área y sus tejas se piden dos veces.
rules-geometry-two-decks-cant-have = geometría: dos entablados no pueden tener un mismo lugar
rules-penetrations-lie-on-a-face = Las penetraciones están en un faldón
rules-no-module-keeps-clear-of = Ningún módulo se aparta de lo que está fuera del techo: se puso en mal lugar, o falta un faldón.
rules-geometry-it-is-measured-against = geometría: no hay contra qué medirla
rules-what-comes-through-comes-through = Lo que atraviesa el techo atraviesa un solo plano
rules-a-boot-or-a-curb = El tapajuntas de una bota o de un marco de tragaluz va en un solo plano: sobre una limatesa, una cumbrera o una limahoya sus alas no asientan en ningún lado.
rules-reaches-over-set-it-clear = { $what } pasa { $length } sobre { $edge }. El tapajuntas de una bota o de un marco de tragaluz va en un solo plano: apártelo de la línea.
rules-stands-over-by-hand = { $what } está { $length } sobre { $edge }: cada plano lleva su propio tapajuntas.
rules-over-the-edge = { $length } sobre { $edge }
rules-on-one-plane = en un solo plano
rules-what-was-decided-for-a = Lo que se decidió para un lado conserva su lado
rules-a-kind-that-was-set = Un tipo puesto a mano, o una lectura de cinta, es de un lado del faldón y nunca de otro.
rules-geometry-the-outline-has-no = geometría: el contorno ya no tiene ese lado

rules-the-kinds-of-sides-that =
    { $count ->
        [one] el tipo de un lado, puesto a mano
       *[other] los tipos de { $count } lados, puestos a mano
    }

rules-what-the-tape-read = lo que leyó la cinta
rules-and = { $kinds }, y { $tape }
rules-counts-for-nothing-since-the = { $sentence }: { $lost }, sin efecto porque el contorno ya no tiene ese lado. Márquelo de nuevo donde corresponda.
rules-sides-that-are-gone = lados que ya no están
rules-sides-of-the-outline = lados del contorno
rules-part = La parte “{ $part }”
rules-part-2 = La parte { $id }
rules-a-roof-over-all-of = un techo sobre toda su planta
rules-carries-no-roof-nothing-on = { $name } no lleva techo: { $why }. Hasta entonces nada de ella se cuenta.
rules-no-roof = sin techo
rules-lies-under-other-parts-so = { $name } queda debajo de otras partes, así que no se ve nada de ella. Suba sus aleros, o quítela.
rules-no-roof-that-is-seen = ningún techo visible
rules-has-no-side-that-looks = { $name } no tiene ningún lado que mire pendiente arriba, así que ahí no cabe un desviador. Apártela de la cumbrera, o deje fuera el desviador.
rules-no-cricket = sin desviador
rules-corner-of-is-at-no = la esquina { $corner } { DE($ring_name) } no tiene una posición a menos de 100 km. Póngala otra vez
rules-has-less-than-three-corners = { $ring_name } tiene menos de tres esquinas. Dibuje las demás
rules-corner-of-lies-on-the = la esquina { $corner } { DE($ring_name) } está sobre la anterior. Quite una de las dos
rules-encloses-nothing-pull-its-corners = { $ring_name } no encierra nada. Separe sus esquinas
rules-the-outline-folds-over-itself = el contorno se cruza a sí mismo. Mueva una esquina para que ningún lado se cruce
rules-does-not-lie-inside-the = { $ring_name } no está dentro del faldón. Muévalo adentro o quítelo
rules-a-corner-at-no-place = una esquina sin posición
rules-too-few-corners = muy pocas esquinas
rules-a-repeated-corner = una esquina repetida
rules-no-area = ningún área
rules-folds-over = se cruza
rules-a-hole-outside = un hueco afuera
rules-an-outline-that-encloses-one = un contorno que encierra un área una sola vez
rules-the-gap-is-not-the = el escalón no es igual en toda su longitud, así que no se cierra con subir uno: revise la pendiente, la caída y las alturas de alero.{" "}
rules-does-not-meet-where-they = { $sentence } no se junta con { $face }: donde comparten un borde está { $apart } más abajo. { $uneven }Si el escalón es a propósito, decida el tipo del borde.
rules-apart = { $apart } de diferencia
rules-within = a menos de { $length }
rules-an-edge-of-runs-beside = Un borde { DE($face) } corre a { $apart } de un borde { DE($face2) } y no se junta con él. Mueva las esquinas de uno sobre el otro; si el espacio es a propósito, dispense este hallazgo.
rules-apart-2 = { $apart } de separación
rules-one-edge-or-two-that = un solo borde, o dos bien separados
rules-of-plan-lie-under-both = { $area } en planta están bajo { $face } y también bajo { $face2 }, y se cuentan dos veces. Recorte un faldón hasta donde se juntan.
rules-no-ground-under-two-faces = nada de planta bajo dos faldones
rules-has-its-middle-on-no = El centro de { $sentence } no está en ningún faldón válido, así que nada se aparta de ella. Muévala a un faldón, o dibuje el faldón que atraviesa.
rules-on-no-face = en ningún faldón
rules-on-a-face = en un faldón
rules-shingles-lie-on-slopes-that = Las tejas van en pendientes donde el agua escurre
rules-lapped-shingles-let-water-in = Las tejas solapadas dejan entrar el agua donde se estanca o el viento la empuja.
rules-low-slopes-have-a-double = Las pendientes bajas llevan membrana base doble
rules-water-runs-slowly-on-a = El agua corre despacio en una pendiente baja y encuentra por dónde pasar bajo las tejas.
rules-wide-penetrations-have-a-cricket = Las penetraciones anchas tienen detrás un desviador de agua
rules-water-and-snow-pile-up = El agua y la nieve se acumulan detrás de lo que es ancho, y encuentran por dónde entrar.
rules-eaves-and-rakes-have-a = Aleros y bordes inclinados tienen goterón
rules-without-it-water-runs-back = Sin él el agua regresa por debajo de las tejas y pudre el borde del entablado.
rules-array-and-covering-have-the = Arreglo y recubrimiento tienen la clase de fuego que se pide
rules-burning-brands-from-a-fire = Las brasas de un incendio vecino no deben prender el techo.
rules-the-deck-is-sound-before = El entablado está sano antes de poner un arreglo
rules-screws-hold-only-in-firm = Los tornillos solo agarran en madera firme, y nadie vuelve a ver el entablado en décadas.
rules-is-asphalt-shingles-need-choose = { $sentence } tiene { $measured }; las tejas asfálticas necesitan { $required }. Elija ahí otro recubrimiento.
rules-is-less-than-lay-its = { $sentence } tiene { $measured }, menos de { $pitch }: coloque doble la membrana base. { $of_data }
rules-double-underlayment = membrana base doble
rules-is-wide-along-the-eave = { $sentence } “{ $name }” mide { $wide } de ancho a lo largo del alero, más de { $required }: construya un desviador de agua del lado de la cumbrera, y no ponga arreglo sobre él.
rules-wide = { $wide } de ancho
rules-a-cricket-beyond = un desviador a partir de { $required }
rules-the-roof-has-no-drip = El techo no tiene goterón en sus aleros y bordes inclinados. { $of_data }
rules-a-drip-edge-at-eaves = goterón en aleros y bordes inclinados
rules-or-better = { $asked } o mejor
rules-the-array = el arreglo
rules-the-covering-beyond-the-array = el recubrimiento fuera del arreglo
rules-an-edge-of-the-roof = un borde del techo está a menos de { $within } de un lindero
rules-the-law-asks-for-it = aquí lo pide la ley
rules-has-against-fire-and-is = { $sentence } tiene { $measured } contra fuego, y se necesita { $required }: { $why }.
rules-parts-of-the-deck-are = Partes del entablado están blandas, rajadas o mojadas: reemplace esos tableros antes de poner la membrana y el arreglo.
rules-a-sound-deck = un entablado sano
rules-setbacks-each-with-its-own = { $book }: retiros, cada uno con su propia fuente
rules-clearances-each-with-its-own = { $book }: holguras, cada una con su propia fuente
rules-issue = { $kit }, edición { $issue }
rules-geometry = geometría
rules-set-by-a-person-for = fijada por una persona para esta penetración
rules-common-practice-no-source = práctica común, sin fuente
rules-taken-as-roof-covering-a = { $figure }, tomado como recubrimiento de techo: un arreglo al ras y con tapajuntas queda fuera de las reducciones para paneles sobre un techo (29.4.4)
rules-the-jobs-own-waivers = las dispensas de la obra
rules-not-asked-by-this-edition = no lo pide esta edición
rules-not-asked-by-this-book = no lo pide este libro
rules-waived-by-on = dispensado por { $by } el { $date }: { $reason }
rules-the-waiver-by-on = la dispensa de { $by } el { $date } (“{ $reason }”)
rules-was-given-before-numbers-were = { $by } se dio antes de que se guardaran los números: revise el hallazgo y acéptelo de nuevo
rules-was-given-where-was-asked = { $by } se dio cuando se pedía { $required }, y ahora es { $required2 }: acepte el hallazgo de nuevo, o resuélvalo
rules-was-for-and-now-it = { $by } era para { $measured }, y ahora es { $measured2 }: acepte el hallazgo de nuevo, o resuélvalo
rules-a-waiver-by-is-for = Una dispensa de { $by } ({ $date }) es de un hallazgo que ya no existe ({ $what }): “{ $reason }”. Quítela, o consérvela si el problema puede volver.
rules-a-waiver-by-names-what = Una dispensa de { $by } ({ $date }) nombra algo que este programa no puede leer, { $key }: “{ $reason }”. No cubre nada: quítela.
rules-a-waiver-by-names-which = Una dispensa de { $by } ({ $date }) nombra { $missing_words }, que la obra ya no tiene: “{ $reason }”. No cubre nada ni lo hará: quítela.
rules-row-of-block = fila { $row } { DE($block) }
rules-side-of = lado { $side } { DE($face) }
rules-no-such-finding = ese hallazgo no existe
rules-part-3 = la parte { $id }
rules-side-of-face = el lado { $side } del faldón { $face }
rules-penetration = la penetración { $id }
rules-switched-off-in-the-rule = desactivada en el libro de reglas “{ $rule_book }”
rules-exempt-the-fire-official-found = exento: el oficial de bomberos determinó que no habrá trabajo en el techo ({ $no_roof_operations })
rules-exempt-roof-integrated-array-its = exento: arreglo integrado al techo, cuya certificación leyó { $integrated_listing_read_by }; la exención está en duda
rules-exempt-a-detached-building-in = exento: un edificio aparte en el que nadie vive
rules-this-edition-does-not-ask = esta edición no lo pide
rules-this-edition-has-no-number = esta edición no tiene número para limatesas y limahoyas
rules-this-edition-asks-for-pathways = esta edición pide en su lugar pasos en cada vertiente con módulos
rules-this-book-does-not-ask = este libro no lo pide
rules-the-kit-does-not-say = el kit no dice dónde puede estar su riel base
rules-the-kit-does-not-say-what = el kit no dice qué entablado necesita
rules-the-kit-asks-no-room = el kit no pide espacio entre bloques
rules-the-kit-lets-rows-slide = el kit deja correr las filas y poner el riel base en cualquier lugar
rules-no-escape-window-is-marked = no hay ventana de escape marcada en el techo
rules-the-rule-book-has-no = el libro de reglas no tiene retiros
rules-the-rule-book-does-not = el libro de reglas no trata el acceso de bomberos
rules-the-rule-book-does-not-go = el libro de reglas no trata el recubrimiento
rules-the-rule-book-has-no-such = el libro de reglas no tiene ese límite
rules-the-rule-book-does-not-go-into = el libro de reglas no trata el viento
rules-the-job-does-not-say = la obra no dice en qué estado está el entablado
rules-the-job-does-not-say-whether = la obra no dice si hay goterón
rules-the-job-does-not-say-which = la obra no dice qué clase pide la ley, ni a qué distancia está el lindero
rules-the-job-does-not-say-on = la obra no dice de qué lado está la calle o entrada de autos
rules-the-job-does-not-say-2 = la obra no dice: { $names }
rules-how-thick-the-sheathing-is-2 = qué grueso es el tablero
rules-what-it-is-made-of = de qué está hecho
rules-how-far-apart-the-rafters = qué tan separadas están las vigas
rules-what-state-the-deck-is-in = en qué estado está el entablado
rules-whether-there-is-a-drip = si hay goterón
rules-the-class-against-fire = la clase de fuego
rules-where-the-street-lies = dónde está la calle
rules-basic-wind-speed = velocidad básica del viento
rules-eave-height = altura del alero
rules-least-width-of-the-building = ancho mínimo del edificio
rules-what-a-fastener-holds = lo que aguanta una fijación
rules-deck-under-a-fastener = entablado por fijación
rules-fasteners-hold-against-wind-uplift = Las fijaciones aguantan el levantamiento del viento (revisión preliminar)
rules-a-corner-of-a-roof = En una tormenta el viento levanta la esquina de un techo con varias veces su peso.
rules-figures-and-between-27-and = { $standard } figuras { $number } y { $other }, entre 27° y 45°
rules-figure = { $standard } figura { $number }
rules-a-slope-of-is-outside = una pendiente de { $degrees }° está fuera de las figuras que este programa conoce (más de 7° hasta 45°): pregunte a un ingeniero con licencia
rules-the-figures-are-for-plain = las figuras son para techos simples de dos y cuatro aguas, y este tiene otro borde ({ $kind }): pregunte a un ingeniero con licencia
rules-hip-roof = un techo de cuatro aguas
rules-gable-roof = un techo de dos aguas
rules-the-coefficients-of-for-a = los coeficientes de { $standard } para { $shape } de { $degrees }° no están entre las fuentes de este programa: pregunte a un ingeniero con licencia
rules-no-zone-of-the-figure = ninguna zona de la figura alcanza este bloque
rules-wind = Viento
rules-mean-roof-height-ft-qh = { $standard }: altura media del techo { $height_ft } ft, qh·Kd { $q_kd_psf } psf, zonas de borde de { $zone_width_ft } ft de ancho, área efectiva de viento { $square_feet } ft²
rules-the-wind-is-not-worked = el viento no se calculó
rules-lb-each-a-foot = { $screw }: { $pounds } lb cada uno, { $a_foot } por pata
rules-lb-a-foot-no-foot = { $what }: { $pounds } lb por pata, ninguna pata aguanta más
rules-the-listing-says-nothing-ask = { $what }: la certificación no dice nada, consulte al fabricante antes de confiar en esto
rules-lb-a-foot-which-helps = { $what }: { $pounds } lb por pata, lo cual ayuda, pero no se cuenta
rules-the-listing-says-nothing-counted = { $what }: la certificación no dice nada, no se cuenta
rules-load-path-by-the-kits = Camino de la carga según la certificación del kit: { $join }.
rules-the-kit-says-nothing-of = El kit no dice qué sujeta sus módulos: solo se cuenta la fijación que se escribió.
rules-reaches-zone-psf-outward-lb = { $sentence } llega a la zona { $zone } ({ $figure }): { $psf } psf hacia afuera, { $pounds } lb por fijación, de la que se dice que aguanta { $holds } lb. Deje los módulos fuera de las zonas de borde, o ponga más fijaciones: el pedido cuenta las que aguantan. { $path } Encargue el diseño a un ingeniero con licencia.
rules-lb-a-fastener = { $pounds } lb por fijación
rules-at-most-lb = como máximo { $holds } lb
rules-is-not-screened-for-wind = { $name } no se revisó por viento: { $why }.
rules-not-worked-out = sin calcular
rules-a-case-that-the-sources = un caso que las fuentes tengan

## Sheets

sheets-plan-to-build-from = Plano para construir
sheets-no-face-of-the-roof = Todavía no se dibuja ningún faldón del techo.
sheets-crew-notes = Notas para la cuadrilla
sheets-pitch = { $face_heading }, pendiente { $pitch }
sheets-rows-of-modules = Filas de módulos
sheets-base-line-up-from-the = Línea base, subiendo desde el alero
sheets-left-end-along-that-line = Extremo izquierdo, sobre esa línea, desde el borde inclinado
sheets-in-this-order = En este orden
sheets-stage = Etapa
sheets-done-by = Hecho, por
sheets-row-begins-to-the-right = la fila { $row } empieza { $by } a la derecha
sheets-row-begins-to-the-left = la fila { $row } empieza { $by } a la izquierda
sheets-above-then-the-shingles-lie = Arriba: { $cut }, luego { $whole }; las tejas tapan { $lap } del tapajuntas superior.
sheets-tick-what-is-whole-and = Marque lo que llegó y está entero. Antes de firmar, escriba cuánto llegó y qué está dañado.
sheets-counted-by-date = Contó ………………………………    Fecha ………………………
sheets-delivery-what-is-short-damaged = Entrega: lo que falta, está dañado o sobra
sheets-all-lines-are-complete = Los { $rows } renglones están completos.
sheets-nothing-is-wrong-with-what = No hay nada mal en lo que se contó; { $open } de { $rows } renglones todavía no se cuentan.
sheets-over = Sobra
sheets-cant-start = no puede empezar: { $waits_for }
sheets-crew-checklist = Lista de verificación de la cuadrilla
sheets-after-the-rule-book = Según el libro de reglas { $rule_book }
sheets-gone-through-by-date = Revisó ………………………………    Fecha ………………………
sheets-from-the = { $text } desde la línea de { $kind }, { $of }
sheets-falls = { $name }, cae hacia { $falls }
sheets-plan-north-up = { $job }, planta, el norte arriba
sheets-base-line-of-block = línea base del bloque { $block }
sheets-block = Bloque { $block }
sheets-true-size-eave-down = { $face }, tamaño real, alero abajo
sheets-dash-with-three-dots-running = Guion y tres puntos, que sigue a los lados de un bloque: la línea base que se traza.
sheets-thick-line = Línea gruesa
sheets-thin-line = Línea delgada
sheets-long-dashes = Guiones largos
sheets-dash-and-dot = Guion y punto
sheets-short-dashes = Guiones cortos
sheets-heavy-dots = Puntos gruesos
sheets-dash-with-two-short-ones = Guion y dos cortos
sheets-light-dots = Puntos finos
sheets-the-letters-of-the-sheet = no se pueden leer las letras de la hoja
sheets-a-page-cant-hold-its = en una página no caben su advertencia y algo más
sheets-the-sheet-could-not-be = no se pudo escribir la hoja: { $value }
sheets-no-face-is-drawn-yet = todavía no se dibuja ningún faldón
sheets-this-output-is-no-text = esta salida no es texto: se escribe en un archivo
sheets-the-report-could-not-be = no se pudo escribir el informe: { $value }
sheets-the-workbook-could-not-be = no se pudo escribir el libro de cálculo: { $value }
sheets-order-for = Pedido para { $job }
sheets-kit = Kit: { $kit }
sheets-rule-book = Libro de reglas: { $rule_book }
sheets-prices-all-amounts-in = Precios: { $prices }; todos los montos en { $currency }
sheets-why = Por qué
sheets-totals = Totales
sheets-no-price-and-not-in = SIN PRECIO, y fuera del total: { $unpriced }
sheets-too-large = demasiado grande
sheets-no-price = SIN PRECIO
sheets-total = Total
sheets-total-of-the-parts-that = Total de las piezas con precio
sheets-amount = Monto
sheets-how-it-is-cut = Cómo se corta
sheets-crew = Cuadrilla
sheets-people = Personas
sheets-hours-of-work = Horas de trabajo
sheets-hours-on-the-clock = Horas de reloj
sheets-one-more-finding-is-on = {" "}Otro hallazgo está en la página 1.
sheets-more-findings-are-on-page = {" "}{ $more ->
        [one] Otro hallazgo está en
       *[other] Otros { $more } hallazgos están en
    } la página 1.
sheets-page-of = página { $page } de { $of }
sheets-to-know = Conviene saber
sheets-unit = Unidad
sheets-waste = Desperdicio
sheets-with-waste = Con desperdicio
sheets-from-stock = Del almacén
sheets-packages = Paquetes
sheets-holds = Contiene
sheets-taxed = Con impuesto
sheets-changed-by-hand = Cambiado a mano
sheets-how-it-is-counted = Cómo se cuenta
sheets-see = vea "{ $known }"
sheets-l-a-rpage-p-of = &L&A&RPágina &P de &N
sheets-amounts-in-planning-aid-only = { $prices }, { $date }. Montos en { $currency }. Es solo una ayuda para planear: vea la última hoja.
sheets-cost-by-stage = Costo por etapa
sheets-goods-and-labour = Materiales y mano de obra
sheets-job = Obra
sheets-currency = Moneda
sheets-not-ordered = No se pide
sheets-about-the-count = Sobre el conteo
sheets-finding = Hallazgo
sheets-caution = Advertencia

## The wire diagram

diagram-title = Diagrama de cableado
diagram-title-of = { $job }, diagrama de cableado
diagram-block-on = { $block } en { $face }, visto desde el alero pendiente arriba
diagram-block-face-on = { $block }, de frente, con su cableado
diagram-string = cadena { $name }
diagram-branch = ramal { $name }
diagram-closed-end = { $name }: tapón
diagram-eave-side = alero
diagram-no-circuit = sin circuito
diagram-box-not-stated = (caja sin indicar)
diagram-to-box = a { $name }
diagram-to-box-so-far = a { $name }, { $far }
diagram-on-to = sigue a { $module }
diagram-from = viene de { $module }
diagram-lead-of = { $what }, desde { $module }
diagram-module-in = { $module }: { $circuit }, lugar { $place }
diagram-no-lead-reaches = ninguna extensión alcanza
diagram-bare-copper = cobre desnudo
diagram-lug = zapata
diagram-device = dispositivo, o caja del módulo
diagram-extension-lead = extensión
diagram-cap = extremo con su tapón
diagram-junction-box = caja de empalme
diagram-legend = Leyenda
diagram-how-to-read = Los módulos se numeran por fila y lugar en ella, desde la fila más baja y la izquierda: 2-3 es el tercer módulo de la segunda fila. Abajo a la derecha están su circuito y su turno de conexión: 1·5 es el quinto del circuito 1. Las flechas siguen el orden de conexión. Las líneas dicen qué se une con qué, no por dónde se sujeta cada cable; el cobre desnudo pasa una vez por cada zapata, sin empalmes.
diagram-in-no-circuit = Sin circuito: { $modules }. Sus cables siguen energizados.
diagram-not-there = { $circuit } nombra módulos que no están: { $modules }
diagram-order-of-plugging = En el orden de conexión
diagram-circuit = Circuito
diagram-modules = Módulos
diagram-from-module-to-module = De módulo a módulo, con las extensiones
diagram-where-wires-go = A dónde van los cables
diagram-wire = Cable
diagram-from-module = Desde
diagram-to-box-2 = A la caja
diagram-how-far = Qué tan lejos
diagram-not-stated = sin indicar
diagram-not-known = no se conoce
diagram-copper-of = Cobre desnudo, { $block }
diagram-past-lugs =
    { $count ->
        [one] { $along } por una zapata, luego desde el borde superior
       *[other] { $along } por { $count } zapatas, luego desde el borde superior
    }

## The handover sheet for the electrician

handover-title = Entrega al electricista
handover-live-dc = El arreglo está energizado siempre que le da la luz. Ningún interruptor, desconectador ni apagado deja sin voltaje los cables del propio módulo; las cadenas de módulos sin dispositivos llegan con todo su voltaje a la caja.
handover-never-under-load = Nunca separe ni una conectores de cd con carga: abra primero el desconectador de cd y compruebe con pinza que no pasa corriente. Un arco de cd no se apaga solo.
handover-meter-first = Trabaje como en partes energizadas: guantes y herramienta aislados, un medidor para el voltaje más alto, probado antes y después en una fuente conocida, y otra persona al lado que pueda ayudar.
handover-no-insulation-test = Nunca pruebe el aislamiento con la electrónica conectada (dispositivos en los módulos, inversor, supresores) si su fabricante no lo permite: la destruye. Solo los módulos sin dispositivos se prueban con el voltaje de abajo; en lo demás dice el fabricante cómo.
handover-what-a-meter-shows = Lo que debe marcar el medidor
handover-bare-by-temperature = Circuito abierto, en voltios, según la temperatura de los módulos medida en su dorso, a la mitad de la cadena; debajo de cada valor, lo que se acepta (5 % a cada lado: práctica común, en el espíritu de IEC 62446-1, de memoria). Un módulo de menos, o uno conectado al revés, queda fuera.
handover-standby-volts = Cada cadena abierta, antes de que algo encienda sus dispositivos: cada dispositivo da su voltaje de espera, con cualquier luz y temperatura (datos de su fabricante; medio dispositivo a cada lado: práctica común, sin fuente). Si falta un dispositivo o está muerto, falta un voltaje de espera. Mucho más que esto: los dispositivos están encendidos, o puenteados; deténgase.
handover-ac-volts = En el interruptor del ramal, con la red conectada: el voltaje de la red. Se acepta 5 % a cada lado del voltaje nominal (ANSI C84.1, rango A, de memoria). Con el interruptor abierto el ramal no marca nada.
handover-volts-dc = V cd
handover-volts-ac = V ca
handover-passes-from-to = Se acepta de–a
handover-measured = Medido
handover-by-the-maker = como dice el fabricante
handover-polarity-right = + es +
handover-open-volts = V abierto
handover-at-celsius = a °C
handover-amps = A con sol
handover-insulation-test = Aislamiento probado a
handover-plus-to-ground = + a tierra, MΩ
handover-minus-to-ground = − a tierra, MΩ
handover-how-to-measure = La polaridad, antes de cerrar nada. El voltaje de cada cadena por separado, las paralelas aparte. El aislamiento, al menos 1 MΩ (práctica común, de memoria). Después: apagado probado, etiquetas pegadas, lecturas anotadas en la obra.
handover-test-voltage = El aislamiento se prueba a 500 V hasta 1.25 veces el voltaje abierto de la cadena a 25 °C; por encima, a 1,000 V (práctica común, de memoria).
handover-bonding = Unión a tierra, desde la caja
handover-lugs = Zapatas
handover-ohms = Medido, Ω
handover-continuity = Continuidad de la caja al marco más lejano, en cada bloque: el conductor es de una pieza, y quitar un módulo no debe abrirlo.
handover-read-back = Leído y anotado
handover-read = V leídos
handover-expected = V esperados
handover-verdict = Voltaje
handover-passes = pasa
handover-out-of-band = FUERA DE RANGO
handover-polarity = Polaridad
handover-right = correcta
handover-wrong = AL REVÉS
handover-insulation = Aislamiento, MΩ
handover-torques = Pares de apriete
handover-no-torques = El kit no dice los pares de apriete: tómelos de las hojas de los fabricantes y escríbalos aquí: ………………………………………………
handover-torque = Par
handover-set-by = Apretó
handover-labels = Etiquetas por pegar, y dónde
handover-signed = Midió ………………………………    Licencia n.º ………………………    Fecha ………………………

## Labels to stick on

labels-title = Etiquetas
labels-texts-are-english = Los textos son los que da o pide el código, en inglés, como los leen los inspectores; una obra puede llevar los suyos. Lo que va entre paréntesis se dibuja o se escribe a mano. El inspector tiene la última palabra.
labels-print-at-full-size = Imprima al 100 %, en material que dure a la intemperie (NEC 110.21(B), de memoria: durable, no escrito a mano). Las letras grandes salen entonces de la altura que dice la lista: mida una antes de pegarla.
labels-label = Etiqueta
labels-where = Dónde va
labels-by = Según
labels-letters = Letras
labels-how-many = Cuántas
labels-letters-so-high = { $large }, abajo { $small }; { $colours }
labels-white-on-red = blanco sobre rojo
labels-white-on-red-reflecting = blanco sobre rojo, reflejante
labels-black-on-orange = negro sobre anaranjado
labels-black-on-yellow = negro sobre amarillo
labels-own-text = texto de esta obra
labels-at-system-disconnect = en el desconectador de todo el sistema
labels-at-dc-disconnect = en el desconectador de cd
labels-at-dc-raceway = en canalizaciones, cajas y accesorios con circuitos de cd: cada 10 ft, y junto a cada muro, piso y caja a los que entran
labels-at-shutdown-switch = en el interruptor que inicia el apagado, o a menos de 3 ft de él
labels-at-connection = en el punto de conexión
labels-at-connection-breaker = en el interruptor de la salida, si está en el extremo de la barra opuesto al principal
labels-at-service = en el equipo de acometida

## The one-line diagram

oneline-title = Diagrama unifilar
oneline-title-of = { $job }, diagrama unifilar
oneline-how-to-read = Líneas llenas: conductores que llevan corriente; punteadas: conductores de puesta a tierra de equipo. Sus números son los de la tabla. Los amperios son la corriente más alta y, tras la barra, con la que se eligen conductores y protecciones. Lo que dice "mínimo" sale de las tablas del código para los terminales que indica el kit, si no para 60 °C; elige una persona con licencia.
oneline-array = Módulos
oneline-junction-box = Caja de empalme
oneline-dc-disconnect = Desconectador de cd
oneline-inverter = Inversor
oneline-panel = Panel combinador
oneline-ac-disconnect = Desconectador de ca
oneline-service-panel = Panel de servicio
oneline-meter = Medidor
oneline-utility = compañía eléctrica
oneline-earth = tierra
oneline-modules-of =
    { $count ->
        [one] { $count } módulo { $part }, { $watts } W
       *[other] { $count } módulos { $part }, { $watts } W
    }
oneline-no-devices = sin dispositivos en los módulos
oneline-dc-device = dispositivo de cd en cada uno, máximo { $volts } V, { $amps } A
oneline-ac-device = dispositivo de ca en cada uno, { $volts } V, { $amps } A
oneline-strings-of =
    { $count ->
        [one] { $count } cadena de { $sizes }
       *[other] { $count } cadenas de { $sizes }
    }
oneline-branches-of =
    { $count ->
        [one] { $count } ramal de { $sizes }
       *[other] { $count } ramales de { $sizes }
    }
oneline-each-at-most = cada una máximo { $volts } V, { $amps } A
oneline-each-amps = cada una máximo { $amps } A
oneline-boxes =
    { $count ->
        [one] { $count } caja
       *[other] { $count } cajas
    }
oneline-on-the-roof = sobre el techo, con tapajuntas
oneline-under-the-deck = bajo el entablado
oneline-no-shutdown = apagado en los módulos: no lo hay
oneline-shutdown-at-modules = apagado en los módulos, por sus dispositivos
oneline-arc-fault = protección contra arcos
oneline-arc-fault-in-inverter = protección contra arcos en el inversor
oneline-inputs =
    { $count ->
        [one] { $count } entrada
       *[other] { $count } entradas
    }
oneline-strings-without-input = cadenas que todavía no van a ninguna entrada
oneline-breakers =
    { $count ->
        [one] interruptor, { $amps } A
       *[other] { $count } interruptores, { $amps } A
    }
oneline-bus-and-main = barra { $bus } A, principal { $main } A
oneline-output-that-fits = salida que cabe: { $amps } A
oneline-from-to = De – a
oneline-conductors = Conductores
oneline-ground = Tierra
oneline-lies-in = Va en
oneline-length = Largo
oneline-amps = A
oneline-device = Interruptor, fusible
oneline-drop = Caída
oneline-none = ninguno
oneline-bare-copper = { $awg } AWG cobre desnudo
oneline-at-least = mínimo { $awg } AWG
oneline-up-to = hasta { $length }
oneline-free-air = aire libre, bajo el arreglo
oneline-see-below = en el renglón siguiente
oneline-way-opposite-ends = en el extremo de la barra opuesto al principal (120 %)
oneline-way-whole-bus = en cualquier lugar de la barra (100 %)
oneline-way-sum = por la suma de los interruptores
oneline-way-centre-fed = en un panel alimentado al centro (120 %)
oneline-way-feeder = en un alimentador
oneline-way-supply-side = antes del principal
oneline-leg-free-air = aire libre
oneline-leg-roof = techo
oneline-leg-attic = ático
oneline-leg-wall = muro

## The start page

start-go-on-with-the-last = Seguir con la última obra
start-jobs-that-were-open = Obras abiertas hace poco
start-new-roof = Empezar
start-not-there-any-more = ya no está ahí
start-try-a-finished-roof = Probar con un techo ya hecho
start-what-do-you-want = ¿Qué quiere hacer?

## The house in space and the sun

solid-house = Casa
solid-drag-to-turn-the-house = Arrastre para girar la casa, con Mayús para deslizarla; la rueda acerca o aleja. Un clic selecciona lo que está ahí.
solid-the-house-in-space-drag = La casa en 3D: arrastre para girar, rueda para acercar
solid-save-picture = Guardar imagen…
solid-the-picture-could-not-be = No se pudo escribir la imagen
solid-show-to-the-homeowner = Mostrar al dueño de la casa
solid-there-is-no-house-to = Todavía no hay casa que mostrar: dibuje primero un faldón del techo.
solid-where-the-house-stands-is = No se sabe dónde está la casa, así que la luz es pareja. Escriba su lugar en La obra, La casa.
solid-turn-left = Girar a la izquierda
solid-turn-right = Girar a la derecha
solid-higher = Más alto
solid-lower = Más bajo
solid-nearer = Más cerca
solid-farther = Más lejos
solid-before = Antes
solid-after = Después
solid-the-house-without-the-array = La casa sin el arreglo, y con él
solid-day = Día
solid-the-day-that-the-sun = El día para el que se muestra el sol
solid-hour = Hora
solid-by-the-clock-15-30 = Según el reloj, 15:30; en verano ponga UTC según el horario de verano
solid-utc = UTC
solid-how-many-hours-the-clock = Cuántas horas va adelantado el reloj respecto a UTC: −5 en Nueva York en invierno, −4 en verano
solid-house-turn = Casa: girar
solid-arrow-keys-or-drag = Flechas o arrastre
solid-house-slide-come-nearer = Casa: deslizar, acercar
solid-shift-arrow-keys-and = Mayús + flechas, + y −
solid-from-above = Desde arriba
solid-leave-esc = Salir  (Esc)
solid-what-it-covers = Lo que cubre
solid-what-it-costs = Lo que cuesta
solid-to-be-quoted = Por cotizar
solid-as-planned-today-the-written = Según el plan de hoy; lo que vale es la cotización por escrito. Lo que produce y ahorra no se calcula aquí.
solid-not-ready-to-build-these = No está lista para construir: estos hallazgos están abiertos
solid-waived-accepted-all-the-same = Dispensado: se aceptó de todos modos
solid-bare-cost-no-overhead-and = Solo el costo: sin gastos generales ni ganancia. Los dos se fijan junto al pedido, en «Techo, dinero, existencias».
solid-show-the-bare-cost-all = Mostrar solo el costo de todos modos
solid-good-to-know = Conviene saber
solid-this-is-a-plan-not = Esto es un plan, no una cotización ni un permiso. La disposición se confirma en su techo y con la oficina local de construcción.
solid-a-licensed-engineer-looks-at = Un ingeniero con licencia revisa la estructura donde se exige; un electricista con licencia conecta el arreglo.
solid-please-stay-off-the-roof = Por favor no suba al techo. Los módulos están energizados siempre que les da la luz.
solid-full-screen-in-large-type = Pantalla completa, en letra grande, sin nada que sea solo de la oficina
solid-write-the-picture-as-it = Escribir la imagen como se ve en un archivo PNG
solid-seen-from-the = Visto desde el { $from }
solid-from-above-2 = desde arriba
solid-from-high-up = desde muy alto
solid-from-a-little-above = desde un poco arriba
solid-from-the-ground = desde el suelo
solid-without-the-array = sin el arreglo
solid-no-modules-on-it = sin módulos encima
solid-roof-seen-from-the = Techo visto desde el { $from }, { $high }, { $array }. { $sun }
solid-on = { $count } en { $face }
solid-modules = módulos: { $counts }
solid-modules-on-faces = { $plan ->
        [one] { $plan } módulo en
       *[other] { $plan } módulos en
    } { $faces ->
        [one] { $faces } faldón
       *[other] { $faces } faldones
    }
solid-this-machine-cant-draw-the = Esta máquina no puede dibujar la casa ahora mismo. Tiene { $job ->
        [one] { $job } faldón y
       *[other] { $job } faldones y
    } { $with_modules_or_none }; la planta y la vista de un faldón los muestran.
solid-no-modules = sin módulos
solid-january = enero
solid-february = febrero
solid-march = marzo
solid-april = abril
solid-may = mayo
solid-june = junio
solid-july = julio
solid-august = agosto
solid-september = septiembre
solid-october = octubre
solid-november = noviembre
solid-december = diciembre
solid-day-month = { $day } de { $month }
solid-sun-in-the-high = { $when }: sol en el { $azimuth }, a { $elevation }° de altura.
solid-the-sun-is-down = { $when }: el sol está bajo el horizonte.
solid-sunrise-highest-sunset = Salida { $clock }, punto más alto { $clock2 }, puesta { $clock3 }
solid-the-sun-stays-up-all = El sol no se pone en todo el día; punto más alto { $clock }
solid-the-sun-stays-down-all = El sol no sale en todo el día; más cerca de salir { $clock }
solid-at = A { $side }, { $side2 }
solid-sq-ft = ft²
solid-rated-power = potencia nominal
solid-covered-by-the-array = cubierto por el arreglo
solid-of-the-roof = del techo
solid-latitude-longitude-degrees-from-90 = latitud { $latitude }, longitud { $longitude }: dé grados de -90 a 90 y de -180 a 180
solid-is-no-day-that-the = { $value } no es un día del que se conozca el lugar del sol: años de -2000 a 6000
solid-the-suns-place-cant-be = no se puede calcular el lugar del sol: { $value }
solid-no-noon-on-this-day = este día no tiene mediodía

## Where the job stands

standing-not-to-build = NO CONSTRUIR
standing-waived = DISPENSADO

standing-findings-stop-this-job =
    { $count ->
        [one] { $not }: { $count } hallazgo detiene esta obra.{"\u000A"}
       *[other] { $not }: { $count } hallazgos detienen esta obra.{"\u000A"}
    }

standing-waived-by-on = { $message } Dispensado por { $by } el { $date }: { $reason }

## The takeoff

takeoff-one-order-is-in-the = un pedido está en { $currency }, el otro en { $currency2 }
takeoff-more = Más
takeoff-less = Menos
takeoff-as-many-packages-another-need = Los mismos paquetes, otra necesidad o precio
takeoff-need-order = {"  "}{ $plain }  { $plain2 }  se necesita { $need_words } → { $need_words2 }, pedir { $packages } → { $plain3 }  { $more }
takeoff-totals-cant-be-compared = Los totales no se pueden comparar: { $plain }
takeoff-total-before-and-after = Total: { $before } → { $after } { $currency }, { $more }
takeoff-planning-aid-only-confirm-against = Es solo una ayuda para planear. Confirme con los códigos adoptados localmente, la certificación del producto y las instrucciones del fabricante. El diseño estructural corresponde a un ingeniero con licencia y el trabajo eléctrico a un electricista calificado y con licencia donde se exige. Las caídas y la descarga o el arco de corriente directa pueden matar: cuente y haga el pedido desde el suelo, y trate cada módulo como energizado siempre que le dé la luz.
takeoff-the-order-could-not-be = no se pudo escribir el pedido como CSV: { $value }
takeoff-the-order-could-not-be-written = no se pudo escribir el pedido como JSON: { $value }
takeoff-put-on-the-order-by = agregado al pedido a mano
takeoff-longer-than-any-stick-and = { $part }, { $part2 }: más largo que cualquier tramo, y el kit no permite empalme: { $places }. Se cuenta como si estuviera empalmado; pida un tramo más largo o pregunte al fabricante.
takeoff-the-overhang-of-the-eaves = No se conoce el voladizo de los aleros: la barrera contra filtraciones se cuenta como si el muro estuviera bajo el borde del techo. Indique el voladizo, y la barrera subirá otro tanto.
takeoff-the-price-list-does-not = La lista de precios no dice cuál es el impuesto de venta: el total no lo incluye.
takeoff-the-price-list-does-not-say = La lista de precios no dice cuánto cuesta la entrega: el total no la incluye.
takeoff-stock-in-hand-the-kit = Existencias: el kit no tiene la pieza { $left }.
takeoff-stock-in-hand-is-not = Existencias: { $part } no se cuenta en la unidad de la lista de almacén, { $amount }: se omite.
takeoff-wind-a-screening-fasteners-a = Viento, revisión preliminar: { $a_foot } fijaciones por pata en la zona { $zone } en { $modules } de los módulos del bloque { $name }. Las que pasan de las del kit están en el pedido. Los hallazgos dicen el camino de la carga, pieza por pieza. Encargue el diseño a un ingeniero con licencia.
takeoff-left-head-corner = esquina superior izquierda
takeoff-right-head-corner = esquina superior derecha
takeoff-left-base-corner = esquina inferior izquierda
takeoff-right-base-corner = esquina inferior derecha
takeoff-bonding-path = trayecto de la unión eléctrica
takeoff-wall-line-up-the-slope = encuentro con muro pendiente arriba
takeoff-wall-line-across-the-slope = encuentro con muro a lo ancho
takeoff-wall-at-the-end-of = muro al final de un alero
takeoff-cricket = desviador de agua
takeoff-row-column = fila { $row }, columna { $column }
takeoff-the-block = el bloque
takeoff-row = fila { $row }
takeoff-row-seam = fila { $row }, junta { $seam }
takeoff-base-rail-of-row = riel base de la fila { $row }
takeoff-left-side-from-row-up = lado izquierdo desde la fila { $row }
takeoff-right-side-from-row-up = lado derecho desde la fila { $row }
takeoff-head-of-row = parte superior de la fila { $row }
takeoff-head-of-row-left-end = parte superior de la fila { $row }, extremo izquierdo
takeoff-head-of-row-right-end = parte superior de la fila { $row }, extremo derecho
takeoff-under-the-array = debajo del arreglo
takeoff-around-the-array = alrededor del arreglo
takeoff-under-and-around-the-array = debajo del arreglo y a su alrededor
takeoff-along-the-eave = a lo largo del alero
takeoff-left-side = lado izquierdo
takeoff-right-side = lado derecho
takeoff-lower-side = lado inferior
takeoff-upper-side = lado superior
takeoff-deck-around-it = entablado alrededor
takeoff-not-counted = sin contar
takeoff-short = falta
takeoff-over = sobra
takeoff-damaged = dañado
takeoff-complete = completo
takeoff-as-2 = { $row } (como { $number })
takeoff-not-on-the-order = no está en el pedido
takeoff-not-counted-2 = { $row } { $row2 }: sin contar
takeoff-of = { $row } { $row2 }: { $good } de { $needed }
takeoff-cant-start = { $on } no puede empezar
takeoff-delivery-for = Entrega para { $plain }
takeoff-over-or-not-ordered = Sobra o no se pidió
takeoff-of-ordered-came = {"  "}{ $plain }  { $plain2 }: { $packages } de { $ordered } pedidos, llegaron { $counted }{ $plain3 }

takeoff-not-counted-yet-of-lines =
    {""}
    Todavía sin contar: { $open } de { $rows } renglones.

takeoff-all-lines-are-complete = Los { $rows } renglones están completos.

takeoff-what-can-start =
    {""}
    Lo que puede empezar

takeoff-can-start = {"  "}{ $stage }: puede empezar
takeoff-cant-start-2 = {"  "}{ $stage }: no puede empezar: { $why }
takeoff-the-lists-are-in = las listas están en { $currencies }
takeoff-lines-sales-tax-delivery-total = {"  "}renglones { $show_money }, impuesto de venta { $known }, entrega { $known2 }, total { $show_money2 } { $plain }; lo que todas las listas tienen: { $show_money3 }
takeoff-no-price-and-not-in = {"  "}SIN PRECIO, y fuera del total: { $missing }
takeoff-amounts-cant-be-compared = Los montos no se pueden comparar: { $plain }
takeoff-the-cheapest-each-line-where = {"*"} el más barato. Cada renglón donde sale más barato: { $show_money }
takeoff-order-for = Pedido para { $plain }
takeoff-waste = {"      "}desperdicio: { $plain }
takeoff-source = {"      "}fuente: { $plain }
takeoff-total = Total: { $total }
takeoff-total-of-the-parts-that = Total de las piezas con precio: { $total }
takeoff-no-price-and-not-in-the = SIN PRECIO, y fuera del total: { $missing }
takeoff-goods = Materiales
takeoff-between-thousands = ,
takeoff-decimal-mark = .
takeoff-sales-tax = Impuesto de venta
takeoff-overhead = Gastos generales
takeoff-need-order-2 = {"  "}{ $plain }  { $plain2 }  se necesita { $need_words }  pedir { $plain3 }
takeoff-at = {"  "}a { $price } = { $cost } { $plain }
takeoff-at-too-many-to-reckon = {"  "}a { $price }: demasiados para calcular un costo
takeoff-no-price = {"  "}SIN PRECIO
takeoff-with-waste = { $need }, con { $waste } % de desperdicio { $with }
takeoff-h-of-work-h-on = {"  "}{ $crew }: { $person_hours } h de trabajo, { $people }, { $hours } h de reloj
takeoff-left = , sobran { $left }
takeoff-of-2 = { $sticks } de { $length }{ $of_part }: { $pieces }{ $left }
takeoff-of-3 = { $packages } de { $show_amount }
takeoff-bought-the-least-for-these = se compran { $bought }, lo mínimo con estos empalmes (demostrado)
takeoff-bought-at-most-more-than = se compran { $bought }, como máximo { $more } más que lo mínimo con estos empalmes
takeoff-overridden-counted = CAMBIADO, según la cuenta { $counted }{ $because }
takeoff-added-by-hand = AGREGADO a mano{ $because }
takeoff-off = OMITIDO{ $because }
takeoff-of-the-offices-own-to = { $show_amount } propios de la oficina, para llevar
takeoff-from-stock-in-hand = { $show_amount } de existencias
takeoff-alternate = alterno { $number }, { $name }
takeoff-as-chosen = según lo elegido
takeoff-as-drawn = como está dibujado
takeoff-for-a = { $waste } % para { $kind }, { $by }
takeoff-the-offices-own = { $waste } %, de la oficina
takeoff-the-offices-own-2 = { $waste } %, de la oficina: { $why }
takeoff-the-cuts-of-these-faces = los cortes de estos faldones por sí solos dan { $percent } %, que no se usa para el pedido
takeoff-waste-cuts = { $waste } %; { $cuts }
takeoff-of-4 = { $measured } de { $noun }
takeoff-each = { $measured }: { $way } c/u
takeoff-pieces-of-end-to-end = { $measured }: piezas de { $length } una tras otra
takeoff-pieces-of-each-lapping = { $measured }: piezas de { $length }, cada una solapa { $lap }
takeoff-one-every-both-ways = { $measured }: 1 cada { $way } en ambos sentidos
takeoff-one-every-and-one-at = { $measured }: 1 cada { $way } y 1 al final de cada corrida
takeoff-for-each = { $measured }: { $take } c/u
takeoff-for-each-2 = { $measured }: { $take } por cada { $of }
takeoff-a-strip-wide = { $measured }: una franja de { $width } de ancho
takeoff-each-lapping = , cada uno solapa { $lap }
takeoff-cut-from-sticks-of = { $measured }: cortado de tramos de { $lengths }{ $lap }; { $proof }
takeoff-double = , doble
takeoff-laid-in-wide-lapping-at = { $measured }: colocado en { $many } de { $width } de ancho que solapan { $side_lap }{ $double }, { $end_lap } en los extremos; se empiezan { $many2 }

## Things that are counted

things-module =
    { $count ->
        [one] { $count } módulo
       *[other] { $count } módulos
    }

things-block =
    { $count ->
        [one] { $count } bloque
       *[other] { $count } bloques
    }

things-row =
    { $count ->
        [one] { $count } fila
       *[other] { $count } filas
    }

things-seam =
    { $count ->
        [one] { $count } junta
       *[other] { $count } juntas
    }

things-run-of-base-rail =
    { $count ->
        [one] { $count } corrida de riel base
       *[other] { $count } corridas de riel base
    }

things-side =
    { $count ->
        [one] { $count } lado
       *[other] { $count } lados
    }

things-course-up-the-sides-one =
    { $count ->
        [one] { $count } hilada por los lados, una más por lado
       *[other] { $count } hiladas por los lados, una más por lado
    }

things-run-of-head-flashing =
    { $count ->
        [one] { $count } corrida de tapajuntas superior
       *[other] { $count } corridas de tapajuntas superior
    }

things-module-under-the-head =
    { $count ->
        [one] { $count } módulo bajo el tapajuntas superior
       *[other] { $count } módulos bajo el tapajuntas superior
    }

things-head-end-and-seam =
    { $count ->
        [one] { $count } extremo o junta superior
       *[other] { $count } extremos y juntas superiores
    }

things-left-head-corner =
    { $count ->
        [one] { $count } esquina superior izquierda
       *[other] { $count } esquinas superiores izquierdas
    }

things-right-head-corner =
    { $count ->
        [one] { $count } esquina superior derecha
       *[other] { $count } esquinas superiores derechas
    }

things-inside-corner =
    { $count ->
        [one] { $count } esquina interior
       *[other] { $count } esquinas interiores
    }

things-left-base-corner =
    { $count ->
        [one] { $count } esquina inferior izquierda
       *[other] { $count } esquinas inferiores izquierdas
    }

things-right-base-corner =
    { $count ->
        [one] { $count } esquina inferior derecha
       *[other] { $count } esquinas inferiores derechas
    }

things-area-under-the-array =
    { $count ->
        [one] { $count } área debajo del arreglo
       *[other] { $count } áreas debajo del arreglo
    }

things-strip-around-the-array =
    { $count ->
        [one] { $count } franja alrededor del arreglo
       *[other] { $count } franjas alrededor del arreglo
    }

things-array-with-the-strip-around =
    { $count ->
        [one] { $count } arreglo con la franja a su alrededor
       *[other] { $count } arreglos con la franja a su alrededor
    }

things-bonding-path =
    { $count ->
        [one] { $count } trayecto de la unión eléctrica
       *[other] { $count } trayectos de la unión eléctrica
    }
things-circuit =
    { $count ->
        [one] { $count } circuito
       *[other] { $count } circuitos
    }

things-extension-lead =
    { $count ->
        [one] { $count } unión con extensiones
       *[other] { $count } uniones con extensiones
    }

things-home-run-positive =
    { $count ->
        [one] { $count } bajada de un extremo +
       *[other] { $count } bajadas de extremos +
    }

things-home-run-negative =
    { $count ->
        [one] { $count } bajada de un extremo −
       *[other] { $count } bajadas de extremos −
    }

things-home-run-branch =
    { $count ->
        [one] { $count } bajada de un ramal
       *[other] { $count } bajadas de ramales
    }

things-ground-to-box =
    { $count ->
        [one] { $count } tramo del cobre desnudo hasta la caja
       *[other] { $count } tramos del cobre desnudo hasta la caja
    }

things-home-run-end =
    { $count ->
        [one] { $count } extremo de bajada en el arreglo
       *[other] { $count } extremos de bajadas en el arreglo
    }

things-box-on-roof =
    { $count ->
        [one] { $count } caja de empalme sobre el techo
       *[other] { $count } cajas de empalme sobre el techo
    }

things-box-under-deck =
    { $count ->
        [one] { $count } caja de empalme bajo el entablado
       *[other] { $count } cajas de empalme bajo el entablado
    }

things-inverter =
    { $count ->
        [one] { $count } inversor de este tipo
       *[other] { $count } inversores de este tipo
    }

things-extra-fastener-for-wind =
    { $count ->
        [one] { $count } fijación adicional por viento
       *[other] { $count } fijaciones adicionales por viento
    }

things-stick-of-this-length-in =
    { $count ->
        [one] { $count } tramo de este largo en la lista de cortes
       *[other] { $count } tramos de este largo en la lista de cortes
    }

things-joint-between-two-pieces =
    { $count ->
        [one] { $count } junta entre dos piezas
       *[other] { $count } juntas entre dos piezas
    }

things-job =
    { $count ->
        [one] { $count } obra
       *[other] { $count } obras
    }

things-person =
    { $count ->
        [one] { $count } persona
       *[other] { $count } personas
    }

things-person-on-the-roof =
    { $count ->
        [one] { $count } persona en el techo
       *[other] { $count } personas en el techo
    }

things-face-of-deck =
    { $count ->
        [one] { $count } faldón de entablado
       *[other] { $count } faldones de entablado
    }

things-face-of-old-roofing-each =
    { $count ->
        [one] { $count } faldón de recubrimiento viejo, contando cada capa
       *[other] { $count } faldones de recubrimiento viejo, contando cada capa
    }

things-face-of-deck-less-the =
    { $count ->
        [one] { $count } faldón de entablado menos el arreglo
       *[other] { $count } faldones de entablado menos el arreglo
    }

things-face-with-one-layer-of =
    { $count ->
        [one] { $count } faldón con una capa de membrana base, donde no hay membrana autoadherible
       *[other] { $count } faldones con una capa de membrana base, donde no hay membrana autoadherible
    }

things-face-with-two-layers-of =
    { $count ->
        [one] { $count } faldón con dos capas de membrana base, donde no hay membrana autoadherible
       *[other] { $count } faldones con dos capas de membrana base, donde no hay membrana autoadherible
    }

things-strip-along-the-eaves =
    { $count ->
        [one] { $count } franja a lo largo de los aleros
       *[other] { $count } franjas a lo largo de los aleros
    }

things-strip-around-what-comes-through =
    { $count ->
        [one] { $count } franja alrededor de lo que atraviesa el techo
       *[other] { $count } franjas alrededor de lo que atraviesa el techo
    }

things-wall-line-up-the-slope =
    { $count ->
        [one] { $count } encuentro con muro pendiente arriba
       *[other] { $count } encuentros con muro pendiente arriba
    }

things-course-up-the-wall-lines =
    { $count ->
        [one] { $count } hilada en los encuentros con muro, una más por línea
       *[other] { $count } hiladas en los encuentros con muro, una más por línea
    }

things-wall-line-across-the-slope =
    { $count ->
        [one] { $count } encuentro con muro a lo ancho
       *[other] { $count } encuentros con muro a lo ancho
    }

things-wall-at-the-end-of =
    { $count ->
        [one] { $count } muro al final de un alero
       *[other] { $count } muros al final de un alero
    }

things-chimney =
    { $count ->
        [one] { $count } chimenea
       *[other] { $count } chimeneas
    }

things-lower-side-of-a-chimney =
    { $count ->
        [one] { $count } lado inferior de chimenea con sus retornos
       *[other] { $count } lados inferiores de chimenea con sus retornos
    }

things-course-beside-chimneys-one-more =
    { $count ->
        [one] { $count } hilada junto a chimeneas, una más por lado
       *[other] { $count } hiladas junto a chimeneas, una más por lado
    }

things-upper-side-of-a-chimney =
    { $count ->
        [one] { $count } lado superior de chimenea con sus retornos
       *[other] { $count } lados superiores de chimenea con sus retornos
    }

things-stretch-around-a-chimney =
    { $count ->
        [one] { $count } corrida alrededor de una chimenea
       *[other] { $count } corridas alrededor de chimeneas
    }

things-cricket =
    { $count ->
        [one] { $count } desviador de agua
       *[other] { $count } desviadores de agua
    }

things-piece-of-a-crickets-frame =
    { $count ->
        [one] { $count } pieza del armazón de un desviador
       *[other] { $count } piezas del armazón de desviadores
    }

things-cricket-both-faces =
    { $count ->
        [one] { $count } desviador de agua, ambos faldones
       *[other] { $count } desviadores de agua, ambos faldones
    }

things-valley-of-a-cricket =
    { $count ->
        [one] { $count } limahoya de un desviador
       *[other] { $count } limahoyas de desviadores
    }

things-line-of-a-cricket-at =
    { $count ->
        [one] { $count } línea de un desviador contra su chimenea
       *[other] { $count } líneas de desviadores contra sus chimeneas
    }

things-pipe-of-this-size =
    { $count ->
        [one] { $count } tubo de este tamaño
       *[other] { $count } tubos de este tamaño
    }

things-course-beside-chimneys-and-skylights =
    { $count ->
        [one] { $count } hilada junto a chimeneas y tragaluces, una más por lado
       *[other] { $count } hiladas junto a chimeneas y tragaluces, una más por lado
    }

things-lower-or-upper-side-of =
    { $count ->
        [one] { $count } lado inferior o superior de una chimenea o tragaluz
       *[other] { $count } lados inferiores y superiores de chimeneas y tragaluces
    }

things-eave =
    { $count ->
        [one] { $count } alero
       *[other] { $count } aleros
    }

things-rake =
    { $count ->
        [one] { $count } borde inclinado
       *[other] { $count } bordes inclinados
    }

things-ridge =
    { $count ->
        [one] { $count } cumbrera
       *[other] { $count } cumbreras
    }

things-hip =
    { $count ->
        [one] { $count } limatesa
       *[other] { $count } limatesas
    }

things-valley =
    { $count ->
        [one] { $count } limahoya
       *[other] { $count } limahoyas
    }

things-wall-line =
    { $count ->
        [one] { $count } encuentro con muro
       *[other] { $count } encuentros con muro
    }

things-step =
    { $count ->
        [one] { $count } escalón
       *[other] { $count } escalones
    }

things-pitch-change =
    { $count ->
        [one] { $count } quiebre de pendiente
       *[other] { $count } quiebres de pendiente
    }

things-pipe-boot =
    { $count ->
        [one] { $count } bota de tubo
       *[other] { $count } botas de tubo
    }

things-vent =
    { $count ->
        [one] { $count } respiradero
       *[other] { $count } respiraderos
    }

things-skylight =
    { $count ->
        [one] { $count } tragaluz
       *[other] { $count } tragaluces
    }

things-escape-window =
    { $count ->
        [one] { $count } ventana de escape
       *[other] { $count } ventanas de escape
    }

things-other-penetration =
    { $count ->
        [one] { $count } otra penetración
       *[other] { $count } otras penetraciones
    }

things-strip =
    { $count ->
        [one] { $count } franja
       *[other] { $count } franjas
    }

things-roll =
    { $count ->
        [one] { $count } rollo
       *[other] { $count } rollos
    }

things-stick =
    { $count ->
        [one] { $count } tramo
       *[other] { $count } tramos
    }

things-package =
    { $count ->
        [one] { $count } paquete
       *[other] { $count } paquetes
    }

## Packages that kits name, counted: looked up by their English

packages-hour =
    { $count ->
        [one] { $count } hora
       *[other] { $count } horas
    }

packages-box =
    { $count ->
        [one] { $count } caja
       *[other] { $count } cajas
    }

packages-piece =
    { $count ->
        [one] { $count } pieza
       *[other] { $count } piezas
    }

packages-stick =
    { $count ->
        [one] { $count } tramo
       *[other] { $count } tramos
    }

packages-roll =
    { $count ->
        [one] { $count } rollo
       *[other] { $count } rollos
    }

packages-bag =
    { $count ->
        [one] { $count } bolsa
       *[other] { $count } bolsas
    }

packages-set =
    { $count ->
        [one] { $count } juego
       *[other] { $count } juegos
    }

packages-boot =
    { $count ->
        [one] { $count } bota
       *[other] { $count } botas
    }

packages-bundle =
    { $count ->
        [one] { $count } paquete
       *[other] { $count } paquetes
    }

packages-insert =
    { $count ->
        [one] { $count } inserto
       *[other] { $count } insertos
    }

packages-cap =
    { $count ->
        [one] { $count } tapa
       *[other] { $count } tapas
    }

packages-vent =
    { $count ->
        [one] { $count } respiradero
       *[other] { $count } respiraderos
    }

packages-tube =
    { $count ->
        [one] { $count } tubo
       *[other] { $count } tubos
    }

packages-tarpaulin =
    { $count ->
        [one] { $count } lona
       *[other] { $count } lonas
    }

packages-spool =
    { $count ->
        [one] { $count } carrete
       *[other] { $count } carretes
    }

packages-sheet =
    { $count ->
        [one] { $count } hoja
       *[other] { $count } hojas
    }

packages-rope =
    { $count ->
        [one] { $count } cuerda
       *[other] { $count } cuerdas
    }

packages-permit =
    { $count ->
        [one] { $count } permiso
       *[other] { $count } permisos
    }

packages-module =
    { $count ->
        [one] { $count } módulo
       *[other] { $count } módulos
    }

packages-lead =
    { $count ->
        [one] { $count } cable
       *[other] { $count } cables
    }

packages-kit =
    { $count ->
        [one] { $count } juego
       *[other] { $count } juegos
    }

packages-device =
    { $count ->
        [one] { $count } dispositivo
       *[other] { $count } dispositivos
    }

packages-day =
    { $count ->
        [one] { $count } día
       *[other] { $count } días
    }

packages-container =
    { $count ->
        [one] { $count } contenedor
       *[other] { $count } contenedores
    }

packages-can =
    { $count ->
        [one] { $count } lata
       *[other] { $count } latas
    }

packages-anchor =
    { $count ->
        [one] { $count } ancla
       *[other] { $count } anclas
    }

## Roofs that were taped

tape-face-from-measurements = Faldón según medidas…
tape-from-measurements = Según medidas…
tape-type-what-a-tape-said = Escriba lo que midió la cinta en el entablado: lados, diagonales, pendiente
tape-form = Forma
tape-triangle = Triángulo
tape-parallelogram = Paralelogramo
tape-trapezoid = Trapecio
tape-any-with-diagonals = Cualquiera, con diagonales
tape-eave = Alero
tape-right-side = Lado derecho
tape-left-side = Lado izquierdo
tape-top = Arriba
tape-straight-up = Recto hacia arriba
tape-if-taped = si se midió
tape-as-a-pitch = como pendiente
tape-by-a-level = con un nivel
tape-pitch-as-typed = Pendiente escrita
tape-or-12-over-24 = 6:12, 26.6°, 50%, o 12" sobre 24"
tape-rise = Desnivel
tape-hold-the-level-level-with = Sostenga el nivel a nivel con un extremo en el entablado: del otro extremo, derecho hacia abajo hasta el entablado.
tape-length-of-the-level = Longitud del nivel
tape-spread-at-most = Corregir hasta
tape-readings-that-are-corrected-by = Lecturas que se corrigen más que esto no forman un faldón; 1" en un faldón de casa es práctica común, sin fuente.
tape-lay-it = Ponerlo
tape-beside-the-roof = junto al techo
tape-to-join-it-to-a = Para unirlo a un faldón, seleccione en el dibujo un lado de ese faldón; luego elija aquí qué lado se junta con ese.
tape-add-face = Agregar faldón
tape-one-corner-more = Una esquina más
tape-one-corner-less = Una esquina menos
tape-another-diagonal = Otra diagonal
tape-take-this-diagonal-away = Quitar esta diagonal
tape-diagonal-from-corner = Diagonal de la esquina
tape-to-corner = a la esquina
tape-picture-of-the-face-as = Dibujo del faldón como se escribió
tape-side = Lado { $from }–{ $to }
tape-diagonal = Diagonal { $from }–{ $to }
tape-still-needed = Todavía se necesita:{" "}
tape-nothing-checks-these-readings-one = Nada comprueba estas lecturas: con una diagonal más se podría.
tape-the-readings-agree = Las lecturas concuerdan.
tape-the-readings-miss-by-at = Las lecturas fallan en { $closing_error } como máximo. Se reparte entre todas (mínimos cuadrados, con el mismo peso cada una).
tape-if-one-was-misread-it = Si una se leyó mal, lo más probable es: { $name }.
tape-on-side-of = { $own } en el lado { $side } de { $face }
tape-the-line-from-corner-to = la línea de la esquina { $from } a la { $to }
tape-the-height-of-corner-over = la altura de la esquina { $corner } sobre el alero
tape-a-face-has-3-to = un faldón tiene de 3 a { $most } esquinas, no { $value }
tape-the-face-has-corners = { $value }: el faldón tiene { $value2 } esquinas
tape-must-be-more-than-0 = { $value } debe medir más de 0 y menos de 1 km
tape-corner-is-held-by-too = la esquina { $value } tiene muy pocas lecturas: mida otra diagonal hasta ella desde una esquina que tenga suficientes
tape-these-sides-could-lean-either = estos lados podrían inclinarse hacia cualquier lado: mida también una diagonal
tape-cant-be-the-other-two = { $of } no puede ser { $is }: los otros dos lados de su triángulo llegan a { $reach } como máximo, { $is2 } menos
tape-the-readings-miss-by-more = las lecturas fallan en { $closing_error }, más de { $limit }: la que peor cuadra es { $worst }; mídala otra vez
tape-these-lengths-make-a-face = estas longitudes forman un faldón que se cruza a sí mismo o no tiene área: revise cuál esquina es cuál

## Panes beside the drawing

desk-drawing = Dibujo
desk-panes = Paneles
desk-next-pane = Panel siguiente
desk-next-pane-help = Pasar el teclado al panel siguiente: el dibujo y luego lo que está abierto a su lado.
desk-previous-pane = Panel anterior
desk-previous-pane-help = Pasar el teclado al panel anterior.
desk-close-pane = Cerrar este panel
desk-close-pane-help = Cerrar el panel que tiene el teclado. El dibujo se queda.
desk-own-window = Ventana propia
desk-own-window-help = Llevar el panel que tiene el teclado a una ventana propia, para una segunda pantalla, o devolverlo junto al dibujo.
desk-beside-the-drawing = Junto al dibujo
desk-beside-the-drawing-help = Volver a poner este panel junto al dibujo.
desk-reset = Paneles como al principio
desk-reset-help = Volver a poner todos los paneles en su primer lugar y ancho. Lo que está abierto sigue abierto.
desk-side-panel = Panel lateral
desk-side-panel-help = Mostrar el panel de la derecha, con propiedades, hallazgos y cantidades. Arrastre su borde para ensancharlo.
desk-pane-nothing-to-act-on = El teclado está con el dibujo: haga clic primero en otro panel, u oprima F6.
desk-drag-a-tab = Arrastre una pestaña a otro lugar para reacomodar los paneles
desk-border = Borde entre paneles
desk-close = Cerrar { $pane }
desk-in-own-window = { $pane } en una ventana propia
desk-window-title = { $pane } – { $job }

## What each command does

command-new = Empezar una obra vacía; antes se le pregunta por los cambios sin guardar.
command-open = Abrir una obra de un archivo; antes se le pregunta por los cambios sin guardar.
command-sample = Abrir una obra terminada para hacer pruebas.
command-import = Leer un edificio de un formato abierto y levantar su techo.
command-import-folder = Leer todos los archivos de edificios de una carpeta y luego elegir un edificio.
command-save = Escribir la obra en su archivo.
command-save-as = Escribir la obra en otro archivo.
command-load-kit = Tomar los módulos, los tapajuntas y las piezas de un archivo de kit.
command-load-rule-book = Revisar esta obra con otro libro de reglas.
command-load-prices = Poner precio al pedido con otra lista.
command-compare-job = Comparar este pedido con el de otra obra.
command-add-offer = Poner los precios de otro proveedor junto a estos.
command-rule-book = Leer y cambiar los límites y las reglas de esta obra.
command-save-rule-book = Escribir el libro de reglas, con sus cambios, en un archivo.
command-compare-rule-book = Ver en qué difiere otro libro de reglas de este.
command-quit = Cerrar el programa; antes se le pregunta por los cambios sin guardar.
command-export-by-part = Un PDF del pedido por pieza, para el proveedor.
command-export-by-stage = Un PDF del pedido por etapa de trabajo, para la cuadrilla.
command-export-workbook = El pedido como libro de cálculo con una hoja para cada lista.
command-export-csv = El pedido como tabla que lee cualquier hoja de cálculo.
command-export-text = El pedido como texto simple, para pegar en un mensaje.
command-export-json = El pedido como datos para otros programas.
command-print-build = Un PDF del techo con las líneas que se trazan.
command-print-checklist = Un PDF de la lista de la cuadrilla, con casillas para marcar.
command-print-pallet = Un PDF para contar la entrega.
command-print-claim = Un PDF de lo que faltó, llegó dañado o sobró.
command-export-svg = La planta como líneas, para programas de dibujo.
command-export-geojson = La planta en su lugar del globo, para mapas.
command-export-glb = La casa en 3D, para programas de 3D.
command-save-steps = Todos los pasos desde que se abrió la obra, como archivo de ediciones.
command-undo = Deshacer el último paso.
command-redo = Rehacer el último paso que se deshizo.
command-history = Enumerar todos los pasos y volver a cualquiera.
command-delete = Borrar lo seleccionado; un módulo seleccionado se quita del bloque.
command-copy = Poner los bloques y penetraciones seleccionados en el portapapeles: para otro lugar, faldón, ventana u obra.
command-cut = Poner los bloques y penetraciones seleccionados en el portapapeles, y quitarlos de este techo.
command-paste = Poner lo que se copió: un clic o Entrar lo pone donde se ve su contorno.
command-duplicate = Poner otro junto a lo seleccionado, en el mismo faldón, donde haya lugar.
command-nearer = Mirar el dibujo de más cerca.
command-farther = Mirar el dibujo de más lejos.
command-larger = Dibujar palabras, botones y campos más grandes, hasta el triple.
command-smaller = Dibujar palabras, botones y campos más pequeños.
command-usual-size = Dibujar palabras, botones y campos en su tamaño normal.
command-start-page = Seguir con una obra abierta hace poco, o empezar otra.
command-hold-all = Seleccionar todos los bloques y penetraciones, para moverlos o borrarlos juntos.
command-copy-picture = Poner el dibujo en el portapapeles como se ve.
command-copy-svg = Poner la planta, o el faldón mostrado, en el portapapeles como líneas.
command-copy-steps = Poner todos los pasos desde que se abrió la obra en el portapapeles, como ediciones.
command-fill = Colocar el mayor número de módulos que permiten las reglas en el faldón seleccionado, o en todos.
command-copy-to-face = Copiar el bloque seleccionado a otro faldón.
command-split = Cortar en dos el bloque seleccionado junto al módulo seleccionado.
command-join = Unir el bloque seleccionado con el más cercano que esté a ras.
command-align = Alinear el bloque seleccionado con el más cercano.
command-roof-report = Áreas, pendientes y largos de bordes del techo, para pedir tejas.
command-coursing = Poner la exposición y la primera hilada de un faldón.
command-fit-up = Anotar el entablado como se midió y encontrar la línea y la separación que le quedan.
command-lines = Mostrar en una esquina del dibujo lo que significa cada tipo de línea.
command-pathways = Mostrar los pasos que quedan libres para los bomberos.
command-feet-inches = Mostrar longitudes en pies, pulgadas y dieciseisavos.
command-metric = Mostrar longitudes en metros y milímetros.
command-language = Mostrar todo en este idioma.
command-theme = Cambiar entre ventana oscura y clara.
command-lesson = Aprender el programa en una primera obra, un paso a la vez.
command-leave-lesson = Cerrar los pasos; la obra se queda.
command-find = Buscar un comando por sus palabras, o un faldón, parte, bloque o penetración adonde ir.
command-menus = El teclado va a los menús; las flechas los recorren, Entrar abre.
command-held-menu = Lo que muestra un clic derecho sobre ello.
command-keys = Enumerar todos los comandos que tienen tecla.
command-glossary = Qué significan las palabras de techadores e instaladores.
command-cautions = Lo que este plan no hace por usted. Léalo antes de que nadie suba.
command-checklist = Lo que la cuadrilla revisa antes, durante y después del trabajo.

## Menus, commands and windows

window-file = Archivo
window-edit = Edición
window-view = Ver
window-help = Ayuda
window-new-job = Obra nueva
window-open-job = Abrir obra…
window-open-recent = Abrir reciente
window-open-the-sample = Abrir el ejemplo
window-export = Exportar
window-write-what-to-order-to = Escribir lo que se pide: para imprimir, para una hoja de cálculo, para leer o para otro programa; lo que imprime la cuadrilla; o la planta para mapas, la casa para programas de 3D
window-order-as-xlsx = Pedido como XLSX…
window-order-to-print-by-part = Pedido para imprimir, por pieza…
window-order-to-print-by-stage = Pedido para imprimir, por etapa…
window-plan-to-build-from-to = Plano para construir, para imprimir…
window-plan-as-svg = Planta como SVG…
window-copy-the-drawing-as-a = Copiar el dibujo como imagen
window-copy-the-drawing-as-svg = Copiar el dibujo como SVG
window-copy-the-steps-since-opening = Copiar los pasos desde que se abrió como ediciones
window-steps-since-opening-as-edits = Pasos desde que se abrió como ediciones…
window-the-steps-are-on-the = Los pasos están en el portapapeles como ediciones: repetidos sobre la obra tal como se abrió, hacen esta.
window-the-steps-could-not-be = No se pudieron escribir los pasos
window-the-drawing-is-on-the = El dibujo está en el portapapeles.
window-the-drawing-is-on-the-clipboard = El dibujo está en el portapapeles como SVG.
window-checklist-to-print = Lista de verificación para imprimir…
window-pallet-list-to-print = Lista de tarimas para imprimir…
window-delivery-claim-to-print = Reclamo de entrega para imprimir…
window-print = Imprimir…
window-write-a-pdf-of-this = Escribir un PDF de esta lista, con casillas para marcar
window-order-as-text = Pedido como texto…
window-order-as-csv = Pedido como CSV…
window-order-as-json = Pedido como JSON…
window-load-a-kit = Cargar un kit…
window-load-a-rule-book = Cargar un libro de reglas…
window-load-a-price-list = Cargar una lista de precios…
window-quit = Salir
window-undo = Deshacer
window-redo = Rehacer
window-delete-what-is-selected = Borrar lo seleccionado
window-copy = Copiar
window-cut = Cortar
window-paste = Pegar
window-duplicate = Duplicar
window-nearer = Acercar
window-farther = Alejar
window-larger = Letra más grande
window-smaller = Letra más pequeña
window-usual-size = Letra normal
window-start-page = Página de inicio
window-fit = Ajustar
window-show-all-of-it = Mostrar todo
window-the-roof-from-above-north = El techo desde arriba, el norte hacia arriba
window-face-on = Un faldón
window-one-face-true-to-size = Un faldón solo, en tamaño real, su alero abajo
window-face-shown = Faldón mostrado
window-course-lines-in-plan = Líneas de hilada en planta
window-dark-or-light = Oscuro o claro
window-light = Claro
window-dark = Oscuro
window-feet-and-inches = Pies y pulgadas
window-metric = Métrico
window-before-anyone-climbs = Antes de que nadie suba
window-keys = Teclas
window-find-a-command = Buscar…
window-what-to-do = Qué hacer, o adónde ir
window-type-a-word-of-what = Un comando, un faldón, una parte, un bloque, un tubo
window-no-command-has-these-words = Nada tiene estas palabras. Pruebe una sola de ellas.
window-there-is-nothing-that-this = Por ahora no hay nada a lo que esto se pueda hacer.
window-ok = Aceptar
window-cancel = Cancelar
window-nudge-by-1-in = Mover 1 in
window-arrow-keys = Flechas
window-nudge-by-1-ft = Mover 1 ft
window-shift-arrow-keys = Mayús + flechas
window-nudge-by-1-16-in = Mover 1/16 in
window-alt-arrow-keys = Alt + flechas
window-aim-while-drawing = Apuntar al dibujar o colocar; fijarlo
window-aim-keys = Flechas 1 pie, con Mayús 10 pies, con Alt 1 pulgada; Entrar
window-menus = Ir a los menús
window-held-menu = Menú de lo seleccionado
window-switch-the-selected-module = Quitar o poner el módulo seleccionado
window-x-or-double-click = X o doble clic
window-hold-several-things = Seleccionar varias cosas
window-drag-a-box-or-shift = Arrastre un recuadro, o Mayús + clic
window-add-a-corner-to-a = Agregar una esquina a un lado
window-double-click-the-side = Doble clic en el lado
window-drag-without-snapping = Arrastrar sin ajuste
window-ctrl-or-alt = Ctrl o Alt
window-drag-one-faces-corner-alone = Arrastrar la esquina de un solo faldón
window-shift = Mayús
window-let-go-give-up-a = Un paso atrás: una esquina, lo escrito, un arrastre, lo seleccionado; de un panel de vuelta al dibujo
window-esc = Esc
window-pan = Desplazar
window-space-middle-or-right-drag = Espacio, arrastre con botón central o derecho
window-select = Seleccionar
window-draw-face = Dibujar techo
window-penetration = Penetración
window-tape = Cinta
window-length-of-this-side = Longitud de este lado
window-angle = Ángulo
window-to-the-side-before-on = Con el lado anterior, hacia donde apunta el cursor: 90 es a escuadra, 135 un mirador. Vacío: hacia donde apunte.
window-bearing = Rumbo
window-of-the-first-side-by = Del primer lado según la brújula: 0 es norte, 90 este. Vacío: hacia donde apunte.
window-size = Medida
window-size-of-the-notch = Medida del recorte
window-type-both-lengths-across-and = Escriba las dos longitudes, a lo ancho y hacia arriba: 30' x 48'.
window-type-the-angle-in-degrees = Escriba el ángulo en grados, como 90 o 22.5.
window-set-the-corner-across-or = Haga clic en la esquina opuesta, o escriba la medida y Entrar.
window-square-to-the-first-side = a escuadra con el primer lado
window-square-it = Escuadrarlo
window-turns-sides-that-are-nearly = Gira los lados casi a escuadra hasta alinearlos con las dos direcciones de la casa. Los lados inclinados se quedan como están.
window-close-the-outline = Cerrar el contorno
window-take-back-a-corner = Quitar una esquina
window-due-east-west = exactamente este–oeste
window-due-north-south = exactamente norte–sur
window-at-45 = a 45°
window-in-line-with-a-corner = en línea con una esquina
window-closes-the-face = de vuelta en la primera esquina: listo
window-in-the-middle-of-the = en el centro del faldón
window-point-where-the-side-should = Apunte hacia donde debe ir el lado y oprima Entrar.
window-a-side-is-longer-than = Un lado debe medir más de 0.
window-an-outline-has-at-least = Un contorno tiene al menos tres esquinas: haga clic en otra.
window-these-corners-lie-on-one = Estas esquinas están sobre una recta y no forman contorno: quite una.
window-a-hole-lies-inside-one = Un hueco está dentro de un faldón, un patio dentro de los muros de una parte: quite esquinas hasta que todas lo estén.
window-there-is-no-face-here = Aquí no hay faldón: oprima sobre uno para colocar un bloque.
window-there-is-no-face-to = Todavía no hay faldón que mostrar: dibuje uno primero.
window-a-face-keeps-its-last = Un faldón conserva sus últimas tres esquinas: mejor borre el faldón.
window-delete-is-for-what-is = Borrar es para lo seleccionado en el dibujo: haga clic ahí primero.
window-switch-this-module-on = Volver a poner este módulo
window-switch-this-module-off = Quitar este módulo
window-switch-all-modules-on = Volver a poner todos los módulos
window-add-a-corner-here = Agregar aquí una esquina
window-delete-this-corner = Borrar esta esquina
window-delete-the-block = Borrar el bloque
window-delete-the-penetration = Borrar la penetración
window-delete-the-face = Borrar el faldón
window-show-face-on = Mostrar solo este faldón
window-place-a-block = Colocar un bloque
window-start-with-the-roof = Empiece por el techo
window-draw-the-walls-one-corner = 1.  Dibuje los muros: una esquina y la medida, como 48' x 30'. El techo se levanta sobre ellos, de dos o de cuatro aguas. O dibújelo faldón por faldón.
window-mark-what-comes-through-the = 2.  Marque lo que atraviesa el techo: respiraderos, tubos, chimeneas.
window-place-a-block-of-modules = 3.  Coloque un bloque de módulos y arrástrelo. Los hallazgos y las cantidades cambian conforme lo mueve.
window-raise-a-roof-over-the = Levantar un techo sobre los muros
window-draw-a-face = Dibujar un faldón
window-open-a-job = Abrir una obra…
window-the-job = La obra
window-name = Nombre
window-crew-notes = Notas
window-units = Unidades
window-a-name-is-needed = Se necesita un nombre.
window-type-a-whole-number-from = Escriba un número entero de 1 a 1000.
window-rise-in-12-of-run = Lo que sube por cada 12 en horizontal: 6:12. También vale un ángulo (26.6°) o un porcentaje (50%).
window-downslope = Cae hacia
window-the-way-that-water-runs = Hacia donde corre el agua: grados desde el norte en el sentido del reloj, o N, NE, E …
window-height-of-the-face-at = Altura del faldón en su esquina inferior izquierda, sobre cualquier nivel que sea el mismo en toda la obra.
window-how-much-of-each-course = Cuánto de cada hilada queda a la intemperie, pendiente arriba. Lo usual es 5" o 5 5/8" (práctica común, sin fuente).
window-first-course-line = Primera línea de hilada
window-from-the-eave-up-to = Del alero a la primera línea de hilada.
window-sides-true-length = Lados, longitud real
window-worked-out-from-the-roof = calculado según el techo
window-the-kind-follows-from-the = El tipo resulta de los faldones. Elija uno aquí solo donde el techo es de otra manera.
window-the-outline-folds-over-itself = El contorno se cruza a sí mismo o no tiene área: separe sus esquinas, o deshaga.
window-east = Este
window-north = Norte
window-in-plan-from-the-corner = En planta, desde la esquina donde empieza el marco propio del faldón.
window-kind = Tipo
window-shape = Forma
window-round = redonda
window-rectangle = rectángulo
window-any-outline = cualquier contorno
window-across = Diámetro
window-along-the-eave = A lo largo del alero
window-up-the-slope = Pendiente arriba
window-as-taped-on-the-deck = Como se midió con cinta en el entablado.
window-clearance = Holgura
window-how-far-modules-stay-away = Qué tan lejos quedan los módulos, medido en la pendiente.
window-as-the-book-says = Como dice el libro
window-from-the-lower-left-of = De la esquina inferior izquierda del faldón a su centro, en la pendiente.
window-it-lies-beside-all-faces = Está fuera de todos los faldones: arrástrela a uno.
window-rows = Filas
window-from-the-eave-up = Contando desde el alero.
window-modules-in-a-row = Módulos por fila
window-along-the-eave-2 = A lo largo del alero.
window-modules-lie = Lado largo
window-long-side-along-the-eave = a lo largo del alero
window-long-side-up-the-slope = pendiente arriba
window-the-gap-between-neighbouring-modules = El espacio entre módulos vecinos; el kit da su rango.
window-on-face = En el faldón
window-from-the-left-end-of = Del extremo izquierdo del faldón al borde izquierdo del bloque, en la pendiente.
window-up-from-the-eave = Desde el alero
window-from-the-lowest-point-of = Del punto más bajo del faldón, pendiente arriba. En un bloque: donde se traza la línea del riel base.
window-shift-rows = Correr filas
window-to-the-right-against-the = Hacia la derecha respecto a la esquina del bloque. O arrastre el asa al final de una fila.
window-locked = Fijado
window-a-locked-block-stays-where = Un bloque fijado se queda donde está cuando se acomoda un arreglo.
window-quantities = Cantidades
window-nothing-to-order-yet-place = Todavía no hay nada que pedir: coloque un bloque, y aquí se cuentan sus piezas.
window-accepted-by-a-person = Aceptados por una persona
window-do-this-undo-takes-it = Hacer esto; deshacer lo revierte. Se probó: quedan menos hallazgos de este peso, y ninguno nuevo.
window-looking-for-a-fix = Buscando una corrección…
window-no-fix-was-found-among = No se encontró ninguna corrección entre movimientos, filas, módulos y pasos.
window-no-single-step-clears-it = Ningún paso solo lo resuelve y conserva tantos módulos; juntos sí:
window-no-single-step-clears-it-these = Ningún paso solo lo resuelve; estos juntos sí:
window-waive = Dispensar…
window-accept-it-again = Aceptar de nuevo…
window-accept-this-finding-with-a = Aceptar este hallazgo, con una razón que aparece en cada salida.
window-why-may-it-be-built = ¿Por qué se puede construir así?
window-who-says-so = ¿Quién lo dice?
window-waive-it = Dispensarlo
window-write-a-reason-and-a = Escriba primero una razón y un nombre.
window-take-the-waiver-back = Retirar la dispensa
window-modules-on-the-roof-their = Módulos en el techo, su potencia nominal y en cuánto se vende la obra: renglones, impuesto, entrega, gastos generales, ganancia.
window-that-cant-be-done = Eso no se puede hacer
window-this-file-cant-be-opened = Este archivo no se puede abrir
window-the-job-could-not-be = No se pudo guardar la obra
window-the-order-could-not-be = No se pudo escribir el pedido
window-the-sheet-could-not-be = No se pudo escribir la hoja
window-the-changes-since-it-was = Los cambios desde la última vez que se guardó se pierden si no los guarda ahora.
window-dont-save = No guardar
window-path-of-the-file = Ruta del archivo
window-replace-it = Reemplazarlo
window-type-where-the-file-is = Escriba dónde está el archivo, por ejemplo /home/me/jobs/alder-court.chalk.json.
window-this-is-a-folder-add = Esto es una carpeta: agregue un nombre de archivo.
window-there-is-a-file-of = Ya hay un archivo con este nombre. Oprima “Reemplazarlo” para escribir encima.
window-given-up = Abandonado: { $what }. Rehacer lo trae de vuelta.
window-unsaved-work-was-kept = Se conservó trabajo sin guardar
window-the-program-did-not-end = El programa no terminó bien la última vez. Conservó una copia de lo que no estaba guardado; los archivos de las obras están como estaban.
window-open-this-copy = Abrir esta copia
window-delete-it = Borrarla
window-ask-again-next-time = Preguntar la próxima vez
window-opened-from-the-kept-copy = Se abrió la copia conservada. Todavía no se ha guardado.
window-planning-aid-only-read-the = Solo ayuda para planear: lea las precauciones
window-chalkcourse-is-a-planning-aid = Chalkcourse es una ayuda para planear. No demuestra nada sobre su edificio. Confirme cada límite con los códigos adoptados localmente, la certificación del producto y las instrucciones del fabricante.
window-structural-design-belongs-to-a = El diseño estructural corresponde a un ingeniero con licencia. El trabajo eléctrico corresponde a un electricista calificado y con licencia donde se exige.
window-falls-kill-keep-off-the = Las caídas matan. No suba al techo sin protección contra caídas, con el entablado mojado o con hielo, ni con viento.
window-direct-current-kills-and-it = La corriente directa mata, y no se puede apagar en el módulo: un módulo está energizado siempre que le da la luz.
window-mark = {""}

## Circuits and wires

wires-planning-aid = Una ayuda para planear. El diseño y el trabajo eléctricos son de personas con licencia donde la ley lo dice. Los módulos tienen voltaje siempre que les da la luz: ni un desconectador abierto ni el apagado rápido dejan sin voltaje los cables del propio módulo. Nunca separe conectores de cd con carga.
wires-not-checked = No se revisa: soportes y curvas de los cables, espacio de trabajo, lo que pueden interrumpir los interruptores, el cableado y las cargas de la propia casa, si una caja está en un paso libre, lo que dicen las etiquetas, y cada asunto del que una regla dice que algo no se sabe. Un electricista los revisa según el código adoptado.
wires-edition = Las secciones son las del NEC { $year }. Solo se leyó el texto de 2017; los posteriores se citan de memoria, y el de 2026 no se leyó.
wires-circuit = el circuito { $name }
wires-a-circuit = un circuito
wires-junction = la caja { $name }
wires-title-string-voltage = Las cadenas quedan bajo el voltaje máximo
wires-reason-string-voltage = En la mañana más fría una cadena tiene su voltaje más alto. Si es demasiado destruye el inversor, y un arco no se apaga solo.
wires-title-string-start = Las cadenas conservan voltaje suficiente en días de calor
wires-reason-string-start = Las celdas calientes dan menos voltaje. Por debajo de su mínimo el inversor deja de trabajar.
wires-title-circuit-size = Los circuitos tienen los módulos que permiten sus dispositivos
wires-reason-circuit-size = Cada fabricante dice cuántos dispositivos como mínimo y como máximo lleva un circuito; un interruptor no lleva más.
wires-title-inverter-input = Cada entrada recibe lo que admite
wires-reason-inverter-input = Más cadenas o más corriente de la que admite una entrada calientan conectores y conductores.
wires-title-parallel-strings = Las cadenas de una misma entrada son iguales
wires-reason-parallel-strings = Una cadena más corta, o que mira a otro lado, saca a las demás de su punto de trabajo, y ellas la alimentan.
wires-title-string-faces = Una cadena de módulos sin dispositivos mira a un solo lado
wires-reason-string-faces = El módulo con menos sol frena toda la cadena.
wires-title-leads-reach = Los cables alcanzan de módulo a módulo
wires-reason-leads-reach = Un cable estirado para que alcance rompe su conector. Nunca se unen conectores de dos marcas.
wires-title-device-input = Cada dispositivo admite su módulo
wires-reason-device-input = Un dispositivo falla cuando su módulo da más de lo que admite.
wires-title-modules-wired = Todo módulo está en un circuito
wires-reason-modules-wired = Un módulo fuera de todo circuito no da nada, y sus cables siguen con voltaje.
wires-geometry-modules-wired = un módulo está en un circuito o en ninguno
wires-by-inverter-volts = el voltaje máximo de entrada del inversor
wires-by-module-volts = el voltaje de sistema del módulo
wires-by-dwelling-volts = 600 V en viviendas
wires-by-least-volts = el voltaje mínimo del inversor
wires-by-device-count = lo que el fabricante de los dispositivos permite en un circuito
wires-by-device-watts = la potencia que el fabricante de los dispositivos permite en una cadena
wires-by-string-current = la corriente de la cadena
wires-by-breaker = el interruptor del ramal
wires-by-one = un módulo es lo mínimo
wires-string-voltage = { $circuit }: { $modules } dan hasta { $volts } V a la temperatura más baja; lo máximo es { $most } V, por { $by }. Quítele módulos.
wires-string-start = { $circuit }: { $modules } con celdas calientes trabajan a { $volts } V; el inversor necesita { $least } V. Agréguele módulos.
wires-circuit-size = { $circuit } tiene { $modules }; admite de { $least } a { $most }, por { $by }.
wires-from-to = de { $least } a { $most }
wires-no-input = { $circuit } no va a ninguna entrada de un inversor.
wires-no-input-measured = ninguna entrada
wires-no-input-required = una entrada de un inversor
wires-input-strings = { $circuit } es la cadena { $strings } de su entrada, que admite { $most }. Llévelo a otra.
wires-input-current = { $circuit } sube la corriente de su entrada a { $amps } A; la entrada admite { $most } A.
wires-parallel-faces = { $circuit } mira a otro lado que { $other } en la misma entrada. Llévelo a otra entrada.
wires-parallel-counts = { $circuit } tiene { $modules }, y { $other } en la misma entrada tiene { $same }. Iguálelos, o lleve uno a otra entrada.
wires-string-faces = { $circuit } tiene módulos que miran a distintos lados, y ningún dispositivo.
wires-two-ways = distintos lados
wires-one-way = un solo lado
wires-leads-short =
    { $links ->
        [one] { $circuit }: los cables y extensiones no alcanzan entre dos módulos: { $apart }, con cables de { $reach } en total.
       *[other] { $circuit }: los cables y extensiones no alcanzan en { $links } lugares, el primero de { $apart }, con cables de { $reach } en total.
    }
wires-leads-nowhere =
    { $links ->
        [one] { $circuit }: dos módulos seguidos están en faldones que no se tocan.
       *[other] { $circuit }: los cables no alcanzan en { $links } lugares, el primero entre faldones que no se tocan.
    }
wires-no-way = faldones que no se tocan
wires-device-input = el módulo da { $has }, y su dispositivo admite { $most }.
wires-not-wired =
    { $modules ->
        [one] { $block }: { $modules } módulo no está en ningún circuito.
       *[other] { $block }: { $modules } módulos no están en ningún circuito.
    }
wires-circuit-gone =
    { $modules ->
        [one] { $circuit } nombra { $modules } módulo que no está. Vuelva a ponerlo, o quítelo del circuito.
       *[other] { $circuit } nombra { $modules } módulos que no están. Vuelva a ponerlos, o quítelos del circuito.
    }
wires-kit-without-wiring = el kit no dice cómo se conectan sus módulos
wires-no-circuit-yet = aún no se ha trazado ningún circuito
wires-with-devices = el kit tiene un dispositivo en cada módulo
wires-without-devices = el kit no tiene dispositivos en sus módulos
wires-branches-instead = los circuitos del kit son ramales de ca
wires-unknown-inverter = qué inversor lleva
wires-unknown-lowest = la temperatura más baja
wires-unknown-hottest = cuánto se calientan las celdas
wires-title-arc-fault = Algo se detiene ante un arco
wires-reason-arc-fault = Un arco de corriente directa no se apaga solo; le prende fuego al techo.
wires-title-ground-fault = Algo se detiene ante una falla a tierra
wires-reason-ground-fault = Un conductor que toca metal pone con voltaje todo el arreglo para quien lo toque, y sigue quemando sin que se vea.
wires-title-overcurrent = Las cadenas llevan fusible donde otras pueden alimentar una falla
wires-reason-overcurrent = Las cadenas de una misma entrada alimentan a la que falla; sin fusible se queman sus conductores y módulos.
wires-title-conductor-size = Los conductores aguantan su corriente donde están
wires-reason-conductor-size = Un conductor muy delgado para su corriente y su calor pierde el aislamiento.
wires-title-voltage-drop = Se pierde poco voltaje en el camino
wires-reason-voltage-drop = Lo que se pierde en el camino es calor, y con dispositivos de ca sube el voltaje hasta que se desconectan. Es un consejo, no un límite.
wires-title-grounding-conductor = El conductor de tierra es bastante grueso
wires-reason-grounding-conductor = Lleva la corriente de una falla hasta que algo desconecta.
wires-title-bonding = El arreglo está unido a tierra, y sigue así
wires-reason-bonding = El metal que no está unido a tierra queda con voltaje en una falla, también mientras falta un módulo.
wires-title-plugs-mate = Los conectores que se unen son de una misma marca
wires-reason-plugs-mate = Los conectores de dos marcas entran uno en otro, se calientan y se queman.
wires-title-box-fill = Las cajas de empalme tienen espacio
wires-reason-box-fill = Los conductores apretados en una caja pierden el aislamiento.
wires-title-raceway-fill = La tubería tiene espacio
wires-reason-raceway-fill = Una tubería muy llena pela los conductores al jalarlos, y guarda su calor.
wires-title-dc-ac-apart = Los circuitos de dos clases van separados
wires-reason-dc-ac-apart = Quien abre una caja por uno no debe encontrar el otro con voltaje.
wires-title-raceway-inside = La cd dentro del edificio va en metal
wires-reason-raceway-inside = Un arco dentro de plástico, en un ático, le prende fuego a la casa.
wires-title-rapid-shutdown = El apagado deja poco con voltaje
wires-reason-rapid-shutdown = Los bomberos cortan donde tienen que cortar.
wires-title-box-place = Las cajas de empalme sobre el techo están despejadas
wires-reason-box-place = Una caja en una orilla, en una limahoya o bajo un módulo gotea, o no se alcanza.
wires-title-point-of-connection = El tablero admite la salida
wires-reason-point-of-connection = Una barra se alimenta por dos lados y está protegida por uno: puede llevar más de lo que aguanta.
wires-title-readings = Las lecturas son las que deben ser
wires-reason-readings = Una cadena que mide mal está mal conectada, o dañada: averígüelo antes de encenderla.
wires-arc-fault = { $circuit } tiene { $volts } V de corriente directa, y su inversor no se detiene ante un arco. Desde 80 V algo debe hacerlo.
wires-not-provided = no lo tiene
wires-provided = lo tiene
wires-ground-fault = { $circuit }: su inversor no se detiene ante una falla a tierra, ni otra cosa lo hace.
wires-no-fuse = { $circuit }: las otras cadenas de su entrada pueden mandarle { $amps } A, más de lo que aguantan sus conductores o el fusible serie de sus módulos. Ponga un fusible en cada cadena, o llévelas a otras entradas.
wires-fuse-small = { $circuit }: un fusible de { $fuse } A es muy chico; su corriente pide { $least } A.
wires-fuse-large = { $circuit }: un fusible de { $fuse } A es muy grande; los módulos admiten { $most } A.
wires-leads = cables bajo el arreglo
wires-home-run-stretch = bajada a la caja
wires-leg-stretch = tramo { $leg } de la bajada
wires-thin-carried = { $circuit }, { $stretch }: { $gauge } aguanta { $has } A donde está, con todas las correcciones; pueden correr { $asked } A.
wires-thin-terminals = { $circuit }, { $stretch }: en sus terminales { $gauge } admite { $has } A; 1.25 veces la corriente son { $asked } A.
wires-thin-protected = { $circuit }, { $stretch }: un interruptor de { $has } A no protege { $gauge }; lo máximo son { $asked } A.
wires-take-gauge = { $message } Use { $gauge }.
wires-take-none = { $message } Tampoco bastaría 4 AWG: póngalo en un lugar más fresco, o con menos conductores juntos.
wires-drop-whole = { $circuit } pierde { $volts } V, { $share }, en su camino a su corriente nominal.
wires-drop-part = { $circuit } pierde { $volts } V, { $share }, a su corriente nominal en lo que se sabe de su camino.
wires-box-full = { $junction } tiene { $holds } pulgadas cúbicas; sus conductores ocupan { $taken }. Use una más grande.
wires-raceway-full = { $junction }: { $conductors } conductores llenan { $share } de la tubería; lo máximo es { $most }. Use una más grande, u otra más.
wires-ground-thin = { $circuit }: un conductor de tierra de { $gauge } es muy delgado para { $device } A; use { $least }.
wires-ground-bare = un conductor de tierra de { $gauge } es más delgado que 6 AWG: protéjalo contra golpes.
wires-connection = la salida de { $amps } A, { $kilowatts } kW, es más de lo que admite { $way }: lo más grande que cabe son { $most } A, { $fits } kW.
wires-connection-nothing = la salida de { $amps } A, { $kilowatts } kW, es más de lo que admite { $way }: nada cabe. Escoja otra forma con un electricista con licencia.
wires-way-opposite-ends = el extremo de la barra opuesto al principal (120 %)
wires-way-whole-bus = una barra que aguanta el principal y la salida juntos (100 %)
wires-way-sum = una barra que aguanta la suma de todos los interruptores menos el principal
wires-way-centre-fed = un extremo de un tablero alimentado por el centro (120 %)
wires-way-feeder = el alimentador
wires-way-supply-side = el lado de la acometida, antes del principal
wires-not-apart = { $junction } y su tubería llevan circuitos del arreglo y otros de otra clase de corriente. Sepárelos, o ponga otra tubería.
wires-together = juntos
wires-apart = separados
wires-no-module-shutdown = cadenas sin dispositivos: no hay apagado en el módulo. Dentro del arreglo siguen con voltaje de día; pregunte qué acepta en su lugar el código adoptado.
wires-shutdown-boundary = las cadenas sin dispositivos siguen con voltaje hasta { $junction }, a { $away } del arreglo; más allá de 1 pie deben apagarse. Ponga un interruptor aprobado dentro de ese pie, o dispositivos en los módulos.
wires-shutdown-boundary-off = las cadenas sin dispositivos siguen con voltaje hasta { $junction }, en un faldón sin módulos; más allá de 1 pie del arreglo deben apagarse. Ponga un interruptor aprobado dentro de ese pie, o dispositivos en los módulos.
wires-on-another-face = en otro faldón
wires-standby-volts = { $circuit } conserva { $volts } V al apagarse; lo máximo son 30 V. Póngale menos dispositivos.
wires-inside-not-metal = { $junction }: la bajada pasa por dentro del edificio, y la tubería no es de metal.
wires-inside-free = { $junction } está bajo la cubierta, y un tramo de su bajada va al aire. Póngalo en tubería de metal.
wires-no-metal = sin metal
wires-metal = metal
wires-box-near = { $junction } queda a { $away } { DE($thing) }; se piden { $asked }. Muévala.
wires-box-over = { $junction } pasa por encima { DE($thing) }. Muévala.
wires-box-nowhere = { $junction } está sobre el techo, y en su lugar no hay ningún faldón.
wires-no-face = ningún faldón
wires-on-a-face = un faldón
wires-box-under-modules = { $junction }: su tapajuntas llega { $depth } bajo los módulos. Muévala.
wires-reading-volts = { $circuit } marca { $volts } V a { $celsius } °C; se esperan de { $least } a { $most } V. Cuente sus módulos y busque uno invertido o dañado antes de encender nada.
wires-reading-polarity = { $circuit }: + y − están cambiados. Alto: corríjalo con el inversor desconectado y los conectores abiertos.
wires-reading-insulation = { $circuit }: su aislamiento es de { $megohms } MΩ; lo mínimo es { $least } MΩ. Busque el cable dañado antes de encenderlo.
wires-reading-test = { $circuit }: su aislamiento se probó con { $volts } V; su voltaje pide { $asked } V.
wires-reading-connected = { $circuit }: su aislamiento se probó con la electrónica conectada; los fabricantes no lo permiten, o no lo dicen. Revise si todavía trabaja.
wires-reversed = invertida
wires-as-marked = como está marcada
wires-tested-connected = probado con todo conectado
wires-tested-alone = probado con la electrónica desconectada
wires-not-listed = el kit no da ninguna aprobación de sus zapatas y puentes de unión.
wires-no-listing = sin aprobación
wires-a-listing = con aprobación
wires-path-opens = el camino a tierra se abre al sacar un módulo: el conductor no pasa entero por las zapatas. Ponga un puente antes de sacar uno.
wires-opens = se abre
wires-stays-whole = queda entero
wires-plugs-differ = { $circuit } une { $plug } con { $other }: nunca se unen conectores de dos marcas.
wires-no-box = ningún circuito va todavía a una caja de empalme
wires-no-raceway = ninguna caja tiene todavía una bajada en tubería
wires-no-reading = aún no se ha escrito ninguna lectura
wires-kit-silent = el kit no dice: { $what }
wires-gap-lead-gauge = qué calibre tienen los conductores de sus cables
wires-gap-home-run = los conductores a la caja de empalme
wires-gap-run-down = los conductores de la caja de empalme hacia abajo
wires-gap-raceway = la tubería
wires-gap-own-area = qué grueso tienen sus conductores con aislamiento
wires-gap-box-volume = cuánto espacio tiene la caja de empalme
wires-gap-box-flashing = qué tan grande es el tapajuntas de una caja
wires-gap-grounding = el conductor de tierra
wires-gap-bonding = cómo se une a tierra el arreglo
wires-gap-arc-fault = si su inversor se detiene ante arcos
wires-gap-ground-fault = si su inversor se detiene ante fallas a tierra
wires-unknown-highest = la temperatura más alta
wires-unknown-attic = cuánto se calienta el ático
wires-unknown-service = el tablero al que se conecta la salida
wires-unknown-other-breakers = la suma de los otros interruptores
wires-unknown-way-down = la bajada desde cada caja de empalme
wires-window = Un circuito admite de { $least } ({ $least_by }) a { $most } módulos ({ $most_by }; { $source }).
wires-circuit-line = Circuito { $name }: { $modules }, { $kilowatts } kW
wires-volts-from-to = Trabaja desde { $lowest } V; como máximo { $highest } V en frío
wires-volts-to = Como máximo { $highest } V
wires-amps = Como máximo { $most } A; conductores y protecciones según { $continuous } A ({ $source })
wires-meter = Un medidor muestra { $volts } V con el circuito abierto, a 25 °C y antes de encender los dispositivos
wires-meter-ac = Un medidor muestra { $volts } V de ca
wires-order = Se conecta en este orden (bloque fila-lugar): { $order }
wires-home = Bajada a la caja { $name }: { $ways }
wires-home-unknown = Bajada a la caja { $name }: no se conoce el recorrido; ponga la caja en un faldón que toque a este
wires-stretch-line = { $stretch }: { $gauge }, { $insulation }, { $long }; aguanta { $carries } A a { $celsius } °C
wires-length-unknown = largo desconocido
wires-device-line = Protección de { $device } A; como mínimo { $least } A ({ $source })
wires-device-lacking = Necesita fusible: otras de su entrada pueden mandarle { $amps } A ({ $source })
wires-no-device = No necesita protección: otras de su entrada pueden mandarle { $amps } A ({ $source })
wires-grounding-line = Conductor de tierra { $gauge } como mínimo, para { $device } A ({ $source })
wires-drop-line = Pierde { $volts } V, { $share }, en su camino hasta abajo
wires-drop-line-part = Pierde { $volts } V, { $share }, en lo que se sabe de su camino
wires-output-line = Salida de { $amps } A a { $volts } V, { $kilowatts } kW
wires-output-breaker = Interruptor de la salida de { $breaker } A; conductores { $gauge } como mínimo
wires-output-breaker-alone = Interruptor de la salida de { $breaker } A
wires-connection-line = Punto de conexión: { $way } ({ $source }); la salida más grande que cabe son { $most } A, { $kilowatts } kW
wires-connection-unknown = Punto de conexión: aún no se sabe; vea el tablero
wires-loose =
    { $modules ->
        [one] { $modules } módulo no está en ningún circuito.
       *[other] { $modules } módulos no están en ningún circuito.
    }
wires-left =
    { $modules ->
        [one] Quedó { $modules } módulo: ningún número de circuitos de { $least } a { $most } lo admite.
       *[other] Quedaron { $modules } módulos: ningún número de circuitos de { $least } a { $most } los admite.
    }
wires-fewest-circuits =
    { $circuits ->
        [one] un circuito
       *[other] { $circuits } circuitos, y con menos no caben
    }
wires-circuits-found =
    { $circuits ->
        [one] un circuito
       *[other] { $circuits } circuitos; con menos no se encontró
    }
wires-fewest-leads =
    { $leads ->
        [one] { $leads } extensión, y ninguna división lleva menos
       *[other] { $leads } extensiones, y ninguna división lleva menos
    }
wires-no-lead = ninguna extensión
wires-leads-at-least =
    { $leads ->
        [one] { $leads } extensión, al menos { $least }
       *[other] { $leads } extensiones, al menos { $least } en cualquier división
    }
wires-least-cable = { $cable } de recorrido, lo mínimo
wires-cable-at-least = { $cable } de recorrido, al menos { $least } en cualquier división
wires-claim = { $modules } que pueden compartir un circuito: { $circuits }; { $leads }; { $cable }. Entre todas las maneras de dividirlos en tantos circuitos dentro de estos límites y de conectarlos en cualquier orden, con los cables a lo largo del alero y pendiente arriba.
wires-held-circuits =
    { $circuits ->
        [one] Con { $most } módulos por circuito en vez de { $instead } ({ $by }), estos { $modules } irían en un circuito en vez de { $now }.
       *[other] Con { $most } módulos por circuito en vez de { $instead } ({ $by }), estos { $modules } irían en { $circuits } circuitos en vez de { $now }.
    }
wires-held-most = Con hasta { $most } módulos por circuito en vez de { $instead } ({ $by }), estos { $modules } formarían circuitos completos.
wires-held-least = Con un mínimo de { $least } módulos por circuito en vez de { $instead } ({ $by }), estos { $modules } formarían circuitos completos.
wires-held-modules = Estos { $modules } no forman circuitos completos; { $would } sí.
wires-extension-leads =
    { $leads ->
        [one] { $leads } extensión
       *[other] { $leads } extensiones
    }
wires-held-leads = Los cables de dos módulos alcanzan { $reach } entre los dos. Con cables de { $each } cada uno se salvarían { $apart }: { $takes } en vez de { $now }.
wires-held-trunk = La troncal alcanza { $reach } de conector a conector. Con { $each } entre conectores se salvarían { $apart }: { $takes } en vez de { $now }.

## Circuits in the window

circuits-title = Circuitos
circuits-title-help = Qué módulos forman un circuito, en qué orden se conectan, qué marca un medidor y adónde llevan.
circuits-layer = Circuitos y cables
circuits-layer-help = Dibuja los circuitos sobre sus módulos: el sentido de conexión, los dos extremos, el camino a la caja de conexiones y el cobre desnudo.
circuits-string-tool = Conectar
circuits-string-tool-help = Arrastre sobre los módulos uno tras otro para unirlos en un circuito, o púlselos uno por uno.
circuits-string-hint = Arrastre sobre los módulos en el orden de conexión; volver atrás quita el último. Desde un extremo de un circuito se sigue con él.
circuits-box-tool = Caja
circuits-box-tool-help = Coloque una caja de conexiones, donde terminan los circuitos y el cobre desnudo.
circuits-box-hint = Pulse donde va la caja de conexiones: lejos de aleros, limahoyas y pasos.
circuits-automatically = Conectar automáticamente
circuits-automatically-help = Hace de nuevo todos los circuitos: tan pocos como permiten el inversor y los equipos, luego tan pocas extensiones, luego el menor cable. Dice qué está demostrado. Deshacer lo quita.
circuits-stringing = Se busca menos cable…
circuits-stop-looking = Dejar estos
circuits-stop-looking-help = Termina la búsqueda; los circuitos quedan como están.
circuits-stringing-broke = La conexión automática se detuvo sola: un fallo de este programa. El trabajo está como estaba.
circuits-dropped = El trabajo cambió mientras se buscaban circuitos mejores, así que la respuesta se descartó.
circuits-nothing-to-string = Todavía no hay ningún módulo que conectar.
circuits-best-order = Mejor orden
circuits-best-order-help = Conecta los módulos de este circuito en el orden con menos extensiones y menos cable.
circuits-new = Otro circuito
circuits-new-help = Suelta este circuito: el próximo módulo empieza otro.
circuits-turn = Dar la vuelta
circuits-turn-help = El mismo orden desde el otro extremo: − y + cambian de lugar.
circuits-delete = Borrar el circuito
circuits-delete-box = Borrar la caja
circuits-change-wiring = Cambio del cableado
circuits-none-yet = Todavía no hay circuitos. Pulse «Conectar automáticamente», o tome la herramienta «Conectar» y arrastre sobre los módulos.
circuits-home = Camino a la caja de conexiones
circuits-copper = Cobre desnudo por todas las orejetas
circuits-no-lead = ningún cable alcanza
circuits-inverter = Inversor
circuits-no-inverter = ninguno elegido
circuits-another-inverter = Otro inversor
circuits-remove-inverter = Quitar este inversor
circuits-edition = Edición del NEC
circuits-lowest = Aire más frío
circuits-lowest-help = La temperatura más baja del aire que se espera: la media de las mínimas de cada año. Entonces los módulos dan su voltaje más alto.
circuits-highest = Aire más caliente
circuits-highest-help = La temperatura del aire que pasan dos de cada cien horas de verano. Entonces los conductores llevan menos.
circuits-hottest-cell = Celdas más calientes
circuits-hottest-cell-help = Cuánto se calientan las celdas a pleno sol con esa temperatura del aire. Entonces las series tienen su voltaje más bajo.
circuits-by-table = Voltaje más alto según la tabla del código
circuits-by-table-help = Con los factores de la tabla, en lugar del coeficiente del fabricante del módulo.
circuits-not-set = sin fijar
circuits-bad-temperature = Escriba una temperatura como -5 C o 23 F.
circuits-box = Caja de conexiones
circuits-no-box = todavía ninguna
circuits-input = Entrada
circuits-no-input = todavía ninguna
circuits-stands = Va
circuits-on-roof = sobre el techo, con tapajuntas
circuits-under-deck = debajo de la cubierta
circuits-legs = Bajada desde la caja
circuits-legs-help = Tramo por tramo desde la caja hasta el inversor o el tablero: cuánto mide y por dónde van los conductores.
circuits-add-leg = Añadir un tramo
circuits-remove-leg = Quitar este tramo
circuits-lies-in = Va por
circuits-free-air = aire libre
circuits-roof-raceway = canalización sobre el techo
circuits-attic = ático
circuits-wall = pared
circuits-above-roof = Sobre el techo
circuits-column-circuit = Circuito
circuits-column-modules = Módulos
circuits-column-power = kW
circuits-column-cold = Frío, V
circuits-column-standard = Medidor, V
circuits-column-hot = Calor, V
circuits-column-amps = Máx., A
circuits-column-leads = Ext.
circuits-column-to = Lleva a
circuits-column-help = Frío: el voltaje más alto que puede haber. Medidor: lo que marca un medidor con el circuito abierto a 25 °C, de los equipos de CC su voltaje de espera. Calor: el más bajo con que trabajan los módulos solos. Ext.: extensiones que lleva.

# $volts (text)
circuits-fact-cold = { $volts } V como máximo, en frío

# $volts (text)
circuits-fact-hot = { $volts } V con calor, trabajando

circuits-way-home = Caminos a la caja

# $first (text)
# $last (text)
circuits-two-ways = { $first } desde − y { $last } desde +

circuits-way-unknown = no se sabe: la caja no está en un faldón que toque a estos
circuits-strung-as = Conectado automáticamente
circuits-print-wires = Diagrama de cables para imprimir…
circuits-print-wires-help = Cada bloque como lo ve la cuadrilla: números de módulos, cables, extensiones, los dos extremos y el cobre desnudo.
circuits-print-one-line = Diagrama unifilar para imprimir…
circuits-print-one-line-help = De los módulos al tablero de servicio en una hoja: conductores, corrientes, qué los protege.
circuits-print-handover = Entrega al electricista para imprimir…
circuits-print-handover-help = Lo que debe marcar un medidor en cada circuito, campos para llenar, pares de apriete.
circuits-print-labels = Etiquetas para imprimir…
circuits-print-labels-help = Las etiquetas que pide el código, para recortar, con el lugar de cada una.
circuits-attic-air = Aire del ático
circuits-attic-air-help = Cuánto se calienta el ático un día así. Los conductores que van por allí llevan menos.
circuits-service = Tablero de servicio
circuits-bus = Barra, A
circuits-bus-help = La corriente nominal de la barra del tablero. Vacío si nadie la ha mirado.
circuits-main-breaker = Interruptor principal, A
circuits-other-breakers = Otros interruptores, A
circuits-other-breakers-help = La suma de todos los interruptores menos el principal, sin el de este conjunto. Vacío si nadie los contó.
circuits-connection = Conectado
circuits-bad-number = Escriba un número como 200 o 12.5.
circuits-reading = Lo que se midió
circuits-reading-help = Lo que un electricista leyó en el techo. Lo que cae fuera de lo esperado pasa a ser un hallazgo.
circuits-reading-celsius = Módulos a
circuits-reading-celsius-help = La temperatura de los módulos cuando se midió.
circuits-reading-volts = Abierto, V
circuits-reading-polarity = Polaridad
circuits-polarity-unknown = sin revisar
circuits-polarity-right = correcta
circuits-polarity-wrong = invertida
circuits-reading-insulation = Aislamiento, MΩ
circuits-reading-test = Probado a, V
circuits-reading-test-help = Nunca con equipos electrónicos conectados, salvo que su fabricante lo permita.
circuits-remove-reading = Quitar lo medido

# $name (text)
circuits-reading-of = Lectura del circuito { $name }

circuits-boxes = Cajas de conexiones
circuits-no-boxes = Todavía no hay caja de conexiones: los cables no terminan en ninguna parte.

# $name (text)
circuits-box-name = Caja { $name }

# $name (text)
circuits-heading = Circuito { $name }

# $name (text)
circuits-string-of = Conectar el circuito { $name }

# $name (text)
circuits-order-is-best = El circuito { $name } ya tiene su mejor orden.

# $name (text)
circuits-no-order = Los módulos del circuito { $name } no se pueden unir en ningún orden.

# $circuits (number)
circuits-made =
    { $circuits ->
        [one] { $circuits } circuito conectado.
       *[other] { $circuits } circuitos conectados.
    }

# $name (text)
# $modules (text)
# $facts (text)
circuits-live = Circuito { $name }: { $modules }; { $facts }

# $least (text)
# $most (text)
circuits-live-window = se permiten de { $least } a { $most }

# $volts (text)
circuits-live-volts = { $volts } V en frío

# $amps (text)
circuits-live-amps = { $amps } A como máximo

# $circuits (number)
circuits-box-words =
    { $circuits ->
        [one] caja de conexiones, { $circuits } circuito lleva a ella
       *[other] caja de conexiones, { $circuits } circuitos llevan a ella
    }

# $inverter (text)
# $input (text)
circuits-input-of = { $inverter }, entrada { $input }

# $input (text)
circuits-input-short = entrada { $input }

# $leg (text)
circuits-leg = Tramo { $leg }

## Texts of data files, by their English

data-module-405-w = Módulo, 405 W
data-levelling-foot = Pata niveladora
data-self-tapping-hex-screw-for-a = Tornillo hexagonal autorroscante, para pata
data-module-device = Dispositivo de módulo
data-bracket-for-a-module-device = Soporte para dispositivo de módulo
data-base-rail-8-ft-stick = Riel base, tramo de 8 ft
data-base-rail-splice = Empalme de riel base
data-end-cap-of-the-base-rail = Tapa del riel base, izquierda
data-end-cap-of-the-base-rail-right = Tapa del riel base, derecha
data-side-insert-48-in = Inserto lateral, 48 in
data-step-flashing-10-x-7-in = Tapajuntas escalonado, 10 x 7 in, doblado 5 y 5 in
data-side-counter-flashing-snap-on-48 = Contratapajuntas lateral a presión, 48 in
data-head-flashing-one-module-wide = Tapajuntas superior, de un módulo de ancho
data-snap-in-insert-for-a-head = Inserto a presión, para tapajuntas superior
data-head-support = Soporte superior
data-head-corner-flashing-left = Tapajuntas de esquina superior, izquierdo
data-head-corner-flashing-right = Tapajuntas de esquina superior, derecho
data-inside-corner-flashing = Tapajuntas de esquina interior
data-roofing-nail-12-ga-1-1 = Clavo de techo, calibre 12, 1 1/4 in
data-underlayment-fire-rated-48-in-x = Membrana base resistente al fuego, 48 in x 50 ft
data-cap-nail = Clavo con arandela
data-self-adhered-membrane-36-in-x = Membrana autoadherible, 36 in x 66.7 ft
data-l-shaped-corner-membrane = Membrana de esquina en L
data-starter-strip-peel-and-stick = Tira de arranque autoadhesiva
data-bonding-jumper-u-shaped = Puente de unión en U
data-screw-between-foot-and-module-fh = tornillo entre la pata y el módulo, FH-103
data-base-rail-and-its-screws = el riel base y sus tornillos
data-hooks-between-rows = los ganchos entre filas
data-lug = Zapata para el conductor de unión
data-bare-copper-conductor-solid-6-awg = Conductor de cobre desnudo, sólido, 6 AWG
data-lead-row-to-row = Cable de fila a fila
data-home-run-lead-set = Juego de cables de bajada
data-junction-box-with-roof-flashing = Caja de empalme con tapajuntas de techo
data-junction-box-under-the-deck = Caja de empalme, bajo el entablado
data-extension-lead-1-m = Extensión, 1 m
data-extension-lead-2-m = Extensión, 2 m
data-extension-lead-5-m = Extensión, 5 m
data-cable-for-home-runs-red-10-awg = Cable para bajadas, rojo, 10 AWG
data-cable-for-home-runs-black-10-awg = Cable para bajadas, negro, 10 AWG
data-plug-pair-for-home-runs = Par de conectores para bajadas
data-lug-bare-copper-10-to-6 = Zapata, cobre desnudo 10 a 6 AWG
data-terminals-in-the-junction-box = Terminales en la caja de empalme
data-inverter-dc-terminals = Inversor, terminales de cd
data-inverter-ac-terminals = Inversor, terminales de ca
data-inverter-7-6-kw-for-dc-devices = Inversor, 7.6 kW, para dispositivos de cd
data-inverter-11-5-kw-for-dc-devices = Inversor, 11.5 kW, para dispositivos de cd
data-trunk-extension-2-m = Extensión de troncal, 2 m
data-trunk-extension-5-m = Extensión de troncal, 5 m
data-trunk-cable-for-home-runs-12-awg = Cable troncal para bajadas, 12 AWG
data-conduit-3-4-in-10-ft = Tubo conduit, 3/4 in, tramo de 10 ft, estimado
data-labels-for-raceway-and-disconnect-allowance = Etiquetas para canalización y desconectador, estimado
data-sheathing-7-16-in-4-x = Tablero, 7/16 in, 4 x 8 ft, por reemplazar, estimado
data-ring-shank-nail-for-sheathing-2 = Clavo anillado para tablero, 2 3/8 in
data-drip-edge-for-eaves-10-ft = Goterón para aleros, 10 ft
data-drip-edge-for-rakes-10-ft = Goterón para bordes inclinados, 10 ft
data-leak-barrier-self-adhered-36-in = Barrera contra filtraciones autoadherible, 36 in x 66.7 ft
data-underlayment-no-15-felt-36-in = Membrana base, fieltro núm. 15, 36 in x 144 ft
data-starter-strip-105-ft-bundle = Tira de arranque, paquete de 105 ft
data-shingles-three-tab-36-x-12 = Tejas de tres pestañas, 36 x 12 in
data-hip-and-ridge-caps = Tapas de limatesa y cumbrera
data-valley-metal-24-in-wide-10 = Lámina de limahoya, 24 in de ancho, 10 ft
data-pipe-boot-up-to-2-in = Bota de tubo, hasta 2 in
data-pipe-boot-3-in = Bota de tubo, 3 in
data-pipe-boot-4-in = Bota de tubo, 4 in
data-pipe-boot-5-and-6-in = Bota de tubo, 5 y 6 in
data-roof-vent = Respiradero de techo
data-sealant-10-oz-tube = Sellador, tubo de 10 oz
data-fall-arrest-set-harness-lanyard-rope = Equipo anticaídas: arnés, eslinga, freno de cuerda
data-ridge-anchor-temporary = Ancla de cumbrera, temporal
data-gloves-and-safety-glasses = Guantes y lentes de seguridad
data-tarpaulin-20-x-30-ft = Lona, 20 x 30 ft
data-hook-blades = Navajas de gancho
data-strip-the-old-roof = Quitar el techo viejo
data-pull-or-drive-proud-nails-and = Sacar o clavar los clavos salidos y barrer, estimado
data-dry-in-drip-edge-leak-barrier = Impermeabilizar: goterón, barrera contra filtraciones, membrana base
data-pre-assemble-modules-on-the-ground = Armar módulos en el suelo
data-carry-and-set-modules-two-people = Cargar y colocar módulos, dos personas cada uno
data-lay-shingles-starter-and-caps = Colocar tejas, tira de arranque y tapas
data-flash-walls-valleys-and-what-comes = Poner tapajuntas en muros, limahoyas y penetraciones
data-connect-modules-ground-junction-box = Conectar módulos, tierra, caja de empalme
data-old-roofing-carted-away = Techo viejo, retirado en camión
data-deck-screw-2-1-2-in = Tornillo de entablado, 2 1/2 in, para patas y riel base
data-carriage-bolt-and-nut-for-a = Perno de carruaje con tuerca, para soporte
data-membrane-strip-self-adhered-9-in = Franja de membrana autoadherible, 9 in x 50 ft
data-primer-for-self-adhered-membrane-1 = Imprimador para membrana autoadherible, 1 gal
data-framing-lumber-for-crickets-2-x = Madera para armar desviadores de agua, 2 x 4 in, 10 ft
data-kick-out-flashing = Tapajuntas desviador al final del alero
data-apron-flashing-at-walls-and-chimneys = Tapajuntas frontal en muros y chimeneas, 10 ft
data-back-pan-metal-18-in-wide = Lámina trasera de chimenea, 18 in de ancho, 10 ft
data-cricket-metal-24-in-x-10 = Lámina para desviadores de agua, 24 in x 10 ft
data-counter-flashing-for-chimneys-10-ft = Contratapajuntas de chimenea, 10 ft
data-skylight-flashing-kit = Juego de tapajuntas de tragaluz
data-ridge-vent-4-ft = Respiradero de cumbrera, 4 ft
data-ladder-hoist-a-day = Malacate de escalera, por día
data-rope-1-2-in-x-100 = Cuerda, 1/2 in x 100 ft, para izar
data-replace-sheathing-frame-crickets = Reemplazar tableros, armar desviadores de agua
data-set-the-base-rail = Colocar el riel base
data-flash-the-head-of-the-array = Poner el tapajuntas superior del arreglo
data-flash-the-sides-of-the-array = Poner tapajuntas a los lados del arreglo
data-permit = Permiso
data-one-spare-module = Un módulo de repuesto
data-primer-for-membranes = Imprimador para membranas
data-ridge-vent = Respiradero de cumbrera
data-ladder-hoist = Malacate de escalera
data-hauling-ropes = Cuerdas para izar
data-where-a-broken-one-would-hold = Donde uno roto detendría a la cuadrilla: los fabricantes cambian medidas de un año a otro.
data-on-a-deck-that-is-dusty = En un entablado polvoso, viejo o frío, donde la membrana autoadherible no pega.
data-where-the-attic-is-vented-at = Donde el ático ventila por la cumbrera y toma el aire por los aleros.
data-brings-modules-and-bundles-up-no = Sube módulos y paquetes: ningún módulo se sube por una escalera en la mano.
data-where-no-hoist-can-stand-two = Donde no cabe un malacate: dos personas izan y una guía.
data-where-the-office-takes-it-out = Donde la oficina lo tramita por el dueño.
data-can = lata
data-day = día
data-rope = cuerda
data-kit = juego
data-permit-2 = permiso
data-cap = tapa
data-anchor = ancla
data-bag = bolsa
data-sheet = hoja
data-vent = respiradero
data-tube = tubo
data-device = dispositivo
data-tarpaulin = lona
data-piece = pieza
data-bundle = paquete
data-stick = tramo
data-insert = inserto
data-roll = rollo
data-box = caja
data-boot = bota
data-lead = cable
data-container = contenedor
data-hour = hora
data-set = juego
data-spool = carrete
data-module = módulo
data-roof-crew = Cuadrilla de techo
data-ground-crew = Cuadrilla de suelo
data-electrician = Electricista
data-falls = Caídas
data-ladders = Escaleras
data-lifting = Levantar
data-weather = Clima
data-live-dc = Corriente directa energizada
data-deck = Entablado
data-who-does-what = Quién hace qué
data-six-feet-or-more-above-a = A seis pies o más sobre un nivel inferior: barandal, red o equipo personal anticaídas; donde no se pueda ninguno, un plan escrito de protección contra caídas. Instálelo antes de subir por primera vez.
data-guardrail-top-rail-42-in-above = Barandal: riel superior a 42 in sobre el nivel donde se camina, 3 in más o menos.
data-fall-arrest-anchors-for-5-000 = Anticaídas: anclas de 5,000 lb por cada trabajador, o diseñadas con factor de seguridad de dos; caída libre de 6 ft como máximo; fuerza de frenado de 1,800 lb como máximo. Se acepta una sujeción que impida que el trabajador llegue al borde.
data-rails-reach-at-least-3-ft = Los largueros pasan al menos 3 ft por arriba del punto de llegada; el pie queda separado del muro un cuarto de la longitud de trabajo. Amarre la escalera.
data-two-people-carry-a-module-no = Un módulo se carga entre dos personas. Ningún módulo sube por una escalera en la mano: use un malacate o elevador.
data-stop-in-wind-on-a-wet = Pare con viento, con el entablado mojado o escarchado, y cuando se acerca una tormenta. Agua, sombra y descanso en el calor.
data-modules-are-live-whenever-light-falls = Los módulos están energizados siempre que les da la luz; ni un desconectador abierto ni el apagado rápido dejan sin corriente los cables propios de un módulo. Nunca separe conectores de corriente directa con carga: el arco quema y ciega.
data-de-energize-and-ground-circuits-that = Desenergice y ponga a tierra los circuitos que un trabajador pueda tocar, o protéjalos; etiquete lo que está apagado.
data-look-for-soft-split-or-unsupported = Busque tableros blandos, rajados o sin apoyo antes de que alguien los cargue. Saque o clave cada clavo salido y barra: las membranas y los pies resbalan con la arenilla.
data-structural-design-is-a-licensed-engineers = El diseño estructural es de un ingeniero con licencia, el trabajo eléctrico de un electricista con licencia donde la ley lo pide. Los códigos locales y las instrucciones del fabricante están por encima de esta lista.
data-drip-edge-at-eaves-and-rakes = Goterón en aleros y bordes inclinados: las piezas solapan 2 in, bajan 1/4 in por debajo del tablero y suben 2 in sobre el entablado, fijadas cada 12 in como máximo; la membrana base va encima en los aleros, debajo en los bordes inclinados.
data-a-roof-integrated-array-has-the = Un arreglo integrado al techo tiene la clase de fuego que se pide del recubrimiento (UL 790 o ASTM E108), con la membrana base de su certificación debajo; también la tiene el techo fuera de él.
data-common-practice-no-source = práctica común, sin fuente
data-the-kit = el kit
data-none-in-this-book = ninguno en este libro
data-fernhollow-deck-mount-kit-2026 = Kit Fernhollow sobre entablado 2026
data-a-19-in-strip-along-the = Una franja de 19 in a lo largo del alero, luego franjas enteras de 36 in, cada una solapada 19 in sobre la de abajo (IRC tabla R905.1.1(2), de memoria). A 4:12 y más: una capa, solapada 2 in, con los solapes de los extremos desfasados al menos 6 ft.
