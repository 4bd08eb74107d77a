### الكلمات التي تقرؤها الأسرة ويقرؤها المعلم، على الصفحات وعلى الورق.

## Shared

part-warm-up = الإحماء
part-technique = المهارة
part-challenge = التحدي
part-stretch = مهمة إضافية
part-cool-down = التهدئة

effort-rest = راحة
effort-light = خفيف
effort-moderate = متوسط
effort-vigorous = شديد

activity-athletics = ألعاب القوى
activity-dance = الحركة الإيقاعية
activity-fitness = اللياقة البدنية
activity-games = الألعاب
activity-gymnastics = الجمباز
activity-outdoor = أنشطة في الهواء الطلق

place-indoors = داخل البيت
place-outdoors = في الخارج
place-both = داخل البيت أو في الخارج

surface-grass = العشب
surface-carpet = السجاد
surface-mat = بساط تمارين
surface-hard-floor = أرضية صلبة
surface-paving = البلاط الخارجي
surface-sand = الرمل
surface-soft-play = أرضية لعب لينة

piece-explain = شرح { $amount }
piece-set-up = تجهيز { $amount }
piece-work = عمل { $amount }
piece-rest = راحة { $amount }
piece-rounds = { $count ->
    [zero] بلا جولات
    [one] جولة واحدة
    [two] جولتان
    [few] { $count } جولات
    [many] { $count } جولة
   *[other] { $count } جولة
}
piece-recover = استعادة النفَس { $amount }
piece-counts = عدد العدّات { $counts } بسرعة { $tempo } في الدقيقة

minutes = { $count ->
    [zero] أقل من دقيقة
    [one] دقيقة واحدة
    [two] دقيقتان
    [few] { $count } دقائق
    [many] { $count } دقيقة
   *[other] { $count } دقيقة
}
ages = الأعمار { $ages }
optional = إن وُجد
soft = لين
list-or = { $rest } أو { $last }

kind-recall = تذكّر
kind-explain = اشرح
kind-compare = قارن
kind-apply = طبّق
kind-reflect = راجع ما فعلت

task-inform = تقديم
task-extend = توسيع
task-refine = تحسين
task-apply = تطبيق

standing-draft = مسودة
standing-reviewed = تمت المراجعة
standing-approved = معتمد
standing-retired = لم يعد يُستعمل

adapt-space = مكان آخر
adapt-task = مهمة أخرى
adapt-equipment = أدوات أخرى
adapt-people = أشخاص آخرون

sheet-cards = البطاقات
sheet-home-guide = دليل البيت
sheet-record = ورقة النتائج
sheet-review = ورقة المراجعة

key-points = نقاط الأداء
easier = أسهل
harder = أصعب
faults = أخطاء شائعة
fault-see = ما تراه
fault-say = ما تقوله
adult-nearby = شخص بالغ قريب منك
adult-helping = شخص بالغ يساعدك
landing-zone = منطقة السقوط
stop-and-collect = قف ثم اجمع
cautions = انتبه
local-rules = قواعد بلدك وتقييم المخاطر في المدرسة والممارسة المعتمدة تأتي أولًا. هذه الصفحات تقدم نصائح، ولا تضمن أن النشاط آمن في بيتك.
attempt = محاولة
best = الأفضل
mark-in = النتيجة ({ $unit })
measure-distance = قس المسافة بوحدة { $unit }.
measure-time = قس الزمن بوحدة { $unit }.
measure-count = عُدّ: { $unit }.
measure-points = اجمع النقاط.
measure-criteria = لاحظ ما يلي:
attempts = { $count ->
    [zero] لا تُحتسب أي محاولة.
    [one] تُحتسب محاولة واحدة.
    [two] تُحتسب محاولتان.
    [few] تُحتسب { $count } محاولات.
    [many] تُحتسب { $count } محاولة.
   *[other] تُحتسب { $count } محاولة.
}
better-more = الأكثر أفضل.
better-less = الأقل أفضل.
code-name = اسم مستعار
date = التاريخ
licence = الترخيص
credit = من إعداد

## Plans, on pages and on paper

plan = مخطط الأرض
plan-same = الأرض نفسها كما في
plan-says = مخطط للأرض بمقياس رسم، طوله { $length } وعرضه { $width }.
plan-stand = ابدأ هنا
plan-wait = انتظر هنا
plan-line = الخط
plan-wall = الحائط
plan-moving = مساحة الحركة
plan-run-up = خلف الخط
plan-landing = الهبوط
plan-stopping = مساحة للتوقف
plan-clear = تبقى خالية
plan-floor = أرضك
plan-for = لأجل { $parts }
plan-headroom = الارتفاع فوقك: { $height }.
plan-askew = ضعه من زاوية إلى زاوية: لا يتسع إلا مائلًا.
plan-unfit = يحتاج إلى مساحة أكبر مما تذكره هذه الحصة: اختر مكانًا أوسع.
setting-out = القياس بالشريط
tape-line = علّم الخط بعرض { $length }.
tape-right-angle = إلى الأمام مباشرة: ضع علامة على بعد { $along } على الخط وعلامة على بعد { $away } من طرفه. يكون مستقيمًا حين تكون المسافة بين العلامتين { $across }.
tape-diagonals = علّم { $length } في { $width }. تكون الزوايا قائمة حين يكون القطران { $diagonal }.
tape-sector = الجانبان: علامتان على بعد { $along } من وسط الخط، وبينهما { $apart }.
tape-reach = المساحة الخالية: { $margin } أخرى بعد { $reach }.
tape-around = اترك { $margin } خالية من كل جهة.
tape-wait = الانتظار: { $behind } خلف الخط.

slots = إذا اختلف الوقت
slots-how = يبقى الإحماء وتبقى التهدئة، ويُحتفظ بالأهم.
slot-in = في { $time }
slot-same = كل شيء يتسع.
slot-drop = اترك: { $list }.
slot-change = { $part }: { $time }.
slot-change-rounds = { $part }: { $rounds ->
    [zero] بلا جولات
    [one] جولة واحدة
    [two] جولتان
    [few] { $rounds } جولات
    [many] { $rounds } جولة
   *[other] { $rounds } جولة
}، { $time }.
slot-left = يتبقى: { $time }.
slot-too-short = الوقت أقصر بمقدار { $by }: ما يجب أن يبقى يحتاج إلى وقت أطول.

effort-talk = كلام
effort-still = أطول وقت بلا حركة هو { $time }، في «{ $part }».

effort-of-day = الجهد المتوسط والشديد يساوي { $share }٪ من 60 دقيقة يوميًا توصي بها منظمة الصحة العالمية (من 5 إلى 17 سنة).
effort-rhythm = { $part }: عمل { $work } ثم راحة { $rest } ({ $ratio }).
effort-usual = للبداية، المعتاد في هذا العمر من { $least } إلى { $most } ثانية من العمل الشديد وراحة مساوية (ممارسة شائعة).
effort-like = { $part } يشبه «{ $like }» في دليل الأنشطة البدنية لعام 2011: { $met } MET، { $band } (المتوسط يبدأ من { $from }). الرقم للبالغين، وهو تقدير للأطفال.

