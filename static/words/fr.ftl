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
sheet-cards-about = une partie par fiche, { $cards } par page
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

## To scan, to copy, to send

scan-page = La page de cette séance
scan-film = Le film

no-printer = Pas d’imprimante ?
no-printer-how = Recopiez ceci à la main : environ { $minutes } minutes. Ou bien enregistrez-le en texte, ou envoyez-le par messages.
copy-file = À recopier à la main (texte)
texts-file = SMS (texte)
no-printer-needs = Il vous faut : { $list }.
no-printer-read = Lisez d’abord toutes les précautions de la page.
no-printer-rules = Les règles de l’école et son évaluation des risques passent avant tout.

## Sheets

sheet-large-print = Fiches en gros caractères
sheet-large-print-about = aucun mot au-dessous de 18 points, une fiche par page
sheet-class-set = Jeu pour la classe
sheet-class-set-about = { $copies ->
    [one] { $copies } jeu de fiches numéroté
   *[other] { $copies } jeux de fiches numérotés
}, { $cards } par page
sheet-booklet = Livret
sheet-booklet-about = imprimer en recto verso, retourner sur le petit côté, puis plier toute la pile une fois
sheet-poster = Affiche
sheet-poster-about = les points clés, à lire à 2 m
sheet-record-class = Feuille de résultats de la classe
sheet-record-class-about = les surnoms dans la marge
sheet-record-week = Feuille de résultats de la semaine
sheet-record-week-about = une colonne par jour
both-long = imprimer en recto verso, retourner sur le grand côté
both-short = imprimer en recto verso, retourner sur le petit côté
cards-back = Dos de la fiche { $number } sur { $total }
cards-set = Jeu { $number } sur { $total }
notes = Notes
booklet-inside = À l’intérieur
record-class-tick = Cochez ce que vous avez vu. Laissez vide ce que vous n’avez pas vu.
record-week-how = Coche ce que tu as fait chaque jour et note ton meilleur résultat du jour.
record-done = Je l’ai fait
record-best-marks = Mon meilleur résultat
record-week-best = Qu’est-ce qui a le mieux marché cette semaine ?
week-of = Semaine du
day-1 = Lun
day-2 = Mar
day-3 = Mer
day-4 = Jeu
day-5 = Ven
day-6 = Sam
day-7 = Dim

## Progress

progress-title = Progrès de la classe
progress-private = Pour le professeur. Des codes seulement, aucun nom. À garder jusqu’au { $date }, puis à supprimer : homeground progress --to … --forget
progress-how = Chaque évolution se mesure aux résultats précédents du même élève. Les résultats de forme physique sont privés : ils ne servent ni à noter ni à comparer les élèves.
progress-rule = Une évolution dépasse les variations d’un jour à l’autre quand elle est supérieure à deux erreurs typiques d’un essai (Hopkins 2000 : 1,5 à 2). L’erreur typique vient d’essais répétés le même jour : ce qui change d’un jour à l’autre s’y ajoute.
progress-contents = Dans ce bilan
progress-children = Élèves
progress-class = La classe
progress-class-small = Moins de { $fewest } élèves ont envoyé des résultats : aucun chiffre de la classe n’est montré, car on pourrait reconnaître quelqu’un.
progress-first = Premier jour
progress-latest = Dernier jour
progress-median = Médiane
progress-quartiles = Quartiles
progress-range = Minimum et maximum
progress-deviation = Écart type
progress-noise = Erreur typique d’un essai
progress-noise-from = d’après { $pairs } paires d’essais
progress-noise-unknown = inconnue : trop peu d’essais répétés
progress-smallest = Plus petite évolution qui compte
progress-wobble = Plus qu’une simple variation à partir de
progress-spread-says = Un point par élève, une boîte d’un quartile à l’autre, un trait épais à la médiane.
progress-strip-says = Résultats de { $code } dans { $task }, jour par jour. Les chiffres sont dans le tableau à côté.
progress-better-more = Plus c’est à droite, mieux c’est.
progress-better-less = Plus c’est à gauche, mieux c’est.
progress-child-table = Élève par élève
progress-code = Code
progress-place = Rang
progress-first-mark = Premier
progress-last-mark = Dernier
progress-best-mark = Meilleur
progress-best-on = { $mark } le { $date }
progress-change = Évolution
progress-verdict = Est-ce réel ?
progress-tries = Essais
progress-points = Points
progress-over-time = Au fil du temps
progress-next = La suite, et pourquoi
progress-missing = Rien envoyé pour l’instant
progress-missing-none = Tout le monde a envoyé quelque chose.
progress-silent = N’ont rien envoyé du tout
progress-faults = Erreurs fréquentes cochées
progress-few = moins de { $fewest }
progress-send = Quoi envoyer ensuite
progress-comments = Appréciations à retoucher
progress-questions = Questions de bilan
progress-questions-how = C’est au professeur de dire ce qui est juste. Ici, les réponses sont seulement rassemblées, et celles qui se ressemblent sont regroupées.
progress-right = juste
progress-wrong = pas encore
progress-unmarked = pas corrigée
progress-answers-few = Moins de { $fewest } élèves ont répondu : leurs réponses ne sont pas montrées ici.
progress-answers = Réponses, telles quelles
progress-model-answer = Notre réponse
progress-unread = Non lu
progress-unread-how = Ces cases ont été laissées de côté. Tout le reste de leur ligne compte.
progress-row = Ligne
progress-column = Colonne
progress-says = Ce qui ne va pas
progress-file = Fichier

