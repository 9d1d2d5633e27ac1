//! Dividing a run: openings, members and where their marks fall.
