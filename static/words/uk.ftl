### Слова, які читають родини та вчителі фізкультури, на сторінках і на папері.

## Shared

part-warm-up = Розминка
part-technique = Техніка
part-challenge = Виклик
part-stretch = Додаткове завдання
part-cool-down = Заминка

effort-rest = Відпочинок
effort-light = Легке
effort-moderate = Помірне
effort-vigorous = Інтенсивне

activity-athletics = Легка атлетика
activity-dance = Танець
activity-fitness = Фізична підготовка
activity-games = Ігри
activity-gymnastics = Гімнастика
activity-outdoor = Надворі

place-indoors = У приміщенні
place-outdoors = Надворі
place-both = У приміщенні або надворі

surface-grass = трава
surface-carpet = килимове покриття
surface-mat = мат
surface-hard-floor = тверда підлога
surface-paving = плитка надворі
surface-sand = пісок
surface-soft-play = м’яке покриття

piece-explain = пояснення { $amount }
piece-set-up = підготовка { $amount }
piece-work = робота { $amount }
piece-rest = відпочинок { $amount }
piece-rounds = { $count ->
    [one] { $count } підхід
    [few] { $count } підходи
    [many] { $count } підходів
   *[other] { $count } підходу
}
piece-recover = відновлення { $amount }
piece-counts = рахунків: { $counts }, темп { $tempo } за хвилину

minutes = { $count ->
    [one] { $count } хвилина
    [few] { $count } хвилини
    [many] { $count } хвилин
   *[other] { $count } хвилини
}
ages = Вік: { $ages } р.
optional = якщо є
soft = м’яке
list-or = { $rest } або { $last }

kind-recall = Пригадай
kind-explain = Поясни
kind-compare = Порівняй
kind-apply = Застосуй
kind-reflect = Підсумуй

task-inform = ознайомити
task-extend = розширити
task-refine = удосконалити
task-apply = застосувати

standing-draft = Чернетка
standing-reviewed = Перевірено
standing-approved = Затверджено
standing-retired = Не використовується

adapt-space = Інше місце
adapt-task = Інше завдання
adapt-equipment = Інший інвентар
adapt-people = Інші люди

sheet-cards = Картки
sheet-home-guide = Домашній порадник
sheet-record = Аркуш результатів
sheet-review = Аркуш запитань

key-points = Головне у виконанні
easier = Легше
harder = Складніше
faults = Типові помилки
fault-see = Видно
fault-say = Кажемо
adult-nearby = Дорослий поруч
adult-helping = Дорослий допомагає
landing-zone = Зона приземлення
stop-and-collect = Стоп і збираємо
cautions = Обережно
local-rules = Насамперед діють місцеві правила, оцінка ризиків школи та вимоги до дозволеної практики. Ці сторінки дають поради. Вони не можуть обіцяти, що вправа безпечна у вашому домі.
attempt = Спроба
best = Найкращий
mark-in = Результат ({ $unit })
measure-distance = Виміряй відстань: { $unit }.
measure-time = Виміряй час: { $unit }.
measure-count = Порахуй: { $unit }.
measure-points = Додай бали.
measure-criteria = Зверни увагу:
attempts = { $count ->
    [one] Зараховується { $count } спроба.
    [few] Зараховуються { $count } спроби.
    [many] Зараховується { $count } спроб.
   *[other] Зараховується { $count } спроби.
}
better-more = Більше – краще.
better-less = Менше – краще.
code-name = Псевдонім
date = Дата
licence = Ліцензія
credit = Автори

## Plans, on pages and on paper

