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
sheet-cards-about = ہر کارڈ پر ایک حصہ، ایک صفحے پر { $cards }
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

## To scan, to copy, to send

scan-page = اس سیشن کا صفحہ
scan-film = فلم

no-printer = پرنٹر نہیں ہے؟
no-printer-how = اسے ہاتھ سے نقل کریں: تقریباً { $minutes } منٹ۔ یا متن کے طور پر محفوظ کریں، یا پیغامات میں بھیجیں۔
copy-file = ہاتھ سے نقل کریں (متن)
texts-file = فون کے پیغامات (متن)
no-printer-needs = آپ کو چاہیے: { $list }۔
no-printer-read = پہلے صفحے پر تمام احتیاطیں پڑھیں۔
no-printer-rules = اسکول کے قواعد اور خطرات کا جائزہ سب سے پہلے ہے۔

## Sheets

sheet-large-print = بڑے حروف والے کارڈ
sheet-large-print-about = کوئی لفظ 18 پوائنٹ سے چھوٹا نہیں، ایک ورق پر ایک کارڈ
sheet-class-set = جماعت کا سیٹ
sheet-class-set-about = { $copies ->
    [one] نمبر لگے کارڈوں کا ایک سیٹ
   *[other] نمبر لگے کارڈوں کے { $copies } سیٹ
}، ایک ورق پر { $cards }
sheet-booklet = کتابچہ
sheet-booklet-about = دونوں طرف چھاپیں، چھوٹے کنارے پر پلٹ کر، پھر سب ورق ایک ساتھ ایک بار تہہ کریں
sheet-poster = پوسٹر
sheet-poster-about = اہم نکات، 2 میٹر سے پڑھنے کے لیے
sheet-record-class = جماعت کے نتائج کا ورق
sheet-record-class-about = فرضی نام ایک طرف
sheet-record-week = ہفتے کے نتائج کا ورق
sheet-record-week-about = ہر دن کے لیے ایک خانہ
both-long = دونوں طرف چھاپیں، لمبے کنارے پر پلٹ کر
both-short = دونوں طرف چھاپیں، چھوٹے کنارے پر پلٹ کر
cards-back = کارڈ { $number } از { $total } کی پشت
cards-set = سیٹ { $number } از { $total }
notes = نوٹس
booklet-inside = اندر کیا ہے
record-class-tick = جو دیکھا اس پر نشان لگائیں۔ جو نہیں دیکھا اسے خالی چھوڑ دیں۔
record-week-how = ہر دن جو کیا اس پر نشان لگائیں، اور اس دن کا اپنا بہترین نتیجہ لکھیں۔
record-done = میں نے کر لیا
record-best-marks = میرا بہترین نتیجہ
record-week-best = اس ہفتے سب سے اچھا کیا رہا؟
week-of = ہفتہ شروع
day-1 = پیر
day-2 = منگل
day-3 = بدھ
day-4 = جمعرات
day-5 = جمعہ
day-6 = ہفتہ
day-7 = اتوار

## Progress

progress-title = جماعت کی پیش رفت
progress-private = استاد کے لیے۔ صرف کوڈ، نام نہیں۔ { $date } تک رکھیں، پھر مٹا دیں: homeground progress --to … --forget
progress-how = ہر تبدیلی بچے کے اپنے پچھلے نتیجے کے مقابلے میں ہے۔ فٹنس کے نتائج نجی ہیں: یہ نہ گریڈ ہیں، نہ بچوں کا آپس میں موازنہ۔
progress-rule = تبدیلی کو روز کے معمولی فرق سے زیادہ تب مانا جاتا ہے جب وہ ایک کوشش کی عام غلطی کے دو گنا سے زیادہ ہو (Hopkins 2000: 1.5 سے 2)۔ عام غلطی ایک ہی دن کی دہرائی گئی کوششوں سے نکلتی ہے: جو فرق ایک دن سے دوسرے دن ہوتا ہے وہ اس کے علاوہ ہے۔
progress-contents = اس رپورٹ میں
progress-children = بچے
progress-class = جماعت
progress-class-small = { $fewest } سے کم بچوں نے نتائج بھیجے: جماعت کے اعداد نہیں دکھائے گئے، کیونکہ ان سے کسی کی پہچان ہو سکتی ہے۔
progress-first = پہلا دن
progress-latest = تازہ ترین دن
progress-median = وسطانیہ
progress-quartiles = چہارمک
progress-range = سب سے کم اور سب سے زیادہ
progress-deviation = معیاری انحراف
progress-noise = ایک کوشش کی عام غلطی
progress-noise-from = کوششوں کے { $pairs } جوڑوں سے
progress-noise-unknown = معلوم نہیں: دہرائی گئی کوششیں بہت کم ہیں
progress-smallest = سب سے چھوٹی تبدیلی جو اہم ہے
progress-wobble = معمولی فرق سے زیادہ، یہاں سے
progress-spread-says = ہر بچے کا ایک نقطہ، چہارمک سے چہارمک تک ایک خانہ، وسطانیہ پر موٹی لکیر۔
progress-strip-says = { $task } میں { $code } کے نتائج، دن بہ دن۔ اعداد ساتھ والے جدول میں ہیں۔
progress-better-more = جتنا دائیں اتنا بہتر۔
progress-better-less = جتنا بائیں اتنا بہتر۔
progress-child-table = ایک ایک بچہ
progress-code = کوڈ
progress-place = درجہ
progress-first-mark = پہلا
progress-last-mark = آخری
progress-best-mark = بہترین
progress-best-on = { $mark }، { $date } کو
progress-change = تبدیلی
progress-verdict = کیا یہ اصل ہے؟
progress-tries = کوششیں
progress-points = پوائنٹس
progress-over-time = وقت کے ساتھ
progress-next = آگے کیا، اور کیوں
progress-missing = ابھی کچھ نہیں بھیجا
progress-missing-none = سب نے کچھ نہ کچھ بھیجا ہے۔
progress-silent = بالکل کچھ نہیں بھیجا
progress-faults = عام غلطیاں جن پر نشان لگا
progress-few = { $fewest } سے کم
progress-send = آگے کیا بھیجیں
progress-comments = رپورٹ کے تبصرے، بدل کر لکھنے کے لیے
progress-questions = جائزے کے سوال
progress-questions-how = کیا درست ہے، یہ استاد طے کرتا ہے۔ یہاں جواب صرف جمع کیے گئے ہیں، اور ایک جیسے جواب ساتھ رکھے گئے ہیں۔
progress-right = درست
progress-wrong = ابھی نہیں
progress-unmarked = جانچا نہیں گیا
progress-answers-few = { $fewest } سے کم بچوں نے جواب دیا: ان کے جواب یہاں نہیں دکھائے گئے۔
progress-answers = جواب، جیسے دیے گئے
progress-model-answer = ہمارا جواب
progress-unread = نہیں پڑھا گیا
progress-unread-how = یہ خانے چھوڑ دیے گئے۔ ان کی قطاروں میں باقی سب شمار ہوتا ہے۔
progress-row = قطار
progress-column = کالم
progress-says = کیا غلط ہے
progress-file = فائل

