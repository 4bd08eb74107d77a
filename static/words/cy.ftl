### Y geiriau y mae teuluoedd ac athrawon addysg gorfforol yn eu darllen, ar dudalennau ac ar bapur.

## Shared

part-warm-up = Cynhesu
part-technique = Techneg
part-challenge = Her
part-stretch = Tasg ymestyn
part-cool-down = Oeri

effort-rest = Gorffwys
effort-light = Ysgafn
effort-moderate = Cymedrol
effort-vigorous = Egnïol

activity-athletics = Athletau
activity-dance = Dawns
activity-fitness = Ffitrwydd
activity-games = Gemau
activity-gymnastics = Gymnasteg
activity-outdoor = Awyr agored

place-indoors = Dan do
place-outdoors = Yn yr awyr agored
place-both = Dan do neu yn yr awyr agored

surface-grass = glaswellt
surface-carpet = carped
surface-mat = mat
surface-hard-floor = llawr caled
surface-paving = palmant
surface-sand = tywod
surface-soft-play = llawr chwarae meddal

piece-explain = esbonio { $amount }
piece-set-up = gosod { $amount }
piece-work = gweithio { $amount }
piece-rest = gorffwys { $amount }
piece-rounds = { $count ->
    [zero] dim rownd
    [one] { $count } rownd
    [two] { $count } rownd
    [few] { $count } rownd
    [many] { $count } rownd
   *[other] { $count } rownd
}
piece-recover = dod atoch eich hun { $amount }
piece-counts = cyfrif { $counts } ar { $tempo } y funud

minutes = { $count ->
    [zero] { $count } munud
    [one] { $count } munud
    [two] { $count } funud
    [few] { $count } munud
    [many] { $count } munud
   *[other] { $count } munud
}
ages = Oed { $ages }
optional = os yw gennych
soft = meddal
list-or = { $rest } neu { $last }

kind-recall = Cofio
kind-explain = Esbonio
kind-compare = Cymharu
kind-apply = Defnyddio
kind-reflect = Edrych yn ôl

task-inform = cyflwyno
task-extend = ehangu
task-refine = mireinio
task-apply = cymhwyso

standing-draft = Drafft
standing-reviewed = Wedi’i adolygu
standing-approved = Wedi’i gymeradwyo
standing-retired = Wedi’i dynnu’n ôl

adapt-space = Lle arall
adapt-task = Tasg arall
adapt-equipment = Offer arall
adapt-people = Pobl eraill

sheet-cards = Cardiau
sheet-home-guide = Canllaw i’r cartref
sheet-record = Taflen gofnodi
sheet-review = Taflen adolygu

key-points = Pwyntiau allweddol
easier = Haws
harder = Anoddach
faults = Camgymeriadau cyffredin
fault-see = Gweld
fault-say = Dweud
adult-nearby = Mae oedolyn yn aros gerllaw
adult-helping = Mae oedolyn yn helpu
landing-zone = Man glanio
stop-and-collect = Stopio a chasglu
cautions = Cymerwch ofal
local-rules = Rheolau lleol, asesiad risg yr ysgol ac ymarfer trwyddedig sy’n dod gyntaf. Cyngor sydd ar y tudalennau hyn. Ni allant addo bod gweithgaredd yn ddiogel yn eich cartref chi.
attempt = Ymgais
best = Gorau
mark-in = Canlyniad ({ $unit })
measure-distance = Mesurwch y pellter mewn { $unit }.
measure-time = Mesurwch yr amser mewn { $unit }.
measure-count = Cyfrwch: { $unit }.
measure-points = Adiwch y pwyntiau.
measure-criteria = Chwiliwch am y rhain:
attempts = { $count ->
    [zero] Nid oes ymgais yn cyfrif.
    [one] Mae un ymgais yn cyfrif.
    [two] Mae dwy ymgais yn cyfrif.
    [few] Mae tair ymgais yn cyfrif.
    [many] Mae chwe ymgais yn cyfrif.
   *[other] Mae { $count } ymgais yn cyfrif.
}
better-more = Mwy sydd orau.
better-less = Llai sydd orau.
code-name = Ffugenw
date = Dyddiad
licence = Trwydded
credit = Awduron

