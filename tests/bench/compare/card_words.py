"""The words of published cards, read back from their tagged PDFs with pdfplumber.

In: a folder of cards.pdf files as homeground made them. Out: for each file its title and its cards; a card is
a list of blocks in reading order. A block has the `role` of its tag (P, H1, H2, LI, or none for what is
decoration), a `marker` where it is an entry of a list, its `size` in points, and `runs` of [text, style].
So every other typesetter gets the same words in the same sizes on the same cards, already divided.
Figures and their words are left out: homeground alone draws them, and the marks, bars and cut lines.
"""

import collections
import itertools
import json
import pathlib
import sys

import pdfplumber

STYLES = {"Bold": "bold", "Italic": "italic"}


def leaves(elements):
    """Every element that holds words, in reading order, as (role, its marked pieces)."""
    for element in elements:
        if element["type"] == "Figure":
            continue
        if element.get("mcids"):
            yield element["type"], element["mcids"]
        yield from leaves(element.get("children", []))


def runs_of(glyphs):
    """Glyphs in the order of the file → runs of one style each. A wide gap in a line is a space."""
    styled = []
    for before, glyph in zip([None, *glyphs], glyphs):
        is_apart = before and glyph["x0"] - before["x1"] > glyph["size"] / 2
        style = STYLES.get(glyph["fontname"].rpartition("-")[2], "regular")
        styled.append((" " * bool(is_apart) + glyph["text"], style))
    groups = itertools.groupby(styled, key=lambda glyph: glyph[1])
    return [["".join(text for text, _ in group), style] for style, group in groups]


def block(role, glyphs, marker=""):
    return {"role": role, "marker": marker, "size": round(max(g["size"] for g in glyphs), 1), "runs": runs_of(glyphs)}


def line_of(glyph):
    return round(glyph["bottom"])


def decoration(glyphs):
    """One block for each line that no tag holds: the card’s number, the session’s title at its foot."""
    lines = [list(line) for _, line in itertools.groupby(sorted(glyphs, key=line_of), key=line_of)]
    return [block("", line) for line in lines if any(glyph["text"].strip() for glyph in line)]


def card_at(page, glyph):
    """Which of the four cards of its page a glyph stands on, row by row."""
    return 2 * (glyph["top"] > page.height / 2) + (glyph["x0"] > page.width / 2)


def cards_of(page):
    cards, marker = [[] for _ in range(4)], ""
    by_piece = collections.defaultdict(list)
    for glyph in page.chars:
        by_piece[glyph["mcid"]].append(glyph)
    for role, pieces in leaves(page.structure_tree):
        glyphs = [glyph for piece in pieces for glyph in by_piece[piece]]
        if role == "Lbl":
            marker = "".join(glyph["text"] for glyph in glyphs).strip()
            continue
        for card in range(4):
            here = [glyph for glyph in glyphs if card_at(page, glyph) == card]
            if here:
                cards[card].append(block("LI" if role == "LBody" else role, here, marker if role == "LBody" else ""))
    for card, blocks in enumerate(cards):
        here = [glyph for glyph in by_piece[None] if card_at(page, glyph) == card]
        above = [glyph for glyph in here if glyph["top"] % (page.height / 2) < page.height / 4]
        cards[card] = decoration(above) + blocks + decoration([glyph for glyph in here if glyph not in above])
    return [blocks for blocks in cards if blocks]


def read_document(path):
    with pdfplumber.open(path) as pdf:
        cards = [card for page in pdf.pages for card in cards_of(page)]
        return {"title": pdf.metadata["Title"], "cards": cards}


def main():
    folder, to = map(pathlib.Path, sys.argv[1:])
    to.write_text(json.dumps([read_document(path) for path in sorted(folder.glob("*.pdf"))], ensure_ascii=False))


main()
