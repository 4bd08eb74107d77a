//! Review questions → an assessment of a Common Cartridge 1.3: QTI 1.2.1 in the profile of that standard (1EdTech,
//! “Common Cartridge Profile: Implementation”, version 1.3; names of the profiles from there).
//!
//! A question whose model answer is one word or number becomes a blank to fill in (`cc.fib.v0p1`), matched whatever
//! its case; any other asks for a child's own sentences (`cc.essay.v0p1`), which a person reads. The model answer is
//! shown afterwards. Questions in a pack carry no choices, so that none becomes one of many.

use super::xml::Element;

/// A question, ready to be asked.
#[derive(Clone, Debug)]
pub struct AskedQuestion {
    /// Its kind in words: “Explain”.
    pub label: Option<String>,
    /// Safe HTML.
    pub ask: String,
    /// Safe HTML.
    pub answer: Option<String>,
    /// The answer in bare words.
    pub plain_answer: Option<String>,
    /// It asks to remember something: the one kind that a machine may mark.
    pub is_recall: bool,
}

impl AskedQuestion {
    /// The one word or number that is the answer, where it is that.
    fn word(&self) -> Option<&str> {
        let answer = self.plain_answer.as_deref()?.trim().trim_end_matches('.');
        let is_word =
            !answer.is_empty() && answer.len() <= 40 && !answer.contains(char::is_whitespace);
        (self.is_recall && is_word).then_some(answer)
    }
}

/// The assessment of a session as an XML document.
pub fn write_assessment(number: usize, title: &str, questions: &[AskedQuestion]) -> Vec<u8> {
    let items = (1..).zip(questions).map(|(at, question)| item(number, at, question));
    let section =
        Element::new("section").with("ident", format!("section-{number}")).children(items);
    let about = fields(&[
        ("cc_profile", "cc.exam.v0p1"),
        ("qmd_assessmenttype", "Examination"),
        ("qmd_scoretype", "Percentage"),
        ("cc_maxattempts", "unlimited"),
    ]);
    let assessment = Element::new("assessment")
        .with("ident", format!("assessment-{number}"))
        .with("title", title)
        .child(about)
        .child(section);
    Element::new("questestinterop")
        .with("xmlns", "http://www.imsglobal.org/xsd/ims_qtiasiv1p2")
        .with("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance")
        .with(
            "xsi:schemaLocation",
            "http://www.imsglobal.org/xsd/ims_qtiasiv1p2 \
             http://www.imsglobal.org/profile/cc/ccv1p3/ccv1p3_qtiasiv1p2p1_v1p0.xsd",
        )
        .child(assessment)
        .write_document()
}

fn fields(all: &[(&str, &str)]) -> Element {
    let field = |(label, entry): &(&str, &str)| {
        Element::new("qtimetadatafield")
            .child(Element::new("fieldlabel").text(*label))
            .child(Element::new("fieldentry").text(*entry))
    };
    Element::new("qtimetadata").children(all.iter().map(field))
}

fn item(number: usize, at: usize, question: &AskedQuestion) -> Element {
    let ident = format!("question-{number}-{at}");
    let word = question.word();
    let (profile, marked) = match word {
        Some(_) => ("cc.fib.v0p1", "Yes"),
        None => ("cc.essay.v0p1", "No"),
    };
    let about = fields(&[
        ("cc_profile", profile),
        ("qmd_scoringpermitted", "Yes"),
        ("qmd_computerscored", marked),
    ]);
    let title = question.label.clone().unwrap_or_else(|| at.to_string());
    let mut item = Element::new("item")
        .with("ident", ident.clone())
        .with("title", title)
        .child(Element::new("itemmetadata").child(about))
        .child(presentation(&ident, question));
    if let Some(scoring) = scoring(&ident, word, question.answer.is_some()) {
        item = item.child(scoring);
    }
    match &question.answer {
        Some(answer) => item.child(solution(answer)),
        None => item,
    }
}

fn html(text: &str) -> Element {
    Element::new("material").child(Element::new("mattext").with("texttype", "text/html").text(text))
}

fn presentation(ident: &str, question: &AskedQuestion) -> Element {
    let label = Element::new("response_label").with("ident", format!("{ident}-label"));
    let blank = Element::new("render_fib").child(label);
    let response = Element::new("response_str")
        .with("ident", format!("{ident}-response"))
        .with("rcardinality", "Single")
        .child(blank);
    Element::new("presentation").child(html(&question.ask)).child(response)
}

/// The score of a word that is right, and the model answer for all.
fn scoring(ident: &str, word: Option<&str>, has_answer: bool) -> Option<Element> {
    let outcome = Element::new("decvar")
        .with("varname", "SCORE")
        .with("vartype", "Decimal")
        .with("minvalue", "0")
        .with("maxvalue", "100");
    let mut scoring = Element::new("resprocessing").child(Element::new("outcomes").child(outcome));
    if has_answer {
        let shown = Element::new("displayfeedback")
            .with("feedbacktype", "Solution")
            .with("linkrefid", "solution");
        let always = Element::new("respcondition").with("continue", "Yes");
        let always = always.child(Element::new("conditionvar").child(Element::new("other")));
        scoring = scoring.child(always.child(shown));
    }
    if let Some(word) = word {
        let equal = Element::new("varequal")
            .with("respident", format!("{ident}-response"))
            .with("case", "No")
            .text(word);
        let set = Element::new("setvar").with("action", "Set").with("varname", "SCORE").text("100");
        let right = Element::new("respcondition").with("continue", "No");
        scoring = scoring.child(right.child(Element::new("conditionvar").child(equal)).child(set));
    }
    (has_answer || word.is_some()).then_some(scoring)
}

fn solution(answer: &str) -> Element {
    let shown = Element::new("flow_mat").child(html(answer));
    let solution = Element::new("solution").child(Element::new("solutionmaterial").child(shown));
    Element::new("itemfeedback").with("ident", "solution").child(solution)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_a_word_to_remember_is_marked_by_a_machine() {
        let question = |answer: &str, is_recall| AskedQuestion {
            label: None,
            ask: "<p>?</p>".into(),
            answer: Some(answer.into()),
            plain_answer: Some(answer.into()),
            is_recall,
        };
        assert_eq!(question("Three.", true).word(), Some("Three"));
        assert_eq!(question("Three.", false).word(), None);
        assert_eq!(question("Three times", true).word(), None);
    }
}