## Plans, on pages and on paper

plan = Cynllun llawr
plan-same = Yr un llawr ag yn
plan-says = Cynllun llawr wrth raddfa, { $length } o hyd a { $width } o led.
plan-stand = Dechreuwch yma
plan-wait = Arhoswch yma
plan-line = Y llinell
plan-wall = Y wal
plan-moving = Lle i symud
plan-run-up = Y tu ôl i’r llinell
plan-landing = Glanio
plan-stopping = Lle i stopio
plan-clear = I’w gadw’n glir
plan-floor = Eich llawr
plan-for = Ar gyfer { $parts }
plan-headroom = Uchder uwchben: { $height }.
plan-askew = Gosodwch ef o gornel i gornel: dim ond ar ogwydd mae’n ffitio.
plan-unfit = Mae angen mwy o lawr nag y mae’r sesiwn hon yn ei nodi: ewch i rywle mwy.
setting-out = Gosod allan â thâp mesur
tape-line = Marciwch y llinell, { $length } o led.
tape-right-angle = Yn syth ymlaen: marciwch { $along } ar hyd y llinell a { $away } o’i phen. Mae’n syth pan fydd { $across } rhwng y ddau farc.
tape-diagonals = Marciwch { $length } wrth { $width }. Mae’n sgwâr pan fydd y ddwy groeslin yn { $diagonal }.
tape-sector = Ochrau: dau farc { $along } o ganol y llinell, { $apart } ar wahân.
tape-reach = Clir: { $margin } arall y tu hwnt i { $reach }.
tape-around = Cadwch { $margin } yn glir o’i gwmpas.
tape-wait = Aros: { $behind } y tu ôl i’r llinell.

slots = Amser gwahanol
slots-how = Mae’r cynhesu a’r oeri yn aros. Cedwir yr hyn sydd bwysicaf.
slot-in = Mewn { $time }
slot-same = Mae popeth yn ffitio.
slot-drop = Gadewch allan: { $list }.
slot-change = { $part }: { $time }.
slot-change-rounds = { $part }: { $rounds ->
    [zero] dim rownd
    [one] { $rounds } rownd
    [two] { $rounds } rownd
    [few] { $rounds } rownd
    [many] { $rounds } rownd
   *[other] { $rounds } rownd
}, { $time }.
slot-left = Dros ben: { $time }.
slot-too-short = Rhy fyr o { $by }: mae’r hyn sy’n gorfod aros yn cymryd mwy o amser.

effort-talk = Siarad
effort-still = Yr amser hiraf yn sefyll yn llonydd yw { $time }, yn “{ $part }”.

effort-of-day = Mae’r gwaith cymedrol ac egnïol yn { $share }% o’r 60 munud y dydd y mae Sefydliad Iechyd y Byd yn gofyn amdanynt (5 i 17 oed).
effort-rhythm = { $part }: { $work } o waith i { $rest } o orffwys ({ $ratio }).
effort-usual = I ddechrau, mae { $least } i { $most } s o waith caled a chymaint o orffwys yn arferol yn yr oed hwn (arfer cyffredin).
effort-like = Mae { $part } fel “{ $like }” yn y Compendium of Physical Activities 2011: { $met } MET, { $band } (cymedrol o { $from }). Ffigur oedolion: amcangyfrif i blant.

floor-how = Ar y llawr
floor-fits = yn ffitio
floor-askew = yn ffitio ar ogwydd
floor-unfit = ddim yn ffitio
floor-unsaid = dim llawr wedi’i nodi

