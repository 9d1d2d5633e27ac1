//! A thickness, measured or by a name of stock. What a name stands for is left to the library; that it was a name is
//! kept, so that the difference is shown.

use scantling::{Catalog, Length, LengthParser, Nominal, PanelRow};

use crate::arguments::typed;
use crate::problem::{self, Problem};

/// Stock that was given by name.
pub struct Named {
    /// What is made of it: `sheet`, `back`.
    pub of: String,
    /// The name.
    pub name: String,
    /// The thickness in the name.
    pub nominal: Length,
    /// The thickness that is reckoned with.
    pub actual: Length,
    /// Within which limits a panel lies.
    pub panel: Option<PanelRow>,
}

impl Named {
    /// What a name stands for, if it is one.
    pub fn read(of: &str, text: &str) -> Option<Result<Self, Problem>> {
        let nominal: Nominal = text.parse().ok()?;
        let thickness = nominal.thickness()?;
        let actual = match Catalog::new().actual(&nominal) {
            Ok(actual) => actual,
            Err(error) => return Some(Err(Problem::plain(format!("{of}: {text}: {error}")))),
        };
        // A panel may have any thickness within its limits: its label's is the likeliest.
        let size = actual.panel().map(|panel| panel.label()).or(actual.thickness())?;
        Some(Ok(Self { of: of.into(), name: text.into(), nominal: thickness, actual: size, panel: actual.panel() }))
    }
}

/// A thickness as it was typed; where it is a name, it is kept among the named.
pub fn thickness(of: &str, argument: &str, parser: LengthParser, named: &mut Vec<Named>) -> Result<Length, Problem> {
    let text = typed(argument);
    match (parser.parse(text), Named::read(of, text)) {
        (Ok(_), _) => problem::read(parser, &format!("--{of}"), argument),
        (Err(_), Some(found)) => {
            let found = found?;
            let size = found.actual;
            named.retain(|other| other.of != found.of);
            named.push(found);
            Ok(size)
        }
        (Err(error), None) => Err(Problem::unread(&format!("--{of}"), text, error)),
    }
}
