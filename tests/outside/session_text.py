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
SHARED = ["pack.yaml", "equipment.yaml", "curriculum.yaml"]
# brook-leap.fr.yaml
TRANSLATION = re.compile(r"\.[a-z]{2,3}(-[A-Za-z0-9]+)*\.yaml$")
HYPHENS = "-\u00ad\u2010\u2011"
COMMONMARK = MarkdownIt("commonmark", {"html": False})


@functools.cache
def read_yaml(path):
    return yaml.load(path.read_text(encoding="utf-8-sig"), Loader=yaml.BaseLoader)


def session_files(pack):
    """Every session of a pack by its id, in the order of the ids; translations stand beside them."""
    files = [
        path
        for path in pack.rglob("*.yaml")
        if path.relative_to(pack).as_posix() not in SHARED and path.parent != pack / "units" and not TRANSLATION.search(path.name)
    ]
    return {path.relative_to(pack).with_suffix("").as_posix(): path for path in sorted(files)}


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
