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
sheet-cards-about = un rhan i bob cerdyn, { $cards } i’r dudalen
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

## To scan, to copy, to send

scan-page = Tudalen y sesiwn hon
scan-film = Y ffilm

no-printer = Dim argraffydd?
no-printer-how = Copïwch hwn â llaw: tua { $minutes } munud. Neu cadwch ef fel testun, neu anfonwch ef fel negeseuon.
copy-file = Copïo â llaw (testun)
texts-file = Negeseuon testun (testun)
no-printer-needs = Bydd angen: { $list }.
no-printer-read = Darllenwch bob rhybudd ar y dudalen yn gyntaf.
no-printer-rules = Rheolau’r ysgol a’i hasesiad risg sy’n dod gyntaf.

## Sheets

sheet-large-print = Cardiau print bras
sheet-large-print-about = dim geiriau llai na 18 pwynt, un cerdyn i’r dudalen
sheet-class-set = Set dosbarth
sheet-class-set-about = { $copies ->
    [zero] dim setiau o gardiau
    [one] un set o gardiau â rhif arni
    [two] dwy set o gardiau â rhifau arnynt
    [few] tair set o gardiau â rhifau arnynt
    [many] chwe set o gardiau â rhifau arnynt
   *[other] { $copies } set o gardiau â rhifau arnynt
}, { $cards } i’r dudalen
sheet-booklet = Llyfryn
sheet-booklet-about = argraffwch ar y ddwy ochr, gan droi ar yr ymyl fer, a phlygwch y pentwr unwaith
sheet-poster = Poster
sheet-poster-about = y pwyntiau allweddol, i’w darllen o 2 m
sheet-record-class = Taflen gofnodi i ddosbarth
sheet-record-class-about = ffugenwau i lawr yr ochr
sheet-record-week = Taflen gofnodi am wythnos
sheet-record-week-about = colofn i bob diwrnod
both-long = argraffwch ar y ddwy ochr, gan droi ar yr ymyl hir
both-short = argraffwch ar y ddwy ochr, gan droi ar yr ymyl fer
cards-back = Cefn { $number } o { $total }
cards-set = Set { $number } o { $total }
notes = Nodiadau
booklet-inside = Y tu mewn
record-class-tick = Ticiwch yr hyn a welsoch. Gadewch fwlch lle na welsoch ddim.
record-week-how = Ticia beth wnest ti bob dydd, ac ysgrifenna dy ganlyniad gorau o’r diwrnod.
record-done = Fe wnes i hyn
record-best-marks = Fy nghanlyniad gorau
record-week-best = Beth aeth orau yr wythnos hon?
week-of = Wythnos yn dechrau
day-1 = Llun
day-2 = Maw
day-3 = Mer
day-4 = Iau
day-5 = Gwe
day-6 = Sad
day-7 = Sul

## Progress

progress-title = Cynnydd y dosbarth
progress-private = I’r athro neu’r athrawes. Ffugenwau’n unig, dim enwau. Cadwch hyd { $date }, yna dilëwch: homeground progress --to … --forget
progress-how = Mae pob newid yn cymharu plentyn â’i ganlyniad cynharach ei hun. Mae canlyniadau ffitrwydd yn breifat: nid gradd ydynt, na ffordd o gymharu plant â’i gilydd.
progress-rule = Mae newid yn fwy na’r amrywiad arferol o ddydd i ddydd pan fydd dros ddau wall nodweddiadol un ymgais (Hopkins 2000: 1.5 i 2). Daw’r gwall nodweddiadol o ymgeisiau a wnaed fwy nag unwaith ar yr un diwrnod: mae’r gwahaniaeth o ddydd i ddydd ar ben hynny.
progress-contents = Yn yr adroddiad hwn
progress-children = Plant
progress-class = Y dosbarth
progress-class-small = Anfonodd llai na { $fewest } o blant ganlyniadau: ni ddangosir ffigurau’r dosbarth, gan y byddent yn datgelu pwy yw rhywun.
progress-first = Diwrnod cyntaf
progress-latest = Diwrnod diweddaraf
progress-median = Canolrif
progress-quartiles = Chwarteli
progress-range = Lleiaf a mwyaf
progress-deviation = Gwyriad safonol
progress-noise = Gwall nodweddiadol un ymgais
progress-noise-from = o { $pairs } pâr o ymgeisiau
progress-noise-unknown = ddim yn hysbys: rhy ychydig o ymgeisiau a wnaed fwy nag unwaith
progress-smallest = Y newid lleiaf sydd o bwys
progress-wobble = Mwy na’r amrywiad arferol uwchlaw
progress-spread-says = Dot i bob plentyn, blwch o chwartel i chwartel, llinell drwchus wrth y canolrif.
progress-strip-says = Canlyniadau { $code } yn { $task }, ddydd ar ôl dydd. Mae’r ffigurau yn y tabl gerllaw.
progress-better-more = Gorau po bellaf i’r dde.
progress-better-less = Gorau po bellaf i’r chwith.
progress-child-table = Fesul plentyn
progress-code = Ffugenw
progress-place = Safle
progress-first-mark = Cyntaf
progress-last-mark = Diwethaf
progress-best-mark = Gorau
progress-best-on = { $mark } ar { $date }
progress-change = Newid
progress-verdict = Newid go iawn?
progress-tries = Ymgeisiau
progress-points = Pwyntiau
progress-over-time = Dros amser
progress-next = Nesaf, a pham
progress-missing = Heb anfon y rhain eto
progress-missing-none = Mae pawb wedi anfon rhywbeth.
progress-silent = Heb anfon dim o gwbl
progress-faults = Camgymeriadau cyffredin a diciwyd
progress-few = llai na { $fewest }
progress-send = Beth i’w anfon nesaf
progress-comments = Sylwadau adroddiad i’w golygu
progress-questions = Cwestiynau adolygu
progress-questions-how = Yr athro neu’r athrawes sydd i ddweud beth sy’n gywir. Dim ond casglu’r atebion a wneir yma, a rhoi’r rhai tebyg gyda’i gilydd.
progress-right = cywir
progress-wrong = ddim eto
progress-unmarked = heb ei farcio
progress-answers-few = Atebodd llai na { $fewest } o blant: ni ddangosir eu hatebion yma.
progress-answers = Atebion, fel y’u rhoddwyd
progress-model-answer = Ein hateb ni
progress-unread = Heb eu darllen
progress-unread-how = Gadawyd y celloedd hyn allan. Mae popeth arall yn eu rhesi yn cyfrif.
progress-row = Rhes
progress-column = Colofn
progress-says = Beth sydd o’i le
progress-file = Ffeil

