"""YAML 1.2 as an editor reads it (ruamel.yaml): a date is text and "yes" a word."""

from ruamel.yaml import YAML
from ruamel.yaml.constructor import SafeConstructor
from ruamel.yaml.error import YAMLError


class PlainConstructor(SafeConstructor):
    """Dates stay as they are written: the core schema (YAML 1.2.2, section 10.3) has none."""


PlainConstructor.add_constructor("tag:yaml.org,2002:timestamp", lambda constructor, node: constructor.construct_scalar(node))


def read_yaml(text):
    reader = YAML(typ="safe", pure=True)
    reader.Constructor = PlainConstructor
    return reader.load(text)


__all__ = ["YAMLError", "read_yaml"]
