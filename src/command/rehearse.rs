//! `homeground rehearse`

use std::ops::ControlFlow;
use std::sync::Arc;

use tokio::sync::watch::channel;

use super::Ending;
use super::args::RehearseArguments;
use super::console::Console;
use crate::rehearse::{News, Rehearsal, Scene, open_doors, serve_scenes, watch_pack};
use crate::report::summary_of;

/// So many changed files are named.
const NAMED: usize = 3;

pub fn run_rehearse(arguments: &RehearseArguments, console: &Console) -> Ending {
    match rehearse(arguments, console) {
        Ok(()) => Ending::Well,
        Err(why) => console.could_not_run(&why),
    }
}

fn rehearse(arguments: &RehearseArguments, console: &Console) -> Result<(), String> {
    let mut rehearsal = Rehearsal::begin(&arguments.pack)?;
    let doors = open_doors(arguments.port)?;
    if doors.port != arguments.port {
        console.message(&format!("Port {} is taken: this one is {}.", arguments.port, doors.port));
    }
    let scene = rehearsal.scene();
    console.result(&format!(
        "Rehearsing {} at {}\n{}\nSave a file and the page shows it. Stop with Ctrl-C.\n",
        arguments.pack.display(),
        doors.address(),
        say_findings(&scene),
    ));
    let (sender, scenes) = channel(scene);
    let own_console = console.clone();
    std::thread::spawn(move || {
        let mut last_fault = None;
        watch_pack(rehearsal.folders(), || {
            match rehearsal.look_again() {
                Ok(None) => {}
                Ok(Some(news)) => {
                    last_fault = None;
                    let said = say_news(&news);
                    if sender.send(news.scene).is_err() {
                        return ControlFlow::Break(());
                    }
                    own_console.message(&said);
                }
                Err(fault) if last_fault.as_ref() == Some(&fault) => {}
                Err(fault) => {
                    own_console.message(&fault);
                    last_fault = Some(fault);
                }
            }
            ControlFlow::Continue(rehearsal.folders())
        });
    });
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
    let runtime = runtime.map_err(|why| format!("This computer refuses to begin: {why}."))?;
    let served = runtime.block_on(serve_scenes(doors, scenes));
    runtime.shutdown_background();
    served.map_err(|why| format!("This computer refuses to answer: {why}."))?;
    console.message("The rehearsal has ended.");
    Ok(())
}

/// “games/gull-catch.yaml changed. 1 problem, 2 warnings.”
fn say_news(news: &News) -> String {
    let lists = [
        (&news.changes.changed, "changed"),
        (&news.changes.added, "is new"),
        (&news.changes.removed, "is gone"),
    ];
    let mut said: Vec<String> = lists
        .into_iter()
        .flat_map(|(paths, what)| paths.iter().map(move |path| format!("{path} {what}")))
        .collect();
    if said.len() > NAMED {
        let more = said.len() - NAMED;
        said.truncate(NAMED);
        said.push(format!("{more} more"));
    }
    if news.changes.day {
        said.push("it is another day".into());
    }
    format!("{}. {}", said.join(", "), say_findings(&news.scene))
}

fn say_findings(scene: &Arc<Scene>) -> String {
    let kept = if scene.problems() > 0 {
        " What has a problem is shown as it last was without one."
    } else {
        ""
    };
    format!("{}{kept}", summary_of(&scene.findings))
}
