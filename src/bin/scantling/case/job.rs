//! What was asked for: a case from a file or from its overall sizes, changed by what was typed. How one option is typed is
//! left to `typed.rs`.

use std::path::Path;

use scantling::{Case, Length, LengthParser, Site};
use serde_json::{Map, Value};

use super::arguments::{self, SawnName};
use super::seasons::Words;
use super::stock::Named;
use crate::input::Input;
use crate::json;
use crate::problem::{self, Problem};

/// A case, and what the library does not ask about it.
pub struct Job {
    pub name: String,
    pub case: Case,
    pub named: Vec<Named>,
    pub material: Option<String>,
    pub load: Option<String>,
    pub limit: Option<u32>,
    pub site: Site,
    /// It has no width of its own.
    pub fills_its_place: bool,
    pub seasons: Words,
}

/// Panels that are cut from one sheet unless they are said to be others.
const PANELS: [&str; 5] = ["side", "shelf", "top", "bottom", "partition"];
/// Objects with a thickness inside, and its name there.
const INSIDE: [(&str, &str); 4] = [("back", "thickness"), ("base", "stock"), ("frame", "stock"), ("fronts", "stock")];

/// The case before any option but its overall sizes.
pub fn begun(options: &arguments::Case, parser: LengthParser) -> Result<Job, Problem> {
    match (&options.job, &options.height, &options.depth) {
        (Some(path), ..) => stored(path),
        (None, Some(height), Some(depth)) => {
            let read = |name, text| problem::read(parser, name, text);
            // Between walls the width follows.
            let width = options.width.as_ref().map_or(Ok(Length::ZERO), |width| read("--width", width))?;
            Ok(Job::new(Case::new(width, read("--height", height)?, read("--depth", depth)?)))
        }
        _ => Err(Problem::plain("nothing says how large the case is").hint("--width 36 --height 72 --depth 12, or --job FILE")),
    }
}

impl Job {
    fn new(case: Case) -> Self {
        Self {
            name: "case".into(),
            case,
            named: Vec::new(),
            material: None,
            load: None,
            limit: None,
            site: Site::OPEN,
            fills_its_place: false,
            seasons: Words::default(),
        }
    }
}

fn stored(path: &Path) -> Result<Job, Problem> {
    let input = Input::read(path)?;
    let shown = &input.name;
    let refused = |error: String| {
        Problem::plain(format!("{shown} has no case: {error}")).hint("scantling case --json gives one, behind \"case\"")
    };
    let mut fields: Map<String, Value> = serde_json::from_str(input.text()?).map_err(|error| refused(error.to_string()))?;
    let word = |fields: &mut Map<String, Value>, name: &str| match fields.remove(name) {
        None | Some(Value::Null) => Ok(None),
        Some(Value::String(word)) => Ok(Some(word)),
        Some(_) => Err(Problem::plain(format!("{shown}: \"{name}\" is a text"))),
    };
    let (name, material, load) = (word(&mut fields, "name")?, word(&mut fields, "material")?, word(&mut fields, "load")?);
    let limit = json::taken(&mut fields, "limit").map_err(refused)?;
    let seasons = seasons(&mut fields, &word, shown)?;
    let site: Option<Site> = json::taken(&mut fields, "site").map_err(refused)?;
    let fills_its_place = site.is_some_and(|site| site.widths.is_some()) && !fields.contains_key("width");
    if fills_its_place {
        fields.insert("width".into(), "0 in".into());
    }
    let named = resolved(&mut fields, refused)?;
    let case = json::read(Value::Object(fields)).map_err(refused)?;
    let (name, site) = (name.unwrap_or_else(|| "case".into()), site.unwrap_or(Site::OPEN));
    Ok(Job { name, named, material, load, limit, site, fills_its_place, seasons, ..Job::new(case) })
}

type Fields = Map<String, Value>;

/// What is said about the wood.
fn seasons(
    fields: &mut Fields,
    word: &impl Fn(&mut Fields, &str) -> Result<Option<String>, Problem>,
    shown: &str,
) -> Result<Words, Problem> {
    let sawn = match word(fields, "sawn")? {
        None => None,
        Some(word) => {
            let unknown = || Problem::plain(format!("{shown}: \"sawn\" is `flat` or `quarter`"));
            Some(SawnName::of_word(&word).ok_or_else(unknown)?)
        }
    };
    let names = |error| Problem::plain(format!("{shown}: \"solid\" is a list of parts: {error}"));
    let solid = fields.remove("solid").map_or(Ok(None), json::read).map_err(names)?;
    Ok(Words {
        species: word(fields, "species")?,
        sawn,
        coefficient: word(fields, "coefficient")?,
        moisture: word(fields, "moisture")?,
        solid: solid.unwrap_or_default(),
    })
}

/// Puts sizes in the place of names of stock, and the sheet in the place of every panel that is not said to be another.
fn resolved(fields: &mut Fields, refused: impl Fn(String) -> Problem) -> Result<Vec<Named>, Problem> {
    let mut named = Vec::new();
    for name in PANELS.iter().chain(&["sheet", "edging"]) {
        fields.get_mut(*name).map_or(Ok(()), |value| resolve(name, value, &mut named))?;
    }
    for (name, inside) in INSIDE {
        fields
            .get_mut(name)
            .and_then(|object| object.get_mut(inside))
            .map_or(Ok(()), |value| resolve(name, value, &mut named))?;
    }
    let sheet = fields.get("sheet").cloned().unwrap_or_default();
    if json::taken::<Length>(fields, "sheet").map_err(refused)?.is_some() {
        for panel in PANELS {
            let own = fields.entry(panel).or_insert(Value::Null);
            if own.is_null() {
                own.clone_from(&sheet);
            }
        }
    }
    Ok(named)
}

fn resolve(of: &str, value: &mut Value, named: &mut Vec<Named>) -> Result<(), Problem> {
    let Value::String(text) = &*value else { return Ok(()) };
    if LengthParser::new().parse_with_unit(text).is_ok() {
        return Ok(());
    }
    // What is neither is refused with the other fields, which say what is wrong with it.
    let Some(found) = Named::read(of, text) else { return Ok(()) };
    let found = found?;
    *value = serde_json::to_value(found.actual).map_err(|error| Problem::plain(error.to_string()))?;
    named.push(found);
    Ok(())
}
