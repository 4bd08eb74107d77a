### Słowa, które czytają rodziny i nauczyciele WF, na stronach i na papierze.

## Shared

part-warm-up = Rozgrzewka
part-technique = Technika
part-challenge = Wyzwanie
part-stretch = Zadanie dla chętnych
part-cool-down = Uspokojenie organizmu

effort-rest = Odpoczynek
effort-light = Lekki
effort-moderate = Umiarkowany
effort-vigorous = Duży

activity-athletics = Lekkoatletyka
activity-dance = Taniec
activity-fitness = Sprawność
activity-games = Gry i zabawy
activity-gymnastics = Gimnastyka
activity-outdoor = Na świeżym powietrzu

place-indoors = W domu
place-outdoors = Na dworze
place-both = W domu lub na dworze

surface-grass = trawa
surface-carpet = wykładzina
surface-mat = mata
surface-hard-floor = twarda podłoga
surface-paving = kostka lub płyty
surface-sand = piasek
surface-soft-play = miękka nawierzchnia

piece-explain = objaśnienie { $amount }
piece-set-up = przygotowanie { $amount }
piece-work = praca { $amount }
piece-rest = odpoczynek { $amount }
piece-rounds = { $count ->
    [one] { $count } seria
    [few] { $count } serie
    [many] { $count } serii
   *[other] { $count } serii
}
piece-recover = odetchnięcie { $amount }
piece-counts = miary: { $counts }, tempo { $tempo } na minutę

minutes = { $count ->
    [one] { $count } minuta
    [few] { $count } minuty
    [many] { $count } minut
   *[other] { $count } minuty
}
ages = Wiek: { $ages } lat
optional = jeśli jest w domu
soft = miękki
list-or = { $rest } lub { $last }

kind-recall = Przypomnij sobie
kind-explain = Wyjaśnij
kind-compare = Porównaj
kind-apply = Zastosuj
kind-reflect = Podsumuj

task-inform = wprowadzenie
task-extend = rozszerzenie
task-refine = doskonalenie
task-apply = zastosowanie

standing-draft = Szkic
standing-reviewed = Sprawdzone
standing-approved = Zatwierdzone
standing-retired = Wycofane

adapt-space = Inne miejsce
adapt-task = Inne zadanie
adapt-equipment = Inny sprzęt
adapt-people = Inne osoby

sheet-cards = Karty
sheet-home-guide = Przewodnik domowy
sheet-record = Karta wyników
sheet-review = Karta pytań

key-points = Najważniejsze wskazówki
easier = Łatwiej
harder = Trudniej
faults = Częste błędy
fault-see = Widać
fault-say = Można powiedzieć
adult-nearby = Dorosły jest w pobliżu
adult-helping = Dorosły pomaga
landing-zone = Strefa lądowania
stop-and-collect = Stop i zbieranie
cautions = Uwaga
local-rules = Najpierw obowiązują miejscowe przepisy, ocena ryzyka w szkole i zasady pracy uprawnionych osób. Te strony doradzają. Nie mogą zapewnić, że ćwiczenie będzie bezpieczne w Twoim domu.
attempt = Próba
best = Najlepszy
mark-in = Wynik ({ $unit })
measure-distance = Zmierz odległość w { $unit }.
measure-time = Zmierz czas w { $unit }.
measure-count = Policz: { $unit }.
measure-points = Dodaj punkty.
measure-criteria = Zwróć uwagę na:
attempts = { $count ->
    [one] Liczy się jedna próba.
    [few] Liczą się { $count } próby.
    [many] Liczy się { $count } prób.
   *[other] Liczy się { $count } próby.
}
better-more = Im więcej, tym lepiej.
better-less = Im mniej, tym lepiej.
code-name = Pseudonim
date = Data
licence = Licencja
credit = Autorzy

## Plans, on pages and on paper

plan = Plan podłogi
plan-same = Ta sama podłoga co w
plan-says = Plan podłogi w skali, długość { $length }, szerokość { $width }.
plan-stand = Start tutaj
plan-wait = Czekaj tutaj
plan-line = Linia
plan-wall = Ściana
plan-moving = Miejsce do ruchu
plan-run-up = Za linią
plan-landing = Lądowanie
plan-stopping = Miejsce na zatrzymanie
plan-clear = Ma być puste
plan-floor = Twoja podłoga
plan-for = Do części: { $parts }
plan-headroom = Wysokość nad głową: { $height }.
plan-askew = Ułóż od rogu do rogu: mieści się tylko na ukos.
plan-unfit = Potrzeba więcej podłogi, niż podano w tych zajęciach: znajdź większe miejsce.
setting-out = Wyznaczanie taśmą mierniczą
tape-line = Zaznacz linię o szerokości { $length }.
tape-right-angle = Prosto przed siebie: zaznacz punkt { $along } wzdłuż linii i punkt { $away } od jej końca. Jest prosto, gdy między znakami jest { $across }.
tape-diagonals = Zaznacz { $length } na { $width }. Kąty są proste, gdy obie przekątne mają { $diagonal }.
tape-sector = Boki: dwa znaki { $along } od środka linii, w odstępie { $apart }.
tape-reach = Wolne: jeszcze { $margin } za { $reach }.
tape-around = Zostaw dookoła { $margin } wolnego miejsca.
tape-wait = Czekanie: { $behind } za linią.

slots = Gdy czasu jest inaczej
slots-how = Rozgrzewka i uspokojenie zostają. Zostaje też to, co najważniejsze.
slot-in = W { $time }
slot-same = Wszystko się mieści.
slot-drop = Pomiń: { $list }.
slot-change = { $part }: { $time }.
slot-change-rounds = { $part }: { $rounds ->
    [one] { $rounds } seria
    [few] { $rounds } serie
    [many] { $rounds } serii
   *[other] { $rounds } serii
}, { $time }.
slot-left = Zostaje: { $time }.
slot-too-short = Brakuje { $by }: to, co musi zostać, trwa dłużej.

effort-talk = Mówienie
effort-still = Najdłużej bez ruchu: { $time }, w części „{ $part }”.

effort-of-day = Wysiłek umiarkowany i duży to { $share }% z 60 minut dziennie zalecanych przez WHO (wiek 5–17 lat).
effort-rhythm = { $part }: { $work } pracy na { $rest } odpoczynku ({ $ratio }).
effort-usual = Na początek w tym wieku zwykle wystarcza od { $least } do { $most } s mocnej pracy i tyle samo odpoczynku (powszechna praktyka).
effort-like = { $part } przypomina „{ $like }” z Compendium of Physical Activities 2011: { $met } MET, { $band } (umiarkowany od { $from }). To wartość dla dorosłych: dla dzieci szacunkowa.

