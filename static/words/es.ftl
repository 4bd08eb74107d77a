### Las palabras que leen las familias y el profesorado de Educación Física, en las páginas y en papel.

## Shared

part-warm-up = Calentamiento
part-technique = Técnica
part-challenge = Reto
part-stretch = Tarea de ampliación
part-cool-down = Vuelta a la calma

effort-rest = Descanso
effort-light = Suave
effort-moderate = Moderado
effort-vigorous = Intenso

activity-athletics = Atletismo
activity-dance = Danza
activity-fitness = Condición física
activity-games = Juegos
activity-gymnastics = Gimnasia
activity-outdoor = Al aire libre

place-indoors = Dentro de casa
place-outdoors = Al aire libre
place-both = Dentro o fuera de casa

surface-grass = césped
surface-carpet = moqueta
surface-mat = una colchoneta
surface-hard-floor = un suelo duro
surface-paving = baldosas
surface-sand = arena
surface-soft-play = suelo blando

piece-explain = explicar { $amount }
piece-set-up = preparar { $amount }
piece-work = trabajo { $amount }
piece-rest = descanso { $amount }
piece-rounds = { $count ->
    [one] { $count } serie
   *[other] { $count } series
}
piece-recover = recuperar { $amount }
piece-counts = { $counts } tiempos a { $tempo } por minuto

minutes = { $count ->
    [one] { $count } minuto
   *[other] { $count } minutos
}
ages = Edad: { $ages } años
optional = si lo tienes
soft = blando
list-or = { $rest } o { $last }

kind-recall = Recuerda
kind-explain = Explica
kind-compare = Compara
kind-apply = Aplícalo
kind-reflect = Reflexiona

task-inform = presentar
task-extend = ampliar
task-refine = perfeccionar
task-apply = aplicar

standing-draft = Borrador
standing-reviewed = Revisada
standing-approved = Aprobada
standing-retired = Retirada

adapt-space = Otro espacio
adapt-task = Otra tarea
adapt-equipment = Otro material
adapt-people = Otras personas

sheet-cards = Tarjetas
sheet-home-guide = Guía para casa
sheet-record = Hoja de registro
sheet-review = Hoja de repaso

key-points = Puntos clave
easier = Más fácil
harder = Más difícil
faults = Errores frecuentes
fault-see = Se ve
fault-say = Se dice
adult-nearby = Una persona adulta está cerca
adult-helping = Una persona adulta ayuda
landing-zone = Zona de caída
stop-and-collect = Parar y recoger
cautions = Atención
local-rules = Las normas locales, la evaluación de riesgos del centro y la práctica autorizada van primero. Estas páginas dan consejos. No pueden prometer que una actividad sea segura en tu casa.
attempt = Intento
best = Mejor
mark-in = Marca ({ $unit })
measure-distance = Mide la distancia en { $unit }.
measure-time = Mide el tiempo en { $unit }.
measure-count = Cuenta: { $unit }.
measure-points = Suma los puntos.
measure-criteria = Fíjate en esto:
attempts = { $count ->
    [one] Cuenta un intento.
   *[other] Cuentan { $count } intentos.
}
better-more = Cuanto más, mejor.
better-less = Cuanto menos, mejor.
code-name = Apodo
date = Fecha
licence = Licencia
credit = Autoría

## Plans, on pages and on paper

plan = Plano del suelo
plan-same = El mismo suelo que en
plan-says = Plano del suelo a escala, { $length } de largo y { $width } de ancho.
plan-stand = Empieza aquí
plan-wait = Espera aquí
plan-line = La línea
plan-wall = La pared
plan-moving = Sitio para moverse
plan-run-up = Detrás de la línea
plan-landing = Caída
plan-stopping = Sitio para frenar
plan-clear = Se deja libre
plan-floor = Tu suelo
plan-for = Para { $parts }
plan-headroom = Altura libre: { $height }.
plan-askew = Colócalo de esquina a esquina: solo cabe en diagonal.
plan-unfit = Necesita más suelo del que indica esta sesión: busca un sitio más grande.
setting-out = Marcar con una cinta métrica
tape-line = Marca la línea, de { $length } de ancho.
tape-right-angle = Hacia delante: haz una marca a { $along } sobre la línea y otra a { $away } de su extremo. Está recto cuando las dos marcas distan { $across }.
tape-diagonals = Marca { $length } por { $width }. Los ángulos son rectos cuando las dos diagonales miden { $diagonal }.
tape-sector = Lados: dos marcas a { $along } del centro de la línea, separadas { $apart }.
tape-reach = Libre: { $margin } más allá de { $reach }.
tape-around = Deja { $margin } libre alrededor.
tape-wait = Espera: { $behind } detrás de la línea.

slots = Si el tiempo cambia
slots-how = El calentamiento y la vuelta a la calma se quedan. Se conserva lo más importante.
slot-in = En { $time }
slot-same = Cabe todo.
slot-drop = Deja fuera: { $list }.
slot-change = { $part }: { $time }.
slot-change-rounds = { $part }: { $rounds ->
    [one] { $rounds } serie
   *[other] { $rounds } series
}, { $time }.
slot-left = Sobra: { $time }.
slot-too-short = Faltan { $by }: lo que debe quedarse dura más.

effort-talk = Explicación
effort-still = El rato más largo sin moverse dura { $time }, en «{ $part }».

effort-of-day = El trabajo moderado e intenso es el { $share } % de los 60 minutos diarios que pide la OMS (de 5 a 17 años).
effort-rhythm = { $part }: { $work } de trabajo por { $rest } de descanso ({ $ratio }).
effort-usual = Para empezar, a esta edad son habituales de { $least } a { $most } s de trabajo intenso y otro tanto de descanso (práctica común).
effort-like = { $part } se parece a «{ $like }» del Compendio de actividades físicas de 2011: { $met } MET, { $band } (moderado desde { $from }). Es un valor de adultos: una estimación para niños.

