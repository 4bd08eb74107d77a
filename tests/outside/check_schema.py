"""The schemas are JSON Schema, take every sound file, and see what a schema can see in the broken ones."""

import functools
import json
import re

from jsonschema import Draft202012Validator

from plain_yaml import YAMLError, read_yaml
from program import DEMO, ROOT, ask, fresh_folder, run

AGAINST = "jsonschema 4.26 (PyPI) with the meta-schema of draft 2020-12, over YAML 1.2 as ruamel.yaml reads it"

KINDS = ["session", "pack", "equipment", "curriculum", "shared", "unit", "home", "translation", "unit-translation", "pack-translation"]

# The bad examples of the rules that are about keys, words, kinds of value and their bounds, and those of files
# that hold nothing or something else, all of which a schema can see. Every other rule compares values with each
# other, with another file or with what is sensible.
SEEN = {"file-empty", "file-misnamed", "file-too-much", "key-missing", "key-unknown", "translation-too-much", "value-unfit"}


def kind_of(path):
    """The kind of a file by its path inside a pack."""
    name = path.rsplit("/", 1)[-1]
    if re.search(r"\.[a-z]{2,3}(-[A-Za-z0-9]+)*\.yaml$", name):
        return "pack-translation" if name.startswith("pack.") else "unit-translation" if path.startswith("units/") else "translation"
    if path.startswith("units/"):
        return "unit"
    return {"pack.yaml": "pack", "equipment.yaml": "equipment", "curriculum.yaml": "curriculum", "shared.yaml": "shared"}.get(path, "session")


def schemas():
    folder = fresh_folder("schema")
    done = run("schema", "--to", folder)
    if done.returncode != 0:
        raise RuntimeError(done.stderr)
    return {path.name.removesuffix(".schema.json"): json.loads(path.read_text()) for path in folder.glob("*.json")}


@functools.cache
def value_of(text):
    """What a text says; most examples share their other files."""
    return read_yaml(text)


def faults(validator, text):
    """What the schema finds in a text; a text that is no YAML is not for a schema."""
    return [f"{error.json_path}: {error.message[:160]}" for error in validator.iter_errors(value_of(text))]


def check_kinds(tally, all_schemas):
    tally.holds("every kind is written", set(KINDS) <= set(all_schemas), str(sorted(all_schemas)))
    for name, schema in all_schemas.items():
        tally.same(f"{name}: dialect", schema["$schema"], Draft202012Validator.META_SCHEMA["$id"])
        wrong = list(Draft202012Validator(Draft202012Validator.META_SCHEMA).iter_errors(schema))
        tally.holds(f"{name}: holds to the meta-schema", not wrong, "; ".join(error.message for error in wrong[:3]))
        alone = run("schema", name)
        tally.same(f"{name}: the same when it is asked for alone", json.loads(alone.stdout), schema)
    tally.same("a session’s is meant where none is named", json.loads(run("schema").stdout), all_schemas["session"])
    misspelt = run("schema", "sesion")
    tally.holds("a misspelt kind", misspelt.returncode == 2 and "“session”" in misspelt.stderr, misspelt.stderr)


def examples_in(schema):
    """Every example of a property, with the property’s own schema."""
    if isinstance(schema, dict):
        for value in schema.values():
            yield from examples_in(value)
        for example in schema.get("examples", []) if isinstance(schema.get("examples"), list) else []:
            yield example, schema
    elif isinstance(schema, list):
        for value in schema:
            yield from examples_in(value)


def check_examples(tally, all_schemas):
    for name, schema in all_schemas.items():
        for example, own in examples_in(schema):
            within = {**own, "$defs": schema["$defs"]}
            tally.holds(f"{name}: the example {example!r}", Draft202012Validator(within).is_valid(example), str(own)[:200])


def check_sound(tally, validators):
    files = [(path.relative_to(DEMO).as_posix(), path) for path in sorted(DEMO.rglob("*.yaml")) if not path.relative_to(DEMO).as_posix().startswith(("look/", "_"))]
    for path, file in files:
        found = faults(validators[kind_of(path)], file.read_text())
        tally.holds(f"demo pack: {path}", not found, "; ".join(found[:3]))
    found = faults(validators["home"], (ROOT / "tests/homes/home.yaml").read_text())
    tally.holds("the home", not found, "; ".join(found[:3]))
    draft = run("draft", "Balance trail")
    found = faults(validators["session"], draft.stdout)
    tally.holds("the starter", draft.returncode == 0 and not found, "; ".join(found[:3]))


def all_faults(validators, files):
    """What the schemas find in a pack; `None` where a file is no YAML at all."""
    found = []
    for path, text in files.items():
        kind = kind_of(path)
        if not path.endswith(".yaml") or path.startswith("_") or not text.strip():
            continue
        try:
            found += [f"{path} {fault}" for fault in faults(validators[kind], text)]
        except YAMLError:
            return None
    return found


def check_rules(tally, validators):
    rows = ask([{"ask": "examples"}])[0]
    seen = set()
    for row in rows:
        good = all_faults(validators, row["good"])
        tally.holds(f"good example of {row['code']}", good == [], str(good))
        if all_faults(validators, row["bad"]):
            seen.add(row["code"])
    tally.same("the bad examples that a schema sees", sorted(seen), sorted(SEEN))
    tally.note(f"{len(rows)} rules; a schema sees the bad examples of {', '.join(sorted(seen))}")


# One slip at a time in a sound session: what each schema must see, as it is typed.
SLIPS = [
    ("minutes: 20", "minutes: twenty"), ("minutes: 20", "minutes: -5"), ("minutes: 20", "minutes: 5000"), ("ages: 8-11", "ages: 8 to 11"),
    ("ages: 8-11", "ages: 2-5"), ("activity: gymnastics", "activity: gymnastic"), ("length: 3 m", "length: 3"), ("length: 3 m", "length: 3 metres"),
    ("length: 3 m", "length: 3,5 m"), ("height: 2.2 m", "hieght: 2.2 m"), ("rounds: 4", "rounds: many"), ("rounds: 4", "rounds: 4000"),
    ("effort: light", "effort: easy"), ("movements: [balancing]", "movements: [wobbling]"), ("kind: recall", "kind: remember"),
    ("state: draft", "state: finished"), ("better: more", "better: higher"), ("what: time", "what: speed"), ("time: 3 min", "time: 3 mins"),
    ("time: 3 min", "time: [3 min]"), ("title: Follow the line", "titel: Follow the line"), ("where: [indoors, outdoors]", "where: [inside]"),
    ("surface: [carpet, hard floor, grass]", "surface: {carpet: true}"), ("attempts: 3", "attempts: three"),
]


def check_slips(tally, validators):
    sound = run("draft", "Balance trail").stdout
    for right, wrong in SLIPS:
        tally.holds(f"the starter has “{right}”", right in sound)
        found = faults(validators["session"], sound.replace(right, wrong, 1))
        tally.holds(f"seen: {wrong}", found, "the schema lets it pass")


def check(tally):
    all_schemas = schemas()
    validators = {name: Draft202012Validator(schema) for name, schema in all_schemas.items()}
    check_kinds(tally, all_schemas)
    check_examples(tally, all_schemas)
    check_sound(tally, validators)
    check_rules(tally, validators)
    check_slips(tally, validators)