progress-short-once = premier résultat
progress-short-noise-unknown = trop peu d’essais pour le dire
progress-short-too-close = trop proche pour le dire
progress-short-too-small = réel, mais très petit
progress-short-better = mieux, au-delà des variations d’un jour à l’autre
progress-short-worse = moins bien, au-delà des variations d’un jour à l’autre

progress-child-once = C’est ton premier jour. Tu as maintenant un résultat à battre.
progress-child-noise-unknown = Il y a encore trop peu d’essais pour savoir si c’est plus qu’une variation d’un jour à l’autre.
progress-child-too-close = C’est trop proche pour le dire : les résultats varient autant d’un essai à l’autre.
progress-child-too-small = C’est plus qu’une variation d’un jour à l’autre, mais c’est très petit.
progress-child-better = C’est plus qu’une variation d’un jour à l’autre : tu as progressé.
progress-child-worse = Cette fois, c’est moins bien, au-delà des variations d’un jour à l’autre. Le sommeil, les chaussures et le sol comptent aussi. Essaie encore.
progress-child-no-mark = Aucun essai n’a encore de résultat. Ça arrive : commence par plus facile.

progress-slip = Mes résultats
progress-slip-for = Pour { $code }
progress-slip-how = Tes résultats sont à toi. Améliore ton propre record.
progress-slip-change = De { $first } à { $last } : { $change }.
progress-slip-best = Mon meilleur résultat : { $mark }, le { $date }.
progress-slip-new-best = Nouveau record : { $mark }, le { $date } !
progress-slip-band = Les ronds sont les essais, les points le meilleur de chaque jour. Dans la bande grise, une évolution est trop petite pour conclure.
progress-slip-no-band = Les ronds sont les essais, les points le meilleur de chaque jour.
progress-slip-next = La suite
progress-slip-again = Reprends ces questions
progress-slip-day = Jour
progress-slip-tries = Essais
progress-slip-day-best = Meilleur

progress-mend = Ce qu’on a vu : « { $see } » À essayer : « { $say } »
progress-mend-part = Cela se travaille dans « { $part } ».
progress-further = Essayer « { $part } », pour aller plus loin.
progress-onward = Après cela : « { $session } ».
progress-practise = Recommencer en pensant à une seule chose : « { $point } »
progress-practise-bare = Recommencer en faisant attention à une chose à la fois.
progress-easier = Commencer par plus facile : { $easier }
progress-easier-bare = Commencer par plus facile.

progress-send-mend = De nouveau « { $part } », pour { $count } élèves, qui ont coché « { $see } »
progress-send-further = « { $part } », pour aller plus loin, pour { $count } élèves : leur évolution dépasse les variations d’un jour à l’autre.
progress-send-onward = Puis « { $session } », pour { $count } élèves : la même activité, pas encore faite.
progress-send-practise = De nouveau « { $part } », pour { $count } élèves : pas encore de progrès au-delà des variations d’un jour à l’autre, et aucune erreur cochée.
progress-send-easier = « { $part } » en plus facile, pour { $count } élèves : pas encore de résultat.

progress-comment-change = Pour { $code }, le résultat passe de { $first } à { $last } dans « { $task } » ({ $change }, { $verdict }).
progress-comment-once = { $code } a obtenu { $last } dans « { $task } » le premier jour.
progress-comment-none = { $code } a essayé « { $task } » et n’a pas encore de résultat.
progress-comment-next = Prochaine étape : { $next }

