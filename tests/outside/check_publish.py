"""Publishing harms nothing: not a file of yours, not the last good pack."""

import os
import shutil

from check_determinism import prints
from program import DEMO, fresh_folder, publish
from session_text import session_files

AGAINST = "bytes of the folders before and after (SHA-256) and exit statuses: 0 well, 1 problems, 2 could not run"


def nearby(room):
    """Everything beside the target: nothing half-built may be left there."""
    return sorted(path.name for path in room.iterdir())


def check_foreign(tally, room):
    target = room / "mine"
    target.mkdir()
    (target / "letter.txt").write_text("mine")
    done = publish(DEMO, target)
    tally.same("a folder with a file of yours: status", done.returncode, 2)
    tally.same("a folder with a file of yours: untouched", [p.name for p in target.iterdir()], ["letter.txt"])
    tally.holds("a folder with a file of yours: it is named", "letter.txt" in done.stderr, done.stderr)
    (room / "file").write_text("mine")
    tally.same("a file in place of a folder: status", publish(DEMO, room / "file").returncode, 2)
    tally.same("a file in place of a folder: untouched", (room / "file").read_text(), "mine")
    shutil.copytree(DEMO, room / "pack")
    before = prints(room / "pack")
    for inside in (room / "pack", room / "pack" / "out", room):
        tally.same(f"a target that overlaps the pack ({inside.name}): status", publish(room / "pack", inside).returncode, 2)
    tally.same("a target that overlaps the pack: untouched", prints(room / "pack"), before)


def check_last_good(tally, room):
    pack, target = room / "changing", room / "target"
    shutil.copytree(DEMO, pack)
    tally.same("the first time: status", publish(pack, target).returncode, 0)
    good, beside = prints(target), nearby(room)
    session = sorted(session_files(pack).values())[0]
    whole = session.read_bytes()
    for how, broken in [("cut short", whole[:200]), ("a key misspelt", whole.replace(b"title:", b"titel:", 1)), ("not text", b"\xff\xfe\x00")]:
        session.write_bytes(broken)
        done = publish(pack, target)
        tally.same(f"{how}: status", done.returncode, 1)
        tally.holds(f"{how}: the file is named", session.name in done.stderr, done.stderr[-200:])
        tally.same(f"{how}: the last good pack stands", prints(target), good)
        tally.same(f"{how}: nothing half-built is left", nearby(room), beside)
    session.write_bytes(whole)
    tally.same("mended: status", publish(pack, target).returncode, 0)
    tally.same("mended: as before", prints(target), good)

    name = session.relative_to(pack).with_suffix("").as_posix()
    session.unlink()
    for translation in session.parent.glob(f"{session.stem}.*.yaml"):
        translation.unlink()
    # A unit may not name it any longer.
    shutil.rmtree(pack / "units")
    tally.same("a session less: status", publish(pack, target).returncode, 0)
    tally.holds("a session less: its page and sheets are gone",
                not (target / f"sessions/{name}.html").exists() and not (target / f"print/{name}").exists())
    (target / "notes.txt").write_text("mine")
    before = prints(target)
    tally.same("a file of yours put in later: status", publish(pack, target).returncode, 2)
    tally.same("a file of yours put in later: untouched", prints(target), before)


def check_look(tally, room):
    pack = room / "own-look"
    shutil.copytree(DEMO, pack)
    own = "body{background:#fffef0}"
    style = pack / "look" / "static" / "site" / "ground.css"
    style.parent.mkdir(parents=True)
    style.write_text(own)
    tally.same("a style of its own: status", publish(pack, room / "own").returncode, 0)
    tally.same("a style of its own: is used", (room / "own" / "static" / "ground.css").read_text(), own)
    template = pack / "look" / "templates" / "site" / "things.html"
    template.parent.mkdir(parents=True)
    template.write_text("<!doctype html><title>own {{ frame.pack }}</title>")
    publish(pack, room / "own")
    tally.holds("a template of its own: is used", (room / "own" / "things.html").read_text().startswith("<!doctype html><title>own PE"))
    before = prints(room / "own")
    template.write_text("{{ broken")
    done = publish(pack, room / "own")
    tally.holds("a template of its own that is broken: refused", done.returncode in (1, 2), str(done.returncode))
    tally.holds("a template of its own that is broken: it is named", "things.html" in done.stderr, done.stderr)
    tally.holds("a template of its own that is broken: no panic", "panicked" not in done.stderr, done.stderr)
    tally.same("a template of its own that is broken: the last good pack stands", prints(room / "own"), before)


def check_links(tally, room):
    """A target that is a link is followed; a list that names places outside is not believed."""
    outside = room / "outside.txt"
    outside.write_text("mine")
    target = room / "forged"
    tally.same("a forged list: first", publish(DEMO, target).returncode, 0)
    (target / ".homeground").write_text((target / ".homeground").read_text() + "../outside.txt\n/etc/hostname\n")
    publish(DEMO, target)
    tally.holds("a forged list: nothing outside is touched", outside.exists() and os.path.exists("/etc/hostname"))


def check(tally):
    for name, part in [("foreign", check_foreign), ("last-good", check_last_good), ("look", check_look), ("links", check_links)]:
        part(tally, fresh_folder(f"publish-{name}"))
