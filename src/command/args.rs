//! The arguments as typed.

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand, ValueEnum};

use super::print_args::PrintArguments;

/// Plans, checks and prints physical-education sessions for pupils at home.
///
/// With no command it publishes the pack in the folder “sessions” to the folder “published”, and what is
/// for teachers to “published-for-teachers”.
#[derive(Debug, Parser)]
#[command(
    name = "homeground",
    version,
    after_help = "Example:\n  homeground publish sessions --to published"
)]
pub struct Arguments {
    #[command(subcommand)]
    pub command: Option<Command>,
}

#[derive(Debug, Subcommand)]
pub enum Command {
    Draft(DraftArguments),
    Inspect(InspectArguments),
    Rehearse(RehearseArguments),
    Publish(PublishArguments),
    Parcel(ParcelArguments),
    Fit(FitArguments),
    Progress(ProgressArguments),
    Schema(SchemaArguments),
}

impl Default for Command {
    fn default() -> Self {
        Self::Publish(PublishArguments {
            pack: "sessions".into(),
            to: "published".into(),
            teachers: Some("published-for-teachers".into()),
            since: None,
            as_of: None,
            print: PrintArguments::default(),
        })
    }
}

/// Writes a commented starter session that already passes `inspect`.
#[derive(Args, Debug)]
#[command(after_help = "Example:\n  homeground draft \"Balance trail\" --into sessions/gymnastics")]
pub struct DraftArguments {
    /// What the session is called.
    #[arg(value_name = "TITLE")]
    pub title: String,
    /// The folder to write it into, instead of showing it.
    #[arg(long, value_name = "DIR")]
    pub into: Option<PathBuf>,
}

/// Reports problems, warnings and advice, each at its line with a way out.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  homeground inspect sessions/games/gull-catch.yaml\n  \
    homeground inspect sessions --mend\n  \
    homeground inspect sessions --report sarif > findings.sarif\n\n\
    Ends with 0 where there are no problems, 1 where there are, 2 where it could not run.")]
pub struct InspectArguments {
    /// A pack’s folder, or single session files of one pack.
    #[arg(value_name = "PACK or FILE", default_value = "sessions")]
    pub paths: Vec<PathBuf>,
    /// How to write the findings.
    #[arg(long, value_enum, default_value_t = Report::Text)]
    pub report: Report,
    /// First mend what can be mended safely: order of keys, units, lists, spaces at line ends.
    #[arg(long)]
    pub mend: bool,
    /// Look as if today were this date (2027-09-01).
    #[arg(long, value_name = "DATE")]
    pub as_of: Option<String>,
}

/// How findings are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Report {
    /// For reading, with the line shown.
    Text,
    /// For scripts.
    Json,
    /// For pages that show a change with what was found in it (SARIF 2.1.0).
    Sarif,
}

/// Turns marks that came back into a report, a slip a child and what to send next.
#[derive(Args, Debug)]
#[command(after_help = "Example:\n  homeground progress sessions --marks marks.csv --to results \
    --keep-until 2027-07-31\n\n\
    Ends with 0 where every cell was read, 1 where some were not, 2 where it could not run.")]
pub struct ProgressArguments {
    /// The pack’s folder.
    #[arg(value_name = "PACK", default_value = "sessions")]
    pub pack: PathBuf,
    /// Files of marks: tables (CSV; commas, semicolons or tabs) with code, session, part, date, attempt 1 …;
    /// or the messages that families sent from a session’s page, in a text file as they came
    #[arg(long, value_name = "FILE", num_args = 1.., required_unless_present = "forget")]
    pub marks: Vec<PathBuf>,
    /// The folder for the results: new, empty, or one of results before.
    #[arg(long, value_name = "DIR")]
    pub to: PathBuf,
    /// Until when the results may be kept (2027-07-31); after it they are refused.
    #[arg(long, value_name = "DATE")]
    pub keep_until: Option<String>,
    /// A file with the code of every child, one a line, to see who sent nothing.
    #[arg(long, value_name = "FILE")]
    pub codes: Option<PathBuf>,
    /// Give places, for children who chose to compete.
    #[arg(long)]
    pub rank: bool,
    /// Delete the results in the folder instead.
    #[arg(long)]
    pub forget: bool,
    /// Report as if today were this date (2027-06-01).
    #[arg(long, value_name = "DATE")]
    pub as_of: Option<String>,
}

/// Publishes a pack as a mini-site and printable cards.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  homeground publish sessions --to published\n  \
    homeground publish sessions --to published --teachers for-teachers\n  \
    homeground publish sessions --to published --since published\n  \
    homeground publish sessions --to published --since HEAD~1")]
