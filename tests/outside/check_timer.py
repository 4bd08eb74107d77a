"""The timer of a part, with a clock that the check turns, against a simulation second by second from the YAML."""

import json
import pathlib
import random

from check_time import clock, read_yaml, seconds
from program import DEMO, NODE_MODULES, fresh_folder, published, tool
from session_text import parts_of, session_files

AGAINST = "a simulation by the second of the times in the YAML (PyYAML), in Chromium with the clock of playwright-core"

# Rounds, counts at a tempo, plain times, a long challenge.
SESSIONS = ("athletics/brook-leap", "dance/night-bus", "fitness/tide-table")
SAYS = {"explain": "Look and listen", "set_up": "Set out", "work": "Move", "rest": "Rest", "recover": "Get your breath back"}


def stretches_of(time):
    """(kind, seconds, round) one after another; rest lies only between rounds."""
    if not isinstance(time, dict):
        return [("work", seconds(time), 1)], 1
    rounds = int(time.get("rounds", 1))
    length = lambda key: seconds(time[key]) if key in time else 0
    work = length("work")
    if "counts" in time:
        # Counts at a tempo a minute, to the whole second and not under it.
        work = -(-int(time["counts"]) * 60 // int(time["tempo"]))
    whole = [("explain", length("explain"), 0), ("set_up", length("set_up"), 0)]
    for number in range(1, rounds + 1):
        whole += [("work", work, number)] + ([("rest", length("rest"), number)] if number < rounds else [])
    whole.append(("recover", length("recover"), 0))
    return [one for one in whole if one[1]], rounds


def by_the_second(stretches):
    """What stands at each whole second after the start: kind, seconds left of it, round."""
    return [(kind, length - second, number) for kind, length, number in stretches for second in range(length)]


def judge_look(tally, where, look, line, rounds, at):
    if at >= len(line):
        tally.same(f"{where}: done", (look["left"], look["what"], look["state"]), ("0:00", "Well done", "done"))
        return
    kind, left, number = line[at]
    tally.same(f"{where}: time left and what it is", (look["left"], look["what"]), (clock(left), SAYS[kind]))
    told = f"Round {number} of {rounds}" if number and rounds > 1 else ""
    tally.same(f"{where}: the round", look["round"], told)


def cues_of(stretches):
    """Beeps: one where a stretch begins and at the end, and three before the end of any over five seconds."""
    return len(stretches) + 1 + sum(3 for _, length, _ in stretches if length > 5)


def check(tally):
    chance, folder, plan, asked = random.Random(5), published(DEMO), [], []
    for name, path in session_files(DEMO).items():
        if name not in SESSIONS:
            continue
        parts = []
        for at, (_, part) in enumerate(parts_of(read_yaml(path))):
            stretches, rounds = stretches_of(part["time"])
            whole = sum(length for _, length, _ in stretches)
            is_told = name.endswith("brook-leap") and at in (0, 5)
            looks = sorted(chance.sample(range(1, whole), 5)) + [whole]
            # Half a second into a second, so that a late look is still within it.
            parts.append({"step": at + 2, "looks": [look * 1000 + 500 for look in looks], "voice": is_told, "pauses": at == 1})
            asked.append((f"{name}: {part['title']}", part, stretches, rounds, looks, parts[-1]))
        plan.append({"url": (folder / f"sessions/{name}.html").as_uri(), "parts": parts})
    room = fresh_folder("timer")
    (room / "plan.json").write_text(json.dumps(plan))
    script = pathlib.Path(__file__).with_name("doing.mjs")
    done = json.loads(tool("node", script, NODE_MODULES, room / "plan.json", timeout=300))
    tally.same("parts done", len(done), len(asked))
    for met, (where, part, stretches, rounds, looks, wish) in zip(done, asked):
        line = by_the_second(stretches)
        judge_look(tally, f"{where} before", met["before"], line, rounds, 0)
        shown = met["looks"][::2] if wish["pauses"] else met["looks"]
        for at, look in zip(looks, shown):
            judge_look(tally, f"{where} after {at} s", look, line, rounds, at)
        if wish["pauses"]:
            for running, paused in zip(met["looks"][:-2:2], met["looks"][1::2]):
                tally.same(f"{where}: a minute’s pause changes nothing", (paused["left"], paused["what"]), (running["left"], running["what"]))
                tally.same(f"{where}: the screen may sleep meanwhile", paused["lamp"], 0)
        if "rounds" in (part["time"] if isinstance(part["time"], dict) else {}) and not wish["pauses"]:
            tally.same(f"{where}: rounds ticked off", met["looks"][-1]["ticked"], rounds if 2 <= rounds <= 12 else 0)
        if wish["voice"]:
            told = met["told"]
            tally.same(f"{where}: beeps", told["beeps"], cues_of(stretches))
            tally.same(f"{where}: buzzes", told["buzzes"], cues_of(stretches))
            counted = [word for word in told["spoken"] if word in ("1", "2", "3")]
            tally.same(f"{where}: counted out", counted, ["3", "2", "1"] * sum(length > 5 for _, length, _ in stretches))
            begun = [word.split(".")[0] for word in told["spoken"] if word.split(".")[0] in SAYS.values()]
            tally.same(f"{where}: said what begins", begun, [SAYS[kind] for kind, _, _ in stretches])
            tally.same(f"{where}: the screen may sleep at the end", told["lamp"], 0)