progress-short-once = canlyniad cyntaf
progress-short-noise-unknown = rhy ychydig o ymgeisiau i ddweud
progress-short-too-close = rhy agos i ddweud
progress-short-too-small = newid go iawn, ond bach iawn
progress-short-better = gwell, o fwy na’r amrywiad arferol o ddydd i ddydd
progress-short-worse = ddim cystal, o fwy na’r amrywiad arferol o ddydd i ddydd

progress-child-once = Dyma dy ddiwrnod cyntaf. Nawr mae gen ti ganlyniad i’w guro.
progress-child-noise-unknown = Mae rhy ychydig o ymgeisiau eto i ddweud a yw hynny’n fwy na’r amrywiad arferol o ddydd i ddydd.
progress-child-too-close = Mae hynny’n rhy agos i ddweud: mae canlyniadau’n amrywio gymaint â hynny o un ymgais i’r llall.
progress-child-too-small = Mae hynny’n fwy na’r amrywiad arferol o ddydd i ddydd, ond mae’n fach iawn.
progress-child-better = Mae hynny’n fwy na’r amrywiad arferol o ddydd i ddydd: rwyt ti wedi gwella.
progress-child-worse = Doedd hi ddim cystal y tro hwn, o fwy na’r amrywiad arferol o ddydd i ddydd. Mae cwsg, esgidiau a’r llawr i gyd yn cyfrif. Rho gynnig arall arni.
progress-child-no-mark = Does dim canlyniad gan yr un ymgais eto. Mae hynny’n digwydd: gwna hi’n haws yn gyntaf.

progress-slip = Fy nghanlyniadau
progress-slip-for = I { $code }
progress-slip-how = Ti biau dy ganlyniadau. Cura dy orau dy hun.
progress-slip-change = O { $first } i { $last }: { $change }.
progress-slip-best = Fy ngorau: { $mark }, ar { $date }.
progress-slip-new-best = Gorau newydd: { $mark }, ar { $date }!
progress-slip-band = Ymgeisiau yw’r cylchoedd, gorau’r diwrnod yw’r dotiau. Yn y band llwyd mae newid yn rhy agos i ddweud.
progress-slip-no-band = Ymgeisiau yw’r cylchoedd, gorau’r diwrnod yw’r dotiau.
progress-slip-next = Nesaf
progress-slip-again = Edrych eto ar y cwestiynau hyn
progress-slip-day = Diwrnod
progress-slip-tries = Ymgeisiau
progress-slip-day-best = Gorau

progress-mend = Beth a welwyd: “{ $see }” Rho gynnig ar hyn: “{ $say }”
progress-mend-part = Mae’n cael ei ymarfer yn “{ $part }”.
progress-further = Rho gynnig ar y dasg ymestyn “{ $part }”.
progress-onward = Wedyn: “{ $session }”.
progress-practise = Gwna hi eto, gan gofio un peth: “{ $point }”
progress-practise-bare = Gwna hi eto, a gwylia un peth ar y tro.
progress-easier = Gwna hi’n haws yn gyntaf: { $easier }
progress-easier-bare = Gwna hi’n haws yn gyntaf.

