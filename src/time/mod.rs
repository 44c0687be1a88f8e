//! time