plan = План підлоги
plan-same = Та сама підлога, що й у
plan-says = План підлоги в масштабі, довжина { $length }, ширина { $width }.
plan-stand = Старт тут
plan-wait = Чекай тут
plan-line = Лінія
plan-wall = Стіна
plan-moving = Місце для руху
plan-run-up = За лінією
plan-landing = Приземлення
plan-stopping = Місце для зупинки
plan-clear = Має бути вільно
plan-floor = Ваша підлога
plan-for = Для: { $parts }
plan-headroom = Висота над головою: { $height }.
plan-askew = Розташуйте з кута в кут: вміщується лише навскоси.
plan-unfit = Потрібно більше місця, ніж указано в цьому занятті: знайдіть просторіше місце.
setting-out = Розмітка рулеткою
tape-line = Познач лінію завширшки { $length }.
tape-right-angle = Прямо вперед: познач { $along } уздовж лінії та { $away } від її кінця. Рівно, коли між позначками { $across }.
tape-diagonals = Познач { $length } на { $width }. Кути прямі, коли обидві діагоналі { $diagonal }.
tape-sector = Бічні лінії: дві позначки за { $along } від середини лінії, між ними { $apart }.
tape-reach = Вільно: ще { $margin } за { $reach }.
tape-around = Залиш { $margin } вільного місця довкола.
tape-wait = Очікування: { $behind } за лінією.

slots = Якщо часу більше чи менше
slots-how = Розминка й заминка залишаються. Зберігається найважливіше.
slot-in = За { $time }
slot-same = Усе вміщується.
slot-drop = Пропустіть: { $list }.
slot-change = { $part }: { $time }.
slot-change-rounds = { $part }: { $rounds ->
    [one] { $rounds } підхід
    [few] { $rounds } підходи
    [many] { $rounds } підходів
   *[other] { $rounds } підходу
}, { $time }.
slot-left = Залишається: { $time }.
slot-too-short = Бракує { $by }: те, що має залишитися, триває довше.

effort-talk = Пояснення
effort-still = Найдовше без руху: { $time }, у частині «{ $part }».

effort-of-day = Помірне й інтенсивне навантаження – { $share } % від 60 хвилин на день, які радить ВООЗ (5–17 років).
effort-rhythm = { $part }: { $work } роботи на { $rest } відпочинку ({ $ratio }).
effort-usual = Для початку в цьому віці звично { $least }–{ $most } с інтенсивної роботи і стільки ж відпочинку (поширена практика).
effort-like = { $part } подібне до «{ $like }» у Compendium of Physical Activities 2011: { $met } MET, { $band } (помірне від { $from }). Це показник дорослих: для дітей – оцінка.

floor-how = На підлозі
floor-fits = вміщується
floor-askew = вміщується навскоси
floor-unfit = не вміщується
floor-unsaid = підлогу не вказано

things-as = { $things } замість: { $need }
things-together = Досить для всього одразу:
things-need = Потрібно
things-at-home = Є вдома
things-refused = Не підходить
things-missing = бракує: { $count }
things-once = Зберіть один раз
things-once-how = Цих кількох речей вистачить для всіх занять. Ніщо не потрібне у двох місцях водночас.
things-all = Усе разом із замінами
sheet-print = Надрукувати цей список (PDF)
things-once-unproven = Можливо, є коротший список.
sheet-gather = Зберіть один раз
misfit-heavy = заважке: { $found }, потрібно { $asked }, вік { $ages } р.
misfit-light = залегке: { $found }, потрібно { $asked }, вік { $ages } р.
misfit-large = завелике: { $found }, потрібно { $asked }, вік { $ages } р.
misfit-small = замале: { $found }, потрібно { $asked }, вік { $ages } р.
misfit-hard = не сказано, що м’яке
misfit-lacks = не сказано, що { $asked }

flight-throw = Випущене зі швидкістю { $speed } м/с під кутом { $angle }°, за { $height } від підлоги, летить на { $distance } і піднімається на { $apex }. Політ триває { $time }, приземлення зі швидкістю { $landing } м/с.
flight-toss = Підкинуте зі швидкістю { $speed } м/с з висоти { $height } піднімається на { $apex } і летить { $time }.
flight-drag = Опір повітря для «{ $thing }» враховано; без нього відстань була б { $distance }.
flight-drag-toss = Опір повітря для «{ $thing }» враховано.
flight-no-drag = Без опору повітря.
flight-headroom = Висота над головою: { $height }.
flight-room = Під стелею { $ceiling } найдалі за цієї швидкості – { $distance }, під кутом { $angle }°.
flight-best = За формулою найкраще { $angle }°, відстань { $distance }. Швидкість людини зменшується, коли кут росте, тож найкращий справжній кидок нижчий: для ядра формула дає близько 42°, а спортсмени штовхають під 37–38°.