progress-send-mend = “{ $part }” eto, ar gyfer { $count } o’r plant: ticiwyd “{ $see }”
progress-send-further = Y dasg ymestyn “{ $part }”, ar gyfer { $count } o’r plant: mae eu newid yn fwy na’r amrywiad arferol o ddydd i ddydd.
progress-send-onward = Yna “{ $session }”, ar gyfer { $count } o’r plant: yr un gweithgaredd, heb ei wneud eto.
progress-send-practise = “{ $part }” eto, ar gyfer { $count } o’r plant: dim gwelliant y tu hwnt i’r amrywiad arferol o ddydd i ddydd eto, a dim camgymeriad wedi’i dicio.
progress-send-easier = Y ffordd haws o wneud “{ $part }”, ar gyfer { $count } o’r plant: nid oes canlyniad eto.

progress-comment-change = Aeth { $code } o { $first } i { $last } yn “{ $task }” ({ $change }, { $verdict }).
progress-comment-once = Cyrhaeddodd { $code } { $last } yn “{ $task }” ar y diwrnod cyntaf.
progress-comment-none = Mae { $code } wedi rhoi cynnig ar “{ $task }” ac nid oes canlyniad eto.
progress-comment-next = Cam nesaf: { $next }

## Fit

fit-teacher = Pwy sy’n cael beth
fit-teacher-lead = { $count ->
    [zero] Dim cartrefi.
    [one] Un cartref, yn ôl cod.
    [two] Dau gartref, yn ôl cod.
    [few] Tri chartref, yn ôl cod.
    [many] Chwe chartref, yn ôl cod.
   *[other] { $count } cartref, yn ôl cod.
} I bob sesiwn, y fersiwn gorau y mae amser, lloriau, pobl a phethau’r cartref yn ei ganiatáu. Nid oes dim anniogel yn cymryd lle dim arall. Cadwch y daflen hon yn yr ysgol.
fit-print = Argraffu hwn (PDF)
fit-grid = Ar un olwg
fit-grid-how = Munudau, a faint o’r rhannau. Llinell fach: ni ellir gwneud y sesiwn hon yno; mae’r rheswm isod.
fit-home = Cartref
fit-cell = { $minutes } mun, { $kept } o { $all }
fit-cell-whole = { $minutes } mun, cyfan
fit-home-heading = Cartref { $code }
fit-home-minutes = { $time } y dydd
fit-home-language = iaith y gofynnir amdani: { $language }
fit-reads-paper = argraffwch i’r cartref hwn
fit-reads-phone = anfonwch y ffolder i ffôn
fit-as-written = Fel y’i hysgrifennwyd.
fit-uses = Yn defnyddio: { $list }.
fit-not = ddim yma
fit-left-out = Wedi’i adael allan: { $part } ({ $why }).
fit-instead = Agosaf at hynny: { $part }.
fit-cannot = { $list }: { $why }.
fit-one-thing = Byddai un peth yn gwneud iddi ffitio: { $thing }.
fit-no-one-thing = Ni fyddai un peth ar ei ben ei hun yn gwneud iddi ffitio.
fit-one-minutes = { $time } y dydd
fit-one-more-floor = { $by } yn fwy bob ffordd ar lawr { $floor }
fit-one-floor = llawr clir o { $size } { $place }
fit-one-helper = un person arall i ymuno neu i aros gerllaw
fit-one-version-seated = fersiynau o’i rhannau i’w gwneud ar eich eistedd, nad oes neb wedi’u hysgrifennu eto
fit-one-version-quiet = fersiynau tawel o’i rhannau, nad oes neb wedi’u hysgrifennu eto
fit-why-seated = nid oes fersiwn i’w wneud ar eich eistedd
fit-why-noise = mae traed yn glanio’n drwm, ac nid oes fersiwn tawel
fit-why-surface = nid oes llawr yma ag arwyneb addas
fit-why-time = mae’r hyn sy’n aros yn werth mwy yn yr amser hwn
fit-why-short = mae’r hyn sy’n gorfod aros yn cymryd mwy o amser nag sydd ar gael
fit-why-helpers = { $count ->
    [zero] nid oes angen neb arall i ymuno nac i aros gerllaw
    [one] mae angen un person arall i ymuno neu i aros gerllaw
    [two] mae angen dau berson arall i ymuno neu i aros gerllaw
    [few] mae angen tri pherson arall i ymuno neu i aros gerllaw
    [many] mae angen chwe pherson arall i ymuno neu i aros gerllaw
   *[other] mae angen { $count } o bobl eraill i ymuno neu i aros gerllaw
}
fit-why-place = fe’i gwneir { $place }
fit-why-headroom = mae angen uchder uwchben o { $height }
fit-why-floor = mae angen llawr clir o { $size }
fit-why-things = nid oes dim diogel yma ar gyfer { $list }
fit-version-seated = Ar eich eistedd
fit-version-quiet = Tawel
fit-version-small-space = Mewn lle bach
fit-version-low-vision = Ar gyfer golwg gwan
fit-version-partner = Gyda phartner
fit-version-alone = Ar eich pen eich hun
fit-lend = Benthyg neu bostio
fit-lend-how = Y nifer lleiaf o bethau er mwyn i bob cartref allu gwneud pob sesiwn lle mai diffyg pethau yw’r unig rwystr. Yna, fesul cartref:
fit-lend-nothing = Dim: nid oes sesiwn yn methu oherwydd diffyg pethau’n unig.
fit-rethink = Ailfeddwl
fit-rethink-how = Yr hyn na all chwarter y cartrefi neu fwy ei wneud (ein ffin ni ein hunain).
fit-rethink-nothing = Dim: nid oes sesiwn na rhan yn methu mewn chwarter y cartrefi.
fit-rethink-homes = Cartrefi na allant ei wneud: { $count } o { $of }.
fit-rethink-why = Gan amlaf: { $why }.
fit-survey = Holiadur
fit-survey-title = Beth sydd gartref?
fit-survey-lead = Er mwyn i addysg gorfforol gartref fod yn addas i’ch cartref chi. Nid oes ateb cywir, na dim i’w brynu. Peidiwch ag ysgrifennu enwau.
fit-ask-code = Eich cod
fit-ask-code-how = Yr ysgol sy’n ei roi i chi. Peidiwch byth ag ysgrifennu enw, cyfeiriad na dyddiad geni.
fit-ask-code-line = Cod
fit-ask-time = Amser a phobl
fit-ask-minutes = Munudau’r dydd sydd ar gael i addysg gorfforol
fit-ask-helpers = Pobl a all ymuno neu aros gerllaw
fit-ask-needs = Beth sydd ei angen ar eich plentyn
fit-ask-seated = Yn gwneud addysg gorfforol ar ei eistedd
fit-ask-low-vision = Yn gweld ychydig yn unig
fit-ask-quiet = Rhaid bod yn dawel dan do
fit-ask-reads = Sut rydych chi’n ei ddarllen
fit-ask-paper = Ar bapur
fit-ask-phone = Ar ffôn
fit-ask-language = Iaith
fit-ask-floor = Llawr clir
fit-ask-floor-how = Y mwyaf y gallwch ei glirio, heb gyfrif waliau a dodrefn.
fit-ask-floor-2 = Ail lawr clir
fit-ask-floor-2-how = Os oes un: iard, gardd, cyntedd.
fit-ask-length = Hyd mewn metrau
fit-ask-width = Lled mewn metrau
fit-ask-height = Uchder at y nenfwd, neu “awyr agored”
fit-ask-outdoors = Mae yn yr awyr agored
fit-ask-things = Pethau sydd gennych
fit-ask-things-how = Ysgrifennwch faint sydd. Gadewch allan yr hyn nad oes gennych.

