"""YAML as an editor reads it: PyYAML with the core schema of YAML 1.2, in which a date is text and "yes" a word."""

import re

import yaml


class CoreLoader(yaml.SafeLoader):
    """SafeLoader with the resolvers of YAML 1.2.2, section 10.3.2, in place of those of YAML 1.1."""


CoreLoader.yaml_implicit_resolvers = {}
for tag, pattern, first in (
    ("null", r"^(?:~|null|Null|NULL|)$", ["~", "n", "N", ""]),
    ("bool", r"^(?:true|True|TRUE|false|False|FALSE)$", list("tTfF")),
    ("int", r"^(?:[-+]?[0-9]+)$", list("-+0123456789")),
    ("float", r"^(?:[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?)$", list("-+.0123456789")),
):
    CoreLoader.add_implicit_resolver(f"tag:yaml.org,2002:{tag}", re.compile(pattern), first)
CoreLoader.add_constructor("tag:yaml.org,2002:int", lambda loader, node: int(loader.construct_scalar(node)))


def read_yaml(text):
    return yaml.load(text, CoreLoader)