floor-how = Na podłodze
floor-fits = mieści się
floor-askew = mieści się na ukos
floor-unfit = nie mieści się
floor-unsaid = nie podano podłogi

things-as = { $things } zamiast: { $need }
things-together = Wystarczy na wszystko naraz:
things-need = Potrzebne
things-at-home = W domu
things-refused = Nie nadaje się
things-missing = brakuje: { $count }
things-once = Zbierz raz
things-once-how = Te kilka rzeczy wystarczy na wszystkie zajęcia. Nic nie jest potrzebne w dwóch miejscach naraz.
things-all = Wszystko, razem z zamiennikami
sheet-print = Wydrukuj tę listę (PDF)
things-once-unproven = Może istnieć krótsza lista.
sheet-gather = Zbierz raz
misfit-heavy = za ciężkie: { $found }, ma być { $asked }, wiek { $ages } lat
misfit-light = za lekkie: { $found }, ma być { $asked }, wiek { $ages } lat
misfit-large = za duże: { $found }, ma być { $asked }, wiek { $ages } lat
misfit-small = za małe: { $found }, ma być { $asked }, wiek { $ages } lat
misfit-hard = nie podano, że jest miękkie
misfit-lacks = nie podano cechy: { $asked }

flight-throw = Wypuszczone z prędkością { $speed } m/s pod kątem { $angle }°, { $height } nad podłogą, leci na { $distance } i wznosi się na { $apex }. Lot trwa { $time }, lądowanie z prędkością { $landing } m/s.
flight-toss = Podrzucone z prędkością { $speed } m/s z wysokości { $height } wznosi się na { $apex } i leci { $time }.
flight-drag = Uwzględniono opór powietrza dla „{ $thing }”; bez niego odległość wyniosłaby { $distance }.
flight-drag-toss = Uwzględniono opór powietrza dla „{ $thing }”.
flight-no-drag = Bez oporu powietrza.
flight-headroom = Wysokość nad głową: { $height }.
flight-room = Pod sufitem { $ceiling } najdalej przy tej prędkości jest { $distance }, pod kątem { $angle }°.
flight-best = Według wzoru najlepszy jest kąt { $angle }°, odległość { $distance }. Prędkość człowieka maleje, gdy kąt rośnie, więc najlepszy prawdziwy rzut jest niższy: dla kuli wzór daje około 42°, a zawodnicy pchają pod kątem od 37° do 38°.

marks-distance = Wyniki odczytuje się w dół, do pełnego { $step } (przepisy techniczne World Athletics).
marks-time = Czasy mierzone ręcznie zaokrągla się w górę, do { $step } (przepisy techniczne World Athletics dla biegów).
marks-time-held = Im dłużej, tym lepiej: czasy odczytuje się w dół, do pełnego { $step }.
marks-whole = Wyniki są liczbami całkowitymi.
marks-ties = Liczy się najlepsza próba; przy remisie rozstrzyga następna.
marks-reference = Dla porównania: { $mark } ({ $source }). Grupy są różne; to niczyja norma.
marks-formula = Punkty: część całkowita z { $a } · d^{ $c }, gdzie d to różnica między wynikiem a { $b }.
marks-points-source = Punkty: { $source }
marks-from = Od
marks-points = Punkty
points-list = Punkty: { $list }.
points-from = { $points } od { $mark }
points-within = { $points } do { $mark }

reading-how = Jak trudne są zdania, które czyta dziecko, według wzorów dla języka angielskiego. Widzą długość, nie sens.
reading-words = Słowa
reading-sentences = Zdania
reading-flesch = Łatwość czytania Flescha
reading-kincaid = Klasa Flescha–Kincaida
reading-smog = Klasa SMOG
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = Wiek czytelnika (klasa + 5)
reading-long-words = Słowa o trzech i więcej sylabach:
reading-long-sentences = Liczba słów w zdaniach dłuższych niż 20 słów:

flight-axis-angle = Kąt
flight-axis-distance = Odległość (m)
flight-figure-says = Odległość w zależności od kąta. Najlepiej

## Pages

skip = Przejdź do treści
pages = Strony
nav-front = Wszystkie zajęcia
nav-things = Co przygotować
nav-teachers = Dla nauczycieli
nav-rules = Zasady pisania
foot-contact = Zapytaj szkołę
foot-made = Te strony niczego nie pobierają z zewnątrz i niczego nigdzie nie wysyłają.

front-about = WF w domu: wybierz zajęcia według wieku, czasu, miejsca i rzeczy, które są w domu.
front-choose = Wybierz zajęcia
front-choose-how = Odpowiedz, na co chcesz. Na liście zostanie tylko to, co pasuje.
front-sessions = Zajęcia
front-any = dowolnie
front-age = Wiek dziecka
front-minutes = Ile jest czasu
front-up-to = do { $count } min
front-space = Wolne miejsce
front-space-rug = dywanik, 2 m × 2 m
front-space-small-room = mały pokój, 3 m × 3 m
front-space-big-room = duży pokój, 5 m × 4 m
front-place = Gdzie
front-activity = Rodzaj ruchu
front-lacking = Nie mamy …
front-lacking-how = (ani niczego w zamian)
front-more = Miejsce, rodzaj ruchu i rzeczy w domu
front-reset = Zacznij od nowa
front-shown = Pokazano:
front-none = Żadne zajęcia nie pasują do wszystkiego. Usuń jedną odpowiedź.
front-needs = Przygotuj:
front-needs-nothing = Nic nie trzeba przygotować
front-cards = Karty do wydruku
front-minutes-unit = min

fact-ages = Wiek
fact-minutes = Minuty
fact-space = Wolne miejsce
fact-place = Gdzie
fact-effort = Wysiłek, głównie

space = Miejsce
space-needs = { $size } wolnej podłogi.
space-headroom = Wysokość nad głową { $height }.
space-surface = Dobre pod stopami: { $list }.