floor-how = En el suelo
floor-fits = cabe
floor-askew = cabe en diagonal
floor-unfit = no cabe
floor-unsaid = no se indica suelo

things-as = { $things } en lugar de { $need }
things-together = Suficiente para todo a la vez:
things-need = Hace falta
things-at-home = En casa
things-refused = No sirve
things-missing = faltan { $count }
things-once = Reunir una sola vez
things-once-how = Estas pocas cosas sirven para todas las sesiones. Nada hace falta en dos sitios a la vez.
things-all = Todo, con lo que puede sustituirlo
sheet-print = Imprimir esta lista (PDF)
things-once-unproven = Puede que haya una lista más corta.
sheet-gather = Reunir una sola vez
misfit-heavy = pesa demasiado: { $found }, se pide { $asked } para { $ages } años
misfit-light = pesa muy poco: { $found }, se pide { $asked } para { $ages } años
misfit-large = demasiado grande: { $found }, se pide { $asked } para { $ages } años
misfit-small = demasiado pequeño: { $found }, se pide { $asked } para { $ages } años
misfit-hard = no consta que sea blando
misfit-lacks = no consta que sea { $asked }

flight-throw = Soltado a { $speed } m/s y { $angle }°, a { $height } del suelo, llega a { $distance } y sube a { $apex }. Vuela { $time } y cae a { $landing } m/s.
flight-toss = Lanzado hacia arriba a { $speed } m/s desde { $height }, sube a { $apex } y vuela { $time }.
flight-drag = Se cuenta el freno del aire sobre «{ $thing }»; sin él, la distancia sería de { $distance }.
flight-drag-toss = Se cuenta el freno del aire sobre «{ $thing }».
flight-no-drag = Sin el freno del aire.
flight-headroom = Altura libre: { $height }.
flight-room = Bajo { $ceiling }, lo más lejos a esta velocidad es { $distance }, a { $angle }°.
flight-best = Según la fórmula, lo mejor es { $angle }°, con { $distance }. La velocidad de una persona baja al subir el ángulo, así que el mejor lanzamiento real es más bajo: para el peso la fórmula da unos 42° y los atletas lanzan a 37° o 38°.

marks-distance = Las marcas se leen al { $step } entero inferior (reglamento técnico de World Athletics).
marks-time = Los tiempos manuales se leen a { $step } superior (reglamento técnico de World Athletics para carreras).
marks-time-held = Cuanto más, mejor: los tiempos se leen a { $step } inferior.
marks-whole = Las marcas son números enteros.
marks-ties = Cuenta el mejor intento; el siguiente deshace los empates.
marks-reference = Para comparar: { $mark } ({ $source }). Las poblaciones son distintas; no es la norma de nadie.
marks-formula = Puntos: la parte entera de { $a } · d^{ $c }, donde d es lo que la marca se aparta de { $b }.
marks-points-source = Puntos: { $source }
marks-from = Desde
marks-points = Puntos
points-list = Puntos: { $list }.
points-from = { $points } desde { $mark }
points-within = { $points } hasta { $mark }

reading-how = Dificultad de las frases que lee un niño, según fórmulas publicadas, hechas para el inglés. Ven la longitud, no el sentido.
reading-words = Palabras
reading-sentences = Frases
reading-flesch = Facilidad de lectura de Flesch
reading-kincaid = Curso Flesch–Kincaid
reading-smog = Curso SMOG
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = Edad lectora (curso + 5)
reading-long-words = Palabras de tres sílabas o más:
reading-long-sentences = Palabras de las frases de más de 20:

flight-axis-angle = Ángulo
flight-axis-distance = Distancia (m)
flight-figure-says = Distancia según el ángulo. Lo mejor es

## Pages

skip = Ir al contenido
pages = Páginas
nav-front = Todas las sesiones
nav-things = Cosas que reunir
nav-teachers = Para el profesorado
nav-rules = Reglas de escritura
foot-contact = Pregunta al centro
foot-made = Estas páginas no cargan nada de fuera ni envían nada a ningún sitio.

front-about = Educación Física en casa: elige una sesión por edad, tiempo, espacio y cosas que hay en casa.
front-choose = Elige una sesión
front-choose-how = Responde a lo que quieras. La lista solo deja lo que encaja.
front-sessions = Sesiones
front-any = da igual
front-age = Edad del niño o la niña
front-minutes = Tiempo disponible
front-up-to = hasta { $count } min
front-space = Espacio libre
front-space-rug = una alfombra, 2 m × 2 m
front-space-small-room = una habitación pequeña, 3 m × 3 m
front-space-big-room = una habitación grande, 5 m × 4 m
front-place = Dónde
front-activity = Actividad
front-lacking = No tenemos …
front-lacking-how = (ni nada que lo sustituya)
front-more = Espacio, lugar, actividad y cosas de casa
front-reset = Empezar de nuevo
front-shown = Se muestran:
front-none = Ninguna sesión encaja con todo eso. Quita una respuesta.
front-needs = Reúne:
front-needs-nothing = Nada que reunir
front-cards = Tarjetas para imprimir
front-minutes-unit = min

fact-ages = Edad
fact-minutes = Minutos
fact-space = Espacio libre
fact-place = Dónde
fact-effort = Esfuerzo, sobre todo

space = Espacio
space-needs = { $size } de suelo libre.
space-headroom = Altura libre { $height }.
space-surface = Bueno bajo los pies: { $list }.

