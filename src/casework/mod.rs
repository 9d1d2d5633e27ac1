//! Casework: what a whole case asks for beyond dividing a run. So far how far a shelf sags and how far a board moves with
//! the seasons, as help for the person at the bench and not as engineering. What stock measures is left to `lumber/`.

mod error;
mod load;
mod material;
mod movement;
mod names;
mod shelf;
mod species;

pub use error::CaseworkError;
pub use load::{SagLimit, ShelfLoad};
pub use material::{Material, Modulus, material, materials};
pub use movement::Movement;
pub use shelf::LoadedShelf;
pub use species::{Species, all_species, species};
