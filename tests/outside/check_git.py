"""A pack in git: the hook, the server’s script, and what comes of merges by two teachers."""

import json
import os
import re
import shutil
import subprocess

from program import AS_OF, BINARY, DEMO, ROOT, fresh_folder, publish, run

AGAINST = "git itself: real repositories, hooks and three-way merges"

TEACHERS = {"AK": "ak@school.example", "MF": "mf@school.example"}


def git(folder, *arguments, teacher="AK"):
    """One run of git with no settings but its own."""
    environment = {**os.environ, "GIT_CONFIG_GLOBAL": "/dev/null", "GIT_CONFIG_SYSTEM": "/dev/null", "HOMEGROUND": str(BINARY),
                   "GIT_AUTHOR_NAME": teacher, "GIT_AUTHOR_EMAIL": TEACHERS[teacher], "GIT_COMMITTER_NAME": teacher, "GIT_COMMITTER_EMAIL": TEACHERS[teacher]}
    return subprocess.run(["git", "-C", str(folder), *map(str, arguments)], capture_output=True, text=True, env=environment, timeout=120)


def sure(folder, *arguments, **more):
    done = git(folder, *arguments, **more)
    if done.returncode != 0:
        raise RuntimeError(f"git {arguments} ended with {done.returncode}: {done.stdout}{done.stderr}"[-800:])
    return done.stdout


def replace(path, old, new):
    text = path.read_text()
    if old not in text:
        raise RuntimeError(f"{path} has no {old!r}")
    path.write_text(text.replace(old, new, 1))


def start(name):
    """A repository with the demo pack in it, committed."""
    folder = fresh_folder("git") if name == "hook" else fresh_folder("git-" + name)
    repository = folder / "school"
    repository.mkdir()
    sure(repository, "init", "-q", "-b", "main")
    shutil.copytree(DEMO, repository / "sessions")
    sure(repository, "add", "-A")
    sure(repository, "commit", "-qm", "Our sessions")
    return repository


def findings(pack):
    done = run("inspect", pack, "--as-of", AS_OF, "--report", "json")
    return done.returncode, json.loads(done.stdout)


def check_hook(tally):
    repository = start("hook")
    hook = repository / ".git/hooks/pre-commit"
    shutil.copy(ROOT / "templates/git/pre-commit", hook)
    hook.chmod(0o755)
    session = repository / "sessions/games/gull-catch.yaml"
    replace(session, "title: Chip thief", "title: Chip snatcher")
    sure(repository, "add", "-A")
    done = git(repository, "commit", "-qm", "A better name")
    tally.holds("a sound commit passes", done.returncode == 0, done.stdout[-300:] + done.stderr[-300:])
    before = sure(repository, "rev-parse", "HEAD")
    replace(session, "minutes: 25", "minutes: 21")
    sure(repository, "add", "-A")
    done = git(repository, "commit", "-qm", "Shorter")
    said = done.stdout + done.stderr
    tally.holds("a broken one is refused", done.returncode != 0 and sure(repository, "rev-parse", "HEAD") == before, said[-300:])
    tally.holds("and told of at its line", "games/gull-catch.yaml:" in said and "slot-sum" in said and "Nothing was committed" in said, said[-600:])
    replace(session, "minutes: 21", "minutes: 25")
    (repository / "note.txt").write_text("for later\n")
    sure(repository, "add", "-A")
    replace(session, "minutes: 25", "minutes: 21")
    done = git(repository, "commit", "-qm", "A note")
    tally.holds("what is not staged does not count", done.returncode == 0, done.stdout[-300:] + done.stderr[-300:])
    sure(repository, "config", "homeground.pack", "elsewhere")
    sure(repository, "add", "-A")
    tally.holds("a pack of another name is looked for there", git(repository, "commit", "-qm", "No pack").returncode == 0)
    left = [path.name for path in (repository.parent).iterdir()]
    tally.same("nothing is left lying about", left, ["school"])


def check_server(tally):
    repository = start("server")
    script = ROOT / "templates/git/inspect-all"

    def look(pack):
        (repository / "findings.sarif").unlink(missing_ok=True)
        environment = {**os.environ, "HOMEGROUND": str(BINARY)}
        done = subprocess.run([str(script), pack], cwd=repository, capture_output=True, text=True, env=environment, timeout=120)
        return done, (repository / "findings.sarif").exists()

    done, written = look("sessions")
    tally.same("sound: status and file", (done.returncode, written), (0, True))
    replace(repository / "sessions/games/gull-catch.yaml", "minutes: 25", "minutes: 21")
    done, written = look("sessions")
    results = json.loads((repository / "findings.sarif").read_text())["runs"][0]["results"]
    tally.same("broken: status and file", (done.returncode, written), (1, True))
    tally.holds("broken: in the file and in words", any(result["ruleId"] == "slot-sum" for result in results) and "slot-sum" in done.stdout)
    done, written = look("nowhere")
    tally.same("no pack: status and no file", (done.returncode, written), (2, False))