progress-short-once = پہلا نتیجہ
progress-short-noise-unknown = کچھ کہنے کے لیے کوششیں بہت کم ہیں
progress-short-too-close = فرق اتنا کم کہ کچھ کہا نہیں جا سکتا
progress-short-too-small = اصل ہے، مگر بہت چھوٹی
progress-short-better = بہتر، روز کے معمولی فرق سے زیادہ
progress-short-worse = کم اچھا، روز کے معمولی فرق سے زیادہ

progress-child-once = یہ آپ کا پہلا دن ہے۔ اب آپ کے پاس ایک نتیجہ ہے جس سے آگے بڑھنا ہے۔
progress-child-noise-unknown = ابھی کوششیں اتنی کم ہیں کہ نہیں کہا جا سکتا کہ یہ روز کے معمولی فرق سے زیادہ ہے یا نہیں۔
progress-child-too-close = فرق اتنا کم ہے کہ کچھ کہا نہیں جا سکتا: نتائج ایک کوشش سے دوسری تک اتنے بدلتے ہی ہیں۔
progress-child-too-small = یہ روز کے معمولی فرق سے زیادہ ہے، مگر بہت چھوٹا ہے۔
progress-child-better = یہ روز کے معمولی فرق سے زیادہ ہے: آپ بہتر ہو گئے ہیں۔
progress-child-worse = اس بار نتیجہ کم اچھا رہا، روز کے معمولی فرق سے زیادہ۔ نیند، جوتے اور فرش، سب کا اثر ہوتا ہے۔ دوبارہ کوشش کریں۔
progress-child-no-mark = ابھی کسی کوشش کا نتیجہ نہیں۔ ایسا ہوتا ہے: پہلے اسے آسان بنائیں۔

progress-slip = میرے نتائج
progress-slip-for = { $code } کے لیے
progress-slip-how = نتائج آپ کے اپنے ہیں۔ اپنے ہی بہترین سے آگے بڑھیں۔
progress-slip-change = { $first } سے { $last } تک: { $change }۔
progress-slip-best = میرا بہترین: { $mark }، { $date } کو۔
progress-slip-new-best = نیا بہترین: { $mark }، { $date } کو!
progress-slip-band = دائرے کوششیں ہیں، نقطے دن کا بہترین۔ سرمئی پٹی میں فرق اتنا کم ہے کہ کچھ کہا نہیں جا سکتا۔
progress-slip-no-band = دائرے کوششیں ہیں، نقطے دن کا بہترین۔
progress-slip-next = آگے
progress-slip-again = یہ سوال دوبارہ دیکھیں
progress-slip-day = دن
progress-slip-tries = کوششیں
progress-slip-day-best = بہترین

progress-mend = یہ دیکھا گیا: ”{ $see }“ یہ آزمائیں: ”{ $say }“
progress-mend-part = اس کی مشق ”{ $part }“ میں ہوتی ہے۔
progress-further = اضافی مشق ”{ $part }“ آزمائیں۔
progress-onward = اس کے بعد: ”{ $session }“۔
progress-practise = دوبارہ کریں، ایک بات ذہن میں رکھ کر: ”{ $point }“
progress-practise-bare = دوبارہ کریں، اور ایک وقت میں ایک بات پر دھیان دیں۔
progress-easier = پہلے اسے آسان بنائیں: { $easier }
progress-easier-bare = پہلے اسے آسان بنائیں۔

