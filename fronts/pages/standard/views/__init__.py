"""The index of the shop's standard, its short pages, and their drawings while one types."""