floor-how = على الأرض
floor-fits = يتسع
floor-askew = يتسع مائلًا
floor-unfit = لا يتسع
floor-unsaid = لم تُذكر مساحة

things-as = { $things } بدل { $need }
things-together = ما يكفي لكل شيء معًا:
things-need = المطلوب
things-at-home = في البيت
things-refused = غير مناسب
things-missing = ينقص { $count }
things-once = اجمعها مرة واحدة
things-once-how = هذه الأشياء القليلة تكفي كل الحصص هنا. لا يُحتاج إلى شيء في موضعين معًا.
things-all = كل الأشياء وما يحل محلها
sheet-print = اطبع هذه القائمة (PDF)
things-once-unproven = قد توجد مجموعة أصغر.
sheet-gather = اجمعها مرة واحدة
misfit-heavy = ثقيل جدًا: { $found }، والمطلوب { $asked } للأعمار { $ages }
misfit-light = خفيف جدًا: { $found }، والمطلوب { $asked } للأعمار { $ages }
misfit-large = كبير جدًا: { $found }، والمطلوب { $asked } للأعمار { $ages }
misfit-small = صغير جدًا: { $found }، والمطلوب { $asked } للأعمار { $ages }
misfit-hard = لم يُذكر أنه لين
misfit-lacks = لم يُذكر أنه { $asked }

flight-throw = عند الرمي بسرعة { $speed } م/ث وزاوية { $angle }° من ارتفاع { $height } يصل إلى مسافة { $distance } وارتفاع { $apex }. يطير { $time } ويهبط بسرعة { $landing } م/ث.
flight-toss = عند القذف إلى أعلى بسرعة { $speed } م/ث من ارتفاع { $height } يصعد إلى { $apex } ويطير { $time }.
flight-drag = حُسبت مقاومة الهواء لـ«{ $thing }»، ومن دونها تكون المسافة { $distance }.
flight-drag-toss = حُسبت مقاومة الهواء لـ«{ $thing }».
flight-no-drag = من دون مقاومة الهواء.
flight-headroom = الارتفاع فوقك: { $height }.
flight-room = تحت سقف ارتفاعه { $ceiling } أبعد مسافة بهذه السرعة هي { $distance } بزاوية { $angle }°.
flight-best = بحسب المعادلة أفضل زاوية { $angle }° ومسافتها { $distance }. تقل سرعة الشخص كلما زادت الزاوية، فأفضل رمية حقيقية أخفض: في دفع الجلة تعطي المعادلة نحو 42°، والرياضيون يرمون بين 37° و38°.

marks-distance = تُقرأ المسافات إلى أقرب { $step } كاملة نزولًا (القواعد الفنية للاتحاد الدولي لألعاب القوى).
marks-time = تُقرأ الأزمنة اليدوية إلى { $step } التالية صعودًا (القواعد الفنية للاتحاد الدولي لألعاب القوى).
marks-time-held = الأطول أفضل: تُقرأ الأزمنة إلى أقرب { $step } كاملة نزولًا.
marks-whole = النتائج أعداد صحيحة.
marks-ties = تُحتسب أفضل محاولة، وعند التعادل تفصل المحاولة التالية.
marks-reference = للمقارنة: { $mark } ({ $source }). تختلف المجتمعات، وليس هذا معيارًا لأحد.
marks-formula = النقاط: الجزء الصحيح من { $a } · d^{ $c }، حيث d هو بُعد النتيجة عن { $b }.
marks-points-source = النقاط: { $source }
marks-from = من
marks-points = النقاط
points-list = النقاط: { $list }.
points-from = { $points } من { $mark }
points-within = { $points } حتى { $mark }

reading-how = صعوبة الجمل التي يقرؤها الطفل بحسب معادلات منشورة وُضعت للإنجليزية. هي ترى الأطوال لا المعنى.
reading-words = الكلمات
reading-sentences = الجمل
reading-flesch = سهولة القراءة (Flesch)
reading-kincaid = مستوى Flesch–Kincaid
reading-smog = مستوى SMOG
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = عمر القراءة (المستوى + 5)
reading-long-words = كلمات من ثلاثة مقاطع فأكثر:
reading-long-sentences = عدد الكلمات في الجمل التي تزيد على 20 كلمة:

flight-axis-angle = الزاوية
flight-axis-distance = المسافة (م)
flight-figure-says = المسافة بحسب الزاوية. الأفضل

## Pages

skip = انتقل إلى المحتوى
pages = الصفحات
nav-front = كل الحصص
nav-things = أشياء للجمع
nav-teachers = للمعلمين
nav-rules = قواعد الكتابة
foot-contact = اسأل المدرسة
foot-made = هذه الصفحات لا تحمّل شيئًا من مكان آخر ولا ترسل شيئًا إلى أي مكان.

front-about = التربية البدنية في البيت: اختر حصة بحسب العمر والوقت والمكان والأشياء المتوفرة.
front-choose = اختر حصة
front-choose-how = أجب عما تريد. تبقى في القائمة الحصص المناسبة فقط.
front-sessions = الحصص
front-any = أي
front-age = عمر الطفل
front-minutes = الوقت المتاح
front-up-to = حتى { $count } د
front-space = المساحة الخالية
front-space-rug = سجادة، 2 م × 2 م
front-space-small-room = غرفة صغيرة، 3 م × 3 م
front-space-big-room = غرفة كبيرة، 5 م × 4 م
front-place = أين
front-activity = النشاط
front-lacking = ليس لدينا …
front-lacking-how = (ولا ما يحل محله)
front-more = المكان والنشاط والأشياء في البيت
front-reset = ابدأ من جديد
front-shown = المعروض:
front-none = لا توجد حصة تناسب كل ذلك. احذف إجابة واحدة.
front-needs = اجمع:
front-needs-nothing = لا شيء للجمع
front-cards = بطاقات للطباعة
front-minutes-unit = د

fact-ages = الأعمار
fact-minutes = الدقائق
fact-space = المساحة الخالية
fact-place = أين
fact-effort = الجهد غالبًا

space = المكان
space-needs = أخلِ { $size } من الأرض.
space-headroom = الارتفاع فوقك { $height }.
space-surface = مناسب تحت القدمين: { $list }.

