### وہ الفاظ جو گھر والے اور جسمانی تعلیم کے اساتذہ پڑھتے ہیں، صفحوں پر اور کاغذ پر۔

## Shared

part-warm-up = جسم گرم کرنا
part-technique = تکنیک
part-challenge = چیلنج
part-stretch = اضافی مشق
part-cool-down = جسم کو آرام پر لانا

effort-rest = آرام
effort-light = ہلکی
effort-moderate = درمیانی
effort-vigorous = تیز

activity-athletics = ایتھلیٹکس
activity-dance = رقص
activity-fitness = جسمانی فٹنس
activity-games = کھیل
activity-gymnastics = جمناسٹکس
activity-outdoor = کھلی فضا

place-indoors = گھر کے اندر
place-outdoors = باہر
place-both = گھر کے اندر یا باہر

surface-grass = گھاس
surface-carpet = قالین
surface-mat = چٹائی
surface-hard-floor = سخت فرش
surface-paving = پکی اینٹیں
surface-sand = ریت
surface-soft-play = نرم فرش

piece-explain = سمجھانا { $amount }
piece-set-up = تیاری { $amount }
piece-work = مشق { $amount }
piece-rest = آرام { $amount }
piece-rounds = { $count ->
    [one] { $count } دور
   *[other] { $count } دور
}
piece-recover = سانس بحال کرنا { $amount }
piece-counts = { $counts } گنتیاں، { $tempo } فی منٹ کی رفتار سے

minutes = { $count ->
    [one] { $count } منٹ
   *[other] { $count } منٹ
}
ages = عمر { $ages } سال
optional = اگر موجود ہو
soft = نرم
list-or = { $rest } یا { $last }

kind-recall = یاد کریں
kind-explain = سمجھائیں
kind-compare = موازنہ کریں
kind-apply = استعمال کریں
kind-reflect = پیچھے مڑ کر دیکھیں

task-inform = تعارف
task-extend = توسیع
task-refine = بہتری
task-apply = اطلاق

standing-draft = مسودہ
standing-reviewed = جانچا گیا
standing-approved = منظور شدہ
standing-retired = اب استعمال میں نہیں

adapt-space = دوسری جگہ
adapt-task = دوسرا کام
adapt-equipment = دوسرا سامان
adapt-people = دوسرے لوگ

sheet-cards = کارڈ
sheet-home-guide = گھر کے لیے رہنما
sheet-record = نتائج کا ورق
sheet-review = جائزے کا ورق

key-points = اہم نکات
easier = آسان
harder = مشکل
faults = عام غلطیاں
fault-see = آپ دیکھیں
fault-say = آپ کہیں
adult-nearby = ایک بڑا قریب رہے
adult-helping = ایک بڑا مدد کرے
landing-zone = گرنے کی جگہ
stop-and-collect = رکیں اور چیزیں اٹھائیں
cautions = احتیاط
local-rules = مقامی قواعد، اسکول کا خطرات کا جائزہ اور اجازت یافتہ طریقہ سب سے پہلے ہے۔ یہ صفحات مشورہ دیتے ہیں۔ یہ وعدہ نہیں کر سکتے کہ کوئی سرگرمی آپ کے گھر میں محفوظ ہے۔
attempt = کوشش
best = بہترین
mark-in = نتیجہ ({ $unit })
measure-distance = فاصلہ { $unit } میں ناپیں۔
measure-time = وقت { $unit } میں ناپیں۔
measure-count = گنیں: { $unit }۔
measure-points = پوائنٹس جمع کریں۔
measure-criteria = یہ دیکھیں:
attempts = { $count ->
    [one] ایک کوشش شمار ہوگی۔
   *[other] { $count } کوششیں شمار ہوں گی۔
}
better-more = جتنا زیادہ اتنا بہتر۔
better-less = جتنا کم اتنا بہتر۔
code-name = فرضی نام
date = تاریخ
licence = لائسنس
credit = تیار کرنے والے

## Plans, on pages and on paper