progress-send-mend = ”{ $part }“ دوبارہ (بچے: { $count }): انہوں نے ”{ $see }“ پر نشان لگایا
progress-send-further = اضافی مشق ”{ $part }“ (بچے: { $count }): ان کی تبدیلی روز کے معمولی فرق سے زیادہ ہے۔
progress-send-onward = پھر ”{ $session }“ (بچے: { $count }): وہی سرگرمی، ابھی نہیں کی گئی۔
progress-send-practise = ”{ $part }“ دوبارہ (بچے: { $count }): ابھی روز کے معمولی فرق سے زیادہ بہتری نہیں، اور کسی غلطی پر نشان نہیں۔
progress-send-easier = ”{ $part }“ کا آسان طریقہ (بچے: { $count }): ابھی کوئی نتیجہ نہیں۔

progress-comment-change = { $code }: ”{ $task }“ میں { $first } سے { $last } تک ({ $change }، { $verdict })۔
progress-comment-once = { $code }: ”{ $task }“ میں پہلے دن کا نتیجہ { $last }۔
progress-comment-none = { $code }: ”{ $task }“ کی کوشش کی ہے، ابھی کوئی نتیجہ نہیں۔
progress-comment-next = اگلا قدم: { $next }

## Fit

fit-teacher = کس گھر کے لیے کیا
fit-teacher-lead = { $count ->
    [one] ایک گھر، کوڈ کے ساتھ۔
   *[other] { $count } گھر، کوڈ کے ساتھ۔
} ہر سیشن کی وہ بہترین شکل جس کی گھر کا وقت، فرش، لوگ اور چیزیں اجازت دیں۔ کوئی غیر محفوظ چیز متبادل نہیں بنتی۔ یہ ورق اسکول میں رکھیں۔
fit-print = یہ چھاپیں (PDF)
fit-grid = ایک نظر میں
fit-grid-how = منٹ، اور کتنے حصے۔ ڈیش کا مطلب ہے کہ یہ سیشن وہاں نہیں ہو سکتا؛ وجہ نیچے ہے۔
fit-home = گھر
fit-cell = { $minutes } منٹ، { $all } میں سے { $kept }
fit-cell-whole = { $minutes } منٹ، پورا
fit-home-heading = گھر { $code }
fit-home-minutes = روزانہ { $time }
fit-home-language = زبان چاہیے: { $language }
fit-reads-paper = اس گھر کے لیے چھاپیں
fit-reads-phone = فولڈر فون پر بھیجیں
fit-as-written = جیسا لکھا ہے ویسا ہی۔
fit-uses = استعمال ہوگا: { $list }۔
fit-not = یہاں نہیں
fit-left-out = { $part } چھوڑ دیں: { $why }۔
fit-instead = اس کے سب سے قریب: { $part }۔
fit-cannot = { $list }: { $why }۔
fit-one-thing = ایک چیز سے یہ ممکن ہو جائے گا: { $thing }۔
fit-no-one-thing = کوئی ایک چیز اکیلی اسے ممکن نہیں بنا سکتی۔
fit-one-minutes = روزانہ { $time }
fit-one-more-floor = فرش { $floor } پر لمبائی اور چوڑائی میں { $by } مزید
fit-one-floor = { $place } { $size } خالی فرش
fit-one-helper = ایک اور شخص جو ساتھ کھیلے یا قریب رہے
fit-one-version-seated = اس کے حصوں کی بیٹھ کر کرنے والی شکلیں، جو ابھی کسی نے نہیں لکھیں
fit-one-version-quiet = اس کے حصوں کی بغیر شور والی شکلیں، جو ابھی کسی نے نہیں لکھیں
fit-why-seated = بیٹھ کر کرنے والی شکل نہیں ہے
fit-why-noise = پاؤں زور سے پڑتے ہیں، اور بغیر شور والی شکل نہیں ہے
fit-why-surface = یہاں کسی فرش کی سطح مناسب نہیں
fit-why-time = اتنے وقت میں جو رکھا گیا وہ زیادہ اہم ہے
fit-why-short = جو رہنا ضروری ہے اس میں دستیاب وقت سے زیادہ لگتا ہے
fit-why-helpers = { $count ->
    [one] ایک اور شخص چاہیے جو ساتھ کھیلے یا قریب رہے
   *[other] { $count } اور لوگ چاہییں جو ساتھ کھیلیں یا قریب رہیں
}
fit-why-place = کرنے کی جگہ: { $place }
fit-why-headroom = سر کے اوپر { $height } جگہ چاہیے
fit-why-floor = { $size } خالی فرش چاہیے
fit-why-things = یہاں ان کے لیے کوئی محفوظ چیز نہیں: { $list }
fit-version-seated = بیٹھ کر
fit-version-quiet = بغیر شور کے
fit-version-small-space = تھوڑی جگہ میں
fit-version-low-vision = کمزور نظر کے لیے
fit-version-partner = ساتھی کے ساتھ
fit-version-alone = اکیلے
fit-lend = ادھار دیں یا ڈاک سے بھیجیں
fit-lend-how = کم سے کم چیزیں جن سے ہر گھر وہ سب سیشن کر سکے جن میں صرف چیزوں کی کمی رکاوٹ ہے۔ پھر گھر گھر کے حساب سے:
fit-lend-nothing = کچھ نہیں: کوئی سیشن صرف چیزوں کی کمی سے نہیں رکتا۔
fit-rethink = دوبارہ سوچیں
fit-rethink-how = جو ایک چوتھائی یا زیادہ گھروں میں نہیں ہو سکتا (یہ حد ہماری اپنی ہے)۔
fit-rethink-nothing = کچھ نہیں: کوئی سیشن یا حصہ ایک چوتھائی گھروں میں نہیں رکتا۔
fit-rethink-homes = { $of } میں سے { $count } گھروں میں نہیں ہو سکتا۔
fit-rethink-why = زیادہ تر وجہ: { $why }۔
fit-survey = سوالنامہ
fit-survey-title = گھر میں کیا ہے؟
fit-survey-lead = تاکہ گھر پر جسمانی تعلیم آپ کے گھر کے مطابق ہو۔ کوئی جواب صحیح یا غلط نہیں، اور کچھ خریدنا نہیں۔ کوئی نام نہ لکھیں۔
fit-ask-code = آپ کا کوڈ
fit-ask-code-how = یہ اسکول آپ کو دیتا ہے۔ نام، پتا یا تاریخ پیدائش کبھی نہ لکھیں۔
fit-ask-code-line = کوڈ
fit-ask-time = وقت اور لوگ
fit-ask-minutes = جسمانی تعلیم کے لیے روزانہ کتنے منٹ ہیں
fit-ask-helpers = کتنے لوگ ساتھ کھیل سکتے ہیں یا قریب رہ سکتے ہیں
fit-ask-needs = آپ کے بچے کی ضرورت
fit-ask-seated = بیٹھ کر جسمانی تعلیم کرتا ہے
fit-ask-low-vision = نظر کمزور ہے
fit-ask-quiet = گھر کے اندر شور نہیں ہونا چاہیے
fit-ask-reads = آپ اسے کیسے پڑھتے ہیں
fit-ask-paper = کاغذ پر
fit-ask-phone = فون پر
fit-ask-language = زبان
fit-ask-floor = خالی فرش
fit-ask-floor-how = سب سے بڑی جگہ جو آپ خالی کر سکتے ہیں، دیواروں اور فرنیچر کے بغیر۔
fit-ask-floor-2 = دوسرا فرش
fit-ask-floor-2-how = اگر ہو: صحن، باغ یا ہال۔
fit-ask-length = لمبائی میٹر میں
fit-ask-width = چوڑائی میٹر میں
fit-ask-height = چھت تک اونچائی، یا ”باہر“
fit-ask-outdoors = یہ باہر ہے
fit-ask-things = آپ کے پاس موجود چیزیں
fit-ask-things-how = لکھیں کہ کتنی ہیں۔ جو نہیں ہیں انہیں چھوڑ دیں۔

