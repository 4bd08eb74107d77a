"""Flight, without drag by the closed forms in longer numbers, with drag by SciPy's integrators."""

import itertools
import math
import random

import numpy
import scipy.constants
from program import ask
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, minimize_scalar

AGAINST = "scipy.constants, scipy.integrate.solve_ivp (DOP853, 1e-12), scipy.optimize, closed forms in 80 bits"

G = scipy.constants.g
# ICAO standard atmosphere: 101325 Pa and 15 °C; molar mass and gas constant as it gives them.
AIR = 101325 * 0.028964420 / (8.31432 * 288.15)
FIGURES = ("distance", "apex", "time", "landing_speed", "landing_angle")

# Mass kg, diameter m. Tennis: ITF. Table tennis: from memory. Football: IFAB. The rest are made up.
BALLS = {
    "tennis": (0.0577, 0.066995), "table tennis": (0.0027, 0.040), "football 5": (0.430, 0.690 / math.pi),
    "rolled socks": (0.070, 0.09), "beanbag": (0.120, 0.10), "balloon": (0.004, 0.28), "shot": (3.0, 0.09),
}
# How exact SciPy's own figures are here; what a difference may be beyond our own error.
NOISE = 2e-12


def question(what, speed=0.0, angle=0.0, height=0.0, ball=None, **more):
    return {"ask": "flight", "what": what, "speed": speed, "angle": angle, "height": height, "ball": ball, **more}


def apart(ours, theirs):
    """Relative difference; two noughts do not differ."""
    return abs(ours - theirs) / max(abs(ours), abs(theirs)) if ours != theirs else 0.0


def closed_form(speed, angle, height):
    """Standard mechanics with 64 bits of fraction; the time is the larger root of the quadratic."""
    v, h, g, turn = (numpy.longdouble(value) for value in (speed, height, G, angle))
    turn *= numpy.longdouble("3.14159265358979323846264338327950288") / 180
    along, up = (numpy.longdouble(0) if abs(angle) == 90 else v * numpy.cos(turn)), v * numpy.sin(turn)
    down = numpy.sqrt(up * up + 2 * g * h)
    time = (up + down) / g
    apex = h + (up * up / (2 * g) if up > 0 else 0)
    return along * time, apex, time, numpy.sqrt(v * v + 2 * g * h), numpy.degrees(numpy.arctan2(down, along))


def slowing(ball):
    """½ρ·C·A/m with C = 0.47 unless the ball has its own."""
    mass, diameter, coefficient = (*ball, 0.47)[:3]
    return 0.5 * 1.225 * coefficient * math.pi * diameter**2 / 4 / mass


def until(event, k, state):
    """Integrates to an event, then once more to that very moment, and takes out what is left by one Newton step:
    SciPy finds events on its interpolant, which is less exact than its steps."""
    def rates(_, s):
        pull = k * math.hypot(s[2], s[3])
        return [s[2], s[3], -pull * s[2], -G - pull * s[3]]

    def stop(t, s):
        return s[event]
    stop.terminal, stop.direction = True, -1
    exact = {"method": "DOP853", "rtol": 1e-12, "atol": 1e-14}
    time = solve_ivp(rates, (0, 1e4), state, events=stop, **exact).t_events[0][0]
    end = solve_ivp(rates, (0, time), state, **exact).y[:, -1] if time > 0 else numpy.array(state)
    rest = -end[event] / rates(0, end)[event]
    return end + rest * numpy.array(rates(0, end)), time + rest


def integrated(speed, angle, height, ball):
    turn = math.radians(angle)
    state, climb = [0.0, height, 0.0 if abs(angle) == 90 else speed * math.cos(turn), speed * math.sin(turn)], 0.0
    k = slowing(ball)
    if state[3] > 0:
        state, climb = until(3, k, state)
    apex = state[1]
    end, fall = until(1, k, list(state)) if apex > 0 else (state, 0.0)
    return end[0], apex, climb + fall, math.hypot(end[2], end[3]), math.degrees(math.atan2(-end[3], end[2]))


