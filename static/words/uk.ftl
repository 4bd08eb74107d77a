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

## Units
unit-units = Цикли занять
unit-things = Речі: { $things }.
unit-remember = Пам’ятаєш?
unit-remember-how = Запитання з попередніх занять. Спершу відповідай з пам’яті, потім перевір.
unit-remember-from = із заняття «{ $session }»
unit-week = Тиждень { $week }
unit-none-plain = Уроків немає
unit-calendar = Додати до календаря
unit-calendar-about = Відкривається в календарі телефона чи комп’ютера. Якщо додати ще раз, пересунеться те, що змінилося.
unit-poster = Плакат на семестр
unit-poster-about = На стіну, з клітинкою для позначки біля кожного заняття
unit-remember-sheet = Аркуш «Пам’ятаєш?»
unit-remember-about = Запитання, що повертаються, день за днем; відповіді на окремій сторінці
unit-gather-sheet = Що підготувати
unit-gather = Зберіть один раз
unit-gather-how = Найменше речей, яких вистачить для всіх занять цього циклу.
unit-gather-by = На тиждень { $week }
unit-get-out = Дістати: { $things }
unit-put-back = Прибрати на місце: { $things }
unit-same-things = Ті самі речі, що й минулого разу.
unit-minutes = Початок: { $time }, { $length }
unit-days = Дні
unit-take = Узяти з собою
unit-answers = Відповіді
unit-answer = Відповідь
unit-tick = Постав позначку в клітинці за кожне виконане заняття.
date-with-weekday = { $weekday }, { $date }
date-day-month = { $day } { $month }
date-with-year = { $date } { $year } року
weekday-monday = понеділок
weekday-tuesday = вівторок
weekday-wednesday = середа
weekday-thursday = четвер
weekday-friday = п’ятниця
weekday-saturday = субота
weekday-sunday = неділя
month-1 = січня
month-2 = лютого
month-3 = березня
month-4 = квітня
month-5 = травня
month-6 = червня
month-7 = липня
month-8 = серпня
month-9 = вересня
month-10 = жовтня
month-11 = листопада
month-12 = грудня
unit-together = Цикли та охоплення програми
unit-teachers-lead = Як складено цей цикл і чому.
unit-plan = План
unit-session = Заняття
unit-why = Чому тут
unit-changes = Речі
unit-why-named = вказано на цей день
unit-why-order = поставлено сюди автоматично
unit-why-cover = додано для: { $codes }
unit-order = Як заповнено вільні дні
unit-order-rule = Заняття без указаного дня розставлено так, щоб було якнайменше, від найважливішого: занять перед тими, на які вони спираються ({ $grounds }), днів інтенсивного навантаження поспіль ({ $vigorous }), однакових занять двічі поспіль ({ $same }), речей, які треба дістати чи прибрати ({ $things }), втрати активного часу від заняття до заняття ({ $lost }); наприкінці важить порядок, який указав учитель.
unit-order-best = Жоден інший порядок не кращий.
unit-order-listed = Занять без указаного дня забагато, щоб перебрати всі порядки; залишено порядок, який указав учитель.
unit-effort = Навантаження за тижнями
unit-effort-lead = Оцінки за навантаженням, указаним у заняттях, для дитини, яка виконає їх усі. Всесвітня організація охорони здоров’я (2020) радить у середньому 60 хвилин на день активності від помірної до інтенсивної протягом тижня, а інтенсивну – щонайменше 3 дні; фізкультура вдома – частина цього.
unit-effort-vigorous = Інтенсивне
unit-effort-active = Помірне й інтенсивне
unit-effort-share = Частка від 420 хвилин на тиждень
unit-effort-days = Дні інтенсивного навантаження
unit-returns = Запитання, що повертаються
unit-returns-rule = Запитання повертається після заняття через стільки днів: { $after }. Щоразу наступну перерву, рахуючи від того дня, множать на { $growth }. Запитань на один день – щонайбільше { $most }; спершу ті, чий час настав раніше.
unit-returns-time = { $time ->
    [one] { $time }-й раз
    [few] { $time }-й раз
    [many] { $time }-й раз
   *[other] { $time }-й раз
}
unit-cover = Що охоплює цикл
unit-cover-met = Досягають заняття, які вказав учитель: { $codes }.
unit-cover-added = «{ $session }» – додано для: { $codes }.
unit-cover-best = Менша кількість занять не охопить стільки ж. З однакових можливостей беруть найкоротшу, потім першу за адресою.
unit-cover-unproven = Може, вистачить і менше: занять забагато, щоб перебрати все.
unit-cover-none = Жодне заняття для цього віку не досягає: { $codes }.
unit-cover-room = Не лишилося дня для: { $codes }.
unit-left-over = Не знайшлося дня для: { $sessions }.
coverage-title = Охоплення навчальної програми
coverage-lead = Які заняття досягають яких очікуваних результатів навчання і для яких класів. Заняття враховують для класу, якщо воно підходить для всього віку учнів цього класу.
coverage-sessions = Очікувані результати й заняття
coverage-groups = Очікувані результати й класи
coverage-statement = Очікуваний результат
coverage-count = Заняття
coverage-gap = бракує
coverage-often = часто
coverage-meets = досягає
coverage-key = «Бракує»: очікуваний результат, якого не досягає жодне заняття для класу, якого він стосується. «Часто»: якого досягає багато занять (щонайменше { $least }), і їх більш ніж удвічі більше за середнє.
coverage-csv = Уся таблиця (CSV)
coverage-no-gap = Кожного очікуваного результату досягають у кожному класі, якого він стосується.
coverage-not-for = не стосується цього класу