before = Antes de empezar
running-order = Orden de la sesión
running-how = Cuanto más alta la barra, más esfuerzo.
line-label = Línea de tiempo de { $minutes } minutos, una barra por parte
success = Lo que sé hacer al final
things = Cosas que reunir
things-nothing = Nada. Ya puedes empezar.
things-household = Lo hay en todas las casas.
things-limits = Lo que sirve: { $limits }
stands-in = O usa
for-parts = Para:
adult = Tiempo de una persona adulta
adult-nearby-for = Cerca durante { $time }.
adult-helping-for = Ayudando durante { $time }.
adult-none = No hace falta. Quédate donde puedas oír.
film = Vídeo
from-to = { $from } a { $to }
beats-label = Trabajo y descanso, dibujados a escala
how-measured = Cómo se mide
throwing = Antes de lanzar nada
tick-rounds = Series hechas
finish = Final
finish-say = Bebe un poco de agua. Luego apunta tus marcas.
marks = Mis marcas
marks-how = Usa un apodo, nunca tu nombre completo. Tus marcas son tuyas: supera tu propio récord.
next-time = La próxima vez voy a
review = Piénsalo
review-how = Primero di o escribe tu respuesta. Después abre la nuestra.
review-answer = Nuestra respuesta
adaptations = Adáptala a ti
papers = Imprimir
sheet-cards-about = una parte por tarjeta, { $cards } por página
sheet-home-guide-about = una página: línea de tiempo, cosas, espacio, precauciones
sheet-record-about = una tabla para apuntar las marcas
sheet-review-about = preguntas, y las respuestas en página aparte
draft-note = Borrador: esta sesión todavía no se ha revisado.

things-intro = Todo lo que piden las sesiones y lo que puede sustituirlo. Marca lo que encuentres.
things-for = Sesiones
things-extras = Viene bien tenerlo

rules-intro = Lo que homeground busca al examinar los archivos de sesión y por qué. Aconseja; nunca certifica que una sesión sea segura.
rules-contents = Códigos
rules-why = Por qué
rules-source = Fuente:
rules-bad = Así no
rules-good = Así
severity-problem = Problema
severity-warning = Aviso
severity-advice = Consejo

teachers-intro = Cada sesión con su línea de tiempo, respuestas y estado. Las cifras de esfuerzo son estimaciones a partir del esfuerzo indicado en las partes.
teachers-contents = Sesiones
teachers-active = Moderado e intenso: { $time }, { $share } % del tiempo (estimación)
teachers-plans = Planes: esfuerzo, tiempo, suelo, cosas, vuelo, marcas, lectura
teachers-floors = Suelos
teachers-flights = Vuelos
teachers-marks = Marcas y puntos
teachers-reading = Lectura
teachers-part = Parte
teachers-from = Desde
teachers-time = Tiempo
teachers-effort = Esfuerzo
teachers-task = Tarea
teachers-objectives = Objetivos
teachers-success = Criterios de logro
teachers-codes = Currículo
teachers-answers = Preguntas de repaso y respuestas
teachers-standing = Estado
teachers-by = por { $by }
teachers-on = el { $on }
teachers-look-again = revisar el { $on }
teachers-changed = Qué ha cambiado

## Paper

cards-number = Tarjeta { $number } de { $total }
cards-continued = (continuación)
cards-see-guide = La guía para casa tiene el orden de la sesión, lo que puede sustituir cada cosa y todas las precauciones.
cards-adapt = Para tu casa y para ti
cards-helper = Para quien ayuda
cards-look = En qué fijarse
cards-look-how = Lo que puede verse → qué decir. Una cosa cada vez.
or-use = o usa
sheet-number = Página { $number } de { $total }
fact-time = Tiempo
review-paper-how = Primero di tu respuesta en voz alta. Luego escríbela.
review-answers = Respuestas
review-own = Tu propia respuesta.
review-help = Son respuestas modelo. Las palabras de un niño valen igual si dicen lo mismo.
fact-headroom = Altura libre
record-look-for = Fíjate en

## Quantities

amount-m = { $number } m
amount-cm = { $number } cm
amount-mm = { $number } mm
amount-kg = { $number } kg
amount-g = { $number } g
amount-min = { $number } min
amount-s = { $number } s
amount-min-s = { $minutes } { $seconds }
amount-at-most = como máximo { $amount }
amount-at-least = como mínimo { $amount }
amount-any = cualquiera

## Languages

languages = Otros idiomas
language-name = Español
shown-in-original = Esta sesión aún no está traducida. Se muestra en su idioma original ({ $language }).
translation-old = El original ha cambiado desde esta traducción.
language-unnamed = su idioma

## To scan, to copy, to send

scan-page = La página de esta sesión
scan-film = El vídeo

no-printer = ¿No tienes impresora?
no-printer-how = Copia esto a mano: unos { $minutes } minutos. O guárdalo como texto, o envíalo en mensajes.
copy-file = Para copiar a mano (texto)
texts-file = Mensajes SMS (texto)
no-printer-needs = Necesitas: { $list }.
no-printer-read = Lee primero todas las precauciones de la página.
no-printer-rules = Las normas del centro y su evaluación de riesgos van primero.

## Sheets

