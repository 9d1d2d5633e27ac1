//! The console blocks of the README are run, and must print what they say.
#[test]
fn the_readme_shows_what_the_program_prints() {
    trycmd::TestCases::new().case("README.md");
}
