"""A department's shared library: what is said once, borrowed, allowed and retired, as families and teachers see it."""

import json
import re
import shutil

import lxml.html
from jsonschema import Draft4Validator

from program import AS_OF, DEMO, NODE_MODULES, fresh_folder, publish, run, tool

AGAINST = "lxml’s and poppler’s reading of what is published, the schema of SARIF 2.1.0, and folders and links on disk"

BORROWED = "gymnastics/wading-bird"
LENDER = "Saltmarsh Lane School"


def inspect(pack, *more):
    done = run("inspect", pack, "--as-of", AS_OF, "--report", "json", *more)
    return done.returncode, json.loads(done.stdout or "[]"), done.stderr


def copy(name):
    pack = fresh_folder(f"library-{name}") / "school"
    shutil.copytree(DEMO, pack)
    return pack


def words(page):
    return " ".join(lxml.html.fromstring(page.read_text()).text_content().split())


def check_borrowed(tally, to):
    page = to / f"sessions/{BORROWED}.html"
    tree = lxml.html.fromstring(page.read_text())
    text = words(page)
    tally.holds("page: the lender’s name", LENDER in text)
    tally.holds("page: whose it was and who changed it", "Borrowed from PE on the marsh; changed by Hollin Staithe School" in text)
    tally.same("page: the licence is linked", [link.get("href") for link in tree.xpath("//a[@rel='license']")], ["https://creativecommons.org/licenses/by/4.0/"])
    tally.holds("page: our own cool-down in place of theirs", "Slow tide" in text and "Wings and waves" not in text)
    tally.holds("page: the shared caution", "Socks slide, so never do this in socks." in text)
    tally.holds("page: the rest is theirs", "You are a bird that walks on mud." in text)
    own = words(to / "sessions/games/gull-catch.html")
    tally.holds("a page of our own says nothing of borrowing", "Borrowed" not in own and "Hollin Staithe School" in own)


def check_pictures(tally, to):
    """A neighbour’s picture is taken over with licence and credit, on the page and on the card, and nothing else of its folder."""
    tree = lxml.html.fromstring((to / f"sessions/{BORROWED}.html").read_text())
    (picture,) = tree.xpath("//main//figure/img")
    there = (to / f"sessions/{BORROWED}.html").parent / picture.get("src")
    lent = DEMO / "_neighbours/saltmarsh/gymnastics/pictures/one-leg.png"
    tally.holds("picture: the lender’s bytes", there.exists() and there.read_bytes() == lent.read_bytes(), picture.get("src"))
    tally.holds("picture: inside what is published", to.resolve() in there.resolve().parents)
    caption = " ".join(picture.getparent().text_content().split())
    tally.same("picture: its words, whose it is and its licence", caption, "Two still wings, one quiet foot. Saltmarsh Lane School (invented), CC-BY-4.0")
    tally.holds("picture: described", "one foot" in (picture.get("alt") or ""))
    images = tool("pdfimages", "-list", to / "print" / BORROWED / "cards.pdf").splitlines()[2:]
    tally.holds("picture: on the card", any(line.split()[3:5] == ["640", "250"] for line in images), str(images))