before = Zanim zaczniesz
running-order = Przebieg zajęć
running-how = Wyższy słupek to większy wysiłek.
line-label = Oś czasu, { $minutes } minut, jeden słupek na część
success = Co umiem na koniec
things = Co przygotować
things-nothing = Nic. Można zaczynać.
things-household = Jest w każdym domu.
things-limits = Co pasuje: { $limits }
stands-in = Albo
for-parts = Do:
adult = Czas dorosłego
adult-nearby-for = W pobliżu przez { $time }.
adult-helping-for = Pomaga przez { $time }.
adult-none = Nie jest potrzebny. Bądź w zasięgu głosu.
film = Film
from-to = od { $from } do { $to }
beats-label = Praca i odpoczynek, narysowane w skali
how-measured = Jak się mierzy
throwing = Zanim coś poleci
tick-rounds = Wykonane serie
finish = Koniec
finish-say = Napij się wody. Potem zapisz swoje wyniki.
marks = Moje wyniki
marks-how = Używaj pseudonimu, nigdy pełnego imienia i nazwiska. Wyniki są Twoje: popraw własny rekord.
next-time = Następnym razem
review = Zastanów się
review-how = Najpierw powiedz lub zapisz swoją odpowiedź. Potem otwórz naszą.
review-answer = Nasza odpowiedź
adaptations = Dopasuj do siebie
papers = Wydrukuj
sheet-cards-about = jedna część na karcie, { $cards } na stronie
sheet-home-guide-about = jedna strona: oś czasu, rzeczy, miejsce, uwagi
sheet-record-about = tabela na wyniki
sheet-review-about = pytania, a odpowiedzi na osobnej stronie
draft-note = Szkic: te zajęcia nie zostały jeszcze sprawdzone.

things-intro = Wszystko, czego potrzebują zajęcia, i czym to zastąpić. Odhaczaj, co masz.
things-for = Zajęcia
things-extras = Przyda się

rules-intro = Na co patrzy homeground, gdy sprawdza pliki zajęć, i dlaczego. Doradza; nigdy nie poświadcza, że zajęcia są bezpieczne.
rules-contents = Kody
rules-why = Dlaczego
rules-source = Źródło:
rules-bad = Tak nie
rules-good = Tak
severity-problem = Problem
severity-warning = Ostrzeżenie
severity-advice = Rada

teachers-intro = Każde zajęcia z osią czasu, odpowiedziami i statusem. Liczby dotyczące wysiłku to szacunki na podstawie podanego wysiłku części.
teachers-contents = Zajęcia
teachers-active = Umiarkowany i duży: { $time }, { $share }% czasu (szacunek)
teachers-plans = Plany: wysiłek, czas, podłoga, rzeczy, lot, wyniki, czytanie
teachers-floors = Podłogi
teachers-flights = Loty
teachers-marks = Wyniki i punkty
teachers-reading = Czytanie
teachers-part = Część
teachers-from = Od
teachers-time = Czas
teachers-effort = Wysiłek
teachers-task = Zadanie
teachers-objectives = Cele
teachers-success = Kryteria sukcesu
teachers-codes = Podstawa programowa
teachers-answers = Pytania i odpowiedzi
teachers-standing = Status
teachers-by = { $by }
teachers-on = dnia { $on }
teachers-look-again = ponownie sprawdzić { $on }
teachers-changed = Co zmieniono

## Paper

cards-number = Karta { $number } z { $total }
cards-continued = (ciąg dalszy)
cards-see-guide = W przewodniku domowym są: przebieg zajęć, zamienniki wszystkich rzeczy i wszystkie uwagi.
cards-adapt = Dla Twojego domu i dla Ciebie
cards-helper = Dla osoby, która pomaga
cards-look = Na co patrzeć
cards-look-how = Co widać → co powiedzieć. Jedna rzecz naraz.
or-use = albo
sheet-number = Strona { $number } z { $total }
fact-time = Czas
review-paper-how = Najpierw powiedz odpowiedź na głos. Potem ją zapisz.
review-answers = Odpowiedzi
review-own = Twoja własna odpowiedź.
review-help = To wzorcowe odpowiedzi. Słowa dziecka są tak samo dobre, jeśli znaczą to samo.
fact-headroom = Wysokość nad głową
record-look-for = Zwróć uwagę na

## Quantities

amount-m = { $number } m
amount-cm = { $number } cm
amount-mm = { $number } mm
amount-kg = { $number } kg
amount-g = { $number } g
amount-min = { $number } min
amount-s = { $number } s
amount-min-s = { $minutes } { $seconds }
amount-at-most = najwyżej { $amount }
amount-at-least = co najmniej { $amount }
amount-any = dowolnie

## Languages

languages = Inne języki
language-name = Polski
shown-in-original = Te zajęcia nie są jeszcze przetłumaczone. Pokazano je w języku oryginału ({ $language }).
translation-old = Oryginał zmienił się od czasu tego tłumaczenia.
language-unnamed = swoim języku

## To scan, to copy, to send

scan-page = Strona tych zajęć
scan-film = Film

no-printer = Nie masz drukarki?
no-printer-how = Przepisz to ręcznie: zajmie to około { $minutes } min. Możesz też zapisać to jako tekst albo wysłać w wiadomościach.
copy-file = Do przepisania (tekst)
texts-file = Wiadomości SMS (tekst)
no-printer-needs = Potrzebne: { $list }.
no-printer-read = Najpierw przeczytaj na stronie wszystkie uwagi.
no-printer-rules = Najpierw obowiązują zasady szkoły i jej ocena ryzyka.

## Sheets

sheet-large-print = Karty z dużym drukiem
sheet-large-print-about = litery nie mniejsze niż 18 punktów, jedna karta na stronie
sheet-class-set = Zestaw dla klasy
sheet-class-set-about = { $copies ->
    [one] { $copies } numerowany zestaw kart
    [few] { $copies } numerowane zestawy kart
    [many] { $copies } numerowanych zestawów kart
   *[other] { $copies } numerowanego zestawu kart
}, liczba kart na stronie: { $cards }
sheet-booklet = Książeczka
sheet-booklet-about = drukuj dwustronnie, odwracając wzdłuż krótkiej krawędzi, i złóż cały plik raz na pół
sheet-poster = Plakat
sheet-poster-about = najważniejsze wskazówki, czytelne z 2 m
sheet-record-class = Karta wyników klasy
sheet-record-class-about = pseudonimy z boku, jeden pod drugim
sheet-record-week = Karta wyników na tydzień
sheet-record-week-about = kolumna na każdy dzień
both-long = drukuj dwustronnie, odwracając wzdłuż długiej krawędzi
both-short = drukuj dwustronnie, odwracając wzdłuż krótkiej krawędzi
cards-back = Tył karty { $number } z { $total }
cards-set = Zestaw { $number } z { $total }
notes = Notatki
booklet-inside = W środku
record-class-tick = Zaznacz to, co było widać. Czego nie było widać, zostaw puste.
record-week-how = Zaznaczaj, co udało się zrobić każdego dnia, i zapisuj najlepszy wynik dnia.
record-done = Zrobione
record-best-marks = Mój najlepszy wynik
record-week-best = Co najlepiej wyszło w tym tygodniu?
week-of = Tydzień od
day-1 = pon.
day-2 = wt.
day-3 = śr.
day-4 = czw.
day-5 = pt.
day-6 = sob.
day-7 = niedz.