## Units
unit-units = تدریسی یونٹ
unit-things = چیزیں: { $things }۔
unit-remember = یاد ہے؟
unit-remember-how = پچھلے سیشنوں کے سوال۔ پہلے یادداشت سے جواب دیں، پھر دیکھیں۔
unit-remember-from = ”{ $session }“ سے
unit-week = ہفتہ نمبر { $week }
unit-none-plain = اسکول کی چھٹی
unit-calendar = اپنے کیلنڈر میں شامل کریں
unit-calendar-about = فون یا کمپیوٹر کے کیلنڈر میں کھلتا ہے۔ دوبارہ شامل کرنے سے جو بدلا ہے وہ نئی جگہ آ جاتا ہے۔
unit-poster = ٹرم کا پوسٹر
unit-poster-about = دیوار کے لیے، ہر سیشن پر نشان لگانے کے خانے کے ساتھ
unit-remember-sheet = ”یاد ہے؟“ کا ورق
unit-remember-about = دوبارہ آنے والے سوال، دن بہ دن؛ جواب الگ صفحے پر
unit-gather-sheet = جمع کرنے کی چیزیں
unit-gather = ایک بار جمع کریں
unit-gather-how = کم سے کم چیزیں جو اس یونٹ کے ہر سیشن کے لیے کافی ہوں۔
unit-gather-by = ہفتہ نمبر { $week } تک
unit-get-out = نکالیں: { $things }
unit-put-back = واپس رکھیں: { $things }
unit-same-things = وہی چیزیں جو پہلے تھیں۔
unit-minutes = آغاز { $time }، دورانیہ { $length }
unit-days = دن
unit-take = ساتھ لے جانے کے لیے
unit-answers = جوابات
unit-answer = جواب
unit-tick = ہر سیشن مکمل کرنے پر ایک خانے میں نشان لگائیں۔
date-with-weekday = { $weekday }، { $date }
date-day-month = { $day } { $month }
date-with-year = { $date } { $year }
weekday-monday = پیر
weekday-tuesday = منگل
weekday-wednesday = بدھ
weekday-thursday = جمعرات
weekday-friday = جمعہ
weekday-saturday = ہفتہ
weekday-sunday = اتوار
month-1 = جنوری
month-2 = فروری
month-3 = مارچ
month-4 = اپریل
month-5 = مئی
month-6 = جون
month-7 = جولائی
month-8 = اگست
month-9 = ستمبر
month-10 = اکتوبر
month-11 = نومبر
month-12 = دسمبر
unit-together = یونٹ اور نصاب کا احاطہ
unit-teachers-lead = یہ یونٹ کیسے بنایا گیا، اور کیوں۔
unit-plan = منصوبہ
unit-session = سیشن
unit-why = یہاں کیوں
unit-changes = چیزیں
unit-why-named = اس دن کے لیے بتایا گیا
unit-why-order = خودکار طور پر یہاں رکھا گیا
unit-why-cover = { $codes } کے لیے شامل کیا گیا
unit-order = خالی دن کیسے بھرے گئے
unit-order-rule = جن سیشنوں کا دن نہیں بتایا گیا انہیں ایسی ترتیب میں رکھا گیا کہ یہ باتیں کم سے کم ہوں، سب سے اہم پہلے: اپنی بنیاد والے سیشن سے پہلے آنے والے سیشن ({ $grounds })، لگاتار تیز محنت والے دن ({ $vigorous })، ایک ہی سیشن لگاتار دو بار ({ $same })، نکالی یا واپس رکھی جانے والی چیزیں ({ $things })، ایک سیشن سے اگلے تک سرگرم وقت میں کمی ({ $lost })؛ اس کے بعد آپ کی اپنی ترتیب۔
unit-order-best = کوئی دوسری ترتیب اس سے بہتر نہیں۔
unit-order-listed = بغیر دن والے سیشن اتنے زیادہ ہیں کہ ہر ترتیب آزمائی نہیں جا سکتی؛ آپ کی ترتیب رکھی گئی۔
unit-effort = ہر ہفتے کی محنت
unit-effort-lead = سیشنوں میں بتائی گئی محنت سے اندازے، اس بچے کے لیے جو یہ سب کرے۔ عالمی ادارہ صحت (2020) پورے ہفتے میں اوسطاً روزانہ 60 منٹ درمیانی سے تیز سرگرمی، اور کم از کم 3 دن تیز سرگرمی کا مشورہ دیتا ہے؛ گھر میں جسمانی تعلیم اس کا ایک حصہ ہے۔
unit-effort-vigorous = تیز
unit-effort-active = درمیانی اور تیز
unit-effort-share = ہفتے کے 420 منٹ میں سے حصہ
unit-effort-days = تیز محنت والے دن
unit-returns = دوبارہ آنے والے سوال
unit-returns-rule = سوال کی باری اس کے سیشن کے اتنے دن بعد آتی ہے: { $after }۔ ہر بار آنے پر اگلا وقفہ، اسی دن سے گن کر، { $growth } گنا ہو جاتا ہے؛ ایک دن میں دوبارہ آنے والے سوالوں کی حد: { $most }، جن کی باری پہلے تھی وہ پہلے۔
unit-returns-time = { $time ->
    [one] پہلی بار
   *[other] بار نمبر { $time }
}
unit-cover = یونٹ میں کیا کیا آتا ہے
unit-cover-met = آپ کے بتائے ہوئے سیشنوں سے پورے ہوئے: { $codes }۔
unit-cover-added = ”{ $session }“ کو { $codes } کے لیے شامل کیا گیا۔
unit-cover-best = اس سے کم سیشن اتنا احاطہ نہیں کرتے۔ برابر کی صورتوں میں سب سے چھوٹی لی جاتی ہے، پھر پتے کے حساب سے پہلی۔
unit-cover-unproven = شاید کم بھی کافی ہوں: سیشن اتنے زیادہ ہیں کہ سب کچھ آزمایا نہیں جا سکتا۔
unit-cover-none = ان عمروں کا کوئی سیشن انہیں پورا نہیں کرتا: { $codes }۔
unit-cover-room = ان کے لیے کوئی دن نہیں بچا: { $codes }۔
unit-left-over = ان سیشنوں کو کوئی دن نہیں ملا: { $sessions }۔
coverage-title = نصاب کا احاطہ
coverage-lead = کون سے سیشن کون سے حاصلاتِ تعلم پورے کرتے ہیں، اور کن جماعتوں کے لیے۔ سیشن کسی جماعت کے لیے تب شمار ہوتا ہے جب وہ اس جماعت کی سب عمروں کے لیے ہو۔
coverage-sessions = حاصلاتِ تعلم اور سیشن
coverage-groups = حاصلاتِ تعلم اور جماعتیں
coverage-statement = حاصلِ تعلم
coverage-count = سیشن
coverage-gap = کمی
coverage-often = اکثر
coverage-meets = پورا کرتا ہے
coverage-key = ”کمی“: وہ حاصلِ تعلم جسے اس کی کسی جماعت کے لیے کوئی سیشن پورا نہیں کرتا۔ ”اکثر“: وہ جسے کم از کم { $least } سیشن پورا کریں، اور جو اوسط کے دو گنا سے زیادہ ہوں۔
coverage-csv = پورا جدول (CSV)
coverage-no-gap = ہر حاصلِ تعلم اپنی ہر جماعت کے لیے پورا ہوتا ہے۔
coverage-not-for = اس جماعت کے لیے نہیں

