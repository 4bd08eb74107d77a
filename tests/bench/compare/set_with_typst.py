"""Sets the cards with typst and prints one JSON line: `set_with_typst.py words.json fonts folder`.

The process is warm and the fonts are loaded once. typst keeps what it laid out for ten more compilations;
eleven empty ones after the warm-up make it forget these documents, as if each were set for the first time.
"""

import json
import pathlib
import sys
import time

import typst

TEMPLATE = pathlib.Path(__file__).with_name("cards.typ")


def main():
    words, fonts, folder = map(pathlib.Path, sys.argv[1:])
    compiler = typst.Compiler(TEMPLATE, font_paths=typst.Fonts(False, False, [fonts]))

    def set_cards(document):
        return compiler.compile(format="pdf", pdf_standards="ua-1", sys_inputs={"sheets": json.dumps(document)})

    documents = json.loads(words.read_text())
    for document in documents + [{"title": f"empty {number}", "cards": []} for number in range(11)]:
        set_cards(document)
    began = time.process_time()
    files = [set_cards(document) for document in documents]
    spent = time.process_time() - began
    for number, file in enumerate(files):
        (folder / f"{number:02}.pdf").write_bytes(file)
    print(json.dumps({"ms": spent * 1000, "bytes": sum(map(len, files)), "version": f"typst {typst.__version__}"}))


main()
