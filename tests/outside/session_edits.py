"""Known edits of a session file, each with the words in which `publish --since` must tell of it.

An edit changes the tree that PyYAML reads and returns what is expected on the reviewers' page: pairs of the part it is
told under (`None` for the session itself) and the line. The lines are written here by hand, from what the keys mean.
"""

import copy
import shutil

from program import DEMO

# Words that stand in no demo session, so that an edited text can't become another one.
NEW_WORD = "pebble"


def copy_shared(folder):
    """What the sessions of the demo pack share, in its own language alone, without the sessions."""
    for path in DEMO.iterdir():
        if path.is_dir() and path.name.startswith("_"):
            shutil.copytree(path, folder / path.name, dirs_exist_ok=True)
        elif path.suffix == ".yaml" and path.name.count(".") == 1:
            shutil.copy(path, folder / path.name)


def without_figure(session):
    """The session with no picture in the step that gains and loses key points: its points are counted."""
    # What was read is kept for other checks too.
    session = copy.deepcopy(session)
    session["technique"][0].pop("figure", None)
    return session


class Edit:
    def __init__(self, name, key, change, is_for_families=True):
        self.name = name
        # Two edits of one key can't be told apart, so that only one of them is made.
        self.key = key
        self.change = change
        self.is_for_families = is_for_families


def reworded(text):
    """The text with its third word (or last) another."""
    words = text.split(" ")
    at = min(2, len(words) - 1)
    words[at] = NEW_WORD
    return " ".join(words)


def of_text(label, key, is_for_families=True):
    def change(session):
        session[key] = reworded(session[key])
        return [(None, f"{label}, reworded")]
    return Edit(f"{key} reworded", key, change, is_for_families)


def of_value(label, path, value, before, now, is_for_families=True):
    """One short value; `before` and `now` as they are said."""
    def change(session):
        place = session
        for step in path[:-1]:
            place = place[step]
        place[path[-1]] = value
        return [(None, f"{label}: {before} became {now}")]
    return Edit(".".join(map(str, path)), str(path[0]), change, is_for_families)


def of_entry(label, path, how, is_for_families=True):
    """One entry of a list of the session: added at the end, gone from the start, or reworded."""
    def change(session):
        place = session[path]
        return [(None, line) for line in change_list(label, place, how)]
    return Edit(f"{path}: {how}", path, change, is_for_families)


def change_list(label, place, how):
    if how == "added":
        place.append("Breathe out slowly as it lands.")
        return [f"{label}, new: {place[-1]}"]
    if how == "gone":
        return [f"{label}, gone: {place.pop(0)}"]
    place[0] = reworded(place[0])
    return [f"{label}, reworded"]


def heading(kind, part):
    return f"{kind}: {part['title']}"


def in_part(name, find, kind, key, change, is_for_families=True):
    def whole(session):
        part = find(session)
        return [(heading(kind, part), line) for line in change(part)]
    return Edit(f"{kind}: {name}", f"{kind}.{key}", whole, is_for_families)


def part_text(find, kind, label, key):
    def change(part):
        part[key] = reworded(part[key])
        return [f"{label}, reworded"]
    return in_part(f"{key} reworded", find, kind, key, change)


def part_list(find, kind, label, key, how):
    return in_part(f"{key}: {how}", find, kind, key, lambda part: change_list(label, part[key], how))


def part_value(find, kind, label, path, value, before, now, is_for_families=True):
    def change(part):
        place = part
        for step in path[:-1]:
            place = place[step]
        place[path[-1]] = value
        return [f"{label}: {before} became {now}"]
    return in_part(".".join(path), find, kind, path[0], change, is_for_families)


def warm_up(session):
    return session["warm_up"]


def nest(session):
    return session["technique"][0]


def flock(session):
    return session["challenge"][0]


def cool_down(session):
    return session["cool_down"]


def first_of(key, entry, label, is_for_families=True, lines=None):
    """A text inside the first of several entries."""
    def change(session):
        session[key][0][entry] = reworded(session[key][0][entry])
        return [(None, line) for line in lines or [f"{label}, reworded"]]
    return Edit(f"{key}.{entry}", f"{key}.{entry}", change, is_for_families)


def fault_said(part):
    part["faults"][0]["say"] = reworded(part["faults"][0]["say"])
    return ["Common faults, reworded"]


def landing_zone(part):
    part["throw"]["landing_zone"] = reworded(part["throw"]["landing_zone"])
    return ["Landing zone, reworded"]


def other_version(part):
    part["alternatives"][0]["how"] = reworded(part["alternatives"][0]["how"])
    return ["Another version, reworded"]


