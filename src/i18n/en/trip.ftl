# Where and when.
