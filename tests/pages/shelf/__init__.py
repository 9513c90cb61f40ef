"""Pages of what is in stock."""