## Progress

progress-title = Postępy klasy
progress-private = Dla nauczyciela. Tylko kody (pseudonimy), bez imion i nazwisk. Przechowuj do { $date }, potem usuń: homeground progress --to … --forget
progress-how = Każdą zmianę liczy się względem wcześniejszego wyniku tego samego dziecka. Wyniki sprawności są prywatne: nie są oceną i nie służą do porównywania dzieci.
progress-rule = Zmiana jest większa niż zwykłe wahania z dnia na dzień, gdy przekracza dwa typowe błędy jednej próby (Hopkins 2000: od 1,5 do 2). Typowy błąd obliczono z prób powtórzonych tego samego dnia: różnice między dniami dochodzą do tego osobno.
progress-contents = W tym zestawieniu
progress-children = Dzieci
progress-class = Klasa
progress-class-small = Wyniki przysłało mniej niż { $fewest } dzieci: nie pokazano danych klasy, bo wskazałyby konkretną osobę.
progress-first = Pierwszy dzień
progress-latest = Ostatni dzień
progress-median = Mediana
progress-quartiles = Kwartyle
progress-range = Najmniej i najwięcej
progress-deviation = Odchylenie standardowe
progress-noise = Typowy błąd jednej próby
progress-noise-from = liczba par prób: { $pairs }
progress-noise-unknown = nieznany: za mało powtórzonych prób
progress-smallest = Najmniejsza zmiana, która ma znaczenie
progress-wobble = Więcej niż wahania od
progress-spread-says = Kropka to dziecko, ramka sięga od kwartyla do kwartyla, gruba linia to mediana.
progress-strip-says = Wyniki, dzień po dniu: { $code }, „{ $task }”. Liczby są w tabeli obok.
progress-better-more = Im dalej w prawo, tym lepiej.
progress-better-less = Im dalej w lewo, tym lepiej.
progress-child-table = Dziecko po dziecku
progress-code = Kod
progress-place = M-ce
progress-first-mark = Pierwszy
progress-last-mark = Ostatni
progress-best-mark = Najlepszy
progress-best-on = { $mark } dnia { $date }
progress-change = Zmiana
progress-verdict = Czy to pewne?
progress-tries = Próby
progress-points = Punkty
progress-over-time = W czasie
progress-next = Co dalej i dlaczego
progress-missing = Jeszcze nic nie przysłano
progress-missing-none = Każdy coś przysłał.
progress-silent = Nie przysłano niczego
progress-faults = Zaznaczone częste błędy
progress-few = mniej niż { $fewest }
progress-send = Co wysłać następnym razem
progress-comments = Opisy postępów do poprawienia
progress-questions = Pytania
progress-questions-how = O tym, co jest dobrze, decyduje nauczyciel. Tutaj odpowiedzi są tylko zebrane, a podobne połączone.
progress-right = dobrze
progress-wrong = jeszcze nie
progress-unmarked = niesprawdzone
progress-answers-few = Odpowiedziało mniej niż { $fewest } dzieci: ich odpowiedzi tu nie pokazano.
progress-answers = Odpowiedzi dzieci
progress-model-answer = Nasza odpowiedź
progress-unread = Nieodczytane
progress-unread-how = Te komórki pominięto. Cała reszta wiersza się liczy.
progress-row = Wiersz
progress-column = Kolumna
progress-says = Co jest nie tak
progress-file = Plik

progress-short-once = pierwszy wynik
progress-short-noise-unknown = za mało prób, by ocenić
progress-short-too-close = różnica zbyt mała, by ocenić
progress-short-too-small = prawdziwa zmiana, ale bardzo mała
progress-short-better = lepiej, ponad zwykłe wahania
progress-short-worse = słabiej, ponad zwykłe wahania

progress-child-once = To Twój pierwszy dzień. Masz już wynik do poprawienia.
progress-child-noise-unknown = Prób jest jeszcze za mało, by powiedzieć, czy to więcej niż zwykłe wahania z dnia na dzień.
progress-child-too-close = Różnica jest zbyt mała, by ją ocenić: tyle wyniki wahają się z próby na próbę.
progress-child-too-small = To więcej niż zwykłe wahania z dnia na dzień, ale bardzo mało.
progress-child-better = To więcej niż zwykłe wahania z dnia na dzień: robisz postępy.
progress-child-worse = Tym razem wyszło słabiej, i to bardziej niż przy zwykłych wahaniach. Sen, buty i podłoga też mają znaczenie. Spróbuj jeszcze raz.
progress-child-no-mark = Żadna próba nie ma jeszcze wyniku. Tak bywa: najpierw wybierz łatwiejszą wersję.

progress-slip = Moje wyniki
progress-slip-for = Dla: { $code }
progress-slip-how = Wyniki są Twoje. Popraw własny rekord.
progress-slip-change = Od { $first } do { $last }: { $change }.
progress-slip-best = Mój najlepszy wynik: { $mark }, dnia { $date }.
progress-slip-new-best = Nowy rekord: { $mark }, dnia { $date }!
progress-slip-band = Kółka to próby, kropki to najlepszy wynik dnia. W szarym pasie zmiana jest zbyt mała, by ją ocenić.
progress-slip-no-band = Kółka to próby, kropki to najlepszy wynik dnia.
progress-slip-next = Co dalej
progress-slip-again = Wróć do tych pytań
progress-slip-day = Dzień
progress-slip-tries = Próby
progress-slip-day-best = Najlepszy