## Marks at home
home-keeps = آپ جو یہاں لکھتے ہیں وہ اسی آلے پر، اسی براؤزر میں رہتا ہے، جب تک آپ اسے مٹا نہ دیں۔ خود بخود کچھ نہیں بھیجا جاتا۔
home-keeps-not = یہ براؤزر اس صفحے کا کچھ محفوظ نہیں رکھتا۔ صفحہ بند کرنے پر آپ کا لکھا مٹ جائے گا: پہلے اسے بھیجیں یا محفوظ کریں۔
home-known = آپ کا کوڈ کون سا ہے؟
home-another = فرضی نام شامل کریں
home-code-use = یہ کوڈ استعمال کریں
home-code-help = استاد کا دیا ہوا کوڈ، جیسے K07، ہر بچے کے لیے الگ۔ نام، پتا یا فون نمبر کبھی نہیں۔
home-code-first = ابھی محفوظ نہیں ہوا: پہلے اوپر اپنا فرضی نام لکھیں۔
home-write = ہر نتیجہ ویسا ہی لکھیں جیسا پڑھیں، جیسے { $mark }۔ x اس کوشش کے لیے ہے جو شمار نہیں ہوئی۔
home-no-mark = یہ کوشش شمار نہیں ہوئی
home-attempts = کوششیں
home-best-today = دن کا بہترین
home-personal-best = میرا بہترین
home-change = تبدیلی
home-since = { $date } سے تبدیلی
home-standing-first = آپ کا پہلا نتیجہ: اب آپ کے پاس کچھ ہے جس سے آگے بڑھنا ہے۔
home-standing-new = آپ کا نیا بہترین!
home-standing-equalled = آپ کے بہترین کے برابر۔
home-days = محفوظ دن: درست کرنے کے لیے ایک چنیں
home-day-to-come = آج کا یا اس سے پہلے کا دن چنیں۔
home-refused-number = یہ پڑھا نہیں جا سکتا۔ نتیجہ لکھیں، جیسے { $mark }، یا x۔
home-refused-unit = یہ اکائی یہاں ٹھیک نہیں۔ نتیجہ لکھیں، جیسے { $mark }۔
home-refused-doubt = یہ کون سی اکائی ہے؟ وہ بھی لکھیں، جیسے { $mark }۔
home-refused-seconds = منٹ، پھر : کا نشان، پھر سیکنڈ کے دو ہندسے 59 تک لکھیں، جیسے 1:05۔
home-refused-whole = پورا عدد لکھیں، جیسے { $mark }۔
home-refused-large = یہ بہت ہی بڑا ہے۔ نتیجہ لکھیں، جیسے { $mark }۔
home-refused-none = پہلے اپنا فرضی نام لکھیں۔
home-refused-name = یہ اصل نام لگتا ہے۔ اس کی جگہ استاد کا دیا ہوا کوڈ لکھیں، جیسے K07۔
home-refused-mail = یہ کوئی پتا، نمبر یا تاریخ لگتی ہے جس سے آپ کی پہچان ہو سکتی ہے۔ استاد کا دیا ہوا کوڈ لکھیں، جیسے K07۔
home-refused-signs = کوڈ میں زیادہ سے زیادہ 24 حروف، ہندسے، نقطے اور ہائفن ہوتے ہیں، جیسے K07۔
home-answer = میرا جواب
home-answer-said = میں نے جواب زور سے کہہ دیا ہے
home-personal = ای میل کے پتے اور فون نمبر نکال دیں: یہ جواب محفوظ نہیں کیا گیا۔
home-send = میرے استاد کو بھیجیں
home-send-how = صرف جب آپ چاہیں، اور اسی طریقے سے جو استاد نے بتایا ہو: متن پیغام یا ای میل میں نقل کریں، فائل دیں، یا اسے چھاپیں۔ براہ کرم کوئی نام نہ لکھیں، جوابوں میں بھی نہیں۔
home-send-nothing = ابھی بھیجنے کو کچھ نہیں: فرضی نام، اور نتیجہ یا جواب لکھیں۔
home-send-text = جو کچھ بھیجا جائے گا
home-copy = متن نقل کریں
home-copied = نقل ہو گیا۔
home-share = شیئر کریں …
home-file = فائل کے طور پر محفوظ کریں
home-print = چھاپیں
home-export = { $code } کا سب کچھ فائل میں محفوظ کریں
home-delete = { $code } کا سب کچھ مٹا دیں
home-sure = اس آلے پر { $code } کا جو کچھ محفوظ ہے، وہ سب مٹا دیں؟ یہ واپس نہیں آ سکے گا۔
home-deleted = مٹا دیا گیا۔
home-delete-note = جو آپ یہاں مٹائیں وہ اس آلے سے ہٹ جاتا ہے۔ جو آپ بھیج چکے ہیں وہ واپس نہیں ہوتا۔
progress-own-words = بچوں کے اپنے الفاظ میں: ان میں کوئی نام ہو سکتا ہے۔ کسی کو دکھانے سے پہلے پڑھ لیں۔

