"""The whole installation in one file, and back: its database, and what people uploaded."""
