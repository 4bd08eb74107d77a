"""`inspect --mend` changes how a pack is written and nothing that it says."""

import json
import pathlib
import random
import re
import shutil

from plain_yaml import read_yaml
from program import AS_OF, DEMO, fresh_folder, run

AGAINST = "ruamel.yaml’s own reading before and after, the bytes of files, and slips put in by a seeded generator"

SEED = 20260601
ROUNDS = 4
# Spellings that people use, each with the house way, as the published symbols have it (SI Brochure, 9th edition,
# section 5.4: a space between number and symbol; s, min, m, cm, g).
UNITS = [(r"(\d) min\b", r"\1 mins"), (r"(\d) s\b", r"\1 sec"), (r"(\d) m\b", r"\1m"), (r"(\d) cm\b", r"\1cm"), (r"(\d) g\b", r"\1 grams")]
QUANTITY_KEYS = r"(?:explain|set_up|work|rest|recover|time|shortest|longest|length|width|height|margin|run_up|reach|stopping|nearby|helping|mass|size)"


def mend(pack):
    return run("inspect", pack, "--mend", "--as-of", AS_OF, "--report", "json")


def yaml_files(pack):
    return {path.relative_to(pack).as_posix(): path.read_bytes() for path in sorted(pack.rglob("*.yaml"))}


def comments(text):
    """Every comment on a line of its own, in any order."""
    return sorted(line.strip() for line in text.splitlines() if line.strip().startswith("#"))


def spoil(text, dice):
    """The same text in other spellings: units, spaces at line ends, keys out of order, lists of one."""
    lines = []
    for line in text.split("\n"):
        if re.match(rf"\s*(?:- )?{QUANTITY_KEYS}: ", line) and "|" not in line and dice.random() < 0.5:
            pattern, spelling = dice.choice(UNITS)
            head, value = line.split(": ", 1)
            line = f"{head}: {re.sub(pattern, spelling, value)}"
        if re.match(r"\s*(?:- )?[a-z_]+: \S", line) and dice.random() < 0.2 and not line.endswith(("|", ">", ">-")):
            line += " " * dice.randint(1, 3)
        if re.match(r"\s*for: \[[a-z_]+\]$", line) and dice.random() < 0.5:
            line = line.replace("[", "").replace("]", "")
        if re.match(r"\s*(?:where|surface|movements|curriculum): \[", line) and dice.random() < 0.5:
            line = line.replace(", ", ",")
        lines.append(line)
    return "\n".join(swap_keys(lines, dice))


def swap_keys(lines, dice):
    """Lines of two keys that follow one another in one group change places, here and there."""
    at = 0
    while at + 1 < len(lines):
        first, second = (re.match(r"( *)([a-z_]+): \S", line) for line in lines[at:at + 2])
        plain = first and second and first[1] == second[1] and not re.search(r"[|>]-?$|[&*]", lines[at] + lines[at + 1])
        followed = at + 2 < len(lines) and len(lines[at + 2]) - len(lines[at + 2].lstrip()) > len(first[1]) if plain else True
        if plain and not followed and dice.random() < 0.15:
            lines[at], lines[at + 1] = lines[at + 1], lines[at]
            at += 1
        at += 1
    return lines


def same_meaning(before, after):
    """Equal values in the sense of an outside reader, but for the spelling of quantities and lists of one."""
    if isinstance(before, dict) and isinstance(after, dict):
        return before.keys() == after.keys() and all(same_meaning(before[key], after[key]) for key in before)
    if isinstance(after, list):
        before = before if isinstance(before, list) else [before]
        return len(before) == len(after) and all(map(same_meaning, before, after))
    if isinstance(before, str) and isinstance(after, str):
        return before == after or plain_units(before) == plain_units(after)
    return before == after


def plain_units(text):
    for word, unit in (("mins", "min"), ("secs", "s"), ("sec", "s"), ("grams", "g")):
        text = re.sub(rf"(?<=[\d ]){word}\b", unit, text)
    return re.sub(r"\s+", "", text)


