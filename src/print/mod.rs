//! Text out: how an exact length is written. Nothing is rounded here.