sheet-large-print = Tarjetas en letra grande
sheet-large-print-about = ninguna palabra de menos de 18 puntos, una tarjeta por página
sheet-class-set = Juego para la clase
sheet-class-set-about = { $copies ->
    [one] { $copies } juego numerado de tarjetas
   *[other] { $copies } juegos numerados de tarjetas
}, { $cards } por página
sheet-booklet = Cuadernillo
sheet-booklet-about = imprimir a doble cara, girando por el lado corto, y doblar todas las hojas juntas una vez
sheet-poster = Cartel
sheet-poster-about = los puntos clave, para leer a 2 m
sheet-record-class = Hoja de registro de la clase
sheet-record-class-about = los apodos, en el margen
sheet-record-week = Hoja de registro de la semana
sheet-record-week-about = una columna para cada día
both-long = imprimir a doble cara, girando por el lado largo
both-short = imprimir a doble cara, girando por el lado corto
cards-back = Reverso de { $number } de { $total }
cards-set = Juego { $number } de { $total }
notes = Notas
booklet-inside = Dentro
record-class-tick = Marca lo que has visto. Deja en blanco lo que no has visto.
record-week-how = Señala lo que has hecho cada día y apunta tu mejor marca del día.
record-done = Lo he hecho
record-best-marks = Mi mejor marca
record-week-best = ¿Qué ha salido mejor esta semana?
week-of = Semana del
day-1 = Lun
day-2 = Mar
day-3 = Mié
day-4 = Jue
day-5 = Vie
day-6 = Sáb
day-7 = Dom

## Progress

progress-title = Progreso de la clase
progress-private = Para el profesorado. Solo códigos, sin nombres. Guárdalo hasta el { $date } y después bórralo: homeground progress --to … --forget
progress-how = Cada cambio se compara con las marcas anteriores del mismo alumno o alumna. Las marcas de condición física son privadas: no son nota ni sirven para comparar al alumnado.
progress-rule = Un cambio va más allá de las variaciones de un día a otro cuando supera dos errores típicos de un intento (Hopkins 2000: de 1,5 a 2). El error típico sale de intentos repetidos el mismo día: lo que cambia de un día a otro se suma.
progress-contents = En este informe
progress-children = Alumnado
progress-class = La clase
progress-class-small = Han enviado marcas menos de { $fewest } alumnos o alumnas: no se muestran cifras de la clase, porque se podría reconocer a alguien.
progress-first = Primer día
progress-latest = Último día
progress-median = Mediana
progress-quartiles = Cuartiles
progress-range = Mínimo y máximo
progress-deviation = Desviación típica
progress-noise = Error típico de un intento
progress-noise-from = a partir de { $pairs } pares de intentos
progress-noise-unknown = no se sabe: muy pocos intentos repetidos
progress-smallest = Menor cambio que importa
progress-wobble = Más que una variación normal desde
progress-spread-says = Un punto por persona, una caja de cuartil a cuartil y una línea gruesa en la mediana.
progress-strip-says = Marcas de { $code } en { $task }, día a día. Las cifras están en la tabla de al lado.
progress-better-more = Cuanto más a la derecha, mejor.
progress-better-less = Cuanto más a la izquierda, mejor.
progress-child-table = Uno por uno
progress-code = Código
progress-place = Puesto
progress-first-mark = Primera
progress-last-mark = Última
progress-best-mark = Mejor
progress-best-on = { $mark } el { $date }
progress-change = Cambio
progress-verdict = ¿Es real?
progress-tries = Intentos
progress-points = Puntos
progress-over-time = A lo largo del tiempo
progress-next = Lo siguiente y por qué
progress-missing = Todavía no han enviado nada
progress-missing-none = Todo el mundo ha enviado algo.
progress-silent = No han enviado nada de nada
progress-faults = Errores frecuentes señalados
progress-few = menos de { $fewest }
progress-send = Qué enviar después
progress-comments = Comentarios para el boletín, por retocar
progress-questions = Preguntas de repaso
progress-questions-how = Lo que está bien lo decide el profesorado. Aquí solo se reúnen las respuestas y se juntan las que se parecen.
progress-right = bien
progress-wrong = todavía no
progress-unmarked = sin corregir
progress-answers-few = Han respondido menos de { $fewest } alumnos o alumnas: aquí no se muestran sus respuestas.
progress-answers = Respuestas, tal cual
progress-model-answer = Nuestra respuesta
progress-unread = No leído
progress-unread-how = Estas casillas se han dejado fuera. Todo lo demás de sus filas cuenta.
progress-row = Fila
progress-column = Columna
progress-says = Qué está mal
progress-file = Archivo

progress-short-once = primera marca
progress-short-noise-unknown = muy pocos intentos para saberlo
progress-short-too-close = demasiado igualado para saberlo
progress-short-too-small = real, pero muy pequeño
progress-short-better = mejor, más allá de las variaciones de un día a otro
progress-short-worse = menos bien, más allá de las variaciones de un día a otro

progress-child-once = Este es tu primer día. Ya tienes una marca que superar.
progress-child-noise-unknown = Todavía hay muy pocos intentos para saber si es más que una variación de un día a otro.
progress-child-too-close = Está demasiado igualado para saberlo: las marcas varían otro tanto de un intento a otro.
progress-child-too-small = Es más que una variación de un día a otro, pero es muy pequeño.
progress-child-better = Es más que una variación de un día a otro: has mejorado.
progress-child-worse = Esta vez ha sido menos, más allá de las variaciones de un día a otro. El sueño, las zapatillas y el suelo también cuentan. Inténtalo otra vez.
progress-child-no-mark = Todavía no hay marca en ningún intento. A veces pasa: empieza por algo más fácil.

progress-slip = Mis marcas
progress-slip-for = Para { $code }
progress-slip-how = Tus marcas son tuyas. Supera tu propio récord.
progress-slip-change = De { $first } a { $last }: { $change }.
progress-slip-best = Mi mejor marca: { $mark }, el { $date }.
progress-slip-new-best = ¡Nuevo récord: { $mark }, el { $date }!
progress-slip-band = Los círculos son intentos; los puntos, lo mejor de cada día. En la franja gris, un cambio es demasiado pequeño para saberlo.
progress-slip-no-band = Los círculos son intentos; los puntos, lo mejor de cada día.
progress-slip-next = Lo siguiente
progress-slip-again = Vuelve a mirar estas preguntas
progress-slip-day = Día
progress-slip-tries = Intentos
progress-slip-day-best = Mejor

