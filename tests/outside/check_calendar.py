"""The calendar of a unit as a reader of iCalendar takes it, and as RFC 5545 words it; times against zoneinfo."""

import datetime
import re
import shutil
import zoneinfo

import icalendar
import yaml
from icalendar.parser import unescape_char
from program import AS_OF, DEMO, fresh_folder, published, run
from session_text import SHARED, read_yaml, session_files, unit_files

# The zones of the package, so that no older list of this computer’s is compared with.
zoneinfo.reset_tzpath(to=[])

AGAINST = "icalendar (PyPI), the grammar and examples of RFC 5545, and Python’s zoneinfo across changes of the clocks"

# The property names that RFC 5545 (3.6.1, 3.6.5) and RFC 7986 allow here, and X- names.
ALLOWED = {
    "VCALENDAR": {"VERSION", "PRODID", "CALSCALE", "METHOD", "NAME", "X-WR-CALNAME"},
    "VEVENT": {"UID", "DTSTAMP", "SEQUENCE", "DTSTART", "DURATION", "SUMMARY", "DESCRIPTION", "URL", "TRANSP"},
    "VTIMEZONE": {"TZID"},
    "STANDARD": {"DTSTART", "TZOFFSETFROM", "TZOFFSETTO", "TZNAME"},
    "DAYLIGHT": {"DTSTART", "TZOFFSETFROM", "TZOFFSETTO", "TZNAME"},
}
NEEDED = {"VCALENDAR": {"VERSION", "PRODID"}, "VEVENT": {"UID", "DTSTAMP"}, "VTIMEZONE": {"TZID"},
          "STANDARD": {"DTSTART", "TZOFFSETFROM", "TZOFFSETTO"}, "DAYLIGHT": {"DTSTART", "TZOFFSETFROM", "TZOFFSETTO"}}
# Content lines (3.1): name, parameters, value; the forms of values by 3.3.
LINE = re.compile(r"([A-Z0-9-]+)((?:;[A-Z0-9-]+=(?:\"[^\"]*\"|[^\";:,]+))*):(.*)", re.S)
FORMS = {"DTSTAMP": r"\d{8}T\d{6}Z", "DTSTART": r"\d{8}T\d{6}", "DURATION": r"PT\d+M(\d+S)?", "SEQUENCE": r"\d+",
         "TZOFFSETFROM": r"[+-]\d{4}(\d\d)?", "TZOFFSETTO": r"[+-]\d{4}(\d\d)?"}


def check_grammar(tally, name, raw):
    """Lines end with CR LF, none is longer than 75 octets, folds unfold, components nest, properties are allowed and needed ones there."""
    tally.holds(f"{name}: lines end with CR LF and with nothing else", b"\n" not in raw.replace(b"\r\n", b"") and raw.endswith(b"\r\n"))
    tally.holds(f"{name}: no line over 75 octets", max(map(len, raw.split(b"\r\n"))) <= 75)
    text = raw.decode()
    open_components, seen = [], []
    for line in text.replace("\r\n ", "").split("\r\n")[:-1]:
        found = LINE.fullmatch(line)
        if not tally.holds(f"{name}: a content line", found, line[:80]):
            continue
        key, _, value = found.groups()
        if key == "BEGIN":
            open_components.append(value), seen.append(set())
        elif key == "END":
            tally.same(f"{name}: components nest", open_components.pop(), value)
            tally.holds(f"{name}: {value} has what it needs", NEEDED[value] <= seen.pop())
        else:
            where = open_components[-1]
            tally.holds(f"{name}: {key} in {where}, once", key in ALLOWED[where] and key not in seen[-1], line)
            seen[-1].add(key)
            if key in FORMS:
                tally.holds(f"{name}: form of {key}", re.fullmatch(FORMS[key], value), value)
    tally.same(f"{name}: all is closed", open_components, [])
    tally.holds(f"{name}: no alarm", "VALARM" not in text)