plan = فرش کا نقشہ
plan-same = وہی فرش جو اس میں ہے
plan-says = پیمانے کے مطابق فرش کا نقشہ، لمبائی { $length } اور چوڑائی { $width }۔
plan-stand = یہاں سے شروع کریں
plan-wait = یہاں انتظار کریں
plan-line = لکیر
plan-wall = دیوار
plan-moving = ہلنے جلنے کی جگہ
plan-run-up = لکیر کے پیچھے
plan-landing = اترنے کی جگہ
plan-stopping = رکنے کی جگہ
plan-clear = خالی رکھیں
plan-floor = آپ کا فرش
plan-for = { $parts } کے لیے
plan-headroom = سر کے اوپر جگہ: { $height }۔
plan-askew = اسے کونے سے کونے تک رکھیں: یہ صرف ترچھا آتا ہے۔
plan-unfit = اسے اس سیشن میں بتائے گئے فرش سے زیادہ جگہ چاہیے: کسی بڑی جگہ جائیں۔
setting-out = فیتے سے نشان لگانا
tape-line = { $length } چوڑی لکیر لگائیں۔
tape-right-angle = سیدھا آگے: لکیر پر { $along } پر اور اس کے سرے سے { $away } پر نشان لگائیں۔ یہ سیدھا ہے جب دونوں نشانوں میں { $across } فاصلہ ہو۔
tape-diagonals = { $length } ضرب { $width } کے نشان لگائیں۔ کونے درست ہیں جب دونوں وتر { $diagonal } ہوں۔
tape-sector = اطراف: لکیر کے درمیان سے { $along } پر دو نشان، آپس میں { $apart } دور۔
tape-reach = خالی: { $reach } کے بعد مزید { $margin }۔
tape-around = چاروں طرف { $margin } خالی رکھیں۔
tape-wait = انتظار: لکیر سے { $behind } پیچھے۔

slots = اگر وقت مختلف ہو
slots-how = جسم گرم کرنا اور آرام پر لانا رہتا ہے۔ سب سے اہم چیز رکھی جاتی ہے۔
slot-in = { $time } میں
slot-same = سب کچھ پورا آ جاتا ہے۔
slot-drop = چھوڑ دیں: { $list }۔
slot-change = { $part }: { $time }۔
slot-change-rounds = { $part }: { $rounds ->
    [one] { $rounds } دور
   *[other] { $rounds } دور
}، { $time }۔
slot-left = باقی: { $time }۔
slot-too-short = { $by } کم ہے: جو رہنا ضروری ہے اس میں زیادہ وقت لگتا ہے۔

effort-talk = بات
effort-still = سب سے زیادہ دیر ساکت کھڑے رہنا { $time } ہے، ”{ $part }“ میں۔

effort-of-day = درمیانی اور تیز محنت ان 60 منٹ روزانہ کا { $share }٪ ہے جو عالمی ادارہ صحت تجویز کرتا ہے (عمر 5 سے 17 سال)۔
effort-rhythm = { $part }: { $work } مشق اور { $rest } آرام ({ $ratio })۔
effort-usual = شروع میں اس عمر میں { $least } سے { $most } سیکنڈ سخت مشق اور اتنا ہی آرام معمول ہے (عام طریقہ)۔
effort-like = { $part } 2011 کے Compendium of Physical Activities میں ”{ $like }“ جیسا ہے: { $met } MET، { $band } (درمیانی { $from } سے)۔ یہ بڑوں کا عدد ہے، بچوں کے لیے اندازہ۔

floor-how = فرش پر
floor-fits = پورا آتا ہے
floor-askew = ترچھا آتا ہے
floor-unfit = پورا نہیں آتا
floor-unsaid = فرش نہیں بتایا گیا

things-as = { $need } کی جگہ { $things }
things-together = سب کے لیے ایک ساتھ کافی:
things-need = ضرورت
things-at-home = گھر میں
things-refused = مناسب نہیں
things-missing = { $count } کم ہیں
things-once = ایک بار جمع کریں
things-once-how = یہ چند چیزیں یہاں کے ہر سیشن کے لیے کافی ہیں۔ کوئی چیز ایک وقت میں دو جگہ نہیں چاہیے۔
things-all = سب چیزیں اور ان کے متبادل
sheet-print = یہ فہرست چھاپیں (PDF)
things-once-unproven = شاید اس سے چھوٹی فہرست بھی ہو۔
sheet-gather = ایک بار جمع کریں
misfit-heavy = بہت بھاری: { $found }، { $ages } سال کے لیے { $asked } چاہیے
misfit-light = بہت ہلکا: { $found }، { $ages } سال کے لیے { $asked } چاہیے
misfit-large = بہت بڑا: { $found }، { $ages } سال کے لیے { $asked } چاہیے
misfit-small = بہت چھوٹا: { $found }، { $ages } سال کے لیے { $asked } چاہیے
misfit-hard = نرم ہونا نہیں بتایا گیا
misfit-lacks = { $asked } ہونا نہیں بتایا گیا

