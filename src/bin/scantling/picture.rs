//! The drawing of one length saved as a picture. How a file is saved is left to `save.rs`.

use num_rational::Ratio;
use scantling::{Length, Quantity, evaluate};

use crate::arguments::{Read, typed};
use crate::draw::drawing;
use crate::problem::Problem;
use crate::save;
use crate::words::Bench;

/// Refuses a picture of lengths of which there may be many.
pub fn refuse_many(options: &Read) -> Result<(), Problem> {
    let given = match options.texts.len() {
        _ if options.svg.is_none() => return Ok(()),
        1 if !options.is_standard_input() => return Ok(()),
        1 => "lines from standard input were asked for".to_owned(),
        many => format!("{many} were given"),
    };
    Err(Problem::plain(format!("--svg takes the picture of one length; {given}")))
}

/// Saves the picture, if one was asked for.
pub fn save(length: Length, options: &Read, bench: Bench) -> Result<(), Problem> {
    let Some(path) = &options.svg else { return Ok(()) };
    let drawing = drawing(length, bench)?;
    let drawing = match &options.scale {
        Some(text) => drawing.scale(scale(typed(text))?),
        None => drawing,
    };
    let document = drawing.svg().map_err(|error| Problem::plain(error.to_string()))?;
    save::save(&[(path.clone(), document.into_bytes())], options.force)
}

fn scale(text: &str) -> Result<Ratio<i128>, Problem> {
    match evaluate(text) {
        Ok(Quantity::Number(scale)) => Ok(scale),
        Ok(_) => Err(Problem::plain(format!("--scale: a number such as 2 or 1/4, not {text}"))),
        Err(error) => Err(Problem::unread("--scale", text, error)),
    }
}
