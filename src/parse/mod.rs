//! Text in: what a person typed, read as an exact length.