def check_picture_paths(tally):
    """What a neighbour names stays in its pack; what it does not name stays at home."""
    pack = copy("pictures")
    lender = pack / "_neighbours/saltmarsh"
    session = lender / "gymnastics/wading-bird.yaml"
    sound, bytes_ = session.read_text(), (lender / "gymnastics/pictures/one-leg.png").read_bytes()
    (pack / "pictures").mkdir()
    (pack / "pictures/ours.png").write_bytes(bytes_)
    (lender / "pictures").mkdir()
    (lender / "pictures/top.png").write_bytes(bytes_)
    (lender / "pictures/unnamed.png").write_bytes(bytes_)
    (pack.parent / "outside.png").write_bytes(bytes_)
    (lender / "gymnastics/pictures/linked.png").symlink_to(pack.parent / "outside.png")
    for file, is_there in (("pictures/one-leg.png", True), ("../pictures/top.png", True), ("../../pictures/top.png", False), ("../../../pictures/ours.png", False),
                           ("pictures/linked.png", False), ("pictures/nowhere.png", False), ("/etc/hostname.png", False)):
        session.write_text(sound.replace("file: pictures/one-leg.png", f"file: {file}"))
        to = pack.parent / "published"
        shutil.rmtree(to, ignore_errors=True)
        done = publish(pack, to)
        tally.same(f"picture {file}: status", done.returncode, 0 if is_there else 1)
        if not is_there:
            tally.holds(f"picture {file}: told of at the lender’s line", "picture-missing" in done.stdout + done.stderr and "wading-bird.yaml" in done.stdout + done.stderr,
                        (done.stdout + done.stderr)[-300:])
            continue
        shown = sorted(path.name for path in (to / "pictures").rglob("*.png"))
        tally.same(f"picture {file}: it alone", shown, [file.rsplit("/", 1)[1]])
    session.write_text(sound.replace("Soft knee", "Soft knee ([like this](../pictures/top.png))", 1))
    to = pack.parent / "linked"
    tally.same("a link to a picture: status", publish(pack, to).returncode, 0)
    tree = lxml.html.fromstring((to / f"sessions/{BORROWED}.html").read_text())
    links = [link for link in tree.xpath("//main//a/@href") if link.endswith("top.png")]
    tally.holds("a link to a picture leads to it", links and (to / f"sessions/{BORROWED}.html").parent.joinpath(links[0]).exists(), str(links))


def check_links(tally):
    """A lender’s link to another of its sessions leads to that one here if it is borrowed too, and else is plain words."""
    pack = copy("links")
    lender = pack / "_neighbours/saltmarsh/gymnastics"
    session = lender / "wading-bird.yaml"
    sound = session.read_text()
    (lender / "tide-walk.yaml").write_text(re.sub(r"^title: .*$", "title: Tide walk", sound, count=1, flags=re.M))
    session.write_text(sound.replace("Soft knee", "Soft knee, as in [the tide walk](tide-walk.yaml)", 1))
    page, links = f"sessions/{BORROWED}.html", lambda to: [a for a in lxml.html.fromstring((to / f"sessions/{BORROWED}.html").read_text()).xpath("//main//a") if a.text_content() == "the tide walk"]
    to = pack.parent / "plain"
    tally.same("a link to what is not borrowed: status", publish(pack, to).returncode, 0)
    tally.holds("a link to what is not borrowed: plain words", "as in the tide walk" in words(to / page) and not links(to))
    found = [finding for finding in inspect(pack)[1] if finding["code"] == "link-unborrowed"]
    tally.same("a link to what is not borrowed: told of, mildly, at the lender’s line", {(f["severity"], f["file"]) for f in found}, {("advice", "_neighbours/saltmarsh/gymnastics/wading-bird.yaml")})
    (pack / "games/along-the-tide.yaml").write_text("borrows: saltmarsh/gymnastics/tide-walk\ntitle: Along the tide\n")
    to = pack.parent / "led"
    tally.same("a link to what is borrowed too: status", publish(pack, to).returncode, 0)
    led = {(to / page).parent.joinpath(a.get("href")).resolve() for a in links(to)}
    tally.same("a link to what is borrowed too leads to it here", led, {(to / "sessions/games/along-the-tide.html").resolve()})
    tally.same("a link to what is borrowed too: nothing is told", [f for f in inspect(pack)[1] if f["code"].startswith("link-")], [])