## Units
unit-units = Unedau gwaith
unit-things = Pethau: { $things }.
unit-remember = Wyt ti’n cofio?
unit-remember-how = Cwestiynau o sesiynau cynharach. Ateba o’r cof yn gyntaf, yna edrycha.
unit-remember-from = o “{ $session }”
unit-week = Wythnos { $week }
unit-none-plain = Dim ysgol
unit-calendar = Ychwanegu at eich calendr
unit-calendar-about = Mae’n agor yng nghalendr ffôn neu gyfrifiadur. Os ychwanegwch ef eto, bydd yr hyn sydd wedi newid yn symud.
unit-poster = Poster y tymor
unit-poster-about = I’r wal, gyda blwch i’w dicio i bob sesiwn
unit-remember-sheet = Taflen “Wyt ti’n cofio?”
unit-remember-about = Y cwestiynau sy’n dod yn ôl, ddydd ar ôl dydd; yr atebion ar dudalen ar wahân
unit-gather-sheet = Pethau i’w casglu
unit-gather = Casglwch unwaith
unit-gather-how = Y nifer lleiaf o bethau sy’n ddigon i bob sesiwn yn yr uned hon.
unit-gather-by = Erbyn wythnos { $week }
unit-get-out = Estynnwch: { $things }
unit-put-back = Rhowch yn ôl: { $things }
unit-same-things = Yr un pethau ag o’r blaen.
unit-minutes = Yn dechrau am { $time }, { $length }
unit-days = Dyddiau
unit-take = I fynd gyda chi
unit-answers = Atebion
unit-answer = Ateb
unit-tick = Ticia flwch i bob sesiwn rwyt ti’n ei gwneud.
date-with-weekday = { $weekday } { $date }
date-day-month = { $day } { $month }
date-with-year = { $date } { $year }
weekday-monday = Llun
weekday-tuesday = Mawrth
weekday-wednesday = Mercher
weekday-thursday = Iau
weekday-friday = Gwener
weekday-saturday = Sadwrn
weekday-sunday = Sul
month-1 = Ionawr
month-2 = Chwefror
month-3 = Mawrth
month-4 = Ebrill
month-5 = Mai
month-6 = Mehefin
month-7 = Gorffennaf
month-8 = Awst
month-9 = Medi
month-10 = Hydref
month-11 = Tachwedd
month-12 = Rhagfyr
unit-together = Unedau a chwmpas
unit-teachers-lead = Sut mae’r uned hon wedi’i llunio, a pham.
unit-plan = Cynllun
unit-session = Sesiwn
unit-why = Pam yma
unit-changes = Pethau
unit-why-named = wedi’i henwi ar gyfer y diwrnod hwn
unit-why-order = wedi’i gosod yma’n awtomatig
unit-why-cover = wedi’i hychwanegu ar gyfer { $codes }
unit-order = Sut y llenwyd y dyddiau agored
unit-order-rule = Rhoddwyd y sesiynau heb ddiwrnod yn y drefn sydd, o’r pwysicaf i’r lleiaf pwysig, â’r canlynol: y nifer lleiaf o sesiynau cyn y sesiwn y maent yn adeiladu arni ({ $grounds }), y nifer lleiaf o ddyddiau egnïol yn olynol ({ $vigorous }), y nifer lleiaf o sesiynau ddwywaith yn olynol ({ $same }), y nifer lleiaf o bethau i’w hestyn neu eu rhoi yn ôl ({ $things }), y golled leiaf o amser egnïol o un sesiwn i’r nesaf ({ $lost }); yna eich trefn chi eich hun.
unit-order-best = Nid oes trefn arall sy’n well.
unit-order-listed = Mae gormod o sesiynau agored i roi cynnig ar bob trefn; cadwyd eich trefn chi.
unit-effort = Ymdrech fesul wythnos
unit-effort-lead = Amcangyfrifon, o’r ymdrech a nodir yn y sesiynau, i un plentyn sy’n gwneud pob un ohonynt. Mae Sefydliad Iechyd y Byd (2020) yn cynghori 60 munud y dydd ar gyfartaledd o weithgaredd cymedrol i egnïol dros yr wythnos, a gweithgaredd egnïol ar o leiaf 3 diwrnod; mae addysg gorfforol gartref yn rhan o hynny.
unit-effort-vigorous = Egnïol
unit-effort-active = Cymedrol ac egnïol
unit-effort-share = Cyfran o 420 munud yr wythnos
unit-effort-days = Dyddiau egnïol
unit-returns = Cwestiynau sy’n dod yn ôl
unit-returns-rule = Mae cwestiwn yn dod yn ôl { $after } diwrnod ar ôl ei sesiwn. Bob tro y daw yn ôl, mae’r aros nesaf { $growth } gwaith mor hir, gan gyfrif o’r diwrnod hwnnw; { $most } ar y mwyaf sy’n dod yn ôl ar un diwrnod, y rhai cynharaf yn gyntaf.
unit-returns-time = { $time ->
    [zero] tro { $time }
    [one] y tro cyntaf
    [two] yr ail dro
    [few] y trydydd tro
    [many] y chweched tro
   *[other] tro { $time }
}
unit-cover = Beth mae’r uned yn ei gwmpasu
unit-cover-met = Wedi’u bodloni gan sesiynau a enwyd gennych: { $codes }.
unit-cover-added = Ychwanegwyd “{ $session }” ar gyfer { $codes }.
unit-cover-best = Ni fyddai llai o sesiynau’n cwmpasu cymaint. O blith dewisiadau cyfartal, y byrraf sy’n cyfrif, yna’r cyntaf yn ôl cyfeiriad.
unit-cover-unproven = Efallai bod llai yn ddigon: mae gormod o sesiynau i roi cynnig ar bopeth.
unit-cover-none = Nid oes sesiwn i’r oedrannau hyn sy’n bodloni: { $codes }.
unit-cover-room = Nid oes diwrnod ar ôl ar gyfer: { $codes }.
unit-left-over = Ni chafodd y rhain ddiwrnod: { $sessions }.
coverage-title = Cwmpas y cwricwlwm
coverage-lead = Pa sesiynau sy’n bodloni pa ddatganiadau, ac i ba grwpiau blwyddyn. Mae sesiwn yn cyfrif i grŵp blwyddyn os yw ei holl oedrannau ymhlith oedrannau’r sesiwn.
coverage-sessions = Datganiadau a sesiynau
coverage-groups = Datganiadau a grwpiau blwyddyn
coverage-statement = Datganiad
coverage-count = Sesiynau
coverage-gap = bwlch
coverage-often = yn aml
coverage-meets = yn ei fodloni
coverage-key = “Bwlch”: datganiad nad oes sesiwn yn ei fodloni i grŵp blwyddyn y mae’n berthnasol iddo. “Yn aml”: un y mae o leiaf { $least } sesiwn yn ei fodloni, a mwy na dwywaith y cyfartaledd.
coverage-csv = Y tabl cyfan (CSV)
coverage-no-gap = Mae pob datganiad wedi’i fodloni i bob grŵp blwyddyn y mae’n berthnasol iddo.
coverage-not-for = ddim i’r grŵp hwn