marks-distance = Результати читають униз до цілого: { $step } (технічні правила World Athletics).
marks-time = Ручний час читають угору до наступного: { $step } (технічні правила World Athletics для бігу).
marks-time-held = Що довше, то краще: час читають униз до цілого: { $step }.
marks-whole = Результати – цілі числа.
marks-ties = Зараховується найкраща спроба; за рівності вирішує наступна.
marks-reference = Для порівняння: { $mark } ({ $source }). Групи людей різні; це нічия не норма.
marks-formula = Бали: ціла частина { $a } · d^{ $c }, де d – різниця між результатом і { $b }.
marks-points-source = Бали: { $source }
marks-from = Від
marks-points = Бали
points-list = Бали: { $list }.
points-from = { $points } від { $mark }
points-within = { $points } до { $mark }

reading-how = Наскільки складні речення, які читає дитина, за формулами для англійської мови. Вони бачать довжину, а не зміст.
reading-words = Слова
reading-sentences = Речення
reading-flesch = Легкість читання Флеша
reading-kincaid = Рівень Флеша–Кінкейда
reading-smog = Рівень SMOG
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = Вік читача (рівень + 5)
reading-long-words = Слова з трьох і більше складів:
reading-long-sentences = Скільки слів у реченнях, довших за 20 слів:

flight-axis-angle = Кут
flight-axis-distance = Відстань (м)
flight-figure-says = Відстань залежно від кута. Найкраще

## Pages

skip = До змісту
pages = Сторінки
nav-front = Усі заняття
nav-things = Що підготувати
nav-teachers = Для вчителів
nav-rules = Правила написання
foot-contact = Запитати школу
foot-made = Ці сторінки нічого не завантажують ззовні й нікуди нічого не надсилають.

front-about = Фізкультура вдома: оберіть заняття за віком, часом, місцем і речами, які є вдома.
front-choose = Оберіть заняття
front-choose-how = Відповідайте на що хочете. У списку залишиться лише те, що підходить.
front-sessions = Заняття
front-any = будь-що
front-age = Вік дитини
front-minutes = Скільки є часу
front-up-to = до { $count } хв
front-space = Вільне місце
front-space-rug = килимок, 2 м × 2 м
front-space-small-room = мала кімната, 3 м × 3 м
front-space-big-room = велика кімната, 5 м × 4 м
front-place = Де
front-activity = Вид руху
front-lacking = У нас немає …
front-lacking-how = (і нічого на заміну)
front-more = Місце, вид руху й речі вдома
front-reset = Почати знову
front-shown = Показано:
front-none = Жодне заняття не відповідає всьому. Приберіть одну відповідь.
front-needs = Підготуйте:
front-needs-nothing = Нічого готувати не треба
front-cards = Картки для друку
front-minutes-unit = хв

fact-ages = Вік
fact-minutes = Хвилини
fact-space = Вільне місце
fact-place = Де
fact-effort = Навантаження, переважно

space = Місце
space-needs = { $size } вільної підлоги.
space-headroom = Висота над головою { $height }.
space-surface = Добре під ногами: { $list }.

before = Перед початком
running-order = Хід заняття
running-how = Що вищий стовпчик, то більше навантаження.
line-label = Шкала часу на { $minutes } хв, один стовпчик на частину
success = Що я вмію наприкінці
things = Що підготувати
things-nothing = Нічого. Можна починати.
things-household = Є в кожному домі.
things-limits = Що підходить: { $limits }
stands-in = Або
for-parts = Для:
adult = Час дорослого
adult-nearby-for = Поруч протягом { $time }.
adult-helping-for = Допомагає протягом { $time }.
adult-none = Не потрібен. Будьте там, де чути дитину.
film = Відео
from-to = від { $from } до { $to }
beats-label = Робота й відпочинок у масштабі
how-measured = Як вимірюємо
throwing = Перш ніж щось полетить
tick-rounds = Виконані підходи
finish = Кінець
finish-say = Попий води. Потім запиши свої результати.
marks = Мої результати
marks-how = Пиши псевдонім, ніколи не повне ім’я. Результати – твої: покращуй власний рекорд.
next-time = Наступного разу я
review = Поміркуй
review-how = Спершу скажи або запиши свою відповідь. Потім відкрий нашу.
review-answer = Наша відповідь
adaptations = Пристосуй до себе
papers = Надрукувати
sheet-cards-about = одна частина на картці, { $cards } на сторінці
sheet-home-guide-about = одна сторінка: шкала часу, речі, місце, застереження
sheet-record-about = таблиця для результатів
sheet-review-about = запитання, а відповіді на окремій сторінці
draft-note = Чернетка: це заняття ще не перевірено.