def card_texts(to, session):
    """The words of each card of a four-up sheet: each quarter of each page that has any."""
    path = to / "print" / session / "cards.pdf"
    pages = int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", path))[1])
    width, height = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", tool("pdfinfo", path)).groups())
    for page in range(1, pages + 1):
        for row in (0, 1):
            for column in (0, 1):
                box = ["-x", int(column * width / 2), "-y", int(row * height / 2), "-W", int(width / 2), "-H", int(height / 2)]
                text = " ".join(tool("pdftotext", "-f", page, "-l", page, *box, path, "-").split())
                if text:
                    yield f"{session}, page {page}, card {2 * row + column + 1}", text


def check_cards(tally, to):
    count = 0
    for session, credit in ((BORROWED, f"{LENDER} (invented)"), ("games/gull-catch", "Hollin Staithe School (invented)")):
        for what, text in card_texts(to, session):
            count += 1
            tally.holds(f"{what}: licence", "CC-BY-4.0" in text, text[-80:])
            tally.holds(f"{what}: maker, whole", credit in text, text[-80:])
    tally.holds("cards were read", count > 12, str(count))
    for sheet in ("home-guide", "record", "review"):
        text = tool("pdftotext", to / "print" / BORROWED / f"{sheet}.pdf", "-")
        tally.holds(f"{sheet}: licence and maker", "CC-BY-4.0" in text and LENDER in text, text[-120:])


def check_retired(tally):
    pack = copy("retired")
    session = pack / "games/gull-catch.yaml"
    session.write_text(session.read_text().replace("state: approved", "state: retired"))
    # A unit may not name it any longer.
    for unit in (pack / "units").glob("*.yaml"):
        unit.write_text(unit.read_text().replace("  - games/gull-catch\n", ""))
    to = pack.parent / "published"
    done = publish(pack, to)
    tally.same("retired: it publishes", done.returncode, 0)
    page = to / "sessions/games/gull-catch.html"
    tally.holds("retired: the page is kept, with a notice", page.exists() and "no longer in use" in words(page))
    front = (to / "index.html").read_text()
    tally.holds("retired: out of the family’s list", "gull-catch" not in front and "harbour-bowls" in front)
    tally.holds("retired: no sheets", not (to / "print/games/gull-catch").exists())
    dead = [link for link in re.findall(r'href="([^"#?:]+)"', page.read_text()) if page.exists() and not (page.parent / link).exists()]
    tally.same("retired: no link leads nowhere", dead, [])


def check_names(tally):
    pack = copy("names")
    session = pack / f"{BORROWED}.yaml"
    sound = session.read_text()
    for wrong, wanted in (("use: slow wave", "“slow tide” now"), ("use: slow tidy", "“slow tide” (shared.yaml, line"), ("use: front room", "is a space (shared.yaml, line")):
        session.write_text(sound.replace("use: slow tide", wrong))
        status, rows, _ = inspect(pack)
        found = [row for row in rows if row["code"] == "shared-unknown"]
        tally.same(f"{wrong}: one problem at its line", (status, [row["line"] for row in found]), (1, [sound.split("use: slow tide")[0].count("\n") + 1]))
        tally.holds(f"{wrong}: and the way out", found and wanted in found[0]["message"] + found[0]["way_out"], str(found))
        tally.holds(f"{wrong}: nothing else is said", len([row for row in rows if row["file"] == f"{BORROWED}.yaml"]) == 1, str(rows)[:300])
    session.write_text(sound)
    shared = (pack / "shared.yaml").read_text()
    (pack / "shared.yaml").write_text(shared.replace("time: 3 min", "time: 4 min"))
    _, rows, _ = inspect(pack)
    tally.holds("a change on the shelf reaches the session", any(row["code"] == "slot-sum" and row["file"].endswith(f"{BORROWED}.yaml") for row in rows), str(rows)[:300])


