### Every word of ours that a family or a teacher reads, on pages and on paper.
### One message a label; $count, $list … are filled in by the renderer.

## Shared

part-warm-up = Warm-up
part-technique = Technique
part-challenge = Challenge
part-stretch = Extension task
part-cool-down = Cool-down

effort-rest = Rest
effort-light = Light
effort-moderate = Moderate
effort-vigorous = Vigorous

activity-athletics = Athletics
activity-dance = Dance
activity-fitness = Fitness
activity-games = Games
activity-gymnastics = Gymnastics
activity-outdoor = Outdoor

place-indoors = Indoors
place-outdoors = Outdoors
place-both = Indoors or outdoors

surface-grass = grass
surface-carpet = carpet
surface-mat = a mat
surface-hard-floor = a hard floor
surface-paving = pavement
surface-sand = sand
surface-soft-play = soft play

piece-explain = explain { $amount }
piece-set-up = set up { $amount }
piece-work = work { $amount }
piece-rest = rest { $amount }
piece-rounds = { $count ->
    [one] 1 round
   *[other] { $count } rounds
}
piece-recover = recover { $amount }
piece-counts = { $counts } counts at { $tempo } a minute

minutes = { $count ->
    [one] { $count } minute
   *[other] { $count } minutes
}
ages = Ages { $ages }
optional = if you have it
soft = soft
list-or = { $rest } or { $last }

kind-recall = Remember
kind-explain = Explain
kind-compare = Compare
kind-apply = Use it
kind-reflect = Look back

task-inform = inform
task-extend = extend
task-refine = refine
task-apply = apply

standing-draft = Draft
standing-reviewed = Reviewed
standing-approved = Approved
standing-retired = Retired

adapt-space = Another space
adapt-task = Another task
adapt-equipment = Other equipment
adapt-people = Other people

sheet-cards = Cards
sheet-home-guide = Home guide
sheet-record = Record sheet
sheet-review = Review sheet

key-points = Cues
easier = Easier
harder = Harder
faults = Common faults
fault-see = You see
fault-say = You say
adult-nearby = An adult stays nearby
adult-helping = An adult helps
landing-zone = Landing zone
stop-and-collect = Stop and collect
cautions = Take care
local-rules = Local rules, the school’s risk assessment and licensed practice come first. These pages give advice. They cannot promise that an activity is safe in your home.
attempt = Attempt
best = Best
mark-in = Mark ({ $unit })
measure-distance = Measure the distance in { $unit }.
measure-time = Measure the time in { $unit }.
measure-count = Count the { $unit }.
measure-points = Add up the points.
measure-criteria = Look for these:
attempts = { $count ->
    [one] One attempt counts.
   *[other] { $count } attempts count.
}
better-more = More is better.
better-less = Less is better.
code-name = Code name
date = Date
licence = License
credit = Credit

## Plans, on pages and on paper

plan = Floor plan
plan-same = The same floor as in
plan-says = Floor plan to scale, { $length } long and { $width } wide.
plan-stand = Start here
plan-wait = Wait here
plan-line = The line
plan-wall = The wall
plan-moving = Room to move
plan-run-up = Behind the line
plan-landing = Landing
plan-stopping = Room to stop
plan-clear = Kept clear
plan-floor = Your floor
plan-for = For { $parts }
plan-headroom = Headroom: { $height }.
plan-askew = Lay it from corner to corner: it fits only at a slant.
plan-unfit = It needs more floor than this session promises: go somewhere larger.
setting-out = Setting out with a tape
tape-line = Mark the line, { $length } wide.
tape-right-angle = Straight ahead: mark { $along } along the line and { $away } away from its end. It is straight when both marks are { $across } apart.
tape-diagonals = Mark { $length } by { $width }. It is square when both diagonals are { $diagonal }.
tape-sector = Sides: two marks { $along } from the middle of the line, { $apart } apart.
tape-reach = Clear: { $margin } more beyond { $reach }.
tape-around = Keep { $margin } clear all round it.
tape-wait = Waiting: { $behind } behind the line.

slots = Another time
slots-how = The warm-up and the cool-down stay. What matters most is kept.
slot-in = In { $time }
slot-same = Everything fits.
slot-drop = Leave out: { $list }.
slot-change = { $part }: { $time }.
slot-change-rounds = { $part }: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
}, { $time }.
slot-left = Left over: { $time }.
slot-too-short = Too short by { $by }: what must stay takes longer.

effort-talk = Talk
effort-still = The longest time standing still is { $time }, in “{ $part }”.

