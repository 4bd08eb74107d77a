//! A slip in the command line, in a teacher’s words. In: what the package for arguments says; out: a message, where it
//! is one of the usual slips.

use clap::Error;
use clap::error::{ContextKind, ContextValue, ErrorKind};

/// What is wrong with the arguments, and the way out; nothing where the package’s own words are left to stand.
pub(super) fn explain_usage(fault: &Error) -> Option<String> {
    let all = |kind| fault.get(kind).map(values).unwrap_or_default();
    let one = |kind| all(kind).into_iter().next();
    let argument = one(ContextKind::InvalidArg);
    let says = match fault.kind() {
        ErrorKind::InvalidSubcommand => {
            let near = one(ContextKind::SuggestedSubcommand);
            let named = one(ContextKind::InvalidSubcommand)?;
            format!("There is no command “{named}”.{}", meant(near))
        }
        ErrorKind::UnknownArgument => {
            let near = one(ContextKind::SuggestedArg);
            format!("“{}” is not understood here.{}", argument?, meant(near))
        }
        ErrorKind::MissingRequiredArgument => {
            format!("This is still needed: {}.", all(ContextKind::InvalidArg).join(", "))
        }
        ErrorKind::InvalidValue => {
            let value = one(ContextKind::InvalidValue).filter(|value| !value.is_empty());
            let choices = all(ContextKind::ValidValue);
            let way_out = if choices.is_empty() {
                String::new()
            } else {
                format!(" Write one of: {}.", choices.join(", "))
            };
            match value {
                Some(value) => format!("“{value}” does not fit after {}.{way_out}", argument?),
                None => format!("Something is missing after {}.{way_out}", argument?),
            }
        }
        _ => return None,
    };
    let command = std::env::args().nth(1).filter(|word| is_command(word));
    let help = command.map_or_else(|| "--help".to_owned(), |command| format!("{command} --help"));
    Some(format!("homeground: {says}\nFor examples: homeground {help}"))
}

fn meant(near: Option<String>) -> String {
    near.map_or_else(String::new, |near| format!(" Did you mean “{near}”?"))
}

fn values(value: &ContextValue) -> Vec<String> {
    match value {
        ContextValue::String(text) => vec![text.clone()],
        ContextValue::Strings(texts) => texts.clone(),
        _ => Vec::new(),
    }
}

fn is_command(word: &str) -> bool {
    use clap::CommandFactory;
    super::args::Arguments::command().find_subcommand(word).is_some()
}