things-as = { $things } yn lle { $need }
things-together = Digon i bopeth ar unwaith:
things-need = Ei angen
things-at-home = Gartref
things-refused = Ddim yn addas
things-missing = { $count } yn brin
things-once = Casglwch unwaith
things-once-how = Mae’r ychydig bethau hyn yn ddigon i bob sesiwn yma. Nid oes angen dim mewn dau le ar unwaith.
things-all = Popeth, gyda’r hyn all gymryd ei le
sheet-print = Argraffu’r rhestr hon (PDF)
things-once-unproven = Efallai bod rhestr fyrrach.
sheet-gather = Casglwch unwaith
misfit-heavy = rhy drwm: { $found }, gofynnir am { $asked } i oed { $ages }
misfit-light = rhy ysgafn: { $found }, gofynnir am { $asked } i oed { $ages }
misfit-large = rhy fawr: { $found }, gofynnir am { $asked } i oed { $ages }
misfit-small = rhy fach: { $found }, gofynnir am { $asked } i oed { $ages }
misfit-hard = heb nodi ei fod yn feddal
misfit-lacks = heb nodi ei fod yn { $asked }

flight-throw = O’i ollwng ar { $speed } m/s a { $angle }°, { $height } uwchben y llawr, mae’n mynd { $distance } ac yn codi i { $apex }. Mae’n hedfan am { $time } ac yn glanio ar { $landing } m/s.
flight-toss = O’i daflu i fyny ar { $speed } m/s o { $height }, mae’n codi i { $apex } ac yn hedfan am { $time }.
flight-drag = Mae gwrthiant yr aer ar “{ $thing }” wedi’i gyfrif; hebddo byddai’r pellter yn { $distance }.
flight-drag-toss = Mae gwrthiant yr aer ar “{ $thing }” wedi’i gyfrif.
flight-no-drag = Heb wrthiant yr aer.
flight-headroom = Uchder uwchben: { $height }.
flight-room = O dan { $ceiling } y pellaf ar y cyflymder hwn yw { $distance }, ar { $angle }°.
flight-best = Yn ôl y fformiwla { $angle }° sydd orau, gyda { $distance }. Mae cyflymder person yn gostwng wrth i’r ongl godi, felly mae’r tafliad gorau go iawn yn is: am y siot mae’r fformiwla’n dweud tua 42°, ac mae athletwyr yn ei rhoi ar 37° i 38°.

marks-distance = Darllenir canlyniadau i lawr i’r { $step } cyfan (rheolau technegol World Athletics).
marks-time = Darllenir amserau llaw i fyny i’r { $step } nesaf (rheolau technegol World Athletics ar gyfer rhedeg).
marks-time-held = Gorau po hiraf: darllenir amserau i lawr i’r { $step } cyfan.
marks-whole = Rhifau cyfan yw’r canlyniadau.
marks-ties = Yr ymgais orau sy’n cyfrif; yr orau nesaf sy’n torri dadl.
marks-reference = I gymharu: { $mark } ({ $source }). Mae poblogaethau’n wahanol; nid yw’n norm i neb.
marks-formula = Pwyntiau: rhan gyfan { $a } · d^{ $c }, lle mae d y pellter rhwng y canlyniad a { $b }.
marks-points-source = Pwyntiau: { $source }
marks-from = O
marks-points = Pwyntiau
points-list = Pwyntiau: { $list }.
points-from = { $points } o { $mark }
points-within = { $points } hyd at { $mark }

reading-how = Pa mor anodd yw’r brawddegau y mae plentyn yn eu darllen, yn ôl fformiwlâu a wnaed ar gyfer Saesneg. Maent yn gweld hyd, nid ystyr.
reading-words = Geiriau
reading-sentences = Brawddegau
reading-flesch = Rhwyddineb darllen Flesch
reading-kincaid = Gradd Flesch–Kincaid
reading-smog = Gradd SMOG
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = Oed darllen (gradd + 5)
reading-long-words = Geiriau o dair sillaf a mwy:
reading-long-sentences = Nifer y geiriau mewn brawddegau dros 20 gair:

flight-axis-angle = Ongl
flight-axis-distance = Pellter (m)
flight-figure-says = Pellter yn erbyn ongl. Y gorau yw

## Pages

skip = Neidio i’r cynnwys
pages = Tudalennau
nav-front = Pob sesiwn
nav-things = Pethau i’w casglu
nav-teachers = I athrawon
nav-rules = Rheolau ysgrifennu
foot-contact = Gofynnwch i’r ysgol
foot-made = Nid yw’r tudalennau hyn yn llwytho dim o le arall nac yn anfon dim i unman.

front-about = Addysg gorfforol gartref: dewiswch sesiwn yn ôl oed, amser, lle a phethau yn y tŷ.
front-choose = Dewiswch sesiwn
front-choose-how = Atebwch fel y mynnwch. Dim ond yr hyn sy’n addas sy’n aros yn y rhestr.
front-sessions = Sesiynau
front-any = unrhyw un
front-age = Oed y plentyn
front-minutes = Amser sydd gennych
front-up-to = hyd at { $count } mun
front-space = Lle clir
front-space-rug = ryg, 2 m × 2 m
front-space-small-room = ystafell fach, 3 m × 3 m
front-space-big-room = ystafell fawr, 5 m × 4 m
front-place = Ble
front-activity = Gweithgaredd
front-lacking = Nid oes gennym …
front-lacking-how = (na dim i gymryd ei le)
front-more = Lle, gweithgaredd a phethau yn y tŷ
front-reset = Dechrau eto
front-shown = Yn dangos:
front-none = Nid oes sesiwn sy’n ateb hynny i gyd. Tynnwch un ateb.
front-needs = I’w casglu:
front-needs-nothing = Dim i’w gasglu
front-cards = Cardiau i’w hargraffu
front-minutes-unit = mun

fact-ages = Oed
fact-minutes = Munudau
fact-space = Lle clir
fact-place = Ble
fact-effort = Ymdrech, gan mwyaf

space = Lle
space-needs = { $size } o lawr clir.
space-headroom = Uchder uwchben { $height }.
space-surface = Da dan draed: { $list }.

before = Cyn dechrau
running-order = Trefn y sesiwn
running-how = Mae bar talach yn waith caletach.
line-label = Llinell amser o { $minutes } munud, un bar i bob rhan
success = Beth alla’ i ei wneud erbyn y diwedd
things = Pethau i’w casglu
things-nothing = Dim byd. Rydych chi’n barod.
things-household = Mae un ym mhob cartref.
things-limits = Beth sy’n addas: { $limits }
stands-in = Neu defnyddiwch
for-parts = Ar gyfer:
adult = Amser oedolyn
adult-nearby-for = Gerllaw am { $time }.
adult-helping-for = Yn helpu am { $time }.
adult-none = Nid oes angen. Arhoswch o fewn clyw.
film = Ffilm
from-to = { $from } i { $to }
beats-label = Gweithio a gorffwys, wedi’u tynnu wrth raddfa
how-measured = Sut i fesur
throwing = Cyn i ddim hedfan
tick-rounds = Rowndiau wedi’u gwneud
finish = Diwedd
finish-say = Yfa ychydig o ddŵr. Yna ysgrifenna dy ganlyniadau.
marks = Fy nghanlyniadau
marks-how = Defnyddia ffugenw, byth dy enw llawn. Ti biau dy ganlyniadau: cura dy orau dy hun.
next-time = Y tro nesaf byddaf yn
review = Meddylia
review-how = Dyweda neu ysgrifenna dy ateb yn gyntaf. Yna agora ein hateb ni.
review-answer = Ein hateb ni
adaptations = Ei addasu i chi
papers = Argraffu
sheet-cards-about = un rhan i bob cerdyn, pedwar i’r dudalen
sheet-home-guide-about = un dudalen: llinell amser, pethau, lle, rhybuddion
sheet-record-about = tabl i ysgrifennu canlyniadau
sheet-review-about = cwestiynau, a’r atebion ar dudalen ar wahân
draft-note = Drafft: nid yw’r sesiwn hon wedi’i hadolygu eto.

