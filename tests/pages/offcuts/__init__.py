"""Pages of what the shop has of its own."""
