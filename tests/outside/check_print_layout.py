"""Nothing on paper is too small, outside the printable part, on top of other text, or under the scissors."""

import concurrent.futures
import itertools
import unicodedata

from paper import POINTS_PER_MM, SHEETS, glyphs_of, ink_edges, sheet
from program import DEMO, PACKS, published
from session_text import session_files
from stress_pack import make_stress_pack

AGAINST = ("glyph boxes read by pdfplumber and ink drawn by pdftoppm: 11 pt floor, a 10 mm margin (home printers "
           "leave 4 to 6.7 mm, makers' manuals), cut lines at the middle of the page")

FLOOR = 11
# The boxes of text keep to 10 mm. Of the ink, a rule sticks out by half its thickness, and a j by its hook.
MARGIN = 10 * POINTS_PER_MM
HAIR = 0.05  # rounding of figures in a PDF
BASELINE_SLACK = 0.6
# Kerning draws neighbours together; more than this of the smaller glyph is a collision.
SHARED_PART = 0.35


def overlap(a, b, low, high):
    return min(a[high], b[high]) - max(a[low], b[low])


def is_mark(glyph):
    """Accents stand on their letter by design."""
    return all(unicodedata.category(c).startswith("M") for c in glyph["text"]) or glyph["width"] < 0.5


def collide(a, b):
    wide, high = overlap(a, b, "x0", "x1"), overlap(a, b, "top", "bottom")
    if wide <= 0 or high <= 0:
        return False
    if abs(a["bottom"] - b["bottom"]) <= BASELINE_SLACK:
        return wide > SHARED_PART * min(a["width"], b["width"])
    return wide > 0.5 and high > 0.15 * min(a["size"], b["size"])


def first_collision(glyphs):
    """The first two glyphs found on top of each other. Sorted by top, so that few pairs are tried."""
    glyphs = sorted((g for g in glyphs if not is_mark(g)), key=lambda g: g["top"])
    live = []
    for glyph in glyphs:
        live = [other for other in live if other["bottom"] > glyph["top"]]
        hit = next((other for other in live if collide(glyph, other)), None)
        if hit:
            return f"{hit['text']!r} and {glyph['text']!r} near {glyph['x0']:.0f}, {glyph['top']:.0f}"
        live.append(glyph)
    return ""


def page_cases(glyphs, ink):
    """What is asked of every page, as (what, whether it holds, what was found instead)."""
    small = [g for g in glyphs if g["size"] < FLOOR - HAIR]
    collision = first_collision(glyphs)
    yield "has text", bool(glyphs), ""
    yield f"no text below {FLOOR} pt", not small, f"{small[0]['size']:.2f} pt {small[0]['text']!r}" if small else ""
    yield "no ink in the margin", min(ink) >= MARGIN, f"left, top, right, bottom: {[round(i / POINTS_PER_MM, 1) for i in ink]} mm"
    yield "no text on top of other text", not collision, collision


def cut_case(width, height, glyphs):
    lines = [("x0", "x1", width / 2), ("top", "bottom", height / 2)]
    cut = [g for g, (low, high, line) in itertools.product(glyphs, lines) if g[low] < line < g[high]]
    return "no text under the scissors", not cut, "".join(g["text"] for g in cut[:30])


def sheet_cases(path):
    """Every case of one file."""
    cases = []
    for number, ((width, height, glyphs), ink) in enumerate(zip(glyphs_of(path), ink_edges(path), strict=True), 1):
        found = [*page_cases(glyphs, ink), *([cut_case(width, height, glyphs)] if path.stem == "cards" else [])]
        cases += [(f"page {number}: {what}", holds, otherwise) for what, holds, otherwise in found]
    return cases


def check(tally):
    packs = {pack: published(pack) for pack in [DEMO, make_stress_pack(PACKS)]}
    paths = [(f"{session} {name}", sheet(folder, session, name))
             for pack, folder in packs.items() for session in session_files(pack) for name in SHEETS]
    with concurrent.futures.ProcessPoolExecutor() as pool:
        for (where, _), cases in zip(paths, pool.map(sheet_cases, [path for _, path in paths])):
            for what, holds, otherwise in cases:
                tally.holds(f"{where} {what}", holds, otherwise)