## Marks at home
home-keeps = Те, що ти тут пишеш, зберігається на цьому пристрої, у цьому браузері, доки ти його не видалиш. Само собою нічого не надсилається.
home-keeps-not = Цей браузер нічого не зберігає для цієї сторінки. Написане зникне, коли її закрити: спершу надішли його або збережи.
home-known = Який код твій?
home-another = Додати псевдонім
home-code-use = Узяти цей код
home-code-help = Код від учителя, наприклад K07, окремий для кожної дитини. Ніколи не ім’я, не адреса й не номер телефону.
home-code-first = Ще не збережено: спершу впиши вгорі свій псевдонім.
home-write = Записуй кожен результат так, як його видно, наприклад { $mark }. Знак x – спроба, яку не зараховано.
home-no-mark = Цю спробу не зараховано
home-attempts = Спроби
home-best-today = Найкращий результат дня
home-personal-best = Власний рекорд
home-change = Зміна
home-since = Зміна від { $date }
home-standing-first = Твій перший результат: тепер є що покращувати.
home-standing-new = Новий власний рекорд!
home-standing-equalled = Так само, як твій рекорд.
home-days = Збережені дні: обери день, щоб виправити
home-day-to-come = Обери сьогодні або день раніше.
home-refused-number = Це не вдається прочитати. Запиши результат, наприклад { $mark }, або x.
home-refused-unit = Ця одиниця тут не підходить. Запиши результат, наприклад { $mark }.
home-refused-doubt = Яка це одиниця? Допиши її, наприклад { $mark }.
home-refused-seconds = Запиши хвилини, двокрапку й дві цифри секунд, не більше ніж 59, наприклад 1:05.
home-refused-whole = Запиши ціле число, наприклад { $mark }.
home-refused-large = Це завелике число. Запиши результат, наприклад { $mark }.
home-refused-none = Спершу впиши свій псевдонім.
home-refused-name = Це схоже на ім’я. Впиши натомість код від учителя, наприклад K07.
home-refused-mail = Це схоже на адресу, номер або дату, з яких можна дізнатися, хто ти. Впиши код від учителя, наприклад K07.
home-refused-signs = У коді щонайбільше 24 літери, цифри, крапки й дефіси, наприклад K07.
home-answer = Моя відповідь
home-answer-said = Відповідь сказано вголос
home-personal = Прибери електронні адреси й номери телефону: цю відповідь не збережено.
home-send = Надіслати вчителеві
home-send-how = Лише коли захочеш і так, як просить учитель: скопіюй текст у повідомлення чи електронний лист, передай файл або надрукуй. Будь ласка, без імен, у відповідях теж.
home-send-nothing = Надсилати ще нічого: впиши псевдонім і результат або відповідь.
home-send-text = Усе, що буде надіслано
home-copy = Скопіювати текст
home-copied = Скопійовано.
home-share = Поділитися …
home-file = Зберегти як файл
home-print = Надрукувати
home-export = Зберегти у файл усе для коду { $code }
home-delete = Видалити все для коду { $code }
home-sure = Видалити все, що цей пристрій зберігає для коду { $code }? Повернути це не вдасться.
home-deleted = Видалено.
home-delete-note = Видалене тут зникає з цього пристрою. Те, що вже надіслано, не повернеться.
progress-own-words = Власними словами дітей: у них можуть бути імена. Прочитайте, перш ніж комусь показувати.