pub struct PublishArguments {
    /// The pack’s folder.
    #[arg(value_name = "PACK", default_value = "sessions")]
    pub pack: PathBuf,
    /// The folder to publish to: new, empty, or published to before.
    #[arg(long, value_name = "DIR")]
    pub to: PathBuf,
    /// Also write the pages for teachers (time lines, plans, answers, standing), to a folder of their own.
    #[arg(long, value_name = "DIR")]
    pub teachers: Option<PathBuf>,
    /// Tell what changed since then: a folder published before, a pack’s folder, or a git revision.
    #[arg(long, value_name = "DIR or REV", allow_hyphen_values = true)]
    pub since: Option<String>,
    /// Publish as if today were this date (2027-09-01).
    #[arg(long, value_name = "DATE")]
    pub as_of: Option<String>,
    #[command(flatten)]
    pub print: PrintArguments,
}

/// Shows a pack’s pages on this computer while you write, with what there is to mend.
#[derive(Args, Debug)]
#[command(after_help = "Example:\n  homeground rehearse sessions\n\n\
    Save a file and the page shows it. Nothing is published. Stop with Ctrl-C.")]
pub struct RehearseArguments {
    /// The pack’s folder.
    #[arg(value_name = "PACK", default_value = "sessions")]
    pub pack: PathBuf,
    /// The port to answer at; where it is taken, the next free one.
    #[arg(long, value_name = "PORT", default_value_t = 8020, value_parser = clap::value_parser!(u16).range(1024..))]
    pub port: u16,
}

/// Packs sessions into one file to hand over.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  homeground parcel sessions --to pe-at-home.zip\n  \
    homeground parcel sessions --to pe-at-home.imscc\n  \
    homeground parcel sessions --session games --to games.epub\n  \
    homeground parcel sessions --unit brook-to-harbour --to spring.epub")]
pub struct ParcelArguments {
    /// The pack’s folder.
    #[arg(value_name = "PACK", default_value = "sessions")]
    pub pack: PathBuf,
    /// The file to write; an earlier parcel of this name is replaced.
    #[arg(long, value_name = "FILE")]
    pub to: PathBuf,
    /// What it is for, where the ending of the file does not say it.
    #[arg(long, value_enum)]
    pub kind: Option<ParcelKind>,
    /// Only these sessions, by id or folder (games/gull-catch); may be given several times.
    #[arg(long = "session", value_name = "ID")]
    pub sessions: Vec<String>,
    /// Only this unit and its sessions, by the name of its file (brook-to-harbour).
    #[arg(long, value_name = "NAME", conflicts_with = "sessions")]
    pub unit: Option<String>,
    /// Date the parcel this day (2027-09-01), instead of the latest one that a session names.
    #[arg(long, value_name = "DATE")]
    pub as_of: Option<String>,
}

/// What a parcel is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum ParcelKind {
    /// For any phone or computer: all pages and sheets in a zip (.zip).
    Pages,
    /// For a learning platform: pages, sheets and review questions, as an IMS Common Cartridge 1.3 (.imscc).
    Platform,
    /// For e-readers: the sessions as chapters, as an EPUB 3 (.epub).
    Book,
}

/// Fits sessions to homes: a pack for each, what to lend, and what to rethink.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  homeground fit sessions --survey --to survey\n  \
    homeground fit sessions --homes class.csv --to for-homes")]
pub struct FitArguments {
    /// The pack’s folder.
    #[arg(value_name = "PACK", default_value = "sessions")]
    pub pack: PathBuf,
    /// A home (home.yaml) or a class list (class.csv), by codes and never by names.
    #[arg(long, value_name = "FILE", required_unless_present = "survey")]
    pub homes: Option<PathBuf>,
    /// The folder to write to: new, empty, or written to before.
    #[arg(long, value_name = "DIR")]
    pub to: PathBuf,
    /// Only these sessions, by id or folder (games/gull-catch); may be given several times.
    #[arg(long = "session", value_name = "ID")]
    pub sessions: Vec<String>,
    /// Only write the survey that asks families what a class list holds.
    #[arg(long, conflicts_with = "homes")]
    pub survey: bool,
    /// Leave the packs of the homes out: the teacher’s page and sheet only.
    #[arg(long)]
    pub teacher_only: bool,
    /// Fit as if today were this date (2027-09-01).
    #[arg(long, value_name = "DATE")]
    pub as_of: Option<String>,
}

/// Writes the JSON Schema of a kind of file, so that an editor completes and checks as you type.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  homeground schema > session.schema.json\n  \
    homeground schema pack\n  homeground schema --to schemas")]
pub struct SchemaArguments {
    /// session, pack, equipment, curriculum, home, translation …
    #[arg(value_name = "KIND", default_value = "session")]
    pub kind: String,
    /// Write the schemas of all kinds into this folder instead.
    #[arg(long, value_name = "DIR")]
    pub to: Option<PathBuf>,
}
