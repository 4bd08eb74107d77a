"""Open data in the pages: JSON-LD in the words of schema.org, a feed, Open Graph, the same page in other languages."""

import html
import json
import re
import shutil
import xml.etree.ElementTree as tree_of

import feedparser

from check_pages import read_page
from check_time import slot_seconds
from program import DEMO, NODE_MODULES, fresh_folder, publish, published
from session_text import line_of, parts_of, read_yaml, session_files

AGAINST = "the vocabulary of schema.org (npm schema-dts), feedparser and RFC 4287, the YAML read by PyYAML"

ADDRESS = "https://pe.hollin-staithe.example/"
ATOM = "{http://www.w3.org/2005/Atom}"


class Vocabulary:
    """Types with their parents and properties, read from the type declarations."""

    def __init__(self, text):
        self.parents, self.own = {}, {}
        for name, parents, body in re.findall(r"interface (\w+)Base(?: extends ([^{]+?))? \{\n(.*?)^\}", text, re.S | re.M):
            self.parents[name] = [parent.strip().removesuffix("Base") for parent in parents.split(",") if parent.strip().endswith("Base")]
            self.own[name] = dict(re.findall(r'^    "(\w+)"\?: SchemaValue<(.*?), "\w+">;', body, re.M))
        self.names = set(re.findall(r'"@type": "(\w+)"', text))
        # A type with no property of its own is declared as another’s.
        for name, parent in re.findall(r"interface (\w+)Leaf extends (\w+)Base", text):
            self.parents.setdefault(name, [parent])

    def expected(self, name, key):
        """What a property of a type may be, or nothing where the type has no such property."""
        if key in self.own.get(name, {}):
            return self.own[name][key].split(" | ")
        for parent in self.parents.get(name, []):
            found = self.expected(parent, key)
            if found:
                return found
        return None

    def is_a(self, name, wider):
        return name == wider or any(self.is_a(parent, wider) for parent in self.parents.get(name, []))


def suits(vocabulary, value, expected):
    if isinstance(value, dict):
        return any(vocabulary.is_a(value["@type"], kind) for kind in expected)
    if isinstance(value, bool):
        return "Boolean" in expected
    if isinstance(value, (int, float)):
        return bool({"Number", "Integer", "QuantitativeValue", "Text"} & set(expected)) and not {"Number", "Integer"}.isdisjoint(expected)
    if "Duration" in expected and re.fullmatch(r"P(T(\d+H)?(\d+M)?(\d+S)?)", value):
        return True
    if {"Date", "DateTime"} & set(expected) and re.fullmatch(r"\d{4}-\d\d-\d\d", value):
        return True
    if "URL" in expected and re.match(r"https?://", value):
        return True
    return "Text" in expected


def judge(tally, where, vocabulary, thing):
    names = thing["@type"] if isinstance(thing["@type"], list) else [thing["@type"]]
    for name in names:
        tally.holds(f"{where}: {name} is a type", name in vocabulary.names)
    for key, value in thing.items():
        if key.startswith("@"):
            continue
        expected = [kind for name in names for kind in vocabulary.expected(name, key) or []]
        if not tally.holds(f"{where}: {'/'.join(names)} has “{key}”", expected):
            continue
        for one in value if isinstance(value, list) else [value]:
            tally.holds(f"{where}: “{key}” may be {str(one)[:60]}", suits(vocabulary, one, expected), str(expected))
            if isinstance(one, dict):
                judge(tally, f"{where} {key}", vocabulary, one)


def data_of(tree):
    blocks = [e for e in tree.iter("script") if e.get("type") == "application/ld+json"]
    return [json.loads(block.text) for block in blocks]


def check_data(tally, folder, vocabulary):
    for name, path in session_files(DEMO).items():
        session, tree = read_yaml(path), read_page(folder / f"sessions/{name}.html")
        blocks = data_of(tree)
        if not tally.same(f"{name}: one block of data", len(blocks), 1):
            continue
        data = blocks[0]
        judge(tally, name, vocabulary, data)
        tally.same(f"{name}: its name", data["name"], line_of(session["title"]))
        tally.same(f"{name}: its address", data["url"], f"{ADDRESS}sessions/{name}.html")
        low, _, high = session["ages"].partition("-")
        tally.same(f"{name}: its ages", data["typicalAgeRange"], f"{low}-{high}" if high else low)
        hours, minutes, rest = re.fullmatch(r"PT(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?", data["timeRequired"]).groups()
        tally.same(f"{name}: its time", int(hours or 0) * 3600 + int(minutes or 0) * 60 + int(rest or 0), slot_seconds(session))
        tally.same(f"{name}: its steps", [step["name"] for step in data["step"]], [line_of(part["title"]) for _, part in parts_of(session)])
        anchors = {e.get("id") for e in tree.iter() if e.get("id")}
        tally.holds(f"{name}: its steps are on the page", all(step["url"].split("#")[1] in anchors for step in data["step"]))


