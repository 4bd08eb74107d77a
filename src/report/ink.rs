//! The ink that a pack’s sheets take, in words: one line, and an advice where a page is over budget.

use crate::quantity::Decimal;
use crate::render::{InkReport, ink_by_sheet, sheets_over};

/// So many sheets over the budget are named; the others are counted.
const NAMED: usize = 5;

/// “Ink: cards 4.1 %, home guide 5.0 % of the page.”
pub fn say_ink(report: &InkReport) -> String {
    let shares = ink_by_sheet(report).into_iter();
    let shares: Vec<String> = shares
        .map(|(name, share)| format!("{} {}", name.replace('-', " "), percent(share)))
        .collect();
    format!("Ink: {} of the page.", shares.join(", "))
}

/// What to think about where a page takes more ink than the budget, in per cent; `None` where none does.
pub fn advise_ink(report: &InkReport, budget: Decimal) -> Option<String> {
    #[allow(clippy::cast_possible_truncation, reason = "a share to a few digits")]
    let share = (budget.value() / 100.0) as f32;
    let over = sheets_over(report, share);
    let named = over.iter().take(NAMED).map(|(path, most)| format!("  {path}: {}", percent(*most)));
    let mut lines: Vec<String> = named.collect();
    if over.len() > NAMED {
        lines.push(format!("  and {} more", over.len() - NAMED));
    }
    (!lines.is_empty()).then(|| {
        let head = format!(
            "Some sheets take more ink than {budget} % of a page (ink_budget in pack.yaml):"
        );
        let way = "Dark pictures take most: choose lighter ones or line drawings.";
        format!("{head}\n{}\n{way}", lines.join("\n"))
    })
}

fn percent(share: f32) -> String {
    format!("{:.1} %", share * 100.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Quantity;

    #[test]
    fn what_is_over_the_budget_is_named() {
        let report: InkReport = [
            ("print/a/cards.pdf".to_owned(), vec![0.04, 0.06]),
            ("print/b/home-guide.pdf".to_owned(), vec![0.081]),
        ]
        .into();
        assert_eq!(say_ink(&report), "Ink: cards 5.0 %, home guide 8.1 % of the page.");
        let budget = |text| Decimal::read_quantity(text).unwrap();
        let advice = advise_ink(&report, budget("8")).unwrap();
        assert!(advice.contains("print/b/home-guide.pdf: 8.1 %") && !advice.contains("cards.pdf"));
        assert_eq!(advise_ink(&report, budget("8.2")), None);
    }
}
