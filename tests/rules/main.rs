//! The rules of the source, and of what it makes public.

mod api;
mod layers;