def check_times(tally, name, calendar, unit):
    """Each event begins at its hour on the family’s clock, by the calendar’s own VTIMEZONE and by zoneinfo."""
    zone, own = zoneinfo.ZoneInfo(unit["time_zone"]), next(iter(calendar.walk("VTIMEZONE")))
    rules = sorted((start_of(rule), rule["TZOFFSETTO"].td) for rule in own.subcomponents)
    clocks = {day["day"]: str(day["at"]) for day in unit["days"]}
    changes = set()
    for event in calendar.walk("VEVENT"):
        start = event.decoded("DTSTART").replace(tzinfo=None)
        there = start.replace(tzinfo=zone)
        held = [to for onset, to in rules if onset <= start]
        # A time that the clocks jump over counts by the offset before the jump (RFC 5545, 3.3.5).
        is_jumped = there.astimezone(datetime.timezone.utc).astimezone(zone).replace(tzinfo=None) != start
        offset = held[-2] if is_jumped else held[-1]
        changes.add(offset)
        tally.same(f"{name}: offset on {start}", offset, there.utcoffset())
        day = start.strftime("%A").lower()
        tally.same(f"{name}: the hour on {start.date()}", start.strftime("%-H:%M"), clocks[day].lstrip("0"))
    return changes


def start_of(rule):
    return rule["DTSTART"].dt.replace(tzinfo=None)


def check_unit(tally, path, raw):
    unit = yaml.safe_load(re.sub(r"at: (\d+:\d\d)", r"at: '\1'", path.read_text()))
    calendar = icalendar.Calendar.from_ical(raw)
    events = list(calendar.walk("VEVENT"))
    tally.holds(f"{path.stem}: icalendar reads it without a fault", not calendar.errors and not any(e.errors for e in events))
    tally.holds(f"{path.stem}: an event for each session", len(events) >= len(unit["sessions"]), str(len(events)))
    uids = [str(event["UID"]) for event in events]
    tally.same(f"{path.stem}: UIDs are different", len(set(uids)), len(uids))
    changed = datetime.datetime.combine(unit["changed"], datetime.time(), datetime.timezone.utc)
    days = (unit["changed"] - datetime.date(2000, 1, 1)).days
    sessions = {line["title"]: line for line in map(read_yaml, session_files(DEMO).values())}
    for event in events:
        tally.same(f"{path.stem}: stamp", event.decoded("DTSTAMP"), changed)
        tally.same(f"{path.stem}: sequence", int(event["SEQUENCE"]), days)
        title = str(event["SUMMARY"])
        session = next((s for t, s in sessions.items() if plain(t) == plain(title)), None)
        if tally.holds(f"{path.stem}: {title} is a session", session):
            tally.same(f"{path.stem}: {title}: length", event.decoded("DURATION"), datetime.timedelta(minutes=int(session["minutes"])))
    return check_times(tally, path.stem, calendar, unit)


def plain(text):
    return re.sub(r"\W+", "", text).lower()


def events_of(pack, room, name):
    done = run("publish", pack, "--to", room / name, "--as-of", AS_OF)
    if done.returncode:
        raise RuntimeError(done.stderr[-400:])
    (raw,) = [path.read_bytes() for path in (room / name / "units").glob("*.ics")]
    return raw, {str(e["UID"]): e for e in icalendar.Calendar.from_ical(raw).walk("VEVENT")}


UNIT = """title: '{title}'
starts: {starts}
weeks: 3
days: [{{day: saturday, at: 9:30}}, {{day: sunday, at: 1:30}}]
time_zone: {zone}
sessions: [games/gull-catch, games/gull-catch, games/gull-catch, games/gull-catch, games/gull-catch]
changed: {changed}
"""


