"""The edition mark of a sheet changes when its words do, and only then."""

import json
import re

import pdfplumber
import pypdf
import yaml

from paper import words_on
from program import DEMO, fresh_folder, publish
from session_edits import EDITS, apply, copy_shared, without_figure
from session_text import read_yaml

AGAINST = "the words of each PDF before and after an edit (pdftotext); Crockford’s alphabet; FNV-1a written again in Python"
SHEETS = ["cards", "home-guide", "record", "review"]
# crockford.com/base32.html
CROCKFORD = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
# “Edition K7QP” at the foot of a page, “· K7QP” at that of a card; “· work 20 s” and the like are none.
MARK = re.compile(r"(?:Edition|·)(?!CCBY)([0-9A-HJKMNP-TV-Z]{4})(?![a-z])")


def words_without_mark(path):
    """All words without spaces, without the mark, and without what only counts cards."""
    words = MARK.sub("", words_on(path))
    return re.sub(r"(Card|Page)\d+of\d+", "", words).replace("(continued)", "")


def drawn_on(path):
    """What is drawn and is no words, line by line as the pages write it: figures grow with the ages of a session."""
    pages = pypdf.PdfReader(path).pages
    lines = [line for page in pages for line in page.get_contents().get_data().decode("latin-1").splitlines()]
    return [line for line in lines if re.search(r" (?:[mlc]|re) ", line)]


def looks_without_mark(path):
    """All that a sheet says and draws, without its mark."""
    return words_without_mark(path), drawn_on(path)


def marks_on(path):
    return set(MARK.findall(words_on(path)))


def cards_of(path):
    """The words of each card of a part, by its kind and title, cut out of sheets with four."""
    cards = {}
    with pdfplumber.open(path) as pdf:
        for page in pdf.pages:
            for top in (0, page.height / 2):
                for left in (0, page.width / 2):
                    card = page.crop((left, top, left + page.width / 2, top + page.height / 2))
                    text = card.extract_text() or ""
                    head, _, body = text.partition("\n")
                    kind = re.match(r"(Warm-up|Technique|Challenge|Stretch task|Cool-down)( \d+)?\s+Card", head)
                    if not kind:
                        continue
                    title = body.split("\n")[0].replace(" (continued)", "").split("…")[0].strip()
                    name = next((known for known in cards if known.startswith(f"{kind.group(1)}: {title}")), f"{kind.group(1)}: {title}")
                    # The foot goes, from the line with the mark on: it has one line or two.
                    lines = body.split("\n")
                    foot = max((at for at, line in enumerate(lines) if re.search(r"· [0-9A-HJKMNP-TV-Z]{4}$", line)), default=len(lines))
                    body = "\n".join(lines[:foot]).replace("(continued)", "")
                    cards[name] = cards.get(name, "") + "".join(body.split())
    return cards


def fnv_mark(facts):
    """The mark by its published parts: FNV-1a 64 (RFC 9923) folded to 20 bits, four digits of base 32."""
    value = 0xCBF29CE484222325
    for byte in facts:
        value = (value ^ byte) * 0x100000001B3 % 2**64
    folded = (value >> 60) ^ (value >> 40) ^ (value >> 20) ^ value
    return "".join(CROCKFORD[folded >> 5 * place & 31] for place in (3, 2, 1, 0))


def silent_edits():
    """Edits that no reader of paper can see."""
    def spaces(session):
        session["warm_up"]["how"] = session["warm_up"]["how"].replace(". ", ".  ")

    def emphasis(session):
        session["summary"] = session["summary"].replace("move", "*move*")

    def initials(session):
        session["standing"]["by"] = ["ZZ"]

    def likened(session):
        session["technique"][0]["compendium"] = "juggling"

    def other_version(session):
        session["warm_up"]["alternatives"][0]["how"] += " Rest."

    return [("spaces", spaces), ("emphasis", emphasis), ("initials", initials), ("likened", likened), ("other version", other_version)]