things-intro = Усе, що потрібно для занять, і чим це замінити. Позначайте, що знайшли.
things-for = Заняття
things-extras = Добре мати

rules-intro = Що шукає homeground, коли перевіряє файли занять, і чому. Він радить; він ніколи не засвідчує, що заняття безпечне.
rules-contents = Коди
rules-why = Чому
rules-source = Джерело:
rules-bad = Не так
rules-good = А так
severity-problem = Проблема
severity-warning = Попередження
severity-advice = Порада

teachers-intro = Кожне заняття зі шкалою часу, відповідями та станом. Показники навантаження – оцінки за вказаним навантаженням частин.
teachers-contents = Заняття
teachers-active = Помірне й інтенсивне: { $time }, { $share } % часу (оцінка)
teachers-plans = Плани: навантаження, час, підлога, речі, політ, результати, читання
teachers-floors = Підлога
teachers-flights = Політ
teachers-marks = Результати й бали
teachers-reading = Читання
teachers-part = Частина
teachers-from = Від
teachers-time = Час
teachers-effort = Навантаження
teachers-task = Завдання
teachers-objectives = Цілі
teachers-success = Критерії успіху
teachers-codes = Навчальна програма
teachers-answers = Запитання й відповіді
teachers-standing = Стан
teachers-by = { $by }
teachers-on = { $on }
teachers-look-again = переглянути { $on }
teachers-changed = Що змінено
teachers-curriculum = Охоплення навчальної програми
teachers-uncovered = заняття ще немає

## Paper

cards-number = Картка { $number } з { $total }
cards-continued = (продовження)
cards-see-guide = У домашньому пораднику є хід заняття, заміни для кожної речі та всі застереження.
cards-adapt = Для вашого дому й для тебе
cards-helper = Для того, хто допомагає
cards-look = На що дивитися
cards-look-how = Що видно → що сказати. Щоразу щось одне.
or-use = або
sheet-number = Сторінка { $number } з { $total }
fact-time = Час
review-paper-how = Спершу скажи відповідь уголос. Потім запиши.
review-answers = Відповіді
review-own = Твоя власна відповідь.
review-help = Це зразкові відповіді. Слова дитини так само добрі, якщо означають те саме.
fact-headroom = Висота над головою
record-look-for = Зверни увагу

## Quantities

amount-m = { $number } м
amount-cm = { $number } см
amount-mm = { $number } мм
amount-kg = { $number } кг
amount-g = { $number } г
amount-min = { $number } хв
amount-s = { $number } с
amount-min-s = { $minutes } { $seconds }
amount-at-most = щонайбільше { $amount }
amount-at-least = щонайменше { $amount }
amount-any = будь-скільки

## Languages

languages = Інші мови
language-name = Українська
shown-in-original = Це заняття ще не перекладено. Його показано мовою оригіналу ({ $language }).
translation-old = Оригінал змінився після цього перекладу.
language-unnamed = своєю мовою

## To scan, to copy, to send

scan-page = Сторінка цього заняття
scan-film = Відео

no-printer = Немає принтера?
no-printer-how = Перепишіть від руки: це приблизно { $minutes } хв. Або збережіть як текст чи надішліть повідомленнями.
copy-file = Переписати від руки (текст)
texts-file = Текстові повідомлення (текст)
no-printer-needs = Потрібно: { $list }.
no-printer-read = Спершу прочитайте на сторінці всі застереження.
no-printer-rules = Насамперед діють правила школи та її оцінка ризиків.

## Sheets

