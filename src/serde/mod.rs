//! Lengths and what is made of them in the formats of other programs. Paths to copy:
//!
//! ```text
//! scantling::serde
//! ├── inches           #[serde(with = "scantling::serde::inches")]
//! │   └── option       #[serde(with = "scantling::serde::inches::option")]
//! ├── feet             #[serde(with = "scantling::serde::feet")]
//! │   └── option       #[serde(with = "scantling::serde::feet::option")]
//! ├── yards            #[serde(with = "scantling::serde::yards")]
//! │   └── option       #[serde(with = "scantling::serde::yards::option")]
//! ├── millimeters      #[serde(with = "scantling::serde::millimeters")]
//! │   └── option       #[serde(with = "scantling::serde::millimeters::option")]
//! ├── centimeters      #[serde(with = "scantling::serde::centimeters")]
//! │   └── option       #[serde(with = "scantling::serde::centimeters::option")]
//! └── meters           #[serde(with = "scantling::serde::meters")]
//!     └── option       #[serde(with = "scantling::serde::meters::option")]
//! ```
//!
//! These are for fields that must be plain numbers. Any other field needs nothing. (Beside `use scantling::*`,
//! write `::serde` for the other crate.)
//!
//! ```
//! use scantling::{Length, Tape, Unit};
//! use serde::{Deserialize, Serialize};
//!
//! #[derive(Serialize, Deserialize)]
//! struct Shelf {
//!     run: Length,
//!     tape: Tape,
//!     #[serde(with = "scantling::serde::millimeters")]
//!     thickness: Length,
//! }
//!
//! let shelf = Shelf {
//!     run: Length::fraction(87, 5, Unit::Inch),
//!     tape: Tape::sixteenths(),
//!     thickness: Length::fraction(365, 20, Unit::Millimeter),
//! };
//! assert_eq!(
//!     serde_json::to_string_pretty(&shelf)?,
//!     r#"{
//!   "run": "17 2/5 in",
//!   "tape": {
//!     "step": "1/16 in",
//!     "mode": "ties up",
//!     "offset": "0 in",
//!     "length": null
//!   },
//!   "thickness": 18.25
//! }"#
//! );
//! # Ok::<(), serde_json::Error>(())
//! ```
//!
//! # In formats for people
//!
//! JSON, TOML, YAML and the like: wherever the format says that it is for people to read. Text carries the exact
//! value with its unit, and what has several parts is an object with a field for each. The forms are fixed.
//!
//! | type | form |
//! | --- | --- |
//! | [`Length`] | `"17 2/5 in"`, `"-1/2 in"`, `"0 in"`: inches and a fraction in lowest terms |
//! | [`Area`] | `"1872 sq in"` |
//! | [`Volume`] | `"144 cu in"` |
//! | [`Unit`] | `"in"`, `"ft"`, `"yd"`, `"mm"`, `"cm"`, `"m"` |
//! | [`RoundingMode`] | `"ties up"`, `"ties even"`, `"ties away"`, `"down"`, `"up"`, `"toward zero"` |
//! | [`Lean`] | `"strong"`, `"shy"`, `"dead on"` |
//! | [`Edge`] | `"near"`, `"center"`, `"far"` |
//! | [`Axis`] | `"thickness"`, `"width"`, `"length"`, `"height"`, `"depth"` |
//! | [`Side`] | `"over"`, `"on"`, `"under"` |
//! | [`End`] | `"gap"`, `"half gap"`, `"flush"`, or `{"margin":"2 in"}` |
//! | [`Tape`] | `{"step":"1/16 in","mode":"ties up","offset":"0 in","length":null}` |
//! | [`Reading`] | `{"mark":"14 3/8 in","shown":"15 3/8 in","leftover":"1/40 in","lean":"strong","true_position":"14 2/5 in"}` |
//! | [`Dimension`] | `{"length":"24 in","axis":"width"}`, `{"length":"24 in","axis":null}` |
//! | [`Size`] | two or three of these: `[{"length":"24 in","axis":null},{"length":"36 in","axis":null}]` |
//! | [`LumberKind`] | `"board"`, `"dimension"`, `"timber"`, `"decking"`, `"hardwood"`, `"panel"`, `"sheet"` |
//! | [`Seasoning`] | `"dry"`, `"green"` |
//! | [`Surface`] | `"rough"`, `"S1S"`, `"S2S"`, `"S4S"` |
//! | [`TallyRule`] | `"exact"`, `"one inch minimum"`, `"nearest foot"`, `"halves by turns"` |
//! | [`PricedBy`] | `"board foot"`, `"linear foot"`, `"square foot"`, `"piece"` |
//! | [`Money`] | `"8.75"`, `"116 2/3"`: decimals, at least two, or where none do, a fraction |
//! | [`Price`] | `{"money":"8.75","by":"board foot"}` |
//! | [`Nominal`] | `{"stock":"softwood","thickness":"2 in","width":"4 in","length":"96 in","seasoning":null,"surface":null}` |
//! | [`Toleranced`] | `{"nominal":"24 in","least":"23 31/32 in","most":"24 1/32 in"}` |
//! | [`Called`] | `{"mark":"17 3/8 in","side":"over","steps":1,"said":null}`, `{…,"steps":null,"said":"1/40 in"}` |
//! | [`Datum`] | `"bottom"`, `"top"`, `"left"`, `"right"` |
//! | [`Hand`] | `"left"`, `"right"` |
//! | [`PartSide`] | `"past"`, `"before"`, `"centered"`, `"line"` |
//! | [`Mark`] | `{"position":"14 2/5 in","name":"shelf 1","side":"past","thickness":"3/4 in","note":null}` |
//! | [`Row`] | `{"name":"side","marks":[…],"closes":null}`, `{…,"closes":{"from":"0 in","to":"72 in"}}` |
//! | [`StoryPole`] | `{"name":"ware case","length":"72 in","datum":"bottom","hand":null,"rows":[…]}` |
//! | [`Overall`] | `"box"`, `"frame"`, `"top"`, `"molding"` |
//! | [`FrameJoint`] | `"rails between"`, `"stiles between"` |
//! | [`Joint`] | `{"kind":"butt","depth":null}`; `"dado"` and `"rabbet"` have a depth |
//! | [`TopAt`] | `{"kind":"between sides","joint":{…},"past_sides":null,"past_front":null}`; `"over sides"` has the other two |
//! | [`Back`] | `{"kind":"rabbet","thickness":"7/32 in","depth":"3/8 in","set_in":null}`; `"none"`, `"applied"`, `"groove"` |
//! | [`Base`] | `{"kind":"separate","height":"4 in","recess":"3 in","stock":"3/4 in","from_sides":"1/2 in","ties":1}`; `"none"`, `"sides to floor"` |
//! | [`FaceFrame`] | `{"stock":"3/4 in","stile":"1 3/4 in","top_rail":"2 1/4 in","bottom_rail":"1 1/2 in","past_left":"1/4 in","past_right":"1/4 in","joint":"rails between"}` |
//! | [`Growth`] | `{"kind":"step","length":"3/4 in","ratio":null}`; `"top"`, `"bottom"`; `"ratio"` has `[6,5]` |
//! | [`PinHoles`] | `{"pitch":"1 in","first":"4 in","from_edges":"1 1/2 in","deep":"3/8 in"}` |
//! | [`Shelves`] | `{"kind":"equal","count":4,"openings":null,"shares":null,"growth":null,"pins":null}`; `"openings"`, `"proportional"`, `"growing"`, `"adjustable"` have what belongs to them |
//! | [`Allowances`] | `{"back":"1/16 in","adjustable_shelf":"1/8 in","glue":"0 in"}` |
//! | [`Mount`] | `{"kind":"inset","past":null,"gap":"1/8 in"}`; `"overlay"` is past by a length |
//! | [`FrontSet`] | `{"kind":"doors","count":2,"growth":null,"mount":{…},"stock":"3/4 in"}`; `"drawers"` have a growth |
//! | [`Site`] | `{"widths":["36 in","35 7/8 in","36 in"],"scribes":["1/2 in","0 in"],"floor":["0 in","0 in"],"ceiling":null}` |
//! | [`Case`] | `{"width":"36 in","height":"72 in","depth":"12 in","over":"frame","side":"23/32 in",…}`: a field for each of its fields |
//!
//! On the way in:
//!
//! * A length is read by [`LengthParser`](crate::LengthParser), in any notation (`"6'-3"`, `"365 mm"`), but must
//!   have its unit: neither `17` nor `"17"` is one. What the parser has against a text is the error, unchanged.
//!   Areas and volumes are read likewise.
//! * A word is one of those above, letter by letter.
//! * An object has all its fields and no others, in any order, once each; one that may be `null` may be left out.
//! * What no value of the type can be is refused: a graduation of zero; a [`Reading`] whose mark and leftover do
//!   not make its true position, or whose lean is not that of its leftover; an axis named twice; limits that do
//!   not hold the nominal length; a call that is off the mark by nothing; a [`Nominal`] without a size of its name;
//!   marks of a row that do not stand in order from the datum, and whatever else a [`StoryPole`] refuses.
//! * Of a [`Case`], all but its width, height and depth may be left out, and is as in `Case::new` then; so may the allowances,
//!   the rails (as wide as the stiles), overhangs, ties, the joint of a top, the growth of drawers, and all of a place.
//! * The stock of a [`Nominal`] is `"softwood"`, `"decking"`, `"hardwood"` or `"panel"`.
//!
//! # In compact formats
//!
//! Where the format says that it is not for people:
//!
//! * A length is a pair, the numerator (`i128`) and the denominator (`u128`) of its inches in lowest terms:
//!   17 2/5 in is 87 and 5. An area is a pair of square inches, a volume of cubic inches, money of its currency's unit. A pair that is not in
//!   lowest terms or has a denominator of zero or below is refused, as is one that cannot be held.
//! * A word is its place in the table above, counted from 0, as a `u8`. New words will go behind the others.
//! * An [`End`] is the place of its word (3 for a margin) and an optional length.
//! * An object has the same fields in the same order, and the same checks.
//!
//! # Plain numbers
//!
//! The modules above write a length as a number of their unit and nothing else: `365` or `18.25`. A number has
//! no room for the unit, nor for a fraction such as 1/3, so this is for programs that ask for it.
//!
//! A format hands decimals over as binary floats, which are seldom exact: the float nearest to 18.1 is a hair
//! more. So the rule is: **a float stands for the shortest decimal that reads back as that float, and this must
//! have at most 15 significant digits**, the most that any binary float of 64 bits is sure to keep. Within that,
//! what was written as 18.1 is exactly 181/10, on both ways.
//!
//! * Out: whole numbers as integers, decimals of up to 15 digits as floats. Every other length is an error, never
//!   a rounded number: a third of an inch, a millimeter in inches. Round it first, or store it as text.
//! * In: integers of any size, and floats by the rule. A float with a longer decimal, such as the
//!   0.30000000000000004 that a sum of floats leaves, is refused: nobody meant it. So is the neighbor that a
//!   careless reader of decimals takes for the right float, and so are text and `null`.
//! * A format that reads decimals as floats drops what no float keeps before this crate sees it: a text of
//!   0.1000000000000000055 arrives as 0.1.
//! * In compact formats a number is always an `f64`, by the same rule.
//!
//! The `option` modules write `None` as null. For a field that may be left out altogether, add `default`:
//!
//! ```
//! # use scantling::Length;
//! #[derive(serde::Deserialize)]
//! struct Part {
//!     #[serde(default, with = "scantling::serde::inches::option")]
//!     reveal: Option<Length>,
//! }
//!
//! assert_eq!(serde_json::from_str::<Part>("{}")?.reveal, None);
//! # Ok::<(), serde_json::Error>(())
//! ```
//!
//! [`Allowances`]: crate::Allowances
//! [`Area`]: crate::Area
//! [`Axis`]: crate::Axis
//! [`Back`]: crate::Back
//! [`Base`]: crate::Base
//! [`Called`]: crate::Called
//! [`Case`]: crate::Case
//! [`Datum`]: crate::Datum
//! [`Dimension`]: crate::Dimension
//! [`Edge`]: crate::Edge
//! [`End`]: crate::End
//! [`FaceFrame`]: crate::FaceFrame
//! [`FrameJoint`]: crate::FrameJoint
//! [`FrontSet`]: crate::FrontSet
//! [`Growth`]: crate::Growth
//! [`Hand`]: crate::Hand
//! [`Joint`]: crate::Joint
//! [`Lean`]: crate::Lean
//! [`Length`]: crate::Length
//! [`LumberKind`]: crate::LumberKind
//! [`Mark`]: crate::Mark
//! [`Money`]: crate::Money
//! [`Mount`]: crate::Mount
//! [`Nominal`]: crate::Nominal
//! [`Overall`]: crate::Overall
//! [`PartSide`]: crate::PartSide
//! [`PinHoles`]: crate::PinHoles
//! [`Price`]: crate::Price
//! [`PricedBy`]: crate::PricedBy
//! [`Reading`]: crate::Reading
//! [`RoundingMode`]: crate::RoundingMode
//! [`Row`]: crate::Row
//! [`Seasoning`]: crate::Seasoning
//! [`Shelves`]: crate::Shelves
//! [`Side`]: crate::Side
//! [`Site`]: crate::Site
//! [`Size`]: crate::Size
//! [`StoryPole`]: crate::StoryPole
//! [`Surface`]: crate::Surface
//! [`TallyRule`]: crate::TallyRule
//! [`Tape`]: crate::Tape
//! [`Toleranced`]: crate::Toleranced
//! [`TopAt`]: crate::TopAt
//! [`Unit`]: crate::Unit
//! [`Volume`]: crate::Volume

mod called;
mod case;
mod end;
mod error;
mod front;
mod lumber;
mod object;
mod plain;
mod pole;
mod quantity;
mod size;
mod tape;
mod toleranced;
mod units;
mod word;

pub use units::{centimeters, feet, inches, meters, millimeters, yards};