effort-of-day = Moderate and vigorous work is { $share } % of the 60 minutes a day that the WHO asks for (ages 5 to 17).
effort-rhythm = { $part }: { $work } of work to { $rest } of rest ({ $ratio }).
effort-usual = To begin with, { $least } to { $most } s of hard work and as much rest are usual at this age (common practice).
effort-like = { $part } is like “{ $like }” in the 2011 Compendium of Physical Activities: { $met } MET, { $band } (moderate from { $from }). A figure of adults: an estimate for children.

floor-how = On the floor
floor-fits = fits
floor-askew = fits at a slant
floor-unfit = does not fit
floor-unsaid = no floor is named

things-as = { $things } as { $need }
things-together = Enough for all at once:
things-need = Needed
things-at-home = At home
things-refused = Not suitable
things-missing = { $count } too few
things-once = Gather once
things-once-how = These few things serve every session here. Nothing is needed twice at once.
things-all = Everything, with what can stand in
sheet-print = Print this list (PDF)
things-once-unproven = There may be a smaller set.
sheet-gather = Gather once
misfit-heavy = too heavy: { $found }, { $asked } for ages { $ages }
misfit-light = too light: { $found }, { $asked } for ages { $ages }
misfit-large = too large: { $found }, { $asked } for ages { $ages }
misfit-small = too small: { $found }, { $asked } for ages { $ages }
misfit-hard = not said to be soft
misfit-lacks = not said to be { $asked }

flight-throw = Let go at { $speed } m/s and { $angle }°, { $height } above the floor, it comes { $distance } far and { $apex } high. It flies for { $time } and lands at { $landing } m/s.
flight-toss = Tossed up at { $speed } m/s from { $height }, it rises to { $apex } and flies for { $time }.
flight-drag = The drag of the air on “{ $thing }” is counted in; without it the distance would be { $distance }.
flight-drag-toss = The drag of the air on “{ $thing }” is counted in.
flight-no-drag = Without the drag of the air.
flight-headroom = Headroom: { $height }.
flight-room = Under { $ceiling } the furthest at this speed is { $distance }, at { $angle }°.
flight-best = By the formula { $angle }° is best, with { $distance }. A person’s own speed falls as the angle rises, so the best real throw is flatter: for the shot the formula says about 42°, and athletes put it at 37° to 38°.

marks-distance = Marks are read down to the whole { $step } (World Athletics technical rules).
marks-time = Hand times are read up to the next { $step } (World Athletics technical rules for running).
marks-time-held = The longer the better: times are read down to the whole { $step }.
marks-whole = Marks are whole numbers.
marks-ties = The best attempt counts; the next best decides a tie.
marks-reference = To compare with: { $mark } ({ $source }). Populations differ; it is nobody’s norm.
marks-formula = Points: the whole part of { $a } · d^{ $c }, where d is how far the mark is beyond { $b }.
marks-points-source = Points: { $source }
marks-from = From
marks-points = Points
points-list = Points: { $list }.
points-from = { $points } from { $mark }
points-within = { $points } within { $mark }

reading-how = How hard the sentences are that a child reads, by published formulas made for English. They see lengths, not sense.
reading-words = Words
reading-sentences = Sentences
reading-flesch = Flesch reading ease
reading-kincaid = Flesch–Kincaid grade
reading-smog = SMOG grade
reading-ari = ARI
reading-coleman = Coleman–Liau
reading-age = Reading age (grade + 5)
reading-long-words = Words of three and more syllables:
reading-long-sentences = Words in the sentences over 20 words:

flight-axis-angle = Angle
flight-axis-distance = Distance (m)
flight-figure-says = Distance against angle. The best is

## Pages

skip = Skip to the content
pages = Pages
nav-front = All sessions
nav-things = Things to gather
nav-teachers = For teachers
nav-rules = Writing rules
foot-contact = Ask the school
foot-made = These pages load nothing from elsewhere and send nothing anywhere.

front-about = Physical education at home: choose a session by age, time, space and things at home.
front-choose = Choose a session
front-choose-how = Answer what you like. The list below keeps only what fits.
front-sessions = Sessions
front-any = any
front-age = Child’s age
front-minutes = Time you have
front-up-to = up to { $count } min
front-space = Clear space
front-space-rug = a rug, 2 m × 2 m
front-space-small-room = a small room, 3 m × 3 m
front-space-big-room = a big room, 5 m × 4 m
front-place = Where
front-activity = Activity
front-lacking = We have no …
front-lacking-how = (nor anything to stand in for it)
front-more = Space, place, activity and things at home
front-reset = Start again
front-shown = Shown:
front-none = No session fits all of that. Take one answer away.
front-needs = To gather:
front-needs-nothing = Nothing to gather
front-cards = Cards to print
front-minutes-unit = min

