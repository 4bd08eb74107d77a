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
teachers-curriculum = Cobertura del currículo
teachers-uncovered = todavía sin sesión

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
