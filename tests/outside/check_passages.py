"""Words that are not in the language of their sheet say what language they are in: sessions that are not translated, on
sheets whose labels are, by the structure that readers for the blind walk through."""

import collections

import pdfplumber
import pypdf

from program import DEMO, fresh_folder, publish
from session_text import blocks_of, line_of, parts_of, read_yaml, session_files, squeezed, unit_files
from stress_pack import part, session, write_yaml

AGAINST = "/Lang (ISO 32000-1, 14.9.2) as pypdf reads the structure tree, the words by pdfplumber, with the texts of the YAML (PyYAML, markdown-it-py)"

ORIGINAL = "en-GB"
# Every kind of sheet in one language, one in the others. Reading structure takes its time: every other session, or fewer.
SHEETS = {"fr": ["cards", "home-guide", "review", "poster"]}
SHORTEST = 12


def language_of(path):
    return pypdf.PdfReader(path).trailer["/Root"]["/Lang"]


def words_by_piece(path):
    """The words of each marked piece, by its page and number."""
    words = collections.defaultdict(str)
    with pdfplumber.open(path) as pdf:
        for number, page in enumerate(pdf.pages):
            for glyph in page.chars:
                words[number, glyph.get("mcid")] += glyph["text"]
    return words


def said_in(path):
    """The words of a sheet by the language that they are in, and the elements with one of their own."""
    said, own, words = collections.defaultdict(str), 0, words_by_piece(path)
    reader = pypdf.PdfReader(path)
    pages = {page.indirect_reference.idnum: number for number, page in enumerate(reader.pages)}

    def walk(kid, language, page):
        """A piece may lie on another page than its element: a paragraph that goes on (ISO 32000-1, 14.7.4)."""
        nonlocal own
        kid = kid.get_object()
        if isinstance(kid, int):
            said[language] += words[page, kid]
        elif isinstance(kid, list):
            for each in kid:
                walk(each, language, page)
        else:
            page = pages[kid.raw_get("/Pg").idnum] if "/Pg" in kid else page
            if "/MCID" in kid:
                said[language] += words[page, kid["/MCID"]]
            elif "/K" in kid:
                own += "/Lang" in kid
                walk(kid["/K"], kid.get("/Lang", language), page)

    walk(reader.root_object["/StructTreeRoot"]["/K"], language_of(path), None)
    return {language: squeezed(text) for language, text in said.items()}, own


def texts_of(session):
    """Titles, tasks and key points, long enough not to be in any other text by chance."""
    texts = [line_of(session["title"])]
    for _, part in parts_of(session):
        texts += [line_of(part["title"]), *blocks_of(part["how"]), *map(line_of, part.get("key_points") or [])]
    return [squeezed(text) for text in texts if len(squeezed(text)) >= SHORTEST]


def check_sheet(tally, where, path, language, texts, is_translated):
    said, own = said_in(path)
    tally.same(f"{where}: its own language", language_of(path), language)
    if is_translated:
        tally.same(f"{where}: languages", set(said), {language})
        return 0
    for text in texts:
        everywhere = sum(text in words for words in said.values())
        if everywhere:
            tally.holds(f"{where}: {text[:30]!r} is {ORIGINAL}", text in said.get(ORIGINAL, ""), f"only in {sorted(said)}")
            tally.holds(f"{where}: {text[:30]!r} is not {language}", text not in said.get(language, ""))
    return own


def check_cautions(tally, where, path, language, cautions):
    """The pack’s own cautions are translated: they are no passage."""
    said, _ = said_in(path)
    for caution in cautions:
        text = squeezed(blocks_of(caution)[0])
        tally.holds(f"{where}: {text[:30]!r} is {language}", text in said.get(language, ""), f"{said.get(language, '')[:80]}")


def check_demo(tally):
    site = fresh_folder("passages") / "demo"
    done = publish(DEMO, site, "--poster")
    tally.same("the demo pack is published", done.returncode, 0)
    marked = compared = 0
    for translation in sorted(DEMO.glob("pack.*.yaml")):
        language = translation.name.split(".")[1]
        cautions = read_yaml(translation).get("cautions", [])
        for name, file in list(session_files(DEMO).items())[::2 if language in SHEETS else 3]:
            is_translated = file.with_suffix(f".{language}.yaml").exists()
            for sheet in SHEETS.get(language, ["cards"]):
                where, path = f"{language} {name} {sheet}", site / language / "print" / name / f"{sheet}.pdf"
                marked += check_sheet(tally, where, path, language, texts_of(read_yaml(file)), is_translated)
                compared += 1
            # Arabic is read out of a PDF in the order it stands on paper: another check reads it.
            if language != "ar":
                check_cautions(tally, f"{language} {name}", site / language / "print" / name / "home-guide.pdf", language, cautions)
        for unit in unit_files(DEMO):
            path = site / language / "print/units" / unit.stem / "poster.pdf"
            said, _ = said_in(path)
            for entry in read_yaml(unit).get("sessions") or []:
                name = entry["session"] if isinstance(entry, dict) else entry
                file = session_files(DEMO)[name]
                title = squeezed(line_of(read_yaml(file)["title"]))
                if not file.with_suffix(f".{language}.yaml").exists():
                    tally.holds(f"{language} {unit.stem}: {title}", title in said.get(ORIGINAL, ""), f"{said.keys()}")
    for path in sorted((site / "print").rglob("*.pdf"))[::6]:
        said, own = said_in(path)
        tally.same(f"{path.relative_to(site)}: nothing in another language", (set(said) - {ORIGINAL}, own), (set(), 0))
    tally.note(f"{compared} sheets in further languages, {marked} elements with a language of their own")


def check_mixed(tally):
    """An Arabic session on a French sheet, and its things in the middle of French sentences."""
    pack = fresh_folder("passages-mixed") / "pack"
    title, how = "توازن فوق الحجر", "قف على قدم واحدة وانظر إلى الجدار."
    seen = part(title, 300, how=how, easier="أمسك الجدار.", harder="أغمض عينيك.", key_points=["الرأس ثابت"])
    write_yaml(pack / "pack.yaml", {"title": "حزمة", "language": "ar", "licence": "CC-BY-4.0", "cautions": ["أخل الأرض أولا."]})
    write_yaml(pack / "pack.fr.yaml", {"title": "Un paquet", "cautions": ["Dégagez le sol."]})
    write_yaml(pack / "stones.yaml", session(title, {"technique": [seen]}, 5, summary="توازن.", success=["أقف."], safety=["أخل الأرض."]))
    site = pack.parent / "out"
    done = publish(pack, site)
    tally.same("the mixed pack is published", done.returncode, 0)
    path = site / "fr/print/stones/home-guide.pdf"
    if not tally.holds("its French sheet is there", path.exists(), done.stderr[-300:]):
        return
    said, _ = said_in(path)
    letters = {language: {c for c in words if c.isalpha()} for language, words in said.items()}
    arabic = {c for c in letters.get("fr", set()) if "\u0600" <= c <= "\u06ff"}
    tally.same("no Arabic letter is French", arabic, set())
    tally.holds("Arabic is Arabic", any("\u0600" <= c <= "\u06ff" for c in letters.get("ar", set())), f"{sorted(said)}")
    tally.same("no Latin word is Arabic", {c for c in letters.get("ar", set()) if c.isascii()}, set())


def check(tally):
    check_demo(tally)
    check_mixed(tally)