fact-ages = Ages
fact-minutes = Minutes
fact-space = Clear space
fact-place = Where
fact-effort = Effort, mostly

space = Space
space-needs = Clear { $size } of floor.
space-headroom = Headroom { $height }.
space-surface = Good underfoot: { $list }.

before = Before you start
running-order = Running order
running-how = A taller bar is harder work.
line-label = Time line of { $minutes } minutes, one bar for each part
success = What I can do by the end
things = Things to gather
things-nothing = Nothing. You are ready.
things-household = Every home has one.
things-limits = What fits: { $limits }
stands-in = Or use
for-parts = For:
adult = An adult’s time
adult-nearby-for = Nearby for { $time }.
adult-helping-for = Helping for { $time }.
adult-none = None asked for. Stay within earshot.
film = Video
from-to = { $from } to { $to }
beats-label = Work and rest, drawn to scale
how-measured = How it is measured
throwing = Before anything flies
tick-rounds = Rounds done
finish = Finish
finish-say = Drink some water. Then write down your marks.
marks = My marks
marks-how = Use a code name, never your full name. Your marks are yours: beat your own best.
next-time = Next time I will
review = Think about it
review-how = Say or write your answer first. Then open ours.
review-answer = Our answer
adaptations = Make it fit you
papers = Print it
sheet-cards-about = one part a card, { $cards } to a sheet
sheet-home-guide-about = one page: time line, things, space, cautions
sheet-record-about = a table to write marks in
sheet-review-about = questions, and the answers on a page of their own
draft-note = Draft: this session has not been reviewed yet.

things-intro = Everything the sessions here ask for, and what can stand in for it. Tick as you find.
things-for = Sessions
things-extras = Nice to have

rules-intro = What homeground looks for when it inspects session files, and why. It advises; it never certifies a session as safe.
rules-contents = Codes
rules-why = Why
rules-source = Source:
rules-bad = Not like this
rules-good = Like this
severity-problem = Problem
severity-warning = Warning
severity-advice = Advice

teachers-intro = Each session with its time line, answers and standing. Effort figures are estimates made from the parts’ stated effort.
teachers-contents = Sessions
teachers-active = Moderate and vigorous: { $time }, { $share } % of the slot (estimate)
teachers-plans = Plans: effort, time, floor, things, flight, marks, reading
teachers-floors = Floors
teachers-flights = Flights
teachers-marks = Marks and points
teachers-reading = Reading
teachers-part = Part
teachers-from = From
teachers-time = Time
teachers-effort = Effort
teachers-task = Task
teachers-objectives = Learning targets
teachers-success = Success criteria
teachers-codes = Standards
teachers-answers = Review questions and answers
teachers-standing = Standing
teachers-by = by { $by }
teachers-on = on { $on }
teachers-look-again = look again { $on }
teachers-changed = What changed

## Paper

cards-number = Card { $number } of { $total }
cards-continued = (continued)
cards-see-guide = The home guide has the running order, what can stand in for each thing, and all cautions.
cards-adapt = For your home and you
cards-helper = For whoever helps
cards-look = What to look for
cards-look-how = What you may see → what to say. One thing at a time.
or-use = or use
sheet-number = Page { $number } of { $total }
fact-time = Time
review-paper-how = Say your answer out loud first. Then write it down.
review-answers = Answers
review-own = Your own answer.
review-help = These are model answers. A child’s own words are as good where they mean the same.
fact-headroom = Headroom
record-look-for = Look for

## Quantities

amount-m = { $number } m
amount-cm = { $number } cm
amount-mm = { $number } mm
amount-kg = { $number } kg
amount-g = { $number } g
amount-min = { $number } min
amount-s = { $number } s
amount-min-s = { $minutes } { $seconds }
amount-at-most = at most { $amount }
amount-at-least = at least { $amount }
amount-any = any

## Languages

languages = Other languages
language-name = English (US)
shown-in-original = This session has not been translated yet. It is shown in { $language }.
translation-old = The original has changed since this was translated.
language-unnamed = its own language

## To scan, to copy, to send

scan-page = This session’s page
scan-film = The video

no-printer = No printer?
no-printer-how = Copy this by hand: about { $minutes } minutes. Or save it as text, or send it as messages.
copy-file = Copy by hand (text)
texts-file = Text messages (text)
no-printer-needs = You need: { $list }.
no-printer-read = Read all cautions on the page first.
no-printer-rules = The school’s rules and risk assessment come first.

## Sheets

