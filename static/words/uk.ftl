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
sheet-cards-about = одна частина на картці, чотири на сторінці
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
