"""Every page is sound HTML, and everything it links to lies in the folder."""

import json
import re
import subprocess
import urllib.parse

import html5lib

from program import DEMO, NODE_MODULES, published, teachers_of

AGAINST = "the Nu HTML Checker (npm vnu-jar) and the folder itself"

# Attributes from which a browser fetches by itself; a link that a reader follows is not among them.
FETCHED = {("link", "href"), ("img", "src"), ("img", "srcset"), ("script", "src"), ("iframe", "src"),
           ("source", "src"), ("video", "src"), ("audio", "src"), ("object", "data"), ("embed", "src"),
           ("use", "href"), ("image", "href")}


def nu_errors(pages):
    command = ["java", "-Xss8m", "-jar", NODE_MODULES / "vnu-jar/build/dist/vnu.jar", "--format", "json",
               "--also-check-css", "--stdout", "--exit-zero-always", *pages]
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, timeout=300)
    return json.loads(done.stdout)["messages"]


def read_page(page):
    return html5lib.parse(page.read_text(), namespaceHTMLElements=False)


def addresses(tree):
    """Every address in a page with the element and attribute it stands in."""
    for element in tree.iter():
        if not isinstance(element.tag, str):
            continue
        name = element.tag.rsplit("}", 1)[-1]
        # The same page in another language, or its own address: named, never fetched.
        if name == "link" and element.get("rel") in ("alternate", "canonical"):
            continue
        for attribute, value in element.attrib.items():
            attribute = str(attribute).rsplit("}", 1)[-1]
            if attribute in ("href", "src", "srcset", "data", "action", "poster"):
                yield name, attribute, value


def is_elsewhere(address):
    return urllib.parse.urlsplit(address).scheme != "" or address.startswith("//")


def check_address(tally, page, ids, name, attribute, address):
    where = f"{page.name} <{name} {attribute}={address!r}>"
    if (name, attribute) in FETCHED:
        tally.holds(f"{where} is fetched from the folder", not is_elsewhere(address))
    if is_elsewhere(address):
        tally.holds(f"{where} is http(s) or mailto", address.split(":")[0] in ("http", "https", "mailto"))
        return
    path, _, fragment = address.partition("#")
    target = (page.parent / urllib.parse.unquote(path)).resolve() if path else page.resolve()
    tally.holds(f"{where} leads to a file", target.is_file())
    if fragment and target in ids:
        tally.holds(f"{where} leads to a place", urllib.parse.unquote(fragment) in ids[target])


def check(tally):
    families = published(DEMO)
    teachers, folder = teachers_of(families), families.parent
    pages = [*sorted(families.rglob("*.html")), *sorted(teachers.rglob("*.html"))]
    styles = sorted(families.rglob("*.css"))
    told = [page.name for page in families.rglob("*.html") if re.search(r'(href|src)="[^"]*teachers|for-teachers', page.read_text())]
    tally.same("no page of a family names the teachers’ folder", told, [])
    messages = nu_errors([*pages, *styles])
    errors = [message for message in messages if message["type"] != "info"]
    for file in [*pages, *styles]:
        own = [e for e in errors if e.get("url", "").endswith(file.relative_to(folder).as_posix())]
        found = "; ".join(f"line {e.get('lastLine')}: {e['message']}" for e in own[:3])
        tally.holds(f"{file.relative_to(folder)} has no error", not own, found)
    stray = [e for e in errors if not e.get("url")]
    tally.holds("the checker itself ran through", not stray, str(stray[:1]))
    tally.note(f"{len(messages) - len(errors)} warnings and remarks of the checker are not counted")

    trees = {page.resolve(): read_page(page) for page in pages}
    ids = {page: {e.get("id") for e in tree.iter() if e.get("id")} for page, tree in trees.items()}
    for page, tree in trees.items():
        policies = [m.get("content") for m in tree.iter("meta")
                    if (m.get("http-equiv") or "").lower() == "content-security-policy"]
        tally.holds(f"{page.name} has a policy that starts from nothing",
                    any("default-src 'none'" in policy for policy in policies), str(policies))
        tally.holds(f"{page.name} allows only itself", not re.search(r"unsafe|\*|https?:|data:|blob:", " ".join(policies)), str(policies))
        inside = [e for e in tree.iter("script") if not e.get("src") and e.get("type") != "application/ld+json"]
        handlers = [name for e in tree.iter() for name in e.attrib if str(name).startswith("on") or name == "style"]
        tally.same(f"{page.name} has no script, handler or style inside", (len(inside), handlers), (0, []))
        for name, attribute, address in addresses(tree):
            check_address(tally, page, ids, name, attribute, address)
    for style in styles:
        tally.holds(f"{style.name} fetches nothing from elsewhere",
                    not any(word in style.read_text() for word in ("http:", "https:", "url(//", "@import")))