## Pages: teachers
teachers-session = Заняття
teachers-active-short = Помірне й інтенсивне
teachers-grade = Рівень читання
teachers-matrix = Таблиця інвентарю
teachers-matrix-how = Скільки кожної речі потрібно для заняття водночас; у дужках – те, без чого можна обійтися.
teachers-matrix-most = Найбільше водночас
teachers-family-page = Сторінка для родини

## Pages: choosing, doing, keeping
feed = Нові та змінені заняття
front-find = Знайти
front-find-how = Слово, наприклад гра або річ
front-relax = Без відповіді «{ $answer }»: { $count }
now-start = Почати заняття
now-start-how = По одній частині, з таймером.
now-leave = Уся сторінка
now-back = Назад
now-next = Далі
now-place = { $number } з { $total }
now-after = Результати й запитання
timer = Таймер
timer-left = Залишилося
timer-start = Старт
timer-pause = Пауза
timer-on = Продовжити
timer-again = Спочатку
timer-explain = Дивися і слухай
timer-set-up = Підготуй місце й речі
timer-work = Рухайся
timer-rest = Відпочивай
timer-recover = Віддихайся
timer-round = Підхід { $number } з { $total }
timer-done = Чудова робота
timer-sound = Звук
timer-buzz = Вібрація
timer-voice = Голос

## Library
retired-note = Це заняття більше не використовують. Його залишено тут для читання; для виконання оберіть інше.
borrowed-from = Запозичено зі збірки «{ $pack }»
borrowed-changed = Запозичено зі збірки «{ $pack }» і змінено
borrowed-changed-by = Запозичено зі збірки «{ $pack }»; зміни: { $school }

## Editions and what changed
edition-mark = Видання { $mark }
edition = Чи мій аркуш не застарів?
edition-how = Унизу кожного аркуша вказано видання. Ось чинні:
edition-ask = Видання на моєму аркуші
edition-current = { $mark } – чинне видання ({ $sheet }).
edition-changed = { $mark } – не чинне видання. Відтоді аркуш змінився, або він з іншого заняття: надрукуйте його знову.
edition-no-mark = Видання позначають чотири літери або цифри, без I, L, O та U.
says-title = Назва
says-summary = Коротко
says-surface = Під ногами
says-limits = Що підходить
says-instead = Натомість
says-note = Примітка
says-things-for = Для чого речі
says-school = Школа
says-picture = Малюнок
says-by = Хто перевіряв
says-look-again = Переглянути знову
says-explain = Пояснення
says-set-up = Підготовка
says-work = Робота
says-rest = Відпочинок
says-rounds = Підходи
says-recover = Відновлення
says-effort = Навантаження
says-how = Як виконувати
says-key-point = Головне у виконанні
says-attempts = Спроби
says-movements = Рухи
says-version = Інший варіант
says-flight = Політ
says-like = Подібне до
says-step = Найменша різниця
says-reference = Для порівняння
says-lengths = Найкоротше / найдовше (вага)
since = Що змінилося
since-how = Від { $when }.
since-review = Що змінилося, для перевірки
since-became = { $what }: було { $before }, стало { $now }
since-reworded = { $what }: сказано інакше
since-added = { $what }, нове: { $text }
since-gone = { $what }, прибрано: { $text }
since-reordered = { $what }: інший порядок
since-part-added = Нова частина
since-part-gone = Частину прибрано
since-parts-reordered = Частини йдуть в іншому порядку
since-before = Раніше
since-now = Тепер
since-new = Нові заняття
since-no-more = Більше не тут
since-changed = Змінені заняття
since-shared = Для всіх занять
since-same = { $count ->
    [one] { $count } заняття без змін.
    [few] { $count } заняття без змін.
    [many] { $count } занять без змін.
   *[other] { $count } заняття без змін.
}
since-nothing = Нічого не змінилося.
since-small = Лише дрібні виправлення.
since-print = Надрукувати знову
since-keep = Аркуші, яких тут не названо, і далі придатні.
since-all-cards = усі
since-marks = видання: було { $before }, стало { $now }
book-access = Кожен малюнок описано словами. Заняття потребують руху; у кожній частині сказано, як її полегшити, а де є інші варіанти, їх теж наведено.

