//! The console blocks of the README are run, and must print what they say.
#![cfg(feature = "cli")]

#[test]
fn the_readme_shows_what_the_program_prints() {
    trycmd::TestCases::new().case("README.md");
}