## Marks at home
home-keeps = Cedwir yr hyn rwyt ti’n ei ysgrifennu yma ar y ddyfais hon, yn y porwr hwn, nes i ti ei ddileu. Nid oes dim yn cael ei anfon ohono’i hun.
home-keeps-not = Nid yw’r porwr hwn yn cadw dim ar gyfer y dudalen hon. Bydd yr hyn rwyt ti’n ei ysgrifennu yn diflannu pan gaei di’r dudalen: anfona neu cadwa ef yn gyntaf.
home-known = Pwy wyt ti?
home-another = Ychwanegu ffugenw
home-code-use = Defnyddio’r cod hwn
home-code-help = Y cod gan dy athro neu dy athrawes, fel K07, un i bob plentyn. Byth enw, cyfeiriad na rhif ffôn.
home-code-first = Heb ei gadw eto: ysgrifenna dy ffugenw uchod yn gyntaf.
home-write = Ysgrifenna bob canlyniad fel rwyt ti’n ei ddarllen, er enghraifft { $mark }. Mae x yn golygu ymgais na chyfrifodd.
home-no-mark = Ni chyfrifodd yr ymgais hon
home-attempts = Ymgeisiau
home-best-today = Gorau’r diwrnod
home-personal-best = Gorau personol
home-change = Newid
home-since = Newid ers { $date }
home-standing-first = Dy ganlyniad cyntaf: nawr mae gen ti rywbeth i’w guro.
home-standing-new = Gorau personol newydd!
home-standing-equalled = Cystal â dy orau.
home-days = Dyddiau a gadwyd: dewisa un i’w gywiro
home-day-to-come = Dewisa heddiw neu ddiwrnod cynharach.
home-refused-number = Nid oes modd darllen hyn. Ysgrifenna ganlyniad fel { $mark }, neu x.
home-refused-unit = Nid yw’r uned hon yn addas yma. Ysgrifenna ganlyniad fel { $mark }.
home-refused-doubt = Pa uned yw hon? Ysgrifenna’r uned hefyd, er enghraifft { $mark }.
home-refused-seconds = Ysgrifenna’r munudau, colon, a dau ffigur am yr eiliadau hyd at 59, er enghraifft 1:05.
home-refused-whole = Ysgrifenna rif cyfan, er enghraifft { $mark }.
home-refused-large = Mae hyn yn llawer rhy fawr. Ysgrifenna ganlyniad fel { $mark }.
home-refused-none = Ysgrifenna dy ffugenw yn gyntaf.
home-refused-name = Mae hyn yn edrych fel enw. Ysgrifenna’r cod gan dy athro neu dy athrawes yn ei le, fel K07.
home-refused-mail = Mae hyn yn edrych fel cyfeiriad, rhif neu ddyddiad sy’n dangos pwy wyt ti. Ysgrifenna’r cod gan dy athro neu dy athrawes, fel K07.
home-refused-signs = Mae hyd at 24 o lythrennau, ffigurau, dotiau a chysylltnodau mewn cod, fel K07.
home-answer = Fy ateb
home-answer-said = Rydw i wedi’i ddweud yn uchel
home-personal = Gad allan gyfeiriadau e-bost a rhifau ffôn: nid yw’r ateb hwn yn cael ei gadw.
home-send = Anfon at fy athro neu fy athrawes
home-send-how = Dim ond pan fyddi di eisiau, ac yn y ffordd y gofynnodd dy athro neu dy athrawes: copïa’r testun i neges neu e-bost, rho’r ffeil, neu argraffa ef. Dim enwau, os gweli di’n dda, nac yn yr atebion chwaith.
home-send-nothing = Dim i’w anfon eto: ysgrifenna ffugenw, a chanlyniad neu ateb.
home-send-text = Popeth sy’n cael ei anfon
home-copy = Copïo’r testun
home-copied = Wedi’i gopïo.
home-share = Rhannu …
home-file = Cadw fel ffeil
home-print = Argraffu
home-export = Cadw copi o bopeth sydd yma i { $code }
home-delete = Dileu popeth sydd yma i { $code }
home-sure = Dileu popeth y mae’r ddyfais hon yn ei gadw i { $code }? Nid oes modd ei gael yn ôl.
home-deleted = Wedi’i ddileu.
home-delete-note = Mae’r hyn rwyt ti’n ei ddileu yma yn mynd o’r ddyfais hon. Nid yw’n tynnu’n ôl yr hyn a anfonaist.
progress-own-words = Yng ngeiriau’r plant eu hunain: gall fod enw ynddynt. Darllenwch nhw cyn eu dangos i neb.