## Fit

fit-teacher = Qui reçoit quoi
fit-teacher-lead = { $count ->
    [one] { $count } foyer, désigné par son code.
   *[other] { $count } foyers, désignés par leur code.
} Pour chaque séance, la meilleure version que permettent le temps, les sols, les personnes et les objets. Rien de dangereux ne sert de remplacement. Gardez cette feuille à l’école.
fit-print = Imprimer ceci (PDF)
fit-grid = En un coup d’œil
fit-grid-how = Les minutes, et combien de parties. Un tiret : cette séance ne peut pas se faire là ; la raison est donnée plus bas.
fit-home = Foyer
fit-cell = { $minutes } min, { $kept } sur { $all }
fit-cell-whole = { $minutes } min, en entier
fit-home-heading = Foyer { $code }
fit-home-minutes = { $time } par jour
fit-home-language = langue demandée : { $language }
fit-reads-paper = imprimer pour ce foyer
fit-reads-phone = envoyer le dossier sur un téléphone
fit-as-written = Telle quelle.
fit-uses = Objets utilisés : { $list }.
fit-not = pas ici
fit-left-out = Sans { $part } : { $why }.
fit-instead = Le plus proche : { $part }.
fit-cannot = { $list } : { $why }.
fit-one-thing = Une seule chose suffirait : { $thing }.
fit-no-one-thing = Aucune chose ne suffirait à elle seule.
fit-one-minutes = { $time } par jour
fit-one-more-floor = { $by } de plus dans chaque sens pour le sol { $floor }
fit-one-floor = un sol libre de { $size } { $place }
fit-one-helper = une personne de plus pour participer ou rester à proximité
fit-one-version-seated = des versions assises de ses parties, que personne n’a encore écrites
fit-one-version-quiet = des versions silencieuses de ses parties, que personne n’a encore écrites
fit-why-seated = il n’y a pas de version assise
fit-why-noise = les pieds frappent fort le sol, et il n’y a pas de version silencieuse
fit-why-surface = aucun sol d’ici n’a le revêtement qui convient
fit-why-time = dans ce temps, ce qui reste apporte davantage
fit-why-short = ce qui doit rester prend plus que le temps disponible
fit-why-helpers = { $count ->
    [one] il faut { $count } personne de plus pour participer ou rester à proximité
   *[other] il faut { $count } personnes de plus pour participer ou rester à proximité
}
fit-why-place = cela se fait { $place }
fit-why-headroom = il faut une hauteur libre de { $height }
fit-why-floor = il faut un sol libre de { $size }
fit-why-things = il n’y a rien ici de sûr pour remplacer : { $list }
fit-version-seated = Assis
fit-version-quiet = Sans bruit
fit-version-small-space = Dans un petit espace
fit-version-low-vision = Pour qui voit mal
fit-version-partner = À deux
fit-version-alone = En solo
fit-lend = À prêter ou à envoyer
fit-lend-how = Le moins d’objets possible pour que chaque foyer puisse faire chaque séance à laquelle seuls des objets manquent. Puis, foyer par foyer :
fit-lend-nothing = Rien : aucune séance n’est empêchée seulement par des objets qui manquent.
fit-rethink = À repenser
fit-rethink-how = Ce qu’un quart des foyers ou plus ne peut pas faire (seuil fixé par nous).
fit-rethink-nothing = Rien : aucune séance ni aucune partie n’est impossible dans un quart des foyers.
fit-rethink-homes = Impossible dans { $count } foyers sur { $of }.
fit-rethink-why = Le plus souvent : { $why }.
fit-survey = Questionnaire
fit-survey-title = Qu’y a-t-il à la maison ?
fit-survey-lead = Pour que l’EPS à la maison convienne à votre maison. Il n’y a pas de bonne réponse, et rien à acheter. N’écrivez aucun nom.
fit-ask-code = Votre code
fit-ask-code-how = L’école vous le donne. N’écrivez jamais de nom, d’adresse ni de date de naissance.
fit-ask-code-line = Code
fit-ask-time = Temps et personnes
fit-ask-minutes = Minutes par jour disponibles pour l’EPS
fit-ask-helpers = Personnes qui peuvent participer ou rester à proximité
fit-ask-needs = Ce dont votre enfant a besoin
fit-ask-seated = Fait l’EPS en position assise
fit-ask-low-vision = Voit mal
fit-ask-quiet = Ne doit pas faire de bruit à l’intérieur
fit-ask-reads = Comment vous lisez les séances
fit-ask-paper = Sur papier
fit-ask-phone = Sur un téléphone
fit-ask-language = Langue
fit-ask-floor = Un sol libre
fit-ask-floor-how = Le plus grand que vous pouvez libérer, sans compter les murs ni les meubles.
fit-ask-floor-2 = Un deuxième sol
fit-ask-floor-2-how = S’il y en a un : une cour, un jardin, un hall.
fit-ask-length = Longueur en mètres
fit-ask-width = Largeur en mètres
fit-ask-height = Hauteur jusqu’au plafond, ou « dehors »
fit-ask-outdoors = C’est dehors
fit-ask-things = Objets que vous avez
fit-ask-things-how = Écrivez combien il y en a. Laissez vide ce que vous n’avez pas.

