//! Files that are read, and standard input: whole, up to a size that no list and no job comes near. What stands in them is left
//! to the commands.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use crate::problem::Problem;

/// The largest file in MiB, so that memory stays bounded whatever is put in.
const MOST: u64 = 16;

/// A file, or standard input for `-`, and what it is called when something is wrong with it.
pub struct Input {
    pub name: String,
    bytes: Vec<u8>,
}

impl Input {
    pub fn read(path: &Path) -> Result<Self, Problem> {
        let standard = path.as_os_str() == "-";
        let name = if standard { "standard input".to_owned() } else { path.display().to_string() };
        let bytes = if standard { whole(io::stdin().lock()) } else { File::open(path).and_then(whole) };
        let bytes = bytes.map_err(|error| Problem::plain(format!("cannot read {name}: {error}")))?;
        if bytes.len() as u64 > MOST << 20 {
            return Err(Problem::plain(format!("cannot read {name}: it is larger than {MOST} MiB")));
        }
        Ok(Self { name, bytes })
    }

    /// Some editors put a mark before the text of a file, which is no part of it.
    pub fn bytes(&self) -> &[u8] {
        self.bytes.strip_prefix("\u{FEFF}".as_bytes()).unwrap_or(&self.bytes)
    }

    pub fn text(&self) -> Result<&str, Problem> {
        std::str::from_utf8(self.bytes()).map_err(|_| Problem::plain(format!("cannot read {}: not text (UTF-8)", self.name)))
    }
}

/// One byte more than is allowed tells that there is more.
fn whole(input: impl Read) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    input.take((MOST << 20) + 1).read_to_end(&mut bytes)?;
    Ok(bytes)
}