def check_constants(tally):
    ours = ask([question("published")])[0]
    tally.same("g as in scipy.constants", ours["gravity"], scipy.constants.g)
    tally.holds("air of the ICAO standard atmosphere", abs(ours["air"] - AIR) < 5e-5, f"{ours['air']} and {AIR}")
    tally.same("drag coefficient of a smooth sphere (from memory)", ours["sphere"], 0.47)
    # Ranges in grams and millimetres, across or round. ITF, ITTF (memory), IFAB, World Netball, FIBA.
    ranges = {
        "tennis ball": (56.0, 59.4, 65.41, 68.58, 1), "table tennis ball": (2.7, 2.7, 40, 40, 1),
        "football, size 5": (410, 450, 680, 700, math.pi), "netball": (400, 450, 690, 710, math.pi),
        "basketball, size 7": (580, 620, 750, 770, math.pi), "basketball, size 6": (510, 550, 715, 730, math.pi),
        "basketball, size 5": (465, 495, 685, 700, math.pi),
    }
    tally.same("balls", sorted(name for name, *_ in ours["balls"]), sorted(ranges))
    for name, mass, diameter in ours["balls"]:
        lightest, heaviest, least, most, turns = ranges[name]
        tally.holds(f"{name}: the middle of its mass", apart(mass * 2000, lightest + heaviest) < 1e-12, str(mass))
        tally.holds(f"{name}: the middle of its size", apart(diameter * 2000 * turns, least + most) < 1e-12, str(diameter))


def check_closed_forms(tally, chance):
    angles = [-90, -45, -1e-7, 0, 1e-7, 30, 45, 89.9999, 90]
    releases = list(itertools.product([0, 0.01, 3, 10, 300], angles, [0, 1e-3, 1.7, 250]))
    releases += [(chance.uniform(0, 30), chance.uniform(-90, 90), chance.uniform(0, 5)) for _ in range(1000)]
    worst = 0.0
    for release, ours in zip(releases, ask([question("flight", *release) for release in releases])):
        # Level or downwards on the ground it has landed; speed and angle are then those of the release.
        for name, theirs in zip(FIGURES, closed_form(*release)):
            # A time that is a small difference keeps fewer digits, in 80 bits too.
            off = 0.0 if max(ours[name], theirs) < 1e-12 else float(apart(ours[name], theirs))
            worst = max(worst, off)
            tally.holds(f"no drag, {release}: {name}", off < 1e-11, f"ours {ours[name]}, theirs {theirs}")
    tally.note(f"no drag: {len(releases)} releases × 5 figures against the closed forms in 80 bits, largest relative difference {worst:.1e}")


def throws(chance, count):
    """Releases as in play, some steep, some downwards, some at the ground, each with a ball."""
    for number in range(count):
        angle = chance.choice([0.0, 90.0, 89.9, -20.0, 45.0]) if number % 10 == 0 else chance.uniform(-40, 90)
        height = 0.0 if number % 15 == 0 and angle > 0 else chance.uniform(0.05, 4)
        yield chance.uniform(0.5, 35), angle, height, BALLS[chance.choice(sorted(BALLS))]


def check_drag(tally, chance):
    asked = list(throws(chance, 400))
    asked += [(60.0, 40.0, 1.0, (0.0577, 0.066995, 2.0)), (10.0, 40.0, 1.5, (0.0577, 0.066995, 0.0)), (0.0, 0.0, 2.0, BALLS["balloon"])]
    worst, errors = 0.0, []
    for throw, ours in zip(asked, ask([question("flight", *throw) for throw in asked])):
        if not tally.holds(f"{throw} flies", ours is not None):
            continue
        errors.append(ours["error"])
        tally.holds(f"{throw}: error at most a millionth", ours["error"] <= 1e-6, str(ours["error"]))
        tally.same(f"{throw}: headroom", ours["headroom"], ours["apex"] + throw[3][1] / 2)
        for name, theirs in zip(FIGURES, integrated(*throw)):
            off = 0.0 if max(abs(ours[name]), abs(theirs)) < 1e-12 else apart(ours[name], theirs)
            worst = max(worst, off)
            tally.holds(f"{throw}: {name} within the error given", off <= ours["error"] + NOISE,
                        f"ours {ours[name]}, theirs {theirs}, {off:.1e} apart, error {ours['error']:.1e}")
    tally.note(f"drag: {len(asked)} throws × 5 figures against DOP853, largest relative difference {worst:.1e}; "
               f"our own errors {min(errors):.1e} to {max(errors):.1e}")