progress-mend = Było widać: „{ $see }” Spróbuj tak: „{ $say }”
progress-mend-part = Ćwiczy się to w części „{ $part }”.
progress-further = Spróbuj zadania dla chętnych „{ $part }”.
progress-onward = Potem: „{ $session }”.
progress-practise = Zrób to jeszcze raz i pamiętaj o jednym: „{ $point }”
progress-practise-bare = Zrób to jeszcze raz i pilnuj jednej rzeczy naraz.
progress-easier = Najpierw łatwiej: { $easier }
progress-easier-bare = Najpierw wybierz łatwiejszą wersję.

progress-send-mend = Jeszcze raz „{ $part }”, liczba dzieci: { $count }. Zaznaczono: „{ $see }”
progress-send-further = Zadanie dla chętnych „{ $part }”, liczba dzieci: { $count }. Zmiana jest większa niż zwykłe wahania z dnia na dzień.
progress-send-onward = Potem „{ $session }”, liczba dzieci: { $count }. Ten sam rodzaj ruchu, jeszcze niewykonane.
progress-send-practise = Jeszcze raz „{ $part }”, liczba dzieci: { $count }. Nie ma jeszcze poprawy ponad zwykłe wahania i nie zaznaczono błędów.
progress-send-easier = Łatwiejsza wersja „{ $part }”, liczba dzieci: { $count }. Nie ma jeszcze wyniku.

progress-comment-change = { $code }: od { $first } do { $last } w zadaniu „{ $task }” ({ $change }, { $verdict }).
progress-comment-once = { $code }: { $last } w zadaniu „{ $task }” pierwszego dnia.
progress-comment-none = { $code }: są próby w zadaniu „{ $task }”, ale nie ma jeszcze wyniku.
progress-comment-next = Następny krok: { $next }

## Fit

fit-teacher = Co dla kogo
fit-teacher-lead = { $count ->
    [one] { $count } dom, oznaczony kodem.
    [few] { $count } domy, oznaczone kodami.
    [many] { $count } domów, oznaczonych kodami.
   *[other] { $count } domu, oznaczone kodami.
} Dla każdych zajęć podano najlepszą wersję, na jaką pozwalają czas, podłogi, osoby i rzeczy w domu. Nic niebezpiecznego nie służy jako zamiennik. Tę kartę przechowuj w szkole.
fit-print = Wydrukuj (PDF)
fit-grid = Wszystko w jednej tabeli
fit-grid-how = Minuty i liczba części. Kreska: tych zajęć nie da się tam przeprowadzić; poniżej podano dlaczego.
fit-home = Dom
fit-cell = { $minutes } min, { $kept } z { $all }
fit-cell-whole = { $minutes } min, całość
fit-home-heading = Dom { $code }
fit-home-minutes = { $time } dziennie
fit-home-language = prośba o język: { $language }
fit-reads-paper = wydrukować dla tego domu
fit-reads-phone = wysłać folder na telefon
fit-as-written = Bez zmian.
fit-uses = Używane rzeczy: { $list }.
fit-not = tutaj nie
fit-left-out = Pominięto: { $part } – { $why }.
fit-instead = Najbardziej podobne: { $part }.
fit-cannot = { $list }: { $why }.
fit-one-thing = Wystarczyłaby jedna zmiana: { $thing }.
fit-no-one-thing = Żadna pojedyncza zmiana nie wystarczy.
fit-one-minutes = { $time } dziennie
fit-one-more-floor = podłoga { $floor } większa o { $by } wzdłuż i wszerz
fit-one-floor = wolna podłoga { $size } { $place }
fit-one-helper = jeszcze jedna osoba, która poćwiczy razem lub będzie w pobliżu
fit-one-version-seated = wersje części na siedząco, których nikt jeszcze nie napisał
fit-one-version-quiet = ciche wersje części, których nikt jeszcze nie napisał
fit-why-seated = nie ma wersji na siedząco
fit-why-noise = stopy mocno uderzają o podłogę, a cichej wersji nie ma
fit-why-surface = żadna podłoga nie ma odpowiedniej nawierzchni
fit-why-time = w tym czasie więcej daje to, co zostaje
fit-why-short = to, co musi zostać, trwa dłużej, niż jest czasu
fit-why-helpers = { $count ->
    [one] potrzebna jest jeszcze jedna osoba do wspólnych ćwiczeń lub w pobliżu
    [few] potrzebne są jeszcze { $count } osoby do wspólnych ćwiczeń lub w pobliżu
    [many] potrzeba jeszcze { $count } osób do wspólnych ćwiczeń lub w pobliżu
   *[other] potrzeba jeszcze { $count } osoby do wspólnych ćwiczeń lub w pobliżu
}
fit-why-place = ćwiczy się to { $place }
fit-why-headroom = potrzebna jest wysokość nad głową { $height }
fit-why-floor = potrzebna jest wolna podłoga { $size }
fit-why-things = w domu nie ma nic bezpiecznego jako: { $list }
fit-version-seated = Na siedząco
fit-version-quiet = Po cichu
fit-version-small-space = Na małej przestrzeni
fit-version-low-vision = Dla słabowidzących
fit-version-partner = W parze
fit-version-alone = Samodzielnie
fit-lend = Wypożycz lub wyślij
fit-lend-how = Najmniej rzeczy, dzięki którym w każdym domu da się przeprowadzić wszystkie zajęcia, którym na przeszkodzie stoi tylko brak rzeczy. Dalej dom po domu:
fit-lend-nothing = Nic: żadne zajęcia nie odpadają tylko z braku rzeczy.
fit-rethink = Do przemyślenia
fit-rethink-how = To, czego nie da się zrobić w co najmniej jednej czwartej domów (próg przyjęty przez nas).
fit-rethink-nothing = Nic: żadne zajęcia i żadna część nie odpadają w jednej czwartej domów.
fit-rethink-homes = Domy, w których się nie da: { $count } z { $of }.
fit-rethink-why = Najczęściej: { $why }.
fit-survey = Ankieta
fit-survey-title = Co jest w domu?
fit-survey-lead = Żeby WF w domu pasował do Waszego domu. Nie ma złych odpowiedzi i niczego nie trzeba kupować. Nie wpisujcie imion ani nazwisk.
fit-ask-code = Wasz kod
fit-ask-code-how = Kod podaje szkoła. Nigdy nie wpisujcie imienia i nazwiska, adresu ani daty urodzenia.
fit-ask-code-line = Kod
fit-ask-time = Czas i osoby
fit-ask-minutes = Ile minut dziennie jest na WF
fit-ask-helpers = Ile osób może ćwiczyć razem lub być w pobliżu
fit-ask-needs = Czego potrzebuje dziecko
fit-ask-seated = Ćwiczy na siedząco
fit-ask-low-vision = Słabo widzi
fit-ask-quiet = W domu musi być cicho
fit-ask-reads = Jak czytacie zajęcia
fit-ask-paper = Na papierze
fit-ask-phone = Na telefonie
fit-ask-language = Język
fit-ask-floor = Wolna podłoga
fit-ask-floor-how = Największa, jaką da się opróżnić, bez ścian i mebli.
fit-ask-floor-2 = Druga podłoga
fit-ask-floor-2-how = Jeśli jest: podwórko, ogród, przedpokój.
fit-ask-length = Długość w metrach
fit-ask-width = Szerokość w metrach
fit-ask-height = Wysokość do sufitu albo „na dworze”
fit-ask-outdoors = Jest na dworze
fit-ask-things = Rzeczy, które macie
fit-ask-things-how = Wpiszcie, ile ich jest. Pomińcie to, czego nie macie.

