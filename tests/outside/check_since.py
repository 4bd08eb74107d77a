"""What `publish --since` tells is what was edited, and the sheets it names are those whose words changed."""

import random
import re
import shutil
import subprocess

import lxml.html
import yaml

from program import DEMO, fresh_folder, publish
from session_edits import EDITS, apply, clash, copy_shared, without_figure
from session_text import read_yaml
from check_editions import SHEETS, cards_of, looks_without_mark

AGAINST = "known random edits of the YAML (PyYAML); git itself; the words of the PDFs before and after (pdftotext, pdfplumber)"
SESSION = DEMO / "games" / "gull-catch.yaml"
SEED, MOST = 7, 14


def write_pack(folder, sessions):
    shutil.rmtree(folder / "games", ignore_errors=True)
    (folder / "games").mkdir(parents=True)
    copy_shared(folder)
    for name, session in sessions.items():
        text = yaml.safe_dump(session, allow_unicode=True, sort_keys=False, width=10**6)
        (folder / "games" / f"{name}.yaml").write_text(text)


def chosen_edits():
    """Every edit alone, then some together."""
    picker = random.Random(SEED)
    groups = [[edit] for edit in EDITS]
    for _ in range(MOST):
        group = []
        for edit in picker.sample(EDITS, 6):
            if len(group) < 3 and not any(clash(edit, other) for other in group):
                group.append(edit)
        groups.append(group)
    return groups


def text_of(element):
    return " ".join(element.text_content().replace("\u00a0", " ").split())


def told_on(path):
    """For each changed session of a page: its lines, each with its heading, its wordings, and the sheets to print again."""
    page = lxml.html.parse(str(path)).getroot()
    told = {}
    for article in page.xpath("//article[@class='changed']"):
        name = re.search(r"games/([^/]+)\.html", article.xpath(".//h3/a/@href")[0]).group(1)
        lines, wordings, part = [], [], None
        for element in article.xpath("./div[@class='what']/*"):
            if element.tag == "h4":
                part = text_of(element)
            for entry in element.xpath("self::ul/li"):
                lines.append((part, " ".join((entry.text or "").replace("\u00a0", " ").split())))
                wordings += [tuple(text_of(dd) for dd in entry.xpath(".//dd"))] if entry.xpath(".//dd") else []
        again = {text_of(entry.xpath("./b")[0]): [text_of(card) for card in entry.xpath("./ul/li")]
                 for entry in article.xpath("./div[@class='again']/ul/li")}
        told[name] = (lines, wordings, again)
    return told


NAMES = {"cards": "Cards", "home-guide": "Home guide", "record": "Record sheet", "review": "Review sheet"}


def check_sheets(tally, name, again, before, now):
    for sheet in SHEETS:
        was, now_is = (looks_without_mark(folder / f"print/games/{name}/{sheet}.pdf") for folder in (before, now))
        tally.same(f"{name}: the {sheet} are to be printed again", NAMES[sheet] in again, was != now_is)


def check_cards(tally, name, again, before, now):
    """Which cards by part, against the words of each card cut out of its sheet."""
    was, now_is = (cards_of(folder / f"print/games/{name}/cards.pdf") for folder in (before, now))
    named = again.get("Cards", [])
    for part, words in now_is.items():
        if part[0].isdigit() or ":" not in part:
            continue
        tally.same(f"{name}: the card “{part}”", part in named, was.get(part) != words)