before = قبل أن تبدأ
running-order = ترتيب الحصة
running-how = العمود الأعلى يعني جهدًا أكبر.
line-label = خط زمني من { $minutes } دقيقة، عمود لكل جزء
success = ما أستطيع فعله في النهاية
things = أشياء للجمع
things-nothing = لا شيء. أنت جاهز.
things-household = موجود في كل بيت.
things-limits = المناسب: { $limits }
stands-in = أو استعمل
for-parts = لأجل:
adult = وقت الشخص البالغ
adult-nearby-for = قريب مدة { $time }.
adult-helping-for = يساعد مدة { $time }.
adult-none = غير مطلوب. ابقَ حيث تسمع الطفل.
film = فيلم
from-to = من { $from } إلى { $to }
beats-label = العمل والراحة بمقياس رسم
how-measured = طريقة القياس
throwing = قبل أن يُرمى أي شيء
tick-rounds = الجولات المنجزة
finish = النهاية
finish-say = اشرب بعض الماء، ثم اكتب نتائجك.
marks = نتائجي
marks-how = استعمل اسمًا مستعارًا، ولا تكتب اسمك الكامل أبدًا. نتائجك لك وحدك: تفوّق على أفضل نتيجة لك.
next-time = في المرة القادمة سوف
review = فكّر في ذلك
review-how = قل إجابتك أو اكتبها أولًا، ثم افتح إجابتنا.
review-answer = إجابتنا
adaptations = كيّفها لتناسبك
papers = اطبعها
sheet-cards-about = جزء في كل بطاقة، { $cards } في الصفحة
sheet-home-guide-about = صفحة واحدة: الخط الزمني والأشياء والمكان والتنبيهات
sheet-record-about = جدول لكتابة النتائج
sheet-review-about = أسئلة، والإجابات في صفحة مستقلة
draft-note = مسودة: لم تُراجع هذه الحصة بعد.

things-intro = كل ما تطلبه الحصص هنا وما يمكن أن يحل محله. ضع علامة على ما تجده.
things-for = الحصص
things-extras = يستحسن وجوده

rules-intro = ما يبحث عنه homeground حين يفحص ملفات الحصص، والسبب. هو ينصح ولا يشهد أبدًا بأن الحصة آمنة.
rules-contents = الرموز
rules-why = لماذا
rules-source = المصدر:
rules-bad = ليس هكذا
rules-good = هكذا
severity-problem = مشكلة
severity-warning = تحذير
severity-advice = نصيحة

teachers-intro = كل حصة مع خطها الزمني وإجاباتها وحالتها. أرقام الجهد تقديرات مأخوذة من الجهد المذكور لكل جزء.
teachers-contents = الحصص
teachers-active = متوسط وشديد: { $time }، { $share }٪ من وقت الحصة (تقدير)
teachers-plans = الخطط: الجهد والوقت والأرض والأشياء والطيران والنتائج والقراءة
teachers-floors = المساحات
teachers-flights = الطيران
teachers-marks = النتائج والنقاط
teachers-reading = القراءة
teachers-part = الجزء
teachers-from = من
teachers-time = الوقت
teachers-effort = الجهد
teachers-task = المهمة
teachers-objectives = الأهداف
teachers-success = معايير النجاح
teachers-codes = المنهاج
teachers-answers = أسئلة المراجعة وإجاباتها
teachers-standing = الحالة
teachers-by = بواسطة { $by }
teachers-on = في { $on }
teachers-look-again = المراجعة القادمة { $on }
teachers-changed = ما الذي تغيّر

## Paper

cards-number = البطاقة { $number } من { $total }
cards-continued = (تتمة)
cards-see-guide = في دليل البيت ترتيب الحصة وما يمكن أن يحل محل كل شيء وكل التنبيهات.
cards-adapt = لتناسب بيتك وتناسبك
cards-helper = لمن يساعد
cards-look = ما يجب ملاحظته
cards-look-how = ما قد تراه ← ما تقوله. شيء واحد في كل مرة.
or-use = أو استعمل
sheet-number = الصفحة { $number } من { $total }
fact-time = الوقت
review-paper-how = قل إجابتك بصوت مسموع أولًا، ثم اكتبها.
review-answers = الإجابات
review-own = إجابتك أنت.
review-help = هذه إجابات نموذجية. كلمات الطفل صحيحة بالقدر نفسه إذا كان معناها واحدًا.
fact-headroom = الارتفاع فوقك
record-look-for = لاحظ

## Quantities

amount-m = { $number } م
amount-cm = { $number } سم
amount-mm = { $number } مم
amount-kg = { $number } كغم
amount-g = { $number } غم
amount-min = { $number ->
    [zero] { $number } دقيقة
    [one] دقيقة
    [two] دقيقتان
    [few] { $number } دقائق
    [many] { $number } دقيقة
   *[other] { $number } دقيقة
}
amount-s = { $number ->
    [zero] { $number } ثانية
    [one] ثانية
    [two] ثانيتان
    [few] { $number } ثوانٍ
    [many] { $number } ثانية
   *[other] { $number } ثانية
}
amount-min-s = { $minutes } و{ $seconds }
amount-at-most = { $amount } على الأكثر
amount-at-least = { $amount } على الأقل
amount-any = أي مقدار

## Languages

languages = لغات أخرى
language-name = العربية
shown-in-original = لم تُترجم هذه الحصة بعد، وهي معروضة بلغتها الأصلية ({ $language }).
translation-old = تغيّر النص الأصلي بعد هذه الترجمة.
language-unnamed = لغتها

## To scan, to copy, to send

scan-page = صفحة هذه الحصة
scan-film = الفيلم

no-printer = ليس لديك طابعة؟
no-printer-how = انسخ هذا بخط اليد: نحو { $minutes } د. أو احفظه نصًا، أو أرسله في رسائل.
copy-file = للنسخ بخط اليد (نص)
texts-file = رسائل نصية (نص)
no-printer-needs = تحتاج إلى: { $list }.
no-printer-read = اقرأ أولًا كل التنبيهات في الصفحة.
no-printer-rules = قواعد المدرسة وتقييم المخاطر فيها تأتي أولًا.

## Sheets