## Units
unit-units = Cykle zajęć
unit-things = Rzeczy: { $things }.
unit-remember = Pamiętasz?
unit-remember-how = Pytania z wcześniejszych zajęć. Najpierw odpowiedz z pamięci, potem sprawdź.
unit-remember-from = z zajęć „{ $session }”
unit-week = Tydzień { $week }
unit-none-plain = Wolne od szkoły
unit-calendar = Dodaj do kalendarza
unit-calendar-about = Otwiera się w kalendarzu telefonu lub komputera. Ponowne dodanie przenosi to, co się zmieniło.
unit-poster = Plakat na semestr
unit-poster-about = Na ścianę, z kratką do zaznaczenia przy każdych zajęciach
unit-remember-sheet = Karta „Pamiętasz?”
unit-remember-about = Powracające pytania, dzień po dniu; odpowiedzi na osobnej stronie
unit-gather-sheet = Co przygotować
unit-gather = Zbierz raz
unit-gather-how = Najmniej rzeczy, które wystarczą na wszystkie zajęcia tego cyklu.
unit-gather-by = Na tydzień { $week }
unit-get-out = Wyjmij: { $things }
unit-put-back = Odłóż: { $things }
unit-same-things = Te same rzeczy co poprzednio.
unit-minutes = Początek: { $time }, { $length }
unit-days = Dni
unit-take = Do zabrania ze sobą
unit-answers = Odpowiedzi
unit-answer = Odpowiedź
unit-tick = Zaznacz kratkę po każdych wykonanych zajęciach.
date-with-weekday = { $weekday }, { $date }
date-day-month = { $day } { $month }
date-with-year = { $date } { $year } roku
weekday-monday = poniedziałek
weekday-tuesday = wtorek
weekday-wednesday = środa
weekday-thursday = czwartek
weekday-friday = piątek
weekday-saturday = sobota
weekday-sunday = niedziela
month-1 = stycznia
month-2 = lutego
month-3 = marca
month-4 = kwietnia
month-5 = maja
month-6 = czerwca
month-7 = lipca
month-8 = sierpnia
month-9 = września
month-10 = października
month-11 = listopada
month-12 = grudnia
unit-together = Cykle i podstawa programowa
unit-teachers-lead = Jak ułożono ten cykl i dlaczego.
unit-plan = Plan
unit-session = Zajęcia
unit-why = Dlaczego tutaj
unit-changes = Rzeczy
unit-why-named = wskazane na ten dzień
unit-why-order = umieszczone tu automatycznie
unit-why-cover = dodane dla: { $codes }
unit-order = Jak wypełniono wolne dni
unit-order-rule = Zajęcia bez podanego dnia ułożono tak, aby było jak najmniej, od najważniejszego: zajęć przed tymi, na których się opierają ({ $grounds }), kolejnych dni z dużym wysiłkiem ({ $vigorous }), tych samych zajęć dwa razy z rzędu ({ $same }), rzeczy do wyjęcia lub odłożenia ({ $things }), ubytku czasu aktywnego z jednych zajęć na następne ({ $lost }); na końcu decyduje kolejność podana przez nauczyciela.
unit-order-best = Żadna inna kolejność nie jest lepsza.
unit-order-listed = Zajęć bez podanego dnia jest za dużo, by sprawdzić każdą kolejność; zachowano kolejność podaną przez nauczyciela.
unit-effort = Wysiłek w kolejnych tygodniach
unit-effort-lead = Szacunki na podstawie wysiłku podanego w zajęciach, dla dziecka, które wykona je wszystkie. Światowa Organizacja Zdrowia (2020) zaleca średnio 60 minut dziennie aktywności od umiarkowanej do dużej w ciągu tygodnia oraz dużą aktywność co najmniej 3 dni w tygodniu; WF w domu jest częścią tego czasu.
unit-effort-vigorous = Duży
unit-effort-active = Umiarkowany i duży
unit-effort-share = Część z 420 minut tygodniowo
unit-effort-days = Dni z dużym wysiłkiem
unit-returns = Powracające pytania
unit-returns-rule = Pytanie powraca po zajęciach, gdy minie tyle dni: { $after }. Przy każdym powrocie następną przerwę, liczoną od tego dnia, mnoży się przez { $growth }. Liczba pytań powracających jednego dnia to najwyżej { $most }; pierwszeństwo mają te, na które najwcześniej przyszła pora.
unit-returns-time = { $time ->
    [one] pierwszy raz
    [few] { $time }. raz
    [many] { $time }. raz
   *[other] { $time }. raz
}
unit-cover = Co realizuje ten cykl
unit-cover-met = Realizowane przez zajęcia wskazane przez nauczyciela: { $codes }.
unit-cover-added = „{ $session }” – dodane dla: { $codes }.
unit-cover-best = Mniejsza liczba zajęć nie zrealizuje tyle samo. Z równych możliwości wybiera się najkrótszą, potem pierwszą według adresu.
unit-cover-unproven = Może wystarczy mniej: zajęć jest za dużo, by sprawdzić wszystko.
unit-cover-none = Żadne zajęcia dla tego wieku nie realizują: { $codes }.
unit-cover-room = Zabrakło dnia dla: { $codes }.
unit-left-over = Nie znalazł się dzień dla: { $sessions }.
coverage-title = Realizacja podstawy programowej
coverage-lead = Które zajęcia realizują które wymagania i dla których klas. Zajęcia liczą się dla klasy, gdy obejmują cały wiek uczniów tej klasy.
coverage-sessions = Wymagania i zajęcia
coverage-groups = Wymagania i klasy
coverage-statement = Wymaganie
coverage-count = Zajęcia
coverage-gap = brak
coverage-often = często
coverage-meets = realizuje
coverage-key = „Brak”: wymaganie, którego żadne zajęcia nie realizują dla klasy, której dotyczy. „Często”: wymaganie realizowane przez wiele zajęć (co najmniej { $least }), ponad dwa razy więcej niż średnio.
coverage-csv = Cała tabela (CSV)
coverage-no-gap = Każde wymaganie jest realizowane w każdej klasie, której dotyczy.
coverage-not-for = nie dotyczy tej klasy