def movements(part):
    before = ", ".join(part["movements"])
    part["movements"] = [*part["movements"], "turning"]
    return [f"Movements: {before} became {before}, turning"]


def another_thing(session):
    session["equipment"].append({"need": "whistle", "count": "1", "note": "Only outdoors.", "instead": [{"thing": "a clap"}]})
    return [(None, "Things to gather, new: whistle"), (None, "Instead, new: whistle: a clap"),
            (None, "Note, new: whistle: Only outdoors.")]


def part_gone(session):
    gone = session["technique"].pop(3)
    session["warm_up"]["time"]["work"] = "56 s"
    # The need of the tub names that part.
    session["equipment"][1]["for"] = ["stretch"]
    return [(heading("Technique", gone), "Part gone"), (heading("Warm-up", session["warm_up"]), "Work: 20 s became 56 s"),
            (None, "Things are for, reworded"), (None, "Things are for, reworded")]


# For games/gull-catch of the demo pack.
EDITS = [
    of_text("Summary", "summary"),
    of_value("Ages", ["ages"], "7-10", "7–9", "7–10"),
    of_value("Activity", ["activity"], "fitness", "Games", "Fitness", False),
    of_value("Clear space", ["space", "length"], "2.4 m", "2 m × 2 m", "2.4 m × 2 m"),
    of_value("Headroom", ["space", "height"], "2.5 m", "2.3 m", "2.5 m"),
    of_value("Underfoot", ["space", "surface"], ["carpet", "grass"], "carpet, grass or a hard floor", "carpet or grass"),
    of_value("Where", ["space", "where"], ["indoors"], "Indoors or outdoors", "Indoors"),
    of_value("An adult stays nearby", ["adult", "nearby"], "20 min", "25 min", "20 min"),
    of_value("Licence", ["licence"], "CC-BY-SA-4.0", "CC-BY-4.0", "CC-BY-SA-4.0", False),
    of_entry("Objectives", "objectives", "reworded", False),
    of_entry("Objectives", "objectives", "added", False),
    of_entry("What I can do by the end", "success", "added"),
    of_entry("What I can do by the end", "success", "gone"),
    of_entry("Take care", "safety", "added"),
    of_entry("Take care", "safety", "reworded"),
    of_entry("Curriculum", "curriculum", "gone", False),
    Edit("a thing more", "equipment", another_thing),
    first_of("review", "ask", "Think about it"),
    first_of("review", "answer", "Answers", False),
    part_text(warm_up, "Warm-up", "How to do it", "how"),
    part_text(warm_up, "Warm-up", "Easier", "easier"),
    part_text(warm_up, "Warm-up", "Harder", "harder"),
    part_value(warm_up, "Warm-up", "Work", ["time", "work"], "22 s", "20 s", "22 s"),
    part_value(warm_up, "Warm-up", "Explaining", ["time", "explain"], "40 s", "30 s", "40 s"),
    part_value(warm_up, "Warm-up", "Effort", ["effort"], "moderate", "Vigorous", "Moderate"),
    in_part("movements", warm_up, "Warm-up", "movements", movements, False),
    in_part("another version", warm_up, "Warm-up", "alternatives", other_version, False),
    part_list(nest, "Technique", "Key point", "key_points", "added"),
    part_list(nest, "Technique", "Key point", "key_points", "gone"),
    part_list(nest, "Technique", "Key point", "key_points", "reworded"),
    in_part("a fault", nest, "Technique", "faults", fault_said),
    in_part("the landing zone", nest, "Technique", "throw", landing_zone),
    part_value(nest, "Technique", "Task", ["task"], "extend", "inform", "extend", False),
    part_value(flock, "Challenge", "Attempts", ["measure", "attempts"], "5", "3", "5"),
    part_value(flock, "Challenge", "Rest", ["time", "rest"], "45 s", "40 s", "45 s"),
    part_text(flock, "Challenge", "How to do it", "how"),
    part_value(cool_down, "Cool-down", "Time", ["time"], "3 min 50 s", "3 min 40 s", "3 min 50 s"),
    Edit("a part gone", "technique", part_gone),
]


def apply(session, edits):
    """A session edited, and all that is expected to be told."""
    edited = copy.deepcopy(session)
    told = [line for edit in edits for line in edit.change(edited)]
    return edited, told


def clash(one, other):
    """Whether two edits touch the same things."""
    parts = {"technique"}
    touches = lambda edit: {edit.key, edit.key.split(".")[0]} if edit.key in parts else {edit.key}
    if touches(one) & touches(other):
        return True
    # The part that goes changes the warm-up's time and the things.
    pair = {one.name, other.name}
    return "a part gone" in pair and any(name.startswith(("Warm-up: time", "a thing more")) for name in pair)