sheet-large-print = بطاقات بخط كبير
sheet-large-print-about = لا كلمة أصغر من 18 نقطة، بطاقة واحدة في كل ورقة
sheet-class-set = مجموعة الصف
sheet-class-set-about = { $copies ->
    [zero] بلا مجموعات بطاقات
    [one] مجموعة بطاقات مرقّمة واحدة
    [two] مجموعتا بطاقات مرقّمتان
    [few] { $copies } مجموعات بطاقات مرقّمة
    [many] { $copies } مجموعة بطاقات مرقّمة
   *[other] { $copies } مجموعة بطاقات مرقّمة
}، { $cards } في كل ورقة
sheet-booklet = كتيّب
sheet-booklet-about = اطبع على الوجهين مع القلب على الحافة القصيرة، ثم اطوِ الأوراق معًا مرة واحدة
sheet-poster = ملصق
sheet-poster-about = نقاط الأداء، تُقرأ من مسافة 2 م
sheet-record-class = ورقة نتائج للصف
sheet-record-class-about = الأسماء المستعارة على الجانب
sheet-record-week = ورقة نتائج لأسبوع
sheet-record-week-about = عمود لكل يوم
both-long = اطبع على الوجهين مع القلب على الحافة الطويلة
both-short = اطبع على الوجهين مع القلب على الحافة القصيرة
cards-back = ظهر البطاقة { $number } من { $total }
cards-set = المجموعة { $number } من { $total }
notes = ملاحظات
booklet-inside = في الداخل
record-class-tick = ضع علامة على ما رأيته. اترك فراغًا لما لم تره.
record-week-how = ضع علامة على ما فعلته كل يوم، واكتب أفضل نتيجة لك في ذلك اليوم.
record-done = فعلتها
record-best-marks = أفضل نتيجة لي
record-week-best = ما أفضل ما نجحت فيه هذا الأسبوع؟
week-of = أسبوع
day-1 = إثنين
day-2 = ثلاثاء
day-3 = أربعاء
day-4 = خميس
day-5 = جمعة
day-6 = سبت
day-7 = أحد

## Progress

progress-title = تقدّم الصف
progress-private = للمعلم. رموز فقط بلا أسماء. يُحفظ حتى { $date } ثم يُحذف: homeground progress --to … --forget
progress-how = يُقارن كل تغيّر بنتيجة سابقة للطفل نفسه. نتائج اللياقة خاصة: ليست درجة ولا مقارنة بين الأطفال.
progress-rule = يُعد التغيّر أكبر من التفاوت المعتاد بين يوم وآخر إذا زاد على ضعفي الخطأ المعتاد في المحاولة الواحدة (Hopkins 2000: من 1.5 إلى 2). يُحسب الخطأ المعتاد من محاولات مكررة في اليوم نفسه، ويضاف إليه ما يختلف من يوم إلى آخر.
progress-contents = في هذا التقرير
progress-children = الأطفال
progress-class = الصف
progress-class-small = عدد الأطفال الذين أرسلوا نتائج أقل من { $fewest }: لا تُعرض أرقام الصف لأنها قد تكشف صاحبها.
progress-first = أول يوم
progress-latest = آخر يوم
progress-median = الوسيط
progress-quartiles = الرُّبيعان
progress-range = الأقل والأكثر
progress-deviation = الانحراف المعياري
progress-noise = الخطأ المعتاد في المحاولة الواحدة
progress-noise-from = عدد أزواج المحاولات: { $pairs }
progress-noise-unknown = غير معروف: المحاولات المكررة قليلة جدًا
progress-smallest = أصغر تغيّر له قيمة
progress-wobble = أكبر من التفاوت المعتاد ابتداءً من
progress-spread-says = نقطة لكل طفل، ومستطيل من الرُّبيع إلى الرُّبيع، وخط سميك عند الوسيط.
progress-strip-says = نتائج { $code } في { $task } يومًا بعد يوم. الأرقام في الجدول المجاور.
progress-better-more = كلما اتجهت إلى اليمين كان أفضل.
progress-better-less = كلما اتجهت إلى اليسار كان أفضل.
progress-child-table = طفلًا طفلًا
progress-code = الرمز
progress-place = الترتيب
progress-first-mark = الأولى
progress-last-mark = الأخيرة
progress-best-mark = الأفضل
progress-best-on = { $mark } في { $date }
progress-change = التغيّر
progress-verdict = هل هو حقيقي؟
progress-tries = المحاولات
progress-points = النقاط
progress-over-time = مع الوقت
progress-next = الخطوة التالية وسببها
progress-missing = لم يُرسَل بعد
progress-missing-none = أرسل الجميع شيئًا.
progress-silent = لم يرسلوا أي شيء
progress-faults = الأخطاء الشائعة التي وُضعت عليها علامة
progress-few = أقل من { $fewest }
progress-send = ما يُرسل بعد ذلك
progress-comments = ملاحظات للتقرير، عدّلها كما تريد
progress-questions = أسئلة المراجعة
progress-questions-how = المعلم هو من يقرر ما هو صحيح. هنا تُجمع الإجابات فقط، وتوضع المتشابهة معًا.
progress-right = صحيحة
progress-wrong = ليس بعد
progress-unmarked = لم تُصحَّح
progress-answers-few = عدد الأطفال الذين أجابوا أقل من { $fewest }: لا تُعرض إجاباتهم هنا.
progress-answers = الإجابات كما وردت
progress-model-answer = إجابتنا
progress-unread = لم تُقرأ
progress-unread-how = هذه الخانات لم تُحتسب. ويُحتسب كل ما بقي في صفوفها.
progress-row = السطر
progress-column = العمود
progress-says = ما الخطأ
progress-file = الملف

progress-short-once = أول نتيجة
progress-short-noise-unknown = المحاولات أقل من أن نحكم
progress-short-too-close = الفرق أصغر من أن نحكم
progress-short-too-small = حقيقي لكنه صغير جدًا
progress-short-better = أفضل، أكثر من التفاوت المعتاد بين يوم وآخر
progress-short-worse = أقل جودة، أكثر من التفاوت المعتاد بين يوم وآخر

progress-child-once = هذا يومك الأول. صارت لديك الآن نتيجة لتتفوق عليها.
progress-child-noise-unknown = المحاولات ما زالت قليلة، فلا نعرف إن كان هذا أكثر من التفاوت المعتاد بين يوم وآخر.
progress-child-too-close = الفرق أصغر من أن نحكم: النتائج تتفاوت بهذا القدر من محاولة إلى أخرى.
progress-child-too-small = هذا أكثر من التفاوت المعتاد بين يوم وآخر، لكنه صغير جدًا.
progress-child-better = هذا أكثر من التفاوت المعتاد بين يوم وآخر: لقد تحسّنت.
progress-child-worse = النتيجة أقل هذه المرة بأكثر من التفاوت المعتاد بين يوم وآخر. النوم والحذاء والأرض كلها تؤثر. حاول مرة أخرى.
progress-child-no-mark = لا توجد نتيجة لأي محاولة بعد. هذا يحدث: اجعلها أسهل أولًا.

progress-slip = نتائجي
progress-slip-for = إلى { $code }
progress-slip-how = نتائجك لك وحدك. تفوّق على أفضل نتيجة لك.
progress-slip-change = من { $first } إلى { $last }: { $change }.
progress-slip-best = أفضل نتيجة لي: { $mark }، في { $date }.
progress-slip-new-best = أفضل نتيجة جديدة: { $mark }، في { $date }!
progress-slip-band = الحلقات هي المحاولات، والنقاط هي أفضل ما في اليوم. داخل الشريط الرمادي يكون الفرق أصغر من أن نحكم.
progress-slip-no-band = الحلقات هي المحاولات، والنقاط هي أفضل ما في اليوم.
progress-slip-next = الخطوة التالية
progress-slip-again = راجع هذه الأسئلة مرة أخرى
progress-slip-day = اليوم
progress-slip-tries = المحاولات
progress-slip-day-best = الأفضل