## Marks at home
home-keeps = To, co tu wpiszesz, zostaje na tym urządzeniu, w tej przeglądarce, dopóki tego nie usuniesz. Nic nie wysyła się samo.
home-keeps-not = Ta przeglądarka nie zachowuje niczego z tej strony. To, co wpiszesz, zniknie po jej zamknięciu: najpierw wyślij to lub zapisz.
home-known = Który kod jest Twój?
home-another = Dodaj pseudonim
home-code-use = Użyj tego kodu
home-code-help = Kod od nauczyciela, na przykład K07, osobny dla każdego dziecka. Nigdy imię i nazwisko, adres ani numer telefonu.
home-code-first = Jeszcze nie zachowano: najpierw wpisz wyżej swój pseudonim.
home-write = Wpisuj każdy wynik tak, jak go odczytujesz, na przykład { $mark }. Znak x to próba, która się nie liczy.
home-no-mark = Ta próba się nie liczy
home-attempts = Próby
home-best-today = Najlepszy wynik dnia
home-personal-best = Własny rekord
home-change = Zmiana
home-since = Zmiana od { $date }
home-standing-first = Twój pierwszy wynik: masz już co poprawiać.
home-standing-new = Nowy rekord!
home-standing-equalled = Tyle samo, ile wynosi Twój rekord.
home-days = Zachowane dni: wybierz dzień, aby go poprawić
home-day-to-come = Wybierz dzisiejszy dzień lub wcześniejszy.
home-refused-number = Nie da się tego odczytać. Wpisz wynik, na przykład { $mark }, albo x.
home-refused-unit = Ta jednostka tu nie pasuje. Wpisz wynik, na przykład { $mark }.
home-refused-doubt = Jaka to jednostka? Dopisz ją, na przykład { $mark }.
home-refused-seconds = Wpisz minuty, dwukropek i dwie cyfry sekund, najwyżej 59, na przykład 1:05.
home-refused-whole = Wpisz liczbę całkowitą, na przykład { $mark }.
home-refused-large = To o wiele za dużo. Wpisz wynik, na przykład { $mark }.
home-refused-none = Najpierw wpisz swój pseudonim.
home-refused-name = To wygląda na imię lub nazwisko. Wpisz kod od nauczyciela, na przykład K07.
home-refused-mail = To wygląda na adres, numer lub datę, po których można Cię rozpoznać. Wpisz kod od nauczyciela, na przykład K07.
home-refused-signs = Kod ma najwyżej 24 litery, cyfry, kropki i łączniki, na przykład K07.
home-answer = Moja odpowiedź
home-answer-said = Odpowiedź powiedziana na głos
home-personal = Usuń adresy e-mail i numery telefonów: ta odpowiedź nie zostanie zachowana.
home-send = Wyślij do nauczyciela
home-send-how = Tylko wtedy, gdy chcesz, i w taki sposób, o jaki prosi nauczyciel: skopiuj tekst do wiadomości lub e-maila, przekaż plik albo go wydrukuj. Bez imion i nazwisk, także w odpowiedziach.
home-send-nothing = Nie ma jeszcze czego wysłać: wpisz pseudonim oraz wynik lub odpowiedź.
home-send-text = Wszystko, co zostanie wysłane
home-copy = Kopiuj tekst
home-copied = Skopiowano.
home-share = Udostępnij …
home-file = Zapisz jako plik
home-print = Drukuj
home-export = Zapisz wszystko, co zachowano dla kodu { $code }
home-delete = Usuń wszystko, co zachowano dla kodu { $code }
home-sure = Usunąć wszystko, co to urządzenie zachowało dla kodu { $code }? Nie da się tego przywrócić.
home-deleted = Usunięto.
home-delete-note = To, co tu usuniesz, znika z tego urządzenia. Nie cofa to tego, co zostało już wysłane.
progress-own-words = Własnymi słowami dzieci: mogą w nich być imiona. Przeczytaj, zanim komukolwiek pokażesz.

## Pages: teachers
teachers-session = Zajęcia
teachers-active-short = Umiarkowany i duży
teachers-grade = Klasa (trudność tekstu)
teachers-matrix = Tabela sprzętu
teachers-matrix-how = Ile sztuk każdej rzeczy potrzeba na zajęciach naraz; w nawiasie to, bez czego można się obejść.
teachers-matrix-most = Najwięcej naraz
teachers-family-page = Strona dla rodziny

## Pages: choosing, doing, keeping
feed = Nowe i zmienione zajęcia
front-find = Szukaj
front-find-how = Słowo, na przykład gra lub rzecz
front-relax = Bez odpowiedzi „{ $answer }”: { $count }
now-start = Ćwicz teraz
now-start-how = Jedna część naraz, z minutnikiem.
now-leave = Cała strona
now-back = Wstecz
now-next = Dalej
now-place = { $number } z { $total }
now-after = Wyniki i pytania
timer = Minutnik
timer-left = Zostało
timer-start = Start
timer-pause = Pauza
timer-on = Dalej
timer-again = Od nowa
timer-explain = Patrz i słuchaj
timer-set-up = Przygotuj miejsce i rzeczy
timer-work = Ćwicz
timer-rest = Odpoczywaj
timer-recover = Odetchnij
timer-round = Seria { $number } z { $total }
timer-done = Dobra robota
timer-sound = Dźwięk
timer-buzz = Wibracje
timer-voice = Głos

## Library
retired-note = Te zajęcia są już wycofane. Zostały tu do przeczytania; do ćwiczenia wybierz inne.
borrowed-from = Zapożyczone ze zbioru „{ $pack }”
borrowed-changed = Zapożyczone ze zbioru „{ $pack }” i zmienione
borrowed-changed-by = Zapożyczone ze zbioru „{ $pack }”; zmiany: { $school }