## Pages: teachers
teachers-session = سیشن
teachers-active-short = درمیانی اور تیز
teachers-grade = پڑھائی کا درجہ
teachers-matrix = سامان کا جدول
teachers-matrix-how = سیشن میں ہر چیز ایک وقت میں کتنی چاہیے؛ قوسین میں وہ جن کے بغیر بھی کام چل سکتا ہے۔
teachers-matrix-most = ایک وقت میں زیادہ سے زیادہ
teachers-family-page = گھر والوں کا صفحہ

## Pages: choosing, doing, keeping
feed = نئے اور بدلے ہوئے سیشن
front-find = تلاش کریں
front-find-how = کوئی لفظ، جیسے کسی کھیل یا چیز کا نام
front-relax = ”{ $answer }“ کے بغیر: { $count }
now-start = ابھی کریں
now-start-how = ایک وقت میں ایک حصہ، ٹائمر کے ساتھ۔
now-leave = پورا صفحہ
now-back = پیچھے
now-next = اگلا
now-place = { $number } از { $total }
now-after = نتائج اور جائزہ
timer = ٹائمر
timer-left = باقی وقت
timer-start = شروع
timer-pause = وقفہ
timer-on = جاری رکھیں
timer-again = دوبارہ شروع کریں
timer-explain = دیکھیں اور سنیں
timer-set-up = جگہ اور چیزیں تیار کریں
timer-work = حرکت کریں
timer-rest = آرام کریں
timer-recover = سانس بحال کریں
timer-round = دور { $number } از { $total }
timer-done = شاباش
timer-sound = گھنٹی
timer-buzz = تھرتھراہٹ
timer-voice = آواز