def check_best(tally, chance):
    """The best angle by SciPy's bounded search over every angle, upwards and downwards."""
    worst_angle, worst_distance, count = 0.0, 0.0, 0
    asked = [(chance.uniform(1, 30), chance.uniform(0, 3), ball) for ball in [None, *BALLS.values()] * 3]
    for (speed, height, ball), ours in zip(asked, ask([question("best", s, 0, h, b) for s, h, b in asked])):
        def short(angle):
            return -float((closed_form(speed, angle, height) if ball is None else integrated(speed, angle, height, ball))[0])
        # First a look at every ten degrees: the search must not sit on a lesser hill.
        near = min(range(-30 if height else 1, 90, 10), key=short)
        theirs = minimize_scalar(short, bounds=(near - 10, min(near + 10, 89)), method="bounded", options={"xatol": 1e-5})
        off = abs(ours[0] - theirs.x), apart(ours[1], -theirs.fun)
        worst_angle, worst_distance, count = max(worst_angle, off[0]), max(worst_distance, off[1]), count + 1
        tally.holds(f"best of {speed:.2f} m/s, {height:.2f} m, {ball}", off[0] < 0.01 and off[1] < 1e-8,
                    f"ours {ours}, theirs {theirs.x}, {-theirs.fun}")
    tally.note(f"best angle: {count} throws against scipy.optimize.minimize_scalar, at most {worst_angle:.1e}° and {worst_distance:.1e} of the distance apart")


def check_speed(tally, chance):
    """The distance of a throw by the other side, its speed from ours."""
    asked, worst = [], 0.0
    for speed, angle, height, ball in throws(chance, 120):
        for drag in (None, ball):
            distance = float((closed_form(speed, angle, height) if drag is None else integrated(speed, angle, height, drag))[0])
            if angle < 85 and distance > 0.01:
                asked.append((speed, question("speed", 0, angle, height, drag, distance=distance)))
    for (speed, throw), ours in zip(asked, ask([throw for _, throw in asked])):
        # The distance of a ball that drag brings to a stop hardly grows with its speed: the speed is the less sure.
        off = apart(ours, speed) if ours else 1.0
        worst = max(worst, off)
        tally.holds(f"speed behind {throw}", off < 1e-7, f"ours {ours}, theirs {speed}")
    tally.note(f"speed from distance: {len(asked)} throws there and back, largest relative difference {worst:.1e}")


def check_ceiling(tally, chance):
    """The steepest throw that fits by SciPy's root search on the apex, and the best up to it."""
    worst, limited, asked = 0.0, 0, []
    for ball in [None, *BALLS.values()] * 4:
        radius, height = (ball[1] / 2 if ball else 0.05), chance.uniform(0.5, 2)
        asked.append((chance.uniform(2, 15), height, ball, radius, height + radius + chance.uniform(0, 3)))
    questions = [question("under", s, 0, h, b, radius=r, ceiling=c) for s, h, b, r, c in asked]
    for (speed, height, ball, radius, ceiling), ours in zip(asked, ask(questions)):
        def flight(angle):
            return closed_form(speed, angle, height) if ball is None else integrated(speed, angle, height, ball)
        def over(angle):
            return float(flight(angle)[1]) + radius - ceiling
        steepest = brentq(over, 0, 89.9, xtol=1e-10) if over(89.9) > 0 else 89.9
        best = minimize_scalar(lambda angle: -float(flight(angle)[0]), bounds=(-10, steepest), method="bounded", options={"xatol": 1e-6})
        theirs = max(-best.fun, float(flight(steepest)[0]))
        limited += steepest < best.x + 1e-3
        worst = max(worst, apart(ours[1], theirs))
        tally.holds(f"under {ceiling:.2f} m: {ours}", apart(ours[1], theirs) < 1e-7 and over(ours[0]) < 1e-9,
                    f"theirs {theirs}, {over(ours[0])} over the ceiling")
    none = ask([question("under", 5, 0, 2.0, None, radius=0.1, ceiling=2.05)])[0]
    tally.same("a ball that does not fit at its release", none, None)
    tally.holds("some throws are limited by the ceiling, some are not", 0 < limited < len(asked), str(limited))
    tally.note(f"under a ceiling: {len(asked)} throws, {limited} of them limited by it, largest relative difference of the distance {worst:.1e}")


