"""`inspect --report sarif`: the log holds to the standard’s schema and says what the other reports say."""

import json
import re
import shutil

from jsonschema import Draft4Validator

from program import DEMO, NODE_MODULES, ROOT, AS_OF, fresh_folder, run

AGAINST = "the JSON schema of SARIF 2.1.0 (in @microsoft/jest-sarif, npm, MIT), and our JSON report"

BROKEN = ROOT / "tests/packs/broken"
LEVELS = {"problem": "error", "warning": "warning", "advice": "note"}


def inspect(pack, report):
    return run("inspect", pack, "--report", report, "--as-of", AS_OF)


def check_log(tally, name, pack, validator):
    done, rows = inspect(pack, "sarif"), json.loads(inspect(pack, "json").stdout)
    rows = [row for row in rows if not row.get("allowed")]
    log = json.loads(done.stdout)
    wrong = [f"{error.json_path}: {error.message[:120]}" for error in validator.iter_errors(log)]
    tally.holds(f"{name}: holds to the schema", not wrong, "; ".join(wrong[:3]))
    one_run = log["runs"][0]
    rules = one_run["tool"]["driver"]["rules"]
    results = [result for result in one_run["results"] if not result.get("suppressions")]
    tally.same(f"{name}: as many results as findings", len(results), len(rows))
    tally.same(f"{name}: exit status", done.returncode, 1 if any(row["severity"] == "problem" for row in rows) else 0)
    for result, row in zip(results, rows):
        place = result["locations"][0]["physicalLocation"]
        region = place["region"]
        what = f"{name}: {row['file']}:{row['line']} {row['code']}"
        tally.same(what, (result["ruleId"], result["level"], region["startLine"], region["startColumn"]),
                   (row["code"], LEVELS[row["severity"]], row["line"], row["column"]))
        tally.same(f"{what}: its rule", rules[result["ruleIndex"]]["id"], row["code"])
        tally.holds(f"{what}: ends after it begins", (region["endLine"], region["endColumn"]) >= (region["startLine"], region["startColumn"]))
        tally.holds(f"{what}: a relative address", re.fullmatch(r"[A-Za-z0-9._~/%-]+", place["artifactLocation"]["uri"])
                    and not place["artifactLocation"]["uri"].startswith("/"), place["artifactLocation"]["uri"])
    prints = [result["partialFingerprints"]["findingText/v1"] for result in one_run["results"]]
    tally.same(f"{name}: each fingerprint once", len(set(prints)), len(prints))
    return prints, rules


def check_stability(tally, validator):
    """Lines above move a finding, and its fingerprint stays; another text has another."""
    pack = fresh_folder("sarif") / "pack"
    shutil.copytree(BROKEN, pack, symlinks=True)
    before = {}
    for result in json.loads(inspect(pack, "sarif").stdout)["runs"][0]["results"]:
        before.setdefault(result["locations"][0]["physicalLocation"]["artifactLocation"]["uri"], []).append(result)
    path = "rules/slot-sum.yaml"
    file = pack / path
    file.write_text("# a line above\n\n" + file.read_text())
    after = [result for result in json.loads(inspect(pack, "sarif").stdout)["runs"][0]["results"]
             if result["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] == path]
    tally.same("moved by two lines", [result["partialFingerprints"] for result in after], [result["partialFingerprints"] for result in before[path]])
    moved = [result["locations"][0]["physicalLocation"]["region"]["startLine"] for result in after]
    tally.same("and told of there", moved, [result["locations"][0]["physicalLocation"]["region"]["startLine"] + 2 for result in before[path]])


def check(tally):
    schema = json.loads((NODE_MODULES / "@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json").read_text())
    tally.same("the schema is that of 2.1.0", schema["properties"]["version"]["enum"], ["2.1.0"])
    validator = Draft4Validator(schema)
    tally.holds("the schema refuses a log without runs", not validator.is_valid({"version": "2.1.0"}))
    check_log(tally, "demo", DEMO, validator)
    _, rules = check_log(tally, "broken", BROKEN, validator)
    for rule in rules:
        tally.holds(f"{rule['id']} is explained", rule["shortDescription"]["text"].endswith(".") and len(rule["help"]["text"]) > 60)
    check_stability(tally, validator)