sheet-large-print = Large-print cards
sheet-large-print-about = no words below 18 point, one card a sheet
sheet-class-set = Class set
sheet-class-set-about = { $copies ->
    [one] one numbered set of cards
   *[other] { $copies } numbered sets of cards
}, { $cards } to a sheet
sheet-booklet = Booklet
sheet-booklet-about = print on both sides, flipped on the short edge, and fold the stack once
sheet-poster = Poster
sheet-poster-about = the cues, to be read from 2 m
sheet-record-class = Record sheet for a class
sheet-record-class-about = code names down the side
sheet-record-week = Record sheet for a week
sheet-record-week-about = a column for each day
both-long = print on both sides, flipped on the long edge
both-short = print on both sides, flipped on the short edge
cards-back = Back of { $number } of { $total }
cards-set = Set { $number } of { $total }
notes = Notes
booklet-inside = Inside
record-class-tick = Check off what you saw. Leave a blank for what you did not see.
record-week-how = Check off what you did each day, and write your best mark of the day.
record-done = I did it
record-best-marks = My best mark
record-week-best = What went best this week?
week-of = Week of
day-1 = Mon
day-2 = Tue
day-3 = Wed
day-4 = Thu
day-5 = Fri
day-6 = Sat
day-7 = Sun

## Progress

progress-title = Progress of the class
progress-private = For the teacher. Codes only, no names. Keep until { $date }, then delete it: homeground progress --to … --forget
progress-how = Every change is against a child’s own earlier mark. Fitness marks are private: they are no grade and no comparison between children.
progress-rule = A change counts as more than day-to-day wobble where it is over two typical errors of one try (Hopkins 2000: 1.5 to 2). The typical error is from repeated tries of the same day: what differs from day to day comes on top.
progress-contents = In this report
progress-children = Children
progress-class = The class
progress-class-small = Fewer than { $fewest } children sent marks: no numbers for the class are shown, since they would name someone.
progress-first = First day
progress-latest = Latest day
progress-median = Median
progress-quartiles = Quartiles
progress-range = Least and most
progress-deviation = Standard deviation
progress-noise = Typical error of one try
progress-noise-from = from { $pairs } pairs of tries
progress-noise-unknown = not known: too few repeated tries
progress-smallest = Smallest change worth anything
progress-wobble = More than wobble from
progress-spread-says = A dot a child, a box from quartile to quartile, a thick line at the median.
progress-strip-says = Marks of { $code } in { $task }, day by day. The numbers are in the table beside it.
progress-better-more = Further right is better.
progress-better-less = Further left is better.
progress-child-table = Child by child
progress-code = Code
progress-place = Place
progress-first-mark = First
progress-last-mark = Last
progress-best-mark = Best
progress-best-on = { $mark } on { $date }
progress-change = Change
progress-verdict = Is it real?
progress-tries = Tries
progress-points = Points
progress-over-time = Over time
progress-next = Next, and why
progress-missing = Nothing sent yet
progress-missing-none = Everyone has sent something.
progress-silent = Sent nothing at all
progress-faults = Common faults checked off
progress-few = fewer than { $fewest }
progress-send = What to send next
progress-comments = Report card comments to edit
progress-questions = Review questions
progress-questions-how = What is right is the teacher’s to say. Here the answers are only gathered, and those alike are put together.
progress-right = right
progress-wrong = not yet
progress-unmarked = not marked
progress-answers-few = Fewer than { $fewest } children answered: their answers are not shown here.
progress-answers = Answers, as given
progress-model-answer = Our answer
progress-unread = Not read
progress-unread-how = These cells were left out. Everything else in their rows counts.
progress-row = Row
progress-column = Column
progress-says = What is wrong
progress-file = File

progress-short-once = first mark
progress-short-noise-unknown = too few tries to say
progress-short-too-close = too close to call
progress-short-too-small = real, but very small
progress-short-better = better, more than day-to-day wobble
progress-short-worse = less good, more than day-to-day wobble

progress-child-once = This is your first day. Now there is a mark to beat.
progress-child-noise-unknown = There are too few tries yet to say if that is more than day-to-day wobble.
progress-child-too-close = That is too close to call: marks wobble that much from try to try.
progress-child-too-small = That is more than day-to-day wobble, but it is very small.
progress-child-better = That is more than day-to-day wobble: you have gotten better.
progress-child-worse = This time it was less, by more than day-to-day wobble. Sleep, shoes and the floor all count. Try again.
progress-child-no-mark = No try has a mark yet. That happens: make it easier first.

progress-slip = My marks
progress-slip-for = For { $code }
progress-slip-how = Your marks are yours. Beat your own best.
progress-slip-change = From { $first } to { $last }: { $change }.
progress-slip-best = My best: { $mark }, on { $date }.
progress-slip-new-best = A new best: { $mark }, on { $date }!
progress-slip-band = Rings are tries, dots are the best of a day. In the grey band a change is too close to call.
progress-slip-no-band = Rings are tries, dots are the best of a day.
progress-slip-next = Next
progress-slip-again = Look again at these questions
progress-slip-day = Day
progress-slip-tries = Tries
progress-slip-day-best = Best