def check_untouched(tally):
    """A pack in the house way stays as it is, byte for byte; the demo pack is one."""
    pack = fresh_folder("mend") / "demo"
    shutil.copytree(DEMO, pack)
    before = {path: path.stat().st_mtime_ns for path in pack.rglob("*.yaml")}
    whole = yaml_files(pack)
    done = mend(pack)
    tally.same("demo pack: exit status", done.returncode, 0)
    tally.same("demo pack: nothing to mend", yaml_files(pack), whole)
    tally.holds("demo pack: no file was written", all(path.stat().st_mtime_ns == at for path, at in before.items()))
    tally.holds("and says so", "nothing" in done.stderr, done.stderr)
    return pack


def check_mutations(tally, pack, dice):
    sound = yaml_files(pack)
    sessions = [path for path in sound if "/" in path and not re.search(r"\.[a-z]{2}\.yaml$", path) and not path.startswith(("units/", "_"))]
    changed = 0
    for round_ in range(ROUNDS):
        spoilt = {path: spoil(sound[path].decode(), dice) for path in sessions}
        for path, text in spoilt.items():
            ends = "\r\n" if round_ % 4 == 1 else "\n"
            mark = "\ufeff" if round_ % 4 == 2 else ""
            (pack / path).write_bytes((mark + text.replace("\n", ends)).encode())
        done = mend(pack)
        told = len([line for line in done.stderr.splitlines() if re.match(r"\S+:\d+: ", line)])
        changed += told
        for path, text in spoilt.items():
            after = (pack / path).read_bytes()
            what = f"round {round_}: {path}"
            tally.same(f"{what}: byte-order mark", after.startswith(b"\xef\xbb\xbf"), round_ % 4 == 2)
            tally.same(f"{what}: line ends", after.count(b"\r\n"), after.count(b"\n") if round_ % 4 == 1 else 0)
            plain = after.decode("utf-8-sig").replace("\r\n", "\n")
            tally.holds(f"{what}: means the same", same_meaning(read_yaml(text), read_yaml(plain)))
            tally.same(f"{what}: comments", comments(plain), comments(text))
            tally.same(f"{what}: mended as it was before it was spoilt", read_yaml(plain), read_yaml(sound[path].decode()))
        once = yaml_files(pack)
        again = mend(pack)
        tally.holds(f"round {round_}: a second time changes nothing", yaml_files(pack) == once and "nothing" in again.stderr)
        tally.same(f"round {round_}: no problem is left", again.returncode, 0)
        left = [path for path in pack.rglob("*") if path.is_file() and path.name.startswith(".tmp")]
        tally.holds(f"round {round_}: nothing is left lying about", not left, str(left))
        for path, text in sound.items():
            (pack / path).write_bytes(text)
    tally.holds("the generator made slips", changed > 20 * ROUNDS, f"{changed} changes")
    tally.note(f"{ROUNDS} rounds over {len(sessions)} sessions, {changed} places mended; seed {SEED}")


def check_refusals(tally, pack):
    """What can’t be proven stays: the file as it was, and the findings as they are without mending."""
    path = pack / "games/odd.yaml"
    for name, text in {"tab": "title: Hop\n\tsummary: A hop.\n", "open bracket": "title: [Hop\n", "misspelt key": "titel: Hop\nages: 8-11\n",
                       "no unit": "title: Hop\nspace: {length: 4, width: 2 m}\n", "two in one file": "title: Hop\n---\ntitle: Skip\n"}.items():
        path.write_text(text)
        done = mend(pack)
        tally.same(f"{name}: the file stays", path.read_text(), text)
        plain = run("inspect", pack, "--as-of", AS_OF, "--report", "json")
        tally.same(f"{name}: the findings stay", (done.returncode, json.loads(done.stdout)), (plain.returncode, json.loads(plain.stdout)))
    path.unlink()


def check(tally):
    pack = pathlib.Path(check_untouched(tally))
    check_mutations(tally, pack, random.Random(SEED))
    check_refusals(tally, pack)
