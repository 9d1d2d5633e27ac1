//! A pole as a PDF document in true size, page by page. What is on a page is left to `picture/`, which letters the font
//! has to `letters.rs`, and every number to `pen.rs`.

use alloc::vec::Vec;

use pdf_writer::{Finish as _, Name, Pdf, Ref, TextStr};

use super::picture::page::{Pages, Paper};
use super::picture::{Item, Picture, Sheet};
use super::{PoleError, StoryPole};
use crate::tape::Tape;

mod letters;
mod pen;

use pen::Pen;

const CATALOG: Ref = Ref::new(1);
const TREE: Ref = Ref::new(2);
const INFORMATION: Ref = Ref::new(3);
const FONTS: [(Ref, Name<'_>, Name<'_>); 2] =
    [(Ref::new(4), Name(b"F"), Name(b"Helvetica")), (Ref::new(5), Name(b"B"), Name(b"Helvetica-Bold"))];
const FIRST_PAGE: i32 = 6;

impl StoryPole {
    /// The pole as a PDF document in true size. Pages overlap by an inch, with a line in it where they are joined; each
    /// says which stretch it shows, and has a scale check to hold a rule to. Readings are those of this tape.
    ///
    /// Letters are those of the fonts that every reader has, and nothing is embedded: what they lack is printed as `?`.
    ///
    /// ```
    /// use scantling::{Length, Mark, Paper, PartSide, StoryPole, Tape, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let pole = StoryPole::new("ware case", inches(40)).row("side", [Mark::new(inches(14), "shelf", PartSide::Past)])?;
    /// let document = pole.pdf(&Tape::sixteenths(), Paper::Letter)?;
    /// assert!(document.starts_with(b"%PDF-"));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::RollWidth`] for a roll too narrow or too wide; [`PoleError::TooMany`] pages;
    /// [`PoleError::TooLongToDraw`] past a hundred yards; [`PoleError::NoLength`]; [`PoleError::Tape`] when the tape does
    /// not reach a mark; [`PoleError::OutOfRange`].
    pub fn pdf(&self, tape: &Tape, paper: Paper) -> Result<Vec<u8>, PoleError> {
        let picture = Picture::new(self, tape)?;
        let pages = Pages::new(&picture, paper)?;
        let count = i32::try_from(pages.count()).unwrap_or(i32::MAX);
        let mut pdf = Pdf::new();
        let mut catalog = pdf.catalog(CATALOG);
        catalog.pages(TREE);
        // Readers that know this offer the actual size first.
        catalog.insert(Name(b"ViewerPreferences")).dict().pair(Name(b"PrintScaling"), Name(b"None"));
        catalog.finish();
        let page = |number: i32| (Ref::new(FIRST_PAGE + 2 * number), Ref::new(FIRST_PAGE + 2 * number + 1));
        pdf.pages(TREE).kids((0..count).map(|number| page(number).0)).count(count);
        pdf.document_info(INFORMATION).title(TextStr(&self.title(80)));
        for (font, _, base) in FONTS {
            pdf.type1_font(font).base_font(base).encoding_predefined(Name(b"WinAnsiEncoding"));
        }
        for (number, sheet) in (0..count).zip(pages.sheets()) {
            write(&mut pdf, page(number), &sheet);
        }
        Ok(pdf.finish())
    }
}

fn write(pdf: &mut Pdf, (id, content): (Ref, Ref), sheet: &Sheet) {
    let mut page = pdf.page(id);
    page.media_box(pen::frame(sheet)).parent(TREE).contents(content);
    let mut resources = page.resources();
    let mut fonts = resources.fonts();
    for (font, name, _) in FONTS {
        fonts.pair(name, font);
    }
    fonts.finish();
    resources.finish();
    page.finish();
    let mut pen = Pen::new(sheet.height);
    for item in &sheet.items {
        match item {
            Item::Stroke { kind, from, to } => pen.stroke(*kind, *from, *to),
            Item::Shape(corners) => pen.shape(corners),
            Item::Text(text) => pen.text(text, FONTS[usize::from(text.bold)].1),
        }
    }
    pdf.stream(content, &pen.finish());
}
