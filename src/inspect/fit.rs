//! In a teacher’s words, why a thing doesn’t suit a session.

use std::fmt::Display;

use crate::pack::MisfitFault as Fault;
use crate::quantity::Ages;

/// “too heavy: 1.2 kg, at most 500 g for ages 8–11”
pub(super) fn say_fault(fault: &Fault, ages: Ages) -> String {
    let compared = |what: &str, found: &dyn Display, asked: &dyn Display| {
        format!("it can be too {what}: {found}, but {asked} for ages {ages}")
    };
    match fault {
        Fault::TooHeavy(found, asked) => compared("heavy", found, asked),
        Fault::TooLight(found, asked) => compared("light", found, asked),
        Fault::TooLarge(found, asked) => compared("large", found, asked),
        Fault::TooSmall(found, asked) => compared("small", found, asked),
        Fault::NotSoft => "something soft is asked for, and it is not said to be soft".to_owned(),
        Fault::Lacks(quality) => format!("it must be {quality}, and it is not said to be"),
    }
}