def check_again(tally):
    """A later edition moves events and doubles none; zones far away and text with marks of the format come through."""
    room = fresh_folder("calendar")
    pack = room / "pack"
    (pack / "games").mkdir(parents=True), (pack / "units").mkdir()
    shutil.copytree(DEMO / "_neighbours", pack / "_neighbours")
    for path in [*SHARED, "games/gull-catch.yaml"]:
        (pack / path).write_text((DEMO / path).read_text())
    title = "Catch; again, and back\\slash – " + "é" * 60
    write = lambda **more: (pack / "units" / "catch.yaml").write_text(UNIT.format(**{"title": title, "starts": "2027-03-20", "zone": "Europe/London", "changed": "2027-01-05", **more}))
    write()
    first_raw, first = events_of(pack, room, "first")
    same_raw, _ = events_of(pack, room, "same")
    tally.holds("the same plan gives the same bytes", first_raw == same_raw)
    tally.same("text with marks of the format", unescape_char(str(icalendar.Calendar.from_ical(first_raw)["NAME"])), title)
    write(starts="2027-03-27", changed="2027-01-20")
    _, later = events_of(pack, room, "later")
    tally.same("the same UIDs after a week’s delay", sorted(later), sorted(first))
    for uid in first:
        tally.same("moved by a week", later[uid].decoded("DTSTART") - first[uid].decoded("DTSTART"), datetime.timedelta(7))
        tally.holds("a higher sequence", int(later[uid]["SEQUENCE"]) > int(first[uid]["SEQUENCE"]))
    crossed = 0
    for zone, starts in [("Europe/London", "2027-03-20"), ("Europe/London", "2027-10-16"), ("America/New_York", "2027-03-06"),
                         ("Australia/Lord_Howe", "2027-03-27"), ("Asia/Kathmandu", "2027-03-20"), ("Africa/Casablanca", "2027-02-01"),
                         ("Pacific/Auckland", "2027-09-18"), ("Asia/Tehran", "2027-03-20"), ("America/St_Johns", "2027-10-30")]:
        write(zone=zone, starts=starts)
        raw, events = events_of(pack, room, "zone")
        check_grammar(tally, zone, raw)
        unit = yaml.safe_load(re.sub(r"at: (\d+:\d\d)", r"at: '\1'", (pack / "units" / "catch.yaml").read_text()))
        crossed += len(check_times(tally, f"{zone} {starts}", icalendar.Calendar.from_ical(raw), unit)) > 1
    (pack / "units" / "catch.yaml").write_text(UNIT.format(title="Own", starts="2027-03-20", zone="Europe/London", changed="2027-01-05").replace("time_zone: Europe/London\n", ""))
    raw, events = events_of(pack, room, "floating")
    tally.holds("without a time zone times are the family’s own (form 1)", b"VTIMEZONE" not in raw and all(e.decoded("DTSTART").tzinfo is None for e in events.values()))
    tally.note(f"9 plans in 8 time zones, {crossed} of them across a change of the clocks")


# RFC 5545, 3.1 and 3.3.11: the example of a folded line and that of escaped text, as the reader used here takes them.
RFC_FOLD = "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line."
RFC_TEXT = r"DESCRIPTION:Project XYZ Final Review\nConference Room - 3B\nCome Prepared."


def check_reader(tally):
    """The outside reader holds to the examples of RFC 5545, so that its word counts."""
    event = lambda line: icalendar.Event.from_ical(f"BEGIN:VEVENT\r\nUID:1\r\nDTSTAMP:19970901T130000Z\r\n{line}\r\nEND:VEVENT\r\n")
    tally.same("RFC 5545, 3.1", str(event(RFC_FOLD)["DESCRIPTION"]), "This is a long description that exists on a long line.")
    tally.same("RFC 5545, 3.3.11", str(event(RFC_TEXT)["DESCRIPTION"]), "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")


def check(tally):
    check_reader(tally)
    folder = published(DEMO)
    crossed = False
    for path in unit_files(DEMO):
        raw = (folder / "units" / f"{path.stem}.ics").read_bytes()
        check_grammar(tally, path.stem, raw)
        crossed |= len(check_unit(tally, path, raw)) > 1
    tally.holds("a demo unit runs across a change of the clocks", crossed)
    check_again(tally)
