//! `homeground inspect`

use super::Ending;
use super::args::{InspectArguments, Report};
use super::console::Console;
use super::mend::mend_folder;
use super::packs::{choose_pack, open_folder};
use crate::finding::{Severity, count_severity};
use crate::report::{report_allowed, report_json, report_sarif, report_text};

pub fn run_inspect(arguments: &InspectArguments, console: &Console) -> Ending {
    match report(arguments, console) {
        Ok(ending) => ending,
        Err(why) => console.could_not_run(&why),
    }
}

fn report(arguments: &InspectArguments, console: &Console) -> Result<Ending, String> {
    let chosen = choose_pack(&arguments.paths)?;
    let source = open_folder(&chosen.folder, arguments.as_of.as_deref())?;
    let inspected = if arguments.mend {
        mend_folder(&chosen.folder, &source, &chosen.selection, console)?
    } else {
        crate::inspect(&source, &chosen.selection)?
    };
    let (findings, files) = (&inspected.findings, &inspected.pack.files);
    let allowed = &inspected.allowed;
    match arguments.report {
        Report::Text => {
            console.result(&report_allowed(allowed, files));
            console.result(&report_text(findings, files, console.is_terminal));
        }
        Report::Json => console.result(&report_json(findings, allowed, files)),
        Report::Sarif => console.result(&report_sarif(findings, allowed, files)),
    }
    let has_problems = count_severity(findings, Severity::Problem) > 0;
    // The program ends here: to clear away thousands of sessions one by one would only take its time.
    std::mem::forget(inspected);
    Ok(if has_problems { Ending::Problems } else { Ending::Well })
}
