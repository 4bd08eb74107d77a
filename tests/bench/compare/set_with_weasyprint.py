"""Sets the cards with WeasyPrint and prints one JSON line: `set_with_weasyprint.py words.json fonts folder`.

The process is warm; the font configuration and the style sheet are read once and used for every document.
"""

import html
import itertools
import json
import pathlib
import sys
import time

import weasyprint
from weasyprint.text.fonts import FontConfiguration

FACE = "@font-face {{ font-family: Andika; font-weight: {}; font-style: {}; src: url({}) }}"
FACES = [("Regular", "normal", "normal"), ("Bold", "bold", "normal"), ("Italic", "normal", "italic")]
LOOK = """
@page { size: A4; margin: 10.8mm 10.8mm 0 }
body, h1, h2, p, ul, ol { margin: 0; padding: 0; font: 11pt/1.28 Andika }
section { break-after: page; height: 286.2mm; position: relative }
article { position: absolute; width: 88.2mm; height: 131.7mm }
article:nth-child(even) { left: 100.2mm }
article:nth-child(n+3) { top: 143.7mm }
h1, h2, p, li { margin-bottom: 1pt }
li { margin-left: 14pt }
"""
TAGS = {"bold": "b", "italic": "i"}


def words(block):
    for text, style in block["runs"]:
        tag = TAGS.get(style)
        yield f"<{tag}>{html.escape(text)}</{tag}>" if tag else html.escape(text)


def element(block):
    name = {"": "p"}.get(block["role"], block["role"].lower())
    style = f"font-size: {block['size']}pt; line-height: {1.2 if block['size'] >= 16 else 1.28}"
    return f'<{name} style="{style}">{"".join(words(block))}</{name}>'


def list_tag(block):
    if block["role"] != "LI":
        return ""
    return "ul" if block["marker"] == "•" else "ol"


def card(blocks):
    parts = []
    for tag, group in itertools.groupby(blocks, key=list_tag):
        group = list(group)
        before = int(group[0]["marker"].strip(".")) - 1 if tag == "ol" else 0
        inside = "".join(map(element, group))
        parts.append(f'<{tag} style="counter-reset: list-item {before}">{inside}</{tag}>' if tag else inside)
    return f"<article>{''.join(parts)}</article>"


def page_of(document):
    cards = list(map(card, document["cards"]))
    pages = ("".join(cards[at:at + 4]) for at in range(0, len(cards), 4))
    body = "".join(f"<section>{page}</section>" for page in pages)
    title = html.escape(document["title"])
    return f"<html lang=en-GB><head><title>{title}</title></head><body>{body}</body></html>"


def main():
    source, fonts, folder = map(pathlib.Path, sys.argv[1:])
    documents = list(map(page_of, json.loads(source.read_text())))
    known = FontConfiguration()
    faces = "".join(FACE.format(weight, slope, (fonts / f"Andika-{face}.ttf").as_uri()) for face, weight, slope in FACES)
    look = weasyprint.CSS(string=faces + LOOK, font_config=known)

    def set_cards(document):
        page = weasyprint.HTML(string=document)
        return page.write_pdf(stylesheets=[look], font_config=known, pdf_variant="pdf/ua-1")

    set_cards(documents[0])
    began = time.process_time()
    files = list(map(set_cards, documents))
    spent = time.process_time() - began
    for number, file in enumerate(files):
        (folder / f"{number:02}.pdf").write_bytes(file)
    version = f"WeasyPrint {weasyprint.__version__}"
    print(json.dumps({"ms": spent * 1000, "bytes": sum(map(len, files)), "version": version}))


main()
