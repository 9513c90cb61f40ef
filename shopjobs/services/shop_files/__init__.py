"""A whole shop as one file, on its way from one installation to another."""