def check_lent_things(tally):
    """What stands in the lender’s equipment list alone is filled in from there."""
    pack = copy("things")
    lent = pack / "_neighbours/saltmarsh/gymnastics/wading-bird.yaml"
    text = lent.read_text()
    start, end = text.index("    instead:"), text.index("  - need: clock that shows seconds")
    lent.write_text(text[:start] + text[end:])
    _, rows, _ = inspect(pack)
    tally.holds("a thing in no list is told of", any(row["code"] == "substitute-missing" and "reed line" in row["message"] for row in rows), str(rows)[:300])
    (lent.parents[1] / "equipment.yaml").write_text("equipment:\n  - name: reed line\n    instead: [{thing: dressing-gown cord, size: 1-2 m}]\n")
    status, rows, _ = inspect(pack)
    tally.holds("the lender’s list knows it", status == 0 and not any("reed line" in row["message"] for row in rows), str(rows)[:300])


def check_neighbours(tally):
    """Only a folder inside the pack, or right beside it, and never through a link."""
    pack = copy("neighbours")
    inside = pack / "_neighbours/saltmarsh"
    beside = pack.parent / "saltmarsh"
    shutil.copytree(inside, beside)
    (pack.parent / "far").mkdir()
    shutil.copytree(inside, pack.parent / "far/away/too/far/off")
    (pack / "_link").symlink_to(beside)
    (pack / "_real").mkdir()
    (pack / "_real/link").symlink_to(beside)
    written = (pack / "pack.yaml").read_text()
    for folder, is_allowed in (("../saltmarsh", True), ("_neighbours/saltmarsh/", True), ("../../saltmarsh", False), ("/etc", False), ("_link", False), ("_real/link", False),
                               ("../school", False), ("games", False), ("_neighbours/../../saltmarsh", False), ("../far/away/too/far/off", False),
                               ("_neighbours/nowhere", False), (str(beside), False), ("..", False), ("_neighbours/./saltmarsh", False)):
        (pack / "pack.yaml").write_text(written.replace("folder: _neighbours/saltmarsh", f"folder: {folder}"))
        status, rows, _ = inspect(pack)
        codes = {row["code"] for row in rows if row["severity"] == "problem"}
        tally.same(f"drawing on {folder}", (status, "neighbour-unfit" in codes), (0, False) if is_allowed else (1, True))
    (pack / "pack.yaml").write_text(written)
    (inside / "pack.yaml").write_text((inside / "pack.yaml").read_text() + "draws_on: [{name: home, folder: ../..}]\n")
    tally.same("what a neighbour draws on is not followed", inspect(pack)[0], 0)
    before = {path: path.read_bytes() for path in inside.rglob("*.yaml")}
    session = inside / "gymnastics/wading-bird.yaml"
    session.write_text(session.read_text().replace("length: 3 m", "length: 3m"))
    before[session] = session.read_bytes()
    inspect(pack, "--mend")
    tally.same("a neighbour’s files are only read", {path: path.read_bytes() for path in before}, before)


def check_licences(tally):
    pack = copy("licences")
    lender = pack / "_neighbours/saltmarsh/pack.yaml"
    lent = lender.read_text()
    for licence, wanted in (("CC-BY-4.0", set()), ("CC-BY-SA-4.0", {"borrowed-terms"}), ("CC-BY-NC-4.0", {"borrowed-terms"}), ("CC-BY-ND-4.0", {"borrowed-rights"}),
                            ("CC-BY-NC-ND-4.0", {"borrowed-rights", "borrowed-terms"}), (None, {"borrowed-rights"})):
        lender.write_text(lent.replace("licence: CC-BY-4.0\n", f"licence: {licence}\n" if licence else ""))
        _, rows, _ = inspect(pack)
        tally.same(f"changed under {licence}", {row["code"] for row in rows if row["code"].startswith("borrowed")}, wanted)
    lender.write_text(lent.replace("CC-BY-4.0", "CC-BY-ND-4.0"))
    session = pack / f"{BORROWED}.yaml"
    own = session.read_text()
    session.write_text(own[:own.index("space:")] + own[own.index("standing:"):])
    _, rows, _ = inspect(pack)
    tally.same("as it is under CC-BY-ND-4.0", {row["code"] for row in rows if row["code"].startswith("borrowed")}, set())
    session.write_text(own + "credit: Us\n")
    _, rows, _ = inspect(pack)
    tally.holds("the maker’s name can’t be changed", any(row["code"] == "borrowed-rights" and "credit" in row["message"] for row in rows))