progress-mend = Lo que se ha visto: «{ $see }» Para probar: «{ $say }»
progress-mend-part = Se practica en «{ $part }».
progress-further = Probar la tarea de ampliación «{ $part }».
progress-onward = Después: «{ $session }».
progress-practise = Repetirlo pensando en una sola cosa: «{ $point }»
progress-practise-bare = Repetirlo fijándose en una cosa cada vez.
progress-easier = Empezar por lo más fácil: { $easier }
progress-easier-bare = Empezar por lo más fácil.

progress-send-mend = Otra vez «{ $part }», para { $count }: han señalado «{ $see }»
progress-send-further = La tarea de ampliación «{ $part }», para { $count }: su cambio va más allá de las variaciones de un día a otro.
progress-send-onward = Después «{ $session }», para { $count }: la misma actividad, aún sin hacer.
progress-send-practise = Otra vez «{ $part }», para { $count }: aún sin mejora más allá de las variaciones de un día a otro y sin errores señalados.
progress-send-easier = La forma más fácil de «{ $part }», para { $count }: todavía no hay marca.

progress-comment-change = { $code } ha pasado de { $first } a { $last } en «{ $task }» ({ $change }, { $verdict }).
progress-comment-once = { $code } ha logrado { $last } en «{ $task }» el primer día.
progress-comment-none = { $code } ha probado «{ $task }» y todavía no tiene marca.
progress-comment-next = Siguiente paso: { $next }

## Fit

fit-teacher = Qué recibe cada hogar
fit-teacher-lead = { $count ->
    [one] { $count } hogar, por su código.
   *[other] { $count } hogares, por su código.
} De cada sesión, la mejor versión que permiten su tiempo, sus suelos, sus personas y sus cosas. Nada peligroso sirve de sustituto. Guarda esta hoja en el centro.
fit-print = Imprimir esto (PDF)
fit-grid = De un vistazo
fit-grid-how = Los minutos y cuántas de las partes. Un guion: allí no se puede hacer esta sesión; más abajo se dice por qué.
fit-home = Hogar
fit-cell = { $minutes } min, { $kept } de { $all }
fit-cell-whole = { $minutes } min, entera
fit-home-heading = Hogar { $code }
fit-home-minutes = { $time } al día
fit-home-language = idioma que pide: { $language }
fit-reads-paper = imprimir para este hogar
fit-reads-phone = enviar la carpeta a un móvil
fit-as-written = Tal como está escrita.
fit-uses = Se usa: { $list }.
fit-not = aquí no
fit-left-out = Sin { $part }: { $why }.
fit-instead = Lo más parecido: { $part }.
fit-cannot = { $list }: { $why }.
fit-one-thing = Bastaría con una cosa: { $thing }.
fit-no-one-thing = Ninguna cosa bastaría por sí sola.
fit-one-minutes = { $time } al día
fit-one-more-floor = { $by } más a lo largo y a lo ancho en el suelo { $floor }
fit-one-floor = un suelo libre de { $size } { $place }
fit-one-helper = una persona más que participe o esté cerca
fit-one-version-seated = versiones de sus partes para hacer en posición sentada, que todavía no ha escrito nadie
fit-one-version-quiet = versiones sin ruido de sus partes, que todavía no ha escrito nadie
fit-why-seated = no hay versión para hacer en posición sentada
fit-why-noise = los pies golpean fuerte el suelo y no hay versión sin ruido
fit-why-surface = aquí ningún suelo es del tipo que conviene
fit-why-time = en este tiempo, lo que se queda vale más
fit-why-short = lo que debe quedarse dura más que el tiempo que hay
fit-why-helpers = { $count ->
    [one] hace falta { $count } persona más que participe o esté cerca
   *[other] hacen falta { $count } personas más que participen o estén cerca
}
fit-why-place = se hace { $place }
fit-why-headroom = hace falta una altura libre de { $height }
fit-why-floor = hace falta un suelo libre de { $size }
fit-why-things = aquí no hay nada seguro que sirva de { $list }
fit-version-seated = En posición sentada
fit-version-quiet = Sin ruido
fit-version-small-space = En poco espacio
fit-version-low-vision = Para quien ve poco
fit-version-partner = En pareja
fit-version-alone = Sin compañía
fit-lend = Prestar o enviar
fit-lend-how = Las menos cosas posibles para que cada hogar pueda hacer todas las sesiones que solo impide la falta de cosas. Después, hogar por hogar:
fit-lend-nothing = Nada: ninguna sesión falla solo por falta de cosas.
fit-rethink = Para replantear
fit-rethink-how = Lo que no puede hacer una cuarta parte de los hogares o más (límite puesto por nosotros).
fit-rethink-nothing = Nada: ninguna sesión ni ninguna parte falla en una cuarta parte de los hogares.
fit-rethink-homes = No se puede hacer en { $count } de { $of } hogares.
fit-rethink-why = Lo más frecuente: { $why }.
fit-survey = Cuestionario
fit-survey-title = ¿Qué hay en casa?
fit-survey-lead = Para que la Educación Física en casa se adapte a tu casa. No hay respuestas correctas ni nada que comprar. No escribas nombres.
fit-ask-code = Tu código
fit-ask-code-how = Te lo da el centro. No escribas nunca un nombre, una dirección ni una fecha de nacimiento.
fit-ask-code-line = Código
fit-ask-time = Tiempo y personas
fit-ask-minutes = Minutos al día que hay para Educación Física
fit-ask-helpers = Personas que pueden participar o estar cerca
fit-ask-needs = Lo que necesita tu hijo o hija
fit-ask-seated = Hace Educación Física en posición sentada
fit-ask-low-vision = Ve poco
fit-ask-quiet = No puede hacer ruido dentro de casa
fit-ask-reads = Cómo lo lees
fit-ask-paper = En papel
fit-ask-phone = En un móvil
fit-ask-language = Idioma
fit-ask-floor = Un suelo libre
fit-ask-floor-how = El más grande que puedas despejar, sin contar paredes ni muebles.
fit-ask-floor-2 = Un segundo suelo
fit-ask-floor-2-how = Si lo hay: un patio, un jardín, un pasillo.
fit-ask-length = Largo en metros
fit-ask-width = Ancho en metros
fit-ask-height = Altura hasta el techo, o «al aire libre»
fit-ask-outdoors = Está al aire libre
fit-ask-things = Cosas que tienes
fit-ask-things-how = Escribe cuántas hay. Deja en blanco lo que no tengas.