progress-mend = ما لوحظ: «{ $see }» جرّب هذا: «{ $say }»
progress-mend-part = التدرّب عليه في «{ $part }».
progress-further = جرّب المهمة الإضافية «{ $part }».
progress-onward = بعد ذلك: «{ $session }».
progress-practise = أعدها وفي ذهنك شيء واحد: «{ $point }»
progress-practise-bare = أعدها، وانتبه لشيء واحد في كل مرة.
progress-easier = اجعلها أسهل أولًا: { $easier }
progress-easier-bare = اجعلها أسهل أولًا.

progress-send-mend = «{ $part }» مرة أخرى (عدد الأطفال: { $count }): وضعوا علامة على «{ $see }»
progress-send-further = المهمة الإضافية «{ $part }» (عدد الأطفال: { $count }): تغيّرهم أكثر من التفاوت المعتاد بين يوم وآخر.
progress-send-onward = ثم «{ $session }» (عدد الأطفال: { $count }): النشاط نفسه، ولم تُنفَّذ بعد.
progress-send-practise = «{ $part }» مرة أخرى (عدد الأطفال: { $count }): لا تحسّن بعد يزيد على التفاوت المعتاد بين يوم وآخر، ولم توضع علامة على أي خطأ.
progress-send-easier = الطريقة الأسهل من «{ $part }» (عدد الأطفال: { $count }): لا توجد نتيجة بعد.

progress-comment-change = { $code }: من { $first } إلى { $last } في «{ $task }» ({ $change }، { $verdict }).
progress-comment-once = { $code }: النتيجة { $last } في «{ $task }» في اليوم الأول.
progress-comment-none = { $code }: جرت محاولة «{ $task }» ولا توجد نتيجة بعد.
progress-comment-next = الخطوة التالية: { $next }

## Fit

fit-teacher = ماذا يناسب كل بيت
fit-teacher-lead = { $count ->
    [zero] لا بيوت.
    [one] بيت واحد، بالرمز.
    [two] بيتان، بالرمز.
    [few] { $count } بيوت، بالرمز.
    [many] { $count } بيتًا، بالرمز.
   *[other] { $count } بيت، بالرمز.
} لكل حصة أفضل صورة يسمح بها وقت البيت وأرضه ومن فيه وما فيه من أشياء. لا يُستعمل بديل غير آمن. احفظ هذه الورقة في المدرسة.
fit-print = اطبع هذا (PDF)
fit-grid = نظرة سريعة
fit-grid-how = الدقائق، وعدد الأجزاء الباقية. الشَّرطة تعني أن الحصة لا يمكن تنفيذها هناك، والسبب مذكور أدناه.
fit-home = البيت
fit-cell = { $minutes } د، { $kept } من { $all }
fit-cell-whole = { $minutes } د، كاملة
fit-home-heading = البيت { $code }
fit-home-minutes = { $time } في اليوم
fit-home-language = اللغة المطلوبة: { $language }
fit-reads-paper = اطبع لهذا البيت
fit-reads-phone = أرسل المجلد إلى هاتف
fit-as-written = كما كُتبت.
fit-uses = تُستعمل: { $list }.
fit-not = غير ممكنة هنا
fit-left-out = يُترك { $part }: { $why }.
fit-instead = الأقرب إليه: { $part }.
fit-cannot = { $list }: { $why }.
fit-one-thing = شيء واحد يجعلها ممكنة: { $thing }.
fit-no-one-thing = لا يكفي شيء واحد وحده ليجعلها ممكنة.
fit-one-minutes = { $time } في اليوم
fit-one-more-floor = زيادة { $by } طولًا وعرضًا في الأرض { $floor }
fit-one-floor = أرض خالية قياسها { $size } { $place }
fit-one-helper = شخص آخر يشارك أو يبقى قريبًا
fit-one-version-seated = صور من أجزائها تؤدى جلوسًا، ولم يكتبها أحد بعد
fit-one-version-quiet = صور هادئة من أجزائها، ولم يكتبها أحد بعد
fit-why-seated = لا توجد صورة تؤدى جلوسًا
fit-why-noise = وقع القدمين قوي، ولا توجد صورة هادئة
fit-why-surface = لا توجد هنا أرض سطحها مناسب
fit-why-time = ما يبقى أهم في هذا الوقت
fit-why-short = ما يجب أن يبقى يحتاج إلى وقت أطول من المتاح
fit-why-helpers = { $count ->
    [zero] لا حاجة إلى شخص آخر
    [one] يحتاج إلى شخص آخر يشارك أو يبقى قريبًا
    [two] يحتاج إلى شخصين آخرين يشاركان أو يبقيان قريبين
    [few] يحتاج إلى { $count } أشخاص آخرين يشاركون أو يبقون قريبين
    [many] يحتاج إلى { $count } شخصًا آخر يشاركون أو يبقون قريبين
   *[other] يحتاج إلى { $count } شخص آخر يشاركون أو يبقون قريبين
}
fit-why-place = مكان التنفيذ: { $place }
fit-why-headroom = يلزم ارتفاع خالٍ فوق الرأس: { $height }
fit-why-floor = تلزم أرض خالية قياسها { $size }
fit-why-things = لا يوجد هنا شيء آمن يصلح مكان: { $list }
fit-version-seated = جلوسًا
fit-version-quiet = بهدوء
fit-version-small-space = في مساحة صغيرة
fit-version-low-vision = لضعاف البصر
fit-version-partner = مع شخص آخر
fit-version-alone = فرديًا
fit-lend = للإعارة أو الإرسال بالبريد
fit-lend-how = أقل عدد من الأشياء يتيح لكل بيت تنفيذ كل حصة لا يمنعها إلا نقص الأشياء. ثم بيتًا بيتًا:
fit-lend-nothing = لا شيء: لا توجد حصة يمنعها نقص الأشياء وحده.
fit-rethink = لإعادة النظر
fit-rethink-how = ما لا يمكن تنفيذه في ربع البيوت أو أكثر (حدّ وضعناه نحن).
fit-rethink-nothing = لا شيء: لا توجد حصة ولا جزء يتعذر في ربع البيوت.
fit-rethink-homes = عدد البيوت التي لا يمكنها ذلك: { $count } من { $of }.
fit-rethink-why = السبب الأكثر تكرارًا: { $why }.
fit-survey = استبيان
fit-survey-title = ماذا يوجد في البيت؟
fit-survey-lead = لكي تناسب التربية البدنية في البيت بيتكم. لا توجد إجابة صحيحة، ولا حاجة إلى شراء شيء. لا تكتب أسماء.
fit-ask-code = رمزك
fit-ask-code-how = تعطيك المدرسة هذا الرمز. لا تكتب أبدًا اسمًا أو عنوانًا أو تاريخ ميلاد.
fit-ask-code-line = الرمز
fit-ask-time = الوقت والأشخاص
fit-ask-minutes = عدد الدقائق المتاحة يوميًا للتربية البدنية
fit-ask-helpers = عدد من يمكنهم المشاركة أو البقاء قريبًا
fit-ask-needs = ما يحتاج إليه طفلك
fit-ask-seated = يمارس التربية البدنية جالسًا
fit-ask-low-vision = بصره ضعيف
fit-ask-quiet = يلزم الهدوء داخل البيت
fit-ask-reads = كيف تقرأ الحصص
fit-ask-paper = على الورق
fit-ask-phone = على الهاتف
fit-ask-language = اللغة
fit-ask-floor = أرض خالية
fit-ask-floor-how = أكبر مساحة يمكنك إخلاؤها، من دون الجدران والأثاث.
fit-ask-floor-2 = أرض ثانية
fit-ask-floor-2-how = إن وُجدت: فناء أو حديقة أو صالة.
fit-ask-length = الطول بالمتر
fit-ask-width = العرض بالمتر
fit-ask-height = الارتفاع حتى السقف، أو «في الخارج»
fit-ask-outdoors = هي في الخارج
fit-ask-things = الأشياء المتوفرة لديك
fit-ask-things-how = اكتب عدد كل منها. اترك ما ليس لديك.