## Units
unit-units = Séquences d’enseignement
unit-things = Objets : { $things }.
unit-remember = Tu te souviens ?
unit-remember-how = Des questions de séances passées. Réponds d’abord de mémoire, puis regarde.
unit-remember-from = de la séance « { $session } »
unit-week = Semaine { $week }
unit-none-plain = Pas d’école
unit-calendar = Ajouter à votre agenda
unit-calendar-about = S’ouvre dans l’agenda d’un téléphone ou d’un ordinateur. En l’ajoutant de nouveau, on déplace ce qui a changé.
unit-poster = Affiche du trimestre
unit-poster-about = Pour le mur, avec une case à cocher par séance
unit-remember-sheet = Feuille « Tu te souviens ? »
unit-remember-about = Les questions qui reviennent, jour par jour ; les réponses sur une page à part
unit-gather-sheet = Objets à réunir
unit-gather = À réunir une seule fois
unit-gather-how = Le moins d’objets possible pour toutes les séances de cette séquence.
unit-gather-by = Pour la semaine { $week }
unit-get-out = À sortir : { $things }
unit-put-back = À ranger : { $things }
unit-same-things = Les mêmes objets qu’avant.
unit-minutes = Début à { $time }, { $length }
unit-days = Jours
unit-take = À emporter
unit-answers = Réponses
unit-answer = Réponse
unit-tick = Coche une case pour chaque séance faite.
date-with-weekday = { $weekday } { $date }
date-day-month = { $day } { $month }
date-with-year = { $date } { $year }
weekday-monday = lundi
weekday-tuesday = mardi
weekday-wednesday = mercredi
weekday-thursday = jeudi
weekday-friday = vendredi
weekday-saturday = samedi
weekday-sunday = dimanche
month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre
unit-together = Séquences et couverture
unit-teachers-lead = Comment cette séquence est composée, et pourquoi.
unit-plan = Plan
unit-session = Séance
unit-why = Pourquoi ici
unit-changes = Objets
unit-why-named = prévue pour ce jour
unit-why-order = placée ici automatiquement
unit-why-cover = ajoutée pour { $codes }
unit-order = Comment les jours libres ont été remplis
unit-order-rule = Les séances sans jour ont été mises dans l’ordre qui donne, du plus important au moins important : le moins de séances placées avant celle sur laquelle elles s’appuient ({ $grounds }), le moins de jours intenses d’affilée ({ $vigorous }), le moins de séances deux fois de suite ({ $same }), le moins d’objets à sortir ou à ranger ({ $things }), la plus petite perte de temps actif d’une séance à la suivante ({ $lost }) ; enfin, votre propre ordre.
unit-order-best = Aucun autre ordre n’est meilleur.
unit-order-listed = Il y a trop de séances sans jour pour essayer tous les ordres ; le vôtre a été gardé.
unit-effort = Effort par semaine
unit-effort-lead = Estimations, d’après l’effort annoncé des séances, pour un enfant qui les fait toutes. L’Organisation mondiale de la Santé (2020) recommande en moyenne 60 minutes par jour d’activité modérée à intense sur la semaine, et une activité intense au moins 3 jours ; l’EPS à la maison en est une partie.
unit-effort-vigorous = Intense
unit-effort-active = Modéré et intense
unit-effort-share = Part des 420 minutes de la semaine
unit-effort-days = Jours intenses
unit-returns = Questions qui reviennent
unit-returns-rule = Une question revient { $after } jours après sa séance. À chaque retour, l’attente suivante est { $growth } fois plus longue, comptée à partir de ce jour ; au plus { $most } reviennent le même jour, les plus anciennes d’abord.
unit-returns-time = { $time ->
    [one] première fois
   *[other] { $time }e fois
}
unit-cover = Ce que couvre la séquence
unit-cover-met = Couvert par les séances que vous avez choisies : { $codes }.
unit-cover-added = « { $session } » est là en plus pour { $codes }.
unit-cover-best = Un nombre plus petit de séances ne couvrirait pas autant. À égalité, la plus courte est prise, puis la première par adresse.
unit-cover-unproven = Moins de séances suffiraient peut-être : il y en a trop pour tout essayer.
unit-cover-none = Aucune séance pour ces âges ne couvre : { $codes }.
unit-cover-room = Il ne reste pas de jour pour : { $codes }.
unit-left-over = Pas de jour trouvé pour : { $sessions }.
coverage-title = Couverture du programme
coverage-lead = Quelles séances répondent à quels attendus, et pour quels niveaux de classe. Une séance compte pour un niveau si elle convient à tous les âges de ce niveau.
coverage-sessions = Attendus et séances
coverage-groups = Attendus et niveaux de classe
coverage-statement = Attendu
coverage-count = Séances
coverage-gap = manque
coverage-often = souvent
coverage-meets = y répond
coverage-key = « Manque » : un attendu auquel aucune séance ne répond pour un niveau concerné. « Souvent » : un attendu auquel répondent au moins { $least } séances, et plus de deux fois plus que la moyenne.
coverage-csv = Le tableau complet (CSV)
coverage-no-gap = Chaque attendu a une séance pour chaque niveau concerné.
coverage-not-for = ne concerne pas ce niveau