## Units
unit-units = Unidades didácticas
unit-things = Cosas: { $things }.
unit-remember = ¿Te acuerdas?
unit-remember-how = Preguntas de sesiones anteriores. Primero responde de memoria y después mira.
unit-remember-from = de la sesión «{ $session }»
unit-week = Semana { $week }
unit-none-plain = Sin clase
unit-calendar = Añadir a tu calendario
unit-calendar-about = Se abre en el calendario de un móvil o un ordenador. Si lo añades otra vez, se mueve lo que ha cambiado.
unit-poster = Cartel del trimestre
unit-poster-about = Para la pared, con una casilla para marcar cada sesión
unit-remember-sheet = Hoja «¿Te acuerdas?»
unit-remember-about = Las preguntas que vuelven, día a día; las respuestas, en página aparte
unit-gather-sheet = Cosas que reunir
unit-gather = Reunir una sola vez
unit-gather-how = Las menos cosas posibles para todas las sesiones de esta unidad.
unit-gather-by = Para la semana { $week }
unit-get-out = Sacar: { $things }
unit-put-back = Guardar: { $things }
unit-same-things = Las mismas cosas que antes.
unit-minutes = Empieza a las { $time }, { $length }
unit-days = Días
unit-take = Para llevar
unit-answers = Respuestas
unit-answer = Respuesta
unit-tick = Marca una casilla por cada sesión que hagas.
date-with-weekday = { $weekday } { $date }
date-day-month = { $day } de { $month }
date-with-year = { $date } de { $year }
weekday-monday = lunes
weekday-tuesday = martes
weekday-wednesday = miércoles
weekday-thursday = jueves
weekday-friday = viernes
weekday-saturday = sábado
weekday-sunday = domingo
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre
unit-together = Unidades y cobertura
unit-teachers-lead = Cómo está montada esta unidad y por qué.
unit-plan = Plan
unit-session = Sesión
unit-why = Por qué aquí
unit-changes = Cosas
unit-why-named = indicada para este día
unit-why-order = colocada aquí automáticamente
unit-why-cover = añadida por { $codes }
unit-order = Cómo se han llenado los días libres
unit-order-rule = Las sesiones sin día se han puesto en el orden que da, de más a menos importante: el menor número de sesiones antes de aquella en la que se apoyan ({ $grounds }), de días intensos seguidos ({ $vigorous }), de sesiones dos veces seguidas ({ $same }) y de cosas que sacar o guardar ({ $things }), la menor pérdida de tiempo activo de una sesión a la siguiente ({ $lost }); y, por último, tu propio orden.
unit-order-best = Ningún otro orden es mejor.
unit-order-listed = Hay demasiadas sesiones sin día para probar todos los órdenes; se ha conservado el tuyo.
unit-effort = Esfuerzo por semana
unit-effort-lead = Estimaciones, a partir del esfuerzo indicado en las sesiones, para un niño o una niña que las haga todas. La Organización Mundial de la Salud (2020) aconseja una media de 60 minutos al día de actividad de moderada a intensa a lo largo de la semana, y actividad intensa al menos 3 días; la Educación Física en casa es una parte.
unit-effort-vigorous = Intenso
unit-effort-active = Moderado e intenso
unit-effort-share = Parte de los 420 minutos de la semana
unit-effort-days = Días intensos
unit-returns = Preguntas que vuelven
unit-returns-rule = Una pregunta toca { $after } días después de su sesión. Cada vez que vuelve, la espera siguiente es { $growth } veces más larga, contada desde ese día; como máximo vuelven { $most } en un mismo día, primero las que tocaban antes.
unit-returns-time = { $time ->
    [one] primera vez
   *[other] { $time }.ª vez
}
unit-cover = Lo que cubre la unidad
unit-cover-met = Lo cubren las sesiones que has indicado: { $codes }.
unit-cover-added = «{ $session }» se ha añadido por { $codes }.
unit-cover-best = Con menos sesiones no se cubre tanto. Entre opciones iguales cuenta la más corta y, después, la primera por dirección.
unit-cover-unproven = Puede que basten menos: hay demasiadas sesiones para probarlo todo.
unit-cover-none = Ninguna sesión para estas edades cubre: { $codes }.
unit-cover-room = No queda ningún día para: { $codes }.
unit-left-over = Se han quedado sin día: { $sessions }.
coverage-title = Cobertura del currículo
coverage-lead = Qué sesiones cumplen qué criterios y para qué cursos. Una sesión cuenta para un curso si sirve para todas las edades de ese curso.
coverage-sessions = Criterios y sesiones
coverage-groups = Criterios y cursos
coverage-statement = Criterio
coverage-count = Sesiones
coverage-gap = falta
coverage-often = a menudo
coverage-meets = lo cumple
coverage-key = «Falta»: un criterio que ninguna sesión cumple para un curso al que corresponde. «A menudo»: uno que cumplen al menos { $least } sesiones, y más del doble de la media.
coverage-csv = La tabla completa (CSV)
coverage-no-gap = Todos los criterios se cumplen en todos los cursos a los que corresponden.
coverage-not-for = no corresponde a este curso