things-intro = Popeth y mae’r sesiynau’n gofyn amdano, a’r hyn all gymryd ei le. Ticiwch wrth gael hyd iddynt.
things-for = Sesiynau
things-extras = Da o beth eu cael

rules-intro = Beth mae homeground yn chwilio amdano wrth archwilio ffeiliau sesiwn, a pham. Mae’n cynghori; nid yw byth yn tystio bod sesiwn yn ddiogel.
rules-contents = Codau
rules-why = Pam
rules-source = Ffynhonnell:
rules-bad = Nid fel hyn
rules-good = Fel hyn
severity-problem = Problem
severity-warning = Rhybudd
severity-advice = Cyngor

teachers-intro = Pob sesiwn gyda’i llinell amser, ei hatebion a’i statws. Amcangyfrifon o ymdrech y rhannau yw’r ffigurau ymdrech.
teachers-contents = Sesiynau
teachers-active = Cymedrol ac egnïol: { $time }, { $share }% o’r amser (amcangyfrif)
teachers-plans = Cynlluniau: ymdrech, amser, llawr, pethau, hedfan, canlyniadau, darllen
teachers-floors = Lloriau
teachers-flights = Hedfan
teachers-marks = Canlyniadau a phwyntiau
teachers-reading = Darllen
teachers-part = Rhan
teachers-from = O
teachers-time = Amser
teachers-effort = Ymdrech
teachers-task = Tasg
teachers-objectives = Amcanion
teachers-success = Meini prawf llwyddiant
teachers-codes = Cwricwlwm
teachers-answers = Cwestiynau adolygu ac atebion
teachers-standing = Statws
teachers-by = gan { $by }
teachers-on = ar { $on }
teachers-look-again = edrych eto { $on }
teachers-changed = Beth a newidiwyd
teachers-curriculum = Cwmpas y cwricwlwm
teachers-uncovered = dim sesiwn eto

## Paper

cards-number = Cerdyn { $number } o { $total }
cards-continued = (parhad)
cards-see-guide = Yn y canllaw i’r cartref mae trefn y sesiwn, beth all gymryd lle pob peth, a phob rhybudd.
cards-adapt = I’ch cartref ac i chi
cards-helper = I bwy bynnag sy’n helpu
cards-look = Beth i edrych amdano
cards-look-how = Beth welwch chi → beth i’w ddweud. Un peth ar y tro.
or-use = neu defnyddiwch
sheet-number = Tudalen { $number } o { $total }
fact-time = Amser
review-paper-how = Dyweda dy ateb yn uchel yn gyntaf. Yna ysgrifenna ef.
review-answers = Atebion
review-own = Dy ateb dy hun.
review-help = Atebion enghreifftiol yw’r rhain. Mae geiriau plentyn cystal os ydynt yn golygu’r un peth.
fact-headroom = Uchder uwchben
record-look-for = Chwilio am

## Quantities

amount-m = { $number } m
amount-cm = { $number } cm
amount-mm = { $number } mm
amount-kg = { $number } kg
amount-g = { $number } g
amount-min = { $number } mun
amount-s = { $number } eil
amount-min-s = { $minutes } { $seconds }
amount-at-most = { $amount } ar y mwyaf
amount-at-least = { $amount } o leiaf
amount-any = unrhyw un

## Languages

languages = Ieithoedd eraill
language-name = Cymraeg
shown-in-original = Nid yw’r sesiwn hon wedi’i chyfieithu eto. Fe’i dangosir yn ei hiaith wreiddiol ({ $language }).
translation-old = Mae’r gwreiddiol wedi newid ers y cyfieithiad hwn.
language-unnamed = ei hiaith