def check_allowed(tally):
    pack = copy("allowed")
    session = pack / "games/gull-catch.yaml"
    sound = session.read_text()
    without = sound[:sound.index("standing:")]
    missing = "standing-missing"
    session.write_text(without)
    _, rows, _ = inspect(pack)
    tally.holds("found while nothing allows it", [row["code"] for row in rows if row["file"] == "games/gull-catch.yaml"] == [missing], str(rows)[:300])
    session.write_text(without + f"allow: [{{finding: {missing}, why: Tried with one class first., until: 2026-07-01}}]\n")
    _, rows, _ = inspect(pack)
    kept = [row for row in rows if row["file"] == "games/gull-catch.yaml"]
    tally.same("allowed, and told of with its reason", [(row["code"], row.get("allowed")) for row in kept], [(missing, "Tried with one class first.")])
    text = run("inspect", pack, "--as-of", AS_OF).stdout
    tally.holds("in words too", "allowed: games/gull-catch.yaml:" in text and "Tried with one class first. (until 1 July 2026)" in text, text[:300])
    log = json.loads(run("inspect", pack, "--as-of", AS_OF, "--report", "sarif").stdout)
    schema = json.loads((NODE_MODULES / "@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json").read_text())
    tally.holds("SARIF with it holds to the schema", Draft4Validator(schema).is_valid(log))
    kept = [result for result in log["runs"][0]["results"] if result.get("suppressions")]
    tally.same("SARIF: one result is suppressed", [(one["ruleId"], one["suppressions"][0]["justification"]) for one in kept], [(missing, "Tried with one class first.")])
    done = run("inspect", pack, "--as-of", "2026-07-02", "--report", "json")
    codes = {row["code"] for row in json.loads(done.stdout) if row["file"] == "games/gull-catch.yaml" and not row.get("allowed")}
    tally.same("a day after its last", codes & {missing, "allowance-past"}, {missing, "allowance-past"})
    for code, wanted in (("standing-missing", "allowance-stale"), ("slot-sum", "allowance-unfit"), ("landing-zone-missing", "allowance-unfit"), ("standing-mising", "allowance-unfit")):
        session.write_text(sound + f"allow: [{{finding: {code}, why: We say so.}}]\n")
        _, rows, _ = inspect(pack)
        tally.same(f"allowing {code}", [row["code"] for row in rows if row["code"].startswith("allowance")], [wanted])
    session.write_text(sound.replace("minutes: 25", "minutes: 21") + "allow: [{finding: slot-sum, why: We say so.}]\n")
    status, rows, _ = inspect(pack)
    tally.holds("what can’t be allowed still counts", status == 1 and any(row["code"] == "slot-sum" and not row.get("allowed") for row in rows))
    session.write_text(sound)
    overdue = run("inspect", pack, "--as-of", "2027-12-01", "--report", "json")
    late = {row["file"] for row in json.loads(overdue.stdout) if row["code"] == "look-again-overdue"}
    tally.holds("a look-again date goes by the day that is given", "games/gull-catch.yaml" in late and f"{BORROWED}.yaml" in late, str(late))


def check(tally):
    pack = copy("borrowed")
    to = pack.parent / "published"
    done = publish(pack, to)
    tally.same("the demo pack publishes", done.returncode, 0)
    check_borrowed(tally, to)
    check_pictures(tally, to)
    check_picture_paths(tally)
    check_links(tally)
    check_cards(tally, to)
    check_retired(tally)
    check_names(tally)
    check_neighbours(tally)
    check_lent_things(tally)
    check_licences(tally)
    check_allowed(tally)
