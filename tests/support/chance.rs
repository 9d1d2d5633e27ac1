//! What the random tests draw from. The same seed draws the same values, so that a test that failed fails again, and a change
//! is judged by the change; `SCANTLING_SEED=7` draws others.

use std::env;

use quickcheck::{Gen, QuickCheck};

/// The generator of one test.
pub fn source() -> Gen {
    let seed = env::var("SCANTLING_SEED").map_or(1, |text| text.parse().expect("SCANTLING_SEED is a whole number"));
    Gen::from_size_and_seed(100, seed)
}

/// What tries a property on a hundred random values, or on as many as it is told.
pub fn random() -> QuickCheck {
    QuickCheck::new().rng(source())
}

/// Tests of what holds for any values: functions that take them and say whether it does.
#[allow(unused_macros)] // as in `mod.rs`: not every test program has such tests
macro_rules! properties {
    ($($(#[$meta:meta])* fn $name:ident($($value:ident: $kind:ty),* $(,)?) -> $said:ty $body:block)*) => {$(
        #[test]
        $(#[$meta])*
        fn $name() {
            fn holds($($value: $kind),*) -> $said $body
            $crate::support::chance::random().quickcheck(holds as fn($($kind),*) -> $said);
        }
    )*};
}
