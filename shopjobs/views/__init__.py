"""Pages of shops, people and jobs."""