## Library
retired-note = یہ سیشن اب استعمال میں نہیں۔ اسے صرف پڑھنے کے لیے یہاں رکھا گیا ہے؛ کرنے کے لیے کوئی اور سیشن چنیں۔
borrowed-from = ”{ $pack }“ سے لیا گیا
borrowed-changed = ”{ $pack }“ سے لیا گیا، تبدیلی کے ساتھ
borrowed-changed-by = ”{ $pack }“ سے لیا گیا؛ تبدیلی از { $school }

## Editions and what changed
edition-mark = ایڈیشن { $mark }
edition = کیا میرا چھپا ہوا ورق تازہ ہے؟
edition-how = ہر ورق کے نیچے اس کا ایڈیشن لکھا ہے۔ موجودہ ایڈیشن یہ ہیں:
edition-ask = میرے ورق کا ایڈیشن
edition-current = { $mark } موجودہ ایڈیشن ہے ({ $sheet })۔
edition-changed = { $mark } موجودہ ایڈیشن نہیں ہے۔ ورق اس کے بعد بدل گیا ہے، یا یہ کسی اور سیشن کا ہے: اسے دوبارہ چھاپیں۔
edition-no-mark = ایڈیشن میں چار حروف یا ہندسے ہوتے ہیں، I، L، O اور U کے بغیر۔
says-title = عنوان
says-summary = خلاصہ
says-surface = پاؤں تلے
says-limits = کیا مناسب ہے
says-instead = اس کی جگہ
says-note = نوٹ
says-things-for = چیزیں کس کے لیے ہیں
says-school = اسکول
says-picture = تصویر
says-by = کس نے جانچا
says-look-again = دوبارہ دیکھیں
says-explain = سمجھانا
says-set-up = تیاری
says-work = مشق
says-rest = آرام
says-rounds = دور
says-recover = سانس بحال کرنا
says-effort = محنت
says-how = کیسے کریں
says-key-point = اہم نکتہ
says-attempts = کوششیں
says-movements = حرکات
says-version = دوسری شکل
says-flight = پرواز
says-like = اس جیسا
says-step = سب سے چھوٹا فرق
says-reference = موازنے کے لیے
says-lengths = کم سے کم / زیادہ سے زیادہ وقت (اہمیت)
since = کیا بدلا
since-how = { $when } سے۔
since-review = کیا بدلا، جائزے کے لیے
since-became = { $what }: پہلے { $before }، اب { $now }
since-reworded = { $what }: الفاظ بدلے
since-added = { $what }، اضافہ: { $text }
since-gone = { $what }، ہٹایا گیا: { $text }
since-reordered = { $what }: ترتیب بدلی
since-part-added = نیا حصہ
since-part-gone = حصہ ہٹا دیا گیا
since-parts-reordered = حصوں کی ترتیب بدل گئی ہے
since-before = پہلے
since-now = اب
since-new = نئے سیشن
since-no-more = اب یہاں نہیں
since-changed = بدلے ہوئے سیشن
since-shared = ہر سیشن کے لیے
since-same = { $count ->
    [one] ایک سیشن ویسا ہی ہے جیسا تھا۔
   *[other] { $count } سیشن ویسے ہی ہیں جیسے تھے۔
}
since-nothing = کچھ نہیں بدلا۔
since-small = صرف چھوٹی درستیاں۔
since-print = دوبارہ چھاپیں
since-keep = جن ورقوں کا یہاں ذکر نہیں وہ اب بھی ٹھیک ہیں۔
since-all-cards = سب
since-marks = ایڈیشن: پہلے { $before }، اب { $now }
book-access = ہر تصویر لفظوں میں بیان کی گئی ہے۔ سیشنوں میں حرکت کرنی ہوتی ہے؛ ہر حصے میں بتایا گیا ہے کہ اسے آسان کیسے بنائیں، اور جہاں دوسری شکلیں ہیں وہ بھی بتائی گئی ہیں۔

