//! The folder of the pages for teachers: where it may lie, and the way from it to the families’ pages.

use std::path::{Component, Path, PathBuf};
use std::sync::Arc;

use super::args::PublishArguments;
use super::console::Console;
use crate::pack::Pack;
use crate::plan::Plans;
use crate::progress::guard::check_no_results;
use crate::publish::{LastTime, PublishFault, check_target, publish_again};
use crate::render::{Bundle, Order, render_teacher_folder};

/// Looks whether the teachers’ folder may be written, before anything is rendered.
///
/// # Errors
/// A sentence for the teacher.
pub(super) fn check_teacher_folder(arguments: &PublishArguments) -> Result<(), String> {
    let Some(teachers) = &arguments.teachers else { return Ok(()) };
    let in_words = |fault: PublishFault| fault.to_string().replace("--to", "--teachers");
    check_target(teachers, &arguments.pack).map_err(in_words)?;
    match check_target(teachers, &arguments.to) {
        Err(PublishFault::OverlapsPack(_)) => Err(format!(
            "{} and {} lie inside one another, so that families would get the teachers’ pages. Choose a \
             folder beside it after --teachers.",
            teachers.display(),
            arguments.to.display()
        )),
        _ => check_no_results(teachers),
    }
}

/// Renders and publishes the teachers’ folder, if one is asked for, and says where it is.
///
/// # Errors
/// A sentence for the teacher.
pub(super) fn publish_teacher_folder(
    pack: &Pack,
    plans: Vec<Arc<Plans>>,
    mut more: Bundle,
    arguments: &PublishArguments,
    console: &Console,
) -> Result<(), String> {
    let Some(teachers) = &arguments.teachers else { return Ok(()) };
    let way = way_to_families(arguments);
    let last = LastTime::look_up(teachers);
    let order = Order { shelf: Some(&last), ..Order::default() };
    let mut bundle =
        render_teacher_folder(pack, plans, &way, order).map_err(|fault| fault.to_string())?;
    bundle.append(&mut more);
    publish_again(&bundle, teachers, &arguments.pack, &last).map_err(|fault| fault.to_string())?;
    let index = teachers.join("index.html");
    console.result(&format!("For teachers: open {}.\n", index.display()));
    Ok(())
}

/// The way from the teachers’ folder to the families’; nothing where there is none.
pub(super) fn way_to_families(arguments: &PublishArguments) -> String {
    arguments.teachers.as_ref().map(|from| way_between(from, &arguments.to)).unwrap_or_default()
}

/// The way from one folder to another, up and down, with a slash at its end.
fn way_between(from: &Path, to: &Path) -> String {
    let (from, to) = (steps_of(from), steps_of(to));
    let shared = from.iter().zip(&to).take_while(|(one, other)| one == other).count();
    let down: String = to[shared..].iter().map(|step| format!("{step}/")).collect();
    "../".repeat(from.len() - shared) + &down
}

/// The names on the way to a folder from the top.
fn steps_of(path: &Path) -> Vec<String> {
    let whole: PathBuf = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let mut steps = Vec::new();
    for component in whole.components() {
        match component {
            Component::ParentDir => drop(steps.pop()),
            Component::CurDir | Component::RootDir => {}
            step => steps.push(step.as_os_str().to_string_lossy().into_owned()),
        }
    }
    steps
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_way_leads_up_and_down() {
        let way = |from: &str, to: &str| way_between(Path::new(from), Path::new(to));
        assert_eq!(way("/a/for-teachers", "/a/published"), "../published/");
        assert_eq!(way("/a/b/c", "/a/d e/f"), "../../d e/f/");
        assert_eq!(way("/a/b/../c", "/a/d"), "../d/");
    }
}