flight-throw = فرش سے { $height } اوپر { $speed } م/سیکنڈ اور { $angle }° پر چھوڑنے سے یہ { $distance } دور اور { $apex } اونچا جاتا ہے۔ یہ { $time } اڑتا ہے اور { $landing } م/سیکنڈ پر گرتا ہے۔
flight-toss = { $height } سے { $speed } م/سیکنڈ پر اوپر اچھالنے سے یہ { $apex } تک جاتا ہے اور { $time } اڑتا ہے۔
flight-drag = ”{ $thing }“ پر ہوا کی رکاوٹ شامل ہے؛ اس کے بغیر فاصلہ { $distance } ہوتا۔
flight-drag-toss = ”{ $thing }“ پر ہوا کی رکاوٹ شامل ہے۔
flight-no-drag = ہوا کی رکاوٹ کے بغیر۔
flight-headroom = سر کے اوپر جگہ: { $height }۔
flight-room = { $ceiling } کی چھت کے نیچے اس رفتار پر سب سے دور { $distance } ہے، { $angle }° پر۔
flight-best = فارمولے کے مطابق { $angle }° بہترین ہے، فاصلہ { $distance }۔ زاویہ بڑھنے سے انسان کی اپنی رفتار کم ہوتی ہے، اس لیے اصل بہترین تھرو نیچا ہوتا ہے: گولے کے لیے فارمولا تقریباً 42° کہتا ہے اور کھلاڑی 37° سے 38° پر پھینکتے ہیں۔

marks-distance = فاصلے نیچے کی طرف پورے { $step } تک پڑھے جاتے ہیں (World Athletics کے تکنیکی قواعد)۔
marks-time = ہاتھ سے لیے گئے وقت اوپر اگلے { $step } تک پڑھے جاتے ہیں (دوڑ کے لیے World Athletics کے تکنیکی قواعد)۔
marks-time-held = جتنا لمبا اتنا بہتر: وقت نیچے کی طرف پورے { $step } تک پڑھے جاتے ہیں۔
marks-whole = نتائج پورے عدد ہیں۔
marks-ties = بہترین کوشش شمار ہوتی ہے؛ برابری پر اگلی بہترین فیصلہ کرتی ہے۔
marks-reference = موازنے کے لیے: { $mark } ({ $source })۔ لوگ مختلف ہوتے ہیں؛ یہ کسی کا معیار نہیں۔
marks-formula = پوائنٹس: { $a } · d^{ $c } کا پورا حصہ، جہاں d نتیجے اور { $b } کا فرق ہے۔
marks-points-source = پوائنٹس: { $source }
marks-from = سے
marks-points = پوائنٹس
points-list = پوائنٹس: { $list }۔
points-from = { $mark } سے { $points }
points-within = { $mark } تک { $points }

reading-how = بچے کے پڑھنے کے جملے کتنے مشکل ہیں، انگریزی کے لیے بنے شائع شدہ فارمولوں سے۔ یہ لمبائی دیکھتے ہیں، مطلب نہیں۔
reading-words = الفاظ
reading-sentences = جملے
reading-flesch = Flesch پڑھنے کی آسانی
reading-kincaid = Flesch–Kincaid درجہ
reading-smog = SMOG درجہ
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = پڑھنے کی عمر (درجہ + 5)
reading-long-words = تین یا زیادہ ارکان کے الفاظ:
reading-long-sentences = 20 سے زیادہ الفاظ والے جملوں میں الفاظ:

flight-axis-angle = زاویہ
flight-axis-distance = فاصلہ (م)
flight-figure-says = زاویے کے مطابق فاصلہ۔ بہترین ہے

## Pages

skip = مواد پر جائیں
pages = صفحات
nav-front = تمام سیشن
nav-things = جمع کرنے کی چیزیں
nav-teachers = اساتذہ کے لیے
nav-rules = لکھنے کے قواعد
foot-contact = اسکول سے پوچھیں
foot-made = یہ صفحات کہیں اور سے کچھ نہیں لاتے اور کہیں کچھ نہیں بھیجتے۔

front-about = گھر میں جسمانی تعلیم: عمر، وقت، جگہ اور گھر کی چیزوں کے مطابق سیشن چنیں۔
front-choose = سیشن چنیں
front-choose-how = جو چاہیں جواب دیں۔ نیچے کی فہرست میں صرف مناسب سیشن رہتے ہیں۔
front-sessions = سیشن
front-any = کوئی بھی
front-age = بچے کی عمر
front-minutes = آپ کے پاس وقت
front-up-to = { $count } منٹ تک
front-space = خالی جگہ
front-space-rug = ایک دری، 2 میٹر × 2 میٹر
front-space-small-room = چھوٹا کمرہ، 3 میٹر × 3 میٹر
front-space-big-room = بڑا کمرہ، 5 میٹر × 4 میٹر
front-place = کہاں
front-activity = سرگرمی
front-lacking = ہمارے پاس نہیں ہے …
front-lacking-how = (نہ اس کا کوئی متبادل)
front-more = جگہ، سرگرمی اور گھر کی چیزیں
front-reset = دوبارہ شروع کریں
front-shown = دکھائے گئے:
front-none = کوئی سیشن ان سب پر پورا نہیں اترتا۔ ایک جواب ہٹا دیں۔
front-needs = جمع کریں:
front-needs-nothing = کچھ جمع نہیں کرنا
front-cards = چھاپنے کے کارڈ
front-minutes-unit = منٹ

fact-ages = عمر
fact-minutes = منٹ
fact-space = خالی جگہ
fact-place = کہاں
fact-effort = محنت، زیادہ تر

space = جگہ
space-needs = { $size } خالی فرش۔
space-headroom = سر کے اوپر جگہ { $height }۔
space-surface = پاؤں تلے اچھا: { $list }۔

before = شروع کرنے سے پہلے
running-order = ترتیب
running-how = اونچی پٹی کا مطلب زیادہ محنت ہے۔
line-label = { $minutes } منٹ کی وقت کی لکیر، ہر حصے کے لیے ایک پٹی
success = آخر تک میں کیا کر سکتا ہوں
things = جمع کرنے کی چیزیں
things-nothing = کچھ نہیں۔ آپ تیار ہیں۔
things-household = ہر گھر میں ہوتا ہے۔
things-limits = کیا مناسب ہے: { $limits }
stands-in = یا استعمال کریں
for-parts = کس کے لیے:
adult = بڑے کا وقت
adult-nearby-for = { $time } تک قریب۔
adult-helping-for = { $time } تک مدد۔
adult-none = ضرورت نہیں۔ آواز کی حد میں رہیں۔
film = فلم
from-to = { $from } سے { $to }
beats-label = مشق اور آرام، پیمانے کے مطابق
how-measured = کیسے ناپا جاتا ہے
throwing = کچھ پھینکنے سے پہلے
tick-rounds = مکمل دور
finish = اختتام
finish-say = تھوڑا پانی پیئیں۔ پھر اپنے نتائج لکھیں۔
marks = میرے نتائج
marks-how = فرضی نام لکھیں، پورا نام کبھی نہیں۔ نتائج آپ کے اپنے ہیں: اپنے ہی بہترین سے آگے بڑھیں۔
next-time = اگلی بار میں
review = سوچیں
review-how = پہلے اپنا جواب کہیں یا لکھیں۔ پھر ہمارا جواب کھولیں۔
review-answer = ہمارا جواب
adaptations = اسے اپنے مطابق بنائیں
papers = چھاپیں
sheet-cards-about = ہر کارڈ پر ایک حصہ، ایک صفحے پر چار
sheet-home-guide-about = ایک صفحہ: وقت کی لکیر، چیزیں، جگہ، احتیاط
sheet-record-about = نتائج لکھنے کا جدول
sheet-review-about = سوال، اور جواب الگ صفحے پر
draft-note = مسودہ: اس سیشن کا ابھی جائزہ نہیں لیا گیا۔