## Units
unit-units = الوحدات التعليمية
unit-things = الأشياء: { $things }.
unit-remember = هل تتذكّر؟
unit-remember-how = أسئلة من حصص سابقة. أجب من الذاكرة أولًا، ثم انظر.
unit-remember-from = من «{ $session }»
unit-week = الأسبوع { $week }
unit-none-plain = لا دوام في المدرسة
unit-calendar = أضف إلى تقويمك
unit-calendar-about = يُفتح في تقويم الهاتف أو الحاسوب. إضافته مرة أخرى تنقل ما تغيّر.
unit-poster = ملصق الفصل الدراسي
unit-poster-about = للحائط، مع مربع لوضع علامة على كل حصة
unit-remember-sheet = ورقة «هل تتذكّر؟»
unit-remember-about = الأسئلة التي تعود، يومًا بعد يوم، والإجابات في صفحة مستقلة
unit-gather-sheet = أشياء للجمع
unit-gather = اجمعها مرة واحدة
unit-gather-how = أقل عدد من الأشياء يكفي كل حصص هذه الوحدة.
unit-gather-by = حتى الأسبوع { $week }
unit-get-out = أخرِج: { $things }
unit-put-back = أعِد إلى مكانه: { $things }
unit-same-things = الأشياء نفسها كما في السابق.
unit-minutes = البداية { $time }، المدة { $length }
unit-days = الأيام
unit-take = لتأخذها معك
unit-answers = الإجابات
unit-answer = الإجابة
unit-tick = ضع علامة في مربع لكل حصة تنفذها.
date-with-weekday = { $weekday } { $date }
date-day-month = { $day } { $month }
date-with-year = { $date } { $year }
weekday-monday = الإثنين
weekday-tuesday = الثلاثاء
weekday-wednesday = الأربعاء
weekday-thursday = الخميس
weekday-friday = الجمعة
weekday-saturday = السبت
weekday-sunday = الأحد
month-1 = يناير
month-2 = فبراير
month-3 = مارس
month-4 = أبريل
month-5 = مايو
month-6 = يونيو
month-7 = يوليو
month-8 = أغسطس
month-9 = سبتمبر
month-10 = أكتوبر
month-11 = نوفمبر
month-12 = ديسمبر
unit-together = الوحدات وتغطية المنهاج
unit-teachers-lead = كيف رُتبت هذه الوحدة، ولماذا.
unit-plan = الخطة
unit-session = الحصة
unit-why = لماذا هنا
unit-changes = الأشياء
unit-why-named = محددة لهذا اليوم
unit-why-order = وُضعت هنا آليًا
unit-why-cover = أُضيفت لأجل { $codes }
unit-order = كيف مُلئت الأيام الشاغرة
unit-order-rule = رُتبت الحصص التي بلا يوم محدد ليكون ما يلي أقل ما يمكن، بدءًا بالأهم: الحصص التي تسبق ما تُبنى عليه ({ $grounds })، والأيام الشديدة المتتالية ({ $vigorous })، والحصص المكررة مرتين متتاليتين ({ $same })، والأشياء التي تُخرج أو تُعاد ({ $things })، والنقص في وقت النشاط من حصة إلى التالية ({ $lost })، ثم يأتي ترتيبك أنت.
unit-order-best = لا يوجد ترتيب أفضل.
unit-order-listed = الحصص التي بلا يوم محدد أكثر من أن يُجرَّب كل ترتيب لها، فبقي ترتيبك.
unit-effort = الجهد في كل أسبوع
unit-effort-lead = تقديرات من الجهد المذكور في الحصص، لطفل ينفذها كلها. توصي منظمة الصحة العالمية (2020) بمتوسط 60 دقيقة يوميًا من النشاط المتوسط إلى الشديد على مدار الأسبوع، وبنشاط شديد في 3 أيام على الأقل، والتربية البدنية في البيت جزء من ذلك.
unit-effort-vigorous = شديد
unit-effort-active = متوسط وشديد
unit-effort-share = النسبة من 420 دقيقة في الأسبوع
unit-effort-days = الأيام الشديدة
unit-returns = الأسئلة التي تعود
unit-returns-rule = يحين موعد السؤال بعد حصته بعدد من الأيام هو { $after }. وفي كل مرة يعود فيها تُضرب مدة الانتظار التالية في { $growth }، محسوبة من ذلك اليوم. أقصى عدد من الأسئلة يعود في يوم واحد هو { $most }، والأسبق موعدًا أولًا.
unit-returns-time = { $time ->
    [zero] المرة رقم { $time }
    [one] المرة الأولى
    [two] المرة الثانية
    [few] المرة رقم { $time }
    [many] المرة رقم { $time }
   *[other] المرة رقم { $time }
}
unit-cover = ما تغطيه الوحدة
unit-cover-met = تحققه الحصص التي حددتها: { $codes }.
unit-cover-added = أُضيفت «{ $session }» لأجل { $codes }.
unit-cover-best = لا يغطي عدد أقل من الحصص القدر نفسه. وعند التساوي تُختار الأقصر، ثم الأولى بحسب العنوان.
unit-cover-unproven = قد يكفي عدد أقل: الحصص أكثر من أن يُجرَّب كل شيء.
unit-cover-none = لا توجد حصة لهذه الأعمار تحقق: { $codes }.
unit-cover-room = لم يبقَ يوم لأجل: { $codes }.
unit-left-over = لم يوجد يوم لهذه الحصص: { $sessions }.
coverage-title = تغطية المنهاج
coverage-lead = أيّ الحصص تحقق أيّ نواتج التعلّم، ولأيّ الصفوف. تُحتسب الحصة لصفٍّ إذا ناسبت كل أعمار تلاميذه.
coverage-sessions = نواتج التعلّم والحصص
coverage-groups = نواتج التعلّم والصفوف
coverage-statement = ناتج التعلّم
coverage-count = الحصص
coverage-gap = نقص
coverage-often = كثير
coverage-meets = تحققه
coverage-key = «نقص»: ناتج تعلّم لا تحققه أي حصة لصفٍّ هو له. «كثير»: ناتج لا يقل عدد الحصص التي تحققه عن { $least }، ويزيد على ضعفي المتوسط.
coverage-csv = الجدول كاملًا (CSV)
coverage-no-gap = كل ناتج تعلّم يتحقق في كل صفٍّ هو له.
coverage-not-for = ليس لهذا الصف

