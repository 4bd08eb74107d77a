### Les mots que lisent les familles et les professeurs d’EPS, sur les pages et sur le papier.

## Shared

part-warm-up = Échauffement
part-technique = Technique
part-challenge = Défi
part-stretch = Pour aller plus loin
part-cool-down = Retour au calme

effort-rest = Repos
effort-light = Léger
effort-moderate = Modéré
effort-vigorous = Intense

activity-athletics = Athlétisme
activity-dance = Danse
activity-fitness = Forme physique
activity-games = Jeux
activity-gymnastics = Gymnastique
activity-outdoor = Plein air

place-indoors = À l’intérieur
place-outdoors = Dehors
place-both = À l’intérieur ou dehors

surface-grass = de l’herbe
surface-carpet = de la moquette
surface-mat = un tapis de sol
surface-hard-floor = un sol dur
surface-paving = des dalles
surface-sand = du sable
surface-soft-play = un sol souple

piece-explain = expliquer { $amount }
piece-set-up = installer { $amount }
piece-work = effort { $amount }
piece-rest = repos { $amount }
piece-rounds = { $count ->
    [one] { $count } série
   *[other] { $count } séries
}
piece-recover = récupérer { $amount }
piece-counts = { $counts } temps à { $tempo } par minute

minutes = { $count ->
    [one] { $count } minute
   *[other] { $count } minutes
}
ages = Âge : { $ages } ans
optional = si vous en avez
soft = souple
list-or = { $rest } ou { $last }

kind-recall = Se souvenir
kind-explain = Expliquer
kind-compare = Comparer
kind-apply = Utiliser
kind-reflect = Faire le point

task-inform = présenter
task-extend = complexifier
task-refine = affiner
task-apply = appliquer

standing-draft = Brouillon
standing-reviewed = Relue
standing-approved = Validée
standing-retired = Retirée

adapt-space = Un autre espace
adapt-task = Une autre tâche
adapt-equipment = Un autre matériel
adapt-people = D’autres personnes

sheet-cards = Fiches
sheet-home-guide = Guide pour la maison
sheet-record = Feuille de résultats
sheet-review = Feuille de bilan

key-points = Points clés
easier = Plus facile
harder = Plus difficile
faults = Erreurs fréquentes
fault-see = On voit
fault-say = On dit
adult-nearby = Un adulte reste à proximité
adult-helping = Un adulte aide
landing-zone = Zone de chute
stop-and-collect = Arrêter et ramasser
cautions = Attention
local-rules = Les règles locales, l’évaluation des risques de l’école et la pratique agréée passent avant tout. Ces pages donnent des conseils. Elles ne peuvent pas garantir qu’une activité est sans danger chez vous.
attempt = Essai
best = Meilleur
mark-in = Résultat ({ $unit })
measure-distance = Mesurer la distance en { $unit }.
measure-time = Mesurer le temps en { $unit }.
measure-count = Compter : { $unit }.
measure-points = Additionner les points.
measure-criteria = À observer :
attempts = { $count ->
    [one] Un seul essai compte.
   *[other] { $count } essais comptent.
}
better-more = Plus, c’est mieux.
better-less = Moins, c’est mieux.
code-name = Surnom
date = Date
licence = Licence
credit = Auteurs

## Plans, on pages and on paper

plan = Plan au sol
plan-same = Le même sol que dans
plan-says = Plan au sol à l’échelle, long de { $length } et large de { $width }.
plan-stand = Départ ici
plan-wait = Attendre ici
plan-line = La ligne
plan-wall = Le mur
plan-moving = Place pour bouger
plan-run-up = Derrière la ligne
plan-landing = Réception
plan-stopping = Place pour s’arrêter
plan-clear = À laisser libre
plan-floor = Votre sol
plan-for = Pour { $parts }
plan-headroom = Hauteur libre : { $height }.
plan-askew = Placez-le d’un coin à l’autre : il ne tient qu’en biais.
plan-unfit = Il faut plus de place que cette séance n’en annonce : choisissez un endroit plus grand.
setting-out = Tracer avec un mètre ruban
tape-line = Tracez la ligne, large de { $length }.
tape-right-angle = Droit devant : faites une marque à { $along } sur la ligne et une à { $away } de son extrémité. C’est droit quand les deux marques sont à { $across } l’une de l’autre.
tape-diagonals = Tracez { $length } sur { $width }. Les angles sont droits quand les deux diagonales mesurent { $diagonal }.
tape-sector = Côtés : deux marques à { $along } du milieu de la ligne, écartées de { $apart }.
tape-reach = À libérer : { $margin } de plus au-delà de { $reach }.
tape-around = Gardez { $margin } de libre tout autour.
tape-wait = Attente : { $behind } derrière la ligne.