## Marks at home
home-keeps = Ce que tu écris ici est gardé sur cet appareil, dans ce navigateur, jusqu’à ce que tu le supprimes. Rien ne part tout seul.
home-keeps-not = Ce navigateur ne garde rien pour cette page. Ce que tu écris disparaît quand tu la fermes : envoie-le ou enregistre-le avant.
home-known = Qui es-tu ?
home-another = Ajouter un surnom
home-code-use = Utiliser ce code
home-code-help = Le code donné par ton professeur, comme K07, un par enfant. Jamais de nom, d’adresse ni de numéro de téléphone.
home-code-first = Pas encore gardé : écris d’abord ton surnom ci-dessus.
home-write = Écris chaque résultat comme tu le lis, par exemple { $mark }. Un x veut dire que l’essai n’a pas compté.
home-no-mark = Cet essai n’a pas compté
home-attempts = Essais
home-best-today = Meilleur du jour
home-personal-best = Record personnel
home-change = Évolution
home-since = Évolution depuis le { $date }
home-standing-first = Ton premier résultat : tu as maintenant quelque chose à battre.
home-standing-new = Nouveau record personnel !
home-standing-equalled = Aussi bien que ton record.
home-days = Jours gardés : choisis-en un pour le corriger
home-day-to-come = Choisis aujourd’hui ou un jour passé.
home-refused-number = Impossible à lire. Écris un résultat comme { $mark }, ou x.
home-refused-unit = Cette unité ne va pas ici. Écris un résultat comme { $mark }.
home-refused-doubt = Dans quelle unité ? Écris-la aussi, par exemple { $mark }.
home-refused-seconds = Écris les minutes, deux points, puis les secondes avec deux chiffres, jusqu’à 59, par exemple 1:05.
home-refused-whole = Écris un nombre entier, par exemple { $mark }.
home-refused-large = C’est beaucoup trop grand. Écris un résultat comme { $mark }.
home-refused-none = Écris d’abord ton surnom.
home-refused-name = Cela ressemble à un nom. Écris plutôt le code donné par ton professeur, comme K07.
home-refused-mail = Cela ressemble à une adresse, à un numéro ou à une date qui dit qui tu es. Écris le code donné par ton professeur, comme K07.
home-refused-signs = Un code a au plus 24 lettres, chiffres, points et traits d’union, comme K07.
home-answer = Ma réponse
home-answer-said = Je l’ai dit à voix haute
home-personal = Laisse de côté les adresses e-mail et les numéros de téléphone : cette réponse n’est pas gardée.
home-send = Envoyer à mon professeur
home-send-how = Seulement quand tu veux, et de la façon demandée par ton professeur : copie le texte dans un message ou un e-mail, donne le fichier, ou imprime-le. Pas de noms, s’il te plaît, même dans les réponses.
home-send-nothing = Encore rien à envoyer : écris un surnom, puis un résultat ou une réponse.
home-send-text = Tout ce qui est envoyé
home-copy = Copier le texte
home-copied = Copié.
home-share = Partager …
home-file = Enregistrer dans un fichier
home-print = Imprimer
home-export = Enregistrer tout ce qui est gardé pour { $code }
home-delete = Supprimer tout ce qui est gardé pour { $code }
home-sure = Supprimer tout ce que cet appareil garde pour { $code } ? On ne pourra pas le retrouver.
home-deleted = Supprimé.
home-delete-note = Ce que tu supprimes ici disparaît de cet appareil. Ce que tu as déjà envoyé reste envoyé.
progress-own-words = Avec les mots des élèves : un nom peut s’y trouver. Lisez-les avant de les montrer à quelqu’un.

