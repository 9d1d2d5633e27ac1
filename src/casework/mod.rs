//! Casework: a whole case, from its overall sizes to parts, levels, poles, nail lines and sums that close; and, as help
//! and not as engineering, how far a shelf sags and how far a board moves with the seasons.
//!
//! A size is a [`Sum`], which says where it comes from. Dividing a height is left to `spacing/`, poles to `pole/`, what
//! stock measures to `lumber/`.

mod advice;
mod advise;
mod allowance;
mod back;
mod base;
mod case;
mod caution;
mod closing;
mod error;
mod fastening;
mod frame;
mod front_opening;
mod front_set;
mod fronted;
mod fronts;
mod joint;
mod levels;
mod load;
mod material;
mod measures;
mod movement;
mod names;
mod order;
mod part;
mod parts;
mod placing;
mod plan;
mod poles;
mod shelf;
mod shelving;
mod site;
mod sound;
mod species;
mod stopped;
mod sum;
mod whole;

pub use advice::Advice;
pub use allowance::Allowances;
pub use back::Back;
pub use base::Base;
pub use case::{Case, Overall, TopAt};
pub use caution::Caution;
pub use closing::Closing;
pub use error::CaseworkError;
pub use fastening::{NailLine, PocketHole, pocket_hole};
pub use frame::{FaceFrame, FrameJoint};
pub use front_opening::OnFront;
pub use front_set::{FrontKind, FrontSet};
pub use fronts::{Fronts, Mount};
pub use joint::Joint;
pub use levels::{Level, Levels};
pub use load::{SagLimit, ShelfLoad};
pub use material::{Material, Modulus, material, materials};
pub use movement::{Movement, MovingPart};
pub use part::{CasePart, Notch, Pieces};
pub use plan::CasePlan;
pub use shelf::LoadedShelf;
pub use shelving::{PinHoles, Shelves};
pub use site::Site;
pub use species::{Species, all_species, species};
pub use stopped::StoppedDado;
pub use sum::Sum;