def seen_edits():
    """Edits beside those of session_edits that paper shows in one place or another."""
    def title(session):
        session["title"] += " again"

    def part_title(session):
        session["challenge"][0]["title"] = "Thirty-second flock"

    def unit(session):
        session["challenge"][0]["measure"]["unit"] = "good catches"

    def note(session):
        session["equipment"][0]["note"] = "One each."

    def mass(session):
        session["equipment"][0]["mass"] = "at most 120 g"

    def order(session):
        session["technique"].reverse()

    def people(session):
        session["adaptations"]["people"] += " Take turns."

    def kind(session):
        session["review"][0]["kind"] = "apply"

    def margin(session):
        session["technique"][1]["space"]["margin"] = "40 cm"

    def shortest(session):
        session["technique"][2]["shortest"] = "1 min 20 s"

    def worth(session):
        session["technique"][2]["worth"] = "1"

    return [(f.__name__, f) for f in (title, part_title, unit, note, mass, order, people, kind, margin, shortest, worth)]


def check(tally):
    room = fresh_folder("editions")
    session = without_figure(read_yaml(DEMO / "games" / "gull-catch.yaml"))
    changes = [(edit.name, edit) for edit in EDITS] + silent_edits() + seen_edits()
    before, now = room / "before", room / "now"
    for folder in (before, now):
        (folder / "games").mkdir(parents=True)
        copy_shared(folder)
    for number, (_, edit) in enumerate(changes):
        plain = {**session, "title": f"Gull catch {number}"}
        if hasattr(edit, "change"):
            edited, _ = apply(plain, [edit])
        else:
            edited = yaml.safe_load(yaml.safe_dump(plain))
            edit(edited)
        for folder, tree in ((before, plain), (now, edited)):
            text = yaml.safe_dump(tree, allow_unicode=True, sort_keys=False, width=10**6)
            (folder / f"games/s{number:02}.yaml").write_text(text)
    for folder, to in ((before, "first"), (now, "second")):
        done = publish(folder, room / to, "--teachers", room / f"{to}-teachers")
        if not tally.same(f"{to}: status", done.returncode, 0):
            tally.note(done.stderr[-900:])
            return
    changed = 0
    for number, (name, _) in enumerate(changes):
        for sheet in SHEETS:
            was, now_is = (room / to / f"print/games/s{number:02}/{sheet}.pdf" for to in ("first", "second"))
            marks = [marks_on(was), marks_on(now_is)]
            tally.holds(f"{name}: one mark on all of the {sheet}", all(len(found) == 1 for found in marks), str(marks))
            tally.holds(f"{name}: the alphabet", all(set(mark) <= set(CROCKFORD) for found in marks for mark in found))
            is_new = looks_without_mark(was) != looks_without_mark(now_is)
            changed += is_new
            tally.same(f"{name}: the mark of the {sheet} is new", marks[0] != marks[1], is_new)
        page = (room / f"second/sessions/games/s{number:02}.html").read_text()
        shown = re.findall(r'data-mark="([^"]+)"', page)
        on_paper = [*(min(marks_on(room / f"second/print/games/s{number:02}/{sheet}.pdf")) for sheet in SHEETS)]
        tally.same(f"{name}: the page shows the marks of its sheets", shown, on_paper)
    tally.note(f"{len(changes)} edits, {changed} of {len(changes) * len(SHEETS)} sheets changed by them")
    check_record(tally, room / "first-teachers/edition.json")


def check_record(tally, path):
    """The marks in the record, from its own facts and the table of kinds in the source."""
    source = (DEMO.parent / "src/edition/kind.rs").read_text()
    bits = {"NONE": "", "CARDS": "c", "GUIDE": "g", "BOTH": "cg", "MARKED": "cr", "Sheets::ALL": "cgrv", "Sheets::PAGES": "grv",
            "Sheets::RECORD": "r", "Sheets::REVIEW": "v"}
    table = {key: bits[sheets] for key, sheets in re.findall(r'kind\(\s*\("([\w-]+)", "[\w-]+"\),\s*\w+,\s*\w+,\s*([\w:]+),', source)}
    letters = {"cards": "c", "home-guide": "g", "record": "r", "review": "v"}
    for session in json.loads(path.read_text())["sessions"][:6]:
        for sheet, mark in session["marks"]:
            told = b""
            for group in [session["says"], *(part["says"] for part in session["parts"])]:
                printed = [(key, says) for key, says in group if letters[sheet] in table[key]]
                told += b"".join(key.encode() + b"\x1f" + says.encode() + b"\x1e" for key, says in printed)
                told += b"\x1d" if printed else b""
            tally.same(f"{session['id']}: the mark of the {sheet}", mark, fnv_mark(told))