def check_hostile(tally, vocabulary):
    """A text that would end the block, or begin another, stays a text."""
    pack = fresh_folder("open-data") / "pack"
    shutil.copytree(DEMO, pack)
    title = 'Ends </script><script>alert(1)</script> & <!-- "here"'
    session = pack / "games/gull-catch.yaml"
    session.write_text(re.sub(r"^title: .*$", lambda _: f"title: {json.dumps(title)}", session.read_text(), count=1, flags=re.M))
    to = pack.parent / "to"
    done = publish(pack, to)
    tally.same("a hostile title: published", done.returncode, 0)
    page = (to / "sessions/games/gull-catch.html").read_text()
    tree = read_page(to / "sessions/games/gull-catch.html")
    tally.same("a hostile title: no script of its own", sum(not e.get("src") for e in tree.iter("script")), 1)
    tally.same("a hostile title: whole in the data", data_of(tree)[0]["name"], title)
    tally.holds("a hostile title: no bracket in the data", "<" not in page.split("ld+json\">")[1].split("</script>")[0])
    feed = tree_of.parse(to / "feed.xml").getroot()
    tally.holds("a hostile title: whole in the feed", title in [told.text for told in feed.findall(f"{ATOM}entry/{ATOM}title")])


def check_feed(tally, folder):
    text = (folder / "feed.xml").read_bytes()
    feed, root = feedparser.parse(text), tree_of.fromstring(text)
    tally.holds("the feed is well formed", not feed.bozo, str(feed.get("bozo_exception")))
    tally.same("the feed is Atom", feed.version, "atom10")
    # RFC 4287, 4.1.1 and 4.1.2: exactly one id, title and updated each; an author; a link to itself.
    for element in [root, *root.findall(f"{ATOM}entry")]:
        for name in ("id", "title", "updated"):
            tally.same(f"one {name}", len(element.findall(ATOM + name)), 1)
        tally.holds("a date of RFC 3339", re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", element.find(f"{ATOM}updated").text))
    tally.holds("an author", feed.feed.get("author"))
    tally.same("the link to itself", [link.href for link in feed.feed.links if link.rel == "self"], [f"{ADDRESS}feed.xml"])
    tally.same("ids are given once", len({entry.id for entry in feed.entries}), len(feed.entries))
    tally.same("the newest first", [e.updated for e in feed.entries], sorted((e.updated for e in feed.entries), reverse=True))
    tally.same("as new as its newest", feed.feed.updated, feed.entries[0].updated)
    sessions = {f"{ADDRESS}sessions/{name}.html": read_yaml(path) for name, path in session_files(DEMO).items()}
    dated = {address: session for address, session in sessions.items()
             if session.get("standing", {}).get("on") and session["standing"]["state"] != "retired"}
    tally.same("the sessions with a date", {entry.link for entry in feed.entries}, set(dated))
    for entry in feed.entries:
        session = dated[entry.link]
        tally.same(f"{entry.title}: its date", entry.updated[:10], session["standing"]["on"])
        tally.same(f"{entry.title}: its title", html.unescape(entry.title), line_of(session["title"]))
        lines = [line_of(session["summary"]), *map(line_of, session["standing"].get("changed", []))]
        tally.same(f"{entry.title}: what changed", html.unescape(entry.summary).split("\n"), lines)
    bare = fresh_folder("open-data-bare")
    pack = bare / "pack"
    shutil.copytree(DEMO, pack)
    (pack / "pack.yaml").write_text((DEMO / "pack.yaml").read_text().replace("\naddress:", "\n# address:"))
    tally.same("with no address: published", publish(pack, bare / "to").returncode, 0)
    tally.holds("with no address there is no feed", not (bare / "to/feed.xml").exists())
    tally.holds("with no address no page names one", "feed.xml" not in (bare / "to/index.html").read_text())


def check_heads(tally, folder):
    """Open Graph’s four, one address for each page, and languages that name one another (RFC 5646 tags, HTML 4.2.4)."""
    for page in [*sorted((folder / "sessions").rglob("*.html")), folder / "index.html", folder / "fr/index.html", folder / "ar/things.html"]:
        tree, where = read_page(page), page.relative_to(folder).as_posix()
        metas = {e.get("property"): e.get("content") for e in tree.iter("meta") if e.get("property")}
        for name in ("og:title", "og:type", "og:url", "og:description"):
            tally.holds(f"{where}: {name}", metas.get(name))
        own = ADDRESS + re.sub(r"(^|/)index\.html$", r"\1", where)
        tally.same(f"{where}: its own address", metas.get("og:url"), own)
        links = {e.get("hreflang"): e.get("href") for e in tree.iter("link") if e.get("rel") == "alternate" and e.get("hreflang")}
        tally.same(f"{where}: its languages", set(links), {"en-GB", "ar", "cy", "fr", "x-default"})
        for language, address in links.items():
            tally.holds(f"{where} in {language} is there", (folder / address.removeprefix(ADDRESS)).exists(), address)


def check(tally):
    folder = published(DEMO)
    vocabulary = Vocabulary((NODE_MODULES / "schema-dts/dist/schema.d.ts").read_text())
    tally.holds("the vocabulary was read", vocabulary.is_a("LearningResource", "CreativeWork") and vocabulary.expected("HowTo", "tool"))
    check_data(tally, folder, vocabulary)
    check_hostile(tally, vocabulary)
    check_feed(tally, folder)
    check_heads(tally, folder)