## Pages: teachers
teachers-session = Sesiwn
teachers-active-short = Cymedrol ac egnïol
teachers-grade = Gradd ddarllen
teachers-matrix = Tabl offer
teachers-matrix-how = Faint o bob peth y mae sesiwn yn gofyn amdano ar unwaith; mewn cromfachau lle gellir gwneud hebddo.
teachers-matrix-most = Mwyaf ar unwaith
teachers-family-page = Tudalen y teulu

## Pages: choosing, doing, keeping
feed = Sesiynau newydd a sesiynau wedi’u newid
front-find = Chwilio
front-find-how = Gair, er enghraifft gêm neu beth
front-relax = Hepgor “{ $answer }”: { $count }
now-start = Gwneud y sesiwn nawr
now-start-how = Un rhan ar y tro, gydag amserydd.
now-leave = Y dudalen gyfan
now-back = Yn ôl
now-next = Nesaf
now-place = { $number } o { $total }
now-after = Canlyniadau ac adolygu
timer = Amserydd
timer-left = Amser ar ôl
timer-start = Dechrau
timer-pause = Saib
timer-on = Mynd ymlaen
timer-again = Dechrau eto
timer-explain = Gwylia a gwranda
timer-set-up = Gosoda’r pethau
timer-work = Symuda
timer-rest = Gorffwysa
timer-recover = Amser i gael dy wynt atat
timer-round = Rownd { $number } o { $total }
timer-done = Da iawn ti
timer-sound = Sŵn
timer-buzz = Dirgrynu
timer-voice = Llais

