"""Published sheets, read back with general PDF tools: pdfplumber for glyphs, poppler for words."""

import concurrent.futures
import functools
import pathlib
import tempfile

import pdfplumber
from PIL import Image, ImageOps

from program import tool
from session_text import squeezed

POINTS_PER_MM = 72 / 25.4
# ISO 216 for A4; Letter is 8.5 × 11 in.
PAPERS = {"A4": (210 * POINTS_PER_MM, 297 * POINTS_PER_MM), "Letter": (8.5 * 72, 11 * 72)}
INK_DPI = 100
SHEETS = ["cards", "home-guide", "record", "review"]


def sheet(folder, session, name):
    return folder / "print" / session / f"{name}.pdf"


@functools.cache
def glyphs_of(path):
    """For each page its size and every glyph that shows, with its box and size."""
    with pdfplumber.open(path) as pdf:
        return [(page.width, page.height, [g for g in page.chars if g["text"].strip()]) for page in pdf.pages]


@functools.cache
def words_on(path, page=None, order=("-raw",)):
    """The words of a page, or of all, without spaces; `order` as for cards."""
    pages = ["-f", page, "-l", page] if page else []
    return squeezed(tool("pdftotext", *order, "-enc", "UTF-8", *pages, path, "-"))


@functools.cache
def ink_edges(path):
    """For each page how far its outermost ink is from the left, top, right and bottom edge, in points."""
    edges = []
    with tempfile.TemporaryDirectory() as folder:
        tool("pdftoppm", "-gray", "-r", INK_DPI, path, f"{folder}/page")
        for file in sorted(pathlib.Path(folder).iterdir()):
            with Image.open(file) as picture:
                left, top, right, bottom = ImageOps.invert(picture).point(lambda v: 255 if v > 40 else 0).getbbox()
                distances = (left, top, picture.width - right, picture.height - bottom)
            edges.append([distance * 72 / INK_DPI for distance in distances])
    return edges


def page_count(path):
    return len(glyphs_of(path))


def read_card(path, page, box, order):
    crop = [part for pair in zip(["-x", "-y", "-W", "-H"], map(round, box)) for part in pair]
    return squeezed(tool("pdftotext", *order, "-enc", "UTF-8", "-r", "72", "-f", page, "-l", page, *crop, path, "-"))


@functools.cache
def cards_of(path, order=(), across=2, down=2):
    """The words of each card: each is cut out of its page as scissors would do it, row by row.

    `order` is empty for poppler's own reading order, ("-raw",) for the order in the file.
    """
    boxes = [(number, (column * width / across, row * height / down, width / across, height / down))
             for number, (width, height, _) in enumerate(glyphs_of(path), 1)
             for row in range(down) for column in range(across)]
    with concurrent.futures.ThreadPoolExecutor() as pool:
        cards = pool.map(lambda box: read_card(path, *box, order), boxes)
        return [card for card in cards if card]
