"""The examples of the CommonMark specification go through a text field of a session and come out as they should.

Each example is the `how` of one part. Four things differ on purpose: raw HTML is shown as text, headings are
three levels lower, and pictures from elsewhere and links to nowhere become their words. Examples link to "/url" and the like,
which leads nowhere in a pack: the same path at example.org takes its place on both sides.
"""

import json
import pathlib
import re

from markdown_it import MarkdownIt

from check_pages import read_page
from fragment import OPEN, normal_form, read_fragment, words_of
from program import AS_OF, NODE_MODULES, fresh_folder, publish, run, tool
from stress_pack import part, session, write_yaml

AGAINST = "the examples of the CommonMark specification 0.31.2 (npm commonmark-spec)"

IN_A_SESSION = 20
# What CommonMark itself makes; anything else could only have come in as raw HTML.
OWN_TAGS = {"p", "em", "strong", "code", "pre", "a", "ul", "ol", "li", "blockquote", "hr", "br", "h4", "h5", "h6", "img"}
OWN_ATTRIBUTES = {"href", "title", "start", "class", "src", "alt", "rel", "tabindex", "width", "height", "loading"}
REFERENCE = MarkdownIt("commonmark")


def flat_tokens(text, tokens=None):
    """Every token at any depth: a picture's words may hold links of their own."""
    for token in REFERENCE.parse(text) if tokens is None else tokens:
        yield token
        yield from flat_tokens(text, token.children or [])


def addresses_of(text):
    """Where links and pictures of a text lead, by the reference parser."""
    return [token.attrs.get("href") or token.attrs.get("src") or "" for token in flat_tokens(text)
            if token.type in ("link_open", "image")]


def has_raw_html(text):
    return any(token.type in ("html_block", "html_inline") for token in flat_tokens(text))


def has_picture(html):
    return "<img" in html


def lead_outside(example):
    """The example with its "/paths" at example.org, where that changes nothing else."""
    text, html = example["markdown"].replace("→", "\t"), example["html"].replace("→", "\t")
    paths = sorted({a for a in addresses_of(text) if re.match(r"/[^/]", a) and a in text}, key=len, reverse=True)
    if paths:
        pattern = r"(?<![\w:/.<])(" + "|".join(map(re.escape, paths)) + ")"
        outside = [re.sub(pattern, r"https://example.org\1", side) for side in (text, html)]
        if normal_form(read_fragment(REFERENCE.render(outside[0]))) == normal_form(read_fragment(outside[1])):
            text, html = outside
    return {**example, "markdown": text, "html": html}


def write_pack(pack, examples):
    """Sessions of twenty parts; says which example stands in which part."""
    write_yaml(pack / "pack.yaml", {"title": "Examples", "licence": "CC-BY-4.0", "cautions": ["Clear the floor."]})
    places = {}
    for first in range(0, len(examples), IN_A_SESSION):
        some = examples[first:first + IN_A_SESSION]
        name = f"examples-{first:04}"
        steps = [part(f"Example {example['number']}", 60, how=example["markdown"]) for example in some]
        write_yaml(pack / f"{name}.yaml", session(f"From {first}", {"technique": steps}, len(some)))
        places |= {example["number"]: (name, number) for number, example in enumerate(some, 1)}
    return places


def refused(pack):
    """Every example with a problem, by the code of the finding."""
    findings = json.loads(run("inspect", pack, "--report", "json", "--as-of", AS_OF).stdout)
    codes = {}
    for finding in (f for f in findings if f["severity"] == "problem"):
        lines = (pack / finding["file"]).read_text().splitlines()
        titles = [line for line in lines[:finding["line"]] if "Example " in line]
        # A problem above the first example is a fault of the pack that was made, not of an example.
        number = int(re.search(r"Example (\d+)", titles[-1])[1]) if titles else 0
        codes[number] = finding["code"]
    return codes


def compare(tally, example, field):
    where = f"example {example['number']} ({example['section']}) {example['markdown'][:50]!r}"
    theirs = read_fragment(example["html"])
    if has_raw_html(example["markdown"]):
        tags = {e.tag for e in field.iter() if e is not field}
        attributes = {a for e in field.iter() if e is not field for a in e.attrib}
        return tally.holds(f"{where}: raw HTML stays text", tags <= OWN_TAGS and attributes <= OWN_ATTRIBUTES, f"{tags - OWN_TAGS} {attributes - OWN_ATTRIBUTES}")
    if has_picture(example["html"]):
        tally.holds(f"{where}: no picture from elsewhere", not list(field.iter("img")))
        return tally.same(f"{where}: words", words_of(field), words_of(theirs))
    return tally.same(where, normal_form(field), normal_form(theirs, as_in_a_session=True))


def check(tally):
    script = pathlib.Path(__file__).with_name("examples.mjs")
    examples = [lead_outside(example) for example in json.loads(tool("node", script, NODE_MODULES))]
    filled = [example for example in examples if example["markdown"].strip()]
    room = fresh_folder("commonmark")
    write_pack(room / "all", filled)
    codes = refused(room / "all")
    tally.holds("only examples are refused", 0 not in codes, codes.get(0))
    for example in (example for example in filled if example["number"] in codes):
        closed = [a for a in addresses_of(example["markdown"]) if not a.lower().startswith(OPEN)]
        tally.holds(f"example {example['number']} is refused for where it leads", closed and ("link" in codes[example["number"]] or "picture" in codes[example["number"]]),
                    f"{codes[example['number']]} for {example['markdown'][:60]!r}")
    kept = [example for example in filled if example["number"] not in codes]
    places = write_pack(room / "kept", kept)
    done = publish(room / "kept", room / "out")
    if not tally.same("the examples are published", (done.returncode, done.stderr[-300:] if done.returncode else ""), (0, "")):
        return
    pages = {name: read_page(room / f"out/sessions/{name}.html") for name, _ in places.values()}
    for example in kept:
        name, number = places[example["number"]]
        fields = [e for section in pages[name].iter("section") if section.get("id") == f"part-{number}" for e in section.iter("div") if e.get("class") == "how"]
        if tally.holds(f"example {example['number']} is on the page", len(fields) == 1):
            compare(tally, example, fields[0])
    raw = sum(has_raw_html(example["markdown"]) for example in kept)
    pictures = sum(has_picture(example["html"]) and not has_raw_html(example["markdown"]) for example in kept)
    tally.note(f"of {len(examples)} examples {len(kept) - raw - pictures} are compared as HTML, {pictures} with pictures by their words, {raw} with raw HTML "
               f"only for being harmless; {len(codes)} lead to no file and are refused; {len(examples) - len(filled)} are empty")