## Marks at home
home-keeps = ما تكتبه هنا يُحفظ على هذا الجهاز، في هذا المتصفح، إلى أن تحذفه. لا يُرسل شيء من تلقاء نفسه.
home-keeps-not = هذا المتصفح لا يحفظ شيئًا لهذه الصفحة. ما تكتبه يضيع عند إغلاقها: أرسله أو احفظه أولًا.
home-known = ما رمزك؟
home-another = أضف اسمًا مستعارًا
home-code-use = استعمل هذا الرمز
home-code-help = الرمز الذي أعطاك إياه معلمك، مثل K07، رمز لكل طفل. لا تكتب أبدًا اسمًا أو عنوانًا أو رقم هاتف.
home-code-first = لم يُحفظ بعد: اكتب أولًا اسمك المستعار في الأعلى.
home-write = اكتب كل نتيجة كما تقرؤها، مثل { $mark }. الحرف x لمحاولة لم تُحتسب.
home-no-mark = هذه المحاولة لم تُحتسب
home-attempts = المحاولات
home-best-today = أفضل نتيجة في اليوم
home-personal-best = أفضل نتيجة لي
home-change = التغيّر
home-since = التغيّر منذ { $date }
home-standing-first = أول نتيجة لك: صار لديك الآن ما تتفوق عليه.
home-standing-new = أفضل نتيجة جديدة لك!
home-standing-equalled = تعادل أفضل نتيجة لك.
home-days = الأيام المحفوظة: اختر يومًا لتصحيحه
home-day-to-come = اختر اليوم أو يومًا سابقًا.
home-refused-number = لا يمكن قراءة هذا. اكتب نتيجة مثل { $mark }، أو x.
home-refused-unit = هذه الوحدة لا تناسب هنا. اكتب نتيجة مثل { $mark }.
home-refused-doubt = ما وحدة القياس؟ اكتبها أيضًا، مثل { $mark }.
home-refused-seconds = اكتب الدقائق ثم نقطتين ثم رقمين للثواني لا يزيدان على 59، مثل 1:05.
home-refused-whole = اكتب عددًا صحيحًا، مثل { $mark }.
home-refused-large = هذا كبير جدًا. اكتب نتيجة مثل { $mark }.
home-refused-none = اكتب اسمك المستعار أولًا.
home-refused-name = يبدو هذا اسمًا حقيقيًا. اكتب بدلًا منه الرمز الذي أعطاك إياه معلمك، مثل K07.
home-refused-mail = يبدو هذا عنوانًا أو رقمًا أو تاريخًا يدل عليك. اكتب الرمز الذي أعطاك إياه معلمك، مثل K07.
home-refused-signs = في الرمز 24 حرفًا أو رقمًا أو نقطة أو شَرطة على الأكثر، مثل K07.
home-answer = إجابتي
home-answer-said = قلتها بصوت مسموع
home-personal = احذف عناوين البريد وأرقام الهاتف: هذه الإجابة لا تُحفظ.
home-send = أرسل إلى معلمي
home-send-how = فقط حين تريد، وبالطريقة التي طلبها معلمك: انسخ النص في رسالة أو بريد إلكتروني، أو سلّم الملف، أو اطبعه. من دون أسماء من فضلك، ولا في الإجابات.
home-send-nothing = لا شيء للإرسال بعد: اكتب اسمًا مستعارًا، ونتيجة أو إجابة.
home-send-text = كل ما يُرسل
home-copy = انسخ النص
home-copied = نُسخ النص.
home-share = شارك …
home-file = احفظه ملفًا
home-print = اطبع
home-export = احفظ في ملف كل ما يخص { $code }
home-delete = احذف كل ما يخص { $code }
home-sure = هل تحذف كل ما يحفظه هذا الجهاز ويخص { $code }؟ لا يمكن استرجاعه.
home-deleted = تم الحذف.
home-delete-note = ما تحذفه هنا يزول من هذا الجهاز. ما أرسلته من قبل لا يُسترجع.
progress-own-words = بكلمات الأطفال أنفسهم: قد يرد فيها اسم. اقرأها قبل أن تعرضها على أحد.

## Pages: teachers
teachers-session = الحصة
teachers-active-short = متوسط وشديد
teachers-grade = مستوى القراءة
teachers-matrix = جدول الأدوات
teachers-matrix-how = كم تطلب الحصة من كل شيء في وقت واحد، وبين قوسين ما يمكن الاستغناء عنه.
teachers-matrix-most = الأكثر في وقت واحد
teachers-family-page = صفحة الأسرة

## Pages: choosing, doing, keeping
feed = حصص جديدة وحصص معدّلة
front-find = بحث
front-find-how = كلمة، مثل لعبة أو شيء
front-relax = من دون «{ $answer }»: { $count }
now-start = ابدأ الحصة الآن
now-start-how = جزء واحد في كل مرة، مع مؤقّت.
now-leave = الصفحة كاملة
now-back = السابق
now-next = التالي
now-place = { $number } من { $total }
now-after = النتائج والمراجعة
timer = المؤقّت
timer-left = الوقت المتبقي
timer-start = ابدأ
timer-pause = توقف مؤقت
timer-on = تابع
timer-again = ابدأ من جديد
timer-explain = انظر واستمع
timer-set-up = جهّز المكان والأدوات
timer-work = تحرّك
timer-rest = استرح
timer-recover = استعد نفَسك
timer-round = الجولة { $number } من { $total }
timer-done = أحسنت
timer-sound = الصوت
timer-buzz = الاهتزاز
timer-voice = الكلام

## Library
retired-note = هذه الحصة لم تعد تُستعمل. هي محفوظة هنا للقراءة فقط، فاختر حصة أخرى للتنفيذ.
borrowed-from = مأخوذة من «{ $pack }»
borrowed-changed = مأخوذة من «{ $pack }» مع تعديل
borrowed-changed-by = مأخوذة من «{ $pack }»، والتعديل من { $school }

