//! What is timed: each file has the cases of one matter, all subjects of a case doing the same. Every result is checked against
//! the generator's own value before a case is given out.

pub mod arithmetic;
pub mod batch;
pub mod layout;
pub mod long;
pub mod parse;
pub mod print;