def two_teachers(name, first, second):
    """Two clones of one repository, each with its own edits, put together; the merge’s own run of git is given."""
    school = start(name)
    clones = {}
    for teacher, edit in (("AK", first), ("MF", second)):
        clone = school.parent / teacher
        sure(school.parent, "clone", "-q", school, clone, teacher=teacher)
        edit(clone / "sessions")
        sure(clone, "add", "-A", teacher=teacher)
        sure(clone, "commit", "-qm", f"{teacher}’s changes", teacher=teacher)
        clones[teacher] = clone
    sure(clones["AK"], "fetch", "-q", clones["MF"], "main")
    return clones["AK"] / "sessions", git(clones["AK"], "merge", "--no-edit", "FETCH_HEAD")


def check_clean_merge(tally):
    """Different parts of one session, of the shared lists and of the pack."""

    def first(pack):
        replace(pack / "games/gull-catch.yaml", "easier: Walk the flight and snatch after every sixth step.", "easier: Walk the flight and snatch after every eighth step.")
        replace(pack / "equipment.yaml", "equipment:\n", "equipment:\n  - name: cone\n    instead:\n      - {thing: paper cup, mass: 5-15 g, size: 8-12 cm}\n\n")
        replace(pack / "shared.yaml", "cautions:\n", "cautions:\n  - name: wet leaves\n    says: Sweep wet leaves away before you run.\n")

    def second(pack):
        replace(pack / "games/gull-catch.yaml", "Why is a silent catch a safer catch?", "Why does a silent catch keep you safer?")
        with (pack / "equipment.yaml").open("a") as file:
            file.write("\n  - name: hoop\n    instead:\n      - {thing: circle of string, soft: true}\n")
        replace(pack / "shared.yaml", "points: [Knees over toes, Sink and hold]", "points: [Knees over toes, Sink and hold still]")
        replace(pack / "pack.yaml", "Wear trainers that are done up", "Wear trainers that are tied")

    pack, merge = two_teachers("clean", first, second)
    tally.holds("git puts them together by itself", merge.returncode == 0, merge.stdout + merge.stderr)
    status, rows = findings(pack)
    problems = [row for row in rows if row["severity"] == "problem"]
    tally.holds("the result inspects clean", status == 0 and not problems, str(problems[:2]))
    tally.holds("no warning but that translations are older", {row["code"] for row in rows if row["severity"] == "warning"} <= {"translation-old"}, str(rows[:2]))
    to = pack.parent.parent / "published"
    done = publish(pack, to)
    tally.same("it publishes", done.returncode, 0)
    page = (to / "sessions/games/gull-catch.html").read_text() if (to / "sessions/games/gull-catch.html").exists() else ""
    for words in ("after every eighth step", "Why does a silent catch keep you safer?", "trainers that are tied"):
        tally.holds(f"the page has “{words}”", words in page, f"{len(page)} bytes")
    again = run("inspect", pack, "--mend", "--as-of", AS_OF)
    tally.holds("there is nothing to mend", "nothing" in again.stderr, again.stderr[:300])


def check_conflict(tally):
    def change(minutes):
        return lambda pack: replace(pack / "games/gull-catch.yaml", "minutes: 25", f"minutes: {minutes}")

    pack, merge = two_teachers("conflict", change(26), change(27))
    tally.holds("git leaves both versions", merge.returncode != 0 and "<<<<<<<" in (pack / "games/gull-catch.yaml").read_text())
    status, rows = findings(pack)
    marks = [row for row in rows if row["code"] == "merge-unfinished"]
    line = (pack / "games/gull-catch.yaml").read_text().splitlines().index("<<<<<<< HEAD") + 1
    tally.same("inspect tells of it", (status, [(row["file"], row["line"]) for row in marks]), (1, [("games/gull-catch.yaml", line)]))
    tally.holds("in plain words", marks and not re.search(r"merge|conflict|HEAD|branch", marks[0]["message"] + marks[0]["way_out"]), str(marks))
    mended = run("inspect", pack, "--mend", "--as-of", AS_OF)
    tally.holds("and mending does not touch it", mended.returncode == 1 and "<<<<<<< HEAD" in (pack / "games/gull-catch.yaml").read_text())


def check_twins(tally):
    """What git can’t see: two new files that are one session to a reader."""

    def adds(path, title):
        def edit(pack):
            file = pack / path
            file.write_text(run("draft", title).stdout)
        return edit

    pack, merge = two_teachers("twins", adds("games/Wall-Ball.yaml", "Wall ball"), adds("games/wall ball.yaml", "Ball and wall"))
    tally.same("git sees no conflict in two names", merge.returncode, 0)
    status, rows = findings(pack)
    twins = [row for row in rows if row["code"] == "id-twice"]
    tally.holds("one id twice is a problem", status == 1 and len(twins) == 1, str(rows[:2]))
    pack, merge = two_teachers("titles", adds("games/wall-ball.yaml", "Wall ball"), adds("fitness/wall-ball.yaml", "Wall ball"))
    _, rows = findings(pack)
    twins = [row for row in rows if row["code"] == "title-twice"]
    tally.holds("one title twice is told of", merge.returncode == 0 and len(twins) == 1, str(rows[:2]))
    tally.holds("and which other it is", twins and "wall-ball" in twins[0]["message"] + twins[0]["way_out"], str(twins))


def check(tally):
    check_hook(tally)
    check_server(tally)
    check_clean_merge(tally)
    check_conflict(tally)
    check_twins(tally)