## Editions and what changed
edition-mark = Wydanie { $mark }
edition = Czy mój wydruk jest aktualny?
edition-how = Każda karta ma w stopce oznaczenie wydania. Oto aktualne wydania:
edition-ask = Wydanie na mojej karcie
edition-current = { $mark } jest aktualne ({ $sheet }).
edition-changed = { $mark } nie jest aktualne. Karta się od tego czasu zmieniła albo pochodzi z innych zajęć: wydrukuj ją jeszcze raz.
edition-no-mark = Oznaczenie wydania ma cztery litery lub cyfry, bez I, L, O i U.
says-title = Tytuł
says-summary = Streszczenie
says-surface = Pod stopami
says-limits = Co pasuje
says-instead = Zamiast
says-note = Uwaga
says-things-for = Do czego są rzeczy
says-school = Szkoła
says-picture = Obrazek
says-by = Sprawdzone przez
says-look-again = Sprawdzić ponownie
says-explain = Objaśnienie
says-set-up = Przygotowanie
says-work = Praca
says-rest = Odpoczynek
says-rounds = Serie
says-recover = Odetchnięcie
says-effort = Wysiłek
says-how = Jak to zrobić
says-key-point = Najważniejsza wskazówka
says-attempts = Próby
says-movements = Ruchy
says-version = Inna wersja
says-flight = Lot
says-like = Podobne do
says-step = Najmniejsza różnica
says-reference = Do porównania
says-lengths = Najkrócej / najdłużej (waga)
since = Co się zmieniło
since-how = Od { $when }.
since-review = Co się zmieniło, do sprawdzenia
since-became = { $what }: było { $before }, jest { $now }
since-reworded = { $what }: inne sformułowanie
since-added = { $what }, nowe: { $text }
since-gone = { $what }, usunięto: { $text }
since-reordered = { $what }: inna kolejność
since-part-added = Nowa część
since-part-gone = Część usunięta
since-parts-reordered = Części są w innej kolejności
since-before = Przedtem
since-now = Teraz
since-new = Nowe zajęcia
since-no-more = Już ich tu nie ma
since-changed = Zmienione zajęcia
since-shared = Dla wszystkich zajęć
since-same = { $count ->
    [one] Jedne zajęcia są bez zmian.
    [few] Zajęcia bez zmian: { $count }.
    [many] Zajęcia bez zmian: { $count }.
   *[other] Zajęcia bez zmian: { $count }.
}
since-nothing = Nic się nie zmieniło.
since-small = Tylko drobne poprawki.
since-print = Wydrukuj ponownie
since-keep = Karty, których tu nie wymieniono, są nadal aktualne.
since-all-cards = wszystkie
since-marks = wydanie: było { $before }, jest { $now }
book-access = Każdy rysunek jest opisany słowami. Zajęcia wymagają ruchu; przy każdej części podano, jak ją ułatwić, a tam, gdzie są inne wersje, także te wersje.

## Figures
figure-says = { $view }, { $on }: { $angles }.
figure-straight = ciało wyprostowane
figure-angle = { $part } – { $ways }
figure-left = { $part } po lewej stronie
figure-right = { $part } po prawej stronie
figure-handed = Pokazano dla prawej ręki; osoby leworęczne robią to odwrotnie.
figure-arrow = Strzałka: { $part } – { $way }.
figure-moving = Pokaż w ruchu
figure-moment = Obrazek { $number }
figure-view-side = Widok z boku
figure-view-other-side = Widok z drugiego boku
figure-view-front = Widok z przodu
figure-view-back = Widok z tyłu
figure-view-corner = Widok z ukosa
figure-on-both-feet = stanie na obu nogach
figure-on-left-foot = stanie na lewej nodze
figure-on-right-foot = stanie na prawej nodze
figure-on-hands-and-feet = podpór na dłoniach i stopach
figure-on-hands-and-knees = klęk podparty
figure-on-knees = klęk
figure-on-one-knee = klęk na jednym kolanie
figure-on-seat = siad na podłodze
figure-on-chair = siad na krześle
figure-on-wheelchair = siad na wózku inwalidzkim
figure-on-back = leżenie na plecach
figure-on-front = leżenie na brzuchu
figure-on-left-side = leżenie na lewym boku
figure-on-right-side = leżenie na prawym boku
figure-on-air = w powietrzu
figure-part-trunk = tułów
figure-part-back = plecy
figure-part-head = głowa
figure-part-body = ciało
figure-part-arms = ramiona
figure-part-arm = ramię
figure-part-elbows = łokcie
figure-part-elbow = łokieć
figure-part-wrists = nadgarstki
figure-part-wrist = nadgarstek
figure-part-hands = dłonie
figure-part-hand = dłoń
figure-part-legs = nogi
figure-part-leg = noga
figure-part-knees = kolana
figure-part-knee = kolano
figure-part-feet = stopy
figure-part-foot = stopa
figure-part-thing = trzymany przedmiot
figure-way-forward = w przód
figure-way-back = w tył
figure-way-up = w górę
figure-way-down = w dół
figure-way-left = w lewo
figure-way-right = w prawo
figure-way-forward-and-up = w przód i w górę
figure-way-forward-and-down = w przód i w dół
figure-way-back-and-up = w tył i w górę
figure-way-sideways = w bok
figure-way-across = w poprzek ciała
figure-way-bent = ugięcie
figure-way-rounded = zaokrąglenie
figure-way-arched = wygięcie w łuk
figure-way-pointed = palcami od siebie
figure-way-pulled-up = zgięcie ku goleni
figure-holds-ball = Trzyma piłkę.
figure-holds-bag = Trzyma woreczek.
figure-holds-cushion = Trzyma poduszkę.
figure-holds-rope = Trzyma linkę lub ręcznik.
figure-holds-weight = Trzyma ciężarek.
figure-holds-tub = Trzyma pojemnik.
figure-holds-stick = Trzyma kij.
figure-holds-sheet = Trzyma kartkę.
figure-with-line = Linia na podłodze.
figure-with-marker = Z przodu znacznik.
figure-with-mat = Na macie.
figure-with-wall = Z przodu ściana.
figure-with-ball = Z przodu piłka.
figure-with-cushion = Pod spodem poduszka.
figure-with-chair = Z przodu krzesło.
figure-with-skittles = Z przodu kręgle.
poses-title = Pozycje
poses-lead = Wpisz nazwę pozycji w „figure:” i zmień to, co trzeba: {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = Dla nauczycieli
