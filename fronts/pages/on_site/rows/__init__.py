"""Which openings there are, and what is known of the size that is taken."""
