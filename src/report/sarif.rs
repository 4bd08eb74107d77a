//! Findings as SARIF 2.1.0, for pages that show a change with what was found in it.
//!
//! Input: findings, those that are allowed, and the files; output: one log with one run. Every place is a region of a file, whose
//! address is relative to the pack’s folder, and every result has a fingerprint that does not change when lines
//! move.
//!
//! Source: OASIS Standard, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, sections 3.14
//! (run), 3.27 (result), 3.30 (region), 3.49 (reportingDescriptor) and 3.50 (reportingConfiguration).

use std::collections::BTreeMap;

use serde_json::{Value, json};

use crate::finding::{Finding, Severity};
use crate::inspect::{Allowed, Rule, rules};
use crate::place::{Files, Place};

/// Where the standard’s own schema stands.
const SCHEMA: &str =
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json";

/// What relative addresses start from.
const ROOT: &str = "PACK";

/// The findings as one SARIF log.
pub fn report_sarif(findings: &[Finding], allowed: &[Allowed], files: &Files) -> String {
    let mut seen = BTreeMap::new();
    let mut results: Vec<Value> =
        findings.iter().map(|finding| result_of(finding, files, &mut seen)).collect();
    results.extend(allowed.iter().map(|kept| suppressed(kept, files, &mut seen)));
    let log = json!({
        "$schema": SCHEMA,
        "version": "2.1.0",
        "runs": [{
            "tool": {"driver": driver()},
            "columnKind": "unicodeCodePoints",
            "originalUriBaseIds": {ROOT: {"description": {"text": "The folder of the pack."}}},
            "results": results,
        }],
    });
    let mut text = serde_json::to_string_pretty(&log).expect("text and numbers are always JSON");
    text.push('\n');
    text
}

fn driver() -> Value {
    json!({
        "name": "homeground",
        "semanticVersion": env!("CARGO_PKG_VERSION"),
        "rules": rules::ALL.iter().map(rule_of).collect::<Vec<_>>(),
    })
}

fn rule_of(rule: &Rule) -> Value {
    let source = match rule.source {
        "" => String::new(),
        source => format!(" Source: {source}."),
    };
    let help = match rule.good {
        "" => String::new(),
        good => format!("\n\nFor example:\n\n```yaml\n{}\n```", good.trim_end()),
    };
    json!({
        "id": rule.code,
        "shortDescription": {"text": rule.asks},
        "fullDescription": {"text": format!("{}{source}", rule.why)},
        "help": {
            "text": format!("{} {}", rule.asks, rule.why),
            "markdown": format!("{} {}{source}{help}", rule.asks, rule.why),
        },
        "defaultConfiguration": {"level": level(rule.severity)},
    })
}

/// The standard’s levels say no more than ours do.
const fn level(severity: Severity) -> &'static str {
    match severity {
        Severity::Problem => "error",
        Severity::Warning => "warning",
        Severity::Advice => "note",
    }
}

/// How often a fingerprint was met: the same thing said twice in a file is two results.
type Seen = BTreeMap<String, u32>;

fn result_of(finding: &Finding, files: &Files, seen: &mut Seen) -> Value {
    let mut result = json!({
        "ruleId": finding.code,
        "level": level(finding.severity),
        "message": {"text": format!("{} {}", finding.says, finding.way_out)},
        "locations": [{"physicalLocation": {
            "artifactLocation": {"uri": address(&files.get(finding.place.file).path), "uriBaseId": ROOT},
            "region": region(finding.place, files),
        }}],
        "partialFingerprints": {"findingText/v1": fingerprint(finding, files, seen)},
    });
    let index = rules::ALL.iter().position(|rule| rule.code == finding.code);
    if let (Some(index), Some(result)) = (index, result.as_object_mut()) {
        result.insert("ruleIndex".into(), json!(index));
    }
    result
}

/// A finding that its file allows (section 3.35, suppression).
fn suppressed(kept: &Allowed, files: &Files, seen: &mut Seen) -> Value {
    let mut result = result_of(&kept.finding, files, seen);
    let why = kept.allowance.why.value.0.as_str();
    result["suppressions"] = json!([{"kind": "inSource", "justification": why}]);
    result
}

/// The stretch of the file: lines and columns from 1, the end column behind the last character.
fn region(place: Place, files: &Files) -> Value {
    let marked = files.text_of(place).trim_end();
    let length = u32::try_from(marked.len()).unwrap_or(0);
    let start = files.line_column(place);
    let end = files.line_column(Place { start: place.start + length, ..place });
    json!({
        "startLine": start.line,
        "startColumn": start.column,
        "endLine": end.line,
        "endColumn": end.column,
    })
}

/// A path as a relative URI: what a URI has other uses for is written in hexadecimals (RFC 3986).
fn address(path: &str) -> String {
    let keep = |byte: u8| byte.is_ascii_alphanumeric() || b"-._~/".contains(&byte);
    path.bytes()
        .map(|byte| if keep(byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") })
        .collect()
}

/// The rule, the file and the marked text without its spaces, by the hash FNV-1a (64 bits): the same however far
/// the lines above have moved it.
fn fingerprint(finding: &Finding, files: &Files, seen: &mut Seen) -> String {
    let path = &files.get(finding.place.file).path;
    let marked: String =
        files.text_of(finding.place).split_whitespace().collect::<Vec<_>>().join(" ");
    let whole = [finding.code, path, &marked].join("\u{0}");
    let hash = whole.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    });
    let met = seen.entry(format!("{hash:016x}")).or_insert(0);
    *met += 1;
    format!("{hash:016x}:{met}")
}
