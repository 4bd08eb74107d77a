//! Progress: marks that came back → what each child and the class have done, and what to send next.
//!
//! Beside the way from pack to published folder, with stages of its own: [`files`] are read by [`table`] and
//! [`columns`], or by [`messages`] where families sent them, [`entries`] resolve its rows against the pack, [`model`] computes (pure), [`view`] puts it in
//! words, and `render` makes pages, slips and tables of them. It gathers and groups what children
//! answered; what is right is the teacher’s to say.

pub mod charts;
pub mod check_code;
pub mod class_next;
pub mod code;
pub mod columns;
pub mod entries;
pub mod files;
pub mod guard;
pub mod keep;
pub mod messages;
pub mod model;
pub mod next_step;
pub mod noise;
pub mod phrases;
pub mod resolve;
pub mod spreadsheet;
pub mod table;
pub mod view;
pub mod words;