## Library
retired-note = Nid yw’r sesiwn hon yn cael ei defnyddio bellach. Fe’i cedwir yma i’w darllen; dewiswch un arall i’w gwneud.
borrowed-from = Benthycwyd o “{ $pack }”
borrowed-changed = Benthycwyd o “{ $pack }”, a’i newid
borrowed-changed-by = Benthycwyd o “{ $pack }”; newidiwyd gan { $school }

## Editions and what changed
edition-mark = Argraffiad { $mark }
edition = A yw fy nghopi printiedig yn gyfredol?
edition-how = Mae argraffiad wrth droed pob taflen. Dyma’r rhai cyfredol:
edition-ask = Yr argraffiad ar fy nhaflen
edition-current = Mae { $mark } yn gyfredol ({ $sheet }).
edition-changed = Nid yw { $mark } yn gyfredol. Mae’r daflen wedi newid ers hynny, neu mae’n dod o sesiwn arall: argraffwch hi eto.
edition-no-mark = Mae pedair llythyren neu ffigur mewn argraffiad, heb I, L, O nac U.
says-title = Teitl
says-summary = Crynodeb
says-surface = Dan draed
says-limits = Beth sy’n addas
says-instead = Yn ei le
says-note = Nodyn
says-things-for = Diben y pethau
says-school = Ysgol
says-picture = Llun
says-by = Edrychwyd arni gan
says-look-again = Edrych eto
says-explain = Esbonio
says-set-up = Gosod
says-work = Gweithio
says-rest = Gorffwys
says-rounds = Rowndiau
says-recover = Dod atoch eich hun
says-effort = Ymdrech
says-how = Sut i’w wneud
says-key-point = Pwynt allweddol
says-attempts = Ymgeisiau
says-movements = Symudiadau
says-version = Fersiwn arall
says-flight = Hedfan
says-like = Yn debyg i
says-step = Cam lleiaf
says-reference = I gymharu
says-lengths = Byrraf / hiraf (gwerth)
since = Beth a newidiodd
since-how = Ers { $when }.
since-review = Beth a newidiodd, i’w adolygu
since-became = { $what }: { $before } o’r blaen, { $now } nawr
since-reworded = { $what }, wedi’i aileirio
since-added = { $what }, newydd: { $text }
since-gone = { $what }, wedi mynd: { $text }
since-reordered = { $what }: mewn trefn arall
since-part-added = Rhan newydd
since-part-gone = Rhan wedi mynd
since-parts-reordered = Mae’r rhannau mewn trefn arall
since-before = Cynt
since-now = Nawr
since-new = Sesiynau newydd
since-no-more = Ddim yma bellach
since-changed = Sesiynau wedi’u newid
since-shared = I bob sesiwn
since-same = { $count ->
    [zero] Mae pob sesiwn wedi newid.
    [one] Mae un sesiwn fel yr oedd.
    [two] Mae dwy sesiwn fel yr oeddent.
    [few] Mae tair sesiwn fel yr oeddent.
    [many] Mae chwe sesiwn fel yr oeddent.
   *[other] Mae { $count } sesiwn fel yr oeddent.
}
since-nothing = Nid oes dim wedi newid.
since-small = Mân gywiriadau’n unig.
since-print = Argraffwch eto
since-keep = Mae’r taflenni nad ydynt wedi’u henwi yma yn dal yn iawn.
since-all-cards = pob un
since-marks = argraffiad: { $before } o’r blaen, { $now } nawr
book-access = Mae pob llun wedi’i ddisgrifio mewn geiriau. Mae’r sesiynau’n gofyn am symud; mae pob rhan yn dweud sut i’w gwneud yn haws, a nodir fersiynau eraill lle mae rhai.