slots = Si le temps change
slots-how = L’échauffement et le retour au calme restent. Le plus important est gardé.
slot-in = En { $time }
slot-same = Tout tient.
slot-drop = Laissez de côté : { $list }.
slot-change = { $part } : { $time }.
slot-change-rounds = { $part } : { $rounds ->
    [one] { $rounds } série
   *[other] { $rounds } séries
}, { $time }.
slot-left = Il reste : { $time }.
slot-too-short = Trop court de { $by } : ce qui doit rester prend plus de temps.

effort-talk = Parole
effort-still = Le plus long moment sans bouger dure { $time }, dans « { $part } ».

effort-of-day = L’effort modéré et intense représente { $share } % des 60 minutes par jour que demande l’OMS (de 5 à 17 ans).
effort-rhythm = { $part } : { $work } d’effort pour { $rest } de repos ({ $ratio }).
effort-usual = Pour commencer, { $least } à { $most } s d’effort soutenu et autant de repos sont habituels à cet âge (usage courant).
effort-like = { $part } ressemble à « { $like } » dans le Compendium des activités physiques de 2011 : { $met } MET, { $band } (modéré à partir de { $from }). Valeur pour adultes : une estimation pour les enfants.

floor-how = Au sol
floor-fits = tient
floor-askew = tient en biais
floor-unfit = ne tient pas
floor-unsaid = aucun sol indiqué

things-as = { $things } à la place de { $need }
things-together = De quoi tout faire en même temps :
things-need = Nécessaire
things-at-home = À la maison
things-refused = Ne convient pas
things-missing = il en manque { $count }
things-once = À réunir une seule fois
things-once-how = Ces quelques objets servent à toutes les séances d’ici. Rien n’est utilisé à deux endroits à la fois.
things-all = Tout, avec ce qui peut remplacer
sheet-print = Imprimer cette liste (PDF)
things-once-unproven = Une liste plus courte existe peut-être.
sheet-gather = À réunir une seule fois
misfit-heavy = trop lourd : { $found }, il faut { $asked } pour { $ages } ans
misfit-light = trop léger : { $found }, il faut { $asked } pour { $ages } ans
misfit-large = trop grand : { $found }, il faut { $asked } pour { $ages } ans
misfit-small = trop petit : { $found }, il faut { $asked } pour { $ages } ans
misfit-hard = rien ne dit que c’est souple
misfit-lacks = rien ne dit que c’est { $asked }

flight-throw = Lâché à { $speed } m/s et { $angle }°, à { $height } du sol, l’objet va à { $distance } et monte à { $apex }. Il vole { $time } et arrive à { $landing } m/s.
flight-toss = Lancé vers le haut à { $speed } m/s depuis { $height }, l’objet monte à { $apex } et vole { $time }.
flight-drag = Le freinage de l’air sur « { $thing } » est compté ; sans lui, la distance serait de { $distance }.
flight-drag-toss = Le freinage de l’air sur « { $thing } » est compté.
flight-no-drag = Sans le freinage de l’air.
flight-headroom = Hauteur libre : { $height }.
flight-room = Sous { $ceiling }, le plus loin à cette vitesse est { $distance }, à { $angle }°.
flight-best = D’après la formule, { $angle }° est le meilleur angle, avec { $distance }. La vitesse d’une personne baisse quand l’angle augmente, donc le meilleur lancer réel est plus tendu : pour le poids, la formule donne environ 42° et les athlètes lancent à 37° ou 38°.