## Marks at home
home-keeps = Lo que escribes aquí se guarda en este dispositivo, en este navegador, hasta que lo borres. Nada se envía solo.
home-keeps-not = Este navegador no guarda nada de esta página. Lo que escribes se pierde al cerrarla: antes envíalo o guárdalo.
home-known = ¿Quién eres?
home-another = Añadir un apodo
home-code-use = Usar este código
home-code-help = El código que te da tu profe, como K07, uno para cada niño o niña. Nunca un nombre, una dirección ni un número de teléfono.
home-code-first = Todavía no se guarda: primero escribe tu apodo arriba.
home-write = Escribe cada marca tal como la lees, por ejemplo { $mark }. Una x es un intento que no ha contado.
home-no-mark = Este intento no ha contado
home-attempts = Intentos
home-best-today = Mejor del día
home-personal-best = Récord personal
home-change = Cambio
home-since = Cambio desde el { $date }
home-standing-first = Tu primera marca: ya tienes algo que superar.
home-standing-new = ¡Nuevo récord personal!
home-standing-equalled = Igual que tu récord.
home-days = Días guardados: elige uno para corregirlo
home-day-to-come = Elige hoy o un día anterior.
home-refused-number = No se puede leer. Escribe una marca como { $mark }, o x.
home-refused-unit = Esa unidad no sirve aquí. Escribe una marca como { $mark }.
home-refused-doubt = ¿Qué unidad es? Escríbela también, por ejemplo { $mark }.
home-refused-seconds = Escribe los minutos, dos puntos y los segundos con dos cifras, hasta 59, por ejemplo 1:05.
home-refused-whole = Escribe un número entero, por ejemplo { $mark }.
home-refused-large = Es demasiado grande. Escribe una marca como { $mark }.
home-refused-none = Primero escribe tu apodo.
home-refused-name = Esto parece un nombre. Escribe mejor el código que te da tu profe, como K07.
home-refused-mail = Esto parece una dirección, un número o una fecha que dice quién eres. Escribe el código que te da tu profe, como K07.
home-refused-signs = Un código tiene como máximo 24 letras, cifras, puntos y guiones, por ejemplo K07.
home-answer = Mi respuesta
home-answer-said = La he dicho en voz alta
home-personal = Quita las direcciones de correo y los números de teléfono: esta respuesta no se guarda.
home-send = Enviar a mi profe
home-send-how = Solo cuando tú quieras y de la forma que te haya pedido tu profe: copia el texto en un mensaje o un correo, entrega el archivo o imprímelo. Sin nombres, por favor, tampoco en las respuestas.
home-send-nothing = Todavía no hay nada que enviar: escribe un apodo y una marca o una respuesta.
home-send-text = Todo lo que se envía
home-copy = Copiar el texto
home-copied = Copiado.
home-share = Compartir …
home-file = Guardar como archivo
home-print = Imprimir
home-export = Guardar todo lo que hay de { $code }
home-delete = Borrar todo lo que hay de { $code }
home-sure = ¿Borrar todo lo que este dispositivo guarda de { $code }? No se podrá recuperar.
home-deleted = Borrado.
home-delete-note = Lo que borras aquí desaparece de este dispositivo. Lo que ya has enviado sigue enviado.
progress-own-words = Con las palabras del alumnado: puede haber algún nombre. Léelas antes de enseñárselas a nadie.

## Pages: teachers
teachers-session = Sesión
teachers-active-short = Moderado e intenso
teachers-grade = Curso de lectura
teachers-matrix = Tabla de material
teachers-matrix-how = Cuántas cosas de cada tipo pide una sesión a la vez; entre paréntesis, las que no son imprescindibles.
teachers-matrix-most = Máximo a la vez
teachers-family-page = La página de la familia

## Pages: choosing, doing, keeping
feed = Sesiones nuevas y modificadas
front-find = Buscar
front-find-how = Una palabra, por ejemplo un juego o una cosa
front-relax = Quitar «{ $answer }»: { $count }
now-start = Hacer la sesión ahora
now-start-how = Una parte cada vez, con temporizador.
now-leave = Página completa
now-back = Atrás
now-next = Siguiente
now-place = { $number } de { $total }
now-after = Marcas y repaso
timer = Temporizador
timer-left = Tiempo que queda
timer-start = Empezar
timer-pause = Pausa
timer-on = Seguir
timer-again = Empezar de nuevo
timer-explain = Mira y escucha
timer-set-up = Prepara el material
timer-work = Muévete
timer-rest = Descansa
timer-recover = Recupera el aliento
timer-round = Serie { $number } de { $total }
timer-done = Muy bien
timer-sound = Sonido
timer-buzz = Vibración
timer-voice = Voz

## Library
retired-note = Esta sesión ya no se usa. Se guarda aquí para leerla; elige otra para hacer.
borrowed-from = Sesión tomada de «{ $pack }»
borrowed-changed = Sesión tomada de «{ $pack }», con cambios
borrowed-changed-by = Sesión tomada de «{ $pack }»; cambios de { $school }