progress-mend = What was seen: “{ $see }” Try this: “{ $say }”
progress-mend-part = It is practiced in “{ $part }”.
progress-further = Try the extension task “{ $part }”.
progress-onward = After that: “{ $session }”.
progress-practise = Do it again, with one thing in mind: “{ $point }”
progress-practise-bare = Do it again, and watch one thing at a time.
progress-easier = Make it easier first: { $easier }
progress-easier-bare = Make it easier first.

progress-send-mend = “{ $part }” again, for { $count }: they checked off “{ $see }”
progress-send-further = The extension task “{ $part }”, for { $count }: their change is more than day-to-day wobble.
progress-send-onward = Then “{ $session }”, for { $count }: the same activity, not done yet.
progress-send-practise = “{ $part }” again, for { $count }: no gain beyond day-to-day wobble yet, and no fault checked off.
progress-send-easier = The easier way of “{ $part }”, for { $count }: there is no mark yet.

progress-comment-change = { $code } went from { $first } to { $last } in “{ $task }” ({ $change }, { $verdict }).
progress-comment-once = { $code } reached { $last } in “{ $task }” on the first day.
progress-comment-none = { $code } has tried “{ $task }” and has no mark yet.
progress-comment-next = Next step: { $next }

## Fit

fit-teacher = Who gets what
fit-teacher-lead = { $count ->
    [one] One home, by code.
   *[other] { $count } homes, by code.
} For each session the best version that its time, floors, people and things allow. Nothing unsafe stands in. Keep this sheet at school.
fit-print = Print this (PDF)
fit-grid = At a glance
fit-grid-how = Minutes, and how many of the parts. A dash: this session can’t be done there; below it says why.
fit-home = Home
fit-cell = { $minutes } min, { $kept } of { $all }
fit-cell-whole = { $minutes } min, whole
fit-home-heading = Home { $code }
fit-home-minutes = { $time } a day
fit-home-language = asks for { $language }
fit-reads-paper = print for this home
fit-reads-phone = send the folder to a phone
fit-as-written = As written.
fit-uses = Uses { $list }.
fit-not = not here
fit-left-out = Leaves out { $part }: { $why }.
fit-instead = Nearest to it: { $part }.
fit-cannot = { $list }: { $why }.
fit-one-thing = One thing would make it fit: { $thing }.
fit-no-one-thing = No one thing alone would make it fit.
fit-one-minutes = { $time } a day
fit-one-more-floor = { $by } more each way on floor { $floor }
fit-one-floor = a clear floor of { $size } { $place }
fit-one-helper = one more person to join in or stay close by
fit-one-version-seated = versions of its parts to do seated, which nobody has written yet
fit-one-version-quiet = quiet versions of its parts, which nobody has written yet
fit-why-seated = there is no version to do seated
fit-why-noise = feet come down hard, and there is no quiet version
fit-why-surface = no floor here has a surface that suits
fit-why-time = what stays is worth more in this time
fit-why-short = what must stay takes longer than there is time
fit-why-helpers = { $count ->
    [one] it needs one more person to join in or stay close by
   *[other] it needs { $count } more people to join in or stay close by
}
fit-why-place = it is done { $place }
fit-why-headroom = it needs headroom of { $height }
fit-why-floor = it needs a clear floor of { $size }
fit-why-things = there is nothing safe here for { $list }
fit-version-seated = Seated
fit-version-quiet = Quiet
fit-version-small-space = In a small space
fit-version-low-vision = For low vision
fit-version-partner = With a partner
fit-version-alone = Alone
fit-lend = Lend or mail
fit-lend-how = The fewest things with which every home can do each session that things alone stand in the way of. Then, home by home:
fit-lend-nothing = Nothing: no session fails just for lack of things.
fit-rethink = Rethink
fit-rethink-how = What a quarter of the homes or more can’t do (our own mark).
fit-rethink-nothing = Nothing: no session and no part fails in a quarter of the homes.
fit-rethink-homes = { $count } of { $of } homes can’t do it.
fit-rethink-why = Most often: { $why }.
fit-survey = Survey
fit-survey-title = What is there at home?
fit-survey-lead = So that PE at home fits your home. There is no right answer, and nothing to buy. Write no names.
fit-ask-code = Your code
fit-ask-code-how = The school gives it to you. Never write a name, an address or a date of birth.
fit-ask-code-line = Code
fit-ask-time = Time and people
fit-ask-minutes = Minutes a day there are for PE
fit-ask-helpers = People who can join in or stay close by
fit-ask-needs = What your child needs
fit-ask-seated = Does PE seated
fit-ask-low-vision = Sees little
fit-ask-quiet = Must be quiet indoors
fit-ask-reads = How you read it
fit-ask-paper = On paper
fit-ask-phone = On a phone
fit-ask-language = Language
fit-ask-floor = A clear floor
fit-ask-floor-how = The largest you can clear, walls and furniture left out.
fit-ask-floor-2 = A second floor
fit-ask-floor-2-how = If there is one: a yard, a patio, a hallway.
fit-ask-length = Length in meters
fit-ask-width = Width in meters
fit-ask-height = Height to the ceiling, or “outdoors”
fit-ask-outdoors = It is outdoors
fit-ask-things = Things you have
fit-ask-things-how = Write how many there are. Leave out what you don’t have.

