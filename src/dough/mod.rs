//! dough