## Pages: teachers
teachers-session = Séance
teachers-active-short = Modéré et intense
teachers-grade = Niveau de lecture
teachers-matrix = Tableau du matériel
teachers-matrix-how = Combien de chaque objet une séance demande en même temps ; entre parenthèses, ce dont on peut se passer.
teachers-matrix-most = Maximum en même temps
teachers-family-page = La page de la famille

## Pages: choosing, doing, keeping
feed = Séances nouvelles et modifiées
front-find = Chercher
front-find-how = Un mot, par exemple un jeu ou un objet
front-relax = Retirer « { $answer } » : { $count }
now-start = Faire la séance maintenant
now-start-how = Une partie à la fois, avec un minuteur.
now-leave = Page entière
now-back = Retour
now-next = Suite
now-place = { $number } sur { $total }
now-after = Résultats et bilan
timer = Minuteur
timer-left = Temps restant
timer-start = Démarrer
timer-pause = Pause
timer-on = Reprendre
timer-again = Recommencer
timer-explain = Regarde et écoute
timer-set-up = Installe
timer-work = Bouge
timer-rest = Repose-toi
timer-recover = Reprends ton souffle
timer-round = Série { $number } sur { $total }
timer-done = Bravo
timer-sound = Son
timer-buzz = Vibration
timer-voice = Voix

## Library
retired-note = Cette séance n’est plus utilisée. Elle reste ici pour être lue ; choisissez-en une autre à faire.
borrowed-from = Séance empruntée à « { $pack } »
borrowed-changed = Séance empruntée à « { $pack } » et modifiée
borrowed-changed-by = Séance empruntée à « { $pack } » ; modifiée par { $school }

## Editions and what changed
edition-mark = Édition { $mark }
edition = Ma feuille imprimée est-elle à jour ?
edition-how = Chaque feuille porte son édition en bas. Voici les éditions actuelles :
edition-ask = Édition de ma feuille
edition-current = { $mark } est à jour ({ $sheet }).
edition-changed = { $mark } n’est pas l’édition actuelle. La feuille a changé depuis, ou elle vient d’une autre séance : imprimez-la de nouveau.
edition-no-mark = Une édition a quatre lettres ou chiffres, sans I, L, O ni U.
says-title = Titre
says-summary = Résumé
says-surface = Sous les pieds
says-limits = Ce qui convient
says-instead = À la place
says-note = Remarque
says-things-for = À quoi servent les objets
says-school = École
says-picture = Image
says-by = Relue par
says-look-again = À revoir
says-explain = Explication
says-set-up = Installation
says-work = Travail
says-rest = Repos
says-rounds = Séries
says-recover = Récupération
says-effort = Effort
says-how = Comment faire
says-key-point = Point clé
says-attempts = Essais
says-movements = Mouvements
says-version = Autre version
says-flight = Trajectoire
says-like = Ressemble à
says-step = Plus petit écart
says-reference = Pour comparer
says-lengths = Durée minimale / maximale (valeur)
since = Ce qui a changé
since-how = Depuis { $when }.
since-review = Ce qui a changé, pour la relecture
since-became = { $what } : avant { $before }, maintenant { $now }
since-reworded = { $what } : texte reformulé
since-added = { $what }, en plus : { $text }
since-gone = { $what }, en moins : { $text }
since-reordered = { $what } : dans un autre ordre
since-part-added = Nouvelle partie
since-part-gone = Partie retirée
since-parts-reordered = Les parties sont dans un autre ordre
since-before = Avant
since-now = Maintenant
since-new = Nouvelles séances
since-no-more = Ne sont plus ici
since-changed = Séances modifiées
since-shared = Pour toutes les séances
since-same = { $count ->
    [one] { $count } séance n’a pas changé.
   *[other] { $count } séances n’ont pas changé.
}
since-nothing = Rien n’a changé.
since-small = Seulement de petites corrections.
since-print = À réimprimer
since-keep = Les feuilles qui ne sont pas citées ici restent valables.
since-all-cards = toutes
since-marks = édition : avant { $before }, maintenant { $now }
book-access = Chaque dessin est décrit avec des mots. Les séances demandent de bouger ; chaque partie dit comment la rendre plus facile, et les autres versions sont indiquées quand il y en a.