def check_figure(tally):
    for ball in (None, BALLS["tennis"]):
        for step in (1, 5, 7):
            ours = ask([question("figure", 11, 0, 1.8, ball, step=step)])[0]
            angles = list(range(5, 86, step))
            theirs = [float((closed_form(11, a, 1.8) if ball is None else integrated(11, a, 1.8, ball))[0]) for a in angles]
            tally.same(f"angles of the figure, step {step}", [point[0] for point in ours["points"]], angles)
            off = max(apart(point[1], distance) for point, distance in zip(ours["points"], theirs))
            tally.holds(f"distances of the figure, step {step}", off < 1e-8, f"{off:.1e}")
            tally.same(f"best of the figure, step {step}", ours["best"], int(numpy.argmax(theirs)))


def check_published(tally):
    """Figures given elsewhere, to the digits given. Each is said to be computed (C) or from the literature."""
    def near(what, asked, pick, value, within):
        ours = pick(ask([asked])[0])
        tally.holds(what, abs(ours - value) <= within, f"ours {ours}, published {value}")
    for speed, angle, distance in [(8, 37.96, 8.367), (10, 40.08, 12.117), (12, 41.41, 16.652), (14, 42.27, 21.986)]:
        near(f"best angle of {speed} m/s from 2.1 m (C)", question("best", speed, 0, 2.1), lambda a: a[0], angle, 0.005)
        near(f"farthest of {speed} m/s from 2.1 m (C)", question("best", speed, 0, 2.1), lambda a: a[1], distance, 0.0005)
    # Lenz and Rappl, arXiv:1007.3689: about 42° for the speeds of shot-putters.
    near("shot put at 13.5 m/s from 2.1 m (Lenz and Rappl)", question("best", 13.5, 0, 2.1), lambda a: a[0], 42, 0.5)
    for ball, distance, within in [(None, 11.591, 0.0005), ("tennis", 10.25, 0.005), ("football 5", 9.77, 0.005), ("table tennis", 6.17, 0.005)]:
        near(f"10 m/s, 40°, 1.5 m: {ball} (C)", question("flight", 10, 40, 1.5, BALLS.get(ball)), lambda a: a["distance"], distance, within)
    near("2 m fall without drag (C)", question("flight", height=2), lambda a: a["time"], 0.6387, 5e-5)
    near("2 m fall of a table-tennis ball (C)", question("flight", height=2, ball=BALLS["table tennis"]), lambda a: a["time"], 0.6675, 5e-5)
    near("toss of 1.0 m: speed (C)", question("toss", rise=1.0), lambda a: a[0], 4.429, 0.0005)
    near("toss of 1.0 m: time (C)", question("toss", rise=1.0), lambda a: a[1], 0.903, 0.0005)
    for time, height in [(0.4, 0.196), (0.5, 0.306)]:
        near(f"jump of {time} s (C)", question("jump", time=time), lambda a: a, height, 0.0005)


def check_impossible(tally):
    tennis = BALLS["tennis"]
    for asked in [
        question("flight", -1, 40, 1), question("flight", 10, 91, 1), question("flight", 10, 40, -1), question("flight", 10, None, 1),
        question("flight", 10, 40, 1, (0, 0.1)), question("flight", 10, 40, 1, (0.1, 0)), question("flight", 10, 40, 1, (-0.1, 0.1)),
        question("flight", 10, 40, 1, (None, 0.1)), question("flight", 1e300, 40, 1), question("flight", 1, 40, 1e300, tennis),
        question("flight", 1, 40, 1e4, (1e-9, 1.0)), question("best", 0, 0, 1), question("best", None, 0, 1, tennis),
        question("speed", 0, 90, 1, distance=5), question("speed", 0, -45, 2, distance=5), question("speed", 0, 45, 2, tennis, distance=1e6),
        question("toss", rise=-1), question("jump", time=-1), question("figure", 10, 0, 1, step=0),
    ]:
        tally.same(f"no such flight: {asked}", ask([asked])[0], None)


def check(tally):
    chance = random.Random(20260601)
    check_constants(tally)
    check_published(tally)
    check_closed_forms(tally, chance)
    check_drag(tally, chance)
    check_best(tally, chance)
    check_speed(tally, chance)
    check_ceiling(tally, chance)
    check_figure(tally)
    check_impossible(tally)