## Editions and what changed
edition-mark = الطبعة { $mark }
edition = هل ورقتي المطبوعة حديثة؟
edition-how = في أسفل كل ورقة رمز طبعتها. هذه هي الطبعات الحالية:
edition-ask = الطبعة على ورقتي
edition-current = { $mark } هي الطبعة الحالية ({ $sheet }).
edition-changed = { $mark } ليست الطبعة الحالية. تغيّرت الورقة منذ ذلك، أو هي من حصة أخرى: اطبعها من جديد.
edition-no-mark = رمز الطبعة أربعة حروف أو أرقام، من دون I وL وO وU.
says-title = العنوان
says-summary = الملخص
says-surface = تحت القدمين
says-limits = المناسب
says-instead = البديل
says-note = ملاحظة
says-things-for = لأجل ماذا الأشياء
says-school = المدرسة
says-picture = الصورة
says-by = من راجعها
says-look-again = المراجعة القادمة
says-explain = الشرح
says-set-up = التجهيز
says-work = العمل
says-rest = الراحة
says-rounds = الجولات
says-recover = استعادة النفَس
says-effort = الجهد
says-how = طريقة التنفيذ
says-key-point = نقطة أداء
says-attempts = المحاولات
says-movements = الحركات
says-version = صورة أخرى
says-flight = الطيران
says-like = يشبه
says-step = أصغر فرق
says-reference = للمقارنة
says-lengths = الأقصر / الأطول (الأهمية)
since = ما الذي تغيّر
since-how = منذ { $when }.
since-review = ما تغيّر، للمراجعة
since-became = { $what }: من { $before } إلى { $now }
since-reworded = { $what }: صياغة أخرى
since-added = { $what }، إضافة: { $text }
since-gone = { $what }، حذف: { $text }
since-reordered = { $what }: ترتيب آخر
since-part-added = جزء جديد
since-part-gone = جزء محذوف
since-parts-reordered = تغيّر ترتيب الأجزاء
since-before = قبل
since-now = الآن
since-new = حصص جديدة
since-no-more = لم تعد هنا
since-changed = حصص معدّلة
since-shared = لكل الحصص
since-same = { $count ->
    [zero] لم تبقَ أي حصة كما كانت.
    [one] حصة واحدة كما كانت.
    [two] حصتان كما كانتا.
    [few] { $count } حصص كما كانت.
    [many] { $count } حصة كما كانت.
   *[other] { $count } حصة كما كانت.
}
since-nothing = لم يتغيّر شيء.
since-small = تصحيحات صغيرة فقط.
since-print = اطبع من جديد
since-keep = الأوراق التي لم تُذكر هنا ما زالت صالحة.
since-all-cards = كلها
since-marks = الطبعة: من { $before } إلى { $now }
book-access = كل رسم موصوف بالكلمات. الحصص تطلب الحركة، وفي كل جزء بيان كيف يصبح أسهل، وتُذكر الصور الأخرى حيث توجد.

## Figures
figure-says = { $view }، { $on }: { $angles }.
figure-straight = الجسم مستقيم
figure-angle = { $part } { $ways }
figure-left = { $part } من الجهة اليسرى
figure-right = { $part } من الجهة اليمنى
figure-handed = الرسم لليد اليمنى، ومن يستعمل اليد اليسرى يعكس الجهات.
figure-arrow = سهم: { $part } { $way }.
figure-moving = اعرض الحركة
figure-moment = الصورة { $number }
figure-view-side = منظر من الجانب
figure-view-other-side = منظر من الجانب الآخر
figure-view-front = منظر من الأمام
figure-view-back = منظر من الخلف
figure-view-corner = منظر نصف جانبي
figure-on-both-feet = وقوف على القدمين
figure-on-left-foot = وقوف على القدم اليسرى
figure-on-right-foot = وقوف على القدم اليمنى
figure-on-hands-and-feet = ارتكاز على اليدين والقدمين
figure-on-hands-and-knees = ارتكاز على اليدين والركبتين
figure-on-knees = جثو على الركبتين
figure-on-one-knee = جثو على ركبة واحدة
figure-on-seat = جلوس على الأرض
figure-on-chair = جلوس على كرسي
figure-on-wheelchair = جلوس على كرسي متحرك
figure-on-back = استلقاء على الظهر
figure-on-front = انبطاح على البطن
figure-on-left-side = استلقاء على الجانب الأيسر
figure-on-right-side = استلقاء على الجانب الأيمن
figure-on-air = في الهواء
figure-part-trunk = الجذع
figure-part-back = الظهر
figure-part-head = الرأس
figure-part-body = الجسم
figure-part-arms = الذراعان
figure-part-arm = الذراع
figure-part-elbows = المرفقان
figure-part-elbow = المرفق
figure-part-wrists = الرسغان
figure-part-wrist = الرسغ
figure-part-hands = اليدان
figure-part-hand = اليد
figure-part-legs = الرِّجلان
figure-part-leg = الرِّجل
figure-part-knees = الركبتان
figure-part-knee = الركبة
figure-part-feet = القدمان
figure-part-foot = القدم
figure-part-thing = الشيء المحمول
figure-way-forward = إلى الأمام
figure-way-back = إلى الخلف
figure-way-up = إلى الأعلى
figure-way-down = إلى الأسفل
figure-way-left = إلى اليسار
figure-way-right = إلى اليمين
figure-way-forward-and-up = إلى الأمام والأعلى
figure-way-forward-and-down = إلى الأمام والأسفل
figure-way-back-and-up = إلى الخلف والأعلى
figure-way-sideways = إلى الجانب
figure-way-across = بعرض الجسم
figure-way-bent = بانثناء
figure-way-rounded = باستدارة
figure-way-arched = بتقوّس إلى الخلف
figure-way-pointed = بمدّ الأصابع بعيدًا عن الساق
figure-way-pulled-up = بشدّ الأصابع نحو الساق
figure-holds-ball = في اليد كرة.
figure-holds-bag = في اليد كيس حبوب صغير.
figure-holds-cushion = في اليد وسادة.
figure-holds-rope = في اليد حبل أو منشفة.
figure-holds-weight = في اليد ثقل.
figure-holds-tub = في اليد وعاء.
figure-holds-stick = في اليد عصا.
figure-holds-sheet = في اليد ورقة.
figure-with-line = خط على الأرض.
figure-with-marker = علامة في الأمام.
figure-with-mat = على بساط تمارين.
figure-with-wall = حائط في الأمام.
figure-with-ball = كرة في الأمام.
figure-with-cushion = وسادة في الأسفل.
figure-with-chair = كرسي في الأمام.
figure-with-skittles = قوارير خشبية في الأمام.
poses-title = الوضعيات
poses-lead = اكتب اسم الوضعية في «figure:» وغيّر ما تحتاج إليه: {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = للمعلمين
