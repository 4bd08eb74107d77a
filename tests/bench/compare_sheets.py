#!/usr/bin/env python3
"""homeground’s cards beside the same words set by others in the same run. No test: it prints a table.

    python3 tests/bench/compare_sheets.py [--runs 3]

The words are read back from homeground’s own cards, card by card and size by size (`compare/card_words.py`),
and set with the same faces of `static/type`, on A4, four cards to a page, tagged as PDF/UA-1, fonts subset, by

    krilla with parley   a small crate of its own in tests/bench/krilla, as a library
    typst                its Python package; tagged PDF is its default since 0.14
    WeasyPrint           its Python package, with the system’s Pango

What is counted is processor time, on one thread of one core: other work on the machine then costs little.
Every process is warm, the others’ fonts are loaded before the clock starts, and each document is set anew
(typst’s cache is emptied before). homeground’s time takes in more than theirs: its plans, reading its fonts and
its catalogue, trying a card in several sizes, dividing it over cards, and drawing marks, bars, plans of the
floor and cut lines. The others get cards already divided and sized. krilla and homeground run as libraries;
typst and WeasyPrint are called once a document, as a Python program would call them.
The fastest of the runs counts; the tools take turns. What they made stays in target/bench/made to be looked at.
"""

import argparse
import collections
import json
import os
import pathlib
import shutil
import subprocess
import venv

ROOT = pathlib.Path(__file__).resolve().parents[2]
HERE = ROOT / "tests" / "bench"
BENCH = ROOT / "target" / "bench"
FONTS = ROOT / "static" / "type"
PYTHON = BENCH / "venv" / "bin" / "python"
PACKAGES = ["typst==0.15.2", "weasyprint==70.0", "pdfplumber==0.11.10"]
WORDS = BENCH / "words.json"


def run(what, *command, **more):
    """Runs a command and gives what it prints; a failure is said with what it was for."""
    try:
        done = subprocess.run(list(map(str, command)), check=False, capture_output=True, text=True, **more)
    except FileNotFoundError as missing:
        raise SystemExit(f"{what}: {missing.filename} is missing.") from missing
    if done.returncode:
        raise SystemExit(f"{what} failed ({' '.join(map(str, command))}):\n{done.stderr[-2000:]}")
    return done.stdout


def install():
    missing = [tool for tool in ("cargo", "qpdf", "pdfinfo", "pdffonts", "pdftotext") if not shutil.which(tool)]
    if missing:
        raise SystemExit(f"Missing: {', '.join(missing)} (Debian: qpdf, poppler-utils; cargo comes with Rust).")
    if not PYTHON.exists():
        venv.create(BENCH / "venv", with_pip=True)
    run("Installing the Python packages", PYTHON, "-m", "pip", "install", "--quiet",
        "--disable-pip-version-check", *PACKAGES)
    run("Loading WeasyPrint (Debian: libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0)",
        PYTHON, "-c", "import weasyprint")
    run("Building homeground", "cargo", "build", "--release", "--example", "time_sheets", cwd=ROOT)
    run("Building the crate with krilla", "cargo", "build", "--release", "--locked", "--target-dir", BENCH / "krilla",
        cwd=HERE / "krilla")


def tools():
    built = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))
    given = {name: [WORDS, FONTS, folder_of(name)] for name in ("krilla", "typst", "WeasyPrint")}
    return {
        "homeground": [built / "release/examples/time_sheets", ROOT / "sessions", "--cards", folder_of("homeground")],
        "krilla": [BENCH / "krilla/release/set_with_krilla", *given["krilla"]],
        "typst": [PYTHON, HERE / "compare/set_with_typst.py", *given["typst"]],
        "WeasyPrint": [PYTHON, HERE / "compare/set_with_weasyprint.py", *given["WeasyPrint"]],
    }


def folder_of(name):
    folder = BENCH / "made" / name
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def measure(name, command):
    alone = {**os.environ, "RAYON_NUM_THREADS": "1"}
    return json.loads(run(f"Setting with {name}", *command, env=alone))


def letters(text):
    return collections.Counter(letter for letter in text if letter.isalpha())


def look_at(name, documents):
    """Pages of what a tool made. Each file must be sound, tagged, with subset fonts and with the words on it."""
    pages = 0
    for file, document in zip(sorted(folder_of(name).glob("*.pdf")), documents, strict=True):
        run(f"Checking {name}", "qpdf", "--check", file)
        said = dict(line.split(":", 1) for line in run(name, "pdfinfo", file).splitlines() if ":" in line)
        faces = [line.split() for line in run(name, "pdffonts", file).splitlines()[2:]]
        if said["Tagged"].strip() != "yes" or any(face[-5:-3] != ["yes", "yes"] for face in faces):
            raise SystemExit(f"{file} is not tagged or a font is not subset: nothing to compare with.")
        blocks = [block for card in document["cards"] for block in card]
        given = letters("".join(text for block in blocks for text, _ in block["runs"]))
        lost = given - letters(run(name, "pdftotext", "-raw", file, "-"))
        # A card that is too full may run off the paper; homeground alone makes its words fit.
        if lost.total() > given.total() / 50:
            raise SystemExit(f"{file} lacks {lost.total()} of {given.total()} letters: nothing to compare with.")
        pages += int(said["Pages"])
    return pages


def print_table(results, cards):
    ours = results["homeground"]
    print(f"{'':32}{'ms a card':>11}{'ratio':>7}{'cards a s':>11}{'bytes a card':>14}{'ratio':>7}{'pages':>7}"
          f"{'ms for 2':>10}{'ratio':>7}")
    for result in results.values():
        two, our_two = (each["ms"] / each["pages"] * 2 for each in (result, ours))
        slower, larger = (result[key] / ours[key] for key in ("ms", "bytes"))
        print(f"{result['version']:32}{result['ms'] / cards:11.3f}{slower:7.2f}{cards / result['ms'] * 1000:11.0f}"
              f"{result['bytes'] / cards:14.0f}{larger:7.2f}{result['pages']:7}{two:10.2f}{two / our_two:7.2f}")


def main():
    arguments = argparse.ArgumentParser(description="homeground’s cards beside the same words set by others.")
    arguments.add_argument("--runs", type=int, default=3)
    runs = arguments.parse_args().runs
    install()
    if hasattr(os, "sched_setaffinity"):
        os.sched_setaffinity(0, {max(os.sched_getaffinity(0))})
    commands = tools()
    measure("homeground", commands["homeground"])
    run("Reading the words", PYTHON, HERE / "compare/card_words.py", folder_of("homeground"), WORDS)
    documents = json.loads(WORDS.read_text(encoding="utf-8"))
    cards = sum(len(document["cards"]) for document in documents)
    rounds = [{name: measure(name, command) for name, command in commands.items()} for _ in range(runs)]
    results = {name: min((each[name] for each in rounds), key=lambda each: each["ms"]) for name in commands}
    for name, result in results.items():
        result.update(pages=look_at(name, documents), version=result.get("version", name))
    print(f"{len(documents)} documents, {cards} cards; processor time on one core, fastest of {runs} runs, "
          "ratios to homeground (above 1: more than homeground)")
    print_table(results, cards)


main()
