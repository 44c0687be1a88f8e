//! site
