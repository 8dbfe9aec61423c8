//! Shared values that are compared by identity.

use std::sync::Arc;

/// A shared value that equals another only if it is the same one: built anew means changed.
pub struct ArcPtrEq<T>(pub Arc<T>);

impl<T> ArcPtrEq<T> {
    /// A value that equals no earlier one.
    pub fn new(value: T) -> Self {
        Self(Arc::new(value))
    }
}

impl<T> Clone for ArcPtrEq<T> {
    fn clone(&self) -> Self {
        Self(Arc::clone(&self.0))
    }
}

impl<T> PartialEq for ArcPtrEq<T> {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}