## Editions and what changed
edition-mark = Edición { $mark }
edition = ¿Está al día mi hoja impresa?
edition-how = Cada hoja lleva su edición al pie. Estas son las actuales:
edition-ask = Edición de mi hoja
edition-current = { $mark } está al día ({ $sheet }).
edition-changed = { $mark } no es la edición actual. La hoja ha cambiado desde entonces o es de otra sesión: imprímela de nuevo.
edition-no-mark = Una edición tiene cuatro letras o cifras, sin I, L, O ni U.
says-title = Título
says-summary = Resumen
says-surface = Bajo los pies
says-limits = Lo que sirve
says-instead = En su lugar
says-note = Nota
says-things-for = Para qué son las cosas
says-school = Centro
says-picture = Imagen
says-by = Revisada por
says-look-again = Revisar de nuevo
says-explain = Explicación
says-set-up = Preparación
says-work = Trabajo
says-rest = Descanso
says-rounds = Series
says-recover = Recuperación
says-effort = Esfuerzo
says-how = Cómo se hace
says-key-point = Punto clave
says-attempts = Intentos
says-movements = Movimientos
says-version = Otra versión
says-flight = Vuelo
says-like = Se parece a
says-step = Diferencia más pequeña
says-reference = Para comparar
says-lengths = Duración mínima / máxima (valor)
since = Qué ha cambiado
since-how = Desde { $when }.
since-review = Qué ha cambiado, para revisar
since-became = { $what }: antes { $before }, ahora { $now }
since-reworded = { $what }: dicho con otras palabras
since-added = { $what }, se añade: { $text }
since-gone = { $what }, se quita: { $text }
since-reordered = { $what }: en otro orden
since-part-added = Parte nueva
since-part-gone = Parte eliminada
since-parts-reordered = Las partes están en otro orden
since-before = Antes
since-now = Ahora
since-new = Sesiones nuevas
since-no-more = Ya no están aquí
since-changed = Sesiones modificadas
since-shared = Para todas las sesiones
since-same = { $count ->
    [one] { $count } sesión sigue igual.
   *[other] { $count } sesiones siguen igual.
}
since-nothing = No ha cambiado nada.
since-small = Solo pequeñas correcciones.
since-print = Imprimir de nuevo
since-keep = Las hojas que no se nombran aquí siguen valiendo.
since-all-cards = todas
since-marks = edición: antes { $before }, ahora { $now }
book-access = Todos los dibujos se describen con palabras. Las sesiones piden movimiento; cada parte dice cómo hacerla más fácil y, cuando las hay, se indican otras versiones.

## Figures
figure-says = { $view }, { $on }: { $angles }.
figure-straight = cuerpo recto
figure-angle = { $part } { $ways }
figure-left = { $part } del lado izquierdo
figure-right = { $part } del lado derecho
figure-handed = Se muestra con la mano derecha; con la izquierda se hace al revés.
figure-arrow = Una flecha: { $part } { $way }.
figure-moving = Ver el movimiento
figure-moment = Imagen { $number }
figure-view-side = Vista de lado
figure-view-other-side = Vista desde el otro lado
figure-view-front = Vista de frente
figure-view-back = Vista de espaldas
figure-view-corner = Vista de medio lado
figure-on-both-feet = de pie sobre los dos pies
figure-on-left-foot = de pie sobre el pie izquierdo
figure-on-right-foot = de pie sobre el pie derecho
figure-on-hands-and-feet = con apoyo de manos y pies
figure-on-hands-and-knees = a cuatro patas
figure-on-knees = de rodillas
figure-on-one-knee = con una rodilla en el suelo
figure-on-seat = en posición sentada en el suelo
figure-on-chair = en posición sentada en una silla
figure-on-wheelchair = en posición sentada en una silla de ruedas
figure-on-back = en posición tumbada boca arriba
figure-on-front = en posición tumbada boca abajo
figure-on-left-side = en posición tumbada sobre el lado izquierdo
figure-on-right-side = en posición tumbada sobre el lado derecho
figure-on-air = en el aire
figure-part-trunk = tronco
figure-part-back = espalda
figure-part-head = cabeza
figure-part-body = cuerpo
figure-part-arms = brazos
figure-part-arm = brazo
figure-part-elbows = codos
figure-part-elbow = codo
figure-part-wrists = muñecas
figure-part-wrist = muñeca
figure-part-hands = manos
figure-part-hand = mano
figure-part-legs = piernas
figure-part-leg = pierna
figure-part-knees = rodillas
figure-part-knee = rodilla
figure-part-feet = pies
figure-part-foot = pie
figure-part-thing = objeto en la mano
figure-way-forward = hacia delante
figure-way-back = hacia atrás
figure-way-up = hacia arriba
figure-way-down = hacia abajo
figure-way-left = hacia la izquierda
figure-way-right = hacia la derecha
figure-way-forward-and-up = hacia delante y hacia arriba
figure-way-forward-and-down = hacia delante y hacia abajo
figure-way-back-and-up = hacia atrás y hacia arriba
figure-way-sideways = hacia el lado
figure-way-across = cruzando el cuerpo
figure-way-bent = en flexión
figure-way-rounded = redondeada
figure-way-arched = arqueada
figure-way-pointed = en extensión
figure-way-pulled-up = hacia la espinilla
figure-holds-ball = Sujeta una pelota.
figure-holds-bag = Sujeta un saquito.
figure-holds-cushion = Sujeta un cojín.
figure-holds-rope = Sujeta una cuerda o una toalla.
figure-holds-weight = Sujeta un peso.
figure-holds-tub = Sujeta un barreño.
figure-holds-stick = Sujeta un palo.
figure-holds-sheet = Sujeta una hoja.
figure-with-line = Una línea en el suelo.
figure-with-marker = Una señal delante.
figure-with-mat = Sobre una colchoneta.
figure-with-wall = Una pared delante.
figure-with-ball = Una pelota delante.
figure-with-cushion = Un cojín debajo.
figure-with-chair = Una silla delante.
figure-with-skittles = Bolos delante.
poses-title = Posturas
poses-lead = Escribe el nombre de una postura en «figure:» y cambia además lo que necesites: {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = Para el profesorado