things-intro = یہاں کے سیشنوں کو جو کچھ چاہیے اور جو اس کی جگہ لے سکتا ہے۔ جو ملے اس پر نشان لگائیں۔
things-for = سیشن
things-extras = ہو تو اچھا ہے

rules-intro = homeground سیشن کی فائلیں جانچتے ہوئے کیا دیکھتا ہے اور کیوں۔ یہ مشورہ دیتا ہے؛ کبھی تصدیق نہیں کرتا کہ سیشن محفوظ ہے۔
rules-contents = کوڈ
rules-why = کیوں
rules-source = ماخذ:
rules-bad = ایسے نہیں
rules-good = ایسے
severity-problem = مسئلہ
severity-warning = تنبیہ
severity-advice = مشورہ

teachers-intro = ہر سیشن اپنی وقت کی لکیر، جوابات اور حیثیت کے ساتھ۔ محنت کے اعداد حصوں کی بتائی گئی محنت سے اندازے ہیں۔
teachers-contents = سیشن
teachers-active = درمیانی اور تیز: { $time }، وقت کا { $share }٪ (اندازہ)
teachers-plans = منصوبے: محنت، وقت، فرش، چیزیں، پرواز، نتائج، پڑھائی
teachers-floors = فرش
teachers-flights = پرواز
teachers-marks = نتائج اور پوائنٹس
teachers-reading = پڑھائی
teachers-part = حصہ
teachers-from = سے
teachers-time = وقت
teachers-effort = محنت
teachers-task = کام
teachers-objectives = مقاصد
teachers-success = کامیابی کے معیار
teachers-codes = نصاب
teachers-answers = جائزے کے سوال اور جواب
teachers-standing = حیثیت
teachers-by = از { $by }
teachers-on = { $on } کو
teachers-look-again = دوبارہ دیکھیں { $on }
teachers-changed = کیا بدلا
teachers-curriculum = نصاب کا احاطہ
teachers-uncovered = ابھی کوئی سیشن نہیں

## Paper

cards-number = کارڈ { $number } از { $total }
cards-continued = (جاری)
cards-see-guide = گھر کے رہنما میں ترتیب، ہر چیز کے متبادل اور تمام احتیاطیں ہیں۔
cards-adapt = آپ کے گھر اور آپ کے لیے
cards-helper = مدد کرنے والے کے لیے
cards-look = کیا دیکھنا ہے
cards-look-how = جو نظر آئے ← جو کہنا ہے۔ ایک وقت میں ایک بات۔
or-use = یا استعمال کریں
sheet-number = صفحہ { $number } از { $total }
fact-time = وقت
review-paper-how = پہلے اپنا جواب زور سے کہیں۔ پھر لکھیں۔
review-answers = جوابات
review-own = آپ کا اپنا جواب۔
review-help = یہ نمونے کے جواب ہیں۔ بچے کے الفاظ اتنے ہی اچھے ہیں اگر مطلب وہی ہو۔
fact-headroom = سر کے اوپر جگہ
record-look-for = دیکھیں

## Quantities

amount-m = { $number } میٹر
amount-cm = { $number } سینٹی میٹر
amount-mm = { $number } ملی میٹر
amount-kg = { $number } کلو
amount-g = { $number } گرام
amount-min = { $number } منٹ
amount-s = { $number } سیکنڈ
amount-min-s = { $minutes } { $seconds }
amount-at-most = زیادہ سے زیادہ { $amount }
amount-at-least = کم از کم { $amount }
amount-any = کوئی بھی

## Languages

languages = دوسری زبانیں
language-name = اردو
shown-in-original = اس سیشن کا ابھی ترجمہ نہیں ہوا۔ یہ اپنی اصل زبان ({ $language }) میں دکھایا گیا ہے۔
translation-old = اس ترجمے کے بعد اصل متن بدل گیا ہے۔
language-unnamed = اپنی زبان
