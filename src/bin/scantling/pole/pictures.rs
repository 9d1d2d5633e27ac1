//! The pole saved in true size. What is on the paper is left to the library, how a file is saved to `save.rs`.

use std::path::PathBuf;

#[cfg(feature = "pdf")]
use scantling::Paper;
use scantling::StoryPole;

use super::Pole;
use super::build::refused;
use crate::problem::Problem;
use crate::save;
use crate::words::Bench;

/// Saves what was asked for: all of it, or nothing if any of it cannot be made.
pub fn save(poles: &[StoryPole], options: &Pole, bench: Bench) -> Result<(), Problem> {
    save::save(&files(poles, options, bench)?, options.pictures.force)
}

fn files(poles: &[StoryPole], options: &Pole, bench: Bench) -> Result<Vec<(PathBuf, Vec<u8>)>, Problem> {
    let mut files = Vec::new();
    #[cfg(feature = "svg")]
    if let Some(path) = &options.pictures.svg {
        let document = one(poles, "--svg")?.svg(&bench.tape).map_err(refused)?;
        files.push((path.clone(), document.into_bytes()));
    }
    #[cfg(feature = "pdf")]
    if let Some(path) = &options.pictures.pdf {
        let document = one(poles, "--pdf")?.pdf(&bench.tape, paper(options)?).map_err(refused)?;
        files.push((path.clone(), document));
    }
    Ok(files)
}

fn one<'a>(poles: &'a [StoryPole], option: &str) -> Result<&'a StoryPole, Problem> {
    match poles {
        [pole] => Ok(pole),
        many => Err(Problem::plain(format!("{option} takes one pole; this one is cut to {} sticks", many.len()))
            .hint("--number 1 takes the first of them")),
    }
}

#[cfg(feature = "pdf")]
fn paper(options: &Pole) -> Result<Paper, Problem> {
    match options.pictures.paper.to_lowercase().as_str() {
        "letter" => Ok(Paper::Letter),
        "a4" => Ok(Paper::A4),
        width => crate::problem::read(options.notation.parser(), "--paper", width).map(Paper::Roll),
    }
}