marks-distance = Les résultats sont lus au { $step } entier inférieur (règles techniques de World Athletics).
marks-time = Les temps manuels sont arrondis à { $step } supérieur (règles techniques de World Athletics pour les courses).
marks-time-held = Plus c’est long, mieux c’est : les temps sont lus à { $step } entier inférieur.
marks-whole = Les résultats sont des nombres entiers.
marks-ties = Le meilleur essai compte ; le suivant départage les égalités.
marks-reference = Pour comparer : { $mark } ({ $source }). Les populations diffèrent ; ce n’est la norme de personne.
marks-formula = Points : la partie entière de { $a } · d^{ $c }, où d est l’écart entre le résultat et { $b }.
marks-points-source = Points : { $source }
marks-from = À partir de
marks-points = Points
points-list = Points : { $list }.
points-from = { $points } à partir de { $mark }
points-within = { $points } jusqu’à { $mark }

reading-how = Difficulté des phrases que lit un enfant, selon des formules publiées, faites pour l’anglais. Elles voient les longueurs, pas le sens.
reading-words = Mots
reading-sentences = Phrases
reading-flesch = Facilité de lecture de Flesch
reading-kincaid = Niveau Flesch–Kincaid
reading-smog = Niveau SMOG
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = Âge de lecture (niveau + 5)
reading-long-words = Mots de trois syllabes et plus :
reading-long-sentences = Nombre de mots des phrases de plus de 20 mots :

flight-axis-angle = Angle
flight-axis-distance = Distance (m)
flight-figure-says = Distance selon l’angle. Le meilleur est

## Pages

skip = Aller au contenu
pages = Pages
nav-front = Toutes les séances
nav-things = Objets à réunir
nav-teachers = Pour les professeurs
nav-rules = Règles d’écriture
foot-contact = Demander à l’école
foot-made = Ces pages ne chargent rien d’ailleurs et n’envoient rien nulle part.

front-about = L’éducation physique à la maison : choisissez une séance selon l’âge, le temps, la place et les objets de la maison.
front-choose = Choisir une séance
front-choose-how = Répondez à ce que vous voulez. La liste ne garde que ce qui convient.
front-sessions = Séances
front-any = peu importe
front-age = Âge de l’enfant
front-minutes = Temps disponible
front-up-to = jusqu’à { $count } min
front-space = Espace libre
front-space-rug = un tapis, 2 m × 2 m
front-space-small-room = une petite pièce, 3 m × 3 m
front-space-big-room = une grande pièce, 5 m × 4 m
front-place = Où
front-activity = Activité
front-lacking = Nous n’avons pas …
front-lacking-how = (ni de quoi le remplacer)
front-more = Espace, lieu, activité et objets de la maison
front-reset = Recommencer
front-shown = Affichées :
front-none = Aucune séance ne convient à tout cela. Retirez une réponse.
front-needs = À réunir :
front-needs-nothing = Rien à réunir
front-cards = Fiches à imprimer
front-minutes-unit = min

fact-ages = Âge
fact-minutes = Minutes
fact-space = Espace libre
fact-place = Où
fact-effort = Effort, surtout

space = Espace
space-needs = { $size } de sol libre.
space-headroom = Hauteur libre { $height }.
space-surface = Bon sous les pieds : { $list }.

