//! Answers a check’s questions about what to gather once for a pack.
//!
//! In: `{"ask": "gather_once", "most": [n, …], "sessions": [[want, …], …]}` with wants as in `assign`. Out: how
//! many of each thing, what is left unserved as `[session, want, missing]`, the bound and what is proven.

use homeground::plan::assign::Want;
use homeground::plan::gather_once::plan_gather_once;
use serde_json::{Value, json};

use super::assign::{list, read_numbers, read_wants};

pub fn answer(question: &Value) -> Value {
    let sessions: Vec<Vec<Want>> = list(&question["sessions"]).iter().map(read_wants).collect();
    let gather = plan_gather_once(&sessions, &read_numbers(&question["most"]));
    let unserved =
        gather.unserved.iter().map(|short| json!([short.session, short.want, short.missing]));
    json!({
        "counts": gather.counts,
        "number": gather.number(),
        "kinds": gather.kinds(),
        "unserved": unserved.collect::<Vec<_>>(),
        "at_least": gather.at_least,
        "is_proven": gather.is_proven,
        "is_best_of_smallest": gather.is_best_of_smallest,
    })
}