sheet-large-print = Картки великим шрифтом
sheet-large-print-about = літери не менші за 18 пунктів, одна картка на сторінці
sheet-class-set = Набір для класу
sheet-class-set-about = { $copies ->
    [one] { $copies } пронумерований набір карток
    [few] { $copies } пронумеровані набори карток
    [many] { $copies } пронумерованих наборів карток
   *[other] { $copies } пронумерованого набору карток
}, карток на сторінці: { $cards }
sheet-booklet = Книжечка
sheet-booklet-about = друкуйте з обох боків, перегортаючи за коротким краєм, і складіть увесь стос один раз навпіл
sheet-poster = Плакат
sheet-poster-about = головне у виконанні, читається з 2 м
sheet-record-class = Аркуш результатів класу
sheet-record-class-about = псевдоніми збоку, один під одним
sheet-record-week = Аркуш результатів на тиждень
sheet-record-week-about = стовпець на кожен день
both-long = друкуйте з обох боків, перегортаючи за довгим краєм
both-short = друкуйте з обох боків, перегортаючи за коротким краєм
cards-back = Зворот картки { $number } з { $total }
cards-set = Набір { $number } з { $total }
notes = Нотатки
booklet-inside = Усередині
record-class-tick = Познач те, що було видно. Чого не було видно, залиш порожнім.
record-week-how = Щодня позначай, що зроблено, і записуй найкращий результат дня.
record-done = Зроблено
record-best-marks = Мій найкращий результат
record-week-best = Що найкраще вийшло цього тижня?
week-of = Тиждень від
day-1 = пн
day-2 = вт
day-3 = ср
day-4 = чт
day-5 = пт
day-6 = сб
day-7 = нд

## Progress

progress-title = Поступ класу
progress-private = Для вчителя. Лише коди (псевдоніми), без імен. Зберігайте до { $date }, потім видаліть: homeground progress --to … --forget
progress-how = Кожну зміну порівняно з попереднім результатом тієї самої дитини. Результати з фізичної підготовки приватні: це не оцінка і не порівняння дітей.
progress-rule = Зміна більша за звичайні коливання день у день, коли перевищує дві типові похибки однієї спроби (Hopkins 2000: від 1,5 до 2). Типову похибку взято з повторних спроб того самого дня: різниця між днями додається до неї.
progress-contents = У цьому звіті
progress-children = Діти
progress-class = Клас
progress-class-small = Результати надіслали менш ніж { $fewest } дітей: показників класу немає, бо вони вказали б на когось.
progress-first = Перший день
progress-latest = Останній день
progress-median = Медіана
progress-quartiles = Квартилі
progress-range = Найменше й найбільше
progress-deviation = Стандартне відхилення
progress-noise = Типова похибка однієї спроби
progress-noise-from = пар спроб: { $pairs }
progress-noise-unknown = невідома: замало повторних спроб
progress-smallest = Найменша зміна, що має значення
progress-wobble = Більше за коливання від
progress-spread-says = Крапка – дитина, рамка – від квартиля до квартиля, товста лінія – медіана.
progress-strip-says = Результати день за днем: { $code }, «{ $task }». Числа – у таблиці поруч.
progress-better-more = Що далі праворуч, то краще.
progress-better-less = Що далі ліворуч, то краще.
progress-child-table = Про кожну дитину
progress-code = Код
progress-place = Місце
progress-first-mark = Перший
progress-last-mark = Останній
progress-best-mark = Найкращий
progress-best-on = { $mark }, { $date }
progress-change = Зміна
progress-verdict = Чи це напевно?
progress-tries = Спроби
progress-points = Бали
progress-over-time = З часом
progress-next = Що далі й чому
progress-missing = Ще нічого не надіслано
progress-missing-none = Усі щось надіслали.
progress-silent = Не надіслано нічого
progress-faults = Позначені типові помилки
progress-few = менш ніж { $fewest }
progress-send = Що надіслати далі
progress-comments = Відгуки для звіту, які можна виправити
progress-questions = Запитання
progress-questions-how = Що правильно, вирішує вчитель. Тут відповіді лише зібрано, а схожі об’єднано.
progress-right = правильно
progress-wrong = ще ні
progress-unmarked = не перевірено
progress-answers-few = Відповіли менш ніж { $fewest } дітей: їхніх відповідей тут не показано.
progress-answers = Відповіді дітей
progress-model-answer = Наша відповідь
progress-unread = Не прочитано
progress-unread-how = Ці клітинки пропущено. Усе інше в їхніх рядках зараховано.
progress-row = Рядок
progress-column = Стовпець
progress-says = Що не так
progress-file = Файл