## Figures
figure-says = { $view }، { $on }: { $angles }۔
figure-straight = جسم سیدھا
figure-angle = { $part } – { $ways }
figure-left = بائیں طرف { $part }
figure-right = دائیں طرف { $part }
figure-handed = یہ دائیں ہاتھ کے لیے دکھایا گیا ہے؛ بائیں ہاتھ والے اسے الٹی طرف سے کریں۔
figure-arrow = تیر: { $part } – { $way }۔
figure-moving = حرکت دکھائیں
figure-moment = تصویر { $number }
figure-view-side = پہلو سے منظر
figure-view-other-side = دوسرے پہلو سے منظر
figure-view-front = سامنے سے منظر
figure-view-back = پیچھے سے منظر
figure-view-corner = ترچھا منظر
figure-on-both-feet = دونوں پاؤں پر کھڑے ہو کر
figure-on-left-foot = بائیں پاؤں پر کھڑے ہو کر
figure-on-right-foot = دائیں پاؤں پر کھڑے ہو کر
figure-on-hands-and-feet = ہاتھوں اور پاؤں کے بل
figure-on-hands-and-knees = ہاتھوں اور گھٹنوں کے بل
figure-on-knees = گھٹنوں کے بل
figure-on-one-knee = ایک گھٹنے کے بل
figure-on-seat = فرش پر بیٹھ کر
figure-on-chair = کرسی پر بیٹھ کر
figure-on-wheelchair = وہیل چیئر پر بیٹھ کر
figure-on-back = پیٹھ کے بل لیٹ کر
figure-on-front = پیٹ کے بل لیٹ کر
figure-on-left-side = بائیں کروٹ لیٹ کر
figure-on-right-side = دائیں کروٹ لیٹ کر
figure-on-air = ہوا میں
figure-part-trunk = دھڑ
figure-part-back = کمر
figure-part-head = سر
figure-part-body = جسم
figure-part-arms = دونوں بازو
figure-part-arm = بازو
figure-part-elbows = دونوں کہنیاں
figure-part-elbow = کہنی
figure-part-wrists = دونوں کلائیاں
figure-part-wrist = کلائی
figure-part-hands = دونوں ہاتھ
figure-part-hand = ہاتھ
figure-part-legs = دونوں ٹانگیں
figure-part-leg = ٹانگ
figure-part-knees = دونوں گھٹنے
figure-part-knee = گھٹنا
figure-part-feet = دونوں پاؤں
figure-part-foot = پاؤں
figure-part-thing = ہاتھ میں پکڑی چیز
figure-way-forward = آگے
figure-way-back = پیچھے
figure-way-up = اوپر
figure-way-down = نیچے
figure-way-left = بائیں طرف
figure-way-right = دائیں طرف
figure-way-forward-and-up = آگے اور اوپر
figure-way-forward-and-down = آگے اور نیچے
figure-way-back-and-up = پیچھے اور اوپر
figure-way-sideways = پہلو کی طرف
figure-way-across = جسم کے آر پار
figure-way-bent = خم
figure-way-rounded = آگے کو گولائی
figure-way-arched = پیچھے کو خم
figure-way-pointed = پنجہ تان کر
figure-way-pulled-up = پنجہ پنڈلی کی طرف کھینچ کر
figure-holds-ball = ہاتھ میں گیند۔
figure-holds-bag = ہاتھ میں دانوں بھری تھیلی۔
figure-holds-cushion = ہاتھ میں تکیہ۔
figure-holds-rope = ہاتھ میں رسی یا تولیہ۔
figure-holds-weight = ہاتھ میں وزن۔
figure-holds-tub = ہاتھ میں ڈبہ یا برتن۔
figure-holds-stick = ہاتھ میں چھڑی۔
figure-holds-sheet = ہاتھ میں کاغذ۔
figure-with-line = فرش پر ایک لکیر۔
figure-with-marker = سامنے ایک نشان۔
figure-with-mat = چٹائی پر۔
figure-with-wall = سامنے دیوار۔
figure-with-ball = سامنے گیند۔
figure-with-cushion = نیچے تکیہ۔
figure-with-chair = سامنے کرسی۔
figure-with-skittles = سامنے نشانے کی بوتلیں۔
poses-title = جسم کی پوزیشنیں
poses-lead = ”figure:“ میں پوزیشن کا نام لکھیں، اور جو ضرورت ہو وہ بدل لیں: {"{"}pose: ready stance, knees: bent 70{"}"}۔
poses-back = اساتذہ کے لیے
