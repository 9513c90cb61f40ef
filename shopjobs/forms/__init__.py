"""Forms of shops, people and jobs."""