## What came later
unit-units = Units of work
unit-things = Things: { $things }.
unit-remember = Remember?
unit-remember-how = Questions from earlier sessions. Answer from memory first, then look.
unit-remember-from = from { $session }
unit-week = Week { $week }
unit-none-plain = No school
unit-calendar = Add to your calendar
unit-calendar-about = Opens in the calendar of a phone or computer. Taking it in again moves what has changed.
unit-poster = Poster of the semester
unit-poster-about = For the wall, with a box to check for every session
unit-remember-sheet = Remember sheet
unit-remember-about = The questions that come back, day by day; answers on a page of their own
unit-gather-sheet = Things to gather
unit-gather = Gather once
unit-gather-how = The fewest things that serve every session of this unit.
unit-gather-by = By week { $week }
unit-get-out = Get out: { $things }
unit-put-back = Put back: { $things }
unit-same-things = The same things as before.
unit-minutes = Starts at { $time }, { $length }
unit-days = Days
unit-take = To take with you
unit-answers = Answers
unit-answer = Answer
unit-tick = Check a box for every session you do.
date-with-weekday = { $weekday }, { $date }
date-day-month = { $month } { $day }
date-with-year = { $date }, { $year }
weekday-monday = Monday
weekday-tuesday = Tuesday
weekday-wednesday = Wednesday
weekday-thursday = Thursday
weekday-friday = Friday
weekday-saturday = Saturday
weekday-sunday = Sunday
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
unit-together = Units and coverage
unit-teachers-lead = How this unit is put together, and why.
unit-plan = Plan
unit-session = Session
unit-why = Why here
unit-changes = Things
unit-why-named = named for this day
unit-why-order = put here by the program
unit-why-cover = added for { $codes }
unit-order = How the open days were filled
unit-order-rule = Sessions without a day were put in the order with, in this order of weight: the fewest before their ground ({ $grounds }), the fewest vigorous days running ({ $vigorous }), the fewest sessions twice in a row ({ $same }), the fewest things gotten out or put back ({ $things }), the least active time falling away from one session to the next ({ $lost }); then your own order.
unit-order-best = No other order is better.
unit-order-listed = There are too many open sessions to try every order; yours was kept.
unit-effort = Effort by week
unit-effort-lead = Estimates, from the efforts the sessions name, for one child who does them all. The World Health Organization (2020) advises an average of 60 minutes a day of moderate to vigorous activity over the week, and vigorous activity on at least 3 days; PE at home is a part of it.
unit-effort-vigorous = Vigorous
unit-effort-active = Moderate and vigorous
unit-effort-share = Share of the week’s 420 minutes
unit-effort-days = Vigorous days
unit-returns = Questions that come back
unit-returns-rule = A question is due { $after } days after its session. Each time it comes back, the next wait is { $growth } times as long, counted from that day; at most { $most } come back on one day, those due earliest first.
unit-returns-time = { $time ->
    [one] first time
   *[other] time { $time }
}
unit-cover = What the unit covers
unit-cover-met = Met by sessions you named: { $codes }.
unit-cover-added = { $session } was added for { $codes }.
unit-cover-best = No fewer sessions cover as much. Of equal choices the shortest counts, then the first by address.
unit-cover-unproven = Fewer may do: the library is too large to try everything.
unit-cover-none = No session for these ages meets: { $codes }.
unit-cover-room = There is no day left for: { $codes }.
unit-left-over = These found no day: { $sessions }.
coverage-title = Coverage
coverage-lead = Which sessions meet which statements, and for which grades. A session counts for a grade where all its ages are among the session’s.
coverage-sessions = Statements and sessions
coverage-groups = Statements and grades
coverage-statement = Statement
coverage-count = Sessions
coverage-gap = gap
coverage-often = often
coverage-meets = meets it
coverage-key = “Gap”: a statement that no session meets for a grade it is for. “Often”: one that at least { $least } sessions meet, and more than twice as many as the average.
coverage-csv = The matrix as a table (CSV)
coverage-no-gap = Every statement is met for every grade it is for.
coverage-not-for = not for this group
home-keeps = What you write here is kept on this device, in this browser, until you delete it. Nothing is sent by itself.
home-keeps-not = This browser keeps nothing for this page. What you write is gone when you close it: send it or save it first.
home-known = Who is it?
home-another = Add a code name
home-code-use = Use this code
home-code-help = The code from your teacher, such as K07, one for each child. Never a name, an address or a phone number.
home-code-first = Not kept yet: first write your code name above.
home-write = Write each mark as you read it, such as { $mark }. An x is for an attempt that did not count.
home-no-mark = This attempt did not count
home-attempts = Attempts
home-best-today = Best of the day
home-personal-best = Personal best
home-change = Change
home-since = Change since { $date }
home-standing-first = Your first mark: now you have something to beat.
home-standing-new = A new personal best!
home-standing-equalled = As good as your best.
home-days = Days kept: choose one to correct it
home-day-to-come = Choose today or a day before.
home-refused-number = This can’t be read. Write a mark such as { $mark }, or x.
home-refused-unit = This unit does not fit here. Write a mark such as { $mark }.
home-refused-doubt = Which unit is this? Write it too, such as { $mark }.
home-refused-seconds = Write minutes, a colon and two figures of seconds up to 59, such as 1:05.
home-refused-whole = Write a whole number, such as { $mark }.
home-refused-large = This is far too large. Write a mark such as { $mark }.
home-refused-none = Write your code name first.
home-refused-name = This looks like a name. Write the code from your teacher instead, such as K07.
home-refused-mail = This looks like an address, a number or a date that says who you are. Write the code from your teacher, such as K07.
home-refused-signs = A code has up to 24 letters, figures, dots and hyphens, such as K07.
home-answer = My answer
home-answer-said = I have said it out loud
home-personal = Leave out e-mail addresses and phone numbers: this answer is not kept.
home-send = Send to my teacher
home-send-how = Only when you want to, and in the way your teacher asked for: copy the text into a message or an e-mail, hand over the file, or print it. No names, please, in answers either.
home-send-nothing = Nothing to send yet: write a code name, and a mark or an answer.
home-send-text = All that is sent
home-copy = Copy the text
home-copied = Copied.
home-share = Share …
home-file = Save as a file
home-print = Print
home-export = Save all that is kept of { $code }
home-delete = Delete all that is kept of { $code }
home-sure = Delete all that this device keeps of { $code }? It can’t be brought back.
home-deleted = Deleted.
home-delete-note = What you delete here is gone from this device. It does not take back what you have sent.
progress-own-words = In the children’s own words: a name may stand in them. Read them before you show them to anyone.
teachers-session = Session
teachers-active-short = Moderate and vigorous
teachers-grade = Reading grade
teachers-matrix = Equipment matrix
teachers-matrix-how = How many of each thing a session asks for at once; in brackets where it can be done without.
teachers-matrix-most = Most at once
teachers-family-page = The family’s page
feed = New and changed sessions
front-find = Find
front-find-how = A word, such as a game or a thing
front-relax = Leave out “{ $answer }”: { $count }
now-start = Do it now
now-start-how = One part at a time, with a timer.
now-leave = Whole page
now-back = Back
now-next = Next
now-place = { $number } of { $total }
now-after = Marks and review
timer = Timer
timer-left = Time left
timer-start = Start
timer-pause = Pause
timer-on = Go on
timer-again = Start again
timer-explain = Look and listen
timer-set-up = Set out
timer-work = Move
timer-rest = Rest
timer-recover = Get your breath back
timer-round = Round { $number } of { $total }
timer-done = Well done
timer-sound = Sound
timer-buzz = Buzz
timer-voice = Voice
retired-note = This session is no longer in use. It is kept here to be read; please choose another one to do.
borrowed-from = Borrowed from { $pack }
borrowed-changed = Borrowed from { $pack }, and changed
borrowed-changed-by = Borrowed from { $pack }; changed by { $school }
edition-mark = Edition { $mark }
edition = Is my print up to date?
edition-how = Each sheet has four letters or numbers at the end of its foot: its edition. These are the current ones:
edition-ask = Edition on my sheet
edition-current = { $mark } is up to date ({ $sheet }).
edition-changed = { $mark } is not current. The sheet has changed since, or it is from another session: print it again.
edition-no-mark = An edition has four letters or numbers, without I, L, O and U.
says-title = Title
says-summary = Summary
says-surface = Underfoot
says-limits = What fits
says-instead = Instead
says-note = Note
says-things-for = Things are for
says-school = School
says-picture = Picture
says-by = Looked at by
says-look-again = Look again
says-explain = Explaining
says-set-up = Setting up
says-work = Work
says-rest = Rest
says-rounds = Rounds
says-recover = Getting breath back
says-effort = Effort
says-how = How to do it
says-key-point = Cue
says-attempts = Attempts
says-movements = Movements
says-version = Another version
says-flight = Flight
says-like = Like
says-step = Smallest step
says-reference = To compare with
says-lengths = Shortest / longest (worth)
since = What changed
since-how = Since { $when }.
since-review = What changed, for review
since-became = { $what }: { $before } became { $now }
since-reworded = { $what }, reworded
since-added = { $what }, new: { $text }
since-gone = { $what }, gone: { $text }
since-reordered = { $what }: in another order
since-part-added = New part
since-part-gone = Part gone
since-parts-reordered = The parts are in another order
since-before = Before
since-now = Now
since-new = New sessions
since-no-more = No longer here
since-changed = Changed sessions
since-shared = For every session
since-same = { $count ->
    [one] One session is as it was.
   *[other] { $count } sessions are as they were.
}
since-nothing = Nothing has changed.
since-small = Small corrections only.
since-print = Print again
since-keep = Sheets that are not named here are still good.
since-all-cards = all
since-marks = edition { $before } became { $now }
book-access = Every drawing is described in words. The sessions ask for movement; each part says how to make it easier, and other versions are told where there are any.
figure-says = { $view }, { $on }: { $angles }.
figure-straight = body straight
figure-angle = { $part } { $ways }
figure-left = left { $part }
figure-right = right { $part }
figure-handed = Shown for the right hand; the left-handed do it the other way round.
figure-arrow = An arrow: { $part } { $way }.
figure-moving = Show it moving
figure-moment = Picture { $number }
figure-view-side = Seen from the side
figure-view-other-side = Seen from the other side
figure-view-front = Seen from the front
figure-view-back = Seen from behind
figure-view-corner = Seen half from the side
figure-on-both-feet = standing on both feet
figure-on-left-foot = standing on the left foot
figure-on-right-foot = standing on the right foot
figure-on-hands-and-feet = on hands and feet
figure-on-hands-and-knees = on hands and knees
figure-on-knees = kneeling
figure-on-one-knee = kneeling on one knee
figure-on-seat = sitting on the floor
figure-on-chair = sitting on a chair
figure-on-wheelchair = sitting in a wheelchair
figure-on-back = lying on the back
figure-on-front = lying on the front
figure-on-left-side = lying on the left side
figure-on-right-side = lying on the right side
figure-on-air = in the air
figure-part-trunk = trunk
figure-part-back = back
figure-part-head = head
figure-part-body = body
figure-part-arms = arms
figure-part-arm = arm
figure-part-elbows = elbows
figure-part-elbow = elbow
figure-part-wrists = wrists
figure-part-wrist = wrist
figure-part-hands = hands
figure-part-hand = hand
figure-part-legs = legs
figure-part-leg = leg
figure-part-knees = knees
figure-part-knee = knee
figure-part-feet = feet
figure-part-foot = foot
figure-part-thing = the thing held
figure-way-forward = forward
figure-way-back = back
figure-way-up = up
figure-way-down = down
figure-way-left = to the left
figure-way-right = to the right
figure-way-forward-and-up = forward and up
figure-way-forward-and-down = forward and down
figure-way-back-and-up = back and up
figure-way-sideways = to the side
figure-way-across = across the body
figure-way-bent = bent
figure-way-rounded = rounded
figure-way-arched = arched
figure-way-pointed = pointed
figure-way-pulled-up = pulled up
figure-holds-ball = Holding a ball.
figure-holds-bag = Holding a beanbag.
figure-holds-cushion = Holding a cushion.
figure-holds-rope = Holding a rope or towel.
figure-holds-weight = Holding a weight.
figure-holds-tub = Holding a tub.
figure-holds-stick = Holding a stick.
figure-holds-sheet = Holding a sheet.
figure-with-line = A line on the floor.
figure-with-marker = A marker in front.
figure-with-mat = On a mat.
figure-with-wall = A wall in front.
figure-with-ball = A ball in front.
figure-with-cushion = A cushion underneath.
figure-with-chair = A chair in front.
figure-with-skittles = Pins in front.
poses-title = Poses
poses-lead = Write a pose by its name in “figure:”, and change what you need on top: {"{"}pose: ready stance, knees: bent 70{"}"}.
poses-back = Teachers