def check_git(tally, room, pack, page, teachers):
    """The same two states as revisions of a repository."""
    repository = room / "repository"
    shutil.copytree(pack["before"], repository)
    git = ["git", "-C", str(repository), "-c", "user.name=t", "-c", "user.email=t@example.org"]
    steps = [["init", "-q"], ["add", "-A"], ["commit", "-qm", "before"]]
    for step in steps:
        subprocess.run([*git, *step], check=True, capture_output=True)
    shutil.rmtree(repository / "games")
    shutil.copytree(pack["now"] / "games", repository / "games")
    for step in (["add", "-A"], ["commit", "-qm", "now"]):
        subprocess.run([*git, *step], check=True, capture_output=True)
    done = publish(repository, room / "second", "--teachers", room / "second-teachers", "--since", "HEAD~1")
    tally.same("a revision: status", done.returncode, 0)
    tally.same("a revision tells families the same as a folder", told_on(room / "second/changes.html"), page)
    tally.same("a revision tells reviewers the same as a folder", told_on(room / "second-teachers/changes.html"), teachers)
    trap = room / "trap"
    for bad in (f"--output={trap}", "-x", "nowhere", "HEAD~99", f"HEAD; touch {trap}", f"$(touch {trap})", ""):
        done = publish(repository, room / "refused", f"--since={bad}")
        tally.same(f"revision {bad!r}: status", done.returncode, 2)
        tally.holds(f"revision {bad!r}: nothing ran, nothing was published", not trap.exists() and not (room / "refused").exists())
        tally.holds(f"revision {bad!r}: the way out is named", "--since" in done.stderr, done.stderr)
    bare = room / "bin"
    bare.mkdir()
    done = publish(repository, room / "refused", "--since", "HEAD", PATH=str(bare))
    tally.holds("without git it is said", done.returncode == 2 and "git is not installed" in done.stderr, done.stderr)
    done = publish(pack["now"], room / "refused", "--since", "HEAD", GIT_CEILING_DIRECTORIES=str(room))
    tally.holds("outside a repository it is said", done.returncode == 2 and "not kept in git" in done.stderr, done.stderr)


def check(tally):
    room = fresh_folder("since")
    session = without_figure(read_yaml(SESSION))
    groups = chosen_edits()
    names = [f"s{number:02}" for number in range(len(groups))]
    before, now, expected = {}, {}, {}
    for name, group in zip(names, groups):
        before[name] = {**session, "title": f"Gull catch {name}"}
        now[name], expected[name] = apply(before[name], group)
    before["gone"] = {**session, "title": "Gone"}
    now["new"] = {**session, "title": "New"}
    before["same"] = now["same"] = {**session, "title": "Same"}
    pack = {"before": room / "before", "now": room / "now"}
    write_pack(pack["before"], before)
    write_pack(pack["now"], now)
    tally.same("before: status", publish(pack["before"], room / "first", "--teachers", room / "first-teachers").returncode, 0)
    done = publish(pack["now"], room / "second", "--teachers", room / "second-teachers", "--since", pack["before"])
    if not tally.same("now: status", done.returncode, 0):
        tally.note(done.stderr[-600:])
        return
    families, teachers = told_on(room / "second/changes.html"), told_on(room / "second-teachers/changes.html")
    for name, group in zip(names, groups):
        lines, wordings, again = teachers.get(name, ([], [], {}))
        what = f"{name} ({', '.join(edit.name for edit in group)})"
        tally.same(f"{what}: reviewers", sorted(lines, key=str), sorted(expected[name], key=str))
        shared = [line for edit in group if edit.is_for_families for line in apply(before[name], [edit])[1]]
        # What a thing is for is told to reviewers alone.
        shared = [line for line in shared if not line[1].startswith("Things are for")]
        tally.same(f"{what}: families", sorted(families.get(name, ([],))[0], key=str), sorted(shared, key=str))
        tally.holds(f"{what}: the changed word is shown", all("pebble" in now_is and "pebble" not in was for was, now_is in wordings
                    if "things" not in was.lower() and ":" not in was[:14]), str(wordings)[:200])
        check_sheets(tally, name, again, room / "first", room / "second")
    for name in names[:len(EDITS):5]:
        check_cards(tally, name, teachers.get(name, ([], [], {}))[2], room / "first", room / "second")
    for path in ("second/changes.html", "second-teachers/changes.html"):
        page = lxml.html.parse(str(room / path)).getroot()
        lists = {section.get("aria-labelledby"): [text_of(e) for e in section.xpath("./ul/li")] for section in page.xpath("//section")}
        tally.same(f"{path}: new sessions", lists.get("new"), ["New"])
        tally.same(f"{path}: gone sessions", lists.get("gone"), ["Gone"])
    tally.holds("what is the same is not named", "same" not in families and "same" not in teachers)
    # To the same folder again, so that sheets need not be made again.
    again = publish(pack["now"], room / "second", "--since", room / "first")
    tally.same("the record of a published folder: status", again.returncode, 0)
    tally.same("the record of a published folder tells families the same", told_on(room / "second/changes.html"), families)
    publish(pack["now"], room / "second", "--teachers", room / "second-teachers", "--since", room / "first-teachers")
    tally.same("the record of a teachers' folder tells reviewers the same", told_on(room / "second-teachers/changes.html"), teachers)
    check_git(tally, room, pack, families, teachers)
    tally.note(f"{len(groups)} sessions with {sum(map(len, groups))} edits")