progress-short-once = перший результат
progress-short-noise-unknown = замало спроб, щоб сказати
progress-short-too-close = різниця замала, щоб сказати
progress-short-too-small = справжня зміна, але дуже мала
progress-short-better = краще, більше за звичайні коливання
progress-short-worse = слабше, більше за звичайні коливання

progress-child-once = Це твій перший день. Тепер є результат, який можна покращити.
progress-child-noise-unknown = Спроб ще замало, щоб сказати, чи це більше за звичайні коливання день у день.
progress-child-too-close = Різниця замала, щоб сказати напевно: на стільки результати коливаються від спроби до спроби.
progress-child-too-small = Це більше за звичайні коливання день у день, але дуже мало.
progress-child-better = Це більше за звичайні коливання день у день: у тебе виходить краще.
progress-child-worse = Цього разу вийшло слабше, і це більше за звичайні коливання. Сон, взуття й підлога теж важать. Спробуй ще раз.
progress-child-no-mark = Жодна спроба ще не має результату. Таке буває: спершу зроби легший варіант.

progress-slip = Мої результати
progress-slip-for = Для: { $code }
progress-slip-how = Результати – твої. Покращуй власний рекорд.
progress-slip-change = Від { $first } до { $last }: { $change }.
progress-slip-best = Мій найкращий результат: { $mark }, { $date }.
progress-slip-new-best = Новий рекорд: { $mark }, { $date }!
progress-slip-band = Кільця – спроби, крапки – найкраще за день. У сірій смузі зміна замала, щоб сказати напевно.
progress-slip-no-band = Кільця – спроби, крапки – найкраще за день.
progress-slip-next = Що далі
progress-slip-again = Повернися до цих запитань
progress-slip-day = День
progress-slip-tries = Спроби
progress-slip-day-best = Найкращий

progress-mend = Було видно: «{ $see }» Спробуй так: «{ $say }»
progress-mend-part = Це відпрацьовують у частині «{ $part }».
progress-further = Спробуй додаткове завдання «{ $part }».
progress-onward = Потім: «{ $session }».
progress-practise = Зроби ще раз і пам’ятай про одне: «{ $point }»
progress-practise-bare = Зроби ще раз і стеж щоразу за чимось одним.
progress-easier = Спершу легше: { $easier }
progress-easier-bare = Спершу зроби легший варіант.

progress-send-mend = Ще раз «{ $part }», дітей: { $count }. Позначено: «{ $see }»
progress-send-further = Додаткове завдання «{ $part }», дітей: { $count }. Зміна більша за звичайні коливання день у день.
progress-send-onward = Потім «{ $session }», дітей: { $count }. Той самий вид руху, ще не виконано.
progress-send-practise = Ще раз «{ $part }», дітей: { $count }. Поліпшення понад звичайні коливання ще немає, помилок не позначено.
progress-send-easier = Легший варіант «{ $part }», дітей: { $count }. Результату ще немає.

progress-comment-change = { $code }: від { $first } до { $last } у завданні «{ $task }» ({ $change }, { $verdict }).
progress-comment-once = { $code }: { $last } у завданні «{ $task }» першого дня.
progress-comment-none = { $code }: є спроби в завданні «{ $task }», але результату ще немає.
progress-comment-next = Наступний крок: { $next }

## Fit

