//! The teachers’ sheet of every pose that a session can name, with its words as they are read out.

use serde::Serialize;

use super::Site;
use super::figures::STATURE;
use super::frame::{Frame, frame_of_page};
use super::html::{Html, figure_html};
use crate::drawing::figure::{Strip, draw_moment};
use crate::drawing::to_svg;
use crate::figure::Moment;
use crate::figure::library::Named;
use crate::figure::proportions::Proportions;
use crate::render::figure_phrases::moment_says;
use crate::render::{POSES_SHEET, RenderFault};

/// The years of the child on the sheet: the middle of primary and lower secondary school.
pub const YEARS: f64 = 10.0;

#[derive(Serialize, Clone, Debug)]
struct PosesPage {
    frame: Frame,
    sheet: &'static str,
    poses: Vec<PoseView>,
}

#[derive(Serialize, Clone, Debug)]
struct PoseView {
    name: String,
    svg: Html,
    says: String,
}

pub(super) fn render_poses(site: &Site<'_>) -> Result<Vec<u8>, RenderFault> {
    let (title, about) = (site.words.say("poses-title"), site.words.say("poses-lead"));
    let poses = &site.publication.pack.poses.poses;
    let page = PosesPage {
        frame: frame_of_page(site, "poses", &title, &about),
        sheet: POSES_SHEET,
        poses: poses.iter().map(|named| show_pose(site, named)).collect(),
    };
    site.templates.fill("poses.html", &page)
}

fn show_pose(site: &Site<'_>, named: &Named) -> PoseView {
    let moment = Moment::of(&named.name, named.pose.clone());
    let strip = Strip { stature: STATURE, is_rtl: site.is_rtl() };
    let mut drawing = draw_moment(&moment, Proportions::of_age(YEARS), strip);
    let says = moment_says(&moment, &site.words);
    drawing.says.clone_from(&says);
    PoseView { name: named.name.clone(), svg: figure_html(&to_svg(&drawing, "figure")), says }
}
