//! pantry
