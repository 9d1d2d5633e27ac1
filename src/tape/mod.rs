//! The tape: where an exact position falls on a rule, and what is left over.