## Figures
figure-says = { $view }, { $on }: { $angles }.
figure-straight = тіло пряме
figure-angle = { $part } – { $ways }
figure-left = { $part } з лівого боку
figure-right = { $part } з правого боку
figure-handed = Показано для правої руки; шульги роблять навпаки.
figure-arrow = Стрілка: { $part } – { $way }.
figure-moving = Показати в русі
figure-moment = Малюнок { $number }
figure-view-side = Вигляд збоку
figure-view-other-side = Вигляд з іншого боку
figure-view-front = Вигляд спереду
figure-view-back = Вигляд ззаду
figure-view-corner = Вигляд навскоси
figure-on-both-feet = стоячи на обох ногах
figure-on-left-foot = стоячи на лівій нозі
figure-on-right-foot = стоячи на правій нозі
figure-on-hands-and-feet = в упорі на руках і ногах
figure-on-hands-and-knees = в упорі на руках і колінах
figure-on-knees = стоячи на колінах
figure-on-one-knee = стоячи на одному коліні
figure-on-seat = сидячи на підлозі
figure-on-chair = сидячи на стільці
figure-on-wheelchair = сидячи в кріслі колісному
figure-on-back = лежачи на спині
figure-on-front = лежачи на животі
figure-on-left-side = лежачи на лівому боці
figure-on-right-side = лежачи на правому боці
figure-on-air = у повітрі
figure-part-trunk = тулуб
figure-part-back = спина
figure-part-head = голова
figure-part-body = тіло
figure-part-arms = руки
figure-part-arm = рука
figure-part-elbows = лікті
figure-part-elbow = лікоть
figure-part-wrists = зап’ястки
figure-part-wrist = зап’ясток
figure-part-hands = кисті
figure-part-hand = кисть
figure-part-legs = ноги
figure-part-leg = нога
figure-part-knees = коліна
figure-part-knee = коліно
figure-part-feet = стопи
figure-part-foot = стопа
figure-part-thing = предмет у руках
figure-way-forward = уперед
figure-way-back = назад
figure-way-up = угору
figure-way-down = униз
figure-way-left = ліворуч
figure-way-right = праворуч
figure-way-forward-and-up = уперед і вгору
figure-way-forward-and-down = уперед і вниз
figure-way-back-and-up = назад і вгору
figure-way-sideways = убік
figure-way-across = упоперек тіла
figure-way-bent = згинання
figure-way-rounded = округлення
figure-way-arched = прогин
figure-way-pointed = носком від себе
figure-way-pulled-up = носком на себе
figure-holds-ball = Тримає м’яч.
figure-holds-bag = Тримає мішечок.
figure-holds-cushion = Тримає подушку.
figure-holds-rope = Тримає мотузку або рушник.
figure-holds-weight = Тримає обважнювач.
figure-holds-tub = Тримає миску або коробку.
figure-holds-stick = Тримає палицю.
figure-holds-sheet = Тримає аркуш.
figure-with-line = Лінія на підлозі.
figure-with-marker = Попереду позначка.
figure-with-mat = На маті.
figure-with-wall = Попереду стіна.
figure-with-ball = Попереду м’яч.
figure-with-cushion = Знизу подушка.
figure-with-chair = Попереду стілець.
figure-with-skittles = Попереду кеглі.
poses-title = Пози
poses-lead = Впишіть назву пози в «figure:» і змініть те, що потрібно: {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = Для вчителів