## Figures
figure-says = { $view }, { $on }: { $angles }.
figure-straight = corff yn syth
figure-angle = { $part } { $ways }
figure-left = { $part } yr ochr chwith
figure-right = { $part } yr ochr dde
figure-handed = Fe’i dangosir gyda’r llaw dde; gyda’r llaw chwith, gwneir hyn y ffordd arall.
figure-arrow = Saeth: { $part } { $way }.
figure-moving = Dangos y symudiad
figure-moment = Llun { $number }
figure-view-side = Golwg o’r ochr
figure-view-other-side = Golwg o’r ochr arall
figure-view-front = Golwg o’r tu blaen
figure-view-back = Golwg o’r tu ôl
figure-view-corner = Golwg ar letraws
figure-on-both-feet = yn sefyll ar y ddwy droed
figure-on-left-foot = yn sefyll ar y droed chwith
figure-on-right-foot = yn sefyll ar y droed dde
figure-on-hands-and-feet = ar ddwylo a thraed
figure-on-hands-and-knees = ar ddwylo a phengliniau
figure-on-knees = yn penlinio
figure-on-one-knee = yn penlinio ar un pen-glin
figure-on-seat = yn eistedd ar y llawr
figure-on-chair = yn eistedd ar gadair
figure-on-wheelchair = yn eistedd mewn cadair olwyn
figure-on-back = yn gorwedd ar y cefn
figure-on-front = yn gorwedd ar y bol
figure-on-left-side = yn gorwedd ar yr ochr chwith
figure-on-right-side = yn gorwedd ar yr ochr dde
figure-on-air = yn yr awyr
figure-part-trunk = bongorff
figure-part-back = cefn
figure-part-head = pen
figure-part-body = corff
figure-part-arms = breichiau
figure-part-arm = braich
figure-part-elbows = peneliniau
figure-part-elbow = penelin
figure-part-wrists = arddyrnau
figure-part-wrist = arddwrn
figure-part-hands = dwylo
figure-part-hand = llaw
figure-part-legs = coesau
figure-part-leg = coes
figure-part-knees = pengliniau
figure-part-knee = pen-glin
figure-part-feet = traed
figure-part-foot = troed
figure-part-thing = y peth yn y llaw
figure-way-forward = ymlaen
figure-way-back = yn ôl
figure-way-up = i fyny
figure-way-down = i lawr
figure-way-left = i’r chwith
figure-way-right = i’r dde
figure-way-forward-and-up = ymlaen ac i fyny
figure-way-forward-and-down = ymlaen ac i lawr
figure-way-back-and-up = yn ôl ac i fyny
figure-way-sideways = i’r ochr
figure-way-across = ar draws y corff
figure-way-bent = wedi plygu
figure-way-rounded = wedi crymu
figure-way-arched = yn fwa tuag yn ôl
figure-way-pointed = wedi pwyntio
figure-way-pulled-up = i fyny at y goes
figure-holds-ball = Yn dal pêl.
figure-holds-bag = Yn dal bag ffa.
figure-holds-cushion = Yn dal clustog.
figure-holds-rope = Yn dal rhaff neu dywel.
figure-holds-weight = Yn dal pwysau.
figure-holds-tub = Yn dal twb.
figure-holds-stick = Yn dal ffon.
figure-holds-sheet = Yn dal dalen.
figure-with-line = Llinell ar y llawr.
figure-with-marker = Marciwr o flaen y corff.
figure-with-mat = Ar fat.
figure-with-wall = Wal o flaen y corff.
figure-with-ball = Pêl o flaen y corff.
figure-with-cushion = Clustog oddi tano.
figure-with-chair = Cadair o flaen y corff.
figure-with-skittles = Sgitls o flaen y corff.
poses-title = Ystumiau
poses-lead = Ysgrifennwch enw ystum yn “figure:”, a newidiwch yr hyn sydd ei angen ar ben hynny: {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = I athrawon
