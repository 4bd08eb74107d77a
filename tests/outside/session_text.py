"""What a session file says, read without homeground: PyYAML for the file, markdown-it-py for the texts.

PyYAML follows YAML 1.1, where `on` is true and 2026-09-01 a date. Its BaseLoader resolves nothing, so
every scalar here is the text that stands in the file.
"""

import functools
import re
import unicodedata

import yaml
from markdown_it import MarkdownIt

KINDS = ["warm_up", "technique", "challenge", "stretch", "cool_down"]
SHARED = ["pack.yaml", "equipment.yaml", "curriculum.yaml", "shared.yaml"]
# brook-leap.fr.yaml
TRANSLATION = re.compile(r"\.[a-z]{2,3}(-[A-Za-z0-9]+)*\.yaml$")
HYPHENS = "-\u00ad\u2010\u2011"
COMMONMARK = MarkdownIt("commonmark", {"html": False})


def load(path):
    return yaml.load(path.read_text(encoding="utf-8-sig"), Loader=yaml.BaseLoader)


@functools.cache
def read_yaml(path):
    """A file as a reader has it: a borrowed session is the lender’s with this file’s keys over it, and what it uses
    of shared.yaml stands in it."""
    whole = load(path)
    if not isinstance(whole, dict) or path.name in SHARED:
        return whole
    pack = next((folder for folder in path.parents if (folder / "pack.yaml").exists()), path.parent)
    if "borrows" in whole:
        name, session = whole["borrows"].split("/", 1)
        folder = next(one["folder"] for one in load(pack / "pack.yaml")["draws_on"] if one["name"] == name)
        lent = load(pack / folder / f"{session}.yaml")
        rights = {key: text for key, text in load(pack / folder / "pack.yaml").items() if key in ("licence", "credit")}
        kept = {key: value for key, value in lent.items() if key not in ("standing", "curriculum", "allow")}
        whole = {**rights, **kept, **whole}
    return with_shared(whole, pack) if (pack / "shared.yaml").exists() else whole


def with_shared(session, pack):
    """The session with each `use: NAME` in the places that take one replaced by what shared.yaml says."""
    shelf = {(key, entry["name"]): entry for key, entries in load(pack / "shared.yaml").items() for entry in entries}

    def group(key, inner, own):
        return {**shelf[key, own["use"]][inner], **own} if isinstance(own, dict) and "use" in own else own

    filled = dict(session)
    for kind in KINDS:
        if kind in filled:
            parts = filled[kind]
            filled[kind] = [group("parts", "part", part) for part in parts] if isinstance(parts, list) else group("parts", "part", parts)
    if "space" in filled:
        filled["space"] = group("spaces", "space", filled["space"])
    if isinstance(filled.get("safety"), list):
        filled["safety"] = [shelf["cautions", one["use"]]["says"] if isinstance(one, dict) else one for one in filled["safety"]]
    return filled


def session_files(pack):
    """Every session of a pack by its id, in the order of the ids; translations stand beside them."""
    files = [
        path
        for path in pack.rglob("*.yaml")
        if path.relative_to(pack).as_posix() not in SHARED and path.parent != pack / "units" and not TRANSLATION.search(path.name)
        # Folders set aside with “_” hold other schools’ packs.
        and not any(part.startswith("_") for part in path.relative_to(pack).parts)
    ]
    return {path.relative_to(pack).with_suffix("").as_posix(): path for path in sorted(files)}


def unit_files(pack):
    """Every unit of a pack; translations stand beside them."""
    return sorted(path for path in (pack / "units").glob("*.yaml") if not TRANSLATION.search(path.name))


def parts_of(session):
    """The parts in the order they are done, each with its kind."""
    for kind in KINDS:
        written = session.get(kind) or []
        for part in written if isinstance(written, list) else [written]:
            yield kind, part


def words_of_inline(token):
    """The words that an inline token shows; a picture shows its alternative text."""
    if token.type in ("softbreak", "hardbreak"):
        return " "
    if token.children:
        return "".join(words_of_inline(child) for child in token.children)
    return token.content


def blocks_of(prose):
    """The words of each paragraph or list entry, in order."""
    tokens = COMMONMARK.parse(prose)
    shown = [token for token in tokens if token.type in ("inline", "fence", "code_block", "html_block")]
    return [words_of_inline(token) for token in shown]


def line_of(line):
    """The words of one line, whatever block it would be at the start of a text."""
    return "".join(words_of_inline(token) for token in COMMONMARK.parseInline(" ".join(line.split())))


def squeezed(text):
    """The text without spaces, breaks and hyphens: what remains when lines are broken elsewhere.

    pdftotext takes a hyphen at the end of a line for one that the printer put there.
    """
    plain = unicodedata.normalize("NFKC", text)
    return "".join(character for character in plain if not character.isspace() and character not in HYPHENS)