## Figures
figure-says = { $view }, { $on } : { $angles }.
figure-straight = corps droit
figure-angle = { $part } { $ways }
figure-left = { $part } côté gauche
figure-right = { $part } côté droit
figure-handed = Montré pour la main droite ; avec la main gauche, on fait l’inverse.
figure-arrow = Une flèche : { $part } { $way }.
figure-moving = Montrer le mouvement
figure-moment = Image { $number }
figure-view-side = Vue de côté
figure-view-other-side = Vue de l’autre côté
figure-view-front = Vue de face
figure-view-back = Vue de dos
figure-view-corner = Vue de trois quarts
figure-on-both-feet = debout sur les deux pieds
figure-on-left-foot = debout sur le pied gauche
figure-on-right-foot = debout sur le pied droit
figure-on-hands-and-feet = en appui sur les mains et les pieds
figure-on-hands-and-knees = à quatre pattes
figure-on-knees = à genoux
figure-on-one-knee = un genou au sol
figure-on-seat = en position assise au sol
figure-on-chair = en position assise sur une chaise
figure-on-wheelchair = en position assise dans un fauteuil roulant
figure-on-back = en position allongée sur le dos
figure-on-front = en position allongée sur le ventre
figure-on-left-side = en position allongée sur le côté gauche
figure-on-right-side = en position allongée sur le côté droit
figure-on-air = en l’air
figure-part-trunk = buste
figure-part-back = dos
figure-part-head = tête
figure-part-body = corps
figure-part-arms = bras
figure-part-arm = bras
figure-part-elbows = coudes
figure-part-elbow = coude
figure-part-wrists = poignets
figure-part-wrist = poignet
figure-part-hands = mains
figure-part-hand = main
figure-part-legs = jambes
figure-part-leg = jambe
figure-part-knees = genoux
figure-part-knee = genou
figure-part-feet = pieds
figure-part-foot = pied
figure-part-thing = objet tenu
figure-way-forward = vers l’avant
figure-way-back = vers l’arrière
figure-way-up = vers le haut
figure-way-down = vers le bas
figure-way-left = vers la gauche
figure-way-right = vers la droite
figure-way-forward-and-up = vers l’avant et vers le haut
figure-way-forward-and-down = vers l’avant et vers le bas
figure-way-back-and-up = vers l’arrière et vers le haut
figure-way-sideways = de côté
figure-way-across = en travers du corps
figure-way-bent = en flexion
figure-way-rounded = arrondi
figure-way-arched = cambré
figure-way-pointed = en extension
figure-way-pulled-up = vers le tibia
figure-holds-ball = Tient une balle.
figure-holds-bag = Tient un petit sac lesté.
figure-holds-cushion = Tient un coussin.
figure-holds-rope = Tient une corde ou une serviette.
figure-holds-weight = Tient une charge.
figure-holds-tub = Tient une bassine.
figure-holds-stick = Tient un bâton.
figure-holds-sheet = Tient une feuille.
figure-with-line = Une ligne au sol.
figure-with-marker = Un repère devant.
figure-with-mat = Sur un tapis.
figure-with-wall = Un mur devant.
figure-with-ball = Une balle devant.
figure-with-cushion = Un coussin dessous.
figure-with-chair = Une chaise devant.
figure-with-skittles = Des quilles devant.
poses-title = Postures
poses-lead = Écrivez le nom d’une posture dans « figure: » et changez par-dessus ce qu’il vous faut : {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = Pour les professeurs