before = Avant de commencer
running-order = Déroulement
running-how = Plus la barre est haute, plus l’effort est grand.
line-label = Ligne de temps de { $minutes } minutes, une barre par partie
success = Ce que je sais faire à la fin
things = Objets à réunir
things-nothing = Rien. Vous êtes prêts.
things-household = Il y en a dans chaque maison.
things-limits = Ce qui convient : { $limits }
stands-in = Ou bien
for-parts = Pour :
adult = Le temps d’un adulte
adult-nearby-for = À proximité pendant { $time }.
adult-helping-for = Pour aider pendant { $time }.
adult-none = Pas demandé. Restez à portée de voix.
film = Film
from-to = { $from } à { $to }
beats-label = Effort et repos, dessinés à l’échelle
how-measured = Comment on mesure
throwing = Avant tout lancer
tick-rounds = Séries faites
finish = Fin
finish-say = Bois un peu d’eau. Puis note tes résultats.
marks = Mes résultats
marks-how = Utilise un surnom, jamais ton nom complet. Tes résultats sont à toi : améliore ton propre record.
next-time = La prochaine fois, je vais
review = Réfléchis
review-how = Dis ou écris d’abord ta réponse. Ouvre ensuite la nôtre.
review-answer = Notre réponse
adaptations = Adapter à votre situation
papers = Imprimer
sheet-cards-about = une partie par fiche, quatre par page
sheet-home-guide-about = une page : ligne de temps, objets, espace, précautions
sheet-record-about = un tableau pour noter les résultats
sheet-review-about = des questions, et les réponses sur une page à part
draft-note = Brouillon : cette séance n’a pas encore été relue.

things-intro = Tout ce que demandent les séances, et ce qui peut le remplacer. Cochez ce que vous trouvez.
things-for = Séances
things-extras = Utile, sans être nécessaire

rules-intro = Ce que homeground cherche quand il examine les fichiers de séance, et pourquoi. Il conseille ; il ne certifie jamais qu’une séance est sans danger.
rules-contents = Codes
rules-why = Pourquoi
rules-source = Source :
rules-bad = Pas comme ça
rules-good = Comme ça
severity-problem = Problème
severity-warning = Avertissement
severity-advice = Conseil

teachers-intro = Chaque séance avec sa ligne de temps, ses réponses et son statut. Les chiffres d’effort sont des estimations d’après l’effort annoncé des parties.
teachers-contents = Séances
teachers-active = Modéré et intense : { $time }, { $share } % de la durée (estimation)
teachers-plans = Plans : effort, temps, sol, objets, trajectoires, résultats, lecture
teachers-floors = Sols
teachers-flights = Trajectoires
teachers-marks = Résultats et points
teachers-reading = Lecture
teachers-part = Partie
teachers-from = De
teachers-time = Temps
teachers-effort = Effort
teachers-task = Tâche
teachers-objectives = Objectifs
teachers-success = Critères de réussite
teachers-codes = Programme
teachers-answers = Questions de bilan et réponses
teachers-standing = Statut
teachers-by = par { $by }
teachers-on = le { $on }
teachers-look-again = à revoir le { $on }
teachers-changed = Ce qui a changé
teachers-curriculum = Couverture du programme
teachers-uncovered = pas encore de séance

## Paper

cards-number = Fiche { $number } sur { $total }
cards-continued = (suite)
cards-see-guide = Le guide pour la maison donne le déroulement, ce qui peut remplacer chaque objet et toutes les précautions.
cards-adapt = Pour votre maison et pour vous
cards-helper = Pour la personne qui aide
cards-look = Ce qu’il faut regarder
cards-look-how = Ce qu’on peut voir → quoi dire. Une chose à la fois.
or-use = ou bien
sheet-number = Page { $number } sur { $total }
fact-time = Temps
review-paper-how = Dis d’abord ta réponse à voix haute. Écris-la ensuite.
review-answers = Réponses
review-own = Ta propre réponse.
review-help = Ce sont des réponses modèles. Les mots d’un enfant valent autant s’ils disent la même chose.
fact-headroom = Hauteur libre
record-look-for = À observer

## Quantities

amount-m = { $number } m
amount-cm = { $number } cm
amount-mm = { $number } mm
amount-kg = { $number } kg
amount-g = { $number } g
amount-min = { $number } min
amount-s = { $number } s
amount-min-s = { $minutes } { $seconds }
amount-at-most = { $amount } au plus
amount-at-least = { $amount } au moins
amount-any = peu importe

## Languages

languages = Autres langues
language-name = Français
shown-in-original = Cette séance n’est pas encore traduite. Elle est montrée dans sa langue d’origine ({ $language }).
translation-old = L’original a changé depuis cette traduction.
language-unnamed = sa langue