fit-teacher = Кому що підходить
fit-teacher-lead = { $count ->
    [one] { $count } дім, позначений кодом.
    [few] { $count } доми, позначені кодами.
    [many] { $count } домів, позначених кодами.
   *[other] { $count } дому, позначені кодами.
} Для кожного заняття – найкращий варіант, який дозволяють час, підлога, люди та речі вдома. Нічого небезпечного на заміну не беруть. Зберігайте цей аркуш у школі.
fit-print = Надрукувати (PDF)
fit-grid = Усе в одній таблиці
fit-grid-how = Хвилини й кількість частин. Риска: це заняття там провести не можна; нижче сказано чому.
fit-home = Дім
fit-cell = { $minutes } хв, { $kept } з { $all }
fit-cell-whole = { $minutes } хв, повністю
fit-home-heading = Дім { $code }
fit-home-minutes = { $time } на день
fit-home-language = просять мову: { $language }
fit-reads-paper = надрукувати для цього дому
fit-reads-phone = надіслати теку на телефон
fit-as-written = Без змін.
fit-uses = Використано: { $list }.
fit-not = тут ні
fit-left-out = Пропущено: { $part } – { $why }.
fit-instead = Найподібніше: { $part }.
fit-cannot = { $list }: { $why }.
fit-one-thing = Вистачило б однієї зміни: { $thing }.
fit-no-one-thing = Жодної однієї зміни не вистачить.
fit-one-minutes = { $time } на день
fit-one-more-floor = підлога { $floor }, більша на { $by } уздовж і впоперек
fit-one-floor = вільна підлога { $size } { $place }
fit-one-helper = ще одна людина, яка займатиметься разом або буде поруч
fit-one-version-seated = варіанти частин сидячи, яких ще ніхто не написав
fit-one-version-quiet = тихі варіанти частин, яких ще ніхто не написав
fit-why-seated = немає варіанта сидячи
fit-why-noise = ноги гучно вдаряють об підлогу, а тихого варіанта немає
fit-why-surface = жодна підлога не має відповідного покриття
fit-why-time = за цей час більше дає те, що залишається
fit-why-short = те, що має залишитися, триває довше, ніж є часу
fit-why-helpers = { $count ->
    [one] потрібна ще { $count } людина, щоб займатися разом або бути поруч
    [few] потрібні ще { $count } людини, щоб займатися разом або бути поруч
    [many] потрібно ще { $count } людей, щоб займатися разом або бути поруч
   *[other] потрібно ще { $count } людини, щоб займатися разом або бути поруч
}
fit-why-place = це роблять { $place }
fit-why-headroom = потрібна висота над головою { $height }
fit-why-floor = потрібна вільна підлога { $size }
fit-why-things = удома немає нічого безпечного як: { $list }
fit-version-seated = Сидячи
fit-version-quiet = Тихо
fit-version-small-space = На малому місці
fit-version-low-vision = Для слабкого зору
fit-version-partner = У парі
fit-version-alone = Самостійно
fit-lend = Позичити або надіслати
fit-lend-how = Найменше речей, з якими в кожному домі можна провести всі заняття, яким заважає лише брак речей. Далі – дім за домом:
fit-lend-nothing = Нічого: жодне заняття не випадає лише через брак речей.
fit-rethink = Переосмислити
fit-rethink-how = Чого не можна зробити в чверті домів або більше (межу обрали ми).
fit-rethink-nothing = Нічого: жодне заняття й жодна частина не випадають у чверті домів.
fit-rethink-homes = Доми, де це неможливо: { $count } з { $of }.
fit-rethink-why = Найчастіше: { $why }.
fit-survey = Опитування
fit-survey-title = Що є вдома?
fit-survey-lead = Щоб фізкультура вдома підходила вашому дому. Неправильних відповідей немає, купувати нічого не треба. Не пишіть імен.
fit-ask-code = Ваш код
fit-ask-code-how = Його дає школа. Ніколи не пишіть імені, адреси чи дати народження.
fit-ask-code-line = Код
fit-ask-time = Час і люди
fit-ask-minutes = Скільки хвилин на день є для фізкультури
fit-ask-helpers = Скільки людей можуть займатися разом або бути поруч
fit-ask-needs = Що потрібно дитині
fit-ask-seated = Займається сидячи
fit-ask-low-vision = Погано бачить
fit-ask-quiet = У приміщенні треба тихо
fit-ask-reads = Як ви читаєте заняття
fit-ask-paper = На папері
fit-ask-phone = На телефоні
fit-ask-language = Мова
fit-ask-floor = Вільна підлога
fit-ask-floor-how = Найбільша, яку можна звільнити, без стін і меблів.
fit-ask-floor-2 = Друга підлога
fit-ask-floor-2-how = Якщо є: двір, сад, коридор.
fit-ask-length = Довжина в метрах
fit-ask-width = Ширина в метрах
fit-ask-height = Висота до стелі або «надворі»
fit-ask-outdoors = Це надворі
fit-ask-things = Речі, які у вас є
fit-ask-things-how = Напишіть, скільки їх. Пропустіть те, чого не маєте.
