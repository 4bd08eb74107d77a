"""Words broken on paper are broken where another set of patterns allows it, and read back whole."""

import re

import pyphen

from paper import sheet
from program import BENCH_ROOM, DEMO, fresh_folder, published, tool
from session_text import session_files
from stress_pack import part, session, write_yaml

AGAINST = "pyphen with the LibreOffice dictionaries; pdftotext and pdfplumber for what is read back"

SOFT = "\u00ad"
LEAST_AGREED = 0.95
SHORTEST = 8
EDGE = 3
PACKS = {
    "en-GB": "Everything remembers something important: shoulders understanding neighbouring dimensions, comfortably "
             "travelling alongside wonderful yesterdays, continuously exchanging complicated instructions underneath "
             "extraordinary circumstances without interrupting anybody. ",
    "de": "Anschließend balancieren Jugendliche abwechselnd zwischen Kissenbergen, überspringen Teppichkanten, "
          "verlangsamen Bewegungen gleichmäßig und wiederholen Übungen rückwärts. ",
    "fr": "Doucement, continuez lentement autour des obstacles imaginaires, recommencez immédiatement en respirant "
          "profondément, attentivement et silencieusement comme une tortue. ",
    "cy": "Cadwch gydbwysedd yn ddistaw gan ymestyn breichiau ac anadlu'n ddwfn wrth symud yn araf rhwng "
          "rhwystrau dychmygol gyda'ch cyfeillion gartref. ",
}
PACKS["en-US"] = PACKS["en-GB"]
# A British dictionary breaks by a word’s parts (im-port-ant), an American one by its sound (im-por-tant).
DICTIONARIES = {"en-GB": "en_GB", "en-US": "en_US", "de": "de_DE", "fr": "fr"}
OTHER_ENGLISH = {"en-GB": "en_US", "en-US": "en_GB"}


def broken_words(path):
    """Each word that a line ends in the middle of, as its two halves."""
    text = tool("pdftotext", "-raw", "-enc", "UTF-8", path, "-")
    return re.findall(rf"([^\W\d_]+){SOFT}\n([^\W\d_]+)", text), text


def make_pack(folder, language, words):
    pack = folder / language
    texts = [" ".join(words.split()[n:] + words.split()[:n]) for n in range(0, 14)]
    seen = part("One", 300, how="\n\n".join(texts), easier=texts[2], harder=texts[5], key_points=["Soft feet"])
    write_yaml(pack / "pack.yaml", {"title": "Words", "language": language, "licence": "CC-BY-4.0", "cautions": texts[3:7]})
    write_yaml(pack / "words.yaml", session("Words", {"technique": [seen]}, 5))
    return pack


def judge(tally, where, halves, dictionary):
    """How many breaks the other patterns allow, and those that they do not."""
    others = []
    for before, after in halves:
        word = before + after
        tally.holds(f"{where}: {before}-{after} is long, and not torn at its edge",
                    len(word) >= SHORTEST and min(len(before), len(after)) >= EDGE, word)
        if len(before) not in dictionary.positions(word.lower()):
            others.append(f"{before}-{after}")
    return others


def check(tally):
    room = fresh_folder("hyphens")
    packs = [(DEMO, "en-GB")] + [(make_pack(room, language, words), language) for language, words in PACKS.items()]
    for pack, language in packs:
        folder, halves = published(pack), []
        for name in session_files(pack):
            for kind in ("cards", "home-guide", "review"):
                found, text = broken_words(sheet(folder, name, kind))
                halves += found
                strays = re.findall(rf"\S*{SOFT}(?!\n)\S*", text)
                tally.holds(f"{pack.name} {name} {kind}: no hyphen inside an unbroken word", not strays, str(strays[:5]))
        if language not in DICTIONARIES:
            tally.same(f"{pack.name}: words stay whole where there are no patterns", halves, [])
            continue
        others = judge(tally, pack.name, halves, pyphen.Pyphen(lang=DICTIONARIES[language], left=EDGE, right=EDGE))
        agreed = 1 - len(others) / max(1, len(halves))
        tally.holds(f"{pack.name}: words are broken", bool(halves))
        tally.holds(f"{pack.name}: {LEAST_AGREED:.0%} of breaks are allowed", agreed >= LEAST_AGREED, f"{agreed:.0%}: {sorted(set(others))}")
        if language in OTHER_ENGLISH and pack != DEMO:
            other = pyphen.Pyphen(lang=OTHER_ENGLISH[language], left=EDGE, right=EDGE)
            strange = [f"{before}-{after}" for before, after in halves if len(before) not in other.positions((before + after).lower())]
            tally.holds(f"{pack.name}: some words are broken as the other English never does", bool(strange))
        tally.note(f"{pack.name} ({language}): {len(halves)} breaks, {agreed:.1%} agreed; not: {sorted(set(others)) or 'none'}")
