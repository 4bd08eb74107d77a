"""Text messages fit their 160 septets, in order and with whole key points; the card to copy stays within its words."""

import re

import gsm0338

from check_time import slot_seconds, spoken, total_seconds
from program import DEMO, PACKS, published
from session_text import blocks_of, line_of, parts_of, read_yaml, session_files
from stress_pack import make_stress_pack

AGAINST = "the PyPI codec gsm0338 (3GPP TS 23.038) and Python’s UTF-16; the words of the YAML"

SEPTETS, UNITS = 160, 70
# Brown, Human-Computer Interface Design Guidelines (1988): 22 words a minute are copied by hand; from memory.
COPY_WORDS = 5 * 22
SIGNS = {"‘": "'", "’": "'", "“": '"', "”": '"', "„": '"', "»": '"', "«": '"', "–": "-", "—": "-", "‐": "-",
         "…": "...", "×": "x", "½": "1/2", "²": "2", "→": "->"}
CODEC = gsm0338.Codec()


def size_of(message):
    """How much of a message a text takes, as (what is counted, count, most)."""
    try:
        octets, _ = CODEC.encode(message)
        return "septets", len(octets), SEPTETS
    except UnicodeEncodeError:
        return "units", len(message.encode("utf-16-be")) // 2, UNITS


def plain(text):
    """A text as it is sent: signs of print replaced, single spaces."""
    return " ".join("".join(SIGNS.get(letter, letter) for letter in text).split())


def words_in(text):
    return sum(any(c.isalnum() for c in word) for word in text.split())


def check_numbers(tally, where, messages):
    numbers = [re.match(r"(\d+)/(\d+) ", message) for message in messages]
    wanted = [(str(n), str(len(messages))) for n in range(1, len(messages) + 1)]
    tally.same(f"{where}: the messages are numbered", [found and found.groups() for found in numbers], wanted)


def check_part(tally, where, part, message):
    """A part’s own message: key points whole or not at all, the how from its beginning."""
    said = message.split(": ", 1)[1] if ": " in message else ""
    how = plain(" ".join(" ".join(blocks_of(part["how"])).split()))
    cut, points = said, [plain(line_of(point)) for point in part.get("key_points", [])]
    kept = []
    for point in reversed(points):
        for before in ("; ", " "):
            if cut.endswith(before + point):
                cut, kept = cut.removesuffix(before + point), [point, *kept]
                break
    whole = cut == how or how.startswith(cut.removesuffix("...")) and how[len(cut.removesuffix("...")):][:1] in (" ", "")
    tally.holds(f"{where}: says how, to the end of a word", whole, f"{cut!r}")
    if points and kept:
        tally.same(f"{where}: begins with the first key point", kept[0], points[0])


def check_messages(tally, name, session, text):
    messages = text.rstrip("\n").split("\n\n")
    largest = {"septets": 0, "units": 0}
    check_numbers(tally, name, messages)
    for message in messages:
        what, size, most = size_of(message)
        largest[what] = max(largest[what], size)
        tally.holds(f"{name}: {message[:24]!r} fits", size <= most and "\n" not in message, f"{size} {what}")
    bare = [message.split(" ", 1)[1] for message in messages]
    parts, at = [part for _, part in parts_of(session)], 0
    for part in parts:
        head = f"{plain(line_of(part['title']))}, {spoken(total_seconds(part['time']))}:"
        found = next((n for n in range(at, len(bare)) if bare[n].startswith(head) or head.startswith(bare[n][:60].removesuffix("..."))), None)
        if tally.holds(f"{name}: a message for {head[:40]!r}, in order", found is not None):
            at = found + 1
            if bare[found].startswith(head):
                check_part(tally, f"{name} {head[:30]}", part, bare[found])
    whole = "".join("".join(bare).split())
    cautions = [plain(" ".join(blocks_of(text))) for text in session.get("safety", [])]
    rules = [plain(line_of(rule)).rstrip(".") for part in parts for rule in part.get("throw", {}).values()]
    for text in [*cautions, *rules, *(need["need"] for need in session.get("equipment", []) if "count" not in need)]:
        tally.holds(f"{name}: the messages say {text[:40]!r} whole", "".join(plain(text).split()) in whole)
    return largest


def check_copy(tally, name, session, text):
    parts, lines = [part for _, part in parts_of(session)], text.splitlines()
    tally.holds(f"{name}: the copy has title and minutes", lines[0].startswith(line_of(session["title"])) and
                plain(lines[0]).endswith(spoken(slot_seconds(session))), lines[0])
    wanted = [plain(f"{n}. {line_of(part['title'])}, {spoken(total_seconds(part['time']))}") for n, part in enumerate(parts, 1)]
    shown = [plain(line) for line in lines[-len(parts):]]
    for line, begins in zip(shown, wanted, strict=True):
        tally.holds(f"{name}: the copy has {begins[:40]!r}", line.startswith(begins), line)
    added = [line.removeprefix(begins).removeprefix(" - ") for line, begins in zip(shown, wanted)]
    for part, point in zip(parts, added):
        first = [plain(line_of(point)) for point in part.get("key_points", [])[:1]]
        tally.holds(f"{name}: the copy’s key point is the first, or none", not point or [point] == first, point)
    if caution := session.get("safety", [])[:1]:
        tally.holds(f"{name}: the copy has the first caution", " ".join(" ".join(blocks_of(caution[0])).split()) in " ".join(lines[1:3]))
    # Only what must not be missing may take more than five minutes.
    count = words_in(text)
    tally.holds(f"{name}: the copy is five minutes’ work, or has nothing that could be left out", count <= COPY_WORDS or not any(added), f"{count} words")
    return count


def check(tally):
    counts, largest = [], {"septets": 0, "units": 0}
    for pack in (DEMO, make_stress_pack(PACKS)):
        folder = published(pack)
        for name, path in session_files(pack).items():
            session = read_yaml(path)
            texts, copy = [(folder / "print" / name / f"{file}.txt").read_text(encoding="utf-8") for file in ("texts", "copy")]
            sizes = check_messages(tally, name, session, texts)
            largest = {what: max(largest[what], sizes[what]) for what in largest}
            counts.append((check_copy(tally, name, session, copy), name))
            page = (folder / "sessions" / f"{name}.html").read_text(encoding="utf-8")
            for file in ("texts", "copy"):
                tally.holds(f"{name}: the page links {file}.txt", f'print/{name}/{file}.txt"' in page)
    demo = [count for count in counts if count[1] in session_files(DEMO)]
    tally.note(f"largest message: {largest['septets']} of {SEPTETS} septets, {largest['units']} of {UNITS} units")
    tally.note(f"words to copy in the demo pack: {min(demo)[0]} to {max(demo)[0]} ({max(demo)[1]}); {sum(c > COPY_WORDS for c, _ in demo)} above {COPY_WORDS}")
